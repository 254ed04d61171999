//! From what is asked for to the list of sheets.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use chrono::NaiveDate;
use guide_data::{Catalog, Checked, LanguagePack};
use locales::Messages;
use print::SheetKind;

use crate::args::Copies;
use crate::commands::{file_name, safe, sheet_kind, unspoken};
use crate::exit::Exit;
use crate::files;
use crate::problem::{Outcome, Problem};
use crate::publish::{desk_messages, language_pack};
use crate::sheets::{self, SheetChoices, SheetWanted};
use locales::Words;

/// Every stream of a program, or every sheet there is.
const ALL: &str = "all";
/// A sheet for each language by itself.
const EACH: &str = "each";
/// One sheet in as many of a program's languages as it takes.
const TOGETHER: &str = "together";

/// What is asked for of every program.
#[derive(Debug)]
pub(crate) struct Wanted {
    pub(crate) sheets: Vec<SheetKind>,
    /// Ids, or `all`; none is the stream that `print` takes.
    pub(crate) streams: Vec<String>,
    pub(crate) zone: Option<String>,
    /// Sets of languages as written: `en`, `en,es`, `each`, `together`.
    pub(crate) languages: Vec<String>,
    pub(crate) date: NaiveDate,
    /// Files for the web, not for a press.
    pub(crate) web: bool,
    /// How they are to be made.
    pub(crate) choices: SheetChoices,
    /// A sheet for each language of a set.
    pub(crate) alone: bool,
    /// A job ticket for each file, too.
    pub(crate) tickets: bool,
    /// How many copies the tickets ask for.
    pub(crate) copies: Copies,
}

/// A program, checked, with its words.
pub(crate) struct Program {
    pub(crate) path: PathBuf,
    pub(crate) program: guide_data::Program,
    pub(crate) checked: Checked,
    tongues: BTreeMap<String, (Messages, LanguagePack)>,
}

impl Program {
    pub(super) fn read(path: &Path, catalog: &Catalog) -> Outcome<Self> {
        let program = files::program(path)?;
        let checked = guide_data::check(&program, catalog);
        if !checked.publishable() {
            let errors =
                checked.findings.iter().filter(|f| f.severity == guide_data::Severity::Error).count();
            return Err(Problem::new(Exit::Errors, "cli-batch-program-errors")
                .with("count", errors.to_string())
                .file(path));
        }
        let tongues = program
            .languages
            .iter()
            .map(|tag| {
                let pack = language_pack(&program, catalog, tag);
                let messages = sheets::messages(&program, &pack, &desk_messages(&pack.language));
                (tag.clone(), (messages, pack))
            })
            .collect();
        Ok(Self { path: path.to_owned(), program, checked, tongues })
    }

    /// The words of these languages. Fails on one that the program does not speak.
    pub(super) fn words(&self, languages: &[String]) -> Outcome<Vec<Words<'_>>> {
        languages
            .iter()
            .map(|tag| {
                let (messages, pack) = self.tongues.get(tag).ok_or_else(|| unspoken(tag, &self.program))?;
                Ok(Words { messages, pack })
            })
            .collect()
    }
}

/// One file to be made.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Planned {
    /// Which program, by its place in the list.
    pub(crate) program: usize,
    pub(crate) wanted: SheetWanted,
    pub(crate) languages: Vec<String>,
    /// The file, as a path in the batch's folder.
    pub(crate) file: String,
    /// Whether it is the sheet's job ticket: then what the sheet's own file is called.
    pub(crate) ticket_of: Option<String>,
    /// How many copies its ticket asks for; 0 when nobody has said it.
    pub(crate) copies: u32,
}

impl Planned {
    /// The sheet's job ticket, beside it.
    fn ticket(&self) -> Self {
        let stem = self.file.strip_suffix(".pdf").unwrap_or(&self.file);
        let name = self.file.rsplit('/').next().unwrap_or(&self.file);
        Self { file: format!("{stem}-ticket.pdf"), ticket_of: Some(name.to_owned()), ..self.clone() }
    }
}

