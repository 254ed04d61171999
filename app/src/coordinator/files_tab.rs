//! Opening and keeping: the demo, a new program, a file; the drafts on this device; export.

use guide_data::{LARGEST_FILE, LoadProblem, Program};
use leptos::prelude::*;
use lidleaf::finding_words;
use locales::{DateStyle, t};
use wasm_bindgen_futures::JsFuture;
use wasm_bindgen_futures::spawn_local;

use super::autosave::Autosave;
use super::compare_files::Compare;
use super::desk::{Desk, Tab};
use crate::browser;
use crate::store::drafts;

/// A file that could not be read: what is wrong, and the file itself to hand back.
#[derive(Clone)]
struct Refused {
    message: String,
    name: String,
    /// Left out when the file is too large to have been read.
    text: Option<String>,
}

/// Writes the program file for the person to keep.
pub(crate) fn export(desk: Desk) {
    let program = desk.program.get_untracked();
    let id = if program.id.is_empty() { "program" } else { program.id.as_str() };
    browser::download(&format!("{id}.lidleaf.json"), "application/json", &program.to_json());
}

/// Opens the demo as a new draft.
fn open_demo(desk: Desk, save: Autosave) {
    spawn_local(async move {
        let words = desk.words.get_untracked();
        let read = browser::fetch_text("data/program.json").await;
        match read.map(|json| Program::from_json(&json)) {
            Ok(Ok(program)) => begin(desk, save, program),
            Ok(Err(problem)) => desk.notice.set(Some(load_problem(desk, &problem))),
            Err(problem) => {
                desk.notice.set(Some(words.say(problem.place())));
            }
        }
    });
}

/// Opens a program as a new draft, named after the place.
fn begin(desk: Desk, save: Autosave, program: Program) {
    let language = desk.words.with_untracked(|w| w.language().to_owned());
    let name = program.name.or_source(&language, &program.source_language).unwrap_or(&program.id).to_owned();
    save.begin(name, program);
    desk.go(Tab::Program, "");
}

/// Reads a program file; when it cannot be read, what is wrong, and its text when it was small enough.
pub(crate) async fn read(file: &web_sys::File) -> Result<Program, (LoadProblem, Option<String>)> {
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a size in whole bytes")]
    let bytes = file.size() as usize;
    if bytes > LARGEST_FILE {
        return Err((LoadProblem::TooLarge { bytes }, None));
    }
    let text = JsFuture::from(file.text()).await.ok().and_then(|t| t.as_string());
    let Some(text) = text else {
        return Err((LoadProblem::NotJson { line: 1, column: 1 }, None));
    };
    Program::from_json(&text).map_err(|problem| (problem, Some(text)))
}

pub(crate) fn load_problem(desk: Desk, problem: &LoadProblem) -> String {
    desk.words.with_untracked(|w| {
        finding_words(&w.messages, &format!("load-{}", problem.code()), problem.args())
            .unwrap_or_else(|| problem.code().to_owned())
    })
}

/// The screen.
pub(crate) fn files(desk: Desk, save: Autosave) -> AnyView {
    let w = desk.words.get_untracked();
    let m = &w.messages;
    let refused = RwSignal::new(None::<Refused>);
    let import = move |input: web_sys::HtmlInputElement| {
        let Some(file) = input.files().and_then(|f| f.get(0)) else { return };
        input.set_value("");
        spawn_local(async move {
            let name = file.name();
            match read(&file).await {
                Ok(program) => {
                    refused.set(None);
                    begin(desk, save, program);
                }
                Err((problem, text)) => {
                    refused.set(Some(Refused { message: load_problem(desk, &problem), name, text }));
                }
            }
        });
    };
    let new_program = move |_| {
        let language = desk.words.with_untracked(|w| w.language().to_owned());
        begin(desk, save, Program::blank(&language));
    };
    view! {
        <div id="files-screen">
            <div class="starts">
                <button type="button" class="start" id="open-demo" on:click=move |_| open_demo(desk, save)>
                    <strong>{t!(m, "open-demo")}</strong><span>{t!(m, "open-demo-hint")}</span>
                </button>
                <button type="button" class="start" id="new-program" on:click=new_program>
                    <strong>{t!(m, "new-program")}</strong><span>{t!(m, "new-program-hint")}</span>
                </button>
                <label class="start" for="import-file">
                    <strong>{t!(m, "import-file")}</strong><span>{t!(m, "import-file-hint")}</span>
                    <input type="file" id="import-file" accept=".json,application/json"
                        on:change:target=move |ev| import(ev.target())/>
                </label>
                <button type="button" class="start" id="export" prop:disabled=move || !desk.is_open()
                    on:click=move |_| export(desk)>
                    <strong>{t!(m, "export-file")}</strong><span>{t!(m, "export-file-hint")}</span>
                </button>
            </div>
            {move || refused.get().map(|r| refusal(desk, refused, r))}
            {move || desk.is_open().then(|| view! { <Compare desk/> })}
            <Drafts desk save/>
        </div>
    }
    .into_any()
}

