//! A decision without a source, or one that has not been confirmed for a long time.

use super::{Finding, Place, Severity, Subject};

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    for rule in subject.program.rules.iter().filter(|r| r.verdict.is_some()) {
        let p = &rule.provenance;
        let missing: Vec<&str> = [
            ("decided-by", p.decided_by.trim().is_empty()),
            ("source", p.source.trim().is_empty()),
            ("confirmed", p.confirmed.is_none()),
        ]
        .into_iter()
        .filter_map(|(name, absent)| absent.then_some(name))
        .collect();
        if !missing.is_empty() {
            found.push(
                Finding::new(
                    Severity::Warning,
                    "missing-provenance",
                    Place::of("rule", &rule.id, "provenance"),
                )
                .arg("missing", missing.join(", "))
                .rules(std::slice::from_ref(&rule.id)),
            );
        }
    }
}
