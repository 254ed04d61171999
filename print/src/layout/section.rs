//! A section: its verdict by shape and word, and a grid of pictures with words in every language.

use super::content::{Entry, SectionContent};
use super::fit::{SideBySide, Trial, Wide};
use super::pen::Pen;
use crate::display::Role;
use crate::ink::Ink;
use crate::job::Tone;
use crate::text::{Paragraph, Setting, count};
use crate::unit::{Mm, Point, Pt, Rect};

/// Pictograms are drawn to be read at 8 mm, and never set smaller.
pub(crate) const SMALLEST_PICTURE: Mm = Mm(8.0);

/// The most columns of a grid.
const MOST_COLUMNS: usize = 4;

/// A section's accent and what lies behind its items.
pub(super) fn inks(tone: Tone) -> (Ink, Ink) {
    match tone {
        Tone::Yes => (Ink::YES, Ink::YES_TINT),
        Tone::No => (Ink::NO, Ink::NO_TINT),
        Tone::Elsewhere => (Ink::ELSEWHERE, Ink::ELSEWHERE_TINT),
        Tone::Caution => (Ink::CAUTION, Ink::CAUTION_TINT),
    }
}

/// What stands on the accent: paper, but black on the light one.
fn on_accent(tone: Tone) -> Ink {
    match tone {
        Tone::Caution => Ink::BLACK,
        Tone::Yes | Tone::No | Tone::Elsewhere => Ink::PAPER,
    }
}

/// Measures that follow from the type size.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Scale {
    pub(super) size: Pt,
    pub(super) picture: Pt,
}

impl Scale {
    pub(super) fn new(size: Pt, picture: f64) -> Self {
        Self { size, picture: (size * picture).max(SMALLEST_PICTURE.pt()) }
    }
    fn heading(self) -> Pt {
        self.size * 1.35
    }
    fn pad(self) -> Pt {
        self.size * 0.75
    }
    fn gap(self) -> Pt {
        self.size * 0.65
    }
    fn column_gap(self) -> Pt {
        self.size * 1.1
    }
    pub(super) fn row_gap(self) -> Pt {
        self.size * 0.45
    }
    fn between_languages(self) -> Pt {
        self.size * 0.08
    }
    /// The most that is put between two languages where there is room: less than a line, or they would fall apart.
    fn widest_between_languages(self) -> Pt {
        self.size * 0.35
    }
    fn shape(self) -> Pt {
        self.size * 2.1
    }
}

struct Cell {
    words: Vec<Setting>,
    height: Pt,
}

struct Grid {
    columns: usize,
    cell: Pt,
    measure: Pt,
    cells: Vec<Cell>,
    rows: Vec<Pt>,
}

pub(super) struct SectionPlan {
    scale: Scale,
    width: Pt,
    headings: SideBySide,
    head: Pt,
    grid: Grid,
    pub(super) height: Pt,
}

/// Numbers of columns that let pictures stand below each other from section to section; the last takes any.
const FAMILIES: [&[usize]; 3] = [&[1, 2, 4], &[1, 3], &[1, 2, 3, 4]];

impl SectionPlan {
    /// Plans the sections of one column of the sheet: with numbers of columns that line up, unless others save more
    /// than a line.
    pub(super) fn plan_all(
        sections: &[SectionContent],
        trial: &Trial,
        width: Pt,
        scale: Scale,
    ) -> Result<Vec<Self>, Wide> {
        let inner = width - scale.pad() * 2.0;
        let mut grids = Vec::new();
        for section in sections {
            grids.push(Grids::of(section, trial, inner, scale)?);
        }
        let height = |family: &[usize]| -> Pt { grids.iter().map(|it| it.lowest(family).1).sum() };
        let mut best: (&[usize], Pt) = (&[1], Pt(f64::MAX));
        for family in FAMILIES {
            let height = height(family);
            if height < best.1 - scale.size * 1.5 {
                best = (family, height);
            }
        }
        let plans = sections.iter().zip(&mut grids);
        plans.map(|(section, grids)| Self::plan(section, grids.take(best.0), trial, width, scale)).collect()
    }

