//! Every text of a program by its key: the keys of [`guide_data::program_texts`], and
//! `rule.<id>.sorters` and `plant.name`, which residents never see.

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
            if field.is_empty() { &container.name } else { &container.set_out }
        }
        ("zone", id, "") => &find!(program.zones, id)?.name,
        ("channel", id, field) => {
            let channel = find!(program.channels, id)?;
            match field {
                "" => &channel.name,
                "note" => &channel.note,
                _ => &channel.fee,
            }
        }
        ("site", id, field) => {
            let site = find!(program.sites, id)?;
            if field.is_empty() { &site.name } else { &site.note }
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
fn parts(key: &str) -> (&str, &str, &str) {
    let (kind, rest) = key.split_once('.').unwrap_or((key, ""));
    for field in ["set-out", "note", "fee", "limit", "sorters"] {
        if let Some(id) = rest.strip_suffix(field).and_then(|r| r.strip_suffix('.')) {
            return (kind, id, field);
        }
    }
    (kind, rest, "")
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
    use guide_data::{Container, Rule, Stream};

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
                ..Container::default()
            }],
            ..Stream::default()
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
                "rule.r"
            ]
        );
        for key in keys {
            let read = text(&program, &key).cloned();
            assert_eq!(text_mut(&mut program, &key).cloned(), read, "{key}");
        }
        assert!(text(&program, "rule.absent").is_none() && text(&program, "nothing").is_none());
    }
}
