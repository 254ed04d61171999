//! From a job to its file.

use crate::check;
use crate::display::DisplayList;
use crate::finding::{PreflightItem, PrintError, Severity};
use crate::font::{Face, FontSet};
use crate::job::SheetJob;
use crate::layout::{self, Content};
use crate::pdf::{self, Profile};
use crate::preflight::{Sheet, preflight};
use crate::qr::Code;
use crate::text::Typesetter;

/// What [`make`] made.
#[derive(Debug, Clone, PartialEq)]
pub struct Artifact {
    /// The press file.
    pub pdf: Vec<u8>,
    /// What it shows, for the preview.
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
    make_with(job, fonts, &PressProfile::read(profile)?)
}

/// The same with a profile that is read already: packing it takes longer than a sheet, and it is the same for all.
/// Makes the same bytes as [`make`].
pub fn make_with(
    job: &SheetJob,
    fonts: &FontSet,
    profile: &PressProfile<'_>,
) -> Result<Artifact, PrintError> {
    check::check(job)?;
    let setter = Typesetter::new(fonts);
    let code = Code::new(&job.qr_url, job.viewing_distance)?;
    let content = Content::new(job, setter)?;
    let faces = fonts.faces().iter().map(Face::name).collect();
    let laid_out = layout::lay_out(job, &content, &code, setter, faces)?;
    let findings = preflight(&Sheet { job, list: &laid_out.list, code: &code, body: laid_out.body });
    let (errors, notes): (Vec<_>, Vec<_>) =
        findings.into_iter().partition(|item| item.severity == Severity::Error);
    if !errors.is_empty() {
        return Err(PrintError { items: errors });
    }
    let pdf = pdf::write(&laid_out.list, fonts, job, &profile.0);
    Ok(Artifact { pdf, display_list: laid_out.list, preflight: notes })
}

/// A press profile read, checked and packed once, for many sheets.
pub struct PressProfile<'a>(Profile<'a>);

impl std::fmt::Debug for PressProfile<'_> {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_tuple("PressProfile").field(&self.0.description).finish()
    }
}

impl<'a> PressProfile<'a> {
    /// Reads a CMYK output profile. Fails on a file that is none, saying why.
    pub fn read(bytes: &'a [u8]) -> Result<Self, PrintError> {
        Profile::read(bytes).map(Self)
    }
}
