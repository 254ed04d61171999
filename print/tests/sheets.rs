//! What holds for every sheet: same input same bytes, JSON in and out, nothing clipped or overlapping, hazards kept.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

mod common;

use common::{JOBS, artifact, fonts, here, job, print_job};
use print::{
    Direction, DisplayList, Fold, FontSet, Item, LanguageBlock, Line, PRESS_PROFILE, PreviewArea, Role,
    Section, SheetJob, SheetKind, SheetSize, Tone, fonts_needed, make, svg,
};
use proptest::prelude::*;

#[test]
fn the_same_job_makes_the_same_bytes() {
    for name in JOBS {
        let again = print_job(&job(name)).expect("a sheet");
        assert!(artifact(name) == &again, "{name}");
    }
    let mut other = job("lid-en");
    other.edition = "Edition 8".into();
    assert!(print_job(&other).expect("a sheet").pdf != artifact("lid-en").pdf);
}

/// The browser fetches only what it needs, the command line has everything: their files are the same.
#[test]
fn the_fonts_needed_are_enough() {
    for name in JOBS {
        let job = job(name);
        let mut few = FontSet::new();
        let needed = fonts_needed(&job);
        for file in &needed {
            let bytes = std::fs::read(here().join("fonts").join(file.file)).expect("a font");
            few.add(file.family, file.weight, bytes).expect("a whole font");
        }
        let made = make(&job, &few, PRESS_PROFILE).expect("a sheet");
        assert!(made.pdf == artifact(name).pdf, "{name}");
        let arabic = job.languages.iter().any(|block| block.lang == "ar");
        assert_eq!(needed.len(), if arabic { 4 } else { 2 }, "{name}");
    }
}

#[test]
fn a_job_goes_through_json_and_back() {
    for name in JOBS {
        let job = job(name);
        let text = serde_json::to_string(&job).expect("JSON");
        assert_eq!(serde_json::from_str::<SheetJob>(&text).expect("a job"), job);
    }
    let unknown = r#"{"sheet":"cart-lid","colour":"red"}"#;
    let error = serde_json::from_str::<SheetJob>(unknown).expect_err("unknown field").to_string();
    assert!(error.contains("unknown field `colour`"), "{error}");
    for kind in SheetKind::ALL {
        assert_eq!(SheetKind::from_id(kind.id()), Some(kind));
        assert_eq!(serde_json::to_string(&kind).expect("JSON"), format!("\"{}\"", kind.id()));
    }
}

/// "At most 120 KB Latin, 250 KB with Chinese (profile included)".
#[test]
fn files_are_small() {
    for name in JOBS {
        let size = artifact(name).pdf.len();
        assert!(size <= 120_000, "{name}: {size} bytes");
    }
}

/// Asserts, apart from what preflight says, that text stays inside and apart and every hazard is whole.
fn sound(job: &SheetJob, list: &DisplayList) {
    for page in &list.pages {
        let lines: Vec<_> = page
            .items
            .iter()
            .filter_map(|item| match item {
                Item::Text(line) => Some(line),
                _ => None,
            })
            .collect();
        let (safe, media) = (page.geometry.safe_area(), page.geometry.media_box());
        for (index, line) in lines.iter().enumerate() {
            let inside = if line.role == Role::Slug {
                media.contains(&line.rect)
            } else {
                safe.contains(&line.rect) && page.geometry.keeps_safe(&line.rect)
            };
            assert!(inside, "“{}” leaves its area: {:?}", line.text, line.rect);
            for other in &lines[index + 1..] {
                assert!(!line.rect.overlaps(&other.rect), "“{}” and “{}” overlap", line.text, other.text);
            }
            for run in &line.runs {
                // A pen that moves to the left starts at the right.
                let starts = if line.turned {
                    run.origin.x <= line.rect.right() + print::TOLERANCE && run.origin.y >= line.rect.y
                } else {
                    run.origin.x >= line.rect.x - print::TOLERANCE && run.origin.y <= line.rect.bottom()
                };
                assert!(starts, "“{}”", line.text);
            }
        }
    }
    off_the_folds(job, list);
    // Words are whole: every line's text is found, in pieces, in the order in which it is drawn.
    for block in &job.languages {
        let drawn: String = list
            .pages
            .iter()
            .flat_map(|page| &page.items)
            .filter_map(|item| match item {
                Item::Text(line) if line.lang == block.lang && line.role == Role::Body => {
                    Some(line.text.as_str())
                }
                _ => None,
            })
            .flat_map(str::chars)
            .filter(|c| !c.is_whitespace())
            .collect();
        for line in block.sections.iter().flat_map(|section| &section.lines) {
            // Isolates order a line and are no part of what is drawn.
            let drawable = |c: &char| !c.is_whitespace() && !matches!(c, '\u{2066}'..='\u{2069}');
            let whole: String = line.text.chars().filter(drawable).collect();
            assert!(drawn.contains(&whole), "“{}” is not whole in {drawn}", line.text);
        }
    }
}

