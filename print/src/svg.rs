//! The preview: a page of the display list as SVG, with the same outlines at the same places.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use crate::display::{Colorant, DisplayList, Item, Run};
use crate::finding::{PreflightItem, Severity};
use crate::font::{Face, FontSet};
use crate::ink::Ink;
use crate::path::PathOp;
use crate::unit::{Point, Pt, Rect};

/// How much of a page the preview shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PreviewArea {
    /// The finished sheet, with its corners as they are cut.
    Trim,
    /// Everything, with bleed, marks and slug.
    Media,
}

/// A number of at most two places.
fn number(value: f64) -> String {
    let text = format!("{value:.2}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

fn colour(ink: Ink) -> String {
    let [r, g, b] = ink.screen;
    format!("#{r:02x}{g:02x}{b:02x}")
}

/// An outline as path data, scaled by `(sx, sy)` from its own units.
fn data(path: &[PathOp], sx: f64, sy: f64) -> String {
    let mut out = String::new();
    let point = |x: Pt, y: Pt| format!("{} {}", number(x.0 * sx), number(y.0 * sy));
    for op in path {
        match *op {
            PathOp::Move(p) => out.push_str(&format!("M{}", point(p.x, p.y))),
            PathOp::Line(p) => out.push_str(&format!("L{}", point(p.x, p.y))),
            PathOp::Curve(a, b, c) => {
                out.push_str(&format!("C{} {} {}", point(a.x, a.y), point(b.x, b.y), point(c.x, c.y)));
            }
            PathOp::Close => out.push('Z'),
        }
    }
    out
}

/// The colours of marked findings: what stops the file, and what a person should look at. They stand on every ink of the
/// sheets, with a pale line beside them.
const ERROR: &str = "#c4001d";
const WARNING: &str = "#8a3ffc";
const BESIDE: &str = "#ffffff";

/// Draws a page as SVG with the places of findings marked: each a box with the finding's number, counted from 1 in the
/// order given. What was found right is not marked.
pub fn svg_with_findings(
    list: &DisplayList,
    fonts: &FontSet,
    page: usize,
    area: PreviewArea,
    findings: &[PreflightItem],
) -> Option<String> {
    let mut drawing = svg(list, fonts, page, area)?;
    let mut boxes = String::new();
    for (item, number) in findings.iter().zip(1_usize..) {
        let Some(place) = item.place.filter(|place| place.page == page) else { continue };
        let colour = match item.severity {
            Severity::Error => ERROR,
            Severity::Warning => WARNING,
            Severity::Pass => continue,
        };
        mark(&mut boxes, place.rect.grown(Pt(1.5)), number, colour, fonts);
    }
    let end = drawing.rfind("</svg>")?;
    drawing.insert_str(end, &boxes);
    Some(drawing)
}

/// A box around a place, and at its upper left corner its number on a tag.
fn mark(out: &mut String, area: Rect, index: usize, colour: &str, fonts: &FontSet) {
    const SIZE: f64 = 8.0;
    let (x, y, width, height) =
        (number(area.x.0), number(area.y.0), number(area.width.0), number(area.height.0));
    for (stroke, thick) in [(BESIDE, "2.6"), (colour, "1.4")] {
        let _ = writeln!(
            out,
            r#"<rect class="finding" x="{x}" y="{y}" width="{width}" height="{height}" fill="none" stroke="{stroke}" stroke-width="{thick}"/>"#
        );
    }
    let Some(face) = fonts.get(0) else { return };
    let scale = SIZE / face.units;
    let glyphs: Vec<u16> = index.to_string().chars().filter_map(|digit| face.glyph(digit)).collect();
    let wide: f64 = glyphs.iter().map(|&glyph| face.advance(glyph) * scale).sum();
    // Beside the box, so that it hides nothing of what it marks; over its corner at the sheet's edge.
    let (left, top) = ((area.x.0 - wide - 3.5).max(0.0), area.y.0 - 1.0);
    let _ = writeln!(
        out,
        r#"<rect x="{}" y="{}" width="{}" height="{}" fill="{colour}"/>"#,
        number(left),
        number(top),
        number(wide + 3.0),
        number(SIZE + 1.0)
    );
    let mut pen = left + 1.5;
    for glyph in glyphs {
        let _ = writeln!(
            out,
            r#"<path fill="{BESIDE}" transform="translate({} {})" d="{}"/>"#,
            number(pen),
            number(top + SIZE * 0.88),
            data(&face.outline(glyph), scale, -scale)
        );
        pen += face.advance(glyph) * scale;
    }
}

/// How finely glyphs are drawn: thousandths of an em, in whole numbers.
const EM: f64 = 1000.0;

/// A glyph's shape wherever it stands: where its first outline starts, and all that follows from there.
#[derive(Default)]
struct Shape {
    start: (i64, i64),
    rest: String,
}

impl Shape {
    fn of(face: &Face, glyph: u16) -> Option<Self> {
        let scale = EM / face.units;
        let place = |p: Point| (whole(p.x.0 * scale), whole(-p.y.0 * scale));
        let path = face.outline(glyph);
        let mut shape = Self::default();
        // Where the pen stands, to the bit and as written, and where it set down last.
        let (mut exact, mut pen, mut begun) = (Point::default(), (0, 0), (0, 0));
        for (index, op) in path.iter().enumerate() {
            let (letter, points) = match *op {
                PathOp::Move(p) if index == 0 => {
                    (exact, pen, begun) = (p, place(p), place(p));
                    shape.start = pen;
                    continue;
                }
                PathOp::Move(p) => ('m', vec![p]),
                PathOp::Line(p) => ('l', vec![p]),
                PathOp::Curve(a, b, c) => match one_handle(exact, a, b, c) {
                    Some(handle) => ('q', vec![handle, c]),
                    None => ('c', vec![a, b, c]),
                },
                PathOp::Close => ('z', Vec::new()),
            };
            shape.rest.push(letter);
            for (x, y) in points.iter().copied().map(place) {
                step(&mut shape.rest, x - pen.0);
                step(&mut shape.rest, y - pen.1);
            }
            match points.last() {
                Some(&last) => (exact, pen) = (last, place(last)),
                None => pen = begun,
            }
            if letter == 'm' {
                begun = pen;
            }
        }
        (!path.is_empty()).then_some(shape)
    }
}

/// The handle of a quadratic curve that is written as a cubic one, as those of TrueType faces are.
fn one_handle(from: Point, a: Point, b: Point, to: Point) -> Option<Point> {
    let handle = |end: Pt, near: Pt| (near * 3.0 - end) / 2.0;
    let (first, second) = (
        Point { x: handle(from.x, a.x), y: handle(from.y, a.y) },
        Point { x: handle(to.x, b.x), y: handle(to.y, b.y) },
    );
    let close = |one: Pt, other: Pt| (one - other).0.abs() < 0.01;
    (close(first.x, second.x) && close(first.y, second.y)).then_some(first)
}

/// The nearest whole number; those of a glyph are far below 2^53.
fn whole(value: f64) -> i64 {
    #[expect(clippy::cast_possible_truncation, reason = "it is whole already, and small")]
    let whole = value.round() as i64;
    whole
}

/// A number of a path, kept apart from the one before it; a minus does that by itself.
fn step(out: &mut String, by: i64) {
    let apart = by >= 0 && out.ends_with(|c: char| c.is_ascii_digit());
    let _ = write!(out, "{}{by}", if apart { " " } else { "" });
}

/// The glyphs of a run as one outline, from the run's origin. One element for each glyph would hold browsers up: a
/// preview has thousands. Each glyph starts with a capital letter, everything else is small.
fn written(run: &Run, face: &Face, shapes: &mut BTreeMap<(usize, u16), Option<Shape>>) -> String {
    let mut out = String::new();
    let scale = EM / face.units;
    let mut pen = 0.0;
    for glyph in &run.glyphs {
        let shape = shapes.entry((run.face, glyph.id)).or_insert_with(|| Shape::of(face, glyph.id));
        if let Some(shape) = shape {
            out.push('M');
            step(&mut out, shape.start.0 + whole((pen + f64::from(glyph.dx)) * scale));
            step(&mut out, shape.start.1 - whole(f64::from(glyph.dy) * scale));
            out.push_str(&shape.rest);
        }
        pen += f64::from(glyph.advance);
    }
    out
}

/// Draws a page as SVG; nothing if there is no such page.
///
/// Texts become outlines, so the browser's fonts play no part. Ids are prefixed with the page's name: two pages can
/// stand in one document.
pub fn svg(list: &DisplayList, fonts: &FontSet, page: usize, area: PreviewArea) -> Option<String> {
    let page = list.pages.get(page)?;
    let view = match area {
        PreviewArea::Trim => page.geometry.trim(),
        PreviewArea::Media => page.geometry.media_box(),
    };
    let mut body = String::new();
    let mut shapes = BTreeMap::new();
    for item in &page.items {
        match item {
            Item::Fill(fill) => {
                let _ = writeln!(
                    body,
                    r#"<path fill="{}" fill-rule="evenodd" d="{}"/>"#,
                    colour(fill.ink),
                    data(&fill.path, 1.0, 1.0)
                );
            }
            Item::Rule(rule) => {
                let _ = writeln!(
                    body,
                    r#"<path stroke="{}" stroke-width="{}" d="M{} {}L{} {}"/>"#,
                    colour(rule.ink),
                    number(rule.width.0),
                    number(rule.from.x.0),
                    number(rule.from.y.0),
                    number(rule.to.x.0),
                    number(rule.to.y.0)
                );
            }
            Item::Technical(line) => {
                let stroke = match line.colorant {
                    Colorant::Die => "#e6007e",
                    Colorant::Registration => "#000000",
                };
                let _ = writeln!(
                    body,
                    r#"<path fill="none" stroke="{stroke}" stroke-width="{}" d="{}"/>"#,
                    number(line.width.0),
                    data(&line.path, 1.0, 1.0)
                );
            }
            Item::Text(line) => {
                let _ = writeln!(body, r#"<g fill="{}">"#, colour(line.ink));
                // A turned line's pen moves to the left, and its glyphs stand on their heads.
                let along = if line.turned { -1.0 } else { 1.0 };
                for run in &line.runs {
                    let Some(face) = fonts.get(run.face) else { continue };
                    let _ = writeln!(
                        body,
                        r#"<path transform="translate({} {}) scale({:.5})" d="{}"/>"#,
                        number(run.origin.x.0),
                        number(run.origin.y.0),
                        along * run.size.0 / EM,
                        written(run, face, &mut shapes)
                    );
                }
                body.push_str("</g>\n");
            }
        }
    }
    Some(document(page, view, area, &body))
}

fn document(page: &crate::display::Page, view: Rect, area: PreviewArea, body: &str) -> String {
    let mut out = String::new();
    let _ = writeln!(
        out,
        r#"<svg xmlns="http://www.w3.org/2000/svg" viewBox="{} {} {} {}">"#,
        number(view.x.0),
        number(view.y.0),
        number(view.width.0),
        number(view.height.0)
    );
    let corner = match area {
        PreviewArea::Trim => page.geometry.corner.pt(),
        PreviewArea::Media => Pt::ZERO,
    };
    let sheet = crate::path::rounded(view, corner);
    let sheet = data(&sheet, 1.0, 1.0);
    let _ = writeln!(out, r#"<defs><clipPath id="{}-sheet"><path d="{sheet}"/></clipPath>"#, page.name);
    let _ = writeln!(
        out,
        r#"</defs><g clip-path="url(#{}-sheet)"><path fill="{}" d="{sheet}"/>"#,
        page.name,
        colour(Ink::PAPER)
    );
    out.push_str(body);
    out.push_str("</g></svg>\n");
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::font::fonts_on_disk;

    /// Reads a written shape back: the ends of its lines and curves, in the units it is written in.
    fn ends(shape: &Shape) -> Vec<(i64, i64)> {
        let mut pen = shape.start;
        let (mut begun, mut ends) = (pen, vec![pen]);
        let letters: Vec<(usize, char)> =
            shape.rest.char_indices().filter(|(_, c)| c.is_ascii_lowercase()).collect();
        for (place, &(at, letter)) in letters.iter().enumerate() {
            let end = letters.get(place + 1).map_or(shape.rest.len(), |(at, _)| *at);
            let steps = shape.rest[at + 1..end].replace('-', " -");
            let steps: Vec<i64> =
                steps.split_whitespace().map(|step| step.parse().expect("a whole number")).collect();
            match (letter, steps.as_slice()) {
                ('z', []) => pen = begun,
                ('m' | 'l', [x, y]) | ('q', [_, _, x, y]) | ('c', [_, _, _, _, x, y]) => {
                    pen = (pen.0 + x, pen.1 + y);
                    ends.push(pen);
                }
                other => panic!("{other:?} is no step of a path"),
            }
            if letter == 'm' {
                begun = pen;
            }
        }
        ends
    }

    #[test]
    fn shapes_are_those_of_the_faces_to_half_a_thousandth_of_an_em() {
        for face in fonts_on_disk().faces() {
            let mut drawn = 0;
            for glyph in 1..200 {
                let Some(shape) = Shape::of(face, glyph) else { continue };
                drawn += 1;
                let outline: Vec<(f64, f64)> = (face.outline(glyph).iter())
                    .filter_map(|op| match *op {
                        PathOp::Move(p) | PathOp::Line(p) | PathOp::Curve(_, _, p) => Some((p.x.0, -p.y.0)),
                        PathOp::Close => None,
                    })
                    .collect();
                let found = ends(&shape);
                assert_eq!(found.len(), outline.len(), "glyph {glyph} of {}", face.name());
                for ((x, y), (u, v)) in found.iter().zip(outline) {
                    let off = |whole: i64, exact: f64| (whole as f64 - exact * EM / face.units).abs();
                    let far = off(*x, u).max(off(*y, v));
                    assert!(far <= 0.5 + 1e-9, "glyph {glyph} of {}: {far}", face.name());
                }
            }
            assert!(drawn > 50, "{}: {drawn} shapes are too few to tell", face.name());
        }
    }

    #[test]
    fn a_curve_of_one_handle_is_told_from_one_of_two() {
        let at = |x: f64, y: f64| Point { x: Pt(x), y: Pt(y) };
        let (from, handle, to) = (at(0.0, 0.0), at(30.0, 60.0), at(90.0, 0.0));
        let toward = |end: Point| Point {
            x: end.x + (handle.x - end.x) * (2.0 / 3.0),
            y: end.y + (handle.y - end.y) * (2.0 / 3.0),
        };
        let found = one_handle(from, toward(from), toward(to), to).expect("one handle");
        assert!((found.x - handle.x).0.abs() < 1e-9 && (found.y - handle.y).0.abs() < 1e-9);
        assert_eq!(one_handle(from, at(10.0, 10.0), at(80.0, 30.0), to), None);
    }
}
