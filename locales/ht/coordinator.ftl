### The coordinator's screens. Short, clear words; trade words where coordinators use them.

## Around every screen

desk-title = Biwo gid la
desk-title-of = { $program }: biwo gid la
navigation = Pati pwogram nan
undo = Defè
redo = Refè
close = Fèmen
tab-files = Fichye
tab-program = Pwogram
tab-streams = Kouran
tab-zones = Zòn
tab-channels = Chanèl
tab-sites = Kote
tab-rules = Règ
tab-items = Bagay
tab-texts = Tèks
tab-print = Enprime
start-problem-unreachable = Sèvè a pa reponn. Verifye koneksyon an epi rechaje paj la.
start-problem-missing = Yon fichye aplikasyon sa a manke sou sèvè a. Mande moun ki te pibliye li pou pibliye li ankò.
start-problem-broken = Yon fichye aplikasyon sa a rive domaje. Rechaje paj la; si sa kontinye, pibliye aplikasyon an ankò.
recover-title = Yon bagay pa mache sou paj sa a
recover-text = Pwogram ou te anrejistre pandan w ap travay. Telechaje li pou ou pa pèdi l, epi rechaje paj la pou kontinye.
recover-nothing = Pa gen pwogram ki anrejistre nan navigatè sa a.
recover-reload = Rechaje
recover-download = Telechaje pwogram mwen
panels = Konstatasyon, chanjman ak esè

## Saving. $time is a day with a time

save-nothing = Anyen pa louvri
save-saved = Anrejistre sou aparèy sa a
save-waiting = N ap anrejistre…
save-failed = Pa anrejistre
save-again = Eseye anrejistre ankò
save-problem-full = Pa gen plas ankò sou aparèy sa a, kidonk chanjman ou yo pa anrejistre. Ekspòte fichye pwogram nan kounye a, epi fè plas.
save-problem-forbidden = Navigatè sa a pa kite paj la anrejistre anyen, kidonk chanjman ou yo pa anrejistre. Ekspòte fichye pwogram nan anvan ou fèmen fenèt sa a.
save-problem-newer = Yon lòt fenèt anrejistre pwogram sa a apre. Vèsyon ou a pa efase li.
day-and-time = { $day }, { $time }

## Drafts and files. $name, $copy and $program are names of drafts or files

drafts-title = Pwogram sou aparèy sa a
drafts-none = Poko genyen. Louvri demo a, kòmanse yon nouvo pwogram, oswa enpòte yon fichye.
draft-saved = Anrejistre { $time }
draft-remove-sure = Ou vle retire li vre?
draft-second-version = { $name } (dezyèm vèsyon)
draft-diverged = “{ $name }” chanje nan yon lòt fenèt tou. Nou kenbe toude: lòt vèsyon an rele “{ $copy }” kounye a.
open-demo = Louvri demo a
open-demo-hint = Quillmere County, yon kote envante ki ranpli nèt
new-program = Nouvo pwogram
new-program-hint = Kòmanse ak règ sekirite ki deja ladan l yo sèlman
import-file = Enpòte yon fichye pwogram
import-file-hint = Li louvri bò kote lòt pwogram ou yo, li pa ranplase okenn
export-file = Ekspòte fichye pwogram nan
export-file-hint = Yon sèl fichye ak tout bagay, pou kenbe oswa bay
import-refused = “{ $name }” pa ka louvri
import-unchanged = Pwogram ou yo rete jan yo te ye.
import-original = Telechaje fichye a jan li te ye

## Why a program file cannot be read

load-too-large = Fichye a { $megabytes } MB; yon fichye pwogram se { $limit } MB maksimòm. Verifye si se bon fichye a.
load-truncated = Fichye a fini twò bonè, nan liy { $line }. Petèt li te koupe sou wout: kopye li oswa telechaje li ankò.
load-not-json = Yo pa ka li fichye a apati liy { $line }, kolòn { $column }. Si yo te chanje li alamen, korije kote sa a; sinon ekspòte li ankò.
load-other-format = Sa a pa yon fichye pwogram (li di “{ $found }”). Chwazi yon fichye yo te ekspòte isit.
load-newer = Fichye a se vèsyon { $found }; aplikasyon sa a konnen vèsyon jiska { $known }. Sèvi ak yon aplikasyon pi nouvo.
load-shape = Valè nan “{ $path }” pa kalite yo tann nan: { $detail }. Korije li epi enpòte fichye a ankò.
load-too-deep = Yon kondisyon nan règ “{ $rule }” gen plis pase { $limit } nivo. Separe li an plizyè règ.

