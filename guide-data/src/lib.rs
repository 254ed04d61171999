//! Lidleaf's domain: what household items are, what a place accepts, and what follows.
//!
//! A [`Program`] and a [`Catalog`] compile into a guide: immutable and checked. This crate knows
//! no language's words, no clock, no network, no storage and no screen.

mod catalog;
mod condition;
mod envelope;
mod facts;
mod measure;
mod program;
pub mod standard;
mod text;

pub use catalog::{Catalog, Item, Open, PARTS, Part};
pub use condition::{Bounds, Condition, OneOf};
#[cfg(feature = "schema")]
pub use envelope::program_schema;
pub use envelope::{DEEPEST_CONDITION, Envelope, LARGEST_FILE, LoadProblem, PROGRAM_FORMAT, PROGRAM_VERSION};
pub use facts::{FACTS, FLAG, Fact, FactGroup, FactKind, HAZARDS, IdSource, fact, fact_index};
pub use measure::{Dimension, Measure, MeasureProblem};
pub use program::*;
pub use text::{Text, TextState, Translation};
