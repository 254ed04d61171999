//! Fields of the program as inputs. Each knows how to read and write its place in a program, so
//! that what is shown follows undo, redo and other windows by itself.

use std::sync::Arc;

use chrono::NaiveDate;
use guide_data::{Program, TextState};
use leptos::prelude::*;
use locales::{Lang, Width, endonym, t};
use wasm_bindgen::JsCast as _;

use super::desk::Desk;
use super::texts;
use crate::browser;

/// Reads something from a program.
type Look<T> = Arc<dyn Fn(&Program) -> T + Send + Sync>;
/// Changes a program by something.
type Edit<T> = Arc<dyn Fn(&mut Program, T) + Send + Sync>;

/// How a field reads its value from a program, and writes it.
pub(crate) struct Lens<T> {
    get: Look<T>,
    set: Edit<T>,
}

impl<T> Clone for Lens<T> {
    fn clone(&self) -> Self {
        Self { get: self.get.clone(), set: self.set.clone() }
    }
}

impl<T: 'static> Lens<T> {
    pub(crate) fn new(
        get: impl Fn(&Program) -> T + Send + Sync + 'static,
        set: impl Fn(&mut Program, T) + Send + Sync + 'static,
    ) -> Self {
        Self { get: Arc::new(get), set: Arc::new(set) }
    }

    /// Reads the place.
    pub(crate) fn get(&self, program: &Program) -> T {
        (self.get)(program)
    }

    /// Writes the place.
    #[cfg(test)]
    pub(crate) fn set(&self, program: &mut Program, value: T) {
        (self.set)(program, value);
    }

    /// The same place seen as another type; what cannot be read is not written.
    pub(crate) fn map<U: 'static>(
        self,
        out: impl Fn(T) -> U + Send + Sync + 'static,
        back: impl Fn(U) -> Option<T> + Send + Sync + 'static,
    ) -> Lens<U> {
        let Self { get, set } = self;
        Lens::new(
            move |p| out(get(p)),
            move |p, value| {
                if let Some(value) = back(value) {
                    set(p, value);
                }
            },
        )
    }
}

impl Lens<Option<String>> {
    /// Nothing and an empty text are the same to a person.
    pub(crate) fn or_empty(self) -> Lens<String> {
        self.map(Option::unwrap_or_default, |v: String| Some((!v.trim().is_empty()).then_some(v)))
    }
}

impl Lens<Option<NaiveDate>> {
    /// In the form the date input of a browser writes days.
    pub(crate) fn day_text(self) -> Lens<String> {
        self.map(
            |d| d.map(|d| d.to_string()).unwrap_or_default(),
            |v: String| if v.is_empty() { Some(None) } else { v.parse().ok().map(Some) },
        )
    }
}

/// A place of the program itself: `lens!(|p| p.edition.label)`.
macro_rules! lens {
    (|$p:ident| $($place:tt)+) => {
        $crate::coordinator::fields::Lens::new(
            |$p: &guide_data::Program| ($($place)+).clone(),
            |$p: &mut guide_data::Program, value| $($place)+ = value,
        )
    };
}

/// A place in an entry of one of its lists: `lens_in!(rules[id].reason)`.
macro_rules! lens_in {
    ($list:ident[$id:expr].$($field:tt)+) => {{
        let (read, write): (String, String) = ($id.to_owned(), $id.to_owned());
        $crate::coordinator::fields::Lens::new(
            move |p: &guide_data::Program| {
                p.$list.iter().find(|x| x.id == read).map(|x| x.$($field)+.clone()).unwrap_or_default()
            },
            move |p: &mut guide_data::Program, value| {
                if let Some(x) = p.$list.iter_mut().find(|x| x.id == write) {
                    x.$($field)+ = value;
                }
            },
        )
    }};
}

pub(crate) use {lens, lens_in};

/// A choice: value and words.
pub(crate) type Choice = (String, String);

/// The element id of a field.
pub(crate) fn field_id(what: &str) -> String {
    format!("f-{what}")
}

/// A line of text; `kind` is the input's type.
pub(crate) fn line(desk: Desk, what: &str, label: String, kind: &'static str, lens: Lens<String>) -> AnyView {
    let (id, what, get) = (field_id(what), what.to_owned(), lens.get.clone());
    view! {
        <label class="field" for=id.clone()>
            <span>{label}</span>
            <input id=id.clone() type=kind autocomplete="off" dir="auto"
                prop:value=move || desk.program.with(|p| get(p))
                on:input:target=move |ev| {
                    let value = ev.target().value();
                    desk.edit(&what, |p| (lens.set)(p, value));
                }/>
        </label>
    }
    .into_any()
}

