//! No place gets more ink than the paper takes.
//!
//! Fills knock out what is below them, so one ink's plates are the sum there; black text is printed over its
//! ground, so both count.

use super::{Sheet, pages};
use crate::display::Item;
use crate::finding::PreflightItem;
use crate::ink::{INK_LIMIT, Ink};
use crate::path::bounds;
use crate::unit::Rect;

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    let mut most = 0;
    let mut found = Vec::new();
    for (index, page) in pages(sheet) {
        let mut grounds: Vec<(Rect, Ink)> = Vec::new();
        for item in &page.items {
            let (coverage, rect) = match item {
                Item::Fill(fill) => {
                    let Some(rect) = bounds(&fill.path) else { continue };
                    grounds.push((rect, fill.ink));
                    (fill.ink.coverage(), rect)
                }
                Item::Rule(rule) => {
                    (rule.ink.coverage(), Rect::new(rule.from.x, rule.from.y, rule.width, rule.width))
                }
                // On no plate, or on all for lines that are cut off.
                Item::Technical(_) => continue,
                Item::Text(line) if line.ink.is_black_only() => {
                    let under = grounds.iter().rev().find(|(rect, _)| rect.overlaps(&line.rect));
                    let [c, m, y, k] = under.map_or([0; 4], |(_, ink)| ink.cmyk);
                    let [_, _, _, own] = line.ink.cmyk;
                    ([c, m, y, k.max(own)].into_iter().map(u16::from).sum(), line.rect)
                }
                Item::Text(line) => (line.ink.coverage(), line.rect),
            };
            most = most.max(coverage);
            if coverage > INK_LIMIT {
                let message = format!(
                    "a place on page {} gets {coverage} % ink, more than the {INK_LIMIT} % that paper takes; choose a \
                     lighter ink",
                    index + 1
                );
                found.push(
                    PreflightItem::error("too-much-ink", message)
                        .arg("coverage", coverage)
                        .arg("limit", INK_LIMIT)
                        .at(index, rect),
                );
            }
        }
    }
    if found.is_empty() {
        let message = format!("the most ink anywhere is {most} % of at most {INK_LIMIT} %");
        found
            .push(PreflightItem::pass("ink-coverage", message).arg("coverage", most).arg("limit", INK_LIMIT));
    }
    found
}
