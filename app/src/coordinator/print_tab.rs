//! Sheets: choose one, look at it, download its files, for the press and for the web. Made in a worker,
//! from the same job as the command line's.

use std::rc::Rc;
use std::sync::Arc;

use guide_data::{LanguagePack, PrintedSheet, Program, has_unreviewed, program_texts};
use leptos::prelude::*;
use lidleaf::sheets::{self, AsMade, SheetChoices, SheetProblem, SheetWanted, kind_name};
use lidleaf::ticket::TicketFile;
use lidleaf::{Words as SheetWords, preflight_words};
use locales::{DateStyle, Lang, Messages, endonym, t};
use print::{INK_LIMIT, PreflightItem, Severity, SheetKind};
use wasm_bindgen::{JsCast as _, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};

use super::app::DeskPack;
use super::desk::{Desk, own_names};
use super::fields::{Choice, of_program, or_none};
use super::print_choices::{ChoiceFields, Fields, Unread, pick};
use crate::browser::{self, FetchProblem};
use crate::printing::messages::{Made, Order};

/// What the person chose.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Wanted {
    sheet: SheetKind,
    stream: String,
    zone: String,
    languages: [String; sheets::MOST_LANGUAGES],
    fields: Fields,
}

/// How far making a sheet has come.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Progress {
    Idle,
    Making,
    Done,
    /// The worker or its fonts did not arrive.
    Unreachable,
}

/// The worker and what it made last. The worker is not `Send`, as nothing of the browser's is.
#[derive(Clone, Copy)]
struct Press {
    desk: Desk,
    worker: StoredValue<Option<web_sys::Worker>, LocalStorage>,
    waiting: StoredValue<Option<js_sys::Array>, LocalStorage>,
    number: StoredValue<u32>,
    progress: RwSignal<Progress>,
    made: RwSignal<Made>,
    pdf: StoredValue<Option<js_sys::Uint8Array>, LocalStorage>,
    has_pdf: RwSignal<bool>,
    web: StoredValue<Option<js_sys::Uint8Array>, LocalStorage>,
    has_web: RwSignal<bool>,
    /// The profile the print shop sent, if it sent one.
    profile: StoredValue<Option<js_sys::Uint8Array>, LocalStorage>,
    /// The most ink the shop's paper takes, as typed.
    ink_limit: RwSignal<String>,
    problem: RwSignal<Option<String>>,
    /// The sheet ordered last, with everything it might say.
    ordered: StoredValue<Option<sheets::Sheet>>,
    /// What became of it: what was left out, and what the register would keep.
    as_made: RwSignal<AsMade>,
    /// What languages say of a program: the next sheet of it mostly speaks the same.
    spoken: StoredValue<Vec<Spoken>, LocalStorage>,
}

/// A language's pack for a program, and its messages.
#[derive(Clone)]
struct Spoken {
    program: Arc<Program>,
    tag: String,
    words: Rc<(LanguagePack, Messages)>,
}

impl Press {
    fn new(desk: Desk) -> Self {
        Self {
            desk,
            worker: StoredValue::new_local(None),
            waiting: StoredValue::new_local(None),
            number: StoredValue::new(0),
            progress: RwSignal::new(Progress::Idle),
            made: RwSignal::new(Made::default()),
            pdf: StoredValue::new_local(None),
            has_pdf: RwSignal::new(false),
            web: StoredValue::new_local(None),
            has_web: RwSignal::new(false),
            profile: StoredValue::new_local(None),
            ink_limit: RwSignal::new(INK_LIMIT.to_string()),
            problem: RwSignal::new(None),
            ordered: StoredValue::new(None),
            as_made: RwSignal::new(AsMade::default()),
            spoken: StoredValue::new_local(Vec::new()),
        }
    }

