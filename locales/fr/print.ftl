### The print screen and what the check before printing (preflight) says.
### $place, $what, $field and $zone come from the printing part in English.

## The print screen

print-sheet = Feuille
sheet-lid = Étiquette de couvercle, 7 × 9 po
sheet-postcard = Carte postale, 9 × 6 po
print-zone = Pour une seule zone
print-language = Langue { $number }
print-make = Faire la feuille
print-making = La feuille se prépare…
print-done = La feuille est prête.
print-refused = Aucun fichier n’a été fait. Corrigez les erreurs ci-dessous et réessayez.
print-unreachable = La partie impression n’a pas pu être chargée. Vérifiez la connexion et réessayez.
print-download = Télécharger le PDF pour l’imprimeur
print-page = Page { $number }
print-no-stream = Il n’y a pas de flux « { $stream } ». Choisissez-en un dans la liste.
print-no-zone = Il n’y a pas de zone « { $zone } ». Choisissez-en une dans la liste.
print-no-language = Choisissez une à trois langues du programme.
print-shortened = { $item } : sa ligne seule est juste dans { $percent } des cas ; le reste a été enlevé pour que cela entre.
preflight-title = Vérifié pour l’imprimeur

## Preflight: what was checked and is right. Sizes are in mm, type in points

preflight-bleed-and-safe-area = Fond perdu de { $bleed } mm tout autour, rien à moins de { $safe } mm du bord.
preflight-hazards-shown = Dangers montrés : { $count }.
preflight-ink-coverage = Encre au plus fort : { $coverage } %, limite { $limit } %.
preflight-postal-zones = Les zones réservées du côté adresse sont libres.
preflight-qr-code = Code QR : version { $version }, niveau { $level }, modules de { $module } mm, marge de { $quiet } modules.
preflight-type-sizes = Texte en { $body } pt, le plus petit { $smallest } pt ; à { $distance } mm de distance, il faut au moins { $floor } pt.

## Preflight: somebody should look before it goes to the print shop

preflight-translation-unreviewed = Personne n’a vérifié les textes en « { $lang } ». Faites-les lire avant d’imprimer.
preflight-postal-field-missing = Le champ « { $field } » est vide. Remplissez-le ou laissez l’imprimeur l’ajouter.
preflight-qr-dense = Le code QR est très fin (version { $version }, { $characters } caractères). Une adresse plus courte se scanne mieux.

## Preflight: errors. No file is made until they are put right. $place and $what say where

preflight-address-invalid = L’adresse du code QR ne peut pas servir : « { $address } ». Écrivez-la en entier, en commençant par https://
preflight-bad-character =
    { $kind ->
        [bidi] { $place } : « { $text } » contient un caractère qui change le sens d’écriture ({ $codepoint }, position { $position }). Effacez-le et retapez les mots.
        [control] { $place } : « { $text } » contient un caractère de contrôle ({ $codepoint }, position { $position }). Effacez-le et retapez les mots.
       *[invisible] { $place } : « { $text } » contient un caractère invisible ({ $codepoint }, position { $position }). Effacez-le et retapez les mots.
    }
preflight-date-invalid = « { $date } » n’est pas une date. Écrivez l’année, le mois et le jour : 2027-01-31
preflight-distance-invalid = « { $distance } » n’est pas une distance de lecture en mm. Écrivez à quelle distance est le lecteur.
preflight-font-not-embeddable = La police « { $family } » ne peut pas être mise dans un fichier. Choisissez-en une autre.
preflight-font-unreadable = Le fichier de la police « { $family } » est illisible. Téléchargez-le de nouveau.
preflight-hazard-accepted = { $place } : « { $text } » est un danger parmi les choses acceptées. Un danger ne va jamais dans un bac ou une poubelle : corrigez la règle.
preflight-hazard-missing = Le danger « { $text } » manque sur la feuille en « { $lang } ». On n’enlève jamais un danger pour gagner de la place.
preflight-language-count = Une feuille prend une à trois langues, pas { $count }.
preflight-language-invalid = « { $lang } » n’est pas un code de langue. Écrivez par exemple es ou es-US.
preflight-language-twice = La langue « { $lang } » y est deux fois. Enlevez-en une.
preflight-languages-differ = « { $lang } » ne dit pas la même chose que « { $first } » : { $what }.
preflight-missing-glyph = { $place } : aucune police d’ici n’a { $characters }, utilisé dans « { $text } ». Écrivez sans, ou ajoutez une police qui l’a.
preflight-nothing-to-say = Il n’y a rien à imprimer : le programme ne dit rien de ce flux. Écrivez d’abord des règles.
preflight-outside-safe-area = « { $what } » est à moins de { $safe } mm du bord et pourrait être coupé.
preflight-pictogram-unknown = { $place } : il n’y a pas d’image « { $pictogram } ». Choisissez-en une autre.
preflight-picture-too-small = Une image n’a que { $side } mm de large. Imprimez moins de lignes ou de langues.
preflight-postal-field-full = La ligne { $line } du champ « { $field } » n’entre pas : « { $text } ». Raccourcissez-la.
preflight-postal-zone = « { $what } » est dans la zone réservée : { $zone }. Déplacez-le ou raccourcissez-le.
preflight-profile-unusable = Le profil de couleur ne peut pas servir : { $why }. Prenez le profil de sortie CMJN que l’imprimeur indique.
preflight-qr-too-fine = Le code QR est trop fin pour être scanné : ses modules font { $module } mm. Raccourcissez l’adresse.
preflight-qr-too-long = L’adresse a { $characters } caractères, plus qu’un code QR n’en contient. Raccourcissez-la.
preflight-rule-too-thin = Le trait « { $what } » est trop mince pour être imprimé.
preflight-text-empty = { $place } n’a pas de mots. Écrivez-en.
preflight-text-overlaps = « { $text } » et « { $other } » se chevauchent. Raccourcissez l’un des deux.
preflight-text-too-long = { $place } ({ $lang }) : « { $text } » n’entre pas, même en { $floor } pt, la plus petite taille lisible. Raccourcissez d’environ { $cut } caractères.
preflight-too-many-lines = La feuille « { $sheet } » a { $lines } lignes en { $languages } langues ; il lui manque { $missing } mm pour elles en { $floor } pt. Enlevez des lignes ou imprimez moins de langues.
preflight-too-much-ink = Il y a { $coverage } % d’encre à un endroit ; la limite est { $limit } %. Choisissez une couleur plus claire.
preflight-type-too-small = « { $text } » est en { $size } pt ; il faut au moins { $least } pt. Raccourcissez les textes.
preflight-word-too-wide = { $place } ({ $lang }) : le mot « { $word } » dans « { $text } » est plus large que sa colonne en { $floor } pt. Prenez un mot d’environ { $room } caractères au plus.
