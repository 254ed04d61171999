//! Starting the coordinator's page.

use std::sync::Arc;

use guide_data::{Catalog, Guide, LanguagePack};
use leptos::mount::mount_to;
use leptos::prelude::*;
use locales::{Lang, negotiate, supported, t};
use serde::Deserialize;
use wasm_bindgen::JsCast as _;
use wasm_bindgen_futures::spawn_local;

use super::autosave::Autosave;
use super::desk::Desk;
use super::frame::Frame;
use crate::browser::{self, FetchProblem};
use crate::store::{desk_settings, rescue};
use crate::words::Words;

/// The coordinator's words of one language, as published.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub(crate) struct DeskPack {
    pub(crate) messages: Vec<String>,
    pub(crate) names: std::collections::BTreeMap<String, Vec<String>>,
}

/// Draws the page once catalog and words are here, and opens what was worked on last.
pub(crate) fn start() {
    console_error_panic_hook::set_once();
    // Leptos has tasks of its own only once something is mounted.
    wasm_bindgen_futures::spawn_local(async {
        match load().await {
            Ok((catalog, words)) => {
                let place = web_sys::window()
                    .and_then(|w| w.document())
                    .and_then(|d| d.get_element_by_id("app"))
                    .and_then(|e| e.dyn_into::<web_sys::HtmlElement>().ok());
                if let Some(place) = place {
                    place.set_inner_text("");
                    mount_to(place, move || {
                        let desk = Desk::new(catalog.clone(), words.clone());
                        let save = Autosave::start(desk);
                        reopen(save);
                        view! { <Frame desk save/> }
                    })
                    .forget();
                }
            }
            Err(problem) => crate::resident::start_problem(problem),
        }
    });
}

/// Opens the draft this window, or any window, worked on last.
fn reopen(save: Autosave) {
    if let Some(id) = rescue::current() {
        spawn_local(async move {
            // A draft that is gone leaves the screen on which one is opened.
            let _ = save.reopen(&id).await;
        });
    }
}

async fn load() -> Result<(Arc<Catalog>, Arc<Words>), FetchProblem> {
    let settings = desk_settings::load();
    let offered: Vec<Lang> = supported().iter().map(locales::Language::lang).collect();
    let wanted = browser::navigator_languages();
    let wanted: Vec<&str> = settings.language.iter().chain(&wanted).map(String::as_str).collect();
    let language = negotiate(&wanted, &offered).map_or_else(|| "en".to_owned(), Lang::tag);
    let catalog = browser::fetch_text("data/catalog.json").await?;
    let catalog = Catalog::from_json(&catalog).map_err(|_| FetchProblem::Broken)?;
    let words = match words(&language).await {
        Ok(words) => words,
        Err(_) => words("en").await?,
    };
    Ok((Arc::new(catalog), Arc::new(words)))
}

/// The words of the screens in a language, with the names of items.
async fn words(language: &str) -> Result<Words, FetchProblem> {
    let desk: DeskPack = browser::fetch_json(&format!("data/coordinator-{language}.json")).await?;
    let pack = LanguagePack {
        language: language.to_owned(),
        direction: language.parse::<Lang>().map_or("ltr", |l| l.direction().html()).to_owned(),
        messages: desk.messages,
        names: desk.names,
        ..LanguagePack::default()
    };
    Ok(Words::new(pack, &Guide::default()))
}

/// The switch of the screens' language.
#[component]
pub(crate) fn ScreenLanguage(desk: Desk) -> impl IntoView {
    let switch = move |language: String| {
        spawn_local(async move {
            if let Ok(words) = words(&language).await {
                desk.settings.update(|s| s.language = Some(language));
                desk_settings::save(&desk.settings.get_untracked());
                desk.words.set(Arc::new(words));
                desk.check_now();
            }
        });
    };
    let current = Memo::new(move |_| desk.words.with(|w| w.language().to_owned()));
    view! {
        <label class="language">
            <span class="unseen">{move || desk.words.with(|w| t!(w.messages, "language-label"))}</span>
            <select id="language" on:change:target=move |ev| switch(ev.target().value())>
                {move || {
                    let current = current.get();
                    supported().iter().map(|l| view! {
                        <option value=l.tag lang=l.tag selected=l.tag == current>{l.endonym}</option>
                    }).collect_view()
                }}
            </select>
        </label>
    }
}
