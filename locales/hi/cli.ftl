### कमांड लाइन: इसकी मदद, काम होने पर क्या कहती है, और गड़बड़ होने पर क्या।
### कमांड, विकल्प और बड़े अक्षरों के शब्द अनूदित नहीं होते।

## मदद

cli-help =
    lidleaf COMMAND [OPTIONS]

      check PROGRAM          दिखाए कि कार्यक्रम में क्या गलत है
      answer PROGRAM ITEM    एक चीज़ का जवाब दे, जैसे लोगों को दिया जाता है
      print PROGRAM          ढक्कन का लेबल या पोस्टकार्ड छापेखाने की PDF में बनाए
      publish [PROGRAM]      गाइड को किसी भी वेब सर्वर के फ़ोल्डर के रूप में लिखे
      serve FOLDER           प्रकाशित फ़ोल्डर को इस कंप्यूटर के पते पर दिखाए
      compare BEFORE AFTER   दो कार्यक्रमों के बीच बदला हर जवाब दिखाए
      demo                   नमूना कार्यक्रम लिखे
      schema                 कार्यक्रम फ़ाइलों का JSON Schema लिखे

    lidleaf help COMMAND या lidleaf COMMAND --help और बताता है।

    निकास कोड:
      0  हो गया; चेतावनियाँ हो सकती हैं
      1  कार्यक्रम या उससे बने पन्ने में गलतियाँ हैं; कुछ नहीं लिखा गया
      2  कमांड समझ नहीं आई
      3  फ़ाइल नहीं है, या वह नहीं है जो होनी चाहिए
      4  फ़ाइल लिखी नहीं जा सकी, या पता खुल नहीं सका
      5  माँगी गई चीज़, इलाका या धारा नहीं है
cli-help-check =
    lidleaf check PROGRAM [--catalog FILE] [--fix NUMBER --out FILE]

    कार्यक्रम की हर कमी दिखाता है: पहले गलतियाँ, फिर चेतावनियाँ और सूचनाएँ, हर एक उदाहरण
    और उपाय के साथ। गलतियाँ हों तो निकास कोड 1 होता है।

    कमी के साथ उसे ठीक करने के तरीके होते हैं, हर एक का नंबर जैसे 2.1। --fix 2.1 वह तरीका
    लागू करता है, बदला कार्यक्रम --out की फ़ाइल में लिखता है और उसकी कमियाँ दिखाता है।
    पढ़ा गया कार्यक्रम वैसा ही रहता है।
cli-help-answer =
    lidleaf answer PROGRAM ITEM [--fact FACT=VALUE]… [--zone ZONE] [--on YYYY-MM-DD]

    एक चीज़ का जवाब देता है, id या नाम से; नाम की वर्तनी गलत हो सकती है। जवाब किसी बात पर
    निर्भर हो तो अगला सवाल --fact विकल्प के साथ दिखता है। --fact FACT=? यानी व्यक्ति नहीं
    बता सकता। --on कुछ और न कहे तो दिन आज है।
cli-help-print =
    lidleaf print PROGRAM --sheet SHEET [OPTIONS]

      --sheet lid        कार्ट के ढक्कन का लेबल, 7 x 9 इंच
      --sheet postcard   दो तरफ़ा पोस्टकार्ड, 9 x 6 इंच
      --stream STREAM    किस धारा के बारे में
      --zone ZONE        सिर्फ़ एक इलाके के लिए
      --languages en,es  इन भाषाओं में, एक से तीन
      --out PLACE        फ़ोल्डर, या फ़ाइल का नाम
      --date YYYY-MM-DD  काम की तारीख
      --register         पन्ना कार्यक्रम के छपाई रजिस्टर में दर्ज करें
      --copies N         कितनी प्रतियाँ, रजिस्टर के लिए
      --printed YYYY-MM-DD  छपाई का दिन, रजिस्टर के लिए; नहीं तो काम की तारीख

    एक से तीन भाषाओं का पन्ना छापेखाने की PDF में बनाता है और दिखाता है कि जाँच में क्या
    मिला। गलती हो तो कुछ नहीं लिखा जाता। एक ही कार्यक्रम और तारीख से वही बाइट बनते हैं।
    न बताएँ तो धारा रीसाइक्लिंग, भाषाएँ कार्यक्रम की पहली तीन, फ़ोल्डर मौजूदा, तारीख आज।
