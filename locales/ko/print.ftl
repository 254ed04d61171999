### The print screen and what the check before printing (preflight) says.
### $place, $what, $field and $zone come from the printing part in English.

## The print screen

print-sheet = 인쇄물
sheet-lid = 통 뚜껑 라벨
sheet-sticker = 원형 스티커, 한 가지 내용
sheet-sign = 공용 통 안내판
sheet-postcard = 우편엽서
sheet-self-mailer = 접는 우편물
sheet-handout = 나눠 주는 안내지
print-size = 완성 크기
print-size-usual = 보통 크기
print-size-typed = 아래에 쓰기
print-typed-size = 단위까지 쓴 크기, 예: 8 x 12 in; 원형은 115 mm
print-size-unread = “{ $text }”은(는) 크기가 아닙니다. 너비, 높이, 단위를 쓰세요: 8 x 12 in
print-corner = 모서리 반지름(mm)
print-fold = 접기
print-fold-half = 한 번, 가운데로
print-fold-thirds = 두 번, 편지처럼
print-die-line = 칼선을 별색으로 그리기
print-printers-mark = 인쇄소 표시 자리 두기
print-more = 인쇄소용 추가 항목
print-stock = 용지
print-thickness = 용지 두께(mm)
print-distance = 읽는 거리(mm)
print-qr-level = QR 코드: 견디는 손상
print-qr-most = 커지지 않는 한 가장 높게
print-qr-medium = 15%(M)
print-qr-quartile = 25%(Q)
print-qr-high = 30%(H)
print-words = 한 줄의 최대 단어 수
print-words-any = 필요한 만큼
print-item = 물건 하나
print-press = 인쇄 전지에 여러 개
print-press-none = 한 쪽에 하나
print-work-and-turn = 같은판 양면(돈땡)
print-no-item = “{ $item }”이라는 물건이 없습니다. 목록에서 고르세요.
print-nothing-against = “{ $item }”을(를) 넣지 말라는 규칙이 없습니다. 넣으면 안 되는 물건이나 위험물을 고르세요.
print-ticket = 작업 지시서 받기
print-number-unread = “{ $text }”은(는) 밀리미터 수가 아닙니다.
ticket-title = 작업 지시서
ticket-sheet = 인쇄물
ticket-files = 파일
ticket-file =
    { $pages ->
       *[other] { $file }: { $pages }쪽
    }
ticket-quantity = 수량
ticket-copies =
    { $copies ->
       *[other] { $languages }: { $copies }부
    }
ticket-copies-unsaid = { $languages }: 부수는 협의
ticket-trim = 완성 크기
ticket-size = { $width } × { $height } mm({ $across } × { $down } in)
ticket-bleed = 사방 도련
ticket-mm = { $length } mm
ticket-corners = 모서리
ticket-round = 원형으로 자름
ticket-radius = 둥글게, 반지름 { $radius } mm
ticket-square = 직각
ticket-die = 칼선은 별색 “Dieline”, 겹쳐 찍기 설정: 인쇄하지 마세요
ticket-folds = 접는 선
ticket-fold = 가로로 접기, 펼친 종이의 위쪽 끝에서 { $at } mm 아래
ticket-fold-order = 주소 면이 바깥입니다. 그 아래쪽 끝이 접는 선이고, 위쪽 끝이 열리며 거기를 봉합니다.
ticket-colours = 색
ticket-colours-one = 4/0: 한 면에 시안, 마젠타, 노랑, 검정
ticket-colours-two = 4/4: 양면에 시안, 마젠타, 노랑, 검정
ticket-colours-note = PDF/X-4; 검은 글자는 겹쳐 찍기; 총 잉크 { $limit }% 이하
ticket-stock = 용지
ticket-stock-unsaid = 협의
ticket-thickness = 두께 { $thickness } mm
ticket-thickness-unsaid = 두께는 확인 필요
ticket-press = 인쇄 전지
ticket-work-and-turn = 같은판 양면(돈땡): 뒷면이 같은 판에 있음
ticket-mark = 인쇄소 표시
ticket-mark-room = 작은 글씨 자리에 19 × 6 mm를 비워 둠
ticket-edition = 판
ticket-date = 작업 날짜
ticket-contact = 문의
print-zone = 한 지역만
print-language = 언어 { $number }
print-make = 인쇄물 만들기
print-making = 만드는 중…
print-done = 인쇄물이 준비되었습니다.
print-refused = 파일을 만들지 않았습니다. 아래 오류를 고치고 다시 하세요.
print-unreachable = 인쇄 기능을 받지 못했습니다. 연결을 확인하고 다시 하세요.
print-download = 인쇄소용 PDF 받기
print-download-web = 웹용 PDF 받기
print-web-hint = 인쇄소용 PDF는 인쇄소에 보냅니다. 웹용 PDF는 화면으로 보고 소리로 듣기 위한 것입니다.
print-profile = 인쇄소의 색 프로필(.icc)
print-profile-hint = 없으면 함께 제공된 코팅지용 프로필을 씁니다.
print-ink-limit = 최대 잉크(%)
print-mark = 인쇄물에 { $number }번으로 표시
print-contradictions = 서로 어긋나는 줄: { $count }. 인쇄 전에 아래를 보세요.
print-page = { $number }쪽
print-no-stream = “{ $stream }”이라는 배출 구분이 없습니다. 목록에서 고르세요.
print-no-zone = “{ $zone }”이라는 지역이 없습니다. 목록에서 고르세요.
print-no-language = 프로그램의 언어를 하나에서 넷까지 고르세요.
print-shortened = { $item }: 이 줄만으로 맞는 경우는 { $percent }입니다. 나머지는 자리가 없어 뺐습니다.
print-left-out = 자리가 없어 뺀 것: { $items }.
print-hazards-in-brief = 위험물 받는 곳을 적을 자리가 없었습니다. 인쇄물의 QR 코드와 전화번호로 알 수 있습니다.
print-refused-in-brief = 넣으면 안 되는 것을 어디로 보내는지 적을 자리가 없었습니다. 인쇄물의 QR 코드와 전화번호로 알 수 있습니다.
preflight-title = 인쇄 전 확인

