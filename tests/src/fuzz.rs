//! Whatever is thrown at the ways in must be answered with a value or a problem, never a panic, and
//! within bounded work. Each function takes any bytes; a fuzzer calls it (`cargo xtask fuzz`), and so
//! does a test that mutates good files.

#![expect(clippy::indexing_slicing, reason = "a fuzz target fails by panicking")]

mod edits;
mod seeds;

use chrono::NaiveDate;
use guide_data::{
    Answered, Catalog, Condition, Dimension, Given, Guide, Known, LanguagePack, Measure, PackedWords,
    PrintedSheet, Printing, Program, Rule, Schedule, SearchIndex, Step, SummaryWanted, check, compare_many,
    comparison, find, fold, nearest, notice, place_named, summarise, untrue, untrue_since,
};

use crate::demo::demo_guide;

pub use edits::small_catalog;
pub use seeds::{dictionary, seeds};

/// A way in: its name on the command line, and the function that takes any bytes.
pub type Entry = (&'static str, fn(&[u8]));

/// Every way in.
pub const ENTRIES: &[Entry] = &[
    ("program", program_file),
    ("rule", rule_text),
    ("search", search_query),
    ("catalog", catalog),
    ("editions", editions),
    ("hours", hours),
    ("place", place),
    ("guide", packed_guide),
    ("words", packed_words),
    ("messages", packed_messages),
];

/// A program file: loading, checking, writing and loading again.
pub fn program_file(bytes: &[u8]) {
    let text = String::from_utf8_lossy(bytes);
    match Program::from_json(&text) {
        Ok(program) => {
            let checked = check(&program, &Catalog::default());
            converse(&checked.guide);
            let again = Program::from_json(&program.to_json());
            assert_eq!(again.as_ref(), Ok(&program), "a program is written as it was read");
        }
        Err(problem) => {
            assert!(!problem.code().is_empty());
            drop(problem.args());
        }
    }
}

/// The text of a rule: as JSON, as a condition, and each of its words as a measure.
pub fn rule_text(bytes: &[u8]) {
    let text = String::from_utf8_lossy(bytes);
    for dimension in [Dimension::Length, Dimension::Volume, Dimension::Mass, Dimension::Count] {
        if let Ok(measure) = Measure::parse(&text, dimension) {
            assert!(measure.value >= 0, "{text} is less than nothing");
        }
    }
    let when = serde_json::from_str::<Condition>(&text).ok();
    let rule = serde_json::from_str::<Rule>(&text).unwrap_or_else(|_| Rule {
        id: text.chars().take(40).collect(),
        when,
        ..Rule::default()
    });
    let program = Program { rules: vec![rule], ..Program::blank("en") };
    let item = r#"{"items":[{"id":"jar","category":"glass","facts":{"material":"glass","middle-side":"3 in"},
        "open":{"contents":{"among":{"empty":1,"part-full":1}},"capacity":{"from":"1 fl oz","to":"1 gal"}}}]}"#;
    let catalog = Catalog::from_json(item).unwrap_or_default();
    converse(&check(&program, &catalog).guide);
}

/// What somebody types, against names in several scripts.
pub fn search_query(bytes: &[u8]) {
    let names = ["Milk jug", "Old newspaper", "Bombilla", "زجاجة ماء", "塑料水瓶", "Стекло", "뽁뽁이", ""];
    let index = SearchIndex::build(names.iter().enumerate().map(|(at, name)| (at, fold(name), true, 10)));
    let hits = index.find(&fold(&String::from_utf8_lossy(bytes)), 5);
    assert!(hits.len() <= 5 && hits.iter().all(|hit| hit.item < names.len()));
    assert!(hits.windows(2).all(|two| two[0].score >= two[1].score), "the best come first");
}

/// A catalog file, checked with a program that speaks of what is in it.
pub fn catalog(bytes: &[u8]) {
    let text = String::from_utf8_lossy(bytes);
    if let Ok(catalog) = Catalog::from_json(&text) {
        let mut program = Program::blank("en");
        program.rules.push(Rule {
            id: "jars".to_owned(),
            when: Some(Condition::is("form", &["jar"])),
            ..Rule::default()
        });
        converse(&check(&program, &catalog).guide);
    }
}

