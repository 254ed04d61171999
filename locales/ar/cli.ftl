### سطر الأوامر: مساعدته، وما يقوله عند الانتهاء، وما يقوله حين يكون شيء خاطئًا.
### لا تُترجم الأوامر ولا الخيارات ولا الكلمات المكتوبة بأحرف كبيرة.

## المساعدة

cli-help =
    lidleaf COMMAND [OPTIONS]

      check PROGRAM          يعرض ما هو خاطئ في برنامج
      answer PROGRAM ITEM    يجيب عن غرض واحد كما يجيب الساكن
      print PROGRAM          يصنع ملصق غطاء أو بطاقة بريدية بصيغة PDF للمطبعة
      batch PROGRAM…         يصنع أوراقًا كثيرة من برامج كثيرة دفعة واحدة
      publish [PROGRAM]      يكتب الدليل مجلدًا يصلح لأي خادم ويب
      serve FOLDER           يعرض مجلدًا منشورًا على عنوان في هذا الحاسوب
      compare BEFORE AFTER   يعرض كل جواب يتغير من برنامج إلى آخر
      demo                   يكتب البرنامج التجريبي
      schema                 يكتب مخطط JSON لملفات البرامج

    للمزيد: lidleaf help COMMAND أو lidleaf COMMAND --help

    رموز الخروج:
      0  تمّ، وقد تكون هناك تحذيرات
      1  في البرنامج، أو في ورقة صُنعت منه، أخطاء، ولم يُكتب شيء
      2  لم يُفهم الأمر
      3  ملف ناقص، أو ليس كما ينبغي
      4  تعذّرت كتابة ملف أو فتح عنوان
      5  الغرض أو المنطقة أو المسار المطلوب غير موجود
      6  توقّف بطلب؛ وما انتهى منه محفوظ
cli-help-check =
    lidleaf check PROGRAM [--catalog FILE] [--fix NUMBER --out FILE]

    يعرض كل ما وُجد في برنامج: الأخطاء أولًا ثم التحذيرات والملاحظات، ومع كل منها مثال وما يجب
    فعله. ينتهي بالرمز 1 إن وُجدت أخطاء.

    تُعرض مع كل ما وُجد طرق إصلاحه ولكل طريقة رقم مثل 2.1. الخيار { "\u200E" }--fix 2.1 يطبق تلك الطريقة
    ويكتب البرنامج المعدّل في الملف الذي يسميه { "\u200E" }--out ثم يعرض ما وُجد فيه. ويبقى البرنامج الذي
    قُرئ كما كان.
cli-help-answer =
    lidleaf answer PROGRAM ITEM [--fact FACT=VALUE]… [--zone ZONE] [--on YYYY-MM-DD]

    يجيب عن غرض واحد بمعرّفه أو باسمه، ولا يضر خطأ في كتابة الاسم. إذا توقف الجواب على شيء عُرض
    السؤال التالي مع خيار { "\u200E" }--fact الذي يجيب عنه. ويعني FACT=? أن الساكن لا يستطيع أن يعرف. اليوم
    هو يومنا هذا ما لم يحدد { "\u200E" }--on غيره.
