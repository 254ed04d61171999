//! Reading the command's words.

use std::ffi::OsString;
use std::fmt;
use std::net::IpAddr;
use std::num::NonZeroUsize;
use std::path::PathBuf;

use chrono::NaiveDate;
use lexopt::{Arg, Parser, ValueExt};

use print::{Fold, Mm, PressSheet, QrLevel, SheetSize, Turning};

use crate::problem::{Outcome, Problem};
use crate::sheets::SheetChoices;

/// What was asked for.
#[derive(Debug)]
pub(crate) struct Asked {
    pub(crate) command: Command,
    /// The language of messages and answers.
    pub(crate) language: Option<String>,
    /// Machine-readable output.
    pub(crate) json: bool,
}

/// The commands, each with what only it takes.
#[derive(Debug)]
pub(crate) enum Command {
    Help(Option<Name>),
    Version,
    Check {
        program: PathBuf,
        catalog: Option<PathBuf>,
        /// The way to mend a finding that is to be taken, and the file to write.
        mend: Option<(FixNumber, PathBuf)>,
    },
    Answer {
        program: PathBuf,
        catalog: Option<PathBuf>,
        item: String,
        facts: Vec<(String, String)>,
        on: Option<NaiveDate>,
    },
    Print(Box<PrintArgs>),
    Batch(Box<BatchArgs>),
    Publish {
        program: Option<PathBuf>,
        catalog: Option<PathBuf>,
        app: PathBuf,
        out: PathBuf,
    },
    Serve {
        folder: PathBuf,
        address: IpAddr,
        port: u16,
    },
    Compare(CompareArgs),
    Schema {
        out: Option<PathBuf>,
    },
    Demo {
        /// One of the member towns, by id.
        town: Option<String>,
        out: Option<PathBuf>,
    },
}

/// What `compare` takes.
#[derive(Debug)]
pub(crate) struct CompareArgs {
    /// Two to fifty program files.
    pub(crate) programs: Vec<PathBuf>,
    pub(crate) catalog: Option<PathBuf>,
    /// A notice is wanted, not a list.
    pub(crate) notice: bool,
    pub(crate) speak: Option<String>,
    pub(crate) on: Option<NaiveDate>,
    pub(crate) out: Option<PathBuf>,
}

/// A way to mend a finding, as `check` numbers them: the finding and the way, counted from 1.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct FixNumber {
    pub(crate) finding: usize,
    pub(crate) fix: usize,
}

impl FixNumber {
    fn of(word: &str) -> Option<Self> {
        let (finding, fix) = word.split_once('.')?;
        let number = |text: &str| text.parse().ok().filter(|n| *n > 0);
        Some(Self { finding: number(finding)?, fix: number(fix)? })
    }
}

impl fmt::Display for FixNumber {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}.{}", self.finding, self.fix)
    }
}

/// What `print` takes.
#[derive(Debug)]
pub(crate) struct PrintArgs {
    pub(crate) program: PathBuf,
    pub(crate) catalog: Option<PathBuf>,
    pub(crate) sheet: String,
    pub(crate) stream: Option<String>,
    pub(crate) zone: Option<String>,
    pub(crate) languages: Vec<String>,
    pub(crate) out: Option<PathBuf>,
    pub(crate) date: Option<NaiveDate>,
    /// Enter it into the program's register of printed sheets.
    pub(crate) register: bool,
    pub(crate) copies: Copies,
    pub(crate) printed: Option<NaiveDate>,
    /// Leave the job ticket out.
    pub(crate) without_ticket: bool,
    /// How it is to be made.
    pub(crate) choices: SheetChoices,
    /// A file for each language, not one for all.
    pub(crate) alone: bool,
    pub(crate) output: OutputAsked,
}

/// Which file of a sheet is wanted.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum OutputAsked {
    /// For a print shop: its profile, and the most ink its paper takes.
    Press { profile: Option<PathBuf>, ink_limit: Option<u16> },
    /// To read on a screen, and aloud.
    Web,
}

