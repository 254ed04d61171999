//! Itemising: into which stretches a text falls, by direction and by face, before it is shaped.

use std::ops::Range;

use unicode_bidi::Level;

use super::paragraph::Words;
use super::shaping::Typesetter;
use crate::finding::{PreflightItem, PrintError};
use crate::font::Weight;
use crate::job::Direction;
use crate::place::english;

/// The direction of a text's first letter that has one.
pub(super) fn first_strong(text: &str) -> Direction {
    match unicode_bidi::get_base_direction(text) {
        unicode_bidi::Direction::Rtl => Direction::Rtl,
        unicode_bidi::Direction::Ltr | unicode_bidi::Direction::Mixed => Direction::Ltr,
    }
}

/// Stretches of one embedding level, in reading order.
pub(super) fn level_runs(levels: &[Level]) -> Vec<(Range<usize>, Level)> {
    let mut runs: Vec<(Range<usize>, Level)> = Vec::new();
    for (at, &level) in levels.iter().enumerate() {
        match runs.last_mut() {
            Some((range, last)) if *last == level => range.end = at + 1,
            _ => runs.push((at..at + 1, level)),
        }
    }
    runs
}

/// Alphabets that share a face: each is shaped by its own rules.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Alphabet {
    Greek,
    Cyrillic,
    Other,
}

/// The alphabet of a letter (Unicode's Blocks.txt); none for what goes with any.
fn alphabet(c: char) -> Option<Alphabet> {
    match c {
        '\u{370}'..='\u{3FF}' | '\u{1F00}'..='\u{1FFF}' => Some(Alphabet::Greek),
        '\u{400}'..='\u{52F}'
        | '\u{1C80}'..='\u{1C8F}'
        | '\u{2DE0}'..='\u{2DFF}'
        | '\u{A640}'..='\u{A69F}' => Some(Alphabet::Cyrillic),
        c if c.is_alphabetic() => Some(Alphabet::Other),
        _ => None,
    }
}

/// The face of each stretch of one alphabet, or the characters that no face has.
pub(super) fn choose_faces(
    setter: Typesetter<'_>,
    text: &str,
    lang: &str,
    weight: Weight,
) -> Result<Vec<(Range<usize>, usize)>, Vec<char>> {
    let mut parts: Vec<(Range<usize>, usize)> = Vec::new();
    let mut missing = Vec::new();
    let mut before = None;
    let mut letters: Option<Alphabet> = None;
    for (at, c) in text.char_indices() {
        let Some(face) = setter.face_for(c, weight, before, lang) else {
            if !missing.contains(&c) {
                missing.push(c);
            }
            continue;
        };
        if before != Some(face) {
            letters = None;
        }
        before = Some(face);
        let own = alphabet(c);
        let other = matches!((letters, own), (Some(last), Some(own)) if last != own);
        letters = own.or(letters);
        let end = at + c.len_utf8();
        match parts.last_mut() {
            Some((range, last)) if *last == face && !other => range.end = end,
            _ => parts.push((at..end, face)),
        }
    }
    if missing.is_empty() { Ok(parts) } else { Err(missing) }
}

pub(super) fn missing_glyph(missing: &[char], words: Words<'_>) -> PrintError {
    let Words { text, lang, place, .. } = words;
    let shown: Vec<String> = missing.iter().map(|&c| format!("{c} (U+{:04X})", u32::from(c))).collect();
    let shown = shown.join(", ");
    PreflightItem::error(
        "missing-glyph",
        format!(
            "{}: no font here has {shown}, used in “{text}”; write it without, or add a font that has it",
            english(place)
        ),
    )
    .arg("place", place)
    .arg("lang", lang)
    .arg("characters", shown)
    .arg("text", text)
    .into()
}
