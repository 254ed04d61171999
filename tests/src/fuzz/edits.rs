//! Two editions of a program made of bytes: the demo, cut small, with edits that the bytes choose.
//!
//! Bytes changed at random hardly ever stay a program file. So that most are, an edit puts a value
//! where another of its kind stood: found at the same place in another rule, stream or site, or a
//! word from the vocabulary of facts, ids, measures and days.

use std::collections::BTreeMap;
use std::sync::OnceLock;

use guide_data::{
    Catalog, FACTS, FactKind, PrintedSheet, Printing, Program, SummaryWanted, check, summarise,
};
use serde_json::Value;

use crate::demo::demo;
use crate::fail::OrFail;

/// The most values an edited program may have: an edit that doubles must not do so for ever.
const MOST_VALUES: usize = 6_000;

/// Some of the standard items, of every kind of fact.
///
/// # Panics
/// When the catalog no longer loads.
pub fn small_catalog() -> &'static Catalog {
    static SMALL: OnceLock<Catalog> = OnceLock::new();
    SMALL.get_or_init(|| {
        let all = Catalog::standard().map_err(|p| format!("{p:?}")).or_fail("loading the catalog");
        let wanted = |item: &&guide_data::Item| {
            let parts = !item.parts.is_empty();
            let open = item.open.len();
            parts || open >= 3 || item.facts.contains_key("hazard")
        };
        Catalog { items: all.items.iter().filter(wanted).step_by(13).take(8).cloned().collect() }
    })
}

/// The demo, with one of everything.
pub(super) fn small_program() -> Program {
    let catalog = small_catalog();
    let mut program = demo().clone();
    let count = program.rules.len();
    program.rules = program.rules.into_iter().step_by((count / 16).max(1)).collect();
    program.sites.truncate(2);
    program.languages.truncate(1);
    program.items.truncate(2);
    program.item_names.retain(|id, _| catalog.item(id).is_some());
    let mut tree = serde_json::from_str(&program.to_json()).unwrap_or_default();
    keep_source(&mut tree);
    let mut program =
        Program::from_json(&tree.to_string()).map_err(|p| format!("{p:?}")).or_fail("cutting the demo");
    // A lid that is out there, with a line for each kind of thing.
    let guide = check(&program, catalog).guide;
    let wanted = SummaryWanted { yes: 1, no: 1, elsewhere: 1, ..SummaryWanted::default() };
    let summary = summarise(&guide, &wanted);
    let printing = Printing { guide: &guide, wanted: &wanted, summary: &summary, hazard_places: true };
    let day = program.edition.from;
    let lid = PrintedSheet { id: "lid".to_owned(), printed: day, ..PrintedSheet::default() };
    program.note_printed(lid.with_lines(&program, &printing, &|line| line.item.clone()));
    program
}

/// Leaves one language of every text: the others say the same.
fn keep_source(tree: &mut Value) {
    match tree {
        Value::Array(all) => all.iter_mut().for_each(keep_source),
        Value::Object(all) => {
            if all.contains_key("en") {
                all.retain(|key, _| key == "en");
            }
            all.values_mut().for_each(keep_source);
        }
        _ => {}
    }
}

/// The small demo as a tree of values.
fn base() -> &'static Value {
    static BASE: OnceLock<Value> = OnceLock::new();
    BASE.get_or_init(|| {
        let text = small_program().to_json();
        serde_json::from_str(&text).map_err(|e| e.to_string()).or_fail("reading the small demo")
    })
}

/// What may stand where a word stands.
pub(super) fn vocabulary() -> &'static Vec<String> {
    static WORDS: OnceLock<Vec<String>> = OnceLock::new();
    WORDS.get_or_init(|| {
        let mut words: Vec<String> = Vec::new();
        for fact in FACTS {
            words.push(fact.id.to_owned());
            if let FactKind::Choice(values) = fact.kind {
                words.extend(values.iter().map(|&v| v.to_owned()));
            }
        }
        words.extend(small_catalog().items.iter().map(|i| i.id.clone()));
        collect(base(), &mut words);
        let odd = [
            "",
            " ",
            "2 in",
            "3 in",
            "51 mm",
            "50.8 mm",
            "0 in",
            "-1 in",
            "1 gal",
            "9999999 km",
            "1 lb",
            "2",
            "0.0001 in",
            "2026-02-29",
            "2026-01-01",
            "2027-12-31",
            "12-31",
            "02-29",
            "01-01",
            "99-99",
            "262142-12-31",
            "-262142-01-01",
            "#000000",
            "#12",
            "24/7",
            "Mo-Fr 09:00-17:00",
            "\u{202e}",
        ];
        words.extend(odd.map(str::to_owned));
        words.sort();
        words.dedup();
        words
    })
}

/// The texts of a tree that are short enough to be names of something.
fn collect(value: &Value, words: &mut Vec<String>) {
    match value {
        Value::String(text) if text.len() <= 24 => words.push(text.clone()),
        Value::Array(all) => all.iter().for_each(|v| collect(v, words)),
        Value::Object(all) => {
            words.extend(all.keys().cloned());
            all.values().for_each(|v| collect(v, words));
        }
        _ => {}
    }
}

