//! Lidleaf's domain: what household items are, what a place accepts, and what follows.
//!
//! A [`Program`] and a [`Catalog`] compile into a guide: immutable and checked. This crate knows
//! no language's words, no clock, no network, no storage and no screen.

mod catalog;
mod compile;
mod condition;
mod diagram;
mod domain;
mod envelope;
mod facts;
mod guide;
mod hours;
mod measure;
mod place;
mod program;
mod resolve;
mod ruleset;
pub mod standard;
mod text;

pub use catalog::{Catalog, Item, Open, PARTS, Part};
pub use condition::{Bounds, Condition, OneOf};
pub use domain::{Cut, Variable, dimension_of};
#[cfg(feature = "schema")]
pub use envelope::program_schema;
pub use envelope::{DEEPEST_CONDITION, Envelope, LARGEST_FILE, LoadProblem, PROGRAM_FORMAT, PROGRAM_VERSION};
pub use facts::{FACTS, FLAG, Fact, FactGroup, FactKind, HAZARDS, IdSource, fact, fact_index};
pub use guide::*;
pub use hours::{OpenState, Schedule};
pub use measure::{Dimension, Measure, MeasureProblem};
pub use program::*;
pub use ruleset::BATTERY_INSIDE;
pub use text::{Text, TextState, Translation};
