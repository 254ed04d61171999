//! Lists every message file of every language with its review state and the mark of its English
//! source. Whoever signs a file off writes that mark into `meta.json` beside their name and the day:
//! `"reviewed": { "resident": { "by": "…", "on": "2027-01-31", "source": "…" } }`.
//!
//! `cargo run -p locales --features bundled --example marks`

use locales::{ReviewState, source_mark, sources, supported};

fn main() {
    for language in supported() {
        for (file, state) in language.files {
            let source = sources("en").iter().find(|(name, _)| name == file);
            let mark = source.map(|(_, text)| source_mark(text)).unwrap_or_default();
            let state = match state {
                ReviewState::Source => "source".to_owned(),
                ReviewState::Unreviewed => "unreviewed".to_owned(),
                ReviewState::Reviewed { by, on } => format!("reviewed by {by} on {on}"),
                ReviewState::Outdated { by, on } => format!("changed since {by} reviewed it on {on}"),
            };
            println!("{}/{file}.ftl  {mark}  {state}", language.tag);
        }
    }
}
