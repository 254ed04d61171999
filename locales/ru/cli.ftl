### Командная строка: её справка, что она говорит, когда готово и когда что-то не так.
### Команды, параметры и слова заглавными буквами не переводятся.

## Справка

cli-help =
    lidleaf COMMAND [OPTIONS]

      check PROGRAM          показать, что не так в программе
      answer PROGRAM ITEM    ответить о вещи, как ответили бы жителю
      print PROGRAM          сделать этикетку крышки или открытку в PDF для типографии
      batch PROGRAM…         сделать сразу много листов многих программ
      publish [PROGRAM]      записать справочник папкой для любого веб-сервера
      serve FOLDER           показать опубликованную папку по адресу этого компьютера
      compare BEFORE AFTER   показать каждый ответ, который меняется между программами
      demo                   записать пример программы
      schema                 записать схему JSON файлов программ

    lidleaf help COMMAND или lidleaf COMMAND --help говорит больше.

    Коды выхода:
      0  готово; могут быть предупреждения
      1  в программе или в листе из неё есть ошибки; ничего не записано
      2  команда не понята
      3  файла нет, или это не то, чем он должен быть
      4  файл не записался, или адрес не открылся
      5  нет вещи, района или потока, о которых спрошено
      6  остановлено по просьбе; что доделано, сохранено
cli-help-check =
    lidleaf check PROGRAM [--catalog FILE] [--fix NUMBER --out FILE]

    Показывает все замечания о программе: сначала ошибки, потом предупреждения и заметки,
    каждое с примером и с тем, что делать. При ошибках кончается с кодом выхода 1.

    С замечанием показаны способы исправить его, каждый с номером, например 2.1. --fix 2.1
    применяет способ, записывает изменённую программу в файл из --out и показывает замечания
    о ней. Прочитанная программа остаётся как была.
cli-help-answer =
    lidleaf answer PROGRAM ITEM [--fact FACT=VALUE]… [--zone ZONE] [--on YYYY-MM-DD]

    Отвечает об одной вещи, по id или названию; в названии могут быть ошибки. Если ответ от
    чего-то зависит, показан следующий вопрос с параметром --fact, который на него отвечает.
    --fact FACT=? значит, что житель не знает. День — сегодня, если --on не называет другой.
cli-help-print =
    lidleaf print PROGRAM --sheet SHEET [OPTIONS]

      --sheet lid        этикетка на крышку контейнера
      --sheet sticker    круглая наклейка с одним сообщением
      --sheet sign       табличка у общих контейнеров, её читают издалека
      --sheet postcard   почтовая открытка, две стороны
      --sheet self-mailer  лист letter или A4, складывается и идёт по почте
      --sheet handout    лист letter или A4 для раздачи, одна сторона или две
      --stream STREAM    поток, о котором лист
      --zone ZONE        только для одного района
      --languages en,es  на этих языках, от одного до четырёх
      --out PLACE        папка или имя файла
      --date YYYY-MM-DD  дата работы
      --register         внести лист в учёт печатных листов файла программы
      --copies N         сколько экземпляров, для учёта и задания типографии; или en=400,es=200
      --printed YYYY-MM-DD  день печати, для учёта; иначе дата работы
      --size SIZE        готовый размер: 8x12in, a4, "200 x 300 mm" или диаметр, 115mm
      --corner 6mm       радиус углов; 0 для прямых
      --fold half        как сложить письмо: half (вдвое) или thirds (втрое)
      --item ITEM        одна вещь, о которой наклейка; код открывает её
      --distance 2m      с какого расстояния читают; от него зависит наименьший шрифт
      --qr-level H       какие повреждения выдержит код: M, Q или H
      --die-line         провести контур высечки этикетки плашечным цветом
      --printers-mark    оставить место для знака типографии
      --stock NAME       на чём печатают, для задания типографии
      --thickness 0.3mm  толщина этого материала; её спрашивает почта
      --no-places        опустить список мест
      --words 6          сколько слов самое большее в строке, на каждом языке листа
      --press 13x19in    несколько на печатном листе: 11x17in, 12x18in, 13x19in, sra3 или свой
      --gutter 8mm       промежуток между ними
      --up N             сколько самое большее
      --work-and-turn    лицо и оборот на одной форме
      --alone            отдельный файл на каждый язык, а не один на все
      --no-ticket        без задания типографии
      --for press        файл для типографии (PDF/X-4); делается он, если не просят другого
      --for web          файл, чтобы читать с экрана и слушать (PDF/UA-1), без меток и вылетов
      --profile FILE     профиль вывода CMYK (.icc), который прислала типография
      --ink-limit N      сколько краски самое большее держит бумага, в процентах: 300, если не указано

    Делает лист на одном–четырёх языках в PDF для типографии, отдельным файлом — задание
    типографии, и показывает, что нашла проверка перед печатью. При ошибке ничего не
    записывается. Одинаковые программа и дата дают одинаковые байты. Если не сказано иначе,
    поток — вторсырьё, языки — первые три языка программы, папка — текущая, дата — сегодня.
