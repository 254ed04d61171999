//! Program files that are not what they should be: each says what, where, and leaves nothing half
//! done. And files that are: they come back as they were.

use guide_data::{Catalog, LARGEST_FILE, LoadProblem, Program, check, demo_json};
use proptest::prelude::*;

fn code(text: &str) -> &'static str {
    Program::from_json(text).map_or_else(|p| p.code(), |_| "read")
}

#[test]
fn every_kind_of_broken_file_is_told_apart() {
    let demo = demo_json();
    let mut cut = demo.len() / 2;
    while !demo.is_char_boundary(cut) {
        cut -= 1;
    }
    let huge = format!("{}{}", demo, " ".repeat(LARGEST_FILE));
    let deep = format!(
        r#"{{"format":"lidleaf-program","version":1,"payload":{{"rules":[{{"id":"deep","when":{}{{"all":[]}}{}}}]}}}}"#,
        r#"{"not":"#.repeat(30),
        "}".repeat(30)
    );
    for (text, expected) in [
        ("", "truncated"),
        (&demo[..cut], "truncated"),
        ("{\"format\": lidleaf}", "not-json"),
        ("item;verdict\ncan;yes\n", "not-json"),
        ("[1, 2]", "other-format"),
        ("{}", "other-format"),
        (r#"{"format":"geo","version":1,"payload":{}}"#, "other-format"),
        (r#"{"format":"lidleaf-program","version":99,"payload":{"new":true}}"#, "newer"),
        (r#"{"format":"lidleaf-program","version":1,"payload":{"rules":7}}"#, "shape"),
        (r#"{"format":"lidleaf-program","version":1,"payload":{"surprise":7}}"#, "shape"),
        (&huge, "too-large"),
        (&deep, "too-deep"),
        (r#"{"format":"lidleaf-program","version":1,"payload":{}}"#, "read"),
    ] {
        assert_eq!(code(text), expected, "{}", &text[..text.len().min(60)]);
    }
}

#[test]
fn a_wrong_shape_says_where() {
    let text = r#"{"format":"lidleaf-program","version":1,"payload":{"rules":[{"id":"a"},{"id":"b","when":{"is":{"fact":7}}}]}}"#;
    let Err(LoadProblem::Shape { path, detail }) = Program::from_json(text) else {
        panic!("a shape problem")
    };
    assert_eq!(path, "payload.rules[1].when.is.fact");
    assert!(detail.contains("expected a string"), "{detail}");
}

#[test]
fn the_demo_comes_back_as_it_was() {
    let program = Program::from_json(demo_json()).unwrap();
    let again = Program::from_json(&program.to_json()).unwrap();
    assert_eq!(program, again);
    assert_eq!(program.to_json(), again.to_json());
}

/// The frozen file of version 1 must be read for ever.
#[test]
fn version_one_is_read() {
    let program = Program::from_json(include_str!("fixtures/program-v1.json")).unwrap();
    assert_eq!(program.id, "fixture");
    assert_eq!(program.rules.len(), 3);
    let checked = check(&program, &Catalog::standard().unwrap());
    let errors: Vec<_> =
        checked.findings.iter().filter(|f| f.severity == guide_data::Severity::Error).collect();
    // The fixture has one slip on purpose: it still loads.
    assert_eq!(errors.len(), 1, "{errors:?}");
    assert_eq!(errors[0].code, "broken-condition");
}

#[test]
fn the_demo_can_be_published() {
    let program = Program::from_json(demo_json()).unwrap();
    let checked = check(&program, &Catalog::standard().unwrap());
    let worse: Vec<_> =
        checked.findings.iter().filter(|f| f.severity != guide_data::Severity::Notice).collect();
    assert!(worse.is_empty(), "{worse:#?}");
    assert!(checked.guide.items.len() >= 120);
}

#[test]
fn ten_thousand_rules_are_bounded_work() {
    let mut program = Program::from_json(demo_json()).unwrap();
    let model = program.rules.last().unwrap().clone();
    for number in 0..10_000 {
        let mut rule = model.clone();
        rule.id = format!("copy-{number}");
        program.rules.push(rule);
    }
    let checked = check(&program, &Catalog::standard().unwrap());
    assert!(!checked.guide.items.is_empty());
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]
    /// Any damage to a file is either noticed or harmless; nothing panics, neither reading nor
    /// checking what was read.
    #[test]
    fn damaged_files_never_panic(at in 0..20_000_usize, byte in any::<u8>(), cut in any::<bool>()) {
        let mut bytes = demo_json().as_bytes()[..20_000].to_vec();
        if cut { bytes.truncate(at) } else { bytes[at] = byte }
        let _ = Program::from_json(&String::from_utf8_lossy(&bytes));
    }

    #[test]
    fn any_text_is_taken_or_refused(text in "\\PC{0,200}") {
        let _ = Program::from_json(&text);
        let _ = guide_data::fold(&text);
    }
}
