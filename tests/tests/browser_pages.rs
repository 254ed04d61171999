//! The plain pages: a browser in which nothing runs still gets its answer, and axe-core finds nothing.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

use lidleaf_tests::{Browser, DESK, PHONE, Server, SiteCopy};
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

/// The value of an attribute in a tag.
fn attribute<'t>(tag: &'t str, name: &str) -> Option<&'t str> {
    tag.split(&format!(" {name}=\"")).nth(1)?.split('"').next()
}

/// What a page's policy allows a directive, else what it allows by default.
fn allowed<'p>(policy: &'p str, directive: &str) -> &'p str {
    let of = |name: &str| {
        let mut all = policy.split(';').map(str::trim);
        all.find_map(|one| one.strip_prefix(name)?.strip_prefix(' ').map(str::trim))
    };
    of(directive).or_else(|| of("default-src")).unwrap_or_default()
}

/// Every page that is published allows itself nothing but the folder's own files, before it loads the first of
/// them, and holds nothing that its policy would have to make an exception for.
#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn every_page_has_a_strict_policy() {
    let site = SiteCopy::new();
    let pages: Vec<String> = site.files().into_iter().filter(|path| path.ends_with(".html")).collect();
    assert!(pages.len() > 100, "a page for every language and kind: {}", pages.len());
    for path in pages {
        let page = String::from_utf8(site.read(&path)).unwrap();
        let tags: Vec<&str> = page.split('<').skip(1).filter_map(|rest| rest.split('>').next()).collect();
        let first = |wanted: &dyn Fn(&str) -> bool| tags.iter().position(|tag| wanted(tag));
        let at = first(&|tag| tag.contains("http-equiv=\"Content-Security-Policy\""));
        let at = at.unwrap_or_else(|| panic!("{path} has no policy"));
        let loads = first(&|tag| ["link ", "script", "img", "style"].iter().any(|t| tag.starts_with(t)));
        assert!(loads.is_none_or(|loads| loads > at), "{path} loads something before its policy");
        let policy = attribute(tags[at], "content").unwrap();
        for (directive, most) in [
            ("default-src", &["'none'"][..]),
            ("script-src", &["'none'", "'self'", "'wasm-unsafe-eval'"]),
            ("style-src", &["'none'", "'self'"]),
            ("img-src", &["'none'", "'self'", "data:", "blob:"]),
            ("connect-src", &["'none'", "'self'"]),
            ("worker-src", &["'none'", "'self'"]),
            ("manifest-src", &["'none'", "'self'"]),
            ("font-src", &["'none'", "'self'"]),
            ("object-src", &["'none'"]),
            ("frame-src", &["'none'"]),
            ("form-action", &["'none'"]),
            ("base-uri", &["'none'"]),
        ] {
            let own: Vec<&str> = allowed(policy, directive).split(' ').collect();
            assert!(own.iter().all(|one| most.contains(one)), "{path}: {directive} {own:?}");
        }
        // These two do not follow the default: left out, they allow everything.
        assert!(policy.contains("base-uri") && policy.contains("form-action"), "{path}: {policy}");
        for tag in &tags {
            let bare = tag.starts_with("script") && !tag.contains(" src=\"");
            let handler = tag.split(' ').skip(1).any(|word| word.starts_with("on") && word.contains("=\""));
            assert!(!bare && !handler && !tag.starts_with("style"), "{path}: <{tag}>");
            assert!(attribute(tag, "style").is_none(), "{path}: <{tag}>");
            // What is followed, and what search engines are told, loads nothing.
            let loads = !tag.starts_with("a ") && !tag.contains("rel=\"alternate\"");
            for name in ["src", "href"].iter().filter(|_| loads) {
                let to = attribute(tag, name).unwrap_or_default();
                assert!(!to.contains("//"), "{path}: <{tag}>");
            }
        }
    }
}

/// A day's visit asks for nothing but files of the folder, and its list and worker.
#[test]
#[ignore = "needs the built site: cargo xtask test runs it"]
fn a_visit_asks_for_the_folders_own_files_alone() {
    let site = SiteCopy::new();
    let server = Server::of(site.folder());
    let mut browser = Browser::start(PHONE);
    browser.go(&server.url(""));
    browser.see("#offline-status.whole");
    browser.write("#search", "pizza");
    browser.click("#results li:first-child a");
    browser.see("#question");
    browser.click("#question .options li:first-child .option");
    browser.see("#answer");
    browser.choose("#language", "hi");
    browser.wait("Hindi", "document.documentElement.lang === 'hi'");
    browser.fragment("/hi/item/travel-bottle");
    browser.click("#ruler summary");
    browser.see("#card-drawing svg");
    browser.fragment("/hi/item/lithium-battery");
    browser.click(".site details summary");
    browser.see(".site details li a");
    for page in ["pages/es/", "pages/es/places.html", "coordinator.html"] {
        browser.go(&server.url(page));
        browser.see("h1");
    }
    let home = server.url("");
    let files = site.files();
    let requests = browser.requests();
    assert!(requests.iter().any(|url| url.ends_with("ruler.js")), "{requests:#?}");
    let own = |url: &str| {
        let path = url.strip_prefix(&home)?.split(['?', '#']).next()?;
        let path = if path.is_empty() || path.ends_with('/') {
            format!("{path}index.html")
        } else {
            path.to_owned()
        };
        (files.contains(&path) || ["files.json", "sw.js"].contains(&path.as_str())).then_some(())
    };
    let internal = ["data:", "blob:", "about:", "chrome"];
    let others: Vec<&String> = requests
        .iter()
        .filter(|url| own(url).is_none() && !internal.iter().any(|scheme| url.starts_with(scheme)))
        .collect();
    assert!(others.is_empty(), "{others:#?}");
    browser.assert_calm();
}
