//! The start: search, recent and common items, categories; and the items of one category.

use guide_data::sort_by;
use guide_data::standard::CATEGORIES;
use locales::t;

use super::answer::ask;
use super::html::{Html, put};
use super::item::bar;
use super::link::{item_links, open_link};
use super::pictogram::{of_category, pictogram};
use super::state::State;
use crate::address::Page;
use crate::browser;
use crate::words::LONGEST_QUERY;

/// How many common items are one tap away.
const COMMON: usize = 8;

/// Search first; below it what most people look for.
pub(crate) fn home(out: &mut Html, state: &State) {
    let m = &state.words.messages;
    put!(out,
        "<form class=\"search\" role=\"search\"><label for=\"search\"><h1 id=\"heading\" tabindex=\"-1\">"
        (t!(m, "search-label"))
        "</h1></label><input id=\"search\" type=\"search\" name=\"q\" autocomplete=\"off\" autocapitalize=\"none\" \
         spellcheck=\"false\" enterkeyhint=\"go\" maxlength=\"200\" aria-describedby=\"results-count\" placeholder=\""
        (t!(m, "search-placeholder")) "\" value=\"" (state.query)
        "\"></form><p id=\"results-count\" class=\"quiet\" role=\"status\" aria-live=\"polite\">"
        (count(state)) "</p><div id=\"found\">");
    found(out, state);
    out.markup("</div>");
}

/// How many were found, for those who do not see them.
pub(crate) fn count(state: &State) -> String {
    if state.is_searching() {
        t!(state.words.messages, "search-count", count = state.found.len())
    } else {
        String::new()
    }
}

/// What was found, or while nothing is typed what can be browsed.
pub(crate) fn found(out: &mut Html, state: &State) {
    if !state.is_searching() {
        browse(out, state);
    } else if state.found.is_empty() {
        // Nothing found is not "no": it says whom to ask.
        put!(out, "<div class=\"notice\"><p>" (t!(state.words.messages, "search-nothing")) "</p>");
        long(out, state);
        ask(out, state);
        out.markup("</div>");
    } else {
        long(out, state);
        out.markup("<ul id=\"results\" class=\"items\">");
        item_links(out, state, state.found.iter().copied());
        out.markup("</ul>");
    }
}

/// Says how much of a text too long was looked at.
fn long(out: &mut Html, state: &State) {
    if state.query.chars().nth(LONGEST_QUERY).is_some() {
        put!(out, "<p id=\"search-long\">" (t!(state.words.messages, "search-long", count = LONGEST_QUERY)) "</p>");
    }
}

/// Recent and common items, then categories.
fn browse(out: &mut Html, state: &State) {
    let (guide, m) = (&state.guide, &state.words.messages);
    let recent: Vec<usize> = state.recent.iter().filter_map(|id| guide.item_index(id)).collect();
    let mut common: Vec<usize> = (0..guide.items.len()).filter(|at| !recent.contains(at)).collect();
    // What residents get wrong most comes first, then what they have most.
    let rank = |&at: &usize| {
        guide.items.get(at).map(|i| (!i.often_wrong, std::cmp::Reverse(i.common), i.id.as_str()))
    };
    sort_by(&mut common, |a, b| rank(a).cmp(&rank(b)));
    common.truncate(COMMON);
    list(out, state, "recent", &t!(m, "home-recent"), recent);
    list(out, state, "common", &t!(m, "home-common"), common);
    put!(out, "<section aria-labelledby=\"categories\"><h2 id=\"categories\">"
        (t!(m, "home-categories")) "</h2><ul class=\"items two\">");
    for category in CATEGORIES.iter().filter(|c| guide.items.iter().any(|i| i.category == **c)) {
        out.markup("<li>");
        open_link(out, state, &Page::Category((*category).to_owned()), "item-link category");
        pictogram(out, of_category(category));
        put!(out, "<span>" (state.words.say(&format!("category-{category}"))) "</span></a></li>");
    }
    out.markup("</ul></section>");
}

fn list(out: &mut Html, state: &State, id: &'static str, title: &str, items: Vec<usize>) {
    if items.is_empty() {
        return;
    }
    put!(out, "<section aria-labelledby=\"" (id) "\"><h2 id=\"" (id) "\">" (title)
        "</h2><ul class=\"items two\">");
    item_links(out, state, items);
    out.markup("</ul></section>");
}

/// The items of one category, by name; false when there is no such category.
pub(crate) fn category(out: &mut Html, state: &State, id: &str) -> bool {
    if !CATEGORIES.contains(&id) {
        return false;
    }
    let all = state.guide.items.iter().enumerate().filter(|(_, item)| item.category == id);
    let mut items: Vec<(String, usize)> =
        all.map(|(at, item)| (browser::fold(&state.words.item(&item.id)), at)).collect();
    sort_by(&mut items, Ord::cmp);
    bar(out, state, &state.words.say(&format!("category-{id}")), of_category(id));
    out.markup("<ul class=\"items\">");
    item_links(out, state, items.into_iter().map(|(_, at)| at));
    out.markup("</ul>");
    true
}

/// An address that leads nowhere says so, and leads on.
pub(crate) fn not_here(out: &mut Html, state: &State, message: &str) {
    put!(out, "<div class=\"notice\" role=\"alert\"><p id=\"not-here\">" (message) "</p></div>");
    home(out, state);
}
