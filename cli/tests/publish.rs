//! The published folder: complete, listed, the same every time, and never half of one.

#![allow(clippy::unwrap_used, clippy::panic, clippy::indexing_slicing, reason = "tests")]

mod common;

use std::collections::BTreeMap;
use std::fs;

use common::{Bench, lidleaf, sha256, tree};
use lidleaf::Exit;
use serde_json::Value;

fn publish(bench: &Bench, program: &str, out: &str) -> BTreeMap<String, Vec<u8>> {
    let app = bench.app();
    lidleaf(["publish", &bench.at(program), "--app", &app, "--out", &bench.at(out)]).expect(Exit::Done);
    tree(&bench.path(out))
}

fn json(files: &BTreeMap<String, Vec<u8>>, path: &str) -> Value {
    serde_json::from_slice(&files[path]).unwrap_or_else(|error| panic!("{path}: {error}"))
}

#[test]
fn every_file_is_listed_with_its_hash_and_nothing_else_is() {
    let bench = Bench::new();
    let files = publish(&bench, "demo.json", "site");
    let list = json(&files, "files.json");
    assert_eq!(list["format"], "lidleaf-files");
    let mut listed = BTreeMap::new();
    for file in list["files"].as_array().unwrap() {
        let path = file["path"].as_str().unwrap();
        let bytes = files.get(path).unwrap_or_else(|| panic!("{path} is listed and not there"));
        assert_eq!(file["sha256"], sha256(bytes), "{path}");
        assert_eq!(file["bytes"], bytes.len(), "{path}");
        assert!(listed.insert(path, file["group"].as_str().unwrap()).is_none(), "{path} twice");
    }
    for path in files.keys().filter(|path| *path != "files.json") {
        assert!(listed.contains_key(path.as_str()), "{path} is there and not listed");
    }
    for (path, group) in [
        ("index.html", "resident"),
        ("pkg/resident_bg.wasm", "resident"),
        ("data/guide.txt", "resident"),
        ("data/lang/ar.txt", "resident"),
        ("data/words/ar.txt", "resident"),
        ("desk.css", "coordinator"),
        ("coordinator-start.js", "coordinator"),
        ("pkg/coordinator.js", "coordinator"),
        ("data/coordinator-es.json", "coordinator"),
        ("data/program.json", "coordinator"),
        ("data/catalog.json", "coordinator"),
        ("pkg/print_worker_bg.wasm", "print"),
        ("fonts/NotoSans-Regular.ttf", "print"),
        ("fonts/NotoSansArabic-Regular.ttf", "script"),
    ] {
        assert_eq!(listed.get(path), Some(&group), "{path}");
    }
    assert!(!files.contains_key("locales/en/resident.ftl"), "the packs carry the messages");
}

#[test]
fn the_same_program_makes_the_same_bytes_and_another_one_another_version() {
    let bench = Bench::new();
    let first = publish(&bench, "demo.json", "one");
    let second = publish(&bench, "demo.json", "two");
    assert_eq!(first, second);
    bench.changed("later.json", |program| program["edition"]["label"] = "later".into());
    let later = publish(&bench, "later.json", "one");
    assert_ne!(json(&first, "files.json")["version"], json(&later, "files.json")["version"]);
}

#[test]
fn the_guide_and_its_words_can_be_read_back() {
    let bench = Bench::new();
    let files = publish(&bench, "demo.json", "site");
    let guide = guide_data::Guide::from_bytes(&files["data/guide.txt"]).unwrap();
    assert!(guide.items.len() >= 120);
    let program = guide_data::Program::from_json(guide_data::demo_json()).unwrap();
    let stored = guide_data::Program::from_json(std::str::from_utf8(&files["data/program.json"]).unwrap());
    assert_eq!(stored.unwrap(), program);
    // Sites whose hours are stated have a table of them; a guide without would say "unknown" everywhere.
    let day = chrono::NaiveDate::from_ymd_opt(2027, 3, 3).unwrap();
    for (site, stated) in guide.sites.iter().zip(&program.sites) {
        let known = site.hours.at(day, 12 * 60) != guide_data::OpenState::Unknown;
        assert_eq!(known, !stated.hours.is_empty(), "{}", site.id);
    }
    for tag in &program.languages {
        let bytes = &files[&format!("data/lang/{tag}.txt")];
        let guide_data::PackedWords { pack, messages } =
            guide_data::PackedWords::from_bytes(bytes, &guide).unwrap();
        assert_eq!(&pack.language, tag);
        assert_eq!(pack.direction, if tag == "ar" { "rtl" } else { "ltr" });
        assert_eq!(pack.unreviewed, tag != "en", "{tag}");
        for item in &guide.items {
            let names = pack.names.get(&item.id).map(Vec::as_slice).unwrap_or_default();
            assert!(names.first().is_some_and(|name| !name.is_empty()), "{tag}: {} has no name", item.id);
        }
        let all = guide.search_words(&files[&format!("data/words/{tag}.txt")]).unwrap();
        let others = all.values().filter(|names| names.len() > 1).count();
        assert!(others * 10 > guide.items.len() * 9, "{tag}: {others} items have other words");
        assert_eq!(all.len(), guide.items.len(), "{tag}: every item is found by its name");
        assert!(pack.names.values().all(|names| names.len() == 1), "{tag}: other words come apart");
        let messages = locales::Messages::from_packed(tag.parse().unwrap(), &messages).unwrap();
        assert!(messages.has("verdict-yes") && messages.has("ask-soiling"), "{tag}");
        assert!(!messages.has("cli-help") && !messages.has("item-pizza-box"), "{tag}: too much for a phone");
        let missing: Vec<String> = missing(&guide, &pack, &messages).into_iter().collect();
        assert!(missing.is_empty(), "{tag}: a phone comes to say {missing:?} and has not got it");
    }
    let page = std::str::from_utf8(&files["index.html"]).unwrap();
    let label = locales::bundled(&locales::Lang::default()).t("search-label", &locales::args!());
    for part in [program.name.get("en").unwrap(), &label] {
        assert!(page.contains(part), "the page says \"{part}\" before its program is there");
    }
    let manifest = json(&files, "manifest.webmanifest");
    assert_eq!(manifest["name"].as_str(), program.name.get("en"));
    assert_eq!((&manifest["lang"], &manifest["dir"]), (&"en".into(), &"ltr".into()));
    assert_eq!(manifest["start_url"], "./");
}

