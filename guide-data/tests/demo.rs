//! What the demo program shows of the engine.

#![expect(clippy::unwrap_used, reason = "a test that cannot go on should stop")]

use guide_data::{Catalog, Given, Guide, Known, Program, Step, check, demo_json};

fn guide() -> Guide {
    let program = Program::from_json(demo_json()).unwrap();
    check(&program, &Catalog::standard().unwrap()).guide
}

#[test]
fn a_zone_is_not_asked_once_the_dwelling_settles_it() {
    let guide = guide();
    let leaves = guide.item_index("leaves").unwrap();
    let asked = |known: &Known| match guide.next(leaves, known) {
        Some(Step::Ask(question)) => question.fact,
        _ => String::new(),
    };
    assert!(["zone", "dwelling"].contains(&asked(&Known::default()).as_str()));
    let house = Known::default().with("dwelling", Given::value("house"));
    assert!(!["zone", "dwelling"].contains(&asked(&house).as_str()), "{}", asked(&house));
}

#[test]
fn most_items_need_no_question_and_none_more_than_two() {
    let guide = guide();
    let counts: Vec<_> =
        (0..guide.items.len()).map(|i| guide.questions(i, &Known::default()).unwrap()).collect();
    let none = counts.iter().filter(|c| c.worst == 0).count();
    assert!(none * 2 > counts.len(), "{none} of {}", counts.len());
    assert!(counts.iter().all(|c| c.worst <= 2 && c.exact));
}

#[test]
fn no_hazard_of_the_demo_goes_to_a_container() {
    let guide = guide();
    for outcome in guide.outcomes.iter().filter(|o| o.hazard.is_some()) {
        assert!(outcome.stream.is_none() && outcome.channel.is_some(), "{outcome:?}");
    }
    assert!(guide.outcomes.iter().any(|o| o.hazard.is_some()));
}
