### The coordinator's screens. Short, clear words; trade words where coordinators use them.

## Around every screen

desk-title = مكتب الدليل
desk-title-of = { $program }: مكتب الدليل
navigation = أجزاء البرنامج
undo = تراجع
redo = إعادة
close = إغلاق
tab-files = الملفات
tab-program = البرنامج
tab-streams = المسارات
tab-zones = المناطق
tab-channels = القنوات
tab-sites = المواقع
tab-rules = القواعد
tab-items = الأشياء
tab-texts = النصوص
tab-print = الطباعة
start-problem-unreachable = لم يستجب الخادم. تحقق من الاتصال وأعد تحميل الصفحة.
start-problem-missing = ينقص ملف من هذا التطبيق على الخادم. اطلب ممن نشره أن ينشره من جديد.
start-problem-broken = وصل ملف من هذا التطبيق تالفًا. أعد تحميل الصفحة، فإن بقي كذلك فانشر التطبيق من جديد.
recover-title = حدث خطأ في هذه الصفحة
recover-text = حُفظ برنامجك أثناء عملك. نزّله للاحتياط ثم أعد تحميل الصفحة لتكمل.
recover-nothing = لا يوجد برنامج محفوظ في هذا المتصفح.
recover-reload = أعد التحميل
recover-download = نزّل برنامجي
panels = الملاحظات والتغييرات والتجربة

## Saving. $time is a day with a time

save-nothing = لا شيء مفتوح
save-saved = محفوظ في هذا الجهاز
save-waiting = جارٍ الحفظ…
save-failed = لم يُحفظ
save-again = حاول الحفظ مرة أخرى
save-problem-full = لم تبق مساحة في هذا الجهاز، لذلك لا تُحفظ تغييراتك. صدّر ملف البرنامج الآن ثم أفرغ مساحة.
save-problem-forbidden = هذا المتصفح لا يسمح للصفحة بحفظ شيء، لذلك لا تُحفظ تغييراتك. صدّر ملف البرنامج قبل إغلاق هذه النافذة.
save-problem-newer = حفظت نافذة أخرى هذا البرنامج بعدك. لم تحل نسختك محله.
day-and-time = { $day }، { $time }

## Drafts and files. $name, $copy and $program are names of drafts or files

drafts-title = البرامج في هذا الجهاز
drafts-none = لا يوجد أي برنامج بعد. افتح المثال أو ابدأ برنامجًا جديدًا أو استورد ملفًا.
draft-saved = حُفظ: { $time }
draft-remove-sure = أتريد حذفه فعلًا؟
draft-second-version = { $name } (نسخة ثانية)
draft-diverged = تغيّر «{ $name }» في نافذة أخرى أيضًا. بقيت النسختان: صارت الأخرى «{ $copy }».
open-demo = افتح المثال
open-demo-hint = { "\u200F" }Quillmere County، مكان متخيَّل كل بياناته مكتملة
new-program = برنامج جديد
new-program-hint = ابدأ بقواعد السلامة المدمجة وحدها
import-file = استورد ملف برنامج
import-file-hint = يُفتح إلى جانب برامجك الأخرى ولا يحل محل أي منها
export-file = صدّر ملف البرنامج
export-file-hint = ملف واحد فيه كل شيء، للحفظ أو للمشاركة
import-refused = لا يمكن فتح «{ $name }»
import-unchanged = برامجك باقية كما كانت.
import-original = نزّل الملف كما كان

## Why a program file cannot be read

load-too-large = حجم الملف { $megabytes } ميغابايت، والحد الأقصى { $limit } ميغابايت. تحقق من أنه الملف الصحيح.
load-truncated = ينتهي الملف قبل تمامه عند السطر { $line }. لعله انقطع في الطريق: انسخه أو نزّله من جديد.
load-not-json = لا يمكن قراءة الملف من السطر { $line }، العمود { $column }. إن عُدّل يدويًا فصحح ذلك الموضع، وإلا فصدّره من جديد.
load-other-format = هذا ليس ملف برنامج (مكتوب فيه «{ $found }»). اختر ملفًا صُدّر من هنا.
load-newer = الملف من الإصدار { $found }، وهذا التطبيق يعرف حتى الإصدار { $known }. استعمل نسخة أحدث من التطبيق.
load-shape = القيمة عند «{ $path }» ليست من النوع المتوقع: { $detail }. صححها هناك ثم استورد الملف من جديد.
load-too-deep = شرط في القاعدة «{ $rule }» متداخل أكثر من { $limit } مستويات. قسّمه إلى عدة قواعد.

## Lists and fields in general

