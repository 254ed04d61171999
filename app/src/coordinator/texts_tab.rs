//! Texts by language, with their states; signing translations off.

use std::collections::BTreeSet;

use guide_data::{TextState, day_of};
use leptos::prelude::*;
use locales::{DateStyle, Lang, Language, ReviewState, endonym, t};

use super::desk::Desk;
use super::fields::{StateMark, name_of, one_language};
use super::texts;
use crate::store::desk_settings;

/// The texts of one language beside the source.
pub(crate) fn texts(desk: Desk) -> AnyView {
    let languages = Memo::new(move |_| {
        desk.program
            .with(|p| p.languages.iter().filter(|l| **l != p.source_language).cloned().collect::<Vec<_>>())
    });
    let picked = RwSignal::new(None::<String>);
    let language = Memo::new(move |_| {
        picked.get().or_else(|| languages.with(|l| l.first().cloned())).unwrap_or_default()
    });
    let state = RwSignal::new(String::new());
    let keys = Memo::new(move |_| {
        let (language, wanted) = (language.get(), state.get());
        desk.program.with(|p| {
            let mut keys = texts::keys(p);
            keys.retain(|k| {
                let now =
                    texts::text(p, k).map_or(TextState::Missing, |t| t.state(&language, &p.source_language));
                wanted.is_empty() || wanted == code(now)
            });
            keys
        })
    });
    let shown = move || -> Vec<(String, String)> {
        let language = language.get();
        keys.get().into_iter().map(|k| (k, language.clone())).collect()
    };
    let count = move || {
        let language = language.get();
        desk.program.with(|p| {
            let mut done = 0;
            let all = texts::keys(p);
            for key in &all {
                if texts::text(p, key)
                    .is_some_and(|t| t.state(&language, &p.source_language) == TextState::Reviewed)
                {
                    done += 1;
                }
            }
            (done, all.len())
        })
    };
    let w = desk.words.get_untracked();
    let m = &w.messages;
    let states = ["missing", "unreviewed", "outdated", "reviewed"];
    view! {
        <div id="texts-screen">
            <div class="fields">
                <label class="field">
                    <span>{t!(m, "texts-language")}</span>
                    <select id="texts-language" on:change:target=move |ev| picked.set(Some(ev.target().value()))>
                        {move || languages.get().into_iter().map(|tag| {
                            let name = endonym(&tag);
                            view! { <option value=tag>{name}</option> }
                        }).collect_view()}
                    </select>
                </label>
                <label class="field">
                    <span>{t!(m, "texts-state")}</span>
                    <select id="texts-state" on:change:target=move |ev| state.set(ev.target().value())>
                        <option value="">{t!(m, "items-all")}</option>
                        {states.map(|s| view! { <option value=s>{w.say(&format!("text-state-{s}"))}</option> }).collect_view()}
                    </select>
                </label>
                <label class="field">
                    <span>{t!(m, "texts-reviewer")}</span>
                    <input id="texts-reviewer" autocomplete="name"
                        prop:value=move || desk.settings.with(|s| s.reviewer.clone())
                        on:change:target=move |ev| {
                            desk.settings.update(|s| s.reviewer = ev.target().value());
                            desk_settings::save(&desk.settings.get_untracked());
                        }/>
                </label>
            </div>
            <p class="quiet" role="status">{move || {
                let (done, all) = count();
                desk.words.with(|w| t!(w.messages, "texts-count", done = done, all = all))
            }}</p>
            <details id="reviews">
                <summary>{t!(m, "review-title")}</summary>
                <ul class="rows">{move || reviews(desk)}</ul>
            </details>
            <ul class="rows" id="texts-list">
                <For each=shown key=Clone::clone let:entry>{one(desk, &entry.0, &entry.1)}</For>
            </ul>
        </div>
    }
    .into_any()
}

/// How far each of the program's languages has been checked: the screens' words, by those who keep the
/// message files, and the program's own texts.
fn reviews(desk: Desk) -> Vec<AnyView> {
    let w = desk.words.get();
    let m = &w.messages;
    let languages = desk.program.with(|p| p.languages.clone());
    let one = |tag: String| {
        let lang = tag.parse::<Lang>().unwrap_or_default();
        let day = |on: &str| day_of(on).map_or_else(|| on.to_owned(), |day| m.date(day, DateStyle::Long));
        let state = match lang.entry().map_or(ReviewState::Unreviewed, Language::review) {
            ReviewState::Source => t!(m, "review-source"),
            ReviewState::Unreviewed => t!(m, "text-state-unreviewed"),
            ReviewState::Reviewed { by, on } => t!(m, "review-by", name = by, date = day(on)),
            ReviewState::Outdated { by, on } => t!(m, "review-outdated", name = by, date = day(on)),
        };
        let (done, all, names) = desk.program.with(|p| {
            let (mut done, mut names) = (0, BTreeSet::new());
            let keys = texts::keys(p);
            for text in keys.iter().filter_map(|key| texts::text(p, key)) {
                if text.state(&tag, &p.source_language) == TextState::Reviewed {
                    done += 1;
                    names.extend(text.0.get(&tag).and_then(|own| own.reviewed_by.clone()));
                }
            }
            (done, keys.len(), names.into_iter().collect::<Vec<_>>())
        });
        let signed = (!names.is_empty()).then(|| t!(m, "review-names", names = m.list_and(&names)));
        view! {
            <li class="card review" data-language=tag.clone()>
                <p><strong lang=tag.clone()>{lang.endonym()}</strong></p>
                <p>{t!(m, "review-screens", state = state)}</p>
                <p>{t!(m, "review-texts", done = done, all = all)}</p>
                {signed.map(|line| view! { <p>{line}</p> })}
            </li>
        }
        .into_any()
    };
    languages.into_iter().map(one).collect()
}

