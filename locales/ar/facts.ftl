### What can be known about a thing: names, questions, answers. Values have to make sense alone,
### as a button and in "You could not tell, so we took: Closure: on".

## Ranges of a measure or of dates, as answers to choose from

range-at-least = { $value } أو أكثر
range-over = أكثر من { $value }
range-at-most = { $value } أو أقل
range-under = أقل من { $value }
range-between = من { $low } إلى { $high }
range-any = أي قدر

## A fact and its value, an item and its part. Examples: "Resin mark: 5", "Glass jar: the lid"

fact-value = { $fact }: { $value }
item-part = { $item }: { $part }

## Who asks, where and when

fact-day = اليوم
ask-day = في أي يوم؟

## وقت السنة

fact-time-of-year = وقت السنة
ask-time-of-year = في أي يوم من السنة؟

## Service zone

fact-zone = المنطقة
ask-zone = أين تسكن؟
    .hint = تختلف القواعد من منطقة إلى أخرى.

## Dwelling

fact-dwelling = المسكن
ask-dwelling = في أي نوع من المساكن تعيش؟
value-dwelling-house = بيت مستقل
value-dwelling-small-building = مبنى صغير
value-dwelling-large-building = مبنى شقق كبير

## Where it comes from

fact-origin = المصدر
ask-origin = من أين جاء هذا الشيء؟
value-origin-household = من المنزل
value-origin-business = من عمل تجاري

## Proof of residency

fact-proof = إثبات السكن
ask-proof = هل يمكنك إثبات أنك تسكن هنا؟
    .hint = تكفي فاتورة أو رخصة عليها عنوانك.
value-proof-yes = لدي إثبات
value-proof-no = ليس لدي إثبات

## خدمة إضافية مدفوعة

fact-add-on = خدمة إضافية مدفوعة
ask-add-on = هل تدفع مقابل خدمة الجمع الإضافية؟
    .hint = إن كنت تدفع فهي مذكورة في فاتورتك.
value-add-on-yes = نعم، أدفع
value-add-on-no = لا أدفع

## Quantity

fact-quantity = العدد
ask-quantity = كم لديك منها؟

## What it is

fact-item = الشيء
ask-item = ما هو؟

## Category

fact-category = النوع
ask-category = ما نوع هذا الشيء؟

## جزء من شيء

fact-part = الجزء
ask-part = أي جزء منه؟
value-part-whole = الشيء كله
value-part-lid = الغطاء
value-part-cap = السدادة
value-part-pump = المضخة
value-part-sleeve = الغلاف
value-part-liner = البطانة
value-part-straw = الشفاطة
value-part-filter = المرشح
value-part-battery = البطارية
value-part-cord = السلك
value-part-shade = غطاء المصباح
value-part-contents = المحتوى
value-part-bag = الكيس
value-part-handle = المقبض
value-part-ring = الحلقة

## Hazard class

fact-hazard = الخطر
ask-hazard = ما الخطر فيه؟
    .hint = ابحث عن كلمات أو علامات تحذير على الملصق. إن شككت فقل إنك لا تعرف.
value-hazard-none = لا خطر
value-hazard-battery-lithium = بطارية ليثيوم (قابلة للشحن)
value-hazard-battery-household = بطارية منزلية
value-hazard-battery-lead-acid = بطارية سيارة (رصاص وحمض)
value-hazard-sharps = إبرة أو واخزة
value-hazard-medicine = دواء
value-hazard-pressurised = علبة أو أسطوانة مضغوطة
value-hazard-flammable = سائل أو غاز سريع الاشتعال
value-hazard-toxic = مادة سامة
value-hazard-corrosive = مادة أكّالة (تحرق الجلد)
value-hazard-mercury = شيء فيه زئبق
value-hazard-oil = زيت محرك
value-hazard-explosive = مادة متفجرة
value-hazard-radioactive = شيء مشع

## Material

fact-material = المادة
ask-material = ممّ صُنع؟
    .hint = المادة التي يتكون منها أكثره.
value-material-plastic = بلاستيك
value-material-bioplastic = بلاستيك نباتي
value-material-cardboard = كرتون مموّج
value-material-paperboard = كرتون رقيق
value-material-paper = ورق
value-material-carton = كرتون المشروبات
value-material-steel = فولاذ أو صفيح
value-material-aluminium = ألمنيوم
value-material-metal = معدن آخر
value-material-glass = زجاج
value-material-ceramic = خزف
value-material-wood = خشب
value-material-cork = فلين
value-material-textile = قماش
value-material-leather = جلد
value-material-rubber = مطاط
value-material-food = طعام
value-material-plant = أوراق شجر أو أغصان
value-material-wax = شمع
value-material-stone = حجر أو خرسانة
value-material-electronics = إلكترونيات
value-material-chemical = مادة كيميائية
value-material-mixed = عدة مواد

## Form

