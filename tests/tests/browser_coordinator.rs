//! A coordinator at a desk: editing and seeing what follows, undoing, leaving and coming back, two
//! windows, a full disk, a browser that stores nothing, a program that stops, and the press file.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

use lidleaf_tests::{Browser, DESK, Server, sheet_of};
use serde_json::{Value, json};

const SAVED: &str = "#save-status[data-state=saved]";

/// The field of a place: ids hold dots.
fn field(place: &str) -> String {
    format!("[id=\"f-{place}\"]")
}

/// Opens the coordinator's page with the demo on it, kept.
fn open_demo(browser: &Browser, server: &Server) {
    browser.go(&server.url("coordinator.html"));
    browser.click("#open-demo");
    browser.see("#program-screen");
    browser.see(SAVED);
}

/// Goes to a screen and waits for it.
fn screen(browser: &Browser, screen: &str, id: &str) {
    browser.fragment(&format!("#/{screen}/{id}"));
    browser.see(&format!("#{screen}-screen"));
}

/// Asks the panel about an item, as a resident would.
fn ask(browser: &Browser, typed: &str) {
    browser.write("#ask #search", typed);
    browser.click("#ask #results li:first-child a");
    browser.see("#ask .verdict, #ask #question");
}

/// Every program kept in this browser, as JSON.
fn kept(browser: &Browser) -> Vec<Value> {
    let texts = browser.run_later(
        "const done = arguments[arguments.length - 1];
         const opening = indexedDB.open('lidleaf');
         opening.onerror = () => done([]);
         opening.onsuccess = () => {
           const all = opening.result.transaction('drafts').objectStore('drafts').getAll();
           all.onsuccess = () => { opening.result.close(); done(all.result.map((d) => d.json)); };
           all.onerror = () => done([]);
         };",
        &[],
    );
    let texts: Vec<String> = serde_json::from_value(texts).unwrap();
    texts.iter().map(|text| serde_json::from_str(text).unwrap()).collect()
}

fn contact(program: &Value, what: &str) -> String {
    program["payload"]["contact"][what].as_str().unwrap_or_default().to_owned()
}

#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn an_edited_rule_changes_the_residents_answer_at_once_and_undo_takes_it_back() {
    let server = Server::site();
    let mut browser = Browser::start(DESK);
    open_demo(&browser, &server);
    ask(&browser, "milk carton");
    browser.see("#ask .verdict[data-verdict=yes]");
    assert_eq!(browser.count("#changes li"), 0);

    screen(&browser, "rules", "cartons");
    browser.choose(&field("rule.cartons.verdict"), "no");
    browser.choose(&field("rule.cartons.stream"), "refuse");
    browser.see("#ask .verdict[data-verdict=no]");
    browser.see("#ask .destination[data-stream=refuse]");
    browser.see("#changes li[data-id=milk-carton]");
    browser.see("#changes li[data-id=juice-box]");
    let changed = browser.count("#changes li");
    assert!((3..10).contains(&changed), "{changed} items changed");
    browser.see(SAVED);
    // The picture: the rule from its beginning, and beside it what the edit did.
    browser.run("document.querySelector('#changes').scrollIntoView(); scrollTo(0, 0);", &[]);
    browser.screenshot("coordinator");

    browser.click("#undo");
    browser.click("#undo");
    browser.see("#ask .verdict[data-verdict=yes]");
    browser.wait("no changes", "document.querySelectorAll('#changes li').length === 0");
    assert_eq!(browser.value(&field("rule.cartons.verdict")), "yes");
    browser.click("#redo");
    browser.click("#redo");
    browser.see("#ask .verdict[data-verdict=no]");
    browser.see("#changes li[data-id=milk-carton]");
    browser.assert_calm();
}

#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn the_program_is_compared_with_a_file_and_the_notice_is_handed_out() {
    let server = Server::site();
    let mut browser = Browser::start(DESK);
    open_demo(&browser, &server);
    let mut earlier = lidleaf_tests::demo().clone();
    earlier.edition.label = "2026-9".to_owned();
    if let Some(rule) = earlier.rules.iter_mut().find(|rule| rule.id == "cartons") {
        rule.verdict = Some(guide_data::Verdict::No);
        rule.stream = Some("refuse".to_owned());
    }
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("earlier.json");
    std::fs::write(&file, earlier.to_json()).unwrap();
    screen(&browser, "files", "");
    browser.keys("#compare-file", file.to_str().unwrap());
    browser.see_text("#compare-count", "earlier.json");
    let notice = browser.value("#compare-notice");
    assert!(notice.contains("2026-9") && notice.contains("Newly accepted"), "{notice}");
    browser.click("#compare-newer");
    browser.wait(
        "the notice to turn round",
        "document.querySelector('#compare-notice').value.includes('No longer accepted')",
    );
    browser.keep_downloads();
    browser.click("#compare-download");
    let (name, bytes) = browser.handed_out();
    assert_eq!(name, "notice.md");
    assert!(String::from_utf8(bytes).unwrap().starts_with("# "));
    browser.click("#compare-close");
    browser.wait("the notice to go", "!document.querySelector('#compare-notice')");
    browser.assert_calm();
}

