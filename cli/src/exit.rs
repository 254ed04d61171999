//! Exit codes, which scripts may rely on. The README lists them.

use std::process::ExitCode;

/// How a run ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Exit {
    /// Done. There may be warnings.
    Done,
    /// The program, or a sheet made from it, has errors. Nothing was written.
    Errors,
    /// The command was not understood.
    Usage,
    /// A file to read is missing, or is not what it should be.
    Unreadable,
    /// A file could not be written, or an address could not be opened.
    Blocked,
    /// What was asked for (an item, a zone, a stream) is not in the program.
    NotFound,
    /// Stopped on request before everything was done. What was finished is kept.
    Stopped,
}

impl Exit {
    /// The number the process ends with.
    #[must_use]
    pub fn code(self) -> u8 {
        match self {
            Self::Done => 0,
            Self::Errors => 1,
            Self::Usage => 2,
            Self::Unreadable => 3,
            Self::Blocked => 4,
            Self::NotFound => 5,
            Self::Stopped => 6,
        }
    }
}

impl From<Exit> for ExitCode {
    fn from(exit: Exit) -> Self {
        Self::from(exit.code())
    }
}
