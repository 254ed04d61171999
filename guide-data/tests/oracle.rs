//! A deliberately simple evaluator, written apart from the compiler, must agree with the compiled
//! guide on random programs: every case of every item, one by one.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test that cannot go on should stop"
)]

use std::collections::{BTreeMap, BTreeSet};

use chrono::NaiveDate;
use guide_data::{
    Acknowledgement, Answered, Bounds, Catalog, Channel, Condition, Dimension, Edition, FactKind, Given,
    HazardRoute, Item, Known, Measure, Open, Program, Rule, Silence, Step, Stream, Tier, Verdict, Zone,
    check, fact,
};
use proptest::prelude::*;

/// A small generator of random numbers; a test needs no better, and stays repeatable.
struct Dice(u64);

impl Dice {
    fn roll(&mut self, sides: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        usize::try_from(self.0 >> 11).unwrap() % sides
    }
    fn pick<'a, T>(&mut self, from: &'a [T]) -> &'a T {
        &from[self.roll(from.len())]
    }
    fn chance(&mut self, percent: usize) -> bool {
        self.roll(100) < percent
    }
}

const CHOICES: &[&str] =
    &["resin", "contents", "bagged", "soiling", "hazard", "battery", "material", "zone", "dwelling"];
const LENGTHS: &[&str] = &["1 in", "2 in", "5 cm", "3 in", "10 cm", "1 ft"];

fn values(program: &Program, name: &str) -> Vec<String> {
    match fact(name).unwrap().kind {
        FactKind::Choice(values) => values.iter().take(5).map(|&v| v.to_owned()).collect(),
        _ => program.zones.iter().map(|z| z.id.clone()).collect(),
    }
}

fn condition(dice: &mut Dice, program: &Program, depth: usize) -> Condition {
    match dice.roll(if depth == 0 { 2 } else { 5 }) {
        0 => {
            let name = *dice.pick(CHOICES);
            let all = values(program, name);
            let of: Vec<&str> = all.iter().filter(|_| dice.chance(40)).map(String::as_str).collect();
            if of.is_empty() { Condition::is(name, &[&all[0]]) } else { Condition::is(name, &of) }
        }
        1 => {
            let mut bounds = Bounds {
                fact: (*dice.pick(&["middle-side", "longest-side"])).to_owned(),
                ..Bounds::default()
            };
            let words = Some((*dice.pick(LENGTHS)).to_owned());
            match dice.roll(4) {
                0 => bounds.at_least = words,
                1 => bounds.over = words,
                2 => bounds.at_most = words,
                _ => bounds.under = words,
            }
            Condition::Measure(bounds)
        }
        2 => Condition::Not(Box::new(condition(dice, program, depth - 1))),
        3 => Condition::All((0..dice.roll(3)).map(|_| condition(dice, program, depth - 1)).collect()),
        _ => Condition::Any((0..1 + dice.roll(2)).map(|_| condition(dice, program, depth - 1)).collect()),
    }
}

