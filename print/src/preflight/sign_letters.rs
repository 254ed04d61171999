//! A sign's title is as large as accessible signs ask; and a die line is there where one was asked for.

use super::{Sheet, lines, pages};
use crate::display::{Item, Role};
use crate::finding::PreflightItem;
use crate::job::SheetKind;
use crate::unit::{Mm, Pt};

/// Height of Noto Sans' capitals, in ems.
const CAPITALS: f64 = 0.714;

/// The least height of a sign's capitals for a reader so far away: 5/8 in under 72 in, and 1/8 in more for each foot
/// beyond, for signs 40 to 70 in above the ground (2010 ADA Standards 703.5.5; CHECK-VALUES "sign letters").
fn least_capitals(distance: Mm) -> Pt {
    let beyond = ((distance - Mm::inches(72.0)) / Mm::inches(12.0)).max(0.0);
    // A foot that has begun counts whole.
    Pt::inches(0.625 + 0.125 * beyond.ceil())
}

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
    let least = least_capitals(distance);
    let height = format!("{:.1}", smallest.mm().0);
    let far = format!("{:.0}", distance.0);
    Some(if smallest < least {
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

#[cfg(test)]
mod tests {
    use super::*;

    /// 2010 ADA Standards, table 703.5.5: 5/8 in under 72 in away, 1/8 in a foot beyond.
    #[test]
    fn letters_grow_with_the_distance() {
        for (inches, capitals) in [(24.0, 0.625), (72.0, 0.625), (84.0, 0.75), (90.0, 0.875), (120.0, 1.125)]
        {
            let found = least_capitals(Mm::inches(inches));
            assert!((found - Pt::inches(capitals)).0.abs() < 1e-9, "{inches}: {found:?}");
        }
    }
}
