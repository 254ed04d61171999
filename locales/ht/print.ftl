### The print screen and what the check before printing (preflight) says.
### $place, $what, $field and $zone come from the printing part in English.

## The print screen

print-sheet = Fèy
sheet-lid = Etikèt kouvèti bak
sheet-sticker = Kolan won, yon sèl mesaj
sheet-sign = Pano pou bak tout moun
sheet-postcard = Kat postal
sheet-self-mailer = Fèy pliye pou lapòs
sheet-handout = Fèy pou bay moun
print-size = Fòma final
print-size-usual = Fòma nòmal la
print-size-typed = Tape anba a
print-typed-size = Fòma ak inite li, tankou 8 x 12 in; pou yon etikèt won 115 mm
print-size-unread = “{ $text }” pa yon fòma. Ekri lajè, wotè ak inite: 8 x 12 in
print-corner = Reyon kwen yo, an mm
print-fold = Pli
print-fold-half = Yon fwa, nan mitan
print-fold-thirds = De fwa, tankou yon lèt
print-die-line = Trase liy dekoup la nan yon koulè espesyal
print-printers-mark = Kite plas pou mak enprimè a
print-more = Plis chwa pou enprimè a
print-stock = Papye
print-thickness = Epesè papye a, an mm
print-distance = Distans pou li, an mm
print-qr-level = Kòd QR: domaj li ka sipòte
print-qr-most = Maksimòm ki pa fè l vin pi gwo
print-qr-medium = 15% (M)
print-qr-quartile = 25% (Q)
print-qr-high = 30% (H)
print-words = Kantite mo maksimòm nan yon liy
print-words-any = Kantite ki nesesè
print-item = Yon sèl bagay
print-press = Plizyè sou yon fèy près
print-press-none = Youn pa paj
print-work-and-turn = Devan ak dèyè sou menm plak
print-no-item = Pa gen bagay “{ $item }”. Chwazi youn nan lis la.
print-nothing-against = Anyen pa di yo refize “{ $item }”. Chwazi yon bagay yo refize, oswa yon danje.
print-ticket = Telechaje fich travay la
print-number-unread = “{ $text }” pa yon kantite milimèt.
ticket-title = Fich travay
ticket-sheet = Fèy
ticket-files = Fichye
ticket-file =
    { $pages ->
       *[other] { $file }: { $pages } paj
    }
ticket-quantity = Kantite
ticket-copies =
    { $copies ->
       *[other] { $languages }: { $copies } kopi
    }
