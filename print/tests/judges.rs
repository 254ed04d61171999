//! The press files before outside judges: qpdf, poppler, Ghostscript, zbar. None of them is ours.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

mod common;

use common::{JOBS, artifact, folder, job, pdf_file, run, run_text, sources, text};
use print::{INK_LIMIT, Item, Role, SheetKind};

fn squeezed(text: &str) -> String {
    // Poppler writes marks of direction around right-to-left words; they are not the words'.
    text.chars()
        .filter(|c| !c.is_whitespace() && !matches!(c, '\u{200E}' | '\u{200F}' | '\u{202A}'..='\u{202E}'))
        .collect()
}

#[test]
fn qpdf_finds_no_fault() {
    for name in JOBS {
        let file = pdf_file("qpdf", name);
        let said = run_text("qpdf", "qpdf", &["--check", text(&file)]);
        assert!(said.contains("No syntax or stream encoding errors found"), "{name}: {said}");
    }
}

/// The keys that PDF/X-4 (ISO 15930-7; from memory) asks for, read with qpdf.
#[test]
fn the_keys_of_pdf_x_4_are_there() {
    for name in JOBS {
        let file = pdf_file("keys", name);
        let json: serde_json::Value =
            serde_json::from_slice(&run("qpdf", "qpdf", &["--json", text(&file)])).expect("qpdf's JSON");
        let objects = &json["qpdf"][1];
        let at = |reference: &serde_json::Value| {
            let key = format!("obj:{}", reference.as_str().expect("a reference"));
            let object = &objects[&key];
            if object["stream"].is_null() {
                object["value"].clone()
            } else {
                object["stream"]["dict"].clone()
            }
        };
        let trailer = &objects["trailer"]["value"];
        let id = trailer["/ID"].as_array().expect("a file id");
        assert_eq!(id.len(), 2);
        let root = at(&trailer["/Root"]);
        let intent = &root["/OutputIntents"][0];
        assert_eq!(intent["/S"], "/GTS_PDFX");
        assert_eq!(intent["/OutputConditionIdentifier"], "u:CGATS TR 006");
        assert_eq!(intent["/RegistryName"], "u:http://www.color.org");
        assert_eq!(at(&intent["/DestOutputProfile"])["/N"], 4);
        let info = at(&trailer["/Info"]);
        assert_eq!(info["/Trapped"], "/False");
        assert_eq!(info["/CreationDate"], "u:D:20261125000000Z");
        assert_eq!(info["/Title"], format!("u:{name}"));
        let info_said = run_text("pdfinfo", "poppler-utils", &[text(&file)]);
        assert!(
            info_said.contains("PDF subtype:     PDF/X-4") || info_said.contains("PDF/X-4"),
            "{info_said}"
        );
        let xmp = run_text("pdfinfo", "poppler-utils", &["-meta", text(&file)]);
        assert!(xmp.contains("<pdfxid:GTS_PDFXVersion>PDF/X-4</pdfxid:GTS_PDFXVersion>"), "{xmp}");
        assert!(xmp.contains("<pdf:Trapped>False</pdf:Trapped>"), "{xmp}");
    }
}

/// Sizes in points: as the job states them, else 7 x 9 in and 9 x 6 in, 18 x 24 in, 115 mm; 1/8 in of bleed.
#[test]
fn boxes_are_nested_and_of_the_sheets_sizes() {
    for name in JOBS {
        let file = pdf_file("boxes", name);
        let job = job(name);
        let points = |mm: print::Mm| mm.0 / 25.4 * 72.0;
        let (width, height) = match (job.size, job.sheet) {
            (Some(size), _) => (points(size.width), points(size.height)),
            (None, SheetKind::CartLid) => (504.0, 648.0),
            (None, SheetKind::PostcardMailer) => (648.0, 432.0),
            (None, SheetKind::EnclosureSign) => (1296.0, 1728.0),
            (None, SheetKind::RoundSticker) => (325.984, 325.984),
            (None, SheetKind::SelfMailer | SheetKind::Handout) => (612.0, 792.0),
        };
        let said = run_text("pdfinfo", "poppler-utils", &["-box", "-f", "1", "-l", "2", text(&file)]);
        let boxes = |what: &str| -> Vec<Vec<f64>> {
            said.lines()
                .filter(|line| line.contains(what))
                .map(|line| {
                    line.rsplit(':')
                        .next()
                        .expect("numbers")
                        .split_whitespace()
                        .map(|n| n.parse().expect(line))
                        .collect()
                })
                .collect()
        };
        let (media, bleed, trim) = (boxes("MediaBox"), boxes("BleedBox"), boxes("TrimBox"));
        assert_eq!(trim.len(), artifact(name).display_list.pages.len(), "{said}");
        for ((media, bleed), trim) in media.iter().zip(&bleed).zip(&trim) {
            // Poppler prints two places.
            let near = |have: f64, want: f64| (have - want).abs() < 0.011;
            assert!(near(trim[2] - trim[0], width) && near(trim[3] - trim[1], height), "{name}: {trim:?}");
            let bleeds = [trim[0] - bleed[0], trim[1] - bleed[1], bleed[2] - trim[2], bleed[3] - trim[3]];
            assert!(bleeds.iter().all(|&bleed| near(bleed, 9.0)), "{name}: {bleeds:?}");
            assert!(media[0] < bleed[0] && media[1] < bleed[1] && media[2] > bleed[2] && media[3] > bleed[3]);
        }
    }
}

