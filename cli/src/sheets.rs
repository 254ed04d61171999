//! From a guide to the words of a sheet.
//!
//! The app and the command line both come through here, so the same program, languages and date make
//! the same job, and with it the same bytes of PDF. Which lines a sheet has, and what each may leave
//! out, is decided by [`guide_data::summarise`]; here they are only put into words.

use chrono::NaiveDate;
use guide_data::{
    Guide, LanguagePack, Line as SummaryLine, PrintedSheet, Printing, Program, Summary, SummaryWanted,
    ValueLabel, summarise,
};
use locales::{Lang, Messages, args, t};
use print::{
    Direction, Fold, LanguageBlock, Line, Mm, PressSheet, QrLevel, Section, SheetJob, SheetKind, SheetSize,
    Stock, Tone,
};

use crate::words::Words;

/// The most languages a sheet takes.
pub const MOST_LANGUAGES: usize = 4;

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

/// A sheet's words, and what a person should know about them.
#[derive(Debug, Clone, PartialEq)]
pub struct Sheet {
    /// What `print` makes the file from.
    pub job: SheetJob,
    /// Lines that are short of the whole truth, by item, with the share of cases in which following the
    /// line alone leads to the right place (below 1).
    pub shortened: Vec<(String, f64)>,
    /// What the register of printed sheets keeps of it; id, day and number of copies are still to be
    /// filled in.
    pub printed: PrintedSheet,
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
    let Room { yes, no, elsewhere, hazard_places } =
        room(wanted.sheet, languages.len()).for_size(wanted.sheet, size);
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
        _ => summarise(guide, &asked),
    };
    let places = if choices.without_places { Vec::new() } else { places(guide, &summary, wanted.sheet) };
    let source = languages.iter().find(|words| words.pack.language == program.source_language);
    let printed = PrintedSheet {
        sheet: wanted.sheet.id().to_owned(),
        languages: languages.iter().map(|words| words.pack.language.clone()).collect(),
        ..PrintedSheet::default()
    }
    .with_lines(
        program,
        &Printing { guide, wanted: &asked, summary: &summary, hazard_places },
        &|line| {
            let words = *source.unwrap_or(first);
            match &line.hazard {
                Some(class) => words.say(&format!("sheet-hazard-{class}")),
                None => put(guide, line, words).text,
            }
        },
    );
    let shortened = shortened(&summary);
    let blocks = languages
        .iter()
        .enumerate()
        .map(|(at, words)| block(guide, &summary, (*words, at == 0, &places), &stream, wanted, hazard_places))
        .collect::<Vec<_>>();
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
    Ok(Sheet { job, shortened, printed })
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

/// What a sheet has room for.
#[derive(Debug, Clone, Copy)]
struct Room {
    yes: usize,
    no: usize,
    elsewhere: usize,
    /// Whether hazards are followed by the place that takes them.
    hazard_places: bool,
}

/// A lid has 10 to 20 things to accept and 5 to 10 to refuse. Every further language needs the same room
/// again, so there are fewer of each. Hazards are never left out; where there is no room for the places
/// that take them, the code and the telephone number lead there.
fn room(sheet: SheetKind, languages: usize) -> Room {
    let room = |yes, no, elsewhere, hazard_places| Room { yes, no, elsewhere, hazard_places };
    match (sheet, languages) {
        (SheetKind::CartLid, 0 | 1) => room(14, 8, 4, true),
        (SheetKind::CartLid, 2) => room(10, 6, 3, true),
        (SheetKind::CartLid, 3) => room(9, 6, 0, false),
        (SheetKind::CartLid, _) => room(6, 4, 0, false),
        (SheetKind::EnclosureSign, 0 | 1) => room(12, 8, 0, false),
        (SheetKind::EnclosureSign, 2) => room(9, 6, 0, false),
        (SheetKind::EnclosureSign, 3) => room(6, 4, 0, false),
        (SheetKind::EnclosureSign, _) => room(4, 3, 0, false),
        (SheetKind::PostcardMailer, 0 | 1) => room(12, 8, 5, true),
        (SheetKind::PostcardMailer, 2) => room(8, 6, 3, false),
        (SheetKind::PostcardMailer, 3) => room(6, 3, 0, false),
        (SheetKind::PostcardMailer, _) => room(4, 2, 0, false),
        (SheetKind::SelfMailer, 0 | 1) => room(20, 12, 8, true),
        (SheetKind::SelfMailer, 2) => room(14, 8, 5, true),
        (SheetKind::SelfMailer, 3) => room(9, 6, 3, true),
        (SheetKind::SelfMailer, _) => room(6, 4, 2, false),
        (SheetKind::Handout, 0 | 1) => room(48, 30, 16, true),
        (SheetKind::Handout, 2) => room(30, 20, 10, true),
        (SheetKind::Handout, 3) => room(20, 14, 6, true),
        (SheetKind::Handout, _) => room(14, 10, 4, true),
        // One message, which is chosen among all.
        (SheetKind::RoundSticker, _) => room(0, 0, 0, false),
    }
}