cli-help-batch =
    lidleaf batch PROGRAM… --sheet SHEETS --out FOLDER [OPTIONS]

      --sheet lid,postcard   эти листы, или all — все
      --stream STREAMS       потоки, о которых они, или all — все
      --zone ZONE            только для одного района
      --languages SET        набор языков; повторите столько раз, сколько наборов
          en                 на одном языке
          en,es              на этих вместе
          each               на каждом языке программы отдельно
          together           на первых трёх языках программы на одном листе
      --out FOLDER           папка, которую заполнить; каждой программе в ней своя папка
      --date YYYY-MM-DD      дата работ
      --hands N              сколько листов делать сразу; иначе по числу ядер
      --again                сделать снова и то, что уже сделано
      --for press            файлы для типографии (PDF/X-4), как без --for
      --for web              файлы, чтобы читать с экрана и слушать (PDF/UA-1)
      --profile, --ink-limit условия типографии, как в print
      --tickets              задание типографии рядом с каждым файлом для неё
      --copies N             сколько экземпляров, для заданий типографии; или en=400,es=200
      --alone                отдельный лист на каждый язык набора
      --size, --press …      как их делать, как в print: все его параметры, кроме --corner

    Делает каждый названный лист каждой программы. В папке, в batch.json, записано, из чего
    сделан каждый файл: второй запуск делает только то, чего нет или что стало бы другим. Дата
    тоже считается; без --date это сегодня, и завтра всё будет сделано заново.

    Лист, который не удался, не мешает остальным; в конце сказано, почему не удался каждый и что
    делать. Каждый файл записывается целиком или никак. Ctrl-C заканчивает по порядку: начатые
    листы доделываются, а та же команда потом продолжит. Код выхода 1, если что-то не удалось.
    В JSON: «lidleaf-batch-report» (made, skipped, failed с why и next).
cli-help-publish =
    lidleaf publish [PROGRAM] --out FOLDER [--app FOLDER]

    Записывает справочник и приложение папкой файлов, которую отдаёт любой веб-сервер, из
    корня или из своей папки. Программа с ошибками не принимается. Прежнее издание остаётся
    в папке, пока новое не готово целиком. Без программы берётся пример; приложение — из
    dist/app, если --app не называет другую папку.
cli-help-serve =
    lidleaf serve FOLDER [--port N] [--address ADDRESS]

    Показывает опубликованную папку по адресу http://127.0.0.1:8080/ или по названным порту и
    адресу, пока её не остановят. Порт 0 берёт любой свободный. Это чтобы посмотреть
    справочник, а не для публики.
