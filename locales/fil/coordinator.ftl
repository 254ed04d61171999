### Mga screen ng coordinator. Maikli at malinaw; salitang pantrabaho kung saan iyon ang gamit.

## Sa paligid ng bawat screen

desk-title = Mesa ng gabay
desk-title-of = { $program }: mesa ng gabay
navigation = Mga bahagi ng programa
undo = I-undo
redo = I-redo
close = Isara
tab-files = Mga file
tab-program = Programa
tab-streams = Mga stream
tab-zones = Mga lugar
tab-channels = Mga channel
tab-sites = Mga site
tab-rules = Mga tuntunin
tab-items = Mga bagay
tab-texts = Mga teksto
tab-print = I-print
start-problem-unreachable = Hindi sumagot ang server. Tingnan ang koneksiyon at i-load ulit ang pahina.
start-problem-missing = May kulang na file ng app sa server. Ipa-publish ulit sa nag-publish nito.
start-problem-broken = Sirang dumating ang isang file ng app. I-load ulit ang pahina; kung ganoon pa rin, i-publish ulit ang app.
recover-title = May nangyaring mali sa pahinang ito
recover-text = Na-save ang programa habang nagtatrabaho kayo. I-download muna para sigurado, saka i-load ulit ang pahina.
recover-nothing = Walang naka-save na programa sa browser na ito.
recover-reload = I-load ulit
recover-download = I-download ang programa ko
panels = Mga nakita, pagbabago at pagsubok

## Pag-save

save-nothing = Walang nakabukas
save-saved = Naka-save sa device na ito
save-waiting = Sine-save…
save-failed = Hindi na-save
save-again = Subukang i-save ulit
save-problem-full = Wala nang lugar sa device, kaya hindi nase-save ang mga pagbabago. I-export ngayon ang file ng programa, saka magbakante.
save-problem-forbidden = Hindi pinapayagan ng browser na mag-save ang pahina, kaya hindi nase-save ang mga pagbabago. I-export ang file bago isara ang window.
save-problem-newer = May ibang window na nag-save ng programang ito. Hindi pinatungan ng sa inyo.
day-and-time = { $day }, { $time }

## Mga borador at file

drafts-title = Mga programa sa device na ito
drafts-none = Wala pa. Buksan ang halimbawa, magsimula ng bagong programa, o mag-import ng file.
draft-saved = Na-save { $time }
draft-remove-sure = Talagang aalisin?
draft-second-version = { $name } (ikalawang bersiyon)
draft-diverged = Binago rin ang “{ $name }” sa ibang window. Parehong itinago: “{ $copy }” na ang isa.
open-demo = Buksan ang halimbawa
open-demo-hint = Quillmere County, isang kathang lugar na puno na ang lahat
new-program = Bagong programa
new-program-hint = Magsimula sa mga nakahandang tuntuning pangkaligtasan lang
import-file = Mag-import ng file ng programa
import-file-hint = Bubukas ito katabi ng iba at walang papalitan
export-file = I-export ang file ng programa
export-file-hint = Isang file na may laman ng lahat, para itago o ipasa
import-refused = Hindi mabuksan ang “{ $name }”
import-unchanged = Walang nabago sa mga programa ninyo.
import-original = I-download ang file nang walang pagbabago

## Bakit hindi mabasa ang file ng programa

load-too-large = { $megabytes } MB ang file; hanggang { $limit } MB lang ang file ng programa. Tingnan kung tamang file ito.
load-truncated = Putol ang file sa linya { $line }. Baka naputol sa pagkopya: kopyahin o i-download ulit.
load-not-json = Hindi mabasa ang file mula linya { $line }, hanay { $column }. Kung inedit nang mano-mano, ayusin doon; kung hindi, i-export ulit.
load-other-format = Hindi ito file ng programa (ang nakasulat: “{ $found }”). Pumili ng file na in-export dito.
load-newer = Bersiyon { $found } ang file; hanggang { $known } lang ang alam ng app. Gumamit ng mas bagong app.
load-shape = Iba sa inaasahan ang nasa “{ $path }”: { $detail }. Ayusin doon at i-import ulit ang file.
load-too-deep = Higit sa { $limit } ang lalim ng kondisyon ng tuntuning “{ $rule }”. Hatiin sa ilang tuntunin.

## Mga listahan at patlang sa pangkalahatan