fact-form = الشكل
ask-form = ما شكله؟
value-form-bottle = زجاجة أو قارورة
value-form-jug = إبريق بمقبض
value-form-jar = مرطبان
value-form-tub = علبة بلاستيكية عميقة
value-form-cup = كوب
value-form-lid = غطاء
value-form-clamshell = علبة بغطاء مفصلي
value-form-tray = صينية
value-form-bag = كيس
value-form-film = غلاف رقيق
value-form-pouch = كيس قائم
value-form-tube = أنبوب
value-form-can = علبة معدنية
value-form-spray-can = علبة رذاذ
value-form-cylinder = أسطوانة غاز
value-form-box = صندوق
value-form-carton = كرتون مشروب
value-form-canister = علبة أسطوانية
value-form-sheet = ورقة
value-form-newspaper = جريدة أو مجلة
value-form-book = كتاب
value-form-envelope = ظرف
value-form-roll = لفة
value-form-foil = رقائق ألمنيوم
value-form-pan = مقلاة أو قدر
value-form-foam = فوم
value-form-pod = كبسولة قهوة
value-form-cutlery = شوكة أو سكين أو ملعقة
value-form-straw = شفاطة
value-form-pot = أصيص
value-form-bucket = دلو
value-form-toy = لعبة
value-form-rope = حبل أو خرطوم أو سلك
value-form-clothing = ملابس
value-form-shoe = حذاء
value-form-furniture = أثاث
value-form-mattress = مرتبة
value-form-appliance = جهاز منزلي كبير
value-form-device = جهاز إلكتروني
value-form-lamp = مصباح أو أنبوب إضاءة
value-form-battery = بطارية
value-form-needle = إبرة
value-form-pill = حبوب أو دواء
value-form-tool = أداة
value-form-window = زجاج نافذة أو مرآة
value-form-dishes = أطباق وأكواب
value-form-tyre = إطار
value-form-timber = خشب بناء
value-form-rubble = ركام
value-form-food = طعام
value-form-plant = مخلفات حديقة
value-form-liquid = سائل
value-form-ash = رماد
value-form-sanitary = حفاض أو مستلزم صحي
value-form-other = شكل آخر

## Packaging or product

fact-object = الاستعمال
ask-object = هل كان شيء معبأً فيه؟
value-object-packaging = هو عبوة
value-object-product = هو شيء بذاته

## Battery inside

fact-battery = البطارية
ask-battery = هل فيه بطارية؟
    .hint = إذا كان يضيء أو يتحرك أو يصدر صوتًا أو يُشحن ففيه بطارية.
value-battery-yes = فيه بطارية
value-battery-no = بلا بطارية

## Resin mark

fact-resin = الرقم داخل المثلث
ask-resin = ما الرقم داخل المثلث الصغير؟
    .hint = انظر إلى القاع. الرقم يدل على نوع البلاستيك، ولا يعني أنه يُعاد تدويره.
value-resin-1 = 1
value-resin-2 = 2
value-resin-3 = 3
value-resin-4 = 4
value-resin-5 = 5
value-resin-6 = 6
value-resin-7 = 7
value-resin-none = بلا رقم
value-resin-unreadable = لا يمكن قراءته

## علامة الرهن

fact-deposit-mark = علامة الرهن
ask-deposit-mark = هل عليها علامة رهن؟
    .hint = ابحث بجانب الرمز الشريطي عن علامة أو مبلغ من المال.
value-deposit-mark-yes = عليها علامة رهن
value-deposit-mark-no = بلا علامة رهن

## Color

fact-colour = اللون
ask-colour = ما لونه؟
value-colour-clear = شفاف
value-colour-frosted = مصنفر (يمر منه الضوء)
value-colour-white = أبيض
value-colour-green = أخضر
value-colour-brown = بني
value-colour-blue = أزرق
value-colour-black = أسود
value-colour-other = لون آخر

## Coating

fact-coating = الطلاء
ask-coating = هل هو مطلي بشيء؟
    .hint = مزّق زاوية: إن ظهر غشاء رقيق فهو بلاستيك. اخدشه: الشمع ينكشط.
value-coating-none = غير مطلي
value-coating-plastic = بلاستيك
value-coating-wax = شمع
value-coating-foil = رقائق معدنية
value-coating-glitter = لمّاع
value-coating-wet-strength = مقوى ضد البلل

## Layers

fact-layers = الطبقات
ask-layers = هل هو من عدة طبقات ملتصقة؟
value-layers-one = طبقة واحدة
value-layers-many = عدة طبقات

## Longest side

fact-longest-side = أطول جانب
ask-longest-side = كم طوله؟
    .hint = قِس أطول جانب فيه.

## Middle side

fact-middle-side = ثاني أطول جانب
ask-middle-side = كم عرضه؟
    .hint = قِس ثاني أطول جانب فيه.

## Shortest side

fact-shortest-side = أقصر جانب
ask-shortest-side = كم سُمكه؟
    .hint = قِس أقصر جانب فيه.

## Length of shredded strips

fact-strip-length = طول الشرائط
ask-strip-length = كم طول الشرائط؟

## Capacity

fact-capacity = السعة
ask-capacity = كم يسع؟
    .hint = ابحث عن الكمية على الملصق.

## Weight

fact-mass = الوزن
ask-mass = كم وزنه؟