cli-help-compare =
    lidleaf compare BEFORE AFTER [--on YYYY-MM-DD] [--notice] [--language TAG] [--out FILE]
    lidleaf compare PROGRAM PROGRAM PROGRAM… [--out FILE]

      --on YYYY-MM-DD  какими обе будут в этот день, а не во все дни
      --notice         извещение об изменениях для письма, по группам и с контактом
      --language TAG   язык, на котором оно пишется
      --out FILE       файл; если кончается на .md, с разметкой Markdown

    Две программы: показывает каждую вещь, у которой другое решение, место, подготовка,
    причина или предупреждение, при каких ответах и с какого дня; потом строки учтённых
    листов, которые станут неверны. От трёх до пятидесяти программ: что верно у всех, у кого
    иначе о каждой другой вещи и какие советы противоречат друг другу.

    В JSON: «lidleaf-changes» (changes, asked, untrue), «lidleaf-notice» (groups, untrue, text)
    или «lidleaf-regional» (programs, agreed, differing, contradictory). В каждом «when» —
    список вариантов, каждый — список свойств со значениями, которые верны вместе.
cli-help-schema =
    lidleaf schema [--out FILE]

    Записывает схему JSON файлов программ.
cli-help-demo =
    lidleaf demo [--town TOWN] [--out FILE]

    Записывает пример программы, целиком выдуманный округ, чтобы с него начать; с --town —
    один из его городов: thrushwick, kettlebrae, larkenby или dunnockford.
cli-help-common =
    Каждая команда принимает ещё:
      --lang TAG      язык сообщений и ответов (en, es, ar …)
      --json          результат в JSON
      --catalog FILE  другой каталог вместо встроенного, где читается программа
      --help          этот текст
      --version       версия

## Готово

cli-error = Ошибка: { $message }
cli-written = Записано: { $file }
cli-serving = Показываю { $folder } по адресу { $url } (Ctrl-C остановит)
cli-published =
    { $files ->
        [one] Издание { $edition } опубликовано в { $folder }: { $files } файл, { $size }.
        [few] Издание { $edition } опубликовано в { $folder }: { $files } файла, { $size }.
        [many] Издание { $edition } опубликовано в { $folder }: { $files } файлов, { $size }.
       *[other] Издание { $edition } опубликовано в { $folder }: { $files } файла, { $size }.
    }

## Замечания

cli-severity-error = ошибка
cli-severity-warning = предупреждение
cli-severity-notice = заметка
cli-finding = { $severity }: { $message }
cli-place = место: { $kind } «{ $id }»
cli-place-field = место: { $kind } «{ $id }», поле «{ $field }»
cli-place-program = место: поле «{ $field }» программы
cli-witness = например, { $item }
cli-witness-answers = например, { $item } ({ $answers })
cli-hint = что делать: { $hint }
cli-mend = как исправить ({ $number }): { $fix }
cli-mended = Сделано: { $fix }
cli-check-clean = Замечаний нет: программу можно публиковать.
cli-count-errors =
    { $count ->
        [one] { $count } ошибка
        [few] { $count } ошибки
        [many] { $count } ошибок
       *[other] { $count } ошибки
    }
cli-count-warnings =
    { $count ->
        [one] { $count } предупреждение
        [few] { $count } предупреждения
        [many] { $count } предупреждений
       *[other] { $count } предупреждения
    }
cli-count-notices =
    { $count ->
        [one] { $count } заметка
        [few] { $count } заметки
        [many] { $count } заметок
       *[other] { $count } заметки
    }
cli-check-publishable = { $counts }. Программу можно публиковать.
cli-check-errors = { $counts }. Программу нельзя публиковать, пока ошибки не исправлены.

## Ответы

cli-answer-day = День: { $day }
cli-answer-where = Куда: { $place }
cli-answer-also = Принимают также: { $places }
cli-answer-prepare = Как: { $steps }
cli-answer-why = Почему: { $reason }
cli-answer-caution = Осторожно: { $caution }
cli-answer-rules = Решили правила: { $rules }
cli-answer-temporary = Действует временное распоряжение.
cli-answer-site = Ближайшее место: { $site }, { $address }
cli-answer-assumed = Принято, потому что неизвестно: { $facts }
cli-question-option = { $option } — { $value }
cli-question-cannot-tell = Не знаю

