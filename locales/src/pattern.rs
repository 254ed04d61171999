//! Messages as they are kept after reading, and how one is filled in.
//!
//! The syntax is Project Fluent's, read by its own parser. The filling in is ours, because the plural
//! rules of the published bundle are wrong for Arabic and Russian and cannot be replaced there (see
//! `plural.rs`). What we do not support (functions, arguments to terms, choosing by anything but a
//! value) is reported when a file is read, not when a reader meets it.
//!
//! A read message is one string: its text, and between control characters, which no text holds, what
//! is put in. Phones are sent these strings, so that none carries a parser of Fluent (13 KB with
//! brotli), and they are filled in as they stand:
//!
//! | written | means |
//! |---|---|
//! | `VALUE name END` | the value of this name |
//! | `MESSAGE key END` | another message |
//! | `CHOICE name END variant… CLOSE` | a choice by the value of this name |
//! | `VARIANT key END message` | a variant; a number's key begins with `#` |
//! | `DEFAULT key END message` | the variant taken when no other is |

use std::collections::BTreeMap;

use fluent_syntax::ast;
use fluent_syntax::unicode::unescape_unicode_to_string;

use crate::args::{Args, Value};
use crate::lang::{Direction, Lang};
use crate::number::{NumberStyle, whole_thousandths};
use crate::plural::category;

const VALUE: char = '\u{1}';
const MESSAGE: char = '\u{2}';
const CHOICE: char = '\u{3}';
const VARIANT: char = '\u{4}';
const DEFAULT: char = '\u{5}';
const CLOSE: char = '\u{6}';
const END: char = '\u{7}';
/// Ends a key and a message where many are written one after the other.
pub(crate) const ENTRY: char = '\u{8}';

const MARKS: [char; 8] = [VALUE, MESSAGE, CHOICE, VARIANT, DEFAULT, CLOSE, END, ENTRY];

/// The messages of one language by key, each as described above; attributes have theirs after a dot,
/// terms begin with "-".
pub(crate) type Table = BTreeMap<Box<str>, Box<str>>;

/// How deep messages may refer to each other, and choices stand in each other: more is a circle.
const DEEPEST: usize = 8;

/// What a language puts around and into its messages.
#[derive(Debug, Clone)]
pub(crate) struct Manner {
    pub(crate) lang: Lang,
    pub(crate) numbers: NumberStyle,
    pub(crate) isolate: bool,
}

/// Takes a parsed pattern over. Unsupported syntax is named in `unsupported`.
pub(crate) fn take_over(pattern: &ast::Pattern<&str>, unsupported: &mut Vec<String>) -> Box<str> {
    let mut out = String::new();
    write_pattern(pattern, DEEPEST, &mut out, unsupported);
    out.into()
}

fn write_pattern(
    pattern: &ast::Pattern<&str>,
    depth: usize,
    out: &mut String,
    unsupported: &mut Vec<String>,
) {
    for element in &pattern.elements {
        match element {
            ast::PatternElement::TextElement { value } => push_text(out, value),
            ast::PatternElement::Placeable { expression } => {
                write_expression(expression, depth, out, unsupported)
            }
        }
    }
}

/// A text loses the marks that would be taken for ours; nobody writes them.
fn push_text(out: &mut String, text: &str) {
    out.extend(text.chars().filter(|c| !MARKS.contains(c)));
}

fn push_named(out: &mut String, mark: char, name: &str) {
    out.push(mark);
    push_text(out, name);
    out.push(END);
}

