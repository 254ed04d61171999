//! A group in a rule's condition has nothing in it: "any of" nothing never holds, and "all of"
//! nothing always does, which is hardly what is meant inside something else.

use super::{Finding, Place, Severity, Subject};
use crate::condition::Condition;
use crate::fix::Fix;
use crate::ruleset::is_acknowledged;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    for rule in &subject.program.rules {
        let Some(when) = rule.when.as_ref().filter(|when| has_empty(when, true)) else { continue };
        let fixes =
            if is_acknowledged(rule) { None } else { Some(Fix::RemoveEmpty { rule: rule.id.clone() }) };
        found.push(
            Finding::new(Severity::Warning, "empty-condition", Place::of("rule", &rule.id, "when"))
                .arg("problem", if has_empty_any(when) { "any" } else { "all" })
                .rules(std::slice::from_ref(&rule.id))
                .tries(fixes),
        );
    }
}

/// True when there is an empty group; "all of" nothing is a whole condition that always holds.
pub(super) fn has_empty(condition: &Condition, whole: bool) -> bool {
    match condition {
        Condition::All(parts) if parts.is_empty() => !whole,
        Condition::Any(parts) if parts.is_empty() => true,
        Condition::All(parts) | Condition::Any(parts) => parts.iter().any(|p| has_empty(p, false)),
        Condition::Not(part) => has_empty(part, false),
        Condition::Is(_) | Condition::Measure(_) => false,
    }
}

fn has_empty_any(condition: &Condition) -> bool {
    match condition {
        Condition::Any(parts) if parts.is_empty() => true,
        Condition::All(parts) | Condition::Any(parts) => parts.iter().any(has_empty_any),
        Condition::Not(part) => has_empty_any(part),
        Condition::Is(_) | Condition::Measure(_) => false,
    }
}
