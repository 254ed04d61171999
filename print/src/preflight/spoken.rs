//! For who listens to the web file: every picture has words, and the code and the address too.

use super::{Sheet, pages};
use crate::display::Item;
use crate::finding::PreflightItem;
use crate::path::bounds;

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    if sheet.ink_limit.is_some() {
        return Vec::new();
    }
    let mut found = Vec::new();
    let mut pictures = 0;
    for (index, page) in pages(sheet) {
        for item in &page.items {
            let Item::Fill(fill) = item else { continue };
            let picture = fill.what == "qr"
                || (fill.what.starts_with("pictogram ") && !fill.what.starts_with("pictogram verdict-"));
            if !picture {
                continue;
            }
            pictures += 1;
            if fill.alt.is_none()
                && let Some(rect) = bounds(&fill.path)
            {
                let what = if fill.what == "qr" { "thing:code" } else { "thing:picture" };
                let message = format!(
                    "{} on page {} has no words for those who cannot see it; write some",
                    super::thing(what),
                    index + 1
                );
                found.push(
                    PreflightItem::warning("picture-without-words", message)
                        .arg("what", what)
                        .at(index, rect),
                );
            }
        }
    }
    if found.is_empty() {
        let message = format!("all {pictures} pictures have words for those who cannot see them");
        found.push(PreflightItem::pass("pictures-have-words", message).arg("count", pictures));
    }
    found
}
