//! From a job to its file.

use crate::display::DisplayList;
use crate::finding::{PreflightItem, PrintError};
use crate::font::FontSet;
use crate::job::SheetJob;

/// What [`make`] made.
#[derive(Debug, Clone, PartialEq)]
pub struct Artifact {
    /// The press file.
    pub pdf: Vec<u8>,
    /// What it shows, for the preview.
    pub display_list: DisplayList,
    /// What to look at before it is sent, and what was found right.
    pub preflight: Vec<PreflightItem>,
}

/// Lays a sheet out and writes its press file.
///
/// `profile` is the CMYK output profile of the press condition. The same job, fonts and profile make the same
/// bytes on every machine.
pub fn make(job: &SheetJob, fonts: &FontSet, profile: &[u8]) -> Result<Artifact, PrintError> {
    let _ = (job, fonts, profile);
    Err(PreflightItem::error("not-laid-out", format!("the sheet “{}” has no layout yet", job.sheet.id()))
        .into())
}
