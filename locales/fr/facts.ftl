### What can be known about a thing: names, questions, answers. Values have to make sense alone,
### as a button and in "You could not tell, so we took: Closure: on".

## Ranges of a measure or of dates, as answers to choose from

range-at-least = au moins { $value }
range-over = plus de { $value }
range-at-most = au plus { $value }
range-under = moins de { $value }
range-between = de { $low } à { $high }
range-any = peu importe

## A fact and its value, an item and its part. Examples: "Resin mark: 5", "Glass jar: the lid"

fact-value = { $fact } : { $value }
item-part = { $item } : { $part }

## Who asks, where and when

fact-day = Jour
ask-day = Quel jour ?

## Time of year

fact-time-of-year = Moment de l’année
ask-time-of-year = Quel jour de l’année ?

## Service zone

fact-zone = Secteur
ask-zone = Où habitez-vous ?
    .hint = Les règles changent d’un secteur à l’autre.

## Dwelling

fact-dwelling = Logement
ask-dwelling = Dans quel type de logement vivez-vous ?
value-dwelling-house = Maison
value-dwelling-small-building = Petit immeuble
value-dwelling-large-building = Grand immeuble

## Where it comes from

fact-origin = Provenance
ask-origin = D’où cela vient-il ?
value-origin-household = D’un logement
value-origin-business = D’une entreprise

## Proof of residency

fact-proof = Preuve d’adresse
ask-proof = Pouvez-vous prouver que vous habitez ici ?
    .hint = Une facture ou un permis avec votre adresse suffit.
value-proof-yes = J’ai une preuve
value-proof-no = Je n’ai pas de preuve

## Paid extra service

fact-add-on = Service payant en plus
ask-add-on = Payez-vous le service de collecte en plus ?
    .hint = Si oui, c’est écrit sur votre facture.
value-add-on-yes = Je le paie
value-add-on-no = Je ne le paie pas

## Quantity

fact-quantity = Combien
ask-quantity = Combien en avez-vous ?

## What it is

fact-item = Objet
ask-item = Qu’est-ce que c’est ?

## Category

fact-category = Type
ask-category = Quel type d’objet est-ce ?

## Part of a thing

fact-part = Partie
ask-part = Quelle partie ?
value-part-whole = L’objet entier
value-part-lid = Couvercle
value-part-cap = Bouchon
value-part-pump = Pompe
value-part-sleeve = Manchon
value-part-liner = Doublure
value-part-straw = Paille
value-part-filter = Filtre
value-part-battery = Pile ou batterie
value-part-cord = Fil électrique
value-part-shade = Abat-jour
value-part-contents = Contenu
value-part-bag = Sac
value-part-handle = Poignée
value-part-ring = Anneau

## Hazard class

fact-hazard = Danger
ask-hazard = Quel danger y a-t-il ?
    .hint = Cherchez un mot ou un signe de danger sur l’étiquette. En cas de doute, dites que vous ne savez pas.
value-hazard-none = Aucun danger
value-hazard-battery-lithium = Batterie au lithium (rechargeable)
value-hazard-battery-household = Pile ordinaire
value-hazard-battery-lead-acid = Batterie d’auto (plomb-acide)
value-hazard-sharps = Aiguille ou lancette
value-hazard-medicine = Médicament
value-hazard-pressurised = Aérosol ou bonbonne sous pression
value-hazard-flammable = Liquide ou gaz inflammable
value-hazard-toxic = Poison
value-hazard-corrosive = Corrosif (brûle la peau)
value-hazard-mercury = Objet avec du mercure
value-hazard-oil = Huile à moteur
value-hazard-explosive = Explosif
value-hazard-radioactive = Objet radioactif

## Material

fact-material = Matière
ask-material = En quoi est-ce fait ?
    .hint = La matière principale.
value-material-plastic = Plastique
value-material-bioplastic = Plastique végétal
value-material-cardboard = Carton ondulé
value-material-paperboard = Carton mince
value-material-paper = Papier
value-material-carton = Carton à boisson
value-material-steel = Acier ou fer-blanc
value-material-aluminium = Aluminium
value-material-metal = Autre métal
value-material-glass = Verre
value-material-ceramic = Céramique
value-material-wood = Bois
value-material-cork = Liège
value-material-textile = Tissu
value-material-leather = Cuir
value-material-rubber = Caoutchouc
value-material-food = Nourriture
value-material-plant = Feuilles ou branches
value-material-wax = Cire
value-material-stone = Pierre ou béton
value-material-electronics = Électronique
value-material-chemical = Produit chimique
value-material-mixed = Plusieurs matières

## Form

