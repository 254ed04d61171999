//! Faces: what the caller hands over, which face sets which character, and a face's measures.

mod face;
mod files;

pub use face::{FontSet, Weight};
#[cfg(feature = "bundled")]
pub use files::bundled_fonts;
pub use files::{FONT_FILES, FontFile, fonts_needed};

pub(crate) use face::Face;