ticket-copies-unsaid = { $languages }: kantite kopi pou antann sou li
ticket-trim = Fòma final
ticket-size = { $width } × { $height } mm ({ $across } × { $down } in)
ticket-bleed = Debòdman, sou chak bò
ticket-mm = { $length } mm
ticket-corners = Kwen
ticket-round = Koupe an won
ticket-radius = Awondi, reyon { $radius } mm
ticket-square = Kare
ticket-die = Liy dekoup nan koulè espesyal “Dieline”, anwo lòt koulè yo (overprint): pa enprime li
ticket-folds = Pli
ticket-fold = Nan lajè, { $at } mm anba bò anlè fèy la lè li plat
ticket-fold-order = Pano adrès la rete deyò. Bò anba li se yon pli; bagay la louvri nan bò anlè, epi se la yo fèmen l ak ti kolan.
ticket-colours = Koulè
ticket-colours-one = 4/0: siyan, majanta, jòn, nwa sou yon bò
ticket-colours-two = 4/4: siyan, majanta, jòn, nwa sou toude bò
ticket-colours-note = PDF/X-4; tèks nwa anwo lòt koulè yo (overprint); lank total { $limit }% maksimòm
ticket-stock = Papye
ticket-stock-unsaid = Pou antann sou li
ticket-thickness = Epesè { $thickness } mm
ticket-thickness-unsaid = Epesè pou konfime
ticket-press = Fèy près
ticket-work-and-turn = Devan ak dèyè ansanm: dèyè a sou menm plak la
ticket-mark = Mak enprimè a
ticket-mark-room = Gen yon plas 19 × 6 mm ki rete vid nan ti lèt yo
ticket-edition = Edisyon
ticket-date = Dat travay la
ticket-contact = Kesyon pou
print-zone = Pou yon sèl zòn
print-language = Lang { $number }
print-make = Fè fèy la
print-making = N ap fè fèy la…
print-done = Fèy la pare.
print-refused = Pa gen fichye ki fèt. Korije erè anba yo epi eseye ankò.
print-unreachable = Pati enpresyon an pa t ka chaje. Verifye koneksyon an epi eseye ankò.
print-download = Telechaje PDF pou enprimè a
print-download-web = Telechaje PDF pou wèb la
print-web-hint = PDF pou enprimè a ale kay enprimè a. PDF pou wèb la se pou li sou ekran ak awotvwa.
print-profile = Pwofil koulè enprimè a (.icc)
print-profile-hint = San li, se pwofil papye kouche ki vini ladan l lan ki sèvi.
print-ink-limit = Lank maksimòm, an %
print-mark = Make { $number } sou fèy la
print-contradictions = Liy ki youn kont lòt: { $count }. Gade anba a anvan ou enprime.
print-page = Paj { $number }
print-no-stream = Pa gen kouran “{ $stream }”. Chwazi youn nan lis la.
print-no-zone = Pa gen zòn “{ $zone }”. Chwazi youn nan lis la.
print-no-language = Chwazi youn a kat lang nan pwogram nan.
print-shortened = { $item }: liy li sèl bon nan { $percent } ka yo; yo retire rès la pou li antre.
print-left-out = Retire paske pa gen plas: { $items }.
print-hazards-in-brief = Pa t gen plas pou kote ki pran danje yo; kòd ak telefòn ki sou fèy la mennen la.
print-refused-in-brief = Pa t gen plas pou di kote sa ki pa ale isit yo dwe ale; kòd ak telefòn ki sou fèy la di sa.
preflight-title = Verifye pou enprimè a

## Preflight: what was checked and is right. Sizes are in mm, type in points

preflight-bleed-and-safe-area = Debòdman { $bleed } mm tout alantou, anyen pa nan { $safe } mm bò a.
preflight-boxes = Fòma final { $finished } mm, ak debòdman { $bleed } mm, paj ak mak { $page } mm.
preflight-contrast = Mo yo parèt byen sou fon an: kontras omwen { $ratio }:1, omwen { $difference }% nwa diferans.
preflight-fonts-embedded = Tout polis yo nan fichye a, ak sèlman { $glyphs } fòm karaktè ki sèvi yo: { $fonts }.
preflight-pictures-have-words = Desen ki gen mo pou moun ki pa ka wè yo: { $count }.
preflight-hazards-shown = Danje ki montre: { $count }.
preflight-ink-coverage = Plis lank yon sèl kote: { $coverage }%, limit { $limit }%.
preflight-postal-zones = Zòn ki pou rete vid bò adrès la vid.
preflight-qr-code = Kòd QR: vèsyon { $version }, nivo { $level }, modil { $module } mm, maj { $quiet } modil.
preflight-type-sizes = Lèt yo { $body } pt, pi piti a { $smallest } pt; nan distans { $distance } mm fòk gen omwen { $floor } pt.
preflight-translation-outdated = “{ $text }” ({ $lang }): tèks orijinal la chanje depi yo te tradui li. Tradui li ankò anvan ou enprime.
preflight-line-often-wrong = “{ $text }” sèl bon nan sèlman { $percent }% ka yo. Di plis, oswa retire liy lan.
preflight-lines-contradict = “{ $text }” ak “{ $other }” ({ $lang }) youn kont lòt: moun ki li premye a kwè li vre pou toude. Chanje mo youn nan yo.
preflight-picture-without-words = Pa gen mo pou di sa ki la a bay moun ki pa ka wè l ({ $what }). Ekri kèk.

## Preflight: somebody should look before it goes to the print shop

