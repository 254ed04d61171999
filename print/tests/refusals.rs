//! Bad input: every job here is refused, with the code, the arguments and a message that says what to do.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

mod common;

use common::{fonts, job, print_job};
use print::{
    Line, Mm, PREFLIGHT_CODES, PRESS_PROFILE, PreflightItem, PressSheet, Severity, SheetJob, SheetKind,
    SheetSize, Tone, make,
};

/// A way to spoil a job, and what must be said of it.
type Case = (&'static str, fn(&mut SheetJob), &'static [(&'static str, &'static str)]);

const CASES: &[Case] = &[
    ("language-count", |job| job.languages.clear(), &[("count", "0")]),
    (
        "language-count",
        |job| {
            let more = job.languages[0].clone();
            job.languages.extend([more.clone(), more]);
        },
        &[("count", "5")],
    ),
    ("language-twice", |job| job.languages[1].lang = "en".into(), &[("lang", "en")]),
    ("language-invalid", |job| job.languages[1].lang = "<b>".into(), &[("lang", "<b>")]),
    (
        "languages-differ",
        |job| {
            job.languages[1].sections[0].lines.pop();
        },
        &[("lang", "es"), ("first", "en"), ("what", "lines"), ("section", "1"), ("theirs", "9")],
    ),
    (
        "languages-differ",
        |job| {
            job.languages[2].sections[2].lines[0].hazard = false;
        },
        &[("lang", "ar"), ("what", "picture"), ("section", "3"), ("line", "1")],
    ),
    (
        "languages-differ",
        |job| {
            job.languages[2].sections[1].tone = Tone::Yes;
        },
        &[("what", "verdict"), ("section", "2")],
    ),
    (
        "languages-differ",
        |job| {
            job.languages[1].sections.pop();
        },
        &[("what", "sections"), ("ours", "3"), ("theirs", "2")],
    ),
    ("nothing-to-say", |job| job.languages.iter_mut().for_each(|block| block.sections.clear()), &[]),
    (
        "bad-character",
        |job| job.languages[1].title.push('\u{202E}'),
        &[("place", "title:es"), ("codepoint", "U+202E"), ("kind", "bidi")],
    ),
    (
        "bad-character",
        |job| job.jurisdiction.push('\u{7}'),
        &[("place", "issuer"), ("codepoint", "U+0007"), ("position", "17")],
    ),
    ("bad-character", |job| job.indicia.push("a\nb".into()), &[("place", "indicia:1"), ("kind", "control")]),
    ("text-empty", |job| job.languages[0].sections[1].heading = "  ".into(), &[("place", "heading:en:2")]),
    ("text-empty", |job| job.short_url.clear(), &[("place", "short-address")]),
    (
        "missing-glyph",
        |job| job.languages[0].sections[0].lines[2].text.push_str(" 漢🥫"),
        &[("place", "line:en:1:3"), ("lang", "en"), ("characters", "漢 (U+6F22), 🥫 (U+1F96B)")],
    ),
    (
        "pictogram-unknown",
        |job| {
            job.languages
                .iter_mut()
                .for_each(|block| block.sections[0].lines[0].pictogram = Some("unicorn".into()))
        },
        &[("place", "line:en:1:1"), ("pictogram", "unicorn")],
    ),
    (
        "hazard-accepted",
        |job| job.languages.iter_mut().for_each(|block| block.sections[0].lines[3].hazard = true),
        &[("place", "line:en:1:4"), ("text", "Cardboard, flattened")],
    ),
    (
        "address-invalid",
        |job| job.qr_url = "javascript:alert(1)".into(),
        &[("address", "javascript:alert(1)")],
    ),
    ("address-invalid", |job| job.qr_url = "https://a b".into(), &[("address", "https://a b")]),
    (
        "qr-too-long",
        |job| job.qr_url = format!("https://example.org/{}", "x".repeat(3000)),
        &[("characters", "3020")],
    ),
    ("date-invalid", |job| job.date = "2026-02-30".into(), &[("date", "2026-02-30")]),
    ("distance-invalid", |job| job.viewing_distance = Mm(0.0), &[("distance", "0")]),
    ("distance-invalid", |job| job.viewing_distance = Mm(f64::NAN), &[("distance", "NaN")]),
    (
        "word-too-wide",
        |job| job.languages[1].sections[0].lines[0].text = "x".repeat(200),
        &[("place", "line:es:1:1"), ("lang", "es")],
    ),
    (
        "word-too-wide",
        |job| job.languages[0].title = "W".repeat(90),
        &[("place", "title:en"), ("lang", "en")],
    ),
    (
        "text-too-long",
        |job| {
            let text = &mut job.languages[1].sections[0].lines[0].text;
            *text = format!("{text} ").repeat(60);
        },
        &[("place", "line:es:1:1"), ("lang", "es")],
    ),
    (
        "too-many-lines",
        |job| {
            job.languages.iter_mut().for_each(|block| {
                let more = block.sections[0].lines.clone();
                for _ in 0..12 {
                    block.sections[0].lines.extend(more.clone());
                }
            })
        },
        &[("sheet", "cart-lid"), ("languages", "3"), ("lines", "140")],
    ),
    ("word-too-wide", |job| job.viewing_distance = Mm(4000.0), &[]),
    ("size-zero", |job| job.size = Some(size(0.0, 0.0)), &[("width", "0"), ("height", "0")]),
    ("size-zero", |job| job.size = Some(size(-200.0, 100.0)), &[("width", "-200")]),
    ("size-zero", |job| job.size = Some(size(f64::NAN, 100.0)), &[("width", "NaN")]),
    (
        "size-out-of-range",
        |job| job.size = Some(size(10_000.0, 10_000.0)),
        &[("width", "10000"), ("least", "100"), ("most", "600")],
    ),
    ("size-out-of-range", |job| job.size = Some(size(f64::INFINITY, 200.0)), &[("width", "inf")]),
    ("size-too-narrow", |job| job.size = Some(size(120.0, 600.0)), &[("most", "4")]),
    (
        "corner-radius",
        |job| job.size = Some(SheetSize { corner: Some(Mm(90.0)), ..size(200.0, 240.0) }),
        &[("radius", "90"), ("most", "50")],
    ),
    (
        "corner-radius",
        |job| {
            job.sheet = SheetKind::PostcardMailer;
            job.size = Some(SheetSize { corner: Some(Mm(6.0)), ..size(228.6, 152.4) });
        },
        // Cards' corners: at most 1/8 in (QSG 201).
        &[("radius", "6"), ("most", "3.17")],
    ),
    (
        "size-fixed",
        |job| (job.sheet, job.size) = (SheetKind::SelfMailer, Some(size(200.0, 200.0))),
        &[("names", "letter, a4")],
    ),
    (
        "size-not-round",
        |job| (job.sheet, job.size) = (SheetKind::RoundSticker, Some(size(100.0, 120.0))),
        &[("width", "100"), ("height", "120")],
    ),
    ("one-message", |job| job.sheet = SheetKind::RoundSticker, &[("lines", "20")]),
    (
        "postal-size",
        |job| (job.sheet, job.size) = (SheetKind::PostcardMailer, Some(size(101.6, 152.4))),
        &[("width", "101.6"), ("height", "152.4")],
    ),
    ("stock-thickness", |job| job.stock.thickness = Some(Mm(50.0)), &[("thickness", "50")]),
    (
        "press-size",
        |job| job.press = Some(PressSheet::new(size(10_000.0, 10_000.0))),
        &[("width", "10000"), ("most", "1700")],
    ),
    (
        "press-too-small",
        |job| job.press = Some(PressSheet::new(size(178.0, 229.0))),
        &[("width", "178"), ("height", "229")],
    ),
    (
        "press-gutter",
        |job| {
            job.press = Some(PressSheet { gutter: Some(Mm(2.0)), ..PressSheet::new(size(330.0, 480.0)) });
        },
        &[("gutter", "2.00"), ("least", "6.35")],
    ),
    (
        "press-up",
        |job| job.press = Some(PressSheet { up: Some(9), ..PressSheet::new(size(330.0, 480.0)) }),
        &[("up", "9"), ("most", "2")],
    ),
];

