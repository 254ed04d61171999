### The print screen and what the check before printing (preflight) says.
### $place, $what, $field and $zone come from the printing part in English.

## The print screen

print-sheet = Bản in
sheet-lid = Nhãn nắp thùng
sheet-sticker = Nhãn dán tròn, một thông điệp
sheet-sign = Bảng ở thùng chung
sheet-postcard = Bưu thiếp gửi thư
sheet-self-mailer = Tờ gấp gửi thư
sheet-handout = Tờ phát tay
print-size = Khổ thành phẩm
print-size-usual = Khổ thường dùng
print-size-typed = Gõ bên dưới
print-typed-size = Khổ kèm đơn vị, như 8 x 12 in; hình tròn thì 115 mm
print-size-unread = “{ $text }” không phải kích thước. Xin viết rộng, cao và đơn vị: 8 x 12 in
print-corner = Bán kính góc, mm
print-fold = Gấp
print-fold-half = Một lần, ở giữa
print-fold-thirds = Hai lần, như lá thư
print-die-line = Vẽ đường bế bằng màu pha
print-printers-mark = Chừa chỗ cho dấu của nhà in
print-more = Thêm cho nhà in
print-stock = Giấy
print-thickness = Độ dày giấy, mm
print-distance = Đọc từ bao xa, mm
print-qr-level = Mã QR: chịu hư hỏng
print-qr-most = Nhiều nhất mà mã không to thêm
print-qr-medium = 15% (M)
print-qr-quartile = 25% (Q)
print-qr-high = 30% (H)
print-words = Số từ nhiều nhất mỗi dòng
print-words-any = Bao nhiêu cũng được
print-item = Một món
print-press = Nhiều bản trên một tờ in
print-press-none = Mỗi trang một bản
print-work-and-turn = In tự trở
print-no-item = Không có món “{ $item }”. Xin chọn trong danh sách.
print-nothing-against = Không có gì nói rằng “{ $item }” không được bỏ vào. Xin chọn món không được bỏ, hoặc chất nguy hiểm.
print-ticket = Tải phiếu in
print-number-unread = “{ $text }” không phải số milimét.
ticket-title = Phiếu in
ticket-sheet = Bản in
ticket-files = Tập tin
ticket-file =
    { $pages ->
       *[other] { $file }: { $pages } trang
    }
ticket-quantity = Số lượng
ticket-copies =
    { $copies ->
       *[other] { $languages }: { $copies } bản
    }
