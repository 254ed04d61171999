//! Several subjects walked together: one diagram over the questions of all, whose terminals are
//! classes of what they say together. Everything that is compared is read off such a diagram, so
//! that nothing is sampled.

use std::collections::BTreeMap;

use crate::ask::{ValueLabel, label};
use crate::diagram::{Diagram, IMPOSSIBLE, Node, Ref, TooMuch, as_terminal, child, terminal};
use crate::domain::Variable;
use crate::facts::fact_index;
use crate::guide::{Guide, Subject};

/// One of the subjects walked together, with what is settled for it alone.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Side<'a> {
    pub(crate) guide: &'a Guide,
    pub(crate) subject: &'a Subject,
    /// Variables that have one value on this side.
    pub(crate) fixed: &'a BTreeMap<u16, usize>,
    /// A variable that stands for something of this side alone (its own zones), with the values it
    /// has here: what is said is then what is said for any of them.
    pub(crate) own: Option<(u16, &'a [usize])>,
}

/// What each side says in a case: the numbers of its outcomes, several when its own zones differ,
/// none when the case cannot occur there.
pub(crate) type Said = Vec<Vec<usize>>;

/// The diagram of what all sides say together.
#[derive(Debug)]
pub(crate) struct Product {
    diagram: Diagram,
    root: Ref,
    /// The values that occur of every variable tested, with weights.
    weights: BTreeMap<u16, Vec<(u16, u32)>>,
    /// The one dwelling of a zone that has one: variable and value of the zone to those of the
    /// dwelling. Guides do not keep cases apart that cannot occur, so this is known here.
    settles: BTreeMap<(u16, usize), (u16, usize)>,
    /// What each class stands for, by its number.
    pub(crate) classes: Vec<Said>,
}

/// A case met on the way to a class: the values of variables, in the order tested.
pub(crate) type Path = Vec<(u16, usize)>;

