//! Something names an id that nothing has, or a rule lacks the destination its verdict needs.

use super::{Finding, Place, Severity, Subject};
use crate::program::Verdict;
use crate::standard::{PREPARATIONS, REASONS};

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let program = subject.program;
    let mut missing = |place: Place, target: &str, kind: &str| {
        found.push(
            Finding::new(Severity::Error, "broken-reference", place).arg("target", target).arg("kind", kind),
        );
    };
    for rule in &program.rules {
        let at = |field: &str| Place::of("rule", &rule.id, field);
        if let Some(stream) = rule.stream.as_deref().filter(|s| program.stream(s).is_none()) {
            missing(at("stream"), stream, "stream");
        }
        for channel in rule.channel.iter().chain(&rule.also) {
            if program.channel(channel).is_none() {
                missing(at("channel"), channel, "channel");
            }
        }
        match rule.verdict {
            Some(Verdict::Yes) if rule.stream.is_none() => missing(at("stream"), "", "stream"),
            Some(Verdict::Elsewhere) if rule.channel.is_none() => missing(at("channel"), "", "channel"),
            _ => {}
        }
        for step in &rule.prepare {
            if !PREPARATIONS.contains(&step.as_str()) && !program.steps.contains_key(step) {
                missing(at("prepare"), step, "step");
            }
        }
        if let Some(reason) = rule.reason.as_deref().filter(|r| !REASONS.contains(r)) {
            missing(at("reason"), reason, "reason");
        }
        if let Some(machine) = rule.machine.as_deref()
            && program.plant.machines.iter().all(|m| m.id != machine)
        {
            missing(at("machine"), machine, "machine");
        }
        for over in &rule.overrides {
            match program.rule(over) {
                None => missing(at("overrides"), over, "rule"),
                Some(other) if other.tier != rule.tier => missing(at("overrides"), over, "rule-of-tier"),
                Some(_) => {}
            }
        }
    }
    for stream in &program.streams {
        for container in &stream.containers {
            for zone in container.zones.iter().filter(|z| program.zones.iter().all(|own| &own.id != *z)) {
                missing(Place::of("container", &container.id, "zones"), zone, "zone");
            }
        }
    }
    for zone in &program.zones {
        for stream in zone.streams.iter().filter(|s| program.stream(s).is_none()) {
            missing(Place::of("zone", &zone.id, "streams"), stream, "stream");
        }
    }
    for site in &program.sites {
        for channel in site.channels.iter().filter(|c| program.channel(c).is_none()) {
            missing(Place::of("site", &site.id, "channels"), channel, "channel");
        }
    }
}
