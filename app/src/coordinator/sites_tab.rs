//! Real places on the channels.

use std::sync::Arc;

use guide_data::{Schedule, Site};
use leptos::prelude::*;
use locales::t;

use super::condition::values_of;
use super::desk::Desk;
use super::fields::{Entry, Listed, lens_in, line, listed, many, name_of, of_program, ordered, words};
use super::place_tabs::{position, written};
use crate::browser;

/// The list of sites.
pub(crate) fn sites(desk: Desk) -> AnyView {
    listed(
        desk,
        Listed {
            code: "sites",
            entries: Arc::new(|desk| {
                let ids: Vec<String> = desk.program.with(|p| p.sites.iter().map(|s| s.id.clone()).collect());
                ids.into_iter().map(|id| Entry::from((id.clone(), name_of(*desk, "site", &id)))).collect()
            }),
            add: Arc::new(|p, id| p.sites.push(Site { id, ..Site::default() })),
            remove: Arc::new(|p, id| p.sites.retain(|s| s.id != id)),
            editor: Arc::new(move |id| site(desk, &id)),
        },
    )
}

fn site(desk: Desk, id: &str) -> AnyView {
    let w = desk.words.get_untracked();
    let m = &w.messages;
    let hours = {
        let id = id.to_owned();
        Memo::new(move |_| {
            desk.program
                .with(|p| p.sites.iter().find(|s| s.id == id).map(|s| s.hours.clone()).unwrap_or_default())
        })
    };
    // Said at once, beside the field; the findings say it again for the whole program.
    let problem = move || {
        let hours = hours.get();
        if hours.trim().is_empty() {
            return None;
        }
        let detail = Schedule::read(&hours, browser::now().day).err()?;
        Some(desk.words.with_untracked(|w| t!(w.messages, "hours-unreadable", detail = detail)))
    };
    view! {
        <div class="fields">
            {words(desk, &format!("site.{id}"), t!(m, "field-name"))}
            {many(desk, &format!("site.{id}.channels"), t!(m, "field-site-channels"), lens_in!(sites[id].channels),
                move || of_program(desk, "channel"))}
            {ordered(desk, &format!("site.{id}.accepts"), t!(m, "field-accepts"), lens_in!(sites[id].accepts),
                move || values_of(desk, "item"))}
            {ordered(desk, &format!("site.{id}.refuses"), t!(m, "field-refuses"), lens_in!(sites[id].refuses),
                move || values_of(desk, "item"))}
            {line(desk, &format!("site.{id}.address"), t!(m, "field-address"), "text", lens_in!(sites[id].address))}
            {line(desk, &format!("site.{id}.phone"), t!(m, "field-phone"), "tel", lens_in!(sites[id].phone))}
            {line(desk, &format!("site.{id}.position"), t!(m, "field-position"), "text",
                lens_in!(sites[id].position).map(written, |v: String| position(&v)))}
            {line(desk, &format!("site.{id}.hours"), t!(m, "field-hours"), "text", lens_in!(sites[id].hours))}
            <p class="quiet wide">{t!(m, "field-hours-hint")}</p>
            {move || problem().map(|text| view! { <p class="field-problem wide" role="status">{text}</p> })}
            {words(desk, &format!("site.{id}.note"), t!(m, "field-note"))}
            {words(desk, &format!("site.{id}.vehicles"), t!(m, "field-site-vehicles"))}
        </div>
    }
    .into_any()
}