## Lists and fields in general

list-filter = Filtre
list-add = Ajoute
list-add-one = Ajoute yon lòt
list-new-name = Non nouvo a
list-remove = Retire
list-up = Monte
list-choose = Chwazi youn nan lis la, oswa ajoute youn.
choice-none = Okenn
field-month = Mwa
field-day = Jou
measure-unreadable = Yo pa ka li “{ $stated }”. Ekri yon nonm ak inite li, tankou 2 in, 1 gal, 100 lb.
translations = Nan lòt lang yo
field-name = Non
field-kind = Kalite
field-note = Nòt pou rezidan yo
field-phone = Telefòn
field-email = Imel

## The program's own fields

program-basics = Pwogram sa a
field-program-name = Non gid la
field-program-id = Kòd kout, pou fichye ak adrès
field-edition = Edisyon
field-edition-from = Valab depi
field-guide-url = Adrès gid ki pibliye a
field-source-language = Lang yo ekri tèks yo an premye
field-languages = Lang yo pibliye li
program-contact = Kiyès pou mande
field-contact-name = Non biwo a
field-return-address = Adrès retou sou kat postal
program-silence = Lè okenn règ pa nonmen yon ka
field-silence = Sa silans vle di
silence-undecided = Poko deside (li pa ka pibliye)
silence-ask = Lis louvri: repons lan se “pa nan lis la, mande”
silence-closed = Lis fèmen: yo refize tout sa ki pa nonmen
program-unknown = Lè yon rezidan pa konnen
program-unknown-hint = Sa pou pran nan plas sa yo pa konnen an. Si anyen pa fikse, yo pran valè ki pi pridan an.
unknown-add = Fikse yon lòt
program-counts-as = Sa ki konte kòm yon lòt bagay
program-counts-as-hint = Chak règ trete youn tankou lòt: vit twoub tankou vit klè, pa egzanp.
counts-as-add = Fè
field-these = Sa yo
field-count-as = Konte kòm
program-hazards = Kote danje yo ale
program-hazards-hint = Chak klas bezwen yon chanèl ki pran li san danje, ak yon moun ki apwouve li. Danje pa janm ale nan bak ni poubèl.
field-hazard-channel = Ale nan
field-approved-by = Moun ki apwouve
program-plant = Izin triyaj
field-plant-name = Non izin lan
field-machine-name = Machin
field-machine-limit = Sa li pa ka trete
machine-add = Ajoute yon machin
program-print = Pou fèy enprime
field-short-url = Adrès kout bò kòd QR a
field-indicia = Mak tenb lapòs, liy pa liy
field-statement = Fraz sou papye resikle oswa lòt

## Streams and containers

containers-title = Bak ak resipyan
container-add = Ajoute yon resipyan
container-remove = Retire resipyan sa a
field-container-name = Jan rezidan yo rele li
field-colour = Koulè
field-capacity = Kantite li kenbe, ak inite a
field-container-zones = Sèlman nan zòn sa yo
field-container-dwellings = Sèlman nan kalite kay sa yo
field-set-out = Kilè ak kijan pou mete li deyò
field-container-rules = Règ sou resipyan sa a
field-container-rules-hint = Yo konte pou tout sa yo mete ladan l. Rezidan yo wè yo ak chak repons ki nonmen li.
field-container-rule-add = Yon règ sou
field-container-rule = Nan pwòp mo ou, nan plas fraz nòmal la
field-limit = Limit, ak inite a
field-share = Limit, tankou 10%
limit-missing = Antre limit la, oswa ekri tout règ la nan pwòp mo ou.
residents-read = Rezidan yo li: { $text }
container-rule-kind-lid-closed = Kouvèti fèmen
container-rule-kind-weight = Pwa lè li plen
container-rule-kind-distance = Plas lib alantou
container-rule-kind-side-waste = Bagay bò kote l oswa sou li
container-rule-kind-share-of-load = Ki pati nan chaj la ki ka pa bon
container-rule-kind-liners = Mete sachè ladan l
container-rule-kind-sacks = Sak yo bay
container-rule-kind-registration = Enskri anvan
container-rule-kind-refusals = Lè yo kite li la
stream-kind-recycling = Resiklaj
stream-kind-organics = Òganik
stream-kind-refuse = Fatra
stream-kind-glass = Vit
stream-kind-paper = Papye
stream-kind-film = Plastik fen
container-kind-cart = Bak ak wou
container-kind-bin = Poubèl
container-kind-bag = Sachè
container-kind-box = Kès
container-kind-shared-cart = Bak tout bilding lan
container-kind-dumpster = Gwo kontenè fatra

