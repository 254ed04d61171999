//! Exact analysis of the demo finds what trying every one of its cases finds, no less, no more.

use std::collections::BTreeSet;

use guide_data::{Catalog, Program, check};
use lidleaf_tests::brute::{Days, try_everything};
use lidleaf_tests::demo;

fn same(program: &Program, catalog: &Catalog) {
    let tried = try_everything(program, catalog, Days::OfEachStretch);
    let checked = check(program, catalog);
    let of = |code: &'static str| checked.findings.iter().filter(move |f| f.code == code);
    let uncovered: BTreeSet<String> = of("uncovered-case").map(|f| f.place.id.clone()).collect();
    let conflicts: BTreeSet<BTreeSet<String>> =
        of("conflicting-rules").map(|f| f.rules.iter().cloned().collect()).collect();
    let idle: BTreeSet<String> = of("rule-never-applies").map(|f| f.place.id.clone()).collect();
    assert_eq!(tried.uncovered, uncovered);
    assert_eq!(tried.conflicts, conflicts);
    assert_eq!(tried.idle, idle);
    assert!(tried.cases > 10_000, "{} cases are too few to tell", tried.cases);
    println!("{} cases", tried.cases);
}

#[test]
fn the_demo_as_it_is() {
    let catalog = Catalog::standard().unwrap_or_default();
    same(demo(), &catalog);
}

/// With the rules that hold the demo together taken out, there is something to find.
#[test]
fn the_demo_with_its_seams_open() {
    let catalog = Catalog::standard().unwrap_or_default();
    let mut program = demo().clone();
    program.silence = guide_data::Silence::Undecided;
    program.rules.retain(|rule| rule.id != "household-things" && rule.id != "mixed-packaging");
    for rule in &mut program.rules {
        rule.overrides.clear();
    }
    same(&program, &catalog);
    let tried = try_everything(&program, &catalog, Days::OfEachStretch);
    assert!(!tried.uncovered.is_empty() && !tried.conflicts.is_empty(), "{tried:?}");
}
