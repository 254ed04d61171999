//! What went wrong, as a message key and its values: the words come from `locales`.

use std::path::Path;

use guide_data::LoadProblem;
use locales::{Args, Messages, Value};

use crate::exit::Exit;

/// A run's result.
pub(crate) type Outcome<T> = Result<T, Problem>;

/// Why a run ended early.
#[derive(Debug)]
pub(crate) struct Problem {
    pub(crate) exit: Exit,
    /// The message's key; with `-hint` for what to do next.
    pub(crate) key: String,
    pub(crate) args: Vec<(&'static str, String)>,
}

impl Problem {
    pub(crate) fn new(exit: Exit, key: &'static str) -> Self {
        Self { exit, key: key.to_owned(), args: Vec::new() }
    }

    pub(crate) fn usage(key: &'static str) -> Self {
        Self::new(Exit::Usage, key)
    }

    pub(crate) fn with(mut self, name: &'static str, value: impl Into<String>) -> Self {
        self.args.push((name, value.into()));
        self
    }

    pub(crate) fn file(self, path: &Path) -> Self {
        self.with("file", path.display().to_string())
    }

    /// A file or folder that the system refused.
    pub(crate) fn io(exit: Exit, key: &'static str, path: &Path, error: &std::io::Error) -> Self {
        Self::new(exit, key).file(path).with("detail", error.to_string())
    }

    /// A file that was read but is not what it should be.
    pub(crate) fn load(path: &Path, problem: &LoadProblem) -> Self {
        Self { exit: Exit::Unreadable, key: format!("load-{}", problem.code()), args: problem.args() }
            .file(path)
    }

    /// The message; where a file is concerned, its name first.
    pub(crate) fn message(&self, messages: &Messages) -> String {
        let text = messages.t(&self.key, &self.fluent());
        match self.args.iter().find(|(name, _)| *name == "file") {
            Some((_, file)) if self.key.starts_with("load-") => format!("{file}: {text}"),
            _ => text,
        }
    }

    /// What to do next, where the message does not say it.
    pub(crate) fn hint(&self, messages: &Messages) -> Option<String> {
        messages.find(&format!("{}.hint", self.key), &self.fluent()).map(|found| found.text)
    }

    fn fluent(&self) -> Args<'_> {
        let mut args = Args::new();
        for (name, value) in &self.args {
            args.set(*name, Value::from(value.as_str()));
        }
        args
    }
}
