//! What lies below a text: the inks of the areas that are seen around its letters.

use crate::display::{DisplayList, Fill, Item, Page};
use crate::ink::Ink;
use crate::path::{bounds, contains};
use crate::text::count;
use crate::unit::{Point, Rect};

/// How many points are looked at across and down a line of text. Ours: rounded corners are larger than a step.
const ACROSS: usize = 9;
const DOWN: usize = 3;

/// The inks below every text of a sheet, looked for once for all checks that ask.
pub(crate) struct Grounds(Vec<Vec<Vec<Ink>>>);

impl Grounds {
    /// Of a display list's texts.
    pub(crate) fn of(list: &DisplayList) -> Self {
        Self(list.pages.iter().map(on_page).collect())
    }

    /// The inks below the text that is a page's item of this number, each once; bare paper where nothing is drawn.
    pub(super) fn below(&self, page: usize, item: usize) -> &[Ink] {
        self.0.get(page).and_then(|items| items.get(item)).map_or(&[], Vec::as_slice)
    }
}

/// For each item of a page, the inks below it if it is a text.
fn on_page(page: &Page) -> Vec<Vec<Ink>> {
    let mut below: Vec<(Rect, &Fill)> = Vec::new();
    let mut all = Vec::new();
    for item in &page.items {
        let mut inks = Vec::new();
        match item {
            Item::Text(line) => {
                let near: Vec<_> =
                    below.iter().rev().filter(|(frame, _)| frame.overlaps(&line.rect)).collect();
                for point in points(line.rect) {
                    let seen =
                        near.iter().find(|(frame, fill)| frame.holds(point) && contains(&fill.path, point));
                    let ink = seen.map_or(Ink::PAPER, |(_, fill)| fill.ink);
                    if !inks.contains(&ink) {
                        inks.push(ink);
                    }
                }
            }
            Item::Fill(fill) => below.extend(bounds(&fill.path).map(|frame| (frame, fill))),
            Item::Rule(_) | Item::Technical(_) => {}
        }
        all.push(inks);
    }
    all
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
