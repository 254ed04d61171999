//! Layout: from a checked job to the display list.
//!
//! Sheets are planned at a type size first (what breaks where, how high it gets) and drawn once a size fits.
//! Everything is placed from the leading edge; the pen mirrors it on a sheet whose first language is written
//! from right to left. What fills which part of which page is the sheet's table ([`crate::sheet`]): a face is a
//! function of the content and an area.

mod address;
mod advice;
mod band;
mod content;
mod face;
mod fit;
mod flow;
mod footer;
mod marks;
mod pen;
mod section;
mod sticker;

use content::Briefs;
pub(crate) use content::{Content, SectionContent};
pub(crate) use fit::{CAPITALS, LEAST_TYPE, floor_for, sign_capitals};
pub(crate) use marks::THICKNESS;
pub(crate) use section::SMALLEST_PICTURE;

use crate::display::{DisplayList, Item, Page};
use crate::finding::PrintError;
use crate::job::{SheetJob, SheetKind};
use crate::offer::{self, Offer, Step};
use crate::qr::Code;
use crate::sheet::{Area, FOLD_SAFE, Face, Flow, PageGeometry, SAFE, Sheet, SheetPage};
use crate::text::Typesetter;
use crate::unit::{Pt, Rect};

use address::Side;
use fit::fewest;
use flow::{Frame, Source};

/// A laid-out sheet and what preflight wants to know of it.
pub(crate) struct LaidOut {
    pub(crate) list: DisplayList,
    /// The size every language's items are set in.
    pub(crate) body: Pt,
}

/// A job after as many of the steps that it offers as it needs.
pub(crate) struct Reduced {
    pub(crate) job: SheetJob,
    /// How many steps were taken: the first so many.
    pub(crate) taken: usize,
    /// Whether they are known to be too few.
    pub(crate) too_few: bool,
}

/// Takes no more steps than needed, from the job and from its content. Fails on brief lines that no font can set, where
/// they were needed.
pub(crate) fn reduce(
    job: &SheetJob,
    offer: &Offer,
    content: &mut Content,
    code: &Code,
    setter: Typesetter<'_>,
) -> Result<Reduced, PrintError> {
    let steps = offer.steps.as_slice();
    let briefs = Briefs::new(job, steps, setter);
    let needed =
        if steps.is_empty() { Some(0) } else { steps_needed(job, offer, content, &briefs, code, setter) };
    let taken = needed.unwrap_or(steps.len());
    let steps = steps.get(..taken).unwrap_or(steps);
    content.sections = sections_after(job, steps, content, &briefs);
    briefs.whole()?;
    Ok(Reduced { job: offer::after(job, steps), taken, too_few: needed.is_none() })
}

/// How many of the steps that a job offers have to be taken: the first so many; nothing where all of them are too few.
///
/// Every sheet is tried as it will be laid out, area by area. What has no lines to leave out (covers, the post's side,
/// a label of one message) asks for no steps.
fn steps_needed(
    job: &SheetJob,
    offer: &Offer,
    content: &Content,
    briefs: &Briefs<'_>,
    code: &Code,
    setter: Typesetter<'_>,
) -> Option<usize> {
    let steps = offer.steps.as_slice();
    let sheet = job.plan();
    let flows = flows(&sheet);
    let posters: Vec<&PageGeometry> = sheet
        .pages
        .iter()
        .filter(|page| page.areas.iter().any(|area| area.face == Face::Poster))
        .map(|page| &page.geometry)
        .collect();
    fewest(job.viewing_distance, (offer.for_ease.min(steps.len()), steps.len()), |taken, size| {
        let sections = sections_after(job, steps.get(..taken).unwrap_or(steps), content, briefs);
        let posters = posters.iter().all(|geometry| face::fits(content, &sections, code, geometry, size));
        posters
            && flows.iter().all(|&flow| {
                let Some(geometry) = sheet.pages.first().map(|page| &page.geometry) else { return true };
                let source = Source { content, sections: &sections, code, setter, job, flow, geometry };
                flow::fits(&source, &frames(&sheet, flow), size)
            })
    })
}

/// The sections after some steps, from those of the whole job and the brief ones.
fn sections_after(
    job: &SheetJob,
    steps: &[Step],
    content: &Content,
    briefs: &Briefs<'_>,
) -> Vec<SectionContent> {
    let section = |it: &offer::Kept| {
        let brief = it.brief.and_then(|step| briefs.section(step));
        let from = brief.or_else(|| content.sections.get(it.section))?;
        let entries = it.lines.iter().filter_map(|&line| from.entries.get(line)).cloned().collect();
        Some(SectionContent { entries, ..from.clone() })
    };
    offer::kept(job, steps).iter().filter_map(section).collect()
}

