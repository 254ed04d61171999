//! Something is defined and nothing refers to it: a stream, channel, step, zone or machine.

use std::collections::BTreeSet;

use super::{Finding, Place, Severity, Subject};
use crate::condition::Condition;
use crate::fix::Fix;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let program = subject.program;
    let rules = || program.rules.iter();
    let mut streams: BTreeSet<&str> =
        rules().flat_map(|r| r.stream.iter().chain(&r.banned_from)).map(String::as_str).collect();
    streams.extend(program.refuse_stream());
    let mut channels: BTreeSet<&str> = program.hazards.values().map(|h| h.channel.as_str()).collect();
    channels.extend(rules().flat_map(|r| r.channel.iter().chain(&r.also)).map(String::as_str));
    let steps: BTreeSet<&str> = rules().flat_map(|r| &r.prepare).map(String::as_str).collect();
    let machines: BTreeSet<&str> = rules().filter_map(|r| r.machine.as_deref()).collect();
    let containers = program.streams.iter().flat_map(|s| &s.containers);
    let mut zones: BTreeSet<&str> = containers.flat_map(|c| &c.zones).map(String::as_str).collect();
    for when in rules().filter_map(|r| r.when.as_ref()) {
        zones_of(when, &mut zones);
    }
    let on_sites: BTreeSet<&str> =
        program.sites.iter().flat_map(|s| &s.channels).map(String::as_str).collect();
    let mut unused = |kind: &str, id: &str, may_go: bool| {
        // Something without an id is told elsewhere.
        if !id.trim().is_empty() {
            let fix = may_go.then(|| Fix::RemoveUnused { kind: kind.to_owned(), id: id.to_owned() });
            found.push(
                Finding::new(Severity::Notice, "unused-thing", Place::of(kind, id, ""))
                    .arg("kind", kind)
                    .tries(fix),
            );
        }
    };
    for stream in program.streams.iter().filter(|s| !streams.contains(s.id.as_str())) {
        unused("stream", &stream.id, false);
    }
    for channel in program.channels.iter().filter(|c| !channels.contains(c.id.as_str())) {
        unused("channel", &channel.id, !on_sites.contains(channel.id.as_str()));
    }
    for step in program.steps.keys().filter(|s| !steps.contains(s.as_str())) {
        unused("step", step, true);
    }
    for machine in program.plant.machines.iter().filter(|m| !machines.contains(m.id.as_str())) {
        unused("machine", &machine.id, false);
    }
    for zone in &program.zones {
        // A zone also tells which streams it has, which homes, and how far the sites are.
        let says = !zone.streams.is_empty() || zone.dwelling.is_some() || zone.centre.is_some();
        if !says && !zones.contains(zone.id.as_str()) {
            unused("zone", &zone.id, false);
        }
    }
}

fn zones_of<'c>(condition: &'c Condition, zones: &mut BTreeSet<&'c str>) {
    match condition {
        Condition::All(parts) | Condition::Any(parts) => parts.iter().for_each(|p| zones_of(p, zones)),
        Condition::Not(part) => zones_of(part, zones),
        Condition::Is(one) if one.fact == "zone" => zones.extend(one.of.iter().map(String::as_str)),
        Condition::Is(_) | Condition::Measure(_) => {}
    }
}