## Preflight: what was checked and is right. Sizes are in mm, type in points

preflight-bleed-and-safe-area = 사방 도련 { $bleed } mm, 가장자리 { $safe } mm 안에는 아무것도 없습니다.
preflight-boxes = 완성 크기 { $finished } mm, 도련 포함 { $bleed } mm, 표시 포함 쪽 { $page } mm.
preflight-contrast = 글이 바탕과 뚜렷이 구분됩니다: 대비 { $ratio }:1 이상, 검정 농도 차 { $difference }% 이상.
preflight-fonts-embedded = 모든 글꼴이 쓰인 글자 모양 { $glyphs }개만 남겨 파일에 들어 있습니다: { $fonts }.
preflight-pictures-have-words = 보지 못하는 사람을 위한 글이 있는 그림: { $count }.
preflight-hazards-shown = 표시한 위험물: { $count }.
preflight-ink-coverage = 한 곳의 최대 잉크 { $coverage }%, 한도 { $limit }%.
preflight-postal-zones = 주소 면의 비워 둘 자리가 비어 있습니다.
preflight-qr-code = QR 코드: 버전 { $version }, 수준 { $level }, 칸 { $module } mm, 여백 { $quiet }칸.
preflight-type-sizes = 글자 { $body } pt, 최소 { $smallest } pt; { $distance } mm 거리에서는 { $floor } pt 이상이어야 합니다.
preflight-translation-outdated = “{ $text }”({ $lang }): 번역한 뒤 원문이 바뀌었습니다. 인쇄 전에 다시 번역하세요.
preflight-line-often-wrong = “{ $text }”만으로 맞는 경우는 { $percent }%뿐입니다. 더 자세히 쓰거나 이 줄을 빼세요.
preflight-lines-contradict = “{ $text }”와(과) “{ $other }”({ $lang })이(가) 서로 어긋납니다. 앞줄을 읽은 사람은 둘 다 그렇다고 여깁니다. 하나를 다르게 쓰세요.
preflight-picture-without-words = 보지 못하는 사람에게 여기 무엇이 있는지 알리는 글이 없습니다({ $what }). 써 넣으세요.

## Preflight: somebody should look before it goes to the print shop

preflight-translation-unreviewed = “{ $lang }” 글을 아무도 확인하지 않았습니다. 인쇄 전에 읽어 보게 하세요.
preflight-postal-field-missing = { $field }: 비었습니다. 채우거나 인쇄소에 맡기세요.
preflight-qr-dense = QR 코드가 촘촘합니다(버전 { $version }, { $characters }자). 주소가 짧을수록 잘 찍힙니다.

