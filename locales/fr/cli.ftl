### The command line: its help, what it says when done, and what it says when something is wrong.
### Commands, options and words in capitals are typed or replaced as they stand: do not translate
### the commands and options. Lines beginning with spaces keep them.

## Help

cli-help =
    lidleaf COMMANDE [OPTIONS]

      check PROGRAMME        liste ce qui ne va pas dans un programme
      answer PROGRAMME OBJET répond sur un objet comme à un résident
      print PROGRAMME        fait une étiquette de couvercle ou une carte postale en PDF
      batch PROGRAMME…       fait beaucoup de feuilles de beaucoup de programmes à la fois
      publish [PROGRAMME]    écrit le guide dans un dossier pour tout hébergeur
      serve DOSSIER          montre un dossier publié à une adresse de cet ordinateur
      compare AVANT APRÈS    liste chaque réponse qui change d’un programme à l’autre
      demo                   écrit le programme de démonstration
      schema                 écrit le schéma JSON des fichiers de programme

    lidleaf help COMMANDE, ou lidleaf COMMANDE --help, en dit plus.

    Codes de sortie :
      0  fait ; il peut y avoir des alertes
      1  le programme, ou une feuille tirée de lui, a des erreurs ; rien n’a été écrit
      2  la commande n’a pas été comprise
      3  un fichier manque, ou n’est pas ce qu’il devrait être
      4  un fichier n’a pas pu être écrit, ou une adresse n’a pas pu être ouverte
      5  l’objet, la zone ou le flux demandé n’y est pas
      6  arrêté sur demande ; ce qui était fini est gardé
cli-help-check =
    lidleaf check PROGRAMME [--catalog FICHIER] [--fix NUMÉRO --out FICHIER]

    Liste chaque constat sur un programme : d’abord les erreurs, puis les alertes et les
    remarques, chacun avec un exemple et quoi faire. Code de sortie 1 s’il y a des erreurs.

    Les façons de corriger sont listées avec chaque constat, avec un numéro comme 2.1. --fix 2.1
    applique celle-là, écrit le programme changé dans le fichier nommé par --out, et liste ce
    qu’on y trouve. Le programme lu reste comme il était.
cli-help-answer =
    lidleaf answer PROGRAMME OBJET [--fact FAIT=VALEUR]… [--zone ZONE] [--on AAAA-MM-JJ]

    Répond sur un objet, par son code ou son nom ; le nom peut être mal écrit. Quand la réponse
    dépend de quelque chose, la question suivante est montrée avec l’option --fact qui y répond.
    --fact FAIT=? veut dire que le résident ne sait pas. Le jour est aujourd’hui, sauf si --on
    en nomme un autre.
cli-help-print =
    lidleaf print PROGRAMME --sheet FEUILLE [OPTIONS]

      --sheet lid        une étiquette pour le couvercle d’un bac
      --sheet sticker    une étiquette ronde avec un seul message
      --sheet sign       un panneau pour bacs communs, lu de plus loin
      --sheet postcard   une carte à poster, recto verso
      --sheet self-mailer  une feuille letter ou A4, pliée et postée
      --sheet handout    une feuille letter ou A4 à distribuer, un côté ou deux
      --stream FLUX      le flux dont elle parle
      --zone ZONE        pour une seule zone de service
      --languages en,fr  dans ces langues, une à quatre
      --out LIEU         un dossier, ou le nom d’un fichier
      --date AAAA-MM-JJ  la date du travail
      --register         noter la feuille dans le registre du fichier de programme
      --copies N         combien d’exemplaires, pour le registre et la fiche ; ou en=400,fr=200
      --printed AAAA-MM-JJ  le jour d’impression, pour le registre ; sinon la date du travail
      --size FORMAT      son format fini : 8x12in, a4, "200 x 300 mm", ou un diamètre, 115mm
      --corner 6mm       le rayon des coins ; 0 pour des coins droits
      --fold half        comment plier un dépliant à poster : half (un pli) ou thirds (deux)
      --item OBJET       le seul objet dont parle un autocollant ; le code l’ouvre
      --distance 2m      de quelle distance on lit ; cela fixe les plus petits caractères
      --qr-level H       les dégâts que le code doit supporter : M, Q ou H
      --die-line         dessiner le tracé de découpe d’une étiquette, en ton direct
      --printers-mark    garder la place de la marque de l’imprimeur
      --stock NOM        le papier sur lequel on imprime, pour la fiche de travail
      --thickness 0.3mm  son épaisseur ; la poste veut la connaître
      --no-places        enlever la liste des lieux
      --words 6          combien de mots au plus par ligne, dans chaque langue de la feuille
      --press 13x19in    plusieurs par feuille de presse : 11x17in, 12x18in, 13x19in, sra3, ou autre
      --gutter 8mm       l’espace entre elles
      --up N             combien au plus
      --work-and-turn    recto et verso sur la même plaque
      --alone            un fichier par langue, pas un seul pour toutes
      --no-ticket        ne pas faire la fiche de travail
      --for press        un fichier pour un imprimeur (PDF/X-4) ; c’est ce qui est fait sauf demande contraire
      --for web          un fichier à lire à l’écran et à voix haute (PDF/UA-1), sans repères ni fond perdu
      --profile FICHIER  le profil de sortie CMYK (.icc) envoyé par l’imprimeur
      --ink-limit N      le plus d’encre que supporte son papier, en pour cent : 300 sauf indication

    Fait une feuille en une à quatre langues, en PDF pour l’imprimeur, avec une fiche de travail
    dans un fichier à part, et liste ce que le contrôle a trouvé. S’il y a une erreur, rien n’est
    écrit. Le même programme et la même date donnent les mêmes octets. Sans indication : le flux
    de recyclage, les trois premières langues du programme, le dossier courant et la date
    d’aujourd’hui.
