//! Finding the nearest site of a channel.

use std::f64::consts::{FRAC_PI_2, PI};

use crate::diagram::as_terminal;
use crate::guide::Guide;
use crate::order::sort_by;
use crate::program::Position;
use crate::search::SearchIndex;

/// A site and how far it is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Near {
    /// Its position in [`Guide::sites`].
    pub site: usize,
    /// Metres from where the resident is, when that is known.
    pub metres: Option<f64>,
}

/// The mean radius of the Earth in metres (IUGG; WGS 84 axes, (2a + b) / 3).
const EARTH: f64 = 6_371_008.8;

/// The distance of two positions in metres along a great circle, by the haversine formula.
///
/// One radius cannot be right everywhere: it errs up to 0.56 % against the ellipsoid.
#[must_use]
pub fn distance(a: Position, b: Position) -> f64 {
    let (lat1, lat2) = (a.lat.to_radians(), b.lat.to_radians());
    let half = |d: f64| {
        let s = sine(d / 2.0);
        s * s
    };
    let cosine = |latitude: f64| sine(FRAC_PI_2 - latitude.abs());
    let h = half(lat2 - lat1) + cosine(lat1) * cosine(lat2) * half((b.lon - a.lon).to_radians());
    2.0 * EARTH * libm::asin(libm::sqrt(h.clamp(0.0, 1.0)))
}

/// The sine of an angle between half a turn to the left and to the right, in radians, right to twelve
/// digits: its series at most a quarter turn from where that begins. The library's, which knows every
/// angle, weighed phones 2 KB (brotli).
fn sine(angle: f64) -> f64 {
    let x = match angle.abs() {
        near if near <= FRAC_PI_2 => angle,
        far => (PI - far).copysign(angle),
    };
    let square = x * x;
    // x - x^3/3! + x^5/5! - ..., from its small end.
    let terms = [272.0, 210.0, 156.0, 110.0, 72.0, 42.0, 20.0, 6.0];
    let sum = terms.into_iter().fold(1.0 - square / 342.0, |sum, term| 1.0 - square / term * sum);
    x * sum
}

/// The sites of a channel that take an item (all of them when none is given), nearest first; in
/// the program's order when nothing is known of where the resident is.
#[must_use]
pub fn nearest(guide: &Guide, channel: &str, item: Option<&str>, from: Option<Position>) -> Vec<Near> {
    let mut near: Vec<Near> = guide
        .sites
        .iter()
        .enumerate()
        .filter(|(_, s)| s.channels.iter().any(|c| c == channel) && item.is_none_or(|i| s.takes(i)))
        .map(|(site, s)| Near { site, metres: from.map(|f| distance(f, s.position)) })
        .collect();
    sort_by(&mut near, |a, b| {
        a.metres.unwrap_or(0.0).total_cmp(&b.metres.unwrap_or(0.0)).then(a.site.cmp(&b.site))
    });
    near
}

/// The place somebody typed, among those a guide knows: its zones and sites by `named` (the kind, "zone" or
/// "site", and the id), and whatever stands between the commas of sites' addresses: streets, towns, postal
/// codes. The name as it is known, and a position in its middle; `None` for a place that is none of these.
/// `fold` brings texts into the form in which they are compared; see [`crate::fold`].
#[must_use]
pub fn place_named(
    guide: &Guide,
    typed: &str,
    named: impl Fn(&str, &str) -> String,
    fold: impl Fn(&str) -> String,
) -> Option<(String, Position)> {
    let mut known: Vec<(String, Vec<Position>)> = Vec::new();
    let mut add = |name: &str, at: Position| match known.iter_mut().find(|(known, _)| known == name) {
        Some((_, all)) => all.push(at),
        None => known.push((name.to_owned(), vec![at])),
    };
    for zone in &guide.zones {
        if let Some(centre) = zone.centre {
            add(&named("zone", &zone.id), centre);
        }
    }
    for site in &guide.sites {
        add(&named("site", &site.id), site.position);
        for part in site.address.split(',').map(str::trim).filter(|part| !part.is_empty()) {
            add(part, site.position);
        }
    }
    let names: Vec<String> = known.iter().map(|(name, _)| fold(name)).collect();
    let index = SearchIndex::build(names.iter().enumerate().map(|(at, name)| (at, name.clone(), true, 0)));
    let query = fold(typed);
    // A slip in a word is forgiven; another number is another street or another town.
    let numbers = || query.split(' ').filter(|word| word.bytes().any(|b| b.is_ascii_digit()));
    let hits = index.find(&query, MOST_PLACES);
    let hit = hits.into_iter().find(|hit| {
        names
            .get(hit.item)
            .is_some_and(|name| numbers().all(|number| name.split(' ').any(|word| word == number)))
    })?;
    let (name, all) = known.get(hit.item)?;
    let count = f64::from(u32::try_from(all.len()).unwrap_or(u32::MAX));
    let mean = |part: fn(&Position) -> f64| all.iter().map(part).sum::<f64>() / count;
    Some((name.clone(), Position { lat: mean(|p| p.lat), lon: mean(|p| p.lon) }))
}

