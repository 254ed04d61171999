### समन्वयक की स्क्रीनें। छोटे, साफ़ शब्द; काम के शब्द वहाँ जहाँ समन्वयक उन्हें बोलते हैं।

## हर स्क्रीन के आसपास

desk-title = गाइड डेस्क
desk-title-of = { $program }: गाइड डेस्क
navigation = कार्यक्रम के हिस्से
undo = वापस लें
redo = फिर करें
close = बंद करें
tab-files = फ़ाइलें
tab-program = कार्यक्रम
tab-streams = धाराएँ
tab-zones = इलाके
tab-channels = चैनल
tab-sites = जगहें
tab-rules = नियम
tab-items = चीज़ें
tab-texts = पाठ
tab-print = छपाई
start-problem-unreachable = सर्वर ने जवाब नहीं दिया। कनेक्शन देखें और पन्ना फिर खोलें।
start-problem-missing = सर्वर पर ऐप की एक फ़ाइल नहीं है। जिसने प्रकाशित किया, उससे फिर प्रकाशित करवाएँ।
start-problem-broken = ऐप की एक फ़ाइल बिगड़ी हुई आई। पन्ना फिर खोलें; फिर भी न चले तो ऐप फिर प्रकाशित करें।
recover-title = इस पन्ने पर कुछ गड़बड़ हुई
recover-text = काम करते समय आपका कार्यक्रम सहेजा गया। पहले उसे डाउनलोड कर लें, फिर पन्ना दोबारा खोलें।
recover-nothing = इस ब्राउज़र में कोई सहेजा कार्यक्रम नहीं है।
recover-reload = फिर खोलें
recover-download = मेरा कार्यक्रम डाउनलोड करें
panels = कमियाँ, बदलाव और परख

## सहेजना

save-nothing = कुछ खुला नहीं
save-saved = इस उपकरण पर सहेजा गया
save-waiting = सहेजा जा रहा है…
save-failed = सहेजा नहीं गया
save-again = फिर सहेजें
save-problem-full = इस उपकरण पर जगह नहीं बची, इसलिए बदलाव सहेजे नहीं जा रहे। अभी कार्यक्रम फ़ाइल निर्यात करें, फिर जगह बनाएँ।
save-problem-forbidden = ब्राउज़र पन्ने को कुछ सहेजने नहीं देता, इसलिए बदलाव सहेजे नहीं जा रहे। खिड़की बंद करने से पहले फ़ाइल निर्यात करें।
save-problem-newer = इस बीच दूसरी खिड़की ने यह कार्यक्रम सहेजा है। आपका रूप उसके ऊपर नहीं लिखा गया।
day-and-time = { $day }, { $time }

## मसौदे और फ़ाइलें

drafts-title = इस उपकरण पर कार्यक्रम
drafts-none = अभी कोई नहीं। नमूना खोलें, नया कार्यक्रम शुरू करें, या फ़ाइल आयात करें।
draft-saved = सहेजा: { $time }
draft-remove-sure = सच में हटाएँ?
draft-second-version = { $name } (दूसरा रूप)
draft-diverged = “{ $name }” दूसरी खिड़की में भी बदला। दोनों रखे गए: दूसरा रूप अब “{ $copy }” है।
open-demo = नमूना खोलें
open-demo-hint = क्विलमियर काउंटी, एक बनाई हुई जगह, सब भरा हुआ
new-program = नया कार्यक्रम
new-program-hint = सिर्फ़ पहले से बने सुरक्षा नियमों से शुरू करें
import-file = कार्यक्रम फ़ाइल आयात करें
import-file-hint = यह बाकी कार्यक्रमों के साथ खुलती है और किसी को नहीं बदलती
export-file = कार्यक्रम फ़ाइल निर्यात करें
export-file-hint = एक फ़ाइल में सब कुछ, रखने या देने के लिए
import-refused = “{ $name }” खुल नहीं सकती
import-unchanged = आपके कार्यक्रम वैसे ही हैं।
import-original = फ़ाइल जैसी थी वैसी डाउनलोड करें

## कार्यक्रम फ़ाइल क्यों नहीं पढ़ी जाती

load-too-large = फ़ाइल { $megabytes } MB की है; कार्यक्रम फ़ाइलें ज़्यादा से ज़्यादा { $limit } MB की होती हैं। देखें कि फ़ाइल सही है।
load-truncated = फ़ाइल पंक्ति { $line } पर अधूरी है। शायद रास्ते में कट गई: फिर कॉपी या डाउनलोड करें।
load-not-json = फ़ाइल पंक्ति { $line }, स्तंभ { $column } से पढ़ी नहीं जाती। हाथ से बदली हो तो वहाँ ठीक करें; नहीं तो फिर निर्यात करें।
load-other-format = यह कार्यक्रम फ़ाइल नहीं है (इसमें लिखा है “{ $found }”)। यहाँ से निर्यात की हुई फ़ाइल चुनें।
load-newer = फ़ाइल संस्करण { $found } की है; यह ऐप { $known } तक जानता है। नया ऐप लें।
load-shape = “{ $path }” का मान सही किस्म का नहीं: { $detail }। वहाँ ठीक करें और फिर आयात करें।
load-too-deep = नियम “{ $rule }” की शर्त { $limit } से ज़्यादा गहरी है। उसे कई नियमों में बाँटें।

