### The coordinator's screens. Short, clear words; trade words where coordinators use them.

## Around every screen

desk-title = 안내 작업대
desk-title-of = { $program }: 안내 작업대
navigation = 프로그램의 부분
undo = 되돌리기
redo = 다시 하기
close = 닫기
tab-files = 파일
tab-program = 프로그램
tab-streams = 배출 구분
tab-zones = 지역
tab-channels = 경로
tab-sites = 장소
tab-rules = 규칙
tab-items = 물건
tab-texts = 글
tab-print = 인쇄
start-problem-unreachable = 서버가 답하지 않았습니다. 연결을 확인하고 쪽을 다시 여세요.
start-problem-missing = 서버에 이 앱의 파일이 없습니다. 게시한 사람에게 다시 게시해 달라고 하세요.
start-problem-broken = 앱의 파일이 손상되어 왔습니다. 쪽을 다시 열고, 그래도 안 되면 앱을 다시 게시하세요.
recover-title = 이 쪽에서 문제가 생겼습니다
recover-text = 작업하는 동안 프로그램이 저장되었습니다. 안전하게 내려받은 뒤 쪽을 다시 열어 계속하세요.
recover-nothing = 이 브라우저에 저장된 프로그램이 없습니다.
recover-reload = 다시 열기
recover-download = 내 프로그램 내려받기
panels = 문제, 변경, 시험

## Saving. $time is a day with a time

save-nothing = 열린 것 없음
save-saved = 이 기기에 저장됨
save-waiting = 저장 중…
save-failed = 저장 안 됨
save-again = 다시 저장하기
save-problem-full = 기기에 자리가 없어 변경이 저장되지 않습니다. 지금 프로그램 파일을 내보내고 자리를 만드세요.
save-problem-forbidden = 이 브라우저는 저장을 허락하지 않아 변경이 저장되지 않습니다. 창을 닫기 전에 프로그램 파일을 내보내세요.
save-problem-newer = 다른 창이 그 뒤에 이 프로그램을 저장했습니다. 지금 것을 덮어쓰지 않았습니다.
day-and-time = { $day } { $time }

## Drafts and files. $name, $copy and $program are names of drafts or files

drafts-title = 이 기기의 프로그램
drafts-none = 아직 없습니다. 예시를 열거나, 새로 시작하거나, 파일을 가져오세요.
draft-saved = { $time } 저장
draft-remove-sure = 정말 지울까요?
draft-second-version = { $name } (두 번째)
draft-diverged = “{ $name }”이(가) 다른 창에서도 바뀌었습니다. 둘 다 두었고 다른 것은 이제 “{ $copy }”입니다.
open-demo = 예시 열기
open-demo-hint = Quillmere 카운티, 모두 채워진 지어낸 곳
new-program = 새 프로그램
new-program-hint = 내장된 안전 규칙만으로 시작
import-file = 프로그램 파일 가져오기
import-file-hint = 다른 프로그램 옆에 열리고 아무것도 바꾸지 않습니다
export-file = 프로그램 파일 내보내기
export-file-hint = 모두 담긴 파일 하나, 보관하거나 전달용
import-refused = “{ $name }”을(를) 열 수 없음
import-unchanged = 프로그램은 그대로입니다.
import-original = 원래 파일 내려받기

## Why a program file cannot be read

load-too-large = 파일이 { $megabytes } MB입니다. 프로그램 파일은 { $limit } MB까지입니다. 맞는 파일인지 확인하세요.
load-truncated = 파일이 { $line }번째 줄에서 너무 일찍 끝납니다. 오는 길에 잘린 듯하니 다시 복사하거나 내려받으세요.
load-not-json = { $line }번째 줄 { $column }번째 칸부터 읽을 수 없습니다. 손으로 고쳤다면 그곳을 바로잡고, 아니면 다시 내보내세요.
load-other-format = 프로그램 파일이 아닙니다(“{ $found }”라고 적힘). 여기서 내보낸 파일을 고르세요.
load-newer = 파일은 버전 { $found }이고 이 앱은 { $known }까지 압니다. 더 새로운 앱을 쓰세요.
load-shape = “{ $path }”의 값 종류가 맞지 않습니다: { $detail }. 고쳐서 다시 가져오세요.
load-too-deep = 규칙 “{ $rule }”의 조건이 { $limit }단계보다 깊습니다. 여러 규칙으로 나누세요.

## Lists and fields in general

