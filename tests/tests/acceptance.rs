//! Acceptance facts that a program can state, put to the demo program: each row is
//! an item, what is known of it, and what must come of it, with its source. P: confirmed from a
//! published copy; M: from memory of the published source; C: common practice, no source.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

use std::collections::BTreeMap;

use guide_data::{
    Answered, Catalog, FACTS, Given, Guide, HAZARDS, Item, Known, Open, Outcome, Program, Step, Tier, check,
};
use lidleaf_tests::{Case, demo, demo_guide};

/// What must come of a case.
enum Expected {
    /// Into this stream's container, with these steps among others.
    Yes(&'static str, &'static [&'static str]),
    /// Refused.
    No,
    /// To this channel, with these steps among others.
    Elsewhere(&'static str, &'static [&'static str]),
}

use Expected::{Elsewhere, No, Yes};

type Row = (&'static str, &'static [(&'static str, &'static str)], Expected);

fn put(item: &str, given: &[(&str, &str)]) -> Case {
    given.iter().fold(Case::of(item), |case, (fact, value)| case.with(fact, value))
}

#[track_caller]
fn check_outcome(claim: &str, case: &str, outcome: &Outcome, expected: &Expected) {
    let steps = |wanted: &[&str]| {
        for step in wanted {
            let given = outcome.steps.iter().any(|s| s == step);
            assert!(given, "{claim}: {case}: the step {step} is missing: {outcome:?}");
        }
    };
    match expected {
        Yes(stream, wanted) => {
            assert_eq!(outcome.verdict, Answered::Yes, "{claim}: {case}: {outcome:?}");
            assert_eq!(outcome.stream.as_deref(), Some(*stream), "{claim}: {case}: {outcome:?}");
            steps(wanted);
        }
        No => assert_eq!(outcome.verdict, Answered::No, "{claim}: {case}: {outcome:?}"),
        Elsewhere(channel, wanted) => {
            assert_eq!(outcome.verdict, Answered::Elsewhere, "{claim}: {case}: {outcome:?}");
            assert_eq!(outcome.channel.as_deref(), Some(*channel), "{claim}: {case}: {outcome:?}");
            assert_eq!(outcome.stream, None, "{claim}: {case}: {outcome:?}");
            steps(wanted);
        }
    }
}

/// Checks the rows of one fact.
fn claim(claim: &str, rows: &[Row]) {
    for (item, given, expected) in rows {
        let outcome = put(item, given).outcome(demo_guide());
        check_outcome(claim, &format!("{item} {given:?}"), &outcome, expected);
    }
}

#[test]
fn small_plastic_articles() {
    // Source: title and scope of the plastics recyclers' test Sort-B-02 (P); same rule C.
    claim(
        "\"at least two dimensions under 2 inches\" is the size that sorting loses",
        &[
            ("plastic-cap", &[], No),
            ("travel-bottle", &[("middle-side", "1.9 in")], No),
            ("pill-bottle", &[("middle-side", "1.5 in")], No),
            ("travel-bottle", &[("middle-side", "2.2 in")], Yes("recycling", &[])),
        ],
    );
}

#[test]
fn smallest_accepted_size() {
    // Source: C; 1 in = 25.4 mm exactly, NIST SP 811 (P).
    claim(
        "Smallest accepted size at many plants: 2 in x 2 in (50.8 mm)",
        &[
            ("travel-bottle", &[("middle-side", "2 in")], Yes("recycling", &[])),
            ("travel-bottle", &[("middle-side", "50.8 mm")], Yes("recycling", &[])),
            ("travel-bottle", &[("middle-side", "50.7 mm")], No),
            ("travel-bottle", &[("middle-side", "5 cm")], No),
        ],
    );
}

#[test]
fn large_rigid_articles() {
    // Source: plastics recyclers' design guide (M). 2 US gal = 7.5708 L, computed.
    claim(
        "Large rigid articles: over 2 US gallons is handled apart",
        &[
            ("bucket", &[("contents", "empty"), ("capacity", "2 gal")], Yes("recycling", &[])),
            ("bucket", &[("contents", "empty"), ("capacity", "7.57 L")], Yes("recycling", &[])),
            ("bucket", &[("contents", "empty"), ("capacity", "7.58 L")], Elsewhere("drop-off-center", &[])),
            ("bucket", &[("contents", "empty"), ("capacity", "5 gal")], Elsewhere("drop-off-center", &[])),
            ("water-cooler-bottle", &[], Elsewhere("drop-off-center", &[])),
        ],
    );
}

#[test]
fn clamshell_or_tub_without_a_number() {
    // Source: C.
    claim(
        "Clamshell/tub without a number, where a number is required: no",
        &[
            ("clamshell", &[("resin", "none")], No),
            ("yogurt-tub", &[("resin", "none")], No),
            ("takeout-tub", &[("resin", "none"), ("colour", "clear")], No),
            ("clamshell", &[("resin", "1")], Yes("recycling", &["empty"])),
            ("yogurt-tub", &[("resin", "5")], Yes("recycling", &["empty"])),
            ("yogurt-tub", &[("resin", "6")], No),
        ],
    );
}

#[test]
fn labels() {
    // Source: C.
    claim(
        "Paper label on a steel can; film label on a clear bottle: accepted with label on",
        &[
            ("food-can", &[], Yes("recycling", &["label-stays"])),
            ("water-bottle", &[], Yes("recycling", &["label-stays"])),
        ],
    );
}

#[test]
fn closures() {
    // Source: C.
    claim(
        "Closure: leave on the bottle; a loose small plastic cap is lost, a loose steel lid is caught by the magnet",
        &[
            ("water-bottle", &[], Yes("recycling", &["cap-on"])),
            ("milk-jug", &[], Yes("recycling", &["cap-on"])),
            ("plastic-cap", &[], No),
            ("steel-lid", &[], Yes("recycling", &[])),
            ("crown-cap", &[], Yes("recycling", &["lid-inside-can"])),
        ],
    );
}

#[test]
fn full_body_sleeve() {
    // Source: C.
    claim(
        "Full-body shrink sleeve that hides the bottle: remove it where it is made to peel",
        &[("sleeved-bottle", &[], Yes("recycling", &["sleeve-off"]))],
    );
    let answer = Case::of("sleeved-bottle").answer(demo_guide());
    let sleeve = answer.parts.iter().find(|part| part.part.as_deref() == Some("sleeve")).expect("the sleeve");
    assert_eq!(sleeve.outcome.verdict, Answered::No, "the sleeve itself is film: {sleeve:?}");
}

#[test]
fn residue() {
    // Source: C.
    claim(
        "Residue: empty is enough: no liquid, no lumps; not washed clean. Half full is a no",
        &[
            ("peanut-butter-jar", &[("contents", "empty")], Yes("recycling", &["empty"])),
            ("peanut-butter-jar", &[("contents", "traces")], Yes("recycling", &["empty"])),
            ("peanut-butter-jar", &[("contents", "part-full")], No),
            ("shampoo-bottle", &[("contents", "traces")], Yes("recycling", &["empty"])),
            ("shampoo-bottle", &[("contents", "part-full")], No),
        ],
    );
    // "Not washed clean": no step asks for it.
    for item in ["peanut-butter-jar", "shampoo-bottle", "food-can", "yogurt-tub"] {
        let steps = put(item, &[]).outcome(demo_guide()).steps;
        assert!(!steps.iter().any(|s| s.contains("wash") || s.contains("rinse")), "{item}: {steps:?}");
    }
}

#[test]
fn cartons() {
    // Source: C.
    claim(
        "Gable-top and aseptic cartons with a film layer: accepted where a mill takes them",
        &[
            ("milk-carton", &[], Yes("recycling", &["empty"])),
            ("aseptic-carton", &[], Yes("recycling", &["empty"])),
            ("juice-box", &[], Yes("recycling", &[])),
        ],
    );
}

#[test]
fn metal_ends_and_fittings() {
    // Source: C.
    claim(
        "Rigid paper canister with a metal end; paper box with a small metal fitting: accepted where paper is",
        &[("paper-canister", &[], Yes("recycling", &[])), ("spiral-notebook", &[], Yes("recycling", &[]))],
    );
}

#[test]
fn ink_colour() {
    // Source: C. Ink never matters, so it is never asked.
    claim("Ink colour on paper: no reason to refuse", &[("mixed-paper", &[], Yes("recycling", &[]))]);
    let guide = demo_guide();
    let at = guide.item_index("mixed-paper").expect("mixed paper");
    assert_eq!(guide.questions(at, &Known::default()).expect("an item").worst, 0);
}

#[test]
fn film_and_bags() {
    // Source: C.
    claim(
        "Film and bags: not in the cart (wrap round screens); store drop-off where one exists",
        &[
            ("grocery-bag", &[("soiling", "clean")], Elsewhere("film-return", &["empty", "dry"])),
            ("bubble-wrap", &[], Elsewhere("film-return", &[])),
            ("bread-bag", &[("soiling", "food")], No),
            ("bag-of-recyclables", &[], No),
        ],
    );
    // Under no circumstances is film a yes for recycling.
    let guide = demo_guide();
    let catalog = Catalog::standard().expect("the catalog");
    let is = |item: &Item, fact: &str, values: &[&str]| {
        item.facts.get(fact).is_some_and(|v| values.contains(&v.as_str()))
    };
    let films =
        catalog.items.iter().filter(|i| is(i, "form", &["bag", "film"]) && is(i, "material", &["plastic"]));
    let mut seen = 0;
    for item in films {
        every_outcome(guide, &item.id, &mut |known, outcome| {
            assert_ne!(outcome.stream.as_deref(), Some("recycling"), "{} {known:?}: {outcome:?}", item.id);
        });
        seen += 1;
    }
    assert!(seen > 8, "only {seen} films in the catalog");
}

#[test]
fn bulky_rigid_plastics() {
    // Source: C.
    claim(
        "Bulky rigid plastics: recyclable at a drop-off, not in the cart",
        &[
            ("laundry-basket", &[], Elsewhere("drop-off-center", &[])),
            ("storage-tote", &[], Elsewhere("drop-off-center", &[])),
            ("plastic-chair", &[], Elsewhere("drop-off-center", &[])),
            ("ride-on-toy", &[], Elsewhere("drop-off-center", &[])),
        ],
    );
}

/// The demo with one item more.
fn with_item(item: Item) -> Guide {
    let mut program: Program = demo().clone();
    program.items.push(item);
    let catalog = Catalog::standard().expect("the catalog");
    check(&program, &catalog).guide
}

/// ASTM D7611 (M): 1 PETE/PET, 2 HDPE, 3 V/PVC, 4 LDPE, 5 PP, 6 PS, 7 OTHER. D7611-13 §4.2 (P): the code
/// does not say that an article is recyclable; the demo's program takes 1, 2 and 5 in this shape.
#[test]
fn every_resin_code_can_be_asked_and_decides_by_the_program_alone() {
    let marks = ["1", "2", "3", "4", "5", "6", "7", "none", "unreadable"];
    let among: BTreeMap<String, u32> = marks.iter().map(|m| ((*m).to_owned(), 10)).collect();
    let facts =
        [("material", "plastic"), ("form", "tub"), ("former-contents", "food"), ("middle-side", "4 in")];
    let guide = with_item(Item {
        id: "any-tub".to_owned(),
        category: "plastic-packaging".to_owned(),
        pictogram: "tub".to_owned(),
        facts: facts.iter().map(|(k, v)| ((*k).to_owned(), (*v).to_owned())).collect(),
        open: BTreeMap::from([("resin".to_owned(), Open { among, ..Open::default() })]),
        ..Item::default()
    });
    for mark in marks {
        let outcome = Case::of("any-tub").with("resin", mark).outcome(&guide);
        let expected = if ["1", "2", "5"].contains(&mark) { Answered::Yes } else { Answered::No };
        assert_eq!(outcome.verdict, expected, "resin {mark}: {outcome:?}");
    }
}

/// Every outcome that any answers lead to.
fn every_outcome(guide: &Guide, item: &str, see: &mut dyn FnMut(&Known, &Outcome)) {
    let at = guide.item_index(item).unwrap_or_else(|| panic!("no item {item}"));
    let mut waiting = vec![Known::default()];
    // The days on which a rule begins or ends are never asked: each is looked at.
    for variable in guide.variables.iter().filter(|v| v.fact == "day") {
        for interval in 0..=variable.size() {
            waiting.push(Known::default().with("day", Given::Interval(interval)));
        }
    }
    while let Some(known) = waiting.pop() {
        match guide.next(at, &known).expect("an item") {
            Step::Ask(question) => {
                for choice in &question.options {
                    waiting.push(known.clone().with(&question.fact, choice.given.clone()));
                }
                waiting.push(known.with(&question.fact, Given::CannotTell));
            }
            Step::Answer(answer) => answer.parts.iter().for_each(|part| see(&known, &part.outcome)),
        }
    }
}

/// "Hazards (cautions, always "elsewhere", never the cart)". Lithium batteries: US EPA guidance (M).
/// Sharps: US FDA guidance (M). Medicines: US FDA/DEA (M). Cylinders, flammables, fluorescent lamps,
/// paints, pesticides: US EPA (M).
#[test]
fn hazards_go_to_their_channel_with_their_preparation() {
    for (item, given, class, channel, steps) in [
        ("lithium-battery", &[][..], "battery-lithium", "battery-points", &["tape-terminals"][..]),
        ("button-battery", &[], "battery-lithium", "battery-points", &["tape-terminals"]),
        ("needles", &[], "sharps", "sharps-take-back", &["puncture-proof"]),
        ("medicine", &[], "medicine", "medicine-take-back", &[]),
        ("medicine-liquid", &[], "medicine", "medicine-take-back", &[]),
        ("propane-cylinder", &[], "pressurised", "hazardous-waste", &["do-not-puncture"]),
        ("spray-can", &[], "pressurised", "hazardous-waste", &["do-not-puncture"]),
        ("gasoline", &[], "flammable", "hazardous-waste", &[]),
        ("paint-thinner", &[], "flammable", "hazardous-waste", &[]),
        ("fluorescent-tube", &[], "mercury", "hazardous-waste", &["do-not-crush"]),
        ("cfl-bulb", &[], "mercury", "hazardous-waste", &[]),
        ("latex-paint", &[], "toxic", "hazardous-waste", &[]),
        ("oil-paint", &[], "flammable", "hazardous-waste", &[]),
        ("pesticide", &[], "toxic", "hazardous-waste", &["original-container"]),
    ] {
        let outcome = put(item, given).outcome(demo_guide());
        check_outcome("Hazards", item, &outcome, &Elsewhere(channel, steps));
        assert_eq!(outcome.hazard.as_deref(), Some(class), "{item}: {outcome:?}");
        assert_eq!(outcome.tier, Some(Tier::Safety), "{item}: {outcome:?}");
    }
}

#[test]
fn no_answers_whatever_lead_a_hazard_to_a_cart() {
    let guide = demo_guide();
    let catalog = Catalog::standard().expect("the catalog");
    let mut seen = 0;
    for item in &catalog.items {
        let hazardous = item.facts.get("hazard").is_some_and(|class| class != "none");
        let has_battery = item.facts.get("battery").is_some_and(|b| b == "yes");
        every_outcome(guide, &item.id, &mut |known, outcome| {
            if outcome.hazard.is_some() {
                assert_eq!(outcome.verdict, Answered::Elsewhere, "{} {known:?}: {outcome:?}", item.id);
                assert!(
                    outcome.stream.is_none() && outcome.channel.is_some(),
                    "{} {known:?}: {outcome:?}",
                    item.id
                );
                assert!(!outcome.acknowledged, "{}: the demo accepts no exceptions", item.id);
                seen += 1;
            }
        });
        if hazardous || has_battery {
            let whole = put(&item.id, &[]).outcome(guide);
            assert!(whole.hazard.is_some(), "{} lost its caution: {whole:?}", item.id);
        }
    }
    assert!(seen > 40, "only {seen} hazardous outcomes were looked at");
}

/// "Every caution defers to local codes and the local facility."
#[test]
fn every_caution_in_every_language_defers_to_local_rules() {
    for language in locales::supported() {
        let messages = locales::bundled(&language.lang()).isolating(false);
        let local = messages.t("caution-local", &locales::args!());
        assert!(local.len() > 20, "{}: {local}", language.tag);
        for class in HAZARDS.iter().skip(1).filter(|c| !["explosive", "radioactive"].contains(c)) {
            let caution = messages.t(&format!("caution-{class}"), &locales::args!());
            assert!(caution.contains(&local), "{} {class}: {caution}", language.tag);
            assert!(
                caution.chars().count() > local.chars().count() + 20,
                "{} {class} says nothing of its own",
                language.tag
            );
        }
        // These two defer to the authority named, before any facility.
        for class in ["explosive", "radioactive"] {
            let caution = messages.t(&format!("caution-{class}"), &locales::args!());
            assert!(caution.chars().count() > 40, "{} {class}: {caution}", language.tag);
        }
    }
}

/// The rows above speak of facts by id: a slip in one would test nothing.
#[test]
fn the_facts_named_here_exist() {
    for fact in ["resin", "middle-side", "capacity", "contents", "soiling", "colour", "day"] {
        assert!(FACTS.iter().any(|known| known.id == fact), "{fact}");
    }
}
