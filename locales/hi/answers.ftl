### जवाबों के तैयार वाक्य: सावधानियाँ, कदम, कारण; और चीज़ों की किस्मों के नाम।
### कदम एक व्यक्ति से कहे जाते हैं, कारण चीज़ के बारे में हैं।

## सावधानियाँ, हर खतरे की एक। वही कहती हैं जो हर जगह सच है और स्थानीय नियमों पर छोड़ती हैं।

caution-local = स्थानीय नियम और वहाँ के कर्मचारी तय करते हैं।
caution-battery-lithium = लिथियम बैटरी से आग लग सकती है। इसे या इससे चलने वाली चीज़ को किसी भी कार्ट या बिन में कभी न डालें। खुली बैटरी के धातु के सिरों पर टेप लगाएँ, या हर एक को अलग थैली में रखें। न दबाएँ, न खोलें। { caution-local }
caution-battery-household = बैटरी रिस सकती है या आग लगा सकती है। किसी भी कार्ट या बिन में कभी न डालें। सिरों पर टेप लगाएँ और एक-दूसरे से अलग रखें। { caution-local }
caution-battery-lead-acid = इस बैटरी में जलाने वाला तेज़ाब और ज़हरीला सीसा है। सीधी रखें और खोलें नहीं। किसी भी कार्ट या बिन में कभी न डालें। { caution-local }
caution-sharps = सुई और लैंसेट छाँटने वालों को चुभकर बीमार कर सकती हैं। इन्हें किसी भी कार्ट या बिन में खुला कभी न डालें। तुरंत ऐसे मज़बूत डिब्बे में डालें जिसमें छेद न हो सके और ढक्कन कसा हो। सुई के लिए कार्ट में हाथ कभी न डालें। { caution-local }
caution-medicine = दवा को बच्चों और पालतू जानवरों से दूर रखें। सबसे पहले इसे दवा वापसी की जगह पर दें। लेबल न कहे तो टॉयलेट में न बहाएँ। { caution-local }
caution-pressurised = दबाने, छेदने या गर्म करने पर फट सकता है, चाहे खाली लगे। किसी भी कार्ट या बिन में कभी न डालें। { caution-local }
caution-flammable = जल्दी आग पकड़ता है। बंद रखें, गर्मी और चिंगारी से दूर। किसी भी कार्ट या बिन में कभी न डालें और कहीं न बहाएँ। { caution-local }
caution-toxic = ज़हरीला है। अपने ही डिब्बे में लेबल के साथ रखें। किसी भी कार्ट या बिन में कभी न डालें, न बहाएँ, किसी चीज़ में न मिलाएँ। { caution-local }
caution-corrosive = त्वचा और आँखें जलाता है। अपने ही डिब्बे में सीधा रखें। किसी भी कार्ट या बिन में कभी न डालें और किसी चीज़ में न मिलाएँ। { caution-local }
caution-mercury = इसमें ज़हरीला पारा है। तोड़ें नहीं। किसी भी कार्ट या बिन में कभी न डालें। टूट जाए तो लोगों को दूर रखें और कमरे में हवा आने दें। { caution-local }
caution-oil = पानी गंदा करता है। बंद डिब्बे में रखें। कभी न बहाएँ, किसी भी कार्ट या बिन में न डालें, किसी चीज़ में न मिलाएँ। { caution-local }
caution-explosive = न छुएँ, न हिलाएँ। लोगों को दूर रखें और यहाँ लिखे दफ़्तर को फ़ोन करें। खतरा हो तो आपातकालीन नंबर पर फ़ोन करें। { caution-local }
caution-radioactive = न खोलें, न तोड़ें। किसी भी कार्ट या बिन में कभी न डालें। यहाँ लिखे दफ़्तर को फ़ोन करके पूछें कि क्या करें। { caution-local }

## तैयारी के आम कदम

