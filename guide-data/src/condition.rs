//! Conditions of rules, as they stand in a program file.

use serde::{Deserialize, Serialize};

/// A condition over facts. Names are checked when the program is compiled, not when it is read,
/// so that a program with a slip still loads and shows its findings.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum Condition {
    /// Every part holds; an empty list always holds.
    All(Vec<Condition>),
    /// At least one part holds; an empty list never holds.
    Any(Vec<Condition>),
    /// The part does not hold.
    Not(Box<Condition>),
    /// A fact has one of the listed values.
    Is(OneOf),
    /// A measure lies within bounds; an unstated measure never does.
    Measure(Bounds),
}

/// "The fact is one of these values."
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct OneOf {
    /// The fact's id.
    pub fact: String,
    /// The values, any of which satisfies the condition.
    pub of: Vec<String>,
}

/// "The measure lies within these bounds", each as stated, with its unit: "2 in", "5 gal".
/// Days are written as ISO 8601 dates.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Bounds {
    /// The fact's id.
    pub fact: String,
    /// This or more.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub at_least: Option<String>,
    /// More than this.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub over: Option<String>,
    /// This or less.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub at_most: Option<String>,
    /// Less than this.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub under: Option<String>,
    /// An everyday thing of about that size, one of [`crate::standard::COMPARISONS`], shown beside
    /// the measure.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub like: Option<String>,
    /// What a quantity is counted per, one of [`crate::standard::PERIODS`].
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub per: Option<String>,
}

impl Condition {
    /// The condition that always holds.
    #[must_use]
    pub fn always() -> Self {
        Self::All(Vec::new())
    }

    /// "`fact` is one of `values`".
    #[must_use]
    pub fn is(fact: &str, values: &[&str]) -> Self {
        Self::Is(OneOf { fact: fact.to_owned(), of: values.iter().map(|&v| v.to_owned()).collect() })
    }

    /// True when every case that satisfies the condition is of named items: such a rule is an
    /// exception and beats a general one of its tier.
    #[must_use]
    pub fn names_items(&self) -> bool {
        match self {
            Self::Is(one) => one.fact == "item",
            Self::All(parts) => parts.iter().any(Self::names_items),
            Self::Any(parts) => !parts.is_empty() && parts.iter().all(Self::names_items),
            Self::Not(_) | Self::Measure(_) => false,
        }
    }

    /// Calls `visit` for every fact the condition mentions, in reading order.
    pub fn for_each_fact(&self, visit: &mut dyn FnMut(&str)) {
        match self {
            Self::All(parts) | Self::Any(parts) => parts.iter().for_each(|p| p.for_each_fact(visit)),
            Self::Not(part) => part.for_each_fact(visit),
            Self::Is(one) => visit(&one.fact),
            Self::Measure(bounds) => visit(&bounds.fact),
        }
    }

    /// How deep conditions are nested in one another.
    #[must_use]
    pub fn depth(&self) -> usize {
        match self {
            Self::All(parts) | Self::Any(parts) => 1 + parts.iter().map(Self::depth).max().unwrap_or(0),
            Self::Not(part) => 1 + part.depth(),
            Self::Is(_) | Self::Measure(_) => 1,
        }
    }
}