cli-help-publish =
    lidleaf publish [PROGRAM] --out FOLDER [--app FOLDER]

    गाइड और ऐप को फ़ाइलों के फ़ोल्डर के रूप में लिखता है, जिसे कोई भी वेब सर्वर जड़ से या
    अपने फ़ोल्डर से दे सकता है। गलतियों वाला कार्यक्रम नहीं लिया जाता। पुराना संस्करण तब
    तक रहता है जब तक नया पूरा न हो। कार्यक्रम न हो तो नमूना; ऐप dist/app से, जब तक --app
    दूसरा फ़ोल्डर न बताए।
cli-help-serve =
    lidleaf serve FOLDER [--port N] [--address ADDRESS]

    प्रकाशित फ़ोल्डर को http://127.0.0.1:8080/ पर, या बताए पोर्ट और पते पर दिखाता है, जब तक
    रोका न जाए। पोर्ट 0 कोई भी खाली पोर्ट लेता है। यह गाइड देखने के लिए है, जनता के लिए नहीं।
cli-help-compare =
    lidleaf compare BEFORE AFTER [--on YYYY-MM-DD] [--notice] [--language TAG] [--out FILE]
    lidleaf compare PROGRAM PROGRAM PROGRAM… [--out FILE]

      --on YYYY-MM-DD  जैसे दोनों उस दिन हैं, सब दिनों की जगह
      --notice         चिट्ठी के लिए बदलाव की सूचना, समूहों में और संपर्क के साथ
      --language TAG   किस भाषा में लिखें
      --out FILE       फ़ाइल; .md पर खत्म हो तो Markdown के निशान

    दो कार्यक्रम: हर वह चीज़ जिसका फ़ैसला, जगह, तैयारी, कारण या सावधानी अलग है, किन जवाबों
    पर और किस दिन से; फिर दर्ज छपे पन्नों की पंक्तियाँ जो सच नहीं रहतीं। तीन से पचास
    कार्यक्रम: क्या सब में सच है, बाकी हर चीज़ में कौन अलग है, और आपस में टकराती सलाह।

    JSON में: “lidleaf-changes” (changes, asked, untrue), “lidleaf-notice” (groups, untrue, text)
    या “lidleaf-regional” (programs, agreed, differing, contradictory)। हर एक में “when”
    विकल्पों की सूची है, हर विकल्प बातों और जवाबों की सूची जो साथ सच हैं।
cli-help-schema =
    lidleaf schema [--out FILE]

    कार्यक्रम फ़ाइलों का JSON Schema लिखता है।
cli-help-demo =
    lidleaf demo [--town TOWN] [--out FILE]

    नमूना कार्यक्रम लिखता है, एक पूरी तरह बनाई हुई काउंटी, शुरू करने के लिए; --town के साथ
    उसका एक शहर: thrushwick, kettlebrae, larkenby या dunnockford.
cli-help-common =
    हर कमांड ये भी लेती है:
      --lang TAG      संदेशों और जवाबों की भाषा (en, es, ar …)
      --json          नतीजा JSON में
      --catalog FILE  साथ आई सूची की जगह दूसरी, जहाँ कार्यक्रम पढ़ा जाता है
      --help          यह पाठ
      --version       संस्करण

## हो गया