cli-help-print =
    lidleaf print PROGRAM --sheet SHEET [OPTIONS]

      --sheet lid        ملصق لغطاء الحاوية
      --sheet sticker    ملصق مستدير برسالة واحدة
      --sheet sign       لافتة عند الحاويات المشتركة تُقرأ من أبعد
      --sheet postcard   بطاقة بريدية بوجهين
      --sheet self-mailer  ورقة letter أو A4 تُطوى وتُرسل
      --sheet handout    ورقة letter أو A4 توزَّع باليد، بوجه أو وجهين
      --stream STREAM    المسار الذي تتناوله
      --zone ZONE        لمنطقة خدمة واحدة فقط
      --languages en,es  بهذه اللغات، من واحدة إلى أربع
      --out PLACE        مجلد أو اسم ملف
      --date YYYY-MM-DD  تاريخ العمل
      --register         تسجيل الورقة في سجل الأوراق المطبوعة في ملف البرنامج
      --copies N         عدد النسخ، للسجل ولبطاقة العمل، أو en=400,es=200
      --printed YYYY-MM-DD  يوم الطباعة، للسجل؛ وإلا فتاريخ المهمة
      --size SIZE        المقاس النهائي: 8x12in أو a4 أو "200 x 300 mm" أو قطر، 115mm
      --corner 6mm       نصف قطر الزوايا، و0 للقائمة
      --fold half        طي الورقة البريدية: half من الوسط أو thirds أثلاثًا
      --item ITEM        الغرض الذي يتناوله الملصق المستدير، والرمز يفتحه
      --distance 2m      المسافة التي يُقرأ منها، وهي تحدد أصغر خط
      --qr-level H       التلف الذي يحتمله الرمز: M أو Q أو H
      --die-line         رسم خط قص الملصق بلون خاص
      --printers-mark    ترك مكان لعلامة الطابع
      --stock NAME       ما يُطبع عليه، لبطاقة العمل
      --thickness 0.3mm  سُمكه، والبريد يريد معرفته
      --no-places        بلا قائمة الأماكن
      --words 6          أقصى عدد كلمات في السطر، بكل لغة من لغات الورقة
      --press 13x19in    عدة أوراق على فرخ: 11x17in أو 12x18in أو 13x19in أو sra3 أو ما تكتبه
      --gutter 8mm       الفراغ بينها
      --up N             عددها على الأكثر
      --work-and-turn    الوجه والظهر على لوح واحد
      --alone            ملف لكل لغة، لا ملف للجميع
      --no-ticket        بلا بطاقة العمل
      --for press        ملف للمطبعة (PDF/X-4)، وهو ما يُصنع ما لم يُطلب غيره
      --for web          ملف للقراءة على الشاشة وبصوت مسموع (PDF/UA-1)، بلا علامات ولا هامش قص
      --profile FILE     ملف الإخراج CMYK بامتداد icc الذي أرسلته المطبعة
      --ink-limit N      أقصى حبر يتحمله ورقها بالمئة: 300 ما لم يُذكر

    يصنع ورقة بلغة واحدة إلى أربع لغات ملفَّ PDF للمطبعة، مع بطاقة عمل في ملف مستقل، ويعرض ما وجده الفحص السابق للطباعة. إن
    وُجد خطأ لم يُكتب شيء. البرنامج نفسه والتاريخ نفسه يعطيان البايتات نفسها. إن لم تُحدَّد: المسار
    هو مسار إعادة التدوير، واللغات هي أول ثلاث في البرنامج، والمجلد هو الحالي، والتاريخ هو اليوم.
cli-help-batch =
    lidleaf batch PROGRAM… --sheet SHEETS --out FOLDER [OPTIONS]

      --sheet lid,postcard   هذه الأوراق، أو all لكلها
      --stream STREAMS       المسارات التي تتناولها، أو all لكلها
      --zone ZONE            لمنطقة خدمة واحدة فقط
      --languages SET        مجموعة لغات، ويُكرَّر لكل مجموعة
          en                 بلغة واحدة
          en,es              بهذه اللغات معًا
          each               بكل لغة من لغات البرنامج وحدها
          together           بأول ثلاث لغات في البرنامج على ورقة واحدة
      --out FOLDER           المجلد الذي يُملأ، ولكل برنامج مجلد فيه
      --date YYYY-MM-DD      تاريخ الأعمال
      --hands N              كم ورقة تُصنع في آن واحد، وإلا فبعدد الأنوية
      --again                صنع ما صُنع من قبل أيضًا
      --for press            ملفات للمطبعة (PDF/X-4)، كما من دون هذا الخيار
      --for web              ملفات للقراءة على الشاشة وبصوت مسموع (PDF/UA-1)
      --profile, --ink-limit ظروف المطبعة، كما في print
      --tickets              بطاقة عمل بجانب كل ملف للمطبعة
      --copies N             عدد النسخ، لبطاقات العمل، أو en=400,es=200
      --alone                ورقة لكل لغة من المجموعة
      --size, --press …      كيف تُصنع، كما في print: كل خياراته إلا --corner

    يصنع كل ورقة مطلوبة من كل برنامج. يحفظ المجلد في batch.json مما صُنع كل ملف، فلا يُصنع مرة ثانية
    إلا ما ينقص أو ما سيختلف. والتاريخ من ذلك: من دون { "\u200E" }--date هو تاريخ اليوم، وغدًا يُصنع كل شيء من جديد.

    الورقة التي تفشل لا توقف غيرها، وفي النهاية يُذكر سبب كل فشل وما يجب فعله. يُكتب كل ملف كاملًا أو
    لا يُكتب. ينهي Ctrl-C العمل بنظام: تكتمل الأوراق التي بدأت، ويواصل الأمر نفسه لاحقًا. ينتهي بالرمز 1
    إن فشل شيء. بصيغة JSON: «lidleaf-batch-report» وفيه made وskipped وfailed مع why وnext.
