//! `lidleaf check`.

use std::path::{Path, PathBuf};

use guide_data::{Finding, Fix, Program, Severity};
use locales::{Messages, t};
use serde::Serialize;

use crate::args::FixNumber;
use crate::compared;
use crate::exit::Exit;
use crate::files;
use crate::finding_words;
use crate::problem::{Outcome, Problem};
use crate::publish::language_pack;
use crate::run::{Report, Voice, pretty};
use locales::Words;

/// A finding as machines read it: the data of the domain, and the message beside it.
#[derive(Serialize)]
struct Told<'f> {
    #[serde(flatten)]
    finding: &'f Finding,
    message: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    hint: Option<String>,
    /// The ways to mend it in words, with what `--fix` takes; the edits themselves are in `fixes`.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    mend: Vec<Way>,
}

/// A way to mend a finding.
#[derive(Serialize)]
struct Way {
    number: String,
    message: String,
}

#[derive(Serialize)]
struct Findings<'f> {
    format: &'static str,
    version: u32,
    program: &'f str,
    publishable: bool,
    errors: usize,
    warnings: usize,
    notices: usize,
    findings: Vec<Told<'f>>,
}

pub(crate) fn check(
    program: &Path,
    catalog: Option<&Path>,
    mend: Option<&(FixNumber, PathBuf)>,
    voice: &Voice,
) -> Outcome<Report> {
    let mut program = files::program(program)?;
    let catalog = files::catalog(catalog)?;
    let mut checked = guide_data::check(&program, &catalog);
    let mut done = String::new();
    if let Some((number, out)) = mend {
        let fix = take(&mut program, &checked.findings, *number)?;
        checked = guide_data::check(&program, &catalog);
        files::write(out, program.to_json().as_bytes())?;
        if !voice.json {
            done = t!(voice.messages, "cli-mended", fix = way(&fix, &voice.messages)) + "\n";
            done.push_str(&t!(voice.messages, "cli-written", file = out.display().to_string()));
            done.push_str("\n\n");
        }
    }
    let pack = language_pack(&program, &catalog, &voice.messages.lang().tag());
    let words = Words { messages: &voice.messages, pack: &pack };
    let text = if voice.json {
        json(&program.id, checked.publishable(), &checked.findings, &voice.messages)
    } else {
        done + &human(&checked.findings, words)
    };
    Ok(Report { text, exit: if checked.publishable() { Exit::Done } else { Exit::Errors } })
}

/// Applies the numbered fix.
fn take(program: &mut Program, findings: &[Finding], number: FixNumber) -> Outcome<Fix> {
    let unknown = || Problem::new(Exit::NotFound, "cli-unknown-fix").with("number", number.to_string());
    let finding = findings.get(number.finding - 1).ok_or_else(unknown)?;
    let fix = finding.fixes.get(number.fix - 1).ok_or_else(unknown)?;
    program.apply(fix).map_err(|_| unknown())?;
    Ok(fix.clone())
}

/// All findings as JSON.
pub(crate) fn json(program: &str, publishable: bool, findings: &[Finding], messages: &Messages) -> String {
    pretty(&Findings {
        format: "lidleaf-findings",
        version: 1,
        program,
        publishable,
        errors: count(findings, Severity::Error),
        warnings: count(findings, Severity::Warning),
        notices: count(findings, Severity::Notice),
        findings: findings
            .iter()
            .enumerate()
            .map(|(at, finding)| Told {
                finding,
                message: message(finding, messages),
                hint: hint(finding, messages),
                mend: ways(at, finding, messages),
            })
            .collect(),
    })
}

/// All findings in words, and what they come to.
pub(crate) fn human(findings: &[Finding], words: Words<'_>) -> String {
    let messages = words.messages;
    if findings.is_empty() {
        return t!(messages, "cli-check-clean") + "\n";
    }
    let mut text = String::new();
    for (at, finding) in findings.iter().enumerate() {
        tell(at, finding, words, &mut text);
    }
    let errors = count(findings, Severity::Error);
    let counts: Vec<String> = [
        ("cli-count-errors", errors),
        ("cli-count-warnings", count(findings, Severity::Warning)),
        ("cli-count-notices", count(findings, Severity::Notice)),
    ]
    .into_iter()
    .filter(|(_, count)| *count > 0)
    .map(|(key, count)| messages.t(key, &locales::args!(count = count)))
    .collect();
    let counts = messages.list_and(&counts);
    text.push_str(&if errors > 0 {
        t!(messages, "cli-check-errors", counts = counts)
    } else {
        t!(messages, "cli-check-publishable", counts = counts)
    });
    text.push('\n');
    text
}

fn tell(at: usize, finding: &Finding, words: Words<'_>, text: &mut String) {
    let messages = words.messages;
    let severity = messages.t(severity_key(finding.severity), &locales::args!());
    let message = message(finding, messages);
    text.push_str(&t!(messages, "cli-finding", severity = severity, message = message));
    let mut line = |words: String| {
        text.push_str("\n  ");
        text.push_str(&words);
    };
    line(place(finding, messages));
    if let Some(witness) = &finding.witness {
        let item = words.subject(&witness.item, witness.part.as_deref());
        let answers: Vec<String> =
            witness.answers.iter().map(|(fact, label)| compared::fact_value(words, fact, label)).collect();
        line(if answers.is_empty() {
            t!(messages, "cli-witness", item = item)
        } else {
            t!(messages, "cli-witness-answers", item = item, answers = messages.list_and(&answers))
        });
    }
    if let Some(hint) = hint(finding, messages) {
        line(t!(messages, "cli-hint", hint = hint));
    }
    for way in ways(at, finding, messages) {
        line(t!(messages, "cli-mend", number = way.number, fix = way.message));
    }
    text.push_str("\n\n");
}

/// The ways to mend a finding, numbered by its place in the list.
fn ways(at: usize, finding: &Finding, messages: &Messages) -> Vec<Way> {
    let number = |fix: usize| FixNumber { finding: at + 1, fix: fix + 1 }.to_string();
    let fixes = finding.fixes.iter().enumerate();
    fixes.map(|(fix, edit)| Way { number: number(fix), message: way(edit, messages) }).collect()
}

fn way(fix: &Fix, messages: &Messages) -> String {
    let key = format!("fix-{}", fix.code());
    finding_words(messages, &key, fix.args()).unwrap_or(key)
}

fn message(finding: &Finding, messages: &Messages) -> String {
    let key = format!("finding-{}", finding.code);
    finding_words(messages, &key, &finding.args).unwrap_or(key)
}

fn hint(finding: &Finding, messages: &Messages) -> Option<String> {
    finding_words(messages, &format!("finding-{}.hint", finding.code), &finding.args)
}

fn place(finding: &Finding, messages: &Messages) -> String {
    let at = &finding.place;
    match (at.id.is_empty(), at.field.is_empty()) {
        (true, _) => t!(messages, "cli-place-program", field = at.field.as_str()),
        (false, true) => t!(messages, "cli-place", kind = at.kind.as_str(), id = at.id.as_str()),
        (false, false) => t!(
            messages,
            "cli-place-field",
            kind = at.kind.as_str(),
            id = at.id.as_str(),
            field = at.field.as_str()
        ),
    }
}

fn severity_key(severity: Severity) -> &'static str {
    match severity {
        Severity::Error => "cli-severity-error",
        Severity::Warning => "cli-severity-warning",
        Severity::Notice => "cli-severity-notice",
    }
}

fn count(findings: &[Finding], severity: Severity) -> usize {
    findings.iter().filter(|finding| finding.severity == severity).count()
}