list-filter = Salain
list-add = Magdagdag
list-add-one = Magdagdag pa ng isa
list-new-name = Pangalan ng bago
list-remove = Alisin
list-up = Iakyat
list-choose = Pumili sa listahan, o magdagdag.
choice-none = Wala
field-month = Buwan
field-day = Araw
measure-unreadable = Hindi mabasa ang “{ $stated }”. Sumulat ng numero at yunit, tulad ng 2 in, 1 gal, 100 lb.
translations = Sa ibang mga wika
field-name = Pangalan
field-kind = Uri
field-note = Paalala sa mga residente
field-phone = Telepono
field-email = E-mail

## Mga patlang ng programa mismo

program-basics = Ang programang ito
field-program-name = Pangalan ng gabay
field-program-id = Maikling id, para sa file at address
field-edition = Edisyon
field-edition-from = May bisa mula
field-guide-url = Address ng nailathalang gabay
field-source-language = Wikang unang pinagsusulatan
field-languages = Mga wikang inilalathala
program-contact = Sino ang tatanungin
field-contact-name = Pangalan ng tanggapan
field-return-address = Return address sa mga postcard
program-silence = Kapag walang tuntuning sumasaklaw
field-silence = Ano ang ibig sabihin nito
silence-undecided = Hindi pa napagpasyahan (hindi maipa-publish)
silence-ask = Bukas na listahan: ang sagot ay “wala sa listahan, itanong”
silence-closed = Saradong listahan: tinatanggihan ang hindi nakasulat
program-unknown = Kapag hindi masabi ng residente
program-unknown-hint = Ano ang kukunin kapalit ng hindi alam. Kung walang nakatakda, ang maingat na sagot ang kukunin.
unknown-add = Magtakda pa ng isa
program-counts-as = Ano ang itinuturing na iba
program-counts-as-hint = Pareho nang turing ng bawat tuntunin sa dalawa: halimbawa, ang malabong salamin bilang malinaw.
counts-as-add = Katangian
field-these = Ang mga ito
field-count-as = Ituring na
program-hazards = Saan pupunta ang mga panganib
program-hazards-hint = Kailangan ng bawat uri ang channel na ligtas na tumatanggap, at taong nag-apruba. Hindi napupunta sa cart o bin ang panganib.
field-hazard-channel = Pupunta sa
field-approved-by = Inaprubahan ni
program-plant = Planta ng pagbubukod
field-plant-name = Pangalan ng planta
field-machine-name = Makina
field-machine-limit = Ang hindi nito kaya
machine-add = Magdagdag ng makina
program-print = Para sa mga nakalimbag
field-short-url = Maikling address sa tabi ng QR code
field-indicia = Tatak ng selyo, bawat linya
field-statement = Pahayag sa recycled na papel o katulad

## Mga stream at lalagyan

containers-title = Mga lalagyan
container-add = Magdagdag ng lalagyan
container-remove = Alisin ang lalagyang ito
field-container-name = Tawag dito ng mga residente
field-colour = Kulay
field-capacity = Laman, may yunit
field-container-zones = Sa mga lugar na ito lang
field-container-dwellings = Sa ganitong tirahan lang
field-set-out = Kailan at paano ilalabas
field-container-rules = Mga tuntunin sa lalagyang ito
field-container-rules-hint = May bisa anuman ang ilagay rito. Nakikita ng mga residente sa bawat sagot na bumabanggit dito.
field-container-rule-add = Tuntunin tungkol sa
field-container-rule = Sa sarili ninyong salita, kapalit ng karaniwang pangungusap
field-limit = Hangganan, may yunit
field-share = Hangganan, tulad ng 10%
limit-missing = Isulat ang hangganan, o isulat ang buong tuntunin sa sarili ninyong salita.
residents-read = Mababasa ng residente: { $text }
container-rule-kind-lid-closed = Saradong takip
container-rule-kind-weight = Bigat kapag puno
container-rule-kind-distance = Luwang sa palibot
container-rule-kind-side-waste = Mga nasa tabi o ibabaw
container-rule-kind-share-of-load = Gaano karami ang puwedeng mali sa karga
container-rule-kind-liners = Paglalagay ng bag na sapin
container-rule-kind-sacks = Mga sakong ibinibigay
container-rule-kind-registration = Pagpapalista muna
container-rule-kind-refusals = Kailan ito iniiwan
stream-kind-recycling = Recycling
stream-kind-organics = Nabubulok
stream-kind-refuse = Basura
stream-kind-glass = Salamin
stream-kind-paper = Papel
stream-kind-film = Manipis na plastik
container-kind-cart = Cart na may gulong
container-kind-bin = Bin
container-kind-bag = Bag
container-kind-box = Kahon
container-kind-shared-cart = Pinaghahatiang cart ng gusali
container-kind-dumpster = Malaking basurahan

