//! The guide: a program compiled with a catalog. Immutable, wordless, and enough for a phone to
//! answer every question.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

use crate::diagram::Node;
use crate::domain::Variable;
use crate::hours::Schedule;
use crate::program::{Edition, Position, Tier};

/// A compiled program.
#[derive(Debug, Clone, Default, Serialize, Deserialize)]
pub struct Guide {
    /// The program's id.
    pub program: String,
    /// Its edition.
    pub edition: Edition,
    /// The language it is written in.
    pub source_language: String,
    /// The languages it is published in.
    pub languages: Vec<String>,
    /// Its public address.
    pub guide_url: String,
    /// Whom to ask.
    pub contact: GuideContact,
    /// Streams and their containers.
    pub streams: Vec<GuideStream>,
    /// Service zones.
    pub zones: Vec<GuideZone>,
    /// Channels.
    pub channels: Vec<GuideChannel>,
    /// Sites.
    pub sites: Vec<GuideSite>,
    /// Items in catalog order.
    pub items: Vec<GuideItem>,
    /// The variables that diagrams test, one for each fact.
    pub variables: Vec<Variable>,
    /// Every outcome that can be reached.
    pub outcomes: Vec<Outcome>,
    /// The diagram's nodes.
    pub(crate) nodes: Vec<Node>,
}

/// Whom a resident asks.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct GuideContact {
    /// Telephone number as dialled.
    pub phone: String,
    /// E-mail address.
    pub email: String,
}

/// A stream, without words.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct GuideStream {
    /// Its id; its name is the text `stream.<id>`.
    pub id: String,
    /// Its kind.
    pub kind: String,
    /// Its containers.
    pub containers: Vec<GuideContainer>,
}

/// A container, without words.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct GuideContainer {
    /// Its id; its name is the text `container.<id>`.
    pub id: String,
    /// Its kind.
    pub kind: String,
    /// Its colour, `#rrggbb`.
    pub colour: String,
    /// Its capacity as stated.
    pub capacity: Option<String>,
    /// The zones it is used in; empty means all.
    pub zones: Vec<String>,
    /// The dwelling types it is used at; empty means all.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub dwellings: Vec<String>,
    /// Its own rules, in order: kind and limit as stated; the text is `container.<id>.<kind>`.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub rules: Vec<(String, Option<String>)>,
}

/// A zone, without words.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub struct GuideZone {
    /// Its id; its name is the text `zone.<id>`.
    pub id: String,
    /// Its dwelling type, when it has one.
    pub dwelling: Option<String>,
    /// Streams collected here; empty means all.
    pub streams: Vec<String>,
    /// A position in its middle.
    pub centre: Option<Position>,
}

/// A channel, without words.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct GuideChannel {
    /// Its id; its name is the text `channel.<id>`.
    pub id: String,
    /// Its kind.
    pub kind: String,
    /// Booking is needed.
    pub booking: bool,
    /// Proof of residency is needed.
    pub proof: bool,
    /// A permit is needed.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub permit: bool,
    /// A voucher is needed.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub voucher: bool,
    /// It costs something: the text `channel.<id>.fee` says what.
    pub has_fee: bool,
}

/// A site, without words.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub struct GuideSite {
    /// Its id; its name is the text `site.<id>`.
    pub id: String,
    /// The channels it serves.
    pub channels: Vec<String>,
    /// Where it is.
    pub position: Position,
    /// Its address in one line.
    pub address: String,
    /// Telephone number.
    pub phone: String,
    /// When it is open.
    pub hours: Schedule,
    /// The items it takes of what its channels take; empty means all of them.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub accepts: Vec<String>,
    /// The items it does not take although its channels do.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub refuses: Vec<String>,
}

impl GuideSite {
    /// It takes an item that its channel takes.
    #[must_use]
    pub fn takes(&self, item: &str) -> bool {
        (self.accepts.is_empty() || self.accepts.iter().any(|i| i == item))
            && self.refuses.iter().all(|i| i != item)
    }
}

/// An item of the guide.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct GuideItem {
    /// Its id.
    pub id: String,
    /// Its category.
    pub category: String,
    /// Its pictogram.
    pub pictogram: String,
    /// How common it is, 1 to 100.
    pub common: u32,
    /// Residents often get it wrong.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub often_wrong: bool,
    /// The item itself first, then its parts.
    pub(crate) subjects: Vec<Subject>,
}

impl GuideItem {
    /// The ids of its parts.
    pub fn part_ids(&self) -> impl Iterator<Item = &str> {
        self.subjects.iter().filter_map(|subject| subject.part.as_deref())
    }
}

/// What one decision is about: an item or a part of it.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
pub(crate) struct Subject {
    /// The part's id; `None` for the item itself.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(crate) part: Option<String>,
    /// Where its diagram begins.
    pub(crate) root: u32,
    /// Its open facts that the diagram tests.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(crate) open: Vec<OpenVariable>,
}

