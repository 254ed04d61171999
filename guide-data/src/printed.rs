//! What has been printed, and which of its lines are no longer true.
//!
//! A line is looked at in exactly the cases it speaks of: of its item, from a household, in the
//! sheet's zone, under the condition printed with it. It misleads where verdict or destination are
//! not what it says. A short line may have misled somebody from the first day; that is no news. So
//! the register keeps with each line the cases in which it held when it was printed
//! ([`PrintedLine::held`]), and only those are looked at. Where an entry does not say (it was written
//! by hand), the edition it was printed from can, see [`untrue_since`]; without either, a line counts
//! as untrue when it misleads in more than half of the cases it speaks of.

use std::collections::BTreeMap;

use chrono::{Days, NaiveDate};
use serde::{Deserialize, Serialize};

use crate::ask::{Given, ValueLabel};
use crate::catalog::{Catalog, Item};
use crate::compare::product::{Path, Product, Side, told};
use crate::compare::region::{Region, When};
use crate::compile::compile_over;
use crate::condition::{Bounds, Condition, OneOf};
use crate::domain::{Variable, day_number, variables};
use crate::facts::{FactKind, fact_index};
use crate::guide::{Answered, Guide, GuideItem, Outcome};
use crate::measure::Dimension;
use crate::paths::Witness;
use crate::program::{Acknowledgement, PrintedLine, PrintedSheet, Program, Rule, Silence, Tier, Verdict};
use crate::resolve::{NEVER_COUNT_AS, kind_of};
use crate::summarise::{Line, Summary, SummaryWanted};

/// A printed line that is no longer true.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct UntrueLine {
    /// The sheet's id in the register.
    pub sheet: String,
    /// The line's position on the sheet.
    pub line: usize,
    /// The item it is about.
    pub item: String,
    /// Its words as printed, when the register has them.
    #[serde(skip_serializing_if = "String::is_empty", default)]
    pub words: String,
    /// The first day on which it is untrue; `None` when it is untrue under all of this program.
    pub since: Option<NaiveDate>,
    /// The last day, when it becomes true again.
    pub until: Option<NaiveDate>,
    /// Exactly when it misleads.
    pub when: When,
    /// The share of the cases it speaks of in which it misleads, on all days of this program: 0 to 1.
    pub share: f64,
    /// What is true in the likeliest of these cases; `None` when the item is gone.
    pub now: Option<Outcome>,
    /// That case.
    pub witness: Option<Witness>,
}

/// The printed lines that are untrue under a program, of every sheet that is still out there, in the
/// register's order. A sheet for a zone that is gone speaks to nobody.
#[must_use]
pub fn untrue(program: &Program, catalog: &Catalog) -> Vec<UntrueLine> {
    look(None, program, &program.printed, catalog)
}

/// The printed lines that become untrue from one program to the next: those of both registers that
/// are untrue under the second and were not under the first.
#[must_use]
pub fn untrue_since(before: &Program, after: &Program, catalog: &Catalog) -> Vec<UntrueLine> {
    let mut sheets = after.printed.clone();
    sheets.extend(before.printed.iter().filter(|s| after.printed.iter().all(|a| a.id != s.id)).cloned());
    let already = look(None, before, &sheets, catalog);
    let mut found = look(Some(before), after, &sheets, catalog);
    found.retain(|line| {
        !already.iter().any(|a| a.sheet == line.sheet && a.line == line.line && a.until.is_none())
    });
    found
}

fn look(
    before: Option<&Program>,
    program: &Program,
    sheets: &[PrintedSheet],
    catalog: &Catalog,
) -> Vec<UntrueLine> {
    let out: Vec<&PrintedSheet> = sheets.iter().filter(|s| s.withdrawn.is_none()).collect();
    if out.iter().all(|s| s.lines.is_empty()) {
        return Vec::new();
    }
    let Some(desk) = Desk::new(before, program, &out, catalog) else { return Vec::new() };
    let mut found = Vec::new();
    for sheet in out {
        let Some(fixed) = desk.scope(sheet) else { continue };
        for (at, line) in sheet.lines.iter().enumerate() {
            found.extend(desk.line(sheet, &fixed, at, line));
        }
    }
    found
}

