//! From a guide to the words of a sheet.
//!
//! The app and the command line both come through here, so the same program, languages and date make
//! the same job, and with it the same bytes of PDF. Which lines a sheet has, and what each may leave
//! out, is decided by [`guide_data::summarise`]; here they are only put into words.

use std::num::NonZeroUsize;

use chrono::NaiveDate;
use guide_data::{
    Guide, LanguagePack, Line as SummaryLine, PrintedLine, PrintedSheet, Printing, Program, Summary,
    SummaryWanted, ValueLabel, WordBudget, summarise, summarise_within,
};
use locales::{Lang, Messages, args, t};
use print::{
    Direction, Fold, LanguageBlock, Line, Mm, Offer, PressSheet, QrLevel, Section, SheetJob, SheetKind,
    SheetSize, Step, Stock, Tone,
};

use locales::Words;

/// The most languages a sheet takes.
pub const MOST_LANGUAGES: usize = 4;

/// How many languages a sheet has when none are named: so many leave room for the lines that matter.
pub const USUAL_LANGUAGES: usize = 3;

/// How a sheet is to be made: what a print shop is told and what the guide does not say.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct SheetChoices {
    /// The finished size; none means the sheet's usual one.
    pub size: Option<SheetSize>,
    /// How a self-mailer is folded.
    pub fold: Fold,
    /// Draw the line along which a label is cut out.
    pub die_line: bool,
    /// Keep room for the printer's own mark.
    pub printers_mark: bool,
    /// How much damage the QR code must bear.
    pub qr_level: Option<QrLevel>,
    /// What it is printed on.
    pub stock: Stock,
    /// Several on a larger sheet.
    pub press: Option<PressSheet>,
    /// How far away it is read; none means what is usual for the sheet.
    pub distance: Option<Mm>,
    /// The one item that a round label is about, and that the code opens; none means the thing most often got
    /// wrong.
    pub item: Option<String>,
    /// Leave out the list of places on sheets that have one.
    pub without_places: bool,
    /// The most words that a line may have, in the wordiest of the sheet's languages; none means no limit. A line that
    /// is too long says fewer conditions, or none; one that is too long even so gives way to another. Hazards and the
    /// one message of a round label are not shortened.
    pub words: Option<NonZeroUsize>,
}

/// Which sheet is wanted, and about what.
#[derive(Debug, Clone, PartialEq)]
pub struct SheetWanted {
    /// The sheet.
    pub sheet: SheetKind,
    /// The stream it is about; none named means the recycling stream.
    pub stream: Option<String>,
    /// For this service zone alone; none named means all.
    pub zone: Option<String>,
    /// The date of the job, and the day on which its rules are looked at.
    pub date: NaiveDate,
    /// How it is to be made.
    pub choices: SheetChoices,
}

/// Why there is no sheet to be made. Words are in `locales` under `cli-<code>`.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum SheetProblem {
    /// There is no such stream, or none at all.
    UnknownStream(String),
    /// There is no such zone.
    UnknownZone(String),
    /// No language, or more than [`MOST_LANGUAGES`].
    Languages(usize),
    /// There is no such item.
    UnknownItem(String),
    /// A round label says what stays out; this item is accepted, or nothing is said of it.
    NothingAgainst(String),
}

/// A sheet's words, and what to do without where the room does not take all of them.
#[derive(Debug, Clone, PartialEq)]
pub struct Sheet {
    /// What `print` makes the file from, with every line that a sheet of its kind may have.
    pub job: SheetJob,
    /// What `print` may leave out. It takes no more of these steps than it needs.
    pub offer: Offer,
    /// The item of each line, in the order of the register, and what each step does to them.
    lines: Vec<(String, f64)>,
    changes: Vec<Change>,
    printed: PrintedSheet,
    /// What the register keeps of the hazards when they are said in brief.
    brief: Vec<PrintedLine>,
    /// The words of lines that no longer name where their thing goes, by their places in the register.
    unplaced: Vec<(usize, String)>,
}

/// What a step does to the lines of the register.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Change {
    /// It takes out the line at this place.
    Without(usize),
    /// The hazards, which come last, no longer name the places that take them.
    HazardsInBrief,
    /// More hazards stand on one line. Every one is still named.
    HazardsTogether,
    /// What stays out no longer names where it goes instead.
    RefusedInBrief,
}

/// A sheet as `print` has made it, and what a person should know about it.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct AsMade {
    /// Lines that are short of the whole truth, by item, with the share of cases in which following the
    /// line alone leads to the right place (below 1).
    pub shortened: Vec<(String, f64)>,
    /// The items for which there was no room, the most important first.
    pub left_out: Vec<String>,
    /// Whether there was no room for the places that take hazards.
    pub hazards_in_brief: bool,
    /// Whether there was no room for where things go that stay out.
    pub refused_in_brief: bool,
    /// What the register of printed sheets keeps of it; id, day and number of copies are still to be
    /// filled in.
    pub printed: PrintedSheet,
}

