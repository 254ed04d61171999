### Ready-made sentences of answers: cautions, steps, reasons; and the names of kinds of things.
### Steps are told to one person, reasons are about "it".

## Cautions, one for each hazard class. They say what is common everywhere and defer to local
## rules; local procedure comes from the program, approved by a named person.

caution-local = القرار للقواعد المحلية ولموظفي المكان.
caution-battery-lithium = بطاريات الليثيوم قد تسبب حريقًا. لا تضعها أبدًا في أي حاوية، ولا الأجهزة التي تحتويها. غطِّ الأطراف المعدنية للبطاريات المنفردة بشريط لاصق أو ضع كل واحدة في كيس وحدها. لا تسحقها ولا تفتحها. { caution-local }
caution-battery-household = البطاريات قد تسرّب سوائل أو تسبب حريقًا. لا تضعها أبدًا في أي حاوية. غطِّ أطرافها بشريط لاصق واحفظها متباعدة. { caution-local }
caution-battery-lead-acid = في هذه البطارية حمض يحرق ورصاص يسمّم. أبقها قائمة ولا تفتحها. لا تضعها أبدًا في أي حاوية. { caution-local }
caution-sharps = الإبر والواخزات قد تجرح العاملين في الفرز وتنقل العدوى إليهم. لا تضعها أبدًا سائبة في أي حاوية. ضعها فورًا في وعاء قوي لا يُثقب وله غطاء محكم. لا تدخل يدك أبدًا في حاوية لإخراج واحدة. { caution-local }
caution-medicine = أبعد الأدوية عن الأطفال والحيوانات. خذها أولًا إلى مكان يستقبل الأدوية. لا تلقها في المرحاض إلا إذا نص الملصق على ذلك. { caution-local }
caution-pressurised = قد ينفجر إذا سُحق أو ثُقب أو سُخّن، حتى لو بدا فارغًا. لا تضعه أبدًا في أي حاوية. { caution-local }
caution-flammable = يشتعل بسهولة. أبقه مغلقًا بعيدًا عن الحرارة والشرر. لا تضعه أبدًا في أي حاوية ولا تسكبه. { caution-local }
caution-toxic = سام. أبقه في عبوته وعليها الملصق. لا تضعه أبدًا في أي حاوية، ولا تسكبه، ولا تخلطه بشيء. { caution-local }
caution-corrosive = يحرق الجلد والعينين. أبقه قائمًا في عبوته. لا تضعه أبدًا في أي حاوية ولا تخلطه بشيء. { caution-local }
caution-mercury = فيه زئبق، وهو سام. لا تكسره. لا تضعه أبدًا في أي حاوية. إذا انكسر فأبعد الناس وهوِّ الغرفة. { caution-local }
caution-oil = يلوّث الماء. احفظه في وعاء مغلق. لا تسكبه أبدًا، ولا تضعه في أي حاوية، ولا تخلطه بشيء. { caution-local }
caution-explosive = لا تلمسه ولا تحركه. أبعد الناس واتصل بالجهة المذكورة هنا. عند الخطر اتصل برقم الطوارئ. { caution-local }
caution-radioactive = لا تفتحه ولا تكسره. لا تضعه أبدًا في أي حاوية. اتصل بالجهة المذكورة هنا واسأل ماذا تفعل. { caution-local }

## Standard preparation steps

prep-empty = أفرغه.
prep-rinse = اشطفه سريعًا. لا يلزم أن يكون نظيفًا تمامًا.
prep-dry = اتركه يجف.
prep-scrape = اكشط بقايا الطعام.
prep-flatten = سطّحه.
prep-cut-down = اقطعه حتى يتسع له المكان.
prep-bundle = اربطه في حزمة.
prep-loose = ضعه سائبًا بلا كيس.
prep-cap-on = اترك الغطاء عليه.
prep-cap-off = انزع الغطاء.
prep-lid-off = انزع الغطاء العلوي.
prep-lid-inside-can = ضع الغطاء داخل العلبة واضغطها حتى تنغلق.
prep-label-stays = يمكن أن يبقى الملصق.
prep-sleeve-off = انزع الغلاف البلاستيكي.
prep-pump-off = انزع المضخة.
prep-window-stays = يمكن أن تبقى النافذة البلاستيكية.
prep-staples-stay = يمكن أن تبقى الدبابيس.
prep-remove-food-liner = أخرج الكيس أو البطانة.
prep-tear-off-clean-half = افصل الجزء النظيف. هذا الجزء وحده يوضع هنا.
prep-crush = اضغطه لتوفير المساحة.
prep-do-not-crush = لا تسحقه.
prep-do-not-flatten = لا تسطّحه.
prep-do-not-nest = لا تضع واحدًا داخل آخر.
prep-scrunch-foil = كوّر رقائق الألمنيوم بحجم قبضة اليد.
prep-paper-bag = ضعه في كيس ورق وأغلقه.
prep-clear-bag = ضعه في كيس شفاف.
prep-tape-terminals = غطِّ الأطراف المعدنية بشريط لاصق.
prep-keep-upright = أبقه قائمًا.
prep-puncture-proof = ضعه في وعاء قوي لا يُثقب.
prep-original-container = اتركه في عبوته الأصلية وعليها الملصق.
prep-do-not-mix = لا تخلطه بشيء.
prep-do-not-puncture = لا تثقبه.
prep-puncture = اثقبه حين لا يبقى شيء يخرج منه.
prep-wrap-broken = لُف القطع المكسورة حتى لا يُجرح أحد.
prep-remove-battery = أخرج البطارية إن خرجت بسهولة. مكانها مختلف.
prep-wipe-data = امسح بياناتك أولًا.
prep-take-apart = فكّكه: لكل مادة مكانها.
prep-no-bags = لا تستعمل أي كيس.
prep-no-plastic-bags = لا تستعمل أكياس البلاستيك.
prep-cool-ash = اترك الرماد يبرد عدة أيام حتى يبرد كله.
prep-double-bag = ضعه في كيسين، واحد داخل الآخر.
prep-label-contents = اكتب عليه ما بداخله.
prep-fits-lid-shut = يجب أن يتسع والغطاء مغلق.
prep-check-fluid = تأكد من أنه لم يبق فيه سائل.
prep-pair-and-tie = اربط كل زوج معًا.
prep-clean-and-usable = فقط إذا كان نظيفًا وصالحًا للاستعمال.

