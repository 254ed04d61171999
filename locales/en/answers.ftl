### Ready-made sentences of answers: cautions, steps, reasons; and the names of kinds of things.
### Steps are told to one person, reasons are about "it".

## Cautions, one for each hazard class. They say what is common everywhere and defer to local
## rules; local procedure comes from the program, approved by a named person.

caution-local = Local rules and the staff at the place decide.
caution-battery-lithium = Lithium batteries can start a fire. Never put them, or things that hold them, in any cart or bin. Tape the metal ends of loose batteries, or put each in its own bag. Do not crush or open them. { caution-local }
caution-battery-household = Batteries can leak or start a fire. Never put them in any cart or bin. Cover the ends with tape and keep them apart from each other. { caution-local }
caution-battery-lead-acid = This battery holds acid that burns and lead that poisons. Keep it upright and do not open it. Never put it in any cart or bin. { caution-local }
caution-sharps = Needles and lancets can hurt and infect the people who sort. Never put them loose in any cart or bin. Drop them at once into a strong container that cannot be pierced, with a tight lid. Never reach into a cart for one. { caution-local }
caution-medicine = Keep medicine away from children and pets. Take it to a take-back place first of all. Do not flush it unless its label says so. { caution-local }
caution-pressurised = Can burst when it is crushed, pierced or heated, even when it seems empty. Never put it in any cart or bin. { caution-local }
caution-flammable = Catches fire easily. Keep it closed, away from heat and sparks. Never put it in any cart or bin and never pour it out. { caution-local }
caution-toxic = Poisonous. Keep it in its own container with the label on. Never put it in any cart or bin, never pour it out, never mix it with anything. { caution-local }
caution-corrosive = Burns skin and eyes. Keep it upright in its own container. Never put it in any cart or bin and never mix it with anything. { caution-local }
caution-mercury = Holds mercury, which poisons. Do not break it. Never put it in any cart or bin. If it breaks, keep people away and air the room. { caution-local }
caution-oil = Pollutes water. Keep it in a closed container. Never pour it out, never put it in any cart or bin, never mix it with anything. { caution-local }
caution-explosive = Do not touch it and do not move it. Keep people away and call the authority named here. In danger, call the emergency number. { caution-local }
caution-radioactive = Do not open it and do not break it. Never put it in any cart or bin. Call the authority named here and ask what to do. { caution-local }

## Standard preparation steps

prep-empty = Empty it.
prep-rinse = Rinse it quickly. It does not have to be spotless.
prep-dry = Let it dry.
prep-scrape = Scrape out the food.
prep-flatten = Flatten it.
prep-cut-down = Cut it down so that it fits.
prep-bundle = Tie it in a bundle.
prep-loose = Put it in loose, without a bag.
prep-cap-on = Leave the cap on.
prep-cap-off = Take the cap off.
prep-lid-off = Take the lid off.
prep-lid-inside-can = Put the lid inside the can and pinch the can shut.
prep-label-stays = The label may stay on.
prep-sleeve-off = Peel off the plastic sleeve.
prep-pump-off = Take the pump off.
prep-window-stays = The plastic window may stay.
prep-staples-stay = Staples may stay.
prep-remove-food-liner = Take out the bag or liner.
prep-tear-off-clean-half = Tear off the clean part. Only that part goes here.
prep-crush = Crush it to save room.
prep-do-not-crush = Do not crush it.
prep-do-not-flatten = Do not flatten it.
prep-do-not-nest = Do not put one inside another.
prep-scrunch-foil = Scrunch foil into a ball the size of a fist.
prep-paper-bag = Put it in a paper bag and close it.
prep-clear-bag = Put it in a clear bag.
prep-tape-terminals = Cover the metal ends with tape.
prep-keep-upright = Keep it upright.
prep-puncture-proof = Put it in a strong container that cannot be pierced.
prep-original-container = Leave it in its own container with the label.
prep-do-not-mix = Do not mix it with anything.
prep-do-not-puncture = Do not pierce it.
prep-puncture = Pierce it once nothing comes out of it any more.
prep-wrap-broken = Wrap broken pieces so that nobody gets cut.
prep-remove-battery = Take the battery out if it comes out easily. It goes elsewhere.
prep-wipe-data = Delete your data first.
prep-take-apart = Take it apart: each material goes its own way.
prep-no-bags = Use no bags at all.
prep-no-plastic-bags = Use no plastic bags.
prep-cool-ash = Let ash cool for several days, until it is cold to the core.
prep-double-bag = Put it in two bags, one inside the other.
prep-label-contents = Write on it what is inside.
prep-fits-lid-shut = It must fit with the lid shut.
prep-check-fluid = Make sure that no fluid is left in it.
prep-pair-and-tie = Tie pairs together.
prep-clean-and-usable = Only if it is clean and can still be used.

