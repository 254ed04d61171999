//! The engine against its yardsticks, in one run: a general-purpose rules engine on the same
//! decisions, trying every case, and programs that grow.

#![expect(
    clippy::indexing_slicing,
    clippy::panic,
    reason = "a benchmark that measures the wrong thing should stop"
)]

use std::hint::black_box;

use criterion::{BenchmarkId, Criterion, criterion_group, criterion_main};
use guide_data::{
    Bounds, Catalog, Condition, FACTS, FactKind, Guide, HAZARDS, Item, Measure, Program, Verdict, check,
    compare, fact,
};
use lidleaf_tests::brute::{Days, try_everything};
use lidleaf_tests::{demo, demo_guide};
use rust_rule_engine::engine::facts::Facts;
use rust_rule_engine::engine::knowledge_base::KnowledgeBase;
use rust_rule_engine::engine::rule::{Condition as Test, ConditionGroup, Rule as Theirs};
use rust_rule_engine::engine::{EngineConfig, RustRuleEngine};
use rust_rule_engine::types::{ActionType, Operator, Value};

/// Every fact with one value: what a phone knows once nothing is left to ask.
type Case = Vec<Option<Plain>>;

#[derive(Debug, Clone, PartialEq)]
enum Plain {
    Word(String),
    Number(i64),
}

fn number(fact_id: &str, words: &str) -> i64 {
    match fact(fact_id).map(|f| f.kind) {
        Some(FactKind::Measure(dimension)) => {
            Measure::parse(words, dimension).map_or_else(|e| panic!("{words}: {e:?}"), |m| m.value)
        }
        _ => panic!("{fact_id} is not measured"),
    }
}

/// The likeliest case of an item in the first zone.
fn case(program: &Program, item: &Item) -> Case {
    let word = |w: &str| Some(Plain::Word(w.to_owned()));
    FACTS
        .iter()
        .map(|f| match (f.id, f.kind) {
            ("item", _) => word(&item.id),
            ("category", _) => word(&item.category),
            ("zone", _) => program.zones.first().and_then(|z| word(&z.id)),
            (id, FactKind::Measure(_)) => {
                let open = item.open.get(id).and_then(|o| o.usual.as_ref().or(o.from.as_ref()));
                open.or_else(|| item.facts.get(id)).map(|words| Plain::Number(number(id, words)))
            }
            (id, FactKind::Choice(_)) => {
                let likeliest = item.open.get(id).and_then(|o| o.among.iter().max_by_key(|(_, w)| **w));
                let value = likeliest.map(|(v, _)| v.as_str());
                value.or_else(|| item.facts.get(id).map(String::as_str)).or(f.normal).and_then(word)
            }
            _ => None,
        })
        .collect()
}

/// The case as the compiled guide takes it.
fn positions(guide: &Guide, case: &Case) -> Vec<u16> {
    let of = |(v, value): (&guide_data::Variable, &Option<Plain>)| match value {
        Some(Plain::Word(word)) => v.index_of(word).unwrap_or_default(),
        Some(Plain::Number(n)) => v.interval_of(*n),
        // The first day of the edition.
        None if v.fact == "day" => {
            let epoch = chrono::NaiveDate::default();
            v.interval_of((guide.first_day() - epoch).num_days())
        }
        None => 0,
    };
    guide.variables.iter().zip(case).map(|pair| u16::try_from(of(pair)).unwrap_or_default()).collect()
}

/// The case as the other engine's facts, made before the clock starts.
fn facts(case: &Case) -> Facts {
    let facts = Facts::new();
    for (fact, value) in FACTS.iter().zip(case) {
        match value {
            Some(Plain::Word(word)) => facts.set(fact.id, Value::String(word.clone())),
            Some(Plain::Number(n)) => facts.set(fact.id, Value::Integer(*n)),
            None => {}
        }
    }
    facts
}

fn single(fact: &str, operator: Operator, value: Value) -> ConditionGroup {
    ConditionGroup::single(Test::new(fact.to_owned(), operator, value))
}

