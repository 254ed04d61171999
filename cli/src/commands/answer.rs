//! `lidleaf answer`: one item, as a resident would be answered.

use std::path::Path;

use chrono::NaiveDate;
use guide_data::{
    Answer, Ends, FACTS, Fact, FactKind, Given, Guide, Known, Measure, PartAnswer, Question, SearchIndex,
    Step, ValueLabel, fact, fold, nearest,
};
use locales::{DateStyle, t};
use serde_json::{Value, json};
use unicode_normalization::UnicodeNormalization;

use crate::exit::Exit;
use crate::files;
use crate::problem::{Outcome, Problem};
use crate::publish::language_pack;
use crate::run::{Report, Voice, pretty};
use locales::Words;

/// What is asked about.
pub(crate) struct AnswerAsked<'a> {
    /// An item's id, or a name.
    pub(crate) item: &'a str,
    /// What is known: fact and value, as typed.
    pub(crate) facts: &'a [(String, String)],
    pub(crate) day: NaiveDate,
}

pub(crate) fn answer(
    program: &Path,
    catalog: Option<&Path>,
    asked: &AnswerAsked<'_>,
    voice: &Voice,
) -> Outcome<Report> {
    let program = files::program(program)?;
    let catalog = files::catalog(catalog)?;
    let guide = guide_data::check(&program, &catalog).guide;
    let messages = super::messages_for(&program, voice);
    let pack = language_pack(&program, &catalog, &voice.messages.lang().tag());
    let words = Words { messages: &messages, pack: &pack };
    let unknown = || Problem::new(Exit::NotFound, "cli-unknown-item").with("item", asked.item);
    let item = find(&guide, words, asked.item).ok_or_else(unknown)?;
    let mut known = Known::default().with("day", Given::Day(asked.day));
    for (name, value) in asked.facts {
        let (name, given) = given(&guide, name, value)?;
        known.give(&name, given);
    }
    let step = guide.next(item, &known).ok_or_else(unknown)?;
    let told = Told { guide: &guide, words, day: asked.day, known: &known, item };
    let text = if voice.json { pretty(&told.json(&step)) } else { told.human(&step) };
    Ok(Report::done(text))
}

/// The item of that id, or the one whose name matches best.
fn find(guide: &Guide, words: Words<'_>, typed: &str) -> Option<usize> {
    if let Some(item) = guide.item_index(typed.trim()) {
        return Some(item);
    }
    let folded = |text: &str| fold(&text.nfkd().collect::<String>());
    let entries = guide.items.iter().enumerate().flat_map(|(at, item)| {
        let names = words.pack.names.get(&item.id).map(Vec::as_slice).unwrap_or_default();
        names.iter().enumerate().map(move |(nth, name)| (at, folded(name), nth == 0, item.common))
    });
    SearchIndex::build(entries).find(&folded(typed), 1).first().map(|hit| hit.item)
}

/// Reads what was typed for a fact.
fn given(guide: &Guide, name: &str, typed: &str) -> Outcome<(String, Given)> {
    let Some(known) = fact(name) else {
        let all: Vec<&str> = FACTS.iter().map(|fact| fact.id).collect();
        return Err(Problem::new(Exit::NotFound, "cli-unknown-fact")
            .with("fact", name)
            .with("known", all.join(", ")));
    };
    if typed == "?" {
        return Ok((name.to_owned(), Given::CannotTell));
    }
    let found = match known.kind {
        FactKind::Measure(dimension) => {
            // "<2 in" and ">2 in" name what lies next to a threshold; normalised units are so small that
            // one of them more or less is never another threshold.
            let (words, beside) = match (typed.strip_prefix('<'), typed.strip_prefix('>')) {
                (Some(words), _) => (words, -1),
                (_, Some(words)) => (words, 1),
                (None, None) => (typed, 0),
            };
            match Measure::parse(words, dimension) {
                Ok(measure) => interval(guide, known, measure.value.saturating_add(beside)),
                Err(_) => {
                    return Err(Problem::new(Exit::NotFound, "cli-unknown-measure")
                        .with("fact", known.id)
                        .with("value", typed)
                        .with("known", examples(dimension)));
                }
            }
        }
        // A leap year has every day of the year there is.
        FactKind::YearDay => match format!("2024-{}", typed.trim()).parse::<NaiveDate>() {
            Ok(day) => Given::Day(day),
            Err(_) => return Err(refused(known, typed, "12-26".to_owned())),
        },
        FactKind::Day => match typed.parse::<NaiveDate>() {
            Ok(day) => Given::Day(day),
            Err(_) => return Err(Problem::usage("cli-usage-date").with("word", typed)),
        },
        FactKind::Choice(_) | FactKind::Id(_) => {
            let values =
                variable(guide, known).map(|variable| variable.values.as_slice()).unwrap_or_default();
            if !values.iter().any(|value| value == typed) {
                let all = values.join(", ");
                return Err(match known.id {
                    "zone" => Problem::new(Exit::NotFound, "cli-unknown-zone")
                        .with("zone", typed)
                        .with("known", all),
                    _ => refused(known, typed, all),
                });
            }
            Given::value(typed)
        }
    };
    Ok((name.to_owned(), found))
}

