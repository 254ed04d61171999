//! What a phone takes, measured in Chromium against the limits that were set: `cargo xtask bench`
//! builds the folder it opens and runs it.
//!
//! The site is served as a web host would, compressed. A slow phone is this machine with the
//! processor slowed four times by DevTools; the network is DevTools' own "Slow 4G". Both depend on
//! the machine they run on, so this prints and never fails for being slow.

#![expect(
    clippy::print_stdout,
    clippy::indexing_slicing,
    reason = "a table is what it is for; a report is JSON"
)]

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::process::Command;

use lidleaf_tests::{Browser, DESK, OrFail as _, PHONE, Server, fail};
use serde_json::{Value, json};

/// Odd, so that a median is one of them.
const ROUNDS: usize = 5;
const SLOWER: u32 = 4;

/// DevTools' preset "Slow 4G" (from memory): 1.6 Mbit/s down, 750 kbit/s up, 150 ms there and back,
/// of which nine tenths and 3.75 times are applied to each request, as the preset does.
const DOWN: f64 = 1_600_000.0 / 8.0 * 0.9;
const UP: f64 = 750_000.0 / 8.0 * 0.9;
const LATENCY: f64 = 150.0 * 3.75;

/// Put into every page before its own scripts: notes when the search box can be used, and the largest
/// paint so far.
const WATCH: &str = "
    new MutationObserver((_, watch) => {
      if (document.getElementById('search')) { window.usable = performance.now(); watch.disconnect(); }
    }).observe(document, { childList: true, subtree: true });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) window.paint = { at: entry.startTime, what: entry.element?.outerHTML.slice(0, 60) };
    }).observe({ type: 'largest-contentful-paint', buffered: true });";

/// Types a text letter by letter, and tells the milliseconds from each letter to the next frame, which
/// shows what was found.
const TYPE: &str = "
    const [text, done] = [arguments[0], arguments[arguments.length - 1]];
    const field = document.getElementById('search');
    const frame = () => new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn)));
    (async () => {
      const took = [];
      for (let end = 1; end <= text.length; end++) {
        await frame();
        const start = performance.now();
        field.value = text.slice(0, end);
        field.dispatchEvent(new Event('input', { bubbles: true }));
        document.body.getBoundingClientRect();
        took.push(performance.now() - start);
      }
      done(took);
    })();";

const TYPED: &str = "clear plastic strawberry container";

