### Что показало сравнение программ: изменения, извещение о них, отчёт по региону и печатные строки,
### которые больше не верны. Без оценок: ничто не названо хорошим или плохим.

## Ответы и изменения

compare-answer = { $verdict }, { $place }
compare-becomes = { $item }: было «{ $before }», станет «{ $after }».
compare-stays = { $item }: по-прежнему «{ $answer }».
compare-new = Новое в справочнике: { $item }: «{ $answer }».
compare-gone = Больше нет в справочнике: { $item }. Было «{ $answer }».
compare-steps-added = Новое: { $steps }
compare-steps-removed = Больше не нужно: { $steps }
compare-steps-order = Теперь в таком порядке: { $steps }
compare-also = Принимают также: { $places }.
compare-also-none = В других местах больше не принимают.
compare-ban-gone = Закон больше не запрещает класть это ни в один контейнер.
compare-caution = Теперь предупреждение такое: { $hazard }.
compare-caution-gone = Предупреждение больше не действует: { $hazard }.
compare-reason = Названная причина: { $reason }
compare-reason-gone = Причина больше не называется.
compare-temporary = Это решает временное распоряжение.
compare-temporary-over = Временное распоряжение больше этого не решает.

## Когда это так

compare-when = Когда: { $conditions }.
compare-when-many = Условий слишком много, чтобы их перечислить.
compare-or = { $before }; или { $next }
compare-any-but = любое, кроме { $values }
compare-day-on = { $day }
compare-day-from = с { $day }
compare-day-until = до { $day }
compare-day-between = с { $first } до { $last }

## Извещение

notice-title = Изменения в справочнике по сортировке: { $place }
notice-editions = В этом извещении сравниваются { $before } и { $after }.
notice-edition = издание { $label }
notice-edition-from = издание { $label } (с { $day })
notice-on = По состоянию на { $day }
notice-nothing = Ни один ответ не меняется.
notice-now-accepted = Теперь принимают
notice-no-longer-accepted = Больше не принимают
notice-another-place = Теперь в другое место
notice-prepared-differently = Готовят иначе
notice-asked-differently = Задаются другие вопросы
notice-caution-changed = Другое предупреждение
notice-explained-differently = Объясняется иначе
notice-new-in-guide = Новое в справочнике
notice-gone-from-guide = Больше нет в справочнике
notice-reworded = Сказано другими словами
# $words is a text of the program.
notice-words-now = «{ $words }»
notice-words-before = Раньше: «{ $words }»
notice-words-of = Эта причина названа здесь: { $items }.
notice-more = ещё { $count }
notice-asked-now = Теперь зависит от того, каковы: { $facts }.
notice-asked-no-longer = Больше не зависит от того, каковы: { $facts }.
notice-contact = Вопросы? { $name }: { $ways }.
notice-unreviewed = Этот перевод никто не проверил.

## Печатные строки

untrue-title = Печатные строки, которые больше не верны
untrue-sheet =
    { $copies ->
        [0] лист «{ $id }», издание { $edition }
        [one] лист «{ $id }», издание { $edition }, { $copies } экземпляр
        [few] лист «{ $id }», издание { $edition }, { $copies } экземпляра
        [many] лист «{ $id }», издание { $edition }, { $copies } экземпляров
       *[other] лист «{ $id }», издание { $edition }, { $copies } экземпляра
    }
untrue-always = «{ $line }» ({ $sheet }): неверно с начала этого издания.
untrue-from = «{ $line }» ({ $sheet }): неверно с { $day }
untrue-until = «{ $line }» ({ $sheet }): неверно до { $day }
untrue-between = «{ $line }» ({ $sheet }): неверно с { $first } до { $last }
untrue-now = Сейчас верно: «{ $answer }».
untrue-gone = Этой вещи в справочнике больше нет.

## Отчёт по региону

regional-title = Сравнение: { $places }
regional-contradictory = Советы противоречат друг другу
regional-differing =
    { $count ->
        [one] У кого иначе ({ $count } вещь)
        [few] У кого иначе ({ $count } вещи)
        [many] У кого иначе ({ $count } вещей)
       *[other] У кого иначе ({ $count } вещи)
    }
regional-agreed = Верно у всех
regional-says = { $places }: { $answer }
regional-with-steps = { $answer }. { $steps }
regional-unknown = нет в справочнике
regional-item-when = { $item }. { $when }
regional-more-cases =
    { $count ->
        [one] В других случаях есть ещё { $count } отличие.
        [few] В других случаях есть ещё { $count } отличия.
        [many] В других случаях есть ещё { $count } отличий.
       *[other] В других случаях есть ещё { $count } отличия.
    }
