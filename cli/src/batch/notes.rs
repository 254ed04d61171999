//! What is kept about the files that were made, so that the next run need not make them again.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

/// The name of the file with the notes.
pub(super) const FILE: &str = "batch.json";

const FORMAT: &str = "lidleaf-batch";
const VERSION: u32 = 1;

/// What is known of a finished file.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Note {
    /// A digest of everything it was made from.
    pub(crate) inputs: String,
    /// The file's own digest.
    pub(crate) sha256: String,
    /// Its size.
    pub(crate) bytes: usize,
}

/// The notes of a folder, by the file's path in it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Notes {
    format: String,
    version: u32,
    files: BTreeMap<String, Note>,
}

impl Default for Notes {
    fn default() -> Self {
        Self { format: FORMAT.to_owned(), version: VERSION, files: BTreeMap::new() }
    }
}

impl Notes {
    /// Reads notes; none when they are not what this version writes. Nothing is lost then but time.
    pub(super) fn read(bytes: &[u8]) -> Option<Self> {
        let notes: Self = serde_json::from_slice(bytes).ok()?;
        (notes.format == FORMAT && notes.version == VERSION).then_some(notes)
    }

    pub(crate) fn get(&self, file: &str) -> Option<&Note> {
        self.files.get(file)
    }

    pub(crate) fn put(&mut self, file: &str, note: Note) {
        self.files.insert(file.to_owned(), note);
    }

    pub(crate) fn len(&self) -> usize {
        self.files.len()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_what_this_version_wrote_is_believed() {
        let mut notes = Notes::default();
        notes.put("a/b.pdf", Note { inputs: "1".to_owned(), sha256: "2".to_owned(), bytes: 3 });
        let text = crate::run::pretty(&notes);
        assert_eq!(Notes::read(text.as_bytes()), Some(notes));
        for (from, to) in [
            ("lidleaf-batch", "lidleaf-program"),
            ("\"version\": 1", "\"version\": 2"),
            ("\"bytes\": 3", "\"bytes\": -3"),
            ("\"sha256\"", "\"md5\""),
        ] {
            assert!(text.contains(from), "{from}");
            assert_eq!(Notes::read(text.replace(from, to).as_bytes()), None, "{to}");
        }
        assert_eq!(Notes::read(&text.as_bytes()[..text.len() / 2]), None);
        assert_eq!(Notes::read(b""), None);
    }
}
