//! `files.json`: every file of a published folder, for the service worker to keep.

use std::collections::BTreeMap;

use serde::Serialize;

use crate::files::sha256;

/// The list's own name; it is the one file that is not in the list.
pub(crate) const LIST: &str = "files.json";
/// What the list says it is.
pub(crate) const FORMAT: &str = "lidleaf-files";

#[derive(Serialize)]
struct Files<'a> {
    format: &'static str,
    /// The SHA-256 over every path and digest: another version, another folder.
    version: &'a str,
    files: Vec<Listed<'a>>,
}

#[derive(Serialize)]
struct Listed<'a> {
    /// Relative to the folder, with `/` between the parts.
    path: &'a str,
    bytes: usize,
    sha256: String,
    group: Group,
}

/// Who needs a file. Phones keep the resident's files and leave the others until they are used.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum Group {
    /// Every visitor: kept on the first visit.
    Resident,
    /// Whoever edits the program.
    Coordinator,
    /// Whoever prints.
    Print,
    /// Whoever prints a language of a script of its own: large fonts, kept once a program speaks it.
    Script,
    /// Whoever's browser runs nothing: kept by nobody, for keeping needs a program.
    Pages,
}

impl Group {
    /// The group of a path. What belongs to no one in particular is the resident's, because a file too
    /// many costs a moment and a file too few breaks the guide where there is no network.
    pub(crate) fn of(path: &str) -> Self {
        let name = path.rsplit('/').next().unwrap_or(path);
        let begins = |words: &[&str]| words.iter().any(|word| name.starts_with(word));
        if path.starts_with(super::pages::FOLDER) || path == "pages.css" {
            Self::Pages
        } else if print::FONT_FILES.iter().any(|font| font.script.is_some() && font.file == name) {
            Self::Script
        } else if path.starts_with("fonts/") || begins(&["print_worker", "print-worker"]) {
            Self::Print
        } else if begins(&["coordinator", "desk"])
            || path == "data/program.json"
            || path == "data/catalog.json"
        {
            Self::Coordinator
        } else {
            Self::Resident
        }
    }
}

/// The version of a set of files: it changes when any of them does.
pub(crate) fn version(files: &BTreeMap<String, Vec<u8>>) -> String {
    let mut all = String::new();
    for (path, bytes) in files {
        all.push_str(&format!("{path}\n{}\n", sha256(bytes)));
    }
    sha256(all.as_bytes())
}

/// The list as written.
pub(crate) fn write(files: &BTreeMap<String, Vec<u8>>, version: &str) -> Vec<u8> {
    let listed = files
        .iter()
        .map(|(path, bytes)| Listed {
            path,
            bytes: bytes.len(),
            sha256: sha256(bytes),
            group: Group::of(path),
        })
        .collect();
    json(&Files { format: FORMAT, version, files: listed })
}

/// JSON with a final line break.
pub(crate) fn json(value: &impl Serialize) -> Vec<u8> {
    // Only maps with string keys are written here, so it cannot fail.
    let mut text = serde_json::to_vec(value).unwrap_or_default();
    text.push(b'\n');
    text
}