    /// What a language says of a program, as last time or fetched.
    async fn language(
        self,
        program: &Arc<Program>,
        tag: &str,
    ) -> Result<Rc<(LanguagePack, Messages)>, FetchProblem> {
        let known = self.spoken.with_value(|all| {
            let same = |one: &&Spoken| Arc::ptr_eq(&one.program, program) && one.tag == tag;
            all.iter().find(same).map(|one| Rc::clone(&one.words))
        });
        if let Some(known) = known {
            return Ok(known);
        }
        let words = Rc::new(language(program, tag).await?);
        let new = Spoken { program: Arc::clone(program), tag: tag.to_owned(), words: Rc::clone(&words) };
        self.spoken.update_value(|all| {
            all.retain(|one| Arc::ptr_eq(&one.program, program));
            all.push(new);
        });
        // Each is read in a task of its own, so that the page answers in between.
        browser::turn().await;
        Ok(words)
    }

    /// Makes a sheet of the program as it stands.
    fn make(self, wanted: Wanted) {
        self.progress.set(Progress::Making);
        self.problem.set(None);
        self.has_pdf.set(false);
        self.has_web.set(false);
        let number = self.next_number();
        let ink_limit = self.ink_limit();
        let choices = match wanted.fields.read(wanted.sheet) {
            Ok(choices) => choices,
            Err(unread) => {
                let words = self.desk.words.get_untracked();
                self.progress.set(Progress::Idle);
                self.problem.set(Some(match unread {
                    Unread::Size(text) => t!(words.messages, "print-size-unread", text = text),
                    Unread::Number(text) => t!(words.messages, "print-number-unread", text = text),
                }));
                return;
            }
        };
        spawn_local(async move {
            // What the click itself changes is shown first.
            browser::turn().await;
            match job(self, &wanted, choices).await {
                Ok(Ok(sheet)) => {
                    let order = Order {
                        number,
                        job: sheet.job.clone(),
                        offer: sheet.offer.clone(),
                        ink_limit,
                        ticket: None,
                    };
                    self.ordered.set_value(Some(sheet));
                    // Put into words and put on its way in two tasks, so that the page answers in between.
                    browser::turn().await;
                    self.order(&order);
                }
                Ok(Err(problem)) => {
                    let words = self.desk.words.get_untracked();
                    self.progress.set(Progress::Idle);
                    self.problem.set(Some(match problem {
                        SheetProblem::UnknownStream(stream) => {
                            t!(words.messages, "print-no-stream", stream = stream)
                        }
                        SheetProblem::UnknownZone(zone) => t!(words.messages, "print-no-zone", zone = zone),
                        SheetProblem::Languages(_) => t!(words.messages, "print-no-language"),
                        SheetProblem::UnknownItem(item) => t!(words.messages, "print-no-item", item = item),
                        SheetProblem::NothingAgainst(item) => {
                            t!(words.messages, "print-nothing-against", item = words.item(&item))
                        }
                    }));
                }
                Err(_) => self.progress.set(Progress::Unreachable),
            }
        });
    }

    fn next_number(self) -> u32 {
        let number = self.number.get_value().wrapping_add(1);
        self.number.set_value(number);
        number
    }

    /// Has the ticket made of the sheet that was made last; it is handed over when it comes.
    fn ticket(self, copies: u32) {
        let Some(job) = self.ordered.with_value(|it| it.as_ref().map(|sheet| sheet.job.clone())) else {
            return;
        };
        let pages = self.made.with_untracked(|made| made.previews.len());
        let program = self.desk.program.get_untracked();
        let words = self.desk.words.get_untracked();
        let name = format!("{}-{}.pdf", program.id, job.sheet.id());
        let contact = program.contact.name.or_source(&words.messages.lang().tag(), &program.source_language);
        let contact = contact.unwrap_or_default();
        let file = TicketFile { job: &job, name: &name, pages, copies };
        let Some(ticket) =
            lidleaf::ticket::ticket(&[file], &program, contact, self.ink_limit(), &words.messages)
        else {
            return;
        };
        self.order(&Order {
            number: self.number.get_value(),
            job,
            offer: print::Offer::default(),
            ink_limit: self.ink_limit(),
            ticket: Some(ticket),
        });
    }

