### Ang screen ng pag-print at ang sinasabi ng pagsusuri bago mag-print (preflight).

## Ang screen ng pag-print

print-sheet = Piraso
sheet-lid = Etiketa ng takip ng cart
sheet-sticker = Bilog na sticker, isang mensahe
sheet-sign = Karatula sa pinaghahatiang lalagyan
sheet-postcard = Postcard na ipapadala
sheet-self-mailer = Nakatuping liham
sheet-handout = Papel na ipamimigay
print-size = Tapos na sukat
print-size-usual = Ang karaniwan
print-size-typed = Naka-type sa ibaba
print-typed-size = Sukat at unit, tulad ng 8 x 12 in; kung bilog, 115 mm
print-size-unread = Hindi sukat ang “{ $text }”. Isulat ang lapad, taas at unit: 8 x 12 in
print-corner = Radius ng sulok, sa mm
print-fold = Tupi
print-fold-half = Isa, sa gitna
print-fold-thirds = Dalawa, tulad ng liham
print-die-line = Iguhit ang linya ng die sa spot color
print-printers-mark = Maglaan ng lugar para sa marka ng imprenta
print-more = Iba pa para sa imprenta
print-stock = Materyal
print-thickness = Kapal ng materyal, sa mm
print-distance = Gaano kalayo binabasa, sa mm
print-qr-level = QR code: sirang kaya nito
print-qr-most = Pinakamarami na hindi nagpapalaki rito
print-qr-medium = 15% (M)
print-qr-quartile = 25% (Q)
print-qr-high = 30% (H)
print-words = Pinakamaraming salita sa isang linya
print-words-any = Kung ilan ang kailangan
print-item = Isang bagay
print-press = Ilan sa isang press sheet
print-press-none = Isa bawat pahina
print-work-and-turn = Work and turn
print-no-item = Walang bagay na “{ $item }”. Pumili sa listahan.
print-nothing-against = Walang nagsasabing bawal dito ang “{ $item }”. Pumili ng bagay na bawal, o isang panganib.
print-ticket = I-download ang job ticket
print-number-unread = Hindi bilang ng milimetro ang “{ $text }”.
ticket-title = Job ticket
ticket-sheet = Piraso
ticket-files = Mga file
ticket-file =
    { $pages ->
        [one] { $file }: { $pages } pahina
       *[other] { $file }: { $pages } na pahina
    }
ticket-quantity = Dami
ticket-copies =
    { $copies ->
        [one] { $languages }: { $copies } kopya
       *[other] { $languages }: { $copies } na kopya
    }
