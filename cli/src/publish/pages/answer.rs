//! What is advised about an item: what it depends on, and the answers.

use guide_data::{Advice, Answer, Answered, Branch, Given, Outcome};
use locales::t;
use maud::{Markup, html};

use super::{Book, nothing};

/// What is settled on the way to an answer.
#[derive(Debug, Clone, Default)]
pub(super) struct Path {
    /// Whether the advice stands below a heading of its own, that of its stretch of days: headings skip no level.
    headed: bool,
    zone: Option<String>,
    dwelling: Option<String>,
}

impl Path {
    /// Nothing is settled yet; `headed` says whether a stretch's heading stands above.
    pub(super) fn below(headed: bool) -> Self {
        Self { headed, ..Self::default() }
    }

    /// One step further: what a branch with a single value settles.
    fn with(&self, fact: &str, branch: &Branch) -> Self {
        let mut path = self.clone();
        if let ([Given::Value(value)], false) = (branch.given.as_slice(), branch.cannot_tell) {
            match fact {
                "zone" => path.zone = Some(value.clone()),
                "dwelling" => path.dwelling = Some(value.clone()),
                _ => {}
            }
        }
        path
    }
}

impl Book<'_> {
    pub(super) fn advice(&self, advice: &Advice, path: &Path) -> Markup {
        let (fact, branches) = match advice {
            Advice::Answer(answer) => return self.answer(answer, path),
            Advice::Depends { fact, branches } => (fact, branches),
        };
        html! {
            div.depends data-fact=(fact) {
                p.question { (self.words.say(&format!("ask-{fact}"))) }
                dl {
                    @for branch in branches {
                        dt data-given=(given(branch)) { (self.values(fact, branch)) }
                        dd { (self.advice(&branch.advice, &path.with(fact, branch))) }
                    }
                }
            }
        }
    }

    /// The values that lead to the same: "1 or 2, or you cannot tell".
    fn values(&self, fact: &str, branch: &Branch) -> String {
        let m = self.messages;
        let mut values: Vec<String> = branch.labels.iter().map(|l| self.words.value(fact, l)).collect();
        if branch.cannot_tell {
            values.push(t!(m, "cannot-tell"));
        }
        m.list_or(&values)
    }

    fn answer(&self, answer: &Answer, path: &Path) -> Markup {
        let nothing = Outcome::default();
        let whole = answer.whole().unwrap_or(&nothing);
        html! {
            div.answer {
                (self.outcome(whole, path))
                @for part in answer.parts_apart() {
                    @let id = part.part.as_deref().unwrap_or_default();
                    section.part data-part=(id) {
                        @let name = self.words.say(&format!("part-{id}"));
                        @if path.headed { h4 { (name) } } @else { h3 { (name) } }
                        (self.outcome(&part.outcome, path))
                    }
                }
            }
        }
    }

    /// Verdict and place in a line: "Yes, Blue recycling cart".
    pub(super) fn short(&self, outcome: &Outcome, path: Option<&Path>) -> String {
        let verdict = if outcome.closed_list {
            t!(self.messages, "verdict-closed")
        } else {
            self.words.say(&format!("verdict-{}", outcome.verdict.code()))
        };
        match self.destination(outcome, path) {
            Some(place) => t!(self.messages, "compare-answer", verdict = verdict, place = place),
            None => verdict,
        }
    }

    fn destination(&self, outcome: &Outcome, path: Option<&Path>) -> Option<String> {
        let (zone, dwelling) = path.map_or((None, None), |p| (p.zone.as_deref(), p.dwelling.as_deref()));
        self.words.destination_at(self.guide, outcome, zone, dwelling)
    }

    fn outcome(&self, outcome: &Outcome, path: &Path) -> Markup {
        let m = self.messages;
        let code = outcome.verdict.code();
        let caution = outcome.hazard.as_ref().map(|class| self.words.say(&format!("caution-{class}")));
        let mut channels: Vec<&String> = outcome.channel.iter().collect();
        channels.extend(outcome.also.iter().filter(|c| outcome.channel.as_ref() != Some(*c)));
        let asks = matches!(outcome.verdict, Answered::Unlisted | Answered::Undecided) || outcome.closed_list;
        html! {
            p class={ "verdict " (code) } data-verdict=(code) data-stream=[outcome.stream.as_deref()]
                data-channel=[outcome.channel.as_deref()] { (self.short(outcome, Some(path))) }
            @if outcome.temporary { p.temporary { (t!(m, "temporary-order")) } }
            @for ban in self.words.banned(outcome) { p.banned { (ban) } }
            @if let Some(caution) = caution {
                p.caution { strong { (t!(m, "caution-title")) } " " (caution) }
            }
            @if !outcome.steps.is_empty() {
                p.label { (t!(m, "prepare-title")) }
                ol.prepare { @for step in &outcome.steps { li data-step=(step) { (self.words.step(step)) } } }
            }
            @if !channels.is_empty() {
                @if outcome.channel.is_none() { p.label { (t!(m, "also-title")) } }
                ul.to {
                    @for channel in channels {
                        li { a href={ "places.html#" (channel) } { (self.words.named("channel", channel)) } }
                    }
                }
            }
            @if let Some(reason) = self.words.reason(outcome) {
                p.why { span.label { (t!(m, "why-title")) } " " (reason) }
            }
            @if asks { (self.ask()) } @else { (nothing()) }
        }
    }
}

/// What a branch was asked with, for tests and for whoever reads pages by program.
fn given(branch: &Branch) -> String {
    let one = |given: &Given| match given {
        Given::Value(value) => value.clone(),
        Given::Interval(interval) => format!("#{interval}"),
        Given::Stated(measure) => measure.clone(),
        Given::Day(day) => day.to_string(),
        Given::CannotTell => "?".to_owned(),
    };
    let mut all: Vec<String> = branch.given.iter().map(one).collect();
    if branch.cannot_tell {
        all.push("?".to_owned());
    }
    all.join(" ")
}
