//! The larger sheet that a press prints several on.

use serde::{Deserialize, Serialize};

use super::SheetSize;
use crate::unit::Mm;

/// How the back of a press sheet is printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Turning {
    /// Fronts on one plate, backs on another; the sheet is turned over sideways between them.
    #[default]
    Sheetwise,
    /// Fronts and backs side by side on one plate, printed on both sides with the sheet turned over sideways.
    WorkAndTurn,
}

/// A press sheet and how it is filled.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PressSheet {
    /// Its width; the sheet may be turned a quarter when more fit so.
    pub width: Mm,
    /// Its height.
    pub height: Mm,
    /// From one trim to the next. None means twice the bleed, the least there can be.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gutter: Option<Mm>,
    /// How many at most; none means as many as fit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub up: Option<usize>,
    /// How the back is printed.
    #[serde(default)]
    pub turning: Turning,
}

/// The usual press sheets: 11 x 17, 12 x 18 and 13 x 19 in, and SRA3 (320 x 450 mm, ISO 217; from memory).
pub const PRESS_SHEETS: [(&str, SheetSize); 4] = [
    ("11x17in", SheetSize::new(Mm::inches(11.0), Mm::inches(17.0))),
    ("12x18in", SheetSize::new(Mm::inches(12.0), Mm::inches(18.0))),
    ("13x19in", SheetSize::new(Mm::inches(13.0), Mm::inches(19.0))),
    ("sra3", SheetSize::new(Mm(320.0), Mm(450.0))),
];

impl PressSheet {
    /// A press sheet of a size, filled as far as it goes.
    pub const fn new(size: SheetSize) -> Self {
        Self { width: size.width, height: size.height, gutter: None, up: None, turning: Turning::Sheetwise }
    }

    /// Reads a press sheet as people type it: a name, or width and height with their unit.
    pub fn parse(text: &str) -> Option<Self> {
        let name = text.trim().to_lowercase();
        let known = PRESS_SHEETS.iter().find(|(known, _)| *known == name).map(|(_, size)| *size);
        known.or_else(|| SheetSize::parse(&name)).map(Self::new)
    }
}
