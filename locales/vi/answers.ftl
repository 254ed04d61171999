### Ready-made sentences of answers: cautions, steps, reasons; and the names of kinds of things.
### Steps are told to one person, reasons are about "it".

## Cautions, one for each hazard class. They say what is common everywhere and defer to local

## rules; local procedure comes from the program, approved by a named person.

caution-local = Quy định địa phương và nhân viên tại chỗ quyết định.
caution-battery-lithium = Pin lithium có thể gây cháy. Không bao giờ bỏ pin hay đồ có pin vào bất kỳ thùng nào. Lấy băng keo dán đầu kim loại của pin rời, hoặc bỏ từng cục vào túi riêng. Đừng đập hay tháo pin. { caution-local }
caution-battery-household = Pin có thể chảy nước hoặc gây cháy. Không bao giờ bỏ vào bất kỳ thùng nào. Lấy băng keo dán hai đầu và để pin cách nhau. { caution-local }
caution-battery-lead-acid = Bình này có axit gây phỏng và chì độc. Để đứng, đừng mở. Không bao giờ bỏ vào bất kỳ thùng nào. { caution-local }
caution-sharps = Kim có thể đâm và lây bệnh cho người phân loại. Không bao giờ bỏ kim rời vào bất kỳ thùng nào. Dùng xong bỏ ngay vào hộp cứng không đâm thủng được, đậy chặt nắp. Không bao giờ thò tay vào thùng để lấy kim. { caution-local }
caution-medicine = Để thuốc xa trẻ em và thú nuôi. Trước hết hãy mang đến nơi nhận lại thuốc. Đừng xả bồn cầu trừ khi nhãn ghi vậy. { caution-local }
caution-pressurised = Có thể nổ khi bị ép, đâm thủng hoặc nóng, dù có vẻ đã hết. Không bao giờ bỏ vào bất kỳ thùng nào. { caution-local }
caution-flammable = Dễ bắt lửa. Đậy kín, để xa chỗ nóng và tia lửa. Không bao giờ bỏ vào bất kỳ thùng nào, không bao giờ đổ đi. { caution-local }
caution-toxic = Có độc. Để trong bình gốc còn nhãn. Không bao giờ bỏ vào bất kỳ thùng nào, không đổ đi, không pha với gì khác. { caution-local }
caution-corrosive = Gây phỏng da và mắt. Để đứng trong bình gốc. Không bao giờ bỏ vào bất kỳ thùng nào, không pha với gì khác. { caution-local }
caution-mercury = Có thủy ngân rất độc. Đừng làm vỡ. Không bao giờ bỏ vào bất kỳ thùng nào. Nếu vỡ, đưa mọi người ra xa và mở cửa cho thoáng. { caution-local }
caution-oil = Làm bẩn nguồn nước. Để trong bình đậy kín. Không bao giờ đổ đi, không bao giờ bỏ vào bất kỳ thùng nào, không pha với gì khác. { caution-local }
caution-explosive = Đừng đụng vào, đừng di chuyển. Giữ mọi người ở xa và gọi cơ quan ghi ở đây. Khi nguy hiểm, gọi số khẩn cấp. { caution-local }
caution-radioactive = Đừng mở, đừng làm vỡ. Không bao giờ bỏ vào bất kỳ thùng nào. Gọi cơ quan ghi ở đây để hỏi phải làm gì. { caution-local }

## Standard preparation steps

prep-empty = Đổ hết ra.
prep-rinse = Tráng nhanh. Không cần thật sạch.
prep-dry = Để khô.
prep-scrape = Vét hết thức ăn.
prep-flatten = Ép dẹp.
prep-cut-down = Cắt nhỏ cho vừa.
prep-bundle = Bó lại.
prep-loose = Bỏ rời, không đựng túi.
prep-cap-on = Để nguyên nút chai.
prep-cap-off = Tháo nút chai.
prep-lid-off = Tháo nắp.
prep-lid-inside-can = Bỏ nắp vào trong lon rồi bóp miệng lon lại.
prep-label-stays = Nhãn để nguyên cũng được.
prep-sleeve-off = Lột vỏ nhựa bọc ngoài.
prep-pump-off = Tháo vòi bơm.
prep-window-stays = Cửa sổ nhựa để nguyên cũng được.
prep-staples-stay = Kim bấm để nguyên cũng được.
prep-remove-food-liner = Lấy túi hoặc lớp lót ra.
prep-tear-off-clean-half = Xé phần sạch ra. Chỉ bỏ phần đó vào đây.
prep-crush = Bóp bẹp cho đỡ chỗ.
prep-do-not-crush = Đừng bóp bẹp.
prep-do-not-flatten = Đừng ép dẹp.
prep-do-not-nest = Đừng lồng cái này vào cái kia.
prep-scrunch-foil = Vo giấy bạc thành cục cỡ nắm tay.
prep-paper-bag = Bỏ vào túi giấy rồi gấp kín.
prep-clear-bag = Bỏ vào túi trong suốt.
prep-tape-terminals = Lấy băng keo dán đầu kim loại.
prep-keep-upright = Để đứng.
prep-puncture-proof = Bỏ vào hộp cứng không đâm thủng được.
prep-original-container = Để trong bình gốc còn nhãn.
prep-do-not-mix = Đừng pha với gì khác.
prep-do-not-puncture = Đừng đâm thủng.
prep-puncture = Khi không còn gì xịt ra, đâm một lỗ.
prep-wrap-broken = Gói mảnh vỡ lại để không ai bị đứt tay.
prep-remove-battery = Tháo pin nếu dễ tháo. Pin bỏ nơi khác.
prep-wipe-data = Xóa dữ liệu của mình trước.
prep-take-apart = Tháo rời: mỗi chất liệu bỏ một nơi.
prep-no-bags = Không dùng túi nào cả.
prep-no-plastic-bags = Không dùng túi nilon.
prep-cool-ash = Để tro nguội vài ngày, đến khi nguội hẳn bên trong.
prep-double-bag = Bỏ vào hai lớp túi.
prep-label-contents = Ghi bên trong là gì.
prep-fits-lid-shut = Phải đậy nắp thùng được.
prep-check-fluid = Xem chắc không còn chất lỏng bên trong.
prep-pair-and-tie = Cột từng đôi lại với nhau.
prep-clean-and-usable = Chỉ nhận đồ sạch và còn dùng được.

