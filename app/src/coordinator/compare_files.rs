//! Comparing the open program with another file: what changes, and the notice of it.

use std::sync::Arc;

use guide_data::{
    LanguagePack, PrintedSheet, Program, comparison, has_unreviewed, notice, program_texts, untrue_since,
};
use leptos::prelude::*;
use lidleaf::compared::{self, Pair, Text, Told};
use locales::Words as SharedWords;
use locales::{Lang, t};
use wasm_bindgen_futures::{JsFuture, spawn_local};

use super::desk::{Desk, own_names};
use super::files_tab::{load_problem, read};
use crate::browser;
use crate::words::Words;

/// A file opened beside the program. It is looked at, never saved.
#[derive(Clone)]
struct Other {
    name: String,
    program: Arc<Program>,
}

/// What comparing came to.
#[derive(Clone, Default, PartialEq)]
struct Compared {
    changes: usize,
    text: Text,
}

/// The section of the files screen.
#[component]
pub(crate) fn Compare(desk: Desk) -> impl IntoView {
    let other = RwSignal::new(None::<Other>);
    let newer = RwSignal::new(false);
    let problem = RwSignal::new(None::<String>);
    let open = move |input: web_sys::HtmlInputElement| {
        let Some(file) = input.files().and_then(|f| f.get(0)) else { return };
        input.set_value("");
        spawn_local(async move {
            match read(&file).await {
                Ok(program) => {
                    problem.set(None);
                    other.set(Some(Other { name: file.name(), program: Arc::new(program) }));
                }
                // What was compared before stays on the screen.
                Err((found, _)) => problem.set(Some(load_problem(desk, &found))),
            }
        });
    };
    let found = Memo::new(move |_| {
        let other = other.get()?;
        let newer = newer.get();
        let program = desk.program.get();
        Some(desk.words.with(|w| look(desk, w, &program, &other.program, newer)))
    });
    let w = desk.words.get_untracked();
    let m = &w.messages;
    view! {
        <section aria-labelledby="compare-title">
            <h2 id="compare-title">{t!(m, "compare-file-title")}</h2>
            <p class="row">
                <label class="plain" for="compare-file">
                    <span>{t!(m, "compare-file")}</span>
                    <input type="file" id="compare-file" accept=".json,application/json"
                        on:change:target=move |ev| open(ev.target())/>
                </label>
            </p>
            {move || problem.get().map(|text| view! { <p class="field-problem" role="alert" dir="auto">{text}</p> })}
            {move || found.get().map(|found| result(desk, other, newer, found))}
        </section>
    }
}

/// The pack of a program's words in the language of the screens.
fn pack(words: &Words, program: &Program) -> LanguagePack {
    let mut pack = (*words.pack).clone();
    let language = words.language().to_owned();
    pack.texts = program_texts(program, &language);
    pack.names.extend(own_names(program, &language));
    let lang: Lang = language.parse().unwrap_or_default();
    pack.unreviewed =
        has_unreviewed(program, &language) || lang.entry().is_none_or(|entry| entry.review().needs_notice());
    pack
}

fn look(desk: Desk, words: &Words, program: &Program, other: &Program, newer: bool) -> Compared {
    let (before, after) = if newer { (program, other) } else { (other, program) };
    let catalog = desk.catalog.get_value();
    let found = comparison(before, after, &catalog, None);
    let groups = notice(&found);
    // The text leaves the page: marks that isolate directions would show elsewhere.
    let messages = (*words.messages).clone().isolating(false);
    let (old, new) = (pack(words, before), pack(words, after));
    let pair = Pair {
        old: SharedWords { messages: &messages, pack: &old },
        new: SharedWords { messages: &messages, pack: &new },
    };
    let sheets: Vec<PrintedSheet> = after.printed.iter().chain(&before.printed).cloned().collect();
    let untrue: Vec<Told> = untrue_since(before, after, &catalog)
        .iter()
        .map(|line| compared::untrue(line, &sheets, pair.new))
        .collect();
    let mut text = pair.notice(&found, &groups, &untrue);
    text.tail.splice(0..0, compared::contact(after, pair.new));
    Compared { changes: found.changes.len(), text }
}

fn result(desk: Desk, other: RwSignal<Option<Other>>, newer: RwSignal<bool>, found: Compared) -> AnyView {
    let w = desk.words.get_untracked();
    let m = &w.messages;
    let name = other.with_untracked(|o| o.as_ref().map(|o| o.name.clone())).unwrap_or_default();
    let copied = RwSignal::new(None::<bool>);
    let (plain, marked) = (found.text.plain(), found.text.markdown());
    let rows = plain.lines().count().clamp(4, 24);
    let shown = plain.clone();
    let copy = move |_| {
        let text = plain.clone();
        spawn_local(async move { copied.set(Some(write(&text).await)) });
    };
    let status = move || {
        desk.words.with(|w| match copied.get() {
            None => String::new(),
            Some(true) => t!(w.messages, "compare-copied"),
            Some(false) => t!(w.messages, "compare-not-copied"),
        })
    };
    view! {
        <p id="compare-count" role="status">
            {t!(m, "compare-file-name", name = name.chars().take(80).collect::<String>())}" "
            {t!(m, "changes-count", count = found.changes)}
        </p>
        <label class="row">
            <input type="checkbox" id="compare-newer" prop:checked=newer.get_untracked()
                on:change:target=move |ev| newer.set(ev.target().checked())/>
            <span>{t!(m, "compare-newer")}</span>
        </label>
        <label class="field" for="compare-notice">
            <span>{t!(m, "compare-notice")}</span>
            <textarea id="compare-notice" readonly dir="auto" rows=rows.to_string() prop:value=shown></textarea>
        </label>
        <p class="row">
            <button type="button" class="button" id="compare-copy" on:click=copy>{t!(m, "compare-copy")}</button>
            <button type="button" class="plain" id="compare-download"
                on:click=move |_| { browser::download("notice.md", "text/markdown", &marked); }>
                {t!(m, "compare-download")}
            </button>
            <button type="button" class="plain" id="compare-close" on:click=move |_| other.set(None)>
                {t!(m, "close")}
            </button>
            <span role="status">{status}</span>
        </p>
    }
    .into_any()
}

/// Puts a text on the clipboard; false when the browser would not.
async fn write(text: &str) -> bool {
    let Some(window) = web_sys::window() else { return false };
    // Outside a secure context there is no clipboard at all.
    if !window.is_secure_context() {
        return false;
    }
    JsFuture::from(window.navigator().clipboard().write_text(text)).await.is_ok()
}
