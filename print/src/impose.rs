//! Imposition: a finished sheet several times on a larger one. What is drawn is moved, never laid out anew.
//!
//! Every sheet stands upright and the press sheet is turned a quarter where more fit so, which comes to the same.
//! Two-sided work is turned over sideways, so the back of the sheet in a column lies in that column's mirror image:
//! with the block in the middle of the press sheet, each back falls exactly behind its front.

use crate::display::{Colorant, DisplayList, Item, Page, Role, Rule, Technical};
use crate::finding::{PreflightItem, PrintError};
use crate::ink::Ink;
use crate::layout::THICKNESS;
use crate::path::{self, PathOp};
use crate::sheet::{PageGeometry, PressSheet, Turning};
use crate::text::count;
use crate::unit::{Mm, Point, Pt, Rect, TOLERANCE};

/// Where one sheet's page stands on a press sheet.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cell {
    /// The press sheet's side: a page of the imposed list, counted from 0.
    pub side: usize,
    /// Which page of the sheet: 0 its front, 1 its back.
    pub page: usize,
    /// Its trim on the press sheet, in points from that sheet's upper left corner.
    pub trim: Rect,
}

/// A filled press sheet.
#[derive(Debug, Clone, PartialEq)]
pub struct Imposed {
    /// Its sides.
    pub list: DisplayList,
    /// Where each page stands.
    pub cells: Vec<Cell>,
    /// Sheets side by side.
    pub across: usize,
    /// Sheets below each other.
    pub down: usize,
    /// The press sheet as it is turned.
    pub size: (Mm, Mm),
}

impl Imposed {
    /// What preflight says of it.
    pub(crate) fn note(&self) -> PreflightItem {
        let up = self.across * self.down;
        let (width, height) = self.size;
        let message = format!(
            "{up} on a press sheet of {:.0} x {:.0} mm ({} across, {} down)",
            width.0, height.0, self.across, self.down
        );
        PreflightItem::pass("imposed", message)
            .arg("up", up)
            .arg("across", self.across)
            .arg("down", self.down)
            .arg("width", format!("{:.0}", width.0))
            .arg("height", format!("{:.0}", height.0))
    }
}

/// Length of a crop mark on a press sheet, shorter than around a single sheet: room there is paid for. Ours.
const MARK: Pt = Pt::inches(0.125);

/// How many fit and how the press sheet lies.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Grid {
    width: Pt,
    height: Pt,
    across: usize,
    down: usize,
}

/// Fills a press sheet with a finished sheet.
///
/// # Errors
/// When not even one fits, fewer fit than were asked for, or the gutter is narrower than two bleeds.
pub fn impose(list: &DisplayList, press: &PressSheet) -> Result<Imposed, PrintError> {
    let Some(geometry) = list.pages.first().map(|page| page.geometry) else {
        return Err(too_small(press));
    };
    let least = geometry.bleed * 2.0;
    let gutter = press.gutter.map_or(least, Mm::pt);
    // Written so that "not a number" is refused as well.
    if !(gutter >= least - TOLERANCE && gutter <= press.width.max(press.height).pt()) {
        let message = format!(
            "the gutter is {:.2} mm; two bleeds need {:.2} mm between the sheets",
            gutter.mm().0,
            least.mm().0
        );
        return Err(PreflightItem::error("press-gutter", message)
            .arg("gutter", format!("{:.2}", gutter.mm().0))
            .arg("least", format!("{:.2}", least.mm().0))
            .into());
    }
    // Front and back side by side need an even number across.
    let paired = press.turning == Turning::WorkAndTurn && list.pages.len() > 1;
    let grid = best_grid(&geometry, press, gutter, paired)?;
    let cells = cells(list, &grid, &geometry, gutter, paired);
    let sides = cells.iter().map(|cell| cell.side + 1).max().unwrap_or(0);
    let sheet = PageGeometry {
        width: grid.width.mm(),
        height: grid.height.mm(),
        bleed: Pt::ZERO,
        safe: Pt::ZERO,
        corner: Mm::ZERO,
        slug: Pt::ZERO,
    };
    let pages = (0..sides)
        .map(|side| {
            let own: Vec<&Cell> = cells.iter().filter(|cell| cell.side == side).collect();
            let mut items = Vec::new();
            for cell in &own {
                let Some(page) = list.pages.get(cell.page) else { continue };
                items.extend(
                    page.items
                        .iter()
                        .filter(|item| !outside(item))
                        .map(|item| item.moved(cell.trim.x, cell.trim.y)),
                );
            }
            items.extend(marks(list, &own, geometry.bleed));
            Page { name: format!("press-{}", side + 1), geometry: sheet, items }
        })
        .collect();
    Ok(Imposed {
        list: DisplayList { pages, faces: list.faces.clone() },
        cells,
        across: grid.across,
        down: grid.down,
        size: (sheet.width, sheet.height),
    })
}

