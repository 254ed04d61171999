//! What the tests need besides cargo: a browser, and programs that judge the sheets from outside.

use std::path::{Path, PathBuf};
use std::process::Command;

use crate::apt;
use crate::place::Place;
use crate::problem::{Outcome, Problem};
use crate::process;
use crate::say;

/// A program, or a file where it begins with `/`, the Debian package that brings it, and its use.
struct Tool {
    needs: &'static str,
    package: &'static str,
    why: &'static str,
}

const TOOLS: &[Tool] = &[
    Tool { needs: "chromium", package: "chromium", why: "browser tests" },
    Tool { needs: "chromedriver", package: "chromium-driver", why: "steers the browser" },
    Tool { needs: "qpdf", package: "qpdf", why: "judges the PDFs' structure" },
    Tool { needs: "pdffonts", package: "poppler-utils", why: "judges fonts, boxes and text of the PDFs" },
    Tool { needs: "mutool", package: "mupdf-tools", why: "a second reader of the PDFs" },
    Tool { needs: "gs", package: "ghostscript", why: "measures the PDFs' ink" },
    Tool { needs: "zbarimg", package: "zbar-tools", why: "reads the printed QR codes" },
    Tool { needs: "hb-shape", package: "libharfbuzz-bin", why: "the reference for shaped text" },
    Tool {
        needs: "/usr/share/unicode/BidiCharacterTest.txt",
        package: "unicode-data",
        why: "Unicode's own tests",
    },
    Tool { needs: "python3", package: "python3", why: "runs what reads the PDFs' structure" },
    Tool { needs: "npm", package: "npm", why: "installs axe-core, which judges accessibility" },
];

/// A package that npm installs in a folder of its own.
struct Npm {
    folder: &'static str,
    package: &'static str,
    /// What is used of it.
    file: &'static str,
    why: &'static str,
}

/// The browser tests read its path from `LIDLEAF_AXE`.
const AXE: Npm = Npm {
    folder: "xtask/npm",
    package: "axe-core",
    file: "axe.min.js",
    why: "axe-core judges the screens' accessibility",
};

/// The benchmarks read its path from `LIDLEAF_LIGHTHOUSE`; tests do without, for it is large.
const LIGHTHOUSE: Npm = Npm {
    folder: "xtask/lighthouse",
    package: "lighthouse",
    file: "cli/index.js",
    why: "Lighthouse scores the resident's pages",
};

/// Installs what is missing, or names it with the command that does.
pub(crate) fn ensure(place: &Place) -> Outcome<()> {
    let missing: Vec<&Tool> = TOOLS.iter().filter(|tool| !is_there(tool.needs)).collect();
    if !missing.is_empty() {
        let packages: Vec<&str> = missing.iter().map(|tool| tool.package).collect();
        if !apt::can_install() {
            return Err(not_installable(&missing, &packages));
        }
        apt::ensure(&packages, "judges the tests call on")?;
        if let Some(tool) = missing.iter().find(|tool| !is_there(tool.needs)) {
            return Err(Problem::new(format!(
                "the package {} is installed, but {} is not there",
                tool.package, tool.needs
            ))
            .next(format!("run `apt-get install --reinstall {}`", tool.package)));
        }
    }
    AXE.ensure(place)?;
    ensure_python(place)
}

/// What pip installs, below `xtask/python`: the tests read the interpreter's path from `LIDLEAF_PYTHON`.
const REQUIREMENTS: &str = "requirements.txt";
/// The environment's copy of the requirements, written when all of them are installed.
const INSTALLED: &str = "venv/installed.txt";

/// The path of the interpreter that has pikepdf.
pub(crate) fn python(place: &Place) -> PathBuf {
    python_folder(place).join("venv/bin/python3")
}

fn python_folder(place: &Place) -> PathBuf {
    place.root().join("xtask/python")
}