#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn a_printed_sheet_is_noted_and_its_lines_are_watched() {
    let server = Server::site();
    let mut browser = Browser::start(DESK);
    open_demo(&browser, &server);
    screen(&browser, "print", "");
    browser.click("#print-make");
    browser.see("#print-status[data-state=done]");
    browser.write("#print-copies", "400");
    browser.click("#print-note");
    browser.see_text("#printed li", "400");
    screen(&browser, "rules", "metal-cans");
    browser.choose(&field("rule.metal-cans.verdict"), "no");
    browser.choose(&field("rule.metal-cans.stream"), "refuse");
    browser.see(".finding[data-code=printed-line-untrue]");
    screen(&browser, "print", "");
    browser.click("#printed li button");
    browser.wait("the finding to go", "!document.querySelector('.finding[data-code=printed-line-untrue]')");
    browser.assert_calm();
}

#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn a_hazard_without_a_safe_channel_is_an_error_that_leads_to_its_place() {
    let server = Server::site();
    let mut browser = Browser::start(DESK);
    open_demo(&browser, &server);
    browser.see("#findings-count.good");
    browser.choose(&field("hazards.battery-lithium.channel"), "");
    browser.see(".finding[data-code=hazard-not-safe][data-severity=error]");
    browser.see_text(".finding[data-code=hazard-not-safe]", "has no channel");
    browser.wait("the count to turn", "!document.querySelector('#findings-count.good')");
    screen(&browser, "rules", "cartons");
    browser.click(".finding[data-code=hazard-not-safe] .finding-go");
    browser.see("#program-screen");
    browser.click("#undo");
    browser.see("#findings-count.good");
    browser.assert_calm();
}

#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn an_item_is_decided_and_the_new_rule_is_asked_for_its_source() {
    let server = Server::site();
    let mut browser = Browser::start(DESK);
    open_demo(&browser, &server);
    screen(&browser, "items", "");
    browser.write("#items-filter", "newspaper");
    browser.click(".item-row[data-id=newspaper] .items-decide");
    browser.see("#rules-screen");
    browser.see_text("#chosen", "decide-newspaper");
    browser.see("#changes li[data-id=newspaper]");
    browser.see(".finding[data-code=missing-provenance]");
    browser.assert_calm();
}

#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn work_survives_closing_the_browser_and_leaving_in_the_middle() {
    let server = Server::site();
    let mut browser = Browser::start(DESK);
    open_demo(&browser, &server);
    browser.write(&field("contact.phone"), "555-0142");
    browser.see(SAVED);
    browser.close_and_reopen();
    browser.go(&server.url("coordinator.html#/program"));
    browser.see("#program-screen");
    assert_eq!(browser.value(&field("contact.phone")), "555-0142");

    // Left before autosave had its moment.
    browser.write(&field("contact.phone"), "555-0143");
    browser.go("about:blank");
    browser.go(&server.url("coordinator.html#/program"));
    browser.see("#program-screen");
    assert_eq!(browser.value(&field("contact.phone")), "555-0143");
    browser.see(SAVED);
    assert_eq!(kept(&browser).len(), 1, "one program, however often it was opened");
    browser.assert_calm();
}

#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn two_windows_on_one_program_lose_nothing_of_each_others_work() {
    let server = Server::site();
    let mut browser = Browser::start(DESK);
    open_demo(&browser, &server);
    let (first, second) = browser.new_tab();
    browser.go(&server.url("coordinator.html#/program"));
    browser.see("#program-screen");

    // One after the other: the second sees what the first saved.
    browser.to_tab(&first);
    browser.write(&field("contact.phone"), "555-0151");
    browser.see(SAVED);
    browser.to_tab(&second);
    let phone = field("contact.phone");
    browser
        .wait("the other window's edit", &format!("document.querySelector('{phone}').value === '555-0151'"));

    // Both at once: neither edit is lost, whether in one program or in two.
    let typed = "const f = document.querySelector(arguments[0]); f.value = arguments[1];
        f.dispatchEvent(new Event('input', { bubbles: true }));";
    browser.run(typed, &[json!(field("contact.email")), json!("second@quillmere.example.org")]);
    browser.to_tab(&first);
    browser.run(typed, &[json!(field("contact.phone")), json!("555-0152")]);
    for tab in [&first, &second] {
        browser.to_tab(tab);
        browser.see(SAVED);
    }
    browser.wait_for("both edits to be kept", || {
        let programs = kept(&browser);
        programs.iter().any(|p| contact(p, "phone") == "555-0152")
            && programs.iter().any(|p| contact(p, "email") == "second@quillmere.example.org")
    });
    // And whoever lost the race is told.
    if kept(&browser).len() > 1 {
        let told = [&first, &second].into_iter().any(|tab| {
            browser.to_tab(tab);
            browser.has("#notice")
        });
        assert!(told, "two versions were kept and nobody was told");
    }
    browser.assert_calm();
}

