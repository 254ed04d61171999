### The print screen and what the check before printing (preflight) says.

## The print screen

print-sheet = الورقة
print-zone = لمنطقة واحدة فقط
print-language = اللغة { $number }
print-make = أنشئ الورقة
print-making = جارٍ إنشاء الورقة…
print-done = الورقة جاهزة.
print-refused = لم يُنشأ أي ملف. صحح الأخطاء أدناه وحاول مرة أخرى.
print-unreachable = تعذّر جلب جزء الطباعة. تحقق من الاتصال وحاول مرة أخرى.
print-download = نزّل ملف PDF للمطبعة
print-download-web = نزّل ملف PDF للويب
print-web-hint = ملف المطبعة لمن يطبع. وملف الويب للقراءة على الشاشة وبصوت مسموع.
print-profile = ملف ألوان المطبعة بامتداد icc
print-profile-hint = إن لم يوجد استُعمل الملف المرفق للورق المصقول.
print-ink-limit = أقصى حبر بالمئة
print-mark = رقمه على الورقة { $number }
print-contradictions = أسطر متناقضة: { $count }. انظرها أدناه قبل الطباعة.
print-page = صفحة { $number }
print-no-stream = لا يوجد مسار «{ $stream }». اختر واحدًا من القائمة.
print-no-zone = لا توجد منطقة «{ $zone }». اختر واحدة من القائمة.
print-no-language = اختر من لغة إلى أربع من لغات البرنامج.
print-shortened = { $item }: سطره وحده صحيح في { $percent } من الحالات، وحُذف الباقي ليتسع المكان.
print-left-out = لم يتسع المكان لما يلي: { $items }.
print-hazards-in-brief = لم يتسع المكان لذكر الأماكن التي تستقبل المواد الخطرة؛ الرمز ورقم الهاتف على الورقة يدلان عليها.
print-refused-in-brief = لم يتسع المكان لذكر وجهة ما لا يوضع هنا؛ الرمز ورقم الهاتف على الورقة يدلان عليها.
preflight-title = الفحص قبل الطباعة

## Preflight: what was checked and is right. Sizes are in mm, type in points

preflight-bleed-and-safe-area = هامش القص { $bleed } مم من كل جهة، ولا شيء على بعد أقل من { $safe } مم من الحافة.
preflight-boxes = المقاس النهائي { $finished } مم، ومع هامش القص { $bleed } مم، والصفحة بعلاماتها { $page } مم.
preflight-contrast = الكلمات واضحة على خلفياتها: التباين لا يقل عن { $ratio } إلى 1، والفرق لا يقل عن { $difference }٪ من الأسود.
preflight-fonts-embedded = كل الخطوط داخل الملف، مقتصرة على الأشكال المستعملة وعددها { $glyphs }: { $fonts }.
preflight-pictures-have-words = صور لها كلمات لمن لا يراها: { $count }.
preflight-hazards-shown = المواد الخطرة المعروضة: { $count }.
preflight-ink-coverage = أكثر حبر في موضع واحد: { $coverage }٪، والحد { $limit }٪.
preflight-postal-zones = المناطق الفارغة في جهة العنوان خالية.
preflight-qr-code = رمز QR: الإصدار { $version }، المستوى { $level }، الوحدة { $module } مم، والمنطقة الفارغة { $quiet } وحدات.
preflight-type-sizes = حجم الخط { $body } نقطة وأصغره { $smallest }، ولمسافة قراءة { $distance } مم يلزم { $floor } نقطة على الأقل.

## Preflight: somebody should look before it goes to the print shop

preflight-translation-outdated = «{ $text }» ({ $lang }): تغيّر الأصل بعد ترجمته. ترجمه من جديد قبل الطباعة.
preflight-line-often-wrong = «{ $text }» وحده صحيح في { $percent }٪ فقط من الحالات. زد عليه أو احذف السطر.
preflight-lines-contradict = «{ $text }» و«{ $other }» ({ $lang }) متناقضان: من يقرأ الأول يظنه يشمل الاثنين. غيّر كلمات أحدهما.
preflight-picture-without-words = لا كلمات هنا لمن لا يستطيع أن يرى ({ $what }). اكتبها.
preflight-translation-unreviewed = لم يراجع أحد النصوص بلغة «{ $lang }». اطلب قراءتها قبل الطباعة.
preflight-postal-field-missing = { $field }: فارغ. املأه أو دع المطبعة تضيفه.
preflight-qr-dense = رمز QR دقيق التفاصيل (الإصدار { $version }، { $characters } حرفًا). العنوان الأقصر أسهل قراءة.

