//! How long a press file takes: lids in three languages and in four scripts, two directions, fonts subset.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use lidleaf_tests::OrFail as _;
use print::{Offer, PRESS_PROFILE, PreviewArea, SheetJob, Step, bundled_fonts, make, make_fitting, svg};

/// Jobs that `print` keeps for its own tests.
const LID: &str = include_str!("../../print/tests/jobs/lid-en-es-ar.json");
const LID_IN_FOUR: &str = include_str!("../../print/tests/jobs/lid-en-zh-ar-hi.json");

/// The job with its harmless lines said three times, and what it may leave out.
fn crowded(job: &SheetJob) -> (SheetJob, Offer) {
    let mut crowded = job.clone();
    for section in crowded.languages.iter_mut().flat_map(|block| &mut block.sections) {
        if section.lines.iter().all(|line| !line.hazard) {
            section.lines = std::iter::repeat_n(section.lines.clone(), 3).flatten().collect();
        }
    }
    let sections = crowded.languages.first().map_or(&[][..], |block| &block.sections).iter().enumerate();
    let leave = |(section, own): (usize, &print::Section)| -> Vec<Step> {
        let lines = own.lines.iter().enumerate().skip(3).rev().filter(|(_, line)| !line.hazard);
        lines.map(|(line, _)| Step::Leave { section, line }).collect()
    };
    let steps: Vec<Step> = sections.flat_map(leave).collect();
    let offer = Offer { for_ease: steps.len(), steps };
    (crowded, offer)
}

fn sheets(c: &mut Criterion) {
    let job: SheetJob = serde_json::from_str(LID).or_fail("reading the lid's job");
    let fonts = bundled_fonts().map_err(|e| format!("{e:?}")).or_fail("reading the fonts");
    c.bench_function("sheet/lid-in-three-languages", |b| {
        b.iter(|| make(black_box(&job), &fonts, PRESS_PROFILE).map(|made| made.pdf.len()).ok());
    });
    let four: SheetJob = serde_json::from_str(LID_IN_FOUR).or_fail("reading the lid's job");
    c.bench_function("sheet/lid-in-four-languages-and-scripts", |b| {
        b.iter(|| make(black_box(&four), &fonts, PRESS_PROFILE).map(|made| made.pdf.len()).ok());
    });
    // Three times the lines, of which as many are left out as the room asks for.
    let (crowded, offer) = crowded(&job);
    c.bench_function("sheet/fit-a-lid-in-three-languages", |b| {
        b.iter(|| make_fitting(black_box(&crowded), &offer, &fonts, PRESS_PROFILE).map(|it| it.taken).ok());
    });
    let made = make(&job, &fonts, PRESS_PROFILE).map_err(|e| format!("{e:?}")).or_fail("making the lid");
    c.bench_function("sheet/preview-of-a-page", |b| {
        b.iter(|| svg(black_box(&made.display_list), &fonts, 0, PreviewArea::Trim));
    });
    c.bench_function("sheet/read-the-fonts", |b| b.iter(|| bundled_fonts().is_ok()));
}

criterion_group!(benches, sheets);
criterion_main!(benches);