cli-error = गलती: { $message }
cli-written = लिखा गया: { $file }
cli-serving = { $folder } को { $url } पर दिखाया जा रहा है (Ctrl-C से रुकेगा)
cli-published =
    { $files ->
        [one] संस्करण { $edition } { $folder } में प्रकाशित: { $files } फ़ाइल, { $size }।
       *[other] संस्करण { $edition } { $folder } में प्रकाशित: { $files } फ़ाइलें, { $size }।
    }

## कमियाँ

cli-severity-error = गलती
cli-severity-warning = चेतावनी
cli-severity-notice = सूचना
cli-finding = { $severity }: { $message }
cli-place = जगह: { $kind } “{ $id }”
cli-place-field = जगह: { $kind } “{ $id }”, खाना “{ $field }”
cli-place-program = जगह: कार्यक्रम का खाना “{ $field }”
cli-witness = जैसे { $item }
cli-witness-answers = जैसे { $item } ({ $answers })
cli-hint = क्या करें: { $hint }
cli-mend = ठीक करने के लिए ({ $number }): { $fix }
cli-mended = हो गया: { $fix }
cli-check-clean = कोई कमी नहीं: कार्यक्रम प्रकाशित हो सकता है।
cli-count-errors =
    { $count ->
        [one] { $count } गलती
       *[other] { $count } गलतियाँ
    }
cli-count-warnings =
    { $count ->
        [one] { $count } चेतावनी
       *[other] { $count } चेतावनियाँ
    }
cli-count-notices =
    { $count ->
        [one] { $count } सूचना
       *[other] { $count } सूचनाएँ
    }
cli-check-publishable = { $counts }। कार्यक्रम प्रकाशित हो सकता है।
cli-check-errors = { $counts }। गलतियाँ ठीक होने तक कार्यक्रम प्रकाशित नहीं हो सकता।

## जवाब

cli-answer-day = दिन: { $day }
cli-answer-where = कहाँ: { $place }
cli-answer-also = यहाँ भी लिया जाता है: { $places }
cli-answer-prepare = कैसे: { $steps }
cli-answer-why = क्यों: { $reason }
cli-answer-caution = सावधानी: { $caution }
cli-answer-rules = इन नियमों से तय: { $rules }
cli-answer-temporary = एक अस्थायी आदेश लागू है।
cli-answer-site = सबसे पास: { $site }, { $address }
cli-answer-assumed = पता नहीं था, इसलिए माना: { $facts }
cli-question-option = { $option } — { $value }
cli-question-cannot-tell = नहीं बता सकते

## पन्ने

cli-sheet-shortened = छोटी की गई पंक्ति: अकेला “{ $item }” { $percent } मामलों में सही जगह बताता है
cli-registered = { $file } के रजिस्टर में “{ $id }” नाम से दर्ज।
cli-preflight-pass = प्रीफ़्लाइट: कुछ ठीक नहीं करना।
cli-preflight-warnings =
    { $count ->
        [one] प्रीफ़्लाइट: { $count } चेतावनी।
       *[other] प्रीफ़्लाइट: { $count } चेतावनियाँ।
    }
cli-preflight-errors =
    { $count ->
        [one] प्रीफ़्लाइट: { $count } गलती। फ़ाइल नहीं लिखी गई।
       *[other] प्रीफ़्लाइट: { $count } गलतियाँ। फ़ाइल नहीं लिखी गई।
    }

## तुलना

cli-compare-same = दोनों कार्यक्रम हर चीज़ का एक ही जवाब देते हैं।
cli-compare-count =
    { $count ->
        [one] { $count } जवाब बदलता है।
       *[other] { $count } जवाब बदलते हैं।
    }
cli-compare-share = { $percent } मामले

## जो कमांड समझ नहीं आईं

cli-usage-command = “{ $command }” कमांड नहीं है।
    .hint = lidleaf --help कमांड दिखाता है।
cli-usage-option = विकल्प { $option } इस कमांड का नहीं है।
    .hint = lidleaf help COMMAND विकल्प दिखाता है।