cli-help-batch =
    lidleaf batch PROGRAMME… --sheet FEUILLES --out DOSSIER [OPTIONS]

      --sheet lid,postcard   ces feuilles-là, ou all pour toutes
      --stream FLUX          les flux dont elles parlent, ou all pour tous
      --zone ZONE            pour une seule zone de service
      --languages GROUPE     un groupe de langues ; à répéter pour chaque groupe
          en                 dans une seule langue
          en,fr              dans ces langues ensemble
          each               dans chaque langue d’un programme à part
          together           dans les trois premières langues d’un programme, sur une feuille
      --out DOSSIER          le dossier à remplir ; chaque programme y a son propre dossier
      --date AAAA-MM-JJ      la date des travaux
      --hands N              combien de feuilles à la fois ; sinon autant que de cœurs
      --again                refaire aussi ce qui est déjà fait
      --for press            des fichiers pour un imprimeur (PDF/X-4), comme sans --for
      --for web              des fichiers à lire à l’écran et à voix haute (PDF/UA-1)
      --profile, --ink-limit les conditions de l’imprimeur, comme pour print
      --tickets              une fiche de travail à côté de chaque fichier pour l’imprimeur
      --copies N             combien d’exemplaires, pour les fiches de travail ; ou en=400,fr=200
      --alone                une feuille pour chaque langue d’un groupe
      --size, --press …      comment elles sont faites, comme pour print : toutes ses options sauf --corner

    Fait chaque feuille demandée de chaque programme. Le dossier garde dans batch.json de quoi
    chaque fichier a été fait : un second passage ne fait que ce qui manque ou serait différent.
    La date en fait partie ; sans --date c’est celle d’aujourd’hui, et demain tout est refait.

    Une feuille qui échoue n’arrête pas les autres ; la fin dit pourquoi et quoi faire pour
    chacune. Chaque fichier est écrit en entier ou pas du tout. Ctrl-C arrête proprement : les
    feuilles commencées sont finies, et la même commande reprend plus tard. Code de sortie 1 si
    quelque chose a échoué.
    En JSON : « lidleaf-batch-report » (made, skipped, failed avec why et next).
cli-help-publish =
    lidleaf publish [PROGRAMME] --out DOSSIER [--app DOSSIER]

    Écrit le guide et l’application dans un dossier de fichiers que tout hébergeur peut servir,
    à sa racine ou dans un sous-dossier. Un programme avec des erreurs est refusé. Ce qui était
    publié avant dans le dossier reste jusqu’à ce que la nouvelle édition soit entière. Sans
    programme, c’est celui de démonstration ; l’application vient de dist/app, sauf si --app
    nomme un autre dossier.