prep-empty = खाली करें।
prep-rinse = जल्दी से खंगालें। चमकाना ज़रूरी नहीं।
prep-dry = सूखने दें।
prep-scrape = खाना खुरच दें।
prep-flatten = चपटा करें।
prep-cut-down = काटकर छोटा करें ताकि समा जाए।
prep-bundle = गट्ठर में बाँधें।
prep-loose = बिना थैली, खुला डालें।
prep-cap-on = ढक्कन लगा रहने दें।
prep-cap-off = पेंच वाला ढक्कन उतारें।
prep-lid-off = ढक्कन उतारें।
prep-lid-inside-can = ढक्कन कैन के अंदर डालें और कैन को दबाकर बंद करें।
prep-label-stays = लेबल लगा रह सकता है।
prep-sleeve-off = प्लास्टिक की पन्नी उतारें।
prep-pump-off = पंप उतारें।
prep-window-stays = प्लास्टिक की खिड़की रह सकती है।
prep-staples-stay = स्टेपल पिन रह सकती हैं।
prep-remove-food-liner = अंदर की थैली या परत निकालें।
prep-tear-off-clean-half = साफ़ हिस्सा फाड़ लें। सिर्फ़ वही यहाँ डालें।
prep-crush = जगह बचाने के लिए दबाएँ।
prep-do-not-crush = दबाएँ नहीं।
prep-do-not-flatten = चपटा न करें।
prep-do-not-nest = एक के अंदर दूसरा न रखें।
prep-scrunch-foil = फ़ॉइल को मुट्ठी जितना गोला बनाएँ।
prep-paper-bag = कागज़ की थैली में डालकर बंद करें।
prep-clear-bag = पारदर्शी थैली में डालें।
prep-tape-terminals = धातु के सिरों पर टेप लगाएँ।
prep-keep-upright = सीधा रखें।
prep-puncture-proof = ऐसे मज़बूत डिब्बे में डालें जिसमें छेद न हो सके।
prep-original-container = अपने ही डिब्बे में लेबल के साथ रहने दें।
prep-do-not-mix = किसी चीज़ में न मिलाएँ।
prep-do-not-puncture = छेद न करें।
prep-puncture = जब कुछ न निकले, तब छेद करें।
prep-wrap-broken = टूटे टुकड़े लपेटें ताकि किसी को न कटे।
prep-remove-battery = बैटरी आसानी से निकले तो निकालें। वह अलग जाती है।
prep-wipe-data = पहले अपना डेटा मिटाएँ।
prep-take-apart = अलग-अलग करें: हर चीज़ अपनी जगह जाती है।
prep-no-bags = कोई थैली न लगाएँ।
prep-no-plastic-bags = प्लास्टिक की थैली न लगाएँ।
prep-cool-ash = राख को कई दिन ठंडा होने दें, अंदर तक।
prep-double-bag = दो थैलियों में डालें, एक के अंदर एक।
prep-label-contents = लिखें कि अंदर क्या है।
prep-fits-lid-shut = ढक्कन बंद करके समाना चाहिए।
prep-check-fluid = देख लें कि अंदर कोई तरल न बचा हो।
prep-pair-and-tie = जोड़ी को साथ बाँधें।
prep-clean-and-usable = सिर्फ़ तभी जब साफ़ हो और काम आ सके।

## आम कारण

