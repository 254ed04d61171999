### The command line: its help, what it says when done, and what it says when something is wrong.
### Commands, options and words in capitals are typed or replaced as they stand: do not translate
### the commands and options. Lines beginning with spaces keep them.

## Help

cli-help =
    lidleaf COMMAND [OPTIONS]

      check PROGRAM          list what is wrong with a program
      answer PROGRAM ITEM    answer one item as a resident would be answered
      print PROGRAM          make a lid label or a postcard as a press PDF
      batch PROGRAM…         make many sheets of many programs at once
      publish [PROGRAM]      write the guide as a folder for any web host
      serve FOLDER           show a published folder at an address of this computer
      compare BEFORE AFTER   list every answer that changes from one program to another
      demo                   write the demo program
      schema                 write the JSON Schema of program files

    lidleaf help COMMAND, or lidleaf COMMAND --help, tells more.

    Exit codes:
      0  done; there may be warnings
      1  the program, or a sheet made from it, has errors; nothing was written
      2  the command was not understood
      3  a file is missing, or is not what it should be
      4  a file could not be written, or an address could not be opened
      5  the item, zone or stream asked for is not there
      6  stopped on request; what was finished is kept
cli-help-check =
    lidleaf check PROGRAM [--catalog FILE] [--fix NUMBER --out FILE]

    Lists every finding of a program: errors first, then warnings and notices, each with an
    example and what to do. Ends with exit code 1 when there are errors.

    Ways to mend a finding are listed with it, each with a number such as 2.1. --fix 2.1 takes
    that way, writes the changed program to the file that --out names, and lists what is found
    in it. The program that was read stays as it was.
cli-help-answer =
    lidleaf answer PROGRAM ITEM [--fact FACT=VALUE]… [--zone ZONE] [--on YYYY-MM-DD]

    Answers one item, by id or by name; the name may be misspelled. When the answer depends on
    something, the next question is shown with the --fact option that answers it. --fact FACT=?
    means that the resident cannot tell. The day is today unless --on names another.
cli-help-print =
    lidleaf print PROGRAM --sheet SHEET [OPTIONS]

      --sheet lid        a label for a cart's lid
      --sheet sticker    a round label with one message
      --sheet sign       a sign at shared containers, read from farther away
      --sheet postcard   a card for the mail, two sides
      --sheet self-mailer  a letter or A4 sheet, folded and mailed
      --sheet handout    a letter or A4 sheet to hand out, one side or two
      --stream STREAM    the stream it is about
      --zone ZONE        for one service zone only
      --languages en,es  in these languages, one to four
      --out PLACE        a folder, or the name of a file
      --date YYYY-MM-DD  the date of the job
      --register         enter the sheet into the program file's register of printed sheets
      --copies N         how many copies, for the register and the job ticket; or en=400,es=200
      --printed YYYY-MM-DD  the day of printing, for the register; else the date of the job
      --size SIZE        its finished size: 8x12in, a4, "200 x 300 mm", or a diameter, 115mm
      --corner 6mm       the corners' radius; 0 for square ones
      --fold half        how a self-mailer is folded: half, or thirds
      --item ITEM        the one item a sticker is about; the code opens it
      --distance 2m      how far away it is read; it sets the smallest type
      --qr-level H       the damage the code must bear: M, Q or H
      --die-line         draw the line along which a label is cut, in a spot colour
      --printers-mark    keep room for the printer's own mark
      --stock NAME       what it is printed on, for the job ticket
      --thickness 0.3mm  how thick that is; the post wants to know
      --no-places        leave the list of places out
      --words 6          the most words of a line, in every language of the sheet
      --press 13x19in    several on a press sheet: 11x17in, 12x18in, 13x19in, sra3, or typed
      --gutter 8mm       the room between them
      --up N             how many at most
      --work-and-turn    front and back on one plate
      --alone            a file for each language, not one for all
      --no-ticket        leave the job ticket out
      --for press        a file for a print shop (PDF/X-4); this is what is made unless asked otherwise
      --for web          a file to read on a screen and aloud (PDF/UA-1), without marks and bleed
      --profile FILE     the CMYK output profile (.icc) that the print shop sent
      --ink-limit N      the most ink its paper takes, in percent: 300 unless named

    Makes a sheet in one to four languages as a PDF for the press, with a job ticket as a file of
    its own, and lists what the preflight found. With an error nothing is written. The same program
    and date make the same bytes. The stream is the recycling stream, the languages the first three
    of the program, the folder the current one, and the date today, unless they are named.
