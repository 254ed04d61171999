//! No place gets more ink than the paper takes.
//!
//! Fills knock out what is below them, so one ink's plates are the sum there; black text is printed over its
//! ground, so both count. Marks on every plate stand outside the bleed, on paper that is cut off.

use super::{Sheet, pages};
use crate::display::Item;
use crate::finding::PreflightItem;
use crate::ink::Ink;
use crate::path::bounds;
use crate::unit::Rect;

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    let Some(limit) = sheet.ink_limit else { return Vec::new() };
    let mut most = 0;
    let mut found = Vec::new();
    // One ink is on many places; each page tells it once.
    let mut told = Vec::new();
    for (index, page) in pages(sheet) {
        let kept = page.geometry.bleed_box();
        for (at, item) in page.items.iter().enumerate() {
            let (coverage, rect) = match item {
                Item::Fill(fill) => {
                    let Some(rect) = bounds(&fill.path) else { continue };
                    (fill.ink.coverage(), rect)
                }
                Item::Rule(rule) => {
                    let (x, y) = (rule.from.x.min(rule.to.x), rule.from.y.min(rule.to.y));
                    let (right, bottom) = (rule.from.x.max(rule.to.x), rule.from.y.max(rule.to.y));
                    (rule.ink.coverage(), Rect::new(x, y, right - x, bottom - y))
                }
                // On no plate, or on all for lines that are cut off.
                Item::Technical(_) => continue,
                Item::Text(line) if line.ink.is_black_only() => {
                    let over = |ground: Ink| {
                        let ([c, m, y, k], [_, _, _, own]) = (ground.cmyk, line.ink.cmyk);
                        [c, m, y, k.max(own)].into_iter().map(u16::from).sum()
                    };
                    (sheet.grounds.below(index, at).iter().copied().map(over).max().unwrap_or(0), line.rect)
                }
                Item::Text(line) => (line.ink.coverage(), line.rect),
            };
            if !rect.overlaps(&kept) {
                continue;
            }
            most = most.max(coverage);
            if coverage > limit && !told.contains(&(index, coverage)) {
                told.push((index, coverage));
                let message = format!(
                    "a place on page {} gets {coverage} % ink, more than the {limit} % that paper takes; choose a \
                     lighter ink",
                    index + 1
                );
                found.push(
                    PreflightItem::error("too-much-ink", message)
                        .arg("coverage", coverage)
                        .arg("limit", limit)
                        .at(index, rect),
                );
            }
        }
    }
    if found.is_empty() {
        let message = format!("the most ink anywhere is {most} % of at most {limit} %");
        found.push(PreflightItem::pass("ink-coverage", message).arg("coverage", most).arg("limit", limit));
    }
    found
}
