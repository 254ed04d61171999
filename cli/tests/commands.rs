//! The commands on the demo program, and the exit codes that scripts rely on.

#![allow(clippy::unwrap_used, clippy::panic, clippy::indexing_slicing, reason = "tests")]

mod common;

use std::process::Command;

use common::{Bench, lidleaf};
use lidleaf::Exit;
use serde_json::json;

#[test]
fn the_program_itself_ends_with_the_documented_codes() {
    let bench = Bench::new();
    let broken = bench.changed("broken.json", |program| program["streams"][0]["kind"] = json!("sea"));
    let demo = bench.at("demo.json");
    let blocked = bench.at("no/such/folder/schema.json");
    for (code, words) in [
        (0, vec!["check", &demo]),
        (0, vec!["--version"]),
        (0, vec![]),
        (1, vec!["check", &broken]),
        (2, vec!["chekc", &demo]),
        (2, vec!["check", &demo, "--lang", "tlh"]),
        (3, vec!["check", "nothing.json"]),
        (4, vec!["schema", "--out", &blocked]),
        (5, vec!["answer", &demo, "qqqqqqqq"]),
        (5, vec!["demo", "--town", "nowhere"]),
    ] {
        let run = Command::new(env!("CARGO_BIN_EXE_lidleaf")).args(&words).output().unwrap();
        assert_eq!(run.status.code(), Some(code), "{words:?}");
        assert_eq!(code > 1, !run.stderr.is_empty(), "{words:?}: a failure is told on the error stream");
    }
}

#[test]
fn help_names_every_command_and_code_in_every_language() {
    for tag in ["en", "es", "ar"] {
        let help = lidleaf(["--help", "--lang", tag]).expect(Exit::Done).out;
        for word in ["check", "answer", "print", "publish", "serve", "compare", "demo", "schema"] {
            assert!(help.contains(&format!("\n  {word} ")), "{tag}: {word}\n{help}");
            let own = lidleaf(["help", word, "--lang", tag]).expect(Exit::Done).out;
            assert!(own.contains(&format!("lidleaf {word}")), "{tag}: {own}");
        }
        for exit in [Exit::Done, Exit::Errors, Exit::Usage, Exit::Unreadable, Exit::Blocked, Exit::NotFound] {
            assert!(help.contains(&format!("\n  {}  ", exit.code())), "{tag}: {exit:?}\n{help}");
        }
    }
}

#[test]
fn the_demo_has_no_errors_and_comes_back_as_it_is() {
    let bench = Bench::new();
    let told = lidleaf(["check", &bench.at("demo.json"), "--json"]).expect(Exit::Done).json();
    assert_eq!((&told["errors"], &told["publishable"]), (&json!(0), &json!(true)), "{told}");
    assert_eq!(lidleaf(["demo"]).expect(Exit::Done).out, guide_data::demo_json());
    lidleaf(["demo", "--out", &bench.at("copy.json")]).expect(Exit::Done);
    assert_eq!(std::fs::read_to_string(bench.path("copy.json")).unwrap(), guide_data::demo_json());
}

#[test]
fn a_numbered_fix_is_taken_into_a_new_file() {
    let bench = Bench::new();
    let broken = bench.changed("broken.json", |program| program["streams"][0]["kind"] = json!("recyling"));
    let before = std::fs::read(bench.path("broken.json")).unwrap();
    let told = lidleaf(["check", &broken, "--json"]).expect(Exit::Errors).json();
    let first = &told["findings"][0];
    assert_eq!(first["fixes"][0]["edit"], "replace");
    assert_eq!(first["fixes"][0]["with"], "recycling");
    assert_eq!(first["mend"][0]["number"], "1.1");
    let words = first["mend"][0]["message"].as_str().unwrap();
    let human = lidleaf(["check", &broken]).expect(Exit::Errors).out;
    assert!(human.contains(&format!("(1.1): {words}")), "{human}");

    let mended = bench.at("mended.json");
    let out = lidleaf(["check", &broken, "--fix", "1.1", "--out", &mended]).expect(Exit::Done).out;
    assert!(out.contains(words) && out.contains(&mended), "{out}");
    assert_eq!(std::fs::read(bench.path("broken.json")).unwrap(), before, "what was read stays");
    // The demo's own stream kind was the one meant: only the slip is gone.
    let (demo, mended) = (bench.at("demo.json"), bench.path("mended.json"));
    let read = |path: &std::path::Path| {
        guide_data::Program::from_json(&std::fs::read_to_string(path).unwrap()).unwrap()
    };
    assert_eq!(read(&mended), read(std::path::Path::new(&demo)));

    let none = bench.at("none.json");
    for number in ["1.2", "99.1"] {
        let refused = lidleaf(["check", &broken, "--fix", number, "--out", &none]).expect(Exit::NotFound);
        assert!(refused.err.contains(number), "{}", refused.err);
    }
    assert!(!bench.path("none.json").exists());
}

