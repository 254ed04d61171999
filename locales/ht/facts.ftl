### What can be known about a thing: names, questions, answers. Values have to make sense alone,
### as a button and in "You could not tell, so we took: Closure: on".

## Ranges of a measure or of dates, as answers to choose from

range-at-least = omwen { $value }
range-over = plis pase { $value }
range-at-most = { $value } maksimòm
range-under = mwens pase { $value }
range-between = { $low } rive { $high }
range-any = nenpòt

## A fact and its value, an item and its part. Examples: "Resin mark: 5", "Glass jar: the lid"

fact-value = { $fact }: { $value }
item-part = { $item }: { $part }

## Who asks, where and when

fact-day = Jou
ask-day = Ki jou?

## Time of year

fact-time-of-year = Moman nan ane a
ask-time-of-year = Ki jou nan ane a?

## Service zone

fact-zone = Zòn
ask-zone = Ki kote ou rete?
    .hint = Règ yo pa menm nan tout zòn.

## Dwelling

fact-dwelling = Kay
ask-dwelling = Nan ki kalite kay ou rete?
value-dwelling-house = Kay
value-dwelling-small-building = Ti bilding
value-dwelling-large-building = Gwo bilding apatman

## Where it comes from

fact-origin = Kote li soti
ask-origin = Ki kote li soti?
value-origin-household = Yon kay
value-origin-business = Yon biznis

## Proof of residency

fact-proof = Prèv adrès
ask-proof = Èske ou ka montre ou rete isit la?
    .hint = Yon bòdwo oswa yon lisans ak adrès ou ase.
value-proof-yes = Mwen gen prèv
value-proof-no = Mwen pa gen prèv

## Paid extra service

fact-add-on = Sèvis anplis ki peye
ask-add-on = Èske ou peye sèvis ranmasaj anplis la?
    .hint = Si wi, li sou bòdwo ou.
value-add-on-yes = Mwen peye li
value-add-on-no = Mwen pa peye li

## Quantity

fact-quantity = Konbyen
ask-quantity = Konbyen ou genyen?

## What it is

fact-item = Bagay
ask-item = Ki sa li ye?

## Category

fact-category = Kalite
ask-category = Ki kalite bagay li ye?

## Part of a thing

fact-part = Pati
ask-part = Ki pati?
value-part-whole = Bagay la nèt
value-part-lid = Kouvèti
value-part-cap = Bouchon
value-part-pump = Ponp
value-part-sleeve = Plastik ki vlope li
value-part-liner = Doubli
value-part-straw = Chalimo
value-part-filter = Filt
value-part-battery = Pil oswa batri
value-part-cord = Fil elektrik
value-part-shade = Abajou
value-part-contents = Sa ki ladan l
value-part-bag = Sachè
value-part-handle = Manch
value-part-ring = Bag

## Hazard class

fact-hazard = Danje
ask-hazard = Ki danje li genyen?
    .hint = Chèche mo oswa siy avètisman sou etikèt la. Si ou pa si, di ou pa konnen.
value-hazard-none = Pa gen danje
value-hazard-battery-lithium = Batri lityòm (rechajab)
value-hazard-battery-household = Pil kay
value-hazard-battery-lead-acid = Batri machin (plon ak asid)
value-hazard-sharps = Zegui oswa lansèt
value-hazard-medicine = Medikaman
value-hazard-pressurised = Bonm oswa tank ki gen presyon
value-hazard-flammable = Likid oswa gaz ki pran dife
value-hazard-toxic = Pwazon
value-hazard-corrosive = Kowozif (boule po)
value-hazard-mercury = Bagay ki gen mèki
value-hazard-oil = Luil motè
value-hazard-explosive = Eksplozif
value-hazard-radioactive = Bagay radyoaktif

## Material

fact-material = Materyèl
ask-material = Ak ki sa yo fè li?
    .hint = Materyèl ki plis ladan l.
value-material-plastic = Plastik
value-material-bioplastic = Plastik ki fèt ak plant
value-material-cardboard = Katon onndile
value-material-paperboard = Katon mens
value-material-paper = Papye
value-material-carton = Katon bwason
value-material-steel = Asye oswa fèblan
value-material-aluminium = Aliminyòm
value-material-metal = Lòt metal
value-material-glass = Vit (vè)
value-material-ceramic = Seramik
value-material-wood = Bwa
value-material-cork = Lyèj
value-material-textile = Twal
value-material-leather = Kui
value-material-rubber = Kawotchou
value-material-food = Manje
value-material-plant = Fèy oswa branch
value-material-wax = Lasi
value-material-stone = Wòch oswa beton
value-material-electronics = Elektwonik
value-material-chemical = Pwodui chimik
value-material-mixed = Plizyè materyèl

## Form