## Preflight: errors. No file is made until they are put right. $place and $what say where

preflight-address-invalid = QR 코드 주소를 쓸 수 없습니다: “{ $address }”. https:// 로 시작해 전부 적으세요
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: “{ $text }”에 글 방향을 바꾸는 문자가 있습니다({ $codepoint }, { $position }번째). 지우고 다시 쓰세요.
        [control] { $place }: “{ $text }”에 제어 문자가 있습니다({ $codepoint }, { $position }번째). 지우고 다시 쓰세요.
       *[invisible] { $place }: “{ $text }”에 보이지 않는 문자가 있습니다({ $codepoint }, { $position }번째). 지우고 다시 쓰세요.
    }
preflight-boxes-wrong = 쪽의 틀이 차례로 들어맞지 않습니다: 완성 { $finished } mm, 도련 포함 { $bleed } mm, 쪽 { $page } mm. 다른 인쇄물을 고르세요.
preflight-contrast-low = “{ $text }”이(가) 바탕과 잘 구분되지 않습니다: 대비 { $ratio }:1, { $least }:1 이상이어야 합니다. 검정 농도 차 { $difference }%, { $apart }% 이상이어야 합니다. 다른 잉크 색을 고르세요.
preflight-ink-limit-invalid = “{ $limit }” 잉크 한도가 아닙니다. 인쇄소가 정한 네 판의 합을 100에서 400%까지 쓰세요.
preflight-qr-not-quiet = QR 코드 둘레에 빈 종이 { $quiet }칸이 없습니다. 거기 있는 것을 옮기세요.
preflight-date-invalid = “{ $date }” 날짜가 아닙니다. 연, 월, 일로 쓰세요: 2027-01-31
preflight-distance-invalid = “{ $distance }” mm 단위의 읽는 거리가 아닙니다. 읽는 사람이 얼마나 떨어져 있는지 쓰세요.
preflight-font-not-embeddable = 글꼴 “{ $family }”은(는) 파일에 넣을 수 없습니다. 다른 글꼴을 고르세요.
preflight-font-unreadable = 글꼴 파일 “{ $family }”을(를) 읽을 수 없습니다. 다시 받으세요.
preflight-hazard-accepted = { $place }: “{ $text }”은(는) 위험물인데 받는 것에 있습니다. 위험물은 절대 통에 넣지 않습니다. 규칙을 고치세요.
preflight-hazard-missing = “{ $lang }” 인쇄물에 위험물 “{ $text }”이(가) 빠졌습니다. 자리를 줄이려고 위험물을 빼지 않습니다.
preflight-language-count = 인쇄물은 언어 하나에서 넷까지이며 { $count }개는 안 됩니다.
preflight-language-invalid = “{ $lang }” 언어 태그가 아닙니다. es 나 es-US 처럼 쓰세요.
preflight-language-twice = 언어 “{ $lang }”이(가) 두 번 있습니다. 하나를 빼세요.
preflight-languages-differ =
    { $what ->
        [sections] “{ $lang }”이(가) “{ $first }”와(과) 다르게 말합니다: 부분이 { $ours }개가 아니라 { $theirs }개입니다. 빠진 것을 번역하세요.
        [verdict] “{ $lang }”이(가) “{ $first }”와(과) 다르게 말합니다: { $section }번째 부분의 결론이 다릅니다. 고치세요.
        [lines] “{ $lang }”이(가) “{ $first }”와(과) 다르게 말합니다: { $section }번째 부분이 { $ours }줄이 아니라 { $theirs }줄입니다. 빠진 것을 번역하세요.
       *[picture] “{ $lang }”이(가) “{ $first }”와(과) 다르게 말합니다: { $section }번째 부분 { $line }번째 줄의 그림이나 위험 표시가 다릅니다. 고치세요.
    }