#[test]
fn the_schema_is_of_program_files() {
    let schema = lidleaf(["schema"]).expect(Exit::Done).json();
    assert_eq!(schema["$schema"], "https://json-schema.org/draft/2020-12/schema");
    assert!(schema["properties"]["payload"].is_object());
}

#[test]
fn an_item_is_found_by_id_by_name_and_misspelled_in_each_language() {
    let demo = Bench::new();
    let file = demo.at("demo.json");
    for (tag, typed) in [
        ("en", "pizza-box"),
        ("en", "Pizza box"),
        ("en", "piza bx"),
        ("es", "caja de piza"),
        ("ar", "علبه بيتزا"),
    ] {
        let told = lidleaf(["answer", &file, typed, "--lang", tag, "--json"]).expect(Exit::Done).json();
        assert_eq!(told["item"], "pizza-box", "{tag} {typed}");
    }
    let lost = lidleaf(["answer", &file, "qqqqqqqq"]).expect(Exit::NotFound);
    assert!(lost.err.contains("“qqqqqqqq”"), "{}", lost.err);
}

/// Every option that a question shows is taken, and leads on, until there is an answer.
#[test]
fn questions_are_answered_with_the_options_they_show() {
    let bench = Bench::new();
    let file = bench.at("demo.json");
    let mut asked = 0;
    let mut measured = 0;
    for item in
        ["pizza-box", "plastic-lid", "shredded-paper", "glass-bottle", "tire", "cooking-oil", "plant-pot"]
    {
        let mut open = vec![Vec::<String>::new()];
        let mut rounds = 0;
        while let Some(facts) = open.pop() {
            rounds += 1;
            assert!(rounds < 200, "{item}: the questions do not end");
            let mut words = vec!["answer".to_owned(), file.clone(), item.to_owned(), "--json".to_owned()];
            for fact in &facts {
                words.extend(["--fact".to_owned(), fact.clone()]);
            }
            let told = lidleaf(words).expect(Exit::Done).json();
            if told["question"].is_null() {
                assert!(!told["words"][0]["verdict"].as_str().unwrap().is_empty(), "{told}");
                continue;
            }
            asked += 1;
            for option in told["question"]["options"].as_array().unwrap() {
                let option = option["option"].as_str().unwrap().strip_prefix("--fact ").unwrap();
                let fact = option.trim_matches('"').to_owned();
                assert!(!fact.ends_with('='), "{item}: {option}");
                measured += usize::from(fact.contains(' '));
                open.push(facts.iter().cloned().chain([fact]).collect());
            }
        }
    }
    assert!(asked > 7 && measured > 2, "too few questions to show anything: {asked}, {measured}");
}

#[test]
fn facts_zones_and_values_that_do_not_exist_are_named_with_those_that_do() {
    let bench = Bench::new();
    let file = bench.at("demo.json");
    for (words, found) in [
        (["--fact", "smell=bad"], ["“smell”", "soiling"]),
        (["--fact", "soiling=muddy"], ["“muddy”", "grease"]),
        (["--fact", "longest-side=2"], ["“2”", "2 in"]),
        (["--zone", "atlantis"], ["“atlantis”", "fernlow"]),
    ] {
        let ran = lidleaf(["answer", &file, "pizza-box", words[0], words[1]]).expect(Exit::NotFound);
        for word in found {
            assert!(ran.err.contains(word), "“{word}” is not in: {}", ran.err);
        }
    }
}

#[test]
fn an_answer_is_in_the_words_of_each_language() {
    let bench = Bench::new();
    let file = bench.at("demo.json");
    let mut seen = std::collections::BTreeSet::new();
    for tag in ["en", "es", "ar"] {
        let text = lidleaf(["answer", &file, "needles", "--lang", tag]).expect(Exit::Done).out;
        for key in ["verdict-", "caution-", "prep-", "reason-", "cli-"] {
            assert!(!text.contains(key), "{tag}: {text}");
        }
        assert!(seen.insert(text), "{tag} is in another language");
    }
}

#[test]
fn comparing_names_what_changes_and_only_that() {
    let bench = Bench::new();
    let demo = bench.at("demo.json");
    let same = lidleaf(["compare", &demo, &demo, "--json"]).expect(Exit::Done).json();
    assert_eq!(same["changes"], json!([]));
    let after = bench.changed("after.json", |program| {
        program["rules"].as_array_mut().unwrap().push(json!({
            "id": "no-more-cartons", "tier": "program", "verdict": "no", "temporary": true,
            "when": { "is": { "fact": "item", "of": ["milk-carton"] } },
            "provenance": { "decided-by": "x", "source": "y", "confirmed": "2027-01-01" },
        }));
    });
    let told = lidleaf(["compare", &demo, &after, "--json"]).expect(Exit::Done).json();
    let changes = told["changes"].as_array().unwrap();
    assert!(!changes.is_empty() && changes.iter().all(|change| change["item"] == "milk-carton"), "{told}");
    let human = lidleaf(["compare", &demo, &after]).expect(Exit::Done).out;
    assert!(human.contains("Milk or juice carton: “Yes, Recycling” becomes “No”."), "{human}");
    assert!(!human.contains("compare-") && !human.contains("verdict-"), "{human}");
}

