//! The job ticket: what the print shop has to know, as a file of its own.
//!
//! It is not a page of the press file. Whoever plates or imposes a press file takes every page in it for a sheet to
//! print, with trim and bleed; a page of words at its end gets printed four thousand times.

use serde::{Deserialize, Serialize};

use crate::display::{DisplayList, Item, Page, Role, Rule};
use crate::finding::{PreflightItem, PrintError};
use crate::font::{Face, FontFile, FontSet, Weight, fonts_needed};
use crate::ink::Ink;
use crate::job::{Direction, LanguageBlock, SheetJob, SheetKind};
use crate::make::Artifact;
use crate::pdf::{self, Profile};
use crate::sheet::{PageGeometry, SheetSize};
use crate::text::{Paragraph, Typesetter, Words, refuse_bad_characters};
use crate::unit::{Mm, Point, Pt, Rect};

/// A job ticket's words, already chosen and translated.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Ticket {
    /// The language's tag.
    pub lang: String,
    /// Which way it is written.
    pub direction: Direction,
    /// What it is called.
    pub title: String,
    /// What is asked and what is said, in order.
    pub rows: Vec<TicketRow>,
    /// The paper: width and height.
    pub paper: SheetSize,
    /// The job's name, for the file's title.
    pub job_name: String,
    /// Who issues the sheet.
    pub jurisdiction: String,
    /// The guide's edition.
    pub edition: String,
    /// The date of the job, `YYYY-MM-DD`.
    pub date: String,
}

/// A line of the ticket.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TicketRow {
    /// What it is about.
    pub label: String,
    /// What is said; several lines where it is a list.
    pub values: Vec<String>,
}

const MARGIN: Pt = Pt::inches(0.75);
const TITLE: Pt = Pt(20.0);
const BODY: Pt = Pt(10.0);
/// The labels' share of the width.
const LABELS: f64 = 0.3;
const ROW_GAP: Pt = Pt(5.0);
/// A ticket of more pages than this is none. Ours.
const MOST_PAGES: usize = 4;

/// Lays a ticket out and writes its file.
///
/// # Errors
/// When it has no rows, a text has characters that cannot be set or words too wide for the page, or it is longer than
/// four pages.
pub fn make_ticket(ticket: &Ticket, fonts: &FontSet, profile: &[u8]) -> Result<Artifact, PrintError> {
    let mut errors = Vec::new();
    for row in &ticket.rows {
        for text in row.values.iter().chain([&row.label]) {
            errors.extend(refuse_bad_characters(text, &row.label));
        }
    }
    if !errors.is_empty() {
        return Err(PrintError { items: errors });
    }
    let profile = Profile::read(profile)?;
    let setter = Typesetter::new(fonts);
    let geometry = PageGeometry {
        width: ticket.paper.width,
        height: ticket.paper.height,
        bleed: Pt::ZERO,
        safe: MARGIN,
        corner: Mm::ZERO,
        slug: Pt::ZERO,
    };
    let pages = lay_out(ticket, setter, geometry)?;
    let faces = fonts.faces().iter().map(Face::name).collect();
    let display_list = DisplayList { pages, faces };
    let pdf = pdf::write(&display_list, fonts, &described(ticket), &profile);
    Ok(Artifact { pdf, display_list, preflight: Vec::new() })
}

/// The bundled fonts a ticket needs, in order, as [`fonts_needed`] tells of a job.
pub fn ticket_fonts(ticket: &Ticket) -> Vec<FontFile> {
    let mut job = described(ticket);
    if let Some(block) = job.languages.first_mut() {
        block.footer =
            ticket.rows.iter().flat_map(|row| row.values.iter().chain([&row.label])).cloned().collect();
    }
    fonts_needed(&job)
}

/// The ticket as the writer asks about a file: its title, date and language.
fn described(ticket: &Ticket) -> SheetJob {
    SheetJob {
        sheet: SheetKind::Handout,
        size: Some(ticket.paper),
        fold: crate::job::Fold::Half,
        die_line: false,
        printers_mark: false,
        qr_level: None,
        stock: crate::job::Stock::default(),
        press: None,
        languages: vec![LanguageBlock {
            lang: ticket.lang.clone(),
            direction: ticket.direction,
            title: ticket.title.clone(),
            sections: Vec::new(),
            scan: String::new(),
            footer: Vec::new(),
            reviewed: true,
            outdated: Vec::new(),
            code_alt: String::new(),
            link_alt: String::new(),
        }],
        qr_url: String::new(),
        short_url: String::new(),
        jurisdiction: ticket.jurisdiction.clone(),
        edition: ticket.edition.clone(),
        job_name: format!("{}: {}", ticket.title, ticket.job_name),
        date: ticket.date.clone(),
        return_address: Vec::new(),
        indicia: Vec::new(),
        addressee: Vec::new(),
        print_notice: String::new(),
        viewing_distance: SheetJob::arms_length(),
    }
}