cli-help-publish =
    lidleaf publish [PROGRAM] --out FOLDER [--app FOLDER]

    يكتب الدليل والتطبيق مجلدَ ملفات يستطيع أي خادم ويب تقديمه من جذره أو من مجلد فيه. يُرفض
    البرنامج الذي فيه أخطاء. وما نُشر في المجلد من قبل يبقى حتى تكتمل الطبعة الجديدة. وإن لم يُذكر
    برنامج نُشر البرنامج التجريبي، ويؤخذ التطبيق من dist/app ما لم يحدد { "\u200E" }--app مجلدًا آخر.
cli-help-serve =
    lidleaf serve FOLDER [--port N] [--address ADDRESS]

    يعرض مجلدًا منشورًا على http://127.0.0.1:8080/ أو على المنفذ والعنوان المحددين، إلى أن يوقَف.
    المنفذ 0 يأخذ أي منفذ متاح. هو لمعاينة الدليل لا للجمهور.
cli-help-compare =
    lidleaf compare BEFORE AFTER [--on YYYY-MM-DD] [--notice] [--language TAG] [--out FILE]
    lidleaf compare PROGRAM PROGRAM PROGRAM… [--out FILE]

      --on YYYY-MM-DD  كما هما في ذلك اليوم بدلا من كل الأيام
      --notice         إشعار بالتغييرات لرسالة، في مجموعات ومعه جهة الاتصال
      --language TAG   اللغة التي يكتب بها
      --out FILE       ملف؛ والذي ينتهي بـ .md تضاف إليه علامات Markdown

    برنامجان: يسرد كل غرض يختلف حكمه أو وجهته أو تجهيزه أو سببه أو تحذيره، ومع أي أجوبة بالضبط
    ومن أي يوم؛ ثم سطور الأوراق المطبوعة في السجل التي لم تعد صحيحة. من ثلاثة برامج إلى خمسين:
    ما هو صحيح فيها كلها، ومن يختلف في كل غرض آخر، والنصائح المتناقضة.

    وبصيغة JSON: “lidleaf-changes” (changes, asked, untrue) أو “lidleaf-notice” (groups, untrue, text)
    أو “lidleaf-regional” (programs, agreed, differing, contradictory). وفيها كلها “when” قائمة بدائل،
    كل منها قائمة معلومات بقيمها التي تصح معا.
cli-help-schema =
    lidleaf schema [--out FILE]

    يكتب مخطط JSON لملفات البرامج.
cli-help-demo =
    lidleaf demo [--town TOWN] [--out FILE]

    يكتب البرنامج التجريبي، وهو مقاطعة مختلقة كلها، للبدء منه؛ ومع --town إحدى بلداتها الأعضاء:
    thrushwick أو kettlebrae أو larkenby أو dunnockford.
cli-help-common =
    يقبل كل أمر أيضًا:
      --lang TAG      لغة الرسائل والأجوبة { "\u200F" }(en، es، ar …)
      --json          النتيجة بصيغة JSON
      --catalog FILE  فهرس غير المرفق، حيث يُقرأ برنامج
      --help          هذا النص
      --version       الإصدار

## تمّ

cli-error = خطأ: { $message }
cli-written = كُتب: { $file }
cli-serving = يُعرض { $folder } على { $url } (أوقفه بالمفتاحين Ctrl-C)
cli-published =
    { $files ->
        [zero] نُشرت الطبعة { $edition } في { $folder } بلا ملفات ({ $files })، { $size }.
        [one] نُشرت الطبعة { $edition } في { $folder }: ملف واحد ({ $files })، { $size }.
        [two] نُشرت الطبعة { $edition } في { $folder }: ملفان ({ $files })، { $size }.
        [few] نُشرت الطبعة { $edition } في { $folder }: { $files } ملفات، { $size }.
        [many] نُشرت الطبعة { $edition } في { $folder }: { $files } ملفًا، { $size }.
       *[other] نُشرت الطبعة { $edition } في { $folder }: { $files } ملف، { $size }.
    }

