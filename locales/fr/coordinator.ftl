### The coordinator's screens. Short, clear words; trade words where coordinators use them.

## Around every screen

desk-title = Bureau du guide
desk-title-of = { $program } : bureau du guide
navigation = Parties du programme
undo = Annuler
redo = Rétablir
close = Fermer
tab-files = Fichiers
tab-program = Programme
tab-streams = Flux
tab-zones = Zones
tab-channels = Filières
tab-sites = Lieux
tab-rules = Règles
tab-items = Objets
tab-texts = Textes
tab-print = Imprimer
start-problem-unreachable = Le serveur n’a pas répondu. Vérifiez la connexion et rechargez la page.
start-problem-missing = Un fichier de cette application manque sur le serveur. Demandez à qui l’a publiée de la republier.
start-problem-broken = Un fichier de cette application est arrivé abîmé. Rechargez la page ; si rien ne change, republiez l’application.
recover-title = Quelque chose a mal tourné sur cette page
recover-text = Votre programme a été enregistré au fur et à mesure. Téléchargez-le par prudence, puis rechargez la page pour continuer.
recover-nothing = Il n’y a pas de programme enregistré dans ce navigateur.
recover-reload = Recharger
recover-download = Télécharger mon programme
panels = Constats, changements et essai

## Saving. $time is a day with a time

save-nothing = Rien d’ouvert
save-saved = Enregistré sur cet appareil
save-waiting = Enregistrement…
save-failed = Pas enregistré
save-again = Réessayer d’enregistrer
save-problem-full = Il n’y a plus de place sur cet appareil : vos changements ne sont pas enregistrés. Exportez tout de suite le fichier du programme, puis faites de la place.
save-problem-forbidden = Ce navigateur ne laisse pas la page enregistrer : vos changements ne sont pas gardés. Exportez le fichier du programme avant de fermer cette fenêtre.
save-problem-newer = Une autre fenêtre a enregistré ce programme depuis. Votre version ne l’a pas remplacé.
day-and-time = { $day }, { $time }

## Drafts and files. $name, $copy and $program are names of drafts or files

drafts-title = Programmes sur cet appareil
drafts-none = Il n’y en a pas encore. Ouvrez la démo, commencez un programme ou importez un fichier.
draft-saved = Enregistré { $time }
draft-remove-sure = Vraiment le supprimer ?
draft-second-version = { $name } (deuxième version)
draft-diverged = « { $name } » a été changé aussi dans une autre fenêtre. Les deux sont gardés : l’autre version s’appelle « { $copy } ».
open-demo = Ouvrir la démo
open-demo-hint = Quillmere County, un lieu inventé où tout est rempli
new-program = Nouveau programme
new-program-hint = Commencez avec seulement les règles de sécurité intégrées
import-file = Importer un fichier de programme
import-file-hint = Il s’ouvre à côté de vos autres programmes et n’en remplace aucun
export-file = Exporter le fichier du programme
export-file-hint = Un seul fichier avec tout, à garder ou à transmettre
import-refused = « { $name } » ne peut pas être ouvert
import-unchanged = Vos programmes n’ont pas changé.
import-original = Télécharger le fichier tel qu’il était

## Why a program file cannot be read

load-too-large = Le fichier fait { $megabytes } Mo ; un fichier de programme fait au plus { $limit } Mo. Vérifiez que c’est le bon fichier.
load-truncated = Le fichier s’arrête trop tôt, à la ligne { $line }. Il a sans doute été coupé en route : copiez-le ou téléchargez-le de nouveau.
load-not-json = Le fichier est illisible à partir de la ligne { $line }, colonne { $column }. S’il a été modifié à la main, corrigez cet endroit ; sinon, exportez-le de nouveau.
load-other-format = Ce n’est pas un fichier de programme (il dit « { $found } »). Choisissez un fichier exporté ici.
load-newer = Le fichier est de la version { $found } ; cette application connaît les versions jusqu’à { $known }. Utilisez une application plus récente.
load-shape = La valeur à « { $path } » n’est pas du type attendu : { $detail }. Corrigez-la et importez le fichier de nouveau.
load-too-deep = Une condition de la règle « { $rule } » est imbriquée sur plus de { $limit } niveaux. Divisez-la en plusieurs règles.

