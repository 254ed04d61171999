//! The demo's sheets, for the press and for the web, made by the command line and judged from outside:
//! structure, fonts, boxes, text, QR code, ink and postal zones, each by a program that knows nothing of
//! ours. The files' keys and tags are read by pikepdf and looked at in `pdf_keys.rs`.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

use lidleaf_tests::{Picture, Sheet, Tool, demo, sheet, web_sheet};
use serde_json::Value;

/// Every sheet in one, two and three languages, and alone in each language.
const SHEETS: &[(&str, &[&str])] = &[
    ("lid", &["en"]),
    ("lid", &["es"]),
    ("lid", &["ar"]),
    ("lid", &["en", "es"]),
    ("lid", &["en", "es", "ar"]),
    ("postcard", &["en"]),
    ("postcard", &["es"]),
    ("postcard", &["ar"]),
    ("postcard", &["en", "es"]),
    ("postcard", &["en", "es", "ar"]),
    ("sign", &["en", "es", "ar"]),
    ("self-mailer", &["en", "es"]),
    ("self-mailer", &["ar", "en"]),
    ("handout", &["en"]),
    ("handout", &["en", "es", "ar"]),
];

/// Puts one question to every sheet's press file.
fn judge_press(question: impl Fn(&Sheet, &str, &[&str])) {
    for (kind, languages) in SHEETS {
        let made = sheet(kind, languages);
        question(&made, kind, languages);
    }
}

/// Puts one question to every sheet's files: for the press, and for the web.
fn judge(question: impl Fn(&Sheet, &str, &[&str])) {
    judge_press(&question);
    for (kind, languages) in SHEETS {
        let made = web_sheet(kind, languages);
        question(&made, &format!("{kind} for the web"), languages);
    }
}

/// The sides of a sheet.
fn pages(kind: &str) -> u32 {
    if ["postcard", "self-mailer", "handout"].iter().any(|two| kind.starts_with(two)) { 2 } else { 1 }
}

/// The finished size in points.
fn finished(kind: &str) -> (f64, f64) {
    let kind = kind.split(' ').next().unwrap_or(kind);
    match kind {
        "lid" => (504.0, 648.0),
        "postcard" => (648.0, 432.0),
        "sign" => (1296.0, 1728.0),
        // 115 mm.
        "sticker" => (325.984, 325.984),
        _ => (612.0, 792.0),
    }
}

/// "At most 120 KB Latin, 250 KB with Chinese", the profile included: what goes through a print shop's form and a
/// phone's connection without a thought. A judgement, no source.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn files_are_small() {
    judge(|made, kind, languages| {
        let large =
            languages.iter().any(|tag| ["zh", "ja", "ko"].iter().any(|script| tag.starts_with(script)));
        // A handout says several times what a lid does.
        let most = if large || kind.starts_with("handout") { 250_000 } else { 120_000 };
        let bytes = std::fs::metadata(made.file()).unwrap().len();
        assert!(bytes <= most, "{kind} {languages:?}: {bytes} bytes of at most {most}");
    });
}

#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn qpdf_finds_the_structure_sound() {
    judge(|made, kind, languages| {
        let output = Tool::QPDF.output(&[&"--check", &made.file()]);
        let said =
            format!("{}{}", String::from_utf8_lossy(&output.stdout), String::from_utf8_lossy(&output.stderr));
        // Exit code 3 is "warnings": not good enough for a print shop.
        assert!(output.status.success(), "{kind} {languages:?}: {said}");
        assert!(said.contains("No syntax or stream encoding errors found"), "{kind} {languages:?}: {said}");
    });
}

#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn every_font_is_embedded_and_subset_and_mapped_to_unicode() {
    judge(|made, kind, languages| {
        let listed = Tool::PDFFONTS.text(&[&made.file()]);
        let rows: Vec<&str> = listed.lines().skip(2).collect();
        assert!(!rows.is_empty(), "{kind} {languages:?} has no fonts:\n{listed}");
        for row in rows {
            // ... emb sub uni object generation
            let words: Vec<&str> = row.split_whitespace().rev().collect();
            assert_eq!(&words[2..5], ["yes", "yes", "yes"], "{kind} {languages:?}:\n{listed}");
        }
    });
}

