### Экран печати и то, что говорит проверка перед печатью (префлайт).

## Экран печати

print-sheet = Лист
sheet-lid = Этикетка на крышку
sheet-sticker = Круглая наклейка, одно сообщение
sheet-sign = Табличка у общих контейнеров
sheet-postcard = Почтовая открытка
sheet-self-mailer = Складное письмо
sheet-handout = Листовка
print-size = Готовый размер
print-size-usual = Обычный
print-size-typed = Введён ниже
print-typed-size = Размер с единицей, например 8 x 12 in; для круглой 115 mm
print-size-unread = «{ $text }» — не размер. Напишите ширину, высоту и единицу: 8 x 12 in
print-corner = Радиус углов, мм
print-fold = Сгиб
print-fold-half = Один, посередине
print-fold-thirds = Два, как у письма
print-die-line = Контур высечки плашечным цветом
print-printers-mark = Оставить место для знака типографии
print-more = Ещё для типографии
print-stock = Материал
print-thickness = Толщина материала, мм
print-distance = С какого расстояния читают, мм
print-qr-level = QR-код: сколько повреждений выдержит
print-qr-most = Сколько можно, не увеличивая код
print-qr-medium = 15 % (M)
print-qr-quartile = 25 % (Q)
print-qr-high = 30 % (H)
print-words = Слов в строке, не больше
print-words-any = Сколько нужно
print-item = Одна вещь
print-press = Несколько на печатном листе
print-press-none = По одному на странице
print-work-and-turn = Печать своим оборотом
print-no-item = Вещи «{ $item }» нет. Выберите из списка.
print-nothing-against = Нигде не сказано, что «{ $item }» сюда нельзя. Выберите вещь, о которой это сказано, или опасность.
print-ticket = Скачать задание типографии
print-number-unread = «{ $text }» — не число миллиметров.
ticket-title = Задание типографии
ticket-sheet = Лист
ticket-files = Файлы
ticket-file =
    { $pages ->
        [one] { $file }: { $pages } страница
        [few] { $file }: { $pages } страницы
        [many] { $file }: { $pages } страниц
       *[other] { $file }: { $pages } страницы
    }
ticket-quantity = Количество
ticket-copies =
    { $copies ->
        [one] { $languages }: { $copies } экземпляр
        [few] { $languages }: { $copies } экземпляра
        [many] { $languages }: { $copies } экземпляров
       *[other] { $languages }: { $copies } экземпляра
    }
ticket-copies-unsaid = { $languages }: число экземпляров нужно согласовать
ticket-trim = Готовый размер
ticket-size = { $width } × { $height } мм ({ $across } × { $down } дюйм.)
ticket-bleed = Вылет, со всех сторон
ticket-mm = { $length } мм
ticket-corners = Углы
ticket-round = Вырубается кругом
ticket-radius = Скруглены, радиус { $radius } мм
ticket-square = Прямые
ticket-die = Контур высечки — в плашечном цвете «Dieline», поверх остального: не печатать
ticket-folds = Сгибы
ticket-fold = Поперёк, на { $at } мм ниже верхнего края развёрнутого листа
ticket-fold-order = Сторона с адресом снаружи. Её нижний край — сгиб; письмо открывается по верхнему краю, там его скрепляют наклейками.
ticket-colours = Краски
ticket-colours-one = 4/0: голубая, пурпурная, жёлтая, чёрная с одной стороны
ticket-colours-two = 4/4: голубая, пурпурная, жёлтая, чёрная с двух сторон
ticket-colours-note = PDF/X-4; чёрный текст печатается поверх (overprint); сумма красок не больше { $limit } %
ticket-stock = Материал
ticket-stock-unsaid = Нужно согласовать
ticket-thickness = Толщина { $thickness } мм
ticket-thickness-unsaid = Толщину нужно подтвердить
ticket-press = Печатный лист
ticket-work-and-turn = Свой оборот: оборотная сторона на той же форме
ticket-mark = Знак типографии
ticket-mark-room = Для него в мелком тексте оставлено место 19 × 6 мм
ticket-edition = Издание
ticket-date = Дата работы
ticket-contact = С вопросами к
print-zone = Только для одного района
print-language = Язык { $number }
print-make = Сделать лист
print-making = Лист готовится…
print-done = Лист готов.
print-refused = Файл не создан. Исправьте ошибки ниже и попробуйте снова.
print-unreachable = Часть для печати не загрузилась. Проверьте связь и попробуйте снова.
print-download = Скачать PDF для типографии
print-download-web = Скачать PDF для экрана
print-web-hint = PDF для типографии отправьте в типографию. PDF для экрана — чтобы читать с экрана и слушать.
print-profile = Цветовой профиль типографии (.icc)
print-profile-hint = Без него берётся встроенный профиль для мелованной бумаги.
print-ink-limit = Предел краски, %
print-mark = Отмечено на листе: { $number }
print-contradictions = Строк, которые противоречат друг другу: { $count }. Посмотрите ниже до печати.
print-page = Страница { $number }
print-no-stream = Потока «{ $stream }» нет. Выберите из списка.
print-no-zone = Района «{ $zone }» нет. Выберите из списка.
print-no-language = Выберите от одного до четырёх языков программы.
print-shortened = { $item }: одна эта строка верна в { $percent } случаев; остальное опущено, чтобы поместиться.
print-left-out = Не поместилось: { $items }.
print-hazards-in-brief = Места, где принимают опасное, не поместились; к ним ведут код и телефон на листе.
print-refused-in-brief = Не поместилось, куда девать то, что сюда нельзя; это подскажут код и телефон на листе.
preflight-title = Проверено для печати

