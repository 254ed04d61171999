//! Words, pictures and codes stay inside the safe area, and ink that reaches the edge goes on into the bleed.

use super::{Sheet, pages, thing, thing_code};
use crate::display::{Item, Role};
use crate::finding::PreflightItem;
use crate::path::bounds;
use crate::unit::{Pt, Rect};

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    let mut found = Vec::new();
    for (index, page) in pages(sheet) {
        let geometry = &page.geometry;
        let (safe, trim, bleed) = (geometry.safe_area(), geometry.trim(), geometry.bleed_box());
        for item in &page.items {
            let (what, rect) = match item {
                Item::Text(line) if line.role == Role::Slug => continue,
                Item::Text(line) => (line.text.clone(), Some(line.rect)),
                Item::Fill(fill) => (thing_code(&fill.what).to_owned(), bounds(&fill.path)),
                Item::Rule(_) | Item::Technical(_) => continue,
            };
            let Some(rect) = rect else { continue };
            // The paper disc of a round label is round itself; its frame's corners are not printed.
            let disc = matches!(item, Item::Fill(fill) if fill.what == "disc") && geometry.is_round();
            if geometry.keeps_safe(&rect) || (disc && safe.contains(&rect)) {
                continue;
            }
            // Areas of ink may leave the safe area if they go on to the bleed at every edge they cross.
            if matches!(item, Item::Fill(fill) if fill.what == "band") && reaches(rect, trim, bleed) {
                continue;
            }
            let message = format!(
                "{} on page {} comes nearer to the cut than {:.1} mm; make it shorter or move it",
                thing(&what),
                index + 1,
                geometry.safe.mm().0
            );
            found.push(
                PreflightItem::error("outside-safe-area", message)
                    .arg("what", what)
                    .arg("safe", format!("{:.1}", geometry.safe.mm().0))
                    .at(index, rect),
            );
        }
    }
    if found.is_empty()
        && sheet.ink_limit.is_some()
        && let Some(page) = sheet.list.pages.first()
    {
        let (bleed, safe) = (page.geometry.bleed.mm().0, page.geometry.safe.mm().0);
        let message =
            format!("bleed {bleed:.3} mm on every side; words and codes {safe:.2} mm inside the cut");
        found.push(
            PreflightItem::pass("bleed-and-safe-area", message)
                .arg("bleed", format!("{bleed:.3}"))
                .arg("safe", format!("{safe:.2}")),
        );
    }
    found
}

/// Whether an area that crosses the trim goes on to the bleed's edge there.
fn reaches(rect: Rect, trim: Rect, bleed: Rect) -> bool {
    let near = |a: Pt, b: Pt| (a.0 - b.0).abs() < 0.01;
    (rect.x > trim.x || near(rect.x, bleed.x))
        && (rect.y > trim.y || near(rect.y, bleed.y))
        && (rect.right() < trim.right() || near(rect.right(), bleed.right()))
        && (rect.bottom() < trim.bottom() || near(rect.bottom(), bleed.bottom()))
}
