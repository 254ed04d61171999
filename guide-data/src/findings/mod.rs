//! Findings: what is wrong with a program, or worth knowing, each with the case that shows it.
//!
//! Adding a finding is adding a file here and a line to [`check`]. Words live in `locales` under
//! `finding-<code>` and its `.hint`.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use crate::catalog::Catalog;
use crate::compile::{Compiled, compile};
use crate::guide::Guide;
use crate::paths::Witness;
use crate::program::Program;

mod broken_condition;
mod broken_item;
mod broken_reference;
mod circular_override;
mod conflicting_rules;
mod destination_not_offered;
mod duplicate_id;
mod hazard_not_safe;
mod missing_provenance;
mod missing_translation;
mod not_listed;
mod printed_line_untrue;
mod rule_never_applies;
mod suspicious_text;
mod too_complex;
mod uncovered_case;
mod unreadable_hours;
mod unusable_setting;

#[cfg(test)]
mod tests;

/// How much a finding matters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Severity {
    /// The program cannot be published.
    Error,
    /// It can, but somebody should look.
    Warning,
    /// Worth knowing.
    Notice,
}

/// Where a finding is.
#[derive(Debug, Clone, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Place {
    /// What kind of thing: `program`, `rule`, `stream`, `container`, `zone`, `channel`, `site`,
    /// `hazard`, `item`, `step`, `printed`.
    pub kind: String,
    /// Its id; empty for the program itself.
    pub id: String,
    /// The field, when one is meant.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub field: String,
}

impl Place {
    pub(crate) fn of(kind: &str, id: &str, field: &str) -> Self {
        Self { kind: kind.to_owned(), id: id.to_owned(), field: field.to_owned() }
    }
}

/// A finding.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Finding {
    /// How much it matters.
    pub severity: Severity,
    /// Where it is.
    pub place: Place,
    /// What it is; a stable word.
    pub code: String,
    /// Values for its message, by placeholder.
    pub args: BTreeMap<String, String>,
    /// The rules concerned, by id.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub rules: Vec<String>,
    /// The case that shows it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub witness: Option<Witness>,
}

impl Finding {
    pub(crate) fn new(severity: Severity, code: &str, place: Place) -> Self {
        let mut args = BTreeMap::new();
        args.insert("id".to_owned(), place.id.clone());
        args.insert("field".to_owned(), place.field.clone());
        Self { severity, place, code: code.to_owned(), args, rules: Vec::new(), witness: None }
    }

    pub(crate) fn arg(mut self, name: &str, value: impl ToString) -> Self {
        self.args.insert(name.to_owned(), value.to_string());
        self
    }

    pub(crate) fn rules(mut self, rules: &[String]) -> Self {
        self.args.insert("rules".to_owned(), rules.join(", "));
        self.rules = rules.to_vec();
        self
    }

    pub(crate) fn witness(mut self, witness: Option<Witness>) -> Self {
        self.witness = witness;
        self
    }
}

/// Every code a finding can have, for the test that all have words.
pub const FINDING_CODES: &[&str] = &[
    "broken-condition",
    "broken-item",
    "broken-reference",
    "circular-override",
    "conflicting-rules",
    "destination-not-offered",
    "duplicate-id",
    "hazard-not-safe",
    "hazard-acknowledged",
    "missing-provenance",
    "missing-translation",
    "not-listed",
    "printed-line-untrue",
    "rule-never-applies",
    "suspicious-text",
    "too-complex",
    "uncovered-case",
    "unreadable-hours",
    "unusable-setting",
];

/// A checked program: its guide, and what was found.
#[derive(Debug, Clone, Default)]
pub struct Checked {
    /// The guide. With errors among the findings it answers "undecided" where it must.
    pub guide: Guide,
    /// What was found, worst first, then by place.
    pub findings: Vec<Finding>,
}

impl Checked {
    /// True when nothing found is an error.
    #[must_use]
    pub fn publishable(&self) -> bool {
        self.findings.iter().all(|f| f.severity != Severity::Error)
    }
}

/// What a finding's file looks at.
pub(crate) struct Subject<'a> {
    pub(crate) program: &'a Program,
    pub(crate) catalog: &'a Catalog,
    pub(crate) compiled: &'a Compiled,
}

/// Compiles a program and looks for everything that is wrong with it. Never fails: a program
/// with errors still has a guide, and its findings say what to mend.
#[must_use]
pub fn check(program: &Program, catalog: &Catalog) -> Checked {
    let compiled = compile(program, catalog);
    let subject = Subject { program, catalog, compiled: &compiled };
    let mut findings = Vec::new();
    for look in [
        broken_condition::look,
        broken_item::look,
        broken_reference::look,
        circular_override::look,
        conflicting_rules::look,
        destination_not_offered::look,
        duplicate_id::look,
        hazard_not_safe::look,
        missing_provenance::look,
        missing_translation::look,
        not_listed::look,
        printed_line_untrue::look,
        rule_never_applies::look,
        suspicious_text::look,
        too_complex::look,
        uncovered_case::look,
        unreadable_hours::look,
        unusable_setting::look,
    ] {
        look(&subject, &mut findings);
    }
    findings.sort_by(|a, b| {
        (a.severity, &a.place, &a.code, &a.args).cmp(&(b.severity, &b.place, &b.code, &b.args))
    });
    findings.dedup();
    Checked { guide: compiled.guide, findings }
}
