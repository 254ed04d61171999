//! Several programs at once: what is true in all of them, and for each other item who differs.
//!
//! Places name their streams, channels and containers differently, so what is compared is what a
//! resident meets whatever the names: the verdict, the kind of the destination, the steps and the
//! caution. Each place answers for its own zones.

use std::collections::{BTreeMap, BTreeSet};

use serde::{Deserialize, Serialize};

use super::product::{Path, Product, Side};
use super::region::{Region, When};
use super::{Together, parts, subject};
use crate::ask::ValueLabel;
use crate::catalog::{Catalog, Item};
use crate::guide::{Answered, Guide, Outcome};
use crate::program::{Edition, Program};
use crate::standard::OPPOSITE_STEPS;

/// What residents of a place are told, whatever the place calls its streams and channels.
#[derive(Debug, Clone, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Told {
    /// The verdict.
    pub verdict: Answered,
    /// The destination, by kind.
    #[serde(skip_serializing_if = "Option::is_none", default)]
    pub place: Option<PlaceKind>,
    /// The steps; their order is not compared.
    #[serde(skip_serializing_if = "Vec::is_empty", default)]
    pub steps: Vec<String>,
    /// The hazard class warned of.
    #[serde(skip_serializing_if = "Option::is_none", default)]
    pub hazard: Option<String>,
}

/// A kind of destination.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum PlaceKind {
    /// One of [`crate::standard::STREAM_KINDS`].
    Stream(String),
    /// One of [`crate::standard::CHANNEL_KINDS`].
    Channel(String),
}

/// A statement that is true in all programs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Agreed {
    /// The item's id.
    pub item: String,
    /// The part's id.
    #[serde(skip_serializing_if = "Option::is_none", default)]
    pub part: Option<String>,
    /// What all say.
    pub told: Told,
    /// Exactly when all say so.
    pub when: When,
    /// The share of the item's cases in which all say so: 0 to 1.
    pub share: f64,
    /// How common the item is, 1 to 100.
    pub common: u32,
}

/// Programs that say the same, by their position.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Group {
    /// The programs.
    pub programs: Vec<usize>,
    /// What they say; several when their own zones differ, none when they do not know the item.
    pub told: Vec<Told>,
}

/// Cases of an item in which programs differ.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Differing {
    /// The item's id.
    pub item: String,
    /// The part's id.
    #[serde(skip_serializing_if = "Option::is_none", default)]
    pub part: Option<String>,
    /// Who says what, the largest group first.
    pub groups: Vec<Group>,
    /// Exactly when they differ so.
    pub when: When,
    /// The likeliest answers under which they differ so.
    pub answers: Vec<(String, ValueLabel)>,
    /// The share of the item's cases in which they differ so: 0 to 1.
    pub share: f64,
    /// How common the item is, 1 to 100.
    pub common: u32,
}

/// Steps told in some programs of which others tell the opposite.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Contradiction {
    /// The item's id.
    pub item: String,
    /// The part's id.
    #[serde(skip_serializing_if = "Option::is_none", default)]
    pub part: Option<String>,
    /// The step that some tell.
    pub step: String,
    /// Who tells it, by position.
    pub told_by: Vec<usize>,
    /// The opposite step.
    pub opposite: String,
    /// Who tells that.
    pub opposite_told_by: Vec<usize>,
    /// Exactly when they do.
    pub when: When,
    /// The likeliest answers under which they do.
    pub answers: Vec<(String, ValueLabel)>,
}

/// A program of a regional comparison.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Member {
    /// The program's id.
    pub program: String,
    /// Its edition.
    pub edition: Edition,
}

/// Several programs compared.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub struct Regional {
    /// The programs; the others name them by position.
    pub programs: Vec<Member>,
    /// What is true in all, in catalog order.
    pub agreed: Vec<Agreed>,
    /// Who differs, in catalog order, the likeliest cases of an item first.
    pub differing: Vec<Differing>,
    /// Advice that towns contradict each other on.
    pub contradictory: Vec<Contradiction>,
}

