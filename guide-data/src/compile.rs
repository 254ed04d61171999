//! Compiling a program with a catalog into a guide.
//!
//! For each subject (an item, or a part of one) every rule's condition is first cut down to what
//! the subject's known facts leave open; what remains becomes a small condition diagram. The
//! decision diagram is then the product of these diagrams, walked variable by variable, dropping
//! rules as soon as a stronger one certainly applies.

use std::collections::BTreeMap;

use crate::catalog::{Catalog, Item, Open, Part};
use crate::diagram::{Diagram, FALSE, IMPOSSIBLE, MOST_WORK, Ref, TRUE, TooMuch, child, is_node, terminal};
use crate::domain::{Variable, normalised, variables, year_days_of};
use crate::facts::{FACTS, FactKind, SIDES, fact_index};
use crate::guide::{Guide, GuideItem, OpenVariable, Outcome, Subject};
use crate::program::Program;
use crate::resolve::{Knowledge, Met, kind_of};
use crate::ruleset::RuleSet;

/// Context facts: the phone or the resident knows them, the catalog does not.
const CONTEXT: &[&str] = &["day", "time-of-year", "zone", "dwelling", "origin", "proof", "add-on"];

/// A problem of an item's facts, found while compiling.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct ItemProblem {
    pub(crate) item: String,
    pub(crate) fact: String,
    pub(crate) value: String,
    pub(crate) problem: &'static str,
}

/// A guide with what compiling learned on the way.
pub(crate) struct Compiled {
    pub(crate) guide: Guide,
    pub(crate) rules: RuleSet,
    pub(crate) item_problems: Vec<ItemProblem>,
    /// Items for which there was more to work out than is allowed.
    pub(crate) too_much: Vec<String>,
}

/// Compiles with the program's own thresholds.
pub(crate) fn compile(program: &Program, catalog: &Catalog) -> Compiled {
    let catalog = catalog.with(&program.items);
    let variables = variables(&[program], &catalog);
    compile_over(program, &catalog, variables)
}

impl Guide {
    /// Compiles a program with a catalog, without looking for findings. Whoever publishes looks:
    /// a guide of a program with errors answers "undecided" where it must.
    #[must_use]
    pub fn compile(program: &Program, catalog: &Catalog) -> Self {
        compile(program, catalog).guide
    }
}

/// Compiles over given variables, so that two programs can be compared value by value.
pub(crate) fn compile_over(program: &Program, catalog: &Catalog, variables: Vec<Variable>) -> Compiled {
    let rules = RuleSet::new(program, &variables);
    let mut work = Work {
        conditions: Diagram::default(),
        decisions: Diagram::default(),
        outcomes: Vec::new(),
        numbers: BTreeMap::new(),
        decided: BTreeMap::new(),
        rules: &rules,
        variables: &variables,
        positions: positions(&variables),
        context: context(&variables),
        context_possible: None,
        item_problems: Vec::new(),
    };
    let mut too_much = Vec::new();
    let mut items = Vec::with_capacity(catalog.items.len());
    for item in &catalog.items {
        items.push(work.item(program, item, &mut too_much));
    }
    let (nodes, outcomes, item_problems) = (work.decisions.nodes, work.outcomes, work.item_problems);
    let mut guide = crate::place::guide_of(program);
    guide.items = items;
    guide.nodes = nodes;
    guide.outcomes = outcomes;
    guide.variables = variables;
    Compiled { guide, rules, item_problems, too_much }
}

/// What is known of a subject: per variable, and the open ones with their weights.
#[derive(Default)]
struct Known {
    facts: Vec<Knowledge>,
    open: BTreeMap<usize, (Vec<(u16, u32)>, u16)>,
    /// The exact range of a measure that is stated or open: smallest and largest, normalised.
    ranges: BTreeMap<usize, (i64, i64)>,
}

