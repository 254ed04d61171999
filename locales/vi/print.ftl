### The print screen and what the check before printing (preflight) says.
### $place, $what, $field and $zone come from the printing part in English.

## The print screen

print-sheet = Bản in
sheet-lid = Nhãn nắp thùng, 7 × 9 inch
sheet-postcard = Bưu thiếp gửi thư, 9 × 6 inch
print-zone = Chỉ cho một khu vực
print-language = Ngôn ngữ { $number }
print-make = Tạo bản in
print-making = Đang tạo bản in…
print-done = Bản in đã xong.
print-refused = Không tạo tập tin. Xin sửa các lỗi bên dưới rồi thử lại.
print-unreachable = Không tải được phần in. Xin kiểm tra mạng rồi thử lại.
print-download = Tải PDF cho nhà in
print-page = Trang { $number }
print-no-stream = Không có dòng rác “{ $stream }”. Xin chọn trong danh sách.
print-no-zone = Không có khu vực “{ $zone }”. Xin chọn trong danh sách.
print-no-language = Xin chọn một đến ba ngôn ngữ của chương trình.
print-shortened = { $item }: chỉ riêng dòng này đúng trong { $percent } trường hợp; phần còn lại bỏ bớt cho vừa.
preflight-title = Đã kiểm tra trước khi in

## Preflight: what was checked and is right. Sizes are in mm, type in points

preflight-bleed-and-safe-area = Tràn lề { $bleed } mm mọi phía, không có gì trong vòng { $safe } mm từ mép.
preflight-hazards-shown = Chất nguy hiểm đã ghi: { $count }.
preflight-ink-coverage = Lượng mực nhiều nhất tại một điểm: { $coverage }%, giới hạn { $limit }%.
preflight-postal-zones = Các vùng trống của mặt địa chỉ đều trống.
preflight-qr-code = Mã QR: phiên bản { $version }, mức { $level }, ô { $module } mm, viền trống { $quiet } ô.
preflight-type-sizes = Chữ { $body } pt, nhỏ nhất { $smallest } pt; ở khoảng cách { $distance } mm cần ít nhất { $floor } pt.

## Preflight: somebody should look before it goes to the print shop

preflight-translation-unreviewed = Chưa ai kiểm tra chữ “{ $lang }”. Xin nhờ người đọc trước khi in.
preflight-postal-field-missing = Ô “{ $field }” còn trống. Xin điền, hoặc để nhà in thêm.
preflight-qr-dense = Mã QR quá dày (phiên bản { $version }, { $characters } ký tự). Địa chỉ ngắn hơn dễ quét hơn.

## Preflight: errors. No file is made until they are put right. $place and $what say where

preflight-address-invalid = Không dùng được địa chỉ cho mã QR: “{ $address }”. Xin viết đầy đủ, bắt đầu bằng https://
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: “{ $text }” có ký tự đổi hướng viết ({ $codepoint }, vị trí { $position }). Xin xóa và gõ lại.
        [control] { $place }: “{ $text }” có ký tự điều khiển ({ $codepoint }, vị trí { $position }). Xin xóa và gõ lại.
       *[invisible] { $place }: “{ $text }” có ký tự không thấy được ({ $codepoint }, vị trí { $position }). Xin xóa và gõ lại.
    }
preflight-date-invalid = “{ $date }” không phải là ngày. Xin viết năm, tháng, ngày: 2027-01-31
preflight-distance-invalid = “{ $distance }” không phải khoảng cách đọc tính bằng mm. Xin nhập người đọc đứng cách bao xa.
preflight-font-not-embeddable = Phông chữ “{ $family }” không được phép nhúng vào tập tin. Xin chọn phông khác.
preflight-font-unreadable = Không đọc được tập tin phông “{ $family }”. Xin tải lại.
preflight-hazard-accepted = { $place }: “{ $text }” là chất nguy hiểm nhưng nằm trong đồ được nhận. Chất nguy hiểm không bao giờ vào thùng: xin sửa quy tắc.
preflight-hazard-missing = Thiếu chất nguy hiểm “{ $text }” trên bản in tiếng “{ $lang }”. Không được bỏ bớt chất nguy hiểm để lấy chỗ.
preflight-language-count = Một bản in dùng một đến ba ngôn ngữ, không phải { $count }.
preflight-language-invalid = “{ $lang }” không phải mã ngôn ngữ. Xin viết như es hoặc es-US.
preflight-language-twice = Ngôn ngữ “{ $lang }” có hai lần. Xin bỏ một.
preflight-languages-differ = “{ $lang }” nói khác “{ $first }”: { $what }.
preflight-missing-glyph = { $place }: không phông nào ở đây có { $characters }, dùng trong “{ $text }”. Xin viết cách khác, hoặc thêm phông có ký tự đó.
preflight-nothing-to-say = Không có gì để in: chương trình chưa nói gì về dòng rác này. Xin viết quy tắc trước.
preflight-outside-safe-area = “{ $what }” nằm trong { $safe } mm từ mép, có thể bị cắt mất.
preflight-pictogram-unknown = { $place }: không có hình “{ $pictogram }”. Xin chọn hình khác.
preflight-picture-too-small = Một hình chỉ rộng { $side } mm. Xin in ít dòng hoặc ít ngôn ngữ hơn.
preflight-postal-field-full = Dòng { $line } của ô “{ $field }” không vừa: “{ $text }”. Xin rút ngắn.
preflight-postal-zone = “{ $what }” nằm trong { $zone }. Xin dời hoặc rút ngắn.
preflight-profile-unusable = Không dùng được hồ sơ màu: { $why }. Xin lấy hồ sơ CMYK mà nhà in chỉ định.
preflight-qr-too-fine = Mã QR quá nhỏ để quét: mỗi ô { $module } mm. Xin rút ngắn địa chỉ.
preflight-qr-too-long = Địa chỉ có { $characters } ký tự, nhiều hơn mã QR chứa được. Xin rút ngắn.
preflight-rule-too-thin = Đường kẻ “{ $what }” quá mảnh để in.
preflight-text-empty = { $place } không có chữ. Xin viết vào.
preflight-text-overlaps = “{ $text }” và “{ $other }” đè lên nhau. Xin rút ngắn một cái.
preflight-text-too-long = { $place } ({ $lang }): “{ $text }” không vừa dù ở { $floor } pt, cỡ chữ nhỏ nhất đọc được. Xin bớt khoảng { $cut } ký tự.
preflight-too-many-lines = Bản in “{ $sheet }” có { $lines } dòng bằng { $languages } ngôn ngữ, thiếu { $missing } mm ở cỡ { $floor } pt. Xin bớt dòng hoặc bớt ngôn ngữ.
preflight-too-much-ink = Có { $coverage }% mực tại một điểm; giới hạn là { $limit }%. Xin chọn màu nhạt hơn.
preflight-type-too-small = “{ $text }” cỡ { $size } pt; cần ít nhất { $least } pt. Xin rút ngắn chữ.
preflight-word-too-wide = { $place } ({ $lang }): từ “{ $word }” trong “{ $text }” rộng hơn cột ở cỡ { $floor } pt. Xin dùng từ nhiều nhất khoảng { $room } ký tự.
