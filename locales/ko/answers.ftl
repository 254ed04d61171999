### Ready-made sentences of answers: cautions, steps, reasons; and the names of kinds of things.
### Steps are told to one person, reasons are about "it".

## Cautions, one for each hazard class. They say what is common everywhere and defer to local

## rules; local procedure comes from the program, approved by a named person.

caution-local = 지역 규칙과 현장 직원의 말을 따르세요.
caution-battery-lithium = 리튬 배터리는 불이 날 수 있습니다. 배터리나 배터리가 든 물건을 어떤 수거통에도 절대 넣지 마세요. 낱개 배터리는 금속 끝을 테이프로 감싸거나 하나씩 봉지에 넣으세요. 누르거나 뜯지 마세요. { caution-local }
caution-battery-household = 건전지는 새거나 불이 날 수 있습니다. 어떤 수거통에도 절대 넣지 마세요. 양 끝을 테이프로 감싸고 서로 떼어 놓으세요. { caution-local }
caution-battery-lead-acid = 안에 화상을 입히는 산과 독성 납이 있습니다. 세워 두고 열지 마세요. 어떤 수거통에도 절대 넣지 마세요. { caution-local }
caution-sharps = 바늘은 선별하는 사람을 찌르고 병을 옮길 수 있습니다. 그대로 어떤 수거통에도 절대 넣지 마세요. 쓰면 바로 뚫리지 않는 단단한 용기에 넣고 뚜껑을 꽉 닫으세요. 꺼내려고 수거통에 손을 넣지 마세요. { caution-local }
caution-medicine = 약은 아이와 반려동물에게서 멀리 두세요. 먼저 약 회수처에 가져가세요. 라벨에 적혀 있지 않으면 변기에 버리지 마세요. { caution-local }
caution-pressurised = 빈 것 같아도 눌리거나 뚫리거나 뜨거우면 터질 수 있습니다. 어떤 수거통에도 절대 넣지 마세요. { caution-local }
caution-flammable = 불이 잘 붙습니다. 꼭 닫아 열과 불꽃에서 멀리 두세요. 어떤 수거통에도 절대 넣지 말고 쏟아 버리지도 마세요. { caution-local }
caution-toxic = 독성이 있습니다. 라벨 붙은 원래 용기에 두세요. 어떤 수거통에도 절대 넣지 말고, 쏟아 버리거나 다른 것과 섞지 마세요. { caution-local }
caution-corrosive = 피부와 눈에 화상을 입힙니다. 원래 용기에 세워 두세요. 어떤 수거통에도 절대 넣지 말고 다른 것과 섞지 마세요. { caution-local }
caution-mercury = 독성 수은이 들어 있습니다. 깨뜨리지 마세요. 어떤 수거통에도 절대 넣지 마세요. 깨지면 사람들을 떼어 놓고 환기하세요. { caution-local }
caution-oil = 물을 더럽힙니다. 뚜껑 닫힌 용기에 보관하세요. 쏟아 버리지 말고, 어떤 수거통에도 절대 넣지 말고, 다른 것과 섞지 마세요. { caution-local }
caution-explosive = 만지거나 옮기지 마세요. 사람들을 떼어 놓고 여기 적힌 기관에 전화하세요. 위험하면 긴급 전화를 거세요. { caution-local }
caution-radioactive = 열거나 깨뜨리지 마세요. 어떤 수거통에도 절대 넣지 마세요. 여기 적힌 기관에 전화해 물어보세요. { caution-local }

## Standard preparation steps

prep-empty = 비우세요.
prep-rinse = 가볍게 헹구세요. 아주 깨끗하지 않아도 됩니다.
prep-dry = 말리세요.
prep-scrape = 음식을 긁어내세요.
prep-flatten = 납작하게 펴세요.
prep-cut-down = 들어가게 작게 자르세요.
prep-bundle = 묶으세요.
prep-loose = 봉지 없이 그대로 넣으세요.
prep-cap-on = 병뚜껑을 닫아 두세요.
prep-cap-off = 병뚜껑을 빼세요.
prep-lid-off = 뚜껑을 빼세요.
prep-lid-inside-can = 뚜껑을 캔 안에 넣고 입구를 오므리세요.
prep-label-stays = 라벨은 그대로 두어도 됩니다.
prep-sleeve-off = 겉 비닐을 벗기세요.
prep-pump-off = 펌프를 빼세요.
prep-window-stays = 비닐 창은 그대로 두어도 됩니다.
prep-staples-stay = 철심은 그대로 두어도 됩니다.
prep-remove-food-liner = 안의 봉지나 안감을 빼세요.
prep-tear-off-clean-half = 깨끗한 부분을 뜯으세요. 그 부분만 여기 넣으세요.
prep-crush = 찌그러뜨려 부피를 줄이세요.
prep-do-not-crush = 찌그러뜨리지 마세요.
prep-do-not-flatten = 납작하게 펴지 마세요.
prep-do-not-nest = 겹쳐 끼우지 마세요.
prep-scrunch-foil = 호일을 주먹만 하게 뭉치세요.
prep-paper-bag = 종이봉투에 넣고 닫으세요.
prep-clear-bag = 투명 봉지에 넣으세요.
prep-tape-terminals = 금속 끝을 테이프로 감싸세요.
prep-keep-upright = 세워 두세요.
prep-puncture-proof = 뚫리지 않는 단단한 용기에 넣으세요.
prep-original-container = 라벨 붙은 원래 용기에 두세요.
prep-do-not-mix = 다른 것과 섞지 마세요.
prep-do-not-puncture = 구멍을 내지 마세요.
prep-puncture = 더 나오는 것이 없으면 구멍을 한 번 내세요.
prep-wrap-broken = 아무도 베이지 않게 조각을 싸세요.
prep-remove-battery = 배터리가 쉽게 빠지면 빼세요. 배터리는 따로 버립니다.
prep-wipe-data = 먼저 내 자료를 지우세요.
prep-take-apart = 분해해서 재질마다 따로 버리세요.
prep-no-bags = 봉지를 전혀 쓰지 마세요.
prep-no-plastic-bags = 비닐봉지를 쓰지 마세요.
prep-cool-ash = 재가 속까지 식도록 며칠 두세요.
prep-double-bag = 봉지 두 겹에 넣으세요.
prep-label-contents = 안에 무엇이 있는지 적으세요.
prep-fits-lid-shut = 수거통 뚜껑이 닫혀야 합니다.
prep-check-fluid = 액체가 남지 않았는지 확인하세요.
prep-pair-and-tie = 짝끼리 묶으세요.
prep-clean-and-usable = 깨끗하고 쓸 수 있는 것만 됩니다.

