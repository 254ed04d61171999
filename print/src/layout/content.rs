//! A job's words, shaped and measured once for every size that will be tried.

use std::cell::OnceCell;
use std::rc::Rc;

use super::fit::sign_title;
use crate::display::Alt;
use crate::finding::{PreflightItem, PrintError};
use crate::font::Weight;
use crate::job::{Direction, SheetJob, SheetKind, Tone};
use crate::offer::{self, Step};
use crate::place::{
    ADDRESSEE, EDITION, INDICIA, ISSUER, NOTICE, RETURN_ADDRESS, SHORT_ADDRESS, SLUG, foot, heading, line,
    numbered, scan, title,
};
use crate::sheet::BLEED;
use crate::text::{Paragraph, Typesetter, Words};
use crate::unit::Pt;

/// One line in all languages. Cheap to clone, as sections are: copyfit tries many choices of them.
#[derive(Clone)]
pub(crate) struct Entry {
    pub(crate) pictogram: Option<String>,
    pub(crate) hazard: bool,
    /// What its picture shows, in the first language that says so.
    pub(crate) alt: Option<Alt>,
    /// A paragraph per language.
    pub(crate) words: Rc<[Paragraph]>,
}

/// One section in all languages.
#[derive(Clone)]
pub(crate) struct SectionContent {
    pub(crate) tone: Tone,
    pub(crate) headings: Rc<[Paragraph]>,
    pub(crate) entries: Vec<Entry>,
}

/// Everything a sheet says.
pub(crate) struct Content {
    /// The direction of the sheet: its first language's.
    pub(crate) direction: Direction,
    pub(crate) issuer: Paragraph,
    pub(crate) titles: Vec<Paragraph>,
    pub(crate) sections: Vec<SectionContent>,
    /// What the code is for, per language.
    pub(crate) scans: Vec<Option<Paragraph>>,
    /// Further lines at the foot, per language.
    pub(crate) feet: Vec<Vec<Paragraph>>,
    pub(crate) address: Paragraph,
    /// What the code is, in the first language that says so.
    pub(crate) code_alt: Option<Alt>,
    pub(crate) notice: Option<Paragraph>,
    pub(crate) edition: Option<Paragraph>,
    pub(crate) return_address: Vec<Paragraph>,
    pub(crate) indicia: Vec<Paragraph>,
    pub(crate) addressee: Vec<Paragraph>,
    pub(crate) slug: Paragraph,
    /// Whether room is kept for the printer's own mark.
    pub(crate) printers_mark: bool,
    /// The size a title should have at least; nothing on most sheets.
    pub(crate) least_title: Pt,
}

/// Collects every error instead of stopping at the first.
struct Builder<'a> {
    setter: Typesetter<'a>,
    errors: Vec<PreflightItem>,
}

impl Builder<'_> {
    fn paragraph(&mut self, words: Words<'_>, weight: Weight) -> Option<Paragraph> {
        match Paragraph::new(self.setter, words, weight) {
            Ok(paragraph) => Some(paragraph),
            Err(error) => {
                self.errors.extend(error.items);
                None
            }
        }
    }

    /// A text in no stated language, at the sheet's starting edge.
    fn neutral(&mut self, text: &str, align: Direction, place: &str, weight: Weight) -> Option<Paragraph> {
        self.paragraph(Words { text, lang: "", direction: None, align: Some(align), place }, weight)
    }

    fn lines(&mut self, lines: &[String], place: &str) -> Vec<Paragraph> {
        lines
            .iter()
            .enumerate()
            .filter_map(|(index, text)| {
                let place = numbered(place, index + 1);
                self.neutral(text, Direction::Ltr, &place, Weight::Regular)
            })
            .collect()
    }
}