#[test]
fn fonts_are_embedded_and_subset() {
    for name in JOBS {
        let file = pdf_file("fonts", name);
        let said = run_text("pdffonts", "poppler-utils", &[text(&file)]);
        let fonts: Vec<&str> = said.lines().skip(2).collect();
        assert!(!fonts.is_empty());
        for font in fonts {
            let columns: Vec<&str> = font.split_whitespace().collect();
            let flags = &columns[columns.len() - 5..columns.len() - 2];
            assert_eq!(flags, ["yes", "yes", "yes"], "{name}: embedded, subset, mapped to Unicode: {font}");
            assert_eq!(font.find('+'), Some(6), "{font}");
        }
    }
}

/// Everything written from left to right comes back exactly as it was handed over: Latin, Cyrillic, Devanagari with
/// its reordered vowels, Chinese and Korean from outlines of the other kind.
#[test]
fn text_from_left_to_right_is_extracted_exactly() {
    for name in JOBS {
        let file = pdf_file("latin", name);
        let extracted = squeezed(&run_text("pdftotext", "poppler-utils", &["-raw", text(&file), "-"]));
        let job = job(name);
        for lang in ["en", "es", "vi", "ru", "hi", "zh-Hans", "ko"] {
            if job.languages.iter().any(|block| block.lang == lang) {
                for source in sources(&job, lang) {
                    assert!(
                        extracted.contains(&squeezed(&source)),
                        "{name}, {lang}: “{source}” is not in {extracted}"
                    );
                }
            }
        }
        let small = [&job.jurisdiction, &job.edition, &job.print_notice];
        let small = if job.sheet == SheetKind::RoundSticker { &[][..] } else { &small[..] };
        let latin = small.iter().copied().chain([&job.short_url]).filter(|text| text.is_ascii());
        for source in latin {
            assert!(extracted.contains(&squeezed(source)), "{name}: “{source}”");
        }
    }
}

/// A sheet in one left-to-right language reads back as its display list, line for line and nothing else.
#[test]
fn nothing_else_is_extracted() {
    for name in ["lid-en", "lid-en-es", "mailer-es"] {
        let file = pdf_file("order", name);
        let extracted = squeezed(&run_text("pdftotext", "poppler-utils", &["-raw", text(&file), "-"]));
        let drawn: String = artifact(name)
            .display_list
            .pages
            .iter()
            .flat_map(|page| &page.items)
            .filter_map(|item| match item {
                Item::Text(line) => Some(squeezed(&line.text)),
                _ => None,
            })
            .collect();
        assert_eq!(extracted, drawn, "{name}");
    }
}

/// Arabic is drawn in visual order (see `pdf.rs`): poppler gives every word right, and whole lines in reading order when it
/// keeps the layout.
#[test]
fn arabic_words_are_extracted() {
    for name in JOBS {
        let job = job(name);
        if !job.languages.iter().any(|block| block.lang == "ar") {
            continue;
        }
        let file = pdf_file("arabic", name);
        let extracted = run_text("pdftotext", "poppler-utils", &["-raw", text(&file), "-"]);
        let all = squeezed(&run_text("pdftotext", "poppler-utils", &["-layout", text(&file), "-"]));
        let words: Vec<String> = extracted.split_whitespace().map(squeezed).collect();
        for source in sources(&job, "ar") {
            for word in source.split_whitespace() {
                let letters = word.trim_matches(|c: char| !c.is_alphanumeric());
                // Poppler breaks a word at a vowel mark.
                if letters.contains(|c| matches!(c, '\u{64B}'..='\u{652}')) {
                    continue;
                }
                assert!(
                    words.iter().any(|found| found.contains(letters)),
                    "{name}: “{letters}” of “{source}”"
                );
            }
        }
        let mut lines = 0;
        for item in artifact(name).display_list.pages.iter().flat_map(|page| &page.items) {
            let Item::Text(line) = item else { continue };
            // Poppler breaks words at vowel marks, and lays lines that stand on their heads out from their end.
            let plain = |c: char| (c.is_alphabetic() && !matches!(c, '\u{64B}'..='\u{652}')) || c == ' ';
            if line.lang == "ar" && !line.turned && line.text.chars().all(plain) {
                assert!(all.contains(&squeezed(&line.text)), "{name}: the line “{}”", line.text);
                lines += 1;
            }
        }
        let least = if job.sheet == SheetKind::RoundSticker { 0 } else { 5 };
        assert!(lines >= least, "{name}: only {lines} lines were looked for");
    }
}

