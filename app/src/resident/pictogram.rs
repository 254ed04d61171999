//! Pictures from the symbols that print and screen share: signs, which an answer needs, and icons of things,
//! which may arrive after it.

use guide_data::Answered;

use super::html::{Html, put};

/// A picture, beside a text that says the same: hidden from screen readers. Without an id
/// it is the plain leaf.
pub(crate) fn pictogram(out: &mut Html, id: &str) {
    let symbol = if id.is_empty() { "item" } else { id };
    put!(out, "<svg class=\"pictogram\" viewBox=\"0 0 48 48\" aria-hidden=\"true\" focusable=\"false\">"
        "<use href=\"" (if symbol.starts_with("place-") { "signs.svg#" } else { "icons.svg#" }) (symbol) "\"></use></svg>");
}

/// The mark of a verdict: each has a shape of its own.
pub(crate) fn mark(out: &mut Html, verdict: Answered) {
    put!(out, "<svg class=\"mark\" viewBox=\"0 0 48 48\" aria-hidden=\"true\" focusable=\"false\">"
        "<use href=\"signs.svg#verdict-" (verdict.code()) "\"></use></svg>");
}

/// The picture of a kind of container.
pub(super) fn of_container(kind: &str) -> &'static str {
    match kind {
        "bin" | "dumpster" => "place-bin",
        "bag" => "place-bag",
        "box" => "place-box",
        _ => "place-cart",
    }
}

/// The picture of a kind of channel: where one goes, hands over, or waits.
pub(super) fn of_channel(kind: &str) -> &'static str {
    match kind {
        "store-take-back" | "deposit-return" | "medicine-take-back" | "dealer" | "reuse" => "place-store",
        "bulky-pickup" => "place-pickup",
        "mail-back" => "envelope",
        _ => "place-drop-off",
    }
}

/// The picture of a category: that of a thing everyone knows from it.
pub(crate) fn of_category(id: &str) -> &'static str {
    match id {
        "plastic-packaging" => "bottle",
        "paper-cardboard" => "box",
        "glass" => "jar",
        "metal" => "can",
        "food-drink-cartons" => "carton",
        "food-garden" => "food",
        "film-bags" => "bag",
        "batteries-electronics" => "battery",
        "hazardous" => "paint",
        "medical" => "medicine",
        "textiles" => "textile",
        "household-goods" => "furniture",
        "building" => "rubble",
        "bathroom" => "diaper",
        _ => "item",
    }
}
