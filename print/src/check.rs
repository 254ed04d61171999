//! Checks of the job itself, before anything is shaped. All errors are found, not only the first.

use crate::finding::{PreflightItem, PrintError};
use crate::job::{LanguageBlock, SheetJob, SheetKind, Tone};
use crate::make::Press;
use crate::pdf::Profile;
use crate::pictogram::pictogram;
use crate::place::{
    ADDRESSEE, EDITION, INDICIA, ISSUER, JOB_NAME, NOTICE, RETURN_ADDRESS, SHORT_ADDRESS, STOCK, english,
    foot, heading, line, numbered, scan, title,
};
use crate::sheet::{MailClass, SheetSize};
use crate::text::refuse_bad_characters;
use crate::unit::Mm;

/// The most languages on one sheet.
const MOST_LANGUAGES: usize = 4;

/// Viewing distances that make sense for a sheet one holds or stands before.
const NEAREST: Mm = Mm(200.0);
const FARTHEST: Mm = Mm(10_000.0);

/// Ink limits that a paper can have: a solid plate, and all four.
const LEAST_LIMIT: u16 = 100;
const MOST_LIMIT: u16 = 400;

/// Refuses a press that is none: a profile of another kind, or a limit that no paper has.
pub(crate) fn press<'a>(press: &Press<'a>) -> Result<Profile<'a>, PrintError> {
    let limit = press.ink_limit;
    if !(LEAST_LIMIT..=MOST_LIMIT).contains(&limit) {
        let message = format!(
            "the ink limit is {limit} %; give the sum of the four plates that the print shop names, from \
             {LEAST_LIMIT} to {MOST_LIMIT} %"
        );
        return Err(PreflightItem::error("ink-limit-invalid", message).arg("limit", limit).into());
    }
    Profile::read(press.profile)
}

/// Refuses a job that can't become a sheet.
pub(crate) fn check(job: &SheetJob) -> Result<(), PrintError> {
    let mut errors = Vec::new();
    size(job, &mut errors);
    fields(job, &mut errors);
    languages(job, &mut errors);
    for block in &job.languages {
        texts(block, &mut errors);
    }
    for (field, lines) in
        [(RETURN_ADDRESS, &job.return_address), (INDICIA, &job.indicia), (ADDRESSEE, &job.addressee)]
    {
        for (index, text) in lines.iter().enumerate() {
            errors.extend(refuse_bad_characters(text, &numbered(field, index + 1)));
        }
    }
    if errors.is_empty() { Ok(()) } else { Err(PrintError { items: errors }) }
}

/// Sizes that can be made: of the sheet, its corners, its stock and the press sheet.
fn size(job: &SheetJob, errors: &mut Vec<PreflightItem>) {
    let size = job.finished_size();
    let (width, height) = (size.width, size.height);
    let limits = job.sheet.sizes();
    let refuse = |code: &'static str, message: String| {
        PreflightItem::error(code, message).arg("width", short(width)).arg("height", short(height))
    };
    // Written so that "not a number" is refused as well.
    if !(width > Mm::ZERO && height > Mm::ZERO) {
        let message = format!(
            "the sheet is {} x {} mm; both sides must be longer than nothing, type the finished size again",
            short(width),
            short(height)
        );
        errors.push(refuse("size-zero", message));
        return;
    }
    let named = limits.named.iter().filter_map(|name| SheetSize::named(name));
    let offered = named.into_iter().any(|one| one.width == width && one.height == height);
    match limits.typed {
        None if !offered => {
            let names = limits.named.join(", ");
            let message = format!(
                "the sheet is {} x {} mm; this one is made in these sizes only: {names}",
                short(width),
                short(height)
            );
            errors.push(refuse("size-fixed", message).arg("names", names));
        }
        Some((least, most))
            if !offered && [width, height].into_iter().any(|side| !(side >= least && side <= most)) =>
        {
            let message = format!(
                "the sheet is {} x {} mm; type sides from {} to {} mm, with their unit",
                short(width),
                short(height),
                short(least),
                short(most)
            );
            errors.push(
                refuse("size-out-of-range", message).arg("least", short(least)).arg("most", short(most)),
            );
        }
        _ => shape(job, errors),
    }
    if let Some(thickness) = job.stock.thickness
        && !(thickness >= THINNEST && thickness <= THICKEST)
    {
        let message = format!(
            "the stock is {} mm thick; paper and label film are {} to {} mm, look at what the print shop sent",
            short(thickness),
            THINNEST.0,
            THICKEST.0
        );
        errors.push(PreflightItem::error("stock-thickness", message).arg("thickness", short(thickness)));
    }
    if let Some(press) = &job.press {
        let sides = [press.width, press.height];
        if sides.into_iter().any(|side| !(side >= PRESS.0 && side <= PRESS.1)) {
            let message = format!(
                "the press sheet is {} x {} mm; type sides from {} to {} mm, with their unit",
                short(press.width),
                short(press.height),
                PRESS.0.0,
                PRESS.1.0
            );
            errors.push(
                PreflightItem::error("press-size", message)
                    .arg("width", short(press.width))
                    .arg("height", short(press.height))
                    .arg("least", short(PRESS.0))
                    .arg("most", short(PRESS.1)),
            );
        }
    }
}

