### What can be known about a thing: names, questions, answers. Values have to make sense alone,
### as a button and in "You could not tell, so we took: Closure: on".

## Ranges of a measure or of dates, as answers to choose from

range-at-least = { $value } 이상
range-over = { $value } 초과
range-at-most = { $value } 이하
range-under = { $value } 미만
range-between = { $low }부터 { $high }까지
range-any = 상관없음

## A fact and its value, an item and its part. Examples: "Resin mark: 5", "Glass jar: the lid"

fact-value = { $fact }: { $value }
item-part = { $item }: { $part }

## Who asks, where and when

fact-day = 날짜
ask-day = 어느 날인가요?

## Time of year

fact-time-of-year = 시기
ask-time-of-year = 일 년 중 어느 날인가요?

## Service zone

fact-zone = 지역
ask-zone = 어디에 사시나요?
    .hint = 지역마다 규칙이 다릅니다.

## Dwelling

fact-dwelling = 집
ask-dwelling = 어떤 집에 사시나요?
value-dwelling-house = 단독 주택
value-dwelling-small-building = 작은 공동 주택
value-dwelling-large-building = 큰 아파트 건물

## Where it comes from

fact-origin = 나온 곳
ask-origin = 어디에서 나왔나요?
value-origin-household = 가정
value-origin-business = 사업장

## Proof of residency

fact-proof = 거주 증명
ask-proof = 여기 산다는 것을 보여 줄 수 있나요?
    .hint = 주소가 적힌 고지서나 면허증이면 됩니다.
value-proof-yes = 증명할 수 있음
value-proof-no = 증명할 것이 없음

## Paid extra service

fact-add-on = 유료 추가 서비스
ask-add-on = 추가 수거 서비스에 돈을 내시나요?
    .hint = 그렇다면 고지서에 적혀 있습니다.
value-add-on-yes = 돈을 냄
value-add-on-no = 안 냄

## Quantity

fact-quantity = 개수
ask-quantity = 몇 개인가요?

## What it is

fact-item = 물건
ask-item = 무엇인가요?

## Category

fact-category = 종류
ask-category = 어떤 종류의 물건인가요?

## Part of a thing

fact-part = 부분
ask-part = 어느 부분인가요?
value-part-whole = 전체
value-part-lid = 뚜껑
value-part-cap = 병뚜껑
value-part-pump = 펌프
value-part-sleeve = 겉싸개
value-part-liner = 안감
value-part-straw = 빨대
value-part-filter = 필터
value-part-battery = 배터리
value-part-cord = 전선
value-part-shade = 전등갓
value-part-contents = 내용물
value-part-bag = 봉지
value-part-handle = 손잡이
value-part-ring = 고리

## Hazard class

fact-hazard = 위험
ask-hazard = 어떤 위험이 있나요?
    .hint = 라벨의 경고 글이나 표시를 보세요. 확실하지 않으면 “모르겠어요”를 고르세요.
value-hazard-none = 위험 없음
value-hazard-battery-lithium = 리튬 배터리(충전식)
value-hazard-battery-household = 일반 건전지
value-hazard-battery-lead-acid = 자동차 배터리(납축전지)
value-hazard-sharps = 주삿바늘이나 채혈침
value-hazard-medicine = 약
value-hazard-pressurised = 압력 있는 캔이나 가스통
value-hazard-flammable = 불붙는 액체나 가스
value-hazard-toxic = 독성
value-hazard-corrosive = 부식성(피부 화상)
value-hazard-mercury = 수은이 든 물건
value-hazard-oil = 엔진 오일
value-hazard-explosive = 폭발물
value-hazard-radioactive = 방사성 물건

## Material

fact-material = 재질
ask-material = 무엇으로 만들었나요?
    .hint = 가장 많이 쓰인 재질을 고르세요.
value-material-plastic = 플라스틱
value-material-bioplastic = 식물성 플라스틱
value-material-cardboard = 골판지
value-material-paperboard = 얇은 판지
value-material-paper = 종이
value-material-carton = 종이팩 재질
value-material-steel = 철이나 양철
value-material-aluminium = 알루미늄
value-material-metal = 다른 금속
value-material-glass = 유리
value-material-ceramic = 도자기
value-material-wood = 나무
value-material-cork = 코르크
value-material-textile = 천
value-material-leather = 가죽
value-material-rubber = 고무
value-material-food = 음식
value-material-plant = 잎이나 가지
value-material-wax = 왁스
value-material-stone = 돌이나 콘크리트
value-material-electronics = 전자제품
value-material-chemical = 화학약품
value-material-mixed = 여러 재질

## Form

