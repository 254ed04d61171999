//! The facts a rule may speak about. Adding a fact is adding a row to [`FACTS`].

use crate::measure::Dimension;

/// What kind of values a fact takes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FactKind {
    /// One of a fixed list of values.
    Choice(&'static [&'static str]),
    /// A measure of a dimension, cut into intervals by the thresholds that rules name.
    Measure(Dimension),
    /// One of the ids the program or catalog defines (an item, a category, a zone).
    Id(IdSource),
    /// A civil day, cut into intervals by the days that rules name.
    Day,
    /// A day of any year, month and day, cut into intervals by the seasons that rules name.
    YearDay,
}

/// Where the values of an id fact come from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum IdSource {
    /// Items of the catalog and of the program.
    Items,
    /// The standard categories.
    Categories,
    /// The program's service zones.
    Zones,
}

/// What a fact is about; screens group facts by it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FactGroup {
    /// What the thing is.
    Identity,
    /// How large or heavy it is.
    Measure,
    /// The state it is in.
    State,
    /// What is attached to it.
    Parts,
    /// The danger it carries.
    Hazard,
    /// Who asks, where and when.
    Context,
}

/// One fact: its stable id, its values, and what is taken when nobody states it.
#[derive(Debug, Clone, Copy)]
pub struct Fact {
    /// Stable id, used in files and in message keys.
    pub id: &'static str,
    /// The group it is shown in.
    pub group: FactGroup,
    /// Its values.
    pub kind: FactKind,
    /// The value of an item whose catalog entry neither states the fact nor leaves it open.
    /// `None` for measures and ids: an unstated measure satisfies no comparison.
    pub normal: Option<&'static str>,
    /// The cautious value taken when a resident cannot tell and the program does not say otherwise.
    /// `None`: the likeliest value of the item is taken.
    pub unknown_means: Option<&'static str>,
}

/// Values of a yes-or-no fact.
pub const FLAG: &[&str] = &["no", "yes"];

/// Hazard classes, `none` first. Each has a caution of its own; none may go to a cart or bin.
pub const HAZARDS: &[&str] = &[
    "none",
    "battery-lithium",
    "battery-household",
    "battery-lead-acid",
    "sharps",
    "medicine",
    "pressurised",
    "flammable",
    "toxic",
    "corrosive",
    "mercury",
    "oil",
    "explosive",
    "radioactive",
];

const fn choice(
    id: &'static str,
    group: FactGroup,
    values: &'static [&'static str],
    normal: Option<&'static str>,
    unknown_means: Option<&'static str>,
) -> Fact {
    Fact { id, group, kind: FactKind::Choice(values), normal, unknown_means }
}

const fn measure(id: &'static str, dimension: Dimension) -> Fact {
    Fact {
        id,
        group: FactGroup::Measure,
        kind: FactKind::Measure(dimension),
        normal: None,
        unknown_means: None,
    }
}

use FactGroup::{Context, Hazard, Identity, Measure, Parts, State};

/// What is asked about: the whole thing, or one of [`crate::catalog::PARTS`].
const PART_VALUES: &[&str] = &[
    "whole", "lid", "cap", "pump", "sleeve", "liner", "straw", "filter", "battery", "cord", "shade",
    "contents", "bag", "handle", "ring",
];