/// Everything needed to look at printed lines.
struct Desk<'a> {
    program: &'a Program,
    before: Option<&'a Program>,
    catalog: Catalog,
    variables: Vec<Variable>,
    guide: Guide,
    old: Option<Guide>,
    day: u16,
    /// The day variable's intervals that belong to this program.
    days: Vec<usize>,
}

impl<'a> Desk<'a> {
    fn new(
        before: Option<&'a Program>,
        program: &'a Program,
        sheets: &[&PrintedSheet],
        catalog: &Catalog,
    ) -> Option<Self> {
        let everything = before.map_or_else(|| catalog.clone(), |b| catalog.with(&b.items));
        let everything = everything.with(&program.items);
        // Thresholds and days that only the register names must be cut as well: rules that stand for
        // them are added for cutting alone.
        let first_day = program.edition.from.unwrap_or_default();
        let mut cutting = vec![Rule { from: Some(first_day), ..Rule::default() }];
        for line in sheets.iter().flat_map(|s| &s.lines) {
            cutting.extend(
                [&line.when, &line.held]
                    .into_iter()
                    .flatten()
                    .map(|c| Rule { when: Some(c.clone()), ..Rule::default() }),
            );
        }
        let cutting = Program { rules: cutting, ..Program::default() };
        let programs: Vec<&Program> = before.into_iter().chain([program, &cutting]).collect();
        let shared = variables(&programs, &everything);
        let day_at = fact_index("day")?;
        let days = shared.get(day_at)?;
        let days = (days.interval_of(day_number(first_day))..days.size()).collect();
        Some(Self {
            program,
            before,
            guide: compile_over(program, &catalog.with(&program.items), shared.clone()).guide,
            old: before.map(|b| compile_over(b, &catalog.with(&b.items), shared.clone()).guide),
            catalog: everything,
            variables: shared,
            day: u16::try_from(day_at).ok()?,
            days,
        })
    }

    /// What is settled for all readers of a sheet; `None` when its zone is gone.
    fn scope(&self, sheet: &PrintedSheet) -> Option<BTreeMap<u16, usize>> {
        let mut fixed = BTreeMap::new();
        let mut fix = |fact: &str, value: &str| {
            let at = fact_index(fact)?;
            fixed.insert(u16::try_from(at).ok()?, self.variables.get(at)?.index_of(value)?);
            Some(())
        };
        fix("origin", "household");
        fix("proof", "no");
        if let Some(zone) = &sheet.zone {
            let known = self.program.zones.iter().find(|z| z.id == *zone)?;
            fix("zone", zone)?;
            if let Some(dwelling) = &known.dwelling {
                fix("dwelling", dwelling);
            }
        }
        Some(fixed)
    }

