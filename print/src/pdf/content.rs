//! A page's drawing instructions.

use pdf_writer::{Content, Name, Str, TextStr};

use super::fonts::Embedded;
use super::{Origin, number};
use crate::display::{Colorant, Item, Page, Run, TextLine};
use crate::ink::Ink;
use crate::path::PathOp;
use crate::unit::Pt;

/// Names of the two graphics states.
pub(super) const PLAIN: Name<'static> = Name(b"Plain");
pub(super) const OVERPRINT: Name<'static> = Name(b"Over");

/// The name of a technical line's colour space in a page's resources.
pub(super) const fn space(colorant: Colorant) -> Name<'static> {
    match colorant {
        Colorant::Die => Name(b"Die"),
        Colorant::Registration => Name(b"Reg"),
    }
}

/// The state that lines and inks leave behind, so that nothing is said twice.
struct State {
    content: Content,
    ink: Option<Ink>,
    overprint: Option<bool>,
}

impl State {
    fn ink(&mut self, ink: Ink) {
        if self.ink != Some(ink) {
            let [c, m, y, k] = ink.cmyk.map(|part| f32::from(part) / 100.0);
            self.content.set_fill_cmyk(c, m, y, k);
            self.ink = Some(ink);
        }
    }

    fn overprint(&mut self, on: bool) {
        if self.overprint != Some(on) {
            self.content.set_parameters(if on { OVERPRINT } else { PLAIN });
            self.overprint = Some(on);
        }
    }
}

/// Writes a page's content stream, not yet deflated.
pub(super) fn page(page: &Page, fonts: &Embedded) -> Vec<u8> {
    let origin = Origin::of(page);
    let mut state = State { content: Content::new(), ink: None, overprint: None };
    for item in &page.items {
        match item {
            Item::Fill(fill) => {
                state.overprint(false);
                state.ink(fill.ink);
                outline(&mut state.content, &fill.path, &origin);
                state.content.fill_even_odd();
            }
            Item::Rule(rule) => {
                state.overprint(false);
                let [c, m, y, k] = rule.ink.cmyk.map(|part| f32::from(part) / 100.0);
                let content = &mut state.content;
                content.set_stroke_cmyk(c, m, y, k).set_line_width(number(rule.width));
                content.move_to(origin.x(rule.from.x), origin.y(rule.from.y));
                content.line_to(origin.x(rule.to.x), origin.y(rule.to.y)).stroke();
            }
            Item::Technical(line) => {
                state.overprint(true);
                let content = &mut state.content;
                content.set_stroke_color_space(space(line.colorant)).set_stroke_color([1.0]);
                content.set_line_width(number(line.width));
                outline(content, &line.path, &origin);
                content.stroke();
            }
            Item::Text(line) => {
                // Black text prints over what lies below it, so that plates out of register leave no white
                // edge. Only black: with overprint mode 1, white text would vanish.
                state.overprint(line.ink.is_black_only());
                state.ink(line.ink);
                text(&mut state.content, line, fonts, &origin);
            }
        }
    }
    state.content.finish().into_vec()
}

fn outline(content: &mut Content, path: &[PathOp], origin: &Origin) {
    for op in path {
        match *op {
            PathOp::Move(p) => content.move_to(origin.x(p.x), origin.y(p.y)),
            PathOp::Line(p) => content.line_to(origin.x(p.x), origin.y(p.y)),
            PathOp::Curve(a, b, c) => content.cubic_to(
                origin.x(a.x),
                origin.y(a.y),
                origin.x(b.x),
                origin.y(b.y),
                origin.x(c.x),
                origin.y(c.y),
            ),
            PathOp::Close => content.close_path(),
        };
    }
}

fn text(content: &mut Content, line: &TextLine, fonts: &Embedded, origin: &Origin) {
    // Where one character needs several glyphs, the line's own characters are stated beside it. One marked
    // content a line: nested ones cut poppler's structure text short.
    let split = line.runs.iter().flat_map(|run| &run.glyphs).any(|glyph| glyph.text.is_empty());
    if split {
        content
            .begin_marked_content_with_properties(Name(b"Span"))
            .properties()
            .actual_text(TextStr(&line.text));
    }
    content.begin_text();
    for run in &line.runs {
        show(content, run, line.turned, fonts, origin);
    }
    content.end_text();
    if split {
        content.end_marked_content();
    }
}

fn show(content: &mut Content, run: &Run, turned: bool, fonts: &Embedded, origin: &Origin) {
    let Some(font) = fonts.face(run.face) else { return };
    content.set_font(Name(font.resource.as_bytes()), number(run.size));
    let along = if turned { -1.0 } else { 1.0 };
    content.set_text_matrix([along, 0.0, 0.0, along, origin.x(run.origin.x), origin.y(run.origin.y)]);
    let mut rise = 0;
    let mut codes: Vec<u8> = Vec::new();
    let mut pieces: Vec<(Vec<u8>, f64)> = Vec::new();
    let flush = |content: &mut Content, pieces: &mut Vec<(Vec<u8>, f64)>, codes: &mut Vec<u8>| {
        if !codes.is_empty() {
            pieces.push((std::mem::take(codes), 0.0));
        }
        if pieces.is_empty() {
            return;
        }
        let mut positioned = content.show_positioned();
        let mut items = positioned.items();
        for (codes, adjust) in pieces.drain(..) {
            items.show(Str(&codes));
            if adjust != 0.0 {
                items.adjust(number(Pt(adjust)));
            }
        }
    };
    for glyph in &run.glyphs {
        if glyph.dy != rise {
            flush(content, &mut pieces, &mut codes);
            rise = glyph.dy;
            content.set_rise(number(run.size * (f64::from(rise) / font.units)));
        }
        let thousandths = |units: i32| f64::from(units) / font.units * 1000.0;
        // A positive number moves the pen back.
        let before = thousandths(-glyph.dx);
        if before != 0.0 {
            pieces.push((std::mem::take(&mut codes), before));
        }
        codes.extend(font.code(glyph, run.rtl).to_be_bytes());
        let after = font.width(glyph.id) - thousandths(glyph.advance - glyph.dx);
        if !(-0.0005..0.0005).contains(&after) {
            pieces.push((std::mem::take(&mut codes), after));
        }
    }
    flush(content, &mut pieces, &mut codes);
    if rise != 0 {
        content.set_rise(0.0);
    }
}
