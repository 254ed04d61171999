//! What is wrong with the program as it stands, with a case that shows it and the way to the place.

use guide_data::{Finding, Fix, Severity, ValueLabel};
use leptos::prelude::*;
use lidleaf::{compared, finding_words};
use locales::t;

use super::desk::{Desk, Tab};
use crate::browser;
use crate::words::Words;

/// How many of a severity are drawn; the rest are counted.
const SHOWN: usize = 60;

/// Answers in words: "Resin mark: 5; wet: yes".
pub(crate) fn answers(words: &Words, answers: &[(String, ValueLabel)]) -> String {
    let said: Vec<String> =
        answers.iter().map(|(fact, label)| compared::fact_value(words.shared(), fact, label)).collect();
    words.messages.list_and(&said)
}

/// An item, or a part of it.
pub(crate) fn subject(words: &Words, item: &str, part: Option<&str>) -> String {
    match part {
        None => words.item(item),
        Some(part) => {
            t!(
                words.messages,
                "item-part",
                item = words.item(item),
                part = words.say(&format!("part-{part}"))
            )
        }
    }
}

/// What a fix does, in words.
fn fix_words(words: &Words, fix: &Fix) -> String {
    let key = format!("fix-{}", fix.code());
    finding_words(&words.messages, &key, fix.args()).unwrap_or_else(|| fix.code().to_owned())
}

/// Applies a fix as one step of undo, and says so.
fn mend(desk: Desk, done: RwSignal<String>, fix: &Fix) {
    let words = desk.words.get_untracked();
    // Every fix is a step of its own, however quickly one follows another.
    let step = format!("fix {}", desk.edits.get_untracked());
    let mut mended = Ok(());
    desk.edit(&step, |program| mended = program.apply(fix));
    done.set(match mended {
        Ok(()) => t!(words.messages, "mend-done", fix = fix_words(&words, fix)),
        Err(_) => t!(words.messages, "mend-gone"),
    });
    // The button goes with its finding: the keyboard's place is kept at the list.
    browser::focus("findings-title");
}

/// The findings panel.
#[component]
pub(crate) fn Findings(desk: Desk) -> impl IntoView {
    let all = Memo::new(move |_| desk.checked.with(|c| c.findings.clone()));
    let count =
        move |severity: Severity| all.with(|all| all.iter().filter(|f| f.severity == severity).count());
    let summary = move || {
        desk.words.with(|w| {
            t!(
                w.messages,
                "findings-count",
                errors = count(Severity::Error),
                warnings = count(Severity::Warning),
                notices = count(Severity::Notice)
            )
        })
    };
    let shown = move || -> Vec<(usize, Finding)> { all.get().into_iter().take(SHOWN).enumerate().collect() };
    let done = RwSignal::new(String::new());
    let publishable = move || count(Severity::Error) == 0;
    view! {
        <section id="findings" class="panel" aria-labelledby="findings-title">
            <h2 id="findings-title" tabindex="-1">{move || desk.words.with(|w| t!(w.messages, "findings-title"))}</h2>
            <p id="findings-count" role="status" aria-live="polite" class:good=publishable>{summary}</p>
            <p id="findings-mended" role="status" aria-live="polite" class="quiet" dir="auto">{done}</p>
            <ul class="findings">
                <For each=shown key=|(at, f)| format!("{at} {f:?}") let:entry>{one(desk, done, entry.1)}</For>
            </ul>
            {move || {
                let more = all.with(Vec::len).saturating_sub(SHOWN);
                (more > 0).then(|| desk.words.with(|w| view! { <p class="quiet">{t!(w.messages, "findings-more", count = more)}</p> }))
            }}
        </section>
    }
}

fn one(desk: Desk, done: RwSignal<String>, finding: Finding) -> AnyView {
    let w = desk.words.get_untracked();
    let severity = match finding.severity {
        Severity::Error => "error",
        Severity::Warning => "warning",
        Severity::Notice => "notice",
    };
    let key = format!("finding-{}", finding.code);
    let message = finding_words(&w.messages, &key, &finding.args).unwrap_or_else(|| finding.code.clone());
    let hint = finding_words(&w.messages, &format!("{key}.hint"), &finding.args);
    let witness = finding.witness.as_ref().map(|witness| {
        let item = subject(&w, &witness.item, witness.part.as_deref());
        if witness.answers.is_empty() {
            t!(w.messages, "witness-item", item = item)
        } else {
            t!(w.messages, "witness", item = item, answers = answers(&w, &witness.answers))
        }
    });
    let tab = Tab::of_place(&finding.place.kind);
    let place = finding.place.clone();
    // Most messages name their place themselves.
    let place_id = if message.contains(&place.id) { String::new() } else { place.id.clone() };
    let go = move |_| {
        let id = match place.kind.as_str() {
            // Containers are edited with their stream, hazards on the program's screen.
            "container" => desk.program.with_untracked(|p| {
                let holds = |s: &&guide_data::Stream| s.containers.iter().any(|c| c.id == place.id);
                p.streams.iter().find(holds).map(|s| s.id.clone()).unwrap_or_default()
            }),
            "hazard" | "program" => String::new(),
            _ => place.id.clone(),
        };
        desk.go(tab, &id);
        if id.is_empty() {
            browser::focus("screen-title");
        }
    };
    let fixes: Vec<_> = finding
        .fixes
        .iter()
        .cloned()
        .map(|fix| {
            let words = fix_words(&w, &fix);
            let code = fix.code();
            let go = move |_| mend(desk, done, &fix);
            view! {
                <li>
                    <button type="button" class="plain" data-fix=code dir="auto" on:click=go>{words}</button>
                </li>
            }
        })
        .collect();
    view! {
        <li class=format!("finding is-{severity}") data-code=finding.code.clone() data-severity=severity>
            <button type="button" class="finding-go" on:click=go>
                <span class="finding-mark">{w.say(&format!("severity-{severity}"))}</span>
                <span class="finding-text" dir="auto">{message}</span>
                {(!place_id.is_empty()).then(|| view! { " "<code dir="ltr">{place_id}</code> })}
            </button>
            {witness.map(|text| view! { <p class="witness" dir="auto">{text}</p> })}
            {hint.map(|text| view! { <p class="quiet" dir="auto">{text}</p> })}
            {(!fixes.is_empty()).then(|| view! {
                <ul class="mends" aria-label=t!(w.messages, "mend-title")>{fixes}</ul>
            })}
        </li>
    }
    .into_any()
}
