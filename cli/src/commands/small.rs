//! `lidleaf schema` and `lidleaf demo`: files that ship with the program.

use std::path::Path;

use locales::t;

use crate::exit::Exit;
use crate::files;
use crate::problem::{Outcome, Problem};
use crate::run::{Report, Voice, pretty};

/// The JSON Schema of a program file.
pub(crate) fn schema(out: Option<&Path>, voice: &Voice) -> Outcome<Report> {
    give(&pretty(&guide_data::program_schema()), out, voice)
}

/// The demo program, Quillmere County, or one of its member towns.
pub(crate) fn demo(town: Option<&str>, out: Option<&Path>, voice: &Voice) -> Outcome<Report> {
    let Some(id) = town else { return give(guide_data::demo_json(), out, voice) };
    let towns = guide_data::demo_towns();
    let Some(town) = towns.iter().find(|town| town.id == id) else {
        let known: Vec<&str> = towns.iter().map(|town| town.id.as_str()).collect();
        return Err(Problem::new(Exit::NotFound, "cli-unknown-town")
            .with("town", id)
            .with("known", known.join(", ")));
    };
    give(&town.to_json(), out, voice)
}

fn give(text: &str, out: Option<&Path>, voice: &Voice) -> Outcome<Report> {
    let Some(out) = out else { return Ok(Report::done(text.to_owned())) };
    files::write(out, text.as_bytes())?;
    let file = out.display().to_string();
    Ok(Report::done(t!(voice.messages, "cli-written", file = file) + "\n"))
}
