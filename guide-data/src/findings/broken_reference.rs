//! Something names an id that nothing has, or a rule lacks the destination its verdict needs.

use std::collections::BTreeSet;

use super::{Finding, Place, Severity, Subject};
use crate::fix::Fix;
use crate::program::Verdict;
use crate::ruleset::is_acknowledged;
use crate::standard::{PREPARATIONS, REASONS};

/// The ids there are of a kind.
type Ids<'a> = BTreeSet<&'a str>;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let program = subject.program;
    let streams: Ids<'_> = program.streams.iter().map(|s| s.id.as_str()).collect();
    let channels: Ids<'_> = program.channels.iter().map(|c| c.id.as_str()).collect();
    let zones: Ids<'_> = program.zones.iter().map(|z| z.id.as_str()).collect();
    let machines: Ids<'_> = program.plant.machines.iter().map(|m| m.id.as_str()).collect();
    let steps: Ids<'_> =
        PREPARATIONS.iter().copied().chain(program.steps.keys().map(String::as_str)).collect();
    let reasons: Ids<'_> = REASONS.iter().copied().collect();
    let items: Ids<'_> = subject.compiled.guide.items.iter().map(|i| i.id.as_str()).collect();
    let mut missing = |place: Place, target: &str, kind: &str, fixes: Vec<Fix>| {
        let rule = (place.kind == "rule").then(|| place.id.clone());
        let finding = Finding::new(Severity::Error, "broken-reference", place)
            .arg("target", target)
            .arg("kind", kind)
            .tries(fixes);
        found.push(match rule {
            Some(rule) => finding.rules(&[rule]),
            None => finding,
        });
    };
    for rule in &program.rules {
        let at = |field: &str| Place::of("rule", &rule.id, field);
        // An exception to a safety rule that leads nowhere is not sent anywhere by a guess.
        let meant = |place: &Place, target: &str, among: &Ids<'_>| {
            if is_acknowledged(rule) {
                Vec::new()
            } else {
                subject.did_you_mean(place, target, among.iter().copied())
            }
        };
        let mut look = |field: &str, target: &str, kind: &str, among: &Ids<'_>, may_go: bool| {
            if among.contains(target) {
                return;
            }
            let place = at(field);
            let mut fixes = meant(&place, target, among);
            if may_go {
                fixes.push(Fix::Remove { place: place.clone(), value: target.to_owned() });
            }
            missing(place, target, kind, fixes);
        };
        if let Some(stream) = &rule.stream {
            look("stream", stream, "stream", &streams, rule.verdict != Some(Verdict::Yes));
        }
        if let Some(channel) = &rule.channel {
            look("channel", channel, "channel", &channels, rule.verdict != Some(Verdict::Elsewhere));
        }
        for channel in rule.also.iter().filter(|c| Some(*c) != rule.channel.as_ref()) {
            look("channel", channel, "channel", &channels, true);
        }
        for stream in &rule.banned_from {
            look("banned-from", stream, "stream", &streams, false);
        }
        for step in &rule.prepare {
            look("prepare", step, "step", &steps, true);
        }
        if let Some(reason) = &rule.reason {
            look("reason", reason, "reason", &reasons, true);
        }
        if let Some(machine) = &rule.machine {
            look("machine", machine, "machine", &machines, true);
        }
        let choose = |place: &Place, among: &Ids<'_>| -> Vec<Fix> {
            let choice = |with: &&str| Fix::Replace {
                place: place.clone(),
                value: String::new(),
                with: (*with).to_owned(),
            };
            if is_acknowledged(rule) { Vec::new() } else { among.iter().map(choice).collect() }
        };
        match rule.verdict {
            Some(Verdict::Yes) if rule.stream.is_none() => {
                let recovered = program.streams.iter().filter(|s| s.kind != "refuse");
                let recovered = recovered.map(|s| s.id.as_str()).collect();
                missing(at("stream"), "", "stream", choose(&at("stream"), &recovered));
            }
            Some(Verdict::Elsewhere) if rule.channel.is_none() => {
                missing(at("channel"), "", "channel", choose(&at("channel"), &channels));
            }
            _ => {}
        }
        for over in &rule.overrides {
            let other = subject.rules.get(over.as_str());
            let kind = match other {
                None => "rule",
                Some(other) if other.tier != rule.tier => "rule-of-tier",
                Some(_) => continue,
            };
            let of_tier = subject.rules.values().filter(|r| r.tier == rule.tier && r.id != rule.id);
            let of_tier = of_tier.map(|r| r.id.as_str());
            // An exception to a safety rule is not let go before one by a guess.
            let mut fixes = if other.is_none() && !is_acknowledged(rule) {
                subject.did_you_mean(&at("overrides"), over, of_tier)
            } else {
                Vec::new()
            };
            fixes.push(Fix::NotBefore { rule: rule.id.clone(), over: over.clone() });
            missing(at("overrides"), over, kind, fixes);
        }
    }
    // A list that names nobody means everybody, so that its last entry is never simply taken out.
    let mut listed = |place: &Place, list: &[String], kind: &str, among: &Ids<'_>, none_is_all: bool| {
        for target in list.iter().filter(|t| !among.contains(t.as_str())) {
            let mut fixes = subject.did_you_mean(place, target, among.iter().copied());
            if !none_is_all || list.iter().any(|t| among.contains(t.as_str())) {
                fixes.push(Fix::Remove { place: place.clone(), value: target.clone() });
            }
            missing(place.clone(), target, kind, fixes);
        }
    };
    for container in program.streams.iter().flat_map(|s| &s.containers) {
        listed(&Place::of("container", &container.id, "zones"), &container.zones, "zone", &zones, true);
    }
    for zone in &program.zones {
        listed(&Place::of("zone", &zone.id, "streams"), &zone.streams, "stream", &streams, true);
    }
    for site in &program.sites {
        listed(&Place::of("site", &site.id, "channels"), &site.channels, "channel", &channels, false);
        listed(&Place::of("site", &site.id, "accepts"), &site.accepts, "item", &items, true);
        listed(&Place::of("site", &site.id, "refuses"), &site.refuses, "item", &items, false);
    }
}
