### लोग अपने फ़ोन पर क्या पढ़ते हैं। सरल शब्द, छोटे वाक्य।

## हर स्क्रीन के आसपास

page-title = { $program }: क्या कहाँ जाता है
skip = मुख्य भाग पर जाएँ
back = वापस
language-label = भाषा
zone-label = आपका इलाका
zone-none = अपना इलाका चुनें
unreviewed = इस अनुवाद को अभी किसी ने जाँचा नहीं है। कुछ गलत लगे तो अंग्रेज़ी में पढ़ें।
decided-edition = गाइड: { $edition }
privacy = आप जो खोजते हैं, वह इसी फ़ोन पर रहता है। कुछ भेजा या गिना नहीं जाता।

## चीज़ खोजना

search-label = आप क्या फेंकना चाहते हैं?
search-placeholder = जैसे: पिज़्ज़ा का डिब्बा
search-count =
    { $count ->
        [0] कुछ नहीं मिला
        [one] { $count } चीज़ मिली
       *[other] { $count } चीज़ें मिलीं
    }
search-nothing = इस नाम से कुछ नहीं मिला। छोटा शब्द लिखकर देखें। जो सूची में नहीं, वह हमेशा “नहीं” नहीं होता: हमसे पूछें।
search-long = यह बहुत लंबा है। सिर्फ़ पहले { $count } अक्षर देखे गए।
home-recent = हाल में खोजा
home-common = अक्सर खोजा जाता है
home-categories = किस्म से देखें

## सवाल

cannot-tell = नहीं बता सकते
questions-left =
    { $count ->
        [one] ज़्यादा से ज़्यादा { $count } और सवाल
       *[other] ज़्यादा से ज़्यादा कुल { $count } सवाल
    }
ruler-title = इस स्क्रीन से नापें
ruler-card = बैंक कार्ड को स्क्रीन पर खड़ा रखें। स्लाइडर तब तक खिसकाएँ जब तक चित्र कार्ड जितना चौड़ा न हो जाए।
ruler-use = अब चीज़ को पट्टी पर रखें, एक सिरा 0 पर।
ruler-cards = { $measure }: एक के बाद एक रखे बैंक कार्ड: { $count }

## जवाब

verdict-yes = हाँ
verdict-no = नहीं
verdict-elsewhere = यहाँ नहीं, इसकी जगह दूसरी है
verdict-unlisted = सूची में नहीं: पूछें
verdict-undecided = अभी तय नहीं: पूछें
verdict-closed = नहीं: यह सूची में नहीं है
caution-title = सावधान।
prepare-title = कैसे तैयार करें
why-title = क्यों
also-title = यहाँ भी लिया जाता है
temporary-order = अभी एक अस्थायी नियम लागू है। यह जल्दी बदल सकता है।
assumed-title = आप नहीं बता सके, इसलिए हमने सुरक्षित जवाब माना:
assumed-line = { $fact }: { $value }
ask-contact = { $name } से पूछें:
decided-title = किस नियम से तय हुआ
decided-rule = नियम:
decided-acknowledged = सुरक्षा नियम की यह छूट एक नामित व्यक्ति ने मंज़ूर की है।

## कहाँ ले जाएँ

site-more =
    { $count ->
        [one] { $count } और जगह
       *[other] { $count } और जगहें
    }
site-locate = सबसे पास की जगह खोजें
site-no-position = फ़ोन ने नहीं बताया कि वह कहाँ है।
near-label = कस्बा, इलाका या पिन कोड
near-find = वहाँ खोजें
near-found = { $place } के सबसे पास।
near-unknown = यह गाइड “{ $place }” नाम की जगह नहीं जानती। कस्बे, अपने इलाके या किसी केंद्र का नाम लिखें।
site-also-takes = यह भी लेते हैं: { $items }
site-all-items = जो कुछ लेते हैं, सब
site-booking = पहले से समय लें।
site-proof = सबूत लाएँ कि आप यहाँ रहते हैं।
site-permit = परमिट चाहिए।
site-voucher = वाउचर चाहिए।
container-rules-title = { $container } के नियम
hours-open = अभी खुला है
hours-open-until = { $time } तक खुला
hours-closed = अभी बंद है
hours-closed-until = { $time } तक बंद
hours-appointment = सिर्फ़ समय लेकर
hours-unknown = खुलने का समय पता नहीं: पहले फ़ोन करें
hours-day-time = { $day }, { $time }

## बिना इंटरनेट

offline-fetching = गाइड सहेजी जा रही है ताकि बिना इंटरनेट चले…
offline-ready = सहेज ली गई। गाइड बिना इंटरनेट चलती है।
offline-now = इंटरनेट नहीं है। गाइड इसी फ़ोन से चल रही है।
offline-incomplete = इंटरनेट नहीं है और गाइड पूरी सहेजी नहीं गई। कुछ हिस्से न मिलें।
offline-failed = गाइड सहेजी नहीं जा सकी। यह सिर्फ़ इंटरनेट से चलेगी। बाद में फिर कोशिश करें।
offline-impossible = यह ब्राउज़र गाइड सहेज नहीं सकता। यह सिर्फ़ इंटरनेट से चलेगी।
update-ready = नई गाइड तैयार है।
update-now = नई गाइड खोलें
offline-lost = फ़ोन ने सहेजी गाइड मिटा दी। फिर से सहेजी जा रही है…
offline-forgetful = यह ब्राउज़र गाइड को कुछ सहेजने नहीं देता। यह सिर्फ़ इंटरनेट से चलेगी और आपकी भाषा और इलाका भूल जाएगी।
update-failed = नई गाइड पूरी नहीं पहुँची। यह अब भी चलती है, और फ़ोन फिर कोशिश करेगा।

## जब कुछ नहीं मिलता

unknown-item = इस गाइड में “{ $id }” नहीं है। नाम से खोजें।
unknown-category = इस गाइड में “{ $id }” समूह नहीं है। पहले पन्ने से चुनें।
unknown-address = “{ $address }” पन्ना नहीं है। पहले पन्ने पर जाएँ।
unknown-language = यह गाइड अभी “{ $language }” में नहीं है। दूसरी भाषा चुनें।
language-broken = “{ $language }” के शब्द पूरे नहीं पहुँचे। कनेक्शन देखें और भाषा फिर चुनें।
unknown-zone = इस गाइड में “{ $id }” इलाका नहीं है। पन्ने के नीचे अपना इलाका चुनें।
clock-wrong = यह फ़ोन आज की तारीख { $date } बताता है। यह सही नहीं हो सकती। अभी क्या खुला है, पता नहीं, और मौसम के साथ बदलने वाले नियम ग़लत हो सकते हैं। तारीख ठीक करें।
