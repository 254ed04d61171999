//! Asking: from what is known of an item, the next question that matters, or the answer.
//!
//! What a resident has said is applied to the diagrams first; whatever is still tested then can
//! change the answer, so a question that cannot matter is never asked. Among those that matter the
//! one is chosen that leaves the fewest further questions to expect.

use std::collections::BTreeMap;

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

use crate::diagram::{IMPOSSIBLE, Node, Ref, as_terminal, child, is_node, terminal};
use crate::domain::{Aside, Variable, day_number, normalised, year_day, year_days_of};
use crate::facts::FACTS;
use crate::guide::{Guide, GuideItem, OpenVariable, Outcome};
use crate::resolve::kind_of;

/// Facts that are never asked: the phone knows the day, and the others hold unless given.
const NEVER_ASKED: &[&str] = &["day", "time-of-year", "origin", "proof"];
/// Up to this many facts still open, the order of questions is optimal; above it, the fact tested
/// first is asked first, which needs at most as many questions as there are open facts.
const EXACT_UP_TO: usize = 7;

/// What a resident has said of a fact.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Given {
    /// A value of a choice, or an id.
    Value(String),
    /// An interval of a measure, by its position between the guide's cuts.
    Interval(usize),
    /// A measure as stated, with its unit: "3 in".
    Stated(String),
    /// A civil day.
    Day(NaiveDate),
    /// "I can't tell."
    CannotTell,
}

impl Given {
    /// A value.
    #[must_use]
    pub fn value(value: &str) -> Self {
        Self::Value(value.to_owned())
    }
}

/// What is known so far: fact id to what was given.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Known(BTreeMap<String, Given>);

impl Known {
    /// Notes what was given for a fact.
    pub fn give(&mut self, fact: &str, given: Given) {
        self.0.insert(fact.to_owned(), given);
    }

    /// The same, for building in one expression.
    #[must_use]
    pub fn with(mut self, fact: &str, given: Given) -> Self {
        self.give(fact, given);
        self
    }

    /// Forgets a fact.
    pub fn forget(&mut self, fact: &str) {
        self.0.remove(fact);
    }

    /// What was given for a fact.
    #[must_use]
    pub fn get(&self, fact: &str) -> Option<&Given> {
        self.0.get(fact)
    }

    /// All that was given, by fact.
    pub fn iter(&self) -> impl Iterator<Item = (&str, &Given)> {
        self.0.iter().map(|(f, g)| (f.as_str(), g))
    }
}

/// A value in a form that can be put into words.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum ValueLabel {
    /// A value: words under `value-<fact>-<value>`, for zones the text `zone.<id>`.
    Value(String),
    /// A range of a measure, with its ends as stated.
    Range(Ends),
}

/// The ends of a range, as stated; at most one of each pair is given.
#[derive(Debug, Clone, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(default)]
pub struct Ends {
    /// This or more.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub at_least: Option<String>,
    /// More than this.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub over: Option<String>,
    /// This or less.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub at_most: Option<String>,
    /// Less than this.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub under: Option<String>,
    /// What is said beside the lower end.
    #[serde(skip_serializing_if = "Aside::is_empty")]
    pub low: Aside,
    /// What is said beside the upper end.
    #[serde(skip_serializing_if = "Aside::is_empty")]
    pub high: Aside,
}

/// The next thing to do.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Step {
    /// Ask this.
    Ask(Question),
    /// This is the answer.
    Answer(Answer),
}

/// A question that matters.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Question {
    /// The fact asked for: words under `ask-<fact>`.
    pub fact: String,
    /// What can be answered; "I can't tell" can be too.
    pub options: Vec<Choice>,
    /// How many questions may follow at most, this one counted.
    pub at_most: usize,
}

/// One thing that can be answered.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Choice {
    /// What it says.
    pub label: ValueLabel,
    /// What to note when it is chosen.
    pub given: Given,
}

/// An answer about an item.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Answer {
    /// The item's id.
    pub item: String,
    /// The item itself first; then its parts, where they go somewhere else.
    pub parts: Vec<PartAnswer>,
    /// What was taken for each fact the resident could not tell.
    pub assumed: Vec<(String, ValueLabel)>,
}

