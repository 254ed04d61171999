### The coordinator's screens. Short, clear words; trade words where coordinators use them.

## Around every screen

desk-title = Bàn soạn hướng dẫn
desk-title-of = { $program }: bàn soạn hướng dẫn
navigation = Các phần của ứng dụng
undo = Hoàn tác
redo = Làm lại
close = Đóng
tab-files = Tập tin
tab-program = Chương trình
tab-streams = Dòng rác
tab-zones = Khu vực
tab-channels = Kênh nhận
tab-sites = Địa điểm
tab-rules = Quy tắc
tab-items = Món đồ
tab-texts = Câu chữ
tab-print = In
start-problem-unreachable = Máy chủ không trả lời. Xin kiểm tra mạng rồi tải lại trang.
start-problem-missing = Máy chủ thiếu một tập tin của ứng dụng. Xin nhờ người phát hành phát hành lại.
start-problem-broken = Một tập tin của ứng dụng bị hỏng khi tải. Xin tải lại trang; nếu vẫn vậy, hãy phát hành lại ứng dụng.
recover-title = Trang này gặp lỗi
recover-text = Chương trình đã được lưu trong lúc quý vị làm. Xin tải về cho chắc, rồi tải lại trang để tiếp tục.
recover-nothing = Không có chương trình nào lưu trong trình duyệt này.
recover-reload = Tải lại
recover-download = Tải chương trình của tôi
panels = Vấn đề, thay đổi và thử

## Saving. $time is a day with a time

save-nothing = Chưa mở gì
save-saved = Đã lưu trên máy này
save-waiting = Đang lưu…
save-failed = Chưa lưu
save-again = Thử lưu lại
save-problem-full = Máy này hết chỗ nên thay đổi chưa được lưu. Xin xuất tập tin chương trình ngay, rồi dọn bớt chỗ.
save-problem-forbidden = Trình duyệt này không cho trang lưu gì nên thay đổi chưa được lưu. Xin xuất tập tin chương trình trước khi đóng cửa sổ.
save-problem-newer = Một cửa sổ khác đã lưu chương trình này sau đó. Bản của quý vị không ghi đè lên.
day-and-time = { $day }, { $time }

## Drafts and files. $name, $copy and $program are names of drafts or files

drafts-title = Chương trình trên máy này
drafts-none = Chưa có. Hãy mở bản mẫu, tạo chương trình mới hoặc nhập tập tin.
draft-saved = Lưu lúc { $time }
draft-remove-sure = Xóa thật không?
draft-second-version = { $name } (bản thứ hai)
draft-diverged = “{ $name }” cũng bị sửa ở cửa sổ khác. Cả hai được giữ: bản kia nay tên là “{ $copy }”.
open-demo = Mở bản mẫu
open-demo-hint = Quận Quillmere, một nơi tưởng tượng đã điền đủ mọi thứ
new-program = Chương trình mới
new-program-hint = Bắt đầu chỉ với các quy tắc an toàn có sẵn
import-file = Nhập tập tin chương trình
import-file-hint = Mở cạnh các chương trình khác, không thay cái nào
export-file = Xuất tập tin chương trình
export-file-hint = Một tập tin chứa tất cả, để giữ hoặc chuyển đi
import-refused = Không mở được “{ $name }”
import-unchanged = Các chương trình của quý vị vẫn như cũ.
import-original = Tải tập tin gốc

## Why a program file cannot be read

load-too-large = Tập tin { $megabytes } MB; tập tin chương trình nhiều nhất { $limit } MB. Xin xem có đúng tập tin không.
load-truncated = Tập tin kết thúc quá sớm, ở dòng { $line }. Có lẽ bị cắt dọc đường: xin chép hoặc tải lại.
load-not-json = Không đọc được tập tin từ dòng { $line }, cột { $column }. Nếu đã sửa tay, xin sửa chỗ đó; nếu không, xin xuất lại.
load-other-format = Đây không phải tập tin chương trình (ghi là “{ $found }”). Xin chọn tập tin xuất từ đây.
load-newer = Tập tin thuộc phiên bản { $found }; ứng dụng này biết tới { $known }. Xin dùng bản ứng dụng mới hơn.
load-shape = Giá trị ở “{ $path }” không đúng loại: { $detail }. Xin sửa rồi nhập lại.
load-too-deep = Điều kiện của quy tắc “{ $rule }” lồng sâu hơn { $limit } tầng. Xin tách thành nhiều quy tắc.

