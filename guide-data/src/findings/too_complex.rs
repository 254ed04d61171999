//! An item leaves so many facts open that its rules cannot be worked out within bounds.

use std::collections::BTreeMap;

use super::{Finding, Place, Severity, Subject};

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    if subject.compiled.too_much.is_empty() {
        return;
    }
    let all = subject.catalog.items.iter().chain(&subject.program.items);
    let open: BTreeMap<&str, usize> = all.map(|i| (i.id.as_str(), i.open.len())).collect();
    for item in &subject.compiled.too_much {
        let open = open.get(item.as_str()).copied().unwrap_or(0);
        found.push(
            Finding::new(Severity::Error, "too-complex", Place::of("item", item, "open")).arg("count", open),
        );
    }
}
