//! Shaping: from characters of one face and one direction to glyphs.

use std::ops::Range;
use std::sync::Arc;

use harfrust::{Buffer, BufferFlags, ClusterLevel, Direction, Language, ShapeOptions, ShaperFont};

use super::measured::Measured;
use crate::font::{Face, FontSet, Script, Weight};

/// A glyph as shaped: lengths in the face's units, the cluster as a byte of the whole text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Shaped {
    pub(crate) id: u16,
    pub(crate) cluster: usize,
    pub(crate) advance: i32,
    pub(crate) dx: i32,
    pub(crate) dy: i32,
    /// Whether the text may be cut before its cluster and shaped in two parts with the same result.
    pub(crate) breaks: bool,
}

/// Chooses faces and shapes with them.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Typesetter<'a> {
    fonts: &'a FontSet,
}

/// Where a character is looked for.
#[derive(Debug, Clone, Copy)]
enum Among {
    /// The faces of no script of their own: Latin, Greek, Cyrillic.
    Common,
    /// The faces that have a script's letters.
    Of(Script),
}

/// Whether a character that several scripts use is drawn in the font of the language's own script.
fn from_own_script(c: char, own: Option<Script>) -> bool {
    let paired = matches!(c, '(' | ')' | '[' | ']' | '\u{AB}' | '\u{BB}' | '\u{2018}'..='\u{201F}');
    // Points of Chinese fill a square; marks that stand over a letter stay with it.
    let squares = own == Some(Script::Han) && !c.is_ascii() && !matches!(c, '\u{A0}' | '\u{300}'..='\u{36F}');
    own.is_some() && !c.is_alphanumeric() && (paired || squares)
}

/// Characters that print nothing and need no glyph.
pub(super) fn is_ignorable(c: char) -> bool {
    matches!(c, '\u{200B}'..='\u{200F}' | '\u{2060}' | '\u{2066}'..='\u{2069}' | '\u{061C}' | '\u{FE00}'..='\u{FE0F}')
}

impl<'a> Typesetter<'a> {
    pub(crate) const fn new(fonts: &'a FontSet) -> Self {
        Self { fonts }
    }

    /// A text's glyphs and measures; the characters that no face has if there are any.
    pub(super) fn measured(
        self,
        source: &str,
        lang: &str,
        direction: crate::job::Direction,
        weight: Weight,
    ) -> Result<Arc<Measured>, Vec<char>> {
        self.fonts.memory().measured(self, source, lang, direction, weight)
    }

    pub(crate) fn face(&self, index: usize) -> Option<&'a Face> {
        self.fonts.get(index)
    }

    /// The face for a character of a text in a language, of the weight if there is one.
    ///
    /// Points and spaces stay with the face before them if it has them, so that words are not torn; brackets and
    /// quotation marks come from the language's own script, so that both of a pair are alike whatever stands
    /// between them. A character is looked for only where [`Script`] says it may be: a job is set alike whether
    /// all the fonts were given or only those it needs.
    pub(super) fn face_for(
        &self,
        c: char,
        weight: Weight,
        before: Option<usize>,
        lang: &str,
    ) -> Option<usize> {
        if is_ignorable(c) {
            return Some(before.unwrap_or(0));
        }
        let own = Script::of_language(lang);
        if let Some(index) = before
            && !c.is_alphanumeric()
            && !from_own_script(c, own)
            && self.face(index).is_some_and(|face| face.has(c))
        {
            return Some(index);
        }
        let places = match (Script::of(c), own) {
            // Korean has forms of Han characters of its own; its points and brackets may come from another face.
            (Some(Script::Han), Some(Script::Hangul)) => {
                [Some(Among::Of(Script::Hangul)), (!c.is_alphabetic()).then_some(Among::Of(Script::Han))]
            }
            (Some(script), _) => [Some(Among::Of(script)), Some(Among::Common)],
            (None, Some(script)) if from_own_script(c, own) => [Some(Among::Of(script)), Some(Among::Common)],
            (None, _) => [Some(Among::Common), own.map(Among::Of)],
        };
        places.into_iter().flatten().find_map(|place| self.face_among(place, c, weight))
    }

    fn face_among(&self, place: Among, c: char, weight: Weight) -> Option<usize> {
        let faces = || {
            let all = self.fonts.faces().iter().enumerate();
            all.filter(move |(_, face)| match place {
                Among::Common => Script::ALL.into_iter().all(|script| !face.writes(script)),
                Among::Of(script) => face.writes(script),
            })
        };
        let of_weight = faces().find(|(_, face)| face.weight == weight && face.has(c));
        of_weight.or_else(|| faces().find(|(_, face)| face.has(c))).map(|(index, _)| index)
    }

    /// Shapes a range of a text with one face in one direction. Glyphs come from left to right.
    pub(crate) fn shape(
        &self,
        text: &str,
        range: Range<usize>,
        face: usize,
        rtl: bool,
        lang: &str,
    ) -> Vec<Shaped> {
        let (Some(face), Some(words)) = (self.face(face), text.get(range.clone())) else { return Vec::new() };
        let mut buffer = Buffer::new();
        buffer.push_str(words);
        // Letters join across the run's edges when the face does not change in between.
        buffer.set_pre_context(text.get(..range.start).unwrap_or(""));
        buffer.set_post_context(text.get(range.end..).unwrap_or(""));
        buffer.set_cluster_level(ClusterLevel::MonotoneCharacters);
        buffer.set_flags(BufferFlags::REMOVE_DEFAULT_IGNORABLES);
        buffer.guess_segment_properties();
        buffer.set_direction(if rtl { Direction::RightToLeft } else { Direction::LeftToRight });
        buffer.set_language(lang.parse::<Language>().ok());
        let plan = face.plan(&buffer);
        let font = ShaperFont::new(&face.font);
        if harfrust::shape(&font, &mut buffer, ShapeOptions::new().plan(Some(&plan))).is_err() {
            return Vec::new();
        }
        let (infos, positions) = (buffer.glyph_infos(), buffer.glyph_positions());
        infos
            .iter()
            .zip(positions)
            .map(|(info, position)| Shaped {
                // An OpenType face has at most 65,535 glyphs.
                id: u16::try_from(info.glyph_id).unwrap_or(0),
                cluster: range.start + usize::try_from(info.cluster).unwrap_or(0),
                advance: position.x_advance,
                dx: position.x_offset,
                dy: position.y_offset,
                breaks: !info.unsafe_to_break(),
            })
            .collect()
    }
}

#[cfg(test)]
mod tests;