const fn size(width: f64, height: f64) -> SheetSize {
    SheetSize::new(Mm(width), Mm(height))
}

/// Every finding is in the table of codes with exactly these arguments, and its message is for people.
fn well_formed(item: &PreflightItem) {
    let (_, arguments) = PREFLIGHT_CODES
        .iter()
        .find(|(code, _)| *code == item.code)
        .unwrap_or_else(|| panic!("“{}” is not in the table of codes", item.code));
    let mut expected: Vec<&str> = arguments.to_vec();
    expected.sort_unstable();
    assert_eq!(item.args.keys().map(String::as_str).collect::<Vec<_>>(), expected, "{}", item.code);
    assert!(!item.message.is_empty() && item.message.len() < 600, "{}", item.message);
    assert!(!item.message.contains('\n'), "{}", item.message);
}

#[test]
fn each_is_refused_and_told_why() {
    for (code, spoil, arguments) in CASES {
        let mut job = job("lid-en-es-ar");
        spoil(&mut job);
        let error = print_job(&job).expect_err(code);
        error.items.iter().for_each(well_formed);
        assert!(error.items.iter().all(|item| {
            (item.severity == Severity::Warning) == item.code.starts_with("fits-")
                && item.severity != Severity::Pass
        }));
        let item = error
            .items
            .iter()
            .find(|item| {
                item.code == *code && arguments.iter().all(|(name, value)| item.args[*name] == *value)
            })
            .unwrap_or_else(|| panic!("{code} {arguments:?} is not among {:#?}", error.items));
        assert!(error.to_string().contains(&item.message));
    }
}