list-filter = تصفية
list-add = أضف
list-add-one = أضف واحدًا آخر
list-new-name = اسم الجديد
list-remove = احذف
list-up = انقل إلى أعلى
list-choose = اختر واحدًا من القائمة أو أضف واحدًا.
choice-none = لا شيء
field-month = الشهر
field-day = اليوم
measure-unreadable = لا تُقرأ القيمة “{ $stated }”. اكتب عددًا مع وحدته، مثل { "\u200E" }2 in أو { "\u200E" }1 gal أو { "\u200E" }100 lb.
translations = باللغات الأخرى
field-name = الاسم
field-kind = النوع
field-note = ملاحظة للسكان
field-phone = الهاتف
field-email = البريد الإلكتروني

## The program's own fields

program-basics = هذا البرنامج
field-program-name = اسم الدليل
field-program-id = معرّف قصير للملفات والعناوين
field-edition = الإصدار
field-edition-from = سارٍ من
field-guide-url = عنوان الدليل المنشور
field-source-language = اللغة التي تُكتب بها النصوص أولًا
field-languages = اللغات التي يُنشر بها
program-contact = من يُسأل
field-contact-name = اسم المكتب
field-return-address = عنوان المرسل على البريد
program-silence = عندما لا تذكر أي قاعدة الحالة
field-silence = معنى السكوت
silence-undecided = لم يتقرر بعد (لا يمكن النشر)
silence-ask = قائمة مفتوحة: الجواب «ليس في القائمة، اسأل»
silence-closed = قائمة مغلقة: يُرفض كل ما لم يُذكر
program-unknown = عندما لا يعرف الساكن
program-unknown-hint = ما يؤخذ به بدل المجهول. إن لم يُحدد شيء أُخذ بالقيمة الأحوط.
unknown-add = حدد أمرًا آخر
program-counts-as = ما يُعدّ شيئًا آخر
program-counts-as-hint = تعامل القواعد كلها أحدهما معاملة الآخر: الزجاج المصنفر كالشفاف مثلًا.
counts-as-add = المعلومة
field-these = هذه القيم
field-count-as = تُعدّ كأنها
program-hazards = أين تذهب المواد الخطرة
program-hazards-hint = كل فئة تحتاج إلى قناة تستقبلها بأمان وإلى شخص وافق على ذلك. المواد الخطرة لا توضع أبدًا في حاوية.
field-hazard-channel = تذهب إلى
field-approved-by = وافق عليه
program-plant = مصنع الفرز
field-plant-name = اسم المصنع
field-machine-name = الآلة
field-machine-limit = ما لا تستطيع معالجته
machine-add = أضف آلة
program-print = للأوراق المطبوعة
field-short-url = عنوان قصير بجانب رمز QR
field-indicia = بيان أجرة البريد، سطرًا سطرًا
field-statement = عبارة عن الورق المعاد تدويره أو ما شابه

## Streams and containers

containers-title = الحاويات
container-add = أضف حاوية
container-remove = احذف هذه الحاوية
field-container-name = كيف يسميها السكان
field-colour = اللون
field-capacity = السعة مع وحدتها
field-container-zones = في هذه المناطق فقط
field-container-dwellings = في أنواع المساكن هذه فقط
field-set-out = متى وكيف توضع خارجًا
field-container-rules = قواعد هذه الحاوية
field-container-rules-hint = تسري مهما وُضع فيها، ويراها السكان مع كل جواب يذكرها.
field-container-rule-add = قاعدة عن
field-container-rule = بكلماتك، بدل الجملة المعتادة
field-limit = الحد مع وحدته
field-share = الحد، مثل { "\u200E" }10%
limit-missing = اكتب الحد، أو اكتب القاعدة كلها بكلماتك.
residents-read = يقرأ السكان: { $text }
container-rule-kind-lid-closed = إغلاق الغطاء
container-rule-kind-weight = الوزن عند الامتلاء
container-rule-kind-distance = المسافة الخالية حولها
container-rule-kind-side-waste = أشياء بجانبها أو فوقها
container-rule-kind-share-of-load = مقدار ما لا يناسب من الحمولة
container-rule-kind-liners = تبطينها بكيس
container-rule-kind-sacks = الأكياس التي توزَّع
container-rule-kind-registration = التسجيل المسبق
container-rule-kind-refusals = متى تُترك دون تفريغ
stream-kind-recycling = إعادة تدوير
stream-kind-organics = مخلفات عضوية
stream-kind-refuse = نفايات
stream-kind-glass = زجاج
stream-kind-paper = ورق
stream-kind-film = أغلفة بلاستيكية
container-kind-cart = حاوية بعجلات
container-kind-bin = صندوق قمامة
container-kind-bag = كيس
container-kind-box = صندوق
container-kind-shared-cart = حاوية مشتركة لمبنى
container-kind-dumpster = حاوية كبيرة

## Zones

