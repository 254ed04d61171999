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
home-recent = 최근에 찾은 것
home-common = 자주 찾는 것
home-categories = 종류별로 보기

## Questions

cannot-tell = 모르겠어요
questions-left =
    { $count ->
       *[other] 질문이 많아야 { $count }개 남았습니다
    }

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

## When something is not there

unknown-item = 이 안내에는 “{ $id }”라는 물건이 없습니다. 이름으로 찾아보세요.
unknown-category = 이 안내에는 “{ $id }”라는 묶음이 없습니다. 첫 화면에서 고르세요.
unknown-address = “{ $address }”라는 쪽이 없습니다. 첫 화면으로 가세요.
unknown-language = 이 안내는 아직 “{ $language }”로 되어 있지 않습니다. 다른 언어를 고르세요.
