//! The code's modules can be printed and seen.

use super::{Sheet, pages};
use crate::display::{Item, Page};
use crate::finding::PreflightItem;
use crate::ink::Ink;
use crate::path::bounds;
use crate::qr::{QUIET, SMALLEST_MODULE};
use crate::unit::{Pt, Rect};

/// A code of more modules than this needs a still hand. Ours: version 6, 41 modules.
const LARGEST_EASY_VERSION: u8 = 6;

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    let code = sheet.code;
    let module = code.module;
    let mut found = Vec::new();
    let mut place = None;
    for (index, page) in pages(sheet) {
        found.extend(quiet_zones(index, page, module.pt()));
        place = place.or_else(|| codes(page).next().map(|rect| (index, rect)));
    }
    let here = |item: PreflightItem| match place {
        Some((index, rect)) => item.at(index, rect),
        None => item,
    };
    if module < SMALLEST_MODULE {
        let message = format!(
            "the QR code's modules are {:.2} mm wide, under the {} mm that prints; use a shorter address",
            module.0, SMALLEST_MODULE.0
        );
        let item = PreflightItem::error("qr-too-fine", message).arg("module", format!("{:.2}", module.0));
        found.push(here(item));
    }
    if code.version > LARGEST_EASY_VERSION {
        let message = format!(
            "the QR code is of version {} ({} characters); a shorter address makes it coarser and easier to scan",
            code.version,
            sheet.job.qr_url.chars().count()
        );
        let item = PreflightItem::warning("qr-dense", message)
            .arg("version", code.version)
            .arg("characters", sheet.job.qr_url.chars().count());
        found.push(here(item));
    }
    if found.is_empty() {
        let message = format!(
            "QR code: modules of {:.2} mm, version {}, error correction {}, quiet zone {QUIET} modules",
            module.0, code.version, code.level
        );
        let item = PreflightItem::pass("qr-code", message)
            .arg("module", format!("{:.2}", module.0))
            .arg("version", code.version)
            .arg("level", code.level)
            .arg("quiet", QUIET);
        found.push(here(item));
    }
    found
}

/// The frames of a page's codes, without their quiet zones.
fn codes(page: &Page) -> impl Iterator<Item = Rect> {
    page.items.iter().filter_map(|item| match item {
        Item::Fill(fill) if fill.what == "qr" => bounds(&fill.path),
        _ => None,
    })
}

/// Each code has bare paper around it, as wide as it must be, and nothing drawn on it.
fn quiet_zones(index: usize, page: &Page, module: Pt) -> Vec<PreflightItem> {
    let mut found = Vec::new();
    for (at, item) in page.items.iter().enumerate() {
        let Item::Fill(code) = item else { continue };
        let Some(rect) = bounds(&code.path).filter(|_| code.what == "qr") else { continue };
        let quiet = rect.grown(module * f64::from(QUIET));
        let bare = page.items.iter().take(at).any(|below| {
            matches!(below, Item::Fill(fill) if fill.what == "quiet zone" && fill.ink == Ink::PAPER
                && bounds(&fill.path).is_some_and(|area| area.contains(&quiet)))
        });
        let touched = page.items.iter().skip(at + 1).any(|above| match above {
            Item::Fill(fill) => bounds(&fill.path).is_some_and(|area| area.overlaps(&quiet)),
            Item::Text(line) => line.rect.overlaps(&quiet),
            Item::Rule(rule) => {
                let end = |p: crate::unit::Point| Rect::new(p.x, p.y, Pt::ZERO, Pt::ZERO);
                end(rule.from).around(&end(rule.to)).grown(rule.width / 2.0).overlaps(&quiet)
            }
            // On no plate that is printed, or outside the trim.
            Item::Technical(_) => false,
        });
        if !bare || touched {
            let message = format!(
                "the QR code on page {} does not have {QUIET} modules of bare paper around it; move what is there",
                index + 1
            );
            found.push(PreflightItem::error("qr-not-quiet", message).arg("quiet", QUIET).at(index, quiet));
        }
    }
    found
}
