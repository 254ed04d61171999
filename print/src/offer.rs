//! What a sheet may do without: steps that make room, of which no more are taken than needed.

use serde::{Deserialize, Serialize};

use crate::finding::{PreflightItem, PrintError};
use crate::job::{LanguageBlock, Line, Section, SheetJob};

/// One way to make room, taken in every language at once.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Step {
    /// Leaves a line out. A line that names a hazard can't be left out.
    Leave {
        /// The section, counted from 0 in the whole job.
        section: usize,
        /// The line, counted from 0 in that section of the whole job.
        line: usize,
    },
    /// Says a section in fewer words. What is left out of the section before or after it counts for nothing then; of
    /// several the last one holds.
    Brief {
        /// The section, counted from 0 in the whole job.
        section: usize,
        /// Its lines instead, for each language in the job's order.
        lines: Vec<Vec<Line>>,
    },
}

/// What a job offers to do without.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Offer {
    /// The steps, in the order in which they are taken: first what is missed least.
    pub steps: Vec<Step>,
    /// So many of them, from the first on, may be taken so that the sheet is read with ease; the others only where not
    /// even the smallest type allowed would fit.
    pub for_ease: usize,
}

/// What is left of a section.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Kept {
    /// The section in the whole job.
    pub(crate) section: usize,
    /// The step whose brief lines stand in, if one's do.
    pub(crate) brief: Option<usize>,
    /// The lines that stay, of the whole or of the brief ones.
    pub(crate) lines: Vec<usize>,
}

/// What is left of a job's sections after some steps. A section of which no line is left goes too.
pub(crate) fn kept(job: &SheetJob, steps: &[Step]) -> Vec<Kept> {
    let Some(first) = job.languages.first() else { return Vec::new() };
    let mut kept = Vec::new();
    for (section, own) in first.sections.iter().enumerate() {
        let brief = steps.iter().enumerate().rev().find_map(|(index, step)| match step {
            Step::Brief { section: at, lines } if *at == section => Some((index, lines.first()?.len())),
            _ => None,
        });
        let left = |line: usize| {
            brief.is_none()
                && steps.iter().any(
                    |step| matches!(step, Step::Leave { section: s, line: l } if *s == section && *l == line),
                )
        };
        let count = brief.map_or(own.lines.len(), |(_, lines)| lines);
        let lines: Vec<usize> = (0..count).filter(|&line| !left(line)).collect();
        if !lines.is_empty() || own.lines.is_empty() {
            kept.push(Kept { section, brief: brief.map(|(step, _)| step), lines });
        }
    }
    kept
}

/// The job with every section said in its brief lines, where one of the steps has some.
pub(crate) fn in_brief(job: &SheetJob, steps: &[Step]) -> SheetJob {
    let mut brief = job.clone();
    for step in steps {
        let Step::Brief { section, lines } = step else { continue };
        for (block, lines) in brief.languages.iter_mut().zip(lines) {
            if let Some(own) = block.sections.get_mut(*section) {
                own.lines.clone_from(lines);
            }
        }
    }
    brief
}

/// The job as it is after some steps.
pub(crate) fn after(job: &SheetJob, steps: &[Step]) -> SheetJob {
    let brief = in_brief(job, steps);
    let kept = kept(job, steps);
    let sections = |whole: &LanguageBlock, brief: &LanguageBlock| -> Vec<Section> {
        let section = |it: &Kept| {
            let from = if it.brief.is_some() { brief } else { whole }.sections.get(it.section)?;
            let lines = it.lines.iter().filter_map(|&line| from.lines.get(line)).cloned().collect();
            Some(Section { lines, ..from.clone() })
        };
        kept.iter().filter_map(section).collect()
    };
    let languages = job
        .languages
        .iter()
        .zip(&brief.languages)
        .map(|(whole, brief)| LanguageBlock { sections: sections(whole, brief), ..whole.clone() });
    SheetJob { languages: languages.collect(), ..job.clone() }
}

/// Refuses steps that fit no line of the job, or that would drop a hazard.
pub(crate) fn check(job: &SheetJob, steps: &[Step]) -> Result<(), PrintError> {
    let sections = job.languages.first().map_or(&[][..], |block| &block.sections);
    let mut items = Vec::new();
    for (index, step) in steps.iter().enumerate() {
        let why = match step {
            Step::Leave { section, line } => match sections.get(*section).and_then(|s| s.lines.get(*line)) {
                None => Some("there is no such line"),
                Some(line) if line.hazard => Some("a line that names a hazard can't be left out"),
                Some(_) => None,
            },
            Step::Brief { section, lines } => match sections.get(*section) {
                None => Some("there is no such section"),
                Some(_) if lines.len() != job.languages.len() => Some("every language needs brief lines"),
                Some(own) => {
                    let hazards = own.lines.iter().any(|line| line.hazard);
                    let named = lines.iter().all(|lines| lines.iter().any(|line| line.hazard));
                    (hazards && !named).then_some("its brief lines name no hazard")
                }
            },
        };
        if let Some(why) = why {
            let number = index + 1;
            items.push(
                PreflightItem::error(
                    "step-invalid",
                    format!("step {number} of what may be left out can't be taken: {why}; take it out"),
                )
                .arg("number", number)
                .arg("why", why),
            );
        }
    }
    if items.is_empty() { Ok(()) } else { Err(PrintError { items }) }
}