## Lists and fields in general

list-filter = Filtrer
list-add = Ajouter
list-add-one = En ajouter un
list-new-name = Nom du nouveau
list-remove = Supprimer
list-up = Monter
list-choose = Choisissez dans la liste, ou ajoutez-en un.
choice-none = Aucun
field-month = Mois
field-day = Jour
measure-unreadable = « { $stated } » est illisible. Écrivez un nombre avec son unité, par exemple 2 in, 1 gal, 100 lb.
translations = Dans les autres langues
field-name = Nom
field-kind = Type
field-note = Note pour les résidents
field-phone = Téléphone
field-email = Courriel

## The program's own fields

program-basics = Ce programme
field-program-name = Nom du guide
field-program-id = Code court, pour les fichiers et les adresses
field-edition = Édition
field-edition-from = Valable à partir du
field-guide-url = Adresse du guide publié
field-source-language = Langue dans laquelle on écrit d’abord
field-languages = Langues de publication
program-contact = À qui demander
field-contact-name = Nom du bureau
field-return-address = Adresse de retour des envois
program-silence = Quand aucune règle ne nomme un cas
field-silence = Ce que veut dire le silence
silence-undecided = Pas encore décidé (ne peut pas être publié)
silence-ask = Liste ouverte : la réponse est « pas sur la liste, demandez »
silence-closed = Liste fermée : tout ce qui n’est pas nommé est refusé
program-unknown = Quand un résident ne sait pas
program-unknown-hint = Ce qu’on prend à la place. Si rien n’est indiqué, on prend la valeur prudente.
unknown-add = En indiquer un autre
program-counts-as = Ce qui compte comme autre chose
program-counts-as-hint = Chaque règle traite alors l’un comme l’autre : le verre givré comme transparent, par exemple.
counts-as-add = Fait
field-these = Ceux-ci
field-count-as = Comptent comme
program-hazards = Où vont les dangers
program-hazards-hint = Chaque classe a besoin d’une filière sûre et d’une personne qui l’a approuvée. Un danger ne va jamais dans un bac ou une poubelle.
field-hazard-channel = Va à
field-approved-by = Approuvé par
program-plant = Usine de tri
field-plant-name = Nom de l’usine
field-machine-name = Machine
field-machine-limit = Ce qu’elle ne peut pas traiter
machine-add = Ajouter une machine
program-print = Pour les feuilles imprimées
field-short-url = Adresse courte à côté du code QR
field-indicia = Mention d’affranchissement, ligne par ligne
field-statement = Mention sur le papier recyclé ou autre

## Streams and containers

containers-title = Contenants
container-add = Ajouter un contenant
container-remove = Supprimer ce contenant
field-container-name = Son nom pour les résidents
field-colour = Couleur
field-capacity = Contenance, avec son unité
field-container-zones = Seulement dans ces zones
field-container-dwellings = Seulement pour ces logements
field-set-out = Quand et comment le sortir
field-container-rules = Règles sur ce contenant
field-container-rules-hint = Elles valent quoi qu’on y mette. Les résidents les voient avec chaque réponse qui le nomme.
field-container-rule-add = Une règle sur
field-container-rule = Dans vos mots, au lieu de la phrase standard
field-limit = Limite, avec son unité
field-share = Limite, par exemple 10 %
limit-missing = Indiquez la limite, ou écrivez toute la règle dans vos mots.
residents-read = Les résidents lisent : { $text }
container-rule-kind-lid-closed = Couvercle fermé
container-rule-kind-weight = Poids une fois plein
container-rule-kind-distance = Place libre autour
container-rule-kind-side-waste = Choses à côté ou dessus
container-rule-kind-share-of-load = Part permise de ce qui n’a pas sa place
container-rule-kind-liners = Y mettre un sac
container-rule-kind-sacks = Sacs distribués
container-rule-kind-registration = Inscription d’abord
container-rule-kind-refusals = Quand on le laisse sur place
stream-kind-recycling = Recyclage
stream-kind-organics = Organiques
stream-kind-refuse = Ordures
stream-kind-glass = Verre
stream-kind-paper = Papier
stream-kind-film = Film plastique
container-kind-cart = Bac à roues
container-kind-bin = Bac
container-kind-bag = Sac
container-kind-box = Caisse
container-kind-shared-cart = Bac commun d’un immeuble
container-kind-dumpster = Conteneur à déchets