fn program(dice: &mut Dice) -> Program {
    let stream = |id: &str| Stream { id: id.into(), kind: id.into(), ..Stream::default() };
    let mut program = Program {
        id: "random".into(),
        source_language: "en".into(),
        languages: vec!["en".into()],
        edition: Edition { label: "1".into(), from: NaiveDate::from_ymd_opt(2026, 1, 1) },
        streams: vec![stream("recycling"), stream("refuse")],
        zones: vec![
            Zone { id: "north".into(), households: 10, ..Zone::default() },
            Zone {
                id: "south".into(),
                households: 5,
                dwelling: Some("large-building".into()),
                ..Zone::default()
            },
        ],
        channels: vec![
            Channel { id: "yard".into(), kind: "drop-off".into(), ..Channel::default() },
            Channel {
                id: "safe".into(),
                kind: "hazardous-waste".into(),
                safe_for: vec!["battery-lithium".into(), "battery-household".into(), "sharps".into()],
                ..Channel::default()
            },
        ],
        silence: *dice.pick(&[Silence::Undecided, Silence::Ask, Silence::Closed]),
        ..Program::default()
    };
    for class in ["battery-lithium", "battery-household", "battery-lead-acid", "sharps"] {
        if dice.chance(80) {
            let channel = (*dice.pick(&["safe", "yard"])).to_owned();
            program.hazards.insert(class.into(), HazardRoute { channel, approved_by: String::new() });
        }
    }
    for number in 0..1 + dice.roll(9) {
        let verdict = *dice.pick(&[Some(Verdict::Yes), Some(Verdict::No), Some(Verdict::Elsewhere), None]);
        let mut when = condition(dice, &program, 2);
        if dice.chance(25) {
            let item = format!("item-{}", dice.roll(3));
            when = Condition::All(vec![Condition::is("item", &[&item]), when]);
        }
        let overrides = if dice.chance(30) && number > 0 {
            vec![format!("r{}", dice.roll(number + 1))]
        } else {
            Vec::new()
        };
        let day = |d: usize| NaiveDate::from_ymd_opt(2026, 1 + u32::try_from(d).unwrap(), 1);
        program.rules.push(Rule {
            id: format!("r{number}"),
            tier: *dice.pick(&Tier::ALL),
            temporary: dice.chance(15),
            when: Some(when),
            verdict,
            stream: match verdict {
                Some(Verdict::Yes) => Some("recycling".into()),
                Some(Verdict::No) => Some("refuse".into()),
                _ => None,
            },
            channel: (verdict == Some(Verdict::Elsewhere))
                .then(|| (*dice.pick(&["safe", "yard"])).to_owned()),
            prepare: vec![format!("step-{}", dice.roll(3))],
            overrides: overrides.into_iter().filter(|o| *o != format!("r{number}")).collect(),
            from: if dice.chance(15) { day(dice.roll(3)) } else { None },
            until: if dice.chance(10) { day(3 + dice.roll(3)) } else { None },
            acknowledgement: dice.chance(10).then(|| Acknowledgement {
                by: "Inspector".into(),
                on: None,
                because: "test".into(),
            }),
            ..Rule::default()
        });
    }
    program
}

fn catalog(dice: &mut Dice) -> Catalog {
    let mut items = Vec::new();
    for number in 0..3 {
        let mut item =
            Item { id: format!("item-{number}"), category: "metal".into(), common: 10, ..Item::default() };
        for name in ["resin", "contents", "bagged", "soiling", "hazard", "battery", "material"] {
            let FactKind::Choice(all) = fact(name).unwrap().kind else { unreachable!() };
            match dice.roll(4) {
                0 => {
                    item.facts.insert(name.into(), all[dice.roll(4).min(all.len() - 1)].into());
                }
                1 if item.open.len() < 3 => {
                    let among = all
                        .iter()
                        .take(2 + dice.roll(3))
                        .map(|&v| (v.to_owned(), 1 + u32::try_from(dice.roll(9)).unwrap()))
                        .collect();
                    item.open.insert(name.into(), Open { among, ..Open::default() });
                }
                _ => {}
            }
        }
        for side in ["middle-side", "longest-side"] {
            match dice.roll(3) {
                0 => {
                    item.facts.insert(side.into(), (*dice.pick(LENGTHS)).into());
                }
                1 => {
                    let open = Open {
                        from: Some("1 in".into()),
                        to: Some("1 ft".into()),
                        usual: Some("3 in".into()),
                        ..Open::default()
                    };
                    item.open.insert(side.into(), open);
                }
                _ => {}
            }
        }
        items.push(item);
    }
    Catalog { items }
}

/// A fact's plain value: a word, or a number of micrometres or days.
#[derive(Debug, Clone, PartialEq)]
enum Plain {
    Word(String),
    Number(i64),
}

type Case = BTreeMap<String, Plain>;

fn micrometres(words: &str) -> i64 {
    Measure::parse(words, Dimension::Length).unwrap().value
}

