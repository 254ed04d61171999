//! Starting the resident's page: language, guide, words; then the frame around every screen.

use std::sync::Arc;

use guide_data::{Guide, LanguagePack};
use leptos::mount::mount_to;
use leptos::prelude::*;
use locales::{Lang, negotiate, t};
use wasm_bindgen::JsCast as _;

use super::item::PageView;
use super::offline::{Offline, OfflineLine, UpdateBanner};
use super::state::{Resident, Screens};
use crate::address::Address;
use crate::browser::{self, FetchProblem, Settings};
use crate::words::Words;

/// Draws the page once guide and words are here.
pub(crate) fn start() {
    // Leptos has tasks of its own only once something is mounted.
    wasm_bindgen_futures::spawn_local(async {
        match load().await {
            Ok((guide, words, settings, unknown_language)) => {
                let place = web_sys::window()
                    .and_then(|w| w.document())
                    .and_then(|d| d.get_element_by_id("app"))
                    .and_then(|e| e.dyn_into::<web_sys::HtmlElement>().ok());
                if let Some(place) = place {
                    place.set_inner_text("");
                    mount_to(place, move || {
                        let resident =
                            Resident::new(guide.clone(), words.clone(), settings.clone(), Screens::Page);
                        view! { <Frame resident unknown_language=unknown_language.clone()/> }
                    })
                    .forget();
                }
            }
            Err(problem) => start_problem(problem),
        }
    });
}

/// Shows the part of the page that was written for this; no words have been loaded yet.
pub(crate) fn start_problem(problem: FetchProblem) {
    let document = web_sys::window().and_then(|w| w.document());
    let show = |id: &str| {
        if let Some(element) = document.as_ref().and_then(|d| d.get_element_by_id(id)) {
            let _ = element.remove_attribute("hidden");
        }
    };
    show("start-problem");
    show(&format!("start-problem-{}", problem.code()));
}

type Loaded = (Arc<Guide>, Arc<Words>, Settings, Option<String>);

/// Fetches the guide and the best language: the address's, the one chosen before, the browser's,
/// the guide's own.
async fn load() -> Result<Loaded, FetchProblem> {
    let settings = browser::load_settings();
    let asked = Address::read(&browser::fragment()).language;
    let guide: Guide = browser::fetch_json("data/guide.json").await?;
    let offered: Vec<Lang> = guide.languages.iter().filter_map(|l| l.parse().ok()).collect();
    let known = |tag: &str| negotiate(&[tag], &offered).map(|l| l.tag());
    let from_browser = || {
        let wanted = browser::navigator_languages();
        let wanted: Vec<&str> = wanted.iter().map(String::as_str).collect();
        negotiate(&wanted, &offered).map(Lang::tag)
    };
    let from_address = asked.as_deref().and_then(known);
    let unknown = asked.filter(|_| from_address.is_none());
    let language = from_address
        .or_else(|| settings.language.as_deref().and_then(known))
        .or_else(from_browser)
        .unwrap_or_else(|| guide.source_language.clone());
    let pack = match pack(&language).await {
        Ok(pack) => pack,
        Err(_) => pack(&guide.source_language).await?,
    };
    let words = Words::new(pack, &guide);
    Ok((Arc::new(guide), Arc::new(words), settings, unknown))
}

/// A language's pack.
async fn pack(language: &str) -> Result<LanguagePack, FetchProblem> {
    browser::fetch_json(&format!("data/lang/{language}.json")).await
}

/// Fetches other words to search by, now that the guide can answer. Without them every item is
/// still found by its name.
fn learn(resident: Resident) {
    wasm_bindgen_futures::spawn_local(async move {
        let words = resident.words.get_untracked();
        let others = browser::fetch_json(&format!("data/words/{}.json", words.language())).await;
        if let Ok(others) = others {
            words.learn(&others, &resident.guide.get_untracked());
            resident.learned.update(|times| *times += 1);
        }
    });
}

/// Header, page, footer.
#[component]
fn Frame(
    /// The state of the screens.
    resident: Resident,
    /// A language the address asked for and the guide does not have.
    unknown_language: Option<String>,
) -> impl IntoView {
    provide_context(resident);
    provide_context(Offline::start("guide"));
    let missing = RwSignal::new(unknown_language);
    follow_address(resident, missing);
    learn(resident);
    Effect::new(move |_| {
        resident.words.with(|w| {
            browser::set_language(w.language(), w.direction());
            let title = w.text("program.name").unwrap_or_default();
            browser::set_title(&t!(w.messages, "page-title", program = title));
        });
    });
    let skip = move |ev: leptos::ev::MouseEvent| {
        ev.prevent_default();
        browser::focus("heading");
    };
    view! {
        <a class="skip" href="#main" on:click=skip>{move || resident.words.with(|w| t!(w.messages, "skip"))}</a>
        <header class="lid">
            <Brand/>
            <LanguageSwitch missing/>
        </header>
        <UpdateBanner/>
        <main id="main">
            {move || missing.get().map(|language| {
                let words = resident.words.get();
                view! {
                    <div class="notice" role="alert" id="unknown-language">
                        <p>{t!(words.messages, "unknown-language", language = language)}</p>
                    </div>
                }
            })}
            <PageView/>
        </main>
        <Foot/>
    }
}