impl Content {
    /// Shapes a job that [`crate::check`] has found whole.
    pub(crate) fn new(job: &SheetJob, setter: Typesetter<'_>) -> Result<Self, PrintError> {
        let mut make = Builder { setter, errors: Vec::new() };
        let direction = job.languages.first().map_or(Direction::Ltr, |block| block.direction);
        let titles = title_paragraphs(&mut make, job);
        let sections = section_paragraphs(&mut make, job, None);
        let (scans, feet) = foot_paragraphs(&mut make, job);
        let issuer = make.neutral(&job.jurisdiction, direction, ISSUER, Weight::Bold);
        let address = make.neutral(&job.short_url, direction, SHORT_ADDRESS, Weight::Bold);
        let optional = |make: &mut Builder<'_>, text: &str, place: &str| {
            (!text.is_empty()).then(|| make.neutral(text, direction, place, Weight::Regular)).flatten()
        };
        let notice = optional(&mut make, &job.print_notice, NOTICE);
        let edition = optional(&mut make, &job.edition, EDITION);
        let return_address = make.lines(&job.return_address, RETURN_ADDRESS);
        let indicia = make.lines(&job.indicia, INDICIA);
        let addressee = make.lines(&job.addressee, ADDRESSEE);
        let code_alt = job.languages.iter().find_map(|block| said(&block.lang, &block.code_alt));
        let slug = make.neutral(&slug_text(job), Direction::Ltr, SLUG, Weight::Regular);
        match (issuer, address, slug) {
            (Some(issuer), Some(address), Some(slug)) if make.errors.is_empty() => Ok(Self {
                direction,
                issuer,
                titles,
                sections,
                scans,
                feet,
                address,
                code_alt,
                notice,
                edition,
                return_address,
                indicia,
                addressee,
                slug,
                printers_mark: job.printers_mark,
                least_title: match job.sheet {
                    SheetKind::EnclosureSign => sign_title(job.viewing_distance),
                    _ => Pt::ZERO,
                },
            }),
            _ => Err(PrintError { items: make.errors }),
        }
    }

    pub(crate) fn mirrored(&self) -> bool {
        self.direction == Direction::Rtl
    }
}

/// The sections that steps say in brief, shaped when one is first asked for: most sheets need none of them.
pub(crate) struct Briefs<'a> {
    job: &'a SheetJob,
    steps: &'a [Step],
    setter: Typesetter<'a>,
    /// For each step its section, once somebody wanted it.
    made: Vec<OnceCell<Result<Option<SectionContent>, PrintError>>>,
}

impl<'a> Briefs<'a> {
    pub(crate) fn new(job: &'a SheetJob, steps: &'a [Step], setter: Typesetter<'a>) -> Self {
        Self { job, steps, setter, made: steps.iter().map(|_| OnceCell::new()).collect() }
    }

    /// The section that a step says in brief; nothing when it says none, or in characters that no font has.
    pub(crate) fn section(&self, step: usize) -> Option<&SectionContent> {
        let cell = self.made.get(step)?;
        cell.get_or_init(|| self.make(step)).as_ref().ok()?.as_ref()
    }

    fn make(&self, step: usize) -> Result<Option<SectionContent>, PrintError> {
        let Some(step @ Step::Brief { section, .. }) = self.steps.get(step) else { return Ok(None) };
        let brief = offer::in_brief(self.job, std::slice::from_ref(step));
        let mut make = Builder { setter: self.setter, errors: Vec::new() };
        let mut sections = section_paragraphs(&mut make, &brief, Some(*section));
        if make.errors.is_empty() { Ok(sections.pop()) } else { Err(PrintError { items: make.errors }) }
    }

    /// What was wrong with any section asked for.
    pub(crate) fn whole(&self) -> Result<(), PrintError> {
        for made in &self.made {
            if let Some(Err(error)) = made.get() {
                return Err(error.clone());
            }
        }
        Ok(())
    }
}

/// Words that say what a picture shows, if there are any.
fn said(lang: &str, text: &str) -> Option<Alt> {
    (!text.trim().is_empty()).then(|| Alt { lang: lang.to_owned(), text: text.to_owned() })
}

fn title_paragraphs(make: &mut Builder<'_>, job: &SheetJob) -> Vec<Paragraph> {
    let mut titles = Vec::new();
    for block in &job.languages {
        let place = title(&block.lang);
        let words = Words {
            text: &block.title,
            lang: &block.lang,
            direction: Some(block.direction),
            align: None,
            place: &place,
        };
        titles.extend(make.paragraph(words, Weight::Bold));
    }
    titles
}