cli-help-serve =
    lidleaf serve DOSSIER [--port N] [--address ADRESSE]

    Montre un dossier publié à http://127.0.0.1:8080/, ou au port et à l’adresse nommés, jusqu’à
    l’arrêt. Le port 0 prend un port libre. C’est pour regarder un guide, pas pour le public.
cli-help-compare =
    lidleaf compare AVANT APRÈS [--on AAAA-MM-JJ] [--notice] [--language CODE] [--out FICHIER]
    lidleaf compare PROGRAMME PROGRAMME PROGRAMME… [--out FICHIER]

      --on AAAA-MM-JJ  la situation de ce jour-là, au lieu de tous les jours
      --notice         un avis de changement pour une lettre, groupé, avec le contact
      --language CODE  la langue dans laquelle il est écrit
      --out FICHIER    un fichier ; s’il finit par .md, avec les marques de Markdown

    Deux programmes : liste chaque objet dont le verdict, la destination, la préparation, la
    raison ou l’avertissement change, avec les réponses exactes et le jour ; puis les lignes de
    feuilles imprimées du registre qui deviennent fausses. De trois à cinquante programmes : ce
    qui est vrai dans tous, qui diffère pour chaque autre objet, et les conseils contraires.

    En JSON : « lidleaf-changes » (changes, asked, untrue), « lidleaf-notice » (groups, untrue,
    text) ou « lidleaf-regional » (programs, agreed, differing, contradictory). Dans chacun,
    « when » est une liste de possibilités, chacune une liste de faits avec les valeurs qui
    valent ensemble.
cli-help-schema =
    lidleaf schema [--out FICHIER]

    Écrit le schéma JSON des fichiers de programme.
cli-help-demo =
    lidleaf demo [--town VILLE] [--out FICHIER]

    Écrit le programme de démonstration, un comté tout inventé, pour commencer ; avec --town,
    une de ses villes membres : thrushwick, kettlebrae, larkenby ou dunnockford.
cli-help-common =
    Chaque commande prend aussi :
      --lang CODE        langue des messages et des réponses (en, fr, es …)
      --json             le résultat en JSON
      --catalog FICHIER  un autre catalogue que celui fourni, là où un programme est lu
      --help             ce texte
      --version          la version

## Done

cli-error = Erreur : { $message }
cli-written = Écrit : { $file }
cli-serving = { $folder } est servi à { $url } (Ctrl-C pour arrêter)
cli-published =
    { $files ->
        [one] Édition { $edition } publiée dans { $folder } : { $files } fichier, { $size }.
        [many] Édition { $edition } publiée dans { $folder } : { $files } fichiers, { $size }.
       *[other] Édition { $edition } publiée dans { $folder } : { $files } fichiers, { $size }.
    }

## Findings

cli-severity-error = erreur
cli-severity-warning = alerte
cli-severity-notice = remarque
cli-finding = { $severity } : { $message }
cli-place = à { $kind } « { $id } »
cli-place-field = à { $kind } « { $id } », champ « { $field } »
cli-place-program = au champ « { $field } » du programme
cli-witness = par exemple { $item }
cli-witness-answers = par exemple { $item } ({ $answers })
cli-hint = quoi faire : { $hint }
cli-mend = pour corriger ({ $number }) : { $fix }
cli-mended = Fait : { $fix }
cli-check-clean = Aucun constat : le programme peut être publié.
cli-count-errors =
    { $count ->
        [one] { $count } erreur
        [many] { $count } erreurs
       *[other] { $count } erreurs
    }
cli-count-warnings =
    { $count ->
        [one] { $count } alerte
        [many] { $count } alertes
       *[other] { $count } alertes
    }
cli-count-notices =
    { $count ->
        [one] { $count } remarque
        [many] { $count } remarques
       *[other] { $count } remarques
    }
cli-check-publishable = { $counts }. Le programme peut être publié.
cli-check-errors = { $counts }. Le programme ne peut pas être publié tant que les erreurs ne sont pas corrigées.

## Answers

