//! A question: what is asked, its answers as large buttons, and "I can't tell".

use guide_data::Question;
use locales::t;

use super::html::{Html, put};
use super::state::State;

/// One question about an item. Its buttons name the answer by its place.
pub(crate) fn question(out: &mut Html, state: &State, question: &Question) {
    let (words, fact) = (&state.words, &question.fact);
    put!(out, "<section id=\"question\" class=\"question\" aria-labelledby=\"question-text\" data-fact=\""
        (fact) "\"><h2 id=\"question-text\">" (words.say(&format!("ask-{fact}"))) "</h2>");
    if let Some(hint) = words.maybe(&format!("ask-{fact}.hint")) {
        put!(out, "<p class=\"hint\">" (hint) "</p>");
    }
    out.markup("<ul class=\"options\">");
    for (at, choice) in question.options.iter().enumerate() {
        put!(out, "<li><button class=\"option\" type=\"button\" data-do=\"give\" data-option=\"" (at.to_string())
            "\">" (words.value(fact, &choice.label)) "</button></li>");
    }
    put!(out, "</ul><button id=\"cannot-tell\" class=\"option quiet-option\" type=\"button\" \
        data-do=\"cannot-tell\">" (t!(words.messages, "cannot-tell")) "</button>");
    let left = question.at_most;
    if left > 1 {
        put!(out, "<p class=\"quiet\">" (t!(words.messages, "questions-left", count = left)) "</p>");
    }
    out.markup("</section>");
}
