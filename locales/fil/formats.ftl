### Ayos ng mga numero, sukat, petsa, oras at listahan.
### Ayon sa Unicode CLDR (bersiyon 41); kung iba, may paliwanag.

## Mga numero

format-percent = { $value }%
format-kilobytes = { $value } kB
format-megabytes = { $value } MB
format-range = { $from } – { $to }

## Mga sukat. Pagkatapos ng 4, 6 at 9 may “na”.

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
        [one] { $value } pulgada
       *[other] { $value } na pulgada
    }
unit-ft =
    { $n ->
        [one] { $value } talampakan
       *[other] { $value } na talampakan
    }
unit-yd =
    { $n ->
        [one] { $value } yarda
       *[other] { $value } na yarda
    }
unit-mi =
    { $n ->
        [one] { $value } milya
       *[other] { $value } na milya
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
        [one] { $value } fluid ounce
       *[other] { $value } na fluid ounce
    }
unit-gal =
    { $n ->
        [one] { $value } galon
       *[other] { $value } na galon
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
        [one] { $value } onsa
       *[other] { $value } na onsa
    }
unit-lb =
    { $n ->
        [one] { $value } libra
       *[other] { $value } na libra
    }
unit-piece =
    { $n ->
        [one] { $value } piraso
       *[other] { $value } na piraso
    }
measure-both = { $first } ({ $second })
measure-stated = { $measure } (nakasulat: { $stated })

## Mga listahan

list-and-next = { $rest }, { $next }
list-or-next = { $rest }, { $next }
list-and =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest } at { $last }
            }
       *[more] { $rest }, at { $last }
    }
list-or =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest } o { $last }
            }
       *[more] { $rest }, o { $last }
    }

## Mga petsa. Mula Lunes ang bilang ng mga araw.

weekday-wide =
    { $day ->
        [1] Lunes
        [2] Martes
        [3] Miyerkules
        [4] Huwebes
        [5] Biyernes
        [6] Sabado
       *[7] Linggo
    }
weekday-short =
    { $day ->
        [1] Lun
        [2] Mar
        [3] Miy
        [4] Huw
        [5] Biy
        [6] Sab
       *[7] Lin
    }
month-wide =
    { $month ->
        [1] Enero
        [2] Pebrero
        [3] Marso
        [4] Abril
        [5] Mayo
        [6] Hunyo
        [7] Hulyo
        [8] Agosto
        [9] Setyembre
        [10] Oktubre
        [11] Nobyembre
       *[12] Disyembre
    }
month-short =
    { $month ->
        [1] Ene
        [2] Peb
        [3] Mar
        [4] Abr
        [5] May
        [6] Hun
        [7] Hul
        [8] Ago
        [9] Set
        [10] Okt
        [11] Nob
       *[12] Dis
    }
date-full = { $weekday }, { $month } { $day }, { $year }
date-long = { $month } { $day }, { $year }
date-day-month = { $month } { $day }
date-weekday-day-month = { $weekday }, { $month } { $day }

## Mga oras

time-12 =
    { $half ->
        [am] { $hour }:{ $minute } AM
       *[pm] { $hour }:{ $minute } PM
    }
time-24 = { $hour }:{ $minute }
