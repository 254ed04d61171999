//! Items with their current answers; deciding one writes an exception for it.

use guide_data::{Condition, Given, Known, Rule, Step, Tier, Verdict};
use leptos::prelude::*;
use locales::t;

use super::desk::{Desk, Tab};
use super::fields::{Choice, free_id, standard};
use crate::address::Page;
use crate::browser;

/// One row of the list.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Row {
    id: String,
    name: String,
    pictogram: String,
    category: String,
    /// The verdict's word, or "asks" when it depends.
    answer: &'static str,
    /// The destination, or the fact asked.
    detail: String,
    /// The rule that decides.
    rule: Option<String>,
}

/// What the draft's guide says to each item, before any question.
fn rows(desk: Desk) -> Vec<Row> {
    let day = Known::default().with("day", Given::Day(browser::now().day));
    desk.checked.with(|checked| {
        desk.words.with(|w| {
            let guide = &checked.guide;
            let row = |(at, item): (usize, &guide_data::GuideItem)| {
                let (answer, detail, rule) = match guide.next(at, &day) {
                    Some(Step::Answer(answer)) => {
                        let outcome = answer.parts.into_iter().next().map(|p| p.outcome).unwrap_or_default();
                        let place = outcome.stream.as_ref().map(|s| w.named("stream", s));
                        let place = place.or_else(|| outcome.channel.as_ref().map(|c| w.named("channel", c)));
                        (outcome.verdict.code(), place.unwrap_or_default(), outcome.rules.into_iter().next())
                    }
                    Some(Step::Ask(question)) => ("asks", w.say(&format!("fact-{}", question.fact)), None),
                    None => ("undecided", String::new(), None),
                };
                Row {
                    id: item.id.clone(),
                    name: w.item(&item.id),
                    pictogram: item.pictogram.clone(),
                    category: item.category.clone(),
                    answer,
                    detail,
                    rule,
                }
            };
            guide.items.iter().enumerate().map(row).collect()
        })
    })
}

/// The list of items.
pub(crate) fn items(desk: Desk) -> AnyView {
    let all = Memo::new(move |_| rows(desk));
    let typed = RwSignal::new(String::new());
    let answer = RwSignal::new(String::new());
    let shown = move || {
        let wanted = browser::fold(&typed.get());
        let answer = answer.get();
        let chosen = desk.chosen.get();
        all.get()
            .into_iter()
            .filter(|r| answer.is_empty() || r.answer == answer)
            .filter(|r| {
                wanted.is_empty()
                    || browser::fold(&r.name).contains(&wanted)
                    || r.id.contains(&wanted)
                    || r.id == chosen
            })
            .collect::<Vec<_>>()
    };
    let answers = move || -> Vec<Choice> {
        let mut all = desk.words.with(|w| vec![(String::new(), t!(w.messages, "items-all"))]);
        all.extend(standard(desk, &["yes", "no", "elsewhere", "unlisted", "undecided"], "verdict"));
        all.push(("asks".to_owned(), desk.words.with(|w| t!(w.messages, "items-asks"))));
        all
    };
    // Who comes from a finding or a change is taken to the item.
    Effect::new(move |before: Option<String>| {
        let now = desk.chosen.get();
        if !now.is_empty() && before.as_ref() != Some(&now) {
            browser::focus("chosen");
        }
        now
    });
    let w = desk.words.get_untracked();
    let m = &w.messages;
    view! {
        <div id="items-screen">
            <div class="fields">
                <label class="field">
                    <span>{t!(m, "list-filter")}</span>
                    <input type="search" id="items-filter" on:input:target=move |ev| typed.set(ev.target().value())/>
                </label>
                <label class="field">
                    <span>{t!(m, "items-answer")}</span>
                    <select id="items-answer" on:change:target=move |ev| answer.set(ev.target().value())>
                        {move || answers().into_iter().map(|(v, name)| view! { <option value=v>{name}</option> }).collect_view()}
                    </select>
                </label>
            </div>
            <p class="quiet" role="status">
                {move || desk.words.with(|w| t!(w.messages, "items-count", count = shown().len()))}
            </p>
            <ul class="rows" id="items-list">
                <For each=shown key=|row| format!("{row:?}") let:row>{one(desk, row)}</For>
            </ul>
        </div>
    }
    .into_any()
}

fn one(desk: Desk, row: Row) -> AnyView {
    let own = row.id.clone();
    let marked = Memo::new(move |_| desk.chosen.with(|c| *c == own));
    let w = desk.words.get_untracked();
    let m = &w.messages;
    let answer =
        if row.answer == "asks" { t!(m, "items-asks") } else { w.say(&format!("verdict-{}", row.answer)) };
    let (id, asked) = (row.id.clone(), row.id.clone());
    let decide = move |_| decide(desk, &id);
    let ask = move |_| {
        desk.resident.get_value().open(Page::Item { id: asked.clone(), step: 0 });
        browser::focus("ask-panel");
    };
    let rule = row.rule.filter(|r| desk.program.with_untracked(|p| p.rule(r).is_some()));
    let (decide_label, ask_label) = (
        t!(m, "items-decide-name", item = row.name.clone()),
        t!(m, "items-ask-name", item = row.name.clone()),
    );
    view! {
        <li
            class="item-row"
            tabindex="-1"
            data-id=row.id.clone()
            id=move || marked.get().then_some("chosen")
            class:marked=move || marked.get()
        >
            <svg class="pictogram" viewBox="0 0 48 48" aria-hidden="true" focusable="false">
                <use href=format!("icons.svg#{}", if row.pictogram.is_empty() { "item" } else { row.pictogram.as_str() })></use>
            </svg>
            <div class="item-row-name">
                <strong>{row.name}</strong>
                <small>{w.say(&format!("category-{}", row.category))}</small>
            </div>
            <div class="item-row-answer">
                <span class=format!("chip {}", row.answer)>{answer}</span>
                <small>{row.detail}</small>
            </div>
            <div class="row">
                <button type="button" class="plain" aria-label=ask_label on:click=ask>{t!(m, "items-ask")}</button>
                {rule.map(|rule| view! {
                    <button type="button" class="plain" on:click=move |_| desk.go(Tab::Rules, &rule)>{t!(m, "items-rule")}</button>
                })}
                <button type="button" class="plain items-decide" aria-label=decide_label on:click=decide>{t!(m, "items-decide")}</button>
            </div>
        </li>
    }
    .into_any()
}

/// Goes to the exception for an item; writes one when there is none. It begins as a refusal
/// nobody has confirmed, which the findings say until somebody does.
fn decide(desk: Desk, item: &str) {
    let only_this = |rule: &&Rule| rule.when == Some(Condition::is("item", &[item]));
    let there = desk.program.with_untracked(|p| p.rules.iter().find(only_this).map(|r| r.id.clone()));
    let id = there.unwrap_or_else(|| {
        let taken: Vec<Choice> =
            desk.program.with_untracked(|p| p.rules.iter().map(|r| (r.id.clone(), String::new())).collect());
        let id = free_id(&format!("decide-{item}"), &taken);
        let made = id.clone();
        desk.edit(&format!("add {id}"), |p| {
            let stream = p.refuse_stream().map(str::to_owned);
            p.rules.push(Rule {
                id: made,
                tier: Tier::Program,
                when: Some(Condition::is("item", &[item])),
                verdict: Some(Verdict::No),
                stream,
                ..Rule::default()
            });
        });
        id
    });
    desk.go(Tab::Rules, &id);
}