## Zones

field-dwelling = Kalite kay
field-households = Kantite kay
field-zone-streams = Kouran yo ranmase isit
field-centre = Mitan zòn lan: latitid, lonjitid

## Channels and sites

field-fee = Pri, an mo
field-booking = Fòk pran randevou
field-proof = Fòk gen prèv adrès
field-permit = Fòk gen pèmi
field-voucher = Fòk gen bon
field-allowance = Konbyen oswa konbyen fwa, an mo
field-vehicles = Ki machin ki ka vini, an mo
field-safe-for = Pran danje sa yo san risk
channel-sites =
    { $count ->
        [0] Okenn kote pa pran li ankò.
       *[other] Kote li ye: { $names }
    }
channel-kind-drop-off = Sant depo
channel-kind-store-take-back = Magazen ki reprann
channel-kind-hazardous-waste = Sant dechè danjere
channel-kind-event = Jou ranmasaj
channel-kind-bulky-pickup = Ranmasaj gwo bagay
channel-kind-deposit-return = Retou konsiy
channel-kind-mail-back = Retou pa lapòs
channel-kind-reuse = Resèvi ak repare
channel-kind-medicine-take-back = Reprann medikaman
channel-kind-sharps-take-back = Reprann zegui
channel-kind-police = Lapolis
channel-kind-specialist = Konpayi espesyalis
channel-kind-dealer = Fabrikan oswa machann
channel-kind-health-office = Biwo sante
channel-kind-authority = Otorite pou rele
field-site-channels = Pran bagay chanèl sa yo
field-accepts = Pran sèlman bagay sa yo ladan yo
field-refuses = Pa pran bagay sa yo ladan yo
field-site-vehicles = Ki machin ki ka vini isit, si se pa menm ak chanèl yo
field-address = Adrès
field-position = Pozisyon: latitid, lonjitid
field-hours = Lè li louvri
field-hours-hint = Ekri tankou nan done kat louvri: Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
hours-unreadable = Yo pa ka li lè sa yo: { $detail }

## Rules and their conditions

field-tier = Nivo
field-verdict = Vèdik
rule-adds-steps = Okenn: li sèlman ajoute etap
field-stream = Kouran
field-channel = Chanèl
field-prepare = Preparasyon, nan lòd
field-reason = Rezon
field-machine = Machin ki deside sa
field-residents = Mo pou rezidan yo
field-sorters = Mo pou moun k ap triye
field-contract = Mo kontra a
provenance-title = Kote sa soti
field-decided-by = Moun ki deside
field-source = Sous
field-confirmed = Dènye fwa yo konfime
field-ask-again = Mande ankò
rule-more = Dat, eksepsyon ak apwobasyon
field-also = Lòt ki pran li tou
field-overrides = Pase anvan règ sa yo nan nivo li
field-temporary = Yon règ pwovizwa
field-from = Depi
field-until = Jiska
field-season = Sèlman yon pati nan chak ane
field-season-from = Premye jou sezon an
field-season-until = Dènye jou sezon an
season-says = Chak ane depi { $from } rive { $until }
field-banned-from = Lalwa entèdi li nan
acknowledgement-title = Eksepsyon nan yon règ sekirite ki deja ladan l
acknowledgement-hint = Se yon moun ki bay non li sèlman ki ka pèmèt li, ak yon rezon. Li parèt kòm avètisman chak fwa yo verifye.
field-acknowledged-by = Moun ki pèmèt
field-acknowledged-on = Dat
field-acknowledged-because = Paske
condition-title = Lè
condition-always = Toujou: règ la pa gen kondisyon.
condition-begin = Ajoute yon kondisyon
condition-kind = Kijan pati yo konte
condition-all = Tout sa yo
condition-any = Omwen youn nan sa yo
condition-not = Pa sa a
condition-fact = Fè
condition-is = se youn nan
condition-add-fact = Ajoute yon fè
condition-add-group = Ajoute yon gwoup
condition-remove = Retire pati kondisyon sa a
bound-at-least = omwen
bound-over = plis pase
bound-at-most = maksimòm
bound-under = mwens pase
bound-value = Mezi ak inite a
bound-day = Jou
bound-like = Konparezon chak jou
bound-per = Konte

