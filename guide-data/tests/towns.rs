//! The demo's member towns: sound programs that differ as neighbours do.

#![expect(clippy::unwrap_used, reason = "a test that cannot go on should stop")]

use guide_data::{
    Answered, Catalog, Given, Guide, Known, PlaceKind, Program, Regional, Severity, Step, check,
    compare_many, demo_json, demo_towns,
};

fn regional() -> (Vec<Program>, Regional) {
    let mut programs = vec![Program::from_json(demo_json()).unwrap()];
    programs.extend(demo_towns());
    let report = compare_many(&programs.iter().collect::<Vec<_>>(), &Catalog::standard().unwrap());
    (programs, report)
}

#[test]
fn every_town_is_a_program_without_errors_that_comes_back_from_its_file() {
    let towns = demo_towns();
    assert_eq!(towns.len(), 4);
    for town in towns {
        let checked = check(&town, &Catalog::standard().unwrap());
        let worst: Vec<_> = checked.findings.iter().filter(|f| f.severity == Severity::Error).collect();
        assert!(worst.is_empty(), "{}: {worst:#?}", town.id);
        assert_eq!(Program::from_json(&town.to_json()).unwrap(), town);
        assert!(town.rules.len() > 60, "{} has its own copy of the county's rules", town.id);
    }
}

fn says(guide: &Guide, item: &str, facts: &[(&str, &str)]) -> Answered {
    let at = guide.item_index(item).unwrap();
    let known = facts.iter().fold(Known::default(), |k, (fact, value)| k.with(fact, Given::value(value)));
    match guide.next(at, &known) {
        Some(Step::Answer(answer)) => answer.parts.first().unwrap().outcome.verdict,
        _ => guide.assumed_answer(at, &known).unwrap().parts.first().unwrap().outcome.verdict,
    }
}

/// Differences that a region has to live with: cartons, numbers, a closed list, food scraps.
#[test]
fn towns_differ_as_neighbours_do() {
    let catalog = Catalog::standard().unwrap();
    let guides: Vec<Guide> = demo_towns().iter().map(|t| check(t, &catalog).guide).collect();
    let all = |item: &str, facts: &[(&str, &str)]| -> Vec<Answered> {
        guides.iter().map(|g| says(g, item, facts)).collect()
    };
    use Answered::{No, Yes};
    assert_eq!(all("milk-carton", &[]), [Yes, No, Yes, Yes]);
    assert_eq!(all("yogurt-tub", &[("resin", "6")]), [No, Yes, No, No]);
    assert_eq!(all("newspaper", &[]), [Yes, Yes, Yes, Yes]);
    assert!(guides.iter().any(|g| g.outcomes.iter().any(|o| o.closed_list)));
}

#[test]
fn a_region_s_report_names_what_all_say_and_catches_contradictions() {
    let (programs, report) = regional();
    assert_eq!(report.programs.len(), 5);
    let agreed = report.agreed.iter().find(|a| a.item == "newspaper").unwrap();
    assert_eq!(agreed.told.place, Some(PlaceKind::Stream("recycling".to_owned())), "by kind, not by name");
    assert!(report.differing.iter().any(|d| d.item == "milk-carton"));
    let about = |step: &str, opposite: &str| {
        report.contradictory.iter().find(|c| c.step == step && c.opposite == opposite).unwrap()
    };
    let kettlebrae = programs.iter().position(|p| p.id == "kettlebrae").unwrap();
    assert_eq!(about("cap-on", "cap-off").opposite_told_by, [kettlebrae]);
    let pierced = about("puncture", "do-not-puncture");
    assert_eq!((pierced.told_by.as_slice(), pierced.opposite_told_by.len()), ([kettlebrae].as_slice(), 4));
    assert!(about("flatten", "do-not-flatten").item.contains("carton"));
}