## Preflight: errors. No file is made until they are put right. $place and $what say where

preflight-address-invalid = عنوان رمز QR غير صالح: «{ $address }». اكتبه كاملًا مبتدئًا بـ https://
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: في «{ $text }» حرف يقلب اتجاه الكتابة ({ $codepoint }، الموضع { $position }). احذفه واكتب الكلمات من جديد.
        [control] { $place }: في «{ $text }» حرف تحكم ({ $codepoint }، الموضع { $position }). احذفه واكتب الكلمات من جديد.
       *[invisible] { $place }: في «{ $text }» حرف غير مرئي ({ $codepoint }، الموضع { $position }). احذفه واكتب الكلمات من جديد.
    }
preflight-boxes-wrong = المقاسات لا يقع بعضها داخل بعض: النهائي { $finished } مم، ومع هامش القص { $bleed } مم، والصفحة { $page } مم. اختر ورقة أخرى.
preflight-contrast-low = «{ $text }» لا يكاد يظهر على خلفيته: التباين { $ratio } إلى 1 ويلزم { $least } على الأقل، والفرق { $difference }٪ من الأسود ويلزم { $apart }٪ على الأقل. اختر أحبارًا أخرى.
preflight-ink-limit-invalid = «{ $limit }» ليس حدًا للحبر. أدخل مجموع الألواح الأربعة الذي تذكره المطبعة، من 100 إلى 400٪.
preflight-qr-not-quiet = ليس حول رمز QR فراغ من الورق بعرض { $quiet } وحدات. انقل ما هناك.
preflight-date-invalid = «{ $date }» ليس تاريخًا. اكتب السنة والشهر واليوم: { "\u200E" }2027-01-31
preflight-distance-invalid = «{ $distance }» ليست مسافة قراءة بالمليمتر. أدخل بُعد القارئ.
preflight-font-not-embeddable = الخط «{ $family }» لا يُسمح بتضمينه في الملفات. اختر خطًا آخر.
preflight-font-unreadable = لا يمكن قراءة ملف الخط «{ $family }». اجلبه من جديد.
preflight-hazard-accepted = { $place }: «{ $text }» مادة خطرة بين المقبول. المواد الخطرة لا توضع أبدًا في حاوية: صحح القاعدة.
preflight-hazard-missing = الخطر «{ $text }» ناقص في الورقة بلغة «{ $lang }». لا تُحذف المواد الخطرة لتوفير المساحة.
preflight-language-count = تتسع الورقة من لغة إلى أربع، لا { $count }.
preflight-language-invalid = «{ $lang }» ليس رمز لغة. اكتب مثل es أو es-US.
preflight-language-twice = اللغة «{ $lang }» مكررة. احذف واحدة.
preflight-languages-differ =
    { $what ->
        [sections] «{ $lang }» لا يقول ما يقوله «{ $first }»: عدد أقسامه { $theirs } لا { $ours }. ترجم الناقص.
        [verdict] «{ $lang }» لا يقول ما يقوله «{ $first }»: في القسم { $section } جواب آخر. صححه.
        [lines] «{ $lang }» لا يقول ما يقوله «{ $first }»: عدد أسطر القسم { $section } هو { $theirs } لا { $ours }. ترجم الناقص.
       *[picture] «{ $lang }» لا يقول ما يقوله «{ $first }»: في السطر { $line } من القسم { $section } صورة أخرى أو علامة خطر أخرى. صححه.
    }
preflight-missing-glyph = { $place }: لا خط هنا فيه { $characters } المستعمل في «{ $text }». اكتبه من دونه أو أضف خطًا يحتويه.
preflight-nothing-to-say = لا شيء للطباعة: البرنامج لا يقول شيئًا عن هذا المسار. اكتب قواعده أولًا.
preflight-outside-safe-area = على بعد أقل من { $safe } مم من الحافة وقد يُقص: { $what }
preflight-pictogram-unknown = { $place }: لا توجد صورة «{ $pictogram }». اختر غيرها.
preflight-picture-too-small = عرض إحدى الصور { $side } مم فقط. اطبع أسطرًا أو لغات أقل.
preflight-postal-field-full = { $field }: «{ $text }» (السطر { $line }) لا يتسع. اختصره.
preflight-postal-zone = في منطقة محجوزة للبريد ({ $zone }): { $what }. انقله أو اختصره.
preflight-profile-unusable =
    { $why ->
        [not-icc] هذا الملف ليس ملف ألوان. استعمل ملف الإخراج CMYK بامتداد icc الذي تذكره المطبعة.
        [cut-short] ملف الألوان ناقص. اطلب من المطبعة إرساله من جديد.
        [no-tables] ملف الألوان «{ $name }» بلا جداول ألوان. استعمل ملف الإخراج CMYK الذي تذكره المطبعة.
       *[other-kind] ملف الألوان «{ $name }» ليس ملف إخراج CMYK: هو لأجل { $class } وألوانه { $space }. استعمل ما تذكره المطبعة.
    }
