### The command line: its help, what it says when done, and what it says when something is wrong.
### Commands, options and words in capitals are typed or replaced as they stand: do not translate
### the commands and options. Lines beginning with spaces keep them.

## Help

cli-help =
    lidleaf KÒMAND [OPSYON]

      check PWOGRAM          bay lis sa ki pa bon nan yon pwogram
      answer PWOGRAM BAGAY   reponn sou yon bagay jan yo ta reponn yon rezidan
      print PWOGRAM          fè yon etikèt kouvèti oswa yon kat postal an PDF
      batch PWOGRAM…         fè anpil fèy pou anpil pwogram an menm tan
      publish [PWOGRAM]      ekri gid la nan yon dosye pou nenpòt ebèjman
      serve DOSYE            montre yon dosye pibliye nan yon adrès òdinatè sa a
      compare ANVAN APRE     bay lis chak repons ki chanje ant de pwogram
      demo                   ekri pwogram demo a
      schema                 ekri chema JSON fichye pwogram yo

    lidleaf help KÒMAND, oswa lidleaf KÒMAND --help, di plis.

    Kòd sòti:
      0  fèt; ka gen avètisman
      1  pwogram nan, oswa yon fèy ki fèt ak li, gen erè; anyen pa ekri
      2  kòmand lan pa konprann
      3  yon fichye manke, oswa li pa sa li ta dwe ye
      4  yon fichye pa t ka ekri, oswa yon adrès pa t ka louvri
      5  bagay, zòn oswa kouran yo mande a pa la
      6  li kanpe lè yo mande l; sa ki te fini rete
cli-help-check =
    lidleaf check PWOGRAM [--catalog FICHYE] [--fix NIMEWO --out FICHYE]

    Bay lis tout konstatasyon sou yon pwogram: erè anvan, apre avètisman ak remak, chak ak yon
    egzanp ak sa pou fè. Li fini ak kòd 1 lè gen erè.

    Fason pou ranje yo nan lis la tou, chak ak yon nimewo tankou 2.1. --fix 2.1 pran fason sa a,
    ekri pwogram ki chanje a nan fichye --out nonmen an, epi bay lis sa ki ladan l. Pwogram yo
    te li a rete jan li te ye.
cli-help-answer =
    lidleaf answer PWOGRAM BAGAY [--fact FÈ=VALÈ]… [--zone ZÒN] [--on AAAA-MM-JJ]

    Reponn sou yon bagay, pa kòd oswa pa non; non an ka mal ekri. Lè repons lan depann de yon
    bagay, pwochen kesyon an parèt ak opsyon --fact ki reponn li a. --fact FÈ=? vle di rezidan
    an pa konnen. Jou a se jodi a, sòf si --on nonmen yon lòt.
