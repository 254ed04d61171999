### The print screen and what the check before printing (preflight) says.

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
print-download-web = Download the web PDF
print-web-hint = The press PDF goes to the print shop. The web PDF is for reading on a screen and aloud.
print-profile = Color profile of the print shop (.icc)
print-profile-hint = Without one, the bundled profile for coated paper is used.
print-ink-limit = Most ink, in %
print-mark = Marked { $number } on the sheet
print-contradictions = Lines that contradict each other: { $count }. See below before you print.
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
preflight-boxes = Finished size { $finished } mm, with bleed { $bleed } mm, page with marks { $page } mm.
preflight-contrast = Words stand out from their grounds: contrast at least { $ratio }:1, at least { $difference } % of black apart.
preflight-fonts-embedded = Every font is in the file, cut down to the { $glyphs } characters’ shapes used: { $fonts }.
preflight-pictures-have-words = Pictures with words for those who cannot see them: { $count }.
preflight-hazards-shown = Hazards shown: { $count }.
preflight-ink-coverage = Most ink at one spot: { $coverage } %, limit { $limit } %.
preflight-postal-zones = The clear zones of the address side are free.
preflight-qr-code = QR code: version { $version }, level { $level }, modules of { $module } mm, quiet zone of { $quiet } modules.
preflight-type-sizes = Type is { $body } pt, smallest { $smallest } pt; at a viewing distance of { $distance } mm at least { $floor } pt is needed.

## Preflight: somebody should look before it goes to the print shop

preflight-translation-outdated = “{ $text }” ({ $lang }): its source has changed since it was translated. Translate it again before printing.
preflight-line-often-wrong = “{ $text }” alone is right in only { $percent } % of cases. Say more, or leave the line out.
preflight-lines-contradict = “{ $text }” and “{ $other }” ({ $lang }) contradict each other: who reads the first takes it for both. Word one of them otherwise.
preflight-picture-without-words = No words say what is here for those who cannot see it ({ $what }). Write some.
preflight-translation-unreviewed = Nobody has checked the texts in “{ $lang }”. Have them read before printing.
preflight-postal-field-missing = { $field }: empty. Fill it in, or let the print shop add it.
preflight-qr-dense = The QR code is fine-grained (version { $version }, { $characters } characters). A shorter address scans more easily.

## Preflight: errors. No file is made until they are put right. $place and $what say where

preflight-address-invalid = The address for the QR code cannot be used: “{ $address }”. Write it in full, beginning with https://
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: “{ $text }” holds a character that turns the direction of writing ({ $codepoint }, place { $position }). Delete it and type the words again.
        [control] { $place }: “{ $text }” holds a control character ({ $codepoint }, place { $position }). Delete it and type the words again.
       *[invisible] { $place }: “{ $text }” holds a character that cannot be seen ({ $codepoint }, place { $position }). Delete it and type the words again.
    }
preflight-boxes-wrong = The boxes do not lie in each other: finished { $finished } mm, with bleed { $bleed } mm, page { $page } mm. Choose another sheet.
preflight-contrast-low = “{ $text }” hardly stands out from its ground: contrast { $ratio }:1, at least { $least }:1 is needed; { $difference } % of black apart, at least { $apart } % is needed. Choose other inks.
preflight-ink-limit-invalid = “{ $limit }” is not an ink limit. Enter the sum of the four plates that the print shop names, from 100 to 400 %.
preflight-qr-not-quiet = The QR code does not have { $quiet } modules of bare paper around it. Move what is there.
preflight-date-invalid = “{ $date }” is not a date. Write year, month and day: 2027-01-31
preflight-distance-invalid = “{ $distance }” is not a viewing distance in mm. Enter how far away the reader stands.
preflight-font-not-embeddable = The font “{ $family }” may not be put into files. Choose another font.
preflight-font-unreadable = The font file of “{ $family }” cannot be read. Fetch it again.
preflight-hazard-accepted = { $place }: “{ $text }” is a hazard among accepted things. Hazards never go to a cart or bin: correct the rule.
preflight-hazard-missing = The hazard “{ $text }” is missing on the sheet in “{ $lang }”. Hazards are never left out to save room.
preflight-language-count = A sheet takes one to four languages, not { $count }.
preflight-language-invalid = “{ $lang }” is not a language tag. Write one like es or es-US.
preflight-language-twice = The language “{ $lang }” is there twice. Take one out.
preflight-languages-differ =
    { $what ->
        [sections] “{ $lang }” does not say the same as “{ $first }”: it has { $theirs } sections, not { $ours }. Translate what is missing.
        [verdict] “{ $lang }” does not say the same as “{ $first }”: section { $section } has another verdict. Correct it.
        [lines] “{ $lang }” does not say the same as “{ $first }”: section { $section } has { $theirs } lines, not { $ours }. Translate what is missing.
       *[picture] “{ $lang }” does not say the same as “{ $first }”: line { $line } of section { $section } has another picture or hazard mark. Correct it.
    }
