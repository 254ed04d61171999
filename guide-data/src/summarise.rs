//! Short lines for a lid or mailer, each with its fidelity: the share of an item's cases in which
//! following the line alone puts the thing in the right place.

use std::collections::BTreeMap;

use chrono::NaiveDate;

use crate::ask::{ValueLabel, ends, label};
use crate::diagram::{IMPOSSIBLE, Ref, as_terminal, child};
use crate::domain::{Variable, day_number, year_day};
use crate::guide::{Answered, Guide, GuideItem, OpenVariable, Outcome, Subject};
use crate::paths::shares;

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
    /// The shortest qualifier that lifts its fidelity over [`FAITHFUL`]: up to two facts, each with
    /// the values for which the line holds.
    pub qualifiers: Vec<(String, Vec<ValueLabel>)>,
    /// Steps that every such case needs.
    pub steps: Vec<String>,
    /// 0 to 1, qualifiers counted.
    pub fidelity: f64,
}

/// The fidelity below which a line needs a qualifier. A judgement, no source.
pub const FAITHFUL: f64 = 0.9;

/// How many words a line may have, and how they are counted: only whoever puts a line into words can
/// tell.
#[derive(Clone, Copy)]
pub struct WordBudget<'a> {
    /// The most words.
    pub most: usize,
    /// The words of a line with its qualifiers; in several languages, of the wordiest.
    pub count: &'a dyn Fn(&Line) -> usize,
}

/// Makes the lines for a sheet.
#[must_use]
pub fn summarise(guide: &Guide, wanted: &SummaryWanted) -> Summary {
    summarise_within(guide, wanted, None)
}

