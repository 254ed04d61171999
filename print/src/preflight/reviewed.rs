//! Every language was read by someone who knows it, and says what its source says now.

use super::{Sheet, find, lines, pages};
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
            found.push(match holder(sheet, &block.lang, text) {
                Some(place) => find(sheet, &place, item),
                None => item,
            });
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

/// The place of the text that holds these words.
fn holder(sheet: &Sheet<'_>, lang: &str, words: &str) -> Option<String> {
    let mut whole: Vec<(&str, String)> = Vec::new();
    for (_, page) in pages(sheet) {
        for line in lines(page).filter(|line| line.lang == lang) {
            match whole.iter_mut().find(|(place, _)| *place == line.place) {
                Some((_, text)) => text.extend([line.text.as_str(), line.gap.as_str()]),
                None => whole.push((&line.place, format!("{}{}", line.text, line.gap))),
            }
        }
    }
    let words = words.to_lowercase();
    whole
        .into_iter()
        .find(|(_, text)| text.to_lowercase().contains(&words))
        .map(|(place, _)| place.to_owned())
}
