//! `lidleaf print`.

use std::path::{Path, PathBuf};

use chrono::NaiveDate;
use guide_data::{LanguagePack, Program};
use locales::{Messages, t};
use print::{PreflightItem, Severity, SheetKind};
use serde::Serialize;

use crate::args::PrintArgs;
use crate::commands::{check, fill, messages_for};
use crate::exit::Exit;
use crate::files::{self, sha256};
use crate::problem::{Outcome, Problem};
use crate::publish::{desk_messages, language_pack};
use crate::run::{Report, Voice, pretty};
use crate::sheets::{self, Sheet, SheetProblem, SheetWanted};
use crate::ticket::{self, TicketFile};
use crate::words::Words;

pub(crate) fn print(args: &PrintArgs, today: NaiveDate, voice: &Voice) -> Outcome<Report> {
    let kind = sheet_kind(&args.sheet)?;
    let mut program = files::program(&args.program)?;
    let catalog = files::catalog(args.catalog.as_deref())?;
    let checked = guide_data::check(&program, &catalog);
    let tags = languages(&program, &args.languages)?;
    let packs: Vec<LanguagePack> = tags.iter().map(|tag| language_pack(&program, &catalog, tag)).collect();
    if !checked.publishable() {
        let pack = language_pack(&program, &catalog, &voice.messages.lang().tag());
        let words = Words { messages: &voice.messages, pack: &pack };
        let text = if voice.json {
            check::json(&program.id, false, &checked.findings, &voice.messages)
        } else {
            check::human(&checked.findings, words)
        };
        return Ok(Report { text, exit: Exit::Errors });
    }
    let spoken: Vec<Messages> =
        packs.iter().map(|pack| sheets::messages(&program, pack, &desk_messages(&pack.language))).collect();
    let words: Vec<Words<'_>> =
        spoken.iter().zip(&packs).map(|(messages, pack)| Words { messages, pack }).collect();
    let wanted = SheetWanted {
        sheet: kind,
        stream: args.stream.clone(),
        zone: args.zone.clone(),
        date: args.date.unwrap_or(today),
        choices: args.choices.clone(),
    };
    let runs: Vec<&[Words<'_>]> = if args.alone { words.chunks(1).collect() } else { vec![words.as_slice()] };
    let mut made = Vec::new();
    for run in runs {
        made.push(make_one(args, &checked.guide, &program, run, &wanted)?);
    }
    let ticket = job_ticket(args, &made, &program, words.first().copied(), voice);
    let (ticket, refused) = match ticket {
        Ok(ticket) => (ticket, Vec::new()),
        Err(error) => (None, error.items),
    };
    // All or nothing: one language alone in the shop is not what was asked for.
    let stopped = !refused.is_empty() || made.iter().any(|one| one.pdf.is_none());
    let mut told = Told {
        files: made,
        ticket: None,
        refused,
        registered: Vec::new(),
        program: args.program.display().to_string(),
        written: false,
    };
    if !stopped {
        for one in &told.files {
            files::write(&one.file, one.pdf.as_deref().unwrap_or_default())?;
        }
        told.written = true;
        if let (Some(ticket), Some(first)) = (ticket, told.files.first()) {
            let file = ticket_place(&first.file);
            files::write(&file, &ticket)?;
            told.ticket = Some(file);
        }
        if args.register {
            for one in &told.files {
                let mut entry = one.sheet.printed.clone();
                entry.id = program.free_printed_id(&entry);
                entry.printed = Some(args.printed.unwrap_or(wanted.date));
                entry.copies = one.copies;
                told.registered.push(entry.id.clone());
                program.note_printed(entry);
            }
            files::write(&args.program, program.to_json().as_bytes())?;
        }
    }
    let exit = if told.written { Exit::Done } else { Exit::Errors };
    let text = if voice.json { told.json(voice) } else { told.human(voice, words.first().copied()) };
    Ok(Report { text, exit })
}

/// A sheet, not yet written.
struct Made {
    sheet: Sheet,
    file: PathBuf,
    pdf: Option<Vec<u8>>,
    pages: usize,
    copies: u32,
    preflight: Vec<PreflightItem>,
}

fn make_one(
    args: &PrintArgs,
    guide: &guide_data::Guide,
    program: &Program,
    words: &[Words<'_>],
    wanted: &SheetWanted,
) -> Outcome<Made> {
    let sheet = sheets::sheet(guide, program, words, wanted).map_err(|problem| refused(problem, guide))?;
    let tags: Vec<String> = words.iter().map(|words| words.pack.language.clone()).collect();
    let made = print::bundled_fonts().and_then(|fonts| print::make(&sheet.job, &fonts, print::PRESS_PROFILE));
    let (pdf, pages, preflight) = match made {
        Ok(artifact) => (Some(artifact.pdf), artifact.display_list.pages.len(), artifact.preflight),
        Err(error) => (None, 0, error.items),
    };
    let stopped = preflight.iter().any(|item| item.severity == Severity::Error);
    let file = place(args, &program.id, wanted, &tags);
    let copies = args.copies.of(&tags);
    Ok(Made { sheet, file, pdf: pdf.filter(|_| !stopped), pages, copies, preflight })
}

/// The job ticket of all files together.
fn job_ticket(
    args: &PrintArgs,
    made: &[Made],
    program: &Program,
    words: Option<Words<'_>>,
    voice: &Voice,
) -> Result<Option<Vec<u8>>, print::PrintError> {
    if args.without_ticket || made.iter().any(|one| one.pdf.is_none()) {
        return Ok(None);
    }
    let names: Vec<String> = made
        .iter()
        .map(|one| one.file.file_name().map_or_else(String::new, |name| name.to_string_lossy().into_owned()))
        .collect();
    let files: Vec<TicketFile<'_>> = made
        .iter()
        .zip(&names)
        .map(|(one, name)| TicketFile { job: &one.sheet.job, name, pages: one.pages, copies: one.copies })
        .collect();
    let contact = words.as_ref().and_then(|words| words.text("contact.name")).unwrap_or_default();
    let messages = messages_for(program, voice);
    let Some(ticket) = ticket::ticket(&files, program, contact, &messages) else { return Ok(None) };
    let fonts = print::bundled_fonts()?;
    print::make_ticket(&ticket, &fonts, print::PRESS_PROFILE).map(|made| Some(made.pdf))
}

/// The ticket lies beside the first sheet.
fn ticket_place(sheet: &Path) -> PathBuf {
    let name = sheet.file_stem().map_or_else(String::new, |name| name.to_string_lossy().into_owned());
    sheet.with_file_name(format!("{name}-ticket.pdf"))
}

pub(crate) fn sheet_kind(word: &str) -> Outcome<SheetKind> {
    match word {
        "lid" => Some(SheetKind::CartLid),
        "sticker" => Some(SheetKind::RoundSticker),
        "sign" => Some(SheetKind::EnclosureSign),
        "postcard" => Some(SheetKind::PostcardMailer),
        other => SheetKind::from_id(other),
    }
    .ok_or_else(|| Problem::usage("cli-usage-sheet").with("word", word))
}

/// The languages asked for, else the first of the program that a sheet has room for.
fn languages(program: &Program, asked: &[String]) -> Outcome<Vec<String>> {
    if asked.is_empty() {
        return Ok(program.languages.iter().take(sheets::MOST_LANGUAGES).cloned().collect());
    }
    if let Some(unknown) = asked.iter().find(|tag| !program.languages.contains(tag)) {
        return Err(Problem::new(Exit::NotFound, "cli-unknown-sheet-language")
            .with("language", unknown.as_str())
            .with("known", program.languages.join(", ")));
    }
    Ok(asked.to_vec())
}

fn refused(problem: SheetProblem, guide: &guide_data::Guide) -> Problem {
    let ids = |ids: Vec<&str>| ids.join(", ");
    match problem {
        SheetProblem::UnknownStream(stream) => Problem::new(Exit::NotFound, "cli-unknown-stream")
            .with("stream", stream)
            .with("known", ids(guide.streams.iter().map(|stream| stream.id.as_str()).collect())),
        SheetProblem::UnknownZone(zone) => Problem::new(Exit::NotFound, "cli-unknown-zone")
            .with("zone", zone)
            .with("known", ids(guide.zones.iter().map(|zone| zone.id.as_str()).collect())),
        SheetProblem::Languages(count) => {
            Problem::usage("cli-too-many-languages").with("count", count.to_string())
        }
        SheetProblem::UnknownItem(item) => {
            Problem::new(Exit::NotFound, "cli-unknown-sheet-item").with("item", item)
        }
        SheetProblem::NothingAgainst(item) => {
            Problem::new(Exit::NotFound, "cli-nothing-against").with("item", item)
        }
    }
}

/// The file to write: as named, or named after what it shows. Several files are told apart by their language.
fn place(args: &PrintArgs, program: &str, wanted: &SheetWanted, languages: &[String]) -> PathBuf {
    let folder = match args.out.as_deref() {
        Some(out) if !out.is_dir() => {
            if !args.alone {
                return out.to_owned();
            }
            let stem = out.file_stem().map_or_else(String::new, |name| name.to_string_lossy().into_owned());
            return out.with_file_name(format!("{stem}-{}.pdf", languages.join("-")));
        }
        Some(out) => out,
        None => Path::new(""),
    };
    let mut parts = vec![program, wanted.sheet.id()];
    parts.extend(wanted.stream.as_deref());
    parts.extend(wanted.zone.as_deref());
    parts.extend(wanted.choices.item.as_deref());
    parts.extend(languages.iter().map(String::as_str));
    // Ids may hold anything until they are checked; a file's name may not.
    let name: String =
        parts.join("-").chars().map(|c| if c.is_alphanumeric() || c == '-' { c } else { '_' }).collect();
    folder.join(format!("{name}.pdf"))
}

/// What came of it.
struct Told {
    files: Vec<Made>,
    ticket: Option<PathBuf>,
    /// Why there is no ticket, if it could not be made.
    refused: Vec<PreflightItem>,
    /// The sheets' ids in the register of the program file.
    registered: Vec<String>,
    program: String,
    written: bool,
}

#[derive(Serialize)]
struct Json<'a> {
    format: &'static str,
    version: u32,
    file: Option<String>,
    bytes: Option<usize>,
    sha256: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    ticket: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    registered: Option<&'a str>,
    preflight: Vec<Item<'a>>,
    shortened: Vec<Shortened<'a>>,
    job: &'a print::SheetJob,
    /// The other files, where each language has its own.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    more: Vec<Json<'a>>,
}

#[derive(Serialize)]
struct Item<'a> {
    #[serde(flatten)]
    item: &'a PreflightItem,
    words: String,
}

