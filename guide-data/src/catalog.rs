//! The catalog: what household items are, apart from what any place does with them.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

/// All items of a catalog, in a stable order.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Catalog {
    /// The items; ids are unique.
    pub items: Vec<Item>,
}

/// A household item.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Item {
    /// Stable id in kebab-case; never reused, never a position.
    pub id: String,
    /// A standard category.
    pub category: String,
    /// The pictogram drawn for it.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub pictogram: String,
    /// Facts that hold for every such item: fact id to value, measures as stated ("2.5 in").
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub facts: BTreeMap<String, String>,
    /// Facts that differ from one such item to the next, and so may have to be asked.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub open: BTreeMap<String, Open>,
    /// Parts that come off and may go to a different place.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub parts: Vec<Part>,
    /// How often households have it, from 1 (rare) to 100 (daily). A judgement, no source.
    #[serde(default = "ordinary", skip_serializing_if = "is_ordinary")]
    pub common: u32,
    /// One of the things residents get wrong most.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub often_wrong: bool,
}

fn ordinary() -> u32 {
    20
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde passes a reference")]
fn is_ordinary(common: &u32) -> bool {
    *common == ordinary()
}

/// A part of an item with facts of its own; facts it does not state are the item's.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Part {
    /// One of [`PARTS`].
    pub id: String,
    /// Facts of the part that differ from the item's.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub facts: BTreeMap<String, String>,
}

/// Ids of parts, with words in `locales`.
pub const PARTS: &[&str] = &[
    "lid", "cap", "pump", "sleeve", "liner", "straw", "filter", "battery", "cord", "shade", "contents",
    "bag", "handle", "ring",
];

/// The values an open fact may take, with how likely each is.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Open {
    /// For choices: value to weight. Weights are relative; a judgement unless a source is named.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub among: BTreeMap<String, u32>,
    /// For measures: the smallest that occurs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub from: Option<String>,
    /// For measures: the largest that occurs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub to: Option<String>,
    /// For measures: the usual one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub usual: Option<String>,
}

impl Catalog {
    /// Reads a catalog file.
    ///
    /// # Errors
    /// The path within the file and what was expected there.
    pub fn from_json(json: &str) -> Result<Self, crate::envelope::LoadProblem> {
        crate::envelope::read_json(json)
    }

    /// The catalog that ships with Lidleaf.
    ///
    /// # Errors
    /// Only when the shipped file is broken, which a test rules out.
    pub fn standard() -> Result<Self, crate::envelope::LoadProblem> {
        Self::from_json(include_str!("../data/catalog.json"))
    }

    /// The catalog with a program's own items added; a program's item replaces the catalog's of
    /// the same id, because the coordinator's word about their place is the nearer one.
    #[must_use]
    pub fn with(&self, own: &[Item]) -> Self {
        let replaced: std::collections::BTreeSet<&str> = own.iter().map(|o| o.id.as_str()).collect();
        let mut items: Vec<Item> =
            self.items.iter().filter(|i| !replaced.contains(i.id.as_str())).cloned().collect();
        items.extend(own.iter().cloned());
        Self { items }
    }

    /// An item by id.
    #[must_use]
    pub fn item(&self, id: &str) -> Option<&Item> {
        self.items.iter().find(|i| i.id == id)
    }
}