fact-form = Forme
ask-form = Quelle forme a l’objet ?
value-form-bottle = Bouteille
value-form-jug = Bidon à poignée
value-form-jar = Bocal
value-form-tub = Pot
value-form-cup = Gobelet
value-form-lid = Couvercle ou bouchon
value-form-clamshell = Boîte à charnière
value-form-tray = Barquette
value-form-bag = Sac
value-form-film = Film plastique
value-form-pouch = Pochette
value-form-tube = Tube
value-form-can = Boîte de conserve ou canette
value-form-spray-can = Aérosol
value-form-cylinder = Bonbonne de gaz
value-form-box = Boîte
value-form-carton = Carton à boisson
value-form-canister = Boîte cylindrique
value-form-sheet = Feuille
value-form-newspaper = Journal ou magazine
value-form-book = Livre
value-form-envelope = Enveloppe
value-form-roll = Rouleau
value-form-foil = Papier d’aluminium
value-form-pan = Plat ou casserole
value-form-foam = Mousse
value-form-pod = Capsule de café
value-form-cutlery = Fourchette, couteau ou cuillère
value-form-straw = Paille
value-form-pot = Pot de plante
value-form-bucket = Seau
value-form-toy = Jouet
value-form-rope = Corde, tuyau ou câble
value-form-clothing = Vêtement
value-form-shoe = Chaussure
value-form-furniture = Meuble
value-form-mattress = Matelas
value-form-appliance = Gros appareil
value-form-device = Appareil électronique
value-form-lamp = Ampoule ou tube
value-form-battery = Pile ou batterie
value-form-needle = Aiguille
value-form-pill = Pilules ou médicaments
value-form-tool = Outil
value-form-window = Vitre ou miroir
value-form-dishes = Vaisselle
value-form-tyre = Pneu
value-form-timber = Bois de construction
value-form-rubble = Gravats
value-form-food = Nourriture
value-form-plant = Résidus de jardin
value-form-liquid = Liquide
value-form-ash = Cendre
value-form-sanitary = Couche ou produit d’hygiène
value-form-other = Autre forme

## Packaging or product

fact-object = Sert à
ask-object = Est-ce un emballage ?
value-object-packaging = C’est un emballage
value-object-product = C’est un objet

## Battery inside

fact-battery = Pile ou batterie
ask-battery = Y a-t-il une pile ou une batterie dedans ?
    .hint = Si l’objet s’allume, bouge, fait du bruit ou se recharge, il y en a une.
value-battery-yes = Avec pile ou batterie
value-battery-no = Sans pile ni batterie

## Resin mark

fact-resin = Numéro dans le triangle
ask-resin = Quel numéro est dans le petit triangle ?
    .hint = Regardez dessous. Le numéro dit quel plastique c’est. Il ne promet pas que l’objet se recycle.
value-resin-1 = 1
value-resin-2 = 2
value-resin-3 = 3
value-resin-4 = 4
value-resin-5 = 5
value-resin-6 = 6
value-resin-7 = 7
value-resin-none = Pas de numéro
value-resin-unreadable = Illisible

## Deposit mark

fact-deposit-mark = Signe de consigne
ask-deposit-mark = Y a-t-il un signe de consigne ?
    .hint = Cherchez un signe ou une somme d’argent près du code-barres.
value-deposit-mark-yes = Avec consigne
value-deposit-mark-no = Sans consigne

## Color

fact-colour = Couleur
ask-colour = De quelle couleur est-ce ?
value-colour-clear = Transparent
value-colour-frosted = Givré (laisse passer la lumière)
value-colour-white = Blanc
value-colour-green = Vert
value-colour-brown = Brun
value-colour-blue = Bleu
value-colour-black = Noir
value-colour-other = Autre couleur

## Coating

fact-coating = Couche de surface
ask-coating = Y a-t-il une couche sur la surface ?
    .hint = Déchirez un coin : un film mince, c’est du plastique. Grattez : la cire s’enlève.
value-coating-none = Aucune couche
value-coating-plastic = Plastique
value-coating-wax = Cire
value-coating-foil = Aluminium
value-coating-glitter = Paillettes
value-coating-wet-strength = Fait pour résister à l’eau

## Layers

fact-layers = Couches collées
ask-layers = Est-ce fait de plusieurs couches collées ?
value-layers-one = Une seule couche
value-layers-many = Plusieurs couches

## Longest side

fact-longest-side = Côté le plus long
ask-longest-side = Quelle est sa longueur ?
    .hint = Mesurez le côté le plus long.

## Middle side

fact-middle-side = Deuxième côté
ask-middle-side = Quelle est sa largeur ?
    .hint = Mesurez le deuxième côté le plus long.

## Shortest side

fact-shortest-side = Côté le plus court
ask-shortest-side = Quelle est son épaisseur ?
    .hint = Mesurez le côté le plus court.

## Length of shredded strips

fact-strip-length = Longueur des bandes
ask-strip-length = Quelle est la longueur des bandes ?

## Capacity

fact-capacity = Contenance
ask-capacity = Combien cela contient-il ?
    .hint = Regardez la quantité sur l’étiquette.

## Weight

fact-mass = Poids
ask-mass = Combien cela pèse-t-il ?

## Fits the container

