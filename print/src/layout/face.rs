//! The face of a lid or the message side of a mailer: band, sections, foot.

use super::advice;
use super::band::Band;
use super::content::{Content, SectionContent};
use super::fit::{Trial, Wide, floor_for, largest_fitting, sizes};
use super::footer::Footer;
use super::pen::Pen;
use super::section::{Scale, SectionPlan};
use crate::display::Item;
use crate::finding::PrintError;
use crate::job::SheetJob;
use crate::qr::Code;
use crate::sheet::PageGeometry;
use crate::text::{Typesetter, count};
use crate::unit::{Point, Pt, Rect, TOLERANCE};

/// The largest body type tried on a lid of 7 in; larger sheets have it in proportion. Ours: above it words push the
/// pictures, which carry the label, off the sheet.
const LARGEST: Pt = Pt(18.0);
const LID: Pt = Pt::inches(7.0);

/// Picture sides that are tried at the size that fits, in body sizes, the largest first.
const PICTURES: [f64; 4] = [4.2, 3.8, 3.4, 3.0];
const SMALLEST_PICTURES: f64 = 2.6;

/// How sections are spread: the first so many in the leading column, and that column's share of the width.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Spread {
    leading: usize,
    share: f64,
}

struct FacePlan {
    band: Band,
    columns: Vec<(Pt, Pt, Vec<SectionPlan>)>,
    footer: Footer,
    scale: Scale,
    /// Height left over; negative when it does not fit.
    left: Pt,
}

/// One column on an upright sheet; on a wide one, two as well.
fn spreads(geometry: &PageGeometry, sections: usize) -> Vec<Spread> {
    let mut all = vec![Spread { leading: sections, share: 1.0 }];
    if geometry.width > geometry.height {
        for leading in 1..sections {
            all.extend([0.5, 0.58, 0.42].map(|share| Spread { leading, share }));
        }
    }
    all
}

fn section_gap(size: Pt) -> Pt {
    size * 0.7
}

impl FacePlan {
    fn plan(
        content: &Content,
        sections: &[SectionContent],
        code: &Code,
        trial: &Trial,
        safe: Rect,
        spread: Spread,
        scale: Scale,
    ) -> Result<Self, Wide> {
        let size = scale.size;
        let band = Band::plan(content, trial, safe.width, size)?;
        let footer = Footer::plan(content, code, trial, safe.width, size)?;
        let gap = section_gap(size);
        let (leading, trailing) = sections.split_at_checked(spread.leading).unwrap_or((&[], &[]));
        let first = if trailing.is_empty() { safe.width } else { (safe.width - gap) * spread.share };
        let mut columns = Vec::new();
        let mut tallest = Pt::ZERO;
        let halves = [(safe.x, first, leading), (safe.x + first + gap, safe.width - first - gap, trailing)];
        for (x, width, sections) in halves {
            if sections.is_empty() {
                continue;
            }
            let plans = SectionPlan::plan_all(sections, trial, width, scale)?;
            let gaps = gap * count(plans.len().saturating_sub(1));
            tallest = tallest.max(plans.iter().map(|plan| plan.height).sum::<Pt>() + gaps);
            columns.push((x, width, plans));
        }
        let left = safe.height - band.height - footer.height - tallest - gap * 2.0;
        Ok(Self { band, columns, footer, scale, left })
    }

    /// By how much the columns differ in height.
    fn uneven(&self) -> Pt {
        let heights = || {
            let columns = self.columns.iter();
            columns.map(|(_, _, plans)| plans.iter().map(|plan| plan.height).sum::<Pt>())
        };
        heights().fold(Pt::ZERO, Pt::max) - heights().reduce(Pt::min).unwrap_or(Pt::ZERO)
    }