/// Every sheet of one program, each once, in the order asked for.
pub(crate) fn plan(at: usize, program: &guide_data::Program, wanted: &Wanted) -> Vec<Planned> {
    let streams: Vec<Option<String>> = if wanted.streams.is_empty() {
        vec![None]
    } else {
        let of = |word: &String| match word.as_str() {
            ALL => program.streams.iter().map(|stream| Some(stream.id.clone())).collect(),
            _ => vec![Some(word.clone())],
        };
        wanted.streams.iter().flat_map(of).collect()
    };
    let mut sets: Vec<Vec<String>> =
        wanted.languages.iter().flat_map(|set| languages(set, program)).collect();
    if wanted.alone {
        sets = sets.into_iter().flatten().map(|tag| vec![tag]).collect();
    }
    let mut planned: Vec<Planned> = Vec::new();
    for &sheet in &wanted.sheets {
        for stream in &streams {
            for languages in &sets {
                let sheet_wanted = SheetWanted {
                    sheet,
                    stream: stream.clone(),
                    zone: wanted.zone.clone(),
                    date: wanted.date,
                    choices: wanted.choices.clone(),
                };
                let folder = safe(&program.id);
                let file =
                    format!("{folder}/{}", file_name(&program.id, &sheet_wanted, languages, wanted.web));
                if planned.iter().any(|before| before.file == file) {
                    continue;
                }
                let one = Planned {
                    program: at,
                    wanted: sheet_wanted,
                    languages: languages.clone(),
                    file,
                    ticket_of: None,
                    copies: wanted.copies.of(languages),
                };
                let ticket = wanted.tickets.then(|| one.ticket());
                planned.push(one);
                planned.extend(ticket);
            }
        }
    }
    planned
}

fn languages(set: &str, program: &guide_data::Program) -> Vec<Vec<String>> {
    match set {
        EACH => program.languages.iter().map(|tag| vec![tag.clone()]).collect(),
        TOGETHER => vec![program.languages.iter().take(sheets::USUAL_LANGUAGES).cloned().collect()],
        named => {
            vec![named.split(',').map(|tag| tag.trim().to_owned()).filter(|tag| !tag.is_empty()).collect()]
        }
    }
}

impl Wanted {
    /// The sheets of a list such as `lid,postcard`, or `all`. Fails on one that does not exist.
    pub(crate) fn sheets(list: &str) -> Outcome<Vec<SheetKind>> {
        let words = list.split(',').map(str::trim).filter(|word| !word.is_empty());
        let mut kinds = Vec::new();
        for word in words {
            match word {
                ALL => kinds.extend(SheetKind::ALL),
                word => kinds.push(sheet_kind(word)?),
            }
        }
        Ok(kinds)
    }

    /// How languages are set when nothing is said: each alone, then together.
    pub(crate) fn usual_languages() -> Vec<String> {
        vec![EACH.to_owned(), TOGETHER.to_owned()]
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn files(sheets: &str, streams: &[&str], languages: &[&str]) -> Vec<String> {
        let program = guide_data::Program {
            id: "q".to_owned(),
            languages: ["en", "es", "ar", "vi"].map(str::to_owned).to_vec(),
            streams: ["recycling", "glass"]
                .map(|id| guide_data::Stream { id: id.to_owned(), ..guide_data::Stream::default() })
                .to_vec(),
            ..guide_data::Program::default()
        };
        let list = |words: &[&str]| words.iter().map(|word| (*word).to_owned()).collect();
        let wanted = Wanted {
            sheets: Wanted::sheets(sheets).unwrap(),
            streams: list(streams),
            zone: None,
            languages: list(languages),
            date: NaiveDate::default(),
            web: false,
            choices: SheetChoices::default(),
            alone: false,
            tickets: false,
            copies: Copies::default(),
        };
        plan(3, &program, &wanted)
            .into_iter()
            .map(|planned| {
                assert_eq!(planned.program, 3);
                planned.file
            })
            .collect()
    }

    #[test]
    fn every_sheet_for_every_set_once() {
        assert_eq!(
            files("lid", &[], &["each", "together"]),
            [
                "q/q-cart-lid-en.pdf",
                "q/q-cart-lid-es.pdf",
                "q/q-cart-lid-ar.pdf",
                "q/q-cart-lid-vi.pdf",
                "q/q-cart-lid-en-es-ar.pdf"
            ]
        );
        assert_eq!(
            files("lid,postcard", &["all"], &["ar, en"]),
            [
                "q/q-cart-lid-recycling-ar-en.pdf",
                "q/q-cart-lid-glass-ar-en.pdf",
                "q/q-postcard-mailer-recycling-ar-en.pdf",
                "q/q-postcard-mailer-glass-ar-en.pdf"
            ]
        );
        // Asked for twice in other words: made once.
        assert_eq!(files("lid,cart-lid", &["glass", "all"], &["en", "en"]).len(), 2);
        let whole = SheetKind::ALL.len() * 2 * 5;
        assert_eq!(files("all", &["all"], &["each", "together"]).len(), whole);
    }

    #[test]
    fn a_sheet_that_does_not_exist_is_named() {
        let problem = Wanted::sheets("lid,poster").unwrap_err();
        assert_eq!((problem.key.as_str(), problem.args[0].1.as_str()), ("cli-usage-sheet", "poster"));
    }
}