fact-form = 모양
ask-form = 어떤 모양인가요?
value-form-bottle = 병
value-form-jug = 손잡이 달린 통
value-form-jar = 단지
value-form-tub = 둥근 통
value-form-cup = 컵
value-form-lid = 뚜껑
value-form-clamshell = 여닫이 상자
value-form-tray = 받침
value-form-bag = 봉지
value-form-film = 비닐이나 랩
value-form-pouch = 파우치
value-form-tube = 튜브
value-form-can = 캔
value-form-spray-can = 스프레이 캔
value-form-cylinder = 가스통
value-form-box = 상자
value-form-carton = 음료 종이팩
value-form-canister = 원통
value-form-sheet = 낱장
value-form-newspaper = 신문이나 잡지
value-form-book = 책
value-form-envelope = 봉투
value-form-roll = 두루마리
value-form-foil = 호일
value-form-pan = 냄비나 팬
value-form-foam = 발포 폼
value-form-pod = 커피 캡슐
value-form-cutlery = 포크, 칼, 숟가락
value-form-straw = 빨대
value-form-pot = 화분
value-form-bucket = 양동이
value-form-toy = 장난감
value-form-rope = 끈, 호스, 전선
value-form-clothing = 옷
value-form-shoe = 신발
value-form-furniture = 가구
value-form-mattress = 매트리스
value-form-appliance = 대형 가전
value-form-device = 전자 기기
value-form-lamp = 전구나 형광등
value-form-battery = 배터리
value-form-needle = 바늘
value-form-pill = 알약이나 약
value-form-tool = 공구
value-form-window = 창이나 거울
value-form-dishes = 그릇
value-form-tyre = 타이어
value-form-timber = 목재
value-form-rubble = 건축 폐기물
value-form-food = 음식
value-form-plant = 정원 쓰레기
value-form-liquid = 액체
value-form-ash = 재
value-form-sanitary = 기저귀나 위생용품
value-form-other = 다른 모양

## Packaging or product

fact-object = 쓰임
ask-object = 물건을 담았던 포장인가요?
value-object-packaging = 포장재
value-object-product = 물건 자체

## Battery inside

fact-battery = 배터리
ask-battery = 안에 배터리가 있나요?
    .hint = 불이 켜지거나 움직이거나 소리 나거나 충전되면 있습니다.
value-battery-yes = 배터리 있음
value-battery-no = 배터리 없음

## Resin mark

fact-resin = 삼각형 안 숫자
ask-resin = 작은 삼각형 안의 숫자는?
    .hint = 바닥을 보세요. 숫자는 플라스틱 종류이며, 재활용된다는 뜻은 아닙니다.
value-resin-1 = 1
value-resin-2 = 2
value-resin-3 = 3
value-resin-4 = 4
value-resin-5 = 5
value-resin-6 = 6
value-resin-7 = 7
value-resin-none = 숫자 없음
value-resin-unreadable = 안 보임

## Deposit mark

fact-deposit-mark = 보증금 표시
ask-deposit-mark = 보증금 표시가 있나요?
    .hint = 바코드 옆의 표시나 금액을 보세요.
value-deposit-mark-yes = 보증금 표시 있음
value-deposit-mark-no = 보증금 표시 없음

## Color

fact-colour = 색
ask-colour = 무슨 색인가요?
value-colour-clear = 투명
value-colour-frosted = 반투명
value-colour-white = 흰색
value-colour-green = 초록색
value-colour-brown = 갈색
value-colour-blue = 파란색
value-colour-black = 검은색
value-colour-other = 다른 색

## Coating

fact-coating = 코팅
ask-coating = 겉에 무엇이 입혀져 있나요?
    .hint = 모서리를 찢어 얇은 막이 보이면 플라스틱, 긁어서 벗겨지면 왁스입니다.
value-coating-none = 코팅 없음
value-coating-plastic = 플라스틱
value-coating-wax = 왁스
value-coating-foil = 은박
value-coating-glitter = 반짝이
value-coating-wet-strength = 젖어도 질긴 종이

## Layers

fact-layers = 겹
ask-layers = 여러 겹이 붙어 있나요?
value-layers-one = 한 겹
value-layers-many = 여러 겹

## Longest side

fact-longest-side = 가장 긴 변
ask-longest-side = 길이가 얼마인가요?
    .hint = 가장 긴 변을 재세요.

## Middle side

fact-middle-side = 두 번째로 긴 변
ask-middle-side = 너비가 얼마인가요?
    .hint = 두 번째로 긴 변을 재세요.

## Shortest side

fact-shortest-side = 가장 짧은 변
ask-shortest-side = 두께가 얼마인가요?
    .hint = 가장 짧은 변을 재세요.

## Length of shredded strips

fact-strip-length = 조각 길이
ask-strip-length = 조각의 길이가 얼마인가요?

## Capacity

fact-capacity = 용량
ask-capacity = 얼마나 들어가나요?
    .hint = 라벨에서 양을 찾으세요.

## Weight

fact-mass = 무게
ask-mass = 얼마나 무거운가요?

## Fits the container