## Standard reasons

reason-sells = Mills buy it and make new things from it.
reason-composts = It turns into compost.
reason-no-buyer = No one here buys what it is made of, so it cannot be recycled.
reason-too-small = It is so small that it falls through the sorting machines.
reason-too-large = It is too large for the cart or the machines.
reason-tangles = It winds around the machines and stops them.
reason-wraps-screens = Thin plastic wraps around the screens that sort and stops the plant.
reason-bagged-unseen = Nobody can see into a closed bag, so it is thrown away unopened.
reason-soiled = Food and grease spoil the material.
reason-contents-spoil = What is left in it would spoil everything around it.
reason-mixed-materials = Its parts are stuck together and cannot be pulled apart.
reason-wrong-glass = This glass melts in another way than bottles and jars.
reason-breaks-unsafe = It breaks and cuts the people who sort.
reason-not-packaging = Only packaging is taken here.
reason-hazard = It is dangerous in a cart, a truck and the plant.
reason-handled-apart = It is handled apart from other things.
reason-reusable = Somebody can still use it.
reason-store-collects = Stores collect it.
reason-contaminates-compost = It would spoil the compost.
reason-not-named = The list does not name it.
reason-not-listed = No one has decided yet. It is better to ask than to guess.
reason-too-heavy = It is too heavy to lift.
reason-number-is-not-shape = The number alone does not decide: the shape matters too.
reason-black-unseen = The machines that sort cannot see black plastic.
reason-burns = It can start a fire.
reason-special-trip = It has its own pickup or its own place.
reason-law = The law says so.
reason-not-collected = It is not collected here.

## Tiers of rules, in the order in which they are looked at

tier-safety = Safety
tier-plant = Sorting plant
tier-program = This program
tier-material = Material
tier-default = Everything else

## Categories to browse by

category-plastic-packaging = Plastic packaging
category-paper-cardboard = Paper and cardboard
category-glass = Glass
category-metal = Metal
category-food-drink-cartons = Food and drink cartons
category-food-garden = Food and yard
category-film-bags = Bags and film
category-batteries-electronics = Batteries and electronics
category-hazardous = Paint, chemicals, gas
category-medical = Medicine and needles
category-textiles = Clothes and shoes
category-household-goods = Household things
category-building = Building and renovation
category-bathroom = Bathroom

## Parts of an item that may go elsewhere

part-lid = The lid
part-cap = The cap
part-pump = The pump
part-sleeve = The sleeve
part-liner = The liner
part-straw = The straw
part-filter = The filter
part-battery = The battery
part-cord = The cord
part-shade = The lampshade
part-contents = What is in it
part-bag = The bag
part-handle = The handle
part-ring = The ring

## Rules about a container: shown where an answer names it. $limit is a measure.

container-rule-lid-closed = The lid must be shut.
container-rule-weight = No heavier than { $limit } when full.
container-rule-distance = Leave { $limit } free on every side.
container-rule-side-waste = Nothing beside it or on top of it.
container-rule-share-of-load = Things that do not belong may be { $limit } of a load at most.
container-rule-liners = It may be lined with a bag.
container-rule-sacks = Only the sacks that are handed out.
container-rule-registration = Sign up for it first.
container-rule-refusals = With something wrong in it, it is left standing with a note.

## Where the law does not let a thing go. $place is a container or stream.

answer-banned = The law does not allow it in: { $place }.
