//! Telephone numbers inside text: kept on one line, and kept in order in right-to-left text.
//!
//! The bidirectional algorithm takes "555-0142" after Arabic letters for two numbers and swaps them (rules W2
//! and W4 of UAX 9). UAX 9 lets a higher protocol add isolates (HL3); here a telephone number is one.

use std::ops::Range;

/// Left-to-right isolate, and its end.
const ISOLATE: char = '\u{2066}';
const END: char = '\u{2069}';

/// Where the telephone numbers are: digits, spaces and `+ ( ) - . /` from a digit, `+` or `(` to a digit, with
/// a separator and seven digits at least.
pub(super) fn numbers(text: &str) -> Vec<Range<usize>> {
    let mut found = Vec::new();
    let mut start: Option<usize> = None;
    let mut end = 0;
    let mut digits = 0;
    let mut separators = 0;
    let mut pending = 0;
    let mut finish = |start: &mut Option<usize>, end: usize, digits: usize, separators: usize| {
        if let Some(from) = start.take()
            && digits >= 7
            && separators > 0
        {
            found.push(from..end);
        }
    };
    for (at, c) in text.char_indices() {
        if c.is_ascii_digit() {
            if start.is_none() {
                (start, digits, separators, pending) = (Some(at), 0, 0, 0);
            }
            digits += 1;
            separators += pending;
            pending = 0;
            end = at + 1;
        } else if start.is_none() && matches!(c, '+' | '(') {
            (start, digits, separators, pending, end) = (Some(at), 0, 0, 0, at + 1);
        } else if start.is_some() && matches!(c, ' ' | '\u{A0}' | '(' | ')' | '-' | '.' | '/' | '\u{2011}') {
            pending += 1;
        } else {
            finish(&mut start, end, digits, separators);
        }
    }
    finish(&mut start, end, digits, separators);
    found
}

/// The text with each telephone number isolated, unless it stands in isolates already.
pub(super) fn isolated(text: &str) -> String {
    let mut out = String::with_capacity(text.len() + 12);
    let mut from = 0;
    for range in numbers(text) {
        let (before, number) =
            (text.get(from..range.start).unwrap_or(""), text.get(range.clone()).unwrap_or(""));
        out.push_str(before);
        if before.ends_with(['\u{2066}', '\u{2067}', '\u{2068}']) {
            out.push_str(number);
        } else {
            out.push(ISOLATE);
            out.push_str(number);
            out.push(END);
        }
        from = range.end;
    }
    out.push_str(text.get(from..).unwrap_or(""));
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn telephone_numbers_are_found() {
        for (text, expected) in [
            ("Call 555-0142", vec!["555-0142"]),
            ("(555) 555-0142 or +1 555 555 0143.", vec!["(555) 555-0142", "+1 555 555 0143"]),
            ("2 in x 2 in", vec![]),
            ("room 12, 2026-11-25", vec!["2026-11-25"]),
            ("12345678", vec![]),
        ] {
            let found: Vec<&str> = numbers(text).into_iter().map(|range| &text[range]).collect();
            assert_eq!(found, expected, "{text}");
        }
    }

    #[test]
    fn numbers_are_isolated_once() {
        assert_eq!(isolated("هاتف: 555-0142"), "هاتف: \u{2066}555-0142\u{2069}");
        let already = "هاتف: \u{2068}555-0142\u{2069}";
        assert_eq!(isolated(already), already);
    }
}