## Префлайт: что проверено и верно. Размеры в мм, шрифт в пунктах

preflight-bleed-and-safe-area = Вылет { $bleed } мм со всех сторон, ничего ближе { $safe } мм к краю.
preflight-boxes = Готовый размер { $finished } мм, с вылетом { $bleed } мм, страница с метками { $page } мм.
preflight-contrast = Слова видны на фоне: контраст не меньше { $ratio }:1, разница не меньше { $difference } % чёрного.
preflight-fonts-embedded = Все шрифты в файле, только нужные формы знаков ({ $glyphs }): { $fonts }.
preflight-pictures-have-words = Рисунков со словами для тех, кто не видит: { $count }.
preflight-hazards-shown = Показано опасностей: { $count }.
preflight-ink-coverage = Наибольшее количество краски в одной точке: { $coverage } %, предел { $limit } %.
preflight-postal-zones = Чистые поля на адресной стороне свободны.
preflight-qr-code = QR-код: версия { $version }, уровень { $level }, модули { $module } мм, поле вокруг — { $quiet } модуля.
preflight-type-sizes = Шрифт { $body } пт, наименьший { $smallest } пт; для чтения с { $distance } мм нужно не меньше { $floor } пт.
preflight-translation-outdated = «{ $text }» ({ $lang }): исходный текст изменился после перевода. Переведите снова до печати.
preflight-line-often-wrong = Одна строка «{ $text }» верна лишь в { $percent } % случаев. Скажите больше или уберите строку.
preflight-lines-contradict = «{ $text }» и «{ $other }» ({ $lang }) противоречат друг другу: кто прочтёт первую, отнесёт её к обеим. Скажите одну из них иначе.
preflight-picture-without-words = Для тех, кто не видит, не сказано, что здесь ({ $what }). Напишите.

## Префлайт: что стоит посмотреть до отправки в типографию

preflight-translation-unreviewed = Тексты на языке «{ $lang }» никто не проверил. Дайте их прочесть до печати.
preflight-postal-field-missing = { $field }: пусто. Заполните или поручите типографии.
preflight-qr-dense = QR-код очень мелкий (версия { $version }, знаков: { $characters }). Короткий адрес легче сканировать.

## Префлайт: ошибки. Пока они не исправлены, файла не будет

preflight-address-invalid = Адрес для QR-кода не годится: «{ $address }». Напишите его целиком, начиная с https://
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: в тексте «{ $text }» есть знак, меняющий направление письма ({ $codepoint }, место { $position }). Удалите его и наберите слова заново.
        [control] { $place }: в тексте «{ $text }» есть управляющий знак ({ $codepoint }, место { $position }). Удалите его и наберите слова заново.
       *[invisible] { $place }: в тексте «{ $text }» есть невидимый знак ({ $codepoint }, место { $position }). Удалите его и наберите слова заново.
    }
