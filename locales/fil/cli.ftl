### Ang command line: tulong nito, ang sinasabi kapag tapos at kapag may mali.
### Hindi isinasalin ang mga utos, opsiyon at salitang malalaking titik.

## Tulong

cli-help =
    lidleaf COMMAND [OPTIONS]

      check PROGRAM          ilista ang mali sa isang programa
      answer PROGRAM ITEM    sagutin ang isang bagay gaya ng sa residente
      print PROGRAM          gumawa ng etiketa ng takip o postcard na PDF para sa imprenta
      batch PROGRAM…         gumawa ng maraming piraso ng maraming programa nang sabay
      publish [PROGRAM]      isulat ang gabay bilang folder para sa anumang web host
      serve FOLDER           ipakita ang nailathalang folder sa address ng kompyuter na ito
      compare BEFORE AFTER   ilista ang bawat sagot na nagbago sa pagitan ng mga programa
      demo                   isulat ang halimbawang programa
      schema                 isulat ang JSON Schema ng mga file ng programa

    May dagdag na paliwanag ang lidleaf help COMMAND o lidleaf COMMAND --help.

    Mga exit code:
      0  tapos; puwedeng may babala
      1  may mali ang programa o ang pirasong gawa rito; walang isinulat
      2  hindi naintindihan ang utos
      3  walang file, o hindi ito ang dapat
      4  hindi maisulat ang file, o hindi mabuksan ang address
      5  wala ang hinihinging bagay, lugar o stream
      6  itinigil ayon sa hiling; itinabi ang natapos na
cli-help-check =
    lidleaf check PROGRAM [--catalog FILE] [--fix NUMBER --out FILE]

    Inililista ang lahat ng nakita sa programa: una ang mali, saka ang babala at paunawa, bawat
    isa may halimbawa at gagawin. Exit code 1 ang wakas kapag may mali.

    Kasama ng nakita ang mga paraan ng pag-ayos, may numerong tulad ng 2.1. Ginagawa ng
    --fix 2.1 ang paraang iyon, isinusulat ang nabagong programa sa file ng --out, at inililista
    ang nakita roon. Hindi nababago ang binasang programa.
cli-help-answer =
    lidleaf answer PROGRAM ITEM [--fact FACT=VALUE]… [--zone ZONE] [--on YYYY-MM-DD]

    Sinasagot ang isang bagay, sa id o pangalan; puwedeng mali ang baybay. Kung may pinagbabatayan
    ang sagot, ipinapakita ang susunod na tanong at ang opsiyong --fact na sumasagot. --fact FACT=?
    kung hindi masabi ng residente. Ngayon ang araw maliban kung iba ang sabi ng --on.
cli-help-print =
    lidleaf print PROGRAM --sheet SHEET [OPTIONS]

      --sheet lid        etiketa ng takip ng cart
      --sheet sticker    bilog na etiketa na may isang mensahe
      --sheet sign       karatula sa pinaghahatiang lalagyan, binabasa mula sa mas malayo
      --sheet postcard   card na ipapadala sa koreo, dalawang panig
      --sheet self-mailer  papel na letter o A4, tinutupi at ipinapadala sa koreo
      --sheet handout    papel na letter o A4 na ipamimigay, isa o dalawang panig
      --stream STREAM    ang stream na paksa nito
      --zone ZONE        para sa isang lugar lang
      --languages en,es  sa mga wikang ito, isa hanggang apat
      --out PLACE        folder, o pangalan ng file
      --date YYYY-MM-DD  petsa ng trabaho
      --register         itala ang piraso sa talaan ng mga nakalimbag ng programa
      --copies N         ilang kopya, para sa talaan at job ticket; o en=400,es=200
      --printed YYYY-MM-DD  araw ng pag-print, para sa talaan; kung wala, petsa ng trabaho
      --size SIZE        tapos na sukat: 8x12in, a4, "200 x 300 mm", o diyametro, 115mm
      --corner 6mm       radius ng mga sulok; 0 kung hindi bilugan
      --fold half        paraan ng pagtupi ng liham: half (kalahati), o thirds (tatlo)
      --item ITEM        ang isang bagay na paksa ng sticker; binubuksan ito ng code
      --distance 2m      gaano kalayo binabasa; nagtatakda ng pinakamaliit na letra
      --qr-level H       ang sirang dapat kayanin ng code: M, Q o H
      --die-line         iguhit ang linyang puputulan ng etiketa, sa spot color
      --printers-mark    maglaan ng lugar para sa sariling marka ng imprenta
      --stock NAME       kung saan ito ipi-print, para sa job ticket
      --thickness 0.3mm  kung gaano kakapal iyon; tinatanong ng koreo
      --no-places        alisin ang listahan ng mga lugar
      --words 6          ilang salita ang pinakamarami sa isang linya, sa bawat wika ng piraso
      --press 13x19in    ilan sa isang press sheet: 11x17in, 12x18in, 13x19in, sra3, o i-type
      --gutter 8mm       ang pagitan ng mga ito
      --up N             ilan ang pinakamarami
      --work-and-turn    harap at likod sa isang plate
      --alone            isang file bawat wika, hindi isa para sa lahat
      --no-ticket        alisin ang job ticket
      --for press        file para sa imprenta (PDF/X-4); ito ang ginagawa kung walang ibang hiningi
      --for web          file na babasahin sa screen at pakikinggan (PDF/UA-1), walang marka at bleed
      --profile FILE     ang CMYK output profile (.icc) na ipinadala ng imprenta
      --ink-limit N      pinakamaraming tinta na kaya ng papel nito, sa porsiyento: 300 kung walang nakasaad

    Gumagawa ng piraso sa isa hanggang apat na wika bilang PDF para sa imprenta, may job ticket na
    sariling file, at inililista ang nakita ng preflight. Kapag may mali, walang isinusulat.
    Parehong bytes ang gawa ng parehong programa at petsa. Kung walang sinabi: recycling ang
    stream, unang tatlong wika ng programa, kasalukuyang folder, at petsa ngayon.