## Zones

field-dwelling = Type de logement
field-households = Nombre de logements
field-zone-streams = Flux ramassés ici
field-centre = Centre de la zone : latitude, longitude

## Channels and sites

field-fee = Prix, en mots
field-booking = Réservation obligatoire
field-proof = Preuve d’adresse nécessaire
field-permit = Permis nécessaire
field-voucher = Bon nécessaire
field-allowance = Combien ou combien de fois, en mots
field-vehicles = Quels véhicules peuvent venir, en mots
field-safe-for = Prend ces dangers en sécurité
channel-sites =
    { $count ->
        [0] Aucun lieu ne le prend encore.
        [one] Son lieu : { $names }
        [many] Ses lieux : { $names }
       *[other] Ses lieux : { $names }
    }
channel-kind-drop-off = Centre de dépôt
channel-kind-store-take-back = Reprise en magasin
channel-kind-hazardous-waste = Centre de déchets dangereux
channel-kind-event = Journée de collecte
channel-kind-bulky-pickup = Collecte des gros objets
channel-kind-deposit-return = Retour de consigne
channel-kind-mail-back = Retour par la poste
channel-kind-reuse = Réemploi et réparation
channel-kind-medicine-take-back = Retour de médicaments
channel-kind-sharps-take-back = Retour d’aiguilles
channel-kind-police = Police
channel-kind-specialist = Entreprise spécialisée
channel-kind-dealer = Fabricant ou vendeur
channel-kind-health-office = Bureau de santé
channel-kind-authority = Autorité à appeler
field-site-channels = Prend les choses de ces filières
field-accepts = N’en prend que ceci
field-refuses = N’en prend pas ceci
field-site-vehicles = Quels véhicules peuvent venir ici, si ce n’est pas comme pour ses filières
field-address = Adresse
field-position = Position : latitude, longitude
field-hours = Heures d’ouverture
field-hours-hint = Comme dans les données cartographiques ouvertes : Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
hours-unreadable = Ces heures sont illisibles : { $detail }

## Rules and their conditions

field-tier = Niveau
field-verdict = Verdict
rule-adds-steps = Aucun : elle ajoute seulement des étapes
field-stream = Flux
field-channel = Filière
field-prepare = Préparation, dans l’ordre
field-reason = Raison
field-machine = Machine qui en décide
field-residents = Mots pour les résidents
field-sorters = Mots pour les trieurs
field-contract = Mots du contrat
provenance-title = D’où cela vient
field-decided-by = Décidé par
field-source = Source
field-confirmed = Dernière confirmation le
field-ask-again = Redemander le
rule-more = Dates, exceptions et approbation
field-also = Accepté aussi par
field-overrides = Passe avant ces règles de son niveau
field-temporary = Règle temporaire
field-from = À partir du
field-until = Jusqu’au
field-season = Seulement une partie de chaque année
field-season-from = Premier jour de la saison
field-season-until = Dernier jour de la saison
season-says = Chaque année du { $from } au { $until }
field-banned-from = Interdit par la loi dans
acknowledgement-title = Exception à une règle de sécurité intégrée
acknowledgement-hint = Seule une personne nommée peut la permettre, avec une raison. Elle est montrée comme alerte à chaque vérification.
field-acknowledged-by = Permis par
field-acknowledged-on = Le
field-acknowledged-because = Parce que
condition-title = Quand
condition-always = Toujours : la règle n’a pas de condition.
condition-begin = Ajouter une condition
condition-kind = Comment les parties comptent
condition-all = Toutes
condition-any = Au moins une
condition-not = Pas celle-ci
condition-fact = Fait
condition-is = est parmi
condition-add-fact = Ajouter un fait
condition-add-group = Ajouter un groupe
condition-remove = Supprimer cette partie de la condition
bound-at-least = au moins
bound-over = plus de
bound-at-most = au plus
bound-under = moins de
bound-value = Mesure avec son unité
bound-day = Jour
bound-like = Comparaison de tous les jours
bound-per = Compté

## Items. $item is an item's name