    fn line(
        &self,
        sheet: &PrintedSheet,
        fixed: &BTreeMap<u16, usize>,
        at: usize,
        line: &PrintedLine,
    ) -> Option<UntrueLine> {
        let gone = || UntrueLine {
            sheet: sheet.id.clone(),
            line: at,
            item: line.item.clone(),
            words: line.words.clone(),
            since: None,
            until: None,
            when: vec![Vec::new()],
            share: 1.0,
            now: None,
            witness: None,
        };
        let item = self.catalog.item(&line.item);
        let (Some(item), Some(subject)) = (item, main_subject(&self.guide, &line.item)) else {
            return Some(gone());
        };
        // What the line speaks of and where it held, each as a diagram of its own.
        let speaks = self.condition(item, self.spoken_of(line).as_ref());
        let held = line.held.as_ref().map(|held| self.condition(item, Some(held)));
        let old = self.old.as_ref().filter(|_| held.is_none());
        let old_subject = old.and_then(|o| Some((o, main_subject(o, &line.item)?)));
        let printed_on = sheet.printed.or(self.before.and_then(|b| b.edition.from)).unwrap_or_default();
        let mut then = fixed.clone();
        then.insert(self.day, self.variables.get(usize::from(self.day))?.interval_of(day_number(printed_on)));
        let sure = held.is_some() || old_subject.is_some();

        let mut sides = vec![Side { guide: &self.guide, subject, fixed, own: None }];
        sides.push(Side { guide: &speaks, subject: main_subject(&speaks, &line.item)?, fixed, own: None });
        if let Some(held) = &held {
            sides.push(Side { guide: held, subject: main_subject(held, &line.item)?, fixed, own: None });
        } else if let Some((old, subject)) = old_subject {
            sides.push(Side { guide: old, subject, fixed: &then, own: None });
        }
        let alike = |side: usize, number: usize| match side {
            0 => self
                .guide
                .outcomes
                .get(number)
                .map_or(HOLDS, |o| if holds(line, sheet, o, self.program) { HOLDS } else { number }),
            1 => verdict_flag(&speaks, number),
            _ => match (&held, old, self.before) {
                (Some(held), _, _) => verdict_flag(held, number),
                (None, Some(old), Some(before)) => {
                    let did = old.outcomes.get(number).is_some_and(|o| holds(line, sheet, o, before));
                    usize::from(did)
                }
                _ => 1,
            },
        };
        let product = |days: &[usize]| {
            let mut narrowed = BTreeMap::from([(self.day, days.to_vec())]);
            if let Some(zones) = self.common_zones() {
                narrowed.extend([zones]);
            }
            Product::new(&sides, &narrowed, true, &alike)
        };
        let whole = product(&self.days).ok()?;
        let misled = |product: &Product, class: usize| {
            product.classes.get(class).is_some_and(|said| {
                said.first().and_then(|s| s.first()).is_some_and(|&s| s != HOLDS)
                    && said.iter().skip(1).all(|s| s.first() == Some(&1))
            })
        };
        let spoken = |product: &Product, class: usize| {
            product.classes.get(class).is_some_and(|said| said.get(1).is_some_and(|s| s.first() == Some(&1)))
        };
        let share = |product: &Product| {
            let all = product.share(&|c| spoken(product, c));
            if all > 0.0 { product.share(&|c| misled(product, c)) / all } else { 0.0 }
        };
        // Day by day: from which on it is untrue, and until when.
        let untrue_on = |interval: usize| -> bool {
            product(&[interval]).is_ok_and(|p| {
                if sure { (0..p.classes.len()).any(|c| misled(&p, c)) } else { share(&p) > 0.5 }
            })
        };
        let first = self.days.iter().position(|&d| untrue_on(d))?;
        let last = self.days.iter().skip(first).position(|&d| !untrue_on(d)).map(|n| first + n);
        let wanted = |class: usize| misled(&whole, class);
        let path = whole.likeliest(&wanted).unwrap_or_default();
        let reached = (0..whole.classes.len()).filter(|c| wanted(*c)).find(|&class| {
            // The class of the likeliest path: walking it alone finds the same path.
            whole.likeliest(&|c| c == class).as_ref() == Some(&path)
        });
        let now = reached
            .and_then(|class| whole.classes.get(class)?.first()?.first().copied())
            .and_then(|number| self.guide.outcomes.get(number).cloned());
        Some(UntrueLine {
            since: if first == 0 { None } else { self.starts(self.days.get(first).copied()?) },
            until: last
                .and_then(|l| self.starts(self.days.get(l).copied()?))
                .and_then(|day| day.checked_sub_days(Days::new(1))),
            when: Region::new(&whole, &wanted).told(&self.variables),
            share: share(&whole),
            now,
            witness: Some(self.witness(&line.item, sheet, &path)),
            ..gone()
        })
    }