/// Keeps the page in step with the browser's address, its back and forward.
fn follow_address(resident: Resident, missing: RwSignal<Option<String>>) {
    let read = move |first: bool| {
        let address = Address::read(&browser::fragment());
        let current = resident.words.with_untracked(|w| w.language().to_owned());
        if let Some(language) = address.language.filter(|l| *l != current && !first) {
            switch(resident, language, missing);
        }
        resident.page.set(address.page);
    };
    read(true);
    browser::window_event("hashchange", move |_| read(false));
}

/// Shows another language. Without a network it comes from what was kept at the first visit.
fn switch(resident: Resident, language: String, missing: RwSignal<Option<String>>) {
    wasm_bindgen_futures::spawn_local(async move {
        let guide = resident.guide.get_untracked();
        match pack(&language).await {
            Ok(pack) => {
                missing.set(None);
                let mut settings = browser::load_settings();
                settings.language = Some(language.clone());
                browser::save_settings(&settings);
                resident.words.set(Arc::new(Words::new(pack, &guide)));
                learn(resident);
                browser::replace_fragment(&resident.page.with_untracked(|p| p.fragment(&language)));
            }
            Err(_) => missing.set(Some(language)),
        }
    });
}

#[component]
fn Brand() -> impl IntoView {
    let resident = expect_context::<Resident>();
    move || {
        let words = resident.words.get();
        view! {
            <super::link::PageLink page=crate::address::Page::Home class="brand">
                <svg viewBox="0 0 32 32" aria-hidden="true"><use href="icons.svg#lidleaf"></use></svg>
                <span>{words.text("program.name").unwrap_or_default()}</span>
            </super::link::PageLink>
        }
    }
}

/// The language switch: each language under its own name.
#[component]
fn LanguageSwitch(missing: RwSignal<Option<String>>) -> impl IntoView {
    let resident = expect_context::<Resident>();
    move || {
        let words = resident.words.get();
        let guide = resident.guide.get();
        let current = words.language().to_owned();
        let options = guide
            .languages
            .iter()
            .map(|tag| {
                let name = tag.parse::<Lang>().map_or_else(|_| tag.clone(), |l| l.endonym());
                view! { <option value=tag.clone() lang=tag.clone() selected=*tag == current>{name}</option> }
            })
            .collect_view();
        view! {
            <label class="language">
                <svg viewBox="0 0 24 24" aria-hidden="true">
                    <circle cx="12" cy="12" r="9"/><path d="M3 12h18M12 3c5 5 5 13 0 18M12 3c-5 5-5 13 0 18"/>
                </svg>
                <span class="unseen">{t!(words.messages, "language-label")}</span>
                <select id="language" on:change:target=move |ev| switch(resident, ev.target().value(), missing)>
                    {options}
                </select>
            </label>
        }
    }
}

/// Zone, state of the translation, offline line, edition, whom to ask.
#[component]
fn Foot() -> impl IntoView {
    let resident = expect_context::<Resident>();
    view! {
        <footer>
            <OfflineLine/>
            {move || {
                let words = resident.words.get();
                let guide = resident.guide.get();
                let zone = resident.zone.get();
                let zones = guide
                    .zones
                    .iter()
                    .map(|z| view! {
                        <option value=z.id.clone() selected=zone.as_ref() == Some(&z.id)>
                            {words.named("zone", &z.id)}
                        </option>
                    })
                    .collect_view();
                let choose = move |value: String| resident.set_zone((!value.is_empty()).then_some(value));
                view! {
                    {(guide.zones.len() > 1).then(|| view! {
                        <label class="zone">
                            <span>{t!(words.messages, "zone-label")}</span>
                            <select id="zone" on:change:target=move |ev| choose(ev.target().value())>
                                <option value="" selected=zone.is_none()>{t!(words.messages, "zone-none")}</option>
                                {zones}
                            </select>
                        </label>
                    })}
                    {words.unreviewed().then(|| view! {
                        <p id="unreviewed" class="quiet">{t!(words.messages, "unreviewed")}</p>
                    })}
                    <super::answer::Ask/>
                    <p class="quiet">
                        {t!(words.messages, "decided-edition", edition = guide.edition.label.clone())}
                    </p>
                    <p class="quiet">{t!(words.messages, "privacy")}</p>
                }
            }}
        </footer>
    }
}