/// An answer about one part.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct PartAnswer {
    /// The part's id; `None` for the item itself.
    pub part: Option<String>,
    /// What the guide says.
    pub outcome: Outcome,
}

impl Answer {
    /// What the guide says of the item itself.
    #[must_use]
    pub fn whole(&self) -> Option<&Outcome> {
        self.parts.iter().find(|p| p.part.is_none()).map(|p| &p.outcome)
    }

    /// The parts that are told apart from the item: those that go elsewhere, or are dangerous in another
    /// way.
    pub fn parts_apart(&self) -> impl Iterator<Item = &PartAnswer> {
        let whole = self.whole();
        self.parts.iter().filter(move |p| {
            let alike = |w: &Outcome| p.outcome.same_place(w) && p.outcome.hazard == w.hazard;
            p.part.is_some() && !whole.is_some_and(alike)
        })
    }
}

/// How many questions an item takes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct QuestionCount {
    /// On average, weighted by how likely each answer is.
    pub expected: f64,
    /// At worst.
    pub worst: usize,
    /// The order of questions is optimal, not merely bounded.
    pub exact: bool,
}

impl Guide {
    /// The next question about an item, or its answer. `None` for an item that does not exist.
    #[must_use]
    pub fn next(&self, item: usize, known: &Known) -> Option<Step> {
        let (mut rest, roots) = self.rest(item, known)?;
        let subject = self.items.get(item)?;
        let Some((variable, count)) = rest.best(&roots) else {
            return Some(Step::Answer(self.answer(subject, &rest, &roots, known)));
        };
        Some(Step::Ask(self.question(&mut rest, &roots, variable, count.worst)))
    }

    /// How many questions an item takes from what is known.
    #[must_use]
    pub fn questions(&self, item: usize, known: &Known) -> Option<QuestionCount> {
        let (mut rest, roots) = self.rest(item, known)?;
        let zero = QuestionCount { expected: 0.0, worst: 0, exact: true };
        Some(rest.best(&roots).map_or(zero, |(_, count)| count))
    }

    /// The answer when every fact still open is taken as the guide assumes it.
    #[must_use]
    pub fn assumed_answer(&self, item: usize, known: &Known) -> Option<Answer> {
        let mut known = known.clone();
        loop {
            match self.next(item, &known)? {
                Step::Answer(answer) => return Some(answer),
                Step::Ask(question) => known.give(&question.fact, Given::CannotTell),
            }
        }
    }

    /// The outcome of an item itself when every fact is known: one walk down the diagram. The
    /// slice holds, for each variable of the guide, the index of its value.
    #[must_use]
    pub fn verdict(&self, item: usize, values: &[u16]) -> Option<&Outcome> {
        self.walk(self.items.get(item)?.subjects.first()?.root, values)
    }

    /// The same for a part of an item; `None` when the item has no such part.
    #[must_use]
    pub fn part_verdict(&self, item: usize, part: &str, values: &[u16]) -> Option<&Outcome> {
        let subjects = &self.items.get(item)?.subjects;
        self.walk(subjects.iter().find(|s| s.part.as_deref() == Some(part))?.root, values)
    }

    fn walk(&self, root: Ref, values: &[u16]) -> Option<&Outcome> {
        let mut at = root;
        while let Some(node) = self.node(at) {
            at = child(node, usize::from(*values.get(usize::from(node.variable))?));
        }
        self.outcomes.get(as_terminal(at)?)
    }

    pub(crate) fn node(&self, at: Ref) -> Option<&Node> {
        if is_node(at) { self.nodes.get(at as usize) } else { None }
    }

    /// The index of what was given for a variable.
    pub(crate) fn given_index(&self, variable: usize, given: &Given) -> Option<usize> {
        let known = self.variables.get(variable)?;
        match given {
            Given::Value(value) => known.index_of(value),
            Given::Interval(interval) => (*interval < known.size()).then_some(*interval),
            Given::Stated(words) => {
                let value = normalised(kind_of(variable), words).ok()?;
                known.measured.then(|| known.interval_of(value))
            }
            Given::Day(day) if known.fact == "time-of-year" => Some(known.interval_of(year_day(*day))),
            Given::Day(day) => known.measured.then(|| known.interval_of(day_number(*day))),
            Given::CannotTell => None,
        }
    }