/// Paper and label film as one sheet. Ours: from tissue to board.
const THINNEST: Mm = Mm(0.03);
const THICKEST: Mm = Mm(3.0);
/// The sides of press sheets, from a small digital press to a large offset one. Ours.
const PRESS: (Mm, Mm) = (Mm(150.0), Mm(1700.0));
/// A sheet is at most so many times longer than wide. Ours: lines of words need some width.
const LONGEST: f64 = 4.0;

/// A length for a message: at most two places.
fn short(length: Mm) -> String {
    let text = format!("{:.2}", length.0);
    if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').to_owned() } else { text }
}

/// What a possible size must be for its kind of sheet.
fn shape(job: &SheetJob, errors: &mut Vec<PreflightItem>) {
    let SheetSize { width, height, corner } = job.finished_size();
    let both = |item: PreflightItem| item.arg("width", short(width)).arg("height", short(height));
    let (long, least) = (width.max(height), width.min(height));
    if long > least * LONGEST {
        let message = format!(
            "the sheet is {} x {} mm; one side may be at most {LONGEST} times the other",
            short(width),
            short(height)
        );
        errors.push(both(PreflightItem::error("size-too-narrow", message)).arg("most", LONGEST));
    }
    if job.sheet == SheetKind::RoundSticker && width != height {
        let message = format!(
            "a round label is as wide as it is high, not {} x {} mm; type its diameter",
            short(width),
            short(height)
        );
        errors.push(both(PreflightItem::error("size-not-round", message)));
    }
    if job.sheet == SheetKind::PostcardMailer && MailClass::of(width, height).is_none() {
        let message = format!(
            "the post takes no card, letter or flat of {} x {} mm (length along the address x height); letters are \
             127 to 292 x 89 to 156 mm and 1.3 to 2.5 times as long as high, flats up to 381 x 305 mm",
            short(width),
            short(height)
        );
        errors.push(both(PreflightItem::error("postal-size", message)));
    }
    let most = match job.sheet {
        SheetKind::CartLid | SheetKind::EnclosureSign => least / 4.0,
        // A round label's corner is its own.
        SheetKind::RoundSticker => Mm(f64::INFINITY),
        // Machines stop at rounder corners of mail (QSG 201: at most 1/8 in), and paper sheets are cut square.
        SheetKind::PostcardMailer | SheetKind::SelfMailer | SheetKind::Handout => Mm::inches(0.125),
    };
    if let Some(corner) = corner
        && !(corner >= Mm::ZERO && corner <= most)
    {
        let most = short(most);
        let message = format!("the corners' radius is {} mm; give one from 0 to {most} mm", short(corner));
        errors.push(
            PreflightItem::error("corner-radius", message).arg("radius", short(corner)).arg("most", most),
        );
    }
}