/// What `batch` takes.
#[derive(Debug)]
pub(crate) struct BatchArgs {
    /// The program files.
    pub(crate) programs: Vec<PathBuf>,
    pub(crate) catalog: Option<PathBuf>,
    /// Sheets as a list, or `all`.
    pub(crate) sheets: String,
    /// Streams as a list, or `all`.
    pub(crate) streams: Vec<String>,
    pub(crate) zone: Option<String>,
    /// Sets of languages as written.
    pub(crate) languages: Vec<String>,
    pub(crate) out: PathBuf,
    pub(crate) date: Option<NaiveDate>,
    /// How many sheets are made at once; as many as there are cores when nothing is said.
    pub(crate) hands: Option<NonZeroUsize>,
    /// Make what is made already as well.
    pub(crate) again: bool,
    pub(crate) output: OutputAsked,
    /// How they are to be made.
    pub(crate) choices: SheetChoices,
    /// A file for each language of a set.
    pub(crate) alone: bool,
    /// Make each press file's job ticket too.
    pub(crate) tickets: bool,
    /// For the job tickets.
    pub(crate) copies: Copies,
}

/// How many copies: of every file, or of each language.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(crate) struct Copies {
    each: u32,
    by_language: Vec<(String, u32)>,
}

impl Copies {
    /// Reads `400` or `en=400,es=200`.
    fn of_word(word: &str) -> Option<Self> {
        if let Ok(each) = word.trim().parse() {
            return Some(Self { each, by_language: Vec::new() });
        }
        let pair = |part: &str| {
            let (tag, number) = part.split_once('=')?;
            Some((tag.trim().to_owned(), number.trim().parse().ok()?))
        };
        let by_language = word.split(',').map(pair).collect::<Option<Vec<_>>>()?;
        Some(Self { each: 0, by_language })
    }

    /// Copies of a file in these languages; 0 when nobody has said it.
    pub(crate) fn of(&self, languages: &[String]) -> u32 {
        let own =
            self.by_language.iter().filter(|(tag, _)| languages.contains(tag)).map(|(_, number)| *number);
        if self.by_language.is_empty() { self.each } else { own.sum() }
    }
}

/// The commands by name.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Name {
    Check,
    Answer,
    Print,
    Batch,
    Publish,
    Serve,
    Compare,
    Schema,
    Demo,
}

impl Name {
    const ALL: [(&'static str, Self); 9] = [
        ("check", Self::Check),
        ("answer", Self::Answer),
        ("print", Self::Print),
        ("batch", Self::Batch),
        ("publish", Self::Publish),
        ("serve", Self::Serve),
        ("compare", Self::Compare),
        ("schema", Self::Schema),
        ("demo", Self::Demo),
    ];

    fn of(word: &str) -> Option<Self> {
        Self::ALL.iter().find(|(name, _)| *name == word).map(|(_, name)| *name)
    }

    /// How many words that are not options it takes: at least, at most.
    fn words(self) -> (usize, usize) {
        match self {
            Self::Check | Self::Print | Self::Serve => (1, 1),
            Self::Answer => (2, 2),
            Self::Compare => (2, MOST_COMPARED),
            Self::Batch => (1, MOST_PRINTED),
            Self::Publish => (0, 1),
            Self::Schema | Self::Demo => (0, 0),
        }
    }

    /// The options that are not shared by commands that make sheets.
    fn own(self) -> &'static [&'static str] {
        match self {
            Self::Check => &["catalog", "fix", "out"],
            Self::Compare => &["catalog", "notice", "language", "on", "out"],
            Self::Answer => &["catalog", "fact", "zone", "on"],
            Self::Print => &["register", "copies", "printed", "corner", "no-ticket"],
            Self::Batch => &["hands", "again", "tickets", "copies"],
            Self::Publish => &["catalog", "app", "out"],
            Self::Serve => &["port", "address"],
            Self::Schema => &["out"],
            Self::Demo => &["town", "out"],
        }
    }

    fn takes(self, option: &str) -> bool {
        let own = self.own();
        let sheets = matches!(self, Self::Print | Self::Batch);
        own.contains(&option) || (sheets && OF_SHEETS.contains(&option))
    }
}