## सूचियाँ और खाने

list-filter = छाँटें
list-add = जोड़ें
list-add-one = एक और जोड़ें
list-new-name = नए का नाम
list-remove = हटाएँ
list-up = ऊपर ले जाएँ
list-choose = सूची से चुनें, या जोड़ें।
choice-none = कोई नहीं
field-month = महीना
field-day = दिन
measure-unreadable = “{ $stated }” पढ़ा नहीं जाता। संख्या और इकाई लिखें, जैसे 2 in, 1 gal, 100 lb.
translations = दूसरी भाषाओं में
field-name = नाम
field-kind = किस्म
field-note = लोगों के लिए टिप्पणी
field-phone = फ़ोन
field-email = ई-मेल

## कार्यक्रम के अपने खाने

program-basics = यह कार्यक्रम
field-program-name = गाइड का नाम
field-program-id = छोटी id, फ़ाइलों और पतों के लिए
field-edition = संस्करण
field-edition-from = कब से लागू
field-guide-url = प्रकाशित गाइड का पता
field-source-language = पाठ पहले किस भाषा में लिखे जाते हैं
field-languages = किन भाषाओं में प्रकाशित
program-contact = किससे पूछें
field-contact-name = दफ़्तर का नाम
field-return-address = पोस्टकार्ड पर वापसी पता
program-silence = जब कोई नियम मामले का नाम न ले
field-silence = इसका मतलब
silence-undecided = अभी तय नहीं (प्रकाशित नहीं हो सकता)
silence-ask = खुली सूची: जवाब है “सूची में नहीं, पूछें”
silence-closed = बंद सूची: जिसका नाम नहीं, वह नहीं लिया जाता
program-unknown = जब व्यक्ति न बता सके
program-unknown-hint = अनजान की जगह क्या मानें। कुछ तय न हो तो सुरक्षित जवाब माना जाता है।
unknown-add = एक और तय करें
program-counts-as = क्या किसके बराबर माना जाए
program-counts-as-hint = फिर हर नियम दोनों को एक जैसा मानता है: जैसे धुँधले काँच को साफ़।
counts-as-add = बात
field-these = ये
field-count-as = इसके बराबर मानें
program-hazards = खतरे कहाँ जाते हैं
program-hazards-hint = हर किस्म को ऐसा चैनल चाहिए जो सुरक्षित ले, और मंज़ूर करने वाला व्यक्ति। खतरा कार्ट या बिन में कभी नहीं जाता।
field-hazard-channel = कहाँ जाता है
field-approved-by = किसने मंज़ूर किया
program-plant = छँटाई प्लांट
field-plant-name = प्लांट का नाम
field-machine-name = मशीन
field-machine-limit = यह क्या नहीं संभाल सकती
machine-add = मशीन जोड़ें
program-print = छपे पन्नों के लिए
field-short-url = QR कोड के पास छोटा पता
field-indicia = डाक भुगतान का निशान, पंक्ति-पंक्ति
field-statement = रीसाइकल कागज़ वगैरह का वाक्य

## धाराएँ और कंटेनर

containers-title = कंटेनर
container-add = कंटेनर जोड़ें
container-remove = यह कंटेनर हटाएँ
field-container-name = लोग इसे क्या कहते हैं
field-colour = रंग
field-capacity = कितना समाता है, इकाई के साथ
field-container-zones = सिर्फ़ इन इलाकों में
field-container-dwellings = सिर्फ़ ऐसे घरों में
field-set-out = कब और कैसे बाहर रखें
field-container-rules = इस कंटेनर के नियम
field-container-rules-hint = ये हर चीज़ पर लागू हैं। जिस जवाब में यह कंटेनर आए, उसमें लोग इन्हें देखते हैं।
field-container-rule-add = किस बारे में नियम
field-container-rule = मानक वाक्य की जगह अपने शब्दों में
field-limit = सीमा, इकाई के साथ
field-share = सीमा, जैसे 10%
limit-missing = सीमा लिखें, या पूरा नियम अपने शब्दों में लिखें।
residents-read = लोग पढ़ेंगे: { $text }
container-rule-kind-lid-closed = ढक्कन बंद
container-rule-kind-weight = भरने पर वज़न
container-rule-kind-distance = चारों ओर छोड़ी जगह
container-rule-kind-side-waste = बगल में या ऊपर की चीज़ें
container-rule-kind-share-of-load = कितनी गलत चीज़ें चलेंगी
container-rule-kind-liners = अंदर थैली लगाना
container-rule-kind-sacks = दी जाने वाली बोरियाँ
container-rule-kind-registration = पहले नाम लिखवाना
container-rule-kind-refusals = कब छोड़ दिया जाता है
stream-kind-recycling = रीसाइक्लिंग
stream-kind-organics = जैविक कचरा
stream-kind-refuse = कूड़ा
stream-kind-glass = काँच
stream-kind-paper = कागज़
stream-kind-film = प्लास्टिक पन्नी
container-kind-cart = पहिए वाला कार्ट
container-kind-bin = बिन
container-kind-bag = थैली
container-kind-box = डिब्बा
container-kind-shared-cart = इमारत का साझा कार्ट
container-kind-dumpster = बड़ा कूड़ा कंटेनर