## Lists and fields in general

list-filter = Lọc
list-add = Thêm
list-add-one = Thêm một cái nữa
list-new-name = Tên cái mới
list-remove = Xóa
list-up = Đưa lên
list-choose = Chọn trong danh sách, hoặc thêm một cái.
choice-none = Không có
field-month = Tháng
field-day = Ngày
measure-unreadable = Không hiểu “{ $stated }”. Xin viết số kèm đơn vị, như 2 in, 1 gal, 100 lb.
translations = Bằng các tiếng khác
field-name = Tên
field-kind = Loại
field-note = Ghi chú cho cư dân
field-phone = Điện thoại
field-email = Email

## The program's own fields

program-basics = Chương trình này
field-program-name = Tên hướng dẫn
field-program-id = Mã ngắn, cho tập tin và địa chỉ
field-edition = Ấn bản
field-edition-from = Có hiệu lực từ
field-guide-url = Địa chỉ hướng dẫn đã phát hành
field-source-language = Ngôn ngữ viết đầu tiên
field-languages = Các ngôn ngữ phát hành
program-contact = Hỏi ai
field-contact-name = Tên văn phòng
field-return-address = Địa chỉ gửi lại trên thư
program-silence = Khi không quy tắc nào nói tới
field-silence = Không nói tới nghĩa là gì
silence-undecided = Chưa quyết định (không phát hành được)
silence-ask = Danh sách mở: trả lời “không có trong danh sách, hãy hỏi”
silence-closed = Danh sách đóng: gì không nêu tên thì không nhận
program-unknown = Khi cư dân không biết
program-unknown-hint = Lấy gì thay cho điều không biết. Chỗ nào không đặt thì lấy giá trị cẩn thận.
unknown-add = Đặt thêm
program-counts-as = Cái gì tính như cái khác
program-counts-as-hint = Mọi quy tắc sẽ xử như nhau: ví dụ mờ tính như trong suốt.
counts-as-add = Thuộc tính
field-these = Những cái này
field-count-as = Tính như
program-hazards = Chất nguy hiểm đi đâu
program-hazards-hint = Mỗi loại cần một kênh nhận an toàn và một người duyệt. Chất nguy hiểm không bao giờ vào thùng.
field-hazard-channel = Đi đến
field-approved-by = Người duyệt
program-plant = Nhà máy phân loại
field-plant-name = Tên nhà máy
field-machine-name = Máy
field-machine-limit = Máy không xử lý được gì
machine-add = Thêm máy
program-print = Cho các bản in
field-short-url = Địa chỉ ngắn cạnh mã QR
field-indicia = Dấu cước bưu điện, từng dòng
field-statement = Câu về giấy tái chế hoặc tương tự

## Streams and containers

containers-title = Thùng
container-add = Thêm thùng
container-remove = Xóa thùng này
field-container-name = Cư dân gọi là gì
field-colour = Màu
field-capacity = Sức chứa, kèm đơn vị
field-container-zones = Chỉ ở các khu vực này
field-container-dwellings = Chỉ ở các loại nhà này
field-set-out = Để ra khi nào và ra sao
field-container-rules = Quy định về thùng này
field-container-rules-hint = Áp dụng cho mọi thứ bỏ vào. Cư dân thấy kèm mọi câu trả lời có nêu thùng này.
field-container-rule-add = Quy định về
field-container-rule = Bằng lời của quý vị, thay câu có sẵn
field-limit = Giới hạn, kèm đơn vị
field-share = Giới hạn, như 10%
limit-missing = Xin nhập giới hạn, hoặc viết cả quy định bằng lời của quý vị.
residents-read = Cư dân đọc: { $text }
container-rule-kind-lid-closed = Đậy nắp
container-rule-kind-weight = Cân nặng khi đầy
container-rule-kind-distance = Chừa trống xung quanh
container-rule-kind-side-waste = Đồ bên cạnh hoặc trên nắp
container-rule-kind-share-of-load = Đồ sai được bao nhiêu
container-rule-kind-liners = Lót túi
container-rule-kind-sacks = Bao được phát
container-rule-kind-registration = Ghi danh trước
container-rule-kind-refusals = Khi nào bị để lại
stream-kind-recycling = Tái chế
stream-kind-organics = Rác hữu cơ
stream-kind-refuse = Rác thường
stream-kind-glass = Thủy tinh
stream-kind-paper = Giấy
stream-kind-film = Màng nhựa
container-kind-cart = Thùng có bánh xe
container-kind-bin = Thùng nhỏ
container-kind-bag = Túi
container-kind-box = Hộp
container-kind-shared-cart = Thùng chung của tòa nhà
container-kind-dumpster = Thùng rác lớn

