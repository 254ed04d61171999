### Ang binabasa ng mga residente sa telepono. Simpleng salita, maikling pangungusap.

## Sa paligid ng bawat screen

page-title = { $program }: ano ang saan
skip = Dumiretso sa laman
back = Bumalik
language-label = Wika
zone-label = Inyong lugar
zone-none = Piliin ang inyong lugar
unreviewed = Wala pang taong nagsuri ng saling ito. Kung parang may mali, basahin sa Ingles.
decided-edition = Gabay: { $edition }
privacy = Nananatili sa teleponong ito ang hinahanap ninyo. Walang ipinadadala o binibilang.

## Paghahanap

search-label = Ano ang gusto ninyong itapon?
search-placeholder = Halimbawa: kahon ng pizza
search-count =
    { $count ->
        [0] Walang nakita
        [one] { $count } bagay ang nakita
       *[other] { $count } na bagay ang nakita
    }
search-nothing = Walang nakitang ganyang pangalan. Sumubok ng mas maikling salita. Hindi ibig sabihin ay “hindi” kapag wala sa listahan: itanong sa amin.
search-long = Masyadong mahaba. Ang unang { $count } letra lang ang hinanap.
home-recent = Huling hinanap
home-common = Madalas hanapin
home-categories = Pumili ayon sa uri

## Mga tanong

cannot-tell = Hindi ko masabi
questions-left =
    { $count ->
        [one] Hanggang { $count } tanong pa
       *[other] Hanggang { $count } na tanong lahat
    }
ruler-title = Sukatin gamit ang screen na ito
ruler-card = Itapat nang patayo ang bank card sa screen. Igalaw ang slider hanggang kasinlapad ng card ang guhit.
ruler-use = Ngayon ilagay ang bagay sa ruler, isang dulo sa 0.
ruler-cards = { $measure }: bank card na magkakadugtong: { $count }

## Mga sagot

verdict-yes = Oo
verdict-no = Hindi
verdict-elsewhere = Hindi rito, sa iba ito
verdict-unlisted = Wala sa listahan: itanong
verdict-undecided = Hindi pa napagpasyahan: itanong
verdict-closed = Hindi: wala ito sa listahan
caution-title = Mag-ingat.
prepare-title = Paano ihahanda
why-title = Bakit
also-title = Tinatanggap din sa
temporary-order = May pansamantalang tuntunin ngayon. Baka magbago ito.
assumed-title = Hindi ninyo masabi, kaya pinili namin ang maingat na sagot:
assumed-line = { $fact }: { $value }
ask-contact = Itanong sa { $name }:
decided-title = Aling tuntunin ang nagpasya
decided-rule = Tuntunin:
decided-acknowledged = May taong pinangalanan na nag-apruba sa eksepsiyong ito sa tuntuning pangkaligtasan.

## Saan dadalhin

site-more =
    { $count ->
        [one] { $count } pang lugar
       *[other] { $count } pang lugar
    }
site-locate = Hanapin ang pinakamalapit
site-no-position = Hindi sinabi ng telepono kung nasaan ito.
near-label = Bayan, lugar o postal code
near-find = Maghanap doon
near-found = Pinakamalapit sa { $place }.
near-unknown = Hindi alam ng gabay na ito ang lugar na “{ $place }”. Subukan ang bayan, ang inyong lugar o ang pangalan ng site.
site-also-takes = Tumatanggap din ng: { $items }
site-all-items = Lahat ng tinatanggap
site-booking = Magpareserba muna.
site-proof = Magdala ng patunay na dito kayo nakatira.
site-permit = Kailangan ng permit.
site-voucher = Kailangan ng voucher.
container-rules-title = Tungkol sa { $container }
hours-open = Bukas ngayon
hours-open-until = Bukas hanggang { $time }
hours-closed = Sarado ngayon
hours-closed-until = Sarado hanggang { $time }
hours-appointment = Bukas lang kapag may appointment
hours-unknown = Hindi alam ang oras ng bukas: tumawag muna
hours-day-time = { $day }, { $time }

## Walang internet

offline-fetching = Sine-save ang gabay para gumana kahit walang internet…
offline-ready = Na-save na. Gumagana ang gabay kahit walang internet.
offline-now = Walang internet. Galing sa teleponong ito ang gabay.
offline-incomplete = Walang internet at hindi pa buong na-save ang gabay. Baka may kulang.
offline-failed = Hindi na-save ang gabay. Gagana lang ito kapag may internet. Subukan ulit mamaya.
offline-impossible = Hindi makapag-save ng gabay ang browser na ito. Gagana lang ito kapag may internet.
update-ready = May bagong gabay na.
update-now = Gamitin na
offline-lost = Binura ng telepono ang na-save na gabay. Sine-save ulit…
offline-forgetful = Walang pinapa-save sa gabay ang browser na ito. Gagana lang ito kapag may internet, at nalilimutan ang inyong wika at lugar.
update-failed = Hindi buong dumating ang bagong gabay. Gumagana pa rin ito, at susubok ulit ang telepono.

## Kapag may wala

unknown-item = Walang “{ $id }” sa gabay na ito. Hanapin sa pangalan.
unknown-category = Walang grupong “{ $id }” sa gabay na ito. Pumili sa unang pahina.
unknown-address = Walang pahinang “{ $address }”. Pumunta sa unang pahina.
unknown-language = Wala pang “{ $language }” ang gabay na ito. Pumili ng ibang wika.
language-broken = Hindi buong dumating ang mga salita sa “{ $language }”. Tingnan ang koneksiyon at piliin ulit ang wika.
unknown-zone = Walang lugar na “{ $id }” sa gabay na ito. Piliin ang inyo sa ibaba ng pahina.
clock-wrong = Sabi ng teleponong ito, { $date } ngayon. Hindi maaari iyon. Hindi alam kung ano ang bukas ngayon, at maaaring mali ang mga tuntuning nagbabago ayon sa panahon. Itama ang petsa.
