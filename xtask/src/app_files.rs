//! `dist/app`: the built app, the same for every program, with a list of every file in it.
//!
//! `lidleaf publish --app dist/app` copies these files into a site and refuses a folder whose files
//! differ from the list, so a half-built app is never published.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use serde::Serialize;

use crate::digest::sha256;
use crate::place;
use crate::problem::{Outcome, Problem};

/// The list's own name; it is not in the list.
pub(crate) const LIST: &str = "app-files.json";

#[derive(Serialize)]
struct AppFiles {
    format: &'static str,
    version: u32,
    files: Vec<AppFile>,
}

#[derive(Serialize)]
struct AppFile {
    /// Relative to the folder, with `/` between the parts.
    path: String,
    bytes: u64,
    /// In lowercase hexadecimal.
    sha256: String,
}

/// Copies every file below `from` to below `to` and adds their paths to `kept`.
///
/// `prefix` is where `to` lies inside the app folder, empty or ending in `/`.
pub(crate) fn copy(
    from: &Path,
    app: &Path,
    prefix: &str,
    wanted: impl Fn(&str) -> bool,
    kept: &mut BTreeSet<String>,
) -> Outcome<()> {
    for name in place::files_below(from)? {
        if !wanted(&name) {
            continue;
        }
        let path = format!("{prefix}{name}");
        place::write(&app.join(&path), &place::read(&from.join(&name))?)?;
        if !kept.insert(path.clone()) {
            return Err(Problem::new(format!(
                "two sources want to be {path} in the app folder; one is {}",
                from.join(&name).display()
            ))
            .next("rename one of them"));
        }
    }
    Ok(())
}

/// Removes what an earlier build left and writes the list of what is there.
pub(crate) fn finish(app: &Path, kept: &BTreeSet<String>) -> Outcome<()> {
    for name in place::files_below(app)? {
        if !kept.contains(&name) && name != LIST {
            let path = app.join(&name);
            fs::remove_file(&path).map_err(|error| Problem::file("remove", &path, &error))?;
        }
    }
    let mut files = Vec::new();
    for path in kept {
        let bytes = place::read(&app.join(path))?;
        files.push(AppFile { path: path.clone(), bytes: bytes.len() as u64, sha256: sha256(&bytes) });
    }
    let list = AppFiles { format: "lidleaf-app-files", version: 1, files };
    let mut json = serde_json::to_string_pretty(&list)
        .map_err(|error| Problem::new(format!("cannot write {LIST}: {error}")))?;
    json.push('\n');
    place::write(&app.join(LIST), json.as_bytes())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn leftovers_go_and_everything_else_is_listed() {
        let folder = std::env::temp_dir().join(format!("xtask-app-files-{}", std::process::id()));
        let from = folder.join("from");
        let app = folder.join("app");
        place::write(&from.join("css/leaf.css"), b"abc").unwrap();
        place::write(&from.join("notes.md"), b"not shipped").unwrap();
        place::write(&app.join("pkg/left_over.js"), b"old").unwrap();

        let mut kept = BTreeSet::new();
        copy(&from, &app, "look/", |name| name.ends_with(".css"), &mut kept).unwrap();
        finish(&app, &kept).unwrap();

        assert_eq!(place::files_below(&app).unwrap(), [LIST, "look/css/leaf.css"]);
        let list: serde_json::Value = serde_json::from_slice(&place::read(&app.join(LIST)).unwrap()).unwrap();
        assert_eq!(
            list,
            serde_json::json!({
                "format": "lidleaf-app-files",
                "version": 1,
                "files": [{
                    "path": "look/css/leaf.css",
                    "bytes": 3,
                    "sha256": "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
                }],
            })
        );

        let twice = copy(&from, &app, "look/", |_| true, &mut kept).unwrap_err();
        assert!(twice.to_string().contains("look/css/leaf.css"), "{twice}");
        fs::remove_dir_all(&folder).unwrap();
    }
}
