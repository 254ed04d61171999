//! Very large programs are checked in bounded work, and what is too much is said, not suffered.

#![expect(clippy::unwrap_used, clippy::indexing_slicing, reason = "a test that cannot go on should stop")]

mod common;

use guide_data::{
    Bounds, Catalog, Condition, FactKind, Finding, Item, Open, Program, Rule, Severity, Text, Tier, Verdict,
    check, demo_json, fact,
};

use common::Dice;

fn demo() -> Program {
    Program::from_json(demo_json()).unwrap()
}

fn condition(dice: &mut Dice, items: &[Item], depth: usize) -> Condition {
    let names = ["material", "form", "resin", "colour", "contents", "soiling", "bagged", "wet", "dwelling"];
    match dice.roll(if depth == 0 { 3 } else { 6 }) {
        0 => {
            let item = &items[dice.roll(items.len())].id;
            Condition::is("item", &[item])
        }
        1 => {
            let sizes = ["1 in", "2 in", "5 cm", "3 in", "10 cm", "1 ft"];
            Condition::Measure(Bounds {
                fact: "middle-side".into(),
                under: Some(sizes[dice.roll(sizes.len())].into()),
                ..Bounds::default()
            })
        }
        2 => {
            let name = names[dice.roll(names.len())];
            let FactKind::Choice(values) = fact(name).unwrap().kind else { unreachable!() };
            Condition::is(name, &[values[dice.roll(values.len())]])
        }
        3 => Condition::Not(Box::new(condition(dice, items, depth - 1))),
        4 => Condition::Any((0..2).map(|_| condition(dice, items, depth - 1)).collect()),
        _ => Condition::All((0..2).map(|_| condition(dice, items, depth - 1)).collect()),
    }
}

/// Rules that are all different, of every tier, some of which go before others or name what does
/// not exist.
fn rules(program: &mut Program, catalog: &Catalog, count: usize) {
    let mut dice = Dice(0x5EED);
    let streams: Vec<String> = program.streams.iter().map(|s| s.id.clone()).collect();
    for number in 0..count {
        let id = format!("made-{number}");
        let yes = dice.roll(2) == 0;
        let overrides = match dice.roll(10) {
            0 if number > 0 => vec![format!("made-{}", dice.roll(number))],
            1 => vec![format!("maid-{number}")],
            _ => Vec::new(),
        };
        program.rules.push(Rule {
            id,
            tier: Tier::ALL[1 + dice.roll(4)],
            when: Some(condition(&mut dice, &catalog.items, 2)),
            verdict: Some(if yes { Verdict::Yes } else { Verdict::No }),
            stream: Some(if yes { streams[dice.roll(streams.len())].clone() } else { "refuse".into() }),
            prepare: vec![["rinse", "flatten", "cap-on", "flaten"][dice.roll(4)].into()],
            overrides,
            ..Rule::default()
        });
    }
}

/// Items of the program's own, each with something open.
fn items(program: &mut Program, count: usize) {
    for number in 0..count {
        let mut item =
            Item { id: format!("thing-{number}"), category: "metal".into(), common: 20, ..Item::default() };
        item.facts.insert("material".into(), ["steel", "glass", "plastic"][number % 3].into());
        let among = ["empty", "part-full"].map(|v| (v.to_owned(), 1)).into();
        item.open.insert("contents".into(), Open { among, ..Open::default() });
        program.item_names.insert(item.id.clone(), Text::of("en", &format!("Thing {number}")));
        program.items.push(item);
    }
}

fn codes(findings: &[Finding]) -> std::collections::BTreeSet<&str> {
    findings.iter().filter(|f| f.severity == Severity::Error).map(|f| f.code.as_str()).collect()
}

#[test]
fn ten_thousand_different_rules_are_bounded_work() {
    let catalog = Catalog::standard().unwrap();
    let mut program = demo();
    rules(&mut program, &catalog, 10_000);
    let checked = check(&program, &catalog);
    assert!(!checked.publishable());
    let codes = codes(&checked.findings);
    // It says what is wrong, and of which items there is too much to work out.
    assert!(codes.contains("broken-reference"), "{codes:?}");
    assert!(codes.contains("conflicting-rules") || codes.contains("too-complex"), "{codes:?}");
}

#[test]
fn five_thousand_items_are_bounded_work() {
    let catalog = Catalog::standard().unwrap();
    let mut program = demo();
    let before = check(&program, &catalog).guide.items.len();
    items(&mut program, 5_000);
    let checked = check(&program, &catalog);
    assert_eq!(checked.guide.items.len(), before + 5_000);
    assert!(codes(&checked.findings).is_empty(), "{:?}", codes(&checked.findings));
}

/// A rule for each of thousands of thresholds, of several measures and of days: each makes wide nodes.
#[test]
fn thousands_of_thresholds_are_bounded_work() {
    let catalog = Catalog::standard().unwrap();
    let mut program = demo();
    let over = |fact: &str, value: String| {
        Condition::Measure(Bounds { fact: fact.into(), over: Some(value), ..Bounds::default() })
    };
    for number in 0..4_000 {
        let sides =
            ["longest-side", "middle-side", "shortest-side"].map(|side| over(side, format!("{number} mm")));
        program.rules.push(Rule {
            id: format!("wide-{number}"),
            tier: Tier::ALL[1 + number % 4],
            when: Some(Condition::Not(Box::new(Condition::Any(sides.into())))),
            verdict: Some(Verdict::No),
            stream: Some("refuse".into()),
            from: demo().edition.from.and_then(|day| day.checked_add_days(chrono::Days::new(number as u64))),
            ..Rule::default()
        });
    }
    let checked = check(&program, &catalog);
    let said = codes(&checked.findings);
    assert!(said.contains("too-many-thresholds"), "{said:?}");
    assert!(!said.contains("too-complex"), "it is said once, of the rules: {said:?}");
}
