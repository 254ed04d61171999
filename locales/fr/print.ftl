### The print screen and what the check before printing (preflight) says.
### $place, $what, $field and $zone come from the printing part in English.

## The print screen

print-sheet = Feuille
sheet-lid = Étiquette de couvercle
sheet-sticker = Autocollant rond, un seul message
sheet-sign = Panneau pour bacs communs
sheet-postcard = Carte postale
sheet-self-mailer = Dépliant à poster
sheet-handout = Feuillet à distribuer
print-size = Format fini
print-size-usual = Le format habituel
print-size-typed = Écrit ci-dessous
print-typed-size = Format avec son unité, comme 8 x 12 in ; pour une étiquette ronde, 115 mm
print-size-unread = « { $text } » n’est pas un format. Écrivez la largeur, la hauteur et l’unité : 8 x 12 in
print-corner = Rayon des coins, en mm
print-fold = Pli
print-fold-half = Un pli, au milieu
print-fold-thirds = Deux plis, comme une lettre
print-die-line = Dessiner le tracé de découpe en ton direct
print-printers-mark = Garder la place de la marque de l’imprimeur
print-more = Autres choix pour l’imprimeur
print-stock = Papier
print-thickness = Épaisseur du papier, en mm
print-distance = Distance de lecture, en mm
print-qr-level = Code QR : dégâts supportés
print-qr-most = Le plus possible sans l’agrandir
print-qr-medium = 15 % (M)
print-qr-quartile = 25 % (Q)
print-qr-high = 30 % (H)
print-words = Mots par ligne, au plus
print-words-any = Autant qu’il en faut
print-item = Un objet
print-press = Plusieurs par feuille de presse
print-press-none = Une par page
print-work-and-turn = Recto et verso en demi-feuille
print-no-item = Il n’y a pas d’objet « { $item } ». Choisissez-en un dans la liste.
print-nothing-against = Rien ne dit que « { $item } » est refusé. Choisissez une chose refusée, ou un danger.
print-ticket = Télécharger la fiche de travail
print-number-unread = « { $text } » n’est pas un nombre de millimètres.
ticket-title = Fiche de travail
ticket-sheet = Feuille
ticket-files = Fichiers
ticket-file =
    { $pages ->
        [one] { $file } : { $pages } page
        [many] { $file } : { $pages } pages
       *[other] { $file } : { $pages } pages
    }
ticket-quantity = Quantité
ticket-copies =
    { $copies ->
        [one] { $languages } : { $copies } exemplaire
        [many] { $languages } : { $copies } exemplaires
       *[other] { $languages } : { $copies } exemplaires
    }
