### Patterns in which numbers, measures, dates, times and lists are written.
### Words and patterns follow the Unicode CLDR (version 41). US units are written out in Korean
### and stand close to the number.

## Numbers

format-percent = { $value }%
format-kilobytes = { $value } kB
format-megabytes = { $value } MB
format-range = { $from } ~ { $to }

## Measures. The language has one plural form.

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
       *[other] { $value }인치
    }
unit-ft =
    { $n ->
       *[other] { $value }피트
    }
unit-yd =
    { $n ->
       *[other] { $value }야드
    }
unit-mi =
    { $n ->
       *[other] { $value }마일
    }
unit-ml =
    { $n ->
       *[other] { $value } mL
    }
unit-l =
    { $n ->
       *[other] { $value } L
    }
unit-fl-oz =
    { $n ->
       *[other] { $value }액량 온스
    }
unit-gal =
    { $n ->
       *[other] { $value }갤런
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
       *[other] { $value }온스
    }
unit-lb =
    { $n ->
       *[other] { $value }파운드
    }
unit-piece =
    { $n ->
       *[other] { $value }개
    }
measure-both = { $first }({ $second })
measure-stated = { $measure }(원문: { $stated })

## Lists

list-and-next = { $rest }, { $next }
list-or-next = { $rest }, { $next }
list-and =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest } 및 { $last }
            }
       *[more] { $rest } 및 { $last }
    }
list-or =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest } 또는 { $last }
            }
       *[more] { $rest } 또는 { $last }
    }

## Dates. Weekdays count from Monday.

weekday-wide =
    { $day ->
        [1] 월요일
        [2] 화요일
        [3] 수요일
        [4] 목요일
        [5] 금요일
        [6] 토요일
       *[7] 일요일
    }
weekday-short =
    { $day ->
        [1] 월
        [2] 화
        [3] 수
        [4] 목
        [5] 금
        [6] 토
       *[7] 일
    }
month-wide =
    { $month ->
        [1] 1월
        [2] 2월
        [3] 3월
        [4] 4월
        [5] 5월
        [6] 6월
        [7] 7월
        [8] 8월
        [9] 9월
        [10] 10월
        [11] 11월
       *[12] 12월
    }
month-short =
    { $month ->
        [1] 1월
        [2] 2월
        [3] 3월
        [4] 4월
        [5] 5월
        [6] 6월
        [7] 7월
        [8] 8월
        [9] 9월
        [10] 10월
        [11] 11월
       *[12] 12월
    }
date-full = { $year }년 { $month } { $day }일 { $weekday }
date-long = { $year }년 { $month } { $day }일
date-day-month = { $month } { $day }일
date-weekday-day-month = { $month } { $day }일 ({ $weekday })

## Times. $half is "am" or "pm".

time-12 =
    { $half ->
        [am] 오전 { $hour }:{ $minute }
       *[pm] 오후 { $hour }:{ $minute }
    }
time-24 = { $hour }:{ $minute }
