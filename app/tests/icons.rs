//! The sheet of symbols that screens draw from holds the same outlines that go to press.

use std::fmt::Write as _;
use std::path::Path;

use print::PICTOGRAMS;

/// Symbols that no sheet of paper needs: id, viewBox, content.
const OWN: &[(&str, &str, &str)] = &[
    (
        "lidleaf",
        "0 0 64 64",
        r##"<path fill="#d9ee4e" d="M6 46C6 22 24 8 58 6c1 34-12 52-38 52-6 0-10-3-14-12Z"/><path d="M9 58C20 42 32 31 47 20" fill="none" stroke="#10251d" stroke-width="5" stroke-linecap="round"/>"##,
    ),
    (
        "item",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M5 34C5 16 18 6 43 5C44 30 34 43 16 43C11 43 8 40 5 34ZM9 42L12 44.5C20 33 26 27 34 19.5L32.4 17.8C23 25 16 32 9 42Z"/>"#,
    ),
    (
        "verdict-unlisted",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M24 1.5L46.5 24L24 46.5L1.5 24ZM16.6 19.6L21.4 19.6C21.4 17.2 22.4 15.9 24.2 15.9C25.9 15.9 26.9 17 26.9 18.6C26.9 22.3 21.6 22.6 21.6 28.6L26.2 28.6C26.2 24.4 31.8 23.8 31.8 18.4C31.8 14.4 28.8 11.6 24.3 11.6C19.6 11.6 16.6 14.6 16.6 19.6ZM21.5 31.2L26.4 31.2L26.4 36.1L21.5 36.1Z"/>"#,
    ),
    (
        "verdict-undecided",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M4 4L44 4L44 44L4 44ZM9 9L9 39L39 39L39 9ZM14 21.5L34 21.5L34 26.5L14 26.5Z"/>"#,
    ),
];

fn sheet() -> String {
    let mut svg = String::from("<svg xmlns=\"http://www.w3.org/2000/svg\">\n");
    for (id, view, content) in OWN {
        let _ = writeln!(svg, "<symbol id=\"{id}\" viewBox=\"{view}\">{content}</symbol>");
    }
    for p in PICTOGRAMS {
        let _ = writeln!(
            svg,
            "<symbol id=\"{}\" viewBox=\"0 0 48 48\"><path fill-rule=\"evenodd\" d=\"{}\"/></symbol>",
            p.id, p.svg_path
        );
    }
    svg.push_str("</svg>\n");
    svg
}

/// Run with `LIDLEAF_WRITE_ICONS=1` after a drawing in `print` has changed.
#[test]
fn screens_and_sheets_draw_the_same_pictograms() {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("static/icons.svg");
    if std::env::var_os("LIDLEAF_WRITE_ICONS").is_some() {
        std::fs::write(&file, sheet()).unwrap();
    }
    let written = std::fs::read_to_string(&file).unwrap();
    assert!(written == sheet(), "icons.svg is not what print draws: run this test with LIDLEAF_WRITE_ICONS=1");
}

#[test]
fn every_item_of_the_catalog_has_a_symbol() {
    let catalog = guide_data::Catalog::standard().unwrap();
    let sheet = sheet();
    for item in &catalog.items {
        let id = if item.pictogram.is_empty() { "item" } else { item.pictogram.as_str() };
        assert!(sheet.contains(&format!("<symbol id=\"{id}\"")), "{}: no pictogram \"{id}\"", item.id);
    }
}
