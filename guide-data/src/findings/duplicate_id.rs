//! Two things of one kind have the same id, so that nobody can tell which is meant.

use std::collections::{BTreeMap, BTreeSet};

use super::{Finding, Place, Severity, Subject};
use crate::fix::Fix;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let program = subject.program;
    let mut count = |kind: &str, ids: Vec<&str>| {
        let mut seen: BTreeMap<&str, usize> = BTreeMap::new();
        for &id in &ids {
            *seen.entry(id).or_default() += 1;
        }
        let taken: BTreeSet<&str> = ids.into_iter().collect();
        for (id, times) in seen {
            let nameless = id.trim().is_empty();
            if !nameless && times == 1 {
                continue;
            }
            let (base, renamed) = if nameless { (kind, times) } else { (id, times - 1) };
            let free = (1_usize..).map(|n| format!("{base}-{n}")).filter(|new| !taken.contains(new.as_str()));
            let own = Fix::OwnIds {
                kind: kind.to_owned(),
                id: id.to_owned(),
                with: free.skip(usize::from(!nameless)).take(renamed).collect(),
            };
            let twins = Fix::RemoveTwins { kind: kind.to_owned(), id: id.to_owned() };
            let id = if nameless { "" } else { id };
            let finding = Finding::new(Severity::Error, "duplicate-id", Place::of(kind, id, "id"));
            found.push(if nameless {
                finding.arg("times", 0).tries([own])
            } else {
                finding.arg("times", times).tries([twins, own])
            });
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