fn code(state: TextState) -> &'static str {
    match state {
        TextState::Missing => "missing",
        TextState::Unreviewed => "unreviewed",
        TextState::Reviewed => "reviewed",
        TextState::Outdated => "outdated",
    }
}

/// What a text is, in words: whose it is, and which of its texts.
fn label_of(desk: Desk, key: &str) -> String {
    let (kind, id, field) = texts::parts(key);
    let own_name = || (!field.is_empty()).then(|| name_of(desk, kind, id));
    let w = desk.words.get_untracked();
    let m = &w.messages;
    let what = match (kind, field) {
        ("program", _) => t!(m, "field-program-name"),
        ("contact", _) => t!(m, "field-contact-name"),
        ("plant", _) => t!(m, "field-plant-name"),
        ("print", _) => t!(m, "field-statement"),
        ("step", _) => t!(m, "text-step"),
        ("container", "") => t!(m, "field-container-name"),
        ("machine", "") => t!(m, "field-machine-name"),
        ("rule", "") => t!(m, "field-residents"),
        (_, "") => t!(m, "field-name"),
        ("container", "set-out") => t!(m, "field-set-out"),
        ("container", rule) => w.say(&format!("container-rule-kind-{rule}")),
        ("machine", _) => t!(m, "field-machine-limit"),
        ("site", "vehicles") => t!(m, "field-site-vehicles"),
        (_, "vehicles") => t!(m, "field-vehicles"),
        (_, "allowance") => t!(m, "field-allowance"),
        (_, "fee") => t!(m, "field-fee"),
        _ => t!(m, "field-note"),
    };
    let whose = own_name().or_else(|| {
        let tab = super::desk::Tab::of(&format!("{kind}s"))?;
        Some(w.say(&format!("tab-{}", tab.code())))
    });
    whose.map_or_else(|| what.clone(), |whose| t!(m, "text-label", whose = whose, what = what.clone()))
}

fn one(desk: Desk, key: &str, language: &str) -> AnyView {
    let w = desk.words.get_untracked();
    let source = desk.program.with_untracked(|p| p.source_language.clone());
    let (k, s) = (key.to_owned(), source.clone());
    let original = move || {
        desk.program.with(|p| texts::text(p, &k).and_then(|t| t.get(&s)).unwrap_or_default().to_owned())
    };
    let (k, l, s) = (key.to_owned(), language.to_owned(), source.clone());
    let state = Memo::new(move |_| {
        desk.program.with(|p| texts::text(p, &k).map_or(TextState::Missing, |t| t.state(&l, &s)))
    });
    let (k, l, s) = (key.to_owned(), language.to_owned(), source.clone());
    let sign = move |_| {
        let reviewer = desk.settings.with_untracked(|s| s.reviewer.trim().to_owned());
        if reviewer.is_empty() {
            desk.notice.set(Some(desk.words.with_untracked(|w| t!(w.messages, "texts-reviewer-needed"))));
            crate::browser::focus("texts-reviewer");
            return;
        }
        desk.edit(&format!("{k}.{l}.sign"), |p| {
            if let Some(text) = texts::text_mut(p, &k) {
                text.sign_off(&l, &s, &reviewer);
            }
        });
    };
    let can_sign = move || matches!(state.get(), TextState::Unreviewed | TextState::Outdated);
    let name = endonym(language);
    view! {
        <li class="card text-row" data-id=key.to_owned()>
            <p class="text-of">
                <strong>{label_of(desk, key)}</strong>" "<StateMark desk state/>" "
                <code dir="ltr">{key.to_owned()}</code>
            </p>
            <blockquote lang=source.clone() dir="auto">{original}</blockquote>
            {one_language(desk, key, language, name, language)}
            <p><button type="button" class="plain sign-off" prop:disabled=move || !can_sign() on:click=sign>
                {t!(w.messages, "texts-sign-off")}
            </button></p>
        </li>
    }
    .into_any()
}
