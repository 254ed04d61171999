//! Short lines for a lid or mailer, each with its fidelity: the share of an item's cases in which
//! following the line alone puts the thing in the right place.

use std::collections::BTreeMap;

use chrono::NaiveDate;

use crate::ask::{ValueLabel, label};
use crate::domain::{day_number, year_day};
use crate::guide::{Answered, Guide, GuideItem, Outcome, Subject};

/// What a sheet has room for.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct SummaryWanted {
    /// The stream whose container the sheet is for; all streams when none is named.
    pub stream: Option<String>,
    /// The zone the sheet is for; when none, lines must hold in all.
    pub zone: Option<String>,
    /// The day it is for.
    pub day: Option<NaiveDate>,
    /// Lines of things that belong in.
    pub yes: usize,
    /// Lines of things that do not.
    pub no: usize,
    /// Lines of things that go elsewhere.
    pub elsewhere: usize,
}

/// Lines in the order they matter.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Summary {
    /// What belongs in.
    pub yes: Vec<Line>,
    /// What does not.
    pub no: Vec<Line>,
    /// What goes elsewhere.
    pub elsewhere: Vec<Line>,
    /// One line for each hazard class; never dropped, whatever the room.
    pub hazards: Vec<Line>,
}

/// One line.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// The item that stands for it.
    pub item: String,
    /// The verdict it tells.
    pub verdict: Answered,
    /// The channel it names.
    pub channel: Option<String>,
    /// The stream it belongs in, when that is not the sheet's.
    pub stream: Option<String>,
    /// The hazard class.
    pub hazard: Option<String>,
    /// The shortest qualifier that lifts its fidelity over [`FAITHFUL`]: a fact and the values for
    /// which the line holds.
    pub qualifiers: Vec<(String, Vec<ValueLabel>)>,
    /// Steps that every such case needs.
    pub steps: Vec<String>,
    /// 0 to 1, qualifiers counted.
    pub fidelity: f64,
}

/// The fidelity below which a line needs a qualifier. A judgement, no source.
pub const FAITHFUL: f64 = 0.9;

/// Makes the lines for a sheet.
#[must_use]
pub fn summarise(guide: &Guide, wanted: &SummaryWanted) -> Summary {
    let mut summary = Summary::default();
    let mut lines: Vec<(u32, Line)> = Vec::new();
    let mut hazards: BTreeMap<String, (u32, Line)> = BTreeMap::new();
    for item in &guide.items {
        let Some(subject) = item.subjects.first() else { continue };
        let taken = taken(guide, wanted);
        let Some(line) = line(guide, item, subject, &taken, wanted) else { continue };
        if let Some(class) = line.hazard.clone() {
            let entry = (item.common, line);
            let best = hazards.entry(class).or_insert_with(|| entry.clone());
            if entry.0 > best.0 {
                *best = entry;
            }
        } else {
            // What residents get wrong comes first; then what they have most.
            let weight = item.common + if item.often_wrong { 100 } else { 0 };
            lines.push((weight, line));
        }
    }
    lines.sort_by(|a, b| b.0.cmp(&a.0).then_with(|| a.1.item.cmp(&b.1.item)));
    for (_, line) in lines {
        let (list, room) = match line.verdict {
            Answered::Yes => (&mut summary.yes, wanted.yes),
            Answered::No => (&mut summary.no, wanted.no),
            Answered::Elsewhere => (&mut summary.elsewhere, wanted.elsewhere),
            Answered::Unlisted | Answered::Undecided => continue,
        };
        if list.len() < room {
            list.push(line);
        }
    }
    // Accepted things are listed by how common they are: pitfalls first would read oddly there.
    let common =
        |line: &Line| guide.item_index(&line.item).and_then(|i| guide.items.get(i)).map_or(0, |i| i.common);
    summary.yes.sort_by_key(|l| std::cmp::Reverse(common(l)));
    let mut hazards: Vec<_> = hazards.into_values().collect();
    hazards.sort_by(|a, b| b.0.cmp(&a.0).then_with(|| a.1.item.cmp(&b.1.item)));
    summary.hazards = hazards.into_iter().map(|(_, line)| line).collect();
    summary
}

