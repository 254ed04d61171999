### Экраны координатора. Короткие, ясные слова; профессиональные — там, где их знают координаторы.

## Вокруг каждого экрана

desk-title = Стол справочника
desk-title-of = { $program }: стол справочника
navigation = Части программы
undo = Отменить
redo = Вернуть
close = Закрыть
tab-files = Файлы
tab-program = Программа
tab-streams = Потоки
tab-zones = Районы
tab-channels = Каналы
tab-sites = Места
tab-rules = Правила
tab-items = Вещи
tab-texts = Тексты
tab-print = Печать
start-problem-unreachable = Сервер не ответил. Проверьте связь и загрузите страницу снова.
start-problem-missing = На сервере нет файла этого приложения. Попросите того, кто его публикует, опубликовать снова.
start-problem-broken = Файл этого приложения пришёл повреждённым. Загрузите страницу снова; если не поможет, опубликуйте приложение заново.
recover-title = На этой странице что-то пошло не так
recover-text = Ваша программа сохранялась по ходу работы. На всякий случай скачайте её, затем загрузите страницу снова.
recover-nothing = В этом браузере нет сохранённой программы.
recover-reload = Загрузить снова
recover-download = Скачать мою программу
panels = Замечания, изменения и проба

## Сохранение

save-nothing = Ничего не открыто
save-saved = Сохранено на этом устройстве
save-waiting = Сохраняется…
save-failed = Не сохранено
save-again = Попробовать сохранить снова
save-problem-full = На устройстве нет места, поэтому изменения не сохраняются. Выгрузите файл программы сейчас, потом освободите место.
save-problem-forbidden = Браузер не разрешает странице ничего хранить, поэтому изменения не сохраняются. Выгрузите файл программы, прежде чем закрыть окно.
save-problem-newer = Другое окно за это время сохранило эту программу. Ваш вариант её не заменил.
day-and-time = { $day }, { $time }

## Черновики и файлы

drafts-title = Программы на этом устройстве
drafts-none = Пока ни одной. Откройте пример, начните новую программу или загрузите файл.
draft-saved = Сохранено: { $time }
draft-remove-sure = Точно удалить?
draft-second-version = { $name } (второй вариант)
draft-diverged = «{ $name }» изменили и в другом окне. Сохранены оба: другой вариант теперь «{ $copy }».
open-demo = Открыть пример
open-demo-hint = Округ Квиллмир — выдуманное место, где всё заполнено
new-program = Новая программа
new-program-hint = Начать с одних встроенных правил безопасности
import-file = Загрузить файл программы
import-file-hint = Откроется рядом с другими программами и ни одной не заменит
export-file = Выгрузить файл программы
export-file-hint = Один файл со всем содержимым — хранить или передать
import-refused = «{ $name }» не открывается
import-unchanged = Ваши программы остались как были.
import-original = Скачать файл как он был

## Почему файл программы не читается

load-too-large = В файле { $megabytes } МБ; файлы программ — не больше { $limit } МБ. Проверьте, тот ли это файл.
load-truncated = Файл обрывается на строке { $line }. Видимо, он дошёл не весь: скопируйте или скачайте его снова.
load-not-json = Файл не читается со строки { $line }, столбца { $column }. Если его правили вручную, исправьте это место; иначе выгрузите снова.
load-other-format = Это не файл программы (в нём сказано «{ $found }»). Выберите файл, выгруженный здесь.
load-newer = Файл версии { $found }; это приложение знает версии до { $known }. Возьмите приложение новее.
load-shape = Значение в «{ $path }» не того вида: { $detail }. Исправьте и загрузите файл снова.
load-too-deep = Условие правила «{ $rule }» вложено глубже { $limit }. Разделите его на несколько правил.

## Списки и поля вообще