items-all = Tous
items-answer = Réponse
items-asks = Pose une question
items-ask = Essayer
items-ask-name = Essayer : { $item }
items-rule = Aller à la règle
items-decide = Décider
items-decide-name = Décider : { $item }
items-count =
    { $count ->
        [one] { $count } objet
        [many] { $count } objets
       *[other] { $count } objets
    }

## Texts and their translations

texts-language = Langue
texts-state = État
text-state-missing = Manquant
text-state-unreviewed = Pas vérifié
text-state-reviewed = Vérifié
text-state-outdated = Dépassé
text-step = Étape de préparation
text-label = { $whose } : { $what }
texts-reviewer = Votre nom, pour signer
texts-reviewer-needed = Indiquez d’abord votre nom : une vérification est signée.
texts-sign-off = J’ai vérifié ceci
texts-count = { $done } vérifiés sur { $all }
review-title = État de chaque langue
review-screens = Mots des écrans : { $state }
review-source = la langue dont viennent les autres
review-by = vérifié par { $name } le { $date }
review-outdated = vérifié par { $name } le { $date }, mais l’anglais a changé depuis
review-texts = Vos propres textes : { $done } sur { $all } vérifiés
review-names = Signé par { $names }

## What changed, and trying the guide

ask-title = Demander comme un résident
changes-title = Ce que vos modifications ont changé
changes-count =
    { $count ->
        [0] Aucune réponse n’a changé.
        [one] { $count } réponse a changé.
        [many] { $count } réponses ont changé.
       *[other] { $count } réponses ont changé.
    }
changes-absent = Pas dans le guide
changes-details = Le lieu est le même ; la préparation ou la raison a changé.
changes-mark = Comparer à partir d’ici

## Findings. $item is an item's name, $answers a list such as "Wet: dry"

findings-title = Constats
findings-count = Erreurs : { $errors } · Alertes : { $warnings } · Remarques : { $notices }
findings-more =
    { $count ->
        [one] et { $count } de plus
        [many] et { $count } de plus
       *[other] et { $count } de plus
    }
severity-error = Erreur
severity-warning = Alerte
severity-notice = Remarque
severity-pass = Juste
witness = Par exemple : { $item }, quand { $answers }
witness-item = Par exemple : { $item }

## What a finding says, and below it what to do. Values are ids and texts of the program

finding-uncovered-case = Aucune règle ne décide de ce cas.
    .hint = Écrivez une règle pour lui, ou dites sur l’écran du programme ce que veut dire le silence.
finding-conflicting-rules = Des règles du même niveau envoient la même chose à des endroits différents : { $rules }.
    .hint = Changez la condition de l’une, ou faites passer l’une avant l’autre.
finding-hazard-not-safe =
    { $problem ->
        [no-channel] Le danger « { $class } » n’a pas de filière.
        [unknown-channel] Le danger « { $class } » va à une filière qui n’existe pas.
        [channel-does-not-take-it] Le danger « { $class } » va à une filière qui n’est pas marquée sûre pour lui.
       *[rule] La règle « { $id } » envoie le danger « { $class } » à un endroit qui n’est pas sûr pour lui.
    }
    .hint = Choisissez une filière qui le prend en sécurité. Un danger ne va jamais dans un bac ou une poubelle.
finding-hazard-acknowledged = { $by } a permis une exception à une règle de sécurité intégrée : « { $id } ».
    .hint = Vérifiez que la loi locale et le lieu le permettent, et que la raison tient encore.
finding-rule-never-applies = La règle « { $id } » ne décide jamais rien.
    .hint = D’autres règles décident avant elle de tous ses cas, ou aucun objet ne remplit sa condition. Changez-la ou supprimez-la.
finding-not-listed = Certains cas de cet objet reçoivent la réponse « pas sur la liste, demandez ».
    .hint = C’est permis. Écrivez une règle si vous savez la réponse.
finding-missing-provenance = On ne voit pas d’où vient la décision de la règle « { $id } ». Il manque : { $missing }.
    .hint = Indiquez qui a décidé, d’après quelle source, et quand l’usine l’a confirmé en dernier.
