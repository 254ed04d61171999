//! A round label: a ring in the verdict's colour, its shape, the thing's picture large, and the words in every
//! language, each line as wide as the circle is there.

use super::advice;
use super::content::{Content, Entry, SectionContent};
use super::fit::{Trial, Wide, floor_for, sizes};
use super::pen::Pen;
use super::section::inks;
use crate::display::{Item, Role};
use crate::finding::{PreflightItem, PrintError};
use crate::ink::Ink;
use crate::job::{SheetJob, Tone};
use crate::path;
use crate::qr::Code;
use crate::sheet::PageGeometry;
use crate::text::{Paragraph, Setting, Typesetter, count};
use crate::unit::{Point, Pt, Rect};

/// The largest type on a label of 115 mm; larger ones have it in proportion.
const LARGEST: Pt = Pt(24.0);
/// The most lines one language takes.
const MOST_LINES: usize = 3;
/// Parts of the radius: the ring beyond the safe distance, the verdict's shape, the picture.
const RING: f64 = 0.03;
const SHAPE: f64 = 0.34;
const PICTURE: f64 = 0.66;
/// Parts of the radius: gaps.
const GAP: f64 = 0.05;

/// The circle that words keep within.
#[derive(Clone, Copy)]
struct Disc {
    middle: Point,
    radius: Pt,
}

impl Disc {
    /// The width between `top` and `bottom`, as distances from the page's upper edge.
    fn width(self, top: Pt, bottom: Pt) -> Pt {
        let far = Pt((top - self.middle.y).0.abs().max((bottom - self.middle.y).0.abs()));
        if far >= self.radius {
            return Pt::ZERO;
        }
        let square = self.radius.0 * self.radius.0 - far.0 * far.0;
        Pt(root(square) * 2.0)
    }

    fn row(self, top: Pt, height: Pt) -> Rect {
        let width = self.width(top, top + height);
        Rect::new(self.middle.x - width / 2.0, top, width, height)
    }
}

/// A square root by Newton's steps: multiplication and division are the same to the bit everywhere.
fn root(square: f64) -> f64 {
    let mut guess = square.max(1.0);
    for _ in 0..40 {
        guess = (guess + square / guess) / 2.0;
    }
    guess
}

struct Stack {
    words: Vec<(Setting, Rect)>,
    address: (Setting, Rect),
    /// How far the last line is from the circle's lower end; negative when it does not fit.
    left: Pt,
}

/// The fixed upper part: where the shape, the picture and the code stand, and where words begin.
struct Upper {
    shape: Rect,
    picture: Rect,
    code: Rect,
    words_from: Pt,
}

impl Upper {
    fn new(disc: Disc, code: &Code) -> Self {
        let (radius, middle) = (disc.radius, disc.middle);
        let gap = radius * GAP;
        let shape = radius * SHAPE;
        let top = middle.y - radius + gap * 1.4;
        let shape_at = Rect::new(middle.x - shape / 2.0, top, shape, shape);
        let side = radius * PICTURE;
        let row = shape_at.bottom() + gap;
        let both = side + gap * 2.0 + code.side();
        let picture = Rect::new(middle.x - both / 2.0, row, side, side);
        let code_at = Rect::new(
            picture.right() + gap * 2.0,
            row + (side - code.side()) / 2.0,
            code.side(),
            code.side(),
        );
        Self { shape: shape_at, picture, code: code_at, words_from: row + side.max(code.side()) + gap }
    }
}

impl Stack {
    fn plan(
        content: &Content,
        entry: &Entry,
        trial: &Trial,
        disc: Disc,
        from: Pt,
        size: Pt,
    ) -> Result<Self, Wide> {
        let mut y = from;
        let mut words = Vec::new();
        for paragraph in entry.words.iter() {
            let (setting, area) = fitted(paragraph, trial, disc, y, size)?;
            y += setting.height() + size * 0.12;
            words.push((setting, area));
        }
        y += size * 0.2;
        let (address, area) = fitted(&content.address, trial, disc, y, (size * 0.8).max(Pt(8.0)))?;
        let left = disc.middle.y + disc.radius - y - address.height();
        Ok(Self { words, address: (address, area), left })
    }
}

