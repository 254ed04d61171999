//! Finished sizes: the usual ones by name, and those that a person types.

use serde::{Deserialize, Serialize};

use crate::unit::Mm;

/// A finished size.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SheetSize {
    /// Width, as the sheet is read.
    pub width: Mm,
    /// Height.
    pub height: Mm,
    /// Radius of the corners. None means what is usual for the sheet; zero means square corners.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub corner: Option<Mm>,
}

/// The named sizes, upright. Inches are exact; A4 and A5 are ISO 216 (210 x 297 and 148 x 210 mm).
pub const NAMED_SIZES: [(&str, SheetSize); 12] = [
    ("7x9in", SheetSize::new(Mm::inches(7.0), Mm::inches(9.0))),
    ("8x12in", SheetSize::new(Mm::inches(8.0), Mm::inches(12.0))),
    ("letter", SheetSize::new(Mm::inches(8.5), Mm::inches(11.0))),
    ("a4", SheetSize::new(Mm(210.0), Mm(297.0))),
    ("a5", SheetSize::new(Mm(148.0), Mm(210.0))),
    ("9x6in", SheetSize::new(Mm::inches(9.0), Mm::inches(6.0))),
    ("8.5x5.5in", SheetSize::new(Mm::inches(8.5), Mm::inches(5.5))),
    ("11x8.5in", SheetSize::new(Mm::inches(11.0), Mm::inches(8.5))),
    ("18x24in", SheetSize::new(Mm::inches(18.0), Mm::inches(24.0))),
    ("12x18in", SheetSize::new(Mm::inches(12.0), Mm::inches(18.0))),
    ("a3", SheetSize::new(Mm(297.0), Mm(420.0))),
    ("115mm", SheetSize::new(Mm(115.0), Mm(115.0))),
];

impl SheetSize {
    /// A size with the sheet's usual corners.
    pub const fn new(width: Mm, height: Mm) -> Self {
        Self { width, height, corner: None }
    }

    /// The size of that name.
    pub fn named(name: &str) -> Option<Self> {
        NAMED_SIZES.iter().find(|(known, _)| *known == name).map(|(_, size)| *size)
    }

    /// Reads a size as people type it: a name (`a4`, `letter`), or width and height with their unit
    /// (`8 x 12 in`, `203×305 mm`, `8.5in x 280mm`); one number with its unit (`115 mm`) is a diameter.
    /// Nothing when it cannot be read. Whether the size makes sense for a sheet is asked when it is made.
    pub fn parse(text: &str) -> Option<Self> {
        let text = text.trim().to_lowercase();
        if let Some(size) = Self::named(&text) {
            return Some(size);
        }
        let mut parts = text.split(['x', '×', '*']);
        let (first, second, more) = (parts.next()?, parts.next(), parts.next());
        if more.is_some() {
            return None;
        }
        let Some(second) = second else {
            let (number, unit) = length(first)?;
            let side = in_unit(number, unit?)?;
            return Some(Self::new(side, side));
        };
        let (height, unit) = length(second)?;
        let unit = unit?;
        let (width, own) = length(first)?;
        Some(Self::new(in_unit(width, own.unwrap_or(unit))?, in_unit(height, unit)?))
    }

    /// One length as people type it, with its unit: `6 mm`, `1/4 in` is written `0.25 in`.
    pub fn parse_length(text: &str) -> Option<Mm> {
        let lower = text.trim().to_lowercase();
        let (number, unit) = length(&lower)?;
        if number == 0.0 {
            return Some(Mm::ZERO);
        }
        in_unit(number, unit?)
    }
}

/// A number and the unit after it.
fn length(text: &str) -> Option<(f64, Option<&str>)> {
    let text = text.trim();
    let end =
        text.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',' | '-'))).unwrap_or(text.len());
    let (number, unit) = text.split_at_checked(end)?;
    let number: f64 = number.trim().replace(',', ".").parse().ok()?;
    let unit = unit.trim();
    Some((number, (!unit.is_empty()).then_some(unit)))
}

fn in_unit(number: f64, unit: &str) -> Option<Mm> {
    match unit {
        "mm" => Some(Mm(number)),
        "cm" => Some(Mm(number * 10.0)),
        "m" => Some(Mm(number * 1000.0)),
        "in" | "inch" | "inches" | "\"" | "″" => Some(Mm::inches(number)),
        "ft" => Some(Mm::inches(number * 12.0)),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sizes_are_read_as_people_type_them() {
        let size = |width: f64, height: f64| Some((width, height));
        for (text, expected) in [
            ("a4", size(210.0, 297.0)),
            (" Letter ", size(215.9, 279.4)),
            ("8 x 12 in", size(203.2, 304.8)),
            ("8x12in", size(203.2, 304.8)),
            ("8.5×11 inches", size(215.9, 279.4)),
            ("8,5 x 11 in", size(215.9, 279.4)),
            ("8in x 300 mm", size(203.2, 300.0)),
            ("20*30 cm", size(200.0, 300.0)),
            ("115 mm", size(115.0, 115.0)),
            ("10 m x 10 m", size(10_000.0, 10_000.0)),
            ("0 x 0 mm", size(0.0, 0.0)),
            ("-5 x 9 in", size(-127.0, 228.6)),
            ("8 x 12", None),
            ("8 x 12 x 3 in", None),
            ("eight x 12 in", None),
            ("8 x 12 furlongs", None),
            ("x", None),
            ("", None),
            ("1.2.3 mm", None),
        ] {
            let read = SheetSize::parse(text);
            let same = match (read, expected) {
                (Some(read), Some((width, height))) => {
                    (read.width.0 - width).abs() < 1e-9 && (read.height.0 - height).abs() < 1e-9
                }
                (None, None) => true,
                _ => false,
            };
            assert!(same, "{text}: {read:?}");
        }
    }

    #[test]
    fn lengths_need_their_unit_unless_they_are_nothing() {
        assert_eq!(SheetSize::parse_length("0"), Some(Mm::ZERO));
        assert_eq!(SheetSize::parse_length("6 mm"), Some(Mm(6.0)));
        assert_eq!(SheetSize::parse_length("0.25in"), Some(Mm::inches(0.25)));
        assert_eq!(SheetSize::parse_length("6"), None);
        assert_eq!(SheetSize::parse_length("wide"), None);
    }
}