## Mga lugar

field-dwelling = Uri ng tirahan
field-households = Bilang ng tirahan
field-zone-streams = Mga stream na hinahakot dito
field-centre = Gitna ng lugar: latitude, longitude

## Mga channel at site

field-fee = Bayad, sa salita
field-booking = Kailangang magpareserba
field-proof = Kailangan ng patunay ng tirahan
field-permit = Kailangan ng permit
field-voucher = Kailangan ng voucher
field-allowance = Gaano karami o kadalas, sa salita
field-vehicles = Aling sasakyan ang puwede, sa salita
field-safe-for = Ligtas na tumatanggap ng mga panganib na ito
channel-sites =
    { $count ->
        [0] Wala pang site na tumatanggap.
        [one] Site: { $names }
       *[other] Mga site: { $names }
    }
channel-kind-drop-off = Drop-off center
channel-kind-store-take-back = Sauli sa tindahan
channel-kind-hazardous-waste = Pasilidad ng mapanganib na basura
channel-kind-event = Araw ng kolekta
channel-kind-bulky-pickup = Hakot ng malalaki
channel-kind-deposit-return = Balik ng deposito
channel-kind-mail-back = Padala sa koreo
channel-kind-reuse = Muling gamit at kumpuni
channel-kind-medicine-take-back = Sauli ng gamot
channel-kind-sharps-take-back = Sauli ng karayom
channel-kind-police = Pulis
channel-kind-specialist = Espesyalistang kompanya
channel-kind-dealer = Gumawa o nagbenta
channel-kind-health-office = Tanggapan ng kalusugan
channel-kind-authority = Tanggapang tatawagan
field-site-channels = Tumatanggap ng mga bagay ng mga channel na ito
field-accepts = Ang mga ito lang ang tinatanggap
field-refuses = Hindi tinatanggap ang mga ito
field-site-vehicles = Aling sasakyan ang puwede rito, kung iba sa mga channel nito
field-address = Address
field-position = Posisyon: latitude, longitude
field-hours = Oras ng bukas
field-hours-hint = Isulat gaya sa open map data: Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
hours-unreadable = Hindi mabasa ang oras na ito: { $detail }

## Mga tuntunin at kondisyon

field-tier = Antas
field-verdict = Pasya
rule-adds-steps = Wala: hakbang lang ang idinadagdag
field-stream = Stream
field-channel = Channel
field-prepare = Paghahanda, sunod-sunod
field-reason = Dahilan
field-machine = Makinang dahilan nito
field-residents = Salita para sa residente
field-sorters = Salita para sa nagbubukod
field-contract = Salita ng kontrata
provenance-title = Saan ito galing
field-decided-by = Nagpasya
field-source = Pinagkunan
field-confirmed = Huling kinumpirma
field-ask-again = Itanong ulit sa
rule-more = Mga petsa, eksepsiyon at apruba
field-also = Tinatanggap din ng
field-overrides = Nauuna sa mga tuntuning ito sa antas nito
field-temporary = Pansamantalang kautusan
field-from = Mula
field-until = Hanggang
field-season = Sa isang bahagi lang ng bawat taon
field-season-from = Unang araw ng panahon
field-season-until = Huling araw ng panahon
season-says = Bawat taon mula { $from } hanggang { $until }
field-banned-from = Bawal sa batas sa
acknowledgement-title = Eksepsiyon sa nakahandang tuntuning pangkaligtasan
acknowledgement-hint = Taong pinangalanan lang ang makapagpapahintulot, may dahilan. Lumalabas ito bilang babala sa bawat suri.
field-acknowledged-by = Pinahintulutan ni
field-acknowledged-on = Kailan
field-acknowledged-because = Dahil
condition-title = Kailan
condition-always = Lagi: walang kondisyon ang tuntunin.
condition-begin = Magdagdag ng kondisyon
condition-kind = Paano binibilang ang mga bahagi
condition-all = Lahat ng ito
condition-any = Alinman sa mga ito
condition-not = Hindi ito
condition-fact = Katangian
condition-is = ay isa sa
condition-add-fact = Magdagdag ng katangian
condition-add-group = Magdagdag ng grupo
condition-remove = Alisin ang bahaging ito ng kondisyon
bound-at-least = hindi bababa sa
bound-over = higit sa
bound-at-most = hindi hihigit sa
bound-under = mas mababa sa
bound-value = Sukat na may yunit
bound-day = Araw
bound-like = Pang-araw-araw na paghahambing
bound-per = Binibilang

