//! The frame around every screen: what is open and whether it is safe, the navigation, the panels.

use leptos::prelude::*;
use locales::t;
use wasm_bindgen::JsCast as _;

use super::ask::AskPanel;
use super::autosave::Autosave;
use super::changes::Changes;
use super::desk::{Desk, Saving, Tab};
use super::findings::Findings;
use super::{files_tab, items_tab, place_tabs, print_tab, program_tab, rules_tab, sites_tab, texts_tab};
use crate::browser;
use crate::resident::{Html, Offline, switch};
use crate::store::drafts::StoreProblem;
use crate::words::Words;

/// The whole page.
#[component]
pub(crate) fn Frame(desk: Desk, save: Autosave) -> impl IntoView {
    keys(desk);
    follow_address(desk);
    Effect::new(move |_| {
        desk.words.with(|w| {
            browser::set_language(w.language(), w.direction());
            let name = desk.draft.with(|d| d.name.clone());
            let title = if name.is_empty() {
                t!(w.messages, "desk-title")
            } else {
                t!(w.messages, "desk-title-of", program = name)
            };
            browser::set_title(&title);
            tell_recovery(&[
                ("recover-title", t!(w.messages, "recover-title")),
                ("recover-text", t!(w.messages, "recover-text")),
                ("recover-nothing", t!(w.messages, "recover-nothing")),
                ("recover-reload", t!(w.messages, "recover-reload")),
                ("recover-download", t!(w.messages, "recover-download")),
            ]);
        });
    });
    let skip = move |ev: leptos::ev::MouseEvent| {
        ev.prevent_default();
        browser::focus("screen-title");
    };
    let language = Memo::new(move |_| desk.words.with(|w| w.language().to_owned()));
    let panels = Memo::new(move |_| desk.is_open() && desk.tab.get() != Tab::Print);
    let offline = RwSignal::new(Offline::default());
    Offline::start("desk", move |state| offline.set(state));
    let fonts_kept = keep_fonts(desk, offline);
    view! {
        <a class="skip" href="#main" on:click=skip>{move || desk.words.with(|w| t!(w.messages, "skip"))}</a>
        <Head desk/>
        <div inner_html=move || desk.words.with(|w| banner(offline.get(), w)) on:click=update></div>
        <CannotSave desk save/>
        <Notice desk/>
        <div class="desk">
            <Navigation desk/>
            <main id="main"><Screen desk save/></main>
            {move || {
                language.with(|_| ());
                panels.get().then(|| {
                    let label = desk.words.with_untracked(|w| t!(w.messages, "panels"));
                    view! {
                        <aside class="panels" aria-label=label><Findings desk/><Changes desk/><AskPanel desk/></aside>
                    }
                })
            }}
        </div>
        <div class="desk-foot">
            <p id="offline-status" class="offline" role="status" class:whole=move || offline.get().is_whole()
                data-fonts=move || fonts_kept.get().then_some("kept")>
                {move || desk.words.with(|w| offline.get().line(w))}
            </p>
        </div>
    }
}

/// Has the fonts of the program's languages kept, so that its sheets can be made without a network; tells whether they
/// are.
fn keep_fonts(desk: Desk, offline: RwSignal<Offline>) -> RwSignal<bool> {
    let kept = RwSignal::new(false);
    let whole = Memo::new(move |_| offline.get().is_whole());
    let languages = Memo::new(move |_| desk.is_open().then(|| desk.program.with(|p| p.languages.clone())));
    Effect::new(move |_| {
        let (true, Some(languages)) = (whole.get(), languages.get()) else { return };
        kept.set(false);
        leptos::task::spawn_local(async move {
            for font in print::fonts_of_languages(languages.iter().map(String::as_str)) {
                if browser::have_kept(&format!("fonts/{}", font.file)).await.is_err() {
                    return;
                }
            }
            kept.set(true);
        });
    });
    kept
}

/// A newer version is ready.
fn banner(offline: Offline, words: &Words) -> String {
    let mut out = Html::default();
    offline.banner(&mut out, words);
    out.as_str().to_owned()
}

fn update(ev: leptos::ev::MouseEvent) {
    if browser::what_to_do(&ev).is_some() {
        switch();
    }
}

/// The words of the screen that follows a panic are put in place while the program still runs.
fn tell_recovery(texts: &[(&str, String)]) {
    let document = web_sys::window().and_then(|w| w.document());
    for (id, words) in texts {
        if let Some(element) = document.as_ref().and_then(|d| d.get_element_by_id(id)) {
            element.set_text_content(Some(words));
        }
    }
}

/// Undo and redo from the keyboard.
fn keys(desk: Desk) {
    browser::window_event("keydown", move |ev| {
        let Some(key) = ev.dyn_ref::<web_sys::KeyboardEvent>() else { return };
        if !(key.ctrl_key() || key.meta_key()) || key.alt_key() {
            return;
        }
        match (key.key().to_lowercase().as_str(), key.shift_key()) {
            ("z", false) => desk.undo(),
            ("z", true) | ("y", false) => desk.redo(),
            _ => return,
        }
        ev.prevent_default();
    });
}

/// The address names the screen and what is chosen on it: `#/rules/<id>`.
fn follow_address(desk: Desk) {
    let read = move || {
        let fragment = browser::fragment();
        let mut parts = fragment.split('/').filter(|p| !p.is_empty());
        let tab = parts.next().and_then(Tab::of).unwrap_or(Tab::Files);
        desk.tab.set(tab);
        desk.chosen.set(parts.collect::<Vec<_>>().join("/"));
    };
    read();
    browser::window_event("hashchange", move |_| read());
}