fn holds(condition: &Condition, case: &Case) -> bool {
    match condition {
        Condition::All(parts) => parts.iter().all(|p| holds(p, case)),
        Condition::Any(parts) => parts.iter().any(|p| holds(p, case)),
        Condition::Not(part) => !holds(part, case),
        Condition::Is(one) => matches!(case.get(&one.fact), Some(Plain::Word(w)) if one.of.contains(w)),
        Condition::Measure(b) => {
            let Some(Plain::Number(n)) = case.get(&b.fact) else { return false };
            b.at_least.as_ref().is_none_or(|t| *n >= micrometres(t))
                && b.over.as_ref().is_none_or(|t| *n > micrometres(t))
                && b.at_most.as_ref().is_none_or(|t| *n <= micrometres(t))
                && b.under.as_ref().is_none_or(|t| *n < micrometres(t))
        }
    }
}

/// What the oracle says: verdict and destination, or the rules that disagree.
#[derive(Debug, Clone, PartialEq)]
struct Said {
    verdict: Answered,
    stream: Option<String>,
    channel: Option<String>,
    rules: BTreeSet<String>,
}

fn strength(program: &Program, rule: &Rule, seen: &mut Vec<String>) -> u8 {
    let names_item = matches!(&rule.when, Some(Condition::All(p)) if matches!(p.first(), Some(Condition::Is(o)) if o.fact == "item"))
        || rule.when.as_ref().is_some_and(Condition::names_items);
    let own = if rule.temporary { 2 } else { u8::from(names_item) };
    if seen.contains(&rule.id) {
        return own;
    }
    seen.push(rule.id.clone());
    let over = rule.overrides.iter().filter_map(|o| program.rule(o)).filter(|o| o.tier == rule.tier);
    over.map(|o| strength(program, o, seen)).max().unwrap_or(0).max(own)
}

fn reaches(program: &Program, from: &Rule, to: &str, seen: &mut BTreeSet<String>) -> bool {
    from.overrides
        .iter()
        .filter_map(|o| program.rule(o))
        .filter(|o| o.tier == from.tier)
        .any(|o| o.id == to || (seen.insert(o.id.clone()) && reaches(program, o, to, seen)))
}

fn oracle(program: &Program, case: &Case, day: NaiveDate) -> Said {
    let word = |name: &str| match case.get(name) {
        Some(Plain::Word(w)) => w.clone(),
        _ => String::new(),
    };
    let mut classes: Vec<String> = Vec::new();
    if word("hazard") != "none" {
        classes.push(word("hazard"));
    }
    if word("battery") == "yes" {
        classes.push("battery-lithium".into());
    }
    let applying: Vec<&Rule> = program
        .rules
        .iter()
        .filter(|r| r.verdict.is_some())
        .filter(|r| r.from.is_none_or(|f| day >= f) && r.until.is_none_or(|u| day <= u))
        .filter(|r| r.when.as_ref().is_none_or(|w| holds(w, case)))
        .filter(|r| {
            r.tier != Tier::Safety
                || r.acknowledgement.is_some()
                || classes.iter().all(|class| {
                    r.verdict == Some(Verdict::Elsewhere)
                        && program.channel(r.channel.as_ref().unwrap()).unwrap().safe_for.contains(class)
                })
        })
        .collect();
    for tier in Tier::ALL {
        let mut left: Vec<&Rule> = applying.iter().copied().filter(|r| r.tier == tier).collect();
        if left.is_empty() {
            if tier == Tier::Safety && !classes.is_empty() {
                let class = &classes[0];
                let name = if word("hazard") == "none" { "battery-inside" } else { class };
                return Said {
                    verdict: Answered::Elsewhere,
                    stream: None,
                    channel: program.hazards.get(class).map(|h| h.channel.clone()),
                    rules: BTreeSet::from([format!("safety.{name}")]),
                };
            }
            continue;
        }
        let strongest = left.iter().map(|r| strength(program, r, &mut Vec::new())).max();
        left.retain(|r| Some(strength(program, r, &mut Vec::new())) == strongest);
        let beaten: Vec<String> = left
            .iter()
            .filter(|r| {
                left.iter().any(|by| {
                    let circle = reaches(program, by, &by.id, &mut BTreeSet::new());
                    !circle && reaches(program, by, &r.id, &mut BTreeSet::new())
                })
            })
            .map(|r| r.id.clone())
            .collect();
        left.retain(|r| !beaten.contains(&r.id));
        let first = left[0];
        let rules = left.iter().map(|r| r.id.clone()).collect();
        if left
            .iter()
            .any(|r| (r.verdict, &r.stream, &r.channel) != (first.verdict, &first.stream, &first.channel))
        {
            return Said { verdict: Answered::Undecided, stream: None, channel: None, rules };
        }
        let verdict = match first.verdict.unwrap() {
            Verdict::Yes => Answered::Yes,
            Verdict::No => Answered::No,
            Verdict::Elsewhere => Answered::Elsewhere,
        };
        return Said { verdict, stream: first.stream.clone(), channel: first.channel.clone(), rules };
    }
    let (verdict, stream) = match program.silence {
        Silence::Undecided => (Answered::Undecided, None),
        Silence::Ask => (Answered::Unlisted, None),
        Silence::Closed => (Answered::No, Some("refuse".to_owned())),
    };
    Said { verdict, stream, channel: None, rules: BTreeSet::new() }
}