fact-form = Fòm
ask-form = Ki fòm li genyen?
value-form-bottle = Boutèy
value-form-jug = Galon ak manch
value-form-jar = Bokal
value-form-tub = Po
value-form-cup = Gode
value-form-lid = Kouvèti oswa bouchon
value-form-clamshell = Bwat ki louvri ak fèmen
value-form-tray = Plato
value-form-bag = Sachè oswa sak
value-form-film = Plastik fen
value-form-pouch = Pòch
value-form-tube = Tib
value-form-can = Bwat konsèv oswa kannèt
value-form-spray-can = Bonm espre
value-form-cylinder = Tank gaz
value-form-box = Bwat
value-form-carton = Katon bwason
value-form-canister = Bwat won
value-form-sheet = Fèy
value-form-newspaper = Jounal oswa magazin
value-form-book = Liv
value-form-envelope = Anvlòp
value-form-roll = Woulo
value-form-foil = Papye aliminyòm
value-form-pan = Moul oswa chodyè
value-form-foam = Fom
value-form-pod = Kapsil kafe
value-form-cutlery = Fouchèt, kouto oswa kiyè
value-form-straw = Chalimo
value-form-pot = Po plant
value-form-bucket = Bokit
value-form-toy = Jwèt
value-form-rope = Kòd, tiyo oswa kab
value-form-clothing = Rad
value-form-shoe = Soulye
value-form-furniture = Mèb
value-form-mattress = Matla
value-form-appliance = Gwo aparèy kay
value-form-device = Aparèy elektwonik
value-form-lamp = Anpoul oswa tib limyè
value-form-battery = Pil oswa batri
value-form-needle = Zegui
value-form-pill = Grenn oswa medikaman
value-form-tool = Zouti
value-form-window = Vit oswa miwa
value-form-dishes = Asyèt ak veso
value-form-tyre = Kawotchou machin
value-form-timber = Planch bwa
value-form-rubble = Debri
value-form-food = Manje
value-form-plant = Fatra lakou
value-form-liquid = Likid
value-form-ash = Sann
value-form-sanitary = Kouchèt oswa bagay ijyèn
value-form-other = Yon lòt fòm

## Packaging or product

fact-object = Sèvi kòm
ask-object = Èske yon bagay te vini anbale ladan l?
value-object-packaging = Se yon anbalaj
value-object-product = Se yon bagay apa

## Battery inside

fact-battery = Pil oswa batri
ask-battery = Èske gen pil oswa batri ladan l?
    .hint = Si li limen, li bouje, li fè bri oswa li ka chaje, gen youn.
value-battery-yes = Ak pil oswa batri
value-battery-no = San pil ni batri

## Resin mark

fact-resin = Nimewo nan triyang lan
ask-resin = Ki nimewo ki nan ti triyang lan?
    .hint = Gade anba li. Nimewo a di ki kalite plastik. Li pa pwomèt yo resikle bagay la.
value-resin-1 = 1
value-resin-2 = 2
value-resin-3 = 3
value-resin-4 = 4
value-resin-5 = 5
value-resin-6 = 6
value-resin-7 = 7
value-resin-none = Pa gen nimewo
value-resin-unreadable = Yo pa ka li li

## Deposit mark

fact-deposit-mark = Mak konsiy
ask-deposit-mark = Èske li gen yon mak konsiy?
    .hint = Chèche yon mak oswa yon kantite lajan bò kòd ba a.
value-deposit-mark-yes = Ak mak konsiy
value-deposit-mark-no = San mak konsiy

## Color

fact-colour = Koulè
ask-colour = Ki koulè li?
value-colour-clear = Klè (ou wè ladan l)
value-colour-frosted = Twoub (limyè pase)
value-colour-white = Blan
value-colour-green = Vèt
value-colour-brown = Mawon
value-colour-blue = Ble
value-colour-black = Nwa
value-colour-other = Yon lòt koulè

## Coating

fact-coating = Kouch sou li
ask-coating = Èske gen yon kouch sou li?
    .hint = Chire yon kwen: si gen yon po mens, se plastik. Grate li: lasi soti.
value-coating-none = Pa gen kouch
value-coating-plastic = Plastik
value-coating-wax = Lasi
value-coating-foil = Aliminyòm
value-coating-glitter = Briyan
value-coating-wet-strength = Fèt pou rete solid lè li mouye

## Layers

fact-layers = Kouch
ask-layers = Èske li fèt ak plizyè kouch kole?
value-layers-one = Yon kouch
value-layers-many = Plizyè kouch

## Longest side

fact-longest-side = Bò ki pi long
ask-longest-side = Ki longè li?
    .hint = Mezire bò ki pi long lan.

## Middle side

fact-middle-side = Dezyèm bò
ask-middle-side = Ki lajè li?
    .hint = Mezire dezyèm bò ki pi long lan.

## Shortest side

fact-shortest-side = Bò ki pi kout
ask-shortest-side = Ki epesè li?
    .hint = Mezire bò ki pi kout la.

## Length of shredded strips

fact-strip-length = Longè bann yo
ask-strip-length = Ki longè bann yo?

## Capacity

fact-capacity = Kantite li kenbe
ask-capacity = Ki kantite li kenbe?
    .hint = Gade kantite a sou etikèt la.