    /// The zones both programs have, when there is an older one.
    fn common_zones(&self) -> Option<(u16, Vec<usize>)> {
        let before = self.before?;
        let at = fact_index("zone")?;
        let variable = self.variables.get(at)?;
        let zones: Vec<usize> = self
            .program
            .zones
            .iter()
            .filter(|z| before.zones.is_empty() || before.zones.iter().any(|b| b.id == z.id))
            .filter_map(|z| variable.index_of(&z.id))
            .collect();
        (!zones.is_empty()).then_some((u16::try_from(at).ok()?, zones))
    }

    /// The cases a line speaks of. The register's own conditions name every value, those that count as another
    /// one too, and what counts as what may change later. One written by hand is read as a rule is: what counts
    /// as a value it names is meant as well, by what the program says that the sheet was printed from, where
    /// that is known.
    fn spoken_of(&self, line: &PrintedLine) -> Option<Condition> {
        let when = line.when.as_ref()?;
        match line.held {
            Some(_) => Some(when.clone()),
            None => Some(counted(when, self.before.unwrap_or(self.program))),
        }
    }

    /// A guide that answers yes for an item exactly where a condition holds. It is compiled like any
    /// other, so that the item's facts and what is open about it are taken alike.
    fn condition(&self, item: &Item, condition: Option<&Condition>) -> Guide {
        let rule = Rule {
            id: "holds".to_owned(),
            // First of all tiers, and allowed to decide about hazards: nothing else may answer.
            tier: Tier::Safety,
            when: condition.cloned(),
            verdict: Some(Verdict::Yes),
            acknowledgement: Some(Acknowledgement {
                by: "register".to_owned(),
                on: None,
                because: "condition".to_owned(),
            }),
            ..Rule::default()
        };
        let asking = Program {
            zones: self.program.zones.clone(),
            unknown: self.program.unknown.clone(),
            silence: Silence::Ask,
            rules: vec![rule],
            ..Program::default()
        };
        compile_over(&asking, &Catalog { items: vec![item.clone()] }, self.variables.clone()).guide
    }

    /// The first day of an interval.
    fn starts(&self, interval: usize) -> Option<NaiveDate> {
        let (first, _) = self.variables.get(usize::from(self.day))?.range_of(interval);
        if first == i64::MIN { None } else { day_of(first) }
    }

    fn witness(&self, item: &str, sheet: &PrintedSheet, path: &Path) -> Witness {
        let mut witness = Witness { item: item.to_owned(), ..Witness::default() };
        witness.answers = told(&self.variables, path);
        if let Some(zone) = &sheet.zone {
            witness.known.push(("zone".to_owned(), Given::value(zone)));
        }
        for &(variable, value) in path {
            let Some(of) = self.variables.get(usize::from(variable)) else { continue };
            // Other guides of the same program may cut measures elsewhere: a measure is stated.
            let given = match kind_of(usize::from(variable)) {
                FactKind::Choice(_) | FactKind::Id(_) => {
                    Given::Value(of.values.get(value).cloned().unwrap_or_default())
                }
                FactKind::Day => Given::Day(day_of(inside(of, value)).unwrap_or_default()),
                FactKind::YearDay => Given::Interval(value),
                FactKind::Measure(dimension) => Given::Stated(stated(dimension, inside(of, value))),
            };
            witness.known.push((of.fact.clone(), given));
        }
        witness
    }
}

/// A condition with the values that count as one it names.
fn counted(condition: &Condition, program: &Program) -> Condition {
    let all = |parts: &[Condition]| parts.iter().map(|part| counted(part, program)).collect();
    match condition {
        Condition::All(parts) => Condition::All(all(parts)),
        Condition::Any(parts) => Condition::Any(all(parts)),
        Condition::Not(part) => Condition::Not(Box::new(counted(part, program))),
        Condition::Measure(bounds) => Condition::Measure(bounds.clone()),
        Condition::Is(one) => {
            let mut of = one.of.clone();
            let entries = program.counts_as.iter().filter(|e| {
                e.fact == one.fact
                    && !NEVER_COUNT_AS.contains(&e.fact.as_str())
                    && one.of.contains(&e.count_as)
            });
            of.extend(entries.flat_map(|e| &e.these).filter(|value| !one.of.contains(value)).cloned());
            Condition::Is(OneOf { fact: one.fact.clone(), of })
        }
    }
}

