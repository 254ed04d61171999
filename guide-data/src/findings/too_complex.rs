//! There is more to work out about an item than is allowed: it leaves too many facts open, or the rules
//! name too many thresholds.

use std::collections::BTreeMap;

use super::{Finding, Place, Severity, Subject};

/// From so many items on, it is not theirs: it is said once, of the rules.
const MANY: usize = 10;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let too_much = &subject.compiled.too_much;
    if too_much.len() >= MANY {
        let cut = subject.compiled.guide.variables.iter().max_by_key(|v| v.cuts.len());
        let (fact, thresholds) = cut.map_or(("", 0), |v| (v.fact.as_str(), v.cuts.len()));
        found.push(
            Finding::new(Severity::Error, "too-many-thresholds", Place::of("program", "", "rules"))
                .arg("fact", fact)
                .arg("thresholds", thresholds)
                .arg("count", too_much.len()),
        );
        return;
    }
    let all = subject.catalog.items.iter().chain(&subject.program.items);
    let open: BTreeMap<&str, usize> = all.map(|i| (i.id.as_str(), i.open.len())).collect();
    for item in too_much {
        let open = open.get(item.as_str()).copied().unwrap_or(0);
        found.push(
            Finding::new(Severity::Error, "too-complex", Place::of("item", item, "open")).arg("count", open),
        );
    }
}
