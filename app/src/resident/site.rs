//! The nearest places of a channel, with distance and opening hours, all worked out on the phone.

use chrono::{Datelike as _, NaiveDate, NaiveTime, TimeDelta};
use guide_data::{GuideSite, OpenState};
use locales::{DateStyle, Messages, Quantity, Width, t};

use super::answer::call;
use super::html::{Html, put};
use super::link::item_links;
use super::state::State;
use crate::browser::{self, Now};

/// How many further places the list shows.
const MORE: usize = 5;
/// How many things are told that a place takes as well, before the list is unfolded.
const ALSO: usize = 4;

/// One channel: its places, and what it asks for; with a way to say from where they are near.
pub(crate) fn channel(out: &mut Html, state: &State, id: &str, item: &str, asks_where: bool) {
    let words = &state.words;
    let name = words.named("channel", id);
    let own = |field: &str| words.text(&format!("channel.{id}.{field}"));
    put!(out, "<section class=\"channel\" aria-label=\"" (name) "\" data-channel=\"" (id) "\"><h2>" (name)
        "</h2><div class=\"places\" data-item=\"" (item) "\">");
    places(out, state, id, item);
    out.markup("</div>");
    if asks_where && guide_data::nearest(&state.guide, id, Some(item), None).len() > 1 {
        near(out, state);
    }
    out.markup("<ul class=\"terms\">");
    let terms = state.guide.channels.iter().find(|c| c.id == id);
    let asked = |asked: bool, key: &str| asked.then(|| words.say(key));
    let lines = [
        own("fee"),
        terms.and_then(|t| asked(t.booking, "site-booking")),
        terms.and_then(|t| asked(t.proof, "site-proof")),
        terms.and_then(|t| asked(t.permit, "site-permit")),
        terms.and_then(|t| asked(t.voucher, "site-voucher")),
        own("allowance"),
        own("vehicles"),
    ];
    for line in lines.into_iter().flatten() {
        put!(out, "<li>" (line) "</li>");
    }
    out.markup("</ul>");
    quiet(out, own("note"));
    out.markup("</section>");
}

fn quiet(out: &mut Html, text: Option<String>) {
    if let Some(text) = text {
        put!(out, "<p class=\"quiet\">" (text) "</p>");
    }
}

/// The nearest place and the others, from where the resident is or the middle of their zone.
pub(crate) fn places(out: &mut Html, state: &State, channel: &str, item: &str) {
    let m = &state.words.messages;
    let centre = state.guide.zones.iter().find(|z| Some(&z.id) == state.zone.as_ref()).and_then(|z| z.centre);
    let near = guide_data::nearest(&state.guide, channel, Some(item), state.here.or(centre));
    let now = browser::now();
    let mut rows =
        near.iter().take(1 + MORE).filter_map(|near| Some((state.guide.sites.get(near.site)?, near.metres)));
    let Some((site, metres)) = rows.next() else { return };
    let takes = takes(state, channel, item);
    place(out, state, site, metres, now, &takes);
    let others: Vec<_> = rows.collect();
    if !others.is_empty() {
        put!(out, "<details class=\"more-sites\"><summary>" (t!(m, "site-more", count = others.len())) "</summary>");
        for (site, metres) in others {
            place(out, state, site, metres, now, &takes);
        }
        out.markup("</details>");
    }
}

/// Where the resident is: asked of the phone, or typed.
fn near(out: &mut Html, state: &State) {
    let m = &state.words.messages;
    put!(out, "<form class=\"near\"><label for=\"near\">" (t!(m, "near-label"))
        "</label><p class=\"actions\"><input id=\"near\" autocomplete=\"off\" maxlength=\"80\" enterkeyhint=\"search\" value=\""
        (state.near) "\"><button class=\"text-button\">" (t!(m, "near-find"))
        "</button><button type=\"button\" class=\"text-button\" data-do=\"locate\">" (t!(m, "site-locate"))
        "</button></p><p id=\"near-said\" class=\"quiet\" role=\"status\"></p></form>");
}

