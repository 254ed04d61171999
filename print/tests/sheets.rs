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
        let scripts = ["ar", "hi", "zh-Hans", "ko"];
        let own = job.languages.iter().filter(|block| scripts.contains(&block.lang.as_str())).count();
        assert_eq!(needed.len(), 2 + 2 * own, "{name}");
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

/// The preview draws the glyphs of the display list, each from a move of its own, and no text that needs a font.
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
            let runs = drawing.lines().filter(|line| line.starts_with("<path transform="));
            let moves: usize = runs.map(|run| run.matches('M').count()).sum();
            assert_eq!(moves, printed, "{name}, page {index}");
            assert!(!drawing.contains("<text") && drawing.trim_end().ends_with("</svg>"));
        }
        assert_eq!(svg(&made.display_list, &fonts, 9, PreviewArea::Trim), None);
    }
}

fn words(script: &'static str) -> impl Strategy<Value = String> {
    prop::collection::vec(spiced(script), 1..7).prop_map(|words| words.join(" "))
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
                            ..Line::default()
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
                outdated: Vec::new(),
                code_alt: String::new(),
                link_alt: String::new(),
            }
        },
    )
}

/// The languages of the random jobs, each with an expression for its words: twelve languages need no more scripts.
const SCRIPTS: [(&str, &str); 8] = [
    ("en", "[A-Za-z]{1,14}"),
    ("es", "[A-Za-zÁÉñüşç]{1,14}"),
    ("vi", "[A-Za-zăđơưẤộệỷ]{1,7}"),
    ("ru", "[А-Яа-яё]{1,14}"),
    ("ar", "[ء-غف-ي]{1,10}"),
    ("hi", "([क-ह](्[क-ह])?[ािीुूेैोौंँ]?){1,6}"),
    (
        "zh",
        "[塑料瓶和罐食品饮玻璃纸板请压平邮件杂志盒干净的铝箔报空杯袋薄膜泡沫电线软管物液体衣服盘子，、。：]{1,9}",
    ),
    ("ko", "[재활용수거함플라스틱병과통식품캔음료유리단지납작하게접은골판종이우편물잡팩기와뚜껑깨끗한]{1,6}"),
];

/// A word of another script or digits, as sheets have them everywhere.
fn spiced(script: &'static str) -> BoxedStrategy<String> {
    prop_oneof![
        8 => script.prop_map(|word: String| word),
        1 => "(PET|PP|HDPE) [1-7]",
        1 => "[0-9]{1,3} (kg|gal|lb)",
        1 => "\\([A-Za-z]{2,5}\\)",
        1 => "[ء-غف-ي]{2,6}",
        1 => Just("555-0142".to_owned()),
    ]
    .boxed()
}

