### कार्यक्रमों की तुलना में क्या मिला: बदलाव, उनकी सूचना, क्षेत्र की रिपोर्ट, और छपी पंक्तियाँ जो अब सच
### नहीं हैं। निष्पक्ष: किसी को अच्छा या बुरा नहीं कहा जाता।

## जवाब और बदलाव

compare-answer = { $verdict }, { $place }
compare-becomes = { $item }: पहले “{ $before }”, अब “{ $after }”।
compare-stays = { $item }: अब भी “{ $answer }”।
compare-new = गाइड में नया: { $item }: “{ $answer }”।
compare-gone = गाइड में अब नहीं: { $item }। पहले था “{ $answer }”।
compare-steps-added = नया: { $steps }
compare-steps-removed = अब ज़रूरी नहीं: { $steps }
compare-steps-order = अब इस क्रम में: { $steps }
compare-also = यहाँ भी लिया जाता है: { $places }।
compare-also-none = अब कोई और जगह नहीं लेती।
compare-ban-gone = अब कानून इसे किसी कार्ट में मना नहीं करता।
compare-caution = अब सावधानी यह है: { $hazard }।
compare-caution-gone = सावधानी अब लागू नहीं: { $hazard }।
compare-reason = बताया गया कारण: { $reason }
compare-reason-gone = अब कोई कारण नहीं बताया जाता।
compare-temporary = यह एक अस्थायी आदेश से तय है।
compare-temporary-over = यह अब अस्थायी आदेश से तय नहीं है।

## ऐसा कब है

compare-when = कब: { $conditions }।
compare-when-many = शर्तें इतनी हैं कि गिनाई नहीं जा सकतीं।
compare-or = { $before }; या { $next }
compare-any-but = { $values } को छोड़कर कोई भी
compare-day-on = { $day } को
compare-day-from = { $day } से
compare-day-until = { $day } तक
compare-day-between = { $first } से { $last } तक

## सूचना

notice-title = { $place } की छँटाई गाइड में बदलाव
notice-editions = इस सूचना में { $before } और { $after } की तुलना है।
notice-edition = संस्करण { $label }
notice-edition-from = संस्करण { $label } ({ $day } से)
notice-on = { $day } की स्थिति।
notice-nothing = कोई जवाब नहीं बदला।
notice-now-accepted = अब लिया जाता है
notice-no-longer-accepted = अब नहीं लिया जाता
notice-another-place = दूसरी जगह जाता है
notice-prepared-differently = तैयारी अलग है
notice-asked-differently = दूसरे सवाल पूछे जाते हैं
notice-caution-changed = दूसरी सावधानी
notice-explained-differently = कारण अलग बताया गया
notice-new-in-guide = गाइड में नया
notice-gone-from-guide = गाइड में अब नहीं
notice-reworded = दूसरे शब्दों में कहा गया
# $words is a text of the program.
notice-words-now = “{ $words }”
notice-words-before = पहले: “{ $words }”
notice-words-of = इनके साथ बताया गया कारण: { $items }।
notice-more = { $count } और
notice-asked-now = अब इन पर निर्भर है: { $facts }।
notice-asked-no-longer = अब इन पर निर्भर नहीं: { $facts }।
notice-contact = सवाल? { $name }: { $ways }।
notice-unreviewed = इस अनुवाद को किसी ने जाँचा नहीं है।

## छपी पंक्तियाँ

untrue-title = छपी पंक्तियाँ जो अब सच नहीं
untrue-sheet =
    { $copies ->
        [0] पन्ना “{ $id }”, संस्करण { $edition }
        [one] पन्ना “{ $id }”, संस्करण { $edition }, { $copies } प्रति
       *[other] पन्ना “{ $id }”, संस्करण { $edition }, { $copies } प्रतियाँ
    }
untrue-always = “{ $line }” ({ $sheet }): इस संस्करण के शुरू से सच नहीं।
untrue-from = “{ $line }” ({ $sheet }): { $day } से सच नहीं।
untrue-until = “{ $line }” ({ $sheet }): { $day } तक सच नहीं।
untrue-between = “{ $line }” ({ $sheet }): { $first } से { $last } तक सच नहीं।
untrue-now = अब सच: “{ $answer }”।
untrue-gone = यह चीज़ अब गाइड में नहीं है।

## क्षेत्र की रिपोर्ट

regional-title = तुलना: { $places }
regional-contradictory = एक-दूसरे से उलटी सलाह
regional-differing =
    { $count ->
        [one] कौन अलग है ({ $count } चीज़)
       *[other] कौन अलग है ({ $count } चीज़ें)
    }
regional-agreed = सब में सच
regional-says = { $places }: { $answer }
regional-with-steps = { $answer }। { $steps }
regional-unknown = गाइड में नहीं
regional-item-when = { $item }। { $when }
regional-more-cases =
    { $count ->
        [one] दूसरे मामलों में { $count } और फ़र्क है।
       *[other] दूसरे मामलों में { $count } और फ़र्क हैं।
    }