cli-help-batch =
    lidleaf batch PROGRAM… --sheet SHEETS --out FOLDER [OPTIONS]

      --sheet lid,postcard   these sheets, or all
      --stream STREAMS       the streams they are about, or all
      --zone ZONE            for one service zone only
      --languages SET        a set of languages; give it as often as there are sets
          en                 in one language
          en,es              in these together
          each               in each language of a program by itself
          together           in the first three languages of a program on one sheet
      --out FOLDER           the folder to fill; each program gets a folder of its own in it
      --date YYYY-MM-DD      the date of the jobs
      --hands N              how many sheets are made at once; else as many as there are cores
      --again                make what is made already as well
      --for press            files for a print shop (PDF/X-4), as without --for
      --for web              files to read on a screen and aloud (PDF/UA-1)
      --profile, --ink-limit the print shop's condition, as with print
      --tickets              a job ticket beside each press file
      --copies N             how many copies, for the job tickets; or en=400,es=200
      --alone                a sheet for each language of a set
      --size, --press …      how they are made, as with print: all its options but --corner

    Makes every sheet asked for of every program. The folder keeps notes of what each file was
    made from, in batch.json: a second run makes only what is missing or would be different. The
    date is part of that; without --date it is today's, and everything is made anew tomorrow.

    A sheet that fails does not stop the others; the end tells why each failed and what to do.
    Every file is written whole or not at all. Ctrl-C ends in good order: sheets begun are
    finished, and the same command goes on later. Ends with exit code 1 when something failed.
    As JSON: “lidleaf-batch-report” (made, skipped, failed with why and next).
cli-help-publish =
    lidleaf publish [PROGRAM] --out FOLDER [--app FOLDER]

    Writes the guide and the app as a folder of files that any web host can serve, from its root
    or from a folder of it. A program with errors is refused. What was published in the folder
    before stays until the new edition is whole. Without a program it is the demo program; the app
    is taken from dist/app unless --app names another folder.
cli-help-serve =
    lidleaf serve FOLDER [--port N] [--address ADDRESS]

    Shows a published folder at http://127.0.0.1:8080/, or at the port and address named, until
    it is stopped. Port 0 takes any free port. It is for looking at a guide, not for the public.
cli-help-compare =
    lidleaf compare BEFORE AFTER [--on YYYY-MM-DD] [--notice] [--language TAG] [--out FILE]
    lidleaf compare PROGRAM PROGRAM PROGRAM… [--out FILE]

      --on YYYY-MM-DD  as both stand on that day, instead of on all days
      --notice         a change notice for a letter, grouped and with the contact
      --language TAG   the language it is written in
      --out FILE       a file; one that ends in .md gets Markdown's marks

    Two programs: lists every item whose verdict, destination, preparation, reason or caution
    differs, exactly under which answers and from which day; then the lines of printed sheets
    in the register that become untrue. Three to fifty programs: what is true in all of them,
    for each other item who differs, and advice that contradicts itself.

    As JSON: “lidleaf-changes” (changes, asked, untrue), “lidleaf-notice” (groups, untrue, text)
    or “lidleaf-regional” (programs, agreed, differing, contradictory). In each, “when” is a list
    of alternatives, each a list of facts with the values that all hold.
cli-help-schema =
    lidleaf schema [--out FILE]

    Writes the JSON Schema of program files.
cli-help-demo =
    lidleaf demo [--town TOWN] [--out FILE]

    Writes the demo program, a wholly invented county, to begin from; with --town one of its
    member towns: thrushwick, kettlebrae, larkenby or dunnockford.
cli-help-common =
    Every command also takes:
      --lang TAG      language of messages and answers (en, es, ar …)
      --json          the result as JSON
      --catalog FILE  another catalog than the one that ships, where a program is read
      --help          this text
      --version       the version

## Done

