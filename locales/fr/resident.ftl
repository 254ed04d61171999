### What residents read on their phones. Plain words, short sentences, no jargon.

## Around every screen

page-title = { $program } : où va quoi
skip = Aller à la partie principale
back = Retour
language-label = Langue
zone-label = Votre secteur
zone-none = Choisissez votre secteur
unreviewed = Personne n’a encore vérifié cette traduction. Si quelque chose semble faux, lisez-le en anglais.
decided-edition = Guide : { $edition }
privacy = Ce que vous cherchez reste dans ce téléphone. Rien n’est envoyé ni compté.

## Finding an item

search-label = De quoi voulez-vous vous défaire ?
search-placeholder = Par exemple : boîte à pizza
search-count =
    { $count ->
        [0] Rien trouvé
        [one] { $count } objet trouvé
        [many] { $count } objets trouvés
       *[other] { $count } objets trouvés
    }
search-nothing = Rien trouvé sous ce nom. Essayez un mot plus court. Si un objet n’est pas sur la liste, ce n’est pas toujours « non » : demandez-nous.
search-long = C’est long. Seules les { $count } premières lettres ont été cherchées.
home-recent = Cherché récemment
home-common = Souvent cherché
home-categories = Voir par type

## Questions

cannot-tell = Je ne sais pas
questions-left =
    { $count ->
        [one] Encore { $count } question au plus
        [many] { $count } questions au plus en tout
       *[other] { $count } questions au plus en tout
    }
ruler-title = Mesurer avec cet écran
ruler-card = Tenez une carte bancaire debout contre l’écran. Déplacez le curseur jusqu’à ce que le dessin soit aussi large que la carte.
ruler-use = Posez maintenant l’objet sur la règle, un bout à 0.
ruler-cards = { $measure } : cartes bancaires mises bout à bout : { $count }

## Answers

verdict-yes = Oui
verdict-no = Non
verdict-elsewhere = Pas ici, cela va ailleurs
verdict-unlisted = Pas sur la liste : demandez
verdict-undecided = Pas encore décidé : demandez
verdict-closed = Non : pas sur la liste
caution-title = Attention.
prepare-title = Comment le préparer
why-title = Pourquoi
also-title = Accepté aussi à
temporary-order = Une règle temporaire est en vigueur. Elle peut changer bientôt.
assumed-title = Vous ne saviez pas, alors nous avons pris la réponse prudente :
assumed-line = { $fact } : { $value }
ask-contact = Questions ? { $name } :
decided-title = Quelle règle a décidé
decided-rule = Règle :
decided-acknowledged = Une personne nommée a approuvé cette exception à une règle de sécurité.

## Places to take things to

site-more =
    { $count ->
        [one] { $count } autre lieu
        [many] { $count } autres lieux
       *[other] { $count } autres lieux
    }
site-locate = Trouver le lieu le plus proche
site-no-position = Ce téléphone n’a pas dit où il est.
near-label = Ville, secteur ou code postal
near-find = Chercher là
near-found = Au plus près de { $place }.
near-unknown = Ce guide ne connaît pas le lieu « { $place } ». Essayez une ville, votre secteur ou le nom d’un site.
site-also-takes = Prend aussi : { $items }
site-all-items = Tout ce qu’il prend
site-booking = Réservez d’avance.
site-proof = Apportez une preuve que vous habitez ici.
site-permit = Il vous faut un permis.
site-voucher = Il vous faut un bon.
container-rules-title = À propos : { $container }
hours-open = Ouvert maintenant
hours-open-until = Ouvert jusqu’à { $time }
hours-closed = Fermé maintenant
hours-closed-until = Fermé jusqu’à { $time }
hours-appointment = Sur rendez-vous seulement
hours-unknown = Heures inconnues : appelez d’abord
hours-day-time = { $day }, { $time }

## Without a network

offline-fetching = Le guide s’enregistre pour marcher sans Internet…
offline-ready = Enregistré. Le guide marche sans Internet.
offline-now = Vous êtes hors ligne. Le guide marche depuis ce téléphone.
offline-incomplete = Vous êtes hors ligne et le guide n’est pas tout enregistré. Il peut manquer des parties.
offline-failed = Le guide n’a pas pu être enregistré. Il marche seulement avec Internet. Réessayez plus tard.
offline-impossible = Ce navigateur ne peut pas enregistrer le guide. Il marche seulement avec Internet.
update-ready = Un guide plus récent est prêt.
update-now = L’utiliser
offline-lost = Le téléphone a effacé le guide enregistré. Il s’enregistre à nouveau…
offline-forgetful = Ce navigateur ne laisse rien enregistrer. Le guide marche seulement avec Internet et oublie votre langue et votre secteur.
update-failed = Un guide plus récent n’est pas arrivé en entier. Celui-ci marche encore et le téléphone réessaiera.

## When something is not there

unknown-item = Il n’y a pas d’objet « { $id } » dans ce guide. Cherchez-le par son nom.
unknown-category = Il n’y a pas de groupe « { $id } » dans ce guide. Choisissez-en un sur la première page.
unknown-address = Il n’y a pas de page « { $address } ». Allez à la première page.
unknown-language = Ce guide n’est pas encore en « { $language } ». Choisissez une autre langue.
language-broken = Les mots en « { $language } » ne sont pas arrivés en entier. Vérifiez la connexion et choisissez à nouveau la langue.
unknown-zone = Il n’y a pas de secteur « { $id } » dans ce guide. Choisissez le vôtre en bas de la page.
clock-wrong = Ce téléphone dit que nous sommes le { $date }. C’est impossible. On ne sait pas ce qui est ouvert, et les règles de saison peuvent être fausses. Réglez la date.
