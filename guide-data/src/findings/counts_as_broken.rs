//! "These values count as that one" cannot be followed: a fact or value that does not exist, a
//! value that counts as two, as itself, or as one that itself counts as another; or a danger.

use std::collections::BTreeMap;

use super::{Finding, Place, Severity, Subject};
use crate::facts::{FACTS, FactKind, fact};
use crate::fix::Fix;
use crate::resolve::NEVER_COUNT_AS;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let entries = &subject.program.counts_as;
    // Which values of a fact count as another, and as which.
    let mut targets: BTreeMap<(&str, &str), Vec<&str>> = BTreeMap::new();
    for entry in entries {
        for value in &entry.these {
            targets.entry((&entry.fact, value)).or_default().push(&entry.count_as);
        }
    }
    for entry in entries {
        let place = || Place::of("program", &entry.fact, "counts-as");
        let drop = || Fix::DropCounting { fact: entry.fact.clone(), target: entry.count_as.clone() };
        let mut tell = |problem: &str, value: &str, fixes: Vec<Fix>| {
            found.push(
                Finding::new(Severity::Error, "counts-as-broken", place())
                    .arg("problem", problem)
                    .arg("fact", &entry.fact)
                    .arg("value", value)
                    .tries(fixes),
            );
        };
        let listed = |kind: FactKind| matches!(kind, FactKind::Choice(_));
        let Some(values) = fact(&entry.fact).filter(|f| listed(f.kind)).and_then(|f| match f.kind {
            FactKind::Choice(values) => Some(values),
            _ => None,
        }) else {
            // That a danger counts as something else is never what was meant.
            let among = FACTS.iter().filter(|f| listed(f.kind) && !NEVER_COUNT_AS.contains(&f.id));
            let mut fixes = subject.did_you_mean(&place(), &entry.fact, among.map(|f| f.id));
            fixes.push(drop());
            tell(if fact(&entry.fact).is_some() { "unlisted-fact" } else { "unknown-fact" }, "", fixes);
            continue;
        };
        if NEVER_COUNT_AS.contains(&entry.fact.as_str()) {
            tell("danger", "", vec![drop()]);
            continue;
        }
        let target = entry.count_as.as_str();
        if !values.contains(&target) {
            let mut fixes = subject.did_you_mean(&place(), target, values.iter().copied());
            fixes.push(drop());
            tell("unknown-value", target, fixes);
        }
        if entry.these.is_empty() {
            tell("nothing", target, vec![drop()]);
        }
        for value in &entry.these {
            let remove = || Fix::Remove { place: place(), value: value.clone() };
            if !values.contains(&value.as_str()) {
                let mut fixes = subject.did_you_mean(&place(), value, values.iter().copied());
                fixes.push(remove());
                tell("unknown-value", value, fixes);
            } else if value == target {
                tell("itself", value, vec![remove()]);
            } else if targets.get(&(entry.fact.as_str(), value)).is_some_and(|t| t.len() > 1) {
                tell("twice", value, vec![remove(), drop()]);
            }
        }
        if let Some(further) = targets.get(&(entry.fact.as_str(), target))
            && !entry.these.iter().any(|v| v == target)
        {
            let back = further.iter().any(|f| entry.these.iter().any(|v| v == f));
            let keep = Fix::Remove { place: place(), value: target.to_owned() };
            tell(if back { "circle" } else { "chain" }, target, vec![drop(), keep]);
        }
    }
}
