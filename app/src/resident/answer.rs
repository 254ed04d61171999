//! The answer: verdict by word, shape and colour; where it goes; how to prepare it; why.

use guide_data::{Answer, Answered, GuideContainer, Outcome};
use locales::{DateStyle, t};

use super::html::{Html, put};
use super::pictogram::{mark, of_channel, of_container, pictogram};
use super::site::channel;
use super::state::State;
use crate::browser;

/// The answer for an item and for those of its parts that go elsewhere.
pub(crate) fn answer(out: &mut Html, state: &State, item: &str, answer: &Answer) {
    let words = &state.words;
    let nothing = Outcome::default();
    let whole = answer.whole().unwrap_or(&nothing);
    let now = browser::now();
    if !now.is_plausible() {
        let date = words.messages.date(now.day, DateStyle::Long);
        put!(out, "<p class=\"notice\" id=\"clock-wrong\">" (t!(words.messages, "clock-wrong", date = date)) "</p>");
    }
    out.markup("<article id=\"answer\" class=\"answer\">");
    verdict(out, state, whole);
    let mut asks_where = true;
    detail(out, state, whole, item, &mut asks_where);
    let mut parts = answer.parts_apart().peekable();
    if parts.peek().is_some() {
        out.markup("<div class=\"parts\" id=\"parts\">");
        for part in parts {
            let name = words.say(&format!("part-{}", part.part.as_deref().unwrap_or_default()));
            put!(out, "<section class=\"part\" aria-label=\"" (name) "\"><h2>" (name) "</h2>");
            verdict(out, state, &part.outcome);
            detail(out, state, &part.outcome, item, &mut asks_where);
            out.markup("</section>");
        }
        out.markup("</div>");
    }
    if !answer.assumed.is_empty() {
        put!(out, "<div class=\"assumed\" id=\"assumed\"><p>" (t!(words.messages, "assumed-title")) "</p><ul>");
        for (fact, label) in &answer.assumed {
            let (name, value) = (words.say(&format!("fact-{fact}")), words.value(fact, label));
            put!(out, "<li>" (t!(words.messages, "assumed-line", fact = name, value = value)) "</li>");
        }
        out.markup("</ul></div>");
    }
    decided(out, state, whole);
    out.markup("</article>");
}

/// The verdict's word.
fn word(state: &State, outcome: &Outcome) -> String {
    if outcome.closed_list {
        t!(state.words.messages, "verdict-closed")
    } else {
        state.words.say(&format!("verdict-{}", outcome.verdict.code()))
    }
}

/// Verdict and place in a line, for those who do not see them.
pub(crate) fn said(state: &State, answer: &Answer) -> String {
    let Some(outcome) = answer.whole() else { return String::new() };
    let (zone, dwelling) = (state.zone.as_deref(), state.dwelling());
    let place = state.words.shared().destination_at(&state.guide, outcome, zone, dwelling);
    place.into_iter().fold(word(state, outcome), |said, place| format!("{said}. {place}"))
}

/// The verdict and where the thing goes.
fn verdict(out: &mut Html, state: &State, outcome: &Outcome) {
    let code = outcome.verdict.code();
    let word = word(state, outcome);
    put!(out, "<div class=\"verdict " (code) "\" data-verdict=\"" (code) "\">");
    mark(out, outcome.verdict);
    put!(out, "<div><p class=\"verdict-word\">" (word) "</p>");
    destination(out, state, outcome);
    out.markup("</div></div>");
}

/// The containers of the stream a thing goes into, where the resident lives.
fn containers<'s>(state: &'s State, outcome: &Outcome) -> Vec<&'s GuideContainer> {
    let Some(stream) = &outcome.stream else { return Vec::new() };
    state.guide.containers(stream, state.zone.as_deref(), state.dwelling())
}

/// The container's name with its colour, or the channel's name.
fn destination(out: &mut Html, state: &State, outcome: &Outcome) {
    let words = &state.words;
    if let Some(stream) = &outcome.stream {
        let (zone, dwelling) = (state.zone.as_deref(), state.dwelling());
        let name = words.shared().destination_at(&state.guide, outcome, zone, dwelling).unwrap_or_default();
        let mut looks: Vec<(&str, &str)> = Vec::new();
        for container in containers(state, outcome) {
            let look = (container.colour.as_str(), of_container(&container.kind));
            if !looks.contains(&look) {
                looks.push(look);
            }
        }
        put!(out, "<p class=\"destination\" data-stream=\"" (stream) "\"><span class=\"container\">");
        for (colour, symbol) in looks {
            swatch(out, colour, symbol);
        }
        put!(out, (name) "</span></p>");
    } else if let Some(channel) = &outcome.channel {
        let kind =
            state.guide.channels.iter().find(|known| known.id == *channel).map(|known| known.kind.as_str());
        put!(out, "<p class=\"destination\" data-channel=\"" (channel) "\"><span class=\"container\">");
        pictogram(out, of_channel(kind.unwrap_or_default()));
        put!(out, (words.named("channel", channel)) "</span></p>");
    }
}

