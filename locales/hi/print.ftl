### छपाई की स्क्रीन और छपाई से पहले की जाँच (प्रीफ़्लाइट) क्या कहती है।

## छपाई की स्क्रीन

print-sheet = पन्ना
sheet-lid = कार्ट के ढक्कन का लेबल, 7 × 9 इंच
sheet-postcard = डाक का पोस्टकार्ड, 9 × 6 इंच
print-zone = सिर्फ़ एक इलाके के लिए
print-language = भाषा { $number }
print-make = पन्ना बनाएँ
print-making = पन्ना बन रहा है…
print-done = पन्ना तैयार है।
print-refused = फ़ाइल नहीं बनी। नीचे की गलतियाँ ठीक करके फिर कोशिश करें।
print-unreachable = छपाई का हिस्सा नहीं आया। कनेक्शन देखें और फिर कोशिश करें।
print-download = छापेखाने की PDF डाउनलोड करें
print-page = पृष्ठ { $number }
print-no-stream = “{ $stream }” धारा नहीं है। सूची से चुनें।
print-no-zone = “{ $zone }” इलाका नहीं है। सूची से चुनें।
print-no-language = कार्यक्रम की एक से तीन भाषाएँ चुनें।
print-shortened = { $item }: अकेली यह पंक्ति { $percent } मामलों में सही है; जगह के लिए बाकी छोड़ दिया गया।
preflight-title = छपाई के लिए जाँचा गया

## प्रीफ़्लाइट: क्या जाँचा गया और सही है। नाप मिमी में, अक्षर पॉइंट में

preflight-bleed-and-safe-area = चारों ओर { $bleed } मिमी ब्लीड, किनारे से { $safe } मिमी के अंदर कुछ नहीं।
preflight-hazards-shown = दिखाए गए खतरे: { $count }।
preflight-ink-coverage = एक जगह सबसे ज़्यादा स्याही: { $coverage }%, सीमा { $limit }%।
preflight-postal-zones = पते वाली ओर की खाली जगहें खाली हैं।
preflight-qr-code = QR कोड: संस्करण { $version }, स्तर { $level }, खाने { $module } मिमी, चारों ओर { $quiet } खाने खाली।
preflight-type-sizes = अक्षर { $body } पॉइंट, सबसे छोटे { $smallest }; { $distance } मिमी दूर से पढ़ने के लिए कम से कम { $floor } चाहिए।

## प्रीफ़्लाइट: छापेखाने भेजने से पहले देख लें

preflight-translation-unreviewed = “{ $lang }” के पाठ किसी ने नहीं जाँचे। छापने से पहले पढ़वाएँ।
preflight-postal-field-missing = “{ $field }” खाली है। भरें, या छापेखाने से भरवाएँ।
preflight-qr-dense = QR कोड बारीक है (संस्करण { $version }, { $characters } अक्षर)। छोटा पता आसानी से स्कैन होता है।

## प्रीफ़्लाइट: गलतियाँ। ठीक होने तक फ़ाइल नहीं बनेगी

preflight-address-invalid = QR कोड का पता काम का नहीं: “{ $address }”। पूरा लिखें, https:// से शुरू करके
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: “{ $text }” में लिखने की दिशा पलटने वाला अक्षर है ({ $codepoint }, जगह { $position })। मिटाकर फिर लिखें।
        [control] { $place }: “{ $text }” में नियंत्रण अक्षर है ({ $codepoint }, जगह { $position })। मिटाकर फिर लिखें।
       *[invisible] { $place }: “{ $text }” में न दिखने वाला अक्षर है ({ $codepoint }, जगह { $position })। मिटाकर फिर लिखें।
    }
