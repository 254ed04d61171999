//! From a job to its file.

use crate::check;
use crate::display::DisplayList;
use crate::finding::{PreflightItem, PrintError, Severity};
use crate::font::{Face, FontSet};
use crate::impose::impose;
use crate::job::{SheetJob, SheetKind};
use crate::layout::{self, Content};
use crate::pdf::{self, Profile};
use crate::preflight::{Sheet, preflight};
use crate::qr::Code;
use crate::text::Typesetter;
use crate::unit::Mm;

/// What [`make`] made.
#[derive(Debug, Clone, PartialEq)]
pub struct Artifact {
    /// The press file.
    pub pdf: Vec<u8>,
    /// What it shows, for the preview: press sheets where several are printed on one.
    pub display_list: DisplayList,
    /// What to look at before it is sent, and what was found right: warnings first. Never an error.
    pub preflight: Vec<PreflightItem>,
}

/// Lays a sheet out and writes its press file.
///
/// `profile` is the CMYK output profile of the press condition. The same job, fonts and profile make the same
/// bytes on every machine. Fails, before anything is written, with every error found.
///
/// ```
/// # fn main() -> Result<(), Box<dyn std::error::Error>> {
/// let job: print::SheetJob = serde_json::from_str(r#"{
///     "sheet": "cart-lid", "jurisdiction": "Quillmere County", "edition": "1", "job_name": "Recycling lid",
///     "date": "2026-11-25", "qr_url": "https://quillmere.example.org/g", "short_url": "quillmere.example.org/g",
///     "languages": [{
///         "lang": "en", "direction": "ltr", "title": "Recycling cart", "reviewed": true,
///         "sections": [{ "tone": "yes", "heading": "Yes", "lines": [{ "text": "Bottles", "pictogram": "bottle" }] }]
///     }]
/// }"#)?;
/// let mut fonts = print::FontSet::new();
/// for file in print::fonts_needed(&job) {
///     fonts.add(file.family, file.weight, std::fs::read(format!("fonts/{}", file.file))?)?;
/// }
/// let artifact = print::make(&job, &fonts, print::PRESS_PROFILE)?;
/// assert!(artifact.pdf.starts_with(b"%PDF-1.6"));
/// # Ok(())
/// # }
/// ```
pub fn make(job: &SheetJob, fonts: &FontSet, profile: &[u8]) -> Result<Artifact, PrintError> {
    check::check(job)?;
    let profile = Profile::read(profile)?;
    let setter = Typesetter::new(fonts);
    let code = Code::new(&job.qr_url, scanned_from(job), job.qr_level)?;
    let content = Content::new(job, setter)?;
    let faces = fonts.faces().iter().map(Face::name).collect();
    let laid_out = layout::lay_out(job, &content, &code, setter, faces)?;
    let findings = preflight(&Sheet { job, list: &laid_out.list, code: &code, body: laid_out.body });
    let (errors, mut notes): (Vec<_>, Vec<_>) =
        findings.into_iter().partition(|item| item.severity == Severity::Error);
    if !errors.is_empty() {
        return Err(PrintError { items: errors });
    }
    let display_list = match &job.press {
        None => laid_out.list,
        Some(press) => {
            let imposed = impose(&laid_out.list, press)?;
            notes.push(imposed.note());
            imposed.list
        }
    };
    let pdf = pdf::write(&display_list, fonts, job, &profile);
    Ok(Artifact { pdf, display_list, preflight: notes })
}

/// How far away the code is scanned from: people step up to a label of one message, however far it is seen.
fn scanned_from(job: &SheetJob) -> Mm {
    match job.sheet {
        SheetKind::RoundSticker => job.viewing_distance.min(SheetJob::arms_length()),
        _ => job.viewing_distance,
    }
}
