//! From the command's words to what is printed and the exit code.

use std::ffi::OsString;
use std::io::{self, Write};

use chrono::NaiveDate;
use locales::{Lang, Messages, supported, t};
use serde_json::json;

use crate::args::{self, Asked, Command, Name};
use crate::commands;
use crate::exit::Exit;
use crate::problem::{Outcome, Problem};

/// The outside world, handed in so that tests can hold it still.
pub struct World<'w> {
    /// Where results go.
    pub out: &'w mut dyn Write,
    /// Where messages about a failure go.
    pub err: &'w mut dyn Write,
    /// The day it is where the command runs.
    pub today: NaiveDate,
}

/// What a command has to say, and how it ended.
#[derive(Debug)]
pub(crate) struct Report {
    pub(crate) text: String,
    pub(crate) exit: Exit,
}

impl Report {
    pub(crate) fn done(text: String) -> Self {
        Self { text, exit: Exit::Done }
    }
}

/// How a command speaks.
pub(crate) struct Voice {
    pub(crate) messages: Messages,
    pub(crate) json: bool,
}

/// Does what the words after the program's name ask for.
pub fn run(words: impl IntoIterator<Item = OsString>, world: &mut World<'_>) -> Exit {
    let asked = match args::read(words) {
        Ok(asked) => asked,
        Err(problem) => return complain(&problem, &voice(Lang::default(), false), world),
    };
    let lang = match language(&asked) {
        Ok(lang) => lang,
        Err(problem) => return complain(&problem, &voice(Lang::default(), asked.json), world),
    };
    let voice = voice(lang, asked.json);
    match perform(asked.command, &voice, world) {
        Ok(report) => match say(world.out, &report.text) {
            Ok(()) => report.exit,
            Err(_) => Exit::Blocked,
        },
        Err(problem) => complain(&problem, &voice, world),
    }
}

fn perform(command: Command, voice: &Voice, world: &mut World<'_>) -> Outcome<Report> {
    match command {
        Command::Help(name) => Ok(Report::done(help(name, &voice.messages))),
        Command::Version => Ok(Report::done(format!("lidleaf {}\n", env!("CARGO_PKG_VERSION")))),
        Command::Check { program, catalog, mend } => {
            commands::check(&program, catalog.as_deref(), mend.as_ref(), voice)
        }
        Command::Answer { program, catalog, item, facts, on } => {
            let asked = commands::AnswerAsked { item: &item, facts: &facts, day: on.unwrap_or(world.today) };
            commands::answer(&program, catalog.as_deref(), &asked, voice)
        }
        Command::Print(args) => commands::print(&args, world.today, voice),
        Command::Batch(args) => commands::batch(&args, voice, world),
        Command::Publish { program, catalog, app, out } => {
            commands::publish(program.as_deref(), catalog.as_deref(), &app, &out, world.today, voice)
        }
        Command::Serve { folder, address, port } => commands::serve(&folder, address, port, voice, world),
        Command::Compare(args) => commands::compare(&args, voice),
        Command::Schema { out } => commands::schema(out.as_deref(), voice),
        Command::Demo { town, out } => commands::demo(town.as_deref(), out.as_deref(), voice),
    }
}

fn language(asked: &Asked) -> Outcome<Lang> {
    let Some(word) = &asked.language else { return Ok(Lang::default()) };
    spoken(word)
}

/// The language of a tag, when there are messages in it.
pub(crate) fn spoken(word: &str) -> Outcome<Lang> {
    let known = || supported().iter().map(|language| language.tag).collect::<Vec<_>>().join(", ");
    word.parse::<Lang>()
        .ok()
        .filter(|lang| lang.entry().is_some())
        .ok_or_else(|| Problem::usage("cli-usage-language").with("word", word).with("known", known()))
}

fn voice(lang: Lang, json: bool) -> Voice {
    // A terminal shows the isolating marks as boxes.
    Voice { messages: locales::bundled(&lang).isolating(false), json }
}

fn complain(problem: &Problem, voice: &Voice, world: &mut World<'_>) -> Exit {
    let message = problem.message(&voice.messages);
    let hint = problem.hint(&voice.messages);
    let told = if voice.json {
        let args: serde_json::Map<String, serde_json::Value> =
            problem.args.iter().map(|(name, value)| ((*name).to_owned(), json!(value))).collect();
        let error = json!({ "code": problem.key, "args": args, "message": message, "hint": hint });
        say(world.out, &pretty(&json!({ "error": error })))
    } else {
        let mut text = t!(voice.messages, "cli-error", message = message) + "\n";
        if let Some(hint) = hint {
            text.push_str(&format!("  {hint}\n"));
        }
        say(world.err, &text)
    };
    // Whoever closed the other end does not read a complaint about it either.
    told.map_or(Exit::Blocked, |()| problem.exit)
}

/// Writes a text; a reader who has left (`lidleaf check … | head`) is no failure.
pub(crate) fn say(to: &mut dyn Write, text: &str) -> io::Result<()> {
    match to.write_all(text.as_bytes()).and_then(|()| to.flush()) {
        Err(error) if error.kind() == io::ErrorKind::BrokenPipe => Ok(()),
        other => other,
    }
}

/// JSON as people read it, with a final line break.
pub(crate) fn pretty(value: &impl serde::Serialize) -> String {
    // Only maps with string keys are written, so it cannot fail.
    let mut text = serde_json::to_string_pretty(value).unwrap_or_default();
    text.push('\n');
    text
}

pub(crate) fn help(name: Option<Name>, messages: &Messages) -> String {
    let text = match name {
        None => t!(messages, "cli-help"),
        Some(Name::Check) => t!(messages, "cli-help-check"),
        Some(Name::Answer) => t!(messages, "cli-help-answer"),
        Some(Name::Print) => t!(messages, "cli-help-print"),
        Some(Name::Batch) => t!(messages, "cli-help-batch"),
        Some(Name::Publish) => t!(messages, "cli-help-publish"),
        Some(Name::Serve) => t!(messages, "cli-help-serve"),
        Some(Name::Compare) => t!(messages, "cli-help-compare"),
        Some(Name::Schema) => t!(messages, "cli-help-schema"),
        Some(Name::Demo) => t!(messages, "cli-help-demo"),
    };
    let common = t!(messages, "cli-help-common");
    format!("{text}\n\n{common}\n")
}
