//! Words stand out from what they are printed on: on the screen by WCAG's formula, on paper by how dark the plates
//! print.

use super::{Sheet, pages};
use crate::display::{Item, Role};
use crate::finding::PreflightItem;
use crate::ink::Ink;

/// WCAG 2.2, 1.4.3: text against its ground.
const LEAST_RATIO: f64 = 4.5;
/// How many percent of black a text and its ground differ by at least, once every ink is counted as the grey it
/// photocopies to. Ours: what is under that is lost on a worn label and on an office copier. No source.
const LEAST_DIFFERENCE: u16 = 45;

/// Relative luminance (WCAG 2.2, with the threshold of IEC 61966-2-1).
fn luminance(screen: [u8; 3]) -> f64 {
    let [r, g, b] = screen.map(|part| {
        let part = f64::from(part) / 255.0;
        if part <= 0.04045 { part / 12.92 } else { libm::pow((part + 0.055) / 1.055, 2.4) }
    });
    0.2126 * r + 0.7152 * g + 0.0722 * b
}

/// The contrast ratio of two inks on the screen, 1 to 21.
pub(crate) fn ratio(a: Ink, b: Ink) -> f64 {
    let (a, b) = (luminance(a.screen), luminance(b.screen));
    (a.max(b) + 0.05) / (a.min(b) + 0.05)
}

/// The percent of black that an ink prints as dark as: its black plate, and the other plates by how much of the light
/// they take (the weights of luma: cyan takes red, magenta green, yellow blue).
fn black(ink: Ink) -> u16 {
    let [c, m, y, k] = ink.cmyk.map(u32::from);
    let grey = (c * 30 + m * 59 + y * 11 + 50) / 100;
    u16::try_from((grey + k).min(100)).unwrap_or(100)
}

/// The percent of black by which a text differs from its ground on the press. Black text prints over its ground.
pub(crate) fn difference(text: Ink, ground: Ink) -> u16 {
    black(text).abs_diff(black(ground))
}

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    let mut found = Vec::new();
    let mut least: Option<(f64, u16)> = None;
    for (index, page) in pages(sheet) {
        for (at, item) in page.items.iter().enumerate() {
            let Item::Text(line) = item else { continue };
            if line.role == Role::Slug {
                continue;
            }
            for &ground in sheet.grounds.below(index, at) {
                let (ratio, difference) = (ratio(line.ink, ground), difference(line.ink, ground));
                least = Some(least.map_or((ratio, difference), |(r, d)| (r.min(ratio), d.min(difference))));
                let faint = ratio < LEAST_RATIO;
                let flat = sheet.ink_limit.is_some() && difference < LEAST_DIFFERENCE;
                if faint || flat {
                    let message = format!(
                        "“{}” on page {} hardly stands out from its ground: contrast {ratio:.1}:1 (at least \
                         {LEAST_RATIO}:1), {difference} % of black apart (at least {LEAST_DIFFERENCE} %); choose \
                         other inks",
                        line.text,
                        index + 1
                    );
                    found.push(
                        PreflightItem::error("contrast-low", message)
                            .arg("text", &line.text)
                            .arg("ratio", format!("{ratio:.1}"))
                            .arg("least", LEAST_RATIO)
                            .arg("difference", difference)
                            .arg("apart", LEAST_DIFFERENCE)
                            .at(index, line.rect),
                    );
                    break;
                }
            }
        }
    }
    if let (true, Some((ratio, difference))) = (found.is_empty(), least) {
        // Rounded down: the least is not to look like more than it is.
        let ratio = format!("{:.1}", (ratio * 10.0).floor() / 10.0);
        let message = format!(
            "words stand out from their grounds: contrast at least {ratio}:1, at least {difference} % of black apart"
        );
        found
            .push(PreflightItem::pass("contrast", message).arg("ratio", ratio).arg("difference", difference));
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Values of CHECK-VALUES "Contrast on white" (WCAG 2.2 formula).
    #[test]
    fn the_formula_is_right() {
        let ink = |screen| Ink { cmyk: [0; 4], screen };
        for (colour, expected) in [
            ([0; 3], 21.0),
            ([0x59; 3], 7.0047),
            ([0x76; 3], 4.5422),
            ([0x77; 3], 4.4781),
            ([255, 0, 0], 3.9985),
            ([0, 0, 255], 8.5925),
            ([0, 128, 0], 5.1374),
            ([255, 255, 0], 1.0738),
        ] {
            let found = ratio(ink(colour), Ink::PAPER);
            assert!((found - expected).abs() < 0.0001, "{colour:?}: {found}");
        }
    }

    #[test]
    fn black_is_what_a_copier_sees() {
        assert_eq!(black(Ink::BLACK), 100);
        assert_eq!(black(Ink::PAPER), 0);
        assert_eq!(difference(Ink::BLACK, Ink::PAPER), 100);
        // Yellow takes hardly any light, all four inks together all of it.
        assert_eq!(black(Ink { cmyk: [0, 0, 100, 0], screen: [0; 3] }), 11);
        assert_eq!(black(Ink::REGISTRATION), 100);
    }

    /// Words on their grounds: at least 4.5:1 (WCAG 2.2, 1.4.3).
    #[test]
    fn every_pair_in_use_has_contrast() {
        let pairs = [
            (Ink::PAPER, Ink::BAND),
            (Ink::PAPER, Ink::YES),
            (Ink::PAPER, Ink::NO),
            (Ink::PAPER, Ink::ELSEWHERE),
            (Ink::BLACK, Ink::CAUTION),
            (Ink::BLACK, Ink::PAPER),
            (Ink::BLACK, Ink::YES_TINT),
            (Ink::BLACK, Ink::NO_TINT),
            (Ink::BLACK, Ink::ELSEWHERE_TINT),
            (Ink::BLACK, Ink::CAUTION_TINT),
        ];
        for (ink, ground) in pairs {
            let found = ratio(ink, ground);
            assert!(found >= LEAST_RATIO, "{ink:?} on {ground:?}: {found:.2}");
            let apart = difference(ink, ground);
            assert!(apart >= LEAST_DIFFERENCE, "{ink:?} on {ground:?}: {apart} %");
        }
        assert!(ratio(Ink::PAPER, Ink::CAUTION) < LEAST_RATIO);
        assert!(difference(Ink::PAPER, Ink::CAUTION) < LEAST_DIFFERENCE);
    }
}
