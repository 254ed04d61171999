//! A deliberately simple evaluator, written apart from the compiler, must agree with the compiled
//! guide on random programs: every case of every item, one by one.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test that cannot go on should stop"
)]

mod common;

use std::collections::{BTreeMap, BTreeSet};

use chrono::{Datelike as _, NaiveDate, TimeDelta};
use guide_data::{
    Acknowledgement, Answered, Bounds, Catalog, Channel, Condition, CountsAs, Dimension, Edition, FACTS,
    FactKind, Given, Guide, HazardRoute, Item, Known, Measure, Open, Part, Program, Rule, Season, Silence,
    Step, Stream, Tier, Verdict, Zone, check, fact,
};
use proptest::prelude::*;

use common::Dice;

const CHOICES: &[&str] =
    &["resin", "contents", "bagged", "soiling", "hazard", "battery", "material", "zone", "dwelling", "part"];
const SEASONS: &[&str] = &["01-15", "03-10", "06-30", "11-20", "12-24"];
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
    for name in ["resin", "material"] {
        if dice.chance(20) {
            let all = values(&program, name);
            program.counts_as.push(CountsAs {
                fact: name.into(),
                these: vec![all[1].clone(), all[2].clone()],
                count_as: all[dice.roll(2) * 3].clone(),
            });
        }
    }
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
            season: dice.chance(10).then(|| Season {
                from: (*dice.pick(SEASONS)).to_owned(),
                until: (*dice.pick(SEASONS)).to_owned(),
            }),
            banned_from: if dice.chance(10) { vec!["refuse".into()] } else { Vec::new() },
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
        if dice.chance(30) {
            let mut part = Part { id: "lid".into(), ..Part::default() };
            for name in ["resin", "material"] {
                let FactKind::Choice(all) = fact(name).unwrap().kind else { unreachable!() };
                if dice.chance(50) {
                    part.facts.insert(name.into(), all[dice.roll(4)].into());
                }
            }
            item.parts.push(part);
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

fn holds(condition: &Condition, case: &Case, counts: &[CountsAs]) -> bool {
    match condition {
        Condition::All(parts) => parts.iter().all(|p| holds(p, case, counts)),
        Condition::Any(parts) => parts.iter().any(|p| holds(p, case, counts)),
        Condition::Not(part) => !holds(part, case, counts),
        Condition::Is(one) => {
            let Some(Plain::Word(word)) = case.get(&one.fact) else { return false };
            let as_other = counts.iter().find(|c| c.fact == one.fact && c.these.contains(word));
            one.of.contains(as_other.map_or(word, |c| &c.count_as))
        }
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
    banned: bool,
}

fn in_season(season: &Season, day: NaiveDate) -> bool {
    let today = format!("{:02}-{:02}", day.month(), day.day());
    if season.from <= season.until {
        season.from <= today && today <= season.until
    } else {
        today >= season.from || today <= season.until
    }
}

/// One day of every stretch of days on which the same rules hold.
fn telling_days(program: &Program) -> Vec<NaiveDate> {
    let first = NaiveDate::from_ymd_opt(2025, 12, 31).unwrap();
    let mut days = BTreeSet::from([first]);
    for rule in &program.rules {
        days.extend(rule.from);
        days.extend(rule.until.map(|u| u + TimeDelta::days(1)));
        for year in 2025..=2027 {
            for season in rule.season.iter() {
                let of = |words: &str| format!("{year}-{words}").parse::<NaiveDate>().unwrap();
                days.insert(of(&season.from));
                days.insert(of(&season.until) + TimeDelta::days(1));
            }
        }
    }
    days.into_iter().collect()
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

/// What holds of a program's rules in every case, worked out once.
struct Order {
    strength: BTreeMap<String, u8>,
    /// Who beats whom.
    beats: BTreeSet<(String, String)>,
}

fn order(program: &Program) -> Order {
    let mut beats = BTreeSet::new();
    for by in program.rules.iter().filter(|by| !reaches(program, by, &by.id, &mut BTreeSet::new())) {
        for other in &program.rules {
            if reaches(program, by, &other.id, &mut BTreeSet::new()) {
                beats.insert((by.id.clone(), other.id.clone()));
            }
        }
    }
    let strength = |r: &Rule| (r.id.clone(), strength(program, r, &mut Vec::new()));
    Order { strength: program.rules.iter().map(strength).collect(), beats }
}

/// What a program says in a case on a day, given which rules' conditions hold in it.
fn oracle(program: &Program, order: &Order, case: &Case, met: &[bool], day: NaiveDate) -> Said {
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
    let on = |(r, met): (&Rule, &bool)| {
        *met && r.from.is_none_or(|f| day >= f)
            && r.until.is_none_or(|u| day <= u)
            && r.season.as_ref().is_none_or(|s| in_season(s, day))
    };
    let applying = || program.rules.iter().zip(met).filter(|&r| on(r)).map(|(r, _)| r);
    let always_banned = applying().any(|r| r.verdict.is_none() && !r.banned_from.is_empty());
    let applying: Vec<&Rule> = applying()
        .filter(|r| r.verdict.is_some())
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
                    banned: always_banned,
                };
            }
            continue;
        }
        let strongest = left.iter().map(|r| order.strength[&r.id]).max();
        left.retain(|r| Some(order.strength[&r.id]) == strongest);
        let beaten: Vec<String> = left
            .iter()
            .filter(|r| left.iter().any(|by| order.beats.contains(&(by.id.clone(), r.id.clone()))))
            .map(|r| r.id.clone())
            .collect();
        left.retain(|r| !beaten.contains(&r.id));
        let first = left[0];
        let rules = left.iter().map(|r| r.id.clone()).collect();
        if left
            .iter()
            .any(|r| (r.verdict, &r.stream, &r.channel) != (first.verdict, &first.stream, &first.channel))
        {
            return Said {
                verdict: Answered::Undecided,
                stream: None,
                channel: None,
                rules,
                banned: always_banned,
            };
        }
        let banned = always_banned || left.iter().any(|r| !r.banned_from.is_empty());
        let verdict = match first.verdict.unwrap() {
            Verdict::Yes => Answered::Yes,
            Verdict::No => Answered::No,
            Verdict::Elsewhere => Answered::Elsewhere,
        };
        return Said { verdict, stream: first.stream.clone(), channel: first.channel.clone(), rules, banned };
    }
    let (verdict, stream) = match program.silence {
        Silence::Undecided => (Answered::Undecided, None),
        Silence::Ask => (Answered::Unlisted, None),
        Silence::Closed => (Answered::No, Some("refuse".to_owned())),
    };
    Said { verdict, stream, channel: None, rules: BTreeSet::new(), banned: always_banned }
}

