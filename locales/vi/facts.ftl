### What can be known about a thing: names, questions, answers. Values have to make sense alone,
### as a button and in "You could not tell, so we took: Closure: on".

## Ranges of a measure or of dates, as answers to choose from

range-at-least = ít nhất { $value }
range-over = trên { $value }
range-at-most = nhiều nhất { $value }
range-under = dưới { $value }
range-between = từ { $low } đến { $high }
range-any = bất kỳ

## A fact and its value, an item and its part. Examples: "Resin mark: 5", "Glass jar: the lid"

fact-value = { $fact }: { $value }
item-part = { $item }: { $part }

## Who asks, where and when

fact-day = Ngày
ask-day = Vào ngày nào?

## Time of year

fact-time-of-year = Thời gian trong năm
ask-time-of-year = Vào ngày nào trong năm?

## Service zone

fact-zone = Khu vực
ask-zone = Quý vị sống ở đâu?
    .hint = Mỗi khu vực có quy định khác nhau.

## Dwelling

fact-dwelling = Nhà ở
ask-dwelling = Quý vị ở loại nhà nào?
value-dwelling-house = Nhà riêng
value-dwelling-small-building = Chung cư nhỏ
value-dwelling-large-building = Chung cư lớn

## Where it comes from

fact-origin = Nguồn gốc
ask-origin = Món này từ đâu ra?
value-origin-household = Nhà ở
value-origin-business = Cơ sở kinh doanh

## Proof of residency

fact-proof = Giấy chứng minh địa chỉ
ask-proof = Quý vị có giấy ghi địa chỉ ở đây không?
    .hint = Hóa đơn hoặc bằng lái có ghi địa chỉ là được.
value-proof-yes = Tôi có giấy
value-proof-no = Tôi không có giấy

## Paid extra service

fact-add-on = Dịch vụ trả thêm
ask-add-on = Quý vị có trả tiền cho dịch vụ lấy rác thêm không?
    .hint = Nếu có, hóa đơn sẽ ghi.
value-add-on-yes = Tôi có trả
value-add-on-no = Tôi không trả

## Quantity

fact-quantity = Số lượng
ask-quantity = Quý vị có bao nhiêu cái?

## What it is

fact-item = Món đồ
ask-item = Đây là gì?

## Category

fact-category = Loại
ask-category = Đây là loại đồ gì?

## Part of a thing

fact-part = Bộ phận
ask-part = Bộ phận nào?
value-part-whole = Nguyên món
value-part-lid = Nắp
value-part-cap = Nút chai
value-part-pump = Vòi bơm
value-part-sleeve = Vỏ bọc
value-part-liner = Lớp lót
value-part-straw = Ống hút
value-part-filter = Lõi lọc
value-part-battery = Pin
value-part-cord = Dây điện
value-part-shade = Chụp đèn
value-part-contents = Đồ bên trong
value-part-bag = Túi
value-part-handle = Quai
value-part-ring = Vòng

## Hazard class

fact-hazard = Nguy hiểm
ask-hazard = Món này nguy hiểm ra sao?
    .hint = Xem chữ hoặc dấu cảnh báo trên nhãn. Nếu không chắc, chọn “Tôi không biết”.
value-hazard-none = Không nguy hiểm
value-hazard-battery-lithium = Pin lithium (sạc được)
value-hazard-battery-household = Pin thường
value-hazard-battery-lead-acid = Bình ắc quy xe (chì-axit)
value-hazard-sharps = Kim tiêm hoặc kim lấy máu
value-hazard-medicine = Thuốc men
value-hazard-pressurised = Lon hoặc bình có áp suất
value-hazard-flammable = Chất lỏng hoặc khí dễ cháy
value-hazard-toxic = Chất độc
value-hazard-corrosive = Chất ăn mòn (phỏng da)
value-hazard-mercury = Đồ có thủy ngân
value-hazard-oil = Nhớt xe
value-hazard-explosive = Chất nổ
value-hazard-radioactive = Đồ có phóng xạ

