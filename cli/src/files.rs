//! Reading and writing files so that a failure leaves what was there.

use std::ffi::{OsStr, OsString};
use std::fs::{self, File};
use std::io::{self, Read, Write};
use std::path::{Path, PathBuf};

use guide_data::{Catalog, LARGEST_FILE, LoadProblem, Program};
use sha2::{Digest, Sha256};

use crate::exit::Exit;
use crate::problem::{Outcome, Problem};

/// Reads a program file.
pub(crate) fn program(path: &Path) -> Outcome<Program> {
    Program::from_json(&text(path)?).map_err(|problem| Problem::load(path, &problem))
}

/// Reads a catalog file, or takes the one that ships.
pub(crate) fn catalog(path: Option<&Path>) -> Outcome<Catalog> {
    match path {
        Some(path) => Catalog::from_json(&text(path)?).map_err(|problem| Problem::load(path, &problem)),
        None => Catalog::standard().map_err(|problem| Problem::load(Path::new("catalog.json"), &problem)),
    }
}

/// Reads a file, never more of it than a file of ours may have: a wrong path may name a disk image.
pub(crate) fn bytes(path: &Path) -> Outcome<Vec<u8>> {
    let refused = |error: &io::Error| match error.kind() {
        io::ErrorKind::NotFound => Problem::new(Exit::Unreadable, "cli-file-missing").file(path),
        _ => Problem::io(Exit::Unreadable, "cli-file-unreadable", path, error),
    };
    let file = File::open(path).map_err(|error| refused(&error))?;
    let size = file.metadata().map_err(|error| refused(&error))?;
    if size.is_dir() {
        return Err(Problem::new(Exit::Unreadable, "cli-file-is-folder").file(path));
    }
    let bytes = usize::try_from(size.len()).unwrap_or(usize::MAX);
    if bytes > LARGEST_FILE {
        return Err(Problem::load(path, &LoadProblem::TooLarge { bytes }));
    }
    // A pipe has no length beforehand, so the reading is bounded as well.
    let mut bytes = Vec::new();
    let limit = u64::try_from(LARGEST_FILE).unwrap_or(u64::MAX).saturating_add(1);
    file.take(limit).read_to_end(&mut bytes).map_err(|error| refused(&error))?;
    if bytes.len() > LARGEST_FILE {
        return Err(Problem::load(path, &LoadProblem::TooLarge { bytes: bytes.len() }));
    }
    Ok(bytes)
}

fn text(path: &Path) -> Outcome<String> {
    String::from_utf8(bytes(path)?).map_err(|error| {
        let good = error.utf8_error().valid_up_to();
        let line = error.as_bytes().iter().take(good).filter(|byte| **byte == b'\n').count() + 1;
        Problem::new(Exit::Unreadable, "cli-file-not-text").file(path).with("line", line.to_string())
    })
}

/// Writes a file whole or not at all: beside its place first, then moved there.
pub(crate) fn write(path: &Path, bytes: &[u8]) -> Outcome<()> {
    let beside = beside(path, "part");
    let written = File::create(&beside).and_then(|mut file| {
        file.write_all(bytes)?;
        file.sync_all()
    });
    written.and_then(|()| fs::rename(&beside, path)).map_err(|error| {
        // The half-written file is of no use; that it cannot be removed changes nothing for the reader.
        let _ = fs::remove_file(&beside);
        Problem::io(Exit::Blocked, "cli-cannot-write", path, &error)
    })
}

/// A hidden name in the same folder: on the same disk, so that moving is one step. The process number
/// keeps two runs apart.
pub(crate) fn beside(path: &Path, what: &str) -> PathBuf {
    let mut name = OsString::from(".");
    name.push(path.file_name().unwrap_or_default());
    name.push(format!(".{}.{what}", std::process::id()));
    path.with_file_name(name)
}

/// Whether a name is one that [`write`] gives a file before it is whole.
pub(crate) fn is_half_written(name: &OsStr) -> bool {
    let number = |name: &str| {
        let (rest, number) = name.strip_prefix('.')?.strip_suffix(".part")?.rsplit_once('.')?;
        (!rest.is_empty() && number.bytes().all(|b| b.is_ascii_digit()))
            .then(|| number.parse::<u32>().ok())?
    };
    name.to_str().and_then(number).is_some()
}

/// Every file below a folder, as paths relative to it with `/` between the parts, sorted.
pub(crate) fn below(folder: &Path) -> Outcome<Vec<String>> {
    let mut found = Vec::new();
    walk(folder, "", &mut found)?;
    found.sort();
    Ok(found)
}

fn walk(folder: &Path, prefix: &str, found: &mut Vec<String>) -> Outcome<()> {
    let refused = |error: &io::Error| Problem::io(Exit::Unreadable, "cli-folder-unreadable", folder, error);
    for entry in fs::read_dir(folder).map_err(|error| refused(&error))? {
        let entry = entry.map_err(|error| refused(&error))?;
        let name = entry
            .file_name()
            .into_string()
            .map_err(|name| Problem::new(Exit::Unreadable, "cli-name-not-text").file(&folder.join(name)))?;
        if entry.path().is_dir() {
            walk(&entry.path(), &format!("{prefix}{name}/"), found)?;
        } else {
            found.push(format!("{prefix}{name}"));
        }
    }
    Ok(())
}

/// The SHA-256 of these bytes, in lowercase hexadecimal.
pub(crate) fn sha256(bytes: &[u8]) -> String {
    hexadecimal(&Sha256::digest(bytes))
}

pub(crate) fn hexadecimal(bytes: &[u8]) -> String {
    use std::fmt::Write as _;
    bytes.iter().fold(String::with_capacity(64), |mut out, byte| {
        // Writing to a string cannot fail.
        let _ = write!(out, "{byte:02x}");
        out
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn known_digest() {
        // FIPS 180-4, the example of a one-block message ("abc").
        assert_eq!(sha256(b"abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    #[test]
    fn a_failed_write_leaves_the_old_file_and_nothing_else() {
        let folder = tempfile::tempdir().unwrap();
        let place = folder.path().join("taken");
        fs::create_dir(&place).unwrap();
        fs::write(place.join("kept"), "old").unwrap();
        assert_eq!(write(&place, b"new").unwrap_err().key, "cli-cannot-write");
        assert_eq!(below(folder.path()).unwrap(), ["taken/kept"]);

        let file = folder.path().join("file");
        write(&file, b"one").unwrap();
        write(&file, b"two").unwrap();
        assert_eq!(fs::read(&file).unwrap(), b"two");
        assert_eq!(below(folder.path()).unwrap(), ["file", "taken/kept"]);
    }
}