reason-sells = कारखाने इसे खरीदकर नई चीज़ें बनाते हैं।
reason-composts = इससे खाद बनती है।
reason-no-buyer = यहाँ इसे कोई नहीं खरीदता, इसलिए यह रीसाइकल नहीं हो सकता।
reason-too-small = यह इतना छोटा है कि छँटाई की मशीनों से गिर जाता है।
reason-too-large = यह कार्ट या मशीनों के लिए बहुत बड़ा है।
reason-tangles = यह मशीनों में लिपटकर उन्हें रोक देता है।
reason-wraps-screens = पतली पन्नी छलनियों में लिपटकर प्लांट रोक देती है।
reason-bagged-unseen = बंद थैली में क्या है, दिखता नहीं, इसलिए बिना खोले फेंकी जाती है।
reason-soiled = खाना और चिकनाई इसे खराब कर देते हैं।
reason-contents-spoil = अंदर बचा सामान आसपास सब खराब कर देगा।
reason-mixed-materials = इसकी चीज़ें आपस में चिपकी हैं, अलग नहीं होतीं।
reason-wrong-glass = यह काँच बोतल और जार की तरह नहीं पिघलता।
reason-breaks-unsafe = यह टूटकर छाँटने वालों को काटता है।
reason-not-packaging = यहाँ सिर्फ़ पैकिंग ली जाती है।
reason-hazard = यह कार्ट, ट्रक और प्लांट में खतरनाक है।
reason-handled-apart = इसे बाकी चीज़ों से अलग संभाला जाता है।
reason-reusable = यह अब भी किसी के काम आ सकता है।
reason-store-collects = दुकानें इसे वापस लेती हैं।
reason-contaminates-compost = यह खाद खराब कर देगा।
reason-not-named = सूची में इसका नाम नहीं है।
reason-not-listed = अभी तय नहीं हुआ। अंदाज़े से पूछना बेहतर है।
reason-too-heavy = यह उठाने के लिए बहुत भारी है।
reason-number-is-not-shape = सिर्फ़ अंक से तय नहीं होता: आकार भी मायने रखता है।
reason-black-unseen = मशीनें काला प्लास्टिक नहीं देख पातीं।
reason-burns = इससे आग लग सकती है।
reason-special-trip = इसे अलग से उठाया जाता है या इसकी अलग जगह है।
reason-law = कानून ऐसा कहता है।
reason-not-collected = यह यहाँ नहीं लिया जाता।

## नियमों के स्तर, जिस क्रम में देखे जाते हैं

tier-safety = सुरक्षा
tier-plant = छँटाई प्लांट
tier-program = यह कार्यक्रम
tier-material = सामग्री
tier-default = बाकी सब

## देखने के लिए किस्में

category-plastic-packaging = प्लास्टिक पैकिंग
category-paper-cardboard = कागज़ और गत्ता
category-glass = काँच
category-metal = धातु
category-food-drink-cartons = खाने-पीने के कार्टन
category-food-garden = खाना और बगीचा
category-film-bags = थैली और पन्नी
category-batteries-electronics = बैटरी और इलेक्ट्रॉनिक
category-hazardous = पेंट, रसायन, गैस
category-medical = दवा और सुई
category-textiles = कपड़े और जूते
category-household-goods = घर की चीज़ें
category-building = मकान और मरम्मत
category-bathroom = बाथरूम

## चीज़ के हिस्से जो अलग जा सकते हैं

part-lid = ढक्कन
part-cap = पेंच वाला ढक्कन
part-pump = पंप
part-sleeve = पन्नी का कवर
part-liner = अंदर की परत
part-straw = स्ट्रॉ
part-filter = फ़िल्टर
part-battery = बैटरी
part-cord = तार
part-shade = लैंप का शेड
part-contents = अंदर का सामान
part-bag = थैली
part-handle = हत्था
part-ring = छल्ला

## कार्ट के नियम

container-rule-lid-closed = ढक्कन बंद होना चाहिए।
container-rule-weight = भरा होने पर { $limit } से भारी न हो।
container-rule-distance = हर तरफ़ { $limit } जगह छोड़ें।
container-rule-side-waste = बगल में या ऊपर कुछ न रखें।
container-rule-share-of-load = गलत चीज़ें ज़्यादा से ज़्यादा { $limit } हो सकती हैं।
container-rule-liners = अंदर थैली लगा सकते हैं।
container-rule-sacks = सिर्फ़ वही बोरियाँ जो दी जाती हैं।
container-rule-registration = पहले नाम लिखवाएँ।
container-rule-refusals = कुछ गलत हो तो पर्ची लगाकर छोड़ दिया जाएगा।

## जहाँ कानून मना करता है

answer-banned = कानून में यहाँ डालना मना है: { $place }।
