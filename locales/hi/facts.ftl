### किसी चीज़ के बारे में क्या जाना जा सकता है: नाम, सवाल, जवाब। हर जवाब अकेले भी समझ में आए, बटन पर
### और "आप नहीं बता सके, इसलिए हमने माना: ढक्कन: लगा हुआ" में भी।

## माप या तारीख की सीमाएँ, चुनने के जवाब

range-at-least = कम से कम { $value }
range-over = { $value } से ज़्यादा
range-at-most = ज़्यादा से ज़्यादा { $value }
range-under = { $value } से कम
range-between = { $low } से { $high } तक
range-any = कोई भी

## बात और उसका जवाब, चीज़ और उसका हिस्सा

fact-value = { $fact }: { $value }
item-part = { $item }: { $part }

## कौन पूछ रहा है, कहाँ और कब

fact-day = दिन
ask-day = किस दिन?

## साल का समय

fact-time-of-year = साल का समय
ask-time-of-year = साल के किस दिन?

## इलाका

fact-zone = इलाका
ask-zone = आप कहाँ रहते हैं?
    .hint = हर इलाके के नियम अलग हैं।

## घर

fact-dwelling = घर
ask-dwelling = आप कैसे घर में रहते हैं?
value-dwelling-house = अलग मकान
value-dwelling-small-building = छोटी इमारत
value-dwelling-large-building = फ़्लैटों की बड़ी इमारत

## कहाँ से आई

fact-origin = कहाँ से
ask-origin = यह कहाँ से आई?
value-origin-household = घर से
value-origin-business = दुकान या दफ़्तर से

## पते का सबूत

fact-proof = पते का सबूत
ask-proof = क्या आप दिखा सकते हैं कि यहीं रहते हैं?
    .hint = आपके पते वाला बिल या लाइसेंस चलेगा।
value-proof-yes = सबूत दिखा सकते हैं
value-proof-no = सबूत नहीं है

## पैसे वाली सेवा

fact-add-on = पैसे वाली अलग सेवा
ask-add-on = क्या आप अलग से उठाने के पैसे देते हैं?
    .hint = देते हैं तो आपके बिल में लिखा होगा।
value-add-on-yes = देते हैं
value-add-on-no = नहीं देते

## कितने

fact-quantity = कितने
ask-quantity = आपके पास कितने हैं?

## क्या है

fact-item = चीज़
ask-item = यह क्या है?

## किस्म

fact-category = किस्म
ask-category = यह किस किस्म की चीज़ है?

## हिस्सा

fact-part = हिस्सा
ask-part = इसका कौन-सा हिस्सा?
value-part-whole = पूरी चीज़
value-part-lid = ढक्कन
value-part-cap = पेंच वाला ढक्कन
value-part-pump = पंप
value-part-sleeve = पन्नी का कवर
value-part-liner = अंदर की परत
value-part-straw = स्ट्रॉ
value-part-filter = फ़िल्टर
value-part-battery = बैटरी
value-part-cord = तार
value-part-shade = लैंप का शेड
value-part-contents = अंदर का सामान
value-part-bag = थैली
value-part-handle = हत्था
value-part-ring = छल्ला

## खतरा

fact-hazard = खतरा
ask-hazard = इसमें क्या खतरा है?
    .hint = लेबल पर चेतावनी या निशान देखें। पक्का न हो तो कहें कि नहीं बता सकते।
value-hazard-none = कोई खतरा नहीं
value-hazard-battery-lithium = लिथियम बैटरी (चार्ज होने वाली)
value-hazard-battery-household = घरेलू बैटरी
value-hazard-battery-lead-acid = कार की बैटरी (सीसा और तेज़ाब)
value-hazard-sharps = सुई या लैंसेट
value-hazard-medicine = दवा
value-hazard-pressurised = दबाव वाला कैन या सिलेंडर
value-hazard-flammable = आग पकड़ने वाला तरल या गैस
value-hazard-toxic = ज़हर
value-hazard-corrosive = जलाने वाला (त्वचा जलती है)
value-hazard-mercury = पारे वाली चीज़
value-hazard-oil = इंजन तेल
value-hazard-explosive = विस्फोटक
value-hazard-radioactive = रेडियोधर्मी चीज़

