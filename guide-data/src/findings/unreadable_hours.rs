//! A site's opening hours cannot be read, or its position is not on the globe.

use super::{Finding, Place, Severity, Subject};
use crate::fix::Fix;
use crate::hours::Schedule;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    for site in &subject.program.sites {
        if let Err(problem) = Schedule::readable(&site.hours) {
            found.push(
                Finding::new(Severity::Error, "unreadable-hours", Place::of("site", &site.id, "hours"))
                    .arg("hours", &site.hours)
                    .arg("problem", problem)
                    .fixes(
                        retyped(&site.hours).into_iter().filter(|with| Schedule::readable(with).is_ok()).map(
                            |with| Fix::Replace {
                                place: Place::of("site", &site.id, "hours"),
                                value: site.hours.clone(),
                                with,
                            },
                        ),
                    ),
            );
        }
    }
}

/// The same hours with plain signs for the ones that word processors put in their place.
fn retyped(hours: &str) -> Option<String> {
    let plain: String = hours
        .chars()
        .map(|c| match c {
            '–' | '—' | '−' | '‑' => '-',
            '：' | '∶' => ':',
            '；' => ';',
            '，' => ',',
            '\u{a0}' | '\u{202f}' | '\u{2009}' => ' ',
            other => other,
        })
        .collect();
    let plain = plain.trim().replace(" - ", "-").replace(" : ", ":");
    (plain != hours).then_some(plain)
}
