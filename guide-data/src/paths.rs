//! Paths through a guide's diagrams: witnesses, and shares of the fact space.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use crate::ask::{Given, Known, ValueLabel, label};
use crate::diagram::{IMPOSSIBLE, Ref, as_terminal};
use crate::guide::{Guide, Outcome, Subject};

/// A case that shows something: an item, perhaps a part of it, and answers.
#[derive(Debug, Clone, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Witness {
    /// The item's id.
    pub item: String,
    /// The part's id.
    #[serde(skip_serializing_if = "Option::is_none", default)]
    pub part: Option<String>,
    /// What is answered: fact and value, in the order asked. No more than needed.
    pub answers: Vec<(String, ValueLabel)>,
    /// The same in the form the guide takes.
    pub known: Vec<(String, Given)>,
}

impl Witness {
    /// What to give the guide to meet the case again.
    #[must_use]
    pub fn known(&self) -> Known {
        self.known.iter().fold(Known::default(), |k, (fact, given)| k.with(fact, given.clone()))
    }
}

/// The likeliest path from a node to a terminal, found from the bottom up.
type Best = Option<(f64, Option<(u16, usize, Ref)>)>;

impl Guide {
    /// What the guide says in a witness's case: a walk by nothing but what it knows. `None` when
    /// that leaves anything open, which would make it no witness.
    #[must_use]
    pub fn replay(&self, witness: &Witness) -> Option<&Outcome> {
        let item = self.items.get(self.item_index(&witness.item)?)?;
        let mut at = item.subjects.iter().find(|s| s.part == witness.part)?.root;
        while let Some(node) = self.node(at) {
            let variable = self.variables.get(usize::from(node.variable))?;
            let (_, given) = witness.known.iter().find(|(fact, _)| *fact == variable.fact)?;
            at = crate::diagram::child(node, self.given_index(usize::from(node.variable), given)?);
        }
        self.outcomes.get(as_terminal(at)?)
    }

    /// The likeliest case of a subject whose outcome satisfies a condition.
    pub(crate) fn likeliest(
        &self,
        item: &str,
        subject: &Subject,
        wanted: &dyn Fn(&Outcome) -> bool,
    ) -> Option<Witness> {
        let mut memo = BTreeMap::new();
        self.search(subject.root, subject, wanted, &mut memo)?;
        let mut witness = Witness { item: item.to_owned(), part: subject.part.clone(), ..Witness::default() };
        let mut at = subject.root;
        while let Some(Some((_, Some((variable, value, next))))) = memo.get(&at) {
            if let Some(known) = self.variables.get(usize::from(*variable)) {
                witness.answers.push((known.fact.clone(), label(known, *value)));
                let given = if known.measured {
                    Given::Interval(*value)
                } else {
                    Given::Value(known.values.get(*value).cloned().unwrap_or_default())
                };
                witness.known.push((known.fact.clone(), given));
            }
            at = *next;
        }
        Some(witness)
    }

    fn search(
        &self,
        at: Ref,
        subject: &Subject,
        wanted: &dyn Fn(&Outcome) -> bool,
        memo: &mut BTreeMap<Ref, Best>,
    ) -> Option<f64> {
        if at == IMPOSSIBLE {
            return None;
        }
        if let Some(known) = memo.get(&at) {
            return known.map(|(p, _)| p);
        }
        let best: Best = match self.node(at) {
            None => {
                as_terminal(at).and_then(|t| self.outcomes.get(t)).filter(|o| wanted(o)).map(|_| (1.0, None))
            }
            Some(node) => {
                let mut best: Best = None;
                for (value, share) in shares(subject, node.variable, node.children.len()) {
                    let next = crate::diagram::child(node, value);
                    let Some(below) = self.search(next, subject, wanted, memo) else { continue };
                    if best.is_none_or(|(p, _)| below * share > p) {
                        best = Some((below * share, Some((node.variable, value, next))));
                    }
                }
                best
            }
        };
        memo.insert(at, best);
        best.map(|(p, _)| p)
    }

