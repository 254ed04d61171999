//! `lidleaf print`.

use std::path::{Path, PathBuf};

use chrono::NaiveDate;
use guide_data::{LanguagePack, Program};
use locales::{Messages, t};
use print::{
    FontSet, INK_LIMIT, Output, PRESS_PROFILE, PreflightItem, Prepared, Press, Severity, SheetJob, SheetKind,
};
use serde::Serialize;

use crate::args::{OutputAsked, PrintArgs};
use crate::commands::{check, messages_for};
use crate::exit::Exit;
use crate::files::{self, sha256};
use crate::preflight::preflight_words as message;
use crate::problem::{Outcome, Problem};
use crate::publish::{desk_messages, language_pack};
use crate::run::{Report, Voice, pretty};
use crate::sheets::{self, AsMade, SheetProblem, SheetWanted};
use crate::ticket::{self, TicketFile};
use locales::Words;

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
    let profile = shop_profile(&args.output)?;
    let shop = Shop::open(output(&args.output, profile.as_deref()));
    let mut made = Vec::new();
    for run in runs {
        made.push(make_one(args, &shop, (&checked.guide, &program), run, &wanted)?);
    }
    let (ticket, refused) = match &shop {
        Ok(shop) if !args.without_ticket && made.iter().all(|one| one.pdf.is_some()) => {
            let names: Vec<String> = made.iter().map(Made::name).collect();
            let files: Vec<TicketFile<'_>> = made
                .iter()
                .zip(&names)
                .map(|(one, name)| TicketFile { job: &one.job, name, pages: one.pages, copies: one.copies })
                .collect();
            match job_ticket(shop, &files, &program, words.first().copied(), &messages_for(&program, voice)) {
                Ok(ticket) => (ticket, Vec::new()),
                Err(error) => (None, error.items),
            }
        }
        _ => (None, Vec::new()),
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

/// What sheets are made with, read once.
pub(crate) struct Shop<'a> {
    pub(crate) fonts: FontSet,
    pub(crate) output: Prepared<'a>,
    /// The press, for its ticket; none for the web.
    press: Option<Press<'a>>,
}

impl<'a> Shop<'a> {
    /// Reads the fonts and the press's profile. Fails on a profile or a limit of ink that no press has.
    pub(crate) fn open(output: Output<'a>) -> Result<Self, print::PrintError> {
        let press = match output {
            Output::Press(press) => Some(press),
            Output::Web => None,
        };
        Ok(Self { fonts: print::bundled_fonts()?, output: Prepared::new(output)?, press })
    }
}

/// A sheet, not yet written.
struct Made {
    sheet: AsMade,
    job: SheetJob,
    file: PathBuf,
    pdf: Option<Vec<u8>>,
    pages: usize,
    copies: u32,
    preflight: Vec<PreflightItem>,
}

impl Made {
    fn name(&self) -> String {
        self.file.file_name().map_or_else(String::new, |name| name.to_string_lossy().into_owned())
    }
}

