//! Fixes: edits of a program that mend a finding, as data, and what applies them.
//!
//! A fix changes one thing and loses nothing else. Where only a coordinator can decide, there is
//! one fix for each way to decide. No fix sends a hazard anywhere but to a channel that is already
//! marked safe for it, and none marks a channel safe. Words live in `locales` under `fix-<code>`.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use crate::condition::{Bounds, Condition};
use crate::domain::{Bound, stated};
use crate::findings::Place;
use crate::program::{Program, Rule, Silence, Tier, Verdict};
use crate::words::text_mut;

/// An edit that mends a finding.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "edit", rename_all = "kebab-case", rename_all_fields = "kebab-case")]
pub enum Fix {
    /// Another id or value in place of one that stands somewhere; an empty one where none stands.
    Replace {
        /// Where it stands.
        place: Place,
        /// What stands there.
        value: String,
        /// What is to stand there.
        with: String,
    },
    /// An id or value is taken out of where it stands.
    Remove {
        /// Where it stands.
        place: Place,
        /// What is taken out.
        value: String,
    },
    /// Another fact in a rule's condition.
    ReplaceFact {
        /// The rule.
        rule: String,
        /// The fact it names.
        fact: String,
        /// The fact it is to name.
        with: String,
    },
    /// Another value of a fact, or another threshold, in a rule's condition.
    ReplaceValue {
        /// The rule.
        rule: String,
        /// The fact.
        fact: String,
        /// The value as it stands there.
        value: String,
        /// What is to stand there.
        with: String,
    },
    /// A value is taken out of a rule's condition that names others beside it.
    RemoveValue {
        /// The rule.
        rule: String,
        /// The fact.
        fact: String,
        /// The value.
        value: String,
    },
    /// Another fact for one of an item's.
    ReplaceItemFact {
        /// The item.
        item: String,
        /// The fact it names.
        fact: String,
        /// The fact it is to name.
        with: String,
    },
    /// A rule is removed.
    RemoveRule {
        /// The rule.
        rule: String,
    },
    /// A rule goes before others of its tier.
    GoBefore {
        /// The rule.
        rule: String,
        /// The rules it is to beat.
        over: Vec<String>,
    },
    /// A rule no longer goes before another.
    NotBefore {
        /// The rule.
        rule: String,
        /// The rule it is not to beat.
        over: String,
    },
    /// What it means that no rule names a case.
    SetSilence {
        /// What it is to mean.
        silence: Silence,
    },
    /// A draft of a rule for what nothing else says of an item. It has no source yet, and a
    /// warning says so until it has one.
    AnswerItem {
        /// The new rule's id.
        rule: String,
        /// The item.
        item: String,
        /// What it says.
        verdict: Verdict,
        /// The stream it sends to.
        stream: String,
    },
    /// A hazard class goes to a channel that is marked safe for it.
    Route {
        /// The class.
        class: String,
        /// The channel.
        channel: String,
    },
    /// A rule sends to a channel, not to where it sends now.
    SendTo {
        /// The rule.
        rule: String,
        /// The channel.
        channel: String,
    },
    /// A stream is collected in a zone.
    Collect {
        /// The zone.
        zone: String,
        /// The stream.
        stream: String,
    },
    /// A rule does not hold in a zone.
    ExceptZone {
        /// The rule.
        rule: String,
        /// The zone.
        zone: String,
    },
    /// Things after the first that have its id get ids of their own.
    OwnIds {
        /// What kind of thing.
        kind: String,
        /// The id they share.
        id: String,
        /// The new ids, in order.
        with: Vec<String>,
    },
    /// Things after the first that are the same in everything are removed.
    RemoveTwins {
        /// What kind of thing.
        kind: String,
        /// The id they share.
        id: String,
    },
    /// A rule's first and last day change places.
    SwapDates {
        /// The rule.
        rule: String,
    },
    /// A rule loses its first or last day, or its season.
    DropDate {
        /// The rule.
        rule: String,
        /// Which: `from`, `until` or `season`.
        field: String,
    },
    /// A site's latitude and longitude change places.
    SwapPosition {
        /// The site.
        site: String,
    },
    /// The program is also published in a language.
    AddLanguage {
        /// The language (BCP 47).
        language: String,
    },
    /// Groups with nothing in them are taken out of a rule's condition.
    RemoveEmpty {
        /// The rule.
        rule: String,
    },
    /// Something that nothing refers to is removed.
    RemoveUnused {
        /// What kind of thing.
        kind: String,
        /// Its id.
        id: String,
    },
    /// Values no longer count as another.
    DropCounting {
        /// The fact.
        fact: String,
        /// What they counted as.
        target: String,
    },
    /// What does not belong is taken out of a text.
    CleanText {
        /// The text's key.
        key: String,
        /// The language.
        language: String,
        /// What is taken out: `markup`, `direction` or `control`.
        problem: String,
    },
}

