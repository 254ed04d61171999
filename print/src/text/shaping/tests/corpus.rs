//! Phrases of the trade for each script, written for these tests: at least twenty for each.

use crate::font::{FONT_FILES, Weight};

/// Texts of one language, set in one family.
pub(super) struct Corpus {
    pub(super) family: &'static str,
    pub(super) rtl: bool,
    pub(super) lang: &'static str,
    pub(super) texts: &'static [&'static str],
}

impl Corpus {
    /// The family's two faces.
    pub(super) fn faces(&self) -> [usize; 2] {
        [Weight::Regular, Weight::Bold].map(|weight| {
            FONT_FILES
                .iter()
                .position(|file| file.family == self.family && file.weight == weight)
                .expect("a bundled family")
        })
    }
}

const fn latin(lang: &'static str, texts: &'static [&'static str]) -> Corpus {
    Corpus { family: "Noto Sans", rtl: false, lang, texts }
}

const fn arabic(lang: &'static str, texts: &'static [&'static str]) -> Corpus {
    Corpus { family: "Noto Sans Arabic", rtl: true, lang, texts }
}

/// Accents of one or two characters, ligatures, kerning; joined letters, lam-alef, vowel marks, letters of Persian and
/// Urdu, digits of three scripts; conjuncts, reph, matras before and below, nukta; squares and syllables.
pub(super) const CORPORA: &[Corpus] = &[
    latin(
        "en",
        &[
            "Plastic bottles and jugs",
            "office affluent fjord",
            "AVATAR To. \u{201C}quoted\u{201D}",
            "(555) 555-0142",
            "Rinse, squash, put the lid back on",
            "No bags, no foam, no hoses!",
            "Batteries: tape the ends",
            "Up to 5 gal of oil-based paint",
            "Fluffy, stuffed & waffle-weave",
            "1½ in × 2¾ in, 30 % less",
        ],
    ),
    latin("es", &["¿Preguntas? Señales, Ñandú", "Cartón aplastado", "Pilas y teléfonos: tape los polos"]),
    latin(
        "fr",
        &["Bouteilles et œufs : où ?", "Boîtes à pizza très sales", "L’été, déposez-les à l’accueil"],
    ),
    latin("pt-BR", &["Caixas de papelão amassadas", "Não ponha lâmpadas aqui", "Óleo de cozinha à parte"]),
    latin("ht", &["Pa mete plastik sa yo", "Bwat katon ki plat", "Mete pil yo nan yon lòt kote, tanpri"]),
    latin("fil", &["Mga bote at lata, huwag basagin", "Ilagay ang papel dito", "Mga ñ at ng sa salita"]),
    latin(
        "vi",
        &[
            "Đồ nhựa: chai, lọ, hộp sữa",
            "Giấy vụn, tờ báo ẩm ướt",
            "e\u{302}\u{301} o\u{31B}\u{309} u\u{31B}\u{323}",
            "Bỏ những thứ này vào thùng",
            "Kim tiêm: đựng trong hộp cứng",
            "Bình ga dưới 20 lb",
            "Pin và điện thoại cũ",
            "Rửa sạch, để ráo",
            "Ngày thu gom chất thải nguy hại",
            "Ắc quy, bóng đèn, dầu nhớt",
            "Không bỏ túi ni lông",
            "Quần áo, giày dép, chăn",
            "Thức ăn thừa và xương",
            "Lá cây và cành nhỏ",
            "Thủy tinh vỡ gói kỹ",
            "Hộp đựng trứng bằng giấy",
            "Nắp chai nhựa rời",
            "ẨM ƯỚT, ĐỪNG BỎ VÀO",
            "Gọi 555-0142 nếu cần hỏi",
            "Thứ Hai, 7 giờ sáng",
        ],
    ),
    latin("el", &["Πλαστικά μπουκάλια ΐ"]),
    latin(
        "ru",
        &[
            "Пластиковые бутылки, ёмкости",
            "Й и\u{306} е\u{308}",
            "Стеклянные банки без крышек",
            "Картон, сложенный плоско",
            "Бумага, почта и журналы",
            "Не кладите пакеты и плёнку",
            "Батарейки: заклейте концы",
            "Газовые баллоны до 20 кг",
            "Лампы и ртутные термометры",
            "Лекарства — в аптеку",
            "Одежда, обувь, объедки",
            "Чистая фольга и лотки",
            "ПОДЪЁМ КРЫШКИ",
            "Пенопласт, шланги, провода",
            "Звоните по номеру 555-0142",
            "Масло и растворители",
            "«Опасные отходы» №\u{A0}5",
            "Пустые бумажные стаканы",
            "Щепки, жёлуди, хвоя",
            "Отнесите в пункт приёма",
        ],
    ),
    arabic(
        "ar",
        &[
            "حاوية إعادة التدوير",
            "لا تضع الأكياس، لأنها تعلق",
            "بِسْمِ اللَّهِ الرَّحْمٰنِ",
            "مُمْتَلِئٌ ١٢٣",
            "القوارير والأباريق البلاستيكية",
            "علب الطعام والشراب",
            "البرطمانات والقوارير الزجاجية",
            "الكرتون بعد تسطيحه",
            "الورق والبريد والمجلات",
            "رقائق الألمنيوم النظيفة",
            "البطاريات والهواتف",
            "خذ هذه إلى مكان آخر",
            "الإبر في وعاء صلب",
            "أسطوانات الغاز والمصابيح",
            "لا تضع السوائل ولا الأطعمة",
            "هل لديك سؤال؟ اتصل بنا",
            "الأسلاك والخراطيم والملابس",
            "مركز تسليم النفايات الخطرة",
            "زيت المحرك: ٥ لترات",
            "اغسلها وجففها ثم ضعها هنا",
        ],
    ),
    arabic("fa", &["بازیافت پلاستیک گچ ژاله می\u{200C}خواهم", "۱۲۳ کیلوگرم"]),
    arabic("ur", &["ری سائیکلنگ ڈبہ ٹوٹی چیزیں"]),
    Corpus {
        family: "Noto Sans Devanagari",
        rtl: false,
        lang: "hi",
        texts: &[
            "पुनर्चक्रण डिब्बा",
            "प्लास्टिक की बोतलें और जग",
            "काँच के मर्तबान",
            "गत्ता, चपटा किया हुआ",
            "काग़ज़, डाक और पत्रिकाएँ",
            "साफ़ पन्नी और ट्रे",
            "अख़बार",
            "इन्हें न डालें",
            "बैटरियाँ और फ़ोन",
            "सुइयाँ: सख़्त डिब्बे में",
            "क्षत्रिय ज्ञान श्रम त्रिकोण",
            "द्वितीय हृदय रूपया",
            "र्क र्ख़ि र्त्स्न्य",
            "कि\u{902} की\u{902} कु कू कृ के कै को कौ",
            "क\u{93C} क़ ड\u{93C} ड़",
            "क्\u{200D}ष क्\u{200C}ष",
            "ख़तरनाक कचरा दिवस पर।",
            "१२३ किलोग्राम तक",
            "दवा की दुकान में दें",
            "ट्यूब, स्प्रे, विद्युत",
            "उन्हें धोकर सुखा लें",
            "राष्ट्रीय स्वच्छता",
        ],
    },
    Corpus {
        family: "Noto Sans CJK SC",
        rtl: false,
        lang: "zh-Hans",
        texts: &[
            "可回收物收集车",
            "塑料瓶和塑料罐",
            "食品罐、饮料罐",
            "玻璃瓶（请洗净）",
            "纸板，请压平。",
            "纸张、邮件和杂志",
            "饮料纸盒",
            "干净的铝箔和铝盘",
            "报纸“旧报”",
            "空纸杯：可以",
            "请勿放入塑料袋！",
            "泡沫塑料？不可以",
            "电线和软管",
            "食物和液体——不要",
            "电池和手机……",
            "针头装入硬质容器",
            "气瓶送到收集日",
            "灯泡和灯管",
            "《有害垃圾》目录",
            "①洗净　②压平",
            "二〇二六年",
        ],
    },
    Corpus {
        family: "Noto Sans CJK KR",
        rtl: false,
        lang: "ko",
        texts: &[
            "재활용 수거함",
            "플라스틱 병과 통",
            "식품 캔과 음료 캔",
            "유리병, 유리 단지",
            "납작하게 접은 골판지",
            "종이, 우편물, 잡지",
            "음료 종이팩",
            "용기와 뚜껑",
            "깨끗한 알루미늄 포일",
            "신문",
            "빈 종이컵",
            "비닐봉지와 랩은 안 됩니다.",
            "스티로폼",
            "전선과 호스",
            "음식물과 액체",
            "접시와 머그컵",
            "배터리와 전화기",
            "주삿바늘: 단단한 용기에",
            "“유해 폐기물 수거일”에",
            "전구와 형광등",
            "궁금한 점은 전화하세요!",
            "씻어서 말린 뒤 넣으세요?",
            "ㄱㄴㄷ ㅏㅑㅓ",
        ],
    },
];
