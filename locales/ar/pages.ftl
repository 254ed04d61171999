### الدليل في صفحات بسيطة.
# Not yet reviewed by a native speaker.

pages-intro = كل ما في هذا الدليل مع جوابه. للعثور على شيء ابحث في هذه الصفحة: «البحث في الصفحة» على الهاتف، أو Ctrl+F على الحاسوب.
pages-app = افتح الدليل الذي يسأل ويجيب
pages-places = أماكن تؤخذ إليها الأشياء
pages-depends = يتوقف على الحالة
pages-category-title = { $category } – { $program }
pages-also = كلمات أخرى
pages-now = الآن
pages-from = ابتداء من { $day }
pages-too-much = يتوقف الجواب على أمور كثيرة لا تتسع لها هذه القائمة.
pages-next-open = يفتح في هذه الأيام:
pages-all-day = ليلا ونهارا
pages-takes-only = لا يستقبل إلا: { $items }
pages-does-not-take = لا يستقبل: { $items }
