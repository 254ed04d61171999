//! Finding the nearest site of a channel.

use std::f64::consts::{FRAC_PI_2, PI};

use crate::guide::Guide;
use crate::order::sort_by;
use crate::program::Position;

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

#[cfg(test)]
mod tests {
    use super::*;

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