fn taken(guide: &Guide, wanted: &SummaryWanted) -> BTreeMap<u16, usize> {
    let mut taken = BTreeMap::new();
    for (at, variable) in guide.variables.iter().enumerate() {
        let Ok(at) = u16::try_from(at) else { continue };
        let zone = wanted.zone.as_deref().and_then(|z| guide.zones.iter().find(|g| g.id == z));
        let value = match variable.fact.as_str() {
            "time-of-year" => Some(variable.interval_of(year_day(wanted.day.unwrap_or(guide.first_day())))),
            "day" => Some(variable.interval_of(day_number(wanted.day.unwrap_or(guide.first_day())))),
            "zone" => zone.and_then(|z| variable.index_of(&z.id)),
            "dwelling" => zone.and_then(|z| z.dwelling.as_deref()).and_then(|d| variable.index_of(d)),
            "origin" => variable.index_of("household"),
            "proof" | "add-on" => variable.index_of("no"),
            _ => None,
        };
        if let Some(value) = value {
            taken.insert(at, value);
        }
    }
    taken
}

/// What a line would say: where the thing goes, seen from the sheet's container.
fn line(
    guide: &Guide,
    item: &GuideItem,
    subject: &Subject,
    taken: &BTreeMap<u16, usize>,
    wanted: &SummaryWanted,
) -> Option<Line> {
    // The likeliest place speaks for the item.
    let mut best: Option<(f64, Outcome)> = None;
    for outcome in guide.reached(subject) {
        let share = guide.share(subject, taken, &|o| o.same_place(outcome));
        if share > 0.0 && best.as_ref().is_none_or(|(s, _)| share > *s + 1e-12) {
            best = Some((share, outcome.clone()));
        }
    }
    let (mut fidelity, main) = best?;
    let hazard = guide
        .reached(subject)
        .into_iter()
        .filter(|o| guide.share(subject, taken, &|x| x == *o) > 0.0)
        .find_map(|o| o.hazard.clone());
    let here = main.verdict == Answered::Yes
        && wanted.stream.as_ref().is_none_or(|s| main.stream.as_ref() == Some(s));
    let verdict = match main.verdict {
        Answered::Yes if here => Answered::Yes,
        // It belongs in another container: on this one it is a no.
        Answered::Yes => Answered::No,
        other => other,
    };
    let mut qualifiers = Vec::new();
    if fidelity < FAITHFUL
        && let Some((fact, values, lifted)) = qualifier(guide, subject, taken, &main, fidelity)
    {
        qualifiers.push((fact, values));
        fidelity = lifted;
    }
    let mut steps = main.steps.clone();
    for outcome in guide.reached(subject).into_iter().filter(|o| o.same_place(&main)) {
        steps.retain(|s| outcome.steps.contains(s));
    }
    Some(Line {
        item: item.id.clone(),
        verdict,
        channel: main.channel.clone(),
        stream: main.stream.clone().filter(|_| !here),
        hazard,
        qualifiers,
        steps,
        fidelity,
    })
}

/// The one fact whose values best separate the cases in which the line holds.
fn qualifier(
    guide: &Guide,
    subject: &Subject,
    taken: &BTreeMap<u16, usize>,
    main: &Outcome,
    without: f64,
) -> Option<(String, Vec<ValueLabel>, f64)> {
    let mut best: Option<(String, Vec<ValueLabel>, f64)> = None;
    for open in subject.open.iter().filter(|o| !taken.contains_key(&o.variable)) {
        let Some(variable) = guide.variables.get(usize::from(open.variable)) else { continue };
        let total: u32 = open.weights.iter().map(|(_, w)| *w).sum();
        let (mut holds, mut right) = (Vec::new(), 0.0);
        for &(value, weight) in &open.weights {
            let mut fixed = taken.clone();
            fixed.insert(open.variable, usize::from(value));
            let share = guide.share(subject, &fixed, &|o| o.same_place(main));
            let part = f64::from(weight) / f64::from(total.max(1));
            if share > 0.5 {
                holds.push(label(variable, usize::from(value)));
                right += share * part;
            } else {
                // The line with its qualifier does not speak of these: a reader is warned off.
                right += (1.0 - share) * part;
            }
        }
        let helps = !holds.is_empty() && holds.len() < open.weights.len() && right > without + 0.01;
        if helps && best.as_ref().is_none_or(|(_, _, r)| right > *r) {
            best = Some((variable.fact.clone(), holds, right));
        }
    }
    best
}