## Mga bagay

items-all = Lahat
items-answer = Sagot
items-asks = May itinatanong
items-ask = Subukan
items-ask-name = Subukan: { $item }
items-rule = Pumunta sa tuntunin
items-decide = Magpasya
items-decide-name = Magpasya: { $item }
items-count =
    { $count ->
        [one] { $count } bagay
       *[other] { $count } na bagay
    }

## Mga teksto at salin

texts-language = Wika
texts-state = Lagay
text-state-missing = Kulang
text-state-unreviewed = Hindi nasuri
text-state-reviewed = Nasuri
text-state-outdated = Luma na
text-step = Hakbang sa paghahanda
text-label = { $whose }: { $what }
texts-reviewer = Pangalan ninyo, bilang pirma
texts-reviewer-needed = Isulat muna ang pangalan: may pirma ang pagsusuri.
texts-sign-off = Nasuri ko na ito
texts-count = { $done } sa { $all } ang nasuri
review-title = Kalagayan ng bawat wika
review-screens = Mga salita ng screen: { $state }
review-source = ang wikang pinagkunan ng iba
review-by = sinuri ni { $name } noong { $date }
review-outdated = sinuri ni { $name } noong { $date }, pero nagbago na ang Ingles
review-texts = Sarili ninyong teksto: { $done } sa { $all } ang nasuri
review-names = Nilagdaan ni: { $names }

## Ano ang nagbago, at pagsubok sa gabay

ask-title = Magtanong bilang residente
changes-title = Ano ang nabago ng edit ninyo
changes-count =
    { $count ->
        [0] Walang sagot na naiba.
        [one] { $count } sagot ang naiba.
       *[other] { $count } na sagot ang naiba.
    }
changes-absent = Wala sa gabay
changes-details = Pareho ang lugar; naiba ang paghahanda o ang dahilan.
changes-mark = Maghambing mula rito

## Mga nakita

findings-title = Mga nakita
findings-count = Mali: { $errors } · Babala: { $warnings } · Paunawa: { $notices }
findings-more =
    { $count ->
        [one] at { $count } pa
       *[other] at { $count } pa
    }
severity-error = Mali
severity-warning = Babala
severity-notice = Paunawa
severity-pass = Tama
witness = Halimbawa: { $item }, kapag { $answers }
witness-item = Halimbawa: { $item }

## Ang sinasabi ng nakita, at sa ibaba ang gagawin

finding-uncovered-case = Walang tuntuning nagpapasya sa kasong ito.
    .hint = Sumulat ng tuntunin, o sabihin sa screen ng programa kung ano ang kahulugan ng katahimikan.
finding-conflicting-rules = Magkaibang lugar ang itinuturo ng mga tuntunin ng isang antas: { $rules }.
    .hint = Baguhin ang kondisyon ng isa, o paunahin ang isa sa iba.
finding-hazard-not-safe =
    { $problem ->
        [no-channel] Walang channel ang panganib na “{ $class }”.
        [unknown-channel] Sa channel na wala napupunta ang panganib na “{ $class }”.
        [channel-does-not-take-it] Sa channel na hindi markadong ligtas napupunta ang panganib na “{ $class }”.
       *[rule] Dinadala ng tuntuning “{ $id }” ang panganib na “{ $class }” sa hindi ligtas na lugar.
    }
    .hint = Pumili ng channel na ligtas na tumatanggap. Hindi napupunta sa cart o bin ang panganib.
finding-hazard-acknowledged = Pinahintulutan ni { $by } ang eksepsiyon sa tuntuning pangkaligtasan: “{ $id }”.
    .hint = Tiyaking payag ang lokal na batas at ang site, at totoo pa ang dahilan.
finding-rule-never-applies = Walang napagpapasyahan ang tuntuning “{ $id }”.
    .hint = Nasasagot na ng mga nauna ang lahat ng kaso, o walang bagay na tugma. Baguhin o alisin.
finding-not-listed = May mga kaso ng bagay na ito na “wala sa listahan, itanong” ang sagot.
    .hint = Puwede iyon. Sumulat ng tuntunin kung alam ninyo ang sagot.
finding-missing-provenance = Hindi makita kung saan galing ang pasya ng tuntuning “{ $id }”. Kulang: { $missing }.
    .hint = Isulat kung sino ang nagpasya, saan kinuha, at kailan huling kinumpirma sa planta.
