//! `lidleaf publish`: the guide, its words and the app as a folder of files for any web host.
//!
//! All addresses are relative, so that the folder works at the root of a host and anywhere below it.

mod app;
mod folder;
mod list;
mod pages;
mod words;

use std::collections::BTreeMap;
use std::path::Path;

use chrono::NaiveDate;
use guide_data::{Catalog, Checked, Guide, Program};
use locales::Lang;
use serde_json::Value;

use crate::exit::Exit;
use crate::problem::{Outcome, Problem};

use words::{Packs, coordinator_pack, search_words};
pub(crate) use words::{desk_messages, language_pack};

/// What was published.
pub(crate) struct Published {
    pub(crate) files: usize,
    pub(crate) bytes: u64,
    pub(crate) version: String,
}

/// The app's copy of the message files: a published folder carries them in its packs instead.
const MESSAGES: &str = "locales/";
/// The app's description for a phone's home screen, filled in with the program's name.
const MANIFEST: &str = "manifest.webmanifest";
/// The resident's page; what in it is told the languages, and what gives way to the first screen.
const PAGE: &str = "index.html";
const PLACE: &str = "<div id=\"app\"";
const STARTING: &str = "<p class=\"starting\" aria-hidden=\"true\"></p>";
/// The end of what it shows where nothing runs.
const NOTHING_RUNS: &str = "</noscript>";

/// Writes a checked program's folder. Nothing is written before everything is ready.
pub(crate) fn publish(
    program: &Program,
    catalog: &Catalog,
    checked: &Checked,
    app: &Path,
    out: &Path,
    today: NaiveDate,
) -> Outcome<Published> {
    apart(app, out)?;
    // Said before any work: a folder that cannot be replaced will not become so by waiting.
    folder::may_replace(out)?;
    let mut files = app::read(app)?;
    files.retain(|path, _| !path.starts_with(MESSAGES));
    let mut guide = checked.guide.clone();
    guide.fill_hours(program);
    let packs = Packs::of(program, catalog);
    add_data(&mut files, program, catalog, &guide, &packs);
    add_pages(&mut files, program, &guide, &packs, today);
    if let Some(manifest) = files.get_mut(MANIFEST) {
        fill_manifest(manifest, program);
    }
    if let Some(page) = files.get_mut(PAGE) {
        fill_page(page, program);
    }
    let version = list::version(&files);
    let listed = list::write(&files, &version);
    files.insert(list::LIST.to_owned(), listed);
    folder::replace(out, &files)?;
    let bytes = files.values().map(|bytes| bytes.len() as u64).sum();
    Ok(Published { files: files.len(), bytes, version })
}

/// Refuses folders that lie inside each other: publishing would replace the app, or copy itself.
fn apart(app: &Path, out: &Path) -> Outcome<()> {
    let whole = |path: &Path| std::fs::canonicalize(path).or_else(|_| std::path::absolute(path));
    if let (Ok(app_at), Ok(out_at)) = (whole(app), whole(out))
        && (app_at.starts_with(&out_at) || out_at.starts_with(&app_at))
    {
        return Err(Problem::new(Exit::Blocked, "cli-out-in-app")
            .with("app", app.display().to_string())
            .file(out));
    }
    Ok(())
}

fn add_data(
    files: &mut BTreeMap<String, Vec<u8>>,
    program: &Program,
    catalog: &Catalog,
    guide: &Guide,
    packs: &Packs,
) {
    // What phones read is bytes, and named as text all the same: hosts that compress what they send choose
    // by the name, and leave out what they have never heard of.
    files.insert("data/guide.txt".to_owned(), guide.to_bytes());
    files.insert("data/program.json".to_owned(), program.to_json().into_bytes());
    files.insert("data/catalog.json".to_owned(), list::json(catalog));
    for pack in packs.iter() {
        let language = &pack.language;
        // A phone can answer with the names alone; all words to search by come right after them.
        files.insert(format!("data/lang/{language}.txt"), Packs::packed(pack, guide).to_bytes(guide));
        files.insert(format!("data/words/{language}.txt"), guide.search_words_to_bytes(&search_words(pack)));
    }
    // The coordinator's own screens are in every language there is, whatever the program speaks.
    for language in locales::supported() {
        let pack = coordinator_pack(program, catalog, language.tag);
        files.insert(format!("data/coordinator-{}.json", language.tag), list::json(&pack));
    }
}

/// Adds the plain pages, and the way to them from the first page where nothing runs.
fn add_pages(
    files: &mut BTreeMap<String, Vec<u8>>,
    program: &Program,
    guide: &Guide,
    packs: &Packs,
    today: NaiveDate,
) {
    files.extend(pages::write(program, guide, packs, today));
    if let Some(first) = files.get_mut(PAGE)
        && let Ok(text) = std::str::from_utf8(first)
        && let Some(at) = text.rfind(NOTHING_RUNS)
    {
        let (before, after) = text.split_at(at);
        *first = format!("{before}{}\n{after}", pages::links(program)).into_bytes();
    }
}

/// Puts the program's name and language into the manifest. One that cannot be read is left as the app
/// has it: the guide works without.
fn fill_manifest(manifest: &mut Vec<u8>, program: &Program) {
    let Ok(Value::Object(mut fields)) = serde_json::from_slice::<Value>(manifest) else { return };
    let language = &program.source_language;
    if let Some(name) = program.name.get(language) {
        fields.insert("name".to_owned(), name.into());
        fields.insert("short_name".to_owned(), name.into());
    }
    let lang: Lang = language.parse().unwrap_or_default();
    fields.insert("lang".to_owned(), lang.tag().into());
    fields.insert("dir".to_owned(), lang.direction().html().into());
    *manifest = crate::run::pretty(&fields).into_bytes();
}

/// Puts what the program will draw first into the page itself: it is read while the program is still on
/// its way, and nothing moves when that takes its place.
fn fill_page(page: &mut Vec<u8>, program: &Program) {
    let lang: Lang = program.source_language.parse().unwrap_or_default();
    let label = locales::bundled(&lang).t("search-label", &locales::args!());
    let name = program.name.get(&program.source_language).unwrap_or_default();
    let first = format!(
        "<div lang=\"{}\" dir=\"{}\"><header class=\"lid\"><p class=\"brand\">\
         <img src=\"icons/leaf.svg\" alt=\"\"><span>{}</span></p></header>\
         <main class=\"starting\"><div class=\"search\"><h1>{}</h1></div></main></div>",
        lang.tag(),
        lang.direction().html(),
        escaped(name),
        escaped(&label),
    );
    if let Ok(text) = std::str::from_utf8(page) {
        let mut languages = program.languages.clone();
        languages.sort_by_key(|language| *language != program.source_language);
        let place = format!("{PLACE} data-languages=\"{}\"", escaped(&languages.join(" ")));
        *page = text.replacen(STARTING, &first, 1).replacen(PLACE, &place, 1).into_bytes();
    }
}

/// A text as HTML writes it.
fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_page_has_the_place_for_its_first_screen() {
        let page = include_str!("../../app/static/index.html");
        let mut filled = page.as_bytes().to_vec();
        let mut program = Program::blank("en");
        program.name = guide_data::Text::of("en", "Fish & <chips>");
        fill_page(&mut filled, &program);
        let filled = String::from_utf8(filled).unwrap();
        assert!(filled.contains("<span>Fish &amp; &lt;chips&gt;</span>"), "{filled}");
        assert!(filled.contains("<div id=\"app\" data-languages=\"en\">"), "{filled}");
        assert!(!filled.contains(STARTING) && filled.ends_with("</html>\n"));
    }
}
