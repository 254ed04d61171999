//! `lidleaf batch`.

use std::collections::BTreeMap;
use std::num::NonZeroUsize;
use std::sync::atomic::{AtomicBool, Ordering};

use locales::{Messages, t};
use print::Severity;
use serde::Serialize;

use super::{output, shop_profile};
use crate::args::{BatchArgs, OutputAsked};
use crate::batch::{self, Became, Failure, Folder, Planned, Press, Program, Wanted, at_once};
use crate::exit::Exit;
use crate::files;
use crate::interrupt;
use crate::preflight::preflight_words as message;
use crate::problem::{Outcome, Problem};
use crate::run::{Report, Voice, World, pretty, say};

/// Notes are written after so many files, and after every sixteenth of those noted: often enough that little is
/// made twice after a power cut, seldom enough that writing them stays a small part of the work.
const NOTED_AT_LEAST: usize = 8;
const NOTED_SHARE: usize = 16;

pub(crate) fn batch(args: &BatchArgs, voice: &Voice, world: &mut World<'_>) -> Outcome<Report> {
    run(args, voice, world, interrupt::watch())
}

fn run(args: &BatchArgs, voice: &Voice, world: &mut World<'_>, stop: &AtomicBool) -> Outcome<Report> {
    let wanted = Wanted {
        sheets: Wanted::sheets(&args.sheets)?,
        streams: args.streams.clone(),
        zone: args.zone.clone(),
        languages: if args.languages.is_empty() { Wanted::usual_languages() } else { args.languages.clone() },
        date: args.date.unwrap_or(world.today),
        web: args.output == OutputAsked::Web,
        choices: args.choices.clone(),
        alone: args.alone,
        // Who reads on a screen is no print shop.
        tickets: args.tickets && args.output != OutputAsked::Web,
        copies: args.copies.clone(),
    };
    let cores = || std::thread::available_parallelism().unwrap_or(NonZeroUsize::MIN);
    let hands = args.hands.unwrap_or_else(cores);
    let catalog = files::catalog(args.catalog.as_deref())?;
    let folder = Folder::open(&args.out)?;
    let profile = shop_profile(&args.output)?;
    let shop = Press::open(output(&args.output, profile.as_deref()), voice)?;
    let mut told = Told { folder: args.out.display().to_string(), ..Told::default() };

    let mut read: Vec<Option<Program>> = args.programs.iter().map(|_| None).collect();
    at_once(
        &args.programs,
        hands,
        stop,
        |path| batch::prepare(path, &catalog),
        |at, result| {
            let failure = match result {
                Some(Ok(program)) => {
                    if let Some(place) = read.get_mut(at) {
                        *place = Some(program);
                    }
                    return;
                }
                Some(Err(problem)) => Failure::Problem(problem),
                None => Failure::Crashed,
            };
            let path = args.programs.get(at).map(|path| path.display().to_string()).unwrap_or_default();
            told.failed.push((Order { program: at, sheet: None }, path, failure));
        },
    );
    refuse_the_same_twice(&mut read, &mut told);

    let planned: Vec<Planned> = read
        .iter()
        .enumerate()
        .filter_map(|(at, program)| Some(batch::plan(at, &program.as_ref()?.program, &wanted)))
        .flatten()
        .collect();
    folder.ready(planned.iter().map(|one| one.file.as_str()))?;
    let before = folder.notes();
    told.notes_lost = before.is_none();
    let before = before.unwrap_or_default();
    let mut notes = before.clone();
    let mut unnoted = 0;
    let mut finished = 0;
    let mut unwritten: Option<Problem> = None;
    at_once(
        &planned,
        hands,
        stop,
        |one| {
            let noted = if args.again { None } else { before.get(&one.file) };
            let program = read.get(one.program).and_then(Option::as_ref);
            program.map(|program| batch::make(&shop, program, one, &folder, noted))
        },
        |at, result| {
            finished += 1;
            let Some(one) = planned.get(at) else { return };
            let became = result.flatten().unwrap_or(Became::Failed(Failure::Crashed));
            let progress = Progress { done: finished, of: planned.len(), file: &one.file };
            // Progress that nobody reads is no reason to stop.
            let _ = say(world.err, &progress.line(&became, &voice.messages));
            match became {
                Became::Made { note, warnings } => {
                    notes.put(&one.file, note);
                    unnoted += 1;
                    told.made.push((at, one.file.clone(), warnings));
                }
                Became::Kept => told.kept.push((at, one.file.clone())),
                Became::Failed(failure) => {
                    let order = Order { program: one.program, sheet: Some(at) };
                    told.failed.push((order, one.file.clone(), failure));
                }
            }
            if unnoted >= NOTED_AT_LEAST.max(notes.len() / NOTED_SHARE) && unwritten.is_none() {
                unwritten = folder.keep(&notes).err();
                unnoted = 0;
            }
        },
    );
    if unnoted > 0 && unwritten.is_none() {
        unwritten = folder.keep(&notes).err();
    }
    told.left = planned.len() - finished;
    told.stopped = stop.load(Ordering::Relaxed);
    told.sort();
    told.finish(unwritten, voice, read.iter().flatten().count())
}