    /// An item's diagrams with all that is known applied.
    fn rest(&self, item: usize, known: &Known) -> Option<(Rest<'_>, Vec<Ref>)> {
        let item = self.items.get(item)?;
        let mut rest = Rest::new(self);
        let mut roots = Vec::with_capacity(item.subjects.len());
        for subject in &item.subjects {
            let mut taken: BTreeMap<u16, usize> = BTreeMap::new();
            for open in &subject.open {
                rest.weights.entry(open.variable).or_insert(&open.weights);
                if let Some(value) = self.taken(open, known) {
                    taken.insert(open.variable, value);
                }
            }
            rest.excluded = self.other_zones(known);
            let root = rest.restrict(subject.root, &taken, &mut BTreeMap::new());
            roots.push(root);
        }
        // What a part's answer would be where it has no line of its own cannot matter.
        if let Some((&mut whole, parts)) = roots.split_first_mut() {
            let mut memo = BTreeMap::new();
            for part in parts {
                *part = rest.fold(whole, *part, &mut memo);
            }
        }
        Some((rest, roots))
    }

    /// The value a variable has, or is assumed to have; `None` when it should be asked.
    fn taken(&self, open: &OpenVariable, known: &Known) -> Option<usize> {
        let at = usize::from(open.variable);
        let variable = self.variables.get(at)?;
        let occurs = |value: &usize| open.weights.iter().any(|(v, _)| usize::from(*v) == *value);
        match known.get(&variable.fact) {
            Some(Given::CannotTell) => Some(self.assume(open, variable)),
            Some(given) => self.given_index(at, given).filter(occurs),
            None if variable.fact == "dwelling" => self.zone_dwelling(known).filter(occurs),
            None if variable.fact == "time-of-year" => self.time_of_year(variable, known).filter(occurs),
            None if variable.fact == "day" => Some(variable.interval_of(day_number(self.first_day()))),
            None if NEVER_ASKED.contains(&variable.fact.as_str()) => Some(usize::from(open.assumed)),
            None => None,
        }
    }

    /// The part of the year that what is known of the day falls into; that of the first day the
    /// guide holds when nothing is known.
    fn time_of_year(&self, year: &Variable, known: &Known) -> Option<usize> {
        let day = match known.get("day") {
            Some(Given::Day(day)) => *day,
            Some(Given::Stated(words)) => crate::domain::day_of(words)?,
            Some(Given::Interval(interval)) => {
                let days = self.variables.iter().find(|v| v.fact == "day")?;
                return year_days_of(days, *interval, year).first().copied();
            }
            _ => self.first_day(),
        };
        Some(year.interval_of(year_day(day)))
    }

    fn assume(&self, open: &OpenVariable, variable: &Variable) -> usize {
        if variable.fact == "zone" {
            let most = open.weights.iter().max_by_key(|(v, w)| (*w, u16::MAX - v));
            return most.map_or(0, |(v, _)| usize::from(*v));
        }
        usize::from(open.assumed)
    }

    fn zone_dwelling(&self, known: &Known) -> Option<usize> {
        let Some(Given::Value(zone)) = known.get("zone") else { return None };
        let dwelling = self.zones.iter().find(|z| &z.id == zone)?.dwelling.as_deref()?;
        self.variables.iter().find(|v| v.fact == "dwelling")?.index_of(dwelling)
    }

    /// Zones in which the dwelling a resident named does not occur: variable and value.
    fn other_zones(&self, known: &Known) -> Vec<(u16, usize)> {
        let Some(Given::Value(dwelling)) = known.get("dwelling") else { return Vec::new() };
        let Some(at) = self.variables.iter().position(|v| v.fact == "zone") else { return Vec::new() };
        let (Some(variable), Ok(number)) = (self.variables.get(at), u16::try_from(at)) else {
            return Vec::new();
        };
        self.zones
            .iter()
            .filter(|z| z.dwelling.as_ref().is_some_and(|d| d != dwelling))
            .filter_map(|z| Some((number, variable.index_of(&z.id)?)))
            .collect()
    }

