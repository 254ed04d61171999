//! A paragraph: measured once, broken for any size and measure, and set line by line.

use std::ops::Range;

use unicode_bidi::{BidiInfo, Level};

use super::breaking::{self, Piece};
use super::itemise::{choose_faces, first_strong, level_runs, missing_glyph};
use super::opportunities::{Opportunity, SPACES, opportunities};
use super::shaping::{Typesetter, is_ignorable};
use super::{numbers, shaping::Shaped};
use crate::display::{Glyph, Role, Run, TextLine};
use crate::finding::PrintError;
use crate::font::{Weight, compose_hangul};
use crate::ink::Ink;
use crate::job::Direction;
use crate::unit::{Point, Pt, Rect};

/// Room above and below the baseline that every line takes at least, in ems. Ours: capitals with an accent
/// above, descenders below, and a little air; taller writing takes what its glyphs need.
const ASCENT: f64 = 0.94;
const DESCENT: f64 = 0.27;
/// Height of Noto Sans' capitals, in ems.
const CAPITALS: f64 = 0.714;
/// Air above and below glyphs that reach past those, in ems.
const AIR: f64 = 0.03;

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
    text: String,
    /// The words as the job has them.
    pub(crate) words: String,
    pub(crate) lang: String,
    pub(crate) place: String,
    pub(crate) direction: Direction,
    align: Direction,
    /// The face of each stretch of the text.
    faces: Vec<(Range<usize>, usize)>,
    /// What lies between the places where lines break gladly.
    pieces: Vec<Piece>,
    /// What lies between all the places where they may: inside a compound, after its hyphen, too.
    finer: Vec<Piece>,
    /// The width of the whole text on one line, in ems, and where its printed part ends.
    whole: (f64, usize),
    ascent: f64,
    descent: f64,
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
        let composed = compose_hangul(source);
        let text = match direction {
            Direction::Rtl => numbers::isolated(&composed),
            Direction::Ltr => composed,
        };
        let faces =
            choose_faces(setter, &text, lang, weight).map_err(|missing| missing_glyph(&missing, words))?;
        let mut paragraph = Self {
            words: source.to_owned(),
            lang: lang.to_owned(),
            place: place.to_owned(),
            direction,
            align: align.unwrap_or(direction),
            faces,
            pieces: Vec::new(),
            finer: Vec::new(),
            whole: (0.0, 0),
            ascent: ASCENT,
            descent: DESCENT,
            text,
        };
        paragraph.measure(setter);
        Ok(paragraph)
    }

    fn base_level(&self) -> Level {
        match self.direction {
            Direction::Ltr => Level::ltr(),
            Direction::Rtl => Level::rtl(),
        }
    }

    /// Shapes the whole text once: widths between break opportunities, and how far glyphs reach.
    fn measure(&mut self, setter: Typesetter<'_>) {
        let mut width_at = vec![0.0_f64; self.text.len() + 1];
        let bidi = BidiInfo::new(&self.text, Some(self.base_level()));
        let (mut above, mut below) = (0.0_f64, 0.0_f64);
        for (range, level) in level_runs(&bidi.levels) {
            for (part, face) in self.face_parts(&range) {
                let Some(measures) = setter.face(face) else { continue };
                for glyph in setter.shape(&self.text, part, face, level.is_rtl(), &self.lang) {
                    if let Some(width) = width_at.get_mut(glyph.cluster) {
                        *width += f64::from(glyph.advance) / measures.units;
                    }
                    if let Some((top, bottom)) = measures.reach(glyph.id) {
                        let rise = f64::from(glyph.dy);
                        above = above.max((top + rise) / measures.units);
                        below = below.max((bottom - rise) / measures.units);
                    }
                }
            }
        }
        self.ascent = self.ascent.max(above + AIR);
        self.descent = self.descent.max(below + AIR);
        let opportunities = opportunities(&self.text, &self.lang);
        self.pieces = self.pieces_of(&width_at, opportunities.iter().filter(|it| it.glad));
        self.finer = self.pieces_of(&width_at, opportunities.iter());
        if let Some((last, before)) = self.pieces.split_last() {
            let width = before.iter().map(|piece| piece.full).sum::<f64>() + last.printed;
            self.whole = (width, last.printed_end);
        }
    }

    fn pieces_of<'o>(&self, width_at: &[f64], ends: impl Iterator<Item = &'o Opportunity>) -> Vec<Piece> {
        let mut pieces = Vec::new();
        let mut start = 0;
        for &Opportunity { at: end, poor, .. } in ends {
            let piece = self.text.get(start..end).unwrap_or("");
            let printed_end = start + piece.trim_end_matches(SPACES).len();
            let sum = |to: usize| width_at.get(start..to).map_or(0.0, |widths| widths.iter().sum());
            let cost = if poor { breaking::POOR } else { 0.0 };
            pieces.push(Piece {
                range: start..end,
                printed_end,
                full: sum(end),
                printed: sum(printed_end),
                cost,
            });
            start = end;
        }
        pieces
    }

    /// The pieces for a measure: between glad breaks, but where one is too wide, what it consists of.
    fn pieces_within(&self, ems: f64) -> Vec<Piece> {
        let mut pieces = Vec::new();
        for piece in &self.pieces {
            if piece.printed <= ems {
                pieces.push(piece.clone());
            } else {
                let parts = self.finer.iter();
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

    /// The parts of a range that one face sets, in reading order.
    fn face_parts(&self, range: &Range<usize>) -> Vec<(Range<usize>, usize)> {
        let cut = |(part, face): &(Range<usize>, usize)| {
            let both = part.start.max(range.start)..part.end.min(range.end);
            (both.start < both.end).then_some((both, *face))
        };
        self.faces.iter().filter_map(cut).collect()
    }

    /// From a line's top to the middle of its capitals.
    pub(crate) fn middle(&self, size: Pt) -> Pt {
        size * (self.ascent - CAPITALS / 2.0)
    }

    /// The width of the text on one line.
    pub(crate) fn natural(&self, size: Pt) -> Pt {
        // A hair more than the sum, so that the line fits in exactly this.
        size * (self.pieces.iter().map(|piece| piece.full).sum::<f64>() + 0.001)
    }

    /// Breaks the text into lines.
    pub(crate) fn set(&self, size: Pt, measure: Pt) -> Result<Setting, TooWide> {
        let ems = measure / size;
        let leading = size * (self.ascent + self.descent);
        if self.whole.0 <= ems && !self.pieces.is_empty() {
            let (width, end) = self.whole;
            // One line is the fewest there can be.
            let lines = std::iter::once(0..end).collect();
            return Ok(Setting { lines, size, leading, width: size * width });
        }
        let narrowed;
        let pieces = if self.pieces.iter().all(|piece| piece.printed <= ems) {
            &self.pieces
        } else {
            narrowed = self.pieces_within(ems);
            &narrowed
        };
        let lines = breaking::lines(pieces, ems);
        let lines = lines.map_err(|index| {
            let piece = pieces.get(index);
            let word =
                piece.and_then(|piece| self.text.get(piece.range.start..piece.printed_end)).unwrap_or("");
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
        let bidi = BidiInfo::new(&self.text, Some(self.base_level()));
        let mut top = at.y;
        let mut drawn = Vec::new();
        for line in &setting.lines {
            let (runs, width) = self.runs(setter, &bidi, line.clone(), setting.size);
            let x = match self.align {
                Direction::Ltr => at.x,
                Direction::Rtl => at.x + measure - width,
            };
            let baseline = top + setting.size * self.ascent;
            let runs = runs
                .into_iter()
                .map(|mut run| {
                    run.origin = Point { x: run.origin.x + x, y: baseline };
                    run
                })
                .collect();
            let text =
                self.text.get(line.clone()).unwrap_or("").chars().filter(|&c| !is_ignorable(c)).collect();
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
        let rest = self.text.get(end..).unwrap_or("");
        let next = rest.trim_start_matches([' ', '\u{2009}', '\u{2003}', '\u{2002}']);
        let between = rest.len() - next.len();
        if next.is_empty() || between == 0 { String::new() } else { " ".to_owned() }
    }

    /// A line's runs from left to right, starting at zero, and its width.
    fn runs(
        &self,
        setter: Typesetter<'_>,
        bidi: &BidiInfo<'_>,
        line: Range<usize>,
        size: Pt,
    ) -> (Vec<Run>, Pt) {
        let mut runs = Vec::new();
        let mut x = Pt::ZERO;
        let Some(whole) = bidi.paragraphs.first() else { return (runs, x) };
        let (levels, order) = bidi.visual_runs(whole, line);
        for range in order {
            let rtl = levels.get(range.start).is_some_and(Level::is_rtl);
            let mut parts = self.face_parts(&range);
            if rtl {
                parts.reverse();
            }
            for (part, face) in parts {
                let Some(measures) = setter.face(face) else { continue };
                let shaped = setter.shape(&self.text, part.clone(), face, rtl, &self.lang);
                let advance: f64 = shaped.iter().map(|glyph| f64::from(glyph.advance)).sum();
                let glyphs = self.glyphs(&shaped, part.end);
                runs.push(Run { face, size, rtl, origin: Point { x, y: Pt::ZERO }, glyphs });
                x += size * (advance / measures.units);
            }
        }
        (runs, x)
    }

    /// Gives each cluster's characters to its first glyph in drawing order.
    fn glyphs(&self, shaped: &[Shaped], end: usize) -> Vec<Glyph> {
        let mut starts: Vec<usize> = shaped.iter().map(|glyph| glyph.cluster).collect();
        starts.sort_unstable();
        starts.dedup();
        let mut given: Option<usize> = None;
        shaped
            .iter()
            .map(|glyph| {
                let text = if given == Some(glyph.cluster) {
                    String::new()
                } else {
                    let next = starts.iter().copied().find(|&start| start > glyph.cluster).unwrap_or(end);
                    let all = self.text.get(glyph.cluster..next).unwrap_or("");
                    all.chars().filter(|&c| !is_ignorable(c)).collect()
                };
                given = Some(glyph.cluster);
                Glyph { id: glyph.id, advance: glyph.advance, dx: glyph.dx, dy: glyph.dy, text }
            })
            .collect()
    }
}