    fn plan(
        section: &SectionContent,
        grid: Grid,
        trial: &Trial,
        width: Pt,
        scale: Scale,
    ) -> Result<Self, Wide> {
        let inner = width - scale.pad() * 2.0;
        let for_headings = inner - scale.shape() - scale.gap();
        let headings =
            SideBySide::plan(&section.headings, trial, scale.heading(), for_headings, scale.column_gap())?;
        let head = headings.height().max(scale.shape()) + scale.size * 0.5;
        let around = if grid.rows.is_empty() { Pt::ZERO } else { scale.pad() * 2.0 };
        Ok(Self { scale, width, headings, head, height: head + grid.height(scale) + around, grid })
    }

    pub(super) fn rows(&self) -> usize {
        self.grid.rows.len()
    }

    /// Draws the section with each row `extra` higher than planned; returns the height it takes.
    pub(super) fn draw(&self, section: &SectionContent, pen: &mut Pen<'_>, at: Point, extra: Pt) -> Pt {
        let (accent, tint) = inks(section.tone);
        let scale = self.scale;
        let height = self.height + extra * count(self.rows());
        let radius = scale.size * 0.7;
        pen.panel("panel", Rect::new(at.x, at.y, self.width, height), radius, tint);
        pen.fill("head", head_outline(Rect::new(at.x, at.y, self.width, self.head), radius), accent);
        let on = on_accent(section.tone);
        let shape = scale.shape();
        let mut x = at.x + scale.pad();
        let middle = at.y + self.head / 2.0;
        pen.picture(section.tone.shape(), Rect::new(x, middle - shape / 2.0, shape, shape), on);
        x += shape + scale.gap();
        let set = self.headings.settings.iter().zip(&self.headings.columns);
        for (heading, (setting, &column)) in section.headings.iter().zip(set) {
            let y = heading_top(heading, setting, middle);
            pen.words(heading, setting, Point { x, y }, column, Role::Heading, on);
            x += column + scale.column_gap();
        }
        let mut y = at.y + self.head + scale.pad();
        let step = self.grid.cell + scale.column_gap();
        let mut entries = section.entries.iter().zip(&self.grid.cells);
        for row in &self.grid.rows {
            let row = *row + extra;
            for column in 0..self.grid.columns {
                let Some((entry, cell)) = entries.next() else { break };
                let x = at.x + scale.pad() + step * count(column);
                self.draw_cell(entry, cell, section.tone, pen, Point { x, y }, row);
            }
            y += row + scale.row_gap();
        }
        height
    }

    fn draw_cell(&self, entry: &Entry, cell: &Cell, tone: Tone, pen: &mut Pen<'_>, at: Point, row: Pt) {
        let scale = self.scale;
        let side = scale.picture;
        let tile = Rect::new(at.x, at.y + (row - side) / 2.0, side, side);
        let (accent, _) = inks(tone);
        // A hazard is black on ochre wherever it stands, with the caution's shape where it has no picture.
        let (behind, ink) = if entry.hazard || tone == Tone::Caution {
            (Ink::CAUTION, Ink::BLACK)
        } else {
            (Ink::PAPER, accent)
        };
        let picture = entry.pictogram.as_deref().or(entry.hazard.then_some(Tone::Caution.shape()));
        if let Some(id) = picture {
            pen.panel("tile", tile, side * 0.16, behind);
            pen.picture(id, tile.grown(-side * 0.1), ink);
            pen.describe(entry.alt.as_ref());
        }
        let x = at.x + self.grid.cell - self.grid.measure;
        let slack = row - words_height(&cell.words, scale);
        let apart = apart(&cell.words, scale, slack);
        let mut y = at.y + (slack - apart * count(cell.words.len().saturating_sub(1))) / 2.0;
        for (words, setting) in entry.words.iter().zip(&cell.words) {
            // A text that starts from the other edge stays beside its picture: its block is as wide as its words.
            let measure = if words.direction == pen.direction() { self.grid.measure } else { setting.width };
            y += pen.words(words, setting, Point { x, y }, measure, Role::Body, Ink::BLACK);
            y += scale.between_languages() + apart;
        }
    }
}

/// What is put between two languages of a cell besides, out of the height that its row has left over. Where all stay on
/// one line nothing is: each line is a language, and one cell stands as close as the next.
fn apart(words: &[Setting], scale: Scale, slack: Pt) -> Pt {
    let gaps = words.len().saturating_sub(1);
    if gaps == 0 || words.iter().all(|setting| setting.lines.len() < 2) {
        return Pt::ZERO;
    }
    // Half of it: the row keeps its distance from the next.
    let most = scale.widest_between_languages() - scale.between_languages();
    (slack / (2.0 * count(gaps))).min(most).max(Pt::ZERO)
}

