//! Sections that run through several areas: the inside of a folded piece, a handout's front and back. No section's
//! row crosses from one area to the next; a section that does goes on there under its heading again.

use super::advice;
use super::band::Band;
use super::content::{Content, SectionContent};
use super::fit::{Trial, Wide, floor_for, sizes};
use super::footer::Footer;
use super::pen::Pen;
use super::section::{Scale, SectionPlan};
use crate::display::Item;
use crate::finding::PrintError;
use crate::job::SheetJob;
use crate::qr::Code;
use crate::sheet::{Flow, PageGeometry};
use crate::text::{Paragraph, Typesetter, count};
use crate::unit::{Point, Pt, Rect, TOLERANCE};

/// The largest body type tried: running text is read in the hand.
const LARGEST: Pt = Pt(13.0);

/// A piece that splits a section must let the type grow by this much. Ours.
const WORTH_SPLITTING: f64 = 1.12;

/// Picture sides in body sizes, the largest first.
const PICTURES: [f64; 4] = [4.2, 3.4, 2.8, SMALLEST_PICTURES];
const SMALLEST_PICTURES: f64 = 2.4;

/// A part of a page that the text runs through.
#[derive(Debug, Clone, Copy)]
pub(super) struct Frame {
    /// The page, counted from 0.
    pub(super) page: usize,
    /// Where words may be.
    pub(super) safe: Rect,
    /// The area up to the cut or fold: what a turned one is turned within.
    pub(super) area: Rect,
    pub(super) turned: bool,
}

/// A section, or a part of one, in its frame.
struct Block {
    section: SectionContent,
    plan: SectionPlan,
}

struct FlowPlan {
    band: Option<Band>,
    footer: Option<Footer>,
    /// What stands in each frame.
    frames: Vec<Vec<Block>>,
    /// The height that found no room.
    missing: Pt,
    scale: Scale,
}

fn gap(size: Pt) -> Pt {
    size * 0.7
}

/// What a flow is made from.
pub(super) struct Source<'a> {
    pub(super) content: &'a Content,
    /// The content's sections, or what some steps leave of them.
    pub(super) sections: &'a [SectionContent],
    pub(super) code: &'a Code,
    pub(super) setter: Typesetter<'a>,
    pub(super) job: &'a SheetJob,
    pub(super) flow: Flow,
    pub(super) geometry: &'a PageGeometry,
}

impl Source<'_> {
    fn sections(&self) -> impl Iterator<Item = &SectionContent> {
        self.sections.iter().filter(|section| self.flow.tones.contains(&section.tone))
    }
}

/// How many blocks a section is cut into at most: a guard, not a limit that is met.
const MOST_PARTS: usize = 64;

impl FlowPlan {
    fn plan(
        source: &Source<'_>,
        trial: &Trial,
        frames: &[Frame],
        scale: Scale,
        split: bool,
    ) -> Result<Self, Wide> {
        let size = scale.size;
        let width = frames.first().map_or(Pt::ZERO, |frame| frame.safe.width);
        let whole = source.flow.whole;
        let band = whole.then(|| Band::plan(source.content, trial, width, size)).transpose()?;
        let footer =
            whole.then(|| Footer::plan(source.content, source.code, trial, width, size)).transpose()?;
        let above = band.as_ref().map_or(Pt::ZERO, |band| band.height + gap(size));
        let below = footer.as_ref().map_or(Pt::ZERO, |footer| footer.height + gap(size));
        let mut filled: Vec<Vec<Block>> = vec![Vec::new()];
        let mut at = 0;
        let room_in = |index: usize| {
            frames.get(index).map(|frame| {
                let above = if index == 0 { above } else { Pt::ZERO };
                frame.safe.height - above
            })
        };
        let mut room = room_in(0).unwrap_or(Pt::ZERO);
        let mut missing = Pt::ZERO;
        for section in source.sections() {
            let mut rest = section.clone();
            for _ in 0..MOST_PARTS {
                let plan = plan_one(&rest, trial, width, scale)?;
                if plan.height <= room + TOLERANCE {
                    room -= plan.height + gap(size);
                    push(&mut filled, Block { section: rest, plan });
                    break;
                }
                let part = if split { part_that_fits(&rest, trial, width, scale, room)? } else { None };
                if let Some((taken, plan)) = part {
                    let entries = rest.entries.split_off(taken);
                    let head = SectionContent { entries: std::mem::take(&mut rest.entries), ..rest.clone() };
                    rest.entries = entries;
                    push(&mut filled, Block { section: head, plan });
                }
                at += 1;
                match room_in(at) {
                    Some(next) => {
                        room = next;
                        filled.push(Vec::new());
                    }
                    None => {
                        missing += plan_one(&rest, trial, width, scale)?.height + gap(size);
                        room = Pt::ZERO;
                        break;
                    }
                }
            }
        }
        // The foot stands in the last frame of those in use, or in one more.
        if below > Pt::ZERO && missing <= Pt::ZERO && room + gap(size) < below {
            match room_in(at + 1) {
                Some(_) => filled.push(Vec::new()),
                None => missing = below - room,
            }
        }
        Ok(Self { band, footer, frames: filled, missing, scale })
    }

