//! A rule's condition names something that does not exist or cannot be read.

use super::{Finding, Place, Severity, Subject};
use crate::resolve::ConditionProblem;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    for (rule, problem) in &subject.compiled.rules.problems {
        let place = Place::of("rule", rule, "when");
        let finding =
            Finding::new(Severity::Error, "broken-condition", place).rules(std::slice::from_ref(rule));
        found.push(match problem {
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
        });
    }
}
