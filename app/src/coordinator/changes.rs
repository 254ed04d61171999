//! What the edits changed: every item whose answer is another one now.

use guide_data::{Change, Outcome};
use leptos::prelude::*;
use lidleaf::compared;
use locales::t;

use super::desk::{Desk, Tab};
use super::findings::subject;
use crate::words::Words;

/// How many changes are drawn; the rest are counted.
const SHOWN: usize = 40;

/// The "what changed" panel.
#[component]
pub(crate) fn Changes(desk: Desk) -> impl IntoView {
    let count = move || desk.changes.with(|c| c.len());
    let items = move || desk.changes.get().iter().take(SHOWN).cloned().enumerate().collect::<Vec<_>>();
    view! {
        <section id="changes" class="panel" aria-labelledby="changes-title">
            <h2 id="changes-title">{move || desk.words.with(|w| t!(w.messages, "changes-title"))}</h2>
            <p role="status" aria-live="polite" id="changes-count">
                {move || desk.words.with(|w| t!(w.messages, "changes-count", count = count()))}
            </p>
            <ul class="changes">
                <For each=items key=|(at, c)| format!("{at} {c:?}") let:entry>{one(desk, entry.1)}</For>
            </ul>
            {move || {
                let more = count().saturating_sub(SHOWN);
                (more > 0).then(|| desk.words.with(|w| view! { <p class="quiet">{t!(w.messages, "findings-more", count = more)}</p> }))
            }}
            {move || (desk.program.get() != desk.baseline.get()).then(|| desk.words.with(|w| view! {
                <button type="button" class="plain" id="changes-mark" on:click=move |_| desk.mark()>
                    {t!(w.messages, "changes-mark")}
                </button>
            }))}
        </section>
    }
}

fn one(desk: Desk, change: Change) -> AnyView {
    let w = desk.words.get_untracked();
    let when = compared::conditions(w.shared(), &change.when);
    let item = change.item.clone();
    // Verdict and place are the same: then it is the steps, the reason or the caution that differ.
    let same = matches!((&change.before, &change.after), (Some(a), Some(b)) if a.same_place(b));
    view! {
        <li data-id=change.item.clone()>
            <button type="button" class="finding-go" on:click=move |_| desk.go(Tab::Items, &item)>
                <strong>{subject(&w, &change.item, change.part.as_deref())}</strong>
            </button>
            <p class="from-to">
                {(!same).then(|| view! { {verdict(&w, change.before.as_ref())}<span aria-hidden="true">" → "</span> })}
                {verdict(&w, change.after.as_ref())}
            </p>
            {same.then(|| view! { <p>{t!(w.messages, "changes-details")}</p> })}
            {when.map(|text| view! { <p class="quiet">{text}</p> })}
        </li>
    }
    .into_any()
}

fn verdict(words: &Words, outcome: Option<&Outcome>) -> AnyView {
    let Some(outcome) = outcome else {
        return view! { <span class="chip">{t!(words.messages, "changes-absent")}</span> }.into_any();
    };
    let place = outcome.stream.as_ref().map(|s| words.named("stream", s));
    let place = place.or_else(|| outcome.channel.as_ref().map(|c| words.named("channel", c)));
    let code = outcome.verdict.code();
    view! {
        <span><span class=format!("chip {code}")>{words.say(&format!("verdict-{code}"))}</span>" "{place}</span>
    }
    .into_any()
}
