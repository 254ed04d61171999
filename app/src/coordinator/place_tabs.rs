//! Streams with their containers, service zones, channels.

use std::sync::Arc;

use guide_data::standard::{CHANNEL_KINDS, CONTAINER_KINDS, CONTAINER_RULES, STREAM_KINDS};
use guide_data::{
    Channel, Container, ContainerRule, Dimension, HAZARDS, Measure, Position, Program, Stream, Zone,
};
use leptos::prelude::*;
use locales::t;

use super::desk::Desk;
use super::fields::{
    Choice, Entry, Lens, Listed, add_from, check, free_id, lens_in, line, listed, many, name_of, of_program,
    or_none, select, slug, standard, words,
};

/// The dwelling types there are.
fn dwellings(desk: Desk) -> Vec<Choice> {
    super::condition::values_of(desk, "dwelling")
}

/// The things of one of the program's lists, as entries.
pub(crate) fn entries_of(desk: Desk, kind: &str) -> Vec<Entry> {
    of_program(desk, kind).into_iter().map(Entry::from).collect()
}

/// What is collected together, and what residents put it into.
pub(crate) fn streams(desk: Desk) -> AnyView {
    listed(
        desk,
        Listed {
            code: "streams",
            entries: Arc::new(|desk| entries_of(*desk, "stream")),
            add: Arc::new(|p, id| {
                p.streams.push(Stream { id, kind: "recycling".to_owned(), ..Stream::default() });
            }),
            remove: Arc::new(|p, id| p.streams.retain(|s| s.id != id)),
            editor: Arc::new(move |id| stream(desk, &id)),
        },
    )
}

fn stream(desk: Desk, id: &str) -> AnyView {
    let w = desk.words.get_untracked();
    let m = &w.messages;
    let owner = id.to_owned();
    let containers = Memo::new(move |_| {
        desk.program.with(|p| {
            p.stream(&owner)
                .map(|s| s.containers.iter().map(|c| c.id.clone()).collect::<Vec<_>>())
                .unwrap_or_default()
        })
    });
    let owner = id.to_owned();
    let add = move |_| {
        let taken: Vec<(String, String)> = desk.program.with_untracked(|p| {
            p.streams.iter().flat_map(|s| &s.containers).map(|c| (c.id.clone(), String::new())).collect()
        });
        let id = free_id(&slug(&format!("{owner} container"), "container"), &taken);
        desk.edit(&format!("add {id}"), |p| {
            if let Some(s) = p.streams.iter_mut().find(|s| s.id == owner) {
                s.containers.push(Container {
                    id,
                    kind: "cart".to_owned(),
                    colour: "#3b6ea5".to_owned(),
                    ..Container::default()
                });
            }
        });
    };
    view! {
        <div class="fields">
            {words(desk, &format!("stream.{id}"), t!(m, "field-name"))}
            {select(desk, &format!("stream.{id}.kind"), t!(m, "field-kind"), lens_in!(streams[id].kind),
                move || standard(desk, STREAM_KINDS, "stream-kind"))}
        </div>
        <h3>{t!(m, "containers-title")}</h3>
        <For each=move || containers.get() key=Clone::clone let(id)>{container(desk, &id)}</For>
        <p><button type="button" class="plain" id="container-add" on:click=add>{t!(m, "container-add")}</button></p>
    }
    .into_any()
}

/// A place in a container, wherever its stream is.
fn of_container<T: Clone + Default + 'static>(
    id: &str,
    get: fn(&Container) -> T,
    set: fn(&mut Container, T),
) -> Lens<T> {
    let (read, write) = (id.to_owned(), id.to_owned());
    Lens::new(
        move |p: &Program| {
            p.streams.iter().flat_map(|s| &s.containers).find(|c| c.id == read).map(get).unwrap_or_default()
        },
        move |p: &mut Program, value| {
            if let Some(c) = p.streams.iter_mut().flat_map(|s| &mut s.containers).find(|c| c.id == write) {
                set(c, value);
            }
        },
    )
}