/// Two programs with one id would write over each other's sheets: neither is printed.
fn refuse_the_same_twice(read: &mut [Option<Program>], told: &mut Told) {
    let mut by_id: BTreeMap<String, Vec<usize>> = BTreeMap::new();
    for (at, program) in read.iter().enumerate() {
        if let Some(program) = program {
            by_id.entry(super::safe(&program.program.id)).or_default().push(at);
        }
    }
    for (id, places) in by_id.into_iter().filter(|(_, places)| places.len() > 1) {
        let name = |at: &usize| {
            let program = read.get(*at).and_then(Option::as_ref);
            program.map(|program| program.path.display().to_string()).unwrap_or_default()
        };
        let names: Vec<String> = places.iter().map(name).collect();
        for (at, name) in places.into_iter().zip(&names) {
            let problem = Problem::new(Exit::Errors, "cli-batch-same-id")
                .with("id", id.as_str())
                .with("files", names.join(", "));
            told.failed.push((Order { program: at, sheet: None }, name.clone(), Failure::Problem(problem)));
            if let Some(place) = read.get_mut(at) {
                *place = None;
            }
        }
    }
}

/// A line of progress.
struct Progress<'a> {
    done: usize,
    of: usize,
    file: &'a str,
}

impl Progress<'_> {
    fn line(&self, became: &Became, messages: &Messages) -> String {
        let outcome = match became {
            Became::Made { .. } => t!(messages, "cli-batch-made"),
            Became::Kept => t!(messages, "cli-batch-kept"),
            Became::Failed(_) => t!(messages, "cli-batch-failed"),
        };
        let (done, of, file) = (self.done, self.of, self.file);
        t!(messages, "cli-batch-progress", done = done, of = of, outcome = outcome, file = file) + "\n"
    }
}

/// Where something stands among what was asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Order {
    program: usize,
    /// None for a program that could not be read.
    sheet: Option<usize>,
}

/// What came of it.
#[derive(Default)]
struct Told {
    folder: String,
    made: Vec<(usize, String, usize)>,
    kept: Vec<(usize, String)>,
    failed: Vec<(Order, String, Failure)>,
    /// Sheets that were not begun.
    left: usize,
    stopped: bool,
    /// There were notes of what was made, but they could not be used.
    notes_lost: bool,
}

#[derive(Serialize)]
struct Json<'a> {
    format: &'static str,
    version: u32,
    folder: &'a str,
    made: Vec<JsonMade<'a>>,
    skipped: Vec<&'a str>,
    failed: Vec<JsonFailed<'a>>,
    not_begun: usize,
    stopped: bool,
}

#[derive(Serialize)]
struct JsonMade<'a> {
    file: &'a str,
    warnings: usize,
}

#[derive(Serialize)]
struct JsonFailed<'a> {
    what: &'a str,
    why: Vec<String>,
    next: Option<String>,
}

impl Told {
    /// Results come in as they are finished; they are told in the order asked for.
    fn sort(&mut self) {
        self.made.sort_by_key(|(at, ..)| *at);
        self.kept.sort_by_key(|(at, _)| *at);
        self.failed.sort_by_key(|(order, ..)| *order);
    }

    fn finish(self, unwritten: Option<Problem>, voice: &Voice, programs: usize) -> Outcome<Report> {
        // Without notes the next run makes everything again: worth an end of its own.
        if let Some(problem) = unwritten {
            return Err(problem);
        }
        let exit = match (self.stopped, self.failed.is_empty()) {
            (true, _) => Exit::Stopped,
            (false, true) => Exit::Done,
            (false, false) => Exit::Errors,
        };
        let text = if voice.json { self.json(voice) } else { self.human(voice, programs) };
        Ok(Report { text, exit })
    }