#[test]
fn a_fee_or_a_step_that_is_rewritten_is_told_and_a_mended_translation_is_not() {
    let bench = Bench::new();
    let demo = bench.at("demo.json");
    let after = bench.changed("after.json", |program| {
        program["channels"][6]["fee"]["en"] = json!("$20 for up to three things");
        program["steps"]["carried-whole"]["es"] = json!("Llévelo entero, en su caja.");
        program["plant"]["name"]["en"] = json!("Another plant");
    });
    let told = lidleaf(["compare", &demo, &after, "--json"]).expect(Exit::Done).json();
    assert_eq!(told["changes"], json!([]));
    let reworded = told["reworded"].as_array().unwrap();
    assert_eq!(reworded.len(), 1, "{reworded:?}");
    assert_eq!(reworded[0]["key"], "channel.bulky-pickup.fee");
    for (language, before) in [("en", "Before: “$15"), ("es", "Antes: «$15"), ("ar", "قبل ذلك: «$15")]
    {
        for notice in [&["--notice"][..], &[]] {
            let words = ["compare", &demo, &after, "--language", language];
            let text = lidleaf(words.iter().chain(notice)).expect(Exit::Done).out;
            assert!(text.contains("$20 for up to three things") && text.contains(before), "{text}");
        }
    }
}

/// A rule's own words are the reason an answer gives: rewriting them is told apart from answers that
/// change, with what they explain.
#[test]
fn a_rewritten_reason_is_told_with_what_it_explains() {
    let bench = Bench::new();
    let demo = bench.at("demo.json");
    let written = "What is left inside can hurt the crew.";
    let after = bench.changed("after.json", |program| {
        let rules = program["rules"].as_array_mut().unwrap();
        let rule = rules.iter_mut().find(|rule| rule["id"] == "hazard-residue").unwrap();
        rule["texts"]["residents"]["en"] = json!(written);
    });
    let told = lidleaf(["compare", &demo, &after, "--json"]).expect(Exit::Done).json();
    assert_eq!(told["changes"], json!([]));
    assert_eq!(told["reworded"][0]["key"], "rule.hazard-residue");
    let items = told["reworded"][0]["items"].as_array().unwrap();
    assert!(items.len() > 3, "{items:?}");
    let human = lidleaf(["compare", &demo, &after]).expect(Exit::Done).out;
    assert!(human.contains(written) && human.contains("The reason given with: "), "{human}");
    assert!(human.contains(&format!("and {} more.", items.len() - 3)), "{human}");
}

/// An edition later than the demo: cartons are refused from a day on.
fn later(bench: &Bench) -> String {
    bench.changed("later.json", |program| {
        program["edition"] = json!({ "label": "2027-2", "from": "2027-04-01" });
        program["rules"].as_array_mut().unwrap().push(json!({
            "id": "no-more-bottles", "tier": "program", "verdict": "no", "stream": "refuse",
            "temporary": true, "from": "2027-05-01",
            "when": { "is": { "fact": "item", "of": ["water-bottle"] } },
            "provenance": { "decided-by": "x", "source": "y", "confirmed": "2027-01-01" },
        }));
    })
}

#[test]
fn a_notice_names_both_editions_the_day_and_whom_to_ask_in_every_language() {
    let bench = Bench::new();
    let (demo, later) = (bench.at("demo.json"), later(&bench));
    for (language, edition, day, mark) in [
        ("en", "edition 2027-2 (from April 1, 2027)", "from May 1, 2027", false),
        ("es", "edición 2027-2 (desde el 1 de abril de 2027)", "desde el 1 de mayo de 2027", true),
        ("ar", "الإصدار 2027-2 (ابتداء من 1 أبريل 2027)", "ابتداء من 1 مايو 2027", true),
    ] {
        let words = ["compare", &demo, &later, "--notice", "--language", language];
        let text = lidleaf(words).expect(Exit::Done).out;
        for wanted in [edition, day, "2027-1", "555-0100", "recycling@quillmere.example.org"] {
            assert!(text.contains(wanted), "{wanted} in {text}");
        }
        assert!(!text.contains("notice-") && !text.contains("compare-"), "{text}");
        let last = text.trim_end().lines().last().unwrap();
        assert_eq!(!last.contains("555-0100"), mark, "{text}");
    }
    let file = bench.at("notice.md");
    lidleaf(["compare", &demo, &later, "--notice", "--out", &file]).expect(Exit::Done);
    assert!(std::fs::read_to_string(&file).unwrap().starts_with("# Changes"));
    let told = lidleaf(["compare", &demo, &later, "--notice", "--json"]).expect(Exit::Done).json();
    assert_eq!(told["format"], "lidleaf-notice");
    assert_eq!(told["groups"][0]["kind"], "no-longer-accepted");
    assert_eq!(told["groups"][0]["changes"][0]["item"], "water-bottle");
    // Before the day it is decided for, nothing changes.
    let april = ["compare", &demo, &later, "--on", "2027-04-30", "--json"];
    assert_eq!(lidleaf(april).expect(Exit::Done).json()["changes"], json!([]));
}