/// Compares programs with one another, on all days. It is made for two to fifty; one alone agrees
/// with itself.
#[must_use]
pub fn compare_many(programs: &[&Program], catalog: &Catalog) -> Regional {
    let together = Together::new(programs, catalog, None);
    let mut regional = Regional {
        programs: programs
            .iter()
            .map(|p| Member { program: p.id.clone(), edition: p.edition.clone() })
            .collect(),
        ..Regional::default()
    };
    let mut dictionary = Dictionary::default();
    let numbers: Vec<Vec<usize>> = together
        .guides
        .iter()
        .map(|guide| guide.outcomes.iter().map(|o| dictionary.number(told(guide, o))).collect())
        .collect();
    for item in together.items() {
        let sides = together.of_item(&item.id);
        for part in parts(&sides) {
            let known: Vec<(usize, Side<'_>)> = sides
                .iter()
                .enumerate()
                .filter_map(|(at, side)| {
                    let guide = together.guides.get(at)?;
                    Some((at, together.side(at, guide, subject(*side, part)?)))
                })
                .collect();
            let look = Look { together: &together, dictionary: &dictionary, numbers: &numbers, item, part };
            look.at(&known, &mut regional);
        }
    }
    regional
}

/// Everything any program tells, each once.
#[derive(Default)]
struct Dictionary {
    numbers: BTreeMap<Told, usize>,
    all: Vec<Told>,
}

impl Dictionary {
    fn number(&mut self, told: Told) -> usize {
        let mut key = told.clone();
        key.steps.sort();
        let fresh = self.all.len();
        let number = *self.numbers.entry(key).or_insert(fresh);
        if number == fresh {
            self.all.push(told);
        }
        number
    }
}

fn told(guide: &Guide, outcome: &Outcome) -> Told {
    let stream = outcome.stream.as_ref().map(|id| {
        let kind = guide.streams.iter().find(|s| s.id == *id).map(|s| s.kind.clone());
        PlaceKind::Stream(kind.unwrap_or_else(|| id.clone()))
    });
    let channel = outcome.channel.as_ref().map(|id| {
        let kind = guide.channels.iter().find(|c| c.id == *id).map(|c| c.kind.clone());
        PlaceKind::Channel(kind.unwrap_or_else(|| id.clone()))
    });
    Told {
        verdict: outcome.verdict,
        place: stream.or(channel),
        steps: outcome.steps.clone(),
        hazard: outcome.hazard.clone(),
    }
}

/// One subject of all programs.
struct Look<'a> {
    together: &'a Together,
    dictionary: &'a Dictionary,
    numbers: &'a [Vec<usize>],
    item: &'a Item,
    part: Option<&'a str>,
}

