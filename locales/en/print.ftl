### The print screen and what the check before printing (preflight) says.

## The print screen

print-sheet = Sheet
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
print-refused-in-brief = There was no room for where things go that stay out; the sheet’s code and telephone number lead there.
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

## What preflight calls a sheet's texts, the post's zones and what is drawn. $lang is a language's name

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
sheet-text-stock = Stock
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
sheet-round-sticker = round sticker
sheet-enclosure-sign = sign at shared containers
# What a color profile is for.
profile-class-mntr = a display
profile-class-scnr = a scanner or camera
profile-class-other = another use

preflight-size-zero = The sheet is { $width } × { $height } mm. Both sides must be longer than nothing: type the finished size again.
preflight-size-fixed = The sheet is { $width } × { $height } mm, but this one is made in these sizes only: { $names }.
preflight-size-out-of-range = The sheet is { $width } × { $height } mm. Type sides from { $least } to { $most } mm, with their unit.
preflight-size-too-narrow = The sheet is { $width } × { $height } mm. One side may be at most { $most } times the other.
preflight-size-not-round = A round label is as wide as it is high, not { $width } × { $height } mm. Type its diameter.
preflight-postal-size = The post takes no card, letter or flat of { $width } × { $height } mm. A letter is 127 to 292 mm long, 89 to 156 mm high, and 1.3 to 2.5 times as long as high; a flat is at most 381 × 305 mm.
preflight-corner-radius = The corners’ radius is { $radius } mm. Give one from 0 to { $most } mm.
preflight-stock-thickness = The stock is { $thickness } mm thick, which no paper or label film is. Look at what the print shop sent.
preflight-one-message = A round label bears one message, not { $lines }. Choose one thing.
preflight-press-size = The press sheet is { $width } × { $height } mm. Type sides from { $least } to { $most } mm, with their unit.
preflight-press-gutter = The gutter is { $gutter } mm. Two bleeds need { $least } mm between the sheets.
preflight-press-too-small = No sheet fits on a press sheet of { $width } × { $height } mm with its bleed and marks. Choose a larger one.
preflight-press-up = { $up } were asked for on a press sheet that holds { $most }. Ask for 1 to { $most }.
preflight-on-a-fold = Within { $distance } mm of a fold: { $what }. Shorten the texts.
preflight-postal-thickness = The finished piece is { $thickness } mm thick. The post wants { $least } to { $most } mm: choose another stock.
preflight-ticket-too-long = The job ticket is too long at “{ $place }”. Shorten what was typed there.

## Preflight of further sheets: what is right, and what somebody should look at

preflight-imposed = { $up } on a press sheet of { $width } × { $height } mm: { $across } across, { $down } down.
preflight-fits-fewer = All of it fits in these languages together: { $tags }. Print those, and the others on a sheet of their own.
preflight-fits-larger = All of it fits in the size { $size }. Choose that size.
preflight-folds-clear = Folds: { $count }. Nothing is printed within { $distance } mm of them.
preflight-postal-class =
    { $class ->
        [card] Mailed as a card: { $length } × { $height } mm.
        [folded] Mailed as a folded self-mailer: { $length } × { $height } mm when folded.
        [flat] Mailed as a flat: { $length } × { $height } mm.
       *[letter] Mailed as a letter: { $length } × { $height } mm.
    }
preflight-postal-thickness-unknown = Nobody has said how thick the stock is. The post wants { $least } to { $most } mm for the finished piece: ask the print shop.
preflight-sign-letters = The title’s capitals are { $height } mm high, enough to be read from { $distance } mm.
preflight-sign-letters-small = The title’s capitals are { $height } mm high. Accessible signs read from { $distance } mm ask for { $least } mm: shorten the texts or take a larger sign.
preflight-die-line = The die’s line is in a spot color of its own, “Dieline”, and on no printed plate.

## The choices of the print screen

sheet-lid = Cart-lid label
sheet-sticker = Round sticker, one message
sheet-sign = Sign at shared containers
sheet-postcard = Postcard mailer
sheet-self-mailer = Folded self-mailer
sheet-handout = Handout
print-size = Finished size
print-size-usual = The usual one
print-size-typed = Typed below
print-typed-size = Size with its unit, such as 8 x 12 in; for a round one 115 mm
print-size-unread = “{ $text }” is not a size. Write width, height and unit: 8 x 12 in
print-corner = Corner radius, in mm
print-fold = Fold
print-fold-half = Once, across the middle
print-fold-thirds = Twice, like a letter
print-die-line = Draw the die’s line in a spot color
print-printers-mark = Keep room for the printer’s mark
print-more = More for the print shop
print-stock = Stock
print-thickness = Stock thickness, in mm
print-distance = Read from how far, in mm
print-qr-level = QR code: damage it bears
print-qr-most = The most that makes it no larger
print-qr-medium = 15 % (M)
print-qr-quartile = 25 % (Q)
print-qr-high = 30 % (H)
print-words = Most words in a line
print-words-any = As many as it takes
print-item = One item
print-press = Several on a press sheet
print-press-none = One a page
print-work-and-turn = Work and turn
print-no-item = There is no item “{ $item }”. Choose one from the list.
print-nothing-against = Nothing says that “{ $item }” stays out. Choose a thing that does, or a hazard.
print-ticket = Download the job ticket
print-number-unread = “{ $text }” is not a number of millimetres.

## The job ticket: what the print shop has to know, one page

ticket-title = Job ticket
ticket-sheet = Sheet
ticket-files = Files
ticket-file =
    { $pages ->
        [one] { $file }: { $pages } page
       *[other] { $file }: { $pages } pages
    }
ticket-quantity = Quantity
ticket-copies =
    { $copies ->
        [one] { $languages }: { $copies } copy
       *[other] { $languages }: { $copies } copies
    }
ticket-copies-unsaid = { $languages }: number of copies to be agreed
ticket-trim = Finished size
# Width and height in millimetres, then the same in inches.
ticket-size = { $width } × { $height } mm ({ $across } × { $down } in)
ticket-bleed = Bleed, on every side
ticket-mm = { $length } mm
ticket-corners = Corners
ticket-round = Cut as a circle
ticket-radius = Rounded, radius { $radius } mm
ticket-square = Square
ticket-die = Die’s line in the spot color “Dieline”, overprinting: do not print it
ticket-folds = Folds
ticket-fold = Across, { $at } mm below the upper edge of the flat sheet
ticket-fold-order = The address panel is outside. Its lower edge is a fold; the piece opens at its upper edge and is tabbed there.
ticket-colours = Colors
ticket-colours-one = 4/0: cyan, magenta, yellow, black on one side
ticket-colours-two = 4/4: cyan, magenta, yellow, black on both sides
ticket-colours-note = PDF/X-4; black text overprints; total ink at most { $limit } %
ticket-stock = Stock
ticket-stock-unsaid = To be agreed
ticket-thickness = Thickness { $thickness } mm
ticket-thickness-unsaid = Thickness to be confirmed
ticket-press = Press sheet
ticket-work-and-turn = Work and turn: the back is on the same plate
ticket-mark = Printer’s mark
ticket-mark-room = Room of 19 × 6 mm is kept in the small print
ticket-edition = Edition
ticket-date = Date of the job
ticket-contact = Questions to