    fn answer(&self, item: &GuideItem, rest: &Rest<'_>, roots: &[Ref], known: &Known) -> Answer {
        let mut parts: Vec<PartAnswer> = Vec::new();
        for (subject, &root) in item.subjects.iter().zip(roots) {
            if root != rest.folded() {
                parts.push(PartAnswer { part: subject.part.clone(), outcome: rest.outcome(root) });
            }
        }
        let mut assumed = Vec::new();
        for (fact, given) in known.iter() {
            if *given != Given::CannotTell {
                continue;
            }
            let open =
                item.subjects.iter().flat_map(|s| &s.open).find(|o| self.fact_of(o.variable) == Some(fact));
            if let Some(open) = open
                && let Some(variable) = self.variables.get(usize::from(open.variable))
            {
                assumed.push((fact.to_owned(), label(variable, self.assume(open, variable))));
            }
        }
        Answer { item: item.id.clone(), parts, assumed }
    }

    fn fact_of(&self, variable: u16) -> Option<&str> {
        self.variables.get(usize::from(variable)).map(|v| v.fact.as_str())
    }

    fn question(&self, rest: &mut Rest<'_>, roots: &[Ref], variable: u16, at_most: usize) -> Question {
        let at = usize::from(variable);
        let Some(known) = self.variables.get(at) else {
            return Question { fact: String::new(), options: Vec::new(), at_most };
        };
        // A value that cannot be, given what is known, is not offered.
        let leads: Vec<(usize, Vec<Ref>)> = rest
            .values(variable)
            .into_iter()
            .map(|value| (value, rest.fix_all(roots, variable, value)))
            .filter(|(_, below)| below.iter().any(|&b| b != IMPOSSIBLE))
            .collect();
        let mut options: Vec<Choice> = Vec::new();
        if known.measured {
            // Neighbouring intervals that lead to the same place are one answer.
            let mut group: Option<(usize, usize, Vec<Ref>)> = None;
            let mut groups = Vec::new();
            for (value, leads) in leads {
                match &mut group {
                    Some((_, last, same)) if *same == leads => *last = value,
                    _ => {
                        groups.extend(group.take());
                        group = Some((value, value, leads));
                    }
                }
            }
            groups.extend(group);
            let count = groups.len();
            for (position, (first, last, _)) in groups.into_iter().enumerate() {
                let mut ends = ends(known, first, last);
                // What lies outside the range that occurs needs no end of its own.
                if position == 0 {
                    (ends.at_least, ends.over, ends.low) = (None, None, Aside::default());
                }
                if position + 1 == count {
                    (ends.at_most, ends.under, ends.high) = (None, None, Aside::default());
                }
                options.push(Choice { label: ValueLabel::Range(ends), given: Given::Interval(first) });
            }
        } else {
            for (value, _) in leads {
                if let Some(word) = known.values.get(value) {
                    let given = Given::Value(word.clone());
                    options.push(Choice { label: ValueLabel::Value(word.clone()), given });
                }
            }
        }
        Question { fact: known.fact.clone(), options, at_most }
    }
}

/// The words of a variable's value.
pub(crate) fn label(variable: &Variable, value: usize) -> ValueLabel {
    if variable.measured {
        ValueLabel::Range(ends(variable, value, value))
    } else {
        ValueLabel::Value(variable.values.get(value).cloned().unwrap_or_default())
    }
}

pub(crate) fn ends(variable: &Variable, first: usize, last: usize) -> Ends {
    let mut ends = Ends::default();
    if let Some(cut) = first.checked_sub(1).and_then(|i| variable.cuts.get(i)) {
        ends.low = cut.aside.clone();
        if cut.value_is_above() {
            ends.at_least = Some(cut.stated.clone());
        } else {
            ends.over = Some(cut.stated.clone());
        }
    }
    if let Some(cut) = variable.cuts.get(last) {
        ends.high = cut.aside.clone();
        if cut.value_is_above() {
            ends.under = Some(cut.stated.clone());
        } else {
            ends.at_most = Some(cut.stated.clone());
        }
    }
    ends
}

