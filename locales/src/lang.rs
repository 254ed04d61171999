//! Languages by their BCP 47 tags: which exist, how they run, and which one a reader gets.

use std::fmt;
use std::str::FromStr;

use crate::number::NumberSymbols;

include!(concat!(env!("OUT_DIR"), "/languages.rs"));

/// The direction in which a language is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Direction {
    /// From left to right.
    LeftToRight,
    /// From right to left.
    RightToLeft,
}

impl Direction {
    /// The value of HTML's `dir` attribute.
    #[must_use]
    pub fn html(self) -> &'static str {
        match self {
            Self::LeftToRight => "ltr",
            Self::RightToLeft => "rtl",
        }
    }
}

/// How far a translation has been looked at. People who speak the language sign a file off in
/// its folder's `meta.json`; nothing else makes it reviewed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ReviewState {
    /// The language the others are translated from.
    Source,
    /// Nobody has signed it off.
    Unreviewed,
    /// Signed off, and the English has not changed since.
    Reviewed {
        /// Who signed it off.
        by: &'static str,
        /// The day, as written (ISO 8601).
        on: &'static str,
    },
    /// Signed off, but the English has changed since.
    Outdated {
        /// Who signed it off.
        by: &'static str,
        /// The day, as written (ISO 8601).
        on: &'static str,
    },
}

impl ReviewState {
    /// Whether a reader should be told that the words may be wrong.
    #[must_use]
    pub fn needs_notice(self) -> bool {
        matches!(self, Self::Unreviewed | Self::Outdated { .. })
    }
}

/// One language that has a folder of messages.
#[derive(Debug)]
pub struct Language {
    /// The BCP 47 tag, which is the folder's name.
    pub tag: &'static str,
    /// Its name in itself, for the language switch.
    pub endonym: &'static str,
    /// The direction it is written in.
    pub direction: Direction,
    /// Whether its readers know ½ and ¼ in measures.
    pub fractions: bool,
    /// Its number symbols; the first row holds where no other names the region.
    pub numbers: &'static [NumberSymbols],
    /// The message files and how far each has been reviewed.
    pub files: &'static [(&'static str, ReviewState)],
}

impl Language {
    /// The language as a tag.
    #[must_use]
    pub fn lang(&self) -> Lang {
        self.tag.parse().unwrap_or_default()
    }

    /// The least reviewed state among the language's files: what a notice on screen speaks of.
    #[must_use]
    pub fn review(&self) -> ReviewState {
        let rank = |state: &ReviewState| match state {
            ReviewState::Unreviewed => 0,
            ReviewState::Outdated { .. } => 1,
            ReviewState::Reviewed { .. } => 2,
            ReviewState::Source => 3,
        };
        self.files.iter().map(|(_, state)| *state).min_by_key(rank).unwrap_or(ReviewState::Unreviewed)
    }
}

/// Every language with a folder of messages, English first, then by tag.
#[must_use]
pub fn supported() -> &'static [Language] {
    LANGUAGES
}

/// A language tag of BCP 47: language, and where they matter script and region ("es", "es-US").
/// The region tells how numbers, times and units are written; the words come from the language.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Lang {
    language: String,
    script: Option<String>,
    region: Option<String>,
    /// Whatever else stands in the tag, such as a dialect.
    variants: Vec<String>,
}

/// A text that is not a language tag.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LangError(String);

impl fmt::Display for LangError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "\"{}\" is not a language tag: write one like \"es\" or \"es-US\"", self.0)
    }
}

impl std::error::Error for LangError {}

impl Default for Lang {
    /// English, the source language.
    fn default() -> Self {
        Self { language: "en".to_owned(), script: None, region: None, variants: Vec::new() }
    }
}

impl fmt::Display for Lang {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.tag())
    }
}

impl FromStr for Lang {
    type Err = LangError;

    /// Reads a tag in any case; extensions ("-u-…", "-x-…") are dropped.
    fn from_str(tag: &str) -> Result<Self, LangError> {
        let trimmed = tag.trim();
        Self::read(trimmed).ok_or_else(|| LangError(trimmed.to_owned()))
    }
}

