//! What helps to answer a question about size: the screen as a ruler, lengths drawn beside bank cards, and
//! pictures of everyday things.
//!
//! The ruler itself is drawn by `static/ruler.js`, which is fetched when somebody unfolds it: few do, and
//! everybody would wait for it.

use guide_data::{Dimension, Measure, Question, ValueLabel, dimension_of};
use locales::{Units, t};

use super::html::{Html, put};
use super::state::State;

/// A bank card's long side in micrometres: ISO/IEC 7810, format ID-1, 85.60 x 53.98 mm (from memory).
const CARD: i64 = 85_600;

/// The lengths that a question's answers turn on, in micrometres and as stated.
fn limits(question: &Question) -> Vec<(i64, &str)> {
    let mut limits: Vec<(i64, &str)> = Vec::new();
    for choice in &question.options {
        let ValueLabel::Range(ends) = &choice.label else { continue };
        for stated in [&ends.at_least, &ends.over, &ends.at_most, &ends.under].into_iter().flatten() {
            if let Ok(measure) = Measure::parse(stated, Dimension::Length)
                && limits.iter().all(|(known, _)| *known != measure.value)
            {
                limits.push((measure.value, stated));
            }
        }
    }
    limits
}

/// What a question about a length is answered with: the screen as a ruler, and bank cards.
pub(crate) fn ruler(out: &mut Html, state: &State, question: &Question) {
    if dimension_of(&question.fact) != Some(Dimension::Length) {
        return;
    }
    let m = &state.words.messages;
    let limits = limits(question);
    let marks: Vec<String> = limits.iter().map(|(length, _)| length.to_string()).collect();
    put!(out, "<details id=\"ruler\" class=\"decided\" data-marks=\"" (marks.join(" ")) "\" data-unit=\""
        (if m.units() == Units::Us { "in" } else { "cm" }) "\"><summary>" (t!(m, "ruler-title"))
        "</summary><label for=\"card\">" (t!(m, "ruler-card"))
        "</label><input id=\"card\" type=\"range\"><div id=\"card-drawing\"></div><p id=\"ruler-use\" hidden>"
        (t!(m, "ruler-use")) "</p><div id=\"ruler-drawing\"></div></details>");
    for (length, stated) in limits.into_iter().filter(|(length, _)| *length > CARD) {
        // To the half card: nobody sees less.
        let halves = i32::try_from((length * 2 + CARD / 2) / CARD).unwrap_or(i32::MAX);
        let count = m.number(f64::from(halves) / 2.0, usize::from(halves % 2 == 1));
        let words = state.words.shared().measure(&question.fact, stated);
        let across = length.to_string();
        put!(out, "<figure class=\"cards\"><svg viewBox=\"0 0 " (across) " 56000\" aria-hidden=\"true\">\
            <pattern id=\"cards-" (across) "\" width=\"85600\" height=\"56000\" patternUnits=\"userSpaceOnUse\">\
            <rect x=\"1500\" y=\"1500\" width=\"82600\" height=\"53000\" rx=\"3180\"/></pattern>\
            <path fill=\"url(#cards-" (across) ")\" d=\"M0 0h" (across) "v56000H0z\"/></svg><figcaption>"
            (t!(m, "ruler-cards", measure = words, count = count)) "</figcaption></figure>");
    }
}

/// The picture of an everyday thing that a size is likened to.
pub(crate) fn of_like(like: &str) -> &'static str {
    match like {
        "credit-card" => "card",
        "golf-ball" | "tennis-ball" | "basketball" => "ball",
        "sheet-of-paper" => "paper",
        "yogurt-cup" => "cup",
        "milk-jug" => "jug",
        "bucket" => "bucket",
        _ => "",
    }
}
