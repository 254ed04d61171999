//! What the post asks of the address side.

use serde::{Deserialize, Serialize};

use super::SAFE;
use crate::unit::{Mm, Pt, Rect};

/// How a piece is mailed, which says what its sizes and its address side must be.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum MailClass {
    /// A card: 5 to 6 by 3.5 to 4.25 in.
    Card,
    /// A letter: 5 to 11.5 by 3.5 to 6.125 in, length over height 1.3 to 2.5.
    Letter,
    /// A folded self-mailer: 5 to 10.5 by 3.5 to 6 in, length over height 1.3 to 2.5.
    Folded,
    /// A flat: over a letter's maximum, at most 15 by 12 in.
    Flat,
}

/// The least and the most of a mail class.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MailLimits {
    /// Length, along the address.
    pub length: (Mm, Mm),
    /// Height.
    pub height: (Mm, Mm),
    /// Length over height, where the class has a rule.
    pub ratio: Option<(f64, f64)>,
    /// Thickness of the finished piece.
    pub thickness: (Mm, Mm),
}

impl MailClass {
    /// What the post asks of it: letters and cards by DMM 202.2.1 and QSG 201, folded self-mailers by DMM
    /// 201.3.14, flats by QSG 201 (CHECK-VALUES "Post and print"). A folded self-mailer is as thick as a letter.
    pub fn limits(self) -> MailLimits {
        let inches = |least: f64, most: f64| (Mm::inches(least), Mm::inches(most));
        let shape = Some((1.3, 2.5));
        match self {
            Self::Card => MailLimits {
                length: inches(5.0, 6.0),
                height: inches(3.5, 4.25),
                ratio: shape,
                thickness: inches(0.007, 0.016),
            },
            Self::Letter => MailLimits {
                length: inches(5.0, 11.5),
                height: inches(3.5, 6.125),
                ratio: shape,
                thickness: inches(0.007, 0.25),
            },
            Self::Folded => MailLimits {
                length: inches(5.0, 10.5),
                height: inches(3.5, 6.0),
                ratio: shape,
                thickness: inches(0.007, 0.25),
            },
            Self::Flat => MailLimits {
                length: inches(5.0, 15.0),
                height: inches(3.5, 12.0),
                ratio: None,
                thickness: inches(0.009, 0.75),
            },
        }
    }

    /// The class of an unfolded piece of this size; nothing when the post takes none such.
    pub fn of(length: Mm, height: Mm) -> Option<Self> {
        [Self::Card, Self::Letter, Self::Flat].into_iter().find(|class| {
            let limits = class.limits();
            let within =
                |(least, most): (Mm, Mm), value: Mm| value.0 >= least.0 - 1e-6 && value.0 <= most.0 + 1e-6;
            let ratio = length / height;
            let over_a_letter = length.0 > Mm::inches(11.5).0 + 1e-6 || height.0 > Mm::inches(6.125).0 + 1e-6;
            within(limits.length, length)
                && within(limits.height, height)
                && limits.ratio.is_none_or(|(least, most)| ratio >= least - 1e-9 && ratio <= most + 1e-9)
                && (*class != Self::Flat || over_a_letter)
        })
    }

    /// The thinnest stock for a piece of this size: .007 in, but .009 in for a letter above 4.25 in high or 6 in
    /// long (QSG 201).
    pub fn thinnest(self, length: Mm, height: Mm) -> Mm {
        let large = height.0 > Mm::inches(4.25).0 + 1e-6 || length.0 > Mm::inches(6.0).0 + 1e-6;
        match self {
            Self::Letter if large => Mm::inches(0.009),
            _ => self.limits().thickness.0,
        }
    }

    /// The name used in messages' arguments.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Card => "card",
            Self::Letter => "letter",
            Self::Folded => "folded",
            Self::Flat => "flat",
        }
    }
}

/// The zones of an address side, as rectangles in the page's coordinates.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PostalZones {
    /// The panel that bears the address: the whole page of a card, one panel of a folded piece.
    pub panel: Rect,
    /// How the piece is mailed.
    pub class: MailClass,
    /// Where the machines look for the delivery address.
    pub read_area: Rect,
    /// The part of it that holds nothing but the address.
    pub address_only: Rect,
    /// What stays white for the machines' barcode; empty on a flat.
    pub barcode_clear: Rect,
    /// Where the delivery address is set, inside the read area.
    pub address_block: Rect,
    /// Postage: upper right corner.
    pub indicia: Rect,
    /// Return address: upper left corner.
    pub return_address: Rect,
    /// What is left for the sheet's own words and pictures; empty where nothing is.
    pub message: Rect,
    /// The print notice and the edition.
    pub small_print: Rect,
}

/// The smallest type of a delivery address (DMM 202.1.2).
pub const SMALLEST_ADDRESS_TYPE: Pt = Pt(8.0);

/// Below this the sheet's own panel says nothing that could be read. Ours.
const LOWEST_MESSAGE: Pt = Pt(54.0);