list-filter = Отбор
list-add = Добавить
list-add-one = Добавить ещё
list-new-name = Название нового
list-remove = Удалить
list-up = Выше
list-choose = Выберите из списка или добавьте.
choice-none = Нет
field-month = Месяц
field-day = День
measure-unreadable = «{ $stated }» не прочитать. Напишите число с единицей: 2 in, 1 gal, 100 lb.
translations = На других языках
field-name = Название
field-kind = Вид
field-note = Примечание для жителей
field-phone = Телефон
field-email = Эл. почта

## Поля самой программы

program-basics = Эта программа
field-program-name = Название справочника
field-program-id = Короткий id для файлов и адресов
field-edition = Издание
field-edition-from = Действует с
field-guide-url = Адрес опубликованного справочника
field-source-language = Язык, на котором тексты пишут сначала
field-languages = Языки публикации
program-contact = Кого спрашивать
field-contact-name = Название отдела
field-return-address = Обратный адрес на открытках
program-silence = Когда случай не назван ни в одном правиле
field-silence = Что это значит
silence-undecided = Ещё не решено (публиковать нельзя)
silence-ask = Открытый список: ответ «нет в списке, спросите»
silence-closed = Закрытый список: что не названо, не принимают
program-unknown = Когда житель не знает
program-unknown-hint = Что взять вместо неизвестного. Где ничего не задано, берётся осторожное значение.
unknown-add = Задать ещё
program-counts-as = Что считается за другое
program-counts-as-hint = Каждое правило тогда принимает одно за другое: скажем, матовое стекло за прозрачное.
counts-as-add = Свойство
field-these = Эти
field-count-as = Считать за
program-hazards = Куда сдавать опасное
program-hazards-hint = Каждому виду нужен канал, где его принимают безопасно, и человек, который это утвердил. Опасное никогда не идёт в контейнер или бак.
field-hazard-channel = Куда
field-approved-by = Кто утвердил
program-plant = Сортировочный завод
field-plant-name = Название завода
field-machine-name = Машина
field-machine-limit = С чем она не справляется
machine-add = Добавить машину
program-print = Для печатных листов
field-short-url = Короткий адрес у QR-кода
field-indicia = Почтовая отметка об оплате, по строкам
field-statement = Надпись о вторичной бумаге и подобное

## Потоки и контейнеры

containers-title = Контейнеры
container-add = Добавить контейнер
container-remove = Удалить этот контейнер
field-container-name = Как его называют жители
field-colour = Цвет
field-capacity = Объём, с единицей
field-container-zones = Только в этих районах
field-container-dwellings = Только у такого жилья
field-set-out = Когда и как выставлять
field-container-rules = Правила об этом контейнере
field-container-rules-hint = Действуют, что бы в него ни клали. Жители видят их при каждом ответе с этим контейнером.
field-container-rule-add = Тема нового правила
field-container-rule = Своими словами вместо обычной фразы
field-limit = Предел, с единицей
field-share = Предел, например 10%
limit-missing = Введите предел или напишите всё правило своими словами.
residents-read = Жители прочтут: { $text }
container-rule-kind-lid-closed = Закрыта ли крышка
container-rule-kind-weight = Вес полного контейнера
container-rule-kind-distance = Место вокруг
container-rule-kind-side-waste = Вещи рядом или сверху
container-rule-kind-share-of-load = Сколько чужого может быть в загрузке
container-rule-kind-liners = Можно ли вложить мешок
container-rule-kind-sacks = Выданные мешки
container-rule-kind-registration = Нужна ли запись
container-rule-kind-refusals = Когда его не вывозят
stream-kind-recycling = Вторсырьё
stream-kind-organics = Органика
stream-kind-refuse = Мусор
stream-kind-glass = Стекло
stream-kind-paper = Бумага
stream-kind-film = Пластиковая плёнка
container-kind-cart = Контейнер на колёсах
container-kind-bin = Бак
container-kind-bag = Мешок
container-kind-box = Ящик
container-kind-shared-cart = Общий контейнер дома
container-kind-dumpster = Большой мусорный контейнер

