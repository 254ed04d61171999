### What comparing programs found: changes, the notice of them, the regional report, and printed
### lines that are no longer true. Neutral: nothing is called good or bad.

## Answers and changes. $item is a name, $answer, $before and $after are answers such as

## "Yes, Recycling"

compare-answer = { $verdict }, { $place }
compare-becomes = { $item }: “{ $before }”에서 “{ $after }”(으)로 바뀝니다.
compare-stays = { $item }: 그대로 “{ $answer }”.
compare-new = { $item }: 안내에 새로 생김, “{ $answer }”.
compare-gone = { $item }: 안내에서 빠짐. 전에는 “{ $answer }”.
compare-steps-added = 새로 할 일: { $steps }
compare-steps-removed = 이제 필요 없음: { $steps }
compare-steps-order = 이제 이 순서로: { $steps }
compare-also = 이곳도 받습니다: { $places }.
compare-also-none = 다른 곳은 이제 받지 않습니다.
compare-ban-gone = 이제 법으로 금지된 통이 없습니다.
compare-caution = 지금 주의할 점: { $hazard }.
compare-caution-gone = 이 주의는 더 이상 해당 없음: { $hazard }.
compare-reason = 밝힌 이유: { $reason }
compare-reason-gone = 이제 이유를 밝히지 않습니다.
compare-temporary = 임시 규칙이 정합니다.
compare-temporary-over = 이제 임시 규칙이 아닙니다.

## When it is so. $conditions are facts such as "Resin mark: 3, 6 or 7 and Area: Fernlow"

compare-when = 조건: { $conditions }.
compare-when-many = 조건이 너무 많아 적을 수 없습니다.
compare-or = { $before }; 또는 { $next }
compare-any-but = { $values } 말고 모두
compare-day-on = { $day }에
compare-day-from = { $day }부터
compare-day-until = { $day }까지
compare-day-between = { $first }부터 { $last }까지

## The notice

notice-title = { $place } 분리배출 안내 변경
notice-editions = 이 알림은 { $before }와(과) { $after }을(를) 비교합니다.
notice-edition = { $label } 판
notice-edition-from = { $label } 판({ $day }부터)
notice-on = { $day } 기준입니다.
notice-nothing = 바뀌는 답이 없습니다.
notice-now-accepted = 새로 받는 것
notice-no-longer-accepted = 이제 안 받는 것
notice-another-place = 다른 곳으로 가는 것
notice-prepared-differently = 준비 방법이 다른 것
notice-asked-differently = 묻는 것이 다른 것
notice-caution-changed = 주의가 다른 것
notice-explained-differently = 설명이 다른 것
notice-new-in-guide = 안내에 새로 생긴 것
notice-gone-from-guide = 안내에서 빠진 것
notice-reworded = 다른 말로 바뀐 것
# $words is a text of the program.
notice-words-now = ‘{ $words }’
notice-words-before = 이전: ‘{ $words }’
notice-words-of = 이 이유를 보이는 물건: { $items }.
notice-more = { $count }개 더
notice-asked-now = 이제 이것에 달렸습니다: { $facts }.
notice-asked-no-longer = 이제 이것과 상관없습니다: { $facts }.
notice-contact = 문의: { $name }, { $ways }.
notice-unreviewed = 이 번역은 사람이 확인하지 않았습니다.

## Printed lines. $line is a printed line or an item, $sheet a sheet as in "untrue-sheet"

untrue-title = 이제 맞지 않는 인쇄된 줄
untrue-sheet =
    { $copies ->
        [0] 인쇄물 “{ $id }”, { $edition } 판
       *[other] 인쇄물 “{ $id }”, { $edition } 판, { $copies }부
    }
untrue-always = “{ $line }” ({ $sheet }): 이 판부터 맞지 않음.
untrue-from = “{ $line }” ({ $sheet }): { $day }부터 맞지 않음.
untrue-until = “{ $line }” ({ $sheet }): { $day }까지 맞지 않음.
untrue-between = “{ $line }” ({ $sheet }): { $first }부터 { $last }까지 맞지 않음.
untrue-now = 지금 맞는 것: “{ $answer }”.
untrue-gone = 이 물건은 이제 안내에 없습니다.

## The regional report. $places are jurisdictions

regional-title = 비교: { $places }
regional-contradictory = 서로 어긋나는 안내
regional-differing =
    { $count ->
       *[other] 다른 곳({ $count }개 물건)
    }
regional-agreed = 모두 같음
regional-says = { $places }: { $answer }
regional-with-steps = { $answer }. { $steps }
regional-unknown = 안내에 없음
regional-item-when = { $item }. { $when }
regional-more-cases =
    { $count ->
       *[other] 다른 경우에 { $count }가지가 더 다릅니다.
    }