## ما وُجد

cli-severity-error = خطأ
cli-severity-warning = تحذير
cli-severity-notice = ملاحظة
cli-finding = { $severity }: { $message }
cli-place = في { $kind } «{ $id }»
cli-place-field = في { $kind } «{ $id }»، الحقل «{ $field }»
cli-place-program = في الحقل «{ $field }» من البرنامج
cli-witness = مثلًا { $item }
cli-witness-answers = مثلًا { $item } ({ $answers })
cli-hint = ما العمل: { $hint }
cli-mend = لإصلاحه ({ $number }): { $fix }
cli-mended = تم: { $fix }
cli-check-clean = لا شيء يستدعي الذكر: يمكن نشر البرنامج.
cli-count-errors =
    { $count ->
        [zero] لا أخطاء ({ $count })
        [one] خطأ واحد ({ $count })
        [two] خطآن ({ $count })
        [few] { $count } أخطاء
        [many] { $count } خطأً
       *[other] { $count } خطأ
    }
cli-count-warnings =
    { $count ->
        [zero] لا تحذيرات ({ $count })
        [one] تحذير واحد ({ $count })
        [two] تحذيران ({ $count })
        [few] { $count } تحذيرات
        [many] { $count } تحذيرًا
       *[other] { $count } تحذير
    }
cli-count-notices =
    { $count ->
        [zero] لا ملاحظات ({ $count })
        [one] ملاحظة واحدة ({ $count })
        [two] ملاحظتان ({ $count })
        [few] { $count } ملاحظات
        [many] { $count } ملاحظة
       *[other] { $count } ملاحظة
    }
cli-check-publishable = { $counts }. يمكن نشر البرنامج.
cli-check-errors = { $counts }. لا يمكن نشر البرنامج حتى تُصحَّح الأخطاء.

## الأجوبة

cli-answer-day = يوم { $day }
cli-answer-where = أين: { $place }
cli-answer-also = يُقبل أيضًا في: { $places }
cli-answer-prepare = كيف: { $steps }
cli-answer-why = لماذا: { $reason }
cli-answer-caution = احذر: { $caution }
cli-answer-rules = قرّرته: { $rules }
cli-answer-temporary = يسري أمر مؤقت.
cli-answer-site = أقرب مكان: { $site }، { $address }
cli-answer-assumed = افتُرض لأنه غير معروف: { $facts }
cli-question-option = { $option } — { $value }
cli-question-cannot-tell = لا أعرف

## الأوراق

cli-sheet-shortened = سطر مختصر: «{ $item }» وحده يقود إلى المكان الصحيح في { $percent } من الحالات
cli-sheet-left-out = لم يتسع المكان لما يلي: { $items }
cli-sheet-hazards-in-brief = لم يتسع المكان لذكر الأماكن التي تستقبل المواد الخطرة؛ الرمز ورقم الهاتف على الورقة يدلان عليها
cli-sheet-refused-in-brief = لم يتسع المكان لذكر وجهة ما لا يوضع هنا؛ الرمز ورقم الهاتف على الورقة يدلان عليها
# A sheet was entered into the register of a program file.
cli-registered = سجل في { $file } باسم «{ $id }».
cli-preflight-pass = الفحص السابق للطباعة: لا شيء يُصحَّح.
cli-preflight-warnings =
    { $count ->
        [zero] الفحص السابق للطباعة: لا تحذيرات ({ $count }).
        [one] الفحص السابق للطباعة: تحذير واحد ({ $count }).
        [two] الفحص السابق للطباعة: تحذيران ({ $count }).
        [few] الفحص السابق للطباعة: { $count } تحذيرات.
        [many] الفحص السابق للطباعة: { $count } تحذيرًا.
       *[other] الفحص السابق للطباعة: { $count } تحذير.
    }