/// Several lines of text.
pub(crate) fn area(desk: Desk, what: &str, label: String, lens: Lens<String>) -> AnyView {
    let (id, what, get) = (field_id(what), what.to_owned(), lens.get.clone());
    view! {
        <label class="field wide" for=id.clone()>
            <span>{label}</span>
            <textarea id=id.clone() rows="3" dir="auto"
                prop:value=move || desk.program.with(|p| get(p))
                on:input:target=move |ev| {
                    let value = ev.target().value();
                    desk.edit(&what, |p| (lens.set)(p, value));
                }></textarea>
        </label>
    }
    .into_any()
}

/// A list of lines, one entry each.
pub(crate) fn lines(desk: Desk, what: &str, label: String, lens: Lens<Vec<String>>) -> AnyView {
    let joined = lens.map(|v| v.join("\n"), |v: String| Some(v.lines().map(str::to_owned).collect()));
    area(desk, what, label, joined)
}

/// Yes or no.
pub(crate) fn check(desk: Desk, what: &str, label: String, lens: Lens<bool>) -> AnyView {
    let (id, what, get) = (field_id(what), what.to_owned(), lens.get.clone());
    view! {
        <label class="tick" for=id.clone()>
            <input id=id.clone() type="checkbox"
                prop:checked=move || desk.program.with(|p| get(p))
                on:change:target=move |ev| {
                    let value = ev.target().checked();
                    desk.edit(&what, |p| (lens.set)(p, value));
                }/>
            <span>{label}</span>
        </label>
    }
    .into_any()
}

/// One of several.
pub(crate) fn select(
    desk: Desk,
    what: &str,
    label: String,
    lens: Lens<String>,
    choices: impl Fn() -> Vec<Choice> + Send + Sync + 'static,
) -> AnyView {
    let (id, what, get) = (field_id(what), what.to_owned(), lens.get.clone());
    let value = Memo::new(move |_| desk.program.with(|p| get(p)));
    let choices = Memo::new(move |_| choices());
    view! {
        <label class="field" for=id.clone()>
            <span>{label}</span>
            <select id=id.clone()
                on:change:target=move |ev| {
                    let value = ev.target().value();
                    desk.edit(&what, |p| (lens.set)(p, value));
                }>
                {move || {
                    let now = value.get();
                    let mut all = choices.get();
                    if !all.iter().any(|(v, _)| *v == now) {
                        // What the file says is shown even when it is no longer a choice.
                        all.insert(0, (now.clone(), now.clone()));
                    }
                    all.into_iter()
                        .map(|(v, words)| {
                            let chosen = v == now;
                            view! { <option value=v selected=chosen>{words}</option> }
                        })
                        .collect_view()
                }}
            </select>
        </label>
    }
    .into_any()
}

/// Any number of several.
pub(crate) fn many(
    desk: Desk,
    what: &str,
    label: String,
    lens: Lens<Vec<String>>,
    choices: impl Fn() -> Vec<Choice> + Send + Sync + 'static,
) -> AnyView {
    let (id, what) = (field_id(what), what.to_owned());
    let choices = Memo::new(move |_| choices());
    view! {
        <fieldset class="many" id=id>
            <legend>{label}</legend>
            {move || {
                choices
                    .get()
                    .into_iter()
                    .map(|(value, words)| {
                        let (get, set, what) = (lens.get.clone(), lens.set.clone(), what.clone());
                        let (mine, chosen) = (value.clone(), value.clone());
                        view! {
                            <label class="tick">
                                <input type="checkbox" value=value
                                    prop:checked=move || desk.program.with(|p| get(p).contains(&mine))
                                    on:change:target={
                                        let get = lens.get.clone();
                                        move |ev| {
                                            let on = ev.target().checked();
                                            let mut all = desk.program.with_untracked(|p| get(p));
                                            all.retain(|v| *v != chosen);
                                            if on {
                                                all.push(chosen.clone());
                                            }
                                            desk.edit(&what, |p| set(p, all));
                                        }
                                    }/>
                                <span>{words}</span>
                            </label>
                        }
                    })
                    .collect_view()
            }}
        </fieldset>
    }
    .into_any()
}

