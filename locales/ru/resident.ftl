### Что жители читают на телефоне. Простые слова, короткие фразы.

## Вокруг каждого экрана

page-title = { $program }: что куда сдавать
skip = К основной части
back = Назад
language-label = Язык
zone-label = Ваш район
zone-none = Выберите район
unreviewed = Этот перевод ещё никто не проверил. Если что-то кажется неверным, прочтите по-английски.
decided-edition = Справочник: { $edition }
privacy = То, что вы ищете, остаётся в этом телефоне. Ничего не отправляется и не считается.

## Поиск

search-label = От чего вы хотите избавиться?
search-placeholder = Пример: коробка от пиццы
search-count =
    { $count ->
        [0] Ничего не найдено
        [one] Найдена { $count } вещь
        [few] Найдено { $count } вещи
        [many] Найдено { $count } вещей
       *[other] Найдено { $count } вещи
    }
search-nothing = С таким названием ничего нет. Попробуйте слово покороче. Если вещи нет в списке, это не всегда «нет»: спросите нас.
home-recent = Недавно искали
home-common = Часто ищут
home-categories = По видам

## Вопросы

cannot-tell = Не знаю
questions-left =
    { $count ->
        [one] Ещё не больше { $count } вопроса
        [few] Всего не больше { $count } вопросов
        [many] Всего не больше { $count } вопросов
       *[other] Всего не больше { $count } вопроса
    }

## Ответы

verdict-yes = Да
verdict-no = Нет
verdict-elsewhere = Не сюда, для этого есть другое место
verdict-unlisted = Нет в списке: спросите
verdict-undecided = Ещё не решено: спросите
verdict-closed = Нет: этого нет в списке
caution-title = Осторожно.
prepare-title = Как подготовить
why-title = Почему
also-title = Принимают также
temporary-order = Сейчас действует временное правило. Скоро оно может измениться.
assumed-title = Вы не знали, поэтому мы взяли осторожный ответ:
assumed-line = { $fact }: { $value }
ask-contact = Вопросы? { $name }:
decided-title = Какое правило решило
decided-rule = Правило:
decided-acknowledged = Это исключение из правила безопасности утвердил названный человек.

## Куда везти

site-more =
    { $count ->
        [one] Ещё { $count } место
        [few] Ещё { $count } места
        [many] Ещё { $count } мест
       *[other] Ещё { $count } места
    }
site-locate = Найти ближайшее место
site-no-position = Телефон не сообщил, где он находится.
site-booking = Запишитесь заранее.
site-proof = Возьмите подтверждение, что живёте здесь.
site-permit = Нужно разрешение.
site-voucher = Нужен талон.
container-rules-title = Контейнер: { $container }
hours-open = Сейчас открыто
hours-open-until = Открыто до { $time }
hours-closed = Сейчас закрыто
hours-closed-until = Закрыто. Откроется: { $time }
hours-appointment = Только по записи
hours-unknown = Часы работы неизвестны: сначала позвоните
hours-day-time = { $day }, { $time }

## Без сети

offline-fetching = Сохраняем справочник, чтобы он работал без интернета…
offline-ready = Сохранено. Справочник работает без интернета.
offline-now = Интернета нет. Справочник работает из телефона.
offline-incomplete = Интернета нет, а справочник сохранён не весь. Чего-то может не хватать.
offline-failed = Справочник не сохранился. Он работает только с интернетом. Попробуйте позже.
offline-impossible = Этот браузер не может сохранить справочник. Он работает только с интернетом.
update-ready = Готов новый справочник.
update-now = Открыть новый

## Когда чего-то нет

unknown-item = В этом справочнике нет вещи «{ $id }». Найдите её по названию.
unknown-category = В этом справочнике нет группы «{ $id }». Выберите группу на первой странице.
unknown-address = Страницы «{ $address }» нет. Перейдите на первую страницу.
unknown-language = Этого справочника пока нет на языке «{ $language }». Выберите другой язык.
