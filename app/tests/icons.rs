//! The sheet of symbols that screens draw from holds the same outlines that go to press.

use std::fmt::Write as _;
use std::path::Path;

use print::PICTOGRAMS;

/// Symbols that no sheet of paper has (yet): id, viewBox, content. One that print draws as well is
/// print's.
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
    (
        "other",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M5 34C5 16 18 6 43 5C44 30 34 43 16 43C11 43 8 40 5 34ZM9 42L12 44.5C20 33 26 27 34 19.5L32.4 17.8C23 25 16 32 9 42Z"/>"#,
    ),
    (
        "appliance",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M9 3H39V45H9ZM12 6V12H36V6ZM24 16A11 11 0 1 0 24 38A11 11 0 1 0 24 16ZM24 20A7 7 0 1 1 24 34A7 7 0 1 1 24 20Z"/>"#,
    ),
    (
        "furniture",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M12 6H36A4 4 0 0 1 40 10V20A5 5 0 0 0 35 25V28H13V25A5 5 0 0 0 8 20V10A4 4 0 0 1 12 6ZM3 25A4 4 0 0 1 11 25V31H37V25A4 4 0 0 1 45 25V39H41V44H37V39H11V44H7V39H3Z"/>"#,
    ),
    (
        "rubble",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M3 10H22V20H3ZM26 10H45V20H26ZM3 36H22V46H3ZM26 36H45V46H26ZM12 23H36V33H12ZM3 23H9V33H3ZM39 23H45V33H39Z"/>"#,
    ),
    (
        "pouch",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M12 4H36V10H12ZM12 12H36L41 40A4 4 0 0 1 37 44H11A4 4 0 0 1 7 40ZM24 20A8 8 0 1 0 24 36A8 8 0 1 0 24 20Z"/>"#,
    ),
    (
        "cutlery",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M10 4H12V16H14V4H16V16H18V4H20V19A5 5 0 0 1 17 23.6V44H13V23.6A5 5 0 0 1 10 19ZM30 4C36 6 38 14 38 26H34V44H30Z"/>"#,
    ),
    (
        "toy",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M4 26L10 24L15 14H32L38 24L44 26V36H40.5A5.5 5.5 0 0 0 29.5 36H18.5A5.5 5.5 0 0 0 7.5 36H4ZM17.5 17L14 24H23V17ZM26 17V24H33.5L30 17ZM13 32.5A4 4 0 1 0 13 40.5A4 4 0 1 0 13 32.5ZM35 32.5A4 4 0 1 0 35 40.5A4 4 0 1 0 35 32.5Z"/>"#,
    ),
    (
        "bucket",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M6 12C6 4 42 4 42 12V13H6ZM8 15H40L36 44H12ZM9.5 11H38.5C36 7.5 12 7.5 9.5 11Z"/>"#,
    ),
    ("tool", "0 0 48 48", r#"<path fill-rule="evenodd" d="M6 8H30C36 8 40 11 42 16H32V20H27V44H19V20H6Z"/>"#),
    (
        "brush",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M20 3H28V20H34V28H14V20H20ZM14 30H34V45H30V36H28V45H26V36H22V45H20V36H18V45H14Z"/>"#,
    ),
    (
        "book",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M6 6H22A4 4 0 0 1 24 8A4 4 0 0 1 26 6H42V40H26A3 3 0 0 0 24 43A3 3 0 0 0 22 40H6ZM10 12V15H20V12ZM10 19V22H20V19ZM28 12V15H38V12ZM28 19V22H38V19Z"/>"#,
    ),
    (
        "flame",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M25 2C28 12 40 18 40 31A16 15 0 0 1 8 31C8 22 14 19 15 12C19 14 20 18 20 21C24 17 26 10 25 2ZM24 42A7 7 0 0 0 31 35C31 30 26 28 25 24C22 29 17 30 17 35A7 7 0 0 0 24 42Z"/>"#,
    ),
    (
        "timber",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M4 14L36 6L44 12V20L12 30L4 24ZM4 28L12 34L44 24V32L12 42L4 36ZM8 18V22L12 25V21Z"/>"#,
    ),
    (
        "mirror",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M24 2A16 18 0 1 0 24 38A16 18 0 1 0 24 2ZM24 6A12 14 0 1 1 24 34A12 14 0 1 1 24 6ZM22 40H26V46H22ZM16 22L28 10L30 12L18 24ZM20 28L32 16L33 19L23 29Z"/>"#,
    ),
    ("plant-pot", "0 0 48 48", r#"<path fill-rule="evenodd" d="M8 8H40V16H8ZM11 18H37L33 45H15Z"/>"#),
    (
        "tube",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M14 3H34L38 36H10ZM18 38H30V45H18ZM17 8V12H31V8Z"/>"#,
    ),
    (
        "diaper",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M4 12H44V22C34 22 30 28 30 38H18C18 28 14 22 4 22ZM8 15V18H14V15ZM34 15V18H40V15Z"/>"#,
    ),
    (
        "pan",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M4 16H30V20A13 13 0 0 1 17 34A13 13 0 0 1 4 20ZM32 17H46V22H32Z"/>"#,
    ),
    (
        "pod",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M10 8H38V13H10ZM12 15H36L32 40H16ZM18 20L19.5 35H21.5L20.5 20Z"/>"#,
    ),
    (
        "shoe",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M4 12L14 12C16 18 22 22 30 24C40 26 45 28 45 36H4ZM4 38H45V43H4ZM18 23L21 20L24 22L21 25.5ZM25 26L27.5 23L31 24L28.5 27Z"/>"#,
    ),
    (
        "candle",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M24 2C28 8 29 10 29 13A5 5 0 0 1 19 13C19 10 20 8 24 2ZM16 20H32V45H16ZM20 24V32H23V24Z"/>"#,
    ),
    (
        "tyre",
        "0 0 48 48",
        r#"<path fill-rule="evenodd" d="M24 3A21 21 0 1 0 24 45A21 21 0 1 0 24 3ZM24 12A12 12 0 1 1 24 36A12 12 0 1 1 24 12ZM24 17A7 7 0 1 0 24 31A7 7 0 1 0 24 17Z"/>"#,
    ),
];

fn sheet() -> String {
    let mut svg = String::from("<svg xmlns=\"http://www.w3.org/2000/svg\">\n");
    for (id, view, content) in OWN.iter().filter(|(id, ..)| print::pictogram(id).is_none()) {
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
    assert!(
        written == sheet(),
        "icons.svg is not what print draws: run this test with LIDLEAF_WRITE_ICONS=1"
    );
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