preflight-boxes-wrong = Размеры не вложены один в другой: готовый { $finished } мм, с вылетом { $bleed } мм, страница { $page } мм. Выберите другой лист.
preflight-contrast-low = «{ $text }» плохо видно на фоне: контраст { $ratio }:1, нужно не меньше { $least }:1; разница { $difference } % чёрного, нужно не меньше { $apart } %. Выберите другие краски.
preflight-ink-limit-invalid = «{ $limit }» — не предел краски. Введите сумму четырёх красок, которую назовёт типография, от 100 до 400 %.
preflight-qr-not-quiet = Вокруг QR-кода мало чистой бумаги: нужно модулей { $quiet }. Передвиньте то, что там стоит.
preflight-date-invalid = «{ $date }» — не дата. Напишите год, месяц и день: 2027-01-31
preflight-distance-invalid = «{ $distance }» — не расстояние для чтения в мм. Укажите, как далеко стоит читающий.
preflight-font-not-embeddable = Шрифт «{ $family }» нельзя встраивать в файлы. Выберите другой.
preflight-font-unreadable = Файл шрифта «{ $family }» не читается. Загрузите его снова.
preflight-hazard-accepted = { $place }: «{ $text }» — опасность среди принимаемого. Опасное никогда не идёт в контейнер или бак: исправьте правило.
preflight-hazard-missing = На листе на языке «{ $lang }» нет опасности «{ $text }». Опасности не опускают ради места.
preflight-language-count = На листе от одного до четырёх языков, а не { $count }.
preflight-language-invalid = «{ $lang }» — не метка языка. Напишите, например, es или es-US.
preflight-language-twice = Язык «{ $lang }» указан дважды. Уберите один.
preflight-languages-differ =
    { $what ->
        [sections] «{ $lang }» говорит не то же, что «{ $first }»: разделов { $theirs }, а не { $ours }. Переведите недостающее.
        [verdict] «{ $lang }» говорит не то же, что «{ $first }»: в разделе { $section } другое решение. Исправьте его.
        [lines] «{ $lang }» говорит не то же, что «{ $first }»: в разделе { $section } строк { $theirs }, а не { $ours }. Переведите недостающее.
       *[picture] «{ $lang }» говорит не то же, что «{ $first }»: у строки { $line } раздела { $section } другой рисунок или знак опасности. Исправьте.
    }
preflight-missing-glyph = { $place }: ни в одном шрифте нет { $characters } из текста «{ $text }». Напишите иначе или добавьте шрифт, где это есть.
preflight-nothing-to-say = Печатать нечего: программа ничего не говорит об этом потоке. Сначала напишите правила.
preflight-outside-safe-area = Ближе { $safe } мм к краю, где может быть обрезано: { $what }
preflight-pictogram-unknown = { $place }: рисунка «{ $pictogram }» нет. Выберите другой.
preflight-picture-too-small = Ширина рисунка всего { $side } мм. Печатайте меньше строк или языков.
preflight-postal-field-full = { $field }: «{ $text }» (строка { $line }) не помещается. Сократите.
preflight-postal-zone = Занято место «{ $zone }»: { $what }. Передвиньте или сократите.
preflight-profile-unusable =
    { $why ->
        [not-icc] Этот файл — не цветовой профиль. Возьмите выходной профиль CMYK (.icc), который назовёт типография.
        [cut-short] Цветовой профиль обрезан. Попросите типографию прислать его снова.
        [no-tables] В цветовом профиле «{ $name }» нет таблиц цветов. Возьмите выходной профиль CMYK, который назовёт типография.
       *[other-kind] Цветовой профиль «{ $name }» — не выходной профиль CMYK: он для { $class }, в { $space }. Возьмите тот, который назовёт типография.
    }
