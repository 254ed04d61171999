//! Measures as people state them ("2 in", "1 1/2 gal", "10 lb"), kept word for word beside an exact
//! normalised value.
//!
//! Normalised units are whole numbers, so that comparing never depends on rounding of floats:
//! lengths in micrometres, volumes in nanolitres, masses in micrograms, counts in thousandths.
//! Factors are the exact definitions of NIST SP 811 (2008), Appendix B: 1 in = 25.4 mm,
//! 1 lb = 453.592 37 g, 1 US gal = 231 in³ = 3.785 411 784 L.

use serde::{Deserialize, Serialize};

/// What a measure measures; two measures compare only within one dimension.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Dimension {
    /// A length, normalised to micrometres.
    Length,
    /// A volume or capacity, normalised to nanolitres.
    Volume,
    /// A mass (people say weight), normalised to micrograms.
    Mass,
    /// A number of things, normalised to thousandths.
    Count,
}

/// A measure: the words it was stated in, and its value in the dimension's normalised unit.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Measure {
    /// The words as the coordinator wrote them, trimmed.
    pub stated: String,
    /// The value in the normalised unit of `dimension`; never negative.
    pub value: i64,
    /// What is measured.
    pub dimension: Dimension,
}

/// Why a stated measure could not be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum MeasureProblem {
    /// There is no number at the start.
    NoNumber,
    /// There is a number but no unit.
    NoUnit,
    /// The unit is not one we know.
    UnknownUnit,
    /// The unit belongs to another dimension (a weight where a length is needed).
    WrongDimension,
    /// The number is negative.
    Negative,
    /// The number is too large to mean anything (over a kilometre, a megalitre, a thousand tonnes).
    TooLarge,
}

impl MeasureProblem {
    /// A stable word for messages and machine output.
    #[must_use]
    pub fn code(self) -> &'static str {
        match self {
            Self::NoNumber => "no-number",
            Self::NoUnit => "no-unit",
            Self::UnknownUnit => "unknown-unit",
            Self::WrongDimension => "wrong-dimension",
            Self::Negative => "negative",
            Self::TooLarge => "too-large",
        }
    }
}

/// A unit: its dimension and its exact size in normalised units as a fraction.
type Unit = (Dimension, i128, i128);

/// Units by every spelling accepted, in lower case. Fluid ounces of a volume fact may be written "oz":
/// `parse` resolves that by the dimension wanted.
const UNITS: &[(&[&str], Unit)] = &[
    (&["mm", "millimeter", "millimeters", "millimetre", "millimetres"], (Dimension::Length, 1_000, 1)),
    (&["cm", "centimeter", "centimeters", "centimetre", "centimetres"], (Dimension::Length, 10_000, 1)),
    (&["m", "meter", "meters", "metre", "metres"], (Dimension::Length, 1_000_000, 1)),
    (&["in", "inch", "inches", "\"", "″"], (Dimension::Length, 25_400, 1)),
    (&["ft", "foot", "feet", "'", "′"], (Dimension::Length, 304_800, 1)),
    (&["yd", "yard", "yards"], (Dimension::Length, 914_400, 1)),
    (&["ml", "milliliter", "milliliters", "millilitre", "millilitres"], (Dimension::Volume, 1_000_000, 1)),
    (&["cl", "centiliter", "centiliters", "centilitre", "centilitres"], (Dimension::Volume, 10_000_000, 1)),
    (&["l", "liter", "liters", "litre", "litres"], (Dimension::Volume, 1_000_000_000, 1)),
    (&["fl oz", "floz", "fluid ounce", "fluid ounces"], (Dimension::Volume, 3_785_411_784, 128)),
    (&["cup", "cups"], (Dimension::Volume, 3_785_411_784, 16)),
    (&["pt", "pint", "pints"], (Dimension::Volume, 3_785_411_784, 8)),
    (&["qt", "quart", "quarts"], (Dimension::Volume, 3_785_411_784, 4)),
    (&["gal", "gallon", "gallons"], (Dimension::Volume, 3_785_411_784, 1)),
    (&["g", "gram", "grams"], (Dimension::Mass, 1_000_000, 1)),
    (&["kg", "kilo", "kilos", "kilogram", "kilograms"], (Dimension::Mass, 1_000_000_000, 1)),
    (&["oz", "ounce", "ounces"], (Dimension::Mass, 453_592_370, 16)),
    (&["lb", "lbs", "pound", "pounds"], (Dimension::Mass, 453_592_370, 1)),
    (&["piece", "pieces", "items", "x"], (Dimension::Count, 1_000, 1)),
];

