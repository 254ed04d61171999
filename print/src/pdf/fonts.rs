//! Fonts in the file: subset to the glyphs used, with a code for each pair of a glyph and its characters.

use std::borrow::Cow;
use std::collections::BTreeMap;
use std::sync::Arc;

use pdf_writer::types::{CidFontType, FontFlags, SystemInfo, UnicodeCmap};
use pdf_writer::{Filter, Finish, Name, Pdf, Rect, Ref, Str};
use sha2::{Digest, Sha256};
use subsetter::GlyphRemapper;

use super::{Objects, Packer, number};
use crate::display::{DisplayList, Glyph, Item, Run, TextLine};
use crate::font::{self, Face, FontSet, Outlines, Subset, Weight};
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
    outlines: Outlines,
    name: String,
    pub(super) units: f64,
    codes: Codes,
    remapper: GlyphRemapper,
    /// Advance of each glyph in thousandths of an em.
    widths: BTreeMap<u16, f64>,
    subset: Arc<Subset>,
    descriptor: Descriptor,
}

struct Descriptor {
    bbox: [f64; 4],
    ascent: f64,
    descent: f64,
    cap_height: f64,
    bold: bool,
}

/// Each glyph with each of its texts, in order; a pair's code is its place, counted from 1. 0 is the missing glyph.
struct Codes(Vec<(u16, String)>);

impl Codes {
    fn of(mut pairs: Vec<(u16, Cow<'_, str>)>) -> Self {
        pairs.sort_unstable();
        pairs.dedup();
        Self(pairs.into_iter().map(|(glyph, text)| (glyph, text.into_owned())).collect())
    }

    fn code(&self, glyph: u16, text: &str) -> u16 {
        let first = self.0.partition_point(|(own, _)| *own < glyph);
        let its = self.0.iter().skip(first).take_while(|(own, _)| *own == glyph);
        let place = its.zip(first + 1..).find(|((_, own), _)| own == text).map(|(_, place)| place);
        place.and_then(|place| u16::try_from(place).ok()).unwrap_or(0)
    }

    /// The pairs in the order of their codes.
    fn pairs(&self) -> impl Iterator<Item = (u16, &str)> {
        self.0.iter().map(|(glyph, text)| (*glyph, text.as_str()))
    }

    /// Every glyph, once, in order.
    fn glyphs(&self) -> Vec<u16> {
        let mut glyphs: Vec<u16> = self.0.iter().map(|(glyph, _)| *glyph).collect();
        glyphs.dedup();
        glyphs
    }
}

/// All faces used.
pub(super) struct Embedded(Vec<EmbeddedFace>);

/// The characters of a glyph in the order in which the file maps them.
fn mapped(glyph: &Glyph, rtl: bool) -> Cow<'_, str> {
    let one = glyph.text.chars().nth(1).is_none();
    if rtl && !one { glyph.text.chars().rev().collect() } else { Cow::Borrowed(&glyph.text) }
}

fn runs(list: &DisplayList) -> impl Iterator<Item = &Run> {
    list.pages.iter().flat_map(|page| &page.items).flat_map(|item| match item {
        Item::Text(line) => line.runs.as_slice(),
        Item::Fill(_) | Item::Rule(_) | Item::Technical(_) => &[],
    })
}

/// The space that stands at a line's end in a file whose text is read aloud: its face and glyph. Nothing where no space
/// follows. A line that states its characters states the space too; who goes by its glyphs all the same, as poppler's
/// structure text does, finds it there.
pub(super) fn closing_space(line: &TextLine, fonts: &FontSet) -> Option<(usize, Glyph)> {
    let run = line.runs.last().filter(|_| line.gap == " ")?;
    let face = fonts.get(run.face)?;
    let id = face.glyph(' ')?;
    #[expect(clippy::cast_possible_truncation, reason = "advances are stated in whole units")]
    let advance = face.advance(id) as i32;
    Some((run.face, Glyph { id, advance, dx: 0, dy: 0, text: " ".to_owned() }))
}

/// Whether a line states its characters beside its glyphs, because one character needs several glyphs. A right-to-left
/// line of a file that is read aloud has its characters in the structure instead: PDFium takes characters that content
/// states for glyphs from left to right, and would turn them round.
pub(super) fn states_its_text(line: &TextLine, in_structure: bool) -> bool {
    let split = line.runs.iter().any(|run| run.glyphs.iter().any(|glyph| glyph.text.is_empty()));
    split && !(in_structure && line.runs.iter().any(|run| run.rtl))
}

