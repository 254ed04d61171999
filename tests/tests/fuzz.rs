//! Good files, cut, spliced, doubled and sprinkled with what does not belong, at every way in.

use std::sync::LazyLock;

use lidleaf_tests::{demo, fuzz};
use proptest::prelude::*;

/// What breaks readers: ends, quotes, signs of other scripts, huge and odd numbers.
const ODD: &[&str] = &[
    "\"",
    "{",
    "}",
    "[",
    "]",
    ",",
    ":",
    "\\",
    "\\u0000",
    "\u{0}",
    "\u{202e}",
    "\u{feff}",
    "null",
    "-1",
    "1e999",
    "99999999999999999999",
    "0.1",
    "\"2 in\"",
    "\"-2 in\"",
    "\"two\"",
    "\"9999999 km\"",
    "true",
    "é",
    "\u{1F600}",
    "\"item\"",
    "\"hazard\"",
    "{\"not\":",
    "{\"all\":[]}",
    "{\"any\":[]}",
];

/// One change: where (in ten-thousandths of the text), how much goes, what comes.
type Change = (usize, usize, usize);

fn changed(good: &str, changes: &[Change]) -> Vec<u8> {
    let mut bytes = good.as_bytes().to_vec();
    for &(at, goes, comes) in changes {
        let at = at * bytes.len() / 10_000;
        let end = (at + goes).min(bytes.len());
        let odd = ODD.get(comes % (ODD.len() + 1)).map_or("", |o| *o);
        bytes.splice(at..end, odd.bytes());
    }
    bytes
}

fn changes() -> impl Strategy<Value = Vec<Change>> {
    prop::collection::vec((0_usize..10_000, 0_usize..12, 0_usize..40), 0..6)
}

const RULE: &str = r#"{"id":"small","tier":"plant","when":{"all":[{"is":{"fact":"form","of":["jar","tub"]}},
    {"measure":{"fact":"middle-side","under":"2 in","like":"golf-ball"}},{"not":{"is":{"fact":"contents","of":["empty"]}}}]},
    "verdict":"no","stream":"refuse","season":{"from":"12-26","until":"01-15"},"from":"2026-01-01"}"#;

const ITEMS: &str = r#"{"items":[{"id":"jar","category":"glass","pictogram":"jar","facts":{"form":"jar","middle-side":"3 in"},
    "open":{"contents":{"among":{"empty":3,"part-full":1}},"longest-side":{"from":"3 in","to":"1 ft","usual":"5 in"}},
    "parts":[{"id":"lid","facts":{"material":"steel"}}],"common":60}]}"#;

/// A small program file with one of everything that the demo has.
fn program() -> String {
    let mut program = demo().clone();
    program.rules.truncate(12);
    program.sites.truncate(1);
    program.languages.truncate(1);
    program.to_json()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 600, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn program_files(changes in changes()) {
        fuzz::program_file(&changed(&program(), &changes));
    }

    #[test]
    fn rule_texts(changes in changes(), any in prop::collection::vec(any::<u8>(), 0..60)) {
        fuzz::rule_text(&changed(RULE, &changes));
        fuzz::rule_text(&any);
    }

    #[test]
    fn search_queries(any in "\\PC{0,200}", bytes in prop::collection::vec(any::<u8>(), 0..300)) {
        fuzz::search_query(any.as_bytes());
        fuzz::search_query(&bytes);
    }

    #[test]
    fn catalogs(changes in changes()) {
        fuzz::catalog(&changed(ITEMS, &changes));
    }

    #[test]
    fn places(any in "\\PC{0,100}", bytes in prop::collection::vec(any::<u8>(), 0..100)) {
        fuzz::place(any.as_bytes());
        fuzz::place(&bytes);
    }
}

proptest! {
    // Each works two programs out several times over.
    #![proptest_config(ProptestConfig { cases: 100, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn editions(any in prop::collection::vec(any::<u8>(), 0..200)) {
        fuzz::editions(&any);
    }
}

/// A byte of a good file's becomes another, or the file ends there.
fn damaged(good: &[u8], changes: &[(usize, u8)], end: usize) -> Vec<u8> {
    let mut bytes = good.to_vec();
    for &(at, comes) in changes {
        let at = at % bytes.len().max(1);
        if let Some(byte) = bytes.get_mut(at) {
            *byte = comes;
        }
    }
    bytes.truncate(if end < 9_000 { good.len() } else { good.len() * (end - 9_000) / 1_000 });
    bytes
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]

    /// What phones read, and opening hours, which a library reads.
    #[test]
    fn every_other_way_in(
        changes in prop::collection::vec((any::<usize>(), any::<u8>()), 0..6),
        end in 0_usize..10_000,
        which in any::<prop::sample::Index>(),
    ) {
        for ((_, run), seeds) in &*OTHER_WAYS {
            let seed: &Vec<u8> = which.get(seeds);
            run(&damaged(seed, &changes, end));
        }
    }
}

/// The ways in that no other test here damages the files of, with their good files.
static OTHER_WAYS: LazyLock<Vec<(fuzz::Entry, Vec<Vec<u8>>)>> = LazyLock::new(|| {
    let others =
        fuzz::ENTRIES.iter().filter(|(name, _)| ["hours", "guide", "words", "messages"].contains(name));
    others.map(|&entry| (entry, fuzz::seeds(entry.0))).collect()
});

/// Every way in has good files to begin with, and takes them.
#[test]
fn good_files_are_taken() {
    for &(name, run) in fuzz::ENTRIES {
        let seeds = fuzz::seeds(name);
        assert!(!seeds.is_empty(), "{name} begins with nothing");
        seeds.iter().for_each(|seed| run(seed));
    }
}