ticket-copies-unsaid = { $languages } : nombre d’exemplaires à convenir
ticket-trim = Format fini
ticket-size = { $width } × { $height } mm ({ $across } × { $down } in)
ticket-bleed = Fond perdu, de chaque côté
ticket-mm = { $length } mm
ticket-corners = Coins
ticket-round = Découpe en cercle
ticket-radius = Arrondis, rayon de { $radius } mm
ticket-square = Droits
ticket-die = Tracé de découpe dans le ton direct « Dieline », en surimpression : ne pas l’imprimer
ticket-folds = Plis
ticket-fold = En travers, à { $at } mm sous le bord supérieur de la feuille à plat
ticket-fold-order = Le volet de l’adresse est à l’extérieur. Son bord inférieur est un pli ; la pièce s’ouvre par le bord supérieur et y est fermée par des pastilles.
ticket-colours = Couleurs
ticket-colours-one = 4/0 : cyan, magenta, jaune, noir d’un côté
ticket-colours-two = 4/4 : cyan, magenta, jaune, noir des deux côtés
ticket-colours-note = PDF/X-4 ; texte noir en surimpression ; encre totale au plus { $limit } %
ticket-stock = Papier
ticket-stock-unsaid = À convenir
ticket-thickness = Épaisseur { $thickness } mm
ticket-thickness-unsaid = Épaisseur à confirmer
ticket-press = Feuille de presse
ticket-work-and-turn = Demi-feuille : le verso est sur la même plaque
ticket-mark = Marque de l’imprimeur
ticket-mark-room = Une place de 19 × 6 mm est gardée dans les petits caractères
ticket-edition = Édition
ticket-date = Date du travail
ticket-contact = Questions à
print-zone = Pour une seule zone
print-language = Langue { $number }
print-make = Faire la feuille
print-making = La feuille se prépare…
print-done = La feuille est prête.
print-refused = Aucun fichier n’a été fait. Corrigez les erreurs ci-dessous et réessayez.
print-unreachable = La partie impression n’a pas pu être chargée. Vérifiez la connexion et réessayez.
print-download = Télécharger le PDF pour l’imprimeur
print-download-web = Télécharger le PDF pour le web
print-web-hint = Le PDF pour l’imprimeur lui est destiné. Le PDF pour le web se lit à l’écran et à voix haute.
print-profile = Profil de couleur de l’imprimeur (.icc)
print-profile-hint = Sans profil, c’est celui fourni pour papier couché qui sert.
print-ink-limit = Encre au plus, en %
print-mark = Marqué { $number } sur la feuille
print-contradictions = Lignes qui se contredisent : { $count }. Voyez ci-dessous avant d’imprimer.
print-page = Page { $number }
print-no-stream = Il n’y a pas de flux « { $stream } ». Choisissez-en un dans la liste.
print-no-zone = Il n’y a pas de zone « { $zone } ». Choisissez-en une dans la liste.
print-no-language = Choisissez une à quatre langues du programme.
print-shortened = { $item } : sa ligne seule est juste dans { $percent } des cas ; le reste a été enlevé pour que cela entre.
print-left-out = Enlevé faute de place : { $items }.
print-hazards-in-brief = Il n’y avait pas de place pour les lieux qui prennent les choses dangereuses ; le code et le téléphone de la feuille y mènent.
print-refused-in-brief = Il n’y avait pas de place pour dire où va ce qui n’est pas accepté ici ; le code et le téléphone de la feuille le disent.
preflight-title = Vérifié pour l’imprimeur

## Preflight: what was checked and is right. Sizes are in mm, type in points

preflight-bleed-and-safe-area = Fond perdu de { $bleed } mm tout autour, rien à moins de { $safe } mm du bord.
preflight-boxes = Format fini { $finished } mm, avec fond perdu { $bleed } mm, page avec repères { $page } mm.
preflight-contrast = Les mots se détachent du fond : contraste d’au moins { $ratio }:1, au moins { $difference } % de noir d’écart.
preflight-fonts-embedded = Toutes les polices sont dans le fichier, réduites aux { $glyphs } dessins de caractères utilisés : { $fonts }.
preflight-pictures-have-words = Images avec des mots pour ceux qui ne les voient pas : { $count }.
preflight-hazards-shown = Dangers montrés : { $count }.
preflight-ink-coverage = Encre au plus fort : { $coverage } %, limite { $limit } %.
preflight-postal-zones = Les zones réservées du côté adresse sont libres.
preflight-qr-code = Code QR : version { $version }, niveau { $level }, modules de { $module } mm, marge de { $quiet } modules.
preflight-type-sizes = Texte en { $body } pt, le plus petit { $smallest } pt ; à { $distance } mm de distance, il faut au moins { $floor } pt.
preflight-translation-outdated = « { $text } » ({ $lang }) : le texte d’origine a changé depuis sa traduction. Traduisez-le de nouveau avant d’imprimer.
preflight-line-often-wrong = « { $text } » seul n’est juste que dans { $percent } % des cas. Dites-en plus, ou enlevez la ligne.
preflight-lines-contradict = « { $text } » et « { $other } » ({ $lang }) se contredisent : qui lit la première ligne croit qu’elle vaut pour les deux. Changez les mots de l’une.
preflight-picture-without-words = Aucun mot ne dit ce qu’il y a là à ceux qui ne le voient pas ({ $what }). Écrivez-en.

## Preflight: somebody should look before it goes to the print shop

