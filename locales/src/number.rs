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
        if !value.is_finite() {
            return "—".to_owned();
        }
        let fixed = format!("{:.*}", max.max(min), value.abs());
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
