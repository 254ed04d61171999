//! From a job to its file.

use crate::check;
use crate::display::DisplayList;
use crate::finding::{PreflightItem, PrintError, Severity};
use crate::font::{Face, FontSet};
use crate::impose::impose;
use crate::ink::INK_LIMIT;
use crate::instead;
use crate::job::SheetJob;
use crate::layout::{self, Content, Reduced};
use crate::offer::{self, Offer, Step};
use crate::pdf::{self, Profile};
use crate::preflight::{Grounds, Sheet, preflight};
use crate::qr::Code;
use crate::text::Typesetter;

/// A press, as the print shop states it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Press<'a> {
    /// The CMYK output profile (ICC) of its condition: paper, inks and dot gain.
    pub profile: &'a [u8],
    /// The most ink its paper takes at one place: the sum of the four plates, in per cent, 100 to 400.
    pub ink_limit: u16,
}

/// Which file is wanted of a sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Output<'a> {
    /// PDF/X-4 with bleed and marks, for a print shop.
    Press(Press<'a>),
    /// PDF/UA-1 of the finished size in sRGB: to read, to listen to, to send.
    Web,
}

impl<'a> From<Press<'a>> for Output<'a> {
    fn from(press: Press<'a>) -> Self {
        Self::Press(press)
    }
}

/// A press with the usual limit of ink.
impl<'a> From<&'a [u8]> for Output<'a> {
    fn from(profile: &'a [u8]) -> Self {
        Self::Press(Press { profile, ink_limit: INK_LIMIT })
    }
}

/// A press with the usual limit of ink.
impl<'a, const N: usize> From<&'a [u8; N]> for Output<'a> {
    fn from(profile: &'a [u8; N]) -> Self {
        Self::from(profile.as_slice())
    }
}

/// What [`make`] made.
#[derive(Debug, Clone, PartialEq)]
pub struct Artifact {
    /// The file.
    pub pdf: Vec<u8>,
    /// What it shows, for the preview: press sheets where several are printed on one.
    pub display_list: DisplayList,
    /// What to look at before it is sent, and what was found right: warnings first. Never an error.
    pub preflight: Vec<PreflightItem>,
}

/// Lays a sheet out and writes one file of it: for a press, named by its profile, or for the web.
///
/// Every output is written from the same display list. The same job, fonts and output make the same bytes on every
/// machine. Fails, before anything is written, with every error found.
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
/// let web = print::make(&job, &fonts, print::Output::Web)?;
/// assert!(web.pdf.starts_with(b"%PDF-1.7") && web.display_list == artifact.display_list);
/// # Ok(())
/// # }
/// ```
pub fn make<'a>(
    job: &SheetJob,
    fonts: &FontSet,
    output: impl Into<Output<'a>>,
) -> Result<Artifact, PrintError> {
    make_fitting(job, &Offer::default(), fonts, output).map(|fitted| fitted.artifact)
}

/// What [`make_fitting`] made.
#[derive(Debug, Clone, PartialEq)]
pub struct Fitted {
    /// The sheet.
    pub artifact: Artifact,
    /// The job as printed: [`make`] makes the same bytes of it.
    pub job: SheetJob,
    /// How many of the steps were taken, from the first on.
    pub taken: usize,
}

/// Lays a sheet out with as much of the job as can be read with ease, and writes one file of it.
///
/// Steps of the offer are taken in their order and no more than needed: those for ease to set the sheet in a
/// comfortable size (a quarter above the floor for its viewing distance), the others to reach the floor at all. The
/// rest is as with [`make`]; a step that would drop a hazard, or fits no line, is an error.
pub fn make_fitting<'a>(
    job: &SheetJob,
    offer: &Offer,
    fonts: &FontSet,
    output: impl Into<Output<'a>>,
) -> Result<Fitted, PrintError> {
    check::check(job)?;
    offer::check(job, &offer.steps)?;
    make_with(job, offer, fonts, &Prepared::new(output)?)
}

/// The same for an output that is prepared already: packing a profile takes longer than a sheet, and it is the same
/// for all. Makes the same bytes as [`make_fitting`].
pub fn make_with(
    job: &SheetJob,
    offer: &Offer,
    fonts: &FontSet,
    output: &Prepared<'_>,
) -> Result<Fitted, PrintError> {
    let steps = offer.steps.as_slice();
    check::check(job)?;
    offer::check(job, steps)?;
    let setter = Typesetter::new(fonts);
    let code = Code::of(job)?;
    let mut content = Content::new(job, setter)?;
    for step in steps.iter().filter(|step| matches!(step, Step::Brief { .. })) {
        check::check(&offer::in_brief(job, std::slice::from_ref(step)))?;
    }
    let whole = job;
    let Reduced { job, taken, .. } = layout::reduce(job, offer, &mut content, &code, setter)?;
    let faces = fonts.faces().iter().map(Face::name).collect();
    let laid_out = layout::lay_out(&job, &content, &code, setter, faces)
        .map_err(|error| instead::with_ways_out(error, whole, offer, fonts))?;
    let ink_limit = output.0.as_ref().map(|(_, limit)| *limit);
    let grounds = Grounds::of(&laid_out.list);
    let sheet =
        Sheet { job: &job, list: &laid_out.list, code: &code, body: laid_out.body, ink_limit, grounds };
    let findings = preflight(&sheet);
    let (errors, mut notes): (Vec<_>, Vec<_>) =
        findings.into_iter().partition(|item| item.severity == Severity::Error);
    if !errors.is_empty() {
        return Err(PrintError { items: errors });
    }
    // A press sheet is for a press; who reads on a screen sees the sheet itself.
    let display_list = match (&output.0, &job.press) {
        (Some(_), Some(press)) => {
            let imposed = impose(&laid_out.list, press)?;
            notes.push(imposed.note());
            imposed.list
        }
        _ => laid_out.list,
    };
    let pdf = match &output.0 {
        Some((profile, _)) => pdf::write(&display_list, fonts, &job, profile),
        None => pdf::write_web(&display_list, fonts, &job),
    };
    let artifact = Artifact { pdf, display_list, preflight: notes };
    Ok(Fitted { artifact, job, taken })
}

/// An output made ready for many sheets: a press's profile is read, checked and packed once.
pub struct Prepared<'a>(Option<(Profile<'a>, u16)>);

impl std::fmt::Debug for Prepared<'_> {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let press = self.0.as_ref().map(|(profile, limit)| (&profile.description, limit));
        f.debug_tuple("Prepared").field(&press).finish()
    }
}

impl<'a> Prepared<'a> {
    /// Reads a press's profile, if the output has one. Fails on a file that is no CMYK output profile, saying why,
    /// and on an ink limit that no paper has.
    pub fn new(output: impl Into<Output<'a>>) -> Result<Self, PrintError> {
        match output.into() {
            Output::Press(press) => Ok(Self(Some((check::press(&press)?, press.ink_limit)))),
            Output::Web => Ok(Self(None)),
        }
    }
}