field-dwelling = نوع المسكن
field-households = عدد المساكن
field-zone-streams = المسارات التي تُجمع هنا
field-centre = وسط المنطقة: خط العرض، خط الطول

## Channels and sites

field-fee = الرسوم، بالكلمات
field-booking = يلزم حجز موعد
field-proof = يلزم إثبات السكن
field-permit = يلزم تصريح
field-voucher = تلزم قسيمة
field-allowance = كم أو كم مرة، بالكلمات
field-vehicles = أي المركبات يُسمح لها، بالكلمات
field-safe-for = تستقبل هذه المواد الخطرة بأمان
channel-sites =
    { $count ->
        [0] لا يستقبله أي موقع بعد.
        [zero] لا يستقبله أي موقع بعد.
        [one] موقعه: { $names }
        [two] موقعاه: { $names }
        [few] مواقعه: { $names }
        [many] مواقعه: { $names }
       *[other] مواقعه: { $names }
    }
channel-kind-drop-off = مركز تسليم
channel-kind-store-take-back = إرجاع إلى المتاجر
channel-kind-hazardous-waste = مركز النفايات المنزلية الخطرة
channel-kind-event = يوم جمع
channel-kind-bulky-pickup = جمع الأشياء الكبيرة
channel-kind-deposit-return = إرجاع مقابل تأمين
channel-kind-mail-back = إرجاع بالبريد
channel-kind-reuse = إعادة استعمال وإصلاح
channel-kind-medicine-take-back = استلام الأدوية
channel-kind-sharps-take-back = استلام الإبر
channel-kind-police = الشرطة
channel-kind-specialist = شركة متخصصة
channel-kind-dealer = الصانع أو البائع
channel-kind-health-office = مكتب الصحة
channel-kind-authority = جهة يُتصل بها
field-site-channels = يستقبل أشياء هذه القنوات
field-accepts = لا يأخذ من أشيائها إلا هذه
field-refuses = لا يأخذ من أشيائها هذه
field-site-vehicles = أي المركبات يُسمح لها هنا إن اختلف عن قنواته
field-address = العنوان
field-position = الموضع: خط العرض، خط الطول
field-hours = أوقات العمل
field-hours-hint = تُكتب كما في الخرائط المفتوحة: { "\u200E" }Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
hours-unreadable = لا يمكن قراءة هذه الأوقات: { $detail }

## Rules and their conditions

field-tier = المستوى
field-verdict = الحكم
rule-adds-steps = لا حكم: تضيف خطوات فقط
field-stream = المسار
field-channel = القناة
field-prepare = خطوات التجهيز بالترتيب
field-reason = السبب
field-machine = الآلة التي تحسم الأمر
field-residents = النص للسكان
field-sorters = النص لعمال الفرز
field-contract = نص العقد
provenance-title = مصدر القرار
field-decided-by = قرره
field-source = المصدر
field-confirmed = آخر تأكيد
field-ask-again = يُسأل مجددًا في
rule-more = التواريخ والاستثناءات والموافقة
field-also = يُقبل أيضًا لدى
field-overrides = تسبق هذه القواعد في مستواها
field-temporary = أمر مؤقت
field-from = من
field-until = إلى
field-season = في جزء من كل سنة فقط
field-season-from = أول يوم في الموسم
field-season-until = آخر يوم في الموسم
season-says = كل سنة من { $from } إلى { $until }
field-banned-from = يمنع القانون وضعه في
acknowledgement-title = استثناء من قاعدة سلامة مدمجة
acknowledgement-hint = لا يسمح به إلا شخص معروف بالاسم مع ذكر السبب. ويظهر تحذيرًا عند كل فحص.
field-acknowledged-by = سمح به
field-acknowledged-on = بتاريخ
field-acknowledged-because = لأن
condition-title = متى
condition-always = دائمًا: لا شرط للقاعدة.
condition-begin = أضف شرطًا
condition-kind = كيف تُحسب الأجزاء
condition-all = كل ما يلي
condition-any = أي مما يلي
condition-not = ليس هذا
condition-fact = المعلومة
condition-is = واحد من
condition-add-fact = أضف معلومة
condition-add-group = أضف مجموعة
condition-remove = احذف هذا الجزء من الشرط
bound-at-least = على الأقل
bound-over = أكثر من
bound-at-most = على الأكثر
bound-under = أقل من
bound-value = القياس مع وحدته
bound-day = اليوم
bound-like = مقارنة من الحياة اليومية
bound-per = يُحسب

## Items. $item is an item's name