fn jobs() -> impl Strategy<Value = SheetJob> {
    let shapes = prop::collection::vec(1_usize..9, 1..5);
    let languages = prop::sample::subsequence(SCRIPTS.to_vec(), 1..=4).prop_shuffle();
    (shapes, 0..SheetKind::ALL.len(), languages, 300.0_f64..1200.0, any::<bool>(), 0_usize..5)
        .prop_flat_map(move |(shape, kind, languages, distance, option, size)| {
            let kind = SheetKind::ALL[kind];
            // A round label bears one message.
            let shape = if kind == SheetKind::RoundSticker { vec![1] } else { shape };
            let blocks: Vec<BoxedStrategy<LanguageBlock>> = languages
                .into_iter()
                .map(|(lang, script)| block(lang, script, shape.clone()).boxed())
                .collect();
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

/// What a job that is whole in itself may be refused for.
const TOO_MUCH: [&str; 4] = ["text-too-long", "word-too-wide", "too-many-lines", "postal-field-full"];

/// A job of every kind and way of folding.
const KINDS: [&str; 8] = [
    "lid-en-es-ar",
    "sign-en-es-ar",
    "sticker-en-es-ar",
    "mailer-ko-vi-ru",
    "flat-en-es",
    "self-mailer-en-es",
    "self-mailer-thirds-ar-en",
    "handout-en",
];

/// Whole and sound, or refused as too much: what is said names the language and the line, or the sheet.
fn sound_or_refused(job: &SheetJob, name: &str) -> bool {
    match print_job(job) {
        Ok(made) => {
            sound(job, &made.display_list);
            true
        }
        Err(error) => {
            for item in error.errors() {
                assert!(TOO_MUCH.contains(&item.code.as_str()), "{name}: {}", item.message);
                let where_ = if item.code == "too-many-lines" { "sheet" } else { "place" };
                assert!(!item.args[where_].is_empty(), "{name}: {}", item.message);
            }
            false
        }
    }
}

/// Every text ten times as long, on the kinds that `refusals.rs` does not look at.
#[test]
fn texts_ten_times_as_long_are_whole_or_refused() {
    let mut refused = Vec::new();
    for name in ["sign-en-es-ar", "sticker-en-es-ar", "flat-en-es", "self-mailer-thirds-ar-en", "handout-en"]
    {
        let mut job = job(name);
        for block in &mut job.languages {
            let sections = &mut block.sections;
            let lines = sections.iter_mut().flat_map(|section| &mut section.lines).map(|line| &mut line.text);
            for text in lines.chain(&mut block.footer).chain([&mut block.title, &mut block.scan]) {
                *text = [text.as_str(); 10].join(" ");
            }
        }
        if !sound_or_refused(&job, name) {
            refused.push(name);
        }
    }
    assert!(refused.len() > 2, "{refused:?} alone: ten times the text has room nearly everywhere");
}

/// One word that grows: it stays whole, in its area and apart from others, as long as it is narrower than what is there for
/// it, and the first that is wider is refused.
#[test]
fn a_word_that_grows_is_whole_until_it_is_refused() {
    for name in KINDS {
        for at_title in [true, false] {
            // A round label has no title: its one message says it all.
            if at_title && name.starts_with("sticker") {
                continue;
            }
            let mut fitted = Vec::new();
            for letters in [4, 12, 20, 32, 160] {
                let mut job = job(name);
                let block = &mut job.languages[0];
                let word = "W".repeat(letters);
                if at_title {
                    block.title = word
                } else {
                    block.sections[0].lines[0].text = word
                }
                fitted.push(sound_or_refused(&job, name));
            }
            assert!(fitted[0] && !fitted[4], "{name}: {fitted:?}");
            assert!(fitted.is_sorted_by(|a, b| a >= b), "{name}: a longer word fits: {fitted:?}");
        }
    }
}

/// Something that does not belong into a text, and what is said of it.
fn spoilers() -> impl Strategy<Value = (String, &'static [&'static str])> {
    const CHARACTER: &[&str] = &["bad-character"];
    const GLYPH: &[&str] = &["missing-glyph"];
    prop_oneof![
        prop::char::range('\0', '\u{1F}').prop_map(|c| (c.to_string(), CHARACTER)),
        prop::char::range('\u{202A}', '\u{202E}').prop_map(|c| (c.to_string(), CHARACTER)),
        prop::char::range('\u{1F300}', '\u{1F64F}').prop_map(|c| (c.to_string(), GLYPH)),
        "[あ-んก-ฮ]{1,3}".prop_map(|text| (text, GLYPH)),
        "[A-Z]{300}".prop_map(|text| (text, &["word-too-wide"] as &[&str])),
        "([a-z]{3,9} ){2000}".prop_map(|text| (text, &["text-too-long", "too-many-lines"] as &[&str])),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 96, failure_persistence: None, ..ProptestConfig::default() })]

    /// Either a sheet in which every line is whole, inside and apart, or an error; never a clipped line.
    #[test]
    fn no_text_is_clipped_or_overlaps(job in jobs()) {
        match print_job(&job) {
            Ok(made) => sound(&job, &made.display_list),
            Err(error) => {
                for item in error.errors() {
                    prop_assert!(TOO_MUCH.contains(&item.code.as_str()), "{}", item.message);
                }
            }
        }
    }

    /// A text with something in it that can't be printed is refused, and the error says which language and line.
    #[test]
    fn what_cannot_be_printed_is_named(job in jobs(), (spoiler, codes) in spoilers(), lang in 0_usize..4) {
        let mut job = job;
        let lang = lang % job.languages.len();
        let block = &mut job.languages[lang];
        block.sections[0].lines[0].text.push_str(&spoiler);
        let place = format!("line:{}:1:1", block.lang);
        let error = match print_job(&job) {
            // A sign is large enough for much that no other sheet takes.
            Ok(made) if TOO_MUCH.contains(&codes[0]) => {
                sound(&job, &made.display_list);
                return Ok(());
            }
            made => made.map(|_| ()).expect_err("it can't be printed"),
        };
        let told = error.items.iter().any(|item| {
            codes.contains(&item.code.as_str()) && (item.args.get("place") == Some(&place) || item.code == "too-many-lines")
        });
        // A job that would not have fitted anyway may be refused for another of its lines first.
        let anyway = error.items.iter().any(|item| TOO_MUCH.contains(&item.code.as_str()));
        prop_assert!(told || (anyway && TOO_MUCH.contains(&codes[0])), "{error}");
    }
}
