### Что можно знать о вещи: названия, вопросы, ответы. Каждое значение понятно само по себе —
### на кнопке и в строке «Вы не знали, поэтому мы взяли: Крышка: надета».

## Границы меры или дат как варианты ответа

range-at-least = { $value } или больше
range-over = больше чем { $value }
range-at-most = { $value } или меньше
range-under = меньше чем { $value }
range-between = { $low } – { $high }
range-any = любое

## Свойство и его значение, вещь и её часть

fact-value = { $fact }: { $value }
item-part = { $item }: { $part }

## Кто спрашивает, где и когда

fact-day = День
ask-day = В какой день?

## Время года

fact-time-of-year = Время года
ask-time-of-year = В какой день года?

## Район

fact-zone = Район
ask-zone = Где вы живёте?
    .hint = В разных районах правила разные.

## Жильё

fact-dwelling = Жильё
ask-dwelling = В каком доме вы живёте?
value-dwelling-house = Отдельный дом
value-dwelling-small-building = Дом на несколько квартир
value-dwelling-large-building = Большой многоквартирный дом

## Откуда вещь

fact-origin = Откуда
ask-origin = Откуда эта вещь?
value-origin-household = Из дома
value-origin-business = Из фирмы

## Подтверждение адреса

fact-proof = Подтверждение адреса
ask-proof = Можете показать, что живёте здесь?
    .hint = Подойдёт счёт или права с вашим адресом.
value-proof-yes = Могу показать
value-proof-no = Подтверждения нет

## Платная услуга

fact-add-on = Платная услуга
ask-add-on = Вы платите за дополнительный вывоз?
    .hint = Если да, он указан в вашем счёте.
value-add-on-yes = Плачу
value-add-on-no = Не плачу

## Количество

fact-quantity = Сколько штук
ask-quantity = Сколько их у вас?

## Что это

fact-item = Вещь
ask-item = Что это?

## Вид

fact-category = Вид
ask-category = Что это за вещь?

## Часть вещи

fact-part = Часть
ask-part = Какая часть?
value-part-whole = Вещь целиком
value-part-lid = Крышка
value-part-cap = Пробка
value-part-pump = Дозатор
value-part-sleeve = Плёнка вокруг
value-part-liner = Вкладыш
value-part-straw = Трубочка
value-part-filter = Фильтр
value-part-battery = Батарейка
value-part-cord = Шнур
value-part-shade = Абажур
value-part-contents = Содержимое
value-part-bag = Пакет
value-part-handle = Ручка
value-part-ring = Кольцо

## Опасность

fact-hazard = Опасность
ask-hazard = Чем она опасна?
    .hint = Поищите на этикетке предупреждение или знак. Если не уверены, скажите, что не знаете.
value-hazard-none = Не опасна
value-hazard-battery-lithium = Литиевая батарея (заряжается)
value-hazard-battery-household = Обычная батарейка
value-hazard-battery-lead-acid = Автомобильный аккумулятор (свинец)
value-hazard-sharps = Игла или ланцет
value-hazard-medicine = Лекарство
value-hazard-pressurised = Баллон под давлением
value-hazard-flammable = Горючая жидкость или газ
value-hazard-toxic = Яд
value-hazard-corrosive = Едкое (жжёт кожу)
value-hazard-mercury = Вещь с ртутью
value-hazard-oil = Моторное масло
value-hazard-explosive = Взрывчатка
value-hazard-radioactive = Радиоактивная вещь

## Материал

fact-material = Материал
ask-material = Из чего это сделано?
    .hint = Материал, которого больше всего.
value-material-plastic = Пластик
value-material-bioplastic = Пластик из растений
value-material-cardboard = Гофрокартон
value-material-paperboard = Тонкий картон
value-material-paper = Бумага
value-material-carton = Картон для напитков
value-material-steel = Сталь или жесть
value-material-aluminium = Алюминий
value-material-metal = Другой металл
value-material-glass = Стекло
value-material-ceramic = Керамика
value-material-wood = Дерево
value-material-cork = Пробковое дерево
value-material-textile = Ткань
value-material-leather = Кожа
value-material-rubber = Резина
value-material-food = Еда
value-material-plant = Листья или ветки
value-material-wax = Воск
value-material-stone = Камень или бетон
value-material-electronics = Электроника
value-material-chemical = Химия
value-material-mixed = Несколько материалов

## Форма

