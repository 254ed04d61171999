//! What the post asks of the address side.

use crate::unit::{Mm, Pt, Rect};

/// The zones of an address side, as rectangles in the page's coordinates.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PostalZones {
    /// Where the machines look for the delivery address.
    pub read_area: Rect,
    /// What stays white for the machines' barcode.
    pub barcode_clear: Rect,
    /// Where the delivery address is set, inside the read area.
    pub address_block: Rect,
    /// Postage: upper right corner.
    pub indicia: Rect,
    /// Return address: upper left corner.
    pub return_address: Rect,
    /// What is left for the sheet's own words and pictures.
    pub message: Rect,
}

/// The smallest type of a delivery address (DMM 202.1.2).
pub const SMALLEST_ADDRESS_TYPE: Pt = Pt(8.0);

const WIDTH: Pt = Mm::inches(9.0).pt();
const HEIGHT: Pt = Mm::inches(6.0).pt();

const fn rect(left: f64, top: f64, width: f64, height: f64) -> Rect {
    Rect::new(Pt::inches(left), Pt::inches(top), Pt::inches(width), Pt::inches(height))
}

/// The address side of the 9 x 6 in postcard.
///
/// Read area: .5 in from the sides, from .625 to 2.75 in above the lower edge; barcode clear zone: .625 in up
/// and 4.75 in from the right (DMM 202.2.1, Publication 28; CHECK-VALUES "read area; clear zone"). The indicia
/// sits in the upper right corner and the return address in the upper left. The address block is ours: the
/// right part of the read area, with room for an address label of 4 x 1.75 in. So is the rule that nothing else
/// is printed in the read area at all, which leaves the machines nothing to mistake for an address.
pub const POSTCARD_ADDRESS_SIDE: PostalZones = PostalZones {
    read_area: Rect::new(
        Pt::inches(0.5),
        Pt(HEIGHT.0 - 2.75 * 72.0),
        Pt(WIDTH.0 - 72.0),
        Pt((2.75 - 0.625) * 72.0),
    ),
    barcode_clear: Rect::new(
        Pt(WIDTH.0 - 4.75 * 72.0),
        Pt(HEIGHT.0 - 0.625 * 72.0),
        Pt::inches(4.75),
        Pt::inches(0.625),
    ),
    address_block: rect(4.25, 3.5, 4.0, 1.75),
    indicia: rect(7.25, 0.25, 1.5, 1.0),
    return_address: rect(0.25, 0.25, 3.0, 0.9),
    message: rect(0.25, 1.35, 8.5, 1.8),
};