## Zones

field-dwelling = Loại nhà
field-households = Số hộ
field-zone-streams = Dòng rác thu gom ở đây
field-centre = Giữa khu vực: vĩ độ, kinh độ

## Channels and sites

field-fee = Lệ phí, bằng chữ
field-booking = Phải lấy hẹn
field-proof = Cần giấy chứng minh địa chỉ
field-permit = Cần giấy phép
field-voucher = Cần phiếu
field-allowance = Bao nhiêu hoặc mấy lần, bằng chữ
field-vehicles = Xe nào được đến, bằng chữ
field-safe-for = Nhận an toàn các chất nguy hiểm này
channel-sites =
    { $count ->
        [0] Chưa có địa điểm nào nhận.
       *[other] Địa điểm: { $names }
    }
channel-kind-drop-off = Trung tâm thu nhận
channel-kind-store-take-back = Tiệm nhận lại
channel-kind-hazardous-waste = Nơi nhận rác độc hại gia đình
channel-kind-event = Ngày thu gom
channel-kind-bulky-pickup = Lấy đồ lớn
channel-kind-deposit-return = Hoàn tiền cọc
channel-kind-mail-back = Gửi trả qua bưu điện
channel-kind-reuse = Dùng lại và sửa chữa
channel-kind-medicine-take-back = Nhận lại thuốc
channel-kind-sharps-take-back = Nhận lại kim tiêm
channel-kind-police = Cảnh sát
channel-kind-specialist = Công ty chuyên môn
channel-kind-dealer = Nhà sản xuất hoặc nơi bán
channel-kind-health-office = Sở y tế
channel-kind-authority = Cơ quan phải gọi điện
field-site-channels = Nhận đồ của các kênh này
field-accepts = Chỉ nhận các món này trong đó
field-refuses = Không nhận các món này trong đó
field-site-vehicles = Xe nào được đến đây, nếu khác kênh
field-address = Địa chỉ
field-position = Vị trí: vĩ độ, kinh độ
field-hours = Giờ mở cửa
field-hours-hint = Viết như dữ liệu bản đồ mở: Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
hours-unreadable = Không hiểu giờ này: { $detail }

## Rules and their conditions

field-tier = Tầng
field-verdict = Kết luận
rule-adds-steps = Không: chỉ thêm bước
field-stream = Dòng rác
field-channel = Kênh nhận
field-prepare = Chuẩn bị, theo thứ tự
field-reason = Lý do
field-machine = Máy quyết định
field-residents = Lời cho cư dân
field-sorters = Lời cho người phân loại
field-contract = Lời trong hợp đồng
provenance-title = Từ đâu ra
field-decided-by = Người quyết định
field-source = Nguồn
field-confirmed = Xác nhận lần cuối
field-ask-again = Hỏi lại vào
rule-more = Ngày, ngoại lệ và phê duyệt
field-also = Nơi khác cũng nhận
field-overrides = Đi trước các quy tắc này cùng tầng
field-temporary = Quy định tạm thời
field-from = Từ
field-until = Đến
field-season = Chỉ một phần của mỗi năm
field-season-from = Ngày đầu mùa
field-season-until = Ngày cuối mùa
season-says = Mỗi năm từ { $from } đến { $until }
field-banned-from = Luật cấm bỏ vào
acknowledgement-title = Ngoại lệ của quy tắc an toàn có sẵn
acknowledgement-hint = Chỉ một người có tên mới được cho phép, kèm lý do. Nó hiện thành cảnh báo mỗi lần kiểm tra.
field-acknowledged-by = Người cho phép
field-acknowledged-on = Ngày
field-acknowledged-because = Vì
condition-title = Khi
condition-always = Luôn luôn: quy tắc không có điều kiện.
condition-begin = Thêm điều kiện
condition-kind = Các phần tính ra sao
condition-all = Đúng tất cả
condition-any = Đúng ít nhất một
condition-not = Không phải
condition-fact = Thuộc tính
condition-is = là một trong
condition-add-fact = Thêm thuộc tính
condition-add-group = Thêm nhóm
condition-remove = Xóa phần này của điều kiện
bound-at-least = ít nhất
bound-over = trên
bound-at-most = nhiều nhất
bound-under = dưới
bound-value = Số đo kèm đơn vị
bound-day = Ngày
bound-like = So với đồ thường ngày
bound-per = Tính theo

