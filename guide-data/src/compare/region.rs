//! The cases of a class as a condition that people can read: alternatives, each of a few facts with
//! the values for which it holds.
//!
//! The alternatives cover exactly the cases of the class. Values that make no difference are not
//! named, and no alternative says what the others together say already.

use std::collections::{BTreeMap, BTreeSet};

use serde::{Deserialize, Serialize};

use super::product::Product;
use crate::ask::{ValueLabel, ends, label};
use crate::condition::{Bounds, Condition, OneOf};
use crate::diagram::{IMPOSSIBLE, Ref, as_terminal, child};
use crate::domain::Variable;

/// "A fact has one of these values."
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct FactIs {
    /// The fact's id.
    pub fact: String,
    /// The values, neighbouring ranges of a measure joined.
    pub values: Vec<ValueLabel>,
    /// The values of the item that are not among them, where a reader may tell these more easily;
    /// empty for a measure.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub except: Vec<ValueLabel>,
}

/// Alternatives, at least one of which holds; in each, everything holds. An alternative without
/// facts always holds; no alternative at all means that there are too many to be told.
pub type When = Vec<Vec<FactIs>>;

/// A product of value sets; a variable that is not named may have any value.
type Cube = BTreeMap<u16, BTreeSet<usize>>;

/// The value that another one has settled, when there is one: variable and value.
type Settled = Option<(u16, usize)>;

/// More alternatives than this help nobody, and bound the work.
const MOST_CUBES: usize = 400;
/// Bounds the work of leaving out an alternative that the others say already.
const MOST_STEPS: usize = 20_000;

/// The cases of the wanted classes.
pub(crate) struct Region<'a> {
    product: &'a Product,
    wanted: &'a dyn Fn(usize) -> bool,
    cubes: Vec<Cube>,
}

impl<'a> Region<'a> {
    pub(crate) fn new(product: &'a Product, wanted: &'a dyn Fn(usize) -> bool) -> Self {
        let mut region = Self { product, wanted, cubes: Vec::new() };
        region.cubes = region.alternatives().unwrap_or_default();
        region
    }

    fn alternatives(&self) -> Option<Vec<Cube>> {
        let mut cubes = (*self.cover(self.product.root(), &mut BTreeMap::new())?).clone();
        for cube in &mut cubes {
            self.widen(cube);
        }
        self.join(&mut cubes);
        for cube in &mut cubes {
            self.widen(cube);
        }
        cubes.sort();
        cubes.dedup();
        self.drop_repeated(&mut cubes);
        cubes.sort_by_cached_key(|c| (c.len(), c.iter().map(|(v, s)| (*v, s.clone())).collect::<Vec<_>>()));
        Some(cubes)
    }

    /// Alternatives for what lies below a node, those that differ in its value alone joined.
    /// `None` when there are too many.
    fn cover(
        &self,
        at: Ref,
        memo: &mut BTreeMap<Ref, std::rc::Rc<Vec<Cube>>>,
    ) -> Option<std::rc::Rc<Vec<Cube>>> {
        if at == IMPOSSIBLE {
            return Some(std::rc::Rc::default());
        }
        if let Some(known) = memo.get(&at) {
            return Some(known.clone());
        }
        let found = match self.product.node(at) {
            None => {
                if as_terminal(at).is_some_and(self.wanted) {
                    vec![Cube::new()]
                } else {
                    Vec::new()
                }
            }
            Some(node) => {
                let mut by_rest: BTreeMap<Cube, BTreeSet<usize>> = BTreeMap::new();
                let mut free = BTreeSet::new();
                let values = self.product.values(node.variable);
                for &(value, _) in &values {
                    let below = child(node, value);
                    if below == IMPOSSIBLE {
                        free.insert(value);
                    }
                    for cube in self.cover(below, memo)?.iter() {
                        by_rest.entry(cube.clone()).or_default().insert(value);
                    }
                }
                if by_rest.len() > MOST_CUBES {
                    return None;
                }
                by_rest
                    .into_iter()
                    .map(|(mut cube, set)| {
                        if set.union(&free).count() < values.len() {
                            cube.insert(node.variable, set);
                        }
                        cube
                    })
                    .collect()
            }
        };
        let found = std::rc::Rc::new(found);
        memo.insert(at, found.clone());
        Some(found)
    }

    /// Leaves out every fact without which the alternative still holds only for the wanted cases.
    fn widen(&self, cube: &mut Cube) {
        for variable in cube.keys().copied().collect::<Vec<_>>() {
            let Some(set) = cube.remove(&variable) else { continue };
            if !self.inside(self.product.root(), cube, None, &mut BTreeSet::new()) {
                cube.insert(variable, set);
            }
        }
    }