fact-form = Форма
ask-form = Какой это формы?
value-form-bottle = Бутылка
value-form-jug = Канистра с ручкой
value-form-jar = Банка
value-form-tub = Ванночка
value-form-cup = Стакан
value-form-lid = Крышка или пробка
value-form-clamshell = Коробка с откидной крышкой
value-form-tray = Лоток
value-form-bag = Пакет
value-form-film = Плёнка
value-form-pouch = Мягкий пакет с дном
value-form-tube = Тюбик
value-form-can = Жестяная банка
value-form-spray-can = Баллончик спрея
value-form-cylinder = Газовый баллон
value-form-box = Коробка
value-form-carton = Пакет от напитка
value-form-canister = Туба
value-form-sheet = Лист
value-form-newspaper = Газета или журнал
value-form-book = Книга
value-form-envelope = Конверт
value-form-roll = Рулон
value-form-foil = Фольга
value-form-pan = Форма или кастрюля
value-form-foam = Пенопласт
value-form-pod = Кофейная капсула
value-form-cutlery = Вилка, нож или ложка
value-form-straw = Трубочка
value-form-pot = Цветочный горшок
value-form-bucket = Ведро
value-form-toy = Игрушка
value-form-rope = Верёвка, шланг или кабель
value-form-clothing = Одежда
value-form-shoe = Обувь
value-form-furniture = Мебель
value-form-mattress = Матрас
value-form-appliance = Крупная техника
value-form-device = Электронный прибор
value-form-lamp = Лампочка или трубка
value-form-battery = Батарейка
value-form-needle = Игла
value-form-pill = Таблетки или лекарство
value-form-tool = Инструмент
value-form-window = Окно или зеркало
value-form-dishes = Посуда
value-form-tyre = Шина
value-form-timber = Доски
value-form-rubble = Строительный лом
value-form-food = Еда
value-form-plant = Садовые отходы
value-form-liquid = Жидкость
value-form-ash = Зола
value-form-sanitary = Подгузник или средство гигиены
value-form-other = Другая форма

## Упаковка или вещь

fact-object = Для чего
ask-object = В это было что-то упаковано?
value-object-packaging = Это упаковка
value-object-product = Это сама вещь

## Батарейка внутри

fact-battery = Батарейка
ask-battery = Есть ли внутри батарейка?
    .hint = Если вещь светится, движется, звучит или заряжается, батарейка есть.
value-battery-yes = С батарейкой
value-battery-no = Без батарейки

## Номер пластика

fact-resin = Цифра в треугольнике
ask-resin = Какая цифра в маленьком треугольнике?
    .hint = Посмотрите на дно. Цифра говорит, какой это пластик. Она не обещает, что его переработают.
value-resin-1 = 1
value-resin-2 = 2
value-resin-3 = 3
value-resin-4 = 4
value-resin-5 = 5
value-resin-6 = 6
value-resin-7 = 7
value-resin-none = Цифры нет
value-resin-unreadable = Не прочитать

## Знак залога

fact-deposit-mark = Знак залога
ask-deposit-mark = Есть ли знак залога за тару?
    .hint = Поищите возле штрихкода знак или сумму денег.
value-deposit-mark-yes = Со знаком залога
value-deposit-mark-no = Без знака залога

## Цвет

fact-colour = Цвет
ask-colour = Какого это цвета?
value-colour-clear = Прозрачный
value-colour-frosted = Матовый (свет проходит)
value-colour-white = Белый
value-colour-green = Зелёный
value-colour-brown = Коричневый
value-colour-blue = Синий
value-colour-black = Чёрный
value-colour-other = Другой цвет

## Покрытие

fact-coating = Покрытие
ask-coating = Есть ли на этом покрытие?
    .hint = Надорвите угол: тонкая плёнка — это пластик. Поскребите: воск сходит.
value-coating-none = Без покрытия
value-coating-plastic = Пластик
value-coating-wax = Воск
value-coating-foil = Фольга
value-coating-glitter = Блёстки
value-coating-wet-strength = Не размокает в воде

## Слои

fact-layers = Слои
ask-layers = Это несколько склеенных слоёв?
value-layers-one = Один слой
value-layers-many = Несколько слоёв

## Самая длинная сторона

fact-longest-side = Самая длинная сторона
ask-longest-side = Какой это длины?
    .hint = Измерьте самую длинную сторону.

## Средняя сторона

fact-middle-side = Вторая по длине сторона
ask-middle-side = Какой это ширины?
    .hint = Измерьте вторую по длине сторону.

## Самая короткая сторона

fact-shortest-side = Самая короткая сторона
ask-shortest-side = Какой это толщины?
    .hint = Измерьте самую короткую сторону.

## Длина полосок

fact-strip-length = Длина полосок
ask-strip-length = Какой длины полоски?

## Объём

fact-capacity = Вмещает
ask-capacity = Сколько сюда помещается?
    .hint = Посмотрите объём на этикетке.

## Вес

