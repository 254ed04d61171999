### Ano ang maaaring malaman sa isang bagay: mga pangalan, tanong, sagot. Dapat maintindihan ang bawat
### sagot nang mag-isa, sa button at sa “Hindi ninyo masabi, kaya pinili namin: Takip: nakasara”.

## Mga sukat o petsa na pagpipilian

range-at-least = hindi bababa sa { $value }
range-over = higit sa { $value }
range-at-most = hindi hihigit sa { $value }
range-under = mas mababa sa { $value }
range-between = mula { $low } hanggang { $high }
range-any = kahit ano

## Katangian at sagot, bagay at bahagi

fact-value = { $fact }: { $value }
item-part = { $item }: { $part }

## Sino ang nagtatanong, saan at kailan

fact-day = Araw
ask-day = Sa anong araw?

## Panahon ng taon

fact-time-of-year = Panahon ng taon
ask-time-of-year = Sa anong araw ng taon?

## Lugar

fact-zone = Lugar
ask-zone = Saan kayo nakatira?
    .hint = Iba-iba ang patakaran sa bawat lugar.

## Tirahan

fact-dwelling = Tirahan
ask-dwelling = Anong uri ng tirahan ang sa inyo?
value-dwelling-house = Bahay
value-dwelling-small-building = Maliit na gusali
value-dwelling-large-building = Malaking gusaling apartment

## Saan galing

fact-origin = Galing sa
ask-origin = Saan ito galing?
value-origin-household = Sa bahay
value-origin-business = Sa negosyo

## Patunay ng tirahan

fact-proof = Patunay ng tirahan
ask-proof = Maipapakita ba ninyong dito kayo nakatira?
    .hint = Puwede ang bill o lisensiya na may tirahan ninyo.
value-proof-yes = May patunay ako
value-proof-no = Wala akong patunay

## Dagdag na serbisyo

fact-add-on = Dagdag na bayad na serbisyo
ask-add-on = Nagbabayad ba kayo para sa dagdag na hakot?
    .hint = Nakasulat ito sa bill ninyo kung oo.
value-add-on-yes = Nagbabayad ako
value-add-on-no = Hindi

## Dami

fact-quantity = Ilan
ask-quantity = Ilan ang mayroon kayo?

## Ano ito

fact-item = Bagay
ask-item = Ano ito?

## Uri

fact-category = Uri
ask-category = Anong uri ng bagay ito?

## Bahagi

fact-part = Bahagi
ask-part = Aling bahagi?
value-part-whole = Buong bagay
value-part-lid = Takip
value-part-cap = Takip na de-ikot
value-part-pump = Pump
value-part-sleeve = Balot
value-part-liner = Sapin sa loob
value-part-straw = Straw
value-part-filter = Filter
value-part-battery = Baterya
value-part-cord = Kurdon
value-part-shade = Lampshade
value-part-contents = Laman
value-part-bag = Supot
value-part-handle = Hawakan
value-part-ring = Singsing

## Panganib

fact-hazard = Panganib
ask-hazard = Ano ang panganib nito?
    .hint = Hanapin ang babala o palatandaan sa etiketa. Kung hindi sigurado, sabihing hindi masabi.
value-hazard-none = Walang panganib
value-hazard-battery-lithium = Lithium na baterya (rechargeable)
value-hazard-battery-household = Karaniwang baterya
value-hazard-battery-lead-acid = Baterya ng kotse (tingga at asido)
value-hazard-sharps = Karayom o lanseta
value-hazard-medicine = Gamot
value-hazard-pressurised = Lata o tangkeng may presyon
value-hazard-flammable = Likido o gas na madaling magliyab
value-hazard-toxic = Lason
value-hazard-corrosive = Nakasusunog ng balat
value-hazard-mercury = Bagay na may asoge
value-hazard-oil = Langis ng makina
value-hazard-explosive = Sumasabog
value-hazard-radioactive = Bagay na radioactive

## Materyales

fact-material = Materyales
ask-material = Saan ito gawa?
    .hint = Ang materyales na pinakamarami rito.
value-material-plastic = Plastik
value-material-bioplastic = Plastik mula sa halaman
value-material-cardboard = Makapal na karton
value-material-paperboard = Manipis na karton
value-material-paper = Papel
value-material-carton = Karton ng inumin
value-material-steel = Bakal o lata
value-material-aluminium = Aluminyo
value-material-metal = Ibang metal
value-material-glass = Salamin
value-material-ceramic = Seramik
value-material-wood = Kahoy
value-material-cork = Cork
value-material-textile = Tela
value-material-leather = Katad
value-material-rubber = Goma
value-material-food = Pagkain
value-material-plant = Dahon o sanga
value-material-wax = Wax
value-material-stone = Bato o semento
value-material-electronics = Electronics
value-material-chemical = Kemikal
value-material-mixed = Halo-halong materyales

## Hugis