preflight-qr-too-fine = رمز QR أدق من أن يُقرأ: وحدته { $module } مم. اختصر العنوان.
preflight-qr-too-long = في العنوان { $characters } حرفًا، أكثر مما يتسع له رمز QR. اختصره.
preflight-rule-too-thin = سُمك أحد الخطوط { $width } نقطة، وأرفع ما يُطبع { $least } نقطة.
preflight-text-empty = { $place }: بلا كلمات. اكتب شيئًا.
preflight-step-invalid = الخطوة { $number } مما يمكن حذفه غير ممكنة. التفاصيل بالإنجليزية: { $why }.
preflight-text-overlaps = «{ $text }» و«{ $other }» متراكبان. اختصر أحدهما.
preflight-text-too-long = { $place }: «{ $text }» لا يتسع حتى بحجم { $floor } نقطة، وهو أصغر ما يُقرأ. اختصره بنحو { $cut } حرفًا.
preflight-too-many-lines = في الورقة «{ $sheet }» { $lines } سطرًا بعدد لغات { $languages }، وينقصها { $missing } مم بحجم { $floor } نقطة. احذف أسطرًا أو اطبع لغات أقل.
preflight-too-much-ink = الحبر في موضع واحد { $coverage }٪ والحد { $limit }٪. اختر لونًا أفتح.
preflight-type-too-small = «{ $text }» بحجم { $size } نقطة، ويلزم { $least } نقطة على الأقل. اختصر النصوص.
preflight-word-too-wide = { $place }: الكلمة «{ $word }» في «{ $text }» أعرض من عمودها بحجم { $floor } نقطة. استعمل كلمة لا تزيد على نحو { $room } حرفًا.

## What preflight calls a sheet's texts, the post's zones and what is drawn. $lang is a language's name

sheet-text-title = العنوان ({ $lang })
sheet-text-heading = رأس القسم { $section } ({ $lang })
sheet-text-line = السطر { $line } من القسم { $section } ({ $lang })
sheet-text-scan = الجملة بجانب رمز QR ({ $lang })
sheet-text-foot = السطر { $line } في أسفل الورقة ({ $lang })
sheet-text-issuer = من يصدر الورقة
sheet-text-short-address = عنوان الويب القصير
sheet-text-notice = ملاحظة الطباعة
sheet-text-edition = الطبعة
sheet-text-job-name = اسم العمل
sheet-text-slug = السطر خارج الورقة
sheet-text-stock = الورق
# $line may be empty.
sheet-text-return-address = عنوان المرسل { $line }
sheet-text-indicia = علامة أجرة البريد { $line }
sheet-text-addressee = عنوان المرسل إليه { $line }
postal-zone-barcode-clear = الشريط الأبيض لرمز البريد
postal-zone-read-area = حيث تقرأ آلات البريد العنوان
drawn-code = رمز QR
drawn-picture = صورة
drawn-area = مساحة حبر
sheet-cart-lid = ملصق غطاء الحاوية
sheet-postcard-mailer = بطاقة بريدية
sheet-round-sticker = ملصق مستدير
sheet-enclosure-sign = لافتة عند الحاويات المشتركة
# What a color profile is for.
profile-class-mntr = شاشة
profile-class-scnr = ماسح أو كاميرا
profile-class-other = استعمال آخر

