//! A rule decides no case of any item: it is beaten everywhere, or its condition cannot hold.

use std::collections::BTreeSet;

use super::{Finding, Place, Severity, Subject};
use crate::fix::Fix;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let guide = &subject.compiled.guide;
    let used: BTreeSet<&str> = guide.outcomes.iter().flat_map(|o| &o.rules).map(String::as_str).collect();
    let broken: BTreeSet<&str> =
        subject.compiled.rules.problems.iter().map(|(rule, _)| rule.as_str()).collect();
    let beaten: BTreeSet<&str> =
        subject.program.rules.iter().flat_map(|r| &r.overrides).map(String::as_str).collect();
    for rule in subject.program.rules.iter().filter(|r| r.verdict.is_some()) {
        if !used.contains(rule.id.as_str()) && !broken.contains(rule.id.as_str()) {
            let finding =
                Finding::new(Severity::Warning, "rule-never-applies", Place::of("rule", &rule.id, ""))
                    .rules(std::slice::from_ref(&rule.id));
            // What decides nothing can go without changing an answer, unless another rule goes before it:
            // that may be how the other beats a third one, or why it is as strong as it is.
            let remove = [Fix::RemoveRule { rule: rule.id.clone() }];
            let loose = !beaten.contains(rule.id.as_str());
            found.push(if loose { finding.fixes(remove) } else { finding.tries(remove) });
        }
    }
}
