//! A container's own rules cannot be followed: a kind nobody knows or twice the same, a limit that
//! is no measure, a kind of home that does not exist.

use std::collections::BTreeSet;

use super::{Finding, Place, Severity, Subject};
use crate::facts::{FactKind, fact};
use crate::fix::Fix;
use crate::measure::{Dimension, Measure};
use crate::standard::CONTAINER_RULES;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let dwellings = match fact("dwelling").map(|f| f.kind) {
        Some(FactKind::Choice(values)) => values,
        _ => &[],
    };
    for container in subject.program.streams.iter().flat_map(|s| &s.containers) {
        let mut tell = |field: &str, problem: &str, value: &str, fixes: Vec<Fix>| {
            found.push(
                Finding::new(
                    Severity::Error,
                    "container-rule-broken",
                    Place::of("container", &container.id, field),
                )
                .arg("problem", problem)
                .arg("value", value)
                .tries(fixes),
            );
        };
        let at = |field: &str| Place::of("container", &container.id, field);
        let remove = |field: &str, value: &str| Fix::Remove { place: at(field), value: value.to_owned() };
        let mut seen = BTreeSet::new();
        for rule in &container.rules {
            if !CONTAINER_RULES.contains(&rule.kind.as_str()) {
                let fixes = subject.did_you_mean(&at("rules"), &rule.kind, CONTAINER_RULES.iter().copied());
                tell("rules", "unknown-kind", &rule.kind, fixes);
            } else if !seen.insert(rule.kind.as_str()) {
                tell("rules", "twice", &rule.kind, Vec::new());
            }
            if let Some(limit) = rule.limit.as_deref().filter(|l| !readable(&rule.kind, l)) {
                tell("limit", "limit", limit, vec![remove("limit", limit)]);
            }
        }
        for dwelling in container.dwellings.iter().filter(|d| !dwellings.contains(&d.as_str())) {
            let mut fixes = subject.did_you_mean(&at("dwellings"), dwelling, dwellings.iter().copied());
            // With nothing left in the list the container would be everybody's.
            if container.dwellings.iter().any(|d| dwellings.contains(&d.as_str())) {
                fixes.push(remove("dwellings", dwelling));
            }
            tell("dwellings", "unknown-dwelling", dwelling, fixes);
        }
    }
}

/// A limit that says how much: of what a rule of its kind limits, where that is known.
fn readable(kind: &str, limit: &str) -> bool {
    let is = |dimension: Dimension| Measure::parse(limit, dimension).is_ok();
    match kind {
        "weight" => is(Dimension::Mass),
        "distance" => is(Dimension::Length),
        "share-of-load" => {
            limit.trim().strip_suffix('%').is_some_and(|n| Measure::parse(n, Dimension::Count).is_ok())
        }
        _ => [Dimension::Length, Dimension::Volume, Dimension::Mass, Dimension::Count].into_iter().any(is),
    }
}
