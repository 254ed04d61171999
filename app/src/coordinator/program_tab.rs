//! The program's own fields: name, edition, languages, contact, silence, unknown facts, hazards,
//! plant, print.

use guide_data::{CountsAs, FACTS, FactKind, HAZARDS, HazardRoute, Machine, Program, Silence};
use leptos::prelude::*;
use locales::{supported, t};
use wasm_bindgen::JsCast as _;

use super::desk::Desk;
use super::fields::{
    Lens, add_from, free_id, lens, line, lines, many, of_program, or_none, select, slug, standard, words,
};
use crate::browser;

/// All of it, in sections.
pub(crate) fn program(desk: Desk) -> AnyView {
    let w = desk.words.get_untracked();
    let m = &w.messages;
    let languages =
        || supported().iter().map(|l| (l.tag.to_owned(), l.endonym.to_owned())).collect::<Vec<_>>();
    let silence = lens!(|p| p.silence).map(
        |s| {
            match s {
                Silence::Undecided => "undecided",
                Silence::Ask => "ask",
                Silence::Closed => "closed",
            }
            .to_owned()
        },
        |v: String| {
            Some(match v.as_str() {
                "ask" => Silence::Ask,
                "closed" => Silence::Closed,
                _ => Silence::Undecided,
            })
        },
    );
    view! {
        <div id="program-screen">
            <section class="card">
                <h2>{t!(m, "program-basics")}</h2>
                <div class="fields">
                    {words(desk, "program.name", t!(m, "field-program-name"))}
                    {line(desk, "program.id", t!(m, "field-program-id"), "text", lens!(|p| p.id))}
                    {line(desk, "edition.label", t!(m, "field-edition"), "text", lens!(|p| p.edition.label))}
                    {line(desk, "edition.from", t!(m, "field-edition-from"), "date", lens!(|p| p.edition.from).day_text())}
                    {line(desk, "guide-url", t!(m, "field-guide-url"), "url", lens!(|p| p.guide_url))}
                    {select(desk, "source-language", t!(m, "field-source-language"), lens!(|p| p.source_language), languages)}
                    {many(desk, "languages", t!(m, "field-languages"), lens!(|p| p.languages), languages)}
                </div>
            </section>
            <section class="card">
                <h2>{t!(m, "program-contact")}</h2>
                <div class="fields">
                    {words(desk, "contact.name", t!(m, "field-contact-name"))}
                    {line(desk, "contact.phone", t!(m, "field-phone"), "tel", lens!(|p| p.contact.phone))}
                    {line(desk, "contact.email", t!(m, "field-email"), "email", lens!(|p| p.contact.email))}
                    {lines(desk, "contact.address", t!(m, "field-return-address"), lens!(|p| p.contact.address))}
                </div>
            </section>
            <section class="card">
                <h2>{t!(m, "program-silence")}</h2>
                <div class="fields">
                    {select(desk, "silence", t!(m, "field-silence"), silence,
                        move || standard(desk, &["undecided", "ask", "closed"], "silence"))}
                </div>
                <h3>{t!(m, "program-unknown")}</h3>
                <p class="quiet">{t!(m, "program-unknown-hint")}</p>
                {unknown(desk)}
            </section>
            <section class="card" id="counts-as">
                <h2>{t!(m, "program-counts-as")}</h2>
                <p class="quiet">{t!(m, "program-counts-as-hint")}</p>
                {counts_as(desk)}
            </section>
            <section class="card">
                <h2>{t!(m, "program-hazards")}</h2>
                <p class="quiet">{t!(m, "program-hazards-hint")}</p>
                {HAZARDS.iter().skip(1).map(|class| hazard(desk, class)).collect_view()}
            </section>
            <section class="card">
                <h2>{t!(m, "program-plant")}</h2>
                {words(desk, "plant.name", t!(m, "field-plant-name"))}
                {machines(desk)}
            </section>
            <section class="card">
                <h2>{t!(m, "program-print")}</h2>
                <div class="fields">
                    {line(desk, "print.short-url", t!(m, "field-short-url"), "text", lens!(|p| p.print.short_url))}
                    {lines(desk, "print.indicia", t!(m, "field-indicia"), lens!(|p| p.print.indicia))}
                    {words(desk, "print.statement", t!(m, "field-statement"))}
                </div>
            </section>
        </div>
    }
    .into_any()
}

