//! Fonts in the file: subset to the glyphs used, with a code for each pair of a glyph and its characters.

use std::collections::BTreeMap;

use pdf_writer::types::{CidFontType, FontFlags, SystemInfo, UnicodeCmap};
use pdf_writer::{Filter, Finish, Name, Pdf, Rect, Ref, Str};
use sha2::{Digest, Sha256};
use subsetter::GlyphRemapper;

use super::{Objects, deflate, number};
use crate::display::{DisplayList, Glyph, Item, Run};
use crate::font::{Face, FontSet, Weight};
use crate::unit::Pt;

const SYSTEM: SystemInfo<'static> =
    SystemInfo { registry: Str(b"Adobe"), ordering: Str(b"Identity"), supplement: 0 };

/// A face as the file has it.
pub(super) struct EmbeddedFace {
    face: usize,
    /// Its name among a page's resources.
    pub(super) resource: String,
    pub(super) reference: Ref,
    refs: [Ref; 5],
    name: String,
    pub(super) units: f64,
    /// Code of each pair; codes start at 1, 0 is the missing glyph.
    codes: BTreeMap<(u16, String), u16>,
    remapper: GlyphRemapper,
    /// Advance of each glyph in thousandths of an em.
    widths: BTreeMap<u16, f64>,
    program: Vec<u8>,
    descriptor: Descriptor,
}

struct Descriptor {
    bbox: [f64; 4],
    ascent: f64,
    descent: f64,
    cap_height: f64,
    bold: bool,
}

/// All faces used.
pub(super) struct Embedded(Vec<EmbeddedFace>);

/// The characters of a glyph in the order in which the file maps them.
fn mapped(glyph: &Glyph, rtl: bool) -> String {
    if rtl { glyph.text.chars().rev().collect() } else { glyph.text.clone() }
}

fn runs(list: &DisplayList) -> impl Iterator<Item = &Run> {
    list.pages.iter().flat_map(|page| &page.items).flat_map(|item| match item {
        Item::Text(line) => line.runs.as_slice(),
        Item::Fill(_) | Item::Rule(_) | Item::Technical(_) => &[],
    })
}

/// Subsets every face that the list uses.
pub(super) fn embed(list: &DisplayList, fonts: &FontSet, objects: &mut Objects) -> Embedded {
    let mut used: BTreeMap<usize, BTreeMap<(u16, String), u16>> = BTreeMap::new();
    for run in runs(list) {
        let codes = used.entry(run.face).or_default();
        for glyph in &run.glyphs {
            codes.insert((glyph.id, mapped(glyph, run.rtl)), 0);
        }
    }
    let mut embedded = Vec::new();
    for (index, mut codes) in used {
        let Some(face) = fonts.get(index) else { continue };
        for (code, place) in (1..).zip(codes.values_mut()) {
            *place = code;
        }
        embedded.push(EmbeddedFace::new(index, face, codes, objects));
    }
    Embedded(embedded)
}

impl EmbeddedFace {
    fn new(index: usize, face: &Face, codes: BTreeMap<(u16, String), u16>, objects: &mut Objects) -> Self {
        let glyphs: Vec<u16> = codes.keys().map(|(glyph, _)| *glyph).collect();
        let remapper = GlyphRemapper::new_from_glyphs_sorted(&glyphs);
        // The face has been read before, so it can be subset; a whole font would print as well.
        let program = subsetter::subset(&face.bytes, 0, &remapper).unwrap_or_else(|_| face.bytes.clone());
        let widths = glyphs.iter().map(|&glyph| (glyph, face.advance(glyph) / face.units * 1000.0)).collect();
        let name = format!("{}+{}", tag(&program), face.name());
        let refs = [objects.next(), objects.next(), objects.next(), objects.next(), objects.next()];
        Self {
            face: index,
            resource: format!("F{index}"),
            reference: objects.next(),
            refs,
            name,
            units: face.units,
            codes,
            remapper,
            widths,
            program,
            descriptor: Descriptor {
                bbox: face.bbox.map(|edge| edge / face.units * 1000.0),
                ascent: face.ascent / face.units * 1000.0,
                descent: face.descent / face.units * 1000.0,
                cap_height: face.cap_height * 1000.0,
                bold: face.weight == Weight::Bold,
            },
        }
    }

