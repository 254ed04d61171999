//! Findings: what is wrong with a program, or worth knowing, each with the case that shows it.
//!
//! Adding a finding is adding a file here and a line to [`check`]. Words live in `locales` under
//! `finding-<code>` and its `.hint`. A finding offers the edits that would mend it: those that
//! cannot do anything else, and those that were tried on a copy and did nothing worse.

use std::cell::Cell;
use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use crate::catalog::Catalog;
use crate::compile::{Compiled, compile};
use crate::fix::{Fix, nearest};
use crate::guide::Guide;
use crate::paths::Witness;
use crate::program::{Program, Rule};

mod banned_destination;
mod broken_condition;
mod broken_item;
mod broken_reference;
mod circular_override;
mod comparison_broken;
mod conflicting_rules;
mod container_rule_broken;
mod counts_as_broken;
mod destination_not_offered;
mod duplicate_id;
mod empty_condition;
mod hazard_not_safe;
mod impossible_condition;
mod item_without_name;
mod missing_provenance;
mod missing_translation;
mod no_site_takes;
mod not_listed;
mod preparation_contradicts;
mod printed_line_untrue;
mod question_never_matters;
mod rule_never_applies;
mod rule_without_condition;
mod season_broken;
mod site_never_used;
mod steps_contradict;
mod suspicious_text;
mod text_missing_register;
mod too_complex;
mod uncovered_case;
mod unreadable_hours;
mod unusable_setting;
mod unused_thing;

pub(crate) use suspicious_text::turns_direction;

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
    /// Edits that mend it, one for each way it can be meant.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub fixes: Vec<Fix>,
    /// Edits that would mend it, but may do harm elsewhere: tried before they are offered.
    #[serde(skip)]
    pub(crate) untried: Vec<Fix>,
}

impl Finding {
    pub(crate) fn new(severity: Severity, code: &str, place: Place) -> Self {
        let mut args = BTreeMap::new();
        args.insert("id".to_owned(), place.id.clone());
        args.insert("field".to_owned(), place.field.clone());
        Self {
            severity,
            place,
            code: code.to_owned(),
            args,
            rules: Vec::new(),
            witness: None,
            fixes: Vec::new(),
            untried: Vec::new(),
        }
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

    /// Offers edits that mend it and, by what they are, can do no harm.
    pub(crate) fn fixes(mut self, fixes: impl IntoIterator<Item = Fix>) -> Self {
        self.fixes.extend(fixes.into_iter().take(MOST_FIXES));
        self
    }

    /// Offers edits that mend it if trying them shows that they do no harm.
    pub(crate) fn tries(mut self, fixes: impl IntoIterator<Item = Fix>) -> Self {
        self.untried.extend(fixes.into_iter().take(MOST_FIXES));
        self
    }

    /// What makes it the finding it is: with the program changed, the same key is the same finding.
    fn key(&self) -> (&str, &Place, &BTreeMap<String, String>) {
        (&self.code, &self.place, &self.args)
    }
}

/// More ways to mend one thing than this are a list to choose from, not an offer.
const MOST_FIXES: usize = 6;

/// Every code a finding can have, for the test that all have words.
pub const FINDING_CODES: &[&str] = &[
    "banned-destination",
    "broken-condition",
    "broken-item",
    "broken-reference",
    "circular-override",
    "comparison-broken",
    "conflicting-rules",
    "container-rule-broken",
    "counts-as-broken",
    "destination-not-offered",
    "duplicate-id",
    "empty-condition",
    "hazard-acknowledged",
    "hazard-not-safe",
    "impossible-condition",
    "item-without-name",
    "missing-provenance",
    "missing-translation",
    "name-twice",
    "no-site-takes",
    "not-listed",
    "preparation-contradicts",
    "question-never-matters",
    "printed-line-untrue",
    "rule-never-applies",
    "rule-without-condition",
    "season-broken",
    "site-never-used",
    "steps-contradict",
    "suspicious-text",
    "text-missing-register",
    "too-complex",
    "too-many-thresholds",
    "uncovered-case",
    "unreadable-hours",
    "unusable-setting",
    "unused-thing",
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
    /// The program's rules by id; of several with one id, the first.
    pub(crate) rules: BTreeMap<&'a str, &'a Rule>,
    /// The rules that decide nothing, but add steps or bans.
    pub(crate) adding: Vec<&'a Rule>,
    pub(crate) catalog: &'a Catalog,
    pub(crate) compiled: &'a Compiled,
    /// How many more words may be compared with all that exist.
    guesses: Cell<usize>,
}

/// A program with more slips than this is mended a few at a time; each guess compares a word with
/// all that exist.
const MOST_GUESSES: usize = 100;

impl Subject<'_> {
    /// The words that may have been meant by one that does not exist.
    pub(crate) fn guess<'c>(&self, word: &str, among: impl IntoIterator<Item = &'c str>) -> Vec<String> {
        let left = self.guesses.get();
        if left == 0 {
            return Vec::new();
        }
        self.guesses.set(left - 1);
        nearest(word, among).into_iter().map(str::to_owned).collect()
    }

    /// "Did you mean": an edit for each of the words that may have been meant.
    pub(crate) fn did_you_mean<'c>(
        &self,
        place: &Place,
        value: &str,
        among: impl IntoIterator<Item = &'c str>,
    ) -> Vec<Fix> {
        let near = self.guess(value, among);
        near.into_iter()
            .map(|with| Fix::Replace { place: place.clone(), value: value.to_owned(), with })
            .collect()
    }
}

