//! The plural form a language uses with a number (CLDR 48, cardinal rules).
//!
//! Written out here for the languages we ship or have been asked for, because the plural crate
//! behind Fluent's bundle (intl_pluralrules 7.0.2, CLDR 37) loses the remainder in rules like
//! Arabic's "n % 100 = 3..10" and so takes 103 for another form than 3. A test holds every rule
//! here against ICU4X, number by number, and fails for a language folder without a rule.

use crate::lang::Lang;
use crate::number::{scaled, whole_thousandths};

/// The name of the plural form, as message files write it.
pub(crate) fn category(lang: &Lang, n: f64) -> &'static str {
    let Operands { n, i, v, f } = Operands::of(n);
    let whole_millions = v == 0 && i != 0 && i.is_multiple_of(1_000_000);
    let one_when = |condition: bool| if condition { "one" } else { "other" };
    let many_or = |rest: &'static str| if whole_millions { "many" } else { rest };
    match lang.language() {
        "en" | "de" | "nl" | "sv" | "fi" | "et" | "sw" | "ur" | "yi" => one_when(i == 1 && v == 0),
        "it" | "ca" => many_or(one_when(i == 1 && v == 0)),
        "es" => many_or(one_when(is(n, 1))),
        "pt" if lang.region() == Some("PT") => many_or(one_when(i == 1 && v == 0)),
        "fr" | "pt" => match i {
            0 | 1 => "one",
            _ => many_or("other"),
        },
        "hi" | "bn" | "fa" | "gu" | "kn" | "am" | "zu" | "as" => one_when(i == 0 || is(n, 1)),
        "so" | "ne" | "ta" | "te" | "tr" | "el" | "hu" | "mr" | "ml" | "om" | "ps" | "az" | "uz" | "sq"
        | "bg" => one_when(is(n, 1)),
        "fil" | "tl" | "ceb" => {
            let last = if v == 0 { i } else { f } % 10;
            one_when((v == 0 && matches!(i, 1..=3)) || !matches!(last, 4 | 6 | 9))
        }
        "ar" => match (v, i, i % 100) {
            (0, 0, _) => "zero",
            (0, 1, _) => "one",
            (0, 2, _) => "two",
            (0, _, 3..=10) => "few",
            (0, _, 11..=99) => "many",
            _ => "other",
        },
        "ru" | "uk" => match (v, i % 10, i % 100) {
            (1.., _, _) => "other",
            (_, 1, last) if last != 11 => "one",
            (_, 2..=4, last) if !matches!(last, 12..=14) => "few",
            _ => "many",
        },
        "pl" => match (v, i % 10, i % 100) {
            (1.., _, _) => "other",
            _ if i == 1 => "one",
            (_, 2..=4, last) if !matches!(last, 12..=14) => "few",
            _ => "many",
        },
        // Chinese, Vietnamese, Korean, Japanese and others have one form, which is also what CLDR
        // gives a language it does not know.
        _ => "other",
    }
}

/// The numbers that CLDR's rules speak of, of a number written without trailing zeros.
struct Operands {
    /// The absolute value.
    n: f64,
    /// Its whole part.
    i: u64,
    /// How many decimals are written.
    v: usize,
    /// The decimals as a whole number.
    f: u64,
}

impl Operands {
    fn of(n: f64) -> Self {
        // As many decimals as a number inside a message shows.
        let thousandths = scaled(n, 3).unwrap_or(u64::MAX);
        let (mut f, mut v) = (thousandths % 1000, 3);
        while v > 0 && f % 10 == 0 {
            (f, v) = (f / 10, v - 1);
        }
        let n = whole_thousandths(i64::try_from(thousandths).unwrap_or(i64::MAX));
        Self { n, i: thousandths / 1000, v, f }
    }
}

fn is(n: f64, whole: u32) -> bool {
    (n - f64::from(whole)).abs() < 1e-9
}
