### छपाई की स्क्रीन और छपाई से पहले की जाँच (प्रीफ़्लाइट) क्या कहती है।

## छपाई की स्क्रीन

print-sheet = पन्ना
sheet-lid = कार्ट के ढक्कन का लेबल
sheet-sticker = गोल स्टिकर, एक संदेश
sheet-sign = साझे डिब्बों पर बोर्ड
sheet-postcard = डाक का पोस्टकार्ड
sheet-self-mailer = मुड़ा हुआ डाक पत्र
sheet-handout = पर्चा
print-size = तैयार नाप
print-size-usual = आम नाप
print-size-typed = नीचे लिखा हुआ
print-typed-size = इकाई के साथ नाप, जैसे 8 x 12 in; गोल हो तो 115 mm
print-size-unread = “{ $text }” नाप नहीं है। चौड़ाई, ऊँचाई और इकाई लिखें: 8 x 12 in
print-corner = कोने की त्रिज्या, मिमी में
print-fold = मोड़
print-fold-half = एक, बीच में
print-fold-thirds = दो, पत्र की तरह
print-die-line = डाई की रेखा स्पॉट रंग में खींचें
print-printers-mark = छापेखाने के निशान की जगह रखें
print-more = छापेखाने के लिए और
print-stock = छपाई की सामग्री
print-thickness = सामग्री की मोटाई, मिमी में
print-distance = कितनी दूर से पढ़ें, मिमी में
print-qr-level = QR कोड: कितना नुकसान सहे
print-qr-most = जितना उसे बड़ा किए बिना हो सके
print-qr-medium = 15% (M)
print-qr-quartile = 25% (Q)
print-qr-high = 30% (H)
print-words = एक पंक्ति में ज़्यादा से ज़्यादा शब्द
print-words-any = जितने ज़रूरी हों
print-item = एक चीज़
print-press = एक प्रेस शीट पर कई
print-press-none = हर पृष्ठ पर एक
print-work-and-turn = वर्क ऐंड टर्न (दोनों ओर एक ही प्लेट)
print-no-item = “{ $item }” चीज़ नहीं है। सूची से चुनें।
print-nothing-against = कहीं नहीं लिखा कि “{ $item }” यहाँ मना है। ऐसी चीज़ चुनें जो मना है, या कोई खतरा।
print-ticket = काम की पर्ची डाउनलोड करें
print-number-unread = “{ $text }” मिलीमीटर की संख्या नहीं है।
ticket-title = काम की पर्ची
ticket-sheet = पन्ना
ticket-files = फ़ाइलें
ticket-file =
    { $pages ->
        [one] { $file }: { $pages } पृष्ठ
       *[other] { $file }: { $pages } पृष्ठ
    }
ticket-quantity = मात्रा
ticket-copies =
    { $copies ->
        [one] { $languages }: { $copies } प्रति
       *[other] { $languages }: { $copies } प्रतियाँ
    }
