### ما وجدته المقارنة بين البرامج: التغييرات والإشعار والتقرير الإقليمي والسطور المطبوعة التي لم تعد صحيحة.

## الأجوبة والتغييرات

compare-answer = { $verdict }، { $place }
compare-becomes = { $item }: «{ $before }» يصبح «{ $after }».
compare-stays = { $item }: يبقى «{ $answer }».
compare-new = { $item } جديد في الدليل: «{ $answer }».
compare-gone = { $item } لم يعد في الدليل. كان «{ $answer }».
compare-steps-added = جديد: { $steps }
compare-steps-removed = لم يعد مطلوبا: { $steps }
compare-steps-order = الآن بهذا الترتيب: { $steps }
compare-also = يؤخذ أيضا في: { $places }.
compare-also-none = لم تعد أماكن أخرى تأخذه.
compare-ban-gone = لم يعد القانون يمنع وضعه في أي وعاء.
compare-caution = التحذير الآن: { $hazard }.
compare-caution-gone = لم يعد التحذير قائما: { $hazard }.
compare-reason = السبب المذكور: { $reason }
compare-reason-gone = لم يعد يذكر سبب.
compare-temporary = يقرر ذلك أمر مؤقت.
compare-temporary-over = لم يعد يقرر ذلك أمر مؤقت.

## متى يكون ذلك

compare-when = حين يكون: { $conditions }.
compare-when-many = في حالات أكثر من أن تسرد.
compare-or = { $before }؛ أو { $next }
compare-any-but = أي شيء غير { $values }
compare-day-on = في { $day }
compare-day-from = ابتداء من { $day }
compare-day-until = حتى { $day }
compare-day-between = من { $first } حتى { $last }

## الإشعار

notice-title = تغييرات في دليل الفرز: { $place }
notice-editions = يقارن هذا الإشعار { $before } مع { $after }.
notice-edition = الإصدار { $label }
notice-edition-from = الإصدار { $label } (ابتداء من { $day })
notice-on = كما هو في { $day }.
notice-nothing = لا يتغير أي جواب.
notice-now-accepted = صار مقبولا
notice-no-longer-accepted = لم يعد مقبولا
notice-another-place = يذهب إلى مكان آخر
notice-prepared-differently = يجهز بطريقة أخرى
notice-asked-differently = تسأل أسئلة أخرى
notice-caution-changed = تحذير آخر
notice-explained-differently = يشرح بطريقة أخرى
notice-new-in-guide = جديد في الدليل
notice-gone-from-guide = لم يعد في الدليل
notice-reworded = قيل بكلمات أخرى
# $words is a text of the program.
notice-words-now = «{ $words }»
notice-words-before = قبل ذلك: «{ $words }»
notice-words-of = هو السبب المذكور مع: { $items }.
notice-more = { $count } غيرها
notice-asked-now = صار يتوقف على: { $facts }.
notice-asked-no-longer = لم يعد يتوقف على: { $facts }.
notice-contact = أسئلة؟ { $name }: { $ways }.
notice-unreviewed = لم يراجع إنسان هذه الترجمة.

## السطور المطبوعة

untrue-title = سطور مطبوعة لم تعد صحيحة
untrue-sheet =
    { $copies ->
        [0] الورقة «{ $id }»، الإصدار { $edition }
        [zero] الورقة «{ $id }»، الإصدار { $edition }، { $copies } نسخة
        [one] الورقة «{ $id }»، الإصدار { $edition }، نسخة واحدة ({ $copies })
        [two] الورقة «{ $id }»، الإصدار { $edition }، نسختان ({ $copies })
        [few] الورقة «{ $id }»، الإصدار { $edition }، { $copies } نسخ
        [many] الورقة «{ $id }»، الإصدار { $edition }، { $copies } نسخة
       *[other] الورقة «{ $id }»، الإصدار { $edition }، { $copies } نسخة
    }
untrue-always = «{ $line }» ({ $sheet }): غير صحيح منذ بدء هذا الإصدار.
untrue-from = «{ $line }» ({ $sheet }): غير صحيح ابتداء من { $day }.
untrue-until = «{ $line }» ({ $sheet }): غير صحيح حتى { $day }.
untrue-between = «{ $line }» ({ $sheet }): غير صحيح من { $first } حتى { $last }.
untrue-now = الصحيح الآن: «{ $answer }».
untrue-gone = لم يعد الغرض في الدليل.

## التقرير الإقليمي

regional-title = مقارنة: { $places }
regional-contradictory = نصائح متناقضة
regional-differing =
    { $count ->
        [zero] من يختلف ({ $count } غرض)
        [one] من يختلف (غرض واحد، { $count })
        [two] من يختلف (غرضان، { $count })
        [few] من يختلف ({ $count } أغراض)
        [many] من يختلف ({ $count } غرضا)
       *[other] من يختلف ({ $count } غرض)
    }
regional-agreed = صحيح عند الجميع
regional-says = { $places }: { $answer }
regional-with-steps = { $answer }. { $steps }
regional-unknown = ليس في الدليل
regional-item-when = { $item }. { $when }
regional-more-cases =
    { $count ->
        [zero] لا يختلفون بطريقة أخرى ({ $count }).
        [one] يختلفون بطريقة أخرى ({ $count }) في حالات أخرى.
        [two] يختلفون بطريقتين أخريين ({ $count }) في حالات أخرى.
        [few] يختلفون بـ { $count } طرق أخرى في حالات أخرى.
        [many] يختلفون بـ { $count } طريقة أخرى في حالات أخرى.
       *[other] يختلفون بـ { $count } طريقة أخرى في حالات أخرى.
    }
