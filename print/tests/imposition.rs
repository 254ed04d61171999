//! Several sheets on a press sheet: what is drawn is the finished sheet, only moved; backs fall behind fronts; marks
//! stay outside the trims.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

mod common;

use common::{artifact, job, print_job, run, run_text, text};
use print::{
    Cell, Colorant, DisplayList, Imposed, Item, Mm, PressSheet, Pt, Rect, Role, SheetSize, Turning, impose,
};

/// Press sheets and how many must fit: 7 x 9 in lids, 9 x 6 in cards, 115 mm rounds, letter sheets. Worked out by
/// hand: sides less a quarter of an inch of bleed and marks on each, over trim plus a quarter-inch gutter.
const FITS: [(&str, &str, usize, usize); 9] = [
    ("lid-en", "12x18in", 2, 1),
    ("lid-en", "13x19in", 2, 1),
    ("lid-en", "sra3", 2, 1),
    ("mailer-es", "12x18in", 1, 2),
    ("mailer-es", "13x19in", 2, 2),
    ("sticker-en-es-ar", "sra3", 2, 3),
    ("sticker-en-es-ar", "11x17in", 2, 3),
    ("self-mailer-en-es", "12x18in", 2, 1),
    ("self-mailer-en-es", "13x19in", 2, 1),
];

fn press(name: &str) -> PressSheet {
    PressSheet::parse(name).expect("a press sheet")
}

fn imposed(job: &str, press: &PressSheet) -> Imposed {
    impose(&artifact(job).display_list, press).unwrap_or_else(|error| panic!("{job}: {error}"))
}

#[test]
fn as_many_as_fit_are_placed() {
    for (name, sheet, across, down) in FITS {
        let made = imposed(name, &press(sheet));
        let product = made.across * made.down;
        assert_eq!(product, across * down, "{name} on {sheet}: {} x {}", made.across, made.down);
    }
}

/// The block stands in the middle, cells keep their gutter, and each cell's bleed and marks are on the paper.
#[test]
fn cells_lie_apart_and_on_the_paper() {
    for (name, sheet, ..) in FITS {
        for gutter in [None, Some(Mm(8.0))] {
            let Ok(made) = impose(&artifact(name).display_list, &PressSheet { gutter, ..press(sheet) })
            else {
                continue;
            };
            let gap = gutter.map_or(Pt(18.0), Mm::pt);
            for page in 0..made.list.pages.len() {
                let paper = made.list.pages[page].geometry.trim();
                let cells: Vec<&Cell> = made.cells.iter().filter(|cell| cell.side == page).collect();
                assert_eq!(cells.len(), made.across * made.down);
                for (index, cell) in cells.iter().enumerate() {
                    assert!(paper.contains(&cell.trim.grown(Pt(9.0))), "{name} on {sheet}");
                    for other in &cells[index + 1..] {
                        let near = cell.trim.grown(gap / 2.0 - Pt(0.02));
                        assert!(!near.overlaps(&other.trim.grown(gap / 2.0 - Pt(0.02))), "{name} on {sheet}");
                    }
                }
            }
        }
    }
}

/// Turned over sideways, by either way of turning: behind each front lies its back, to a hundredth of a point.
#[test]
fn backs_land_behind_their_fronts() {
    for name in ["mailer-es", "flat-en-es", "self-mailer-en-es", "handout-en-es-ar"] {
        for sheet in ["13x19in", "sra3", "450 x 640 mm"] {
            for turning in [Turning::Sheetwise, Turning::WorkAndTurn] {
                let Ok(made) = impose(&artifact(name).display_list, &PressSheet { turning, ..press(sheet) })
                else {
                    continue;
                };
                let width = made.size.0.pt();
                let behind = |trim: Rect| Rect::new(width - trim.right(), trim.y, trim.width, trim.height);
                let fronts: Vec<&Cell> = made.cells.iter().filter(|cell| cell.page == 0).collect();
                assert!(!fronts.is_empty());
                for front in &fronts {
                    // Printed from one plate, the back is on the same side of the list.
                    let side = if turning == Turning::WorkAndTurn { front.side } else { front.side + 1 };
                    let found = made.cells.iter().any(|cell| {
                        let there = behind(front.trim);
                        cell.page == 1
                            && cell.side == side
                            && (cell.trim.x - there.x).0.abs() < 0.01
                            && (cell.trim.y - there.y).0.abs() < 0.01
                    });
                    assert!(found, "{name} on {sheet} {turning:?}: nothing behind {:?}", front.trim);
                }
                let backs = made.cells.iter().filter(|cell| cell.page == 1).count();
                assert_eq!(backs, fronts.len(), "{name} on {sheet} {turning:?}");
            }
        }
    }
}

/// Glyphs of a list's own words, without the slug, which stands once on a press sheet.
fn words(list: &DisplayList, page: usize) -> Vec<(String, Vec<u16>)> {
    list.pages[page]
        .items
        .iter()
        .filter_map(|item| match item {
            Item::Text(line) if line.role != Role::Slug => {
                let glyphs =
                    line.runs.iter().flat_map(|run| run.glyphs.iter().map(|glyph| glyph.id)).collect();
                Some((line.text.clone(), glyphs))
            }
            _ => None,
        })
        .collect()
}