## Листы

cli-sheet-shortened = сокращённая строка: «{ $item }» одна ведёт в верное место в { $percent } случаев
cli-sheet-left-out = не поместилось: { $items }
cli-sheet-hazards-in-brief = места, где принимают опасное, не поместились; к ним ведут код и телефон на листе
cli-sheet-refused-in-brief = не поместилось, куда девать то, что сюда нельзя; это подскажут код и телефон на листе
cli-registered = Внесено в учёт { $file } как «{ $id }».
cli-preflight-pass = Префлайт: исправлять нечего.
cli-preflight-warnings =
    { $count ->
        [one] Префлайт: { $count } предупреждение.
        [few] Префлайт: { $count } предупреждения.
        [many] Префлайт: { $count } предупреждений.
       *[other] Префлайт: { $count } предупреждения.
    }
cli-preflight-errors =
    { $count ->
        [one] Префлайт: { $count } ошибка. Файл не записан.
        [few] Префлайт: { $count } ошибки. Файл не записан.
        [many] Префлайт: { $count } ошибок. Файл не записан.
       *[other] Префлайт: { $count } ошибки. Файл не записан.
    }
cli-batch-progress = [{ $done }/{ $of }] { $outcome }: { $file }
cli-batch-made = сделано
cli-batch-kept = без изменений
cli-batch-failed = не удалось
cli-batch-failed-one = Не удалось: { $what }
cli-batch-summary = { $folder }: сделано { $made }, без изменений { $kept }, не удалось { $failed }; из { $programs ->
        [one] { $programs } программы.
        [few] { $programs } программ.
        [many] { $programs } программ.
       *[other] { $programs } программы.
    }
cli-batch-warned =
    { $count ->
        [one] У { $count } сделанного листа есть предупреждения: их показывает lidleaf print.
        [few] У { $count } сделанных листов есть предупреждения: их показывает lidleaf print.
        [many] У { $count } сделанных листов есть предупреждения: их показывает lidleaf print.
       *[other] У { $count } сделанного листа есть предупреждения: их показывает lidleaf print.
    }
cli-batch-stopped = Остановлено раньше, чем всё сделано. Та же команда продолжит отсюда.
cli-batch-notes-lost = Записи в batch.json не годятся, поэтому всё сделано заново.
cli-batch-next-preflight = Исправьте программу или попросите для этого листа меньше языков и повторите ту же команду.
cli-batch-crashed = Лист не удалось сделать из-за ошибки в самом приложении lidleaf.
cli-batch-next-crashed = Сохраните сообщение выше и файл программы и сообщите о том и другом.
cli-batch-program-errors = В программе { $file } есть ошибки ({ $count }), листов из неё не сделано.
    .hint = lidleaf check показывает их и что делать.
cli-batch-same-id = У этих файлов один и тот же id, «{ $id }», и листы назывались бы одинаково: { $files }.
    .hint = Печатайте их в разные папки.
cli-batch-busy = Папку { $file } сейчас заполняет другой запуск.
    .hint = Подождите, пока он закончится, или назовите другую папку с --out.
cli-batch-no-shop = Шрифты или цветовой профиль, которые идут в комплекте, не годятся: { $detail }
    .hint = Установите lidleaf заново.

## Сравнение

cli-compare-same = О каждой вещи обе программы отвечают одинаково.
cli-compare-count =
    { $count ->
        [one] Меняется { $count } ответ.
        [few] Меняются { $count } ответа.
        [many] Меняются { $count } ответов.
       *[other] Меняются { $count } ответа.
    }
cli-compare-share = { $percent } случаев

## Непонятые команды