## Standard reasons

reason-sells = Nhà máy mua để làm đồ mới.
reason-composts = Nó trở thành phân ủ.
reason-no-buyer = Ở đây không ai mua chất liệu này nên không tái chế được.
reason-too-small = Nhỏ quá nên lọt qua máy phân loại.
reason-too-large = Lớn quá cho thùng hoặc máy.
reason-tangles = Nó quấn vào máy làm máy ngừng.
reason-wraps-screens = Nhựa mỏng quấn vào sàng làm cả nhà máy ngừng.
reason-bagged-unseen = Túi kín không ai thấy bên trong nên bị bỏ nguyên túi.
reason-soiled = Thức ăn và dầu mỡ làm hư vật liệu.
reason-contents-spoil = Đồ còn bên trong sẽ làm dơ mọi thứ xung quanh.
reason-mixed-materials = Các chất liệu dính nhau, không tách ra được.
reason-wrong-glass = Loại kính này nấu chảy khác với chai lọ.
reason-breaks-unsafe = Dễ vỡ, làm đứt tay người phân loại.
reason-not-packaging = Ở đây chỉ nhận bao bì.
reason-hazard = Nguy hiểm trong thùng, trên xe và ở nhà máy.
reason-handled-apart = Phải xử lý riêng.
reason-reusable = Người khác vẫn dùng được.
reason-store-collects = Các tiệm nhận lại.
reason-contaminates-compost = Nó sẽ làm hư phân ủ.
reason-not-named = Danh sách không có món này.
reason-not-listed = Chưa có quyết định. Hỏi thì tốt hơn đoán.
reason-too-heavy = Nặng quá không khiêng được.
reason-number-is-not-shape = Chỉ có số thì chưa đủ: hình dạng cũng quan trọng.
reason-black-unseen = Máy phân loại không thấy nhựa đen.
reason-burns = Có thể gây cháy.
reason-special-trip = Có chuyến lấy riêng hoặc nơi nhận riêng.
reason-law = Luật quy định như vậy.
reason-not-collected = Ở đây không thu gom món này.

## Tiers of rules, in the order in which they are looked at

tier-safety = An toàn
tier-plant = Nhà máy phân loại
tier-program = Quy định địa phương
tier-material = Chất liệu
tier-default = Còn lại

## Categories to browse by

category-plastic-packaging = Bao bì nhựa
category-paper-cardboard = Giấy và carton
category-glass = Thủy tinh
category-metal = Kim loại
category-food-drink-cartons = Hộp giấy đồ ăn, nước uống
category-food-garden = Thức ăn và vườn
category-film-bags = Túi và màng nhựa
category-batteries-electronics = Pin và đồ điện tử
category-hazardous = Sơn, hóa chất, khí
category-medical = Thuốc và kim tiêm
category-textiles = Quần áo và giày
category-household-goods = Đồ trong nhà
category-building = Xây dựng, sửa nhà
category-bathroom = Phòng tắm

## Parts of an item that may go elsewhere

part-lid = Nắp
part-cap = Nút chai
part-pump = Vòi bơm
part-sleeve = Vỏ bọc
part-liner = Lớp lót
part-straw = Ống hút
part-filter = Lõi lọc
part-battery = Pin
part-cord = Dây điện
part-shade = Chụp đèn
part-contents = Đồ bên trong
part-bag = Túi
part-handle = Quai
part-ring = Vòng

## Rules about a container: shown where an answer names it. $limit is a measure.

container-rule-lid-closed = Phải đậy kín nắp.
container-rule-weight = Đầy thùng không quá { $limit }.
container-rule-distance = Chừa trống { $limit } mỗi bên.
container-rule-side-waste = Không để gì bên cạnh hay trên nắp.
container-rule-share-of-load = Đồ không đúng loại nhiều nhất { $limit } của thùng.
container-rule-liners = Có thể lót túi bên trong.
container-rule-sacks = Chỉ dùng bao được phát.
container-rule-registration = Xin ghi danh trước.
container-rule-refusals = Nếu có đồ sai, thùng sẽ bị để lại kèm giấy báo.

## Where the law does not let a thing go. $place is a container or stream.

answer-banned = Luật cấm bỏ vào: { $place }.
