//! The display list: every area and every line of text of a finished sheet, at its place.
//!
//! Layout ends here and the writers begin here, so that the press file and the preview cannot differ. It has
//! a text form ([`DisplayList::to_text`]) for tests to compare and people to read.

mod golden;

use serde::{Deserialize, Serialize};

use crate::ink::Ink;
use crate::job::Direction;
use crate::path::PathOp;
use crate::sheet::PageGeometry;
use crate::unit::{Point, Pt, Rect};

/// A finished sheet.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DisplayList {
    /// Its pages in order.
    pub pages: Vec<Page>,
    /// The names of the faces that runs refer to by index.
    pub faces: Vec<String>,
}

/// One page.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Page {
    /// Which side it is, in a word: `lid`, `message`, `address`.
    pub name: String,
    /// Its boxes.
    pub geometry: PageGeometry,
    /// What is drawn, in order.
    pub items: Vec<Item>,
}

/// One thing drawn.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum Item {
    /// A filled area.
    Fill(Fill),
    /// A stroked line: crop and fold marks.
    Rule(Rule),
    /// A line of text.
    Text(TextLine),
    /// A line for whoever cuts or aligns, on no plate of its own or on all.
    Technical(Technical),
}

/// What a technical line is drawn in. Neither is one of the four inks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Colorant {
    /// A spot colour that is never printed: where the die cuts.
    Die,
    /// All plates together: what they are laid on each other by.
    Registration,
}

/// An outline stroked for whoever cuts or aligns; it prints over what is below and takes nothing away.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Technical {
    /// What it is.
    pub what: String,
    /// What it is drawn in.
    pub colorant: Colorant,
    /// Its outline.
    pub path: Vec<PathOp>,
    /// How thick.
    pub width: Pt,
}

/// A filled area.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Fill {
    /// What it is: `band`, `panel`, `verdict-yes`, `pictogram bottle`, `qr`.
    pub what: String,
    /// Its outline, filled by the even-odd rule.
    pub path: Vec<PathOp>,
    /// Its ink.
    pub ink: Ink,
    /// What it shows, for those who cannot see it; nothing for what only decorates.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub alt: Option<Alt>,
}

/// What a picture shows, in words of the job's.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Alt {
    /// The language's tag.
    pub lang: String,
    /// The words.
    pub text: String,
}

/// A straight stroke.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Rule {
    /// What it is.
    pub what: String,
    /// One end.
    pub from: Point,
    /// The other end.
    pub to: Point,
    /// How thick.
    pub width: Pt,
    /// Its ink.
    pub ink: Ink,
}

/// What a line of text is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Role {
    /// The sheet's title.
    Title,
    /// Who issues the sheet.
    Issuer,
    /// A verdict in words.
    Heading,
    /// An item's words.
    Body,
    /// What the code is for, whom to ask, what the law asks.
    Foot,
    /// Return address, delivery address, indicia.
    Postal,
    /// Outside the trimmed sheet.
    Slug,
}

/// One line of text as set.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct TextLine {
    /// The characters it shows, in reading order.
    pub text: String,
    /// Its language's tag, empty where it has none (an address).
    pub lang: String,
    /// The paragraph's direction.
    pub direction: Direction,
    /// What it is for.
    pub role: Role,
    /// Which of the job's texts it is a line of, as a code (see [`crate::text_place`]). The lines of one text share it.
    #[serde(default)]
    pub place: String,
    /// What the text has between this line and its next one: a space mostly, nothing where no space breaks lines.
    #[serde(default)]
    pub gap: String,
    /// The area it takes: its advance wide, its line's height high. No two of these overlap.
    pub rect: Rect,
    /// The ink.
    pub ink: Ink,
    /// Whether it stands on its head: the pen of each run then moves to the left. `rect` is where it is on the page.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub turned: bool,
    /// The runs from left to right, as they are read when the line is upright.
    pub runs: Vec<Run>,
}

/// Glyphs of one face, left to right.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Run {
    /// Index into [`DisplayList::faces`].
    pub face: usize,
    /// The type size.
    pub size: Pt,
    /// Whether the run reads from right to left.
    pub rtl: bool,
    /// Where the first glyph's pen starts, on the baseline.
    pub origin: Point,
    /// The glyphs.
    pub glyphs: Vec<Glyph>,
}

/// A glyph of a run. Lengths are in the face's units, as the shaper gives them.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Glyph {
    /// The glyph's number in its face.
    pub id: u16,
    /// How far the pen moves on.
    pub advance: i32,
    /// How far right of the pen it is drawn.
    pub dx: i32,
    /// How far above the pen it is drawn.
    pub dy: i32,
    /// The characters it stands for, in reading order; empty when an earlier glyph of its cluster has them.
    pub text: String,
}

impl Item {
    /// The same thing elsewhere on the page.
    pub(crate) fn moved(&self, dx: Pt, dy: Pt) -> Self {
        let by = |p: Point| Point { x: p.x + dx, y: p.y + dy };
        let mut item = self.clone();
        match &mut item {
            Self::Fill(fill) => map(&mut fill.path, by),
            Self::Technical(line) => map(&mut line.path, by),
            Self::Rule(rule) => (rule.from, rule.to) = (by(rule.from), by(rule.to)),
            Self::Text(line) => {
                line.rect = Rect::new(line.rect.x + dx, line.rect.y + dy, line.rect.width, line.rect.height);
                line.runs.iter_mut().for_each(|run| run.origin = by(run.origin));
            }
        }
        item
    }

    /// The same thing turned on its head within an area.
    pub(crate) fn turned(&self, area: Rect) -> Self {
        let (x, y) = (area.x + area.right(), area.y + area.bottom());
        let by = |p: Point| Point { x: x - p.x, y: y - p.y };
        let mut item = self.clone();
        match &mut item {
            Self::Fill(fill) => map(&mut fill.path, by),
            Self::Technical(line) => map(&mut line.path, by),
            Self::Rule(rule) => (rule.from, rule.to) = (by(rule.from), by(rule.to)),
            Self::Text(line) => {
                let rect = line.rect;
                line.rect = Rect::new(x - rect.right(), y - rect.bottom(), rect.width, rect.height);
                line.runs.iter_mut().for_each(|run| run.origin = by(run.origin));
                line.turned = !line.turned;
            }
        }
        item
    }
}

fn map(path: &mut [PathOp], by: impl Fn(Point) -> Point) {
    path.iter_mut().for_each(|op| *op = op.map(&by));
}

impl DisplayList {
    /// The text form: one line a thing, lengths in points to two places.
    pub fn to_text(&self) -> String {
        golden::write(self)
    }
}