/// A day of any year, written "12-26" in files: its month by name and its day by number. A day that
/// its month does not have cannot be chosen.
pub(crate) fn month_day(desk: Desk, what: &str, label: String, lens: Lens<String>) -> AnyView {
    let (read_month, read_day, write) = (lens.get.clone(), lens.get.clone(), lens.set.clone());
    let (get, set) = (lens.get.clone(), lens.set);
    let month = Lens::new(
        move |p: &Program| split_year_day(&read_month(p)).0,
        move |p: &mut Program, month: String| {
            let now = get(p);
            set(p, with_month(&now, &month));
        },
    );
    let get = lens.get.clone();
    let day = Lens::new(
        move |p: &Program| split_year_day(&read_day(p)).1,
        move |p: &mut Program, day: String| {
            let now = get(p);
            write(p, format!("{}-{day}", split_year_day(&now).0));
        },
    );
    let months = move || {
        let name =
            |month: u32| desk.words.with(|w| (format!("{month:02}"), w.messages.month(month, Width::Wide)));
        (1..=12).map(name).collect()
    };
    let get = lens.get;
    let last = Memo::new(move |_| days_in(&desk.program.with(|p| split_year_day(&get(p)).0)));
    let days = move || {
        let name =
            |day: u32| desk.words.with(|w| (format!("{day:02}"), w.messages.number(f64::from(day), 0)));
        (1..=last.get()).map(name).collect()
    };
    let words = desk.words.get_untracked();
    view! {
        <fieldset class="month-day" id=field_id(what)>
            <legend>{label}</legend>
            {select(desk, &format!("{what}.month"), t!(words.messages, "field-month"), month, months)}
            {select(desk, &format!("{what}.day"), t!(words.messages, "field-day"), day, days)}
        </fieldset>
    }
    .into_any()
}

/// Month and day as two digits each; what cannot be read stays as it is.
fn split_year_day(stated: &str) -> (String, String) {
    let (month, day) = stated.trim().split_once('-').unwrap_or((stated.trim(), ""));
    let two = |part: &str| part.parse::<u32>().map_or_else(|_| part.to_owned(), |n| format!("{n:02}"));
    (two(month), two(day))
}

/// The same day in another month, or that month's last day where it is shorter.
fn with_month(stated: &str, month: &str) -> String {
    let day = split_year_day(stated).1.parse::<u32>().unwrap_or(1);
    format!("{month}-{:02}", day.clamp(1, days_in(month)))
}

/// How many days a month has in a year that has them all.
fn days_in(month: &str) -> u32 {
    let month = month.parse::<u32>().unwrap_or(1);
    let is_day = |day: &u32| NaiveDate::from_ymd_opt(2024, month, *day).is_some();
    (1..=31).rev().find(is_day).unwrap_or(31)
}

/// Adds one of several to a list: a choice and a button, so that going through the choices with the
/// keyboard adds nothing by itself.
pub(crate) fn add_from(
    desk: Desk,
    id: String,
    label: String,
    choices: impl Fn() -> Vec<Choice> + Send + Sync + 'static,
    add: impl Fn(String) + Clone + Send + Sync + 'static,
) -> AnyView {
    let picked = RwSignal::new(None::<String>);
    let choices = Memo::new(move |_| choices());
    let now = Memo::new(move |_| {
        choices.with(|all| {
            picked
                .get()
                .filter(|p| all.iter().any(|(v, _)| v == p))
                .or_else(|| all.first().map(|(v, _)| v.clone()))
                .unwrap_or_default()
        })
    });
    let add_word = desk.words.with_untracked(|w| t!(w.messages, "list-add"));
    let button_label = format!("{add_word}: {label}");
    view! {
        <div class="row add-from" hidden=move || choices.with(Vec::is_empty)>
            <label class="field" for=id.clone()>
                <span>{label}</span>
                <select id=id.clone() on:change:target=move |ev| picked.set(Some(ev.target().value()))>
                    {move || {
                        let now = now.get();
                        choices.get().into_iter().map(|(v, name)| {
                            let chosen = v == now;
                            view! { <option value=v selected=chosen>{name}</option> }
                        }).collect_view()
                    }}
                </select>
            </label>
            <button type="button" class="plain" id=format!("{id}-button") aria-label=button_label
                on:click=move |_| add(now.get_untracked())>{add_word}</button>
        </div>
    }
    .into_any()
}