## Районы

field-dwelling = Вид жилья
field-households = Число домов и квартир
field-zone-streams = Что здесь вывозят
field-centre = Центр района: широта, долгота

## Каналы и места

field-fee = Плата, словами
field-booking = Нужна запись
field-proof = Нужно подтверждение адреса
field-permit = Нужно разрешение
field-voucher = Нужен талон
field-allowance = Сколько или как часто, словами
field-vehicles = На каких машинах можно, словами
field-safe-for = Безопасно принимает эти опасные вещи
channel-sites =
    { $count ->
        [0] Пока не принимают нигде.
        [one] Место: { $names }
        [few] Места: { $names }
        [many] Места: { $names }
       *[other] Места: { $names }
    }
channel-kind-drop-off = Пункт приёма
channel-kind-store-take-back = Приём в магазине
channel-kind-hazardous-waste = Пункт опасных отходов
channel-kind-event = Разовая акция сбора
channel-kind-bulky-pickup = Вывоз крупных вещей
channel-kind-deposit-return = Возврат залога за тару
channel-kind-mail-back = Отправка по почте
channel-kind-reuse = Повторное использование и ремонт
channel-kind-medicine-take-back = Приём лекарств
channel-kind-sharps-take-back = Приём игл и шприцев
channel-kind-police = Полиция
channel-kind-specialist = Специальная фирма
channel-kind-dealer = Изготовитель или продавец
channel-kind-health-office = Управление здравоохранения
channel-kind-authority = Служба, куда звонить
field-site-channels = Принимает вещи этих каналов
field-accepts = Берёт из них только эти
field-refuses = Не берёт из них эти
field-site-vehicles = На каких машинах можно сюда, если иначе, чем у его каналов
field-address = Адрес
field-position = Положение: широта, долгота
field-hours = Часы работы
field-hours-hint = Пишутся как в открытых картах: Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
hours-unreadable = Эти часы не прочитать: { $detail }

## Правила и их условия

field-tier = Уровень
field-verdict = Решение
rule-adds-steps = Нет: правило только добавляет шаги
field-stream = Поток
field-channel = Канал
field-prepare = Подготовка, по порядку
field-reason = Причина
field-machine = Машина, из-за которой так
field-residents = Слова для жителей
field-sorters = Слова для сортировщиков
field-contract = Слова договора
provenance-title = Откуда это
field-decided-by = Кто решил
field-source = Источник
field-confirmed = Когда подтверждено
field-ask-again = Спросить снова
rule-more = Даты, исключения и утверждение
field-also = Принимают также
field-overrides = Идёт раньше этих правил своего уровня
field-temporary = Временное распоряжение
field-from = С
field-until = До
field-season = Только в одну часть каждого года
field-season-from = Первый день сезона
field-season-until = Последний день сезона
season-says = Каждый год с { $from } до { $until }
field-banned-from = Закон запрещает класть в
acknowledgement-title = Исключение из встроенного правила безопасности
acknowledgement-hint = Разрешить его может только названный человек, с причиной. При каждой проверке оно показано как предупреждение.
field-acknowledged-by = Кто разрешил
field-acknowledged-on = Когда
field-acknowledged-because = Почему
condition-title = Когда
condition-always = Всегда: у правила нет условия.
condition-begin = Добавить условие
condition-kind = Как считаются части
condition-all = Все из этих
condition-any = Любое из этих
condition-not = Не это
condition-fact = Свойство
condition-is = одно из
condition-add-fact = Добавить свойство
condition-add-group = Добавить группу
condition-remove = Убрать эту часть условия
bound-at-least = не меньше
bound-over = больше
bound-at-most = не больше
bound-under = меньше
bound-value = Мера с единицей
bound-day = День
bound-like = С чем сравнить
bound-per = Считается

## Вещи