/// Wherever the page is scrolled to, the element is in view, and nothing lies over it.
fn in_view(browser: &Browser, css: &str) {
    let script = "scrollTo(0, document.body.scrollHeight);
        const e = document.querySelector(arguments[0]), r = e.getBoundingClientRect();
        return e.contains(document.elementFromPoint(r.left + r.width / 2, r.top + r.height / 2))";
    assert_eq!(browser.run(script, &[json!(css)]), true, "{css} is out of view");
}

/// Exports with the button of a banner and reads the file.
fn exported(browser: &Browser, button: &str) -> Value {
    browser.keep_downloads();
    browser.click(button);
    let (name, bytes) = browser.handed_out();
    assert_eq!(name, "quillmere.lidleaf.json");
    serde_json::from_slice(&bytes).unwrap()
}

#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn a_full_disk_is_said_loudly_and_export_still_works() {
    let server = Server::site();
    let mut browser = Browser::start(DESK);
    // Before the page is opened: the browser remembers for a while how much room there was.
    let origin = server.url("");
    let origin = origin.trim_end_matches('/');
    browser.devtools("Storage.overrideQuotaForOrigin", &json!({ "origin": origin, "quotaSize": 1 }));
    browser.go(&server.url("coordinator.html"));
    browser.click("#open-demo");
    browser.see("#program-screen");
    browser.see("#cannot-save");
    browser.see("#save-status[data-state=failed]");
    browser.write(&field("contact.phone"), "555-0161");
    assert!(browser.text("#cannot-save").contains("no room left"), "{}", browser.text("#cannot-save"));
    in_view(&browser, "#cannot-save");
    let program = exported(&browser, "#cannot-save-export");
    assert_eq!(contact(&program, "phone"), "555-0161");
    // Room again: it is kept without the person typing anything anew.
    browser.devtools("Storage.overrideQuotaForOrigin", &json!({ "origin": origin }));
    browser.click("#cannot-save-again");
    browser.see(SAVED);
    browser.wait("the banner to go", "!document.querySelector('#cannot-save')");
    browser.assert_calm();
}

#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn a_browser_that_stores_nothing_says_so_and_works() {
    let server = Server::site();
    let mut browser = Browser::start(DESK);
    // What browsers do whose owner forbids sites to store anything.
    let source = "for (const name of ['indexedDB', 'localStorage', 'sessionStorage']) {
        Object.defineProperty(window, name, {
            get() { throw new DOMException('The user denied permission.', 'SecurityError'); } }); }";
    browser.devtools("Page.addScriptToEvaluateOnNewDocument", &json!({ "source": source }));
    browser.go(&server.url("coordinator.html"));
    browser.click("#open-demo");
    browser.see("#program-screen");
    browser.see("#cannot-save");
    browser.write(&field("contact.phone"), "555-0162");
    let program = exported(&browser, "#cannot-save-export");
    assert_eq!(contact(&program, "phone"), "555-0162");
    // The resident's page works the same, only forgetfully.
    browser.go(&server.url("#/en/item/milk-carton"));
    browser.see("#answer .verdict[data-verdict=yes]");
    browser.choose("#language", "es");
    browser.wait("Spanish", "document.documentElement.lang === 'es'");
    browser.assert_calm();
}

/// A real trap in WebAssembly, which is what a panic is: a module of one function that stops.
const TRAP: &str = "setTimeout(() => new WebAssembly.Instance(new WebAssembly.Module(new Uint8Array([
    0, 97, 115, 109, 1, 0, 0, 0, 1, 4, 1, 96, 0, 0, 3, 2, 1, 0, 7, 5, 1, 1, 102, 0, 0, 10, 5, 1, 3, 0, 0, 11
]))).exports.f());";