/// A text in the program's languages: the source in full, the others one tap away with their states.
pub(crate) fn words(desk: Desk, key: &str, label: String) -> AnyView {
    let key = key.to_owned();
    let languages = Memo::new(move |_| {
        desk.program.with(|p| {
            let mut all = vec![p.source_language.clone()];
            all.extend(p.languages.iter().filter(|l| **l != p.source_language).cloned());
            all
        })
    });
    let draw = move || {
        let mut all = languages.get().into_iter();
        let source = all.next().unwrap_or_default();
        let others: Vec<String> = all.collect();
        let summary = desk.words.with_untracked(|w| t!(w.messages, "translations"));
        view! {
            <div class="words wide">
                {one_language(desk, &key, &source, label.clone(), &source)}
                {(!others.is_empty()).then(|| view! {
                    <details>
                        <summary>{summary}</summary>
                        {others
                            .iter()
                            .map(|l| {
                                let name = endonym(l);
                                one_language(desk, &key, l, name, &source)
                            })
                            .collect_view()}
                    </details>
                })}
            </div>
        }
    };
    draw.into_any()
}

/// One language's wording of a text, with its state when it is a translation.
pub(crate) fn one_language(desk: Desk, key: &str, language: &str, label: String, source: &str) -> AnyView {
    let id = field_id(&format!("{key}.{language}"));
    let direction = language.parse::<Lang>().map_or("ltr", |l| l.direction().html());
    let (k, l) = (key.to_owned(), language.to_owned());
    let value = move || {
        desk.program.with(|p| {
            texts::text(p, &k).and_then(|t| t.0.get(&l)).map(|t| t.text.clone()).unwrap_or_default()
        })
    };
    let (k, l, s) = (key.to_owned(), language.to_owned(), source.to_owned());
    let state = Memo::new(move |_| {
        desk.program.with(|p| texts::text(p, &k).map_or(TextState::Missing, |t| t.state(&l, &s)))
    });
    let is_source = language == source;
    let (k, l) = (key.to_owned(), language.to_owned());
    let write = move |words: String| {
        desk.edit(&format!("{k}.{l}"), |p| {
            if let Some(text) = texts::text_mut(p, &k) {
                text.set(&l, &words);
            }
        });
    };
    view! {
        <label class="field wide" for=id.clone()>
            <span>{label} " " {(!is_source).then(|| view! { <StateMark desk state/> })}</span>
            <textarea id=id.clone() rows="2" lang=language.to_owned() dir=direction prop:value=value
                on:input:target=move |ev| write(ev.target().value())></textarea>
        </label>
    }
    .into_any()
}

/// The state of a translation, in words.
#[component]
pub(crate) fn StateMark(desk: Desk, state: Memo<TextState>) -> impl IntoView {
    let code = move || match state.get() {
        TextState::Missing => "missing",
        TextState::Unreviewed => "unreviewed",
        TextState::Reviewed => "reviewed",
        TextState::Outdated => "outdated",
    };
    view! {
        <span class=move || format!("state {}", code())>
            {move || desk.words.with(|w| w.say(&format!("text-state-{}", code())))}
        </span>
    }
}

/// One entry of a list.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub(crate) struct Entry {
    /// Its id in the program.
    pub(crate) id: String,
    /// Its name; the id when it has none.
    pub(crate) name: String,
    /// What else tells it from others; may be empty.
    pub(crate) note: String,
}

impl From<Choice> for Entry {
    fn from((id, name): Choice) -> Self {
        Self { id, name, note: String::new() }
    }
}

/// Lists what a desk's program holds.
type Entries = Arc<dyn Fn(&Desk) -> Vec<Entry> + Send + Sync>;
/// Removes something from a program by its id.
type Remove = Arc<dyn Fn(&mut Program, &str) + Send + Sync>;

/// What a list of things needs to be edited on a screen.
pub(crate) struct Listed {
    /// The screen's code; ids of the elements begin with it.
    pub(crate) code: &'static str,
    /// The ids in the program, in order, each with its name.
    pub(crate) entries: Entries,
    /// Adds one with an id.
    pub(crate) add: Edit<String>,
    /// Removes one.
    pub(crate) remove: Remove,
    /// The fields of one.
    pub(crate) editor: Arc<dyn Fn(String) -> AnyView + Send + Sync>,
}