impl Sheet {
    /// The sheet after the first so many of its steps.
    #[must_use]
    pub fn as_made(&self, taken: usize) -> AsMade {
        let changes = self.changes.get(..taken).unwrap_or(&self.changes);
        let item = |at: usize| self.lines.get(at).map(|(item, _)| item.clone());
        let gone: Vec<usize> = changes
            .iter()
            .rev()
            .filter_map(|change| match change {
                Change::Without(at) => Some(*at),
                Change::HazardsInBrief | Change::HazardsTogether | Change::RefusedInBrief => None,
            })
            .collect();
        let hazards_in_brief = changes.contains(&Change::HazardsInBrief);
        let stays = |at: &usize| !gone.contains(at);
        let mut printed = self.printed.clone();
        if hazards_in_brief {
            printed.lines.truncate(printed.lines.len() - self.brief.len());
            printed.lines.extend(self.brief.iter().cloned());
        }
        let refused_in_brief = changes.contains(&Change::RefusedInBrief);
        if refused_in_brief {
            for (at, words) in &self.unplaced {
                // The stream stays in the entry: whoever was told nothing of it may still have learnt it elsewhere.
                if let Some(line) = printed.lines.get_mut(*at) {
                    line.words.clone_from(words);
                }
            }
        }
        let lines = printed.lines.into_iter().enumerate().filter(|(at, _)| stays(at));
        printed.lines = lines.map(|(_, line)| line).collect();
        let shortened = self.lines.iter().enumerate().filter(|(at, (_, share))| stays(at) && *share < 1.0);
        AsMade {
            shortened: shortened.map(|(_, line)| line.clone()).collect(),
            left_out: gone.into_iter().filter_map(item).collect(),
            hazards_in_brief,
            refused_in_brief,
            printed,
        }
    }
}

/// The messages of a language for a sheet of a program: those of its pack, and those that only the
/// coordinator's screens carry.
///
/// Values are not wrapped in isolating marks: `print` isolates by itself.
#[must_use]
pub fn messages(program: &Program, pack: &LanguagePack, desk: &[String]) -> Messages {
    let lang: Lang = pack.language.parse().unwrap_or_default();
    let region = region(program, &lang);
    let sources: Vec<&str> = pack.messages.iter().chain(desk).map(String::as_str).collect();
    let (messages, _) = Messages::from_ftl(lang.with_region(&region), &sources);
    messages.isolating(false)
}

/// The region whose units and number symbols hold for a program's readers in a language. A guide is of
/// one place: where the language does not state a region, that of the program's source language holds.
#[must_use]
pub fn region(program: &Program, lang: &Lang) -> String {
    let place: Lang = program.source_language.parse().unwrap_or_default();
    lang.region().or(place.region()).unwrap_or(HOME).to_owned()
}

/// What a sheet is called.
#[must_use]
pub fn kind_name(messages: &Messages, kind: SheetKind) -> String {
    match kind {
        SheetKind::CartLid => t!(messages, "sheet-lid"),
        SheetKind::RoundSticker => t!(messages, "sheet-sticker"),
        SheetKind::EnclosureSign => t!(messages, "sheet-sign"),
        SheetKind::PostcardMailer => t!(messages, "sheet-postcard"),
        SheetKind::SelfMailer => t!(messages, "sheet-self-mailer"),
        SheetKind::Handout => t!(messages, "sheet-handout"),
    }
}

/// The region of a program that states none, as on the resident's screens.
const HOME: &str = "US";