preflight-missing-glyph = { $place }: “{ $text }”에 쓰인 { $characters } 문자가 있는 글꼴이 없습니다. 빼고 쓰거나 그 문자가 있는 글꼴을 더하세요.
preflight-nothing-to-say = 인쇄할 것이 없습니다. 이 배출 구분에 관한 규칙이 없습니다. 먼저 규칙을 쓰세요.
preflight-outside-safe-area = 가장자리 { $safe } mm 안에 있어 잘릴 수 있습니다: { $what }
preflight-pictogram-unknown = { $place }: “{ $pictogram }” 그림이 없습니다. 다른 것을 고르세요.
preflight-picture-too-small = 그림 폭이 { $side } mm뿐입니다. 줄이나 언어를 줄이세요.
preflight-postal-field-full = { $field }: “{ $text }”({ $line }번째 줄)이(가) 안 들어갑니다. 줄이세요.
preflight-postal-zone = { $zone }에 있음: { $what }. 옮기거나 줄이세요.
preflight-profile-unusable =
    { $why ->
        [not-icc] 이 파일은 색 프로필이 아닙니다. 인쇄소가 정한 CMYK 출력 프로필(.icc)을 쓰세요.
        [cut-short] 색 프로필이 중간에 끊겼습니다. 인쇄소에 다시 보내 달라고 하세요.
        [no-tables] 색 프로필 “{ $name }”에 색 표가 없습니다. 인쇄소가 정한 CMYK 출력 프로필을 쓰세요.
       *[other-kind] 색 프로필 “{ $name }”은(는) CMYK 출력 프로필이 아닙니다. 용도는 { $class }, 색 공간은 { $space }입니다. 인쇄소가 정한 것을 쓰세요.
    }
