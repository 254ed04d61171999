//! What went wrong and what to do next: the only error of these tasks.

use std::fmt;
use std::path::Path;

/// A failure a developer can act on: what happened, and the next step.
#[derive(Debug)]
pub(crate) struct Problem {
    what: String,
    next: Option<String>,
}

/// The result of a task.
pub(crate) type Outcome<T> = Result<T, Problem>;

impl Problem {
    /// A failure whose message says by itself what to do.
    pub(crate) fn new(what: impl Into<String>) -> Self {
        Self { what: what.into(), next: None }
    }

    /// Adds the next step, usually a command to type.
    pub(crate) fn next(mut self, next: impl Into<String>) -> Self {
        self.next = Some(next.into());
        self
    }

    /// A file or folder that could not be used.
    pub(crate) fn file(action: &str, path: &Path, error: &std::io::Error) -> Self {
        Self::new(format!("cannot {action} {}: {error}", path.display()))
    }
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.what)?;
        match &self.next {
            Some(next) => write!(f, "\n  next: {next}"),
            None => Ok(()),
        }
    }
}

impl std::error::Error for Problem {}
