//! No rule decides a case, and the program does not say what silence means.

use super::{Finding, Place, Severity, Subject};
use crate::guide::{Answered, Outcome};

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let guide = &subject.compiled.guide;
    let uncovered = |o: &Outcome| o.verdict == Answered::Undecided && o.rules.is_empty();
    for item in &guide.items {
        if subject.compiled.too_much.contains(&item.id) {
            continue;
        }
        for part in &item.subjects {
            if let Some(witness) = guide.likeliest(&item.id, part, &uncovered) {
                found.push(
                    Finding::new(Severity::Error, "uncovered-case", Place::of("item", &item.id, ""))
                        .arg("part", part.part.as_deref().unwrap_or_default())
                        .witness(Some(witness)),
                );
            }
        }
    }
}
