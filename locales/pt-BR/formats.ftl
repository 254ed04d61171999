### Patterns in which numbers, measures, dates, times and lists are written.
### Words and patterns follow the Unicode CLDR (version 41, from memory); where they depart, a comment says so.

## Numbers

format-percent = { $value }%
format-kilobytes = { $value } kB
format-megabytes = { $value } MB
# CLDR has a dash; the words are read aloud better.
format-range = de { $from } a { $to }

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
        [one] { $value } polegada
        [many] { $value } polegadas
       *[other] { $value } polegadas
    }
unit-ft =
    { $n ->
        [one] { $value } pé
        [many] { $value } pés
       *[other] { $value } pés
    }
unit-yd =
    { $n ->
        [one] { $value } jarda
        [many] { $value } jardas
       *[other] { $value } jardas
    }
unit-mi =
    { $n ->
        [one] { $value } milha
        [many] { $value } milhas
       *[other] { $value } milhas
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
        [one] { $value } onça líquida
        [many] { $value } onças líquidas
       *[other] { $value } onças líquidas
    }
unit-gal =
    { $n ->
        [one] { $value } galão
        [many] { $value } galões
       *[other] { $value } galões
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
        [one] { $value } onça
        [many] { $value } onças
       *[other] { $value } onças
    }
unit-lb =
    { $n ->
        [one] { $value } libra
        [many] { $value } libras
       *[other] { $value } libras
    }
unit-piece =
    { $n ->
        [one] { $value } peça
        [many] { $value } peças
       *[other] { $value } peças
    }
measure-both = { $first } ({ $second })
measure-stated = { $measure } (indicado como { $stated })

## Lists

list-and-next = { $rest }, { $next }
list-or-next = { $rest }, { $next }
list-and =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest } e { $last }
            }
       *[more] { $rest } e { $last }
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
        [1] segunda-feira
        [2] terça-feira
        [3] quarta-feira
        [4] quinta-feira
        [5] sexta-feira
        [6] sábado
       *[7] domingo
    }
weekday-short =
    { $day ->
        [1] seg.
        [2] ter.
        [3] qua.
        [4] qui.
        [5] sex.
        [6] sáb.
       *[7] dom.
    }
month-wide =
    { $month ->
        [1] janeiro
        [2] fevereiro
        [3] março
        [4] abril
        [5] maio
        [6] junho
        [7] julho
        [8] agosto
        [9] setembro
        [10] outubro
        [11] novembro
       *[12] dezembro
    }
month-short =
    { $month ->
        [1] jan.
        [2] fev.
        [3] mar.
        [4] abr.
        [5] mai.
        [6] jun.
        [7] jul.
        [8] ago.
        [9] set.
        [10] out.
        [11] nov.
       *[12] dez.
    }
date-full = { $weekday }, { $day } de { $month } de { $year }
date-long = { $day } de { $month } de { $year }
date-day-month = { $day } de { $month }
date-weekday-day-month = { $weekday }, { $day } de { $month }

## Times. $half is "am" or "pm".

time-12 =
    { $half ->
        [am] { $hour }:{ $minute } AM
       *[pm] { $hour }:{ $minute } PM
    }
time-24 = { $hour }:{ $minute }