/// Why a fix could not be applied; the program is then as it was.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FixProblem {
    /// What it would change is no longer there.
    Gone,
    /// What it would add is there already.
    Taken,
}

impl FixProblem {
    /// A stable word for messages and machine output.
    #[must_use]
    pub fn code(self) -> &'static str {
        match self {
            Self::Gone => "gone",
            Self::Taken => "taken",
        }
    }
}

/// Every code a fix can have, with the values its words may use, for the test that all have words.
pub const FIX_CODES: &[(&str, &[&str])] = &[
    ("replace", &["kind", "id", "field", "value", "with"]),
    ("choose", &["kind", "id", "field", "with"]),
    ("remove", &["kind", "id", "field", "value"]),
    ("replace-fact", &["rule", "fact", "with"]),
    ("replace-value", &["rule", "fact", "value", "with"]),
    ("remove-value", &["rule", "fact", "value"]),
    ("replace-item-fact", &["item", "fact", "with"]),
    ("remove-rule", &["rule"]),
    ("go-before", &["rule", "over"]),
    ("not-before", &["rule", "over"]),
    ("silence-undecided", &[]),
    ("silence-ask", &[]),
    ("silence-closed", &[]),
    ("answer-yes", &["rule", "item", "stream"]),
    ("answer-no", &["rule", "item", "stream"]),
    ("route", &["class", "channel"]),
    ("send-to", &["rule", "channel"]),
    ("collect", &["zone", "stream"]),
    ("except-zone", &["rule", "zone"]),
    ("own-ids", &["kind", "id", "with"]),
    ("remove-twins", &["kind", "id"]),
    ("swap-dates", &["rule"]),
    ("drop-from", &["rule"]),
    ("drop-until", &["rule"]),
    ("drop-season", &["rule"]),
    ("swap-position", &["site"]),
    ("add-language", &["language"]),
    ("remove-empty", &["rule"]),
    ("remove-unused", &["kind", "id"]),
    ("drop-counting", &["fact", "value"]),
    ("clean-text", &["key", "language"]),
];

impl Fix {
    /// What it is; a stable word, one of [`FIX_CODES`].
    #[must_use]
    pub fn code(&self) -> &'static str {
        match self {
            Self::Replace { value, .. } if value.is_empty() => "choose",
            Self::Replace { .. } => "replace",
            Self::Remove { .. } => "remove",
            Self::ReplaceFact { .. } => "replace-fact",
            Self::ReplaceValue { .. } => "replace-value",
            Self::RemoveValue { .. } => "remove-value",
            Self::ReplaceItemFact { .. } => "replace-item-fact",
            Self::RemoveRule { .. } => "remove-rule",
            Self::GoBefore { .. } => "go-before",
            Self::NotBefore { .. } => "not-before",
            Self::SetSilence { silence: Silence::Undecided } => "silence-undecided",
            Self::SetSilence { silence: Silence::Ask } => "silence-ask",
            Self::SetSilence { silence: Silence::Closed } => "silence-closed",
            Self::AnswerItem { verdict: Verdict::No, .. } => "answer-no",
            Self::AnswerItem { .. } => "answer-yes",
            Self::Route { .. } => "route",
            Self::SendTo { .. } => "send-to",
            Self::Collect { .. } => "collect",
            Self::ExceptZone { .. } => "except-zone",
            Self::OwnIds { .. } => "own-ids",
            Self::RemoveTwins { .. } => "remove-twins",
            Self::SwapDates { .. } => "swap-dates",
            Self::DropDate { field, .. } if field == "from" => "drop-from",
            Self::DropDate { field, .. } if field == "until" => "drop-until",
            Self::DropDate { .. } => "drop-season",
            Self::SwapPosition { .. } => "swap-position",
            Self::AddLanguage { .. } => "add-language",
            Self::RemoveEmpty { .. } => "remove-empty",
            Self::RemoveUnused { .. } => "remove-unused",
            Self::DropCounting { .. } => "drop-counting",
            Self::CleanText { .. } => "clean-text",
        }
    }

    /// Values for its words, by placeholder.
    #[must_use]
    pub fn args(&self) -> BTreeMap<&'static str, String> {
        let mut args = BTreeMap::new();
        let mut say = |name: &'static str, value: &str| {
            args.insert(name, value.to_owned());
        };
        match self {
            Self::Replace { place, value, with } => {
                say("kind", &place.kind);
                say("id", &place.id);
                say("field", &place.field);
                say("value", value);
                say("with", with);
            }
            Self::Remove { place, value } => {
                say("kind", &place.kind);
                say("id", &place.id);
                say("field", &place.field);
                say("value", value);
            }
            Self::ReplaceFact { rule, fact, with } => {
                say("rule", rule);
                say("fact", fact);
                say("with", with);
            }
            Self::ReplaceValue { rule, fact, value, with } => {
                say("rule", rule);
                say("fact", fact);
                say("value", value);
                say("with", with);
            }
            Self::RemoveValue { rule, fact, value } => {
                say("rule", rule);
                say("fact", fact);
                say("value", value);
            }
            Self::ReplaceItemFact { item, fact, with } => {
                say("item", item);
                say("fact", fact);
                say("with", with);
            }
            Self::RemoveRule { rule }
            | Self::SwapDates { rule }
            | Self::DropDate { rule, .. }
            | Self::RemoveEmpty { rule } => {
                say("rule", rule);
            }
            Self::GoBefore { rule, over } => {
                say("rule", rule);
                say("over", &over.join(", "));
            }
            Self::NotBefore { rule, over } => {
                say("rule", rule);
                say("over", over);
            }
            Self::SetSilence { .. } => {}
            Self::AnswerItem { rule, item, stream, .. } => {
                say("rule", rule);
                say("item", item);
                say("stream", stream);
            }
            Self::Route { class, channel } => {
                say("class", class);
                say("channel", channel);
            }
            Self::SendTo { rule, channel } => {
                say("rule", rule);
                say("channel", channel);
            }
            Self::Collect { zone, stream } => {
                say("zone", zone);
                say("stream", stream);
            }
            Self::ExceptZone { rule, zone } => {
                say("rule", rule);
                say("zone", zone);
            }
            Self::OwnIds { kind, id, with } => {
                say("kind", kind);
                say("id", id);
                say("with", &with.join(", "));
            }
            Self::DropCounting { fact, target } => {
                say("fact", fact);
                say("value", target);
            }
            Self::RemoveTwins { kind, id } | Self::RemoveUnused { kind, id } => {
                say("kind", kind);
                say("id", id);
            }
            Self::SwapPosition { site } => say("site", site),
            Self::AddLanguage { language } => say("language", language),
            Self::CleanText { key, language, .. } => {
                say("key", key);
                say("language", language);
            }
        }
        args
    }
}

