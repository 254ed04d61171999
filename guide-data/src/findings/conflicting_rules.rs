//! Two rules of one tier both apply to a case and send it to different places.

use std::collections::BTreeSet;

use super::{Finding, Place, Severity, Subject};
use crate::fix::Fix;
use crate::guide::Answered;
use crate::program::{Rule, Tier};
use crate::ruleset::is_acknowledged;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let guide = &subject.compiled.guide;
    let in_circles: BTreeSet<&str> =
        subject.compiled.rules.circles.iter().flatten().map(String::as_str).collect();
    // One finding for each set of rules that disagree: the first item that shows it is enough.
    let mut told: BTreeSet<&[String]> = BTreeSet::new();
    for item in &guide.items {
        for part in &item.subjects {
            for outcome in guide.reached(part) {
                if outcome.verdict != Answered::Undecided || outcome.rules.is_empty() {
                    continue;
                }
                if !told.insert(&outcome.rules) {
                    continue;
                }
                let first = outcome.rules.first().map_or("", String::as_str);
                // In a circle nobody goes first, whatever is added to it.
                let circle = outcome.rules.iter().any(|r| in_circles.contains(r.as_str()));
                let fixes = if circle { Vec::new() } else { winners(subject, &outcome.rules) };
                found.push(
                    Finding::new(Severity::Error, "conflicting-rules", Place::of("rule", first, ""))
                        .rules(&outcome.rules)
                        .arg("item", &item.id)
                        .witness(guide.likeliest(&item.id, part, &|o| o == outcome))
                        .tries(fixes),
                );
            }
        }
    }
}

/// One edit for each place that the rules send to: its first rule goes before all that send
/// elsewhere.
fn winners(subject: &Subject<'_>, ids: &[String]) -> Vec<Fix> {
    let rules: Vec<&Rule> = ids.iter().filter_map(|id| subject.rules.get(id.as_str()).copied()).collect();
    let distinct: BTreeSet<&String> = ids.iter().collect();
    if rules.len() != ids.len() || distinct.len() != ids.len() {
        return Vec::new();
    }
    fn place(rule: &Rule) -> (Option<crate::program::Verdict>, Option<&str>, Option<&str>) {
        (rule.verdict, rule.stream.as_deref(), rule.channel.as_deref())
    }
    let mut seen = Vec::new();
    let mut fixes = Vec::new();
    for rule in &rules {
        if seen.contains(&place(rule)) {
            continue;
        }
        seen.push(place(rule));
        // That an exception to a safety rule wins is for its person to write, not to be offered.
        if rule.tier == Tier::Safety && is_acknowledged(rule) {
            continue;
        }
        let over = rules.iter().filter(|r| place(r) != place(rule)).map(|r| r.id.clone()).collect();
        fixes.push(Fix::GoBefore { rule: rule.id.clone(), over });
    }
    fixes
}