/// A box of a page, in points from the lower left: left, bottom, right, top.
type Rectangle = [f64; 4];

fn boxes(made: &Sheet, page: u32) -> impl Fn(&str) -> Rectangle {
    let page = page.to_string();
    let told = Tool::PDFINFO.text(&[&"-box", &"-f", &page, &"-l", &page, &made.file()]);
    move |name: &str| {
        let line =
            told.lines().find(|line| line.contains(name)).unwrap_or_else(|| panic!("no {name}:\n{told}"));
        let numbers: Vec<f64> =
            line.rsplit(':').next().unwrap().split_whitespace().map(|n| n.parse().unwrap()).collect();
        numbers.try_into().unwrap()
    }
}

/// ISO 15930-7 (from memory): TrimBox inside BleedBox inside MediaBox. Sizes: 7 x 9 in and 9 x 6 in, at
/// 72 points an inch; bleed 1/8 in (common practice).
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn trim_is_the_finished_size_exactly_inside_bleed_inside_media() {
    judge_press(|made, kind, languages| {
        let finished = finished(kind);
        for page in 1..=pages(kind) {
            let of = boxes(made, page);
            let (media, bleed, trim) = (of("MediaBox"), of("BleedBox"), of("TrimBox"));
            assert_eq!((trim[2] - trim[0], trim[3] - trim[1]), finished, "{kind} {languages:?} page {page}");
            for (inner, outer, by) in [(trim, bleed, 9.0), (bleed, media, 0.0)] {
                let margins =
                    [inner[0] - outer[0], inner[1] - outer[1], outer[2] - inner[2], outer[3] - inner[3]];
                assert!(
                    margins.iter().all(|m| *m >= by - 0.005),
                    "{kind} {languages:?} page {page}: {margins:?}"
                );
            }
        }
        let beyond = (pages(kind) + 1).to_string();
        let told = Tool::PDFINFO.text(&[&made.file()]);
        let count = told.lines().find_map(|line| line.strip_prefix("Pages:")).unwrap().trim().to_owned();
        assert_eq!(count, pages(kind).to_string(), "not {beyond} pages or more");
    });
}

/// A page for the screen is the finished sheet and nothing else.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn a_page_for_the_web_is_the_finished_sheet() {
    for (kind, languages) in SHEETS {
        let made = web_sheet(kind, languages);
        let (width, height) = finished(kind);
        for page in 1..=pages(kind) {
            let of = boxes(&made, page);
            for name in ["MediaBox", "CropBox", "TrimBox"] {
                assert_eq!(of(name), [0.0, 0.0, width, height], "{kind} {languages:?}: {name}");
            }
        }
        let text = Tool::PDFTOTEXT.text(&[&"-raw", &made.file(), &"-"]);
        assert!(!text.contains("2026-12-01"), "{kind} {languages:?}: the slug is on it:\n{text}");
    }
}

