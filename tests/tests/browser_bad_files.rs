//! Files that are not what they should be: each is answered with what, where and what to do; the
//! current program stays as it was; nothing of a file is ever taken for markup.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

use std::path::{Path, PathBuf};

use lidleaf_tests::{Browser, DESK, Server, demo};
use serde_json::{Value, json};

/// The demo's file with something changed in it.
fn with(change: impl FnOnce(&mut Value)) -> Vec<u8> {
    let mut file: Value = serde_json::from_str(&demo().to_json()).unwrap();
    change(&mut file);
    file["payload"]["name"]["en"] = json!("Otherplace");
    serde_json::to_vec_pretty(&file).unwrap()
}

fn rule<'f>(file: &'f mut Value, id: &str) -> &'f mut Value {
    let rules = file["payload"]["rules"].as_array_mut().unwrap();
    rules.iter_mut().find(|rule| rule["id"] == id).unwrap()
}

fn write(folder: &Path, name: &str, bytes: &[u8]) -> PathBuf {
    let path = folder.join(name);
    std::fs::write(&path, bytes).unwrap();
    path
}

/// Opens the demo, marks it with an edit, and goes to where files are imported.
fn at_the_desk(server: &Server) -> Browser {
    let browser = Browser::start(DESK);
    browser.go(&server.url("coordinator.html"));
    browser.click("#open-demo");
    browser.see("#program-screen");
    browser.write("[id=\"f-contact.phone\"]", "555-0181");
    browser.see("#save-status[data-state=saved]");
    browser.fragment("#/files");
    browser.see("#files-screen");
    browser
}

fn import(browser: &Browser, file: &Path) {
    browser.keys("#import-file", file.to_str().unwrap());
}

#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn a_file_that_cannot_be_read_changes_nothing() {
    let server = Server::site();
    let folder = tempfile::tempdir().unwrap();
    let mut browser = at_the_desk(&server);
    let name = browser.text("#draft-name");
    let whole = demo().to_json();
    let cut: String = whole.chars().take(whole.chars().count() / 2).collect();
    let lines = cut.lines().count();
    for (file, bytes, parts) in [
        ("cut.json", cut.clone().into_bytes(), vec!["ends too early".to_owned(), format!("line {lines}")]),
        ("newer.json", with(|f| f["version"] = json!(7)), vec!["version 7".to_owned(), "newer".to_owned()]),
        (
            "other.json",
            br#"{"format":"geo-things","version":1,"payload":{}}"#.to_vec(),
            vec!["geo-things".to_owned()],
        ),
        ("list.json", b"[1, 2, 3]".to_vec(), vec!["not a program file".to_owned()]),
        ("prose.json", b"Dear county,\nhere is our list".to_vec(), vec!["line 1".to_owned()]),
        ("empty.json", Vec::new(), vec!["line".to_owned()]),
        ("picture.json", vec![0x89, 0x50, 0x4e, 0x47, 0xff, 0xfe, 0x00, 0x80], vec!["line 1".to_owned()]),
        ("shape.json", with(|f| f["payload"]["rules"] = json!("none")), vec!["rules".to_owned()]),
        ("big.json", vec![b' '; 17_000_000], vec!["17 MB".to_owned(), "16 MB".to_owned()]),
        ("huge.json", vec![b' '; 50_000_000], vec!["50 MB".to_owned()]),
        (
            "<img src=x onerror=document.title='owned'>.json",
            br#"{"format":"<img src=x onerror=document.title='owned'>","version":1}"#.to_vec(),
            vec!["<img src=x".to_owned()],
        ),
    ] {
        let path = write(folder.path(), file, &bytes);
        import(&browser, &path);
        browser.see_text("#import-problem", file);
        let said = browser.text("#import-problem");
        for part in parts {
            assert!(said.contains(&part), "{file}: \"{part}\" is not in: {said}");
        }
        assert!(said.contains("as they were"), "{file}: {said}");
        assert!(!browser.has("#import-problem img"), "{file} was taken for markup");
        assert_eq!(browser.text("#draft-name"), name, "{file}");
        assert_eq!(browser.count("#drafts > li"), 1, "{file}");
    }
    assert_ne!(browser.run("return document.title", &[]), "owned");
    // What could be read is handed back as it was.
    import(&browser, &write(folder.path(), "cut.json", cut.as_bytes()));
    browser.see_text("#import-problem", "cut.json");
    browser.keep_downloads();
    browser.click("#import-original");
    let (handed, bytes) = browser.handed_out();
    assert_eq!((handed.as_str(), bytes), ("cut.json", cut.into_bytes()));

    browser.fragment("#/program");
    assert_eq!(browser.value("[id=\"f-contact.phone\"]"), "555-0181");
    browser.assert_calm();
}