fn refused(fact: &Fact, typed: &str, known: String) -> Problem {
    Problem::new(Exit::NotFound, "cli-unknown-value")
        .with("fact", fact.id)
        .with("value", typed)
        .with("known", known)
}

/// Examples of what a measure's value may look like; units are written alike in every language.
fn examples(dimension: guide_data::Dimension) -> String {
    match dimension {
        guide_data::Dimension::Length => "2 in, 5 cm",
        guide_data::Dimension::Volume => "1 gal, 500 mL",
        guide_data::Dimension::Mass => "10 lb, 5 kg",
        guide_data::Dimension::Count => "3",
    }
    .to_owned()
}

fn variable<'g>(guide: &'g Guide, fact: &Fact) -> Option<&'g guide_data::Variable> {
    guide.variables.iter().find(|variable| variable.fact == fact.id)
}

fn interval(guide: &Guide, fact: &Fact, value: i64) -> Given {
    Given::Interval(variable(guide, fact).map_or(0, |variable| variable.interval_of(value)))
}

/// A step to be put into words.
struct Told<'a> {
    guide: &'a Guide,
    words: Words<'a>,
    day: NaiveDate,
    known: &'a Known,
    item: usize,
}

impl Told<'_> {
    fn id(&self) -> &str {
        self.guide.items.get(self.item).map_or("", |item| item.id.as_str())
    }

    fn human(&self, step: &Step) -> String {
        let mut lines = Vec::new();
        match step {
            Step::Ask(question) => {
                lines.push(self.words.item(self.id()));
                lines.push(self.words.say(&format!("ask-{}", question.fact)));
                let messages = self.words.messages;
                for choice in &question.options {
                    let option = option(&question.fact, &choice.label, &choice.given);
                    let value = self.words.value(&question.fact, &choice.label);
                    lines.push(format!(
                        "  {}",
                        t!(messages, "cli-question-option", option = option, value = value)
                    ));
                }
                let option = format!("--fact {}=?", question.fact);
                let value = t!(messages, "cli-question-cannot-tell");
                lines.push(format!(
                    "  {}",
                    t!(messages, "cli-question-option", option = option, value = value)
                ));
            }
            Step::Answer(answer) => {
                for part in &answer.parts {
                    self.part(answer, part, &mut lines);
                }
                if !answer.assumed.is_empty() {
                    let facts: Vec<String> = answer
                        .assumed
                        .iter()
                        .map(|(fact, label)| self.words.fact_value(fact, label))
                        .collect();
                    let facts = self.words.messages.list_and(&facts);
                    lines.push(t!(self.words.messages, "cli-answer-assumed", facts = facts));
                }
                let day = self.words.messages.date(self.day, DateStyle::Long);
                lines.push(t!(self.words.messages, "cli-answer-day", day = day));
            }
        }
        lines.join("\n") + "\n"
    }

    fn part(&self, answer: &Answer, part: &PartAnswer, lines: &mut Vec<String>) {
        let (words, messages, said) = (self.words, self.words.messages, &part.outcome);
        let verdict = words.say(&format!("verdict-{}", said.verdict.code()));
        let subject = words.subject(&answer.item, part.part.as_deref());
        lines.push(t!(messages, "fact-value", fact = subject, value = verdict));
        let mut tell = |line: String| lines.push(format!("  {line}"));
        if let Some(class) = &said.hazard {
            let caution = words.say(&format!("caution-{class}"));
            tell(t!(messages, "cli-answer-caution", caution = caution));
        }
        if let Some(place) = self.place(said) {
            tell(t!(messages, "cli-answer-where", place = place));
        }
        if !said.also.is_empty() {
            let places: Vec<String> = said.also.iter().map(|id| words.named("channel", id)).collect();
            tell(t!(messages, "cli-answer-also", places = messages.list_and(&places)));
        }
        if !said.steps.is_empty() {
            let steps: Vec<String> = said.steps.iter().map(|step| words.step(step)).collect();
            tell(t!(messages, "cli-answer-prepare", steps = steps.join(" ")));
        }
        if let Some(reason) = words.reason(said) {
            tell(t!(messages, "cli-answer-why", reason = reason));
        }
        for ban in words.banned(said) {
            tell(ban);
        }
        for rule in self.container_rules(said) {
            tell(rule);
        }
        if said.temporary {
            tell(t!(messages, "cli-answer-temporary"));
        }
        if let Some(site) = said.channel.as_ref().and_then(|channel| self.site(channel)) {
            let name = words.named("site", &site.id);
            tell(t!(messages, "cli-answer-site", site = name, address = site.address.as_str()));
        }
        if !said.rules.is_empty() {
            tell(t!(messages, "cli-answer-rules", rules = said.rules.join(", ")));
        }
    }

    /// The destination; for a stream with the container that stands at home.
    fn place(&self, said: &guide_data::Outcome) -> Option<String> {
        let name = self.words.destination(said)?;
        let Some(stream) = said.stream.as_deref() else { return Some(name) };
        let containers: Vec<String> = self
            .guide
            .containers(stream, self.zone(), self.dwelling())
            .iter()
            .map(|container| self.words.named("container", &container.id))
            .collect();
        if containers.is_empty() {
            return Some(name);
        }
        let container = self.words.messages.list_or(&containers);
        Some(t!(self.words.messages, "fact-value", fact = name, value = container))
    }

    /// The rules of the container an answer names, where there is one.
    fn container_rules(&self, said: &guide_data::Outcome) -> Vec<String> {
        let Some(stream) = said.stream.as_deref() else { return Vec::new() };
        match self.guide.containers(stream, self.zone(), self.dwelling()).as_slice() {
            [only] => only
                .rules
                .iter()
                .map(|(kind, limit)| self.words.container_rule(&only.id, kind, limit.as_deref()))
                .collect(),
            _ => Vec::new(),
        }
    }

    fn zone(&self) -> Option<&str> {
        match self.known.get("zone") {
            Some(Given::Value(zone)) => Some(zone),
            _ => None,
        }
    }

    fn dwelling(&self) -> Option<&str> {
        match self.known.get("dwelling") {
            Some(Given::Value(dwelling)) => Some(dwelling),
            _ => None,
        }
    }

    /// The nearest site of a channel that takes the item: from the middle of the zone, where that
    /// is known.
    fn site(&self, channel: &str) -> Option<&guide_data::GuideSite> {
        let zone = self.zone().and_then(|id| self.guide.zones.iter().find(|zone| zone.id == id));
        let from = zone.and_then(|zone| zone.centre);
        nearest(self.guide, channel, Some(self.id()), from)
            .first()
            .and_then(|near| self.guide.sites.get(near.site))
    }

    fn json(&self, step: &Step) -> Value {
        let (words, id) = (self.words, self.id());
        let head = json!({
            "format": "lidleaf-answer",
            "version": 1,
            "item": id,
            "name": words.item(id),
            "day": self.day.to_string(),
            "known": self.known,
        });
        let rest = match step {
            Step::Ask(question) => json!({ "question": self.question(question) }),
            Step::Answer(answer) => json!({ "answer": answer, "words": self.spoken(answer) }),
        };
        merged(head, rest)
    }

    fn question(&self, question: &Question) -> Value {
        let options: Vec<Value> = question
            .options
            .iter()
            .map(|choice| {
                json!({
                    "option": option(&question.fact, &choice.label, &choice.given),
                    "label": choice.label,
                    "words": self.words.value(&question.fact, &choice.label),
                })
            })
            .collect();
        json!({
            "fact": question.fact,
            "words": self.words.say(&format!("ask-{}", question.fact)),
            "options": options,
            "at-most": question.at_most,
        })
    }

    fn spoken(&self, answer: &Answer) -> Vec<Value> {
        answer
            .parts
            .iter()
            .map(|part| {
                let said = &part.outcome;
                json!({
                    "name": self.words.subject(&answer.item, part.part.as_deref()),
                    "verdict": self.words.say(&format!("verdict-{}", said.verdict.code())),
                    "place": self.place(said),
                    "caution": said.hazard.as_ref().map(|class| self.words.say(&format!("caution-{class}"))),
                    "steps": said.steps.iter().map(|step| self.words.step(step)).collect::<Vec<_>>(),
                    "reason": self.words.reason(said),
                    "banned": self.words.banned(said),
                    "container-rules": self.container_rules(said),
                    "site": said.channel.as_ref().and_then(|channel| self.site(channel)).map(|site| &site.id),
                })
            })
            .collect()
    }
}

