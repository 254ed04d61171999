//! The member towns of the demo county: wholly invented, each a program of its own.
//!
//! Towns of a county share most rules and differ in a few, so each is the county's program with a
//! small file of differences laid over it.

use std::collections::BTreeMap;

use serde::Deserialize;

use crate::condition::Condition;
use crate::program::{Contact, CountsAs, Edition, Program, Rule, Silence, Stream, Verdict, Zone};
use crate::text::Text;

/// How a town differs from the county.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
struct Town {
    id: String,
    name: Text,
    edition: Edition,
    contact: Contact,
    guide_url: String,
    short_url: String,
    zones: Vec<Zone>,
    /// The county's stream id to the town's own stream. A stream of the county that is not named is
    /// not collected here: what the county's rules send there is refused.
    streams: BTreeMap<String, Stream>,
    /// Rules of the county that do not hold here.
    without: Vec<String>,
    /// Rules that replace the county's of the same id, or are added.
    rules: Vec<Rule>,
    silence: Option<Silence>,
    unknown: BTreeMap<String, String>,
    counts_as: Vec<CountsAs>,
    steps: BTreeMap<String, Text>,
}

/// The programs of the demo's four member towns. They are invented like the county, and differ as
/// neighbours do.
#[must_use]
pub fn demo_towns() -> Vec<Program> {
    let towns: Vec<Town> = serde_json::from_str(include_str!("../data/towns.json")).unwrap_or_default();
    let Ok(county) = Program::from_json(crate::demo_json()) else { return Vec::new() };
    towns.into_iter().map(|town| laid_over(&county, town)).collect()
}

fn laid_over(county: &Program, town: Town) -> Program {
    let mut program = county.clone();
    let refuse = town.streams.values().find(|s| s.kind == "refuse").map(|s| s.id.clone());
    program.rules.retain(|r| !town.without.contains(&r.id) && !names_zone(r.when.as_ref()));
    for rule in &mut program.rules {
        let Some(stream) = rule.stream.clone() else { continue };
        match town.streams.get(&stream) {
            Some(own) => rule.stream = Some(own.id.clone()),
            None => {
                rule.verdict = Some(Verdict::No);
                rule.stream.clone_from(&refuse);
                rule.reason = Some("not-collected".to_owned());
                rule.prepare.clear();
                // The county's words speak of its own collection.
                rule.texts.residents = Text::default();
            }
        }
    }
    for rule in town.rules {
        match program.rules.iter_mut().find(|r| r.id == rule.id) {
            Some(known) => *known = rule,
            None => program.rules.push(rule),
        }
    }
    let known: Vec<String> = program.rules.iter().map(|r| r.id.clone()).collect();
    for rule in &mut program.rules {
        rule.overrides.retain(|over| known.contains(over));
    }
    program.streams = county.streams.iter().filter_map(|s| town.streams.get(&s.id).cloned()).collect();
    program.silence = town.silence.unwrap_or(program.silence);
    program.unknown.extend(town.unknown);
    program.counts_as.extend(town.counts_as);
    program.steps.extend(town.steps);
    program.print.indicia.clear();
    program.print.short_url = town.short_url;
    // What the county has printed is no sheet of the town's.
    program.printed.clear();
    Program {
        id: town.id,
        name: town.name,
        edition: town.edition,
        contact: town.contact,
        guide_url: town.guide_url,
        zones: town.zones,
        ..program
    }
}

/// Rules for single zones of the county say nothing about a town.
fn names_zone(condition: Option<&Condition>) -> bool {
    let mut names = false;
    if let Some(condition) = condition {
        condition.for_each_fact(&mut |fact| names |= fact == "zone");
    }
    names
}
