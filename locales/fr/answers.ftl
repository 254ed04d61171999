### Ready-made sentences of answers: cautions, steps, reasons; and the names of kinds of things.
### Steps are told to one person, reasons are about "it".

## Cautions, one for each hazard class. They say what is common everywhere and defer to local


## rules; local procedure comes from the program, approved by a named person.

caution-local = Les règles locales et le personnel sur place décident.
caution-battery-lithium = Les batteries au lithium peuvent mettre le feu. Ne les mettez jamais, ni les objets qui en contiennent, dans un bac ou une poubelle. Couvrez de ruban les bouts de métal des batteries seules, ou mettez chacune dans son sac. Ne les écrasez pas, ne les ouvrez pas. { caution-local }
caution-battery-household = Les piles peuvent couler ou mettre le feu. Ne les mettez jamais dans un bac ou une poubelle. Couvrez les bouts de ruban adhésif et gardez-les séparées. { caution-local }
caution-battery-lead-acid = Cette batterie contient de l’acide qui brûle et du plomb, un poison. Gardez-la debout et ne l’ouvrez pas. Ne la mettez jamais dans un bac ou une poubelle. { caution-local }
caution-sharps = Les aiguilles et lancettes peuvent blesser et infecter les gens qui trient. Ne les mettez jamais en vrac dans un bac ou une poubelle. Jetez-les tout de suite dans un contenant solide qui ne se perce pas, bien fermé. N’en cherchez jamais une à la main dans un bac. { caution-local }
caution-medicine = Gardez les médicaments loin des enfants et des animaux. Rapportez-les d’abord à un point de retour. Ne les jetez pas aux toilettes, sauf si l’étiquette le dit. { caution-local }
caution-pressurised = Peut éclater si on l’écrase, le perce ou le chauffe, même s’il semble vide. Ne le mettez jamais dans un bac ou une poubelle. { caution-local }
caution-flammable = Prend feu facilement. Gardez-le fermé, loin de la chaleur et des étincelles. Ne le mettez jamais dans un bac ou une poubelle, ne le videz jamais par terre ou dans l’évier. { caution-local }
caution-toxic = Poison. Gardez-le dans son contenant avec l’étiquette. Ne le mettez jamais dans un bac ou une poubelle, ne le videz jamais, ne le mélangez jamais. { caution-local }
caution-corrosive = Brûle la peau et les yeux. Gardez-le debout dans son contenant. Ne le mettez jamais dans un bac ou une poubelle et ne le mélangez jamais. { caution-local }
caution-mercury = Contient du mercure, un poison. Ne le cassez pas. Ne le mettez jamais dans un bac ou une poubelle. S’il se casse, éloignez les gens et aérez la pièce. { caution-local }
caution-oil = Pollue l’eau. Gardez-la dans un contenant fermé. Ne la videz jamais, ne la mettez jamais dans un bac ou une poubelle, ne la mélangez jamais. { caution-local }
caution-explosive = N’y touchez pas et ne le déplacez pas. Éloignez les gens et appelez l’autorité nommée ici. En cas de danger, appelez le numéro d’urgence. { caution-local }
caution-radioactive = Ne l’ouvrez pas et ne le cassez pas. Ne le mettez jamais dans un bac ou une poubelle. Appelez l’autorité nommée ici et demandez quoi faire. { caution-local }

## Standard preparation steps

prep-empty = Videz-le.
prep-rinse = Rincez vite. Pas besoin que ce soit parfait.
prep-dry = Laissez sécher.
prep-scrape = Grattez les restes de nourriture.
prep-flatten = Aplatissez-le.
prep-cut-down = Coupez-le pour qu’il entre.
prep-bundle = Attachez en paquet.
prep-loose = Mettez-le en vrac, sans sac.
prep-cap-on = Laissez le bouchon.
prep-cap-off = Enlevez le bouchon.
prep-lid-off = Enlevez le couvercle.
prep-lid-inside-can = Mettez le couvercle dans la boîte et pincez-la.
prep-label-stays = L’étiquette peut rester.
prep-sleeve-off = Enlevez le manchon de plastique.
prep-pump-off = Enlevez la pompe.
prep-window-stays = La fenêtre en plastique peut rester.
prep-staples-stay = Les agrafes peuvent rester.
prep-remove-food-liner = Enlevez le sac ou la doublure.
prep-tear-off-clean-half = Déchirez la partie propre. Seule cette partie va ici.
prep-crush = Écrasez-le pour gagner de la place.
prep-do-not-crush = Ne l’écrasez pas.
prep-do-not-flatten = Ne l’aplatissez pas.
prep-do-not-nest = Ne mettez pas l’un dans l’autre.
prep-scrunch-foil = Faites une boule de la grosseur du poing.
prep-paper-bag = Mettez-le dans un sac en papier fermé.
prep-clear-bag = Mettez-le dans un sac transparent.
prep-tape-terminals = Couvrez les bouts de métal de ruban adhésif.
prep-keep-upright = Gardez-le debout.
prep-puncture-proof = Mettez-le dans un contenant solide qui ne se perce pas.
prep-original-container = Laissez-le dans son contenant avec l’étiquette.
prep-do-not-mix = Ne le mélangez avec rien.
prep-do-not-puncture = Ne le percez pas.
prep-puncture = Percez-le quand plus rien n’en sort.
prep-wrap-broken = Emballez les morceaux pour que personne ne se coupe.
prep-remove-battery = Enlevez la pile si elle sort facilement. Elle va ailleurs.
prep-wipe-data = Effacez d’abord vos données.
prep-take-apart = Démontez-le : chaque matière a sa place.
prep-no-bags = N’utilisez aucun sac.
prep-no-plastic-bags = N’utilisez pas de sacs plastique.
prep-cool-ash = Laissez refroidir la cendre plusieurs jours, jusqu’au cœur.
prep-double-bag = Mettez-le dans deux sacs, l’un dans l’autre.
prep-label-contents = Écrivez dessus ce qu’il y a dedans.
prep-fits-lid-shut = Le couvercle doit pouvoir fermer.
prep-check-fluid = Vérifiez qu’il ne reste aucun liquide.
prep-pair-and-tie = Attachez les paires ensemble.
prep-clean-and-usable = Seulement si c’est propre et encore utilisable.

