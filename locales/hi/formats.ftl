### संख्या, माप, तारीख, समय और सूची लिखने के ढंग।
### शब्द और ढंग Unicode CLDR (संस्करण 41) के; जहाँ अलग हैं, वहाँ टिप्पणी है।

## संख्याएँ

format-percent = { $value }%
format-kilobytes = { $value } kB
format-megabytes = { $value } MB
format-range = { $from } – { $to }

## माप। संक्षेप बिंदु के बिना (CLDR में “मि॰मी॰”): पढ़ने में आसान।

unit-mm =
    { $n ->
        [one] { $value } मिमी
       *[other] { $value } मिमी
    }
unit-cm =
    { $n ->
        [one] { $value } सेमी
       *[other] { $value } सेमी
    }
unit-m =
    { $n ->
        [one] { $value } मीटर
       *[other] { $value } मीटर
    }
unit-km =
    { $n ->
        [one] { $value } किमी
       *[other] { $value } किमी
    }
unit-in =
    { $n ->
        [one] { $value } इंच
       *[other] { $value } इंच
    }
unit-ft =
    { $n ->
        [one] { $value } फ़ुट
       *[other] { $value } फ़ुट
    }
unit-yd =
    { $n ->
        [one] { $value } गज़
       *[other] { $value } गज़
    }
unit-mi =
    { $n ->
        [one] { $value } मील
       *[other] { $value } मील
    }
unit-ml =
    { $n ->
        [one] { $value } मिली
       *[other] { $value } मिली
    }
unit-l =
    { $n ->
        [one] { $value } लीटर
       *[other] { $value } लीटर
    }
unit-fl-oz =
    { $n ->
        [one] { $value } फ़्लूइड आउंस
       *[other] { $value } फ़्लूइड आउंस
    }
unit-gal =
    { $n ->
        [one] { $value } गैलन
       *[other] { $value } गैलन
    }
unit-g =
    { $n ->
        [one] { $value } ग्राम
       *[other] { $value } ग्राम
    }
unit-kg =
    { $n ->
        [one] { $value } किलो
       *[other] { $value } किलो
    }
unit-oz =
    { $n ->
        [one] { $value } आउंस
       *[other] { $value } आउंस
    }
unit-lb =
    { $n ->
        [one] { $value } पाउंड
       *[other] { $value } पाउंड
    }
unit-piece =
    { $n ->
        [one] { $value } नग
       *[other] { $value } नग
    }
measure-both = { $first } ({ $second })
measure-stated = { $measure } (लिखा है: { $stated })

## सूचियाँ

list-and-next = { $rest }, { $next }
list-or-next = { $rest }, { $next }
list-and =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest } और { $last }
            }
       *[more] { $rest } और { $last }
    }
list-or =
    { $size ->
        [two]
            { $sound ->
               *[other] { $rest } या { $last }
            }
       *[more] { $rest } या { $last }
    }

## तारीखें। दिन सोमवार से गिने जाते हैं।

weekday-wide =
    { $day ->
        [1] सोमवार
        [2] मंगलवार
        [3] बुधवार
        [4] गुरुवार
        [5] शुक्रवार
        [6] शनिवार
       *[7] रविवार
    }
weekday-short =
    { $day ->
        [1] सोम
        [2] मंगल
        [3] बुध
        [4] गुरु
        [5] शुक्र
        [6] शनि
       *[7] रवि
    }
month-wide =
    { $month ->
        [1] जनवरी
        [2] फ़रवरी
        [3] मार्च
        [4] अप्रैल
        [5] मई
        [6] जून
        [7] जुलाई
        [8] अगस्त
        [9] सितंबर
        [10] अक्टूबर
        [11] नवंबर
       *[12] दिसंबर
    }
month-short =
    { $month ->
        [1] जन॰
        [2] फ़र॰
        [3] मार्च
        [4] अप्रैल
        [5] मई
        [6] जून
        [7] जुल॰
        [8] अग॰
        [9] सित॰
        [10] अक्टू॰
        [11] नव॰
       *[12] दिस॰
    }
date-full = { $weekday }, { $day } { $month } { $year }
date-long = { $day } { $month } { $year }
date-day-month = { $day } { $month }
date-weekday-day-month = { $weekday }, { $day } { $month }

## समय

time-12 =
    { $half ->
        [am] { $hour }:{ $minute } am
       *[pm] { $hour }:{ $minute } pm
    }
time-24 = { $hour }:{ $minute }
