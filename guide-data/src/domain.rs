//! The values each fact can take in one program: choices as listed, measures cut into intervals
//! exactly at the thresholds that rules name.

use std::collections::BTreeMap;

use chrono::{Datelike as _, NaiveDate};
use serde::{Deserialize, Serialize};

use crate::catalog::Catalog;
use crate::condition::Condition;
use crate::facts::{FACTS, FactKind, IdSource};
use crate::measure::{Dimension, Measure};
use crate::program::Program;

/// A fact as a variable of a guide's diagram.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Variable {
    /// The fact's id.
    pub fact: String,
    /// Its values, for a choice or an id.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub values: Vec<String>,
    /// Its cuts in ascending order, for a measure or a day.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub cuts: Vec<Cut>,
    /// It is a measure or a day.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub measured: bool,
    /// How likely each value is, when the program knows (households of zones); else empty.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub weights: Vec<u32>,
}

/// A cut between two intervals of a measure.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Cut {
    /// Twice the smallest normalised value above the cut: "until February 28" and "from March 1"
    /// cut at the same place, so no interval is without a value.
    pub at: i64,
    /// The threshold itself lies below the cut: "at most", "over".
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub below: bool,
    /// The threshold as stated.
    pub stated: String,
    /// What was said beside it.
    #[serde(default, skip_serializing_if = "Aside::is_empty")]
    pub aside: Aside,
}

/// What a rule says beside a threshold.
#[derive(Debug, Clone, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(default)]
pub struct Aside {
    /// An everyday thing of about that size: words under `like-<id>`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub like: Option<String>,
    /// What a quantity is counted per: words under `per-<id>`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub per: Option<String>,
}

impl Aside {
    /// True when nothing was said.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.like.is_none() && self.per.is_none()
    }
}

impl Cut {
    /// The cut below a threshold: the value itself belongs above.
    fn below(value: i64, stated: &str) -> Self {
        Self { at: value * 2, below: false, stated: stated.to_owned(), aside: Aside::default() }
    }

    /// The cut above a threshold: the value itself belongs below.
    fn above(value: i64, stated: &str) -> Self {
        Self { at: value * 2 + 2, below: true, stated: stated.to_owned(), aside: Aside::default() }
    }

    /// True when the threshold's own value lies above the cut.
    #[must_use]
    pub fn value_is_above(&self) -> bool {
        !self.below
    }
}

impl Variable {
    /// How many values it has in this program; at least one.
    #[must_use]
    pub fn size(&self) -> usize {
        if self.measured { self.cuts.len() + 1 } else { self.values.len() }
    }

    /// The index of a choice's or id's value.
    #[must_use]
    pub fn index_of(&self, value: &str) -> Option<usize> {
        self.values.iter().position(|v| v == value)
    }

    /// The smallest and largest whole value of an interval, both included.
    pub(crate) fn range_of(&self, interval: usize) -> (i64, i64) {
        let cut = |at: usize| self.cuts.get(at).map(|c| c.at);
        let low = interval.checked_sub(1).and_then(cut);
        let low = low.map_or(i64::MIN, |at| at.div_euclid(2) + at.rem_euclid(2));
        (low, cut(interval).map_or(i64::MAX, |at| (at - 1).div_euclid(2)))
    }

    /// The interval a normalised measure lies in.
    #[must_use]
    pub fn interval_of(&self, value: i64) -> usize {
        self.cuts.partition_point(|c| c.at <= value.saturating_mul(2))
    }
}

/// Days are counted from 1970-01-01, so that they are ordered whole numbers.
pub(crate) fn day_number(day: NaiveDate) -> i64 {
    day.signed_duration_since(NaiveDate::default()).num_days()
}

/// Reads "2027-03-09". The library reads more, and weighs phones 4 KB (brotli).
#[must_use]
pub fn day_of(words: &str) -> Option<NaiveDate> {
    let mut parts = words.trim().splitn(3, '-');
    let year = parts.next().filter(|year| year.len() == 4)?.parse().ok()?;
    let mut small = || parts.next().filter(|part| part.len() <= 2)?.parse().ok();
    NaiveDate::from_ymd_opt(year, small()?, small()?)
}