/// Sets a paragraph at `y` in the fewest lines for which the circle is wide enough all the way down.
fn fitted(
    paragraph: &Paragraph,
    trial: &Trial,
    disc: Disc,
    y: Pt,
    size: Pt,
) -> Result<(Setting, Rect), Wide> {
    let leading = trial.set(paragraph, size, disc.radius * 100.0)?.leading;
    let mut last = None;
    for lines in 1..=MOST_LINES {
        let row = disc.row(y, leading * count(lines));
        if row.width <= Pt::ZERO {
            break;
        }
        match trial.set(paragraph, size, row.width) {
            Ok(setting) if setting.lines.len() <= lines => return Ok((setting, row)),
            Ok(_) => {}
            Err(wide) => last = Some(wide),
        }
    }
    Err(last.unwrap_or_else(|| Wide {
        place: paragraph.place.clone(),
        lang: paragraph.lang.clone(),
        text: paragraph.words.clone(),
        word: paragraph.words.clone(),
        room: 0,
    }))
}

pub(super) fn lay_out(
    content: &Content,
    code: &Code,
    setter: Typesetter<'_>,
    geometry: &PageGeometry,
    job: &SheetJob,
) -> Result<(Vec<Item>, Pt), PrintError> {
    let Some((section, entry)) = message(content) else {
        let message = "a round label bears one message; choose one thing".to_owned();
        return Err(PreflightItem::error("one-message", message).arg("lines", 0).into());
    };
    let trim = geometry.trim();
    let middle = Point { x: trim.width / 2.0, y: trim.height / 2.0 };
    let safe = trim.width / 2.0 - geometry.safe;
    let disc = Disc { middle, radius: safe - safe * RING };
    let upper = Upper::new(disc, code);
    let floor = floor_for(job.viewing_distance);
    let largest = LARGEST * (geometry.width.0 / 115.0);
    let whole = Trial::default();
    for size in sizes(largest.max(floor), floor) {
        let Ok(plan) = Stack::plan(content, entry, &whole, disc, upper.words_from, size) else { continue };
        if plan.left >= Pt::ZERO {
            let mut pen = Pen::new(setter, None);
            draw(&plan, (content, section, entry), (&upper, code), &mut pen, geometry, disc);
            return Ok((pen.items, size));
        }
    }
    let missing = |trial: &Trial| {
        Stack::plan(content, entry, trial, disc, upper.words_from, floor).map(|plan| -plan.left)
    };
    let mut paragraphs: Vec<&Paragraph> = entry.words.iter().collect();
    paragraphs.push(&content.address);
    Err(advice::shorten(&paragraphs, job, geometry, floor, missing))
}

/// The one thing it says.
fn message(content: &Content) -> Option<(&SectionContent, &Entry)> {
    match content.sections.as_slice() {
        [section] => match section.entries.as_slice() {
            [entry] => Some((section, entry)),
            _ => None,
        },
        _ => None,
    }
}

fn draw(
    plan: &Stack,
    (content, section, entry): (&Content, &SectionContent, &Entry),
    (upper, code): (&Upper, &Code),
    pen: &mut Pen<'_>,
    geometry: &PageGeometry,
    disc: Disc,
) {
    let tone = if entry.hazard { Tone::Caution } else { section.tone };
    let (accent, tint) = inks(tone);
    let bleed = geometry.bleed_box();
    pen.panel("band", bleed, bleed.width / 2.0, accent);
    let paper = Rect::new(
        disc.middle.x - disc.radius,
        disc.middle.y - disc.radius,
        disc.radius * 2.0,
        disc.radius * 2.0,
    );
    pen.panel("disc", paper, disc.radius, Ink::PAPER);
    // Black on the light ochre, else the verdict's own ink.
    let ink = if tone == Tone::Caution { Ink::BLACK } else { accent };
    pen.picture(tone.shape(), upper.shape, ink);
    let id = entry.pictogram.as_deref().unwrap_or_else(|| tone.shape());
    pen.panel(
        "tile",
        upper.picture,
        upper.picture.width * 0.16,
        if tone == Tone::Caution { accent } else { tint },
    );
    pen.picture(id, upper.picture.grown(-upper.picture.width * 0.08), ink);
    pen.describe(entry.alt.as_ref());
    pen.fill("quiet zone", path::rectangle(upper.code), Ink::PAPER);
    pen.fill("qr", code.outline(Point { x: upper.code.x, y: upper.code.y }), Ink::BLACK);
    for (words, (setting, area)) in entry.words.iter().zip(&plan.words) {
        pen.centred(words, setting, *area, Role::Body, Ink::BLACK);
    }
    let (setting, area) = &plan.address;
    pen.centred(&content.address, setting, *area, Role::Foot, Ink::BLACK);
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn roots_are_roots() {
        for value in [0.25, 1.0, 2.0, 20_000.0, 1e6] {
            let found = root(value);
            assert!((found * found - value).abs() < 1e-9 * value.max(1.0), "{value}: {found}");
        }
    }
}