## Items. $item is an item's name

items-all = Tout
items-answer = Repons
items-asks = Poze yon kesyon
items-ask = Eseye
items-ask-name = Eseye: { $item }
items-rule = Ale nan règ la
items-decide = Deside
items-decide-name = Deside: { $item }
items-count =
    { $count ->
       *[other] { $count } bagay
    }

## Texts and their translations

texts-language = Lang
texts-state = Eta
text-state-missing = Manke
text-state-unreviewed = Pa verifye
text-state-reviewed = Verifye
text-state-outdated = Depase
text-step = Etap preparasyon
text-label = { $whose }: { $what }
texts-reviewer = Non ou, pou siyen
texts-reviewer-needed = Antre non ou anvan: yon verifikasyon siyen.
texts-sign-off = Mwen verifye sa
texts-count = { $done } verifye sou { $all }
review-title = Eta chak lang
review-screens = Mo ekran yo: { $state }
review-source = lang lòt yo soti ladan l
review-by = { $name } te tcheke l { $date }
review-outdated = { $name } te tcheke l { $date }, men anglè a chanje depi lè sa a
review-texts = Tèks pa ou: { $done } sou { $all } tcheke
review-names = Siyen pa { $names }

## What changed, and trying the guide

ask-title = Mande tankou yon rezidan
changes-title = Sa chanjman ou yo fè
changes-count =
    { $count ->
        [0] Okenn repons pa chanje.
       *[other] { $count } repons chanje.
    }
changes-absent = Pa nan gid la
changes-details = Kote a menm; preparasyon an oswa rezon an chanje.
changes-mark = Konpare apati isit

## Findings. $item is an item's name, $answers a list such as "Wet: dry"

findings-title = Konstatasyon
findings-count = Erè: { $errors } · Avètisman: { $warnings } · Remak: { $notices }
findings-more =
    { $count ->
       *[other] ak { $count } lòt
    }
severity-error = Erè
severity-warning = Avètisman
severity-notice = Remak
severity-pass = Bon
witness = Pa egzanp: { $item }, lè { $answers }
witness-item = Pa egzanp: { $item }

## What a finding says, and below it what to do. Values are ids and texts of the program

finding-uncovered-case = Okenn règ pa deside ka sa a.
    .hint = Ekri yon règ pou li, oswa di sou ekran pwogram nan sa silans vle di.
finding-conflicting-rules = Règ nan menm nivo voye menm bagay la nan kote diferan: { $rules }.
    .hint = Chanje kondisyon youn, oswa fè youn pase anvan lòt la.
finding-hazard-not-safe =
    { $problem ->
        [no-channel] Danje “{ $class }” pa gen chanèl.
        [unknown-channel] Danje “{ $class }” ale nan yon chanèl ki pa egziste.
        [channel-does-not-take-it] Danje “{ $class }” ale nan yon chanèl ki pa make kòm san risk pou li.
       *[rule] Règ “{ $id }” voye danje “{ $class }” yon kote ki pa san risk pou li.
    }
    .hint = Chwazi yon chanèl ki pran li san risk. Danje pa janm ale nan bak ni poubèl.
finding-hazard-acknowledged = { $by } pèmèt yon eksepsyon nan yon règ sekirite ki deja ladan l: “{ $id }”.
    .hint = Verifye lalwa lokal ak kote a pèmèt sa, epi rezon an bon toujou.
finding-rule-never-applies = Règ “{ $id }” pa janm deside anyen.
    .hint = Règ anvan li deside tout ka li yo, oswa okenn bagay pa mache ak kondisyon li. Chanje li oswa retire li.
finding-not-listed = Kèk ka bagay sa a jwenn repons “pa nan lis la, mande”.
    .hint = Sa pèmèt. Ekri yon règ si ou konnen repons lan.
finding-missing-provenance = Pèsonn pa ka wè kote desizyon règ “{ $id }” soti. Sa ki manke: { $missing }.
    .hint = Antre kiyès ki deside, ki sous, ak dènye fwa izin lan konfime li.