cli-preflight-errors =
    { $count ->
        [zero] الفحص السابق للطباعة: لا أخطاء ({ $count }). لم يُكتب أي ملف.
        [one] الفحص السابق للطباعة: خطأ واحد ({ $count }). لم يُكتب أي ملف.
        [two] الفحص السابق للطباعة: خطآن ({ $count }). لم يُكتب أي ملف.
        [few] الفحص السابق للطباعة: { $count } أخطاء. لم يُكتب أي ملف.
        [many] الفحص السابق للطباعة: { $count } خطأً. لم يُكتب أي ملف.
       *[other] الفحص السابق للطباعة: { $count } خطأ. لم يُكتب أي ملف.
    }

## أوراق كثيرة دفعة واحدة

cli-batch-progress = [{ $done }/{ $of }] { $outcome }: { $file }
cli-batch-made = صُنعت
cli-batch-kept = لم تتغير
cli-batch-failed = فشلت
cli-batch-failed-one = فشل: { $what }
cli-batch-summary = { $folder }: صُنع { $made }، ولم يتغير { $kept }، وفشل { $failed }، وعدد البرامج { $programs }.
cli-batch-warned = عدد الأوراق المصنوعة التي فيها تحذيرات: { $count }. يعرضها lidleaf print
cli-batch-stopped = توقّف قبل إتمام كل شيء. يواصل الأمر نفسه من هنا.
cli-batch-notes-lost = تعذّر استعمال ما في batch.json، فصُنع كل شيء من جديد.
cli-batch-next-preflight = صحّح البرنامج، أو اطلب لغات أقل لهذه الورقة، ثم أعد الأمر نفسه.
cli-batch-crashed = تعذّر صنع الورقة بسبب خطأ في هذا التطبيق.
cli-batch-next-crashed = احفظ الرسالة أعلاه وملف البرنامج، وأبلغ عنهما.
cli-batch-program-errors = في البرنامج { $file } أخطاء ({ $count })، ولم تُصنع منه أي ورقة.
    .hint = يعرضها lidleaf check مع ما يجب فعله.
cli-batch-same-id = لهذه الملفات المعرّف نفسه «{ $id }»، وستكون لأوراقها الأسماء نفسها: { $files }.
    .hint = اطبعها في مجلدات مختلفة.
cli-batch-busy = تملأ عملية أخرى المجلد { $file }.
    .hint = انتظر حتى تنتهي، أو حدد مجلدًا آخر بالخيار { "\u200E" }--out.
cli-batch-no-shop = تعذّر استعمال الخطوط أو ملف ألوان المطبعة المرفقة بالتطبيق: { $detail }
    .hint = ثبّت التطبيق من جديد.

## المقارنة

cli-compare-same = يجيب البرنامجان الجواب نفسه عن كل الأغراض.
cli-compare-count =
    { $count ->
        [zero] لا يتغير أي جواب ({ $count }).
        [one] يتغير جواب واحد ({ $count }).
        [two] يتغير جوابان ({ $count }).
        [few] تتغير { $count } أجوبة.
        [many] يتغير { $count } جوابًا.
       *[other] يتغير { $count } جواب.
    }
cli-compare-share = { $percent } من الحالات

## أوامر لم تُفهم

cli-usage-command = لا يوجد أمر «{ $command }».
    .hint = يعرض lidleaf --help الأوامر.
cli-usage-option = الخيار { $option } ليس من خيارات هذا الأمر.
    .hint = يعرض lidleaf help COMMAND خياراته.
cli-usage-word = الكلمة «{ $word }» زائدة.
    .hint = ضع الأسماء التي فيها مسافات بين علامتي اقتباس.
cli-usage-not-text = «{ $word }» ليس نصًا مقروءًا.
    .hint = اكتب قيمة الخيار بترميز UTF-8.
cli-usage-needs-value = الخيار { $option } تلزمه قيمة بعده.
    .hint = يعرض lidleaf help COMMAND ما يقبله.
cli-usage-no-value = الخيار { $option } لا يأخذ قيمة.
    .hint = احذف علامة التساوي وما بعدها.
cli-usage-needs-option = الخيار { $option } ناقص.
    .hint = يعرض lidleaf help COMMAND ما يقبله.
cli-usage-needs-program = ملف البرنامج ناقص.
    .hint = اكتبه بعد الأمر: lidleaf check program.json
cli-usage-needs-item = يلزم ملف برنامج وغرض.
    .hint = مثلًا: lidleaf answer program.json "علبة بيتزا"
