### Lo que se halló al comparar programas: cambios, el aviso, el informe regional y las líneas
### impresas que ya no son ciertas. Neutral: nada se llama bueno ni malo.

## Respuestas y cambios

compare-answer = { $verdict }, { $place }
compare-becomes = { $item }: «{ $before }» pasa a «{ $after }».
compare-stays = { $item }: sigue «{ $answer }».
compare-new = { $item } es nuevo en la guía: «{ $answer }».
compare-gone = { $item } ya no está en la guía. Era «{ $answer }».
compare-steps-added = Nuevo: { $steps }
compare-steps-removed = Ya no hace falta: { $steps }
compare-steps-order = Ahora en este orden: { $steps }
compare-also = También se recibe en: { $places }.
compare-also-none = Ya no se recibe en otros lugares.
compare-ban-gone = La ley ya no lo prohíbe en ningún contenedor.
compare-caution = La advertencia es ahora: { $hazard }.
compare-caution-gone = La advertencia ya no vale: { $hazard }.
compare-reason = El motivo que se da: { $reason }
compare-reason-gone = Ya no se da ningún motivo.
compare-temporary = Lo decide una orden temporal.
compare-temporary-over = Ya no lo decide una orden temporal.

## Cuándo es así

compare-when = Cuando: { $conditions }.
compare-when-many = En demasiadas condiciones para enumerarlas.
compare-or = { $before }; o bien { $next }
compare-any-but = cualquiera menos { $values }
compare-day-on = el { $day }
compare-day-from = desde el { $day }
compare-day-until = hasta el { $day }
compare-day-between = desde el { $first } hasta el { $last }

## El aviso

notice-title = Cambios en la guía de separación de { $place }
notice-editions = Este aviso compara la { $before } con la { $after }.
notice-edition = edición { $label }
notice-edition-from = edición { $label } (desde el { $day })
notice-on = Tal como está el { $day }.
notice-nothing = No cambia ninguna respuesta.
notice-now-accepted = Se acepta ahora
notice-no-longer-accepted = Ya no se acepta
notice-another-place = Va a otro lugar
notice-prepared-differently = Se prepara de otra manera
notice-asked-differently = Se preguntan otras cosas
notice-caution-changed = Otra advertencia
notice-explained-differently = Se explica de otra manera
notice-new-in-guide = Nuevo en la guía
notice-gone-from-guide = Ya no está en la guía
notice-reworded = Dicho con otras palabras
# $words is a text of the program.
notice-words-now = «{ $words }»
notice-words-before = Antes: «{ $words }»
notice-words-of = Es el motivo que se da con: { $items }.
notice-more = { $count } más
notice-asked-now = Ahora depende de: { $facts }.
notice-asked-no-longer = Ya no depende de: { $facts }.
notice-contact = ¿Preguntas? { $name }: { $ways }.
notice-unreviewed = Ninguna persona ha revisado esta traducción.

## Líneas impresas

untrue-title = Líneas impresas que ya no son ciertas
untrue-sheet =
    { $copies ->
        [0] hoja «{ $id }», edición { $edition }
        [one] hoja «{ $id }», edición { $edition }, { $copies } ejemplar
        [many] hoja «{ $id }», edición { $edition }, { $copies } de ejemplares
       *[other] hoja «{ $id }», edición { $edition }, { $copies } ejemplares
    }
untrue-always = «{ $line }» ({ $sheet }): no es cierta desde que empezó esta edición.
untrue-from = «{ $line }» ({ $sheet }): no es cierta desde el { $day }.
untrue-until = «{ $line }» ({ $sheet }): no es cierta hasta el { $day }.
untrue-between = «{ $line }» ({ $sheet }): no es cierta desde el { $first } hasta el { $last }.
untrue-now = Ahora es cierto: «{ $answer }».
untrue-gone = La guía ya no tiene el objeto.

## El informe regional

regional-title = Comparación de { $places }
regional-contradictory = Consejos que se contradicen
regional-differing =
    { $count ->
        [one] Quién difiere ({ $count } objeto)
        [many] Quién difiere ({ $count } de objetos)
       *[other] Quién difiere ({ $count } objetos)
    }
regional-agreed = Cierto en todos
regional-says = { $places }: { $answer }
regional-with-steps = { $answer }. { $steps }
regional-unknown = no está en la guía
regional-item-when = { $item }. { $when }
regional-more-cases =
    { $count ->
        [one] En otros casos difieren de { $count } manera más.
        [many] En otros casos difieren de { $count } de maneras más.
       *[other] En otros casos difieren de { $count } maneras más.
    }
