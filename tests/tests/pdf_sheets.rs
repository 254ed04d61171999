//! The demo's sheets, for the press and for the web, made by the command line and judged from outside:
//! structure, fonts, boxes, text, QR code, ink and postal zones, each by a program that knows nothing of
//! ours. The files' keys and tags are read by pikepdf and looked at in `pdf_keys.rs`.
//!
//! Every judge sees every sheet of [`lidleaf_tests::sheets`], in both files where the question makes sense for both.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

use lidleaf_tests::sheets::{Asked, HANDOUT, LID, MAILER, POSTCARD, SIGN, Use, asked};
use lidleaf_tests::{Picture, Sheet, Tool, demo, judge, sheet, sheet_again};

/// Every sheet's file for a use.
fn of(output: Use) -> Vec<Asked<'static>> {
    asked().into_iter().filter(|asked| asked.output == output).collect()
}

/// "At most 120 KB Latin, 250 KB with Chinese", the profile included: what goes through a print shop's form and a
/// phone's connection without a thought. A judgement, no source. Korean has as many letters as Chinese has; Arabic and
/// Hindi state every text a second time, in the structure.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn files_are_small() {
    judge(&asked(), |asked, made| {
        let large = asked.languages.iter().any(|tag| ["zh-Hans", "ko", "ar", "hi"].contains(tag));
        // A handout says several times what a lid does.
        let most = if large || asked.form.kind == HANDOUT.kind { 250_000 } else { 120_000 };
        let bytes = made.bytes().len();
        assert!(bytes <= most, "{bytes} bytes of at most {most}");
    });
}

#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn qpdf_finds_the_structure_sound() {
    judge(&asked(), |_, made| {
        let output = Tool::QPDF.output(&[&"--check", &made.file()]);
        let said =
            format!("{}{}", String::from_utf8_lossy(&output.stdout), String::from_utf8_lossy(&output.stderr));
        // Exit code 3 is "warnings": not good enough for a print shop.
        assert!(output.status.success(), "{said}");
        assert!(said.contains("No syntax or stream encoding errors found"), "{said}");
    });
}

