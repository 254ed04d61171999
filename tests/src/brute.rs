//! Proving a program by trying every case: slow, simple, and written apart from the compiler.
//!
//! It is the yardstick that exact analysis is measured against, in findings and in time.

#![expect(clippy::indexing_slicing, reason = "a yardstick for tests may stop a test")]

use std::collections::{BTreeMap, BTreeSet};

use chrono::{Datelike as _, NaiveDate, TimeDelta};
use guide_data::{
    Bounds, Catalog, Condition, FACTS, FactKind, HAZARDS, Item, Measure, Part, Program, Rule, Season,
    Silence, Tier, Verdict, fact_index,
};

/// A fact's value in one case.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
enum Plain {
    Word(String),
    Number(i64),
}

/// One case: for each fact of the table its value, or nothing where nobody stated it.
type Case = Vec<Option<Plain>>;

/// What trying everything found.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Tried {
    /// How many cases there are.
    pub cases: u64,
    /// Items with a case that no rule decides and the program leaves undecided.
    pub uncovered: BTreeSet<String>,
    /// Sets of rules that disagree in some case.
    pub conflicts: BTreeSet<BTreeSet<String>>,
    /// Rules with a verdict that decide no case.
    pub idle: BTreeSet<String>,
}

/// Context facts: no item states them.
const CONTEXT: &[&str] = &["zone", "dwelling", "origin", "proof", "add-on"];

/// Which days are tried.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Days {
    /// One of every stretch on which the same rules hold: a first piece of the analysis's own work,
    /// done beforehand.
    OfEachStretch,
    /// Every one of the edition's first year, and one before it: what is left to somebody who knows
    /// nothing of the rules.
    Every,
}

/// Tries every case of every item of a program.
#[must_use]
pub fn try_everything(program: &Program, catalog: &Catalog, days: Days) -> Tried {
    let catalog = catalog.with(&program.items);
    let world = World::new(program, days);
    let mut tried = Tried {
        idle: program.rules.iter().filter(|r| r.verdict.is_some()).map(|r| r.id.clone()).collect(),
        ..Tried::default()
    };
    for item in &catalog.items {
        for part in std::iter::once(None).chain(item.parts.iter().map(Some)) {
            let choices = world.choices(item, part);
            let mut at = vec![0_usize; choices.len()];
            loop {
                let case: Case =
                    choices.iter().zip(&at).map(|(list, &i)| list.get(i).cloned().flatten()).collect();
                if world.possible(&case, item) {
                    world.judge(item, &case, &mut tried);
                }
                // The next case, counting up with the last fact fastest.
                let Some(turn) = (0..at.len()).rev().find(|&f| at[f] + 1 < choices[f].len()) else { break };
                at[turn] += 1;
                at.iter_mut().skip(turn + 1).for_each(|i| *i = 0);
            }
        }
    }
    tried
}

struct World<'a> {
    program: &'a Program,
    which: Days,
    /// The facts that some rule speaks of.
    spoken: BTreeSet<String>,
    /// The thresholds of each measure.
    cuts: BTreeMap<String, BTreeSet<i64>>,
    /// The days that are tried.
    days: Vec<NaiveDate>,
    strength: Vec<u8>,
    /// Positions of the rules that each rule beats.
    beats: Vec<BTreeSet<usize>>,
}

fn read(fact: &str, words: &str) -> Option<i64> {
    match guide_data::fact(fact)?.kind {
        FactKind::Measure(dimension) => Measure::parse(words, dimension).ok().map(|m| m.value),
        _ => None,
    }
}

fn in_season(season: &Season, day: NaiveDate) -> bool {
    let today = format!("{:02}-{:02}", day.month(), day.day());
    if season.from <= season.until {
        season.from <= today && today <= season.until
    } else {
        today >= season.from || today <= season.until
    }
}

impl<'a> World<'a> {
    fn new(program: &'a Program, which: Days) -> Self {
        let mut spoken = BTreeSet::from(["hazard".to_owned(), "battery".to_owned()]);
        let mut cuts: BTreeMap<String, BTreeSet<i64>> = BTreeMap::new();
        let first = program.edition.from.unwrap_or_default();
        let mut days = BTreeSet::from([first]);
        for rule in &program.rules {
            if let Some(when) = &rule.when {
                when.for_each_fact(&mut |fact| {
                    spoken.insert(fact.to_owned());
                });
                thresholds(when, &mut cuts);
            }
            days.extend(rule.from);
            days.extend(rule.until.map(|day| day + TimeDelta::days(1)));
            if let Some(season) = &rule.season {
                let year = first.year();
                for words in [&season.from, &season.until] {
                    if let Ok(day) = format!("{year}-{words}").parse::<NaiveDate>() {
                        days.extend([day, day + TimeDelta::days(1)]);
                    }
                }
            }
        }
        // A day before everything.
        days.extend(days.first().map(|day| *day - TimeDelta::days(400)));
        if which == Days::Every {
            days.extend(first.iter_days().take(366));
        }
        let position: BTreeMap<&str, usize> =
            program.rules.iter().enumerate().map(|(at, r)| (r.id.as_str(), at)).collect();
        let direct = |at: usize| -> Vec<usize> {
            let rule = &program.rules[at];
            let named = rule.overrides.iter().filter_map(|o| position.get(o.as_str()).copied());
            named.filter(|&o| program.rules[o].tier == rule.tier).collect()
        };
        let beats: Vec<BTreeSet<usize>> = (0..program.rules.len())
            .map(|at| {
                let mut seen = BTreeSet::new();
                let mut open = direct(at);
                while let Some(next) = open.pop() {
                    if seen.insert(next) {
                        open.extend(direct(next));
                    }
                }
                if seen.contains(&at) { BTreeSet::new() } else { seen }
            })
            .collect();
        let own = |rule: &Rule| {
            if rule.temporary { 2 } else { u8::from(rule.when.as_ref().is_some_and(Condition::names_items)) }
        };
        let strength = (0..program.rules.len())
            .map(|at| {
                let over = beats[at].iter().map(|&o| own(&program.rules[o])).max().unwrap_or_default();
                over.max(own(&program.rules[at]))
            })
            .collect();
        Self { program, which, spoken, cuts, days: days.into_iter().collect(), strength, beats }
    }

