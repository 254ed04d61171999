//! Sheets of the demo program made by the command line, and the programs that judge them.

use std::collections::BTreeMap;
use std::ffi::OsStr;
use std::num::NonZeroUsize;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{Arc, Mutex, OnceLock, PoisonError};

use serde_json::Value;

use crate::demo;
use crate::fail::{OrFail, fail};
use crate::need;
use crate::sheets::Asked;

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

/// A file that `lidleaf print` made, and what it told of it.
#[derive(Debug)]
struct Made {
    pdf: Vec<u8>,
    told: Value,
    read: OnceLock<Value>,
}

/// A sheet of the demo program, as `lidleaf print` made it, in a folder of its own.
#[derive(Debug)]
pub struct Sheet {
    folder: tempfile::TempDir,
    file: PathBuf,
    made: Arc<Made>,
}

/// A day of the demo's edition.
const DAY: &str = "2026-12-01";

/// The sheets that this process has made or is making, by what the command line was told.
static MADE: Mutex<BTreeMap<Vec<String>, Place>> = Mutex::new(BTreeMap::new());

/// Where a sheet is once it is made; whoever comes while it is being made waits.
type Place = Arc<OnceLock<Arc<Made>>>;

/// A sheet's file, as of a day of the demo's edition. It is made once in a process, whoever asks.
///
/// # Panics
/// When the command line refuses.
#[must_use]
pub fn sheet(asked: &Asked<'_>) -> Sheet {
    let words = asked.words(DAY);
    let place = {
        let mut all = MADE.lock().unwrap_or_else(PoisonError::into_inner);
        Arc::clone(all.entry(words.clone()).or_default())
    };
    Sheet::of(Arc::clone(place.get_or_init(|| Arc::new(make(&words)))))
}

/// A sheet's file as of a day, made anew.
///
/// # Panics
/// When the command line refuses.
#[must_use]
pub fn sheet_of(asked: &Asked<'_>, day: &str) -> Sheet {
    Sheet::of(Arc::new(make(&asked.words(day))))
}

/// A sheet's file that was made a second time, to be compared with the first.
///
/// # Panics
/// When the command line refuses.
#[must_use]
pub fn sheet_again(asked: &Asked<'_>) -> Sheet {
    sheet_of(asked, DAY)
}

fn make(words: &[String]) -> Made {
    let folder = tempfile::tempdir().or_fail("making a folder for a sheet");
    let program = folder.path().join("program.json");
    std::fs::write(&program, demo::demo().to_json()).or_fail("writing the demo program");
    let file = folder.path().join("sheet.pdf");
    let mut command = Command::new(need::lidleaf());
    command.arg("print").arg(&program).args(words).args(["--json", "--lang", "en", "--out"]).arg(&file);
    let output = command.output().or_fail("running `lidleaf print`");
    let said = String::from_utf8_lossy(&output.stdout);
    if !output.status.success() {
        let words = words.join(" ");
        let complaint = String::from_utf8_lossy(&output.stderr);
        fail(&format!("`lidleaf print {words}` refused: {}{complaint}", complaints(&said)));
    }
    let told = serde_json::from_str(&said).or_fail("reading what `lidleaf print` told");
    let pdf = std::fs::read(&file).or_fail("reading the sheet");
    Made { pdf, told, read: OnceLock::new() }
}

/// The errors in what `lidleaf print --json` told, else all of it.
fn complaints(said: &str) -> String {
    let told: Value = serde_json::from_str(said).unwrap_or_default();
    let found = told.get("preflight").and_then(Value::as_array).into_iter().flatten();
    let errors = found.filter(|item| item.get("severity").and_then(Value::as_str) == Some("error"));
    let words: Vec<&str> = errors.filter_map(|item| item.get("words")?.as_str()).collect();
    if words.is_empty() { said.to_owned() } else { words.join(" ") }
}

impl Sheet {
    fn of(made: Arc<Made>) -> Self {
        let folder = tempfile::tempdir().or_fail("making a folder for a sheet");
        let file = folder.path().join("sheet.pdf");
        std::fs::write(&file, &made.pdf).or_fail("writing a sheet for its judges");
        Self { folder, file, made }
    }

    /// The PDF.
    #[must_use]
    pub fn file(&self) -> &Path {
        &self.file
    }

    /// Its bytes.
    #[must_use]
    pub fn bytes(&self) -> &[u8] {
        &self.made.pdf
    }

