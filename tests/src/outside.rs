//! Sheets of the demo program made by the command line, and the programs that judge them.

use std::ffi::OsStr;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use serde_json::Value;

use crate::demo;
use crate::fail::{OrFail, fail};
use crate::need;

/// A program that judges from outside, and the Debian package that brings it.
#[derive(Debug, Clone, Copy)]
pub struct Tool {
    program: &'static str,
    package: &'static str,
}

impl Tool {
    /// Checks a PDF's structure.
    pub const QPDF: Self = Self { program: "qpdf", package: "qpdf" };
    /// Lists a PDF's fonts.
    pub const PDFFONTS: Self = Self { program: "pdffonts", package: "poppler-utils" };
    /// Tells a PDF's boxes.
    pub const PDFINFO: Self = Self { program: "pdfinfo", package: "poppler-utils" };
    /// Extracts a PDF's text.
    pub const PDFTOTEXT: Self = Self { program: "pdftotext", package: "poppler-utils" };
    /// Draws a PDF's pages.
    pub const PDFTOPPM: Self = Self { program: "pdftoppm", package: "poppler-utils" };
    /// A second, unrelated reader of PDFs.
    pub const MUTOOL: Self = Self { program: "mutool", package: "mupdf-tools" };
    /// Measures ink.
    pub const GHOSTSCRIPT: Self = Self { program: "gs", package: "ghostscript" };
    /// Reads QR codes.
    pub const ZBARIMG: Self = Self { program: "zbarimg", package: "zbar-tools" };

    /// Runs it and takes what it wrote, whether or not it was content.
    ///
    /// # Panics
    /// When it is not installed.
    pub fn output(self, arguments: &[&dyn AsRef<OsStr>]) -> Output {
        let mut command = Command::new(self.program);
        command.args(arguments.iter().map(|argument| argument.as_ref()));
        match command.output() {
            Ok(output) => output,
            Err(error) => fail(&format!(
                "{} could not be started ({error}); Debian's package is {}, and \
                 `cargo xtask test --only tools` installs it",
                self.program, self.package
            )),
        }
    }

    /// Runs it and takes its standard output as text.
    ///
    /// # Panics
    /// When it is not installed or is not content.
    pub fn text(self, arguments: &[&dyn AsRef<OsStr>]) -> String {
        let output = self.output(arguments);
        let said = String::from_utf8_lossy(&output.stdout).into_owned();
        if !output.status.success() {
            let complaint = String::from_utf8_lossy(&output.stderr);
            fail(&format!("{} is not content: {said}{complaint}", self.program));
        }
        said
    }
}

/// A sheet of the demo program, as `lidleaf print` made it.
#[derive(Debug)]
pub struct Sheet {
    folder: tempfile::TempDir,
    file: PathBuf,
    told: Value,
}

/// Makes the press file of a sheet ("lid" or "postcard") in languages, as of a day of the demo's edition.
///
/// # Panics
/// When the command line refuses.
#[must_use]
pub fn sheet(kind: &str, languages: &[&str]) -> Sheet {
    sheet_of(kind, languages, "2026-12-01", "press")
}

/// Makes the file of a sheet that goes on the web.
///
/// # Panics
/// When the command line refuses.
#[must_use]
pub fn web_sheet(kind: &str, languages: &[&str]) -> Sheet {
    sheet_of(kind, languages, "2026-12-01", "web")
}

/// Makes a sheet's file for a use ("press" or "web") as of a day.
///
/// # Panics
/// When the command line refuses.
#[must_use]
pub fn sheet_of(kind: &str, languages: &[&str], day: &str, output: &str) -> Sheet {
    let folder = tempfile::tempdir().or_fail("making a folder for a sheet");
    let program = folder.path().join("program.json");
    std::fs::write(&program, demo::demo().to_json()).or_fail("writing the demo program");
    let file = folder.path().join(format!("{kind}-{}.pdf", languages.join("-")));
    let mut command = Command::new(need::lidleaf());
    command.arg("print").arg(&program).args(["--sheet", kind, "--languages", &languages.join(",")]);
    command.args(["--for", output, "--date", day, "--json", "--lang", "en", "--out"]).arg(&file);
    let output = command.output().or_fail("running `lidleaf print`");
    let said = String::from_utf8_lossy(&output.stdout);
    if !output.status.success() {
        fail(&format!("`lidleaf print` refused: {said}{}", String::from_utf8_lossy(&output.stderr)));
    }
    let told = serde_json::from_str(&said).or_fail("reading what `lidleaf print` told");
    Sheet { folder, file, told }
}

impl Sheet {
    /// The PDF.
    #[must_use]
    pub fn file(&self) -> &Path {
        &self.file
    }

    /// A place for what a judge makes of it.
    #[must_use]
    pub fn beside(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    /// The words that were to be printed: the job, as `lidleaf print --json` tells it.
    #[must_use]
    pub fn job(&self) -> &Value {
        self.told.get("job").unwrap_or(&Value::Null)
    }

    /// What pikepdf and PDFium read in it: see `xtask/python/read_pdf.py`.
    ///
    /// # Panics
    /// When they are not installed, or cannot read it.
    #[must_use]
    pub fn read(&self) -> Value {
        let script = need::root().join("xtask/python/read_pdf.py");
        let output = Command::new(need::python()).arg(script).arg(&self.file).output();
        let output = output.or_fail("running read_pdf.py");
        if !output.status.success() {
            fail(&format!("read_pdf.py is not content: {}", String::from_utf8_lossy(&output.stderr)));
        }
        serde_json::from_slice(&output.stdout).or_fail("reading what read_pdf.py told")
    }

    /// What preflight found, as code and severity.
    #[must_use]
    pub fn preflight(&self) -> Vec<(String, String)> {
        let text =
            |item: &Value, key: &str| item.get(key).and_then(Value::as_str).unwrap_or_default().to_owned();
        let list = self.told.get("preflight").and_then(Value::as_array).cloned().unwrap_or_default();
        list.iter().map(|item| (text(item, "code"), text(item, "severity"))).collect()
    }
}