/// The job for a sheet in one to four languages, the first leading.
///
/// # Errors
/// When the stream or zone does not exist, or the number of languages is not one to four; for a round
/// label, when its item is unknown or nothing speaks against it.
pub fn sheet(
    guide: &Guide,
    program: &Program,
    languages: &[Words<'_>],
    wanted: &SheetWanted,
) -> Result<Sheet, SheetProblem> {
    let Some(first) = languages.first().filter(|_| languages.len() <= MOST_LANGUAGES) else {
        return Err(SheetProblem::Languages(languages.len()));
    };
    let stream = stream(guide, wanted)?;
    if let Some(zone) = &wanted.zone
        && !guide.zones.iter().any(|known| known.id == *zone)
    {
        return Err(SheetProblem::UnknownZone(zone.clone()));
    }
    let choices = &wanted.choices;
    if let Some(item) = &choices.item
        && guide.item_index(item).is_none()
    {
        return Err(SheetProblem::UnknownItem(item.clone()));
    }
    let size = choices.size.unwrap_or_else(|| wanted.sheet.usual_size());
    let Room { yes, no, elsewhere } = room(wanted.sheet);
    let asked = SummaryWanted {
        stream: Some(stream.clone()),
        zone: wanted.zone.clone(),
        yes,
        no,
        elsewhere,
        day: Some(wanted.date),
    };
    let summary = match wanted.sheet {
        SheetKind::RoundSticker => one_message(guide, &asked, choices.item.as_deref())?,
        _ => {
            let count = |line: &SummaryLine| {
                let said = languages.iter().map(|words| word_count(&put(guide, line, *words).text));
                said.max().unwrap_or_default()
            };
            let budget = choices.words.map(|most| WordBudget { most: most.get(), count: &count });
            summarise_within(guide, &asked, budget)
        }
    };
    let places = if choices.without_places { Vec::new() } else { places(guide, &summary, wanted.sheet) };
    let source = languages.iter().find(|words| words.pack.language == program.source_language);
    let entry = |summary: &Summary, hazard_places: bool| {
        PrintedSheet {
            sheet: wanted.sheet.id().to_owned(),
            languages: languages.iter().map(|words| words.pack.language.clone()).collect(),
            ..PrintedSheet::default()
        }
        .with_lines(program, &Printing { guide, wanted: &asked, summary, hazard_places }, &|line| {
            let words = *source.unwrap_or(first);
            match &line.hazard {
                Some(class) => words.say(&format!("sheet-hazard-{class}")),
                None => put(guide, line, words).text,
            }
        })
    };
    // A label of one message has no room for where the thing goes: its code leads there.
    let hazard_places = wanted.sheet != SheetKind::RoundSticker;
    let printed = entry(&summary, hazard_places);
    let mut blocks = languages
        .iter()
        .enumerate()
        .map(|(at, words)| block(guide, &summary, (*words, at == 0, &places), &stream, wanted))
        .collect::<Vec<_>>();
    for block in &mut blocks {
        block.outdated = outdated(program, block);
    }
    let (offer, changes) = match wanted.sheet {
        SheetKind::RoundSticker => (Offer::default(), Vec::new()),
        _ => offer(guide, &summary, languages, &blocks),
    };
    let brief = if changes.contains(&Change::HazardsInBrief) {
        entry(&Summary { hazards: summary.hazards.clone(), ..Summary::default() }, false).lines
    } else {
        Vec::new()
    };
    let unplaced = if changes.contains(&Change::RefusedInBrief) {
        let words = *source.unwrap_or(first);
        let lines = summary.no.iter().enumerate();
        lines.map(|(at, line)| (summary.yes.len() + at, conditioned(line, words))).collect()
    } else {
        Vec::new()
    };
    let lines = summary.yes.iter().chain(&summary.no).chain(&summary.elsewhere);
    let lines = lines.map(|line| (line.item.clone(), line.fidelity)).collect();
    let title = blocks.first().map(|block| block.title.clone()).unwrap_or_default();
    let jurisdiction = first.text("program.name").unwrap_or(&program.id).to_owned();
    let job = SheetJob {
        sheet: wanted.sheet,
        size: choices.size,
        fold: choices.fold,
        die_line: choices.die_line,
        printers_mark: choices.printers_mark,
        qr_level: choices.qr_level,
        stock: choices.stock.clone(),
        press: choices.press.clone(),
        qr_url: address(&guide.guide_url, languages, choices.item.as_deref()),
        short_url: program.print.short_url.clone(),
        job_name: format!("{jurisdiction} – {title}"),
        jurisdiction,
        edition: guide.edition.label.clone(),
        date: wanted.date.format("%Y-%m-%d").to_string(),
        return_address: program.contact.address.clone(),
        indicia: program.print.indicia.clone(),
        addressee: Vec::new(),
        print_notice: first.text("print.statement").unwrap_or_default().to_owned(),
        viewing_distance: choices.distance.unwrap_or_else(|| usual_distance(wanted.sheet, size)),
        languages: blocks,
    };
    Ok(Sheet { job, offer, lines, changes, printed, brief, unplaced })
}

/// How many words a text has; marks that stand alone are none. Where words are written without spaces, two characters are
/// one: most Chinese words have two (from memory).
fn word_count(text: &str) -> usize {
    let without_spaces = |c: char| ('\u{4e00}'..='\u{9fff}').contains(&c);
    text.split_whitespace()
        .map(|part| {
            let characters = part.chars().filter(|c| without_spaces(*c)).count();
            let others = part.split(without_spaces).filter(|run| run.contains(char::is_alphanumeric)).count();
            characters.div_ceil(2) + others
        })
        .sum()
}

/// How far away a sheet is read where nobody says it: a smaller sign hangs where people come nearer.
fn usual_distance(sheet: SheetKind, size: SheetSize) -> Mm {
    let usual = sheet.usual_distance();
    if sheet != SheetKind::EnclosureSign {
        return usual;
    }
    let share = (size.width / sheet.usual_size().width).clamp(0.0, 1.0);
    // In steps of a tenth of a metre, as people say it.
    Mm((usual.0 * share / 100.0).round() * 100.0).max(SheetJob::arms_length())
}

/// The stream asked for, else the recycling stream, else the first.
fn stream(guide: &Guide, wanted: &SheetWanted) -> Result<String, SheetProblem> {
    let found = match &wanted.stream {
        Some(id) => guide.streams.iter().find(|stream| stream.id == *id),
        None => guide.streams.iter().find(|stream| stream.kind == "recycling").or(guide.streams.first()),
    };
    found
        .map(|stream| stream.id.clone())
        .ok_or_else(|| SheetProblem::UnknownStream(wanted.stream.clone().unwrap_or_default()))
}

/// The most lines of each kind.
#[derive(Debug, Clone, Copy)]
struct Room {
    yes: usize,
    no: usize,
    elsewhere: usize,
}

/// A lid has 10 to 20 things to accept and 5 to 10 to refuse (TRADE "A lid is mostly pictures"); more are not taken in
/// by someone standing before it, whatever the room; what is read in the hand has more. Hazards are never left out.
fn room(sheet: SheetKind) -> Room {
    match sheet {
        SheetKind::CartLid => Room { yes: 16, no: 10, elsewhere: 5 },
        SheetKind::EnclosureSign => Room { yes: 14, no: 8, elsewhere: 0 },
        SheetKind::PostcardMailer => Room { yes: 14, no: 10, elsewhere: 6 },
        SheetKind::SelfMailer => Room { yes: 20, no: 12, elsewhere: 8 },
        SheetKind::Handout => Room { yes: 48, no: 30, elsewhere: 16 },
        // One message, which is chosen among all.
        SheetKind::RoundSticker => Room { yes: 0, no: 0, elsewhere: 0 },
    }
}

/// The fewest lines of each kind: with less a sheet says nothing. Ours.
const LEAST: Room = Room { yes: 4, no: 3, elsewhere: 0 };

/// The fewest where a sheet would else not be printed at all. Ours.
const BARE: Room = Room { yes: 3, no: 2, elsewhere: 0 };

/// In which proportion lines are kept as room gets scarce. Ours, from what a lid holds.
const SHARES: Room = Room { yes: 14, no: 8, elsewhere: 4 };

/// When the places that take hazards go: as the line of things to accept would that comes after so many. Ours: those
/// places keep people from danger, and the code and the telephone number lead there too.
const PLACES_OUTLAST: usize = 6;

/// So many things to accept, and the others in proportion, are worth smaller type. Ours.
const FAIR: usize = 8;

/// What to do without, the least important first: lines, and the places that take hazards.
///
/// Lines are in the order they matter: of what is accepted the commonest first, so that the last to go are those that
/// stand before every reader; of the rest what residents get wrong.
fn offer(
    guide: &Guide,
    summary: &Summary,
    languages: &[Words<'_>],
    blocks: &[LanguageBlock],
) -> (Offer, Vec<Change>) {
    let section = |tone: Tone| {
        blocks.first().and_then(|block| block.sections.iter().position(|section| section.tone == tone))
    };
    let cost = |rank: usize, share: usize| (rank + 1) * 1000 / share.max(1);
    let mut ranked: Vec<(usize, Step, Change)> = Vec::new();
    let mut offset = 0;
    for (tone, lines, least, share) in [
        (Tone::Yes, &summary.yes, LEAST.yes, SHARES.yes),
        (Tone::No, &summary.no, LEAST.no, SHARES.no),
        (Tone::Elsewhere, &summary.elsewhere, LEAST.elsewhere, SHARES.elsewhere),
    ] {
        // A list of places follows under the verdict of what goes elsewhere: the first section of a verdict is meant.
        let Some(section) = section(tone).filter(|_| !lines.is_empty()) else { continue };
        for line in least..lines.len() {
            let step = Step::Leave { section, line };
            ranked.push((cost(line, share), step, Change::Without(offset + line)));
        }
        offset += lines.len();
    }
    if let Some(section) = section(Tone::Caution) {
        let brief = |words: &Words<'_>| cautions(guide, &summary.hazards, *words, false);
        let lines: Vec<Vec<Line>> = languages.iter().map(brief).collect();
        let same = |(block, lines): (&LanguageBlock, &Vec<Line>)| {
            block.sections.get(section).is_some_and(|own| own.lines == *lines)
        };
        if !blocks.iter().zip(&lines).all(same) {
            let step = Step::Brief { section, lines };
            ranked.push((cost(PLACES_OUTLAST, SHARES.yes), step, Change::HazardsInBrief));
        }
    }
    ranked.sort_by_key(|(cost, _, _)| std::cmp::Reverse(*cost));
    let for_ease = ranked.iter().filter(|(it, _, _)| *it > cost(FAIR, SHARES.yes)).count();
    let last = last_resort(guide, summary, (languages, blocks), &section);
    let (steps, changes) = ranked.into_iter().map(|(_, step, change)| (step, change)).chain(last).unzip();
    (Offer { steps, for_ease }, changes)
}

/// What is done, in this order, before a sheet is refused: what costs a reader nothing but a glance comes first.
///
/// Hazards stand on fewer lines, and in the end on one, each still named. What stays out no longer names where it goes
/// instead. Then there are fewer examples.
fn last_resort(
    guide: &Guide,
    summary: &Summary,
    (languages, blocks): (&[Words<'_>], &[LanguageBlock]),
    section: &dyn Fn(Tone) -> Option<usize>,
) -> Vec<(Step, Change)> {
    let mut steps = Vec::new();
    let hazards = |together: usize| -> Option<(Step, Change)> {
        let lines = |words: &Words<'_>| crowded_cautions(guide, &summary.hazards, *words, together);
        let step =
            Step::Brief { section: section(Tone::Caution)?, lines: languages.iter().map(lines).collect() };
        (summary.hazards.len() > 1).then_some((step, Change::HazardsTogether))
    };
    let refused = |least: usize| -> Option<Step> {
        let section = section(Tone::No)?;
        let lines = |(words, block): (&Words<'_>, &LanguageBlock)| {
            let own = block.sections.get(section).map_or(&[][..], |section| &section.lines);
            let lines = summary.no.iter().zip(own).take(least);
            lines.map(|(line, own)| Line { text: conditioned(line, *words), ..own.clone() }).collect()
        };
        Some(Step::Brief { section, lines: languages.iter().zip(blocks).map(lines).collect() })
    };
    steps.extend(hazards(HAZARDS_PER_CROWDED_LINE));
    let names = |line: &SummaryLine| languages.iter().any(|words| elsewhere(guide, line, *words).is_some());
    if summary.no.iter().take(LEAST.no).any(names) {
        steps.extend(refused(LEAST.no).map(|step| (step, Change::RefusedInBrief)));
    }
    steps.extend(hazards(summary.hazards.len()));
    let no = (BARE.no..summary.no.len().min(LEAST.no)).rev();
    steps.extend(no.filter_map(|at| Some((refused(at)?, Change::Without(summary.yes.len() + at)))));
    if let Some(section) = section(Tone::Yes) {
        let yes = (BARE.yes..summary.yes.len().min(LEAST.yes)).rev();
        steps.extend(yes.map(|line| (Step::Leave { section, line }, Change::Without(line))));
    }
    steps
}

/// The summary of a round label: one thing that stays out, or one hazard.
fn one_message(guide: &Guide, asked: &SummaryWanted, item: Option<&str>) -> Result<Summary, SheetProblem> {
    let all = usize::MAX;
    let asked = SummaryWanted { yes: 0, no: all, elsewhere: all, ..asked.clone() };
    let Some(item) = item else {
        let mut found = summarise(guide, &asked).no;
        found.truncate(1);
        let nothing = found.is_empty();
        let one = Summary { no: found, ..Summary::default() };
        return if nothing { Err(SheetProblem::NothingAgainst(String::new())) } else { Ok(one) };
    };
    // A hazard's line speaks of its whole class: with one item in the guide it is that item's.
    let mut only = guide.clone();
    only.items.retain(|known| known.id == item);
    let one = summarise(&only, &asked);
    let lines = one.no.len() + one.elsewhere.len() + one.hazards.len();
    if lines == 0 { Err(SheetProblem::NothingAgainst(item.to_owned())) } else { Ok(one) }
}

/// The sites that a sheet's lines lead to, by id: those of every channel it names. Only sheets that are read at
/// the table have room for them.
fn places(guide: &Guide, summary: &Summary, sheet: SheetKind) -> Vec<String> {
    if !matches!(sheet, SheetKind::SelfMailer | SheetKind::Handout) {
        return Vec::new();
    }
    let named: Vec<&str> =
        summary.elsewhere.iter().chain(&summary.hazards).filter_map(|line| line.channel.as_deref()).collect();
    let leads = |channels: &[String]| channels.iter().any(|channel| named.contains(&channel.as_str()));
    guide.sites.iter().filter(|site| leads(&site.channels)).map(|site| site.id.clone()).collect()
}

/// What the QR code holds: the guide in the sheet's language. A sheet in several languages leaves the
/// choice to the reader's phone. A sheet about one item opens it.
fn address(guide_url: &str, languages: &[Words<'_>], item: Option<&str>) -> String {
    let base = guide_url.split('#').next().unwrap_or_default();
    match (languages, item) {
        ([only], None) => format!("{base}#/{}/", only.pack.language),
        ([only], Some(item)) => format!("{base}#/{}/item/{item}", only.pack.language),
        (_, Some(item)) => format!("{base}#/item/{item}"),
        (_, None) => base.to_owned(),
    }
}

fn block(
    guide: &Guide,
    summary: &Summary,
    (words, leading, places): (Words<'_>, bool, &[String]),
    stream: &str,
    wanted: &SheetWanted,
) -> LanguageBlock {
    let messages = words.messages;
    let alone = wanted.sheet == SheetKind::RoundSticker;
    let sections = [
        (Tone::Yes, t!(messages, "sheet-heading-yes"), &summary.yes),
        (Tone::No, t!(messages, "sheet-heading-no"), &summary.no),
        (Tone::Elsewhere, t!(messages, "sheet-heading-elsewhere"), &summary.elsewhere),
        (Tone::Caution, t!(messages, "sheet-heading-caution"), &summary.hazards),
    ];
    let mut block = LanguageBlock {
        lang: words.pack.language.clone(),
        direction: if words.pack.direction == "rtl" { Direction::Rtl } else { Direction::Ltr },
        title: title(guide, words, stream, wanted.zone.as_deref()),
        sections: sections
            .into_iter()
            .filter(|(_, _, lines)| !lines.is_empty())
            .flat_map(|(tone, heading, lines)| {
                let lines = match tone {
                    Tone::Caution => cautions(guide, lines, words, !alone),
                    _ => lines.iter().map(|line| put(guide, line, words)).collect(),
                };
                let lines = if alone {
                    lines.into_iter().map(|line| by_itself(line, words)).collect()
                } else {
                    lines
                };
                // Where to take things follows what is to be taken there.
                let before_hazards =
                    (tone == Tone::Caution).then(|| place_list(guide, places, words, leading)).flatten();
                before_hazards.into_iter().chain([Section { tone, heading, lines }])
            })
            .collect(),
        scan: t!(messages, "sheet-scan"),
        footer: footer(guide, words, stream, wanted),
        reviewed: !words.pack.unreviewed,
        outdated: Vec::new(),
        code_alt: t!(messages, "sheet-code-alt"),
        link_alt: t!(messages, "sheet-link-alt"),
    };
    mark_contradictions(&mut block, guide, summary, words);
    block
}

/// Writes beside each line whose words also name another line's thing, and send it elsewhere, which one that is.
fn mark_contradictions(block: &mut LanguageBlock, guide: &Guide, summary: &Summary, words: Words<'_>) {
    let lists = [(Tone::Yes, &summary.yes), (Tone::No, &summary.no), (Tone::Elsewhere, &summary.elsewhere)];
    let lines: Vec<(Tone, usize, &SummaryLine)> = lists
        .into_iter()
        .flat_map(|(tone, lines)| lines.iter().enumerate().map(move |(at, line)| (tone, at, line)))
        .collect();
    let folded: Vec<(&SummaryLine, String)> =
        lines.iter().map(|(_, _, line)| (*line, guide_data::fold(&conditioned(line, words)))).collect();
    for (general, special) in guide_data::contradictions(&folded) {
        let (Some((tone, at, _)), Some((_, _, other))) = (lines.get(general), lines.get(special)) else {
            continue;
        };
        let section = block.sections.iter_mut().find(|section| section.tone == *tone);
        if let Some(line) = section.and_then(|section| section.lines.get_mut(*at)) {
            line.contradicts.get_or_insert_with(|| put(guide, other, words).text);
        }
    }
}

/// The program's texts that a language prints although their source has changed since they were translated.
fn outdated(program: &Program, block: &LanguageBlock) -> Vec<String> {
    let mut printed: Vec<&str> = vec![&block.title];
    printed.extend(block.footer.iter().map(String::as_str));
    for section in &block.sections {
        printed.extend(section.lines.iter().map(|line| line.text.as_str()));
    }
    let mut found: Vec<String> = Vec::new();
    guide_data::each_text(program, &mut |_, text| {
        let state = text.state(&block.lang, &program.source_language);
        if let (guide_data::TextState::Outdated, Some(words)) = (state, text.get(&block.lang))
            && printed.iter().any(|line| line.contains(words))
            && !found.iter().any(|known| known == words)
        {
            found.push(words.to_owned());
        }
    });
    found
}

/// The message of a round label: nothing around it says that the thing stays out.
fn by_itself(line: Line, words: Words<'_>) -> Line {
    Line { text: t!(words.messages, "sheet-not-here", thing = line.text), ..line }
}

/// Where to take things: a name, an address and a telephone number a line.
///
/// The leading language's line has the address; the others', below it, only what the place is called in them.
fn place_list(guide: &Guide, places: &[String], words: Words<'_>, leading: bool) -> Option<Section> {
    let lines: Vec<Line> = guide
        .sites
        .iter()
        .filter(|site| places.contains(&site.id))
        .map(|site| {
            let name = words.named("site", &site.id);
            // In a line from right to left an address of another writing would otherwise lose its number, which is
            // taken for a word of the line.
            let apart = |part: &str| {
                let rtl = words.pack.direction == "rtl";
                if rtl { format!("\u{2068}{part}\u{2069}") } else { part.to_owned() }
            };
            let all = [name.as_str(), site.address.trim(), site.phone.trim()];
            let shown = if leading { all.len() } else { 1 };
            let parts: Vec<String> =
                all.into_iter().take(shown).filter(|part| !part.is_empty()).map(apart).collect();
            let text = parts.join(&t!(words.messages, "sheet-place-between"));
            Line { text, ..Line::default() }
        })
        .collect();
    let heading = t!(words.messages, "sheet-heading-places");
    (!lines.is_empty()).then_some(Section { tone: Tone::Elsewhere, heading, lines })
}

/// The container's name, which is what stands before the reader; the stream's where there are several.
fn title(guide: &Guide, words: Words<'_>, stream: &str, zone: Option<&str>) -> String {
    match guide.containers(stream, zone, None).as_slice() {
        [only] => words.text(&format!("container.{}", only.id)).map(str::to_owned),
        _ => None,
    }
    .unwrap_or_else(|| words.named("stream", stream))
}

/// One line: the thing, under which condition, and where to when that is not here.
fn put(guide: &Guide, line: &SummaryLine, words: Words<'_>) -> Line {
    let messages = words.messages;
    let mut text = conditioned(line, words);
    if let Some(place) = elsewhere(guide, line, words) {
        text = t!(messages, "sheet-line-where", item = text, place = place);
    }
    // Rounded down: a line that is wrong at times is never shown as always right.
    let share = (line.fidelity * 1000.0).floor() as u16;
    Line {
        text,
        alt: alt(guide, line, words),
        pictogram: picture(guide, line),
        hazard: line.hazard.is_some(),
        fidelity: (line.fidelity < 1.0).then_some(share),
        contradicts: None,
    }
}

/// A line's thing under its condition, without the place it goes to.
fn conditioned(line: &SummaryLine, words: Words<'_>) -> String {
    let messages = words.messages;
    let conditions: Vec<String> =
        line.qualifiers.iter().map(|(fact, labels)| condition(fact, labels, words)).collect();
    let item = words.item(&line.item);
    if conditions.is_empty() {
        return item;
    }
    t!(messages, "sheet-line-when", item = item, condition = messages.list_and(&conditions))
}

/// What a line's picture shows: the thing it stands for, or the sign that a hazard without a picture gets.
fn alt(guide: &Guide, line: &SummaryLine, words: Words<'_>) -> String {
    match picture(guide, line) {
        Some(_) => t!(words.messages, "sheet-picture-alt", item = words.item(&line.item)),
        None if line.hazard.is_some() => t!(words.messages, "sheet-caution-alt"),
        None => String::new(),
    }
}

/// The values for which a line holds: "clean", "number 1 or 5".
fn condition(fact: &str, labels: &[ValueLabel], words: Words<'_>) -> String {
    // Names begin with capitals; other values were written to stand alone and here follow an item.
    let named = matches!(fact, "zone" | "item");
    let values: Vec<String> = labels
        .iter()
        .map(|label| words.value(fact, label))
        .map(|value| if named { value } else { lowered(&value) })
        .collect();
    let values = words.messages.list_or(&values);
    let own = words.messages.find(&format!("sheet-when-{fact}"), &args!(values = values.as_str()));
    own.map_or(values, |found| found.text)
}

fn lowered(value: &str) -> String {
    let mut letters = value.chars();
    letters.next().map_or_else(String::new, |first| first.to_lowercase().chain(letters).collect())
}

/// So many hazard classes are still taken in at a glance. A judgement, no source.
const HAZARDS_PER_LINE: usize = 4;

/// The hazards, those that go to the same place together. Each speaks of its whole class: one item
/// that stands for it would make the others seem safe.
fn cautions(guide: &Guide, lines: &[SummaryLine], words: Words<'_>, places: bool) -> Vec<Line> {
    let mut groups: Vec<(Option<&str>, Vec<&SummaryLine>)> = Vec::new();
    for line in lines {
        let channel = line.channel.as_deref().filter(|_| places);
        let with_room = |(known, together): &&mut (Option<&str>, Vec<&SummaryLine>)| {
            *known == channel && together.len() < HAZARDS_PER_LINE
        };
        match groups.iter_mut().find(with_room) {
            Some((_, together)) => together.push(line),
            None => groups.push((channel, vec![line])),
        }
    }
    groups.into_iter().map(|(channel, together)| caution(guide, channel, &together, words)).collect()
}

/// So many hazard classes share a line where there is no room for more lines. Ours.
const HAZARDS_PER_CROWDED_LINE: usize = 5;

/// The hazards on as few lines as hold so many each, about as many on every line, without the places that take them.
fn crowded_cautions(guide: &Guide, lines: &[SummaryLine], words: Words<'_>, most: usize) -> Vec<Line> {
    let groups = lines.len().div_ceil(most.max(1)).max(1);
    let cautions = lines.chunks(lines.len().div_ceil(groups).max(1)).map(|together| {
        let line = caution(guide, None, &together.iter().collect::<Vec<_>>(), words);
        // One thing's picture beside all of them would stand for that thing alone: they get the warning sign.
        let alone = groups == 1;
        Line {
            pictogram: line.pictogram.filter(|_| !alone),
            alt: if alone { t!(words.messages, "sheet-caution-alt") } else { line.alt },
            ..line
        }
    });
    cautions.collect()
}

fn caution(guide: &Guide, channel: Option<&str>, together: &[&SummaryLine], words: Words<'_>) -> Line {
    let messages = words.messages;
    let classes = together.iter().filter_map(|line| line.hazard.as_deref());
    let names: Vec<String> = classes
        .map(|class| words.say(&format!("sheet-hazard-{class}")))
        .enumerate()
        .map(|(at, name)| if at == 0 { name } else { lowered(&name) })
        .collect();
    let names = names.join(&t!(messages, "sheet-hazards-between"));
    let text = match channel.map(|id| words.named("channel", id)) {
        Some(place) => t!(messages, "sheet-line-where", item = names, place = place),
        None => names,
    };
    let first = together.first();
    Line {
        text,
        alt: first.map(|line| alt(guide, line, words)).unwrap_or_default(),
        pictogram: first.and_then(|line| picture(guide, line)),
        hazard: true,
        ..Line::default()
    }
}

fn picture(guide: &Guide, line: &SummaryLine) -> Option<String> {
    guide
        .item_index(&line.item)
        .and_then(|at| guide.items.get(at))
        .map(|item| item.pictogram.clone())
        .filter(|id| print::pictogram(id).is_some())
}

/// The channel of a thing, or its own stream; the refuse stream goes without saying.
fn elsewhere(guide: &Guide, line: &SummaryLine, words: Words<'_>) -> Option<String> {
    if let Some(channel) = &line.channel {
        return Some(words.named("channel", channel));
    }
    let stream = line.stream.as_ref()?;
    let refuse = guide.streams.iter().any(|known| known.id == *stream && known.kind == "refuse");
    (!refuse).then(|| words.named("stream", stream))
}

fn footer(guide: &Guide, words: Words<'_>, stream: &str, wanted: &SheetWanted) -> Vec<String> {
    let messages = words.messages;
    let mut lines = Vec::new();
    // A mailer is read at the table, where "when and how to set out" is worth knowing; a lid is not. Where
    // zones have containers of their own, a mailer for one zone says it.
    let at_the_table = wanted.sheet.is_mailed() || wanted.sheet == SheetKind::Handout;
    if let (true, [only]) = (at_the_table, guide.containers(stream, wanted.zone.as_deref(), None).as_slice())
    {
        lines.extend(words.text(&format!("container.{}.set-out", only.id)).map(str::to_owned));
    }
    let phone = guide.contact.phone.trim();
    if let (Some(name), false) = (words.text("contact.name"), phone.is_empty()) {
        lines.push(t!(messages, "sheet-contact", name = name, phone = phone));
    }
    lines
}

#[cfg(test)]
mod tests {
    use super::word_count;

    #[test]
    fn words_are_counted_with_and_without_spaces() {
        for (text, words) in [
            ("", 0),
            ("Yogurt or margarine tub (number 1, 2, or 5)", 9),
            ("Pot de yogourt : ailleurs", 4),
            ("Pizza box – clean", 3),
            ("纸箱", 1),
            ("水瓶或汽水瓶", 3),
            ("玻璃瓶（Fernlow或Tern Heights 公寓）", 6),
            ("생수병이나 음료수병", 2),
            ("काँच की बोतल", 3),
        ] {
            assert_eq!(word_count(text), words, "{text}");
        }
    }
}
