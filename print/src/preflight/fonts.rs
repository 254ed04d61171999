//! Every face used goes into the file, and no glyph is the one that stands for a missing character.

use std::collections::BTreeMap;

use super::{Sheet, lines, pages};
use crate::finding::PreflightItem;
use crate::place::english;

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    let mut found = Vec::new();
    let mut used: BTreeMap<usize, Vec<u16>> = BTreeMap::new();
    for (index, page) in pages(sheet) {
        for line in lines(page) {
            for run in &line.runs {
                used.entry(run.face).or_default().extend(run.glyphs.iter().map(|glyph| glyph.id));
                for glyph in &run.glyphs {
                    // Glyph 0 is what a font shows for a character it does not have (OpenType, glyph `.notdef`).
                    if glyph.id == 0 {
                        let message = format!(
                            "{}: no font here has {}, used in “{}”; write it without, or add a font that has it",
                            english(&line.place),
                            glyph.text,
                            line.text
                        );
                        found.push(
                            PreflightItem::error("missing-glyph", message)
                                .arg("place", &line.place)
                                .arg("characters", &glyph.text)
                                .arg("text", &line.text)
                                .at(index, line.rect),
                        );
                    }
                }
            }
        }
    }
    if found.is_empty() {
        let different = |glyphs: &mut Vec<u16>| {
            glyphs.sort_unstable();
            glyphs.dedup();
            glyphs.len()
        };
        let glyphs = used.values_mut().map(different).sum::<usize>();
        let names: Vec<&str> =
            used.keys().filter_map(|&face| sheet.list.faces.get(face).map(String::as_str)).collect();
        let names = names.join(", ");
        let message = format!("every font is in the file, cut to the {glyphs} glyphs used: {names}");
        found.push(PreflightItem::pass("fonts-embedded", message).arg("fonts", names).arg("glyphs", glyphs));
    }
    found
}
