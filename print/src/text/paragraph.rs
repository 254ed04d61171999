//! A paragraph: measured once, broken for any size and measure, and set line by line.

use std::ops::Range;
use std::sync::Arc;

use super::breaking::{self, Piece};
use super::itemise::{first_strong, missing_glyph};
use super::measured::Measured;
use super::shaping::{Typesetter, is_ignorable};
use crate::display::{Role, TextLine};
use crate::finding::PrintError;
use crate::font::Weight;
use crate::ink::Ink;
use crate::job::Direction;
use crate::unit::{Point, Pt, Rect};

/// Height of Noto Sans' capitals, in ems.
const CAPITALS: f64 = 0.714;
/// A text and how it is to be read.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Words<'a> {
    /// The characters.
    pub(crate) text: &'a str,
    /// The language's tag, empty where there is none.
    pub(crate) lang: &'a str,
    /// The direction it is written in; where that is not known, the text's first letter says it.
    pub(crate) direction: Option<Direction>,
    /// The edge its lines start from, if not the one its direction starts from.
    pub(crate) align: Option<Direction>,
    /// Which text this is, for messages: `es, section 2, line 3`.
    pub(crate) place: &'a str,
}

/// A paragraph ready to be set at any size.
#[derive(Debug, Clone)]
pub(crate) struct Paragraph {
    measured: Arc<Measured>,
    /// The words as the job has them.
    pub(crate) words: String,
    pub(crate) lang: String,
    pub(crate) place: String,
    pub(crate) direction: Direction,
    align: Direction,
}

/// A paragraph's lines for one size and measure.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Setting {
    /// The printed bytes of each line.
    pub(crate) lines: Vec<Range<usize>>,
    pub(crate) size: Pt,
    /// From one line's top to the next one's.
    pub(crate) leading: Pt,
    /// The widest line.
    pub(crate) width: Pt,
}

impl Setting {
    pub(crate) fn height(&self) -> Pt {
        self.leading * count(self.lines.len())
    }
}

/// A count as a factor. Counts here are far below 2^53.
pub(crate) fn count(n: usize) -> f64 {
    u32::try_from(n).map_or(f64::from(u32::MAX), f64::from)
}

/// A word that is wider than its column at this size.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct TooWide {
    pub(crate) word: String,
    /// How many of its characters would fit.
    pub(crate) room: usize,
}

impl Paragraph {
    /// Measures a text. Fails on characters that no face has, naming each.
    pub(crate) fn new(setter: Typesetter<'_>, words: Words<'_>, weight: Weight) -> Result<Self, PrintError> {
        let Words { text: source, lang, direction, align, place } = words;
        let direction = direction.unwrap_or_else(|| first_strong(source));
        let measured = setter.measured(source, lang, direction, weight);
        Ok(Self {
            measured: measured.map_err(|missing| missing_glyph(&missing, words))?,
            words: source.to_owned(),
            lang: lang.to_owned(),
            place: place.to_owned(),
            direction,
            align: align.unwrap_or(direction),
        })
    }

    /// The pieces for a measure: between glad breaks, but where one is too wide, what it consists of.
    fn pieces_within(&self, ems: f64) -> Vec<Piece> {
        let mut pieces = Vec::new();
        for piece in &self.measured.pieces {
            if piece.printed <= ems {
                pieces.push(piece.clone());
            } else {
                let parts = self.measured.finer.iter();
                pieces.extend(
                    parts
                        .filter(|part| {
                            piece.range.start <= part.range.start && part.range.end <= piece.range.end
                        })
                        .cloned(),
                );
            }
        }
        pieces
    }

    /// From a line's top to the middle of its capitals.
    pub(crate) fn middle(&self, size: Pt) -> Pt {
        size * (self.measured.ascent - CAPITALS / 2.0)
    }

    /// The width of the text on one line.
    pub(crate) fn natural(&self, size: Pt) -> Pt {
        // A hair more than the sum, so that the line fits in exactly this.
        size * (self.measured.pieces.iter().map(|piece| piece.full).sum::<f64>() + 0.001)
    }

    /// Breaks the text into lines.
    pub(crate) fn set(&self, size: Pt, measure: Pt) -> Result<Setting, TooWide> {
        let ems = measure / size;
        let leading = size * (self.measured.ascent + self.measured.descent);
        if self.measured.whole.0 <= ems && !self.measured.pieces.is_empty() {
            let (width, end) = self.measured.whole;
            // One line is the fewest there can be.
            let lines = std::iter::once(0..end).collect();
            return Ok(Setting { lines, size, leading, width: size * width });
        }
        let narrowed;
        let pieces = if self.measured.pieces.iter().all(|piece| piece.printed <= ems) {
            &self.measured.pieces
        } else {
            narrowed = self.pieces_within(ems);
            &narrowed
        };
        let lines = breaking::lines(pieces, ems);
        let lines = lines.map_err(|index| {
            let piece = pieces.get(index);
            let word = piece
                .and_then(|piece| self.measured.text.get(piece.range.start..piece.printed_end))
                .unwrap_or("");
            let word: String = word.chars().filter(|&c| !is_ignorable(c)).collect();
            let share = piece.map_or(0.0, |piece| ems / piece.printed);
            // Truncated on purpose: the characters that fit wholly.
            let room = (count(word.chars().count()) * share) as usize;
            TooWide { word, room }
        })?;
        let mut widest = 0.0_f64;
        let lines = lines
            .into_iter()
            .filter_map(|line| {
                let (first, last) = (pieces.get(line.start)?, pieces.get(line.end.checked_sub(1)?)?);
                let before: f64 = pieces.get(line.start..line.end - 1)?.iter().map(|piece| piece.full).sum();
                widest = widest.max(before + last.printed);
                Some(first.range.start..last.printed_end)
            })
            .collect();
        Ok(Setting { lines, size, leading, width: size * widest })
    }

    /// Sets the lines with the block's upper left corner at `at`, each at the starting edge of the measure.
    pub(crate) fn draw(
        &self,
        setter: Typesetter<'_>,
        setting: &Setting,
        at: Point,
        measure: Pt,
        role: Role,
        ink: Ink,
    ) -> Vec<TextLine> {
        let mut top = at.y;
        let mut drawn = Vec::new();
        let set = self.measured.set_lines(setter, &setting.lines, setting.size);
        for (line, (runs, width)) in setting.lines.iter().zip(set) {
            let x = match self.align {
                Direction::Ltr => at.x,
                Direction::Rtl => at.x + measure - width,
            };
            let baseline = top + setting.size * self.measured.ascent;
            let runs = runs
                .into_iter()
                .map(|mut run| {
                    run.origin = Point { x: run.origin.x + x, y: baseline };
                    run
                })
                .collect();
            let text = self
                .measured
                .text
                .get(line.clone())
                .unwrap_or("")
                .chars()
                .filter(|&c| !is_ignorable(c))
                .collect();
            drawn.push(TextLine {
                text,
                lang: self.lang.clone(),
                direction: self.direction,
                role,
                place: self.place.clone(),
                gap: self.gap(line.end),
                rect: Rect::new(x, top, width, setting.leading),
                ink,
                turned: false,
                runs,
            });
            top += setting.leading;
        }
        drawn
    }

    /// What stands between a line that ends at a byte and the next one: nothing after the last.
    fn gap(&self, end: usize) -> String {
        let rest = self.measured.text.get(end..).unwrap_or("");
        let next = rest.trim_start_matches([' ', '\u{2009}', '\u{2003}', '\u{2002}']);
        let between = rest.len() - next.len();
        if next.is_empty() || between == 0 { String::new() } else { " ".to_owned() }
    }
}