ticket-copies-unsaid = { $languages }: số bản sẽ thỏa thuận
ticket-trim = Khổ thành phẩm
ticket-size = { $width } × { $height } mm ({ $across } × { $down } in)
ticket-bleed = Tràn lề, mọi phía
ticket-mm = { $length } mm
ticket-corners = Góc
ticket-round = Cắt hình tròn
ticket-radius = Bo tròn, bán kính { $radius } mm
ticket-square = Vuông
ticket-die = Đường bế bằng màu pha “Dieline”, in chồng: xin đừng in
ticket-folds = Đường gấp
ticket-fold = Gấp ngang, cách cạnh trên của tờ chưa gấp { $at } mm
ticket-fold-order = Mặt địa chỉ ở ngoài. Cạnh dưới của mặt này là đường gấp; tờ gấp mở ở cạnh trên và được dán kín ở đó.
ticket-colours = Màu
ticket-colours-one = 4/0: xanh lơ, đỏ sen, vàng, đen ở một mặt
ticket-colours-two = 4/4: xanh lơ, đỏ sen, vàng, đen ở hai mặt
ticket-colours-note = PDF/X-4; chữ đen in chồng; tổng mực nhiều nhất { $limit }%
ticket-stock = Giấy
ticket-stock-unsaid = Sẽ thỏa thuận
ticket-thickness = Độ dày { $thickness } mm
ticket-thickness-unsaid = Độ dày cần xác nhận
ticket-press = Tờ in
ticket-work-and-turn = In tự trở: mặt sau trên cùng bản kẽm
ticket-mark = Dấu của nhà in
ticket-mark-room = Chừa chỗ 19 × 6 mm trong phần chữ nhỏ
ticket-edition = Ấn bản
ticket-date = Ngày làm
ticket-contact = Cần hỏi
print-zone = Chỉ cho một khu vực
print-language = Ngôn ngữ { $number }
print-make = Tạo bản in
print-making = Đang tạo bản in…
print-done = Bản in đã xong.
print-refused = Không tạo tập tin. Xin sửa các lỗi bên dưới rồi thử lại.
print-unreachable = Không tải được phần in. Xin kiểm tra mạng rồi thử lại.
print-download = Tải PDF cho nhà in
print-download-web = Tải PDF cho web
print-web-hint = PDF cho nhà in gửi đến nhà in. PDF cho web để đọc trên màn hình và đọc thành tiếng.
print-profile = Hồ sơ màu của nhà in (.icc)
print-profile-hint = Nếu không có, dùng hồ sơ có sẵn cho giấy láng.
print-ink-limit = Mực nhiều nhất, %
print-mark = Đánh dấu { $number } trên bản in
print-contradictions = Các dòng trái ngược nhau: { $count }. Xin xem bên dưới trước khi in.
print-page = Trang { $number }
print-no-stream = Không có dòng rác “{ $stream }”. Xin chọn trong danh sách.
print-no-zone = Không có khu vực “{ $zone }”. Xin chọn trong danh sách.
print-no-language = Xin chọn một đến bốn ngôn ngữ của chương trình.
print-shortened = { $item }: chỉ riêng dòng này đúng trong { $percent } trường hợp; phần còn lại bỏ bớt cho vừa.
print-left-out = Bỏ bớt vì không đủ chỗ: { $items }.
print-hazards-in-brief = Không đủ chỗ cho các nơi nhận chất nguy hiểm; mã QR và số điện thoại trên bản in dẫn đến đó.
print-refused-in-brief = Không đủ chỗ để ghi những thứ không nhận thì bỏ ở đâu; mã QR và số điện thoại trên bản in dẫn đến đó.
preflight-title = Đã kiểm tra trước khi in

## Preflight: what was checked and is right. Sizes are in mm, type in points

preflight-bleed-and-safe-area = Tràn lề { $bleed } mm mọi phía, không có gì trong vòng { $safe } mm từ mép.
preflight-boxes = Khổ thành phẩm { $finished } mm, kể cả tràn lề { $bleed } mm, trang có dấu { $page } mm.
preflight-contrast = Chữ nổi rõ trên nền: độ tương phản ít nhất { $ratio }:1, độ đen cách nhau ít nhất { $difference }%.
preflight-fonts-embedded = Mọi phông đều nằm trong tập tin, chỉ giữ hình của { $glyphs } ký tự được dùng: { $fonts }.
preflight-pictures-have-words = Hình có chữ cho người không nhìn thấy: { $count }.
preflight-hazards-shown = Chất nguy hiểm đã ghi: { $count }.
preflight-ink-coverage = Lượng mực nhiều nhất tại một điểm: { $coverage }%, giới hạn { $limit }%.
preflight-postal-zones = Các vùng trống của mặt địa chỉ đều trống.
preflight-qr-code = Mã QR: phiên bản { $version }, mức { $level }, ô { $module } mm, viền trống { $quiet } ô.
preflight-type-sizes = Chữ { $body } pt, nhỏ nhất { $smallest } pt; ở khoảng cách { $distance } mm cần ít nhất { $floor } pt.
preflight-translation-outdated = “{ $text }” ({ $lang }): bản gốc đã đổi sau khi dịch. Xin dịch lại trước khi in.
preflight-line-often-wrong = Chỉ riêng “{ $text }” thì mới đúng { $percent }% trường hợp. Xin nói rõ hơn, hoặc bỏ dòng này.
preflight-lines-contradict = “{ $text }” và “{ $other }” ({ $lang }) trái ngược nhau: ai đọc dòng đầu sẽ hiểu là cho cả hai. Xin viết lại một dòng.
preflight-picture-without-words = Chưa có chữ cho người không nhìn thấy biết ở đây là gì ({ $what }). Xin viết vào.

## Preflight: somebody should look before it goes to the print shop