fact-form = Hugis
ask-form = Ano ang hugis nito?
value-form-bottle = Bote
value-form-jug = Galon na may hawakan
value-form-jar = Garapon
value-form-tub = Tub
value-form-cup = Baso
value-form-lid = Takip
value-form-clamshell = Kahong may bisagra
value-form-tray = Tray
value-form-bag = Supot
value-form-film = Manipis na plastik
value-form-pouch = Pouch
value-form-tube = Tubo na pinipisil
value-form-can = Lata
value-form-spray-can = Lata ng spray
value-form-cylinder = Tangke ng gas
value-form-box = Kahon
value-form-carton = Karton ng inumin
value-form-canister = Bilog na karton
value-form-sheet = Piraso o pahina
value-form-newspaper = Diyaryo o magasin
value-form-book = Libro
value-form-envelope = Sobre
value-form-roll = Rolyo
value-form-foil = Foil
value-form-pan = Kawali o kaldero
value-form-foam = Foam
value-form-pod = Kapsula ng kape
value-form-cutlery = Tinidor, kutsilyo o kutsara
value-form-straw = Straw
value-form-pot = Paso
value-form-bucket = Balde
value-form-toy = Laruan
value-form-rope = Lubid, hose o kable
value-form-clothing = Damit
value-form-shoe = Sapatos
value-form-furniture = Muwebles
value-form-mattress = Kutson
value-form-appliance = Malaking appliance
value-form-device = Gamit na electronic
value-form-lamp = Bombilya o tubo ng ilaw
value-form-battery = Baterya
value-form-needle = Karayom
value-form-pill = Tableta o gamot
value-form-tool = Kagamitan
value-form-window = Bintana o salamin
value-form-dishes = Pinggan
value-form-tyre = Gulong
value-form-timber = Tabla
value-form-rubble = Basag na semento at bato
value-form-food = Pagkain
value-form-plant = Kalat sa bakuran
value-form-liquid = Likido
value-form-ash = Abo
value-form-sanitary = Diaper o gamit sa kalinisan
value-form-other = Ibang hugis

## Lalagyan o bagay

fact-object = Ginagamit bilang
ask-object = May nakalagay ba rito noong binili?
value-object-packaging = Lalagyan o balot ito
value-object-product = Ito mismo ang bagay

## Baterya sa loob

fact-battery = Baterya
ask-battery = May baterya ba sa loob?
    .hint = Kung umiilaw, gumagalaw, tumutunog o nacha-charge, mayroon.
value-battery-yes = May baterya
value-battery-no = Walang baterya

## Numero ng plastik

fact-resin = Numero sa tatsulok
ask-resin = Anong numero ang nasa maliit na tatsulok?
    .hint = Tingnan sa ilalim. Sinasabi ng numero ang uri ng plastik. Hindi ito pangakong nare-recycle.
value-resin-1 = 1
value-resin-2 = 2
value-resin-3 = 3
value-resin-4 = 4
value-resin-5 = 5
value-resin-6 = 6
value-resin-7 = 7
value-resin-none = Walang numero
value-resin-unreadable = Hindi mabasa

## Tatak ng deposito

fact-deposit-mark = Tatak ng deposito
ask-deposit-mark = May tatak ba ito ng deposito?
    .hint = Hanapin sa tabi ng bar code ang tatak o halaga ng pera.
value-deposit-mark-yes = May tatak ng deposito
value-deposit-mark-no = Walang tatak ng deposito

## Kulay

fact-colour = Kulay
ask-colour = Ano ang kulay nito?
value-colour-clear = Malinaw (tagos ang tingin)
value-colour-frosted = Malabo (tagos ang liwanag)
value-colour-white = Puti
value-colour-green = Berde
value-colour-brown = Kayumanggi
value-colour-blue = Asul
value-colour-black = Itim
value-colour-other = Ibang kulay

## Patong

fact-coating = Patong
ask-coating = May patong ba ito?
    .hint = Pumunit ng sulok: kapag may manipis na balat, plastik iyon. Kaskasin: natatanggal ang wax.
value-coating-none = Walang patong
value-coating-plastic = Plastik
value-coating-wax = Wax
value-coating-foil = Foil
value-coating-glitter = Glitter
value-coating-wet-strength = Matibay kahit mabasa

## Suson

fact-layers = Suson
ask-layers = Ilang suson ba itong magkakadikit?
value-layers-one = Isang suson
value-layers-many = Ilang suson

## Pinakamahabang gilid

fact-longest-side = Pinakamahabang gilid
ask-longest-side = Gaano ito kahaba?
    .hint = Sukatin ang pinakamahabang gilid.

## Ikalawang gilid

fact-middle-side = Ikalawang pinakamahabang gilid
ask-middle-side = Gaano ito kalapad?
    .hint = Sukatin ang ikalawang pinakamahabang gilid.

## Pinakamaikling gilid

fact-shortest-side = Pinakamaikling gilid
ask-shortest-side = Gaano ito kakapal?
    .hint = Sukatin ang pinakamaikling gilid.

## Haba ng ginutay

fact-strip-length = Haba ng ginutay
ask-strip-length = Gaano kahaba ang mga ginutay na piraso?

## Kasya

