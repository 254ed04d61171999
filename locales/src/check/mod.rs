//! Checks of the message files themselves: what a translator or developer must put right.
//!
//! Everything here reads the files, not the screens, so a mistake shows before anybody meets it.

mod file;
pub mod pseudo;
mod usage;

use std::collections::btree_map::Entry as Slot;
use std::collections::{BTreeMap, BTreeSet};
use std::fmt;

pub use file::{Entry, Selector, entries};
pub use usage::{Literal, Scan, keys_asked_for, literals};

use crate::lang::supported;

/// One thing to put right.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Fault {
    /// Where: the language and file ("es/resident"), or a source file.
    pub place: String,
    /// The message key, or what was read instead.
    pub key: String,
    /// What is wrong.
    pub kind: FaultKind,
}

/// The kinds of [`Fault`].
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub enum FaultKind {
    /// The file is not Fluent at this line.
    Unreadable(usize),
    /// The key is defined twice in this language.
    Duplicate,
    /// English has the key, this language lacks it.
    Untranslated,
    /// This language has a key that English lacks.
    NotInEnglish,
    /// The placeholders differ from those of English.
    Placeholders {
        /// The names in English.
        english: Vec<String>,
        /// The names here.
        here: Vec<String>,
    },
    /// The text holds "<" or ">".
    Markup,
    /// The text holds an invisible character that should be written as an escape.
    Invisible(char),
    /// A plural choice lacks categories that the language needs.
    PluralForms(Vec<&'static str>),
    /// A plural choice has a category the language does not use.
    PluralFormUnused(String),
    /// The key is not written in lower-case words joined by hyphens.
    KeyStyle,
    /// A placeholder is not written in lower-case words joined by underscores.
    PlaceholderStyle(String),
    /// The message refers to a message, term or function that does not exist.
    Reference(String),
    /// The program asks for a message without a value that it shows.
    ValueMissing(String),
    /// The program asks for a key that is not defined.
    Undefined,
    /// No code and no data asks for the key.
    Unused,
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { place, key, kind } = self;
        match kind {
            FaultKind::Unreadable(line) => {
                write!(f, "{place}, line {line}: cannot be read near \"{key}\"; correct it")
            }
            FaultKind::Duplicate => write!(f, "{place}: \"{key}\" is defined twice; remove one"),
            FaultKind::Untranslated => {
                write!(f, "{place}: \"{key}\" is missing; translate it from the English")
            }
            FaultKind::NotInEnglish => {
                write!(f, "{place}: \"{key}\" is not in English; remove it or add it there")
            }
            FaultKind::Placeholders { english, here } => write!(
                f,
                "{place}: \"{key}\" has the placeholders {here:?}, English has {english:?}; use the same ones"
            ),
            FaultKind::Markup => {
                write!(f, "{place}: \"{key}\" holds \"<\" or \">\"; messages are plain text")
            }
            FaultKind::Invisible(c) => {
                write!(
                    f,
                    "{place}: \"{key}\" holds an invisible character; write it as {{ \"\\u{:04X}\" }}",
                    u32::from(*c)
                )
            }
            FaultKind::PluralForms(missing) => {
                write!(f, "{place}: \"{key}\" lacks the plural forms {missing:?}; add a line for each")
            }
            FaultKind::PluralFormUnused(name) => {
                write!(
                    f,
                    "{place}: \"{key}\" has the plural form [{name}], which the language does not use; remove it"
                )
            }
            FaultKind::KeyStyle => {
                write!(f, "{place}: \"{key}\" is not lower-case words joined by hyphens; rename it")
            }
            FaultKind::PlaceholderStyle(name) => {
                write!(
                    f,
                    "{place}: ${name} of \"{key}\" is not lower-case words joined by underscores; rename it"
                )
            }
            FaultKind::Reference(what) => {
                write!(f, "{place}: \"{key}\" refers to {what}, which is not defined")
            }
            FaultKind::ValueMissing(name) => {
                write!(f, "{place}: asks for \"{key}\" without its value ${name}; give it")
            }
            FaultKind::Undefined => {
                write!(f, "{place}: asks for \"{key}\", which no message file defines; add it")
            }
            FaultKind::Unused => write!(f, "{place}: nothing asks for \"{key}\"; remove it, or use it"),
        }
    }
}

