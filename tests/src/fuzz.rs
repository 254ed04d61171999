//! Whatever is thrown at the ways in must be answered with a value or a problem, never a panic, and
//! within bounded work. Each function takes any bytes; a fuzzer calls it, and so does a test that
//! mutates good files.

#![expect(clippy::indexing_slicing, reason = "a fuzz target fails by panicking")]

use guide_data::{
    Catalog, Condition, Dimension, Known, Measure, Program, Rule, SearchIndex, Step, check, fold,
};

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

/// Every item's conversation in which nobody can tell anything comes to an answer.
fn converse(guide: &guide_data::Guide) {
    for at in 0..guide.items.len().min(20) {
        let mut known = Known::default();
        let mut asked = 0;
        while let Some(Step::Ask(question)) = guide.next(at, &known) {
            asked += 1;
            assert!(asked < 100, "{} is asked again and again", question.fact);
            known.give(&question.fact, guide_data::Given::CannotTell);
        }
    }
}