/// The words of a job's sections, or of one alone.
fn section_paragraphs(make: &mut Builder<'_>, job: &SheetJob, only: Option<usize>) -> Vec<SectionContent> {
    let Some(first) = job.languages.first() else { return Vec::new() };
    let mut sections = Vec::new();
    for (s, leading) in first.sections.iter().enumerate().filter(|(s, _)| only.is_none_or(|only| only == *s))
    {
        let mut headings = Vec::new();
        let mut alts: Vec<Option<Alt>> = leading.lines.iter().map(|_| None).collect();
        let mut lines: Vec<Vec<Paragraph>> = leading.lines.iter().map(|_| Vec::new()).collect();
        for block in &job.languages {
            let (lang, direction) = (block.lang.as_str(), Some(block.direction));
            let Some(own) = block.sections.get(s) else { continue };
            let place = heading(lang, s + 1);
            let words = Words { text: &own.heading, lang, direction, align: None, place: &place };
            headings.extend(make.paragraph(words, Weight::Bold));
            for (l, ((paragraphs, alt), line)) in lines.iter_mut().zip(&mut alts).zip(&own.lines).enumerate()
            {
                let place = self::line(lang, s + 1, l + 1);
                if alt.is_none() {
                    *alt = said(lang, &line.alt);
                }
                let weight = if line.hazard { Weight::Bold } else { Weight::Regular };
                let words = Words { text: &line.text, lang, direction, align: None, place: &place };
                paragraphs.extend(make.paragraph(words, weight));
            }
        }
        let entries = leading.lines.iter().zip(alts).zip(lines).map(|((line, alt), words)| Entry {
            pictogram: line.pictogram.clone(),
            hazard: line.hazard,
            alt,
            words: words.into(),
        });
        sections.push(SectionContent {
            tone: leading.tone,
            headings: headings.into(),
            entries: entries.collect(),
        });
    }
    sections
}

fn foot_paragraphs(make: &mut Builder<'_>, job: &SheetJob) -> (Vec<Option<Paragraph>>, Vec<Vec<Paragraph>>) {
    let (mut scans, mut feet) = (Vec::new(), Vec::new());
    for block in &job.languages {
        let (lang, direction) = (block.lang.as_str(), Some(block.direction));
        let place = scan(lang);
        let words = Words { text: &block.scan, lang, direction, align: None, place: &place };
        scans.push(if block.scan.is_empty() { None } else { make.paragraph(words, Weight::Bold) });
        let mut lines = Vec::new();
        for (l, text) in block.footer.iter().enumerate() {
            let place = foot(lang, l + 1);
            lines.extend(
                make.paragraph(Words { text, lang, direction, align: None, place: &place }, Weight::Regular),
            );
        }
        feet.push(lines);
    }
    (scans, feet)
}

/// What stands outside the trim: names, languages, date and finished size, in no language.
fn slug_text(job: &SheetJob) -> String {
    let languages: Vec<&str> = job.languages.iter().map(|block| block.lang.as_str()).collect();
    let page = job.finished_size();
    // A bleed of 1/8 in is 3.175 mm.
    let size = format!("{:.1} × {:.1} mm + {:.3} mm", page.width.0, page.height.0, BLEED.mm().0);
    [job.job_name.clone(), languages.join(" "), job.edition.clone(), job.date.clone(), size]
        .into_iter()
        .filter(|part| !part.is_empty())
        .collect::<Vec<_>>()
        .join("  ·  ")
}

impl Content {
    /// Every paragraph a face is made of, in the job's order.
    pub(crate) fn paragraphs(&self) -> Vec<&Paragraph> {
        let mut all: Vec<&Paragraph> = vec![&self.issuer];
        all.extend(self.titles.iter());
        for section in &self.sections {
            all.extend(section.headings.iter());
            all.extend(section.entries.iter().flat_map(|entry| entry.words.iter()));
        }
        all.extend(self.scans.iter().flatten());
        all.extend(self.feet.iter().flatten());
        all.push(&self.address);
        all.extend(&self.notice);
        all.extend(&self.edition);
        all
    }
}
