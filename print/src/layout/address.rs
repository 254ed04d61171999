//! The mailer's address side: postal zones first, then a panel that says what the piece is. The cover of a folded
//! piece is that panel again, larger, with pictures of what goes in.

use super::advice;
use super::content::Content;
use super::fit::{LEAST_TYPE, Trial, Wide, floor_for, sizes};
use super::pen::Pen;
use crate::display::{Alt, Item, Role};
use crate::finding::{PreflightItem, PrintError};
use crate::ink::Ink;
use crate::job::{SheetJob, Tone};
use crate::place::{ADDRESSEE, INDICIA, RETURN_ADDRESS, english};
use crate::qr::Code;
use crate::sheet::{Area, PageGeometry, PostalZones, SAFE, SMALLEST_ADDRESS_TYPE};
use crate::text::{Paragraph, Setting, Typesetter, count};
use crate::unit::{Point, Pt, Rect};

/// A panel's measures, on an address side and where it is most of what is seen.
#[derive(Clone, Copy)]
struct Look {
    /// The largest type of its sentences.
    largest: Pt,
    /// Titles in one language, and in several, in sizes of the sentences.
    titles: (f64, f64),
    /// The code's size.
    code: f64,
}
const SMALL: Look = Look { largest: Pt(14.0), titles: (1.9, 1.35), code: 1.0 };
const LARGE: Look = Look { largest: Pt(17.0), titles: (3.0, 2.2), code: 1.9 };
/// A panel at least this high is looked at like a cover.
const HIGH: Pt = Pt::inches(2.5);
/// The side of the pictures below a cover's panel.
const COVER_PICTURE: Pt = Pt::inches(0.7);
/// The most of them.
const MOST_PICTURES: usize = 9;

struct Panel {
    titles: Vec<Setting>,
    scans: Vec<Option<Setting>>,
    address: Setting,
    column: Pt,
    gap: Pt,
    pad: Pt,
    left: Pt,
}

impl Panel {
    fn plan(
        content: &Content,
        code: &Code,
        trial: &Trial,
        area: Rect,
        (size, look): (Pt, Look),
    ) -> Result<Self, Wide> {
        let (pad, gap) = (size * 1.1, size * 1.4);
        let beside = area.width - code.side() - pad * 3.0;
        let languages = count(content.titles.len());
        let column = (beside - gap * (languages - 1.0)) / languages;
        let larger = if content.titles.len() == 1 { look.titles.0 } else { look.titles.1 };
        let titles: Vec<Setting> =
            content.titles.iter().map(|it| trial.set(it, size * larger, column)).collect::<Result<_, _>>()?;
        let scans: Vec<Option<Setting>> = content
            .scans
            .iter()
            .map(|scan| scan.as_ref().map(|it| trial.set(it, size, column)).transpose())
            .collect::<Result<_, _>>()?;
        let address = trial.set(&content.address, size * 1.3, beside)?;
        let words = titles.iter().zip(&scans).map(|(title, scan)| {
            title.height() + scan.as_ref().map_or(Pt::ZERO, |scan| scan.height() + size * 0.3)
        });
        let needed = (words.fold(Pt::ZERO, Pt::max) + size * 0.5 + address.height()).max(code.side());
        let left = area.height - pad * 1.4 - needed;
        Ok(Self { titles, scans, address, column, gap, pad, left })
    }

    fn draw(&self, content: &Content, code: &Code, pen: &mut Pen<'_>, area: Rect, size: Pt) {
        pen.panel("panel", area, size * 0.8, Ink::BAND);
        let side = code.side();
        let tile = Rect::new(area.right() - self.pad - side, area.y + (area.height - side) / 2.0, side, side);
        pen.unmirrored("quiet zone", tile, Ink::PAPER, |at| {
            crate::path::rectangle(Rect::new(at.x, at.y, side, side))
        });
        pen.unmirrored("qr", tile, Ink::BLACK, |at| code.outline(at));
        pen.describe(content.code_alt.as_ref());
        let mut x = area.x + self.pad;
        let top = area.y + self.pad * 0.7;
        let titles = content.titles.iter().zip(&self.titles);
        for ((title, setting), (scan, scan_set)) in titles.zip(content.scans.iter().zip(&self.scans)) {
            let mut y = top;
            y += pen.words(title, setting, Point { x, y }, self.column, Role::Title, Ink::PAPER) + size * 0.3;
            if let (Some(scan), Some(setting)) = (scan, scan_set) {
                pen.words(scan, setting, Point { x, y }, self.column, Role::Foot, Ink::PAPER);
            }
            x += self.column + self.gap;
        }
        let at = Point { x: area.x + self.pad, y: area.bottom() - self.pad * 0.7 - self.address.height() };
        let measure = tile.x - self.pad - at.x;
        pen.words(&content.address, &self.address, at, measure, Role::Foot, Ink::PAPER);
    }
}

