//! What phones are sent: a compiled guide and the words of one language as compact bytes.
//!
//! A phone that reads these carries no reader of program files, no compiler and no JSON. The bytes are
//! the same for the same guide, everywhere.
//!
//! # Format
//! | bytes | what |
//! |---|---|
//! | 4 | `LID` and a zero |
//! | 1 | `G` a guide, `W` the words of a language, `S` other words to search by |
//! | 1 | [`VERSION`] |
//! | 8 | a checksum of all that follows (FNV-1a, 64 bits, little-endian): it tells damage, not malice |
//! | rest | texts, then numbers |
//!
//! Whole numbers are written seven bits at a time, least significant first, the top bit telling that
//! more follow. The texts come first: how many, their lengths in bytes, then all of them in UTF-8
//! without anything between; everything after names a text by its position. Fields follow in the order
//! in which this file writes them; a list is its length and its entries; what may be missing is 0, or
//! its number plus 1.
//!
//! Reading is bounded by the length of what is read and never fails but with a [`PackProblem`]: a list
//! is not longer than the bytes left, and a node's children come before it, so that no diagram goes
//! in a circle.

mod bytes;
mod guide;
mod words;

pub use bytes::{PackProblem, VERSION};
pub use words::PackedWords;
