//! Lidleaf's printed sheets: from words and addresses to a file a print shop takes.
//!
//! A [`SheetJob`] comes in as data (JSON, from the command line or the browser's worker); [`make`] checks it,
//! shapes and fits its text, and gives back the press PDF, the display list it was written from and what
//! preflight found. The preview draws a page of the same display list for the screen.

mod check;
mod display;
mod finding;
mod font;
mod ink;
mod job;
mod layout;
mod make;
mod offer;
mod path;
mod pdf;
mod pictogram;
mod place;
mod preflight;
mod qr;
mod sheet;
mod svg;
mod text;
mod unit;

pub use display::{Alt, DisplayList, Fill, Glyph, Item, Page, Role, Rule, Run, TextLine};
pub use finding::{PREFLIGHT_CODES, Place, PreflightItem, PrintError, Severity};
#[cfg(feature = "bundled")]
pub use font::bundled_fonts;
pub use font::{FONT_FILES, FontFile, FontSet, Script, Weight, fonts_needed};
pub use ink::{INK_LIMIT, Ink};
pub use job::{Direction, LanguageBlock, Line, Section, SheetJob, SheetKind, Tone};
pub use make::{Artifact, Fitted, Output, Prepared, Press, make, make_fitting, make_with};
pub use offer::{Offer, Step};
pub use path::PathOp;
pub use pictogram::{PICTOGRAM_SIDE, PICTOGRAMS, Pictogram, pictogram, svg_path};
pub use place::{TEXT_PLACES, text_place};
pub use sheet::{
    BLEED, POSTCARD_ADDRESS_SIDE, PageGeometry, PostalZones, SAFE, SLUG, SMALLEST_ADDRESS_TYPE, Sheet,
};
pub use svg::{PreviewArea, svg, svg_with_findings};
pub use unit::{Mm, Point, Pt, Rect, TOLERANCE};

/// The bundled press profile: GRACoL on coated paper, from the data of ANSI/CGATS/GRACoL TR 006-2007.
pub const PRESS_PROFILE: &[u8] = include_bytes!("../profiles/TR006.icc");