/// Subsets every face that the list uses; with `spaces`, with the spaces between lines too.
pub(super) fn embed(list: &DisplayList, fonts: &FontSet, objects: &mut Objects, spaces: bool) -> Embedded {
    let mut used: BTreeMap<usize, Vec<(u16, Cow<'_, str>)>> = BTreeMap::new();
    for run in runs(list) {
        let pairs = run.glyphs.iter().map(|glyph| (glyph.id, mapped(glyph, run.rtl)));
        used.entry(run.face).or_default().extend(pairs);
    }
    let lines = list.pages.iter().flat_map(|page| &page.items).filter_map(|item| match item {
        Item::Text(line) if spaces => Some(line),
        _ => None,
    });
    for (face, space) in lines.filter_map(|line| closing_space(line, fonts)) {
        used.entry(face).or_default().push((space.id, Cow::Owned(space.text)));
    }
    let mut embedded = Vec::new();
    for (index, pairs) in used {
        let Some(face) = fonts.get(index) else { continue };
        embedded.push(EmbeddedFace::new((index, embedded.len()), face, Codes::of(pairs), objects));
    }
    Embedded(embedded)
}

impl EmbeddedFace {
    /// `place` is the face's among those used, so that its name does not tell which others were there.
    fn new((index, place): (usize, usize), face: &Face, codes: Codes, objects: &mut Objects) -> Self {
        let glyphs = codes.glyphs();
        let remapper = GlyphRemapper::new_from_glyphs_sorted(&glyphs);
        let subset = face.subset(&glyphs, || {
            // The face has been read before, so it can be subset; a whole font would print as well.
            let program = subsetter::subset(&face.bytes, 0, &remapper).unwrap_or_else(|_| face.bytes.clone());
            let program = match face.outlines {
                Outlines::TrueType => program,
                Outlines::Cff => font::cff_table(&program).unwrap_or(program),
            };
            Subset { tag: tag(&program), deflated: Packer::hard().deflate(&program), program }
        });
        let advances = face.advances(glyphs.iter().copied());
        let widths = glyphs
            .iter()
            .zip(advances)
            .map(|(&glyph, advance)| (glyph, advance / face.units * 1000.0))
            .collect();
        let name = format!("{}+{}", subset.tag, face.name());
        let refs = [objects.next(), objects.next(), objects.next(), objects.next(), objects.next()];
        Self {
            face: index,
            resource: format!("F{place}"),
            reference: objects.next(),
            refs,
            outlines: face.outlines,
            name,
            units: face.units,
            codes,
            remapper,
            widths,
            subset,
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
        self.codes.code(glyph.id, &mapped(glyph, rtl))
    }

    pub(super) fn width(&self, glyph: u16) -> f64 {
        self.widths.get(&glyph).copied().unwrap_or(0.0)
    }

    fn write(&self, pdf: &mut Pdf, packer: &mut Packer) {
        let [descendant, descriptor, program, map, unicode] = self.refs;
        let name = Name(self.name.as_bytes());
        // Codes lead to glyphs by a table: of TrueType it belongs to the font, of CFF to the encoding, since there a
        // character's number is the glyph's (ISO 32000-1, 9.7.4.2).
        let mut composite = pdf.type0_font(self.reference);
        composite.base_font(name).descendant_font(descendant).to_unicode(unicode);
        match self.outlines {
            Outlines::TrueType => composite.encoding_predefined(Name(b"Identity-H")),
            Outlines::Cff => composite.encoding_cmap(map),
        };
        composite.finish();

        let mut font = pdf.cid_font(descendant);
        font.base_font(name).system_info(SYSTEM).font_descriptor(descriptor).default_width(0.0);
        let width = |glyph: u16| number(Pt(self.width(glyph)));
        match self.outlines {
            Outlines::TrueType => {
                font.subtype(CidFontType::Type2).cid_to_gid_map_stream(map);
                font.widths().consecutive(1, self.codes.pairs().map(|(glyph, _)| width(glyph)));
            }
            Outlines::Cff => {
                font.subtype(CidFontType::Type0);
                font.widths().consecutive(1, self.remapper.remapped_gids().skip(1).map(width));
            }
        }
        font.finish();

        let flags = FontFlags::NON_SYMBOLIC;
        let shape = &self.descriptor;
        let [left, bottom, right, top] = shape.bbox.map(|edge| number(Pt(edge)));
        let mut described = pdf.font_descriptor(descriptor);
        described
            .name(name)
            .flags(if shape.bold { flags | FontFlags::FORCE_BOLD } else { flags })
            .bbox(Rect::new(left, bottom, right, top))
            .italic_angle(0.0)
            .ascent(number(Pt(shape.ascent)))
            .descent(number(Pt(shape.descent)))
            .cap_height(number(Pt(shape.cap_height)))
            .stem_v(if shape.bold { 140.0 } else { 80.0 });
        match self.outlines {
            Outlines::TrueType => described.font_file2(program),
            Outlines::Cff => described.font_file3(program),
        };
        described.finish();

        let mut stream = pdf.stream(program, &self.subset.deflated);
        stream.filter(Filter::FlateDecode);
        match self.outlines {
            Outlines::TrueType => {
                stream.pair(Name(b"Length1"), i32::try_from(self.subset.program.len()).unwrap_or(0));
            }
            Outlines::Cff => {
                stream.pair(Name(b"Subtype"), Name(b"CIDFontType0C"));
            }
        }
        stream.finish();

        let mut cmap = UnicodeCmap::new(Name(b"Adobe-Identity-UCS"), SYSTEM);
        for (code, (_, text)) in (1_u16..).zip(self.codes.pairs()) {
            if text.is_empty() {
                // A further glyph of a character that an earlier one stands for: joins, and prints nothing.
                cmap.pair(code, '\u{200D}');
            } else {
                cmap.pair_with_multiple(code, text.chars());
            }
        }
        match self.outlines {
            Outlines::TrueType => {
                pdf.stream(map, &packer.deflate(&self.glyphs_by_code())).filter(Filter::FlateDecode);
            }
            Outlines::Cff => {
                let encoding = packer.deflate(&self.encoding());
                let mut stream = pdf.cmap(map, &encoding);
                stream.name(Name(self.encoding_name().as_bytes())).system_info(SYSTEM);
                // Horizontal, as the resource says too.
                stream.pair(Name(b"WMode"), 0);
                stream.filter(Filter::FlateDecode);
            }
        }
        pdf.stream(unicode, &packer.deflate(cmap.finish().as_slice())).filter(Filter::FlateDecode);
    }

    /// The subset's glyph of each pair, in the order of their codes.
    fn glyphs(&self) -> impl Iterator<Item = u16> {
        self.codes.pairs().map(|(glyph, _)| self.remapper.get(glyph).unwrap_or(0))
    }

    /// The table of a TrueType face: two bytes for each code from 0.
    fn glyphs_by_code(&self) -> Vec<u8> {
        std::iter::once(0).chain(self.glyphs()).flat_map(u16::to_be_bytes).collect()
    }

    /// A name of its own: readers may keep encodings by name.
    fn encoding_name(&self) -> String {
        format!("Lidleaf-{}", self.subset.tag)
    }

    /// The encoding of a CFF face, as a PostScript resource (Adobe Technical Note 5014, "CMap and CIDFont files").
    fn encoding(&self) -> Vec<u8> {
        let name = self.encoding_name();
        let mut text = format!(
            "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n\
             /CIDSystemInfo 3 dict dup begin /Registry (Adobe) def /Ordering (Identity) def /Supplement 0 def end def\n\
             /CMapName /{name} def\n/CMapType 1 def\n/WMode 0 def\n\
             1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n",
        );
        let pairs: Vec<(u16, u16)> = (1..).zip(self.glyphs()).collect();
        // A block holds a hundred at most.
        for block in pairs.chunks(100) {
            text.push_str(&format!("{} begincidchar\n", block.len()));
            for (code, glyph) in block {
                text.push_str(&format!("<{code:04X}> {glyph}\n"));
            }
            text.push_str("endcidchar\n");
        }
        text.push_str("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n");
        text.into_bytes()
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

    pub(super) fn write(&self, pdf: &mut Pdf, packer: &mut Packer) {
        for font in &self.0 {
            font.write(pdf, packer);
        }
    }

    /// Everything of the fonts that goes into the file.
    pub(super) fn digest(&self, hash: &mut Sha256) {
        for font in &self.0 {
            hash.update(&font.subset.program);
            for (code, (glyph, text)) in (1_u16..).zip(font.codes.pairs()) {
                hash.update(code.to_be_bytes());
                hash.update(glyph.to_be_bytes());
                hash.update(text.as_bytes());
                hash.update([0]);
            }
        }
    }
}
