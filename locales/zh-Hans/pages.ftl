### The guide as plain pages.
# Not yet reviewed by a native speaker.

pages-intro = 本指南中的所有物品和答案都在这里。要找某样东西，请在本页中搜索：手机上用“在页面中查找”，电脑上按 Ctrl+F。
pages-app = 打开会提问并回答的指南
pages-places = 可以送去的地方
pages-depends = 视情况而定
pages-category-title = { $category } – { $program }
pages-also = 其他叫法
pages-now = 现在
pages-from = 从{ $day }起
pages-too-much = 答案取决于太多因素，这份列表写不下。
pages-next-open = 接下来开放的日子：
pages-all-day = 全天开放
pages-takes-only = 只收：{ $items }
pages-does-not-take = 不收：{ $items }