/// Every case of an item, with what a resident would have to say to be in it.
fn cases(program: &Program, item: &Item) -> Vec<(Case, Known)> {
    let mut base = Case::new();
    base.insert("item".into(), Plain::Word(item.id.clone()));
    for f in guide_data::FACTS {
        if let FactKind::Choice(_) = f.kind {
            base.insert(
                f.id.into(),
                Plain::Word(item.facts.get(f.id).map_or(f.normal.unwrap(), |v| v).to_owned()),
            );
        } else if let Some(words) = item.facts.get(f.id) {
            base.insert(f.id.into(), Plain::Number(micrometres(words)));
        }
    }
    let mut all = vec![(base, Known::default())];
    let mut spread = |name: &str, options: Vec<(Plain, Given)>| {
        all = all
            .iter()
            .flat_map(|(case, known)| {
                options.iter().map(move |(plain, given)| {
                    let mut case = case.clone();
                    case.insert(name.to_owned(), plain.clone());
                    (case, known.clone().with(name, given.clone()))
                })
            })
            .collect();
    };
    let word = |v: &str| (Plain::Word(v.to_owned()), Given::value(v));
    for (name, open) in &item.open {
        if open.from.is_some() {
            // Each threshold, and both sides of it.
            let around: BTreeSet<String> = LENGTHS
                .iter()
                .flat_map(|l| {
                    let mm = micrometres(l);
                    [mm - 1000, mm, mm + 1000]
                })
                .filter(|um| (micrometres("1 in")..=micrometres("1 ft")).contains(um))
                .map(|um| format!("{}.{:03} mm", um / 1000, um % 1000))
                .collect();
            spread(
                name,
                around.iter().map(|w| (Plain::Number(micrometres(w)), Given::Stated(w.clone()))).collect(),
            );
        } else {
            spread(name, open.among.keys().map(|v| word(v)).collect());
        }
    }
    spread("zone", program.zones.iter().map(|z| word(&z.id)).collect());
    spread("dwelling", ["house", "small-building", "large-building"].iter().map(|d| word(d)).collect());
    let number = |case: &Case, side: &str| match case.get(side) {
        Some(Plain::Number(n)) => Some(*n),
        _ => None,
    };
    let open_side = item.open.contains_key("middle-side") || item.open.contains_key("longest-side");
    all.retain(|(case, _)| {
        let dwelling_fits = case["zone"] != Plain::Word("south".into())
            || case["dwelling"] == Plain::Word("large-building".into());
        let ordered = match (number(case, "longest-side"), number(case, "middle-side")) {
            (Some(long), Some(middle)) => !open_side || long >= middle,
            _ => true,
        };
        dwelling_fits && ordered
    });
    all
}