/// Sizes that no sheet of any kind has: nothing, less than nothing, none at all, ten metres.
#[test]
fn sizes_that_no_sheet_has_are_refused_for_every_kind() {
    for name in
        ["lid-en", "sign-en-es-ar", "sticker-en-es-ar", "mailer-es", "self-mailer-en-es", "handout-en"]
    {
        for (width, height) in [
            (0.0, 0.0),
            (0.0, 200.0),
            (-200.0, 200.0),
            (f64::NAN, 200.0),
            (10_000.0, 10_000.0),
            (200.0, f64::INFINITY),
        ] {
            let mut job = job(name);
            job.size = Some(size(width, height));
            let error = print_job(&job).map(|_| ()).expect_err(name);
            error.items.iter().for_each(well_formed);
            let about_size =
                |item: &PreflightItem| item.code.starts_with("size-") || item.code == "postal-size";
            assert!(error.items.iter().all(about_size), "{name} {width} x {height}: {error}");
        }
    }
}

/// Two hundred places on a mailer: told how much is missing, and nothing is made.
#[test]
fn two_hundred_places_are_too_many_for_a_mailer() {
    for name in ["self-mailer-en-es", "mailer-es", "handout-en-es-ar"] {
        let mut job = job(name);
        for block in &mut job.languages {
            let section =
                block.sections.iter_mut().find(|section| section.tone != Tone::Caution).expect("one");
            for number in 0..200 {
                let text = format!("Drop-off center {number}, {number} Sandhook Road, Outer Sedge, 555-0110");
                section.lines.push(Line { text, ..Line::default() });
            }
        }
        let error = print_job(&job).expect_err(name);
        error.items.iter().for_each(well_formed);
        assert!(error.errors().all(|item| item.code == "too-many-lines"), "{name}: {error}");
        let missing: f64 = error.items[0].args["missing"].parse().expect("millimetres");
        assert!(missing > 50.0, "{name}: {error}");
    }
}

/// A mailed piece's thickness: unknown, right, too thin and too thick for its class (QSG 201; DMM 201.3.14).
#[test]
fn the_post_is_told_the_thickness() {
    for (name, thickness, code) in [
        ("mailer-es", None, Some("postal-thickness-unknown")),
        ("mailer-es", Some(0.3), None),
        // Under .009 in, which a letter of this size needs.
        ("mailer-es", Some(0.2), Some("postal-thickness")),
        // Folded in three: thrice .1 mm.
        ("self-mailer-thirds-ar-en", Some(0.1), None),
        ("self-mailer-en-es", Some(0.05), Some("postal-thickness")),
        ("flat-en-es", Some(0.22), Some("postal-thickness")),
    ] {
        let mut job = job(name);
        job.stock.thickness = thickness.map(Mm);
        let items = match print_job(&job) {
            Ok(made) => made.preflight,
            Err(error) => error.items,
        };
        items.iter().for_each(well_formed);
        let found: Vec<&str> = items
            .iter()
            .map(|item| item.code.as_str())
            .filter(|code| code.starts_with("postal-thickness"))
            .collect();
        assert_eq!(found, code.into_iter().collect::<Vec<_>>(), "{name} {thickness:?}");
    }
}

#[test]
fn the_posts_fields_say_when_they_are_full() {
    let mut job = job("mailer-es");
    job.return_address[0] = "Quillmere County Department of Recycling, Composting and Everything Else".into();
    let error = print_job(&job).expect_err("too long for the field");
    error.items.iter().for_each(well_formed);
    assert_eq!(error.items[0].code, "postal-field-full");
    assert_eq!(error.items[0].args["line"], "1");
    job.return_address.clear();
    job.indicia.clear();
    let made = print_job(&job).expect("it can be made");
    let missing: Vec<&str> = made
        .preflight
        .iter()
        .filter(|item| item.code == "postal-field-missing")
        .map(|item| item.args["field"].as_str())
        .collect();
    assert_eq!(missing, ["return-address", "indicia"]);
}