/// What a side is made from.
pub(super) struct Side<'a> {
    pub(super) content: &'a Content,
    pub(super) code: &'a Code,
    pub(super) setter: Typesetter<'a>,
    pub(super) geometry: &'a PageGeometry,
    pub(super) job: &'a SheetJob,
    /// The page, counted from 0, for messages.
    pub(super) page: usize,
}

pub(super) fn lay_out(side: &Side<'_>, zones: &PostalZones) -> Result<Vec<Item>, PrintError> {
    let Side { content, setter, page, .. } = *side;
    // The post reads from left to right whatever the sheet's language: zones are never mirrored.
    let mut post = Pen::new(setter, None);
    let small = SMALLEST_ADDRESS_TYPE;
    lines(&mut post, &content.return_address, (page, zones.return_address), small, RETURN_ADDRESS)?;
    if !content.indicia.is_empty() {
        frame(&mut post, zones.indicia);
        lines(&mut post, &content.indicia, (page, zones.indicia.grown(Pt(-6.0))), small, INDICIA)?;
    }
    lines(&mut post, &content.addressee, (page, zones.address_block), Pt(11.0), ADDRESSEE)?;
    let mut items = post.items;
    if zones.message.width > Pt::ZERO {
        let look = if zones.message.height >= HIGH { LARGE } else { SMALL };
        items.extend(pictured(side, zones.message, look)?);
    }
    items.extend(small_print(side, zones)?);
    Ok(items)
}

/// The cover of a folded piece.
pub(super) fn cover(side: &Side<'_>, area: &Area) -> Result<Vec<Item>, PrintError> {
    pictured(side, area.rect.grown(-SAFE), LARGE)
}

/// A panel, and where there is room for it a row of pictures of what goes in.
fn pictured(side: &Side<'_>, safe: Rect, look: Look) -> Result<Vec<Item>, PrintError> {
    if safe.height < HIGH {
        return panel(side, safe, look);
    }
    let strip = COVER_PICTURE + Pt(10.0);
    let mut pictures: Vec<(&str, Option<&Alt>)> = Vec::new();
    let accepted = side.content.sections.iter().filter(|section| section.tone == Tone::Yes);
    for entry in accepted.flat_map(|section| &section.entries) {
        let Some(id) = entry.pictogram.as_deref() else { continue };
        if pictures.len() < MOST_PICTURES && pictures.iter().all(|(known, _)| *known != id) {
            pictures.push((id, entry.alt.as_ref()));
        }
    }
    let below = if pictures.is_empty() { Pt::ZERO } else { strip };
    let upper = Rect::new(safe.x, safe.y, safe.width, safe.height - below);
    let mut items = panel(side, upper, look)?;
    let mut pen = Pen::new(side.setter, side.content.mirrored().then(|| side.geometry.width.pt()));
    let step = safe.width / count(pictures.len().max(1));
    let mut x = safe.x + (step - COVER_PICTURE) / 2.0;
    for (id, alt) in pictures {
        let tile = Rect::new(x, safe.bottom() - COVER_PICTURE, COVER_PICTURE, COVER_PICTURE);
        pen.panel("tile", tile, COVER_PICTURE * 0.16, Ink::YES_TINT);
        pen.picture(id, tile.grown(-COVER_PICTURE * 0.1), Ink::YES);
        pen.describe(alt);
        x += step;
    }
    items.extend(pen.items);
    Ok(items)
}

fn panel(side: &Side<'_>, area: Rect, look: Look) -> Result<Vec<Item>, PrintError> {
    let Side { content, setter, geometry, job, .. } = *side;
    let code = &side.code.enlarged(look.code);
    let floor = floor_for(job.viewing_distance);
    let whole = Trial::default();
    for size in sizes(look.largest, floor) {
        if let Ok(plan) = Panel::plan(content, code, &whole, area, (size, look))
            && plan.left >= Pt::ZERO
        {
            let mut pen = Pen::new(setter, content.mirrored().then(|| geometry.width.pt()));
            plan.draw(content, code, &mut pen, area, size);
            return Ok(pen.items);
        }
    }
    let missing =
        |trial: &Trial| Panel::plan(content, code, trial, area, (floor, look)).map(|plan| -plan.left);
    let paragraphs: Vec<&Paragraph> =
        content.titles.iter().chain(content.scans.iter().flatten()).chain([&content.address]).collect();
    Err(advice::shorten(&paragraphs, job, geometry, floor, missing))
}

