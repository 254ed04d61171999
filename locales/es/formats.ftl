### Patterns in which numbers, measures, dates, times and lists are written.
### Words and patterns follow the Unicode CLDR (version 41); where they depart, a comment says so.

## Numbers

format-percent = { $value } %
format-kilobytes = { $value } kB
format-megabytes = { $value } MB
# CLDR has a hyphen; the word is read aloud better.
format-range = { $from } a { $to }

## Measures. US units are written as words (CLDR's long form): their signs "in", "lb" are English.

unit-mm =
    { $n ->
        [one] { $value } mm
        [many] { $value } mm
       *[other] { $value } mm
    }
unit-cm =
    { $n ->
        [one] { $value } cm
        [many] { $value } cm
       *[other] { $value } cm
    }
unit-m =
    { $n ->
        [one] { $value } m
        [many] { $value } m
       *[other] { $value } m
    }
unit-km =
    { $n ->
        [one] { $value } km
        [many] { $value } km
       *[other] { $value } km
    }
unit-in =
    { $n ->
        [one] { $value } pulgada
        [many] { $value } pulgadas
       *[other] { $value } pulgadas
    }
unit-ft =
    { $n ->
        [one] { $value } pie
        [many] { $value } pies
       *[other] { $value } pies
    }
unit-yd =
    { $n ->
        [one] { $value } yarda
        [many] { $value } yardas
       *[other] { $value } yardas
    }
unit-mi =
    { $n ->
        [one] { $value } milla
        [many] { $value } millas
       *[other] { $value } millas
    }
unit-ml =
    { $n ->
        [one] { $value } ml
        [many] { $value } ml
       *[other] { $value } ml
    }
unit-l =
    { $n ->
        [one] { $value } l
        [many] { $value } l
       *[other] { $value } l
    }
unit-fl-oz =
    { $n ->
        [one] { $value } onza líquida
        [many] { $value } onzas líquidas
       *[other] { $value } onzas líquidas
    }
unit-gal =
    { $n ->
        [one] { $value } galón
        [many] { $value } galones
       *[other] { $value } galones
    }
unit-g =
    { $n ->
        [one] { $value } g
        [many] { $value } g
       *[other] { $value } g
    }
unit-kg =
    { $n ->
        [one] { $value } kg
        [many] { $value } kg
       *[other] { $value } kg
    }
unit-oz =
    { $n ->
        [one] { $value } onza
        [many] { $value } onzas
       *[other] { $value } onzas
    }
unit-lb =
    { $n ->
        [one] { $value } libra
        [many] { $value } libras
       *[other] { $value } libras
    }
unit-piece =
    { $n ->
        [one] { $value } pieza
        [many] { $value } piezas
       *[other] { $value } piezas
    }
measure-both = { $first } ({ $second })
measure-stated = { $measure } (indicado como { $stated })

## Lists. Before the sound of "i" the word is "e", before "o" it is "u".

list-and-next = { $rest }, { $next }
list-or-next = { $rest }, { $next }
list-and =
    { $size ->
        [two]
            { $sound ->
                [i] { $rest } e { $last }
               *[other] { $rest } y { $last }
            }
       *[more]
            { $sound ->
                [i] { $rest } e { $last }
               *[other] { $rest } y { $last }
            }
    }
list-or =
    { $size ->
        [two]
            { $sound ->
                [o] { $rest } u { $last }
               *[other] { $rest } o { $last }
            }
       *[more]
            { $sound ->
                [o] { $rest } u { $last }
               *[other] { $rest } o { $last }
            }
    }

## Dates. Weekdays count from Monday.

weekday-wide =
    { $day ->
        [1] lunes
        [2] martes
        [3] miércoles
        [4] jueves
        [5] viernes
        [6] sábado
       *[7] domingo
    }
weekday-short =
    { $day ->
        [1] lun
        [2] mar
        [3] mié
        [4] jue
        [5] vie
        [6] sáb
       *[7] dom
    }
month-wide =
    { $month ->
        [1] enero
        [2] febrero
        [3] marzo
        [4] abril
        [5] mayo
        [6] junio
        [7] julio
        [8] agosto
        [9] septiembre
        [10] octubre
        [11] noviembre
       *[12] diciembre
    }
month-short =
    { $month ->
        [1] ene
        [2] feb
        [3] mar
        [4] abr
        [5] may
        [6] jun
        [7] jul
        [8] ago
        [9] sept
        [10] oct
        [11] nov
       *[12] dic
    }
date-full = { $weekday }, { $day } de { $month } de { $year }
date-long = { $day } de { $month } de { $year }
date-day-month = { $day } de { $month }
date-weekday-day-month = { $weekday }, { $day } { $month }

## Times. $half is "am" or "pm".

time-12 =
    { $half ->
        [am] { $hour }:{ $minute } a. m.
       *[pm] { $hour }:{ $minute } p. m.
    }
time-24 = { $hour }:{ $minute }
