### Экран печати и то, что говорит проверка перед печатью (префлайт).

## Экран печати

print-sheet = Лист
sheet-lid = Этикетка на крышку, 7 × 9 дюймов
sheet-postcard = Почтовая открытка, 9 × 6 дюймов
print-zone = Только для одного района
print-language = Язык { $number }
print-make = Сделать лист
print-making = Лист готовится…
print-done = Лист готов.
print-refused = Файл не создан. Исправьте ошибки ниже и попробуйте снова.
print-unreachable = Часть для печати не загрузилась. Проверьте связь и попробуйте снова.
print-download = Скачать PDF для типографии
print-page = Страница { $number }
print-no-stream = Потока «{ $stream }» нет. Выберите из списка.
print-no-zone = Района «{ $zone }» нет. Выберите из списка.
print-no-language = Выберите от одного до трёх языков программы.
print-shortened = { $item }: одна эта строка верна в { $percent } случаев; остальное опущено, чтобы поместиться.
preflight-title = Проверено для печати

## Префлайт: что проверено и верно. Размеры в мм, шрифт в пунктах

preflight-bleed-and-safe-area = Вылет { $bleed } мм со всех сторон, ничего ближе { $safe } мм к краю.
preflight-hazards-shown = Показано опасностей: { $count }.
preflight-ink-coverage = Наибольшее количество краски в одной точке: { $coverage } %, предел { $limit } %.
preflight-postal-zones = Чистые поля на адресной стороне свободны.
preflight-qr-code = QR-код: версия { $version }, уровень { $level }, модули { $module } мм, поле вокруг — { $quiet } модуля.
preflight-type-sizes = Шрифт { $body } пт, наименьший { $smallest } пт; для чтения с { $distance } мм нужно не меньше { $floor } пт.

## Префлайт: что стоит посмотреть до отправки в типографию

preflight-translation-unreviewed = Тексты на языке «{ $lang }» никто не проверил. Дайте их прочесть до печати.
preflight-postal-field-missing = Поле «{ $field }» пусто. Заполните его или поручите типографии.
preflight-qr-dense = QR-код очень мелкий (версия { $version }, знаков: { $characters }). Короткий адрес легче сканировать.

## Префлайт: ошибки. Пока они не исправлены, файла не будет

preflight-address-invalid = Адрес для QR-кода не годится: «{ $address }». Напишите его целиком, начиная с https://
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: в тексте «{ $text }» есть знак, меняющий направление письма ({ $codepoint }, место { $position }). Удалите его и наберите слова заново.
        [control] { $place }: в тексте «{ $text }» есть управляющий знак ({ $codepoint }, место { $position }). Удалите его и наберите слова заново.
       *[invisible] { $place }: в тексте «{ $text }» есть невидимый знак ({ $codepoint }, место { $position }). Удалите его и наберите слова заново.
    }
preflight-date-invalid = «{ $date }» — не дата. Напишите год, месяц и день: 2027-01-31
preflight-distance-invalid = «{ $distance }» — не расстояние для чтения в мм. Укажите, как далеко стоит читающий.
preflight-font-not-embeddable = Шрифт «{ $family }» нельзя встраивать в файлы. Выберите другой.
preflight-font-unreadable = Файл шрифта «{ $family }» не читается. Загрузите его снова.
preflight-hazard-accepted = { $place }: «{ $text }» — опасность среди принимаемого. Опасное никогда не идёт в контейнер или бак: исправьте правило.
preflight-hazard-missing = На листе на языке «{ $lang }» нет опасности «{ $text }». Опасности не опускают ради места.
preflight-language-count = На листе от одного до трёх языков, а не { $count }.
preflight-language-invalid = «{ $lang }» — не метка языка. Напишите, например, es или es-US.
preflight-language-twice = Язык «{ $lang }» указан дважды. Уберите один.
preflight-languages-differ = «{ $lang }» говорит не то же, что «{ $first }»: { $what }.
preflight-missing-glyph = { $place }: ни в одном шрифте нет { $characters } из текста «{ $text }». Напишите иначе или добавьте шрифт, где это есть.
preflight-nothing-to-say = Печатать нечего: программа ничего не говорит об этом потоке. Сначала напишите правила.
preflight-outside-safe-area = «{ $what }» ближе { $safe } мм к краю и может быть обрезано.
preflight-pictogram-unknown = { $place }: рисунка «{ $pictogram }» нет. Выберите другой.
preflight-picture-too-small = Ширина рисунка всего { $side } мм. Печатайте меньше строк или языков.
preflight-postal-field-full = Строка { $line } поля «{ $field }» не помещается: «{ $text }». Сократите её.
preflight-postal-zone = «{ $what }» стоит здесь: { $zone }. Передвиньте или сократите.
preflight-profile-unusable = Цветовой профиль не годится: { $why }. Возьмите выходной профиль CMYK, который назовёт типография.
preflight-qr-too-fine = QR-код слишком мелкий для сканирования: его модули { $module } мм. Сократите адрес.
preflight-qr-too-long = В адресе { $characters } знаков, больше, чем вмещает QR-код. Сократите его.
preflight-rule-too-thin = Линия «{ $what }» слишком тонкая для печати.
preflight-text-empty = { $place }: нет слов. Напишите их.
preflight-text-overlaps = «{ $text }» и «{ $other }» находят друг на друга. Сократите что-нибудь одно.
preflight-text-too-long = { $place } ({ $lang }): «{ $text }» не помещается даже при { $floor } пт, наименьшем читаемом шрифте. Сократите примерно на { $cut } знаков.
preflight-too-many-lines = На листе «{ $sheet }» строк: { $lines }, языков: { $languages }; при { $floor } пт не хватает { $missing } мм. Уберите строки или печатайте меньше языков.
preflight-too-much-ink = В одной точке { $coverage } % краски; предел { $limit } %. Выберите цвет светлее.
preflight-type-too-small = «{ $text }» набрано в { $size } пт; нужно не меньше { $least } пт. Сократите тексты.
preflight-word-too-wide = { $place } ({ $lang }): слово «{ $word }» в тексте «{ $text }» шире своей колонки при { $floor } пт. Возьмите слово примерно до { $room } знаков.