finding-missing-translation =
    { $state ->
        [unreviewed] Textes en « { $language } » que personne n’a vérifiés : { $count }. Le premier est « { $first } ».
        [outdated] Textes en « { $language } » dont la source a changé depuis : { $count }. Le premier est « { $first } ».
       *[missing] Textes manquants en « { $language } » : { $count }. Le premier est « { $first } ».
    }
    .hint = Ouvrez l’écran des textes et filtrez par langue et par état.
finding-broken-condition =
    { $problem ->
        [unknown-fact] Il n’y a pas de fait « { $fact } ».
        [no-values] Le fait « { $fact } » n’est comparé à rien.
        [no-number] « { $value } » pour « { $fact } » n’a pas de nombre.
        [no-unit] « { $value } » pour « { $fact } » n’a pas d’unité.
        [unknown-unit] L’unité de « { $value } » pour « { $fact } » est inconnue.
        [wrong-dimension] « { $value } » ne mesure pas « { $fact } ».
        [negative] « { $value } » pour « { $fact } » est moins que rien.
        [too-large] « { $value } » pour « { $fact } » est trop grand pour être vrai.
        [unknown-part] Il n’y a pas de partie « { $value } ».
        [range-reversed] L’intervalle « { $value } » de « { $fact } » va à l’envers.
       *[unknown-value] « { $value } » n’est pas une valeur de « { $fact } ».
    }
    .hint = Choisissez dans la liste. Écrivez une mesure avec son unité, par exemple 2 in, 1 gal ou 10 lb.
finding-broken-item =
    { $problem ->
        [unknown-fact] Il n’y a pas de fait « { $fact } ».
        [no-values] Le fait « { $fact } » n’est comparé à rien.
        [no-number] « { $value } » pour « { $fact } » n’a pas de nombre.
        [no-unit] « { $value } » pour « { $fact } » n’a pas d’unité.
        [unknown-unit] L’unité de « { $value } » pour « { $fact } » est inconnue.
        [wrong-dimension] « { $value } » ne mesure pas « { $fact } ».
        [negative] « { $value } » pour « { $fact } » est moins que rien.
        [too-large] « { $value } » pour « { $fact } » est trop grand pour être vrai.
        [unknown-part] Il n’y a pas de partie « { $value } ».
        [no-such-sides] Les côtés indiqués ne laissent aucune taille possible : le plus long doit être le plus long.
        [no-range] L’intervalle de « { $fact } » n’a pas de début ou pas de fin.
        [range-reversed] L’intervalle « { $value } » de « { $fact } » va à l’envers.
       *[unknown-value] « { $value } » n’est pas une valeur de « { $fact } ».
    }
    .hint = Choisissez dans la liste. Écrivez une mesure avec son unité, par exemple 2 in, 1 gal ou 10 lb.
finding-broken-reference =
    { $kind ->
        [stream] Le flux « { $target } » n’existe pas.
        [channel] La filière « { $target } » n’existe pas.
        [zone] La zone « { $target } » n’existe pas.
        [step] L’étape de préparation « { $target } » n’existe pas.
        [reason] La raison « { $target } » n’existe pas.
        [machine] La machine « { $target } » n’existe pas.
        [item] L’objet « { $target } » n’existe pas.
        [rule-of-tier] La règle « { $target } » est d’un autre niveau : on ne peut pas passer avant elle.
       *[rule] « { $target } » n’existe pas.
    }
    .hint = Choisissez-en un autre, ou ajoutez ce qui manque. Un nom vide veut dire que rien n’est encore choisi.
finding-circular-override = Ces règles passent l’une avant l’autre en rond : { $rules }.
    .hint = Enlevez-en une de la liste « passe avant ».
finding-destination-not-offered = La règle « { $id } » envoie des choses au flux « { $stream } », qui n’est pas ramassé dans la zone « { $zone } ».
    .hint = Ajoutez le flux à la zone, ou écrivez une autre règle pour cette zone.
finding-duplicate-id =
    { $times ->
        [0] Quelque chose ici n’a pas de code.
        [one] Le code « { $id } » sert { $times } fois.
        [many] Le code « { $id } » sert { $times } fois.
       *[other] Le code « { $id } » sert { $times } fois.
    }
    .hint = Donnez à chacun son propre code. Liens, étiquettes et traductions en dépendent.
