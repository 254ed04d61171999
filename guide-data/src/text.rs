//! Texts a coordinator writes, in one or several languages, each with its review state.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

/// A text in several languages, by BCP 47 tag. An empty text is one nobody has written.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(transparent)]
pub struct Text(pub BTreeMap<String, Translation>);

/// One language's wording. In files a plain string is an unreviewed wording.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(from = "Written", into = "Written")]
pub struct Translation {
    /// The words.
    pub text: String,
    /// Who signed the translation off; nobody means unreviewed.
    pub reviewed_by: Option<String>,
    /// The source wording that was translated. When the source has changed since, the
    /// translation is outdated.
    pub translates: Option<String>,
}

/// How a translation appears in a file: a string when there is nothing else to say.
#[derive(Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(untagged)]
enum Written {
    Plain(String),
    Full {
        text: String,
        #[serde(default, skip_serializing_if = "Option::is_none")]
        reviewed_by: Option<String>,
        #[serde(default, skip_serializing_if = "Option::is_none")]
        translates: Option<String>,
    },
}

impl From<Written> for Translation {
    fn from(written: Written) -> Self {
        match written {
            Written::Plain(text) => Self { text, reviewed_by: None, translates: None },
            Written::Full { text, reviewed_by, translates } => Self { text, reviewed_by, translates },
        }
    }
}

impl From<Translation> for Written {
    fn from(t: Translation) -> Self {
        if t.reviewed_by.is_none() && t.translates.is_none() {
            Self::Plain(t.text)
        } else {
            Self::Full { text: t.text, reviewed_by: t.reviewed_by, translates: t.translates }
        }
    }
}

/// The state of one language's wording of a text.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum TextState {
    /// There is no wording in this language.
    Missing,
    /// There is a wording that nobody has signed off.
    Unreviewed,
    /// Somebody has signed it off, or it is the source.
    Reviewed,
    /// The source wording has changed since it was translated.
    Outdated,
}

impl Text {
    /// A text in one language.
    #[must_use]
    pub fn of(language: &str, words: &str) -> Self {
        let mut text = Self::default();
        text.set(language, words);
        text
    }

    /// The wording in a language; `None` when missing or blank.
    #[must_use]
    pub fn get(&self, language: &str) -> Option<&str> {
        self.0.get(language).map(|t| t.text.as_str()).filter(|t| !t.trim().is_empty())
    }

    /// The wording in a language, else in the source language.
    #[must_use]
    pub fn or_source(&self, language: &str, source: &str) -> Option<&str> {
        self.get(language).or_else(|| self.get(source))
    }

    /// Replaces the wording in a language; a review belongs to the words reviewed and is dropped
    /// when they change.
    pub fn set(&mut self, language: &str, words: &str) {
        let entry = self.0.entry(language.to_owned()).or_default();
        if entry.text != words {
            *entry = Translation { text: words.to_owned(), ..Translation::default() };
        }
    }

    /// True when no language has any words.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.0.values().all(|t| t.text.trim().is_empty())
    }

    /// The state of a language's wording, given the language the program is written in.
    #[must_use]
    pub fn state(&self, language: &str, source: &str) -> TextState {
        let Some(words) = self.0.get(language).filter(|t| !t.text.trim().is_empty()) else {
            return TextState::Missing;
        };
        if language == source {
            return TextState::Reviewed;
        }
        match (&words.translates, self.get(source)) {
            (Some(was), Some(is)) if was != is => TextState::Outdated,
            _ if words.reviewed_by.is_some() => TextState::Reviewed,
            _ => TextState::Unreviewed,
        }
    }

    /// Signs a language's wording off, remembering the source wording it was checked against.
    pub fn sign_off(&mut self, language: &str, source: &str, reviewer: &str) {
        let original = self.get(source).map(str::to_owned);
        if let Some(t) = self.0.get_mut(language) {
            t.reviewed_by = Some(reviewer.to_owned());
            t.translates = original;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn states_follow_review_and_source() {
        let mut text = Text::of("en", "Rinse it");
        assert_eq!(text.state("es", "en"), TextState::Missing);
        text.set("es", "Enjuáguelo");
        assert_eq!(text.state("es", "en"), TextState::Unreviewed);
        text.sign_off("es", "en", "A. Translator");
        assert_eq!(text.state("es", "en"), TextState::Reviewed);
        text.set("en", "Empty it");
        assert_eq!(text.state("es", "en"), TextState::Outdated);
        text.set("es", "Vacíelo");
        assert_eq!(text.state("es", "en"), TextState::Unreviewed);
        assert_eq!(text.state("en", "en"), TextState::Reviewed);
    }

    #[test]
    fn plain_strings_and_signed_translations_round_trip() {
        let json = r#"{"en":"Rinse it","es":{"text":"Enjuáguelo","reviewed_by":"A. Translator"}}"#;
        let text: Text = serde_json::from_str(json).unwrap();
        assert_eq!(serde_json::to_string(&text).unwrap(), json);
    }
}