    /// The most ink as typed. What is no number is refused by preflight, as a limit that no paper has.
    fn ink_limit(self) -> u16 {
        self.ink_limit.with_untracked(|text| text.trim().parse().unwrap_or_default())
    }

    /// Sends an order with the shop's profile.
    fn order(self, order: &Order) {
        let order = JsValue::from_str(&serde_json::to_string(order).unwrap_or_default());
        let profile = self.profile.with_value(|bytes| bytes.clone().map_or(JsValue::NULL, JsValue::from));
        self.send(js_sys::Array::of2(&order, &profile));
    }

    /// Sends an order to the worker, starting it first when there is none.
    fn send(self, order: js_sys::Array) {
        let running =
            self.worker.with_value(|w| w.as_ref().map(|worker| worker.post_message(&order).is_ok()));
        if running == Some(true) {
            return;
        }
        self.waiting.set_value(Some(order));
        let options = web_sys::WorkerOptions::new();
        options.set_type(web_sys::WorkerType::Module);
        let Ok(worker) = web_sys::Worker::new_with_options("print-worker.js", &options) else {
            self.progress.set(Progress::Unreachable);
            return;
        };
        let own = worker.clone();
        browser::listen(&worker, "message", move |ev| {
            let Some(message) = ev.dyn_ref::<web_sys::MessageEvent>() else { return };
            self.hear(&own, &message.data());
        });
        browser::listen(&worker, "error", move |_| self.lost());
    }

    fn hear(self, worker: &web_sys::Worker, said: &JsValue) {
        match said.as_string().as_deref() {
            Some("ready") => {
                self.worker.set_value(Some(worker.clone()));
                if let Some(order) = self.waiting.try_update_value(Option::take).flatten() {
                    let _ = worker.post_message(&order);
                }
            }
            Some(_) => self.lost(),
            None => {
                let Some(answer) = said.dyn_ref::<js_sys::Array>() else { return };
                let made = answer.get(0).as_string().and_then(|t| serde_json::from_str::<Made>(&t).ok());
                let Some(made) = made.filter(|m| m.number == self.number.get_value()) else { return };
                let file = |at| answer.get(at).dyn_into::<js_sys::Uint8Array>().ok();
                let (pdf, web) = (file(1), file(2));
                if made.is_ticket {
                    match pdf {
                        Some(pdf) => {
                            let program = self.desk.program.with_untracked(|p| p.id.clone());
                            browser::download_bytes(
                                &format!("{program}-ticket.pdf"),
                                "application/pdf",
                                &pdf,
                            );
                        }
                        None => self.problem.set(self.desk.words.with_untracked(|words| {
                            made.preflight.first().map(|item| preflight_words(item, &words.messages))
                        })),
                    }
                    return;
                }
                self.has_pdf.set(pdf.is_some());
                self.pdf.set_value(pdf);
                self.has_web.set(web.is_some());
                self.web.set_value(web);
                self.progress.set(if made.no_fonts { Progress::Unreachable } else { Progress::Done });
                let as_made =
                    self.ordered.with_value(|it| it.as_ref().map(|sheet| sheet.as_made(made.taken)));
                self.as_made.set(as_made.unwrap_or_default());
                self.made.set(made);
            }
        }
    }

    /// A worker that stopped is started anew by the next order.
    fn lost(self) {
        if let Some(worker) = self.worker.try_update_value(Option::take).flatten() {
            worker.terminate();
        }
        self.progress.set(Progress::Unreachable);
    }
}