#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn a_program_that_stops_shows_a_way_out_with_the_autosaved_work() {
    let server = Server::site();
    let browser = Browser::start(DESK);
    open_demo(&browser, &server);
    browser.write(&field("contact.phone"), "555-0171");
    browser.see(SAVED);
    browser.run(TRAP, &[]);
    browser.see("#recover");
    browser.wait("the focus on the way out", "document.activeElement?.closest('#recover')");
    let program = exported(&browser, "#recover-download");
    assert_eq!(contact(&program, "phone"), "555-0171");
    browser.click("#recover-reload");
    browser.wait("the page anew", "document.querySelector('#recover')?.hidden");
    browser.see(SAVED);
    screen(&browser, "program", "");
    assert_eq!(browser.value(&field("contact.phone")), "555-0171");

    browser.go(&server.url("#/en/"));
    browser.see("#search");
    browser.run(TRAP, &[]);
    browser.see("#recover");
    browser.click("#recover-reload");
    browser.see("#search");
}

#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn the_workers_press_file_is_the_command_lines_byte_for_byte_even_without_a_network() {
    let mut server = Server::site();
    let mut browser = Browser::start(DESK);
    open_demo(&browser, &server);
    browser.see("#offline-status.whole");
    server.stop();
    browser.reload();
    browser.see(SAVED);
    screen(&browser, "print", "");
    browser.keep_downloads();
    let day = "const d = new Date(); const two = (n) => String(n).padStart(2, '0');
        return `${d.getFullYear()}-${two(d.getMonth() + 1)}-${two(d.getDate())}`";
    for (kind, word, languages) in [
        ("cart-lid", "lid", &["en"][..]),
        ("cart-lid", "lid", &["en", "es", "ar"][..]),
        ("postcard-mailer", "postcard", &["es", "ar"][..]),
    ] {
        browser.choose("#print-sheet", kind);
        for at in 0..3 {
            let language = languages.get(at).copied().unwrap_or_default();
            browser.choose(&format!("#print-language-{}", at + 1), language);
        }
        browser.run("window.handedOut.length = 0", &[]);
        let today = browser.run(day, &[]);
        browser.click("#print-make");
        browser.see("#print-status[data-state=done]");
        browser.see(".preview");
        browser.wait("the preview to be drawn", "document.querySelector('.preview').naturalWidth > 0");
        browser.wait("the button", "!document.querySelector('#print-download').disabled");
        browser.click("#print-download");
        let (name, bytes) = browser.handed_out();
        assert!(name.ends_with(".pdf"), "{name}");
        let native = sheet_of(word, languages, today.as_str().unwrap());
        let native = std::fs::read(native.file()).unwrap();
        let differs = native.iter().zip(&bytes).position(|(a, b)| a != b);
        assert!(
            native == bytes,
            "{kind} {languages:?}: {} and {} bytes, from {differs:?}",
            native.len(),
            bytes.len()
        );
        if languages.len() == 3 {
            browser.screenshot("coordinator-print");
        }
    }
    browser.assert_calm();
}

#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn a_new_program_is_empty_and_says_what_it_lacks() {
    let server = Server::site();
    let mut browser = Browser::start(DESK);
    browser.go(&server.url("coordinator.html"));
    browser.click("#new-program");
    browser.see("#program-screen");
    browser.see(".finding[data-severity=error]");
    screen(&browser, "streams", "");
    browser.write("#streams-new", "Recycling");
    browser.click("#streams-add");
    browser.see_text("#chosen", "recycling");
    screen(&browser, "rules", "");
    browser.write("#rules-new", "All paper");
    browser.click("#rules-add");
    browser.see_text("#chosen", "all-paper");
    browser.choose(&field("rule.all-paper.verdict"), "yes");
    browser.choose(&field("rule.all-paper.stream"), "recycling");
    browser.see(SAVED);
    browser.assert_calm();
}

#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn the_screens_themselves_speak_every_language() {
    let server = Server::site();
    let mut browser = Browser::start(DESK);
    open_demo(&browser, &server);
    for (language, direction) in [("ar", "rtl"), ("es", "ltr"), ("en", "ltr")] {
        browser.choose("#language", language);
        browser.wait("the language", &format!("document.documentElement.lang === '{language}'"));
        assert_eq!(browser.attribute("html", "dir").as_deref(), Some(direction));
        for name in
            ["files", "program", "streams", "zones", "channels", "sites", "rules", "items", "texts", "print"]
        {
            screen(&browser, name, "");
            // A message that is missing shows its key.
            let text = browser.text("body");
            let keys: Vec<&str> = text
                .split_whitespace()
                .filter(|w| {
                    ["tab-", "field-", "list-", "finding-", "print-", "severity-", "tier-"]
                        .iter()
                        .any(|p| w.starts_with(p))
                })
                .filter(|w| !w.contains('.'))
                .collect();
            assert!(keys.is_empty(), "{language} {name}: {keys:?}");
        }
    }
    browser.assert_calm();
}
