//! Comparing programs: exactly which items change, how, and under which answers.

use std::collections::BTreeMap;

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

use crate::ask::ValueLabel;
use crate::catalog::{Catalog, Item};
use crate::compile::compile_over;
use crate::domain::{Variable, day_number, variables};
use crate::facts::fact_index;
use crate::guide::{Answered, Guide, GuideItem, Outcome, Subject};
use crate::program::{Edition, Program};
use crate::words::each_text;

mod notice;
pub(crate) mod product;
pub(crate) mod region;
mod regional;

pub use notice::{Notice, NoticeGroup, NoticeKind, notice};
pub use region::{FactIs, When};
pub use regional::{
    Agreed, Contradiction, Differing, Group, Member, PlaceKind, Regional, Told, compare_many,
};

use product::{Path, Product, Side};
use region::Region;

/// Facts that residents are never asked for.
const NEVER_ASKED: &[&str] = &["day", "time-of-year", "origin", "proof"];

/// What of an answer differs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Aspect {
    /// One of the programs does not know the item, or the part.
    Known,
    /// The verdict.
    Verdict,
    /// The stream or channel.
    Destination,
    /// The other channels that also take it.
    Also,
    /// The streams that the law bans it from.
    Banned,
    /// The preparation steps, or their order.
    Preparation,
    /// The reason that is read: another rule's own words, another standard reason, none, or that a closed
    /// list does not name it. The words of the same rule, rewritten, are [`Comparison::reworded`].
    Reason,
    /// The hazard class that is warned of.
    Caution,
    /// Whether a temporary order decides.
    Temporary,
}

/// A difference between what two programs answer. Every case of an item that is answered
/// differently belongs to exactly one change of that item.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Change {
    /// The item's id.
    pub item: String,
    /// The part's id.
    #[serde(skip_serializing_if = "Option::is_none", default)]
    pub part: Option<String>,
    /// What the first program says; `None` when it does not know the item.
    pub before: Option<Outcome>,
    /// What the second says.
    pub after: Option<Outcome>,
    /// What of the answer differs.
    pub differs: Vec<Aspect>,
    /// Steps that the second has and the first has not.
    #[serde(skip_serializing_if = "Vec::is_empty", default)]
    pub steps_added: Vec<String>,
    /// Steps that the first has and the second has not.
    #[serde(skip_serializing_if = "Vec::is_empty", default)]
    pub steps_removed: Vec<String>,
    /// Exactly when it changes so, days included.
    pub when: When,
    /// The likeliest answers under which it changes so.
    pub answers: Vec<(String, ValueLabel)>,
    /// The share of the item's cases that change so, weighted by how likely they are: 0 to 1.
    pub share: f64,
    /// How common the item is, 1 to 100.
    pub common: u32,
}

/// An item that residents are asked other questions about.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Asked {
    /// The item's id.
    pub item: String,
    /// Facts that did not matter before and now do.
    pub now: Vec<String>,
    /// Facts that mattered before and no longer do.
    pub no_longer: Vec<String>,
    /// How common the item is, 1 to 100.
    pub common: u32,
}

/// A text that residents read and that says the same thing in other words, or another thing: a fee
/// or a step keeps its id when its words are rewritten.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Reworded {
    /// The text's key, as in [`crate::each_text`].
    pub key: String,
    /// Its words in the first program.
    pub before: String,
    /// Its words in the second, in the same language.
    pub after: String,
    /// For the words of a rule: the items whose answers give them as the reason under the second program,
    /// the most common first.
    #[serde(skip_serializing_if = "Vec::is_empty", default)]
    pub items: Vec<String>,
}

/// Two programs compared.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Comparison {
    /// The first program's edition.
    pub before: Edition,
    /// The second's.
    pub after: Edition,
    /// The day both were looked at, when one was named.
    #[serde(skip_serializing_if = "Option::is_none", default)]
    pub on: Option<NaiveDate>,
    /// Every change, in catalog order.
    pub changes: Vec<Change>,
    /// Every item that residents are asked other questions about, in catalog order.
    pub asked: Vec<Asked>,
    /// Texts that both programs have, in other words, in the order of [`crate::each_text`]. In the
    /// second program's source language: a translation that was mended changes nothing.
    #[serde(skip_serializing_if = "Vec::is_empty", default)]
    pub reworded: Vec<Reworded>,
}

