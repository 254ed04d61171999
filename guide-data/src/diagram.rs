//! A reduced, shared, ordered diagram over variables with several values each.
//!
//! References are numbers: with the top bit set they name a terminal, otherwise a node. The same
//! store serves conditions (terminals 0 and 1) and decisions (terminals are outcomes).

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

/// A reference to a node or terminal.
pub(crate) type Ref = u32;

const TERMINAL: u32 = 0x8000_0000;
/// The condition that never holds.
pub(crate) const FALSE: Ref = TERMINAL;
/// The condition that always holds.
pub(crate) const TRUE: Ref = TERMINAL | 1;
/// A case that cannot occur; it never keeps two alike children apart.
pub(crate) const IMPOSSIBLE: Ref = u32::MAX;

pub(crate) fn terminal(number: usize) -> Ref {
    TERMINAL | u32::try_from(number).unwrap_or(TERMINAL - 2)
}

/// The number of a terminal, or `None` for a node.
pub(crate) fn as_terminal(at: Ref) -> Option<usize> {
    (at & TERMINAL != 0 && at != IMPOSSIBLE).then_some((at & !TERMINAL) as usize)
}

pub(crate) fn is_node(at: Ref) -> bool {
    at & TERMINAL == 0
}

/// A test of one variable, with a child for each value.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub(crate) struct Node {
    /// The variable's index.
    #[serde(rename = "v")]
    pub(crate) variable: u16,
    /// A child for each of its values.
    #[serde(rename = "k")]
    pub(crate) children: Vec<Ref>,
}

/// The most nodes one diagram may have: enough for any real program, and a bound on work.
pub(crate) const MOST_NODES: usize = 400_000;

/// There was more to do than is allowed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct TooMuch;

/// The most children that the nodes of one diagram may have together: a measure with thousands of
/// thresholds makes wide nodes, and of those far fewer are too many.
const MOST_CHILDREN: usize = 16_000_000;

/// What working one diagram out may cost, in children looked at, where nobody sets another limit.
pub(crate) const MOST_WORK: u64 = 400_000_000;

/// A store of shared nodes.
#[derive(Debug, Clone)]
pub(crate) struct Diagram {
    pub(crate) nodes: Vec<Node>,
    unique: BTreeMap<Node, Ref>,
    applied: BTreeMap<(bool, Ref, Ref), Ref>,
    negated: BTreeMap<Ref, Ref>,
    /// How many children the nodes have together.
    children: usize,
    /// What has been spent, in children looked at, and how far that may go.
    pub(crate) spent: u64,
    pub(crate) limit: u64,
}

impl Default for Diagram {
    fn default() -> Self {
        Self {
            nodes: Vec::new(),
            unique: BTreeMap::new(),
            applied: BTreeMap::new(),
            negated: BTreeMap::new(),
            children: 0,
            spent: 0,
            limit: MOST_WORK,
        }
    }
}

impl Diagram {
    pub(crate) fn node(&self, at: Ref) -> Option<&Node> {
        if is_node(at) { self.nodes.get(at as usize) } else { None }
    }

    /// Counts work that is about to be done.
    pub(crate) fn spend(&mut self, work: usize) -> Result<(), TooMuch> {
        self.spent = self.spent.saturating_add(u64::try_from(work).unwrap_or(u64::MAX));
        if self.spent > self.limit { Err(TooMuch) } else { Ok(()) }
    }

    /// Forgets every node when so many are kept that what comes next could lack room. Nothing may refer
    /// to them any more.
    pub(crate) fn make_room(&mut self) -> bool {
        let full = self.children > MOST_CHILDREN / 4 || self.nodes.len() > MOST_NODES / 4;
        if full {
            *self = Self { spent: self.spent, limit: self.limit, ..Self::default() };
        }
        full
    }

    /// A node, or the child when all possible children are the same one.
    pub(crate) fn make(&mut self, variable: u16, children: Vec<Ref>) -> Result<Ref, TooMuch> {
        let mut possible = children.iter().copied().filter(|&c| c != IMPOSSIBLE);
        let Some(first) = possible.next() else { return Ok(IMPOSSIBLE) };
        if possible.all(|c| c == first) {
            return Ok(first);
        }
        let node = Node { variable, children };
        if let Some(&known) = self.unique.get(&node) {
            return Ok(known);
        }
        if self.nodes.len() >= MOST_NODES || self.children + node.children.len() > MOST_CHILDREN {
            return Err(TooMuch);
        }
        self.children += node.children.len();
        let at = u32::try_from(self.nodes.len()).map_err(|_| TooMuch)?;
        self.nodes.push(node.clone());
        self.unique.insert(node, at);
        Ok(at)
    }

    /// Both conditions hold.
    pub(crate) fn and(&mut self, a: Ref, b: Ref) -> Result<Ref, TooMuch> {
        self.apply(true, a, b)
    }

    /// At least one condition holds.
    pub(crate) fn or(&mut self, a: Ref, b: Ref) -> Result<Ref, TooMuch> {
        self.apply(false, a, b)
    }

    fn apply(&mut self, and: bool, a: Ref, b: Ref) -> Result<Ref, TooMuch> {
        let (neutral, absorbing) = if and { (TRUE, FALSE) } else { (FALSE, TRUE) };
        if a == absorbing || b == absorbing {
            return Ok(absorbing);
        }
        if a == neutral || a == b {
            return Ok(b);
        }
        if b == neutral {
            return Ok(a);
        }
        let key = (and, a.min(b), a.max(b));
        if let Some(&known) = self.applied.get(&key) {
            return Ok(known);
        }
        let (Some(left), Some(right)) = (self.node(a).cloned(), self.node(b).cloned()) else {
            return Err(TooMuch);
        };
        let variable = left.variable.min(right.variable);
        let width = if left.variable == variable { left.children.len() } else { right.children.len() };
        self.spend(width)?;
        let mut children = Vec::with_capacity(width);
        for value in 0..width {
            let l = if left.variable == variable { child(&left, value) } else { a };
            let r = if right.variable == variable { child(&right, value) } else { b };
            children.push(self.apply(and, l, r)?);
        }
        let made = self.make(variable, children)?;
        self.applied.insert(key, made);
        Ok(made)
    }

    /// The condition does not hold.
    pub(crate) fn not(&mut self, a: Ref) -> Result<Ref, TooMuch> {
        match a {
            TRUE => Ok(FALSE),
            FALSE => Ok(TRUE),
            _ => {
                // Nodes are shared: without a memory one would be gone through on every way to it.
                if let Some(&known) = self.negated.get(&a) {
                    return Ok(known);
                }
                let Some(node) = self.node(a).cloned() else { return Err(TooMuch) };
                self.spend(node.children.len())?;
                let mut children = Vec::with_capacity(node.children.len());
                for &c in &node.children {
                    children.push(self.not(c)?);
                }
                let made = self.make(node.variable, children)?;
                self.negated.insert(a, made);
                Ok(made)
            }
        }
    }
}

/// The child of a node for a value; a value outside the node's list cannot occur.
pub(crate) fn child(node: &Node, value: usize) -> Ref {
    node.children.get(value).copied().unwrap_or(IMPOSSIBLE)
}
