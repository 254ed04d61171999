//! Layout: from a checked job to the display list.
//!
//! Sheets are planned at a type size first (what breaks where, how high it gets) and drawn once a size fits.
//! Everything is placed from the leading edge; the pen mirrors it on a sheet whose first language is written
//! from right to left.

mod address;
mod advice;
mod band;
mod content;
mod face;
mod fit;
mod footer;
mod marks;
mod pen;
mod section;

pub(crate) use content::{Content, SectionContent};
pub(crate) use fit::{LEAST_TYPE, floor_for};
pub(crate) use section::SMALLEST_PICTURE;

use crate::display::{DisplayList, Page};
use crate::finding::PrintError;
use crate::job::{SheetJob, SheetKind};
use crate::offer::{self, Offer, Step};
use crate::qr::Code;
use crate::text::Typesetter;
use crate::unit::Pt;

/// A laid-out sheet and what preflight wants to know of it.
pub(crate) struct LaidOut {
    pub(crate) list: DisplayList,
    /// The size every language's items are set in.
    pub(crate) body: Pt,
}

/// How many of the steps that a job offers have to be taken: the first so many.
pub(crate) fn steps_needed(
    job: &SheetJob,
    offer: &Offer,
    content: &Content,
    brief: &[SectionContent],
    code: &Code,
) -> usize {
    let steps = offer.steps.as_slice();
    let Some((_, geometry)) = job.sheet.sheet().pages.first() else { return 0 };
    let room = face::Room { geometry, distance: job.viewing_distance };
    face::fewest(content, code, room, (offer.for_ease.min(steps.len()), steps.len()), |taken| {
        sections_after(job, steps.get(..taken).unwrap_or(steps), content, brief)
    })
}

/// The sections after some steps, from those of the whole job and the brief ones.
pub(crate) fn sections_after(
    job: &SheetJob,
    steps: &[Step],
    content: &Content,
    brief: &[SectionContent],
) -> Vec<SectionContent> {
    let section = |it: &offer::Kept| {
        let from = if it.brief { brief } else { &content.sections }.get(it.section)?;
        let entries = it.lines.iter().filter_map(|&line| from.entries.get(line)).cloned().collect();
        Some(SectionContent { entries, ..from.clone() })
    };
    offer::kept(job, steps).iter().filter_map(section).collect()
}

/// Lays a sheet out.
pub(crate) fn lay_out(
    job: &SheetJob,
    content: &Content,
    code: &Code,
    setter: Typesetter<'_>,
    faces: Vec<String>,
) -> Result<LaidOut, PrintError> {
    let mut pages = Vec::new();
    let mut body = Pt::ZERO;
    for (index, (name, geometry)) in job.sheet.sheet().pages.iter().enumerate() {
        let mut items = if job.sheet == SheetKind::PostcardMailer && index == 1 {
            address::lay_out(content, code, setter, geometry, job)?
        } else {
            let (items, size) = face::lay_out(content, code, setter, geometry, job)?;
            body = size;
            items
        };
        items.extend(marks::marks(job, content, setter, geometry));
        pages.push(Page { name: (*name).to_owned(), geometry: *geometry, items });
    }
    Ok(LaidOut { list: DisplayList { pages, faces }, body })
}
