//! The preview: a page of the display list as SVG, with the same outlines at the same places.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use crate::display::{Colorant, DisplayList, Item};
use crate::finding::{PreflightItem, Severity};
use crate::font::FontSet;
use crate::ink::Ink;
use crate::path::PathOp;
use crate::unit::{Pt, Rect};

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
    let mut glyphs: BTreeMap<(usize, u16), String> = BTreeMap::new();
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
                    let scale = run.size.0 / face.units;
                    let mut x = run.origin.x.0;
                    for glyph in &run.glyphs {
                        let shape = glyphs.entry((run.face, glyph.id)).or_insert_with(|| {
                            // Thousandths of an em, y downwards.
                            data(&face.outline(glyph.id), 1000.0 / face.units, -1000.0 / face.units)
                        });
                        if !shape.is_empty() {
                            let _ = writeln!(
                                body,
                                r##"<use href="#{}-{}-{}" transform="translate({} {}) scale({:.5})"/>"##,
                                page.name,
                                run.face,
                                glyph.id,
                                number(x + along * f64::from(glyph.dx) * scale),
                                number(run.origin.y.0 - along * f64::from(glyph.dy) * scale),
                                along * run.size.0 / 1000.0
                            );
                        }
                        x += along * f64::from(glyph.advance) * scale;
                    }
                }
                body.push_str("</g>\n");
            }
        }
    }
    Some(document(page, view, area, &glyphs, &body))
}

fn document(
    page: &crate::display::Page,
    view: Rect,
    area: PreviewArea,
    glyphs: &BTreeMap<(usize, u16), String>,
    body: &str,
) -> String {
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
    for ((face, glyph), shape) in glyphs {
        if !shape.is_empty() {
            let _ = writeln!(out, r#"<path id="{}-{face}-{glyph}" d="{shape}"/>"#, page.name);
        }
    }
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
