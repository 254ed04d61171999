//! Conditions with their names looked up: facts become variables, values become indexes.
//!
//! Whatever cannot be looked up is collected as a problem and holds never, so that a slip in one
//! rule cannot make it apply everywhere.

use crate::condition::Condition;
use crate::diagram::{Diagram, FALSE, Ref, TRUE, TooMuch};
use crate::domain::{Bound, ValueSet, Variable, intervals, normalised, stated};
use crate::facts::{FACTS, FactKind, fact_index};
use crate::program::Program;

/// A condition ready to be evaluated.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Resolved {
    Always,
    Never,
    All(Vec<Resolved>),
    Any(Vec<Resolved>),
    Not(Box<Resolved>),
    In { variable: usize, set: ValueSet },
}

/// Why a part of a condition could not be looked up.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum ConditionProblem {
    UnknownFact { fact: String },
    UnknownValue { fact: String, value: String },
    Unreadable { fact: String, words: String, problem: &'static str },
    NoValues { fact: String },
}

/// What is known of one variable of a subject.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Knowledge {
    /// It has this value.
    Is(usize),
    /// A measure that nobody stated: it satisfies no comparison.
    Unstated,
    /// It may differ and can be asked.
    Open,
}

/// Facts that never count as anything else: what is dangerous stays so.
pub(crate) const NEVER_COUNT_AS: &[&str] = &["hazard", "battery"];

/// Which values count as which other one, by variable: from and to, as positions.
#[derive(Debug, Clone, Default)]
pub(crate) struct Counting(Vec<(usize, usize, usize)>);

impl Counting {
    /// The readable part of what a program says; the rest is a finding.
    pub(crate) fn of(program: &Program, variables: &[Variable]) -> Self {
        let mut list = Vec::new();
        for entry in program.counts_as.iter().filter(|e| !NEVER_COUNT_AS.contains(&e.fact.as_str())) {
            let Some(at) = fact_index(&entry.fact) else { continue };
            let Some(variable) = variables.get(at) else { continue };
            let Some(to) = variable.index_of(&entry.count_as) else { continue };
            let these = entry.these.iter().filter_map(|v| variable.index_of(v)).filter(|&v| v != to);
            list.extend(these.map(|from| (at, from, to)));
        }
        Self(list)
    }

    /// Makes values that count as another be in a set exactly when that other one is.
    fn apply(&self, variable: usize, named: &ValueSet, set: &mut ValueSet) {
        for &(_, from, to) in self.0.iter().filter(|(at, ..)| *at == variable) {
            if named.contains(to) {
                set.insert(from);
            } else {
                set.remove(from);
            }
        }
    }
}

pub(crate) fn resolve(
    condition: &Condition,
    variables: &[Variable],
    counting: &Counting,
    problems: &mut Vec<ConditionProblem>,
) -> Resolved {
    match condition {
        Condition::All(parts) => {
            all(parts.iter().map(|p| resolve(p, variables, counting, problems)).collect())
        }
        Condition::Any(parts) => {
            any(parts.iter().map(|p| resolve(p, variables, counting, problems)).collect())
        }
        Condition::Not(part) => {
            let before = problems.len();
            let inner = resolve(part, variables, counting, problems);
            // The opposite of something unreadable is unreadable too, not "always".
            if problems.len() > before { Resolved::Never } else { not(inner) }
        }
        Condition::Is(one) => {
            let Some(variable) = fact_index(&one.fact) else {
                problems.push(ConditionProblem::UnknownFact { fact: one.fact.clone() });
                return Resolved::Never;
            };
            let Some(known) = variables.get(variable) else { return Resolved::Never };
            if one.of.is_empty() {
                problems.push(ConditionProblem::NoValues { fact: one.fact.clone() });
            }
            let mut set = ValueSet::none(known.size());
            for value in &one.of {
                match known.index_of(value) {
                    Some(index) => set.insert(index),
                    None => problems.push(ConditionProblem::UnknownValue {
                        fact: one.fact.clone(),
                        value: value.clone(),
                    }),
                }
            }
            let named = set.clone();
            counting.apply(variable, &named, &mut set);
            Resolved::In { variable, set }
        }
        Condition::Measure(bounds) => {
            let Some(index) = fact_index(&bounds.fact) else {
                problems.push(ConditionProblem::UnknownFact { fact: bounds.fact.clone() });
                return Resolved::Never;
            };
            let (Some(fact), Some(known)) = (FACTS.get(index), variables.get(index)) else {
                return Resolved::Never;
            };
            let before = problems.len();
            let mut some = false;
            for words in Bound::ALL.into_iter().filter_map(|b| stated(bounds, b)) {
                some = true;
                if let Err(problem) = normalised(fact.kind, words) {
                    problems.push(ConditionProblem::Unreadable {
                        fact: bounds.fact.clone(),
                        words: words.to_owned(),
                        problem,
                    });
                }
            }
            if !some {
                problems.push(ConditionProblem::NoValues { fact: bounds.fact.clone() });
            }
            if problems.len() > before {
                return Resolved::Never;
            }
            Resolved::In { variable: index, set: intervals(known, fact.kind, bounds) }
        }
    }
}

