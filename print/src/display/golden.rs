//! The display list's text form.

use std::fmt::Write as _;

use super::{DisplayList, Item, Page};
use crate::ink::Ink;
use crate::path::{PathOp, bounds};
use crate::unit::{Pt, Rect};

fn length(value: Pt) -> String {
    // Minus nothing is nothing.
    let text = format!("{:.2}", value.0);
    if text == "-0.00" { "0.00".to_owned() } else { text }
}

fn rect(r: &Rect) -> String {
    format!("{} {} {}x{}", length(r.x), length(r.y), length(r.width), length(r.height))
}

fn ink(ink: Ink) -> String {
    let [c, m, y, k] = ink.cmyk;
    format!("c{c} m{m} y{y} k{k}")
}

/// A short sum of an outline's points, so that two outlines with one frame still differ in the text.
fn outline_sum(path: &[PathOp]) -> String {
    let mut sum = 0.0_f64;
    let mut weight = 1.0_f64;
    for op in path {
        let points = match *op {
            PathOp::Move(p) | PathOp::Line(p) => vec![p],
            PathOp::Curve(a, b, c) => vec![a, b, c],
            PathOp::Close => Vec::new(),
        };
        for p in points {
            sum += (p.x.0 + 2.0 * p.y.0) * weight;
            weight = if weight > 6.0 { 1.0 } else { weight + 1.0 };
        }
    }
    format!("{} steps, sum {sum:.1}", path.len())
}

pub(super) fn write(list: &DisplayList) -> String {
    let mut out = String::new();
    for (index, name) in list.faces.iter().enumerate() {
        let _ = writeln!(out, "face {index} {name}");
    }
    for page in &list.pages {
        write_page(&mut out, page);
    }
    out
}

fn write_page(out: &mut String, page: &Page) {
    let g = &page.geometry;
    let _ = writeln!(out, "\npage {}", page.name);
    let _ = writeln!(out, "  trim {}", rect(&g.trim()));
    let _ = writeln!(out, "  bleed {}", rect(&g.bleed_box()));
    let _ = writeln!(out, "  media {}", rect(&g.media_box()));
    let _ = writeln!(out, "  safe {}", rect(&g.safe_area()));
    for item in &page.items {
        match item {
            Item::Fill(fill) => {
                let frame = bounds(&fill.path).map_or_else(|| "nothing".to_owned(), |b| rect(&b));
                let sum = outline_sum(&fill.path);
                let _ = writeln!(out, "  fill {} [{}] {} ({sum})", fill.what, frame, ink(fill.ink));
                if let Some(alt) = &fill.alt {
                    let _ = writeln!(out, "    shows {} {:?}", alt.lang, alt.text);
                }
            }
            Item::Rule(rule) => {
                let _ = writeln!(
                    out,
                    "  rule {} {} {} to {} {} width {} {}",
                    rule.what,
                    length(rule.from.x),
                    length(rule.from.y),
                    length(rule.to.x),
                    length(rule.to.y),
                    length(rule.width),
                    ink(rule.ink)
                );
            }
            Item::Technical(line) => {
                let frame = bounds(&line.path).map_or_else(|| "nothing".to_owned(), |b| rect(&b));
                let sum = outline_sum(&line.path);
                let _ = writeln!(
                    out,
                    "  technical {} [{}] {:?} width {} ({sum})",
                    line.what,
                    frame,
                    line.colorant,
                    length(line.width)
                );
            }
            Item::Text(line) => {
                let _ = writeln!(
                    out,
                    "  text {:?} {} {:?}{} {} [{}] {}{}",
                    line.role,
                    line.place,
                    line.text,
                    if line.gap.is_empty() { "" } else { " +" },
                    if line.lang.is_empty() { "-" } else { &line.lang },
                    rect(&line.rect),
                    ink(line.ink),
                    if line.turned { " turned" } else { "" }
                );
                for run in &line.runs {
                    let glyphs: Vec<String> = run.glyphs.iter().map(|g| g.id.to_string()).collect();
                    let _ = writeln!(
                        out,
                        "    face {} {} at {} {}: {}",
                        run.face,
                        length(run.size),
                        length(run.origin.x),
                        length(run.origin.y),
                        glyphs.join(" ")
                    );
                }
            }
        }
    }
}
