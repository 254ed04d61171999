//! Rules: what decides, in which tier, with its words and its provenance.

use std::sync::Arc;

use guide_data::standard::{PREPARATIONS, REASONS};
use guide_data::{Acknowledgement, Program, Rule, Season, Tier, Verdict};
use leptos::prelude::*;
use locales::t;

use super::condition::condition;
use super::desk::Desk;
use super::fields::{
    Choice, Entry, Lens, Listed, area, check, lens_in, line, listed, many, month_day, name_of, of_program,
    or_none, ordered, select, shortened, standard, words,
};

/// How much of a rule's words its entry in the list shows.
const SHOWN: usize = 70;

/// The list of rules.
pub(crate) fn rules(desk: Desk) -> AnyView {
    listed(
        desk,
        Listed {
            code: "rules",
            entries: Arc::new(|desk| entries(*desk)),
            add: Arc::new(|p, id| p.rules.push(Rule { id, ..Rule::default() })),
            remove: Arc::new(|p, id| p.rules.retain(|r| r.id != id)),
            editor: Arc::new(move |id| rule(desk, &id)),
        },
    )
}

/// The rules by their words for residents, else by what they ask for; the tier stands below.
fn entries(desk: Desk) -> Vec<Entry> {
    let rules: Vec<(String, Tier, Option<String>, Vec<String>)> = desk.program.with(|p| {
        let of = |r: &Rule| (r.id.clone(), r.tier, r.reason.clone(), r.prepare.clone());
        p.rules.iter().map(of).collect()
    });
    rules
        .into_iter()
        .map(|(id, tier, reason, prepare)| {
            let own = name_of(desk, "rule", &id);
            let (name, note) = desk.words.with(|w| {
                let steps: Vec<String> = prepare.iter().map(|step| w.step(step)).collect();
                let name = match reason {
                    _ if own != id => own,
                    Some(reason) => w.say(&format!("reason-{reason}")),
                    None if !steps.is_empty() => steps.join(" "),
                    None => id.clone(),
                };
                (shortened(&name, SHOWN), w.say(&format!("tier-{}", tier.code())))
            });
            Entry { id, name, note }
        })
        .collect()
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
            {many(desk, &field("banned-from"), t!(m, "field-banned-from"), lens_in!(rules[id].banned_from),
                move || of_program(desk, "stream"))}
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
            {season(desk, id)}
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

/// A field of a rule's season, which is there when the rule has one.
fn season_day(id: &str, of: fn(&mut Season) -> &mut String) -> Lens<String> {
    let (read, write) = (id.to_owned(), id.to_owned());
    Lens::new(
        move |p: &Program| {
            let season = p.rule(&read).and_then(|r| r.season.clone());
            season.map(|mut s| std::mem::take(of(&mut s))).unwrap_or_default()
        },
        move |p: &mut Program, day| {
            if let Some(season) = p.rules.iter_mut().find(|r| r.id == write).and_then(|r| r.season.as_mut()) {
                *of(season) = day;
            }
        },
    )
}

/// The part of every year in which the rule holds. It begins as the whole year.
fn season(desk: Desk, id: &str) -> AnyView {
    let whole = || Season { from: "01-01".to_owned(), until: "12-31".to_owned() };
    let on =
        lens_in!(rules[id].season).map(|s: Option<Season>| s.is_some(), move |on: bool| Some(on.then(whole)));
    let read = id.to_owned();
    let now = Memo::new(move |_| desk.program.with(|p| p.rule(&read).and_then(|r| r.season.clone())));
    let is_there = Memo::new(move |_| now.with(Option::is_some));
    let w = desk.words.get_untracked();
    let label = t!(w.messages, "field-season");
    let field = format!("rule.{id}.season");
    let id = id.to_owned();
    let days = move || {
        is_there.get().then(|| {
            let w = desk.words.get_untracked();
            let said = move || {
                let season = now.get()?;
                desk.words.with(|w| {
                    let [from, until] =
                        [&season.from, &season.until].map(|day| w.measure("time-of-year", day));
                    Some(t!(w.messages, "season-says", from = from, until = until))
                })
            };
            view! {
                <div class="season">
                    {month_day(desk, &format!("rule.{id}.season.from"), t!(w.messages, "field-season-from"),
                        season_day(&id, |s| &mut s.from))}
                    {month_day(desk, &format!("rule.{id}.season.until"), t!(w.messages, "field-season-until"),
                        season_day(&id, |s| &mut s.until))}
                    <p class="reading" id="season-says">{said}</p>
                </div>
            }
        })
    };
    view! {
        {check(desk, &field, label, on)}
        {days}
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_seasons_days_are_written_only_where_there_is_a_season() {
        let season = Season { from: "12-26".into(), until: "01-15".into() };
        let with = Rule { id: "trees".into(), season: Some(season), ..Rule::default() };
        let without = Rule { id: "glass".into(), ..Rule::default() };
        let mut program = Program { rules: vec![with, without], ..Program::default() };
        let until = season_day("trees", |s| &mut s.until);
        assert_eq!(until.get(&program), "01-15");
        until.set(&mut program, "01-31".to_owned());
        let says = |p: &Program, id: &str| p.rule(id).and_then(|r| r.season.clone());
        assert_eq!(
            says(&program, "trees").map(|s| (s.from, s.until)),
            Some(("12-26".into(), "01-31".into()))
        );
        season_day("glass", |s| &mut s.from).set(&mut program, "02-01".to_owned());
        assert_eq!(says(&program, "glass"), None);
    }
}