/// The words that some question or answer of the guide needs and a phone was not sent.
fn missing(
    guide: &guide_data::Guide,
    pack: &guide_data::LanguagePack,
    messages: &locales::Messages,
) -> Vec<String> {
    let mut missing = Vec::new();
    let mut need = |key: String| {
        let said = messages.t(&key, &locales::args!());
        // A reference to what was not sent shows as its key in braces.
        if !messages.has(&key) || said.contains("{-") || said.contains("{caution") {
            missing.push(key);
        }
    };
    for outcome in &guide.outcomes {
        need(format!("verdict-{}", outcome.verdict.code()));
        outcome.hazard.iter().for_each(|class| need(format!("caution-{class}")));
        outcome.tier.iter().for_each(|tier| need(format!("tier-{}", tier.code())));
        for step in outcome.steps.iter().filter(|step| !pack.texts.contains_key(&format!("step.{step}"))) {
            need(format!("prep-{step}"));
        }
        let told = outcome.rules.first().is_some_and(|rule| pack.texts.contains_key(&format!("rule.{rule}")));
        outcome.reason.iter().filter(|_| !told).for_each(|reason| need(format!("reason-{reason}")));
    }
    for item in 0..guide.items.len() {
        let mut open = vec![guide_data::Known::default()];
        while let Some(known) = open.pop() {
            match guide.next(item, &known) {
                Some(guide_data::Step::Ask(question)) => {
                    let fact = &question.fact;
                    need(format!("ask-{fact}"));
                    need(format!("fact-{fact}"));
                    for choice in &question.options {
                        match &choice.label {
                            guide_data::ValueLabel::Value(_) if fact == "zone" => {}
                            guide_data::ValueLabel::Value(value) => need(format!("value-{fact}-{value}")),
                            guide_data::ValueLabel::Range(ends) => {
                                for aside in [&ends.low, &ends.high] {
                                    aside.like.iter().for_each(|like| need(format!("like-{like}")));
                                    aside.per.iter().for_each(|per| need(format!("per-{per}")));
                                }
                            }
                        }
                        open.push(known.clone().with(fact, choice.given.clone()));
                    }
                    open.push(known.with(fact, guide_data::Given::CannotTell));
                }
                Some(guide_data::Step::Answer(answer)) => {
                    answer
                        .parts
                        .iter()
                        .filter_map(|p| p.part.as_ref())
                        .for_each(|p| need(format!("part-{p}")));
                }
                None => panic!("item {item} has neither question nor answer"),
            }
        }
    }
    missing
}

#[test]
fn no_address_in_the_data_is_tied_to_a_host_s_root() {
    let bench = Bench::new();
    let files = publish(&bench, "demo.json", "site");
    let list = json(&files, "files.json");
    for file in list["files"].as_array().unwrap() {
        let path = file["path"].as_str().unwrap();
        assert!(!path.starts_with('/') && !path.contains(".."), "{path}");
    }
}

#[test]
fn an_app_that_is_not_as_it_was_built_is_refused() {
    let bench = Bench::new();
    let (app, site) = (bench.app(), bench.at("site"));
    let demo = bench.at("demo.json");
    let words = ["publish", &demo, "--app", &app, "--out", &site];
    bench.write("app/pkg/resident.js", "export default 'changed';");
    let ran = lidleaf(words).expect(Exit::Unreadable);
    assert!(ran.err.contains("resident.js"), "{}", ran.err);
    bench.app();
    bench.write("app/left-over.txt", "from another build");
    let ran = lidleaf(words).expect(Exit::Unreadable);
    assert!(ran.err.contains("left-over.txt"), "{}", ran.err);
    fs::remove_file(bench.path("app/left-over.txt")).unwrap();
    fs::remove_file(bench.path("app/sw.js")).unwrap();
    let ran = lidleaf(words).expect(Exit::Unreadable);
    assert!(ran.err.contains("sw.js"), "{}", ran.err);
    fs::remove_file(bench.path("app/app-files.json")).unwrap();
    lidleaf(words).expect(Exit::Unreadable);
    assert!(!bench.path("site").exists());
}

#[test]
fn folders_that_are_not_ours_are_left_alone() {
    let bench = Bench::new();
    let (app, demo) = (bench.app(), bench.at("demo.json"));
    bench.write("mine/thesis.txt", "three years");
    for out in [bench.at("mine"), bench.at("app"), bench.at("app/site"), bench.at(""), demo.clone()] {
        let before = tree(&bench.path(""));
        lidleaf(["publish", &demo, "--app", &app, "--out", &out]).expect(Exit::Blocked);
        assert_eq!(tree(&bench.path("")), before, "{out}");
    }
}

#[test]
fn without_a_program_it_is_the_demo() {
    let bench = Bench::new();
    let app = bench.app();
    lidleaf(["publish", "--app", &app, "--out", &bench.at("site")]).expect(Exit::Done);
    assert_eq!(tree(&bench.path("site")), publish(&bench, "demo.json", "other"));
}