preflight-translation-unreviewed = Personne n’a vérifié les textes en « { $lang } ». Faites-les lire avant d’imprimer.
preflight-postal-field-missing = { $field } : vide. Remplissez, ou laissez l’imprimeur l’ajouter.
preflight-qr-dense = Le code QR est très fin (version { $version }, { $characters } caractères). Une adresse plus courte se scanne mieux.

## Preflight: errors. No file is made until they are put right. $place and $what say where

preflight-address-invalid = L’adresse du code QR ne peut pas servir : « { $address } ». Écrivez-la en entier, en commençant par https://
preflight-bad-character =
    { $kind ->
        [bidi] { $place } : « { $text } » contient un caractère qui change le sens d’écriture ({ $codepoint }, position { $position }). Effacez-le et retapez les mots.
        [control] { $place } : « { $text } » contient un caractère de contrôle ({ $codepoint }, position { $position }). Effacez-le et retapez les mots.
       *[invisible] { $place } : « { $text } » contient un caractère invisible ({ $codepoint }, position { $position }). Effacez-le et retapez les mots.
    }
preflight-boxes-wrong = Les cadres ne tiennent pas l’un dans l’autre : format fini { $finished } mm, avec fond perdu { $bleed } mm, page { $page } mm. Choisissez une autre feuille.
preflight-contrast-low = « { $text } » se détache mal du fond : contraste { $ratio }:1, il faut au moins { $least }:1 ; { $difference } % de noir d’écart, il faut au moins { $apart } %. Choisissez d’autres encres.
preflight-ink-limit-invalid = « { $limit } » n’est pas une limite d’encre. Écrivez la somme des quatre plaques que l’imprimeur indique, de 100 à 400 %.
preflight-qr-not-quiet = Le code QR n’a pas { $quiet } modules de papier nu autour de lui. Déplacez ce qui s’y trouve.
preflight-date-invalid = « { $date } » n’est pas une date. Écrivez l’année, le mois et le jour : 2027-01-31
preflight-distance-invalid = « { $distance } » n’est pas une distance de lecture en mm. Écrivez à quelle distance est le lecteur.
preflight-font-not-embeddable = La police « { $family } » ne peut pas être mise dans un fichier. Choisissez-en une autre.
preflight-font-unreadable = Le fichier de la police « { $family } » est illisible. Téléchargez-le de nouveau.
preflight-hazard-accepted = { $place } : « { $text } » est un danger parmi les choses acceptées. Un danger ne va jamais dans un bac ou une poubelle : corrigez la règle.
preflight-hazard-missing = Le danger « { $text } » manque sur la feuille en « { $lang } ». On n’enlève jamais un danger pour gagner de la place.
preflight-language-count = Une feuille prend une à quatre langues, pas { $count }.
preflight-language-invalid = « { $lang } » n’est pas un code de langue. Écrivez par exemple es ou es-US.
preflight-language-twice = La langue « { $lang } » y est deux fois. Enlevez-en une.
preflight-languages-differ =
    { $what ->
        [sections] « { $lang } » ne dit pas la même chose que « { $first } » : { $theirs } sections, pas { $ours }. Traduisez ce qui manque.
        [verdict] « { $lang } » ne dit pas la même chose que « { $first } » : la section { $section } a un autre verdict. Corrigez-le.
        [lines] « { $lang } » ne dit pas la même chose que « { $first } » : la section { $section } a { $theirs } lignes, pas { $ours }. Traduisez ce qui manque.
       *[picture] « { $lang } » ne dit pas la même chose que « { $first } » : la ligne { $line } de la section { $section } a une autre image ou un autre signe de danger. Corrigez cela.
    }
