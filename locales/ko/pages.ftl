### The guide as plain pages.
# Not yet reviewed by a native speaker.

pages-intro = 이 안내서에 있는 모든 물건과 답입니다. 물건을 찾으려면 이 페이지에서 검색하세요. 휴대전화에서는 ‘페이지에서 찾기’, 컴퓨터에서는 Ctrl+F를 쓰세요.
pages-app = 묻고 답하는 안내서 열기
pages-places = 물건을 가져갈 곳
pages-depends = 경우에 따라 다름
pages-category-title = { $category } – { $program }
pages-also = 다른 이름
pages-now = 지금
pages-from = { $day }부터
pages-too-much = 답이 너무 많은 것에 달려 있어 이 목록에 다 적을 수 없습니다.
pages-next-open = 다음에 여는 날:
pages-all-day = 밤낮 없이
pages-takes-only = 이것만 받음: { $items }
pages-does-not-take = 받지 않음: { $items }