preflight-size-zero = مقاس الورقة { "\u200E" }{ $width } × { $height }{ "\u200E" } مم. يجب أن يكون لكل ضلع طول: اكتب المقاس النهائي من جديد.
preflight-size-fixed = مقاس الورقة { "\u200E" }{ $width } × { $height }{ "\u200E" } مم، وهذه تُصنع بهذه المقاسات فقط: { $names }.
preflight-size-out-of-range = مقاس الورقة { "\u200E" }{ $width } × { $height }{ "\u200E" } مم. اكتب أضلاعًا من { $least } إلى { $most } مم مع الوحدة.
preflight-size-too-narrow = مقاس الورقة { "\u200E" }{ $width } × { $height }{ "\u200E" } مم. لا يزيد ضلع على { $most } أمثال الآخر.
preflight-size-not-round = عرض الملصق المستدير كارتفاعه، لا { "\u200E" }{ $width } × { $height }{ "\u200E" } مم. اكتب قطره.
preflight-postal-size = لا يقبل البريد بطاقة ولا رسالة ولا ظرفًا مسطحًا بمقاس { "\u200E" }{ $width } × { $height }{ "\u200E" } مم. طول الرسالة من 127 إلى 292 مم وارتفاعها من 89 إلى 156 مم، وطولها من 1.3 إلى 2.5 من ارتفاعها، والظرف المسطح لا يزيد على { "\u200E" }381 × 305{ "\u200E" } مم.
preflight-corner-radius = نصف قطر الزوايا { $radius } مم. اختر واحدًا من 0 إلى { $most } مم.
preflight-stock-thickness = سُمك الورق { $thickness } مم، ولا ورق ولا ملصق كذلك. راجع ما أرسلته المطبعة.
preflight-one-message = يحمل الملصق المستدير رسالة واحدة، لا { $lines }. اختر شيئًا واحدًا.
preflight-press-size = مقاس فرخ الطباعة { "\u200E" }{ $width } × { $height }{ "\u200E" } مم. اكتب أضلاعًا من { $least } إلى { $most } مم مع الوحدة.
preflight-press-gutter = الفراغ بين الأوراق { $gutter } مم. يحتاج هامشا القص إلى { $least } مم.
preflight-press-too-small = لا تتسع ورقة بهامشها وعلاماتها في فرخ مقاسه { "\u200E" }{ $width } × { $height }{ "\u200E" } مم. اختر فرخًا أكبر.
preflight-press-up = طُلب { $up } على فرخ يتسع لـ{ $most }. اطلب من 1 إلى { $most }.
preflight-on-a-fold = على بعد أقل من { $distance } مم من طية: { $what }. اختصر النصوص.
preflight-postal-thickness = سُمك القطعة بعد إتمامها { $thickness } مم. يطلب البريد من { $least } إلى { $most } مم: اختر ورقًا آخر.
preflight-ticket-too-long = بطاقة العمل طويلة جدًا عند «{ $place }». اختصر ما كُتب هناك.

## Preflight of further sheets: what is right, and what somebody should look at

preflight-imposed = { $up } على فرخ مقاسه { "\u200E" }{ $width } × { $height }{ "\u200E" } مم: { $across } عرضًا و{ $down } طولًا.
preflight-fits-fewer = يتسع المكان لكل شيء بهذه اللغات معًا: { $tags }. اطبعها، واطبع اللغات الأخرى على ورقة مستقلة.
preflight-fits-larger = يتسع المقاس { $size } لكل شيء. اختر هذا المقاس.
preflight-folds-clear = الطيات: { $count }. لا شيء مطبوع على بعد أقل من { $distance } مم منها.
preflight-postal-class =
    { $class ->
        [card] تُرسل بطاقةً: { "\u200E" }{ $length } × { $height }{ "\u200E" } مم.
        [folded] تُرسل مطوية بلا ظرف: { "\u200E" }{ $length } × { $height }{ "\u200E" } مم بعد الطي.
        [flat] تُرسل ظرفًا مسطحًا: { "\u200E" }{ $length } × { $height }{ "\u200E" } مم.
       *[letter] تُرسل رسالةً: { "\u200E" }{ $length } × { $height }{ "\u200E" } مم.
    }
preflight-postal-thickness-unknown = لم يذكر أحد سُمك الورق. يطلب البريد من { $least } إلى { $most } مم للقطعة بعد إتمامها: اسأل المطبعة.
preflight-sign-letters = ارتفاع حروف العنوان { $height } مم، ويكفي للقراءة من { $distance } مم.
preflight-sign-letters-small = ارتفاع حروف العنوان { $height } مم. اللافتات الميسّرة المقروءة من { $distance } مم تطلب { $least } مم: اختصر النصوص أو اختر لافتة أكبر.
preflight-die-line = خط القص بلون خاص به اسمه «Dieline»، وليس على أي لوح طباعة.

## The choices of the print screen