ticket-copies-unsaid = { $languages }: pag-uusapan ang bilang ng kopya
ticket-trim = Tapos na sukat
ticket-size = { $width } × { $height } mm ({ $across } × { $down } in)
ticket-bleed = Bleed, sa bawat gilid
ticket-mm = { $length } mm
ticket-corners = Mga sulok
ticket-round = Pinutol nang bilog
ticket-radius = Bilugan, radius na { $radius } mm
ticket-square = Hindi bilugan
ticket-die = Nasa spot color na “Dieline” ang linya ng die, naka-overprint: huwag i-print
ticket-folds = Mga tupi
ticket-fold = Pahalang, { $at } mm mula sa itaas na gilid ng nakabukang papel
ticket-fold-order = Nasa labas ang panig ng address. Tupi ang gilid nito sa ibaba; bumubukas sa gilid sa itaas at doon nilalagyan ng tab.
ticket-colours = Mga kulay
ticket-colours-one = 4/0: cyan, magenta, dilaw, itim sa isang panig
ticket-colours-two = 4/4: cyan, magenta, dilaw, itim sa dalawang panig
ticket-colours-note = PDF/X-4; naka-overprint ang itim na teksto; hanggang { $limit }% ang kabuuang tinta
ticket-stock = Materyal
ticket-stock-unsaid = Pag-uusapan
ticket-thickness = Kapal { $thickness } mm
ticket-thickness-unsaid = Kukumpirmahin ang kapal
ticket-press = Press sheet
ticket-work-and-turn = Work and turn: nasa parehong plate ang likod
ticket-mark = Marka ng imprenta
ticket-mark-room = May nakalaang 19 × 6 mm sa maliliit na letra
ticket-edition = Edisyon
ticket-date = Petsa ng trabaho
ticket-contact = Mga tanong sa
print-zone = Para sa isang lugar lang
print-language = Wika { $number }
print-make = Gawin ang piraso
print-making = Ginagawa ang piraso…
print-done = Handa na ang piraso.
print-refused = Walang ginawang file. Ayusin ang mga mali sa ibaba at subukan ulit.
print-unreachable = Hindi nakuha ang bahaging pang-print. Tingnan ang koneksiyon at subukan ulit.
print-download = I-download ang PDF para sa imprenta
print-download-web = I-download ang PDF para sa web
print-web-hint = Ang PDF para sa imprenta ay ipinapadala roon. Ang PDF para sa web ay para basahin sa screen at pakinggan.
print-profile = Color profile ng imprenta (.icc)
print-profile-hint = Kung wala, gagamitin ang kasamang profile para sa coated na papel.
print-ink-limit = Pinakamaraming tinta, sa %
print-mark = May markang { $number } sa piraso
print-contradictions = Mga linyang nagsasalungatan: { $count }. Tingnan sa ibaba bago i-print.
print-page = Pahina { $number }
print-no-stream = Walang stream na “{ $stream }”. Pumili sa listahan.
print-no-zone = Walang lugar na “{ $zone }”. Pumili sa listahan.
print-no-language = Pumili ng isa hanggang apat na wika ng programa.
print-shortened = { $item }: tama ang linyang ito lang sa { $percent } ng mga kaso; inalis ang iba para magkasya.
print-left-out = Inalis dahil hindi kasya: { $items }.
print-hazards-in-brief = Hindi nagkasya ang mga lugar na tumatanggap ng panganib; itinuturo ito ng code at telepono sa piraso.
print-refused-in-brief = Hindi nagkasya kung saan dadalhin ang mga bawal dito; itinuturo ito ng code at telepono sa piraso.
preflight-title = Nasuri na para sa imprenta

## Preflight: nasuri at tama. mm ang sukat, point ang letra

preflight-bleed-and-safe-area = Bleed na { $bleed } mm sa palibot, walang nasa loob ng { $safe } mm mula sa gilid.
preflight-boxes = Tapos na sukat { $finished } mm, may bleed { $bleed } mm, pahinang may mga marka { $page } mm.
preflight-contrast = Malinaw ang mga salita sa likuran: contrast na { $ratio }:1 o higit pa, { $difference }% ng itim o higit pa ang pagkakaiba.
preflight-fonts-embedded = Nasa file ang lahat ng font, ang { $glyphs } hugis na ginamit lang: { $fonts }.
preflight-pictures-have-words = Mga larawang may salita para sa mga hindi nakakakita: { $count }.
preflight-hazards-shown = Mga panganib na nakasulat: { $count }.
preflight-ink-coverage = Pinakamaraming tinta sa isang punto: { $coverage }%, hangganan { $limit }%.
preflight-postal-zones = Bakante ang mga dapat bakante sa panig ng tirahan.
preflight-qr-code = QR code: bersiyon { $version }, antas { $level }, { $module } mm ang module, { $quiet } module ang bakante sa palibot.
preflight-type-sizes = { $body } pt ang letra, pinakamaliit { $smallest } pt; sa layong { $distance } mm, kailangan ng { $floor } pt o higit pa.
preflight-translation-outdated = “{ $text }” ({ $lang }): nagbago ang pinagmulan nito matapos isalin. Isalin ulit bago i-print.
preflight-line-often-wrong = Tama ang “{ $text }” nang mag-isa sa { $percent }% lang ng mga kaso. Dagdagan ang sinasabi, o alisin ang linya.
preflight-lines-contradict = Nagsasalungatan ang “{ $text }” at “{ $other }” ({ $lang }): akala ng bumasa sa una, para sa dalawa ito. Ibahin ang salita ng isa.
preflight-picture-without-words = Walang salitang nagsasabi kung ano ang narito sa mga hindi nakakakita ({ $what }). Sumulat.

## Preflight: dapat munang tingnan bago ipadala sa imprenta