impl Program {
    /// Applies a fix.
    ///
    /// # Errors
    /// When the program is no longer the one the fix was made for; it is then left as it was.
    pub fn apply(&mut self, fix: &Fix) -> Result<(), FixProblem> {
        // A fix that fails half way must not leave half of itself behind.
        let mut after = self.clone();
        apply(&mut after, fix)?;
        if after == *self {
            return Err(FixProblem::Gone);
        }
        *self = after;
        Ok(())
    }
}

fn apply(program: &mut Program, fix: &Fix) -> Result<(), FixProblem> {
    match fix {
        Fix::Replace { place, value, with } => put(program, place, value, Some(with)),
        Fix::Remove { place, value } => put(program, place, value, None),
        Fix::ReplaceFact { rule, fact, with } => each_condition(program, rule, &mut |condition| {
            match condition {
                Condition::Is(one) if one.fact == *fact => one.fact.clone_from(with),
                Condition::Measure(bounds) if bounds.fact == *fact => bounds.fact.clone_from(with),
                _ => return false,
            }
            true
        }),
        Fix::ReplaceValue { rule, fact, value, with } => {
            each_condition(program, rule, &mut |condition| match condition {
                Condition::Is(one) if one.fact == *fact => replace_in(&mut one.of, value, Some(with)),
                Condition::Measure(bounds) if bounds.fact == *fact => {
                    replace_bound(bounds, value, Some(with))
                }
                _ => false,
            })
        }
        Fix::RemoveValue { rule, fact, value } => {
            each_condition(program, rule, &mut |condition| match condition {
                Condition::Is(one) if one.fact == *fact => replace_in(&mut one.of, value, None),
                Condition::Measure(bounds) if bounds.fact == *fact => replace_bound(bounds, value, None),
                _ => false,
            })
        }
        Fix::ReplaceItemFact { item, fact, with } => {
            let mut some = false;
            for own in program.items.iter_mut().filter(|i| i.id == *item) {
                some |= rename_key(&mut own.facts, fact, with);
                some |= rename_key(&mut own.open, fact, with);
                for part in &mut own.parts {
                    some |= rename_key(&mut part.facts, fact, with);
                }
            }
            there(some)
        }
        Fix::RemoveRule { rule } => {
            let (gone, left): (Vec<_>, Vec<_>) =
                std::mem::take(&mut program.rules).into_iter().partition(|r| r.id == *rule);
            program.rules = left;
            // What went before it went before what it went before, and still does.
            let below: Vec<&String> = gone.iter().flat_map(|r| &r.overrides).filter(|o| *o != rule).collect();
            for other in program.rules.iter_mut().filter(|r| r.overrides.contains(rule)) {
                other.overrides.retain(|o| o != rule);
                for further in &below {
                    if **further != other.id && !other.overrides.contains(further) {
                        other.overrides.push((*further).clone());
                    }
                }
            }
            there(!gone.is_empty())
        }
        Fix::GoBefore { rule, over } => {
            if over.iter().any(|o| program.rule(o).is_none()) {
                return Err(FixProblem::Gone);
            }
            let first = first_rule(program, rule)?;
            for other in over {
                if !first.overrides.contains(other) {
                    first.overrides.push(other.clone());
                }
            }
            Ok(())
        }
        Fix::NotBefore { rule, over } => {
            there(replace_in(&mut first_rule(program, rule)?.overrides, over, None))
        }
        Fix::SetSilence { silence } => {
            program.silence = *silence;
            Ok(())
        }
        Fix::AnswerItem { rule, item, verdict, stream } => {
            if program.rule(rule).is_some() {
                return Err(FixProblem::Taken);
            }
            if program.stream(stream).is_none() {
                return Err(FixProblem::Gone);
            }
            program.rules.push(Rule {
                id: rule.clone(),
                tier: Tier::Default,
                when: Some(Condition::is("item", &[item])),
                verdict: Some(*verdict),
                stream: Some(stream.clone()),
                ..Rule::default()
            });
            Ok(())
        }
        Fix::Route { class, channel } => {
            let safe = program.channel(channel).is_some_and(|c| c.safe_for.contains(class));
            if safe {
                program.hazards.entry(class.clone()).or_default().channel.clone_from(channel);
            }
            there(safe)
        }
        Fix::SendTo { rule, channel } => {
            there(program.channel(channel).is_some())?;
            let rule = first_rule(program, rule)?;
            rule.verdict = Some(Verdict::Elsewhere);
            rule.stream = None;
            rule.channel = Some(channel.clone());
            Ok(())
        }
        Fix::Collect { zone, stream } => {
            there(program.stream(stream).is_some())?;
            let zone = program.zones.iter_mut().find(|z| z.id == *zone).ok_or(FixProblem::Gone)?;
            if zone.streams.contains(stream) {
                return Err(FixProblem::Taken);
            }
            zone.streams.push(stream.clone());
            Ok(())
        }
        Fix::ExceptZone { rule, zone } => {
            let rule = first_rule(program, rule)?;
            let not_there = Condition::Not(Box::new(Condition::is("zone", &[zone])));
            rule.when = Some(match rule.when.take() {
                None => not_there,
                Some(Condition::All(mut parts)) => {
                    parts.push(not_there);
                    Condition::All(parts)
                }
                Some(other) => Condition::All(vec![other, not_there]),
            });
            Ok(())
        }
        Fix::OwnIds { kind, id, with } => own_ids(program, kind, id, with),
        Fix::RemoveTwins { kind, id } => there(remove_twins(program, kind, id)),
        Fix::SwapDates { rule } => {
            let rule = first_rule(program, rule)?;
            std::mem::swap(&mut rule.from, &mut rule.until);
            Ok(())
        }
        Fix::DropDate { rule, field } => {
            let rule = first_rule(program, rule)?;
            match field.as_str() {
                "from" => rule.from = None,
                "until" => rule.until = None,
                _ => rule.season = None,
            }
            Ok(())
        }
        Fix::SwapPosition { site } => {
            let site = program.sites.iter_mut().find(|s| s.id == *site).ok_or(FixProblem::Gone)?;
            std::mem::swap(&mut site.position.lat, &mut site.position.lon);
            Ok(())
        }
        Fix::AddLanguage { language } => {
            if program.languages.contains(language) {
                return Err(FixProblem::Taken);
            }
            program.languages.insert(0, language.clone());
            Ok(())
        }
        Fix::RemoveEmpty { rule } => {
            let rule = first_rule(program, rule)?;
            // A condition of which nothing is left would hold always: that is never what was meant.
            let when = rule.when.as_ref().and_then(without_empty).ok_or(FixProblem::Gone)?;
            rule.when = Some(when);
            Ok(())
        }
        Fix::RemoveUnused { kind, id } => {
            match kind.as_str() {
                "channel" => program.channels.retain(|c| c.id != *id),
                "step" => {
                    program.steps.remove(id);
                }
                _ => return Err(FixProblem::Gone),
            }
            Ok(())
        }
        Fix::DropCounting { fact, target } => {
            program.counts_as.retain(|e| e.fact != *fact || e.count_as != *target);
            Ok(())
        }
        Fix::CleanText { key, language, problem } => {
            let text = text_mut(program, key).ok_or(FixProblem::Gone)?;
            let words = text.0.get(language).map(|t| cleaned(&t.text, problem)).ok_or(FixProblem::Gone)?;
            text.set(language, &words);
            Ok(())
        }
    }
}