/// What remains of an item's diagrams, in a small store of its own.
pub(crate) struct Rest<'a> {
    guide: &'a Guide,
    nodes: Vec<Node>,
    unique: BTreeMap<Node, Ref>,
    pub(crate) weights: BTreeMap<u16, &'a [(u16, u32)]>,
    /// Values that what is known rules out.
    excluded: Vec<(u16, usize)>,
    counted: BTreeMap<Vec<Ref>, Option<(u16, QuestionCount)>>,
}

impl<'a> Rest<'a> {
    pub(crate) fn new(guide: &'a Guide) -> Self {
        Self {
            guide,
            nodes: Vec::new(),
            unique: BTreeMap::new(),
            weights: BTreeMap::new(),
            excluded: Vec::new(),
            counted: BTreeMap::new(),
        }
    }

    /// Copies a guide's diagram with some variables fixed.
    pub(crate) fn restrict(
        &mut self,
        at: Ref,
        taken: &BTreeMap<u16, usize>,
        memo: &mut BTreeMap<Ref, Ref>,
    ) -> Ref {
        let guide = self.guide;
        let Some(node) = guide.node(at) else { return at };
        if let Some(&done) = memo.get(&at) {
            return done;
        }
        let made = if let Some(&value) = taken.get(&node.variable) {
            self.restrict(child(node, value), taken, memo)
        } else {
            let mut children = Vec::with_capacity(node.children.len());
            for (value, &below) in node.children.iter().enumerate() {
                let out = self.excluded.contains(&(node.variable, value));
                children.push(if out { IMPOSSIBLE } else { self.restrict(below, taken, memo) });
            }
            self.make(node.variable, children)
        };
        memo.insert(at, made);
        made
    }

    /// Stands for "a part that goes where the whole goes": it has no line of its own.
    fn folded(&self) -> Ref {
        terminal(self.guide.outcomes.len())
    }

    /// A part's diagram in which whatever is told by the whole's answer is [`Rest::folded`].
    fn fold(&mut self, whole: Ref, part: Ref, memo: &mut BTreeMap<(Ref, Ref), Ref>) -> Ref {
        if whole == IMPOSSIBLE || part == IMPOSSIBLE {
            return IMPOSSIBLE;
        }
        if let (Some(w), Some(p)) = (as_terminal(whole), as_terminal(part)) {
            let outcomes = self.guide.outcomes.get(w).zip(self.guide.outcomes.get(p));
            let told = outcomes.is_some_and(|(w, p)| w.same_place(p) && w.hazard == p.hazard);
            return if told { self.folded() } else { part };
        }
        if let Some(&done) = memo.get(&(whole, part)) {
            return done;
        }
        let (left, right) = (self.node(whole).cloned(), self.node(part).cloned());
        let variable = left.iter().chain(&right).map(|n| n.variable).min().unwrap_or_default();
        let here = |n: Option<Node>| n.filter(|n| n.variable == variable);
        let (left, right) = (here(left), here(right));
        let size = left.iter().chain(&right).map(|n| n.children.len()).max().unwrap_or_default();
        let children = (0..size)
            .map(|value| {
                let w = left.as_ref().map_or(whole, |n| child(n, value));
                let p = right.as_ref().map_or(part, |n| child(n, value));
                self.fold(w, p, memo)
            })
            .collect();
        let made = self.make(variable, children);
        memo.insert((whole, part), made);
        made
    }

    fn make(&mut self, variable: u16, children: Vec<Ref>) -> Ref {
        let mut possible = children.iter().copied().filter(|&c| c != IMPOSSIBLE);
        let Some(first) = possible.next() else { return IMPOSSIBLE };
        if possible.all(|c| c == first) {
            return first;
        }
        let node = Node { variable, children };
        if let Some(&known) = self.unique.get(&node) {
            return known;
        }
        let at = u32::try_from(self.nodes.len()).unwrap_or(0);
        self.nodes.push(node.clone());
        self.unique.insert(node, at);
        at
    }