/// Checks every supported language against English and by itself.
#[must_use]
pub fn languages() -> Vec<Fault> {
    let mut faults = Vec::new();
    let mut by_language = BTreeMap::new();
    for language in supported() {
        by_language.insert(
            language.tag,
            read_language(language.tag, crate::bundled::sources(language.tag), &mut faults),
        );
    }
    if let Some(english) = by_language.get("en") {
        for (tag, messages) in by_language.iter().filter(|(tag, _)| **tag != "en") {
            compare(tag, english, messages, &mut faults);
        }
    }
    faults.sort();
    faults
}

/// Checks one language given as files (name and text), against English given the same way.
#[must_use]
pub fn language(tag: &str, files: &[(&str, &str)], english: &[(&str, &str)]) -> Vec<Fault> {
    let mut faults = Vec::new();
    let source = read_language("en", english, &mut Vec::new());
    let messages = read_language(tag, files, &mut faults);
    compare(tag, &source, &messages, &mut faults);
    faults.sort();
    faults
}

/// Every message of English by key, attributes after a dot.
#[must_use]
pub fn english() -> BTreeMap<String, Entry> {
    read_language("en", crate::bundled::sources("en"), &mut Vec::new())
}

/// Compares the keys English defines with the keys the program asks for.
///
/// `data` are the keys that ids of the data stand for (`fact-wet`, `prep-rinse`), each with the
/// place that defines the id. A definition counts as used when it is asked for, mentioned, or
/// begins as keys that are put together do; an attribute counts as used with its message.
#[must_use]
pub fn usage(scan: &Scan, data: &BTreeMap<String, String>) -> Vec<Fault> {
    let english = english();
    let referred: BTreeSet<&str> =
        english.values().flat_map(|entry| entry.references.iter().map(String::as_str)).collect();
    let mut faults = Vec::new();
    for (key, place) in scan.asked.iter().chain(data) {
        if !english.contains_key(key) {
            faults.push(Fault { place: place.clone(), key: key.clone(), kind: FaultKind::Undefined });
        }
    }
    for (place, key, names) in &scan.given {
        let needed = english.get(key).map(|entry| &entry.placeholders);
        for name in needed.into_iter().flatten().filter(|name| !names.contains(name)) {
            faults.push(Fault {
                place: place.clone(),
                key: key.clone(),
                kind: FaultKind::ValueMissing(name.clone()),
            });
        }
    }
    for (key, entry) in &english {
        let message = key.split('.').next().unwrap_or(key);
        let used = [key.as_str(), message].iter().any(|key| {
            scan.asked.contains_key(*key)
                || scan.mentioned.contains(*key)
                || data.contains_key(*key)
                || referred.contains(key)
                || scan.prefixes.iter().any(|prefix| key.starts_with(prefix.as_str()))
        });
        if !used {
            faults.push(Fault { place: entry.place.clone(), key: key.clone(), kind: FaultKind::Unused });
        }
    }
    faults.sort();
    faults
}

/// A family of keys whose ids are known must hold those ids and no others: a message for an id that
/// is gone would otherwise hide behind its beginning.
#[must_use]
pub fn family(prefix: &str, data: &BTreeMap<String, String>) -> Vec<Fault> {
    english()
        .iter()
        .filter(|(key, _)| key.starts_with(prefix) && !key.contains('.') && !data.contains_key(*key))
        .map(|(key, entry)| Fault { place: entry.place.clone(), key: key.clone(), kind: FaultKind::Unused })
        .collect()
}

fn read_language(tag: &str, files: &[(&str, &str)], faults: &mut Vec<Fault>) -> BTreeMap<String, Entry> {
    let mut all = BTreeMap::new();
    for (name, text) in files {
        let place = format!("{tag}/{name}");
        for entry in entries(&place, text, faults) {
            match all.entry(entry.key.clone()) {
                Slot::Occupied(slot) => {
                    let key = slot.key().clone();
                    faults.push(Fault { place: place.clone(), key, kind: FaultKind::Duplicate });
                }
                Slot::Vacant(slot) => {
                    slot.insert(entry);
                }
            }
        }
    }
    let needed = plural_categories(tag);
    for entry in all.values() {
        check_entry(&needed, entry, &all, faults);
    }
    all
}