/// The options of every command that makes sheets.
const OF_SHEETS: &[&str] = &[
    "catalog",
    "sheet",
    "stream",
    "zone",
    "languages",
    "out",
    "date",
    "for",
    "profile",
    "ink-limit",
    "alone",
    "size",
    "fold",
    "die-line",
    "printers-mark",
    "qr-level",
    "stock",
    "thickness",
    "press",
    "gutter",
    "up",
    "work-and-turn",
    "distance",
    "item",
    "no-places",
    "words",
];

/// More programs than this are no region, and would be slow to compare.
const MOST_COMPARED: usize = 50;

/// All programs of a batch are held in memory at once, about three megabytes each.
const MOST_PRINTED: usize = 500;

/// The port `serve` opens when none is named.
const PORT: u16 = 8080;

/// Reads the words after the program's own name.
pub(crate) fn read(words: impl IntoIterator<Item = OsString>) -> Outcome<Asked> {
    let mut parser = Parser::from_args(words);
    let mut found = Found::default();
    while let Some(arg) = parser.next().map_err(|error| misread(&error))? {
        match arg {
            Arg::Long("help") | Arg::Short('h') => found.help = true,
            Arg::Long("version") | Arg::Short('V') => found.version = true,
            Arg::Long("json") => found.json = true,
            Arg::Long("lang") => found.language = Some(string(&mut parser)?),
            Arg::Long(option) => {
                let option = option.to_owned();
                let Some(name) = found.name.filter(|name| name.takes(&option)) else {
                    return Err(Problem::usage("cli-usage-option").with("option", format!("--{option}")));
                };
                found.option(name, &option, &mut parser)?;
            }
            Arg::Short(letter) => {
                return Err(Problem::usage("cli-usage-option").with("option", format!("-{letter}")));
            }
            Arg::Value(word) => found.word(word)?,
        }
    }
    found.finish()
}

/// What has been read so far.
#[derive(Default)]
struct Found {
    name: Option<Name>,
    words: Vec<OsString>,
    help: bool,
    version: bool,
    json: bool,
    language: Option<String>,
    catalog: Option<PathBuf>,
    facts: Vec<(String, String)>,
    day: Option<NaiveDate>,
    sheet: Option<String>,
    stream: Option<String>,
    zone: Option<String>,
    languages: Vec<String>,
    sets: Vec<String>,
    hands: Option<NonZeroUsize>,
    again: bool,
    out: Option<PathBuf>,
    notice: bool,
    speak: Option<String>,
    register: bool,
    copies: Option<Copies>,
    without_ticket: bool,
    tickets: bool,
    printed: Option<NaiveDate>,
    web: bool,
    profile: Option<PathBuf>,
    ink_limit: Option<u16>,
    town: Option<String>,
    fix: Option<FixNumber>,
    app: Option<PathBuf>,
    port: Option<u16>,
    address: Option<IpAddr>,
    choices: SheetChoices,
    corner: Option<Mm>,
    gutter: Option<Mm>,
    up: Option<usize>,
    turn: bool,
    alone: bool,
}

impl Found {
    fn word(&mut self, word: OsString) -> Outcome<()> {
        let Some(name) = self.name else {
            let text = word.to_string_lossy();
            self.name = Name::of(&text);
            return match (self.name, &*text) {
                (Some(_), _) => Ok(()),
                (None, "help") => {
                    self.help = true;
                    Ok(())
                }
                (None, _) => Err(Problem::usage("cli-usage-command").with("command", text)),
            };
        };
        if self.words.len() == name.words().1 {
            return Err(Problem::usage("cli-usage-word").with("word", word.to_string_lossy()));
        }
        self.words.push(word);
        Ok(())
    }

