### Слова на этикетках крышек и в открытках. Их читают на расстоянии шага, места мало.

sheet-heading-yes = Да
sheet-heading-no = Нет
sheet-heading-elsewhere = Сдайте в другом месте
sheet-heading-caution = Нельзя в контейнеры и баки
sheet-scan = Нет в списке? Сканируйте и спросите.
sheet-contact = Вопросы? { $name }, { $phone }
sheet-line-when = { $item } ({ $condition })
sheet-when-resin = цифра { $values }
sheet-line-where = { $item }: { $place }

sheet-hazard-battery-lithium = Всё, что заряжается
sheet-hazard-battery-household = Батарейки
sheet-hazard-battery-lead-acid = Аккумуляторы машин
sheet-hazard-sharps = Иглы и ланцеты
sheet-hazard-medicine = Лекарства
sheet-hazard-pressurised = Газ и полные баллончики
sheet-hazard-flammable = Топливо и растворители
sheet-hazard-toxic = Ядохимикаты
sheet-hazard-corrosive = Кислоты и средства для труб
sheet-hazard-mercury = Ртуть и лампы с ртутью
sheet-hazard-oil = Моторное масло
sheet-hazard-explosive = Фейерверки и патроны
sheet-hazard-radioactive = Всё радиоактивное
sheet-hazards-between = {", "}
sheet-picture-alt = Рисунок: { $item }
sheet-caution-alt = Знак опасности
sheet-code-alt = QR-код, открывающий справочник
sheet-link-alt = Открыть справочник в браузере
sheet-not-here = Сюда нельзя: { $thing }
sheet-heading-places = Куда сдать
sheet-place-between = {", "}
