//! Every language was read by someone who knows it.

use super::Sheet;
use crate::finding::PreflightItem;

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    sheet
        .job
        .languages
        .iter()
        .filter(|block| !block.reviewed)
        .map(|block| {
            let message = format!(
                "the words in “{}” have not been reviewed; have a person who knows the language approve them before \
                 printing",
                block.lang
            );
            PreflightItem::warning("translation-unreviewed", message).arg("lang", &block.lang)
        })
        .collect()
}
