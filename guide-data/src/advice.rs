//! Everything the guide can say about an item, as a tree: for a page with no program behind it, which
//! cannot ask one thing after the other.

use chrono::NaiveDate;

use crate::ask::{Answer, Choice, Ends, Given, Known, Step, ValueLabel};
use crate::domain::{Variable, day_number, year_day};
use crate::guide::Guide;

/// All that can be said about an item.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Advice {
    /// The answer.
    Answer(Box<Answer>),
    /// It depends on a fact.
    Depends {
        /// The fact: words under `ask-<fact>`.
        fact: String,
        /// What it can be, and what follows. No two branches lead to the same.
        branches: Vec<Branch>,
    },
}

/// Values of a fact that lead to the same advice.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Branch {
    /// The values, in the order in which they are asked; ranges that touch are one.
    pub labels: Vec<ValueLabel>,
    /// What to note for each value asked about, before ranges were joined.
    pub given: Vec<Given>,
    /// Whoever cannot tell is led here too.
    pub cannot_tell: bool,
    /// What follows.
    pub advice: Advice,
}

/// The most steps that are taken to work out an item's advice: far more than a page can show, far fewer
/// than the millions that an item with every fact open would take.
const MOST_STEPS: usize = 20_000;

/// Days on which the advice stays the same.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Stretch {
    /// The first of these days.
    pub from: NaiveDate,
    /// The advice.
    pub advice: Advice,
}

impl Guide {
    /// All that can be said about an item from what is known. `None` for an item that does not exist, and
    /// for one that depends on so much that no page could show it.
    #[must_use]
    pub fn advice(&self, item: usize, known: &Known) -> Option<Advice> {
        let mut steps = 0;
        self.advice_within(item, known, &mut steps)
    }

    fn advice_within(&self, item: usize, known: &Known, steps: &mut usize) -> Option<Advice> {
        *steps += 1;
        if *steps > MOST_STEPS {
            return None;
        }
        let question = match self.next(item, known)? {
            Step::Answer(answer) => return Some(Advice::Answer(Box::new(answer))),
            Step::Ask(question) => question,
        };
        let mut branches: Vec<Branch> = Vec::new();
        let mut last = None;
        for Choice { label, given } in question.options {
            let advice =
                self.advice_within(item, &known.clone().with(&question.fact, given.clone()), steps)?;
            let at = branches.iter().position(|b| told_alike(&b.advice, &advice));
            match at.and_then(|at| branches.get_mut(at)) {
                Some(branch) => {
                    let touches = last == at;
                    match branch.labels.last_mut() {
                        Some(before) if touches => {
                            if let Some(next) = joined(before, label) {
                                branch.labels.push(next);
                            }
                        }
                        _ => branch.labels.push(label),
                    }
                    branch.given.push(given);
                }
                None => branches.push(Branch {
                    labels: vec![label],
                    given: vec![given],
                    cannot_tell: false,
                    advice,
                }),
            }
            last = at.or(branches.len().checked_sub(1));
        }
        let unknown = known.clone().with(&question.fact, Given::CannotTell);
        let unknown = self.advice_within(item, &unknown, steps)?;
        match branches.iter_mut().find(|b| told_alike(&b.advice, &unknown)) {
            Some(branch) => branch.cannot_tell = true,
            None => branches.push(Branch {
                labels: Vec::new(),
                given: Vec::new(),
                cannot_tell: true,
                advice: unknown,
            }),
        }
        Some(match branches.as_slice() {
            // Questions that matter lead to different answers, but for what was assumed.
            [_] => branches.remove(0).advice,
            _ => Advice::Depends { fact: question.fact, branches },
        })
    }

    /// All that can be said about an item on the days from one on, in stretches of days with the same
    /// advice.
    #[must_use]
    pub fn advice_over(&self, item: usize, from: NaiveDate, days: usize) -> Option<Vec<Stretch>> {
        let of = |fact: &str| self.variables.iter().find(|v| v.fact == fact);
        let (day, year) = (of("day"), of("time-of-year"));
        let interval = |variable: Option<&Variable>, number: i64| variable.map(|v| v.interval_of(number));
        let mut stretches: Vec<Stretch> = Vec::new();
        let mut before = None;
        for date in from.iter_days().take(days.max(1)) {
            let here = (interval(day, day_number(date)), interval(year, year_day(date)));
            if before == Some(here) {
                continue;
            }
            before = Some(here);
            let advice = self.advice(item, &Known::default().with("day", Given::Day(date)))?;
            if stretches.last().is_none_or(|s| s.advice != advice) {
                stretches.push(Stretch { from: date, advice });
            }
        }
        Some(stretches)
    }
}

/// Joins a range to the one before it; anything else is given back.
fn joined(before: &mut ValueLabel, next: ValueLabel) -> Option<ValueLabel> {
    match (before, next) {
        (ValueLabel::Range(low), ValueLabel::Range(high)) => {
            let Ends { at_most, under, high, .. } = high;
            *low = Ends { at_most, under, high, ..low.clone() };
            None
        }
        (_, next) => Some(next),
    }
}

/// The same, whatever was assumed to get there.
fn told_alike(one: &Advice, other: &Advice) -> bool {
    match (one, other) {
        (Advice::Answer(a), Advice::Answer(b)) => a.parts == b.parts,
        (Advice::Depends { fact: a, branches: some }, Advice::Depends { fact: b, branches: others }) => {
            a == b
                && some.len() == others.len()
                && some.iter().zip(others).all(|(s, o)| {
                    s.labels == o.labels && s.cannot_tell == o.cannot_tell && told_alike(&s.advice, &o.advice)
                })
        }
        _ => false,
    }
}