preflight-qr-too-fine = QR-код слишком мелкий для сканирования: его модули { $module } мм. Сократите адрес.
preflight-qr-too-long = В адресе { $characters } знаков, больше, чем вмещает QR-код. Сократите его.
preflight-rule-too-thin = Линия толщиной { $width } пт; самая тонкая, которая печатается, — { $least } пт.
preflight-step-invalid = Шаг { $number } того, что можно опустить, сделать нельзя. Подробности, по-английски: { $why }.
preflight-text-empty = { $place }: нет слов. Напишите их.
preflight-text-overlaps = «{ $text }» и «{ $other }» находят друг на друга. Сократите что-нибудь одно.
preflight-text-too-long = { $place }: «{ $text }» не помещается даже при { $floor } пт, наименьшем читаемом шрифте. Сократите примерно на { $cut } знаков.
preflight-too-many-lines = На листе «{ $sheet }» строк: { $lines }, языков: { $languages }; при { $floor } пт не хватает { $missing } мм. Уберите строки или печатайте меньше языков.
preflight-too-much-ink = В одной точке { $coverage } % краски; предел { $limit } %. Выберите цвет светлее.
preflight-type-too-small = «{ $text }» набрано в { $size } пт; нужно не меньше { $least } пт. Сократите тексты.
preflight-word-too-wide = { $place }: слово «{ $word }» в тексте «{ $text }» шире своей колонки при { $floor } пт. Возьмите слово примерно до { $room } знаков.
sheet-text-title = Заголовок ({ $lang })
sheet-text-heading = Заголовок раздела { $section } ({ $lang })
sheet-text-line = Строка { $line } раздела { $section } ({ $lang })
sheet-text-scan = Фраза у QR-кода ({ $lang })
sheet-text-foot = Строка { $line } внизу ({ $lang })
sheet-text-issuer = Кто выпустил лист
sheet-text-short-address = Короткий веб-адрес
sheet-text-notice = Пометка о печати
sheet-text-edition = Издание
sheet-text-job-name = Название работы
sheet-text-slug = Строка за краем листа
sheet-text-return-address = Обратный адрес { $line }
sheet-text-indicia = Почтовая отметка об оплате { $line }
sheet-text-addressee = Адрес доставки { $line }
postal-zone-barcode-clear = белая полоса для почтового штрихкода
postal-zone-read-area = поле, где машины почты читают адрес
drawn-code = QR-код
drawn-picture = рисунок
drawn-area = участок краски
sheet-cart-lid = этикетка на крышку
sheet-round-sticker = круглая наклейка
sheet-enclosure-sign = табличка у общих контейнеров
sheet-text-stock = Материал
sheet-postcard-mailer = почтовая открытка
profile-class-mntr = экрана
profile-class-scnr = сканера или камеры
profile-class-other = другой цели
preflight-size-zero = Лист { $width } × { $height } мм. Обе стороны должны быть больше нуля: введите готовый размер снова.
preflight-size-fixed = Лист { $width } × { $height } мм, но такой бывает только в размерах: { $names }.
preflight-size-out-of-range = Лист { $width } × { $height } мм. Введите стороны от { $least } до { $most } мм, с единицей.
preflight-size-too-narrow = Лист { $width } × { $height } мм. Отношение сторон может быть не больше { $most }:1.
preflight-size-not-round = У круглой наклейки ширина и высота равны, а не { $width } × { $height } мм. Введите диаметр.
preflight-postal-size = Почта не принимает карточек и писем { $width } × { $height } мм. Письмо — от 127 до 292 мм в длину, от 89 до 156 мм в высоту, длина в 1,3–2,5 раза больше высоты; большое письмо (flat) — не больше 381 × 305 мм.
preflight-corner-radius = Радиус углов { $radius } мм. Укажите от 0 до { $most } мм.
preflight-stock-thickness = Толщина материала { $thickness } мм: такой бумаги и плёнки для наклеек нет. Посмотрите, что прислала типография.
preflight-one-message = На круглой наклейке одно сообщение, а не { $lines }. Выберите что-то одно.
preflight-press-size = Печатный лист { $width } × { $height } мм. Введите стороны от { $least } до { $most } мм, с единицей.
preflight-press-gutter = Промежуток { $gutter } мм. Для двух вылетов между листами нужно { $least } мм.
preflight-press-too-small = На печатный лист { $width } × { $height } мм не помещается ни один лист с вылетом и метками. Возьмите больше.
preflight-press-up = На печатном листе просили { $up }, а помещается { $most }. Просите от 1 до { $most }.
preflight-on-a-fold = «{ $what }» ближе { $distance } мм к сгибу. Сократите тексты.
preflight-postal-thickness = Готовая вещь толщиной { $thickness } мм. Почте нужно от { $least } до { $most } мм: выберите другой материал.
preflight-ticket-too-long = Задание типографии слишком длинное, место: «{ $place }». Сократите введённое там.
preflight-imposed = Листов на печатном листе { $width } × { $height } мм: { $up }; в ширину { $across }, в высоту { $down }.
preflight-fits-fewer = Всё помещается на этих языках вместе: { $tags }. Напечатайте их, а остальные — на отдельном листе.
preflight-fits-larger = В размере { $size } помещается всё. Выберите этот размер.
preflight-folds-clear = Сгибов: { $count }. Ближе { $distance } мм к ним ничего не печатается.
preflight-postal-class =
    { $class ->
        [card] Почтой как карточка: { $length } × { $height } мм.
        [folded] Почтой как складное письмо: { $length } × { $height } мм в сложенном виде.
        [flat] Почтой как большое письмо (flat): { $length } × { $height } мм.
       *[letter] Почтой как письмо: { $length } × { $height } мм.
    }
preflight-postal-thickness-unknown = Толщина материала не указана. Почте нужно от { $least } до { $most } мм для готовой вещи: спросите типографию.
preflight-sign-letters = Прописные буквы заголовка { $height } мм, их можно читать с { $distance } мм.
preflight-sign-letters-small = Прописные буквы заголовка { $height } мм. На доступных табличках для чтения с { $distance } мм нужно { $least } мм: сократите тексты или возьмите табличку больше.
preflight-die-line = Контур высечки — в отдельном плашечном цвете «Dieline»; на печатных формах его нет.