#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn a_program_with_errors_opens_beside_the_others_and_shows_them() {
    let server = Server::site();
    let folder = tempfile::tempdir().unwrap();
    let mut browser = at_the_desk(&server);
    let markup = "<img src=x onerror=\"document.title='owned'\"><script>document.title='owned'</script>";
    let hidden = "Cans \u{202e}and\u{2066} jars";
    let mut opened = 1;
    for (file, bytes, code, part) in [
        (
            "unknown-fact.json",
            with(|f| rule(f, "cartons")["when"] = json!({ "is": { "fact": "sparkle", "of": ["yes"] } })),
            "broken-condition",
            "sparkle",
        ),
        (
            "twice.json",
            with(|f| {
                let again = rule(f, "cartons").clone();
                f["payload"]["rules"].as_array_mut().unwrap().push(again);
            }),
            "duplicate-id",
            "cartons",
        ),
        (
            "circle.json",
            with(|f| {
                rule(f, "cartons")["overrides"] = json!(["foam"]);
                rule(f, "foam")["overrides"] = json!(["cartons"]);
            }),
            "circular-override",
            "foam",
        ),
        (
            "no-unit.json",
            with(|f| {
                rule(f, "cartons")["when"] = json!({ "measure": { "fact": "middle-side", "under": "2" } });
            }),
            "broken-condition",
            "has no unit",
        ),
        (
            "markup.json",
            with(|f| rule(f, "cartons")["texts"]["residents"]["en"] = json!(markup)),
            "suspicious-text",
            "<img",
        ),
        (
            "hidden.json",
            with(|f| rule(f, "cartons")["texts"]["residents"]["en"] = json!(hidden)),
            "suspicious-text",
            "",
        ),
    ] {
        let path = write(folder.path(), file, &bytes);
        browser.fragment("#/files");
        browser.see("#files-screen");
        import(&browser, &path);
        browser.see_text("#draft-name", "Otherplace");
        opened += 1;
        let finding = format!(".finding[data-code={code}]");
        browser.see(&finding);
        let said = browser.texts(&finding).join("\n");
        assert!(said.contains(part), "{file}: \"{part}\" is not in: {said}");
        assert!(
            !said.contains(['\u{202e}', '\u{2066}']),
            "{file}: the hidden character is shown raw: {said}"
        );
        // Everywhere the text is shown it is text.
        browser.fragment("#/rules/cartons");
        browser.see("#rules-editor .fields");
        if browser.has("#ask #back") {
            browser.click("#ask #back");
        }
        browser.write("#ask #search", "milk carton");
        browser.click("#ask #results li:first-child a");
        browser.see("#ask .verdict, #ask #question");
        if file == "markup.json" {
            browser.see_text("#ask .why", "<img src=x");
        }
        let strange = "img[src=x], #app script, .findings img:not([src^=blob])";
        assert_eq!(browser.count(strange), 0, "{file} was taken for markup");
        assert_ne!(browser.run("return document.title", &[]), "owned", "{file}");
        // One program more, and the one before is still there.
        browser.fragment("#/files");
        browser.wait(
            "the programs' list",
            &format!("document.querySelectorAll('#drafts > li').length === {opened}"),
        );
        browser.click("#drafts > li:last-child .list-entry");
        browser.see("#program-screen");
        browser.wait(
            "the first program",
            "document.querySelector('#draft-name').innerText.includes('Quillmere')",
        );
        assert_eq!(browser.value("[id=\"f-contact.phone\"]"), "555-0181", "{file}");
    }
    browser.assert_calm();
}
