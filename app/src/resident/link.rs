//! Links between pages: real addresses, so that they can be copied and opened elsewhere.

use leptos::prelude::*;

use super::state::{Resident, Screens};
use crate::address::Page;

/// A link to a page.
#[component]
pub(crate) fn PageLink(
    /// Where it goes.
    page: Page,
    /// Its class.
    #[prop(into)]
    class: String,
    /// What it shows.
    children: Children,
) -> impl IntoView {
    let resident = expect_context::<Resident>();
    let language = resident.words.with_untracked(|w| w.language().to_owned());
    let href = match resident.screens {
        Screens::Page => format!("#{}", page.fragment(&language)),
        Screens::Panel => "#".to_owned(),
    };
    let follow = move |ev: leptos::ev::MouseEvent| {
        // A click with a modifier opens a tab or window, which is the browser's to do.
        if resident.screens == Screens::Panel || !(ev.ctrl_key() || ev.meta_key() || ev.shift_key()) {
            ev.prevent_default();
            resident.go(page.clone());
        }
    };
    view! { <a class=class href=href on:click=follow>{children()}</a> }
}

/// A link to an item, with its picture and name.
#[component]
pub(crate) fn ItemLink(
    /// The item's position in the guide.
    at: usize,
) -> impl IntoView {
    let resident = expect_context::<Resident>();
    let guide = resident.guide.get_untracked();
    let words = resident.words.get_untracked();
    let item = guide.items.get(at).map(|i| (i.id.clone(), i.pictogram.clone(), words.item(&i.id)));
    item.map(|(id, pictogram, name)| {
        view! {
            <PageLink page=Page::Item { id, step: 0 } class="item-link">
                <super::Pictogram id=pictogram/>
                <span>{name}</span>
            </PageLink>
        }
    })
}