/// The option that answers a question so.
fn option(fact: &str, label: &ValueLabel, given: &Given) -> String {
    let value = match (given, label) {
        (Given::Interval(_), ValueLabel::Range(Ends { at_least: Some(inside), .. })) => inside.clone(),
        (Given::Interval(_), ValueLabel::Range(Ends { at_most: Some(inside), .. })) => inside.clone(),
        (Given::Interval(_), ValueLabel::Range(Ends { over: Some(below), .. })) => format!(">{below}"),
        (Given::Interval(_), ValueLabel::Range(Ends { under: Some(above), .. })) => format!("<{above}"),
        (_, ValueLabel::Value(value)) => value.clone(),
        // A range without ends is the only one, and the only one is not asked for.
        (_, ValueLabel::Range(_)) => String::new(),
    };
    // Quoted wherever a shell would read more into it than a word.
    let plain = value.chars().all(|c| c.is_alphanumeric() || c == '-' || c == '.');
    if plain { format!("--fact {fact}={value}") } else { format!("--fact \"{fact}={value}\"") }
}

fn merged(head: Value, rest: Value) -> Value {
    match (head, rest) {
        (Value::Object(mut head), Value::Object(rest)) => {
            head.extend(rest);
            Value::Object(head)
        }
        (head, _) => head,
    }
}