/// Larger than anything a household puts out, in normalised units: one kilometre, one megalitre,
/// one thousand tonnes, a million pieces. It also keeps all later arithmetic inside an `i64`.
const LARGEST: i128 = 1_000_000_000_000_000;

impl Measure {
    /// Reads a measure of the wanted dimension.
    ///
    /// Numbers may be whole, decimal ("1.5", "1,5"), a fraction ("1/2") or mixed ("2 1/2").
    /// A count needs no unit; every other dimension does.
    ///
    /// # Errors
    /// Says which part could not be read; see [`MeasureProblem`].
    ///
    /// ```
    /// use guide_data::{Dimension, Measure};
    /// let two_inches = Measure::parse("2 in", Dimension::Length).expect("a length");
    /// assert_eq!(two_inches.value, 50_800); // micrometres: 2 x 25.4 mm, NIST SP 811
    /// assert_eq!(two_inches.stated, "2 in");
    /// ```
    pub fn parse(stated: &str, wanted: Dimension) -> Result<Self, MeasureProblem> {
        let stated = stated.trim();
        if stated.starts_with('-') || stated.starts_with('−') {
            return Err(MeasureProblem::Negative);
        }
        let split = stated
            .char_indices()
            .find(|(_, c)| !(c.is_ascii_digit() || matches!(c, '.' | ',' | '/' | ' ' | '½' | '¼' | '¾')))
            .map_or(stated.len(), |(at, _)| at);
        let (number, unit) = stated.split_at_checked(split).unwrap_or((stated, ""));
        let (numerator, denominator) = number_of(number.trim()).ok_or(MeasureProblem::NoNumber)?;
        let unit = unit.trim().trim_end_matches('.').to_ascii_lowercase();
        let (dimension, size, per) = if unit.is_empty() {
            if wanted != Dimension::Count {
                return Err(MeasureProblem::NoUnit);
            }
            (Dimension::Count, 1_000, 1)
        } else {
            let name = match (unit.as_str(), wanted) {
                ("oz" | "ounce" | "ounces", Dimension::Volume) => "fl oz",
                (other, _) => other,
            };
            UNITS
                .iter()
                .find(|(names, _)| names.contains(&name))
                .map(|(_, unit)| *unit)
                .ok_or(MeasureProblem::UnknownUnit)?
        };
        if dimension != wanted {
            return Err(MeasureProblem::WrongDimension);
        }
        let top = numerator.checked_mul(size).ok_or(MeasureProblem::TooLarge)?;
        let bottom = denominator.checked_mul(per).ok_or(MeasureProblem::TooLarge)?;
        // Half up; only fluid ounces and ounces are not whole numbers of the normalised unit.
        let value = (top.checked_mul(2).ok_or(MeasureProblem::TooLarge)? + bottom) / (bottom * 2);
        if value > LARGEST {
            return Err(MeasureProblem::TooLarge);
        }
        Ok(Self {
            stated: stated.to_owned(),
            value: i64::try_from(value).map_err(|_| MeasureProblem::TooLarge)?,
            dimension,
        })
    }
}