## يتسع له الوعاء

fact-fits-container = يتسع له الوعاء
ask-fits-container = هل يتسع له الوعاء والغطاء مغلق؟
value-fits-container-yes = يتسع والغطاء مغلق
value-fits-container-no = لا يتسع

## Contents

fact-contents = المحتوى
ask-contents = هل بقي فيه شيء؟
    .hint = فارغ يعني أنه لا يقطر ولا يسقط منه شيء.
value-contents-empty = فارغ
value-contents-traces = علق به قليل
value-contents-dried = جف ما فيه
value-contents-part-full = ما زال فيه محتوى
value-contents-full = مملوء

## Former contents

fact-former-contents = ما كان فيه
ask-former-contents = ماذا كان فيه؟
value-former-contents-none = لا شيء
value-former-contents-food = طعام
value-former-contents-drink = مشروب
value-former-contents-personal-care = صابون أو شامبو أو كريم
value-former-contents-cleaner = منظّف
value-former-contents-oil = زيت محرك
value-former-contents-paint = دهان
value-former-contents-pesticide = مبيد حشرات أو أعشاب
value-former-contents-solvent = مذيب أو وقود
value-former-contents-medicine = دواء

## Soiling

fact-soiling = النظافة
ask-soiling = هل هو نظيف؟
value-soiling-clean = نظيف
value-soiling-grease = عليه دهن
value-soiling-food = عليه طعام

## Wet

fact-wet = البلل
ask-wet = هل هو مبلل؟
value-wet-yes = مبلل
value-wet-no = جاف

## Bagged

fact-bagged = في كيس
ask-bagged = هل هو في كيس؟
value-bagged-loose = سائب بلا كيس
value-bagged-plastic-bag = في كيس بلاستيك
value-bagged-clear-bag = في كيس شفاف
value-bagged-paper-bag = في كيس ورق

## Flattened

fact-flattened = التسطيح
ask-flattened = هل هو مسطّح؟
value-flattened-yes = مسطّح
value-flattened-no = غير مسطّح

## Bundled

fact-bundled = الربط في حزمة
ask-bundled = هل هو مربوط في حزمة؟
value-bundled-yes = مربوط
value-bundled-no = غير مربوط

## Shredded

fact-shredded = التمزيق
ask-shredded = هل هو ممزق إلى شرائط؟
value-shredded-yes = ممزق إلى شرائط
value-shredded-no = غير ممزق

## Broken

fact-broken = الكسر
ask-broken = هل هو مكسور أو بالٍ؟
value-broken-yes = مكسور
value-broken-no = سليم

## Compostable

fact-compostable = قابلية التحول إلى سماد
ask-compostable = هل مكتوب عليه أنه يتحول إلى سماد؟
    .hint = ابحث عن عبارة «certified compostable» (سماد معتمد) وعن ختم.
value-compostable-no = لا
value-compostable-claimed = مكتوب، لكن بلا ختم
value-compostable-certified = معتمد وعليه ختم

## Closure

fact-closure = الغطاء
ask-closure = هل الغطاء عليه؟
value-closure-none = ليس له غطاء
value-closure-on = عليه
value-closure-off = منزوع

## Label

fact-label = الملصق
ask-label = ما نوع الملصق عليه؟
value-label-none = بلا ملصق
value-label-paper = ملصق ورقي
value-label-film = ملصق بلاستيكي
value-label-sleeve = غلاف بلاستيكي كامل

## Pump

fact-pump = المضخة
ask-pump = هل له مضخة أو بخاخ؟
value-pump-yes = له مضخة
value-pump-no = بلا مضخة

## Metal fitting

fact-fitting = قطعة معدنية
ask-fitting = هل فيه قطعة معدنية صغيرة؟
value-fitting-yes = فيه قطعة معدنية
value-fitting-no = بلا قطعة معدنية

## Window

fact-window = نافذة بلاستيكية
ask-window = هل فيه نافذة بلاستيكية شفافة؟
value-window-yes = فيه نافذة
value-window-no = بلا نافذة

## Liner

fact-liner = البطانة
ask-liner = هل بداخله بطانة؟
value-liner-yes = فيه بطانة
value-liner-no = بلا بطانة

## Cord

fact-cord = السلك
ask-cord = هل له سلك؟
value-cord-yes = له سلك
value-cord-no = بلا سلك

## ما يقال بجانب حد من الحدود. مثال: "بوصتان (نحو كرة غولف)"، "٤ في كل زيارة".

measure-like = { $measure } (نحو { $thing })
measure-per = { $measure } { $period }
like-credit-card = طول بطاقة مصرفية
like-golf-ball = كرة غولف
like-tennis-ball = كرة تنس
like-basketball = كرة سلة
like-sheet-of-paper = طول ورقة
like-yogurt-cup = علبة لبن صغيرة
like-milk-jug = إبريق حليب
like-bucket = دلو كبير
like-brick = طوبة
per-visit = في كل زيارة
per-day = في اليوم
per-week = في الأسبوع
per-month = في الشهر
per-year = في السنة
