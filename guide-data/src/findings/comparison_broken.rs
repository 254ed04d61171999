//! What a threshold is likened to, or counted per, does not exist or does not fit it.

use super::{Finding, Place, Severity, Subject};
use crate::condition::{Bounds, Condition};
use crate::domain::{Bound, dimension_of, stated};
use crate::fix::Fix;
use crate::measure::{Dimension, Measure};
use crate::standard::{COMPARISONS, PERIODS};

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    for rule in &subject.program.rules {
        let mut all = Vec::new();
        if let Some(when) = &rule.when {
            collect(when, &mut all);
        }
        for bounds in all {
            let mut tell = |severity: Severity, problem: &str, value: &str, near: Vec<String>| {
                let [rule_id, fact, value_owned] =
                    [&rule.id, &bounds.fact, value].map(|s: &str| s.to_owned());
                let replace = near.into_iter().map(|with| Fix::ReplaceValue {
                    rule: rule_id.clone(),
                    fact: fact.clone(),
                    value: value_owned.clone(),
                    with,
                });
                let remove = Fix::RemoveValue {
                    rule: rule_id.clone(),
                    fact: fact.clone(),
                    value: value_owned.clone(),
                };
                found.push(
                    Finding::new(severity, "comparison-broken", Place::of("rule", &rule.id, "when"))
                        .arg("problem", problem)
                        .arg("fact", &bounds.fact)
                        .arg("value", value)
                        .rules(std::slice::from_ref(&rule.id))
                        .tries(replace.chain([remove])),
                );
            };
            if let Some(like) = &bounds.like {
                match COMPARISONS.iter().find(|(id, ..)| id == like) {
                    None => {
                        let near = subject.guess(like, COMPARISONS.iter().map(|(id, ..)| *id));
                        tell(Severity::Error, "unknown-like", like, near);
                    }
                    Some((_, dimension, _)) if dimension_of(&bounds.fact) != Some(*dimension) => {
                        tell(Severity::Error, "other-dimension", like, Vec::new());
                    }
                    Some((_, dimension, size)) if !alike(bounds, *dimension, size) => {
                        tell(Severity::Warning, "far", like, Vec::new());
                    }
                    Some(_) => {}
                }
            }
            if let Some(per) = bounds.per.as_deref().filter(|p| !PERIODS.contains(p)) {
                let near = subject.guess(per, PERIODS.iter().copied());
                tell(Severity::Error, "unknown-period", per, near);
            }
        }
    }
}

fn collect<'c>(condition: &'c Condition, found: &mut Vec<&'c Bounds>) {
    match condition {
        Condition::All(parts) | Condition::Any(parts) => parts.iter().for_each(|p| collect(p, found)),
        Condition::Not(part) => collect(part, found),
        Condition::Is(_) => {}
        Condition::Measure(bounds) => found.push(bounds),
    }
}

/// One of the thresholds is at most twice as large, and at least half as large, as the thing it is
/// likened to: beyond that nobody is helped by it. A threshold that cannot be read is told elsewhere.
fn alike(bounds: &Bounds, dimension: Dimension, size: &str) -> bool {
    let Ok(size) = Measure::parse(size, dimension) else { return true };
    let mut thresholds = Bound::ALL.into_iter().filter_map(|b| stated(bounds, b));
    thresholds.any(|words| match Measure::parse(words, dimension) {
        Ok(m) => m.value <= size.value.saturating_mul(2) && size.value <= m.value.saturating_mul(2),
        Err(_) => true,
    })
}