    /// True when every possible case of an alternative is wanted. `settled` is what a value taken
    /// on the way says of another variable.
    fn inside(&self, at: Ref, cube: &Cube, settled: Settled, seen: &mut BTreeSet<(Ref, Settled)>) -> bool {
        if at == IMPOSSIBLE || !seen.insert((at, settled)) {
            return true;
        }
        match self.product.node(at) {
            None => as_terminal(at).is_some_and(self.wanted),
            Some(node) => self
                .steps(node.variable, cube, settled)
                .into_iter()
                .all(|(value, settled)| self.inside(child(node, value), cube, settled, seen)),
        }
    }

    /// The values of a variable that an alternative allows and that can occur, each with what is
    /// settled from there on.
    fn steps(&self, variable: u16, cube: &Cube, settled: Settled) -> Vec<(usize, Settled)> {
        let set = cube.get(&variable);
        self.product
            .values(variable)
            .into_iter()
            .map(|(value, _)| value)
            .filter(|value| set.is_none_or(|s| s.contains(value)))
            .filter(|value| settled.is_none_or(|(v, only)| v != variable || only == *value))
            .map(|value| (value, self.product.settled_by(variable, value).or(settled)))
            .filter(|(_, settled)| {
                settled.is_none_or(|(v, only)| cube.get(&v).is_none_or(|set| set.contains(&only)))
            })
            .collect()
    }

    /// Joins alternatives that differ in the values of one fact only.
    fn join(&self, cubes: &mut Vec<Cube>) {
        loop {
            let mut joined = false;
            for variable in cubes.iter().flat_map(BTreeMap::keys).copied().collect::<BTreeSet<u16>>() {
                let mut by_rest: BTreeMap<Cube, BTreeSet<usize>> = BTreeMap::new();
                let mut others = Vec::new();
                let before = cubes.len();
                for mut cube in cubes.drain(..) {
                    match cube.remove(&variable) {
                        Some(set) => by_rest.entry(cube).or_default().extend(set),
                        None => others.push(cube),
                    }
                }
                let size = self.product.values(variable).len();
                for (mut cube, set) in by_rest {
                    if set.len() < size {
                        cube.insert(variable, set);
                    }
                    others.push(cube);
                }
                others.sort();
                others.dedup();
                joined |= others.len() < before;
                *cubes = others;
            }
            if !joined {
                return;
            }
        }
    }

    /// Leaves out every alternative whose cases the others have already, the narrowest first.
    fn drop_repeated(&self, cubes: &mut Vec<Cube>) {
        let mut order: Vec<Cube> = cubes.clone();
        order.sort_by_key(|c| std::cmp::Reverse(c.len()));
        for cube in order {
            let others: Vec<&Cube> = cubes.iter().filter(|c| **c != cube).collect();
            if others.is_empty() {
                return;
            }
            let mut variables: BTreeSet<u16> = cube.keys().copied().collect();
            variables.extend(others.iter().flat_map(|c| c.keys().copied()));
            self.tested(self.product.root(), &mut variables, &mut BTreeSet::new());
            let mut look = Cover {
                region: self,
                cube: &cube,
                others: &others,
                variables: variables.into_iter().collect(),
                seen: BTreeSet::new(),
            };
            let all = (0..others.len()).collect();
            if !look.has_more(self.product.root(), 0, None, all) {
                cubes.retain(|c| *c != cube);
            }
        }
    }

    fn tested(&self, at: Ref, variables: &mut BTreeSet<u16>, seen: &mut BTreeSet<Ref>) {
        if let Some(node) = self.product.node(at)
            && seen.insert(at)
        {
            variables.insert(node.variable);
            for &below in &node.children {
                self.tested(below, variables, seen);
            }
        }
    }