preflight-translation-unreviewed = Wala pang nagsuri ng mga teksto sa “{ $lang }”. Ipabasa muna bago i-print.
preflight-postal-field-missing = { $field }: walang laman. Punan ito o ipadagdag sa imprenta.
preflight-qr-dense = Pino ang QR code (bersiyon { $version }, { $characters } titik). Mas madaling i-scan ang mas maikling address.

## Preflight: mga mali. Walang file hanggang hindi naaayos

preflight-address-invalid = Hindi magagamit ang address ng QR code: “{ $address }”. Isulat nang buo, simula sa https://
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: may titik ang “{ $text }” na bumabaligtad sa takbo ng sulat ({ $codepoint }, puwesto { $position }). Burahin at i-type ulit.
        [control] { $place }: may control character ang “{ $text }” ({ $codepoint }, puwesto { $position }). Burahin at i-type ulit.
       *[invisible] { $place }: may titik na hindi nakikita ang “{ $text }” ({ $codepoint }, puwesto { $position }). Burahin at i-type ulit.
    }
preflight-boxes-wrong = Hindi magkakapaloob ang mga sukat: tapos na { $finished } mm, may bleed { $bleed } mm, pahina { $page } mm. Pumili ng ibang piraso.
preflight-contrast-low = Halos hindi makita ang “{ $text }” sa likuran nito: contrast na { $ratio }:1, kailangan ng { $least }:1 o higit pa; { $difference }% ng itim ang pagkakaiba, kailangan ng { $apart }% o higit pa. Pumili ng ibang tinta.
preflight-ink-limit-invalid = Hindi hangganan ng tinta ang “{ $limit }”. Isulat ang kabuuan ng apat na plate na sasabihin ng imprenta, mula 100 hanggang 400%.
preflight-qr-not-quiet = Walang { $quiet } module ng bakanteng papel sa palibot ng QR code. Ilipat ang naroon.
preflight-date-invalid = Hindi petsa ang “{ $date }”. Isulat ang taon, buwan at araw: 2027-01-31
preflight-distance-invalid = Hindi layo sa mm ang “{ $distance }”. Isulat kung gaano kalayo ang nagbabasa.
preflight-font-not-embeddable = Bawal ilagay sa file ang font na “{ $family }”. Pumili ng iba.
preflight-font-unreadable = Hindi mabasa ang file ng font na “{ $family }”. Kunin ulit.
preflight-hazard-accepted = { $place }: panganib ang “{ $text }” na nasa mga tinatanggap. Hindi napupunta sa cart o bin ang panganib: ayusin ang tuntunin.
preflight-hazard-missing = Kulang sa “{ $lang }” ang panganib na “{ $text }”. Hindi inaalis ang panganib para magkasya.
preflight-language-count = Isa hanggang apat na wika ang piraso, hindi { $count }.
preflight-language-invalid = Hindi tag ng wika ang “{ $lang }”. Sumulat ng tulad ng es o es-US.
preflight-language-twice = Dalawang beses ang wikang “{ $lang }”. Alisin ang isa.
preflight-languages-differ =
    { $what ->
        [sections] Hindi pareho ang sinasabi ng “{ $lang }” at “{ $first }”: { $theirs } ang bahagi nito, hindi { $ours }. Isalin ang kulang.
        [verdict] Hindi pareho ang sinasabi ng “{ $lang }” at “{ $first }”: iba ang pasya ng bahagi { $section }. Ayusin ito.
        [lines] Hindi pareho ang sinasabi ng “{ $lang }” at “{ $first }”: { $theirs } ang linya ng bahagi { $section }, hindi { $ours }. Isalin ang kulang.
       *[picture] Hindi pareho ang sinasabi ng “{ $lang }” at “{ $first }”: iba ang larawan o marka ng panganib ng linya { $line } sa bahagi { $section }. Ayusin ito.
    }
