//! Lines that lead some readers astray: short of the whole truth, or against another line's words.

use super::{Sheet, find_words};
use crate::finding::PreflightItem;

/// A line that is right in fewer cases than this, in thousandths, is one to look at. A judgement, no source; the same
/// as what a line needs to go without a condition.
const FAITHFUL: u16 = 900;

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    let mut found = Vec::new();
    for (number, block) in sheet.job.languages.iter().enumerate() {
        for section in &block.sections {
            for line in &section.lines {
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
                    found.push(find_words(sheet, &block.lang, &line.text, item));
                }
                // The other line may have been left out.
                let printed =
                    |words: &String| block.sections.iter().flat_map(|s| &s.lines).any(|l| l.text == *words);
                if let Some(other) = line.contradicts.as_ref().filter(|other| printed(other)) {
                    let message = format!(
                        "“{}” and “{other}” contradict each other ({}): who reads the first takes it for both; word \
                         one of them otherwise",
                        line.text, block.lang
                    );
                    let item = PreflightItem::warning("lines-contradict", message)
                        .arg("lang", &block.lang)
                        .arg("text", &line.text)
                        .arg("other", other);
                    found.push(find_words(sheet, &block.lang, &line.text, item));
                }
            }
        }
    }
    found
}
