### What comparing programs found: changes, the notice of them, the regional report, and printed
### lines that are no longer true. Neutral: nothing is called good or bad.

## Answers and changes. $item is a name, $answer, $before and $after are answers such as


## "Yes, Recycling"

compare-answer = { $verdict }, { $place }
compare-becomes = { $item }: “{ $before }” passa a “{ $after }”.
compare-stays = { $item }: continua “{ $answer }”.
compare-new = { $item } é novo no guia: “{ $answer }”.
compare-gone = { $item } saiu do guia. Era “{ $answer }”.
compare-steps-added = Novo: { $steps }
compare-steps-removed = Não precisa mais: { $steps }
compare-steps-order = Agora nesta ordem: { $steps }
compare-also = Também aceito em: { $places }.
compare-also-none = Nenhum outro lugar aceita mais.
compare-ban-gone = A lei não o proíbe mais em nenhum contêiner.
compare-caution = O aviso agora é: { $hazard }.
compare-caution-gone = O aviso não vale mais: { $hazard }.
compare-reason = O motivo dado: { $reason }
compare-reason-gone = Não se dá mais nenhum motivo.
compare-temporary = Uma regra temporária decide isto.
compare-temporary-over = Nenhuma regra temporária decide mais isto.

## When it is so. $conditions are facts such as "Resin mark: 3, 6 or 7 and Area: Fernlow"

compare-when = Quando: { $conditions }.
compare-when-many = Em condições demais para listar.
compare-or = { $before }; ou { $next }
compare-any-but = qualquer um, menos { $values }
compare-day-on = em { $day }
compare-day-from = a partir de { $day }
compare-day-until = até { $day }
compare-day-between = de { $first } até { $last }

## The notice

notice-title = Mudanças no guia de separação de { $place }
notice-editions = Este aviso compara { $before } com { $after }.
notice-edition = edição { $label }
notice-edition-from = edição { $label } (a partir de { $day })
notice-on = Situação em { $day }.
notice-nothing = Nenhuma resposta muda.
notice-now-accepted = Passa a ser aceito
notice-no-longer-accepted = Não é mais aceito
notice-another-place = Vai para outro lugar
notice-prepared-differently = Preparado de outro jeito
notice-asked-differently = Outras perguntas
notice-caution-changed = Outro aviso
notice-explained-differently = Explicado de outro jeito
notice-new-in-guide = Novo no guia
notice-gone-from-guide = Saiu do guia
notice-reworded = Dito com outras palavras
# $words is a text of the program.
notice-words-now = “{ $words }”
notice-words-before = Antes: “{ $words }”
notice-words-of = O motivo dado com: { $items }.
notice-more = mais { $count }
notice-asked-now = Agora depende de: { $facts }.
notice-asked-no-longer = Não depende mais de: { $facts }.
notice-contact = Dúvidas? { $name }: { $ways }.
notice-unreviewed = Ninguém conferiu esta tradução.

## Printed lines. $line is a printed line or an item, $sheet a sheet as in "untrue-sheet"

untrue-title = Linhas impressas que não valem mais
untrue-sheet =
    { $copies ->
        [0] folha “{ $id }”, edição { $edition }
        [one] folha “{ $id }”, edição { $edition }, { $copies } cópia
        [many] folha “{ $id }”, edição { $edition }, { $copies } cópias
       *[other] folha “{ $id }”, edição { $edition }, { $copies } cópias
    }
untrue-always = “{ $line }” ({ $sheet }): errado desde o começo desta edição.
untrue-from = “{ $line }” ({ $sheet }): errado a partir de { $day }.
untrue-until = “{ $line }” ({ $sheet }): errado até { $day }.
untrue-between = “{ $line }” ({ $sheet }): errado de { $first } até { $last }.
untrue-now = Certo agora: “{ $answer }”.
untrue-gone = O guia não tem mais o objeto.

## The regional report. $places are jurisdictions

regional-title = Comparados: { $places }
regional-contradictory = Conselhos contrários
regional-differing =
    { $count ->
        [one] Quem difere ({ $count } objeto)
        [many] Quem difere ({ $count } objetos)
       *[other] Quem difere ({ $count } objetos)
    }
regional-agreed = Vale em todos
regional-says = { $places }: { $answer }
regional-with-steps = { $answer }. { $steps }
regional-unknown = não está no guia
regional-item-when = { $item }. { $when }
regional-more-cases =
    { $count ->
        [one] Diferem de mais { $count } jeito em outros casos.
        [many] Diferem de mais { $count } jeitos em outros casos.
       *[other] Diferem de mais { $count } jeitos em outros casos.
    }
