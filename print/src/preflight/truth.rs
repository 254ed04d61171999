//! Lines that lead some readers astray: short of the whole truth, or against another line's words.

use super::{Sheet, find};
use crate::finding::PreflightItem;
use crate::place::line as place_of;

/// A line that is right in fewer cases than this, in thousandths, is one to look at. A judgement, no source; the same
/// as what a line needs to go without a condition.
const FAITHFUL: u16 = 900;

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    let mut found = Vec::new();
    for (number, block) in sheet.job.languages.iter().enumerate() {
        for (s, section) in block.sections.iter().enumerate() {
            for (l, line) in section.lines.iter().enumerate() {
                let place = place_of(&block.lang, s + 1, l + 1);
                // Every language says the same; it is told once.
                if let Some(fidelity) = line.fidelity.filter(|share| *share < FAITHFUL && number == 0) {
                    let percent = fidelity / 10;
                    let message = format!(
                        "“{}” alone is right in {percent} % of cases only; say more, or leave the line out",
                        line.text
                    );
                    let item = PreflightItem::warning("line-often-wrong", message)
                        .arg("text", &line.text)
                        .arg("percent", percent);
                    found.push(find(sheet, &place, item));
                }
                if let Some(other) = &line.contradicts {
                    let message = format!(
                        "“{}” and “{other}” contradict each other ({}): who reads the first takes it for both; word \
                         one of them otherwise",
                        line.text, block.lang
                    );
                    let item = PreflightItem::warning("lines-contradict", message)
                        .arg("lang", &block.lang)
                        .arg("text", &line.text)
                        .arg("other", other);
                    found.push(find(sheet, &place, item));
                }
            }
        }
    }
    found
}
