//! A guide's parts in the words of one language: the program's own texts first, then messages.

use guide_data::{
    Aside, Dimension, Ends, Guide, LanguagePack, Measure, Outcome, ValueLabel, day_of, dimension_of,
};

use crate::format::DateStyle;
use crate::measure::{Quantity, Rounding};
use crate::messages::Messages;
use crate::{args, t};

/// The words of one language for one guide.
#[derive(Debug, Clone, Copy)]
pub struct Words<'w> {
    /// The messages of the language.
    pub messages: &'w Messages,
    /// The program's texts and the items' names in it.
    pub pack: &'w LanguagePack,
}

impl Words<'_> {
    /// The message of a key that depends on an id; the key itself where there is none.
    #[must_use]
    pub fn say(&self, key: &str) -> String {
        self.messages.t(key, &args!())
    }

    /// A message that may not exist.
    #[must_use]
    pub fn maybe(&self, key: &str) -> Option<String> {
        self.messages.find(key, &args!()).map(|found| found.text)
    }

    /// A text of the program, when somebody wrote it.
    #[must_use]
    pub fn text(&self, key: &str) -> Option<&str> {
        self.pack.texts.get(key).map(|text| text.trim()).filter(|text| !text.is_empty())
    }

    /// The name of a stream, channel, zone or site: what the program calls it, else its id.
    #[must_use]
    pub fn named(&self, kind: &str, id: &str) -> String {
        self.text(&format!("{kind}.{id}")).unwrap_or(id).to_owned()
    }

    /// An item's name.
    #[must_use]
    pub fn item(&self, id: &str) -> String {
        self.pack.names.get(id).and_then(|names| names.first()).cloned().unwrap_or_else(|| id.to_owned())
    }

    /// An item, or a part of it: "Jar: the lid".
    #[must_use]
    pub fn subject(&self, item: &str, part: Option<&str>) -> String {
        let item = self.item(item);
        match part {
            None => item,
            Some(part) => {
                t!(self.messages, "item-part", item = item, part = self.say(&format!("part-{part}")))
            }
        }
    }

    /// A preparation step: the program's own, else the standard one.
    #[must_use]
    pub fn step(&self, id: &str) -> String {
        self.text(&format!("step.{id}")).map_or_else(|| self.say(&format!("prep-{id}")), str::to_owned)
    }

    /// Why: the deciding rule's own words, else the standard reason.
    #[must_use]
    pub fn reason(&self, outcome: &Outcome) -> Option<String> {
        let own = outcome.rules.first().and_then(|rule| self.text(&format!("rule.{rule}")));
        own.map(str::to_owned)
            .or_else(|| outcome.reason.as_ref().and_then(|reason| self.maybe(&format!("reason-{reason}"))))
    }

    /// A value of a fact.
    #[must_use]
    pub fn value(&self, fact: &str, label: &ValueLabel) -> String {
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

    /// A stated measure, or day, as the language's readers write it.
    #[must_use]
    pub fn measure(&self, fact: &str, stated: &str) -> String {
        let Some(dimension) = dimension_of(fact) else {
            // A day of any year is read within a leap year, which has them all.
            let style = if fact == "time-of-year" { DateStyle::DayMonth } else { DateStyle::Long };
            let words =
                if fact == "time-of-year" { format!("2024-{}", stated.trim()) } else { stated.to_owned() };
            return day_of(words.trim())
                .map_or_else(|| stated.to_owned(), |day| self.messages.date(day, style));
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
    #[must_use]
    pub fn container_rule(&self, container: &str, kind: &str, limit: Option<&str>) -> String {
        if let Some(own) = self.text(&format!("container.{container}.{kind}")) {
            return own.to_owned();
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
    #[must_use]
    pub fn banned(&self, outcome: &Outcome) -> Vec<String> {
        let name = |stream: &String| self.named("stream", stream);
        outcome.banned.iter().map(|s| t!(self.messages, "answer-banned", place = name(s))).collect()
    }

    /// A fact with a value: "Resin mark: 5".
    #[must_use]
    pub fn fact_value(&self, fact: &str, label: &ValueLabel) -> String {
        let (name, value) = (self.say(&format!("fact-{fact}")), self.value(fact, label));
        t!(self.messages, "fact-value", fact = name, value = value)
    }

    /// Where an outcome sends a thing in a zone and at a dwelling type, as far as they are known: the
    /// container by its name when there is one alone, else the stream; else the channel.
    #[must_use]
    pub fn destination_at(
        &self,
        guide: &Guide,
        outcome: &Outcome,
        zone: Option<&str>,
        dwelling: Option<&str>,
    ) -> Option<String> {
        let own = |id: &str| self.text(&format!("container.{id}")).map(str::to_owned);
        let names = outcome.stream.as_ref().map(|id| guide.container_names(id, zone, dwelling, own));
        match names.as_deref() {
            Some([only]) => Some(only.clone()),
            _ => self.destination(outcome),
        }
    }

    /// Where an outcome sends a thing; `None` when nowhere in particular.
    #[must_use]
    pub fn destination(&self, outcome: &Outcome) -> Option<String> {
        let stream = outcome.stream.as_ref().map(|id| self.named("stream", id));
        stream.or_else(|| outcome.channel.as_ref().map(|id| self.named("channel", id)))
    }
}