fn container(desk: Desk, id: &str) -> AnyView {
    let w = desk.words.get_untracked();
    let m = &w.messages;
    let gone = id.to_owned();
    let remove = move |_| {
        desk.edit(&format!("remove {gone}"), |p| {
            for s in &mut p.streams {
                s.containers.retain(|c| c.id != gone);
            }
        });
    };
    view! {
        <section class="card" data-id=id.to_owned()>
            <h4><code dir="ltr">{id.to_owned()}</code></h4>
            <div class="fields">
                {words(desk, &format!("container.{id}"), t!(m, "field-container-name"))}
                {select(desk, &format!("container.{id}.kind"), t!(m, "field-kind"),
                    of_container(id, |c| c.kind.clone(), |c, v| c.kind = v),
                    move || standard(desk, CONTAINER_KINDS, "container-kind"))}
                {line(desk, &format!("container.{id}.colour"), t!(m, "field-colour"), "color",
                    of_container(id, |c| c.colour.clone(), |c, v| c.colour = v))}
                {line(desk, &format!("container.{id}.capacity"), t!(m, "field-capacity"), "text",
                    of_container(id, |c| c.capacity.clone(), |c, v| c.capacity = v).or_empty())}
                {many(desk, &format!("container.{id}.zones"), t!(m, "field-container-zones"),
                    of_container(id, |c| c.zones.clone(), |c, v| c.zones = v),
                    move || of_program(desk, "zone"))}
                {many(desk, &format!("container.{id}.dwellings"), t!(m, "field-container-dwellings"),
                    of_container(id, |c| c.dwellings.clone(), |c, v| c.dwellings = v),
                    move || dwellings(desk))}
                {words(desk, &format!("container.{id}.set-out"), t!(m, "field-set-out"))}
            </div>
            {container_rules(desk, id)}
            <p><button type="button" class="plain danger" on:click=remove>{t!(m, "container-remove")}</button></p>
        </section>
    }
    .into_any()
}

/// The rules about a container that no item decides; each kind at most once.
fn container_rules(desk: Desk, id: &str) -> AnyView {
    let w = desk.words.get_untracked();
    let m = &w.messages;
    let owner = id.to_owned();
    let kinds = Memo::new(move |_| {
        let of = |c: &Container| c.rules.iter().map(|r| r.kind.clone()).collect::<Vec<_>>();
        let all = |p: &Program| {
            p.streams.iter().flat_map(|s| &s.containers).find(|c| c.id == owner).map(of).unwrap_or_default()
        };
        desk.program.with(|p| all(p))
    });
    let rest = move || {
        let taken = kinds.get();
        let free: Vec<&str> =
            CONTAINER_RULES.iter().copied().filter(|k| taken.iter().all(|t| t != k)).collect();
        standard(desk, &free, "container-rule-kind")
    };
    let owner = id.to_owned();
    let add = move |kind: String| {
        desk.edit(&format!("add container.{owner}.{kind}"), |p| {
            if let Some(c) = p.streams.iter_mut().flat_map(|s| &mut s.containers).find(|c| c.id == owner) {
                c.rules.push(ContainerRule { kind, ..ContainerRule::default() });
            }
        });
    };
    let owner = id.to_owned();
    view! {
        <h5>{t!(m, "field-container-rules")}</h5>
        <p class="quiet">{t!(m, "field-container-rules-hint")}</p>
        <ul class="container-rules">
            <For each=move || kinds.get() key=Clone::clone let(kind)>{container_rule(desk, &owner, &kind)}</For>
        </ul>
        {add_from(desk, format!("container-rule-add-{id}"), t!(m, "field-container-rule-add"), rest, add)}
    }
    .into_any()
}

/// What a limit of a kind of container rule is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Limit {
    /// A measure with its unit.
    Stated(Dimension),
    /// Words such as "10%".
    Words,
}

/// The limit of a kind of container rule, where it has one.
fn limit_of(kind: &str) -> Option<Limit> {
    match kind {
        "weight" => Some(Limit::Stated(Dimension::Mass)),
        "distance" => Some(Limit::Stated(Dimension::Length)),
        "share-of-load" => Some(Limit::Words),
        _ => None,
    }
}

/// Whether a limit can be read; one that nobody has written yet is no mistake.
fn limit_is_readable(limit: Limit, stated: &str) -> bool {
    match limit {
        Limit::Stated(dimension) => stated.trim().is_empty() || Measure::parse(stated, dimension).is_ok(),
        Limit::Words => true,
    }
}