/// Compiles a program and looks for everything that is wrong with it. Never fails: a program
/// with errors still has a guide, and its findings say what to mend, and how.
#[must_use]
pub fn check(program: &Program, catalog: &Catalog) -> Checked {
    let mut checked = find(program, catalog);
    let mut trial = Trial::new(program, catalog, &checked.findings);
    while trial.step(program, catalog, &mut checked.findings) {}
    checked
}

/// The same as [`check`], without the fixes that have to be tried: for a screen that is to answer
/// at once and tries them with a [`Trial`] when nobody types.
#[must_use]
pub fn find(program: &Program, catalog: &Catalog) -> Checked {
    let (compiled, findings) = look(program, catalog);
    Checked { guide: compiled.guide, findings }
}

/// Everything found, with fixes still untried.
fn look(program: &Program, catalog: &Catalog) -> (Compiled, Vec<Finding>) {
    let compiled = compile(program, catalog);
    let rules = program.rules.iter().rev().map(|r| (r.id.as_str(), r)).collect();
    let adding = program.rules.iter().filter(|r| r.verdict.is_none()).collect();
    let subject =
        Subject { program, rules, adding, catalog, compiled: &compiled, guesses: Cell::new(MOST_GUESSES) };
    let mut findings = Vec::new();
    for look in [
        banned_destination::look,
        broken_condition::look,
        broken_item::look,
        broken_reference::look,
        circular_override::look,
        comparison_broken::look,
        conflicting_rules::look,
        container_rule_broken::look,
        counts_as_broken::look,
        destination_not_offered::look,
        duplicate_id::look,
        empty_condition::look,
        hazard_not_safe::look,
        impossible_condition::look,
        item_without_name::look,
        missing_provenance::look,
        missing_translation::look,
        no_site_takes::look,
        not_listed::look,
        preparation_contradicts::look,
        question_never_matters::look,
        printed_line_untrue::look,
        rule_never_applies::look,
        rule_without_condition::look,
        season_broken::look,
        site_never_used::look,
        steps_contradict::look,
        suspicious_text::look,
        text_missing_register::look,
        too_complex::look,
        uncovered_case::look,
        unreadable_hours::look,
        unusable_setting::look,
        unused_thing::look,
    ] {
        look(&subject, &mut findings);
    }
    findings.sort_by(|a, b| {
        let rank = |f: &Finding| (f.severity, !is_a_slip(&f.code));
        rank(a).cmp(&rank(b)).then_with(|| (&a.place, &a.code, &a.args).cmp(&(&b.place, &b.code, &b.args)))
    });
    findings.dedup_by(|a, b| a.key() == b.key() && a.severity == b.severity);
    (compiled, findings)
}

