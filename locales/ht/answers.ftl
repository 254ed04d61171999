### Ready-made sentences of answers: cautions, steps, reasons; and the names of kinds of things.
### Steps are told to one person, reasons are about "it".

## Cautions, one for each hazard class. They say what is common everywhere and defer to local


## rules; local procedure comes from the program, approved by a named person.

caution-local = Règ lokal yo ak anplwaye sou plas yo deside.
caution-battery-lithium = Batri lityòm ka mete dife. Pa janm mete yo, ni bagay ki genyen yo, nan okenn bak ni poubèl. Kouvri pwent metal batri ki lache yo ak tep, oswa mete chak nan pwòp sachè pa l. Pa kraze yo ni louvri yo. { caution-local }
caution-battery-household = Pil ka koule oswa mete dife. Pa janm mete yo nan okenn bak ni poubèl. Kouvri pwent yo ak tep epi kenbe yo apa youn ak lòt. { caution-local }
caution-battery-lead-acid = Batri sa a gen asid ki boule ak plon ki se pwazon. Kenbe li dwat epi pa louvri li. Pa janm mete li nan okenn bak ni poubèl. { caution-local }
caution-sharps = Zegui ak lansèt ka blese moun k ap triye yo epi ba yo maladi. Pa janm mete yo lache nan okenn bak ni poubèl. Lage yo touswit nan yon resipyan solid ki pa ka pèse, byen fèmen. Pa janm foure men nan yon bak pou pran youn. { caution-local }
caution-medicine = Kenbe medikaman lwen timoun ak bèt. Premye bagay, pote yo kote yo reprann medikaman. Pa jete yo nan twalèt, sòf si etikèt la di sa. { caution-local }
caution-pressurised = Li ka eklate si yo kraze li, pèse li oswa chofe li, menm si li sanble vid. Pa janm mete li nan okenn bak ni poubèl. { caution-local }
caution-flammable = Li pran dife fasil. Kenbe li fèmen, lwen chalè ak etensèl. Pa janm mete li nan okenn bak ni poubèl, pa janm vide li. { caution-local }
caution-toxic = Se pwazon. Kenbe li nan pwòp resipyan li ak etikèt la. Pa janm mete li nan okenn bak ni poubèl, pa janm vide li, pa janm melanje li ak anyen. { caution-local }
caution-corrosive = Li boule po ak je. Kenbe li dwat nan pwòp resipyan li. Pa janm mete li nan okenn bak ni poubèl, pa janm melanje li ak anyen. { caution-local }
caution-mercury = Li gen mèki, ki se pwazon. Pa kase li. Pa janm mete li nan okenn bak ni poubèl. Si li kase, fè moun ale epi louvri fenèt yo. { caution-local }
caution-oil = Li sal dlo. Kenbe li nan yon resipyan fèmen. Pa janm vide li, pa janm mete li nan okenn bak ni poubèl, pa janm melanje li ak anyen. { caution-local }
caution-explosive = Pa touche li, pa deplase li. Fè moun ale epi rele otorite yo nonmen isit la. Si gen danje, rele nimewo ijans lan. { caution-local }
caution-radioactive = Pa louvri li, pa kase li. Pa janm mete li nan okenn bak ni poubèl. Rele otorite yo nonmen isit la epi mande sa pou fè. { caution-local }

## Standard preparation steps

prep-empty = Vide li.
prep-rinse = Rense li vit. Li pa bezwen klere.
prep-dry = Kite li seche.
prep-scrape = Grate manje a.
prep-flatten = Plati li.
prep-cut-down = Koupe li pou li antre.
prep-bundle = Mare li an pake.
prep-loose = Mete li lache, san sachè.
prep-cap-on = Kite bouchon an sou li.
prep-cap-off = Retire bouchon an.
prep-lid-off = Retire kouvèti a.
prep-lid-inside-can = Mete kouvèti a nan bwat la epi peze bouch bwat la fèmen.
prep-label-stays = Etikèt la ka rete.
prep-sleeve-off = Retire plastik ki vlope li a.
prep-pump-off = Retire ponp lan.
prep-window-stays = Fenèt plastik la ka rete.
prep-staples-stay = Agraf yo ka rete.
prep-remove-food-liner = Retire sachè a oswa doubli a.
prep-tear-off-clean-half = Chire pati ki pwòp la. Se li sèl ki ale isit la.
prep-crush = Kraze li pou pran mwens plas.
prep-do-not-crush = Pa kraze li.
prep-do-not-flatten = Pa plati li.
prep-do-not-nest = Pa mete youn nan lòt.
prep-scrunch-foil = Fè yon boul aliminyòm gwosè yon pwen.
prep-paper-bag = Mete li nan yon sachè papye epi fèmen li.
prep-clear-bag = Mete li nan yon sachè klè.
prep-tape-terminals = Kouvri pwent metal yo ak tep.
prep-keep-upright = Kenbe li dwat.
prep-puncture-proof = Mete li nan yon resipyan solid ki pa ka pèse.
prep-original-container = Kite li nan pwòp resipyan li ak etikèt la.
prep-do-not-mix = Pa melanje li ak anyen.
prep-do-not-puncture = Pa pèse li.
prep-puncture = Pèse li lè anyen pa soti ankò.
prep-wrap-broken = Vlope moso kase yo pou pèsonn pa koupe.
prep-remove-battery = Retire pil la si li soti fasil. Li ale yon lòt kote.
prep-wipe-data = Efase enfòmasyon ou yo anvan.
prep-take-apart = Demonte li: chak materyèl gen plas pa l.
prep-no-bags = Pa sèvi ak sachè ditou.
prep-no-plastic-bags = Pa sèvi ak sachè plastik.
prep-cool-ash = Kite sann lan frèt plizyè jou, jis li frèt nèt anndan.
prep-double-bag = Mete li nan de sachè, youn nan lòt.
prep-label-contents = Ekri sou li sa ki ladan l.
prep-fits-lid-shut = Fòk li antre ak kouvèti a fèmen.
prep-check-fluid = Verifye pa gen likid ki rete ladan l.
prep-pair-and-tie = Mare pè yo ansanm.
prep-clean-and-usable = Sèlman si li pwòp e li ka sèvi ankò.