cli-usage-word = “{ $word }” एक शब्द ज़्यादा है।
    .hint = जिन नामों में खाली जगह हो, उन्हें उद्धरण चिह्न में रखें।
cli-usage-not-text = “{ $word }” पढ़ने लायक पाठ नहीं है।
    .hint = विकल्प का मान UTF-8 में लिखें।
cli-usage-needs-value = विकल्प { $option } के बाद मान चाहिए।
    .hint = lidleaf help COMMAND बताता है कि क्या।
cli-usage-no-value = विकल्प { $option } मान नहीं लेता।
    .hint = बराबर का चिह्न और उसके बाद का हटाएँ।
cli-usage-needs-option = विकल्प { $option } नहीं है।
    .hint = lidleaf help COMMAND बताता है कि वह क्या लेता है।
cli-usage-needs-program = कार्यक्रम फ़ाइल नहीं बताई।
    .hint = कमांड के बाद लिखें: lidleaf check program.json
cli-usage-needs-item = कार्यक्रम फ़ाइल और चीज़ चाहिए।
    .hint = जैसे: lidleaf answer program.json "पिज़्ज़ा का डिब्बा"
cli-usage-needs-two = दो कार्यक्रम फ़ाइलें चाहिए, पहले की और बाद की।
    .hint = जैसे: lidleaf compare 2026.json 2027.json
cli-usage-needs-folder = दिखाने का फ़ोल्डर नहीं बताया।
    .hint = जैसे: lidleaf serve dist/site
cli-usage-fact = “{ $word }” बात और जवाब नहीं है।
    .hint = बराबर के चिह्न से लिखें: --fact resin=1
cli-usage-date = “{ $word }” दिन नहीं है।
    .hint = साल, महीना और दिन लिखें: 2027-01-31
cli-usage-copies = “{ $word }” प्रतियों की संख्या नहीं है।
    .hint = पूरी संख्या लिखें: --copies 400
cli-usage-port = “{ $word }” पोर्ट नहीं है।
    .hint = 0 से 65535 तक की संख्या लिखें; 0 कोई भी खाली पोर्ट लेता है।
cli-usage-address = “{ $word }” नेटवर्क पता नहीं है।
    .hint = सिर्फ़ इस कंप्यूटर के लिए 127.0.0.1, स्थानीय नेटवर्क के लिए 0.0.0.0 लिखें।
cli-usage-language = “{ $word }” में संदेश नहीं हैं।
    .hint = इनमें हैं: { $known }।
cli-usage-sheet = “{ $word }” पन्ना नहीं है।
    .hint = --sheet lid या --sheet postcard लिखें।
cli-usage-fix = “{ $word }” ठीक करने के तरीके का नंबर नहीं है।
    .hint = lidleaf check PROGRAM नंबर दिखाता है, जैसे 2.1।
cli-usage-other = कमांड पढ़ी नहीं जा सकी: { $detail }।
    .hint = lidleaf --help कमांड दिखाता है।

## फ़ाइलें और पते

cli-file-missing = फ़ाइल { $file } नहीं है।
    .hint = नाम और फ़ोल्डर देखें।
cli-file-unreadable = फ़ाइल { $file } पढ़ी नहीं जा सकी: { $detail }।
    .hint = देखें कि आप उसे पढ़ सकते हैं और कोई दूसरा प्रोग्राम उसे नहीं रोके है।
cli-file-is-folder = { $file } फ़ोल्डर है, फ़ाइल नहीं।
    .hint = उसके अंदर की फ़ाइल बताएँ।
cli-file-not-text = फ़ाइल { $file } पंक्ति { $line } से पाठ नहीं है।
    .hint = कार्यक्रम फ़ाइलें UTF-8 पाठ होती हैं। शायद दूसरी या बिगड़ी फ़ाइल है: पुरानी कॉपी लें, या फिर निर्यात करें।
