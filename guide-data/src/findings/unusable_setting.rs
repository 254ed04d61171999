//! A setting of the program that nothing can be done with: a kind nobody knows, a colour that is
//! none, a position off the globe, a value an unknown fact cannot have.

use super::{Finding, Place, Severity, Subject};
use crate::facts::{FactKind, HAZARDS, fact};
use crate::fix::Fix;
use crate::standard::{CHANNEL_KINDS, CONTAINER_KINDS, STREAM_KINDS};

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let program = subject.program;
    let mut bad = |severity: Severity, place: Place, value: &str, fixes: Vec<Fix>| {
        found.push(Finding::new(severity, "unusable-setting", place).arg("value", value).tries(fixes));
    };
    let meant = |place: &Place, value: &str, among: &[&'static str]| {
        subject.did_you_mean(place, value, among.iter().copied())
    };
    let remove = |place: &Place, value: &str| Fix::Remove { place: place.clone(), value: value.to_owned() };
    let put = |place: &Place, value: &str, with: String| Fix::Replace {
        place: place.clone(),
        value: value.to_owned(),
        with,
    };
    for stream in &program.streams {
        if !STREAM_KINDS.contains(&stream.kind.as_str()) {
            let place = Place::of("stream", &stream.id, "kind");
            let fixes = meant(&place, &stream.kind, STREAM_KINDS);
            bad(Severity::Error, place, &stream.kind, fixes);
        }
        for container in &stream.containers {
            if !CONTAINER_KINDS.contains(&container.kind.as_str()) {
                let place = Place::of("container", &container.id, "kind");
                let fixes = meant(&place, &container.kind, CONTAINER_KINDS);
                bad(Severity::Error, place, &container.kind, fixes);
            }
            if !container.colour.is_empty() && !is_colour(&container.colour) {
                let place = Place::of("container", &container.id, "colour");
                let mut fixes: Vec<Fix> = colour_meant(&container.colour)
                    .map(|c| put(&place, &container.colour, c))
                    .into_iter()
                    .collect();
                fixes.push(remove(&place, &container.colour));
                bad(Severity::Error, place, &container.colour, fixes);
            }
        }
    }
    for channel in &program.channels {
        if !CHANNEL_KINDS.contains(&channel.kind.as_str()) {
            let place = Place::of("channel", &channel.id, "kind");
            let fixes = meant(&place, &channel.kind, CHANNEL_KINDS);
            bad(Severity::Error, place, &channel.kind, fixes);
        }
        for class in channel.safe_for.iter().filter(|c| !HAZARDS.contains(&c.as_str())) {
            // That a channel takes a hazard safely is never guessed: the word can only go.
            let place = Place::of("channel", &channel.id, "safe-for");
            let fixes = vec![remove(&place, class)];
            bad(Severity::Error, place, class, fixes);
        }
    }
    for class in program.hazards.keys().filter(|c| !HAZARDS.contains(&c.as_str())) {
        let place = Place::of("hazard", class, "id");
        let mut fixes = meant(&place, class, HAZARDS.get(1..).unwrap_or_default());
        fixes.push(remove(&place, class));
        bad(Severity::Error, place, class, fixes);
    }
    for site in &program.sites {
        let p = site.position;
        let on_globe = |lat: f64, lon: f64| (-90.0..=90.0).contains(&lat) && (-180.0..=180.0).contains(&lon);
        if !on_globe(p.lat, p.lon) {
            let place = Place::of("site", &site.id, "position");
            let swap = on_globe(p.lon, p.lat).then(|| Fix::SwapPosition { site: site.id.clone() });
            bad(Severity::Error, place, &format!("{}, {}", p.lat, p.lon), swap.into_iter().collect());
        }
    }
    for zone in &program.zones {
        if let Some(dwelling) = zone.dwelling.as_deref().filter(|d| !is_value("dwelling", d)) {
            let place = Place::of("zone", &zone.id, "dwelling");
            let mut fixes = meant(&place, dwelling, values_of("dwelling"));
            fixes.push(remove(&place, dwelling));
            bad(Severity::Error, place, dwelling, fixes);
        }
    }
    for (name, value) in &program.unknown {
        if !is_value(name, value) {
            let place = Place::of("program", name, "unknown");
            // For a danger, what a resident cannot tell counts as the careful value, or is asked.
            let dangerous = matches!(name.as_str(), "hazard" | "battery");
            let mut fixes = if dangerous { Vec::new() } else { meant(&place, value, values_of(name)) };
            fixes.push(remove(&place, value));
            bad(Severity::Error, place, value, fixes);
        }
    }
    let source = &program.source_language;
    if source.is_empty() || !program.languages.contains(source) {
        let place = Place::of("program", "", "source-language");
        let mut fixes: Vec<Fix> = program.languages.iter().map(|l| put(&place, source, l.clone())).collect();
        if !source.is_empty() {
            fixes.insert(0, Fix::AddLanguage { language: source.clone() });
        }
        bad(Severity::Error, place, source, fixes);
    }
    let url = &program.guide_url;
    if !url.starts_with("https://") && !url.starts_with("http://") {
        let place = Place::of("program", "", "guide-url");
        let bare = !url.is_empty() && !url.contains(":/");
        let fixes = if bare { vec![put(&place, url, format!("https://{url}"))] } else { Vec::new() };
        bad(Severity::Warning, place, url, fixes);
    }
}

/// A colour written without its sign, or in its short form.
fn colour_meant(text: &str) -> Option<String> {
    let hex = text.trim().trim_start_matches('#');
    if !hex.bytes().all(|b| b.is_ascii_hexdigit()) {
        return None;
    }
    match hex.len() {
        6 => Some(format!("#{hex}")),
        3 => Some(hex.chars().fold("#".to_owned(), |sum, c| format!("{sum}{c}{c}"))),
        _ => None,
    }
}

fn values_of(name: &str) -> &'static [&'static str] {
    match fact(name).map(|f| f.kind) {
        Some(FactKind::Choice(values)) => values,
        _ => &[],
    }
}

fn is_colour(text: &str) -> bool {
    text.strip_prefix('#').is_some_and(|hex| hex.len() == 6 && hex.bytes().all(|b| b.is_ascii_hexdigit()))
}

fn is_value(name: &str, value: &str) -> bool {
    matches!(fact(name).map(|f| f.kind), Some(FactKind::Choice(values)) if values.contains(&value))
}