list-filter = 거르기
list-add = 더하기
list-add-one = 하나 더
list-new-name = 새것의 이름
list-remove = 지우기
list-up = 위로
list-choose = 목록에서 고르거나 더하세요.
choice-none = 없음
field-month = 월
field-day = 일
measure-unreadable = “{ $stated }”을(를) 읽을 수 없습니다. 2 in, 1 gal, 100 lb 처럼 숫자와 단위를 쓰세요.
translations = 다른 언어로
field-name = 이름
field-kind = 종류
field-note = 주민에게 알릴 말
field-phone = 전화
field-email = 이메일

## The program's own fields

program-basics = 이 프로그램
field-program-name = 안내의 이름
field-program-id = 파일과 주소에 쓸 짧은 이름
field-edition = 판
field-edition-from = 시작일
field-guide-url = 게시된 안내의 주소
field-source-language = 글을 처음 쓰는 언어
field-languages = 게시하는 언어
program-contact = 물어볼 곳
field-contact-name = 사무소 이름
field-return-address = 우편물의 보내는 주소
program-silence = 규칙이 없을 때
field-silence = 규칙이 없으면
silence-undecided = 아직 안 정함(게시할 수 없음)
silence-ask = 열린 목록: 답은 “목록에 없음, 물어보세요”
silence-closed = 닫힌 목록: 적히지 않은 것은 안 받음
program-unknown = 주민이 모를 때
program-unknown-hint = 모르는 것 대신 무엇으로 볼지. 정하지 않으면 안전한 값을 씁니다.
unknown-add = 하나 더 정하기
program-counts-as = 다른 것으로 보는 것
program-counts-as-hint = 모든 규칙이 같게 봅니다. 예: 반투명을 투명으로.
counts-as-add = 속성
field-these = 이것들을
field-count-as = 이것으로 봄
program-hazards = 위험물이 갈 곳
program-hazards-hint = 종류마다 안전하게 받는 경로와 승인한 사람이 있어야 합니다. 위험물은 절대 통에 넣지 않습니다.
field-hazard-channel = 가는 곳
field-approved-by = 승인한 사람
program-plant = 선별장
field-plant-name = 선별장 이름
field-machine-name = 기계
field-machine-limit = 처리할 수 없는 것
machine-add = 기계 더하기
program-print = 인쇄물용
field-short-url = QR 코드 옆 짧은 주소
field-indicia = 우편 표시, 한 줄씩
field-statement = 재생 종이 등에 관한 글

## Streams and containers

containers-title = 통
container-add = 통 더하기
container-remove = 이 통 지우기
field-container-name = 주민이 부르는 이름
field-colour = 색
field-capacity = 용량과 단위
field-container-zones = 이 지역만
field-container-dwellings = 이런 집만
field-set-out = 언제 어떻게 내놓나
field-container-rules = 이 통의 규칙
field-container-rules-hint = 무엇을 넣든 지켜야 합니다. 이 통이 나오는 모든 답에 보입니다.
field-container-rule-add = 규칙의 내용
field-container-rule = 기본 문장 대신 직접 쓴 말
field-limit = 한도와 단위
field-share = 한도, 예: 10%
limit-missing = 한도를 적거나 규칙 전체를 직접 쓰세요.
residents-read = 주민이 읽는 글: { $text }
container-rule-kind-lid-closed = 뚜껑 닫기
container-rule-kind-weight = 가득 찬 무게
container-rule-kind-distance = 둘레의 빈자리
container-rule-kind-side-waste = 옆이나 위의 것
container-rule-kind-share-of-load = 맞지 않는 것의 몫
container-rule-kind-liners = 봉지 씌우기
container-rule-kind-sacks = 나눠 준 자루
container-rule-kind-registration = 먼저 신청
container-rule-kind-refusals = 두고 가는 경우
stream-kind-recycling = 재활용
stream-kind-organics = 음식물·정원 쓰레기
stream-kind-refuse = 일반 쓰레기
stream-kind-glass = 유리
stream-kind-paper = 종이
stream-kind-film = 비닐
container-kind-cart = 바퀴 달린 통
container-kind-bin = 작은 통
container-kind-bag = 봉지
container-kind-box = 상자
container-kind-shared-cart = 건물 공용 통
container-kind-dumpster = 대형 쓰레기함

## Zones

field-dwelling = 집의 종류
field-households = 가구 수
field-zone-streams = 여기서 수거하는 배출 구분
field-centre = 지역 가운데: 위도, 경도

## Channels and sites