## इलाके

field-dwelling = घर की किस्म
field-households = घरों की संख्या
field-zone-streams = यहाँ उठाई जाने वाली धाराएँ
field-centre = इलाके का बीच: अक्षांश, देशांतर

## चैनल और जगहें

field-fee = शुल्क, शब्दों में
field-booking = पहले समय लेना ज़रूरी
field-proof = पते का सबूत ज़रूरी
field-permit = परमिट ज़रूरी
field-voucher = वाउचर ज़रूरी
field-allowance = कितना या कितनी बार, शब्दों में
field-vehicles = कौन-सी गाड़ियाँ आ सकती हैं, शब्दों में
field-safe-for = ये खतरे सुरक्षित लेता है
channel-sites =
    { $count ->
        [0] अभी कोई जगह नहीं लेती।
        [one] जगह: { $names }
       *[other] जगहें: { $names }
    }
channel-kind-drop-off = जमा केंद्र
channel-kind-store-take-back = दुकान में वापसी
channel-kind-hazardous-waste = खतरनाक कचरा केंद्र
channel-kind-event = संग्रह का दिन
channel-kind-bulky-pickup = बड़ी चीज़ें उठाना
channel-kind-deposit-return = जमा राशि वापसी
channel-kind-mail-back = डाक से वापसी
channel-kind-reuse = दोबारा इस्तेमाल और मरम्मत
channel-kind-medicine-take-back = दवा वापसी
channel-kind-sharps-take-back = सुई वापसी
channel-kind-police = पुलिस
channel-kind-specialist = विशेषज्ञ कंपनी
channel-kind-dealer = बनाने या बेचने वाला
channel-kind-health-office = स्वास्थ्य दफ़्तर
channel-kind-authority = फ़ोन करने का दफ़्तर
field-site-channels = इन चैनलों की चीज़ें लेता है
field-accepts = इनमें से सिर्फ़ ये लेता है
field-refuses = इनमें से ये नहीं लेता
field-site-vehicles = यहाँ कौन-सी गाड़ियाँ आ सकती हैं, अगर चैनलों से अलग
field-address = पता
field-position = जगह: अक्षांश, देशांतर
field-hours = खुलने का समय
field-hours-hint = खुले नक्शों की तरह लिखें: Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
hours-unreadable = यह समय पढ़ा नहीं जाता: { $detail }

## नियम और उनकी शर्तें

field-tier = स्तर
field-verdict = फ़ैसला
rule-adds-steps = कोई नहीं: सिर्फ़ कदम जोड़ता है
field-stream = धारा
field-channel = चैनल
field-prepare = तैयारी, क्रम से
field-reason = कारण
field-machine = जिस मशीन से तय है
field-residents = लोगों के लिए शब्द
field-sorters = छाँटने वालों के लिए शब्द
field-contract = अनुबंध के शब्द
provenance-title = कहाँ से आया
field-decided-by = किसने तय किया
field-source = स्रोत
field-confirmed = आखिरी पुष्टि
field-ask-again = फिर कब पूछें
rule-more = तारीखें, छूट और मंज़ूरी
field-also = यहाँ भी लिया जाता है
field-overrides = अपने स्तर के इन नियमों से पहले
field-temporary = अस्थायी आदेश
field-from = से
field-until = तक
field-season = हर साल के सिर्फ़ एक हिस्से में
field-season-from = मौसम का पहला दिन
field-season-until = मौसम का आखिरी दिन
season-says = हर साल { $from } से { $until } तक
field-banned-from = कानून में यहाँ मना
acknowledgement-title = सुरक्षा नियम से छूट
acknowledgement-hint = सिर्फ़ एक नामित व्यक्ति कारण देकर छूट दे सकता है। हर जाँच में यह चेतावनी के रूप में दिखती है।
field-acknowledged-by = किसने छूट दी
field-acknowledged-on = कब
field-acknowledged-because = क्यों
condition-title = कब
condition-always = हमेशा: इस नियम की कोई शर्त नहीं।
condition-begin = शर्त जोड़ें
condition-kind = हिस्से कैसे गिने जाएँ
condition-all = ये सब
condition-any = इनमें से कोई भी
condition-not = यह नहीं
condition-fact = बात
condition-is = इनमें से एक है
condition-add-fact = बात जोड़ें
condition-add-group = समूह जोड़ें
condition-remove = शर्त का यह हिस्सा हटाएँ
bound-at-least = कम से कम
bound-over = से ज़्यादा
bound-at-most = ज़्यादा से ज़्यादा
bound-under = से कम
bound-value = माप, इकाई के साथ
bound-day = दिन
bound-like = रोज़ की चीज़ से तुलना
bound-per = गिनती किस पर

