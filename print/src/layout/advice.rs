//! What to shorten when a sheet does not fit at the legibility floor, found by cutting and trying again.

use super::fit::{Trial, Wide};
use crate::finding::{PreflightItem, PrintError};
use crate::job::SheetJob;
use crate::place::english;
use crate::sheet::PageGeometry;
use crate::text::{Paragraph, count};
use crate::unit::{Mm, Pt};

/// The most texts one refusal names; the longest first.
const MOST_NAMED: usize = 6;

/// Says what must go. `missing` tells how much height is missing under a trial, negative when it fits.
pub(super) fn shorten(
    paragraphs: &[&Paragraph],
    job: &SheetJob,
    geometry: &PageGeometry,
    floor: Pt,
    missing: impl Fn(&Trial) -> Result<Pt, Wide>,
) -> PrintError {
    let mut trial = Trial::default();
    let whole = match missing(&trial) {
        Ok(missing) => missing,
        Err(wide) => return too_wide(&wide, floor).into(),
    };
    let mut lines: Vec<(&Paragraph, usize, usize)> = Vec::new();
    for paragraph in paragraphs {
        // How many lines a text takes is asked of the widest measure it could have: a column of the sheet.
        let column = geometry.safe_area().width / count(job.languages.len().max(2));
        if let Ok(setting) = paragraph.set(floor, column) {
            let most = setting.lines.len().max(1) * 3;
            lines.push((paragraph, most, most));
        }
    }
    // Where not even one line of each would fit, no shortening helps, and trying is slow on long lists.
    let mut shortest = Trial::default();
    shortest.limits.extend(lines.iter().map(|(paragraph, ..)| (paragraph.place.clone(), 1)));
    if !missing(&shortest).is_ok_and(|missing| missing <= Pt::ZERO) {
        return too_many(job, whole, floor).into();
    }
    // The longest text loses a quarter of its lines, and again, until the sheet fits.
    let mut fits = false;
    for _ in 0..2_000 {
        if missing(&trial).is_ok_and(|missing| missing <= Pt::ZERO) {
            fits = true;
            break;
        }
        let Some(longest) = lines.iter_mut().max_by_key(|(_, now, _)| *now) else { break };
        if longest.1 <= 1 {
            break;
        }
        longest.1 -= (longest.1 / 4).max(1);
        trial.limits.insert(longest.0.place.clone(), longest.1);
    }
    if !fits {
        return too_many(job, whole, floor).into();
    }
    // Cuts that turn out not to matter are taken back.
    for (paragraph, _, _) in &lines {
        if let Some(limit) = trial.limits.remove(&paragraph.place)
            && missing(&trial).is_ok_and(|missing| missing > Pt::ZERO)
        {
            trial.limits.insert(paragraph.place.clone(), limit);
        }
    }
    let mut cuts: Vec<(usize, &Paragraph)> = Vec::new();
    for (paragraph, _, most) in &lines {
        if let Some(&limit) = trial.limits.get(&paragraph.place) {
            let characters = paragraph.words.chars().count();
            let share = count(limit) / count((*most / 3).max(limit + 1));
            // Rounded up on purpose, to whole fives: nobody counts characters.
            let cut = ((count(characters) * (1.0 - share) / 5.0) as usize + 1) * 5;
            cuts.push((cut.min(characters), paragraph));
        }
    }
    cuts.sort_by_key(|(cut, _)| std::cmp::Reverse(*cut));
    cuts.truncate(MOST_NAMED);
    if cuts.is_empty() {
        return too_many(job, whole, floor).into();
    }
    PrintError { items: cuts.into_iter().map(|(cut, paragraph)| too_long(paragraph, cut, floor)).collect() }
}

fn too_long(paragraph: &Paragraph, cut: usize, floor: Pt) -> PreflightItem {
    let text = excerpt(&paragraph.words);
    PreflightItem::error(
        "text-too-long",
        format!(
            "{}: “{text}” does not fit at the smallest type for this viewing distance ({:.1} pt); \
             shorten it by about {cut} characters",
            english(&paragraph.place),
            floor.0
        ),
    )
    .arg("place", &paragraph.place)
    .arg("lang", &paragraph.lang)
    .arg("text", text)
    .arg("cut", cut)
    .arg("floor", format!("{:.1}", floor.0))
}

pub(super) fn too_wide(wide: &Wide, floor: Pt) -> PreflightItem {
    let word = excerpt(&wide.word);
    PreflightItem::error(
        "word-too-wide",
        format!(
            "{}: the word “{word}” is wider than its column at {:.1} pt; use a word of at most about {} characters, \
             or put a space in it",
            english(&wide.place),
            floor.0,
            wide.room
        ),
    )
    .arg("place", &wide.place)
    .arg("lang", &wide.lang)
    .arg("word", word)
    .arg("text", excerpt(&wide.text))
    .arg("room", wide.room)
    .arg("floor", format!("{:.1}", floor.0))
}

fn too_many(job: &SheetJob, missing: Pt, floor: Pt) -> PreflightItem {
    let lines =
        job.languages.first().map_or(0, |block| block.sections.iter().map(|s| s.lines.len()).sum::<usize>());
    let missing = Mm(missing.mm().0.max(1.0));
    PreflightItem::error(
        "too-many-lines",
        format!(
            "the {} holds {lines} lines in {} language(s) and is {:.0} mm too short for them at the smallest type \
             for this viewing distance ({:.1} pt); take lines out, or print fewer languages on one sheet",
            job.sheet.id(),
            job.languages.len(),
            missing.0,
            floor.0
        ),
    )
    .arg("sheet", job.sheet.id())
    .arg("lines", lines)
    .arg("languages", job.languages.len())
    .arg("missing", format!("{:.0}", missing.0))
    .arg("floor", format!("{:.1}", floor.0))
}

/// The beginning of a text, for a message.
fn excerpt(text: &str) -> String {
    const SHOWN: usize = 60;
    if text.chars().count() <= SHOWN {
        return text.to_owned();
    }
    let start: String = text.chars().take(SHOWN).collect();
    format!("{}…", start.trim_end())
}