    fn option(&mut self, name: Name, option: &str, parser: &mut Parser) -> Outcome<()> {
        match option {
            "catalog" => self.catalog = Some(path(parser)?),
            "out" => self.out = Some(path(parser)?),
            "fix" => {
                let text = string(parser)?;
                let number =
                    FixNumber::of(&text).ok_or_else(|| Problem::usage("cli-usage-fix").with("word", text))?;
                self.fix = Some(number);
            }
            "app" => self.app = Some(path(parser)?),
            "sheet" => self.sheet = Some(string(parser)?),
            "stream" => self.stream = Some(string(parser)?),
            "zone" if name == Name::Answer => {
                let zone = string(parser)?;
                self.facts.push(("zone".to_owned(), zone));
            }
            "zone" => self.zone = Some(string(parser)?),
            "fact" => {
                let text = string(parser)?;
                let Some((fact, value)) = text.split_once('=') else {
                    return Err(Problem::usage("cli-usage-fact").with("word", text));
                };
                self.facts.push((fact.trim().to_owned(), value.trim().to_owned()));
            }
            "languages" if name == Name::Batch => self.sets.push(string(parser)?),
            "hands" => {
                let text = string(parser)?;
                let hands = text.parse().map_err(|_| Problem::usage("cli-usage-hands").with("word", text))?;
                self.hands = Some(hands);
            }
            "again" => self.again = true,
            "languages" => {
                let text = string(parser)?;
                self.languages = list(&text);
            }
            "notice" => self.notice = true,
            "register" => self.register = true,
            "town" => self.town = Some(string(parser)?),
            "language" => self.speak = Some(string(parser)?),
            "copies" => {
                let text = string(parser)?;
                let copies = Copies::of_word(&text)
                    .ok_or_else(|| Problem::usage("cli-usage-copies").with("word", text))?;
                self.copies = Some(copies);
            }
            "printed" => self.printed = Some(day(parser)?),
            "for" => {
                self.web = match string(parser)?.as_str() {
                    "press" => false,
                    "web" => true,
                    other => return Err(Problem::usage("cli-usage-for").with("word", other)),
                };
            }
            "profile" => self.profile = Some(path(parser)?),
            "ink-limit" => {
                let text = string(parser)?;
                let limit = text.trim_end_matches('%').trim().parse();
                let limit = limit.map_err(|_| Problem::usage("cli-usage-ink-limit").with("word", text))?;
                self.ink_limit = Some(limit);
            }
            "size" | "corner" | "fold" | "die-line" | "printers-mark" | "qr-level" | "stock"
            | "thickness" | "press" | "gutter" | "up" | "work-and-turn" | "distance" | "item"
            | "no-places" | "no-ticket" | "tickets" | "alone" | "words" => {
                self.choice(option, parser)?;
            }
            "on" | "date" => self.day = Some(day(parser)?),
            "port" => {
                let text = string(parser)?;
                let port = text.parse().map_err(|_| Problem::usage("cli-usage-port").with("word", text))?;
                self.port = Some(port);
            }
            "address" => {
                let text = string(parser)?;
                let address =
                    text.parse().map_err(|_| Problem::usage("cli-usage-address").with("word", text))?;
                self.address = Some(address);
            }
            // Unreachable as long as `Name::takes` and this list agree; a test holds them together.
            other => return Err(Problem::usage("cli-usage-option").with("option", format!("--{other}"))),
        }
        Ok(())
    }