fact-capacity = Laman nito
ask-capacity = Gaano karami ang kasya rito?
    .hint = Hanapin ang dami sa etiketa.

## Bigat

fact-mass = Bigat
ask-mass = Gaano ito kabigat?

## Kasya sa lalagyan

fact-fits-container = Kasya sa cart
ask-fits-container = Kasya ba ito sa cart nang nakasara ang takip?
value-fits-container-yes = Kasya, sarado ang takip
value-fits-container-no = Hindi kasya

## Laman

fact-contents = Laman
ask-contents = May natira ba sa loob?
    .hint = Ubos kapag wala nang tumutulo o nalalaglag.
value-contents-empty = Ubos na
value-contents-traces = May kaunting nakadikit
value-contents-dried = Natuyo na
value-contents-part-full = May laman pa
value-contents-full = Puno

## Dating laman

fact-former-contents = Dating laman
ask-former-contents = Ano ang dating laman nito?
value-former-contents-none = Wala
value-former-contents-food = Pagkain
value-former-contents-drink = Inumin
value-former-contents-personal-care = Sabon, shampoo o cream
value-former-contents-cleaner = Panlinis
value-former-contents-oil = Langis ng makina
value-former-contents-paint = Pintura
value-former-contents-pesticide = Pamatay ng insekto o damo
value-former-contents-solvent = Thinner o gasolina
value-former-contents-medicine = Gamot

## Linis

fact-soiling = Malinis o marumi
ask-soiling = Malinis ba ito?
value-soiling-clean = Malinis
value-soiling-grease = Mamantika
value-soiling-food = May nakadikit na pagkain

## Basa

fact-wet = Basa
ask-wet = Basa ba ito?
value-wet-yes = Basa
value-wet-no = Tuyo

## Nasa supot

fact-bagged = Nasa supot
ask-bagged = Nasa supot ba ito?
value-bagged-loose = Walang supot
value-bagged-plastic-bag = Nasa plastic bag
value-bagged-clear-bag = Nasa malinaw na bag
value-bagged-paper-bag = Nasa paper bag

## Pinipi

fact-flattened = Pinipi
ask-flattened = Pinipi na ba ito?
value-flattened-yes = Pinipi
value-flattened-no = Hindi pinipi

## Binigkis

fact-bundled = Binigkis
ask-bundled = Nakatali ba ito nang bigkis?
value-bundled-yes = Nakatali
value-bundled-no = Hindi nakatali

## Ginutay

fact-shredded = Ginutay
ask-shredded = Ginutay ba ito?
value-shredded-yes = Ginutay
value-shredded-no = Hindi ginutay

## Sira

fact-broken = Sira
ask-broken = Sira o luma na ba ito?
value-broken-yes = Sira
value-broken-no = Buo

## Compostable

fact-compostable = Compostable
ask-compostable = Nakasulat bang puwede ito sa compost?
    .hint = Hanapin ang salitang “certified compostable” at ang selyo.
value-compostable-no = Hindi
value-compostable-claimed = Nakasulat, pero walang selyo
value-compostable-certified = Sertipikado, may selyo

## Takip

fact-closure = Takip
ask-closure = Nakatakip ba ito?
value-closure-none = Wala itong takip
value-closure-on = Nakatakip
value-closure-off = Nakaalis

## Etiketa

fact-label = Etiketa
ask-label = Anong etiketa ang mayroon ito?
value-label-none = Walang etiketa
value-label-paper = Etiketang papel
value-label-film = Etiketang plastik
value-label-sleeve = Balot ng plastik sa palibot

## Pump

fact-pump = Pump o spray
ask-pump = May pump o spray ba ito?
value-pump-yes = May pump
value-pump-no = Walang pump

## Bahaging metal

fact-fitting = Bahaging metal
ask-fitting = May maliit ba itong bahaging metal?
value-fitting-yes = May metal
value-fitting-no = Walang metal

## Bintana

fact-window = Plastik na bintana
ask-window = May malinaw ba itong plastik na bintana?
value-window-yes = May bintana
value-window-no = Walang bintana

## Sapin

fact-liner = Sapin sa loob
ask-liner = May sapin ba sa loob?
value-liner-yes = May sapin
value-liner-no = Walang sapin

## Kurdon

fact-cord = Kurdon
ask-cord = May kurdon ba ito?
value-cord-yes = May kurdon
value-cord-no = Walang kurdon

## Sinasabi sa tabi ng sukat

measure-like = { $measure } (mga { $thing })
measure-per = { $measure } { $period }
like-credit-card = kasinghaba ng bank card
like-golf-ball = bola ng golf
like-tennis-ball = bola ng tennis
like-basketball = bola ng basketball
like-sheet-of-paper = kasinghaba ng isang papel
like-yogurt-cup = maliit na tasa ng yogurt
like-milk-jug = galon ng gatas
like-bucket = malaking balde
like-brick = ladrilyo
per-visit = bawat punta
per-day = bawat araw
per-week = bawat linggo
per-month = bawat buwan
per-year = bawat taon
