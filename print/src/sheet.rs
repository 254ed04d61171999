//! Sheets as a print shop knows them: finished size, bleed, safe area, corners, and the marks around them.

mod postal;

use serde::{Deserialize, Serialize};

pub use postal::{POSTCARD_ADDRESS_SIDE, PostalZones, SMALLEST_ADDRESS_TYPE};

use crate::job::SheetKind;
use crate::unit::{Mm, Pt, Rect};

/// How far ink runs past the cut: 1/8 in (printers' guides, CHECK-VALUES "bleed, safe").
pub const BLEED: Pt = Pt::inches(0.125);

/// How far words and codes stay inside the cut: 1/4 in (common practice, CHECKS "Bleed, safe area").
pub const SAFE: Pt = Pt::inches(0.25);

/// Room outside the trim for crop marks and the slug. Ours: marks of 1/4 in, 1/8 in off the trim so that they
/// never print in the bleed, and a line of small type below them.
pub const SLUG: Pt = Pt::inches(0.625);

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
    /// Corner radius, zero for square corners.
    pub corner: Mm,
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
        self.trim().grown(SLUG)
    }

    /// Where words, pictures and codes may be.
    pub fn safe_area(&self) -> Rect {
        self.trim().grown(-self.safe)
    }
}

/// A sheet: its pages' names and boxes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sheet {
    /// The pages in order.
    pub pages: &'static [(&'static str, PageGeometry)],
}

/// A lid label: 7 x 9 in, a common size (TRADE "A lid is mostly pictures"). The corner radius of 1/4 in is
/// ours: a square corner of a label lifts first.
const CART_LID: PageGeometry = PageGeometry {
    width: Mm::inches(7.0),
    height: Mm::inches(9.0),
    bleed: BLEED,
    safe: SAFE,
    corner: Mm::inches(0.25),
};

/// A postcard, 9 in along the address and 6 in high: letter size by DMM 202.2.1 (5 to 11.5 by 3.5 to 6.125 in,
/// length over height 1.3 to 2.5), square corners.
const POSTCARD: PageGeometry = PageGeometry {
    width: Mm::inches(9.0),
    height: Mm::inches(6.0),
    bleed: BLEED,
    safe: SAFE,
    corner: Mm(0.0),
};

impl SheetKind {
    /// The sheet's pages and boxes.
    pub const fn sheet(self) -> Sheet {
        match self {
            Self::CartLid => Sheet { pages: &[("lid", CART_LID)] },
            Self::PostcardMailer => Sheet { pages: &[("message", POSTCARD), ("address", POSTCARD)] },
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn boxes_are_nested() {
        for kind in SheetKind::ALL {
            for (name, page) in kind.sheet().pages {
                assert!(page.media_box().contains(&page.bleed_box()), "{name}");
                assert!(page.bleed_box().contains(&page.trim()), "{name}");
                assert!(page.trim().contains(&page.safe_area()), "{name}");
                assert!(page.bleed >= Mm(3.0).pt(), "{name}: 3 mm or 1/8 in (printers' guides)");
                // A round corner must not cut into the safe area's corner.
                let (corner, safe) = (page.corner.pt().0, page.safe.0);
                let inside = (corner - safe).max(0.0);
                assert!(2.0 * inside * inside <= corner * corner, "{name}");
            }
        }
    }

    /// Letter size: 5 to 11.5 by 3.5 to 6.125 in, length over height 1.3 to 2.5 (USPS QSG 201, DMM 202.2.1).
    #[test]
    fn the_postcard_is_letter_size() {
        for (name, page) in SheetKind::PostcardMailer.sheet().pages {
            let (length, height) = (page.width.0 / 25.4, page.height.0 / 25.4);
            assert!((5.0..=11.5).contains(&length) && (3.5..=6.125).contains(&height), "{name}");
            assert!((1.3..=2.5).contains(&(length / height)), "{name}");
        }
    }

    /// Read area and barcode clear zone in inches from the lower left corner (DMM 202.2.1, Publication 28).
    #[test]
    fn the_posts_zones_are_where_the_post_wants_them() {
        let zones = POSTCARD_ADDRESS_SIDE;
        let inches = |r: Rect| {
            let bottom = 6.0 - r.bottom().0 / 72.0;
            [r.x.0 / 72.0, bottom, r.right().0 / 72.0, bottom + r.height.0 / 72.0]
        };
        let near = |rect: Rect, expected: [f64; 4]| {
            inches(rect).iter().zip(expected).all(|(have, want)| (have - want).abs() < 1e-9)
        };
        assert!(near(zones.read_area, [0.5, 0.625, 8.5, 2.75]), "{:?}", inches(zones.read_area));
        assert!(near(zones.barcode_clear, [4.25, 0.0, 9.0, 0.625]), "{:?}", inches(zones.barcode_clear));
        assert!(zones.read_area.contains(&zones.address_block));
        let safe = SheetKind::PostcardMailer.sheet().pages[1].1.safe_area();
        let own = [zones.message, zones.return_address, zones.indicia];
        for (index, zone) in own.iter().enumerate() {
            assert!(safe.contains(zone));
            assert!(!zone.overlaps(&zones.read_area) && !zone.overlaps(&zones.barcode_clear));
            assert!(own[index + 1..].iter().all(|other| !zone.overlaps(other)));
        }
    }
}
