//! One message file taken apart: keys, placeholders, choices.

use std::collections::BTreeSet;

use fluent_syntax::ast;
use fluent_syntax::parser::parse;

use super::{Fault, FaultKind};

/// One message or one attribute of a message.
#[derive(Debug, Clone, Default)]
pub struct Entry {
    /// Language and file ("es/resident").
    pub place: String,
    /// The key; an attribute stands after a dot.
    pub key: String,
    /// Its words, all variants, without placeholders.
    pub text: String,
    /// The names of its placeholders and of the values it chooses by.
    pub placeholders: BTreeSet<String>,
    /// Messages it refers to.
    pub references: BTreeSet<String>,
    /// Functions it calls. We define none.
    pub functions: BTreeSet<String>,
    /// Its choices.
    pub selectors: Vec<Selector>,
}

/// One choice within a message.
#[derive(Debug, Clone, Default)]
pub struct Selector {
    /// The value it chooses by.
    pub by: String,
    /// The names of its variants.
    pub variants: BTreeSet<String>,
}

impl Selector {
    /// Whether it chooses a plural form: its variants are plural categories, at least one besides
    /// "other", which alone could be any choice's last resort.
    #[must_use]
    pub fn is_plural(&self) -> bool {
        let category = |name: &str| matches!(name, "zero" | "one" | "two" | "few" | "many");
        self.variants.contains("other")
            && self.variants.iter().any(|name| category(name))
            && self
                .variants
                .iter()
                .all(|name| category(name) || name == "other" || name.parse::<f64>().is_ok())
    }
}

/// Takes a file apart. What cannot be read becomes a fault, the rest is returned.
pub fn entries(place: &str, text: &str, faults: &mut Vec<Fault>) -> Vec<Entry> {
    let resource = match parse(text) {
        Ok(resource) => resource,
        Err((resource, errors)) => {
            for error in errors {
                let line = text.get(..error.pos.start).unwrap_or(text).matches('\n').count() + 1;
                let near = text.lines().nth(line - 1).unwrap_or_default().trim().to_owned();
                faults.push(Fault { place: place.to_owned(), key: near, kind: FaultKind::Unreadable(line) });
            }
            resource
        }
    };
    let mut found = Vec::new();
    for entry in &resource.body {
        let (id, value, attributes) = match entry {
            ast::Entry::Message(m) => (m.id.name.to_owned(), m.value.as_ref(), &m.attributes),
            ast::Entry::Term(t) => (format!("-{}", t.id.name), Some(&t.value), &t.attributes),
            _ => continue,
        };
        if let Some(pattern) = value {
            found.push(take_apart(place, id.clone(), pattern));
        }
        for attribute in attributes {
            found.push(take_apart(place, format!("{id}.{}", attribute.id.name), &attribute.value));
        }
    }
    found
}

fn take_apart(place: &str, key: String, pattern: &ast::Pattern<&str>) -> Entry {
    let mut entry = Entry { place: place.to_owned(), key, ..Entry::default() };
    read_pattern(pattern, &mut entry);
    entry
}

fn read_pattern(pattern: &ast::Pattern<&str>, entry: &mut Entry) {
    for element in &pattern.elements {
        match element {
            ast::PatternElement::TextElement { value } => entry.text.push_str(value),
            ast::PatternElement::Placeable { expression } => read_expression(expression, entry),
        }
    }
}

fn read_expression(expression: &ast::Expression<&str>, entry: &mut Entry) {
    match expression {
        ast::Expression::Inline(inline) => read_inline(inline, entry),
        ast::Expression::Select { selector, variants } => {
            read_inline(selector, entry);
            let by = match selector {
                ast::InlineExpression::VariableReference { id } => id.name.to_owned(),
                _ => String::new(),
            };
            let names = variants.iter().map(|variant| match &variant.key {
                ast::VariantKey::Identifier { name } => (*name).to_owned(),
                ast::VariantKey::NumberLiteral { value } => (*value).to_owned(),
            });
            entry.selectors.push(Selector { by, variants: names.collect() });
            for variant in variants {
                entry.text.push('\n');
                read_pattern(&variant.value, entry);
            }
        }
    }
}

fn read_inline(inline: &ast::InlineExpression<&str>, entry: &mut Entry) {
    match inline {
        ast::InlineExpression::VariableReference { id } => {
            entry.placeholders.insert(id.name.to_owned());
        }
        ast::InlineExpression::MessageReference { id, attribute } => {
            let attribute = attribute.as_ref().map(|a| format!(".{}", a.name)).unwrap_or_default();
            entry.references.insert(format!("{}{attribute}", id.name));
        }
        ast::InlineExpression::TermReference { id, .. } => {
            entry.references.insert(format!("-{}", id.name));
        }
        ast::InlineExpression::FunctionReference { id, .. } => {
            entry.functions.insert(id.name.to_owned());
        }
        ast::InlineExpression::Placeable { expression } => read_expression(expression, entry),
        ast::InlineExpression::StringLiteral { .. } | ast::InlineExpression::NumberLiteral { .. } => {}
    }
}
