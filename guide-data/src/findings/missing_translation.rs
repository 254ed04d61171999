//! Texts that a published language lacks: one finding for each language, with the first of them.

use super::{Finding, Place, Severity, Subject};
use crate::text::TextState;
use crate::words::each_text;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let program = subject.program;
    for language in &program.languages {
        for (state, severity, word) in [
            (TextState::Missing, Severity::Warning, "missing"),
            (TextState::Outdated, Severity::Warning, "outdated"),
            (TextState::Unreviewed, Severity::Notice, "unreviewed"),
        ] {
            let mut first: Option<String> = None;
            let mut count = 0_usize;
            each_text(program, &mut |key, text| {
                if !text.is_empty() && text.state(language, &program.source_language) == state {
                    count += 1;
                    first.get_or_insert_with(|| key.to_owned());
                }
            });
            if let Some(first) = first {
                found.push(
                    Finding::new(
                        severity,
                        "missing-translation",
                        Place::of("program", language, "languages"),
                    )
                    .arg("language", language)
                    .arg("state", word)
                    .arg("count", count)
                    .arg("first", first),
                );
            }
        }
    }
}