## Standard reasons

reason-sells = تشتريه المصانع وتصنع منه أشياء جديدة.
reason-composts = يتحول إلى سماد.
reason-no-buyer = لا أحد يشتري هذه المادة هنا، لذلك لا يمكن تدويرها.
reason-too-small = صغير جدًا فيسقط بين آلات الفرز.
reason-too-large = كبير جدًا على الحاوية أو الآلات.
reason-tangles = يلتف حول الآلات ويوقفها.
reason-wraps-screens = البلاستيك الرقيق يلتف حول آلات الفرز ويوقف المصنع.
reason-bagged-unseen = لا يرى أحد ما في الكيس المغلق، فيُرمى دون فتحه.
reason-soiled = الطعام والدهن يفسدان المادة.
reason-contents-spoil = ما بقي فيه يفسد كل ما حوله.
reason-mixed-materials = مواده ملتصقة ولا يمكن فصلها.
reason-wrong-glass = هذا الزجاج ينصهر بطريقة تختلف عن الزجاجات والمرطبانات.
reason-breaks-unsafe = ينكسر ويجرح العاملين في الفرز.
reason-not-packaging = تُقبل هنا العبوات فقط.
reason-hazard = خطر في الحاوية والشاحنة والمصنع.
reason-handled-apart = يُعامل وحده بعيدًا عن غيره.
reason-reusable = ما زال يمكن لشخص آخر استعماله.
reason-store-collects = تجمعه المتاجر.
reason-contaminates-compost = يفسد السماد.
reason-not-named = لا تذكره القائمة.
reason-not-listed = لم يقرر أحد بعد. السؤال أفضل من التخمين.
reason-too-heavy = ثقيل جدًا فلا يُرفع.
reason-number-is-not-shape = الرقم وحده لا يكفي: الشكل مهم أيضًا.
reason-black-unseen = آلات الفرز لا ترى البلاستيك الأسود.
reason-burns = قد يسبب حريقًا.
reason-special-trip = له موعد جمع خاص أو مكان خاص.
reason-law = هذا ما ينص عليه القانون.
reason-not-collected = لا يُجمع هنا.

## Tiers of rules, in the order in which they are looked at

tier-safety = السلامة
tier-plant = مصنع الفرز
tier-program = هذا البرنامج
tier-material = المادة
tier-default = ما عدا ذلك

## Categories to browse by

category-plastic-packaging = عبوات بلاستيكية
category-paper-cardboard = ورق وكرتون
category-glass = زجاج
category-metal = معدن
category-food-drink-cartons = كرتون الطعام والشراب
category-food-garden = طعام وحديقة
category-film-bags = أكياس وأغلفة رقيقة
category-batteries-electronics = بطاريات وإلكترونيات
category-hazardous = دهان ومواد كيميائية وغاز
category-medical = أدوية وإبر
category-textiles = ملابس وأحذية
category-household-goods = أغراض المنزل
category-building = بناء وترميم
category-bathroom = الحمّام

## Parts of an item that may go elsewhere

part-lid = الغطاء
part-cap = السدادة
part-pump = المضخة
part-sleeve = الغلاف
part-liner = البطانة
part-straw = الشفاطة
part-filter = المرشّح
part-battery = البطارية
part-cord = السلك
part-shade = غطاء المصباح
part-contents = ما بداخله
part-bag = الكيس
part-handle = المقبض
part-ring = الحلقة

## قواعد عن الوعاء: تظهر حيث يذكره الجواب. $limit مقياس.

container-rule-lid-closed = يجب أن يكون الغطاء مغلقا.
container-rule-weight = لا يزيد وزنه ممتلئا على { $limit }.
container-rule-distance = اترك { $limit } خالية من كل جانب.
container-rule-side-waste = لا شيء بجانبه ولا فوقه.
container-rule-share-of-load = لا يزيد ما لا يناسب على { $limit } من الحمولة.
container-rule-liners = يجوز تبطينه بكيس.
container-rule-sacks = الأكياس التي توزع فقط.
container-rule-registration = سجل أولا.
container-rule-refusals = إن كان فيه شيء خاطئ يترك مكانه مع إشعار.

## ما يمنع القانون وضعه. $place وعاء أو مجرى.

answer-banned = لا يسمح القانون بوضعه في: { $place }.