items-all = Все
items-answer = Ответ
items-asks = Задаёт вопрос
items-ask = Попробовать
items-ask-name = Попробовать: { $item }
items-rule = К правилу
items-decide = Решить
items-decide-name = Решить: { $item }
items-count =
    { $count ->
        [one] { $count } вещь
        [few] { $count } вещи
        [many] { $count } вещей
       *[other] { $count } вещи
    }

## Тексты и их переводы

texts-language = Язык
texts-state = Состояние
text-state-missing = Нет
text-state-unreviewed = Не проверен
text-state-reviewed = Проверен
text-state-outdated = Устарел
text-step = Шаг подготовки
text-label = { $whose }: { $what }
texts-reviewer = Ваше имя, для подписи
texts-reviewer-needed = Сначала введите имя: проверку подписывают.
texts-sign-off = Я это проверил(а)
texts-count = проверено { $done } из { $all }
review-title = Состояние каждого языка
review-screens = Слова на экранах: { $state }
review-source = язык, с которого переводят
review-by = проверено: { $name }, { $date }
review-outdated = проверено: { $name }, { $date }, но английский текст с тех пор изменился
review-texts = Ваши тексты: проверено { $done } из { $all }
review-names = Подписали: { $names }

## Что изменилось, и проба справочника

ask-title = Спросить, как житель
changes-title = Что изменили ваши правки
changes-count =
    { $count ->
        [0] Ни один ответ не стал другим.
        [one] Стал другим { $count } ответ.
        [few] Стали другими { $count } ответа.
        [many] Стали другими { $count } ответов.
       *[other] Стали другими { $count } ответа.
    }
changes-absent = Нет в справочнике
changes-details = Место то же; иначе готовят или иначе объясняется.
changes-mark = Сравнивать отсюда

## Замечания

findings-title = Замечания
findings-count = Ошибки: { $errors } · Предупреждения: { $warnings } · Заметки: { $notices }
findings-more =
    { $count ->
        [one] и ещё { $count }
        [few] и ещё { $count }
        [many] и ещё { $count }
       *[other] и ещё { $count }
    }
severity-error = Ошибка
severity-warning = Предупреждение
severity-notice = Заметка
severity-pass = Верно
witness = Например: { $item }, когда { $answers }
witness-item = Например: { $item }

## Что говорит замечание и, ниже, что делать

finding-uncovered-case = Этот случай не решает ни одно правило.
    .hint = Напишите правило или укажите на экране программы, что значит молчание.
finding-conflicting-rules = Правила одного уровня шлют одно и то же в разные места: { $rules }.
    .hint = Измените условие одного из них или пустите одно раньше другого.
finding-hazard-not-safe =
    { $problem ->
        [no-channel] У опасности «{ $class }» нет канала.
        [unknown-channel] Опасность «{ $class }» идёт в канал, которого нет.
        [channel-does-not-take-it] Опасность «{ $class }» идёт в канал, не отмеченный как безопасный для неё.
       *[rule] Правило «{ $id }» шлёт опасность «{ $class }» туда, где для неё не безопасно.
    }
    .hint = Выберите канал, где её принимают безопасно. Опасное никогда не идёт в контейнер или бак.
finding-hazard-acknowledged = { $by }: разрешено исключение из встроенного правила безопасности: «{ $id }».
    .hint = Проверьте, что это позволяют местный закон и место и что причина ещё верна.
finding-rule-never-applies = Правило «{ $id }» никогда ничего не решает.
    .hint = Все его случаи решают правила раньше него, или под условие не подходит ни одна вещь. Измените его или удалите.
finding-not-listed = В некоторых случаях ответ об этой вещи — «нет в списке, спросите».
    .hint = Так можно. Если вы знаете ответ, напишите правило.
finding-missing-provenance = Не видно, откуда решение правила «{ $id }». Не хватает: { $missing }.
    .hint = Введите, кто решил, по какому источнику и когда это в последний раз подтвердил завод.