cli-answer-day = Le { $day }
cli-answer-where = Où : { $place }
cli-answer-also = Accepté aussi à : { $places }
cli-answer-prepare = Comment : { $steps }
cli-answer-why = Pourquoi : { $reason }
cli-answer-caution = Attention : { $caution }
cli-answer-rules = Décidé par : { $rules }
cli-answer-temporary = Une règle temporaire est en vigueur.
cli-answer-site = Lieu le plus proche : { $site }, { $address }
cli-answer-assumed = Supposé, faute de le savoir : { $facts }
cli-question-option = { $option } — { $value }
cli-question-cannot-tell = Je ne sais pas

## Sheets

cli-sheet-shortened = ligne raccourcie : « { $item } » seul mène au bon endroit dans { $percent } des cas
cli-sheet-left-out = enlevé faute de place : { $items }
cli-sheet-hazards-in-brief = pas de place pour les lieux qui prennent les choses dangereuses ; le code et le téléphone de la feuille y mènent
cli-sheet-refused-in-brief = pas de place pour dire où va ce qui n’est pas accepté ici ; le code et le téléphone de la feuille le disent
cli-registered = Noté dans le registre de { $file } comme « { $id } ».
cli-preflight-pass = Contrôle : rien à corriger.
cli-preflight-warnings =
    { $count ->
        [one] Contrôle : { $count } alerte.
        [many] Contrôle : { $count } alertes.
       *[other] Contrôle : { $count } alertes.
    }
cli-preflight-errors =
    { $count ->
        [one] Contrôle : { $count } erreur. Aucun fichier n’a été écrit.
        [many] Contrôle : { $count } erreurs. Aucun fichier n’a été écrit.
       *[other] Contrôle : { $count } erreurs. Aucun fichier n’a été écrit.
    }
cli-batch-progress = [{ $done }/{ $of }] { $outcome } : { $file }
cli-batch-made = fait
cli-batch-kept = inchangé
cli-batch-failed = échec
cli-batch-failed-one = Échec : { $what }
cli-batch-summary = { $folder } : faits { $made }, inchangés { $kept }, échecs { $failed }, à partir de { $programs ->
        [one] { $programs } programme.
        [many] { $programs } programmes.
       *[other] { $programs } programmes.
    }
cli-batch-warned =
    { $count ->
        [one] { $count } feuille faite a des alertes : lidleaf print les montre.
        [many] { $count } feuilles faites ont des alertes : lidleaf print les montre.
       *[other] { $count } feuilles faites ont des alertes : lidleaf print les montre.
    }
cli-batch-stopped = Arrêté avant la fin. La même commande reprend d’ici.
cli-batch-notes-lost = Les notes de batch.json n’ont pas pu servir : tout a été refait.
cli-batch-next-preflight = Corrigez le programme, ou demandez moins de langues sur cette feuille, puis relancez la même commande.
cli-batch-crashed = La feuille n’a pas pu être faite, à cause d’une faute dans ce logiciel.
cli-batch-next-crashed = Gardez le message ci-dessus et le fichier de programme, et signalez les deux.
cli-batch-program-errors = Le programme { $file } a des erreurs ({ $count }) ; aucune feuille n’en a été tirée.
    .hint = lidleaf check les liste et dit quoi faire.
cli-batch-same-id = Ces fichiers ont le même code, « { $id } », et leurs feuilles auraient les mêmes noms : { $files }.
    .hint = Imprimez-les dans des dossiers différents.
cli-batch-busy = Un autre passage remplit le dossier { $file }.
    .hint = Attendez qu’il soit fini, ou nommez un autre dossier avec --out.
cli-batch-no-shop = Les polices ou le profil de couleur fournis avec le logiciel ne peuvent pas servir : { $detail }
    .hint = Installez de nouveau le logiciel.

## Comparing

cli-compare-same = Chaque objet reçoit la même réponse dans les deux programmes.
cli-compare-count =
    { $count ->
        [one] { $count } réponse change.
        [many] { $count } réponses changent.
       *[other] { $count } réponses changent.
    }
cli-compare-share = { $percent } des cas

## Commands not understood. Each says what to type instead.

cli-usage-command = Il n’y a pas de commande « { $command } ».
    .hint = lidleaf --help liste les commandes.
cli-usage-option = L’option { $option } n’est pas de cette commande.
    .hint = lidleaf help COMMANDE liste ses options.
cli-usage-word = « { $word } » est un mot de trop.
    .hint = Mettez entre guillemets les noms avec des espaces.
