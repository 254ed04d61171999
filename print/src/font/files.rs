//! The fonts that come with the project, and which of them a job needs.

use super::Weight;
use crate::job::{Direction, SheetJob};

/// A font file in `print/fonts`.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FontFile {
    /// The file's name.
    pub file: &'static str,
    /// The family, one name for all its weights.
    pub family: &'static str,
    /// The weight.
    pub weight: Weight,
    /// Whether every job needs it; the others are for the Arabic script.
    pub always: bool,
}

/// Every bundled file, in the order in which they are asked for a character.
pub const FONT_FILES: [FontFile; 4] = [
    FontFile { file: "NotoSans-Regular.ttf", family: "Noto Sans", weight: Weight::Regular, always: true },
    FontFile { file: "NotoSans-Bold.ttf", family: "Noto Sans", weight: Weight::Bold, always: true },
    FontFile {
        file: "NotoSansArabic-Regular.ttf",
        family: "Noto Sans Arabic",
        weight: Weight::Regular,
        always: false,
    },
    FontFile {
        file: "NotoSansArabic-Bold.ttf",
        family: "Noto Sans Arabic",
        weight: Weight::Bold,
        always: false,
    },
];

/// The bundled files this job needs, in order: the browser fetches these and no more.
///
/// A job made with these has the same bytes as one made with all of them, since a face that has none of the
/// job's characters is never asked.
pub fn fonts_needed(job: &SheetJob) -> Vec<FontFile> {
    let arabic = job.languages.iter().any(|block| block.direction == Direction::Rtl)
        || job.strings().any(|text| text.chars().any(is_arabic));
    FONT_FILES.into_iter().filter(|file| file.always || arabic).collect()
}

/// Unicode's Arabic blocks: Arabic, Supplement, Extended-B and -A, Presentation Forms-A and -B.
fn is_arabic(c: char) -> bool {
    matches!(c, '\u{600}'..='\u{6FF}' | '\u{750}'..='\u{77F}' | '\u{870}'..='\u{8FF}' | '\u{FB50}'..='\u{FDFF}' | '\u{FE70}'..='\u{FEFE}')
}

/// The bundled fonts themselves, for programs that carry them.
#[cfg(feature = "bundled")]
pub fn bundled_fonts() -> Result<super::FontSet, crate::finding::PrintError> {
    const BYTES: [&[u8]; 4] = [
        include_bytes!("../../fonts/NotoSans-Regular.ttf"),
        include_bytes!("../../fonts/NotoSans-Bold.ttf"),
        include_bytes!("../../fonts/NotoSansArabic-Regular.ttf"),
        include_bytes!("../../fonts/NotoSansArabic-Bold.ttf"),
    ];
    let mut set = super::FontSet::new();
    for (file, bytes) in FONT_FILES.iter().zip(BYTES) {
        set.add(file.family, file.weight, bytes.to_vec())?;
    }
    Ok(set)
}