preflight-missing-glyph = { $place } : aucune police d’ici n’a { $characters }, utilisé dans « { $text } ». Écrivez sans, ou ajoutez une police qui l’a.
preflight-nothing-to-say = Il n’y a rien à imprimer : le programme ne dit rien de ce flux. Écrivez d’abord des règles.
preflight-outside-safe-area = À moins de { $safe } mm du bord, où cela pourrait être coupé : { $what }
preflight-pictogram-unknown = { $place } : il n’y a pas d’image « { $pictogram } ». Choisissez-en une autre.
preflight-picture-too-small = Une image n’a que { $side } mm de large. Imprimez moins de lignes ou de langues.
preflight-postal-field-full = { $field } : « { $text } » (ligne { $line }) n’entre pas. Raccourcissez.
preflight-postal-zone = Dans une zone réservée ({ $zone }) : { $what }. Déplacez ou raccourcissez.
preflight-profile-unusable =
    { $why ->
        [not-icc] Le fichier n’est pas un profil de couleur. Prenez le profil de sortie CMJN (.icc) que l’imprimeur indique.
        [cut-short] Le profil de couleur est coupé. Demandez à l’imprimeur de le renvoyer.
        [no-tables] Le profil de couleur « { $name } » n’a pas de tables de couleur. Prenez le profil de sortie CMJN que l’imprimeur indique.
       *[other-kind] Le profil de couleur « { $name } » n’est pas un profil de sortie CMJN : il est pour { $class }, en { $space }. Prenez celui que l’imprimeur indique.
    }
