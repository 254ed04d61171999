### What residents read on their phones. Plain words, short sentences, no jargon.

## Around every screen

page-title = { $program }: ماذا يوضع وأين
skip = انتقل إلى الجزء الرئيسي
back = رجوع
language-label = اللغة
zone-label = منطقتك
zone-none = اختر منطقتك
unreviewed = لم يراجع أحد هذه الترجمة بعد. إذا بدا لك شيء غير صحيح فاقرأه بالإنجليزية.
decided-edition = الدليل: { $edition }
privacy = ما تبحث عنه يبقى في هذا الهاتف. لا يُرسل شيء ولا يُحصى.

## Finding an item

search-label = ما الشيء الذي تريد التخلص منه؟
search-placeholder = مثال: علبة بيتزا
search-count =
    { $count ->
        [0] لم نجد شيئًا
        [zero] لم نجد شيئًا
        [one] وجدنا شيئًا واحدًا ({ $count })
        [two] وجدنا شيئين ({ $count })
        [few] وجدنا { $count } أشياء
        [many] وجدنا { $count } شيئًا
       *[other] وجدنا { $count } شيء
    }
search-nothing = لم نجد شيئًا بهذا الاسم. جرّب كلمة أقصر. ما ليس في القائمة لا يعني دائمًا «لا»: اسألنا.
search-long = النص طويل. بحثنا في أول { $count } حرفًا فقط.
home-recent = ما بحثت عنه مؤخرًا
home-common = الأكثر بحثًا
home-categories = تصفّح حسب النوع

## Questions

cannot-tell = لا أعرف
questions-left =
    { $count ->
        [zero] لا أسئلة أخرى ({ $count })
        [one] سؤال واحد آخر على الأكثر ({ $count })
        [two] سؤالان على الأكثر ({ $count })
        [few] { $count } أسئلة على الأكثر
        [many] { $count } سؤالًا على الأكثر
       *[other] { $count } سؤال على الأكثر
    }
ruler-title = قِسه بهذه الشاشة
ruler-card = ضع بطاقة مصرفية قائمة على الشاشة. حرّك المؤشر حتى يصبح الرسم بعرض البطاقة.
ruler-use = ضع الشيء الآن على المسطرة، وأحد طرفيه عند الصفر.
ruler-cards = { $measure }: عدد البطاقات المصرفية طرفًا إلى طرف: { $count }

## Answers

verdict-yes = نعم
verdict-no = لا
verdict-elsewhere = ليس هنا، له مكان آخر
verdict-unlisted = ليس في القائمة: اسأل
verdict-undecided = لم يتقرر بعد: اسأل
verdict-closed = لا: ليس في القائمة
caution-title = انتبه.
prepare-title = كيف تجهّزه
why-title = لماذا
also-title = يُقبل أيضًا في
temporary-order = تسري الآن قاعدة مؤقتة. قد تتغير قريبًا.
assumed-title = لأنك لم تعرف، أخذنا بالجواب الأكثر حذرًا:
assumed-line = { $fact }: { $value }
ask-contact = اسأل { $name }:
decided-title = أي قاعدة قررت ذلك
decided-rule = القاعدة:
decided-acknowledged = وافق شخص مسؤول معروف بالاسم على هذا الاستثناء من قاعدة سلامة.

## Places to take things to

site-more =
    { $count ->
        [zero] لا أماكن أخرى ({ $count })
        [one] مكان آخر ({ $count })
        [two] مكانان آخران ({ $count })
        [few] { $count } أماكن أخرى
        [many] { $count } مكانًا آخر
       *[other] { $count } مكان آخر
    }
site-locate = ابحث عن أقرب مكان
site-no-position = لم يحدد هذا الهاتف مكانه.
near-label = بلدة أو منطقة أو رمز بريدي
near-find = ابحث هناك
near-found = الأقرب إلى { $place }.
near-unknown = لا يعرف هذا الدليل مكانًا باسم «{ $place }». جرّب اسم بلدة أو منطقتك أو اسم موقع.
site-also-takes = ويستقبل أيضًا: { $items }
site-all-items = كل ما يستقبله
site-booking = احجز موعدًا أولًا.
site-proof = أحضر إثباتًا بأنك تسكن هنا.
site-permit = تحتاج إلى تصريح.
site-voucher = تحتاج إلى قسيمة.
# $container is what residents call it: "blue cart".
container-rules-title = عن الوعاء: { $container }
hours-open = مفتوح الآن
hours-open-until = مفتوح حتى { $time }
hours-closed = مغلق الآن
hours-closed-until = مغلق حتى { $time }
hours-appointment = يفتح بموعد فقط
hours-unknown = أوقات العمل غير معروفة: اتصل أولًا
hours-day-time = { $day }، { $time }

## Without a network

offline-fetching = نحفظ الدليل ليعمل بلا إنترنت…
offline-ready = تم الحفظ. الدليل يعمل بلا إنترنت.
offline-now = أنت غير متصل. الدليل يعمل من هذا الهاتف.
offline-incomplete = أنت غير متصل والدليل لم يُحفظ كله. قد تنقص بعض الأجزاء.
offline-failed = تعذّر حفظ الدليل. يعمل مع الإنترنت فقط. حاول لاحقًا.
offline-impossible = هذا المتصفح لا يستطيع حفظ الدليل. يعمل مع الإنترنت فقط.
update-ready = يوجد دليل أحدث.
update-now = استخدمه الآن
offline-lost = مسح الهاتف الدليل المحفوظ. نحفظه من جديد…
offline-forgetful = هذا المتصفح لا يسمح للدليل بحفظ أي شيء. يعمل مع الإنترنت فقط، وينسى لغتك ومنطقتك.
update-failed = لم يصل الدليل الأحدث كاملًا. هذا الدليل ما زال يعمل، وسيحاول الهاتف من جديد.

## When something is not there

unknown-item = لا يوجد شيء باسم «{ $id }» في هذا الدليل. ابحث عنه باسمه.
unknown-category = لا توجد مجموعة «{ $id }» في هذا الدليل. اختر واحدة من الصفحة الأولى.
unknown-address = لا توجد صفحة «{ $address }». اذهب إلى الصفحة الأولى.
unknown-language = هذا الدليل ليس متاحًا بعد باللغة «{ $language }». اختر لغة أخرى.
language-broken = لم تصل كلمات اللغة «{ $language }» كاملة. تحقق من الاتصال واختر اللغة من جديد.
unknown-zone = لا توجد منطقة باسم «{ $id }» في هذا الدليل. اختر منطقتك أسفل الصفحة.
clock-wrong = يقول هذا الهاتف إن اليوم هو { $date }. لا يمكن أن يكون صحيحًا. لا نعرف ما المفتوح الآن، وقد تكون القواعد التي تتغير مع الموسم خاطئة. اضبط التاريخ.