/// Nothing is laid out anew: a cell has exactly its page's lines, each as far from the cell's corner as from the page's.
#[test]
fn what_is_drawn_is_the_finished_sheet_moved() {
    let source = &artifact("mailer-es").display_list;
    let made = imposed("mailer-es", &press("13x19in"));
    for side in 0..2 {
        let mut expected = Vec::new();
        for _ in 0..4 {
            expected.extend(words(source, side));
        }
        assert_eq!(words(&made.list, side), expected);
    }
    let cell = made.cells.iter().find(|cell| cell.page == 1).expect("a back");
    let lines = |list: &DisplayList, page: usize, at: (Pt, Pt)| -> Vec<(i64, i64)> {
        list.pages[page]
            .items
            .iter()
            .filter_map(|item| match item {
                Item::Text(line) if line.role == Role::Postal => {
                    let round = |value: Pt| (value.0 * 1000.0).round() as i64;
                    Some((round(line.rect.x - at.0), round(line.rect.y - at.1)))
                }
                _ => None,
            })
            .collect()
    };
    let whole = lines(source, 1, (Pt::ZERO, Pt::ZERO));
    let there = lines(&made.list, 1, (cell.trim.x, cell.trim.y));
    assert!(whole.iter().all(|line| there.contains(line)));
    assert_eq!(there.len(), whole.len() * 4);
}

/// Every mark and the slug lie outside every cell's bleed and on the paper.
#[test]
fn marks_are_outside_the_trims() {
    for (name, sheet, ..) in FITS {
        let made = imposed(name, &press(sheet));
        for (side, page) in made.list.pages.iter().enumerate() {
            let bleeds: Vec<Rect> = made
                .cells
                .iter()
                .filter(|cell| cell.side == side)
                .map(|cell| cell.trim.grown(Pt(9.0)))
                .collect();
            let (mut crops, mut targets, mut slugs) = (0, 0, 0);
            for item in &page.items {
                let frame = match item {
                    Item::Rule(rule) if rule.what == "crop" || rule.what == "fold" => {
                        crops += 1;
                        let (x, y) = (rule.from.x.min(rule.to.x), rule.from.y.min(rule.to.y));
                        Rect::new(x, y, rule.from.x.max(rule.to.x) - x, rule.from.y.max(rule.to.y) - y)
                    }
                    Item::Technical(line) if line.colorant == Colorant::Registration => {
                        targets += 1;
                        let points: Vec<_> = line
                            .path
                            .iter()
                            .filter_map(|op| match *op {
                                print::PathOp::Move(p) | print::PathOp::Line(p) => Some(p),
                                _ => None,
                            })
                            .collect();
                        let x = points.iter().map(|p| p.x).reduce(Pt::min).expect("points");
                        let y = points.iter().map(|p| p.y).reduce(Pt::min).expect("points");
                        let right = points.iter().map(|p| p.x).reduce(Pt::max).expect("points");
                        let bottom = points.iter().map(|p| p.y).reduce(Pt::max).expect("points");
                        Rect::new(x, y, right - x, bottom - y)
                    }
                    Item::Text(line) if line.role == Role::Slug => {
                        slugs += 1;
                        assert!(line.text.contains(&job(name).edition) && line.text.contains("2026-11-25"));
                        line.rect
                    }
                    _ => continue,
                };
                assert!(page.geometry.trim().contains(&frame), "{name} on {sheet}: {frame:?}");
                assert!(bleeds.iter().all(|bleed| !bleed.overlaps(&frame)), "{name} on {sheet}: {frame:?}");
            }
            // Two ends for each edge of each column and row.
            assert!(crops >= 4 * (made.across + made.down), "{name} on {sheet}: {crops}");
            assert_eq!((targets, slugs), (4, 1), "{name} on {sheet}");
        }
    }
}

#[test]
fn fewer_can_be_asked_for() {
    let sheet = |up, turning| PressSheet { up: Some(up), turning, ..press("450 x 640 mm") };
    for (up, expected) in [(1, 1), (2, 2), (3, 3), (4, 4)] {
        let made = imposed("mailer-es", &sheet(up, Turning::Sheetwise));
        assert_eq!(made.across * made.down, expected, "{up}");
    }
    let made = imposed("mailer-es", &sheet(3, Turning::WorkAndTurn));
    assert_eq!(made.across * made.down, 2, "fronts and backs come in pairs");
    let error =
        impose(&artifact("mailer-es").display_list, &sheet(1, Turning::WorkAndTurn)).expect_err("no pair");
    assert_eq!(error.items[0].code, "press-too-small");
}

/// The file: its pages are the press sheets, qpdf and poppler have no complaints, the code is still read, and the die's
/// and the registration's colours are separations of their own.
#[test]
fn the_imposed_file_is_a_press_file() {
    let mut job = job("sticker-en-es-ar");
    job.press = Some(PressSheet::new(SheetSize::new(Mm(320.0), Mm(450.0))));
    job.die_line = true;
    let made = print_job(&job).expect("six on a sheet");
    assert!(made.preflight.iter().any(|item| item.code == "imposed" && item.args["up"] == "6"));
    let path = common::folder("imposed").join("stickers.pdf");
    std::fs::write(&path, &made.pdf).expect("written");
    let said = run_text("qpdf", "qpdf", &["--check", text(&path)]);
    assert!(said.contains("No syntax or stream encoding errors found"), "{said}");
    let info = run_text("pdfinfo", "poppler-utils", &["-box", text(&path)]);
    // 320 x 450 mm in points.
    assert!(info.contains("907.087 x 1275.59 pts"), "{info}");
    let plain = run_text("qpdf", "qpdf", &["--qdf", "--object-streams=disable", "--json", text(&path)]);
    assert!(plain.contains("/Dieline") && plain.contains("/Separation") && plain.contains("/All"));
    let image = common::folder("imposed").join("stickers");
    run("pdftoppm", "poppler-utils", &["-r", "150", "-gray", "-png", text(&path), text(&image)]);
    let image = format!("{}-1.png", text(&image));
    let read = run_text("zbarimg", "zbar-tools", &["-q", "--raw", "-Sdisable", "-Sqrcode.enable", &image]);
    assert_eq!(read.lines().filter(|line| *line == job.qr_url).count(), 6, "{read}");
}