#[test]
fn a_sheet_that_was_printed_is_registered_and_its_lines_are_watched() {
    let bench = Bench::new();
    let demo = bench.at("demo.json");
    let out = bench.at("lid.pdf");
    let words = [
        "print",
        &demo,
        "--sheet",
        "lid",
        "--languages",
        "en",
        "--register",
        "--copies",
        "30000",
        "--printed",
        "2027-03-05",
        "--out",
        &out,
        "--json",
    ];
    let told = lidleaf(words).expect(Exit::Done).json();
    assert_eq!(told["registered"], "cart-lid-recycling-2027-1");
    let again = lidleaf(words).expect(Exit::Done).json();
    assert_eq!(again["registered"], "cart-lid-recycling-2027-1-2");
    let program: serde_json::Value = serde_json::from_str(&std::fs::read_to_string(&demo).unwrap()).unwrap();
    let sheet = &program["payload"]["printed"][0];
    assert_eq!((&sheet["copies"], &sheet["printed"]), (&json!(30000), &json!("2027-03-05")));
    let lines = sheet["lines"].as_array().unwrap();
    assert!(lines.iter().any(|l| l["item"] == "water-bottle" && l["verdict"] == "yes"), "{lines:?}");
    assert!(lines.iter().any(|l| l["hazard"] == "battery-lithium"), "{lines:?}");

    // The second edition has no register of its own: the first one's is looked at.
    let later = later(&bench);
    let told = lidleaf(["compare", &demo, &later, "--json"]).expect(Exit::Done).json();
    let untrue = told["untrue"].as_array().unwrap();
    let bottle: Vec<_> = untrue.iter().filter(|u| u["item"] == "water-bottle").collect();
    assert_eq!(bottle.len(), 2, "once for each sheet: {untrue:?}");
    assert!(bottle.iter().all(|u| u["since"] == "2027-05-01" && u["now"]["verdict"] == "no"), "{bottle:?}");
    assert_eq!(untrue.len(), 2, "{untrue:?}");
    let human = lidleaf(["compare", &demo, &later]).expect(Exit::Done).out;
    assert!(human.contains("30,000 copies): untrue from May 1, 2027."), "{human}");
}

#[test]
fn a_region_is_told_what_is_true_everywhere_and_who_differs() {
    let bench = Bench::new();
    let (demo, later) = (bench.at("demo.json"), later(&bench));
    let other = bench.changed("other.json", |program| {
        program["name"]["en"] = json!("Marrowfield");
        for rule in program["rules"].as_array_mut().unwrap() {
            if rule["id"] == "caps-stay" {
                rule["prepare"] = json!(["cap-off"]);
            }
        }
    });
    let told = lidleaf(["compare", &demo, &later, &other, "--json"]).expect(Exit::Done).json();
    assert_eq!(told["format"], "lidleaf-regional");
    assert_eq!(told["programs"].as_array().unwrap().len(), 3);
    let contradictory = told["contradictory"].as_array().unwrap();
    assert!(!contradictory.is_empty() && contradictory.iter().all(|c| c["step"] == "cap-on"), "{told}");
    assert!(told["agreed"].as_array().unwrap().iter().any(|a| a["item"] == "newspaper"), "{told}");
    for language in ["en", "es", "ar"] {
        let human = lidleaf(["compare", &demo, &later, &other, "--lang", language]).expect(Exit::Done).out;
        for key in ["regional-", "compare-", "stream-kind-", "prep-", "value-", "fact-"] {
            assert!(!human.contains(key), "{key} in {human}");
        }
    }
}

#[test]
fn a_failure_is_json_when_json_was_asked_for() {
    let told = lidleaf(["check", "nothing.json", "--json"]).expect(Exit::Unreadable).json();
    assert_eq!(told["error"]["code"], "cli-file-missing");
    assert_eq!(told["error"]["args"]["file"], "nothing.json");
    assert!(told["error"]["message"].as_str().unwrap().contains("nothing.json"));
}