    /// How a sheet is to be made.
    fn choice(&mut self, option: &str, parser: &mut Parser) -> Outcome<()> {
        let choices = &mut self.choices;
        let sized = |text: String| move || Problem::usage("cli-usage-size").with("word", text);
        let long = |text: String| move || Problem::usage("cli-usage-length").with("word", text);
        let length = |parser: &mut Parser| -> Outcome<Mm> {
            let text = string(parser)?;
            SheetSize::parse_length(&text).ok_or_else(long(text))
        };
        match option {
            "size" => {
                let text = string(parser)?;
                choices.size = Some(SheetSize::parse(&text).ok_or_else(sized(text))?);
            }
            "press" => {
                let text = string(parser)?;
                choices.press = Some(PressSheet::parse(&text).ok_or_else(sized(text))?);
            }
            "corner" => self.corner = Some(length(parser)?),
            "gutter" => self.gutter = Some(length(parser)?),
            "thickness" => choices.stock.thickness = Some(length(parser)?),
            "distance" => choices.distance = Some(length(parser)?),
            "fold" => {
                let text = string(parser)?;
                choices.fold = match text.as_str() {
                    "half" => Fold::Half,
                    "thirds" => Fold::Thirds,
                    _ => return Err(Problem::usage("cli-usage-fold").with("word", text)),
                };
            }
            "qr-level" => {
                let text = string(parser)?;
                choices.qr_level = Some(match text.as_str() {
                    "M" | "m" => QrLevel::Medium,
                    "Q" | "q" => QrLevel::Quartile,
                    "H" | "h" => QrLevel::High,
                    _ => return Err(Problem::usage("cli-usage-qr-level").with("word", text)),
                });
            }
            "up" => {
                let text = string(parser)?;
                let up = text.parse().map_err(|_| Problem::usage("cli-usage-up").with("word", text))?;
                self.up = Some(up);
            }
            "words" => {
                let text = string(parser)?;
                let most = text.parse().map_err(|_| Problem::usage("cli-usage-words").with("word", text))?;
                choices.words = Some(most);
            }
            "stock" => choices.stock.name = string(parser)?,
            "item" => choices.item = Some(string(parser)?),
            "die-line" => choices.die_line = true,
            "printers-mark" => choices.printers_mark = true,
            "work-and-turn" => self.turn = true,
            "no-places" => choices.without_places = true,
            "no-ticket" => self.without_ticket = true,
            "tickets" => self.tickets = true,
            // `alone`: the caller passes no other.
            _ => self.alone = true,
        }
        Ok(())
    }

    /// The choices with what was said of the size's corners and of the press sheet, in whatever order.
    fn choices(&mut self, sheet: &str) -> Outcome<SheetChoices> {
        let mut choices = std::mem::take(&mut self.choices);
        if let Some(corner) = self.corner {
            let kind = crate::commands::sheet_kind(sheet)?;
            let size = choices.size.unwrap_or_else(|| kind.usual_size());
            choices.size = Some(SheetSize { corner: Some(corner), ..size });
        }
        let of_press = self.gutter.is_some() || self.up.is_some() || self.turn;
        match &mut choices.press {
            Some(press) => {
                press.gutter = self.gutter;
                press.up = self.up;
                press.turning = if self.turn { Turning::WorkAndTurn } else { Turning::Sheetwise };
            }
            None if of_press => {
                return Err(Problem::usage("cli-usage-needs-option").with("option", "--press"));
            }
            None => {}
        }
        Ok(choices)
    }

    fn finish(self) -> Outcome<Asked> {
        let asked =
            |command, found: &Self| Asked { command, language: found.language.clone(), json: found.json };
        if self.version {
            return Ok(asked(Command::Version, &self));
        }
        let Some(name) = self.name else {
            return Ok(asked(Command::Help(None), &self));
        };
        if self.help {
            return Ok(asked(Command::Help(Some(name)), &self));
        }
        if self.words.len() < name.words().0 {
            return Err(Problem::usage(match name {
                Name::Answer => "cli-usage-needs-item",
                Name::Compare => "cli-usage-needs-two",
                Name::Serve => "cli-usage-needs-folder",
                _ => "cli-usage-needs-program",
            }));
        }
        let (language, json) = (self.language.clone(), self.json);
        Ok(Asked { command: self.command(name)?, language, json })
    }