# $message says what is wrong.
cli-error = Error: { $message }
# A file was written. $file is its path.
cli-written = Written: { $file }
# $url is an address, $folder a folder's path. Printed when the server answers.
cli-serving = Serving { $folder } at { $url } (Ctrl-C stops it)
# $folder is the folder's path, $files is a number, $size is "640 kB", $edition is the edition's label.
cli-published =
    { $files ->
        [one] Published edition { $edition } in { $folder }: { $files } file, { $size }.
       *[other] Published edition { $edition } in { $folder }: { $files } files, { $size }.
    }

## Findings

cli-severity-error = error
cli-severity-warning = warning
cli-severity-notice = notice
# One finding. $severity and $message are texts, $place is where it is ("rule glass-jars").
cli-finding = { $severity }: { $message }
# Where a finding is: $kind is a word of program files (rule, stream, site), $id and $field are ids.
cli-place = at { $kind } “{ $id }”
cli-place-field = at { $kind } “{ $id }”, field “{ $field }”
cli-place-program = at field “{ $field }” of the program
# An example that shows the finding. $item is an item's name, $answers a list such as "Resin mark: 5".
cli-witness = for example { $item }
cli-witness-answers = for example { $item } ({ $answers })
# What to do. $hint is a sentence.
cli-hint = what to do: { $hint }
# A way to mend a finding. $number is what --fix takes ("2.1"), $fix says what is done.
cli-mend = to mend it ({ $number }): { $fix }
cli-mended = Done: { $fix }
# A part of an item: "Jar, its lid".
cli-check-clean = No findings: the program can be published.
# Numbers of findings, each by itself.
cli-count-errors =
    { $count ->
        [one] { $count } error
       *[other] { $count } errors
    }
cli-count-warnings =
    { $count ->
        [one] { $count } warning
       *[other] { $count } warnings
    }
cli-count-notices =
    { $count ->
        [one] { $count } notice
       *[other] { $count } notices
    }
# $counts is a list of the numbers above.
cli-check-publishable = { $counts }. The program can be published.
cli-check-errors = { $counts }. The program cannot be published until the errors are corrected.

## Answers

# The name of what is answered is the heading. $day is a date.
cli-answer-day = On { $day }
cli-answer-where = Where: { $place }
cli-answer-also = Also taken at: { $places }
cli-answer-prepare = How: { $steps }
cli-answer-why = Why: { $reason }
cli-answer-caution = Caution: { $caution }
cli-answer-rules = Decided by: { $rules }
cli-answer-temporary = A temporary order is in force.
cli-answer-site = Nearest place: { $site }, { $address }
cli-answer-assumed = Assumed, because it was not known: { $facts }
# Shown before a question, with the options that answer it below.
cli-question-option = { $option } — { $value }
cli-question-cannot-tell = I can't tell

## Sheets

# A line that had no room for all its conditions. $item is a name, $percent a share.
cli-sheet-shortened = shortened line: “{ $item }” alone leads to the right place in { $percent } of cases
cli-sheet-left-out = left out for lack of room: { $items }
cli-sheet-hazards-in-brief = no room for the places that take hazards; the sheet's code and telephone number lead there
cli-sheet-refused-in-brief = no room for where things go that stay out; the sheet's code and telephone number lead there
# A sheet was entered into the register of a program file.
cli-registered = Noted in the register of { $file } as “{ $id }”.
# The preflight's verdict before the file is written.
cli-preflight-pass = Preflight: nothing to correct.
cli-preflight-warnings =
    { $count ->
        [one] Preflight: { $count } warning.
       *[other] Preflight: { $count } warnings.
    }
cli-preflight-errors =
    { $count ->
        [one] Preflight: { $count } error. No file was written.
       *[other] Preflight: { $count } errors. No file was written.
    }

## Many sheets at once

# One line of progress: $done of $of sheets, $outcome is one of the three words below, $file a path.
cli-batch-progress = [{ $done }/{ $of }] { $outcome }: { $file }
cli-batch-made = made
cli-batch-kept = unchanged
cli-batch-failed = failed
# At the end, before the reasons. $what is the path of a sheet or of a program.
cli-batch-failed-one = Failed: { $what }
cli-batch-summary = { $folder }: { $made } made, { $kept } unchanged, { $failed } failed, from { $programs ->
        [one] { $programs } program.
       *[other] { $programs } programs.
    }