/// Words with single spaces, so that line breaks do not matter.
fn plain(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// All that a language's block says.
fn said(block: &Value) -> Vec<String> {
    let text = |value: &Value| value.as_str().unwrap().to_owned();
    let mut all = vec![text(&block["title"]), text(&block["scan"])];
    all.extend(block["footer"].as_array().into_iter().flatten().map(text));
    for section in block["sections"].as_array().unwrap() {
        all.push(text(&section["heading"]));
        all.extend(section["lines"].as_array().unwrap().iter().map(|line| text(&line["text"])));
    }
    all
}

fn language_blocks(made: &Sheet) -> Vec<(String, Vec<String>)> {
    let blocks = made.job()["languages"].as_array().unwrap();
    blocks.iter().map(|block| (block["lang"].as_str().unwrap().to_owned(), said(block))).collect()
}

#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn poppler_and_mupdf_read_every_english_and_spanish_line_back() {
    judge(|made, kind, languages| {
        // In the order in which the page draws it: a wrapped line stays together.
        let poppler = plain(&Tool::PDFTOTEXT.text(&[&"-raw", &made.file(), &"-"]));
        let mupdf = plain(&Tool::MUTOOL.text(&[&"draw", &"-F", &"txt", &made.file()]));
        for (language, lines) in language_blocks(made).iter().filter(|(language, _)| language != "ar") {
            for line in lines {
                for (reader, text) in [("pdftotext", &poppler), ("mutool", &mupdf)] {
                    assert!(
                        text.contains(&plain(line)),
                        "{kind} {languages:?}: {reader} does not find the {language} line \"{line}\" in:\n{text}"
                    );
                }
            }
        }
    });
}

/// The Arabic letters of a text, without spaces, marks and all else.
fn letters(text: &str) -> String {
    text.chars().filter(|c| ('\u{621}'..='\u{64a}').contains(c)).collect()
}

/// Arabic comes back exactly in no extractor under every way of writing it. The sheets are written for
/// readers that put right-to-left text in order by themselves, as browsers do; poppler is one of them. A
/// word that carries a vowel mark comes apart there at the mark, so letters alone are compared.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn poppler_reads_every_arabic_word_back() {
    judge(|made, kind, languages| {
        let text = Tool::PDFTOTEXT.text(&[&made.file(), &"-"]);
        let all = letters(&text);
        let words: Vec<String> = text.split_whitespace().map(letters).collect();
        for (_, lines) in language_blocks(made).iter().filter(|(language, _)| language == "ar") {
            for word in lines.iter().flat_map(|line| line.split_whitespace()) {
                let marked = word.chars().any(|c| ('\u{64b}'..='\u{65f}').contains(&c));
                let wanted = letters(word);
                let found = if marked {
                    all.contains(&wanted)
                } else {
                    words.iter().any(|word| word.contains(&wanted))
                };
                assert!(
                    wanted.is_empty() || found,
                    "{kind} {languages:?}: pdftotext does not find \"{word}\" in:\n{text}"
                );
            }
        }
    });
}

#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn zbar_reads_the_guides_address_off_the_drawn_page() {
    judge(|made, kind, languages| {
        // A handout has its code at the end of what it says.
        let page = if kind.starts_with("handout") { "2" } else { "1" };
        let picture = made.beside("page.png");
        let stem = made.beside("page");
        Tool::PDFTOPPM.text(&[
            &"-r",
            &"150",
            &"-png",
            &"-f",
            &page,
            &"-l",
            &page,
            &"-singlefile",
            &made.file(),
            &stem,
        ]);
        let read = Tool::ZBARIMG.text(&[&"--quiet", &"--raw", &"-Sdisable", &"-Sqrcode.enable", &picture]);
        let expected = made.job()["qr_url"].as_str().unwrap();
        assert!(expected.starts_with(&demo().guide_url), "{expected}");
        // The address side of a folded piece and its cover lie on one page: two codes, the same.
        assert!(!read.trim().is_empty(), "{kind} {languages:?}");
        assert!(read.lines().all(|code| code == expected), "{kind} {languages:?}: {read}");
    });
}

/// The same code by a decoder that shares nothing with zbar. It takes one sample a module where zbar looks along
/// lines, and at 150 dots an inch, 3.5 dots a module, it misses one code of ten; so it gets 200.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn a_second_decoder_reads_the_guides_address_too() {
    judge(|made, kind, languages| {
        let expected = made.job()["qr_url"].as_str().unwrap();
        for page in 1..=pages(kind) {
            let drawn = Picture::of(made.file(), page, 200);
            let (width, height) = drawn.size();
            let mut image =
                rqrr::PreparedImage::prepare_from_greyscale(width, height, |x, y| drawn.grey(x, y));
            let read: Vec<String> = image
                .detect_grids()
                .iter()
                .filter_map(|grid| grid.decode().ok())
                .map(|(_, text)| text)
                .collect();
            let codes = match (kind.split(' ').next(), page) {
                (Some("self-mailer"), 1) => 2,
                (Some("handout"), 1) => 0,
                _ => 1,
            };
            assert_eq!(read, vec![expected; codes], "{kind} {languages:?} page {page}");
        }
    });
}