## Items. $item is an item's name

items-all = Tất cả
items-answer = Trả lời
items-asks = Có hỏi
items-ask = Thử
items-ask-name = Thử: { $item }
items-rule = Đến quy tắc
items-decide = Quyết định
items-decide-name = Quyết định: { $item }
items-count =
    { $count ->
       *[other] { $count } món
    }

## Texts and their translations

texts-language = Ngôn ngữ
texts-state = Tình trạng
text-state-missing = Thiếu
text-state-unreviewed = Chưa kiểm tra
text-state-reviewed = Đã kiểm tra
text-state-outdated = Đã cũ
text-step = Bước chuẩn bị
text-label = { $whose }: { $what }
texts-reviewer = Tên quý vị, để ký
texts-reviewer-needed = Xin nhập tên trước: kiểm tra phải có ký tên.
texts-sign-off = Tôi đã kiểm tra
texts-count = Đã kiểm tra { $done } trên { $all }
review-title = Tình trạng của từng ngôn ngữ
review-screens = Chữ trên màn hình: { $state }
review-source = ngôn ngữ gốc của các bản dịch
review-by = { $name } đã kiểm tra ngày { $date }
review-outdated = { $name } đã kiểm tra ngày { $date }, nhưng bản tiếng Anh đã đổi sau đó
review-texts = Chữ của bạn: đã kiểm tra { $done } trên { $all }
review-names = Người ký: { $names }

## What changed, and trying the guide

ask-title = Hỏi như cư dân
changes-title = Việc sửa đã thay đổi gì
changes-count =
    { $count ->
        [0] Không câu trả lời nào khác đi.
       *[other] { $count } câu trả lời nay đã khác.
    }
changes-absent = Không có trong hướng dẫn
changes-details = Nơi bỏ vẫn vậy; cách chuẩn bị hoặc lý do thì khác.
changes-mark = So sánh từ lúc này

## Findings. $item is an item's name, $answers a list such as "Wet: dry"

findings-title = Vấn đề
findings-count = Lỗi: { $errors } · Cảnh báo: { $warnings } · Lưu ý: { $notices }
findings-more =
    { $count ->
       *[other] và { $count } nữa
    }
severity-error = Lỗi
severity-warning = Cảnh báo
severity-notice = Lưu ý
severity-pass = Đúng
witness = Ví dụ: { $item }, khi { $answers }
witness-item = Ví dụ: { $item }

## What a finding says, and below it what to do. Values are ids and texts of the program

finding-uncovered-case = Không quy tắc nào quyết định trường hợp này.
    .hint = Xin viết quy tắc, hoặc nói ở trang chương trình không nói tới nghĩa là gì.
finding-conflicting-rules = Các quy tắc cùng tầng đưa một món đến nơi khác nhau: { $rules }.
    .hint = Xin sửa điều kiện của một quy tắc, hoặc cho một quy tắc đi trước.
finding-hazard-not-safe =
    { $problem ->
        [no-channel] Chất nguy hiểm “{ $class }” không có kênh nhận.
        [unknown-channel] Chất nguy hiểm “{ $class }” đi đến kênh không tồn tại.
        [channel-does-not-take-it] Chất nguy hiểm “{ $class }” đi đến kênh không ghi là an toàn.
       *[rule] Quy tắc “{ $id }” đưa chất nguy hiểm “{ $class }” đến nơi không an toàn.
    }
    .hint = Xin chọn kênh nhận an toàn. Chất nguy hiểm không bao giờ vào thùng.
finding-hazard-acknowledged = { $by } đã cho phép ngoại lệ của quy tắc an toàn có sẵn: “{ $id }”.
    .hint = Xin kiểm tra luật địa phương và địa điểm có cho phép, và lý do còn đúng.
finding-rule-never-applies = Quy tắc “{ $id }” không bao giờ quyết định gì.
    .hint = Các quy tắc trước đã quyết định hết, hoặc không món nào hợp điều kiện. Xin sửa hoặc xóa.
finding-not-listed = Vài trường hợp của món này được trả lời “không có trong danh sách, hãy hỏi”.
    .hint = Như vậy cũng được. Nếu biết câu trả lời, xin viết quy tắc.