fn check_entry(
    needed: &[&'static str],
    entry: &Entry,
    all: &BTreeMap<String, Entry>,
    faults: &mut Vec<Fault>,
) {
    let mut fault = |kind| faults.push(Fault { place: entry.place.clone(), key: entry.key.clone(), kind });
    let word = |text: &str, joint: char| {
        text.split(joint).all(|part| {
            !part.is_empty() && part.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit())
        })
    };
    if !entry.key.split('.').all(|part| word(part, '-')) {
        fault(FaultKind::KeyStyle);
    }
    if entry.text.contains(['<', '>']) {
        fault(FaultKind::Markup);
    }
    if let Some(c) = entry.text.chars().find(|c| is_invisible(*c)) {
        fault(FaultKind::Invisible(c));
    }
    for name in entry.placeholders.iter().filter(|name| !word(name, '_')) {
        fault(FaultKind::PlaceholderStyle(name.clone()));
    }
    for reference in entry.references.iter().filter(|reference| !all.contains_key(*reference)) {
        fault(FaultKind::Reference(format!("\"{reference}\"")));
    }
    for function in &entry.functions {
        fault(FaultKind::Reference(format!("the function {function}()")));
    }
    for selector in entry.selectors.iter().filter(|selector| selector.is_plural()) {
        let missing: Vec<&str> =
            needed.iter().filter(|category| !selector.variants.contains(**category)).copied().collect();
        if !missing.is_empty() {
            fault(FaultKind::PluralForms(missing));
        }
        for name in &selector.variants {
            // CLDR's "many" of Spanish and its like is for millions: allowed, never needed here.
            let number = name.parse::<f64>().is_ok();
            if !number && name != "many" && !needed.contains(&name.as_str()) {
                fault(FaultKind::PluralFormUnused(name.clone()));
            }
        }
    }
}

fn compare(
    tag: &str,
    english: &BTreeMap<String, Entry>,
    here: &BTreeMap<String, Entry>,
    faults: &mut Vec<Fault>,
) {
    for (key, source) in english {
        let place = source.place.replacen("en/", &format!("{tag}/"), 1);
        match here.get(key) {
            None => faults.push(Fault { place, key: key.clone(), kind: FaultKind::Untranslated }),
            Some(entry) if entry.placeholders != source.placeholders => faults.push(Fault {
                place: entry.place.clone(),
                key: key.clone(),
                kind: FaultKind::Placeholders {
                    english: source.placeholders.iter().cloned().collect(),
                    here: entry.placeholders.iter().cloned().collect(),
                },
            }),
            Some(_) => {}
        }
    }
    for (key, entry) in here.iter().filter(|(key, _)| !english.contains_key(*key)) {
        faults.push(Fault { place: entry.place.clone(), key: key.clone(), kind: FaultKind::NotInEnglish });
    }
}

/// Characters nobody can see in an editor: they may be needed, and are then written as escapes.
/// The no-break space is among them no more than an ordinary one: it is common in Spanish.
fn is_invisible(c: char) -> bool {
    matches!(u32::from(c), 0x00AD | 0x061C | 0x200B..=0x200F | 0x202A..=0x202E | 0x2060..=0x206F | 0xFEFF)
        || (c.is_control() && c != '\n')
}

/// The plural categories that a message of a language has to provide: those its cardinal rules give
/// to some number from 0 to 1000 or to a decimal. The form of whole millions ("many" in Spanish) is
/// left out: a guide counts no millions, and the last resort answers there.
#[must_use]
pub fn plural_categories(tag: &str) -> Vec<&'static str> {
    let Ok(lang) = tag.parse() else { return vec!["other"] };
    let numbers = (0..=1000).map(f64::from).chain([0.1, 0.5, 1.5, 2.5, 10.1]);
    let found: BTreeSet<&str> = numbers.map(|n| crate::plural::category(&lang, n)).collect();
    ["zero", "one", "two", "few", "many", "other"].into_iter().filter(|name| found.contains(name)).collect()
}
