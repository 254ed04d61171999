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
use print::{Output, PreflightItem, Severity};
use serde::Serialize;
use sha2::{Digest, Sha256};

use crate::commands::{Shop, job_ticket, messages_for, refused};
use crate::exit::Exit;
use crate::files;
use crate::preflight::preflight_words;
use crate::problem::{Outcome, Problem};
use crate::run::Voice;
use crate::sheets::{self, Sheet};
use crate::ticket::TicketFile;

pub(crate) use crew::at_once;
pub(crate) use folder::Folder;
pub(crate) use notes::Note;
pub(crate) use plan::{Planned, Program, Wanted, plan};

/// What every sheet is made with: read once.
pub(crate) struct Press<'a> {
    shop: Shop<'a>,
    /// A digest of the program that makes the sheets, with its fonts and its drawings, and of the output asked for.
    maker: String,
    /// For job tickets.
    voice: &'a Voice,
}

impl<'a> Press<'a> {
    pub(crate) fn open(output: Output<'a>, voice: &'a Voice) -> Outcome<Self> {
        let shop = Shop::open(output).map_err(|error| {
            let messages = &voice.messages;
            let detail = error.items.first().map(|item| preflight_words(item, messages)).unwrap_or_default();
            Problem::new(Exit::Unreadable, "cli-batch-no-shop").with("detail", detail)
        })?;
        Ok(Self { shop, maker: maker() + &wanted(output), voice })
    }

    /// The digest of everything that a file depends on.
    fn digest(&self, made_from: &impl Serialize) -> String {
        let mut hash = Sha256::new();
        hash.update(self.maker.as_bytes());
        // It holds only texts and numbers, which can always be written.
        hash.update(serde_json::to_vec(made_from).unwrap_or_default());
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
    press: &Press<'_>,
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
    if let Some(of) = &planned.ticket_of {
        return ticket(press, program, planned, of, &sheet, (folder, noted));
    }
    let inputs = press.digest(&(&sheet.job, &sheet.offer));
    if kept(&planned.file, &inputs, folder, noted) {
        return Became::Kept;
    }
    match print::make_with(&sheet.job, &sheet.offer, &press.shop.fonts, &press.shop.output) {
        Ok(fitted) => {
            let warned = |item: &&PreflightItem| item.severity == Severity::Warning;
            let warnings = fitted.artifact.preflight.iter().filter(warned).count();
            write(folder, &planned.file, inputs, &fitted.artifact.pdf, warnings)
        }
        Err(error) => Became::Failed(Failure::Preflight(error.items)),
    }
}

fn kept(file: &str, inputs: &str, folder: &Folder, noted: Option<&Note>) -> bool {
    noted.is_some_and(|note| note.inputs == inputs && folder.holds(file, note))
}

fn write(folder: &Folder, file: &str, inputs: String, pdf: &[u8], warnings: usize) -> Became {
    match folder.write(file, pdf) {
        Ok(()) => {
            let note = Note { inputs, sha256: files::sha256(pdf), bytes: pdf.len() };
            Became::Made { note, warnings }
        }
        Err(problem) => Became::Failed(Failure::Problem(problem)),
    }
}

/// Makes a sheet's job ticket, or finds it made. The sheet is laid out for it: the ticket tells its pages.
fn ticket(
    press: &Press<'_>,
    program: &Program,
    planned: &Planned,
    of: &str,
    sheet: &Sheet,
    (folder, noted): (&Folder, Option<&Note>),
) -> Became {
    let words = match program.words(&planned.languages) {
        Ok(words) => words.first().copied(),
        Err(problem) => return Became::Failed(Failure::Problem(problem)),
    };
    let messages = messages_for(&program.program, press.voice);
    let contact = words.as_ref().and_then(|words| words.text("contact.name"));
    let inputs = press.digest(&(
        "ticket",
        of,
        planned.copies,
        messages.lang().tag(),
        contact,
        sheets::region(&program.program, messages.lang()),
        &sheet.job,
        &sheet.offer,
    ));
    if kept(&planned.file, &inputs, folder, noted) {
        return Became::Kept;
    }
    let made = print::make_with(&sheet.job, &sheet.offer, &press.shop.fonts, &press.shop.output).and_then(
        |fitted| {
            let pages = fitted.artifact.display_list.pages.len();
            let file = TicketFile { job: &fitted.job, name: of, pages, copies: planned.copies };
            job_ticket(&press.shop, &[file], &program.program, words, &messages)
        },
    );
    match made {
        Ok(Some(pdf)) => write(folder, &planned.file, inputs, &pdf, 0),
        Ok(None) => Became::Failed(Failure::Crashed),
        Err(error) => Became::Failed(Failure::Preflight(error.items)),
    }
}

/// Reads and checks one program, with the words of each of its languages.
pub(crate) fn prepare(path: &Path, catalog: &Catalog) -> Outcome<Program> {
    Program::read(path, catalog)
}