items-all = الكل
items-answer = الجواب
items-asks = يطرح سؤالًا
items-ask = جرّب
items-ask-name = جرّب: { $item }
items-rule = اذهب إلى القاعدة
items-decide = قرّر
items-decide-name = قرّر: { $item }
items-count =
    { $count ->
        [zero] لا أشياء ({ $count })
        [one] شيء واحد ({ $count })
        [two] شيئان ({ $count })
        [few] { $count } أشياء
        [many] { $count } شيئًا
       *[other] { $count } شيء
    }

## Texts and their translations

texts-language = اللغة
texts-state = الحالة
text-state-missing = ناقص
text-state-unreviewed = غير مراجَع
text-state-reviewed = مراجَع
text-state-outdated = قديم
# $whose is a thing's name or the name of a screen, $what one of its fields.
text-step = خطوة تجهيز
text-label = { $whose }: { $what }
texts-reviewer = اسمك، للتوقيع بالموافقة
texts-reviewer-needed = اكتب اسمك أولًا: كل مراجعة تُوقّع.
texts-sign-off = راجعتُ هذا
texts-count = رُوجع { $done } من { $all }
review-title = حالة كل لغة
review-screens = كلمات الشاشات: { $state }
review-source = اللغة التي تُترجم منها اللغات الأخرى
review-by = راجعها { $name } في { $date }
review-outdated = راجعها { $name } في { $date }، لكن النص الإنجليزي تغير بعدها
review-texts = نصوصك: رُوجع { $done } من { $all }
review-names = بتوقيع { $names }

## What changed, and trying the guide

ask-title = اسأل كأحد السكان
changes-title = ما الذي غيّرته تعديلاتك
changes-count =
    { $count ->
        [0] لم يتغير أي جواب.
        [zero] لم يتغير أي جواب.
        [one] تغيّر جواب واحد ({ $count }).
        [two] تغيّر جوابان ({ $count }).
        [few] تغيّرت { $count } أجوبة.
        [many] تغيّر { $count } جوابًا.
       *[other] تغيّر { $count } جواب.
    }
changes-absent = ليس في الدليل
changes-details = المكان هو نفسه، لكن طريقة التجهيز أو السبب تغيّرا.
changes-mark = قارن من الآن فصاعدًا

## Findings. $item is an item's name, $answers a list such as "Wet: dry"

findings-title = الملاحظات
findings-count = أخطاء: { $errors } · تحذيرات: { $warnings } · تنبيهات: { $notices }
findings-more =
    { $count ->
        [zero] ولا غيرها ({ $count })
        [one] وواحد آخر ({ $count })
        [two] واثنان آخران ({ $count })
        [few] و{ $count } أخرى
        [many] و{ $count } أخرى
       *[other] و{ $count } أخرى
    }
severity-error = خطأ
severity-warning = تحذير
severity-notice = تنبيه
severity-pass = سليم
witness = مثلًا: { $item }، عندما { $answers }
witness-item = مثلًا: { $item }

## What a finding says, and below it what to do. Values are ids and texts of the program

finding-uncovered-case = لا تحسم أي قاعدة هذه الحالة.
    .hint = اكتب قاعدة لها، أو حدد في شاشة البرنامج معنى السكوت.
finding-conflicting-rules = قواعد في مستوى واحد ترسل الشيء نفسه إلى أماكن مختلفة: { $rules }.
    .hint = غيّر شرط إحداهما، أو اجعل إحداهما تسبق الأخرى.
finding-hazard-not-safe =
    { $problem ->
        [no-channel] ليس للخطر «{ $class }» قناة.
        [unknown-channel] الخطر «{ $class }» يذهب إلى قناة غير موجودة.
        [channel-does-not-take-it] الخطر «{ $class }» يذهب إلى قناة غير محددة بأنها آمنة له.
       *[rule] القاعدة «{ $id }» ترسل الخطر «{ $class }» إلى مكان غير آمن له.
    }
    .hint = اختر قناة تستقبله بأمان. المواد الخطرة لا توضع أبدًا في حاوية.
finding-hazard-acknowledged = سمح { $by } باستثناء من قاعدة سلامة مدمجة: «{ $id }».
    .hint = تحقق من أن القانون المحلي والموقع يسمحان به وأن السبب ما زال قائمًا.
finding-rule-never-applies = القاعدة «{ $id }» لا تحسم شيئًا أبدًا.
    .hint = قواعد تسبقها تحسم كل حالاتها، أو لا ينطبق شرطها على شيء. غيّرها أو احذفها.
finding-not-listed = بعض حالات هذا الشيء جوابها «ليس في القائمة، اسأل».
    .hint = هذا مسموح. اكتب قاعدة إن كنت تعرف الجواب.
finding-missing-provenance = لا يظهر مصدر قرار القاعدة «{ $id }». الناقص: { $missing }.
    .hint = اذكر من قرره ومن أي مصدر ومتى أُكد آخر مرة مع المصنع.