preflight-translation-unreviewed = Chưa ai kiểm tra chữ “{ $lang }”. Xin nhờ người đọc trước khi in.
preflight-postal-field-missing = { $field }: còn trống. Xin điền, hoặc để nhà in thêm.
preflight-qr-dense = Mã QR quá dày (phiên bản { $version }, { $characters } ký tự). Địa chỉ ngắn hơn dễ quét hơn.

## Preflight: errors. No file is made until they are put right. $place and $what say where

preflight-address-invalid = Không dùng được địa chỉ cho mã QR: “{ $address }”. Xin viết đầy đủ, bắt đầu bằng https://
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: “{ $text }” có ký tự đổi hướng viết ({ $codepoint }, vị trí { $position }). Xin xóa và gõ lại.
        [control] { $place }: “{ $text }” có ký tự điều khiển ({ $codepoint }, vị trí { $position }). Xin xóa và gõ lại.
       *[invisible] { $place }: “{ $text }” có ký tự không thấy được ({ $codepoint }, vị trí { $position }). Xin xóa và gõ lại.
    }
preflight-boxes-wrong = Các khung không nằm trong nhau: thành phẩm { $finished } mm, kể cả tràn lề { $bleed } mm, trang { $page } mm. Xin chọn bản in khác.
preflight-contrast-low = “{ $text }” khó thấy trên nền: độ tương phản { $ratio }:1, cần ít nhất { $least }:1; độ đen cách nhau { $difference }%, cần ít nhất { $apart }%. Xin chọn màu mực khác.
preflight-ink-limit-invalid = “{ $limit }” không phải giới hạn mực. Xin nhập tổng của bốn bản kẽm mà nhà in nêu, từ 100 đến 400%.
preflight-qr-not-quiet = Quanh mã QR không có đủ { $quiet } ô giấy trống. Xin dời những gì ở đó.
preflight-date-invalid = “{ $date }” không phải là ngày. Xin viết năm, tháng, ngày: 2027-01-31
preflight-distance-invalid = “{ $distance }” không phải khoảng cách đọc tính bằng mm. Xin nhập người đọc đứng cách bao xa.
preflight-font-not-embeddable = Phông chữ “{ $family }” không được phép nhúng vào tập tin. Xin chọn phông khác.
preflight-font-unreadable = Không đọc được tập tin phông “{ $family }”. Xin tải lại.
preflight-hazard-accepted = { $place }: “{ $text }” là chất nguy hiểm nhưng nằm trong đồ được nhận. Chất nguy hiểm không bao giờ vào thùng: xin sửa quy tắc.
preflight-hazard-missing = Thiếu chất nguy hiểm “{ $text }” trên bản in tiếng “{ $lang }”. Không được bỏ bớt chất nguy hiểm để lấy chỗ.
preflight-language-count = Một bản in dùng một đến bốn ngôn ngữ, không phải { $count }.
preflight-language-invalid = “{ $lang }” không phải mã ngôn ngữ. Xin viết như es hoặc es-US.
preflight-language-twice = Ngôn ngữ “{ $lang }” có hai lần. Xin bỏ một.
preflight-languages-differ =
    { $what ->
        [sections] “{ $lang }” nói khác “{ $first }”: có { $theirs } phần, không phải { $ours }. Xin dịch phần còn thiếu.
        [verdict] “{ $lang }” nói khác “{ $first }”: phần { $section } có kết luận khác. Xin sửa lại.
        [lines] “{ $lang }” nói khác “{ $first }”: phần { $section } có { $theirs } dòng, không phải { $ours }. Xin dịch phần còn thiếu.
       *[picture] “{ $lang }” nói khác “{ $first }”: dòng { $line } của phần { $section } có hình hoặc dấu nguy hiểm khác. Xin sửa lại.
    }