fn agree(seed: u64) {
    let mut dice = Dice(seed | 1);
    let program = program(&mut dice);
    let catalog = catalog(&mut dice);
    let checked = check(&program, &catalog);
    let days = ["2026-01-15", "2026-03-01", "2026-05-20"].map(|d| d.parse::<NaiveDate>().unwrap());
    let (mut uncovered, mut conflicts) = (BTreeSet::new(), BTreeSet::new());
    for (at, item) in catalog.items.iter().enumerate() {
        for (case, known) in cases(&program, item) {
            for day in days {
                let said = oracle(&program, &case, day);
                let known = known.clone().with("day", Given::Day(day));
                let Some(Step::Answer(answer)) = checked.guide.next(at, &known) else {
                    panic!("asked although all is known: {case:?}")
                };
                let outcome = &answer.parts[0].outcome;
                let rules: BTreeSet<String> = outcome.rules.iter().cloned().collect();
                let got = Said {
                    verdict: outcome.verdict,
                    stream: outcome.stream.clone(),
                    channel: outcome.channel.clone(),
                    rules,
                };
                assert_eq!(got, said, "seed {seed} day {day} case {case:?}\n{}", program.to_json());
                if said.verdict == Answered::Undecided && said.rules.is_empty() {
                    uncovered.insert(item.id.clone());
                }
                if said.verdict == Answered::Undecided && !said.rules.is_empty() {
                    conflicts.insert(said.rules);
                }
            }
        }
    }
    // Exact analysis: whatever brute force meets on these days, the findings name too; and every
    // witness replays to what its finding says.
    let named: BTreeSet<String> =
        checked.findings.iter().filter(|f| f.code == "uncovered-case").map(|f| f.place.id.clone()).collect();
    assert!(uncovered.is_subset(&named), "seed {seed}: {uncovered:?} {named:?}");
    let told: BTreeSet<BTreeSet<String>> = checked
        .findings
        .iter()
        .filter(|f| f.code == "conflicting-rules")
        .map(|f| f.rules.iter().cloned().collect())
        .collect();
    assert!(conflicts.is_subset(&told), "seed {seed}: {conflicts:?} {told:?}");
    for finding in
        checked.findings.iter().filter(|f| f.code == "uncovered-case" || f.code == "conflicting-rules")
    {
        let witness = finding.witness.as_ref().unwrap();
        let at = checked.guide.item_index(&witness.item).unwrap();
        let Some(Step::Answer(answer)) = checked.guide.next(at, &witness.known()) else {
            panic!("seed {seed}: a witness leaves a question open: {witness:?}")
        };
        let outcome = &answer.parts[0].outcome;
        assert_eq!(outcome.verdict, Answered::Undecided, "seed {seed}: {finding:?}");
        assert_eq!(outcome.rules, finding.rules, "seed {seed}: {finding:?}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]
    #[test]
    fn the_compiled_guide_agrees_with_a_simple_evaluator(seed in any::<u64>()) {
        agree(seed);
    }

    /// Whatever a resident says, in whatever order, a question matters, and "I can't tell" to
    /// everything leads to an answer.
    #[test]
    fn every_conversation_ends_and_no_question_is_idle(seed in any::<u64>()) {
        let mut dice = Dice(seed | 1);
        let program = program(&mut dice);
        let catalog = catalog(&mut dice);
        let guide = check(&program, &catalog).guide;
        for at in 0..guide.items.len() {
            let mut known = Known::default();
            let worst = guide.questions(at, &known).unwrap().worst;
            let mut asked = 0;
            while let Some(Step::Ask(question)) = guide.next(at, &known) {
                asked += 1;
                prop_assert!(asked <= worst, "more questions than promised");
                let ends: Vec<_> = question.options.iter().map(|o| {
                    guide.assumed_answer(at, &known.clone().with(&question.fact, o.given.clone()))
                }).collect();
                let further: Vec<_> = question.options.iter().map(|o| {
                    guide.questions(at, &known.clone().with(&question.fact, o.given.clone())).map(|q| q.worst)
                }).collect();
                let idle = question.options.len() < 2
                    || (ends.windows(2).all(|w| w[0].as_ref().map(|a| &a.parts) == w[1].as_ref().map(|a| &a.parts))
                        && further.iter().all(|f| *f == Some(0)));
                prop_assert!(!idle, "{} cannot matter", question.fact);
                let given = if dice.chance(30) { Given::CannotTell } else { dice.pick(&question.options).given.clone() };
                known.give(&question.fact, given);
            }
            prop_assert!(guide.assumed_answer(at, &Known::default()).is_some());
        }
    }
}
