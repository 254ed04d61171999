### What residents read on their phones. Plain words, short sentences, no jargon.

## Around every screen

page-title = { $program }: 무엇을 어디에
skip = 본문으로 가기
back = 뒤로
language-label = 언어
zone-label = 내 지역
zone-none = 내 지역 고르기
unreviewed = 이 번역은 아직 사람이 확인하지 않았습니다. 이상하면 영어로 읽어 보세요.
decided-edition = 안내: { $edition }
privacy = 찾아본 내용은 이 휴대폰에만 남습니다. 보내거나 세지 않습니다.

## Finding an item

search-label = 무엇을 버리시나요?
search-placeholder = 예: 피자 상자
search-count =
    { $count ->
        [0] 찾은 것이 없습니다
       *[other] { $count }개 찾음
    }
search-nothing = 그런 이름이 없습니다. 더 짧은 말로 찾아보세요. 목록에 없다고 꼭 “안 됨”은 아닙니다. 저희에게 물어보세요.
search-long = 너무 깁니다. 앞의 { $count }글자만 찾았습니다.
home-recent = 최근에 찾은 것
home-common = 자주 찾는 것
home-categories = 종류별로 보기

## Questions

cannot-tell = 모르겠어요
questions-left =
    { $count ->
       *[other] 질문이 많아야 { $count }개 남았습니다
    }
ruler-title = 이 화면으로 재기
ruler-card = 은행 카드를 세워서 화면에 대세요. 그림이 카드와 같은 너비가 될 때까지 막대를 움직이세요.
ruler-use = 이제 물건의 한쪽 끝을 0에 맞춰 자에 대세요.
ruler-cards = { $measure }: 은행 카드를 길게 이어 놓은 수 { $count }

## Answers

verdict-yes = 됩니다
verdict-no = 안 됩니다
verdict-elsewhere = 여기 말고 다른 곳에서 받습니다
verdict-unlisted = 목록에 없음: 물어보세요
verdict-undecided = 아직 안 정해짐: 물어보세요
verdict-closed = 안 됩니다: 목록에 없음
caution-title = 조심하세요.
prepare-title = 준비 방법
why-title = 이유
also-title = 이곳도 받습니다
temporary-order = 지금은 임시 규칙입니다. 곧 바뀔 수 있습니다.
assumed-title = 모르겠다고 하셔서 안전한 답을 골랐습니다:
assumed-line = { $fact }: { $value }
ask-contact = 문의: { $name }
decided-title = 어느 규칙을 따랐나
decided-rule = 규칙:
decided-acknowledged = 이름이 밝혀진 담당자가 안전 규칙의 예외로 승인했습니다.

## Places to take things to

site-more =
    { $count ->
       *[other] { $count }곳 더
    }
site-locate = 가장 가까운 곳 찾기
site-no-position = 휴대폰이 위치를 알려 주지 않았습니다.
near-label = 동네, 지역 또는 우편번호
near-find = 그 근처 찾기
near-found = { $place }에서 가까운 순서입니다.
near-unknown = 이 안내에는 “{ $place }”라는 곳이 없습니다. 동네, 지역 또는 수거 장소 이름을 써 보세요.
site-also-takes = 이것도 받습니다: { $items }
site-all-items = 받는 것 모두
site-booking = 먼저 예약하세요.
site-proof = 거주 증명을 가져가세요.
site-permit = 허가증이 필요합니다.
site-voucher = 교환권이 필요합니다.
container-rules-title = { $container } 안내
hours-open = 지금 열림
hours-open-until = { $time }까지 열림
hours-closed = 지금 닫힘
hours-closed-until = 닫힘, { $time }에 엶
hours-appointment = 예약한 사람만
hours-unknown = 여는 시간을 모름: 먼저 전화하세요
hours-day-time = { $day } { $time }

## Without a network

offline-fetching = 인터넷 없이 쓸 수 있게 저장하는 중…
offline-ready = 저장했습니다. 인터넷 없이도 됩니다.
offline-now = 인터넷이 끊겼습니다. 휴대폰에 저장된 안내를 씁니다.
offline-incomplete = 인터넷이 끊겼고 안내가 다 저장되지 않았습니다. 일부가 없을 수 있습니다.
offline-failed = 저장하지 못했습니다. 인터넷이 있어야 됩니다. 나중에 다시 해 보세요.
offline-impossible = 이 브라우저는 저장할 수 없습니다. 인터넷이 있어야 됩니다.
update-ready = 새 안내가 있습니다.
update-now = 지금 쓰기
offline-lost = 휴대폰이 저장한 안내를 지웠습니다. 다시 저장하는 중…
offline-forgetful = 이 브라우저는 아무것도 저장하지 못하게 합니다. 인터넷이 있어야 되고, 언어와 지역을 기억하지 못합니다.
update-failed = 새 안내가 다 오지 않았습니다. 지금 안내는 그대로 쓸 수 있고, 휴대폰이 다시 해 봅니다.

## When something is not there

unknown-item = 이 안내에는 “{ $id }”라는 물건이 없습니다. 이름으로 찾아보세요.
unknown-category = 이 안내에는 “{ $id }”라는 묶음이 없습니다. 첫 화면에서 고르세요.
unknown-address = “{ $address }”라는 쪽이 없습니다. 첫 화면으로 가세요.
unknown-language = 이 안내는 아직 “{ $language }”로 되어 있지 않습니다. 다른 언어를 고르세요.
language-broken = “{ $language }” 글이 다 오지 않았습니다. 연결을 확인하고 언어를 다시 고르세요.
unknown-zone = 이 안내에는 “{ $id }”라는 지역이 없습니다. 화면 아래에서 지역을 고르세요.
clock-wrong = 이 휴대폰은 오늘이 { $date }이라고 합니다. 맞을 리 없습니다. 지금 열려 있는지 알 수 없고, 철마다 바뀌는 규칙이 틀릴 수 있습니다. 날짜를 맞추세요.