preflight-translation-unreviewed = Pèsonn pa verifye tèks yo an “{ $lang }”. Fè yon moun li yo anvan ou enprime.
preflight-postal-field-missing = { $field }: vid. Ranpli li, oswa kite enprimè a ajoute li.
preflight-qr-dense = Kòd QR a twò fen (vèsyon { $version }, { $characters } karaktè). Yon adrès pi kout pi fasil pou eskane.

## Preflight: errors. No file is made until they are put right. $place and $what say where

preflight-address-invalid = Adrès pou kòd QR a pa ka sèvi: “{ $address }”. Ekri li nèt, kòmanse ak https://
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: “{ $text }” gen yon karaktè ki chanje sans ekriti a ({ $codepoint }, plas { $position }). Efase li epi retape mo yo.
        [control] { $place }: “{ $text }” gen yon karaktè kontwòl ({ $codepoint }, plas { $position }). Efase li epi retape mo yo.
       *[invisible] { $place }: “{ $text }” gen yon karaktè envizib ({ $codepoint }, plas { $position }). Efase li epi retape mo yo.
    }
preflight-boxes-wrong = Mezi yo pa antre youn nan lòt: fòma final { $finished } mm, ak debòdman { $bleed } mm, paj { $page } mm. Chwazi yon lòt fèy.
preflight-contrast-low = “{ $text }” prèske pa parèt sou fon an: kontras { $ratio }:1, fòk gen omwen { $least }:1; { $difference }% nwa diferans, fòk gen omwen { $apart }%. Chwazi lòt lank.
preflight-ink-limit-invalid = “{ $limit }” pa yon limit lank. Ekri total kat plak enprimè a nonmen an, ant 100 ak 400%.
preflight-qr-not-quiet = Kòd QR a pa gen { $quiet } modil papye vid alantou li. Deplase sa ki la a.
preflight-date-invalid = “{ $date }” pa yon dat. Ekri ane, mwa ak jou: 2027-01-31
preflight-distance-invalid = “{ $distance }” pa yon distans lekti an mm. Ekri a ki distans lektè a kanpe.
preflight-font-not-embeddable = Yo pa gen dwa mete polis “{ $family }” nan fichye. Chwazi yon lòt polis.
preflight-font-unreadable = Yo pa ka li fichye polis “{ $family }”. Telechaje li ankò.
preflight-hazard-accepted = { $place }: “{ $text }” se yon danje nan mitan sa yo aksepte. Danje pa janm ale nan bak ni poubèl: korije règ la.
preflight-hazard-missing = Danje “{ $text }” manke sou fèy la an “{ $lang }”. Yo pa janm retire danje pou fè plas.
preflight-language-count = Yon fèy pran youn a kat lang, pa { $count }.
preflight-language-invalid = “{ $lang }” pa yon kòd lang. Ekri youn tankou es oswa es-US.
preflight-language-twice = Lang “{ $lang }” la de fwa. Retire youn.
preflight-languages-differ =
    { $what ->
        [sections] “{ $lang }” pa di menm bagay ak “{ $first }”: li gen { $theirs } seksyon, pa { $ours }. Tradui sa ki manke.
        [verdict] “{ $lang }” pa di menm bagay ak “{ $first }”: seksyon { $section } gen yon lòt vèdik. Korije li.
        [lines] “{ $lang }” pa di menm bagay ak “{ $first }”: seksyon { $section } gen { $theirs } liy, pa { $ours }. Tradui sa ki manke.
       *[picture] “{ $lang }” pa di menm bagay ak “{ $first }”: liy { $line } nan seksyon { $section } gen yon lòt desen oswa yon lòt mak danje. Korije li.
    }
