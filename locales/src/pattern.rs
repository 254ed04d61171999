//! Messages as they are kept after reading, and how one is filled in.
//!
//! The syntax is Project Fluent's, read by its own parser. The filling in is ours, because the plural
//! rules of the published bundle are wrong for Arabic and Russian and cannot be replaced there (see
//! `plural.rs`); it also spares phones 5 KB (brotli). What we do not support (functions, arguments
//! to terms, choosing by anything but a value) is reported when a file is read, not when a reader
//! meets it.

use std::collections::BTreeMap;

use fluent_syntax::ast;
use fluent_syntax::unicode::unescape_unicode_to_string;

use crate::args::{Args, Value};
use crate::lang::{Direction, Lang};
use crate::number::NumberStyle;
use crate::plural::category;

/// One message: text and what is put in between.
pub(crate) type Pattern = Vec<Part>;

#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Part {
    Text(Box<str>),
    /// The value of this name.
    Value(Box<str>),
    /// Another message.
    Message(Box<str>),
    /// A choice by the value of this name.
    Choice {
        by: Box<str>,
        variants: Vec<(Variant, Pattern)>,
        default: usize,
    },
}

#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Variant {
    Name(Box<str>),
    Number(f64),
}

/// The messages of one language by key; attributes have theirs after a dot, terms begin with "-".
pub(crate) type Table = BTreeMap<Box<str>, Pattern>;

/// How deep messages may refer to each other: more is a circle.
const DEEPEST: usize = 8;

/// What a language puts around and into its messages.
#[derive(Debug, Clone)]
pub(crate) struct Manner {
    pub(crate) lang: Lang,
    pub(crate) numbers: NumberStyle,
    pub(crate) isolate: bool,
}

/// Takes a parsed pattern over. Unsupported syntax is named in `unsupported`.
pub(crate) fn take_over(pattern: &ast::Pattern<&str>, unsupported: &mut Vec<String>) -> Pattern {
    let mut parts = Pattern::new();
    for element in &pattern.elements {
        match element {
            ast::PatternElement::TextElement { value } => push_text(&mut parts, value),
            ast::PatternElement::Placeable { expression } => {
                read_expression(expression, &mut parts, unsupported)
            }
        }
    }
    parts
}

fn push_text(parts: &mut Pattern, text: &str) {
    if let Some(Part::Text(before)) = parts.last_mut() {
        *before = format!("{before}{text}").into();
    } else {
        parts.push(Part::Text(text.into()));
    }
}

fn read_expression(expression: &ast::Expression<&str>, parts: &mut Pattern, unsupported: &mut Vec<String>) {
    use ast::InlineExpression as Inline;
    match expression {
        ast::Expression::Inline(Inline::StringLiteral { value }) => {
            push_text(parts, &unescape_unicode_to_string(value));
        }
        ast::Expression::Inline(Inline::NumberLiteral { value }) => push_text(parts, value),
        ast::Expression::Inline(Inline::VariableReference { id }) => parts.push(Part::Value(id.name.into())),
        ast::Expression::Inline(Inline::MessageReference { id, attribute }) => {
            let attribute = attribute.as_ref().map(|a| format!(".{}", a.name)).unwrap_or_default();
            parts.push(Part::Message(format!("{}{attribute}", id.name).into()));
        }
        ast::Expression::Inline(Inline::TermReference { id, attribute: None, arguments: None }) => {
            parts.push(Part::Message(format!("-{}", id.name).into()));
        }
        ast::Expression::Inline(Inline::Placeable { expression }) => {
            read_expression(expression, parts, unsupported)
        }
        ast::Expression::Inline(Inline::FunctionReference { id, .. }) => {
            unsupported.push(format!("the function {}()", id.name));
        }
        ast::Expression::Inline(Inline::TermReference { id, .. }) => {
            unsupported.push(format!("arguments or attributes of the term -{}", id.name));
        }
        ast::Expression::Select { selector: Inline::VariableReference { id }, variants } => {
            let default = variants.iter().position(|variant| variant.default).unwrap_or_default();
            let variants = variants.iter().map(|variant| {
                let key = match &variant.key {
                    ast::VariantKey::Identifier { name } => Variant::Name((*name).into()),
                    ast::VariantKey::NumberLiteral { value } => {
                        Variant::Number(value.parse().unwrap_or(f64::NAN))
                    }
                };
                (key, take_over(&variant.value, unsupported))
            });
            parts.push(Part::Choice { by: id.name.into(), variants: variants.collect(), default });
        }
        ast::Expression::Select { .. } => {
            unsupported.push("a choice that is not by a value such as $count".to_owned())
        }
    }
}

/// Fills a pattern in. A value that is missing shows as its name in braces: checks look for that.
pub(crate) fn fill(pattern: &Pattern, args: &Args<'_>, table: &Table, manner: &Manner) -> String {
    let mut out = String::new();
    fill_into(pattern, args, table, manner, DEEPEST, &mut out);
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

fn fill_into(
    pattern: &Pattern,
    args: &Args<'_>,
    table: &Table,
    manner: &Manner,
    depth: usize,
    out: &mut String,
) {
    // A value that is the whole text has nothing around it to disturb.
    let isolate = manner.isolate && pattern.len() > 1;
    for part in pattern {
        match part {
            Part::Text(text) => out.push_str(text),
            Part::Value(name) => {
                if isolate {
                    let value = match args.get(name) {
                        Some(Value::Text(text)) => text.as_ref(),
                        _ => "",
                    };
                    out.push(opening_isolate(value, manner.lang.direction()));
                }
                match args.get(name) {
                    Some(Value::Text(text)) => out.push_str(text),
                    Some(Value::Number(number)) => out.push_str(&manner.numbers.write(*number, 0, 3)),
                    None => out.push_str(&format!("{{${name}}}")),
                }
                if isolate {
                    out.push('\u{2069}');
                }
            }
            Part::Message(key) => match table.get(key) {
                Some(pattern) if depth > 0 => fill_into(pattern, args, table, manner, depth - 1, out),
                _ => out.push_str(&format!("{{{key}}}")),
            },
            Part::Choice { by, variants, default } => {
                let value = args.get(by);
                let chosen = value
                    .and_then(|value| variants.iter().find(|(key, _)| matches(key, value, &manner.lang)))
                    .or_else(|| variants.get(*default));
                if let Some((_, pattern)) = chosen {
                    fill_into(pattern, args, table, manner, depth, out);
                }
            }
        }
    }
}

#[expect(clippy::float_cmp, reason = "a variant [1] is for the number that was written 1")]
fn matches(key: &Variant, value: &Value<'_>, lang: &Lang) -> bool {
    match (key, value) {
        // Counts may come as text, from findings that travel as JSON.
        (Variant::Name(name), Value::Text(text)) => {
            **name == **text || text.parse().is_ok_and(|number| **name == *category(lang, number))
        }
        (Variant::Name(name), Value::Number(number)) => **name == *category(lang, *number),
        (Variant::Number(wanted), Value::Number(number)) => wanted == number,
        (Variant::Number(_), Value::Text(_)) => false,
    }
}
