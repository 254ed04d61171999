//! Every kind of bad input: what is said, where, what to do, and that nothing is changed by it.

#![allow(clippy::unwrap_used, clippy::panic, clippy::indexing_slicing, reason = "tests")]

mod common;

use common::{Bench, lidleaf, tree};
use lidleaf::Exit;
use serde_json::{Value, json};

/// A program that cannot be read: exit code 3, the file named, the words found, and nothing published.
fn unreadable(bench: &Bench, file: &str, words: &[&str]) {
    for command in [vec!["check", file], vec!["answer", file, "pizza-box"]] {
        let ran = lidleaf(command).expect(Exit::Unreadable);
        assert!(ran.out.is_empty(), "{}", ran.out);
        let name = file.rsplit('/').next().unwrap();
        for word in words.iter().chain([&name]) {
            assert!(ran.err.contains(word), "“{word}” is not in: {}", ran.err);
        }
        let told = ran.err.trim_end();
        assert!(told.starts_with("Error: ") && !told.contains("load-") && !told.contains("cli-"), "{told}");
    }
    let (app, site) = (bench.app(), bench.at("site"));
    lidleaf(["publish", &bench.at("demo.json"), "--app", &app, "--out", &site]).expect(Exit::Done);
    let before = tree(&bench.path("site"));
    lidleaf(["publish", file, "--app", &app, "--out", &site]).expect(Exit::Unreadable);
    assert_eq!(tree(&bench.path("site")), before);
}

#[test]
fn a_file_cut_short() {
    let bench = Bench::new();
    let demo = guide_data::demo_json();
    let cut: String = demo.chars().take(demo.chars().count() / 2).collect();
    let line = cut.lines().count().to_string();
    unreadable(&bench, &bench.write("cut.json", &cut), &["too early", &line]);
    unreadable(&bench, &bench.write("empty.json", ""), &["too early"]);
}

#[test]
fn a_file_of_a_newer_version() {
    let bench = Bench::new();
    let file = json!({ "format": "lidleaf-program", "version": 99, "payload": { "from-the": "future" } });
    unreadable(&bench, &bench.write("newer.json", file.to_string()), &["99", "newer"]);
}

#[test]
fn a_file_of_another_format() {
    let bench = Bench::new();
    let file = json!({ "format": "somebody-s-spreadsheet", "version": 1, "payload": {} });
    unreadable(&bench, &bench.write("other.json", file.to_string()), &["somebody-s-spreadsheet"]);
    unreadable(&bench, &bench.write("list.json", "[1, 2, 3]"), &["not a program file"]);
}

#[test]
fn a_file_that_is_not_json_or_not_text() {
    let bench = Bench::new();
    unreadable(&bench, &bench.write("page.json", "{\n  oops }"), &["line 2"]);
    unreadable(&bench, &bench.write("picture.json", b"\x89PNG\n\xff\xfe"), &["not text", "line 1"]);
}

#[test]
fn a_file_far_too_large() {
    let bench = Bench::new();
    unreadable(&bench, &bench.write("large.json", vec![b' '; 17_000_000]), &["17", "16"]);
}

#[test]
fn a_value_of_the_wrong_kind_is_named_by_its_path() {
    let bench = Bench::new();
    let file = bench.changed("shape.json", |program| program["rules"][3]["tier"] = json!("supreme"));
    unreadable(&bench, &file, &["rules[3].tier", "supreme"]);
}

#[test]
fn a_condition_nested_too_deep() {
    let bench = Bench::new();
    let file = bench.changed("deep.json", |program| {
        let mut when = json!({ "is": { "fact": "wet", "of": ["yes"] } });
        for _ in 0..30 {
            when = json!({ "not": when });
        }
        program["rules"][0]["when"] = when;
    });
    let rule = bench_rule(&file, 0);
    unreadable(&bench, &file, &[&rule, "24"]);
}

fn bench_rule(file: &str, at: usize) -> String {
    let program: Value = serde_json::from_str(&std::fs::read_to_string(file).unwrap()).unwrap();
    program["payload"]["rules"][at]["id"].as_str().unwrap().to_owned()
}

#[test]
fn a_file_that_is_not_there_and_a_folder() {
    let bench = Bench::new();
    unreadable(&bench, &bench.at("nothing.json"), &["does not exist"]);
    std::fs::create_dir(bench.path("folder")).unwrap();
    unreadable(&bench, &bench.at("folder"), &["is a folder"]);
}

