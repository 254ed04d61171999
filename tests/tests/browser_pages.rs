//! The plain pages: a browser in which nothing runs still gets its answer, and axe-core finds nothing.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

use lidleaf_tests::{Browser, DESK, PHONE, Server};
use serde_json::json;

#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn where_nothing_runs_a_resident_still_finds_the_answer() {
    let server = Server::site();
    for size in [(320, 640), PHONE, DESK] {
        let mut browser = Browser::start(size);
        browser.devtools("Emulation.setScriptExecutionDisabled", &json!({ "value": true }));
        browser.go(&server.url(""));
        browser.see("noscript a[href='pages/es/']");
        for (language, direction) in [("es", "ltr"), ("ar", "rtl"), ("zh-Hans", "ltr"), ("en", "ltr")] {
            browser.go(&server.url(""));
            browser.click(&format!("noscript a[href='pages/{language}/']"));
            browser.see("h1");
            assert_eq!(browser.attribute("html", "lang").as_deref(), Some(language));
            assert_eq!(browser.attribute("html", "dir").as_deref(), Some(direction));
            browser.click("a[href='plastic-packaging.html#milk-jug']");
            browser.see("#milk-jug .verdict[data-verdict=yes][data-stream=recycling]");
            assert!(browser.has("#milk-jug .prepare li"));
            browser.click(".back a");
            browser.click("a[href='batteries-electronics.html#lithium-battery']");
            browser.see("#lithium-battery .caution");
            assert!(!browser.has("#lithium-battery .verdict[data-stream]"), "a battery in a container");
            browser.click("#lithium-battery .to a");
            browser.see("section[data-channel] .site .hours");
            let wide = "document.documentElement.scrollWidth <= document.documentElement.clientWidth";
            browser.wait("the page to be no wider than the screen", wide);
            if size == PHONE {
                browser.go(&server.url(&format!("pages/{language}/plastic-packaging.html")));
                browser.see("article");
                browser.screenshot(&format!("page-{language}"));
            }
        }
        browser.assert_calm();
    }
}

#[test]
#[ignore = "needs the built site and axe-core: cargo xtask test runs it"]
fn axe_finds_nothing_on_the_plain_pages() {
    let server = Server::site();
    let mut browser = Browser::start(PHONE);
    let mut found = Vec::new();
    for look in ["light", "dark"] {
        let features = json!({ "features": [{ "name": "prefers-color-scheme", "value": look }] });
        browser.devtools("Emulation.setEmulatedMedia", &features);
        for language in ["en", "es", "ar", "zh-Hans"] {
            for page in ["index", "plastic-packaging", "hazardous", "places"] {
                browser.go(&server.url(&format!("pages/{language}/{page}.html")));
                browser.see("h1");
                let here = browser.accessibility();
                found.extend(here.into_iter().map(|line| format!("{look} {language} {page}: {line}")));
            }
        }
    }
    assert!(found.is_empty(), "{}", found.join("\n\n"));
    browser.assert_calm();
}
