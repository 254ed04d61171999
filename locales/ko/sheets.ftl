### Words printed on lid labels and mailers. They are read from a step away and there is little room:
### keep each as short as its English.
sheet-heading-yes = 됩니다
sheet-heading-no = 안 됩니다
sheet-heading-elsewhere = 다른 곳으로
sheet-heading-caution = 어떤 통에도 절대 금지
sheet-scan = 여기 없나요? 찍어서 찾으세요.
sheet-contact = 문의: { $name }, { $phone }
sheet-line-when = { $item }({ $condition })
sheet-when-resin = { $values }번
sheet-line-where = { $item }: { $place }
sheet-hazard-battery-lithium = 충전되는 모든 것
sheet-hazard-battery-household = 건전지
sheet-hazard-battery-lead-acid = 자동차 배터리
sheet-hazard-sharps = 주삿바늘, 채혈침
sheet-hazard-medicine = 약
sheet-hazard-pressurised = 가스통, 남은 스프레이
sheet-hazard-flammable = 연료, 용제
sheet-hazard-toxic = 농약
sheet-hazard-corrosive = 산, 배수구 세정제
sheet-hazard-mercury = 수은, 형광등
sheet-hazard-oil = 엔진 오일
sheet-hazard-explosive = 폭죽, 탄약
sheet-hazard-radioactive = 방사성 물건
sheet-hazards-between = {", "}