fn write_expression(
    expression: &ast::Expression<&str>,
    depth: usize,
    out: &mut String,
    unsupported: &mut Vec<String>,
) {
    use ast::InlineExpression as Inline;
    match expression {
        ast::Expression::Inline(Inline::StringLiteral { value }) => {
            push_text(out, &unescape_unicode_to_string(value));
        }
        ast::Expression::Inline(Inline::NumberLiteral { value }) => push_text(out, value),
        ast::Expression::Inline(Inline::VariableReference { id }) => push_named(out, VALUE, id.name),
        ast::Expression::Inline(Inline::MessageReference { id, attribute }) => {
            let attribute = attribute.as_ref().map(|a| format!(".{}", a.name)).unwrap_or_default();
            push_named(out, MESSAGE, &format!("{}{attribute}", id.name));
        }
        ast::Expression::Inline(Inline::TermReference { id, attribute: None, arguments: None }) => {
            push_named(out, MESSAGE, &format!("-{}", id.name));
        }
        ast::Expression::Inline(Inline::Placeable { expression }) => {
            write_expression(expression, depth, out, unsupported)
        }
        ast::Expression::Inline(Inline::FunctionReference { id, .. }) => {
            unsupported.push(format!("the function {}()", id.name));
        }
        ast::Expression::Inline(Inline::TermReference { id, .. }) => {
            unsupported.push(format!("arguments or attributes of the term -{}", id.name));
        }
        ast::Expression::Select { selector: Inline::VariableReference { id }, variants } if depth > 0 => {
            push_named(out, CHOICE, id.name);
            for variant in variants {
                let mark = if variant.default { DEFAULT } else { VARIANT };
                match variant.key {
                    ast::VariantKey::Identifier { name } => push_named(out, mark, name),
                    ast::VariantKey::NumberLiteral { value } if value.parse::<i32>().is_ok() => {
                        push_named(out, mark, &format!("#{value}"));
                    }
                    ast::VariantKey::NumberLiteral { value } => {
                        unsupported.push(format!("the variant [{value}], which is not a whole number"));
                        push_named(out, mark, value);
                    }
                }
                write_pattern(&variant.value, depth - 1, out, unsupported);
            }
            out.push(CLOSE);
        }
        ast::Expression::Select { selector: Inline::VariableReference { .. }, .. } => {
            unsupported.push("choices inside choices inside choices".to_owned());
        }
        ast::Expression::Select { .. } => {
            unsupported.push("a choice that is not by a value such as $count".to_owned())
        }
    }
}

/// Whether a message is written as described above.
pub(crate) fn is_whole(message: &str) -> bool {
    let mut rest = message;
    while let Some(piece) = next_piece(&mut rest, DEEPEST) {
        if matches!(piece, Piece::Broken) {
            return false;
        }
    }
    true
}

/// The keys of the messages that a message refers to, in its variants too.
pub(crate) fn references(message: &str) -> impl Iterator<Item = &str> {
    message.split(MESSAGE).skip(1).filter_map(|after| Some(after.split_once(END)?.0))
}

/// A piece of a message.
enum Piece<'m> {
    Text(&'m str),
    Value(&'m str),
    Message(&'m str),
    /// The name of the value, and the variants as written.
    Choice(&'m str, &'m str),
    /// A mark that does not belong there.
    Broken,
}

/// Takes the next piece off a message.
fn next_piece<'m>(rest: &mut &'m str, depth: usize) -> Option<Piece<'m>> {
    let mark = rest.chars().next()?;
    if !MARKS.contains(&mark) {
        return Some(Piece::Text(take_text(rest)));
    }
    let Some((name, after)) = rest.get(1..).and_then(|after| after.split_once(END)) else {
        *rest = "";
        return Some(Piece::Broken);
    };
    *rest = after;
    let known = !name.contains(MARKS);
    match mark {
        VALUE if known => Some(Piece::Value(name)),
        MESSAGE if known => Some(Piece::Message(name)),
        CHOICE if known && depth > 0 => {
            let variants = *rest;
            while rest.starts_with([VARIANT, DEFAULT]) {
                if take_variant(rest, depth - 1).is_none() {
                    break;
                }
            }
            let length = variants.len() - rest.len();
            match (rest.strip_prefix(CLOSE), variants.get(..length)) {
                (Some(after), Some(variants)) => {
                    *rest = after;
                    Some(Piece::Choice(name, variants))
                }
                _ => {
                    *rest = "";
                    Some(Piece::Broken)
                }
            }
        }
        _ => {
            *rest = "";
            Some(Piece::Broken)
        }
    }
}

