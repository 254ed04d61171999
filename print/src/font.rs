//! Faces: what the caller hands over, which face sets which character, and a face's measures.

mod face;
mod files;
mod script;

pub use face::{FontSet, Weight};
#[cfg(feature = "bundled")]
pub use files::bundled_fonts;
pub use files::{FONT_FILES, FontFile, fonts_needed, fonts_of_languages};

pub use script::Script;

#[cfg(test)]
pub(crate) use files::fonts_on_disk;

pub(crate) use face::{Face, Outlines, Subset, cff_table};
pub(crate) use script::compose_hangul;
