### The print screen and what the check before printing (preflight) says.
### $place, $what, $field and $zone come from the printing part in English.

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
preflight-hazards-shown = المواد الخطرة المعروضة: { $count }.
preflight-ink-coverage = أكثر حبر في موضع واحد: { $coverage }٪، والحد { $limit }٪.
preflight-postal-zones = المناطق الفارغة في جهة العنوان خالية.
preflight-qr-code = رمز QR: الإصدار { $version }، المستوى { $level }، الوحدة { $module } مم، والمنطقة الفارغة { $quiet } وحدات.
preflight-type-sizes = حجم الخط { $body } نقطة وأصغره { $smallest }، ولمسافة قراءة { $distance } مم يلزم { $floor } نقطة على الأقل.

## Preflight: somebody should look before it goes to the print shop

preflight-translation-unreviewed = لم يراجع أحد النصوص بلغة «{ $lang }». اطلب قراءتها قبل الطباعة.
preflight-postal-field-missing = الحقل «{ $field }» فارغ. املأه أو دع المطبعة تضيفه.
preflight-qr-dense = رمز QR دقيق التفاصيل (الإصدار { $version }، { $characters } حرفًا). العنوان الأقصر أسهل قراءة.

## Preflight: errors. No file is made until they are put right. $place and $what say where

preflight-address-invalid = عنوان رمز QR غير صالح: «{ $address }». اكتبه كاملًا مبتدئًا بـ https://
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: في «{ $text }» حرف يقلب اتجاه الكتابة ({ $codepoint }، الموضع { $position }). احذفه واكتب الكلمات من جديد.
        [control] { $place }: في «{ $text }» حرف تحكم ({ $codepoint }، الموضع { $position }). احذفه واكتب الكلمات من جديد.
       *[invisible] { $place }: في «{ $text }» حرف غير مرئي ({ $codepoint }، الموضع { $position }). احذفه واكتب الكلمات من جديد.
    }
preflight-date-invalid = «{ $date }» ليس تاريخًا. اكتب السنة والشهر واليوم: { "\u200E" }2027-01-31
preflight-distance-invalid = «{ $distance }» ليست مسافة قراءة بالمليمتر. أدخل بُعد القارئ.
preflight-font-not-embeddable = الخط «{ $family }» لا يُسمح بتضمينه في الملفات. اختر خطًا آخر.
preflight-font-unreadable = لا يمكن قراءة ملف الخط «{ $family }». اجلبه من جديد.
preflight-hazard-accepted = { $place }: «{ $text }» مادة خطرة بين المقبول. المواد الخطرة لا توضع أبدًا في حاوية: صحح القاعدة.
preflight-hazard-missing = الخطر «{ $text }» ناقص في الورقة بلغة «{ $lang }». لا تُحذف المواد الخطرة لتوفير المساحة.
preflight-language-count = تتسع الورقة من لغة إلى أربع، لا { $count }.
preflight-language-invalid = «{ $lang }» ليس رمز لغة. اكتب مثل es أو es-US.
preflight-language-twice = اللغة «{ $lang }» مكررة. احذف واحدة.
preflight-languages-differ = «{ $lang }» لا يقول ما يقوله «{ $first }»: { $what }.
preflight-missing-glyph = { $place }: لا خط هنا فيه { $characters } المستعمل في «{ $text }». اكتبه من دونه أو أضف خطًا يحتويه.
preflight-nothing-to-say = لا شيء للطباعة: البرنامج لا يقول شيئًا عن هذا المسار. اكتب قواعده أولًا.
preflight-outside-safe-area = «{ $what }» على بعد أقل من { $safe } مم من الحافة وقد يُقص.
preflight-pictogram-unknown = { $place }: لا توجد صورة «{ $pictogram }». اختر غيرها.
preflight-picture-too-small = عرض إحدى الصور { $side } مم فقط. اطبع أسطرًا أو لغات أقل.
preflight-postal-field-full = السطر { $line } من الحقل «{ $field }» لا يتسع: «{ $text }». اختصره.
preflight-postal-zone = «{ $what }» في منطقة محجوزة للبريد ({ $zone }). انقله أو اختصره.
preflight-profile-unusable = لا يمكن استعمال ملف الألوان: { $why }. استعمل ملف CMYK الذي تذكره المطبعة.
preflight-qr-too-fine = رمز QR أدق من أن يُقرأ: وحدته { $module } مم. اختصر العنوان.
preflight-qr-too-long = في العنوان { $characters } حرفًا، أكثر مما يتسع له رمز QR. اختصره.
preflight-rule-too-thin = الخط «{ $what }» أرفع من أن يُطبع.
preflight-step-invalid = الخطوة { $number } مما يمكن حذفه غير ممكنة. التفاصيل بالإنجليزية: { $why }.
preflight-text-empty = { $place } بلا كلمات. اكتب شيئًا.
preflight-text-overlaps = «{ $text }» و«{ $other }» متراكبان. اختصر أحدهما.
preflight-text-too-long = { $place } ({ $lang }): «{ $text }» لا يتسع حتى بحجم { $floor } نقطة، وهو أصغر ما يُقرأ. اختصره بنحو { $cut } حرفًا.
preflight-too-many-lines = في الورقة «{ $sheet }» { $lines } سطرًا بعدد لغات { $languages }، وينقصها { $missing } مم بحجم { $floor } نقطة. احذف أسطرًا أو اطبع لغات أقل.
preflight-too-much-ink = الحبر في موضع واحد { $coverage }٪ والحد { $limit }٪. اختر لونًا أفتح.
preflight-type-too-small = «{ $text }» بحجم { $size } نقطة، ويلزم { $least } نقطة على الأقل. اختصر النصوص.
preflight-word-too-wide = { $place } ({ $lang }): الكلمة «{ $word }» في «{ $text }» أعرض من عمودها بحجم { $floor } نقطة. استعمل كلمة لا تزيد على نحو { $room } حرفًا.