finding-missing-translation =
    { $state ->
        [unreviewed] Tèks an “{ $language }” pèsonn pa verifye: { $count }. Premye a se “{ $first }”.
        [outdated] Tèks an “{ $language }” ki gen sous yo chanje depi: { $count }. Premye a se “{ $first }”.
       *[missing] Tèks ki manke an “{ $language }”: { $count }. Premye a se “{ $first }”.
    }
    .hint = Louvri ekran tèks yo epi filtre pa lang ak eta.
finding-broken-condition =
    { $problem ->
        [unknown-fact] Pa gen fè “{ $fact }”.
        [no-values] Fè “{ $fact }” pa konpare ak anyen.
        [no-number] “{ $value }” pou “{ $fact }” pa gen nonm.
        [no-unit] “{ $value }” pou “{ $fact }” pa gen inite.
        [unknown-unit] Yo pa konnen inite “{ $value }” pou “{ $fact }”.
        [wrong-dimension] “{ $value }” pa mezire “{ $fact }”.
        [negative] “{ $value }” pou “{ $fact }” mwens pase anyen.
        [too-large] “{ $value }” pou “{ $fact }” twò gwo pou li vre.
        [unknown-part] Pa gen pati “{ $value }”.
        [range-reversed] Entèval “{ $value }” pou “{ $fact }” alanvè.
       *[unknown-value] “{ $value }” pa yon valè pou “{ $fact }”.
    }
    .hint = Chwazi nan lis la. Ekri yon mezi ak inite li, tankou 2 in, 1 gal oswa 10 lb.
finding-broken-item =
    { $problem ->
        [unknown-fact] Pa gen fè “{ $fact }”.
        [no-values] Fè “{ $fact }” pa konpare ak anyen.
        [no-number] “{ $value }” pou “{ $fact }” pa gen nonm.
        [no-unit] “{ $value }” pou “{ $fact }” pa gen inite.
        [unknown-unit] Yo pa konnen inite “{ $value }” pou “{ $fact }”.
        [wrong-dimension] “{ $value }” pa mezire “{ $fact }”.
        [negative] “{ $value }” pou “{ $fact }” mwens pase anyen.
        [too-large] “{ $value }” pou “{ $fact }” twò gwo pou li vre.
        [unknown-part] Pa gen pati “{ $value }”.
        [no-such-sides] Bò yo bay yo pa kite okenn gwosè posib: bò ki pi long lan dwe pi long.
        [no-range] Entèval “{ $fact }” pa gen kòmansman oswa fen.
        [range-reversed] Entèval “{ $value }” pou “{ $fact }” alanvè.
       *[unknown-value] “{ $value }” pa yon valè pou “{ $fact }”.
    }
    .hint = Chwazi nan lis la. Ekri yon mezi ak inite li, tankou 2 in, 1 gal oswa 10 lb.
finding-broken-reference =
    { $kind ->
        [stream] Kouran “{ $target }” pa egziste.
        [channel] Chanèl “{ $target }” pa egziste.
        [zone] Zòn “{ $target }” pa egziste.
        [step] Etap preparasyon “{ $target }” pa egziste.
        [reason] Rezon “{ $target }” pa egziste.
        [machine] Machin “{ $target }” pa egziste.
        [item] Bagay “{ $target }” pa egziste.
        [rule-of-tier] Règ “{ $target }” nan yon lòt nivo, kidonk yo pa ka pase anvan li.
       *[rule] “{ $target }” pa egziste.
    }
    .hint = Chwazi yon lòt, oswa ajoute sa ki manke. Yon non vid vle di anyen poko chwazi.
finding-circular-override = Règ sa yo youn pase anvan lòt an wonn: { $rules }.
    .hint = Retire youn nan lis “pase anvan”.
finding-destination-not-offered = Règ “{ $id }” voye bagay nan kouran “{ $stream }”, ki pa ranmase nan zòn “{ $zone }”.
    .hint = Ajoute kouran an nan zòn lan, oswa ekri yon lòt règ pou zòn sa a.
finding-duplicate-id =
    { $times ->
        [0] Yon bagay isit pa gen kòd.
       *[other] Kòd “{ $id }” sèvi { $times } fwa.
    }
    .hint = Bay chak pwòp kòd pa l. Lyen, etikèt ak tradiksyon depann de li.