impl Lang {
    /// The syntax of RFC 5646, section 2.1, from memory: language, script, region, variants, in this
    /// order. Which subtags are registered is not looked up.
    fn read(tag: &str) -> Option<Self> {
        // A one-letter subtag begins an extension, which this crate has no use for.
        let mut subtags = tag.split(['-', '_']).take_while(|subtag| subtag.len() != 1).peekable();
        let language = subtags.next().filter(|s| matches!(s.len(), 2 | 3 | 5..=8) && is_letters(s))?;
        let mut read = Self { language: language.to_ascii_lowercase(), ..Self::default() };
        read.script = subtags.next_if(|s| s.len() == 4 && is_letters(s)).map(|s| {
            let (first, rest) = s.split_at_checked(1).unwrap_or_default();
            first.to_ascii_uppercase() + &rest.to_ascii_lowercase()
        });
        read.region = subtags.next_if(|s| is_region(s)).map(str::to_ascii_uppercase);
        for variant in subtags {
            let digit = variant.starts_with(|c: char| c.is_ascii_digit());
            let long = matches!(variant.len(), 5..=8) || (variant.len() == 4 && digit);
            if !long || !variant.bytes().all(|b| b.is_ascii_alphanumeric()) {
                return None;
            }
            read.variants.push(variant.to_ascii_lowercase());
        }
        Some(read)
    }

    /// The tag, in canonical case.
    #[must_use]
    pub fn tag(&self) -> String {
        let mut tag = self.language.clone();
        for subtag in self.script.iter().chain(&self.region).chain(&self.variants) {
            tag.push('-');
            tag.push_str(subtag);
        }
        tag
    }

    /// The language subtag alone ("es" of "es-US").
    #[must_use]
    pub fn language(&self) -> &str {
        &self.language
    }

    /// The region subtag, if the tag has one.
    #[must_use]
    pub fn region(&self) -> Option<&str> {
        self.region.as_deref()
    }

    /// The same language as written in another region; an unreadable region is ignored.
    #[must_use]
    pub fn with_region(&self, region: &str) -> Self {
        let mut lang = self.clone();
        if is_region(region) {
            lang.region = Some(region.to_ascii_uppercase());
        }
        lang
    }

    /// The language's row in the table of [`supported`] languages, whatever its region.
    #[must_use]
    pub fn entry(&self) -> Option<&'static Language> {
        LANGUAGES
            .iter()
            .find(|language| language.tag == self.tag())
            .or_else(|| LANGUAGES.iter().find(|language| self.answers_to(&language.lang())))
    }

    /// Its name in itself, or the tag for a language we have no messages in.
    #[must_use]
    pub fn endonym(&self) -> String {
        self.entry().map_or_else(|| self.tag(), |language| language.endonym.to_owned())
    }

    /// How it is written. A program may have texts in languages that have no folder here, so the
    /// answer does not depend on the table.
    #[must_use]
    pub fn direction(&self) -> Direction {
        match self.script() {
            "Arab" | "Hebr" | "Thaa" | "Syrc" | "Nkoo" | "Adlm" | "Rohg" => Direction::RightToLeft,
            _ => Direction::LeftToRight,
        }
    }

    /// The script stated in the tag, else the likely one where that decides something: CLDR's
    /// likely subtags for right-to-left languages, and for Chinese, which has two.
    fn script(&self) -> &str {
        if let Some(script) = &self.script {
            return script;
        }
        match (self.language(), self.region()) {
            ("ar" | "fa" | "ur" | "ps" | "ckb" | "sd" | "ug" | "ks" | "lrc" | "mzn", _) => "Arab",
            ("he" | "yi" | "iw" | "ji", _) => "Hebr",
            ("dv", _) => "Thaa",
            ("syr", _) => "Syrc",
            ("nqo", _) => "Nkoo",
            ("rhg", _) => "Rohg",
            ("zh", Some("TW" | "HK" | "MO")) => "Hant",
            ("zh", _) => "Hans",
            _ => "",
        }
    }

    /// Whether someone who asked for `self` can read `offered`: same language, same script.
    fn answers_to(&self, offered: &Self) -> bool {
        self.language == offered.language && self.script() == offered.script()
    }
}

fn is_letters(subtag: &str) -> bool {
    subtag.bytes().all(|b| b.is_ascii_alphabetic())
}

/// Two letters, or the three digits of a region of the world.
fn is_region(subtag: &str) -> bool {
    match subtag.len() {
        2 => is_letters(subtag),
        3 => subtag.bytes().all(|b| b.is_ascii_digit()),
        _ => false,
    }
}

