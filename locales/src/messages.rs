//! The messages of one language, with English behind them.

use std::borrow::Cow;
use std::fmt;
use std::sync::Arc;

use fluent_syntax::ast;
use fluent_syntax::parser::parse_runtime;

use crate::args::Args;
use crate::lang::Lang;
use crate::measure::Units;
use crate::number::NumberStyle;
use crate::pattern::{ENTRY, Manner, Table, fill, is_whole, references, take_over};

/// What is wrong with a message file. Reading goes on past a problem: the rest stays usable.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Problem {
    /// Which of the sources, counted from 0 in the order given.
    pub source: usize,
    /// The line, counted from 1.
    pub line: usize,
    /// What is wrong.
    pub kind: ProblemKind,
}

/// The kinds of [`Problem`].
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ProblemKind {
    /// The text is not Fluent here; the message in it was left out.
    Syntax(String),
    /// The key was defined before; the first definition is kept.
    Duplicate(String),
    /// A part of Fluent that we have no use for, in the message of this key.
    Unsupported(String, String),
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "message file {}, line {}: ", self.source + 1, self.line)?;
        match &self.kind {
            ProblemKind::Syntax(what) => {
                write!(f, "cannot be read ({what}); correct this line, the other messages are used")
            }
            ProblemKind::Duplicate(key) => {
                write!(f, "\"{key}\" is defined twice; the first is used, remove the other")
            }
            ProblemKind::Unsupported(key, what) => {
                write!(f, "\"{key}\" uses {what}, which is left out; write it with values and plural forms")
            }
        }
    }
}

/// A translated text and the language it turned out to be in, for the `lang` attribute of a text
/// that fell back to English.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Translated {
    /// The text; never empty.
    pub text: String,
    /// The language it is in.
    pub lang: Lang,
}

/// The messages of one language. What it lacks is answered by its fallback.
#[derive(Debug, Clone)]
pub struct Messages {
    manner: Manner,
    table: Arc<Table>,
    fallback: Option<Arc<Messages>>,
    units: Units,
}

impl Messages {
    /// Reads the message files of a language. Give the region with the language where it is known
    /// (`lang.with_region("US")`): it decides how numbers, times and units are written.
    ///
    /// Broken messages are left out and reported; the rest is usable.
    #[must_use]
    pub fn from_ftl(lang: Lang, sources: &[&str]) -> (Self, Vec<Problem>) {
        let mut table = Table::new();
        let mut problems = Vec::new();
        for (source, text) in sources.iter().enumerate() {
            let resource = match parse_runtime(*text) {
                Ok(resource) => resource,
                Err((resource, errors)) => {
                    problems.extend(errors.iter().map(|error| Problem {
                        source,
                        line: line_at(text, error.pos.start),
                        kind: ProblemKind::Syntax(error.kind.to_string()),
                    }));
                    resource
                }
            };
            for (id, key, pattern) in patterns(&resource) {
                let mut report = |kind| problems.push(Problem { source, line: line_of(text, id), kind });
                let mut unsupported = Vec::new();
                let pattern = take_over(pattern, &mut unsupported);
                for what in unsupported {
                    report(ProblemKind::Unsupported(key.clone(), what));
                }
                if table.contains_key(key.as_str()) {
                    report(ProblemKind::Duplicate(key));
                } else {
                    table.insert(key.into(), pattern);
                }
            }
        }
        problems.sort_by_key(|problem| (problem.source, problem.line));
        (Self::over(lang, table), problems)
    }

    fn over(lang: Lang, table: Table) -> Self {
        let units = Units::of_region(lang.region());
        let manner = Manner { numbers: NumberStyle::of(&lang), lang, isolate: true };
        Self { manner, table: Arc::new(table), fallback: None, units }
    }

    /// The messages whose keys are wanted, and those that they refer to, read already, as one text for
    /// [`Messages::from_packed`]. The fallback's are not in it.
    #[must_use]
    pub fn packed(&self, wanted: impl Fn(&str) -> bool) -> String {
        let mut waiting: Vec<&str> = self.table.keys().map(AsRef::as_ref).filter(|key| wanted(key)).collect();
        let mut kept = std::collections::BTreeMap::new();
        while let Some(key) = waiting.pop() {
            if let Some(message) = self.table.get(key)
                && kept.insert(key, message).is_none()
            {
                waiting.extend(references(message));
            }
        }
        let mut out = String::new();
        for (key, message) in kept {
            for text in [key, message] {
                out.push_str(text);
                out.push(ENTRY);
            }
        }
        out
    }