    fn draw(&self, content: &Content, code: &Code, pen: &mut Pen<'_>, safe: Rect, bleed: Rect) {
        let size = self.scale.size;
        let gap = section_gap(size);
        self.band.draw(content, pen, safe, bleed);
        let top = safe.y + self.band.height + gap;
        let room = safe.bottom() - self.footer.height - gap - top;
        let mut sections = content.sections.iter();
        let rows = |plans: &[SectionPlan]| count(plans.iter().map(SectionPlan::rows).sum::<usize>().max(1));
        let used = |plans: &[SectionPlan]| {
            plans.iter().map(|plan| plan.height).sum::<Pt>() + gap * count(plans.len().saturating_sub(1))
        };
        // What is left goes into the rows, but not so much that they fall apart; columns end at one height.
        let filled = |plans: &[SectionPlan]| (used(plans) + size * 1.6 * rows(plans)).min(room);
        let height = self.columns.iter().map(|(_, _, plans)| filled(plans)).fold(Pt::ZERO, Pt::max);
        for (x, _, plans) in &self.columns {
            let extra = ((height - used(plans)) / rows(plans)).max(Pt::ZERO);
            let mut y = top;
            for plan in plans {
                let Some(section) = sections.next() else { break };
                y += plan.draw(section, pen, Point { x: *x, y }, extra) + gap;
            }
        }
        self.footer.draw(content, code, pen, safe);
    }
}

/// Whether a face fits with these sections at a size.
pub(super) fn fits(
    content: &Content,
    sections: &[SectionContent],
    code: &Code,
    geometry: &PageGeometry,
    size: Pt,
) -> bool {
    let (safe, whole) = (geometry.safe_area(), Trial::default());
    let scale = Scale::new(size, SMALLEST_PICTURES);
    spreads(geometry, sections.len()).into_iter().any(|spread| {
        FacePlan::plan(content, sections, code, &whole, safe, spread, scale)
            .is_ok_and(|plan| plan.left >= Pt::ZERO)
    })
}

/// Lays a face out at the largest size that fits, or says what to shorten.
pub(super) fn lay_out(
    content: &Content,
    code: &Code,
    setter: Typesetter<'_>,
    geometry: &PageGeometry,
    job: &SheetJob,
) -> Result<(Vec<Item>, Pt), PrintError> {
    let safe = geometry.safe_area();
    let floor = floor_for(job.viewing_distance);
    let spreads = &spreads(geometry, content.sections.len());
    let whole = &Trial::default();
    let plans = |size: Pt, picture: f64| {
        let scale = Scale::new(size, picture);
        let plan = move |&spread: &Spread| {
            FacePlan::plan(content, &content.sections, code, whole, safe, spread, scale).ok()
        };
        spreads.iter().filter_map(plan).filter(|plan| plan.left >= Pt::ZERO)
    };
    // Of the spreads that fit, the one whose columns are most alike in height; of equal ones the first.
    let best = |size: Pt, picture: f64| {
        plans(size, picture).reduce(
            |best, other| {
                if other.uneven() < best.uneven() - TOLERANCE { other } else { best }
            },
        )
    };
    // Type first: the largest at which the smallest pictures fit. Then the largest pictures at that size.
    let shorter = geometry.width.min(geometry.height).pt();
    let largest = LARGEST * (shorter / LID).max(1.0);
    let found = largest_fitting(&sizes(largest, floor), |size| plans(size, SMALLEST_PICTURES).next());
    if let Some((size, smallest)) = found {
        let mut pictures = PICTURES.into_iter().chain([SMALLEST_PICTURES]);
        let plan = pictures.find_map(|picture| best(size, picture)).unwrap_or(smallest);
        let mirror = content.mirrored().then(|| geometry.width.pt());
        let mut pen = Pen::new(setter, mirror);
        plan.draw(content, code, &mut pen, safe, geometry.bleed_box());
        return Ok((pen.items, size));
    }
    // At the floor with the smallest pictures: how much is missing under a trial, by the best spread.
    let smallest = Scale::new(floor, 0.0);
    let missing = |trial: &Trial| -> Result<Pt, Wide> {
        let mut best: Result<Pt, Option<Wide>> = Err(None);
        for &spread in spreads {
            match (FacePlan::plan(content, &content.sections, code, trial, safe, spread, smallest), &best) {
                (Ok(plan), Ok(least)) => best = Ok(least.min(-plan.left)),
                (Ok(plan), Err(_)) => best = Ok(-plan.left),
                (Err(wide), Err(None)) => best = Err(Some(wide)),
                (Err(_), _) => {}
            }
        }
        best.map_err(|wide| wide.unwrap_or_else(Wide::nothing))
    };
    Err(advice::shorten(&content.paragraphs(), job, geometry, floor, missing))
}