## किस चीज़ से बनी

fact-material = किससे बनी
ask-material = यह किससे बनी है?
    .hint = जो चीज़ इसमें सबसे ज़्यादा है।
value-material-plastic = प्लास्टिक
value-material-bioplastic = पौधों से बना प्लास्टिक
value-material-cardboard = मोटा लहरदार गत्ता
value-material-paperboard = पतला गत्ता
value-material-paper = कागज़
value-material-carton = पेय का कार्टन
value-material-steel = स्टील या टिन
value-material-aluminium = एल्युमिनियम
value-material-metal = दूसरी धातु
value-material-glass = काँच
value-material-ceramic = चीनी मिट्टी
value-material-wood = लकड़ी
value-material-cork = कॉर्क
value-material-textile = कपड़ा
value-material-leather = चमड़ा
value-material-rubber = रबड़
value-material-food = खाना
value-material-plant = पत्ते या टहनियाँ
value-material-wax = मोम
value-material-stone = पत्थर या कंक्रीट
value-material-electronics = इलेक्ट्रॉनिक
value-material-chemical = रसायन
value-material-mixed = कई चीज़ें मिली हुई

## आकार

fact-form = आकार
ask-form = इसका आकार कैसा है?
value-form-bottle = बोतल
value-form-jug = हत्थे वाली केन
value-form-jar = जार
value-form-tub = डिब्बी
value-form-cup = कप या गिलास
value-form-lid = ढक्कन
value-form-clamshell = कब्ज़े वाला डिब्बा
value-form-tray = ट्रे
value-form-bag = थैली
value-form-film = पन्नी
value-form-pouch = पाउच
value-form-tube = ट्यूब
value-form-can = कैन या टिन
value-form-spray-can = स्प्रे कैन
value-form-cylinder = गैस सिलेंडर
value-form-box = डिब्बा
value-form-carton = पेय का कार्टन
value-form-canister = गोल गत्ते का डिब्बा
value-form-sheet = पन्ना या शीट
value-form-newspaper = अखबार या पत्रिका
value-form-book = किताब
value-form-envelope = लिफ़ाफ़ा
value-form-roll = रोल
value-form-foil = फ़ॉइल
value-form-pan = ट्रे या बर्तन
value-form-foam = फ़ोम
value-form-pod = कॉफ़ी पॉड
value-form-cutlery = काँटा, छुरी या चम्मच
value-form-straw = स्ट्रॉ
value-form-pot = गमला
value-form-bucket = बाल्टी
value-form-toy = खिलौना
value-form-rope = रस्सी, पाइप या केबल
value-form-clothing = कपड़े
value-form-shoe = जूते
value-form-furniture = फ़र्नीचर
value-form-mattress = गद्दा
value-form-appliance = बड़ी मशीन
value-form-device = इलेक्ट्रॉनिक उपकरण
value-form-lamp = बल्ब या ट्यूब
value-form-battery = बैटरी
value-form-needle = सुई
value-form-pill = गोलियाँ या दवा
value-form-tool = औज़ार
value-form-window = खिड़की या आईना
value-form-dishes = खाने के बर्तन
value-form-tyre = टायर
value-form-timber = लकड़ी के तख्ते
value-form-rubble = मलबा
value-form-food = खाना
value-form-plant = बगीचे का कचरा
value-form-liquid = तरल
value-form-ash = राख
value-form-sanitary = डायपर या पैड
value-form-other = कोई और आकार

## पैकिंग या चीज़

fact-object = काम
ask-object = क्या इसमें कोई सामान पैक होकर आया था?
value-object-packaging = यह पैकिंग है
value-object-product = यह खुद एक चीज़ है

## अंदर की बैटरी

fact-battery = बैटरी
ask-battery = क्या इसमें बैटरी है?
    .hint = अगर यह जलती, चलती, बजती या चार्ज होती है, तो बैटरी है।
value-battery-yes = बैटरी वाली
value-battery-no = बिना बैटरी

## तिकोन का अंक

