//! Links between pages: real addresses, so that they can be copied and opened elsewhere.

use super::html::{Html, put};
use super::pictogram::pictogram;
use super::state::{Screens, State};
use crate::address::Page;

/// Opens a link to a page; `</a>` closes it. On the resident's own page the browser follows it; in the
/// coordinator's panel the screens do.
pub(crate) fn open_link(out: &mut Html, state: &State, page: &Page, class: &'static str) {
    put!(out, "<a class=\"" (class) "\" href=\"#");
    match state.screens {
        Screens::Page => put!(out, (page.fragment(state.words.language())) "\">"),
        Screens::Panel => put!(out, "\" data-do=\"page\" data-page=\"" (page.fragment("")) "\">"),
    }
}

/// Links to items, each with its picture and name.
pub(crate) fn item_links(out: &mut Html, state: &State, items: impl IntoIterator<Item = usize>) {
    for item in items.into_iter().filter_map(|at| state.guide.items.get(at)) {
        out.markup("<li>");
        open_link(out, state, &Page::Item { id: item.id.clone(), step: 0 }, "item-link");
        pictogram(out, &item.pictogram);
        put!(out, "<span>" (state.words.item(&item.id)) "</span></a></li>");
    }
}
