//! A sign's title is as large as accessible signs ask; and a die line is there where one was asked for.

use super::{Sheet, lines, pages};
use crate::display::{Item, Role};
use crate::finding::PreflightItem;
use crate::job::SheetKind;
use crate::layout::{CAPITALS, sign_capitals};
use crate::unit::{Pt, TOLERANCE};

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    let mut found = Vec::new();
    if sheet.job.sheet == SheetKind::EnclosureSign {
        found.extend(letters(sheet));
    }
    let drawn = pages(sheet).all(|(_, page)| {
        page.items.iter().any(|item| matches!(item, Item::Technical(line) if line.what == "die line"))
    });
    if sheet.job.die_line && drawn {
        let message =
            "the die's line is in the spot colour “Dieline”, over everything and on no printed plate";
        found.push(PreflightItem::pass("die-line", message.to_owned()));
    }
    found
}

fn letters(sheet: &Sheet<'_>) -> Option<PreflightItem> {
    let smallest = pages(sheet)
        .flat_map(|(_, page)| lines(page))
        .filter(|line| line.role == Role::Title)
        .flat_map(|line| &line.runs)
        .map(|run| run.size * CAPITALS)
        .reduce(Pt::min)?;
    let distance = sheet.job.viewing_distance;
    let least = sign_capitals(distance);
    let height = format!("{:.1}", smallest.mm().0);
    let far = format!("{:.0}", distance.0);
    Some(if smallest < least - TOLERANCE {
        let message = format!(
            "the title's capitals are {height} mm high; accessible signs read from {far} mm ask for {:.1} mm, shorten \
             the texts or take a larger sign",
            least.mm().0
        );
        PreflightItem::warning("sign-letters-small", message)
            .arg("height", height)
            .arg("least", format!("{:.1}", least.mm().0))
            .arg("distance", far)
    } else {
        let message = format!("the title's capitals are {height} mm high, enough for {far} mm");
        PreflightItem::pass("sign-letters", message).arg("height", height).arg("distance", far)
    })
}
