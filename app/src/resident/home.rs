//! The start: search, recent and common items, categories; and the items of one category.

use guide_data::standard::CATEGORIES;
use leptos::prelude::*;
use locales::t;

use super::link::{ItemLink, PageLink};
use super::state::{Resident, Screens};
use crate::address::Page;
use crate::browser;

/// How many common items are one tap away.
const COMMON: usize = 8;

/// Search first; below it what most people look for.
#[component]
pub(crate) fn Home() -> impl IntoView {
    let resident = expect_context::<Resident>();
    let words = resident.words.get_untracked();
    let query = RwSignal::new(String::new());
    let found = Memo::new(move |_| {
        let typed = query.get();
        // More words may have been learned meanwhile.
        resident.learned.track();
        resident.words.with(|w| w.find(&typed))
    });
    let searching = move || !query.with(|q| q.trim().is_empty());
    let open_first = move |ev: leptos::ev::SubmitEvent| {
        ev.prevent_default();
        let first = found.with(|f| f.first().copied());
        let id =
            first.and_then(|at| resident.guide.with_untracked(|g| g.items.get(at).map(|i| i.id.clone())));
        if let Some(id) = id {
            resident.go(Page::Item { id, step: 0 });
        }
    };
    let count = move || {
        if searching() {
            resident.words.with(|w| t!(w.messages, "search-count", count = found.with(Vec::len)))
        } else {
            String::new()
        }
    };
    if resident.screens == Screens::Page {
        browser::focus("search");
    }
    view! {
        <form class="search" role="search" on:submit=open_first>
            <label for="search"><h1 id="heading" tabindex="-1">{t!(words.messages, "search-label")}</h1></label>
            <input
                id="search"
                type="search"
                name="q"
                autocomplete="off"
                autocapitalize="none"
                spellcheck="false"
                enterkeyhint="go"
                maxlength="200"
                placeholder=t!(words.messages, "search-placeholder")
                aria-describedby="results-count"
                on:input:target=move |ev| query.set(ev.target().value())
            />
        </form>
        <p id="results-count" class="quiet" role="status" aria-live="polite">{count}</p>
        {move || if searching() {
            view! { <Results found/> }.into_any()
        } else {
            view! { <Browse/> }.into_any()
        }}
    }
}

/// What was found.
#[component]
fn Results(found: Memo<Vec<usize>>) -> impl IntoView {
    move || {
        let found = found.get();
        if found.is_empty() {
            return view! { <Nothing/> }.into_any();
        }
        view! {
            <ul id="results" class="items">
                {found.into_iter().map(|at| view! { <li><ItemLink at/></li> }).collect_view()}
            </ul>
        }
        .into_any()
    }
}

/// Nothing found is not "no": it says whom to ask.
#[component]
fn Nothing() -> impl IntoView {
    let resident = expect_context::<Resident>();
    let words = resident.words.get_untracked();
    view! {
        <div class="notice">
            <p>{t!(words.messages, "search-nothing")}</p>
            <super::answer::Ask/>
        </div>
    }
}

/// Recent and common items, then categories.
#[component]
fn Browse() -> impl IntoView {
    let resident = expect_context::<Resident>();
    let guide = resident.guide.get_untracked();
    let words = resident.words.get_untracked();
    let recent: Vec<usize> =
        resident.recent.with_untracked(|r| r.iter().filter_map(|id| guide.item_index(id)).collect());
    let mut common: Vec<usize> = (0..guide.items.len()).filter(|at| !recent.contains(at)).collect();
    // What residents get wrong most comes first, then what they have most.
    common.sort_by_key(|&at| {
        guide.items.get(at).map(|i| (!i.often_wrong, std::cmp::Reverse(i.common), i.id.clone()))
    });
    common.truncate(COMMON);
    let categories: Vec<(&str, String)> = CATEGORIES
        .iter()
        .filter(|c| guide.items.iter().any(|i| i.category == **c))
        .map(|c| (*c, words.say(&format!("category-{c}"))))
        .collect();
    let list = |id: &'static str, title: String, items: Vec<usize>| {
        (!items.is_empty()).then(|| {
            view! {
                <section aria-labelledby=id>
                    <h2 id=id>{title}</h2>
                    <ul class="items two">
                        {items.into_iter().map(|at| view! { <li><ItemLink at/></li> }).collect_view()}
                    </ul>
                </section>
            }
        })
    };
    view! {
        {list("recent", t!(words.messages, "home-recent"), recent)}
        {list("common", t!(words.messages, "home-common"), common)}
        <section aria-labelledby="categories">
            <h2 id="categories">{t!(words.messages, "home-categories")}</h2>
            <ul class="items two">
                {categories
                    .into_iter()
                    .map(|(c, name)| {
                        view! {
                            <li>
                                <PageLink page=Page::Category(c.to_owned()) class="item-link category">
                                    <super::Pictogram id=super::pictogram::of_category(c)/>
                                    <span>{name}</span>
                                </PageLink>
                            </li>
                        }
                    })
                    .collect_view()}
            </ul>
        </section>
    }
}

/// The items of one category, by name.
#[component]
pub(crate) fn CategoryScreen(
    /// The category's id.
    id: String,
) -> impl IntoView {
    let resident = expect_context::<Resident>();
    let guide = resident.guide.get_untracked();
    let words = resident.words.get_untracked();
    if !CATEGORIES.contains(&id.as_str()) {
        return view! { <NotHere message=t!(words.messages, "unknown-category", id = id)/> }.into_any();
    }
    let mut items: Vec<(String, usize)> = guide
        .items
        .iter()
        .enumerate()
        .filter(|(_, i)| i.category == id)
        .map(|(at, i)| (browser::fold(&words.item(&i.id)), at))
        .collect();
    items.sort();
    resident.focus_heading();
    view! {
        <super::item::Bar title=words.say(&format!("category-{id}")) pictogram=super::pictogram::of_category(&id)/>
        <ul class="items">
            {items.into_iter().map(|(_, at)| view! { <li><ItemLink at/></li> }).collect_view()}
        </ul>
    }
    .into_any()
}

/// An address that leads nowhere says so, and leads on.
#[component]
pub(crate) fn NotHere(
    /// What was asked for and is not here.
    message: String,
) -> impl IntoView {
    view! {
        <div class="notice" role="alert"><p id="not-here">{message}</p></div>
        <Home/>
    }
}
