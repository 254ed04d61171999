//! How long a coordinator waits after an edit, and a resident after a tap or a letter.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use guide_data::{
    Catalog, Known, Program, SearchIndex, SummaryWanted, Verdict, check, compare, fold, summarise,
};
use lidleaf_tests::{demo, demo_guide};
use unicode_normalization::UnicodeNormalization as _;

fn folded(text: &str) -> String {
    fold(&text.nfkd().collect::<String>())
}

/// The demo with one rule turned round, as an edit at the desk.
fn edited() -> Program {
    let mut program = demo().clone();
    if let Some(rule) = program.rules.iter_mut().find(|rule| rule.id == "cartons") {
        rule.verdict = Some(Verdict::No);
        rule.stream = Some("refuse".to_owned());
    }
    program
}

fn programs(c: &mut Criterion) {
    let catalog = Catalog::standard().unwrap_or_default();
    let (program, after) = (demo(), edited());
    let json = program.to_json();
    c.bench_function("program/load", |b| b.iter(|| Program::from_json(black_box(&json))));
    c.bench_function("program/compile-and-check", |b| b.iter(|| check(black_box(program), &catalog)));
    c.bench_function("program/compare-after-an-edit", |b| {
        b.iter(|| compare(black_box(program), black_box(&after), &catalog));
    });
}

fn guides(c: &mut Criterion) {
    let guide = demo_guide();
    let items = guide.items.len();
    let values = vec![0_u16; guide.variables.len()];
    let known = Known::default();
    c.bench_function("guide/evaluate-every-item", |b| {
        b.iter(|| (0..items).filter_map(|item| guide.verdict(item, black_box(&values))).count());
    });
    c.bench_function("guide/next-question-of-every-item", |b| {
        b.iter(|| (0..items).filter_map(|item| guide.next(item, black_box(&known))).count());
    });
    let wanted = SummaryWanted {
        stream: Some("recycling".to_owned()),
        zone: None,
        yes: 14,
        no: 8,
        elsewhere: 4,
        day: None,
    };
    c.bench_function("guide/summarise-for-a-lid", |b| b.iter(|| summarise(guide, black_box(&wanted))));
}

fn search(c: &mut Criterion) {
    let messages = locales::bundled(&locales::Lang::default()).isolating(false);
    let find = |key: &str| messages.find(key, &locales::args!()).map(|found| found.text);
    let mut entries = Vec::new();
    for (at, item) in demo_guide().items.iter().enumerate() {
        let main = find(&format!("item-{}", item.id)).unwrap_or_default();
        let also = find(&format!("item-{}.also", item.id)).unwrap_or_default();
        for (n, name) in std::iter::once(main.as_str()).chain(also.split('|')).enumerate() {
            entries.push((at, folded(name.trim()), n == 0, item.common));
        }
    }
    c.bench_function("search/build-the-index", |b| {
        b.iter(|| SearchIndex::build(black_box(&entries).iter().cloned()));
    });
    let index = SearchIndex::build(entries.iter().cloned());
    for typed in ["p", "piza", "piza bocks", "clear plastic strawberry container"] {
        let query = folded(typed);
        c.bench_function(&format!("search/keystroke \"{typed}\""), |b| {
            b.iter(|| index.find(black_box(&query), 10));
        });
    }
}

criterion_group!(benches, programs, guides, search);
criterion_main!(benches);
