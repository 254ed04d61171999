//! A line of a sheet that is still out there is no longer true.

use super::{Finding, Place, Severity, Subject};
use crate::printed::untrue;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    for line in untrue(subject.program, subject.catalog) {
        let shown = if line.words.is_empty() { &line.item } else { &line.words };
        let day = |day: Option<chrono::NaiveDate>| day.map(|d| d.to_string()).unwrap_or_default();
        let span = match (line.since, line.until) {
            (None, None) => "always",
            (Some(_), None) => "from",
            (None, Some(_)) => "until",
            (Some(_), Some(_)) => "between",
        };
        found.push(
            Finding::new(
                Severity::Warning,
                "printed-line-untrue",
                Place::of("printed", &line.sheet, &format!("lines.{}", line.line)),
            )
            .arg("line", shown)
            .arg("item", &line.item)
            .arg("span", span)
            .arg("since", day(line.since))
            .arg("until", day(line.until))
            .witness(line.witness.clone()),
        );
    }
}