fn make_one(
    args: &PrintArgs,
    shop: &Result<Shop<'_>, print::PrintError>,
    (guide, program): (&guide_data::Guide, &Program),
    words: &[Words<'_>],
    wanted: &SheetWanted,
) -> Outcome<Made> {
    let sheet = sheets::sheet(guide, program, words, wanted).map_err(|problem| refused(problem, guide))?;
    let tags: Vec<String> = words.iter().map(|words| words.pack.language.clone()).collect();
    let made = match shop {
        Ok(shop) => print::make_with(&sheet.job, &sheet.offer, &shop.fonts, &shop.output),
        Err(error) => Err(error.clone()),
    };
    let (pdf, pages, preflight, job, taken) = match made {
        Ok(fitted) => {
            let artifact = fitted.artifact;
            let pages = artifact.display_list.pages.len();
            (Some(artifact.pdf), pages, artifact.preflight, fitted.job, fitted.taken)
        }
        Err(error) => (None, 0, error.items, sheet.job.clone(), 0),
    };
    let stopped = preflight.iter().any(|item| item.severity == Severity::Error);
    let file = place(args, &program.id, wanted, &tags);
    let copies = args.copies.of(&tags);
    let sheet = sheet.as_made(taken);
    Ok(Made { sheet, job, file, pdf: pdf.filter(|_| !stopped), pages, copies, preflight })
}

/// The job ticket of all files together; none for the web, where there is no shop to tell.
pub(crate) fn job_ticket(
    shop: &Shop<'_>,
    files: &[TicketFile<'_>],
    program: &Program,
    words: Option<Words<'_>>,
    messages: &Messages,
) -> Result<Option<Vec<u8>>, print::PrintError> {
    let Some(press) = shop.press else { return Ok(None) };
    let contact = words.as_ref().and_then(|words| words.text("contact.name")).unwrap_or_default();
    let Some(ticket) = ticket::ticket(files, program, contact, press.ink_limit, messages) else {
        return Ok(None);
    };
    print::make_ticket(&ticket, &shop.fonts, press.profile).map(|made| Some(made.pdf))
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

/// The ticket lies beside the first sheet.
fn ticket_place(sheet: &Path) -> PathBuf {
    let name = sheet.file_stem().map_or_else(String::new, |name| name.to_string_lossy().into_owned());
    sheet.with_file_name(format!("{name}-ticket.pdf"))
}

/// The sheet of a word of the command line.
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
    folder.join(file_name(program, wanted, languages, args.output == OutputAsked::Web))
}

/// A file's name for a sheet, after what it shows.
pub(crate) fn file_name(program: &str, wanted: &SheetWanted, languages: &[String], web: bool) -> String {
    let mut parts = vec![program, wanted.sheet.id()];
    parts.extend(wanted.stream.as_deref());
    parts.extend(wanted.zone.as_deref());
    parts.extend(wanted.choices.item.as_deref());
    parts.extend(languages.iter().map(String::as_str));
    parts.extend(web.then_some("web"));
    format!("{}.pdf", safe(&parts.join("-")))
}

/// Ids may hold anything until they are checked; a file's name may not.
pub(crate) fn safe(id: &str) -> String {
    id.chars().map(|c| if c.is_alphanumeric() || c == '-' { c } else { '_' }).collect()
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
    left_out: &'a [String],
    hazards_in_brief: bool,
    refused_in_brief: bool,
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
            left_out: &one.sheet.left_out,
            hazards_in_brief: one.sheet.hazards_in_brief,
            refused_in_brief: one.sheet.refused_in_brief,
            job: &one.job,
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
        // Each language's file of its own may say more or less: what is told of one is told once.
        let mut tell = |line: String| {
            if !said.contains(&line) {
                said.push(line.clone());
                lines.push(line);
            }
        };
        let name = |item: &String| words.map_or_else(|| item.clone(), |words| words.item(item));
        for one in &self.files {
            // Those that preflight has not told of already.
            let told = |fidelity: f64| fidelity < guide_data::FAITHFUL;
            for (item, fidelity) in one.sheet.shortened.iter().filter(|(_, fidelity)| !told(*fidelity)) {
                // Rounded down: "100%" would deny what the line is here to say.
                let share = messages.percent((fidelity * 100.0).floor() / 100.0, 0);
                tell(t!(messages, "cli-sheet-shortened", item = name(item), percent = share));
            }
            if !one.sheet.left_out.is_empty() {
                let names: Vec<String> = one.sheet.left_out.iter().map(name).collect();
                tell(t!(messages, "cli-sheet-left-out", items = messages.list_and(&names)));
            }
            if one.sheet.hazards_in_brief {
                tell(t!(messages, "cli-sheet-hazards-in-brief"));
            }
            if one.sheet.refused_in_brief {
                tell(t!(messages, "cli-sheet-refused-in-brief"));
            }
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
