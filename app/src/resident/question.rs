//! A question: what is asked, a picture where one helps, its answers as large buttons, and "I can't tell".

use guide_data::{Question, ValueLabel};
use locales::t;

use super::html::{Html, put};
use super::pictogram::pictogram;
use super::ruler::{of_like, ruler};
use super::state::State;

/// One question about an item, whose picture is given. Its buttons name the answer by its place.
pub(crate) fn question(out: &mut Html, state: &State, question: &Question, picture: &str) {
    let (words, fact) = (&state.words, &question.fact);
    put!(out, "<section id=\"question\" class=\"question\" aria-labelledby=\"question-text\" data-fact=\""
        (fact) "\"><h2 id=\"question-text\">" (words.say(&format!("ask-{fact}"))) "</h2>");
    if let Some(hint) = words.maybe(&format!("ask-{fact}.hint")) {
        put!(out, "<p class=\"hint\">" (hint) "</p>");
    }
    let marks = fact == "resin";
    if marks {
        where_the_number_is(out, picture);
    }
    ruler(out, state, question);
    out.markup("<ul class=\"options\">");
    for (at, choice) in question.options.iter().enumerate() {
        put!(out, "<li><button class=\"option\" type=\"button\" data-do=\"give\" data-option=\"" (at.to_string())
            "\">");
        match &choice.label {
            ValueLabel::Value(number) if marks && number.len() == 1 => {
                put!(out, "<svg viewBox=\"0 0 48 48\" aria-hidden=\"true\"><path d=\"M24 6 44 42H4z\"/><text x=\"24\" y=\"37\">"
                    (number) "</text></svg>");
            }
            ValueLabel::Range(ends) => {
                // The everyday thing that the program likens an end of the range to.
                let like = ends.low.like.as_deref().or(ends.high.like.as_deref()).map_or("", of_like);
                if !like.is_empty() {
                    pictogram(out, like);
                }
            }
            ValueLabel::Value(_) => {}
        }
        put!(out, "<span>" (words.value(fact, &choice.label)) "</span></button></li>");
    }
    put!(out, "</ul><button id=\"cannot-tell\" class=\"option quiet-option\" type=\"button\" \
        data-do=\"cannot-tell\">" (t!(words.messages, "cannot-tell")) "</button>");
    let left = question.at_most;
    if left > 1 {
        put!(out, "<p class=\"quiet\">" (t!(words.messages, "questions-left", count = left)) "</p>");
    }
    out.markup("</section>");
}

/// A thing with a ring around its bottom, and what is to be found there: a triangle with a number. The mark
/// of ASTM D7611 is a triangle of plain lines (from memory).
fn where_the_number_is(out: &mut Html, picture: &str) {
    put!(out, "<svg id=\"number-place\" viewBox=\"0 0 124 56\" aria-hidden=\"true\"><use href=\"icons.svg#"
        (if picture.is_empty() { "bottle" } else { picture })
        "\"></use><path d=\"M32 44a8 8 0 1 1-16 0a8 8 0 1 1 16 0L72 36M70 28a26 26 0 1 1 52 0a26 26 0 1 1-52 0M96 9l17 30H79z\"/>\
        <text x=\"96\" y=\"34\">1</text></svg>");
}
