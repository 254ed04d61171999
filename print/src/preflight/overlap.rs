//! No line of text lies on another, or on a code.

use super::{Sheet, lines, pages};
use crate::display::Item;
use crate::finding::PreflightItem;
use crate::path::bounds;
use crate::unit::Rect;

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    let mut found = Vec::new();
    for (index, page) in pages(sheet) {
        let mut boxes: Vec<(&str, Rect)> = lines(page).map(|line| (line.text.as_str(), line.rect)).collect();
        boxes.extend(page.items.iter().filter_map(|item| match item {
            Item::Fill(fill) if fill.what == "quiet zone" => bounds(&fill.path).map(|rect| ("QR", rect)),
            _ => None,
        }));
        for (at, (text, rect)) in boxes.iter().enumerate() {
            for (other, second) in boxes.iter().skip(at + 1) {
                if rect.overlaps(second) {
                    let message = format!(
                        "“{text}” and “{other}” lie on each other on page {}; shorten one of them",
                        index + 1
                    );
                    found.push(
                        PreflightItem::error("text-overlaps", message)
                            .arg("text", *text)
                            .arg("other", *other)
                            .at(index, *rect),
                    );
                }
            }
        }
    }
    found
}