finding-missing-translation =
    { $state ->
        [unreviewed] Тексты на языке «{ $language }», которые никто не проверил: { $count }. Первый: «{ $first }».
        [outdated] Тексты на языке «{ $language }», чей исходник с тех пор изменился: { $count }. Первый: «{ $first }».
       *[missing] Текстов не хватает на языке «{ $language }»: { $count }. Первый: «{ $first }».
    }
    .hint = Откройте экран текстов и отберите по языку и состоянию.
finding-broken-condition =
    { $problem ->
        [unknown-fact] Свойства «{ $fact }» нет.
        [no-values] Свойство «{ $fact }» ни с чем не сравнивается.
        [no-number] В «{ $value }» для «{ $fact }» нет числа.
        [no-unit] В «{ $value }» для «{ $fact }» нет единицы.
        [unknown-unit] Единица в «{ $value }» для «{ $fact }» неизвестна.
        [wrong-dimension] «{ $value }» — не мера для «{ $fact }».
        [negative] «{ $value }» для «{ $fact }» меньше нуля.
        [too-large] «{ $value }» для «{ $fact }» слишком велико, так не бывает.
        [unknown-part] Части «{ $value }» нет.
        [range-reversed] Границы «{ $value }» для «{ $fact }» стоят наоборот.
       *[unknown-value] «{ $value }» — не значение свойства «{ $fact }».
    }
    .hint = Выберите из списка. Меру пишите с единицей: 2 in, 1 gal или 10 lb.
finding-broken-item =
    { $problem ->
        [unknown-fact] Свойства «{ $fact }» нет.
        [no-values] Свойство «{ $fact }» ни с чем не сравнивается.
        [no-number] В «{ $value }» для «{ $fact }» нет числа.
        [no-unit] В «{ $value }» для «{ $fact }» нет единицы.
        [unknown-unit] Единица в «{ $value }» для «{ $fact }» неизвестна.
        [wrong-dimension] «{ $value }» — не мера для «{ $fact }».
        [negative] «{ $value }» для «{ $fact }» меньше нуля.
        [too-large] «{ $value }» для «{ $fact }» слишком велико, так не бывает.
        [unknown-part] Части «{ $value }» нет.
        [no-such-sides] С такими сторонами вещи быть не может: самая длинная должна быть самой длинной.
        [no-range] У границ «{ $fact }» нет начала или конца.
        [range-reversed] Границы «{ $value }» для «{ $fact }» стоят наоборот.
       *[unknown-value] «{ $value }» — не значение свойства «{ $fact }».
    }
    .hint = Выберите из списка. Меру пишите с единицей: 2 in, 1 gal или 10 lb.
finding-broken-reference =
    { $kind ->
        [stream] Потока «{ $target }» нет.
        [channel] Канала «{ $target }» нет.
        [zone] Района «{ $target }» нет.
        [step] Шага подготовки «{ $target }» нет.
        [reason] Причины «{ $target }» нет.
        [machine] Машины «{ $target }» нет.
        [item] Вещи «{ $target }» нет.
        [rule-of-tier] Правило «{ $target }» — другого уровня, идти раньше него нельзя.
       *[rule] «{ $target }»: такого нет.
    }
    .hint = Выберите другое или добавьте недостающее. Пустое название значит, что ещё ничего не выбрано.
finding-circular-override = Эти правила идут раньше друг друга по кругу: { $rules }.
    .hint = Уберите одно из них из списка «идёт раньше».
finding-destination-not-offered = Правило «{ $id }» шлёт вещи в поток «{ $stream }», который в районе «{ $zone }» не вывозят.
    .hint = Добавьте поток в район или напишите для него другое правило.
finding-duplicate-id =
    { $times ->
        [0] У чего-то здесь нет id.
        [one] Id «{ $id }» использован { $times } раз.
        [few] Id «{ $id }» использован { $times } раза.
        [many] Id «{ $id }» использован { $times } раз.
       *[other] Id «{ $id }» использован { $times } раза.
    }
    .hint = Дайте каждому свой id. От него зависят ссылки, этикетки и переводы.
