### The guide as plain pages.
# Not yet reviewed by a native speaker.

pages-intro = Tudo o que há neste guia, com a resposta. Para achar um objeto, procure nesta página: “Localizar na página” no telefone, Ctrl+F no computador.
pages-app = Abrir o guia que pergunta e responde
pages-places = Lugares para levar os objetos
pages-depends = depende
pages-category-title = { $category } – { $program }
pages-also = Outras palavras
pages-now = Agora
pages-from = A partir de { $day }
pages-too-much = A resposta depende de coisas demais para esta lista.
pages-next-open = Próximas aberturas:
pages-all-day = dia e noite
pages-takes-only = Só recebe: { $items }
pages-does-not-take = Não recebe: { $items }
