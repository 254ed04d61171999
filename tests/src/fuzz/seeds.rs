//! What a fuzzer begins with: good files of the demo's own, cut small, and the words they are made of.

use guide_data::{Catalog, Guide, LanguagePack, PackedWords, check, program_texts};

use super::edits::{small_catalog, small_program, vocabulary};
use crate::demo::{demo, demo_guide};

/// Good bytes for a way in.
#[must_use]
pub fn seeds(entry: &str) -> Vec<Vec<u8>> {
    let texts = |all: &[&str]| all.iter().map(|text| text.as_bytes().to_vec()).collect::<Vec<_>>();
    match entry {
        "program" => {
            let mut smaller = small_program();
            smaller.rules.truncate(6);
            smaller.printed.clear();
            smaller.item_names.clear();
            vec![small_program().to_json().into_bytes(), smaller.to_json().into_bytes()]
        }
        "rule" => demo().rules.iter().filter_map(|rule| serde_json::to_vec(rule).ok()).collect(),
        "search" => {
            texts(&["milk jug", "newspapr", "زجاجة", "塑料水瓶", "Стекло", "뽁뽁이", "bombillla vieja"])
        }
        "catalog" => small_catalog()
            .items
            .iter()
            .filter_map(|item| serde_json::to_vec(&Catalog { items: vec![item.clone()] }).ok())
            .collect(),
        "editions" => (0..64_u8)
            .map(|seed| (0..160_u8).map(|n| n.wrapping_mul(seed * 2 + 1) ^ (n >> 3) ^ seed).collect())
            .collect(),
        "hours" => {
            let mut all: Vec<Vec<u8>> = demo().sites.iter().map(|s| s.hours.clone().into_bytes()).collect();
            all.extend(texts(&[
                "Mo-Fr 08:00-12:00,13:00-17:30; Sa 09:00-12:00; PH off",
                "Mar-Oct: Mo-Su 07:00-sunset; Nov-Feb: We[1] 09:00-15:00 open \"by appointment\"",
                "2026 Dec 24-2027 Jan 02 off || week 01-53/2 Tu 20:00-26:00",
                "24/7",
            ]));
            all
        }
        "place" => demo()
            .sites
            .iter()
            .flat_map(|s| s.address.split(',').map(|part| part.trim().as_bytes().to_vec()))
            .chain(demo().zones.iter().map(|z| z.id.clone().into_bytes()))
            .collect(),
        "guide" => {
            let small: Guide = check(&small_program(), small_catalog()).guide;
            vec![small.to_bytes()]
        }
        "words" => {
            let guide = demo_guide();
            let pack = LanguagePack {
                language: "en".to_owned(),
                source: "en".to_owned(),
                direction: "ltr".to_owned(),
                endonym: "English".to_owned(),
                texts: program_texts(demo(), "en"),
                names: guide.items.iter().map(|i| (i.id.clone(), vec![i.id.clone()])).collect(),
                ..LanguagePack::default()
            };
            let words = pack.names.clone();
            let packed = PackedWords { pack, messages: "ok".to_owned() };
            vec![packed.to_bytes(guide), guide.search_words_to_bytes(&words)]
        }
        "messages" => {
            let mut all = Vec::new();
            for language in ["en", "ar"] {
                if let Some(language) = locales::supported().iter().find(|l| l.lang().tag() == language) {
                    let messages = locales::bundled(&language.lang());
                    for start in ["ask", "compare", "finding-printed", "notice", "open"] {
                        all.push(messages.packed(|key| key.starts_with(start)).into_bytes());
                    }
                }
            }
            all
        }
        _ => Vec::new(),
    }
}

/// Words for a fuzzer to put in, in its own notation: one in quotes on each line.
#[must_use]
pub fn dictionary() -> String {
    let mut out = String::new();
    for word in vocabulary() {
        let plain = |byte: u8| byte.is_ascii_graphic() && byte != b'"' && byte != b'\\';
        if !word.is_empty() && word.bytes().all(plain) {
            out.push_str(&format!("\"{word}\"\n"));
        }
    }
    out
}
