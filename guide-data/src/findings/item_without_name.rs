//! An item of the program has no name to show, or two have the same one.

use std::collections::{BTreeMap, BTreeSet};

use super::{Finding, Place, Severity, Subject};
use crate::search::fold;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let program = subject.program;
    if program.items.is_empty() {
        return;
    }
    // Items that the catalog has as well are called what it calls them.
    let known: BTreeSet<&str> = subject.catalog.items.iter().map(|i| i.id.as_str()).collect();
    let source = &program.source_language;
    let name = |item: &str, language: &str| -> Option<&str> {
        let names = program.item_names.get(item)?.or_source(language, source)?;
        names.split('|').next().map(str::trim).filter(|n| !n.is_empty())
    };
    let own: BTreeSet<&str> = program.items.iter().map(|i| i.id.as_str()).collect();
    for &item in own.iter().filter(|i| !known.contains(*i)) {
        let lacking: Vec<&str> =
            program.languages.iter().map(String::as_str).filter(|l| name(item, l).is_none()).collect();
        if !lacking.is_empty() {
            found.push(
                Finding::new(Severity::Error, "item-without-name", Place::of("item", item, "name"))
                    .arg("languages", lacking.join(", ")),
            );
        }
    }
    for language in &program.languages {
        let mut called: BTreeMap<String, &str> = BTreeMap::new();
        for &item in &own {
            let Some(words) = name(item, language) else { continue };
            let Some(other) = called.insert(fold(words), item) else { continue };
            found.push(
                Finding::new(Severity::Warning, "name-twice", Place::of("item", item, language))
                    .arg("other", other)
                    .arg("name", words)
                    .arg("language", language),
            );
        }
    }
}
