### What residents read on their phones. Plain words, short sentences, no jargon.

## Around every screen

page-title = { $program }: ki sa ki ale ki kote
skip = Ale nan pati prensipal la
back = Tounen
language-label = Lang
zone-label = Zòn ou
zone-none = Chwazi zòn ou
unreviewed = Pèsonn poko verifye tradiksyon sa a. Si yon bagay sanble pa bon, li li an anglè.
decided-edition = Gid: { $edition }
privacy = Sa ou chèche rete nan telefòn sa a. Yo pa voye anyen, yo pa konte anyen.

## Finding an item

search-label = Ki sa ou vle jete?
search-placeholder = Pa egzanp: bwat pitza
search-count =
    { $count ->
        [0] Anyen pa jwenn
       *[other] { $count } bagay jwenn
    }
search-nothing = Nou pa jwenn anyen ak non sa a. Eseye yon mo pi kout. Si yon bagay pa nan lis la, sa pa toujou vle di “non”: mande nou.
search-long = Li twò long. Nou chèche { $count } premye lèt yo sèlman.
home-recent = Chèche talè
home-common = Sa moun chèche souvan
home-categories = Gade pa kalite

## Questions

cannot-tell = Mwen pa konnen
questions-left =
    { $count ->
       *[other] Kesyon ki rete: { $count } maksimòm
    }
ruler-title = Mezire l ak ekran sa a
ruler-card = Mete yon kat labank kanpe sou ekran an. Deplase kontwòl la jiskaske desen an laj menm jan ak kat la.
ruler-use = Kounye a mete bagay la sou règ la, yon bout sou 0.
ruler-cards = { $measure }: kat labank youn dèyè lòt: { $count }

## Answers

verdict-yes = Wi
verdict-no = Non
verdict-elsewhere = Pa isit, li ale yon lòt kote
verdict-unlisted = Pa nan lis la: mande
verdict-undecided = Poko deside: mande
verdict-closed = Non: li pa nan lis la
caution-title = Atansyon.
prepare-title = Kijan pou prepare li
why-title = Poukisa
also-title = Yo pran li tou nan
temporary-order = Gen yon règ pwovizwa kounye a. Li ka chanje talè.
assumed-title = Ou pa t konnen, kidonk nou pran repons ki pi pridan an:
assumed-line = { $fact }: { $value }
ask-contact = Mande { $name }:
decided-title = Ki règ ki deside
decided-rule = Règ:
decided-acknowledged = Yon moun ki bay non li apwouve eksepsyon sa a nan yon règ sekirite.

## Places to take things to

site-more =
    { $count ->
       *[other] { $count } lòt kote
    }
site-locate = Jwenn kote ki pi pre a
site-no-position = Telefòn sa a pa di ki kote li ye.
near-label = Vil, zòn oswa kòd postal
near-find = Chèche la
near-found = Pi pre { $place }.
near-unknown = Gid sa a pa konnen kote “{ $place }”. Eseye yon vil, zòn ou oswa non yon sant.
site-also-takes = Li pran tou: { $items }
site-all-items = Tout sa li pran
site-booking = Pran randevou davans.
site-proof = Pote yon prèv ou rete isit la.
site-permit = Ou bezwen yon pèmi.
site-voucher = Ou bezwen yon bon.
container-rules-title = Konsènan: { $container }
hours-open = Louvri kounye a
hours-open-until = Louvri jiska { $time }
hours-closed = Fèmen kounye a
hours-closed-until = Fèmen jiska { $time }
hours-appointment = Sou randevou sèlman
hours-unknown = Nou pa konnen lè yo: rele anvan
hours-day-time = { $day }, { $time }

## Without a network

offline-fetching = N ap anrejistre gid la pou li mache san entènèt…
offline-ready = Anrejistre. Gid la mache san entènèt.
offline-now = Ou pa gen entènèt. Gid la mache nan telefòn sa a.
offline-incomplete = Ou pa gen entènèt epi gid la pa anrejistre nèt. Kèk pati ka manke.
offline-failed = Nou pa t ka anrejistre gid la. Li mache ak entènèt sèlman. Eseye pita.
offline-impossible = Navigatè sa a pa ka anrejistre gid la. Li mache ak entènèt sèlman.
update-ready = Gen yon gid ki pi nouvo.
update-now = Sèvi avè l
offline-lost = Telefòn nan efase gid ki te anrejistre a. N ap anrejistre l ankò…
offline-forgetful = Navigatè sa a pa kite gid la anrejistre anyen. Li mache ak entènèt sèlman epi li bliye lang ou ak zòn ou.
update-failed = Yon gid ki pi nouvo pa rive nèt. Sa a toujou mache, epi telefòn nan ap eseye ankò.

## When something is not there

unknown-item = Pa gen bagay “{ $id }” nan gid sa a. Chèche li pa non.
unknown-category = Pa gen gwoup “{ $id }” nan gid sa a. Chwazi youn sou premye paj la.
unknown-address = Pa gen paj “{ $address }”. Ale sou premye paj la.
unknown-language = Gid sa a poko nan lang “{ $language }”. Chwazi yon lòt lang.
language-broken = Mo yo nan “{ $language }” pa rive nèt. Tcheke koneksyon ou epi chwazi lang nan ankò.
unknown-zone = Pa gen zòn “{ $id }” nan gid sa a. Chwazi pa ou anba paj la.
clock-wrong = Telefòn sa a di jodi a se { $date }. Sa pa posib. Nou pa konnen kisa ki louvri kounye a, epi règ ki chanje ak sezon ka pa bon. Mete bon dat la.