ticket-copies-unsaid = { $languages }: प्रतियों की संख्या तय होनी है
ticket-trim = तैयार नाप
ticket-size = { $width } × { $height } मिमी ({ $across } × { $down } इंच)
ticket-bleed = ब्लीड, हर ओर
ticket-mm = { $length } मिमी
ticket-corners = कोने
ticket-round = गोल कटाई
ticket-radius = गोल, त्रिज्या { $radius } मिमी
ticket-square = सीधे
ticket-die = डाई की रेखा स्पॉट रंग “Dieline” में, ओवरप्रिंट: इसे न छापें
ticket-folds = मोड़
ticket-fold = आड़ा, खुले पन्ने के ऊपरी किनारे से { $at } मिमी नीचे
ticket-fold-order = पते वाला हिस्सा बाहर रहता है। उसका निचला किनारा मोड़ है; पत्र ऊपरी किनारे से खुलता है और वहीं टैब से बंद होता है।
ticket-colours = रंग
ticket-colours-one = 4/0: एक ओर सियान, मैजेंटा, पीला, काला
ticket-colours-two = 4/4: दोनों ओर सियान, मैजेंटा, पीला, काला
ticket-colours-note = PDF/X-4; काला पाठ ओवरप्रिंट; कुल स्याही ज़्यादा से ज़्यादा { $limit }%
ticket-stock = छपाई की सामग्री
ticket-stock-unsaid = तय होना है
ticket-thickness = मोटाई { $thickness } मिमी
ticket-thickness-unsaid = मोटाई की पुष्टि होनी है
ticket-press = प्रेस शीट
ticket-work-and-turn = वर्क ऐंड टर्न: पिछला हिस्सा उसी प्लेट पर
ticket-mark = छापेखाने का निशान
ticket-mark-room = छोटे अक्षरों में 19 × 6 मिमी जगह रखी गई है
ticket-edition = संस्करण
ticket-date = काम की तारीख
ticket-contact = सवाल इनसे पूछें
print-zone = सिर्फ़ एक इलाके के लिए
print-language = भाषा { $number }
print-make = पन्ना बनाएँ
print-making = पन्ना बन रहा है…
print-done = पन्ना तैयार है।
print-refused = फ़ाइल नहीं बनी। नीचे की गलतियाँ ठीक करके फिर कोशिश करें।
print-unreachable = छपाई का हिस्सा नहीं आया। कनेक्शन देखें और फिर कोशिश करें।
print-download = छापेखाने की PDF डाउनलोड करें
print-download-web = वेब की PDF डाउनलोड करें
print-web-hint = छापेखाने की PDF छापेखाने को जाती है। वेब की PDF स्क्रीन पर पढ़ने और सुनने के लिए है।
print-profile = छापेखाने की रंग प्रोफ़ाइल (.icc)
print-profile-hint = न हो तो साथ आई, चिकने कागज़ की प्रोफ़ाइल लगती है।
print-ink-limit = सबसे ज़्यादा स्याही, % में
print-mark = पन्ने पर निशान { $number }
print-contradictions = आपस में टकराती पंक्तियाँ: { $count }। छापने से पहले नीचे देखें।
print-page = पृष्ठ { $number }
print-no-stream = “{ $stream }” धारा नहीं है। सूची से चुनें।
print-no-zone = “{ $zone }” इलाका नहीं है। सूची से चुनें।
print-no-language = कार्यक्रम की एक से चार भाषाएँ चुनें।
print-shortened = { $item }: अकेली यह पंक्ति { $percent } मामलों में सही है; जगह के लिए बाकी छोड़ दिया गया।
print-left-out = जगह न होने से छोड़ा गया: { $items }।
print-hazards-in-brief = खतरे वाली चीज़ें लेने वाली जगहें नहीं समाईं; पन्ने का कोड और फ़ोन नंबर उन तक पहुँचाते हैं।
print-refused-in-brief = जो यहाँ नहीं जाता वह कहाँ दें, इसके लिए जगह नहीं बची; पन्ने का कोड और फ़ोन नंबर यह बताते हैं।
preflight-title = छपाई के लिए जाँचा गया

## प्रीफ़्लाइट: क्या जाँचा गया और सही है। नाप मिमी में, अक्षर पॉइंट में

