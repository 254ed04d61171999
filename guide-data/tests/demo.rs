//! What the demo program shows of the engine.

#![expect(clippy::unwrap_used, reason = "a test that cannot go on should stop")]

use guide_data::{
    Advice, Answer, Answered, Catalog, Given, Guide, Known, Line, Program, Severity, Step, Summary,
    SummaryWanted, WordBudget, check, demo_json, summarise, summarise_within,
};

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

/// Every answer of an item, whatever a resident says to each question.
fn answers(guide: &Guide, item: usize, known: &Known, found: &mut Vec<(Known, Answer)>) {
    match guide.next(item, known).unwrap() {
        Step::Answer(answer) => found.push((known.clone(), answer)),
        Step::Ask(question) => {
            for option in question.options {
                answers(guide, item, &known.clone().with(&question.fact, option.given), found);
            }
            answers(guide, item, &known.clone().with(&question.fact, Given::CannotTell), found);
        }
    }
}

fn answers_of(guide: &Guide, item: &str) -> Vec<(Known, Answer)> {
    let mut found = Vec::new();
    answers(guide, guide.item_index(item).unwrap(), &Known::default(), &mut found);
    found
}

#[test]
fn the_demo_has_no_error_and_no_warning() {
    let program = Program::from_json(demo_json()).unwrap();
    let checked = check(&program, &Catalog::standard().unwrap());
    let bad: Vec<_> = checked.findings.iter().filter(|f| f.severity != Severity::Notice).collect();
    assert!(bad.is_empty(), "{bad:?}");
}

/// No resident is left with "not on the list", and every answer of every item names one place.
#[test]
fn every_item_of_the_demo_is_decided() {
    let guide = guide();
    for index in 0..guide.items.len() {
        let mut found = Vec::new();
        answers(&guide, index, &Known::default(), &mut found);
        for (known, answer) in found {
            for part in answer.parts {
                let o = part.outcome;
                let placed = match o.verdict {
                    Answered::Yes | Answered::No => o.stream.is_some() && o.channel.is_none(),
                    Answered::Elsewhere => o.channel.is_some() && o.stream.is_none(),
                    _ => false,
                };
                assert!(placed, "{} {known:?}: {o:?}", answer.item);
            }
        }
    }
}

/// By the catalog's own word, not by the rules': what is or may be dangerous in some case goes, in
/// that case, to a channel, and so does whatever holds a battery.
#[test]
fn nothing_dangerous_reaches_a_cart_under_any_answer() {
    let guide = guide();
    let mut dangerous = 0;
    for item in &Catalog::standard().unwrap().items {
        let always = |fact: &str, harmless: &str| item.facts.get(fact).is_some_and(|v| v != harmless);
        for (known, answer) in answers_of(&guide, &item.id) {
            let said = |fact: &str, value: &str| known.get(fact) == Some(&Given::value(value));
            let unsure = known.get("battery") == Some(&Given::CannotTell);
            if always("hazard", "none") || always("battery", "no") || said("battery", "yes") || unsure {
                dangerous += 1;
                let main = &answer.parts[0].outcome;
                assert_eq!(main.verdict, Answered::Elsewhere, "{} {known:?}", item.id);
                assert!(main.hazard.is_some(), "{} {known:?}: no caution", item.id);
            }
        }
    }
    assert!(dangerous > 120, "{dangerous}");
}

/// Where a hazard's usual place is not safe enough, or the usual steps are wrong (common practice,
/// no source).
#[test]
fn what_is_worse_than_its_class_is_told_apart() {
    let guide = guide();
    let only = |item: &str| {
        let found = answers_of(&guide, item);
        assert_eq!(found.len(), 1, "{item} asks");
        found[0].1.parts[0].outcome.clone()
    };
    for item in ["damaged-battery", "ebike-battery", "ev-battery", "car-battery"] {
        assert_eq!(only(item).channel.as_deref(), Some("hazardous-waste"), "{item}");
    }
    assert_eq!(only("household-battery").channel.as_deref(), Some("battery-points"));
    let steps = |item: &str| only(item).steps;
    assert!(steps("fluorescent-tube").contains(&"do-not-crush".to_owned()));
    assert!(!steps("broken-lamp").contains(&"do-not-crush".to_owned()));
    assert!(steps("broken-lamp").contains(&"double-bag".to_owned()));
    assert!(steps("solvent-rags").contains(&"wet-in-metal-can".to_owned()));
    assert!(!steps("suspect-asbestos").contains(&"original-container".to_owned()));
}

