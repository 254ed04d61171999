### The guide as plain pages.
# Not yet reviewed by a native speaker.

pages-intro = Tout sa ki nan gid sa a, ak repons yo. Pou jwenn yon bagay, chèche nan paj sa a: “Chèche nan paj la” sou telefòn, Ctrl+F sou òdinatè.
pages-app = Louvri gid ki poze kesyon epi ki reponn lan
pages-places = Kote pou pote bagay yo
pages-depends = sa depann
pages-category-title = { $category } – { $program }
pages-also = Lòt mo pou li
pages-now = Kounye a
pages-from = Apati { $day }
pages-too-much = Repons lan depann de twòp bagay pou lis sa a.
pages-next-open = L ap louvri:
pages-all-day = lajounen kou lannuit
pages-takes-only = Li pran sèlman: { $items }
pages-does-not-take = Li pa pran: { $items }