/// How many places are looked through for one with the right number.
const MOST_PLACES: usize = 50;

impl Guide {
    /// The items, as positions in [`Guide::items`], that some answer sends to a channel or says it takes as
    /// well; the most common first. Which answers these are, only asking tells.
    #[must_use]
    pub fn items_to(&self, channel: &str) -> Vec<usize> {
        let goes: Vec<bool> = self
            .outcomes
            .iter()
            .map(|o| o.channel.as_deref() == Some(channel) || o.also.iter().any(|also| also == channel))
            .collect();
        // A node's children come before it.
        let mut leads: Vec<bool> = Vec::with_capacity(self.nodes.len());
        let there = |leads: &[bool], at: u32| match as_terminal(at) {
            Some(outcome) => goes.get(outcome) == Some(&true),
            None => leads.get(at as usize) == Some(&true),
        };
        for node in &self.nodes {
            let some = node.children.iter().any(|&child| there(&leads, child));
            leads.push(some);
        }
        let roots = self.items.iter().map(|item| item.subjects.first().map(|subject| subject.root));
        let mut items: Vec<usize> =
            roots.enumerate().filter_map(|(at, root)| there(&leads, root?).then_some(at)).collect();
        let common = |at: usize| std::cmp::Reverse(self.items.get(at).map(|item| item.common));
        sort_by(&mut items, |&a, &b| common(a).cmp(&common(b)).then(a.cmp(&b)));
        items
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::guide::{GuideSite, GuideZone};
    use crate::search::fold;

    fn site(id: &str, address: &str, lat: f64, lon: f64) -> GuideSite {
        let position = Position { lat, lon };
        GuideSite { id: id.to_owned(), address: address.to_owned(), position, ..GuideSite::default() }
    }

    #[test]
    fn a_place_is_found_by_zone_town_street_code_and_site() {
        let centre = Some(Position { lat: 5.0, lon: 6.0 });
        let guide = Guide {
            zones: vec![GuideZone { id: "Old Mill".to_owned(), centre, ..GuideZone::default() }],
            sites: vec![
                site("Harbor Barn", "12 Quay Street, Larkhithe, QM 00417", 1.0, 2.0),
                site("Mill Depot", "7 Weir Lane, Larkhithe, QM 00419", 3.0, 4.0),
                site("Far Shed", "1200 Ridge Road, Dunmarrow", -8.0, 9.0),
            ],
            ..Guide::default()
        };
        for (typed, expected) in [
            ("old mill", Some(("Old Mill", 5.0, 6.0))),
            ("larkhithe", Some(("Larkhithe", 2.0, 3.0))),
            ("Larkhite", Some(("Larkhithe", 2.0, 3.0))),
            ("harbour barn", Some(("Harbor Barn", 1.0, 2.0))),
            ("00419", Some(("QM 00419", 3.0, 4.0))),
            ("00418", None),
            ("1200 ridge road", Some(("1200 Ridge Road", -8.0, 9.0))),
            ("1300 ridge road", None),
            ("xyzzy", None),
            ("", None),
        ] {
            let found = place_named(&guide, typed, |_, id| id.to_owned(), fold);
            let found = found.as_ref().map(|(name, at)| (name.as_str(), at.lat, at.lon));
            assert_eq!(found, expected, "{typed}");
        }
    }

    #[test]
    fn the_series_is_the_librarys_sine() {
        for step in -1000..=1000 {
            let angle = PI * f64::from(step) / 1000.0;
            let (ours, theirs) = (sine(angle), libm::sin(angle));
            assert!((ours - theirs).abs() < 1e-12, "{angle}: {ours} {theirs}");
        }
    }

    /// Geodesic distances on WGS 84 computed with geographiclib 2.1; a sphere may differ by 0.6 %.
    #[test]
    fn distances_are_within_six_thousandths_of_the_geodesic() {
        for (a, b, geodesic) in [
            ((35.60777, -139.44815), (-11.17491, -69.95921), 8_935_244.560_481_83),
            ((55.52454, 106.05087), (77.03196, 197.18234), 4_105_086.171_392_44),
            ((-68.82867, -74.28391), (-50.63005, -8.36685), 3_956_936.926_063_54),
            ((40.0, -75.0), (40.018, -75.0), 1_998.626_5),
            ((40.0, -75.0), (40.0, -74.977), 1_964.058_7),
            ((60.0, 0.0), (60.0, 1.0), 55_799.470_4),
        ] {
            let found = distance(Position { lat: a.0, lon: a.1 }, Position { lat: b.0, lon: b.1 });
            let error = (found - geodesic).abs() / geodesic;
            assert!(error < 0.006, "{a:?} {b:?}: {found} for {geodesic}");
        }
    }
}
