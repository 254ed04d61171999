//! Display lists as text, compared with those on record. `UPDATE_GOLDENS=1 cargo test -p print --test goldens`
//! writes them anew; a record that no job makes any more fails.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

mod common;

use std::collections::BTreeSet;

use common::{JOBS, artifact, here};

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