field-fee = 요금, 글로
field-booking = 예약해야 함
field-proof = 거주 증명 필요
field-permit = 허가증 필요
field-voucher = 교환권 필요
field-allowance = 얼마나 또는 몇 번, 글로
field-vehicles = 들어올 수 있는 차, 글로
field-safe-for = 안전하게 받는 위험물
channel-sites =
    { $count ->
        [0] 아직 받는 장소가 없습니다.
       *[other] 장소: { $names }
    }
channel-kind-drop-off = 수거 센터
channel-kind-store-take-back = 가게 회수
channel-kind-hazardous-waste = 가정 유해 폐기물 처리장
channel-kind-event = 수거 행사
channel-kind-bulky-pickup = 큰 물건 수거
channel-kind-deposit-return = 보증금 반환
channel-kind-mail-back = 우편 회수
channel-kind-reuse = 재사용과 수리
channel-kind-medicine-take-back = 약 회수
channel-kind-sharps-take-back = 주삿바늘 회수
channel-kind-police = 경찰
channel-kind-specialist = 전문 업체
channel-kind-dealer = 제조사나 판매점
channel-kind-health-office = 보건소
channel-kind-authority = 전화할 기관
field-site-channels = 이 경로의 물건을 받음
field-accepts = 그중 이것만 받음
field-refuses = 그중 이것은 안 받음
field-site-vehicles = 경로와 다르면, 여기 들어올 수 있는 차
field-address = 주소
field-position = 위치: 위도, 경도
field-hours = 여는 시간
field-hours-hint = 공개 지도 자료처럼 쓰세요: Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
hours-unreadable = 이 시간을 읽을 수 없습니다: { $detail }

## Rules and their conditions

field-tier = 단계
field-verdict = 결론
rule-adds-steps = 없음: 할 일만 더함
field-stream = 배출 구분
field-channel = 경로
field-prepare = 준비, 순서대로
field-reason = 이유
field-machine = 정하는 기계
field-residents = 주민용 말
field-sorters = 선별원용 말
field-contract = 계약서 말
provenance-title = 근거
field-decided-by = 정한 사람
field-source = 출처
field-confirmed = 마지막 확인일
field-ask-again = 다시 물을 날
rule-more = 날짜, 예외, 승인
field-also = 이곳도 받음
field-overrides = 같은 단계의 이 규칙보다 먼저
field-temporary = 임시 규칙
field-from = 시작
field-until = 끝
field-season = 해마다 한 시기만
field-season-from = 시기의 첫날
field-season-until = 시기의 마지막 날
season-says = 해마다 { $from }부터 { $until }까지
field-banned-from = 법으로 금지된 곳
acknowledgement-title = 내장된 안전 규칙의 예외
acknowledgement-hint = 이름을 밝힌 사람만 이유를 적어 허락할 수 있습니다. 확인할 때마다 경고로 보입니다.
field-acknowledged-by = 허락한 사람
field-acknowledged-on = 날짜
field-acknowledged-because = 이유
condition-title = 조건
condition-always = 언제나: 이 규칙은 조건이 없습니다.
condition-begin = 조건 더하기
condition-kind = 부분을 세는 법
condition-all = 모두 맞음
condition-any = 하나라도 맞음
condition-not = 이것이 아님
condition-fact = 속성
condition-is = 다음 중 하나
condition-add-fact = 속성 더하기
condition-add-group = 묶음 더하기
condition-remove = 조건의 이 부분 지우기
bound-at-least = 이상
bound-over = 초과
bound-at-most = 이하
bound-under = 미만
bound-value = 양과 단위
bound-day = 날짜
bound-like = 생활 속 비교
bound-per = 세는 단위

## Items. $item is an item's name

items-all = 모두
items-answer = 답
items-asks = 질문함
items-ask = 해 보기
items-ask-name = 해 보기: { $item }
items-rule = 규칙으로 가기
items-decide = 정하기
items-decide-name = 정하기: { $item }
items-count =
    { $count ->
       *[other] 물건 { $count }개
    }

## Texts and their translations

