//! axe-core finds nothing on the resident's screens in any language, in light and in dark, nor on the
//! coordinator's.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

use lidleaf_tests::{Browser, DESK, PHONE, Server};
use serde_json::json;

fn scheme(browser: &Browser, scheme: &str) {
    let features = json!({ "features": [{ "name": "prefers-color-scheme", "value": scheme }] });
    browser.devtools("Emulation.setEmulatedMedia", &features);
}

#[test]
#[ignore = "needs the built site and axe-core: cargo xtask test runs it"]
fn axe_finds_nothing_on_the_residents_screens() {
    let server = Server::site();
    let mut browser = Browser::start(PHONE);
    let mut found = Vec::new();
    for look in ["light", "dark"] {
        scheme(&browser, look);
        for language in ["en", "es", "ar"] {
            for (screen, address, hook) in [
                ("home", "", "#categories"),
                ("question", "item/pizza-box", "#question"),
                ("yes", "item/milk-carton", "#answer"),
                ("no", "item/plastic-cap", "#answer"),
                ("caution", "item/lithium-battery", ".caution"),
                ("parts", "item/yogurt-cup", "#question, #answer"),
                ("category", "category/glass", ".items"),
                ("nowhere", "item/nothing", "#not-here"),
            ] {
                browser.go("about:blank");
                browser.go(&server.url(&format!("#/{language}/{address}")));
                browser.see(hook);
                browser.see("#language");
                let here = browser.accessibility();
                found.extend(here.into_iter().map(|line| format!("{look} {language} {screen}: {line}")));
            }
        }
    }
    assert!(found.is_empty(), "{}", found.join("\n\n"));
    browser.assert_calm();
}

#[test]
#[ignore = "needs the built site and axe-core: cargo xtask test runs it"]
fn axe_finds_nothing_while_searching() {
    let server = Server::site();
    let mut browser = Browser::start(PHONE);
    for (language, typed) in [("en", "battery"), ("es", "botella"), ("ar", "بطارية")] {
        browser.go("about:blank");
        browser.go(&server.url(&format!("#/{language}/")));
        browser.write("#search", typed);
        browser.see("#results li a");
        let found = browser.accessibility();
        assert!(found.is_empty(), "{language}: {}", found.join("\n\n"));
    }
    browser.assert_calm();
}

#[test]
#[ignore = "needs the built site and axe-core: cargo xtask test runs it"]
fn axe_finds_nothing_on_the_coordinators_screens() {
    let server = Server::site();
    let mut browser = Browser::start(DESK);
    browser.go(&server.url("coordinator.html"));
    browser.click("#open-demo");
    browser.see("#program-screen");
    let mut found = Vec::new();
    for (screen, address) in [
        ("files", "#/files"),
        ("program", "#/program"),
        ("streams", "#/streams/recycling"),
        ("zones", "#/zones/old-mill"),
        ("channels", "#/channels/drop-off-center"),
        ("sites", "#/sites/sandhook"),
        ("rules", "#/rules/too-small"),
        ("items", "#/items"),
        ("texts", "#/texts"),
        ("print", "#/print"),
    ] {
        browser.fragment(address);
        browser.see(&format!("#{screen}-screen"));
        let here = browser.accessibility();
        found.extend(here.into_iter().map(|line| format!("{screen}: {line}")));
    }
    assert!(found.is_empty(), "{}", found.join("\n\n"));
    browser.assert_calm();
}