/// The job of a sheet: packs as the command line makes them, texts those of the draft.
async fn job(
    press: Press,
    wanted: &Wanted,
    choices: SheetChoices,
) -> Result<Result<sheets::Sheet, SheetProblem>, FetchProblem> {
    let program = press.desk.program.get_untracked();
    let mut packs = Vec::new();
    for tag in wanted.languages.iter().filter(|l| !l.is_empty()) {
        packs.push(press.language(&program, tag).await?);
    }
    let words: Vec<SheetWords<'_>> = packs
        .iter()
        .map(|words| {
            let (pack, messages) = words.as_ref();
            SheetWords { messages, pack }
        })
        .collect();
    let some = |text: &str| (!text.is_empty()).then(|| text.to_owned());
    let wanted = SheetWanted {
        sheet: wanted.sheet,
        stream: some(&wanted.stream),
        zone: some(&wanted.zone),
        date: browser::now().day,
        choices,
    };
    Ok(sheets::sheet(&press.desk.checked_now().guide, &program, &words, &wanted))
}

/// A language's pack for the draft, and its messages.
async fn language(program: &Program, tag: &str) -> Result<(LanguagePack, Messages), FetchProblem> {
    let desk: DeskPack = browser::fetch_json(&format!("data/coordinator-{tag}.json")).await?;
    let mut pack = LanguagePack { names: desk.names, ..LanguagePack::default() };
    let lang: Lang = tag.parse().unwrap_or_default();
    pack.language = tag.to_owned();
    pack.source.clone_from(&program.source_language);
    pack.direction = lang.direction().html().to_owned();
    pack.texts = program_texts(program, tag);
    pack.names.extend(own_names(program, tag));
    pack.unreviewed =
        has_unreviewed(program, tag) || lang.entry().is_none_or(|entry| entry.review().needs_notice());
    let messages = sheets::messages(program, &pack, &desk.messages);
    Ok((pack, messages))
}

