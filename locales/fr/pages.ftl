### The guide as plain pages.
# Not yet reviewed by a native speaker.

pages-intro = Tout ce que contient ce guide, avec la réponse. Pour trouver un objet, cherchez dans cette page : « Rechercher dans la page » sur un téléphone, Ctrl+F sur un ordinateur.
pages-app = Ouvrir le guide qui pose les questions et répond
pages-places = Lieux où apporter les objets
pages-depends = cela dépend
pages-category-title = { $category } – { $program }
pages-also = Autres mots
pages-now = Maintenant
pages-from = À partir du { $day }
pages-too-much = La réponse dépend de trop de choses pour cette liste.
pages-next-open = Prochaines ouvertures :
pages-all-day = jour et nuit
pages-takes-only = Ne prend que : { $items }
pages-does-not-take = Ne prend pas : { $items }