## Standard reasons

reason-sells = Des usines l’achètent pour en faire du neuf.
reason-composts = Cela devient du compost.
reason-no-buyer = Personne n’achète cette matière ici. On ne peut donc pas la recycler.
reason-too-small = C’est si petit que cela passe à travers les machines de tri.
reason-too-large = C’est trop grand pour le bac ou les machines.
reason-tangles = Cela s’enroule autour des machines et les arrête.
reason-wraps-screens = Le plastique mince s’enroule sur les cribles et arrête l’usine.
reason-bagged-unseen = On ne voit pas dans un sac fermé : il est jeté sans être ouvert.
reason-soiled = La nourriture et la graisse gâtent la matière.
reason-contents-spoil = Ce qui reste dedans gâterait tout autour.
reason-mixed-materials = Ses matières sont collées et ne se séparent pas.
reason-wrong-glass = Ce verre ne fond pas comme celui des bouteilles et bocaux.
reason-breaks-unsafe = Cela se casse et coupe les gens qui trient.
reason-not-packaging = Ici, on prend seulement les emballages.
reason-hazard = C’est dangereux dans un bac, un camion et à l’usine.
reason-handled-apart = C’est traité à part du reste.
reason-reusable = Quelqu’un peut encore s’en servir.
reason-store-collects = Des magasins le reprennent.
reason-contaminates-compost = Cela gâterait le compost.
reason-not-named = La liste ne le nomme pas.
reason-not-listed = Personne n’a encore décidé. Mieux vaut demander que deviner.
reason-too-heavy = C’est trop lourd à lever.
reason-number-is-not-shape = Le numéro ne suffit pas : la forme compte aussi.
reason-black-unseen = Les machines de tri ne voient pas le plastique noir.
reason-burns = Cela peut mettre le feu.
reason-special-trip = Cela a sa propre collecte ou son propre lieu.
reason-law = La loi le dit.
reason-not-collected = On ne le ramasse pas ici.

## Tiers of rules, in the order in which they are looked at

tier-safety = Sécurité
tier-plant = Usine de tri
tier-program = Ce programme
tier-material = Matière
tier-default = Tout le reste

## Categories to browse by

category-plastic-packaging = Emballages en plastique
category-paper-cardboard = Papier et carton
category-glass = Verre
category-metal = Métal
category-food-drink-cartons = Cartons d’aliments et de boissons
category-food-garden = Nourriture et jardin
category-film-bags = Sacs et films plastique
category-batteries-electronics = Piles et électronique
category-hazardous = Peinture, produits chimiques, gaz
category-medical = Médicaments et aiguilles
category-textiles = Vêtements et chaussures
category-household-goods = Objets de la maison
category-building = Construction et rénovation
category-bathroom = Salle de bain

## Parts of an item that may go elsewhere

part-lid = Le couvercle
part-cap = Le bouchon
part-pump = La pompe
part-sleeve = Le manchon
part-liner = La doublure
part-straw = La paille
part-filter = Le filtre
part-battery = La pile ou la batterie
part-cord = Le fil électrique
part-shade = L’abat-jour
part-contents = Le contenu
part-bag = Le sac
part-handle = La poignée
part-ring = L’anneau

## Rules about a container: shown where an answer names it. $limit is a measure.

container-rule-lid-closed = Le couvercle doit être fermé.
container-rule-weight = Pas plus de { $limit } une fois plein.
container-rule-distance = Laissez { $limit } libres de chaque côté.
container-rule-side-waste = Rien à côté ni dessus.
container-rule-share-of-load = Ce qui n’a pas sa place : { $limit } d’un chargement au plus.
container-rule-liners = On peut y mettre un sac.
container-rule-sacks = Seulement les sacs qu’on vous donne.
container-rule-registration = Inscrivez-vous d’abord.
container-rule-refusals = S’il contient une erreur, on le laisse sur place avec un mot.

## Where the law does not let a thing go. $place is a container or stream.

answer-banned = La loi ne le permet pas dans : { $place }.