/// A day of the year as a whole number in calendar order: 31 for each month before it, leap day
/// included.
pub(crate) fn year_day(day: NaiveDate) -> i64 {
    i64::from(day.month0()) * 31 + i64::from(day.day0())
}

/// Reads "12-26": month and day, leap day included.
pub(crate) fn year_day_of(words: &str) -> Option<i64> {
    let (month, day) = words.trim().split_once('-')?;
    // Any leap year has every day there is.
    NaiveDate::from_ymd_opt(2024, month.parse().ok()?, day.parse().ok()?).map(year_day)
}

/// Which intervals of the year days of an interval of days fall into; both as positions.
pub(crate) fn year_days_of(days: &Variable, interval: usize, year: &Variable) -> Vec<usize> {
    let (low, high) = days.range_of(interval);
    // Four years hold every day of the year there is, leap day apart, which eight years around a
    // century hold.
    if high.saturating_sub(low) >= 8 * 366 {
        return (0..year.size()).collect();
    }
    let mut met = vec![false; year.size()];
    for number in low..=high {
        let day = NaiveDate::default().checked_add_signed(chrono::TimeDelta::days(number));
        if let Some(met) = day.and_then(|day| met.get_mut(year.interval_of(year_day(day)))) {
            *met = true;
        }
    }
    met.iter().enumerate().filter(|(_, met)| **met).map(|(at, _)| at).collect()
}

/// A bound of a condition, read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Bound {
    AtLeast,
    Over,
    AtMost,
    Under,
}

impl Bound {
    pub(crate) const ALL: [Self; 4] = [Self::AtLeast, Self::Over, Self::AtMost, Self::Under];

    fn cut(self, value: i64, stated: &str) -> Cut {
        match self {
            Self::AtLeast | Self::Under => Cut::below(value, stated),
            Self::Over | Self::AtMost => Cut::above(value, stated),
        }
    }
}

/// All four bounds of a condition with their words.
pub(crate) fn stated(bounds: &crate::condition::Bounds, bound: Bound) -> Option<&str> {
    match bound {
        Bound::AtLeast => bounds.at_least.as_deref(),
        Bound::Over => bounds.over.as_deref(),
        Bound::AtMost => bounds.at_most.as_deref(),
        Bound::Under => bounds.under.as_deref(),
    }
}

/// A stated threshold in the fact's normalised unit.
pub(crate) fn normalised(kind: FactKind, words: &str) -> Result<i64, &'static str> {
    match kind {
        FactKind::Measure(dimension) => {
            Measure::parse(words, dimension).map(|m| m.value).map_err(crate::measure::MeasureProblem::code)
        }
        FactKind::Day => day_of(words).map(day_number).ok_or("not-a-day"),
        FactKind::YearDay => year_day_of(words).ok_or("not-a-year-day"),
        FactKind::Choice(_) | FactKind::Id(_) => Err("not-a-measure"),
    }
}

/// The variables of one or several programs together, one for each fact, in the order of
/// [`FACTS`]. Comparing two programs needs both cut alike.
pub(crate) fn variables(programs: &[&Program], catalog: &Catalog) -> Vec<Variable> {
    let mut cuts: Cuts = BTreeMap::new();
    for program in programs {
        for rule in &program.rules {
            if let Some(when) = &rule.when {
                cut_condition(when, &mut cuts);
            }
            let mut day = |d: Option<NaiveDate>, bound: Bound| {
                if let Some(d) = d {
                    let words = d.to_string();
                    let cut = bound.cut(day_number(d), &words);
                    cuts.entry("day".to_owned()).or_default().entry(cut.at).or_insert(cut);
                }
            };
            day(rule.from, Bound::AtLeast);
            day(rule.until, Bound::AtMost);
            if let Some(season) = &rule.season {
                cut_condition(&season.condition(), &mut cuts);
            }
        }
    }
    FACTS
        .iter()
        .map(|fact| {
            let measured = matches!(fact.kind, FactKind::Measure(_) | FactKind::Day | FactKind::YearDay);
            let values = match fact.kind {
                FactKind::Choice(values) => values.iter().map(|&v| v.to_owned()).collect(),
                FactKind::Id(IdSource::Items) => catalog.items.iter().map(|i| i.id.clone()).collect(),
                FactKind::Id(IdSource::Categories) => {
                    crate::standard::CATEGORIES.iter().map(|&c| c.to_owned()).collect()
                }
                FactKind::Id(IdSource::Zones) => {
                    let mut zones: Vec<String> = Vec::new();
                    for zone in programs.iter().flat_map(|p| &p.zones) {
                        if !zones.contains(&zone.id) {
                            zones.push(zone.id.clone());
                        }
                    }
                    zones
                }
                FactKind::Measure(_) | FactKind::Day | FactKind::YearDay => Vec::new(),
            };
            let cuts = cuts.get(fact.id).map(|c| c.values().cloned().collect()).unwrap_or_default();
            let weights = if fact.id == "zone" {
                values
                    .iter()
                    .map(|v: &String| {
                        let zone = programs.iter().flat_map(|p| &p.zones).find(|z| &z.id == v);
                        zone.map_or(1, |z| z.households.max(1))
                    })
                    .collect()
            } else {
                Vec::new()
            };
            Variable { fact: fact.id.to_owned(), values, cuts, measured, weights }
        })
        .collect()
}

