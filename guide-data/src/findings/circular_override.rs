//! Rules override one another in a circle, so that none of them comes first.

use super::{Finding, Place, Severity, Subject};

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    for circle in &subject.compiled.rules.circles {
        let first = circle.first().map_or("", String::as_str);
        let place = Place::of("rule", first, "overrides");
        found.push(Finding::new(Severity::Error, "circular-override", place).rules(circle));
    }
}