finding-missing-translation =
    { $state ->
        [unreviewed] Mga tekstong “{ $language }” na walang nagsuri: { $count }. Ang una: “{ $first }”.
        [outdated] Mga tekstong “{ $language }” na nagbago na ang pinagsalinan: { $count }. Ang una: “{ $first }”.
       *[missing] Mga kulang na teksto sa “{ $language }”: { $count }. Ang una: “{ $first }”.
    }
    .hint = Buksan ang screen ng mga teksto at salain ayon sa wika at lagay.
finding-broken-condition =
    { $problem ->
        [unknown-fact] Walang katangiang “{ $fact }”.
        [no-values] Walang pinaghahambingan ang “{ $fact }”.
        [no-number] Walang numero ang “{ $value }” para sa “{ $fact }”.
        [no-unit] Walang yunit ang “{ $value }” para sa “{ $fact }”.
        [unknown-unit] Hindi kilala ang yunit ng “{ $value }” para sa “{ $fact }”.
        [wrong-dimension] Hindi sukat ng “{ $fact }” ang “{ $value }”.
        [negative] Mas mababa sa wala ang “{ $value }” para sa “{ $fact }”.
        [too-large] Sobrang laki ng “{ $value }” para sa “{ $fact }” para maging totoo.
        [unknown-part] Walang bahaging “{ $value }”.
        [range-reversed] Baligtad ang saklaw na “{ $value }” ng “{ $fact }”.
       *[unknown-value] Hindi sagot sa “{ $fact }” ang “{ $value }”.
    }
    .hint = Pumili sa listahan. Isulat ang sukat na may yunit, tulad ng 2 in, 1 gal o 10 lb.
finding-broken-item =
    { $problem ->
        [unknown-fact] Walang katangiang “{ $fact }”.
        [no-values] Walang pinaghahambingan ang “{ $fact }”.
        [no-number] Walang numero ang “{ $value }” para sa “{ $fact }”.
        [no-unit] Walang yunit ang “{ $value }” para sa “{ $fact }”.
        [unknown-unit] Hindi kilala ang yunit ng “{ $value }” para sa “{ $fact }”.
        [wrong-dimension] Hindi sukat ng “{ $fact }” ang “{ $value }”.
        [negative] Mas mababa sa wala ang “{ $value }” para sa “{ $fact }”.
        [too-large] Sobrang laki ng “{ $value }” para sa “{ $fact }” para maging totoo.
        [unknown-part] Walang bahaging “{ $value }”.
        [no-such-sides] Walang bagay na may ganitong mga gilid: ang pinakamahaba ang dapat pinakamahaba.
        [no-range] Walang simula o wakas ang saklaw ng “{ $fact }”.
        [range-reversed] Baligtad ang saklaw na “{ $value }” ng “{ $fact }”.
       *[unknown-value] Hindi sagot sa “{ $fact }” ang “{ $value }”.
    }
    .hint = Pumili sa listahan. Isulat ang sukat na may yunit, tulad ng 2 in, 1 gal o 10 lb.
finding-broken-reference =
    { $kind ->
        [stream] Walang stream na “{ $target }”.
        [channel] Walang channel na “{ $target }”.
        [zone] Walang lugar na “{ $target }”.
        [step] Walang hakbang na “{ $target }”.
        [reason] Walang dahilang “{ $target }”.
        [machine] Walang makinang “{ $target }”.
        [item] Walang bagay na “{ $target }”.
        [rule-of-tier] Iba ang antas ng tuntuning “{ $target }”, kaya hindi mauunahan.
       *[rule] Walang “{ $target }”.
    }
    .hint = Pumili ng iba, o idagdag ang kulang. Kung walang pangalan, wala pang napipili.
finding-circular-override = Paikot na nauuna sa isa’t isa ang mga tuntuning ito: { $rules }.
    .hint = Alisin ang isa sa listahang “nauuna sa”.
finding-destination-not-offered = Dinadala ng tuntuning “{ $id }” ang mga bagay sa stream na “{ $stream }”, na hindi hinahakot sa “{ $zone }”.
    .hint = Idagdag ang stream sa lugar, o sumulat ng ibang tuntunin para doon.
finding-duplicate-id =
    { $times ->
        [0] May walang id dito.
        [one] { $times } beses ginamit ang id na “{ $id }”.
       *[other] { $times } na beses ginamit ang id na “{ $id }”.
    }
    .hint = Bigyan ang bawat isa ng sariling id. Doon nakakabit ang mga link, etiketa at salin.