finding-missing-provenance = Không ai thấy được quyết định của quy tắc “{ $id }” từ đâu ra. Còn thiếu: { $missing }.
    .hint = Xin ghi ai quyết định, theo nguồn nào, và xác nhận với nhà máy lần cuối khi nào.
finding-missing-translation =
    { $state ->
        [unreviewed] Câu chữ “{ $language }” chưa ai kiểm tra: { $count }. Đầu tiên là “{ $first }”.
        [outdated] Câu chữ “{ $language }” có bản gốc đã đổi: { $count }. Đầu tiên là “{ $first }”.
       *[missing] Câu chữ còn thiếu “{ $language }”: { $count }. Đầu tiên là “{ $first }”.
    }
    .hint = Xin mở trang câu chữ và lọc theo ngôn ngữ và tình trạng.
finding-broken-condition =
    { $problem ->
        [unknown-fact] Không có thuộc tính “{ $fact }”.
        [no-values] Thuộc tính “{ $fact }” không so với gì cả.
        [no-number] “{ $value }” của “{ $fact }” không có số.
        [no-unit] “{ $value }” của “{ $fact }” không có đơn vị.
        [unknown-unit] Không biết đơn vị của “{ $value }” cho “{ $fact }”.
        [wrong-dimension] “{ $value }” không đo được “{ $fact }”.
        [negative] “{ $value }” của “{ $fact }” nhỏ hơn không.
        [too-large] “{ $value }” của “{ $fact }” lớn quá không thể đúng.
        [unknown-part] Không có bộ phận “{ $value }”.
        [range-reversed] Khoảng “{ $value }” của “{ $fact }” bị ngược.
       *[unknown-value] “{ $value }” không phải giá trị của “{ $fact }”.
    }
    .hint = Xin chọn trong danh sách. Số đo phải kèm đơn vị, như 2 in, 1 gal hoặc 10 lb.
finding-broken-item =
    { $problem ->
        [unknown-fact] Không có thuộc tính “{ $fact }”.
        [no-values] Thuộc tính “{ $fact }” không so với gì cả.
        [no-number] “{ $value }” của “{ $fact }” không có số.
        [no-unit] “{ $value }” của “{ $fact }” không có đơn vị.
        [unknown-unit] Không biết đơn vị của “{ $value }” cho “{ $fact }”.
        [wrong-dimension] “{ $value }” không đo được “{ $fact }”.
        [negative] “{ $value }” của “{ $fact }” nhỏ hơn không.
        [too-large] “{ $value }” của “{ $fact }” lớn quá không thể đúng.
        [unknown-part] Không có bộ phận “{ $value }”.
        [no-such-sides] Các cạnh đã ghi không cho kích thước nào: cạnh dài nhất phải dài nhất.
        [no-range] Khoảng của “{ $fact }” không có đầu hoặc không có cuối.
        [range-reversed] Khoảng “{ $value }” của “{ $fact }” bị ngược.
       *[unknown-value] “{ $value }” không phải giá trị của “{ $fact }”.
    }
    .hint = Xin chọn trong danh sách. Số đo phải kèm đơn vị, như 2 in, 1 gal hoặc 10 lb.
finding-broken-reference =
    { $kind ->
        [stream] Dòng rác “{ $target }” không tồn tại.
        [channel] Kênh “{ $target }” không tồn tại.
        [zone] Khu vực “{ $target }” không tồn tại.
        [step] Bước chuẩn bị “{ $target }” không tồn tại.
        [reason] Lý do “{ $target }” không tồn tại.
        [machine] Máy “{ $target }” không tồn tại.
        [item] Món “{ $target }” không tồn tại.
        [rule-of-tier] Quy tắc “{ $target }” thuộc tầng khác nên không đi trước nó được.
       *[rule] “{ $target }” không tồn tại.
    }
    .hint = Xin chọn cái khác, hoặc thêm cái còn thiếu. Tên trống nghĩa là chưa chọn.
finding-circular-override = Các quy tắc này đi trước nhau thành vòng: { $rules }.
    .hint = Xin bỏ một quy tắc khỏi danh sách “đi trước”.
finding-destination-not-offered = Quy tắc “{ $id }” đưa đồ vào dòng rác “{ $stream }”, nhưng khu vực “{ $zone }” không thu gom.
    .hint = Xin thêm dòng rác cho khu vực, hoặc viết quy tắc khác cho khu vực đó.
finding-duplicate-id =
    { $times ->
        [0] Có cái ở đây không có mã.
       *[other] Mã “{ $id }” được dùng { $times } lần.
    }
    .hint = Mỗi cái cần mã riêng. Đường dẫn, nhãn và bản dịch dựa vào mã.