/// Takes the text up to the next mark.
fn take_text<'m>(rest: &mut &'m str) -> &'m str {
    let end = rest.find(MARKS).unwrap_or(rest.len());
    let (text, after) = rest.split_at_checked(end).unwrap_or((rest, ""));
    *rest = after;
    text
}

/// Takes the next variant of a choice: whether it is the default, its key, its message.
fn take_variant<'m>(rest: &mut &'m str, depth: usize) -> Option<(bool, &'m str, &'m str)> {
    let default = rest.starts_with(DEFAULT);
    let (key, after) = rest.strip_prefix([VARIANT, DEFAULT])?.split_once(END)?;
    let mut below = after;
    while !below.is_empty() && !below.starts_with([VARIANT, DEFAULT, CLOSE]) {
        if matches!(next_piece(&mut below, depth), Some(Piece::Broken)) {
            return None;
        }
    }
    *rest = below;
    Some((default, key, after.get(..after.len() - below.len())?))
}

/// Fills a message in. A value that is missing shows as its name in braces: checks look for that.
pub(crate) fn fill(message: &str, args: &Args<'_>, table: &Table, manner: &Manner) -> String {
    let mut out = String::new();
    fill_into(message, args, table, manner, DEEPEST, &mut out);
    out
}

/// The mark that opens the isolate around a value. The value's own first strong letter tells its
/// direction; but letters inside isolates do not count (UAX #9, P2), so a value that is made of
/// values alone would be read from left to right: it is a sentence of ours, and runs as ours do.
pub(crate) fn opening_isolate(value: &str, ours: Direction) -> char {
    let (mut depth, mut nested) = (0_usize, false);
    for c in value.chars() {
        match c {
            '\u{2066}'..='\u{2068}' => (depth, nested) = (depth + 1, true),
            '\u{2069}' => depth = depth.saturating_sub(1),
            c if depth == 0 && c.is_alphabetic() => return '\u{2068}',
            _ => {}
        }
    }
    match (nested, ours) {
        (false, _) => '\u{2068}',
        (true, Direction::RightToLeft) => '\u{2067}',
        (true, Direction::LeftToRight) => '\u{2066}',
    }
}

fn fill_into(message: &str, args: &Args<'_>, table: &Table, manner: &Manner, depth: usize, out: &mut String) {
    let mut rest = message;
    let mut first = true;
    while let Some(piece) = next_piece(&mut rest, DEEPEST) {
        // A value that is the whole text has nothing around it to disturb.
        let isolate = manner.isolate && !(first && rest.is_empty());
        first = false;
        match piece {
            Piece::Text(text) => out.push_str(text),
            Piece::Value(name) => {
                let value = args.get(name);
                if isolate {
                    let text = match value {
                        Some(Value::Text(text)) => text.as_ref(),
                        _ => "",
                    };
                    out.push(opening_isolate(text, manner.lang.direction()));
                }
                match value {
                    Some(Value::Text(text)) => out.push_str(text),
                    Some(Value::Number(number)) => out.push_str(&manner.numbers.write(*number, 0, 3)),
                    None => push_missing(out, "{$", name),
                }
                if isolate {
                    out.push('\u{2069}');
                }
            }
            Piece::Message(key) => match table.get(key) {
                Some(message) if depth > 0 => fill_into(message, args, table, manner, depth - 1, out),
                _ => push_missing(out, "{", key),
            },
            Piece::Choice(by, variants) => {
                let value = args.get(by);
                let mut variants = variants;
                let (mut chosen, mut otherwise) = (None, None);
                while let Some((default, key, message)) = take_variant(&mut variants, DEEPEST) {
                    if chosen.is_none() && value.is_some_and(|value| matches(key, value, &manner.lang)) {
                        chosen = Some(message);
                    }
                    if default || otherwise.is_none() {
                        otherwise = Some(message);
                    }
                }
                if let Some(message) = chosen.or(otherwise)
                    && depth > 0
                {
                    fill_into(message, args, table, manner, depth - 1, out);
                }
            }
            Piece::Broken => {}
        }
    }
}