finding-missing-translation =
    { $state ->
        [unreviewed] نصوص بلغة «{ $language }» لم يراجعها أحد: { $count }. أولها «{ $first }».
        [outdated] نصوص بلغة «{ $language }» تغيّر أصلها بعد ذلك: { $count }. أولها «{ $first }».
       *[missing] نصوص ناقصة بلغة «{ $language }»: { $count }. أولها «{ $first }».
    }
    .hint = افتح شاشة النصوص وصفِّ حسب اللغة والحالة.
finding-broken-condition =
    { $problem ->
        [unknown-fact] لا توجد معلومة باسم «{ $fact }».
        [no-values] المعلومة «{ $fact }» لا تُقارن بشيء.
        [no-number] «{ $value }» في «{ $fact }» بلا رقم.
        [no-unit] «{ $value }» في «{ $fact }» بلا وحدة.
        [unknown-unit] وحدة «{ $value }» في «{ $fact }» غير معروفة.
        [wrong-dimension] «{ $value }» لا يقيس «{ $fact }».
        [negative] «{ $value }» في «{ $fact }» أقل من الصفر.
        [too-large] «{ $value }» في «{ $fact }» أكبر من أن يكون صحيحًا.
        [unknown-part] لا يوجد جزء باسم «{ $value }».
        [range-reversed] المدى «{ $value }» في «{ $fact }» معكوس.
       *[unknown-value] «{ $value }» ليست من قيم «{ $fact }».
    }
    .hint = اختر من القائمة. اكتب القياس مع وحدته، مثل 2 in أو 1 gal أو 10 lb.
finding-broken-item =
    { $problem ->
        [unknown-fact] لا توجد معلومة باسم «{ $fact }».
        [no-values] المعلومة «{ $fact }» لا تُقارن بشيء.
        [no-number] «{ $value }» في «{ $fact }» بلا رقم.
        [no-unit] «{ $value }» في «{ $fact }» بلا وحدة.
        [unknown-unit] وحدة «{ $value }» في «{ $fact }» غير معروفة.
        [wrong-dimension] «{ $value }» لا يقيس «{ $fact }».
        [negative] «{ $value }» في «{ $fact }» أقل من الصفر.
        [too-large] «{ $value }» في «{ $fact }» أكبر من أن يكون صحيحًا.
        [unknown-part] لا يوجد جزء باسم «{ $value }».
        [no-such-sides] الأضلاع المذكورة لا تترك حجما ممكنا: يجب أن يكون الأطول هو الأطول.
        [no-range] مدى «{ $fact }» بلا بداية أو بلا نهاية.
        [range-reversed] المدى «{ $value }» في «{ $fact }» معكوس.
       *[unknown-value] «{ $value }» ليست من قيم «{ $fact }».
    }
    .hint = اختر من القائمة. اكتب القياس مع وحدته، مثل 2 in أو 1 gal أو 10 lb.
finding-broken-reference =
    { $kind ->
        [stream] المسار «{ $target }» غير موجود.
        [channel] القناة «{ $target }» غير موجودة.
        [zone] المنطقة «{ $target }» غير موجودة.
        [step] خطوة التجهيز «{ $target }» غير موجودة.
        [reason] السبب «{ $target }» غير موجود.
        [machine] الآلة «{ $target }» غير موجودة.
        [item] الشيء «{ $target }» غير موجود.
        [rule-of-tier] القاعدة «{ $target }» من مستوى آخر فلا يمكن أن تُسبق.
       *[rule] «{ $target }» غير موجود.
    }
    .hint = اختر غيره أو أضف الناقص. الاسم الفارغ يعني أنه لم يُختر شيء بعد.
finding-circular-override = هذه القواعد يسبق بعضها بعضًا في دائرة: { $rules }.
    .hint = احذف واحدة منها من قائمة «تسبق».
finding-destination-not-offered = ترسل القاعدة «{ $id }» أشياء إلى المسار «{ $stream }» وهو لا يُجمع في المنطقة «{ $zone }».
    .hint = أضف المسار إلى المنطقة أو اكتب قاعدة أخرى لتلك المنطقة.
finding-duplicate-id =
    { $times ->
        [0] شيء هنا بلا معرّف.
        [zero] شيء هنا بلا معرّف.
        [one] استُعمل المعرّف «{ $id }» مرة واحدة ({ $times }).
        [two] استُعمل المعرّف «{ $id }» مرتين ({ $times }).
        [few] استُعمل المعرّف «{ $id }» { $times } مرات.
        [many] استُعمل المعرّف «{ $id }» { $times } مرة.
       *[other] استُعمل المعرّف «{ $id }» { $times } مرة.
    }
    .hint = أعط كل واحد معرّفًا خاصًا. تعتمد عليه الروابط والملصقات والترجمات.
