### Words printed on lid labels and mailers. They are read from a step away and there is little room:
### keep each as short as its English.
sheet-heading-yes = Được
sheet-heading-no = Không
sheet-heading-elsewhere = Mang nơi khác
sheet-heading-caution = Cấm bỏ vào mọi thùng
sheet-scan = Không có ở đây? Quét mã để tra.
sheet-contact = Cần hỏi? { $name }, { $phone }
sheet-line-when = { $item } ({ $condition })
sheet-when-resin = số { $values }
sheet-line-where = { $item }: { $place }
sheet-hazard-battery-lithium = Mọi đồ sạc được
sheet-hazard-battery-household = Pin
sheet-hazard-battery-lead-acid = Bình ắc quy xe
sheet-hazard-sharps = Kim tiêm, kim lấy máu
sheet-hazard-medicine = Thuốc men
sheet-hazard-pressurised = Bình gas, bình xịt còn hơi
sheet-hazard-flammable = Xăng dầu, dung môi
sheet-hazard-toxic = Thuốc trừ sâu
sheet-hazard-corrosive = Axit, thuốc thông cống
sheet-hazard-mercury = Thủy ngân, đèn huỳnh quang
sheet-hazard-oil = Nhớt xe
sheet-hazard-explosive = Pháo bông, đạn
sheet-hazard-radioactive = Đồ có phóng xạ
sheet-hazards-between = {", "}
