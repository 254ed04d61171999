//! Putting a finished set of files in the place of another, whole or not at all.

use std::collections::BTreeMap;
use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use crate::exit::Exit;
use crate::files::beside;
use crate::problem::{Outcome, Problem};
use crate::publish::list;

/// Whether a folder may be replaced: it is new, empty, or one that was published before.
///
/// Anything else is someone's folder, and replacing it would delete what is in it.
pub(crate) fn may_replace(out: &Path) -> Outcome<()> {
    let refused = |error: io::Error| Problem::io(Exit::Blocked, "cli-cannot-write", out, &error);
    match fs::symlink_metadata(out) {
        Err(error) if error.kind() == io::ErrorKind::NotFound => return Ok(()),
        Err(error) => return Err(refused(error)),
        Ok(found) if found.is_dir() => {}
        Ok(_) => return Err(Problem::new(Exit::Blocked, "cli-out-not-folder").file(out)),
    }
    if fs::read_dir(out).map_err(refused)?.next().is_none() {
        return Ok(());
    }
    let published = fs::read(out.join(list::LIST))
        .ok()
        .and_then(|text| serde_json::from_slice::<serde_json::Value>(&text).ok())
        .is_some_and(|json| json.get("format").and_then(|format| format.as_str()) == Some(list::FORMAT));
    if published { Ok(()) } else { Err(Problem::new(Exit::Blocked, "cli-out-in-use").file(out)) }
}

/// Writes the files to a folder beside `out`, then lets the two change places.
pub(crate) fn replace(out: &Path, files: &BTreeMap<String, Vec<u8>>) -> Outcome<()> {
    may_replace(out)?;
    let out = absolute(out)?;
    let new = beside(&out, "new");
    let old = beside(&out, "old");
    let done = fill(&new, files).and_then(|()| swap(&out, &new, &old));
    if done.is_err() {
        let _ = fs::remove_dir_all(&new);
    }
    done.map_err(|(path, error)| Problem::io(Exit::Blocked, "cli-cannot-write", &path, &error))
}

/// A relative path such as `site/` or `..` has no name to put another beside.
fn absolute(out: &Path) -> Outcome<PathBuf> {
    let refused = |error: &io::Error| Problem::io(Exit::Blocked, "cli-cannot-write", out, error);
    if out.exists() {
        return fs::canonicalize(out).map_err(|error| refused(&error));
    }
    let path = std::path::absolute(out).map_err(|error| refused(&error))?;
    if path.file_name().is_none() {
        return Err(Problem::new(Exit::Blocked, "cli-out-not-folder").file(out));
    }
    Ok(path)
}

fn fill(folder: &Path, files: &BTreeMap<String, Vec<u8>>) -> Result<(), (PathBuf, io::Error)> {
    fs::create_dir_all(folder).map_err(|error| (folder.to_owned(), error))?;
    for (path, bytes) in files {
        let path = folder.join(path);
        let parent = path.parent().unwrap_or(folder);
        fs::create_dir_all(parent)
            .and_then(|()| fs::write(&path, bytes))
            .map_err(|error| (path.clone(), error))?;
    }
    Ok(())
}

fn swap(out: &Path, new: &Path, old: &Path) -> Result<(), (PathBuf, io::Error)> {
    let failed = |error| (out.to_owned(), error);
    if !out.exists() {
        return fs::rename(new, out).map_err(failed);
    }
    fs::rename(out, old).map_err(failed)?;
    if let Err(error) = fs::rename(new, out) {
        // What was there goes back to its place.
        let _ = fs::rename(old, out);
        return Err(failed(error));
    }
    // The new folder is in place: that the old one cannot be removed harms nobody.
    let _ = fs::remove_dir_all(old);
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::files::below;

    fn files(words: &str) -> BTreeMap<String, Vec<u8>> {
        [("index.html", words), ("data/lang/en.json", words), ("files.json", r#"{"format":"lidleaf-files"}"#)]
            .into_iter()
            .map(|(path, text)| (path.to_owned(), text.as_bytes().to_owned()))
            .collect()
    }

    #[test]
    fn a_second_edition_replaces_the_first_and_leaves_nothing_behind() {
        let place = tempfile::tempdir().unwrap();
        let out = place.path().join("deep/site");
        let mut first = files("one");
        first.insert("gone.txt".to_owned(), b"only in the first".to_vec());
        replace(&out, &first).unwrap();
        replace(&out, &files("two")).unwrap();
        assert_eq!(fs::read(out.join("index.html")).unwrap(), b"two");
        assert_eq!(
            below(place.path()).unwrap(),
            ["deep/site/data/lang/en.json", "deep/site/files.json", "deep/site/index.html"]
        );
    }

    #[test]
    fn a_folder_with_other_things_in_it_is_left_alone() {
        let place = tempfile::tempdir().unwrap();
        fs::write(place.path().join("thesis.txt"), "three years").unwrap();
        assert_eq!(replace(place.path(), &files("x")).unwrap_err().key, "cli-out-in-use");
        let file = place.path().join("thesis.txt");
        assert_eq!(replace(&file, &files("x")).unwrap_err().key, "cli-out-not-folder");
        assert_eq!(below(place.path()).unwrap(), ["thesis.txt"]);
        assert_eq!(replace(Path::new("/"), &files("x")).unwrap_err().exit, Exit::Blocked);
    }

    #[test]
    fn a_failure_half_way_leaves_the_old_folder_whole() {
        let place = tempfile::tempdir().unwrap();
        let out = place.path().join("site");
        replace(&out, &files("one")).unwrap();
        let mut broken = files("two");
        // A file cannot also be a folder: writing this set fails after some of it was written.
        broken.insert("index.html/inside".to_owned(), Vec::new());
        assert_eq!(replace(&out, &broken).unwrap_err().key, "cli-cannot-write");
        assert_eq!(fs::read(out.join("index.html")).unwrap(), b"one");
        assert_eq!(
            below(place.path()).unwrap(),
            ["site/data/lang/en.json", "site/files.json", "site/index.html"]
        );
    }
}
