//! A face: its bytes, its measures, its glyphs' outlines.

use std::sync::{Arc, Mutex};

use harfrust::{Buffer, ShapePlan, ShapePlanKey};
use skrifa::instance::{LocationRef, Size};
use skrifa::metrics::GlyphMetrics;
use skrifa::outline::{DrawSettings, OutlinePen};
use skrifa::raw::TableProvider as _;
use skrifa::{FontRef, GlyphId, MetadataProvider as _, Tag};

use super::Script;
use crate::finding::{PreflightItem, PrintError};
use crate::path::PathOp;
use crate::text::Memory;
use crate::unit::{Point, Pt};

/// How heavy a face is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Weight {
    /// Running text.
    Regular,
    /// Titles, verdicts, hazards.
    Bold,
}

/// The faces of a job, in the order in which they are asked for a character.
#[derive(Clone, Default)]
pub struct FontSet {
    faces: Vec<Face>,
    /// The texts they have measured.
    memory: Memory,
}

impl std::fmt::Debug for FontSet {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_list().entries(self.faces.iter().map(Face::name)).finish()
    }
}

impl FontSet {
    /// A set without faces.
    pub const fn new() -> Self {
        Self { faces: Vec::new(), memory: Memory::new() }
    }

    /// Adds a face with TrueType or CFF outlines. Fails on a file that is no such font, or whose licence bits forbid embedding.
    pub fn add(&mut self, family: &str, weight: Weight, bytes: Vec<u8>) -> Result<(), PrintError> {
        self.faces.push(Face::read(family, weight, bytes)?);
        self.memory.forget();
        Ok(())
    }

    pub(crate) const fn memory(&self) -> &Memory {
        &self.memory
    }

    pub(crate) fn faces(&self) -> &[Face] {
        &self.faces
    }

    pub(crate) fn get(&self, index: usize) -> Option<&Face> {
        self.faces.get(index)
    }
}

/// How a face's outlines are kept, on which depends how a file embeds them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Outlines {
    /// Quadratic curves in `glyf`.
    TrueType,
    /// Cubic curves in `CFF`.
    Cff,
}

/// One face.
#[derive(Clone)]
pub(crate) struct Face {
    pub(crate) family: String,
    pub(crate) weight: Weight,
    pub(crate) bytes: Vec<u8>,
    pub(crate) outlines: Outlines,
    /// The scripts whose letters it has.
    scripts: Vec<Script>,
    /// Units to the em.
    pub(crate) units: f64,
    /// Height of capitals, in ems.
    pub(crate) cap_height: f64,
    /// How far the face reaches above and below the baseline, in units, as PDF's descriptor wants it.
    pub(crate) ascent: f64,
    pub(crate) descent: f64,
    pub(crate) bbox: [f64; 4],
    /// The characters it has glyphs for, in order: asked about for every character of every text, which is no
    /// time to open the file's tables.
    characters: Vec<char>,
    /// The same bytes as the shaper holds them, with its caches.
    pub(crate) font: harfrust::Font,
    /// How it shapes a script and language in a direction.
    plans: Remembered<Arc<ShapePlan>>,
    /// The subsets made last, by their glyphs: sheets that say the same in other editions use the same glyphs.
    subsets: Remembered<(Vec<u16>, Arc<Subset>)>,
}

/// A face's program cut down to some glyphs, as files embed it.
pub(crate) struct Subset {
    pub(crate) program: Vec<u8>,
    pub(crate) deflated: Vec<u8>,
    /// Tells it from other subsets of the face.
    pub(crate) tag: String,
}

/// How many subsets a face remembers: the kinds of sheets that a batch makes at a time.
const SUBSETS: usize = 32;

/// What was worked out before. It never changes what is made, only how soon, so a copy begins with nothing; a thread that
/// panicked while it held it spoils it and nothing else.
struct Remembered<T>(Mutex<Vec<T>>);

impl<T> Default for Remembered<T> {
    fn default() -> Self {
        Self(Mutex::default())
    }
}

impl<T> Clone for Remembered<T> {
    fn clone(&self) -> Self {
        Self::default()
    }
}

/// How far a face's glyphs reach.
pub(crate) struct Reaches<'a>(Option<GlyphMetrics<'a>>);