impl Look<'_> {
    fn at(&self, known: &[(usize, Side<'_>)], regional: &mut Regional) {
        let sides: Vec<Side<'_>> = known.iter().map(|(_, side)| *side).collect();
        let alike = |side: usize, outcome: usize| {
            let numbers = known.get(side).and_then(|(at, _)| self.numbers.get(*at));
            numbers.and_then(|n| n.get(outcome)).copied().unwrap_or(usize::MAX)
        };
        // A subject whose cases are too many to walk is left out of all lists: checking each
        // program has said so.
        let Ok(product) = Product::new(&sides, &self.together.narrowed, false, &alike) else { return };
        let variables = self.together.variables();
        let part = self.part.map(str::to_owned);
        let tell = |numbers: &[usize]| -> Vec<Told> {
            numbers.iter().filter_map(|&n| self.dictionary.all.get(n).cloned()).collect()
        };
        // Classes that group the programs alike are one statement. A program in which a case cannot
        // occur says nothing in it.
        let mut agreed: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
        let mut differing: BTreeMap<BTreeMap<Vec<usize>, Vec<usize>>, Vec<usize>> = BTreeMap::new();
        let mut opposed: BTreeMap<Opposed, Vec<usize>> = BTreeMap::new();
        for (class, said) in product.classes.iter().enumerate() {
            let mut groups: BTreeMap<Vec<usize>, Vec<usize>> = BTreeMap::new();
            for ((at, _), numbers) in known.iter().zip(said).filter(|(_, n)| !n.is_empty()) {
                groups.entry(numbers.clone()).or_default().push(*at);
            }
            let without: Vec<usize> =
                (0..regional.programs.len()).filter(|at| known.iter().all(|(k, _)| k != at)).collect();
            if !without.is_empty() {
                groups.insert(Vec::new(), without);
            }
            for opposed_here in self.opposed(&groups) {
                opposed.entry(opposed_here).or_default().push(class);
            }
            match groups.first_key_value() {
                Some((only, _)) if groups.len() == 1 && only.len() == 1 => {
                    agreed.entry(only.first().copied().unwrap_or_default()).or_default().push(class);
                }
                _ => differing.entry(groups).or_default().push(class),
            }
        }
        for (number, classes) in agreed {
            let Some(told) = self.dictionary.all.get(number).filter(|t| t.verdict != Answered::Undecided)
            else {
                continue;
            };
            let wanted = |class: usize| classes.contains(&class);
            regional.agreed.push(Agreed {
                item: self.item.id.clone(),
                part: part.clone(),
                told: told.clone(),
                when: Region::new(&product, &wanted).told(variables),
                share: product.share(&wanted),
                common: self.item.common,
            });
        }
        let mut found: Vec<Differing> = Vec::new();
        for (groups, classes) in differing {
            let wanted = |class: usize| classes.contains(&class);
            let path: Path = product.likeliest(&wanted).unwrap_or_default();
            let mut groups: Vec<Group> = groups
                .into_iter()
                .map(|(numbers, programs)| Group { programs, told: tell(&numbers) })
                .collect();
            groups.sort_by_key(|g| (std::cmp::Reverse(g.programs.len()), g.programs.clone()));
            found.push(Differing {
                item: self.item.id.clone(),
                part: part.clone(),
                groups,
                when: Region::new(&product, &wanted).told(variables),
                answers: super::product::told(variables, &path),
                share: product.share(&wanted),
                common: self.item.common,
            });
        }
        found.sort_by(|a, b| b.share.total_cmp(&a.share));
        regional.differing.extend(found);
        for (pair, classes) in opposed {
            let wanted = |class: usize| classes.contains(&class);
            let path: Path = product.likeliest(&wanted).unwrap_or_default();
            regional.contradictory.push(Contradiction {
                item: self.item.id.clone(),
                part: part.clone(),
                step: pair.step.to_owned(),
                told_by: pair.told_by,
                opposite: pair.opposite.to_owned(),
                opposite_told_by: pair.opposite_told_by,
                when: Region::new(&product, &wanted).told(variables),
                answers: super::product::told(variables, &path),
            });
        }
    }

    /// Opposite steps that these groups tell.
    fn opposed(&self, groups: &BTreeMap<Vec<usize>, Vec<usize>>) -> Vec<Opposed> {
        let tellers = |step: &str| -> BTreeSet<usize> {
            groups
                .iter()
                .filter(|(numbers, _)| {
                    numbers.iter().any(|&n| {
                        self.dictionary.all.get(n).is_some_and(|t| t.steps.iter().any(|s| s == step))
                    })
                })
                .flat_map(|(_, programs)| programs.iter().copied())
                .collect()
        };
        OPPOSITE_STEPS
            .iter()
            .map(|&(step, opposite)| (step, tellers(step), opposite, tellers(opposite)))
            .filter(|(_, one, _, other)| !one.is_empty() && !other.is_empty() && one != other)
            .map(|(step, one, opposite, other)| Opposed {
                step,
                told_by: one.into_iter().collect(),
                opposite,
                opposite_told_by: other.into_iter().collect(),
            })
            .collect()
    }
}

/// Who tells a step and who its opposite.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
struct Opposed {
    step: &'static str,
    told_by: Vec<usize>,
    opposite: &'static str,
    opposite_told_by: Vec<usize>,
}
