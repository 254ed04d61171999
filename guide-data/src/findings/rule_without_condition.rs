//! A rule that decides has no condition and stands before the last tier: it decides all that no earlier tier
//! does, which is more often forgotten than meant, and disagrees with every other rule of its tier.

use super::{Finding, Place, Severity, Subject};
use crate::condition::Condition;
use crate::program::{Rule, Tier};

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    for rule in subject.program.rules.iter().filter(|rule| forgotten(rule)) {
        found.push(
            Finding::new(Severity::Warning, "rule-without-condition", Place::of("rule", &rule.id, "when"))
                .rules(std::slice::from_ref(&rule.id)),
        );
    }
}

/// A temporary order and a season may well be meant for everything.
fn forgotten(rule: &Rule) -> bool {
    let always = match &rule.when {
        None => true,
        Some(Condition::All(parts)) => parts.is_empty(),
        Some(_) => false,
    };
    always && rule.verdict.is_some() && rule.tier != Tier::Default && !rule.temporary && rule.season.is_none()
}