texts-language = 언어
texts-state = 상태
text-state-missing = 없음
text-state-unreviewed = 확인 안 함
text-state-reviewed = 확인함
text-state-outdated = 오래됨
text-step = 준비 단계
text-label = { $whose }: { $what }
texts-reviewer = 서명할 이름
texts-reviewer-needed = 먼저 이름을 적으세요. 확인에는 서명이 필요합니다.
texts-sign-off = 확인했습니다
texts-count = { $all }개 중 { $done }개 확인
review-title = 언어별 상태
review-screens = 화면의 글: { $state }
review-source = 다른 언어의 바탕이 되는 언어
review-by = { $name } 확인, { $date }
review-outdated = { $name } 확인, { $date }. 그 뒤 영어가 바뀌었습니다
review-texts = 직접 쓴 글: { $all }개 중 { $done }개 확인
review-names = 서명: { $names }

## What changed, and trying the guide

ask-title = 주민처럼 물어보기
changes-title = 고쳐서 바뀐 것
changes-count =
    { $count ->
        [0] 바뀐 답이 없습니다.
       *[other] 답 { $count }개가 바뀌었습니다.
    }
changes-absent = 안내에 없음
changes-details = 장소는 같고 준비 방법이나 이유가 다릅니다.
changes-mark = 여기부터 비교

## Findings. $item is an item's name, $answers a list such as "Wet: dry"

findings-title = 문제
findings-count = 오류: { $errors } · 경고: { $warnings } · 알림: { $notices }
findings-more =
    { $count ->
       *[other] 그리고 { $count }개 더
    }
severity-error = 오류
severity-warning = 경고
severity-notice = 알림
severity-pass = 맞음
witness = 예: { $item }, { $answers }일 때
witness-item = 예: { $item }

## What a finding says, and below it what to do. Values are ids and texts of the program

finding-uncovered-case = 이 경우를 정하는 규칙이 없습니다.
    .hint = 규칙을 쓰거나, 프로그램 화면에서 규칙이 없으면 어떻게 할지 정하세요.
finding-conflicting-rules = 같은 단계의 규칙이 같은 것을 다른 곳으로 보냅니다: { $rules }.
    .hint = 하나의 조건을 바꾸거나 하나를 먼저 적용하세요.
finding-hazard-not-safe =
    { $problem ->
        [no-channel] 위험물 “{ $class }”에 경로가 없습니다.
        [unknown-channel] 위험물 “{ $class }”이(가) 없는 경로로 갑니다.
        [channel-does-not-take-it] 위험물 “{ $class }”이(가) 안전하다고 표시되지 않은 경로로 갑니다.
       *[rule] 규칙 “{ $id }”이(가) 위험물 “{ $class }”을(를) 안전하지 않은 곳으로 보냅니다.
    }
    .hint = 안전하게 받는 경로를 고르세요. 위험물은 절대 통에 넣지 않습니다.
finding-hazard-acknowledged = { $by }이(가) 내장된 안전 규칙의 예외를 허락했습니다: “{ $id }”.
    .hint = 지역 법과 장소가 허락하는지, 이유가 아직 맞는지 확인하세요.
finding-rule-never-applies = 규칙 “{ $id }”은(는) 아무것도 정하지 않습니다.
    .hint = 앞선 규칙이 모두 정하거나 조건에 맞는 물건이 없습니다. 바꾸거나 지우세요.
finding-not-listed = 이 물건의 어떤 경우는 답이 “목록에 없음, 물어보세요”입니다.
    .hint = 그래도 됩니다. 답을 알면 규칙을 쓰세요.
finding-missing-provenance = 규칙 “{ $id }”의 결정이 어디서 왔는지 알 수 없습니다. 빠진 것: { $missing }.
    .hint = 누가 어떤 출처로 정했고 언제 선별장에 마지막으로 확인했는지 적으세요.
finding-missing-translation =
    { $state ->
        [unreviewed] “{ $language }”에서 아무도 확인하지 않은 글: { $count }. 첫째는 “{ $first }”.
        [outdated] “{ $language }”에서 원문이 바뀐 글: { $count }. 첫째는 “{ $first }”.
       *[missing] “{ $language }”에 없는 글: { $count }. 첫째는 “{ $first }”.
    }
    .hint = 글 화면을 열고 언어와 상태로 거르세요.
