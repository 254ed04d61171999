### Palabras impresas en etiquetas de tapa y postales. Hay poco espacio: que cada una sea tan corta
### como la inglesa.

sheet-heading-yes = Sí
sheet-heading-no = No
sheet-heading-elsewhere = Llévelo a otro lugar
sheet-heading-caution = Nunca en ningún carrito ni bote
sheet-scan = ¿No está aquí? Escanee y pregunte a la guía.
sheet-contact = ¿Preguntas? { $name }, { $phone }
sheet-line-when = { $item } ({ $condition })
sheet-line-where = { $item }: { $place }
