//! The mailer's address side: its fields are there, and the post's zones are white.

use super::{Sheet, pages, thing, thing_code};
use crate::display::{Item, Role};
use crate::finding::PreflightItem;
use crate::job::SheetKind;
use crate::path::bounds;
use crate::place::{INDICIA, RETURN_ADDRESS};
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
                Item::Fill(fill) => (thing_code(&fill.what).to_owned(), bounds(&fill.path), false),
                Item::Rule(_) => continue,
            };
            let Some(rect) = rect else { continue };
            let barcode = rect.overlaps(&zones.barcode_clear);
            let read = rect.overlaps(&zones.read_area) && !(address && zones.address_block.contains(&rect));
            if barcode || read {
                let (zone, name) = if barcode {
                    ("barcode-clear", "barcode clear zone")
                } else {
                    ("read-area", "address read area")
                };
                let message =
                    format!("{} on the address side lies in the {name}; move or shorten it", thing(&what));
                found.push(
                    PreflightItem::error("postal-zone", message)
                        .arg("what", what)
                        .arg("zone", zone)
                        .at(index, rect),
                );
            }
        }
        for (field, name, empty, rect) in [
            (RETURN_ADDRESS, "return address", sheet.job.return_address.is_empty(), zones.return_address),
            (INDICIA, "indicia", sheet.job.indicia.is_empty(), zones.indicia),
        ] {
            if empty {
                let message =
                    format!("the mailer has no {name}; the post sends cards without one back, type it in");
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
