//! What phones are sent: the guide that is read is the guide that was compiled, and damaged bytes are
//! told, never believed and never the end of the program.

#![expect(clippy::unwrap_used, clippy::indexing_slicing, reason = "a test that cannot go on should stop")]

mod common;

use std::collections::BTreeMap;
use std::sync::LazyLock;

use common::Dice;
use guide_data::{
    Catalog, Given, Guide, Known, LanguagePack, PackProblem, PackedWords, Program, Step, demo_json, packed,
};

/// The demo's guide with its sites' hours, as it is published.
static DEMO: LazyLock<Guide> = LazyLock::new(|| {
    let program = Program::from_json(demo_json()).unwrap();
    let mut guide = Guide::compile(&program, &Catalog::standard().unwrap());
    guide.fill_hours(&program);
    guide
});

/// Everything a guide is, but for the list of items, which is left out.
fn whole(guide: &Guide) -> serde_json::Value {
    let mut guide = guide.clone();
    for variable in guide.variables.iter_mut().filter(|v| v.fact == "item") {
        variable.values.clear();
    }
    serde_json::to_value(&guide).unwrap()
}

#[test]
fn the_guide_that_is_read_is_the_guide_that_was_written() {
    let bytes = DEMO.to_bytes();
    assert_eq!(bytes, DEMO.to_bytes());
    let read = Guide::from_bytes(&bytes).unwrap();
    assert_eq!(whole(&read), whole(&DEMO));
    assert_eq!(read.to_bytes(), bytes, "what was read is written alike");
}

/// Goes down every way of answering, and counts the answers.
fn same_answers(one: &Guide, other: &Guide, item: usize, known: &Known) -> usize {
    let (step, same) = (one.next(item, known), other.next(item, known));
    assert_eq!(step, same, "{} {known:?}", one.items[item].id);
    assert_eq!(one.questions(item, known), other.questions(item, known));
    let Some(Step::Ask(question)) = step else { return 1 };
    let answers = question.options.into_iter().map(|choice| choice.given).chain([Given::CannotTell]);
    answers.map(|given| same_answers(one, other, item, &known.clone().with(&question.fact, given))).sum()
}

#[test]
fn every_item_in_every_zone_by_every_way_of_answering_is_answered_alike() {
    let read = Guide::from_bytes(&DEMO.to_bytes()).unwrap();
    let mut answers = 0;
    let zones = DEMO.zones.iter().map(|zone| Some(zone.id.as_str())).chain([None]);
    for zone in zones {
        for day in ["2027-01-05", "2027-07-05"] {
            let mut known = Known::default().with("day", Given::Day(day.parse().unwrap()));
            if let Some(zone) = zone {
                known.give("zone", Given::value(zone));
            }
            for item in 0..DEMO.items.len() {
                answers += same_answers(&DEMO, &read, item, &known);
            }
        }
    }
    assert!(answers > 10 * DEMO.items.len(), "{answers}");
    let (day, noon) = ("2027-03-03".parse().unwrap(), 12 * 60);
    for (site, same) in DEMO.sites.iter().zip(&read.sites) {
        assert_eq!(site.hours.at(day, noon), same.hours.at(day, noon), "{}", site.id);
    }
}

fn words() -> PackedWords {
    let names = DEMO.items.iter().map(|item| (item.id.clone(), vec![format!("the {}", item.id)])).collect();
    PackedWords {
        pack: LanguagePack {
            language: "ar".to_owned(),
            source: "en".to_owned(),
            direction: "rtl".to_owned(),
            endonym: "العربية".to_owned(),
            texts: BTreeMap::from([("program.name".to_owned(), "Quillmere".to_owned())]),
            names,
            messages: Vec::new(),
            unreviewed: true,
        },
        messages: "back\u{8}رجوع\u{8}".to_owned(),
    }
}

fn other_words() -> BTreeMap<String, Vec<String>> {
    DEMO.items.iter().skip(1).map(|item| (item.id.clone(), vec![format!("old {}", item.id)])).collect()
}