/// A file that was not taken. The open program stays as it was.
fn refusal(desk: Desk, refused: RwSignal<Option<Refused>>, what: Refused) -> AnyView {
    let w = desk.words.get_untracked();
    let m = &w.messages;
    let back = what.text.map(|text| {
        let name = what.name.clone();
        view! {
            <button type="button" class="plain" id="import-original"
                on:click=move |_| { browser::download(&name, "application/json", &text); }>
                {t!(m, "import-original")}
            </button>
        }
    });
    view! {
        <div class="notice" role="alert" id="import-problem">
            <h2>{t!(m, "import-refused", name = what.name.chars().take(80).collect::<String>())}</h2>
            <p dir="auto">{what.message}</p>
            <p>{t!(m, "import-unchanged")}</p>
            <p class="row">
                {back}
                <button type="button" class="plain" on:click=move |_| refused.set(None)>{t!(m, "close")}</button>
            </p>
        </div>
    }
    .into_any()
}

/// The drafts on this device.
#[component]
fn Drafts(desk: Desk, save: Autosave) -> impl IntoView {
    let list = RwSignal::new(Vec::<drafts::Draft>::new());
    let again = RwSignal::new(0_u32);
    Effect::new(move |_| {
        again.track();
        desk.draft.track();
        spawn_local(async move {
            if let Ok(found) = drafts::list().await {
                list.set(found);
            }
        });
    });
    let row = move |draft: drafts::Draft| {
        let w = desk.words.get_untracked();
        let (open, gone) = (draft.id.clone(), draft.id.clone());
        let is_open = {
            let id = draft.id.clone();
            move || desk.draft.with(|d| d.id == id)
        };
        let is_open_too = is_open.clone();
        let sure = RwSignal::new(false);
        let remove = move |_| {
            if !sure.get_untracked() {
                sure.set(true);
                return;
            }
            let id = gone.clone();
            spawn_local(async move {
                let _ = drafts::remove(&id).await;
                again.update(|n| *n += 1);
            });
        };
        let open = move |_| {
            let id = open.clone();
            spawn_local(async move {
                match save.reopen(&id).await {
                    Ok(()) => desk.go(Tab::Program, ""),
                    Err(problem) => {
                        let text =
                            desk.words.with_untracked(|w| w.say(&format!("save-problem-{}", problem.code())));
                        desk.notice.set(Some(text));
                    }
                }
            });
        };
        let remove_label = move || {
            desk.words.with(|w| {
                if sure.get() { t!(w.messages, "draft-remove-sure") } else { t!(w.messages, "list-remove") }
            })
        };
        view! {
            <li class="row draft" data-id=draft.id.clone()>
                <button type="button" class="list-entry" on:click=open aria-current=move || is_open().then_some("true")>
                    <span dir="auto">{draft.name.clone()}</span>
                    <small>{t!(w.messages, "draft-saved", time = when(desk, draft.saved_at))}</small>
                </button>
                <button type="button" class="plain danger" prop:disabled=is_open_too on:click=remove>{remove_label}</button>
            </li>
        }
    };
    view! {
        <section aria-labelledby="drafts-title">
            <h2 id="drafts-title">{desk.words.with_untracked(|w| t!(w.messages, "drafts-title"))}</h2>
            {move || list.with(Vec::is_empty).then(|| desk.words.with(|w| view! { <p class="quiet">{t!(w.messages, "drafts-none")}</p> }))}
            <ul class="rows" id="drafts">
                <For each=move || list.get() key=|d| (d.id.clone(), d.revision) let(draft)>{row(draft)}</For>
            </ul>
        </section>
    }
}

/// A time as day and clock in the language of the screens.
fn when(desk: Desk, stamp: i64) -> String {
    #[expect(clippy::cast_precision_loss, reason = "milliseconds since 1970 are far below 2^53")]
    let date = js_sys::Date::new(&wasm_bindgen::JsValue::from_f64(stamp as f64));
    let day = chrono::NaiveDate::from_ymd_opt(
        i32::try_from(date.get_full_year()).unwrap_or_default(),
        date.get_month() + 1,
        date.get_date(),
    )
    .unwrap_or_default();
    let time = chrono::NaiveTime::from_hms_opt(date.get_hours(), date.get_minutes(), 0).unwrap_or_default();
    desk.words.with_untracked(|w| {
        t!(
            w.messages,
            "day-and-time",
            day = w.messages.date(day, DateStyle::Long),
            time = w.messages.time(time)
        )
    })
}
