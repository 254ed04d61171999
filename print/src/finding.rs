//! What a check has to say: errors that stop the file from being made, and what a person should look at.

use std::collections::BTreeMap;
use std::fmt;

use serde::{Deserialize, Serialize};

use crate::unit::Rect;

/// How serious a finding is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Severity {
    /// No file is made.
    Error,
    /// The file is made; someone should look before it goes to the print shop.
    Warning,
    /// Measured and right; shown so that a person can see what was looked at.
    Pass,
}

/// Where on the sheet a finding is.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Place {
    /// The page, counted from 0.
    pub page: usize,
    /// The area, in points from the upper left corner of the trimmed sheet.
    pub rect: Rect,
}

/// One finding: a code with its arguments as data, and the same in English.
///
/// The app shows the message `preflight-<code>` of its own languages with these arguments;
/// [`PREFLIGHT_CODES`] lists every code with the arguments it carries.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PreflightItem {
    /// Which finding: one of [`PREFLIGHT_CODES`].
    pub code: String,
    /// How serious.
    pub severity: Severity,
    /// Where, if it is at a place.
    pub place: Option<Place>,
    /// What the message speaks of, by name.
    pub args: BTreeMap<String, String>,
    /// The message in English: what, where, what to do next.
    pub message: String,
}

impl PreflightItem {
    pub(crate) fn new(code: &'static str, severity: Severity, message: String) -> Self {
        Self { code: code.to_owned(), severity, place: None, args: BTreeMap::new(), message }
    }

    pub(crate) fn error(code: &'static str, message: String) -> Self {
        Self::new(code, Severity::Error, message)
    }

    pub(crate) fn warning(code: &'static str, message: String) -> Self {
        Self::new(code, Severity::Warning, message)
    }

    pub(crate) fn pass(code: &'static str, message: String) -> Self {
        Self::new(code, Severity::Pass, message)
    }

    pub(crate) fn arg(mut self, name: &str, value: impl fmt::Display) -> Self {
        self.args.insert(name.to_owned(), value.to_string());
        self
    }

    pub(crate) fn at(mut self, page: usize, rect: Rect) -> Self {
        self.place = Some(Place { page, rect });
        self
    }
}

/// Why no file was made: one error or more, and after them, as warnings, what would do instead.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PrintError {
    /// The errors, in the order of the job, and what would do instead.
    pub items: Vec<PreflightItem>,
}

impl PrintError {
    /// The errors alone, without what would do instead.
    pub fn errors(&self) -> impl Iterator<Item = &PreflightItem> {
        self.items.iter().filter(|item| item.severity == Severity::Error)
    }
}

impl From<PreflightItem> for PrintError {
    fn from(item: PreflightItem) -> Self {
        Self { items: vec![item] }
    }
}

impl fmt::Display for PrintError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (index, item) in self.items.iter().enumerate() {
            if index > 0 {
                writeln!(f)?;
            }
            f.write_str(&item.message)?;
        }
        Ok(())
    }
}

impl std::error::Error for PrintError {}

/// Every finding's code with the arguments it carries, for the tables of messages.
pub const PREFLIGHT_CODES: &[(&str, &[&str])] = &[
    ("address-invalid", &["address"]),
    ("bad-character", &["place", "text", "codepoint", "position", "kind"]),
    ("bleed-and-safe-area", &["bleed", "safe"]),
    ("boxes", &["finished", "bleed", "page"]),
    ("boxes-wrong", &["finished", "bleed", "page"]),
    ("contrast", &["ratio", "difference"]),
    ("contrast-low", &["text", "ratio", "least", "difference", "apart"]),
    ("corner-radius", &["radius", "most"]),
    ("date-invalid", &["date"]),
    ("die-line", &[]),
    ("distance-invalid", &["distance"]),
    ("fits-fewer", &["sheet", "tags"]),
    ("fits-larger", &["sheet", "size"]),
    ("folds-clear", &["count", "distance"]),
    ("font-not-embeddable", &["family"]),
    ("font-unreadable", &["family"]),
    ("fonts-embedded", &["fonts", "glyphs"]),
    ("hazard-accepted", &["place", "text"]),
    ("hazard-missing", &["lang", "text"]),
    ("hazards-shown", &["count"]),
    ("imposed", &["up", "across", "down", "width", "height"]),
    ("ink-coverage", &["coverage", "limit"]),
    ("ink-limit-invalid", &["limit"]),
    ("language-count", &["count"]),
    ("language-invalid", &["lang"]),
    ("language-twice", &["lang"]),
    ("languages-differ", &["lang", "first", "what", "section", "line", "ours", "theirs"]),
    ("line-often-wrong", &["text", "percent"]),
    ("lines-contradict", &["lang", "text", "other"]),
    ("missing-glyph", &["place", "lang", "characters", "text"]),
    ("nothing-to-say", &[]),
    ("on-a-fold", &["what", "distance"]),
    ("one-message", &["lines"]),
    ("outside-safe-area", &["what", "safe"]),
    ("pictogram-unknown", &["place", "pictogram"]),
    ("picture-too-small", &["side"]),
    ("picture-without-words", &["what"]),
    ("pictures-have-words", &["count"]),
    ("postal-class", &["class", "length", "height"]),
    ("postal-field-full", &["field", "line", "text"]),
    ("postal-field-missing", &["field"]),
    ("postal-size", &["width", "height"]),
    ("postal-thickness", &["thickness", "least", "most"]),
    ("postal-thickness-unknown", &["least", "most"]),
    ("postal-zone", &["what", "zone"]),
    ("postal-zones", &[]),
    ("press-gutter", &["gutter", "least"]),
    ("press-size", &["width", "height", "least", "most"]),
    ("press-too-small", &["width", "height"]),
    ("press-up", &["up", "most"]),
    ("profile-unusable", &["why", "name", "class", "space"]),
    ("qr-code", &["module", "version", "level", "quiet"]),
    ("qr-not-quiet", &["quiet"]),
    ("qr-dense", &["version", "characters"]),
    ("qr-too-fine", &["module"]),
    ("qr-too-long", &["characters"]),
    ("rule-too-thin", &["width", "least"]),
    ("sign-letters", &["height", "distance"]),
    ("sign-letters-small", &["height", "least", "distance"]),
    ("size-fixed", &["width", "height", "names"]),
    ("size-not-round", &["width", "height"]),
    ("size-out-of-range", &["width", "height", "least", "most"]),
    ("size-too-narrow", &["width", "height", "most"]),
    ("size-zero", &["width", "height"]),
    ("step-invalid", &["number", "why"]),
    ("stock-thickness", &["thickness"]),
    ("text-empty", &["place"]),
    ("text-overlaps", &["text", "other"]),
    ("text-too-long", &["place", "lang", "text", "cut", "floor"]),
    ("ticket-too-long", &["place"]),
    ("too-many-lines", &["sheet", "lines", "languages", "missing", "floor"]),
    ("too-much-ink", &["coverage", "limit"]),
    ("translation-outdated", &["lang", "text"]),
    ("translation-unreviewed", &["lang"]),
    ("type-sizes", &["body", "floor", "distance", "smallest"]),
    ("type-too-small", &["text", "size", "least"]),
    ("word-too-wide", &["place", "lang", "word", "text", "room", "floor"]),
];
