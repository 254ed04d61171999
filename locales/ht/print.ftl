### The print screen and what the check before printing (preflight) says.
### $place, $what, $field and $zone come from the printing part in English.

## The print screen

print-sheet = Fèy
sheet-lid = Etikèt kouvèti bak, 7 × 9 pous
sheet-postcard = Kat postal, 9 × 6 pous
print-zone = Pou yon sèl zòn
print-language = Lang { $number }
print-make = Fè fèy la
print-making = N ap fè fèy la…
print-done = Fèy la pare.
print-refused = Pa gen fichye ki fèt. Korije erè anba yo epi eseye ankò.
print-unreachable = Pati enpresyon an pa t ka chaje. Verifye koneksyon an epi eseye ankò.
print-download = Telechaje PDF pou enprimè a
print-page = Paj { $number }
print-no-stream = Pa gen kouran “{ $stream }”. Chwazi youn nan lis la.
print-no-zone = Pa gen zòn “{ $zone }”. Chwazi youn nan lis la.
print-no-language = Chwazi youn a twa lang nan pwogram nan.
print-shortened = { $item }: liy li sèl bon nan { $percent } ka yo; yo retire rès la pou li antre.
preflight-title = Verifye pou enprimè a

## Preflight: what was checked and is right. Sizes are in mm, type in points

preflight-bleed-and-safe-area = Debòdman { $bleed } mm tout alantou, anyen pa nan { $safe } mm bò a.
preflight-hazards-shown = Danje ki montre: { $count }.
preflight-ink-coverage = Plis lank yon sèl kote: { $coverage }%, limit { $limit }%.
preflight-postal-zones = Zòn ki pou rete vid bò adrès la vid.
preflight-qr-code = Kòd QR: vèsyon { $version }, nivo { $level }, modil { $module } mm, maj { $quiet } modil.
preflight-type-sizes = Lèt yo { $body } pt, pi piti a { $smallest } pt; nan distans { $distance } mm fòk gen omwen { $floor } pt.

## Preflight: somebody should look before it goes to the print shop

preflight-translation-unreviewed = Pèsonn pa verifye tèks yo an “{ $lang }”. Fè yon moun li yo anvan ou enprime.
preflight-postal-field-missing = Chan “{ $field }” vid. Ranpli li oswa kite enprimè a ajoute li.
preflight-qr-dense = Kòd QR a twò fen (vèsyon { $version }, { $characters } karaktè). Yon adrès pi kout pi fasil pou eskane.

## Preflight: errors. No file is made until they are put right. $place and $what say where

preflight-address-invalid = Adrès pou kòd QR a pa ka sèvi: “{ $address }”. Ekri li nèt, kòmanse ak https://
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: “{ $text }” gen yon karaktè ki chanje sans ekriti a ({ $codepoint }, plas { $position }). Efase li epi retape mo yo.
        [control] { $place }: “{ $text }” gen yon karaktè kontwòl ({ $codepoint }, plas { $position }). Efase li epi retape mo yo.
       *[invisible] { $place }: “{ $text }” gen yon karaktè envizib ({ $codepoint }, plas { $position }). Efase li epi retape mo yo.
    }
preflight-date-invalid = “{ $date }” pa yon dat. Ekri ane, mwa ak jou: 2027-01-31
preflight-distance-invalid = “{ $distance }” pa yon distans lekti an mm. Ekri a ki distans lektè a kanpe.
preflight-font-not-embeddable = Yo pa gen dwa mete polis “{ $family }” nan fichye. Chwazi yon lòt polis.
preflight-font-unreadable = Yo pa ka li fichye polis “{ $family }”. Telechaje li ankò.
preflight-hazard-accepted = { $place }: “{ $text }” se yon danje nan mitan sa yo aksepte. Danje pa janm ale nan bak ni poubèl: korije règ la.
preflight-hazard-missing = Danje “{ $text }” manke sou fèy la an “{ $lang }”. Yo pa janm retire danje pou fè plas.
preflight-language-count = Yon fèy pran youn a twa lang, pa { $count }.
preflight-language-invalid = “{ $lang }” pa yon kòd lang. Ekri youn tankou es oswa es-US.
preflight-language-twice = Lang “{ $lang }” la de fwa. Retire youn.
preflight-languages-differ = “{ $lang }” pa di menm bagay ak “{ $first }”: { $what }.
preflight-missing-glyph = { $place }: okenn polis isit pa gen { $characters }, ki nan “{ $text }”. Ekri san li, oswa ajoute yon polis ki genyen li.
preflight-nothing-to-say = Pa gen anyen pou enprime: pwogram nan pa di anyen sou kouran sa a. Ekri règ pou li anvan.
preflight-outside-safe-area = “{ $what }” nan { $safe } mm bò a epi li ka koupe.
preflight-pictogram-unknown = { $place }: pa gen desen “{ $pictogram }”. Chwazi yon lòt.
preflight-picture-too-small = Yon desen lajè l sèlman { $side } mm. Enprime mwens liy oswa mwens lang.
preflight-postal-field-full = Liy { $line } nan chan “{ $field }” pa antre: “{ $text }”. Fè li pi kout.
preflight-postal-zone = “{ $what }” nan zòn rezève a: { $zone }. Deplase li oswa fè li pi kout.
preflight-profile-unusable = Pwofil koulè a pa ka sèvi: { $why }. Pran pwofil CMYK enprimè a nonmen an.
preflight-qr-too-fine = Kòd QR a twò fen pou eskane: modil li yo { $module } mm. Fè adrès la pi kout.
preflight-qr-too-long = Adrès la gen { $characters } karaktè, plis pase sa yon kòd QR kenbe. Fè li pi kout.
preflight-rule-too-thin = Trè “{ $what }” twò mens pou enprime.
preflight-text-empty = { $place } pa gen mo. Ekri kèk.
preflight-text-overlaps = “{ $text }” ak “{ $other }” youn sou lòt. Fè youn pi kout.
preflight-text-too-long = { $place } ({ $lang }): “{ $text }” pa antre, menm nan { $floor } pt, pi piti lèt moun ka li. Retire anviwon { $cut } karaktè.
preflight-too-many-lines = Fèy “{ $sheet }” gen { $lines } liy nan { $languages } lang epi li manke { $missing } mm pou yo nan { $floor } pt. Retire liy, oswa enprime mwens lang.
preflight-too-much-ink = Gen { $coverage }% lank yon sèl kote; limit la se { $limit }%. Chwazi yon koulè pi klè.
preflight-type-too-small = “{ $text }” ekri an { $size } pt; fòk gen omwen { $least } pt. Fè tèks yo pi kout.
preflight-word-too-wide = { $place } ({ $lang }): mo “{ $word }” nan “{ $text }” pi laj pase kolòn li an { $floor } pt. Sèvi ak yon mo anviwon { $room } karaktè maksimòm.
