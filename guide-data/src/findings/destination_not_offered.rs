//! An answer sends something to a stream that is not collected in the zone it is asked from.

use std::collections::BTreeSet;

use super::{Finding, Place, Severity, Subject};
use crate::ask::Given;
use crate::domain::Variable;
use crate::fix::Fix;
use crate::guide::Outcome;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let guide = &subject.compiled.guide;
    let Some(zone_at) = guide.variables.iter().position(|v| v.fact == "zone") else { return };
    let mut told: BTreeSet<(String, String, Vec<String>)> = BTreeSet::new();
    for zone in guide.zones.iter().filter(|z| !z.streams.is_empty()) {
        let Some(value) = guide.variables.get(zone_at).and_then(|v: &Variable| v.index_of(&zone.id)) else {
            continue;
        };
        let elsewhere = |o: &Outcome| o.stream.as_ref().is_some_and(|s| !zone.streams.contains(s));
        // Mostly nothing leads elsewhere, and no item need be looked at.
        if !guide.outcomes.iter().any(elsewhere) {
            continue;
        }
        for item in &guide.items {
            for part in &item.subjects {
                let fixed = guide.with_value(part, zone_at, value);
                let Some(mut witness) = guide.likeliest(&item.id, &fixed, &elsewhere) else { continue };
                let outcome = guide.reached(&fixed).into_iter().find(|o| elsewhere(o)).cloned();
                let (stream, rules) =
                    outcome.map(|o| (o.stream.unwrap_or_default(), o.rules)).unwrap_or_default();
                if !told.insert((zone.id.clone(), stream.clone(), rules.clone())) {
                    continue;
                }
                witness.known.insert(0, ("zone".to_owned(), Given::value(&zone.id)));
                witness
                    .answers
                    .insert(0, ("zone".to_owned(), crate::ask::ValueLabel::Value(zone.id.clone())));
                let collect = Fix::Collect { zone: zone.id.clone(), stream: stream.clone() };
                let except = match rules.as_slice() {
                    [rule] => Some(Fix::ExceptZone { rule: rule.clone(), zone: zone.id.clone() }),
                    _ => None,
                };
                let first = rules.first().map_or("", String::as_str);
                found.push(
                    Finding::new(
                        Severity::Error,
                        "destination-not-offered",
                        Place::of("rule", first, "stream"),
                    )
                    .arg("zone", &zone.id)
                    .arg("stream", &stream)
                    .rules(&rules)
                    .witness(Some(witness))
                    .tries(std::iter::once(collect).chain(except)),
                );
            }
        }
    }
}
