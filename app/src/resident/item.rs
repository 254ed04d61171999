//! The page shown: the start, a category, or an item with its next question or its answer.

use guide_data::Step;
use locales::t;

use super::answer;
use super::home::{category, home, not_here};
use super::html::{Html, put};
use super::pictogram::pictogram;
use super::question;
use super::state::{Asked, State};
use crate::address::Page;

/// What was drawn.
#[derive(Debug, Default)]
pub(crate) struct Drawn {
    /// The question on the screen.
    pub(crate) asked: Option<Asked>,
    /// The item whose answer is on the screen.
    pub(crate) answered: Option<String>,
    /// What is said aloud of it.
    pub(crate) said: String,
    /// It is the start, or shows the start below a message.
    pub(crate) is_home: bool,
}

/// Draws the page.
pub(crate) fn page(out: &mut Html, state: &State) -> Drawn {
    let m = &state.words.messages;
    let lost = match &state.page {
        Page::Home => {
            home(out, state);
            return Drawn { is_home: true, ..Drawn::default() };
        }
        Page::Category(id) => {
            if category(out, state, id) {
                return Drawn::default();
            }
            t!(m, "unknown-category", id = id)
        }
        Page::Item { id, step } => {
            if let Some(drawn) = item(out, state, id, *step) {
                return drawn;
            }
            t!(m, "unknown-item", id = short(id))
        }
        Page::Unknown(address) => t!(m, "unknown-address", address = address),
    };
    not_here(out, state, &lost);
    Drawn { is_home: true, ..Drawn::default() }
}

/// An item's screen, after so many answers; `None` when there is no such item.
fn item(out: &mut Html, state: &State, id: &str, step: usize) -> Option<Drawn> {
    let at = state.guide.item_index(id)?;
    // An address with answers that this page was never given begins again at the first question.
    let given = if state.answers.item == id { state.answers.given.len() } else { 0 };
    let step = step.min(given);
    let next = state.guide.next(at, &state.known(id, step))?;
    bar(out, state, &state.words.item(id), state.guide.items.get(at).map_or("", |i| &i.pictogram));
    Some(match next {
        Step::Ask(question) => {
            let picture = state.guide.items.get(at).map_or("", |i| &i.pictogram);
            question::question(out, state, &question, picture);
            let options = question.options.into_iter().map(|choice| choice.given).collect();
            let asked = Asked { item: id.to_owned(), step, fact: question.fact, options };
            Drawn { asked: Some(asked), ..Drawn::default() }
        }
        Step::Answer(answer) => {
            answer::answer(out, state, id, &answer);
            let said = answer::said(state, &answer);
            Drawn { answered: Some(id.to_owned()), said, ..Drawn::default() }
        }
    })
}

/// Back, and what the screen is about.
pub(crate) fn bar(out: &mut Html, state: &State, title: &str, picture: &str) {
    put!(out, "<div class=\"bar\"><button id=\"back\" class=\"icon-button\" type=\"button\" data-do=\"back\" \
        aria-label=\"" (t!(state.words.messages, "back")) "\"><svg viewBox=\"0 0 24 24\" aria-hidden=\"true\">\
        <path d=\"M15 4 7 12l8 8\"/></svg></button>");
    pictogram(out, picture);
    put!(out, "<h1 id=\"heading\" tabindex=\"-1\">" (title) "</h1></div>");
}

/// An id from an address, short enough to show.
fn short(id: &str) -> String {
    id.chars().take(60).collect()
}