finding-printed-line-untrue =
    { $span ->
        [from] La ligne imprimée « { $line } » est fausse à partir du { $since }.
        [until] La ligne imprimée « { $line } » est fausse jusqu’au { $until }.
        [between] La ligne imprimée « { $line } » est fausse du { $since } au { $until }.
       *[always] La ligne imprimée « { $line } » est fausse dans cette édition.
    }
    .hint = Réimprimez la feuille ou couvrez la ligne. Quand la feuille n’est plus affichée, indiquez le jour de son retrait.
finding-suspicious-text =
    { $problem ->
        [markup] Le texte « { $key } » ({ $language }) contient du balisage : { $shown }
        [direction] Le texte « { $key } » ({ $language }) contient un caractère qui change le sens d’écriture : { $shown }
       *[control] Le texte « { $key } » ({ $language }) contient un caractère invisible : { $shown }
    }
    .hint = Les textes sont simples. Effacez-le et retapez les mots.
finding-too-complex = Il y a tant de points ouverts sur cet objet qu’on ne peut pas regarder tous ses cas (faits ouverts : { $count }).
    .hint = Fixez certains de ses faits, ou divisez-le en plusieurs objets.
finding-too-many-thresholds = Les règles nomment tant de seuils qu’on ne peut pas regarder tous les cas de certains objets (objets : { $count }). La plupart concernent « { $fact } » : { $thresholds }.
    .hint = Donnez aux règles des seuils communs, et retirez celles qui ne valent plus.
finding-unreadable-hours = Les heures d’ouverture « { $hours } » sont illisibles : { $problem }
    .hint = Écrivez-les ainsi : Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
finding-unusable-setting = « { $value } » ne peut pas servir ici.
    .hint = Choisissez une valeur dans la liste, ou corrigez-la : une couleur s’écrit #2a7f4f, une position en latitude et longitude, une adresse commence par https://

## Comparing with a file. $name is a file's name

compare-file-title = Comparer avec un autre fichier
compare-file = Choisissez une édition plus ancienne, ou le programme d’un voisin
compare-file-name = Comparé avec « { $name } ».
compare-newer = Ce fichier est le plus récent des deux
compare-notice = Avis des changements
compare-copy = Copier l’avis
compare-copied = Copié.
compare-not-copied = Le navigateur n’a pas copié. Sélectionnez le texte et copiez-le.
compare-download = Télécharger l’avis

## The register of printed sheets. $id is a sheet's id, $day a date

printed-title = Ce qui a été imprimé
printed-copies = Nombre d’exemplaires
printed-note = Noter comme imprimé
printed-entry =
    { $copies ->
        [0] { $id }, { $day }
        [one] { $id }, { $day }, { $copies } exemplaire
        [many] { $id }, { $day }, { $copies } exemplaires
       *[other] { $id }, { $day }, { $copies } exemplaires
    }
printed-withdrawn = retiré le { $day }
printed-withdraw = N’est plus affiché
printed-still-out = Encore affiché
finding-question-never-matters =
    { $problem ->
        [unknown] On a fixé ce qui compte quand personne ne sait « { $fact } », mais aucune réponse n’en a besoin.
       *[open] Cet objet laisse « { $fact } » ouvert, mais aucune réponse sur lui n’en dépend.
    }
    .hint = On ne le demande à personne. Laissez-le, ou écrivez la règle qui en a besoin.
finding-steps-contradict = Une réponse demande « { $one } » et « { $other } », ce qui ne peut pas se faire ensemble. Règles : { $rules }.
    .hint = Enlevez une des deux étapes de sa règle, ou changez une condition pour qu’une seule règle s’applique.
finding-preparation-contradicts =
    { $problem ->
        [none] Qui suit l’étape « { $step } » de la règle « { $id } » fait que « { $fact } » devient « { $value } », et alors aucune règle ne l’envoie là.
       *[rule] Qui suit l’étape « { $step } » de la règle « { $id } » fait que « { $fact } » devient « { $value } », et alors la règle « { $other } » l’envoie ailleurs.
    }
    .hint = Enlevez l’étape de la règle, ou faites valoir la règle aussi pour ce que l’étape laisse.
