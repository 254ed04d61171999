### The coordinator's screens. Short, clear words; trade words where coordinators use them.

## Around every screen

desk-title = Guide desk
desk-title-of = { $program }: guide desk
navigation = Parts of the program
undo = Undo
redo = Redo
close = Close
tab-files = Files
tab-program = Program
tab-streams = Streams
tab-zones = Zones
tab-channels = Channels
tab-sites = Sites
tab-rules = Rules
tab-items = Items
tab-texts = Texts
tab-print = Print
start-problem-unreachable = The server did not answer. Check the connection and load the page again.
start-problem-missing = A file of this app is missing on the server. Ask whoever published it to publish it again.
start-problem-broken = A file of this app arrived damaged. Load the page again; if it stays so, publish the app again.
recover-title = Something went wrong on this page
recover-text = Your program was saved as you worked. Download it to be safe, then load the page again to go on.
recover-nothing = There is no saved program in this browser.
recover-reload = Load again
recover-download = Download my program
panels = Findings, changes and trial

## Saving. $time is a day with a time

save-nothing = Nothing open
save-saved = Saved on this device
save-waiting = Saving…
save-failed = Not saved
save-again = Try to save again
save-problem-full = There is no room left on this device, so your changes are not being saved. Export the program file now, then make room.
save-problem-forbidden = This browser does not let the page store anything, so your changes are not being saved. Export the program file before you close this window.
save-problem-newer = Another window has saved this program since. Your version was not written over it.
day-and-time = { $day }, { $time }

## Drafts and files. $name, $copy and $program are names of drafts or files

drafts-title = Programs on this device
drafts-none = There are none yet. Open the demo, begin a new program, or import a file.
draft-saved = Saved { $time }
draft-remove-sure = Really remove it?
draft-second-version = { $name } (second version)
draft-diverged = “{ $name }” was changed in another window too. Both are kept: the other version is now “{ $copy }”.
open-demo = Open the demo
open-demo-hint = Quillmere County, a made-up place with everything filled in
new-program = New program
new-program-hint = Begin with nothing but the built-in safety rules
import-file = Import a program file
import-file-hint = It opens beside your other programs and replaces none
export-file = Export the program file
export-file-hint = One file with everything, to keep or to pass on
import-refused = “{ $name }” cannot be opened
import-unchanged = Your programs are as they were.
import-original = Download the file as it was

## Why a program file cannot be read

load-too-large = The file is { $megabytes } MB; program files are at most { $limit } MB. Check that it is the right file.
load-truncated = The file ends too early, at line { $line }. It was probably cut off on its way: copy or download it again.
load-not-json = The file cannot be read from line { $line }, column { $column } on. If it was edited by hand, correct that place; otherwise export it again.
load-other-format = This is not a program file (it says “{ $found }”). Choose a file that was exported here.
load-newer = The file is of version { $found }; this app knows versions up to { $known }. Use a newer edition of the app.
load-shape = The value at “{ $path }” is not of the kind expected: { $detail }. Correct it there and import the file again.
load-too-deep = A condition of the rule “{ $rule }” is nested more than { $limit } deep. Split it into several rules.

## Lists and fields in general

list-filter = Filter
list-add = Add
list-add-one = Add one more
list-new-name = Name of the new one
list-remove = Remove
list-up = Move up
list-choose = Choose one from the list, or add one.
choice-none = None
field-month = Month
field-day = Day
measure-unreadable = “{ $stated }” cannot be read. Write a number with its unit, such as 2 in, 1 gal, 100 lb.
translations = In the other languages
field-name = Name
field-kind = Kind
field-note = Note for residents
field-phone = Telephone
field-email = E-mail

## The program's own fields

