//! A site to which nothing is ever sent, or that is said to take an item that is sent elsewhere.

use std::collections::{BTreeMap, BTreeSet};

use super::{Finding, Place, Severity, Subject};
use crate::fix::Fix;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let program = subject.program;
    let mut sent: BTreeSet<&str> = program.hazards.values().map(|h| h.channel.as_str()).collect();
    sent.extend(program.rules.iter().flat_map(|r| r.channel.iter().chain(&r.also)).map(String::as_str));
    let guide = &subject.compiled.guide;
    // Channels of the items that some site names, each item looked at once.
    let named: BTreeSet<&str> = program.sites.iter().flat_map(|s| &s.accepts).map(String::as_str).collect();
    let mut channels: BTreeMap<&str, BTreeSet<&str>> = BTreeMap::new();
    for item in guide.items.iter().filter(|i| named.contains(i.id.as_str())) {
        let outcomes = item.subjects.iter().flat_map(|s| guide.reached(s));
        let all = outcomes.flat_map(|o| o.channel.iter().chain(&o.also)).map(String::as_str);
        channels.insert(&item.id, all.collect());
    }
    let exist: BTreeSet<&str> = program.channels.iter().map(|c| c.id.as_str()).collect();
    for site in &program.sites {
        // A channel that does not exist is told elsewhere, and may be the one that is used.
        if site.channels.iter().any(|c| !exist.contains(c.as_str())) {
            continue;
        }
        if !site.channels.iter().any(|c| sent.contains(c.as_str())) {
            found.push(
                Finding::new(Severity::Warning, "site-never-used", Place::of("site", &site.id, "channels"))
                    .arg("problem", "site")
                    .arg("item", ""),
            );
            continue;
        }
        for item in &site.accepts {
            let Some(channels) = channels.get(item.as_str()) else { continue };
            if site.channels.iter().any(|c| channels.contains(c.as_str())) {
                continue;
            }
            let place = Place::of("site", &site.id, "accepts");
            // With nothing left in the list the site would take everything.
            let remove =
                (site.accepts.len() > 1).then(|| Fix::Remove { place: place.clone(), value: item.clone() });
            found.push(
                Finding::new(Severity::Warning, "site-never-used", place)
                    .arg("problem", "item")
                    .arg("item", item)
                    .tries(remove),
            );
        }
    }
}
