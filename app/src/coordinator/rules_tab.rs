//! Rules: what decides, in which tier, with its words and its provenance.

use std::sync::Arc;

use guide_data::standard::{PREPARATIONS, REASONS};
use guide_data::{Acknowledgement, Program, Rule, Tier, Verdict};
use leptos::prelude::*;
use locales::t;

use super::condition::condition;
use super::desk::Desk;
use super::fields::{
    Choice, Lens, Listed, area, check, lens_in, line, listed, name_of, of_program, or_none, ordered, select,
    standard, words,
};

/// How much of a rule's words its entry in the list shows.
const SHOWN: usize = 70;

/// The list of rules.
pub(crate) fn rules(desk: Desk) -> AnyView {
    listed(
        desk,
        Listed {
            code: "rules",
            entries: Arc::new(|desk| {
                let rules: Vec<(String, Tier)> =
                    desk.program.with(|p| p.rules.iter().map(|r| (r.id.clone(), r.tier)).collect());
                rules
                    .into_iter()
                    .map(|(id, tier)| {
                        let tier = desk.words.with(|w| w.say(&format!("tier-{}", tier.code())));
                        let name: String = name_of(*desk, "rule", &id).chars().take(SHOWN).collect();
                        (id, format!("{tier}: {name}"))
                    })
                    .collect()
            }),
            add: Arc::new(|p, id| p.rules.push(Rule { id, ..Rule::default() })),
            remove: Arc::new(|p, id| p.rules.retain(|r| r.id != id)),
            editor: Arc::new(move |id| rule(desk, &id)),
        },
    )
}

/// The verdict of a rule as a choice; none adds steps only.
fn verdict_lens(id: &str) -> Lens<String> {
    lens_in!(rules[id].verdict).map(
        |v| {
            match v {
                None => "",
                Some(Verdict::Yes) => "yes",
                Some(Verdict::No) => "no",
                Some(Verdict::Elsewhere) => "elsewhere",
            }
            .to_owned()
        },
        |v: String| {
            Some(match v.as_str() {
                "yes" => Some(Verdict::Yes),
                "no" => Some(Verdict::No),
                "elsewhere" => Some(Verdict::Elsewhere),
                _ => None,
            })
        },
    )
}

/// Standard steps and the program's own.
fn steps(desk: Desk) -> Vec<Choice> {
    let own: Vec<String> = desk.program.with(|p| p.steps.keys().cloned().collect());
    let mut all: Vec<Choice> = own.into_iter().map(|id| (id.clone(), name_of(desk, "step", &id))).collect();
    all.extend(standard(desk, PREPARATIONS, "prep"));
    all
}

