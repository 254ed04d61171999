//! The languages compiled in, for programs that run where nothing can be fetched.

use std::sync::Arc;

use crate::lang::{Lang, negotiate, supported};
use crate::messages::Messages;

include!(concat!(env!("OUT_DIR"), "/sources.rs"));

/// The message files of a language's folder: name without ending, and text.
/// Empty for a tag that is not in the table of supported languages.
#[must_use]
pub fn sources(tag: &str) -> &'static [(&'static str, &'static str)] {
    SOURCES.iter().find(|(known, _)| *known == tag).map_or(&[], |(_, files)| files)
}

/// All messages of a language with English behind them. A language without messages is answered
/// in English, with the numbers and units of the region asked for.
#[must_use]
pub fn bundled(lang: &Lang) -> Messages {
    let offered: Vec<Lang> = supported().iter().map(crate::lang::Language::lang).collect();
    let chosen = negotiate(&[&lang.tag()], &offered).cloned().unwrap_or_default();
    let english = Lang::default();
    let own = read(&chosen, lang);
    if chosen == english { own } else { own.with_fallback(Arc::new(read(&english, lang))) }
}

/// Problems in our own files are found by the `check` module's tests, not by readers.
fn read(words: &Lang, asked: &Lang) -> Messages {
    let texts: Vec<&str> = sources(&words.tag()).iter().map(|(_, text)| *text).collect();
    let lang = asked.region().map_or_else(|| words.clone(), |region| words.with_region(region));
    Messages::from_ftl(lang, &texts).0
}