/// Two editions of a program, each an edit of the demo that these bytes choose: everything that is
/// worked out from one or from both.
pub fn editions(bytes: &[u8]) {
    let (before, after) = edits::editions(bytes);
    let (Some(before), Some(after)) = (before, after) else { return };
    let catalog = small_catalog();
    // Trying edits out takes many times as long as all the rest.
    let checked = if bytes.len().is_multiple_of(16) { check(&after, catalog) } else { find(&after, catalog) };
    converse(&checked.guide);
    // What may be mended is mended without a word, or refused with a reason.
    for fix in checked.findings.iter().flat_map(|f| &f.fixes).take(3) {
        let mut mended = after.clone();
        if let Err(problem) = mended.apply(fix) {
            assert!(!problem.code().is_empty());
        }
    }
    for outcome in &checked.guide.outcomes {
        let home = matches!(outcome.verdict, Answered::Yes | Answered::No | Answered::Unlisted);
        let sent = outcome.hazard.is_some() && home;
        assert!(!sent || outcome.acknowledged, "nobody accepted that a hazard stays at home: {outcome:?}");
    }
    let bytes = checked.guide.to_bytes();
    let read = Guide::from_bytes(&bytes).map(|read| read.to_bytes());
    assert!(read.is_ok_and(|again| again == bytes), "a guide is read as it was written");
    for at in 0..checked.guide.items.len().min(5) {
        drop(checked.guide.advice(at, &Known::default()));
    }
    for channel in &checked.guide.channels {
        drop((checked.guide.items_to(&channel.id), nearest(&checked.guide, &channel.id, None, None)));
    }
    // Comparing, in both directions and with itself.
    assert!(comparison(&after, &after, catalog, None).changes.is_empty(), "a program differs from itself");
    let found = comparison(&before, &after, catalog, None);
    drop(notice(&found));
    let back = comparison(&after, &before, catalog, None);
    assert_eq!(found.changes.len(), back.changes.len(), "what changes one way changes the other way");
    for change in &found.changes {
        assert!(change.share.is_finite() && change.share <= 1.000_001, "{change:?}");
    }
    drop(compare_many(&[&before, &after], catalog));
    // A sheet of the first edition, still out there under the second.
    let old = Guide::compile(&before, catalog);
    let day = before.edition.from.unwrap_or_default();
    let wanted = SummaryWanted {
        stream: before.streams.first().map(|s| s.id.clone()),
        zone: before.zones.first().map(|z| z.id.clone()),
        day: Some(day),
        yes: 4,
        no: 4,
        elsewhere: 4,
    };
    let summary = summarise(&old, &wanted);
    for line in summary.yes.iter().chain(&summary.no).chain(&summary.elsewhere).chain(&summary.hazards) {
        assert!((0.0..=1.000_001).contains(&line.fidelity), "{line:?}");
    }
    let printing = Printing { guide: &old, wanted: &wanted, summary: &summary, hazard_places: true };
    let sheet = PrintedSheet { id: "fuzz".to_owned(), printed: Some(day), ..PrintedSheet::default() };
    let sheet = sheet.with_lines(&before, &printing, &|line| line.item.clone());
    let mut noted = after.clone();
    noted.note_printed(sheet);
    for line in untrue(&noted, catalog).iter().chain(&untrue_since(&before, &noted, catalog)) {
        assert!(line.share.is_finite() && line.share <= 1.000_001, "{line:?}");
    }
}

/// A site's opening hours.
pub fn hours(bytes: &[u8]) {
    let text = String::from_utf8_lossy(bytes);
    let from = NaiveDate::default();
    let readable = Schedule::readable(&text).is_ok();
    if let Ok(table) = Schedule::read(&text, from) {
        assert!(readable, "{text} is read and cannot be read");
        for day in from.iter_days().step_by(97).take(20) {
            drop(table.times(day));
            for minute in [0, 719, 1_439, u16::MAX] {
                drop(table.at(day, minute));
            }
        }
    }
}

