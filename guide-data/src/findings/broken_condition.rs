//! A rule's condition names something that does not exist or cannot be read.

use super::{Finding, Place, Severity, Subject};
use crate::condition::Condition;
use crate::facts::{FACTS, FactKind, fact};
use crate::fix::Fix;
use crate::measure::Dimension;
use crate::resolve::ConditionProblem;
use crate::ruleset::is_acknowledged;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    for (rule, problem) in &subject.compiled.rules.problems {
        let place = Place::of("rule", rule, "when");
        let finding =
            Finding::new(Severity::Error, "broken-condition", place).rules(std::slice::from_ref(rule));
        let finding = match problem {
            ConditionProblem::UnknownFact { fact } => {
                finding.arg("problem", "unknown-fact").arg("fact", fact).arg("value", "")
            }
            ConditionProblem::UnknownValue { fact, value } => {
                finding.arg("problem", "unknown-value").arg("fact", fact).arg("value", value)
            }
            ConditionProblem::Unreadable { fact, words, problem } => {
                finding.arg("problem", problem).arg("fact", fact).arg("value", words)
            }
            ConditionProblem::NoValues { fact } => {
                finding.arg("problem", "no-values").arg("fact", fact).arg("value", "")
            }
        };
        let fixes = fixes(subject, rule, problem);
        found.push(finding.tries(fixes));
    }
}

fn fixes(subject: &Subject<'_>, id: &str, problem: &ConditionProblem) -> Vec<Fix> {
    let Some(when) = subject.rules.get(id).filter(|r| !is_acknowledged(r)).and_then(|r| r.when.as_ref())
    else {
        // An exception to a safety rule that is asleep is not woken by a guess.
        return Vec::new();
    };
    let rule = id.to_owned();
    match problem {
        ConditionProblem::UnknownFact { fact } => {
            let compared = measures(when, fact);
            let fits = |kind: FactKind| {
                compared == matches!(kind, FactKind::Measure(_) | FactKind::Day | FactKind::YearDay)
            };
            let among = FACTS.iter().filter(|f| fits(f.kind)).map(|f| f.id);
            subject
                .guess(fact, among)
                .into_iter()
                .map(|with| Fix::ReplaceFact { rule: rule.clone(), fact: fact.clone(), with })
                .collect()
        }
        ConditionProblem::UnknownValue { fact: name, value } => {
            let known = subject.compiled.guide.variables.iter().find(|v| v.fact == *name);
            let values = known.map(|v| v.values.as_slice()).unwrap_or_default();
            let mut fixes: Vec<Fix> = subject
                .guess(value, values.iter().map(String::as_str))
                .into_iter()
                .map(|with| replace(&rule, name, value, &with))
                .collect();
            if others_beside(when, name, value) {
                let (fact, value) = (name.clone(), value.clone());
                fixes.push(Fix::RemoveValue { rule, fact, value });
            }
            fixes
        }
        ConditionProblem::Unreadable { fact: name, words, problem } => {
            readings(name, words, problem).iter().map(|with| replace(&rule, name, words, with)).collect()
        }
        ConditionProblem::NoValues { .. } => Vec::new(),
    }
}

fn replace(rule: &str, fact: &str, value: &str, with: &str) -> Fix {
    let [rule, fact, value, with] = [rule, fact, value, with].map(str::to_owned);
    Fix::ReplaceValue { rule, fact, value, with }
}

/// What somebody may have meant who wrote a measure without a unit, or below nothing.
pub(super) fn readings(name: &str, words: &str, problem: &str) -> Vec<String> {
    let Some(FactKind::Measure(dimension)) = fact(name).map(|f| f.kind) else { return Vec::new() };
    let words = words.trim();
    match problem {
        "no-unit" => {
            let units: &[&str] = match dimension {
                Dimension::Length => &["in", "cm"],
                Dimension::Volume => &["gal", "l"],
                Dimension::Mass => &["lb", "kg"],
                Dimension::Count => &[],
            };
            units.iter().map(|unit| format!("{words} {unit}")).collect()
        }
        "negative" => vec![words.trim_start_matches(['-', '−', ' ']).to_owned()],
        _ => Vec::new(),
    }
}

/// True when the condition compares the fact with a measure.
fn measures(condition: &Condition, fact: &str) -> bool {
    match condition {
        Condition::All(parts) | Condition::Any(parts) => parts.iter().any(|p| measures(p, fact)),
        Condition::Not(part) => measures(part, fact),
        Condition::Is(_) => false,
        Condition::Measure(bounds) => bounds.fact == fact,
    }
}

/// True when wherever the value is named, others are named beside it.
fn others_beside(condition: &Condition, fact: &str, value: &str) -> bool {
    match condition {
        Condition::All(parts) | Condition::Any(parts) => parts.iter().all(|p| others_beside(p, fact, value)),
        Condition::Not(part) => others_beside(part, fact, value),
        Condition::Is(one) => {
            one.fact != fact || one.of.iter().all(|v| v != value) || one.of.iter().any(|v| v != value)
        }
        Condition::Measure(_) => true,
    }
}