finding-broken-condition =
    { $problem ->
        [unknown-fact] “{ $fact }”이라는 속성이 없습니다.
        [no-values] 속성 “{ $fact }”을(를) 비교할 값이 없습니다.
        [no-number] “{ $fact }”의 “{ $value }”에 숫자가 없습니다.
        [no-unit] “{ $fact }”의 “{ $value }”에 단위가 없습니다.
        [unknown-unit] “{ $fact }”의 “{ $value }” 단위를 모릅니다.
        [wrong-dimension] “{ $value }”(으)로는 “{ $fact }”을(를) 잴 수 없습니다.
        [negative] “{ $fact }”의 “{ $value }”이(가) 0보다 작습니다.
        [too-large] “{ $fact }”의 “{ $value }”이(가) 너무 큽니다.
        [unknown-part] “{ $value }”이라는 부분이 없습니다.
        [range-reversed] “{ $fact }”의 범위 “{ $value }”이(가) 거꾸로입니다.
       *[unknown-value] “{ $value }”은(는) “{ $fact }”의 값이 아닙니다.
    }
    .hint = 목록에서 고르세요. 양은 2 in, 1 gal, 10 lb 처럼 단위와 함께 쓰세요.
finding-broken-item =
    { $problem ->
        [unknown-fact] “{ $fact }”이라는 속성이 없습니다.
        [no-values] 속성 “{ $fact }”을(를) 비교할 값이 없습니다.
        [no-number] “{ $fact }”의 “{ $value }”에 숫자가 없습니다.
        [no-unit] “{ $fact }”의 “{ $value }”에 단위가 없습니다.
        [unknown-unit] “{ $fact }”의 “{ $value }” 단위를 모릅니다.
        [wrong-dimension] “{ $value }”(으)로는 “{ $fact }”을(를) 잴 수 없습니다.
        [negative] “{ $fact }”의 “{ $value }”이(가) 0보다 작습니다.
        [too-large] “{ $fact }”의 “{ $value }”이(가) 너무 큽니다.
        [unknown-part] “{ $value }”이라는 부분이 없습니다.
        [no-such-sides] 적은 변의 길이로는 맞는 크기가 없습니다. 가장 긴 변이 가장 길어야 합니다.
        [no-range] “{ $fact }”의 범위에 처음이나 끝이 없습니다.
        [range-reversed] “{ $fact }”의 범위 “{ $value }”이(가) 거꾸로입니다.
       *[unknown-value] “{ $value }”은(는) “{ $fact }”의 값이 아닙니다.
    }
    .hint = 목록에서 고르세요. 양은 2 in, 1 gal, 10 lb 처럼 단위와 함께 쓰세요.
finding-broken-reference =
    { $kind ->
        [stream] 배출 구분 “{ $target }”이(가) 없습니다.
        [channel] 경로 “{ $target }”이(가) 없습니다.
        [zone] 지역 “{ $target }”이(가) 없습니다.
        [step] 준비 단계 “{ $target }”이(가) 없습니다.
        [reason] 이유 “{ $target }”이(가) 없습니다.
        [machine] 기계 “{ $target }”이(가) 없습니다.
        [item] 물건 “{ $target }”이(가) 없습니다.
        [rule-of-tier] 규칙 “{ $target }”은(는) 다른 단계라서 그보다 먼저일 수 없습니다.
       *[rule] “{ $target }”이(가) 없습니다.
    }
    .hint = 다른 것을 고르거나 없는 것을 더하세요. 빈 이름은 아직 고르지 않았다는 뜻입니다.
finding-circular-override = 이 규칙들은 서로 먼저여서 돌고 돕니다: { $rules }.
    .hint = “먼저” 목록에서 하나를 빼세요.
finding-destination-not-offered = 규칙 “{ $id }”은(는) 배출 구분 “{ $stream }”(으)로 보내지만 지역 “{ $zone }”에서는 수거하지 않습니다.
    .hint = 지역에 배출 구분을 더하거나 그 지역의 규칙을 따로 쓰세요.
finding-duplicate-id =
    { $times ->
        [0] 이름표가 없는 것이 있습니다.
       *[other] 이름표 “{ $id }”이(가) { $times }번 쓰였습니다.
    }
    .hint = 저마다 다른 이름표를 주세요. 링크, 라벨, 번역이 여기에 걸려 있습니다.
finding-printed-line-untrue =
    { $span ->
        [from] 인쇄된 줄 “{ $line }”은(는) { $since }부터 맞지 않습니다.
        [until] 인쇄된 줄 “{ $line }”은(는) { $until }까지 맞지 않습니다.
        [between] 인쇄된 줄 “{ $line }”은(는) { $since }부터 { $until }까지 맞지 않습니다.
       *[always] 인쇄된 줄 “{ $line }”은(는) 이 판에서 맞지 않습니다.
    }
    .hint = 다시 인쇄하거나 그 줄을 가리세요. 더 쓰지 않으면 거둔 날을 적으세요.