fn push_missing(out: &mut String, opening: &str, name: &str) {
    out.push_str(opening);
    out.push_str(name);
    out.push('}');
}

#[expect(clippy::float_cmp, reason = "a variant [1] is for the number that was written 1")]
fn matches(key: &str, value: &Value<'_>, lang: &Lang) -> bool {
    match (key.strip_prefix('#'), value) {
        // Counts may come as text, from findings that travel as JSON.
        (None, Value::Text(text)) => {
            key == text.as_ref() || decimal(text).is_some_and(|number| key == category(lang, number))
        }
        (None, Value::Number(number)) => key == category(lang, *number),
        (Some(wanted), Value::Number(number)) => {
            wanted.parse::<i32>().is_ok_and(|wanted| f64::from(wanted) == *number)
        }
        (Some(_), Value::Text(_)) => false,
    }
}

/// A number written with digits, and at most three of them after a point: more never chooses a form.
fn decimal(text: &str) -> Option<f64> {
    let digits = text.strip_prefix('-').unwrap_or(text);
    let (whole, fraction) = digits.split_once('.').unwrap_or((digits, ""));
    if whole.is_empty()
        || whole.len() > 12
        || !whole.bytes().chain(fraction.bytes()).all(|b| b.is_ascii_digit())
    {
        return None;
    }
    let digits = whole.bytes().chain(fraction.bytes().chain(*b"000").take(3));
    let thousandths = digits.fold(0_i64, |sum, digit| sum * 10 + i64::from(digit - b'0'));
    Some(whole_thousandths(thousandths))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn filled(message: &str, args: &Args<'_>) -> String {
        let lang = Lang::default();
        let manner = Manner { numbers: NumberStyle::of(&lang), lang, isolate: false };
        fill(message, args, &Table::new(), &manner)
    }

    #[test]
    fn a_message_is_filled_in_as_it_is_written() {
        let message = "a \u{1}x\u{7}, \u{3}n\u{7}\u{4}#0\u{7}none\u{4}one\u{7}one\u{5}other\u{7}\u{1}n\u{7} of them\u{6}.";
        assert!(is_whole(message));
        for (n, expected) in [(0, "a b, none."), (1, "a b, one."), (7, "a b, 7 of them.")] {
            assert_eq!(filled(message, &crate::args!(x = "b", n = n)), expected);
        }
        assert_eq!(filled(message, &crate::args!(n = "1")), "a {$x}, one.");
    }

    #[test]
    fn numbers_in_texts_are_read() {
        for (text, expected) in [
            ("3", Some(3.0)),
            ("0.5", Some(0.5)),
            ("-1.25", Some(1.25)),
            ("1.23456", Some(1.234)),
            ("", None),
            ("x", None),
            (".5", None),
        ] {
            assert_eq!(decimal(text), expected, "{text}");
        }
    }

    #[test]
    fn what_is_not_written_so_is_told_and_never_stops_the_reader() {
        for broken in [
            "\u{1}",
            "\u{1}x",
            "\u{7}",
            "a\u{6}",
            "\u{3}n\u{7}",
            "\u{3}n\u{7}\u{4}one\u{7}x",
            "\u{8}x\u{7}",
            "\u{2}a\u{1}b\u{7}",
            "\u{4}a\u{7}",
        ] {
            assert!(!is_whole(broken), "{broken:?}");
            let _ = filled(broken, &Args::new());
        }
        let deep = format!("{}x{}", "\u{3}n\u{7}\u{5}other\u{7}".repeat(50), "\u{6}".repeat(50));
        assert!(!is_whole(&deep));
        let _ = filled(&deep, &Args::new());
    }
}
