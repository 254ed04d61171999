//! A page's drawing instructions, the same for every file but for inks, and for the marks of what is read aloud.

use pdf_writer::types::{ArtifactType, StructRole};
use pdf_writer::{Content, Name, Str, TextStr};

use super::fonts::{Embedded, closing_space, states_its_text};
use super::structure::Mark;
use super::{Origin, number};
use crate::display::{Colorant, Item, Page, Run, TextLine};
use crate::font::FontSet;
use crate::ink::Ink;
use crate::path::PathOp;
use crate::unit::{Point, Pt, Rect};

/// Names of the press file's two graphics states.
pub(super) const PLAIN: Name<'static> = Name(b"Plain");
pub(super) const OVERPRINT: Name<'static> = Name(b"Over");
/// Name of its ink that is on every plate.
pub(super) const EVERY_PLATE: Name<'static> = Name(b"Every");
/// Name of the die's own.
pub(super) const DIE: Name<'static> = Name(b"Die");

/// Which file is written.
#[derive(Clone, Copy)]
pub(super) enum Dress<'a> {
    /// Four inks, black text overprinting, marks on every plate.
    Press,
    /// sRGB, with each item marked.
    Web {
        /// How each item is marked.
        marks: &'a [Mark],
        /// For the space at a line's end.
        fonts: &'a FontSet,
    },
}

impl Dress<'_> {
    const fn press(self) -> bool {
        matches!(self, Self::Press)
    }
}

/// The name of a technical line's colour space in a page's resources.
const fn space(colorant: Colorant) -> Name<'static> {
    match colorant {
        Colorant::Die => DIE,
        Colorant::Registration => EVERY_PLATE,
    }
}

/// The state that lines and inks leave behind, so that nothing is said twice.
struct State<'a> {
    content: Content,
    dress: Dress<'a>,
    ink: Option<Ink>,
    overprint: Option<bool>,
    /// Whether the artifacts' marked content is open.
    artifact: bool,
}

impl State<'_> {
    fn ink(&mut self, ink: Ink) {
        if self.ink == Some(ink) {
            return;
        }
        if !self.dress.press() {
            let [r, g, b] = screen(ink);
            self.content.set_fill_rgb(r, g, b);
        } else if ink == Ink::REGISTRATION {
            self.content.set_fill_color_space(EVERY_PLATE).set_fill_color([1.0]);
        } else {
            let [c, m, y, k] = plates(ink);
            self.content.set_fill_cmyk(c, m, y, k);
        }
        self.ink = Some(ink);
    }

    fn stroke(&mut self, ink: Ink) {
        if !self.dress.press() {
            let [r, g, b] = screen(ink);
            self.content.set_stroke_rgb(r, g, b);
        } else if ink == Ink::REGISTRATION {
            self.content.set_stroke_color_space(EVERY_PLATE).set_stroke_color([1.0]);
        } else {
            let [c, m, y, k] = plates(ink);
            self.content.set_stroke_cmyk(c, m, y, k);
        }
    }

    fn overprint(&mut self, on: bool) {
        if self.dress.press() && self.overprint != Some(on) {
            self.content.set_parameters(if on { OVERPRINT } else { PLAIN });
            self.overprint = Some(on);
        }
    }

    /// Opens an item's mark; false when the item is not drawn.
    fn open(&mut self, mark: Option<Mark>, actual: Option<&str>) -> bool {
        if mark != Some(Mark::Artifact) && self.artifact {
            self.content.end_marked_content();
            self.artifact = false;
        }
        match mark {
            Some(Mark::Skip) => return false,
            Some(Mark::Artifact) if !self.artifact => {
                let mut artifact = self.content.begin_marked_content_with_properties(Name(b"Artifact"));
                artifact.properties().artifact().kind(ArtifactType::Layout);
                self.artifact = true;
            }
            Some(Mark::Artifact) => {}
            Some(Mark::Content(number, role)) => {
                // A figure's content and a line's have their element's name; a list's words are a list body's.
                let name = if role == StructRole::LBody { Name(b"LBody") } else { role.to_name() };
                let mut content = self.content.begin_marked_content_with_properties(name);
                let mut properties = content.properties();
                properties.identify(number);
                if let Some(text) = actual {
                    properties.actual_text(TextStr(text));
                }
            }
            None => {
                if let Some(text) = actual {
                    self.content
                        .begin_marked_content_with_properties(Name(b"Span"))
                        .properties()
                        .actual_text(TextStr(text));
                }
            }
        }
        true
    }

    /// Closes an item's mark; artifacts that follow each other share one.
    fn close(&mut self, mark: Option<Mark>, actual: bool) {
        let open = match mark {
            Some(Mark::Content(..)) => true,
            Some(Mark::Skip | Mark::Artifact) => false,
            None => actual,
        };
        if open {
            self.content.end_marked_content();
        }
    }
}

fn plates(ink: Ink) -> [f32; 4] {
    ink.cmyk.map(|part| f32::from(part) / 100.0)
}

fn screen(ink: Ink) -> [f32; 3] {
    // To the thousandth: finer than a 255th.
    ink.screen.map(|part| number(Pt(f64::from(part) / 255.0)))
}

