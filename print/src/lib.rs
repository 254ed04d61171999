//! Lidleaf's printed sheets: from words and addresses to a file a print shop takes.
//!
//! A [`SheetJob`] comes in as data (JSON, from the command line or the browser's worker); [`make`] checks it,
//! shapes and fits its text, and gives back the press PDF, the display list it was written from and what
//! preflight found. The preview draws a page of the same display list for the screen.

mod check;
mod display;
mod finding;
mod font;
mod impose;
mod ink;
mod instead;
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
mod ticket;
mod unit;

pub use display::{
    Alt, Colorant, DisplayList, Fill, Glyph, Item, Page, Role, Rule, Run, Technical, TextLine,
};
pub use finding::{PREFLIGHT_CODES, Place, PreflightItem, PrintError, Severity};
#[cfg(feature = "bundled")]
pub use font::bundled_fonts;
pub use font::{FONT_FILES, FontFile, FontSet, Script, Weight, fonts_needed, fonts_of_languages};
pub use impose::{Cell, Imposed, impose};
pub use ink::{INK_LIMIT, Ink};
pub use job::{Direction, Fold, LanguageBlock, Line, QrLevel, Section, SheetJob, SheetKind, Stock, Tone};
pub use make::{Artifact, Fitted, Output, Prepared, Press, make, make_fitting, make_with};
pub use offer::{Offer, Step};
pub use path::PathOp;
pub use pictogram::{PICTOGRAM_SIDE, PICTOGRAMS, Pictogram, pictogram, svg_path};
pub use place::{TEXT_PLACES, text_place};
pub use sheet::{
    Area, BLEED, FOLD_SAFE, Face, Flow, MailClass, MailLimits, NAMED_SIZES, PRESS_SHEETS, PageGeometry,
    PostalZones, PressSheet, SAFE, SLUG, SMALLEST_ADDRESS_TYPE, Sheet, SheetPage, SheetSize, SizeLimits,
    Turning,
};
pub use svg::{PreviewArea, svg, svg_with_findings};
pub use ticket::{Ticket, TicketRow, make_ticket, ticket_fonts};
pub use unit::{Mm, Point, Pt, Rect, TOLERANCE};

/// The bundled press profile: GRACoL on coated paper, from the data of ANSI/CGATS/GRACoL TR 006-2007.
pub const PRESS_PROFILE: &[u8] = include_bytes!("../profiles/TR006.icc");