fact-fits-container = Entre dans le bac
ask-fits-container = Est-ce que cela entre dans le bac, couvercle fermé ?
value-fits-container-yes = Entre, couvercle fermé
value-fits-container-no = N’entre pas

## Contents

fact-contents = Contenu
ask-contents = Reste-t-il quelque chose dedans ?
    .hint = Vide veut dire que rien ne coule et rien ne tombe.
value-contents-empty = Vide
value-contents-traces = Un peu reste collé
value-contents-dried = Séché
value-contents-part-full = Encore un peu plein
value-contents-full = Plein

## Former contents

fact-former-contents = Ancien contenu
ask-former-contents = Qu’y avait-il dedans ?
value-former-contents-none = Rien
value-former-contents-food = De la nourriture
value-former-contents-drink = Une boisson
value-former-contents-personal-care = Savon, shampoing ou crème
value-former-contents-cleaner = Produit nettoyant
value-former-contents-oil = Huile à moteur
value-former-contents-paint = Peinture
value-former-contents-pesticide = Produit contre insectes ou herbes
value-former-contents-solvent = Diluant ou carburant
value-former-contents-medicine = Médicament

## Soiling

fact-soiling = Propre ou sale
ask-soiling = Est-ce propre ?
value-soiling-clean = Propre
value-soiling-grease = Gras
value-soiling-food = Avec de la nourriture collée

## Wet

fact-wet = Mouillé
ask-wet = Est-ce mouillé ?
value-wet-yes = Mouillé
value-wet-no = Sec

## Bagged

fact-bagged = En sac
ask-bagged = Est-ce dans un sac ?
value-bagged-loose = En vrac, sans sac
value-bagged-plastic-bag = Dans un sac plastique
value-bagged-clear-bag = Dans un sac transparent
value-bagged-paper-bag = Dans un sac en papier

## Flattened

fact-flattened = Aplati
ask-flattened = Est-ce aplati ?
value-flattened-yes = Aplati
value-flattened-no = Pas aplati

## Bundled

fact-bundled = Attaché en paquet
ask-bundled = Est-ce attaché en paquet ?
value-bundled-yes = Attaché
value-bundled-no = Pas attaché

## Shredded

fact-shredded = Déchiqueté
ask-shredded = Est-ce déchiqueté ?
value-shredded-yes = Déchiqueté
value-shredded-no = Pas déchiqueté

## Broken

fact-broken = Cassé
ask-broken = Est-ce cassé ou usé ?
value-broken-yes = Cassé ou usé
value-broken-no = Entier

## Compostable

fact-compostable = Compostable
ask-compostable = Est-il écrit que cela se composte ?
    .hint = Cherchez les mots « certifié compostable » et un sceau.
value-compostable-no = Non
value-compostable-claimed = C’est écrit, sans sceau
value-compostable-certified = Certifié, avec un sceau

## Closure

fact-closure = Bouchon ou couvercle
ask-closure = Le bouchon ou le couvercle est-il dessus ?
value-closure-none = Il n’y en a pas
value-closure-on = Dessus
value-closure-off = Enlevé

## Label

fact-label = Étiquette
ask-label = Quelle sorte d’étiquette y a-t-il ?
value-label-none = Sans étiquette
value-label-paper = Étiquette en papier
value-label-film = Étiquette en plastique
value-label-sleeve = Plastique tout autour

## Pump

fact-pump = Pompe ou vaporisateur
ask-pump = Y a-t-il une pompe ou un vaporisateur ?
value-pump-yes = Avec pompe
value-pump-no = Sans pompe

## Metal fitting

fact-fitting = Pièce de métal
ask-fitting = Y a-t-il une petite pièce de métal ?
value-fitting-yes = Avec pièce de métal
value-fitting-no = Sans pièce de métal

## Window

fact-window = Fenêtre en plastique
ask-window = Y a-t-il une fenêtre en plastique transparent ?
value-window-yes = Avec fenêtre
value-window-no = Sans fenêtre

## Liner

fact-liner = Doublure intérieure
ask-liner = Y a-t-il un sac ou une doublure dedans ?
value-liner-yes = Avec doublure
value-liner-no = Sans doublure

## Cord

fact-cord = Fil électrique
ask-cord = Y a-t-il un fil électrique ?
value-cord-yes = Avec fil
value-cord-no = Sans fil

## What is said beside a limit. Examples: "2 inches (about a golf ball)", "4 a visit".

measure-like = { $measure } (environ { $thing })
measure-per = { $measure } { $period }
like-credit-card = la longueur d’une carte bancaire
like-golf-ball = une balle de golf
like-tennis-ball = une balle de tennis
like-basketball = un ballon de basket
like-sheet-of-paper = la longueur d’une feuille de papier
like-yogurt-cup = un petit pot de yogourt
like-milk-jug = un bidon de lait
like-bucket = un grand seau
like-brick = une brique
per-visit = par visite
per-day = par jour
per-week = par semaine
per-month = par mois
per-year = par an