cli-usage-command = Команды «{ $command }» нет.
    .hint = lidleaf --help показывает команды.
cli-usage-option = У этой команды нет параметра { $option }.
    .hint = lidleaf help COMMAND показывает параметры.
cli-usage-word = «{ $word }» — лишнее слово.
    .hint = Названия с пробелами берите в кавычки.
cli-usage-not-text = «{ $word }» — нечитаемый текст.
    .hint = Наберите значение параметра в UTF-8.
cli-usage-needs-value = После параметра { $option } нужно значение.
    .hint = lidleaf help COMMAND показывает, какое.
cli-usage-no-value = Параметр { $option } не принимает значения.
    .hint = Уберите знак равенства и всё за ним.
cli-usage-needs-option = Не хватает параметра { $option }.
    .hint = lidleaf help COMMAND показывает, что он принимает.
cli-usage-needs-program = Не хватает файла программы.
    .hint = Назовите его после команды: lidleaf check program.json
cli-usage-needs-item = Нужны файл программы и вещь.
    .hint = Например: lidleaf answer program.json "коробка от пиццы"
cli-usage-needs-two = Нужны два файла программ: прежний и новый.
    .hint = Например: lidleaf compare 2026.json 2027.json
cli-usage-needs-folder = Не хватает папки, которую показать.
    .hint = Например: lidleaf serve dist/site
cli-usage-fact = «{ $word }» — не свойство со значением.
    .hint = Напишите через знак равенства: --fact resin=1
cli-usage-date = «{ $word }» — не день.
    .hint = Напишите год, месяц и день: 2027-01-31
cli-usage-copies = «{ $word }» — не число экземпляров.
    .hint = Напишите целое число, --copies 400, или по числу на язык, --copies en=400,es=200
cli-usage-for = «{ $word }» — не назначение листа.
    .hint = Напишите --for press для типографии или --for web, чтобы читать с экрана и слушать.
cli-usage-ink-limit = «{ $word }» — не предел краски.
    .hint = Напишите сумму четырёх красок в процентах: --ink-limit 280
cli-usage-press-only = { $option } относится к типографии, а с --for web файла для неё нет.
    .hint = Уберите одно из двух.
cli-usage-hands = «{ $word }» — не число листов, которые делают сразу.
    .hint = Напишите целое число от 1: --hands 4
cli-usage-port = «{ $word }» — не порт.
    .hint = Напишите число от 0 до 65535; 0 берёт любой свободный порт.
cli-usage-address = «{ $word }» — не сетевой адрес.
    .hint = Напишите 127.0.0.1 только для этого компьютера, 0.0.0.0 для местной сети.
cli-usage-language = Сообщений на языке «{ $word }» нет.
    .hint = Есть: { $known }.
cli-usage-sheet = Листа «{ $word }» нет.
    .hint = Напишите --sheet и одно из: lid, sticker, sign, postcard, self-mailer, handout.
cli-usage-fix = «{ $word }» — не номер способа исправления.
    .hint = lidleaf check PROGRAM показывает номера, например 2.1.
cli-usage-other = Команду не удалось прочитать: { $detail }.
    .hint = lidleaf --help показывает команды.

## Файлы и адреса

cli-file-missing = Файла { $file } нет.
    .hint = Проверьте имя и папку.
cli-file-unreadable = Файл { $file } не удалось прочитать: { $detail }.
    .hint = Проверьте, что вам можно его читать и что его не держит другая программа.
cli-file-is-folder = { $file } — папка, а не файл.
    .hint = Назовите файл внутри неё.
cli-file-not-text = Файл { $file } со строки { $line } — не текст.
    .hint = Файлы программ — текст в UTF-8. Это может быть другой или повреждённый файл: возьмите прежнюю копию или выгрузите снова.
cli-folder-missing = Папки { $file } нет.
    .hint = Сначала опубликуйте в неё: lidleaf publish program.json --out FOLDER
