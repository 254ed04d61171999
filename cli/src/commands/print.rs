//! `lidleaf print`.

use std::path::{Path, PathBuf};

use chrono::NaiveDate;
use guide_data::{LanguagePack, Program};
use locales::{Messages, t};
use print::{INK_LIMIT, Output, PRESS_PROFILE, PreflightItem, Press, Severity, SheetKind};
use serde::Serialize;

use crate::args::{OutputAsked, PrintArgs};
use crate::commands::check;
use crate::exit::Exit;
use crate::files::{self, sha256};
use crate::preflight::preflight_words as message;
use crate::problem::{Outcome, Problem};
use crate::publish::{desk_messages, language_pack};
use crate::run::{Report, Voice, pretty};
use crate::sheets::{self, AsMade, SheetProblem, SheetWanted};
use crate::words::Words;

pub(crate) fn print(args: &PrintArgs, today: NaiveDate, voice: &Voice) -> Outcome<Report> {
    let kind = kind(&args.sheet)?;
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
    };
    let sheet = sheets::sheet(&checked.guide, &program, &words, &wanted)
        .map_err(|problem| refused(problem, &checked.guide))?;
    let shop = shop_profile(&args.output)?;
    let output = output(&args.output, shop.as_deref());
    let made = print::bundled_fonts()
        .and_then(|fonts| print::make_fitting(&sheet.job, &sheet.offer, &fonts, output));
    let (pdf, preflight, job, taken) = match made {
        Ok(fitted) => (Some(fitted.artifact.pdf), fitted.artifact.preflight, fitted.job, fitted.taken),
        Err(error) => (None, error.items, sheet.job.clone(), 0),
    };
    let sheet = sheet.as_made(taken);
    let stopped = preflight.iter().any(|item| item.severity == Severity::Error);
    let mut told =
        Told { sheet: &sheet, job: &job, preflight: &preflight, file: None, bytes: None, registered: None };
    if let Some(pdf) = pdf.filter(|_| !stopped) {
        let file = place(args.out.as_deref(), &program.id, &wanted, &tags, output == Output::Web);
        files::write(&file, &pdf)?;
        told.file = Some(file);
        told.bytes = Some(pdf);
        if args.register {
            let mut entry = sheet.printed.clone();
            entry.id = program.free_printed_id(&entry);
            entry.printed = Some(args.printed.unwrap_or(wanted.date));
            entry.copies = args.copies;
            told.registered = Some((args.program.display().to_string(), entry.id.clone()));
            program.note_printed(entry);
            files::write(&args.program, program.to_json().as_bytes())?;
        }
    }
    let exit = if told.file.is_some() { Exit::Done } else { Exit::Errors };
    let text = if voice.json { told.json(voice) } else { told.human(voice, words.first().copied()) };
    Ok(Report { text, exit })
}

/// The print shop's own profile, where one is named.
pub(crate) fn shop_profile(asked: &OutputAsked) -> Outcome<Option<Vec<u8>>> {
    match asked {
        OutputAsked::Press { profile: Some(file), .. } => files::bytes(file).map(Some),
        OutputAsked::Press { profile: None, .. } | OutputAsked::Web => Ok(None),
    }
}

/// The output asked for, with the shop's profile or ours.
pub(crate) fn output<'a>(asked: &OutputAsked, profile: Option<&'a [u8]>) -> Output<'a> {
    match asked {
        OutputAsked::Press { ink_limit, .. } => Output::Press(Press {
            profile: profile.unwrap_or(PRESS_PROFILE),
            ink_limit: ink_limit.unwrap_or(INK_LIMIT),
        }),
        OutputAsked::Web => Output::Web,
    }
}

/// The sheet of a word of the command line.
pub(crate) fn kind(word: &str) -> Outcome<SheetKind> {
    match word {
        "lid" => Some(SheetKind::CartLid),
        "postcard" => Some(SheetKind::PostcardMailer),
        other => SheetKind::from_id(other),
    }
    .ok_or_else(|| Problem::usage("cli-usage-sheet").with("word", word))
}

/// The languages asked for, else the first of the program.
fn languages(program: &Program, asked: &[String]) -> Outcome<Vec<String>> {
    if asked.is_empty() {
        return Ok(program.languages.iter().take(sheets::USUAL_LANGUAGES).cloned().collect());
    }
    if let Some(unknown) = asked.iter().find(|tag| !program.languages.contains(tag)) {
        return Err(unspoken(unknown, program));
    }
    Ok(asked.to_vec())
}

/// A language that the program does not speak.
pub(crate) fn unspoken(tag: &str, program: &Program) -> Problem {
    Problem::new(Exit::NotFound, "cli-unknown-sheet-language")
        .with("language", tag)
        .with("known", program.languages.join(", "))
}

/// Why there is no sheet, as a run's end.
pub(crate) fn refused(problem: SheetProblem, guide: &guide_data::Guide) -> Problem {
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
    }
}

