### What comparing programs found: changes, the notice of them, the regional report, and printed
### lines that are no longer true. Neutral: nothing is called good or bad.

## Answers and changes. $item is a name, $answer, $before and $after are answers such as

## "Yes, Recycling"

compare-answer = { $verdict }，{ $place }
compare-becomes = { $item }：“{ $before }”改为“{ $after }”。
compare-stays = { $item }：仍是“{ $answer }”。
compare-new = 指南新增 { $item }：“{ $answer }”。
compare-gone = 指南里不再有 { $item }。原来是“{ $answer }”。
compare-steps-added = 新增：{ $steps }
compare-steps-removed = 不再需要：{ $steps }
compare-steps-order = 现在按这个顺序：{ $steps }
compare-also = 也可以送到：{ $places }。
compare-also-none = 别处不再收它。
compare-ban-gone = 法律不再禁止把它放进任何桶。
compare-caution = 现在的警告是：{ $hazard }。
compare-caution-gone = 这个警告不再适用：{ $hazard }。
compare-reason = 给出的理由：{ $reason }
compare-reason-gone = 不再给出理由。
compare-temporary = 由临时规定决定。
compare-temporary-over = 不再由临时规定决定。

## When it is so. $conditions are facts such as "Resin mark: 3, 6 or 7 and Area: Fernlow"

compare-when = 条件：{ $conditions }。
compare-when-many = 条件太多，无法列出。
compare-or = { $before }；或 { $next }
compare-any-but = 除 { $values } 以外
compare-day-on = 在 { $day }
compare-day-from = 从 { $day } 起
compare-day-until = 到 { $day } 为止
compare-day-between = 从 { $first } 到 { $last }

## The notice

notice-title = { $place }分类指南的变动
notice-editions = 本通知比较 { $before } 和 { $after }。
notice-edition = { $label } 版
notice-edition-from = { $label } 版（从 { $day } 起）
notice-on = 以 { $day } 的情况为准。
notice-nothing = 没有答案变动。
notice-now-accepted = 新收的东西
notice-no-longer-accepted = 不再收的东西
notice-another-place = 改送别处
notice-prepared-differently = 准备方法不同
notice-asked-differently = 要问的问题不同
notice-caution-changed = 警告不同
notice-explained-differently = 说明不同
notice-new-in-guide = 指南新增
notice-gone-from-guide = 指南不再有
notice-reworded = 换了说法
# $words is a text of the program.
notice-words-now = “{ $words }”
notice-words-before = 原来：“{ $words }”
notice-words-of = 用作这些物品的理由：{ $items }。
notice-more = 另外 { $count } 种
notice-asked-now = 现在要看：{ $facts }。
notice-asked-no-longer = 不再看：{ $facts }。
notice-contact = 有问题？{ $name }：{ $ways }。
notice-unreviewed = 这份译文还没有人检查过。

## Printed lines. $line is a printed line or an item, $sheet a sheet as in "untrue-sheet"

untrue-title = 已经不对的印刷内容
untrue-sheet =
    { $copies ->
        [0] 印刷品“{ $id }”，{ $edition } 版
       *[other] 印刷品“{ $id }”，{ $edition } 版，{ $copies } 份
    }
untrue-always = “{ $line }”（{ $sheet }）：从本版开始就不对。
untrue-from = “{ $line }”（{ $sheet }）：从 { $day } 起不对。
untrue-until = “{ $line }”（{ $sheet }）：到 { $day } 为止不对。
untrue-between = “{ $line }”（{ $sheet }）：从 { $first } 到 { $last } 不对。
untrue-now = 现在正确的是：“{ $answer }”。
untrue-gone = 指南里不再有这个物品。

## The regional report. $places are jurisdictions

regional-title = 比较：{ $places }
regional-contradictory = 互相矛盾的说法
regional-differing =
    { $count ->
       *[other] 说法不同（{ $count } 项）
    }
regional-agreed = 全部相同
regional-says = { $places }：{ $answer }
regional-with-steps = { $answer }。{ $steps }
regional-unknown = 指南里没有
regional-item-when = { $item }。{ $when }
regional-more-cases =
    { $count ->
       *[other] 在其他情况下，还有 { $count } 处不同。
    }