    pub(super) fn code(&self, glyph: &Glyph, rtl: bool) -> u16 {
        self.codes.get(&(glyph.id, mapped(glyph, rtl))).copied().unwrap_or(0)
    }

    pub(super) fn width(&self, glyph: u16) -> f64 {
        self.widths.get(&glyph).copied().unwrap_or(0.0)
    }

    /// The pairs in the order of their codes.
    fn pairs(&self) -> Vec<(u16, u16, &str)> {
        let mut pairs: Vec<_> =
            self.codes.iter().map(|((glyph, text), code)| (*code, *glyph, text.as_str())).collect();
        pairs.sort_unstable();
        pairs
    }

    fn write(&self, pdf: &mut Pdf) {
        let [descendant, descriptor, program, map, unicode] = self.refs;
        let name = Name(self.name.as_bytes());
        pdf.type0_font(self.reference)
            .base_font(name)
            .encoding_predefined(Name(b"Identity-H"))
            .descendant_font(descendant)
            .to_unicode(unicode);

        let mut font = pdf.cid_font(descendant);
        font.subtype(CidFontType::Type2).base_font(name).system_info(SYSTEM).font_descriptor(descriptor);
        font.default_width(0.0).cid_to_gid_map_stream(map);
        font.widths()
            .consecutive(1, self.pairs().into_iter().map(|(_, glyph, _)| number(Pt(self.width(glyph)))));
        font.finish();

        let flags = FontFlags::NON_SYMBOLIC;
        let shape = &self.descriptor;
        let [left, bottom, right, top] = shape.bbox.map(|edge| number(Pt(edge)));
        pdf.font_descriptor(descriptor)
            .name(name)
            .flags(if shape.bold { flags | FontFlags::FORCE_BOLD } else { flags })
            .bbox(Rect::new(left, bottom, right, top))
            .italic_angle(0.0)
            .ascent(number(Pt(shape.ascent)))
            .descent(number(Pt(shape.descent)))
            .cap_height(number(Pt(shape.cap_height)))
            .stem_v(if shape.bold { 140.0 } else { 80.0 })
            .font_file2(program);

        let length = i32::try_from(self.program.len()).unwrap_or(0);
        pdf.stream(program, &deflate(&self.program))
            .filter(Filter::FlateDecode)
            .pair(Name(b"Length1"), length);
        let mut glyphs = vec![0, 0];
        let mut cmap = UnicodeCmap::new(Name(b"Adobe-Identity-UCS"), SYSTEM);
        for (code, glyph, text) in self.pairs() {
            glyphs.extend(self.remapper.get(glyph).unwrap_or(0).to_be_bytes());
            if text.is_empty() {
                // A further glyph of a character that an earlier one stands for: joins, and prints nothing.
                cmap.pair(code, '\u{200D}');
            } else {
                cmap.pair_with_multiple(code, text.chars());
            }
        }
        pdf.stream(map, &deflate(&glyphs)).filter(Filter::FlateDecode);
        pdf.stream(unicode, &deflate(cmap.finish().as_slice())).filter(Filter::FlateDecode);
    }
}

/// Six capitals that mark a subset, from its content.
fn tag(program: &[u8]) -> String {
    Sha256::digest(program).iter().take(6).map(|byte| char::from(b'A' + byte % 26)).collect()
}

impl Embedded {
    pub(super) fn fonts(&self) -> impl Iterator<Item = &EmbeddedFace> {
        self.0.iter()
    }

    pub(super) fn face(&self, index: usize) -> Option<&EmbeddedFace> {
        self.0.iter().find(|font| font.face == index)
    }

    pub(super) fn write(&self, pdf: &mut Pdf) {
        for font in &self.0 {
            font.write(pdf);
        }
    }

    /// Everything of the fonts that goes into the file.
    pub(super) fn digest(&self, hash: &mut Sha256) {
        for font in &self.0 {
            hash.update(&font.program);
            for (code, glyph, text) in font.pairs() {
                hash.update(code.to_be_bytes());
                hash.update(glyph.to_be_bytes());
                hash.update(text.as_bytes());
                hash.update([0]);
            }
        }
    }
}