/// Writes a page's content stream, not yet deflated.
pub(super) fn page(page: &Page, fonts: &Embedded, origin: &Origin, dress: Dress<'_>) -> Vec<u8> {
    let mut state = State { content: Content::new(), dress, ink: None, overprint: None, artifact: false };
    for (index, item) in page.items.iter().enumerate() {
        let mark = match dress {
            Dress::Press => None,
            Dress::Web { marks, .. } => Some(marks.get(index).copied().unwrap_or(Mark::Artifact)),
        };
        let actual = match item {
            Item::Text(line) => stated(line, dress),
            Item::Fill(_) | Item::Rule(_) | Item::Technical(_) => None,
        };
        if !state.open(mark, actual.as_deref()) {
            continue;
        }
        match item {
            Item::Fill(fill) => {
                state.overprint(false);
                state.ink(fill.ink);
                outline(&mut state.content, &fill.path, origin);
                state.content.fill_even_odd();
            }
            Item::Rule(rule) => {
                state.overprint(false);
                state.stroke(rule.ink);
                let content = &mut state.content;
                content.set_line_width(number(rule.width));
                content.move_to(origin.x(rule.from.x), origin.y(rule.from.y));
                content.line_to(origin.x(rule.to.x), origin.y(rule.to.y)).stroke();
            }
            Item::Technical(line) => {
                state.overprint(true);
                let content = &mut state.content;
                content.set_stroke_color_space(space(line.colorant)).set_stroke_color([1.0]);
                content.set_line_width(number(line.width));
                outline(content, &line.path, origin);
                content.stroke();
            }
            Item::Text(line) => {
                // Black text prints over what lies below it, so that plates out of register leave no white
                // edge. Only black: with overprint mode 1, white text would vanish.
                state.overprint(line.ink.is_black_only());
                state.ink(line.ink);
                text(&mut state.content, line, fonts, origin, dress);
            }
        }
        state.close(mark, actual.is_some());
    }
    if state.artifact {
        state.content.end_marked_content();
    }
    state.content.finish().into_vec()
}

/// The characters a line states beside its glyphs, where glyphs alone would not say them. One marked content a line:
/// nested ones cut poppler's structure text short.
fn stated(line: &TextLine, dress: Dress<'_>) -> Option<String> {
    match dress {
        Dress::Press => states_its_text(line, false).then(|| line.text.clone()),
        Dress::Web { .. } => states_its_text(line, true).then(|| format!("{}{}", line.text, line.gap)),
    }
}

fn outline(content: &mut Content, path: &[PathOp], origin: &Origin) {
    let mut rest = path;
    while let Some((op, after)) = rest.split_first() {
        // A rectangle has an operator of its own: a code is made of hundreds.
        if let Some((area, after)) = rectangle(rest) {
            let (left, top) = origin.point(Point { x: area.x, y: area.y });
            let (right, bottom) = origin.point(Point { x: area.right(), y: area.bottom() });
            let across = |from: f32, to: f32| number(Pt(f64::from(to) - f64::from(from)));
            content.rect(left, bottom, across(left, right), across(bottom, top));
            rest = after;
            continue;
        }
        rest = after;
        let at = |p: Point| origin.point(p);
        match *op {
            PathOp::Move(p) => {
                let (x, y) = at(p);
                content.move_to(x, y)
            }
            PathOp::Line(p) => {
                let (x, y) = at(p);
                content.line_to(x, y)
            }
            PathOp::Curve(a, b, c) => {
                let ((ax, ay), (bx, by), (cx, cy)) = (at(a), at(b), at(c));
                content.cubic_to(ax, ay, bx, by, cx, cy)
            }
            PathOp::Close => content.close_path(),
        };
    }
}

/// An upright rectangle at the start of an outline, and what follows it.
fn rectangle(path: &[PathOp]) -> Option<(Rect, &[PathOp])> {
    let (&[PathOp::Move(a), PathOp::Line(b), PathOp::Line(c), PathOp::Line(d), PathOp::Close], rest) =
        path.split_first_chunk()?
    else {
        return None;
    };
    let upright = a.y == b.y && b.x == c.x && c.y == d.y && d.x == a.x && a.x < b.x && b.y < c.y;
    upright.then(|| (Rect::new(a.x, a.y, b.x - a.x, c.y - b.y), rest))
}

fn text(content: &mut Content, line: &TextLine, fonts: &Embedded, origin: &Origin, dress: Dress<'_>) {
    content.begin_text();
    for run in &line.runs {
        show(content, run, line.turned, fonts, origin);
    }
    // Lines of one text are joined by the space that the break took, so that who listens hears two words.
    if let Dress::Web { fonts: set, .. } = dress
        && let Some((face, space)) = closing_space(line, set)
        && let Some(last) = line.runs.last()
        && let Some(font) = fonts.face(face)
    {
        let advance: f64 = last.glyphs.iter().map(|glyph| f64::from(glyph.advance)).sum();
        let along = if line.turned { -1.0 } else { 1.0 };
        let x = last.origin.x + last.size * (along * advance / font.units);
        let run = Run {
            face,
            size: last.size,
            rtl: false,
            origin: Point { x, y: last.origin.y },
            glyphs: vec![space],
        };
        show(content, &run, line.turned, fonts, origin);
    }
    content.end_text();
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