/// Stands for every outcome under which a line holds.
const HOLDS: usize = usize::MAX;

fn main_subject<'g>(guide: &'g Guide, item: &str) -> Option<&'g crate::guide::Subject> {
    guide.items.iter().find(|i: &&GuideItem| i.id == item)?.subjects.first()
}

fn verdict_flag(guide: &Guide, number: usize) -> usize {
    usize::from(guide.outcomes.get(number).is_some_and(|o| o.verdict == Answered::Yes))
}

/// Whether a line is true of an outcome.
fn holds(line: &PrintedLine, sheet: &PrintedSheet, outcome: &Outcome, program: &Program) -> bool {
    let takes = |channel: &Option<String>| {
        channel.as_ref().is_none_or(|c| outcome.channel.as_ref() == Some(c) || outcome.also.contains(c))
    };
    if line.hazard.is_some() {
        return outcome.stream.is_none() && outcome.verdict == Answered::Elsewhere && takes(&line.channel);
    }
    match line.verdict {
        None => true,
        Some(Verdict::Yes) => {
            let stream = line.stream.as_ref().or(sheet.stream.as_ref());
            outcome.verdict == Answered::Yes && stream.is_none_or(|s| outcome.stream.as_ref() == Some(s))
        }
        Some(Verdict::No) => match &line.stream {
            // It names another stream; what is refused needs no such name.
            Some(named) if program.stream(named).is_some_and(|s| s.kind != "refuse") => {
                outcome.stream.as_ref() == Some(named)
            }
            _ => outcome.verdict == Answered::No,
        },
        Some(Verdict::Elsewhere) => outcome.verdict == Answered::Elsewhere && takes(&line.channel),
    }
}

/// A value inside an interval: its smallest, or for the first one its largest.
fn inside(variable: &Variable, interval: usize) -> i64 {
    match variable.range_of(interval) {
        (i64::MIN, i64::MAX) => 0,
        (i64::MIN, largest) => largest,
        (smallest, _) => smallest,
    }
}

fn day_of(number: i64) -> Option<NaiveDate> {
    let days = Days::new(number.unsigned_abs());
    let start = NaiveDate::default();
    if number < 0 { start.checked_sub_days(days) } else { start.checked_add_days(days) }
}

/// A normalised value as a stated measure.
fn stated(dimension: Dimension, value: i64) -> String {
    let value = value.max(0);
    let (per, digits, unit) = match dimension {
        Dimension::Length => (1_000, 3, " mm"),
        Dimension::Volume => (1_000_000, 6, " ml"),
        Dimension::Mass => (1_000_000, 6, " g"),
        Dimension::Count => (1_000, 3, ""),
    };
    format!("{}.{:0digits$}{unit}", value / per, value % per)
}

/// A sheet about to be entered into the register.
pub struct Printing<'a> {
    /// The guide it was made from.
    pub guide: &'a Guide,
    /// What was asked for.
    pub wanted: &'a SummaryWanted,
    /// The lines it has.
    pub summary: &'a Summary,
    /// It names the places that take hazards.
    pub hazard_places: bool,
}

impl PrintedSheet {
    /// The entry with the lines that a sheet prints, each with the cases in which it holds now.
    /// `words` says a line in the program's source language.
    #[must_use]
    pub fn with_lines(
        mut self,
        program: &Program,
        from: &Printing<'_>,
        words: &dyn Fn(&Line) -> String,
    ) -> Self {
        self.edition.clone_from(&program.edition.label);
        self.stream.clone_from(&from.wanted.stream);
        self.zone.clone_from(&from.wanted.zone);
        let summary = from.summary;
        let lines = summary.yes.iter().chain(&summary.no).chain(&summary.elsewhere).chain(&summary.hazards);
        self.lines = lines
            .map(|line| {
                let mut entry = entry(line, from.hazard_places);
                entry.words = words(line);
                entry.held = held(program, from, &self, &entry);
                entry
            })
            .collect();
        self
    }
}