/// An open fact of a subject.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
pub(crate) struct OpenVariable {
    /// The variable's index.
    pub(crate) variable: u16,
    /// The values it can have, with weights.
    pub(crate) weights: Vec<(u16, u32)>,
    /// The value taken when a resident cannot tell.
    pub(crate) assumed: u16,
}

/// What an answer says first.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Answered {
    /// It goes in a container at home to be recovered.
    Yes,
    /// It does not.
    No,
    /// It goes somewhere else.
    Elsewhere,
    /// It is not on the list: ask.
    Unlisted,
    /// The program has an error here; such a guide cannot be published.
    #[default]
    Undecided,
}

impl Answered {
    /// Its word in message keys (`verdict-<code>`) and machine output.
    #[must_use]
    pub fn code(self) -> &'static str {
        match self {
            Self::Yes => "yes",
            Self::No => "no",
            Self::Elsewhere => "elsewhere",
            Self::Unlisted => "unlisted",
            Self::Undecided => "undecided",
        }
    }
}

/// Everything an answer says about one subject, without words.
#[derive(Debug, Clone, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(default)]
pub struct Outcome {
    /// The verdict.
    pub verdict: Answered,
    /// The destination stream.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub stream: Option<String>,
    /// The destination channel.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub channel: Option<String>,
    /// Other channels that also take it.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub also: Vec<String>,
    /// The rules that decided, by id; built-in ones are `safety.<class>`. For a conflict, the
    /// rules that disagree.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub rules: Vec<String>,
    /// The tier that decided.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub tier: Option<Tier>,
    /// The hazard class whose caution is shown.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hazard: Option<String>,
    /// Preparation steps in order.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub steps: Vec<String>,
    /// Streams it is banned from by law.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub banned: Vec<String>,
    /// The standard reason.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub reason: Option<String>,
    /// A temporary order decided.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub temporary: bool,
    /// The list is closed and does not name it.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub closed_list: bool,
    /// A named person accepted that a hazard goes here.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub acknowledged: bool,
}

impl Outcome {
    /// True when verdict and destination are the same.
    #[must_use]
    pub fn same_place(&self, other: &Self) -> bool {
        self.verdict == other.verdict && self.stream == other.stream && self.channel == other.channel
    }
}

impl Guide {
    /// The position of an item in [`Guide::items`].
    #[must_use]
    pub fn item_index(&self, id: &str) -> Option<usize> {
        self.items.iter().position(|i| i.id == id)
    }

    /// The containers of a stream that are used in a zone and at a dwelling type; of every one
    /// when none is given. A zone that has a dwelling type of its own stands for it.
    #[must_use]
    pub fn containers(
        &self,
        stream: &str,
        zone: Option<&str>,
        dwelling: Option<&str>,
    ) -> Vec<&GuideContainer> {
        let own = || self.zones.iter().find(|z| Some(z.id.as_str()) == zone)?.dwelling.as_deref();
        let dwelling = dwelling.or_else(own);
        self.streams
            .iter()
            .filter(|s| s.id == stream)
            .flat_map(|s| &s.containers)
            .filter(|c| c.zones.is_empty() || zone.is_none_or(|z| c.zones.iter().any(|own| own == z)))
            .filter(|c| {
                c.dwellings.is_empty() || dwelling.is_none_or(|d| c.dwellings.iter().any(|own| own == d))
            })
            .collect()
    }

    /// The names of the containers that a stream goes into, each once: of those used in a zone and at a
    /// dwelling type, what `name` calls them by their id. An answer says the container's name when there is
    /// one alone, and else the stream's, for then it is not known which one stands at home.
    #[must_use]
    pub fn container_names(
        &self,
        stream: &str,
        zone: Option<&str>,
        dwelling: Option<&str>,
        name: impl Fn(&str) -> Option<String>,
    ) -> Vec<String> {
        let mut names: Vec<String> = Vec::new();
        for container in self.containers(stream, zone, dwelling) {
            if let Some(name) = name(&container.id)
                && !names.contains(&name)
            {
                names.push(name);
            }
        }
        names
    }

    /// The variables that some item leaves open and its diagram tests.
    pub fn asked_variables(&self) -> impl Iterator<Item = &Variable> {
        let mut asked = vec![false; self.variables.len()];
        for open in self.items.iter().flat_map(|item| &item.subjects).flat_map(|subject| &subject.open) {
            if let Some(asked) = asked.get_mut(usize::from(open.variable)) {
                *asked = true;
            }
        }
        self.variables.iter().zip(asked).filter(|(_, asked)| *asked).map(|(variable, _)| variable)
    }

    /// The first day its rules were made for; days before it are answered all the same.
    #[must_use]
    pub fn first_day(&self) -> NaiveDate {
        self.edition.from.unwrap_or_default()
    }
}