cli-folder-unreadable = Папку { $file } не удалось прочитать: { $detail }.
    .hint = Проверьте, что вам можно её читать.
cli-name-not-text = Имя { $file } — нечитаемый текст.
    .hint = Переименуйте.
cli-cannot-write = { $file } не удалось записать: { $detail }. Что было прежде, не изменилось.
    .hint = Проверьте, что папка есть, что вам можно туда писать и что хватает места.
cli-cannot-serve = Адрес { $address } не удалось открыть: { $detail }.
    .hint = Возможно, он занят другой программой: назовите другой порт с --port.

## Публикация

cli-app-missing = В { $file } нет собранного приложения.
    .hint = Соберите его: cargo xtask run, или назовите папку с --app.
cli-app-list-broken = Список файлов приложения, { $file }, не прочитать: { $detail }.
    .hint = Соберите приложение снова: cargo xtask run.
cli-app-changed = { $file } не такой, каким был собран.
    .hint = Соберите приложение снова: cargo xtask run.
cli-out-not-folder = В { $file } публиковать нельзя: это не папка с именем.
    .hint = Назовите новую папку с --out.
cli-out-in-use = В папке { $file } другие файлы. Публикация заменяет папку целиком, поэтому ничего не изменено.
    .hint = Назовите новую или пустую папку с --out.
cli-out-in-app = Папки приложения, { $app }, и справочника, { $file }, лежат одна в другой.
    .hint = Назовите папку в другом месте с --out.
cli-publish-refused = В программе есть ошибки, она не опубликована.
    .hint = Исправьте ошибки выше; lidleaf check покажет их снова.

## Чего нет в программе

cli-unknown-item = Вещи «{ $item }» нет.
    .hint = Попробуйте другое слово, материал или форму.
cli-unknown-fact = «{ $fact }» — не свойство.
    .hint = Свойства: { $known }.
cli-unknown-value = «{ $value }» — не значение свойства «{ $fact }».
    .hint = Оно принимает: { $known }.
cli-unknown-measure = «{ $value }» — не мера для свойства «{ $fact }».
    .hint = Напишите число и единицу, например { $known }.
cli-unknown-fix = Ни у одного замечания этой программы нет способа исправления с номером { $number }.
    .hint = lidleaf check PROGRAM показывает номера; они меняются вместе с программой.
cli-unknown-zone = Района «{ $zone }» нет.
    .hint = Районы: { $known }.
cli-unknown-town = В примере нет города «{ $town }».
    .hint = Города: { $known }.
cli-unknown-stream = Потока «{ $stream }» нет.
    .hint = Потоки: { $known }.
cli-unknown-sheet-language = Программа не публикуется на языке «{ $language }».
    .hint = Она публикуется на языках: { $known }.
cli-too-many-languages = На листе от одного до четырёх языков, а не { $count }.
    .hint = Назовите их: --languages en,es
cli-usage-size = «{ $word }» — не размер.
    .hint = Напишите название, например a4 или letter, или ширину, высоту и единицу: 8x12in
cli-usage-length = «{ $word }» — не длина.
    .hint = Напишите число и единицу: 6mm, 0.25in
cli-usage-fold = «{ $word }» — не способ складывать.
    .hint = Напишите --fold half или --fold thirds.
cli-usage-qr-level = «{ $word }» — не уровень исправления ошибок.
    .hint = Напишите M, Q или H.
cli-usage-words = «{ $word }» — не число слов.
    .hint = Напишите целое число от 1, например --words 6
cli-usage-up = «{ $word }» — не число листов.
    .hint = Напишите целое число: --up 4
cli-unknown-sheet-item = Вещи «{ $item }» нет.
    .hint = Назовите её по id, как показывает lidleaf answer --json.
cli-nothing-against = Нигде не сказано, что «{ $item }» сюда нельзя.
    .hint = Наклейка предупреждает: назовите вещь, которую не принимают, или опасность.
