//! Many sheets in one go: every program, sheet, stream and set of languages asked for, on all cores.
//!
//! A sheet is made from what `print` is handed and nothing else. A note of that, and of the file it became, is
//! kept in the folder ([`notes`]), so that a second run makes only what has changed or is not there. Whatever
//! happens to one sheet, the others are made.

mod crew;
mod folder;
mod notes;
mod plan;

use std::path::Path;

use guide_data::Catalog;
use locales::Messages;
use print::{FontSet, Offer, Output, PreflightItem, Prepared, Severity, SheetJob};
use sha2::{Digest, Sha256};

use crate::commands::refused;
use crate::exit::Exit;
use crate::files;
use crate::preflight::preflight_words;
use crate::problem::{Outcome, Problem};
use crate::sheets;

pub(crate) use crew::at_once;
pub(crate) use folder::Folder;
pub(crate) use notes::Note;
pub(crate) use plan::{Planned, Program, Wanted, plan};

/// What every sheet is made with: read once.
pub(crate) struct Shop<'a> {
    fonts: FontSet,
    output: Prepared<'a>,
    /// A digest of the program that makes the sheets, with its fonts and its drawings, and of the output asked for.
    maker: String,
}

impl<'a> Shop<'a> {
    pub(crate) fn open(output: Output<'a>, messages: &Messages) -> Outcome<Self> {
        let refused = |error: print::PrintError| {
            let detail = error.items.first().map(|item| preflight_words(item, messages)).unwrap_or_default();
            Problem::new(Exit::Unreadable, "cli-batch-no-shop").with("detail", detail)
        };
        let fonts = print::bundled_fonts().map_err(refused)?;
        let prepared = Prepared::new(output).map_err(refused)?;
        Ok(Self { fonts, output: prepared, maker: maker() + &wanted(output) })
    }

    /// The digest of everything that a sheet depends on.
    fn digest(&self, job: &SheetJob, offer: &Offer) -> String {
        let mut hash = Sha256::new();
        hash.update(self.maker.as_bytes());
        // They hold only texts and numbers, which can always be written.
        hash.update(serde_json::to_vec(&(job, offer)).unwrap_or_default());
        files::hexadecimal(&hash.finalize())
    }
}

/// A digest of this program's own file: a newer one may draw the same job otherwise. Where it cannot be read,
/// the version has to do.
fn maker() -> String {
    let own = std::env::current_exe().and_then(std::fs::read);
    own.map_or_else(|_| env!("CARGO_PKG_VERSION").to_owned(), |bytes| files::sha256(&bytes))
}

/// What distinguishes one output from every other.
fn wanted(output: Output<'_>) -> String {
    match output {
        Output::Press(press) => format!(" press {} {}", files::sha256(press.profile), press.ink_limit),
        Output::Web => " web".to_owned(),
    }
}

/// What became of a sheet.
#[derive(Debug)]
pub(crate) enum Became {
    /// A new file, with the number of warnings that the preflight has about it.
    Made { note: Note, warnings: usize },
    /// The file that was there is the one that would have been made.
    Kept,
    /// No file; the one that was there before, if any, is as it was.
    Failed(Failure),
}

/// Why there is no file.
#[derive(Debug)]
pub(crate) enum Failure {
    Problem(Problem),
    /// What a print shop would reject.
    Preflight(Vec<PreflightItem>),
    /// A slip of ours: the reason went to the error stream as it happened.
    Crashed,
}

/// Makes one sheet, or finds it made.
pub(crate) fn make(
    shop: &Shop<'_>,
    program: &Program,
    planned: &Planned,
    folder: &Folder,
    noted: Option<&Note>,
) -> Became {
    let sheet = program.words(&planned.languages).and_then(|words| {
        sheets::sheet(&program.checked.guide, &program.program, &words, &planned.wanted)
            .map_err(|problem| refused(problem, &program.checked.guide))
    });
    let sheet = match sheet {
        Ok(sheet) => sheet,
        Err(problem) => return Became::Failed(Failure::Problem(problem)),
    };
    let inputs = shop.digest(&sheet.job, &sheet.offer);
    if noted.is_some_and(|note| note.inputs == inputs && folder.holds(&planned.file, note)) {
        return Became::Kept;
    }
    let artifact = match print::make_with(&sheet.job, &sheet.offer, &shop.fonts, &shop.output) {
        Ok(fitted) => fitted.artifact,
        Err(error) => return Became::Failed(Failure::Preflight(error.items)),
    };
    let warnings = artifact.preflight.iter().filter(|item| item.severity == Severity::Warning).count();
    match folder.write(&planned.file, &artifact.pdf) {
        Ok(()) => Became::Made {
            note: Note { inputs, sha256: files::sha256(&artifact.pdf), bytes: artifact.pdf.len() },
            warnings,
        },
        Err(problem) => Became::Failed(Failure::Problem(problem)),
    }
}

/// Reads and checks one program, with the words of each of its languages.
pub(crate) fn prepare(path: &Path, catalog: &Catalog) -> Outcome<Program> {
    Program::read(path, catalog)
}
