//! The mailer's address side: its fields are there, and the post's zones are white.

use super::{Sheet, pages};
use crate::display::{Item, Role};
use crate::finding::PreflightItem;
use crate::job::SheetKind;
use crate::path::bounds;
use crate::sheet::POSTCARD_ADDRESS_SIDE;
use crate::unit::Rect;

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    if sheet.job.sheet != SheetKind::PostcardMailer {
        return Vec::new();
    }
    let zones = POSTCARD_ADDRESS_SIDE;
    let mut found = Vec::new();
    for (index, page) in pages(sheet).filter(|(_, page)| page.name == "address") {
        for item in &page.items {
            let (what, rect, address) = match item {
                Item::Text(line) => (line.text.clone(), Some(line.rect), line.role == Role::Postal),
                Item::Fill(fill) => (fill.what.clone(), bounds(&fill.path), false),
                Item::Rule(_) => continue,
            };
            let Some(rect) = rect else { continue };
            let barcode = rect.overlaps(&zones.barcode_clear);
            let read = rect.overlaps(&zones.read_area) && !(address && zones.address_block.contains(&rect));
            if barcode || read {
                let zone = if barcode { "barcode clear zone" } else { "address read area" };
                let message = format!("“{what}” on the address side lies in the {zone}; move or shorten it");
                found.push(
                    PreflightItem::error("postal-zone", message)
                        .arg("what", what)
                        .arg("zone", zone)
                        .at(index, rect),
                );
            }
        }
        for (field, empty, rect) in [
            ("return address", sheet.job.return_address.is_empty(), zones.return_address),
            ("indicia", sheet.job.indicia.is_empty(), zones.indicia),
        ] {
            if empty {
                let message =
                    format!("the mailer has no {field}; the post sends cards without one back, type it in");
                found.push(
                    PreflightItem::warning("postal-field-missing", message)
                        .arg("field", field)
                        .at(index, rect),
                );
            }
        }
        if found.is_empty() {
            found.push(right(index, zones.barcode_clear));
        }
    }
    found
}

fn right(page: usize, rect: Rect) -> PreflightItem {
    let message =
        "address side: return address and indicia are there, the address read area and the barcode clear \
                   zone (4.75 x .625 in) are white"
            .to_owned();
    PreflightItem::pass("postal-zones", message).at(page, rect)
}
