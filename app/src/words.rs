//! Everything a screen says, in one language: messages, the program's own texts, item names, and
//! the search index over those names.

use std::collections::BTreeMap;
use std::sync::{Arc, RwLock};

use guide_data::{
    Aside, Dimension, Ends, Guide, LanguagePack, Measure, Outcome, PackedWords, SearchIndex, ValueLabel,
    day_of, dimension_of,
};
use locales::{DateStyle, Lang, Messages, Quantity, Rounding, args, t};

use crate::browser;

/// The words of one language for one guide.
#[derive(Clone)]
pub(crate) struct Words {
    /// The messages; [`locales::t!`] takes them.
    pub(crate) messages: Arc<Messages>,
    /// The program's texts and the items' names.
    pub(crate) pack: Arc<LanguagePack>,
    /// Finds items by what people type; by more words once they are learned.
    index: Arc<RwLock<Arc<SearchIndex>>>,
    /// The items the index was made for, so that a draft's edits make it anew only when needed.
    indexed: Arc<Vec<String>>,
}

/// The longest search taken: nobody types more, and a pasted page must not hold the phone up.
const LONGEST_QUERY: usize = 80;
/// The most results shown; a longer list is not read standing at a cart.
const MOST_RESULTS: usize = 10;

impl Words {
    /// Words whose messages are still to be read.
    #[cfg(feature = "desk")]
    pub(crate) fn new(pack: LanguagePack, guide: &Guide) -> Self {
        let sources: Vec<&str> = pack.messages.iter().map(String::as_str).collect();
        let (messages, _) = Messages::from_ftl(reader(&pack, guide), &sources);
        Self::over_messages(messages, pack, guide)
    }

    /// Words as phones are sent them; `None` when the messages are damaged.
    pub(crate) fn read(packed: PackedWords, guide: &Guide) -> Option<Self> {
        let PackedWords { pack, messages } = packed;
        let messages = Messages::from_packed(reader(&pack, guide), &messages)?;
        Some(Self::over_messages(messages, pack, guide))
    }

    fn over_messages(messages: Messages, pack: LanguagePack, guide: &Guide) -> Self {
        let (index, indexed) = index(&pack, guide);
        Self { messages: Arc::new(messages), pack: Arc::new(pack), index, indexed }
    }

    /// The same messages over a draft's own texts and item names.
    #[cfg(feature = "desk")]
    pub(crate) fn over(
        &self,
        texts: BTreeMap<String, String>,
        names: BTreeMap<String, Vec<String>>,
        guide: &Guide,
    ) -> Self {
        let mut pack = (*self.pack).clone();
        pack.texts = texts;
        let mut renamed = false;
        for (item, own) in names {
            if pack.names.get(&item) != Some(&own) {
                pack.names.insert(item, own);
                renamed = true;
            }
        }
        let same = guide.items.iter().map(|i| &i.id).eq(self.indexed.iter());
        let (index, indexed) =
            if renamed || !same { index(&pack, guide) } else { (self.index.clone(), self.indexed.clone()) };
        Self { messages: self.messages.clone(), pack: Arc::new(pack), index, indexed }
    }

    /// Learns other words for items, by which they are found from now on.
    pub(crate) fn learn(&self, others: &BTreeMap<String, Vec<String>>, guide: &Guide) {
        let mut pack = (*self.pack).clone();
        for (item, names) in &mut pack.names {
            names.extend(others.get(item).into_iter().flatten().cloned());
        }
        let learned = search_index(&pack, guide);
        if let Ok(mut index) = self.index.write() {
            *index = Arc::new(learned);
        }
    }