finding-printed-line-untrue =
    { $span ->
        [from] Dòng đã in “{ $line }” sai từ { $since }.
        [until] Dòng đã in “{ $line }” sai đến { $until }.
        [between] Dòng đã in “{ $line }” sai từ { $since } đến { $until }.
       *[always] Dòng đã in “{ $line }” sai trong ấn bản này.
    }
    .hint = Xin in lại hoặc che dòng đó. Khi bản in không còn dùng, ghi ngày thu hồi.
finding-suspicious-text =
    { $problem ->
        [markup] Câu chữ “{ $key }” ({ $language }) có mã đánh dấu: { $shown }
        [direction] Câu chữ “{ $key }” ({ $language }) có ký tự đổi hướng viết: { $shown }
       *[control] Câu chữ “{ $key }” ({ $language }) có ký tự không thấy được: { $shown }
    }
    .hint = Câu chữ phải là chữ thường. Xin xóa và gõ lại.
finding-too-complex = Món này còn quá nhiều điều để ngỏ nên không xem hết các trường hợp được (thuộc tính để ngỏ: { $count }).
    .hint = Xin định vài thuộc tính, hoặc tách thành nhiều món.
finding-too-many-thresholds = Các quy tắc nêu quá nhiều mốc nên không xem hết các trường hợp của { $count } món được. Nhiều nhất là “{ $fact }”: { $thresholds }.
    .hint = Xin cho các quy tắc dùng chung mốc, và bỏ những quy tắc đã hết hạn.
finding-unreadable-hours = Không hiểu giờ mở cửa “{ $hours }”: { $problem }
    .hint = Xin viết như sau: Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
finding-unusable-setting = Không dùng được “{ $value }” ở đây.
    .hint = Xin chọn trong danh sách, hoặc sửa: màu viết #2a7f4f, vị trí là vĩ độ và kinh độ, địa chỉ bắt đầu bằng https://

## Comparing with a file. $name is a file's name

compare-file-title = So với tập tin khác
compare-file = Chọn ấn bản trước, hoặc chương trình của nơi lân cận
compare-file-name = Đã so với “{ $name }”.
compare-newer = Tập tin này mới hơn
compare-notice = Thông báo thay đổi
compare-copy = Chép thông báo
compare-copied = Đã chép.
compare-not-copied = Trình duyệt không chép được. Xin chọn chữ rồi tự chép.
compare-download = Tải thông báo

## The register of printed sheets. $id is a sheet's id, $day a date

printed-title = Những gì đã in
printed-copies = Số bản
printed-note = Ghi là đã in
printed-entry =
    { $copies ->
        [0] { $id }, { $day }
       *[other] { $id }, { $day }, { $copies } bản
    }
printed-withdrawn = thu hồi { $day }
printed-withdraw = Không còn dùng
printed-still-out = Vẫn còn dùng
finding-question-never-matters =
    { $problem ->
        [unknown] Đã đặt giá trị khi không ai biết “{ $fact }”, nhưng không câu trả lời nào cần tới.
       *[open] Món này để ngỏ “{ $fact }”, nhưng không câu trả lời nào tùy vào đó.
    }
    .hint = Không ai bị hỏi điều này. Cứ để vậy, hoặc viết quy tắc cần tới nó.
finding-steps-contradict = Một câu trả lời đòi “{ $one }” và “{ $other }”, không thể làm cả hai. Quy tắc: { $rules }.
    .hint = Xin bỏ một trong hai bước, hoặc sửa điều kiện để chỉ một quy tắc áp dụng.
finding-preparation-contradicts =
    { $problem ->
        [none] Ai làm theo bước “{ $step }” của quy tắc “{ $id }” thì “{ $fact }” thành “{ $value }”, và không quy tắc nào đưa đến đó nữa.
       *[rule] Ai làm theo bước “{ $step }” của quy tắc “{ $id }” thì “{ $fact }” thành “{ $value }”, và quy tắc “{ $other }” đưa đi nơi khác.
    }
    .hint = Xin bỏ bước đó, hoặc cho quy tắc áp dụng cả cho đồ sau khi làm bước này.
finding-site-never-used =
    { $problem ->
        [item] Địa điểm “{ $id }” ghi là nhận “{ $item }”, nhưng món này không bao giờ đến kênh của địa điểm.
       *[site] Không có gì được đưa đến địa điểm “{ $id }”.
    }
    .hint = Xin viết quy tắc đưa đồ đến kênh của nó, cho nó kênh khác, hoặc bỏ khỏi danh sách.