fn joined(parts: Vec<ConditionGroup>, and: bool) -> ConditionGroup {
    let join = |a, b| if and { ConditionGroup::and(a, b) } else { ConditionGroup::or(a, b) };
    // "Always" and "never" in its words: every case has a part that is asked about.
    let empty =
        single("part", if and { Operator::NotEqual } else { Operator::Equal }, Value::String(String::new()));
    parts.into_iter().reduce(join).unwrap_or(empty)
}

fn translated(condition: &Condition) -> ConditionGroup {
    match condition {
        Condition::All(parts) => joined(parts.iter().map(translated).collect(), true),
        Condition::Any(parts) => joined(parts.iter().map(translated).collect(), false),
        Condition::Not(part) => ConditionGroup::not(translated(part)),
        Condition::Is(one) => {
            let values = one.of.iter().map(|v| Value::String(v.clone())).collect();
            single(&one.fact, Operator::In, Value::Array(values))
        }
        Condition::Measure(Bounds { fact, at_least, over, at_most, under, .. }) => {
            let bound = |words: &Option<String>, operator: Operator| {
                words.as_ref().map(|w| single(fact, operator, Value::Integer(number(fact, w))))
            };
            let all = [
                bound(at_least, Operator::GreaterThanOrEqual),
                bound(over, Operator::GreaterThan),
                bound(at_most, Operator::LessThanOrEqual),
                bound(under, Operator::LessThan),
            ];
            joined(all.into_iter().flatten().collect(), true)
        }
    }
}

/// The demo's rules for the other engine: the first of one group that holds decides, in the order
/// of tiers and strengths. Rules that only add steps and rules of other days are left out of it,
/// which spares it work.
fn general_engine(program: &Program, day: chrono::NaiveDate) -> RustRuleEngine {
    let base = KnowledgeBase::new("demo");
    let add = |id: &str, salience: i32, when: ConditionGroup, told: String| {
        let action = ActionType::Set { field: "told".to_owned(), value: Value::String(told) };
        let rule = Theirs::new(id.to_owned(), when, vec![action])
            .with_salience(salience)
            .with_no_loop(true)
            .with_activation_group("decide".to_owned());
        base.add_rule(rule).unwrap_or_else(|e| panic!("{id}: {e}"));
    };
    for class in HAZARDS.iter().skip(1) {
        let channel = program.hazards.get(*class).map(|h| h.channel.clone()).unwrap_or_default();
        let when = single("hazard", Operator::Equal, Value::String((*class).to_owned()));
        add(&format!("safety.{class}"), 9_000, when, format!("elsewhere {channel}"));
    }
    for rule in program.rules.iter().filter(|r| r.verdict.is_some()) {
        if rule.season.is_some() || rule.from.is_some_and(|f| f > day) || rule.until.is_some_and(|u| u < day)
        {
            continue;
        }
        let named = rule.when.as_ref().is_some_and(Condition::names_items);
        let salience = 8_000 - 1_000 * rule.tier as i32
            + 100 * i32::from(rule.temporary)
            + 10 * i32::from(named || !rule.overrides.is_empty());
        let verdict = match rule.verdict {
            Some(Verdict::Yes) => "yes",
            Some(Verdict::No) => "no",
            _ => "elsewhere",
        };
        let place = rule.stream.iter().chain(&rule.channel).next().cloned().unwrap_or_default();
        let when = rule.when.as_ref().map_or_else(|| joined(Vec::new(), true), translated);
        add(&rule.id, salience, when, format!("{verdict} {place}"));
    }
    let config = EngineConfig { max_cycles: 1, timeout: None, enable_stats: false, debug_mode: false };
    RustRuleEngine::with_config(base, config)
}

fn told(outcome: &guide_data::Outcome) -> String {
    let place = outcome.stream.iter().chain(&outcome.channel).next().cloned().unwrap_or_default();
    format!("{} {place}", outcome.verdict.code())
}

