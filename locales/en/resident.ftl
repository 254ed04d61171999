### What residents read on their phones. Plain words, short sentences, no jargon.

## Around every screen

# The browser's title. $program is the place's name for its guide.
page-title = { $program }: what goes where
skip = Skip to the main part
back = Back
language-label = Language
zone-label = Your area
zone-none = Choose your area
# Shown with a translation nobody has signed off.
unreviewed = This translation has not been checked by a person yet. If something looks wrong, read it in English.
# $edition is the guide's name of itself, such as "2027, spring".
decided-edition = Guide: { $edition }
privacy = What you look up stays on this phone. Nothing is sent or counted.

## Finding an item

search-label = What do you want to get rid of?
search-placeholder = For example: pizza box
# Read aloud by screen readers while typing.
search-count =
    { $count ->
        [0] Nothing found
        [one] { $count } item found
       *[other] { $count } items found
    }
search-nothing = We found nothing by that name. Try a shorter word. A thing that is not on the list is not always a “no”: ask us.
# $count is how many letters of a very long text were looked at.
search-long = That is long. Only its first { $count } letters were looked at.
home-recent = Looked up lately
home-common = Often looked up
home-categories = Browse by kind

## Questions

cannot-tell = I can't tell
# How many questions may still follow.
questions-left =
    { $count ->
        [one] At most { $count } more question
       *[other] At most { $count } questions in all
    }
ruler-title = Measure it with this screen
# The drawing is of a card, upright: its short side is the one to match.
ruler-card = Hold a bank card upright against the screen. Move the slider until the drawing is as wide as the card.
# The ruler begins with 0.
ruler-use = Now lay the thing on the ruler, one end at 0.
# $measure is a length, $count a number such as 4.5.
ruler-cards = { $measure }: bank cards laid end to end: { $count }

## Answers

verdict-yes = Yes
verdict-no = No
verdict-elsewhere = Not here, it goes elsewhere
verdict-unlisted = Not on the list: ask
verdict-undecided = Not decided yet: ask
# The program says that anything it does not name is refused.
verdict-closed = No: it is not on the list
caution-title = Careful.
prepare-title = How to get it ready
why-title = Why
also-title = Also taken at
temporary-order = A temporary rule applies now. It may change soon.
assumed-title = You could not tell, so we took the careful answer:
# $fact is a property, $value what was assumed: "Lid: on".
assumed-line = { $fact }: { $value }
# $name is the office to ask.
ask-contact = Ask { $name }:
decided-title = Which rule decided
decided-rule = Rule:
decided-acknowledged = A named person has approved this exception to a safety rule.

## Places to take things to

# $count is the number of further places.
site-more =
    { $count ->
        [one] { $count } more place
       *[other] { $count } more places
    }
site-locate = Find the nearest place
site-no-position = This phone did not say where it is.
near-label = Town, area or postal code
# A short button beside the field above.
near-find = Look there
# $place is a town, an area or a site.
near-found = Nearest to { $place }.
# $place is what was typed.
near-unknown = This guide does not know a place “{ $place }”. Try a town, your area or the name of a site.
# $items is a short list of things.
site-also-takes = Also takes: { $items }
# Unfolds the whole list.
site-all-items = Everything it takes
site-booking = Book ahead.
site-proof = Bring proof that you live here.
site-permit = You need a permit.
site-voucher = You need a voucher.
# $container is what residents call it: "blue cart".
container-rules-title = About the { $container }
hours-open = Open now
# $time is a time ("5:00 PM") or a day with a time.
hours-open-until = Open until { $time }
hours-closed = Closed now
hours-closed-until = Closed until { $time }
hours-appointment = Open by appointment only
hours-unknown = Opening hours not known: call first
# $day is a weekday or a date.
hours-day-time = { $day }, { $time }

## Without a network

offline-fetching = Saving the guide so that it works without internet…
offline-ready = Saved. The guide works without internet.
offline-now = You are offline. The guide works from this phone.
offline-incomplete = You are offline and the guide is not fully saved. Some parts may be missing.
offline-failed = The guide could not be saved. It works with internet only. Try again later.
offline-impossible = This browser cannot save the guide. It works with internet only.
update-ready = A newer guide is ready.
update-now = Use it now
# The phone has thrown away what was saved.
offline-lost = The phone has cleared the saved guide. Saving it again…
# The browser lets the page keep nothing at all.
offline-forgetful = This browser lets the guide save nothing. It works with internet only and forgets your language and area.
update-failed = A newer guide did not arrive whole. This one still works, and the phone will try again.

## When something is not there

# $id is what the address named.
unknown-item = There is no item “{ $id }” in this guide. Search for it by name.
unknown-category = There is no group “{ $id }” in this guide. Choose one from the first page.
# $address is what stood in the address bar.
unknown-address = There is no page “{ $address }”. Go to the first page.
# $language is a language tag such as "fr".
unknown-language = This guide is not in “{ $language }” yet. Choose another language.
language-broken = The words in “{ $language }” did not arrive whole. Check your connection and choose the language again.
# $id is what the address named.
unknown-zone = There is no area “{ $id }” in this guide. Choose yours at the foot of the page.
# $date is the date the phone shows.
clock-wrong = This phone says it is { $date }. That cannot be right. What is open now is not known, and rules that change with the season may be wrong here. Set the date.
