//! Whether what residents read is short in every language: the length of its sentences, and how many
//! words and letters a language needs for what English says.
//!
//! A "word" is what stands between spaces. Chinese puts none, so its unit is the character; a word is
//! one or two of them.

#![expect(clippy::unwrap_used, reason = "helpers of tests may stop a test")]

use std::collections::BTreeMap;
use std::fmt::Write;

use locales::supported;

mod reading;

use reading::{sentences, texts, words};

/// What a language may use.
struct Limit {
    tag: &'static str,
    /// Words in the middle sentence.
    middle: usize,
    /// Words in the longest sentence. Where words stand alone as in English: the 25 words beyond which
    /// the British government's guidance on writing for the web has a sentence split (from memory).
    longest: usize,
    /// Words for a hundred of English.
    words: usize,
    /// Letters for a hundred of English.
    letters: usize,
}

/// Letters for a hundred of English that a translation of a long text may take: 130, says the table of
/// expected growth from IBM that the W3C quotes in "Text size in translation" (from memory). A tenth
/// less is allowed, because the sheets are laid out for languages that grow by a fifth.
const GROWTH: usize = 120;

const LIMITS: &[Limit] = &[
    Limit { tag: "en", middle: 9, longest: 25, words: 100, letters: 100 },
    // Articles and prepositions stand apart as in English, endings replace pronouns.
    Limit { tag: "es", middle: 9, longest: 25, words: 105, letters: GROWTH },
    Limit { tag: "pt-BR", middle: 9, longest: 25, words: 105, letters: GROWTH },
    // Both halves of "ne ... pas" and the little words of a verb are words too.
    Limit { tag: "fr", middle: 9, longest: 25, words: 110, letters: GROWTH },
    // What others say by endings, Haitian Creole says by words of two or three letters.
    Limit { tag: "ht", middle: 9, longest: 25, words: 110, letters: 100 },
    // Every syllable stands alone.
    Limit { tag: "vi", middle: 10, longest: 25, words: 110, letters: 100 },
    // Long verbs, few articles.
    Limit { tag: "fil", middle: 9, longest: 25, words: 100, letters: GROWTH },
    // Postpositions stand apart, articles are missing.
    Limit { tag: "hi", middle: 9, longest: 25, words: 105, letters: 105 },
    // No articles: three words for four of English.
    Limit { tag: "ru", middle: 7, longest: 20, words: 85, letters: 105 },
    // Articles, prepositions and pronouns are written together with a word, vowels are not written.
    Limit { tag: "ar", middle: 7, longest: 20, words: 85, letters: 90 },
    // Particles are written together with a word; a letter is a syllable.
    Limit { tag: "ko", middle: 6, longest: 17, words: 75, letters: 60 },
    // Counted in characters: two for a word, at most.
    Limit { tag: "zh-Hans", middle: 12, longest: 32, words: 150, letters: 45 },
];

/// The units that sentences of a language are measured in.
fn length(tag: &str, text: &str) -> usize {
    if tag == "zh-Hans" {
        let han = text.chars().filter(|c| matches!(c, '\u{4e00}'..='\u{9fff}')).count();
        han + words(text).filter(|word| word.is_ascii()).count()
    } else {
        words(text).count()
    }
}

fn letters(text: &str) -> usize {
    text.chars().filter(|c| c.is_alphanumeric()).count()
}

/// Both texts of every message that says a sentence in English, and its key.
fn pairs(tag: &str) -> Vec<(String, String, String)> {
    let english = texts("en");
    let mut own = texts(tag);
    let mut found = Vec::new();
    for (source, all) in english {
        let mut here: BTreeMap<String, String> = own.remove(&source).unwrap_or_default();
        for (key, text) in all {
            if words(&text).count() < 5 {
                continue;
            }
            if let Some(own) = here.remove(&key) {
                found.push((key, text, own));
            }
        }
    }
    found
}

/// Everything that is too long.
fn too_long(limit: &Limit, pairs: &[(String, String, String)]) -> String {
    let mut said = String::new();
    let mut lengths = Vec::new();
    let (mut words_here, mut letters_here, mut words_there, mut letters_there) = (0, 0, 0, 0);
    for (key, english, own) in pairs {
        for sentence in sentences(own) {
            let length = length(limit.tag, sentence);
            lengths.push(length);
            if length > limit.longest {
                writeln!(said, "  {key} has a sentence of {length} words: {sentence}").unwrap();
            }
        }
        words_here += length(limit.tag, own);
        letters_here += letters(own);
        words_there += words(english).count();
        letters_there += letters(english);
    }
    lengths.sort_unstable();
    for (what, is, most) in [
        ("words in the middle sentence", lengths.get(lengths.len() / 2).copied().unwrap_or(0), limit.middle),
        ("words for a hundred of English", words_here * 100 / words_there.max(1), limit.words),
        ("letters for a hundred of English", letters_here * 100 / letters_there.max(1), limit.letters),
    ] {
        if is > most {
            writeln!(said, "  {is} {what}, not {most}").unwrap();
        }
    }
    said
}

#[test]
fn no_language_needs_long_sentences_or_many_words() {
    let mut said = String::new();
    for language in supported() {
        let limit = LIMITS.iter().find(|limit| limit.tag == language.tag);
        let limit = limit.unwrap_or_else(|| panic!("{} has no limits yet: add them", language.tag));
        let pairs = pairs(language.tag);
        assert!(pairs.len() > 250, "{}: only {} texts were compared", language.tag, pairs.len());
        let long = too_long(limit, &pairs);
        if !long.is_empty() {
            writeln!(said, "{}:\n{long}", language.tag).unwrap();
        }
    }
    assert!(said.is_empty(), "say it in fewer words:\n{said}");
}

/// The limits can be passed by nothing that says everything twice.
#[test]
fn saying_everything_twice_is_noticed() {
    for limit in LIMITS {
        let twice: Vec<_> = pairs(limit.tag)
            .into_iter()
            .map(|(key, english, own)| (key, english, format!("{own} {own}")))
            .collect();
        let said = too_long(limit, &twice);
        assert!(said.contains("words for a hundred"), "{}: {said}", limit.tag);
        assert!(said.contains("letters for a hundred"), "{}: {said}", limit.tag);
        let joined: Vec<_> = twice
            .into_iter()
            .map(|(key, english, own)| (key, english, own.replace(['.', '。', '।', '!', '?', '؟'], ",")))
            .collect();
        assert!(too_long(limit, &joined).contains("has a sentence of"), "{}", limit.tag);
    }
}