/// A row of the table: what, measured, limit, unit. A score is to reach its limit, all else to stay within it.
type Row = (String, f64, f64, &'static str);

/// The unit of scores, of which there are a hundred.
const SCORE: &str = "of 100";

fn row(what: &str, measured: f64, limit: f64, unit: &'static str) -> Row {
    (what.to_owned(), measured, limit, unit)
}

fn main() {
    // `cargo bench` hands every benchmark its own flags, and `cargo test` asks for a list.
    if std::env::args().any(|argument| argument == "--test" || argument == "--list") {
        return;
    }
    let folder = folder();
    let mut rows = timings(&folder);
    rows.extend(phone(&folder));
    rows.extend(desk(&folder));
    match std::env::var_os("LIDLEAF_LIGHTHOUSE") {
        Some(command) => rows.extend(lighthouse(&folder, Path::new(&command))),
        None => println!("Lighthouse is not installed: `cargo xtask bench --phone` does that"),
    }
    println!("{:<64} {:>10} {:>10}", "measured in a browser", "median", "limit");
    for (what, measured, limit, unit) in rows {
        let verdict = match unit {
            SCORE if measured < limit => "  under",
            SCORE => "",
            _ if measured > limit => "  over",
            _ => "",
        };
        // What has no limit is there to be seen.
        let limit = if limit.is_finite() { format!("{limit:.0} {unit}") } else { String::new() };
        let measured = format!("{measured:.1} {unit}");
        println!("{what:<64} {measured:>10} {limit:>10}{verdict}");
    }
}

/// The site with the program that times itself, as `cargo xtask bench` makes it.
fn folder() -> PathBuf {
    let made = std::env::var_os("LIDLEAF_BENCH").map(PathBuf::from);
    let folder = made.unwrap_or_else(|| lidleaf_tests::root().join("dist/bench"));
    if !folder.join("timings.html").is_file() {
        fail(&format!("there is no {}/timings.html: `cargo xtask bench` builds it", folder.display()));
    }
    folder
}

fn median(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    values.get(values.len() / 2).copied().or_fail("something measured")
}

fn number(value: &Value) -> f64 {
    value.as_f64().or_fail("a number")
}

/// What WebAssembly takes at this machine's own speed.
fn timings(folder: &Path) -> Vec<Row> {
    let server = Server::of(folder);
    let mut browser = Browser::start(PHONE);
    browser.go(&server.url("timings.html"));
    browser.wait("the timings", "document.querySelector('#timings[data-done]')");
    let told = browser.text("#timings");
    println!("{told}");
    browser.assert_calm();
    let of = |name: &str| {
        let line = told.lines().find_map(|line| line.strip_prefix(name)?.strip_prefix(' '));
        line.and_then(|value| value.trim().parse::<f64>().ok()).or_fail(name)
    };
    vec![
        row("compile a program of 500 items x 80 rules x 4 zones", of("compile"), 150.0, "ms"),
        row("compile and check it in full", of("check"), 300.0, "ms"),
        row("search, a keystroke over 500 items x 2 languages", of("keystroke"), 2.0, "ms"),
        row("search, the slowest keystroke", of("slowest-keystroke"), 2.0, "ms"),
    ]
}

fn slow(browser: &Browser) {
    browser.devtools("Emulation.setCPUThrottlingRate", &json!({ "rate": SLOWER }));
    browser.devtools("Page.addScriptToEvaluateOnNewDocument", &json!({ "source": WATCH }));
}

/// What a resident waits for on a slow phone.
fn phone(folder: &Path) -> Vec<Row> {
    let (mut paints, mut answers, mut starts, mut keystrokes, mut heaps) =
        (Vec::new(), Vec::new(), Vec::new(), Vec::new(), Vec::new());
    for _ in 0..ROUNDS {
        let mut server = Server::of(folder);
        let mut browser = Browser::start(PHONE);
        browser.devtools("Network.enable", &json!({}));
        let network = json!({
            "offline": false, "latency": LATENCY, "downloadThroughput": DOWN, "uploadThroughput": UP,
        });
        browser.devtools("Network.emulateNetworkConditions", &network);
        slow(&browser);
        browser.go(&server.url(""));
        browser.wait("the search box", "window.usable");
        browser.see("#offline-status.whole");
        paints.push(number(&browser.run("return window.paint.at", &[])));
        answers.push(number(&browser.run("return window.usable", &[])));

        // The next day, with the network gone.
        server.stop();
        browser.close_and_reopen();
        slow(&browser);
        browser.go(&server.url(""));
        browser.wait("the search box", "window.usable");
        starts.push(number(&browser.run("return window.usable", &[])));
        browser.see("#offline-status.whole");

        let took: Vec<f64> = serde_json::from_value(browser.run_later(TYPE, &[json!(TYPED)]))
            .or_fail("reading the times of keystrokes");
        keystrokes.push(took.into_iter().fold(0.0, f64::max));
        for typed in ["p", "pizza", "bottle", "foil", "battery", "paint", "box", "jar", "bag", "lamp"] {
            browser.write("#search", typed);
            browser.see("#results li a");
        }
        let heap = browser.devtools("Runtime.getHeapUsage", &json!({}));
        let part = |name: &str| number(heap.get(name).unwrap_or(&json!(null)));
        heaps.push((part("usedSize") + part("embedderHeapUsedSize") + part("backingStorageSize")) / 1e6);
        browser.assert_calm();
    }
    vec![
        row("first visit, slow 4G, 4x slower: largest contentful paint", median(paints), 1800.0, "ms"),
        row("first visit, slow 4G, 4x slower: search box can be used", median(answers), f64::INFINITY, "ms"),
        row("second start offline, 4x slower: search box can be used", median(starts), 600.0, "ms"),
        row("4x slower: the slowest letter of a search to its results", median(keystrokes), 50.0, "ms"),
        row("heap after ten searches, JavaScript and WebAssembly", median(heaps), 60.0, "MB"),
    ]
}

/// Orders a sheet and tells the milliseconds until it is done, and the longest that the page itself was busy meanwhile.
const PRINT: &str = "
    const done = arguments[arguments.length - 1];
    let longest = 0;
    const note = (tasks) => { for (const task of tasks.getEntries()) longest = Math.max(longest, task.duration); };
    const watch = new PerformanceObserver(note);
    watch.observe({ type: 'longtask' });
    const status = document.getElementById('print-status');
    const start = performance.now();
    const seen = new MutationObserver(() => {
      const state = document.getElementById('print-status').dataset.state;
      if (state !== 'done' && state !== 'refused') return;
      seen.disconnect();
      const took = state === 'done' ? performance.now() - start : Infinity;
      // Long tasks are told after they end.
      setTimeout(() => { note({ getEntries: () => watch.takeRecords() }); done([took, longest]); }, 300);
    });
    seen.observe(document.getElementById('print-screen'), { subtree: true, childList: true, attributes: true });
    document.getElementById('print-make').click();";

/// What a coordinator waits for at this machine's own speed: a lid in four languages, the worker warm.
fn desk(folder: &Path) -> Vec<Row> {
    let server = Server::of(folder);
    let mut browser = Browser::start(DESK);
    browser.go(&server.url("coordinator.html"));
    browser.click("#open-demo");
    browser.see("#program-screen");
    browser.fragment("#/print/");
    browser.see("#print-screen");
    browser.choose("#print-sheet", "cart-lid");
    for (at, language) in ["en", "es", "zh-Hans", "ar"].into_iter().enumerate() {
        browser.choose(&format!("#print-language-{}", at + 1), language);
    }
    browser.click("#print-make");
    browser.see("#print-status[data-state=done]");
    let (mut took, mut longest) = (Vec::new(), Vec::new());
    for _ in 0..ROUNDS {
        let told: (f64, f64) =
            serde_json::from_value(browser.run_later(PRINT, &[])).or_fail("reading how long a sheet took");
        took.push(told.0);
        longest.push(told.1);
    }
    browser.assert_calm();
    vec![
        row("a lid in four languages, the worker warm: until it is shown", median(took), 1000.0, "ms"),
        row("the longest that the page is busy meanwhile", median(longest), 50.0, "ms"),
    ]
}

/// What Lighthouse says of the resident's pages on its phone, with its throttling: the least of three runs' scores
/// would be its noise, so it is their median.
fn lighthouse(folder: &Path, command: &Path) -> Vec<Row> {
    const RUNS: usize = 3;
    const LEAST: f64 = 95.0;
    let server = Server::of(folder);
    let out = tempfile::tempdir().or_fail("making a folder");
    let report = out.path().join("report.json");
    let mut rows = Vec::new();
    for (page, address) in [
        ("search", ""),
        ("an answer", "#/en/item/clamshell"),
        ("a plain page", "pages/en/plastic-packaging.html"),
    ] {
        let mut scores: BTreeMap<String, Vec<f64>> = BTreeMap::new();
        for _ in 0..RUNS {
            let ran = Command::new("node")
                .arg(command)
                .arg(server.url(address))
                .args([
                    "--quiet",
                    "--output=json",
                    "--chrome-flags=--headless=new --no-sandbox --disable-gpu",
                ])
                .arg(format!("--output-path={}", report.display()))
                .output()
                .or_fail("starting Lighthouse");
            if !ran.status.success() {
                fail(&format!("Lighthouse stopped: {}", String::from_utf8_lossy(&ran.stderr)));
            }
            let text = std::fs::read(&report).or_fail("reading Lighthouse's report");
            let told: Value = serde_json::from_slice(&text).or_fail("reading Lighthouse's report");
            for (category, found) in told["categories"].as_object().or_fail("categories") {
                scores.entry(category.clone()).or_default().push(number(&found["score"]) * 100.0);
            }
        }
        rows.extend(scores.into_iter().map(|(category, scores)| {
            row(&format!("Lighthouse, {page}: {category}"), median(scores), LEAST, SCORE)
        }));
    }
    rows
}
