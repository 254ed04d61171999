//! The program: what one place's plant and channels accept, as a coordinator authors it.

use std::collections::BTreeMap;

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

use crate::catalog::Item;
use crate::condition::{Bounds, Condition};
use crate::text::Text;

/// A place's whole program. Every list is optional in a file, so that a beginning can be saved.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct Program {
    /// Stable id in kebab-case.
    pub id: String,
    /// The jurisdiction's name.
    pub name: Text,
    /// The edition shown on screens and sheets.
    pub edition: Edition,
    /// The language the program is written in (BCP 47).
    pub source_language: String,
    /// The languages it is published in, the source among them (BCP 47).
    pub languages: Vec<String>,
    /// Whom a resident asks.
    pub contact: Contact,
    /// The guide's public address, for QR codes: `https://…/` without a fragment.
    pub guide_url: String,
    /// The sorting plant.
    pub plant: Plant,
    /// What is collected together.
    pub streams: Vec<Stream>,
    /// Service zones.
    pub zones: Vec<Zone>,
    /// Where else things go.
    pub channels: Vec<Channel>,
    /// Real places on the channels.
    pub sites: Vec<Site>,
    /// Where each hazard class goes: class to handling.
    pub hazards: BTreeMap<String, HazardRoute>,
    /// What it means that no rule names a case.
    pub silence: Silence,
    /// What a fact a resident cannot tell counts as: fact id to value.
    pub unknown: BTreeMap<String, String>,
    /// Values that count as another here: blue glass as green.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub counts_as: Vec<CountsAs>,
    /// The rules.
    pub rules: Vec<Rule>,
    /// Items of this place that the catalog lacks, or describes otherwise.
    pub items: Vec<Item>,
    /// Names of those items: item id to name, with other names after a `|`.
    pub item_names: BTreeMap<String, Text>,
    /// Preparation steps of this place: id to words.
    pub steps: BTreeMap<String, Text>,
    /// Texts that print law or the postal service ask for.
    pub print: PrintFields,
    /// What has been printed and is still out there.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub printed: Vec<PrintedSheet>,
}

/// "These values of a fact count as that one": every rule treats them alike.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct CountsAs {
    /// The fact's id; a fact whose values are listed.
    pub fact: String,
    /// The values that do not count as themselves.
    pub these: Vec<String>,
    /// The value they count as.
    pub count_as: String,
}

/// A sheet that has been printed and handed out: what it tells, so that a change of the program
/// can say which of its lines become untrue.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct PrintedSheet {
    /// Stable id.
    pub id: String,
    /// What kind of sheet: "lid", "postcard".
    pub sheet: String,
    /// The edition's label it was made from.
    pub edition: String,
    /// The languages on it (BCP 47).
    pub languages: Vec<String>,
    /// The day it was printed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub printed: Option<NaiveDate>,
    /// The day it was withdrawn; absent while it is still out there.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub withdrawn: Option<NaiveDate>,
    /// How many copies.
    pub copies: u32,
    /// The stream whose container it is for; absent for a sheet about all.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub stream: Option<String>,
    /// The zone it was handed out in; absent for all.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub zone: Option<String>,
    /// What its lines say.
    pub lines: Vec<PrintedLine>,
}

/// What one printed line says, without words.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct PrintedLine {
    /// The item it is about.
    pub item: String,
    /// What it says of it.
    pub verdict: Option<Verdict>,
    /// The stream it names.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub stream: Option<String>,
    /// The channel it names.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub channel: Option<String>,
    /// The condition printed with it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub when: Option<Condition>,
    /// The hazard class it warns of.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hazard: Option<String>,
    /// Steps it tells.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub steps: Vec<String>,
    /// The very words, in the program's source language, for people to find it by.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub words: String,
}

/// An edition of a program.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct Edition {
    /// Its label, such as "2027-1".
    pub label: String,
    /// The first day it holds.
    pub from: Option<NaiveDate>,
}

/// Whom a resident asks.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct Contact {
    /// The office's name.
    pub name: Text,
    /// Telephone number as dialled.
    pub phone: String,
    /// E-mail address.
    pub email: String,
    /// Postal address lines, for the mailer.
    pub address: Vec<String>,
}

/// The sorting plant and its machines.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct Plant {
    /// Its name.
    pub name: Text,
    /// Its machines, in the order material meets them.
    pub machines: Vec<Machine>,
}

/// A machine of the plant and the limit it sets.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct Machine {
    /// Stable id.
    pub id: String,
    /// Its name in the trade.
    pub name: Text,
    /// What it cannot handle, in words.
    pub limit: Text,
}

/// What is collected together.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct Stream {
    /// Stable id.
    pub id: String,
    /// One of [`crate::standard::STREAM_KINDS`].
    pub kind: String,
    /// Its name.
    pub name: Text,
    /// Its containers.
    pub containers: Vec<Container>,
}