program-basics = This program
field-program-name = Name of the guide
field-program-id = Short id, for files and addresses
field-edition = Edition
field-edition-from = Valid from
field-guide-url = Address of the published guide
field-source-language = Language the texts are written in first
field-languages = Languages it is published in
program-contact = Whom to ask
field-contact-name = Name of the office
field-return-address = Return address on mailers
program-silence = When no rule names a case
field-silence = What silence means
silence-undecided = Not decided yet (cannot be published)
silence-ask = Open list: the answer is “not on the list, ask”
silence-closed = Closed list: anything not named is refused
program-unknown = When a resident cannot tell
program-unknown-hint = What to take in place of the unknown. Where nothing is set, the careful value is taken.
unknown-add = Set another one
program-counts-as = What counts as something else
program-counts-as-hint = Every rule then treats the one like the other: frosted glass as clear, say.
counts-as-add = Fact
field-these = These
field-count-as = Count as
program-hazards = Where hazards go
program-hazards-hint = Every class needs a channel that takes it safely, and a person who approved it. Hazards never go to a cart or bin.
field-hazard-channel = Goes to
field-approved-by = Approved by
program-plant = Sorting plant
field-plant-name = Name of the plant
field-machine-name = Machine
field-machine-limit = What it cannot handle
machine-add = Add a machine
program-print = For printed sheets
field-short-url = Short address beside the QR code
field-indicia = Postage indicia, line by line
field-statement = Statement on recycled paper or the like

## Streams and containers

containers-title = Containers
container-add = Add a container
container-remove = Remove this container
field-container-name = What residents call it
field-colour = Color
field-capacity = Capacity, with its unit
field-container-zones = Only in these zones
field-container-dwellings = Only at these kinds of home
field-set-out = When and how to set it out
field-container-rules = Rules about this container
field-container-rules-hint = They hold whatever is put into it. Residents see them with every answer that names it.
field-container-rule-add = A rule about
field-container-rule = In your own words, in place of the standard sentence
field-limit = Limit, with its unit
field-share = Limit, such as 10%
limit-missing = Enter the limit, or write the whole rule in your own words.
residents-read = Residents read: { $text }
container-rule-kind-lid-closed = Lid shut
container-rule-kind-weight = Weight when full
container-rule-kind-distance = Room left around it
container-rule-kind-side-waste = Things beside it or on top
container-rule-kind-share-of-load = How much of a load may not belong
container-rule-kind-liners = Lining it with a bag
container-rule-kind-sacks = Sacks that are handed out
container-rule-kind-registration = Signing up first
container-rule-kind-refusals = When it is left standing
stream-kind-recycling = Recycling
stream-kind-organics = Organics
stream-kind-refuse = Trash
stream-kind-glass = Glass
stream-kind-paper = Paper
stream-kind-film = Plastic film
container-kind-cart = Cart with wheels
container-kind-bin = Bin
container-kind-bag = Bag
container-kind-box = Box
container-kind-shared-cart = Shared cart of a building
container-kind-dumpster = Dumpster

## Zones

field-dwelling = Kind of home
field-households = Number of homes
field-zone-streams = Streams collected here
field-centre = Middle of the zone: latitude, longitude

## Channels and sites

field-fee = Fee, in words
field-booking = Has to be booked
field-proof = Proof of address is needed
field-permit = A permit is needed
field-voucher = A voucher is needed
field-allowance = How much or how often, in words
field-vehicles = Which vehicles may come, in words
field-safe-for = Takes these hazards safely
channel-sites =
    { $count ->
        [0] No site takes it yet.
        [one] Its site: { $names }
       *[other] Its sites: { $names }
    }
channel-kind-drop-off = Drop-off center
channel-kind-store-take-back = Store take-back
channel-kind-hazardous-waste = Household hazardous waste facility
channel-kind-event = Collection event
channel-kind-bulky-pickup = Bulky item pickup
channel-kind-deposit-return = Deposit return
channel-kind-mail-back = Mail-back
channel-kind-reuse = Reuse and repair
channel-kind-medicine-take-back = Medicine take-back
channel-kind-sharps-take-back = Needle take-back
channel-kind-police = Police
channel-kind-specialist = Specialist firm
channel-kind-dealer = Maker or dealer
channel-kind-health-office = Health office
channel-kind-authority = Authority to telephone
field-site-channels = Takes things of these channels
field-accepts = Takes only these of their things
field-refuses = Does not take these of their things
field-site-vehicles = Which vehicles may come here, if not as for its channels
field-address = Address
field-position = Position: latitude, longitude
field-hours = Opening hours
field-hours-hint = Written as in open map data: Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
hours-unreadable = These hours cannot be read: { $detail }