fn stated_mut(bounds: &mut Bounds, bound: Bound) -> &mut Option<String> {
    match bound {
        Bound::AtLeast => &mut bounds.at_least,
        Bound::Over => &mut bounds.over,
        Bound::AtMost => &mut bounds.at_most,
        Bound::Under => &mut bounds.under,
    }
}

/// Puts other words in place of a threshold, or of what is said beside it, or takes them out.
fn replace_bound(bounds: &mut Bounds, value: &str, with: Option<&String>) -> bool {
    let mut some = false;
    for bound in Bound::ALL {
        if stated(bounds, bound) == Some(value) {
            *stated_mut(bounds, bound) = with.cloned();
            some = true;
        }
    }
    for aside in [&mut bounds.like, &mut bounds.per] {
        if aside.as_deref() == Some(value) {
            *aside = with.cloned();
            some = true;
        }
    }
    some
}

fn there(some: bool) -> Result<(), FixProblem> {
    if some { Ok(()) } else { Err(FixProblem::Gone) }
}

fn first_rule<'p>(program: &'p mut Program, id: &str) -> Result<&'p mut Rule, FixProblem> {
    program.rules.iter_mut().find(|r| r.id == id).ok_or(FixProblem::Gone)
}

/// Puts another value in place of one in a list, or takes it out; never makes it stand there twice.
fn replace_in(list: &mut Vec<String>, value: &str, with: Option<&String>) -> bool {
    if !list.iter().any(|own| own == value) {
        return false;
    }
    let mut new: Vec<String> = Vec::with_capacity(list.len());
    for own in list.drain(..) {
        let next = if own == value { with.cloned() } else { Some(own) };
        if let Some(next) = next
            && !new.contains(&next)
        {
            new.push(next);
        }
    }
    *list = new;
    true
}

