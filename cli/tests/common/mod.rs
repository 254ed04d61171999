//! What the tests of the command line share: runs inside the test's own process, a folder to work in, and
//! a small built app.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing, reason = "tests")]
#![allow(dead_code, reason = "every test file uses a part")]

use std::ffi::OsString;
use std::fs;
use std::path::{Path, PathBuf};

use chrono::NaiveDate;
use lidleaf::{Exit, World};
use serde_json::{Value, json};
use sha2::{Digest, Sha256};
use tempfile::TempDir;

/// How a run ended and what it wrote.
pub(crate) struct Ran {
    pub(crate) exit: Exit,
    pub(crate) out: String,
    pub(crate) err: String,
}

impl Ran {
    /// The output, read as JSON.
    pub(crate) fn json(&self) -> Value {
        serde_json::from_str(&self.out).unwrap_or_else(|error| panic!("{error}: {}", self.out))
    }

    /// The run's end, or everything it said when it ended otherwise.
    pub(crate) fn expect(self, exit: Exit) -> Self {
        assert_eq!(self.exit, exit, "\n{}{}", self.out, self.err);
        self
    }
}

/// Runs the command line on a fixed day.
pub(crate) fn lidleaf<S: Into<OsString>>(words: impl IntoIterator<Item = S>) -> Ran {
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let today = NaiveDate::from_ymd_opt(2027, 3, 1).unwrap();
    let mut world = World { out: &mut out, err: &mut err, today };
    let exit = lidleaf::run(words.into_iter().map(Into::into), &mut world);
    Ran { exit, out: String::from_utf8(out).unwrap(), err: String::from_utf8(err).unwrap() }
}

/// A folder of one's own with the demo program in it.
pub(crate) struct Bench {
    folder: TempDir,
}

impl Bench {
    pub(crate) fn new() -> Self {
        let folder = tempfile::tempdir().unwrap();
        fs::write(folder.path().join("demo.json"), guide_data::demo_json()).unwrap();
        Self { folder }
    }

    /// A path in the folder, as an argument.
    pub(crate) fn at(&self, name: &str) -> String {
        self.path(name).to_str().unwrap().to_owned()
    }

    pub(crate) fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    pub(crate) fn write(&self, name: &str, bytes: impl AsRef<[u8]>) -> String {
        fs::create_dir_all(self.path(name).parent().unwrap()).unwrap();
        fs::write(self.path(name), bytes).unwrap();
        self.at(name)
    }

    /// The demo program with something changed in its payload.
    pub(crate) fn changed(&self, name: &str, change: impl FnOnce(&mut Value)) -> String {
        let mut file: Value = serde_json::from_str(guide_data::demo_json()).unwrap();
        change(&mut file["payload"]);
        self.write(name, file.to_string())
    }

    /// A built app of a few files, with its list.
    pub(crate) fn app(&self) -> String {
        let files = [
            (
                "index.html",
                "<!doctype html><title>Lidleaf</title><p class=\"starting\" aria-hidden=\"true\"></p><noscript></noscript>",
            ),
            ("coordinator.html", "<!doctype html><title>Coordinator</title>"),
            ("manifest.webmanifest", r#"{"name":"Lidleaf","start_url":"./"}"#),
            ("sw.js", "// the service worker"),
            ("pkg/resident.js", "export default 1;"),
            ("pkg/resident_bg.wasm", "\0asm"),
            ("desk.css", "main {}"),
            ("coordinator-start.js", "import \"./pkg/coordinator.js\";"),
            ("pkg/coordinator.js", "export default 2;"),
            ("pkg/print_worker_bg.wasm", "\0asm print"),
            ("fonts/NotoSans-Regular.ttf", "font"),
            ("fonts/NotoSansArabic-Regular.ttf", "font"),
            ("locales/en/resident.ftl", "a = b"),
        ];
        let mut listed = Vec::new();
        for (path, text) in files {
            self.write(&format!("app/{path}"), text);
            listed.push(json!({ "path": path, "bytes": text.len(), "sha256": sha256(text.as_bytes()) }));
        }
        let list = json!({ "format": "lidleaf-app-files", "version": 1, "files": listed });
        self.write("app/app-files.json", list.to_string());
        self.at("app")
    }
}

pub(crate) fn sha256(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}

/// Every file below a folder with its bytes, by its path in the folder.
pub(crate) fn tree(folder: &Path) -> std::collections::BTreeMap<String, Vec<u8>> {
    let mut found = std::collections::BTreeMap::new();
    let mut open = vec![folder.to_owned()];
    while let Some(at) = open.pop() {
        for entry in fs::read_dir(&at).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                open.push(path);
            } else {
                let name = path.strip_prefix(folder).unwrap().to_str().unwrap().replace('\\', "/");
                found.insert(name, fs::read(&path).unwrap());
            }
        }
    }
    found
}
