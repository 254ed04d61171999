//! Finds in Rust sources the texts that are, or may be, message keys.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use std::{fs, io};

/// A string literal of a Rust source.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Literal {
    /// The line it begins on, counted from 1.
    pub line: usize,
    /// Its text as written, escapes unresolved: keys have none.
    pub text: String,
    /// The code just before it on its way back to the last `;`, `{` or `}`.
    pub before: String,
    /// The names of the values that follow it in the same call (`t!(m, "key", name = value)`).
    pub named: Vec<String>,
}

/// The string literals of a Rust source, comments and character literals passed over.
#[must_use]
pub fn literals(source: &str) -> Vec<Literal> {
    let chars: Vec<char> = source.chars().collect();
    let at = |i: usize| chars.get(i).copied().unwrap_or('\0');
    let mut found = Vec::new();
    let mut before = String::new();
    let mut line = 1;
    let mut i = 0;
    while i < chars.len() {
        let c = at(i);
        match c {
            '/' if at(i + 1) == '/' => {
                while i < chars.len() && at(i) != '\n' {
                    i += 1;
                }
                continue;
            }
            '/' if at(i + 1) == '*' => {
                let mut depth = 0;
                while i < chars.len() {
                    match (at(i), at(i + 1)) {
                        ('/', '*') => {
                            depth += 1;
                            i += 1;
                        }
                        ('*', '/') => {
                            depth -= 1;
                            i += 1;
                        }
                        ('\n', _) => line += 1,
                        _ => {}
                    }
                    i += 1;
                    if depth == 0 {
                        break;
                    }
                }
                continue;
            }
            // A character literal, not a lifetime: 'x' or '\n' or '"'.
            '\'' if at(i + 1) == '\\' || at(i + 2) == '\'' => {
                i += if at(i + 1) == '\\' { 3 } else { 2 };
                while i < chars.len() && at(i) != '\'' {
                    i += 1;
                }
            }
            'r' if matches!(at(i + 1), '"' | '#')
                && !before.ends_with(|c: char| c.is_alphanumeric() || c == '_') =>
            {
                let hashes = chars.iter().skip(i + 1).take_while(|c| **c == '#').count();
                if at(i + 1 + hashes) == '"' {
                    let start = i + 2 + hashes;
                    let mut end = start;
                    let closes = |end: usize| at(end) == '"' && (1..=hashes).all(|n| at(end + n) == '#');
                    while end < chars.len() && !closes(end) {
                        end += 1;
                    }
                    let text: String = chars.iter().skip(start).take(end - start).collect();
                    let lines = text.matches('\n').count();
                    let named = named_values(&chars, end + hashes + 1);
                    found.push(Literal { line, text, before: before.clone(), named });
                    line += lines;
                    before.push('"');
                    i = end + hashes;
                }
            }
            '"' => {
                let start = line;
                let mut text = String::new();
                i += 1;
                while i < chars.len() && at(i) != '"' {
                    if at(i) == '\\' {
                        text.push(at(i));
                        i += 1;
                    }
                    if at(i) == '\n' {
                        line += 1;
                    }
                    text.push(at(i));
                    i += 1;
                }
                let named = named_values(&chars, i + 1);
                found.push(Literal { line: start, text, before: before.clone(), named });
                before.push('"');
            }
            ';' | '{' | '}' => before.clear(),
            '\n' => line += 1,
            _ if c.is_whitespace() => {}
            _ => before.push(c),
        }
        i += 1;
    }
    found
}

/// The names before a single "=" in what is left of a call, at its own depth.
fn named_values(chars: &[char], from: usize) -> Vec<String> {
    let mut names = Vec::new();
    let mut word = String::new();
    let mut depth = 0_i32;
    let mut quoted = false;
    let mut in_value = false;
    let mut rest = chars.iter().skip(from).copied().peekable();
    while let Some(c) = rest.next() {
        match c {
            '\\' if quoted => {
                rest.next();
            }
            '"' => quoted = !quoted,
            _ if quoted => {}
            '(' | '[' | '{' => depth += 1,
            ')' | ']' | '}' if depth == 0 => break,
            ')' | ']' | '}' => depth -= 1,
            ',' if depth == 0 => {
                word.clear();
                in_value = false;
            }
            // Inside a value "=" names nothing.
            '=' if depth == 0 && !in_value && !word.is_empty() && rest.peek() != Some(&'=') => {
                names.push(std::mem::take(&mut word));
                in_value = true;
            }
            _ if depth == 0 && (c.is_alphanumeric() || c == '_') => word.push(c),
            _ => {}
        }
    }
    names
}

/// Whether the literal is the key of a translating call: `t!(…, "key"`, `.t("key"`, `.find("key"`,
/// `tr("key"`. Keys that are put together from parts are checked through the data instead.
#[must_use]
pub fn keys_asked_for(literal: &Literal) -> bool {
    if literal.text.is_empty() || literal.text.contains(['{', ' ', '\\']) {
        return false;
    }
    let before = literal.before.as_str();
    let call =
        [".t(", ".find(", ".say(", ".maybe(", ".pattern_text("].iter().any(|call| before.ends_with(call));
    let function = before.strip_suffix('(').is_some_and(|rest| {
        rest.strip_suffix("tr")
            .is_some_and(|head| !head.ends_with(|c: char| c.is_alphanumeric() || c == '_' || c == '.'))
    });
    // The first literal of the macro is the key, wherever the messages come from.
    call || function || is_macro_key(before)
}

