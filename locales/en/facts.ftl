### What can be known about a thing: names, questions, answers. Values have to make sense alone,
### as a button and in "You could not tell, so we took: Closure: on".

## Ranges of a measure or of dates, as answers to choose from

range-at-least = at least { $value }
range-over = more than { $value }
range-at-most = at most { $value }
range-under = less than { $value }
range-between = from { $low } to { $high }
range-any = any

## A fact and its value, an item and its part. Examples: "Resin mark: 5", "Glass jar: the lid"

fact-value = { $fact }: { $value }
item-part = { $item }: { $part }

## Who asks, where and when

fact-day = Day
ask-day = On which day?

## Time of year

fact-time-of-year = Time of year
ask-time-of-year = On which day of the year?

## Service zone

fact-zone = Area
ask-zone = Where do you live?
    .hint = Not all areas have the same rules.

## Dwelling

fact-dwelling = Home
ask-dwelling = What kind of home do you live in?
value-dwelling-house = House
value-dwelling-small-building = Small building
value-dwelling-large-building = Large apartment building

## Where it comes from

fact-origin = Comes from
ask-origin = Where does it come from?
value-origin-household = A home
value-origin-business = A business

## Proof of residency

fact-proof = Proof of address
ask-proof = Can you show that you live here?
    .hint = A bill or a license with your address will do.
value-proof-yes = I can show proof
value-proof-no = I have no proof

## Paid extra service

fact-add-on = Paid extra service
ask-add-on = Do you pay for the extra pickup service?
    .hint = It is on your bill if you do.
value-add-on-yes = I pay for it
value-add-on-no = I do not

## Quantity

fact-quantity = How many
ask-quantity = How many do you have?

## What it is

fact-item = Item
ask-item = What is it?

## Category

fact-category = Kind
ask-category = What kind of thing is it?

## Part of a thing

fact-part = Part
ask-part = Which part of it?
value-part-whole = The whole thing
value-part-lid = Lid
value-part-cap = Cap
value-part-pump = Pump
value-part-sleeve = Sleeve
value-part-liner = Liner
value-part-straw = Straw
value-part-filter = Filter
value-part-battery = Battery
value-part-cord = Cord
value-part-shade = Lampshade
value-part-contents = Contents
value-part-bag = Bag
value-part-handle = Handle
value-part-ring = Ring

## Hazard class

fact-hazard = Danger
ask-hazard = What danger does it carry?
    .hint = Look for warning words or signs on the label. If in doubt, say that you cannot tell.
value-hazard-none = No danger
value-hazard-battery-lithium = Lithium battery (rechargeable)
value-hazard-battery-household = Household battery
value-hazard-battery-lead-acid = Car battery (lead-acid)
value-hazard-sharps = Needle or lancet
value-hazard-medicine = Medicine
value-hazard-pressurised = Pressurized can or cylinder
value-hazard-flammable = Flammable liquid or gas
value-hazard-toxic = Poison
value-hazard-corrosive = Corrosive (burns skin)
value-hazard-mercury = Thing with mercury
value-hazard-oil = Motor oil
value-hazard-explosive = Explosive
value-hazard-radioactive = Radioactive thing

## Material

fact-material = Material
ask-material = What is it made of?
    .hint = The material it is mostly made of.
value-material-plastic = Plastic
value-material-bioplastic = Plant-based plastic
value-material-cardboard = Corrugated cardboard
value-material-paperboard = Thin cardboard
value-material-paper = Paper
value-material-carton = Drink carton material
value-material-steel = Steel or tin
value-material-aluminium = Aluminum
value-material-metal = Other metal
value-material-glass = Glass
value-material-ceramic = Ceramic
value-material-wood = Wood
value-material-cork = Cork
value-material-textile = Cloth
value-material-leather = Leather
value-material-rubber = Rubber
value-material-food = Food
value-material-plant = Leaves or branches
value-material-wax = Wax
value-material-stone = Stone or concrete
value-material-electronics = Electronics
value-material-chemical = Chemical
value-material-mixed = Several materials

## Form