cli-batch-warned =
    { $count ->
        [one] { $count } sheet made has warnings: lidleaf print shows them.
       *[other] { $count } sheets made have warnings: lidleaf print shows them.
    }
cli-batch-stopped = Stopped before everything was done. The same command goes on from here.
cli-batch-notes-lost = The notes in batch.json could not be used, so everything was made anew.
cli-batch-next-preflight = Correct the program, or ask for fewer languages on this sheet, and run the same command again.
cli-batch-crashed = The sheet could not be made because of a mistake in this program.
cli-batch-next-crashed = Keep the message above and the program file, and report both.
cli-batch-program-errors = The program { $file } has errors ({ $count }), and no sheet was made of it.
    .hint = lidleaf check lists them and what to do.
cli-batch-same-id = These files have the same id, “{ $id }”, and their sheets would have the same names: { $files }.
    .hint = Print them into different folders.
cli-batch-busy = Another run is filling the folder { $file }.
    .hint = Wait until it has finished, or name another folder with --out.
cli-batch-no-shop = The fonts or the press profile that come with the program cannot be used: { $detail }
    .hint = Install the program again.

## Comparing

cli-compare-same = Every item is answered alike in both programs.
cli-compare-count =
    { $count ->
        [one] { $count } answer changes.
       *[other] { $count } answers change.
    }
cli-compare-share = { $percent } of cases

## Commands not understood. Each says what to type instead.

cli-usage-command = There is no command “{ $command }”.
    .hint = lidleaf --help lists the commands.
cli-usage-option = The option { $option } is not one of this command.
    .hint = lidleaf help COMMAND lists its options.
cli-usage-word = “{ $word }” is one word too many.
    .hint = Put names that contain spaces in quotation marks.
cli-usage-not-text = “{ $word }” is not readable text.
    .hint = Type the option's value in UTF-8.
cli-usage-needs-value = The option { $option } needs a value after it.
    .hint = lidleaf help COMMAND shows what it takes.
cli-usage-no-value = The option { $option } takes no value.
    .hint = Leave out the equals sign and what follows it.
cli-usage-needs-option = The option { $option } is missing.
    .hint = lidleaf help COMMAND shows what it takes.
cli-usage-needs-program = The program file is missing.
    .hint = Name it after the command: lidleaf check program.json
cli-usage-needs-item = A program file and an item are needed.
    .hint = For example: lidleaf answer program.json "pizza box"
cli-usage-needs-two = Two program files are needed, the one before and the one after.
    .hint = For example: lidleaf compare 2026.json 2027.json
cli-usage-needs-folder = The folder to serve is missing.
    .hint = For example: lidleaf serve dist/site
cli-usage-fact = “{ $word }” is not a fact and its value.
    .hint = Write them with an equals sign: --fact resin=1
cli-usage-date = “{ $word }” is not a day.
    .hint = Write year, month and day: 2027-01-31
cli-usage-copies = “{ $word }” is not a number of copies.
    .hint = Write a whole number, --copies 400, or one for each language, --copies en=400,es=200
cli-usage-for = “{ $word }” is not a use of a sheet.
    .hint = Write --for press, for a print shop, or --for web, to read on a screen and aloud.
cli-usage-ink-limit = “{ $word }” is not an ink limit.
    .hint = Write the sum of the four plates in percent: --ink-limit 280
cli-usage-press-only = { $option } is about a press, and --for web makes no press file.
    .hint = Leave one of the two out.
cli-usage-hands = “{ $word }” is not a number of sheets made at once.
    .hint = Write a whole number from 1: --hands 4
cli-usage-port = “{ $word }” is not a port.
    .hint = Write a number from 0 to 65535; 0 takes any free port.
cli-usage-address = “{ $word }” is not a network address.
    .hint = Write 127.0.0.1 for this computer alone, 0.0.0.0 for the local network.
cli-usage-language = There are no messages in “{ $word }”.
    .hint = There are: { $known }.
cli-usage-sheet = There is no sheet “{ $word }”.
    .hint = Write --sheet and one of: lid, sticker, sign, postcard, self-mailer, handout.
cli-usage-fix = “{ $word }” is not the number of a way to mend a finding.
    .hint = lidleaf check PROGRAM lists them, such as 2.1.
cli-usage-other = The command could not be read: { $detail }.
    .hint = lidleaf --help lists the commands.