/// Nothing that is read lies within an eighth of an inch of a fold.
fn off_the_folds(job: &SheetJob, list: &DisplayList) {
    for (page, planned) in list.pages.iter().zip(job.plan().pages) {
        for fold in planned.folds {
            for item in &page.items {
                let Item::Text(line) = item else { continue };
                let clear = line.rect.bottom() <= fold - print::FOLD_SAFE + print::TOLERANCE
                    || line.rect.y >= fold + print::FOLD_SAFE - print::TOLERANCE;
                assert!(clear || line.role == Role::Slug, "“{}” lies on a fold", line.text);
            }
        }
    }
}

#[test]
fn the_sheets_are_sound() {
    for name in JOBS {
        sound(&job(name), &artifact(name).display_list);
    }
}

/// A right-to-left sheet is its own mirror image: the title starts at the right, the code stands right.
#[test]
fn a_right_to_left_sheet_is_mirrored() {
    let list = &artifact("lid-ar").display_list;
    let page = &list.pages[0];
    let middle = page.geometry.trim().width / 2.0;
    let safe = page.geometry.safe_area();
    for item in &page.items {
        match item {
            Item::Text(line) if matches!(line.role, Role::Title | Role::Issuer) => {
                assert!((line.rect.right() - safe.right()).0.abs() < 0.02, "“{}”", line.text);
            }
            Item::Fill(fill) if fill.what == "qr" => {
                assert!(fill.path.iter().all(|op| !matches!(op, print::PathOp::Move(p) if p.x < middle)));
            }
            _ => {}
        }
    }
}

/// The preview draws the glyphs of the display list, one use each, and no text that needs a font.
#[test]
fn the_preview_draws_every_glyph() {
    let fonts = fonts();
    for name in JOBS {
        let made = artifact(name);
        for (index, page) in made.display_list.pages.iter().enumerate() {
            let drawing = svg(&made.display_list, &fonts, index, PreviewArea::Media).expect("a page");
            let printed: usize = page
                .items
                .iter()
                .filter_map(|item| match item {
                    Item::Text(line) => Some(line),
                    _ => None,
                })
                .flat_map(|line| &line.runs)
                .flat_map(|run| &run.glyphs)
                .filter(|glyph| !glyph.text.chars().all(char::is_whitespace) || glyph.text.is_empty())
                .count();
            assert_eq!(drawing.matches("<use ").count(), printed, "{name}, page {index}");
            assert!(!drawing.contains("<text") && drawing.trim_end().ends_with("</svg>"));
        }
        assert_eq!(svg(&made.display_list, &fonts, 9, PreviewArea::Trim), None);
    }
}

fn words(script: &'static str) -> impl Strategy<Value = String> {
    prop::collection::vec(script, 1..7).prop_map(|words| words.join(" "))
}