cli-help-print =
    lidleaf print PWOGRAM --sheet FÈY [OPSYON]

      --sheet lid        yon etikèt pou kouvèti yon bak
      --sheet sticker    yon etikèt won ak yon sèl mesaj
      --sheet sign       yon pano pou bak tout moun, moun li l pi lwen
      --sheet postcard   yon kat pou lapòs, de bò
      --sheet self-mailer  yon fèy letter oswa A4, pliye epi voye lapòs
      --sheet handout    yon fèy letter oswa A4 pou bay moun, yon bò oswa de
      --stream KOURAN    kouran li pale a
      --zone ZÒN         pou yon sèl zòn sèvis
      --languages en,ht  nan lang sa yo, youn a kat
      --out KOTE         yon dosye, oswa non yon fichye
      --date AAAA-MM-JJ  dat travay la
      --register         note fèy la nan rejis fichye pwogram nan
      --copies N         konbyen kopi, pou rejis la ak fich travay la; oswa en=400,ht=200
      --printed AAAA-MM-JJ  jou yo enprime a, pou rejis la; sinon dat travay la
      --size FÒMA        fòma final li: 8x12in, a4, "200 x 300 mm", oswa yon dyamèt, 115mm
      --corner 6mm       reyon kwen yo; 0 pou kwen kare
      --fold half        kijan fèy pou lapòs la pliye: half (yon fwa), oswa thirds (de fwa)
      --item BAGAY       sèl bagay yon kolan pale a; kòd la louvri li
      --distance 2m      a ki distans moun li l; se sa ki fikse pi piti lèt la
      --qr-level H       domaj kòd la dwe sipòte: M, Q oswa H
      --die-line         trase liy kote yo koupe yon etikèt, nan yon koulè espesyal
      --printers-mark    kite plas pou mak enprimè a
      --stock NON        papye li enprime sou li, pou fich travay la
      --thickness 0.3mm  epesè papye a; lapòs vle konnen li
      --no-places        retire lis kote yo
      --words 6          konbyen mo maksimòm nan yon liy, nan chak lang fèy la
      --press 13x19in    plizyè sou yon fèy près: 11x17in, 12x18in, 13x19in, sra3, oswa tape l
      --gutter 8mm       espas ant yo
      --up N             konbyen maksimòm
      --work-and-turn    devan ak dèyè sou menm plak
      --alone            yon fichye pou chak lang, pa yon sèl pou tout
      --no-ticket        pa fè fich travay la
      --for press        yon fichye pou yon enprimè (PDF/X-4); se sa ki fèt si w pa mande lòt
      --for web          yon fichye pou li sou ekran ak awotvwa (PDF/UA-1), san mak ni debòdman
      --profile FICHYE   pwofil sòti CMYK (.icc) enprimè a te voye
      --ink-limit N      kantite lank maksimòm papye l sipòte, an pousan: 300 si w pa di

    Fè yon fèy nan youn a kat lang, an PDF pou enprimè a, ak yon fich travay nan yon fichye apa,
    epi bay lis sa kontwòl la jwenn. Si gen yon erè, anyen pa ekri. Menm pwogram ak menm dat bay
    menm oktè. Si yo pa nonmen yo: kouran resiklaj la, twa premye lang pwogram nan, dosye kote ou
    ye a, ak dat jodi a.
cli-help-batch =
    lidleaf batch PWOGRAM… --sheet FÈY --out DOSYE [OPSYON]

      --sheet lid,postcard   fèy sa yo, oswa all pou tout
      --stream KOURAN        kouran yo pale a, oswa all pou tout
      --zone ZÒN             pou yon sèl zòn sèvis
      --languages GWOUP      yon gwoup lang; repete li pou chak gwoup
          en                 nan yon sèl lang
          en,ht              nan lang sa yo ansanm
          each               nan chak lang yon pwogram, apa
          together           nan twa premye lang yon pwogram, sou yon sèl fèy
      --out DOSYE            dosye pou ranpli a; chak pwogram gen pwòp dosye pa l ladan l
      --date AAAA-MM-JJ      dat travay yo
      --hands N              konbyen fèy an menm tan; sinon menm kantite ak kè òdinatè a
      --again                refè sa ki fèt deja tou
      --for press            fichye pou yon enprimè (PDF/X-4), menm jan san --for
      --for web              fichye pou li sou ekran ak awotvwa (PDF/UA-1)
      --profile, --ink-limit kondisyon enprimè a, menm jan ak print
      --tickets              yon fich travay akote chak fichye pou enprimè
      --copies N             konbyen kopi, pou fich travay yo; oswa en=400,ht=200
      --alone                yon fèy pou chak lang nan yon gwoup
      --size, --press …      kijan yo fèt, menm jan ak print: tout opsyon l yo sof --corner

    Fè chak fèy yo mande pou chak pwogram. Dosye a kenbe nan batch.json ak kisa chak fichye te
    fèt: yon dezyèm fwa fè sèlman sa ki manke oswa ki ta diferan. Dat la konte ladan l; san --date
    se dat jodi a, epi demen tout bagay refèt.

    Yon fèy ki echwe pa kanpe lòt yo; alafen li di poukisa chak echwe ak sa pou fè. Chak fichye
    ekri nèt oswa pa ekri ditou. Ctrl-C kanpe byen: fèy ki kòmanse yo fini, epi menm kòmand lan
    kontinye pita. Li fini ak kòd 1 lè yon bagay echwe.
    An JSON: “lidleaf-batch-report” (made, skipped, failed ak why ak next).