finding-printed-line-untrue =
    { $span ->
        [from] السطر المطبوع «{ $line }» غير صحيح ابتداء من { $since }.
        [until] السطر المطبوع «{ $line }» غير صحيح حتى { $until }.
        [between] السطر المطبوع «{ $line }» غير صحيح من { $since } حتى { $until }.
       *[always] السطر المطبوع «{ $line }» غير صحيح في هذا الإصدار.
    }
    .hint = اطبع الورقة من جديد أو غط السطر. وإن لم تعد الورقة مستعملة فاكتب اليوم الذي سحبت فيه.
finding-suspicious-text =
    { $problem ->
        [markup] النص «{ $key }» ({ $language }) فيه رموز تنسيق: { $shown }
        [direction] النص «{ $key }» ({ $language }) فيه حرف يقلب اتجاه الكتابة: { $shown }
       *[control] النص «{ $key }» ({ $language }) فيه حرف غير مرئي: { $shown }
    }
    .hint = النصوص بلا تنسيق. احذفه واكتب الكلمات من جديد.
finding-too-complex = المعلومات المفتوحة عن هذا الشيء كثيرة فلا يمكن فحص كل حالاته (عددها: { $count }).
    .hint = ثبّت بعض معلوماته أو قسّمه إلى عدة أشياء.
finding-too-many-thresholds = تذكر القواعد حدودا كثيرة فلا يمكن فحص كل حالات بعض الأشياء (عددها: { $count }). أكثرها لـ «{ $fact }»: { $thresholds }.
    .hint = اجعل القواعد تشترك في الحدود، واحذف القواعد التي انتهت أيامها.
finding-unreadable-hours = لا يمكن قراءة أوقات العمل «{ $hours }»: { $problem }
    .hint = اكتبها هكذا: { "\u200E" }Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
finding-unusable-setting = لا يمكن استعمال «{ $value }» هنا.
    .hint = اختر قيمة من القائمة أو صححها: يُكتب اللون هكذا #2a7f4f، والموضع بخط العرض وخط الطول، والعنوان يبدأ بـ https://

## المقارنة مع ملف

compare-file-title = قارن مع ملف آخر
compare-file = اختر إصدارا سابقا أو برنامج بلدة مجاورة
compare-file-name = قورن مع «{ $name }».
compare-newer = الملف هو الأحدث بين الاثنين
compare-notice = إشعار بما يتغير
compare-copy = انسخ الإشعار
compare-copied = نسخ.
compare-not-copied = لم يسمح المتصفح بالنسخ. حدد النص وانسخه.
compare-download = نزل الإشعار

## سجل الأوراق المطبوعة

printed-title = ما تمت طباعته
printed-copies = عدد النسخ
printed-note = سجلها مطبوعة
printed-entry =
    { $copies ->
        [0] { $id }، { $day }
        [zero] { $id }، { $day }، { $copies } نسخة
        [one] { $id }، { $day }، نسخة واحدة ({ $copies })
        [two] { $id }، { $day }، نسختان ({ $copies })
        [few] { $id }، { $day }، { $copies } نسخ
        [many] { $id }، { $day }، { $copies } نسخة
       *[other] { $id }، { $day }، { $copies } نسخة
    }
printed-withdrawn = سحبت في { $day }
printed-withdraw = لم تعد مستعملة
printed-still-out = ما زالت مستعملة
finding-question-never-matters =
    { $problem ->
        [unknown] حُدد ما يُحتسب حين لا تُعرف المعلومة «{ $fact }»، لكن لا يحتاج إليها أي جواب.
       *[open] يترك هذا الشيء المعلومة «{ $fact }» مفتوحة، لكن لا يتوقف عليها أي جواب عنه.
    }
    .hint = لا يُسأل أحد عنها. اتركها أو اكتب القاعدة التي تحتاج إليها.
finding-steps-contradict = جواب واحد يطلب «{ $one }» و«{ $other }» ولا يمكن فعلهما معًا. القواعد: { $rules }.
    .hint = احذف إحدى الخطوتين من قاعدتها، أو غيّر شرطًا حتى تسري قاعدة واحدة منهما.
finding-preparation-contradicts =
    { $problem ->
        [none] من يتبع الخطوة «{ $step }» في القاعدة «{ $id }» يجعل «{ $fact }» تساوي «{ $value }»، وعندها لا ترسله أي قاعدة إلى هناك.
       *[rule] من يتبع الخطوة «{ $step }» في القاعدة «{ $id }» يجعل «{ $fact }» تساوي «{ $value }»، وعندها ترسله القاعدة «{ $other }» إلى مكان آخر.
    }
    .hint = احذف الخطوة من القاعدة، أو اجعل القاعدة تسري أيضًا على ما تتركه الخطوة.
