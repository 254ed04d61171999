### The print screen and what the check before printing (preflight) says.
### $place, $what, $field and $zone come from the printing part in English.

## The print screen

print-sheet = Sheet
sheet-lid = Cart-lid label, 7 × 9 in
sheet-postcard = Postcard mailer, 9 × 6 in
print-zone = For one zone only
print-language = Language { $number }
print-make = Make the sheet
print-making = Making the sheet…
print-done = The sheet is ready.
print-refused = No file was made. Correct the errors below and try again.
print-unreachable = The printing part could not be fetched. Check the connection and try again.
print-download = Download the press PDF
print-page = Page { $number }
print-no-stream = There is no stream “{ $stream }”. Choose one from the list.
print-no-zone = There is no zone “{ $zone }”. Choose one from the list.
print-no-language = Choose one to four languages of the program.
print-shortened = { $item }: its line alone is right in { $percent } of cases; the rest was left out to fit.
print-left-out = Left out for lack of room: { $items }.
print-hazards-in-brief = There was no room for the places that take hazards; the sheet’s code and telephone number lead there.
preflight-title = Checked for the press

## Preflight: what was checked and is right. Sizes are in mm, type in points

preflight-bleed-and-safe-area = Bleed { $bleed } mm all around, nothing within { $safe } mm of the edge.
preflight-hazards-shown = Hazards shown: { $count }.
preflight-ink-coverage = Most ink at one spot: { $coverage } %, limit { $limit } %.
preflight-postal-zones = The clear zones of the address side are free.
preflight-qr-code = QR code: version { $version }, level { $level }, modules of { $module } mm, quiet zone of { $quiet } modules.
preflight-type-sizes = Type is { $body } pt, smallest { $smallest } pt; at a viewing distance of { $distance } mm at least { $floor } pt is needed.

## Preflight: somebody should look before it goes to the print shop

preflight-translation-unreviewed = Nobody has checked the texts in “{ $lang }”. Have them read before printing.
preflight-postal-field-missing = The field “{ $field }” is empty. Fill it in, or let the print shop add it.
preflight-qr-dense = The QR code is fine-grained (version { $version }, { $characters } characters). A shorter address scans more easily.

## Preflight: errors. No file is made until they are put right. $place and $what say where

preflight-address-invalid = The address for the QR code cannot be used: “{ $address }”. Write it in full, beginning with https://
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: “{ $text }” holds a character that turns the direction of writing ({ $codepoint }, place { $position }). Delete it and type the words again.
        [control] { $place }: “{ $text }” holds a control character ({ $codepoint }, place { $position }). Delete it and type the words again.
       *[invisible] { $place }: “{ $text }” holds a character that cannot be seen ({ $codepoint }, place { $position }). Delete it and type the words again.
    }
preflight-date-invalid = “{ $date }” is not a date. Write year, month and day: 2027-01-31
preflight-distance-invalid = “{ $distance }” is not a viewing distance in mm. Enter how far away the reader stands.
preflight-font-not-embeddable = The font “{ $family }” may not be put into files. Choose another font.
preflight-font-unreadable = The font file of “{ $family }” cannot be read. Fetch it again.
preflight-hazard-accepted = { $place }: “{ $text }” is a hazard among accepted things. Hazards never go to a cart or bin: correct the rule.
preflight-hazard-missing = The hazard “{ $text }” is missing on the sheet in “{ $lang }”. Hazards are never left out to save room.
preflight-language-count = A sheet takes one to four languages, not { $count }.
preflight-language-invalid = “{ $lang }” is not a language tag. Write one like es or es-US.
preflight-language-twice = The language “{ $lang }” is there twice. Take one out.
preflight-languages-differ = “{ $lang }” does not say the same as “{ $first }”: { $what }.
preflight-missing-glyph = { $place }: no font here has { $characters }, used in “{ $text }”. Write it without, or add a font that has it.
preflight-nothing-to-say = There is nothing to print: the program says nothing about this stream. Write rules for it first.
preflight-outside-safe-area = “{ $what }” is within { $safe } mm of the edge and could be cut off.
preflight-pictogram-unknown = { $place }: there is no picture “{ $pictogram }”. Choose another one.
preflight-picture-too-small = A picture is only { $side } mm wide. Print fewer lines or languages.
preflight-postal-field-full = Line { $line } of the field “{ $field }” does not fit: “{ $text }”. Shorten it.
preflight-postal-zone = “{ $what }” stands in the { $zone }. Move or shorten it.
preflight-profile-unusable = The color profile cannot be used: { $why }. Take the CMYK output profile that the print shop names.
preflight-qr-too-fine = The QR code is too fine to scan: its modules are { $module } mm. Shorten the address.
preflight-qr-too-long = The address has { $characters } characters, more than a QR code holds. Shorten it.
preflight-rule-too-thin = The line “{ $what }” is too thin to print.
preflight-step-invalid = Step { $number } of what may be left out can’t be taken. The details, in English: { $why }.
preflight-text-empty = { $place } has no words. Write some.
preflight-text-overlaps = “{ $text }” and “{ $other }” lie over each other. Shorten one of them.
preflight-text-too-long = { $place } ({ $lang }): “{ $text }” does not fit, even at { $floor } pt, the smallest type that can be read. Shorten it by about { $cut } characters.
preflight-too-many-lines = The sheet “{ $sheet }” has { $lines } lines in { $languages } languages and is { $missing } mm too short for them at { $floor } pt. Take lines out, or print fewer languages.
preflight-too-much-ink = There is { $coverage } % ink at one spot; the limit is { $limit } %. Choose a lighter color.
preflight-type-too-small = “{ $text }” is in { $size } pt; at least { $least } pt is needed. Shorten the texts.
preflight-word-too-wide = { $place } ({ $lang }): the word “{ $word }” in “{ $text }” is wider than its column at { $floor } pt. Use a word of at most about { $room } characters.
