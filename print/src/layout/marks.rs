//! Outside the trim: crop and fold marks, and the slug that says which job this is. And the die's line, which lies on
//! the trim but on no plate that is printed.

use super::content::Content;
use super::fit::LEAST_TYPE;
use super::pen::Pen;
use crate::display::{Colorant, Item, Role};
use crate::ink::Ink;
use crate::job::SheetJob;
use crate::path;
use crate::sheet::SheetPage;
use crate::text::Typesetter;
use crate::unit::{Point, Pt};

/// Length of a crop mark, and its distance from the trim: the bleed, so that no mark is ever printed on stock
/// that is kept.
const MARK: Pt = Pt::inches(0.25);
/// Thickness of a mark: .25 pt (CHECK-VALUES "type and line").
pub(crate) const THICKNESS: Pt = Pt(0.25);

/// A fold mark is broken, so that nobody cuts there: so many dashes in a mark's length.
const DASHES: u8 = 3;

pub(super) fn marks(
    job: &SheetJob,
    content: &Content,
    setter: Typesetter<'_>,
    page: &SheetPage,
) -> Vec<Item> {
    let geometry = &page.geometry;
    let mut pen = Pen::new(setter, None);
    let trim = geometry.trim();
    let off = geometry.bleed;
    for x in [trim.x, trim.right()] {
        for (near, far) in
            [(trim.y - off, trim.y - off - MARK), (trim.bottom() + off, trim.bottom() + off + MARK)]
        {
            pen.rule("crop", Point { x, y: near }, Point { x, y: far }, THICKNESS, Ink::REGISTRATION);
        }
    }
    for y in [trim.y, trim.bottom()] {
        for (near, far) in
            [(trim.x - off, trim.x - off - MARK), (trim.right() + off, trim.right() + off + MARK)]
        {
            pen.rule("crop", Point { x: near, y }, Point { x: far, y }, THICKNESS, Ink::REGISTRATION);
        }
    }
    let dash = MARK / (2.0 * f64::from(DASHES) - 1.0);
    for &y in &page.folds {
        for number in 0..DASHES {
            let start = off + dash * (2.0 * f64::from(number));
            for (from, to) in
                [(trim.x - start, trim.x - start - dash), (trim.right() + start, trim.right() + start + dash)]
            {
                pen.rule("fold", Point { x: from, y }, Point { x: to, y }, THICKNESS, Ink::REGISTRATION);
            }
        }
    }
    if job.die_line {
        let outline = path::rounded(trim, geometry.corner.pt());
        pen.technical("die line", Colorant::Die, outline, THICKNESS);
    }
    // The slug runs below the sheet between the marks. A name too long for it is the caller's to see in the
    // file's title; here only what fits on its one line is set.
    let room = trim.width - Pt(12.0);
    if let Ok(setting) = content.slug.set(LEAST_TYPE, room)
        && !setting.lines.is_empty()
    {
        let mut one = setting;
        one.lines.truncate(1);
        let at = Point { x: trim.x + Pt(6.0), y: trim.bottom() + off + Pt(4.0) };
        pen.words(&content.slug, &one, at, room, Role::Slug, Ink::BLACK);
    }
    pen.items
}