## चीज़ें

items-all = सब
items-answer = जवाब
items-asks = सवाल पूछती है
items-ask = आज़माएँ
items-ask-name = आज़माएँ: { $item }
items-rule = नियम पर जाएँ
items-decide = तय करें
items-decide-name = तय करें: { $item }
items-count =
    { $count ->
        [one] { $count } चीज़
       *[other] { $count } चीज़ें
    }

## पाठ और अनुवाद

texts-language = भाषा
texts-state = हालत
text-state-missing = नहीं है
text-state-unreviewed = जाँचा नहीं
text-state-reviewed = जाँचा हुआ
text-state-outdated = पुराना
text-step = तैयारी का कदम
text-label = { $whose }: { $what }
texts-reviewer = आपका नाम, हस्ताक्षर के लिए
texts-reviewer-needed = पहले अपना नाम लिखें: जाँच पर हस्ताक्षर होता है।
texts-sign-off = मैंने यह जाँच लिया
texts-count = { $all } में से { $done } जाँचे
review-title = हर भाषा की स्थिति
review-screens = स्क्रीन के शब्द: { $state }
review-source = वह भाषा जिससे बाकी बनती हैं
review-by = { $name } ने { $date } को जाँचा
review-outdated = { $name } ने { $date } को जाँचा, पर अंग्रेज़ी उसके बाद बदली है
review-texts = आपके अपने पाठ: { $all } में से { $done } जाँचे गए
review-names = हस्ताक्षर: { $names }

## क्या बदला, और गाइड की परख

ask-title = आम व्यक्ति की तरह पूछें
changes-title = आपके बदलावों से क्या बदला
changes-count =
    { $count ->
        [0] कोई जवाब नहीं बदला।
        [one] { $count } जवाब बदल गया।
       *[other] { $count } जवाब बदल गए।
    }
changes-absent = गाइड में नहीं
changes-details = जगह वही है; तैयारी या कारण बदला है।
changes-mark = अब यहाँ से तुलना करें

## कमियाँ

findings-title = कमियाँ
findings-count = गलतियाँ: { $errors } · चेतावनियाँ: { $warnings } · सूचनाएँ: { $notices }
findings-more =
    { $count ->
        [one] और { $count } अन्य
       *[other] और { $count } अन्य
    }
severity-error = गलती
severity-warning = चेतावनी
severity-notice = सूचना
severity-pass = सही
witness = जैसे: { $item }, जब { $answers }
witness-item = जैसे: { $item }

## कमी क्या कहती है, और नीचे क्या करें

finding-uncovered-case = इस मामले को कोई नियम तय नहीं करता।
    .hint = इसका नियम लिखें, या कार्यक्रम की स्क्रीन पर बताएँ कि चुप्पी का क्या मतलब है।
finding-conflicting-rules = एक ही स्तर के नियम एक चीज़ को अलग जगह भेजते हैं: { $rules }।
    .hint = किसी एक की शर्त बदलें, या एक को दूसरे से पहले रखें।
finding-hazard-not-safe =
    { $problem ->
        [no-channel] खतरे “{ $class }” का कोई चैनल नहीं है।
        [unknown-channel] खतरा “{ $class }” ऐसे चैनल में जाता है जो है ही नहीं।
        [channel-does-not-take-it] खतरा “{ $class }” ऐसे चैनल में जाता है जो उसके लिए सुरक्षित नहीं बताया गया।
       *[rule] नियम “{ $id }” खतरे “{ $class }” को असुरक्षित जगह भेजता है।
    }
    .hint = ऐसा चैनल चुनें जो सुरक्षित ले। खतरा कार्ट या बिन में कभी नहीं जाता।
finding-hazard-acknowledged = { $by } ने सुरक्षा नियम से छूट दी है: “{ $id }”।
    .hint = देखें कि स्थानीय कानून और वह जगह इसे मानते हैं और कारण अब भी सही है।
finding-rule-never-applies = नियम “{ $id }” कभी कुछ तय नहीं करता।
    .hint = उसके सारे मामले पहले के नियम तय कर देते हैं, या कोई चीज़ शर्त में नहीं आती। बदलें या हटाएँ।
finding-not-listed = इस चीज़ के कुछ मामलों का जवाब “सूची में नहीं, पूछें” है।
    .hint = यह चलेगा। जवाब पता हो तो नियम लिखें।
