### What comparing programs found: changes, the notice of them, the regional report, and printed
### lines that are no longer true. Neutral: nothing is called good or bad.

## Answers and changes. $item is a name, $answer, $before and $after are answers such as
## "Yes, Recycling"

# A verdict and the place: "Yes, Recycling".
compare-answer = { $verdict }, { $place }
compare-becomes = { $item }: “{ $before }” becomes “{ $after }”.
compare-stays = { $item }: still “{ $answer }”.
compare-new = { $item } is new in the guide: “{ $answer }”.
compare-gone = { $item } is no longer in the guide. It was “{ $answer }”.
# $steps are sentences, each with its full stop.
compare-steps-added = New: { $steps }
compare-steps-removed = No longer needed: { $steps }
compare-steps-order = In this order now: { $steps }
compare-also = Also taken at: { $places }.
compare-also-none = No other places take it any more.
compare-ban-gone = The law no longer bans it from any container.
# $hazard is a danger: "Lithium battery (rechargeable)".
compare-caution = The caution is now: { $hazard }.
compare-caution-gone = The caution no longer applies: { $hazard }.
# $reason is a sentence.
compare-reason = The reason given: { $reason }
compare-reason-gone = No reason is given any more.
compare-temporary = For now, this is under a temporary order.
compare-temporary-over = This is no longer under a temporary order.

## When it is so. $conditions are facts such as "Resin mark: 3, 6 or 7 and Area: Fernlow"

compare-when = When: { $conditions }.
compare-when-many = In too many cases to list here.
# One alternative after another; the semicolon keeps them apart.
compare-or = { $before }; or { $next }
compare-any-but = any but { $values }
compare-day-on = on { $day }
compare-day-from = from { $day }
compare-day-until = until { $day }
compare-day-between = from { $first } until { $last }

## The notice

# $place is the jurisdiction.
notice-title = Changes to the sorting guide of { $place }
# $before and $after are editions, as in the two messages below.
notice-editions = This notice compares { $before } with { $after }.
notice-edition = edition { $label }
notice-edition-from = edition { $label } (from { $day })
notice-on = As it stands on { $day }.
notice-nothing = No answer changes.
notice-now-accepted = Newly accepted
notice-no-longer-accepted = No longer accepted
notice-another-place = Goes to another place
notice-prepared-differently = Prepared in another way
notice-asked-differently = Other questions are asked
notice-caution-changed = Another caution
notice-explained-differently = Explained in another way
notice-new-in-guide = New in the guide
notice-gone-from-guide = No longer in the guide
notice-reworded = Said in other words
# $words is a text of the program.
notice-words-now = “{ $words }”
notice-words-before = Before: “{ $words }”
# $items are things whose answers give these words as their reason, the last of them perhaps "notice-more".
notice-words-of = The reason given with: { $items }.
notice-more = { $count } more
# $facts are names of facts: "Resin mark and Closure".
notice-asked-now = It now depends on: { $facts }.
notice-asked-no-longer = It no longer depends on: { $facts }.
# $name is an office, $ways are a telephone number or an e-mail address.
notice-contact = Questions? { $name }: { $ways }.
notice-unreviewed = This translation has not been reviewed by a person.

## Printed lines. $line is a printed line or an item, $sheet a sheet as in "untrue-sheet"

untrue-title = Printed lines that are no longer true
untrue-sheet =
    { $copies ->
        [0] sheet “{ $id }”, edition { $edition }
        [one] sheet “{ $id }”, edition { $edition }, { $copies } copy
       *[other] sheet “{ $id }”, edition { $edition }, { $copies } copies
    }
untrue-always = “{ $line }” ({ $sheet }): untrue since this edition began.
untrue-from = “{ $line }” ({ $sheet }): untrue from { $day }.
untrue-until = “{ $line }” ({ $sheet }): untrue until { $day }.
untrue-between = “{ $line }” ({ $sheet }): untrue from { $first } until { $last }.
untrue-now = True now: “{ $answer }”.
untrue-gone = The guide no longer has the item.

## The regional report. $places are jurisdictions

regional-title = Compared: { $places }
regional-contradictory = Contradictory advice
regional-differing =
    { $count ->
        [one] Who differs ({ $count } item)
       *[other] Who differs ({ $count } items)
    }
regional-agreed = True in all
regional-says = { $places }: { $answer }
# $steps are sentences.
regional-with-steps = { $answer }. { $steps }
regional-unknown = not in the guide
# $when is a sentence: "When: Resin mark: 1."
regional-item-when = { $item }. { $when }
regional-more-cases =
    { $count ->
        [one] They differ in { $count } other way in other cases.
       *[other] They differ in { $count } other ways in other cases.
    }
