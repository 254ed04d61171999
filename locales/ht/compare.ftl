### What comparing programs found: changes, the notice of them, the regional report, and printed
### lines that are no longer true. Neutral: nothing is called good or bad.

## Answers and changes. $item is a name, $answer, $before and $after are answers such as


## "Yes, Recycling"

compare-answer = { $verdict }, { $place }
compare-becomes = { $item }: “{ $before }” tounen “{ $after }”.
compare-stays = { $item }: toujou “{ $answer }”.
compare-new = { $item } nouvo nan gid la: “{ $answer }”.
compare-gone = { $item } pa nan gid la ankò. Li te “{ $answer }”.
compare-steps-added = Nouvo: { $steps }
compare-steps-removed = Pa nesesè ankò: { $steps }
compare-steps-order = Nan lòd sa a kounye a: { $steps }
compare-also = Yo pran li tou nan: { $places }.
compare-also-none = Okenn lòt kote pa pran li ankò.
compare-ban-gone = Lalwa pa entèdi li nan okenn bak ankò.
compare-caution = Avètisman an kounye a: { $hazard }.
compare-caution-gone = Avètisman an pa konte ankò: { $hazard }.
compare-reason = Rezon yo bay la: { $reason }
compare-reason-gone = Yo pa bay rezon ankò.
compare-temporary = Se yon règ pwovizwa ki deside sa.
compare-temporary-over = Okenn règ pwovizwa pa deside sa ankò.

## When it is so. $conditions are facts such as "Resin mark: 3, 6 or 7 and Area: Fernlow"

compare-when = Lè: { $conditions }.
compare-when-many = Nan twòp kondisyon pou mete nan lis.
compare-or = { $before }; oswa { $next }
compare-any-but = nenpòt, sòf { $values }
compare-day-on = { $day }
compare-day-from = depi { $day }
compare-day-until = jiska { $day }
compare-day-between = depi { $first } rive { $last }

## The notice

notice-title = Chanjman nan gid triyaj { $place }
notice-editions = Avi sa a konpare { $before } ak { $after }.
notice-edition = edisyon { $label }
notice-edition-from = edisyon { $label } (depi { $day })
notice-on = Jan li ye { $day }.
notice-nothing = Okenn repons pa chanje.
notice-now-accepted = Yo aksepte kounye a
notice-no-longer-accepted = Yo pa aksepte ankò
notice-another-place = Ale yon lòt kote
notice-prepared-differently = Prepare yon lòt jan
notice-asked-differently = Lòt kesyon
notice-caution-changed = Lòt avètisman
notice-explained-differently = Esplike yon lòt jan
notice-new-in-guide = Nouvo nan gid la
notice-gone-from-guide = Pa nan gid la ankò
notice-reworded = Di ak lòt mo
# $words is a text of the program.
notice-words-now = “{ $words }”
notice-words-before = Anvan: “{ $words }”
notice-words-of = Rezon yo bay ak: { $items }.
notice-more = { $count } lòt
notice-asked-now = Kounye a li depann de: { $facts }.
notice-asked-no-longer = Li pa depann ankò de: { $facts }.
notice-contact = Kesyon? { $name }: { $ways }.
notice-unreviewed = Pèsonn pa verifye tradiksyon sa a.

## Printed lines. $line is a printed line or an item, $sheet a sheet as in "untrue-sheet"

untrue-title = Liy enprime ki pa vre ankò
untrue-sheet =
    { $copies ->
        [0] fèy “{ $id }”, edisyon { $edition }
       *[other] fèy “{ $id }”, edisyon { $edition }, { $copies } kopi
    }
untrue-always = “{ $line }” ({ $sheet }): pa vre depi edisyon sa a kòmanse.
untrue-from = “{ $line }” ({ $sheet }): pa vre depi { $day }.
untrue-until = “{ $line }” ({ $sheet }): pa vre jiska { $day }.
untrue-between = “{ $line }” ({ $sheet }): pa vre depi { $first } rive { $last }.
untrue-now = Vre kounye a: “{ $answer }”.
untrue-gone = Gid la pa gen bagay sa a ankò.

## The regional report. $places are jurisdictions

regional-title = Konpare: { $places }
regional-contradictory = Konsèy ki youn kont lòt
regional-differing =
    { $count ->
       *[other] Kiyès ki diferan ({ $count } bagay)
    }
regional-agreed = Vre tout kote
regional-says = { $places }: { $answer }
regional-with-steps = { $answer }. { $steps }
regional-unknown = pa nan gid la
regional-item-when = { $item }. { $when }
regional-more-cases =
    { $count ->
       *[other] Yo diferan nan { $count } lòt fason nan lòt ka.
    }