/// A number as an exact fraction: "2", "2.5", "2,5", "1/2", "2 1/2", "2½".
fn number_of(text: &str) -> Option<(i128, i128)> {
    let spaced = text.replace('½', " 1/2").replace('¼', " 1/4").replace('¾', " 3/4");
    let mut parts = spaced.split_whitespace();
    let first = simple_number(parts.next()?)?;
    let Some(second) = parts.next() else { return Some(first) };
    if parts.next().is_some() || !second.contains('/') || first.1 != 1 {
        return None;
    }
    let (n, d) = simple_number(second)?;
    Some((first.0.checked_mul(d)?.checked_add(n)?, d))
}

fn simple_number(text: &str) -> Option<(i128, i128)> {
    if let Some((top, bottom)) = text.split_once('/') {
        let (top, bottom) = (whole(top)?, whole(bottom)?);
        return (bottom > 0).then_some((top, bottom));
    }
    let Some((before, after)) = text.split_once(['.', ',']) else {
        return Some((whole(text)?, 1));
    };
    let scale = 10_i128.checked_pow(u32::try_from(after.len()).ok()?)?;
    let before = if before.is_empty() { 0 } else { whole(before)? };
    Some((before.checked_mul(scale)?.checked_add(whole(after)?)?, scale))
}

/// Up to twelve digits: more cannot be a measure, and would overflow the exact arithmetic.
fn whole(text: &str) -> Option<i128> {
    if text.is_empty() || text.len() > 12 || !text.bytes().all(|b| b.is_ascii_digit()) {
        return None;
    }
    text.parse().ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(stated: &str, dimension: Dimension, expected: Result<i64, MeasureProblem>) {
        assert_eq!(Measure::parse(stated, dimension).map(|m| m.value), expected, "{stated}");
    }

    /// NIST SP 811 (2008), Appendix B.8: exact factors.
    #[test]
    fn lengths_volumes_and_masses_follow_nist_sp_811() {
        use Dimension::{Length, Mass, Volume};
        check("1 in", Length, Ok(25_400));
        check("2\"", Length, Ok(50_800));
        check("1 ft", Length, Ok(304_800));
        check("1 yd", Length, Ok(914_400));
        check("5 cm", Length, Ok(50_000));
        check("1 gal", Volume, Ok(3_785_411_784));
        check("2 gal", Volume, Ok(7_570_823_568));
        check("4 quarts", Volume, Ok(3_785_411_784));
        check("16 fl oz", Volume, Ok(473_176_473));
        check("16 oz", Volume, Ok(473_176_473));
        check("1 pint", Volume, Ok(473_176_473));
        check("1 L", Volume, Ok(1_000_000_000));
        check("10 lb", Mass, Ok(4_535_923_700));
        check("16 oz", Mass, Ok(453_592_370));
        check("1 kg", Mass, Ok(1_000_000_000));
    }

    #[test]
    fn numbers_are_read_as_people_write_them() {
        use Dimension::{Count, Length};
        check("2 1/2 in", Length, Ok(63_500));
        check("2½ in", Length, Ok(63_500));
        check("2.5 in", Length, Ok(63_500));
        check("2,5 cm", Length, Ok(25_000));
        check(".5 in", Length, Ok(12_700));
        check("3", Count, Ok(3_000));
        check("3 pieces", Count, Ok(3_000));
    }

    #[test]
    fn what_cannot_be_read_says_why() {
        use Dimension::{Length, Volume};
        check("2", Length, Err(MeasureProblem::NoUnit));
        check("in", Length, Err(MeasureProblem::NoNumber));
        check("", Length, Err(MeasureProblem::NoNumber));
        check("2 furlongs", Length, Err(MeasureProblem::UnknownUnit));
        check("2 lb", Length, Err(MeasureProblem::WrongDimension));
        check("2 in", Volume, Err(MeasureProblem::WrongDimension));
        check("-2 in", Length, Err(MeasureProblem::Negative));
        check("1/0 in", Length, Err(MeasureProblem::NoNumber));
        check("99999999999 m", Length, Err(MeasureProblem::TooLarge));
        check("999999999999999999999999 m", Length, Err(MeasureProblem::NoNumber));
    }
}