finding-suspicious-text =
    { $problem ->
        [markup] 글 “{ $key }”({ $language })에 표시 코드가 있습니다: { $shown }
        [direction] 글 “{ $key }”({ $language })에 글 방향을 바꾸는 문자가 있습니다: { $shown }
       *[control] 글 “{ $key }”({ $language })에 보이지 않는 문자가 있습니다: { $shown }
    }
    .hint = 글은 꾸밈이 없어야 합니다. 지우고 다시 쓰세요.
finding-too-complex = 이 물건은 정해지지 않은 것이 너무 많아 모든 경우를 볼 수 없습니다(열린 속성: { $count }).
    .hint = 속성을 몇 개 정하거나 여러 물건으로 나누세요.
finding-too-many-thresholds = 규칙에 경계값이 너무 많아 물건 { $count }개의 모든 경우를 볼 수 없습니다. 가장 많은 것은 “{ $fact }”: { $thresholds }개.
    .hint = 규칙끼리 같은 경계값을 쓰고, 기간이 끝난 규칙은 빼세요.
finding-unreadable-hours = 여는 시간 “{ $hours }”을(를) 읽을 수 없습니다: { $problem }
    .hint = 이렇게 쓰세요: Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
finding-unusable-setting = “{ $value }”은(는) 여기서 쓸 수 없습니다.
    .hint = 목록에서 고르거나 고치세요. 색은 #2a7f4f, 위치는 위도와 경도, 주소는 https:// 로 시작합니다

## Comparing with a file. $name is a file's name

compare-file-title = 다른 파일과 비교
compare-file = 이전 판이나 이웃의 프로그램 고르기
compare-file-name = “{ $name }”와(과) 비교했습니다.
compare-newer = 이 파일이 더 새것
compare-notice = 변경 알림
compare-copy = 알림 복사
compare-copied = 복사했습니다.
compare-not-copied = 브라우저가 복사하지 못합니다. 글을 골라 직접 복사하세요.
compare-download = 알림 내려받기

## The register of printed sheets. $id is a sheet's id, $day a date

printed-title = 인쇄한 것
printed-copies = 부수
printed-note = 인쇄한 것으로 적기
printed-entry =
    { $copies ->
        [0] { $id }, { $day }
       *[other] { $id }, { $day }, { $copies }부
    }
printed-withdrawn = { $day } 거둠
printed-withdraw = 더 쓰지 않음
printed-still-out = 아직 쓰는 중
finding-question-never-matters =
    { $problem ->
        [unknown] “{ $fact }”을(를) 모를 때의 값이 있지만 어떤 답에도 필요하지 않습니다.
       *[open] 이 물건은 “{ $fact }”이(가) 열려 있지만 어떤 답도 거기에 달려 있지 않습니다.
    }
    .hint = 아무에게도 묻지 않습니다. 두거나, 그것이 필요한 규칙을 쓰세요.
finding-steps-contradict = 한 답이 “{ $one }”와(과) “{ $other }”을(를) 함께 요구해 둘 다 할 수 없습니다. 규칙: { $rules }.
    .hint = 두 단계 중 하나를 빼거나 규칙 하나만 맞게 조건을 바꾸세요.
finding-preparation-contradicts =
    { $problem ->
        [none] 규칙 “{ $id }”의 단계 “{ $step }”을(를) 따르면 “{ $fact }”이(가) “{ $value }”이(가) 되고, 그러면 그곳으로 보내는 규칙이 없습니다.
       *[rule] 규칙 “{ $id }”의 단계 “{ $step }”을(를) 따르면 “{ $fact }”이(가) “{ $value }”이(가) 되고, 그러면 규칙 “{ $other }”이(가) 다른 곳으로 보냅니다.
    }
    .hint = 단계를 빼거나, 단계를 마친 것에도 규칙이 맞게 하세요.
finding-site-never-used =
    { $problem ->
        [item] 장소 “{ $id }”이(가) “{ $item }”을(를) 받는다고 하지만 이 장소의 경로로 보내지는 일이 없습니다.
       *[site] 장소 “{ $id }”(으)로 보내지는 것이 없습니다.
    }
    .hint = 그 경로로 보내는 규칙을 쓰거나, 다른 경로를 주거나, 목록에서 빼세요.
finding-no-site-takes =
    { $problem ->
        [refused] “{ $item }”이(가) 경로 “{ $id }”(으)로 가지만 받는 장소가 없습니다.
       *[none] “{ $item }” 같은 것이 경로 “{ $id }”(으)로 가지만 그 경로에 장소가 없습니다.
    }
    .hint = 장소를 더하거나, 한 장소가 받게 하거나, 다른 경로로 보내세요.
