//! What would fit instead of a sheet that is refused: a larger size, or fewer of its languages.

use crate::finding::{PreflightItem, PrintError};
use crate::font::FontSet;
use crate::job::SheetJob;
use crate::layout::{self, Content};
use crate::offer::{Offer, Step};
use crate::qr::Code;
use crate::sheet::SheetSize;
use crate::text::Typesetter;
use crate::unit::Mm;

/// What says that there is too little room, and not that a text is wrong.
const NO_ROOM: [&str; 3] = ["text-too-long", "too-many-lines", "word-too-wide"];

/// How much larger a size is tried where none of the named ones is large enough.
const LARGER: [f64; 3] = [1.25, 1.5, 2.0];

/// Adds to a refusal for want of room what would have had enough, found by trying.
pub(crate) fn with_ways_out(
    mut error: PrintError,
    job: &SheetJob,
    offer: &Offer,
    fonts: &FontSet,
) -> PrintError {
    if error.items.iter().all(|item| NO_ROOM.contains(&item.code.as_str())) {
        error.items.extend(larger(job, offer, fonts));
        error.items.extend(fewer(job, offer, fonts));
    }
    error
}

fn fits(job: &SheetJob, offer: &Offer, fonts: &FontSet) -> bool {
    let setter = Typesetter::new(fonts);
    let Ok(code) = Code::of(job) else { return false };
    let Ok(mut content) = Content::new(job, setter) else { return false };
    layout::reduce(job, offer, &mut content, &code, setter).is_ok_and(|reduced| {
        !reduced.too_few && layout::lay_out(&reduced.job, &content, &code, setter, Vec::new()).is_ok()
    })
}

/// The smallest larger size of the sheet that holds everything.
fn larger(job: &SheetJob, offer: &Offer, fonts: &FontSet) -> Option<PreflightItem> {
    let own = job.finished_size();
    let limits = job.sheet.sizes();
    let mut sizes: Vec<(String, SheetSize)> = limits
        .named
        .iter()
        .filter_map(|name| Some(((*name).to_owned(), SheetSize::named(name)?)))
        .filter(|(_, size)| size.width >= own.width && size.height >= own.height)
        .filter(|(_, size)| (size.width, size.height) != (own.width, own.height))
        .collect();
    sizes.sort_by(|(_, a), (_, b)| (a.width * a.height.0).0.total_cmp(&(b.width * b.height.0).0));
    if let Some((_, most)) = limits.typed {
        for by in LARGER {
            let whole = |side: Mm| Mm((side.0 * by).ceil());
            let (width, height) = (whole(own.width), whole(own.height));
            if width.max(height) <= most {
                sizes.push((format!("{}x{}mm", width.0, height.0), SheetSize { width, height, ..own }));
            }
        }
    }
    let (name, _) = sizes
        .into_iter()
        .find(|(_, size)| fits(&SheetJob { size: Some(*size), ..job.clone() }, offer, fonts))?;
    let message =
        format!("the {} has room for all of it in the size {name}; choose that size", job.sheet.id());
    Some(PreflightItem::warning("fits-larger", message).arg("sheet", job.sheet.id()).arg("size", name))
}

/// As many of the languages as fit together; of equally many, those that were named first.
fn fewer(job: &SheetJob, offer: &Offer, fonts: &FontSet) -> Option<PreflightItem> {
    let count = job.languages.len();
    let all: Vec<usize> = (0..count).collect();
    let mut choices: Vec<Vec<usize>> = vec![Vec::new()];
    for &language in &all {
        let with = choices.iter().map(|choice| choice.iter().copied().chain([language]).collect());
        let with: Vec<Vec<usize>> = with.collect();
        choices.extend(with);
    }
    choices.retain(|choice| !choice.is_empty() && choice.len() < count);
    choices.sort_by(|a, b| b.len().cmp(&a.len()).then_with(|| a.cmp(b)));
    let choice = choices.into_iter().find(|choice| {
        let (job, offer) = only(job, offer, choice);
        fits(&job, &offer, fonts)
    })?;
    let tags: Vec<&str> =
        choice.iter().filter_map(|&at| job.languages.get(at)).map(|block| block.lang.as_str()).collect();
    let tags = tags.join(", ");
    let message = format!(
        "the {} has room for {tags} together; print those, and the others on a sheet of their own",
        job.sheet.id()
    );
    Some(PreflightItem::warning("fits-fewer", message).arg("sheet", job.sheet.id()).arg("tags", tags))
}

/// The job in some of its languages.
fn only(job: &SheetJob, offer: &Offer, choice: &[usize]) -> (SheetJob, Offer) {
    let languages = choice.iter().filter_map(|&at| job.languages.get(at)).cloned().collect();
    let steps = offer.steps.iter().map(|step| match step {
        Step::Leave { .. } => step.clone(),
        Step::Brief { section, lines } => Step::Brief {
            section: *section,
            lines: choice.iter().filter_map(|&at| lines.get(at)).cloned().collect(),
        },
    });
    (SheetJob { languages, ..job.clone() }, Offer { steps: steps.collect(), ..offer.clone() })
}