## Files and addresses

cli-file-missing = The file { $file } does not exist.
    .hint = Check the name and the folder.
cli-file-unreadable = The file { $file } could not be read: { $detail }.
    .hint = Check that you may read it, and that no other program holds it.
cli-file-is-folder = { $file } is a folder, not a file.
    .hint = Name the file inside it.
cli-file-not-text = The file { $file } is not text from line { $line } on.
    .hint = Program files are text in UTF-8. It may be another kind of file, or be damaged: take an earlier copy, or export it again.
cli-folder-missing = The folder { $file } does not exist.
    .hint = Publish into it first: lidleaf publish program.json --out FOLDER
cli-folder-unreadable = The folder { $file } could not be read: { $detail }.
    .hint = Check that you may read it.
cli-name-not-text = The name of { $file } is not readable text.
    .hint = Rename it.
cli-cannot-write = { $file } could not be written: { $detail }. What was there before is unchanged.
    .hint = Check that the folder exists, that you may write there, and that there is room.
cli-cannot-serve = The address { $address } could not be opened: { $detail }.
    .hint = Another program may be using it: name another port with --port.

## Publishing

cli-app-missing = There is no built app in { $file }.
    .hint = Build it with cargo xtask run, or name its folder with --app.
cli-app-list-broken = The list of the app's files, { $file }, cannot be read: { $detail }.
    .hint = Build the app again with cargo xtask run.
cli-app-changed = { $file } is not as it was built.
    .hint = Build the app again with cargo xtask run.
cli-out-not-folder = { $file } cannot be published into: it is not a folder with a name.
    .hint = Name a new folder with --out.
cli-out-in-use = The folder { $file } holds other files. Publishing replaces a folder whole, so nothing was changed.
    .hint = Name a new or empty folder with --out.
cli-out-in-app = The folders of the app, { $app }, and of the guide, { $file }, lie inside each other.
    .hint = Name a folder elsewhere with --out.
cli-publish-refused = The program has errors and was not published.
    .hint = Correct the errors listed above; lidleaf check lists them again.

## What is not in the program

cli-unknown-item = There is no item called “{ $item }”.
    .hint = Try another word for it, or its material or shape.
cli-unknown-fact = “{ $fact }” is not a fact.
    .hint = The facts are: { $known }.
cli-unknown-value = “{ $value }” is not a value of the fact “{ $fact }”.
    .hint = It takes: { $known }.
cli-unknown-measure = “{ $value }” is not a measure of the fact “{ $fact }”.
    .hint = Write a number and its unit, such as { $known }.
cli-unknown-fix = Nothing found in this program has a way to mend it numbered { $number }.
    .hint = lidleaf check PROGRAM lists the numbers; they change when the program does.
cli-unknown-zone = There is no service zone “{ $zone }”.
    .hint = The zones are: { $known }.
cli-unknown-town = There is no member town “{ $town }” in the demo.
    .hint = The towns are: { $known }.
cli-unknown-stream = There is no stream “{ $stream }”.
    .hint = The streams are: { $known }.
cli-unknown-sheet-language = The program is not published in “{ $language }”.
    .hint = It is published in: { $known }.
cli-too-many-languages = A sheet takes one to four languages, not { $count }.
    .hint = Name them with --languages en,es
cli-usage-size = “{ $word }” is not a size.
    .hint = Write a name, such as a4 or letter, or width, height and unit: 8x12in
cli-usage-length = “{ $word }” is not a length.
    .hint = Write a number and its unit: 6mm, 0.25in
cli-usage-fold = “{ $word }” is not a way to fold.
    .hint = Write --fold half or --fold thirds.
cli-usage-qr-level = “{ $word }” is not a level of error correction.
    .hint = Write M, Q or H.
cli-usage-words = “{ $word }” is not a number of words.
    .hint = Write a whole number from 1, such as --words 6
cli-usage-up = “{ $word }” is not a number of sheets.
    .hint = Write a whole number: --up 4
cli-unknown-sheet-item = There is no item “{ $item }”.
    .hint = Name it by its id, as lidleaf answer --json shows it.
cli-nothing-against = Nothing says that “{ $item }” stays out.
    .hint = A sticker warns: name a thing that is refused, or a hazard.