    /// Takes messages over that were read before, see [`Messages::packed`]. `None` when the text is not
    /// one of those: it was damaged on its way.
    #[must_use]
    pub fn from_packed(lang: Lang, packed: &str) -> Option<Self> {
        let mut table = Table::new();
        let mut rest = packed;
        while !rest.is_empty() {
            let (key, after) = rest.split_once(ENTRY)?;
            let (message, after) = after.split_once(ENTRY)?;
            if key.is_empty() || !is_whole(message) {
                return None;
            }
            table.insert(key.into(), message.into());
            rest = after;
        }
        Some(Self::over(lang, table))
    }

    /// Answers with these messages (English) what this language lacks.
    #[must_use]
    pub fn with_fallback(mut self, english: Arc<Self>) -> Self {
        self.fallback = Some(english);
        self
    }

    /// Whether filled-in values are wrapped in Unicode's isolating marks (the default), so that an
    /// English name inside an Arabic sentence does not reorder it. Turn it off for plain text and
    /// for print, which isolates by itself. It holds for the fallback too.
    #[must_use]
    pub fn isolating(mut self, isolate: bool) -> Self {
        self.manner.isolate = isolate;
        self.fallback = self.fallback.map(|english| Arc::new((*english).clone().isolating(isolate)));
        self
    }

    /// Measures in these units, instead of those of the language's region.
    #[must_use]
    pub fn with_units(mut self, units: Units) -> Self {
        self.units = units;
        self
    }

    /// The language, with its region if one was given.
    #[must_use]
    pub fn lang(&self) -> &Lang {
        &self.manner.lang
    }

    /// The units measures are shown in.
    #[must_use]
    pub fn units(&self) -> Units {
        self.units
    }

    pub(crate) fn isolates(&self) -> bool {
        self.manner.isolate
    }

    pub(crate) fn number_style(&self) -> NumberStyle {
        self.manner.numbers
    }

    /// The message of a key, filled in. A key with a dot names an attribute ("ask-wet.hint").
    ///
    /// What this language lacks is answered in English; what English lacks too is answered with
    /// the key itself, so that a reader sees where words are missing. Never empty.
    #[must_use]
    pub fn t(&self, key: &str, args: &Args<'_>) -> String {
        match self.find(key, args) {
            Some(found) => found.text,
            None if key.is_empty() => "?".to_owned(),
            None => key.to_owned(),
        }
    }

    /// The message of a key, where there may be none: names of the program's own items, optional
    /// hints. `None` when neither this language nor English has it.
    #[must_use]
    pub fn find(&self, key: &str, args: &Args<'_>) -> Option<Translated> {
        let own = self.table.get(key).map(|pattern| fill(pattern, args, &self.table, &self.manner));
        match own {
            Some(text) if !text.trim().is_empty() => Some(Translated { text, lang: self.lang().clone() }),
            _ => self.fallback.as_ref()?.find(key, args),
        }
    }

    /// Whether this language itself, without its fallback, has the key.
    #[must_use]
    pub fn has(&self, key: &str) -> bool {
        self.table.contains_key(key)
    }
}

/// The messages, terms and attributes of a file: identifier as it stands there, key, pattern.
fn patterns<'r, 's>(
    resource: &'r ast::Resource<&'s str>,
) -> impl Iterator<Item = (&'s str, String, &'r ast::Pattern<&'s str>)> {
    resource.body.iter().flat_map(|entry| {
        let (id, key, value, attributes) = match entry {
            ast::Entry::Message(m) => {
                (m.id.name, m.id.name.to_owned(), m.value.as_ref(), m.attributes.as_slice())
            }
            ast::Entry::Term(t) => {
                (t.id.name, format!("-{}", t.id.name), Some(&t.value), t.attributes.as_slice())
            }
            _ => ("", String::new(), None, &[] as &[_]),
        };
        let attributes: Vec<_> =
            attributes.iter().map(|a| (a.id.name, format!("{key}.{}", a.id.name), &a.value)).collect();
        value.map(|value| (id, key, value)).into_iter().chain(attributes)
    })
}

fn line_at(text: &str, at: usize) -> usize {
    text.get(..at).unwrap_or(text).matches('\n').count() + 1
}

/// The line of a piece of `text`: the parser keeps no positions, but its pieces are parts of the text.
fn line_of(text: &str, piece: &str) -> usize {
    line_at(text, (piece.as_ptr() as usize).saturating_sub(text.as_ptr() as usize))
}

/// Removes the isolating marks from a text: U+2068 and U+2069.
pub(crate) fn without_isolates(text: &str) -> Cow<'_, str> {
    let marks = ['\u{2066}', '\u{2067}', '\u{2068}', '\u{2069}'];
    if text.contains(marks) { Cow::Owned(text.replace(marks, "")) } else { Cow::Borrowed(text) }
}