/// What a resident puts a stream into.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct Container {
    /// Stable id.
    pub id: String,
    /// One of [`crate::standard::CONTAINER_KINDS`].
    pub kind: String,
    /// What residents call it: "blue cart".
    pub name: Text,
    /// Its colour as `#rrggbb`, shown beside its name and never instead of it.
    pub colour: String,
    /// Its capacity as stated.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub capacity: Option<String>,
    /// The zones it is used in; none named means all.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub zones: Vec<String>,
    /// The dwelling types it is used at; none named means all.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub dwellings: Vec<String>,
    /// When and how it is set out: a rule about the container, not the item.
    pub set_out: Text,
    /// Its other rules, which no item decides: stated once, shown with every answer it is named in.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub rules: Vec<ContainerRule>,
}

/// A rule about a container.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct ContainerRule {
    /// One of [`crate::standard::CONTAINER_RULES`]; each at most once for a container.
    pub kind: String,
    /// A limit as stated: "100 lb", "3 ft".
    #[serde(skip_serializing_if = "Option::is_none")]
    pub limit: Option<String>,
    /// Its words.
    pub text: Text,
}

/// A service zone.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct Zone {
    /// Stable id.
    pub id: String,
    /// Its name.
    pub name: Text,
    /// The dwelling type of the whole zone, when it has one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub dwelling: Option<String>,
    /// Streams collected here; none named means all.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub streams: Vec<String>,
    /// Households, as weight.
    pub households: u32,
    /// A position in its middle, for nearest sites.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub centre: Option<Position>,
}

/// A position in WGS 84 degrees.
#[derive(Debug, Clone, Copy, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Position {
    /// Latitude, -90 to 90, north positive.
    pub lat: f64,
    /// Longitude, -180 to 180, east positive.
    pub lon: f64,
}

/// Where a thing goes when not in a container at home.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct Channel {
    /// Stable id.
    pub id: String,
    /// One of [`crate::standard::CHANNEL_KINDS`].
    pub kind: String,
    /// Its name.
    pub name: Text,
    /// How it works, in a sentence.
    pub note: Text,
    /// What it costs, in words; empty means free.
    pub fee: Text,
    /// An appointment or booking is needed.
    pub booking: bool,
    /// Proof of residency is needed.
    pub proof: bool,
    /// A permit is needed.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub permit: bool,
    /// A voucher is needed.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub voucher: bool,
    /// How much or how often, in words: "20 visits a year".
    #[serde(skip_serializing_if = "Text::is_empty")]
    pub allowance: Text,
    /// Which vehicles may come, in words.
    #[serde(skip_serializing_if = "Text::is_empty")]
    pub vehicles: Text,
    /// Hazard classes it takes safely.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub safe_for: Vec<String>,
}

/// A real place on one or more channels.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct Site {
    /// Stable id.
    pub id: String,
    /// Its name.
    pub name: Text,
    /// The channels it serves.
    pub channels: Vec<String>,
    /// Where it is.
    pub position: Position,
    /// Its address in one line.
    pub address: String,
    /// Opening hours in the syntax of the OpenStreetMap specification.
    pub hours: String,
    /// Telephone number.
    pub phone: String,
    /// Anything else to know.
    pub note: Text,
    /// The items it takes of what its channels take; none named means all of them.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub accepts: Vec<String>,
    /// The items it does not take although its channels do.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub refuses: Vec<String>,
    /// Which vehicles may come here, in words, when it differs from the channel's.
    #[serde(skip_serializing_if = "Text::is_empty")]
    pub vehicles: Text,
}

/// Where a hazard class goes.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct HazardRoute {
    /// The channel's id.
    pub channel: String,
    /// Who approved it locally; shown to coordinators.
    pub approved_by: String,
}

/// What it means that no rule names a case.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum Silence {
    /// Nobody has said: such a case is a finding and the program cannot be published.
    #[default]
    Undecided,
    /// The list is open: the answer is "not on the list, ask".
    Ask,
    /// The list is closed: anything not named is refused.
    Closed,
}

/// The tiers of rules, in the order they are checked.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum Tier {
    /// Hazards; partly built in, never weakened silently.
    Safety,
    /// What the plant's machines cannot handle.
    Plant,
    /// This place's contract and exceptions.
    #[default]
    Program,
    /// What end markets buy.
    Material,
    /// What holds when nothing else does.
    Default,
}

impl Tier {
    /// All tiers in the order they are checked.
    pub const ALL: [Self; 5] = [Self::Safety, Self::Plant, Self::Program, Self::Material, Self::Default];

    /// The tier's word in files and message keys.
    #[must_use]
    pub fn code(self) -> &'static str {
        match self {
            Self::Safety => "safety",
            Self::Plant => "plant",
            Self::Program => "program",
            Self::Material => "material",
            Self::Default => "default",
        }
    }
}

/// The verdict of a rule.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum Verdict {
    /// It is collected to be recovered: destination a stream.
    Yes,
    /// It is not: destination the refuse stream, or none.
    No,
    /// It goes to a channel, not a container at home.
    Elsewhere,
}

