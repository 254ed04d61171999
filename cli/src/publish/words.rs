//! The words of a published folder: a pack for residents and one for coordinators, by language.

use std::collections::BTreeMap;

use guide_data::{Catalog, LanguagePack, Program, has_unreviewed, program_texts};
use locales::{Lang, Messages, args, sources};
use serde::Serialize;

/// Message files a resident's screens need.
const RESIDENT: &[&str] = &["answers", "facts", "formats", "resident"];
/// Message files of the plain pages, which are written when a guide is published.
#[cfg(test)]
const PAGES: &[&str] = &["pages"];
/// Message files only a coordinator's screens need.
const DESK: &[&str] = &["compare", "coordinator", "print", "sheets"];

/// What a coordinator's screens need beside a language's pack.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub(crate) struct CoordinatorPack {
    pub(crate) language: String,
    pub(crate) messages: Vec<String>,
    /// Items' names, in a language the guide itself is not published in.
    #[serde(skip_serializing_if = "BTreeMap::is_empty")]
    pub(crate) names: BTreeMap<String, Vec<String>>,
}

/// Everything a phone needs to speak one language of a program. A language we have no messages in is
/// answered in English around the program's own texts.
pub(crate) fn language_pack(program: &Program, catalog: &Catalog, tag: &str) -> LanguagePack {
    let lang: Lang = tag.parse().unwrap_or_default();
    let review = lang.entry().map(locales::Language::review);
    LanguagePack {
        language: tag.to_owned(),
        source: program.source_language.clone(),
        direction: lang.direction().html().to_owned(),
        endonym: lang.endonym(),
        texts: program_texts(program, tag),
        names: names(program, catalog, &lang),
        messages: files(&lang, RESIDENT),
        unreviewed: review.is_none_or(locales::ReviewState::needs_notice) || has_unreviewed(program, tag),
    }
}

/// The words of a coordinator's screens in a language. They are in every language there is, whatever the
/// program speaks: where it has no pack of its own, this one carries what that would have held.
pub(crate) fn coordinator_pack(program: &Program, catalog: &Catalog, tag: &str) -> CoordinatorPack {
    let lang: Lang = tag.parse().unwrap_or_default();
    let published = program.languages.iter().any(|language| language == tag);
    let mut messages = if published { Vec::new() } else { files(&lang, RESIDENT) };
    messages.extend(files(&lang, DESK));
    let names = if published { BTreeMap::new() } else { names(program, catalog, &lang) };
    CoordinatorPack { language: tag.to_owned(), messages, names }
}

/// The messages of a sheet that are not in a language's own pack.
pub(crate) fn desk_messages(tag: &str) -> Vec<String> {
    files(&tag.parse().unwrap_or_default(), DESK)
}

/// The message files of those names, in English where there are none in the language.
fn files(lang: &Lang, wanted: &[&str]) -> Vec<String> {
    let tag = lang.entry().map_or("en", |language| language.tag);
    let own = sources(tag).iter().filter(|(name, _)| wanted.contains(name));
    own.map(|(_, text)| without_comments(text)).collect()
}

/// Comments are for translators.
fn without_comments(text: &str) -> String {
    let lines = text.lines().filter(|line| !line.starts_with('#') && !line.trim().is_empty());
    lines.flat_map(|line| [line, "\n"]).collect()
}

/// Every item's name and other names: the program's own words first.
fn names(program: &Program, catalog: &Catalog, lang: &Lang) -> BTreeMap<String, Vec<String>> {
    let messages = locales::bundled(lang).isolating(false);
    catalog
        .with(&program.items)
        .items
        .iter()
        .map(|item| {
            let own = program.item_names.get(&item.id);
            let own = own.and_then(|text| text.or_source(&lang.tag(), &program.source_language));
            let names = own.map_or_else(|| standard(&item.id, &messages), |text| split(text).collect());
            (item.id.clone(), names)
        })
        .filter(|(_, names)| !names.is_empty())
        .collect()
}

/// A catalog item's names. One without any is shown by its id, and is a finding elsewhere.
fn standard(id: &str, messages: &Messages) -> Vec<String> {
    let find = |key: &str| messages.find(key, &args!()).map(|found| found.text);
    let name = find(&format!("item-{id}"));
    let also = find(&format!("item-{id}.also")).unwrap_or_default();
    name.into_iter().chain(split(&also)).collect()
}

fn split(names: &str) -> impl Iterator<Item = String> {
    names.split('|').map(str::trim).filter(|name| !name.is_empty()).map(str::to_owned)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The catalog's names: they travel as names, not as messages.
    const NAMES: &[&str] = &["items"];
    /// Message files of this command line alone.
    const OURS: &[&str] = &["cli"];

    #[test]
    fn every_message_file_has_its_reader() {
        for language in locales::supported() {
            for (name, _) in sources(language.tag) {
                let readers =
                    [RESIDENT, DESK, NAMES, OURS, PAGES].iter().filter(|files| files.contains(name)).count();
                assert_eq!(readers, 1, "{}/{name}.ftl: add it to one of the lists above", language.tag);
            }
        }
        for name in [RESIDENT, DESK, NAMES, OURS, PAGES].concat() {
            assert!(sources("en").iter().any(|(file, _)| *file == name), "en/{name}.ftl does not exist");
        }
    }

    #[test]
    fn a_program_s_own_name_comes_before_the_catalog_s() {
        let mut program = Program::blank("en");
        let catalog = Catalog::standard().unwrap();
        let id = catalog.items[0].id.clone();
        let before = language_pack(&program, &catalog, "es");
        assert!(before.names[&id].len() > 1, "{:?}", before.names[&id]);
        program.item_names.insert(id.clone(), guide_data::Text::of("en", "Fizz bottle | pop"));
        let after = language_pack(&program, &catalog, "es");
        assert_eq!(after.names[&id], ["Fizz bottle", "pop"]);
        assert_eq!(after.direction, "ltr");
        assert!(after.unreviewed);
    }
}
