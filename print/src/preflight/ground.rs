//! What lies below a text: the inks of the areas that are seen around its letters.

use crate::display::{Item, Page, TextLine};
use crate::ink::Ink;
use crate::path::{bounds, contains};
use crate::text::count;
use crate::unit::{Point, Rect};

/// How many points are looked at across and down a line of text. Ours: rounded corners are larger than a step.
const ACROSS: usize = 9;
const DOWN: usize = 3;

/// The inks below a text that is the item of this number, each once; bare paper where nothing is drawn.
pub(super) fn grounds(page: &Page, index: usize, line: &TextLine) -> Vec<Ink> {
    let below: Vec<_> = page
        .items
        .iter()
        .take(index)
        .rev()
        .filter_map(|item| match item {
            Item::Fill(fill) => Some(fill),
            Item::Rule(_) | Item::Text(_) | Item::Technical(_) => None,
        })
        .filter_map(|fill| bounds(&fill.path).map(|frame| (frame, fill)))
        .filter(|(frame, _)| frame.overlaps(&line.rect))
        .collect();
    let mut inks = Vec::new();
    for point in points(line.rect) {
        let seen = below.iter().find(|(_, fill)| contains(&fill.path, point));
        let ink = seen.map_or(Ink::PAPER, |(_, fill)| fill.ink);
        if !inks.contains(&ink) {
            inks.push(ink);
        }
    }
    inks
}

fn points(area: Rect) -> impl Iterator<Item = Point> {
    // In the middle of the parts of a grid: a line's own edges touch its neighbours'.
    let middle = |part: usize, parts: usize| (count(part) + 0.5) / count(parts);
    (0..ACROSS).flat_map(move |x| {
        (0..DOWN).map(move |y| Point {
            x: area.x + area.width * middle(x, ACROSS),
            y: area.y + area.height * middle(y, DOWN),
        })
    })
}
