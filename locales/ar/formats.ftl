### Patterns in which numbers, measures, dates, times and lists are written.
### Words and patterns follow the Unicode CLDR (version 41); where they depart, a comment says so.
### Digits are 0-9: they are matched with marks on things, doors and signs, which carry these.

## Numbers

format-percent = { $value }{ "\u200E" }%{ "\u200E" }
format-kilobytes = { $value } كيلوبايت
format-megabytes = { $value } ميغابايت
format-range = { $from } – { $to }

## Measures. The digit stays before "two" as well ("2 بوصة", CLDR's short form), because the reader
## matches it with a mark or a tape measure.

unit-mm =
    { $n ->
        [zero] { $value } مم
        [one] { $value } مم
        [two] { $value } مم
        [few] { $value } مم
        [many] { $value } مم
       *[other] { $value } مم
    }
unit-cm =
    { $n ->
        [zero] { $value } سم
        [one] { $value } سم
        [two] { $value } سم
        [few] { $value } سم
        [many] { $value } سم
       *[other] { $value } سم
    }
unit-km =
    { $n ->
        [zero] { $value } كم
        [one] { $value } كم
        [two] { $value } كم
        [few] { $value } كم
        [many] { $value } كم
       *[other] { $value } كم
    }
unit-m =
    { $n ->
        [zero] { $value } متر
        [one] { $value } متر
        [two] { $value } متر
        [few] { $value } أمتار
        [many] { $value } مترًا
       *[other] { $value } متر
    }
unit-in =
    { $n ->
        [zero] { $value } بوصة
        [one] { $value } بوصة
        [two] { $value } بوصة
        [few] { $value } بوصات
        [many] { $value } بوصة
       *[other] { $value } بوصة
    }
unit-ft =
    { $n ->
        [zero] { $value } قدم
        [one] { $value } قدم
        [two] { $value } قدم
        [few] { $value } أقدام
        [many] { $value } قدمًا
       *[other] { $value } قدم
    }
unit-yd =
    { $n ->
        [zero] { $value } ياردة
        [one] { $value } ياردة
        [two] { $value } ياردة
        [few] { $value } ياردات
        [many] { $value } ياردة
       *[other] { $value } ياردة
    }
unit-mi =
    { $n ->
        [zero] { $value } ميل
        [one] { $value } ميل
        [two] { $value } ميل
        [few] { $value } أميال
        [many] { $value } ميلًا
       *[other] { $value } ميل
    }
unit-ml =
    { $n ->
        [zero] { $value } مل
        [one] { $value } مل
        [two] { $value } مل
        [few] { $value } مل
        [many] { $value } مل
       *[other] { $value } مل
    }
unit-l =
    { $n ->
        [zero] { $value } لتر
        [one] { $value } لتر
        [two] { $value } لتر
        [few] { $value } لترات
        [many] { $value } لترًا
       *[other] { $value } لتر
    }
unit-fl-oz =
    { $n ->
        [zero] { $value } أونصة سائلة
        [one] { $value } أونصة سائلة
        [two] { $value } أونصة سائلة
        [few] { $value } أونصات سائلة
        [many] { $value } أونصة سائلة
       *[other] { $value } أونصة سائلة
    }
unit-gal =
    { $n ->
        [zero] { $value } غالون
        [one] { $value } غالون
        [two] { $value } غالون
        [few] { $value } غالونات
        [many] { $value } غالونًا
       *[other] { $value } غالون
    }
unit-g =
    { $n ->
        [zero] { $value } غرام
        [one] { $value } غرام
        [two] { $value } غرام
        [few] { $value } غرامات
        [many] { $value } غرامًا
       *[other] { $value } غرام
    }
unit-kg =
    { $n ->
        [zero] { $value } كغم
        [one] { $value } كغم
        [two] { $value } كغم
        [few] { $value } كغم
        [many] { $value } كغم
       *[other] { $value } كغم
    }
unit-oz =
    { $n ->
        [zero] { $value } أونصة
        [one] { $value } أونصة
        [two] { $value } أونصة
        [few] { $value } أونصات
        [many] { $value } أونصة
       *[other] { $value } أونصة
    }
unit-lb =
    { $n ->
        [zero] { $value } رطل
        [one] { $value } رطل
        [two] { $value } رطل
        [few] { $value } أرطال
        [many] { $value } رطلًا
       *[other] { $value } رطل
    }
unit-piece =
    { $n ->
        [zero] { $value } قطعة
        [one] { $value } قطعة
        [two] { $value } قطعة
        [few] { $value } قطع
        [many] { $value } قطعة
       *[other] { $value } قطعة
    }
measure-both = { $first } ({ $second })
measure-stated = { $measure } (كما ورد: { $stated })

## Lists. "و" joins the word that follows it; there is no comma.

list-and-next = { $rest } و{ $next }
list-or-next = { $rest } أو { $next }
list-and =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest } و{ $last }
            }
       *[more] { $rest } و{ $last }
    }
list-or =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest } أو { $last }
            }
       *[more] { $rest } أو { $last }
    }

## Dates. Weekdays count from Monday.

weekday-wide =
    { $day ->
        [1] الاثنين
        [2] الثلاثاء
        [3] الأربعاء
        [4] الخميس
        [5] الجمعة
        [6] السبت
       *[7] الأحد
    }
weekday-short =
    { $day ->
        [1] الاثنين
        [2] الثلاثاء
        [3] الأربعاء
        [4] الخميس
        [5] الجمعة
        [6] السبت
       *[7] الأحد
    }
month-wide =
    { $month ->
        [1] يناير
        [2] فبراير
        [3] مارس
        [4] أبريل
        [5] مايو
        [6] يونيو
        [7] يوليو
        [8] أغسطس
        [9] سبتمبر
        [10] أكتوبر
        [11] نوفمبر
       *[12] ديسمبر
    }
month-short =
    { $month ->
        [1] يناير
        [2] فبراير
        [3] مارس
        [4] أبريل
        [5] مايو
        [6] يونيو
        [7] يوليو
        [8] أغسطس
        [9] سبتمبر
        [10] أكتوبر
        [11] نوفمبر
       *[12] ديسمبر
    }
date-full = { $weekday }، { $day } { $month } { $year }
date-long = { $day } { $month } { $year }
date-day-month = { $day } { $month }
date-weekday-day-month = { $weekday }، { $day } { $month }

## Times. $half is "am" or "pm".

time-12 =
    { $half ->
        [am] { $hour }:{ $minute } ص
       *[pm] { $hour }:{ $minute } م
    }
time-24 = { $hour }:{ $minute }