finding-printed-line-untrue =
    { $span ->
        [from] Liy enprime “{ $line }” pa vre depi { $since }.
        [until] Liy enprime “{ $line }” pa vre jiska { $until }.
        [between] Liy enprime “{ $line }” pa vre depi { $since } rive { $until }.
       *[always] Liy enprime “{ $line }” pa vre nan edisyon sa a.
    }
    .hint = Enprime fèy la ankò oswa kouvri liy lan. Lè fèy la pa deyò ankò, antre jou yo retire li.
finding-suspicious-text =
    { $problem ->
        [markup] Tèks “{ $key }” ({ $language }) gen kòd mizanpaj: { $shown }
        [direction] Tèks “{ $key }” ({ $language }) gen yon karaktè ki chanje sans ekriti a: { $shown }
       *[control] Tèks “{ $key }” ({ $language }) gen yon karaktè envizib: { $shown }
    }
    .hint = Tèks yo senp. Efase li epi retape mo yo.
finding-too-complex = Gen tèlman bagay ki louvri sou sa a, yo pa ka gade tout ka li yo (fè ki louvri: { $count }).
    .hint = Fikse kèk nan fè li yo, oswa separe li an plizyè bagay.
finding-too-many-thresholds = Règ yo bay tèlman limit, yo pa ka gade tout ka kèk bagay ({ $count }). Pifò se pou “{ $fact }”: { $thresholds }.
    .hint = Fè règ yo pataje limit, epi retire règ ki fini yo.
finding-unreadable-hours = Yo pa ka li lè louvri “{ $hours }”: { $problem }
    .hint = Ekri yo konsa: Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
finding-unusable-setting = “{ $value }” pa ka sèvi isit.
    .hint = Chwazi yon valè nan lis la, oswa korije li: yon koulè ekri #2a7f4f, yon pozisyon ekri latitid ak lonjitid, yon adrès kòmanse ak https://

## Comparing with a file. $name is a file's name

compare-file-title = Konpare ak yon lòt fichye
compare-file = Chwazi yon edisyon pi ansyen, oswa pwogram yon vwazen
compare-file-name = Konpare ak “{ $name }”.
compare-newer = Fichye a se pi nouvo nan de yo
compare-notice = Avi sou sa ki chanje
compare-copy = Kopye avi a
compare-copied = Kopye.
compare-not-copied = Navigatè a pa kopye. Chwazi tèks la epi kopye li.
compare-download = Telechaje avi a

## The register of printed sheets. $id is a sheet's id, $day a date

printed-title = Sa ki enprime
printed-copies = Kantite kopi
printed-note = Note li enprime
printed-entry =
    { $copies ->
        [0] { $id }, { $day }
       *[other] { $id }, { $day }, { $copies } kopi
    }
printed-withdrawn = retire { $day }
printed-withdraw = Pa deyò ankò
printed-still-out = Li deyò toujou
finding-question-never-matters =
    { $problem ->
        [unknown] Yo fikse sa ki konte lè pèsonn pa konnen “{ $fact }”, men okenn repons pa bezwen li.
       *[open] Bagay sa a kite “{ $fact }” louvri, men okenn repons sou li pa depann de sa.
    }
    .hint = Yo pa mande pèsonn sa. Kite li, oswa ekri règ ki bezwen li a.
finding-steps-contradict = Yon repons mande “{ $one }” ak “{ $other }”, ki pa ka fèt toude. Règ: { $rules }.
    .hint = Retire youn nan de etap yo nan règ li, oswa chanje yon kondisyon pou youn sèl nan règ yo konte.
finding-preparation-contradicts =
    { $problem ->
        [none] Moun ki swiv etap “{ $step }” nan règ “{ $id }” fè “{ $fact }” tounen “{ $value }”, epi okenn règ pa voye li la.
       *[rule] Moun ki swiv etap “{ $step }” nan règ “{ $id }” fè “{ $fact }” tounen “{ $value }”, epi règ “{ $other }” voye li yon lòt kote.
    }
    .hint = Retire etap la nan règ la, oswa fè règ la konte tou pou sa etap la kite.
finding-site-never-used =
    { $problem ->
        [item] Yo di kote “{ $id }” pran “{ $item }”, men yo pa janm voye li nan yon chanèl kote sa a.
       *[site] Yo pa janm voye anyen nan kote “{ $id }”.
    }
    .hint = Ekri yon règ ki voye bagay nan youn nan chanèl li yo, ba li yon lòt chanèl, oswa retire li nan lis la.