fn rename_key<V>(map: &mut BTreeMap<String, V>, from: &str, to: &str) -> bool {
    if map.contains_key(to) {
        return false;
    }
    let Some(value) = map.remove(from) else { return false };
    map.insert(to.to_owned(), value);
    true
}

/// Changes the parts of the conditions of a rule; `change` says whether it changed one.
fn each_condition(
    program: &mut Program,
    rule: &str,
    change: &mut dyn FnMut(&mut Condition) -> bool,
) -> Result<(), FixProblem> {
    let mut some = false;
    for rule in program.rules.iter_mut().filter(|r| r.id == rule) {
        if let Some(when) = &mut rule.when {
            walk(when, &mut |c| some |= change(c));
        }
    }
    there(some)
}

fn walk(condition: &mut Condition, visit: &mut dyn FnMut(&mut Condition)) {
    visit(condition);
    match condition {
        Condition::All(parts) | Condition::Any(parts) => parts.iter_mut().for_each(|p| walk(p, visit)),
        Condition::Not(part) => walk(part, visit),
        Condition::Is(_) | Condition::Measure(_) => {}
    }
}

/// A condition without its empty groups; nothing when it has nothing else.
fn without_empty(condition: &Condition) -> Option<Condition> {
    let kept = |parts: &[Condition]| -> Option<Vec<Condition>> {
        let parts: Vec<Condition> = parts.iter().filter_map(without_empty).collect();
        (!parts.is_empty()).then_some(parts)
    };
    match condition {
        Condition::All(parts) => kept(parts).map(Condition::All),
        Condition::Any(parts) => kept(parts).map(Condition::Any),
        Condition::Not(part) => without_empty(part).map(|p| Condition::Not(Box::new(p))),
        Condition::Is(_) | Condition::Measure(_) => Some(condition.clone()),
    }
}