    /// The region in a form that can be put into words.
    pub(crate) fn told(&self, variables: &[Variable]) -> When {
        let one = |(variable, set): (&u16, &BTreeSet<usize>)| {
            let of = variables.get(usize::from(*variable))?;
            let occurring: Vec<usize> = self.product.values(*variable).into_iter().map(|(v, _)| v).collect();
            let fact = of.fact.clone();
            if of.measured {
                let runs = runs(&occurring, set);
                let range = |&(first, last): &(usize, usize)| {
                    let mut ends = ends(of, first, last);
                    // What lies outside the range that occurs needs no end of its own.
                    if occurring.first() == Some(&first) {
                        (ends.at_least, ends.over) = (None, None);
                    }
                    if occurring.last() == Some(&last) {
                        (ends.at_most, ends.under) = (None, None);
                    }
                    ValueLabel::Range(ends)
                };
                return Some(FactIs { fact, values: runs.iter().map(range).collect(), except: Vec::new() });
            }
            let (inside, outside): (Vec<usize>, Vec<usize>) =
                occurring.into_iter().partition(|v| set.contains(v));
            let labels = |of_them: Vec<usize>| of_them.into_iter().map(|v| label(of, v)).collect();
            Some(FactIs { fact, values: labels(inside), except: labels(outside) })
        };
        self.cubes.iter().map(|cube| cube.iter().filter_map(one).collect()).collect()
    }

    /// The region as a condition of a program file; `None` when there are too many alternatives.
    pub(crate) fn condition(&self, variables: &[Variable]) -> Option<Condition> {
        if self.cubes.is_empty() {
            return None;
        }
        let mut any: Vec<Condition> = Vec::new();
        for alternative in self.told(variables) {
            let mut all = Vec::new();
            for fact in alternative {
                let mut words = Vec::new();
                let mut ranges = Vec::new();
                for value in fact.values {
                    match value {
                        ValueLabel::Value(word) => words.push(word),
                        ValueLabel::Range(e) => ranges.push(Condition::Measure(Bounds {
                            fact: fact.fact.clone(),
                            at_least: e.at_least,
                            over: e.over,
                            at_most: e.at_most,
                            under: e.under,
                            ..Bounds::default()
                        })),
                    }
                }
                if !words.is_empty() {
                    all.push(Condition::Is(OneOf { fact: fact.fact, of: words }));
                } else if ranges.len() == 1 {
                    all.extend(ranges.pop());
                } else {
                    all.push(Condition::Any(ranges));
                }
            }
            match (all.len(), all.pop()) {
                (1, Some(only)) => any.push(only),
                (_, last) => {
                    all.extend(last);
                    any.push(Condition::All(all));
                }
            }
        }
        match (any.len(), any.pop()) {
            (1, Some(only)) => Some(only),
            (_, last) => {
                any.extend(last);
                Some(Condition::Any(any))
            }
        }
    }
}

/// Runs of values of a set that follow one another among those that occur.
fn runs(occurring: &[usize], set: &BTreeSet<usize>) -> Vec<(usize, usize)> {
    let mut runs: Vec<(usize, usize)> = Vec::new();
    let mut open = false;
    for value in occurring {
        if !set.contains(value) {
            open = false;
            continue;
        }
        match runs.last_mut() {
            Some((_, last)) if open => *last = *value,
            _ => runs.push((*value, *value)),
        }
        open = true;
    }
    runs
}

/// Looks for a wanted case of one alternative that none of the others has.
struct Cover<'a> {
    region: &'a Region<'a>,
    cube: &'a Cube,
    others: &'a [&'a Cube],
    variables: Vec<u16>,
    seen: BTreeSet<(usize, Ref, Settled, Vec<usize>)>,
}

impl Cover<'_> {
    fn has_more(&mut self, at: Ref, depth: usize, settled: Settled, alive: Vec<usize>) -> bool {
        if at == IMPOSSIBLE || as_terminal(at).is_some_and(|class| !(self.region.wanted)(class)) {
            return false;
        }
        let rest = self.variables.get(depth..).unwrap_or_default();
        let met = |&other: &usize| {
            self.others.get(other).is_some_and(|cube| rest.iter().all(|v| !cube.contains_key(v)))
        };
        if alive.iter().any(met) {
            return false;
        }
        let Some(&variable) = rest.first() else { return true };
        if self.seen.len() > MOST_STEPS {
            return true;
        }
        if !self.seen.insert((depth, at, settled, alive.clone())) {
            return false;
        }
        let mut ways: BTreeSet<(Ref, Settled, Vec<usize>)> = BTreeSet::new();
        for (value, settled) in self.region.steps(variable, self.cube, settled) {
            let below = match self.region.product.node(at) {
                Some(node) if node.variable == variable => child(node, value),
                _ => at,
            };
            let fits = |other: &&usize| {
                let set = self.others.get(**other).and_then(|cube| cube.get(&variable));
                set.is_none_or(|set| set.contains(&value))
            };
            ways.insert((below, settled, alive.iter().filter(fits).copied().collect()));
        }
        ways.into_iter().any(|(below, settled, left)| self.has_more(below, depth + 1, settled, left))
    }
}
