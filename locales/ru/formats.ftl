### Образцы записи чисел, мер, дат, времени и списков.
### Слова и образцы — по Unicode CLDR (версия 41); где иначе, сказано в примечании.

## Числа

format-percent = { $value } %
format-kilobytes = { $value } кБ
format-megabytes = { $value } МБ
format-range = { $from } – { $to }

## Меры. Меры США написаны словами: их сокращения мало кто знает.

unit-mm =
    { $n ->
        [one] { $value } мм
        [few] { $value } мм
        [many] { $value } мм
       *[other] { $value } мм
    }
unit-cm =
    { $n ->
        [one] { $value } см
        [few] { $value } см
        [many] { $value } см
       *[other] { $value } см
    }
unit-m =
    { $n ->
        [one] { $value } м
        [few] { $value } м
        [many] { $value } м
       *[other] { $value } м
    }
unit-km =
    { $n ->
        [one] { $value } км
        [few] { $value } км
        [many] { $value } км
       *[other] { $value } км
    }
unit-in =
    { $n ->
        [one] { $value } дюйм
        [few] { $value } дюйма
        [many] { $value } дюймов
       *[other] { $value } дюйма
    }
unit-ft =
    { $n ->
        [one] { $value } фут
        [few] { $value } фута
        [many] { $value } футов
       *[other] { $value } фута
    }
unit-yd =
    { $n ->
        [one] { $value } ярд
        [few] { $value } ярда
        [many] { $value } ярдов
       *[other] { $value } ярда
    }
unit-mi =
    { $n ->
        [one] { $value } миля
        [few] { $value } мили
        [many] { $value } миль
       *[other] { $value } мили
    }
unit-ml =
    { $n ->
        [one] { $value } мл
        [few] { $value } мл
        [many] { $value } мл
       *[other] { $value } мл
    }
unit-l =
    { $n ->
        [one] { $value } л
        [few] { $value } л
        [many] { $value } л
       *[other] { $value } л
    }
unit-fl-oz =
    { $n ->
        [one] { $value } жидкая унция
        [few] { $value } жидкие унции
        [many] { $value } жидких унций
       *[other] { $value } жидкой унции
    }
unit-gal =
    { $n ->
        [one] { $value } галлон
        [few] { $value } галлона
        [many] { $value } галлонов
       *[other] { $value } галлона
    }
unit-g =
    { $n ->
        [one] { $value } г
        [few] { $value } г
        [many] { $value } г
       *[other] { $value } г
    }
unit-kg =
    { $n ->
        [one] { $value } кг
        [few] { $value } кг
        [many] { $value } кг
       *[other] { $value } кг
    }
unit-oz =
    { $n ->
        [one] { $value } унция
        [few] { $value } унции
        [many] { $value } унций
       *[other] { $value } унции
    }
unit-lb =
    { $n ->
        [one] { $value } фунт
        [few] { $value } фунта
        [many] { $value } фунтов
       *[other] { $value } фунта
    }
unit-piece =
    { $n ->
        [one] { $value } штука
        [few] { $value } штуки
        [many] { $value } штук
       *[other] { $value } штуки
    }
measure-both = { $first } ({ $second })
measure-stated = { $measure } (указано: { $stated })

## Списки

list-and-next = { $rest }, { $next }
list-or-next = { $rest }, { $next }
list-and =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest } и { $last }
            }
       *[more] { $rest } и { $last }
    }
list-or =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest } или { $last }
            }
       *[more] { $rest } или { $last }
    }

## Даты. Дни недели — с понедельника. Месяцы — в родительном падеже, как после числа.

weekday-wide =
    { $day ->
        [1] понедельник
        [2] вторник
        [3] среда
        [4] четверг
        [5] пятница
        [6] суббота
       *[7] воскресенье
    }
weekday-short =
    { $day ->
        [1] пн
        [2] вт
        [3] ср
        [4] чт
        [5] пт
        [6] сб
       *[7] вс
    }
month-wide =
    { $month ->
        [1] января
        [2] февраля
        [3] марта
        [4] апреля
        [5] мая
        [6] июня
        [7] июля
        [8] августа
        [9] сентября
        [10] октября
        [11] ноября
       *[12] декабря
    }
month-short =
    { $month ->
        [1] янв.
        [2] февр.
        [3] мар.
        [4] апр.
        [5] мая
        [6] июн.
        [7] июл.
        [8] авг.
        [9] сент.
        [10] окт.
        [11] нояб.
       *[12] дек.
    }
date-full = { $weekday }, { $day } { $month } { $year } г.
date-long = { $day } { $month } { $year } г.
date-day-month = { $day } { $month }
date-weekday-day-month = { $weekday }, { $day } { $month }

## Время

time-12 =
    { $half ->
        [am] { $hour }:{ $minute } AM
       *[pm] { $hour }:{ $minute } PM
    }
time-24 = { $hour }:{ $minute }