## Weight

fact-mass = Pwa
ask-mass = Konbyen li peze?

## Fits the container

fact-fits-container = Antre nan bak la
ask-fits-container = Èske li antre nan bak la ak kouvèti a fèmen?
value-fits-container-yes = Li antre, kouvèti fèmen
value-fits-container-no = Li pa antre

## Contents

fact-contents = Sa ki ladan l
ask-contents = Èske gen anyen ki rete ladan l?
    .hint = Vid vle di anyen pa degoute ni tonbe.
value-contents-empty = Vid
value-contents-traces = Yon ti kras kole ladan l
value-contents-dried = Sèch nèt
value-contents-part-full = Gen yon pati ki rete
value-contents-full = Plen

## Former contents

fact-former-contents = Sa ki te ladan l
ask-former-contents = Ki sa ki te ladan l?
value-former-contents-none = Anyen
value-former-contents-food = Manje
value-former-contents-drink = Yon bwason
value-former-contents-personal-care = Savon, chanpou oswa krèm
value-former-contents-cleaner = Pwodui netwayaj
value-former-contents-oil = Luil motè
value-former-contents-paint = Penti
value-former-contents-pesticide = Pwazon ensèk oswa zèb
value-former-contents-solvent = Tinè oswa gazolin
value-former-contents-medicine = Medikaman

## Soiling

fact-soiling = Pwòp oswa sal
ask-soiling = Èske li pwòp?
value-soiling-clean = Pwòp
value-soiling-grease = Gra
value-soiling-food = Manje kole sou li

## Wet

fact-wet = Mouye
ask-wet = Èske li mouye?
value-wet-yes = Mouye
value-wet-no = Sèch

## Bagged

fact-bagged = Nan sachè
ask-bagged = Èske li nan yon sachè?
value-bagged-loose = Lache, san sachè
value-bagged-plastic-bag = Nan sachè plastik
value-bagged-clear-bag = Nan sachè klè
value-bagged-paper-bag = Nan sachè papye

## Flattened

fact-flattened = Plati
ask-flattened = Èske li plati?
value-flattened-yes = Plati
value-flattened-no = Pa plati

## Bundled

fact-bundled = Mare an pake
ask-bundled = Èske li mare an pake?
value-bundled-yes = Mare
value-bundled-no = Pa mare

## Shredded

fact-shredded = Rache an bann
ask-shredded = Èske li rache an bann?
value-shredded-yes = Rache
value-shredded-no = Pa rache

## Broken

fact-broken = Kase
ask-broken = Èske li kase oswa fini?
value-broken-yes = Kase
value-broken-no = Antye

## Compostable

fact-compostable = Konpostab
ask-compostable = Èske li ekri li ka fè konpòs?
    .hint = Chèche mo “certified compostable” ak yon so.
value-compostable-no = Non
value-compostable-claimed = Li ekri, san so
value-compostable-certified = Sètifye, ak yon so

## Closure

fact-closure = Bouchon oswa kouvèti
ask-closure = Èske bouchon an oswa kouvèti a sou li?
value-closure-none = Li pa genyen
value-closure-on = Sou li
value-closure-off = Retire

## Label

fact-label = Etikèt
ask-label = Ki kalite etikèt li genyen?
value-label-none = Pa gen etikèt
value-label-paper = Etikèt papye
value-label-film = Etikèt plastik
value-label-sleeve = Plastik tout alantou

## Pump

fact-pump = Ponp oswa espre
ask-pump = Èske li gen yon ponp oswa yon espre?
value-pump-yes = Ak ponp
value-pump-no = San ponp

## Metal fitting

fact-fitting = Pyès metal
ask-fitting = Èske gen yon ti pyès metal sou li?
value-fitting-yes = Ak pyès metal
value-fitting-no = San pyès metal

## Window

fact-window = Fenèt plastik
ask-window = Èske li gen yon fenèt plastik klè?
value-window-yes = Ak fenèt
value-window-no = San fenèt

## Liner

fact-liner = Doubli anndan
ask-liner = Èske gen yon sachè oswa doubli anndan?
value-liner-yes = Ak doubli
value-liner-no = San doubli

## Cord

fact-cord = Fil elektrik
ask-cord = Èske li gen yon fil elektrik?
value-cord-yes = Ak fil
value-cord-no = San fil

## What is said beside a limit. Examples: "2 inches (about a golf ball)", "4 a visit".

measure-like = { $measure } (anviwon { $thing })
measure-per = { $measure } { $period }
like-credit-card = longè yon kat labank
like-golf-ball = yon boul gòlf
like-tennis-ball = yon boul tenis
like-basketball = yon balon baskèt
like-sheet-of-paper = longè yon fèy papye
like-yogurt-cup = yon ti po yogout
like-milk-jug = yon galon lèt
like-bucket = yon gwo bokit
like-brick = yon brik
per-visit = chak vizit
per-day = chak jou
per-week = chak semèn
per-month = chak mwa
per-year = chak ane