finding-item-without-name = 물건 “{ $id }”에 보여 줄 이름이 없습니다. 이름 없는 언어: { $languages }.
    .hint = 프로그램을 쓴 언어로 이름을 적으세요.
finding-name-twice = 물건 “{ $id }”와(과) “{ $other }”이(가) “{ $language }”에서 모두 “{ $name }”입니다.
    .hint = 하나에 구별되는 이름을 주세요. 주민은 이름으로 고릅니다.
finding-banned-destination = “{ $item }”이(가) 법으로 금지된 배출 구분 “{ $stream }”(으)로 갑니다. 규칙: { $rules }.
    .hint = 다른 배출 구분이나 경로로 보내거나, 금지를 적은 곳을 고치세요.
finding-impossible-condition =
    { $problem ->
        [fact] 규칙 “{ $id }”의 조건은 맞을 수 없습니다. “{ $fact }”에 대한 요구가 서로 어긋납니다.
       *[parts] 규칙 “{ $id }”의 조건은 맞을 수 없습니다. 부분들이 서로 어긋납니다.
    }
    .hint = 한 부분을 고치거나 빼세요. 하나만 맞아도 되면 “하나라도 맞음”을 쓰세요.
finding-empty-condition =
    { $problem ->
        [any] 규칙 “{ $id }”의 조건에 빈 묶음 “하나라도 맞음”이 있어 맞을 수 없습니다.
       *[all] 규칙 “{ $id }”의 조건에 빈 묶음 “모두 맞음”이 있어 언제나 맞습니다.
    }
    .hint = 묶음에 내용을 넣거나 묶음을 지우세요.
finding-rule-without-condition = 규칙 “{ $id }”에 조건이 없어, 앞 단계가 정하지 않은 모든 것을 정합니다.
    .hint = 언제 맞는지 쓰세요. 나머지 전부를 뜻한다면 “default” 단계에 두세요.
finding-text-missing-register =
    { $register ->
        [contract] 계약서 말이 없는 규칙: { $count }. 첫째는 “{ $first }”.
        [sorters] 선별원용 말이 없는 규칙: { $count }. 첫째는 “{ $first }”.
       *[residents] 주민용 말이나 이유가 없는 규칙: { $count }. 첫째는 “{ $first }”.
    }
    .hint = 규칙 화면에 적어 셋이 같은 말을 하게 하세요.
finding-unused-thing =
    { $kind ->
        [stream] 배출 구분 “{ $id }”(으)로 보내는 규칙이 없습니다.
        [channel] 경로 “{ $id }”(으)로 가는 규칙도 위험물도 없습니다.
        [step] 단계 “{ $id }”을(를) 쓰는 규칙이 없습니다.
        [zone] 지역 “{ $id }”에는 다른 것이 없습니다. 규칙, 통, 배출 구분 어디에도 나오지 않습니다.
       *[machine] 기계 “{ $id }”을(를) 말하는 규칙이 없습니다.
    }
    .hint = 필요할 것이면 두고, 아니면 지우세요.
finding-counts-as-broken =
    { $problem ->
        [unknown-fact] 값을 다른 것으로 볼 속성 “{ $fact }”이(가) 없습니다.
        [unlisted-fact] “{ $fact }”은(는) 값 목록이 없어 다른 것으로 볼 수 없습니다.
        [unknown-value] “{ $value }”은(는) “{ $fact }”의 값이 아닙니다.
        [danger] “{ $fact }”은(는) 위험이라서 값을 다른 것으로 볼 수 없습니다.
        [nothing] “{ $fact }”의 “{ $value }”(으)로 볼 것이 적혀 있지 않습니다.
        [itself] “{ $fact }”의 “{ $value }”을(를) 자기 자신으로 봅니다.
        [twice] “{ $fact }”의 “{ $value }”을(를) 다른 두 값으로 봅니다.
        [circle] “{ $fact }”의 값들이 서로를 돌아가며 가리킵니다. “{ $value }”도 그중 하나입니다.
       *[chain] “{ $fact }”의 “{ $value }”을(를) 이미 다른 값으로 보므로, 다른 것을 이 값으로 볼 수 없습니다.
    }
    .hint = 목록에서 값을 고르세요. 값마다 다른 값 하나로 보며, 그 값은 자기 자신이어야 합니다.