fact-fits-container = 통에 들어감
ask-fits-container = 통에 넣고 뚜껑이 닫히나요?
value-fits-container-yes = 뚜껑이 닫힘
value-fits-container-no = 안 들어감

## Contents

fact-contents = 남은 내용물
ask-contents = 안에 남은 것이 있나요?
    .hint = 아무것도 흐르거나 떨어지지 않으면 빈 것입니다.
value-contents-empty = 비었음
value-contents-traces = 조금 묻어 있음
value-contents-dried = 말라 있음
value-contents-part-full = 일부 남음
value-contents-full = 가득 참

## Former contents

fact-former-contents = 들었던 것
ask-former-contents = 무엇이 들어 있었나요?
value-former-contents-none = 없음
value-former-contents-food = 음식
value-former-contents-drink = 음료
value-former-contents-personal-care = 비누, 샴푸, 크림
value-former-contents-cleaner = 세정제
value-former-contents-oil = 엔진 오일
value-former-contents-paint = 페인트
value-former-contents-pesticide = 살충제나 제초제
value-former-contents-solvent = 희석제나 연료
value-former-contents-medicine = 약

## Soiling

fact-soiling = 깨끗한 정도
ask-soiling = 깨끗한가요?
value-soiling-clean = 깨끗함
value-soiling-grease = 기름 묻음
value-soiling-food = 음식 묻음

## Wet

fact-wet = 젖음
ask-wet = 젖었나요?
value-wet-yes = 젖음
value-wet-no = 마름

## Bagged

fact-bagged = 봉지에 담음
ask-bagged = 봉지에 담겨 있나요?
value-bagged-loose = 봉지 없이 그대로
value-bagged-plastic-bag = 비닐봉지에
value-bagged-clear-bag = 투명 봉지에
value-bagged-paper-bag = 종이봉투에

## Flattened

fact-flattened = 납작하게 폄
ask-flattened = 납작하게 폈나요?
value-flattened-yes = 폈음
value-flattened-no = 안 폈음

## Bundled

fact-bundled = 묶음
ask-bundled = 묶어 놓았나요?
value-bundled-yes = 묶었음
value-bundled-no = 안 묶었음

## Shredded

fact-shredded = 파쇄
ask-shredded = 잘게 파쇄했나요?
value-shredded-yes = 파쇄함
value-shredded-no = 안 함

## Broken

fact-broken = 고장
ask-broken = 깨지거나 낡았나요?
value-broken-yes = 깨졌거나 낡음
value-broken-no = 멀쩡함

## Compostable

fact-compostable = 퇴비 가능
ask-compostable = 퇴비가 된다고 적혀 있나요?
    .hint = 영어 “certified compostable”(퇴비 가능 인증)과 인증 표시를 찾으세요.
value-compostable-no = 아니요
value-compostable-claimed = 글만 있고 인증 표시 없음
value-compostable-certified = 인증 표시 있음

## Closure

fact-closure = 뚜껑
ask-closure = 뚜껑이 닫혀 있나요?
value-closure-none = 뚜껑 없음
value-closure-on = 닫힘
value-closure-off = 뺐음

## Label

fact-label = 라벨
ask-label = 어떤 라벨이 붙어 있나요?
value-label-none = 라벨 없음
value-label-paper = 종이 라벨
value-label-film = 비닐 라벨
value-label-sleeve = 전체를 감싼 비닐

## Pump

fact-pump = 펌프나 분무기
ask-pump = 펌프나 분무기가 달렸나요?
value-pump-yes = 펌프 있음
value-pump-no = 펌프 없음

## Metal fitting

fact-fitting = 금속 부분
ask-fitting = 작은 금속이 붙어 있나요?
value-fitting-yes = 금속 있음
value-fitting-no = 금속 없음

## Window

fact-window = 비닐 창
ask-window = 투명 비닐 창이 있나요?
value-window-yes = 창 있음
value-window-no = 창 없음

## Liner

fact-liner = 안감
ask-liner = 안에 안감이 있나요?
value-liner-yes = 안감 있음
value-liner-no = 안감 없음

## Cord

fact-cord = 전선
ask-cord = 전선이 있나요?
value-cord-yes = 전선 있음
value-cord-no = 전선 없음

## What is said beside a limit. Examples: "2 inches (about a golf ball)", "4 a visit".

measure-like = { $measure }({ $thing } 정도)
measure-per = { $period } { $measure }
like-credit-card = 은행 카드 길이
like-golf-ball = 골프공
like-tennis-ball = 테니스공
like-basketball = 농구공
like-sheet-of-paper = 종이 한 장 길이
like-yogurt-cup = 작은 요거트 컵
like-milk-jug = 큰 우유통
like-bucket = 큰 양동이
like-brick = 벽돌
per-visit = 한 번에
per-day = 하루에
per-week = 한 주에
per-month = 한 달에
per-year = 한 해에