sheet-lid = ملصق غطاء الحاوية
sheet-sticker = ملصق مستدير برسالة واحدة
sheet-sign = لافتة عند الحاويات المشتركة
sheet-postcard = بطاقة بريدية
sheet-self-mailer = ورقة مطوية للبريد
sheet-handout = ورقة توزَّع باليد
print-size = المقاس النهائي
print-size-usual = المعتاد
print-size-typed = المكتوب أدناه
print-typed-size = المقاس مع وحدته مثل { "\u200E" }8 x 12 in{ "\u200E" }، وللمستدير { "\u200E" }115 mm
print-size-unread = «{ $text }» ليس مقاسًا. اكتب العرض والارتفاع والوحدة: { "\u200E" }8 x 12 in
print-corner = نصف قطر الزوايا، بالملم
print-fold = الطي
print-fold-half = مرة واحدة من الوسط
print-fold-thirds = مرتين كالرسالة
print-die-line = ارسم خط القص بلون خاص
print-printers-mark = اترك مكانًا لعلامة الطابع
print-more = المزيد للمطبعة
print-stock = الورق
print-thickness = سُمك الورق، بالملم
print-distance = يُقرأ من مسافة، بالملم
print-qr-level = رمز QR: التلف الذي يحتمله
print-qr-most = أكثر ما لا يكبّره
print-qr-medium = 15٪ (M)
print-qr-quartile = 25٪ (Q)
print-qr-high = 30٪ (H)
print-words = أقصى عدد كلمات في السطر
print-words-any = بقدر الحاجة
print-item = غرض واحد
print-press = عدة أوراق على فرخ طباعة
print-press-none = واحدة في كل صفحة
print-work-and-turn = الوجه والظهر على اللوح نفسه
print-no-item = لا يوجد غرض «{ $item }». اختر واحدًا من القائمة.
print-nothing-against = لا شيء يقول إن «{ $item }» يبقى خارجًا. اختر ما يبقى خارجًا أو مادة خطرة.
print-ticket = نزّل بطاقة العمل
print-number-unread = «{ $text }» ليس عددًا بالملم.

## The job ticket: what the print shop has to know, one page

ticket-title = بطاقة العمل
ticket-sheet = الورقة
ticket-files = الملفات
ticket-file =
    { $pages ->
        [zero] { $file }: لا صفحات
        [one] { $file }: صفحة واحدة
        [two] { $file }: صفحتان
        [few] { $file }: { $pages } صفحات
        [many] { $file }: { $pages } صفحة
       *[other] { $file }: { $pages } صفحة
    }
ticket-quantity = الكمية
ticket-copies =
    { $copies ->
        [zero] { $languages }: لا نسخ
        [one] { $languages }: نسخة واحدة
        [two] { $languages }: نسختان
        [few] { $languages }: { $copies } نسخ
        [many] { $languages }: { $copies } نسخة
       *[other] { $languages }: { $copies } نسخة
    }
ticket-copies-unsaid = { $languages }: عدد النسخ يُتفق عليه
ticket-trim = المقاس النهائي
ticket-size = { "\u200E" }{ $width } × { $height }{ "\u200E" } مم ({ "\u200E" }{ $across } × { $down }{ "\u200E" } بوصة)
ticket-bleed = هامش القص من كل جهة
ticket-mm = { $length } مم
ticket-corners = الزوايا
ticket-round = تُقص دائرةً
ticket-radius = مستديرة، نصف قطرها { $radius } مم
ticket-square = قائمة
ticket-die = خط القص باللون الخاص «Dieline» فوق كل شيء: لا يُطبع
ticket-folds = الطيات
ticket-fold = عرضًا، على بعد { $at } مم من الحافة العليا للورقة المفتوحة
ticket-fold-order = وجه العنوان في الخارج. حافته السفلى طية، وتُفتح القطعة من حافتها العليا وتُلصق هناك.
ticket-colours = الألوان
ticket-colours-one = { "\u200E" }4/0: سماوي وأرجواني وأصفر وأسود على وجه واحد
ticket-colours-two = { "\u200E" }4/4: سماوي وأرجواني وأصفر وأسود على الوجهين
ticket-colours-note = PDF/X-4، والنص الأسود يُطبع فوق ما تحته، ومجموع الحبر { $limit }٪ على الأكثر
ticket-stock = الورق
ticket-stock-unsaid = يُتفق عليه
ticket-thickness = السُمك { $thickness } مم
ticket-thickness-unsaid = السُمك يُؤكَّد لاحقًا
ticket-press = فرخ الطباعة
ticket-work-and-turn = الوجه والظهر: الظهر على اللوح نفسه
ticket-mark = علامة الطابع
ticket-mark-room = تُرك لها { "\u200E" }19 × 6{ "\u200E" } مم في السطور الصغيرة
ticket-edition = الإصدار
ticket-date = تاريخ العمل
ticket-contact = الأسئلة إلى
