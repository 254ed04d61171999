//! An item leaves so many facts open that its rules cannot be worked out within bounds.

use super::{Finding, Place, Severity, Subject};

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    for item in &subject.compiled.too_much {
        let open = subject
            .program
            .items
            .iter()
            .chain(&subject.catalog.items)
            .find(|i| &i.id == item)
            .map_or(0, |i| i.open.len());
        found.push(
            Finding::new(Severity::Error, "too-complex", Place::of("item", item, "open")).arg("count", open),
        );
    }
}
