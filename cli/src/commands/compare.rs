//! `lidleaf compare`: two programs, a notice of what changes between them, or a region's.

use std::path::Path;

use guide_data::{Catalog, Comparison, Notice, PrintedSheet, Program, UntrueLine};
use locales::{Messages, t};
use serde::Serialize;

use crate::args::CompareArgs;
use crate::compared::{self, Pair, Text, Told};
use crate::files;
use crate::problem::Outcome;
use crate::publish::language_pack;
use crate::run::{Report, Voice, pretty, spoken};
use locales::Words;

/// What compares two programs, as machines read it.
#[derive(Serialize)]
struct Changes<'a> {
    format: &'static str,
    version: u32,
    #[serde(flatten)]
    comparison: &'a Comparison,
    /// Printed lines that become untrue.
    untrue: &'a [UntrueLine],
}

#[derive(Serialize)]
struct Noticed<'a> {
    format: &'static str,
    version: u32,
    before: &'a guide_data::Edition,
    after: &'a guide_data::Edition,
    groups: &'a [guide_data::NoticeGroup],
    #[serde(skip_serializing_if = "<[_]>::is_empty")]
    reworded: &'a [guide_data::Reworded],
    untrue: &'a [UntrueLine],
    text: String,
}

#[derive(Serialize)]
struct Region<'a> {
    format: &'static str,
    version: u32,
    #[serde(flatten)]
    report: &'a guide_data::Regional,
}

pub(crate) fn compare(args: &CompareArgs, voice: &Voice) -> Outcome<Report> {
    let programs = args.programs.iter().map(|path| files::program(path)).collect::<Outcome<Vec<_>>>()?;
    let catalog = files::catalog(args.catalog.as_deref())?;
    let voice = match &args.speak {
        Some(tag) => &Voice { messages: locales::bundled(&spoken(tag)?).isolating(false), json: voice.json },
        None => voice,
    };
    let text = match programs.as_slice() {
        [before, after] => two(before, after, &catalog, args, voice),
        several => many(several, &catalog, voice),
    };
    let Some(out) = &args.out else { return Ok(Report::done(text)) };
    files::write(out, text.as_bytes())?;
    Ok(Report::done(t!(voice.messages, "cli-written", file = out.display().to_string()) + "\n"))
}

fn two(before: &Program, after: &Program, catalog: &Catalog, args: &CompareArgs, voice: &Voice) -> String {
    let comparison = guide_data::comparison(before, after, catalog, args.on);
    let untrue = guide_data::untrue_since(before, after, catalog);
    if voice.json && !args.notice {
        let format = "lidleaf-changes";
        return pretty(&Changes { format, version: 1, comparison: &comparison, untrue: &untrue });
    }
    let messages = super::messages_for(after, voice);
    let tag = messages.lang().entry().map_or("en", |language| language.tag);
    // A stream that was dropped has its name in the older program alone.
    let (old, new) = (language_pack(before, catalog, tag), language_pack(after, catalog, tag));
    let pair = Pair {
        old: Words { messages: &messages, pack: &old },
        new: Words { messages: &messages, pack: &new },
    };
    let sheets: Vec<PrintedSheet> = after.printed.iter().chain(&before.printed).cloned().collect();
    let lines: Vec<Told> = untrue.iter().map(|line| compared::untrue(line, &sheets, pair.new)).collect();
    if args.notice {
        let notice: Notice = guide_data::notice(&comparison);
        let mut text = pair.notice(&comparison, &notice, &[]);
        text.tail.splice(0..0, compared::contact(after, pair.new));
        let marked = args.out.as_deref().and_then(Path::extension).is_some_and(|ending| ending == "md");
        let text = if marked { text.markdown() } else { text.plain() };
        if !voice.json {
            return text;
        }
        return pretty(&Noticed {
            format: "lidleaf-notice",
            version: 1,
            before: &comparison.before,
            after: &comparison.after,
            groups: &notice.groups,
            reworded: &comparison.reworded,
            untrue: &untrue,
            text,
        });
    }
    listed(&comparison, pair, lines, &messages)
}

/// Every change, and what it comes to.
fn listed(comparison: &Comparison, pair: Pair<'_>, untrue: Vec<Told>, messages: &Messages) -> String {
    let mut text = String::new();
    let mut tell = |told: &Told| {
        text.push_str(&told.head);
        for line in &told.lines {
            text.push_str("\n  ");
            text.push_str(line);
        }
        text.push('\n');
    };
    for change in &comparison.changes {
        let mut told = pair.change(change);
        if change.share < 1.0 {
            let percent = messages.percent(change.share, 0);
            told.lines.push(t!(messages, "cli-compare-share", percent = percent));
        }
        tell(&told);
    }
    let reworded = pair.reworded(comparison);
    if !reworded.is_empty() {
        let head = t!(messages, "notice-reworded");
        tell(&Told { head: format!("\n{head}"), lines: Vec::new() });
        reworded.iter().for_each(&mut tell);
    }
    if !untrue.is_empty() {
        let head = t!(messages, "untrue-title");
        tell(&Told { head: format!("\n{head}"), lines: Vec::new() });
        untrue.iter().for_each(&mut tell);
    }
    text.push_str(&match comparison.changes.len() {
        0 => t!(messages, "cli-compare-same"),
        count => t!(messages, "cli-compare-count", count = count),
    });
    text.push('\n');
    text
}

fn many(programs: &[Program], catalog: &Catalog, voice: &Voice) -> String {
    let all: Vec<&Program> = programs.iter().collect();
    let report = guide_data::compare_many(&all, catalog);
    if voice.json {
        return pretty(&Region { format: "lidleaf-regional", version: 1, report: &report });
    }
    let Some(first) = programs.first() else { return String::new() };
    let messages = super::messages_for(first, voice);
    let tag = messages.lang().entry().map_or("en", |language| language.tag);
    let packs: Vec<_> = programs.iter().map(|program| language_pack(program, catalog, tag)).collect();
    let names: Vec<Words<'_>> = packs.iter().map(|pack| Words { messages: &messages, pack }).collect();
    let text: Text = compared::regional(&report, &names);
    text.plain()
}
