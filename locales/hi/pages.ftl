### The guide as plain pages.
# Not yet reviewed by a native speaker.

pages-intro = इस गाइड की हर चीज़, जवाब के साथ। कोई चीज़ ढूँढने के लिए इसी पन्ने में खोजें: फ़ोन पर “पन्ने में खोजें”, कंप्यूटर पर Ctrl+F.
pages-app = सवाल पूछकर जवाब देने वाली गाइड खोलें
pages-places = चीज़ें कहाँ ले जाएँ
pages-depends = हालत पर निर्भर है
pages-category-title = { $category } – { $program }
pages-also = इसके दूसरे नाम
pages-now = अभी
pages-from = { $day } से
pages-too-much = जवाब इतनी बातों पर निर्भर है कि इस सूची में नहीं आ सकता।
pages-next-open = आगे इन दिनों खुला है:
pages-all-day = दिन-रात
pages-takes-only = सिर्फ़ यह लेते हैं: { $items }
pages-does-not-take = यह नहीं लेते: { $items }