    fn node(&self, at: Ref) -> Option<&Node> {
        if is_node(at) { self.nodes.get(at as usize) } else { None }
    }

    fn outcome(&self, at: Ref) -> Outcome {
        as_terminal(at).and_then(|t| self.guide.outcomes.get(t)).cloned().unwrap_or_default()
    }

    /// The values of a variable that occur.
    fn values(&self, variable: u16) -> Vec<usize> {
        self.weights
            .get(&variable)
            .map(|w| w.iter().map(|(v, _)| usize::from(*v)).collect())
            .unwrap_or_default()
    }

    /// Diagrams with one variable fixed.
    fn fix_all(&mut self, roots: &[Ref], variable: u16, value: usize) -> Vec<Ref> {
        let mut memo = BTreeMap::new();
        roots.iter().map(|&r| self.fix(r, variable, value, &mut memo)).collect()
    }

    /// A diagram with one variable fixed.
    fn fix(&mut self, at: Ref, variable: u16, value: usize, memo: &mut BTreeMap<Ref, Ref>) -> Ref {
        let Some(node) = self.node(at).cloned() else { return at };
        // Variables are tested in order, so below a later one this one cannot come.
        if node.variable > variable {
            return at;
        }
        if node.variable == variable {
            return child(&node, value);
        }
        if let Some(&done) = memo.get(&at) {
            return done;
        }
        let children = node.children.iter().map(|&c| self.fix(c, variable, value, memo)).collect();
        let made = self.make(node.variable, children);
        memo.insert(at, made);
        made
    }

    /// The variables still tested, ascending.
    fn support(&self, roots: &[Ref]) -> Vec<u16> {
        let mut seen = vec![false; self.nodes.len()];
        let mut found = vec![false; self.guide.variables.len()];
        let mut open = roots.to_vec();
        while let Some(at) = open.pop() {
            if let Some(node) = self.node(at)
                && let Some(seen) = seen.get_mut(at as usize)
                && !std::mem::replace(seen, true)
            {
                if let Some(found) = found.get_mut(usize::from(node.variable)) {
                    *found = true;
                }
                open.extend(&node.children);
            }
        }
        (0_u16..).zip(found).filter(|(_, found)| *found).map(|(variable, _)| variable).collect()
    }

    /// The best variable to ask next, with how many questions to expect; `None` when the answer
    /// is certain.
    fn best(&mut self, roots: &[Ref]) -> Option<(u16, QuestionCount)> {
        if let Some(known) = self.counted.get(roots) {
            return *known;
        }
        let support = self.support(roots);
        let exact = support.len() <= EXACT_UP_TO;
        let candidates = if exact { support.as_slice() } else { support.get(..1).unwrap_or_default() };
        let mut best: Option<(u16, QuestionCount)> = None;
        for &variable in candidates {
            let count = self.count(roots, variable);
            if best.is_none_or(|(_, b)| count.expected < b.expected - 1e-12) {
                best = Some((variable, QuestionCount { exact: count.exact && exact, ..count }));
            }
        }
        self.counted.insert(roots.to_vec(), best);
        best
    }

    fn count(&mut self, roots: &[Ref], variable: u16) -> QuestionCount {
        let weights = self.weights.get(&variable).copied().unwrap_or_default();
        let mut sum = QuestionCount { expected: 1.0, worst: 0, exact: true };
        let (mut total, mut weighted) = (0.0, 0.0);
        for &(value, weight) in weights {
            let below = self.fix_all(roots, variable, usize::from(value));
            if below.iter().all(|&b| b == IMPOSSIBLE) {
                continue;
            }
            total += f64::from(weight);
            if let Some((_, count)) = self.best(&below) {
                weighted += f64::from(weight) * count.expected;
                sum.worst = sum.worst.max(count.worst);
                sum.exact &= count.exact;
            }
        }
        sum.worst += 1;
        if total > 0.0 {
            sum.expected += weighted / total;
        }
        sum
    }
}

/// The facts in the order diagrams test them, for callers of [`Guide::verdict`].
#[must_use]
pub fn fact_order() -> Vec<&'static str> {
    FACTS.iter().map(|f| f.id).collect()
}