/// Every change from one program to another, in catalog order; one entry for each pair of
/// different answers an item gets. What decides (rule ids) may differ without being a change, as long
/// as the reason that is read stays the same.
#[must_use]
pub fn compare(before: &Program, after: &Program, catalog: &Catalog) -> Vec<Change> {
    comparison(before, after, catalog, None).changes
}

/// Compares two programs, on all days or as they stand on one.
///
/// A case is an item with all its answers. Where both programs have service zones, cases are those
/// of the zones that both have. Two places without a common zone are compared zone by zone: then
/// there is a change for each pair of different answers that some zone of the one and some zone of
/// the other give.
#[must_use]
pub fn comparison(before: &Program, after: &Program, catalog: &Catalog, on: Option<NaiveDate>) -> Comparison {
    let together = Together::new(&[before, after], catalog, on);
    let mut made = Comparison {
        before: before.edition.clone(),
        after: after.edition.clone(),
        on,
        changes: Vec::new(),
        asked: Vec::new(),
        reworded: together.reworded(before, after),
    };
    for item in together.items() {
        let sides = together.of_item(&item.id);
        for part in parts(&sides) {
            let subjects: Vec<Option<&Subject>> = sides.iter().map(|s| subject(*s, part)).collect();
            if let [first, second] = subjects.as_slice() {
                together.pair(item, part, *first, *second, &mut made.changes);
            }
        }
        if let [Some(first), Some(second)] = sides.as_slice() {
            let (was, is) = (together.asked(first), together.asked(second));
            let only = |of: &[String], not: &[String]| -> Vec<String> {
                of.iter().filter(|f| !not.contains(f)).cloned().collect()
            };
            if was != is {
                made.asked.push(Asked {
                    item: item.id.clone(),
                    now: only(&is, &was),
                    no_longer: only(&was, &is),
                    common: item.common,
                });
            }
        }
    }
    made
}

/// What no resident reads.
const NOT_FOR_RESIDENTS: &[&str] = &["machine", "plant"];

fn reworded(before: &Program, after: &Program) -> Vec<Reworded> {
    let language = &after.source_language;
    let mut old: BTreeMap<String, String> = BTreeMap::new();
    each_text(before, &mut |key, text| {
        old.extend(text.get(language).map(|words| (key.to_owned(), words.trim().to_owned())));
    });
    let mut found = Vec::new();
    each_text(after, &mut |key, text| {
        if NOT_FOR_RESIDENTS.contains(&key.split('.').next().unwrap_or_default()) {
            return;
        }
        if let (Some(was), Some(is)) = (old.remove(key), text.get(language))
            && was != is.trim()
        {
            let (key, after) = (key.to_owned(), is.trim().to_owned());
            found.push(Reworded { key, before: was, after, items: Vec::new() });
        }
    });
    found
}

/// The words of each rule that an answer gives as its reason, by the rule's id.
type OwnWords = BTreeMap<String, String>;

/// For each program the words of its rules. A rule that a later program has as well, with words of its
/// own, stands there with the later words: that it was rewritten is told once, not with every answer.
fn own_words(programs: &[&Program]) -> Vec<OwnWords> {
    let words = |program: &Program| -> OwnWords {
        let text = |rule: &crate::program::Rule| {
            let words = rule.texts.residents.or_source(&program.source_language, &program.source_language)?;
            Some((rule.id.clone(), words.trim().to_owned()))
        };
        program.rules.iter().filter_map(text).collect()
    };
    let mut all: Vec<OwnWords> = programs.iter().map(|p| words(p)).collect();
    if let [before, after] = all.as_mut_slice() {
        for (rule, words) in before {
            if let Some(later) = after.get(rule) {
                words.clone_from(later);
            }
        }
    }
    all
}