## Rules and their conditions

field-tier = Tier
field-verdict = Verdict
rule-adds-steps = None: it only adds steps
field-stream = Stream
field-channel = Channel
field-prepare = Preparation, in order
field-reason = Reason
field-machine = Machine that decides it
field-residents = Words for residents
field-sorters = Words for sorters
field-contract = Words of the contract
provenance-title = Where it comes from
field-decided-by = Decided by
field-source = Source
field-confirmed = Last confirmed on
field-ask-again = Ask again on
rule-more = Dates, exceptions and approval
field-also = Also taken by
field-overrides = Goes before these rules of its tier
field-temporary = A temporary order
field-from = From
field-until = Until
field-season = Only in one part of every year
field-season-from = First day of the season
field-season-until = Last day of the season
season-says = Every year from { $from } to { $until }
field-banned-from = Banned by law from
acknowledgement-title = Exception to a built-in safety rule
acknowledgement-hint = Only a named person may allow it, with a reason. It is shown as a warning at every check.
field-acknowledged-by = Allowed by
field-acknowledged-on = On
field-acknowledged-because = Because
condition-title = When
condition-always = Always: the rule has no condition.
condition-begin = Add a condition
condition-kind = How the parts count
condition-all = All of these
condition-any = Any of these
condition-not = Not this
condition-fact = Fact
condition-is = is one of
condition-add-fact = Add a fact
condition-add-group = Add a group
condition-remove = Remove this part of the condition
bound-at-least = at least
bound-over = more than
bound-at-most = at most
bound-under = less than
bound-value = Measure with its unit
bound-day = Day
bound-like = Everyday comparison
bound-per = Counted

## Items. $item is an item's name

items-all = All
items-answer = Answer
items-asks = Asks a question
items-ask = Try it
items-ask-name = Try it: { $item }
items-rule = Go to the rule
items-decide = Decide
items-decide-name = Decide: { $item }
items-count =
    { $count ->
        [one] { $count } item
       *[other] { $count } items
    }

## Texts and their translations

texts-language = Language
texts-state = State
text-state-missing = Missing
text-state-unreviewed = Not checked
text-state-reviewed = Checked
text-state-outdated = Out of date
# $whose is a thing's name or the name of a screen, $what one of its fields.
text-step = Preparation step
text-label = { $whose }: { $what }
texts-reviewer = Your name, for signing off
texts-reviewer-needed = Enter your name first: a check is signed.
texts-sign-off = I have checked this
texts-count = { $done } of { $all } checked

## How far each language has been checked

review-title = State of each language
# $state is one of the three below, or that nobody has checked them.
review-screens = Words of the screens: { $state }
review-source = the language the others are made from
# $name is a person, $date a day.
review-by = checked by { $name } on { $date }
review-outdated = checked by { $name } on { $date }, but the English has changed since
# How many of the program's own texts.
review-texts = Your own texts: { $done } of { $all } checked
# $names is a list of people.
review-names = Signed by { $names }

## What changed, and trying the guide

ask-title = Ask as a resident
changes-title = What your edits changed
changes-count =
    { $count ->
        [0] No answer is another one now.
        [one] { $count } answer is another one now.
       *[other] { $count } answers are other ones now.
    }
changes-absent = Not in the guide
# An answer whose verdict and place stayed the same.
changes-details = The place is the same; how to get it ready, or why, is not.
changes-mark = Compare from here on

## Findings. $item is an item's name, $answers a list such as "Wet: dry"

findings-title = Findings
findings-count = Errors: { $errors } · Warnings: { $warnings } · Notices: { $notices }
findings-more =
    { $count ->
        [one] and { $count } more
       *[other] and { $count } more
    }