    /// What each fact can be for an item or a part of it.
    fn choices(&self, item: &Item, part: Option<&Part>) -> Vec<Vec<Option<Plain>>> {
        let word = |w: &str| Some(Plain::Word(w.to_owned()));
        FACTS
            .iter()
            .map(|fact| {
                if !self.spoken.contains(fact.id) {
                    return vec![None];
                }
                let of_part = part.and_then(|p| p.facts.get(fact.id));
                let stated = of_part.or_else(|| item.facts.get(fact.id));
                let open = item.open.get(fact.id).filter(|_| of_part.is_none());
                match fact.kind {
                    FactKind::Id(_) if fact.id == "item" => vec![word(&item.id)],
                    FactKind::Id(_) if fact.id == "category" => vec![word(&item.category)],
                    FactKind::Id(_) if self.program.zones.is_empty() => vec![None],
                    FactKind::Id(_) => self.program.zones.iter().map(|z| word(&z.id)).collect(),
                    FactKind::Choice(_) if fact.id == "part" => {
                        vec![word(part.map_or("whole", |p| p.id.as_str()))]
                    }
                    FactKind::Choice(values) if CONTEXT.contains(&fact.id) => {
                        values.iter().map(|v| word(v)).collect()
                    }
                    FactKind::Choice(_) => match (open, stated) {
                        (Some(open), _) => open.among.keys().map(|v| word(v)).collect(),
                        (None, Some(value)) => vec![word(value)],
                        (None, None) => vec![fact.normal.and_then(word)],
                    },
                    FactKind::Measure(_) => match (open, stated) {
                        (Some(open), _) => self.measures(fact.id, open),
                        (None, Some(words)) => vec![read(fact.id, words).map(Plain::Number)],
                        (None, None) => vec![None],
                    },
                    FactKind::Day | FactKind::YearDay => vec![None],
                }
            })
            .collect()
    }

    /// One measure of every stretch between thresholds, within what occurs.
    fn measures(&self, fact: &str, open: &guide_data::Open) -> Vec<Option<Plain>> {
        let end = |words: &Option<String>| words.as_ref().and_then(|w| read(fact, w));
        let (Some(from), Some(to)) = (end(&open.from), end(&open.to)) else { return vec![None] };
        let mut all = BTreeSet::from([from, to]);
        for cut in self.cuts.get(fact).into_iter().flatten() {
            all.extend([cut - 1, *cut, cut + 1].into_iter().filter(|v| (from..=to).contains(v)));
        }
        all.into_iter().map(|v| Some(Plain::Number(v))).collect()
    }

    fn possible(&self, case: &Case, item: &Item) -> bool {
        let get = |fact: &str| fact_index(fact).and_then(|at| case.get(at)).and_then(Option::as_ref);
        let zone = self.program.zones.iter().find(|z| get("zone") == Some(&Plain::Word(z.id.clone())));
        if let (Some(own), Some(Plain::Word(dwelling))) =
            (zone.and_then(|z| z.dwelling.as_ref()), get("dwelling"))
            && own != dwelling
        {
            return false;
        }
        let open = |side: &str| item.open.contains_key(side);
        [("longest-side", "middle-side"), ("middle-side", "shortest-side"), ("longest-side", "shortest-side")]
            .iter()
            .all(|(long, short)| match (get(long), get(short)) {
                (Some(Plain::Number(l)), Some(Plain::Number(s))) if open(long) || open(short) => l >= s,
                _ => true,
            })
    }

