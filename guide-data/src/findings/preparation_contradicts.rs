//! A rule asks for a step after which another answer holds: whoever follows it has the wrong one.
//!
//! This is exact. For each thing that a step makes true, the items that are told the step are
//! compiled once more with that stated, and both diagrams are walked side by side.

use std::collections::{BTreeMap, BTreeSet};

use super::steps_contradict::asking;
use super::{Finding, Place, Severity, Subject};
use crate::ask::{Given, label};
use crate::catalog::{Catalog, Item};
use crate::compile::{Compiled, compile_over};
use crate::diagram::{IMPOSSIBLE, Ref, as_terminal, child};
use crate::fix::Fix;
use crate::guide::{Answered, Guide, GuideItem, Outcome};
use crate::paths::Witness;
use crate::standard::STEP_EFFECTS;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let guide = &subject.compiled.guide;
    let mut named: BTreeSet<&str> = BTreeSet::new();
    for when in subject.program.rules.iter().filter_map(|r| r.when.as_ref()) {
        when.for_each_fact(&mut |fact| {
            named.extend(STEP_EFFECTS.iter().map(|e| e.1).find(|f| *f == fact));
        });
    }
    let asked: BTreeSet<&str> = guide.outcomes.iter().flat_map(|o| &o.steps).map(String::as_str).collect();
    let mut all: Option<BTreeMap<&str, &Item>> = None;
    let mut told = BTreeSet::new();
    for &(step, fact, value) in STEP_EFFECTS {
        if !asked.contains(step) || !named.contains(fact) {
            continue;
        }
        let items: Vec<&GuideItem> = guide.items.iter().filter(|i| is_told(guide, i, step)).collect();
        let all = all.get_or_insert_with(|| {
            let own = subject.catalog.items.iter().chain(&subject.program.items);
            own.map(|i| (i.id.as_str(), i)).collect()
        });
        let stated: Vec<Item> =
            items.iter().filter_map(|i| all.get(i.id.as_str())).map(|i| with_fact(i, fact, value)).collect();
        if stated.is_empty() {
            continue;
        }
        let after = compile_over(subject.program, &Catalog { items: stated }, guide.variables.clone());
        let by_id: BTreeMap<&str, &GuideItem> =
            after.guide.items.iter().map(|i| (i.id.as_str(), i)).collect();
        for item in items {
            let Some(later) = by_id.get(item.id.as_str()) else { continue };
            for (part, later) in item.subjects.iter().zip(&later.subjects) {
                let mut walk =
                    Walk { before: guide, after: &after, step, seen: BTreeSet::new(), path: Vec::new() };
                let Some((was, is)) = walk.look(part.root, later.root) else { continue };
                let rules = asking(subject, was, &[step]);
                let ids: Vec<String> = rules.iter().map(|r| r.id.clone()).collect();
                let Some(first) = ids.first() else { continue };
                if !told.insert((first.clone(), step)) {
                    continue;
                }
                let place = Place::of("rule", first, "prepare");
                let drop = Fix::Remove { place: place.clone(), value: step.to_owned() };
                let other = is.rules.first().map_or("", String::as_str);
                let witness = witness(guide, &item.id, part.part.as_deref(), &walk.path);
                found.push(
                    Finding::new(Severity::Warning, "preparation-contradicts", place)
                        .arg("step", step)
                        .arg("fact", fact)
                        .arg("value", value)
                        .arg("problem", if other.is_empty() { "none" } else { "rule" })
                        .arg("other", other)
                        .rules(&ids)
                        .witness(Some(witness))
                        .tries([drop]),
                );
            }
        }
    }
}

fn asks_for(outcome: &Outcome, step: &str) -> bool {
    outcome.steps.iter().any(|s| s == step)
}

fn is_told(guide: &Guide, item: &GuideItem, step: &str) -> bool {
    item.subjects.iter().any(|part| guide.reached(part).into_iter().any(|o| asks_for(o, step)))
}

fn with_fact(item: &Item, fact: &str, value: &str) -> Item {
    let mut item = item.clone();
    item.open.remove(fact);
    item.facts.insert(fact.to_owned(), value.to_owned());
    for part in &mut item.parts {
        part.facts.insert(fact.to_owned(), value.to_owned());
    }
    item
}

/// Two diagrams of one subject, before and after a step, walked side by side.
struct Walk<'a> {
    before: &'a Guide,
    after: &'a Compiled,
    step: &'a str,
    seen: BTreeSet<(Ref, Ref)>,
    path: Vec<(u16, usize)>,
}

impl<'a> Walk<'a> {
    /// The first case in which the step leads to another place: what was answered, and what is.
    fn look(&mut self, before: Ref, after: Ref) -> Option<(&'a Outcome, &'a Outcome)> {
        if before == IMPOSSIBLE || after == IMPOSSIBLE || !self.seen.insert((before, after)) {
            return None;
        }
        let (left, right) = (self.before.node(before), self.after.guide.node(after));
        let Some(variable) = left.iter().chain(&right).map(|n| n.variable).min() else {
            let was = self.before.outcomes.get(as_terminal(before)?)?;
            let is = self.after.guide.outcomes.get(as_terminal(after)?)?;
            let settled = |o: &Outcome| o.verdict != Answered::Undecided;
            let other = asks_for(was, self.step) && settled(was) && settled(is) && !was.same_place(is);
            return other.then_some((was, is));
        };
        let width =
            left.iter().chain(&right).filter(|n| n.variable == variable).map(|n| n.children.len()).max()?;
        for value in 0..width {
            let next = |node: Option<&crate::diagram::Node>, at: Ref| match node {
                Some(node) if node.variable == variable => child(node, value),
                _ => at,
            };
            self.path.push((variable, value));
            let found = self.look(next(left, before), next(right, after));
            if found.is_some() {
                return found;
            }
            self.path.pop();
        }
        None
    }
}

fn witness(guide: &Guide, item: &str, part: Option<&str>, path: &[(u16, usize)]) -> Witness {
    let mut witness = Witness { item: item.to_owned(), part: part.map(str::to_owned), ..Witness::default() };
    for &(variable, value) in path {
        let Some(known) = guide.variables.get(usize::from(variable)) else { continue };
        witness.answers.push((known.fact.clone(), label(known, value)));
        let given = if known.measured {
            Given::Interval(value)
        } else {
            Given::Value(known.values.get(value).cloned().unwrap_or_default())
        };
        witness.known.push((known.fact.clone(), given));
    }
    witness
}