cli-help-batch =
    lidleaf batch PROGRAM… --sheet SHEETS --out FOLDER [OPTIONS]

      --sheet lid,postcard   ang mga pirasong ito, o all para sa lahat
      --stream STREAMS       ang mga stream na paksa, o all para sa lahat
      --zone ZONE            para sa isang lugar lang
      --languages SET        isang grupo ng mga wika; ulitin para sa bawat grupo
          en                 sa isang wika
          en,es              sa mga ito nang magkasama
          each               sa bawat wika ng programa nang hiwalay
          together           sa unang tatlong wika ng programa sa isang piraso
      --out FOLDER           ang folder na pupunuin; may sariling folder dito ang bawat programa
      --date YYYY-MM-DD      petsa ng mga trabaho
      --hands N              ilang piraso ang sabay na ginagawa; kung wala, kasindami ng mga core
      --again                gawin ulit pati ang nagawa na
      --for press            mga file para sa imprenta (PDF/X-4), gaya ng walang --for
      --for web              mga file na babasahin sa screen at pakikinggan (PDF/UA-1)
      --profile, --ink-limit ang kondisyon ng imprenta, gaya ng sa print
      --tickets              job ticket sa tabi ng bawat file na pang-imprenta
      --copies N             ilang kopya, para sa mga job ticket; o en=400,es=200
      --alone                isang piraso para sa bawat wika ng grupo
      --size, --press …      kung paano gagawin, gaya ng sa print: lahat ng opsiyon nito maliban sa --corner

    Ginagawa ang bawat hinihinging piraso ng bawat programa. Nakatala sa batch.json ng folder kung
    saan ginawa ang bawat file: sa ikalawang takbo, ang kulang o maiiba lang ang gagawin. Kasama
    rito ang petsa; kung walang --date, ngayon ito, at bukas ay gagawin ulit ang lahat.

    Hindi pinipigil ng isang pirasong hindi nagawa ang iba; sa dulo, sinasabi kung bakit at ano ang
    gagawin. Buong isinusulat ang bawat file o hindi na. Maayos ang tigil sa Ctrl-C: tinatapos ang
    mga nasimulan, at nagpapatuloy ang parehong utos mamaya. Exit code 1 kapag may hindi nagawa.
    Bilang JSON: “lidleaf-batch-report” (made, skipped, failed na may why at next).
cli-help-publish =
    lidleaf publish [PROGRAM] --out FOLDER [--app FOLDER]

    Isinusulat ang gabay at app bilang folder ng mga file na kaya ng anumang web host, mula sa
    ugat o folder nito. Tinatanggihan ang programang may mali. Nananatili ang dating nailathala
    hanggang buo na ang bago. Kung walang programa, ang halimbawa ang gagamitin; galing ang app sa
    dist/app maliban kung iba ang sabi ng --app.