#[derive(Serialize)]
struct Shortened<'a> {
    item: &'a str,
    fidelity: f64,
}

impl Told {
    fn json(&self, voice: &Voice) -> String {
        let mut all = self.files.iter().enumerate().map(|(index, one)| self.json_of(index, one, voice));
        let Some(mut first) = all.next() else { return String::new() };
        first.more = all.collect();
        first.ticket = self.ticket.as_ref().map(|file| file.display().to_string());
        pretty(&first)
    }

    fn json_of<'a>(&'a self, index: usize, one: &'a Made, voice: &Voice) -> Json<'a> {
        let bytes = one.pdf.as_deref().filter(|_| self.written);
        let refused = if index == 0 { self.refused.as_slice() } else { &[] };
        let item = |item: &'a PreflightItem| Item { item, words: message(item, &voice.messages) };
        let short = |(item, fidelity): &'a (String, f64)| Shortened { item, fidelity: *fidelity };
        Json {
            format: "lidleaf-sheet",
            version: 1,
            file: bytes.map(|_| one.file.display().to_string()),
            bytes: bytes.map(<[u8]>::len),
            sha256: bytes.map(sha256),
            ticket: None,
            registered: self.registered.get(index).map(String::as_str),
            preflight: one.preflight.iter().chain(refused).map(item).collect(),
            shortened: one.sheet.shortened.iter().map(short).collect(),
            job: &one.sheet.job,
            more: Vec::new(),
        }
    }