struct Work<'a> {
    conditions: Diagram,
    decisions: Diagram,
    outcomes: Vec<Outcome>,
    numbers: BTreeMap<Outcome, usize>,
    rules: &'a RuleSet,
    variables: &'a [Variable],
    /// Where each item and category stands among the values of its fact.
    positions: Positions,
    /// What holds of every subject that does not state otherwise: context open, facts normal.
    context: Known,
    /// Which combinations of context facts can occur, once worked out.
    context_possible: Option<Ref>,
    /// What has been decided already, by the rules that apply.
    decided: BTreeMap<Vec<usize>, Ref>,
    item_problems: Vec<ItemProblem>,
}

/// Positions of values among those of the facts `item` and `category`.
#[derive(Default)]
struct Positions {
    items: BTreeMap<String, usize>,
    categories: BTreeMap<String, usize>,
}

fn positions(variables: &[Variable]) -> Positions {
    let of = |name: &str| -> BTreeMap<String, usize> {
        let values = variables.iter().find(|v| v.fact == name).map(|v| v.values.as_slice());
        // The first of several alike stands for all.
        let all = values.unwrap_or_default().iter().enumerate().rev();
        all.map(|(at, value)| (value.clone(), at)).collect()
    };
    Positions { items: of("item"), categories: of("category") }
}

fn context(variables: &[Variable]) -> Known {
    let mut known = Known::default();
    for (fact, variable) in FACTS.iter().zip(variables) {
        let normal = fact.normal.and_then(|n| variable.index_of(n));
        // Without zones there is nobody to tell apart.
        let open = CONTEXT.contains(&fact.id) && variable.size() > 0;
        if open {
            let weights = context_weights(variable);
            known.open.insert(known.facts.len(), (weights, narrow(normal.unwrap_or(0))));
        }
        known.facts.push(match normal {
            _ if open => Knowledge::Open,
            Some(value) if !CONTEXT.contains(&fact.id) => Knowledge::Is(value),
            _ => Knowledge::Unstated,
        });
    }
    known
}

/// The rules still in play, with what remains of their conditions, by position.
type State = Vec<(usize, Ref)>;
/// What working out one subject may cost of all that a program's may.
const MOST_WORK_OF_ONE: u64 = MOST_WORK / 20;
/// Stands for the condition under which a case is possible at all.
const POSSIBLE: usize = usize::MAX;

