### Patterns in which numbers, measures, dates, times and lists are written.
### Words and patterns follow the Unicode CLDR (version 41). US units keep the names under which
### Vietnamese speakers in North America know them, written out.

## Numbers

format-percent = { $value }%
format-kilobytes = { $value } kB
format-megabytes = { $value } MB
format-range = { $from } - { $to }

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
       *[other] { $value } inch
    }
unit-ft =
    { $n ->
       *[other] { $value } foot
    }
unit-yd =
    { $n ->
       *[other] { $value } yard
    }
unit-mi =
    { $n ->
       *[other] { $value } dặm
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
       *[other] { $value } ounce lỏng
    }
unit-gal =
    { $n ->
       *[other] { $value } gallon
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
       *[other] { $value } ounce
    }
unit-lb =
    { $n ->
       *[other] { $value } pound
    }
unit-piece =
    { $n ->
       *[other] { $value } cái
    }
measure-both = { $first } ({ $second })
measure-stated = { $measure } (ghi là { $stated })

## Lists

list-and-next = { $rest }, { $next }
list-or-next = { $rest }, { $next }
list-and =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest } và { $last }
            }
       *[more] { $rest } và { $last }
    }
list-or =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest } hoặc { $last }
            }
       *[more] { $rest } hoặc { $last }
    }

## Dates. Weekdays count from Monday.

weekday-wide =
    { $day ->
        [1] Thứ Hai
        [2] Thứ Ba
        [3] Thứ Tư
        [4] Thứ Năm
        [5] Thứ Sáu
        [6] Thứ Bảy
       *[7] Chủ Nhật
    }
weekday-short =
    { $day ->
        [1] T2
        [2] T3
        [3] T4
        [4] T5
        [5] T6
        [6] T7
       *[7] CN
    }
month-wide =
    { $month ->
        [1] tháng 1
        [2] tháng 2
        [3] tháng 3
        [4] tháng 4
        [5] tháng 5
        [6] tháng 6
        [7] tháng 7
        [8] tháng 8
        [9] tháng 9
        [10] tháng 10
        [11] tháng 11
       *[12] tháng 12
    }
month-short =
    { $month ->
        [1] thg 1
        [2] thg 2
        [3] thg 3
        [4] thg 4
        [5] thg 5
        [6] thg 6
        [7] thg 7
        [8] thg 8
        [9] thg 9
        [10] thg 10
        [11] thg 11
       *[12] thg 12
    }
date-full = { $weekday }, { $day } { $month }, { $year }
date-long = { $day } { $month }, { $year }
date-day-month = { $day } { $month }
date-weekday-day-month = { $weekday }, { $day } { $month }

## Times. $half is "am" or "pm".

time-12 =
    { $half ->
        [am] { $hour }:{ $minute } SA
       *[pm] { $hour }:{ $minute } CH
    }
time-24 = { $hour }:{ $minute }