severity-error = Error
severity-warning = Warning
severity-notice = Notice
severity-pass = Right
witness = For example: { $item }, when { $answers }
witness-item = For example: { $item }

## What a finding says, and below it what to do. Values are ids and texts of the program

finding-uncovered-case = No rule decides this case.
    .hint = Write a rule for it, or say on the program screen what silence means.
finding-conflicting-rules = Rules of one tier send the same thing to different places: { $rules }.
    .hint = Change the condition of one of them, or let one go before the other.
finding-hazard-not-safe =
    { $problem ->
        [no-channel] The hazard “{ $class }” has no channel.
        [unknown-channel] The hazard “{ $class }” goes to a channel that does not exist.
        [channel-does-not-take-it] The hazard “{ $class }” goes to a channel that is not marked safe for it.
       *[rule] The rule “{ $id }” sends the hazard “{ $class }” to a place that is not safe for it.
    }
    .hint = Choose a channel that takes it safely. Hazards never go to a cart or bin.
finding-hazard-acknowledged = { $by } has allowed an exception to a built-in safety rule: “{ $id }”.
    .hint = Check that local law and the site allow it, and that the reason still holds.
finding-rule-never-applies = The rule “{ $id }” never decides anything.
    .hint = Rules before it decide all its cases, or no item fits its condition. Change it or remove it.
finding-not-listed = Some cases of this item are answered “not on the list, ask”.
    .hint = That is allowed. Write a rule if you know the answer.
finding-missing-provenance = Nobody can see where the decision of the rule “{ $id }” comes from. Missing: { $missing }.
    .hint = Enter who decided, from what source, and when it was last confirmed with the plant.
finding-missing-translation =
    { $state ->
        [unreviewed] Texts in “{ $language }” that nobody has checked: { $count }. The first is “{ $first }”.
        [outdated] Texts in “{ $language }” whose source has changed since: { $count }. The first is “{ $first }”.
       *[missing] Texts missing in “{ $language }”: { $count }. The first is “{ $first }”.
    }
    .hint = Open the texts screen and filter by language and state.
finding-broken-condition =
    { $problem ->
        [unknown-fact] There is no fact “{ $fact }”.
        [no-values] The fact “{ $fact }” is compared with nothing.
        [no-number] “{ $value }” for “{ $fact }” has no number.
        [no-unit] “{ $value }” for “{ $fact }” has no unit.
        [unknown-unit] The unit of “{ $value }” for “{ $fact }” is not known.
        [wrong-dimension] “{ $value }” does not measure “{ $fact }”.
        [negative] “{ $value }” for “{ $fact }” is less than nothing.
        [too-large] “{ $value }” for “{ $fact }” is too large to be true.
        [unknown-part] There is no part “{ $value }”.
        [range-reversed] The range “{ $value }” of “{ $fact }” runs backwards.
       *[unknown-value] “{ $value }” is not a value of “{ $fact }”.
    }
    .hint = Choose from the list. Write a measure with its unit, such as 2 in, 1 gal or 10 lb.
finding-broken-item =
    { $problem ->
        [unknown-fact] There is no fact “{ $fact }”.
        [no-values] The fact “{ $fact }” is compared with nothing.
        [no-number] “{ $value }” for “{ $fact }” has no number.
        [no-unit] “{ $value }” for “{ $fact }” has no unit.
        [unknown-unit] The unit of “{ $value }” for “{ $fact }” is not known.
        [wrong-dimension] “{ $value }” does not measure “{ $fact }”.
        [negative] “{ $value }” for “{ $fact }” is less than nothing.
        [too-large] “{ $value }” for “{ $fact }” is too large to be true.
        [unknown-part] There is no part “{ $value }”.
        [no-such-sides] The sides that are stated leave no size it could have: the longest has to be the longest.
        [no-range] The range of “{ $fact }” has no beginning or no end.
        [range-reversed] The range “{ $value }” of “{ $fact }” runs backwards.
       *[unknown-value] “{ $value }” is not a value of “{ $fact }”.
    }
    .hint = Choose from the list. Write a measure with its unit, such as 2 in, 1 gal or 10 lb.
