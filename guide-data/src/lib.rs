//! Lidleaf's domain: what household items are, what a place accepts, and what follows.
//!
//! A [`Program`] and a [`Catalog`] compile into a guide: immutable and checked. This crate knows
//! no language's words, no clock, no network, no storage and no screen.

mod advice;
mod ask;
mod catalog;
mod compare;
mod compile;
mod condition;
mod diagram;
mod domain;
mod envelope;
mod facts;
mod findings;
mod fix;
mod guide;
mod hours;
mod measure;
mod order;
pub mod packed;
mod paths;
mod place;
mod printed;
mod program;
mod resolve;
mod ruleset;
mod search;
mod sites;
pub mod standard;
mod summarise;
mod text;
mod towns;
mod words;

pub use advice::{Advice, Branch, Stretch};
pub use ask::{
    Answer, Choice, Ends, Given, Known, PartAnswer, Question, QuestionCount, Step, ValueLabel, fact_order,
};
pub use catalog::{Catalog, Item, Open, PARTS, Part};
pub use compare::{
    Agreed, Asked, Aspect, Change, Comparison, Contradiction, Differing, FactIs, Group, Member, Notice,
    NoticeGroup, NoticeKind, PlaceKind, Regional, Reworded, Told, When, compare, compare_many, comparison,
    notice,
};
pub use condition::{Bounds, Condition, OneOf};
pub use domain::{Aside, Cut, Variable, day_of, dimension_of};
#[cfg(feature = "schema")]
pub use envelope::program_schema;
pub use envelope::{DEEPEST_CONDITION, Envelope, LARGEST_FILE, LoadProblem, PROGRAM_FORMAT, PROGRAM_VERSION};
pub use facts::{FACTS, FLAG, Fact, FactGroup, FactKind, HAZARDS, IdSource, fact, fact_index};
pub use findings::{Checked, FINDING_CODES, Finding, Place, Severity, Trial, check, find};
pub use fix::{FIX_CODES, Fix, FixProblem};
pub use guide::*;
pub use hours::{OpenState, Schedule};
pub use measure::{Dimension, Measure, MeasureProblem};
pub use order::sort_by;
pub use packed::{PackProblem, PackedWords};
pub use paths::Witness;
pub use printed::{Printing, UntrueLine, untrue, untrue_since};
pub use program::*;
pub use ruleset::BATTERY_INSIDE;
pub use search::{Hit, SearchIndex, fold, fold_lower};
pub use sites::{Near, distance, nearest, place_named};
pub use summarise::{
    FAITHFUL, Line, Summary, SummaryWanted, WordBudget, contradictions, summarise, summarise_within,
};
pub use text::{Text, TextState, Translation};
pub use towns::demo_towns;
pub use words::{LanguagePack, each_text, has_unreviewed, program_texts, text_mut};

/// The demo program file: Quillmere County, which is wholly invented.
#[must_use]
pub fn demo_json() -> &'static str {
    include_str!("../data/quillmere.json")
}
