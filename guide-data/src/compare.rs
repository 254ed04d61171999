//! Comparing two programs: exactly which items change, and under which answers.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use crate::ask::ValueLabel;
use crate::catalog::Catalog;
use crate::compile::{Compiled, compile_over};
use crate::diagram::{IMPOSSIBLE, Ref, as_terminal, child};
use crate::domain::variables;
use crate::guide::{Outcome, Subject};
use crate::program::Program;

/// A case that two programs answer differently.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Change {
    /// The item's id.
    pub item: String,
    /// The part's id.
    #[serde(skip_serializing_if = "Option::is_none", default)]
    pub part: Option<String>,
    /// What the first program says; `None` when it does not know the item.
    pub before: Option<Outcome>,
    /// What the second says.
    pub after: Option<Outcome>,
    /// The likeliest answers under which it changes so.
    pub answers: Vec<(String, ValueLabel)>,
    /// The share of the item's cases that change so, weighted by how likely they are: 0 to 1.
    pub share: f64,
}

/// Every change from one program to another, in catalog order; one entry for each pair of
/// different answers an item gets. What decides (rule ids) may differ without being a change:
/// verdict, destination, steps, reason, caution and temporary order count.
#[must_use]
pub fn compare(before: &Program, after: &Program, catalog: &Catalog) -> Vec<Change> {
    let with_before = catalog.with(&before.items);
    let with_after = catalog.with(&after.items);
    // Both are compiled over the same variables, so that their diagrams can be walked together.
    let everything = with_before.with(&after.items);
    let shared = variables(&[before, after], &everything);
    let a = compile_over(before, &with_before, shared.clone());
    let b = compile_over(after, &with_after, shared);
    let mut changes = Vec::new();
    for item in &everything.items {
        let first = a.guide.items.iter().find(|i| i.id == item.id);
        let second = b.guide.items.iter().find(|i| i.id == item.id);
        let subjects =
            |of: Option<&crate::guide::GuideItem>| of.map(|i| i.subjects.clone()).unwrap_or_default();
        let (first, second) = (subjects(first), subjects(second));
        let mut parts: Vec<Option<String>> = first.iter().map(|s| s.part.clone()).collect();
        parts.extend(second.iter().map(|s| s.part.clone()).filter(|p| !first.iter().any(|f| f.part == *p)));
        for part in parts {
            let find = |of: &[Subject]| of.iter().find(|s| s.part == part).cloned();
            pair(&a, &b, &item.id, find(&first), find(&second), &mut changes);
        }
    }
    changes
}

/// One differing pair of outcomes: how likely, and the likeliest way there.
#[derive(Clone)]
struct Way {
    share: f64,
    best: f64,
    path: Vec<(u16, usize)>,
}

type Ways = BTreeMap<(usize, usize), Way>;

fn pair(
    a: &Compiled,
    b: &Compiled,
    item: &str,
    first: Option<Subject>,
    second: Option<Subject>,
    changes: &mut Vec<Change>,
) {
    let (Some(first), Some(second)) = (&first, &second) else {
        let only = |c: &Compiled, s: Option<&Subject>| {
            s.and_then(|s| c.guide.reached(s).first().map(|o| (*o).clone()))
        };
        changes.push(Change {
            item: item.to_owned(),
            part: first.as_ref().or(second.as_ref()).and_then(|s| s.part.clone()),
            before: only(a, first.as_ref()),
            after: only(b, second.as_ref()),
            answers: Vec::new(),
            share: 1.0,
        });
        return;
    };
    let mut walk = Walk { a, b, first, second, memo: BTreeMap::new() };
    for ((was, is), way) in walk.ways(first.root, second.root) {
        let outcome = |c: &Compiled, at: usize| c.guide.outcomes.get(at).cloned();
        changes.push(Change {
            item: item.to_owned(),
            part: first.part.clone(),
            before: outcome(a, was),
            after: outcome(b, is),
            answers: way
                .path
                .iter()
                .filter_map(|&(variable, value)| {
                    let known = a.guide.variables.get(usize::from(variable))?;
                    Some((known.fact.clone(), crate::ask::label(known, value)))
                })
                .collect(),
            share: way.share,
        });
    }
}

struct Walk<'a> {
    a: &'a Compiled,
    b: &'a Compiled,
    first: &'a Subject,
    second: &'a Subject,
    memo: BTreeMap<(Ref, Ref), Ways>,
}

impl Walk<'_> {
    fn ways(&mut self, at: Ref, bt: Ref) -> Ways {
        if at == IMPOSSIBLE || bt == IMPOSSIBLE {
            return Ways::new();
        }
        if let (Some(was), Some(is)) = (as_terminal(at), as_terminal(bt)) {
            let (x, y) = (self.a.guide.outcomes.get(was), self.b.guide.outcomes.get(is));
            if x.zip(y).is_none_or(|(x, y)| alike(x, y)) {
                return Ways::new();
            }
            return Ways::from([((was, is), Way { share: 1.0, best: 1.0, path: Vec::new() })]);
        }
        if let Some(known) = self.memo.get(&(at, bt)) {
            return known.clone();
        }
        let (left, right) = (self.a.guide.node(at).cloned(), self.b.guide.node(bt).cloned());
        let variable = left.iter().chain(&right).map(|n| n.variable).min().unwrap_or(0);
        let here = |n: &Option<crate::diagram::Node>| n.clone().filter(|n| n.variable == variable);
        let (left, right) = (here(&left), here(&right));
        let size = left.iter().chain(&right).map(|n| n.children.len()).max().unwrap_or(0);
        let open = self
            .first
            .open
            .iter()
            .chain(&self.second.open)
            .find(|o| o.variable == variable)
            .map(|o| o.weights.clone());
        let weights: Vec<(usize, f64)> = match open {
            Some(w) => w.iter().map(|(v, w)| (usize::from(*v), f64::from(*w))).collect(),
            None => (0..size).map(|v| (v, 1.0)).collect(),
        };
        let total: f64 = weights.iter().map(|(_, w)| w).sum();
        let mut ways = Ways::new();
        for (value, weight) in weights {
            let share = weight / total.max(f64::MIN_POSITIVE);
            let l = left.as_ref().map_or(at, |n| child(n, value));
            let r = right.as_ref().map_or(bt, |n| child(n, value));
            for (pair, way) in self.ways(l, r) {
                let mut path = vec![(variable, value)];
                path.extend(&way.path);
                let new = Way { share: way.share * share, best: way.best * share, path };
                let entry = ways.entry(pair).or_insert(Way { share: 0.0, ..new.clone() });
                entry.share += new.share;
                if new.best > entry.best {
                    entry.best = new.best;
                    entry.path = new.path;
                }
            }
        }
        self.memo.insert((at, bt), ways.clone());
        ways
    }
}

/// The same to a resident: who decided may differ.
fn alike(x: &Outcome, y: &Outcome) -> bool {
    x.same_place(y)
        && x.steps == y.steps
        && x.hazard == y.hazard
        && x.temporary == y.temporary
        && x.reason == y.reason
        && x.also == y.also
        && x.banned == y.banned
        && x.closed_list == y.closed_list
}
