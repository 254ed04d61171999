//! Numbers as a language and region write them.

use crate::lang::{Direction, Lang};

/// The symbols numbers are written with (CLDR `numbers/symbols`).
///
/// Digits are 0-9 in every language. CLDR gives Arabic-Indic digits for some Arabic regions, but
/// the numbers on this product's screens are matched with things that carry Western digits: resin
/// marks, sizes on packages, house numbers, telephones, opening hours on a sign. One set of digits
/// everywhere is one thing less to get wrong.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NumberSymbols {
    /// The regions it holds for; none: everywhere no other row names.
    pub regions: &'static [&'static str],
    /// Between the whole number and its fraction.
    pub decimal: char,
    /// Between groups of three digits.
    pub group: char,
    /// How many digits must stand before the first separator for grouping to begin
    /// (CLDR `minimumGroupingDigits`: with 2, "1234" but "12.345").
    pub min_group: u8,
    /// How many digits stand in the groups left of the last three: 3, but 2 in India
    /// (CLDR pattern "#,##,##0": "12,34,567").
    pub next_groups: u8,
}

/// How the numbers of one language are written.
#[derive(Debug, Clone, Copy)]
pub(crate) struct NumberStyle {
    symbols: NumberSymbols,
    direction: Direction,
}

const PLAIN: NumberSymbols =
    NumberSymbols { regions: &[], decimal: '.', group: ',', min_group: 1, next_groups: 3 };

impl NumberStyle {
    pub(crate) fn of(lang: &Lang) -> Self {
        let rows = lang.entry().map_or(&[] as &[_], |language| language.numbers);
        let symbols = lang
            .region()
            .and_then(|region| rows.iter().find(|row| row.regions.contains(&region)))
            .or_else(|| rows.first())
            .copied()
            .unwrap_or(PLAIN);
        Self { symbols, direction: lang.direction() }
    }

    /// Writes a number with at least `min` and at most `max` decimals, rounding half to even.
    pub(crate) fn write(self, value: f64, min: usize, max: usize) -> String {
        let Some(fixed) = fixed(value, max.max(min)) else { return "—".to_owned() };
        let (whole, fraction) = fixed.split_once('.').unwrap_or((&fixed, ""));
        let mut kept = fraction.trim_end_matches('0').len().max(min);
        kept = kept.min(fraction.len());
        let fraction = fraction.get(..kept).unwrap_or_default();
        let mut out = String::with_capacity(fixed.len() + 8);
        let is_zero = fixed.bytes().all(|b| matches!(b, b'0' | b'.'));
        if value < 0.0 && !is_zero {
            if self.direction == Direction::RightToLeft {
                // CLDR `ar` (latn): the sign keeps its place before the digits.
                out.push('\u{200e}');
            }
            out.push('-');
        }
        let grouped = whole.len() >= 3 + usize::from(self.symbols.min_group);
        for (at, digit) in whole.chars().enumerate() {
            // Digits from here on, less the last three: where they fill whole groups, one ends here.
            let before_last = (whole.len() - at).checked_sub(3);
            let ends = before_last
                .is_some_and(|digits| digits.is_multiple_of(usize::from(self.symbols.next_groups.max(1))));
            if grouped && at > 0 && ends {
                out.push(self.symbols.group);
            }
            out.push(digit);
        }
        if !fraction.is_empty() {
            out.push(self.symbols.decimal);
            out.push_str(fraction);
        }
        out
    }
}

/// The most decimals that are ever written.
const MOST_DECIMALS: usize = 6;

/// The absolute value of a number as a whole number of the smallest step that so many decimals show,
/// at most [`MOST_DECIMALS`], rounded half to even. `None` for what is not finite or has more than
/// 19 digits: nothing on a screen has.
///
/// The library's own writing of floats is exact for every number and weighs phones 10 KB.
pub(crate) fn scaled(value: f64, decimals: usize) -> Option<u64> {
    if !value.is_finite() {
        return None;
    }
    let power = u32::try_from(decimals.min(MOST_DECIMALS)).unwrap_or_default();
    let bits = value.to_bits();
    let (exponent, fraction) = ((bits >> 52) & 0x7ff, bits & ((1 << 52) - 1));
    // IEEE 754: below the smallest exponent the leading one is not there.
    let (mantissa, exponent) = if exponent == 0 { (fraction, 1) } else { (fraction | 1 << 52, exponent) };
    let steps = u128::from(mantissa) * u128::from(10_u64.pow(power));
    match u32::try_from(exponent).unwrap_or_default().checked_sub(1075) {
        Some(up) if up < 11 => u64::try_from(steps << up).ok(),
        Some(_) => None,
        None => {
            let down = 1075 - u32::try_from(exponent).unwrap_or_default();
            if down > 100 {
                return Some(0);
            }
            let (whole, rest) = (steps >> down, steps & ((1 << down) - 1));
            let half = 1_u128 << (down - 1);
            let up = rest > half || (rest == half && whole & 1 == 1);
            u64::try_from(whole + u128::from(up)).ok()
        }
    }
}

/// The absolute value of a number with so many decimals, at most [`MOST_DECIMALS`].
fn fixed(value: f64, decimals: usize) -> Option<String> {
    let decimals = decimals.min(MOST_DECIMALS);
    let mut digits = scaled(value, decimals)?.to_string();
    if decimals > 0 {
        while digits.len() <= decimals {
            digits.insert(0, '0');
        }
        digits.insert(digits.len() - decimals, '.');
    }
    Some(digits)
}

/// A number from its thousandths.
#[expect(clippy::cast_precision_loss, reason = "a number shown is far below 2^53")]
pub(crate) fn whole_thousandths(thousandths: i64) -> f64 {
    thousandths as f64 / 1e3
}

#[cfg(test)]
mod tests {
    use super::*;

    proptest::proptest! {
        /// The standard library writes every float exactly and rounds half to even.
        #[test]
        fn numbers_are_written_as_the_standard_library_does(
            value in proptest::prop_oneof![
                -1e9..1e9_f64,
                -10.0..10.0_f64,
                (-4_000_000_i32..4_000_000).prop_map(|n| f64::from(n) / 8192.0),
                (-4_000_000_i32..4_000_000).prop_map(|n| f64::from(n) / 1000.0),
            ],
            decimals in 0_usize..=MOST_DECIMALS,
        ) {
            proptest::prop_assert_eq!(fixed(value, decimals), Some(format!("{:.*}", decimals, value.abs())));
        }

        #[test]
        fn any_number_can_be_written(value in proptest::num::f64::ANY, decimals in 0_usize..30) {
            let written = fixed(value, decimals);
            proptest::prop_assert!(written.is_some() || !value.is_finite() || value.abs() > 1e12);
        }
    }

    use proptest::strategy::Strategy as _;
}