fact-resin = तिकोन में अंक
ask-resin = छोटे तिकोन में कौन-सा अंक है?
    .hint = नीचे तले पर देखें। अंक बताता है कि प्लास्टिक कौन-सा है। यह रीसाइकल होने का वादा नहीं है।
value-resin-1 = 1
value-resin-2 = 2
value-resin-3 = 3
value-resin-4 = 4
value-resin-5 = 5
value-resin-6 = 6
value-resin-7 = 7
value-resin-none = कोई अंक नहीं
value-resin-unreadable = पढ़ा नहीं जाता

## जमा राशि का निशान

fact-deposit-mark = जमा राशि का निशान
ask-deposit-mark = क्या इस पर जमा राशि का निशान है?
    .hint = बार कोड के पास निशान या पैसे की रकम देखें।
value-deposit-mark-yes = जमा राशि का निशान है
value-deposit-mark-no = जमा राशि का निशान नहीं

## रंग

fact-colour = रंग
ask-colour = इसका रंग क्या है?
value-colour-clear = साफ़ (आर-पार दिखता है)
value-colour-frosted = धुँधला (रोशनी आती है)
value-colour-white = सफ़ेद
value-colour-green = हरा
value-colour-brown = भूरा
value-colour-blue = नीला
value-colour-black = काला
value-colour-other = कोई और रंग

## परत

fact-coating = ऊपर की परत
ask-coating = क्या इस पर कोई परत चढ़ी है?
    .hint = कोना फाड़ें: पतली झिल्ली दिखे तो प्लास्टिक है। खुरचें: मोम उतर आता है।
value-coating-none = कोई परत नहीं
value-coating-plastic = प्लास्टिक
value-coating-wax = मोम
value-coating-foil = फ़ॉइल
value-coating-glitter = चमकी
value-coating-wet-strength = भीगकर भी मज़बूत

## तहें

fact-layers = तहें
ask-layers = क्या यह कई चिपकी तहों से बनी है?
value-layers-one = एक तह
value-layers-many = कई तहें

## सबसे लंबी भुजा

fact-longest-side = सबसे लंबी भुजा
ask-longest-side = यह कितनी लंबी है?
    .hint = सबसे लंबी भुजा नापें।

## बीच की भुजा

fact-middle-side = दूसरी सबसे लंबी भुजा
ask-middle-side = यह कितनी चौड़ी है?
    .hint = दूसरी सबसे लंबी भुजा नापें।

## सबसे छोटी भुजा

fact-shortest-side = सबसे छोटी भुजा
ask-shortest-side = यह कितनी मोटी है?
    .hint = सबसे छोटी भुजा नापें।

## कतरन की लंबाई

fact-strip-length = कतरन की लंबाई
ask-strip-length = कतरनें कितनी लंबी हैं?

## कितना समाता है

fact-capacity = कितना समाता है
ask-capacity = इसमें कितना समाता है?
    .hint = लेबल पर मात्रा देखें।

## वज़न

fact-mass = वज़न
ask-mass = यह कितनी भारी है?

## कार्ट में समाती है

fact-fits-container = कार्ट में समाती है
ask-fits-container = क्या यह ढक्कन बंद करके कार्ट में समाती है?
value-fits-container-yes = समाती है, ढक्कन बंद
value-fits-container-no = नहीं समाती

## अंदर का सामान

fact-contents = अंदर बचा सामान
ask-contents = क्या अंदर कुछ बचा है?
    .hint = खाली यानी कुछ टपके या गिरे नहीं।
value-contents-empty = खाली
value-contents-traces = थोड़ा चिपका है
value-contents-dried = सूख गया
value-contents-part-full = अभी कुछ भरा है
value-contents-full = भरा हुआ

## पहले क्या था

fact-former-contents = पहले क्या था
ask-former-contents = इसमें पहले क्या था?
value-former-contents-none = कुछ नहीं
value-former-contents-food = खाना
value-former-contents-drink = पीने की चीज़
value-former-contents-personal-care = साबुन, शैंपू या क्रीम
value-former-contents-cleaner = सफ़ाई की दवा
value-former-contents-oil = इंजन तेल
value-former-contents-paint = पेंट
value-former-contents-pesticide = कीड़े या खरपतवार की दवा
value-former-contents-solvent = थिनर या ईंधन
value-former-contents-medicine = दवा

