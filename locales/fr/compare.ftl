### What comparing programs found: changes, the notice of them, the regional report, and printed
### lines that are no longer true. Neutral: nothing is called good or bad.

## Answers and changes. $item is a name, $answer, $before and $after are answers such as


## "Yes, Recycling"

compare-answer = { $verdict }, { $place }
compare-becomes = { $item } : « { $before } » devient « { $after } ».
compare-stays = { $item } : toujours « { $answer } ».
compare-new = { $item } est nouveau dans le guide : « { $answer } ».
compare-gone = { $item } n’est plus dans le guide. C’était « { $answer } ».
compare-steps-added = Nouveau : { $steps }
compare-steps-removed = N’est plus nécessaire : { $steps }
compare-steps-order = Dans cet ordre maintenant : { $steps }
compare-also = Accepté aussi à : { $places }.
compare-also-none = Aucun autre lieu ne l’accepte plus.
compare-ban-gone = La loi ne l’interdit plus dans aucun bac.
compare-caution = L’avertissement est maintenant : { $hazard }.
compare-caution-gone = L’avertissement ne s’applique plus : { $hazard }.
compare-reason = La raison donnée : { $reason }
compare-reason-gone = Aucune raison n’est plus donnée.
compare-temporary = Une règle temporaire en décide.
compare-temporary-over = Aucune règle temporaire n’en décide plus.

## When it is so. $conditions are facts such as "Resin mark: 3, 6 or 7 and Area: Fernlow"

compare-when = Quand : { $conditions }.
compare-when-many = Sous trop de conditions pour en faire la liste.
compare-or = { $before } ; ou { $next }
compare-any-but = tout sauf { $values }
compare-day-on = le { $day }
compare-day-from = à partir du { $day }
compare-day-until = jusqu’au { $day }
compare-day-between = du { $first } au { $last }

## The notice

notice-title = Changements au guide de tri de { $place }
notice-editions = Cet avis compare { $before } avec { $after }.
notice-edition = l’édition { $label }
notice-edition-from = l’édition { $label } (à partir du { $day })
notice-on = Situation au { $day }.
notice-nothing = Aucune réponse ne change.
notice-now-accepted = Accepté désormais
notice-no-longer-accepted = N’est plus accepté
notice-another-place = Va ailleurs
notice-prepared-differently = À préparer autrement
notice-asked-differently = Questions différentes
notice-caution-changed = Autre avertissement
notice-explained-differently = Expliqué autrement
notice-new-in-guide = Nouveau dans le guide
notice-gone-from-guide = N’est plus dans le guide
notice-reworded = Dit avec d’autres mots
# $words is a text of the program.
notice-words-now = « { $words } »
notice-words-before = Avant : « { $words } »
notice-words-of = La raison donnée avec : { $items }.
notice-more =
    { $count ->
        [one] { $count } autre
       *[other] { $count } autres
    }
notice-asked-now = Dépend maintenant de : { $facts }.
notice-asked-no-longer = Ne dépend plus de : { $facts }.
notice-contact = Questions ? { $name } : { $ways }.
notice-unreviewed = Personne n’a vérifié cette traduction.

## Printed lines. $line is a printed line or an item, $sheet a sheet as in "untrue-sheet"

untrue-title = Lignes imprimées qui ne sont plus vraies
untrue-sheet =
    { $copies ->
        [0] feuille « { $id } », édition { $edition }
        [one] feuille « { $id } », édition { $edition }, { $copies } exemplaire
        [many] feuille « { $id } », édition { $edition }, { $copies } exemplaires
       *[other] feuille « { $id } », édition { $edition }, { $copies } exemplaires
    }
untrue-always = « { $line } » ({ $sheet }) : faux depuis le début de cette édition.
untrue-from = « { $line } » ({ $sheet }) : faux à partir du { $day }.
untrue-until = « { $line } » ({ $sheet }) : faux jusqu’au { $day }.
untrue-between = « { $line } » ({ $sheet }) : faux du { $first } au { $last }.
untrue-now = Vrai maintenant : « { $answer } ».
untrue-gone = Le guide n’a plus cet objet.

## The regional report. $places are jurisdictions

regional-title = Comparés : { $places }
regional-contradictory = Conseils contraires
regional-differing =
    { $count ->
        [one] Qui diffère ({ $count } objet)
        [many] Qui diffère ({ $count } objets)
       *[other] Qui diffère ({ $count } objets)
    }
regional-agreed = Vrai partout
regional-says = { $places } : { $answer }
regional-with-steps = { $answer }. { $steps }
regional-unknown = pas dans le guide
regional-item-when = { $item }. { $when }
regional-more-cases =
    { $count ->
        [one] Ils diffèrent encore d’{ $count } façon dans d’autres cas.
        [many] Ils diffèrent encore de { $count } façons dans d’autres cas.
       *[other] Ils diffèrent encore de { $count } façons dans d’autres cas.
    }