fn fields(job: &SheetJob, errors: &mut Vec<PreflightItem>) {
    for (field, text, needed) in [
        (ISSUER, &job.jurisdiction, true),
        (JOB_NAME, &job.job_name, true),
        (SHORT_ADDRESS, &job.short_url, true),
        (EDITION, &job.edition, false),
        (NOTICE, &job.print_notice, false),
        (STOCK, &job.stock.name, false),
    ] {
        errors.extend(refuse_bad_characters(text, field));
        if needed && text.trim().is_empty() {
            errors.push(empty(field));
        }
    }
    let plain = !job.qr_url.is_empty() && job.qr_url.chars().all(|c| c.is_ascii_graphic());
    if !plain || !(job.qr_url.starts_with("https://") || job.qr_url.starts_with("http://")) {
        let message = format!(
            "the QR code's address is “{}”; give the guide's whole web address, starting with https:// and without \
             spaces",
            job.qr_url.escape_debug()
        );
        errors
            .push(PreflightItem::error("address-invalid", message).arg("address", job.qr_url.escape_debug()));
    }
    if !is_date(&job.date) {
        let message =
            format!("the date is “{}”; write it as year-month-day: 2026-11-25", job.date.escape_debug());
        errors.push(PreflightItem::error("date-invalid", message).arg("date", job.date.escape_debug()));
    }
    let distance = job.viewing_distance;
    // Written so that "not a number" is refused as well.
    if !(distance >= NEAREST && distance <= FARTHEST) {
        let message = format!(
            "the viewing distance is {} mm; give one from {} to {} mm",
            distance.0, NEAREST.0, FARTHEST.0
        );
        errors.push(PreflightItem::error("distance-invalid", message).arg("distance", distance.0));
    }
}

fn empty(place: &str) -> PreflightItem {
    let message = format!("{} has no words; write some", english(place));
    PreflightItem::error("text-empty", message).arg("place", place)
}

/// Whether a text is a day of the civil calendar, `YYYY-MM-DD`.
fn is_date(text: &str) -> bool {
    let parts: Vec<&str> = text.split('-').collect();
    let [year, month, day] = parts.as_slice() else { return false };
    let digits = |part: &str, length: usize| part.len() == length && part.bytes().all(|b| b.is_ascii_digit());
    if !(digits(year, 4) && digits(month, 2) && digits(day, 2)) {
        return false;
    }
    let (Ok(year), Ok(month), Ok(day)) = (year.parse::<u32>(), month.parse::<u32>(), day.parse::<u32>())
    else {
        return false;
    };
    let leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
    let days = match month {
        2 if leap => 29,
        2 => 28,
        4 | 6 | 9 | 11 => 30,
        1..=12 => 31,
        _ => return false,
    };
    (1..=days).contains(&day) && year > 0
}

/// One to four languages, no two alike, all saying the same things.
fn languages(job: &SheetJob, errors: &mut Vec<PreflightItem>) {
    let count = job.languages.len();
    if count == 0 || count > MOST_LANGUAGES {
        let message = format!("the sheet has {count} languages; choose one to {MOST_LANGUAGES}");
        errors.push(PreflightItem::error("language-count", message).arg("count", count));
        return;
    }
    let Some((first, others)) = job.languages.split_first() else { return };
    if first.sections.is_empty() {
        let message = "the sheet has no sections; choose what it is to say".to_owned();
        errors.push(PreflightItem::error("nothing-to-say", message));
    }
    let lines: usize = first.sections.iter().map(|section| section.lines.len()).sum();
    if job.sheet == SheetKind::RoundSticker && lines > 1 {
        let message = format!("a round label bears one message, not {lines}; choose one thing");
        errors.push(PreflightItem::error("one-message", message).arg("lines", lines));
    }
    for (index, block) in job.languages.iter().enumerate() {
        if job.languages.iter().take(index).any(|other| other.lang == block.lang) {
            let message = format!("the language “{}” is there twice; take one of them out", block.lang);
            errors.push(PreflightItem::error("language-twice", message).arg("lang", &block.lang));
        }
    }
    for block in others {
        if let Some(difference) = difference(first, block) {
            let message = format!(
                "“{}” does not say the same as “{}”: {}; every language needs the same sections and lines, \
                 translate what is missing",
                block.lang,
                first.lang,
                difference.english()
            );
            errors.push(
                PreflightItem::error("languages-differ", message)
                    .arg("lang", &block.lang)
                    .arg("first", &first.lang)
                    .arg("what", difference.what)
                    .arg("section", difference.section)
                    .arg("line", difference.line)
                    .arg("ours", difference.ours)
                    .arg("theirs", difference.theirs),
            );
        }
    }
}

