//! Outlines: straight and curved strokes that enclose an area.

use serde::{Deserialize, Serialize};

use crate::unit::{Point, Pt, Rect};

/// One step of an outline. Areas are filled by the even-odd rule, so an outline inside another is a hole.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum PathOp {
    /// Start a new outline here.
    Move(Point),
    /// A straight line to here.
    Line(Point),
    /// A cubic Bézier curve: two handles, then where it ends.
    Curve(Point, Point, Point),
    /// Back to the start of this outline.
    Close,
}

impl PathOp {
    /// The same step with every point mapped.
    pub(crate) fn map(self, f: impl Fn(Point) -> Point) -> Self {
        match self {
            Self::Move(p) => Self::Move(f(p)),
            Self::Line(p) => Self::Line(f(p)),
            Self::Curve(a, b, c) => Self::Curve(f(a), f(b), f(c)),
            Self::Close => Self::Close,
        }
    }
}

/// How far along a quarter circle's tangents a cubic curve's handles lie: 4/3 (sqrt 2 - 1).
const QUARTER: f64 = 0.552_284_75;

fn point(x: Pt, y: Pt) -> Point {
    Point { x, y }
}

/// A rectangle's outline.
pub(crate) fn rectangle(r: Rect) -> Vec<PathOp> {
    vec![
        PathOp::Move(point(r.x, r.y)),
        PathOp::Line(point(r.right(), r.y)),
        PathOp::Line(point(r.right(), r.bottom())),
        PathOp::Line(point(r.x, r.bottom())),
        PathOp::Close,
    ]
}

/// A rectangle's outline with rounded corners.
pub(crate) fn rounded(r: Rect, radius: Pt) -> Vec<PathOp> {
    let radius = radius.min(r.width / 2.0).min(r.height / 2.0);
    let k = radius * (1.0 - QUARTER);
    let (left, top, right, bottom) = (r.x, r.y, r.right(), r.bottom());
    vec![
        PathOp::Move(point(left + radius, top)),
        PathOp::Line(point(right - radius, top)),
        PathOp::Curve(point(right - k, top), point(right, top + k), point(right, top + radius)),
        PathOp::Line(point(right, bottom - radius)),
        PathOp::Curve(point(right, bottom - k), point(right - k, bottom), point(right - radius, bottom)),
        PathOp::Line(point(left + radius, bottom)),
        PathOp::Curve(point(left + k, bottom), point(left, bottom - k), point(left, bottom - radius)),
        PathOp::Line(point(left, top + radius)),
        PathOp::Curve(point(left, top + k), point(left + k, top), point(left + radius, top)),
        PathOp::Close,
    ]
}

/// How many straight steps stand for a curve when it is asked what lies inside.
const STEPS: u32 = 8;

/// Whether a point lies inside an outline, by the even-odd rule; curves count as a few straight steps.
pub(crate) fn contains(path: &[PathOp], point: Point) -> bool {
    let mut inside = false;
    let (mut start, mut last) = (Point::default(), Point::default());
    // A ray to the right crosses an edge that has one end above it and one below.
    let mut edge = |from: Point, to: Point| {
        if (from.y > point.y) != (to.y > point.y) {
            let at = from.x + (to.x - from.x) * ((point.y - from.y) / (to.y - from.y));
            inside ^= point.x < at;
        }
    };
    for op in path {
        match *op {
            PathOp::Move(p) => {
                edge(last, start);
                (start, last) = (p, p);
            }
            PathOp::Line(p) => {
                edge(last, p);
                last = p;
            }
            PathOp::Curve(a, b, c) => {
                let from = last;
                // A curve stays among its handles: only where they lie all around the point do its steps matter. Above
                // and below the ray nothing crosses; right of the point its ends say whether it does.
                let around = |of: fn(Point) -> Pt| {
                    let [own, ends @ ..] = [point, from, a, b, c].map(of);
                    ends.iter().any(|end| *end > own) && ends.iter().any(|end| *end <= own)
                };
                if !around(|p| p.y) || !around(|p| p.x) {
                    edge(last, c);
                    last = c;
                    continue;
                }
                for step in 1..=STEPS {
                    let t = f64::from(step) / f64::from(STEPS);
                    let u = 1.0 - t;
                    let mix = |w: Pt, x: Pt, y: Pt, z: Pt| {
                        w * (u * u * u) + x * (3.0 * u * u * t) + y * (3.0 * u * t * t) + z * (t * t * t)
                    };
                    let next = Point { x: mix(from.x, a.x, b.x, c.x), y: mix(from.y, a.y, b.y, c.y) };
                    edge(last, next);
                    last = next;
                }
            }
            PathOp::Close => {
                edge(last, start);
                last = start;
            }
        }
    }
    edge(last, start);
    inside
}

/// The smallest rectangle around every point of an outline, handles included.
pub(crate) fn bounds(path: &[PathOp]) -> Option<Rect> {
    let mut corners: Option<(Pt, Pt, Pt, Pt)> = None;
    let mut take = |p: Point| {
        corners = Some(match corners {
            None => (p.x, p.y, p.x, p.y),
            Some((l, t, r, b)) => (l.min(p.x), t.min(p.y), r.max(p.x), b.max(p.y)),
        });
    };
    for op in path {
        match *op {
            PathOp::Move(p) | PathOp::Line(p) => take(p),
            PathOp::Curve(a, b, c) => {
                take(a);
                take(b);
                take(c);
            }
            PathOp::Close => {}
        }
    }
    corners.map(|(l, t, r, b)| Rect::new(l, t, r - l, b - t))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn points_are_inside_outlines_and_outside_their_holes() {
        let area = Rect::new(Pt(0.0), Pt(0.0), Pt(100.0), Pt(60.0));
        let mut path = rounded(area, Pt(20.0));
        path.extend(rectangle(Rect::new(Pt(40.0), Pt(20.0), Pt(20.0), Pt(20.0))));
        let at = |x: f64, y: f64| contains(&path, point(Pt(x), Pt(y)));
        assert!(at(30.0, 30.0) && at(50.0, 5.0) && at(99.0, 30.0) && at(7.0, 7.0));
        assert!(!at(50.0, 30.0), "the hole");
        assert!(!at(2.0, 2.0), "the round corner");
        assert!(!at(-1.0, 30.0) && !at(101.0, 30.0) && !at(50.0, 61.0));
    }
}