finding-site-never-used =
    { $problem ->
        [item] Le lieu « { $id } » dit prendre « { $item } », qui n’est jamais envoyé à une filière de ce lieu.
       *[site] Rien n’est jamais envoyé au lieu « { $id } ».
    }
    .hint = Écrivez une règle qui envoie des choses à une de ses filières, donnez-lui une autre filière, ou enlevez-le de la liste.
finding-no-site-takes =
    { $problem ->
        [refused] « { $item } » est envoyé à la filière « { $id } », mais aucun de ses lieux ne le prend.
       *[none] Des choses comme « { $item } » sont envoyées à la filière « { $id } », qui n’a aucun lieu.
    }
    .hint = Ajoutez un lieu, faites-le prendre par un des lieux, ou envoyez-le à une autre filière.
finding-item-without-name = L’objet « { $id } » n’a pas de nom à montrer. Langues sans nom : { $languages }.
    .hint = Indiquez son nom dans la langue du programme.
finding-name-twice = Les objets « { $id } » et « { $other } » s’appellent tous deux « { $name } » en « { $language } ».
    .hint = Donnez à l’un un nom qui le distingue. Les résidents choisissent par le nom.
finding-banned-destination = « { $item } » est envoyé au flux « { $stream } », où la loi l’interdit. Règles : { $rules }.
    .hint = Envoyez-le à un autre flux ou une autre filière, ou corrigez l’interdiction là où elle est écrite.
finding-impossible-condition =
    { $problem ->
        [fact] La condition de la règle « { $id } » ne peut jamais être vraie : ce qu’elle demande de « { $fact } » se contredit.
       *[parts] La condition de la règle « { $id } » ne peut jamais être vraie : ses parties se contredisent.
    }
    .hint = Corrigez ou enlevez une des parties. Si l’une ou l’autre suffit, utilisez « au moins une ».
finding-empty-condition =
    { $problem ->
        [any] La condition de la règle « { $id } » a un groupe vide « au moins une », qui n’est jamais vrai.
       *[all] La condition de la règle « { $id } » a un groupe vide « toutes », qui est toujours vrai.
    }
    .hint = Ajoutez ce qui va dans le groupe, ou supprimez-le.
finding-rule-without-condition = La règle « { $id } » n’a pas de condition : elle décide de tout ce qu’un niveau précédent ne décide pas.
    .hint = Écrivez quand elle vaut. Si elle vise tout le reste, mettez-la au niveau « default ».
finding-text-missing-register =
    { $register ->
        [contract] Règles sans les mots du contrat : { $count }. La première est « { $first } ».
        [sorters] Règles sans mots pour les trieurs : { $count }. La première est « { $first } ».
       *[residents] Règles sans mots ni raison pour les résidents : { $count }. La première est « { $first } ».
    }
    .hint = Écrivez-les sur l’écran de la règle, pour que les trois disent la même chose.
finding-unused-thing =
    { $kind ->
        [stream] Aucune règle n’envoie rien au flux « { $id } ».
        [channel] Ni règle ni danger ne va à la filière « { $id } ».
        [step] Aucune règle ne demande l’étape « { $id } ».
        [zone] Rien ne change dans la zone « { $id } » : aucune règle, aucun contenant ni flux ne la nomme.
       *[machine] Aucune règle ne nomme la machine « { $id } ».
    }
    .hint = Laissez-le s’il doit servir ; sinon, supprimez-le.
finding-counts-as-broken =
    { $problem ->
        [unknown-fact] Il n’y a pas de fait « { $fact } » dont les valeurs pourraient compter comme une autre.
        [unlisted-fact] « { $fact } » n’a pas de liste de valeurs : aucune ne peut compter comme une autre.
        [unknown-value] « { $value } » n’est pas une valeur de « { $fact } ».
        [danger] « { $fact } » est un danger : aucune de ses valeurs ne compte comme une autre.
        [nothing] Rien n’est nommé qui compte comme « { $value } » pour « { $fact } ».
        [itself] « { $value } » de « { $fact } » compte comme elle-même.
        [twice] « { $value } » de « { $fact } » compte comme deux valeurs différentes.
        [circle] Des valeurs de « { $fact } » comptent l’une comme l’autre en rond, dont « { $value } ».
       *[chain] « { $value } » de « { $fact } » compte elle-même comme une autre : rien ne peut donc compter comme elle.
    }
    .hint = Choisissez des valeurs dans la liste. Chacune compte comme une seule autre, qui ne compte que comme elle-même.