fn container_rule(desk: Desk, id: &str, kind: &str) -> AnyView {
    let w = desk.words.get_untracked();
    let m = &w.messages;
    let key = format!("container.{id}.{kind}");
    let (owner, of) = (id.to_owned(), kind.to_owned());
    let remove = move |_| {
        desk.edit(&format!("remove container.{owner}.{of}"), |p| {
            if let Some(c) = p.streams.iter_mut().flat_map(|s| &mut s.containers).find(|c| c.id == owner) {
                c.rules.retain(|r| r.kind != of);
            }
        });
    };
    let (read, write) = ((id.to_owned(), kind.to_owned()), (id.to_owned(), kind.to_owned()));
    let limit = Lens::new(
        move |p: &Program| {
            let container = p.streams.iter().flat_map(|s| &s.containers).find(|c| c.id == read.0);
            container.and_then(|c| c.rules.iter().find(|r| r.kind == read.1)).and_then(|r| r.limit.clone())
        },
        move |p: &mut Program, value| {
            let container = p.streams.iter_mut().flat_map(|s| &mut s.containers).find(|c| c.id == write.0);
            if let Some(rule) = container.and_then(|c| c.rules.iter_mut().find(|r| r.kind == write.1)) {
                rule.limit = value;
            }
        },
    )
    .or_empty();
    let here = limit.clone();
    let stated = Memo::new(move |_| desk.program.with(|p| here.get(p)));
    let has_limit = limit_of(kind);
    let unreadable = move || has_limit.is_some_and(|l| stated.with(|s| !limit_is_readable(l, s)));
    let (owner, of) = (id.to_owned(), kind.to_owned());
    // What residents read follows the texts, which are taken up a moment after an edit.
    let said = move || {
        let stated = stated.get();
        if unreadable() {
            let text = desk.words.with(|w| t!(w.messages, "measure-unreadable", stated = stated));
            return view! { <p class="field-problem wide" role="status">{text}</p> }.into_any();
        }
        if has_limit.is_some() && stated.trim().is_empty() && desk.words.with(|w| w.text(&key).is_none()) {
            let text = desk.words.with(|w| t!(w.messages, "limit-missing"));
            return view! { <p class="field-problem wide" role="status">{text}</p> }.into_any();
        }
        let text = desk.words.with(|w| w.container_rule(&owner, &of, Some(&stated)));
        let text = desk.words.with(|w| t!(w.messages, "residents-read", text = text));
        view! { <p class="reading wide">{text}</p> }.into_any()
    };
    let title = w.say(&format!("container-rule-kind-{kind}"));
    let remove_label = format!("{}: {title}", t!(m, "list-remove"));
    view! {
        <li class="container-rule" data-kind=kind.to_owned()>
            <div class="row">
                <strong>{title}</strong>
                <button type="button" class="plain danger" aria-label=remove_label on:click=remove>{t!(m, "list-remove")}</button>
            </div>
            <div class="fields">
                {has_limit.map(|l| {
                    let label = match l {
                        Limit::Stated(_) => t!(m, "field-limit"),
                        Limit::Words => t!(m, "field-share"),
                    };
                    line(desk, &format!("container.{id}.{kind}.limit"), label, "text", limit)
                })}
                {words(desk, &format!("container.{id}.{kind}"), t!(m, "field-container-rule"))}
                {said}
            </div>
        </li>
    }
    .into_any()
}

/// Service zones.
pub(crate) fn zones(desk: Desk) -> AnyView {
    listed(
        desk,
        Listed {
            code: "zones",
            entries: Arc::new(|desk| entries_of(*desk, "zone")),
            add: Arc::new(|p, id| p.zones.push(Zone { id, households: 1, ..Zone::default() })),
            remove: Arc::new(|p, id| p.zones.retain(|z| z.id != id)),
            editor: Arc::new(move |id| zone(desk, &id)),
        },
    )
}

fn zone(desk: Desk, id: &str) -> AnyView {
    let w = desk.words.get_untracked();
    let m = &w.messages;
    let centre: Lens<Option<Position>> = lens_in!(zones[id].centre);
    view! {
        <div class="fields">
            {words(desk, &format!("zone.{id}"), t!(m, "field-name"))}
            {select(desk, &format!("zone.{id}.dwelling"), t!(m, "field-dwelling"),
                lens_in!(zones[id].dwelling).or_empty(),
                move || or_none(desk, dwellings(desk)))}
            {line(desk, &format!("zone.{id}.households"), t!(m, "field-households"), "number",
                lens_in!(zones[id].households).map(|n: u32| n.to_string(), |v: String| v.parse().ok()))}
            {many(desk, &format!("zone.{id}.streams"), t!(m, "field-zone-streams"), lens_in!(zones[id].streams),
                move || of_program(desk, "stream"))}
            {line(desk, &format!("zone.{id}.centre"), t!(m, "field-centre"), "text",
                centre.map(|c| c.map(written).unwrap_or_default(), |v: String| {
                    if v.trim().is_empty() { Some(None) } else { position(&v).map(Some) }
                }))}
        </div>
    }
    .into_any()
}

