//! How long a press file takes: a lid in three languages, two directions, fonts subset.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use lidleaf_tests::OrFail as _;
use print::{PRESS_PROFILE, PreviewArea, SheetJob, bundled_fonts, make, svg};

/// The job that `print` keeps for its own tests.
const LID: &str = include_str!("../../print/tests/jobs/lid-en-es-ar.json");

fn sheets(c: &mut Criterion) {
    let job: SheetJob = serde_json::from_str(LID).or_fail("reading the lid's job");
    let fonts = bundled_fonts().map_err(|e| format!("{e:?}")).or_fail("reading the fonts");
    c.bench_function("sheet/lid-in-three-languages", |b| {
        b.iter(|| make(black_box(&job), &fonts, PRESS_PROFILE).map(|made| made.pdf.len()).ok());
    });
    let made = make(&job, &fonts, PRESS_PROFILE).map_err(|e| format!("{e:?}")).or_fail("making the lid");
    c.bench_function("sheet/preview-of-a-page", |b| {
        b.iter(|| svg(black_box(&made.display_list), &fonts, 0, PreviewArea::Trim));
    });
    c.bench_function("sheet/read-the-fonts", |b| b.iter(|| bundled_fonts().is_ok()));
}

criterion_group!(benches, sheets);
criterion_main!(benches);