cli-help-publish =
    lidleaf publish [PWOGRAM] --out DOSYE [--app DOSYE]

    Ekri gid la ak aplikasyon an nan yon dosye fichye nenpòt ebèjman ka sèvi, nan rasin li oswa
    nan yon dosye ladan l. Yo refize yon pwogram ki gen erè. Sa ki te pibliye anvan nan dosye a
    rete jiskaske nouvo edisyon an fini nèt. San pwogram, se pwogram demo a; aplikasyon an soti
    nan dist/app, sòf si --app nonmen yon lòt dosye.
cli-help-serve =
    lidleaf serve DOSYE [--port N] [--address ADRÈS]

    Montre yon dosye pibliye nan http://127.0.0.1:8080/, oswa nan pò ak adrès yo nonmen, jiskaske
    yo kanpe li. Pò 0 pran nenpòt pò lib. Se pou gade yon gid, se pa pou piblik la.
cli-help-compare =
    lidleaf compare ANVAN APRE [--on AAAA-MM-JJ] [--notice] [--language KÒD] [--out FICHYE]
    lidleaf compare PWOGRAM PWOGRAM PWOGRAM… [--out FICHYE]

      --on AAAA-MM-JJ  jan toude ye jou sa a, olye tout jou
      --notice         yon avi chanjman pou yon lèt, an gwoup ak kontak la
      --language KÒD   lang li ekri a
      --out FICHYE     yon fichye; si li fini ak .md, li pran mak Markdown

    De pwogram: bay lis chak bagay ki gen vèdik, kote, preparasyon, rezon oswa avètisman ki
    diferan, ak ki repons egzak ak depi ki jou; apre, liy fèy enprime nan rejis la ki pa vre
    ankò. Twa a senkant pwogram: sa ki vre nan tout, kiyès ki diferan pou chak lòt bagay, ak
    konsèy ki youn kont lòt.

    An JSON: “lidleaf-changes” (changes, asked, untrue), “lidleaf-notice” (groups, untrue, text)
    oswa “lidleaf-regional” (programs, agreed, differing, contradictory). Nan chak, “when” se yon
    lis posiblite, chak se yon lis fè ak valè ki vre ansanm.
cli-help-schema =
    lidleaf schema [--out FICHYE]

    Ekri chema JSON fichye pwogram yo.
cli-help-demo =
    lidleaf demo [--town VIL] [--out FICHYE]

    Ekri pwogram demo a, yon konte envante nèt, pou kòmanse; ak --town, youn nan vil manm li yo:
    thrushwick, kettlebrae, larkenby oswa dunnockford.
cli-help-common =
    Chak kòmand pran tou:
      --lang KÒD        lang mesaj ak repons yo (en, ht, es …)
      --json            rezilta a an JSON
      --catalog FICHYE  yon lòt katalòg pase sa ki vini ladan l la, kote yo li yon pwogram
      --help            tèks sa a
      --version         vèsyon an

## Done

cli-error = Erè: { $message }
cli-written = Ekri: { $file }
cli-serving = N ap montre { $folder } nan { $url } (Ctrl-C pou kanpe li)
cli-published =
    { $files ->
       *[other] Edisyon { $edition } pibliye nan { $folder }: { $files } fichye, { $size }.
    }

## Findings

cli-severity-error = erè
cli-severity-warning = avètisman
cli-severity-notice = remak
cli-finding = { $severity }: { $message }
cli-place = nan { $kind } “{ $id }”
cli-place-field = nan { $kind } “{ $id }”, chan “{ $field }”
cli-place-program = nan chan “{ $field }” pwogram nan
cli-witness = pa egzanp { $item }
cli-witness-answers = pa egzanp { $item } ({ $answers })
cli-hint = sa pou fè: { $hint }
cli-mend = pou ranje li ({ $number }): { $fix }
cli-mended = Fèt: { $fix }
cli-check-clean = Pa gen konstatasyon: pwogram nan ka pibliye.
cli-count-errors =
    { $count ->
       *[other] { $count } erè
    }
cli-count-warnings =
    { $count ->
       *[other] { $count } avètisman
    }
cli-count-notices =
    { $count ->
       *[other] { $count } remak
    }
cli-check-publishable = { $counts }. Pwogram nan ka pibliye.
cli-check-errors = { $counts }. Pwogram nan pa ka pibliye toutotan erè yo pa korije.

## Answers