/// The page as a printer of 150 dots an inch shows it.
#[test]
fn the_code_is_read_from_the_page() {
    for name in JOBS {
        let file = pdf_file("code", name);
        let image = folder("code").join(name);
        run("pdftoppm", "poppler-utils", &["-r", "150", "-gray", "-png", text(&file), text(&image)]);
        let job = job(name);
        let mut found = 0;
        for (index, drawn) in artifact(name).display_list.pages.iter().enumerate() {
            let codes = drawn
                .items
                .iter()
                .filter(|item| matches!(item, Item::Fill(fill) if fill.what == "qr"))
                .count();
            if codes == 0 {
                continue;
            }
            let image = format!("{}-{}.png", text(&image), index + 1);
            let read =
                run_text("zbarimg", "zbar-tools", &["-q", "--raw", "-Sdisable", "-Sqrcode.enable", &image]);
            assert_eq!(read.lines().count(), codes, "{name}, page {index}");
            assert!(read.lines().all(|line| line == job.qr_url), "{name}, page {index}: {read}");
            found += codes;
        }
        assert!(found > 0, "{name} has no code");
    }
}

/// A page's four plates as Ghostscript separates them: width, and C, M, Y, K bytes per dot.
fn plates(name: &str, page: usize, dpi: u32) -> (usize, Vec<u8>) {
    let file = pdf_file("ink", name);
    let out = folder("ink").join(format!("{name}-{page}.pam"));
    let arguments = [
        "-q",
        "-dNOPAUSE",
        "-dBATCH",
        "-dSAFER",
        "-sDEVICE=pamcmyk32",
        "-dOverprint=/enable",
        &format!("-r{dpi}"),
        &format!("-dFirstPage={page}"),
        &format!("-dLastPage={page}"),
        &format!("-sOutputFile={}", text(&out)),
        text(&file),
    ];
    run("gs", "ghostscript", &arguments);
    let bytes = std::fs::read(&out).expect("the plates");
    let end = b"ENDHDR\n";
    let start = bytes.windows(end.len()).position(|w| w == end).expect("a PAM header") + end.len();
    let header = String::from_utf8_lossy(&bytes[..start]).into_owned();
    let width = header
        .lines()
        .find_map(|line| line.strip_prefix("WIDTH "))
        .expect("a width")
        .trim()
        .parse()
        .expect("a number");
    (width, bytes[start..].to_vec())
}

#[test]
fn ink_stays_under_the_limit() {
    for name in JOBS {
        for page in 1..=artifact(name).display_list.pages.len() {
            let (width, dots) = plates(name, page, 72);
            // Inside the bleed, a dot away from where the marks begin: the marks outside it are on every plate, on paper that is cut off.
            let margin = {
                let geometry = artifact(name).display_list.pages[page - 1].geometry;
                ((geometry.bleed_box().x - geometry.media_box().x).0).ceil() as usize + 1
            };
            let height = dots.len() / 4 / width;
            let most = (margin..height - margin)
                .flat_map(|y| (margin..width - margin).map(move |x| (y * width + x) * 4))
                .map(|at| dots[at..at + 4].iter().map(|&part| u32::from(part)).sum::<u32>())
                .max()
                .expect("dots");
            let marks = dots.chunks_exact(4).filter(|dot| **dot == [255; 4]).count();
            assert!(marks > 50, "{name}, page {page}: the crop marks are on every plate");
            let percent = f64::from(most) * 100.0 / 255.0;
            assert!(percent <= f64::from(INK_LIMIT), "{name}, page {page}: {percent:.0} %");
            assert!(percent >= 100.0, "{name}, page {page}: nothing dark is printed");
        }
    }
}

/// Black words overprint the tint below them (its other plates run on through the letters), and white words
/// knock out of the band (their dots have no ink at all).
#[test]
fn black_text_overprints_and_white_text_knocks_out() {
    let dpi = 144;
    let (width, dots) = plates("lid-en", 1, dpi);
    let list = &artifact("lid-en").display_list;
    let page = &list.pages[0];
    let media = page.geometry.media_box();
    let scale = f64::from(dpi) / 72.0;
    let within = |rect: print::Rect| {
        let (x0, x1) =
            (((rect.x - media.x).0 * scale) as usize, ((rect.right() - media.x).0 * scale) as usize);
        let (y0, y1) =
            (((rect.y - media.y).0 * scale) as usize, ((rect.bottom() - media.y).0 * scale) as usize);
        (y0..y1)
            .flat_map(move |y| (x0..x1).map(move |x| (y * width + x) * 4))
            .map(|at| [dots[at], dots[at + 1], dots[at + 2], dots[at + 3]])
            .collect::<Vec<_>>()
    };
    let line = |role: Role| {
        page.items
            .iter()
            .find_map(|item| match item {
                Item::Text(line) if line.role == role => Some(line.rect),
                _ => None,
            })
            .expect("a line")
    };
    let body = within(line(Role::Body));
    assert!(body.iter().any(|dot| dot[3] > 200), "black letters");
    assert!(body.iter().all(|dot| dot[0] > 10), "the tint's cyan runs on below them");
    let title = within(line(Role::Title));
    assert!(title.contains(&[0; 4]), "white letters");
    assert!(title.iter().any(|dot| dot[0] > 200), "on the band");
}
