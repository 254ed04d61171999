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

/// Reads what [`drawings`] is written in: `M`, then `m`, `l`, `h`, `v`, `c`, `a` and `z`, relative, where a
/// command that is followed by more numbers is meant again. What it cannot read ends the outline.
fn parse(data: &str) -> Vec<PathOp> {
    let mut reader = Reader { rest: data, at: Point::default(), start: Point::default(), ops: Vec::new() };
    let mut command = None;
    loop {
        reader.skip_blanks();
        command = reader.command().or(command);
        if command.and_then(|letter| reader.step(letter)).is_none() {
            return reader.ops;
        }
    }
}

/// Path data being read, and where its pen is.
struct Reader<'a> {
    rest: &'a str,
    at: Point,
    /// Where the outline began, and the pen returns to.
    start: Point,
    ops: Vec<PathOp>,
}

impl Reader<'_> {
    fn skip_blanks(&mut self) {
        self.rest = self.rest.trim_start_matches([' ', ',']);
    }

    fn command(&mut self) -> Option<char> {
        let letter = self.rest.chars().next().filter(char::is_ascii_alphabetic)?;
        self.rest = self.rest.get(1..)?;
        Some(letter)
    }

    fn number(&mut self) -> Option<f64> {
        self.skip_blanks();
        let sign = usize::from(self.rest.starts_with('-'));
        let digits = self.rest.get(sign..)?;
        let length = digits.find(|c: char| !c.is_ascii_digit() && c != '.').unwrap_or(digits.len());
        let (number, rest) = self.rest.split_at_checked(sign + length)?;
        self.rest = rest;
        number.parse().ok()
    }

    /// The point that the next two numbers lead to from the pen.
    fn point(&mut self) -> Option<Point> {
        let (dx, dy) = (self.number()?, self.number()?);
        Some(Point { x: self.at.x + Pt(dx), y: self.at.y + Pt(dy) })
    }

    fn step(&mut self, command: char) -> Option<()> {
        let at = self.at;
        match command {
            'M' | 'm' => {
                self.at = self.point()?;
                self.start = self.at;
                self.ops.push(PathOp::Move(self.at));
            }
            'l' => {
                let to = self.point()?;
                self.line_to(to);
            }
            'h' => {
                let x = at.x + Pt(self.number()?);
                self.line_to(Point { x, y: at.y });
            }
            'v' => {
                let y = at.y + Pt(self.number()?);
                self.line_to(Point { x: at.x, y });
            }
            'c' => {
                let (a, b, c) = (self.point()?, self.point()?, self.point()?);
                self.ops.push(PathOp::Curve(a, b, c));
                self.at = c;
            }
            'a' => {
                let (radius, _same, _turned, _short) =
                    (self.number()?, self.number()?, self.number()?, self.number()?);
                let clockwise = self.number()? != 0.0;
                let to = self.point()?;
                self.ops.extend(arc(at, to, radius, clockwise));
                self.at = to;
            }
            'z' if self.ops.last().is_some_and(|op| *op != PathOp::Close) => {
                self.ops.push(PathOp::Close);
                self.at = self.start;
            }
            _ => return None,
        }
        Some(())
    }

    fn line_to(&mut self, to: Point) {
        self.ops.push(PathOp::Line(to));
        self.at = to;
    }
}

/// An arc of at most half a circle as one or two curves. A radius too short for the two points is as long as it
/// must be, as SVG has it.
///
/// Only `+ - * /` and the square root are used, which are exact to the bit everywhere: an arc's handles follow
/// from its chord without sines.
fn arc(from: Point, to: Point, radius: f64, clockwise: bool) -> Vec<PathOp> {
    let (dx, dy) = (to.x.0 - from.x.0, to.y.0 - from.y.0);
    let half = (dx * dx + dy * dy).sqrt() / 2.0;
    if half == 0.0 {
        return Vec::new();
    }
    let radius = radius.max(half);
    // Of half the angle: its sine, its cosine, and the height of the arc over its chord.
    let sine = half / radius;
    let cosine = (1.0 - sine * sine).max(0.0).sqrt();
    let rise = radius * (1.0 - cosine);
    let side = if clockwise { 1.0 } else { -1.0 };
    // Along the chord, and square to it on the arc's side, each of length one.
    let (ux, uy) = (dx / (2.0 * half), dy / (2.0 * half));
    let (nx, ny) = (uy * side, -ux * side);
    if cosine < 0.5 {
        // More than 120 degrees: one curve would be seen to miss the circle.
        let top = Point { x: from.x + Pt(ux * half + nx * rise), y: from.y + Pt(uy * half + ny * rise) };
        let mut both = arc(from, top, radius, clockwise);
        both.extend(arc(top, to, radius, clockwise));
        return both;
    }
    // 4/3 tan(angle / 4) times the radius: a quarter of the angle's tangent is sine / (1 + cosine) of the half.
    let handle = radius * 4.0 / 3.0 * sine / (1.0 + cosine);
    let (along, out) = (handle * cosine, handle * sine);
    vec![PathOp::Curve(
        Point { x: from.x + Pt(ux * along + nx * out), y: from.y + Pt(uy * along + ny * out) },
        Point { x: to.x + Pt(nx * out - ux * along), y: to.y + Pt(ny * out - uy * along) },
        to,
    )]
}

#[cfg(test)]
mod tests;
