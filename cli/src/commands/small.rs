//! `lidleaf schema` and `lidleaf demo`: files that ship with the program.

use std::path::Path;

use locales::t;

use crate::files;
use crate::problem::Outcome;
use crate::run::{Report, Voice, pretty};

/// The JSON Schema of a program file.
pub(crate) fn schema(out: Option<&Path>, voice: &Voice) -> Outcome<Report> {
    give(&pretty(&guide_data::program_schema()), out, voice)
}

/// The demo program, Quillmere County.
pub(crate) fn demo(out: Option<&Path>, voice: &Voice) -> Outcome<Report> {
    give(guide_data::demo_json(), out, voice)
}

fn give(text: &str, out: Option<&Path>, voice: &Voice) -> Outcome<Report> {
    let Some(out) = out else { return Ok(Report::done(text.to_owned())) };
    files::write(out, text.as_bytes())?;
    let file = out.display().to_string();
    Ok(Report::done(t!(voice.messages, "cli-written", file = file) + "\n"))
}