preflight-qr-too-fine = QR 코드가 너무 작아 찍히지 않습니다. 칸이 { $module } mm입니다. 주소를 줄이세요.
preflight-qr-too-long = 주소가 { $characters }자로 QR 코드에 넘칩니다. 줄이세요.
preflight-rule-too-thin = 선 굵기가 { $width } pt인데, 인쇄되는 가장 가는 선은 { $least } pt입니다.
preflight-step-invalid = 뺄 수 있는 것의 { $number }번째 단계를 쓸 수 없습니다. 자세한 내용(영어): { $why }.
preflight-text-empty = { $place }에 글이 없습니다. 써 넣으세요.
preflight-text-overlaps = “{ $text }”와(과) “{ $other }”이(가) 겹칩니다. 하나를 줄이세요.
preflight-text-too-long = { $place }: “{ $text }”이(가) 읽을 수 있는 가장 작은 글자 { $floor } pt로도 안 들어갑니다. { $cut }자쯤 줄이세요.
preflight-too-many-lines = 인쇄물 “{ $sheet }”은(는) { $languages }개 언어로 { $lines }줄이며 { $floor } pt로 { $missing } mm 모자랍니다. 줄이나 언어를 줄이세요.
preflight-too-much-ink = 한 곳의 잉크가 { $coverage }%이고 한도는 { $limit }%입니다. 더 옅은 색을 고르세요.
preflight-type-too-small = “{ $text }”이(가) { $size } pt이며 { $least } pt 이상이어야 합니다. 글을 줄이세요.
preflight-word-too-wide = { $place }: “{ $text }”의 낱말 “{ $word }”이(가) { $floor } pt에서 칸보다 넓습니다. { $room }자쯤까지의 낱말을 쓰세요.
sheet-text-title = 제목({ $lang })
sheet-text-heading = { $section }번째 부분의 제목({ $lang })
sheet-text-line = { $section }번째 부분의 { $line }번째 줄({ $lang })
sheet-text-scan = QR 코드 옆 문장({ $lang })
sheet-text-foot = 아래쪽 { $line }번째 줄({ $lang })
sheet-text-issuer = 인쇄물을 내는 곳
sheet-text-short-address = 짧은 웹 주소
sheet-text-notice = 인쇄 안내문
sheet-text-edition = 판
sheet-text-job-name = 작업 이름
sheet-text-slug = 인쇄물 바깥의 줄
sheet-text-return-address = 보내는 주소 { $line }
sheet-text-indicia = 우편 요금 표시 { $line }
sheet-text-addressee = 받는 주소 { $line }
postal-zone-barcode-clear = 우체국 바코드용 흰 띠
postal-zone-read-area = 우체국 기계가 주소를 읽는 자리
drawn-code = QR 코드
drawn-picture = 그림
drawn-area = 잉크가 칠해진 곳
sheet-cart-lid = 통 뚜껑 라벨
sheet-round-sticker = 원형 스티커
sheet-enclosure-sign = 공용 통 안내판
sheet-text-stock = 용지
sheet-postcard-mailer = 우편엽서
profile-class-mntr = 화면
profile-class-scnr = 스캐너나 카메라
profile-class-other = 다른 용도
preflight-size-zero = 인쇄물이 { $width } × { $height } mm입니다. 두 변 모두 0보다 커야 합니다. 완성 크기를 다시 쓰세요.
preflight-size-fixed = 인쇄물이 { $width } × { $height } mm인데 이 종류는 다음 크기만 됩니다: { $names }.
preflight-size-out-of-range = 인쇄물이 { $width } × { $height } mm입니다. 각 변을 { $least }에서 { $most } mm까지 단위와 함께 쓰세요.
preflight-size-too-narrow = 인쇄물이 { $width } × { $height } mm입니다. 한 변은 다른 변의 { $most }배까지 됩니다.
preflight-size-not-round = 원형 라벨은 너비와 높이가 같아야 하며 { $width } × { $height } mm는 안 됩니다. 지름을 쓰세요.
preflight-postal-size = 우체국은 { $width } × { $height } mm인 엽서, 편지, 대형 우편물을 받지 않습니다. 편지는 길이 127~292 mm, 높이 89~156 mm이고 길이가 높이의 1.3~2.5배입니다. 대형 우편물은 최대 381 × 305 mm입니다.
preflight-corner-radius = 모서리 반지름이 { $radius } mm입니다. 0에서 { $most } mm까지 쓰세요.
preflight-stock-thickness = 용지 두께가 { $thickness } mm인데 그런 종이나 라벨 필름은 없습니다. 인쇄소가 보낸 것을 확인하세요.
preflight-one-message = 원형 라벨에는 한 가지만 쓰며 { $lines }가지는 안 됩니다. 하나를 고르세요.
preflight-press-size = 인쇄 전지가 { $width } × { $height } mm입니다. 각 변을 { $least }에서 { $most } mm까지 단위와 함께 쓰세요.
preflight-press-gutter = 간격이 { $gutter } mm입니다. 양쪽 도련에는 인쇄물 사이 { $least } mm가 필요합니다.
preflight-press-too-small = 도련과 표시까지 하면 { $width } × { $height } mm 인쇄 전지에 하나도 안 들어갑니다. 더 큰 것을 고르세요.
preflight-press-up = { $up }개를 요청했지만 인쇄 전지에는 { $most }개까지 들어갑니다. 1에서 { $most }까지 쓰세요.
preflight-on-a-fold = “{ $what }”이(가) 접는 선 { $distance } mm 안에 있습니다. 글을 줄이세요.
preflight-postal-thickness = 완성품 두께가 { $thickness } mm입니다. 우체국 기준은 { $least }~{ $most } mm입니다. 다른 용지를 고르세요.
preflight-ticket-too-long = 작업 지시서의 “{ $place }”이(가) 너무 깁니다. 거기에 쓴 글을 줄이세요.
preflight-imposed = { $width } × { $height } mm 인쇄 전지에 { $up }개: 가로 { $across }개, 세로 { $down }개.
preflight-fits-fewer = 다음 언어만 함께 넣으면 모두 들어갑니다: { $tags }. 이 언어들을 인쇄하고 나머지는 따로 인쇄하십시오.
preflight-fits-larger = { $size } 크기에는 모두 들어갑니다. 그 크기를 고르십시오.
preflight-folds-clear = 접는 선: { $count }. 그 { $distance } mm 안에는 아무것도 인쇄하지 않습니다.
preflight-postal-class =
    { $class ->
        [card] 엽서로 보냄: { $length } × { $height } mm.
        [folded] 접는 우편물로 보냄: 접어서 { $length } × { $height } mm.
        [flat] 대형 우편물로 보냄: { $length } × { $height } mm.
       *[letter] 편지로 보냄: { $length } × { $height } mm.
    }
preflight-postal-thickness-unknown = 용지 두께가 적혀 있지 않습니다. 우체국 기준은 완성품 { $least }~{ $most } mm입니다. 인쇄소에 물어보세요.
preflight-sign-letters = 제목의 대문자 높이가 { $height } mm로, { $distance } mm에서 읽을 수 있습니다.
preflight-sign-letters-small = 제목의 대문자 높이가 { $height } mm입니다. 누구나 읽을 수 있는 안내판은 { $distance } mm에서 { $least } mm가 필요합니다. 글을 줄이거나 더 큰 안내판을 쓰세요.
preflight-die-line = 칼선은 별도의 별색 “Dieline”이며 어느 인쇄판에도 없습니다.
