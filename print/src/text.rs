//! Text: which characters are taken, how they are shaped, where lines break, and how a line is set.
//!
//! Shaping is harfrust's, HarfBuzz's own port and the one still growing (rustybuzz is 66 KB smaller with brotli
//! but no longer follows HarfBuzz); directions are unicode-bidi's (UAX 9) and break opportunities
//! unicode-linebreak's (UAX 14). Which opportunities are taken is decided here.

mod breaking;
mod characters;
mod itemise;
mod measured;
mod numbers;
mod opportunities;
mod paragraph;
mod shaping;

pub(crate) use characters::refuse_bad_characters;
pub(crate) use measured::Memory;
pub(crate) use paragraph::{Paragraph, Setting, Words, count};
pub(crate) use shaping::Typesetter;