finding-missing-provenance = नहीं दिखता कि नियम “{ $id }” का फ़ैसला कहाँ से आया। नहीं है: { $missing }।
    .hint = लिखें कि किसने, किस स्रोत से तय किया और प्लांट से आखिरी पुष्टि कब हुई।
finding-missing-translation =
    { $state ->
        [unreviewed] “{ $language }” के पाठ जो किसी ने नहीं जाँचे: { $count }। पहला “{ $first }” है।
        [outdated] “{ $language }” के पाठ जिनका मूल बदल चुका: { $count }। पहला “{ $first }” है।
       *[missing] “{ $language }” में नहीं हैं: { $count } पाठ। पहला “{ $first }” है।
    }
    .hint = पाठ की स्क्रीन खोलें और भाषा और हालत से छाँटें।
finding-broken-condition =
    { $problem ->
        [unknown-fact] “{ $fact }” नाम की कोई बात नहीं है।
        [no-values] “{ $fact }” की तुलना किसी से नहीं है।
        [no-number] “{ $fact }” के “{ $value }” में संख्या नहीं है।
        [no-unit] “{ $fact }” के “{ $value }” में इकाई नहीं है।
        [unknown-unit] “{ $fact }” के “{ $value }” की इकाई पता नहीं।
        [wrong-dimension] “{ $value }” से “{ $fact }” नहीं नापा जाता।
        [negative] “{ $fact }” का “{ $value }” शून्य से कम है।
        [too-large] “{ $fact }” का “{ $value }” इतना बड़ा है कि सच नहीं हो सकता।
        [unknown-part] “{ $value }” नाम का हिस्सा नहीं है।
        [range-reversed] “{ $fact }” की सीमा “{ $value }” उलटी है।
       *[unknown-value] “{ $value }”, “{ $fact }” का जवाब नहीं है।
    }
    .hint = सूची से चुनें। माप इकाई के साथ लिखें, जैसे 2 in, 1 gal या 10 lb.
finding-broken-item =
    { $problem ->
        [unknown-fact] “{ $fact }” नाम की कोई बात नहीं है।
        [no-values] “{ $fact }” की तुलना किसी से नहीं है।
        [no-number] “{ $fact }” के “{ $value }” में संख्या नहीं है।
        [no-unit] “{ $fact }” के “{ $value }” में इकाई नहीं है।
        [unknown-unit] “{ $fact }” के “{ $value }” की इकाई पता नहीं।
        [wrong-dimension] “{ $value }” से “{ $fact }” नहीं नापा जाता।
        [negative] “{ $fact }” का “{ $value }” शून्य से कम है।
        [too-large] “{ $fact }” का “{ $value }” इतना बड़ा है कि सच नहीं हो सकता।
        [unknown-part] “{ $value }” नाम का हिस्सा नहीं है।
        [no-such-sides] इन भुजाओं की कोई चीज़ नहीं हो सकती: सबसे लंबी भुजा सबसे लंबी होनी चाहिए।
        [no-range] “{ $fact }” की सीमा का शुरू या अंत नहीं है।
        [range-reversed] “{ $fact }” की सीमा “{ $value }” उलटी है।
       *[unknown-value] “{ $value }”, “{ $fact }” का जवाब नहीं है।
    }
    .hint = सूची से चुनें। माप इकाई के साथ लिखें, जैसे 2 in, 1 gal या 10 lb.
finding-broken-reference =
    { $kind ->
        [stream] धारा “{ $target }” नहीं है।
        [channel] चैनल “{ $target }” नहीं है।
        [zone] इलाका “{ $target }” नहीं है।
        [step] तैयारी का कदम “{ $target }” नहीं है।
        [reason] कारण “{ $target }” नहीं है।
        [machine] मशीन “{ $target }” नहीं है।
        [item] चीज़ “{ $target }” नहीं है।
        [rule-of-tier] नियम “{ $target }” दूसरे स्तर का है, उससे पहले नहीं रखा जा सकता।
       *[rule] “{ $target }” नहीं है।
    }
    .hint = दूसरा चुनें, या जो नहीं है उसे जोड़ें। खाली नाम यानी अभी कुछ नहीं चुना।
finding-circular-override = ये नियम घूमकर एक-दूसरे से पहले आते हैं: { $rules }।
    .hint = किसी एक को “पहले आता है” सूची से हटाएँ।
finding-destination-not-offered = नियम “{ $id }” चीज़ें धारा “{ $stream }” में भेजता है, जो इलाके “{ $zone }” में नहीं उठाई जाती।
    .hint = धारा को इलाके में जोड़ें, या उस इलाके का दूसरा नियम लिखें।
finding-duplicate-id =
    { $times ->
        [0] यहाँ किसी की id नहीं है।
        [one] id “{ $id }” { $times } बार है।
       *[other] id “{ $id }” { $times } बार है।
    }
    .hint = हर एक को अपनी id दें। लिंक, लेबल और अनुवाद उसी से जुड़े हैं।