    fn judge(&self, item: &Item, case: &Case, tried: &mut Tried) {
        let is = |fact: &str, word: &str| {
            let value = fact_index(fact).and_then(|at| case.get(at)).and_then(Option::as_ref);
            matches!(value, Some(Plain::Word(w)) if w == word)
        };
        let mut classes: Vec<&str> =
            HAZARDS.iter().skip(1).copied().filter(|class| is("hazard", class)).collect();
        if is("battery", "yes") {
            classes.push("battery-lithium");
        }
        let mut met = None;
        for &day in &self.days {
            tried.cases += 1;
            // Who knows nothing of the rules does not know either that their conditions hold on all days
            // alike.
            if self.which == Days::Every {
                met = None;
            }
            let met = met.get_or_insert_with(|| self.met(case, &classes));
            let on = |r: &Rule| {
                r.from.is_none_or(|f| day >= f)
                    && r.until.is_none_or(|u| day <= u)
                    && r.season.as_ref().is_none_or(|s| in_season(s, day))
            };
            let on: Vec<usize> = met.iter().copied().filter(|&at| on(&self.program.rules[at])).collect();
            self.decide(item, &on, !classes.is_empty(), tried);
        }
    }

    /// The rules with a verdict whose conditions a case meets.
    fn met(&self, case: &Case, classes: &[&str]) -> Vec<usize> {
        self.program
            .rules
            .iter()
            .enumerate()
            .filter(|(_, r)| r.verdict.is_some())
            .filter(|(_, r)| r.when.as_ref().is_none_or(|w| self.holds(w, case)))
            .filter(|(_, r)| r.tier != Tier::Safety || self.may_decide(r, classes))
            .map(|(at, _)| at)
            .collect()
    }

    fn decide(&self, item: &Item, on: &[usize], hazard: bool, tried: &mut Tried) {
        let rule = |at: usize| &self.program.rules[at];
        for tier in Tier::ALL {
            let mut left: Vec<usize> = on.iter().copied().filter(|&at| rule(at).tier == tier).collect();
            if left.is_empty() {
                if tier == Tier::Safety && hazard {
                    return;
                }
                continue;
            }
            let strongest = left.iter().map(|&at| self.strength[at]).max();
            left.retain(|&at| Some(self.strength[at]) == strongest);
            let beaten: BTreeSet<usize> =
                left.iter().flat_map(|&at| self.beats[at].iter().copied()).collect();
            left.retain(|at| !beaten.contains(at));
            let place = |at: usize| (rule(at).verdict, &rule(at).stream, &rule(at).channel);
            if left.iter().any(|&at| place(at) != place(left[0])) {
                tried.conflicts.insert(left.iter().map(|&at| rule(at).id.clone()).collect());
            }
            for at in left {
                tried.idle.remove(&rule(at).id);
            }
            return;
        }
        if self.program.silence == Silence::Undecided {
            tried.uncovered.insert(item.id.clone());
        }
    }

    fn may_decide(&self, rule: &Rule, classes: &[&str]) -> bool {
        let accepted = rule
            .acknowledgement
            .as_ref()
            .is_some_and(|a| !a.by.trim().is_empty() && !a.because.trim().is_empty());
        let channel = rule.channel.as_ref().and_then(|id| self.program.channel(id));
        accepted
            || classes.iter().all(|class| {
                rule.verdict == Some(Verdict::Elsewhere)
                    && channel.is_some_and(|c| c.safe_for.iter().any(|safe| safe == class))
            })
    }

    fn holds(&self, condition: &Condition, case: &Case) -> bool {
        let get = |fact: &str| fact_index(fact).and_then(|at| case.get(at)).and_then(Option::as_ref);
        match condition {
            Condition::All(parts) => parts.iter().all(|p| self.holds(p, case)),
            Condition::Any(parts) => parts.iter().any(|p| self.holds(p, case)),
            Condition::Not(part) => !self.holds(part, case),
            Condition::Is(one) => {
                let Some(Plain::Word(word)) = get(&one.fact) else { return false };
                let counts = &self.program.counts_as;
                let other = counts.iter().find(|c| c.fact == one.fact && c.these.contains(word));
                one.of.contains(other.map_or(word, |c| &c.count_as))
            }
            Condition::Measure(bounds) => {
                let Some(Plain::Number(n)) = get(&bounds.fact) else { return false };
                within(bounds, *n)
            }
        }
    }
}

fn within(b: &Bounds, n: i64) -> bool {
    let bound = |words: &Option<String>, fits: &dyn Fn(i64) -> bool| {
        words.as_ref().is_none_or(|w| read(&b.fact, w).is_some_and(fits))
    };
    bound(&b.at_least, &|t| n >= t)
        && bound(&b.over, &|t| n > t)
        && bound(&b.at_most, &|t| n <= t)
        && bound(&b.under, &|t| n < t)
}

fn thresholds(condition: &Condition, cuts: &mut BTreeMap<String, BTreeSet<i64>>) {
    match condition {
        Condition::All(parts) | Condition::Any(parts) => parts.iter().for_each(|p| thresholds(p, cuts)),
        Condition::Not(part) => thresholds(part, cuts),
        Condition::Is(_) => {}
        Condition::Measure(b) => {
            let all = [&b.at_least, &b.over, &b.at_most, &b.under];
            let values = all.into_iter().flatten().filter_map(|words| read(&b.fact, words));
            cuts.entry(b.fact.clone()).or_default().extend(values);
        }
    }
}
