//! Every fix offered for a random flawed program, applied and checked again, makes its finding
//! vanish, adds no error, sends no hazard to a container, and changes nothing in a program that it
//! was not made for.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test that cannot go on should stop"
)]

mod common;

use std::collections::{BTreeMap, BTreeSet};

use guide_data::{Answered, Catalog, Checked, FIX_CODES, Finding, Program, Severity, check};
use proptest::prelude::*;
use serde_json::{Value, json};

use common::Dice;

fn one(dice: &mut Dice, from: &[&str]) -> Value {
    json!(*dice.pick(from))
}

fn catalog() -> Catalog {
    serde_json::from_value(json!({"items": [
        {"id": "can", "category": "metal", "facts": {"material": "steel", "form": "can"},
         "open": {"contents": {"among": {"empty": 9, "part-full": 1}}}},
        {"id": "cup", "category": "plastic-packaging", "facts": {"material": "plastic", "form": "cup"},
         "open": {"resin": {"among": {"1": 3, "5": 3, "none": 1}},
                  "middle-side": {"from": "1 in", "to": "5 in", "usual": "3 in"}},
         "parts": [{"id": "lid", "facts": {"form": "lid", "middle-side": "1.5 in"}}]},
        {"id": "toy", "category": "household-goods", "facts": {"material": "plastic", "form": "toy"},
         "open": {"battery": {"among": {"no": 3, "yes": 1}}}},
        {"id": "cell", "category": "batteries-electronics", "facts": {"hazard": "battery-lithium"}},
        {"id": "needle", "category": "medical", "facts": {"hazard": "sharps"}}
    ]}))
    .unwrap()
}

fn condition(dice: &mut Dice, depth: usize) -> Value {
    match dice.roll(if depth == 0 { 3 } else { 6 }) {
        0 => {
            let (fact, values) = *dice.pick(&[
                ("material", &["steel", "plastic", "plastik", "glass"][..]),
                ("form", &["can", "cup", "lid", "cupp", "toy"][..]),
                ("contents", &["empty", "part-full", "partfull"][..]),
                ("resin", &["1", "5", "none", "9"][..]),
                ("zone", &["town", "hills", "hils"][..]),
                ("dwelling", &["house", "large-building"][..]),
                ("hazard", &["sharps", "battery-lithium", "none"][..]),
                ("materiel", &["steel", "plastic"][..]),
            ]);
            let of: Vec<Value> = (0..dice.roll(3)).map(|_| one(dice, values)).collect();
            json!({"is": {"fact": fact, "of": of}})
        }
        1 => {
            let (fact, words) = *dice.pick(&[
                ("middle-side", "2 in"),
                ("middle-side", "4 in"),
                ("middle-side", "2"),
                ("middle-sid", "5 cm"),
                ("middle-side", "-3 in"),
                ("capacity", "1 gal"),
            ]);
            let bound = *dice.pick(&["at-least", "over", "at-most", "under"]);
            let mut measure = json!({"fact": fact, bound: words});
            if dice.chance(20) {
                measure["like"] = one(dice, &["credit-card", "credit-cart", "bucket"]);
            }
            if dice.chance(20) {
                measure["under"] = json!("1 in");
            }
            json!({"measure": measure})
        }
        2 => json!({"is": {"fact": "item", "of": [one(dice, &["can", "cup", "toy", "cel", "cell"])]}}),
        3 => json!({"not": condition(dice, depth - 1)}),
        4 => json!({"all": (0..dice.roll(3)).map(|_| condition(dice, depth - 1)).collect::<Vec<_>>()}),
        _ => json!({"any": (0..dice.roll(3)).map(|_| condition(dice, depth - 1)).collect::<Vec<_>>()}),
    }
}

fn rule(dice: &mut Dice, number: usize) -> Value {
    let number = if dice.chance(8) { number.saturating_sub(1) } else { number };
    let mut rule = json!({
        "id": format!("rule-{number}"),
        "tier": one(dice, &["safety", "plant", "program", "material", "default", "program", "material"]),
        "prepare": [one(dice, &["empty", "rinse", "flatten", "flaten", "cap-on", "cap-off", "crush", "own-step"])],
    });
    if dice.chance(90) {
        rule["when"] = condition(dice, 2);
    }
    match dice.roll(4) {
        0 => {
            rule["verdict"] = json!("yes");
            rule["stream"] = one(dice, &["recycling", "recycling", "glass", "recyclng"]);
        }
        1 => {
            rule["verdict"] = json!("no");
            rule["stream"] = one(dice, &["refuse", "refuse", "refus"]);
        }
        2 => {
            rule["verdict"] = json!("elsewhere");
            rule["channel"] = one(dice, &["yard", "hhw", "hw", "yrd"]);
        }
        _ => {}
    }
    if dice.chance(25) {
        rule["overrides"] = json!([format!("rule-{}", dice.roll(number + 2))]);
    }
    if dice.chance(15) {
        rule["from"] = json!(format!("2026-0{}-01", 1 + dice.roll(6)));
    }
    if dice.chance(15) {
        rule["until"] = json!(format!("2026-0{}-01", 1 + dice.roll(6)));
    }
    if dice.chance(10) {
        rule["temporary"] = json!(true);
    }
    if dice.chance(8) {
        rule["season"] = json!({"from": one(dice, &["11-01", "13-01"]), "until": one(dice, &["02-28", "2-30", "2026-02-28"])});
    }
    if dice.chance(8) {
        rule["banned-from"] = json!([one(dice, &["refuse", "recycling", "refus"])]);
    }
    if dice.chance(10) {
        rule["reason"] = one(dice, &["sells", "sels", "law"]);
    }
    if dice.chance(8) {
        rule["acknowledgement"] = json!({"by": "Fire marshal", "because": "Sealed box on every cart"});
    }
    rule
}