    fn command(mut self, name: Name) -> Outcome<Command> {
        let sheet = self.sheet.take();
        let choices = match &sheet {
            Some(sheet) if matches!(name, Name::Print | Name::Batch) => self.choices(sheet)?,
            _ => SheetChoices::default(),
        };
        let mut words = self.words.into_iter();
        let first = words.next();
        let second = words.next();
        // The number of words was checked: a missing one cannot get here.
        let file = |word: Option<OsString>| PathBuf::from(word.unwrap_or_default());
        let needs = |option: &'static str| Problem::usage("cli-usage-needs-option").with("option", option);
        Ok(match name {
            Name::Check => {
                let mend = match (self.fix, self.out) {
                    (Some(fix), Some(out)) => Some((fix, out)),
                    (Some(_), None) => return Err(needs("--out")),
                    (None, Some(_)) => return Err(needs("--fix")),
                    (None, None) => None,
                };
                Command::Check { program: file(first), catalog: self.catalog, mend }
            }
            Name::Answer => Command::Answer {
                program: file(first),
                catalog: self.catalog,
                item: second.unwrap_or_default().to_string_lossy().into_owned(),
                facts: self.facts,
                on: self.day,
            },
            Name::Print => Command::Print(Box::new(PrintArgs {
                program: file(first),
                catalog: self.catalog,
                sheet: sheet.ok_or_else(|| needs("--sheet"))?,
                stream: self.stream,
                zone: self.zone,
                languages: self.languages,
                out: self.out,
                date: self.day,
                register: self.register,
                copies: self.copies.unwrap_or_default(),
                printed: self.printed,
                output: output(self.web, self.profile, self.ink_limit)?,
                without_ticket: self.without_ticket,
                choices,
                alone: self.alone,
            })),
            // Nothing else of a batch says how many.
            Name::Batch if self.copies.is_some() && !self.tickets => return Err(needs("--tickets")),
            Name::Batch => Command::Batch(Box::new(BatchArgs {
                programs: first.into_iter().chain(second).chain(words).map(PathBuf::from).collect(),
                catalog: self.catalog,
                sheets: sheet.ok_or_else(|| needs("--sheet"))?,
                streams: list(self.stream.as_deref().unwrap_or_default()),
                zone: self.zone,
                languages: self.sets,
                out: self.out.ok_or_else(|| needs("--out"))?,
                date: self.day,
                hands: self.hands,
                again: self.again,
                output: output(self.web, self.profile, self.ink_limit)?,
                choices,
                alone: self.alone,
                tickets: self.tickets,
                copies: self.copies.unwrap_or_default(),
            })),
            Name::Publish => Command::Publish {
                program: first.map(PathBuf::from),
                catalog: self.catalog,
                app: self.app.unwrap_or_else(|| PathBuf::from("dist/app")),
                out: self.out.ok_or_else(|| needs("--out"))?,
            },
            Name::Serve => Command::Serve {
                folder: file(first),
                address: self.address.unwrap_or(IpAddr::V4(std::net::Ipv4Addr::LOCALHOST)),
                port: self.port.unwrap_or(PORT),
            },
            Name::Compare => Command::Compare(CompareArgs {
                programs: first.into_iter().chain(second).chain(words).map(PathBuf::from).collect(),
                catalog: self.catalog,
                notice: self.notice,
                speak: self.speak,
                on: self.day,
                out: self.out,
            }),
            Name::Schema => Command::Schema { out: self.out },
            Name::Demo => Command::Demo { town: self.town, out: self.out },
        })
    }
}

/// The output asked for. Fails when something about a press is said of a file for the web.
fn output(web: bool, profile: Option<PathBuf>, ink_limit: Option<u16>) -> Outcome<OutputAsked> {
    match (web, profile, ink_limit) {
        (true, None, None) => Ok(OutputAsked::Web),
        (true, Some(_), _) => Err(press_only("--profile")),
        (true, None, Some(_)) => Err(press_only("--ink-limit")),
        (false, profile, ink_limit) => Ok(OutputAsked::Press { profile, ink_limit }),
    }
}

/// An option that says something about a press, beside the file for the web.
fn press_only(option: &'static str) -> Problem {
    Problem::usage("cli-usage-press-only").with("option", option)
}

/// The words of a list with commas.
fn list(text: &str) -> Vec<String> {
    text.split(',').map(|word| word.trim().to_owned()).filter(|word| !word.is_empty()).collect()
}

fn day(parser: &mut Parser) -> Outcome<NaiveDate> {
    let text = string(parser)?;
    NaiveDate::parse_from_str(&text, "%Y-%m-%d")
        .map_err(|_| Problem::usage("cli-usage-date").with("word", text))
}

fn path(parser: &mut Parser) -> Outcome<PathBuf> {
    parser.value().map(PathBuf::from).map_err(|error| misread(&error))
}

fn string(parser: &mut Parser) -> Outcome<String> {
    parser.value().and_then(|value| value.string()).map_err(|error| misread(&error))
}

