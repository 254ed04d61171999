//! A text holds markup, control characters, or characters that turn the direction of writing.
//! Nothing is ever shown as markup; the finding tells the coordinator what will be seen.

use super::{Finding, Place, Severity, Subject};
use crate::fix::Fix;
use crate::words::each_text;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    each_text(subject.program, &mut |key, text| {
        for (language, wording) in &text.0 {
            for (problem, hit) in [
                ("markup", markup(&wording.text)),
                ("direction", wording.text.chars().find(|&c| turns_direction(c)).map(shown)),
                ("control", wording.text.chars().find(|&c| c.is_control() && c != '\n').map(shown)),
            ] {
                if let Some(hit) = hit {
                    found.push(
                        Finding::new(Severity::Error, "suspicious-text", Place::of("text", key, language))
                            .arg("key", key)
                            .arg("language", language)
                            .arg("problem", problem)
                            .arg("shown", hit)
                            .tries([Fix::CleanText {
                                key: key.to_owned(),
                                language: language.clone(),
                                problem: problem.to_owned(),
                            }]),
                    );
                }
            }
        }
    });
}

/// Embedding and override characters of the Unicode bidirectional algorithm (UAX #9, table of
/// explicit formatting characters): they reach beyond the text they stand in.
pub(crate) fn turns_direction(c: char) -> bool {
    matches!(c, '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}')
}

fn markup(text: &str) -> Option<String> {
    let at = text.find('<')?;
    let rest = text.get(at..)?;
    let next = rest.chars().nth(1)?;
    (next.is_ascii_alphabetic() || next == '/' || next == '!').then(|| rest.chars().take(12).collect())
}

fn shown(c: char) -> String {
    format!("U+{:04X}", u32::from(c))
}