preflight-missing-glyph = { $place }: okenn polis isit pa gen { $characters }, ki nan “{ $text }”. Ekri san li, oswa ajoute yon polis ki genyen li.
preflight-nothing-to-say = Pa gen anyen pou enprime: pwogram nan pa di anyen sou kouran sa a. Ekri règ pou li anvan.
preflight-outside-safe-area = Nan { $safe } mm bò a, kote li ka koupe: { $what }
preflight-pictogram-unknown = { $place }: pa gen desen “{ $pictogram }”. Chwazi yon lòt.
preflight-picture-too-small = Yon desen lajè l sèlman { $side } mm. Enprime mwens liy oswa mwens lang.
preflight-postal-field-full = { $field }: “{ $text }” (liy { $line }) pa antre. Fè li pi kout.
preflight-postal-zone = Nan yon zòn rezève ({ $zone }): { $what }. Deplase li oswa fè li pi kout.
preflight-profile-unusable =
    { $why ->
        [not-icc] Fichye a pa yon pwofil koulè. Pran pwofil CMYK (.icc) enprimè a nonmen an.
        [cut-short] Pwofil koulè a pa konplè. Mande enprimè a voye li ankò.
        [no-tables] Pwofil koulè “{ $name }” pa gen tab koulè. Pran pwofil CMYK enprimè a nonmen an.
       *[other-kind] Pwofil koulè “{ $name }” pa yon pwofil CMYK pou enprime: li pou { $class }, an { $space }. Pran sa enprimè a nonmen an.
    }