finding-no-site-takes =
    { $problem ->
        [refused] “{ $item }” được đưa đến kênh “{ $id }”, nhưng không địa điểm nào của kênh nhận.
       *[none] Các món như “{ $item }” được đưa đến kênh “{ $id }”, nhưng kênh không có địa điểm.
    }
    .hint = Xin thêm địa điểm, cho một địa điểm nhận, hoặc đưa đến kênh khác.
finding-item-without-name = Món “{ $id }” không có tên để hiện. Các ngôn ngữ thiếu tên: { $languages }.
    .hint = Xin nhập tên bằng ngôn ngữ gốc của chương trình.
finding-name-twice = Món “{ $id }” và “{ $other }” đều tên “{ $name }” trong “{ $language }”.
    .hint = Xin cho một món tên để phân biệt. Cư dân chọn theo tên.
finding-banned-destination = “{ $item }” được đưa vào dòng rác “{ $stream }” mà luật cấm. Quy tắc: { $rules }.
    .hint = Xin đưa vào dòng rác hoặc kênh khác, hoặc sửa chỗ ghi lệnh cấm.
finding-impossible-condition =
    { $problem ->
        [fact] Điều kiện của quy tắc “{ $id }” không bao giờ đúng: đòi hỏi về “{ $fact }” tự mâu thuẫn.
       *[parts] Điều kiện của quy tắc “{ $id }” không bao giờ đúng: các phần loại trừ nhau.
    }
    .hint = Xin sửa hoặc bỏ một phần. Nếu chỉ cần một phần đúng, dùng “Đúng ít nhất một”.
finding-empty-condition =
    { $problem ->
        [any] Điều kiện của quy tắc “{ $id }” có nhóm “Đúng ít nhất một” trống, không bao giờ đúng.
       *[all] Điều kiện của quy tắc “{ $id }” có nhóm “Đúng tất cả” trống, luôn luôn đúng.
    }
    .hint = Xin thêm nội dung cho nhóm, hoặc xóa nhóm.
finding-rule-without-condition = Quy tắc “{ $id }” không có điều kiện: nó quyết định mọi thứ mà cấp trước không quyết định.
    .hint = Xin ghi khi nào nó đúng. Nếu dành cho tất cả phần còn lại, hãy đặt vào cấp “default”.
finding-text-missing-register =
    { $register ->
        [contract] Quy tắc chưa có lời trong hợp đồng: { $count }. Đầu tiên là “{ $first }”.
        [sorters] Quy tắc chưa có lời cho người phân loại: { $count }. Đầu tiên là “{ $first }”.
       *[residents] Quy tắc chưa có lời hoặc lý do cho cư dân: { $count }. Đầu tiên là “{ $first }”.
    }
    .hint = Xin nhập ở trang quy tắc, để cả ba nói giống nhau.
finding-unused-thing =
    { $kind ->
        [stream] Không quy tắc nào đưa gì vào dòng rác “{ $id }”.
        [channel] Không quy tắc hay chất nguy hiểm nào đến kênh “{ $id }”.
        [step] Không quy tắc nào đòi bước “{ $id }”.
        [zone] Không có gì khác ở khu vực “{ $id }”: không quy tắc, thùng hay dòng rác nào nêu tên.
       *[machine] Không quy tắc nào nêu máy “{ $id }”.
    }
    .hint = Để lại nếu sẽ cần; nếu không, xin xóa.
finding-counts-as-broken =
    { $problem ->
        [unknown-fact] Không có thuộc tính “{ $fact }” để giá trị của nó tính như cái khác.
        [unlisted-fact] “{ $fact }” không có danh sách giá trị nên không cái nào tính như cái khác được.
        [unknown-value] “{ $value }” không phải giá trị của “{ $fact }”.
        [danger] “{ $fact }” là mối nguy hiểm: giá trị của nó không bao giờ tính như cái khác.
        [nothing] Không nêu cái gì tính như “{ $value }” cho “{ $fact }”.
        [itself] “{ $value }” của “{ $fact }” tính như chính nó.
        [twice] “{ $value }” của “{ $fact }” tính như hai giá trị khác nhau.
        [circle] Các giá trị của “{ $fact }” tính như nhau thành vòng, trong đó có “{ $value }”.
       *[chain] “{ $value }” của “{ $fact }” tự nó tính như giá trị khác, nên không gì tính như nó được.
    }
    .hint = Xin chọn giá trị trong danh sách. Mỗi giá trị tính như một giá trị khác, giá trị đó không tính như cái nào nữa.