/// A list beside the fields of the entry chosen.
pub(crate) fn listed(desk: Desk, list: Listed) -> AnyView {
    let Listed { code, entries, add, remove, editor } = list;
    let all = Memo::new(move |_| entries(&desk));
    let filter = RwSignal::new(String::new());
    let fresh = RwSignal::new(String::new());
    let shown = move || {
        let wanted = filter.get().to_lowercase();
        all.get()
            .into_iter()
            .filter(|e| {
                [&e.id, &e.name, &e.note].into_iter().any(|part| part.to_lowercase().contains(&wanted))
            })
            .collect::<Vec<_>>()
    };
    let chosen = Memo::new(move |_| {
        let id = desk.chosen.get();
        all.with(|all| all.iter().any(|e| e.id == id)).then_some(id)
    });
    // On a small screen the fields stand below the list: choosing an entry leads to them.
    Effect::new(move |before: Option<Option<String>>| {
        let now = chosen.get();
        if now.is_some() && before.as_ref() != Some(&now) {
            browser::focus("chosen");
            browser::after_render(move || bring_to_view(code));
        }
        now
    });
    let add_one = move |ev: leptos::ev::SubmitEvent| {
        ev.prevent_default();
        let taken: Vec<Choice> =
            all.with_untracked(|all| all.iter().map(|e| (e.id.clone(), e.name.clone())).collect());
        let id = free_id(&slug(&fresh.get_untracked(), code), &taken);
        let made = id.clone();
        desk.edit(&format!("add {id}"), |p| add(p, made));
        fresh.set(String::new());
        let tab = desk.tab.get_untracked();
        desk.go(tab, &id);
    };
    let words = desk.words.get_untracked();
    let (filter_label, add_label, new_label) = (
        t!(words.messages, "list-filter"),
        t!(words.messages, "list-add"),
        t!(words.messages, "list-new-name"),
    );
    view! {
        <div class="listed" id=format!("{code}-screen")>
            <div class="list-side">
                <label class="field">
                    <span>{filter_label}</span>
                    <input type="search" id=format!("{code}-filter") on:input:target=move |ev| filter.set(ev.target().value())/>
                </label>
                <ul class="list" id=format!("{code}-list")>
                    <For each=shown key=Clone::clone let(entry)>
                        {
                            let Entry { id, name, note } = entry;
                            let (here, going) = (id.clone(), id.clone());
                            let shown_id = (name != id).then(|| view! { <bdi dir="ltr">{id.clone()}</bdi> });
                            let small = (!note.is_empty() || shown_id.is_some()).then(|| view! {
                                <small>{(!note.is_empty()).then(|| view! { <bdi>{note}</bdi> })}{shown_id}</small>
                            });
                            view! {
                                <li>
                                    <button type="button" class="list-entry" data-id=id.clone()
                                        aria-current=move || (chosen.get().as_ref() == Some(&here)).then_some("true")
                                        on:click=move |_| desk.go(desk.tab.get_untracked(), &going)>
                                        <bdi>{name}</bdi>
                                        {small}
                                    </button>
                                </li>
                            }
                        }
                    </For>
                </ul>
                <form class="add" on:submit=add_one>
                    <label class="field">
                        <span>{new_label}</span>
                        <input id=format!("{code}-new") prop:value=move || fresh.get()
                            on:input:target=move |ev| fresh.set(ev.target().value())/>
                    </label>
                    <button type="submit" class="button" id=format!("{code}-add")>{add_label}</button>
                </form>
            </div>
            <div class="edit-side" id=format!("{code}-editor")>
                {move || match chosen.get() {
                    Some(id) => {
                        let words = desk.words.get_untracked();
                        let (gone, remove) = (id.clone(), remove.clone());
                        view! {
                            <h2 id="chosen" tabindex="-1"><code dir="ltr">{id.clone()}</code></h2>
                            {editor(id)}
                            <p><button type="button" class="plain danger" id=format!("{code}-remove")
                                on:click=move |_| desk.edit(&format!("remove {gone}"), |p| remove(p, &gone))>
                                {t!(words.messages, "list-remove")}
                            </button></p>
                        }
                        .into_any()
                    }
                    None => {
                        let text = desk.words.with_untracked(|w| t!(w.messages, "list-choose"));
                        view! { <p class="quiet">{text}</p> }.into_any()
                    }
                }}
            </div>
        </div>
    }
    .into_any()
}

