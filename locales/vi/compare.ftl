### What comparing programs found: changes, the notice of them, the regional report, and printed
### lines that are no longer true. Neutral: nothing is called good or bad.

## Answers and changes. $item is a name, $answer, $before and $after are answers such as

## "Yes, Recycling"

compare-answer = { $verdict }, { $place }
compare-becomes = { $item }: “{ $before }” đổi thành “{ $after }”.
compare-stays = { $item }: vẫn là “{ $answer }”.
compare-new = { $item } mới có trong hướng dẫn: “{ $answer }”.
compare-gone = { $item } không còn trong hướng dẫn. Trước là “{ $answer }”.
compare-steps-added = Mới: { $steps }
compare-steps-removed = Không cần nữa: { $steps }
compare-steps-order = Bây giờ theo thứ tự này: { $steps }
compare-also = Nơi khác cũng nhận: { $places }.
compare-also-none = Không nơi nào khác nhận nữa.
compare-ban-gone = Luật không còn cấm bỏ vào thùng nào.
compare-caution = Lời cảnh báo bây giờ: { $hazard }.
compare-caution-gone = Lời cảnh báo không còn áp dụng: { $hazard }.
compare-reason = Lý do nêu ra: { $reason }
compare-reason-gone = Không còn nêu lý do.
compare-temporary = Theo quy định tạm thời.
compare-temporary-over = Không còn theo quy định tạm thời.

## When it is so. $conditions are facts such as "Resin mark: 3, 6 or 7 and Area: Fernlow"

compare-when = Khi: { $conditions }.
compare-when-many = Có quá nhiều điều kiện để liệt kê.
compare-or = { $before }; hoặc { $next }
compare-any-but = bất kỳ trừ { $values }
compare-day-on = vào { $day }
compare-day-from = từ { $day }
compare-day-until = đến { $day }
compare-day-between = từ { $first } đến { $last }

## The notice

notice-title = Thay đổi trong hướng dẫn phân loại của { $place }
notice-editions = Thông báo này so sánh { $before } với { $after }.
notice-edition = ấn bản { $label }
notice-edition-from = ấn bản { $label } (từ { $day })
notice-on = Tính theo ngày { $day }.
notice-nothing = Không câu trả lời nào thay đổi.
notice-now-accepted = Mới được nhận
notice-no-longer-accepted = Không còn nhận
notice-another-place = Bỏ nơi khác
notice-prepared-differently = Chuẩn bị cách khác
notice-asked-differently = Hỏi câu khác
notice-caution-changed = Cảnh báo khác
notice-explained-differently = Giải thích cách khác
notice-new-in-guide = Mới có trong hướng dẫn
notice-gone-from-guide = Không còn trong hướng dẫn
notice-reworded = Được nói bằng từ khác
# $words is a text of the program.
notice-words-now = “{ $words }”
notice-words-before = Trước đây: “{ $words }”
notice-words-of = Là lý do nêu ra với: { $items }.
notice-more = { $count } món khác
notice-asked-now = Bây giờ tùy vào: { $facts }.
notice-asked-no-longer = Không còn tùy vào: { $facts }.
notice-contact = Cần hỏi? { $name }: { $ways }.
notice-unreviewed = Bản dịch này chưa có người kiểm tra.

## Printed lines. $line is a printed line or an item, $sheet a sheet as in "untrue-sheet"

untrue-title = Các dòng đã in không còn đúng
untrue-sheet =
    { $copies ->
        [0] bản in “{ $id }”, ấn bản { $edition }
       *[other] bản in “{ $id }”, ấn bản { $edition }, { $copies } bản
    }
untrue-always = “{ $line }” ({ $sheet }): sai từ đầu ấn bản này.
untrue-from = “{ $line }” ({ $sheet }): sai từ { $day }.
untrue-until = “{ $line }” ({ $sheet }): sai đến { $day }.
untrue-between = “{ $line }” ({ $sheet }): sai từ { $first } đến { $last }.
untrue-now = Bây giờ đúng là: “{ $answer }”.
untrue-gone = Hướng dẫn không còn món này.

## The regional report. $places are jurisdictions

regional-title = So sánh: { $places }
regional-contradictory = Lời khuyên trái ngược nhau
regional-differing =
    { $count ->
       *[other] Nơi nào khác ({ $count } món)
    }
regional-agreed = Giống nhau ở mọi nơi
regional-says = { $places }: { $answer }
regional-with-steps = { $answer }. { $steps }
regional-unknown = không có trong hướng dẫn
regional-item-when = { $item }. { $when }
regional-more-cases =
    { $count ->
       *[other] Trong các trường hợp khác còn { $count } điểm khác nhau.
    }
