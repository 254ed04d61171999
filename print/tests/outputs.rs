//! Press file, web file and preview come from one display list; the preview shows where findings are.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

mod common;

use common::{JOBS, artifact, folder, fonts, job, run, run_text, text};
use print::{
    Output, PRESS_PROFILE, Press, PreviewArea, Severity, TEXT_PLACES, make, svg, svg_with_findings,
    text_place,
};

#[test]
fn every_file_is_written_from_the_same_list() {
    for name in JOBS {
        let web = make(&job(name), &fonts(), Output::Web).expect("a sheet");
        assert!(web.display_list == artifact(name).display_list, "{name}: other line breaks");
        assert!(web.pdf != artifact(name).pdf && web.pdf.starts_with(b"%PDF-1.7"));
        let again = make(&job(name), &fonts(), Output::Web).expect("a sheet");
        assert!(web.pdf == again.pdf, "{name}: other bytes");
        // What is read at the table says several times as much as a lid.
        let most = if name.starts_with("handout") { 180_000 } else { 120_000 };
        assert!(web.pdf.len() <= most, "{name}: {} bytes", web.pdf.len());
        let file = folder("web").join(format!("{name}.pdf"));
        std::fs::write(&file, &web.pdf).expect("the file is written");
        let said = run_text("qpdf", "qpdf", &["--check", text(&file)]);
        assert!(said.contains("No syntax or stream encoding errors found"), "{name}: {said}");
        let told = run_text("pdfinfo", "poppler-utils", &[text(&file)]);
        assert!(told.contains("Tagged:          yes"), "{name}: {told}");
        // A reader that finds a fault in the tags says so, and goes on.
        let tags = run("pdfinfo", "poppler-utils", &["-struct", text(&file)]);
        assert!(String::from_utf8_lossy(&tags).contains("Document"), "{name}");
    }
}

/// On the screen the web file shows the colours of the display list: a dot of the band, as Ghostscript draws it
/// through the file's own profile.
#[test]
fn colours_on_the_screen_are_those_of_the_list() {
    let web = make(&job("lid-en"), &fonts(), Output::Web).expect("a sheet");
    let file = folder("colour").join("lid-en.pdf");
    std::fs::write(&file, &web.pdf).expect("the file is written");
    let out = folder("colour").join("lid-en.ppm");
    let to = format!("-sOutputFile={}", text(&out));
    let arguments = ["-q", "-dNOPAUSE", "-dBATCH", "-dSAFER", "-sDEVICE=ppmraw", "-r72", &to, text(&file)];
    run("gs", "ghostscript", &arguments);
    let bytes = std::fs::read(&out).expect("a picture");
    let dots = &bytes[bytes.len() - 504 * 648 * 3..];
    let at = (5 * 504 + 250) * 3;
    let band = print::Ink::BAND.screen;
    for (drawn, meant) in dots[at..at + 3].iter().zip(band) {
        assert!(drawn.abs_diff(meant) <= 2, "{:?} for {band:?}", &dots[at..at + 3]);
    }
}

#[test]
fn findings_are_boxes_on_the_preview() {
    let mut job = job("mailer-es");
    job.indicia.clear();
    let other = job.languages[0].sections[1].lines[0].text.clone();
    job.languages[0].sections[0].lines[0].contradicts = Some(other);
    let made = make(&job, &fonts(), PRESS_PROFILE).expect("a sheet");
    let placed = |page: usize| {
        let here = |item: &&print::PreflightItem| item.place.is_some_and(|place| place.page == page);
        made.preflight.iter().filter(here).filter(|item| item.severity == Severity::Warning).count()
    };
    assert!(placed(0) >= 1 && placed(1) >= 1, "{:?}", made.preflight);
    for page in 0..2 {
        let drawing =
            svg_with_findings(&made.display_list, &fonts(), page, PreviewArea::Trim, &made.preflight)
                .expect("a page");
        // Two strokes a box: one in the finding's colour, one beside it that shows on any ink.
        assert_eq!(drawing.matches(r#"class="finding""#).count(), placed(page) * 2, "page {page}");
        let bare = svg(&made.display_list, &fonts(), page, PreviewArea::Trim).expect("a page");
        assert!(drawing.starts_with(bare.trim_end().trim_end_matches("</svg>")), "nothing else is changed");
        assert!(drawing.trim_end().ends_with("</svg>") && !drawing.contains("<text"));
    }
}

/// A limit is a number the shop names: a sheet that one paper takes is too much for another.
#[test]
fn the_shops_limit_of_ink_is_kept() {
    let with = |ink_limit: u16| make(&job("lid-en"), &fonts(), Press { profile: PRESS_PROFILE, ink_limit });
    assert!(with(300).is_ok() && with(250).is_ok());
    let refused = with(200).expect_err("too much").items;
    assert!(refused.iter().all(|item| item.code == "too-much-ink" && item.args["limit"] == "200"));
    for limit in [0, 99, 401] {
        assert_eq!(with(limit).expect_err("no limit").items[0].code, "ink-limit-invalid");
    }
}

#[test]
fn every_line_names_a_text_of_the_job() {
    for name in JOBS {
        let mut kinds = std::collections::BTreeSet::new();
        for item in artifact(name).display_list.pages.iter().flat_map(|page| &page.items) {
            let print::Item::Text(line) = item else { continue };
            let (kind, parts) = text_place(&line.place).unwrap_or_else(|| panic!("{name}: “{}”", line.place));
            assert!(parts.iter().all(|(_, part)| !part.is_empty()), "{name}: {}", line.place);
            kinds.insert(kind);
        }
        // A round label has its one line, an address and the slug, and no more.
        let least = if name.starts_with("sticker") { 3 } else { 8 };
        assert!(kinds.len() >= least, "{name}: {kinds:?}");
        assert!(kinds.iter().all(|kind| TEXT_PLACES.iter().any(|(known, _)| known == kind)));
    }
}
