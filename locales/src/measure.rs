//! Measures in the reader's units.
//!
//! Factors are the exact definitions of NIST SP 811 (2008), Appendix B: 1 in = 25.4 mm,
//! 1 lb = 453.592 37 g, 1 US gal = 231 in³ = 3785.411 784 mL.

use crate::format::Filled;
use crate::messages::Messages;

/// A system of units.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Units {
    /// Metric units alone.
    Metric,
    /// Inches, gallons, pounds and miles, with the metric measure beside them.
    Us,
    /// Metric measures, but roads in miles.
    Uk,
}

impl Units {
    /// The units of a region (CLDR 48 `measurementSystem`: US customary in US and LR, UK in GB).
    /// Without a region: metric.
    #[must_use]
    pub fn of_region(region: Option<&str>) -> Self {
        match region {
            Some("US" | "LR") => Self::Us,
            Some("GB") => Self::Uk,
            _ => Self::Metric,
        }
    }
}

/// A length, volume, mass or count, whatever unit it was stated in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Quantity {
    kind: Kind,
    /// In millimetres, millilitres, grams or pieces.
    value: f64,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Kind {
    Length,
    Volume,
    Mass,
    Count,
}

#[expect(clippy::cast_precision_loss, reason = "a measure has far fewer than 53 significant bits")]
impl Quantity {
    /// A length in millimetres.
    #[must_use]
    pub fn millimetres(value: f64) -> Self {
        Self { kind: Kind::Length, value }
    }

    /// A length in micrometres, the unit in which rules compare lengths.
    #[must_use]
    pub fn micrometres(value: i64) -> Self {
        Self::millimetres(value as f64 / 1e3)
    }

    /// A length in metres, such as the way to a site.
    #[must_use]
    pub fn metres(value: f64) -> Self {
        Self::millimetres(value * 1e3)
    }

    /// A volume in millilitres.
    #[must_use]
    pub fn millilitres(value: f64) -> Self {
        Self { kind: Kind::Volume, value }
    }

    /// A volume in nanolitres, the unit in which rules compare volumes.
    #[must_use]
    pub fn nanolitres(value: i64) -> Self {
        Self::millilitres(value as f64 / 1e6)
    }

    /// A mass in grams.
    #[must_use]
    pub fn grams(value: f64) -> Self {
        Self { kind: Kind::Mass, value }
    }

    /// A mass in micrograms, the unit in which rules compare masses.
    #[must_use]
    pub fn micrograms(value: i64) -> Self {
        Self::grams(value as f64 / 1e6)
    }

    /// A number of things in thousandths, the unit in which rules compare counts.
    #[must_use]
    pub fn thousandths(value: i64) -> Self {
        Self { kind: Kind::Count, value: value as f64 / 1e3 }
    }
}

/// How closely a measure is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rounding {
    /// For residents: the roundest number within 2 percent. A measure that is a round number in
    /// the unit it was stated in stays exactly that.
    Everyday,
    /// For coordinators: three decimals.
    Exact,
}

/// The share by which an everyday number may differ from the true one.
const EVERYDAY_TOLERANCE: f64 = 0.02;
/// Two numbers this close are the same number in another unit: the rest is float noise.
const SAME: f64 = 1e-9;

/// A unit: its message key, its size in the kind's base unit, and whether it is customary, that
/// is, divided into halves and quarters rather than tenths.
#[derive(Debug, Clone, Copy)]
struct Unit {
    key: &'static str,
    size: f64,
    customary: bool,
}

const fn metric(key: &'static str, size: f64) -> Unit {
    Unit { key, size, customary: false }
}

const fn customary(key: &'static str, size: f64) -> Unit {
    Unit { key, size, customary: true }
}