cli-folder-missing = फ़ोल्डर { $file } नहीं है।
    .hint = पहले उसमें प्रकाशित करें: lidleaf publish program.json --out FOLDER
cli-folder-unreadable = फ़ोल्डर { $file } पढ़ा नहीं जा सका: { $detail }।
    .hint = देखें कि आप उसे पढ़ सकते हैं।
cli-name-not-text = { $file } का नाम पढ़ने लायक पाठ नहीं है।
    .hint = नाम बदलें।
cli-cannot-write = { $file } लिखी नहीं जा सकी: { $detail }। पहले जो था, वैसा ही है।
    .hint = देखें कि फ़ोल्डर है, आप वहाँ लिख सकते हैं और जगह है।
cli-cannot-serve = पता { $address } खुल नहीं सका: { $detail }।
    .hint = शायद दूसरा प्रोग्राम उसे ले चुका है: --port से दूसरा पोर्ट बताएँ।

## प्रकाशन

cli-app-missing = { $file } में बना हुआ ऐप नहीं है।
    .hint = cargo xtask run से बनाएँ, या --app से उसका फ़ोल्डर बताएँ।
cli-app-list-broken = ऐप की फ़ाइलों की सूची { $file } पढ़ी नहीं जाती: { $detail }।
    .hint = cargo xtask run से ऐप फिर बनाएँ।
cli-app-changed = { $file } वैसी नहीं है जैसी बनी थी।
    .hint = cargo xtask run से ऐप फिर बनाएँ।
cli-out-not-folder = { $file } में प्रकाशित नहीं हो सकता: यह नाम वाला फ़ोल्डर नहीं है।
    .hint = --out से नया फ़ोल्डर बताएँ।
cli-out-in-use = फ़ोल्डर { $file } में दूसरी फ़ाइलें हैं। प्रकाशन पूरा फ़ोल्डर बदल देता है, इसलिए कुछ नहीं बदला गया।
    .hint = --out से नया या खाली फ़ोल्डर बताएँ।
cli-out-in-app = ऐप का फ़ोल्डर { $app } और गाइड का फ़ोल्डर { $file } एक-दूसरे के अंदर हैं।
    .hint = --out से कहीं और का फ़ोल्डर बताएँ।
cli-publish-refused = कार्यक्रम में गलतियाँ हैं, प्रकाशित नहीं हुआ।
    .hint = ऊपर की गलतियाँ ठीक करें; lidleaf check उन्हें फिर दिखाता है।

## जो कार्यक्रम में नहीं है

cli-unknown-item = “{ $item }” नाम की चीज़ नहीं है।
    .hint = दूसरा शब्द, या सामग्री या आकार लिखकर देखें।
cli-unknown-fact = “{ $fact }” कोई बात नहीं है।
    .hint = बातें ये हैं: { $known }।
cli-unknown-value = “{ $value }”, “{ $fact }” का जवाब नहीं है।
    .hint = ये चलते हैं: { $known }।
cli-unknown-fix = इस कार्यक्रम की किसी कमी का नंबर { $number } वाला तरीका नहीं है।
    .hint = lidleaf check PROGRAM नंबर दिखाता है; कार्यक्रम बदलने पर वे बदलते हैं।
cli-unknown-zone = इलाका “{ $zone }” नहीं है।
    .hint = इलाके ये हैं: { $known }।
cli-unknown-town = नमूने में शहर “{ $town }” नहीं है।
    .hint = शहर ये हैं: { $known }।
cli-unknown-stream = धारा “{ $stream }” नहीं है।
    .hint = धाराएँ ये हैं: { $known }।
cli-unknown-sheet-language = कार्यक्रम “{ $language }” में प्रकाशित नहीं होता।
    .hint = इनमें प्रकाशित होता है: { $known }।
cli-too-many-languages = एक पन्ने पर एक से तीन भाषाएँ, { $count } नहीं।
    .hint = --languages en,es से बताएँ
