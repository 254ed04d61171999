//! The words of a program by key, and the pack of words a phone loads for one language.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use crate::program::Program;
use crate::standard::CONTAINER_RULES;
use crate::text::{Text, TextState};

/// Everything a phone needs to speak one language.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct LanguagePack {
    /// The language (BCP 47).
    pub language: String,
    /// The language the program is written in, used where a text is missing.
    pub source: String,
    /// `ltr` or `rtl`.
    pub direction: String,
    /// The language's own name.
    pub endonym: String,
    /// The program's texts by key; see [`program_texts`].
    pub texts: BTreeMap<String, String>,
    /// Items by id: the name, then other names.
    pub names: BTreeMap<String, Vec<String>>,
    /// Message files of the screens.
    pub messages: Vec<String>,
    /// Some of these words nobody has signed off.
    pub unreviewed: bool,
}

/// Calls `visit` with every text of a program and its key, in a stable order.
pub fn each_text(program: &Program, visit: &mut dyn FnMut(&str, &Text)) {
    visit("program.name", &program.name);
    visit("contact.name", &program.contact.name);
    visit("plant.name", &program.plant.name);
    visit("print.statement", &program.print.statement);
    for machine in &program.plant.machines {
        visit(&format!("machine.{}", machine.id), &machine.name);
        visit(&format!("machine.{}.limit", machine.id), &machine.limit);
    }
    for stream in &program.streams {
        visit(&format!("stream.{}", stream.id), &stream.name);
        for container in &stream.containers {
            visit(&format!("container.{}", container.id), &container.name);
            visit(&format!("container.{}.set-out", container.id), &container.set_out);
            for rule in &container.rules {
                visit(&format!("container.{}.{}", container.id, rule.kind), &rule.text);
            }
        }
    }
    for zone in &program.zones {
        visit(&format!("zone.{}", zone.id), &zone.name);
    }
    for channel in &program.channels {
        visit(&format!("channel.{}", channel.id), &channel.name);
        visit(&format!("channel.{}.note", channel.id), &channel.note);
        visit(&format!("channel.{}.fee", channel.id), &channel.fee);
        visit(&format!("channel.{}.allowance", channel.id), &channel.allowance);
        visit(&format!("channel.{}.vehicles", channel.id), &channel.vehicles);
    }
    for site in &program.sites {
        visit(&format!("site.{}", site.id), &site.name);
        visit(&format!("site.{}.note", site.id), &site.note);
        visit(&format!("site.{}.vehicles", site.id), &site.vehicles);
    }
    for (step, words) in &program.steps {
        visit(&format!("step.{step}"), words);
    }
    for rule in &program.rules {
        visit(&format!("rule.{}", rule.id), &rule.texts.residents);
    }
    for (item, name) in &program.item_names {
        visit(&format!("item.{item}"), name);
    }
}

/// Finds the text of a key and lets it be changed: the same keys as [`each_text`].
pub fn text_mut<'a>(program: &'a mut Program, key: &str) -> Option<&'a mut Text> {
    let (kind, rest) = key.split_once('.')?;
    let (id, field) = rest.rsplit_once('.').unwrap_or((rest, ""));
    match kind {
        "program" => (rest == "name").then_some(&mut program.name),
        "contact" => (rest == "name").then_some(&mut program.contact.name),
        "plant" => (rest == "name").then_some(&mut program.plant.name),
        "print" => (rest == "statement").then_some(&mut program.print.statement),
        "machine" => {
            let limit = field == "limit";
            let id = if limit { id } else { rest };
            let machine = program.plant.machines.iter_mut().find(|m| m.id == id)?;
            Some(if limit { &mut machine.limit } else { &mut machine.name })
        }
        "stream" => program.streams.iter_mut().find(|s| s.id == rest).map(|s| &mut s.name),
        "container" => {
            let own = field == "set-out" || CONTAINER_RULES.contains(&field);
            let id = if own { id } else { rest };
            let mut all = program.streams.iter_mut().flat_map(|s| &mut s.containers);
            let container = all.find(|c| c.id == id)?;
            match field {
                _ if !own => Some(&mut container.name),
                "set-out" => Some(&mut container.set_out),
                kind => container.rules.iter_mut().find(|r| r.kind == kind).map(|r| &mut r.text),
            }
        }
        "zone" => program.zones.iter_mut().find(|z| z.id == rest).map(|z| &mut z.name),
        "channel" => {
            let id = if matches!(field, "note" | "fee" | "allowance" | "vehicles") { id } else { rest };
            let channel = program.channels.iter_mut().find(|c| c.id == id)?;
            Some(match field {
                "note" => &mut channel.note,
                "fee" => &mut channel.fee,
                "allowance" => &mut channel.allowance,
                "vehicles" => &mut channel.vehicles,
                _ => &mut channel.name,
            })
        }
        "site" => {
            let id = if matches!(field, "note" | "vehicles") { id } else { rest };
            let site = program.sites.iter_mut().find(|s| s.id == id)?;
            Some(match field {
                "note" => &mut site.note,
                "vehicles" => &mut site.vehicles,
                _ => &mut site.name,
            })
        }
        "step" => program.steps.get_mut(rest),
        "rule" => program.rules.iter_mut().find(|r| r.id == rest).map(|r| &mut r.texts.residents),
        "item" => program.item_names.get_mut(rest),
        _ => None,
    }
}

/// A program's texts in one language by key, in the source language where one is missing.
#[must_use]
pub fn program_texts(program: &Program, language: &str) -> BTreeMap<String, String> {
    let mut texts = BTreeMap::new();
    each_text(program, &mut |key, text| {
        if let Some(words) = text.or_source(language, &program.source_language) {
            texts.insert(key.to_owned(), words.to_owned());
        }
    });
    texts
}

/// True when some text shown in a language is not signed off, or is shown in another language.
#[must_use]
pub fn has_unreviewed(program: &Program, language: &str) -> bool {
    let mut some = false;
    each_text(program, &mut |_, text| {
        some |= !text.is_empty() && text.state(language, &program.source_language) != TextState::Reviewed;
    });
    some
}
