//! Every language was read by someone who knows it, and says what its source says now.

use super::{Sheet, find, find_words};
use crate::finding::PreflightItem;
use crate::place::title;

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    let mut found = Vec::new();
    for block in &sheet.job.languages {
        for text in &block.outdated {
            let message = format!(
                "“{text}” ({}) translates what its source no longer says; translate it again before printing",
                block.lang
            );
            let item = PreflightItem::warning("translation-outdated", message)
                .arg("lang", &block.lang)
                .arg("text", text);
            found.push(find_words(sheet, &block.lang, text, item));
        }
        if !block.reviewed {
            let message = format!(
                "the words in “{}” have not been reviewed; have a person who knows the language approve them before \
                 printing",
                block.lang
            );
            let item = PreflightItem::warning("translation-unreviewed", message).arg("lang", &block.lang);
            found.push(find(sheet, &title(&block.lang), item));
        }
    }
    found
}
