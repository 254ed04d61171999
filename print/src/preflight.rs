//! Preflight: what a print shop or the post would send back, looked for on the finished display list.
//!
//! Layout makes most of these impossible; they are looked for all the same, on what will be printed.

mod folds;
mod hazards;
mod ink;
mod overlap;
mod postal;
mod qr_code;
mod reviewed;
mod safe_area;
mod sign_letters;
mod type_size;

use crate::display::{DisplayList, Item, Page, TextLine};
use crate::finding::{PreflightItem, Severity};
use crate::job::SheetJob;
use crate::qr::Code;
use crate::unit::Pt;

/// What preflight looks at.
pub(crate) struct Sheet<'a> {
    pub(crate) job: &'a SheetJob,
    pub(crate) list: &'a DisplayList,
    pub(crate) code: &'a Code,
    pub(crate) body: Pt,
}

/// Every finding: errors first, then warnings, then what was found right; each in the order of the checks.
pub(crate) fn preflight(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    let checks = [
        hazards::check,
        safe_area::check,
        folds::check,
        overlap::check,
        type_size::check,
        sign_letters::check,
        ink::check,
        qr_code::check,
        postal::check,
        reviewed::check,
    ];
    let mut items: Vec<PreflightItem> = checks.iter().flat_map(|check| check(sheet)).collect();
    items.sort_by_key(|item| match item.severity {
        Severity::Error => 0,
        Severity::Warning => 1,
        Severity::Pass => 2,
    });
    items
}

/// A page's lines of text.
fn lines(page: &Page) -> impl Iterator<Item = &TextLine> {
    page.items.iter().filter_map(|item| match item {
        Item::Text(line) => Some(line),
        Item::Fill(_) | Item::Rule(_) | Item::Technical(_) => None,
    })
}

/// The items with their findings' pages.
fn pages<'a>(sheet: &Sheet<'a>) -> impl Iterator<Item = (usize, &'a Page)> + use<'a> {
    sheet.list.pages.iter().enumerate()
}