cli-help-serve =
    lidleaf serve FOLDER [--port N] [--address ADDRESS]

    Ipinapakita ang nailathalang folder sa http://127.0.0.1:8080/, o sa port at address na
    sinabi, hanggang pigilin. Anumang bakanteng port ang 0. Para tingnan ang gabay, hindi para sa
    publiko.
cli-help-compare =
    lidleaf compare BEFORE AFTER [--on YYYY-MM-DD] [--notice] [--language TAG] [--out FILE]
    lidleaf compare PROGRAM PROGRAM PROGRAM… [--out FILE]

      --on YYYY-MM-DD  ang lagay ng dalawa sa araw na iyon, hindi sa lahat ng araw
      --notice         paunawa ng pagbabago para sa liham, nakagrupo at may kontak
      --language TAG   ang wikang gagamitin
      --out FILE       file; kung .md ang dulo, may markang Markdown

    Dalawang programa: inililista ang bawat bagay na iba ang pasya, lugar, paghahanda, dahilan o
    babala, sa aling sagot at mula kailan; saka ang mga linyang nakatala na hindi na totoo. Tatlo
    hanggang limampung programa: ano ang totoo sa lahat, sino ang naiiba sa bawat ibang bagay, at
    mga payong nagsasalungatan.

    Bilang JSON: “lidleaf-changes” (changes, asked, untrue), “lidleaf-notice” (groups, untrue, text)
    o “lidleaf-regional” (programs, agreed, differing, contradictory). Sa bawat isa, listahan ng
    mga pagpipilian ang “when”, bawat isa listahan ng mga katangian at sagot na sabay totoo.
cli-help-schema =
    lidleaf schema [--out FILE]

    Isinusulat ang JSON Schema ng mga file ng programa.
cli-help-demo =
    lidleaf demo [--town TOWN] [--out FILE]

    Isinusulat ang halimbawang programa, isang buong kathang county, na mapagsisimulan; sa --town,
    isa sa mga bayan nito: thrushwick, kettlebrae, larkenby o dunnockford.
cli-help-common =
    Tinatanggap din ng bawat utos ang:
      --lang TAG      wika ng mga mensahe at sagot (en, es, ar …)
      --json          ang resulta bilang JSON
      --catalog FILE  ibang katalogo kapalit ng kasama, kung may binabasang programa
      --help          ang tekstong ito
      --version       ang bersiyon

## Tapos

cli-error = Mali: { $message }
cli-written = Naisulat: { $file }
cli-serving = Ipinapakita ang { $folder } sa { $url } (Ctrl-C para itigil)
cli-published =
    { $files ->
        [one] Nailathala ang edisyong { $edition } sa { $folder }: { $files } file, { $size }.
       *[other] Nailathala ang edisyong { $edition } sa { $folder }: { $files } na file, { $size }.
    }

## Mga nakita

cli-severity-error = mali
cli-severity-warning = babala
cli-severity-notice = paunawa
cli-finding = { $severity }: { $message }
cli-place = sa { $kind } “{ $id }”
cli-place-field = sa { $kind } “{ $id }”, patlang na “{ $field }”
cli-place-program = sa patlang na “{ $field }” ng programa
cli-witness = halimbawa { $item }
cli-witness-answers = halimbawa { $item } ({ $answers })
cli-hint = ang gagawin: { $hint }
cli-mend = para maayos ({ $number }): { $fix }
cli-mended = Tapos: { $fix }
cli-check-clean = Walang nakita: puwedeng ilathala ang programa.
cli-count-errors =
    { $count ->
        [one] { $count } mali
       *[other] { $count } na mali
    }
cli-count-warnings =
    { $count ->
        [one] { $count } babala
       *[other] { $count } na babala
    }
cli-count-notices =
    { $count ->
        [one] { $count } paunawa
       *[other] { $count } na paunawa
    }
cli-check-publishable = { $counts }. Puwedeng ilathala ang programa.
cli-check-errors = { $counts }. Hindi mailalathala ang programa hanggang hindi naaayos ang mga mali.

## Mga sagot

