//! The file's boxes: the finished size inside the bleed inside the page.

use super::{Sheet, pages};
use crate::finding::PreflightItem;
use crate::unit::Rect;

fn size(area: Rect) -> String {
    format!("{:.1} × {:.1}", area.width.mm().0, area.height.mm().0)
}

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    if sheet.ink_limit.is_none() {
        return Vec::new();
    }
    let mut found = Vec::new();
    for (index, page) in pages(sheet) {
        let geometry = &page.geometry;
        let (trim, bleed, media) = (geometry.trim(), geometry.bleed_box(), geometry.media_box());
        if !(media.contains(&bleed) && bleed.contains(&trim)) {
            let message = format!(
                "the boxes of page {} do not lie in each other: finished {} mm, with bleed {} mm, page {} mm",
                index + 1,
                size(trim),
                size(bleed),
                size(media)
            );
            found.push(
                PreflightItem::error("boxes-wrong", message)
                    .arg("finished", size(trim))
                    .arg("bleed", size(bleed))
                    .arg("page", size(media))
                    .at(index, trim),
            );
        }
    }
    if let (true, Some((_, page))) = (found.is_empty(), pages(sheet).next()) {
        let geometry = &page.geometry;
        let (trim, bleed, media) =
            (size(geometry.trim()), size(geometry.bleed_box()), size(geometry.media_box()));
        let message = format!("finished size {trim} mm, with bleed {bleed} mm, page with marks {media} mm");
        found.push(
            PreflightItem::pass("boxes", message)
                .arg("finished", trim)
                .arg("bleed", bleed)
                .arg("page", media),
        );
    }
    found
}
