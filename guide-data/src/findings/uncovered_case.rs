//! No rule decides a case, and the program does not say what silence means.

use std::collections::BTreeSet;

use super::{Finding, Place, Severity, Subject};
use crate::fix::Fix;
use crate::guide::{Answered, GuideItem, Outcome};
use crate::program::{Silence, Tier, Verdict};

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    let guide = &subject.compiled.guide;
    let uncovered = |o: &Outcome| o.verdict == Answered::Undecided && o.rules.is_empty();
    let too_much: BTreeSet<&str> = subject.compiled.too_much.iter().map(String::as_str).collect();
    let places = Places::new(subject);
    for item in &guide.items {
        if too_much.contains(item.id.as_str()) {
            continue;
        }
        for part in &item.subjects {
            if let Some(witness) = guide.likeliest(&item.id, part, &uncovered) {
                found.push(
                    Finding::new(Severity::Error, "uncovered-case", Place::of("item", &item.id, ""))
                        .arg("part", part.part.as_deref().unwrap_or_default())
                        .witness(Some(witness))
                        .fixes(places.drafts(subject, item).into_iter().chain(places.silences(true))),
                );
            }
        }
    }
}

/// Where a case that no rule decides can be sent without a new error.
pub(super) struct Places<'a> {
    /// Streams that are collected everywhere and from which nothing is banned.
    streams: Vec<(&'a str, Verdict)>,
    /// The refuse stream is one of them.
    refuse: bool,
}

impl<'a> Places<'a> {
    pub(super) fn new(subject: &Subject<'a>) -> Self {
        let program = subject.program;
        let banned: BTreeSet<&String> = program.rules.iter().flat_map(|r| &r.banned_from).collect();
        let everywhere =
            |id: &String| program.zones.iter().all(|z| z.streams.is_empty() || z.streams.contains(id));
        let once = |id: &String| program.streams.iter().filter(|s| s.id == *id).count() == 1;
        let usable =
            |id: &String| !id.trim().is_empty() && once(id) && everywhere(id) && !banned.contains(id);
        let streams = program
            .streams
            .iter()
            .filter(|s| usable(&s.id))
            .map(|s| (s.id.as_str(), if s.kind == "refuse" { Verdict::No } else { Verdict::Yes }));
        let streams: Vec<(&str, Verdict)> = streams.take(4).collect();
        let refuse = program.refuse_stream().is_some_and(|r| usable(&r.to_owned()));
        Self { streams, refuse }
    }

    /// Drafts of a rule of the last tier for what no rule says of an item: one for each stream.
    /// None when the last tier already decides something about it, because a rule that names the
    /// item would go before that.
    pub(super) fn drafts(&self, subject: &Subject<'_>, item: &GuideItem) -> Vec<Fix> {
        let guide = &subject.compiled.guide;
        let decided = |o: &Outcome| o.tier == Some(Tier::Default);
        if item.subjects.iter().flat_map(|s| guide.reached(s)).any(decided) {
            return Vec::new();
        }
        let rule = std::iter::once(format!("draft-{}", item.id))
            .chain((2_usize..).map(|n| format!("draft-{}-{n}", item.id)))
            .find(|id| !subject.rules.contains_key(id.as_str()))
            .unwrap_or_default();
        self.streams
            .iter()
            .map(|&(stream, verdict)| Fix::AnswerItem {
                rule: rule.clone(),
                item: item.id.clone(),
                verdict,
                stream: stream.to_owned(),
            })
            .collect()
    }

    /// What silence may be said to mean.
    pub(super) fn silences(&self, ask: bool) -> Vec<Fix> {
        let ask = ask.then_some(Fix::SetSilence { silence: Silence::Ask });
        let closed = self.refuse.then_some(Fix::SetSilence { silence: Silence::Closed });
        ask.into_iter().chain(closed).collect()
    }
}