/// Where one hazard class goes, and who approved it.
fn hazard(desk: Desk, class: &'static str) -> AnyView {
    let w = desk.words.get_untracked();
    let place = |get: fn(&HazardRoute) -> String, set: fn(&mut HazardRoute, String)| {
        Lens::new(
            move |p: &Program| p.hazards.get(class).map(get).unwrap_or_default(),
            move |p: &mut Program, value| {
                set(p.hazards.entry(class.to_owned()).or_default(), value);
                p.hazards.retain(|_, route| *route != HazardRoute::default());
            },
        )
    };
    view! {
        <div class="row" data-id=class>
            <strong>{w.say(&format!("value-hazard-{class}"))}</strong>
            {select(desk, &format!("hazards.{class}.channel"), t!(w.messages, "field-hazard-channel"),
                place(|h| h.channel.clone(), |h, v| h.channel = v),
                move || or_none(desk, of_program(desk, "channel")))}
            {line(desk, &format!("hazards.{class}.approved-by"), t!(w.messages, "field-approved-by"), "text",
                place(|h| h.approved_by.clone(), |h, v| h.approved_by = v))}
        </div>
    }
    .into_any()
}

/// What "I can't tell" counts as, for the facts that have values to choose from.
fn unknown(desk: Desk) -> AnyView {
    let shown = Memo::new(move |_| desk.program.with(|p| p.unknown.keys().cloned().collect::<Vec<_>>()));
    let rest = move || {
        let shown = shown.get();
        FACTS
            .iter()
            .filter(|f| matches!(f.kind, FactKind::Choice(_)) && !shown.iter().any(|s| s == f.id))
            .map(|f| f.id)
            .collect::<Vec<_>>()
    };
    let add = move |fact: String| {
        if let Some(FactKind::Choice(values)) = guide_data::fact(&fact).map(|f| f.kind) {
            let first = values.first().copied().unwrap_or_default().to_owned();
            desk.edit(&format!("unknown.{fact}"), |p| {
                p.unknown.insert(fact.clone(), first);
            });
        }
    };
    view! {
        <For each=move || shown.get() key=Clone::clone let(fact)>
            {
                let values = match guide_data::fact(&fact).map(|f| f.kind) {
                    Some(FactKind::Choice(values)) => values,
                    _ => &[],
                };
                let (read, write, gone) = (fact.clone(), fact.clone(), fact.clone());
                let lens = Lens::new(
                    move |p: &Program| p.unknown.get(&read).cloned().unwrap_or_default(),
                    move |p: &mut Program, v| { p.unknown.insert(write.clone(), v); },
                );
                let words = desk.words.get_untracked();
                let prefix = format!("value-{fact}");
                view! {
                    <div class="row">
                        {select(desk, &format!("unknown.{fact}"), words.say(&format!("fact-{fact}")), lens,
                            move || standard(desk, values, &prefix))}
                        <button type="button" class="plain danger" on:click=move |_| desk.edit(&format!("unknown.{gone}"), |p| {
                            p.unknown.remove(&gone);
                        })>{t!(words.messages, "list-remove")}</button>
                    </div>
                }
            }
        </For>
        <label class="field">
            <span>{desk.words.with_untracked(|w| t!(w.messages, "unknown-add"))}</span>
            <select id="unknown-add" on:change:target=move |ev| add(ev.target().value())>
                {move || or_none(desk, standard(desk, &rest(), "fact"))
                    .into_iter().map(|(v, name)| view! { <option value=v>{name}</option> }).collect_view()}
            </select>
        </label>
    }
    .into_any()
}

/// Facts that never count as anything else: what is dangerous stays so.
const NEVER_COUNT_AS: &[&str] = &["hazard", "battery"];

/// The values of a fact that may count as one another; none when they may not.
fn countable(fact: &str) -> &'static [&'static str] {
    match guide_data::fact(fact).map(|f| f.kind) {
        Some(FactKind::Choice(values)) if !NEVER_COUNT_AS.contains(&fact) => values,
        _ => &[],
    }
}

/// Which values of a fact every rule takes for another one.
fn counts_as(desk: Desk) -> AnyView {
    let count = Memo::new(move |_| desk.program.with(|p| p.counts_as.len()));
    let add = move |fact: String| {
        let at = count.get_untracked();
        desk.edit(&format!("add counts-as.{at}"), |p| {
            p.counts_as.push(CountsAs { fact, ..CountsAs::default() });
        });
        // The new row is where the work goes on.
        browser::after_render(move || focus_row(at));
    };
    let facts = move || {
        let ids: Vec<&str> = FACTS.iter().map(|f| f.id).filter(|id| !countable(id).is_empty()).collect();
        let mut all = standard(desk, &ids, "fact");
        all.sort_by(|a, b| a.1.cmp(&b.1));
        all
    };
    let label = desk.words.with_untracked(|w| t!(w.messages, "counts-as-add"));
    view! {
        <For each=move || 0..count.get() key=|at| *at let(at)>{counting(desk, at)}</For>
        {add_from(desk, "counts-as-add".to_owned(), label, facts, add)}
    }
    .into_any()
}