/// The file to write: as named, or named after what it shows.
fn place(
    out: Option<&Path>,
    program: &str,
    wanted: &SheetWanted,
    languages: &[String],
    web: bool,
) -> PathBuf {
    let folder = match out {
        Some(out) if !out.is_dir() => return out.to_owned(),
        Some(out) => out,
        None => Path::new(""),
    };
    folder.join(file_name(program, wanted, languages, web))
}

/// A file's name for a sheet, after what it shows.
pub(crate) fn file_name(program: &str, wanted: &SheetWanted, languages: &[String], web: bool) -> String {
    let mut parts = vec![program, wanted.sheet.id()];
    parts.extend(wanted.stream.as_deref());
    parts.extend(wanted.zone.as_deref());
    parts.extend(languages.iter().map(String::as_str));
    parts.extend(web.then_some("web"));
    format!("{}.pdf", safe(&parts.join("-")))
}

/// Ids may hold anything until they are checked; a file's name may not.
pub(crate) fn safe(id: &str) -> String {
    id.chars().map(|c| if c.is_alphanumeric() || c == '-' { c } else { '_' }).collect()
}

/// What came of it.
struct Told<'a> {
    sheet: &'a AsMade,
    job: &'a print::SheetJob,
    preflight: &'a [PreflightItem],
    file: Option<PathBuf>,
    bytes: Option<Vec<u8>>,
    /// The program file whose register has it now, and its id there.
    registered: Option<(String, String)>,
}

#[derive(Serialize)]
struct Json<'a> {
    format: &'static str,
    version: u32,
    file: Option<String>,
    bytes: Option<usize>,
    sha256: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    registered: Option<&'a str>,
    preflight: Vec<Item<'a>>,
    shortened: Vec<Shortened<'a>>,
    left_out: &'a [String],
    hazards_in_brief: bool,
    job: &'a print::SheetJob,
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

impl Told<'_> {
    fn json(&self, voice: &Voice) -> String {
        pretty(&Json {
            format: "lidleaf-sheet",
            version: 1,
            file: self.file.as_ref().map(|file| file.display().to_string()),
            bytes: self.bytes.as_ref().map(Vec::len),
            sha256: self.bytes.as_deref().map(sha256),
            registered: self.registered.as_ref().map(|(_, id)| id.as_str()),
            preflight: self
                .preflight
                .iter()
                .map(|item| Item { item, words: message(item, &voice.messages) })
                .collect(),
            shortened: self
                .sheet
                .shortened
                .iter()
                .map(|(item, fidelity)| Shortened { item, fidelity: *fidelity })
                .collect(),
            left_out: &self.sheet.left_out,
            hazards_in_brief: self.sheet.hazards_in_brief,
            job: self.job,
        })
    }

    fn human(&self, voice: &Voice, words: Option<Words<'_>>) -> String {
        let messages = &voice.messages;
        let mut lines = Vec::new();
        for item in self.preflight.iter().filter(|item| item.severity != Severity::Pass) {
            let severity = match item.severity {
                Severity::Error => t!(messages, "cli-severity-error"),
                _ => t!(messages, "cli-severity-warning"),
            };
            lines.push(t!(messages, "cli-finding", severity = severity, message = message(item, messages)));
        }
        // Those that preflight has not told of already.
        let told = |fidelity: f64| fidelity < guide_data::FAITHFUL;
        for (item, fidelity) in self.sheet.shortened.iter().filter(|(_, fidelity)| !told(*fidelity)) {
            let name = words.map_or_else(|| item.clone(), |words| words.item(item));
            // Rounded down: "100%" would deny what the line is here to say.
            let share = messages.percent((fidelity * 100.0).floor() / 100.0, 0);
            lines.push(t!(messages, "cli-sheet-shortened", item = name, percent = share));
        }
        if !self.sheet.left_out.is_empty() {
            let names: Vec<String> = self
                .sheet
                .left_out
                .iter()
                .map(|item| words.map_or_else(|| item.clone(), |words| words.item(item)))
                .collect();
            lines.push(t!(messages, "cli-sheet-left-out", items = messages.list_and(&names)));
        }
        if self.sheet.hazards_in_brief {
            lines.push(t!(messages, "cli-sheet-hazards-in-brief"));
        }
        let count = |severity| self.preflight.iter().filter(|item| item.severity == severity).count();
        let (errors, warnings) = (count(Severity::Error), count(Severity::Warning));
        lines.push(match (errors, warnings) {
            (0, 0) => t!(messages, "cli-preflight-pass"),
            (0, _) => t!(messages, "cli-preflight-warnings", count = warnings),
            _ => t!(messages, "cli-preflight-errors", count = errors),
        });
        if let Some(file) = &self.file {
            lines.push(t!(messages, "cli-written", file = file.display().to_string()));
        }
        if let Some((file, id)) = &self.registered {
            lines.push(t!(messages, "cli-registered", file = file, id = id));
        }
        lines.join("\n") + "\n"
    }
}