finding-printed-line-untrue =
    { $span ->
        [from] Печатная строка «{ $line }» неверна с { $since }
        [until] Печатная строка «{ $line }» неверна до { $until }
        [between] Печатная строка «{ $line }» неверна с { $since } до { $until }
       *[always] Печатная строка «{ $line }» в этом издании неверна.
    }
    .hint = Напечатайте лист заново или заклейте строку. Когда лист изъят, введите день.
finding-suspicious-text =
    { $problem ->
        [markup] В тексте «{ $key }» ({ $language }) есть разметка: { $shown }
        [direction] В тексте «{ $key }» ({ $language }) есть знак, меняющий направление письма: { $shown }
       *[control] В тексте «{ $key }» ({ $language }) есть невидимый знак: { $shown }
    }
    .hint = Тексты пишутся просто. Удалите это и наберите слова заново.
finding-too-complex = Об этой вещи столько неизвестно, что не рассмотреть все случаи (открытых свойств: { $count }).
    .hint = Задайте некоторые свойства или разделите её на несколько вещей.
finding-too-many-thresholds = В правилах столько порогов, что не рассмотреть все случаи некоторых вещей (их { $count }). Больше всего у «{ $fact }»: { $thresholds }.
    .hint = Пусть у правил будут общие пороги; уберите правила, срок которых истёк.
finding-unreadable-hours = Часы работы «{ $hours }» не прочитать: { $problem }
    .hint = Пишите так: Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
finding-unusable-setting = «{ $value }» здесь не годится.
    .hint = Выберите из списка или исправьте: цвет пишется #2a7f4f, положение — широта и долгота, адрес начинается с https://

## Сравнение с файлом

compare-file-title = Сравнить с другим файлом
compare-file = Выберите прежнее издание или программу соседей
compare-file-name = Сравнение с «{ $name }».
compare-newer = Файл — более новый из двух
compare-notice = Извещение об изменениях
compare-copy = Скопировать извещение
compare-copied = Скопировано.
compare-not-copied = Браузер не скопировал. Выделите текст и скопируйте сами.
compare-download = Скачать извещение

## Учёт печатных листов

printed-title = Что напечатано
printed-copies = Сколько экземпляров
printed-note = Записать как напечатанное
printed-entry =
    { $copies ->
        [0] { $id }, { $day }
        [one] { $id }, { $day }, { $copies } экземпляр
        [few] { $id }, { $day }, { $copies } экземпляра
        [many] { $id }, { $day }, { $copies } экземпляров
       *[other] { $id }, { $day }, { $copies } экземпляра
    }
printed-withdrawn = изъято: { $day }
printed-withdraw = Больше не висит
printed-still-out = Ещё висит
finding-question-never-matters =
    { $problem ->
        [unknown] Задано, что брать, когда «{ $fact }» неизвестно, но ни одному ответу это не нужно.
       *[open] Эта вещь оставляет «{ $fact }» открытым, но ни один ответ о ней от этого не зависит.
    }
    .hint = Об этом никого не спрашивают. Оставьте или напишите правило, которому это нужно.
finding-steps-contradict = Один ответ просит «{ $one }» и «{ $other }», а сделать и то и другое нельзя. Правила: { $rules }.
    .hint = Уберите один из шагов из правила или измените условие, чтобы действовало только одно правило.
finding-preparation-contradicts =
    { $problem ->
        [none] Кто сделает шаг «{ $step }» правила «{ $id }», у того «{ $fact }» станет «{ $value }», и тогда ни одно правило не шлёт вещь туда.
       *[rule] Кто сделает шаг «{ $step }» правила «{ $id }», у того «{ $fact }» станет «{ $value }», и тогда правило «{ $other }» шлёт вещь в другое место.
    }
    .hint = Уберите шаг из правила или пусть правило действует и для того, что остаётся после шага.