finding-printed-line-untrue =
    { $span ->
        [from] छपी पंक्ति “{ $line }” { $since } से सच नहीं है।
        [until] छपी पंक्ति “{ $line }” { $until } तक सच नहीं है।
        [between] छपी पंक्ति “{ $line }” { $since } से { $until } तक सच नहीं है।
       *[always] छपी पंक्ति “{ $line }” इस संस्करण में सच नहीं है।
    }
    .hint = पन्ना फिर छापें या पंक्ति ढकें। पन्ना हट जाए तो हटाने का दिन लिखें।
finding-suspicious-text =
    { $problem ->
        [markup] पाठ “{ $key }” ({ $language }) में मार्कअप है: { $shown }
        [direction] पाठ “{ $key }” ({ $language }) में लिखने की दिशा पलटने वाला अक्षर है: { $shown }
       *[control] पाठ “{ $key }” ({ $language }) में न दिखने वाला अक्षर है: { $shown }
    }
    .hint = पाठ सादे होते हैं। मिटाकर शब्द फिर लिखें।
finding-too-complex = इस चीज़ के बारे में इतना खुला है कि सारे मामले देखे नहीं जा सकते (खुली बातें: { $count })।
    .hint = कुछ बातें तय करें, या इसे कई चीज़ों में बाँटें।
finding-too-many-thresholds = नियमों में इतनी सीमाएँ हैं कि { $count } चीज़ों के सारे मामले देखे नहीं जा सकते। सबसे ज़्यादा “{ $fact }” की: { $thresholds }।
    .hint = नियमों में एक-सी सीमाएँ रखें, और जिन नियमों के दिन बीत गए उन्हें हटाएँ।
finding-unreadable-hours = खुलने का समय “{ $hours }” पढ़ा नहीं जाता: { $problem }
    .hint = ऐसे लिखें: Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
finding-unusable-setting = “{ $value }” यहाँ नहीं चलेगा।
    .hint = सूची से चुनें, या ठीक करें: रंग #2a7f4f जैसा, जगह अक्षांश और देशांतर, पता https:// से शुरू

## फ़ाइल से तुलना

compare-file-title = दूसरी फ़ाइल से तुलना
compare-file = पहले का संस्करण या पड़ोसी का कार्यक्रम चुनें
compare-file-name = “{ $name }” से तुलना।
compare-newer = फ़ाइल दोनों में नई है
compare-notice = बदलावों की सूचना
compare-copy = सूचना कॉपी करें
compare-copied = कॉपी हो गई।
compare-not-copied = ब्राउज़र ने कॉपी नहीं की। पाठ चुनकर खुद कॉपी करें।
compare-download = सूचना डाउनलोड करें

## छपे पन्नों का रजिस्टर

printed-title = क्या छप चुका है
printed-copies = कितनी प्रतियाँ
printed-note = छपा हुआ दर्ज करें
printed-entry =
    { $copies ->
        [0] { $id }, { $day }
        [one] { $id }, { $day }, { $copies } प्रति
       *[other] { $id }, { $day }, { $copies } प्रतियाँ
    }
printed-withdrawn = हटाया गया: { $day }
printed-withdraw = अब बाहर नहीं है
printed-still-out = अब भी बाहर है
finding-question-never-matters =
    { $problem ->
        [unknown] तय है कि “{ $fact }” पता न हो तो क्या मानें, पर किसी जवाब को इसकी ज़रूरत नहीं।
       *[open] यह चीज़ “{ $fact }” खुला छोड़ती है, पर इसका कोई जवाब उस पर निर्भर नहीं।
    }
    .hint = यह किसी से नहीं पूछा जाता। रहने दें, या ऐसा नियम लिखें जिसे इसकी ज़रूरत हो।
finding-steps-contradict = एक जवाब “{ $one }” और “{ $other }” दोनों माँगता है, जो साथ नहीं हो सकते। नियम: { $rules }।
    .hint = दोनों में से एक कदम हटाएँ, या शर्त बदलें ताकि एक ही नियम लागू हो।
finding-preparation-contradicts =
    { $problem ->
        [none] नियम “{ $id }” का कदम “{ $step }” करने पर “{ $fact }” “{ $value }” हो जाता है, और तब कोई नियम चीज़ वहाँ नहीं भेजता।
       *[rule] नियम “{ $id }” का कदम “{ $step }” करने पर “{ $fact }” “{ $value }” हो जाता है, और तब नियम “{ $other }” उसे दूसरी जगह भेजता है।
    }
    .hint = कदम हटाएँ, या नियम को कदम के बाद की हालत पर भी लागू करें।