cli-usage-needs-two = يلزم ملفا برنامجين، السابق واللاحق.
    .hint = مثلًا: lidleaf compare 2026.json 2027.json
cli-usage-needs-folder = المجلد المراد عرضه ناقص.
    .hint = مثلًا: lidleaf serve dist/site
cli-usage-fact = «{ $word }» ليس خاصية وقيمتها.
    .hint = اكتبهما بعلامة التساوي: { "\u200E" }--fact resin=1
cli-usage-date = «{ $word }» ليس يومًا.
    .hint = اكتب السنة والشهر واليوم: 2027-01-31
cli-usage-copies = «{ $word }» ليس عدد نسخ.
    .hint = اكتب عددا صحيحا، { "\u200E" }--copies 400، أو عددًا لكل لغة، { "\u200E" }--copies en=400,es=200
cli-usage-for = «{ $word }» ليس استعمالًا لورقة.
    .hint = اكتب { "\u200E" }--for press للمطبعة، أو { "\u200E" }--for web للقراءة على الشاشة وبصوت مسموع.
cli-usage-ink-limit = «{ $word }» ليس حدًا للحبر.
    .hint = اكتب مجموع الألواح الأربعة بالمئة: { "\u200E" }--ink-limit 280
cli-usage-press-only = { $option } يخص المطبعة، و{ "\u200E" }--for web لا يصنع ملفًا للمطبعة.
    .hint = احذف أحدهما.
cli-usage-hands = «{ $word }» ليس عدد أوراق تُصنع في آن واحد.
    .hint = اكتب عددًا صحيحًا من 1 فصاعدًا: { "\u200E" }--hands 4
cli-usage-port = «{ $word }» ليس منفذًا.
    .hint = اكتب عددًا من 0 إلى 65535، والعدد 0 يأخذ أي منفذ متاح.
cli-usage-address = «{ $word }» ليس عنوان شبكة.
    .hint = اكتب 127.0.0.1 لهذا الحاسوب وحده، أو 0.0.0.0 للشبكة المحلية.
cli-usage-language = لا رسائل بلغة «{ $word }».
    .hint = توجد رسائل باللغات: { $known }.
cli-usage-sheet = لا توجد ورقة «{ $word }».
    .hint = اكتب { "\u200E" }--sheet وأحد هذه: lid، sticker، sign، postcard، self-mailer، handout.
cli-usage-fix = «{ $word }» ليس رقم طريقة إصلاح.
    .hint = يعرضها lidleaf check PROGRAM، مثل 2.1.
cli-usage-other = تعذّرت قراءة الأمر: { $detail }.
    .hint = يعرض lidleaf --help الأوامر.

## الملفات والعناوين

cli-file-missing = الملف { $file } غير موجود.
    .hint = تحقق من الاسم والمجلد.
cli-file-unreadable = تعذّرت قراءة الملف { $file }: { $detail }.
    .hint = تحقق من أنك تملك حق قراءته وأن لا برنامج آخر يمسكه.
cli-file-is-folder = { $file } مجلد وليس ملفًا.
    .hint = حدد الملف الذي بداخله.
cli-file-not-text = الملف { $file } ليس نصًا ابتداءً من السطر { $line }.
    .hint = ملفات البرامج نص بترميز UTF-8. قد يكون ملفًا من نوع آخر أو تالفًا: خذ نسخة أقدم أو صدّره من جديد.
cli-folder-missing = المجلد { $file } غير موجود.
    .hint = انشر فيه أولًا: lidleaf publish program.json --out FOLDER
cli-folder-unreadable = تعذّرت قراءة المجلد { $file }: { $detail }.
    .hint = تحقق من أنك تملك حق قراءته.
cli-name-not-text = اسم { $file } ليس نصًا مقروءًا.
    .hint = أعد تسميته.
cli-cannot-write = تعذّرت كتابة { $file }: { $detail }. ما كان هناك باقٍ كما هو.
    .hint = تحقق من أن المجلد موجود وأنك تستطيع الكتابة فيه وأن فيه متسعًا.
cli-cannot-serve = تعذّر فتح العنوان { $address }: { $detail }.
    .hint = قد يستعمله برنامج آخر: حدد منفذًا آخر بالخيار { "\u200E" }--port.

## النشر