finding-no-site-takes =
    { $problem ->
        [refused] Yo voye “{ $item }” nan chanèl “{ $id }”, men okenn kote li pa pran li.
       *[none] Yo voye bagay tankou “{ $item }” nan chanèl “{ $id }”, ki pa gen kote pou ale.
    }
    .hint = Ajoute yon kote, fè youn nan kote yo pran li, oswa voye li nan yon lòt chanèl.
finding-item-without-name = Bagay “{ $id }” pa gen non pou montre. Lang ki pa genyen: { $languages }.
    .hint = Antre non li nan lang pwogram nan ekri a.
finding-name-twice = Bagay “{ $id }” ak “{ $other }” toude rele “{ $name }” an “{ $language }”.
    .hint = Bay youn yon non ki fè diferans lan. Rezidan yo chwazi pa non.
finding-banned-destination = Yo voye “{ $item }” nan kouran “{ $stream }”, kote lalwa entèdi li. Règ: { $rules }.
    .hint = Voye li nan yon lòt kouran oswa chanèl, oswa korije entèdiksyon an kote li ekri a.
finding-impossible-condition =
    { $problem ->
        [fact] Kondisyon règ “{ $id }” pa ka janm vre: sa li mande pou “{ $fact }” kontredi tèt li.
       *[parts] Kondisyon règ “{ $id }” pa ka janm vre: pati li yo youn kontredi lòt.
    }
    .hint = Korije oswa retire youn nan pati yo. Si youn ase, sèvi ak “omwen youn nan sa yo”.
finding-empty-condition =
    { $problem ->
        [any] Kondisyon règ “{ $id }” gen yon gwoup vid “omwen youn nan sa yo”, ki pa janm vre.
       *[all] Kondisyon règ “{ $id }” gen yon gwoup vid “tout sa yo”, ki toujou vre.
    }
    .hint = Ajoute sa ki dwe nan gwoup la, oswa retire gwoup la.
finding-rule-without-condition = Règ “{ $id }” pa gen kondisyon: li deside tout sa yon nivo anvan pa deside.
    .hint = Ekri kilè li vre. Si li pou tout rès la, mete l nan nivo “default”.
finding-text-missing-register =
    { $register ->
        [contract] Règ san mo kontra a: { $count }. Premye a se “{ $first }”.
        [sorters] Règ san mo pou moun k ap triye: { $count }. Premye a se “{ $first }”.
       *[residents] Règ san mo ni rezon pou rezidan yo: { $count }. Premye a se “{ $first }”.
    }
    .hint = Antre yo sou ekran règ la, pou toulètwa di menm bagay.
finding-unused-thing =
    { $kind ->
        [stream] Okenn règ pa voye anyen nan kouran “{ $id }”.
        [channel] Ni règ ni danje pa ale nan chanèl “{ $id }”.
        [step] Okenn règ pa mande etap “{ $id }”.
        [zone] Anyen pa diferan nan zòn “{ $id }”: okenn règ, resipyan oswa kouran pa nonmen li.
       *[machine] Okenn règ pa nonmen machin “{ $id }”.
    }
    .hint = Kite li si w ap bezwen li; sinon retire li.
finding-counts-as-broken =
    { $problem ->
        [unknown-fact] Pa gen fè “{ $fact }” ki gen valè ki ta ka konte kòm yon lòt.
        [unlisted-fact] “{ $fact }” pa gen lis valè, kidonk okenn pa ka konte kòm yon lòt.
        [unknown-value] “{ $value }” pa yon valè pou “{ $fact }”.
        [danger] “{ $fact }” se yon danje: okenn valè li pa janm konte kòm yon lòt.
        [nothing] Yo pa nonmen anyen ki konte kòm “{ $value }” pou “{ $fact }”.
        [itself] “{ $value }” pou “{ $fact }” konte kòm tèt li.
        [twice] “{ $value }” pou “{ $fact }” konte kòm de valè diferan.
        [circle] Valè “{ $fact }” youn konte kòm lòt an wonn, “{ $value }” ladan yo.
       *[chain] “{ $value }” pou “{ $fact }” deja konte kòm yon lòt valè, kidonk anyen pa ka konte kòm li.
    }
    .hint = Chwazi valè nan lis la. Chak konte kòm yon sèl lòt valè, ki konte kòm tèt li sèlman.