finding-printed-line-untrue =
    { $span ->
        [from] Hindi totoo ang nakalimbag na “{ $line }” mula { $since }.
        [until] Hindi totoo ang nakalimbag na “{ $line }” hanggang { $until }.
        [between] Hindi totoo ang nakalimbag na “{ $line }” mula { $since } hanggang { $until }.
       *[always] Hindi totoo ang nakalimbag na “{ $line }” sa edisyong ito.
    }
    .hint = I-print ulit ang piraso o takpan ang linya. Kapag wala na ito sa labas, isulat ang araw na inalis.
finding-suspicious-text =
    { $problem ->
        [markup] May markup ang tekstong “{ $key }” ({ $language }): { $shown }
        [direction] May titik ang tekstong “{ $key }” ({ $language }) na bumabaligtad sa takbo ng sulat: { $shown }
       *[control] May titik na hindi nakikita ang tekstong “{ $key }” ({ $language }): { $shown }
    }
    .hint = Payak ang mga teksto. Burahin at i-type ulit.
finding-too-complex = Sobrang daming hindi alam sa bagay na ito para tingnan ang lahat ng kaso (bukas na katangian: { $count }).
    .hint = Tiyakin ang ilang katangian, o hatiin sa ilang bagay.
finding-too-many-thresholds = Sobrang daming hangganan sa mga tuntunin para tingnan ang lahat ng kaso ng { $count } na bagay. Pinakamarami sa “{ $fact }”: { $thresholds }.
    .hint = Pagsamahin ang mga hangganan ng mga tuntunin, at alisin ang mga tapos na.
finding-unreadable-hours = Hindi mabasa ang oras na “{ $hours }”: { $problem }
    .hint = Isulat nang ganito: Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
finding-unusable-setting = Hindi magagamit dito ang “{ $value }”.
    .hint = Pumili sa listahan, o ayusin: #2a7f4f ang sulat ng kulay, latitude at longitude ang posisyon, https:// ang simula ng address

## Paghahambing sa file

compare-file-title = Ihambing sa ibang file
compare-file = Pumili ng naunang edisyon, o programa ng kapitbahay
compare-file-name = Inihambing sa “{ $name }”.
compare-newer = Mas bago ang file
compare-notice = Paunawa ng mga pagbabago
compare-copy = Kopyahin ang paunawa
compare-copied = Nakopya.
compare-not-copied = Hindi kumopya ang browser. Piliin ang teksto at kopyahin.
compare-download = I-download ang paunawa

## Talaan ng mga nakalimbag

printed-title = Ano ang na-print na
printed-copies = Ilang kopya
printed-note = Itala bilang na-print
printed-entry =
    { $copies ->
        [0] { $id }, { $day }
        [one] { $id }, { $day }, { $copies } kopya
       *[other] { $id }, { $day }, { $copies } na kopya
    }
printed-withdrawn = inalis noong { $day }
printed-withdraw = Wala na sa labas
printed-still-out = Nasa labas pa
finding-question-never-matters =
    { $problem ->
        [unknown] May nakatakda kapag hindi masabi ang “{ $fact }”, pero walang sagot na nangangailangan nito.
       *[open] Bukas sa bagay na ito ang “{ $fact }”, pero walang sagot na nakasalalay roon.
    }
    .hint = Walang tinatanong nito. Iwan, o sumulat ng tuntuning kailangan ito.
finding-steps-contradict = Hinihingi ng isang sagot ang “{ $one }” at “{ $other }”, na hindi mapagsasabay. Mga tuntunin: { $rules }.
    .hint = Alisin ang isa sa dalawang hakbang, o baguhin ang kondisyon para isang tuntunin lang ang may bisa.
finding-preparation-contradicts =
    { $problem ->
        [none] Kapag sinunod ang hakbang na “{ $step }” ng tuntuning “{ $id }”, nagiging “{ $value }” ang “{ $fact }”, at wala nang tuntuning nagdadala roon.
       *[rule] Kapag sinunod ang hakbang na “{ $step }” ng tuntuning “{ $id }”, nagiging “{ $value }” ang “{ $fact }”, at sa iba na ito dinadala ng tuntuning “{ $other }”.
    }
    .hint = Alisin ang hakbang, o palawakin ang tuntunin sa natitira pagkatapos ng hakbang.
finding-site-never-used =
    { $problem ->
        [item] Nakasulat na tumatanggap ang site na “{ $id }” ng “{ $item }”, na hindi kailanman dinadala sa channel nito.
       *[site] Walang dinadala kailanman sa site na “{ $id }”.
    }
    .hint = Sumulat ng tuntuning nagdadala sa isa sa mga channel nito, bigyan ng ibang channel, o alisin sa listahan.
