### Patterns in which numbers, measures, dates, times and lists are written.
### Words and patterns follow the Unicode CLDR (version 41, from memory); where they depart, a comment says so.

## Numbers

format-percent = { $value } %
format-kilobytes = { $value } ko
format-megabytes = { $value } Mo
# CLDR has a dash; the words are read aloud better.
format-range = de { $from } à { $to }

## Measures. US units are written as words (CLDR's long form): their signs "in", "lb" are English.

unit-mm =
    { $n ->
        [one] { $value } mm
        [many] { $value } mm
       *[other] { $value } mm
    }
unit-cm =
    { $n ->
        [one] { $value } cm
        [many] { $value } cm
       *[other] { $value } cm
    }
unit-m =
    { $n ->
        [one] { $value } m
        [many] { $value } m
       *[other] { $value } m
    }
unit-km =
    { $n ->
        [one] { $value } km
        [many] { $value } km
       *[other] { $value } km
    }
unit-in =
    { $n ->
        [one] { $value } pouce
        [many] { $value } pouces
       *[other] { $value } pouces
    }
unit-ft =
    { $n ->
        [one] { $value } pied
        [many] { $value } pieds
       *[other] { $value } pieds
    }
unit-yd =
    { $n ->
        [one] { $value } verge
        [many] { $value } verges
       *[other] { $value } verges
    }
unit-mi =
    { $n ->
        [one] { $value } mille
        [many] { $value } milles
       *[other] { $value } milles
    }
unit-ml =
    { $n ->
        [one] { $value } ml
        [many] { $value } ml
       *[other] { $value } ml
    }
unit-l =
    { $n ->
        [one] { $value } l
        [many] { $value } l
       *[other] { $value } l
    }
unit-fl-oz =
    { $n ->
        [one] { $value } once liquide
        [many] { $value } onces liquides
       *[other] { $value } onces liquides
    }
unit-gal =
    { $n ->
        [one] { $value } gallon
        [many] { $value } gallons
       *[other] { $value } gallons
    }
unit-g =
    { $n ->
        [one] { $value } g
        [many] { $value } g
       *[other] { $value } g
    }
unit-kg =
    { $n ->
        [one] { $value } kg
        [many] { $value } kg
       *[other] { $value } kg
    }
unit-oz =
    { $n ->
        [one] { $value } once
        [many] { $value } onces
       *[other] { $value } onces
    }
unit-lb =
    { $n ->
        [one] { $value } livre
        [many] { $value } livres
       *[other] { $value } livres
    }
unit-piece =
    { $n ->
        [one] { $value } pièce
        [many] { $value } pièces
       *[other] { $value } pièces
    }
measure-both = { $first } ({ $second })
measure-stated = { $measure } (indiqué : { $stated })

## Lists

list-and-next = { $rest }, { $next }
list-or-next = { $rest }, { $next }
list-and =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest } et { $last }
            }
       *[more] { $rest } et { $last }
    }
list-or =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest } ou { $last }
            }
       *[more] { $rest } ou { $last }
    }

## Dates. Weekdays count from Monday.

weekday-wide =
    { $day ->
        [1] lundi
        [2] mardi
        [3] mercredi
        [4] jeudi
        [5] vendredi
        [6] samedi
       *[7] dimanche
    }
weekday-short =
    { $day ->
        [1] lun.
        [2] mar.
        [3] mer.
        [4] jeu.
        [5] ven.
        [6] sam.
       *[7] dim.
    }
month-wide =
    { $month ->
        [1] janvier
        [2] février
        [3] mars
        [4] avril
        [5] mai
        [6] juin
        [7] juillet
        [8] août
        [9] septembre
        [10] octobre
        [11] novembre
       *[12] décembre
    }
month-short =
    { $month ->
        [1] janv.
        [2] févr.
        [3] mars
        [4] avr.
        [5] mai
        [6] juin
        [7] juil.
        [8] août
        [9] sept.
        [10] oct.
        [11] nov.
       *[12] déc.
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
# As in Canada (CLDR `fr-CA`): readers of both sides of the ocean know "17 h 00".
time-24 = { $hour } h { $minute }