preflight-qr-too-fine = Le code QR est trop fin pour être scanné : ses modules font { $module } mm. Raccourcissez l’adresse.
preflight-qr-too-long = L’adresse a { $characters } caractères, plus qu’un code QR n’en contient. Raccourcissez-la.
preflight-rule-too-thin = Un trait n’a que { $width } pt ; le plus mince qui s’imprime a { $least } pt.
preflight-step-invalid = L’étape { $number } de ce qu’on peut enlever est impossible. Le détail, en anglais : { $why }.
preflight-text-empty = { $place } n’a pas de mots. Écrivez-en.
preflight-text-overlaps = « { $text } » et « { $other } » se chevauchent. Raccourcissez l’un des deux.
preflight-text-too-long = { $place } : « { $text } » n’entre pas, même en { $floor } pt, la plus petite taille lisible. Raccourcissez d’environ { $cut } caractères.
preflight-too-many-lines = La feuille « { $sheet } » a { $lines } lignes en { $languages } langues ; il lui manque { $missing } mm pour elles en { $floor } pt. Enlevez des lignes ou imprimez moins de langues.
preflight-too-much-ink = Il y a { $coverage } % d’encre à un endroit ; la limite est { $limit } %. Choisissez une couleur plus claire.
preflight-type-too-small = « { $text } » est en { $size } pt ; il faut au moins { $least } pt. Raccourcissez les textes.
preflight-word-too-wide = { $place } : le mot « { $word } » dans « { $text } » est plus large que sa colonne en { $floor } pt. Prenez un mot d’environ { $room } caractères au plus.
sheet-text-title = Titre ({ $lang })
sheet-text-heading = Titre de la section { $section } ({ $lang })
sheet-text-line = Ligne { $line } de la section { $section } ({ $lang })
sheet-text-scan = Phrase à côté du code QR ({ $lang })
sheet-text-foot = Ligne { $line } au bas ({ $lang })
sheet-text-issuer = Qui publie la feuille
sheet-text-short-address = Adresse web courte
sheet-text-notice = Mention d’impression
sheet-text-edition = Édition
sheet-text-job-name = Nom du travail
sheet-text-slug = Ligne hors de la feuille
sheet-text-return-address = Adresse de retour { $line }
sheet-text-indicia = Mention d’affranchissement { $line }
sheet-text-addressee = Adresse du destinataire { $line }
postal-zone-barcode-clear = bande blanche pour le code à barres de la poste
postal-zone-read-area = zone où les machines de la poste lisent l’adresse
drawn-code = le code QR
drawn-picture = une image
drawn-area = une surface d’encre
sheet-cart-lid = étiquette de couvercle
sheet-round-sticker = autocollant rond
sheet-enclosure-sign = panneau pour bacs communs
sheet-text-stock = Support
sheet-postcard-mailer = carte postale
profile-class-mntr = un écran
profile-class-scnr = un scanner ou un appareil photo
profile-class-other = un autre usage
preflight-size-zero = La feuille fait { $width } × { $height } mm. Les deux côtés doivent être plus longs que zéro : écrivez de nouveau le format fini.
preflight-size-fixed = La feuille fait { $width } × { $height } mm, mais celle-ci n’existe que dans ces formats : { $names }.
preflight-size-out-of-range = La feuille fait { $width } × { $height } mm. Écrivez des côtés de { $least } à { $most } mm, avec leur unité.
preflight-size-too-narrow = La feuille fait { $width } × { $height } mm. Un côté fait au plus { $most } fois l’autre.
preflight-size-not-round = Une étiquette ronde est aussi large que haute, pas { $width } × { $height } mm. Écrivez son diamètre.
preflight-postal-size = La poste ne prend ni carte, ni lettre, ni grand pli de { $width } × { $height } mm. Une lettre a 127 à 292 mm de long, 89 à 156 mm de haut, et est 1,3 à 2,5 fois plus longue que haute ; un grand pli a au plus 381 × 305 mm.
preflight-corner-radius = Le rayon des coins est de { $radius } mm. Donnez-en un de 0 à { $most } mm.
preflight-stock-thickness = Le papier a { $thickness } mm d’épaisseur, ce qu’aucun papier ni film d’étiquette n’a. Regardez ce que l’imprimeur a envoyé.
preflight-one-message = Une étiquette ronde porte un seul message, pas { $lines }. Choisissez une seule chose.
preflight-press-size = La feuille de presse fait { $width } × { $height } mm. Écrivez des côtés de { $least } à { $most } mm, avec leur unité.
preflight-press-gutter = L’espace entre les feuilles est de { $gutter } mm. Deux fonds perdus demandent { $least } mm.
preflight-press-too-small = Aucune feuille n’entre sur une feuille de presse de { $width } × { $height } mm avec son fond perdu et ses repères. Choisissez-en une plus grande.
preflight-press-up = On en a demandé { $up } sur une feuille de presse qui en contient { $most }. Demandez-en de 1 à { $most }.
preflight-on-a-fold = « { $what } » est à moins de { $distance } mm d’un pli. Raccourcissez les textes.
preflight-postal-thickness = La pièce finie a { $thickness } mm d’épaisseur. La poste demande de { $least } à { $most } mm : choisissez un autre papier.
preflight-ticket-too-long = La fiche de travail est trop longue à « { $place } ». Raccourcissez ce qui y est écrit.
preflight-imposed = { $up } sur une feuille de presse de { $width } × { $height } mm : { $across } en largeur, { $down } en hauteur.
preflight-fits-fewer = Tout tient dans ces langues ensemble : { $tags }. Imprimez celles-ci, et les autres sur une feuille à part.
preflight-fits-larger = Tout tient dans le format { $size }. Choisissez ce format.
preflight-folds-clear = Plis : { $count }. Rien n’est imprimé à moins de { $distance } mm d’eux.
preflight-postal-class =
    { $class ->
        [card] Envoyé comme carte : { $length } × { $height } mm.
        [folded] Envoyé comme dépliant à poster : { $length } × { $height } mm une fois plié.
        [flat] Envoyé comme grand pli : { $length } × { $height } mm.
       *[letter] Envoyé comme lettre : { $length } × { $height } mm.
    }
preflight-postal-thickness-unknown = Personne n’a dit l’épaisseur du papier. La poste demande de { $least } à { $most } mm pour la pièce finie : demandez à l’imprimeur.
preflight-sign-letters = Les majuscules du titre ont { $height } mm de haut, assez pour être lues à { $distance } mm.
preflight-sign-letters-small = Les majuscules du titre ont { $height } mm de haut. Un panneau accessible lu à { $distance } mm demande { $least } mm : raccourcissez les textes ou prenez un panneau plus grand.
preflight-die-line = Le tracé de découpe a son propre ton direct, « Dieline », et n’est sur aucune plaque imprimée.