finding-site-never-used =
    { $problem ->
        [item] लिखा है कि जगह “{ $id }” “{ $item }” लेती है, पर वह इस जगह के चैनल में कभी नहीं भेजी जाती।
       *[site] जगह “{ $id }” पर कभी कुछ नहीं भेजा जाता।
    }
    .hint = ऐसा नियम लिखें जो इसके चैनल में भेजे, दूसरा चैनल दें, या सूची से हटाएँ।
finding-no-site-takes =
    { $problem ->
        [refused] “{ $item }” चैनल “{ $id }” में भेजी जाती है, पर उसकी कोई जगह नहीं लेती।
       *[none] “{ $item }” जैसी चीज़ें चैनल “{ $id }” में भेजी जाती हैं, जिसकी कोई जगह नहीं।
    }
    .hint = जगह जोड़ें, किसी जगह को लेने दें, या दूसरे चैनल में भेजें।
finding-item-without-name = चीज़ “{ $id }” का नाम नहीं है। जिन भाषाओं में नहीं: { $languages }।
    .hint = जिस भाषा में कार्यक्रम लिखा है, उसमें नाम लिखें।
finding-name-twice = चीज़ें “{ $id }” और “{ $other }” दोनों “{ $language }” में “{ $name }” कहलाती हैं।
    .hint = एक को अलग नाम दें। लोग नाम से चुनते हैं।
finding-banned-destination = “{ $item }” धारा “{ $stream }” में भेजी जाती है, जहाँ कानून में मना है। नियम: { $rules }।
    .hint = दूसरी धारा या चैनल में भेजें, या मनाही जहाँ लिखी है वहाँ ठीक करें।
finding-impossible-condition =
    { $problem ->
        [fact] नियम “{ $id }” की शर्त कभी पूरी नहीं होती: “{ $fact }” से जो माँगा है, वह आपस में टकराता है।
       *[parts] नियम “{ $id }” की शर्त कभी पूरी नहीं होती: उसके हिस्से आपस में टकराते हैं।
    }
    .hint = कोई हिस्सा ठीक करें या हटाएँ। कोई एक काफ़ी हो तो “इनमें से कोई भी” चुनें।
finding-empty-condition =
    { $problem ->
        [any] नियम “{ $id }” की शर्त में “इनमें से कोई भी” समूह खाली है, जो कभी पूरा नहीं होता।
       *[all] नियम “{ $id }” की शर्त में “ये सब” समूह खाली है, जो हमेशा पूरा होता है।
    }
    .hint = समूह में जो चाहिए जोड़ें, या समूह हटाएँ।
finding-rule-without-condition = नियम “{ $id }” की कोई शर्त नहीं है: जो पहले के स्तर तय नहीं करते, वह सब यही तय करता है।
    .hint = लिखें कि यह कब लागू है। अगर बाकी सबके लिए है, तो इसे “default” स्तर में रखें।
finding-text-missing-register =
    { $register ->
        [contract] अनुबंध के शब्दों के बिना नियम: { $count }। पहला “{ $first }” है।
        [sorters] छाँटने वालों के शब्दों के बिना नियम: { $count }। पहला “{ $first }” है।
       *[residents] लोगों के लिए शब्द या कारण के बिना नियम: { $count }। पहला “{ $first }” है।
    }
    .hint = नियम की स्क्रीन पर लिखें, ताकि तीनों एक ही बात कहें।
finding-unused-thing =
    { $kind ->
        [stream] कोई नियम धारा “{ $id }” में कुछ नहीं भेजता।
        [channel] चैनल “{ $id }” में न कोई नियम भेजता है, न कोई खतरा।
        [step] कोई नियम कदम “{ $id }” नहीं माँगता।
        [zone] इलाके “{ $id }” में कुछ अलग नहीं: कोई नियम, कंटेनर या धारा उसका नाम नहीं लेती।
       *[machine] कोई नियम मशीन “{ $id }” का नाम नहीं लेता।
    }
    .hint = काम आएगा तो रहने दें; नहीं तो हटाएँ।
finding-counts-as-broken =
    { $problem ->
        [unknown-fact] “{ $fact }” नाम की कोई बात नहीं, जिसके जवाब दूसरे के बराबर माने जाएँ।
        [unlisted-fact] “{ $fact }” के जवाबों की सूची नहीं, इसलिए कोई दूसरे के बराबर नहीं माना जा सकता।
        [unknown-value] “{ $value }”, “{ $fact }” का जवाब नहीं है।
        [danger] “{ $fact }” खतरा है: उसका कोई जवाब दूसरे के बराबर नहीं माना जाता।
        [nothing] नहीं बताया कि “{ $fact }” में “{ $value }” के बराबर क्या है।
        [itself] “{ $fact }” का “{ $value }” खुद के बराबर माना गया है।
        [twice] “{ $fact }” का “{ $value }” दो अलग जवाबों के बराबर माना गया है।
        [circle] “{ $fact }” के जवाब घूमकर एक-दूसरे के बराबर माने गए, उनमें “{ $value }” भी।
       *[chain] “{ $fact }” का “{ $value }” खुद किसी और के बराबर है, इसलिए उसके बराबर कुछ नहीं माना जा सकता।
    }
    .hint = सूची से जवाब चुनें। हर एक किसी एक के बराबर होता है, जो सिर्फ़ खुद के बराबर हो।