preflight-bleed-and-safe-area = चारों ओर { $bleed } मिमी ब्लीड, किनारे से { $safe } मिमी के अंदर कुछ नहीं।
preflight-boxes = तैयार नाप { $finished } मिमी, ब्लीड के साथ { $bleed } मिमी, निशानों वाला पृष्ठ { $page } मिमी।
preflight-contrast = शब्द पृष्ठभूमि पर साफ़ दिखते हैं: कंट्रास्ट कम से कम { $ratio }:1, काले का अंतर कम से कम { $difference }%।
preflight-fonts-embedded = हर फ़ॉन्ट फ़ाइल में है, सिर्फ़ काम के { $glyphs } अक्षर-रूपों के साथ: { $fonts }।
preflight-pictures-have-words = न देख सकने वालों के लिए शब्दों वाले चित्र: { $count }।
preflight-hazards-shown = दिखाए गए खतरे: { $count }।
preflight-ink-coverage = एक जगह सबसे ज़्यादा स्याही: { $coverage }%, सीमा { $limit }%।
preflight-postal-zones = पते वाली ओर की खाली जगहें खाली हैं।
preflight-qr-code = QR कोड: संस्करण { $version }, स्तर { $level }, खाने { $module } मिमी, चारों ओर { $quiet } खाने खाली।
preflight-type-sizes = अक्षर { $body } पॉइंट, सबसे छोटे { $smallest }; { $distance } मिमी दूर से पढ़ने के लिए कम से कम { $floor } चाहिए।
preflight-translation-outdated = “{ $text }” ({ $lang }): अनुवाद के बाद मूल पाठ बदला है। छापने से पहले फिर अनुवाद करें।
preflight-line-often-wrong = अकेला “{ $text }” सिर्फ़ { $percent }% मामलों में सही है। और बताएँ, या पंक्ति हटाएँ।
preflight-lines-contradict = “{ $text }” और “{ $other }” ({ $lang }) आपस में टकराते हैं: पहला पढ़ने वाला उसे दोनों के लिए मान लेगा। एक के शब्द बदलें।
preflight-picture-without-words = जो देख नहीं सकते, उनके लिए नहीं लिखा कि यहाँ क्या है ({ $what })। लिखें।

## प्रीफ़्लाइट: छापेखाने भेजने से पहले देख लें

preflight-translation-unreviewed = “{ $lang }” के पाठ किसी ने नहीं जाँचे। छापने से पहले पढ़वाएँ।
preflight-postal-field-missing = { $field }: खाली है। भरें, या छापेखाने से भरवाएँ।
preflight-qr-dense = QR कोड बारीक है (संस्करण { $version }, { $characters } अक्षर)। छोटा पता आसानी से स्कैन होता है।

## प्रीफ़्लाइट: गलतियाँ। ठीक होने तक फ़ाइल नहीं बनेगी

preflight-address-invalid = QR कोड का पता काम का नहीं: “{ $address }”। पूरा लिखें, https:// से शुरू करके
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: “{ $text }” में लिखने की दिशा पलटने वाला अक्षर है ({ $codepoint }, जगह { $position })। मिटाकर फिर लिखें।
        [control] { $place }: “{ $text }” में नियंत्रण अक्षर है ({ $codepoint }, जगह { $position })। मिटाकर फिर लिखें।
       *[invisible] { $place }: “{ $text }” में न दिखने वाला अक्षर है ({ $codepoint }, जगह { $position })। मिटाकर फिर लिखें।
    }