/// Bytes taken one after the other; when they are used up, zeros.
struct Draws<'b>(&'b [u8]);

impl Draws<'_> {
    fn byte(&mut self) -> usize {
        let Some((&first, rest)) = self.0.split_first() else { return 0 };
        self.0 = rest;
        usize::from(first)
    }

    fn among(&mut self, count: usize) -> usize {
        (self.byte() << 8 | self.byte()) % count.max(1)
    }
}

/// Where values stand, as pointers, by their place with positions left out: those of one place are of one kind.
fn places(value: &Value, pointer: &str, kind: &str, found: &mut BTreeMap<String, Vec<String>>) {
    found.entry(kind.to_owned()).or_default().push(pointer.to_owned());
    match value {
        Value::Array(all) => {
            for (at, inner) in all.iter().enumerate() {
                places(inner, &format!("{pointer}/{at}"), &format!("{kind}/*"), found);
            }
        }
        Value::Object(all) => {
            for (key, inner) in all {
                let escaped = key.replace('~', "~0").replace('/', "~1");
                // Conditions stand in conditions: one inside another is of the same kind.
                let below = match (kind.find("/when"), key.as_str()) {
                    (Some(at), "all" | "any" | "not" | "is" | "measure") => {
                        format!("{}/when/{key}", kind.get(..at).unwrap_or_default())
                    }
                    _ => format!("{kind}/{key}"),
                };
                places(inner, &format!("{pointer}/{escaped}"), &below, found);
            }
        }
        _ => {}
    }
}

fn edit(tree: &mut Value, draws: &mut Draws<'_>) {
    let mut kinds = BTreeMap::new();
    places(tree, "", "", &mut kinds);
    let total: usize = kinds.values().map(Vec::len).sum();
    let how = draws.byte() % 10;
    let kinds: Vec<&Vec<String>> = kinds.values().collect();
    let kind = kinds[draws.among(kinds.len())];
    let at = &kind[draws.among(kind.len())];
    let other = tree.pointer(&kind[draws.among(kind.len())]).cloned().unwrap_or_default();
    let Some((parent, last)) = at.rsplit_once('/') else { return };
    let key = last.replace("~1", "/").replace("~0", "~");
    match how {
        // Taken away.
        0 => match tree.pointer_mut(parent) {
            Some(Value::Array(all)) => drop(key.parse::<usize>().map(|n| all.remove(n))),
            Some(Value::Object(all)) => drop(all.remove(&key)),
            _ => {}
        },
        // Said twice, or a whole list twice.
        1 if total < MOST_VALUES => match tree.pointer_mut(parent) {
            Some(Value::Array(all)) => all.push(other),
            Some(Value::Object(all)) => match all.get_mut(&key) {
                Some(Value::Array(list)) => list.extend(list.clone()),
                Some(place) => *place = other,
                None => {}
            },
            _ => {}
        },
        // A condition the other way round, or within another.
        2 if at.contains("/when") && total < MOST_VALUES => {
            let Some(place) = tree.pointer_mut(at) else { return };
            if place.is_object() {
                let inner = place.take();
                *place = match draws.byte() % 3 {
                    0 => serde_json::json!({ "not": inner }),
                    1 => serde_json::json!({ "any": [inner, other] }),
                    _ => serde_json::json!({ "all": [inner, other] }),
                };
            }
        }
        // What another of its kind has and this one has not.
        3 if total < MOST_VALUES => {
            if let (Some(Value::Object(all)), Value::Object(more)) = (tree.pointer_mut(at), other) {
                for (key, value) in more {
                    all.entry(key).or_insert(value);
                }
            }
        }
        // Another word, number or choice.
        4..=7 => {
            let Some(place) = tree.pointer_mut(at) else { return };
            match place {
                Value::String(_) => {
                    let words = vocabulary();
                    *place = Value::String(words[draws.among(words.len())].clone());
                }
                Value::Number(_) => {
                    let numbers = [0, 1, 2, 100, 101, 65_535, u32::MAX.into(), -1, i64::MAX, i64::MIN];
                    *place = numbers[draws.byte() % numbers.len()].into();
                }
                Value::Bool(yes) => *yes = !*yes,
                _ => *place = other,
            }
        }
        _ => {
            if let Some(place) = tree.pointer_mut(at) {
                *place = other;
            }
        }
    }
}

/// Two editions: the first byte says how many edits make the first, the rest of the bytes are edits.
/// `None` for one that is no program file any more.
pub(super) fn editions(bytes: &[u8]) -> (Option<Program>, Option<Program>) {
    let mut draws = Draws(bytes);
    let mut tree = base().clone();
    let first = draws.byte() % 24;
    for _ in 0..first {
        edit(&mut tree, &mut draws);
    }
    let read = |tree: &Value| Program::from_json(&tree.to_string()).ok();
    let before = read(&tree);
    // An edit takes seven bytes at least: what is left bounds how many there are.
    for _ in 0..24 {
        if draws.0.is_empty() {
            break;
        }
        edit(&mut tree, &mut draws);
    }
    (before, read(&tree))
}
