//! Rules override one another in a circle, so that none of them comes first.

use super::{Finding, Place, Severity, Subject};
use crate::fix::Fix;
use crate::ruleset::is_acknowledged;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    for circle in &subject.compiled.rules.circles {
        let first = circle.first().map_or("", String::as_str);
        let place = Place::of("rule", first, "overrides");
        let links = circle.iter().filter_map(|id| subject.rules.get(id.as_str())).flat_map(|rule| {
            // What keeps an exception to a safety rule down stays.
            let excepted = |over: &str| subject.rules.get(over).is_some_and(|r| is_acknowledged(r));
            let inside = rule
                .overrides
                .iter()
                .filter(move |over| circle.contains(over) && (is_acknowledged(rule) || !excepted(over)));
            inside.map(|over| Fix::NotBefore { rule: rule.id.clone(), over: over.clone() })
        });
        found.push(Finding::new(Severity::Error, "circular-override", place).rules(circle).tries(links));
    }
}
