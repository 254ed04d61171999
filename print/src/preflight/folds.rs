//! Nothing important lies on a fold: ink cracks there, and a folder is a little out.

use super::{Sheet, pages, thing, thing_code};
use crate::display::{Item, Role};
use crate::finding::PreflightItem;
use crate::path::bounds;
use crate::sheet::FOLD_SAFE;
use crate::unit::{Rect, TOLERANCE};

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    let mut found = Vec::new();
    let mut count = 0;
    let distance = format!("{:.1}", FOLD_SAFE.mm().0);
    let plan = sheet.job.plan();
    for ((index, page), planned) in pages(sheet).zip(&plan.pages) {
        for &fold in &planned.folds {
            count += 1;
            let trim = page.geometry.trim();
            let line = Rect::new(trim.x, fold - FOLD_SAFE, trim.width, FOLD_SAFE * 2.0).grown(-TOLERANCE);
            for item in &page.items {
                let (what, rect) = match item {
                    Item::Text(line) if line.role != Role::Slug => (line.text.clone(), Some(line.rect)),
                    Item::Fill(fill) => (thing_code(&fill.what).to_owned(), bounds(&fill.path)),
                    Item::Text(_) | Item::Rule(_) | Item::Technical(_) => continue,
                };
                let Some(rect) = rect.filter(|rect| rect.overlaps(&line)) else { continue };
                let message = format!(
                    "{} on page {} comes nearer to a fold than {distance} mm; shorten the texts",
                    thing(&what),
                    index + 1
                );
                found.push(
                    PreflightItem::error("on-a-fold", message)
                        .arg("what", what)
                        .arg("distance", &distance)
                        .at(index, rect),
                );
            }
        }
    }
    if found.is_empty() && count > 0 {
        let message = format!("{count} folds: nothing is printed within {distance} mm of them");
        found.push(PreflightItem::pass("folds-clear", message).arg("count", count).arg("distance", distance));
    }
    found
}