cli-answer-day = Sa { $day }
cli-answer-where = Saan: { $place }
cli-answer-also = Tinatanggap din sa: { $places }
cli-answer-prepare = Paano: { $steps }
cli-answer-why = Bakit: { $reason }
cli-answer-caution = Babala: { $caution }
cli-answer-rules = Nagpasya: { $rules }
cli-answer-temporary = May pansamantalang kautusan.
cli-answer-site = Pinakamalapit: { $site }, { $address }
cli-answer-assumed = Ipinalagay, dahil hindi alam: { $facts }
cli-question-option = { $option } — { $value }
cli-question-cannot-tell = Hindi ko masabi

## Mga piraso

cli-sheet-shortened = pinaikling linya: tamang lugar ang turo ng “{ $item }” lang sa { $percent } ng mga kaso
cli-sheet-left-out = inalis dahil hindi kasya: { $items }
cli-sheet-hazards-in-brief = hindi nagkasya ang mga lugar na tumatanggap ng panganib; itinuturo ito ng code at telepono sa piraso
cli-sheet-refused-in-brief = hindi nagkasya kung saan dadalhin ang mga bawal dito; itinuturo ito ng code at telepono sa piraso
cli-registered = Naitala sa talaan ng { $file } bilang “{ $id }”.
cli-preflight-pass = Preflight: walang aayusin.
cli-preflight-warnings =
    { $count ->
        [one] Preflight: { $count } babala.
       *[other] Preflight: { $count } na babala.
    }
cli-preflight-errors =
    { $count ->
        [one] Preflight: { $count } mali. Walang file na isinulat.
       *[other] Preflight: { $count } na mali. Walang file na isinulat.
    }
cli-batch-progress = [{ $done }/{ $of }] { $outcome }: { $file }
cli-batch-made = nagawa
cli-batch-kept = walang nagbago
cli-batch-failed = hindi nagawa
cli-batch-failed-one = Hindi nagawa: { $what }
cli-batch-summary = { $folder }: { $made } ang nagawa, { $kept } ang walang nagbago, { $failed } ang hindi nagawa, mula sa { $programs ->
        [one] { $programs } programa.
       *[other] { $programs } na programa.
    }
cli-batch-warned =
    { $count ->
        [one] May babala ang { $count } nagawang piraso: ipinapakita ng lidleaf print.
       *[other] May babala ang { $count } na nagawang piraso: ipinapakita ng lidleaf print.
    }
cli-batch-stopped = Itinigil bago natapos ang lahat. Magpapatuloy mula rito ang parehong utos.
cli-batch-notes-lost = Hindi nagamit ang mga tala sa batch.json, kaya ginawa ulit ang lahat.
cli-batch-next-preflight = Ayusin ang programa, o humingi ng mas kaunting wika sa pirasong ito, at patakbuhin ulit ang parehong utos.
cli-batch-crashed = Hindi nagawa ang piraso dahil sa mali sa mismong lidleaf.
cli-batch-next-crashed = Itabi ang mensahe sa itaas at ang file ng programa, at iulat ang dalawa.
cli-batch-program-errors = May mga mali ang programang { $file } ({ $count }), at walang pirasong ginawa mula rito.
    .hint = Inililista ng lidleaf check ang mga ito at ang gagawin.
cli-batch-same-id = Pareho ang id ng mga file na ito, “{ $id }”, kaya magkakapareho ang pangalan ng mga piraso: { $files }.
    .hint = I-print ang mga ito sa magkakaibang folder.
cli-batch-busy = May ibang takbo na pumupuno sa folder na { $file }.
    .hint = Hintaying matapos iyon, o sumulat ng ibang folder sa --out.
cli-batch-no-shop = Hindi magamit ang mga font o color profile na kasama ng lidleaf: { $detail }
    .hint = I-install ulit ang lidleaf.

## Paghahambing

cli-compare-same = Pareho ang sagot ng dalawang programa sa bawat bagay.
cli-compare-count =
    { $count ->
        [one] { $count } sagot ang nagbago.
       *[other] { $count } na sagot ang nagbago.
    }
cli-compare-share = { $percent } ng mga kaso

## Mga utos na hindi naintindihan

cli-usage-command = Walang utos na “{ $command }”.
    .hint = Inililista ng lidleaf --help ang mga utos.
cli-usage-option = Walang opsiyong { $option } ang utos na ito.
    .hint = Inililista ng lidleaf help COMMAND ang mga opsiyon.
cli-usage-word = Sobra ang salitang “{ $word }”.
    .hint = Lagyan ng panipi ang pangalang may patlang.