cli-usage-not-text = « { $word } » n’est pas du texte lisible.
    .hint = Tapez la valeur de l’option en UTF-8.
cli-usage-needs-value = L’option { $option } demande une valeur après elle.
    .hint = lidleaf help COMMANDE montre ce qu’elle prend.
cli-usage-no-value = L’option { $option } ne prend pas de valeur.
    .hint = Enlevez le signe égal et ce qui le suit.
cli-usage-needs-option = L’option { $option } manque.
    .hint = lidleaf help COMMANDE montre ce qu’elle prend.
cli-usage-needs-program = Le fichier de programme manque.
    .hint = Nommez-le après la commande : lidleaf check program.json
cli-usage-needs-item = Il faut un fichier de programme et un objet.
    .hint = Par exemple : lidleaf answer program.json "boîte à pizza"
cli-usage-needs-two = Il faut deux fichiers de programme, celui d’avant et celui d’après.
    .hint = Par exemple : lidleaf compare 2026.json 2027.json
cli-usage-needs-folder = Le dossier à servir manque.
    .hint = Par exemple : lidleaf serve dist/site
cli-usage-fact = « { $word } » n’est pas un fait et sa valeur.
    .hint = Écrivez-les avec un signe égal : --fact resin=1
cli-usage-date = « { $word } » n’est pas un jour.
    .hint = Écrivez l’année, le mois et le jour : 2027-01-31
cli-usage-copies = « { $word } » n’est pas un nombre d’exemplaires.
    .hint = Écrivez un nombre entier, --copies 400, ou un pour chaque langue, --copies en=400,fr=200
cli-usage-for = « { $word } » n’est pas un usage d’une feuille.
    .hint = Écrivez --for press, pour un imprimeur, ou --for web, à lire à l’écran et à voix haute.
cli-usage-ink-limit = « { $word } » n’est pas une limite d’encre.
    .hint = Écrivez la somme des quatre plaques en pour cent : --ink-limit 280
cli-usage-press-only = { $option } est pour l’imprimeur, et --for web ne fait pas de fichier pour lui.
    .hint = Enlevez l’un des deux.
cli-usage-hands = « { $word } » n’est pas un nombre de feuilles faites à la fois.
    .hint = Écrivez un nombre entier à partir de 1 : --hands 4
cli-usage-port = « { $word } » n’est pas un port.
    .hint = Écrivez un nombre de 0 à 65535 ; 0 prend un port libre.
cli-usage-address = « { $word } » n’est pas une adresse réseau.
    .hint = Écrivez 127.0.0.1 pour cet ordinateur seul, 0.0.0.0 pour le réseau local.
cli-usage-language = Il n’y a pas de messages en « { $word } ».
    .hint = Il y a : { $known }.
cli-usage-sheet = Il n’y a pas de feuille « { $word } ».
    .hint = Écrivez --sheet et l’un de : lid, sticker, sign, postcard, self-mailer, handout.
cli-usage-fix = « { $word } » n’est pas le numéro d’une façon de corriger.
    .hint = lidleaf check PROGRAMME les liste, par exemple 2.1.
cli-usage-other = La commande est illisible : { $detail }.
    .hint = lidleaf --help liste les commandes.

## Files and addresses

cli-file-missing = Le fichier { $file } n’existe pas.
    .hint = Vérifiez le nom et le dossier.
cli-file-unreadable = Le fichier { $file } n’a pas pu être lu : { $detail }.
    .hint = Vérifiez que vous avez le droit de le lire et qu’aucun autre programme ne le tient.
cli-file-is-folder = { $file } est un dossier, pas un fichier.
    .hint = Nommez le fichier qui est dedans.
cli-file-not-text = Le fichier { $file } n’est pas du texte à partir de la ligne { $line }.
    .hint = Les fichiers de programme sont du texte en UTF-8. C’est peut-être un autre type de fichier, ou il est abîmé : prenez une copie plus ancienne ou exportez-le de nouveau.
cli-folder-missing = Le dossier { $file } n’existe pas.
    .hint = Publiez d’abord dedans : lidleaf publish program.json --out DOSSIER
cli-folder-unreadable = Le dossier { $file } n’a pas pu être lu : { $detail }.
    .hint = Vérifiez que vous avez le droit de le lire.
cli-name-not-text = Le nom de { $file } n’est pas du texte lisible.
    .hint = Renommez-le.