fn focus_row(at: usize) {
    let css = format!("[data-counts-as=\"{at}\"] input");
    let found =
        web_sys::window().and_then(|w| w.document()).and_then(|d| d.query_selector(&css).ok().flatten());
    if let Some(input) = found.and_then(|e| e.dyn_into::<web_sys::HtmlElement>().ok()) {
        let _ = input.focus();
    }
}

/// A place in an entry of "counts as", by its position.
fn of_counting<T: Default + 'static>(
    at: usize,
    get: fn(&CountsAs) -> T,
    set: fn(&mut CountsAs, T),
) -> Lens<T> {
    Lens::new(
        move |p: &Program| p.counts_as.get(at).map(get).unwrap_or_default(),
        move |p: &mut Program, value| {
            if let Some(entry) = p.counts_as.get_mut(at) {
                set(entry, value);
            }
        },
    )
}

/// What the others count as; it is not one of them any more.
fn set_target(entry: &mut CountsAs, value: String) {
    entry.these.retain(|v| *v != value);
    entry.count_as = value;
}

fn counting(desk: Desk, at: usize) -> AnyView {
    let w = desk.words.get_untracked();
    let m = &w.messages;
    let entry = Memo::new(move |_| desk.program.with(|p| p.counts_as.get(at).cloned().unwrap_or_default()));
    let fact = Memo::new(move |_| entry.with(|e| e.fact.clone()));
    let title = move || desk.words.with(|w| fact.with(|fact| w.say(&format!("fact-{fact}"))));
    let values = move || fact.with(|fact| standard(desk, countable(fact), &format!("value-{fact}")));
    let others = move || {
        let target = entry.with(|e| e.count_as.clone());
        values().into_iter().filter(|(v, _)| *v != target).collect()
    };
    let remove = move |_| {
        desk.edit(&format!("remove counts-as.{at}"), |p| {
            if at < p.counts_as.len() {
                p.counts_as.remove(at);
            }
        });
    };
    let remove_word = t!(m, "list-remove");
    let remove_label = move || format!("{}: {}", desk.words.with(|w| t!(w.messages, "list-remove")), title());
    view! {
        <div class="counting" data-counts-as=at.to_string()>
            <h3>{title}</h3>
            {many(desk, &format!("counts-as.{at}.these"), t!(m, "field-these"),
                of_counting(at, |e| e.these.clone(), |e, v| e.these = v), others)}
            <div class="row">
                {select(desk, &format!("counts-as.{at}.count-as"), t!(m, "field-count-as"),
                    of_counting(at, |e| e.count_as.clone(), set_target),
                    move || or_none(desk, values()))}
                <button type="button" class="plain danger" aria-label=remove_label on:click=remove>{remove_word}</button>
            </div>
        </div>
    }
    .into_any()
}

/// The plant's machines with their limits.
fn machines(desk: Desk) -> AnyView {
    let ids = Memo::new(move |_| {
        desk.program.with(|p| p.plant.machines.iter().map(|m| m.id.clone()).collect::<Vec<_>>())
    });
    let add = move |_| {
        let taken: Vec<_> = ids.get_untracked().into_iter().map(|id| (id, String::new())).collect();
        let id = free_id(&slug("machine", "machine"), &taken);
        desk.edit(&format!("add {id}"), |p| p.plant.machines.push(Machine { id, ..Machine::default() }));
    };
    view! {
        <For each=move || ids.get() key=Clone::clone let(id)>
            {
                let w = desk.words.get_untracked();
                let gone = id.clone();
                view! {
                    <div class="fields card" data-id=id.clone()>
                        {words(desk, &format!("machine.{id}"), t!(w.messages, "field-machine-name"))}
                        {words(desk, &format!("machine.{id}.limit"), t!(w.messages, "field-machine-limit"))}
                        <button type="button" class="plain danger" on:click=move |_| desk.edit(&format!("remove {gone}"), |p| {
                            p.plant.machines.retain(|m| m.id != gone);
                        })>{t!(w.messages, "list-remove")}</button>
                    </div>
                }
            }
        </For>
        <p><button type="button" class="plain" on:click=add>
            {desk.words.with_untracked(|w| t!(w.messages, "machine-add"))}
        </button></p>
    }
    .into_any()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn dangers_never_count_as_anything_else_and_measures_have_no_values() {
        assert!(countable("colour").contains(&"green"));
        for fact in ["hazard", "battery", "mass", "zone", "item", "nothing"] {
            assert!(countable(fact).is_empty(), "{fact}");
        }
    }

    #[test]
    fn what_others_count_as_counts_as_itself() {
        let mut entry = CountsAs {
            fact: "colour".to_owned(),
            these: vec!["blue".to_owned(), "green".to_owned()],
            count_as: String::new(),
        };
        set_target(&mut entry, "green".to_owned());
        assert_eq!(entry.these, ["blue"]);
        assert_eq!(entry.count_as, "green");
    }
}