#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn every_font_is_embedded_and_subset_and_mapped_to_unicode() {
    judge(&asked(), |_, made| {
        let listed = Tool::PDFFONTS.text(&[&made.file()]);
        let rows: Vec<&str> = listed.lines().skip(2).collect();
        assert!(!rows.is_empty(), "no fonts:\n{listed}");
        for row in rows {
            // ... emb sub uni object generation
            let words: Vec<&str> = row.split_whitespace().rev().collect();
            assert_eq!(&words[2..5], ["yes", "yes", "yes"], "{listed}");
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

/// A hundredth of a point is the last digit that pdfinfo tells, once at either end.
const TOLD: f64 = 0.011;

fn is_finished(asked: &Asked<'_>, trim: Rectangle) -> bool {
    let (width, height) = asked.form.finished;
    (trim[2] - trim[0] - width).abs() < TOLD && (trim[3] - trim[1] - height).abs() < TOLD
}

/// ISO 15930-7 (from memory): TrimBox inside BleedBox inside MediaBox. Bleed 1/8 in (common practice, no source), at 72
/// points an inch.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn trim_is_the_finished_size_exactly_inside_bleed_inside_media() {
    judge(&of(Use::Press), |asked, made| {
        for page in 1..=asked.pages() {
            let of = boxes(made, page);
            let (media, bleed, trim) = (of("MediaBox"), of("BleedBox"), of("TrimBox"));
            assert!(is_finished(asked, trim), "page {page}: {trim:?}");
            for (inner, outer, by) in [(trim, bleed, 9.0), (bleed, media, 0.0)] {
                let margins =
                    [inner[0] - outer[0], inner[1] - outer[1], outer[2] - inner[2], outer[3] - inner[3]];
                assert!(margins.iter().all(|m| *m >= by - TOLD), "page {page}: {margins:?}");
            }
        }
        let told = Tool::PDFINFO.text(&[&made.file()]);
        let count = told.lines().find_map(|line| line.strip_prefix("Pages:")).unwrap().trim().to_owned();
        assert_eq!(count, asked.pages().to_string());
    });
}

/// A page for the screen is the finished sheet and nothing else.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn a_page_for_the_web_is_the_finished_sheet() {
    judge(&of(Use::Web), |asked, made| {
        for page in 1..=asked.pages() {
            let of = boxes(made, page);
            for name in ["MediaBox", "CropBox", "TrimBox"] {
                let found = of(name);
                assert!(found[..2] == [0.0, 0.0] && is_finished(asked, found), "{name} {found:?}");
            }
        }
        let text = Tool::PDFTOTEXT.text(&[&"-raw", &made.file(), &"-"]);
        assert!(!text.contains("2026-12-01"), "the slug is on it:\n{text}");
    });
}

/// A text as it is compared with what an extractor read.
///
/// Most languages: every letter and every space, wherever a line breaks. Chinese and Korean lines break where no space is,
/// extractors see a gap where Chinese has a digit beside a character, and where a mark of Hindi stands above its letter
/// they see a line of its own: of these three every character counts, in its order, but no space. What joins letters and
/// is not seen does not count anywhere.
fn comparable(text: &str, lang: &str) -> String {
    let unseen = ['\u{200c}', '\u{200d}', '\u{2068}', '\u{2069}'];
    let seen: String = text.chars().filter(|c| !unseen.contains(c)).collect();
    let between = if matches!(lang, "zh-Hans" | "ko" | "hi") { "" } else { " " };
    seen.split_whitespace().collect::<Vec<_>>().join(between)
}

/// Every line of a language that is written from left to right, in Latin, Cyrillic, Chinese, Korean or Devanagari letters,
/// comes back from two unrelated extractors, poppler's and MuPDF's: it can be copied, and found by a search.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn poppler_and_mupdf_read_every_line_from_left_to_right_back() {
    judge(&asked(), |_, made| {
        // In the order in which the page draws it: a wrapped line stays together.
        let poppler = Tool::PDFTOTEXT.text(&[&"-raw", &made.file(), &"-"]);
        let mupdf = Tool::MUTOOL.text(&[&"draw", &"-F", &"txt", &made.file()]);
        for said in made.said().iter().filter(|said| said.lang != "ar") {
            for (reader, text) in [("pdftotext", &poppler), ("mutool", &mupdf)] {
                let text = comparable(text, &said.lang);
                for line in &said.texts {
                    assert!(
                        text.contains(&comparable(line, &said.lang)),
                        "{reader} does not find the {} line \"{line}\" in:\n{text}",
                        said.lang
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
/// word that carries a vowel mark comes apart there at the mark, so letters alone are compared. MuPDF hands letters out
/// as they are drawn, from left to right, and is not served.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn poppler_reads_every_arabic_word_back() {
    judge(&speaking(&asked(), "ar"), |_, made| {
        let text = Tool::PDFTOTEXT.text(&[&made.file(), &"-"]);
        let all = letters(&text);
        let words: Vec<String> = text.split_whitespace().map(letters).collect();
        for said in made.said().iter().filter(|said| said.lang == "ar") {
            for word in said.texts.iter().flat_map(|line| line.split_whitespace()) {
                let marked = word.chars().any(|c| ('\u{64b}'..='\u{65f}').contains(&c));
                let wanted = letters(word);
                let found = if marked {
                    all.contains(&wanted)
                } else {
                    words.iter().any(|word| word.contains(&wanted))
                };
                assert!(wanted.is_empty() || found, "pdftotext does not find \"{word}\" in:\n{text}");
            }
        }
    });
}

/// Those of some sheets that speak a language.
fn speaking<'a>(all: &[Asked<'a>], lang: &str) -> Vec<Asked<'a>> {
    all.iter().filter(|asked| asked.languages.contains(&lang)).copied().collect()
}

/// What rqrr reads in a picture.
fn decoded(drawn: &Picture) -> Vec<String> {
    let (width, height) = drawn.size();
    let mut image = rqrr::PreparedImage::prepare_from_greyscale(width, height, |x, y| drawn.grey(x, y));
    let grids = image.detect_grids();
    grids.iter().filter_map(|grid| grid.decode().ok()).map(|(_, text)| text).collect()
}

/// Two decoders that share nothing read the guide's address off the drawn page, as often as the page has a code and no
/// more often. zbar gets 200 dots an inch, 4.7 dots a module, and half of that of a sign, whose modules are more than twice
/// as large. rqrr takes one sample a module where zbar looks along lines, and misses one code of thirty at any one
/// resolution; a phone looks at many pictures of a code, so it gets up to three.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn two_decoders_read_the_guides_address_off_the_drawn_page() {
    judge(&asked(), |asked, made| {
        let expected = made.job()["qr_url"].as_str().unwrap();
        assert!(expected.starts_with(&demo().guide_url), "{expected}");
        let per_inch = if asked.form.kind == SIGN.kind { 100 } else { 200 };
        for (page, &codes) in (1..).zip(asked.form.codes) {
            let drawn = Picture::of(made.file(), page, per_inch);
            let mut read = decoded(&drawn);
            for more in [5, 6] {
                if read.len() < codes {
                    read = decoded(&Picture::of(made.file(), page, per_inch / 4 * more));
                }
            }
            assert_eq!(read, vec![expected; codes], "rqrr, page {page}");
            let picture = made.beside("page.pgm");
            drawn.write(&picture);
            // Where there is no code it ends with an error, as it should.
            let output =
                Tool::ZBARIMG.output(&[&"--quiet", &"--raw", &"-Sdisable", &"-Sqrcode.enable", &picture]);
            let read = String::from_utf8_lossy(&output.stdout);
            assert_eq!(read.lines().collect::<Vec<_>>(), vec![expected; codes], "zbar, page {page}");
        }
    });
}

/// Words alone, every drawn area left out: black ones go on the black plate only, white ones on none, and no plate
/// but the four is made.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn words_are_on_the_black_plate_alone() {
    judge(&of(Use::Press), |asked, made| {
        let told = Tool::GHOSTSCRIPT.text(&[
            &"-q",
            &"-dNOPAUSE",
            &"-dBATCH",
            &"-dSAFER",
            &"-dFILTERVECTOR",
            &"-dFILTERIMAGE",
            &"-r36",
            &"-sDEVICE=inkcov",
            &"-sOutputFile=-",
            &made.file(),
        ]);
        let rows: Vec<&str> = told.lines().filter(|line| line.contains("CMYK OK")).collect();
        assert_eq!(rows.len(), asked.form.codes.len(), "{told}");
        for row in rows {
            let ink: Vec<f64> = row.split_whitespace().take(4).map(|n| n.parse().unwrap()).collect();
            assert_eq!(ink[..3], [0.0; 3], "{row}");
            assert!(ink[3] > 0.001, "no words at all: {row}");
        }
        let plates = made.beside("plate-%d.tif");
        let out = format!("-sOutputFile={}", plates.display());
        Tool::GHOSTSCRIPT.text(&[
            &"-q",
            &"-dNOPAUSE",
            &"-dBATCH",
            &"-dSAFER",
            &"-sDEVICE=tiffsep",
            &"-r18",
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
        assert_eq!(names, expected);
    });
}

/// At most 300 % on coated sheet-fed paper (common practice), measured in what
/// Ghostscript would put on the plates: the sum of four inks at every pixel, not an average.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn no_spot_carries_more_ink_than_the_paper_takes() {
    judge(&of(Use::Press), |asked, made| {
        // A sign's areas are as much larger as it is itself.
        let per_inch: u32 = if asked.form.kind == SIGN.kind { 36 } else { 72 };
        let dots = f64::from(per_inch) / 72.0;
        let resolution = format!("-r{per_inch}");
        let plates = made.beside("plates-%d.pam");
        let out = format!("-sOutputFile={}", plates.display());
        Tool::GHOSTSCRIPT.text(&[
            &"-q",
            &"-dNOPAUSE",
            &"-dBATCH",
            &"-dSAFER",
            &"-sDEVICE=pamcmyk32",
            &resolution,
            &out,
            &made.file(),
        ]);
        for page in 1..=asked.pages() {
            let bytes = std::fs::read(made.beside(&format!("plates-{page}.pam"))).unwrap();
            let end = b"ENDHDR\n";
            let at = bytes.windows(end.len()).position(|w| w == end).expect("a PAM header") + end.len();
            let header = std::str::from_utf8(&bytes[..at]).unwrap();
            let size = |name: &str| -> usize {
                let line = header.lines().find_map(|line| line.strip_prefix(name));
                line.unwrap_or_else(|| panic!("no {name} in {header}")).trim().parse().unwrap()
            };
            let (wide, high) = (size("WIDTH"), size("HEIGHT"));
            // Inside the bleed: the marks beyond it are on every plate, on paper that is cut off.
            let of = boxes(made, page);
            let margin = ((of("BleedBox")[0] - of("MediaBox")[0]) * dots).ceil() as usize + 1;
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
            assert!(percent <= 300.0 + 0.2, "page {page}: {percent:.1} %");
            assert!(percent > 90.0, "page {page} is all but blank: {percent:.1} %");
        }
    });
}

/// DMM 202 and Publication 28: the lowest .625 in of the last 4.75 in belong to the barcode. Of a folded piece that is
/// the foot of the panel with the address, which is cut off by a fold: nothing is asked of what lies beyond.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn nothing_is_printed_where_the_post_sprays_its_barcode() {
    const PER_INCH: f64 = 150.0;
    let mut mailed = of(Use::Press);
    mailed.retain(|asked| [POSTCARD.kind, MAILER.kind].contains(&asked.form.kind));
    judge(&mailed, |asked, made| {
        let card = asked.form.kind == POSTCARD.kind;
        let page = if card { 2 } else { 1 };
        let of = boxes(made, page);
        let (media, trim) = (of("MediaBox"), of("TrimBox"));
        let height = trim[3] - trim[1];
        // Up to the cut and past it, because a cut may be off; crop marks begin where the bleed ends. A fold may be off
        // as well, but the line that says where it is stops a hair's breadth short of it.
        let (foot, beyond) = if card {
            (trim[1], 8.0)
        } else if asked.form.options.contains(&"thirds") {
            // The panel that folds in is a sixteenth of an inch shorter than the other two.
            ((height + 4.5) / 3.0 + trim[1], -2.0)
        } else {
            (height / 2.0 + trim[1], -2.0)
        };
        let drawn = Picture::of(made.file(), page, 150);
        let across = |points: f64| ((points - media[0]) / 72.0 * PER_INCH).round() as usize;
        let down = |points: f64| ((media[3] - points) / 72.0 * PER_INCH).round() as usize;
        let (left, top) = (across(trim[2] - 4.75 * 72.0), down(foot + 0.625 * 72.0));
        let (right, bottom) = (across(trim[2] + 8.0), down(foot - beyond));
        assert_eq!(drawn.darkest(left, top, right, bottom), 255);
        // The other side of the same test: the page does carry ink, and just above the zone may.
        let (width, height) = drawn.size();
        assert!(drawn.darkest(0, 0, width, height) < 64, "the page is blank");
    });
}

#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn preflight_of_the_demo_has_no_errors_and_the_same_job_makes_the_same_bytes() {
    judge(&asked(), |asked, made| {
        let errors: Vec<_> =
            made.preflight().into_iter().filter(|(_, severity)| severity == "error").collect();
        assert!(errors.is_empty(), "{errors:?}");
        assert!(made.bytes() == sheet_again(asked).bytes(), "it is not the same again");
    });
}

/// The README's pictures of the sheets, cut to their finished size.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn pictures_of_the_sheets() {
    const PER_INCH: f64 = 96.0;
    let Some(folder) = lidleaf_tests::screenshots() else { return };
    std::fs::create_dir_all(&folder).unwrap();
    for (form, page, name) in [(LID, 1, "lid"), (POSTCARD, 1, "postcard"), (POSTCARD, 2, "postcard-address")]
    {
        let made = sheet(&Asked { form, languages: &["en", "es", "ar"], output: Use::Press });
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
