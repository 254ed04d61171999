//! Two things of one kind have the same id, so that nobody can tell which is meant.

use std::collections::BTreeMap;

use super::{Finding, Place, Severity, Subject};

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let program = subject.program;
    let mut count = |kind: &str, ids: Vec<&str>| {
        let mut seen: BTreeMap<&str, usize> = BTreeMap::new();
        for id in ids {
            *seen.entry(id).or_default() += 1;
        }
        for (id, times) in seen {
            if id.trim().is_empty() {
                found.push(
                    Finding::new(Severity::Error, "duplicate-id", Place::of(kind, "", "id")).arg("times", 0),
                );
            } else if times > 1 {
                found.push(
                    Finding::new(Severity::Error, "duplicate-id", Place::of(kind, id, "id"))
                        .arg("times", times),
                );
            }
        }
    };
    count("rule", program.rules.iter().map(|r| r.id.as_str()).collect());
    count("stream", program.streams.iter().map(|s| s.id.as_str()).collect());
    let containers = program.streams.iter().flat_map(|s| &s.containers);
    count("container", containers.map(|c| c.id.as_str()).collect());
    count("zone", program.zones.iter().map(|z| z.id.as_str()).collect());
    count("channel", program.channels.iter().map(|c| c.id.as_str()).collect());
    count("site", program.sites.iter().map(|s| s.id.as_str()).collect());
    count("item", program.items.iter().map(|i| i.id.as_str()).collect());
    count("machine", program.plant.machines.iter().map(|m| m.id.as_str()).collect());
}