preflight-missing-glyph = { $place }: walang font na may { $characters }, na nasa “{ $text }”. Isulat nang wala ito o magdagdag ng font na mayroon.
preflight-nothing-to-say = Walang ipi-print: walang sinasabi ang programa tungkol sa stream na ito. Sumulat muna ng mga tuntunin.
preflight-outside-safe-area = Nasa loob ng { $safe } mm mula sa gilid at baka maputol: { $what }
preflight-pictogram-unknown = { $place }: walang larawang “{ $pictogram }”. Pumili ng iba.
preflight-picture-too-small = { $side } mm lang ang lapad ng larawan. Bawasan ang linya o wika.
preflight-postal-field-full = { $field }: hindi kasya ang “{ $text }” (linya { $line }). Paikliin.
preflight-postal-zone = Nasa { $zone }: { $what }. Ilipat o paikliin.
preflight-profile-unusable =
    { $why ->
        [not-icc] Hindi color profile ang file. Gamitin ang CMYK output profile (.icc) na sasabihin ng imprenta.
        [cut-short] Putol ang color profile. Hilingin sa imprenta na ipadala ulit.
        [no-tables] Walang color table ang color profile na “{ $name }”. Gamitin ang CMYK output profile na sasabihin ng imprenta.
       *[other-kind] Hindi CMYK output profile ang “{ $name }”: para ito sa { $class }, sa { $space }. Gamitin ang sasabihin ng imprenta.
    }