/// A field that holds ids or values.
enum Slot<'p> {
    One(&'p mut String),
    Maybe(&'p mut Option<String>),
    List(&'p mut Vec<String>),
}

impl Slot<'_> {
    fn put(self, value: &str, with: Option<&String>) -> bool {
        match self {
            Self::One(own) => {
                let hit = own == value;
                if hit {
                    *own = with.cloned().unwrap_or_default();
                }
                hit
            }
            Self::Maybe(own) => {
                let hit = own.as_deref().unwrap_or_default() == value;
                if hit {
                    *own = with.cloned();
                }
                hit
            }
            Self::List(own) => replace_in(own, value, with),
        }
    }
}

/// Puts another value in place of one, or takes it out, in every thing of the place's id.
fn put(program: &mut Program, place: &Place, value: &str, with: Option<&String>) -> Result<(), FixProblem> {
    let (id, field) = (place.id.as_str(), place.field.as_str());
    match (place.kind.as_str(), field) {
        ("program", "counts-as") => {
            let mut some = false;
            for entry in program.counts_as.iter_mut().filter(|e| e.fact == id) {
                some |= replace_in(&mut entry.these, value, with);
                if let Some(with) = with {
                    some |= Slot::One(&mut entry.count_as).put(value, Some(with));
                    some |= Slot::One(&mut entry.fact).put(value, Some(with));
                }
            }
            program.counts_as.retain(|e| e.fact != id || !e.these.is_empty());
            return there(some);
        }
        ("program", "unknown") => return there(put_key(&mut program.unknown, id, value, with)),
        ("hazard", "id") => {
            return there(match with {
                Some(with) => rename_key(&mut program.hazards, id, with),
                None => program.hazards.remove(id).is_some(),
            });
        }
        ("item", "category" | "parts") => {
            let mut some = false;
            for item in program.items.iter_mut().filter(|i| i.id == id) {
                if field == "category" {
                    some |= Slot::One(&mut item.category).put(value, with);
                } else {
                    for part in &mut item.parts {
                        some |= with.is_some() && Slot::One(&mut part.id).put(value, with);
                    }
                }
            }
            return there(some);
        }
        ("item", _) => {
            let mut some = false;
            for item in program.items.iter_mut().filter(|i| i.id == id) {
                some |= put_key(&mut item.facts, field, value, with);
                for part in &mut item.parts {
                    some |= put_key(&mut part.facts, field, value, with);
                }
                if let (Some(open), Some(with)) = (item.open.get_mut(field), with) {
                    some |= rename_key(&mut open.among, value, with);
                    for end in [&mut open.from, &mut open.to, &mut open.usual] {
                        some |= end.is_some() && Slot::Maybe(end).put(value, Some(with));
                    }
                }
            }
            return there(some);
        }
        _ => {}
    }
    let mut some = false;
    for slot in slots(program, place) {
        some |= slot.put(value, with);
    }
    there(some)
}

fn put_key(map: &mut BTreeMap<String, String>, key: &str, value: &str, with: Option<&String>) -> bool {
    if map.get(key).is_none_or(|own| own != value) {
        return false;
    }
    match with {
        Some(with) => map.insert(key.to_owned(), with.clone()),
        None => map.remove(key),
    };
    true
}

/// The fields a place means, of every thing of its id.
fn slots<'p>(program: &'p mut Program, place: &Place) -> Vec<Slot<'p>> {
    use Slot::{List, Maybe, One};
    let id = place.id.as_str();
    let field = place.field.as_str();
    match place.kind.as_str() {
        "program" => match field {
            "source-language" => vec![One(&mut program.source_language)],
            "guide-url" => vec![One(&mut program.guide_url)],
            _ => Vec::new(),
        },
        "rule" => program
            .rules
            .iter_mut()
            .filter(|r| r.id == id)
            .flat_map(|rule| match field {
                "stream" => vec![Maybe(&mut rule.stream)],
                // The channel and the others that also take it are edited as one field.
                "channel" => vec![Maybe(&mut rule.channel), List(&mut rule.also)],
                "prepare" => vec![List(&mut rule.prepare)],
                "banned-from" => vec![List(&mut rule.banned_from)],
                "reason" => vec![Maybe(&mut rule.reason)],
                "machine" => vec![Maybe(&mut rule.machine)],
                "overrides" => vec![List(&mut rule.overrides)],
                "season-from" => rule.season.iter_mut().map(|s| One(&mut s.from)).collect(),
                "season-until" => rule.season.iter_mut().map(|s| One(&mut s.until)).collect(),
                _ => Vec::new(),
            })
            .collect(),
        "stream" => match field {
            "kind" => program.streams.iter_mut().filter(|s| s.id == id).map(|s| One(&mut s.kind)).collect(),
            _ => Vec::new(),
        },
        "container" => program
            .streams
            .iter_mut()
            .flat_map(|s| &mut s.containers)
            .filter(|c| c.id == id)
            .flat_map(|container| match field {
                "kind" => vec![One(&mut container.kind)],
                "colour" => vec![One(&mut container.colour)],
                "zones" => vec![List(&mut container.zones)],
                "dwellings" => vec![List(&mut container.dwellings)],
                "rules" => container.rules.iter_mut().map(|r| One(&mut r.kind)).collect(),
                "limit" => container.rules.iter_mut().map(|r| Maybe(&mut r.limit)).collect(),
                _ => Vec::new(),
            })
            .collect(),
        "zone" => program
            .zones
            .iter_mut()
            .filter(|z| z.id == id)
            .flat_map(|zone| match field {
                "streams" => vec![List(&mut zone.streams)],
                "dwelling" => vec![Maybe(&mut zone.dwelling)],
                _ => Vec::new(),
            })
            .collect(),
        "channel" => program
            .channels
            .iter_mut()
            .filter(|c| c.id == id)
            .flat_map(|channel| match field {
                "kind" => vec![One(&mut channel.kind)],
                "safe-for" => vec![List(&mut channel.safe_for)],
                _ => Vec::new(),
            })
            .collect(),
        "site" => program
            .sites
            .iter_mut()
            .filter(|s| s.id == id)
            .flat_map(|site| match field {
                "channels" => vec![List(&mut site.channels)],
                "accepts" => vec![List(&mut site.accepts)],
                "refuses" => vec![List(&mut site.refuses)],
                "hours" => vec![One(&mut site.hours)],
                _ => Vec::new(),
            })
            .collect(),
        _ => Vec::new(),
    }
}