/// Installs exactly what the requirements name, unless that is what is installed already.
fn ensure_python(place: &Place) -> Outcome<()> {
    let folder = python_folder(place);
    let wanted = crate::place::read(&folder.join(REQUIREMENTS))?;
    let stamp = folder.join(INSTALLED);
    if python(place).is_file() && std::fs::read(&stamp).is_ok_and(|installed| installed == wanted) {
        return Ok(());
    }
    say::step("pip install in xtask/python/venv (pikepdf and PDFium judge the PDFs)");
    let mut environment = Command::new("python3");
    environment.args(["-m", "venv", "venv"]).current_dir(&folder);
    if process::output(&mut environment).is_err() {
        // Debian keeps the module that makes environments in a package of its own.
        apt::ensure(&["python3-venv"], "makes a Python environment for what judges the PDFs")?;
        process::output(&mut environment)?;
    }
    let mut pip = Command::new(python(place));
    pip.args([
        "-m",
        "pip",
        "install",
        "--quiet",
        "--disable-pip-version-check",
        "--requirement",
        REQUIREMENTS,
    ])
    .current_dir(&folder);
    process::output(&mut pip)?;
    std::fs::write(&stamp, &wanted)
        .map_err(|error| Problem::new(format!("{} cannot be written: {error}", stamp.display())))
}

/// The path of axe-core's script.
pub(crate) fn axe(place: &Place) -> PathBuf {
    AXE.path(place)
}

fn not_installable(missing: &[&Tool], packages: &[&str]) -> Problem {
    let lines: Vec<String> = missing
        .iter()
        .map(|tool| format!("    {} ({}; Debian's package {})", tool.needs, tool.why, tool.package))
        .collect();
    Problem::new(format!("the tests need what is not installed:\n{}", lines.join("\n"))).next(format!(
        "on Debian, as root, run `{}`; elsewhere install them with the system's package manager",
        apt::command_line(packages)
    ))
}

fn is_there(needs: &str) -> bool {
    if needs.starts_with('/') { Path::new(needs).is_file() } else { process::on_path(needs) }
}

/// Installs Lighthouse: the path of its command.
pub(crate) fn lighthouse(place: &Place) -> Outcome<PathBuf> {
    LIGHTHOUSE.ensure(place)?;
    Ok(LIGHTHOUSE.path(place))
}

impl Npm {
    fn folder(&self, place: &Place) -> PathBuf {
        place.root().join(self.folder)
    }

    fn installed(&self, place: &Place) -> PathBuf {
        self.folder(place).join("node_modules").join(self.package)
    }

    fn path(&self, place: &Place) -> PathBuf {
        self.installed(place).join(self.file)
    }

    /// Installs exactly what the lock file names, unless that is what is installed already.
    fn ensure(&self, place: &Place) -> Outcome<()> {
        if self.path(place).is_file() && self.locked_version(place)? == self.installed_version(place)? {
            return Ok(());
        }
        say::step(&format!("npm ci in {} ({})", self.folder, self.why));
        let mut npm = Command::new("npm");
        npm.args(["ci", "--no-audit", "--no-fund", "--ignore-scripts"]).current_dir(self.folder(place));
        process::output(&mut npm).map(drop)
    }

    fn locked_version(&self, place: &Place) -> Outcome<serde_json::Value> {
        let lock = json(&self.folder(place).join("package-lock.json"))?;
        let at = format!("/packages/node_modules~1{}/version", self.package);
        Ok(lock.pointer(&at).cloned().unwrap_or_default())
    }

    fn installed_version(&self, place: &Place) -> Outcome<serde_json::Value> {
        let package = json(&self.installed(place).join("package.json"))?;
        Ok(package.get("version").cloned().unwrap_or_default())
    }
}

fn json(path: &Path) -> Outcome<serde_json::Value> {
    serde_json::from_slice(&crate::place::read(path)?)
        .map_err(|error| Problem::new(format!("{} is not JSON: {error}", path.display())))
}
