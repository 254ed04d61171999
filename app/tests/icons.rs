//! The sheet of symbols that screens draw from holds the same outlines that go to press.

use std::fmt::Write as _;
use std::path::Path;

use print::PICTOGRAMS;

/// The program's own mark, in its colours.
const LOGO: &str = r##"<symbol id="lidleaf" viewBox="0 0 64 64"><path fill="#d9ee4e" d="M6 46C6 22 24 8 58 6c1 34-12 52-38 52-6 0-10-3-14-12Z"/><path d="M9 58C20 42 32 31 47 20" fill="none" stroke="#10251d" stroke-width="5" stroke-linecap="round"/></symbol>"##;

/// What an answer cannot do without: the marks of verdicts and the shapes of containers. Phones wait for these
/// and not for the pictures of things.
fn is_sign(id: &str) -> bool {
    id.starts_with("verdict-") || id.starts_with("place-")
}

/// Each outline bare: the pages' style fills it by the even-odd rule and every place that shows one states the
/// square, so that neither is sent a hundred times.
fn drawn(first: &str, wanted: impl Fn(&str) -> bool) -> String {
    let mut svg = format!("<svg xmlns=\"http://www.w3.org/2000/svg\">\n{first}");
    for p in PICTOGRAMS.iter().filter(|p| wanted(p.id)) {
        let _ = writeln!(svg, "<path id=\"{}\" d=\"{}\"/>", p.id, p.svg_path);
    }
    svg.push_str("</svg>\n");
    svg
}

fn signs() -> String {
    drawn("", is_sign)
}

/// The shapes of containers are here again: some items have them for a picture.
fn sheet() -> String {
    drawn(&format!("{LOGO}\n"), |id| !id.starts_with("verdict-"))
}

/// Run with `LIDLEAF_WRITE_ICONS=1` after a drawing in `print` has changed.
#[test]
fn screens_and_sheets_draw_the_same_pictograms() {
    for (name, drawn) in [("icons.svg", sheet()), ("signs.svg", signs())] {
        let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("static").join(name);
        if std::env::var_os("LIDLEAF_WRITE_ICONS").is_some() {
            std::fs::write(&file, &drawn).unwrap();
        }
        let written = std::fs::read_to_string(&file).unwrap();
        assert!(written == drawn, "{name} is not what print draws: run this test with LIDLEAF_WRITE_ICONS=1");
    }
}

#[test]
fn every_item_of_the_catalog_has_a_symbol() {
    let catalog = guide_data::Catalog::standard().unwrap();
    let sheet = sheet();
    for item in &catalog.items {
        let id = if item.pictogram.is_empty() { "item" } else { item.pictogram.as_str() };
        assert!(sheet.contains(&format!("<path id=\"{id}\"")), "{}: no pictogram \"{id}\"", item.id);
    }
}

/// A verdict or a picture that is not on the sheet of symbols is an empty square on the screen.
#[test]
fn every_symbol_that_a_screen_names_is_there() {
    let sheet = sheet() + &signs();
    let mut named = Vec::new();
    let mut folders = vec![Path::new(env!("CARGO_MANIFEST_DIR")).join("src")];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
            } else {
                let code = std::fs::read_to_string(&path).unwrap();
                let after = code.split("icons.svg#").skip(1).chain(code.split("signs.svg#").skip(1));
                named.extend(after.filter_map(|rest| rest.split(['"', '\\']).next()).map(str::to_owned));
            }
        }
    }
    // Those with a part that is filled in are ids of the catalog, or codes of verdicts.
    let whole: Vec<_> =
        named.iter().filter(|id| !id.contains('{') && !id.is_empty() && !id.ends_with('-')).collect();
    assert!(whole.len() >= 2, "{named:?}");
    for id in whole {
        assert!(sheet.contains(&format!(" id=\"{id}\"")), "{id}");
    }
    let pictogram =
        std::fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join("src/resident/pictogram.rs"))
            .unwrap();
    let categories: Vec<_> = pictogram
        .lines()
        .filter_map(|line| line.split_once("=> \"").filter(|(head, _)| head.trim().starts_with(['"', '_'])))
        .filter_map(|(_, rest)| rest.split('"').next())
        .collect();
    assert!(categories.len() >= 10, "{categories:?}");
    for id in categories {
        assert!(sheet.contains(&format!("<path id=\"{id}\"")), "{id}");
    }
    for code in ["yes", "no", "elsewhere", "caution", "unlisted", "undecided"] {
        assert!(sheet.contains(&format!("<path id=\"verdict-{code}\"")), "{code}");
    }
}