impl Work<'_> {
    fn item(&mut self, program: &Program, item: &Item, too_much: &mut Vec<String>) -> GuideItem {
        let mut subjects = Vec::with_capacity(1 + item.parts.len());
        for part in std::iter::once(None).chain(item.parts.iter().map(Some)) {
            let known = self.known(program, item, part);
            let root = match self.subject(program, item, &known) {
                Ok(root) => root,
                Err(TooMuch) => {
                    too_much.push(item.id.clone());
                    self.outcome(Outcome::default())
                }
            };
            let open = self.tested(root, &known);
            subjects.push(Subject { part: part.map(|p| p.id.clone()), root, open });
        }
        GuideItem {
            id: item.id.clone(),
            category: item.category.clone(),
            pictogram: item.pictogram.clone(),
            common: item.common,
            often_wrong: item.often_wrong,
            subjects,
        }
    }

    fn known(&mut self, program: &Program, item: &Item, part: Option<&Part>) -> Known {
        let mut known = Known { facts: self.context.facts.clone(), ..Known::default() };
        let set = |fact: &str, knowledge: Knowledge, known: &mut Known| {
            if let Some(place) = fact_index(fact).and_then(|at| known.facts.get_mut(at)) {
                *place = knowledge;
            }
        };
        let is = |position: Option<usize>| position.map_or(Knowledge::Unstated, Knowledge::Is);
        set("item", is(self.positions.items.get(&item.id).copied()), &mut known);
        set("category", is(self.positions.categories.get(&item.category).copied()), &mut known);
        if let Some(part) = part {
            let variable = fact_index("part").and_then(|at| self.variables.get(at));
            set("part", is(variable.and_then(|v| v.index_of(&part.id))), &mut known);
        }
        let of_part = |name: &String| part.is_some_and(|p| p.facts.contains_key(name));
        let own = item.facts.iter().filter(|(name, _)| !item.open.contains_key(*name) && !of_part(name));
        for (name, value) in part.iter().flat_map(|p| &p.facts).chain(own) {
            if let Some(at) = told_by_items(name) {
                let knowledge = self.stated(item, at, value, &mut known);
                set(name, knowledge, &mut known);
            }
        }
        for (name, open) in item.open.iter().filter(|(name, _)| !of_part(name)) {
            if let Some(at) = told_by_items(name) {
                let knowledge = self.open(program, item, at, open, &mut known);
                set(name, knowledge, &mut known);
            }
        }
        known
    }

    fn problem(&mut self, item: &Item, at: usize, value: &str, problem: &'static str) {
        let fact = FACTS.get(at).map_or("", |f| f.id).to_owned();
        let found = ItemProblem { item: item.id.clone(), fact, value: value.to_owned(), problem };
        if !self.item_problems.contains(&found) {
            self.item_problems.push(found);
        }
    }

    fn stated(&mut self, item: &Item, at: usize, value: &str, known: &mut Known) -> Knowledge {
        let Some(variable) = self.variables.get(at) else { return Knowledge::Unstated };
        let found = match kind_of(at) {
            FactKind::Choice(_) | FactKind::Id(_) => variable.index_of(value).ok_or("unknown-value"),
            kind => normalised(kind, value).map(|v| {
                known.ranges.insert(at, (v, v));
                variable.interval_of(v)
            }),
        };
        match found {
            Ok(index) => Knowledge::Is(index),
            Err(problem) => {
                self.problem(item, at, value, problem);
                Knowledge::Unstated
            }
        }
    }

    fn open(
        &mut self,
        program: &Program,
        item: &Item,
        at: usize,
        open: &Open,
        known: &mut Known,
    ) -> Knowledge {
        let (Some(variable), Some(fact)) = (self.variables.get(at), FACTS.get(at)) else {
            return Knowledge::Unstated;
        };
        if let Some(range) = exact_range(fact.kind, open) {
            known.ranges.insert(at, range);
        }
        let mut problems = Vec::new();
        let weights = match fact.kind {
            FactKind::Choice(_) | FactKind::Id(_) => choice_weights(variable, open, &mut problems),
            kind => interval_weights(variable, kind, open, &mut problems),
        };
        for (value, problem) in problems {
            self.problem(item, at, &value, problem);
        }
        match weights.as_slice() {
            [] => Knowledge::Unstated,
            [(only, _)] => Knowledge::Is(usize::from(*only)),
            several => {
                let cautious = program.unknown.get(fact.id).map(String::as_str).or(fact.unknown_means);
                let assumed = cautious
                    .and_then(|v| variable.index_of(v))
                    .map(narrow)
                    .filter(|v| several.iter().any(|(s, _)| s == v))
                    .or_else(|| several.iter().max_by_key(|(v, w)| (*w, u16::MAX - v)).map(|(v, _)| *v))
                    .unwrap_or(0);
                known.open.insert(at, (weights, assumed));
                Knowledge::Open
            }
        }
    }

    /// Builds the decision diagram of a subject.
    fn subject(&mut self, program: &Program, item: &Item, known: &Known) -> Result<Ref, TooMuch> {
        if self.conditions.make_room() {
            self.context_possible = None;
        }
        self.conditions.limit = MOST_WORK.min(self.conditions.spent + MOST_WORK_OF_ONE);
        let mut state = State::new();
        let possible = self.possible(program, known)?;
        if possible == FALSE {
            let side = fact_index("longest-side").unwrap_or_default();
            self.problem(item, side, "", "no-such-sides");
        }
        if possible != TRUE {
            state.push((POSSIBLE, possible));
        }
        let rules = self.rules;
        // Rules stand in the order of tiers: once one of a tier certainly decides, those of later
        // tiers cannot any more.
        let mut last = None;
        for (at, rule) in rules.rules.iter().enumerate() {
            if rule.decides && last.is_some_and(|tier| rule.tier > tier) {
                continue;
            }
            let condition = match rule.condition.met(&known.facts) {
                Met::No => continue,
                Met::Yes => TRUE,
                Met::Open => {
                    rule.condition.given(&known.facts).diagram(self.variables, &mut self.conditions)?
                }
            };
            if condition == TRUE && rule.decides {
                last = last.or(Some(rule.tier));
            }
            if condition != FALSE {
                state.push((at, condition));
            }
        }
        let mut memo = BTreeMap::new();
        self.expand(state, known, &mut memo)
    }

    /// Which combinations of open facts can occur: a zone's own dwelling type, and sides in order
    /// of length.
    fn possible(&mut self, program: &Program, known: &Known) -> Result<Ref, TooMuch> {
        let mut sum = match self.context_possible {
            Some(known) => known,
            None => self.context_possible(program)?,
        };
        self.context_possible = Some(sum);
        let [longest, middle, shortest] = SIDES;
        for (longer, shorter) in [(longest, middle), (middle, shortest), (longest, shortest)] {
            let (Some(longer), Some(shorter)) = (fact_index(longer), fact_index(shorter)) else { continue };
            // The ends of an interval, narrowed to what the item itself says of the side.
            let bound = |at: usize, interval: usize, upper: bool| {
                let (low, high) =
                    self.variables.get(at).map_or((i64::MIN, i64::MAX), |v| v.range_of(interval));
                let (smallest, largest) = known.ranges.get(&at).copied().unwrap_or((i64::MIN, i64::MAX));
                if upper { high.min(largest) } else { low.max(smallest) }
            };
            let open = |at: usize| known.facts.get(at) == Some(&Knowledge::Open);
            // The largest a value of the longer side stands for, and the smallest one of the shorter.
            let ends = |at: usize, upper: bool| -> Vec<i64> {
                match known.facts.get(at) {
                    Some(Knowledge::Is(value)) => vec![bound(at, *value, upper)],
                    Some(Knowledge::Open) => (0..self.variables.get(at).map_or(0, Variable::size))
                        .map(|v| bound(at, v, upper))
                        .collect(),
                    _ => Vec::new(),
                }
            };
            let (long_ends, short_ends) = (ends(longer, true), ends(shorter, false));
            if long_ends.is_empty() || short_ends.is_empty() || (!open(longer) && !open(shorter)) {
                continue;
            }
            self.conditions.spend(long_ends.len() * short_ends.len())?;
            let fits = |l: usize, s: usize| {
                long_ends.get(l).zip(short_ends.get(s)).is_none_or(|(long, short)| long >= short)
            };
            let ordered = if !open(longer) {
                self.only(shorter, &|s| fits(0, s))?
            } else if !open(shorter) {
                self.only(longer, &|l| fits(l, 0))?
            } else {
                let mut rows = Vec::with_capacity(long_ends.len());
                for l in 0..long_ends.len() {
                    rows.push(self.only(shorter, &|s| fits(l, s))?);
                }
                self.conditions.make(u16::try_from(longer).map_err(|_| TooMuch)?, rows)?
            };
            sum = self.conditions.and(sum, ordered)?;
        }
        Ok(sum)
    }

    /// Which combinations of context facts can occur.
    fn context_possible(&mut self, program: &Program) -> Result<Ref, TooMuch> {
        let mut sum = TRUE;
        if let (Some(zone), Some(dwelling)) = (fact_index("zone"), fact_index("dwelling")) {
            for z in program.zones.iter().filter(|z| z.dwelling.is_some()) {
                let zone_at = self.variables.get(zone).and_then(|v| v.index_of(&z.id));
                let dwelling_at = z
                    .dwelling
                    .as_deref()
                    .and_then(|d| self.variables.get(dwelling).and_then(|v| v.index_of(d)));
                let (Some(zone_at), Some(dwelling_at)) = (zone_at, dwelling_at) else { continue };
                let elsewhere = self.only(zone, &|v| v != zone_at)?;
                let fits = self.only(dwelling, &|v| v == dwelling_at)?;
                let either = self.conditions.or(elsewhere, fits)?;
                sum = self.conditions.and(sum, either)?;
            }
        }
        if let (Some(day), Some(year)) = (fact_index("day"), fact_index("time-of-year"))
            && let (Some(days), Some(years)) = (self.variables.get(day), self.variables.get(year))
            && days.size() > 1
            && years.size() > 1
        {
            self.conditions.spend(days.size() * years.size())?;
            let mut rows = Vec::with_capacity(days.size());
            for interval in 0..days.size() {
                let met = year_days_of(days, interval, years);
                rows.push(self.only(year, &|v| met.binary_search(&v).is_ok())?);
            }
            let falls = self.conditions.make(u16::try_from(day).map_err(|_| TooMuch)?, rows)?;
            sum = self.conditions.and(sum, falls)?;
        }
        Ok(sum)
    }

    fn only(&mut self, variable: usize, holds: &dyn Fn(usize) -> bool) -> Result<Ref, TooMuch> {
        let size = self.variables.get(variable).map_or(0, Variable::size);
        let children = (0..size).map(|v| if holds(v) { TRUE } else { FALSE }).collect();
        self.conditions.make(u16::try_from(variable).map_err(|_| TooMuch)?, children)
    }

    fn expand(
        &mut self,
        mut state: State,
        known: &Known,
        memo: &mut BTreeMap<State, Ref>,
    ) -> Result<Ref, TooMuch> {
        if state.first() == Some(&(POSSIBLE, FALSE)) {
            return Ok(IMPOSSIBLE);
        }
        state.retain(|&(at, condition)| condition != FALSE && !(at == POSSIBLE && condition == TRUE));
        let certain: Vec<usize> = state.iter().filter(|(_, c)| *c == TRUE).map(|(at, _)| *at).collect();
        let rules = self.rules;
        let strongest = rules.strongest(&certain);
        state.retain(|&(at, _)| !rules.is_out(at, &strongest));
        if let Some(&done) = memo.get(&state) {
            return Ok(done);
        }
        let next = state.iter().filter_map(|&(_, c)| self.conditions.node(c)).map(|n| n.variable).min();
        let Some(variable) = next else {
            let applying: Vec<usize> = state.iter().map(|(at, _)| *at).collect();
            if let Some(&known) = self.decided.get(&applying) {
                return Ok(known);
            }
            let made = self.outcome(rules.decide(&applying));
            self.decided.insert(applying, made);
            return Ok(made);
        };
        if memo.len() > crate::diagram::MOST_NODES / 8 {
            return Err(TooMuch);
        }
        let at = usize::from(variable);
        let size = self.variables.get(at).map_or(0, Variable::size);
        let own = known.open.get(&at);
        let allowed = own.or_else(|| self.context.open.get(&at)).map(|(weights, _)| weights.clone());
        self.conditions.spend(size * (1 + state.len()))?;
        let mut children = Vec::with_capacity(size);
        for value in 0..size {
            let occurs = allowed.as_ref().is_none_or(|w| w.iter().any(|(v, _)| usize::from(*v) == value));
            if !occurs {
                children.push(IMPOSSIBLE);
                continue;
            }
            let below: State = state
                .iter()
                .map(|&(rule, condition)| match self.conditions.node(condition) {
                    Some(node) if node.variable == variable => (rule, child(node, value)),
                    _ => (rule, condition),
                })
                .collect();
            children.push(self.expand(below, known, memo)?);
        }
        let made = self.decisions.make(variable, children)?;
        memo.insert(state, made);
        Ok(made)
    }

    fn outcome(&mut self, outcome: Outcome) -> Ref {
        let next = self.outcomes.len();
        let number = *self.numbers.entry(outcome.clone()).or_insert(next);
        if number == next {
            self.outcomes.push(outcome);
        }
        terminal(number)
    }

    /// The open facts that a subject's diagram tests.
    fn tested(&self, root: Ref, known: &Known) -> Vec<OpenVariable> {
        let mut variables: BTreeMap<u16, ()> = BTreeMap::new();
        let mut seen: BTreeMap<Ref, ()> = BTreeMap::new();
        let mut open = vec![root];
        while let Some(at) = open.pop() {
            if !is_node(at) || seen.insert(at, ()).is_some() {
                continue;
            }
            if let Some(node) = self.decisions.node(at) {
                variables.insert(node.variable, ());
                open.extend(&node.children);
            }
        }
        variables
            .into_keys()
            .filter_map(|variable| {
                let at = usize::from(variable);
                let (weights, assumed) = known.open.get(&at).or_else(|| self.context.open.get(&at))?;
                Some(OpenVariable { variable, weights: weights.clone(), assumed: *assumed })
            })
            .collect()
    }
}

