//! The texts that residents read, taken apart into sentences and words, for the tests of how easy
//! and how long they are.

use std::collections::BTreeMap;

use guide_data::{Program, demo_json, demo_towns, each_text};
use locales::check;

/// The message files whose texts residents meet, on a phone, a sheet, a plain page or a notice. The
/// others are for coordinators (`coordinator`, `cli`, `print`), names of things (`items`) and
/// patterns of numbers and dates (`formats`).
pub(crate) const FILES: [&str; 6] = ["answers", "compare", "facts", "pages", "resident", "sheets"];

/// Every text by its source, a message file or a program, and by its key. A text without words of
/// its own, such as "{ $fact }: { $value }", is there too.
pub(crate) fn texts(tag: &str) -> BTreeMap<String, BTreeMap<String, String>> {
    let mut found: BTreeMap<String, BTreeMap<String, String>> = BTreeMap::new();
    for (file, text) in locales::sources(tag) {
        let name = file.trim_end_matches(".ftl");
        if !FILES.contains(&name) {
            continue;
        }
        let mut faults = Vec::new();
        let all = check::entries(&format!("{tag}/{name}"), text, &mut faults);
        assert_eq!(faults, []);
        let told = all.into_iter().filter(|entry| !is_report(&entry.key));
        found.insert(name.to_owned(), told.map(|entry| (entry.key, entry.text)).collect());
    }
    let programs = std::iter::once(Program::from_json(demo_json()).unwrap()).chain(demo_towns());
    for program in programs {
        let mut own = BTreeMap::new();
        each_text(&program, &mut |key, text| {
            if let Some(words) = text.get(tag).filter(|_| is_told(key)) {
                own.insert(key.to_owned(), words.to_owned());
            }
        });
        // A town repeats most of what the county says; it is counted once.
        for (_, earlier) in found.iter().filter(|(name, _)| name.starts_with("program ")) {
            own.retain(|key, words| earlier.get(key) != Some(words));
        }
        found.insert(format!("program {}", program.id), own);
    }
    found
}

/// What comparing programs says to coordinators, in the same file as the notice for residents.
fn is_report(key: &str) -> bool {
    key.starts_with("untrue-") || key.starts_with("regional-")
}

/// Texts of a program that tell residents something: no names, and no limits of machines.
fn is_told(key: &str) -> bool {
    let (kind, rest) = key.split_once('.').unwrap_or((key, ""));
    match kind {
        "rule" | "step" | "print" => true,
        "container" | "channel" | "site" => rest.contains('.'),
        _ => false,
    }
}

/// A text's sentences. As Flesch counted (1948), each unit of thought that stands by itself is one
/// when its end is marked by a full stop, a question or exclamation mark, a semicolon or a colon. A
/// mark inside of a word or a number ("3.5", "8:00") ends nothing; Chinese puts no space after one.
pub(crate) fn sentences(text: &str) -> Vec<&str> {
    const SPACED: [char; 10] = ['.', '!', '?', ':', ';', '…', '؟', '؛', '।', '\n'];
    const UNSPACED: [char; 5] = ['。', '！', '？', '：', '；'];
    let mut found = Vec::new();
    let mut rest = text;
    let mut from = 0;
    while let Some(at) =
        rest.get(from..).and_then(|r| r.find(|c| SPACED.contains(&c) || UNSPACED.contains(&c)))
    {
        let mark = rest[from + at..].chars().next().unwrap();
        let end = from + at + mark.len_utf8();
        // A closing quotation mark may stand between the mark and the space.
        let next = rest[end..].trim_start_matches(['”', '"', '»', '’', ')']);
        if UNSPACED.contains(&mark)
            || mark == '\n'
            || next.is_empty()
            || next.starts_with(char::is_whitespace)
        {
            found.push(&rest[..end]);
            rest = &rest[end..];
            from = 0;
        } else {
            from = end;
        }
    }
    found.push(rest);
    found.retain(|sentence| words(sentence).next().is_some());
    found
}

/// The words of a text: what stands between spaces and hyphens, bare of marks, if it holds a letter.
pub(crate) fn words(text: &str) -> impl Iterator<Item = &str> {
    text.split(|c: char| c.is_whitespace() || matches!(c, '-' | '–' | '/' | '+'))
        .map(|word| word.trim_matches(|c: char| !c.is_alphanumeric()))
        .filter(|word| word.chars().any(char::is_alphabetic))
}