/// Makes the lines for a sheet under a budget of words. A line that is too long takes a shorter
/// qualifier, or none, and its fidelity tells what that costs; one that is too long even so is left
/// out, and the next takes its place. Hazards stay, however long.
#[must_use]
pub fn summarise_within(guide: &Guide, wanted: &SummaryWanted, budget: Option<WordBudget<'_>>) -> Summary {
    let mut summary = Summary::default();
    let mut lines: Vec<(u32, Line)> = Vec::new();
    let mut hazards: BTreeMap<String, (u32, Line)> = BTreeMap::new();
    for item in &guide.items {
        let Some(subject) = item.subjects.first() else { continue };
        let taken = taken(guide, wanted);
        let Some(line) = line(guide, item, subject, &taken, wanted, budget) else { continue };
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

pub(crate) fn taken(guide: &Guide, wanted: &SummaryWanted) -> BTreeMap<u16, usize> {
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
    budget: Option<WordBudget<'_>>,
) -> Option<Line> {
    // The likeliest place speaks for the item.
    let mut best: Option<(f64, Outcome)> = None;
    for outcome in guide.reached(subject) {
        let share = guide.share(subject, taken, &|o| o.same_place(outcome));
        if share > 0.0 && best.as_ref().is_none_or(|(s, _)| share > *s + 1e-12) {
            best = Some((share, outcome.clone()));
        }
    }
    let (fidelity, main) = best?;
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
    let mut steps = main.steps.clone();
    for outcome in guide.reached(subject).into_iter().filter(|o| o.same_place(&main)) {
        steps.retain(|s| outcome.steps.contains(s));
    }
    let bare = Line {
        item: item.id.clone(),
        verdict,
        channel: main.channel.clone(),
        stream: main.stream.clone().filter(|_| !here),
        hazard,
        qualifiers: Vec::new(),
        steps,
        fidelity,
    };
    let fits = |line: &Line| budget.is_none_or(|b| line.hazard.is_some() || (b.count)(line) <= b.most);
    if fidelity < FAITHFUL {
        let limits = qualifiers(guide, subject, taken, &main, fidelity).into_iter();
        let mut qualified = limits.map(|limit| {
            let words = |(at, values): &(u16, Vec<usize>)| {
                let variable = guide.variables.get(usize::from(*at))?;
                Some((variable.fact.clone(), joined(variable, values)))
            };
            let qualifiers = limit.facts.iter().filter_map(words).collect();
            Line { qualifiers, fidelity: limit.fidelity, ..bare.clone() }
        });
        if let Some(line) = qualified.find(|line| fits(line)) {
            return Some(line);
        }
    }
    Some(bare).filter(|line| fits(line))
}

/// The words of some values of a variable: neighbouring intervals are one range.
fn joined(variable: &Variable, values: &[usize]) -> Vec<ValueLabel> {
    if !variable.measured {
        return values.iter().map(|&value| label(variable, value)).collect();
    }
    let mut ranges: Vec<(usize, usize)> = Vec::new();
    for &value in values {
        match ranges.last_mut() {
            Some((_, last)) if *last + 1 == value => *last = value,
            _ => ranges.push((value, value)),
        }
    }
    ranges.into_iter().map(|(first, last)| ValueLabel::Range(ends(variable, first, last))).collect()
}

/// How a condition may be printed: which values of up to two facts a line is limited to.
#[derive(Debug, Clone)]
struct Limit {
    /// Variable and the values for which the line holds, in the order of variables.
    facts: Vec<(u16, Vec<usize>)>,
    fidelity: f64,
    /// How much there is to print: values named, and two more for each fact after the first.
    length: usize,
}

/// The conditions that lift a line's fidelity, the best first: the shortest that lifts it over
/// [`FAITHFUL`], else the one that lifts it most. At most two facts: nobody reads a third standing at
/// a cart.
fn qualifiers(
    guide: &Guide,
    subject: &Subject,
    taken: &BTreeMap<u16, usize>,
    main: &Outcome,
    without: f64,
) -> Vec<Limit> {
    let weigher = Weigher { guide, subject, taken, main };
    let open: Vec<&OpenVariable> = subject.open.iter().filter(|o| !taken.contains_key(&o.variable)).collect();
    let one: Vec<Limit> = open.iter().filter_map(|o| weigher.limit(&[], o)).collect();
    let two = one.iter().flat_map(|first| {
        let known = |o: &&&OpenVariable| first.facts.iter().all(|(v, _)| *v != o.variable);
        open.iter().filter(known).filter_map(|o| weigher.limit(&first.facts, o)).collect::<Vec<_>>()
    });
    let mut limits: Vec<Limit> = two.collect();
    limits.extend(one);
    limits.retain(|l| l.fidelity > without + 0.01);
    let faithful = |l: &Limit| l.fidelity >= FAITHFUL;
    limits.sort_by(|a, b| {
        let order = faithful(b).cmp(&faithful(a));
        let length = if faithful(a) { a.length.cmp(&b.length) } else { std::cmp::Ordering::Equal };
        let most = b.fidelity.total_cmp(&a.fidelity);
        order.then(length).then(most).then(a.length.cmp(&b.length)).then_with(|| a.facts.cmp(&b.facts))
    });
    limits
}

/// Weighs the cases of a subject in which a line with a condition tells the truth: the condition
/// holds and the thing goes where the line says, or it does not hold and the thing goes elsewhere,
/// for a reader takes a condition as a warning off.
struct Weigher<'a> {
    guide: &'a Guide,
    subject: &'a Subject,
    taken: &'a BTreeMap<u16, usize>,
    main: &'a Outcome,
}

type Weighed = BTreeMap<(Ref, usize, bool), (f64, f64)>;

impl Weigher<'_> {
    /// Limits a line by one more fact, to the values for which it is more often right than wrong.
    fn limit(&self, known: &[(u16, Vec<usize>)], open: &OpenVariable) -> Option<Limit> {
        let mut holds = Vec::new();
        for &(value, _) in &open.weights {
            let value = usize::from(value);
            let mut only = known.to_vec();
            only.push((open.variable, vec![value]));
            only.sort();
            if self.right(&only)? > 0.5 {
                holds.push(value);
            }
        }
        if holds.is_empty() || holds.len() == open.weights.len() {
            return None;
        }
        let length = known.iter().map(|(_, v)| v.len() + 2).sum::<usize>() + holds.len();
        let mut facts = known.to_vec();
        facts.push((open.variable, holds));
        facts.sort();
        let (hit, possible) = self.weigh(self.subject.root, &facts, 0, true, &mut Weighed::new());
        (possible > 0.0).then(|| Limit { facts, fidelity: hit / possible, length })
    }

    /// The share of the cases that satisfy a condition in which the line is right; 0 when no case
    /// satisfies it.
    fn right(&self, facts: &[(u16, Vec<usize>)]) -> Option<f64> {
        let inside = |taken: &BTreeMap<u16, usize>| {
            let mut memo = Weighed::new();
            Weigher { taken, ..*self }.weigh(self.subject.root, &[], 0, true, &mut memo)
        };
        // Every combination of the values named: few, since few are printed.
        let mut sum = (0.0, 0.0);
        let mut combinations: Vec<(BTreeMap<u16, usize>, f64)> = vec![(self.taken.clone(), 1.0)];
        for (variable, values) in facts {
            let open = self.subject.open.iter().find(|o| o.variable == *variable)?;
            combinations = combinations
                .into_iter()
                .flat_map(|(taken, weight)| {
                    values.iter().map(move |&value| {
                        let mut taken = taken.clone();
                        taken.insert(*variable, value);
                        (taken, weight * share_of(open, value))
                    })
                })
                .collect();
        }
        for (taken, weight) in combinations {
            let (hit, possible) = inside(&taken);
            sum = (sum.0 + hit * weight, sum.1 + possible * weight);
        }
        Some(if sum.1 > 0.0 { sum.0 / sum.1 } else { 0.0 })
    }

    /// How much of the cases below a node is told truly, and how much is possible at all. `next` is
    /// the first fact of the condition not looked at yet; `on` tells whether those before it hold.
    fn weigh(
        &self,
        at: Ref,
        facts: &[(u16, Vec<usize>)],
        next: usize,
        on: bool,
        memo: &mut Weighed,
    ) -> (f64, f64) {
        if at == IMPOSSIBLE {
            return (0.0, 0.0);
        }
        if let Some(&known) = memo.get(&(at, next, on)) {
            return known;
        }
        let node = self.guide.node(at);
        let fact = facts.get(next);
        let weighed = match (fact, node) {
            // The condition's fact comes before what is tested here: both ways of it.
            (Some((variable, values)), node) if node.is_none_or(|n| *variable < n.variable) => {
                let open = self.subject.open.iter().find(|o| o.variable == *variable);
                let inside: f64 = open.map_or(0.0, |o| values.iter().map(|&v| share_of(o, v)).sum());
                let yes = self.weigh(at, facts, next + 1, on, memo);
                let no = self.weigh(at, facts, next + 1, false, memo);
                (yes.0 * inside + no.0 * (1.0 - inside), yes.1 * inside + no.1 * (1.0 - inside))
            }
            (_, None) => {
                let outcome = as_terminal(at).and_then(|t| self.guide.outcomes.get(t));
                let right = outcome.is_some_and(|o| o.same_place(self.main));
                (f64::from(u8::from(right == on)), 1.0)
            }
            (_, Some(node)) => {
                let here = fact.filter(|(variable, _)| *variable == node.variable);
                let next = if here.is_some() { next + 1 } else { next };
                let below = |value: usize| {
                    let on = on && here.is_none_or(|(_, values)| values.contains(&value));
                    (child(node, value), on)
                };
                if let Some(&value) = self.taken.get(&node.variable) {
                    let (at, on) = below(value);
                    self.weigh(at, facts, next, on, memo)
                } else {
                    let mut sum = (0.0, 0.0);
                    for (value, share) in shares(self.subject, node.variable, node.children.len()) {
                        let (at, on) = below(value);
                        let (hit, possible) = self.weigh(at, facts, next, on, memo);
                        sum = (sum.0 + hit * share, sum.1 + possible * share);
                    }
                    sum
                }
            }
        };
        memo.insert((at, next, on), weighed);
        weighed
    }
}