/// A place that somebody types, among the demo's.
pub fn place(bytes: &[u8]) {
    let typed = String::from_utf8_lossy(bytes);
    let guide = demo_guide();
    if let Some((name, at)) = place_named(guide, &typed, |_, id| id.to_owned(), fold) {
        assert!(!name.is_empty() && at.lat.is_finite() && at.lon.is_finite());
        for channel in &guide.channels {
            let near = nearest(guide, &channel.id, None, Some(at));
            assert!(near.windows(2).all(|two| two[0].metres <= two[1].metres), "the nearest comes first");
        }
    }
}

/// Writes the checksum that a pack's bytes ought to have, so that what is behind it gets read too.
fn sealed(bytes: &[u8]) -> Vec<u8> {
    let mut bytes = bytes.to_vec();
    if let Some((head, body)) = bytes.split_at_mut_checked(14) {
        // FNV-1a with 64 bits, as the format has it.
        let sum = body
            .iter()
            .fold(0xcbf2_9ce4_8422_2325_u64, |sum, &b| (sum ^ u64::from(b)).wrapping_mul(0x0100_0000_01b3));
        head[6..].copy_from_slice(&sum.to_le_bytes());
    }
    bytes
}

/// A guide as a phone reads it.
pub fn packed_guide(bytes: &[u8]) {
    drop(Guide::from_bytes(bytes));
    let Ok(guide) = Guide::from_bytes(&sealed(bytes)) else { return };
    converse(&guide);
    let day = NaiveDate::default();
    for at in 0..guide.items.len().min(5) {
        drop((guide.advice(at, &Known::default()), guide.questions(at, &Known::default())));
        drop(guide.assumed_answer(at, &Known::default().with("day", Given::Day(day))));
        assert!(guide.verdict(at, &[]).is_none_or(|o| guide.outcomes.contains(o)));
    }
    for channel in &guide.channels {
        drop((guide.items_to(&channel.id), nearest(&guide, &channel.id, None, None)));
    }
    for stream in &guide.streams {
        drop(guide.containers(&stream.id, None, None));
    }
    for site in &guide.sites {
        drop((site.hours.at(day, 600), site.hours.times(day)));
    }
    drop(place_named(&guide, "a", |_, id| id.to_owned(), fold));
    drop(summarise(&guide, &SummaryWanted { yes: 3, no: 3, elsewhere: 3, ..SummaryWanted::default() }));
    let again = guide.to_bytes();
    assert!(
        Guide::from_bytes(&again).is_ok_and(|g| g.to_bytes() == again),
        "a guide is written as it was read"
    );
}

/// The words of a language, and those to search by, as a phone reads them with the demo's guide.
pub fn packed_words(bytes: &[u8]) {
    let bytes = sealed(bytes);
    let guide = demo_guide();
    if let Ok(words) = PackedWords::from_bytes(&bytes, guide) {
        let again = words.to_bytes(guide);
        assert_eq!(PackedWords::from_bytes(&again, guide).as_ref(), Ok(&words), "words are written as read");
        let LanguagePack { texts, names, .. } = words.pack;
        assert!(names.len() <= guide.items.len() && texts.len() <= bytes.len());
    }
    drop(guide.search_words(&bytes));
}

/// Messages as a phone reads them, each filled in.
pub fn packed_messages(bytes: &[u8]) {
    let text = String::from_utf8_lossy(bytes);
    let english = locales::supported()[0].lang();
    if let Some(messages) = locales::Messages::from_packed(english, &text) {
        let args = locales::Args::new().with("count", 2).with("name", "a");
        for key in text.split(['\u{7}', '\u{8}']).take(50) {
            drop(messages.find(key, &args));
        }
    }
}

/// Every item's conversation in which nobody can tell anything comes to an answer.
fn converse(guide: &Guide) {
    for at in 0..guide.items.len().min(20) {
        let mut known = Known::default();
        let mut asked = 0;
        while let Some(Step::Ask(question)) = guide.next(at, &known) {
            asked += 1;
            assert!(asked < 100, "{} is asked again and again", question.fact);
            known.give(&question.fact, Given::CannotTell);
        }
    }
}