/// The screen.
pub(crate) fn print(desk: Desk) -> AnyView {
    let press = Press::new(desk);
    let languages = desk.program.with_untracked(|p| p.languages.clone());
    let first = |at: usize| languages.get(at).filter(|_| at == 0).cloned().unwrap_or_default();
    let stream = desk.program.with_untracked(|p| {
        let found = p.streams.iter().find(|s| s.kind == "recycling").or(p.streams.first());
        found.map(|s| s.id.clone()).unwrap_or_default()
    });
    let wanted = RwSignal::new(Wanted {
        sheet: SheetKind::CartLid,
        stream,
        zone: String::new(),
        languages: std::array::from_fn(first),
        fields: Fields::default(),
    });
    let fields = RwSignal::new(Fields::default());
    let kind = Signal::derive(move || wanted.with(|w| w.sheet));
    let make = move |ev: leptos::ev::SubmitEvent| {
        ev.prevent_default();
        press.make(Wanted { fields: fields.get_untracked(), ..wanted.get_untracked() });
    };
    let w = desk.words.get_untracked();
    let m = &w.messages;
    let kinds: Vec<Choice> =
        SheetKind::ALL.iter().map(|k| (k.id().to_owned(), kind_name(&w.messages, *k))).collect();
    let tags: Vec<Choice> = languages.iter().map(|l| (l.clone(), endonym(l))).collect();
    type Get = fn(&Wanted) -> String;
    type Set = fn(&mut Wanted, String);
    let places: [(&'static str, Get, Set); sheets::MOST_LANGUAGES] = [
        ("print-language-1", |all| all.languages[0].clone(), |all, v| all.languages[0] = v),
        ("print-language-2", |all| all.languages[1].clone(), |all, v| all.languages[1] = v),
        ("print-language-3", |all| all.languages[2].clone(), |all, v| all.languages[2] = v),
        ("print-language-4", |all| all.languages[3].clone(), |all, v| all.languages[3] = v),
    ];
    let pickers = places
        .into_iter()
        .enumerate()
        .map(|(at, (id, get, set))| {
            let choices = if at == 0 { tags.clone() } else { or_none(desk, tags.clone()) };
            pick(wanted, id, t!(m, "print-language", number = at + 1), choices, get, set)
        })
        .collect_view();
    view! {
        <div id="print-screen">
            <form class="fields" novalidate=true on:submit=make>
                {pick(wanted, "print-sheet", t!(m, "print-sheet"), kinds, |all| all.sheet.id().to_owned(), |all, v| {
                    all.sheet = SheetKind::from_id(&v).unwrap_or(SheetKind::CartLid);
                })}
                {pick(wanted, "print-stream", t!(m, "field-stream"), of_program(desk, "stream"),
                    |all| all.stream.clone(), |all, v| all.stream = v)}
                {pick(wanted, "print-zone", t!(m, "print-zone"), or_none(desk, of_program(desk, "zone")),
                    |all| all.zone.clone(), |all, v| all.zone = v)}
                {pickers}
                <label class="field">
                    <span>{t!(m, "print-profile")}</span>
                    <input type="file" id="print-profile" accept=".icc,.icm"
                        on:change:target=move |ev| take_profile(press, &ev.target())/>
                    <small>{t!(m, "print-profile-hint")}</small>
                </label>
                <label class="field">
                    <span>{t!(m, "print-ink-limit")}</span>
                    <input type="number" id="print-ink-limit" min="100" max="400" inputmode="numeric"
                        prop:value=move || press.ink_limit.get()
                        on:input:target=move |ev| press.ink_limit.set(ev.target().value())/>
                </label>
                <ChoiceFields desk fields kind/>
                <p class="wide row">
                    <button type="submit" class="button" id="print-make">{t!(m, "print-make")}</button>
                    <button type="button" class="button" id="print-download"
                        prop:disabled=move || !press.has_pdf.get()
                        on:click=move |_| {
                            let now = Wanted { fields: fields.get_untracked(), ..wanted.get_untracked() };
                            download(desk, press.pdf, &now, None);
                        }>
                        {t!(m, "print-download")}
                    </button>
                    <button type="button" class="button" id="print-download-web"
                        prop:disabled=move || !press.has_web.get()
                        on:click=move |_| {
                            let now = Wanted { fields: fields.get_untracked(), ..wanted.get_untracked() };
                            download(desk, press.web, &now, Some("web"));
                        }>
                        {t!(m, "print-download-web")}
                    </button>
                    <button type="button" class="button" id="print-ticket"
                        prop:disabled=move || !press.has_pdf.get()
                        on:click=move |_| press.ticket(0)>
                        {t!(m, "print-ticket")}
                    </button>
                </p>
                <p class="wide"><small>{t!(m, "print-web-hint")}</small></p>
            </form>
            <Status desk press/>
            <Register desk press/>
            <Previews press/>
            <Preflight desk press/>
        </div>
    }
    .into_any()
}

/// What has been printed: noting the sheet made last, and taking back what is no longer out there.
#[component]
fn Register(desk: Desk, press: Press) -> impl IntoView {
    let copies = RwSignal::new(String::new());
    let note = move |_| {
        let sheet = press.as_made.get_untracked().printed;
        let count = copies.with_untracked(|text| text.trim().parse().unwrap_or_default());
        desk.edit("printed", move |program| {
            let id = program.free_printed_id(&sheet);
            program.note_printed(PrintedSheet {
                id,
                printed: Some(browser::now().day),
                copies: count,
                ..sheet
            });
        });
    };
    let sheets = move || desk.program.with(|p| p.printed.clone());
    let row = move |sheet: PrintedSheet| {
        let w = desk.words.get_untracked();
        let m = &w.messages;
        let day =
            |day: Option<chrono::NaiveDate>| day.map(|d| m.date(d, DateStyle::Long)).unwrap_or_default();
        let text =
            t!(m, "printed-entry", id = sheet.id.as_str(), day = day(sheet.printed), copies = sheet.copies);
        let gone = sheet.withdrawn.map(|d| t!(m, "printed-withdrawn", day = day(Some(d))));
        let label = if gone.is_some() { t!(m, "printed-still-out") } else { t!(m, "printed-withdraw") };
        let id = sheet.id.clone();
        let turn = move |_| {
            let id = id.clone();
            desk.edit("printed", move |program| {
                if let Some(sheet) = program.printed.iter_mut().find(|s| s.id == id) {
                    sheet.withdrawn = sheet.withdrawn.is_none().then(|| browser::now().day);
                }
            });
        };
        view! {
            <li class="row" data-id=sheet.id>
                <span dir="auto">{text}</span>
                {gone.map(|text| view! { <small>{text}</small> })}
                <button type="button" class="plain" on:click=turn>{label}</button>
            </li>
        }
    };
    let say = move |key: &'static str| move || desk.words.with(|w| w.say(key));
    view! {
        <section aria-labelledby="printed-title">
            <h2 id="printed-title">{say("printed-title")}</h2>
            <p class="row">
                <label class="field">
                    <span>{say("printed-copies")}</span>
                    <input type="number" id="print-copies" min="0" inputmode="numeric"
                        on:input:target=move |ev| copies.set(ev.target().value())/>
                </label>
                <button type="button" class="plain" id="print-note" on:click=note
                    prop:disabled=move || !press.has_pdf.get()>{say("printed-note")}</button>
            </p>
            <ul class="rows" id="printed">
                <For each=sheets key=|s| format!("{} {:?}", s.id, s.withdrawn) let(sheet)>{row(sheet)}</For>
            </ul>
        </section>
    }
}

/// Reads the profile the print shop sent; choosing none goes back to the bundled one.
fn take_profile(press: Press, input: &web_sys::HtmlInputElement) {
    press.profile.set_value(None);
    let Some(file) = input.files().and_then(|files| files.get(0)) else { return };
    spawn_local(async move {
        let bytes = JsFuture::from(file.array_buffer()).await.ok();
        // A file that cannot be read is handed on as an empty one, which preflight refuses in words.
        let bytes =
            bytes.map_or_else(|| js_sys::Uint8Array::new_with_length(0), |b| js_sys::Uint8Array::new(&b));
        press.profile.set_value(Some(bytes));
    });
}

/// Hands a file over, under the name the command line gives it.
fn download(
    desk: Desk,
    file: StoredValue<Option<js_sys::Uint8Array>, LocalStorage>,
    wanted: &Wanted,
    ending: Option<&str>,
) {
    let program = desk.program.with_untracked(|p| p.id.clone());
    let mut parts = vec![
        program.as_str(),
        wanted.sheet.id(),
        wanted.stream.as_str(),
        wanted.zone.as_str(),
        wanted.fields.item(),
    ];
    parts.extend(wanted.languages.iter().map(String::as_str));
    parts.extend(ending);
    parts.retain(|part| !part.is_empty());
    let name: String =
        parts.join("-").chars().map(|c| if c.is_alphanumeric() || c == '-' { c } else { '_' }).collect();
    file.with_value(|pdf| {
        if let Some(pdf) = pdf {
            browser::download_bytes(&format!("{name}.pdf"), "application/pdf", pdf);
        }
    });
}

#[component]
fn Status(desk: Desk, press: Press) -> impl IntoView {
    let text = move || {
        desk.words.with(|w| match press.progress.get() {
            Progress::Idle => String::new(),
            Progress::Making => t!(w.messages, "print-making"),
            Progress::Unreachable => t!(w.messages, "print-unreachable"),
            Progress::Done if press.has_pdf.get() => t!(w.messages, "print-done"),
            Progress::Done => t!(w.messages, "print-refused"),
        })
    };
    let state = move || match press.progress.get() {
        Progress::Idle => "idle",
        Progress::Making => "making",
        Progress::Unreachable => "unreachable",
        Progress::Done if press.has_pdf.get() => "done",
        Progress::Done => "refused",
    };
    view! {
        <p id="print-status" role="status" data-state=state>{text}</p>
        {move || press.problem.get().map(|text| view! { <p class="field-problem" role="alert">{text}</p> })}
    }
}

/// The pages as pictures: an SVG inside an image runs nothing and loads nothing.
#[component]
fn Previews(press: Press) -> impl IntoView {
    let addresses = StoredValue::new(Vec::<String>::new());
    let revoke = move || {
        for address in addresses.try_update_value(std::mem::take).unwrap_or_default() {
            let _ = web_sys::Url::revoke_object_url(&address);
        }
    };
    on_cleanup(revoke);
    move || {
        revoke();
        let pages: Vec<String> = press.made.get().previews.iter().filter_map(|svg| picture(svg)).collect();
        addresses.set_value(pages.clone());
        let desk = press.desk;
        view! {
            <div class="previews">
                {pages.into_iter().enumerate().map(|(at, address)| {
                    let alt = desk.words.with_untracked(|w| t!(w.messages, "print-page", number = at + 1));
                    view! { <img class="preview" src=address alt=alt/> }
                }).collect_view()}
            </div>
        }
    }
}

fn picture(svg: &str) -> Option<String> {
    let options = web_sys::BlobPropertyBag::new();
    options.set_type("image/svg+xml");
    let parts = js_sys::Array::of1(&JsValue::from_str(svg));
    let blob = web_sys::Blob::new_with_str_sequence_and_options(&parts, &options).ok()?;
    web_sys::Url::create_object_url_with_blob(&blob).ok()
}

/// What preflight found, errors first; and the lines that are short of the whole truth.
#[component]
fn Preflight(desk: Desk, press: Press) -> impl IntoView {
    move || {
        // As the worker sorted them: the marks on the previews are numbered so.
        let items: Vec<PreflightItem> = press.made.get().preflight;
        let AsMade { mut shortened, left_out, hazards_in_brief, refused_in_brief, .. } = press.as_made.get();
        // Those that preflight has not told of already.
        shortened.retain(|(_, fidelity)| *fidelity >= guide_data::FAITHFUL);
        if items.is_empty() && shortened.is_empty() {
            return ().into_any();
        }
        let w = desk.words.get_untracked();
        let m = &w.messages;
        let against = items.iter().filter(|item| item.code == "lines-contradict").count();
        let against = (against > 0).then(
            || view! { <p id="print-contradictions">{t!(m, "print-contradictions", count = against)}</p> },
        );
        let rows = items
            .into_iter()
            .zip(1_usize..)
            .map(|(item, number)| {
                let severity = match item.severity {
                    Severity::Error => "error",
                    Severity::Warning => "warning",
                    Severity::Pass => "pass",
                };
                let message = preflight_words(&item, m);
                let marked = item.place.is_some() && item.severity != Severity::Pass;
                let marked = marked.then(|| view! { <small>{t!(m, "print-mark", number = number)}</small> });
                view! {
                    <li class=format!("finding is-{severity}") data-code=item.code data-severity=severity>
                        <span class="finding-mark">{w.say(&format!("severity-{severity}"))}</span>
                        <span class="finding-text" dir="auto">{message}</span>
                        {" "}
                        {marked}
                    </li>
                }
            })
            .collect_view();
        let short = shortened
            .into_iter()
            .map(|(item, fidelity)| {
                // Rounded down: "100%" would deny what the line is here to say.
                let share = w.messages.percent((fidelity * 100.0).floor() / 100.0, 0);
                view! { <li>{t!(m, "print-shortened", item = w.item(&item), percent = share)}</li> }
            })
            .collect_view();
        let names: Vec<String> = left_out.iter().map(|item| w.item(item)).collect();
        let gone = (!names.is_empty()).then(|| t!(m, "print-left-out", items = m.list_and(&names)));
        let brief = hazards_in_brief.then(|| t!(m, "print-hazards-in-brief"));
        let unplaced = refused_in_brief.then(|| t!(m, "print-refused-in-brief"));
        view! {
            <section id="preflight" aria-labelledby="preflight-title">
                <h2 id="preflight-title">{t!(m, "preflight-title")}</h2>
                {against}
                <ul class="findings">{rows}</ul>
                <ul class="shortened">
                    {gone.map(|text| view! { <li id="print-left-out">{text}</li> })}
                    {brief.map(|text| view! { <li>{text}</li> })}
                    {unplaced.map(|text| view! { <li>{text}</li> })}
                    {short}
                </ul>
            </section>
        }
        .into_any()
    }
}
