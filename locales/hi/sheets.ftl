### ढक्कन के लेबल और पोस्टकार्ड पर छपे शब्द। एक कदम दूर से पढ़े जाते हैं, जगह कम है।

sheet-heading-yes = हाँ
sheet-heading-no = नहीं
sheet-heading-elsewhere = दूसरी जगह दें
sheet-heading-caution = कार्ट या बिन में कभी नहीं
sheet-scan = यहाँ नहीं लिखा? स्कैन करके पूछें।
sheet-contact = सवाल? { $name }, { $phone }
sheet-line-when = { $item } ({ $condition })
sheet-when-resin = अंक { $values }
sheet-line-where = { $item }: { $place }

sheet-hazard-battery-lithium = चार्ज होने वाली हर चीज़
sheet-hazard-battery-household = बैटरियाँ
sheet-hazard-battery-lead-acid = कार की बैटरियाँ
sheet-hazard-sharps = सुई और लैंसेट
sheet-hazard-medicine = दवाएँ
sheet-hazard-pressurised = गैस, भरे स्प्रे कैन
sheet-hazard-flammable = ईंधन और थिनर
sheet-hazard-toxic = कीड़े, खरपतवार की दवा
sheet-hazard-corrosive = तेज़ाब, नाली साफ़ करने वाला
sheet-hazard-mercury = पारा और ट्यूब लाइट
sheet-hazard-oil = इंजन तेल
sheet-hazard-explosive = पटाखे और कारतूस
sheet-hazard-radioactive = कोई भी रेडियोधर्मी चीज़
sheet-hazards-between = {", "}
sheet-picture-alt = चित्र: { $item }
sheet-caution-alt = चेतावनी का निशान
sheet-code-alt = गाइड खोलने वाला QR कोड
sheet-link-alt = गाइड ब्राउज़र में खोलें
sheet-not-here = इसमें न डालें: { $thing }
sheet-heading-places = कहाँ दें
sheet-place-between = {", "}
