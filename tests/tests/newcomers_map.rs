//! DEVELOPERS.md is the newcomer's map, and maps outlive their territory: every folder and crate that
//! exists is on it, and every path it names exists.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

use std::collections::BTreeSet;
use std::path::Path;

use lidleaf_tests::root;

fn read(name: &str) -> String {
    let file = root().join(name);
    std::fs::read_to_string(&file).unwrap_or_else(|error| panic!("{name} is missing ({error}): write it"))
}

/// What stands between backticks in prose, code blocks left out.
fn quoted(text: &str) -> Vec<String> {
    let mut prose = String::new();
    let mut in_block = false;
    for line in text.lines() {
        if line.trim_start().starts_with("```") {
            in_block = !in_block;
        } else if !in_block {
            prose.push_str(line);
            prose.push('\n');
        }
    }
    prose.split('`').skip(1).step_by(2).map(str::to_owned).collect()
}

/// Where a link of Markdown leads, outside addresses and places in the same page left out.
fn linked(text: &str) -> Vec<String> {
    let targets = text.split("](").skip(1).filter_map(|rest| rest.split(')').next());
    let own = targets.filter(|target| !target.contains("://") && !target.starts_with('#'));
    own.map(|target| target.split('#').next().unwrap_or_default().to_owned()).collect()
}

/// Built by a command, so not in a fresh clone.
const MADE: &[&str] = &["target", "dist", "node_modules", "venv", "docs/screenshots"];

/// Whether something in backticks is meant as a path of this repository: it has a slash or an ending that our
/// files have, and nothing that a path has not.
fn is_path(word: &str) -> bool {
    const ENDINGS: &[&str] = &[".rs", ".toml", ".md", ".ftl", ".json", ".html", ".js", ".css", ".icc"];
    let plain = word.chars().all(|c| c.is_ascii_alphanumeric() || "/._-".contains(c));
    let looks = word.contains('/') || ENDINGS.iter().any(|ending| word.ends_with(ending));
    plain && looks && !word.starts_with('/') && !word.starts_with('.') && !word.contains("//")
}

fn is_made(word: &str) -> bool {
    MADE.iter().any(|made| word == *made || word.starts_with(&format!("{made}/")))
}

/// The names of all files below a folder.
fn file_names(folder: &Path, names: &mut BTreeSet<String>) {
    for entry in std::fs::read_dir(folder).unwrap() {
        let entry = entry.unwrap();
        let name = entry.file_name().to_string_lossy().into_owned();
        if !entry.file_type().unwrap().is_dir() {
            names.insert(name);
        } else if !is_made(&name) && name != ".git" {
            file_names(&entry.path(), names);
        }
    }
}

#[test]
fn every_folder_is_on_the_map() {
    let map = read("DEVELOPERS.md");
    let quoted = quoted(&map);
    let on_map = |name: &str| quoted.iter().any(|word| word.trim_end_matches('/') == name);
    let mut lacking = Vec::new();
    for entry in std::fs::read_dir(root()).unwrap() {
        let entry = entry.unwrap();
        let name = entry.file_name().to_string_lossy().into_owned();
        let is_folder = entry.file_type().unwrap().is_dir();
        if is_folder && !name.starts_with('.') && !is_made(&name) && !on_map(&name) {
            lacking.push(name);
        }
    }
    assert!(lacking.is_empty(), "DEVELOPERS.md does not name the folders {lacking:?}: add a line for each");
}

#[test]
fn every_crate_is_on_the_map() {
    let workspace = read("Cargo.toml");
    let members = workspace.split("members = [").nth(1).and_then(|rest| rest.split(']').next()).unwrap();
    let members: Vec<&str> = members.split('"').skip(1).step_by(2).collect();
    assert!(members.len() >= 7, "{members:?}");
    let map = quoted(&read("DEVELOPERS.md"));
    for member in members {
        assert!(
            map.iter().any(|word| word.trim_end_matches('/') == member),
            "DEVELOPERS.md does not name the crate {member}: add a line for it"
        );
    }
}

#[test]
fn every_path_that_is_named_exists() {
    let mut names = BTreeSet::new();
    file_names(&root(), &mut names);
    for page in ["DEVELOPERS.md", "README.md"] {
        let text = read(page);
        for word in quoted(&text).iter().chain(&linked(&text)) {
            let word = word.trim_end_matches('/');
            if !is_path(word) || is_made(word) {
                continue;
            }
            // A name alone ("its `mod.rs`") is that of some file; with folders it is a path from the root.
            let there = if word.contains('/') { root().join(word).exists() } else { names.contains(word) };
            assert!(
                there,
                "{page} names `{word}`, which does not exist: correct it, or write it without backticks"
            );
        }
    }
}

#[test]
fn pictures_that_are_shown_are_made_by_the_tests() {
    let made: Vec<String> = ["tests/tests", "tests/src"]
        .iter()
        .flat_map(|folder| std::fs::read_dir(root().join(folder)).unwrap())
        .map(|entry| std::fs::read_to_string(entry.unwrap().path()).unwrap_or_default())
        .collect();
    for page in ["README.md", "DEVELOPERS.md"] {
        for picture in linked(&read(page)).iter().filter(|target| target.starts_with("docs/screenshots/")) {
            let name = Path::new(picture).file_stem().unwrap().to_string_lossy().into_owned();
            assert!(
                made.iter().any(|source| source.contains(&format!("\"{name}\""))),
                "{page} shows {picture}, which no test makes"
            );
        }
    }
}
