//! The one documented file envelope, and the one way in for everything loaded.

use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};

use crate::program::Program;

/// The `format` of a program file.
pub const PROGRAM_FORMAT: &str = "lidleaf-program";
/// The newest `version` this build reads and the one it writes.
pub const PROGRAM_VERSION: u32 = 1;
/// The largest file taken: a program with thousands of rules in twelve languages is under 4 MB.
pub const LARGEST_FILE: usize = 16 * 1024 * 1024;
/// The deepest nesting of a condition taken: people do not read deeper, and recursion is bounded.
pub const DEEPEST_CONDITION: usize = 24;

/// A file as written: what it is, in which version, and what it holds.
#[derive(Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Envelope<T> {
    /// What kind of file this is.
    pub format: String,
    /// The version of the payload's shape.
    pub version: u32,
    /// The program.
    pub payload: T,
}

/// Why something could not be loaded. Words are in `locales` under `load-<code>`.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum LoadProblem {
    /// The file is larger than [`LARGEST_FILE`].
    TooLarge {
        /// Its size in bytes.
        bytes: usize,
    },
    /// The text ends too early.
    Truncated {
        /// The line (from 1) at which it ends.
        line: usize,
    },
    /// It is not JSON.
    NotJson {
        /// Line, from 1.
        line: usize,
        /// Column, from 1.
        column: usize,
    },
    /// It is JSON, but not a file of ours.
    OtherFormat {
        /// The `format` found, or nothing.
        found: String,
    },
    /// It was written by a newer version.
    Newer {
        /// The version found.
        found: u64,
    },
    /// A value is not of the shape expected.
    Shape {
        /// Where, as a path of names and positions.
        path: String,
        /// What was wrong there.
        detail: String,
    },
    /// A condition is nested too deep to read.
    TooDeep {
        /// The rule's id.
        rule: String,
    },
}

impl LoadProblem {
    /// A stable word for message keys and machine output.
    #[must_use]
    pub fn code(&self) -> &'static str {
        match self {
            Self::TooLarge { .. } => "too-large",
            Self::Truncated { .. } => "truncated",
            Self::NotJson { .. } => "not-json",
            Self::OtherFormat { .. } => "other-format",
            Self::Newer { .. } => "newer",
            Self::Shape { .. } => "shape",
            Self::TooDeep { .. } => "too-deep",
        }
    }

    /// The values its message needs, by placeholder name.
    #[must_use]
    pub fn args(&self) -> Vec<(&'static str, String)> {
        match self {
            Self::TooLarge { bytes } => vec![
                ("megabytes", (bytes / 1_000_000).to_string()),
                ("limit", (LARGEST_FILE / 1_000_000).to_string()),
            ],
            Self::Truncated { line } => vec![("line", line.to_string())],
            Self::NotJson { line, column } => {
                vec![("line", line.to_string()), ("column", column.to_string())]
            }
            Self::OtherFormat { found } => vec![("found", found.clone())],
            Self::Newer { found } => {
                vec![("found", found.to_string()), ("known", PROGRAM_VERSION.to_string())]
            }
            Self::Shape { path, detail } => vec![("path", path.clone()), ("detail", detail.clone())],
            Self::TooDeep { rule } => vec![("rule", rule.clone()), ("limit", DEEPEST_CONDITION.to_string())],
        }
    }
}

/// Reads any JSON into a type, naming the place of a problem.
pub(crate) fn read_json<T: DeserializeOwned>(json: &str) -> Result<T, LoadProblem> {
    if json.len() > LARGEST_FILE {
        return Err(LoadProblem::TooLarge { bytes: json.len() });
    }
    let mut reader = serde_json::Deserializer::from_str(json.trim_start_matches('\u{feff}'));
    let value: T = serde_path_to_error::deserialize(&mut reader).map_err(|e| {
        let path = e.path().to_string();
        problem_of(e.inner(), path)
    })?;
    reader.end().map_err(|e| problem_of(&e, String::from(".")))?;
    Ok(value)
}

fn problem_of(error: &serde_json::Error, path: String) -> LoadProblem {
    use serde_json::error::Category;
    match error.classify() {
        Category::Eof => LoadProblem::Truncated { line: error.line() },
        Category::Syntax | Category::Io => {
            LoadProblem::NotJson { line: error.line(), column: error.column() }
        }
        Category::Data => LoadProblem::Shape { path, detail: error.to_string() },
    }
}

impl Program {
    /// Reads a program file. Findings about its content come from checking it, not from here.
    ///
    /// # Errors
    /// Says what is wrong and where; nothing is changed by a failed load.
    pub fn from_json(json: &str) -> Result<Self, LoadProblem> {
        #[derive(Deserialize)]
        struct Head {
            format: Option<serde_json::Value>,
            version: Option<serde_json::Value>,
        }
        // A list would be read as the head's fields in order: it is none of our files.
        if json.trim_start_matches('\u{feff}').trim_start().starts_with('[') {
            return Err(LoadProblem::OtherFormat { found: String::new() });
        }
        // The head is read first and leniently, so that a newer file is called newer, not broken.
        let head: Head = read_json(json).map_err(|problem| match problem {
            LoadProblem::Shape { .. } => LoadProblem::OtherFormat { found: String::new() },
            other => other,
        })?;
        let found = head.format.as_ref().and_then(|f| f.as_str()).unwrap_or_default();
        if found != PROGRAM_FORMAT {
            return Err(LoadProblem::OtherFormat { found: found.chars().take(60).collect() });
        }
        let version = head.version.as_ref().and_then(serde_json::Value::as_u64).unwrap_or_default();
        if version > u64::from(PROGRAM_VERSION) {
            return Err(LoadProblem::Newer { found: version });
        }
        let envelope: Envelope<Self> = read_json(json)?;
        if let Some(rule) = envelope
            .payload
            .rules
            .iter()
            .find(|r| r.when.as_ref().is_some_and(|c| c.depth() > DEEPEST_CONDITION))
        {
            return Err(LoadProblem::TooDeep { rule: rule.id.clone() });
        }
        Ok(envelope.payload)
    }

    /// Writes a program file: stable order, two-space indents, a final line break.
    #[must_use]
    pub fn to_json(&self) -> String {
        let envelope =
            Envelope { format: PROGRAM_FORMAT.to_owned(), version: PROGRAM_VERSION, payload: self };
        // A program holds only maps with string keys, so writing it cannot fail.
        let mut text = serde_json::to_string_pretty(&envelope).unwrap_or_default();
        text.push('\n');
        text
    }
}

/// The JSON Schema (draft 2020-12) of a program file, generated from the types.
#[cfg(feature = "schema")]
#[must_use]
pub fn program_schema() -> serde_json::Value {
    schemars::schema_for!(Envelope<Program>).to_value()
}