fact-form = Shape
ask-form = What shape is it?
value-form-bottle = Bottle
value-form-jug = Jug with a handle
value-form-jar = Jar
value-form-tub = Tub
value-form-cup = Cup
value-form-lid = Lid or cap
value-form-clamshell = Hinged box
value-form-tray = Tray
value-form-bag = Bag
value-form-film = Film or wrap
value-form-pouch = Pouch
value-form-tube = Tube
value-form-can = Can
value-form-spray-can = Spray can
value-form-cylinder = Gas cylinder
value-form-box = Box
value-form-carton = Drink carton
value-form-canister = Canister
value-form-sheet = Sheet
value-form-newspaper = Newspaper or magazine
value-form-book = Book
value-form-envelope = Envelope
value-form-roll = Roll
value-form-foil = Foil
value-form-pan = Pan or pot
value-form-foam = Foam
value-form-pod = Coffee pod
value-form-cutlery = Fork, knife or spoon
value-form-straw = Straw
value-form-pot = Plant pot
value-form-bucket = Bucket
value-form-toy = Toy
value-form-rope = Rope, hose or cable
value-form-clothing = Clothing
value-form-shoe = Shoe
value-form-furniture = Furniture
value-form-mattress = Mattress
value-form-appliance = Large appliance
value-form-device = Electronic device
value-form-lamp = Bulb or tube light
value-form-battery = Battery
value-form-needle = Needle
value-form-pill = Pills or medicine
value-form-tool = Tool
value-form-window = Window or mirror
value-form-dishes = Dishes
value-form-tyre = Tire
value-form-timber = Lumber
value-form-rubble = Rubble
value-form-food = Food
value-form-plant = Yard waste
value-form-liquid = Liquid
value-form-ash = Ash
value-form-sanitary = Diaper or hygiene item
value-form-other = Another shape

## Packaging or product

fact-object = Used as
ask-object = Did something come packed in it?
value-object-packaging = It is packaging
value-object-product = It is a thing by itself

## Battery inside

fact-battery = Battery
ask-battery = Is there a battery in it?
    .hint = If it lights up, moves, makes a sound or can be charged, there is one.
value-battery-yes = With a battery
value-battery-no = No battery

## Resin mark

fact-resin = Number in the triangle
ask-resin = Which number is in the small triangle?
    .hint = Look at the bottom. The number tells the kind of plastic. It does not promise that the thing is recycled.
value-resin-1 = 1
value-resin-2 = 2
value-resin-3 = 3
value-resin-4 = 4
value-resin-5 = 5
value-resin-6 = 6
value-resin-7 = 7
value-resin-none = No number
value-resin-unreadable = Cannot be read

## Deposit mark

fact-deposit-mark = Deposit mark
ask-deposit-mark = Does it have a deposit mark?
    .hint = Look beside the bar code for a mark or an amount of money.
value-deposit-mark-yes = With a deposit mark
value-deposit-mark-no = No deposit mark

## Color

fact-colour = Color
ask-colour = What color is it?
value-colour-clear = Clear (see-through)
value-colour-frosted = Frosted (lets light through)
value-colour-white = White
value-colour-green = Green
value-colour-brown = Brown
value-colour-blue = Blue
value-colour-black = Black
value-colour-other = Another color

## Coating

fact-coating = Coating
ask-coating = Is it coated with something?
    .hint = Tear a corner: a thin film shows plastic. Scratch it: wax comes off.
value-coating-none = Not coated
value-coating-plastic = Plastic
value-coating-wax = Wax
value-coating-foil = Foil
value-coating-glitter = Glitter
value-coating-wet-strength = Made to stay strong when wet

## Layers

fact-layers = Layers
ask-layers = Is it made of several layers stuck together?
value-layers-one = One layer
value-layers-many = Several layers

## Longest side

fact-longest-side = Longest side
ask-longest-side = How long is it?
    .hint = Measure its longest side.

## Middle side

fact-middle-side = Second longest side
ask-middle-side = How wide is it?
    .hint = Measure the second longest side.

## Shortest side

fact-shortest-side = Shortest side
ask-shortest-side = How thick is it?
    .hint = Measure its shortest side.

## Length of shredded strips

fact-strip-length = Strip length
ask-strip-length = How long are the strips?

## Capacity

fact-capacity = Holds
ask-capacity = How much does it hold?
    .hint = Look for the amount on the label.

## Weight