finding-site-never-used =
    { $problem ->
        [item] قيل إن الموقع «{ $id }» يستقبل «{ $item }»، وهو لا يُرسل أبدًا إلى قناة من قنوات هذا الموقع.
       *[site] لا يُرسل أي شيء إلى الموقع «{ $id }».
    }
    .hint = اكتب قاعدة ترسل شيئًا إلى إحدى قنواته، أو أعطه قناة أخرى، أو احذفه من القائمة.
finding-no-site-takes =
    { $problem ->
        [refused] يُرسل «{ $item }» إلى القناة «{ $id }»، لكن لا يستقبله أي موقع من مواقعها.
       *[none] تُرسل أشياء مثل «{ $item }» إلى القناة «{ $id }»، وليس لها موقع يُذهب إليه.
    }
    .hint = أضف موقعًا، أو اجعل أحد المواقع يستقبله، أو أرسله إلى قناة أخرى.
finding-item-without-name = ليس للشيء «{ $id }» اسم يُعرض. اللغات التي ينقصها الاسم: { $languages }.
    .hint = أدخل اسمه باللغة التي كُتب بها البرنامج.
finding-name-twice = الشيئان «{ $id }» و«{ $other }» اسمهما معًا «{ $name }» بلغة «{ $language }».
    .hint = أعط أحدهما اسمًا يميزه. السكان يختارون بالاسم.
finding-banned-destination = يُرسل «{ $item }» إلى المسار «{ $stream }» والقانون يحظره فيه. القواعد: { $rules }.
    .hint = أرسله إلى مسار آخر أو قناة أخرى، أو صحح الحظر حيث ذُكر.
finding-impossible-condition =
    { $problem ->
        [fact] لا يمكن أن يتحقق شرط القاعدة «{ $id }»: ما يطلبه من «{ $fact }» ينفي بعضه بعضًا.
       *[parts] لا يمكن أن يتحقق شرط القاعدة «{ $id }»: أجزاؤه ينفي بعضها بعضًا.
    }
    .hint = صحح أحد الأجزاء أو احذفه. وإن كان يكفي أي منها فاستعمل «أي من هذه».
finding-empty-condition =
    { $problem ->
        [any] في شرط القاعدة «{ $id }» مجموعة فارغة «أي من هذه»، وهي لا تتحقق أبدًا.
       *[all] في شرط القاعدة «{ $id }» مجموعة فارغة «كل هذه»، وهي تتحقق دائمًا.
    }
    .hint = أضف ما يلزم إلى المجموعة أو احذفها.
finding-rule-without-condition = ليس للقاعدة «{ $id }» شرط: فهي تقرر كل ما لم تقرره مرتبة قبلها.
    .hint = اكتب متى تنطبق. إن كانت لكل ما بقي فضعها في المرتبة «default».
finding-text-missing-register =
    { $register ->
        [contract] قواعد بلا نص العقد: { $count }. أولها «{ $first }».
        [sorters] قواعد بلا نص للعاملين في الفرز: { $count }. أولها «{ $first }».
       *[residents] قواعد بلا نص أو سبب للسكان: { $count }. أولها «{ $first }».
    }
    .hint = أدخلها في شاشة القاعدة حتى تقول النصوص الثلاثة الشيء نفسه.
finding-unused-thing =
    { $kind ->
        [stream] لا ترسل أي قاعدة شيئًا إلى المسار «{ $id }».
        [channel] لا تذهب إلى القناة «{ $id }» أي قاعدة ولا أي خطر.
        [step] لا تطلب أي قاعدة الخطوة «{ $id }».
        [zone] لا يختلف شيء في المنطقة «{ $id }»: لا تذكرها قاعدة ولا حاوية ولا مسار.
       *[machine] لا تذكر أي قاعدة الآلة «{ $id }».
    }
    .hint = اتركه إن كنت ستحتاج إليه، وإلا فاحذفه.
finding-counts-as-broken =
    { $problem ->
        [unknown-fact] لا توجد معلومة باسم «{ $fact }» حتى تُحتسب قيمها كغيرها.
        [unlisted-fact] ليس للمعلومة «{ $fact }» قائمة قيم، فلا تُحتسب قيمة منها كأخرى.
        [unknown-value] «{ $value }» ليست من قيم «{ $fact }».
        [danger] «{ $fact }» خطر: لا تُحتسب أي قيمة منه كأخرى أبدًا.
        [nothing] لم يُذكر ما يُحتسب «{ $value }» في «{ $fact }».
        [itself] «{ $value }» في «{ $fact }» تُحتسب كنفسها.
        [twice] «{ $value }» في «{ $fact }» تُحتسب كقيمتين مختلفتين.
        [circle] قيم في «{ $fact }» يُحتسب بعضها كبعض في دائرة، ومنها «{ $value }».
       *[chain] «{ $value }» في «{ $fact }» تُحتسب هي نفسها كقيمة أخرى، فلا يُحتسب شيء مثلها.
    }
    .hint = اختر القيم من القائمة. كل قيمة تُحتسب كقيمة واحدة أخرى لا تُحتسب إلا كنفسها.
