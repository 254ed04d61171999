//! A hazard class has no safe channel, or an authored rule would send it somewhere unsafe.

use std::collections::{BTreeMap, BTreeSet};

use super::{Finding, Place, Severity, Subject};
use crate::facts::HAZARDS;
use crate::fix::Fix;
use crate::guide::{Answered, GuideItem, Outcome};
use crate::program::{Channel, Tier};
use crate::ruleset::{is_acknowledged, safe_classes};

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    routes(subject, found);
    let items: BTreeMap<&str, &GuideItem> =
        subject.compiled.guide.items.iter().map(|i| (i.id.as_str(), i)).collect();
    for rule in subject.program.rules.iter().filter(|r| r.verdict.is_some()) {
        let classes = named_hazards(subject, &items, rule);
        if is_acknowledged(rule) {
            if rule.tier == Tier::Safety {
                let by = rule.acknowledgement.as_ref().map_or("", |a| a.by.as_str());
                found.push(
                    Finding::new(Severity::Warning, "hazard-acknowledged", Place::of("rule", &rule.id, ""))
                        .arg("by", by)
                        .rules(std::slice::from_ref(&rule.id))
                        .tries([Fix::RemoveRule { rule: rule.id.clone() }]),
                );
            }
            continue;
        }
        let safe = safe_classes(subject.program, rule);
        for class in classes.iter().filter(|c| !safe.contains(c)) {
            let finding = Finding::new(Severity::Error, "hazard-not-safe", Place::of("rule", &rule.id, ""))
                .arg("class", class)
                .arg("problem", "rule")
                .rules(std::slice::from_ref(&rule.id));
            // A channel that takes all the rule is about, so that one edit is enough.
            let takes = |c: &&Channel| classes.iter().all(|class| c.safe_for.contains(class));
            let send = subject
                .program
                .channels
                .iter()
                .filter(takes)
                .map(|c| Fix::SendTo { rule: rule.id.clone(), channel: c.id.clone() });
            found.push(finding.witness(witness(subject, class)).tries(send));
        }
    }
}

/// Where the program sends each class that occurs in its catalog.
fn routes(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    for class in HAZARDS.iter().skip(1) {
        let Some(case) = witness(subject, class) else { continue };
        let finding = |problem: &str, channel: &str| {
            Finding::new(Severity::Error, "hazard-not-safe", Place::of("hazard", class, "channel"))
                .arg("class", class)
                .arg("channel", channel)
                .arg("problem", problem)
                .fixes(safe_routes(subject, class))
        };
        let route = subject.program.hazards.get(*class).map_or("", |h| h.channel.as_str());
        match subject.program.channel(route) {
            None if route.is_empty() => found.push(finding("no-channel", "").witness(Some(case))),
            None => found.push(finding("unknown-channel", route).witness(Some(case))),
            Some(channel) if !channel.safe_for.iter().any(|s| s == class) => {
                found.push(finding("channel-does-not-take-it", route).witness(Some(case)));
            }
            Some(_) => {}
        }
    }
}

/// The channels that are marked safe for a class already: to mark one is nobody's guess.
fn safe_routes(subject: &Subject<'_>, class: &str) -> Vec<Fix> {
    let mut seen = BTreeSet::new();
    subject
        .program
        .channels
        .iter()
        .filter(|c| seen.insert(c.id.as_str()) && c.safe_for.iter().any(|s| s == class))
        .map(|c| Fix::Route { class: class.to_owned(), channel: c.id.clone() })
        .collect()
}

/// A case of the class among the catalog's items.
fn witness(subject: &Subject<'_>, class: &str) -> Option<crate::paths::Witness> {
    let guide = &subject.compiled.guide;
    let of_class = |o: &Outcome| o.hazard.as_deref() == Some(class);
    guide
        .items
        .iter()
        .flat_map(|item| item.subjects.iter().map(move |part| (item, part)))
        .find_map(|(item, part)| guide.likeliest(&item.id, part, &of_class))
}

/// The hazard classes that a rule of the safety tier claims to decide about, from the cases in
/// which it applies beside a class.
fn named_hazards(
    subject: &Subject<'_>,
    by_id: &BTreeMap<&str, &GuideItem>,
    rule: &crate::program::Rule,
) -> Vec<String> {
    let mut classes: Vec<String> = Vec::new();
    if rule.tier != Tier::Safety {
        return classes;
    }
    let Some(when) = &rule.when else { return HAZARDS.iter().skip(1).map(|&h| h.to_owned()).collect() };
    positive_values(when, "hazard", &mut classes);
    if mentions_battery(when) {
        classes.push("battery-lithium".to_owned());
    }
    // A rule that names items claims whatever those items can be.
    let mut items = Vec::new();
    positive_values(when, "item", &mut items);
    let guide = &subject.compiled.guide;
    for item in items.iter().filter_map(|id| by_id.get(id.as_str())) {
        for outcome in item.subjects.iter().flat_map(|s| guide.reached(s)) {
            let beaten = outcome.rules.first().is_some_and(|r| r.starts_with("safety."));
            if beaten && outcome.verdict == Answered::Elsewhere {
                classes.extend(outcome.hazard.clone());
            }
        }
    }
    classes.retain(|c| c != "none");
    classes.sort();
    classes.dedup();
    classes
}

fn positive_values(condition: &crate::condition::Condition, fact: &str, values: &mut Vec<String>) {
    use crate::condition::Condition;
    match condition {
        Condition::All(parts) | Condition::Any(parts) => {
            parts.iter().for_each(|p| positive_values(p, fact, values));
        }
        Condition::Is(one) if one.fact == fact => values.extend(one.of.iter().cloned()),
        Condition::Is(_) | Condition::Not(_) | Condition::Measure(_) => {}
    }
}

fn mentions_battery(condition: &crate::condition::Condition) -> bool {
    let mut values = Vec::new();
    positive_values(condition, "battery", &mut values);
    values.iter().any(|v| v == "yes")
}
