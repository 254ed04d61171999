//! Two rules of one tier both apply to a case and send it to different places.

use std::collections::BTreeSet;

use super::{Finding, Place, Severity, Subject};
use crate::guide::Answered;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let guide = &subject.compiled.guide;
    // One finding for each set of rules that disagree: the first item that shows it is enough.
    let mut told: BTreeSet<&[String]> = BTreeSet::new();
    for item in &guide.items {
        for part in &item.subjects {
            for outcome in guide.reached(part) {
                if outcome.verdict != Answered::Undecided || outcome.rules.is_empty() {
                    continue;
                }
                if !told.insert(&outcome.rules) {
                    continue;
                }
                let first = outcome.rules.first().map_or("", String::as_str);
                found.push(
                    Finding::new(Severity::Error, "conflicting-rules", Place::of("rule", first, ""))
                        .rules(&outcome.rules)
                        .arg("item", &item.id)
                        .witness(guide.likeliest(&item.id, part, &|o| o == outcome)),
                );
            }
        }
    }
}