preflight-boxes-wrong = नाप एक-दूसरे के अंदर नहीं आते: तैयार { $finished } मिमी, ब्लीड के साथ { $bleed } मिमी, पृष्ठ { $page } मिमी। दूसरा पन्ना चुनें।
preflight-contrast-low = “{ $text }” पृष्ठभूमि पर मुश्किल से दिखता है: कंट्रास्ट { $ratio }:1, कम से कम { $least }:1 चाहिए; काले का अंतर { $difference }%, कम से कम { $apart }% चाहिए। दूसरी स्याही चुनें।
preflight-ink-limit-invalid = “{ $limit }” स्याही की सीमा नहीं है। चारों प्लेटों का वह जोड़ लिखें जो छापाखाना बताए, 100 से 400% तक।
preflight-qr-not-quiet = QR कोड के चारों ओर { $quiet } खाने खाली कागज़ नहीं है। वहाँ जो है, उसे हटाएँ।
preflight-date-invalid = “{ $date }” तारीख नहीं है। साल, महीना और दिन लिखें: 2027-01-31
preflight-distance-invalid = “{ $distance }” मिमी में दूरी नहीं है। लिखें कि पढ़ने वाला कितनी दूर है।
preflight-font-not-embeddable = फ़ॉन्ट “{ $family }” फ़ाइल में रखना मना है। दूसरा चुनें।
preflight-font-unreadable = फ़ॉन्ट “{ $family }” की फ़ाइल पढ़ी नहीं जाती। फिर से लाएँ।
preflight-hazard-accepted = { $place }: “{ $text }” खतरा है, पर ली जाने वाली चीज़ों में है। खतरा कार्ट या बिन में नहीं जाता: नियम ठीक करें।
preflight-hazard-missing = “{ $lang }” में खतरा “{ $text }” छूटा है। जगह के लिए खतरे नहीं छोड़े जाते।
preflight-language-count = एक पन्ने पर एक से चार भाषाएँ, { $count } नहीं।
preflight-language-invalid = “{ $lang }” भाषा का टैग नहीं है। जैसे es या es-US लिखें।
preflight-language-twice = भाषा “{ $lang }” दो बार है। एक हटाएँ।
preflight-languages-differ =
    { $what ->
        [sections] “{ $lang }” वही नहीं कहती जो “{ $first }”: उसमें { $theirs } भाग हैं, { $ours } नहीं। जो छूटा है, उसका अनुवाद करें।
        [verdict] “{ $lang }” वही नहीं कहती जो “{ $first }”: भाग { $section } का फ़ैसला अलग है। ठीक करें।
        [lines] “{ $lang }” वही नहीं कहती जो “{ $first }”: भाग { $section } में { $theirs } पंक्तियाँ हैं, { $ours } नहीं। जो छूटा है, उसका अनुवाद करें।
       *[picture] “{ $lang }” वही नहीं कहती जो “{ $first }”: भाग { $section } की पंक्ति { $line } का चित्र या खतरे का निशान अलग है। ठीक करें।
    }
preflight-missing-glyph = { $place }: किसी फ़ॉन्ट में { $characters } नहीं, जो “{ $text }” में है। उसके बिना लिखें या ऐसा फ़ॉन्ट जोड़ें।
preflight-nothing-to-say = छापने को कुछ नहीं: कार्यक्रम इस धारा पर कुछ नहीं कहता। पहले नियम लिखें।
preflight-outside-safe-area = किनारे से { $safe } मिमी के अंदर, जहाँ कट सकता है: { $what }
preflight-pictogram-unknown = { $place }: चित्र “{ $pictogram }” नहीं है। दूसरा चुनें।
preflight-picture-too-small = चित्र सिर्फ़ { $side } मिमी चौड़ा है। कम पंक्तियाँ या भाषाएँ छापें।
preflight-postal-field-full = { $field }: “{ $text }” (पंक्ति { $line }) नहीं समाता। छोटा करें।
preflight-postal-zone = यहाँ पड़ता है ({ $zone }): { $what }। हटाएँ या छोटा करें।
preflight-profile-unusable =
    { $why ->
        [not-icc] यह फ़ाइल रंग प्रोफ़ाइल नहीं है। वह CMYK आउटपुट प्रोफ़ाइल (.icc) लें जो छापाखाना बताए।
        [cut-short] रंग प्रोफ़ाइल अधूरी है। छापेखाने से फिर भेजने को कहें।
        [no-tables] रंग प्रोफ़ाइल “{ $name }” में रंग तालिकाएँ नहीं हैं। वह CMYK आउटपुट प्रोफ़ाइल लें जो छापाखाना बताए।
       *[other-kind] रंग प्रोफ़ाइल “{ $name }” CMYK की आउटपुट प्रोफ़ाइल नहीं है: वह { $class } के लिए है, { $space } में। वह लें जो छापाखाना बताए।
    }
