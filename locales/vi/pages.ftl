### The guide as plain pages.
# Not yet reviewed by a native speaker.

pages-intro = Mọi thứ có trong hướng dẫn này, kèm câu trả lời. Muốn tìm một món, xin tìm trong trang này: “Tìm trong trang” trên điện thoại, Ctrl+F trên máy tính.
pages-app = Mở hướng dẫn có hỏi và trả lời
pages-places = Những nơi nhận đồ
pages-depends = còn tùy
pages-category-title = { $category } – { $program }
pages-also = Những cách gọi khác
pages-now = Bây giờ
pages-from = Từ { $day }
pages-too-much = Câu trả lời tùy vào quá nhiều điều nên không ghi hết ở đây được.
pages-next-open = Sắp mở cửa:
pages-all-day = cả ngày lẫn đêm
pages-takes-only = Chỉ nhận: { $items }
pages-does-not-take = Không nhận: { $items }