/// Sets paragraphs down the page's two columns.
struct Sheet<'a> {
    setter: Typesetter<'a>,
    direction: Direction,
    lang: String,
    geometry: PageGeometry,
}

impl Sheet<'_> {
    fn paragraph(&self, text: &str, place: &str, weight: Weight) -> Result<Paragraph, PrintError> {
        // A value may be a name or a number in another writing: only its edge is the ticket's.
        let words = Words { text, lang: &self.lang, direction: None, align: Some(self.direction), place };
        Paragraph::new(self.setter, words, weight)
    }

    /// Draws a text in an area given from the leading edge; returns its height.
    fn draw(
        &self,
        items: &mut Vec<Item>,
        text: (&str, &str, Weight),
        size: Pt,
        area: Rect,
        role: Role,
    ) -> Result<Pt, PrintError> {
        let (words, place, weight) = text;
        let paragraph = self.paragraph(words, place, weight)?;
        let setting = paragraph.set(size, area.width).map_err(|wide| -> PrintError {
            let message =
                format!("the job ticket's “{place}”: the word “{}” is too long for its column", wide.word);
            PreflightItem::error("word-too-wide", message)
                .arg("place", place)
                .arg("lang", &self.lang)
                .arg("word", wide.word)
                .arg("text", words)
                .arg("room", wide.room)
                .arg("floor", format!("{:.1}", size.0))
                .into()
        })?;
        let x = match self.direction {
            Direction::Ltr => area.x,
            Direction::Rtl => self.geometry.width.pt() - area.right(),
        };
        let at = Point { x, y: area.y };
        let lines = paragraph.draw(self.setter, &setting, at, area.width, role, Ink::BLACK);
        items.extend(lines.into_iter().map(Item::Text));
        Ok(setting.height())
    }
}

fn lay_out(ticket: &Ticket, setter: Typesetter<'_>, geometry: PageGeometry) -> Result<Vec<Page>, PrintError> {
    let sheet = Sheet { setter, direction: ticket.direction, lang: ticket.lang.clone(), geometry };
    let safe = geometry.safe_area();
    let labels = safe.width * LABELS;
    let column = |x: Pt, y: Pt, width: Pt| Rect::new(x, y, width, Pt::ZERO);
    let mut pages: Vec<Vec<Item>> = Vec::new();
    let mut items = Vec::new();
    let title = (ticket.title.as_str(), ticket.title.as_str(), Weight::Bold);
    let mut y = safe.y;
    y += sheet.draw(&mut items, title, TITLE, column(safe.x, y, safe.width), Role::Title)?;
    let name = (ticket.job_name.as_str(), ticket.title.as_str(), Weight::Bold);
    y += sheet.draw(&mut items, name, BODY * 1.2, column(safe.x, y, safe.width), Role::Heading)?
        + ROW_GAP * 2.0;
    for row in &ticket.rows {
        let mut own = Vec::new();
        rule(&mut own, safe, y);
        let top = y + ROW_GAP;
        let label = (row.label.as_str(), row.label.as_str(), Weight::Bold);
        let mut bottom =
            top + sheet.draw(&mut own, label, BODY, column(safe.x, top, labels - Pt(8.0)), Role::Heading)?;
        let mut down = top;
        for value in &row.values {
            let value = (value.as_str(), row.label.as_str(), Weight::Regular);
            let area = column(safe.x + labels, down, safe.width - labels);
            down += sheet.draw(&mut own, value, BODY, area, Role::Body)?;
        }
        bottom = bottom.max(down);
        if bottom > safe.bottom() && y > safe.y {
            pages.push(std::mem::take(&mut items));
            let up = safe.y - y;
            own = own.iter().map(|item| item.moved(Pt::ZERO, up)).collect();
            bottom += up;
        }
        if bottom > safe.bottom() || pages.len() >= MOST_PAGES {
            let message =
                format!("the job ticket is too long at “{}”; shorten what is typed there", row.label);
            return Err(PreflightItem::error("ticket-too-long", message).arg("place", &row.label).into());
        }
        items.extend(own);
        y = bottom + ROW_GAP;
    }
    pages.push(items);
    Ok(pages
        .into_iter()
        .enumerate()
        .map(|(index, items)| Page { name: format!("ticket-{}", index + 1), geometry, items })
        .collect())
}

fn rule(items: &mut Vec<Item>, safe: Rect, y: Pt) {
    items.push(Item::Rule(Rule {
        what: "row".to_owned(),
        from: Point { x: safe.x, y },
        to: Point { x: safe.right(), y },
        width: Pt(0.5),
        ink: Ink::RULE,
    }));
}