/// Lines of the post's own fields: one line each, at the size given, or an error.
fn lines(
    pen: &mut Pen<'_>,
    paragraphs: &[Paragraph],
    (page, area): (usize, Rect),
    size: Pt,
    field: &str,
) -> Result<(), PrintError> {
    let mut y = area.y;
    let mut errors = Vec::new();
    for (index, paragraph) in paragraphs.iter().enumerate() {
        match paragraph.set(size, area.width) {
            Ok(setting) if setting.lines.len() <= 1 && y + setting.height() <= area.bottom() => {
                y += pen.words(
                    paragraph,
                    &setting,
                    Point { x: area.x, y },
                    area.width,
                    Role::Postal,
                    Ink::BLACK,
                );
            }
            _ => errors.push(
                PreflightItem::error(
                    "postal-field-full",
                    format!(
                        "{}'s line {} (“{}”) does not fit its field of {:.0} x {:.0} mm at {} pt; \
                         shorten it, or use fewer lines",
                        english(field),
                        index + 1,
                        paragraph.words,
                        area.width.mm().0,
                        area.height.mm().0,
                        size.0
                    ),
                )
                .arg("field", field)
                .arg("line", index + 1)
                .arg("text", &paragraph.words)
                .at(page, area),
            ),
        }
    }
    if errors.is_empty() { Ok(()) } else { Err(PrintError { items: errors }) }
}

/// A thin frame around the indicia.
fn frame(pen: &mut Pen<'_>, area: Rect) {
    let at = |x: Pt, y: Pt| Point { x, y };
    let corners = [
        at(area.x, area.y),
        at(area.right(), area.y),
        at(area.right(), area.bottom()),
        at(area.x, area.bottom()),
        at(area.x, area.y),
    ];
    for pair in corners.windows(2) {
        if let [from, to] = *pair {
            pen.rule("indicia frame", from, to, Pt(0.5), Ink::BLACK);
        }
    }
}

/// The print notice and the edition: outside the read area and the barcode's zone.
fn small_print(side: &Side<'_>, zones: &PostalZones) -> Result<Vec<Item>, PrintError> {
    let Side { content, setter, job, page, .. } = *side;
    let mut area = zones.small_print;
    let mut pen = Pen::new(setter, None);
    if job.printers_mark {
        let mark = mark_space(Point { x: area.right() - MARK_SPACE.0, y: area.y });
        area.width = area.width - mark.width - Pt(6.0);
        pen.fill("printer's mark space", crate::path::rectangle(mark), Ink::PAPER);
    }
    let mut y = area.y;
    for paragraph in content.notice.iter().chain(&content.edition) {
        let setting = paragraph.set(LEAST_TYPE, area.width).ok();
        match setting {
            Some(setting) if y + setting.height() <= area.bottom() => {
                // At the left, whatever the sheet's direction: this side is the post's.
                let (at, measure) = (Point { x: area.x, y }, setting.width);
                y += pen.words(paragraph, &setting, at, measure, Role::Foot, Ink::BLACK);
            }
            _ => {
                return Err(PreflightItem::error(
                    "postal-field-full",
                    format!(
                        "{} (“{}”) does not fit in the small print of the address side; shorten it",
                        english(&paragraph.place),
                        paragraph.words
                    ),
                )
                .arg("field", &paragraph.place)
                .arg("line", 1)
                .arg("text", &paragraph.words)
                .at(page, area)
                .into());
            }
        }
    }
    Ok(pen.items)
}

/// Room for the printer's own mark, which the law of some places or a union asks for: 3/4 x 1/4 in. Ours: such
/// marks are set as small as they are still read.
pub(super) const MARK_SPACE: (Pt, Pt) = (Pt::inches(0.75), Pt::inches(0.25));

pub(super) fn mark_space(at: Point) -> Rect {
    Rect::new(at.x, at.y, MARK_SPACE.0, MARK_SPACE.1)
}