#[test]
fn words_are_read_with_the_guide_they_were_written_for() {
    let words = words();
    let bytes = words.to_bytes(&DEMO);
    assert_eq!(PackedWords::from_bytes(&bytes, &DEMO), Ok(words));
    let others = DEMO.search_words_to_bytes(&other_words());
    assert_eq!(DEMO.search_words(&others), Ok(other_words()));
    let mut other = DEMO.clone();
    other.items.swap(0, 1);
    assert_eq!(PackedWords::from_bytes(&bytes, &other), Err(PackProblem::OtherGuide));
    assert_eq!(other.search_words(&others), Err(PackProblem::OtherGuide));
}

#[test]
fn other_files_and_other_versions_are_told_apart() {
    let bytes = DEMO.to_bytes();
    let read = |bytes: &[u8]| Guide::from_bytes(bytes).unwrap_err();
    assert_eq!(read(b""), PackProblem::OtherFile);
    assert_eq!(read(b"{\"program\":\"quillmere\"}"), PackProblem::OtherFile);
    assert_eq!(read(&words().to_bytes(&DEMO)), PackProblem::OtherFile);
    let mut newer = bytes.clone();
    newer[5] = packed::VERSION + 1;
    assert_eq!(read(&newer), PackProblem::OtherVersion(packed::VERSION + 1));
    let mut longer = bytes.clone();
    longer.push(0);
    assert!(matches!(read(&longer), PackProblem::Damaged(_)));
    assert_eq!(read(&longer).code(), "damaged");
}

/// FNV-1a, 64 bits: offset basis and prime of the function's published definition (from memory).
fn sealed_again(mut bytes: Vec<u8>) -> Vec<u8> {
    if bytes.len() >= 14 {
        let sum = bytes[14..].iter().fold(0xcbf2_9ce4_8422_2325_u64, |sum, &b| {
            (sum ^ u64::from(b)).wrapping_mul(0x0000_0100_0000_01b3)
        });
        bytes[6..14].copy_from_slice(&sum.to_le_bytes());
    }
    bytes
}

fn damaged(dice: &mut Dice, bytes: &[u8]) -> Vec<u8> {
    let mut bytes = bytes.to_vec();
    for _ in 0..=dice.roll(3) {
        let at = dice.roll(bytes.len());
        match dice.roll(6) {
            0 => bytes[at] ^= 1 << dice.roll(8),
            1 => bytes[at] = 0xff,
            2 => bytes[at] = 0,
            3 => bytes.truncate(at.max(1)),
            4 => {
                bytes.insert(at, u8::try_from(dice.roll(256)).unwrap());
            }
            _ => {
                let end = (at + dice.roll(40)).min(bytes.len());
                bytes.drain(at..end);
                if bytes.is_empty() {
                    return bytes;
                }
            }
        }
    }
    bytes
}

/// A change of any kind is told by the checksum; and where that is made to fit, what is read is either
/// refused or still a guide that can be asked without end or panic.
#[test]
fn damage_is_told_and_never_the_end() {
    let mut dice = Dice(20_271_125);
    let (guide, pack) = (DEMO.to_bytes(), words().to_bytes(&DEMO));
    let others = DEMO.search_words_to_bytes(&other_words());
    let (mut refused, mut believed) = (0, 0);
    for round in 0..4_000 {
        let changed = damaged(&mut dice, &guide);
        if changed != guide {
            assert!(Guide::from_bytes(&changed).is_err(), "round {round}");
        }
        let _ = DEMO.search_words(&sealed_again(damaged(&mut dice, &others)));
        let _ = PackedWords::from_bytes(&sealed_again(damaged(&mut dice, &pack)), &DEMO);
        match Guide::from_bytes(&sealed_again(changed)) {
            Err(_) => refused += 1,
            Ok(read) => {
                believed += 1;
                for item in [0, read.items.len() / 2, read.items.len().saturating_sub(1)] {
                    let _ = read.next(item, &Known::default());
                    let _ =
                        read.assumed_answer(item, &Known::default().with("zone", Given::value("old-mill")));
                }
            }
        }
    }
    assert!(refused > 500 && believed > 100, "{refused} refused, {believed} believed");
}
