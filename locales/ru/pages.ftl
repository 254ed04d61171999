### The guide as plain pages.
# Not yet reviewed by a native speaker.

pages-intro = Всё, что есть в этом справочнике, с ответами. Чтобы найти вещь, ищите на этой странице: «Найти на странице» в телефоне, Ctrl+F на компьютере.
pages-app = Открыть справочник с вопросами и ответами
pages-places = Куда отвезти вещи
pages-depends = зависит от случая
pages-category-title = { $category } – { $program }
pages-also = Другие названия
pages-now = Сейчас
pages-from = С { $day }
pages-too-much = Ответ зависит от слишком многого для этого списка.
pages-next-open = Ближайшие дни работы:
pages-all-day = круглосуточно
pages-takes-only = Принимает только: { $items }
pages-does-not-take = Не принимает: { $items }