preflight-qr-too-fine = Kòd QR a twò fen pou eskane: modil li yo { $module } mm. Fè adrès la pi kout.
preflight-qr-too-long = Adrès la gen { $characters } karaktè, plis pase sa yon kòd QR kenbe. Fè li pi kout.
preflight-rule-too-thin = Yon trè gen { $width } pt sèlman; sa ki pi mens ki ka enprime gen { $least } pt.
preflight-step-invalid = Etap { $number } nan sa ki ka retire yo pa ka fèt. Detay yo, an angle: { $why }.
preflight-text-empty = { $place } pa gen mo. Ekri kèk.
preflight-text-overlaps = “{ $text }” ak “{ $other }” youn sou lòt. Fè youn pi kout.
preflight-text-too-long = { $place }: “{ $text }” pa antre, menm nan { $floor } pt, pi piti lèt moun ka li. Retire anviwon { $cut } karaktè.
preflight-too-many-lines = Fèy “{ $sheet }” gen { $lines } liy nan { $languages } lang epi li manke { $missing } mm pou yo nan { $floor } pt. Retire liy, oswa enprime mwens lang.
preflight-too-much-ink = Gen { $coverage }% lank yon sèl kote; limit la se { $limit }%. Chwazi yon koulè pi klè.
preflight-type-too-small = “{ $text }” ekri an { $size } pt; fòk gen omwen { $least } pt. Fè tèks yo pi kout.
preflight-word-too-wide = { $place }: mo “{ $word }” nan “{ $text }” pi laj pase kolòn li an { $floor } pt. Sèvi ak yon mo anviwon { $room } karaktè maksimòm.
sheet-text-title = Tit ({ $lang })
sheet-text-heading = Tit seksyon { $section } ({ $lang })
sheet-text-line = Liy { $line } nan seksyon { $section } ({ $lang })
sheet-text-scan = Fraz bò kòd QR a ({ $lang })
sheet-text-foot = Liy { $line } anba paj la ({ $lang })
sheet-text-issuer = Kiyès ki pibliye fèy la
sheet-text-short-address = Adrès wèb kout
sheet-text-notice = Nòt enpresyon
sheet-text-edition = Edisyon
sheet-text-job-name = Non travay la
sheet-text-slug = Liy andeyò fèy la
sheet-text-return-address = Adrès retou { $line }
sheet-text-indicia = Mak tenb lapòs { $line }
sheet-text-addressee = Adrès moun k ap resevwa { $line }
postal-zone-barcode-clear = bann blan pou kòd ba lapòs
postal-zone-read-area = zòn kote machin lapòs li adrès la
drawn-code = kòd QR a
drawn-picture = yon desen
drawn-area = yon pati ki gen lank
sheet-cart-lid = etikèt kouvèti bak
sheet-round-sticker = kolan won
sheet-enclosure-sign = pano pou bak tout moun
sheet-text-stock = Materyèl
sheet-postcard-mailer = kat postal
profile-class-mntr = yon ekran
profile-class-scnr = yon eskanè oswa yon kamera
profile-class-other = yon lòt itilizasyon
preflight-size-zero = Fèy la se { $width } × { $height } mm. Toude bò yo dwe pi long pase zewo: tape fòma final la ankò.
preflight-size-fixed = Fèy la se { $width } × { $height } mm, men fèy sa a fèt sèlman nan fòma sa yo: { $names }.
preflight-size-out-of-range = Fèy la se { $width } × { $height } mm. Tape bò ki ant { $least } ak { $most } mm, ak inite yo.
preflight-size-too-narrow = Fèy la se { $width } × { $height } mm. Yon bò ka { $most } fwa lòt la, pa plis.
preflight-size-not-round = Yon etikèt won gen menm lajè ak wotè, pa { $width } × { $height } mm. Tape dyamèt li.
preflight-postal-size = Lapòs pa pran ni kat, ni lèt, ni gwo lèt plat { $width } × { $height } mm. Yon lèt gen longè ant 127 ak 292 mm, wotè ant 89 ak 156 mm, epi longè a se 1.3 a 2.5 fwa wotè a; yon gwo lèt plat se 381 × 305 mm maksimòm.
preflight-corner-radius = Reyon kwen yo se { $radius } mm. Bay youn ant 0 ak { $most } mm.
preflight-stock-thickness = Papye a gen { $thickness } mm epesè; okenn papye ni fim etikèt pa konsa. Gade sa enprimè a te voye.
preflight-one-message = Yon etikèt won pote yon sèl mesaj, pa { $lines }. Chwazi yon sèl bagay.
preflight-press-size = Fèy près la se { $width } × { $height } mm. Tape bò ki ant { $least } ak { $most } mm, ak inite yo.
preflight-press-gutter = Espas ant fèy yo se { $gutter } mm. De debòdman bezwen { $least } mm.
preflight-press-too-small = Okenn fèy pa antre sou yon fèy près { $width } × { $height } mm ak debòdman ak mak li yo. Chwazi youn ki pi gwo.
preflight-press-up = Yo mande { $up } sou yon fèy près ki kenbe { $most }. Mande ant 1 ak { $most }.
preflight-on-a-fold = “{ $what }” nan { $distance } mm yon pli. Fè tèks yo pi kout.
preflight-postal-thickness = Bagay ki fini an gen { $thickness } mm epesè. Lapòs mande ant { $least } ak { $most } mm: chwazi yon lòt papye.
preflight-ticket-too-long = Fich travay la twò long nan “{ $place }”. Fè sa yo te tape la a pi kout.
preflight-imposed = { $up } sou yon fèy près { $width } × { $height } mm: { $across } nan lajè, { $down } nan wotè.
preflight-fits-fewer = Tout bagay antre nan lang sa yo ansanm: { $tags }. Enprime lang sa yo, epi mete lòt yo sou yon lòt fèy.
preflight-fits-larger = Tout bagay antre nan gwosè { $size }. Chwazi gwosè sa a.
preflight-folds-clear = Pli: { $count }. Anyen pa enprime nan { $distance } mm yo.
preflight-postal-class =
    { $class ->
        [card] Ale lapòs kòm kat: { $length } × { $height } mm.
        [folded] Ale lapòs kòm fèy pliye: { $length } × { $height } mm lè li pliye.
        [flat] Ale lapòs kòm gwo lèt plat: { $length } × { $height } mm.
       *[letter] Ale lapòs kòm lèt: { $length } × { $height } mm.
    }
preflight-postal-thickness-unknown = Pèsonn pa di ki epesè papye a genyen. Lapòs mande ant { $least } ak { $most } mm pou bagay ki fini an: mande enprimè a.
preflight-sign-letters = Lèt majiskil tit la gen { $height } mm wotè, ase pou moun li yo nan distans { $distance } mm.
preflight-sign-letters-small = Lèt majiskil tit la gen { $height } mm wotè. Yon pano aksesib moun li nan distans { $distance } mm mande { $least } mm: fè tèks yo pi kout oswa pran yon pano pi gwo.
preflight-die-line = Liy dekoup la gen pwòp koulè espesyal pa l, “Dieline”, epi li pa sou okenn plak ki enprime.