finding-broken-reference =
    { $kind ->
        [stream] The stream “{ $target }” does not exist.
        [channel] The channel “{ $target }” does not exist.
        [zone] The zone “{ $target }” does not exist.
        [step] The preparation step “{ $target }” does not exist.
        [reason] The reason “{ $target }” does not exist.
        [machine] The machine “{ $target }” does not exist.
        [item] The item “{ $target }” does not exist.
        [rule-of-tier] The rule “{ $target }” is of another tier, so it cannot be gone before.
       *[rule] “{ $target }” does not exist.
    }
    .hint = Choose another one, or add what is missing. An empty name means that nothing has been chosen yet.
finding-circular-override = These rules go before each other in a circle: { $rules }.
    .hint = Remove one of them from the list “goes before”.
finding-destination-not-offered = The rule “{ $id }” sends things to the stream “{ $stream }”, which is not collected in the zone “{ $zone }”.
    .hint = Add the stream to the zone, or write another rule for that zone.
finding-duplicate-id =
    { $times ->
        [0] Something here has no id.
        [one] The id “{ $id }” is used { $times } time.
       *[other] The id “{ $id }” is used { $times } times.
    }
    .hint = Give each its own id. Links, labels and translations hang on it.
finding-printed-line-untrue =
    { $span ->
        [from] The printed line “{ $line }” is untrue from { $since }.
        [until] The printed line “{ $line }” is untrue until { $until }.
        [between] The printed line “{ $line }” is untrue from { $since } until { $until }.
       *[always] The printed line “{ $line }” is untrue in this edition.
    }
    .hint = Print the sheet anew or cover the line. When the sheet is no longer out there, enter the day it was withdrawn.
finding-suspicious-text =
    { $problem ->
        [markup] The text “{ $key }” ({ $language }) holds markup: { $shown }
        [direction] The text “{ $key }” ({ $language }) holds a character that turns the direction of writing: { $shown }
       *[control] The text “{ $key }” ({ $language }) holds a character that cannot be seen: { $shown }
    }
    .hint = Texts are plain. Delete it and type the words again.
finding-too-complex = So many things are open about this item that its cases cannot all be looked at (open facts: { $count }).
    .hint = Settle some of its facts, or split it into several items.
finding-too-many-thresholds = The rules name so many thresholds that the cases of { $count } items cannot all be looked at. Most are of “{ $fact }”: { $thresholds }.
    .hint = Let rules share thresholds, and take out rules whose days are over.
finding-unreadable-hours = The opening hours “{ $hours }” cannot be read: { $problem }
    .hint = Write them like this: Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
finding-unusable-setting = “{ $value }” cannot be used here.
    .hint = Choose a value from the list, or correct it: a color is written #2a7f4f, a position as latitude and longitude, an address begins with https://

## Comparing with a file. $name is a file's name

compare-file-title = Compare with another file
compare-file = Choose an earlier edition, or a neighbor's program
compare-file-name = Compared with “{ $name }”.
compare-newer = The file is the newer of the two
compare-notice = Notice of what changes
compare-copy = Copy the notice
compare-copied = Copied.
compare-not-copied = The browser would not copy. Select the text and copy it.
compare-download = Download the notice

## The register of printed sheets. $id is a sheet's id, $day a date

printed-title = What has been printed
printed-copies = Number of copies
printed-note = Note it as printed
printed-entry =
    { $copies ->
        [0] { $id }, { $day }
        [one] { $id }, { $day }, { $copies } copy
       *[other] { $id }, { $day }, { $copies } copies
    }
printed-withdrawn = withdrawn { $day }
printed-withdraw = No longer out there
printed-still-out = It is still out there
finding-question-never-matters =
    { $problem ->
        [unknown] What counts when nobody can tell “{ $fact }” is set, but no item's answer ever needs it.
       *[open] This item leaves “{ $fact }” open, but no answer about it depends on that.
    }
    .hint = Nobody is asked for it. Leave it, or write the rule that needs it.