cli-answer-day = { $day }
cli-answer-where = Ki kote: { $place }
cli-answer-also = Yo pran li tou nan: { $places }
cli-answer-prepare = Kijan: { $steps }
cli-answer-why = Poukisa: { $reason }
cli-answer-caution = Atansyon: { $caution }
cli-answer-rules = Sa ki deside: { $rules }
cli-answer-temporary = Gen yon règ pwovizwa kounye a.
cli-answer-site = Kote ki pi pre: { $site }, { $address }
cli-answer-assumed = Sipoze, paske yo pa t konnen: { $facts }
cli-question-option = { $option } — { $value }
cli-question-cannot-tell = Mwen pa konnen

## Sheets

cli-sheet-shortened = liy rakousi: “{ $item }” sèl mennen nan bon kote nan { $percent } ka yo
cli-sheet-left-out = retire paske pa gen plas: { $items }
cli-sheet-hazards-in-brief = pa gen plas pou kote ki pran danje yo; kòd ak telefòn ki sou fèy la mennen la
cli-sheet-refused-in-brief = pa gen plas pou di kote sa ki pa ale isit yo dwe ale; kòd ak telefòn ki sou fèy la di sa
cli-registered = Note nan rejis { $file } kòm “{ $id }”.
cli-preflight-pass = Kontwòl: anyen pou korije.
cli-preflight-warnings =
    { $count ->
       *[other] Kontwòl: { $count } avètisman.
    }
cli-preflight-errors =
    { $count ->
       *[other] Kontwòl: { $count } erè. Pa gen fichye ki ekri.
    }
cli-batch-progress = [{ $done }/{ $of }] { $outcome }: { $file }
cli-batch-made = fèt
cli-batch-kept = pa chanje
cli-batch-failed = echwe
cli-batch-failed-one = Echwe: { $what }
cli-batch-summary = { $folder }: { $made } fèt, { $kept } pa chanje, { $failed } echwe, ak { $programs ->
       *[other] { $programs } pwogram.
    }
cli-batch-warned =
    { $count ->
       *[other] { $count } fèy ki fèt gen avètisman: lidleaf print montre yo.
    }
cli-batch-stopped = Li kanpe anvan tout bagay fini. Menm kòmand lan ap kontinye depi la a.
cli-batch-notes-lost = Nòt ki nan batch.json yo pa t ka sèvi, kidonk tout bagay refèt.
cli-batch-next-preflight = Korije pwogram nan, oswa mande mwens lang sou fèy sa a, epi bay menm kòmand lan ankò.
cli-batch-crashed = Fèy la pa t ka fèt, akòz yon fot nan lojisyèl sa a.
cli-batch-next-crashed = Kenbe mesaj ki anlè a ak fichye pwogram nan, epi rapòte toude.
cli-batch-program-errors = Pwogram { $file } gen erè ({ $count }), epi okenn fèy pa fèt ak li.
    .hint = lidleaf check bay lis yo ak sa pou fè.
cli-batch-same-id = Fichye sa yo gen menm kòd, “{ $id }”, epi fèy yo t ap gen menm non: { $files }.
    .hint = Enprime yo nan dosye diferan.
cli-batch-busy = Gen yon lòt travay k ap ranpli dosye { $file }.
    .hint = Tann li fini, oswa nonmen yon lòt dosye ak --out.
cli-batch-no-shop = Polis oswa pwofil koulè ki vini ak lojisyèl la pa ka sèvi: { $detail }
    .hint = Enstale lojisyèl la ankò.

## Comparing

cli-compare-same = Chak bagay gen menm repons nan toude pwogram yo.
cli-compare-count =
    { $count ->
       *[other] { $count } repons chanje.
    }
cli-compare-share = { $percent } ka yo

## Commands not understood. Each says what to type instead.

cli-usage-command = Pa gen kòmand “{ $command }”.
    .hint = lidleaf --help bay lis kòmand yo.
cli-usage-option = Opsyon { $option } pa pou kòmand sa a.
    .hint = lidleaf help KÒMAND bay lis opsyon li yo.
cli-usage-word = “{ $word }” se yon mo anplis.
    .hint = Mete non ki gen espas ant gimè.
cli-usage-not-text = “{ $word }” pa tèks moun ka li.
    .hint = Tape valè opsyon an an UTF-8.