impl Reaches<'_> {
    /// How far a glyph's ink reaches above and below the baseline, in units; nothing for a blank one.
    pub(crate) fn of(&self, glyph: u16) -> Option<(f64, f64)> {
        let frame = self.0.as_ref()?.bounds(GlyphId::from(glyph))?;
        (frame.y_max > frame.y_min).then_some((f64::from(frame.y_max), f64::from(-frame.y_min)))
    }
}

impl Face {
    fn read(family: &str, weight: Weight, bytes: Vec<u8>) -> Result<Self, PrintError> {
        let broken = || {
            PrintError::from(
                PreflightItem::error(
                    "font-unreadable",
                    format!(
                        "the font file for “{family}” can't be read: it is not a whole OpenType font; \
                         fetch or build it again"
                    ),
                )
                .arg("family", family),
            )
        };
        let font = FontRef::new(&bytes).map_err(|_| broken())?;
        let metrics = font.metrics(Size::unscaled(), LocationRef::default());
        let head = font.head().map_err(|_| broken())?;
        let outlines = match (font.glyf(), font.cff()) {
            (Ok(_), _) => Outlines::TrueType,
            (Err(_), Ok(_)) => Outlines::Cff,
            // Outlines that vary, and pictures, can't be embedded.
            (Err(_), Err(_)) => return Err(broken()),
        };
        if metrics.units_per_em == 0 {
            return Err(broken());
        }
        // OS/2 fsType, bit 1 alone: restricted licence embedding (OpenType specification, OS/2 table).
        if font.os2().is_ok_and(|os2| os2.fs_type() & 0x000f == 0x0002) {
            return Err(PreflightItem::error(
                "font-not-embeddable",
                format!("the font “{family}” forbids embedding in files; choose another font"),
            )
            .arg("family", family)
            .into());
        }
        let units = f64::from(metrics.units_per_em);
        let bbox = [head.x_min(), head.y_min(), head.x_max(), head.y_max()].map(f64::from);
        let cap_height = metrics.cap_height.map_or(0.7, |height| f64::from(height) / units);
        let (ascent, descent) = (f64::from(metrics.ascent), f64::from(metrics.descent));
        let letters = font.charmap();
        let scripts =
            Script::ALL.into_iter().filter(|script| letters.map(script.sample()).is_some()).collect();
        let mapped = font.charmap().mappings().filter(|(_, glyph)| *glyph != GlyphId::NOTDEF);
        let mut characters: Vec<char> = mapped.filter_map(|(code, _)| char::from_u32(code)).collect();
        characters.sort_unstable();
        let shaper = harfrust::Font::new(bytes.clone(), 0).ok_or_else(broken)?;
        Ok(Self {
            family: family.to_owned(),
            weight,
            outlines,
            scripts,
            units,
            cap_height,
            ascent,
            descent,
            bbox,
            bytes,
            characters,
            font: shaper,
            plans: Remembered::default(),
            subsets: Remembered::default(),
        })
    }

    /// The name in goldens and in the file: family and weight.
    pub(crate) fn name(&self) -> String {
        let weight = match self.weight {
            Weight::Regular => "Regular",
            Weight::Bold => "Bold",
        };
        format!("{}-{weight}", self.family.replace(' ', ""))
    }