fn misread(error: &lexopt::Error) -> Problem {
    match error {
        lexopt::Error::MissingValue { option } => {
            Problem::usage("cli-usage-needs-value").with("option", option.clone().unwrap_or_default())
        }
        lexopt::Error::NonUnicodeValue(word) => {
            Problem::usage("cli-usage-not-text").with("word", word.to_string_lossy())
        }
        lexopt::Error::UnexpectedValue { option, .. } => {
            Problem::usage("cli-usage-no-value").with("option", option.clone())
        }
        other => Problem::usage("cli-usage-other").with("detail", other.to_string()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ask(line: &str) -> Outcome<Asked> {
        read(line.split_whitespace().map(OsString::from))
    }

    fn refused(line: &str) -> String {
        let problem = ask(line).expect_err(line);
        assert_eq!(problem.exit, crate::exit::Exit::Usage);
        let args: Vec<_> = problem.args.iter().map(|(_, value)| value.as_str()).collect();
        format!("{} {}", problem.key, args.join(" ")).trim_end().to_owned()
    }

    #[test]
    fn slips_are_named() {
        for (line, expected) in [
            ("chekc p.json", "cli-usage-command chekc"),
            ("check", "cli-usage-needs-program"),
            ("check a.json b.json", "cli-usage-word b.json"),
            ("check a.json --stream x", "cli-usage-option --stream"),
            ("check a.json -x", "cli-usage-option -x"),
            ("check a.json --catalog", "cli-usage-needs-value --catalog"),
            ("check a.json --json=yes", "cli-usage-no-value --json"),
            ("check a.json --fix 2 --out b.json", "cli-usage-fix 2"),
            ("check a.json --fix 0.1 --out b.json", "cli-usage-fix 0.1"),
            ("check a.json --fix 2.1", "cli-usage-needs-option --out"),
            ("check a.json --out b.json", "cli-usage-needs-option --fix"),
            ("answer a.json", "cli-usage-needs-item"),
            ("answer a.json x --fact resin", "cli-usage-fact resin"),
            ("answer a.json x --on 3/4/2027", "cli-usage-date 3/4/2027"),
            ("answer a.json x --on 2027-02-30", "cli-usage-date 2027-02-30"),
            ("print a.json", "cli-usage-needs-option --sheet"),
            ("batch a.json --out o", "cli-usage-needs-option --sheet"),
            ("batch a.json --sheet lid", "cli-usage-needs-option --out"),
            ("batch a.json --sheet lid --out o --hands 0", "cli-usage-hands 0"),
            ("batch --sheet lid --out o", "cli-usage-needs-program"),
            ("publish a.json", "cli-usage-needs-option --out"),
            ("serve", "cli-usage-needs-folder"),
            ("serve x --port 70000", "cli-usage-port 70000"),
            ("serve x --address here", "cli-usage-address here"),
            ("compare a.json", "cli-usage-needs-two"),
            ("compare a.json b.json --on soon", "cli-usage-date soon"),
            ("print a.json --sheet lid --register --copies many", "cli-usage-copies many"),
            ("print a.json --sheet lid --for paper", "cli-usage-for paper"),
            ("print a.json --sheet lid --ink-limit much", "cli-usage-ink-limit much"),
            ("print a.json --sheet lid --for web --profile p.icc", "cli-usage-press-only --profile"),
            ("print a.json --sheet lid --for web --ink-limit 280", "cli-usage-press-only --ink-limit"),
            ("print a.json --sheet lid --size 8x12", "cli-usage-size 8x12"),
            ("print a.json --sheet lid --press big", "cli-usage-size big"),
            ("print a.json --sheet lid --corner 6", "cli-usage-length 6"),
            ("print a.json --sheet lid --distance far", "cli-usage-length far"),
            ("print a.json --sheet lid --fold often", "cli-usage-fold often"),
            ("print a.json --sheet lid --qr-level L", "cli-usage-qr-level L"),
            ("print a.json --sheet lid --press sra3 --up two", "cli-usage-up two"),
            ("print a.json --sheet lid --words few", "cli-usage-words few"),
            ("print a.json --sheet lid --words 0", "cli-usage-words 0"),
            ("batch a.json --sheet lid --out o --copies some", "cli-usage-copies some"),
            ("batch a.json --sheet lid --out o --copies 400", "cli-usage-needs-option --tickets"),
            ("print a.json --sheet lid --up 2", "cli-usage-needs-option --press"),
            ("print a.json --sheet poster --corner 6mm", "cli-usage-sheet poster"),
            ("--stream x", "cli-usage-option --stream"),
        ] {
            assert_eq!(refused(line), expected, "{line}");
        }
    }

    #[test]
    fn every_option_a_command_takes_is_read() {
        let values = [
            ("catalog", "c.json"),
            ("fact", "resin=1"),
            ("zone", "north"),
            ("on", "2027-01-31"),
            ("sheet", "lid"),
            ("stream", "recycling"),
            ("languages", "en,es"),
            ("out", "o"),
            ("date", "2027-01-31"),
            ("printed", "2027-01-31"),
            ("copies", "400"),
            ("for", "press"),
            ("profile", "p.icc"),
            ("ink-limit", "280%"),
            ("hands", "3"),
            ("language", "es"),
            ("town", "kettlebrae"),
            ("app", "a"),
            ("port", "0"),
            ("address", "::1"),
            ("fix", "2.1"),
            ("size", "8x12in"),
            ("corner", "6mm"),
            ("fold", "thirds"),
            ("qr-level", "H"),
            ("stock", "vinyl"),
            ("thickness", "0.2mm"),
            ("press", "13x19in"),
            ("gutter", "8mm"),
            ("up", "2"),
            ("distance", "2m"),
            ("item", "bag"),
            ("words", "6"),
        ];
        for (word, name) in Name::ALL {
            let mut line = vec![OsString::from(word)];
            line.extend((0..name.words().0).map(|at| OsString::from(format!("word{at}"))));
            for (option, value) in values.iter().filter(|(option, _)| name.takes(option)) {
                line.extend([OsString::from(format!("--{option}")), OsString::from(value)]);
            }
            let flags = [
                "notice",
                "register",
                "alone",
                "die-line",
                "printers-mark",
                "work-and-turn",
                "no-places",
                "no-ticket",
                "again",
                "tickets",
            ];
            let flags = flags.into_iter().filter(|flag| name.takes(flag));
            line.extend(flags.map(|flag| OsString::from(format!("--{flag}"))));
            read(line).unwrap_or_else(|problem| panic!("{word}: {problem:?}"));
        }
    }

    /// Every option that only one command takes, and those of sheets with `print`, are told in every language.
    #[test]
    fn help_tells_every_option_in_every_language() {
        let own = |name: Name| -> Vec<&str> {
            let more = if name == Name::Print { OF_SHEETS } else { &[] };
            name.own().iter().chain(more).copied().collect()
        };
        for lang in locales::supported() {
            let lang = lang.lang().tag();
            let messages = locales::bundled(&lang.parse().unwrap()).isolating(false);
            for (word, name) in Name::ALL {
                let help = crate::run::help(Some(name), &messages);
                let told: Vec<&str> = help.split(|c: char| !(c.is_alphanumeric() || c == '-')).collect();
                for option in own(name) {
                    let option = format!("--{option}");
                    assert!(told.contains(&option.as_str()), "{lang}: {word} {option}\n{help}");
                }
            }
        }
    }

    #[test]
    fn facts_zone_and_day_of_an_answer() {
        let asked =
            ask("answer p.json jar --fact resin=1 --zone north --on 2027-05-01 --lang es --json").unwrap();
        assert!(asked.json);
        assert_eq!(asked.language.as_deref(), Some("es"));
        let Command::Answer { item, facts, on, .. } = asked.command else { panic!("answer") };
        assert_eq!(item, "jar");
        assert_eq!(facts, [("resin".to_owned(), "1".to_owned()), ("zone".to_owned(), "north".to_owned())]);
        assert_eq!(on, NaiveDate::from_ymd_opt(2027, 5, 1));
    }

    #[test]
    fn help_wins_over_what_is_missing() {
        assert!(matches!(ask("").unwrap().command, Command::Help(None)));
        assert!(matches!(ask("help").unwrap().command, Command::Help(None)));
        assert!(matches!(ask("print --help").unwrap().command, Command::Help(Some(Name::Print))));
    }
}
