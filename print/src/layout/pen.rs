//! The pen: places things from the leading edge, and mirrors them on a right-to-left sheet.

use crate::display::{Alt, Colorant, Fill, Item, Role, Rule, Technical};
use crate::ink::Ink;
use crate::job::Direction;
use crate::path::{self, PathOp};
use crate::pictogram::pictogram;
use crate::text::{Paragraph, Setting, Typesetter};
use crate::unit::{Point, Pt, Rect};

pub(super) struct Pen<'a> {
    setter: Typesetter<'a>,
    /// The page's width when everything is mirrored.
    mirror: Option<Pt>,
    pub(super) items: Vec<Item>,
}

impl<'a> Pen<'a> {
    pub(super) const fn new(setter: Typesetter<'a>, mirror: Option<Pt>) -> Self {
        Self { setter, mirror, items: Vec::new() }
    }

    /// The direction in which the sheet is read.
    pub(super) const fn direction(&self) -> Direction {
        if self.mirror.is_some() { Direction::Rtl } else { Direction::Ltr }
    }

    /// The same area as seen on the page.
    fn area(&self, r: Rect) -> Rect {
        match self.mirror {
            Some(width) => Rect::new(width - r.right(), r.y, r.width, r.height),
            None => r,
        }
    }

    /// Fills an outline that is given from the leading edge.
    pub(super) fn fill(&mut self, what: &str, path: Vec<PathOp>, ink: Ink) {
        let path = match self.mirror {
            Some(width) => path.into_iter().map(|op| op.map(|p| Point { x: width - p.x, y: p.y })).collect(),
            None => path,
        };
        self.items.push(Item::Fill(Fill { what: what.to_owned(), path, ink, alt: None }));
    }

    /// Says what the area drawn last shows.
    pub(super) fn describe(&mut self, alt: Option<&Alt>) {
        if let Some(Item::Fill(fill)) = self.items.last_mut() {
            fill.alt = alt.cloned();
        }
    }

    pub(super) fn panel(&mut self, what: &str, area: Rect, radius: Pt, ink: Ink) {
        self.fill(what, path::rounded(area, radius), ink);
    }

    /// Draws a pictogram; only arrows turn with the direction of reading.
    pub(super) fn picture(&mut self, id: &str, area: Rect, ink: Ink) {
        let Some(drawing) = pictogram(id) else { return };
        let turned = self.mirror.is_some() && id == "verdict-elsewhere";
        let path = drawing.fitted(self.area(area), turned);
        self.items.push(Item::Fill(Fill { what: format!("pictogram {id}"), path, ink, alt: None }));
    }

    /// Draws what must not be mirrored (a code) in an area given from the leading edge.
    pub(super) fn unmirrored(
        &mut self,
        what: &str,
        area: Rect,
        ink: Ink,
        draw: impl FnOnce(Point) -> Vec<PathOp>,
    ) {
        let at = self.area(area);
        let path = draw(Point { x: at.x, y: at.y });
        self.items.push(Item::Fill(Fill { what: what.to_owned(), path, ink, alt: None }));
    }

    /// Draws a line for whoever cuts.
    pub(super) fn technical(&mut self, what: &str, colorant: Colorant, path: Vec<PathOp>, width: Pt) {
        self.items.push(Item::Technical(Technical { what: what.to_owned(), colorant, path, width }));
    }

    /// Sets a paragraph's lines in the middle of a measure. Returns its height.
    pub(super) fn centred(
        &mut self,
        paragraph: &Paragraph,
        setting: &Setting,
        area: Rect,
        role: Role,
        ink: Ink,
    ) -> Pt {
        let at = Point { x: area.x, y: area.y };
        for line in paragraph.draw(self.setter, setting, at, area.width, role, ink) {
            let aside = area.x + (area.width - line.rect.width) / 2.0 - line.rect.x;
            self.items.push(Item::Text(line).moved(aside, Pt::ZERO));
        }
        setting.height()
    }

    pub(super) fn rule(&mut self, what: &str, from: Point, to: Point, width: Pt, ink: Ink) {
        let flip = |p: Point| self.mirror.map_or(p, |page| Point { x: page - p.x, y: p.y });
        let (from, to) = (flip(from), flip(to));
        self.items.push(Item::Rule(Rule { what: what.to_owned(), from, to, width, ink }));
    }

    /// Sets a paragraph in an area given from the leading edge, at the edge its own language starts from.
    /// Returns its height.
    pub(super) fn words(
        &mut self,
        paragraph: &Paragraph,
        setting: &Setting,
        at: Point,
        measure: Pt,
        role: Role,
        ink: Ink,
    ) -> Pt {
        let area = self.area(Rect::new(at.x, at.y, measure, setting.height()));
        let lines = paragraph.draw(self.setter, setting, Point { x: area.x, y: area.y }, measure, role, ink);
        self.items.extend(lines.into_iter().map(Item::Text));
        setting.height()
    }
}
