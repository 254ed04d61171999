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
use print::{FontSet, PreflightItem, PressProfile, Severity, SheetJob};
use sha2::{Digest, Sha256};

use crate::commands::refused;
use crate::exit::Exit;
use crate::files;
use crate::problem::{Outcome, Problem};
use crate::sheets;

pub(crate) use crew::at_once;
pub(crate) use folder::Folder;
pub(crate) use notes::Note;
pub(crate) use plan::{Planned, Program, Wanted, plan};

/// What every sheet is made with: read once.
pub(crate) struct Shop {
    fonts: FontSet,
    profile: PressProfile<'static>,
    /// A digest of the program that makes the sheets, with its fonts, its profile and its drawings.
    maker: String,
}

impl Shop {
    pub(crate) fn open() -> Outcome<Self> {
        let refused = |error: print::PrintError| {
            let detail = error.items.first().map(|item| item.message.clone()).unwrap_or_default();
            Problem::new(Exit::Unreadable, "cli-batch-no-shop").with("detail", detail)
        };
        let fonts = print::bundled_fonts().map_err(refused)?;
        let profile = PressProfile::read(print::PRESS_PROFILE).map_err(refused)?;
        Ok(Self { fonts, profile, maker: maker() })
    }

    /// The digest of everything that a sheet depends on.
    fn digest(&self, job: &SheetJob) -> String {
        let mut hash = Sha256::new();
        hash.update(self.maker.as_bytes());
        // A job holds only texts and numbers: it can always be written.
        hash.update(serde_json::to_vec(job).unwrap_or_default());
        files::hexadecimal(&hash.finalize())
    }
}

/// A digest of this program's own file: a newer one may draw the same job otherwise. Where it cannot be read,
/// the version has to do.
fn maker() -> String {
    let own = std::env::current_exe().and_then(std::fs::read);
    own.map_or_else(|_| env!("CARGO_PKG_VERSION").to_owned(), |bytes| files::sha256(&bytes))
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
    shop: &Shop,
    program: &Program,
    planned: &Planned,
    folder: &Folder,
    noted: Option<&Note>,
) -> Became {
    let sheet = program.words(&planned.languages).and_then(|words| {
        sheets::sheet(&program.checked.guide, &program.program, &words, &planned.wanted)
            .map_err(|problem| refused(problem, &program.checked.guide))
    });
    let job = match sheet {
        Ok(sheet) => sheet.job,
        Err(problem) => return Became::Failed(Failure::Problem(problem)),
    };
    let inputs = shop.digest(&job);
    if noted.is_some_and(|note| note.inputs == inputs && folder.holds(&planned.file, note)) {
        return Became::Kept;
    }
    let artifact = match print::make_with(&job, &shop.fonts, &shop.profile) {
        Ok(artifact) => artifact,
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