/// A way in which a language's sections are not those of the leading one.
#[derive(Default)]
struct Difference {
    /// `sections`, `verdict`, `lines` or `picture`.
    what: &'static str,
    /// Counted from 1; 0 where it is about none.
    section: usize,
    line: usize,
    /// How many the leading language has, and this one.
    ours: usize,
    theirs: usize,
}

impl Difference {
    fn english(&self) -> String {
        let Self { what, section, line, ours, theirs } = self;
        match *what {
            "sections" => format!("{theirs} sections instead of {ours}"),
            "verdict" => format!("section {section} has another verdict"),
            "lines" => format!("section {section} has {theirs} lines instead of {ours}"),
            _ => format!("section {section}, line {line} has another picture or hazard mark"),
        }
    }
}

/// The first way in which a language's sections are not those of the leading one.
fn difference(first: &LanguageBlock, other: &LanguageBlock) -> Option<Difference> {
    if first.sections.len() != other.sections.len() {
        let (ours, theirs) = (first.sections.len(), other.sections.len());
        return Some(Difference { what: "sections", ours, theirs, ..Difference::default() });
    }
    first.sections.iter().zip(&other.sections).zip(1..).find_map(|((ours, theirs), section)| {
        if ours.tone != theirs.tone {
            return Some(Difference { what: "verdict", section, ..Difference::default() });
        }
        let (most, least) = (ours.lines.len(), theirs.lines.len());
        if most != least {
            return Some(Difference {
                what: "lines",
                section,
                ours: most,
                theirs: least,
                ..Difference::default()
            });
        }
        ours.lines.iter().zip(&theirs.lines).zip(1..).find_map(|((a, b), line)| {
            let same = a.hazard == b.hazard && a.pictogram == b.pictogram;
            (!same).then(|| Difference { what: "picture", section, line, ..Difference::default() })
        })
    })
}

fn texts(block: &LanguageBlock, errors: &mut Vec<PreflightItem>) {
    let lang = &block.lang;
    let tag = !lang.is_empty() && lang.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'-');
    if !tag {
        let message =
            format!("“{}” is no language tag; write one like en, es or zh-Hans", lang.escape_debug());
        errors.push(PreflightItem::error("language-invalid", message).arg("lang", lang.escape_debug()));
    }
    let mut take = |text: &str, place: String, needed: bool| {
        errors.extend(refuse_bad_characters(text, &place));
        if needed && text.trim().is_empty() {
            errors.push(empty(&place));
        }
    };
    take(&block.title, title(lang), true);
    take(&block.scan, scan(lang), false);
    for (index, text) in block.footer.iter().enumerate() {
        take(text, foot(lang, index + 1), true);
    }
    for (s, section) in block.sections.iter().enumerate() {
        take(&section.heading, heading(lang, s + 1), true);
        for (l, line) in section.lines.iter().enumerate() {
            take(&line.text, self::line(lang, s + 1, l + 1), true);
        }
    }
    for (s, section) in block.sections.iter().enumerate() {
        for (l, line) in section.lines.iter().enumerate() {
            let place = self::line(lang, s + 1, l + 1);
            let named = english(&place);
            if let Some(id) = &line.pictogram
                && pictogram(id).is_none()
            {
                let message =
                    format!("{named}: there is no pictogram “{}”; choose one of the list", id.escape_debug());
                errors.push(
                    PreflightItem::error("pictogram-unknown", message)
                        .arg("place", &place)
                        .arg("pictogram", id.escape_debug()),
                );
            }
            // A hazard never goes into a cart or bin, whatever a caller says.
            if line.hazard && section.tone == Tone::Yes {
                let message = format!(
                    "{named}: “{}” is a hazard under a verdict that accepts it; move it to where hazards go",
                    line.text
                );
                errors.push(
                    PreflightItem::error("hazard-accepted", message)
                        .arg("place", &place)
                        .arg("text", &line.text),
                );
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn dates_are_days_of_the_calendar() {
        for (text, good) in [
            ("2026-11-25", true),
            ("2024-02-29", true),
            ("2023-02-29", false),
            ("1900-02-29", false),
            ("2026-13-01", false),
            ("2026-00-10", false),
            ("2026-04-31", false),
            ("26-11-25", false),
            ("2026-11-25T00:00", false),
            ("25.11.2026", false),
            ("", false),
        ] {
            assert_eq!(is_date(text), good, "{text}");
        }
    }
}