## Material

fact-material = Chất liệu
ask-material = Món này làm bằng gì?
    .hint = Chọn chất liệu chính.
value-material-plastic = Nhựa
value-material-bioplastic = Nhựa từ thực vật
value-material-cardboard = Carton gợn sóng
value-material-paperboard = Bìa giấy mỏng
value-material-paper = Giấy
value-material-carton = Hộp giấy nước uống
value-material-steel = Sắt hoặc thiếc
value-material-aluminium = Nhôm
value-material-metal = Kim loại khác
value-material-glass = Thủy tinh
value-material-ceramic = Gốm sứ
value-material-wood = Gỗ
value-material-cork = Bần
value-material-textile = Vải
value-material-leather = Da
value-material-rubber = Cao su
value-material-food = Thức ăn
value-material-plant = Lá hoặc cành cây
value-material-wax = Sáp
value-material-stone = Đá hoặc bê tông
value-material-electronics = Đồ điện tử
value-material-chemical = Hóa chất
value-material-mixed = Nhiều chất liệu

## Form

fact-form = Hình dạng
ask-form = Món này có hình dạng gì?
value-form-bottle = Chai
value-form-jug = Bình có quai
value-form-jar = Hũ
value-form-tub = Hộp tròn
value-form-cup = Ly
value-form-lid = Nắp
value-form-clamshell = Hộp nắp bản lề
value-form-tray = Khay
value-form-bag = Túi
value-form-film = Màng nhựa
value-form-pouch = Túi đứng
value-form-tube = Tuýp
value-form-can = Lon
value-form-spray-can = Bình xịt
value-form-cylinder = Bình khí
value-form-box = Hộp
value-form-carton = Hộp giấy nước uống
value-form-canister = Hộp ống tròn
value-form-sheet = Tờ
value-form-newspaper = Báo hoặc tạp chí
value-form-book = Sách
value-form-envelope = Phong bì
value-form-roll = Cuộn
value-form-foil = Giấy bạc
value-form-pan = Nồi hoặc chảo
value-form-foam = Xốp
value-form-pod = Viên nén cà phê
value-form-cutlery = Muỗng, nĩa hoặc dao
value-form-straw = Ống hút
value-form-pot = Chậu cây
value-form-bucket = Xô
value-form-toy = Đồ chơi
value-form-rope = Dây, ống hoặc cáp
value-form-clothing = Quần áo
value-form-shoe = Giày
value-form-furniture = Bàn ghế tủ
value-form-mattress = Nệm
value-form-appliance = Máy lớn trong nhà
value-form-device = Đồ điện tử
value-form-lamp = Bóng đèn
value-form-battery = Pin
value-form-needle = Kim
value-form-pill = Thuốc viên hoặc thuốc
value-form-tool = Dụng cụ
value-form-window = Cửa sổ hoặc gương
value-form-dishes = Chén đĩa
value-form-tyre = Vỏ xe
value-form-timber = Gỗ ván
value-form-rubble = Xà bần
value-form-food = Thức ăn
value-form-plant = Rác vườn
value-form-liquid = Chất lỏng
value-form-ash = Tro
value-form-sanitary = Tã hoặc đồ vệ sinh
value-form-other = Hình dạng khác

## Packaging or product

fact-object = Dùng để
ask-object = Món này có phải bao bì đựng hàng không?
value-object-packaging = Là bao bì
value-object-product = Là đồ dùng

## Battery inside

fact-battery = Pin
ask-battery = Bên trong có pin không?
    .hint = Nếu nó sáng, chạy, kêu hoặc sạc được thì có pin.
value-battery-yes = Có pin
value-battery-no = Không có pin

## Resin mark

fact-resin = Số trong tam giác
ask-resin = Số mấy trong hình tam giác nhỏ?
    .hint = Xem dưới đáy. Số cho biết loại nhựa, không hứa là tái chế được.
