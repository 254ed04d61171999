//! Pictograms: our own shapes for the verdicts and for what household items look like.
//!
//! The same outlines go into the press file and, as SVG path data, onto the screen.

mod drawings;

use crate::job::Tone;
use crate::path::PathOp;
use crate::unit::{Point, Pt, Rect};

use drawings::DRAWINGS;

/// The side of the square every pictogram is drawn on.
pub const PICTOGRAM_SIDE: f64 = 48.0;

/// A pictogram.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Pictogram {
    /// Its id, stable: `bottle`, `verdict-yes`.
    pub id: &'static str,
    /// What it shows, in English, for people who choose one.
    pub shows: &'static str,
    /// Its outline as SVG path data on a square of [`PICTOGRAM_SIDE`], to be filled by the even-odd rule.
    pub svg_path: &'static str,
}

const fn all() -> [Pictogram; DRAWINGS.len()] {
    let mut list = [Pictogram { id: "", shows: "", svg_path: "" }; DRAWINGS.len()];
    let (mut left, mut rest): (&[drawings::Drawing], &mut [Pictogram]) = (&DRAWINGS, &mut list);
    while let ([(id, shows, svg_path), more @ ..], [place, others @ ..]) = (left, rest) {
        *place = Pictogram { id, shows, svg_path };
        (left, rest) = (more, others);
    }
    list
}

/// Every pictogram, the verdicts' shapes first.
pub const PICTOGRAMS: [Pictogram; DRAWINGS.len()] = all();

/// The pictogram of an id.
pub fn pictogram(id: &str) -> Option<Pictogram> {
    PICTOGRAMS.into_iter().find(|pictogram| pictogram.id == id)
}

/// A pictogram's outline as SVG path data on a square of 48 by 48.
pub fn svg_path(id: &str) -> Option<&'static str> {
    pictogram(id).map(|pictogram| pictogram.svg_path)
}

impl Tone {
    /// The id of the shape that stands for this verdict wherever it is shown.
    pub const fn shape(self) -> &'static str {
        match self {
            Self::Yes => "verdict-yes",
            Self::No => "verdict-no",
            Self::Elsewhere => "verdict-elsewhere",
            Self::Caution => "verdict-caution",
        }
    }
}

impl Pictogram {
    /// The outline on its square.
    pub fn outline(&self) -> Vec<PathOp> {
        parse(self.svg_path)
    }

    /// The outline scaled to a square area, mirrored left to right if asked.
    pub(crate) fn fitted(&self, area: Rect, mirrored: bool) -> Vec<PathOp> {
        let scale = area.width.min(area.height).0 / PICTOGRAM_SIDE;
        let place = |p: Point| Point {
            x: area.x + Pt(if mirrored { PICTOGRAM_SIDE - p.x.0 } else { p.x.0 } * scale),
            y: area.y + Pt(p.y.0 * scale),
        };
        self.outline().into_iter().map(|op| op.map(place)).collect()
    }
}

/// Reads `M`, `L`, `C` and `Z` with absolute numbers: what [`drawings`] is written in.
fn parse(data: &str) -> Vec<PathOp> {
    let mut ops = Vec::new();
    for (at, command) in data.match_indices(['M', 'L', 'C', 'Z']) {
        let rest = data.get(at + 1..).unwrap_or("");
        let numbers = rest.split(['M', 'L', 'C', 'Z']).next().unwrap_or("");
        let mut values = numbers.split(' ').filter_map(|number| number.parse::<f64>().ok());
        let mut point = || Some(Point { x: Pt(values.next()?), y: Pt(values.next()?) });
        let op = match command {
            "M" => point().map(PathOp::Move),
            "L" => point().map(PathOp::Line),
            "C" => match (point(), point(), point()) {
                (Some(a), Some(b), Some(c)) => Some(PathOp::Curve(a, b, c)),
                _ => None,
            },
            _ => Some(PathOp::Close),
        };
        ops.extend(op);
    }
    ops
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::path::bounds;
    use crate::unit::Pt;

    #[test]
    fn every_drawing_is_whole_and_on_its_square() {
        let square = Rect::new(Pt(0.0), Pt(0.0), Pt(PICTOGRAM_SIDE), Pt(PICTOGRAM_SIDE));
        for pictogram in PICTOGRAMS {
            let ops = pictogram.outline();
            let letters = pictogram.svg_path.matches(['M', 'L', 'C', 'Z']).count();
            assert_eq!(ops.len(), letters, "{}: a step was not read", pictogram.id);
            assert!(matches!(ops.first(), Some(PathOp::Move(_))), "{}", pictogram.id);
            assert_eq!(ops.last(), Some(&PathOp::Close), "{}", pictogram.id);
            let frame = bounds(&ops).expect("an outline");
            assert!(square.contains(&frame), "{} leaves its square: {frame:?}", pictogram.id);
            assert!(frame.height.0 > 24.0, "{} is too flat to read", pictogram.id);
        }
    }

    #[test]
    fn ids_are_unique_and_found() {
        for (index, pictogram) in PICTOGRAMS.iter().enumerate() {
            assert_eq!(PICTOGRAMS.iter().position(|other| other.id == pictogram.id), Some(index));
            assert_eq!(svg_path(pictogram.id), Some(pictogram.svg_path));
        }
        assert_eq!(svg_path("no such thing"), None);
    }

    #[test]
    fn each_verdict_has_its_own_outline() {
        let shapes: Vec<_> = [Tone::Yes, Tone::No, Tone::Elsewhere, Tone::Caution]
            .into_iter()
            .map(|tone| {
                svg_path(tone.shape()).expect("a shape").split('Z').next().expect("its outer outline")
            })
            .collect();
        for (index, shape) in shapes.iter().enumerate() {
            assert!(!shapes[..index].contains(shape));
        }
    }
}