finding-site-never-used =
    { $problem ->
        [item] О месте «{ $id }» сказано, что оно берёт «{ $item }», но в его каналы это никогда не шлют.
       *[site] В место «{ $id }» ничего никогда не шлют.
    }
    .hint = Напишите правило, которое шлёт вещи в один из его каналов, дайте ему другой канал или уберите из списка.
finding-no-site-takes =
    { $problem ->
        [refused] «{ $item }» шлют в канал «{ $id }», но ни одно его место это не берёт.
       *[none] Такое, как «{ $item }», шлют в канал «{ $id }», у которого нет ни одного места.
    }
    .hint = Добавьте место, пусть одно из мест это берёт, или шлите в другой канал.
finding-item-without-name = У вещи «{ $id }» нет названия. Языки без него: { $languages }.
    .hint = Введите название на языке, на котором пишется программа.
finding-name-twice = Вещи «{ $id }» и «{ $other }» обе называются «{ $name }» на языке «{ $language }».
    .hint = Дайте одной из них другое название. Жители выбирают по названию.
finding-banned-destination = «{ $item }» шлют в поток «{ $stream }», куда это запрещает закон. Правила: { $rules }.
    .hint = Шлите в другой поток или канал или исправьте запрет там, где он указан.
finding-impossible-condition =
    { $problem ->
        [fact] Условие правила «{ $id }» не выполнится никогда: требования к «{ $fact }» исключают друг друга.
       *[parts] Условие правила «{ $id }» не выполнится никогда: его части исключают друг друга.
    }
    .hint = Исправьте или уберите одну из частей. Если годится любая, выберите «любое из этих».
finding-empty-condition =
    { $problem ->
        [any] В условии правила «{ $id }» пустая группа «любое из этих», она не выполняется никогда.
       *[all] В условии правила «{ $id }» пустая группа «все из этих», она выполняется всегда.
    }
    .hint = Добавьте в группу нужное или удалите её.
finding-rule-without-condition = У правила «{ $id }» нет условия: оно решает всё, чего не решил более ранний уровень.
    .hint = Напишите, когда оно действует. Если оно для всего остального, поставьте его на уровень «default».
finding-text-missing-register =
    { $register ->
        [contract] Правила без слов договора: { $count }. Первое: «{ $first }».
        [sorters] Правила без слов для сортировщиков: { $count }. Первое: «{ $first }».
       *[residents] Правила без слов или причины для жителей: { $count }. Первое: «{ $first }».
    }
    .hint = Введите их на экране правила, чтобы все три говорили одно и то же.
finding-unused-thing =
    { $kind ->
        [stream] Ни одно правило ничего не шлёт в поток «{ $id }».
        [channel] В канал «{ $id }» не шлёт ни одно правило и ни одна опасность.
        [step] Шага «{ $id }» не просит ни одно правило.
        [zone] Район «{ $id }» ничем не отличается: его не называет ни правило, ни контейнер, ни поток.
       *[machine] Машину «{ $id }» не называет ни одно правило.
    }
    .hint = Оставьте, если понадобится; иначе удалите.
finding-counts-as-broken =
    { $problem ->
        [unknown-fact] Нет свойства «{ $fact }», чьи значения могли бы считаться за другие.
        [unlisted-fact] У «{ $fact }» нет списка значений, поэтому ничто не может считаться за другое.
        [unknown-value] «{ $value }» — не значение свойства «{ $fact }».
        [danger] «{ $fact }» — опасность: её значения никогда не считаются за другие.
        [nothing] Не названо, что считать за «{ $value }» для «{ $fact }».
        [itself] «{ $value }» для «{ $fact }» считается за само себя.
        [twice] «{ $value }» для «{ $fact }» считается за два разных значения.
        [circle] Значения «{ $fact }» считаются друг за друга по кругу, среди них «{ $value }».
       *[chain] «{ $value }» для «{ $fact }» само считается за другое, поэтому за него считать ничего нельзя.
    }
    .hint = Выберите значения из списка. Каждое считается за одно другое, которое считается только за себя.
