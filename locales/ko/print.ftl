### The print screen and what the check before printing (preflight) says.
### $place, $what, $field and $zone come from the printing part in English.

## The print screen

print-sheet = 인쇄물
sheet-lid = 통 뚜껑 라벨, 7 × 9인치
sheet-postcard = 우편엽서, 9 × 6인치
print-zone = 한 지역만
print-language = 언어 { $number }
print-make = 인쇄물 만들기
print-making = 만드는 중…
print-done = 인쇄물이 준비되었습니다.
print-refused = 파일을 만들지 않았습니다. 아래 오류를 고치고 다시 하세요.
print-unreachable = 인쇄 기능을 받지 못했습니다. 연결을 확인하고 다시 하세요.
print-download = 인쇄소용 PDF 받기
print-page = { $number }쪽
print-no-stream = “{ $stream }”이라는 배출 구분이 없습니다. 목록에서 고르세요.
print-no-zone = “{ $zone }”이라는 지역이 없습니다. 목록에서 고르세요.
print-no-language = 프로그램의 언어를 하나에서 셋까지 고르세요.
print-shortened = { $item }: 이 줄만으로 맞는 경우는 { $percent }입니다. 나머지는 자리가 없어 뺐습니다.
preflight-title = 인쇄 전 확인

## Preflight: what was checked and is right. Sizes are in mm, type in points

preflight-bleed-and-safe-area = 사방 도련 { $bleed } mm, 가장자리 { $safe } mm 안에는 아무것도 없습니다.
preflight-hazards-shown = 표시한 위험물: { $count }.
preflight-ink-coverage = 한 곳의 최대 잉크 { $coverage }%, 한도 { $limit }%.
preflight-postal-zones = 주소 면의 비워 둘 자리가 비어 있습니다.
preflight-qr-code = QR 코드: 버전 { $version }, 수준 { $level }, 칸 { $module } mm, 여백 { $quiet }칸.
preflight-type-sizes = 글자 { $body } pt, 최소 { $smallest } pt; { $distance } mm 거리에서는 { $floor } pt 이상이어야 합니다.

## Preflight: somebody should look before it goes to the print shop

preflight-translation-unreviewed = “{ $lang }” 글을 아무도 확인하지 않았습니다. 인쇄 전에 읽어 보게 하세요.
preflight-postal-field-missing = “{ $field }” 칸이 비었습니다. 채우거나 인쇄소에 맡기세요.
preflight-qr-dense = QR 코드가 촘촘합니다(버전 { $version }, { $characters }자). 주소가 짧을수록 잘 찍힙니다.

## Preflight: errors. No file is made until they are put right. $place and $what say where

preflight-address-invalid = QR 코드 주소를 쓸 수 없습니다: “{ $address }”. https:// 로 시작해 전부 적으세요
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: “{ $text }”에 글 방향을 바꾸는 문자가 있습니다({ $codepoint }, { $position }번째). 지우고 다시 쓰세요.
        [control] { $place }: “{ $text }”에 제어 문자가 있습니다({ $codepoint }, { $position }번째). 지우고 다시 쓰세요.
       *[invisible] { $place }: “{ $text }”에 보이지 않는 문자가 있습니다({ $codepoint }, { $position }번째). 지우고 다시 쓰세요.
    }
preflight-date-invalid = “{ $date }” 날짜가 아닙니다. 연, 월, 일로 쓰세요: 2027-01-31
preflight-distance-invalid = “{ $distance }” mm 단위의 읽는 거리가 아닙니다. 읽는 사람이 얼마나 떨어져 있는지 쓰세요.
preflight-font-not-embeddable = 글꼴 “{ $family }”은(는) 파일에 넣을 수 없습니다. 다른 글꼴을 고르세요.
preflight-font-unreadable = 글꼴 파일 “{ $family }”을(를) 읽을 수 없습니다. 다시 받으세요.
preflight-hazard-accepted = { $place }: “{ $text }”은(는) 위험물인데 받는 것에 있습니다. 위험물은 절대 통에 넣지 않습니다. 규칙을 고치세요.
preflight-hazard-missing = “{ $lang }” 인쇄물에 위험물 “{ $text }”이(가) 빠졌습니다. 자리를 줄이려고 위험물을 빼지 않습니다.
preflight-language-count = 인쇄물은 언어 하나에서 셋까지이며 { $count }개는 안 됩니다.
preflight-language-invalid = “{ $lang }” 언어 태그가 아닙니다. es 나 es-US 처럼 쓰세요.
preflight-language-twice = 언어 “{ $lang }”이(가) 두 번 있습니다. 하나를 빼세요.
preflight-languages-differ = “{ $lang }”이(가) “{ $first }”와(과) 다르게 말합니다: { $what }.
preflight-missing-glyph = { $place }: “{ $text }”에 쓰인 { $characters } 문자가 있는 글꼴이 없습니다. 빼고 쓰거나 그 문자가 있는 글꼴을 더하세요.
preflight-nothing-to-say = 인쇄할 것이 없습니다. 이 배출 구분에 관한 규칙이 없습니다. 먼저 규칙을 쓰세요.
preflight-outside-safe-area = “{ $what }”이(가) 가장자리 { $safe } mm 안에 있어 잘릴 수 있습니다.
preflight-pictogram-unknown = { $place }: “{ $pictogram }” 그림이 없습니다. 다른 것을 고르세요.
preflight-picture-too-small = 그림 폭이 { $side } mm뿐입니다. 줄이나 언어를 줄이세요.
preflight-postal-field-full = “{ $field }” 칸의 { $line }번째 줄이 안 들어갑니다: “{ $text }”. 줄이세요.
preflight-postal-zone = “{ $what }”이(가) { $zone }에 있습니다. 옮기거나 줄이세요.
preflight-profile-unusable = 색 프로필을 쓸 수 없습니다: { $why }. 인쇄소가 정한 CMYK 출력 프로필을 쓰세요.
preflight-qr-too-fine = QR 코드가 너무 작아 찍히지 않습니다. 칸이 { $module } mm입니다. 주소를 줄이세요.
preflight-qr-too-long = 주소가 { $characters }자로 QR 코드에 넘칩니다. 줄이세요.
preflight-rule-too-thin = 선 “{ $what }”이(가) 너무 가늘어 인쇄되지 않습니다.
preflight-text-empty = { $place }에 글이 없습니다. 써 넣으세요.
preflight-text-overlaps = “{ $text }”와(과) “{ $other }”이(가) 겹칩니다. 하나를 줄이세요.
preflight-text-too-long = { $place }({ $lang }): “{ $text }”이(가) 읽을 수 있는 가장 작은 글자 { $floor } pt로도 안 들어갑니다. { $cut }자쯤 줄이세요.
preflight-too-many-lines = 인쇄물 “{ $sheet }”은(는) { $languages }개 언어로 { $lines }줄이며 { $floor } pt로 { $missing } mm 모자랍니다. 줄이나 언어를 줄이세요.
preflight-too-much-ink = 한 곳의 잉크가 { $coverage }%이고 한도는 { $limit }%입니다. 더 옅은 색을 고르세요.
preflight-type-too-small = “{ $text }”이(가) { $size } pt이며 { $least } pt 이상이어야 합니다. 글을 줄이세요.
preflight-word-too-wide = { $place }({ $lang }): “{ $text }”의 낱말 “{ $word }”이(가) { $floor } pt에서 칸보다 넓습니다. { $room }자쯤 되는 낱말을 쓰세요.