impl Program {
    /// Enters a printed sheet into the register; one of the same id is replaced.
    pub fn note_printed(&mut self, sheet: PrintedSheet) {
        match self.printed.iter_mut().find(|s| s.id == sheet.id) {
            Some(known) => *known = sheet,
            None => self.printed.push(sheet),
        }
    }

    /// An id for a sheet printed now: what it is, its edition, and a number when that is taken.
    #[must_use]
    pub fn free_printed_id(&self, sheet: &PrintedSheet) -> String {
        let mut parts = vec![sheet.sheet.as_str()];
        parts.extend(sheet.stream.as_deref());
        parts.extend(sheet.zone.as_deref());
        parts.push(&self.edition.label);
        let base: String = parts
            .join("-")
            .to_lowercase()
            .chars()
            .map(|c| if c.is_ascii_alphanumeric() { c } else { '-' })
            .collect();
        let taken = |id: &str| self.printed.iter().any(|s| s.id == id);
        if !taken(&base) {
            return base;
        }
        (2_u32..).map(|n| format!("{base}-{n}")).find(|id| !taken(id)).unwrap_or(base)
    }
}

fn entry(line: &Line, hazard_places: bool) -> PrintedLine {
    let conditions: Vec<Condition> =
        line.qualifiers.iter().map(|(fact, values)| among(fact, values)).collect();
    let when = match conditions.as_slice() {
        [] => None,
        [only] => Some(only.clone()),
        _ => Some(Condition::All(conditions)),
    };
    PrintedLine {
        item: line.item.clone(),
        verdict: match line.verdict {
            Answered::Yes => Some(Verdict::Yes),
            Answered::No => Some(Verdict::No),
            Answered::Elsewhere => Some(Verdict::Elsewhere),
            Answered::Unlisted | Answered::Undecided => None,
        },
        stream: line.stream.clone(),
        channel: line.channel.clone().filter(|_| hazard_places || line.hazard.is_none()),
        when,
        hazard: line.hazard.clone(),
        ..PrintedLine::default()
    }
}

/// "The fact has one of these values", as a condition.
fn among(fact: &str, values: &[ValueLabel]) -> Condition {
    let mut words = Vec::new();
    let mut ranges = Vec::new();
    for value in values {
        match value {
            ValueLabel::Value(word) => words.push(word.clone()),
            ValueLabel::Range(ends) => ranges.push(Condition::Measure(Bounds {
                fact: fact.to_owned(),
                at_least: ends.at_least.clone(),
                over: ends.over.clone(),
                at_most: ends.at_most.clone(),
                under: ends.under.clone(),
                ..Bounds::default()
            })),
        }
    }
    if ranges.is_empty() {
        Condition::Is(OneOf { fact: fact.to_owned(), of: words })
    } else {
        Condition::Any(ranges)
    }
}

/// The cases in which a line holds as it is printed; `None` when they are too many to be told.
fn held(
    program: &Program,
    from: &Printing<'_>,
    sheet: &PrintedSheet,
    line: &PrintedLine,
) -> Option<Condition> {
    let subject = main_subject(from.guide, &line.item)?;
    let fixed = crate::summarise::taken(from.guide, from.wanted);
    let side = Side { guide: from.guide, subject, fixed: &fixed, own: None };
    let alike = |_: usize, number: usize| {
        usize::from(from.guide.outcomes.get(number).is_some_and(|o| holds(line, sheet, o, program)))
    };
    let product = Product::new(&[side], &BTreeMap::new(), true, &alike).ok()?;
    let holds = |class: usize| {
        product.classes.get(class).and_then(|said| said.first()).is_some_and(|s| s.first() == Some(&1))
    };
    Region::new(&product, &holds).condition(&from.guide.variables)
}