/// The share of the usual sheet's area below which one is small. Ours.
const SMALL_SHEET: f64 = 0.6;

impl Room {
    /// A smaller label holds less, a larger one more: in proportion to the usual one's area, but for signs and mail
    /// at most so much as the usual one, because larger ones are read from farther away or are no roomier inside.
    fn for_size(self, sheet: SheetKind, size: SheetSize) -> Self {
        if matches!(sheet, SheetKind::SelfMailer | SheetKind::Handout | SheetKind::RoundSticker) {
            return self;
        }
        let usual = sheet.usual_size();
        let most = if sheet == SheetKind::CartLid { 1.5 } else { 1.0 };
        let share = (size.width / usual.width * (size.height / usual.height)).min(most);
        // Title, foot and hazards take as much room on a small sheet: what is left is less than its share.
        let share = if share < SMALL_SHEET { share * 0.7 } else { share };
        // Truncated on purpose: half a line is none. Nonsense sizes are refused when the sheet is made.
        let part = |lines: usize| {
            let scaled = f64::from(u32::try_from(lines).unwrap_or(0)) * share;
            if scaled >= 1.0 { scaled as usize } else { lines.min(1) }
        };
        // On a small one the hazards keep their lines and everything else makes room for them.
        let small = share < SMALL_SHEET;
        let elsewhere = if small { 0 } else { part(self.elsewhere) };
        let hazard_places = self.hazard_places && !small;
        Self { yes: part(self.yes), no: part(self.no), elsewhere, hazard_places }
    }
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

fn shortened(summary: &Summary) -> Vec<(String, f64)> {
    let lines = summary.yes.iter().chain(&summary.no).chain(&summary.elsewhere);
    lines.filter(|line| line.fidelity < 1.0).map(|line| (line.item.clone(), line.fidelity)).collect()
}

fn block(
    guide: &Guide,
    summary: &Summary,
    (words, leading, places): (Words<'_>, bool, &[String]),
    stream: &str,
    wanted: &SheetWanted,
    hazard_places: bool,
) -> LanguageBlock {
    let messages = words.messages;
    let alone = wanted.sheet == SheetKind::RoundSticker;
    let sections = [
        (Tone::Yes, t!(messages, "sheet-heading-yes"), &summary.yes),
        (Tone::No, t!(messages, "sheet-heading-no"), &summary.no),
        (Tone::Elsewhere, t!(messages, "sheet-heading-elsewhere"), &summary.elsewhere),
        (Tone::Caution, t!(messages, "sheet-heading-caution"), &summary.hazards),
    ];
    LanguageBlock {
        lang: words.pack.language.clone(),
        direction: if words.pack.direction == "rtl" { Direction::Rtl } else { Direction::Ltr },
        title: title(guide, words, stream, wanted.zone.as_deref()),
        sections: sections
            .into_iter()
            .filter(|(_, _, lines)| !lines.is_empty())
            .flat_map(|(tone, heading, lines)| {
                let lines = match tone {
                    Tone::Caution => cautions(guide, lines, words, hazard_places),
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
    }
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
            Line { text, pictogram: None, hazard: false }
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
    let conditions: Vec<String> =
        line.qualifiers.iter().map(|(fact, labels)| condition(fact, labels, words)).collect();
    let mut text = words.item(&line.item);
    if !conditions.is_empty() {
        text = t!(messages, "sheet-line-when", item = text, condition = messages.list_and(&conditions));
    }
    if let Some(place) = elsewhere(guide, line, words) {
        text = t!(messages, "sheet-line-where", item = text, place = place);
    }
    Line { text, pictogram: picture(guide, line), hazard: line.hazard.is_some() }
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
    let messages = words.messages;
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
    groups
        .into_iter()
        .map(|(channel, together)| {
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
            let pictogram = together.first().and_then(|line| picture(guide, line));
            Line { text, pictogram, hazard: true }
        })
        .collect()
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
