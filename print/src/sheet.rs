//! Sheets as a print shop knows them: finished size, bleed, safe area, corners, folds, and what goes where.
//!
//! A sheet is data: pages with their boxes, folds and areas, and for each area the [`Face`] that fills it. Layout
//! follows this table; adding a sheet is adding its pages here.

mod kinds;
mod postal;
mod press;
mod size;

use serde::{Deserialize, Serialize};

pub use kinds::{Area, Face, Flow, Sheet, SheetPage, SizeLimits};
pub use postal::{MailClass, MailLimits, PostalZones, SMALLEST_ADDRESS_TYPE};
pub use press::{PRESS_SHEETS, PressSheet, Turning};
pub use size::{NAMED_SIZES, SheetSize};

use crate::unit::{Mm, Point, Pt, Rect, TOLERANCE};

/// How far ink runs past the cut: 1/8 in (printers' guides, CHECK-VALUES "bleed, safe").
pub const BLEED: Pt = Pt::inches(0.125);

/// How far words and codes stay inside the cut: 1/4 in (common practice, CHECKS "Bleed, safe area").
pub const SAFE: Pt = Pt::inches(0.25);

/// How far words, pictures and codes stay from a fold: 1/8 in. A folder is out by up to 1/16 in (common practice,
/// no source).
pub const FOLD_SAFE: Pt = Pt::inches(0.125);

/// Room outside the trim for crop marks and the slug. Ours: marks of 1/4 in, 1/8 in off the trim so that they
/// never print in the bleed, and a line of small type below them.
pub const SLUG: Pt = Pt::inches(0.625);

const fn usual_slug() -> Pt {
    SLUG
}

/// One page's boxes. All are given by the finished size: the trim's upper left corner is the origin.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct PageGeometry {
    /// Finished width.
    pub width: Mm,
    /// Finished height.
    pub height: Mm,
    /// Bleed on every side.
    pub bleed: Pt,
    /// Safe distance on every side.
    pub safe: Pt,
    /// Corner radius, zero for square corners, half the width for a round sheet.
    pub corner: Mm,
    /// Room for marks around the trim.
    #[serde(default = "usual_slug")]
    pub slug: Pt,
}

impl PageGeometry {
    /// The finished sheet.
    pub fn trim(&self) -> Rect {
        Rect::new(Pt::ZERO, Pt::ZERO, self.width.pt(), self.height.pt())
    }

    /// The finished sheet with its bleed.
    pub fn bleed_box(&self) -> Rect {
        self.trim().grown(self.bleed)
    }

    /// The whole page with marks and slug.
    pub fn media_box(&self) -> Rect {
        self.trim().grown(self.slug)
    }

    /// Where words, pictures and codes are laid out.
    pub fn safe_area(&self) -> Rect {
        self.trim().grown(-self.safe)
    }

    /// Whether a rectangle keeps the safe distance from the cut, round corners included.
    pub fn keeps_safe(&self, rect: &Rect) -> bool {
        let safe = self.trim().grown(-SAFE);
        if !safe.contains(rect) {
            return false;
        }
        let radius = self.corner.pt() - SAFE;
        if radius <= Pt::ZERO {
            return true;
        }
        let corners = [
            Point { x: rect.x, y: rect.y },
            Point { x: rect.right(), y: rect.y },
            Point { x: rect.x, y: rect.bottom() },
            Point { x: rect.right(), y: rect.bottom() },
        ];
        corners.into_iter().all(|corner| {
            // The middle of the nearest rounded corner, or the point itself where the edge is straight.
            let x = corner.x.max(safe.x + radius).min(safe.right() - radius);
            let y = corner.y.max(safe.y + radius).min(safe.bottom() - radius);
            let (dx, dy) = ((corner.x - x).0, (corner.y - y).0);
            let reach = (radius + TOLERANCE).0;
            dx * dx + dy * dy <= reach * reach
        })
    }

    /// Whether it is cut as a circle.
    pub fn is_round(&self) -> bool {
        self.width == self.height && self.corner.0 >= self.width.0 / 2.0
    }
}