    /// The share of a subject's cases, weighted by how likely they are, whose outcome satisfies a
    /// condition: 0 to 1.
    pub(crate) fn share(
        &self,
        subject: &Subject,
        taken: &BTreeMap<u16, usize>,
        wanted: &dyn Fn(&Outcome) -> bool,
    ) -> f64 {
        let mut memo = BTreeMap::new();
        let (yes, possible) = self.weigh(subject.root, subject, taken, wanted, &mut memo);
        if possible > 0.0 { yes / possible } else { 0.0 }
    }

    fn weigh(
        &self,
        at: Ref,
        subject: &Subject,
        taken: &BTreeMap<u16, usize>,
        wanted: &dyn Fn(&Outcome) -> bool,
        memo: &mut BTreeMap<Ref, (f64, f64)>,
    ) -> (f64, f64) {
        if at == IMPOSSIBLE {
            return (0.0, 0.0);
        }
        if let Some(&known) = memo.get(&at) {
            return known;
        }
        let weight = match self.node(at) {
            None => {
                let hit = as_terminal(at).and_then(|t| self.outcomes.get(t)).is_some_and(wanted);
                (f64::from(u8::from(hit)), 1.0)
            }
            Some(node) => {
                if let Some(&value) = taken.get(&node.variable) {
                    self.weigh(crate::diagram::child(node, value), subject, taken, wanted, memo)
                } else {
                    let mut sum = (0.0, 0.0);
                    for (value, share) in shares(subject, node.variable, node.children.len()) {
                        let next = crate::diagram::child(node, value);
                        let (yes, possible) = self.weigh(next, subject, taken, wanted, memo);
                        sum = (sum.0 + yes * share, sum.1 + possible * share);
                    }
                    sum
                }
            }
        };
        memo.insert(at, weight);
        weight
    }

    /// A subject of which one variable is known.
    pub(crate) fn with_value(&self, subject: &Subject, variable: usize, value: usize) -> Subject {
        let mut fixed = subject.clone();
        for open in fixed.open.iter_mut().filter(|o| usize::from(o.variable) == variable) {
            open.weights.retain(|(v, _)| usize::from(*v) == value);
        }
        fixed
    }

    /// Every outcome a subject can reach, in a stable order.
    pub(crate) fn reached(&self, subject: &Subject) -> Vec<&Outcome> {
        let mut seen = BTreeMap::new();
        let mut open = vec![subject.root];
        let mut found = Vec::new();
        while let Some(at) = open.pop() {
            if at == IMPOSSIBLE || seen.insert(at, ()).is_some() {
                continue;
            }
            match self.node(at) {
                Some(node) => open.extend(
                    shares(subject, node.variable, node.children.len())
                        .into_iter()
                        .rev()
                        .map(|(value, _)| crate::diagram::child(node, value)),
                ),
                None => found.extend(as_terminal(at).and_then(|t| self.outcomes.get(t))),
            }
        }
        found
    }
}

/// The values of a variable with their shares; those that do not occur have none.
pub(crate) fn shares(subject: &Subject, variable: u16, size: usize) -> Vec<(usize, f64)> {
    match subject.open.iter().find(|o| o.variable == variable) {
        Some(open) => {
            let total: u64 = open.weights.iter().map(|(_, w)| u64::from(*w)).sum();
            #[expect(clippy::cast_precision_loss, reason = "weights are far below 2^52")]
            open.weights
                .iter()
                .map(|(v, w)| (usize::from(*v), f64::from(*w) / (total.max(1) as f64)))
                .collect()
        }
        #[expect(clippy::cast_precision_loss, reason = "a variable has few values")]
        None => (0..size).map(|v| (v, 1.0 / size.max(1) as f64)).collect(),
    }
}
