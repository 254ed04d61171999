//! The built app: every file that its list names, and nothing that differs from it.

use std::collections::BTreeMap;
use std::fs;
use std::io;
use std::path::Path;

use serde::Deserialize;

use crate::exit::Exit;
use crate::files::{self, sha256};
use crate::problem::{Outcome, Problem};

/// Written by the build beside the files it lists.
const LIST: &str = "app-files.json";
const FORMAT: &str = "lidleaf-app-files";
const VERSION: u32 = 1;

#[derive(Deserialize)]
struct AppFiles {
    format: String,
    version: u32,
    files: Vec<AppFile>,
}

#[derive(Deserialize)]
struct AppFile {
    path: String,
    sha256: String,
}

/// Reads the built app. A folder that differs from its list is a build that was interrupted or a file
/// that was changed by hand: it is refused rather than published.
pub(crate) fn read(folder: &Path) -> Outcome<BTreeMap<String, Vec<u8>>> {
    let list = folder.join(LIST);
    let text = fs::read(&list).map_err(|error| match error.kind() {
        io::ErrorKind::NotFound => Problem::new(Exit::Unreadable, "cli-app-missing").file(folder),
        _ => Problem::io(Exit::Unreadable, "cli-file-unreadable", &list, &error),
    })?;
    let broken = |detail: String| {
        Problem::new(Exit::Unreadable, "cli-app-list-broken").file(&list).with("detail", detail)
    };
    let listed: AppFiles = serde_json::from_slice(&text).map_err(|error| broken(error.to_string()))?;
    if listed.format != FORMAT || listed.version != VERSION {
        return Err(broken(format!("{} {}", listed.format, listed.version)));
    }
    let mut found = BTreeMap::new();
    for file in listed.files {
        let path = folder.join(&file.path);
        let bytes = fs::read(&path)
            .map_err(|error| Problem::io(Exit::Unreadable, "cli-file-unreadable", &path, &error))?;
        if sha256(&bytes) != file.sha256 {
            return Err(Problem::new(Exit::Unreadable, "cli-app-changed").file(&path));
        }
        found.insert(file.path, bytes);
    }
    for path in files::below(folder)? {
        if path != LIST && !found.contains_key(&path) {
            return Err(Problem::new(Exit::Unreadable, "cli-app-changed").file(&folder.join(path)));
        }
    }
    Ok(found)
}