/// The smallest and largest value a measure has where an item leaves it open; what cannot be read
/// is a problem told elsewhere.
fn exact_range(kind: FactKind, open: &Open) -> Option<(i64, i64)> {
    if !matches!(kind, FactKind::Measure(_)) {
        return None;
    }
    let read = |words: &Option<String>| normalised(kind, words.as_ref()?).ok();
    Some((read(&open.from)?, read(&open.to)?))
}

/// The place of a fact that items may tell; context is not theirs to tell, nor what they are.
fn told_by_items(name: &str) -> Option<usize> {
    let free = !CONTEXT.contains(&name) && !matches!(name, "item" | "category" | "part");
    if free { fact_index(name) } else { None }
}

fn narrow(value: usize) -> u16 {
    u16::try_from(value).unwrap_or(u16::MAX)
}

fn context_weights(variable: &Variable) -> Vec<(u16, u32)> {
    (0..variable.size()).map(|v| (narrow(v), variable.weights.get(v).copied().unwrap_or(1))).collect()
}

fn choice_weights(
    variable: &Variable,
    open: &Open,
    problems: &mut Vec<(String, &'static str)>,
) -> Vec<(u16, u32)> {
    let mut weights = Vec::new();
    for (value, &weight) in &open.among {
        match variable.index_of(value) {
            Some(index) => weights.push((narrow(index), weight.max(1))),
            None => problems.push((value.clone(), "unknown-value")),
        }
    }
    if open.among.is_empty() {
        problems.push((String::new(), "no-values"));
    }
    weights.sort_unstable();
    weights
}

/// Weights of intervals: how much of the range that occurs each covers, the usual value's interval
/// counting for as much again as all of them together. A judgement, no source.
fn interval_weights(
    variable: &Variable,
    kind: FactKind,
    open: &Open,
    problems: &mut Vec<(String, &'static str)>,
) -> Vec<(u16, u32)> {
    let mut read = |words: &Option<String>| -> Option<i64> {
        let words = words.as_ref()?;
        match normalised(kind, words) {
            Ok(value) => Some(value),
            Err(problem) => {
                problems.push((words.clone(), problem));
                None
            }
        }
    };
    let (from, to, usual) = (read(&open.from), read(&open.to), read(&open.usual));
    let (Some(from), Some(to)) = (from, to) else {
        if problems.is_empty() {
            problems.push((String::new(), "no-range"));
        }
        return Vec::new();
    };
    if from > to {
        problems.push((open.from.clone().unwrap_or_default(), "range-reversed"));
        return Vec::new();
    }
    let (first, last) = (variable.interval_of(from), variable.interval_of(to));
    let usual = usual.filter(|u| *u >= from && *u <= to).map(|u| variable.interval_of(u));
    let span = i128::from(to - from).max(1);
    (first..=last)
        .map(|interval| {
            let low = interval.checked_sub(1).and_then(|i| variable.cuts.get(i)).map_or(from, |c| c.at / 2);
            let high = variable.cuts.get(interval).map_or(to, |c| c.at / 2);
            let covered = i128::from(high.min(to) - low.max(from)).max(0);
            let share = u32::try_from(covered * 1000 / span).unwrap_or(0).max(1);
            (narrow(interval), if usual == Some(interval) { share + 1000 } else { share })
        })
        .collect()
}