preflight-qr-too-fine = Sobrang pino ng QR code para i-scan: { $module } mm ang module. Paikliin ang address.
preflight-qr-too-long = { $characters } titik ang address, higit sa kaya ng QR code. Paikliin.
preflight-rule-too-thin = { $width } pt ang nipis ng isang guhit; { $least } pt ang pinakamanipis na napi-print.
preflight-step-invalid = Hindi magawa ang hakbang { $number } ng mga puwedeng alisin. Ang detalye, sa Ingles: { $why }.
preflight-text-empty = Walang salita ang { $place }. Sumulat.
preflight-text-overlaps = Nagpapatong ang “{ $text }” at “{ $other }”. Paikliin ang isa.
preflight-text-too-long = { $place }: hindi kasya ang “{ $text }” kahit { $floor } pt, ang pinakamaliit na nababasa. Bawasan nang mga { $cut } titik.
preflight-too-many-lines = { $lines } linya sa { $languages } wika ang “{ $sheet }” at kulang ng { $missing } mm sa { $floor } pt. Bawasan ang linya o wika.
preflight-too-much-ink = { $coverage }% ang tinta sa isang punto; { $limit }% ang hangganan. Pumili ng mas mapusyaw na kulay.
preflight-type-too-small = { $size } pt ang “{ $text }”; kailangan ng { $least } pt o higit pa. Paikliin ang mga teksto.
preflight-word-too-wide = { $place }: mas malapad sa hanay nito ang salitang “{ $word }” sa “{ $text }” sa { $floor } pt. Gumamit ng salitang hanggang mga { $room } titik.
sheet-text-title = Pamagat ({ $lang })
sheet-text-heading = Pamagat ng bahagi { $section } ({ $lang })
sheet-text-line = Linya { $line } ng bahagi { $section } ({ $lang })
sheet-text-scan = Pangungusap sa tabi ng QR code ({ $lang })
sheet-text-foot = Linya { $line } sa ibaba ({ $lang })
sheet-text-issuer = Kung sino ang naglabas ng piraso
sheet-text-short-address = Maikling web address
sheet-text-notice = Paunawa ng pag-print
sheet-text-edition = Edisyon
sheet-text-job-name = Pangalan ng trabaho
sheet-text-slug = Linya sa labas ng piraso
sheet-text-return-address = Return address { $line }
sheet-text-indicia = Tatak ng selyo { $line }
sheet-text-addressee = Address ng padadalhan { $line }
postal-zone-barcode-clear = puting guhit para sa barcode ng koreo
postal-zone-read-area = bahaging binabasahan ng address ng mga makina ng koreo
drawn-code = ang QR code
drawn-picture = larawan
drawn-area = bahaging may tinta
sheet-cart-lid = etiketa ng takip ng cart
sheet-round-sticker = bilog na sticker
sheet-enclosure-sign = karatula sa pinaghahatiang lalagyan
sheet-text-stock = Materyal
sheet-postcard-mailer = postcard na ipapadala
profile-class-mntr = screen
profile-class-scnr = scanner o kamera
profile-class-other = ibang gamit
preflight-size-zero = { $width } × { $height } mm ang piraso. Dapat higit sa wala ang dalawang gilid: i-type ulit ang tapos na sukat.
preflight-size-fixed = { $width } × { $height } mm ang piraso, pero sa mga sukat na ito lang ito ginagawa: { $names }.
preflight-size-out-of-range = { $width } × { $height } mm ang piraso. I-type ang mga gilid, mula { $least } hanggang { $most } mm, kasama ang unit.
preflight-size-too-narrow = { $width } × { $height } mm ang piraso. Hanggang { $most } beses lang ng isang gilid ang kabila.
preflight-size-not-round = Magkasinlapad at magkasintaas ang bilog na etiketa, hindi { $width } × { $height } mm. I-type ang diyametro.
preflight-postal-size = Hindi tumatanggap ang koreo ng card, liham o flat na { $width } × { $height } mm. Ang liham ay 127 hanggang 292 mm ang haba, 89 hanggang 156 mm ang taas, at ang haba ay 1.3 hanggang 2.5 beses ng taas; ang flat ay hanggang 381 × 305 mm.
preflight-corner-radius = { $radius } mm ang radius ng mga sulok. Sumulat ng mula 0 hanggang { $most } mm.
preflight-stock-thickness = { $thickness } mm ang kapal ng materyal; walang papel o film na ganoon. Tingnan ang ipinadala ng imprenta.
preflight-one-message = Isang mensahe lang ang bilog na etiketa, hindi { $lines }. Pumili ng isang bagay.
preflight-press-size = { $width } × { $height } mm ang press sheet. I-type ang mga gilid, mula { $least } hanggang { $most } mm, kasama ang unit.
preflight-press-gutter = { $gutter } mm ang pagitan. Kailangan ng dalawang bleed ng { $least } mm sa pagitan ng mga piraso.
preflight-press-too-small = Walang pirasong kasya sa press sheet na { $width } × { $height } mm kasama ang bleed at mga marka. Pumili ng mas malaki.
preflight-press-up = { $up } ang hiningi sa press sheet na { $most } ang kaya. Humingi ng 1 hanggang { $most }.
preflight-on-a-fold = Nasa loob ng { $distance } mm mula sa tupi ang “{ $what }”. Paikliin ang mga teksto.
preflight-postal-thickness = { $thickness } mm ang kapal ng tapos na piraso. Ang gusto ng koreo ay { $least } hanggang { $most } mm: pumili ng ibang materyal.
preflight-ticket-too-long = Sobrang haba ng job ticket sa “{ $place }”. Paikliin ang na-type doon.
preflight-imposed = { $up } sa isang press sheet na { $width } × { $height } mm: { $across } pahalang, { $down } pababa.
preflight-fits-fewer = Kasya ang lahat sa mga wikang ito nang magkakasama: { $tags }. I-print ang mga ito, at ang iba sa hiwalay na piraso.
preflight-fits-larger = Kasya ang lahat sa sukat na { $size }. Piliin ang sukat na iyon.
preflight-folds-clear = Mga tupi: { $count }. Walang naka-print sa loob ng { $distance } mm mula sa mga ito.
preflight-postal-class =
    { $class ->
        [card] Ipapadala bilang card: { $length } × { $height } mm.
        [folded] Ipapadala bilang nakatuping liham: { $length } × { $height } mm kapag nakatupi.
        [flat] Ipapadala bilang malaking liham (flat): { $length } × { $height } mm.
       *[letter] Ipapadala bilang liham: { $length } × { $height } mm.
    }
preflight-postal-thickness-unknown = Walang nagsabi ng kapal ng materyal. Ang gusto ng koreo ay { $least } hanggang { $most } mm para sa tapos na piraso: itanong sa imprenta.
preflight-sign-letters = { $height } mm ang taas ng malalaking titik ng pamagat, sapat para mabasa sa layong { $distance } mm.
preflight-sign-letters-small = { $height } mm ang taas ng malalaking titik ng pamagat. Kailangan ng { $least } mm sa karatulang para sa lahat na binabasa sa layong { $distance } mm: paikliin ang mga teksto o gumamit ng mas malaking karatula.
preflight-die-line = Nasa sariling spot color na “Dieline” ang linya ng die, at wala sa anumang plate na ipi-print.