/// A handout whose text is at least this large on one side is not given a second. Ours: the size of a book's.
const COMFORTABLE: Pt = Pt(10.0);

/// Lays a sheet out.
pub(crate) fn lay_out(
    job: &SheetJob,
    content: &Content,
    code: &Code,
    setter: Typesetter<'_>,
    faces: Vec<String>,
) -> Result<LaidOut, PrintError> {
    let mut sheet = job.plan();
    let mut body: Option<Pt> = None;
    let mut take = |size: Pt| body = Some(body.map_or(size, |least| least.min(size)));
    let mut drawn: Vec<Vec<Item>> = Vec::new();
    for (index, page) in sheet.pages.iter().enumerate() {
        let mut items = Vec::new();
        let geometry = &page.geometry;
        let side = Side { content, code, setter, geometry, job, page: index };
        for area in &page.areas {
            let own = match &area.face {
                Face::Poster => {
                    let (items, size) = face::lay_out(content, code, setter, geometry, job)?;
                    take(size);
                    items
                }
                Face::Sticker => {
                    let (items, size) = sticker::lay_out(content, code, setter, geometry, job)?;
                    take(size);
                    items
                }
                Face::Address(zones) => address::lay_out(&side, zones)?,
                Face::Cover => address::cover(&side, area)?,
                Face::Flow(_) => Vec::new(),
            };
            items.extend(own.into_iter().map(|item| if area.turned { item.turned(area.rect) } else { item }));
        }
        drawn.push(items);
    }
    for flow in flows(&sheet) {
        let Some(geometry) = sheet.pages.first().map(|page| page.geometry) else { continue };
        let source =
            Source { content, sections: &content.sections, code, setter, job, flow, geometry: &geometry };
        let frames = frames(&sheet, flow);
        let (pieces, size) = run(&source, &frames)?;
        take(size);
        for (page, items) in pieces {
            if let Some(all) = drawn.get_mut(page) {
                all.extend(items);
            }
        }
    }
    // A handout's empty back is left out.
    if job.sheet == SheetKind::Handout && drawn.last().is_some_and(Vec::is_empty) {
        drawn.pop();
        sheet.pages.pop();
    }
    let pages = sheet
        .pages
        .iter()
        .zip(drawn)
        .map(|(page, mut items)| {
            items.extend(marks::marks(job, content, setter, page));
            Page { name: page.name.to_owned(), geometry: page.geometry, items }
        })
        .collect();
    Ok(LaidOut { list: DisplayList { pages, faces }, body: body.unwrap_or(Pt::ZERO) })
}

/// On one page if it can be read there with ease, else on all there are.
fn run(source: &Source<'_>, frames: &[Frame]) -> Result<flow::Laid, PrintError> {
    if source.job.sheet == SheetKind::Handout {
        let first: Vec<Frame> = frames.iter().copied().filter(|frame| frame.page == 0).collect();
        if let Ok((pieces, size)) = flow::lay_out(source, &first, None)
            && size >= COMFORTABLE
        {
            return Ok((pieces, size));
        }
    }
    flow::lay_out(source, frames, None)
}

/// The texts that run through a sheet, each once.
fn flows(sheet: &Sheet) -> Vec<Flow> {
    let mut all = Vec::new();
    for area in sheet.pages.iter().flat_map(|page| &page.areas) {
        if let Face::Flow(flow) = &area.face
            && !all.contains(flow)
        {
            all.push(*flow);
        }
    }
    all
}

/// A text's areas in order, without what must stay free at the cut and at folds.
fn frames(sheet: &Sheet, flow: Flow) -> Vec<Frame> {
    let mut all = Vec::new();
    for (index, page) in sheet.pages.iter().enumerate() {
        for area in page.areas.iter().filter(|area| area.face == Face::Flow(flow)) {
            all.push(Frame { page: index, safe: free(page, area), area: area.rect, turned: area.turned });
        }
    }
    all
}

/// The safe part of an area: away from the cut, and from folds.
fn free(page: &SheetPage, area: &Area) -> Rect {
    let folded = |y: Pt| page.folds.iter().any(|fold| (*fold - y).0.abs() < 0.01);
    let inset = |y: Pt| if folded(y) { FOLD_SAFE.max(SAFE / 2.0) + Pt(3.0) } else { SAFE };
    let (above, below) = (inset(area.rect.y), inset(area.rect.bottom()));
    // A turned area is laid out upright and turned afterwards: its upper edge is then its lower one.
    let (above, below) = if area.turned { (below, above) } else { (above, below) };
    let rect = area.rect;
    Rect::new(rect.x + SAFE, rect.y + above, rect.width - SAFE * 2.0, rect.height - above - below)
}
