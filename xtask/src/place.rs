//! Where things are: the repository and the folders that builds write to.

use std::env;
use std::ffi::OsString;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::problem::{Outcome, Problem};

/// The folders these tasks read and write.
#[derive(Clone, Debug)]
pub(crate) struct Place {
    root: PathBuf,
}

impl Place {
    /// The repository this task was compiled in.
    pub(crate) fn find() -> Outcome<Self> {
        let here = Path::new(env!("CARGO_MANIFEST_DIR"));
        match here.parent() {
            Some(root) => Ok(Self { root: root.to_owned() }),
            None => Err(Problem::new(format!("{} has no folder above it", here.display()))),
        }
    }

    pub(crate) fn root(&self) -> &Path {
        &self.root
    }

    /// Host builds: shared with plain `cargo` so that nothing is compiled twice.
    pub(crate) fn target(&self) -> PathBuf {
        match env::var_os("CARGO_TARGET_DIR") {
            Some(folder) => self.root.join(folder),
            None => self.root.join("target"),
        }
    }

    /// WebAssembly builds have a folder of their own: with two compilers in one, each build would throw
    /// the other's work away.
    pub(crate) fn wasm_target(&self) -> PathBuf {
        self.root.join("target").join("wasm-build")
    }

    /// The built app, the same for every program.
    pub(crate) fn app(&self) -> PathBuf {
        self.root.join("dist").join("app")
    }

    /// The finished site: the app with the demo program's guide.
    pub(crate) fn site(&self) -> PathBuf {
        self.root.join("dist").join("site")
    }

    /// Cargo for the host, as the one who typed `cargo xtask` has it.
    pub(crate) fn cargo(&self) -> Command {
        let program = env::var_os("CARGO").unwrap_or_else(|| OsString::from("cargo"));
        let mut command = Command::new(program);
        command.current_dir(&self.root);
        command
    }
}

/// Every file below a folder, as paths relative to it with `/` between the parts, sorted.
pub(crate) fn files_below(folder: &Path) -> Outcome<Vec<String>> {
    let mut found = Vec::new();
    walk(folder, "", &mut found)?;
    found.sort();
    Ok(found)
}

fn walk(folder: &Path, prefix: &str, found: &mut Vec<String>) -> Outcome<()> {
    let entries = fs::read_dir(folder).map_err(|error| Problem::file("read", folder, &error))?;
    for entry in entries {
        let entry = entry.map_err(|error| Problem::file("read", folder, &error))?;
        let path = entry.path();
        let name = entry.file_name().into_string().map_err(|name| {
            Problem::new(format!("{} in {} is not UTF-8", name.display(), folder.display()))
        })?;
        if path.is_dir() {
            walk(&path, &format!("{prefix}{name}/"), found)?;
        } else {
            found.push(format!("{prefix}{name}"));
        }
    }
    Ok(())
}

/// Reads a file, or says which one could not be read.
pub(crate) fn read(path: &Path) -> Outcome<Vec<u8>> {
    fs::read(path).map_err(|error| Problem::file("read", path, &error))
}

/// Writes a file and the folders above it. A file that already has these bytes keeps its date.
pub(crate) fn write(path: &Path, bytes: &[u8]) -> Outcome<()> {
    if fs::read(path).is_ok_and(|old| old == bytes) {
        return Ok(());
    }
    if let Some(folder) = path.parent() {
        fs::create_dir_all(folder).map_err(|error| Problem::file("create", folder, &error))?;
    }
    fs::write(path, bytes).map_err(|error| Problem::file("write", path, &error))
}
