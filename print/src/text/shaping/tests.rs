//! Shaping against HarfBuzz's own `hb-shape`: the same glyphs, advances and offsets on a corpus per script.

use std::process::Command;

use super::*;
use crate::font::FONT_FILES;

/// Direction, language and texts: accents made of one or two characters, ligatures, Vietnamese, Cyrillic and Greek;
/// joined letters, lam-alef, vowel marks, Persian and Urdu letters, digits.
const CORPUS: &[(usize, bool, &str, &[&str])] = &[
    (
        0,
        false,
        "en",
        &[
            "Plastic bottles and jugs",
            "office affluent fjord",
            "AVATAR To. \u{201C}quoted\u{201D}",
            "(555) 555-0142",
        ],
    ),
    (0, false, "es", &["¿Preguntas? Señales, Ñandú", "Cartón aplastado"]),
    (
        0,
        false,
        "vi",
        &["Đồ nhựa: chai, lọ, hộp sữa", "Giấy vụn, tờ báo ẩm ướt", "e\u{302}\u{301} o\u{31B}\u{309}"],
    ),
    (0, false, "ru", &["Пластиковые бутылки, ёмкости", "Й и\u{306}"]),
    (0, false, "el", &["Πλαστικά μπουκάλια ΐ"]),
    (1, false, "en", &["Put these in: batteries", "ffi ffl Tj"]),
    (2, true, "ar", &["حاوية إعادة التدوير", "لا تضع الأكياس، لأنها تعلق", "بِسْمِ اللَّهِ الرَّحْمٰنِ", "مُمْتَلِئٌ ١٢٣"]),
    (2, true, "fa", &["بازیافت پلاستیک گچ ژاله می\u{200C}خواهم"]),
    (2, true, "ur", &["ری سائیکلنگ ڈبہ ٹوٹی چیزیں"]),
    (3, true, "ar", &["البطاريات والهواتف", "خذ هذه إلى مكان آخر"]),
];

fn fonts() -> FontSet {
    let mut set = FontSet::new();
    for file in FONT_FILES {
        let bytes = std::fs::read(path(file.file)).expect("a bundled font");
        set.add(file.family, file.weight, bytes).expect("a whole font");
    }
    set
}

fn path(file: &str) -> String {
    format!("{}/fonts/{file}", env!("CARGO_MANIFEST_DIR"))
}

/// `hb-shape`'s glyphs as `(id, cluster, dx, dy, advance)`.
fn harfbuzz(face: usize, rtl: bool, lang: &str, text: &str) -> Vec<(u16, usize, i32, i32, i32)> {
    let output = Command::new("hb-shape")
        .args(["--no-glyph-names", "--utf8-clusters", "--cluster-level=1", "--remove-default-ignorables"])
        .args(["--output-format=json", if rtl { "--direction=rtl" } else { "--direction=ltr" }])
        .arg(format!("--language={lang}"))
        .arg(path(FONT_FILES[face].file))
        .arg(text)
        .output()
        .unwrap_or_else(|error| {
            panic!(
                "this test needs `hb-shape` ({error}); install it with `apt-get update && apt-get install -y \
                 --no-install-recommends libharfbuzz-bin`"
            )
        });
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let json: serde_json::Value = serde_json::from_slice(&output.stdout).expect("hb-shape's JSON");
    let number =
        |glyph: &serde_json::Value, key: &str| i32::try_from(glyph[key].as_i64().expect(key)).expect(key);
    json.as_array()
        .expect("glyphs")
        .iter()
        .map(|glyph| {
            let cluster = usize::try_from(number(glyph, "cl")).expect("a cluster");
            let id = u16::try_from(number(glyph, "g")).expect("a glyph");
            (id, cluster, number(glyph, "dx"), number(glyph, "dy"), number(glyph, "ax"))
        })
        .collect()
}

#[test]
fn glyphs_and_advances_equal_harfbuzz() {
    let fonts = fonts();
    let setter = Typesetter::new(&fonts);
    let mut glyphs = 0;
    for &(face, rtl, lang, texts) in CORPUS {
        for text in texts {
            let ours: Vec<_> = setter
                .shape(text, 0..text.len(), face, rtl, lang)
                .into_iter()
                .map(|g| (g.id, g.cluster, g.dx, g.dy, g.advance))
                .collect();
            assert_eq!(ours, harfbuzz(face, rtl, lang, text), "{lang}: {text}");
            glyphs += ours.len();
        }
    }
    assert!(glyphs > 300, "the corpus was shaped");
}

#[test]
fn faces_follow_script_language_and_the_face_before() {
    use Weight::{Bold, Regular};
    let fonts = fonts();
    let setter = Typesetter::new(&fonts);
    for (c, lang, weight, before, expected) in [
        ('a', "en", Regular, None, Some(0)),
        ('a', "en", Bold, None, Some(1)),
        ('ع', "ar", Regular, Some(0), Some(2)),
        ('ع', "", Bold, Some(1), Some(3)),
        (' ', "ar", Regular, Some(2), Some(2)),
        ('.', "ar", Regular, Some(2), Some(2)),
        ('5', "ar", Regular, Some(2), Some(0)),
        ('\u{200C}', "ar", Regular, Some(2), Some(2)),
        // Brackets are alike whatever stands between them.
        ('(', "hi", Regular, None, Some(4)),
        (')', "hi", Regular, Some(0), Some(4)),
        ('(', "ar", Regular, Some(2), Some(0)),
        (')', "en", Regular, Some(0), Some(0)),
        ('क', "hi", Regular, Some(0), Some(4)),
        ('\u{94D}', "hi", Bold, Some(5), Some(5)),
        ('।', "hi", Regular, Some(0), Some(4)),
        ('P', "hi", Regular, Some(4), Some(0)),
        ('塑', "zh-Hans", Regular, None, Some(6)),
        ('塑', "en", Bold, None, Some(7)),
        ('，', "zh", Regular, Some(0), Some(6)),
        ('“', "zh", Regular, Some(0), Some(6)),
        ('“', "en", Regular, Some(0), Some(0)),
        ('·', "zh", Regular, Some(0), Some(6)),
        ('P', "zh", Regular, Some(6), Some(0)),
        ('\u{301}', "zh", Regular, Some(0), Some(0)),
        ('한', "ko", Regular, None, Some(8)),
        ('”', "ko", Bold, Some(1), Some(9)),
        (',', "ko", Regular, Some(8), Some(8)),
        ('「', "ko", Regular, None, Some(8)),
        // A Han character in Korean would be drawn in another country's form.
        ('塑', "ko", Regular, Some(8), None),
        ('漢', "en", Regular, Some(0), None),
        // Not in the common font, and no other is asked: the browser would not have fetched it.
        ('≤', "en", Regular, Some(0), None),
        ('あ', "zh", Regular, Some(6), None),
        ('🥫', "en", Regular, Some(0), None),
    ] {
        assert_eq!(setter.face_for(c, weight, before, lang), expected, "{c:?} in {lang}");
    }
}