/// The thresholds that a condition names of a fact.
fn thresholds(condition: &Condition, fact: &str, into: &mut BTreeSet<String>) {
    match condition {
        Condition::All(parts) | Condition::Any(parts) => {
            parts.iter().for_each(|p| thresholds(p, fact, into));
        }
        Condition::Not(part) => thresholds(part, fact, into),
        Condition::Measure(b) if b.fact == fact => {
            into.extend([&b.at_least, &b.over, &b.at_most, &b.under].into_iter().flatten().cloned());
        }
        _ => {}
    }
}

/// Every case of an item or a part of it, with what a resident would have to say to be in it.
fn cases(program: &Program, item: &Item, part: Option<&Part>) -> Vec<(Case, Known)> {
    let mut base = Case::new();
    base.insert("item".into(), Plain::Word(item.id.clone()));
    for f in FACTS {
        let of_part = part.and_then(|p| p.facts.get(f.id));
        if let FactKind::Choice(_) = f.kind {
            let stated = of_part.or_else(|| item.facts.get(f.id));
            base.insert(f.id.into(), Plain::Word(stated.map_or(f.normal.unwrap(), |v| v).to_owned()));
        } else if let Some(words) = item.facts.get(f.id) {
            base.insert(f.id.into(), Plain::Number(micrometres(words)));
        }
    }
    if let Some(part) = part {
        base.insert("part".into(), Plain::Word(part.id.clone()));
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
        if part.is_some_and(|p| p.facts.contains_key(name)) {
            continue;
        }
        if open.from.is_some() {
            // Each threshold that a rule names, and both sides of it.
            let mut named = BTreeSet::from(["1 in".to_owned(), "1 ft".to_owned()]);
            program.rules.iter().flat_map(|r| &r.when).for_each(|w| thresholds(w, name, &mut named));
            let around: BTreeSet<String> = named
                .iter()
                .flat_map(|l| {
                    let um = micrometres(l);
                    [um - 1, um, um + 1]
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

/// A case as the compiled guide takes it: for each of its variables the position of the value.
fn positions(guide: &Guide, case: &Case) -> Vec<u16> {
    let of = |v: &guide_data::Variable| match case.get(&v.fact) {
        Some(Plain::Word(word)) => v.index_of(word).unwrap_or(0),
        Some(Plain::Number(number)) => v.interval_of(*number),
        None => 0,
    };
    guide.variables.iter().map(|v| u16::try_from(of(v)).unwrap()).collect()
}

/// The same on a day.
fn set_day(guide: &Guide, values: &mut [u16], day: NaiveDate) {
    let year_day = i64::from(day.month0()) * 31 + i64::from(day.day0());
    for (v, value) in guide.variables.iter().zip(values) {
        let interval = match v.fact.as_str() {
            "day" => v.interval_of((day - NaiveDate::default()).num_days()),
            "time-of-year" => v.interval_of(year_day),
            _ => continue,
        };
        *value = u16::try_from(interval).unwrap();
    }
}

fn said(outcome: &guide_data::Outcome) -> Said {
    Said {
        verdict: outcome.verdict,
        stream: outcome.stream.clone(),
        channel: outcome.channel.clone(),
        rules: outcome.rules.iter().cloned().collect(),
        banned: !outcome.banned.is_empty(),
    }
}

fn agree(seed: u64) {
    let mut dice = Dice(seed | 1);
    let program = program(&mut dice);
    let catalog = catalog(&mut dice);
    let checked = check(&program, &catalog);
    let (days, order) = (telling_days(&program), order(&program));
    let (mut uncovered, mut conflicts) = (BTreeSet::new(), BTreeSet::new());
    for (at, item) in catalog.items.iter().enumerate() {
        for part in std::iter::once(None).chain(item.parts.iter().map(Some)) {
            for (case, known) in cases(&program, item, part) {
                let holds = |r: &Rule| r.when.as_ref().is_none_or(|w| holds(w, &case, &program.counts_as));
                let met: Vec<bool> = program.rules.iter().map(holds).collect();
                let mut values = positions(&checked.guide, &case);
                for &day in &days {
                    let right = oracle(&program, &order, &case, &met, day);
                    set_day(&checked.guide, &mut values, day);
                    let walked = match part {
                        None => checked.guide.verdict(at, &values),
                        Some(part) => checked.guide.part_verdict(at, &part.id, &values),
                    };
                    assert_eq!(
                        walked.map(said).as_ref(),
                        Some(&right),
                        "seed {seed} day {day} case {case:?}\n{}",
                        program.to_json()
                    );
                    // Asking takes longer than walking: it is met with some of the cases.
                    if part.is_none() && dice.chance(3) {
                        let known = known.clone().with("day", Given::Day(day));
                        let Some(Step::Answer(answer)) = checked.guide.next(at, &known) else {
                            panic!("asked although all is known: {case:?}")
                        };
                        assert_eq!(said(&answer.parts[0].outcome), right, "seed {seed} {day} {case:?}");
                    }
                    if right.verdict == Answered::Undecided {
                        if right.rules.is_empty() {
                            uncovered.insert(item.id.clone());
                        } else {
                            conflicts.insert(right.rules);
                        }
                    }
                }
            }
        }
    }
    // Exact analysis: the findings name what brute force meets, no less and no more; and every
    // witness replays to what its finding says.
    let named: BTreeSet<String> =
        checked.findings.iter().filter(|f| f.code == "uncovered-case").map(|f| f.place.id.clone()).collect();
    assert_eq!(uncovered, named, "seed {seed}\n{}", program.to_json());
    let told: BTreeSet<BTreeSet<String>> = checked
        .findings
        .iter()
        .filter(|f| f.code == "conflicting-rules")
        .map(|f| f.rules.iter().cloned().collect())
        .collect();
    assert_eq!(conflicts, told, "seed {seed}\n{}", program.to_json());
    for finding in
        checked.findings.iter().filter(|f| f.code == "uncovered-case" || f.code == "conflicting-rules")
    {
        let witness = finding.witness.as_ref().unwrap();
        let Some(outcome) = checked.guide.replay(witness) else {
            panic!("seed {seed}: a witness leaves a question open: {witness:?}")
        };
        assert_eq!(outcome.verdict, Answered::Undecided, "seed {seed}: {finding:?}");
        assert_eq!(outcome.rules, finding.rules, "seed {seed}: {finding:?}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 5_000, failure_persistence: None, ..ProptestConfig::default() })]
    #[test]
    fn the_compiled_guide_agrees_with_a_simple_evaluator(seed in any::<u64>()) {
        agree(seed);
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 5_000, failure_persistence: None, ..ProptestConfig::default() })]
    /// The other half of ten thousand, on another core.
    #[test]
    fn the_compiled_guide_agrees_with_a_simple_evaluator_again(seed in any::<u64>()) {
        agree(seed);
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]
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