/// Under a budget of words no line but a hazard's is longer, each keeps the best qualifier that fits,
/// and what a shorter one leaves out shows in its fidelity.
#[test]
fn a_budget_of_words_holds_and_its_price_is_told() {
    let guide = guide();
    let wanted = SummaryWanted { yes: 400, no: 400, elsewhere: 400, ..SummaryWanted::default() };
    let count = |line: &Line| 1 + line.qualifiers.iter().map(|(_, values)| values.len() + 1).sum::<usize>();
    let all =
        |s: &Summary| -> Vec<Line> { [&s.yes, &s.no, &s.elsewhere].into_iter().flatten().cloned().collect() };
    let free = summarise(&guide, &wanted);
    let mut shortened = 0;
    for most in [1, 3, 5, 100] {
        let tight = summarise_within(&guide, &wanted, Some(WordBudget { most, count: &count }));
        assert_eq!(tight.hazards, free.hazards, "hazards stay");
        assert_eq!(all(&tight).len(), all(&free).len(), "a bare line of one word always fits");
        for line in all(&tight) {
            assert!(count(&line) <= most, "{line:?}");
            let whole = all(&free).into_iter().find(|l| l.item == line.item).unwrap();
            if line != whole {
                shortened += 1;
                assert!(count(&whole) > most && line.fidelity <= whole.fidelity, "{line:?} {whole:?}");
            }
        }
        if most == 100 {
            assert_eq!(tight, free);
        }
    }
    assert!(shortened > 10, "{shortened}");
    let none = summarise_within(&guide, &wanted, Some(WordBudget { most: 0, count: &count }));
    assert_eq!((all(&none), none.hazards), (Vec::new(), free.hazards));
}

/// The advice of a page says in every case what the questions lead to.
#[test]
fn advice_says_what_questions_lead_to() {
    fn follow(guide: &Guide, item: usize, known: &Known, advice: &Advice, met: &mut usize) {
        match (guide.next(item, known).unwrap(), advice) {
            (Step::Answer(answer), Advice::Answer(told)) => {
                assert_eq!(answer.parts, told.parts);
                *met += 1;
            }
            (Step::Ask(question), Advice::Depends { fact, branches }) => {
                assert_eq!(question.fact, *fact);
                for option in &question.options {
                    let mut of = branches.iter().filter(|b| b.given.contains(&option.given));
                    let branch = of.next().unwrap();
                    assert!(of.next().is_none(), "{option:?} is in two branches");
                    let known = known.clone().with(fact, option.given.clone());
                    follow(guide, item, &known, &branch.advice, met);
                }
                let unknown: Vec<_> = branches.iter().filter(|b| b.cannot_tell).collect();
                assert_eq!(unknown.len(), 1);
                follow(guide, item, &known.clone().with(fact, Given::CannotTell), &unknown[0].advice, met);
            }
            // Where all of a question's options lead to the same, it is left out.
            (Step::Ask(question), told) => {
                for option in question.options {
                    follow(guide, item, &known.clone().with(&question.fact, option.given), told, met);
                }
            }
            (step, told) => panic!("{step:?} {told:?}"),
        }
    }
    let guide = guide();
    let mut met = 0;
    for item in 0..guide.items.len() {
        let first = guide.first_day();
        for stretch in guide.advice_over(item, first, 500).unwrap() {
            let known = Known::default().with("day", Given::Day(stretch.from));
            follow(&guide, item, &known, &stretch.advice, &mut met);
        }
    }
    assert!(met > 1_000, "{met}");
    // A rule's season changes an answer within a year.
    let several = (0..guide.items.len())
        .filter(|&i| guide.advice_over(i, guide.first_day(), 366).unwrap().len() > 1)
        .count();
    assert!(several > 0);
    assert!(guide.advice(guide.items.len(), &Known::default()).is_none());
}