/// Scrolls a list, and nothing else, so that the entry chosen in it can be seen.
fn bring_to_view(code: &str) {
    let look = |css: String| {
        let found = web_sys::window()?.document()?.query_selector(&css).ok()??;
        found.dyn_into::<web_sys::HtmlElement>().ok()
    };
    let list = look(format!("#{code}-list"));
    let Some((list, entry)) = list.zip(look(format!("#{code}-list [aria-current]"))) else { return };
    // The list is positioned, so that offsets inside it begin at its own edge.
    let (top, height) = (entry.offset_top(), entry.offset_height());
    let (seen, room) = (list.scroll_top(), list.client_height());
    if top < seen || top + height > seen + room {
        list.set_scroll_top(top - (room - height) / 2);
    }
}

/// The words up to a length, cut between two of them.
pub(crate) fn shortened(words: &str, most: usize) -> String {
    if words.chars().count() <= most {
        return words.to_owned();
    }
    let head: String = words.chars().take(most).collect();
    // A word that ends just there is whole.
    let whole = words.chars().nth(most).is_some_and(char::is_whitespace);
    let cut =
        if whole { head.as_str() } else { head.rsplit_once(char::is_whitespace).map_or("", |(a, _)| a) };
    let cut = if cut.is_empty() { head.as_str() } else { cut };
    format!("{}…", cut.trim_end_matches(|c: char| c.is_whitespace() || c.is_ascii_punctuation()))
}

/// An id from a name: lower case, hyphens; the screen's own word when nothing is left.
pub(crate) fn slug(name: &str, otherwise: &str) -> String {
    let folded = browser::fold(name);
    let joined: Vec<&str> =
        folded.split(|c: char| !c.is_ascii_alphanumeric()).filter(|part| !part.is_empty()).collect();
    let id: String = joined.join("-").chars().take(48).collect();
    if id.is_empty() { otherwise.to_owned() } else { id }
}

/// The id, or the id with the first number that makes it new.
pub(crate) fn free_id(wanted: &str, taken: &[Choice]) -> String {
    let is_free = |id: &str| taken.iter().all(|(t, _)| t != id);
    if is_free(wanted) {
        return wanted.to_owned();
    }
    (2..).map(|n| format!("{wanted}-{n}")).find(|id| is_free(id)).unwrap_or_default()
}

/// Standard ids with their words, as choices; `prefix` is that of the message keys.
pub(crate) fn standard(desk: Desk, ids: &[&str], prefix: &str) -> Vec<Choice> {
    desk.words.with(|w| ids.iter().map(|id| ((*id).to_owned(), w.say(&format!("{prefix}-{id}")))).collect())
}

/// Choices with "none" in front.
pub(crate) fn or_none(desk: Desk, choices: Vec<Choice>) -> Vec<Choice> {
    let none = desk.words.with(|w| t!(w.messages, "choice-none"));
    std::iter::once((String::new(), none)).chain(choices).collect()
}

/// The things of one of the program's lists, as choices.
pub(crate) fn of_program(desk: Desk, kind: &str) -> Vec<Choice> {
    let ids: Vec<String> = desk.program.with(|p| match kind {
        "stream" => p.streams.iter().map(|x| x.id.clone()).collect(),
        "zone" => p.zones.iter().map(|x| x.id.clone()).collect(),
        "channel" => p.channels.iter().map(|x| x.id.clone()).collect(),
        "machine" => p.plant.machines.iter().map(|x| x.id.clone()).collect(),
        "rule" => p.rules.iter().map(|x| x.id.clone()).collect(),
        _ => Vec::new(),
    });
    ids.into_iter().map(|id| (id.clone(), name_of(desk, kind, &id))).collect()
}

/// The name of a thing of the program, in the language of the screens, else its id.
pub(crate) fn name_of(desk: Desk, kind: &str, id: &str) -> String {
    let language = desk.words.with(|w| w.language().to_owned());
    desk.program.with(|p| {
        texts::text(p, &format!("{kind}.{id}"))
            .and_then(|t| t.or_source(&language, &p.source_language))
            .unwrap_or(id)
            .to_owned()
    })
}