    /// The face's tables. `read` has opened the same bytes before, so this finds them too.
    fn tables(&self) -> Option<FontRef<'_>> {
        FontRef::new(&self.bytes).ok()
    }

    /// Whether the face has a script's letters.
    pub(crate) fn writes(&self, script: Script) -> bool {
        self.scripts.contains(&script)
    }

    /// Whether the face has a glyph for a character.
    pub(crate) fn has(&self, c: char) -> bool {
        self.characters.binary_search(&c).is_ok()
    }

    /// A character's glyph.
    pub(crate) fn glyph(&self, c: char) -> Option<u16> {
        let glyph = self.tables()?.charmap().map(c).filter(|glyph| *glyph != GlyphId::NOTDEF)?;
        u16::try_from(glyph.to_u32()).ok()
    }

    /// A glyph's advance, in units.
    pub(crate) fn advance(&self, glyph: u16) -> f64 {
        self.advances([glyph]).first().copied().unwrap_or(0.0)
    }

    /// The advances of some glyphs, in units.
    pub(crate) fn advances(&self, glyphs: impl IntoIterator<Item = u16>) -> Vec<f64> {
        let font = self.tables();
        let metrics = font.map(|font| font.glyph_metrics(Size::unscaled(), LocationRef::default()));
        let advance = |glyph| metrics.as_ref()?.advance_width(GlyphId::from(glyph)).map(f64::from);
        glyphs.into_iter().map(|glyph| advance(glyph).unwrap_or(0.0)).collect()
    }

    pub(crate) fn reaches(&self) -> Reaches<'_> {
        let font = self.tables();
        Reaches(font.map(|font| font.glyph_metrics(Size::unscaled(), LocationRef::default())))
    }

    /// The subset of some glyphs, from memory or made now.
    pub(crate) fn subset(&self, glyphs: &[u16], make: impl FnOnce() -> Subset) -> Arc<Subset> {
        let known = self.subsets.0.lock().ok();
        let known =
            known.and_then(|all| all.iter().find(|(own, _)| own == glyphs).map(|(_, it)| Arc::clone(it)));
        if let Some(known) = known {
            return known;
        }
        let made = Arc::new(make());
        if let Ok(mut all) = self.subsets.0.lock() {
            if all.len() >= SUBSETS {
                all.remove(0);
            }
            all.push((glyphs.to_vec(), Arc::clone(&made)));
        }
        made
    }

    /// How the face shapes what a buffer holds.
    pub(crate) fn plan(&self, buffer: &Buffer) -> Arc<ShapePlan> {
        let (script, direction) = (buffer.script(), buffer.direction());
        let key = ShapePlanKey::new(&self.font, script, direction).language(buffer.language());
        let known = self.plans.0.lock().ok();
        if let Some(plan) = known.as_ref().and_then(|all| all.iter().find(|plan| key.matches(plan))) {
            return Arc::clone(plan);
        }
        let plan = Arc::new(ShapePlan::new(&self.font, direction, script, buffer.language(), &[]));
        if let Some(mut known) = known {
            known.push(Arc::clone(&plan));
        }
        plan
    }

    /// A glyph's outline in the face's units, y upwards.
    pub(crate) fn outline(&self, glyph: u16) -> Vec<PathOp> {
        let mut pen = Pen(Vec::new());
        if let Some(font) = self.tables()
            && let Some(outline) = font.outline_glyphs().get(GlyphId::from(glyph))
        {
            let settings = DrawSettings::unhinted(Size::unscaled(), LocationRef::default());
            if outline.draw(settings, &mut pen).is_err() {
                pen.0.clear();
            }
        }
        pen.0
    }
}

/// The `CFF` table of an OpenType font, which is what a PDF embeds of one.
pub(crate) fn cff_table(font: &[u8]) -> Option<Vec<u8>> {
    let font = FontRef::new(font).ok()?;
    font.table_data(Tag::new(b"CFF ")).map(|table| table.as_bytes().to_vec())
}

/// Collects an outline; quadratic curves become the cubic ones that PDF and the display list know.
struct Pen(Vec<PathOp>);

fn at(x: f32, y: f32) -> Point {
    Point { x: Pt(f64::from(x)), y: Pt(f64::from(y)) }
}

impl Pen {
    fn last(&self) -> Point {
        match self.0.last() {
            Some(PathOp::Move(p) | PathOp::Line(p) | PathOp::Curve(_, _, p)) => *p,
            Some(PathOp::Close) | None => Point::default(),
        }
    }
}

impl OutlinePen for Pen {
    fn move_to(&mut self, x: f32, y: f32) {
        self.0.push(PathOp::Move(at(x, y)));
    }
    fn line_to(&mut self, x: f32, y: f32) {
        self.0.push(PathOp::Line(at(x, y)));
    }
    fn quad_to(&mut self, cx: f32, cy: f32, x: f32, y: f32) {
        let (from, handle, to) = (self.last(), at(cx, cy), at(x, y));
        // A quadratic curve's cubic handles lie two thirds of the way to its one handle.
        let toward = |end: Point| Point {
            x: end.x + (handle.x - end.x) * (2.0 / 3.0),
            y: end.y + (handle.y - end.y) * (2.0 / 3.0),
        };
        self.0.push(PathOp::Curve(toward(from), toward(to), to));
    }
    fn curve_to(&mut self, ax: f32, ay: f32, bx: f32, by: f32, x: f32, y: f32) {
        self.0.push(PathOp::Curve(at(ax, ay), at(bx, by), at(x, y)));
    }
    fn close(&mut self) {
        self.0.push(PathOp::Close);
    }
}
