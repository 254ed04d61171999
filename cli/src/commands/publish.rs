//! `lidleaf publish`.

use std::path::Path;

use chrono::NaiveDate;
use guide_data::{Program, Severity};
use locales::t;
use serde_json::json;

use crate::commands::check;
use crate::exit::Exit;
use crate::files;
use crate::problem::{Outcome, Problem};
use crate::publish::{self, language_pack};
use crate::run::{Report, Voice, pretty};
use locales::Words;

pub(crate) fn publish(
    program: Option<&Path>,
    catalog: Option<&Path>,
    app: &Path,
    out: &Path,
    today: NaiveDate,
    voice: &Voice,
) -> Outcome<Report> {
    let program = match program {
        Some(path) => files::program(path)?,
        None => Program::from_json(guide_data::demo_json())
            .map_err(|problem| Problem::load(Path::new("demo"), &problem))?,
    };
    let catalog = files::catalog(catalog)?;
    let checked = guide_data::check(&program, &catalog);
    let pack = language_pack(&program, &catalog, &voice.messages.lang().tag());
    let words = Words { messages: &voice.messages, pack: &pack };
    // Notices are for whoever works on the program; who publishes is told what matters to readers.
    let told: Vec<_> = checked.findings.iter().filter(|f| f.severity != Severity::Notice).cloned().collect();
    if !checked.publishable() {
        let refused = t!(voice.messages, "cli-publish-refused");
        let hint = t!(voice.messages, "cli-publish-refused.hint");
        let text = if voice.json {
            check::json(&program.id, false, &checked.findings, &voice.messages)
        } else {
            format!("{}{refused}\n  {hint}\n", check::human(&told, words))
        };
        return Ok(Report { text, exit: Exit::Errors });
    }
    let done = publish::publish(&program, &catalog, &checked, app, out, today)?;
    let text = if voice.json {
        pretty(&json!({
            "published": {
                "folder": out.display().to_string(),
                "edition": program.edition.label,
                "version": done.version,
                "files": done.files,
                "bytes": done.bytes,
            },
            "warnings": told.len(),
        }))
    } else {
        let line = t!(
            voice.messages,
            "cli-published",
            edition = program.edition.label.as_str(),
            folder = out.display().to_string(),
            files = done.files,
            size = voice.messages.bytes(done.bytes)
        );
        let warnings = if told.is_empty() { String::new() } else { check::human(&told, words) };
        format!("{warnings}{line}\n")
    };
    Ok(Report::done(text))
}