/// Words alone, every drawn area left out: black ones go on the black plate only, white ones on none, and no plate
/// but the four is made.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn words_are_on_the_black_plate_alone() {
    judge_press(|made, kind, languages| {
        let told = Tool::GHOSTSCRIPT.text(&[
            &"-q",
            &"-dNOPAUSE",
            &"-dBATCH",
            &"-dSAFER",
            &"-dFILTERVECTOR",
            &"-dFILTERIMAGE",
            &"-sDEVICE=inkcov",
            &"-sOutputFile=-",
            &made.file(),
        ]);
        let rows: Vec<&str> = told.lines().filter(|line| line.contains("CMYK OK")).collect();
        assert_eq!(rows.len(), pages(kind) as usize, "{kind} {languages:?}: {told}");
        for row in rows {
            let ink: Vec<f64> = row.split_whitespace().take(4).map(|n| n.parse().unwrap()).collect();
            assert_eq!(ink[..3], [0.0; 3], "{kind} {languages:?}: {row}");
            assert!(ink[3] > 0.001, "{kind} {languages:?}: no words at all: {row}");
        }
        let plates = made.beside("plate-%d.tif");
        let out = format!("-sOutputFile={}", plates.display());
        Tool::GHOSTSCRIPT.text(&[
            &"-q",
            &"-dNOPAUSE",
            &"-dBATCH",
            &"-dSAFER",
            &"-sDEVICE=tiffsep",
            &"-r36",
            &out,
            &made.file(),
        ]);
        let folder = plates.parent().unwrap();
        let mut names: Vec<String> = std::fs::read_dir(folder)
            .unwrap()
            .filter_map(|entry| entry.unwrap().file_name().into_string().ok())
            .filter(|name| name.starts_with("plate-1"))
            .collect();
        names.sort();
        let expected = [
            "plate-1(Black).tif",
            "plate-1(Cyan).tif",
            "plate-1(Magenta).tif",
            "plate-1(Yellow).tif",
            "plate-1.tif",
        ];
        assert_eq!(names, expected, "{kind} {languages:?}");
    });
}

/// At most 300 % on coated sheet-fed paper (common practice), measured in what
/// Ghostscript would put on the plates: the sum of four inks at every pixel, not an average.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn no_spot_carries_more_ink_than_the_paper_takes() {
    judge_press(|made, kind, languages| {
        let plates = made.beside("plates-%d.pam");
        let out = format!("-sOutputFile={}", plates.display());
        Tool::GHOSTSCRIPT.text(&[
            &"-q",
            &"-dNOPAUSE",
            &"-dBATCH",
            &"-dSAFER",
            &"-sDEVICE=pamcmyk32",
            &"-r72",
            &out,
            &made.file(),
        ]);
        for page in 1..=pages(kind) {
            let bytes = std::fs::read(made.beside(&format!("plates-{page}.pam"))).unwrap();
            let end = b"ENDHDR\n";
            let at = bytes.windows(end.len()).position(|w| w == end).expect("a PAM header") + end.len();
            // Inside the bleed: the marks beyond it are on every plate, on paper that is cut off.
            let of = boxes(made, page);
            let (media, bleed) = (of("MediaBox"), of("BleedBox"));
            let (wide, margin) =
                ((media[2] - media[0]).ceil() as usize, (bleed[0] - media[0]).ceil() as usize + 1);
            let high = bytes[at..].len() / 4 / wide;
            let most = bytes[at..]
                .chunks_exact(4)
                .enumerate()
                .filter(|(dot, _)| {
                    let (x, y) = (dot % wide, dot / wide);
                    (margin..wide - margin).contains(&x) && (margin..high - margin).contains(&y)
                })
                .map(|(_, p)| p.iter().map(|&ink| u32::from(ink)).sum::<u32>())
                .max();
            let percent = f64::from(most.unwrap()) / 255.0 * 100.0;
            assert!(percent <= 300.0 + 0.2, "{kind} {languages:?} page {page}: {percent:.1} %");
            assert!(percent > 90.0, "{kind} {languages:?} page {page} is all but blank: {percent:.1} %");
        }
    });
}

