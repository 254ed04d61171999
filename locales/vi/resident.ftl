### What residents read on their phones. Plain words, short sentences, no jargon.

## Around every screen

page-title = { $program }: bỏ gì vào đâu
skip = Đến phần chính
back = Trở lại
language-label = Ngôn ngữ
zone-label = Khu vực
zone-none = Chọn khu vực
unreviewed = Bản dịch này chưa có người kiểm tra. Nếu thấy sai, xin đọc bản tiếng Anh.
decided-edition = Hướng dẫn: { $edition }
privacy = Những gì quý vị tra chỉ ở trong điện thoại này. Không gửi đi, không đếm.

## Finding an item

search-label = Quý vị muốn bỏ món gì?
search-placeholder = Ví dụ: hộp pizza
search-count =
    { $count ->
        [0] Không tìm thấy gì
       *[other] Tìm thấy { $count } món
    }
search-nothing = Không tìm thấy tên này. Xin thử từ ngắn hơn. Món không có trong danh sách chưa chắc là “không”: hãy hỏi chúng tôi.
search-long = Chữ quá dài. Chỉ tìm { $count } chữ cái đầu.
home-recent = Mới tra gần đây
home-common = Thường tra
home-categories = Xem theo loại

## Questions

cannot-tell = Tôi không biết
questions-left =
    { $count ->
       *[other] Còn nhiều nhất { $count } câu hỏi
    }
ruler-title = Đo bằng màn hình này
ruler-card = Áp thẻ ngân hàng dựng đứng vào màn hình. Kéo thanh trượt đến khi hình rộng bằng thẻ.
ruler-use = Giờ đặt món đồ lên thước, một đầu ở số 0.
ruler-cards = { $measure }: số thẻ ngân hàng xếp nối nhau: { $count }

## Answers

verdict-yes = Được
verdict-no = Không
verdict-elsewhere = Không bỏ ở đây, có nơi khác nhận
verdict-unlisted = Không có trong danh sách: hãy hỏi
verdict-undecided = Chưa quyết định: hãy hỏi
verdict-closed = Không: không có trong danh sách
caution-title = Cẩn thận!
prepare-title = Chuẩn bị ra sao
why-title = Vì sao
also-title = Nơi khác cũng nhận
temporary-order = Đang có quy định tạm thời, có thể sớm thay đổi.
assumed-title = Quý vị không biết nên chúng tôi chọn câu trả lời cẩn thận:
assumed-line = { $fact }: { $value }
ask-contact = Hỏi { $name }:
decided-title = Theo quy định nào
decided-rule = Quy định:
decided-acknowledged = Một người có tên đã cho phép ngoại lệ này của quy định an toàn.

## Places to take things to

site-more =
    { $count ->
       *[other] { $count } nơi khác
    }
site-locate = Tìm nơi gần nhất
site-no-position = Điện thoại không cho biết vị trí.
near-label = Thị trấn, khu vực hoặc mã bưu chính
near-find = Tìm ở đó
near-found = Gần { $place } nhất.
near-unknown = Hướng dẫn không biết nơi “{ $place }”. Xin thử tên thị trấn, khu vực hoặc điểm thu nhận.
site-also-takes = Cũng nhận: { $items }
site-all-items = Tất cả những gì nơi này nhận
site-booking = Xin hẹn trước.
site-proof = Mang giấy chứng minh địa chỉ.
site-permit = Cần giấy phép.
site-voucher = Cần phiếu.
container-rules-title = Về { $container }
hours-open = Đang mở cửa
hours-open-until = Mở đến { $time }
hours-closed = Đang đóng cửa
hours-closed-until = Đóng cửa, mở lại { $time }
hours-appointment = Chỉ mở khi có hẹn
hours-unknown = Không rõ giờ mở cửa: xin gọi trước
hours-day-time = { $day }, { $time }

## Without a network

offline-fetching = Đang lưu hướng dẫn để dùng khi không có mạng…
offline-ready = Đã lưu. Dùng được khi không có mạng.
offline-now = Quý vị không có mạng. Hướng dẫn chạy từ điện thoại này.
offline-incomplete = Quý vị không có mạng và hướng dẫn chưa lưu xong. Có thể thiếu vài phần.
offline-failed = Không lưu được hướng dẫn. Chỉ dùng được khi có mạng. Xin thử lại sau.
offline-impossible = Trình duyệt này không lưu được hướng dẫn. Chỉ dùng được khi có mạng.
update-ready = Có hướng dẫn mới.
update-now = Dùng ngay
offline-lost = Điện thoại đã xóa hướng dẫn đã lưu. Đang lưu lại…
offline-forgetful = Trình duyệt này không cho hướng dẫn lưu gì. Chỉ dùng được khi có mạng và không nhớ ngôn ngữ, khu vực của bạn.
update-failed = Hướng dẫn mới chưa tải đủ. Bản này vẫn dùng được, điện thoại sẽ thử lại.

## When something is not there

unknown-item = Hướng dẫn không có món “{ $id }”. Xin tìm theo tên.
unknown-category = Hướng dẫn không có nhóm “{ $id }”. Xin chọn ở trang đầu.
unknown-address = Không có trang “{ $address }”. Xin về trang đầu.
unknown-language = Hướng dẫn chưa có tiếng “{ $language }”. Xin chọn tiếng khác.
language-broken = Chữ của “{ $language }” chưa tải đủ. Xin kiểm tra mạng rồi chọn lại ngôn ngữ.
unknown-zone = Hướng dẫn không có khu vực “{ $id }”. Xin chọn khu vực của bạn ở cuối trang.
clock-wrong = Điện thoại báo hôm nay là { $date }. Không thể đúng. Không biết nơi nào đang mở, và quy định theo mùa có thể sai. Xin chỉnh lại ngày.