/// What somebody mistyped or forgot. It comes before all that follows from it: a rule whose stream does not
/// exist disagrees with others too.
fn is_a_slip(code: &str) -> bool {
    code.starts_with("broken-")
        || code.ends_with("-broken")
        || matches!(
            code,
            "circular-override"
                | "duplicate-id"
                | "empty-condition"
                | "rule-without-condition"
                | "unreadable-hours"
        )
}

/// At most so many edits are tried for one program, so that checking stays quick.
const MOST_TRIED: usize = 24;
/// What trying edits may cost in all, in items looked at under one rule.
const MOST_TRYING: usize = 1_500_000;

/// Tries fixes on copies of a program, one at a time, and offers those that make their finding
/// vanish and add no error.
#[derive(Debug)]
pub struct Trial {
    before: BTreeMap<String, usize>,
    /// One edit may mend several findings and is tried once.
    tried: Vec<(Fix, Option<Vec<Finding>>)>,
    left: usize,
    at: usize,
}

impl Trial {
    /// Begins with what [`find`] found in a program.
    #[must_use]
    pub fn new(program: &Program, catalog: &Catalog, findings: &[Finding]) -> Self {
        let size = (catalog.items.len() + program.items.len() + 1) * (program.rules.len() + 1);
        let left = MOST_TRIED.min(MOST_TRYING / size);
        Self { before: errors(findings), tried: Vec::new(), left, at: 0 }
    }

    /// True when there is something to try.
    #[must_use]
    pub fn is_needed(findings: &[Finding]) -> bool {
        findings.iter().any(|f| !f.untried.is_empty())
    }

    /// Tries the fixes of the next finding; false when there are none left.
    pub fn step(&mut self, program: &Program, catalog: &Catalog, findings: &mut [Finding]) -> bool {
        while let Some(finding) = findings.get_mut(self.at) {
            self.at += 1;
            let untried = std::mem::take(&mut finding.untried);
            if untried.is_empty() {
                continue;
            }
            for fix in untried {
                let mends = self.after(program, catalog, &fix).is_some_and(|at| self.mends(finding, at));
                if mends {
                    finding.fixes.push(fix);
                }
            }
            return true;
        }
        false
    }

    /// What is found once a fix has been applied, by its place among those tried.
    fn after(&mut self, program: &Program, catalog: &Catalog, fix: &Fix) -> Option<usize> {
        if let Some(at) = self.tried.iter().position(|(known, _)| known == fix) {
            return Some(at);
        }
        self.left = self.left.checked_sub(1)?;
        let mut mended = program.clone();
        let after = mended.apply(fix).is_ok().then(|| look(&mended, catalog).1);
        self.tried.push((fix.clone(), after));
        Some(self.tried.len() - 1)
    }

    fn mends(&self, finding: &Finding, at: usize) -> bool {
        let after = self.tried.get(at).and_then(|(_, after)| after.as_deref());
        after.is_some_and(|after| mends(finding, &self.before, after))
    }
}

/// How many errors there are of each code.
fn errors(findings: &[Finding]) -> BTreeMap<String, usize> {
    let mut counts = BTreeMap::new();
    for finding in findings.iter().filter(|f| f.severity == Severity::Error) {
        *counts.entry(finding.code.clone()).or_default() += 1;
    }
    counts
}

/// The finding is gone, and of no kind there are more errors than before; of its own there are
/// fewer, so that it has not merely turned into another.
fn mends(finding: &Finding, before: &BTreeMap<String, usize>, after: &[Finding]) -> bool {
    if after.iter().any(|f| f.key() == finding.key()) {
        return false;
    }
    errors(after).iter().all(|(code, &count)| {
        let was = before.get(code).copied().unwrap_or(0);
        if *code == finding.code && finding.severity == Severity::Error { count < was } else { count <= was }
    })
}