finding-steps-contradict = One answer asks for “{ $one }” and for “{ $other }”, which cannot both be done. Rules: { $rules }.
    .hint = Take one of the two steps out of its rule, or change a condition so that only one of the rules holds.
finding-preparation-contradicts =
    { $problem ->
        [none] Whoever follows the step “{ $step }” of the rule “{ $id }” makes “{ $fact }” to be “{ $value }”, and then no rule sends it there.
       *[rule] Whoever follows the step “{ $step }” of the rule “{ $id }” makes “{ $fact }” to be “{ $value }”, and then the rule “{ $other }” sends it elsewhere.
    }
    .hint = Take the step out of the rule, or let the rule hold for what the step leaves as well.
finding-site-never-used =
    { $problem ->
        [item] The site “{ $id }” is said to take “{ $item }”, which is never sent to a channel of this site.
       *[site] Nothing is ever sent to the site “{ $id }”.
    }
    .hint = Write a rule that sends things to one of its channels, give it another channel, or take it off the list.
finding-no-site-takes =
    { $problem ->
        [refused] “{ $item }” is sent to the channel “{ $id }”, but none of its sites takes it.
       *[none] Things such as “{ $item }” are sent to the channel “{ $id }”, which has no site to go to.
    }
    .hint = Add a site, let one of the sites take it, or send it to another channel.
finding-item-without-name = The item “{ $id }” has no name to show. Languages without one: { $languages }.
    .hint = Enter its name in the language the program is written in.
finding-name-twice = The items “{ $id }” and “{ $other }” are both called “{ $name }” in “{ $language }”.
    .hint = Give one of them a name that tells them apart. Residents choose by name.
finding-banned-destination = “{ $item }” is sent to the stream “{ $stream }”, from which it is banned by law. Rules: { $rules }.
    .hint = Send it to another stream or channel, or correct the ban where it is stated.
finding-impossible-condition =
    { $problem ->
        [fact] The condition of the rule “{ $id }” can never hold: what it asks of “{ $fact }” excludes itself.
       *[parts] The condition of the rule “{ $id }” can never hold: its parts exclude each other.
    }
    .hint = Correct or take out one of the parts. Where either may hold, use “any of these”.
finding-empty-condition =
    { $problem ->
        [any] The condition of the rule “{ $id }” has an empty group “any of these”, which never holds.
       *[all] The condition of the rule “{ $id }” has an empty group “all of these”, which always holds.
    }
    .hint = Add what belongs in the group, or remove the group.
finding-rule-without-condition = The rule “{ $id }” has no condition: it decides everything that no earlier tier decides.
    .hint = Write when it holds. If it is meant for all that is left, put it in the tier “default”.
finding-text-missing-register =
    { $register ->
        [contract] Rules without the words of the contract: { $count }. The first is “{ $first }”.
        [sorters] Rules without words for sorters: { $count }. The first is “{ $first }”.
       *[residents] Rules without words or a reason for residents: { $count }. The first is “{ $first }”.
    }
    .hint = Enter them on the rule's screen, so that all three say the same.
finding-unused-thing =
    { $kind ->
        [stream] No rule sends anything to the stream “{ $id }”.
        [channel] Neither a rule nor a hazard goes to the channel “{ $id }”.
        [step] No rule asks for the step “{ $id }”.
        [zone] Nothing differs in the zone “{ $id }”: no rule, container or stream names it.
       *[machine] No rule names the machine “{ $id }”.
    }
    .hint = Leave it if it will be needed; otherwise remove it.
finding-counts-as-broken =
    { $problem ->
        [unknown-fact] There is no fact “{ $fact }” whose values could count as another.
        [unlisted-fact] “{ $fact }” has no list of values, so that none can count as another.
        [unknown-value] “{ $value }” is not a value of “{ $fact }”.
        [danger] “{ $fact }” is a danger: none of its values ever counts as another.
        [nothing] Nothing is named that counts as “{ $value }” for “{ $fact }”.
        [itself] “{ $value }” of “{ $fact }” counts as itself.
        [twice] “{ $value }” of “{ $fact }” counts as two different values.
        [circle] Values of “{ $fact }” count as each other in a circle, “{ $value }” among them.
       *[chain] “{ $value }” of “{ $fact }” itself counts as another value, so nothing can count as it.
    }
    .hint = Choose values from the list. Each counts as one other value, which counts as itself alone.