## Standard reasons

reason-sells = 공장이 사서 새것을 만듭니다.
reason-composts = 퇴비가 됩니다.
reason-no-buyer = 이곳에는 사는 곳이 없어 재활용할 수 없습니다.
reason-too-small = 너무 작아 선별 기계 사이로 빠집니다.
reason-too-large = 수거통이나 기계에 너무 큽니다.
reason-tangles = 기계에 감겨 기계를 멈춥니다.
reason-wraps-screens = 얇은 비닐이 선별 체에 감겨 공장이 멈춥니다.
reason-bagged-unseen = 닫힌 봉지는 속을 볼 수 없어 그대로 버려집니다.
reason-soiled = 음식과 기름이 재료를 망칩니다.
reason-contents-spoil = 남은 내용물이 주변을 모두 더럽힙니다.
reason-mixed-materials = 재질이 붙어 있어 나눌 수 없습니다.
reason-wrong-glass = 이 유리는 병과 녹는 온도가 다릅니다.
reason-breaks-unsafe = 깨져서 선별하는 사람이 다칩니다.
reason-not-packaging = 여기는 포장재만 받습니다.
reason-hazard = 수거통, 트럭, 공장에서 위험합니다.
reason-handled-apart = 다른 것과 따로 처리합니다.
reason-reusable = 다른 사람이 쓸 수 있습니다.
reason-store-collects = 가게에서 모읍니다.
reason-contaminates-compost = 퇴비를 망칩니다.
reason-not-named = 목록에 없습니다.
reason-not-listed = 아직 정해지지 않았습니다. 짐작보다 묻는 것이 낫습니다.
reason-too-heavy = 너무 무거워 들 수 없습니다.
reason-number-is-not-shape = 숫자만으로는 안 됩니다. 모양도 중요합니다.
reason-black-unseen = 선별 기계는 검은 플라스틱을 보지 못합니다.
reason-burns = 불이 날 수 있습니다.
reason-special-trip = 따로 수거하거나 따로 받는 곳이 있습니다.
reason-law = 법이 그렇게 정합니다.
reason-not-collected = 여기서는 수거하지 않습니다.

## Tiers of rules, in the order in which they are looked at

tier-safety = 안전
tier-plant = 선별장
tier-program = 지역 규칙
tier-material = 재질
tier-default = 그 밖의 모든 것

## Categories to browse by

category-plastic-packaging = 플라스틱 포장
category-paper-cardboard = 종이와 골판지
category-glass = 유리
category-metal = 금속
category-food-drink-cartons = 음식·음료 종이팩
category-food-garden = 음식과 정원
category-film-bags = 봉지와 비닐
category-batteries-electronics = 배터리와 전자제품
category-hazardous = 페인트, 약품, 가스
category-medical = 약과 주삿바늘
category-textiles = 옷과 신발
category-household-goods = 살림살이
category-building = 건축과 수리
category-bathroom = 욕실

## Parts of an item that may go elsewhere

part-lid = 뚜껑
part-cap = 병뚜껑
part-pump = 펌프
part-sleeve = 겉싸개
part-liner = 안감
part-straw = 빨대
part-filter = 필터
part-battery = 배터리
part-cord = 전선
part-shade = 전등갓
part-contents = 내용물
part-bag = 봉지
part-handle = 손잡이
part-ring = 고리

## Rules about a container: shown where an answer names it. $limit is a measure.

container-rule-lid-closed = 뚜껑을 꼭 닫아야 합니다.
container-rule-weight = 가득 차도 { $limit } 이하여야 합니다.
container-rule-distance = 사방으로 { $limit } 비워 두세요.
container-rule-side-waste = 옆이나 위에 아무것도 두지 마세요.
container-rule-share-of-load = 맞지 않는 것은 전체의 { $limit }까지만 됩니다.
container-rule-liners = 안에 봉지를 씌워도 됩니다.
container-rule-sacks = 나눠 준 자루만 됩니다.
container-rule-registration = 먼저 신청하세요.
container-rule-refusals = 잘못된 것이 있으면 쪽지를 붙여 두고 갑니다.

## Where the law does not let a thing go. $place is a container or stream.

answer-banned = 법으로 금지된 곳: { $place }.