/// A program that loads, with an error in it: exit code 1, one finding at the place, in words and as
/// JSON, and nothing published or printed.
fn found(change: impl FnOnce(&mut Value), code: &str, place: (&str, &str), words: &[&str]) {
    let bench = Bench::new();
    let file = bench.changed("broken.json", change);
    let human = lidleaf(["check", &file]).expect(Exit::Errors);
    for word in words {
        assert!(human.out.contains(word), "“{word}” is not in: {}", human.out);
    }
    assert!(!human.out.contains("finding-"), "{}", human.out);

    let told = lidleaf(["check", &file, "--json"]).expect(Exit::Errors).json();
    assert_eq!(told["publishable"], false);
    let all = told["findings"].as_array().unwrap();
    let errors = all.iter().filter(|finding| finding["severity"] == "error").count();
    assert_eq!(told["errors"], errors);
    let at = |finding: &&Value| {
        finding["severity"] == "error"
            && finding["code"] == code
            && finding["place"]["kind"] == place.0
            && finding["place"]["id"] == place.1
    };
    let one = all.iter().find(at).unwrap_or_else(|| panic!("no {code} at {place:?}: {}", human.out));
    assert!(one["message"].as_str().unwrap().len() > 10 && one["hint"].as_str().unwrap().len() > 5, "{one}");

    let (app, site) = (bench.app(), bench.at("site"));
    lidleaf(["publish", &bench.at("demo.json"), "--app", &app, "--out", &site]).expect(Exit::Done);
    let before = tree(&bench.path("site"));
    let refused = lidleaf(["publish", &file, "--app", &app, "--out", &site]).expect(Exit::Errors);
    assert!(refused.out.contains("was not published"), "{}", refused.out);
    assert_eq!(tree(&bench.path("site")), before);
    let sheet = bench.at("sheet.pdf");
    lidleaf(["print", &file, "--sheet", "lid", "--out", &sheet]).expect(Exit::Errors);
    assert!(!bench.path("sheet.pdf").exists());
}

#[test]
fn an_unknown_fact() {
    found(
        |program| {
            program["rules"][0]["id"] = json!("odd");
            program["rules"][0]["when"] = json!({ "is": { "fact": "smell", "of": ["bad"] } });
        },
        "broken-condition",
        ("rule", "odd"),
        &["smell", "odd"],
    );
}

#[test]
fn a_length_without_a_unit() {
    found(
        |program| {
            program["rules"][0]["id"] = json!("odd");
            program["rules"][0]["when"] = json!({ "measure": { "fact": "longest-side", "under": "2" } });
        },
        "broken-condition",
        ("rule", "odd"),
        &["“2”", "odd"],
    );
}

#[test]
fn an_id_given_twice() {
    found(
        |program| {
            let twin = program["rules"][1].clone();
            program["rules"].as_array_mut().unwrap().push(twin);
            program["rules"][1]["id"] = json!("twin");
            let last = program["rules"].as_array().unwrap().len() - 1;
            program["rules"][last]["id"] = json!("twin");
        },
        "duplicate-id",
        ("rule", "twin"),
        &["twin"],
    );
}

#[test]
fn rules_that_override_each_other_in_a_circle() {
    found(
        |program| {
            let add = |id: &str, over: &str| {
                json!({
                    "id": id, "tier": "program", "verdict": "no",
                    "when": { "is": { "fact": "item", "of": ["pizza-box"] } },
                    "overrides": [over],
                })
            };
            let rules = program["rules"].as_array_mut().unwrap();
            rules.push(add("heads", "tails"));
            rules.push(add("tails", "heads"));
        },
        "circular-override",
        ("rule", "heads"),
        &["heads", "tails"],
    );
}

#[test]
fn marks_that_turn_a_text_around() {
    found(
        |program| program["streams"][0]["name"]["en"] = json!("Recycling\u{202e}gnilcyceR"),
        "suspicious-text",
        ("text", "stream.recycling"),
        &["stream.recycling"],
    );
}

#[test]
fn markup_in_a_text() {
    found(
        |program| program["streams"][0]["name"]["en"] = json!("<img src=x onerror=alert(1)>"),
        "suspicious-text",
        ("text", "stream.recycling"),
        &["stream.recycling"],
    );
}