/// A rule: when a condition holds, then a decision, with its words and its provenance.
///
/// A rule without a verdict decides nothing: it adds its steps to whatever is decided.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct Rule {
    /// Stable id; survives renumbering.
    pub id: String,
    /// When it is checked.
    pub tier: Tier,
    /// It is a temporary order and beats the normal rules of its tier.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub temporary: bool,
    /// The condition; absent means always.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub when: Option<Condition>,
    /// The verdict; absent for a rule that only adds steps.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub verdict: Option<Verdict>,
    /// The destination stream's id.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub stream: Option<String>,
    /// The destination channel's id.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub channel: Option<String>,
    /// Other channels that also take it.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub also: Vec<String>,
    /// Preparation steps by id, in the order to do them.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub prepare: Vec<String>,
    /// Streams it is banned from by law: the answer says so, and sending it there is an error. On a
    /// rule without a verdict the ban holds whatever decides.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub banned_from: Vec<String>,
    /// A standard reason's id. The residents' text, when written, is shown instead.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub reason: Option<String>,
    /// The machine whose limit it states.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
    /// Rules of the same tier that this one beats, by id.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub overrides: Vec<String>,
    /// The first day it holds.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub from: Option<NaiveDate>,
    /// The last day it holds.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub until: Option<NaiveDate>,
    /// The part of each year in which it holds.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub season: Option<Season>,
    /// Its three texts.
    pub texts: RuleTexts,
    /// Who decided, from what source, when.
    pub provenance: Provenance,
    /// Given only to let a rule send a hazard to a stream; logged and shown wherever it applies.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub acknowledgement: Option<Acknowledgement>,
}

/// A part of every year, both days counted; it may run over the new year.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct Season {
    /// Its first day, month and day: "12-26".
    pub from: String,
    /// Its last day: "01-15".
    pub until: String,
}

impl Season {
    /// The same as a condition on the fact `time-of-year`.
    #[must_use]
    pub fn condition(&self) -> Condition {
        let bounds = |at_least: Option<&String>, at_most: Option<&String>| {
            Condition::Measure(Bounds {
                fact: "time-of-year".to_owned(),
                at_least: at_least.cloned(),
                at_most: at_most.cloned(),
                ..Bounds::default()
            })
        };
        let day = crate::domain::year_day_of;
        if day(&self.from) <= day(&self.until) {
            bounds(Some(&self.from), Some(&self.until))
        } else {
            Condition::Any(vec![bounds(Some(&self.from), None), bounds(None, Some(&self.until))])
        }
    }
}

/// One rule in the words of the three groups of people who live by it.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct RuleTexts {
    /// The contract's wording.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub contract: String,
    /// The sorters' wording.
    #[serde(skip_serializing_if = "Text::is_empty")]
    pub sorters: Text,
    /// The residents' wording: the reason an answer shows.
    #[serde(skip_serializing_if = "Text::is_empty")]
    pub residents: Text,
}

/// Where a decision comes from.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct Provenance {
    /// Who decided.
    pub decided_by: String,
    /// Contract clause, plant's e-mail, trial.
    pub source: String,
    /// The day it was last confirmed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub confirmed: Option<NaiveDate>,
    /// The day to ask again.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub ask_again: Option<NaiveDate>,
}

/// A named person's acceptance of a risk.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct Acknowledgement {
    /// Who.
    pub by: String,
    /// When.
    pub on: Option<NaiveDate>,
    /// Why.
    pub because: String,
}

/// Texts that print law or the postal service ask for; fields, not artwork.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct PrintFields {
    /// Postage indicia, line by line.
    pub indicia: Vec<String>,
    /// Recycled-content or other statement.
    pub statement: Text,
    /// The short address printed beside the QR code.
    pub short_url: String,
}

impl Program {
    /// A rule by id.
    #[must_use]
    pub fn rule(&self, id: &str) -> Option<&Rule> {
        self.rules.iter().find(|r| r.id == id)
    }

    /// A stream by id.
    #[must_use]
    pub fn stream(&self, id: &str) -> Option<&Stream> {
        self.streams.iter().find(|s| s.id == id)
    }

    /// A channel by id.
    #[must_use]
    pub fn channel(&self, id: &str) -> Option<&Channel> {
        self.channels.iter().find(|c| c.id == id)
    }

    /// A program to begin with: one recycling and one refuse stream, one zone, nothing decided.
    #[must_use]
    pub fn blank(language: &str) -> Self {
        let stream = |id: &str| Stream { id: id.to_owned(), kind: id.to_owned(), ..Stream::default() };
        Self {
            id: "new-program".to_owned(),
            source_language: language.to_owned(),
            languages: vec![language.to_owned()],
            streams: vec![stream("recycling"), stream("refuse")],
            ..Self::default()
        }
    }

    /// The id of the stream for what nothing else takes.
    #[must_use]
    pub fn refuse_stream(&self) -> Option<&str> {
        self.streams.iter().find(|s| s.kind == "refuse").map(|s| s.id.as_str())
    }
}
