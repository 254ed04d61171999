//! A text as its faces set it: chosen, shaped and measured once, for every size, column and sheet that says it.

use std::collections::BTreeMap;
use std::ops::Range;
use std::sync::{Arc, Mutex};

use unicode_bidi::{BidiInfo, Level};

use super::breaking::{self, Piece};
use super::itemise::{choose_faces, level_runs};
use super::numbers;
use super::opportunities::{Opportunity, SPACES, opportunities};
use super::shaping::{Shaped, Typesetter, is_ignorable};
use crate::display::{Glyph, Run};
use crate::font::{Weight, compose_hangul};
use crate::job::Direction;
use crate::unit::{Point, Pt};

/// Room above and below the baseline that every line takes at least, in ems. Ours: capitals with an accent
/// above, descenders below, and a little air; taller writing takes what its glyphs need.
const ASCENT: f64 = 0.94;
const DESCENT: f64 = 0.27;
/// Air above and below glyphs that reach past those, in ems.
const AIR: f64 = 0.03;

/// A text's glyphs and measures, in ems.
#[derive(Debug)]
pub(super) struct Measured {
    /// The characters as they are set.
    pub(super) text: String,
    lang: String,
    direction: Direction,
    /// Whether it runs from left to right throughout.
    plain: bool,
    /// The face of each stretch of the text.
    faces: Vec<(Range<usize>, usize)>,
    runs: Vec<ShapedRun>,
    /// What lies between the places where lines break gladly.
    pub(super) pieces: Vec<Piece>,
    /// What lies between all the places where they may: inside a compound, after its hyphen, too.
    pub(super) finer: Vec<Piece>,
    /// The width of the whole text on one line, and where its printed part ends.
    pub(super) whole: (f64, usize),
    pub(super) ascent: f64,
    pub(super) descent: f64,
}

/// A stretch of one face and one direction.
#[derive(Debug)]
struct ShapedRun {
    range: Range<usize>,
    face: usize,
    rtl: bool,
    glyphs: Vec<Shaped>,
}