    fn json(&self, voice: &Voice) -> String {
        let failed = |(_, what, failure): &'_ (Order, String, Failure)| {
            let (why, next) = told(failure, &voice.messages);
            (what.clone(), why, next)
        };
        let failures: Vec<_> = self.failed.iter().map(failed).collect();
        pretty(&Json {
            format: "lidleaf-batch-report",
            version: 1,
            folder: &self.folder,
            made: self
                .made
                .iter()
                .map(|(_, file, warnings)| JsonMade { file, warnings: *warnings })
                .collect(),
            skipped: self.kept.iter().map(|(_, file)| file.as_str()).collect(),
            failed: failures
                .iter()
                .map(|(what, why, next)| JsonFailed { what, why: why.clone(), next: next.clone() })
                .collect(),
            not_begun: self.left,
            stopped: self.stopped,
        })
    }

    fn human(&self, voice: &Voice, programs: usize) -> String {
        let messages = &voice.messages;
        let mut lines = Vec::new();
        for (_, what, failure) in &self.failed {
            let (why, next) = told(failure, messages);
            lines.push(t!(messages, "cli-batch-failed-one", what = what));
            lines.extend(why.into_iter().chain(next).map(|line| format!("  {line}")));
        }
        if self.notes_lost {
            lines.push(t!(messages, "cli-batch-notes-lost"));
        }
        let warned = self.made.iter().filter(|(_, _, warnings)| *warnings > 0).count();
        if warned > 0 {
            lines.push(t!(messages, "cli-batch-warned", count = warned));
        }
        let (made, kept, failed) = (self.made.len(), self.kept.len(), self.failed.len());
        lines.push(t!(
            messages,
            "cli-batch-summary",
            folder = &self.folder,
            made = made,
            kept = kept,
            failed = failed,
            programs = programs
        ));
        if self.stopped {
            lines.push(t!(messages, "cli-batch-stopped"));
        }
        lines.join("\n") + "\n"
    }
}

/// Why there is no file, and what to do next where the reason does not say it.
fn told(failure: &Failure, messages: &Messages) -> (Vec<String>, Option<String>) {
    match failure {
        Failure::Problem(problem) => (vec![problem.message(messages)], problem.hint(messages)),
        Failure::Preflight(items) => {
            let errors = items.iter().filter(|item| item.severity == Severity::Error);
            (
                errors.map(|item| message(item, messages)).collect(),
                Some(t!(messages, "cli-batch-next-preflight")),
            )
        }
        Failure::Crashed => {
            (vec![t!(messages, "cli-batch-crashed")], Some(t!(messages, "cli-batch-next-crashed")))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::NaiveDate;

    /// A run that is stopped before it begins makes nothing, leaves nothing half made, and says how to go on.
    #[test]
    fn a_stop_is_an_end_in_good_order() {
        let at = tempfile::tempdir().unwrap();
        let program = at.path().join("demo.json");
        std::fs::write(&program, guide_data::demo_json()).unwrap();
        let args = BatchArgs {
            programs: vec![program],
            catalog: None,
            sheets: "lid".to_owned(),
            streams: Vec::new(),
            zone: None,
            languages: vec!["en".to_owned()],
            out: at.path().join("out"),
            date: None,
            hands: None,
            again: false,
            output: OutputAsked::Press { profile: None, ink_limit: None },
            choices: crate::sheets::SheetChoices::default(),
            alone: false,
            tickets: false,
            copies: crate::args::Copies::default(),
        };
        let voice =
            Voice { messages: locales::bundled(&locales::Lang::default()).isolating(false), json: false };
        let (mut out, mut err) = (Vec::new(), Vec::new());
        let mut world = World { out: &mut out, err: &mut err, today: NaiveDate::default() };
        let stop = AtomicBool::new(true);
        let report = run(&args, &voice, &mut world, &stop).unwrap();
        assert_eq!(report.exit, Exit::Stopped);
        assert_eq!(files::below(&args.out).unwrap(), [".batch.lock"]);

        stop.store(false, Ordering::Relaxed);
        let report = run(&args, &voice, &mut world, &stop).unwrap();
        assert_eq!(report.exit, Exit::Done, "{}", report.text);
        assert!(args.out.join("quillmere/quillmere-cart-lid-en.pdf").is_file());
    }
}
