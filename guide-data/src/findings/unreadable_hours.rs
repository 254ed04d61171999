//! A site's opening hours cannot be read, or its position is not on the globe.

use super::{Finding, Place, Severity, Subject};
use crate::hours::Schedule;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    for site in &subject.program.sites {
        if let Err(problem) = Schedule::readable(&site.hours) {
            found.push(
                Finding::new(Severity::Error, "unreadable-hours", Place::of("site", &site.id, "hours"))
                    .arg("hours", &site.hours)
                    .arg("problem", problem),
            );
        }
    }
}
