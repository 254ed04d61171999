//! A hazard's line is on the sheet in every language, whole.

use super::{Sheet, lines};
use crate::display::Role;
use crate::finding::PreflightItem;

/// The characters that are printed, without spaces, which lines break at.
fn printed(text: &str) -> String {
    text.chars()
        .filter(|c| {
            !c.is_whitespace() && !matches!(c, '\u{200B}'..='\u{200F}' | '\u{2060}'..='\u{2069}' | '\u{061C}')
        })
        .collect()
}

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    let mut found = Vec::new();
    let mut hazards = 0;
    for block in &sheet.job.languages {
        let shown: String = sheet
            .list
            .pages
            .iter()
            .flat_map(lines)
            .filter(|line| line.role == Role::Body && line.lang == block.lang)
            .map(|line| printed(&line.text))
            .collect();
        for line in block.sections.iter().flat_map(|section| &section.lines).filter(|line| line.hazard) {
            hazards += 1;
            if !shown.contains(&printed(&line.text)) {
                let message = format!(
                    "the hazard “{}” ({}) is not on the sheet; nothing may be printed without it",
                    line.text, block.lang
                );
                found.push(
                    PreflightItem::error("hazard-missing", message)
                        .arg("lang", &block.lang)
                        .arg("text", &line.text),
                );
            }
        }
    }
    if found.is_empty() && hazards > 0 {
        let message = format!("all {hazards} hazard lines are on the sheet");
        found.push(PreflightItem::pass("hazards-shown", message).arg("count", hazards));
    }
    found
}
