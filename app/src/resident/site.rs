//! The nearest places of a channel, with distance and opening hours, all worked out on the phone.

use chrono::{Datelike as _, NaiveDate, NaiveTime, TimeDelta};
use guide_data::{Guide, OpenState};
use leptos::prelude::*;
use locales::{DateStyle, Messages, Quantity, Width, t};

use super::state::Resident;
use crate::browser::{self, Now};
use crate::words::Words;

/// How many further places the list shows.
const MORE: usize = 5;

/// The places of one channel: the nearest, the others one tap away.
#[component]
pub(crate) fn Sites(
    /// The channel's id.
    channel: String,
    /// The item that is to go there.
    item: String,
) -> impl IntoView {
    let resident = expect_context::<Resident>();
    let words = resident.words.get_untracked();
    let note = words.text(&format!("channel.{channel}.note"));
    let fee = words.text(&format!("channel.{channel}.fee"));
    let guide = resident.guide.get_untracked();
    let terms = guide.channels.iter().find(|c| c.id == channel).cloned().unwrap_or_default();
    let own = |field: &str| words.text(&format!("channel.{channel}.{field}"));
    let (allowance, vehicles) = (own("allowance"), own("vehicles"));
    let name = words.named("channel", &channel);
    let list = {
        let channel = channel.clone();
        move || places(resident, &channel, &item)
    };
    view! {
        <section class="channel" aria-label=name.clone() data-channel=channel>
            <h2>{name.clone()}</h2>
            {list}
            <ul class="terms">
                {fee.map(|fee| view! { <li>{fee}</li> })}
                {terms.booking.then(|| view! { <li>{t!(words.messages, "site-booking")}</li> })}
                {terms.proof.then(|| view! { <li>{t!(words.messages, "site-proof")}</li> })}
                {terms.permit.then(|| view! { <li>{t!(words.messages, "site-permit")}</li> })}
                {terms.voucher.then(|| view! { <li>{t!(words.messages, "site-voucher")}</li> })}
                {allowance.map(|text| view! { <li>{text}</li> })}
                {vehicles.map(|text| view! { <li>{text}</li> })}
            </ul>
            {note.map(|note| view! { <p class="quiet">{note}</p> })}
        </section>
    }
}

/// The nearest place and the others, from where the resident is or the middle of their zone.
fn places(resident: Resident, channel: &str, item: &str) -> AnyView {
    let guide = resident.guide.get();
    let words = resident.words.get();
    let here = resident.here.get();
    let zone = resident.zone.get();
    let centre = guide.zones.iter().find(|z| Some(&z.id) == zone.as_ref()).and_then(|z| z.centre);
    let from = here.or(centre);
    let near = guide_data::nearest(&guide, channel, Some(item), from);
    if near.is_empty() {
        return ().into_any();
    }
    let now = browser::now();
    let mut rows = near
        .into_iter()
        .take(1 + MORE)
        .map(|n| place(&guide, &words, n.site, n.metres, now))
        .collect::<Vec<_>>()
        .into_iter();
    let first = rows.next();
    let others: Vec<_> = rows.collect();
    let asked = RwSignal::new(None::<bool>);
    let locate = move |_| {
        browser::position(move |found| {
            asked.set(Some(found.is_some()));
            if found.is_some() {
                resident.here.set(found);
            }
        });
    };
    let messages = words.clone();
    view! {
        {first}
        {here.is_none().then(|| {
            let words = words.clone();
            view! {
                <p class="locate">
                    <button type="button" class="text-button" on:click=locate>
                        {t!(words.messages, "site-locate")}
                    </button>
                    <span class="quiet" role="status">
                        {move || (asked.get() == Some(false)).then(|| t!(messages.messages, "site-no-position"))}
                    </span>
                </p>
            }
        })}
        {(!others.is_empty()).then(|| view! {
            <details class="more-sites">
                <summary>{t!(words.messages, "site-more", count = others.len())}</summary>
                {others}
            </details>
        })}
    }
    .into_any()
}

/// One place.
fn place(guide: &Guide, words: &Words, site: usize, metres: Option<f64>, now: Now) -> impl IntoView + use<> {
    guide.sites.get(site).map(|site| {
        let state = if now.is_plausible() { site.hours.at(now.day, now.minute) } else { OpenState::Unknown };
        let open = matches!(state, OpenState::Open { .. });
        let name = words.named("site", &site.id);
        let note = words.text(&format!("site.{}.note", site.id));
        let vehicles = words.text(&format!("site.{}.vehicles", site.id));
        let phone = (!site.phone.is_empty()).then(|| {
            let href = format!("tel:{}", site.phone.replace(' ', ""));
            view! { <a class="action" href=href><bdi dir="ltr">{site.phone.clone()}</bdi></a> }
        });
        view! {
            <div class="site" data-site=site.id.clone()>
                <p class="site-name">
                    <strong>{name}</strong>
                    {metres.map(|m| view! { <span class="distance">{words.messages.distance(Quantity::metres(m))}</span> })}
                </p>
                <p class=if open { "hours open" } else { "hours" }>{hours(&words.messages, &state, now.day)}</p>
                <p class="quiet"><bdi>{site.address.clone()}</bdi></p>
                {note.map(|note| view! { <p class="quiet">{note}</p> })}
                {vehicles.map(|text| view! { <p class="quiet">{text}</p> })}
                <p class="actions">{phone}</p>
            </div>
        }
    })
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
