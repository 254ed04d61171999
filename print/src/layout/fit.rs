//! Copyfit: the largest size at which every language fits, and the size below which nothing is set.

use std::collections::BTreeMap;

use crate::text::{Paragraph, Setting, count};
use crate::unit::{Mm, Pt};

/// The smallest type of all, for small print: 6 pt (printers' guides, CHECK-VALUES "type and line").
pub(crate) const LEAST_TYPE: Pt = Pt(6.0);

/// The angle of ten minutes of arc, in radians: a letter that an eye of 20/40 acuity just reads.
const TEN_MINUTES: f64 = 0.002_908_882;

/// Height of Noto Sans' capitals, in ems.
pub(crate) const CAPITALS: f64 = 0.714;

/// The legibility floor. Ours: capitals stand for at least ten minutes of arc at the viewing distance. Acuity of
/// 20/20 reads five minutes (the definition of the Snellen scale), so half that acuity still reads the sheet.
/// The rule of an inch for each ten feet (CHECKS "Letter height") asks for eight minutes of ease on top: it is
/// what copyfit strives for by taking the largest size, not what it refuses below.
pub(crate) fn floor_for(distance: Mm) -> Pt {
    (distance * (TEN_MINUTES / CAPITALS)).pt().max(LEAST_TYPE)
}

/// The size from which a sheet is read with ease: a quarter above the floor. Ours; readers are quick at about twice and
/// a half the size that they can just make out (the "acuity reserve" of reading research, from memory), and the floor is
/// twice what an eye of 20/20 makes out. Lines are left out to reach it, where a job offers some.
fn comfortable_for(distance: Mm) -> Pt {
    floor_for(distance) * 1.25
}

/// The least height of a sign's capitals for a reader so far away: 5/8 in under 72 in, and 1/8 in more for each foot
/// beyond, for signs 40 to 70 in above the ground (2010 ADA Standards 703.5.5; CHECK-VALUES "sign letters").
pub(crate) fn sign_capitals(distance: Mm) -> Pt {
    let beyond = ((distance - Mm::inches(72.0)) / Mm::inches(12.0)).max(0.0);
    // A foot that has begun counts whole; a hair is none.
    Pt::inches(0.625 + 0.125 * (beyond - 1e-6).ceil().max(0.0))
}

/// The type size whose capitals are that high.
pub(super) fn sign_title(distance: Mm) -> Pt {
    sign_capitals(distance) / CAPITALS
}

/// The fewest steps that make a sheet fit: `fits` is asked with so many steps taken and a type size, of which the first
/// number may be taken for ease and the second at all.
///
/// The comfortable size is tried first, then one halfway to the floor, and then the floor itself. Where not even that
/// fits there is no answer: all steps are taken then, and laying the sheet out says what to shorten.
pub(super) fn fewest(
    distance: Mm,
    (for_ease, all): (usize, usize),
    fits: impl Fn(usize, Pt) -> bool,
) -> Option<usize> {
    let (floor, comfortable) = (floor_for(distance), comfortable_for(distance));
    let tries =
        [(comfortable, for_ease), ((comfortable + floor) / 2.0, for_ease), (floor, for_ease), (floor, all)];
    for (size, most) in tries {
        if !fits(most, size) {
            continue;
        }
        // Every step makes room, so what fits after some fits after more.
        let (mut low, mut high) = (0, most);
        while low < high {
            let middle = low.midpoint(high);
            if fits(middle, size) { high = middle } else { low = middle + 1 }
        }
        return Some(high);
    }
    None
}

/// Sizes are tried in quarters of a point.
const STEP: f64 = 0.25;

/// How many steps are taken at once while looking for the size.
const STRIDE: usize = 4;

/// The sizes from the largest down to the floor, the floor last.
pub(super) fn sizes(largest: Pt, floor: Pt) -> Vec<Pt> {
    let mut sizes = Vec::new();
    let mut size = largest;
    while size > floor {
        sizes.push(size);
        size -= Pt(STEP);
    }
    sizes.push(floor);
    sizes
}

/// The largest size at which something fits, and what `fits` gave for it.
///
/// Every fourth size is tried on the way down, then those just above the first that fits: what fits at a size fits at
/// smaller ones, but for a line that breaks elsewhere.
pub(super) fn largest_fitting<T>(sizes: &[Pt], fits: impl Fn(Pt) -> Option<T>) -> Option<(Pt, T)> {
    let mut above = 0;
    loop {
        let at = (above + STRIDE - 1).min(sizes.len().checked_sub(1)?);
        let size = *sizes.get(at)?;
        if let Some(found) = fits(size) {
            let between = sizes.get(above..at).unwrap_or_default();
            let larger = between.iter().find_map(|&size| fits(size).map(|found| (size, found)));
            return Some(larger.unwrap_or((size, found)));
        }
        if at + 1 >= sizes.len() {
            return None;
        }
        above = at + 1;
    }
}