/// The ids of things of a kind, in order.
fn ids<'p>(program: &'p mut Program, kind: &str) -> Vec<&'p mut String> {
    match kind {
        "rule" => program.rules.iter_mut().map(|r| &mut r.id).collect(),
        "stream" => program.streams.iter_mut().map(|s| &mut s.id).collect(),
        "container" => {
            program.streams.iter_mut().flat_map(|s| &mut s.containers).map(|c| &mut c.id).collect()
        }
        "zone" => program.zones.iter_mut().map(|z| &mut z.id).collect(),
        "channel" => program.channels.iter_mut().map(|c| &mut c.id).collect(),
        "site" => program.sites.iter_mut().map(|s| &mut s.id).collect(),
        "item" => program.items.iter_mut().map(|i| &mut i.id).collect(),
        "machine" => program.plant.machines.iter_mut().map(|m| &mut m.id).collect(),
        _ => Vec::new(),
    }
}

fn own_ids(program: &mut Program, kind: &str, id: &str, with: &[String]) -> Result<(), FixProblem> {
    // Nothing can be meant by an empty id, so that the first of those gets one as well.
    let keeps = usize::from(!id.trim().is_empty());
    if ids(program, kind).iter().any(|own| with.contains(own)) {
        return Err(FixProblem::Taken);
    }
    let same = |own: &str| if keeps == 0 { own.trim().is_empty() } else { own == id };
    let mut new = with.iter();
    let mut some = false;
    for own in ids(program, kind).into_iter().filter(|own| same(own)).skip(keeps) {
        let Some(next) = new.next() else { return Err(FixProblem::Gone) };
        own.clone_from(next);
        some = true;
    }
    if kind == "item"
        && let Some(name) = program.item_names.get(id).cloned()
    {
        for next in with {
            program.item_names.entry(next.clone()).or_insert_with(|| name.clone());
        }
    }
    there(some && new.next().is_none())
}

fn remove_twins(program: &mut Program, kind: &str, id: &str) -> bool {
    fn twins<T: PartialEq>(list: &mut Vec<T>, is: &dyn Fn(&T) -> bool) -> bool {
        let Some(first) = list.iter().position(is) else { return false };
        let before = list.len();
        let mut at = before;
        while at > first + 1 {
            at -= 1;
            if list.get(at).is_some_and(is) && list.get(at) == list.get(first) {
                list.remove(at);
            }
        }
        list.len() < before
    }
    match kind {
        "rule" => twins(&mut program.rules, &|r| r.id == id),
        "stream" => twins(&mut program.streams, &|s| s.id == id),
        "container" => program
            .streams
            .iter_mut()
            .map(|s| twins(&mut s.containers, &|c| c.id == id))
            .fold(false, |a, b| a | b),
        "zone" => twins(&mut program.zones, &|z| z.id == id),
        "channel" => twins(&mut program.channels, &|c| c.id == id),
        "site" => twins(&mut program.sites, &|s| s.id == id),
        "item" => twins(&mut program.items, &|i| i.id == id),
        "machine" => twins(&mut program.plant.machines, &|m| m.id == id),
        _ => false,
    }
}

/// A text without what does not belong in it.
pub(crate) fn cleaned(text: &str, problem: &str) -> String {
    match problem {
        "markup" => {
            // Only what looks like a tag goes, never "< 5 cm".
            let mut kept = String::with_capacity(text.len());
            let mut rest = text;
            while let Some(at) = rest.find('<') {
                let (before, tag) = rest.split_at(at);
                kept.push_str(before);
                let looks =
                    tag.chars().nth(1).is_some_and(|c| c.is_ascii_alphabetic() || c == '/' || c == '!');
                match (looks, tag.find('>')) {
                    (true, Some(end)) => rest = tag.get(end + 1..).unwrap_or_default(),
                    _ => {
                        kept.push('<');
                        rest = tag.get(1..).unwrap_or_default();
                    }
                }
            }
            kept.push_str(rest);
            kept
        }
        "direction" => text.chars().filter(|&c| !crate::findings::turns_direction(c)).collect(),
        _ => text.chars().filter(|&c| !c.is_control() || c == '\n').collect(),
    }
}