## Standard reasons

reason-sells = Izin achte li pou fè lòt bagay nèf.
reason-composts = Li tounen konpòs.
reason-no-buyer = Pèsonn pa achte materyèl sa a isit, kidonk yo pa ka resikle li.
reason-too-small = Li tèlman piti li tonbe nan machin triyaj yo.
reason-too-large = Li twò gwo pou bak la oswa machin yo.
reason-tangles = Li mare nan machin yo epi li fè yo kanpe.
reason-wraps-screens = Plastik fen vlope paswa yo epi li fè izin lan kanpe.
reason-bagged-unseen = Yo pa wè nan yon sachè fèmen, kidonk yo jete li san louvri.
reason-soiled = Manje ak grès gate materyèl la.
reason-contents-spoil = Sa ki rete ladan l ta gate tout sa ki bò kote l.
reason-mixed-materials = Materyèl yo kole ansanm, yo pa ka separe.
reason-wrong-glass = Vit sa a pa fonn menm jan ak boutèy ak bokal.
reason-breaks-unsafe = Li kase epi li koupe moun k ap triye yo.
reason-not-packaging = Se anbalaj sèlman yo pran isit.
reason-hazard = Li danjere nan bak, nan kamyon ak nan izin.
reason-handled-apart = Yo trete li apa.
reason-reusable = Yon moun ka sèvi avè l toujou.
reason-store-collects = Magazen ranmase li.
reason-contaminates-compost = Li ta gate konpòs la.
reason-not-named = Lis la pa nonmen li.
reason-not-listed = Pèsonn poko deside. Pito ou mande pase ou devine.
reason-too-heavy = Li twò lou pou leve.
reason-number-is-not-shape = Nimewo a sèl pa deside: fòm nan konte tou.
reason-black-unseen = Machin triyaj yo pa wè plastik nwa.
reason-burns = Li ka mete dife.
reason-special-trip = Li gen ranmasaj pa l oswa kote pa l.
reason-law = Se lalwa ki di sa.
reason-not-collected = Yo pa ranmase li isit.

## Tiers of rules, in the order in which they are looked at

tier-safety = Sekirite
tier-plant = Izin triyaj
tier-program = Pwogram sa a
tier-material = Materyèl
tier-default = Tout rès la

## Categories to browse by

category-plastic-packaging = Anbalaj plastik
category-paper-cardboard = Papye ak katon
category-glass = Vit (vè)
category-metal = Metal
category-food-drink-cartons = Katon manje ak bwason
category-food-garden = Manje ak lakou
category-film-bags = Sachè ak plastik fen
category-batteries-electronics = Pil ak elektwonik
category-hazardous = Penti, pwodui chimik, gaz
category-medical = Medikaman ak zegui
category-textiles = Rad ak soulye
category-household-goods = Bagay kay
category-building = Konstriksyon ak reparasyon
category-bathroom = Saldeben

## Parts of an item that may go elsewhere

part-lid = Kouvèti a
part-cap = Bouchon an
part-pump = Ponp lan
part-sleeve = Plastik ki vlope li a
part-liner = Doubli a
part-straw = Chalimo a
part-filter = Filt la
part-battery = Pil la oswa batri a
part-cord = Fil elektrik la
part-shade = Abajou a
part-contents = Sa ki ladan l
part-bag = Sachè a
part-handle = Manch lan
part-ring = Bag la

## Rules about a container: shown where an answer names it. $limit is a measure.

container-rule-lid-closed = Kouvèti a dwe fèmen.
container-rule-weight = Pa plis pase { $limit } lè li plen.
container-rule-distance = Kite { $limit } lib chak bò.
container-rule-side-waste = Pa mete anyen bò kote l ni sou li.
container-rule-share-of-load = Bagay ki pa nan plas yo: { $limit } nan yon chaj maksimòm.
container-rule-liners = Ou ka mete yon sachè ladan l.
container-rule-sacks = Sèlman sak yo bay yo.
container-rule-registration = Enskri anvan.
container-rule-refusals = Si gen yon bagay ki pa bon ladan l, yo kite li la ak yon nòt.

## Where the law does not let a thing go. $place is a container or stream.

answer-banned = Lalwa pa pèmèt li nan: { $place }.