/// A small program with slips of all kinds in it.
fn flawed(dice: &mut Dice) -> Program {
    let mut program = json!({
        "id": "flawed", "name": {"en": "Flawed"}, "source-language": "en", "languages": ["en"],
        "guide-url": "https://example.org/",
        "streams": [
            {"id": "recycling", "kind": "recycling", "name": {"en": "Recycling"}, "containers": [
                {"id": "cart", "kind": "cart", "name": {"en": "Blue cart"}, "colour": "#205080"}]},
            {"id": "glass", "kind": "glass", "name": {"en": "Glass"}},
            {"id": "refuse", "kind": "refuse", "name": {"en": "Refuse"}}],
        "zones": [{"id": "town", "name": {"en": "Town"}, "households": 10},
                  {"id": "hills", "name": {"en": "Hills"}, "households": 3}],
        "channels": [
            {"id": "yard", "kind": "drop-off", "name": {"en": "Yard"}},
            {"id": "hhw", "kind": "hazardous-waste", "name": {"en": "Hazardous waste"},
             "safe-for": ["battery-lithium", "sharps"]}],
        "sites": [{"id": "depot", "name": {"en": "Depot"}, "channels": ["hhw", "yard"],
                   "hours": "Mo-Fr 08:00-16:00", "position": {"lat": 41.6, "lon": -52.1}}],
        "hazards": {"battery-lithium": {"channel": "hhw"}, "sharps": {"channel": "hhw"}},
        "steps": {"own-step": {"en": "Own step"}},
        "silence": one(dice, &["undecided", "ask", "closed"]),
    });
    let rules: Vec<Value> = (0..2 + dice.roll(7)).map(|n| rule(dice, n)).collect();
    program["rules"] = json!(rules);
    if dice.chance(40) {
        program["items"] = json!([
            {"id": "shell", "category": one(dice, &["food-garden", "food-gardn"]),
             "facts": {"material": one(dice, &["stone", "ston"]), "shortest-side": one(dice, &["2 in", "2"])},
             "open": {dice.pick(&["wet", "wett"]).to_string(): {"among": {"no": 1, "yes": 1}}}},
        ]);
        if dice.chance(60) {
            program["item-names"] = json!({"shell": {"en": "Shell"}});
        }
    }
    if dice.chance(10) {
        // The same thing entered twice.
        let kind = *dice.pick(&["rules", "streams", "channels", "sites", "zones"]);
        let twin = program[kind][0].clone();
        program[kind].as_array_mut().unwrap().push(twin);
    }
    for _ in 0..dice.roll(4) {
        let (pointer, value) = match dice.roll(24) {
            0 => ("/hazards/sharps/channel", one(dice, &["yard", "hw", "gone"])),
            1 => ("/hazards", json!({"sharps": {"channel": "hhw"}, "battery-lithum": {"channel": "hhw"}})),
            2 => ("/zones/1/streams", json!(["refuse"])),
            3 => ("/zones/1/streams", json!(["refus", "recycling", "glass"])),
            4 => ("/zones/1/id", json!("town")),
            5 => ("/zones/0/dwelling", one(dice, &["house", "hose"])),
            6 => ("/streams/1/id", one(dice, &["recycling", ""])),
            7 => ("/streams/0/containers/0/colour", one(dice, &["205080", "#25a", "blue"])),
            8 => ("/streams/0/containers/0/zones", json!(["twn", "hills"])),
            9 => ("/streams/0/kind", one(dice, &["recyling", "x"])),
            10 => ("/sites/0/channels", json!(["yrd", "hhw"])),
            11 => ("/sites/0/hours", one(dice, &["Mo–Fr 8:00–16:00", "always"])),
            12 => ("/sites/0/position", json!({"lat": 141.0, "lon": 10.0})),
            13 => ("/unknown", json!({"resin": one(dice, &["unredable", "x"]), "battery": "noo"})),
            14 => ("/channels/1/safe-for", json!(["battery-lithium", "sharp"])),
            15 => ("/source-language", one(dice, &["es", "", "en"])),
            16 => ("/guide-url", one(dice, &["example.org", ""])),
            17 => ("/name/en", one(dice, &["A <i>town</i>", "A\u{202E}b", "A\u{1}b"])),
            19 => ("/steps", json!({"polish": {"en": "Polish it"}})),
            20 => (
                "/counts-as",
                json!([{"fact": one(dice, &["form", "frm", "battery"]), "these": [one(dice, &["can", "cn"])],
                        "count-as": one(dice, &["tub", "tubb", "can"])},
                       {"fact": "form", "these": [one(dice, &["tub", "cup"])], "count-as": "jar"}]),
            ),
            21 => (
                "/streams/0/containers/0/rules",
                json!([{"kind": one(dice, &["weight", "wieght"]), "limit": one(dice, &["10 lb", "10"])},
                       {"kind": "weight"}]),
            ),
            22 => ("/sites/0/refuses", json!([one(dice, &["cell", "needle"])])),
            23 => ("/streams/0/containers/0/dwellings", json!(["hose", "house"])),
            18 => ("/channels/0/kind", one(dice, &["dropoff", "event"])),
            _ => ("/sites/0/accepts", json!([one(dice, &["can", "cann", "cell"])])),
        };
        let (parent, key) = pointer.rsplit_once('/').unwrap();
        match program.pointer_mut(parent).unwrap() {
            Value::Array(list) => list[key.parse::<usize>().unwrap()] = value,
            other => other[key] = value,
        }
    }
    serde_json::from_value(program).unwrap()
}