finding-season-broken =
    { $problem ->
        [reversed] Le dernier jour de la règle « { $id } » est avant le premier : { $value }.
       *[not-a-year-day] « { $value } » n’est pas un jour de l’année : la saison de la règle « { $id } » est illisible.
    }
    .hint = Écrivez le mois et le jour, par exemple 11-01. Une saison peut passer le nouvel an ; des jours avec une année, non.
finding-container-rule-broken =
    { $problem ->
        [unknown-kind] « { $value } » n’est pas un type de règle pour le contenant « { $id } ».
        [twice] Le contenant « { $id } » a deux règles du type « { $value } ».
        [limit] La limite « { $value } » du contenant « { $id } » est illisible.
       *[unknown-dwelling] « { $value } » n’est pas un type de logement : le contenant « { $id } » ne sert donc à aucun.
    }
    .hint = Choisissez dans la liste, mettez les deux textes dans une règle, ou écrivez une limite avec son unité : 100 lb, 3 ft, 10%.
finding-comparison-broken =
    { $problem ->
        [unknown-like] Il n’y a pas d’objet de tous les jours « { $value } » pour comparer « { $fact } ».
        [other-dimension] « { $value } » ne dit rien de « { $fact } » : c’est un autre type de mesure.
        [far] « { $value } » est plus de deux fois plus grand ou plus petit que la mesure donnée pour « { $fact } ».
       *[unknown-period] On ne peut pas compter « { $fact } » par « { $value } ».
    }
    .hint = Choisissez dans la liste, ou laissez la comparaison de côté.

## Ways to mend a finding, on buttons and in lists. Values are ids and texts of the program

fix-replace = Mettre « { $with } » à la place de « { $value } »
fix-choose = Choisir « { $with } »
fix-remove = Enlever « { $value } »
fix-replace-fact = Comparer « { $with } » à la place de « { $fact } »
fix-replace-value = Mettre « { $with } » à la place de « { $value } »
fix-remove-value = Enlever « { $value } » de la condition
fix-replace-item-fact = Mettre le fait « { $with } » à la place de « { $fact } »
fix-remove-rule = Supprimer la règle « { $rule } »
fix-go-before = Faire passer « { $rule } » avant { $over }
fix-not-before = Ne plus faire passer « { $rule } » avant « { $over } »
fix-silence-undecided = Laisser ouvert ce que veut dire le silence
fix-silence-ask = Liste ouverte : répondre « pas sur la liste, demandez » quand aucune règle ne nomme
fix-silence-closed = Liste fermée : refuser ce qu’aucune règle ne nomme
fix-answer-yes = Ébaucher une règle : « { $item } » va à « { $stream } »
fix-answer-no = Ébaucher une règle : « { $item } » n’est pas pris et va à « { $stream } »
fix-route = Envoyer le danger « { $class } » à la filière « { $channel } »
fix-send-to = Envoyer ce dont parle la règle « { $rule } » à la filière « { $channel } »
fix-collect = Ramasser « { $stream } » aussi dans la zone « { $zone } »
fix-except-zone = Ne pas appliquer la règle « { $rule } » dans la zone « { $zone } »
fix-own-ids = Donner de nouveaux codes : { $with }
fix-remove-twins = Supprimer les copies identiques en tout
fix-swap-dates = Échanger le premier et le dernier jour
fix-drop-from = Enlever le premier jour
fix-drop-until = Enlever le dernier jour
fix-drop-season = Enlever la saison
fix-swap-position = Échanger latitude et longitude
fix-add-language = Publier aussi en « { $language } »
fix-remove-empty = Supprimer les groupes vides
fix-remove-unused = Supprimer « { $id } »
fix-drop-counting = Ne plus rien faire compter comme « { $value } » pour « { $fact } »
fix-clean-text = L’enlever du texte
mend-title = Façons de corriger
mend-done = Fait : { $fix }. Vous pouvez l’annuler.
mend-gone = Rien n’a changé : le programme n’est plus comme au moment de la proposition.
