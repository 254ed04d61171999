//! A rule's condition contradicts itself: whatever items there are, it never holds.

use std::collections::{BTreeMap, BTreeSet};

use super::{Finding, Place, Severity, Subject};
use crate::condition::{Bounds, Condition};
use crate::diagram::{Diagram, FALSE, Ref, TooMuch};
use crate::domain::{Bound, ValueSet, Variable, stated};
use crate::facts::{FACTS, SIDES, fact_index};
use crate::fix::Fix;
use crate::resolve::Resolved;
use crate::ruleset::is_acknowledged;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let variables = &subject.compiled.guide.variables;
    let broken: BTreeSet<&str> =
        subject.compiled.rules.problems.iter().map(|(rule, _)| rule.as_str()).collect();
    // One store for all rules, so that its bound is one on the whole work.
    let mut store = Diagram::default();
    for ready in &subject.compiled.rules.rules {
        let Some(rule) = subject.rules.get(ready.id.as_str()) else { continue };
        let Some(when) = &rule.when else { continue };
        // What cannot be read, or is empty, is told elsewhere.
        if broken.contains(ready.id.as_str()) || super::empty_condition::has_empty(when, true) {
            continue;
        }
        if super::season_broken::is_broken(rule) || !may_contradict(&ready.condition, variables) {
            continue;
        }
        let Ok(possible) = ready.condition.diagram(variables, &mut store) else { return };
        let Ok(possible) = in_order(possible, &ready.condition, variables, &mut store) else { return };
        if possible != FALSE {
            continue;
        }
        let fact = clashing_fact(&ready.condition, variables);
        let fixes = if is_acknowledged(rule) { Vec::new() } else { bounds_to_drop(&ready.id, when) };
        found.push(
            Finding::new(Severity::Error, "impossible-condition", Place::of("rule", &ready.id, "when"))
                .arg("problem", if fact.is_empty() { "parts" } else { "fact" })
                .arg("fact", fact)
                .rules(std::slice::from_ref(&ready.id))
                .tries(fixes),
        );
    }
}

/// What is left of a condition's cases when no side is longer than one that is called longer. Two
/// sides at a time are enough: where each two fit, a length for all three can be found.
fn in_order(
    possible: Ref,
    condition: &Resolved,
    variables: &[Variable],
    store: &mut Diagram,
) -> Result<Ref, TooMuch> {
    fn asked(condition: &Resolved, negated: bool, spoken: &mut BTreeMap<usize, bool>) {
        match condition {
            Resolved::Always | Resolved::Never => {}
            Resolved::All(parts) | Resolved::Any(parts) => {
                parts.iter().for_each(|p| asked(p, negated, spoken));
            }
            Resolved::Not(part) => asked(part, true, spoken),
            Resolved::In { variable, .. } => *spoken.entry(*variable).or_default() |= negated,
        }
    }
    // A side that nobody stated satisfies what is denied of it, and is in no order.
    let mut spoken = BTreeMap::new();
    asked(condition, false, &mut spoken);
    let sides: Vec<(usize, &Variable)> = SIDES
        .iter()
        .filter_map(|side| fact_index(side))
        .filter(|at| spoken.get(at) == Some(&false))
        .filter_map(|at| Some((at, variables.get(at)?)))
        .collect();
    let mut sum = possible;
    for (place, &(longer, long)) in sides.iter().enumerate() {
        for &(shorter, short) in sides.iter().skip(place + 1) {
            for l in 0..long.size() {
                // Every shorter side that begins above the longer one's end.
                let mut above = ValueSet::none(short.size());
                (0..short.size())
                    .filter(|&s| short.range_of(s).0 > long.range_of(l).1)
                    .for_each(|s| above.insert(s));
                let mut here = ValueSet::none(long.size());
                here.insert(l);
                let clash = Resolved::Not(Box::new(Resolved::All(vec![
                    Resolved::In { variable: longer, set: here },
                    Resolved::In { variable: shorter, set: above },
                ])));
                let orderly = clash.diagram(variables, store)?;
                sum = store.and(sum, orderly)?;
            }
        }
    }
    Ok(sum)
}

/// False when no contradiction can be in it: no fact is spoken of twice, no two sides are, and each
/// part can hold and fail.
fn may_contradict(condition: &Resolved, variables: &[Variable]) -> bool {
    fn walk(condition: &Resolved, variables: &[Variable], seen: &mut BTreeSet<usize>) -> bool {
        match condition {
            Resolved::Always => false,
            Resolved::Never => true,
            Resolved::All(parts) | Resolved::Any(parts) => parts.iter().any(|p| walk(p, variables, seen)),
            Resolved::Not(part) => walk(part, variables, seen),
            Resolved::In { variable, set } => {
                let size = variables.get(*variable).map_or(0, Variable::size);
                let held = (0..size).filter(|&v| set.contains(v)).count();
                !seen.insert(*variable) || held == 0 || held == size
            }
        }
    }
    let mut seen = BTreeSet::new();
    walk(condition, variables, &mut seen)
        || SIDES.iter().filter_map(|side| fact_index(side)).filter(|at| seen.contains(at)).count() > 1
}

/// The fact of which the condition's own parts ask things that exclude each other.
fn clashing_fact(condition: &Resolved, variables: &[Variable]) -> &'static str {
    let parts = match condition {
        Resolved::All(parts) => parts.as_slice(),
        other => std::slice::from_ref(other),
    };
    let mut left: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
    for part in parts {
        let (variable, set, holds) = match part {
            Resolved::In { variable, set } => (*variable, set, true),
            Resolved::Not(inner) => match &**inner {
                Resolved::In { variable, set } => (*variable, set, false),
                _ => continue,
            },
            _ => continue,
        };
        let size = variables.get(variable).map_or(0, Variable::size);
        left.entry(variable).or_insert_with(|| (0..size).collect()).retain(|&v| set.contains(v) == holds);
    }
    let clash = left.iter().find(|(_, values)| values.is_empty());
    clash.and_then(|(&variable, _)| FACTS.get(variable)).map_or("", |f| f.id)
}

/// Edits that each drop one of two thresholds that are both asked of one fact.
fn bounds_to_drop(rule: &str, when: &Condition) -> Vec<Fix> {
    fn collect<'c>(condition: &'c Condition, found: &mut Vec<&'c Bounds>) {
        match condition {
            Condition::All(parts) | Condition::Any(parts) => parts.iter().for_each(|p| collect(p, found)),
            Condition::Not(part) => collect(part, found),
            Condition::Is(_) => {}
            Condition::Measure(bounds) => found.push(bounds),
        }
    }
    let mut measures = Vec::new();
    collect(when, &mut measures);
    let two = measures.iter().filter(|b| Bound::ALL.iter().filter(|&&o| stated(b, o).is_some()).count() > 1);
    two.flat_map(|bounds| {
        Bound::ALL.into_iter().filter_map(|bound| stated(bounds, bound)).map(|words| Fix::RemoveValue {
            rule: rule.to_owned(),
            fact: bounds.fact.clone(),
            value: words.to_owned(),
        })
    })
    .collect()
}