type Key<'f> = (&'f str, &'f guide_data::Place, &'f BTreeMap<String, String>);

fn key(finding: &Finding) -> Key<'_> {
    (&finding.code, &finding.place, &finding.args)
}

fn errors(checked: &Checked) -> BTreeMap<&str, usize> {
    let mut counts = BTreeMap::new();
    for finding in checked.findings.iter().filter(|f| f.severity == Severity::Error) {
        *counts.entry(finding.code.as_str()).or_default() += 1;
    }
    counts
}

/// The classes that some case sends to a container at home, and who answers for it.
fn hazards_at_home(checked: &Checked) -> BTreeSet<&str> {
    let home = |o: &&guide_data::Outcome| {
        o.hazard.is_some() && matches!(o.verdict, Answered::Yes | Answered::No | Answered::Unlisted)
    };
    checked.guide.outcomes.iter().filter(home).filter_map(|o| o.hazard.as_deref()).collect()
}

/// The codes of the fixes that one program's findings offer.
fn every_fix_mends(seed: u64) -> BTreeSet<&'static str> {
    let mut dice = Dice(seed | 1);
    let program = flawed(&mut dice);
    let catalog = catalog();
    let checked = check(&program, &catalog);
    let (before, home) = (errors(&checked), hazards_at_home(&checked));
    let mut offered = BTreeSet::new();
    for finding in &checked.findings {
        for (at, fix) in finding.fixes.iter().enumerate() {
            let told = || format!("seed {seed}: {fix:?} for {:?}", key(finding));
            assert!(!finding.fixes[..at].contains(fix), "{} twice", told());
            let mut mended = program.clone();
            mended.apply(fix).unwrap_or_else(|problem| panic!("{}: {}", told(), problem.code()));
            let after = check(&mended, &catalog);
            assert!(after.findings.iter().all(|f| key(f) != key(finding)), "{} leaves it", told());
            for (code, count) in errors(&after) {
                let was = before.get(code).copied().unwrap_or(0);
                assert!(count <= was, "{} adds {code}: {:#?}", told(), after.findings);
                if code == finding.code && finding.severity == Severity::Error {
                    assert!(count < was, "{} turns it into another", told());
                }
            }
            assert!(hazards_at_home(&after).is_subset(&home), "{} sends a hazard home", told());
            // Applied once, it has done what it does.
            assert!(
                mended.clone().apply(fix).is_err()
                    || fix.code() == "swap-dates"
                    || fix.code() == "swap-position"
                    || fix.code() == "except-zone",
                "{}",
                told()
            );
            offered.insert(FIX_CODES.iter().find(|(code, _)| *code == fix.code()).unwrap().0);
        }
    }
    offered
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 40, failure_persistence: None, ..ProptestConfig::default() })]
    #[test]
    fn every_fix_of_a_random_program_mends(seed in any::<u64>()) {
        every_fix_mends(seed);
    }
}

/// A rule that never applies can still be why another is strong: going before an exception makes it one. Taking the rule
/// away would weaken the other, and is not offered where two rules would then disagree.
#[test]
fn a_rule_that_makes_another_strong_is_not_taken_away() {
    every_fix_mends(14_099_699_028_228_639_756);
}

/// The same for programs that are always the same, and enough of them that every kind of fix is met.
#[test]
fn every_kind_of_fix_is_offered_somewhere() {
    let offered: BTreeSet<&str> =
        (1..200_u64).flat_map(|n| every_fix_mends(n.wrapping_mul(0x9E37_79B9_7F4A_7C15))).collect();
    let never: Vec<&str> =
        FIX_CODES.iter().map(|(code, _)| *code).filter(|code| !offered.contains(code)).collect();
    // A program that has decided is never offered to be undecided.
    assert_eq!(never, ["silence-undecided"], "{offered:?}");
}
