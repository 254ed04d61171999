### Patterns in which numbers, measures, dates, times and lists are written.
### CLDR 41 has no data for this language: words and patterns are those in common use (from memory).

## Numbers

format-percent = { $value }%
format-kilobytes = { $value } kB
format-megabytes = { $value } MB
# Words are read aloud better than a dash.
format-range = { $from } rive { $to }

## Measures. US units are written as words: their signs "in", "lb" are English.

unit-mm =
    { $n ->
       *[other] { $value } mm
    }
unit-cm =
    { $n ->
       *[other] { $value } cm
    }
unit-m =
    { $n ->
       *[other] { $value } m
    }
unit-km =
    { $n ->
       *[other] { $value } km
    }
unit-in =
    { $n ->
       *[other] { $value } pous
    }
unit-ft =
    { $n ->
       *[other] { $value } pye
    }
unit-yd =
    { $n ->
       *[other] { $value } yad
    }
unit-mi =
    { $n ->
       *[other] { $value } mil
    }
unit-ml =
    { $n ->
       *[other] { $value } ml
    }
unit-l =
    { $n ->
       *[other] { $value } l
    }
unit-fl-oz =
    { $n ->
       *[other] { $value } ons likid
    }
unit-gal =
    { $n ->
       *[other] { $value } galon
    }
unit-g =
    { $n ->
       *[other] { $value } g
    }
unit-kg =
    { $n ->
       *[other] { $value } kg
    }
unit-oz =
    { $n ->
       *[other] { $value } ons
    }
unit-lb =
    { $n ->
       *[other] { $value } liv
    }
unit-piece =
    { $n ->
       *[other] { $value } grenn
    }
measure-both = { $first } ({ $second })
measure-stated = { $measure } (yo ekri { $stated })

## Lists

list-and-next = { $rest }, { $next }
list-or-next = { $rest }, { $next }
list-and =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest } ak { $last }
            }
       *[more] { $rest } ak { $last }
    }
list-or =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest } oswa { $last }
            }
       *[more] { $rest } oswa { $last }
    }

## Dates. Weekdays count from Monday.

weekday-wide =
    { $day ->
        [1] lendi
        [2] madi
        [3] mèkredi
        [4] jedi
        [5] vandredi
        [6] samdi
       *[7] dimanch
    }
weekday-short =
    { $day ->
        [1] len
        [2] mad
        [3] mèk
        [4] jed
        [5] van
        [6] sam
       *[7] dim
    }
month-wide =
    { $month ->
        [1] janvye
        [2] fevriye
        [3] mas
        [4] avril
        [5] me
        [6] jen
        [7] jiyè
        [8] out
        [9] septanm
        [10] oktòb
        [11] novanm
       *[12] desanm
    }
month-short =
    { $month ->
        [1] janv
        [2] fevr
        [3] mas
        [4] avr
        [5] me
        [6] jen
        [7] jiyè
        [8] out
        [9] sept
        [10] okt
        [11] nov
       *[12] des
    }
date-full = { $weekday } { $day } { $month } { $year }
date-long = { $day } { $month } { $year }
date-day-month = { $day } { $month }
date-weekday-day-month = { $weekday } { $day } { $month }

## Times. $half is "am" or "pm".

time-12 =
    { $half ->
        [am] { $hour }:{ $minute } AM
       *[pm] { $hour }:{ $minute } PM
    }
time-24 = { $hour }:{ $minute }
