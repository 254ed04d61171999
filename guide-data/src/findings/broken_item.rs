//! An item's facts cannot be read: an unknown fact or value, a measure without a unit.

use std::collections::BTreeSet;

use super::broken_condition::readings;
use super::{Finding, Place, Severity, Subject};
use crate::catalog::PARTS;
use crate::facts::{FACTS, FactKind, fact};
use crate::fix::Fix;
use crate::standard::CATEGORIES;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let own: BTreeSet<&str> = subject.program.items.iter().map(|i| i.id.as_str()).collect();
    let finding = |item: &str, fact: &str, value: &str, problem: &str| {
        let place = Place::of("item", item, fact);
        // The catalog is not the coordinator's to mend.
        let fixes = if own.contains(item) { fixes(subject, &place, value, problem) } else { Vec::new() };
        Finding::new(Severity::Error, "broken-item", place)
            .arg("fact", fact)
            .arg("value", value)
            .arg("problem", problem)
            .tries(fixes)
    };
    for p in &subject.compiled.item_problems {
        found.push(finding(&p.item, &p.fact, &p.value, p.problem));
    }
    for item in subject.catalog.items.iter().chain(&subject.program.items) {
        let of_parts = item.parts.iter().flat_map(|p| p.facts.keys());
        for name in item.facts.keys().chain(item.open.keys()).chain(of_parts) {
            if fact(name).is_none() {
                found.push(finding(&item.id, name, "", "unknown-fact"));
            }
        }
        for part in item.parts.iter().filter(|p| !PARTS.contains(&p.id.as_str())) {
            found.push(finding(&item.id, "parts", &part.id, "unknown-part"));
        }
        if !CATEGORIES.contains(&item.category.as_str()) {
            found.push(finding(&item.id, "category", &item.category, "unknown-value"));
        }
    }
}

fn fixes(subject: &Subject<'_>, place: &Place, value: &str, problem: &str) -> Vec<Fix> {
    let field = place.field.as_str();
    match (problem, field) {
        ("unknown-fact", _) => subject
            .guess(field, FACTS.iter().map(|f| f.id))
            .into_iter()
            .map(|with| Fix::ReplaceItemFact { item: place.id.clone(), fact: field.to_owned(), with })
            .collect(),
        ("unknown-part", _) => subject.did_you_mean(place, value, PARTS.iter().copied()),
        (_, "category") => subject.did_you_mean(place, value, CATEGORIES.iter().copied()),
        ("unknown-value", _) => match fact(field).map(|f| f.kind) {
            // A danger that was misspelt is not mended by "no danger".
            Some(FactKind::Choice(values)) => {
                let harmless = |v: &str| matches!((field, v), ("hazard", "none") | ("battery", "no"));
                subject.did_you_mean(place, value, values.iter().copied().filter(|v| !harmless(v)))
            }
            _ => Vec::new(),
        },
        _ => readings(field, value, problem)
            .into_iter()
            .map(|with| Fix::Replace { place: place.clone(), value: value.to_owned(), with })
            .collect(),
    }
}