fn block(
    lang: &'static str,
    script: &'static str,
    shape: Vec<usize>,
) -> impl Strategy<Value = LanguageBlock> {
    let lines: usize = shape.iter().sum();
    let texts = prop::collection::vec(words(script), lines);
    let headings = prop::collection::vec(words(script), shape.len());
    (texts, headings, words(script), words(script), words(script)).prop_map(
        move |(texts, headings, title, scan, foot)| {
            let mut texts = texts.into_iter();
            let tones = [Tone::Yes, Tone::No, Tone::Elsewhere, Tone::Caution];
            let sections = shape
                .iter()
                .zip(headings)
                .zip(tones)
                .map(|((&count, heading), tone)| Section {
                    tone,
                    heading,
                    lines: (0..count)
                        .map(|index| Line {
                            text: texts.next().expect("a text for each line"),
                            pictogram: (index % 3 != 0).then(|| "bottle".to_owned()),
                            hazard: tone != Tone::Yes && index % 2 == 0,
                        })
                        .collect(),
                })
                .collect();
            let direction = if lang == "ar" { Direction::Rtl } else { Direction::Ltr };
            LanguageBlock {
                lang: lang.into(),
                direction,
                title,
                sections,
                scan,
                footer: vec![foot],
                reviewed: true,
            }
        },
    )
}

fn jobs() -> impl Strategy<Value = SheetJob> {
    let latin = "[A-Za-zÁÉñüşžẤộ]{1,14}";
    let arabic = "[ء-غف-ي]{1,10}";
    let shapes = prop::collection::vec(1_usize..9, 1..5);
    (shapes, 0..SheetKind::ALL.len(), 0_usize..4, 300.0_f64..1200.0, any::<bool>(), 0_usize..5)
        .prop_flat_map(move |(shape, kind, mix, distance, option, size)| {
            let kind = SheetKind::ALL[kind];
            // A round label bears one message.
            let shape = if kind == SheetKind::RoundSticker { vec![1] } else { shape };
            let blocks: BoxedStrategy<Vec<LanguageBlock>> = match mix {
                0 => block("en", latin, shape).prop_map(|b| vec![b]).boxed(),
                1 => block("ar", arabic, shape).prop_map(|b| vec![b]).boxed(),
                2 => (block("ar", arabic, shape.clone()), block("en", latin, shape))
                    .prop_map(|(a, b)| vec![a, b])
                    .boxed(),
                _ => (
                    block("en", latin, shape.clone()),
                    block("es", latin, shape.clone()),
                    block("ar", arabic, shape),
                )
                    .prop_map(|(a, b, c)| vec![a, b, c])
                    .boxed(),
            };
            (blocks, Just((kind, size, option)), Just(distance))
        })
        .prop_map(|(languages, (kind, size, option), distance)| {
            let mut job = job("mailer-es");
            job.sheet = kind;
            let named = kind.sizes().named;
            job.size = SheetSize::named(named[size % named.len()]);
            // Typed corners are laid out within; a round label has its own.
            if let Some(size) = &mut job.size {
                let label = matches!(kind, SheetKind::CartLid | SheetKind::EnclosureSign);
                size.corner = option.then_some(print::Mm(if label { 20.0 } else { 3.0 }));
            }
            job.fold = if option { Fold::Thirds } else { Fold::Half };
            job.printers_mark = option;
            job.die_line = option;
            job.languages = languages;
            job.viewing_distance = print::Mm(distance);
            job
        })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 96, failure_persistence: None, ..ProptestConfig::default() })]

    /// Either a sheet in which every line is whole, inside and apart, or an error; never a clipped line.
    #[test]
    fn no_text_is_clipped_or_overlaps(job in jobs()) {
        match print_job(&job) {
            Ok(made) => sound(&job, &made.display_list),
            Err(error) => {
                for item in &error.items {
                    prop_assert!(
                        ["text-too-long", "word-too-wide", "too-many-lines", "postal-field-full"]
                            .contains(&item.code.as_str()),
                        "{}", item.message
                    );
                }
            }
        }
    }
}
