//! What the desk and the phone work out, timed in a browser: `cargo xtask bench` opens the page.
//!
//! The program is the demo cut down to the size for which there are limits: 500 items, 80 rules, 4
//! zones; the search knows its items in two languages.

use std::fmt::Write as _;
use std::hint::black_box;

use guide_data::{Catalog, Guide, Program, SearchIndex, check};

use crate::browser;

const ITEMS: usize = 500;
const RULES: usize = 80;
const LANGUAGES: [&str; 2] = ["en", "es"];
/// What a resident types on the way to a thing, one letter after the other.
const TYPED: &[&str] = &["piza bocks", "caja de pizza", "clear plastic strawberry container"];
/// Odd, so that a median is one of them.
const ROUNDS: usize = 9;

/// Times everything and writes `name milliseconds` lines into `#timings`.
pub(crate) fn run() {
    wasm_bindgen_futures::spawn_local(async {
        let told = match timings().await {
            Some(timings) => timings,
            None => "failed: the site's files could not be read".to_owned(),
        };
        if let Some(place) = browser::element("timings") {
            place.set_text_content(Some(&told));
            let _ = place.set_attribute("data-done", "");
        }
    });
}

async fn timings() -> Option<String> {
    let mut catalog = Catalog::standard().ok()?;
    catalog.items.truncate(ITEMS);
    let mut program = Program::from_json(guide_data::demo_json()).ok()?;
    program.rules.truncate(RULES);
    let left: Vec<String> = program.rules.iter().map(|rule| rule.id.clone()).collect();
    for rule in &mut program.rules {
        rule.overrides.retain(|other| left.contains(other));
    }
    let mut told = String::new();
    let _ = writeln!(
        told,
        "size {} items {} rules {} zones",
        catalog.items.len(),
        program.rules.len(),
        program.zones.len()
    );
    line(&mut told, "compile", median(|| drop(black_box(Guide::compile(&program, &catalog)))));
    line(&mut told, "check", median(|| drop(black_box(check(&program, &catalog)))));

    let published = browser::fetch_bytes("data/guide.txt").await.ok()?;
    let guide = Guide::from_bytes(&published).ok()?;
    let mut entries = Vec::new();
    for language in LANGUAGES {
        let words = browser::fetch_bytes(&format!("data/words/{language}.txt")).await.ok()?;
        let names = guide.search_words(&words).ok()?;
        for (at, item) in guide.items.iter().enumerate().take(ITEMS) {
            let own = names.get(&item.id).into_iter().flatten().enumerate();
            entries.extend(own.map(|(n, name)| (at, name.clone(), n == 0, item.common)));
        }
    }
    let index = SearchIndex::build(entries);
    let mut slowest: f64 = 0.0;
    let (mut sum, mut keystrokes) = (0.0, 0.0);
    for typed in TYPED {
        for end in 1..=typed.len() {
            let query = browser::fold(typed.get(..end)?);
            let took = median(|| drop(black_box(index.find(&query, 10))));
            slowest = slowest.max(took);
            (sum, keystrokes) = (sum + took, keystrokes + 1.0);
        }
    }
    line(&mut told, "keystroke", sum / keystrokes);
    line(&mut told, "slowest-keystroke", slowest);
    Some(told)
}

fn line(told: &mut String, name: &str, milliseconds: f64) {
    let _ = writeln!(told, "{name} {milliseconds:.3}");
}

/// The median of several rounds, in milliseconds. Clocks in pages are coarse: what is quicker than
/// they tell is done often enough within a round.
fn median(mut run: impl FnMut()) -> f64 {
    let mut times = Vec::new();
    for _ in 0..ROUNDS {
        let start = now();
        let mut runs = 0.0;
        while now() - start < 5.0 {
            run();
            runs += 1.0;
        }
        times.push((now() - start) / runs);
    }
    times.sort_by(f64::total_cmp);
    times.get(ROUNDS / 2).copied().unwrap_or_default()
}

fn now() -> f64 {
    web_sys::window().and_then(|w| w.performance()).map_or(0.0, |p| p.now())
}
