### The guide as plain pages.
# Not yet reviewed by a native speaker.

pages-intro = Lahat ng nasa gabay na ito, may kasamang sagot. Para makita ang isang bagay, maghanap sa pahinang ito: “Hanapin sa pahina” sa telepono, Ctrl+F sa computer.
pages-app = Buksan ang gabay na nagtatanong at sumasagot
pages-places = Mga lugar na mapagdadalhan
pages-depends = depende
pages-category-title = { $category } – { $program }
pages-also = Iba pang tawag dito
pages-now = Ngayon
pages-from = Mula { $day }
pages-too-much = Masyadong maraming pinagbabatayan ang sagot para sa listahang ito.
pages-next-open = Susunod na bukas:
pages-all-day = araw at gabi
pages-takes-only = Ito lang ang tinatanggap: { $items }
pages-does-not-take = Hindi tinatanggap: { $items }