impl Measured {
    /// Fails with the characters that no face has.
    pub(super) fn new(
        setter: Typesetter<'_>,
        source: &str,
        lang: &str,
        direction: Direction,
        weight: Weight,
    ) -> Result<Self, Vec<char>> {
        let composed = compose_hangul(source);
        let text = match direction {
            Direction::Rtl => numbers::isolated(&composed),
            Direction::Ltr => composed,
        };
        let faces = choose_faces(setter, &text, lang, weight)?;
        let mut measured = Self {
            lang: lang.to_owned(),
            direction,
            plain: false,
            faces,
            runs: Vec::new(),
            pieces: Vec::new(),
            finer: Vec::new(),
            whole: (0.0, 0),
            ascent: ASCENT,
            descent: DESCENT,
            text,
        };
        measured.measure(setter);
        Ok(measured)
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
        let plain = bidi.levels.iter().all(|level| *level == Level::ltr());
        let levels = level_runs(&bidi.levels);
        drop(bidi);
        self.plain = plain;
        let (mut above, mut below) = (0.0_f64, 0.0_f64);
        for (range, level) in levels {
            for (part, face) in self.face_parts(&range) {
                let Some(measures) = setter.face(face) else { continue };
                let reaches = measures.reaches();
                let glyphs = setter.shape(&self.text, part.clone(), face, level.is_rtl(), &self.lang);
                for glyph in &glyphs {
                    if let Some(width) = width_at.get_mut(glyph.cluster) {
                        *width += f64::from(glyph.advance) / measures.units;
                    }
                    if let Some((top, bottom)) = reaches.of(glyph.id) {
                        let rise = f64::from(glyph.dy);
                        above = above.max((top + rise) / measures.units);
                        below = below.max((bottom - rise) / measures.units);
                    }
                }
                self.runs.push(ShapedRun { range: part, face, rtl: level.is_rtl(), glyphs });
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

    /// The parts of a range that one face sets, in reading order.
    fn face_parts(&self, range: &Range<usize>) -> Vec<(Range<usize>, usize)> {
        let cut = |(part, face): &(Range<usize>, usize)| {
            let both = part.start.max(range.start)..part.end.min(range.end);
            (both.start < both.end).then_some((both, *face))
        };
        self.faces.iter().filter_map(cut).collect()
    }

    /// The runs of some lines, each from left to right and starting at zero, and each line's width.
    pub(super) fn set_lines(
        &self,
        setter: Typesetter<'_>,
        lines: &[Range<usize>],
        size: Pt,
    ) -> Vec<(Vec<Run>, Pt)> {
        if self.plain {
            return lines
                .iter()
                .map(|line| self.runs_of(setter, std::iter::once((line.clone(), false)), size))
                .collect();
        }
        let bidi = BidiInfo::new(&self.text, Some(self.base_level()));
        let Some(whole) = bidi.paragraphs.first() else {
            return lines.iter().map(|_| (Vec::new(), Pt::ZERO)).collect();
        };
        lines
            .iter()
            .map(|line| {
                let (levels, order) = bidi.visual_runs(whole, line.clone());
                let runs = order.into_iter().map(|range| {
                    let rtl = levels.get(range.start).is_some_and(Level::is_rtl);
                    (range, rtl)
                });
                self.runs_of(setter, runs, size)
            })
            .collect()
    }

    fn runs_of(
        &self,
        setter: Typesetter<'_>,
        order: impl Iterator<Item = (Range<usize>, bool)>,
        size: Pt,
    ) -> (Vec<Run>, Pt) {
        let mut runs = Vec::new();
        let mut x = Pt::ZERO;
        for (range, rtl) in order {
            let mut parts = self.face_parts(&range);
            if rtl {
                parts.reverse();
            }
            for (part, face) in parts {
                let Some(measures) = setter.face(face) else { continue };
                let fresh;
                let shaped = match self.shaped(&part, face, rtl) {
                    Some(shaped) => shaped,
                    None => {
                        fresh = setter.shape(&self.text, part.clone(), face, rtl, &self.lang);
                        &fresh
                    }
                };
                let advance: f64 = shaped.iter().map(|glyph| f64::from(glyph.advance)).sum();
                let glyphs = self.glyphs(shaped, part.end);
                runs.push(Run { face, size, rtl, origin: Point { x, y: Pt::ZERO }, glyphs });
                x += size * (advance / measures.units);
            }
        }
        (runs, x)
    }

    /// The glyphs of a part as they were shaped in the whole text, where shaping the part alone gives the same: it ends
    /// where its run does, or where the shaper says that a break changes nothing.
    fn shaped(&self, part: &Range<usize>, face: usize, rtl: bool) -> Option<&[Shaped]> {
        let run = self.runs.iter().find(|run| run.range.start <= part.start && part.end <= run.range.end)?;
        if run.face != face || run.rtl != rtl {
            return None;
        }
        // A break before a cluster is safe where each of its glyphs says so; one inside a cluster never is.
        let safe = |at: usize| {
            let mut own = run.glyphs.iter().filter(|glyph| glyph.cluster == at).peekable();
            own.peek().is_some() && own.all(|glyph| glyph.breaks)
        };
        let starts = part.start == run.range.start || safe(part.start);
        let ends = part.end == run.range.end || safe(part.end);
        if !(starts && ends) {
            return None;
        }
        let inside = |glyph: &Shaped| part.contains(&glyph.cluster);
        let first = run.glyphs.iter().position(inside)?;
        let number = run.glyphs.iter().skip(first).take_while(|glyph| inside(glyph)).count();
        run.glyphs.get(first..first + number)
    }

    /// Face and direction of a range that lies in a single run, and what is known of its glyphs.
    #[cfg(test)]
    pub(super) fn known(&self, range: &Range<usize>) -> Option<(usize, bool, Option<&[Shaped]>)> {
        let within = |run: &&ShapedRun| run.range.start <= range.start && range.end <= run.range.end;
        let run = self.runs.iter().find(within)?;
        Some((run.face, run.rtl, self.shaped(range, run.face, run.rtl)))
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
                    let after = starts.partition_point(|&start| start <= glyph.cluster);
                    let next = starts.get(after).copied().unwrap_or(end);
                    let all = self.text.get(glyph.cluster..next).unwrap_or("");
                    all.chars().filter(|&c| !is_ignorable(c)).collect()
                };
                given = Some(glyph.cluster);
                Glyph { id: glyph.id, advance: glyph.advance, dx: glyph.dx, dy: glyph.dy, text }
            })
            .collect()
    }
}

/// What a text is known by: its characters, its language, whether it is written from right to left, and its weight.
type Key = (String, String, bool, Weight);

/// How many texts are remembered: those of a few hundred sheets, some megabytes.
const MOST: usize = 5_000;

/// The texts that a set of fonts has measured. Sheets of one program say the same words, and a preview says them again at
/// every key; what is remembered never changes what is made, only how soon.
#[derive(Default)]
pub(crate) struct Memory(Mutex<BTreeMap<Key, Arc<Measured>>>);

/// Another set of fonts measures anew.
impl Clone for Memory {
    fn clone(&self) -> Self {
        Self::default()
    }
}

impl Memory {
    /// Nothing remembered.
    pub(crate) const fn new() -> Self {
        Self(Mutex::new(BTreeMap::new()))
    }

    /// Forgets everything: the fonts have changed.
    pub(crate) fn forget(&mut self) {
        *self = Self::new();
    }

    /// A text's measures, from memory or new.
    pub(super) fn measured(
        &self,
        setter: Typesetter<'_>,
        source: &str,
        lang: &str,
        direction: Direction,
        weight: Weight,
    ) -> Result<Arc<Measured>, Vec<char>> {
        let key = (source.to_owned(), lang.to_owned(), direction == Direction::Rtl, weight);
        // A thread that panicked while it held the memory spoils the memory and nothing else.
        if let Some(known) = self.0.lock().ok().and_then(|known| known.get(&key).cloned()) {
            return Ok(known);
        }
        let made = Arc::new(Measured::new(setter, source, lang, direction, weight)?);
        if let Ok(mut known) = self.0.lock() {
            if known.len() >= MOST {
                known.clear();
            }
            known.insert(key, Arc::clone(&made));
        }
        Ok(made)
    }
}
