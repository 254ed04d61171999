//! Every text of a program by its key: the keys of [`guide_data::program_texts`], and
//! `rule.<id>.sorters` and `plant.name`, which residents never see.

use guide_data::standard::CONTAINER_RULES;
use guide_data::{Program, Text, each_text};

/// A text by key, for reading.
pub(crate) fn text<'p>(program: &'p Program, key: &str) -> Option<&'p Text> {
    macro_rules! find {
        ($list:expr, $id:expr) => {
            $list.iter().find(|x| x.id == $id)
        };
    }
    Some(match parts(key) {
        ("program", "name", "") => &program.name,
        ("contact", "name", "") => &program.contact.name,
        ("plant", "name", "") => &program.plant.name,
        ("print", "statement", "") => &program.print.statement,
        ("stream", id, "") => &find!(program.streams, id)?.name,
        ("container", id, field) => {
            let container = program.streams.iter().flat_map(|s| &s.containers).find(|c| c.id == id)?;
            match field {
                "" => &container.name,
                "set-out" => &container.set_out,
                kind => &container.rules.iter().find(|r| r.kind == kind)?.text,
            }
        }
        ("zone", id, "") => &find!(program.zones, id)?.name,
        ("channel", id, field) => {
            let channel = find!(program.channels, id)?;
            match field {
                "" => &channel.name,
                "note" => &channel.note,
                "allowance" => &channel.allowance,
                "vehicles" => &channel.vehicles,
                _ => &channel.fee,
            }
        }
        ("site", id, field) => {
            let site = find!(program.sites, id)?;
            match field {
                "" => &site.name,
                "vehicles" => &site.vehicles,
                _ => &site.note,
            }
        }
        ("machine", id, field) => {
            let machine = find!(program.plant.machines, id)?;
            if field.is_empty() { &machine.name } else { &machine.limit }
        }
        ("rule", id, field) => {
            let rule = find!(program.rules, id)?;
            if field.is_empty() { &rule.texts.residents } else { &rule.texts.sorters }
        }
        ("step", id, "") => program.steps.get(id)?,
        ("item", id, "") => program.item_names.get(id)?,
        _ => return None,
    })
}

/// A text by key, for writing. Naming an item of the program's own begins with the first word.
pub(crate) fn text_mut<'p>(program: &'p mut Program, key: &str) -> Option<&'p mut Text> {
    match parts(key) {
        ("rule", id, "sorters") => {
            program.rules.iter_mut().find(|r| r.id == id).map(|r| &mut r.texts.sorters)
        }
        ("item", id, "") => Some(program.item_names.entry(id.to_owned()).or_default()),
        _ => guide_data::text_mut(program, key),
    }
}

/// Kind, id and field of a key. A field is one of a known few, so an id may hold dots.
pub(crate) fn parts(key: &str) -> (&str, &str, &str) {
    let (kind, rest) = key.split_once('.').unwrap_or((key, ""));
    let (id, field) = rest.rsplit_once('.').unwrap_or((rest, ""));
    let own = match kind {
        "container" => field == "set-out" || CONTAINER_RULES.contains(&field),
        "channel" => matches!(field, "note" | "fee" | "allowance" | "vehicles"),
        "site" => matches!(field, "note" | "vehicles"),
        "machine" => field == "limit",
        "rule" => field == "sorters",
        _ => false,
    };
    if own { (kind, id, field) } else { (kind, rest, "") }
}

/// The keys of every text that somebody wrote in some language; the rest is nothing to translate.
pub(crate) fn keys(program: &Program) -> Vec<String> {
    let mut keys = Vec::new();
    each_text(program, &mut |key, text| {
        if !text.is_empty() {
            keys.push(key.to_owned());
        }
    });
    keys
}

#[cfg(test)]
mod tests {
    use super::*;
    use guide_data::{Channel, Container, ContainerRule, Rule, Site, Stream};

    #[test]
    fn every_key_leads_to_the_same_text_for_reading_and_writing() {
        let mut program = Program::blank("en");
        program.name = Text::of("en", "Quillmere County");
        program.streams.push(Stream {
            id: "glass-apart".into(),
            name: Text::of("en", "Glass"),
            containers: vec![Container {
                id: "glass-box".into(),
                name: Text::of("en", "box"),
                set_out: Text::of("en", "Out by seven"),
                rules: vec![ContainerRule {
                    kind: "weight".into(),
                    text: Text::of("en", "Two hands must lift it"),
                    ..ContainerRule::default()
                }],
                ..Container::default()
            }],
            ..Stream::default()
        });
        program.channels.push(Channel {
            id: "drop-off".into(),
            allowance: Text::of("en", "20 visits a year"),
            vehicles: Text::of("en", "Cars only"),
            ..Channel::default()
        });
        program.sites.push(Site {
            id: "north".into(),
            vehicles: Text::of("en", "No trailers"),
            ..Site::default()
        });
        program.rules.push(Rule { id: "r".into(), ..Rule::default() });
        if let Some(rule) = text_mut(&mut program, "rule.r") {
            rule.set("en", "Because");
        }
        let keys = keys(&program);
        assert_eq!(
            keys,
            [
                "program.name",
                "stream.glass-apart",
                "container.glass-box",
                "container.glass-box.set-out",
                "container.glass-box.weight",
                "channel.drop-off.allowance",
                "channel.drop-off.vehicles",
                "site.north.vehicles",
                "rule.r"
            ]
        );
        for key in keys {
            let read = text(&program, &key).cloned();
            assert!(read.as_ref().is_some_and(|t| !t.is_empty()), "{key}");
            assert_eq!(text_mut(&mut program, &key).cloned(), read, "{key}");
        }
        assert!(text(&program, "container.glass-box.liners").is_none(), "a rule it does not have");
        assert!(text(&program, "rule.absent").is_none() && text(&program, "nothing").is_none());
    }
}