#[test]
fn a_font_or_profile_that_is_none_is_refused() {
    let mut set = print::FontSet::new();
    for bytes in [Vec::new(), b"not a font".to_vec(), PRESS_PROFILE.to_vec()] {
        let error = set.add("Broken Sans", print::Weight::Regular, bytes).expect_err("no font");
        assert_eq!(error.items[0].code, "font-unreadable");
        error.items.iter().for_each(well_formed);
    }
    let error = make(&job("lid-en"), &fonts(), b"no profile").expect_err("no profile");
    assert_eq!(error.items[0].code, "profile-unusable");
    // A set without faces has none of the characters.
    let error = make(&job("lid-en"), &print::FontSet::new(), PRESS_PROFILE).expect_err("no fonts");
    assert!(error.items.iter().all(|item| item.code == "missing-glyph"));
}

/// A character outside the national standard that a font was cut to, or of a script that no language of the sheet
/// writes, is named with its language, place and text; nothing is drawn as an empty box.
#[test]
fn missing_glyphs_name_language_place_text_and_character() {
    for (name, lang, text, characters) in [
        ("lid-zh", "zh-Hans", "𠮷村的瓶子", "𠮷 (U+20BB7)"),
        ("lid-zh", "zh-Hans", "塑膠瓶", "膠 (U+81A0)"),
        ("lid-ko", "ko", "뷁 병", "뷁 (U+BDC1)"),
        // The same as separate letters, as some systems store it.
        ("lid-ko", "ko", "\u{1107}\u{1170}\u{11B0} 병", "뷁 (U+BDC1)"),
        ("lid-ko", "ko", "塑料", "塑 (U+5851), 料 (U+6599)"),
        ("lid-hi", "hi", "बोतल ಕ", "ಕ (U+0C95)"),
        ("lid-ru", "ru", "Бутылки → бак", "→ (U+2192)"),
        ("lid-vi", "vi", "Chai ♻", "♻ (U+267B)"),
    ] {
        let mut job = job(name);
        job.languages[0].sections[1].lines[2].text = text.to_owned();
        let error = print_job(&job).map(|_| ()).expect_err(text);
        let [item] = error.items.as_slice() else { panic!("{error}") };
        well_formed(item);
        assert_eq!(item.code, "missing-glyph", "{text}");
        for (argument, value) in [
            ("lang", lang),
            ("characters", characters),
            ("text", text),
            ("place", &format!("line:{lang}:2:3")),
        ] {
            assert_eq!(item.args[argument], value, "{text}");
        }
        assert!(item.message.contains(characters) && item.message.contains(text), "{}", item.message);
    }
}

/// All texts ten times as long: refused, and following the advice leads to a sheet.
#[test]
fn texts_ten_times_too_long_are_refused_and_the_advice_helps() {
    for name in ["lid-en", "lid-en-es", "mailer-es"] {
        let mut job = job(name);
        for block in &mut job.languages {
            for line in block.sections.iter_mut().flat_map(|section| &mut section.lines) {
                line.text = [line.text.as_str(); 10].join(" ");
            }
        }
        let mut rounds = 0;
        loop {
            let error = match print_job(&job) {
                Ok(_) => break,
                Err(error) => error,
            };
            rounds += 1;
            assert!(rounds <= 40, "{name}: the advice does not end: {error}");
            for item in error.errors() {
                well_formed(item);
                assert_eq!(item.code, "text-too-long", "{name}: {}", item.message);
                let cut: usize = item.args["cut"].parse().expect("a number");
                assert!(cut > 0);
                let places: Vec<usize> = item.args["place"]
                    .split(|c: char| !c.is_ascii_digit())
                    .filter_map(|n| n.parse().ok())
                    .collect();
                let lang = &item.args["lang"];
                let block = job.languages.iter_mut().find(|block| block.lang == *lang).expect("the language");
                let text = &mut block.sections[places[0] - 1].lines[places[1] - 1].text;
                let keep = text.chars().count().saturating_sub(cut).max(5);
                *text = text.chars().take(keep).collect::<String>().trim_end().to_owned();
            }
        }
        assert!(rounds > 0, "{name}: ten times the text can't fit");
    }
}

#[test]
fn findings_of_good_sheets_are_in_the_table_too() {
    for name in common::JOBS {
        let made = common::artifact(name);
        made.preflight.iter().for_each(well_formed);
        let unreviewed: Vec<&str> = made
            .preflight
            .iter()
            .filter(|item| item.code == "translation-unreviewed")
            .map(|item| item.args["lang"].as_str())
            .collect();
        let expected: Vec<String> = job(name)
            .languages
            .iter()
            .filter(|block| !block.reviewed)
            .map(|block| block.lang.clone())
            .collect();
        assert_eq!(unreviewed, expected, "{name}");
        assert!(made.preflight.iter().all(|item| item.severity != Severity::Error));
    }
}
