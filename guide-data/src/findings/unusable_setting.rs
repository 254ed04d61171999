//! A setting of the program that nothing can be done with: a kind nobody knows, a colour that is
//! none, a position off the globe, a value an unknown fact cannot have.

use super::{Finding, Place, Severity, Subject};
use crate::facts::{FactKind, HAZARDS, fact};
use crate::standard::{CHANNEL_KINDS, CONTAINER_KINDS, STREAM_KINDS};

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let program = subject.program;
    let mut bad = |severity: Severity, place: Place, value: &str| {
        found.push(Finding::new(severity, "unusable-setting", place).arg("value", value));
    };
    for stream in &program.streams {
        if !STREAM_KINDS.contains(&stream.kind.as_str()) {
            bad(Severity::Error, Place::of("stream", &stream.id, "kind"), &stream.kind);
        }
        for container in &stream.containers {
            if !CONTAINER_KINDS.contains(&container.kind.as_str()) {
                bad(Severity::Error, Place::of("container", &container.id, "kind"), &container.kind);
            }
            if !container.colour.is_empty() && !is_colour(&container.colour) {
                bad(Severity::Error, Place::of("container", &container.id, "colour"), &container.colour);
            }
        }
    }
    for channel in &program.channels {
        if !CHANNEL_KINDS.contains(&channel.kind.as_str()) {
            bad(Severity::Error, Place::of("channel", &channel.id, "kind"), &channel.kind);
        }
        for class in channel.safe_for.iter().filter(|c| !HAZARDS.contains(&c.as_str())) {
            bad(Severity::Error, Place::of("channel", &channel.id, "safe-for"), class);
        }
    }
    for class in program.hazards.keys().filter(|c| !HAZARDS.contains(&c.as_str())) {
        bad(Severity::Error, Place::of("hazard", class, "id"), class);
    }
    for site in &program.sites {
        let p = site.position;
        if !(-90.0..=90.0).contains(&p.lat) || !(-180.0..=180.0).contains(&p.lon) {
            bad(Severity::Error, Place::of("site", &site.id, "position"), &format!("{}, {}", p.lat, p.lon));
        }
    }
    for zone in &program.zones {
        if let Some(dwelling) = zone.dwelling.as_deref().filter(|d| !is_value("dwelling", d)) {
            bad(Severity::Error, Place::of("zone", &zone.id, "dwelling"), dwelling);
        }
    }
    for (name, value) in &program.unknown {
        if !is_value(name, value) {
            bad(Severity::Error, Place::of("program", name, "unknown"), value);
        }
    }
    for rule in &program.rules {
        if rule.from.zip(rule.until).is_some_and(|(from, until)| from > until) {
            bad(
                Severity::Error,
                Place::of("rule", &rule.id, "until"),
                &rule.until.map(|d| d.to_string()).unwrap_or_default(),
            );
        }
    }
    if program.source_language.is_empty() || !program.languages.contains(&program.source_language) {
        bad(Severity::Error, Place::of("program", "", "source-language"), &program.source_language);
    }
    if !program.guide_url.starts_with("https://") && !program.guide_url.starts_with("http://") {
        bad(Severity::Warning, Place::of("program", "", "guide-url"), &program.guide_url);
    }
}

fn is_colour(text: &str) -> bool {
    text.strip_prefix('#').is_some_and(|hex| hex.len() == 6 && hex.bytes().all(|b| b.is_ascii_hexdigit()))
}

fn is_value(name: &str, value: &str) -> bool {
    matches!(fact(name).map(|f| f.kind), Some(FactKind::Choice(values)) if values.contains(&value))
}
