//! Preflight: what a print shop or the post would send back, looked for on the finished display list.
//!
//! Layout makes most of these impossible; they are looked for all the same, on what will be printed.

mod boxes;
mod contrast;
mod folds;
mod fonts;
mod ground;
mod hazards;
mod ink;
mod overlap;
mod postal;
mod qr_code;
mod reviewed;
mod safe_area;
mod sign_letters;
mod spoken;
mod truth;
mod type_size;

use crate::display::{DisplayList, Item, Page, TextLine};
use crate::finding::{PreflightItem, Severity};
use crate::job::SheetJob;
use crate::qr::Code;
use crate::unit::Pt;

pub(crate) use ground::Grounds;

/// What preflight looks at.
pub(crate) struct Sheet<'a> {
    pub(crate) job: &'a SheetJob,
    pub(crate) list: &'a DisplayList,
    pub(crate) code: &'a Code,
    pub(crate) body: Pt,
    /// The most ink the paper takes; nothing for a file that is not printed.
    pub(crate) ink_limit: Option<u16>,
    /// What its words stand on.
    pub(crate) grounds: Grounds,
}

/// Every finding: errors first, then warnings, then what was found right; each in the order of the checks.
pub(crate) fn preflight(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    let checks = [
        hazards::check,
        boxes::check,
        safe_area::check,
        folds::check,
        overlap::check,
        type_size::check,
        sign_letters::check,
        contrast::check,
        ink::check,
        fonts::check,
        qr_code::check,
        postal::check,
        spoken::check,
        reviewed::check,
        truth::check,
    ];
    let mut items: Vec<PreflightItem> = checks.iter().flat_map(|check| check(sheet)).collect();
    items.sort_by_key(|item| match item.severity {
        Severity::Error => 0,
        Severity::Warning => 1,
        Severity::Pass => 2,
    });
    items
}

/// Puts a finding where the lines of a text are, by the text's code; where there are none it stays without a place.
fn find(sheet: &Sheet<'_>, place: &str, item: PreflightItem) -> PreflightItem {
    for (index, page) in pages(sheet) {
        let area =
            lines(page).filter(|line| line.place == place).map(|line| line.rect).reduce(|a, b| a.around(&b));
        if let Some(area) = area {
            return item.at(index, area);
        }
    }
    item
}

/// Puts a finding where the text is that says these words in a language, or holds them; where there is none it stays
/// without a place. By words and not by number: lines may have been left out of the job that was ordered.
fn find_words(sheet: &Sheet<'_>, lang: &str, words: &str, item: PreflightItem) -> PreflightItem {
    let mut whole: Vec<(&str, String)> = Vec::new();
    for (_, page) in pages(sheet) {
        for line in lines(page).filter(|line| line.lang == lang) {
            match whole.iter_mut().find(|(place, _)| *place == line.place) {
                Some((_, text)) => text.extend([line.text.as_str(), line.gap.as_str()]),
                None => whole.push((&line.place, format!("{}{}", line.text, line.gap))),
            }
        }
    }
    let place = whole
        .iter()
        .find(|(_, text)| text == words)
        .or_else(|| whole.iter().find(|(_, text)| text.contains(words)))
        .map(|(place, _)| *place);
    match place {
        Some(place) => find(sheet, place, item),
        None => item,
    }
}

/// What a drawn thing is called in an argument: `thing:code`, `thing:picture`, `thing:area`.
fn thing_code(what: &str) -> &'static str {
    match what {
        "qr" | "quiet zone" => "thing:code",
        "tile" => "thing:picture",
        _ if what.starts_with("pictogram") => "thing:picture",
        _ => "thing:area",
    }
}

/// The same in English; what is no such code stays as it is, in quotation marks.
fn thing(code: &str) -> String {
    match code {
        "thing:code" => "the QR code".to_owned(),
        "thing:picture" => "a picture".to_owned(),
        "thing:area" => "an area of ink".to_owned(),
        words => format!("“{words}”"),
    }
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

#[cfg(test)]
mod tests;