impl Product {
    /// Walks all sides together. `narrowed` keeps some values of a variable only; with `all` a case
    /// counts when it can occur on every side, else when it can on any; `alike` gives two things
    /// said the same number when they need not be told apart.
    pub(crate) fn new(
        sides: &[Side<'_>],
        narrowed: &BTreeMap<u16, Vec<usize>>,
        all: bool,
        alike: &dyn Fn(usize, usize) -> usize,
    ) -> Result<Self, TooMuch> {
        let mut weights: BTreeMap<u16, Vec<(u16, u32)>> = BTreeMap::new();
        for open in sides.iter().flat_map(|s| &s.subject.open) {
            weights.entry(open.variable).or_insert_with(|| {
                let kept = narrowed.get(&open.variable);
                let keeps = |value: &u16| kept.is_none_or(|k| k.contains(&usize::from(*value)));
                open.weights.iter().filter(|(v, _)| keeps(v)).copied().collect()
            });
        }
        let mut walk = Walk {
            sides,
            all,
            alike,
            memo: BTreeMap::new(),
            numbers: BTreeMap::new(),
            made: Self {
                diagram: Diagram::default(),
                root: IMPOSSIBLE,
                weights,
                settles: settles(sides),
                classes: Vec::new(),
            },
        };
        let start = sides.iter().map(|s| vec![s.subject.root]).collect();
        let root = walk.walk(start)?;
        walk.made.root = root;
        Ok(walk.made)
    }

    pub(crate) fn root(&self) -> Ref {
        self.root
    }

    pub(crate) fn node(&self, at: Ref) -> Option<&Node> {
        self.diagram.node(at)
    }

    /// The values of a variable that occur, with their share of it.
    pub(crate) fn values(&self, variable: u16) -> Vec<(usize, f64)> {
        let Some(weights) = self.weights.get(&variable) else { return Vec::new() };
        let total: u64 = weights.iter().map(|(_, w)| u64::from(*w)).sum();
        #[expect(clippy::cast_precision_loss, reason = "weights are far below 2^52")]
        weights.iter().map(|(v, w)| (usize::from(*v), f64::from(*w) / (total.max(1) as f64))).collect()
    }

    /// What a variable's value settles of another one: that variable and its value.
    pub(crate) fn settled_by(&self, variable: u16, value: usize) -> Option<(u16, usize)> {
        self.settles.get(&(variable, value)).copied()
    }

    /// The share of the possible cases that is of a class, 0 to 1, weighted by how likely they are.
    pub(crate) fn share(&self, wanted: &dyn Fn(usize) -> bool) -> f64 {
        let (hit, possible) = self.weigh(self.root, wanted, &mut BTreeMap::new());
        if possible > 0.0 { hit / possible } else { 0.0 }
    }

    fn weigh(
        &self,
        at: Ref,
        wanted: &dyn Fn(usize) -> bool,
        memo: &mut BTreeMap<Ref, (f64, f64)>,
    ) -> (f64, f64) {
        if at == IMPOSSIBLE {
            return (0.0, 0.0);
        }
        if let Some(&known) = memo.get(&at) {
            return known;
        }
        let weight = match self.node(at) {
            None => (f64::from(u8::from(as_terminal(at).is_some_and(wanted))), 1.0),
            Some(node) => self.values(node.variable).into_iter().fold((0.0, 0.0), |sum, (value, share)| {
                let (hit, possible) = self.weigh(child(node, value), wanted, memo);
                (sum.0 + hit * share, sum.1 + possible * share)
            }),
        };
        memo.insert(at, weight);
        weight
    }

    /// The likeliest case of a class.
    pub(crate) fn likeliest(&self, wanted: &dyn Fn(usize) -> bool) -> Option<Path> {
        let mut memo = BTreeMap::new();
        self.best(self.root, wanted, &mut memo)?;
        let mut path = Path::new();
        let mut at = self.root;
        while let Some(Some((_, Some((variable, value, next))))) = memo.get(&at) {
            path.push((*variable, *value));
            at = *next;
        }
        Some(path)
    }

    fn best(&self, at: Ref, wanted: &dyn Fn(usize) -> bool, memo: &mut BTreeMap<Ref, Best>) -> Option<f64> {
        if at == IMPOSSIBLE {
            return None;
        }
        if let Some(known) = memo.get(&at) {
            return known.map(|(p, _)| p);
        }
        let best = match self.node(at) {
            None => as_terminal(at).filter(|&class| wanted(class)).map(|_| (1.0, None)),
            Some(node) => {
                let mut best: Best = None;
                for (value, share) in self.values(node.variable) {
                    let next = child(node, value);
                    let Some(below) = self.best(next, wanted, memo) else { continue };
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
}

/// The likeliest way from a node: how likely, and the step that begins it.
type Best = Option<(f64, Option<(u16, usize, Ref)>)>;

struct Walk<'a> {
    sides: &'a [Side<'a>],
    all: bool,
    /// The number that stands for an outcome of a side.
    alike: &'a dyn Fn(usize, usize) -> usize,
    memo: BTreeMap<Vec<Vec<Ref>>, Ref>,
    numbers: BTreeMap<Said, usize>,
    made: Product,
}

impl Walk<'_> {
    fn walk(&mut self, state: Vec<Vec<Ref>>) -> Result<Ref, TooMuch> {
        let state: Vec<Vec<Ref>> =
            self.sides.iter().zip(state).map(|(side, refs)| settled(side, refs)).collect();
        let gone = |refs: &Vec<Ref>| refs.is_empty();
        if if self.all { state.iter().any(gone) } else { state.iter().all(gone) } {
            return Ok(IMPOSSIBLE);
        }
        if let Some(&done) = self.memo.get(&state) {
            return Ok(done);
        }
        let nodes = self.sides.iter().zip(&state).flat_map(|(s, refs)| refs.iter().map(|&r| s.guide.node(r)));
        let next = nodes.flatten().map(|n| (n.variable, n.children.len())).min();
        let Some((variable, size)) = next else {
            let said: Said = self
                .sides
                .iter()
                .zip(&state)
                .enumerate()
                .map(|(at, (_, refs))| {
                    let numbers = refs.iter().filter_map(|&r| as_terminal(r));
                    let mut numbers: Vec<usize> = numbers.map(|t| (self.alike)(at, t)).collect();
                    numbers.sort_unstable();
                    numbers.dedup();
                    numbers
                })
                .collect();
            let fresh = self.numbers.len();
            let number = *self.numbers.entry(said.clone()).or_insert(fresh);
            if number == fresh {
                self.made.classes.push(said);
            }
            return Ok(terminal(number));
        };
        if self.memo.len() > crate::diagram::MOST_NODES / 8 {
            return Err(TooMuch);
        }
        self.made.diagram.spend(size * (1 + state.len()))?;
        let occurring: Vec<usize> = self.made.values(variable).into_iter().map(|(v, _)| v).collect();
        let mut children = vec![IMPOSSIBLE; size];
        for value in occurring {
            let below = self
                .sides
                .iter()
                .zip(&state)
                .map(|(side, refs)| {
                    let step = |&r: &Ref| match side.guide.node(r) {
                        Some(node) if node.variable == variable => child(node, value),
                        _ => r,
                    };
                    refs.iter().map(step).collect()
                })
                .collect();
            let made = self.walk(below)?;
            if let Some(place) = children.get_mut(value) {
                *place = made;
            }
        }
        let made = self.made.diagram.make(variable, children)?;
        self.memo.insert(state, made);
        Ok(made)
    }
}

/// Each zone's own dwelling type, on any side.
fn settles(sides: &[Side<'_>]) -> BTreeMap<(u16, usize), (u16, usize)> {
    let mut found = BTreeMap::new();
    let (Some(zone), Some(dwelling)) = (fact_index("zone"), fact_index("dwelling")) else { return found };
    let (Ok(zone_number), Ok(dwelling_number)) = (u16::try_from(zone), u16::try_from(dwelling)) else {
        return found;
    };
    for side in sides {
        let value = |at: usize, id: &str| side.guide.variables.get(at).and_then(|v| v.index_of(id));
        for known in &side.guide.zones {
            if let (Some(z), Some(d)) =
                (value(zone, &known.id), known.dwelling.as_deref().and_then(|d| value(dwelling, d)))
            {
                found.insert((zone_number, z), (dwelling_number, d));
            }
        }
    }
    found
}

/// What is left of a side once its settled variables are taken: sorted, each once, nothing
/// impossible.
fn settled(side: &Side<'_>, refs: Vec<Ref>) -> Vec<Ref> {
    let mut open = refs;
    let mut done = Vec::new();
    while let Some(at) = open.pop() {
        if at == IMPOSSIBLE {
            continue;
        }
        match side.guide.node(at) {
            Some(node) => match (side.fixed.get(&node.variable), side.own) {
                (Some(&value), _) => open.push(child(node, value)),
                (None, Some((variable, values))) if variable == node.variable => {
                    open.extend(values.iter().map(|&v| child(node, v)));
                }
                _ => done.push(at),
            },
            None => done.push(at),
        }
    }
    done.sort_unstable();
    done.dedup();
    done
}

/// A path as answers a person gives.
pub(crate) fn told(variables: &[Variable], path: &Path) -> Vec<(String, ValueLabel)> {
    path.iter()
        .filter_map(|&(variable, value)| {
            let of = variables.get(usize::from(variable))?;
            Some((of.fact.clone(), label(of, value)))
        })
        .collect()
}