cli-app-missing = لا يوجد تطبيق مبني في { $file }.
    .hint = ابنه بالأمر cargo xtask run، أو حدد مجلده بالخيار { "\u200E" }--app.
cli-app-list-broken = تعذّرت قراءة قائمة ملفات التطبيق { $file }: { $detail }.
    .hint = ابنِ التطبيق من جديد بالأمر cargo xtask run.
cli-app-changed = { $file } ليس كما بُني.
    .hint = ابنِ التطبيق من جديد بالأمر cargo xtask run.
cli-out-not-folder = لا يمكن النشر في { $file }: ليس مجلدًا له اسم.
    .hint = حدد مجلدًا جديدًا بالخيار { "\u200E" }--out.
cli-out-in-use = في المجلد { $file } ملفات أخرى. النشر يستبدل المجلد كله، فلم يُغيَّر شيء.
    .hint = حدد مجلدًا جديدًا أو فارغًا بالخيار { "\u200E" }--out.
cli-out-in-app = مجلد التطبيق { $app } ومجلد الدليل { $file } أحدهما داخل الآخر.
    .hint = حدد مجلدًا في مكان آخر بالخيار { "\u200E" }--out.
cli-publish-refused = في البرنامج أخطاء فلم يُنشر.
    .hint = صحح الأخطاء المعروضة أعلاه، ويعرضها lidleaf check من جديد.

## ما ليس في البرنامج

cli-unknown-item = لا يوجد غرض اسمه «{ $item }».
    .hint = جرّب كلمة أخرى له، أو مادته أو شكله.
cli-unknown-fact = «{ $fact }» ليست خاصية.
    .hint = الخصائص هي: { $known }.
cli-unknown-value = «{ $value }» ليست قيمة للخاصية «{ $fact }».
    .hint = تقبل: { $known }.
cli-unknown-measure = «{ $value }» ليس قياسا للخاصية «{ $fact }».
    .hint = اكتب رقما ووحدته، مثل { $known }.
cli-unknown-fix = لا توجد في ما وُجد في هذا البرنامج طريقة إصلاح رقمها { $number }.
    .hint = يعرض lidleaf check PROGRAM الأرقام، وهي تتغير حين يتغير البرنامج.
cli-unknown-zone = لا توجد منطقة خدمة «{ $zone }».
    .hint = المناطق هي: { $known }.
cli-unknown-town = ليس في العرض بلدة عضو باسم «{ $town }».
    .hint = البلدات هي: { $known }.
cli-unknown-stream = لا يوجد مسار «{ $stream }».
    .hint = المسارات هي: { $known }.
cli-unknown-sheet-language = البرنامج لا يُنشر بلغة «{ $language }».
    .hint = يُنشر باللغات: { $known }.
cli-too-many-languages = تأخذ الورقة من لغة إلى أربع لغات، لا { $count }.
    .hint = حددها بالخيار { "\u200E" }--languages en,es
cli-usage-size = «{ $word }» ليس مقاسًا.
    .hint = اكتب اسمًا مثل a4 أو letter، أو العرض والارتفاع والوحدة: 8x12in
cli-usage-length = «{ $word }» ليس طولًا.
    .hint = اكتب عددًا ووحدته: 6mm، 0.25in
cli-usage-fold = «{ $word }» ليس طريقة طي.
    .hint = اكتب { "\u200E" }--fold half أو { "\u200E" }--fold thirds.
cli-usage-qr-level = «{ $word }» ليس مستوى لتصحيح الأخطاء.
    .hint = اكتب M أو Q أو H.
cli-usage-words = «{ $word }» ليس عدد كلمات.
    .hint = اكتب عددًا صحيحًا من 1 فما فوق، مثل { "\u200E" }--words 6
cli-usage-up = «{ $word }» ليس عدد أوراق.
    .hint = اكتب عددًا صحيحًا: { "\u200E" }--up 4
cli-unknown-sheet-item = لا يوجد غرض «{ $item }».
    .hint = سمّه بمعرّفه كما يعرضه { "\u200E" }lidleaf answer --json.
cli-nothing-against = لا شيء يقول إن «{ $item }» يبقى خارجًا.
    .hint = الملصق المستدير تحذير: اذكر شيئًا مرفوضًا أو مادة خطرة.