/// How many single changes (a letter added, dropped, changed, or two neighbours swapped) lie
/// between two words.
pub(crate) fn edits(a: &str, b: &str) -> usize {
    let a: Vec<char> = a.chars().collect();
    let b: Vec<char> = b.chars().collect();
    let mut rows: Vec<Vec<usize>> = vec![(0..=b.len()).collect()];
    for (i, &x) in a.iter().enumerate() {
        let mut row = vec![i + 1];
        for (j, &y) in b.iter().enumerate() {
            let at =
                |r: usize, c: usize| rows.get(r).and_then(|r| r.get(c)).copied().unwrap_or(usize::MAX / 2);
            let changed = at(i, j) + usize::from(x != y);
            let dropped = at(i, j + 1) + 1;
            let added = row.get(j).copied().unwrap_or(usize::MAX / 2) + 1;
            let mut best = changed.min(dropped).min(added);
            if i > 0 && j > 0 && a.get(i - 1) == Some(&y) && b.get(j - 1) == Some(&x) {
                best = best.min(at(i - 1, j - 1) + 1);
            }
            row.push(best);
        }
        rows.push(row);
    }
    rows.last().and_then(|r| r.last()).copied().unwrap_or(0)
}

/// Words nearest to one that is not among them, when near enough to be meant; at most three.
pub(crate) fn nearest<'c>(word: &str, among: impl IntoIterator<Item = &'c str>) -> Vec<&'c str> {
    // A third of the letters may be wrong; common practice, no source.
    let length = word.chars().count();
    let bound = (length / 3).max(1);
    let mut best = bound;
    let mut near: Vec<&str> = Vec::new();
    for candidate in among {
        if candidate.is_empty() || candidate.chars().count().abs_diff(length) > best {
            continue;
        }
        let distance = edits(word, candidate);
        // A word of which nothing is left is another word.
        if distance == 0 || distance > best || distance >= length {
            continue;
        }
        if distance < best {
            best = distance;
            near.clear();
        }
        if !near.contains(&candidate) {
            near.push(candidate);
        }
    }
    near.truncate(3);
    near
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_nearest_word_is_the_one_meant() {
        assert_eq!(edits("kitten", "sitting"), 3); // Levenshtein's textbook pair, from memory
        assert_eq!(edits("ab", "ba"), 1);
        assert_eq!(nearest("recyling", ["refuse", "recycling", "organics"]), ["recycling"]);
        assert_eq!(nearest("gren", ["green", "blue"]), ["green"]);
        assert_eq!(nearest("wholly-other", ["green", "blue"]), Vec::<&str>::new());
        assert_eq!(nearest("cats", ["bats", "hats"]), ["bats", "hats"]);
        assert_eq!(nearest("8", ["1", "2", "3", "4"]), Vec::<&str>::new());
        // What stands there already is no other.
        assert_eq!(nearest("blue", ["blue"]), Vec::<&str>::new());
    }

    #[test]
    fn cleaning_takes_out_only_what_does_not_belong() {
        assert_eq!(cleaned("Clean <b>city</b> < 5 cm", "markup"), "Clean city < 5 cm");
        assert_eq!(cleaned("a <unclosed", "markup"), "a <unclosed");
        assert_eq!(cleaned("a\u{202E}b", "direction"), "ab");
        assert_eq!(cleaned("a\u{7}\nb", "control"), "a\nb");
    }

    #[test]
    fn a_fix_that_fails_changes_nothing() {
        let mut program = Program::blank("en");
        let before = program.clone();
        for fix in [
            Fix::RemoveRule { rule: "none".into() },
            Fix::Route { class: "sharps".into(), channel: "recycling".into() },
            Fix::SetSilence { silence: Silence::Undecided },
            Fix::Replace { place: Place::of("rule", "a", "stream"), value: "x".into(), with: "y".into() },
        ] {
            assert_eq!(program.apply(&fix), Err(FixProblem::Gone), "{fix:?}");
            assert_eq!(program, before);
        }
        assert_eq!(program.apply(&Fix::AddLanguage { language: "en".into() }), Err(FixProblem::Taken));
    }

    #[test]
    fn fixes_are_plain_data() {
        let fix = Fix::GoBefore { rule: "a".into(), over: vec!["b".into()] };
        let json = serde_json::to_string(&fix).unwrap();
        assert_eq!(json, r#"{"edit":"go-before","rule":"a","over":["b"]}"#);
        assert_eq!(serde_json::from_str::<Fix>(&json).unwrap(), fix);
    }
}