impl PostalZones {
    /// The zones of a card, letter or folded piece.
    ///
    /// Read area: .5 in from the sides, from .625 to 2.75 in above the lower edge; barcode clear zone: .625 in up
    /// and 4.75 in from the right (DMM 202.2.1, Publication 28; CHECK-VALUES "read area; clear zone"). The indicia
    /// sits in the upper right corner and the return address in the upper left. The address block is ours: the
    /// right part of the read area, with room for an address label. So is the rule that nothing else is printed in
    /// the read area from a quarter of an inch above the address down, which leaves the machines nothing to mistake
    /// for an address. On a low piece the indicia and the return address reach into the read area above that, as
    /// they do on any small envelope.
    pub fn letter(panel: Rect, class: MailClass) -> Self {
        let (bottom, right) = (panel.bottom(), panel.right());
        let inch = Pt::inches;
        let read_top = (bottom - inch(2.75)).max(panel.y);
        let read_area = Rect::new(
            panel.x + inch(0.5),
            read_top,
            panel.width - inch(1.0),
            bottom - inch(0.625) - read_top,
        );
        let barcode_clear = Rect::new(right - inch(4.75), bottom - inch(0.625), inch(4.75), inch(0.625));
        let low = panel.height < inch(4.3);
        let (label_width, label_height) =
            (inch(4.0).min(panel.width * 0.5), inch(if low { 1.0 } else { 1.75 }));
        let block_bottom = bottom - inch(0.75);
        let address_block = Rect::new(
            right - inch(0.75) - label_width,
            block_bottom - label_height,
            label_width,
            label_height,
        );
        let only_top = (address_block.y - inch(0.25)).max(read_top);
        let address_only = Rect::new(read_area.x, only_top, read_area.width, read_area.bottom() - only_top);
        let top = panel.y + SAFE;
        let field = if low { inch(0.85) } else { inch(1.0) };
        let indicia = Rect::new(right - SAFE - inch(1.5), top, inch(1.5), field);
        let return_address =
            Rect::new(panel.x + SAFE, top, (panel.width * 0.4).min(inch(3.0)), field.min(inch(0.9)));
        let message_top = top + field + inch(0.1);
        let message_height = only_top - inch(0.1) - message_top;
        let message = if message_height < LOWEST_MESSAGE {
            Rect::new(panel.x + SAFE, message_top, Pt::ZERO, Pt::ZERO)
        } else {
            Rect::new(panel.x + SAFE, message_top, panel.width - SAFE * 2.0, message_height)
        };
        let small_top = read_area.bottom() + Pt(3.0);
        let small_print = if message.width > Pt::ZERO {
            let width = barcode_clear.x - panel.x - SAFE - Pt(9.0);
            Rect::new(panel.x + SAFE, small_top, width, bottom - SAFE - small_top)
        } else {
            // A low piece is narrow left of the barcode: the small print takes the room that bears no message.
            Rect::new(panel.x + SAFE, message_top, panel.width - SAFE * 2.0, message_height)
        };
        Self {
            panel,
            class,
            read_area,
            address_only,
            barcode_clear,
            address_block,
            indicia,
            return_address,
            message,
            small_print,
        }
    }

    /// The zones of a flat: the address in the top half (saturation flats; PB 22312 and later summaries), no
    /// machine barcode to keep clear. The address block and what surrounds it are ours.
    pub fn flat(panel: Rect) -> Self {
        let inch = Pt::inches;
        let half = panel.y + panel.height / 2.0;
        let top = panel.y + SAFE;
        let indicia = Rect::new(panel.right() - SAFE - inch(1.5), top, inch(1.5), inch(1.0));
        let return_address = Rect::new(panel.x + SAFE, top, inch(3.0), inch(0.9));
        let block_top = top + inch(1.25);
        let block_height = inch(1.75).min(half - block_top - inch(0.1));
        let address_block =
            Rect::new(panel.right() - inch(0.75) - inch(4.0), block_top, inch(4.0), block_height);
        let only = Rect::new(
            address_block.x - inch(0.25),
            address_block.y - inch(0.1),
            panel.right() - SAFE - address_block.x + inch(0.25),
            address_block.height + inch(0.2),
        );
        let message_top = half + inch(0.1);
        let small = inch(0.35);
        let message = Rect::new(
            panel.x + SAFE,
            message_top,
            panel.width - SAFE * 2.0,
            panel.bottom() - SAFE - small - message_top,
        );
        let small_print = Rect::new(
            panel.x + SAFE,
            panel.bottom() - SAFE - small + Pt(4.0),
            panel.width - SAFE * 2.0,
            small - Pt(4.0),
        );
        Self {
            panel,
            class: MailClass::Flat,
            read_area: only,
            address_only: only,
            barcode_clear: Rect::new(panel.right(), panel.bottom(), Pt::ZERO, Pt::ZERO),
            address_block,
            indicia,
            return_address,
            message,
            small_print,
        }
    }
}
