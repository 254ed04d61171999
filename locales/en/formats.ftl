### Patterns in which numbers, measures, dates, times and lists are written.
### Words and patterns follow the Unicode CLDR (version 41); where they depart, a comment says so.

## Numbers

# $value is a number, written out. Example: "17%"
format-percent = { $value }%
# The size of a download. Example: "640 kB"
format-kilobytes = { $value } kB
format-megabytes = { $value } MB
# From one to another: days, times or numbers. Example: "8:00 AM – 5:00 PM"
format-range = { $from } – { $to }

## Measures. $value is the number written out, $n the same number, to choose a plural form.

unit-mm =
    { $n ->
        [one] { $value } mm
       *[other] { $value } mm
    }
unit-cm =
    { $n ->
        [one] { $value } cm
       *[other] { $value } cm
    }
unit-m =
    { $n ->
        [one] { $value } m
       *[other] { $value } m
    }
unit-km =
    { $n ->
        [one] { $value } km
       *[other] { $value } km
    }
unit-in =
    { $n ->
        [one] { $value } in
       *[other] { $value } in
    }
unit-ft =
    { $n ->
        [one] { $value } ft
       *[other] { $value } ft
    }
unit-yd =
    { $n ->
        [one] { $value } yd
       *[other] { $value } yd
    }
unit-mi =
    { $n ->
        [one] { $value } mi
       *[other] { $value } mi
    }
unit-ml =
    { $n ->
        [one] { $value } mL
       *[other] { $value } mL
    }
unit-l =
    { $n ->
        [one] { $value } L
       *[other] { $value } L
    }
unit-fl-oz =
    { $n ->
        [one] { $value } fl oz
       *[other] { $value } fl oz
    }
unit-gal =
    { $n ->
        [one] { $value } gal
       *[other] { $value } gal
    }
unit-g =
    { $n ->
        [one] { $value } g
       *[other] { $value } g
    }
unit-kg =
    { $n ->
        [one] { $value } kg
       *[other] { $value } kg
    }
unit-oz =
    { $n ->
        [one] { $value } oz
       *[other] { $value } oz
    }
unit-lb =
    { $n ->
        [one] { $value } lb
       *[other] { $value } lb
    }
unit-piece =
    { $n ->
        [one] { $value } piece
       *[other] { $value } pieces
    }
# A measure in two systems. Example: "2 in (5 cm)"
measure-both = { $first } ({ $second })
# A measure beside the words of whoever set it. Example: "5 cm (stated as 2 in)"
measure-stated = { $measure } (stated as { $stated })

## Lists. $size is "two" or "more"; $sound is how the last word begins, for Spanish.

list-and-next = { $rest }, { $next }
list-or-next = { $rest }, { $next }
list-and =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest } and { $last }
            }
       *[more] { $rest }, and { $last }
    }
list-or =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest } or { $last }
            }
       *[more] { $rest }, or { $last }
    }

## Dates. Weekdays count from Monday.

weekday-wide =
    { $day ->
        [1] Monday
        [2] Tuesday
        [3] Wednesday
        [4] Thursday
        [5] Friday
        [6] Saturday
       *[7] Sunday
    }
weekday-short =
    { $day ->
        [1] Mon
        [2] Tue
        [3] Wed
        [4] Thu
        [5] Fri
        [6] Sat
       *[7] Sun
    }
month-wide =
    { $month ->
        [1] January
        [2] February
        [3] March
        [4] April
        [5] May
        [6] June
        [7] July
        [8] August
        [9] September
        [10] October
        [11] November
       *[12] December
    }
month-short =
    { $month ->
        [1] Jan
        [2] Feb
        [3] Mar
        [4] Apr
        [5] May
        [6] Jun
        [7] Jul
        [8] Aug
        [9] Sep
        [10] Oct
        [11] Nov
       *[12] Dec
    }
date-full = { $weekday }, { $month } { $day }, { $year }
date-long = { $month } { $day }, { $year }
date-day-month = { $month } { $day }
date-weekday-day-month = { $weekday }, { $month } { $day }

## Times. $half is "am" or "pm".

time-12 =
    { $half ->
        [am] { $hour }:{ $minute } AM
       *[pm] { $hour }:{ $minute } PM
    }
time-24 = { $hour }:{ $minute }