preflight-date-invalid = “{ $date }” तारीख नहीं है। साल, महीना और दिन लिखें: 2027-01-31
preflight-distance-invalid = “{ $distance }” मिमी में दूरी नहीं है। लिखें कि पढ़ने वाला कितनी दूर है।
preflight-font-not-embeddable = फ़ॉन्ट “{ $family }” फ़ाइल में रखना मना है। दूसरा चुनें।
preflight-font-unreadable = फ़ॉन्ट “{ $family }” की फ़ाइल पढ़ी नहीं जाती। फिर से लाएँ।
preflight-hazard-accepted = { $place }: “{ $text }” खतरा है, पर ली जाने वाली चीज़ों में है। खतरा कार्ट या बिन में नहीं जाता: नियम ठीक करें।
preflight-hazard-missing = “{ $lang }” में खतरा “{ $text }” छूटा है। जगह के लिए खतरे नहीं छोड़े जाते।
preflight-language-count = एक पन्ने पर एक से तीन भाषाएँ, { $count } नहीं।
preflight-language-invalid = “{ $lang }” भाषा का टैग नहीं है। जैसे es या es-US लिखें।
preflight-language-twice = भाषा “{ $lang }” दो बार है। एक हटाएँ।
preflight-languages-differ = “{ $lang }” वही नहीं कहती जो “{ $first }”: { $what }।
preflight-missing-glyph = { $place }: किसी फ़ॉन्ट में { $characters } नहीं, जो “{ $text }” में है। उसके बिना लिखें या ऐसा फ़ॉन्ट जोड़ें।
preflight-nothing-to-say = छापने को कुछ नहीं: कार्यक्रम इस धारा पर कुछ नहीं कहता। पहले नियम लिखें।
preflight-outside-safe-area = “{ $what }” किनारे से { $safe } मिमी के अंदर है और कट सकता है।
preflight-pictogram-unknown = { $place }: चित्र “{ $pictogram }” नहीं है। दूसरा चुनें।
preflight-picture-too-small = चित्र सिर्फ़ { $side } मिमी चौड़ा है। कम पंक्तियाँ या भाषाएँ छापें।
preflight-postal-field-full = “{ $field }” की पंक्ति { $line } नहीं समाती: “{ $text }”। छोटा करें।
preflight-postal-zone = “{ $what }” यहाँ पड़ता है: { $zone }। हटाएँ या छोटा करें।
preflight-profile-unusable = रंग प्रोफ़ाइल काम की नहीं: { $why }। वह CMYK प्रोफ़ाइल लें जो छापाखाना बताए।
preflight-qr-too-fine = QR कोड स्कैन के लिए बहुत बारीक है: खाने { $module } मिमी। पता छोटा करें।
preflight-qr-too-long = पते में { $characters } अक्षर हैं, QR कोड में इतने नहीं आते। छोटा करें।
preflight-rule-too-thin = रेखा “{ $what }” छापने के लिए बहुत पतली है।
preflight-text-empty = { $place } में शब्द नहीं हैं। लिखें।
preflight-text-overlaps = “{ $text }” और “{ $other }” एक-दूसरे पर चढ़े हैं। एक छोटा करें।
preflight-text-too-long = { $place } ({ $lang }): “{ $text }” सबसे छोटे पढ़ने लायक { $floor } पॉइंट में भी नहीं समाता। लगभग { $cut } अक्षर घटाएँ।
preflight-too-many-lines = “{ $sheet }” में { $languages } भाषाओं में { $lines } पंक्तियाँ हैं; { $floor } पॉइंट पर { $missing } मिमी कम पड़ते हैं। पंक्तियाँ या भाषाएँ घटाएँ।
preflight-too-much-ink = एक जगह { $coverage }% स्याही है; सीमा { $limit }%। हल्का रंग चुनें।
preflight-type-too-small = “{ $text }” { $size } पॉइंट में है; कम से कम { $least } चाहिए। पाठ छोटे करें।
preflight-word-too-wide = { $place } ({ $lang }): “{ $text }” का शब्द “{ $word }” { $floor } पॉइंट पर अपने खाने से चौड़ा है। लगभग { $room } अक्षर तक का शब्द लें।
