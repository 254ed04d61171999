//! Where lines may end: the Unicode algorithm (UAX 14), and which of its opportunities are taken gladly.
//!
//! Nothing is ever hyphenated: a break that no reader of the language would make can't happen, and a word that is too
//! wide is an error instead.

use std::ops::Range;

use unicode_linebreak::{BreakClass, break_property, linebreaks};

use super::numbers::numbers;
use crate::font::Script;

/// A place where a line may end.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Opportunity {
    /// The byte at which the next line would start.
    pub(super) at: usize,
    /// Whether it is taken gladly; the others only where something is too wide without them.
    pub(super) glad: bool,
    /// Whether another place would be better: two characters meet there that nothing separates, or the line would
    /// end with a word of one letter, which belongs to what follows.
    pub(super) poor: bool,
}

/// The spaces that are not printed at a line's end.
pub(super) const SPACES: [char; 4] = [' ', '\u{2009}', '\u{2003}', '\u{2002}'];

/// Every place where a line may end, the text's end last.
pub(super) fn opportunities(text: &str, lang: &str) -> Vec<Opportunity> {
    let whole: Vec<Range<usize>> = numbers(text);
    let korean = lang.split('-').next() == Some("ko");
    let mut found = Vec::new();
    for at in legal(text) {
        let (before, after) = text.split_at_checked(at).unwrap_or((text, ""));
        if at < text.len() && whole.iter().any(|number| number.start < at && at < number.end) {
            continue;
        }
        // French sets a space inside its quotation marks, and typists set one that breaks.
        let quoted = before.trim_end_matches(SPACES).ends_with(['\u{AB}', '\u{2039}'])
            || after.starts_with(['\u{BB}', '\u{203A}']);
        if at < text.len() && quoted {
            continue;
        }
        let inside = meet(before, after);
        let compound = before.ends_with(['-', '\u{2010}']);
        let number = belongs_to_number(before, after)
            && !whole.iter().any(|number| number.end == before.trim_end().len());
        let glad = !(compound || number || (korean && inside)) || after.is_empty();
        let poor = inside || one_letter(before);
        found.push(Opportunity { at, glad, poor });
    }
    found
}

/// The places that the algorithm gives, the text's end last.
///
/// The crate follows rule LB30 as it was before Unicode 11, by which no line starts with an opening bracket after a
/// letter; since then that is so of narrow brackets only, not of those that fill a square.
fn legal(text: &str) -> Vec<usize> {
    let mut places: Vec<usize> = linebreaks(text).map(|(at, _)| at).collect();
    let wide = text.char_indices().filter(|&(_, c)| is_wide_opening(c)).map(|(at, _)| at);
    places.extend(wide.filter(|&at| text.get(..at).is_some_and(ends_like_a_letter)));
    places.sort_unstable();
    places.dedup();
    places
}

/// Opening brackets (class OP) whose East Asian width is full or wide (Unicode's LineBreak.txt and EastAsianWidth.txt).
const fn is_wide_opening(c: char) -> bool {
    matches!(
        c,
        '\u{2329}'
            | '\u{3008}'
            | '\u{300A}'
            | '\u{300C}'
            | '\u{300E}'
            | '\u{3010}'
            | '\u{3014}'
            | '\u{3016}'
            | '\u{3018}'
            | '\u{301A}'
            | '\u{301D}'
            | '\u{FF08}'
            | '\u{FF3B}'
            | '\u{FF5B}'
            | '\u{FF5F}'
    )
}

/// Whether a text ends with what rule LB30 counts as a letter or number, marks over it left out (LB9, LB10).
fn ends_like_a_letter(before: &str) -> bool {
    use BreakClass::{
        Alphabetic, Ambiguous, CarriageReturn, CombiningMark, ComplexContext, HebrewLetter, LineFeed,
        Mandatory, NextLine, Numeric, Space, Surrogate, Unknown, ZeroWidthJoiner, ZeroWidthSpace,
    };
    // A joiner joins what follows, whatever it is (LB8a).
    if before.ends_with('\u{200D}') {
        return false;
    }
    let mut classes = before.chars().rev().map(|c| break_property(u32::from(c))).peekable();
    let mut marks = false;
    while classes.next_if(|class| matches!(class, CombiningMark | ZeroWidthJoiner)).is_some() {
        marks = true;
    }
    match classes.next() {
        Some(Alphabetic | Ambiguous | ComplexContext | HebrewLetter | Numeric | Surrogate | Unknown) => true,
        // A mark over nothing stands as a letter.
        None | Some(Mandatory | CarriageReturn | LineFeed | NextLine | Space | ZeroWidthSpace) => marks,
        Some(_) => false,
    }
}

