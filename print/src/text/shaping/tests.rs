//! Shaping against HarfBuzz's own `hb-shape`: the same glyphs, advances and offsets on a corpus per script.

use std::collections::BTreeMap;
use std::process::Command;

use super::super::itemise::choose_faces;
use super::super::opportunities::opportunities;
use super::*;
use crate::font::{FONT_FILES, fonts_on_disk};
use corpus::{CORPORA, Corpus};

mod corpus;

fn path(file: &str) -> String {
    format!("{}/fonts/{file}", env!("CARGO_MANIFEST_DIR"))
}

/// A glyph as `hb-shape` and we both say it: id, cluster, offset and advance.
type Placed = (u16, usize, i32, i32, i32);

/// `hb-shape`'s glyphs of each text.
fn harfbuzz(face: usize, corpus: &Corpus) -> Vec<Vec<Placed>> {
    let output = Command::new("hb-shape")
        .args(["--no-glyph-names", "--utf8-clusters", "--cluster-level=1", "--remove-default-ignorables"])
        .args(["--output-format=json", if corpus.rtl { "--direction=rtl" } else { "--direction=ltr" }])
        .arg(format!("--language={}", corpus.lang))
        .arg(format!("--text={}", corpus.texts.join("\n")))
        .arg(path(FONT_FILES[face].file))
        .output()
        .unwrap_or_else(|error| {
            panic!(
                "this test needs `hb-shape` ({error}); install it with `apt-get update && apt-get install -y \
                 --no-install-recommends libharfbuzz-bin`"
            )
        });
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let number =
        |glyph: &serde_json::Value, key: &str| i32::try_from(glyph[key].as_i64().expect(key)).expect(key);
    let placed = |glyph: &serde_json::Value| {
        let cluster = usize::try_from(number(glyph, "cl")).expect("a cluster");
        let id = u16::try_from(number(glyph, "g")).expect("a glyph");
        (id, cluster, number(glyph, "dx"), number(glyph, "dy"), number(glyph, "ax"))
    };
    String::from_utf8(output.stdout)
        .expect("UTF-8")
        .lines()
        .map(|line| {
            let json: serde_json::Value = serde_json::from_str(line).expect("hb-shape's JSON");
            json.as_array().expect("glyphs").iter().map(placed).collect()
        })
        .collect()
}

#[test]
fn glyphs_and_advances_equal_harfbuzz() {
    let fonts = fonts_on_disk();
    let setter = Typesetter::new(&fonts);
    let mut counts: BTreeMap<&str, usize> = BTreeMap::new();
    for corpus in CORPORA {
        for face in corpus.faces() {
            let judged = harfbuzz(face, corpus);
            assert_eq!(judged.len(), corpus.texts.len(), "{}", corpus.lang);
            for (text, judged) in corpus.texts.iter().zip(judged) {
                let ours: Vec<Placed> = setter
                    .shape(text, 0..text.len(), face, corpus.rtl, corpus.lang)
                    .into_iter()
                    .map(|g| (g.id, g.cluster, g.dx, g.dy, g.advance))
                    .collect();
                assert_eq!(ours, judged, "{}: {text}", corpus.lang);
                assert!(ours.iter().all(|glyph| glyph.0 != 0), "a glyph is missing: {text}");
            }
        }
        *counts.entry(corpus.family).or_default() += corpus.texts.len();
    }
    assert!(counts.len() == 5 && counts.values().all(|&count| count >= 20), "{counts:?}");
}

/// Every character of the corpora has a face in its language, and no line starts inside a cluster of glyphs: a break
/// between the letters of a Devanagari syllable, a letter and its accent, or joined lam and alef.
#[test]
fn no_line_breaks_inside_a_cluster() {
    let fonts = fonts_on_disk();
    let setter = Typesetter::new(&fonts);
    for corpus in CORPORA {
        for text in corpus.texts {
            let faces = choose_faces(setter, text, corpus.lang, Weight::Regular)
                .unwrap_or_else(|missing| panic!("{}: {text}: {missing:?}", corpus.lang));
            let starts: Vec<usize> = faces
                .iter()
                .flat_map(|(range, face)| setter.shape(text, range.clone(), *face, corpus.rtl, corpus.lang))
                .map(|glyph| glyph.cluster)
                .collect();
            for opportunity in opportunities(text, corpus.lang) {
                let at = opportunity.at;
                assert!(at == text.len() || starts.contains(&at), "{}: {text} at {at}", corpus.lang);
            }
        }
    }
}

#[test]
fn faces_follow_script_language_and_the_face_before() {
    use Weight::{Bold, Regular};
    let fonts = fonts_on_disk();
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

/// What was shaped in the whole text is taken for a line only where shaping the line alone gives the same glyphs.
#[test]
fn glyphs_of_the_whole_text_are_those_of_its_lines() {
    let fonts = fonts_on_disk();
    let setter = Typesetter::new(&fonts);
    let (mut taken, mut shaped_anew) = (0, 0);
    for corpus in CORPORA {
        let direction = if corpus.rtl { crate::job::Direction::Rtl } else { crate::job::Direction::Ltr };
        for text in corpus.texts {
            let measured = setter.measured(text, corpus.lang, direction, Weight::Regular).expect("glyphs");
            let text = &measured.text;
            let ends: Vec<usize> = text.char_indices().map(|(at, _)| at).chain([text.len()]).collect();
            for (place, &start) in ends.iter().enumerate() {
                for &end in &ends[place + 1..] {
                    match measured.known(&(start..end)) {
                        Some((face, rtl, Some(glyphs))) => {
                            let alone = setter.shape(text, start..end, face, rtl, corpus.lang);
                            let plain = |all: &[Shaped]| -> Vec<_> {
                                all.iter().map(|g| (g.id, g.cluster, g.advance, g.dx, g.dy)).collect()
                            };
                            assert_eq!(plain(glyphs), plain(&alone), "{:?}", &text[start..end]);
                            taken += 1;
                        }
                        Some((_, _, None)) => shaped_anew += 1,
                        None => {}
                    }
                }
            }
        }
    }
    assert!(taken > 1_000 && shaped_anew > 0, "{taken} taken, {shaped_anew} shaped anew");
}
