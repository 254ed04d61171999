//! What the tests share: the jobs, the fonts, and running outside tools.
#![allow(dead_code, reason = "every test file takes what it needs")]

use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::OnceLock;

use print::{Artifact, FONT_FILES, FontSet, PRESS_PROFILE, PrintError, SheetJob, SheetKind, make};

/// The jobs in `tests/jobs`, by name.
pub(crate) const JOBS: [&str; 24] = [
    "lid-en",
    "lid-en-es",
    "lid-en-es-ar",
    "lid-ar",
    "lid-hi",
    "lid-ko",
    "lid-ru",
    "lid-vi",
    "lid-zh",
    "lid-en-zh-ar-hi",
    "lid-a5-es",
    "lid-8x12-en-es",
    "mailer-en-es-ar",
    "mailer-es",
    "mailer-ar-en",
    "mailer-ko-vi-ru",
    "flat-en-es",
    "self-mailer-en-es",
    "self-mailer-thirds-ar-en",
    "handout-en",
    "handout-en-es-ar",
    "sign-en-es-ar",
    "sticker-en-es-ar",
    "sticker-hazard-en",
];

pub(crate) fn here() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

pub(crate) fn job(name: &str) -> SheetJob {
    let path = here().join("tests/jobs").join(format!("{name}.json"));
    let bytes = std::fs::read(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    serde_json::from_slice(&bytes).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

/// All bundled fonts, read from their files.
pub(crate) fn fonts() -> FontSet {
    let mut set = FontSet::new();
    for file in FONT_FILES {
        let bytes = std::fs::read(here().join("fonts").join(file.file)).expect("a bundled font");
        set.add(file.family, file.weight, bytes).expect("a whole font");
    }
    set
}

pub(crate) fn print_job(job: &SheetJob) -> Result<Artifact, PrintError> {
    make(job, &fonts(), PRESS_PROFILE)
}

/// A job's sheet, made once for all tests of a file.
pub(crate) fn artifact(name: &str) -> &'static Artifact {
    static MADE: [OnceLock<Artifact>; JOBS.len()] = [const { OnceLock::new() }; JOBS.len()];
    let index = JOBS.iter().position(|job| *job == name).expect("one of the jobs");
    MADE[index].get_or_init(|| print_job(&job(name)).unwrap_or_else(|error| panic!("{name}: {error}")))
}

/// A folder of its own for a test's files.
pub(crate) fn folder(test: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(test);
    std::fs::create_dir_all(&folder).expect("a folder for the test's files");
    folder
}

/// Writes a sheet's file where outside tools find it.
pub(crate) fn pdf_file(test: &str, name: &str) -> PathBuf {
    let path = folder(test).join(format!("{name}.pdf"));
    std::fs::write(&path, &artifact(name).pdf).expect("the file is written");
    path
}

/// Runs an outside tool; a missing one fails with the command that installs it.
pub(crate) fn run(tool: &str, package: &str, arguments: &[&str]) -> Vec<u8> {
    let output = match Command::new(tool).args(arguments).output() {
        Ok(output) => output,
        Err(error) => panic!(
            "this test needs `{tool}` ({error}); install it with `apt-get update && apt-get install -y \
             --no-install-recommends {package}`"
        ),
    };
    assert!(
        output.status.success(),
        "`{tool} {}` failed: {}{}",
        arguments.join(" "),
        String::from_utf8_lossy(&output.stdout),
        String::from_utf8_lossy(&output.stderr)
    );
    output.stdout
}

pub(crate) fn run_text(tool: &str, package: &str, arguments: &[&str]) -> String {
    String::from_utf8(run(tool, package, arguments)).expect("the tool writes UTF-8")
}

pub(crate) fn text(path: &Path) -> &str {
    path.to_str().expect("a path in UTF-8")
}

/// Every printable string of a job in one language's block, with whitespace taken out.
pub(crate) fn sources(job: &SheetJob, lang: &str) -> Vec<String> {
    let block = job.languages.iter().find(|block| block.lang == lang).expect("the language");
    if job.sheet == SheetKind::RoundSticker {
        // Its one message says it all.
        return vec![block.sections[0].lines[0].text.clone()];
    }
    let mut all = vec![block.title.clone(), block.scan.clone()];
    all.extend(block.footer.clone());
    for section in &block.sections {
        all.push(section.heading.clone());
        all.extend(section.lines.iter().map(|line| line.text.clone()));
    }
    all
}
