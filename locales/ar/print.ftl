### The print screen and what the check before printing (preflight) says.

## The print screen

print-sheet = الورقة
sheet-lid = ملصق غطاء الحاوية، { "\u200E" }7 × 9{ "\u200E" } بوصات
sheet-postcard = بطاقة بريدية، { "\u200E" }9 × 6{ "\u200E" } بوصات
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

## What preflight calls a sheet's texts, the post's zones and what is drawn. $lang is a language's tag

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
# What a color profile is for.
profile-class-mntr = شاشة
profile-class-scnr = ماسح أو كاميرا
profile-class-other = استعمال آخر