finding-season-broken =
    { $problem ->
        [reversed] Ngày cuối của quy tắc “{ $id }” trước ngày đầu: { $value }.
       *[not-a-year-day] “{ $value }” không phải ngày trong năm, nên không hiểu mùa của quy tắc “{ $id }”.
    }
    .hint = Xin viết tháng và ngày, như 11-01. Mùa có thể qua năm mới; ngày đầu và cuối có ghi năm thì không.
finding-container-rule-broken =
    { $problem ->
        [unknown-kind] “{ $value }” không phải loại quy định cho thùng “{ $id }”.
        [twice] Thùng “{ $id }” có hai quy định loại “{ $value }”.
        [limit] Không hiểu giới hạn “{ $value }” của thùng “{ $id }”.
       *[unknown-dwelling] “{ $value }” không phải loại nhà, nên thùng “{ $id }” không dùng ở đâu cả.
    }
    .hint = Xin chọn trong danh sách, gộp hai câu vào một quy định, hoặc viết giới hạn kèm đơn vị: 100 lb, 3 ft, 10%.
finding-comparison-broken =
    { $problem ->
        [unknown-like] Không có đồ thường ngày “{ $value }” để so với “{ $fact }”.
        [other-dimension] “{ $value }” không nói gì về “{ $fact }”: nó đo thứ khác.
        [far] “{ $value }” lớn hoặc nhỏ hơn gấp đôi số đo của “{ $fact }”.
       *[unknown-period] “{ $fact }” không tính theo “{ $value }” được.
    }
    .hint = Xin chọn trong danh sách, hoặc bỏ phần so sánh.

## Ways to mend a finding, on buttons and in lists. Values are ids and texts of the program

fix-replace = Đặt “{ $with }” thay cho “{ $value }”
fix-choose = Chọn “{ $with }”
fix-remove = Bỏ “{ $value }”
fix-replace-fact = So “{ $with }” thay cho “{ $fact }”
fix-replace-value = Đặt “{ $with }” thay cho “{ $value }”
fix-remove-value = Bỏ “{ $value }” khỏi điều kiện
fix-replace-item-fact = Đặt thuộc tính “{ $with }” thay cho “{ $fact }”
fix-remove-rule = Xóa quy tắc “{ $rule }”
fix-go-before = Cho “{ $rule }” đi trước { $over }
fix-not-before = Không cho “{ $rule }” đi trước “{ $over }” nữa
fix-silence-undecided = Để ngỏ không nói tới nghĩa là gì
fix-silence-ask = Danh sách mở: không nêu tên thì trả lời “không có trong danh sách, hãy hỏi”
fix-silence-closed = Danh sách đóng: không nêu tên thì không nhận
fix-answer-yes = Soạn quy tắc: “{ $item }” vào “{ $stream }”
fix-answer-no = Soạn quy tắc: không nhận “{ $item }”, bỏ vào “{ $stream }”
fix-route = Đưa chất nguy hiểm “{ $class }” đến kênh “{ $channel }”
fix-send-to = Đưa đồ của quy tắc “{ $rule }” đến kênh “{ $channel }”
fix-collect = Thu gom “{ $stream }” ở khu vực “{ $zone }” nữa
fix-except-zone = Không áp dụng quy tắc “{ $rule }” ở khu vực “{ $zone }”
fix-own-ids = Cho mã mới: { $with }
fix-remove-twins = Xóa các bản giống hệt nhau
fix-swap-dates = Đổi chỗ ngày đầu và ngày cuối
fix-drop-from = Bỏ ngày đầu
fix-drop-until = Bỏ ngày cuối
fix-drop-season = Bỏ mùa
fix-swap-position = Đổi chỗ vĩ độ và kinh độ
fix-add-language = Phát hành cả bằng “{ $language }”
fix-remove-empty = Xóa các nhóm trống
fix-remove-unused = Xóa “{ $id }”
fix-drop-counting = Không để gì tính như “{ $value }” cho “{ $fact }”
fix-clean-text = Bỏ khỏi câu chữ
mend-title = Cách sửa
mend-done = Xong: { $fix }. Có thể hoàn tác.
mend-gone = Không đổi gì: chương trình không còn như lúc đề nghị.