cli-cannot-write = { $file } n’a pas pu être écrit : { $detail }. Ce qui était là avant n’a pas changé.
    .hint = Vérifiez que le dossier existe, que vous pouvez y écrire et qu’il y a de la place.
cli-cannot-serve = L’adresse { $address } n’a pas pu être ouverte : { $detail }.
    .hint = Un autre programme l’utilise peut-être : nommez un autre port avec --port.

## Publishing

cli-app-missing = Il n’y a pas d’application construite dans { $file }.
    .hint = Construisez-la avec cargo xtask run, ou nommez son dossier avec --app.
cli-app-list-broken = La liste des fichiers de l’application, { $file }, est illisible : { $detail }.
    .hint = Reconstruisez l’application avec cargo xtask run.
cli-app-changed = { $file } n’est plus comme il a été construit.
    .hint = Reconstruisez l’application avec cargo xtask run.
cli-out-not-folder = On ne peut pas publier dans { $file } : ce n’est pas un dossier avec un nom.
    .hint = Nommez un nouveau dossier avec --out.
cli-out-in-use = Le dossier { $file } contient d’autres fichiers. Publier remplace tout un dossier : rien n’a donc été changé.
    .hint = Nommez un dossier nouveau ou vide avec --out.
cli-out-in-app = Les dossiers de l’application, { $app }, et du guide, { $file }, sont l’un dans l’autre.
    .hint = Nommez un dossier ailleurs avec --out.
cli-publish-refused = Le programme a des erreurs et n’a pas été publié.
    .hint = Corrigez les erreurs ci-dessus ; lidleaf check les liste de nouveau.

## What is not in the program

cli-unknown-item = Il n’y a pas d’objet appelé « { $item } ».
    .hint = Essayez un autre mot, ou sa matière ou sa forme.
cli-unknown-fact = « { $fact } » n’est pas un fait.
    .hint = Les faits sont : { $known }.
cli-unknown-value = « { $value } » n’est pas une valeur du fait « { $fact } ».
    .hint = Il prend : { $known }.
cli-unknown-measure = « { $value } » n’est pas une mesure du fait « { $fact } ».
    .hint = Écrivez un nombre et son unité, par exemple { $known }.
cli-unknown-fix = Aucun constat de ce programme n’a de façon de corriger numéro { $number }.
    .hint = lidleaf check PROGRAMME liste les numéros ; ils changent avec le programme.
cli-unknown-zone = Il n’y a pas de zone de service « { $zone } ».
    .hint = Les zones sont : { $known }.
cli-unknown-town = Il n’y a pas de ville membre « { $town } » dans la démo.
    .hint = Les villes sont : { $known }.
cli-unknown-stream = Il n’y a pas de flux « { $stream } ».
    .hint = Les flux sont : { $known }.
cli-unknown-sheet-language = Le programme n’est pas publié en « { $language } ».
    .hint = Il est publié en : { $known }.
cli-too-many-languages = Une feuille prend une à quatre langues, pas { $count }.
    .hint = Nommez-les avec --languages en,fr
cli-usage-size = « { $word } » n’est pas un format.
    .hint = Écrivez un nom, comme a4 ou letter, ou la largeur, la hauteur et l’unité : 8x12in
cli-usage-length = « { $word } » n’est pas une longueur.
    .hint = Écrivez un nombre et son unité : 6mm, 0.25in
cli-usage-fold = « { $word } » n’est pas une façon de plier.
    .hint = Écrivez --fold half ou --fold thirds.
cli-usage-qr-level = « { $word } » n’est pas un niveau de correction d’erreurs.
    .hint = Écrivez M, Q ou H.
cli-usage-words = « { $word } » n’est pas un nombre de mots.
    .hint = Écrivez un nombre entier à partir de 1, par exemple --words 6
cli-usage-up = « { $word } » n’est pas un nombre de feuilles.
    .hint = Écrivez un nombre entier : --up 4
cli-unknown-sheet-item = Il n’y a pas d’objet « { $item } ».
    .hint = Nommez-le par son code, comme lidleaf answer --json le montre.
cli-nothing-against = Rien ne dit que « { $item } » est refusé.
    .hint = Un autocollant avertit : nommez une chose refusée, ou un danger.