/// Whether two letters or digits meet with nothing between them.
fn meet(before: &str, after: &str) -> bool {
    before.ends_with(char::is_alphanumeric) && after.starts_with(char::is_alphanumeric)
}

/// Whether the last word is one letter of an alphabet: "и", "y", "à", "o". Syllables and Han characters are words.
fn one_letter(before: &str) -> bool {
    let trimmed = before.trim_end_matches(SPACES);
    let mut last = trimmed.chars().rev();
    let letter = last.next().is_some_and(|c| c.is_alphabetic() && Script::of(c).is_none());
    trimmed.len() < before.len() && letter && last.next().is_none_or(|c| SPACES.contains(&c) || c == '\u{A0}')
}

/// Whether a number and its unit, or a short name in capitals and its number, would be parted: "5 gal", "5升", "PET 1".
/// What follows a number is most often what it counts, so no list of units is needed.
fn belongs_to_number(before: &str, after: &str) -> bool {
    let before = before.trim_end_matches(SPACES);
    let unit = |c: char| c.is_alphanumeric() || matches!(c, '%' | '\u{2030}' | '\u{B0}');
    let counted = before.ends_with(char::is_numeric) && after.starts_with(unit);
    let name = before.rsplit(|c: char| !c.is_ascii_uppercase()).next().unwrap_or_default();
    let alone = before.strip_suffix(name).is_some_and(|rest| !rest.ends_with(char::is_alphanumeric));
    let named = (1..=5).contains(&name.len()) && alone && after.starts_with(char::is_numeric);
    counted || named
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The text with a bar at each glad opportunity and a dot at each other one.
    fn shown(text: &str, lang: &str) -> String {
        let mut out = String::new();
        let mut start = 0;
        for opportunity in opportunities(text, lang) {
            out.push_str(&text[start..opportunity.at]);
            if opportunity.at < text.len() {
                out.push(if opportunity.glad { '|' } else { '·' });
            }
            start = opportunity.at;
        }
        out
    }

    #[test]
    fn some_places_are_poor() {
        let poor = |text: &str, lang: &str| -> Vec<usize> {
            opportunities(text, lang).into_iter().filter(|it| it.poor).map(|it| it.at).collect()
        };
        assert_eq!(poor("бутылки и банки", "ru"), vec!["бутылки и ".len()]);
        assert_eq!(poor("agua y pan", "es"), vec!["agua y ".len()]);
        assert_eq!(poor("빈 컵", "ko"), Vec::<usize>::new());
        assert_eq!(poor("纸杯，盒", "zh"), vec!["纸".len()]);
    }

    #[test]
    fn lines_end_where_each_language_ends_them() {
        for (lang, text, expected) in [
            ("en", "Food and drink cans", "Food |and |drink |cans"),
            ("en", "a drop-off site", "a |drop-·off |site"),
            ("en", "up to 5 gal each", "up |to |5 ·gal |each"),
            ("en", "2 × 4 in, 30 % less", "2 |× |4 ·in, |30 ·% |less"),
            ("en", "Call 555-0142 today", "Call |555-0142 |today"),
            ("en", "tubs (PET 1)", "tubs |(PET ·1)"),
            ("en", "A 4 X", "A ·4 ·X"),
            ("fr", "Ouvert : « oui »", "Ouvert : |« oui »"),
            ("fr", "l’eau et l’huile", "l’eau |et |l’huile"),
            // Han: between any two characters, never before a point or after an opening bracket.
            ("zh", "纸板（请压平）。", "纸|板|（请|压|平）。"),
            ("zh", "不超过5升", "不|超|过|5·升"),
            ("zh", "PET（瓶）", "PET|（瓶）"),
            ("zh", "“危险”日", "“危|险”日"),
            // Korean: between words; inside them only where a word is too wide.
            ("ko", "식품 캔과 음료", "식·품 |캔·과 |음·료"),
            ("ko", "20 lb까지", "20 ·lb·까·지"),
            ("ko", "종이, 우편물", "종·이, |우·편·물"),
            // Devanagari: between words, never inside a syllable.
            ("hi", "क्षत्रिय पुनर्चक्रण।", "क्षत्रिय |पुनर्चक्रण।"),
            ("ar", "علب الطعام، والشراب", "علب |الطعام، |والشراب"),
            ("ru", "до 20 кг в неделю", "до |20 ·кг |в |неделю"),
            ("vi", "Chai lọ thủy tinh", "Chai |lọ |thủy |tinh"),
            // A no-break space is what it says.
            ("en", "5\u{A0}gal", "5\u{A0}gal"),
        ] {
            assert_eq!(shown(text, lang), expected, "{lang}: {text}");
        }
    }
}

#[cfg(test)]
mod judged;
