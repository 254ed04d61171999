### Patterns in which numbers, measures, dates, times and lists are written.
### Words and patterns follow the Unicode CLDR (version 41). Units are written out in words and
### close up to the number with no space, as people write them by hand.

## Numbers

format-percent = { $value }%
format-kilobytes = { $value } kB
format-megabytes = { $value } MB
format-range = { $from }至{ $to }

## Measures. The language has one plural form.

unit-mm =
    { $n ->
       *[other] { $value }毫米
    }
unit-cm =
    { $n ->
       *[other] { $value }厘米
    }
unit-m =
    { $n ->
       *[other] { $value }米
    }
unit-km =
    { $n ->
       *[other] { $value }公里
    }
unit-in =
    { $n ->
       *[other] { $value }英寸
    }
unit-ft =
    { $n ->
       *[other] { $value }英尺
    }
unit-yd =
    { $n ->
       *[other] { $value }码
    }
unit-mi =
    { $n ->
       *[other] { $value }英里
    }
unit-ml =
    { $n ->
       *[other] { $value }毫升
    }
unit-l =
    { $n ->
       *[other] { $value }升
    }
unit-fl-oz =
    { $n ->
       *[other] { $value }液盎司
    }
unit-gal =
    { $n ->
       *[other] { $value }加仑
    }
unit-g =
    { $n ->
       *[other] { $value }克
    }
unit-kg =
    { $n ->
       *[other] { $value }公斤
    }
unit-oz =
    { $n ->
       *[other] { $value }盎司
    }
unit-lb =
    { $n ->
       *[other] { $value }磅
    }
unit-piece =
    { $n ->
       *[other] { $value }件
    }
measure-both = { $first }（{ $second }）
measure-stated = { $measure }（原文为 { $stated }）

## Lists

list-and-next = { $rest }、{ $next }
list-or-next = { $rest }、{ $next }
list-and =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest }和{ $last }
            }
       *[more] { $rest }和{ $last }
    }
list-or =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest }或{ $last }
            }
       *[more] { $rest }或{ $last }
    }

## Dates. Weekdays count from Monday.

weekday-wide =
    { $day ->
        [1] 星期一
        [2] 星期二
        [3] 星期三
        [4] 星期四
        [5] 星期五
        [6] 星期六
       *[7] 星期日
    }
weekday-short =
    { $day ->
        [1] 周一
        [2] 周二
        [3] 周三
        [4] 周四
        [5] 周五
        [6] 周六
       *[7] 周日
    }
month-wide =
    { $month ->
        [1] 1月
        [2] 2月
        [3] 3月
        [4] 4月
        [5] 5月
        [6] 6月
        [7] 7月
        [8] 8月
        [9] 9月
        [10] 10月
        [11] 11月
       *[12] 12月
    }
month-short =
    { $month ->
        [1] 1月
        [2] 2月
        [3] 3月
        [4] 4月
        [5] 5月
        [6] 6月
        [7] 7月
        [8] 8月
        [9] 9月
        [10] 10月
        [11] 11月
       *[12] 12月
    }
date-full = { $year }年{ $month }{ $day }日{ $weekday }
date-long = { $year }年{ $month }{ $day }日
date-day-month = { $month }{ $day }日
date-weekday-day-month = { $month }{ $day }日{ $weekday }

## Times. $half is "am" or "pm".

time-12 =
    { $half ->
        [am] 上午{ $hour }:{ $minute }
       *[pm] 下午{ $hour }:{ $minute }
    }
time-24 = { $hour }:{ $minute }
