//! What `cargo xtask test` builds or installs before it runs these tests, and where it says so.

use std::path::{Path, PathBuf};

use crate::fail::{OrFail, fail};

/// The repository's root.
///
/// # Panics
/// When this package is not in a folder of it.
#[must_use]
pub fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).parent().or_fail("the folder above this package").to_owned()
}

/// The published demo site, app and guide.
///
/// # Panics
/// When it has not been built.
#[must_use]
pub fn site() -> PathBuf {
    let site = from_environment("LIDLEAF_SITE").unwrap_or_else(|| root().join("dist/site"));
    there(site.join("index.html"), "the built site");
    site
}

/// The command line's program.
///
/// # Panics
/// When it has not been built.
#[must_use]
pub fn lidleaf() -> PathBuf {
    let name = format!("release/lidleaf{}", std::env::consts::EXE_SUFFIX);
    let program = from_environment("LIDLEAF_BIN").unwrap_or_else(|| root().join("target").join(name));
    there(program.clone(), "the command line, lidleaf");
    program
}

/// axe-core's script.
///
/// # Panics
/// When it has not been installed.
#[must_use]
pub fn axe() -> PathBuf {
    let script = from_environment("LIDLEAF_AXE")
        .unwrap_or_else(|| root().join("xtask/npm/node_modules/axe-core/axe.min.js"));
    there(script.clone(), "axe-core");
    script
}

/// The Python interpreter that has pikepdf and PDFium.
///
/// # Panics
/// When it has not been installed.
#[must_use]
pub fn python() -> PathBuf {
    let program =
        from_environment("LIDLEAF_PYTHON").unwrap_or_else(|| root().join("xtask/python/venv/bin/python3"));
    there(program.clone(), "the Python environment with pikepdf");
    program
}

/// Where the README's pictures go, when this run is to make them: `LIDLEAF_SCREENSHOTS=1`.
#[must_use]
pub fn screenshots() -> Option<PathBuf> {
    let wanted = std::env::var_os("LIDLEAF_SCREENSHOTS").is_some_and(|value| value == "1");
    wanted.then(|| root().join("docs/screenshots"))
}

fn from_environment(name: &str) -> Option<PathBuf> {
    std::env::var_os(name).map(PathBuf::from)
}

#[track_caller]
fn there(file: PathBuf, what: &str) {
    if !file.is_file() {
        fail(&format!(
            "{what} is missing: there is no {}. `cargo xtask test --only whole` builds it and runs this test",
            file.display()
        ));
    }
}