fn too_small(press: &PressSheet) -> PrintError {
    let (width, height) = (format!("{:.0}", press.width.0), format!("{:.0}", press.height.0));
    let message = format!(
        "no sheet fits on a press sheet of {width} x {height} mm with its bleed and marks; choose a larger one"
    );
    PreflightItem::error("press-too-small", message).arg("width", width).arg("height", height).into()
}

fn best_grid(
    geometry: &PageGeometry,
    press: &PressSheet,
    gutter: Pt,
    paired: bool,
) -> Result<Grid, PrintError> {
    let trim = geometry.trim();
    let around = (geometry.bleed + MARK) * 2.0;
    let fit = |room: Pt, one: Pt| -> usize {
        let n = ((room - around + gutter + TOLERANCE) / (one + gutter)).floor();
        // Truncated on purpose: whole sheets, few of them.
        if n >= 1.0 { n as usize } else { 0 }
    };
    let step = if paired { 2 } else { 1 };
    let (width, height) = (press.width.pt(), press.height.pt());
    let grids = [(width, height), (height, width)].map(|(width, height)| {
        let across = fit(width, trim.width);
        Grid { width, height, across: across - across % step, down: fit(height, trim.height) }
    });
    let most = grids.iter().map(|grid| grid.across * grid.down).max().unwrap_or(0);
    if most == 0 {
        return Err(too_small(press));
    }
    let up = press.up.unwrap_or(most);
    if up == 0 || up > most {
        let message = format!("{up} were asked for on a press sheet that holds {most}; ask for 1 to {most}");
        return Err(PreflightItem::error("press-up", message).arg("up", up).arg("most", most).into());
    }
    // The fullest block of at most so many, with the sheet as it was named if that makes no difference.
    let mut best: Option<Grid> = None;
    for grid in grids {
        for across in (step..=grid.across).step_by(step) {
            let block = Grid { across, down: grid.down.min(up / across), ..grid };
            let more = |other: Grid| block.across * block.down > other.across * other.down;
            if block.down > 0 && best.is_none_or(more) {
                best = Some(block);
            }
        }
    }
    best.ok_or_else(|| too_small(press))
}

fn cells(list: &DisplayList, grid: &Grid, geometry: &PageGeometry, gutter: Pt, paired: bool) -> Vec<Cell> {
    let trim = geometry.trim();
    let block = |n: usize, one: Pt| one * count(n) + gutter * (count(n) - 1.0);
    let left = (grid.width - block(grid.across, trim.width)) / 2.0;
    let top = (grid.height - block(grid.down, trim.height)) / 2.0;
    let at = |column: usize, row: usize| {
        Rect::new(
            left + (trim.width + gutter) * count(column),
            top + (trim.height + gutter) * count(row),
            trim.width,
            trim.height,
        )
    };
    let mut cells = Vec::new();
    for row in 0..grid.down {
        for column in 0..grid.across {
            if paired {
                // Backs in the trailing half: turned over sideways, each falls behind a front of the leading half.
                let page = usize::from(column * 2 >= grid.across);
                cells.push(Cell { side: 0, page, trim: at(column, row) });
            } else {
                for page in 0..list.pages.len() {
                    let column = if page % 2 == 0 { column } else { grid.across - 1 - column };
                    cells.push(Cell { side: page, page, trim: at(column, row) });
                }
            }
        }
    }
    cells
}

