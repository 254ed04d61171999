//! Two made-up languages, generated from English, that show what a screen or sheet does with long
//! words and with right-to-left text before a real translation meets it.

use fluent_syntax::ast;
use fluent_syntax::parser::parse;
use fluent_syntax::serializer::serialize;

/// The tag of the long language. Region XA is set aside for this by CLDR.
pub const LONG: &str = "en-XA";
/// The tag of the right-to-left language. Region XB is set aside for this by CLDR.
pub const RIGHT_TO_LEFT: &str = "ar-XB";

/// English with accents on every letter that has them, and longer by 40 percent, short texts by
/// more: about what translation adds. Placeholders and choices stay.
#[must_use]
pub fn long(english: &str) -> String {
    longer(english, 40)
}

/// The same, longer by so many percent.
#[must_use]
pub fn longer(english: &str, percent: usize) -> String {
    rewrite(english, &|text| text.chars().map(accented).collect(), &|length| {
        let extra = if length < 12 { length } else { length * percent / 100 };
        let filler: String = "ẋẋẋẋẋ ".chars().cycle().take(extra).collect();
        if extra == 0 { String::new() } else { format!(" {}", filler.trim_end()) }
    })
}

/// English with every word turned right to left by an override, as a right-to-left language would
/// run. Digits and placeholders stay as they are.
#[must_use]
pub fn right_to_left(english: &str) -> String {
    rewrite(english, &overridden, &|_| String::new())
}

/// Words between an override and its end; the space around them stays outside, to break lines at.
fn overridden(text: &str) -> String {
    let mut out = String::new();
    let mut word = String::new();
    for c in text.chars().chain(['\n']) {
        if c.is_alphabetic() || c == '\'' || c == '’' {
            word.push(c);
            continue;
        }
        if !word.is_empty() {
            // U+200F keeps what is next to the word right to left, U+202E turns it, U+202C ends that.
            out.push_str(&format!("\u{200f}\u{202e}{word}\u{202c}\u{200f}"));
            word.clear();
        }
        out.push(c);
    }
    out.pop();
    out
}

fn accented(c: char) -> char {
    let (from, to) = ("aceginorsuyACEGINORSUYdhjklwzDHJKLWZ", "åçéĝîñöŕšûýÅÇÉĜÎÑÖŔŠÛÝđĥĵķļŵžĐĤĴĶĻŴŽ");
    from.chars().position(|known| known == c).and_then(|at| to.chars().nth(at)).unwrap_or(c)
}

type Rewrite<'a> = &'a dyn Fn(&str) -> String;
type Tail<'a> = &'a dyn Fn(usize) -> String;

fn rewrite(english: &str, change: Rewrite<'_>, tail: Tail<'_>) -> String {
    let mut resource = match parse(english.to_owned()) {
        Ok(resource) | Err((resource, _)) => resource,
    };
    for entry in &mut resource.body {
        if let ast::Entry::Message(message) = entry {
            if let Some(value) = &mut message.value {
                rewrite_pattern(value, change, tail);
            }
            for attribute in &mut message.attributes {
                rewrite_pattern(&mut attribute.value, change, tail);
            }
        }
    }
    serialize(&resource)
}

fn rewrite_pattern(pattern: &mut ast::Pattern<String>, change: Rewrite<'_>, tail: Tail<'_>) {
    let mut length = 0;
    for element in &mut pattern.elements {
        match element {
            ast::PatternElement::TextElement { value } => {
                length += value.chars().filter(|c| c.is_alphabetic()).count();
                *value = change(value);
            }
            ast::PatternElement::Placeable { expression: ast::Expression::Select { variants, .. } } => {
                for variant in variants {
                    rewrite_pattern(&mut variant.value, change, tail);
                }
            }
            ast::PatternElement::Placeable { .. } => {}
        }
    }
    let tail = tail(length);
    if !tail.is_empty() {
        pattern.elements.push(ast::PatternElement::TextElement { value: tail });
    }
}
