//! A coordinator at a desk: editing and seeing what follows, undoing, leaving and coming back, two
//! windows, a full disk, a browser that stores nothing, a program that stops, and the press file.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

use lidleaf_tests::sheets::{Asked, LID, POSTCARD, Use};
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

/// Ticks one of several in a field.
fn tick(browser: &Browser, place: &str, value: &str) {
    browser.click(&format!("{} input[value=\"{value}\"]", field(place)));
}

/// Answers the question in the panel by the words of an answer.
fn answer(browser: &Browser, words: &str) {
    browser.see("#ask #question");
    // A picture on an answer shows its words again.
    let script = "const all = [...document.querySelectorAll('#ask .option')];
        const words = (option) => {
          const bare = option.cloneNode(true);
          bare.querySelectorAll('svg').forEach((picture) => picture.remove());
          return bare.textContent.trim();
        };
        const mine = all.find((option) => words(option) === arguments[0]);
        mine?.click();
        return mine ? '' : all.map(words).join(' | ')";
    let missing = browser.run(script, &[json!(words)]);
    assert_eq!(missing, "", "no answer {words:?} among them");
}

/// Goes back in the panel, answer by answer, to where things are searched.
fn begin_again(browser: &Browser) {
    browser.wait_for("the search in the panel", || {
        let there = browser.has("#ask #search");
        if !there {
            browser.run("document.querySelector('#ask #back')?.click()", &[]);
        }
        there
    });
}

#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn seasons_bans_container_rules_and_what_counts_as_what_are_authored_at_the_desk() {
    let server = Server::site();
    let mut browser = Browser::start(DESK);
    open_demo(&browser, &server);

    // What counts as what: a clamshell with a 6 is refused, until a 6 counts as a 1.
    ask(&browser, "clamshell");
    answer(&browser, "6");
    browser.see("#ask .verdict[data-verdict=no]");
    browser.choose("#counts-as-add", "resin");
    browser.click("#counts-as-add-button");
    browser.wait("the focus on the new row", "document.activeElement?.closest('[data-counts-as=\"0\"]')");
    tick(&browser, "counts-as.0.these", "6");
    browser.choose(&field("counts-as.0.count-as"), "1");
    browser.see("#changes li[data-id=clamshell]");
    browser.see("#ask .verdict[data-verdict=yes]");
    browser.click("#undo");
    browser.wait("no changes", "document.querySelectorAll('#changes li').length === 0");
    browser.see("#ask .verdict[data-verdict=no]");
    browser.click("#redo");
    browser.see("#ask .verdict[data-verdict=yes]");

    // A rule about a container, with its limit, stands with every answer that names the container.
    screen(&browser, "streams", "glass");
    browser.choose("#container-rule-add-glass-box", "weight");
    browser.click("#container-rule-add-glass-box-button");
    browser.see(".container-rule[data-kind=weight] .field-problem");
    browser.write(&field("container.glass-box.weight.limit"), "25 lb");
    browser.see_text(".container-rule[data-kind=weight] .reading", "No heavier than");
    assert!(browser.has("#container-rule-add-glass-box option[value=liners]"));
    assert!(!browser.has("#container-rule-add-glass-box option[value=weight]"), "each kind once");
    begin_again(&browser);
    ask(&browser, "glass jar");
    answer(&browser, "Old Mill Quarter");
    browser.see("#ask .verdict[data-verdict=yes]");
    browser.click("#ask [data-container=glass-box] summary");
    browser.see_text("#ask [data-container=glass-box]", "No heavier than");

    // A ban is said with the answer.
    begin_again(&browser);
    ask(&browser, "milk carton");
    screen(&browser, "rules", "cartons");
    browser.wait(
        "the list at the rule",
        "(() => { const l = document.querySelector('#rules-list').getBoundingClientRect();
            const e = document.querySelector('#rules-list [aria-current]').getBoundingClientRect();
            return e.top >= l.top && e.bottom <= l.bottom; })()",
    );
    tick(&browser, "rule.cartons.banned-from", "refuse");
    browser.see("#ask .banned");

    // A season of this very day holds today; moved by half a year it does not.
    browser.click("#rules-editor .more > summary");
    browser.click(&field("rule.cartons.season"));
    browser.see("#ask .verdict[data-verdict=yes]");
    let today = "const d = new Date(); const two = (n) => String(n).padStart(2, '0');
        return [two(d.getMonth() + 1), two(d.getDate()), two((d.getMonth() + 6) % 12 + 1)]";
    let today: Vec<String> = serde_json::from_value(browser.run(today, &[])).unwrap();
    for end in ["until", "from"] {
        browser.choose(&field(&format!("rule.cartons.season.{end}.month")), &today[0]);
        browser.choose(&field(&format!("rule.cartons.season.{end}.day")), &today[1]);
    }
    browser.see("#ask .verdict[data-verdict=yes]");
    for end in ["until", "from"] {
        browser.choose(&field(&format!("rule.cartons.season.{end}.month")), &today[2]);
    }
    browser.see_text("#season-says", "Every year");
    browser.see("#ask .verdict[data-verdict=unlisted]");
    browser.see(SAVED);

    screen(&browser, "files", "");
    let program = &exported(&browser, "#export")["payload"];
    assert_eq!(program["counts-as"], json!([{ "fact": "resin", "these": ["6"], "count-as": "1" }]));
    let of = |list: &str, id: &str| {
        let all = program[list].as_array().unwrap();
        all.iter().find(|x| x["id"] == id).unwrap().clone()
    };
    let rules = &of("streams", "glass")["containers"][0]["rules"];
    assert_eq!(*rules, json!([{ "kind": "weight", "limit": "25 lb", "text": {} }]));
    let cartons = of("rules", "cartons");
    assert_eq!(cartons["banned-from"], json!(["refuse"]));
    let (from, until) = (&cartons["season"]["from"], &cartons["season"]["until"]);
    assert_eq!(from, until);
    assert!(from.as_str().is_some_and(|day| day.starts_with(&format!("{}-", today[2]))), "{from}");
    browser.assert_calm();
}