    fn human(&self, voice: &Voice, words: Option<Words<'_>>) -> String {
        let messages = &voice.messages;
        let mut lines = Vec::new();
        let mut said = Vec::new();
        let all: Vec<&PreflightItem> =
            self.files.iter().flat_map(|one| &one.preflight).chain(&self.refused).collect();
        for item in all.iter().filter(|item| item.severity != Severity::Pass) {
            let severity = match item.severity {
                Severity::Error => t!(messages, "cli-severity-error"),
                _ => t!(messages, "cli-severity-warning"),
            };
            let line = t!(messages, "cli-finding", severity = severity, message = message(item, messages));
            // Languages alone share what is wrong with their sheet.
            if !said.contains(&line) {
                said.push(line.clone());
                lines.push(line);
            }
        }
        for (item, fidelity) in self.files.first().map_or(&[][..], |one| &one.sheet.shortened) {
            let name = words.map_or_else(|| item.clone(), |words| words.item(item));
            // Rounded down: "100%" would deny what the line is here to say.
            let share = messages.percent((fidelity * 100.0).floor() / 100.0, 0);
            lines.push(t!(messages, "cli-sheet-shortened", item = name, percent = share));
        }
        let count = |severity| all.iter().filter(|item| item.severity == severity).count();
        let (errors, warnings) = (count(Severity::Error), count(Severity::Warning));
        lines.push(match (errors, warnings) {
            (0, 0) => t!(messages, "cli-preflight-pass"),
            (0, _) => t!(messages, "cli-preflight-warnings", count = warnings),
            _ => t!(messages, "cli-preflight-errors", count = errors),
        });
        if self.written {
            let files = self.files.iter().map(|one| &one.file).chain(&self.ticket);
            lines.extend(files.map(|file| t!(messages, "cli-written", file = file.display().to_string())));
        }
        for id in &self.registered {
            lines.push(t!(messages, "cli-registered", file = self.program.as_str(), id = id.as_str()));
        }
        lines.join("\n") + "\n"
    }
}

/// In the reader's language where there are words for it, else in English as `print` says it.
fn message(item: &PreflightItem, messages: &Messages) -> String {
    fill(messages, &format!("preflight-{}", item.code), &item.args).unwrap_or_else(|| item.message.clone())
}
