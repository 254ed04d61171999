//! Lidleaf's languages: Fluent messages by language, negotiation, and the formatting of numbers,
//! measures, dates, times and lists by the rules of the Unicode CLDR.
//!
//! Each language is a folder beside this crate's `Cargo.toml` with a `meta.json` and one `.ftl`
//! file for each part of the product. Phones fetch the text of their language and hand it to
//! [`Messages::from_ftl`]; the command line and tests compile it in (feature `bundled`).
//! The crate decides nothing: it turns ids and values into words.
//!
//! Invariants, kept by this crate's tests: every key asked for is defined in every language and every
//! definition is used; placeholders are the same in every language; a message is never empty and
//! never markup; a translation counts as reviewed only when a person signed it off
//! (`examples/marks.rs` tells how). Adding a language is adding a folder.

mod args;
mod format;
mod lang;
mod mark;
mod measure;
mod messages;
mod number;
mod pattern;
mod plural;
mod words;

#[cfg(feature = "bundled")]
mod bundled;
#[cfg(feature = "check")]
pub mod check;

pub use args::{Args, Value};
#[cfg(feature = "bundled")]
pub use bundled::{bundled, sources};
pub use format::{DateStyle, Width};
pub use lang::{Direction, Lang, LangError, Language, ReviewState, endonym, negotiate, supported};
pub use mark::source_mark;
pub use measure::{Quantity, Rounding, Units};
pub use messages::{Messages, Problem, ProblemKind, Translated};
pub use number::NumberSymbols;
pub use words::Words;