cli-usage-not-text = Hindi mabasang teksto ang “{ $word }”.
    .hint = I-type ang halaga ng opsiyon sa UTF-8.
cli-usage-needs-value = Kailangan ng halaga pagkatapos ng { $option }.
    .hint = Ipinapakita ng lidleaf help COMMAND kung ano.
cli-usage-no-value = Walang halaga ang opsiyong { $option }.
    .hint = Alisin ang tanda ng katumbas at ang kasunod.
cli-usage-needs-option = Kulang ang opsiyong { $option }.
    .hint = Ipinapakita ng lidleaf help COMMAND ang tinatanggap nito.
cli-usage-needs-program = Kulang ang file ng programa.
    .hint = Isulat pagkatapos ng utos: lidleaf check program.json
cli-usage-needs-item = Kailangan ng file ng programa at ng bagay.
    .hint = Halimbawa: lidleaf answer program.json "kahon ng pizza"
cli-usage-needs-two = Kailangan ng dalawang file ng programa, ang dati at ang bago.
    .hint = Halimbawa: lidleaf compare 2026.json 2027.json
cli-usage-needs-folder = Kulang ang folder na ipapakita.
    .hint = Halimbawa: lidleaf serve dist/site
cli-usage-fact = Hindi katangian at sagot ang “{ $word }”.
    .hint = Isulat nang may tanda ng katumbas: --fact resin=1
cli-usage-date = Hindi araw ang “{ $word }”.
    .hint = Isulat ang taon, buwan at araw: 2027-01-31
cli-usage-copies = Hindi bilang ng kopya ang “{ $word }”.
    .hint = Sumulat ng buong numero, --copies 400, o isa bawat wika, --copies en=400,es=200
cli-usage-for = Hindi gamit ng piraso ang “{ $word }”.
    .hint = Isulat ang --for press para sa imprenta, o --for web para basahin sa screen at pakinggan.
cli-usage-ink-limit = Hindi hangganan ng tinta ang “{ $word }”.
    .hint = Isulat ang kabuuan ng apat na plate sa porsiyento: --ink-limit 280
cli-usage-press-only = Para sa imprenta ang { $option }, at walang file na pang-imprenta ang --for web.
    .hint = Alisin ang isa sa dalawa.
cli-usage-hands = Hindi bilang ng pirasong sabay na ginagawa ang “{ $word }”.
    .hint = Sumulat ng buong numero mula 1: --hands 4
cli-usage-port = Hindi port ang “{ $word }”.
    .hint = Sumulat ng numero mula 0 hanggang 65535; anumang bakante ang 0.
cli-usage-address = Hindi network address ang “{ $word }”.
    .hint = 127.0.0.1 para sa kompyuter na ito lang, 0.0.0.0 para sa lokal na network.
cli-usage-language = Walang mensahe sa “{ $word }”.
    .hint = Mayroon sa: { $known }.
cli-usage-sheet = Walang pirasong “{ $word }”.
    .hint = Isulat ang --sheet at isa sa: lid, sticker, sign, postcard, self-mailer, handout.
cli-usage-fix = Hindi numero ng paraan ng pag-ayos ang “{ $word }”.
    .hint = Inililista ito ng lidleaf check PROGRAM, tulad ng 2.1.
cli-usage-other = Hindi mabasa ang utos: { $detail }.
    .hint = Inililista ng lidleaf --help ang mga utos.

## Mga file at address

cli-file-missing = Walang file na { $file }.
    .hint = Tingnan ang pangalan at folder.
cli-file-unreadable = Hindi mabasa ang file na { $file }: { $detail }.
    .hint = Tingnan kung puwede ninyong basahin at walang ibang programang gumagamit.
cli-file-is-folder = Folder ang { $file }, hindi file.
    .hint = Isulat ang file sa loob nito.
cli-file-not-text = Hindi teksto ang { $file } mula linya { $line }.
    .hint = Tekstong UTF-8 ang mga file ng programa. Baka ibang file ito o sira: kumuha ng naunang kopya o i-export ulit.
cli-folder-missing = Walang folder na { $file }.
    .hint = Ilathala muna rito: lidleaf publish program.json --out FOLDER
cli-folder-unreadable = Hindi mabasa ang folder na { $file }: { $detail }.
    .hint = Tingnan kung puwede ninyong basahin.
cli-name-not-text = Hindi mabasang teksto ang pangalan ng { $file }.
    .hint = Palitan ang pangalan.