    /// A place for what a judge makes of it.
    #[must_use]
    pub fn beside(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    /// The words that were to be printed: the job, as `lidleaf print --json` tells it.
    #[must_use]
    pub fn job(&self) -> &Value {
        self.made.told.get("job").unwrap_or(&Value::Null)
    }

    /// What pikepdf and PDFium read in it: see `xtask/python/read_pdf.py`.
    ///
    /// # Panics
    /// When they are not installed, or cannot read it.
    #[must_use]
    pub fn read(&self) -> &Value {
        self.made.read.get_or_init(|| {
            let script = need::root().join("xtask/python/read_pdf.py");
            let output = Command::new(need::python()).arg(script).arg(&self.file).output();
            let output = output.or_fail("running read_pdf.py");
            if !output.status.success() {
                fail(&format!("read_pdf.py is not content: {}", String::from_utf8_lossy(&output.stderr)));
            }
            serde_json::from_slice(&output.stdout).or_fail("reading what read_pdf.py told")
        })
    }

    /// What preflight found, as code and severity.
    #[must_use]
    pub fn preflight(&self) -> Vec<(String, String)> {
        let text =
            |item: &Value, key: &str| item.get(key).and_then(Value::as_str).unwrap_or_default().to_owned();
        let list = self.made.told.get("preflight").and_then(Value::as_array).cloned().unwrap_or_default();
        list.iter().map(|item| (text(item, "code"), text(item, "severity"))).collect()
    }

    /// What it says in each language, in the order in which it is read.
    ///
    /// # Panics
    /// When the job is not one.
    #[must_use]
    pub fn said(&self) -> Vec<Said> {
        let blocks = self.job().get("languages").and_then(Value::as_array);
        blocks.or_fail("the job's languages").iter().map(|block| Said::of(block, self.job())).collect()
    }
}

/// What a sheet says in one language.
#[derive(Debug, Clone)]
pub struct Said {
    /// The language's tag.
    pub lang: String,
    /// Every text: title, headings and lines, what the code is for, the foot. A round label has its one message only.
    pub texts: Vec<String>,
    /// The title.
    pub title: String,
    /// What the code is for.
    pub scan: String,
    /// The sections' headings.
    pub headings: Vec<String>,
}

impl Said {
    /// Whether a side may say a text once more: an address side and a cover say the title and what the code is for, and a
    /// section that runs on to the other side has its heading there, too.
    #[must_use]
    pub fn says_again(&self, text: &str) -> bool {
        self.title == text || self.scan == text || self.headings.iter().any(|heading| heading == text)
    }

    fn of(block: &Value, job: &Value) -> Self {
        let is = |key: &str, what: &str| job.get(key).and_then(Value::as_str) == Some(what);
        let own = |value: &Value| value.as_str().or_fail("a text of the job").to_owned();
        let text = |key: &str| own(block.get(key).or_fail(key));
        let list = |value: &Value, key: &str| -> Vec<Value> {
            value.get(key).and_then(Value::as_array).cloned().unwrap_or_default()
        };
        let (title, scan) = (text("title"), text("scan"));
        let mut texts = vec![title.clone()];
        let mut headings = Vec::new();
        let mut sections = list(block, "sections");
        if is("fold", "thirds") {
            // The hazards are on the outer side.
            sections.sort_by_key(|section| section.get("tone").and_then(Value::as_str) != Some("caution"));
        }
        for section in sections {
            let heading = own(section.get("heading").or_fail("a section's heading"));
            headings.push(heading.clone());
            texts.push(heading);
            texts.extend(list(&section, "lines").iter().map(|line| own(line.get("text").or_fail("a line"))));
        }
        texts.push(scan.clone());
        texts.extend(list(block, "footer").iter().map(own));
        if is("sheet", "round-sticker") {
            // Its one message is the line below the one heading.
            texts = texts.into_iter().skip(2).take(1).collect();
            headings.clear();
        }
        Self { lang: text("lang"), texts, title, scan, headings }
    }
}

/// Puts a question to sheets, as many at once as there are cores, and tells of every sheet that does not answer it as it
/// should, not of the first alone.
///
/// # Panics
/// When the question panics on a sheet.
pub fn judge<'a>(asked: &[Asked<'a>], question: impl Fn(&Asked<'a>, &Sheet) + Sync) {
    let next = AtomicUsize::new(0);
    let failed = Mutex::new(BTreeMap::new());
    let hands = std::thread::available_parallelism().map_or(1, NonZeroUsize::get);
    std::thread::scope(|scope| {
        for _ in 0..hands {
            scope.spawn(|| {
                loop {
                    let at = next.fetch_add(1, Ordering::Relaxed);
                    let Some(one) = asked.get(at) else { return };
                    // Nothing that questions share is left half changed by one that panics.
                    let answer = catch_unwind(AssertUnwindSafe(|| question(one, &sheet(one))));
                    if let Err(why) = answer {
                        let why = why.downcast::<String>().map_or_else(
                            |other| {
                                other.downcast::<&str>().map_or_else(|_| String::new(), |it| (*it).to_owned())
                            },
                            |text| *text,
                        );
                        failed
                            .lock()
                            .unwrap_or_else(PoisonError::into_inner)
                            .insert(at, format!("{one}: {why}"));
                    }
                }
            });
        }
    });
    let failed = failed.into_inner().unwrap_or_else(PoisonError::into_inner);
    if asked.is_empty() {
        fail("there was no sheet to judge");
    }
    if !failed.is_empty() {
        let all: Vec<&str> = failed.values().map(String::as_str).collect();
        fail(&format!("{} of {} sheets:\n{}", all.len(), asked.len(), all.join("\n")));
    }
}
