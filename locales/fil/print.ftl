### Ang screen ng pag-print at ang sinasabi ng pagsusuri bago mag-print (preflight).

## Ang screen ng pag-print

print-sheet = Piraso
sheet-lid = Etiketa ng takip ng cart, 7 × 9 pulgada
sheet-postcard = Postcard, 9 × 6 pulgada
print-zone = Para sa isang lugar lang
print-language = Wika { $number }
print-make = Gawin ang piraso
print-making = Ginagawa ang piraso…
print-done = Handa na ang piraso.
print-refused = Walang ginawang file. Ayusin ang mga mali sa ibaba at subukan ulit.
print-unreachable = Hindi nakuha ang bahaging pang-print. Tingnan ang koneksiyon at subukan ulit.
print-download = I-download ang PDF para sa imprenta
print-page = Pahina { $number }
print-no-stream = Walang stream na “{ $stream }”. Pumili sa listahan.
print-no-zone = Walang lugar na “{ $zone }”. Pumili sa listahan.
print-no-language = Pumili ng isa hanggang tatlong wika ng programa.
print-shortened = { $item }: tama ang linyang ito lang sa { $percent } ng mga kaso; inalis ang iba para magkasya.
preflight-title = Nasuri na para sa imprenta

## Preflight: nasuri at tama. mm ang sukat, point ang letra

preflight-bleed-and-safe-area = Bleed na { $bleed } mm sa palibot, walang nasa loob ng { $safe } mm mula sa gilid.
preflight-hazards-shown = Mga panganib na nakasulat: { $count }.
preflight-ink-coverage = Pinakamaraming tinta sa isang punto: { $coverage }%, hangganan { $limit }%.
preflight-postal-zones = Bakante ang mga dapat bakante sa panig ng tirahan.
preflight-qr-code = QR code: bersiyon { $version }, antas { $level }, { $module } mm ang module, { $quiet } module ang bakante sa palibot.
preflight-type-sizes = { $body } pt ang letra, pinakamaliit { $smallest } pt; sa layong { $distance } mm, kailangan ng { $floor } pt o higit pa.

## Preflight: dapat munang tingnan bago ipadala sa imprenta

preflight-translation-unreviewed = Wala pang nagsuri ng mga teksto sa “{ $lang }”. Ipabasa muna bago i-print.
preflight-postal-field-missing = Walang laman ang “{ $field }”. Punan ito o ipadagdag sa imprenta.
preflight-qr-dense = Pino ang QR code (bersiyon { $version }, { $characters } titik). Mas madaling i-scan ang mas maikling address.

## Preflight: mga mali. Walang file hanggang hindi naaayos

preflight-address-invalid = Hindi magagamit ang address ng QR code: “{ $address }”. Isulat nang buo, simula sa https://
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: may titik ang “{ $text }” na bumabaligtad sa takbo ng sulat ({ $codepoint }, puwesto { $position }). Burahin at i-type ulit.
        [control] { $place }: may control character ang “{ $text }” ({ $codepoint }, puwesto { $position }). Burahin at i-type ulit.
       *[invisible] { $place }: may titik na hindi nakikita ang “{ $text }” ({ $codepoint }, puwesto { $position }). Burahin at i-type ulit.
    }
preflight-date-invalid = Hindi petsa ang “{ $date }”. Isulat ang taon, buwan at araw: 2027-01-31
preflight-distance-invalid = Hindi layo sa mm ang “{ $distance }”. Isulat kung gaano kalayo ang nagbabasa.
preflight-font-not-embeddable = Bawal ilagay sa file ang font na “{ $family }”. Pumili ng iba.
preflight-font-unreadable = Hindi mabasa ang file ng font na “{ $family }”. Kunin ulit.
preflight-hazard-accepted = { $place }: panganib ang “{ $text }” na nasa mga tinatanggap. Hindi napupunta sa cart o bin ang panganib: ayusin ang tuntunin.
preflight-hazard-missing = Kulang sa “{ $lang }” ang panganib na “{ $text }”. Hindi inaalis ang panganib para magkasya.
preflight-language-count = Isa hanggang tatlong wika ang piraso, hindi { $count }.
preflight-language-invalid = Hindi tag ng wika ang “{ $lang }”. Sumulat ng tulad ng es o es-US.
preflight-language-twice = Dalawang beses ang wikang “{ $lang }”. Alisin ang isa.
preflight-languages-differ = Hindi pareho ang sinasabi ng “{ $lang }” at “{ $first }”: { $what }.
preflight-missing-glyph = { $place }: walang font na may { $characters }, na nasa “{ $text }”. Isulat nang wala ito o magdagdag ng font na mayroon.
preflight-nothing-to-say = Walang ipi-print: walang sinasabi ang programa tungkol sa stream na ito. Sumulat muna ng mga tuntunin.
preflight-outside-safe-area = Nasa loob ng { $safe } mm mula sa gilid ang “{ $what }” at baka maputol.
preflight-pictogram-unknown = { $place }: walang larawang “{ $pictogram }”. Pumili ng iba.
preflight-picture-too-small = { $side } mm lang ang lapad ng larawan. Bawasan ang linya o wika.
preflight-postal-field-full = Hindi kasya ang linya { $line } ng “{ $field }”: “{ $text }”. Paikliin.
preflight-postal-zone = Nasa { $zone } ang “{ $what }”. Ilipat o paikliin.
preflight-profile-unusable = Hindi magagamit ang color profile: { $why }. Gamitin ang CMYK profile na sasabihin ng imprenta.
preflight-qr-too-fine = Sobrang pino ng QR code para i-scan: { $module } mm ang module. Paikliin ang address.
preflight-qr-too-long = { $characters } titik ang address, higit sa kaya ng QR code. Paikliin.
preflight-rule-too-thin = Sobrang nipis ng linyang “{ $what }” para i-print.
preflight-text-empty = Walang salita ang { $place }. Sumulat.
preflight-text-overlaps = Nagpapatong ang “{ $text }” at “{ $other }”. Paikliin ang isa.
preflight-text-too-long = { $place } ({ $lang }): hindi kasya ang “{ $text }” kahit { $floor } pt, ang pinakamaliit na nababasa. Bawasan nang mga { $cut } titik.
preflight-too-many-lines = { $lines } linya sa { $languages } wika ang “{ $sheet }” at kulang ng { $missing } mm sa { $floor } pt. Bawasan ang linya o wika.
preflight-too-much-ink = { $coverage }% ang tinta sa isang punto; { $limit }% ang hangganan. Pumili ng mas mapusyaw na kulay.
preflight-type-too-small = { $size } pt ang “{ $text }”; kailangan ng { $least } pt o higit pa. Paikliin ang mga teksto.
preflight-word-too-wide = { $place } ({ $lang }): mas malapad sa hanay nito ang salitang “{ $word }” sa “{ $text }” sa { $floor } pt. Gumamit ng salitang hanggang mga { $room } titik.
