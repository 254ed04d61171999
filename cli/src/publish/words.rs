//! The words of a published folder: a pack for residents and one for coordinators, by language.

use std::collections::{BTreeMap, BTreeSet};

use guide_data::{Catalog, Guide, LanguagePack, PackedWords, Program, fold, has_unreviewed, program_texts};
use locales::{Lang, Messages, args, sources};
use serde::Serialize;
use unicode_normalization::UnicodeNormalization as _;

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
    /// Items' names, with other names.
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

/// The words of every language of a program, made once for all that is published of them.
pub(crate) struct Packs(Vec<LanguagePack>);

impl Packs {
    pub(crate) fn of(program: &Program, catalog: &Catalog) -> Self {
        Self(program.languages.iter().map(|tag| language_pack(program, catalog, tag)).collect())
    }

    /// In the order of the program's languages.
    pub(crate) fn iter(&self) -> impl Iterator<Item = &LanguagePack> {
        self.0.iter()
    }

    /// One of them as a phone is sent it: of texts and messages those that its screens can come to show
    /// with this guide, of names the one that is shown.
    pub(crate) fn packed(pack: &LanguagePack, guide: &Guide) -> PackedWords {
        let shown = Shown::of(guide);
        let lang = pack.language.parse().unwrap_or_default();
        let sources: Vec<&str> = pack.messages.iter().map(String::as_str).collect();
        let (messages, _) = Messages::from_ftl(lang, &sources);
        let mut pack = LanguagePack { messages: Vec::new(), ..pack.clone() };
        pack.texts.retain(|key, _| shown.has_text(key));
        pack.names.values_mut().for_each(|names| names.truncate(1));
        PackedWords { pack, messages: messages.packed(|key| shown.has_message(key)) }
    }
}

/// Items' names to search by, each item's own first: folded, so that no phone has to, and each once.
pub(crate) fn search_words(pack: &LanguagePack) -> BTreeMap<String, Vec<String>> {
    let folded = |names: &Vec<String>| {
        let mut folded: Vec<String> = Vec::new();
        for name in names {
            let name = fold(&name.nfkd().collect::<String>());
            if !folded.contains(&name) {
                folded.push(name);
            }
        }
        folded
    };
    pack.names.iter().map(|(item, names)| (item.clone(), folded(names))).collect()
}

/// The ids that a guide's answers and questions name.
#[derive(Default)]
struct Shown<'g> {
    facts: BTreeSet<&'g str>,
    values: BTreeSet<(&'g str, &'g str)>,
    steps: BTreeSet<&'g str>,
    reasons: BTreeSet<&'g str>,
    hazards: BTreeSet<&'g str>,
    rules: BTreeSet<&'g str>,
    parts: BTreeSet<&'g str>,
    asides: BTreeSet<&'g str>,
    container_rules: BTreeSet<&'g str>,
}

impl<'g> Shown<'g> {
    fn of(guide: &'g Guide) -> Self {
        let mut shown = Self::default();
        for variable in guide.asked_variables() {
            shown.facts.insert(&variable.fact);
            shown.values.extend(variable.values.iter().map(|value| (variable.fact.as_str(), value.as_str())));
            for aside in variable.cuts.iter().map(|cut| &cut.aside) {
                shown.asides.extend(aside.like.iter().chain(&aside.per).map(String::as_str));
            }
        }
        for outcome in &guide.outcomes {
            shown.steps.extend(outcome.steps.iter().map(String::as_str));
            shown.reasons.extend(outcome.reason.as_deref());
            shown.hazards.extend(outcome.hazard.as_deref());
            // Why is told in the words of the first.
            shown.rules.extend(outcome.rules.first().map(String::as_str));
        }
        shown.parts.extend(guide.items.iter().flat_map(|item| item.part_ids()));
        let containers = guide.streams.iter().flat_map(|stream| &stream.containers);
        let rules = containers.flat_map(|container| &container.rules);
        shown.container_rules.extend(rules.map(|(kind, _)| kind.as_str()));
        shown
    }

    /// Whether a text of the program is read on a phone.
    fn has_text(&self, key: &str) -> bool {
        match key.split_once('.') {
            Some(("machine" | "plant" | "print" | "item", _)) => false,
            Some(("rule", rule)) => self.rules.contains(rule),
            Some(("step", step)) => self.steps.contains(step),
            _ => true,
        }
    }

    /// Whether a message is. What this does not know is sent: one too many costs a moment, one too few
    /// leaves a gap on the screen.
    fn has_message(&self, key: &str) -> bool {
        let key = key.split_once('.').map_or(key, |(key, _)| key);
        let Some((kind, id)) = key.split_once('-') else { return true };
        match kind {
            "ask" if id != "contact" => self.facts.contains(id),
            "fact" => self.facts.contains(id),
            "value" => self.values.iter().any(|(fact, value)| {
                id.strip_prefix(fact).and_then(|rest| rest.strip_prefix('-')) == Some(value)
            }),
            "prep" => self.steps.contains(id),
            "reason" => self.reasons.contains(id),
            "caution" if id != "title" => self.hazards.contains(id),
            "part" => self.parts.contains(id),
            "like" | "per" => self.asides.contains(id),
            "container" => match id.strip_prefix("rule-") {
                Some(kind) => self.container_rules.contains(kind),
                None => true,
            },
            _ => true,
        }
    }
}

/// The words of a coordinator's screens in a language, whatever the program speaks: its preview of the
/// resident's screens may ask what no published guide does, so all of them.
pub(crate) fn coordinator_pack(program: &Program, catalog: &Catalog, tag: &str) -> CoordinatorPack {
    let lang: Lang = tag.parse().unwrap_or_default();
    let mut messages = files(&lang, RESIDENT);
    messages.extend(files(&lang, DESK));
    CoordinatorPack { language: tag.to_owned(), messages, names: names(program, catalog, &lang) }
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