finding-season-broken =
    { $problem ->
        [reversed] Последний день правила «{ $id }» раньше первого: { $value }.
       *[not-a-year-day] «{ $value }» — не день года, поэтому сезон правила «{ $id }» не прочитать.
    }
    .hint = Напишите месяц и день: 11-01. Сезон может переходить через новый год; первый и последний день с годом — нет.
finding-container-rule-broken =
    { $problem ->
        [unknown-kind] «{ $value }» — не вид правила для контейнера «{ $id }».
        [twice] У контейнера «{ $id }» два правила вида «{ $value }».
        [limit] Предел «{ $value }» контейнера «{ $id }» не прочитать.
       *[unknown-dwelling] «{ $value }» — не вид жилья, поэтому контейнер «{ $id }» нигде не используется.
    }
    .hint = Выберите из списка, соедините оба текста в одно правило или напишите предел с единицей: 100 lb, 3 ft, 10%.
finding-comparison-broken =
    { $problem ->
        [unknown-like] Нет привычной вещи «{ $value }», с которой сравнить «{ $fact }».
        [other-dimension] «{ $value }» ничего не говорит о «{ $fact }»: это мера другого рода.
        [far] «{ $value }» более чем вдвое больше или меньше меры, данной для «{ $fact }».
       *[unknown-period] «{ $value }» — не то, за что можно считать «{ $fact }».
    }
    .hint = Выберите из списка или уберите сравнение.

## Как исправить: на кнопках и в списках

fix-replace = Поставить «{ $with }» вместо «{ $value }»
fix-choose = Выбрать «{ $with }»
fix-remove = Убрать «{ $value }»
fix-replace-fact = Сравнивать «{ $with }» вместо «{ $fact }»
fix-replace-value = Поставить «{ $with }» вместо «{ $value }»
fix-remove-value = Убрать «{ $value }» из условия
fix-replace-item-fact = Поставить свойство «{ $with }» вместо «{ $fact }»
fix-remove-rule = Удалить правило «{ $rule }»
fix-go-before = Пустить «{ $rule }» раньше { $over }
fix-not-before = Не пускать больше «{ $rule }» раньше «{ $over }»
fix-silence-undecided = Оставить открытым, что значит молчание
fix-silence-ask = Открытый список: что не названо, отвечать «нет в списке, спросите»
fix-silence-closed = Закрытый список: что не названо, не принимать
fix-answer-yes = Набросать правило: «{ $item }» — в «{ $stream }»
fix-answer-no = Набросать правило: «{ $item }» не принимают, это в «{ $stream }»
fix-route = Слать опасность «{ $class }» в канал «{ $channel }»
fix-send-to = Слать то, о чём правило «{ $rule }», в канал «{ $channel }»
fix-collect = Вывозить «{ $stream }» и в районе «{ $zone }»
fix-except-zone = Пусть правило «{ $rule }» не действует в районе «{ $zone }»
fix-own-ids = Дать новые id: { $with }
fix-remove-twins = Удалить копии, одинаковые во всём
fix-swap-dates = Поменять местами первый и последний день
fix-drop-from = Убрать первый день
fix-drop-until = Убрать последний день
fix-drop-season = Убрать сезон
fix-swap-position = Поменять местами широту и долготу
fix-add-language = Публиковать и на языке «{ $language }»
fix-remove-empty = Убрать пустые группы
fix-remove-unused = Удалить «{ $id }»
fix-drop-counting = Ничего не считать за «{ $value }» для «{ $fact }»
fix-clean-text = Убрать это из текста
mend-title = Как исправить
mend-done = Сделано: { $fix }. Это можно отменить.
mend-gone = Ничего не изменено: программа уже не та, для которой это предлагалось.
