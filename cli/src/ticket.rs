//! The job ticket in words: what a print shop has to know of one job, whichever files it is in.

use guide_data::Program;
use locales::{DateStyle, Messages, t};
use print::{Mm, SheetJob, SheetKind, Ticket, TicketRow, Turning};

use crate::sheets::{kind_name, region};

/// One file of a job.
#[derive(Debug, Clone, Copy)]
pub struct TicketFile<'t> {
    /// What it was made from.
    pub job: &'t SheetJob,
    /// The file's name.
    pub name: &'t str,
    /// How many pages it has.
    pub pages: usize,
    /// How many copies are wanted; 0 when nobody has said it.
    pub copies: u32,
}

/// The job ticket of files that are made alike but for their languages; nothing without a file.
#[must_use]
pub fn ticket(
    files: &[TicketFile<'_>],
    program: &Program,
    contact: &str,
    ink_limit: u16,
    messages: &Messages,
) -> Option<Ticket> {
    let first = files.first()?;
    let job = first.job;
    let lang = messages.lang();
    let letter = matches!(region(program, lang).as_str(), "US" | "CA" | "MX" | "PH");
    let paper = if letter { "letter" } else { "a4" };
    Some(Ticket {
        lang: lang.tag(),
        direction: match lang.direction() {
            locales::Direction::RightToLeft => print::Direction::Rtl,
            locales::Direction::LeftToRight => print::Direction::Ltr,
        },
        title: t!(messages, "ticket-title"),
        rows: rows((files, job), program, contact, ink_limit, messages),
        paper: print::SheetSize::named(paper)?,
        job_name: job.job_name.clone(),
        jurisdiction: job.jurisdiction.clone(),
        edition: job.edition.clone(),
        date: job.date.clone(),
    })
}

/// Collects rows, leaving out those that say nothing.
#[derive(Default)]
struct Rows(Vec<TicketRow>);

impl Rows {
    fn add(&mut self, label: String, values: impl IntoIterator<Item = String>) {
        let values: Vec<String> = values.into_iter().filter(|value| !value.trim().is_empty()).collect();
        if !values.is_empty() {
            self.0.push(TicketRow { label, values });
        }
    }
}

fn rows(
    (files, job): (&[TicketFile<'_>], &SheetJob),
    program: &Program,
    contact: &str,
    ink_limit: u16,
    messages: &Messages,
) -> Vec<TicketRow> {
    let m = messages;
    let plan = job.plan();
    let mut rows = Rows::default();
    rows.add(t!(m, "ticket-sheet"), [kind_name(m, job.sheet)]);
    let file = |file: &TicketFile<'_>| t!(m, "ticket-file", file = file.name, pages = file.pages);
    rows.add(t!(m, "ticket-files"), files.iter().map(file));
    rows.add(t!(m, "ticket-quantity"), files.iter().map(|file| quantity(file, m)));
    let size = job.finished_size();
    rows.add(t!(m, "ticket-trim"), [measured(size.width, size.height, m)]);
    if let Some(page) = plan.pages.first() {
        let geometry = page.geometry;
        rows.add(t!(m, "ticket-bleed"), [millimetres(geometry.bleed.mm(), m)]);
        let corners = if geometry.is_round() {
            t!(m, "ticket-round")
        } else if geometry.corner > Mm::ZERO {
            t!(m, "ticket-radius", radius = m.number(geometry.corner.0, 2))
        } else {
            t!(m, "ticket-square")
        };
        let die = if job.die_line { t!(m, "ticket-die") } else { String::new() };
        rows.add(t!(m, "ticket-corners"), [corners, die]);
        let fold = |at: &print::Pt| t!(m, "ticket-fold", at = m.number(at.mm().0, 1));
        let mut folds: Vec<String> = page.folds.iter().map(fold).collect();
        if job.sheet == SheetKind::SelfMailer {
            folds.push(t!(m, "ticket-fold-order"));
        }
        rows.add(t!(m, "ticket-folds"), folds);
    }
    rows.add(
        t!(m, "ticket-colours"),
        [
            if plan.pages.len() > 1 { t!(m, "ticket-colours-two") } else { t!(m, "ticket-colours-one") },
            t!(m, "ticket-colours-note", limit = usize::from(ink_limit)),
        ],
    );
    rows.add(t!(m, "ticket-stock"), stock(job, m));
    if let Some(press) = &job.press {
        let turning = match press.turning {
            Turning::Sheetwise => String::new(),
            Turning::WorkAndTurn => t!(m, "ticket-work-and-turn"),
        };
        rows.add(t!(m, "ticket-press"), [measured(press.width, press.height, m), turning]);
    }
    if job.printers_mark {
        rows.add(t!(m, "ticket-mark"), [t!(m, "ticket-mark-room")]);
    }
    rows.add(t!(m, "ticket-edition"), [job.edition.clone()]);
    let day = job.date.parse().map(|day| m.date(day, DateStyle::Long)).unwrap_or_else(|_| job.date.clone());
    rows.add(t!(m, "ticket-date"), [day]);
    let mut people = vec![contact.to_owned(), program.contact.phone.clone(), program.contact.email.clone()];
    people.extend(program.contact.address.clone());
    rows.add(t!(m, "ticket-contact"), people);
    rows.0
}

fn quantity(file: &TicketFile<'_>, m: &Messages) -> String {
    let tags: Vec<String> = file.job.languages.iter().map(|block| locales::endonym(&block.lang)).collect();
    let languages = m.list_and(&tags);
    if file.copies == 0 {
        t!(m, "ticket-copies-unsaid", languages = languages)
    } else {
        t!(m, "ticket-copies", languages = languages, copies = file.copies)
    }
}

fn stock(job: &SheetJob, m: &Messages) -> Vec<String> {
    let name =
        if job.stock.name.trim().is_empty() { t!(m, "ticket-stock-unsaid") } else { job.stock.name.clone() };
    let thickness = job.stock.thickness.map_or_else(
        || t!(m, "ticket-thickness-unsaid"),
        |thickness| t!(m, "ticket-thickness", thickness = m.number(thickness.0, 2)),
    );
    vec![name, thickness]
}

fn millimetres(length: Mm, m: &Messages) -> String {
    t!(m, "ticket-mm", length = m.number(length.0, 3))
}

/// A size in millimetres and inches: print shops on both sides of a border read the same ticket.
fn measured(width: Mm, height: Mm, m: &Messages) -> String {
    let inches = |length: Mm| m.number(length / Mm::inches(1.0), 2);
    t!(
        m,
        "ticket-size",
        width = m.number(width.0, 1),
        height = m.number(height.0, 1),
        across = inches(width),
        down = inches(height)
    )
}