fn is_macro_key(before: &str) -> bool {
    before.rfind("t!(").is_some_and(|start| {
        let head = before.get(..start).unwrap_or_default();
        let inside = before.get(start + 3..).unwrap_or_default();
        !head.ends_with(|c: char| c.is_alphanumeric() || c == '_') && !inside.contains(['"', '='])
    })
}

/// What the Rust sources of the product say about message keys.
#[derive(Debug, Clone, Default)]
pub struct Scan {
    /// Keys asked for by a translating call, each with the place that asks ("app/src/words.rs, line 7").
    pub asked: BTreeMap<String, String>,
    /// Every literal: a key among them counts as used.
    pub mentioned: BTreeSet<String>,
    /// Beginnings of keys that are put together (`format!("verdict-{code}")`): every key that begins so
    /// counts as used.
    pub prefixes: BTreeSet<String>,
    /// The values each `t!` call gives: place, key, names.
    pub given: Vec<(String, String, Vec<String>)>,
}

impl Scan {
    /// Takes one source in; `place` is its path.
    pub fn add(&mut self, place: &str, source: &str) {
        for literal in literals(source) {
            if keys_asked_for(&literal) {
                let at = format!("{place}, line {}", literal.line);
                if is_macro_key(&literal.before) {
                    self.given.push((at.clone(), literal.text.clone(), literal.named.clone()));
                }
                self.asked.entry(literal.text.clone()).or_insert(at);
            }
            let made = literal.before.ends_with("format!(").then(|| literal.text.split('{').next()).flatten();
            if let Some(start) = made.filter(|start| start.ends_with('-') && start.len() > 1) {
                self.prefixes.insert(start.to_owned());
            }
            // The app's lists of choices are named by the beginning of their keys.
            if literal.before.rsplit(';').next().is_some_and(|call| call.contains("standard(")) {
                self.prefixes.insert(format!("{}-", literal.text));
            }
            self.mentioned.insert(literal.text);
        }
    }

    /// Takes in every Rust source under a folder, `root` being cut off the places shown.
    ///
    /// # Errors
    /// When a folder or file cannot be read.
    pub fn add_folder(&mut self, root: &Path, folder: &Path) -> io::Result<()> {
        let mut entries = fs::read_dir(folder)?.collect::<io::Result<Vec<_>>>()?;
        entries.sort_by_key(fs::DirEntry::path);
        for entry in entries {
            let path = entry.path();
            if path.is_dir() {
                self.add_folder(root, &path)?;
            } else if path.extension().is_some_and(|ext| ext == "rs") {
                let place = path.strip_prefix(root).unwrap_or(&path).display().to_string();
                self.add(&place, &fs::read_to_string(&path)?);
            }
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn keys(source: &str) -> Vec<String> {
        literals(source).iter().filter(|l| keys_asked_for(l)).map(|l| l.text.clone()).collect()
    }

    #[test]
    fn literals_are_found_and_comments_are_not() {
        let source = "let a = \"one\"; // \"two\"\n/* \"three\" /* \"x\" */ */ let b = ('\"', '\\'', r#\"fo\"ur\"#);\nlet c: &'a str = \"fi\\\"ve\";";
        let found: Vec<(usize, String)> = literals(source).into_iter().map(|l| (l.line, l.text)).collect();
        assert_eq!(found, [(1, "one".to_owned()), (2, "fo\"ur".to_owned()), (3, "fi\\\"ve".to_owned())]);
    }

    #[test]
    fn the_values_of_a_call_are_named() {
        let named = |source: &str| {
            literals(source)
                .into_iter()
                .find(|l| l.text == "k")
                .map(|l| l.named.join(" "))
                .unwrap_or_default()
        };
        assert_eq!(named(r#"t!(m, "k"); let a = b;"#), "");
        assert_eq!(
            named(r#"t!(m, "k", n = 1, name = f(x = 2, "y = )"), z = if a == b { 1 } else { 2 })"#),
            "n name z"
        );
        assert_eq!(named(r#"t!(m, "k", n = t!(m, "other", inner = 3), last = 4); q = 5"#), "n last");
    }

    #[test]
    fn keys_are_the_first_argument_of_a_translating_call() {
        assert_eq!(keys(r#"t!(m, "verdict-yes")"#), ["verdict-yes"]);
        assert_eq!(keys(r#"view! { <p>{t!(m.get(), "no-results", query = "x")}</p> }"#), ["no-results"]);
        assert_eq!(
            keys(r#"messages.t("search-label", &args!(n = 1)); messages.find("a.hint", &x)"#),
            ["search-label", "a.hint"]
        );
        assert_eq!(
            keys(r#"tr("back"); attr("class"); x.tr("no"); assert!(a, "no"); format!("no")"#),
            ["back"]
        );
        assert_eq!(keys(r#"m.t(&format!("fact-{id}"), &x)"#), Vec::<String>::new());
    }
}