/// DMM 202 and Publication 28: the lowest .625 in of the last 4.75 in belong to the barcode.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn nothing_is_printed_where_the_post_sprays_its_barcode() {
    const PER_INCH: f64 = 150.0;
    judge_press(|made, kind, languages| {
        if kind != "postcard" {
            return;
        }
        let of = boxes(made, 2);
        let (media, trim) = (of("MediaBox"), of("TrimBox"));
        let drawn = Picture::of(made.file(), 2, 150);
        let across = |points: f64| ((points - media[0]) / 72.0 * PER_INCH).round() as usize;
        let down = |points: f64| ((media[3] - points) / 72.0 * PER_INCH).round() as usize;
        // Up to the cut and past it, because a cut may be off; crop marks begin where the bleed ends.
        let (left, top) = (across(trim[2] - 4.75 * 72.0), down(trim[1] + 0.625 * 72.0));
        let (right, bottom) = (across(trim[2] + 8.0), down(trim[1] - 8.0));
        assert_eq!(drawn.darkest(left, top, right, bottom), 255, "{languages:?}");
        // The other side of the same test: the page does carry ink, and just above the zone may.
        let (width, height) = drawn.size();
        assert!(drawn.darkest(0, 0, width, height) < 64, "{languages:?}: the page is blank");
    });
}

#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn preflight_of_the_demo_has_no_errors_and_the_same_job_makes_the_same_bytes() {
    judge(|made, kind, languages| {
        let errors: Vec<_> =
            made.preflight().into_iter().filter(|(_, severity)| severity == "error").collect();
        assert!(errors.is_empty(), "{kind} {languages:?}: {errors:?}");
        let again = if kind.ends_with("web") {
            web_sheet(kind.split(' ').next().unwrap(), languages)
        } else {
            sheet(kind, languages)
        };
        assert_eq!(
            std::fs::read(made.file()).unwrap(),
            std::fs::read(again.file()).unwrap(),
            "{kind} {languages:?}"
        );
    });
}

/// The README's pictures of the sheets, cut to their finished size.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn pictures_of_the_sheets() {
    const PER_INCH: f64 = 96.0;
    let Some(folder) = lidleaf_tests::screenshots() else { return };
    std::fs::create_dir_all(&folder).unwrap();
    for (kind, page, name) in
        [("lid", 1, "lid"), ("postcard", 1, "postcard"), ("postcard", 2, "postcard-address")]
    {
        let made = sheet(kind, &["en", "es", "ar"]);
        let of = boxes(&made, page);
        let (media, trim) = (of("MediaBox"), of("TrimBox"));
        let pixels = |points: f64| (points / 72.0 * PER_INCH).round().to_string();
        let (left, top) = (pixels(trim[0] - media[0]), pixels(media[3] - trim[3]));
        let (width, height) = (pixels(trim[2] - trim[0]), pixels(trim[3] - trim[1]));
        let (page, stem) = (page.to_string(), folder.join(name));
        Tool::PDFTOPPM.text(&[
            &"-r",
            &"96",
            &"-png",
            &"-f",
            &page,
            &"-l",
            &page,
            &"-singlefile",
            &"-x",
            &left,
            &"-y",
            &top,
            &"-W",
            &width,
            &"-H",
            &height,
            &made.file(),
            &stem,
        ]);
        assert!(folder.join(format!("{name}.png")).is_file(), "{name}");
    }
}
