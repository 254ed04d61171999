//! The folder that a batch fills: one run at a time, every file whole.

use std::fs::{self, File, TryLockError};
use std::path::{Path, PathBuf};

use super::notes::{self, Note, Notes};
use crate::exit::Exit;
use crate::files;
use crate::problem::{Outcome, Problem};
use crate::run::pretty;

/// Held while a run works in the folder. The system lets go of it when the run ends, however it ends.
const LOCK: &str = ".batch.lock";

/// The folder, locked.
pub(crate) struct Folder {
    path: PathBuf,
    _lock: File,
}

impl Folder {
    /// Makes the folder if need be and takes hold of it. Fails when another run has it.
    pub(crate) fn open(path: &Path) -> Outcome<Self> {
        let refused = |error: &std::io::Error| Problem::io(Exit::Blocked, "cli-cannot-write", path, error);
        fs::create_dir_all(path).map_err(|error| refused(&error))?;
        let lock = File::create(path.join(LOCK)).map_err(|error| refused(&error))?;
        match lock.try_lock() {
            // A file system that knows no locks has to do without.
            Ok(()) | Err(TryLockError::Error(_)) => Ok(Self { path: path.to_owned(), _lock: lock }),
            Err(TryLockError::WouldBlock) => Err(Problem::new(Exit::Blocked, "cli-batch-busy").file(path)),
        }
    }

    /// The notes of the runs before; `None` when there is a file but it cannot be used.
    pub(crate) fn notes(&self) -> Option<Notes> {
        match fs::read(self.path.join(notes::FILE)) {
            Ok(bytes) => Notes::read(&bytes),
            Err(error) if error.kind() == std::io::ErrorKind::NotFound => Some(Notes::default()),
            Err(_) => None,
        }
    }

    pub(crate) fn keep(&self, notes: &Notes) -> Outcome<()> {
        files::write(&self.path.join(notes::FILE), pretty(notes).as_bytes())
    }

    /// Readies the folders of these files, and clears away what a run that was cut off left half written.
    pub(crate) fn ready<'f>(&self, planned: impl Iterator<Item = &'f str>) -> Outcome<()> {
        let mut seen = std::collections::BTreeSet::from([self.path.clone()]);
        seen.extend(planned.filter_map(|file| self.path.join(file).parent().map(Path::to_owned)));
        for folder in seen {
            let refused =
                |error: std::io::Error| Problem::io(Exit::Blocked, "cli-cannot-write", &folder, &error);
            fs::create_dir_all(&folder).map_err(refused)?;
            for entry in fs::read_dir(&folder).map_err(refused)? {
                let entry = entry.map_err(refused)?;
                if files::is_half_written(&entry.file_name()) {
                    // One that cannot be removed is in nobody's way.
                    let _ = fs::remove_file(entry.path());
                }
            }
        }
        Ok(())
    }

    /// Whether the file is there, byte for byte as noted.
    pub(super) fn holds(&self, file: &str, note: &Note) -> bool {
        fs::read(self.path.join(file))
            .is_ok_and(|bytes| bytes.len() == note.bytes && files::sha256(&bytes) == note.sha256)
    }

    pub(super) fn write(&self, file: &str, bytes: &[u8]) -> Outcome<()> {
        files::write(&self.path.join(file), bytes)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_run_at_a_time() {
        let at = tempfile::tempdir().unwrap();
        let path = at.path().join("new/sheets");
        let first = Folder::open(&path).unwrap();
        assert_eq!(Folder::open(&path).err().unwrap().key, "cli-batch-busy");
        drop(first);
        Folder::open(&path).unwrap();
    }

    #[test]
    fn what_was_left_half_written_goes_and_nothing_else() {
        let at = tempfile::tempdir().unwrap();
        let folder = Folder::open(at.path()).unwrap();
        fs::create_dir(at.path().join("q")).unwrap();
        for file in
            ["q/.a.pdf.123.part", "q/a.pdf", "q/.hidden", "q/b.part", ".batch.json.7.part", "mine.txt"]
        {
            fs::write(at.path().join(file), "x").unwrap();
        }
        folder.ready(["q/a.pdf"].into_iter()).unwrap();
        let left = files::below(at.path()).unwrap();
        assert_eq!(left, [LOCK, "mine.txt", "q/.hidden", "q/a.pdf", "q/b.part"]);
    }

    #[test]
    fn a_file_that_was_changed_is_not_the_one_that_was_made() {
        let at = tempfile::tempdir().unwrap();
        let folder = Folder::open(at.path()).unwrap();
        folder.write("a.pdf", b"made").unwrap();
        let note = Note { inputs: String::new(), sha256: files::sha256(b"made"), bytes: 4 };
        assert!(folder.holds("a.pdf", &note));
        folder.write("a.pdf", b"mady").unwrap();
        assert!(!folder.holds("a.pdf", &note));
        assert!(!folder.holds("b.pdf", &note));
    }
}
