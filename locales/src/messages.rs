//! The messages of one language, with English behind them.

use std::borrow::Cow;
use std::fmt;
use std::sync::Arc;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::memoizer::MemoizerKind;
use fluent_bundle::{FluentError, FluentResource};
use fluent_syntax::parser::ParserError;

use crate::lang::Lang;
use crate::measure::Units;
use crate::number::NumberStyle;

/// The named values a message is filled in with; made with [`args!`](crate::args).
pub type Args<'a> = fluent_bundle::FluentArgs<'a>;

/// One value: a text or a number. Numbers are written as the language writes them.
pub type Value<'a> = fluent_bundle::FluentValue<'a>;

/// Names values for a message: `args!(count = 3, name = "Tin can")`.
///
/// Names are the placeholders of the message (`{ $count }`).
#[macro_export]
macro_rules! args {
    ($($name:ident = $value:expr),* $(,)?) => {{
        #[allow(unused_mut, reason = "a message without values needs no change")]
        let mut args = $crate::Args::new();
        $(args.set(stringify!($name), $crate::Value::from($value));)*
        args
    }};
}

/// A message by its key, filled in: `t!(messages, "no-results", query = typed)`.
///
/// The check that every key used is defined looks for this macro, so give the key as a literal
/// wherever it is one.
#[macro_export]
macro_rules! t {
    ($messages:expr, $key:expr $(, $name:ident = $value:expr)* $(,)?) => {
        $messages.t($key, &$crate::args!($($name = $value),*))
    };
}

/// What is wrong with a message file. Reading goes on past a problem: the rest stays usable.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Problem {
    /// Which of the sources, counted from 0 in the order given.
    pub source: usize,
    /// The line, counted from 1; 0 when the problem has no single line.
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
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match &self.kind {
            ProblemKind::Syntax(what) => write!(
                f,
                "message file {}, line {}: cannot be read ({what}); correct this line, the other messages are used",
                self.source + 1,
                self.line
            ),
            ProblemKind::Duplicate(key) => write!(
                f,
                "message file {}: \"{key}\" is defined twice; the first is used, remove the other",
                self.source + 1
            ),
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
pub struct Messages {
    lang: Lang,
    bundle: FluentBundle<FluentResource>,
    fallback: Option<Arc<Messages>>,
    isolate: bool,
    units: Units,
}

impl fmt::Debug for Messages {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Messages").field("lang", &self.lang).finish_non_exhaustive()
    }
}

impl Messages {
    /// Reads the message files of a language. Give the region with the language where it is known
    /// (`lang.with_region("US")`): it decides how numbers, times and units are written.
    ///
    /// Broken messages are left out and reported; the rest is usable.
    #[must_use]
    pub fn from_ftl(lang: Lang, sources: &[&str]) -> (Self, Vec<Problem>) {
        let mut bundle = FluentBundle::new_concurrent(vec![lang.id().clone()]);
        bundle.set_formatter(Some(write_number));
        let mut problems = Vec::new();
        for (source, text) in sources.iter().enumerate() {
            let resource = match FluentResource::try_new((*text).to_owned()) {
                Ok(resource) => resource,
                Err((resource, errors)) => {
                    problems.extend(errors.iter().map(|error| syntax_problem(source, text, error)));
                    resource
                }
            };
            if let Err(errors) = bundle.add_resource(resource) {
                problems.extend(errors.into_iter().filter_map(|error| match error {
                    FluentError::Overriding { id, .. } => {
                        Some(Problem { source, line: 0, kind: ProblemKind::Duplicate(id) })
                    }
                    _ => None,
                }));
            }
        }
        let units = Units::of_region(lang.region());
        (Self { lang, bundle, fallback: None, isolate: true, units }, problems)
    }

    /// Answers with these messages (English) what this language lacks.
    #[must_use]
    pub fn with_fallback(mut self, english: Arc<Self>) -> Self {
        self.fallback = Some(english);
        self
    }

    /// Whether filled-in values are wrapped in Unicode's isolating marks (the default), so that an
    /// English name inside an Arabic sentence does not reorder it. Turn it off for plain text and
    /// for print, which isolates by itself.
    #[must_use]
    pub fn isolating(mut self, isolate: bool) -> Self {
        self.bundle.set_use_isolating(isolate);
        self.isolate = isolate;
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
        &self.lang
    }

    /// The units measures are shown in.
    #[must_use]
    pub fn units(&self) -> Units {
        self.units
    }

    pub(crate) fn isolates(&self) -> bool {
        self.isolate
    }

    /// The message of a key, filled in. A key with a dot names an attribute ("ask-wet.hint").
    ///
    /// What this language lacks is answered in English; what English lacks too is answered with
    /// the key itself, so that a reader sees where words are missing. Never empty.
    #[must_use]
    pub fn t(&self, key: &str, args: &Args<'_>) -> String {
        self.find(key, args).map_or_else(|| key.to_owned(), |found| found.text)
    }

    /// The message of a key, where there may be none: names of the program's own items, optional
    /// hints. `None` when neither this language nor English has it.
    #[must_use]
    pub fn find(&self, key: &str, args: &Args<'_>) -> Option<Translated> {
        if let Some(text) = self.own(key, args) {
            return Some(Translated { text, lang: self.lang.clone() });
        }
        self.fallback.as_ref()?.find(key, args)
    }

    /// Whether this language itself, without its fallback, has the key.
    #[must_use]
    pub fn has(&self, key: &str) -> bool {
        self.pattern(key).is_some()
    }

    fn pattern(&self, key: &str) -> Option<&fluent_syntax::ast::Pattern<&str>> {
        match key.split_once('.') {
            Some((message, attribute)) => {
                Some(self.bundle.get_message(message)?.get_attribute(attribute)?.value())
            }
            None => self.bundle.get_message(key)?.value(),
        }
    }

    fn own(&self, key: &str, args: &Args<'_>) -> Option<String> {
        let pattern = self.pattern(key)?;
        // A value that is missing shows as its name in braces; checks, not readers, look for that.
        let mut errors = Vec::new();
        let text = self.bundle.format_pattern(pattern, Some(args), &mut errors).into_owned();
        (!text.trim().is_empty()).then_some(text)
    }

    pub(crate) fn number_style(&self) -> NumberStyle {
        NumberStyle::of(&self.lang)
    }
}

/// Numbers inside messages are written by the language's own rules.
fn write_number<M: MemoizerKind>(value: &Value<'_>, intls: &M) -> Option<String> {
    let Value::Number(number) = value else { return None };
    let min = number.options.minimum_fraction_digits.unwrap_or(0).min(12);
    let max = number.options.maximum_fraction_digits.unwrap_or(3).clamp(min, 12);
    intls.with_try_get_threadsafe::<NumberStyle, _, _>((), |style| style.write(number.value, min, max)).ok()
}

fn syntax_problem(source: usize, text: &str, error: &ParserError) -> Problem {
    let before = text.get(..error.pos.start).unwrap_or(text);
    Problem {
        source,
        line: before.matches('\n').count() + 1,
        kind: ProblemKind::Syntax(error.kind.to_string()),
    }
}

/// Removes the isolating marks from a text: U+2068 and U+2069.
pub(crate) fn without_isolates(text: &str) -> Cow<'_, str> {
    if text.contains(['\u{2068}', '\u{2069}']) {
        Cow::Owned(text.replace(['\u{2068}', '\u{2069}'], ""))
    } else {
        Cow::Borrowed(text)
    }
}
