//! Display lists as text, and pages as poppler draws them, compared with those on record.
//! `UPDATE_GOLDENS=1 cargo test -p print --test goldens` writes them anew; a record that no job makes any more fails.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

mod common;

use std::collections::BTreeSet;

use common::{JOBS, artifact, folder, here, pdf_file, run, text};

/// A page as poppler draws it, in squares of so many pixels, each as bright as it is on average.
struct Squares {
    across: usize,
    brightness: Vec<u8>,
}

/// Pixels of a page's longer side, and of a square's.
const LONGER: usize = 512;
const SQUARE: usize = 8;

/// How far a square may be off, of 255. Other versions of poppler smooth edges otherwise, which hardly shows in a
/// square's average; a letter of small print that is gone or elsewhere is twice that.
const TOLERANCE: u8 = 10;

impl Squares {
    /// Reads a binary grey map: "P5", width, height, 255, then the pixels.
    fn read(bytes: &[u8]) -> Self {
        let mut words = Vec::new();
        let mut at = 0;
        while words.len() < 4 {
            let length = bytes[at..].iter().position(u8::is_ascii_whitespace).expect("a grey map");
            words.push(std::str::from_utf8(&bytes[at..at + length]).expect("a grey map").to_owned());
            at += length + 1;
        }
        assert_eq!((words[0].as_str(), words[3].as_str()), ("P5", "255"));
        Self { across: words[1].parse().expect("a width"), brightness: bytes[at..].to_vec() }
    }

    fn write(&self) -> Vec<u8> {
        let head = format!("P5 {} {} 255\n", self.across, self.brightness.len() / self.across);
        [head.as_bytes(), &self.brightness].concat()
    }

    /// The averages of an image's squares.
    fn of(image: &Self) -> Self {
        let rows: Vec<&[u8]> = image.brightness.chunks(image.across).collect();
        let average = |rows: &[&[u8]], from: usize| -> u8 {
            let pixels =
                rows.iter().flat_map(|row| row.iter().skip(from).take(SQUARE)).map(|&p| u32::from(p));
            let (sum, number) = pixels.fold((0, 0), |(sum, number), pixel| (sum + pixel, number + 1));
            u8::try_from(sum / number).expect("an average")
        };
        let across = image.across.div_ceil(SQUARE);
        let brightness = rows
            .chunks(SQUARE)
            .flat_map(|rows| (0..across).map(|square| average(rows, square * SQUARE)).collect::<Vec<_>>())
            .collect();
        Self { across, brightness }
    }
}

/// What the display list cannot show: that the file draws it.
#[test]
fn pages_look_as_recorded() {
    let records = here().join("tests/goldens/pages");
    let update = std::env::var_os("UPDATE_GOLDENS").is_some();
    let mut wrong = Vec::new();
    let mut used = BTreeSet::new();
    for name in JOBS {
        let file = pdf_file("pages", name);
        for page in 1..=artifact(name).display_list.pages.len() {
            let number = page.to_string();
            let drawn = run(
                "pdftoppm",
                "poppler-utils",
                &["-gray", "-scale-to", &LONGER.to_string(), "-f", &number, "-l", &number, text(&file)],
            );
            let now = Squares::of(&Squares::read(&drawn));
            let record = format!("{name}-{page}.pgm");
            let path = records.join(&record);
            used.insert(record.clone());
            if update {
                std::fs::write(&path, now.write()).expect("the record is written");
                continue;
            }
            let recorded = Squares::read(&std::fs::read(&path).unwrap_or_else(|e| panic!("{record}: {e}")));
            if (recorded.across, recorded.brightness.len()) != (now.across, now.brightness.len()) {
                wrong.push(format!("{record}: another size"));
                continue;
            }
            let pairs = recorded.brightness.iter().zip(&now.brightness);
            let off = pairs.enumerate().filter(|(_, (old, new))| old.abs_diff(**new) > TOLERANCE);
            let places: Vec<String> = off
                .map(|(at, (old, new))| {
                    format!("column {} row {}: {old}, now {new}", at % now.across, at / now.across)
                })
                .collect();
            if !places.is_empty() {
                let seen = folder("pages").join(&record);
                std::fs::write(&seen, now.write()).expect("the picture is written");
                let shown = places.iter().take(3).cloned().collect::<Vec<_>>().join("; ");
                wrong.push(format!(
                    "{record}: {} squares differ ({shown}); see {}",
                    places.len(),
                    seen.display()
                ));
            }
        }
    }
    let kept: BTreeSet<String> = std::fs::read_dir(&records)
        .expect("the records")
        .map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned())
        .collect();
    assert_eq!(kept, used, "a record that no page makes, or a page without one");
    assert!(
        wrong.is_empty(),
        "{}\nif the change is meant, look at the sheets and run `UPDATE_GOLDENS=1 cargo test -p print --test goldens`",
        wrong.join("\n")
    );
}

#[test]
fn display_lists_are_as_recorded() {
    let folder = here().join("tests/goldens");
    let update = std::env::var_os("UPDATE_GOLDENS").is_some();
    let mut wrong = Vec::new();
    for name in JOBS {
        let path = folder.join(format!("{name}.txt"));
        let now = artifact(name).display_list.to_text();
        if update {
            std::fs::write(&path, &now).expect("the record is written");
            continue;
        }
        let recorded = std::fs::read_to_string(&path).unwrap_or_default();
        if let Some((line, (old, new))) =
            recorded.lines().zip(now.lines()).enumerate().find(|(_, (old, new))| old != new)
        {
            wrong.push(format!("{name}.txt, line {}:\n  recorded {old}\n  now      {new}", line + 1));
        } else if recorded != now {
            wrong.push(format!(
                "{name}.txt: {} lines recorded, {} now",
                recorded.lines().count(),
                now.lines().count()
            ));
        }
    }
    assert!(
        wrong.is_empty(),
        "{}\nif the change is meant, look at the sheets and run `UPDATE_GOLDENS=1 cargo test -p print --test goldens`",
        wrong.join("\n")
    );
}

#[test]
fn every_record_and_every_job_is_used() {
    let names = |folder: &str, ending: &str| -> BTreeSet<String> {
        std::fs::read_dir(here().join("tests").join(folder))
            .expect("the folder")
            .filter_map(|entry| {
                entry.expect("an entry").file_name().to_str()?.strip_suffix(ending).map(str::to_owned)
            })
            .collect()
    };
    let jobs: BTreeSet<String> = JOBS.iter().map(|&name| name.to_owned()).collect();
    assert_eq!(names("jobs", ".json"), jobs);
    assert_eq!(names("goldens", ".txt"), jobs);
}