finding-no-site-takes =
    { $problem ->
        [refused] Dinadala ang “{ $item }” sa channel na “{ $id }”, pero walang site nito ang tumatanggap.
       *[none] Dinadala ang tulad ng “{ $item }” sa channel na “{ $id }”, na walang site.
    }
    .hint = Magdagdag ng site, patanggapin ang isa, o dalhin sa ibang channel.
finding-item-without-name = Walang pangalan ang bagay na “{ $id }”. Mga wikang wala: { $languages }.
    .hint = Isulat ang pangalan sa wikang ginamit sa programa.
finding-name-twice = Parehong “{ $name }” sa “{ $language }” ang “{ $id }” at “{ $other }”.
    .hint = Bigyan ang isa ng ibang pangalan. Sa pangalan pumipili ang mga residente.
finding-banned-destination = Dinadala ang “{ $item }” sa stream na “{ $stream }”, kung saan bawal ito sa batas. Mga tuntunin: { $rules }.
    .hint = Dalhin sa ibang stream o channel, o ayusin ang pagbabawal kung saan nakasulat.
finding-impossible-condition =
    { $problem ->
        [fact] Hindi kailanman matutupad ang kondisyon ng tuntuning “{ $id }”: nagsasalungatan ang hinihingi sa “{ $fact }”.
       *[parts] Hindi kailanman matutupad ang kondisyon ng tuntuning “{ $id }”: nagsasalungatan ang mga bahagi.
    }
    .hint = Ayusin o alisin ang isang bahagi. Kung alinman ay puwede, gamitin ang “alinman sa mga ito”.
finding-empty-condition =
    { $problem ->
        [any] May walang lamang grupong “alinman sa mga ito” ang tuntuning “{ $id }”, na hindi natutupad kailanman.
       *[all] May walang lamang grupong “lahat ng ito” ang tuntuning “{ $id }”, na laging natutupad.
    }
    .hint = Idagdag ang dapat nasa grupo, o alisin ang grupo.
finding-rule-without-condition = Walang kondisyon ang tuntuning “{ $id }”: ito ang nagpapasya sa lahat ng hindi pinagpasyahan ng naunang antas.
    .hint = Isulat kung kailan ito natutupad. Kung para sa lahat ng natitira, ilagay sa antas na “default”.
finding-text-missing-register =
    { $register ->
        [contract] Mga tuntuning walang salita ng kontrata: { $count }. Ang una: “{ $first }”.
        [sorters] Mga tuntuning walang salita para sa nagbubukod: { $count }. Ang una: “{ $first }”.
       *[residents] Mga tuntuning walang salita o dahilan para sa residente: { $count }. Ang una: “{ $first }”.
    }
    .hint = Isulat sa screen ng tuntunin, para pareho ang sinasabi ng tatlo.
finding-unused-thing =
    { $kind ->
        [stream] Walang tuntuning nagdadala sa stream na “{ $id }”.
        [channel] Walang tuntunin o panganib na napupunta sa channel na “{ $id }”.
        [step] Walang tuntuning humihingi ng hakbang na “{ $id }”.
        [zone] Walang naiiba sa lugar na “{ $id }”: walang tuntunin, lalagyan o stream na bumabanggit.
       *[machine] Walang tuntuning bumabanggit sa makinang “{ $id }”.
    }
    .hint = Iwan kung kakailanganin; kung hindi, alisin.
finding-counts-as-broken =
    { $problem ->
        [unknown-fact] Walang katangiang “{ $fact }” na may mga sagot na maituturing na iba.
        [unlisted-fact] Walang listahan ng sagot ang “{ $fact }”, kaya walang maituturing na iba.
        [unknown-value] Hindi sagot sa “{ $fact }” ang “{ $value }”.
        [danger] Panganib ang “{ $fact }”: walang sagot nito ang itinuturing na iba.
        [nothing] Walang nakasulat na itinuturing na “{ $value }” para sa “{ $fact }”.
        [itself] Itinuturing na sarili nito ang “{ $value }” ng “{ $fact }”.
        [twice] Itinuturing na dalawang magkaibang sagot ang “{ $value }” ng “{ $fact }”.
        [circle] Paikot ang turing sa mga sagot ng “{ $fact }”, kasama ang “{ $value }”.
       *[chain] Itinuturing na iba ang “{ $value }” ng “{ $fact }”, kaya walang maituturing na ito.
    }
    .hint = Pumili ng mga sagot sa listahan. Ang bawat isa ay itinuturing na iisang iba, na itinuturing na sarili lang nito.