preflight-missing-glyph = { $place }: no font here has { $characters }, used in “{ $text }”. Write it without, or add a font that has it.
preflight-nothing-to-say = There is nothing to print: the program says nothing about this stream. Write rules for it first.
preflight-outside-safe-area = Within { $safe } mm of the edge, where it could be cut off: { $what }
preflight-pictogram-unknown = { $place }: there is no picture “{ $pictogram }”. Choose another one.
preflight-picture-too-small = A picture is only { $side } mm wide. Print fewer lines or languages.
preflight-postal-field-full = { $field }: “{ $text }” (line { $line }) does not fit. Shorten it.
preflight-postal-zone = In the { $zone }: { $what }. Move or shorten it.
preflight-profile-unusable =
    { $why ->
        [not-icc] The file is no color profile. Take the CMYK output profile (.icc) that the print shop names.
        [cut-short] The color profile is cut short. Ask the print shop to send it again.
        [no-tables] The color profile “{ $name }” has no color tables. Take the CMYK output profile that the print shop names.
       *[other-kind] The color profile “{ $name }” is not an output profile for CMYK: it is for { $class }, in { $space }. Take the one that the print shop names.
    }
preflight-qr-too-fine = The QR code is too fine to scan: its modules are { $module } mm. Shorten the address.
preflight-qr-too-long = The address has { $characters } characters, more than a QR code holds. Shorten it.
preflight-rule-too-thin = A line is { $width } pt thin; the thinnest that prints is { $least } pt.
preflight-step-invalid = Step { $number } of what may be left out can’t be taken. The details, in English: { $why }.
preflight-text-empty = { $place } has no words. Write some.
preflight-text-overlaps = “{ $text }” and “{ $other }” lie over each other. Shorten one of them.
preflight-text-too-long = { $place }: “{ $text }” does not fit, even at { $floor } pt, the smallest type that can be read. Shorten it by about { $cut } characters.
preflight-too-many-lines = The sheet “{ $sheet }” has { $lines } lines in { $languages } languages and is { $missing } mm too short for them at { $floor } pt. Take lines out, or print fewer languages.
preflight-too-much-ink = There is { $coverage } % ink at one spot; the limit is { $limit } %. Choose a lighter color.
preflight-type-too-small = “{ $text }” is in { $size } pt; at least { $least } pt is needed. Shorten the texts.
preflight-word-too-wide = { $place }: the word “{ $word }” in “{ $text }” is wider than its column at { $floor } pt. Use a word of at most about { $room } characters.

## What preflight calls a sheet's texts, the post's zones and what is drawn. $lang is a language's tag

sheet-text-title = Title ({ $lang })
sheet-text-heading = Heading of section { $section } ({ $lang })
sheet-text-line = Line { $line } of section { $section } ({ $lang })
sheet-text-scan = Sentence beside the QR code ({ $lang })
sheet-text-foot = Line { $line } at the foot ({ $lang })
sheet-text-issuer = Who issues the sheet
sheet-text-short-address = Short web address
sheet-text-notice = Print notice
sheet-text-edition = Edition
sheet-text-job-name = Name of the job
sheet-text-slug = Line outside the sheet
# $line may be empty.
sheet-text-return-address = Return address { $line }
sheet-text-indicia = Postage mark { $line }
sheet-text-addressee = Delivery address { $line }
postal-zone-barcode-clear = white strip for the post’s barcode
postal-zone-read-area = area where the post’s machines read the address
drawn-code = the QR code
drawn-picture = a picture
drawn-area = an area of ink
sheet-cart-lid = cart-lid label
sheet-postcard-mailer = postcard mailer
# What a color profile is for.
profile-class-mntr = a display
profile-class-scnr = a scanner or camera
profile-class-other = another use