finding-season-broken =
    { $problem ->
        [reversed] नियम “{ $id }” का आखिरी दिन पहले दिन से पहले है: { $value }।
       *[not-a-year-day] “{ $value }” साल का दिन नहीं है, इसलिए नियम “{ $id }” का मौसम पढ़ा नहीं जाता।
    }
    .hint = महीना और दिन लिखें, जैसे 11-01। मौसम नए साल के पार जा सकता है; साल वाले पहले और आखिरी दिन नहीं।
finding-container-rule-broken =
    { $problem ->
        [unknown-kind] “{ $value }” कंटेनर “{ $id }” के नियम की किस्म नहीं है।
        [twice] कंटेनर “{ $id }” के “{ $value }” किस्म के दो नियम हैं।
        [limit] कंटेनर “{ $id }” की सीमा “{ $value }” पढ़ी नहीं जाती।
       *[unknown-dwelling] “{ $value }” घर की किस्म नहीं है, इसलिए कंटेनर “{ $id }” कहीं इस्तेमाल नहीं होता।
    }
    .hint = सूची से चुनें, दोनों पाठ एक नियम में रखें, या सीमा इकाई के साथ लिखें: 100 lb, 3 ft, 10%।
finding-comparison-broken =
    { $problem ->
        [unknown-like] रोज़ की ऐसी चीज़ “{ $value }” नहीं, जिससे “{ $fact }” की तुलना हो।
        [other-dimension] “{ $value }” “{ $fact }” के बारे में कुछ नहीं कहती: वह दूसरी तरह का माप है।
        [far] “{ $value }” “{ $fact }” के दिए माप से दुगुने से ज़्यादा बड़ी या छोटी है।
       *[unknown-period] “{ $fact }” की गिनती “{ $value }” पर नहीं हो सकती।
    }
    .hint = सूची से चुनें, या तुलना छोड़ दें।

## कमी ठीक करने के तरीके, बटनों और सूचियों में

fix-replace = “{ $value }” की जगह “{ $with }” रखें
fix-choose = “{ $with }” चुनें
fix-remove = “{ $value }” हटाएँ
fix-replace-fact = “{ $fact }” की जगह “{ $with }” की तुलना करें
fix-replace-value = “{ $value }” की जगह “{ $with }” रखें
fix-remove-value = शर्त से “{ $value }” हटाएँ
fix-replace-item-fact = बात “{ $fact }” की जगह “{ $with }” रखें
fix-remove-rule = नियम “{ $rule }” हटाएँ
fix-go-before = “{ $rule }” को { $over } से पहले रखें
fix-not-before = “{ $rule }” को “{ $over }” से पहले न रखें
fix-silence-undecided = चुप्पी का मतलब खुला छोड़ें
fix-silence-ask = खुली सूची: जिसका नाम नहीं, उसका जवाब “सूची में नहीं, पूछें”
fix-silence-closed = बंद सूची: जिसका नाम नहीं, उसे न लें
fix-answer-yes = नियम का मसौदा: “{ $item }” “{ $stream }” में जाती है
fix-answer-no = नियम का मसौदा: “{ $item }” नहीं ली जाती और “{ $stream }” में जाती है
fix-route = खतरा “{ $class }” चैनल “{ $channel }” में भेजें
fix-send-to = नियम “{ $rule }” की चीज़ें चैनल “{ $channel }” में भेजें
fix-collect = “{ $stream }” को इलाके “{ $zone }” में भी उठाएँ
fix-except-zone = नियम “{ $rule }” को इलाके “{ $zone }” में लागू न करें
fix-own-ids = नई id दें: { $with }
fix-remove-twins = हर बात में एक जैसी नकलें हटाएँ
fix-swap-dates = पहला और आखिरी दिन अदल-बदल करें
fix-drop-from = पहला दिन हटाएँ
fix-drop-until = आखिरी दिन हटाएँ
fix-drop-season = मौसम हटाएँ
fix-swap-position = अक्षांश और देशांतर अदल-बदल करें
fix-add-language = “{ $language }” में भी प्रकाशित करें
fix-remove-empty = खाली समूह हटाएँ
fix-remove-unused = “{ $id }” हटाएँ
fix-drop-counting = “{ $fact }” में किसी को “{ $value }” के बराबर न मानें
fix-clean-text = पाठ से हटाएँ
mend-title = ठीक करने के तरीके
mend-done = हो गया: { $fix }। इसे वापस लिया जा सकता है।
mend-gone = कुछ नहीं बदला: कार्यक्रम अब वैसा नहीं जैसा यह सुझाते समय था।