cli-cannot-write = Hindi maisulat ang { $file }: { $detail }. Hindi nabago ang dating naroon.
    .hint = Tingnan kung may folder, kung puwede kayong sumulat doon, at kung may lugar pa.
cli-cannot-serve = Hindi mabuksan ang address na { $address }: { $detail }.
    .hint = Baka may ibang programang gumagamit: pumili ng ibang port sa --port.

## Paglalathala

cli-app-missing = Walang nabuong app sa { $file }.
    .hint = Buuin sa cargo xtask run, o isulat ang folder nito sa --app.
cli-app-list-broken = Hindi mabasa ang listahan ng mga file ng app, { $file }: { $detail }.
    .hint = Buuin ulit ang app sa cargo xtask run.
cli-app-changed = Iba na ang { $file } kaysa noong binuo.
    .hint = Buuin ulit ang app sa cargo xtask run.
cli-out-not-folder = Hindi mapaglalathalaan ang { $file }: hindi ito folder na may pangalan.
    .hint = Sumulat ng bagong folder sa --out.
cli-out-in-use = May ibang mga file ang folder na { $file }. Pinapalitan nang buo ng paglalathala ang folder, kaya walang binago.
    .hint = Sumulat ng bago o walang lamang folder sa --out.
cli-out-in-app = Magkapaloob ang mga folder ng app, { $app }, at ng gabay, { $file }.
    .hint = Sumulat ng folder sa ibang lugar sa --out.
cli-publish-refused = May mali ang programa at hindi nailathala.
    .hint = Ayusin ang mga mali sa itaas; inililista ulit ng lidleaf check.

## Ang wala sa programa

cli-unknown-item = Walang bagay na “{ $item }”.
    .hint = Sumubok ng ibang salita, o ng materyales o hugis.
cli-unknown-fact = Hindi katangian ang “{ $fact }”.
    .hint = Ang mga katangian: { $known }.
cli-unknown-value = Hindi sagot sa “{ $fact }” ang “{ $value }”.
    .hint = Tinatanggap nito: { $known }.
cli-unknown-measure = Hindi sukat ng “{ $fact }” ang “{ $value }”.
    .hint = Isulat ang bilang at yunit nito, gaya ng { $known }.
cli-unknown-fix = Walang nakita sa programang ito na may paraan ng pag-ayos na numero { $number }.
    .hint = Inililista ng lidleaf check PROGRAM ang mga numero; nagbabago kasabay ng programa.
cli-unknown-zone = Walang lugar na “{ $zone }”.
    .hint = Ang mga lugar: { $known }.
cli-unknown-town = Walang bayang “{ $town }” sa halimbawa.
    .hint = Ang mga bayan: { $known }.
cli-unknown-stream = Walang stream na “{ $stream }”.
    .hint = Ang mga stream: { $known }.
cli-unknown-sheet-language = Hindi inilalathala ang programa sa “{ $language }”.
    .hint = Inilalathala sa: { $known }.
cli-too-many-languages = Isa hanggang apat na wika ang piraso, hindi { $count }.
    .hint = Isulat sa --languages en,es
cli-usage-size = Hindi sukat ang “{ $word }”.
    .hint = Sumulat ng pangalan, tulad ng a4 o letter, o lapad, taas at unit: 8x12in
cli-usage-length = Hindi haba ang “{ $word }”.
    .hint = Sumulat ng numero at unit: 6mm, 0.25in
cli-usage-fold = Hindi paraan ng pagtupi ang “{ $word }”.
    .hint = Isulat ang --fold half o --fold thirds.
cli-usage-qr-level = Hindi antas ng pagtutuwid ng mali ang “{ $word }”.
    .hint = Isulat ang M, Q o H.
cli-usage-words = Hindi bilang ng salita ang “{ $word }”.
    .hint = Sumulat ng buong numero mula 1, gaya ng --words 6
cli-usage-up = Hindi bilang ng piraso ang “{ $word }”.
    .hint = Sumulat ng buong numero: --up 4
cli-unknown-sheet-item = Walang bagay na “{ $item }”.
    .hint = Isulat ang id nito, gaya ng ipinapakita ng lidleaf answer --json.
cli-nothing-against = Walang nagsasabing bawal dito ang “{ $item }”.
    .hint = Nagbababala ang sticker: isulat ang bagay na hindi tinatanggap, o isang panganib.