/// What stands outside a sheet's trim and is drawn anew around the block.
fn outside(item: &Item) -> bool {
    match item {
        Item::Rule(rule) => rule.what == "crop" || rule.what == "fold",
        Item::Text(line) => line.role == Role::Slug,
        Item::Fill(_) | Item::Technical(_) => false,
    }
}

/// Crop, fold and registration marks around the block, and the slug below it.
fn marks(list: &DisplayList, cells: &[&Cell], bleed: Pt) -> Vec<Item> {
    let mut xs: Vec<Pt> = Vec::new();
    let mut ys: Vec<Pt> = Vec::new();
    let mut folds: Vec<Pt> = Vec::new();
    let add = |all: &mut Vec<Pt>, value: Pt| {
        if all.iter().all(|known| (*known - value).0.abs() > TOLERANCE.0) {
            all.push(value);
        }
    };
    for cell in cells {
        add(&mut xs, cell.trim.x);
        add(&mut xs, cell.trim.right());
        add(&mut ys, cell.trim.y);
        add(&mut ys, cell.trim.bottom());
        for item in list.pages.get(cell.page).map_or(&[][..], |page| &page.items) {
            if let Item::Rule(rule) = item
                && rule.what == "fold"
            {
                add(&mut folds, cell.trim.y + rule.from.y);
            }
        }
    }
    let edge = |all: &[Pt], pick: fn(Pt, Pt) -> Pt| all.iter().copied().reduce(pick).unwrap_or(Pt::ZERO);
    let (left, right) = (edge(&xs, Pt::min), edge(&xs, Pt::max));
    let (top, bottom) = (edge(&ys, Pt::min), edge(&ys, Pt::max));
    let mut items = Vec::new();
    let mut rule = |what: &str, from: (Pt, Pt), to: (Pt, Pt)| {
        let point = |(x, y): (Pt, Pt)| Point { x, y };
        items.push(Item::Rule(Rule {
            what: what.to_owned(),
            from: point(from),
            to: point(to),
            width: THICKNESS,
            ink: Ink::REGISTRATION,
        }));
    };
    for &x in &xs {
        rule("crop", (x, top - bleed), (x, top - bleed - MARK));
        rule("crop", (x, bottom + bleed), (x, bottom + bleed + MARK));
    }
    for &y in &ys {
        rule("crop", (left - bleed, y), (left - bleed - MARK, y));
        rule("crop", (right + bleed, y), (right + bleed + MARK, y));
    }
    let dash = MARK / 5.0;
    for &y in &folds {
        for start in [0.0, 2.0, 4.0] {
            let (near, far) = (bleed + dash * start, bleed + dash * (start + 1.0));
            rule("fold", (left - near, y), (left - far, y));
            rule("fold", (right + near, y), (right + far, y));
        }
    }
    let aside = bleed + MARK / 2.0;
    for x in [left - aside, right + aside] {
        for y in [top - aside, bottom + aside] {
            items.push(registration(Point { x, y }));
        }
    }
    let slug = list
        .pages
        .iter()
        .flat_map(|page| &page.items)
        .find(|item| matches!(item, Item::Text(line) if line.role == Role::Slug));
    if let Some(item @ Item::Text(line)) = slug {
        let (x, y) = (left + Pt(6.0), bottom + bleed + Pt(1.0));
        items.push(item.moved(x - line.rect.x, y - line.rect.y));
    }
    items
}

/// A circle with a cross through it, on every plate.
fn registration(at: Point) -> Item {
    const RADIUS: Pt = Pt(3.0);
    const ARM: Pt = Pt(4.5);
    let ring = Rect::new(at.x - RADIUS, at.y - RADIUS, RADIUS * 2.0, RADIUS * 2.0);
    let mut path = path::rounded(ring, RADIUS);
    let point = |x: Pt, y: Pt| Point { x, y };
    path.extend([
        PathOp::Move(point(at.x - ARM, at.y)),
        PathOp::Line(point(at.x + ARM, at.y)),
        PathOp::Move(point(at.x, at.y - ARM)),
        PathOp::Line(point(at.x, at.y + ARM)),
    ]);
    Item::Technical(Technical {
        what: "registration".to_owned(),
        colorant: Colorant::Registration,
        path,
        width: THICKNESS,
    })
}