/// The parts of an item that any side knows, the item itself first.
fn parts<'a>(sides: &[Option<&'a GuideItem>]) -> Vec<Option<&'a str>> {
    let mut parts: Vec<Option<&str>> = Vec::new();
    for subject in sides.iter().flatten().flat_map(|i| &i.subjects) {
        if !parts.contains(&subject.part.as_deref()) {
            parts.push(subject.part.as_deref());
        }
    }
    parts
}

fn subject<'a>(item: Option<&'a GuideItem>, part: Option<&str>) -> Option<&'a Subject> {
    item?.subjects.iter().find(|s| s.part.as_deref() == part)
}

/// Several programs compiled over the same variables, so that their diagrams can be walked
/// together.
struct Together {
    everything: Catalog,
    guides: Vec<Guide>,
    /// For each guide, an item's position by its id.
    positions: Vec<BTreeMap<String, usize>>,
    /// For each guide, the words of its rules.
    words: Vec<OwnWords>,
    /// For each guide, the outcome that stands for those that are told alike.
    standing: Vec<Vec<usize>>,
    fixed: BTreeMap<u16, usize>,
    narrowed: BTreeMap<u16, Vec<usize>>,
    /// For each guide, the values of its own zones, when the guides have no zones in common.
    own_zones: Option<(u16, Vec<Vec<usize>>)>,
}

impl Together {
    fn new(programs: &[&Program], catalog: &Catalog, on: Option<NaiveDate>) -> Self {
        let everything = programs.iter().fold(catalog.clone(), |all, p| all.with(&p.items));
        let shared = variables(programs, &everything);
        let guides: Vec<Guide> =
            programs.iter().map(|p| compile_over(p, &catalog.with(&p.items), shared.clone()).guide).collect();
        let positions = guides
            .iter()
            .map(|g| g.items.iter().enumerate().map(|(at, i)| (i.id.clone(), at)).collect())
            .collect();
        let words = own_words(programs);
        let standing = guides.iter().zip(&words).map(|(g, words)| standing(&g.outcomes, words)).collect();
        let mut fixed = BTreeMap::new();
        if let (Some(day), Some(at)) = (on, fact_index("day"))
            && let (Some(variable), Ok(number)) = (shared.get(at), u16::try_from(at))
        {
            fixed.insert(number, variable.interval_of(day_number(day)));
        }
        let (narrowed, own_zones) = zones(programs, &shared);
        Self { everything, guides, positions, words, standing, fixed, narrowed, own_zones }
    }

    fn items(&self) -> &[Item] {
        &self.everything.items
    }

    fn variables(&self) -> &[Variable] {
        self.guides.first().map(|g| g.variables.as_slice()).unwrap_or_default()
    }

    fn of_item(&self, id: &str) -> Vec<Option<&GuideItem>> {
        self.guides
            .iter()
            .zip(&self.positions)
            .map(|(guide, positions)| positions.get(id).and_then(|&at| guide.items.get(at)))
            .collect()
    }