cli-usage-needs-value = Opsyon { $option } bezwen yon valè apre li.
    .hint = lidleaf help KÒMAND montre sa li pran.
cli-usage-no-value = Opsyon { $option } pa pran valè.
    .hint = Retire siy egal la ak sa ki apre li.
cli-usage-needs-option = Opsyon { $option } manke.
    .hint = lidleaf help KÒMAND montre sa li pran.
cli-usage-needs-program = Fichye pwogram nan manke.
    .hint = Nonmen li apre kòmand lan: lidleaf check program.json
cli-usage-needs-item = Fòk gen yon fichye pwogram ak yon bagay.
    .hint = Pa egzanp: lidleaf answer program.json "bwat pitza"
cli-usage-needs-two = Fòk gen de fichye pwogram, sa anvan an ak sa apre a.
    .hint = Pa egzanp: lidleaf compare 2026.json 2027.json
cli-usage-needs-folder = Dosye pou montre a manke.
    .hint = Pa egzanp: lidleaf serve dist/site
cli-usage-fact = “{ $word }” pa yon fè ak valè li.
    .hint = Ekri yo ak yon siy egal: --fact resin=1
cli-usage-date = “{ $word }” pa yon jou.
    .hint = Ekri ane, mwa ak jou: 2027-01-31
cli-usage-copies = “{ $word }” pa yon kantite kopi.
    .hint = Ekri yon nonm antye, --copies 400, oswa youn pou chak lang, --copies en=400,ht=200
cli-usage-for = “{ $word }” pa yon fason pou sèvi ak yon fèy.
    .hint = Ekri --for press, pou yon enprimè, oswa --for web, pou li sou ekran ak awotvwa.
cli-usage-ink-limit = “{ $word }” pa yon limit lank.
    .hint = Ekri total kat plak yo an pousan: --ink-limit 280
cli-usage-press-only = { $option } se pou enprimè, epi --for web pa fè fichye pou enprimè.
    .hint = Retire youn nan de yo.
cli-usage-hands = “{ $word }” pa yon kantite fèy pou fè an menm tan.
    .hint = Ekri yon nonm antye, 1 oswa plis: --hands 4
cli-usage-port = “{ $word }” pa yon pò.
    .hint = Ekri yon nonm ant 0 ak 65535; 0 pran nenpòt pò lib.
cli-usage-address = “{ $word }” pa yon adrès rezo.
    .hint = Ekri 127.0.0.1 pou òdinatè sa a sèlman, 0.0.0.0 pou rezo lokal la.
cli-usage-language = Pa gen mesaj an “{ $word }”.
    .hint = Genyen: { $known }.
cli-usage-sheet = Pa gen fèy “{ $word }”.
    .hint = Ekri --sheet ak youn nan sa yo: lid, sticker, sign, postcard, self-mailer, handout.
cli-usage-fix = “{ $word }” pa nimewo yon fason pou ranje.
    .hint = lidleaf check PWOGRAM bay lis yo, tankou 2.1.
cli-usage-other = Yo pa ka li kòmand lan: { $detail }.
    .hint = lidleaf --help bay lis kòmand yo.

## Files and addresses

cli-file-missing = Fichye { $file } pa egziste.
    .hint = Verifye non an ak dosye a.
cli-file-unreadable = Fichye { $file } pa t ka li: { $detail }.
    .hint = Verifye ou gen dwa li li, epi okenn lòt pwogram pa kenbe li.
cli-file-is-folder = { $file } se yon dosye, se pa yon fichye.
    .hint = Nonmen fichye ki ladan l lan.
cli-file-not-text = Fichye { $file } pa tèks apati liy { $line }.
    .hint = Fichye pwogram se tèks an UTF-8. Petèt se yon lòt kalite fichye, oswa li domaje: pran yon kopi pi ansyen, oswa ekspòte li ankò.
cli-folder-missing = Dosye { $file } pa egziste.
    .hint = Pibliye ladan l anvan: lidleaf publish program.json --out DOSYE
cli-folder-unreadable = Dosye { $file } pa t ka li: { $detail }.
    .hint = Verifye ou gen dwa li li.
cli-name-not-text = Non { $file } pa tèks moun ka li.
    .hint = Chanje non li.