fact-mass = Вес
ask-mass = Сколько это весит?

## Помещается ли

fact-fits-container = Помещается в контейнер
ask-fits-container = Помещается ли это в контейнер с закрытой крышкой?
value-fits-container-yes = Помещается, крышка закрыта
value-fits-container-no = Не помещается

## Содержимое

fact-contents = Содержимое
ask-contents = Осталось ли что-нибудь внутри?
    .hint = Пусто — значит, ничего не капает и не сыплется.
value-contents-empty = Пусто
value-contents-traces = Немного на стенках
value-contents-dried = Засохло
value-contents-part-full = Ещё не пусто
value-contents-full = Полно

## Что было внутри

fact-former-contents = Что было внутри
ask-former-contents = Что было внутри?
value-former-contents-none = Ничего
value-former-contents-food = Еда
value-former-contents-drink = Напиток
value-former-contents-personal-care = Мыло, шампунь или крем
value-former-contents-cleaner = Чистящее средство
value-former-contents-oil = Моторное масло
value-former-contents-paint = Краска
value-former-contents-pesticide = Яд от насекомых или сорняков
value-former-contents-solvent = Растворитель или топливо
value-former-contents-medicine = Лекарство

## Чистота

fact-soiling = Чисто или грязно
ask-soiling = Это чистое?
value-soiling-clean = Чисто
value-soiling-grease = В жире
value-soiling-food = С остатками еды

## Сырость

fact-wet = Мокрое
ask-wet = Это мокрое?
value-wet-yes = Мокрое
value-wet-no = Сухое

## В пакете

fact-bagged = В пакете
ask-bagged = Это лежит в пакете?
value-bagged-loose = Без пакета
value-bagged-plastic-bag = В пластиковом пакете
value-bagged-clear-bag = В прозрачном пакете
value-bagged-paper-bag = В бумажном пакете

## Сплющено

fact-flattened = Сложено плоско
ask-flattened = Это сложено плоско?
value-flattened-yes = Сложено
value-flattened-no = Не сложено

## Связано

fact-bundled = Связано в пачку
ask-bundled = Это связано в пачку?
value-bundled-yes = Связано
value-bundled-no = Не связано

## Измельчено

fact-shredded = Измельчено
ask-shredded = Это измельчено?
value-shredded-yes = Измельчено
value-shredded-no = Не измельчено

## Сломано

fact-broken = Сломано
ask-broken = Это сломано или изношено?
value-broken-yes = Сломано
value-broken-no = Целое

## Для компоста

fact-compostable = Для компоста
ask-compostable = Написано ли, что это годится для компоста?
    .hint = Ищите слова “certified compostable” и знак.
value-compostable-no = Нет
value-compostable-claimed = Написано, но знака нет
value-compostable-certified = Проверено, знак есть

## Крышка

fact-closure = Крышка
ask-closure = Крышка надета?
value-closure-none = Крышки нет
value-closure-on = Надета
value-closure-off = Снята

## Этикетка

fact-label = Этикетка
ask-label = Какая на этом этикетка?
value-label-none = Без этикетки
value-label-paper = Бумажная этикетка
value-label-film = Пластиковая этикетка
value-label-sleeve = Плёнка со всех сторон

## Дозатор

fact-pump = Дозатор или распылитель
ask-pump = Есть ли дозатор или распылитель?
value-pump-yes = С дозатором
value-pump-no = Без дозатора

## Металлическая деталь

fact-fitting = Металлическая деталь
ask-fitting = Есть ли маленькая металлическая деталь?
value-fitting-yes = С металлом
value-fitting-no = Без металла

## Окошко

fact-window = Пластиковое окошко
ask-window = Есть ли прозрачное пластиковое окошко?
value-window-yes = С окошком
value-window-no = Без окошка

## Вкладыш

fact-liner = Вкладыш внутри
ask-liner = Есть ли внутри вкладыш?
value-liner-yes = С вкладышем
value-liner-no = Без вкладыша

## Шнур

fact-cord = Шнур
ask-cord = Есть ли шнур?
value-cord-yes = Со шнуром
value-cord-no = Без шнура

## Что говорят рядом с границей

measure-like = { $measure } (примерно { $thing })
measure-per = { $measure } { $period }
like-credit-card = как банковская карта
like-golf-ball = мяч для гольфа
like-tennis-ball = теннисный мяч
like-basketball = баскетбольный мяч
like-sheet-of-paper = как лист бумаги
like-yogurt-cup = стаканчик йогурта
like-milk-jug = канистра молока
like-bucket = большое ведро
like-brick = кирпич
per-visit = за один приезд
per-day = в день
per-week = в неделю
per-month = в месяц
per-year = в год