    /// A side of a walk: the program's number and what is asked of it.
    fn side<'a>(&'a self, program: usize, guide: &'a Guide, subject: &'a Subject) -> Side<'a> {
        let own = self.own_zones.as_ref().and_then(|(variable, all)| {
            all.get(program).map(|values| (*variable, values.as_slice())).filter(|(_, v)| !v.is_empty())
        });
        Side { guide, subject, fixed: &self.fixed, own }
    }

    /// Every way two answers about one subject differ.
    fn pair(
        &self,
        item: &Item,
        part: Option<&str>,
        first: Option<&Subject>,
        second: Option<&Subject>,
        changes: &mut Vec<Change>,
    ) {
        let ([a, b], [old_words, new_words]) = (self.guides.as_slice(), self.words.as_slice()) else {
            return;
        };
        let differs = |before: Option<&Outcome>, after: Option<&Outcome>| {
            differs(before.map(|o| read(o, old_words)), after.map(|o| read(o, new_words)))
        };
        let change = |before: Option<&Outcome>, after: Option<&Outcome>| {
            let (added, removed) = steps(before, after);
            Change {
                item: item.id.clone(),
                part: part.map(str::to_owned),
                differs: differs(before, after),
                steps_added: added,
                steps_removed: removed,
                before: before.cloned(),
                after: after.cloned(),
                when: vec![Vec::new()],
                answers: Vec::new(),
                share: 1.0,
                common: item.common,
            }
        };
        let (Some(first), Some(second)) = (first, second) else {
            let one = |guide: &Guide, subject: Option<&Subject>| {
                subject.and_then(|s| guide.reached(s).first().map(|o| (*o).clone()))
            };
            changes.push(change(one(a, first).as_ref(), one(b, second).as_ref()));
            return;
        };
        let sides = [self.side(0, a, first), self.side(1, b, second)];
        let alike = |side: usize, outcome: usize| {
            self.standing.get(side).and_then(|s| s.get(outcome)).copied().unwrap_or(outcome)
        };
        let Ok(product) = Product::new(&sides, &self.narrowed, true, &alike) else {
            // Too much to walk: said as a change that cannot be told exactly.
            let one = |guide: &Guide, subject| guide.reached(subject).first().map(|o| (*o).clone());
            let (was, is) = (one(a, first), one(b, second));
            changes.push(Change { when: Vec::new(), ..change(was.as_ref(), is.as_ref()) });
            return;
        };
        // Without common zones a class may hold several answers of a side.
        let mut pairs: BTreeMap<(usize, usize), Vec<usize>> = BTreeMap::new();
        for (class, said) in product.classes.iter().enumerate() {
            let [befores, afters] = said.as_slice() else { continue };
            for &was in befores {
                for &is in afters {
                    pairs.entry((was, is)).or_default().push(class);
                }
            }
        }
        for ((was, is), classes) in pairs {
            let (before, after) = (a.outcomes.get(was), b.outcomes.get(is));
            if before.is_none() || after.is_none() || differs(before, after).is_empty() {
                continue;
            }
            let wanted = |class: usize| classes.contains(&class);
            let path: Path = product.likeliest(&wanted).unwrap_or_default();
            changes.push(Change {
                when: Region::new(&product, &wanted).told(self.variables()),
                answers: product::told(self.variables(), &path),
                share: product.share(&wanted),
                ..change(before, after)
            });
        }
    }

    /// Texts in other words, those of rules with the items whose answers they explain.
    fn reworded(&self, before: &Program, after: &Program) -> Vec<Reworded> {
        let mut found = reworded(before, after);
        let Some(guide) = self.guides.last() else { return found };
        for text in &mut found {
            let Some(rule) = text.key.strip_prefix("rule.") else { continue };
            let explained = |item: &&GuideItem| {
                let outcomes = item.subjects.iter().flat_map(|s| guide.reached(s));
                outcomes.into_iter().any(|o| o.rules.first().is_some_and(|first| first == rule))
            };
            let mut items: Vec<&GuideItem> = guide.items.iter().filter(explained).collect();
            items.sort_by(|a, b| b.common.cmp(&a.common).then_with(|| a.id.cmp(&b.id)));
            text.items = items.into_iter().map(|item| item.id.clone()).collect();
        }
        found
    }

    /// The facts that residents are asked for about an item, in the order asked first.
    fn asked(&self, item: &GuideItem) -> Vec<String> {
        let mut numbers: Vec<u16> =
            item.subjects.iter().flat_map(|s| &s.open).map(|open| open.variable).collect();
        numbers.sort_unstable();
        numbers.dedup();
        numbers
            .into_iter()
            .filter_map(|n| self.variables().get(usize::from(n)))
            .map(|v| v.fact.clone())
            .filter(|fact| !NEVER_ASKED.contains(&fact.as_str()))
            .collect()
    }
}

/// Which zones are compared: those all programs that have zones have in common, or, when they have
/// none in common, each program's own.
type Zones = (BTreeMap<u16, Vec<usize>>, Option<(u16, Vec<Vec<usize>>)>);