fact-mass = Weight
ask-mass = How heavy is it?

## Fits the container

fact-fits-container = Fits the container
ask-fits-container = Does it fit in the container with the lid shut?
value-fits-container-yes = It fits with the lid shut
value-fits-container-no = It does not fit

## Contents

fact-contents = Contents
ask-contents = Is anything left in it?
    .hint = Empty means that nothing drips or falls out.
value-contents-empty = Empty
value-contents-traces = A little sticks to it
value-contents-dried = Dried out
value-contents-part-full = Still partly full
value-contents-full = Full

## Former contents

fact-former-contents = What was in it
ask-former-contents = What was in it?
value-former-contents-none = Nothing
value-former-contents-food = Food
value-former-contents-drink = A drink
value-former-contents-personal-care = Soap, shampoo or cream
value-former-contents-cleaner = Cleaner
value-former-contents-oil = Motor oil
value-former-contents-paint = Paint
value-former-contents-pesticide = Bug or weed killer
value-former-contents-solvent = Paint thinner or fuel
value-former-contents-medicine = Medicine

## Soiling

fact-soiling = Clean or dirty
ask-soiling = Is it clean?
value-soiling-clean = Clean
value-soiling-grease = Greasy
value-soiling-food = Food sticks to it

## Wet

fact-wet = Wet
ask-wet = Is it wet?
value-wet-yes = Wet
value-wet-no = Dry

## Bagged

fact-bagged = In a bag
ask-bagged = Is it in a bag?
value-bagged-loose = Loose, no bag
value-bagged-plastic-bag = In a plastic bag
value-bagged-clear-bag = In a clear bag
value-bagged-paper-bag = In a paper bag

## Flattened

fact-flattened = Flattened
ask-flattened = Is it flattened?
value-flattened-yes = Flattened
value-flattened-no = Not flattened

## Bundled

fact-bundled = Tied in a bundle
ask-bundled = Is it tied in a bundle?
value-bundled-yes = Tied
value-bundled-no = Not tied

## Shredded

fact-shredded = Shredded
ask-shredded = Is it shredded?
value-shredded-yes = Shredded
value-shredded-no = Not shredded

## Broken

fact-broken = Broken
ask-broken = Is it broken or worn out?
value-broken-yes = Broken
value-broken-no = Whole

## Compostable

fact-compostable = Compostable
ask-compostable = Does it say that it can be composted?
    .hint = Look for the words “certified compostable” and a seal.
value-compostable-no = No
value-compostable-claimed = It says so, without a seal
value-compostable-certified = Certified, with a seal

## Closure

fact-closure = Cap or lid
ask-closure = Is the cap or lid on?
value-closure-none = It has none
value-closure-on = On
value-closure-off = Off

## Label

fact-label = Label
ask-label = What kind of label does it have?
value-label-none = No label
value-label-paper = Paper label
value-label-film = Plastic label
value-label-sleeve = Plastic all around

## Pump

fact-pump = Pump or sprayer
ask-pump = Does it have a pump or sprayer?
value-pump-yes = With a pump
value-pump-no = No pump

## Metal fitting

fact-fitting = Metal part
ask-fitting = Is there a small metal part on it?
value-fitting-yes = With a metal part
value-fitting-no = No metal part

## Window

fact-window = Plastic window
ask-window = Does it have a clear plastic window?
value-window-yes = With a window
value-window-no = No window

## Liner

fact-liner = Liner inside
ask-liner = Is there a liner inside?
value-liner-yes = With a liner
value-liner-no = No liner

## Cord

fact-cord = Cord
ask-cord = Does it have a cord?
value-cord-yes = With a cord
value-cord-no = No cord

## What is said beside a limit. Examples: "2 inches (about a golf ball)", "4 a visit".

measure-like = { $measure } (about { $thing })
measure-per = { $measure } { $period }
like-credit-card = as long as a bank card
like-golf-ball = a golf ball
like-tennis-ball = a tennis ball
like-basketball = a basketball
like-sheet-of-paper = as long as a sheet of paper
like-yogurt-cup = a small yogurt cup
like-milk-jug = a milk jug
like-bucket = a large bucket
like-brick = a brick
per-visit = per visit
per-day = per day
per-week = per week
per-month = per month
per-year = per year
