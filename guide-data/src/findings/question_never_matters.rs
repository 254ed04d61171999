//! Something is asked about or settled that changes no answer: a fact that an item of the program
//! leaves open, or what a fact that nobody can tell counts as.

use std::collections::BTreeSet;

use super::{Finding, Place, Severity, Subject};
use crate::facts::{FactKind, fact};
use crate::fix::Fix;
use crate::guide::GuideItem;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let guide = &subject.compiled.guide;
    let fact_of = |variable: u16| guide.variables.get(usize::from(variable)).map(|v| v.fact.as_str());
    let tested = |item: &GuideItem| -> BTreeSet<&str> {
        item.subjects.iter().flat_map(|s| &s.open).filter_map(|o| fact_of(o.variable)).collect()
    };
    let mut asked: BTreeSet<&str> = BTreeSet::new();
    let own: std::collections::BTreeMap<&str, _> =
        subject.program.items.iter().map(|i| (i.id.as_str(), i)).collect();
    let too_much: BTreeSet<&str> = subject.compiled.too_much.iter().map(String::as_str).collect();
    for item in &guide.items {
        let tested = tested(item);
        if let Some(own) = own.get(item.id.as_str()).filter(|_| !too_much.contains(item.id.as_str())) {
            for name in own.open.keys().filter(|n| fact(n).is_some() && !tested.contains(n.as_str())) {
                found.push(
                    Finding::new(
                        Severity::Notice,
                        "question-never-matters",
                        Place::of("item", &item.id, name),
                    )
                    .arg("problem", "open")
                    .arg("fact", name),
                );
            }
        }
        asked.extend(tested);
    }
    for (name, value) in &subject.program.unknown {
        let known =
            matches!(fact(name).map(|f| f.kind), Some(FactKind::Choice(v)) if v.contains(&value.as_str()));
        // An item too complex to be worked out may need anything.
        if known && too_much.is_empty() && !asked.contains(name.as_str()) {
            let place = Place::of("program", name, "unknown");
            let remove = Fix::Remove { place: place.clone(), value: value.clone() };
            found.push(
                Finding::new(Severity::Notice, "question-never-matters", place)
                    .arg("problem", "unknown")
                    .arg("fact", name)
                    .fixes([remove]),
            );
        }
    }
}