finding-season-broken =
    { $problem ->
        [reversed] آخر يوم في القاعدة «{ $id }» قبل أول يوم: { $value }.
       *[not-a-year-day] «{ $value }» ليس يومًا من أيام السنة، فلا يمكن قراءة موسم القاعدة «{ $id }».
    }
    .hint = اكتب الشهر واليوم، مثل 11-01. قد يمتد الموسم إلى السنة الجديدة، أما أول يوم وآخر يوم مع السنة فلا.
finding-container-rule-broken =
    { $problem ->
        [unknown-kind] «{ $value }» ليس نوعًا من قواعد الحاوية «{ $id }».
        [twice] للحاوية «{ $id }» قاعدتان من النوع «{ $value }».
        [limit] لا يمكن قراءة الحد «{ $value }» للحاوية «{ $id }».
       *[unknown-dwelling] «{ $value }» ليس نوعًا من المساكن، فلا تُستعمل الحاوية «{ $id }» في أي منها.
    }
    .hint = اختر من القائمة، أو اجمع النصين في قاعدة واحدة، أو اكتب الحد مع وحدته: { "\u200E" }100 lb أو 3 ft أو 10%.
finding-comparison-broken =
    { $problem ->
        [unknown-like] لا يوجد شيء مألوف باسم «{ $value }» تُشبَّه به «{ $fact }».
        [other-dimension] «{ $value }» لا يقول شيئًا عن «{ $fact }»: فهو لقياس من نوع آخر.
        [far] «{ $value }» أكبر أو أصغر بأكثر من الضعف من القياس المذكور في «{ $fact }».
       *[unknown-period] لا تُعد «{ $fact }» لكل «{ $value }».
    }
    .hint = اختر واحدًا من القائمة أو اترك التشبيه.

## طرق إصلاح ما وُجد

fix-replace = ضع «{ $with }» مكان «{ $value }»
fix-choose = اختر «{ $with }»
fix-remove = احذف «{ $value }»
fix-replace-fact = قارن «{ $with }» بدل «{ $fact }»
fix-replace-value = ضع «{ $with }» مكان «{ $value }»
fix-remove-value = احذف «{ $value }» من الشرط
fix-replace-item-fact = ضع المعلومة «{ $with }» مكان «{ $fact }»
fix-remove-rule = احذف القاعدة «{ $rule }»
fix-go-before = اجعل «{ $rule }» تسبق { $over }
fix-not-before = لا تجعل «{ $rule }» تسبق «{ $over }» بعد الآن
fix-silence-undecided = اترك معنى السكوت بلا قرار
fix-silence-ask = قائمة مفتوحة: أجب عما لا تذكره أي قاعدة بعبارة «ليس في القائمة، اسأل»
fix-silence-closed = قائمة مغلقة: ارفض ما لا تذكره أي قاعدة
fix-answer-yes = مسودة قاعدة: «{ $item }» يذهب إلى «{ $stream }»
fix-answer-no = مسودة قاعدة: «{ $item }» لا يُقبل ويذهب إلى «{ $stream }»
fix-route = أرسل الخطر «{ $class }» إلى القناة «{ $channel }»
fix-send-to = أرسل ما تتناوله القاعدة «{ $rule }» إلى القناة «{ $channel }»
fix-collect = اجمع «{ $stream }» في المنطقة «{ $zone }» أيضًا
fix-except-zone = اجعل القاعدة «{ $rule }» لا تسري في المنطقة «{ $zone }»
fix-own-ids = أعط معرّفات جديدة: { $with }
fix-remove-twins = احذف النسخ المتطابقة في كل شيء
fix-swap-dates = بدّل بين أول يوم وآخر يوم
fix-drop-from = احذف أول يوم
fix-drop-until = احذف آخر يوم
fix-drop-season = احذف الموسم
fix-swap-position = بدّل بين خط العرض وخط الطول
fix-add-language = انشر بلغة «{ $language }» أيضًا
fix-remove-empty = احذف المجموعات الفارغة
fix-remove-unused = احذف «{ $id }»
fix-drop-counting = لا تحتسب شيئًا «{ $value }» في «{ $fact }»
fix-clean-text = احذفه من النص
mend-title = طرق إصلاحه
mend-done = تم: { $fix }. يمكنك التراجع عنه.
mend-gone = لم يتغير شيء: لم يعد البرنامج كما كان حين عُرض هذا.