finding-season-broken =
    { $problem ->
        [reversed] Dènye jou règ “{ $id }” anvan premye a: { $value }.
       *[not-a-year-day] “{ $value }” pa yon jou nan ane a, kidonk yo pa ka li sezon règ “{ $id }”.
    }
    .hint = Ekri mwa ak jou, tankou 11-01. Yon sezon ka pase nouvèl ane; jou ki gen ane pa kapab.
finding-container-rule-broken =
    { $problem ->
        [unknown-kind] “{ $value }” pa yon kalite règ pou resipyan “{ $id }”.
        [twice] Resipyan “{ $id }” gen de règ kalite “{ $value }”.
        [limit] Yo pa ka li limit “{ $value }” resipyan “{ $id }”.
       *[unknown-dwelling] “{ $value }” pa yon kalite kay, kidonk resipyan “{ $id }” pa sèvi nan okenn.
    }
    .hint = Chwazi nan lis la, mete de tèks yo nan yon sèl règ, oswa ekri yon limit ak inite li: 100 lb, 3 ft, 10%.
finding-comparison-broken =
    { $problem ->
        [unknown-like] Pa gen bagay chak jou “{ $value }” pou konpare “{ $fact }”.
        [other-dimension] “{ $value }” pa di anyen sou “{ $fact }”: se yon lòt kalite mezi.
        [far] “{ $value }” plis pase de fwa pi gwo oswa pi piti pase mezi yo bay pou “{ $fact }”.
       *[unknown-period] Yo pa ka konte “{ $fact }” pa “{ $value }”.
    }
    .hint = Chwazi youn nan lis la, oswa pa mete konparezon.

## Ways to mend a finding, on buttons and in lists. Values are ids and texts of the program

fix-replace = Mete “{ $with }” nan plas “{ $value }”
fix-choose = Chwazi “{ $with }”
fix-remove = Retire “{ $value }”
fix-replace-fact = Konpare “{ $with }” nan plas “{ $fact }”
fix-replace-value = Mete “{ $with }” nan plas “{ $value }”
fix-remove-value = Retire “{ $value }” nan kondisyon an
fix-replace-item-fact = Mete fè “{ $with }” nan plas “{ $fact }”
fix-remove-rule = Retire règ “{ $rule }”
fix-go-before = Fè “{ $rule }” pase anvan { $over }
fix-not-before = Pa fè “{ $rule }” pase anvan “{ $over }” ankò
fix-silence-undecided = Kite sa silans vle di louvri
fix-silence-ask = Lis louvri: reponn “pa nan lis la, mande” pou sa okenn règ pa nonmen
fix-silence-closed = Lis fèmen: refize sa okenn règ pa nonmen
fix-answer-yes = Fè bouyon yon règ: “{ $item }” ale nan “{ $stream }”
fix-answer-no = Fè bouyon yon règ: yo pa pran “{ $item }”, li ale nan “{ $stream }”
fix-route = Voye danje “{ $class }” nan chanèl “{ $channel }”
fix-send-to = Voye sa règ “{ $rule }” pale a nan chanèl “{ $channel }”
fix-collect = Ranmase “{ $stream }” nan zòn “{ $zone }” tou
fix-except-zone = Pa aplike règ “{ $rule }” nan zòn “{ $zone }”
fix-own-ids = Bay nouvo kòd: { $with }
fix-remove-twins = Retire kopi ki menm nan tout bagay
fix-swap-dates = Chanje plas premye ak dènye jou a
fix-drop-from = Retire premye jou a
fix-drop-until = Retire dènye jou a
fix-drop-season = Retire sezon an
fix-swap-position = Chanje plas latitid ak lonjitid
fix-add-language = Pibliye an “{ $language }” tou
fix-remove-empty = Retire gwoup vid yo
fix-remove-unused = Retire “{ $id }”
fix-drop-counting = Pa kite anyen konte kòm “{ $value }” pou “{ $fact }”
fix-clean-text = Retire li nan tèks la
mend-title = Fason pou ranje li
mend-done = Fèt: { $fix }. Ou ka defè li.
mend-gone = Anyen pa chanje: pwogram nan pa jan li te ye lè yo te pwopoze sa.
