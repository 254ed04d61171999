//! An answer sends something to a stream from which law bans it.

use std::collections::BTreeSet;

use super::{Finding, Place, Severity, Subject};
use crate::guide::Outcome;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let guide = &subject.compiled.guide;
    let banned = |o: &Outcome| o.stream.as_ref().is_some_and(|s| o.banned.contains(s));
    if !guide.outcomes.iter().any(banned) {
        return;
    }
    let mut told: BTreeSet<(&str, &[String])> = BTreeSet::new();
    for item in &guide.items {
        for part in &item.subjects {
            for outcome in guide.reached(part).into_iter().filter(|o| banned(o)) {
                let stream = outcome.stream.as_deref().unwrap_or_default();
                if !told.insert((stream, &outcome.rules)) {
                    continue;
                }
                // The rules that send it there, then those that may say the ban.
                let bans = subject.adding.iter().filter(|r| r.banned_from.iter().any(|s| s == stream));
                let mut rules = outcome.rules.clone();
                rules.extend(bans.map(|r| r.id.clone()));
                let place = match outcome.rules.first() {
                    Some(first) => Place::of("rule", first, "stream"),
                    None => Place::of("program", "", "silence"),
                };
                found.push(
                    Finding::new(Severity::Error, "banned-destination", place)
                        .arg("stream", stream)
                        .arg("item", &item.id)
                        .rules(&rules)
                        .witness(guide.likeliest(&item.id, part, &|o| o == outcome)),
                );
            }
        }
    }
}