/// Several of many, in an order: the chosen ones as rows, the rest in a list to add from.
pub(crate) fn ordered(
    desk: Desk,
    what: &str,
    label: String,
    lens: Lens<Vec<String>>,
    choices: impl Fn() -> Vec<Choice> + Send + Sync + 'static,
) -> AnyView {
    let choices = Memo::new(move |_| choices());
    let get = lens.get.clone();
    let chosen = Memo::new(move |_| desk.program.with(|p| get(p)));
    let name = move |id: &str| {
        choices
            .with(|all| all.iter().find(|(v, _)| v == id).map_or_else(|| id.to_owned(), |(_, n)| n.clone()))
    };
    let id = field_id(&format!("{what}.add"));
    let what = what.to_owned();
    let set = move |all: Vec<String>| desk.edit(&what, |p| (lens.set)(p, all));
    let words = desk.words.get_untracked();
    let (remove_word, up_word, add_word) = (
        t!(words.messages, "list-remove"),
        t!(words.messages, "list-up"),
        t!(words.messages, "list-add-one"),
    );
    let (set_rows, set_add) = (set.clone(), set);
    view! {
        <fieldset class="ordered wide">
            <legend>{label}</legend>
            <ol>
                {move || {
                    chosen
                        .get()
                        .into_iter()
                        .enumerate()
                        .map(|(at, value)| {
                            let title = name(&value);
                            let (set_up, set_off) = (set_rows.clone(), set_rows.clone());
                            let up = move |_| {
                                let mut all = chosen.get_untracked();
                                if at > 0 && at < all.len() {
                                    all.swap(at, at - 1);
                                    set_up(all);
                                }
                            };
                            let off = move |_| {
                                let mut all = chosen.get_untracked();
                                if at < all.len() {
                                    all.remove(at);
                                    set_off(all);
                                }
                            };
                            view! {
                                <li>
                                    <span>{title.clone()}</span>
                                    {(at > 0).then(|| view! {
                                        <button type="button" class="plain" aria-label=format!("{up_word}: {title}") on:click=up>"↑"</button>
                                    })}
                                    <button type="button" class="plain" aria-label=format!("{remove_word}: {title}") on:click=off>"×"</button>
                                </li>
                            }
                        })
                        .collect_view()
                }}
            </ol>
            <select id=id.clone() aria-label=add_word.clone() on:change:target=move |ev| {
                let value = ev.target().value();
                let mut all = chosen.get_untracked();
                if !value.is_empty() && !all.contains(&value) {
                    all.push(value);
                    set_add(all);
                }
                ev.target().set_value("");
            }>
                <option value="">{add_word.clone()}</option>
                {move || {
                    let taken = chosen.get();
                    choices
                        .get()
                        .into_iter()
                        .filter(|(v, _)| !taken.contains(v))
                        .map(|(v, n)| view! { <option value=v>{n}</option> })
                        .collect_view()
                }}
            </select>
        </fieldset>
    }
    .into_any()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn another_month_keeps_the_day_that_it_has() {
        for (stated, month, expected) in [
            ("12-26", "01", "01-26"),
            ("12-31", "02", "02-29"), // Leap day is a day of the year.
            ("01-31", "11", "11-30"),
            ("", "03", "03-01"),
            ("7-4", "08", "08-04"),
        ] {
            assert_eq!(with_month(stated, month), expected, "{stated}");
        }
        assert_eq!(split_year_day("7-4"), ("07".to_owned(), "04".to_owned()));
        assert_eq!(split_year_day("spring"), ("spring".to_owned(), String::new()));
        // A calendar from memory: thirty days hath September, April, June and November.
        let days: Vec<u32> = (1..=12).map(|m| days_in(&format!("{m:02}"))).collect();
        assert_eq!(days, [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]);
    }

    #[test]
    fn words_are_cut_between_words() {
        assert_eq!(shortened("short", 10), "short");
        assert_eq!(shortened("bottles, jugs and jars", 13), "bottles, jugs…");
        assert_eq!(shortened("bottles, jugs and jars", 15), "bottles, jugs…");
        assert_eq!(shortened("bottles, jugs and jars", 10), "bottles…");
        assert_eq!(shortened("unsplittable", 5), "unspl…");
    }
}