## साफ़ या गंदी

fact-soiling = साफ़ या गंदी
ask-soiling = क्या यह साफ़ है?
value-soiling-clean = साफ़
value-soiling-grease = चिकनी
value-soiling-food = खाना चिपका है

## गीली

fact-wet = गीली
ask-wet = क्या यह गीली है?
value-wet-yes = गीली
value-wet-no = सूखी

## थैली में

fact-bagged = थैली में
ask-bagged = क्या यह थैली में है?
value-bagged-loose = खुली, बिना थैली
value-bagged-plastic-bag = प्लास्टिक की थैली में
value-bagged-clear-bag = पारदर्शी थैली में
value-bagged-paper-bag = कागज़ की थैली में

## चपटी

fact-flattened = चपटी की हुई
ask-flattened = क्या इसे चपटा किया गया है?
value-flattened-yes = चपटी
value-flattened-no = चपटी नहीं

## बँधी

fact-bundled = गट्ठर में बँधी
ask-bundled = क्या यह गट्ठर में बँधी है?
value-bundled-yes = बँधी
value-bundled-no = बँधी नहीं

## कतरी

fact-shredded = कतरी हुई
ask-shredded = क्या यह कतरी हुई है?
value-shredded-yes = कतरी हुई
value-shredded-no = कतरी नहीं

## टूटी

fact-broken = टूटी
ask-broken = क्या यह टूटी या घिसी हुई है?
value-broken-yes = टूटी
value-broken-no = साबुत

## खाद बनने वाली

fact-compostable = खाद बनने वाली
ask-compostable = क्या लिखा है कि इससे खाद बन सकती है?
    .hint = “certified compostable” शब्द और मुहर देखें।
value-compostable-no = नहीं
value-compostable-claimed = लिखा है, मुहर नहीं
value-compostable-certified = प्रमाणित, मुहर है

## ढक्कन

fact-closure = ढक्कन
ask-closure = क्या ढक्कन लगा है?
value-closure-none = ढक्कन है ही नहीं
value-closure-on = लगा हुआ
value-closure-off = उतरा हुआ

## लेबल

fact-label = लेबल
ask-label = इस पर कैसा लेबल है?
value-label-none = लेबल नहीं
value-label-paper = कागज़ का लेबल
value-label-film = प्लास्टिक का लेबल
value-label-sleeve = चारों ओर पन्नी

## पंप

fact-pump = पंप या स्प्रे
ask-pump = क्या इसमें पंप या स्प्रे है?
value-pump-yes = पंप वाली
value-pump-no = बिना पंप

## धातु का हिस्सा

fact-fitting = धातु का हिस्सा
ask-fitting = क्या इसमें धातु का छोटा हिस्सा है?
value-fitting-yes = धातु वाली
value-fitting-no = बिना धातु

## प्लास्टिक की खिड़की

fact-window = प्लास्टिक की खिड़की
ask-window = क्या इसमें साफ़ प्लास्टिक की खिड़की है?
value-window-yes = खिड़की वाली
value-window-no = बिना खिड़की

## अंदर की परत

fact-liner = अंदर की परत
ask-liner = क्या अंदर कोई परत या थैली है?
value-liner-yes = परत वाली
value-liner-no = बिना परत

## तार

fact-cord = तार
ask-cord = क्या इसमें तार है?
value-cord-yes = तार वाली
value-cord-no = बिना तार

## सीमा के साथ क्या कहते हैं

measure-like = { $measure } (लगभग { $thing })
measure-per = { $measure } { $period }
like-credit-card = बैंक कार्ड जितना
like-golf-ball = गोल्फ़ की गेंद
like-tennis-ball = टेनिस की गेंद
like-basketball = बास्केटबॉल
like-sheet-of-paper = कागज़ के पन्ने जितना
like-yogurt-cup = दही का छोटा कप
like-milk-jug = दूध की केन
like-bucket = बड़ी बाल्टी
like-brick = ईंट
per-visit = हर बार
per-day = हर दिन
per-week = हर हफ़्ते
per-month = हर महीने
per-year = हर साल