preflight-missing-glyph = { $place }: không phông nào ở đây có { $characters }, dùng trong “{ $text }”. Xin viết cách khác, hoặc thêm phông có ký tự đó.
preflight-nothing-to-say = Không có gì để in: chương trình chưa nói gì về dòng rác này. Xin viết quy tắc trước.
preflight-outside-safe-area = Nằm trong { $safe } mm từ mép, có thể bị cắt mất: { $what }
preflight-pictogram-unknown = { $place }: không có hình “{ $pictogram }”. Xin chọn hình khác.
preflight-picture-too-small = Một hình chỉ rộng { $side } mm. Xin in ít dòng hoặc ít ngôn ngữ hơn.
preflight-postal-field-full = { $field }: “{ $text }” (dòng { $line }) không vừa. Xin rút ngắn.
preflight-postal-zone = Trong { $zone }: { $what }. Xin dời hoặc rút ngắn.
preflight-profile-unusable =
    { $why ->
        [not-icc] Tập tin không phải hồ sơ màu. Xin lấy hồ sơ đầu ra CMYK (.icc) mà nhà in chỉ định.
        [cut-short] Hồ sơ màu bị cắt ngang. Xin nhờ nhà in gửi lại.
        [no-tables] Hồ sơ màu “{ $name }” không có bảng màu. Xin lấy hồ sơ đầu ra CMYK mà nhà in chỉ định.
       *[other-kind] Hồ sơ màu “{ $name }” không phải hồ sơ đầu ra CMYK: nó dành cho { $class }, ở hệ màu { $space }. Xin lấy hồ sơ mà nhà in chỉ định.
    }