    fn draw(&self, source: &Source<'_>, frames: &[Frame]) -> Vec<(usize, Vec<Item>)> {
        let size = self.scale.size;
        let gap = gap(size);
        let content = source.content;
        let bleed = source.geometry.bleed_box();
        let last = self.frames.len().saturating_sub(1);
        let mut drawn = Vec::new();
        for (index, (blocks, frame)) in self.frames.iter().zip(frames).enumerate() {
            let mut pen = Pen::new(source.setter, content.mirrored().then(|| source.geometry.width.pt()));
            let mut top = frame.safe.y;
            if let (0, Some(band)) = (index, &self.band) {
                band.draw(content, &mut pen, frame.safe, bleed);
                top += band.height + gap;
            }
            let foot = self.footer.as_ref().filter(|_| index == last);
            let below = foot.map_or(Pt::ZERO, |footer| footer.height + gap);
            let used: Pt = blocks.iter().map(|block| block.plan.height).sum::<Pt>()
                + gap * count(blocks.len().saturating_sub(1));
            let rows = count(blocks.iter().map(|block| block.plan.rows()).sum::<usize>().max(1));
            let spare = frame.safe.bottom() - below - top - used;
            let extra = (spare / rows).min(size * 1.2).max(Pt::ZERO);
            let mut y = top;
            for block in blocks {
                y += block.plan.draw(&block.section, &mut pen, Point { x: frame.safe.x, y }, extra) + gap;
            }
            if let Some(footer) = foot {
                footer.draw(content, source.code, &mut pen, frame.safe);
            }
            let items = if frame.turned {
                pen.items.iter().map(|item| item.turned(frame.area)).collect()
            } else {
                pen.items
            };
            drawn.push((frame.page, items));
        }
        drawn
    }
}

fn push(filled: &mut [Vec<Block>], block: Block) {
    if let Some(frame) = filled.last_mut() {
        frame.push(block);
    }
}

/// A section's plan by itself: it may be cut, and what stands above it may be on another page.
fn plan_one(section: &SectionContent, trial: &Trial, width: Pt, scale: Scale) -> Result<SectionPlan, Wide> {
    let plans = SectionPlan::plan_all(std::slice::from_ref(section), trial, width, scale)?;
    plans.into_iter().next().ok_or_else(Wide::nothing)
}

/// The most of a section's lines that fit, with their plan; nothing when not even one row does.
fn part_that_fits(
    section: &SectionContent,
    trial: &Trial,
    width: Pt,
    scale: Scale,
    room: Pt,
) -> Result<Option<(usize, SectionPlan)>, Wide> {
    let plan_of = |lines: usize| {
        let entries = section.entries.iter().take(lines).cloned().collect();
        plan_one(&SectionContent { entries, ..section.clone() }, trial, width, scale)
    };
    let (mut fits, mut too_many) = (0, section.entries.len());
    let mut best = None;
    while fits + 1 < too_many {
        let middle = fits.midpoint(too_many);
        let plan = plan_of(middle)?;
        if plan.height <= room {
            fits = middle;
            best = Some((middle, plan));
        } else {
            too_many = middle;
        }
    }
    // A single line under a heading of its own reads like a mistake.
    Ok(best.filter(|(lines, _)| *lines >= 2 && section.entries.len() - lines >= 2))
}

/// Whether a flow's sections fit its frames at a size.
pub(super) fn fits(source: &Source<'_>, frames: &[Frame], size: Pt) -> bool {
    if source.sections().next().is_none() && !source.flow.whole {
        return true;
    }
    let scale = Scale::new(size, SMALLEST_PICTURES);
    [false, true].into_iter().any(|split| {
        FlowPlan::plan(source, &Trial::default(), frames, scale, split)
            .is_ok_and(|plan| plan.missing <= Pt::ZERO)
    })
}

/// The items of each frame in use, by page, and the type size.
pub(super) type Laid = (Vec<(usize, Vec<Item>)>, Pt);

/// Lays the sections out at the largest size that fits the frames, or says what to shorten.
pub(super) fn lay_out(
    source: &Source<'_>,
    frames: &[Frame],
    largest: Option<Pt>,
) -> Result<Laid, PrintError> {
    let floor = floor_for(source.job.viewing_distance);
    if source.sections().next().is_none() && !source.flow.whole {
        return Ok((Vec::new(), floor));
    }
    let whole = Trial::default();
    let largest = largest.unwrap_or(LARGEST).max(floor);
    let fits = |size: Pt, picture: f64, split: bool| {
        FlowPlan::plan(source, &whole, frames, Scale::new(size, picture), split)
            .ok()
            .filter(|plan| plan.missing <= Pt::ZERO)
    };
    // Smaller type fits where larger does, but for a rare break; then the sizes are tried one by one.
    let smallest = |split: bool| {
        let sizes = sizes(largest, floor);
        let does = |size: &Pt| fits(*size, SMALLEST_PICTURES, split).is_some();
        let first = sizes.partition_point(|size| !does(size));
        sizes.get(first).copied().or_else(|| sizes.into_iter().find(does))
    };
    let choice = match (smallest(false), smallest(true)) {
        (Some(kept), Some(cut)) if cut > kept * WORTH_SPLITTING => Some((cut, true)),
        (Some(kept), _) => Some((kept, false)),
        (None, Some(cut)) => Some((cut, true)),
        (None, None) => None,
    };
    if let Some((size, split)) = choice
        && let Some(plan) = PICTURES.into_iter().find_map(|picture| fits(size, picture, split))
    {
        return Ok((plan.draw(source, frames), size));
    }
    let least = Scale::new(floor, 0.0);
    let missing = |trial: &Trial| {
        let plan = FlowPlan::plan(source, trial, frames, least, true)?;
        Ok(if plan.missing > Pt::ZERO { plan.missing } else { Pt(-1.0) })
    };
    let content = source.content;
    let paragraphs: Vec<&Paragraph> = if source.flow.whole {
        content.paragraphs()
    } else {
        let entries = source.sections().flat_map(|section| &section.entries);
        entries.flat_map(|entry| entry.words.iter()).collect()
    };
    Err(advice::shorten(&paragraphs, source.job, source.geometry, floor, missing))
}
