//! Cases that are answered "not on the list, ask": allowed, but a coordinator should see them.

use super::uncovered_case::Places;
use super::{Finding, Place, Severity, Subject};
use crate::guide::{Answered, Outcome};

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let guide = &subject.compiled.guide;
    let unlisted = |o: &Outcome| o.verdict == Answered::Unlisted;
    let places = Places::new(subject);
    for item in &guide.items {
        for part in &item.subjects {
            if let Some(witness) = guide.likeliest(&item.id, part, &unlisted) {
                found.push(
                    Finding::new(Severity::Notice, "not-listed", Place::of("item", &item.id, ""))
                        .arg("part", part.part.as_deref().unwrap_or_default())
                        .witness(Some(witness))
                        .fixes(places.drafts(subject, item).into_iter().chain(places.silences(false))),
                );
            }
        }
    }
}
