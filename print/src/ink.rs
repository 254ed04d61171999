//! The inks sheets are printed with, each as CMYK for the press and as sRGB for the screen.
//!
//! One accent per verdict, and never colour alone: each verdict has its own shape and word too, and the
//! accents differ in lightness, so that a photocopy still tells them apart.

use serde::{Deserialize, Serialize};

/// The most ink paper takes at one place, as the sum of the four plates' percentages: "SWOP 300 %", "GRACoL,
/// FOGRA51/52 300" (print specifications, CHECK-VALUES "Post and print").
pub const INK_LIMIT: u16 = 300;

/// An ink: percentages of the four plates, and what a screen shows for it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Ink {
    /// Cyan, magenta, yellow, black, each 0 to 100.
    pub cmyk: [u8; 4],
    /// Red, green, blue for the preview.
    pub screen: [u8; 3],
}

impl Ink {
    const fn new(cmyk: [u8; 4], screen: [u8; 3]) -> Self {
        Self { cmyk, screen }
    }

    /// Plain black: text, codes, marks.
    pub const BLACK: Self = Self::new([0, 0, 0, 100], [0x1d, 0x1d, 0x1b]);
    /// Quieter black for small print.
    pub const GREY: Self = Self::new([0, 0, 0, 75], [0x57, 0x57, 0x56]);
    /// Hairlines between rows.
    pub const RULE: Self = Self::new([0, 0, 0, 25], [0xd0, 0xd0, 0xcf]);
    /// Every plate: for the marks by which plates are laid over each other, outside the sheet.
    pub const REGISTRATION: Self = Self::new([100, 100, 100, 100], [0, 0, 0]);
    /// Bare paper.
    pub const PAPER: Self = Self::new([0, 0, 0, 0], [0xff, 0xff, 0xff]);
    /// The title band: a deep spruce.
    pub const BAND: Self = Self::new([85, 50, 55, 55], [0x1c, 0x40, 0x42]);
    /// "Yes": leaf green.
    pub const YES: Self = Self::new([85, 20, 90, 15], [0x14, 0x7a, 0x43]);
    /// Behind "yes".
    pub const YES_TINT: Self = Self::new([10, 0, 12, 0], [0xe9, 0xf4, 0xe6]);
    /// "No": madder red.
    pub const NO: Self = Self::new([15, 95, 75, 15], [0xb3, 0x25, 0x38]);
    /// Behind "no".
    pub const NO_TINT: Self = Self::new([0, 9, 6, 0], [0xfc, 0xed, 0xea]);
    /// "Elsewhere": harbour blue.
    pub const ELSEWHERE: Self = Self::new([95, 65, 10, 10], [0x14, 0x54, 0x92]);
    /// Behind "elsewhere".
    pub const ELSEWHERE_TINT: Self = Self::new([10, 3, 0, 0], [0xe7, 0xf1, 0xfa]);
    /// "Caution": ochre, always under black.
    pub const CAUTION: Self = Self::new([0, 35, 95, 0], [0xf7, 0xb3, 0x1a]);
    /// Behind "caution".
    pub const CAUTION_TINT: Self = Self::new([0, 6, 22, 0], [0xff, 0xf1, 0xd1]);

    /// The sum of the four plates, in per cent.
    pub fn coverage(self) -> u16 {
        self.cmyk.iter().map(|&part| u16::from(part)).sum()
    }

    /// Whether only the black plate prints.
    pub const fn is_black_only(self) -> bool {
        matches!(self.cmyk, [0, 0, 0, k] if k > 0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Also with black printed over the ground.
    #[test]
    fn every_ink_keeps_the_limit() {
        for ink in [Ink::BAND, Ink::YES, Ink::NO, Ink::ELSEWHERE, Ink::CAUTION] {
            assert!(ink.coverage() <= INK_LIMIT, "{ink:?}");
        }
        for ground in [Ink::YES_TINT, Ink::NO_TINT, Ink::ELSEWHERE_TINT, Ink::CAUTION_TINT, Ink::CAUTION] {
            assert!(ground.coverage() + Ink::BLACK.coverage() <= INK_LIMIT, "{ground:?}");
        }
    }
}