value-resin-1 = 1
value-resin-2 = 2
value-resin-3 = 3
value-resin-4 = 4
value-resin-5 = 5
value-resin-6 = 6
value-resin-7 = 7
value-resin-none = Không có số
value-resin-unreadable = Không đọc được

## Deposit mark

fact-deposit-mark = Dấu hoàn tiền cọc
ask-deposit-mark = Có dấu hoàn tiền cọc không?
    .hint = Xem cạnh mã vạch có dấu hoặc số tiền không.
value-deposit-mark-yes = Có dấu hoàn cọc
value-deposit-mark-no = Không có dấu hoàn cọc

## Color

fact-colour = Màu
ask-colour = Màu gì?
value-colour-clear = Trong suốt
value-colour-frosted = Mờ (ánh sáng lọt qua)
value-colour-white = Trắng
value-colour-green = Xanh lá
value-colour-brown = Nâu
value-colour-blue = Xanh dương
value-colour-black = Đen
value-colour-other = Màu khác

## Coating

fact-coating = Lớp phủ
ask-coating = Bên ngoài có lớp phủ gì không?
    .hint = Xé một góc: thấy màng mỏng là nhựa. Cạo nhẹ: bong ra là sáp.
value-coating-none = Không phủ
value-coating-plastic = Nhựa
value-coating-wax = Sáp
value-coating-foil = Giấy bạc
value-coating-glitter = Kim tuyến
value-coating-wet-strength = Giấy dai khi ướt

## Layers

fact-layers = Số lớp
ask-layers = Có nhiều lớp dính vào nhau không?
value-layers-one = Một lớp
value-layers-many = Nhiều lớp

## Longest side

fact-longest-side = Cạnh dài nhất
ask-longest-side = Dài bao nhiêu?
    .hint = Đo cạnh dài nhất.

## Middle side

fact-middle-side = Cạnh dài thứ nhì
ask-middle-side = Rộng bao nhiêu?
    .hint = Đo cạnh dài thứ nhì.

## Shortest side

fact-shortest-side = Cạnh ngắn nhất
ask-shortest-side = Dày bao nhiêu?
    .hint = Đo cạnh ngắn nhất.

## Length of shredded strips

fact-strip-length = Chiều dài sợi
ask-strip-length = Các sợi dài bao nhiêu?

## Capacity

fact-capacity = Sức chứa
ask-capacity = Chứa được bao nhiêu?
    .hint = Xem số lượng trên nhãn.

## Weight

fact-mass = Cân nặng
ask-mass = Nặng bao nhiêu?

## Fits the container

fact-fits-container = Vừa thùng
ask-fits-container = Bỏ vào thùng có đậy nắp được không?
value-fits-container-yes = Đậy nắp được
value-fits-container-no = Không vừa

## Contents

fact-contents = Còn bên trong
ask-contents = Bên trong còn gì không?
    .hint = Rỗng là không còn gì nhỏ ra hay rơi ra.
value-contents-empty = Rỗng
value-contents-traces = Còn dính một chút
value-contents-dried = Đã khô
value-contents-part-full = Còn một phần
value-contents-full = Còn đầy

## Former contents

fact-former-contents = Trước đựng gì
ask-former-contents = Trước đây đựng gì?
value-former-contents-none = Không gì cả
value-former-contents-food = Thức ăn
value-former-contents-drink = Nước uống
value-former-contents-personal-care = Xà bông, dầu gội hoặc kem
value-former-contents-cleaner = Nước tẩy rửa
value-former-contents-oil = Nhớt xe
value-former-contents-paint = Sơn
value-former-contents-pesticide = Thuốc diệt côn trùng hoặc cỏ
value-former-contents-solvent = Dung môi hoặc xăng dầu
value-former-contents-medicine = Thuốc men

## Soiling