const MILLIMETRE: Unit = metric("unit-mm", 1.0);
const CENTIMETRE: Unit = metric("unit-cm", 10.0);
const METRE: Unit = metric("unit-m", 1e3);
const KILOMETRE: Unit = metric("unit-km", 1e6);
const INCH: Unit = customary("unit-in", 25.4);
const FOOT: Unit = customary("unit-ft", 304.8);
const YARD: Unit = customary("unit-yd", 914.4);
const MILE: Unit = customary("unit-mi", 1_609_344.0);
const MILLILITRE: Unit = metric("unit-ml", 1.0);
const LITRE: Unit = metric("unit-l", 1e3);
const FLUID_OUNCE: Unit = customary("unit-fl-oz", 3_785.411_784 / 128.0);
const GALLON: Unit = customary("unit-gal", 3_785.411_784);
const GRAM: Unit = metric("unit-g", 1.0);
const KILOGRAM: Unit = metric("unit-kg", 1e3);
const OUNCE: Unit = customary("unit-oz", 453.592_37 / 16.0);
const POUND: Unit = customary("unit-lb", 453.592_37);
const PIECE: Unit = metric("unit-piece", 1.0);

impl Unit {
    fn of(quantity: Quantity, use_customary: bool) -> Self {
        // A hair of slack, so that a yard stated as 3 ft and kept as a float is still a yard.
        let at_least = |size: f64| quantity.value >= size * (1.0 - SAME);
        match (quantity.kind, use_customary) {
            (Kind::Length, true) => {
                let feet = quantity.value / FOOT.size;
                // Above a yard people count feet, unless inches alone say it without a fraction.
                let half_feet = is_multiple(feet, 0.5);
                if at_least(10.0 * FOOT.size) || (at_least(YARD.size) && half_feet) { FOOT } else { INCH }
            }
            (Kind::Length, false) => match quantity.value {
                _ if at_least(1e6) => KILOMETRE,
                _ if at_least(1e3) => METRE,
                _ if at_least(10.0) => CENTIMETRE,
                _ => MILLIMETRE,
            },
            (Kind::Volume, true)
                if at_least(GALLON.size) || is_multiple(quantity.value / GALLON.size, 0.5) =>
            {
                GALLON
            }
            (Kind::Volume, true) => FLUID_OUNCE,
            (Kind::Volume, false) if at_least(1e3) => LITRE,
            (Kind::Volume, false) => MILLILITRE,
            (Kind::Mass, true) if at_least(POUND.size) => POUND,
            (Kind::Mass, true) => OUNCE,
            (Kind::Mass, false) if at_least(1e3) => KILOGRAM,
            (Kind::Mass, false) => GRAM,
            (Kind::Count, _) => PIECE,
        }
    }
}

fn is_multiple(value: f64, step: f64) -> bool {
    let steps = value / step;
    steps > 0.5 && (steps - steps.round()).abs() <= SAME * steps.max(1.0)
}

/// Steps from coarse to fine. Customary measures are halved, metric ones divided by ten.
const CUSTOMARY_STEPS: &[f64] =
    &[1000.0, 500.0, 100.0, 50.0, 10.0, 5.0, 1.0, 0.5, 0.25, 0.125, 0.1, 0.05, 0.01, 0.005, 0.001];
const METRIC_STEPS: &[f64] =
    &[1000.0, 500.0, 100.0, 50.0, 10.0, 5.0, 1.0, 0.5, 0.1, 0.05, 0.01, 0.005, 0.001];

fn everyday(value: f64, unit: Unit) -> f64 {
    // The unit it was stated in shows itself: the number is round there, and stays as it is.
    let finest = if unit.customary { 0.125 } else { 0.1 };
    if is_multiple(value, finest) {
        return (value / finest).round() * finest;
    }
    let steps = if unit.customary { CUSTOMARY_STEPS } else { METRIC_STEPS };
    steps
        .iter()
        .map(|step| (value / step).round() * step)
        .find(|rounded| *rounded > 0.0 && (rounded - value).abs() <= EVERYDAY_TOLERANCE * value)
        .unwrap_or(value)
}

