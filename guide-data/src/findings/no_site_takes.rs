//! An answer sends people somewhere, and there is no such place: no site of the channel, or none
//! that takes the item.

use std::collections::BTreeMap;

use super::{Finding, Place, Severity, Subject};
use crate::fix::Fix;
use crate::guide::{GuideSite, Outcome};

/// Kinds of channel that people have to go to; the others come to them, or are telephoned.
const GO_THERE: &[&str] = &[
    "drop-off",
    "store-take-back",
    "hazardous-waste",
    "deposit-return",
    "reuse",
    "medicine-take-back",
    "sharps-take-back",
    "police",
];

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let guide = &subject.compiled.guide;
    let mut sites: BTreeMap<&str, Vec<&GuideSite>> = BTreeMap::new();
    for site in &guide.sites {
        for channel in &site.channels {
            sites.entry(channel).or_default().push(site);
        }
    }
    let takes = |channel: &str, item: &str| {
        sites.get(channel).is_some_and(|sites| sites.iter().any(|s| s.takes(item)))
    };
    // One finding for each channel: the first item that shows it is enough.
    let mut open: BTreeMap<&str, bool> = guide
        .channels
        .iter()
        .filter(|c| GO_THERE.contains(&c.kind.as_str()))
        .map(|c| (c.id.as_str(), true))
        .collect();
    for item in &guide.items {
        for part in &item.subjects {
            for outcome in guide.reached(part) {
                let Some(channel) = outcome.channel.as_deref() else { continue };
                if open.get(channel) != Some(&true)
                    || takes(channel, &item.id)
                    || outcome.also.iter().any(|also| takes(also, &item.id))
                {
                    continue;
                }
                open.insert(channel, false);
                let none = !sites.contains_key(channel);
                let sent = |o: &Outcome| o == outcome;
                found.push(
                    Finding::new(Severity::Warning, "no-site-takes", Place::of("channel", channel, ""))
                        .arg("problem", if none { "none" } else { "refused" })
                        .arg("item", &item.id)
                        .rules(&outcome.rules)
                        .witness(guide.likeliest(&item.id, part, &sent))
                        .tries(takers(subject, channel, &item.id)),
                );
            }
        }
    }
}

/// A site of the channel that names the item among what it does not take may be wrong about it.
fn takers(subject: &Subject<'_>, channel: &str, item: &str) -> Vec<Fix> {
    let sites = subject.program.sites.iter().filter(|s| s.channels.iter().any(|c| c == channel));
    sites
        .filter(|s| {
            s.refuses.iter().any(|i| i == item)
                && (s.accepts.is_empty() || s.accepts.iter().any(|i| i == item))
        })
        .map(|s| Fix::Remove { place: Place::of("site", &s.id, "refuses"), value: item.to_owned() })
        .collect()
}
