### La guía en páginas sencillas.
# Not yet reviewed by a native speaker.

pages-intro = Todo lo que hay en esta guía, con su respuesta. Para encontrar algo, busque en esta página: «Buscar en la página» en el teléfono, Ctrl+F en la computadora.
pages-app = Abrir la guía que pregunta y responde
pages-places = Lugares adonde llevar las cosas
pages-depends = depende
pages-category-title = { $category } – { $program }
pages-also = Otras palabras
pages-now = Ahora
pages-from = Desde el { $day }
pages-too-much = La respuesta depende de demasiadas cosas para esta lista.
pages-next-open = Abre estos días:
pages-all-day = día y noche
pages-takes-only = Solo recibe: { $items }
pages-does-not-take = No recibe: { $items }