/// Chooses among the languages on offer the one a reader asked for first.
///
/// `wanted` is in order of preference, as browsers give it; unreadable tags are passed over.
/// For each wanted tag an exact match is taken first, then one in the same language and script.
/// `None` when nothing on offer matches: the caller shows the program's own first language.
///
/// ```
/// use locales::{Lang, negotiate};
/// let offered: Vec<Lang> = ["en", "es", "ar"].iter().filter_map(|tag| tag.parse().ok()).collect();
/// let chosen = negotiate(&["fr-CA", "es-MX", "en"], &offered);
/// assert_eq!(chosen.map(Lang::tag), Some("es".to_owned()));
/// ```
#[must_use]
pub fn negotiate<'o>(wanted: &[&str], offered: &'o [Lang]) -> Option<&'o Lang> {
    wanted.iter().filter_map(|tag| tag.parse::<Lang>().ok()).find_map(|want| {
        offered
            .iter()
            .find(|offer| **offer == want)
            .or_else(|| offered.iter().find(|offer| offer.region().is_none() && want.answers_to(offer)))
            .or_else(|| offered.iter().find(|offer| want.answers_to(offer)))
    })
}

/// What speakers of a language call it, by its tag; the tag itself where it is none or we have no messages in it.
#[must_use]
pub fn endonym(tag: &str) -> String {
    tag.parse::<Lang>().map_or_else(|_| tag.to_owned(), |lang| lang.endonym())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn lang(tag: &str) -> Lang {
        tag.parse().unwrap()
    }

    fn check(wanted: &[&str], offered: &[&str], expected: Option<&str>) {
        let offered: Vec<Lang> = offered.iter().map(|tag| lang(tag)).collect();
        assert_eq!(
            negotiate(wanted, &offered).map(Lang::tag).as_deref(),
            expected,
            "{wanted:?} of {offered:?}"
        );
    }

    #[test]
    fn a_reader_gets_the_first_language_they_asked_for_that_is_on_offer() {
        let ours = &["en", "es", "ar"];
        check(&["es"], ours, Some("es"));
        check(&["es-MX", "en"], ours, Some("es"));
        check(&["ES_us"], ours, Some("es"));
        check(&["ar-EG-u-nu-arab"], ours, Some("ar"));
        check(&["fr", "ar"], ours, Some("ar"));
        check(&["fr"], ours, None);
        check(&[], ours, None);
        check(&["", "*", "not a tag", "x-private", "en"], ours, Some("en"));
        check(&["es-MX"], &["en", "es-US", "es"], Some("es"));
        check(&["es-MX"], &["en", "es-US"], Some("es-US"));
        check(&["es-US"], &["es", "es-US"], Some("es-US"));
    }

    #[test]
    fn a_script_the_reader_cannot_read_is_no_match() {
        check(&["zh-TW"], &["en", "zh-Hans"], None);
        check(&["zh-CN"], &["en", "zh-Hans"], Some("zh-Hans"));
        check(&["zh"], &["en", "zh-Hant"], None);
    }

    #[test]
    fn direction_follows_the_script() {
        for (tag, expected) in [
            ("en", "ltr"),
            ("es-US", "ltr"),
            ("ar", "rtl"),
            ("ar-XB", "rtl"),
            ("fa", "rtl"),
            ("he", "rtl"),
            ("ur", "rtl"),
            ("az-Arab", "rtl"),
            ("ar-Latn", "ltr"),
            ("vi", "ltr"),
        ] {
            assert_eq!(lang(tag).direction().html(), expected, "{tag}");
        }
        for language in supported() {
            assert_eq!(language.direction, language.lang().direction(), "{}/meta.json", language.tag);
        }
    }

    #[test]
    fn tags_are_canonical_and_regions_can_be_set() {
        assert_eq!(lang("EN-us").tag(), "en-US");
        assert_eq!(lang("zh_hANT-tw").tag(), "zh-Hant-TW");
        assert_eq!(lang("de-419-1996-u-co-phonebk").tag(), "de-419-1996");
        for broken in ["", "e", "engl", "en-", "en-US-Latn", "en-waytoolong", "1en", "ελ"] {
            assert!(broken.parse::<Lang>().is_err(), "{broken}");
        }
        assert_eq!(lang("es").with_region("US").tag(), "es-US");
        assert_eq!(lang("es").with_region("what").tag(), "es");
        assert_eq!(lang("es-US").endonym(), "Español");
        assert_eq!(lang("zh-CN").endonym(), "简体中文");
        assert_eq!(lang("is").endonym(), "is");
        assert_eq!(endonym("ar"), "العربية");
        assert_eq!(endonym("no tag"), "no tag");
        assert_eq!(Lang::default().tag(), "en");
        assert_eq!(
            "12".parse::<Lang>().unwrap_err().to_string(),
            "\"12\" is not a language tag: write one like \"es\" or \"es-US\""
        );
    }

    #[test]
    fn english_is_the_source_and_comes_first() {
        assert_eq!(supported()[0].tag, "en");
        assert_eq!(supported()[0].review(), ReviewState::Source);
        for language in &supported()[1..] {
            assert_ne!(language.review(), ReviewState::Source, "{}", language.tag);
        }
    }
}