finding-season-broken =
    { $problem ->
        [reversed] 규칙 “{ $id }”의 마지막 날이 첫날보다 앞섭니다: { $value }.
       *[not-a-year-day] “{ $value }”은(는) 한 해의 날이 아니어서 규칙 “{ $id }”의 시기를 읽을 수 없습니다.
    }
    .hint = 11-01 처럼 월과 일을 쓰세요. 시기는 해를 넘겨도 되지만 연도가 있는 첫날과 마지막 날은 안 됩니다.
finding-container-rule-broken =
    { $problem ->
        [unknown-kind] “{ $value }”은(는) 통 “{ $id }”의 규칙 종류가 아닙니다.
        [twice] 통 “{ $id }”에 “{ $value }” 규칙이 둘 있습니다.
        [limit] 통 “{ $id }”의 한도 “{ $value }”을(를) 읽을 수 없습니다.
       *[unknown-dwelling] “{ $value }”은(는) 집의 종류가 아니어서 통 “{ $id }”이(가) 어디에도 쓰이지 않습니다.
    }
    .hint = 목록에서 고르거나, 두 글을 한 규칙에 넣거나, 한도를 단위와 함께 쓰세요: 100 lb, 3 ft, 10%.
finding-comparison-broken =
    { $problem ->
        [unknown-like] “{ $fact }”을(를) 견줄 생활 물건 “{ $value }”이(가) 없습니다.
        [other-dimension] “{ $value }”은(는) “{ $fact }”와(과) 상관없는 다른 양입니다.
        [far] “{ $value }”은(는) “{ $fact }”에 적은 양의 두 배보다 크거나 절반보다 작습니다.
       *[unknown-period] “{ $fact }”은(는) “{ $value }” 단위로 셀 수 없습니다.
    }
    .hint = 목록에서 고르거나 비교를 빼세요.

## Ways to mend a finding, on buttons and in lists. Values are ids and texts of the program

fix-replace = “{ $value }” 대신 “{ $with }” 넣기
fix-choose = “{ $with }” 고르기
fix-remove = “{ $value }” 빼기
fix-replace-fact = “{ $fact }” 대신 “{ $with }” 비교하기
fix-replace-value = “{ $value }” 대신 “{ $with }” 넣기
fix-remove-value = 조건에서 “{ $value }” 빼기
fix-replace-item-fact = 속성 “{ $fact }” 대신 “{ $with }” 넣기
fix-remove-rule = 규칙 “{ $rule }” 지우기
fix-go-before = “{ $rule }”을(를) { $over }보다 먼저
fix-not-before = “{ $rule }”을(를) “{ $over }”보다 먼저 두지 않기
fix-silence-undecided = 규칙이 없을 때를 정하지 않고 두기
fix-silence-ask = 열린 목록: 규칙이 없으면 “목록에 없음, 물어보세요”
fix-silence-closed = 닫힌 목록: 규칙이 없으면 안 받음
fix-answer-yes = 규칙 초안: “{ $item }”은(는) “{ $stream }”(으)로
fix-answer-no = 규칙 초안: “{ $item }”은(는) 안 받음, “{ $stream }”(으)로
fix-route = 위험물 “{ $class }”을(를) 경로 “{ $channel }”(으)로 보내기
fix-send-to = 규칙 “{ $rule }”의 물건을 경로 “{ $channel }”(으)로 보내기
fix-collect = 지역 “{ $zone }”에서도 “{ $stream }” 수거하기
fix-except-zone = 지역 “{ $zone }”에서 규칙 “{ $rule }” 빼기
fix-own-ids = 새 이름표 주기: { $with }
fix-remove-twins = 모든 것이 같은 사본 지우기
fix-swap-dates = 첫날과 마지막 날 바꾸기
fix-drop-from = 첫날 빼기
fix-drop-until = 마지막 날 빼기
fix-drop-season = 시기 빼기
fix-swap-position = 위도와 경도 바꾸기
fix-add-language = “{ $language }”(으)로도 게시하기
fix-remove-empty = 빈 묶음 지우기
fix-remove-unused = “{ $id }” 지우기
fix-drop-counting = “{ $fact }”의 “{ $value }”(으)로 아무것도 보지 않기
fix-clean-text = 글에서 빼기
mend-title = 고치는 방법
mend-done = 했습니다: { $fix }. 되돌릴 수 있습니다.
mend-gone = 바뀐 것이 없습니다. 프로그램이 그때와 다릅니다.