impl Messages {
    /// A measure in the reader's units: "2 in (5 cm)" in the United States, "5 cm" elsewhere.
    ///
    /// ```
    /// # #[cfg(feature = "bundled")] {
    /// use locales::{Lang, Quantity, Rounding, bundled};
    /// let us = bundled(&Lang::default().with_region("US"));
    /// // 2 in = 50.8 mm exactly (NIST SP 811).
    /// assert_eq!(us.measure(Quantity::millimetres(50.8), Rounding::Everyday), "2 in (5 cm)");
    /// # }
    /// ```
    #[must_use]
    pub fn measure(&self, quantity: Quantity, rounding: Rounding) -> String {
        if !quantity.value.is_finite() {
            return self.number(quantity.value, 0);
        }
        let metric = self.in_unit(quantity, Unit::of(quantity, false), rounding);
        if self.units() != Units::Us || quantity.kind == Kind::Count {
            return metric;
        }
        let customary = self.in_unit(quantity, Unit::of(quantity, true), rounding);
        self.pattern_text("measure-both", &Filled::new().text("first", &customary).text("second", &metric))
    }

    /// A measure in the reader's units with the words it was stated in beside it, unless they say
    /// the same: "5 cm (stated as 2 in)".
    #[must_use]
    pub fn measure_stated(&self, quantity: Quantity, stated: &str, rounding: Rounding) -> String {
        let shown = self.measure(quantity, rounding);
        let stated = stated.trim();
        let same = shown == stated || shown.strip_prefix(stated).is_some_and(|rest| rest.starts_with(" ("));
        if stated.is_empty() || same {
            return shown;
        }
        self.pattern_text("measure-stated", &Filled::new().text("measure", &shown).outside("stated", stated))
    }

    /// How far away something is: "1.2 mi", "800 m". Rounded to what a reader can use: tenths below
    /// ten, whole numbers above, tens of metres or feet nearby.
    #[must_use]
    pub fn distance(&self, away: Quantity) -> String {
        if !away.value.is_finite() || away.kind != Kind::Length {
            return self.measure(away, Rounding::Everyday);
        }
        let (near, far, switch) = match self.units() {
            Units::Metric => (METRE, KILOMETRE, KILOMETRE.size),
            Units::Us => (FOOT, MILE, MILE.size / 10.0),
            Units::Uk => (YARD, MILE, MILE.size / 10.0),
        };
        // 999 m would round to "1000 m": from where it does, it is written as the larger unit.
        let nearby = (away.value / near.size / 50.0).round().max(1.0) * 50.0;
        if nearby * near.size < switch {
            return self.with_unit(nearby, near);
        }
        let count = away.value / far.size;
        let tenths = (count * 10.0).round() / 10.0;
        self.with_unit(if tenths < 10.0 { tenths } else { count.round() }, far)
    }

    fn in_unit(&self, quantity: Quantity, unit: Unit, rounding: Rounding) -> String {
        let value = quantity.value / unit.size;
        self.with_unit(
            match rounding {
                Rounding::Everyday => everyday(value, unit),
                Rounding::Exact => value,
            },
            unit,
        )
    }

    fn with_unit(&self, value: f64, unit: Unit) -> String {
        let (text, n) = match self.fraction(value, unit) {
            // "½" is read "half a", which takes the singular.
            Some(text) => (text, value.max(1.0)),
            None => (self.number(value, 3), value),
        };
        self.pattern_text(unit.key, &Filled::new().number("n", n).text("value", &text))
    }

    /// A customary measure as people write it, "1½", where the language's readers know the sign.
    fn fraction(&self, value: f64, unit: Unit) -> Option<String> {
        let known = self.lang().entry().is_some_and(|language| language.fractions);
        if !unit.customary || !known {
            return None;
        }
        let whole = value.trunc();
        let part = value - whole;
        let sign =
            [(0.125, '⅛'), (0.25, '¼'), (0.375, '⅜'), (0.5, '½'), (0.625, '⅝'), (0.75, '¾'), (0.875, '⅞')]
                .iter()
                .find(|(size, _)| (part - size).abs() < SAME)
                .map(|(_, sign)| *sign)?;
        let whole = if whole > 0.0 { self.number(whole, 0) } else { String::new() };
        Some(format!("{whole}{sign}"))
    }
}
