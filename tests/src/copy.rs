//! A copy of the published site that a test may spoil.

use std::fs;
use std::path::{Path, PathBuf};

use serde_json::{Value, json};
use sha2::{Digest as _, Sha256};

use crate::fail::{OrFail, fail};
use crate::need;

/// The list of a published folder's files, with their hashes.
const LIST: &str = "files.json";

/// A published folder of a test's own, gone after it.
#[derive(Debug)]
pub struct SiteCopy(tempfile::TempDir);

impl SiteCopy {
    /// A copy of the demo site.
    ///
    /// # Panics
    /// When the site has not been built or cannot be copied.
    #[must_use]
    pub fn new() -> Self {
        let copy = Self(tempfile::tempdir().or_fail("making a folder"));
        let site = need::site();
        for path in copy.listed_in(&site) {
            let to = copy.path(&path);
            fs::create_dir_all(to.parent().unwrap_or(copy.folder())).or_fail("making a folder");
            fs::copy(site.join(&path), to).or_fail("copying the site");
        }
        fs::copy(site.join(LIST), copy.path(LIST)).or_fail("copying the site's list");
        copy
    }

    /// Where it is.
    #[must_use]
    pub fn folder(&self) -> &Path {
        self.0.path()
    }

    fn path(&self, path: &str) -> PathBuf {
        self.folder().join(path)
    }

    /// The files that a folder's list names.
    fn listed_in(&self, folder: &Path) -> Vec<String> {
        let list = read_json(&folder.join(LIST));
        let files = list.get("files").and_then(Value::as_array).or_fail("the list's files");
        files.iter().filter_map(|file| file.get("path")?.as_str().map(str::to_owned)).collect()
    }

    /// Every file that its list names.
    ///
    /// # Panics
    /// When the list cannot be read.
    #[must_use]
    pub fn files(&self) -> Vec<String> {
        self.listed_in(self.folder())
    }

    /// A file's bytes.
    ///
    /// # Panics
    /// When it cannot be read.
    #[must_use]
    pub fn read(&self, path: &str) -> Vec<u8> {
        fs::read(self.path(path)).or_fail(path)
    }

    /// Puts other bytes into a file and leaves the list as it is: a file that is not the one listed.
    ///
    /// # Panics
    /// When it cannot be written.
    pub fn spoil(&self, path: &str, bytes: &[u8]) {
        fs::write(self.path(path), bytes).or_fail(path);
    }

    /// Puts other bytes into a file and into the list: another edition of the site.
    ///
    /// # Panics
    /// When it cannot be written, or the list does not name the file.
    pub fn write(&self, path: &str, bytes: &[u8]) {
        self.spoil(path, bytes);
        self.list(path, bytes);
    }

    /// Lists other bytes for a file than it has: a new list, an old file.
    ///
    /// # Panics
    /// When the list does not name the file.
    pub fn list(&self, path: &str, bytes: &[u8]) {
        let mut list = read_json(&self.path(LIST));
        let digest: String = Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect();
        let files = list.get_mut("files").and_then(Value::as_array_mut).or_fail("the list's files");
        let own = files.iter_mut().find(|file| file.get("path") == Some(&json!(path)));
        let Some(Value::Object(own)) = own else { fail(&format!("the list does not name {path}")) };
        own.insert("bytes".to_owned(), json!(bytes.len()));
        own.insert("sha256".to_owned(), json!(digest));
        if let Value::Object(list) = &mut list {
            list.insert("version".to_owned(), json!(digest));
        }
        fs::write(self.path(LIST), list.to_string()).or_fail("writing the list");
    }
}

impl Default for SiteCopy {
    fn default() -> Self {
        Self::new()
    }
}

fn read_json(file: &Path) -> Value {
    let bytes = fs::read(file).or_fail("reading the site's list");
    serde_json::from_slice(&bytes).or_fail("reading the site's list")
}