#[component]
fn Head(desk: Desk) -> impl IntoView {
    let status = move || {
        desk.words.with(|w| match desk.saving.get() {
            Saving::Nothing => t!(w.messages, "save-nothing"),
            Saving::Saved => t!(w.messages, "save-saved"),
            Saving::Waiting => t!(w.messages, "save-waiting"),
            Saving::Failed(_) => t!(w.messages, "save-failed"),
        })
    };
    let say = move |key: &'static str| move || desk.words.with(|w| w.say(key));
    let state = move || match desk.saving.get() {
        Saving::Nothing => "nothing",
        Saving::Saved => "saved",
        Saving::Waiting => "waiting",
        Saving::Failed(_) => "failed",
    };
    view! {
        <header class="lid">
            <a class="brand" href="#/files">
                <svg viewBox="0 0 32 32" aria-hidden="true"><use href="icons.svg#lidleaf"></use></svg>
                <span id="draft-name" dir="auto">{move || {
                    let name = desk.draft.with(|d| d.name.clone());
                    if name.is_empty() { desk.words.with(|w| t!(w.messages, "desk-title")) } else { name }
                }}</span>
            </a>
            <span id="save-status" role="status" data-state=state>{status}</span>
            <button type="button" id="undo" class="lid-button" aria-label=say("undo") title=say("undo")
                prop:disabled=move || !desk.steps.get().0 on:click=move |_| desk.undo()>
                <svg viewBox="0 0 24 24" aria-hidden="true"><path d="M8 4 3 9l5 5M4 9h10a6 6 0 0 1 0 12h-3"/></svg>
            </button>
            <button type="button" id="redo" class="lid-button" aria-label=say("redo") title=say("redo")
                prop:disabled=move || !desk.steps.get().1 on:click=move |_| desk.redo()>
                <svg viewBox="0 0 24 24" aria-hidden="true"><path d="m16 4 5 5-5 5M20 9H10a6 6 0 0 0 0 12h3"/></svg>
            </button>
            <super::app::ScreenLanguage desk/>
        </header>
    }
}

/// Work that cannot be kept is said loudly, with the way to keep it all the same.
#[component]
fn CannotSave(desk: Desk, save: Autosave) -> impl IntoView {
    let problem = Memo::new(move |_| match desk.saving.get() {
        Saving::Failed(problem) => Some(problem),
        _ => None,
    });
    move || {
        problem.get().map(|problem: StoreProblem| {
            let w = desk.words.get();
            view! {
                <div id="cannot-save" class="alarm" role="alert">
                    <p>{w.say(&format!("save-problem-{}", problem.code()))}</p>
                    <button type="button" class="button" id="cannot-save-export" on:click=move |_| files_tab::export(desk)>
                        {t!(w.messages, "export-file")}
                    </button>
                    <button type="button" class="plain" id="cannot-save-again" on:click=move |_| save.now()>
                        {t!(w.messages, "save-again")}
                    </button>
                </div>
            }
        })
    }
}

#[component]
fn Notice(desk: Desk) -> impl IntoView {
    move || {
        desk.notice.get().map(|text| {
            let close = desk.words.with(|w| t!(w.messages, "close"));
            view! {
                <div id="notice" class="alarm calm" role="alert">
                    <p dir="auto">{text}</p>
                    <button type="button" class="plain" on:click=move |_| desk.notice.set(None)>{close}</button>
                </div>
            }
        })
    }
}

#[component]
fn Navigation(desk: Desk) -> impl IntoView {
    let label = move || desk.words.with(|w| t!(w.messages, "navigation"));
    view! {
        <nav class="tabs" aria-label=label>
            <ul>
                {Tab::ALL.map(|tab| {
                    let code = tab.code();
                    view! {
                        <li>
                            <a id=format!("tab-{code}") href=format!("#/{code}")
                                aria-current=move || (desk.tab.get() == tab).then_some("page")
                                aria-disabled=move || (tab != Tab::Files && !desk.is_open()).then_some("true")>
                                {move || desk.words.with(|w| w.say(&format!("tab-{code}")))}
                            </a>
                        </li>
                    }
                }).collect_view()}
            </ul>
        </nav>
    }
}

#[component]
fn Screen(desk: Desk, save: Autosave) -> impl IntoView {
    // A screen is drawn anew when another is chosen, another program opened, or another language.
    let language = Memo::new(move |_| desk.words.with(|w| w.language().to_owned()));
    let draft = Memo::new(move |_| desk.draft.with(|d| d.id.clone()));
    move || {
        language.with(|_| ());
        let open = !draft.get().is_empty();
        let tab = if open { desk.tab.get() } else { Tab::Files };
        let title = desk.words.with_untracked(|w| w.say(&format!("tab-{}", tab.code())));
        let body = match tab {
            Tab::Files => files_tab::files(desk, save),
            Tab::Program => program_tab::program(desk),
            Tab::Streams => place_tabs::streams(desk),
            Tab::Zones => place_tabs::zones(desk),
            Tab::Channels => place_tabs::channels(desk),
            Tab::Sites => sites_tab::sites(desk),
            Tab::Rules => rules_tab::rules(desk),
            Tab::Items => items_tab::items(desk),
            Tab::Texts => texts_tab::texts(desk),
            Tab::Print => print_tab::print(desk),
        };
        view! {
            <h1 id="screen-title" tabindex="-1">{title}</h1>
            {body}
        }
    }
}
