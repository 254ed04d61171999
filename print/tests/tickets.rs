//! Job tickets: everything said is on them, in order, and what cannot be set is refused.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

mod common;

use common::{fonts, run_text, text};
use print::{Direction, Item, PRESS_PROFILE, SheetSize, Ticket, TicketRow, make_ticket};

fn ticket(rows: usize) -> Ticket {
    Ticket {
        lang: "en".into(),
        direction: Direction::Ltr,
        title: "Job ticket".into(),
        rows: (0..rows)
            .map(|row| TicketRow {
                label: format!("Label {row}"),
                values: vec![format!("Value {row} of the ticket"), "العربية".into()],
            })
            .collect(),
        paper: SheetSize::named("letter").expect("a size"),
        job_name: "Recycling lid".into(),
        jurisdiction: "Quillmere County".into(),
        edition: "7".into(),
        date: "2026-11-25".into(),
    }
}

#[test]
fn every_row_is_on_it_and_a_long_one_goes_on() {
    for (rows, pages) in [(1, 1), (12, 1), (40, 3)] {
        for direction in [Direction::Ltr, Direction::Rtl] {
            let made = make_ticket(&Ticket { direction, ..ticket(rows) }, &fonts(), PRESS_PROFILE)
                .expect("a ticket");
            assert_eq!(made.display_list.pages.len(), pages, "{rows}");
            let mut lines = Vec::new();
            for page in &made.display_list.pages {
                let own: Vec<_> = page
                    .items
                    .iter()
                    .filter_map(|item| match item {
                        Item::Text(line) => Some(line),
                        _ => None,
                    })
                    .collect();
                for (index, line) in own.iter().enumerate() {
                    assert!(page.geometry.safe_area().contains(&line.rect), "“{}”", line.text);
                    assert!(own[index + 1..].iter().all(|other| !line.rect.overlaps(&other.rect)));
                }
                lines.extend(own.iter().map(|line| line.text.clone()));
            }
            for row in 0..rows {
                assert!(lines.contains(&format!("Label {row}")));
                assert!(lines.contains(&format!("Value {row} of the ticket")));
            }
        }
    }
}

#[test]
fn the_file_opens_and_says_it() {
    let made = make_ticket(&ticket(5), &fonts(), PRESS_PROFILE).expect("a ticket");
    let path = common::folder("tickets").join("ticket.pdf");
    std::fs::write(&path, &made.pdf).expect("written");
    assert!(run_text("qpdf", "qpdf", &["--check", text(&path)]).contains("No syntax or stream"));
    let said = run_text("pdftotext", "poppler-utils", &["-layout", text(&path), "-"]);
    assert!(said.contains("Label 3") && said.contains("Value 3 of the ticket"), "{said}");
    let info = run_text("pdfinfo", "poppler-utils", &[text(&path)]);
    assert!(info.contains("Job ticket: Recycling lid") && info.contains("612 x 792 pts"), "{info}");
}

#[test]
fn what_cannot_be_set_is_refused() {
    for (spoil, code) in [
        ((|it| it.rows[0].values[0] = "a\u{7}".into()) as fn(&mut Ticket), "bad-character"),
        (|it| it.rows[0].values[0] = "x".repeat(300), "word-too-wide"),
        (|it| it.rows[0].values[0] = "\u{6F22}\u{16000}".into(), "missing-glyph"),
        (|it| it.rows[0].values = vec!["a line".into(); 90], "ticket-too-long"),
        (|it| it.rows = ticket(300).rows, "ticket-too-long"),
    ] {
        let mut spoiled = ticket(2);
        spoil(&mut spoiled);
        let error = make_ticket(&spoiled, &fonts(), PRESS_PROFILE).expect_err(code);
        assert_eq!(error.items[0].code, code, "{error}");
    }
}