pub(crate) fn all(parts: Vec<Resolved>) -> Resolved {
    let mut kept = Vec::new();
    for part in parts {
        match part {
            Resolved::Always => {}
            Resolved::Never => return Resolved::Never,
            Resolved::All(inner) => kept.extend(inner),
            other => kept.push(other),
        }
    }
    match kept.len() {
        0 => Resolved::Always,
        1 => kept.pop().unwrap_or(Resolved::Always),
        _ => Resolved::All(kept),
    }
}

fn any(parts: Vec<Resolved>) -> Resolved {
    let mut kept = Vec::new();
    for part in parts {
        match part {
            Resolved::Never => {}
            Resolved::Always => return Resolved::Always,
            Resolved::Any(inner) => kept.extend(inner),
            other => kept.push(other),
        }
    }
    match kept.len() {
        0 => Resolved::Never,
        1 => kept.pop().unwrap_or(Resolved::Never),
        _ => Resolved::Any(kept),
    }
}

fn not(part: Resolved) -> Resolved {
    match part {
        Resolved::Always => Resolved::Never,
        Resolved::Never => Resolved::Always,
        Resolved::Not(inner) => *inner,
        other => Resolved::Not(Box::new(other)),
    }
}

/// Whether a condition holds, as far as the known facts tell.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Met {
    No,
    Yes,
    Open,
}

impl Resolved {
    /// Whether the condition certainly holds or certainly does not; quicker than working out what
    /// remains of it, and enough for most rules and most subjects.
    pub(crate) fn met(&self, known: &[Knowledge]) -> Met {
        match self {
            Self::Always => Met::Yes,
            Self::Never => Met::No,
            Self::All(parts) => {
                let mut sum = Met::Yes;
                for part in parts {
                    match part.met(known) {
                        Met::No => return Met::No,
                        Met::Open => sum = Met::Open,
                        Met::Yes => {}
                    }
                }
                sum
            }
            Self::Any(parts) => {
                let mut sum = Met::No;
                for part in parts {
                    match part.met(known) {
                        Met::Yes => return Met::Yes,
                        Met::Open => sum = Met::Open,
                        Met::No => {}
                    }
                }
                sum
            }
            Self::Not(part) => match part.met(known) {
                Met::No => Met::Yes,
                Met::Yes => Met::No,
                Met::Open => Met::Open,
            },
            Self::In { variable, set } => match known.get(*variable) {
                Some(Knowledge::Is(value)) if set.contains(*value) => Met::Yes,
                Some(Knowledge::Is(_) | Knowledge::Unstated) | None => Met::No,
                Some(Knowledge::Open) => Met::Open,
            },
        }
    }

    /// What remains of the condition once a subject's facts are known.
    pub(crate) fn given(&self, known: &[Knowledge]) -> Self {
        match self {
            Self::Always => Self::Always,
            Self::Never => Self::Never,
            Self::All(parts) => {
                let mut kept = Vec::new();
                for part in parts {
                    match part.given(known) {
                        Self::Always => {}
                        Self::Never => return Self::Never,
                        other => kept.push(other),
                    }
                }
                all(kept)
            }
            Self::Any(parts) => {
                let mut kept = Vec::new();
                for part in parts {
                    match part.given(known) {
                        Self::Never => {}
                        Self::Always => return Self::Always,
                        other => kept.push(other),
                    }
                }
                any(kept)
            }
            Self::Not(part) => not(part.given(known)),
            Self::In { variable, set } => match known.get(*variable) {
                Some(Knowledge::Is(value)) if set.contains(*value) => Self::Always,
                Some(Knowledge::Is(_) | Knowledge::Unstated) | None => Self::Never,
                Some(Knowledge::Open) => self.clone(),
            },
        }
    }

    /// The condition as a diagram over the variables that are still open.
    pub(crate) fn diagram(&self, variables: &[Variable], store: &mut Diagram) -> Result<Ref, TooMuch> {
        match self {
            Self::Always => Ok(TRUE),
            Self::Never => Ok(FALSE),
            Self::All(parts) => {
                let mut sum = TRUE;
                for part in parts {
                    let next = part.diagram(variables, store)?;
                    sum = store.and(sum, next)?;
                }
                Ok(sum)
            }
            Self::Any(parts) => {
                let mut sum = FALSE;
                for part in parts {
                    let next = part.diagram(variables, store)?;
                    sum = store.or(sum, next)?;
                }
                Ok(sum)
            }
            Self::Not(part) => {
                let inner = part.diagram(variables, store)?;
                store.not(inner)
            }
            Self::In { variable, set } => {
                let size = variables.get(*variable).map_or(1, Variable::size);
                let children = (0..size).map(|v| if set.contains(v) { TRUE } else { FALSE }).collect();
                store.make(u16::try_from(*variable).map_err(|_| TooMuch)?, children)
            }
        }
    }
}

/// The kind of a fact by its index.
pub(crate) fn kind_of(variable: usize) -> FactKind {
    FACTS.get(variable).map_or(FactKind::Day, |f| f.kind)
}