/// The cuts of each fact, by where they are.
type Cuts = BTreeMap<String, BTreeMap<i64, Cut>>;

fn cut_condition(condition: &Condition, cuts: &mut Cuts) {
    match condition {
        Condition::All(parts) | Condition::Any(parts) => parts.iter().for_each(|p| cut_condition(p, cuts)),
        Condition::Not(part) => cut_condition(part, cuts),
        Condition::Is(_) => {}
        Condition::Measure(bounds) => {
            let Some(fact) = crate::facts::fact(&bounds.fact) else { return };
            for bound in Bound::ALL {
                if let Some(words) = stated(bounds, bound)
                    && let Ok(value) = normalised(fact.kind, words)
                {
                    let aside = Aside { like: bounds.like.clone(), per: bounds.per.clone() };
                    let cut = Cut { aside, ..bound.cut(value, words.trim()) };
                    let known = cuts.entry(bounds.fact.clone()).or_default().entry(cut.at);
                    // Several rules may name one threshold: whoever says more about it is heard.
                    let known = known.or_insert_with(|| cut.clone());
                    if known.aside.is_empty() {
                        known.aside = cut.aside;
                    }
                }
            }
        }
    }
}

/// The values of a variable, as a set.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct ValueSet(Vec<u64>);

impl ValueSet {
    pub(crate) fn none(size: usize) -> Self {
        Self(vec![0; size.div_ceil(64).max(1)])
    }

    pub(crate) fn insert(&mut self, value: usize) {
        if let Some(word) = self.0.get_mut(value / 64) {
            *word |= 1 << (value % 64);
        }
    }

    pub(crate) fn remove(&mut self, value: usize) {
        if let Some(word) = self.0.get_mut(value / 64) {
            *word &= !(1 << (value % 64));
        }
    }

    pub(crate) fn contains(&self, value: usize) -> bool {
        self.0.get(value / 64).is_some_and(|word| word & (1 << (value % 64)) != 0)
    }
}

/// The intervals of a variable that satisfy bounds; bounds that cannot be read do not restrict,
/// and are a finding elsewhere.
pub(crate) fn intervals(variable: &Variable, kind: FactKind, bounds: &crate::condition::Bounds) -> ValueSet {
    // Interval i lies between cut i-1 and cut i, so those between two thresholds stand side by side.
    let (mut first, mut end) = (0, variable.size());
    for bound in Bound::ALL {
        let Some(Ok(value)) = stated(bounds, bound).map(|words| normalised(kind, words)) else { continue };
        let cut = bound.cut(value, "").at;
        match bound {
            Bound::AtLeast | Bound::Over => {
                first = first.max(variable.cuts.partition_point(|c| c.at < cut) + 1);
            }
            Bound::AtMost | Bound::Under => end = end.min(variable.cuts.partition_point(|c| c.at <= cut)),
        }
    }
    let mut set = ValueSet::none(variable.size());
    (first..end).for_each(|interval| set.insert(interval));
    set
}

/// The dimension of a fact, when it is a measure.
#[must_use]
pub fn dimension_of(fact: &str) -> Option<Dimension> {
    match crate::facts::fact(fact)?.kind {
        FactKind::Measure(dimension) => Some(dimension),
        _ => None,
    }
}