finding-season-broken =
    { $problem ->
        [reversed] Nauna ang huling araw ng tuntuning “{ $id }” sa unang araw: { $value }.
       *[not-a-year-day] Hindi araw ng taon ang “{ $value }”, kaya hindi mabasa ang panahon ng tuntuning “{ $id }”.
    }
    .hint = Isulat ang buwan at araw, tulad ng 11-01. Puwedeng tumawid sa bagong taon ang panahon; hindi ang una at huling araw na may taon.
finding-container-rule-broken =
    { $problem ->
        [unknown-kind] Hindi uri ng tuntunin ang “{ $value }” para sa lalagyang “{ $id }”.
        [twice] May dalawang tuntuning “{ $value }” ang lalagyang “{ $id }”.
        [limit] Hindi mabasa ang hangganang “{ $value }” ng lalagyang “{ $id }”.
       *[unknown-dwelling] Hindi uri ng tirahan ang “{ $value }”, kaya walang gumagamit ng lalagyang “{ $id }”.
    }
    .hint = Pumili sa listahan, pagsamahin ang dalawang teksto, o isulat ang hangganang may yunit: 100 lb, 3 ft, 10%.
finding-comparison-broken =
    { $problem ->
        [unknown-like] Walang pang-araw-araw na bagay na “{ $value }” na maihahambing sa “{ $fact }”.
        [other-dimension] Walang sinasabi ang “{ $value }” tungkol sa “{ $fact }”: ibang uri ng sukat iyon.
        [far] Higit sa doble o kalahati ang “{ $value }” ng sukat na ibinigay sa “{ $fact }”.
       *[unknown-period] Hindi mabibilang bawat “{ $value }” ang “{ $fact }”.
    }
    .hint = Pumili sa listahan, o alisin ang paghahambing.

## Mga paraan ng pag-ayos, sa button at listahan

fix-replace = Ilagay ang “{ $with }” kapalit ng “{ $value }”
fix-choose = Piliin ang “{ $with }”
fix-remove = Alisin ang “{ $value }”
fix-replace-fact = Ihambing ang “{ $with }” kapalit ng “{ $fact }”
fix-replace-value = Ilagay ang “{ $with }” kapalit ng “{ $value }”
fix-remove-value = Alisin ang “{ $value }” sa kondisyon
fix-replace-item-fact = Ilagay ang katangiang “{ $with }” kapalit ng “{ $fact }”
fix-remove-rule = Alisin ang tuntuning “{ $rule }”
fix-go-before = Paunahin ang “{ $rule }” sa { $over }
fix-not-before = Huwag nang paunahin ang “{ $rule }” sa “{ $over }”
fix-silence-undecided = Iwang bukas ang kahulugan ng katahimikan
fix-silence-ask = Bukas na listahan: sagutin ang hindi nakasulat ng “wala sa listahan, itanong”
fix-silence-closed = Saradong listahan: tanggihan ang hindi nakasulat
fix-answer-yes = Isulat ang tuntunin: sa “{ $stream }” ang “{ $item }”
fix-answer-no = Isulat ang tuntunin: hindi tinatanggap ang “{ $item }” at sa “{ $stream }” ito
fix-route = Dalhin ang panganib na “{ $class }” sa channel na “{ $channel }”
fix-send-to = Dalhin ang saklaw ng tuntuning “{ $rule }” sa channel na “{ $channel }”
fix-collect = Hakutin din ang “{ $stream }” sa “{ $zone }”
fix-except-zone = Alisan ng bisa ang tuntuning “{ $rule }” sa “{ $zone }”
fix-own-ids = Magbigay ng bagong id: { $with }
fix-remove-twins = Alisin ang mga kopyang parehong-pareho
fix-swap-dates = Pagpalitin ang una at huling araw
fix-drop-from = Alisin ang unang araw
fix-drop-until = Alisin ang huling araw
fix-drop-season = Alisin ang panahon
fix-swap-position = Pagpalitin ang latitude at longitude
fix-add-language = Ilathala rin sa “{ $language }”
fix-remove-empty = Alisin ang mga grupong walang laman
fix-remove-unused = Alisin ang “{ $id }”
fix-drop-counting = Huwag nang ituring na “{ $value }” ang anuman para sa “{ $fact }”
fix-clean-text = Alisin ito sa teksto
mend-title = Mga paraan ng pag-ayos
mend-done = Tapos: { $fix }. Puwedeng i-undo.
mend-gone = Walang binago: iba na ang programa kaysa noong inialok ito.