preflight-qr-too-fine = Mã QR quá nhỏ để quét: mỗi ô { $module } mm. Xin rút ngắn địa chỉ.
preflight-qr-too-long = Địa chỉ có { $characters } ký tự, nhiều hơn mã QR chứa được. Xin rút ngắn.
preflight-rule-too-thin = Một đường kẻ chỉ dày { $width } pt; mảnh nhất in được là { $least } pt.
preflight-step-invalid = Không dùng được bước { $number } của những gì có thể bỏ bớt. Chi tiết, bằng tiếng Anh: { $why }.
preflight-text-empty = { $place } không có chữ. Xin viết vào.
preflight-text-overlaps = “{ $text }” và “{ $other }” đè lên nhau. Xin rút ngắn một cái.
preflight-text-too-long = { $place }: “{ $text }” không vừa dù ở { $floor } pt, cỡ chữ nhỏ nhất đọc được. Xin bớt khoảng { $cut } ký tự.
preflight-too-many-lines = Bản in “{ $sheet }” có { $lines } dòng bằng { $languages } ngôn ngữ, thiếu { $missing } mm ở cỡ { $floor } pt. Xin bớt dòng hoặc bớt ngôn ngữ.
preflight-too-much-ink = Có { $coverage }% mực tại một điểm; giới hạn là { $limit }%. Xin chọn màu nhạt hơn.
preflight-type-too-small = “{ $text }” cỡ { $size } pt; cần ít nhất { $least } pt. Xin rút ngắn chữ.
preflight-word-too-wide = { $place }: từ “{ $word }” trong “{ $text }” rộng hơn cột ở cỡ { $floor } pt. Xin dùng từ nhiều nhất khoảng { $room } ký tự.
sheet-text-title = Tựa ({ $lang })
sheet-text-heading = Đề mục của phần { $section } ({ $lang })
sheet-text-line = Dòng { $line } của phần { $section } ({ $lang })
sheet-text-scan = Câu cạnh mã QR ({ $lang })
sheet-text-foot = Dòng { $line } ở chân trang ({ $lang })
sheet-text-issuer = Nơi phát hành bản in
sheet-text-short-address = Địa chỉ web ngắn
sheet-text-notice = Ghi chú in
sheet-text-edition = Ấn bản
sheet-text-job-name = Tên việc in
sheet-text-slug = Dòng ngoài bản in
sheet-text-return-address = Địa chỉ gửi lại { $line }
sheet-text-indicia = Dấu bưu phí { $line }
sheet-text-addressee = Địa chỉ người nhận { $line }
postal-zone-barcode-clear = dải trắng cho mã vạch bưu điện
postal-zone-read-area = vùng máy bưu điện đọc địa chỉ
drawn-code = mã QR
drawn-picture = một hình
drawn-area = một mảng mực
sheet-cart-lid = nhãn nắp thùng
sheet-round-sticker = nhãn dán tròn
sheet-enclosure-sign = bảng ở thùng chung
sheet-text-stock = chất liệu
sheet-postcard-mailer = bưu thiếp gửi thư
profile-class-mntr = màn hình
profile-class-scnr = máy quét hoặc máy ảnh
profile-class-other = việc khác
preflight-size-zero = Bản in là { $width } × { $height } mm. Cả hai cạnh phải lớn hơn không: xin gõ lại khổ thành phẩm.
preflight-size-fixed = Bản in là { $width } × { $height } mm, nhưng loại này chỉ có các khổ: { $names }.
preflight-size-out-of-range = Bản in là { $width } × { $height } mm. Xin gõ cạnh từ { $least } đến { $most } mm, kèm đơn vị.
preflight-size-too-narrow = Bản in là { $width } × { $height } mm. Một cạnh dài nhiều nhất gấp { $most } lần cạnh kia.
preflight-size-not-round = Nhãn tròn có chiều rộng bằng chiều cao, không phải { $width } × { $height } mm. Xin gõ đường kính.
preflight-postal-size = Bưu điện không nhận bưu thiếp, thư hay thư khổ lớn { $width } × { $height } mm. Thư dài 127 đến 292 mm, cao 89 đến 156 mm, dài gấp 1,3 đến 2,5 lần chiều cao; thư khổ lớn nhiều nhất 381 × 305 mm.
preflight-corner-radius = Bán kính góc là { $radius } mm. Xin chọn từ 0 đến { $most } mm.
preflight-stock-thickness = Giấy dày { $thickness } mm, không giấy hay màng nhãn nào như vậy. Xin xem lại những gì nhà in gửi.
preflight-one-message = Nhãn tròn chỉ mang một thông điệp, không phải { $lines }. Xin chọn một điều.
preflight-press-size = Tờ in là { $width } × { $height } mm. Xin gõ cạnh từ { $least } đến { $most } mm, kèm đơn vị.
preflight-press-gutter = Khoảng cách là { $gutter } mm. Hai phần tràn lề cần { $least } mm giữa các bản in.
preflight-press-too-small = Kể cả tràn lề và dấu, không bản in nào vừa tờ in { $width } × { $height } mm. Xin chọn tờ lớn hơn.
preflight-press-up = Yêu cầu { $up } bản trên tờ in chỉ chứa được { $most }. Xin yêu cầu 1 đến { $most }.
preflight-on-a-fold = “{ $what }” nằm trong { $distance } mm từ đường gấp. Xin rút ngắn chữ.
preflight-postal-thickness = Thành phẩm dày { $thickness } mm. Bưu điện cần { $least } đến { $most } mm: xin chọn giấy khác.
preflight-ticket-too-long = Phiếu in quá dài ở “{ $place }”. Xin rút ngắn chữ đã gõ ở đó.
preflight-imposed = { $up } bản trên tờ in { $width } × { $height } mm: { $across } ngang, { $down } dọc.
preflight-fits-fewer = In chung các ngôn ngữ này thì đủ chỗ cho tất cả: { $tags }. Hãy in các ngôn ngữ đó, còn lại in trên một tờ riêng.
preflight-fits-larger = Khổ { $size } đủ chỗ cho tất cả. Hãy chọn khổ đó.
preflight-folds-clear = Đường gấp: { $count }. Không in gì trong vòng { $distance } mm từ đó.
preflight-postal-class =
    { $class ->
        [card] Gửi như bưu thiếp: { $length } × { $height } mm.
        [folded] Gửi như tờ gấp gửi thư: { $length } × { $height } mm khi gấp.
        [flat] Gửi như thư khổ lớn: { $length } × { $height } mm.
       *[letter] Gửi như thư thường: { $length } × { $height } mm.
    }
preflight-postal-thickness-unknown = Chưa ai cho biết giấy dày bao nhiêu. Bưu điện cần thành phẩm dày { $least } đến { $most } mm: xin hỏi nhà in.
preflight-sign-letters = Chữ hoa của tựa cao { $height } mm, đủ để đọc từ { $distance } mm.
preflight-sign-letters-small = Chữ hoa của tựa cao { $height } mm. Bảng dễ tiếp cận đọc từ { $distance } mm cần { $least } mm: xin rút ngắn chữ hoặc dùng bảng lớn hơn.
preflight-die-line = Đường bế dùng màu pha riêng, “Dieline”, không nằm trên bản kẽm nào.