cli-cannot-write = { $file } pa t ka ekri: { $detail }. Sa ki te la anvan an pa chanje.
    .hint = Verifye dosye a egziste, ou gen dwa ekri ladan l, epi gen plas.
cli-cannot-serve = Adrès { $address } pa t ka louvri: { $detail }.
    .hint = Petèt yon lòt pwogram ap sèvi avè l: nonmen yon lòt pò ak --port.

## Publishing

cli-app-missing = Pa gen aplikasyon ki konstwi nan { $file }.
    .hint = Konstwi li ak cargo xtask run, oswa nonmen dosye li ak --app.
cli-app-list-broken = Yo pa ka li lis fichye aplikasyon an, { $file }: { $detail }.
    .hint = Konstwi aplikasyon an ankò ak cargo xtask run.
cli-app-changed = { $file } pa jan li te konstwi a.
    .hint = Konstwi aplikasyon an ankò ak cargo xtask run.
cli-out-not-folder = Yo pa ka pibliye nan { $file }: se pa yon dosye ki gen non.
    .hint = Nonmen yon nouvo dosye ak --out.
cli-out-in-use = Dosye { $file } gen lòt fichye. Pibliye ranplase yon dosye nèt, kidonk anyen pa chanje.
    .hint = Nonmen yon dosye nouvo oswa vid ak --out.
cli-out-in-app = Dosye aplikasyon an, { $app }, ak dosye gid la, { $file }, youn nan lòt.
    .hint = Nonmen yon dosye yon lòt kote ak --out.
cli-publish-refused = Pwogram nan gen erè, li pa pibliye.
    .hint = Korije erè ki nan lis anlè a; lidleaf check bay lis yo ankò.

## What is not in the program

cli-unknown-item = Pa gen bagay ki rele “{ $item }”.
    .hint = Eseye yon lòt mo, oswa materyèl li, oswa fòm li.
cli-unknown-fact = “{ $fact }” pa yon fè.
    .hint = Fè yo se: { $known }.
cli-unknown-value = “{ $value }” pa yon valè fè “{ $fact }”.
    .hint = Li pran: { $known }.
cli-unknown-measure = “{ $value }” pa yon mezi pou fè “{ $fact }”.
    .hint = Ekri yon chif ak inite li, tankou { $known }.
cli-unknown-fix = Okenn konstatasyon nan pwogram sa a pa gen yon fason pou ranje li ak nimewo { $number }.
    .hint = lidleaf check PWOGRAM bay lis nimewo yo; yo chanje lè pwogram nan chanje.
cli-unknown-zone = Pa gen zòn sèvis “{ $zone }”.
    .hint = Zòn yo se: { $known }.
cli-unknown-town = Pa gen vil manm “{ $town }” nan demo a.
    .hint = Vil yo se: { $known }.
cli-unknown-stream = Pa gen kouran “{ $stream }”.
    .hint = Kouran yo se: { $known }.
cli-unknown-sheet-language = Pwogram nan pa pibliye an “{ $language }”.
    .hint = Li pibliye an: { $known }.
cli-too-many-languages = Yon fèy pran youn a kat lang, pa { $count }.
    .hint = Nonmen yo ak --languages en,ht
cli-usage-size = “{ $word }” pa yon fòma.
    .hint = Ekri yon non, tankou a4 oswa letter, oswa lajè, wotè ak inite: 8x12in
cli-usage-length = “{ $word }” pa yon longè.
    .hint = Ekri yon nonm ak inite li: 6mm, 0.25in
cli-usage-fold = “{ $word }” pa yon fason pou pliye.
    .hint = Ekri --fold half oswa --fold thirds.
cli-usage-qr-level = “{ $word }” pa yon nivo koreksyon erè.
    .hint = Ekri M, Q oswa H.
cli-usage-words = “{ $word }” pa yon kantite mo.
    .hint = Ekri yon nonm antye apati 1, tankou --words 6
cli-usage-up = “{ $word }” pa yon kantite fèy.
    .hint = Ekri yon nonm antye: --up 4
cli-unknown-sheet-item = Pa gen bagay “{ $item }”.
    .hint = Nonmen li ak kòd li, jan lidleaf answer --json montre li a.
cli-nothing-against = Anyen pa di yo refize “{ $item }”.
    .hint = Yon kolan avèti moun: nonmen yon bagay yo refize, oswa yon danje.
