//! `lidleaf compare`.

use std::path::Path;

use guide_data::{Outcome as Said, Program};
use locales::{Messages, t};
use serde_json::json;

use crate::files;
use crate::problem::Outcome;
use crate::publish::language_pack;
use crate::run::{Report, Voice, pretty};
use crate::words::Words;

pub(crate) fn compare(before: &Path, after: &Path, catalog: Option<&Path>, voice: &Voice) -> Outcome<Report> {
    let (before, after) = (files::program(before)?, files::program(after)?);
    let catalog = files::catalog(catalog)?;
    let changes = guide_data::compare(&before, &after, &catalog);
    if voice.json {
        let report = json!({ "format": "lidleaf-changes", "version": 1, "changes": changes });
        return Ok(Report::done(pretty(&report)));
    }
    let messages = super::messages_for(&after, voice);
    if changes.is_empty() {
        return Ok(Report::done(t!(messages, "cli-compare-same") + "\n"));
    }
    let tag = messages.lang().tag();
    // A stream that was dropped has its name in the older program alone.
    let pack = |program: &Program| language_pack(program, &catalog, &tag);
    let (old_pack, new_pack) = (pack(&before), pack(&after));
    let old = Words { messages: &messages, pack: &old_pack };
    let new = Words { messages: &messages, pack: &new_pack };
    let mut text = String::new();
    for change in &changes {
        let words = if change.after.is_some() { new } else { old };
        let item = words.subject(&change.item, change.part.as_deref());
        let (was, is) = (put(change.before.as_ref(), old), put(change.after.as_ref(), new));
        text.push_str(&t!(messages, "cli-compare-change", item = item, before = was, after = is));
        let answers: Vec<String> =
            change.answers.iter().map(|(fact, label)| words.fact_value(fact, label)).collect();
        if !answers.is_empty() {
            let answers = messages.list_and(&answers);
            text.push_str(&format!("\n  {}", t!(messages, "cli-compare-when", answers = answers)));
        }
        if change.share < 1.0 {
            let percent = messages.percent(change.share, 0);
            text.push_str(&format!("\n  {}", t!(messages, "cli-compare-share", percent = percent)));
        }
        text.push('\n');
    }
    text.push_str(&t!(messages, "cli-compare-count", count = changes.len()));
    text.push('\n');
    Ok(Report::done(text))
}

/// Verdict, destination and preparation in one line.
fn put(said: Option<&Said>, words: Words<'_>) -> String {
    let messages: &Messages = words.messages;
    let Some(said) = said else { return t!(messages, "cli-compare-unknown") };
    let mut parts = vec![words.say(&format!("verdict-{}", said.verdict.code()))];
    parts.extend(words.destination(said));
    parts.extend(said.steps.iter().map(|step| words.step(step)));
    parts.join("; ")
}