    /// The same words for what the app shares with the command line.
    #[cfg(feature = "desk")]
    pub(crate) fn shared(&self) -> lidleaf::Words<'_> {
        lidleaf::Words { messages: &self.messages, pack: &self.pack }
    }

    /// Whether both say the same.
    #[cfg(feature = "desk")]
    pub(crate) fn same(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.messages, &other.messages)
            && self.indexed == other.indexed
            && self.pack == other.pack
    }

    /// The language's tag.
    pub(crate) fn language(&self) -> &str {
        &self.pack.language
    }

    /// "ltr" or "rtl".
    pub(crate) fn direction(&self) -> &str {
        if self.pack.direction == "rtl" { "rtl" } else { "ltr" }
    }

    /// Nobody has signed this language off.
    pub(crate) fn unreviewed(&self) -> bool {
        self.pack.unreviewed
    }

    /// A message whose key depends on an id.
    pub(crate) fn say(&self, key: &str) -> String {
        t!(self.messages, key)
    }

    /// A message that may not exist.
    pub(crate) fn maybe(&self, key: &str) -> Option<String> {
        self.messages.find(key, &locales::args!()).map(|found| found.text)
    }

    /// A text of the program, when somebody wrote it.
    pub(crate) fn text(&self, key: &str) -> Option<String> {
        self.pack.texts.get(key).filter(|t| !t.trim().is_empty()).cloned()
    }

    /// The name of something of the program's: its text, or its id when nobody named it.
    pub(crate) fn named(&self, kind: &str, id: &str) -> String {
        self.text(&format!("{kind}.{id}")).unwrap_or_else(|| id.to_owned())
    }

    /// An item's name.
    pub(crate) fn item(&self, id: &str) -> String {
        self.pack.names.get(id).and_then(|n| n.first()).cloned().unwrap_or_else(|| id.to_owned())
    }

    /// A preparation step: the program's own, else the standard one.
    pub(crate) fn step(&self, id: &str) -> String {
        self.text(&format!("step.{id}")).unwrap_or_else(|| self.say(&format!("prep-{id}")))
    }

    /// Why: the deciding rule's own words, else the standard reason.
    pub(crate) fn reason(&self, outcome: &Outcome) -> Option<String> {
        outcome
            .rules
            .first()
            .and_then(|rule| self.text(&format!("rule.{rule}")))
            .or_else(|| outcome.reason.as_ref().and_then(|reason| self.maybe(&format!("reason-{reason}"))))
    }

    /// A value of a fact in words.
    pub(crate) fn value(&self, fact: &str, label: &ValueLabel) -> String {
        match label {
            ValueLabel::Value(value) => match fact {
                "zone" => self.named("zone", value),
                "item" => self.item(value),
                "category" => self.say(&format!("category-{value}")),
                _ => self.say(&format!("value-{fact}-{value}")),
            },
            ValueLabel::Range(Ends {
                at_least,
                over,
                at_most,
                under,
                low: beside_low,
                high: beside_high,
            }) => {
                let stated = |bound: &Option<String>, aside: &Aside| {
                    bound.as_ref().map(|words| self.with_aside(self.measure(fact, words), aside))
                };
                let low = stated(at_least, beside_low).or_else(|| stated(over, beside_low));
                let high = stated(at_most, beside_high).or_else(|| stated(under, beside_high));
                match (low, high) {
                    (Some(low), Some(high)) => t!(self.messages, "range-between", low = low, high = high),
                    (Some(low), None) if at_least.is_some() => {
                        t!(self.messages, "range-at-least", value = low)
                    }
                    (Some(low), None) => t!(self.messages, "range-over", value = low),
                    (None, Some(high)) if at_most.is_some() => {
                        t!(self.messages, "range-at-most", value = high)
                    }
                    (None, Some(high)) => t!(self.messages, "range-under", value = high),
                    (None, None) => t!(self.messages, "range-any"),
                }
            }
        }
    }

    /// A limit with what is said beside it: "2 inches (about a golf ball)", "4 a visit".
    fn with_aside(&self, measure: String, aside: &Aside) -> String {
        let mut words = measure;
        if let Some(per) = &aside.per {
            words =
                t!(self.messages, "measure-per", measure = words, period = self.say(&format!("per-{per}")));
        }
        if let Some(like) = &aside.like {
            words =
                t!(self.messages, "measure-like", measure = words, thing = self.say(&format!("like-{like}")));
        }
        words
    }

    /// A stated measure, or day, as this language's readers write it.
    pub(crate) fn measure(&self, fact: &str, stated: &str) -> String {
        let Some(dimension) = dimension_of(fact) else {
            // A day of any year is read within a leap year, which has them all.
            let style = if fact == "time-of-year" { DateStyle::DayMonth } else { DateStyle::Long };
            let words =
                if fact == "time-of-year" { format!("2024-{}", stated.trim()) } else { stated.to_owned() };
            return day_of(&words).map_or_else(|| stated.to_owned(), |day| self.messages.date(day, style));
        };
        let Ok(measure) = Measure::parse(stated, dimension) else { return stated.to_owned() };
        let quantity = match dimension {
            Dimension::Length => Quantity::micrometres(measure.value),
            Dimension::Volume => Quantity::nanolitres(measure.value),
            Dimension::Mass => Quantity::micrograms(measure.value),
            Dimension::Count => Quantity::thousandths(measure.value),
        };
        self.messages.measure(quantity, Rounding::Everyday)
    }

    /// A rule about a container: the program's own words, else a standard sentence with its limit.
    pub(crate) fn container_rule(&self, container: &str, kind: &str, limit: Option<&str>) -> String {
        if let Some(own) = self.text(&format!("container.{container}.{kind}")) {
            return own;
        }
        let limit = limit.unwrap_or_default();
        let limit = match kind {
            "weight" => self.measure("mass", limit),
            "distance" => self.measure("longest-side", limit),
            _ => limit.to_owned(),
        };
        let said = self.messages.find(&format!("container-rule-{kind}"), &args!(limit = limit.as_str()));
        said.map(|found| found.text).unwrap_or_default()
    }

    /// Where the law does not let a thing go.
    pub(crate) fn banned(&self, outcome: &Outcome) -> Vec<String> {
        let name = |stream: &String| self.named("stream", stream);
        outcome.banned.iter().map(|s| t!(self.messages, "answer-banned", place = name(s))).collect()
    }

    /// The items that best match what somebody typed, as positions in the guide.
    pub(crate) fn find(&self, typed: &str) -> Vec<usize> {
        let typed: String = typed.chars().take(LONGEST_QUERY).collect();
        // A lock is poisoned only by a panic, after which the page starts anew.
        let Ok(index) = self.index.read().map(|index| index.clone()) else { return Vec::new() };
        index.find(&browser::fold(&typed), MOST_RESULTS).into_iter().map(|hit| hit.item).collect()
    }
}

/// The language of a pack's readers. A region decides clock, units and number symbols. A guide is of one
/// place, so the region of its source language, when it states one, is the readers' region in every
/// language.
fn reader(pack: &LanguagePack, guide: &Guide) -> Lang {
    let lang: Lang = pack.language.parse().unwrap_or_default();
    let place: Lang = guide.source_language.parse().unwrap_or_default();
    let region = lang.region().or(place.region()).unwrap_or("US").to_owned();
    lang.with_region(&region)
}

type Index = (Arc<RwLock<Arc<SearchIndex>>>, Arc<Vec<String>>);

fn index(pack: &LanguagePack, guide: &Guide) -> Index {
    let ids = guide.items.iter().map(|i| i.id.clone()).collect();
    (Arc::new(RwLock::new(Arc::new(search_index(pack, guide)))), Arc::new(ids))
}

fn search_index(pack: &LanguagePack, guide: &Guide) -> SearchIndex {
    let names = guide.items.iter().enumerate().flat_map(|(at, item)| {
        let names = pack.names.get(&item.id).map(Vec::as_slice).unwrap_or_default();
        names.iter().enumerate().map(move |(n, name)| (at, browser::fold(name), n == 0, item.common))
    });
    SearchIndex::build(names)
}
