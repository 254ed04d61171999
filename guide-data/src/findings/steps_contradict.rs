//! One answer asks for two steps that nobody can follow both of.

use std::collections::BTreeSet;

use super::{Finding, Place, Severity, Subject};
use crate::fix::Fix;
use crate::guide::Outcome;
use crate::program::Rule;
use crate::standard::OPPOSITE_STEPS;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let guide = &subject.compiled.guide;
    let both = |o: &Outcome, one: &str, other: &str| {
        o.steps.iter().any(|s| s == one) && o.steps.iter().any(|s| s == other)
    };
    for &(one, other) in OPPOSITE_STEPS {
        // Mostly no outcome has both, and no item need be looked at.
        if !guide.outcomes.iter().any(|o| both(o, one, other)) {
            continue;
        }
        let mut told: BTreeSet<Vec<String>> = BTreeSet::new();
        for item in &guide.items {
            for part in &item.subjects {
                for outcome in guide.reached(part).into_iter().filter(|o| both(o, one, other)) {
                    let rules = asking(subject, outcome, &[one, other]);
                    if !told.insert(rules.iter().map(|r| r.id.clone()).collect()) {
                        continue;
                    }
                    let ids: Vec<String> = rules.iter().map(|r| r.id.clone()).collect();
                    let first = ids.first().map_or("", String::as_str);
                    let drop = rules.iter().flat_map(|rule| {
                        rule.prepare.iter().filter(|s| [one, other].contains(&s.as_str())).map(|step| {
                            Fix::Remove { place: Place::of("rule", &rule.id, "prepare"), value: step.clone() }
                        })
                    });
                    found.push(
                        Finding::new(
                            Severity::Warning,
                            "steps-contradict",
                            Place::of("rule", first, "prepare"),
                        )
                        .arg("one", one)
                        .arg("other", other)
                        .rules(&ids)
                        .witness(guide.likeliest(&item.id, part, &|o| o == outcome))
                        .tries(drop),
                    );
                }
            }
        }
    }
}

/// The rules that may have asked for steps of an answer: those that decided it, and those that
/// only add steps.
pub(super) fn asking<'a>(subject: &Subject<'a>, outcome: &Outcome, steps: &[&str]) -> Vec<&'a Rule> {
    let asks = |rule: &&Rule| rule.prepare.iter().any(|s| steps.contains(&s.as_str()));
    let deciding = outcome.rules.iter().filter_map(|id| subject.rules.get(id.as_str()).copied());
    let mut rules: Vec<&Rule> = deciding.filter(asks).collect();
    let has = |rules: &[&Rule], step: &str| rules.iter().any(|r| r.prepare.iter().any(|s| s == step));
    if steps.iter().any(|step| !has(&rules, step)) {
        rules.extend(subject.adding.iter().copied().filter(asks));
    }
    rules
}
