//! The mailer's address side: its fields are there, the post's zones are white, its size and thickness are mailed.

use super::{Sheet, pages, thing, thing_code};
use crate::display::{Item, Page, Role};
use crate::finding::PreflightItem;
use crate::job::{Fold, SheetKind};
use crate::path::bounds;
use crate::place::{INDICIA, RETURN_ADDRESS};
use crate::sheet::{Face, MailClass, PostalZones};
use crate::unit::{Mm, Pt, Rect};

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    let mut found = Vec::new();
    let plan = sheet.job.plan();
    for ((index, page), planned) in pages(sheet).zip(&plan.pages) {
        for area in &planned.areas {
            let Face::Address(zones) = &area.face else { continue };
            let mut own = in_zones(index, page, zones);
            own.extend(fields(sheet, index, zones));
            if own.is_empty() {
                own.push(right(index, zones.barcode_clear));
            }
            found.extend(own);
            found.push(class(index, zones));
            found.extend(thickness(sheet, zones));
        }
    }
    found
}

fn in_zones(index: usize, page: &Page, zones: &PostalZones) -> Vec<PreflightItem> {
    let mut found = Vec::new();
    for item in &page.items {
        let (what, rect, address) = match item {
            Item::Text(line) => (line.text.clone(), Some(line.rect), line.role == Role::Postal),
            Item::Fill(fill) => (thing_code(&fill.what).to_owned(), bounds(&fill.path), false),
            Item::Rule(_) | Item::Technical(_) => continue,
        };
        let Some(rect) = rect else { continue };
        let barcode = rect.overlaps(&zones.barcode_clear);
        let read = rect.overlaps(&zones.address_only) && !(address && zones.address_block.contains(&rect));
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
    found
}

fn fields(sheet: &Sheet<'_>, index: usize, zones: &PostalZones) -> Vec<PreflightItem> {
    let mut found = Vec::new();
    for (field, name, empty, rect) in [
        (RETURN_ADDRESS, "return address", sheet.job.return_address.is_empty(), zones.return_address),
        (INDICIA, "indicia", sheet.job.indicia.is_empty(), zones.indicia),
    ] {
        if empty {
            let message =
                format!("the mailer has no {name}; the post sends cards without one back, type it in");
            found.push(
                PreflightItem::warning("postal-field-missing", message).arg("field", field).at(index, rect),
            );
        }
    }
    found
}

fn class(index: usize, zones: &PostalZones) -> PreflightItem {
    let (length, height) = (zones.panel.width.mm(), zones.panel.height.mm());
    let class = zones.class.id();
    let message = format!("mailed as a {class}: {:.1} x {:.1} mm", length.0, height.0);
    PreflightItem::pass("postal-class", message)
        .arg("class", class)
        .arg("length", format!("{:.1}", length.0))
        .arg("height", format!("{:.1}", height.0))
        .at(index, zones.panel)
}

/// The piece's thickness: known only where the stock's is.
fn thickness(sheet: &Sheet<'_>, zones: &PostalZones) -> Option<PreflightItem> {
    let layers = match (sheet.job.sheet, sheet.job.fold) {
        (SheetKind::SelfMailer, Fold::Half) => 2.0,
        (SheetKind::SelfMailer, Fold::Thirds) => 3.0,
        _ => 1.0,
    };
    let (length, height) = (zones.panel.width.mm(), zones.panel.height.mm());
    let least = MailClass::thinnest(zones.class, length, height);
    let (_, most) = zones.class.limits().thickness;
    let (low, high) = (format!("{:.2}", least.0), format!("{:.2}", most.0));
    match sheet.job.stock.thickness.map(|one| one * layers) {
        None => {
            let message = format!(
                "nobody has said how thick the stock is; the post wants {low} to {high} mm for the finished piece, ask \
                 the print shop"
            );
            Some(
                PreflightItem::warning("postal-thickness-unknown", message)
                    .arg("least", low)
                    .arg("most", high),
            )
        }
        Some(piece) if piece < Mm(least.0 - 1e-6) || piece > most => {
            let message = format!(
                "the finished piece is {:.2} mm thick; the post wants {low} to {high} mm, choose another stock",
                piece.0
            );
            Some(
                PreflightItem::error("postal-thickness", message)
                    .arg("thickness", format!("{:.2}", piece.0))
                    .arg("least", low)
                    .arg("most", high),
            )
        }
        Some(_) => None,
    }
}

fn right(page: usize, rect: Rect) -> PreflightItem {
    let message = if rect.width > Pt::ZERO {
        "address side: return address and indicia are there, the address read area and the barcode clear zone (4.75 x \
         .625 in) are white"
    } else {
        "address side: return address and indicia are there, the address stands alone in the top half"
    };
    PreflightItem::pass("postal-zones", message.to_owned()).at(page, rect)
}