/// A position as people paste it: "40.71, -74.01", latitude first.
pub(crate) fn position(text: &str) -> Option<Position> {
    let (lat, lon) = text.split_once(',')?;
    let (lat, lon): (f64, f64) = (lat.trim().parse().ok()?, lon.trim().parse().ok()?);
    ((-90.0..=90.0).contains(&lat) && (-180.0..=180.0).contains(&lon)).then_some(Position { lat, lon })
}

/// The same, written.
pub(crate) fn written(at: Position) -> String {
    format!("{}, {}", at.lat, at.lon)
}

/// Where things go that no container at home takes.
pub(crate) fn channels(desk: Desk) -> AnyView {
    listed(
        desk,
        Listed {
            code: "channels",
            entries: Arc::new(|desk| entries_of(*desk, "channel")),
            add: Arc::new(|p, id| {
                p.channels.push(Channel { id, kind: "drop-off".to_owned(), ..Channel::default() });
            }),
            remove: Arc::new(|p, id| p.channels.retain(|c| c.id != id)),
            editor: Arc::new(move |id| channel(desk, &id)),
        },
    )
}

fn channel(desk: Desk, id: &str) -> AnyView {
    let w = desk.words.get_untracked();
    let m = &w.messages;
    let sites = {
        let id = id.to_owned();
        move || {
            let on: Vec<String> = desk.program.with(|p| {
                p.sites.iter().filter(|s| s.channels.contains(&id)).map(|s| s.id.clone()).collect()
            });
            let names: Vec<String> = on.iter().map(|s| name_of(desk, "site", s)).collect();
            desk.words.with(|w| {
                t!(w.messages, "channel-sites", count = names.len(), names = w.messages.list_and(&names))
            })
        }
    };
    view! {
        <div class="fields">
            {words(desk, &format!("channel.{id}"), t!(m, "field-name"))}
            {select(desk, &format!("channel.{id}.kind"), t!(m, "field-kind"), lens_in!(channels[id].kind),
                move || standard(desk, CHANNEL_KINDS, "channel-kind"))}
            {words(desk, &format!("channel.{id}.note"), t!(m, "field-note"))}
            {words(desk, &format!("channel.{id}.fee"), t!(m, "field-fee"))}
            {check(desk, &format!("channel.{id}.booking"), t!(m, "field-booking"), lens_in!(channels[id].booking))}
            {check(desk, &format!("channel.{id}.proof"), t!(m, "field-proof"), lens_in!(channels[id].proof))}
            {check(desk, &format!("channel.{id}.permit"), t!(m, "field-permit"), lens_in!(channels[id].permit))}
            {check(desk, &format!("channel.{id}.voucher"), t!(m, "field-voucher"), lens_in!(channels[id].voucher))}
            {words(desk, &format!("channel.{id}.allowance"), t!(m, "field-allowance"))}
            {words(desk, &format!("channel.{id}.vehicles"), t!(m, "field-vehicles"))}
            {many(desk, &format!("channel.{id}.safe-for"), t!(m, "field-safe-for"), lens_in!(channels[id].safe_for),
                move || standard(desk, HAZARDS.get(1..).unwrap_or_default(), "value-hazard"))}
            <p class="quiet wide">{sites}</p>
        </div>
    }
    .into_any()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn limits_are_read_where_a_kind_has_one() {
        let with: Vec<&str> = CONTAINER_RULES.iter().copied().filter(|k| limit_of(k).is_some()).collect();
        assert_eq!(with, ["weight", "distance", "share-of-load"]);
        let weight = Limit::Stated(Dimension::Mass);
        assert!(limit_is_readable(weight, "100 lb") && limit_is_readable(weight, ""));
        assert!(!limit_is_readable(weight, "100") && !limit_is_readable(weight, "3 ft"));
        assert!(limit_is_readable(Limit::Stated(Dimension::Length), "3 ft"));
        assert!(limit_is_readable(Limit::Words, "10%"));
    }

    #[test]
    fn positions_are_read_as_people_paste_them() {
        for (text, expected) in [
            ("40.5, -74.25", Some((40.5, -74.25))),
            (" 40.5,-74.25 ", Some((40.5, -74.25))),
            ("95, 0", None),
            ("40.5", None),
            ("north, west", None),
        ] {
            assert_eq!(position(text).map(|p| (p.lat, p.lon)), expected, "{text}");
        }
        assert_eq!(
            position(&written(Position { lat: 1.25, lon: -3.5 })),
            Some(Position { lat: 1.25, lon: -3.5 })
        );
    }
}