/// Where a heading's block starts: its capitals in the middle when it is one line, else the block.
fn heading_top(heading: &Paragraph, setting: &Setting, middle: Pt) -> Pt {
    if setting.lines.len() == 1 {
        middle - heading.middle(setting.size)
    } else {
        middle - setting.height() / 2.0
    }
}

/// The head's outline: round above, straight below, where the items follow.
fn head_outline(area: Rect, radius: Pt) -> Vec<crate::path::PathOp> {
    use crate::path::PathOp::{Close, Curve, Line, Move};
    let at = |x: Pt, y: Pt| Point { x, y };
    let (left, top, right, bottom) = (area.x, area.y, area.right(), area.bottom());
    let k = radius * 0.45;
    vec![
        Move(at(left, bottom)),
        Line(at(left, top + radius)),
        Curve(at(left, top + k), at(left + k, top), at(left + radius, top)),
        Line(at(right - radius, top)),
        Curve(at(right - k, top), at(right, top + k), at(right, top + radius)),
        Line(at(right, bottom)),
        Close,
    ]
}

fn words_height(words: &[Setting], scale: Scale) -> Pt {
    let gaps = scale.between_languages() * count(words.len().saturating_sub(1));
    words.iter().map(Setting::height).sum::<Pt>() + gaps
}

/// A section's grids: with one column, two, and so on, where no word is too wide.
struct Grids(Vec<(Grid, Pt)>);

impl Grids {
    fn of(section: &SectionContent, trial: &Trial, inner: Pt, scale: Scale) -> Result<Self, Wide> {
        // What does not fit one column fits no other.
        let mut grids = vec![grid(section, trial, inner, scale, 1)?];
        let more = 2..=MOST_COLUMNS.min(section.entries.len());
        grids.extend(more.filter_map(|columns| grid(section, trial, inner, scale, columns).ok()));
        let weighed = |grid: Grid| {
            // One entry alone in the last of several rows looks left over.
            let over = section.entries.len().checked_rem(grid.columns);
            let alone = grid.columns > 2 && grid.rows.len() > 1 && over == Some(1);
            let height = grid.height(scale) + if alone { scale.size * 0.4 } else { Pt::ZERO };
            (grid, height)
        };
        Ok(Self(grids.into_iter().map(weighed).collect()))
    }

    /// The place and height of the grid of the fewest columns among the lowest ones of a family.
    fn lowest(&self, family: &[usize]) -> (usize, Pt) {
        let mut best = (0, Pt(f64::MAX));
        for (place, (grid, height)) in self.0.iter().enumerate() {
            if family.contains(&grid.columns) && *height < best.1 - crate::unit::TOLERANCE {
                best = (place, *height);
            }
        }
        best
    }

    fn take(&mut self, family: &[usize]) -> Grid {
        let place = self.lowest(family).0;
        self.0.swap_remove(place).0
    }
}

impl Grid {
    fn height(&self, scale: Scale) -> Pt {
        let gaps = scale.row_gap() * count(self.rows.len().saturating_sub(1));
        self.rows.iter().copied().sum::<Pt>() + gaps
    }
}

fn grid(
    section: &SectionContent,
    trial: &Trial,
    inner: Pt,
    scale: Scale,
    columns: usize,
) -> Result<Grid, Wide> {
    let pictures = section.entries.iter().any(|entry| entry.pictogram.is_some() || entry.hazard);
    let cell = (inner - scale.column_gap() * (count(columns) - 1.0)) / count(columns);
    let measure = if pictures { cell - scale.picture - scale.gap() } else { cell };
    let mut cells = Vec::new();
    for entry in &section.entries {
        let words: Vec<Setting> = entry
            .words
            .iter()
            .map(|words| trial.set(words, scale.size, measure))
            .collect::<Result<_, _>>()?;
        let picture = if pictures { scale.picture } else { Pt::ZERO };
        let height = words_height(&words, scale).max(picture);
        cells.push(Cell { words, height });
    }
    let rows =
        cells.chunks(columns).map(|row| row.iter().map(|cell| cell.height).fold(Pt::ZERO, Pt::max)).collect();
    Ok(Grid { columns, cell, measure, cells, rows })
}