/// What a channel takes besides an item, the most common first.
fn takes<'s>(state: &'s State, channel: &str, item: &str) -> Vec<&'s str> {
    let all = state.guide.items_to(channel).into_iter().filter_map(|at| state.guide.items.get(at));
    all.map(|known| known.id.as_str()).filter(|id| *id != item).collect()
}

/// Everything that a site takes: links, for what exactly it takes only the answer tells.
pub(crate) fn all_items(out: &mut Html, state: &State, site: &str) {
    let Some(site) = state.guide.sites.iter().find(|known| known.id == site) else { return };
    let mut all: Vec<usize> = Vec::new();
    for at in site.channels.iter().flat_map(|channel| state.guide.items_to(channel)) {
        if !all.contains(&at) && state.guide.items.get(at).is_some_and(|item| site.takes(&item.id)) {
            all.push(at);
        }
    }
    item_links(out, state, all);
}

/// One place.
fn place(out: &mut Html, state: &State, site: &GuideSite, metres: Option<f64>, now: Now, takes: &[&str]) {
    let (words, m) = (&state.words, &state.words.messages);
    let open = if now.is_plausible() { site.hours.at(now.day, now.minute) } else { OpenState::Unknown };
    let class = if matches!(open, OpenState::Open { .. }) { "hours open" } else { "hours" };
    put!(out, "<div class=\"site\" data-site=\"" (site.id) "\"><p class=\"site-name\"><strong>"
        (words.named("site", &site.id)) "</strong>");
    if let Some(metres) = metres {
        put!(out, "<span class=\"distance\">" (m.distance(Quantity::metres(metres))) "</span>");
    }
    put!(out, "</p><p class=\"" (class) "\">" (hours(m, &open, now.day)) "</p><p class=\"quiet\"><bdi>"
        (site.address) "</bdi></p>");
    quiet(out, words.text(&format!("site.{}.note", site.id)));
    quiet(out, words.text(&format!("site.{}.vehicles", site.id)));
    out.markup("<p class=\"actions\">");
    call(out, &site.phone);
    out.markup("</p>");
    let also: Vec<&&str> = takes.iter().filter(|id| site.takes(id)).collect();
    if !also.is_empty() {
        // Lists in sentences need the table of lower case, which weighs phones 6 KB (brotli).
        let names: Vec<String> = also.iter().take(ALSO).map(|id| words.item(id)).collect();
        quiet(out, Some(t!(m, "site-also-takes", items = names.join(" · "))));
        put!(out, "<details class=\"decided\" data-do=\"takes\" data-site=\"" (site.id) "\"><summary>"
            (t!(m, "site-all-items")) "</summary><ul class=\"items two\"></ul></details>");
    }
    out.markup("</div>");
}

/// Whether it is open, and until or from when.
fn hours(messages: &Messages, state: &OpenState, today: NaiveDate) -> String {
    match state {
        OpenState::Open { until: Some((day, minute)) } => {
            t!(messages, "hours-open-until", time = when(messages, *day, *minute, today))
        }
        OpenState::Open { until: None } => t!(messages, "hours-open"),
        OpenState::Closed { opens: Some((day, minute)) } => {
            t!(messages, "hours-closed-until", time = when(messages, *day, *minute, today))
        }
        OpenState::Closed { opens: None } => t!(messages, "hours-closed"),
        OpenState::ByAppointment { .. } => t!(messages, "hours-appointment"),
        OpenState::Unknown => t!(messages, "hours-unknown"),
    }
}

/// A time today, a weekday and time within the week, else a date.
fn when(messages: &Messages, day: NaiveDate, minute: u16, today: NaiveDate) -> String {
    let time =
        NaiveTime::from_num_seconds_from_midnight_opt(u32::from(minute % 1440) * 60, 0).unwrap_or_default();
    let time = messages.time(time);
    if day == today {
        time
    } else if day - today < TimeDelta::days(7) {
        t!(messages, "hours-day-time", day = messages.weekday(day.weekday(), Width::Wide), time = time)
    } else {
        t!(messages, "hours-day-time", day = messages.date(day, DateStyle::DayMonth), time = time)
    }
}