fact-soiling = Sạch hay dơ
ask-soiling = Món này có sạch không?
value-soiling-clean = Sạch
value-soiling-grease = Dính dầu mỡ
value-soiling-food = Dính thức ăn

## Wet

fact-wet = Ướt
ask-wet = Món này có ướt không?
value-wet-yes = Ướt
value-wet-no = Khô

## Bagged

fact-bagged = Trong túi
ask-bagged = Có đựng trong túi không?
value-bagged-loose = Để rời, không túi
value-bagged-plastic-bag = Trong túi nilon
value-bagged-clear-bag = Trong túi trong suốt
value-bagged-paper-bag = Trong túi giấy

## Flattened

fact-flattened = Ép dẹp
ask-flattened = Đã ép dẹp chưa?
value-flattened-yes = Đã ép dẹp
value-flattened-no = Chưa ép dẹp

## Bundled

fact-bundled = Bó lại
ask-bundled = Đã bó lại chưa?
value-bundled-yes = Đã bó
value-bundled-no = Chưa bó

## Shredded

fact-shredded = Cắt vụn
ask-shredded = Có bị cắt vụn không?
value-shredded-yes = Cắt vụn
value-shredded-no = Không cắt vụn

## Broken

fact-broken = Hư hỏng
ask-broken = Có bị hư hay mòn không?
value-broken-yes = Bị hư
value-broken-no = Còn nguyên

## Compostable

fact-compostable = Ủ phân được
ask-compostable = Có ghi là ủ phân được không?
    .hint = Tìm chữ tiếng Anh “certified compostable” (được chứng nhận ủ phân) và con dấu.
value-compostable-no = Không
value-compostable-claimed = Có ghi, không có dấu
value-compostable-certified = Có dấu chứng nhận

## Closure

fact-closure = Nắp
ask-closure = Nắp có đang đậy không?
value-closure-none = Không có nắp
value-closure-on = Đang đậy
value-closure-off = Đã tháo

## Label

fact-label = Nhãn
ask-label = Nhãn loại gì?
value-label-none = Không có nhãn
value-label-paper = Nhãn giấy
value-label-film = Nhãn nhựa
value-label-sleeve = Nhựa bọc quanh

## Pump

fact-pump = Vòi bơm hoặc đầu xịt
ask-pump = Có vòi bơm hay đầu xịt không?
value-pump-yes = Có vòi bơm
value-pump-no = Không có vòi bơm

## Metal fitting

fact-fitting = Miếng kim loại
ask-fitting = Có miếng kim loại nhỏ không?
value-fitting-yes = Có miếng kim loại
value-fitting-no = Không có kim loại

## Window

fact-window = Cửa sổ nhựa
ask-window = Có cửa sổ nhựa trong không?
value-window-yes = Có cửa sổ
value-window-no = Không có cửa sổ

## Liner

fact-liner = Lớp lót trong
ask-liner = Bên trong có lớp lót không?
value-liner-yes = Có lớp lót
value-liner-no = Không có lớp lót

## Cord

fact-cord = Dây điện
ask-cord = Có dây điện không?
value-cord-yes = Có dây điện
value-cord-no = Không có dây điện

## What is said beside a limit. Examples: "2 inches (about a golf ball)", "4 a visit".

measure-like = { $measure } (cỡ { $thing })
measure-per = { $measure } { $period }
like-credit-card = chiều dài thẻ ngân hàng
like-golf-ball = trái banh golf
like-tennis-ball = trái banh tennis
like-basketball = trái bóng rổ
like-sheet-of-paper = chiều dài tờ giấy
like-yogurt-cup = hũ sữa chua nhỏ
like-milk-jug = bình sữa lớn
like-bucket = xô lớn
like-brick = viên gạch
per-visit = mỗi lần
per-day = mỗi ngày
per-week = mỗi tuần
per-month = mỗi tháng
per-year = mỗi năm