/// A container by its kind and colour. The name beside it says the same in words.
fn swatch(out: &mut Html, colour: &str, symbol: &str) {
    if colour.len() == 7 && colour.starts_with('#') && colour.bytes().skip(1).all(|b| b.is_ascii_hexdigit()) {
        put!(out, "<svg class=\"swatch\" viewBox=\"0 0 48 48\" aria-hidden=\"true\" focusable=\"false\">\
            <use fill=\"" (colour) "\" href=\"signs.svg#" (symbol) "\"></use></svg>");
    }
}

/// What belongs to one outcome: caution, preparation, reason, sites, whom to ask.
fn detail(out: &mut Html, state: &State, outcome: &Outcome, item: &str, asks_where: &mut bool) {
    let words = &state.words;
    let m = &words.messages;
    if outcome.temporary {
        put!(out, "<p class=\"temporary\" id=\"temporary\">" (t!(m, "temporary-order")) "</p>");
    }
    for text in words.shared().banned(outcome) {
        put!(out, "<p class=\"banned\">" (text) "</p>");
    }
    if let Some(class) = &outcome.hazard {
        put!(out, "<div class=\"caution\" role=\"note\"><svg viewBox=\"0 0 48 48\" aria-hidden=\"true\">\
            <use href=\"signs.svg#verdict-caution\"></use></svg><p><strong>" (t!(m, "caution-title"))
            "</strong> " (words.say(&format!("caution-{class}"))) "</p></div>");
    }
    if !outcome.steps.is_empty() {
        put!(out, "<section class=\"prepare\"><h2>" (t!(m, "prepare-title")) "</h2><ol>");
        for step in &outcome.steps {
            put!(out, "<li>" (words.shared().step(step)) "</li>");
        }
        out.markup("</ol></section>");
    }
    let also = outcome.also.iter().filter(|c| outcome.channel.as_ref() != Some(*c));
    let channels: Vec<&String> = outcome.channel.iter().chain(also).collect();
    if outcome.channel.is_none() && !channels.is_empty() {
        put!(out, "<h2 class=\"also\">" (t!(m, "also-title")) "</h2>");
    }
    // Where to look from is asked once, at the first of them on the page.
    for id in channels {
        channel(out, state, id, item, *asks_where);
        *asks_where = false;
    }
    if let Some(reason) = words.shared().reason(outcome) {
        put!(out, "<section class=\"why\"><h2>" (t!(m, "why-title")) "</h2><p>" (reason) "</p></section>");
    }
    container_rules(out, state, outcome);
    if matches!(outcome.verdict, Answered::Unlisted | Answered::Undecided) || outcome.closed_list {
        ask(out, state);
    }
}

/// The rules of the container a thing goes into, one tap away: they are the same for every thing.
fn container_rules(out: &mut Html, state: &State, outcome: &Outcome) {
    let (words, containers) = (&state.words, containers(state, outcome));
    // With several containers it is not known which one stands at home.
    let [only] = containers.as_slice() else { return };
    let set_out = words.text(&format!("container.{}.set-out", only.id));
    let rules = only
        .rules
        .iter()
        .map(|(kind, limit)| words.shared().container_rule(&only.id, kind, limit.as_deref()));
    let lines: Vec<String> = set_out.into_iter().chain(rules).filter(|line| !line.is_empty()).collect();
    if lines.is_empty() {
        return;
    }
    let name = words.named("container", &only.id);
    put!(out, "<details class=\"decided\" data-container=\"" (only.id) "\"><summary>"
        (t!(words.messages, "container-rules-title", container = name)) "</summary><ul>");
    for line in lines {
        put!(out, "<li>" (line) "</li>");
    }
    out.markup("</ul></details>");
}

/// Whom to ask about a thing that is not on the list.
pub(crate) fn ask(out: &mut Html, state: &State) {
    let (words, contact) = (&state.words, &state.guide.contact);
    let name = words.text("contact.name").unwrap_or_default();
    put!(out, "<div class=\"ask\"><p>" (t!(words.messages, "ask-contact", name = name)) "</p><p class=\"actions\">");
    call(out, &contact.phone);
    if !contact.email.is_empty() {
        put!(out, "<a class=\"action\" href=\"mailto:" (contact.email) "\"><bdi dir=\"ltr\">" (contact.email)
            "</bdi></a>");
    }
    out.markup("</p></div>");
}

/// A number to call, when there is one.
pub(crate) fn call(out: &mut Html, phone: &str) {
    if !phone.is_empty() {
        put!(out, "<a class=\"action\" href=\"tel:" (phone.replace(' ', "")) "\"><bdi dir=\"ltr\">" (phone)
            "</bdi></a>");
    }
}

/// Which rule decided, one tap away.
fn decided(out: &mut Html, state: &State, outcome: &Outcome) {
    let m = &state.words.messages;
    put!(out, "<details class=\"decided\" id=\"decided\"><summary>" (t!(m, "decided-title")) "</summary>");
    if let Some(tier) = outcome.tier {
        put!(out, "<p>" (state.words.say(&format!("tier-{}", tier.code()))) "</p>");
    }
    if !outcome.rules.is_empty() {
        put!(out, "<p>" (t!(m, "decided-rule")) " <code><bdi dir=\"ltr\">" (outcome.rules.join(", "))
            "</bdi></code></p>");
    }
    if outcome.acknowledged {
        put!(out, "<p>" (t!(m, "decided-acknowledged")) "</p>");
    }
    put!(out, "<p>" (t!(m, "decided-edition", edition = state.guide.edition.label.as_str())) "</p></details>");
}