fn one_verdict(c: &mut Criterion) {
    let (program, guide) = (demo(), demo_guide());
    let catalog = Catalog::standard().unwrap_or_default().with(&program.items);
    let mut engine = general_engine(program, guide.first_day());
    let mut same: Vec<(usize, Vec<u16>, Facts)> = Vec::new();
    let mut different = 0;
    for item in &catalog.items {
        let Some(at) = guide.item_index(&item.id) else { continue };
        let case = case(program, item);
        let (values, facts) = (positions(guide, &case), facts(&case));
        let ours = guide.verdict(at, &values).map(told).unwrap_or_default();
        engine.reset_no_loop_tracking();
        engine.execute(&facts).unwrap_or_else(|e| panic!("{e}"));
        let theirs = facts.get("told").map(|v| v.to_string()).unwrap_or_default();
        facts.remove("told");
        if ours == theirs || (ours.starts_with("unlisted") && theirs.is_empty()) {
            same.push((at, values, facts));
        } else {
            different += 1;
        }
    }
    // A translation that decided otherwise would not be the same work.
    assert!(different * 10 <= same.len(), "{different} of {} differ", same.len() + different);
    eprintln!("{} items decided alike, {different} not (left out)", same.len());
    let items = same.len();
    let mut group = c.benchmark_group("engine");
    group.bench_function(BenchmarkId::new("verdicts-of-the-guide", items), |b| {
        b.iter(|| same.iter().filter_map(|(at, values, _)| guide.verdict(*at, black_box(values))).count());
    });
    group.sample_size(10);
    group.bench_function(BenchmarkId::new("verdicts-of-a-general-rules-engine", items), |b| {
        b.iter(|| {
            for (_, _, facts) in &same {
                engine.reset_no_loop_tracking();
                engine.execute(black_box(facts)).map(|done| done.rules_fired).unwrap_or_default();
                facts.remove("told");
            }
        });
    });
    group.finish();
    let (at, values, _) = &same[items / 2];
    c.bench_function("engine/one-verdict", |b| b.iter(|| guide.verdict(black_box(*at), black_box(values))));
}

fn proof(c: &mut Criterion) {
    let catalog = Catalog::standard().unwrap_or_default();
    let mut group = c.benchmark_group("proof");
    group.bench_function("of-the-demo-by-diagram", |b| b.iter(|| check(black_box(demo()), &catalog)));
    group.sample_size(10);
    for (name, days) in [
        ("of-the-demo-by-every-case-of-each-stretch-of-days", Days::OfEachStretch),
        ("of-the-demo-by-every-case-on-every-day", Days::Every),
    ] {
        group.bench_function(name, |b| {
            b.iter(|| try_everything(black_box(demo()), &catalog, days).cases);
        });
    }
    group.finish();
}

/// The catalog repeated under other ids until it has so many items.
fn grown(items: usize) -> Catalog {
    let standard = Catalog::standard().unwrap_or_default();
    let copies = standard.items.iter().cycle().take(items).enumerate();
    let other = |(at, item): (usize, &Item)| {
        let id = if at < standard.items.len() { item.id.clone() } else { format!("{}-{at}", item.id) };
        Item { id, ..item.clone() }
    };
    Catalog { items: copies.map(other).collect() }
}

/// The demo cut down to so many rules.
fn with_rules(rules: usize) -> Program {
    let mut program = demo().clone();
    program.rules.truncate(rules);
    let left: Vec<String> = program.rules.iter().map(|r| r.id.clone()).collect();
    for rule in &mut program.rules {
        rule.overrides.retain(|o| left.contains(o));
    }
    program
}

fn growth(c: &mut Criterion) {
    let program = with_rules(80);
    let mut after = program.clone();
    if let Some(rule) = after.rules.iter_mut().find(|r| r.verdict == Some(Verdict::Yes)) {
        rule.verdict = Some(Verdict::No);
        rule.stream = Some("refuse".to_owned());
    }
    let mut group = c.benchmark_group("program");
    group.sample_size(20);
    for items in [500, 1_000, 2_500, 5_000] {
        let catalog = grown(items);
        group.bench_function(BenchmarkId::new("compile", items), |b| {
            b.iter(|| Guide::compile(black_box(&program), &catalog));
        });
        group.bench_function(BenchmarkId::new("compile-and-analyse", items), |b| {
            b.iter(|| check(black_box(&program), &catalog));
        });
        group.bench_function(BenchmarkId::new("compare", items), |b| {
            b.iter(|| compare(black_box(&program), black_box(&after), &catalog));
        });
    }
    group.finish();
}

criterion_group!(benches, one_verdict, proof, growth);
criterion_main!(benches);
