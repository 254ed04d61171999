//! An item's facts cannot be read: an unknown fact or value, a measure without a unit.

use super::{Finding, Place, Severity, Subject};
use crate::catalog::PARTS;
use crate::facts::fact;
use crate::standard::CATEGORIES;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let finding = |item: &str, fact: &str, value: &str, problem: &str| {
        Finding::new(Severity::Error, "broken-item", Place::of("item", item, fact))
            .arg("fact", fact)
            .arg("value", value)
            .arg("problem", problem)
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