#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn a_condition_grows_row_by_row_and_says_measures_as_residents_read_them() {
    let server = Server::site();
    let mut browser = Browser::start(DESK);
    open_demo(&browser, &server);
    screen(&browser, "rules", "cartons");
    browser.see("#condition .condition-row");
    for (at, fact) in ["longest-side", "quantity", "time-of-year"].into_iter().enumerate() {
        browser.click("#condition .condition-add");
        let row = format!("#condition .condition-row:nth-child({})", at + 2);
        browser.see(&row);
        browser.choose(&format!("{row} .fact"), fact);
        browser.see(&format!("#condition .condition-row[data-fact={fact}]"));
    }
    // Likening fills in a bound that nobody has written yet.
    let side = "#condition .condition-row[data-fact=longest-side]";
    browser.choose(&format!("{side} .asides select"), "basketball");
    browser.see_text(&format!("{side} .reading"), "(about a basketball)");
    browser.write(&format!("{side} input[type=text]"), "24");
    browser.see_text(&format!("{side} .field-problem"), "24");
    let quantity = "#condition .condition-row[data-fact=quantity]";
    browser.write(&format!("{quantity} input[type=text]"), "4");
    browser.choose(&format!("{quantity} .asides select"), "visit");
    browser.see_text(&format!("{quantity} .reading"), "per visit");
    // A day of the year has no year, and every day that can be chosen exists.
    let day = "#condition .condition-row[data-fact=time-of-year]";
    browser.choose(&format!("{day} .month-day label:first-of-type select"), "02");
    browser.wait(
        "a leap February",
        &format!("document.querySelectorAll('{day} option[value=\"29\"]').length === 1"),
    );
    assert!(!browser.has(&format!("{day} label:last-of-type option[value=\"30\"]")));
    browser.see_text(&format!("{day} .reading"), "February 1");
    browser.see(SAVED);
    let kept = kept(&browser);
    let all = kept[0]["payload"]["rules"].as_array().unwrap();
    let when = &all.iter().find(|r| r["id"] == "cartons").unwrap()["when"]["all"];
    assert_eq!(
        (&when[1]["measure"], &when[2]["measure"], &when[3]["measure"]),
        (
            &json!({ "fact": "longest-side", "at-least": "24", "like": "basketball" }),
            &json!({ "fact": "quantity", "at-least": "4", "per": "visit" }),
            &json!({ "fact": "time-of-year", "at-least": "02-01" }),
        )
    );
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
    browser.see("#offline-status.whole[data-fonts=kept]");
    server.stop();
    browser.reload();
    browser.see(SAVED);
    screen(&browser, "print", "");
    browser.keep_downloads();
    let day = "const d = new Date(); const two = (n) => String(n).padStart(2, '0');
        return `${d.getFullYear()}-${two(d.getMonth() + 1)}-${two(d.getDate())}`";
    for (kind, form, languages) in [
        ("cart-lid", LID, &["en"][..]),
        ("cart-lid", LID, &["en", "es", "ar"][..]),
        ("postcard-mailer", POSTCARD, &["es", "ar"][..]),
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
        browser.run("window.handedOut.length = 0", &[]);
        browser.wait("the button", "!document.querySelector('#print-download-web').disabled");
        browser.click("#print-download-web");
        let (web_name, web_bytes) = browser.handed_out();
        assert!(web_name.ends_with("-web.pdf"), "{web_name}");
        for (output, bytes) in [(Use::Press, bytes), (Use::Web, web_bytes)] {
            let native = sheet_of(&Asked { form, languages, output }, today.as_str().unwrap());
            let native = native.bytes();
            let differs = native.iter().zip(&bytes).position(|(a, b)| a != b);
            assert!(
                native == bytes,
                "{kind} {languages:?} for the {}: {} and {} bytes, from {differs:?}",
                output.word(),
                native.len(),
                bytes.len()
            );
        }
        if languages.len() == 3 {
            browser.screenshot("coordinator-print");
        }
    }
    // A limit of ink that no paper has stops the press file, in words; the other is still made.
    browser.write("#print-ink-limit", "900");
    browser.click("#print-make");
    browser.see("#print-status[data-state=refused]");
    browser.see("#preflight .finding[data-code=ink-limit-invalid][data-severity=error]");
    browser.wait("the web file", "!document.querySelector('#print-download-web').disabled");
    assert_eq!(browser.run("return document.querySelector('#print-download').disabled", &[]), true);
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
