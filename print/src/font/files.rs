//! The fonts that come with the project, and which of them a job needs.

use super::{Script, Weight};
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
    /// The script it is for; none for the one that every job needs.
    pub script: Option<Script>,
}

const fn font(file: &'static str, family: &'static str, weight: Weight, script: Option<Script>) -> FontFile {
    FontFile { file, family, weight, script }
}

/// Every bundled file, in the order in which they are asked for a character.
pub const FONT_FILES: [FontFile; 10] = [
    font("NotoSans-Regular.ttf", "Noto Sans", Weight::Regular, None),
    font("NotoSans-Bold.ttf", "Noto Sans", Weight::Bold, None),
    font("NotoSansArabic-Regular.ttf", "Noto Sans Arabic", Weight::Regular, Some(Script::Arabic)),
    font("NotoSansArabic-Bold.ttf", "Noto Sans Arabic", Weight::Bold, Some(Script::Arabic)),
    font("NotoSansDevanagari-Regular.ttf", "Noto Sans Devanagari", Weight::Regular, Some(Script::Devanagari)),
    font("NotoSansDevanagari-Bold.ttf", "Noto Sans Devanagari", Weight::Bold, Some(Script::Devanagari)),
    font("NotoSansSC-Regular.otf", "Noto Sans CJK SC", Weight::Regular, Some(Script::Han)),
    font("NotoSansSC-Bold.otf", "Noto Sans CJK SC", Weight::Bold, Some(Script::Han)),
    font("NotoSansKR-Regular.otf", "Noto Sans CJK KR", Weight::Regular, Some(Script::Hangul)),
    font("NotoSansKR-Bold.otf", "Noto Sans CJK KR", Weight::Bold, Some(Script::Hangul)),
];

/// The bundled files this job needs, in order: the browser fetches these and no more.
///
/// A job made with these has the same bytes as one made with all of them, since a face that has none of the
/// job's characters is never asked.
pub fn fonts_needed(job: &SheetJob) -> Vec<FontFile> {
    let mut scripts: Vec<Script> = Vec::new();
    for block in &job.languages {
        scripts.extend(Script::of_language(&block.lang));
        scripts.extend((block.direction == Direction::Rtl).then_some(Script::Arabic));
    }
    scripts.extend(job.strings().flat_map(str::chars).filter_map(Script::of));
    with_scripts(&scripts)
}

/// The bundled files that sheets in some languages (BCP 47 tags) need, in order, as far as the languages tell: a text may
/// use characters of yet another script.
pub fn fonts_of_languages<'a>(languages: impl IntoIterator<Item = &'a str>) -> Vec<FontFile> {
    let scripts: Vec<Script> = languages.into_iter().filter_map(Script::of_language).collect();
    with_scripts(&scripts)
}

/// The files that every job needs, and those for some scripts.
fn with_scripts(scripts: &[Script]) -> Vec<FontFile> {
    FONT_FILES.into_iter().filter(|file| file.script.is_none_or(|script| scripts.contains(&script))).collect()
}

/// The bundled fonts themselves, for programs that carry them.
#[cfg(feature = "bundled")]
pub fn bundled_fonts() -> Result<super::FontSet, crate::finding::PrintError> {
    const BYTES: [&[u8]; FONT_FILES.len()] = [
        include_bytes!("../../fonts/NotoSans-Regular.ttf"),
        include_bytes!("../../fonts/NotoSans-Bold.ttf"),
        include_bytes!("../../fonts/NotoSansArabic-Regular.ttf"),
        include_bytes!("../../fonts/NotoSansArabic-Bold.ttf"),
        include_bytes!("../../fonts/NotoSansDevanagari-Regular.ttf"),
        include_bytes!("../../fonts/NotoSansDevanagari-Bold.ttf"),
        include_bytes!("../../fonts/NotoSansSC-Regular.otf"),
        include_bytes!("../../fonts/NotoSansSC-Bold.otf"),
        include_bytes!("../../fonts/NotoSansKR-Regular.otf"),
        include_bytes!("../../fonts/NotoSansKR-Bold.otf"),
    ];
    let mut set = super::FontSet::new();
    for (file, bytes) in FONT_FILES.iter().zip(BYTES) {
        set.add(file.family, file.weight, bytes.to_vec())?;
    }
    Ok(set)
}

/// The fonts as they lie in this crate's folder, for its own tests.
#[cfg(test)]
pub(crate) fn fonts_on_disk() -> super::FontSet {
    let mut set = super::FontSet::new();
    for file in FONT_FILES {
        let path = format!("{}/fonts/{}", env!("CARGO_MANIFEST_DIR"), file.file);
        set.add(file.family, file.weight, std::fs::read(path).expect("a font")).expect("a whole font");
    }
    set
}