fn rule(desk: Desk, id: &str) -> AnyView {
    let w = desk.words.get_untracked();
    let m = &w.messages;
    let tier = lens_in!(rules[id].tier).map(
        |tier: Tier| tier.code().to_owned(),
        |code: String| Tier::ALL.into_iter().find(|t| t.code() == code),
    );
    let verdict = verdict_lens(id);
    let read = id.to_owned();
    let current = Memo::new(move |_| desk.program.with(|p| p.rule(&read).and_then(|r| r.verdict)));
    let field = |name: &str| format!("rule.{id}.{name}");
    let (stream_field, channel_field, owner) = (field("stream"), field("channel"), id.to_owned());
    let destination = move || {
        let owner = owner.as_str();
        let m = desk.words.get_untracked();
        match current.get() {
            Some(Verdict::Elsewhere) => select(
                desk,
                &channel_field,
                t!(m.messages, "field-channel"),
                lens_in!(rules[owner].channel).or_empty(),
                move || or_none(desk, of_program(desk, "channel")),
            ),
            Some(_) => select(
                desk,
                &stream_field,
                t!(m.messages, "field-stream"),
                lens_in!(rules[owner].stream).or_empty(),
                move || or_none(desk, of_program(desk, "stream")),
            ),
            None => ().into_any(),
        }
    };
    let others = {
        let own = id.to_owned();
        move || of_program(desk, "rule").into_iter().filter(|(r, _)| *r != own).collect()
    };
    view! {
        <div class="fields">
            {select(desk, &field("tier"), t!(m, "field-tier"), tier, move || {
                standard(desk, &Tier::ALL.map(Tier::code), "tier")
            })}
            {select(desk, &field("verdict"), t!(m, "field-verdict"), verdict, move || {
                let mut all = desk.words.with(|w| vec![(String::new(), t!(w.messages, "rule-adds-steps"))]);
                all.extend(standard(desk, &["yes", "no", "elsewhere"], "verdict"));
                all
            })}
            {destination}
        </div>
        {condition(desk, id)}
        <div class="fields">
            {ordered(desk, &field("prepare"), t!(m, "field-prepare"), lens_in!(rules[id].prepare), move || steps(desk))}
            {select(desk, &field("reason"), t!(m, "field-reason"), lens_in!(rules[id].reason).or_empty(),
                move || or_none(desk, standard(desk, REASONS, "reason")))}
            {select(desk, &field("machine"), t!(m, "field-machine"), lens_in!(rules[id].machine).or_empty(),
                move || or_none(desk, of_program(desk, "machine")))}
            {words(desk, &format!("rule.{id}"), t!(m, "field-residents"))}
            {words(desk, &format!("rule.{id}.sorters"), t!(m, "field-sorters"))}
            {area(desk, &field("contract"), t!(m, "field-contract"), lens_in!(rules[id].texts.contract))}
        </div>
        <h3>{t!(m, "provenance-title")}</h3>
        <div class="fields">
            {line(desk, &field("decided-by"), t!(m, "field-decided-by"), "text", lens_in!(rules[id].provenance.decided_by))}
            {line(desk, &field("source"), t!(m, "field-source"), "text", lens_in!(rules[id].provenance.source))}
            {line(desk, &field("confirmed"), t!(m, "field-confirmed"), "date", lens_in!(rules[id].provenance.confirmed).day_text())}
            {line(desk, &field("ask-again"), t!(m, "field-ask-again"), "date", lens_in!(rules[id].provenance.ask_again).day_text())}
        </div>
        <details class="more">
            <summary>{t!(m, "rule-more")}</summary>
            <div class="fields">
                {ordered(desk, &field("also"), t!(m, "field-also"), lens_in!(rules[id].also), move || of_program(desk, "channel"))}
                {ordered(desk, &field("overrides"), t!(m, "field-overrides"), lens_in!(rules[id].overrides), others)}
                {check(desk, &field("temporary"), t!(m, "field-temporary"), lens_in!(rules[id].temporary))}
                {line(desk, &field("from"), t!(m, "field-from"), "date", lens_in!(rules[id].from).day_text())}
                {line(desk, &field("until"), t!(m, "field-until"), "date", lens_in!(rules[id].until).day_text())}
            </div>
            <h3>{t!(m, "acknowledgement-title")}</h3>
            <p class="quiet">{t!(m, "acknowledgement-hint")}</p>
            <div class="fields">
                {line(desk, &field("acknowledged-by"), t!(m, "field-acknowledged-by"), "text",
                    acknowledgement(id, |a| a.by.clone(), |a, v| a.by = v))}
                {line(desk, &field("acknowledged-on"), t!(m, "field-acknowledged-on"), "date",
                    acknowledgement(id, |a| a.on, |a, v| a.on = v).day_text())}
                {area(desk, &field("acknowledged-because"), t!(m, "field-acknowledged-because"),
                    acknowledgement(id, |a| a.because.clone(), |a, v| a.because = v))}
            </div>
        </details>
    }
    .into_any()
}

/// A field of a rule's acknowledgement, which is there as soon as one of its fields is.
fn acknowledgement<T: Default + 'static>(
    id: &str,
    get: fn(&Acknowledgement) -> T,
    set: fn(&mut Acknowledgement, T),
) -> Lens<T> {
    let (read, write) = (id.to_owned(), id.to_owned());
    Lens::new(
        move |p: &Program| {
            p.rule(&read).and_then(|r| r.acknowledgement.as_ref()).map(get).unwrap_or_default()
        },
        move |p: &mut Program, value| {
            if let Some(rule) = p.rules.iter_mut().find(|r| r.id == write) {
                let mut now = rule.acknowledgement.take().unwrap_or_default();
                set(&mut now, value);
                rule.acknowledgement = (now != Acknowledgement::default()).then_some(now);
            }
        },
    )
}