fn zones(programs: &[&Program], variables: &[Variable]) -> Zones {
    let Some(at) = fact_index("zone") else { return (BTreeMap::new(), None) };
    let (Some(variable), Ok(number)) = (variables.get(at), u16::try_from(at)) else {
        return (BTreeMap::new(), None);
    };
    let of = |program: &&Program| -> Vec<usize> {
        program.zones.iter().filter_map(|z| variable.index_of(&z.id)).collect()
    };
    let all: Vec<Vec<usize>> = programs.iter().map(of).collect();
    let zoned = || all.iter().filter(|zones| !zones.is_empty());
    let common: Vec<usize> =
        (0..variable.size()).filter(|z| zoned().all(|zones| zones.contains(z))).collect();
    let same = zoned().all(|zones| zones.len() == common.len());
    if same || (programs.len() == 2 && !common.is_empty()) {
        (BTreeMap::from([(number, common)]), None)
    } else {
        (BTreeMap::new(), Some((number, all)))
    }
}

/// What a resident reads of an answer, and the words that give its reason when the rule has its own: then
/// no standard reason is read, and who decided never is.
fn read<'a>(outcome: &Outcome, words: &'a OwnWords) -> (Outcome, Option<&'a str>) {
    let own = outcome.rules.first().filter(|_| outcome.verdict != Answered::Undecided);
    let own = own.and_then(|rule| words.get(rule)).map(String::as_str);
    let reason = if own.is_some() { None } else { outcome.reason.clone() };
    let read = Outcome { rules: Vec::new(), tier: None, acknowledged: false, reason, ..outcome.clone() };
    (read, own)
}

/// For each outcome the first that is read alike: who decided is of no interest to residents.
fn standing(outcomes: &[Outcome], words: &OwnWords) -> Vec<usize> {
    let mut first: BTreeMap<(Outcome, Option<&str>), usize> = BTreeMap::new();
    outcomes
        .iter()
        .enumerate()
        .map(|(at, outcome)| *first.entry(read(outcome, words)).or_insert(at))
        .collect()
}

/// What of two answers, as they are read, differs, in the order in which people want to know it.
fn differs(before: Option<(Outcome, Option<&str>)>, after: Option<(Outcome, Option<&str>)>) -> Vec<Aspect> {
    let (Some((x, x_words)), Some((y, y_words))) = (&before, &after) else {
        return if before.is_none() && after.is_none() { Vec::new() } else { vec![Aspect::Known] };
    };
    let reasons = x_words != y_words || x.reason != y.reason || x.closed_list != y.closed_list;
    [
        (x.verdict != y.verdict, Aspect::Verdict),
        (x.stream != y.stream || x.channel != y.channel, Aspect::Destination),
        (x.also != y.also, Aspect::Also),
        (x.banned != y.banned, Aspect::Banned),
        (x.steps != y.steps, Aspect::Preparation),
        (reasons, Aspect::Reason),
        (x.hazard != y.hazard, Aspect::Caution),
        (x.temporary != y.temporary, Aspect::Temporary),
    ]
    .into_iter()
    .filter_map(|(differs, aspect)| differs.then_some(aspect))
    .collect()
}

/// Steps added and removed.
fn steps(before: Option<&Outcome>, after: Option<&Outcome>) -> (Vec<String>, Vec<String>) {
    let (Some(x), Some(y)) = (before, after) else { return (Vec::new(), Vec::new()) };
    let only = |of: &Outcome, not: &Outcome| -> Vec<String> {
        of.steps.iter().filter(|s| !not.steps.contains(s)).cloned().collect()
    };
    (only(y, x), only(x, y))
}

impl Change {
    /// True when residents may put it into a container at home to be recovered, before and after.
    #[must_use]
    pub fn accepted(&self) -> (bool, bool) {
        let yes = |o: &Option<Outcome>| o.as_ref().is_some_and(|o| o.verdict == Answered::Yes);
        (yes(&self.before), yes(&self.after))
    }
}