/// Every fact, in the order in which diagrams test them: context first, because a phone knows it,
/// then what is cheap to see, then what must be looked for.
pub const FACTS: &[Fact] = &[
    Fact { id: "day", group: Context, kind: FactKind::Day, normal: None, unknown_means: None },
    Fact { id: "time-of-year", group: Context, kind: FactKind::YearDay, normal: None, unknown_means: None },
    Fact {
        id: "zone",
        group: Context,
        kind: FactKind::Id(IdSource::Zones),
        normal: None,
        unknown_means: None,
    },
    choice("dwelling", Context, &["house", "small-building", "large-building"], Some("house"), None),
    choice("origin", Context, &["household", "business"], Some("household"), None),
    choice("proof", Context, FLAG, Some("no"), None),
    choice("add-on", Context, FLAG, Some("no"), Some("no")),
    measure("quantity", Dimension::Count),
    Fact {
        id: "item",
        group: Identity,
        kind: FactKind::Id(IdSource::Items),
        normal: None,
        unknown_means: None,
    },
    Fact {
        id: "category",
        group: Identity,
        kind: FactKind::Id(IdSource::Categories),
        normal: None,
        unknown_means: None,
    },
    choice("part", Identity, PART_VALUES, Some("whole"), None),
    choice("hazard", Hazard, HAZARDS, Some("none"), None),
    choice("material", Identity, crate::standard::MATERIALS, Some("mixed"), None),
    choice("form", Identity, crate::standard::FORMS, Some("other"), None),
    choice("object", Identity, &["packaging", "product"], Some("packaging"), None),
    choice("battery", Parts, FLAG, Some("no"), Some("yes")),
    choice(
        "resin",
        Identity,
        &["1", "2", "3", "4", "5", "6", "7", "none", "unreadable"],
        Some("none"),
        Some("unreadable"),
    ),
    choice("deposit-mark", Identity, FLAG, Some("no"), Some("no")),
    choice(
        "colour",
        Identity,
        &["clear", "frosted", "white", "green", "brown", "blue", "black", "other"],
        Some("other"),
        None,
    ),
    choice(
        "coating",
        Identity,
        &["none", "plastic", "wax", "foil", "glitter", "wet-strength"],
        Some("none"),
        None,
    ),
    choice("layers", Identity, &["one", "many"], Some("one"), None),
    measure("longest-side", Dimension::Length),
    measure("middle-side", Dimension::Length),
    measure("shortest-side", Dimension::Length),
    measure("strip-length", Dimension::Length),
    measure("capacity", Dimension::Volume),
    measure("mass", Dimension::Mass),
    choice("fits-container", Measure, FLAG, Some("yes"), Some("no")),
    choice(
        "contents",
        State,
        &["empty", "traces", "dried", "part-full", "full"],
        Some("empty"),
        Some("part-full"),
    ),
    choice(
        "former-contents",
        State,
        &[
            "none",
            "food",
            "drink",
            "personal-care",
            "cleaner",
            "oil",
            "paint",
            "pesticide",
            "solvent",
            "medicine",
        ],
        Some("none"),
        None,
    ),
    choice("soiling", State, &["clean", "grease", "food"], Some("clean"), None),
    choice("wet", State, FLAG, Some("no"), None),
    choice(
        "bagged",
        State,
        &["loose", "plastic-bag", "clear-bag", "paper-bag"],
        Some("loose"),
        Some("loose"),
    ),
    choice("flattened", State, FLAG, Some("no"), None),
    choice("bundled", State, FLAG, Some("no"), None),
    choice("shredded", State, FLAG, Some("no"), None),
    choice("broken", State, FLAG, Some("no"), None),
    choice("compostable", State, &["no", "claimed", "certified"], Some("no"), Some("claimed")),
    choice("closure", Parts, &["none", "on", "off"], Some("none"), None),
    choice("label", Parts, &["none", "paper", "film", "sleeve"], Some("none"), None),
    choice("pump", Parts, FLAG, Some("no"), None),
    choice("fitting", Parts, FLAG, Some("no"), None),
    choice("window", Parts, FLAG, Some("no"), None),
    choice("liner", Parts, FLAG, Some("no"), None),
    choice("cord", Parts, FLAG, Some("no"), None),
];

/// Looks a fact up by id.
#[must_use]
pub fn fact(id: &str) -> Option<&'static Fact> {
    FACTS.iter().find(|f| f.id == id)
}

/// The sides of a thing, the longest first.
pub(crate) const SIDES: [&str; 3] = ["longest-side", "middle-side", "shortest-side"];

/// The place of a fact in [`FACTS`], which is its place in every diagram.
#[must_use]
pub fn fact_index(id: &str) -> Option<usize> {
    FACTS.iter().position(|f| f.id == id)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ids_are_unique_and_defaults_are_values() {
        for (at, f) in FACTS.iter().enumerate() {
            assert_eq!(fact_index(f.id), Some(at), "{} twice", f.id);
            if let FactKind::Choice(values) = f.kind {
                for value in [f.normal, f.unknown_means].into_iter().flatten() {
                    assert!(values.contains(&value), "{}: {value}", f.id);
                }
            } else {
                assert!(f.normal.is_none() && f.unknown_means.is_none(), "{}", f.id);
            }
        }
    }

    #[test]
    fn every_part_can_be_named_by_a_rule() {
        assert_eq!(PART_VALUES[1..], *crate::catalog::PARTS);
    }

    /// ASTM D7611/D7611M-20 (names from a published copy, abbreviations 2-7 from memory):
    /// seven codes and no more.
    #[test]
    fn resin_codes_are_the_seven_of_astm_d7611() {
        let Some(FactKind::Choice(values)) = fact("resin").map(|f| f.kind) else { panic!("resin") };
        assert_eq!(&values[..7], ["1", "2", "3", "4", "5", "6", "7"]);
        assert_eq!(values.len(), 9, "and none, and unreadable");
    }
}