preflight-qr-too-fine = QR कोड स्कैन के लिए बहुत बारीक है: खाने { $module } मिमी। पता छोटा करें।
preflight-qr-too-long = पते में { $characters } अक्षर हैं, QR कोड में इतने नहीं आते। छोटा करें।
preflight-rule-too-thin = एक रेखा { $width } पॉइंट पतली है; सबसे पतली छपने वाली रेखा { $least } पॉइंट है।
preflight-step-invalid = जो छोड़ा जा सकता है, उसका चरण { $number } नहीं हो सकता। ब्योरा, अंग्रेज़ी में: { $why }।
preflight-text-empty = { $place } में शब्द नहीं हैं। लिखें।
preflight-text-overlaps = “{ $text }” और “{ $other }” एक-दूसरे पर चढ़े हैं। एक छोटा करें।
preflight-text-too-long = { $place }: “{ $text }” सबसे छोटे पढ़ने लायक { $floor } पॉइंट में भी नहीं समाता। लगभग { $cut } अक्षर घटाएँ।
preflight-too-many-lines = “{ $sheet }” में { $languages } भाषाओं में { $lines } पंक्तियाँ हैं; { $floor } पॉइंट पर { $missing } मिमी कम पड़ते हैं। पंक्तियाँ या भाषाएँ घटाएँ।
preflight-too-much-ink = एक जगह { $coverage }% स्याही है; सीमा { $limit }%। हल्का रंग चुनें।
preflight-type-too-small = “{ $text }” { $size } पॉइंट में है; कम से कम { $least } चाहिए। पाठ छोटे करें।
preflight-word-too-wide = { $place }: “{ $text }” का शब्द “{ $word }” { $floor } पॉइंट पर अपने खाने से चौड़ा है। लगभग { $room } अक्षर तक का शब्द लें।
sheet-text-title = शीर्षक ({ $lang })
sheet-text-heading = भाग { $section } का शीर्षक ({ $lang })
sheet-text-line = भाग { $section } की पंक्ति { $line } ({ $lang })
sheet-text-scan = QR कोड के पास का वाक्य ({ $lang })
sheet-text-foot = नीचे की पंक्ति { $line } ({ $lang })
sheet-text-issuer = पन्ना किसने निकाला
sheet-text-short-address = छोटा वेब पता
sheet-text-notice = छपाई की सूचना
sheet-text-edition = संस्करण
sheet-text-job-name = काम का नाम
sheet-text-slug = पन्ने के बाहर की पंक्ति
sheet-text-return-address = वापसी पता { $line }
sheet-text-indicia = डाक भुगतान का निशान { $line }
sheet-text-addressee = पाने वाले का पता { $line }
postal-zone-barcode-clear = डाक के बारकोड की सफ़ेद पट्टी
postal-zone-read-area = वह जगह जहाँ डाक की मशीनें पता पढ़ती हैं
drawn-code = QR कोड
drawn-picture = चित्र
drawn-area = स्याही वाला हिस्सा
sheet-cart-lid = कार्ट के ढक्कन का लेबल
sheet-round-sticker = गोल स्टिकर
sheet-enclosure-sign = साझे डिब्बों पर बोर्ड
sheet-text-stock = छपाई की सामग्री
sheet-postcard-mailer = डाक का पोस्टकार्ड
profile-class-mntr = स्क्रीन
profile-class-scnr = स्कैनर या कैमरे
profile-class-other = दूसरे काम
preflight-size-zero = पन्ना { $width } × { $height } मिमी है। दोनों भुजाएँ शून्य से बड़ी हों: तैयार नाप फिर लिखें।
preflight-size-fixed = पन्ना { $width } × { $height } मिमी है, पर यह सिर्फ़ इन नापों में बनता है: { $names }।
preflight-size-out-of-range = पन्ना { $width } × { $height } मिमी है। { $least } से { $most } मिमी तक की भुजाएँ इकाई के साथ लिखें।
preflight-size-too-narrow = पन्ना { $width } × { $height } मिमी है। एक भुजा दूसरी की ज़्यादा से ज़्यादा { $most } गुना हो सकती है।
preflight-size-not-round = गोल लेबल की चौड़ाई और ऊँचाई बराबर होती है, { $width } × { $height } मिमी नहीं। व्यास लिखें।
preflight-postal-size = डाक { $width } × { $height } मिमी का कार्ड, पत्र या बड़ा पत्र (flat) नहीं लेती। पत्र 127 से 292 मिमी लंबा और 89 से 156 मिमी ऊँचा होता है, लंबाई ऊँचाई की 1.3 से 2.5 गुना; बड़ा पत्र 381 × 305 मिमी तक।
preflight-corner-radius = कोनों की गोलाई की त्रिज्या { $radius } मिमी है। 0 से { $most } मिमी तक लिखें।
preflight-stock-thickness = सामग्री { $thickness } मिमी मोटी है; ऐसा कागज़ या लेबल की फ़िल्म नहीं होती। देखें कि छापेखाने ने क्या भेजा।
preflight-one-message = गोल लेबल पर एक ही संदेश होता है, { $lines } नहीं। एक चीज़ चुनें।
preflight-press-size = प्रेस शीट { $width } × { $height } मिमी है। { $least } से { $most } मिमी तक की भुजाएँ इकाई के साथ लिखें।
preflight-press-gutter = बीच की जगह { $gutter } मिमी है। दो ब्लीड के लिए पन्नों के बीच { $least } मिमी चाहिए।
preflight-press-too-small = { $width } × { $height } मिमी की प्रेस शीट पर ब्लीड और निशानों के साथ एक भी पन्ना नहीं समाता। बड़ी शीट चुनें।
preflight-press-up = प्रेस शीट पर { $up } माँगे गए, पर { $most } ही आते हैं। 1 से { $most } तक माँगें।
preflight-on-a-fold = “{ $what }” मोड़ से { $distance } मिमी के अंदर है। पाठ छोटे करें।
preflight-postal-thickness = तैयार चीज़ { $thickness } मिमी मोटी है। डाक को { $least } से { $most } मिमी चाहिए: दूसरी सामग्री चुनें।
preflight-ticket-too-long = काम की पर्ची “{ $place }” पर बहुत लंबी है। वहाँ लिखा छोटा करें।
preflight-imposed = { $width } × { $height } मिमी की प्रेस शीट पर { $up }: चौड़ाई में { $across }, ऊँचाई में { $down }।
preflight-fits-fewer = इन भाषाओं में साथ-साथ सब कुछ समा जाता है: { $tags }। इन्हें छापें, और बाकी को अलग पन्ने पर।
preflight-fits-larger = { $size } आकार में सब कुछ समा जाता है। वह आकार चुनें।
preflight-folds-clear = मोड़: { $count }। उनसे { $distance } मिमी के अंदर कुछ नहीं छपता।
preflight-postal-class =
    { $class ->
        [card] डाक में कार्ड: { $length } × { $height } मिमी।
        [folded] डाक में मुड़ा हुआ पत्र: मुड़ने पर { $length } × { $height } मिमी।
        [flat] डाक में बड़ा पत्र (flat): { $length } × { $height } मिमी।
       *[letter] डाक में पत्र: { $length } × { $height } मिमी।
    }
preflight-postal-thickness-unknown = सामग्री की मोटाई नहीं बताई गई। डाक को तैयार चीज़ { $least } से { $most } मिमी की चाहिए: छापेखाने से पूछें।
preflight-sign-letters = शीर्षक के बड़े अक्षर { $height } मिमी ऊँचे हैं, { $distance } मिमी दूर से पढ़ने के लिए काफ़ी।
preflight-sign-letters-small = शीर्षक के बड़े अक्षर { $height } मिमी ऊँचे हैं। { $distance } मिमी दूर से पढ़े जाने वाले सुगम्य बोर्ड पर { $least } मिमी चाहिए: पाठ छोटे करें या बड़ा बोर्ड लें।
preflight-die-line = डाई की रेखा अपने स्पॉट रंग “Dieline” में है, छपने वाली किसी प्लेट पर नहीं।