finding-season-broken =
    { $problem ->
        [reversed] The last day of the rule “{ $id }” is before its first: { $value }.
       *[not-a-year-day] “{ $value }” is not a day of the year, so the season of the rule “{ $id }” cannot be read.
    }
    .hint = Write month and day, such as 11-01. A season may run over the new year; first and last days with a year may not.
finding-container-rule-broken =
    { $problem ->
        [unknown-kind] “{ $value }” is not a kind of rule for the container “{ $id }”.
        [twice] The container “{ $id }” has two rules of the kind “{ $value }”.
        [limit] The limit “{ $value }” of the container “{ $id }” cannot be read.
       *[unknown-dwelling] “{ $value }” is not a kind of home, so the container “{ $id }” is used at none.
    }
    .hint = Choose from the list, put both texts into one rule, or write a limit with its unit: 100 lb, 3 ft, 10%.
finding-comparison-broken =
    { $problem ->
        [unknown-like] There is no everyday thing “{ $value }” to liken “{ $fact }” to.
        [other-dimension] “{ $value }” says nothing about “{ $fact }”: it stands for another kind of measure.
        [far] “{ $value }” is more than twice as large or as small as the measure given for “{ $fact }”.
       *[unknown-period] “{ $value }” is not something “{ $fact }” can be counted per.
    }
    .hint = Choose one from the list, or leave the comparison out.

## Ways to mend a finding, on buttons and in lists. Values are ids and texts of the program

fix-replace = Put “{ $with }” in place of “{ $value }”
fix-choose = Choose “{ $with }”
fix-remove = Take out “{ $value }”
fix-replace-fact = Compare “{ $with }” in place of “{ $fact }”
fix-replace-value = Put “{ $with }” in place of “{ $value }”
fix-remove-value = Take “{ $value }” out of the condition
fix-replace-item-fact = Put the fact “{ $with }” in place of “{ $fact }”
fix-remove-rule = Remove the rule “{ $rule }”
fix-go-before = Let “{ $rule }” go before { $over }
fix-not-before = Let “{ $rule }” no longer go before “{ $over }”
fix-silence-undecided = Leave open what silence means
fix-silence-ask = Open list: answer what no rule names with “not on the list, ask”
fix-silence-closed = Closed list: refuse what no rule names
fix-answer-yes = Draft a rule: “{ $item }” goes to “{ $stream }”
fix-answer-no = Draft a rule: “{ $item }” is not taken and goes to “{ $stream }”
fix-route = Send the hazard “{ $class }” to the channel “{ $channel }”
fix-send-to = Send what the rule “{ $rule }” is about to the channel “{ $channel }”
fix-collect = Collect “{ $stream }” in the zone “{ $zone }” too
fix-except-zone = Let the rule “{ $rule }” not hold in the zone “{ $zone }”
fix-own-ids = Give new ids: { $with }
fix-remove-twins = Remove the copies that are the same in everything
fix-swap-dates = Swap the first and the last day
fix-drop-from = Drop the first day
fix-drop-until = Drop the last day
fix-drop-season = Drop the season
fix-swap-position = Swap latitude and longitude
fix-add-language = Publish in “{ $language }” too
fix-remove-empty = Remove the empty groups
fix-remove-unused = Remove “{ $id }”
fix-drop-counting = Let nothing count as “{ $value }” for “{ $fact }”
fix-clean-text = Take it out of the text
# What a finding's list of ways is called, and what is said once one has been taken. $fix is one of the lines above.
mend-title = Ways to mend it
mend-done = Done: { $fix }. You can undo it.
mend-gone = Nothing was changed: the program is no longer as it was when this was offered.
