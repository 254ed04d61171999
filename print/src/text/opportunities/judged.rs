//! Line breaks and directions against the Unicode Consortium's own tests.
//!
//! Debian's `unicode-data` has those of Unicode 15.0: the version of the line breaking crate; the bidirectional crate is
//! of 16.0, in which no class of a character of 15.0 changed that these tests use.

use unicode_bidi::{BidiInfo, Level};
use unicode_linebreak::{BreakClass, break_property};

use super::legal;

/// A file of Debian's `unicode-data`.
fn read(file: &str) -> String {
    std::fs::read_to_string(format!("/usr/share/unicode/{file}")).unwrap_or_else(|error| {
        panic!(
            "this test needs {file} ({error}); install it with `apt-get update && apt-get install -y \
             --no-install-recommends unicode-data`"
        )
    })
}

fn characters(codes: &str) -> String {
    codes
        .split_whitespace()
        .map(|code| char::from_u32(u32::from_str_radix(code, 16).expect("a code")).expect("a character"))
        .collect()
}

#[test]
fn lines_break_as_unicode_says() {
    let file = read("auxiliary/LineBreakTest.txt");
    assert!(file.starts_with("# LineBreakTest-15.0.0.txt"), "another version than the crate's");
    assert_eq!(unicode_linebreak::UNICODE_VERSION, (15, 0, 0));
    let (mut judged, mut numbers, mut wrong) = (0, 0, Vec::new());
    for line in file.lines() {
        let test = line.split('#').next().unwrap_or_default();
        if test.trim().is_empty() {
            continue;
        }
        let mut text = String::new();
        let mut breaks = Vec::new();
        for token in test.split_whitespace() {
            match token {
                "÷" => breaks.push(text.len()),
                "×" => {}
                code => text.push_str(&characters(code)),
            }
        }
        breaks.retain(|&at| at > 0);
        judged += 1;
        let found = legal(&text);
        let differing: Vec<usize> = found
            .iter()
            .chain(&breaks)
            .copied()
            .filter(|at| found.contains(at) != breaks.contains(at))
            .collect();
        if differing.is_empty() {
            continue;
        }
        // The file follows rule LB25 as tailored in UAX 14, section 8.2, example 7; ours is the rule as it stands,
        // which joins some pairs of which the tailored one asks whether a whole number is there. It breaks less.
        if differing.iter().all(|&at| !found.contains(&at) && joined_by_lb25(&text, at)) {
            numbers += 1;
        } else {
            wrong.push(test);
        }
    }
    // A character without a meaning yet before a skin tone (LB30b): it has no glyph, and is refused before.
    assert_eq!(wrong, ["× 1F02C × 1F3FF ÷\t"], "of {judged}");
    assert!(judged > 7_500 && numbers < 40, "{judged} judged, {numbers} of them left to the tailored rule");
}

/// The pairs that LB25 joins without looking at what is around them.
fn joined_by_lb25(text: &str, at: usize) -> bool {
    use BreakClass::*;
    let class = |c: char| break_property(u32::from(c));
    let before = text[..at].chars().rev().map(class).find(|class| *class != CombiningMark);
    let after = text[at..].chars().next().map(class);
    matches!(
        (before, after),
        (Some(ClosePunctuation | CloseParenthesis), Some(Postfix | Prefix))
            | (Some(Postfix | Prefix), Some(OpenPunctuation))
            | (Some(InfixSeparator | Symbol), Some(Numeric))
    )
}

#[test]
fn directions_are_as_unicode_says() {
    let file = read("BidiCharacterTest.txt");
    let (mut judged, mut several, mut wrong) = (0, 0, Vec::new());
    for line in file.lines().filter(|line| !line.is_empty() && !line.starts_with('#')) {
        let fields: Vec<&str> = line.split(';').collect();
        let [codes, direction, paragraph, levels, order] = fields.as_slice() else { panic!("{line}") };
        let text = characters(codes);
        let base = match *direction {
            "0" => Some(Level::ltr()),
            "1" => Some(Level::rtl()),
            _ => None,
        };
        let bidi = BidiInfo::new(&text, base);
        // A paragraph separator makes two; those are refused before, and the file's expectation is of one.
        let [whole] = bidi.paragraphs.as_slice() else {
            several += 1;
            continue;
        };
        judged += 1;
        let (resolved, runs) = bidi.visual_runs(whole, whole.range.clone());
        let starts: Vec<usize> = text.char_indices().map(|(at, _)| at).collect();
        let expected: Vec<Option<u8>> = levels.split_whitespace().map(|level| level.parse().ok()).collect();
        let same_levels = starts
            .iter()
            .zip(&expected)
            .all(|(&at, level)| level.is_none_or(|level| resolved[at].number() == level));
        // Characters that the algorithm removes (marked x) have no place in the order.
        let mut found = Vec::new();
        for run in runs {
            let mut places: Vec<usize> = (0..starts.len()).filter(|&i| run.contains(&starts[i])).collect();
            if resolved[run.start].is_rtl() {
                places.reverse();
            }
            found.extend(places.into_iter().filter(|&place| expected[place].is_some()));
        }
        let order: Vec<usize> =
            order.split_whitespace().map(|place| place.parse().expect("a place")).collect();
        if whole.level.number().to_string() != *paragraph || !same_levels || found != order {
            wrong.push(line);
        }
    }
    assert!(wrong.is_empty(), "{} of {judged}, such as {}", wrong.len(), wrong[0]);
    assert!(judged > 91_000, "{judged} judged, {several} of several paragraphs");
}