/// The share of the cases in which an open fact has a value.
fn share_of(open: &OpenVariable, value: usize) -> f64 {
    let total: u32 = open.weights.iter().map(|(_, w)| *w).sum();
    let weight = open.weights.iter().find(|(v, _)| usize::from(*v) == value).map_or(0, |(_, w)| *w);
    f64::from(weight) / f64::from(total.max(1))
}

/// Lines that contradict one another in the words they are printed in: one tells of a thing in
/// words that also name another line's thing ("Cup" beside "Foam cup"), and sends it elsewhere.
///
/// Takes each line with the words it is printed in, folded (see [`crate::fold`]); gives pairs of
/// positions, the more general line first.
#[must_use]
pub fn contradictions(lines: &[(&Line, String)]) -> Vec<(usize, usize)> {
    let words: Vec<Vec<&str>> = lines.iter().map(|(_, folded)| folded.split(' ').collect()).collect();
    let mut found = Vec::new();
    for (general, (line, folded)) in lines.iter().enumerate() {
        let Some(own) = words.get(general).filter(|_| !folded.is_empty()) else { continue };
        for (special, (other, other_folded)) in lines.iter().enumerate() {
            let Some(others) = words.get(special) else { continue };
            let named = general != special
                && own.iter().all(|w| others.contains(w))
                && (folded != other_folded || general < special);
            let same_place =
                line.verdict == other.verdict && line.channel == other.channel && line.stream == other.stream;
            if named && !same_place {
                found.push((general, special));
            }
        }
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    fn line(item: &str, verdict: Answered) -> Line {
        Line {
            item: item.to_owned(),
            verdict,
            channel: None,
            stream: None,
            hazard: None,
            qualifiers: Vec::new(),
            steps: Vec::new(),
            fidelity: 1.0,
        }
    }

    #[test]
    fn a_line_that_names_another_lines_thing_contradicts_it() {
        let (cup, foam, can) =
            (line("cup", Answered::Yes), line("foam-cup", Answered::No), line("can", Answered::Yes));
        let lines = [(&cup, "cup".to_owned()), (&foam, "foam cup".to_owned()), (&can, "can".to_owned())];
        assert_eq!(contradictions(&lines), [(0, 1)]);
        let other = line("foam-cup", Answered::Yes);
        assert_eq!(contradictions(&[(&cup, "cup".to_owned()), (&other, "foam cup".to_owned())]), []);
        let twin = line("glass", Answered::No);
        assert_eq!(contradictions(&[(&cup, "glass".to_owned()), (&twin, "glass".to_owned())]), [(0, 1)]);
    }
}