/// Why a plan does not work at a size.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Wide {
    pub(super) place: String,
    pub(super) lang: String,
    pub(super) text: String,
    pub(super) word: String,
    pub(super) room: usize,
}

impl Wide {
    /// For a sheet without any text: nothing is too wide.
    pub(super) fn nothing() -> Self {
        Self { place: String::new(), lang: String::new(), text: String::new(), word: String::new(), room: 0 }
    }
}

/// How paragraphs are set while planning: whole, or cut short to find out what would have to go.
#[derive(Debug, Default)]
pub(super) struct Trial {
    /// The most lines a paragraph may take, by its place in the job.
    pub(super) limits: BTreeMap<String, usize>,
}

impl Trial {
    pub(super) fn set(&self, paragraph: &Paragraph, size: Pt, measure: Pt) -> Result<Setting, Wide> {
        let mut setting = paragraph.set(size, measure).map_err(|wide| Wide {
            place: paragraph.place.clone(),
            lang: paragraph.lang.clone(),
            text: paragraph.words.clone(),
            word: wide.word,
            room: wide.room,
        })?;
        if let Some(&most) = self.limits.get(&paragraph.place) {
            setting.lines.truncate(most);
        }
        Ok(setting)
    }
}

/// One text per language, side by side.
pub(super) struct SideBySide {
    pub(super) settings: Vec<Setting>,
    pub(super) columns: Vec<Pt>,
}

impl SideBySide {
    /// In columns of one width if each text stays on one line there, so that languages stand below each other
    /// down the sheet; else in columns as wide as the texts need.
    pub(super) fn plan(
        texts: &[Paragraph],
        trial: &Trial,
        size: Pt,
        width: Pt,
        gap: Pt,
    ) -> Result<Self, Wide> {
        let room = width - gap * count(texts.len().saturating_sub(1));
        let equal = room / count(texts.len().max(1));
        let set = |columns: Vec<Pt>| -> Result<Self, Wide> {
            let settings = texts.iter().zip(&columns).map(|(text, &column)| trial.set(text, size, column));
            Ok(Self { settings: settings.collect::<Result<_, _>>()?, columns })
        };
        let needed: Vec<Pt> = texts.iter().map(|text| text.natural(size)).collect();
        let sum: Pt = needed.iter().copied().sum();
        if needed.iter().all(|&one| one <= equal) || sum <= Pt::ZERO {
            return set(vec![equal; texts.len()]);
        }
        let share = |one: Pt| {
            if sum <= room { one + (room - sum) / count(texts.len()) } else { one * (room / sum) }
        };
        let fair = set(needed.into_iter().map(share).collect());
        // A long word may need its full share of the width.
        fair.or_else(|_| set(vec![equal; texts.len()]))
    }

    pub(super) fn height(&self) -> Pt {
        self.settings.iter().map(Setting::height).fold(Pt::ZERO, Pt::max)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_floor_grows_with_the_distance_and_never_falls_under_six_points() {
        assert_eq!(floor_for(Mm(300.0)), LEAST_TYPE);
        let floor = floor_for(Mm(600.0)).0;
        assert!((6.9..7.0).contains(&floor), "{floor}");
        let far = floor_for(Mm(2000.0)).0;
        assert!((23.0..23.2).contains(&far), "{far}");
    }

    /// 2010 ADA Standards, table 703.5.5: 5/8 in under 72 in away, 1/8 in a foot beyond.
    #[test]
    fn a_signs_letters_grow_with_the_distance() {
        for (inches, capitals) in [(24.0, 0.625), (72.0, 0.625), (84.0, 0.75), (90.0, 0.875), (120.0, 1.125)]
        {
            let found = sign_capitals(Mm::inches(inches));
            assert!((found - Pt::inches(capitals)).0.abs() < 1e-9, "{inches}: {found:?}");
        }
    }

    #[test]
    fn the_largest_size_is_found() {
        let all = sizes(Pt(18.0), Pt(6.9));
        for limit in &all {
            let found = largest_fitting(&all, |size| (size <= *limit).then_some(size.0));
            assert_eq!(found, Some((*limit, limit.0)));
        }
        assert_eq!(largest_fitting(&all, |_| None::<()>), None);
        assert_eq!(largest_fitting(&[], |_| Some(())), None);
        assert_eq!(largest_fitting(&[Pt(6.0)], |_| Some(())), Some((Pt(6.0), ())));
    }

    #[test]
    fn sizes_end_at_the_floor() {
        assert_eq!(sizes(Pt(7.0), Pt(6.4)), vec![Pt(7.0), Pt(6.75), Pt(6.5), Pt(6.4)]);
        assert_eq!(sizes(Pt(5.0), Pt(6.0)), vec![Pt(6.0)]);
    }
}
