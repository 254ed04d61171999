//! The files: PDF/X-4 for the press here, PDF/UA for the web in [`web`], both from the display list. Nothing else in
//! the crate knows how a PDF is written.
//!
//! Written with `pdf-writer` and `subsetter`. `printpdf` 0.12.8, tried first, was set aside because every program
//! that links it carries its bundled FOGRA39 profile, which may not be redistributed freely: the profile's bytes
//! are found in a release build (LTO, `default-features = false`) whatever conformance is asked for, and no feature
//! turns it off. Its output also depended on a process-wide counter and on the pointer's width, and it needed a
//! second library to finish the file (boxes, output intent, metadata); its worker was 0.93 MB with brotli
//! against 0.08 MB.
//!
//! Text is drawn in visual order, and the characters of a right-to-left ligature are mapped reversed: readers
//! that order right-to-left text by themselves, as browsers' own viewers (PDFium) and poppler do, then extract Arabic
//! right, and a press file is looked at in those. Tried on the sheets of the tests: PDFium gives every Arabic line
//! that stands alone on its baseline exactly; of headings in several languages side by side it gives every word right,
//! but orders the words of the whole row as one line. Poppler gives every word right, and with `-layout` every line.
//! Readers that take glyphs in file order show Arabic reversed.
//! The web file draws the same glyphs, so PDFium and poppler read it as they read the press file. Each right-to-left text's
//! characters are stated in its structure, exactly and in reading order, for readers that go by the structure, as screen
//! readers do. Tried as well: stating them in the content turns them round in PDFium, and poppler's structure text passes
//! over both and shows the glyphs' order; drawing in logical order pleases it and turns every Arabic word round in PDFium.
//! Each pair of a glyph and its characters has a code of its own, so that one glyph can stand for several
//! characters in different words.

mod content;
mod fonts;
mod metadata;
mod packed;
mod profile;
mod srgb;
mod structure;
mod web;

pub(crate) use profile::Profile;
pub(crate) use web::write as write_web;

use pdf_writer::types::{OutputIntentSubtype, OverprintMode, TrappingStatus};
use pdf_writer::{Date, Filter, Finish, Name, Pdf, Rect, Ref, Str, TextStr};
use sha2::{Digest, Sha256};
use zlib_rs::{Deflate, DeflateFlush, Status, compress_bound};

use crate::display::{Colorant, DisplayList, Item};
use crate::font::FontSet;
use crate::job::SheetJob;
use crate::unit::{self, Pt};
use content::Dress;

/// A length as the file states it: thousandths of a point are finer than any plate.
fn number(value: Pt) -> f32 {
    // Both steps are exact to the bit everywhere: rounding, and the nearest f32.
    #[expect(clippy::cast_possible_truncation, reason = "the file's numbers are single precision")]
    let short = ((value.0 * 1000.0).round() / 1000.0) as f32;
    // Minus nothing is nothing.
    if short == 0.0 { 0.0 } else { short }
}

/// Deflates streams: the same bytes on every platform. Its tables, hundreds of kilobytes, are made once for a file.
struct Packer(Deflate);

impl Packer {
    /// For the pages of the press, printed by the thousand: files are a hundredth larger than the smallest. Packing them
    /// as hard as the others would be a sixth of what a label takes.
    fn quick() -> Self {
        Self::new(3)
    }

    /// For what is packed once and kept, and for files that travel.
    fn hard() -> Self {
        Self::new(6)
    }

    fn new(level: i32) -> Self {
        // With zlib's frame, as `FlateDecode` wants it, and the usual window.
        Self(Deflate::new(level, true, 15))
    }

    fn deflate(&mut self, bytes: &[u8]) -> Vec<u8> {
        self.0.reset();
        let mut packed = vec![0; compress_bound(bytes.len())];
        let done = self.0.compress(bytes, &mut packed, DeflateFlush::Finish);
        // It stops early where there is not room enough, which there is.
        debug_assert!(matches!(done, Ok(Status::StreamEnd)));
        packed.truncate(usize::try_from(self.0.total_out()).unwrap_or(usize::MAX));
        packed
    }
}

/// Where the page's origin lies in the file's coordinates, which start at the media box's lower left corner.
struct Origin {
    left: Pt,
    bottom: Pt,
}

impl Origin {
    /// The coordinates of a file whose page is this area.
    fn of(page: unit::Rect) -> Self {
        Self { left: page.x, bottom: page.bottom() }
    }
    fn x(&self, x: Pt) -> f32 {
        number(x - self.left)
    }
    fn y(&self, y: Pt) -> f32 {
        number(self.bottom - y)
    }
    /// The same for the points of an outline: hundredths of a point are finer than any plate, and files are a tenth
    /// smaller. Glyphs are placed more finely, so that roundings do not add up along a line.
    fn point(&self, at: unit::Point) -> (f32, f32) {
        let hundredths = |value: Pt| number(Pt((value.0 * 100.0).round() / 100.0));
        (hundredths(at.x - self.left), hundredths(self.bottom - at.y))
    }
    fn rect(&self, r: unit::Rect) -> Rect {
        Rect::new(self.x(r.x), self.y(r.bottom()), self.x(r.right()), self.y(r.y))
    }
}

/// Hands out object numbers.
struct Objects(i32);

impl Objects {
    fn next(&mut self) -> Ref {
        self.0 += 1;
        Ref::new(self.0)
    }
}

/// Writes the press file.
pub(crate) fn write(list: &DisplayList, fonts: &FontSet, job: &SheetJob, profile: &Profile<'_>) -> Vec<u8> {
    let mut packer = Packer::quick();
    let mut objects = Objects(0);
    let (catalog, tree, info, xmp) = (objects.next(), objects.next(), objects.next(), objects.next());
    let (icc, plain, overprint) = (objects.next(), objects.next(), objects.next());
    let every_plate = objects.next();
    let die = has_die(list).then(|| objects.next());
    let embedded = fonts::embed(list, fonts, &mut objects, false);
    let streams: Vec<Vec<u8>> = list
        .pages
        .iter()
        .map(|page| content::page(page, &embedded, &Origin::of(page.geometry.media_box()), Dress::Press))
        .collect();

    let id = file_id(job, &streams, &embedded, profile.bytes);
    let mut pdf = Pdf::new();
    pdf.set_version(1, 6);
    pdf.set_file_id((id.to_vec(), id.to_vec()));

    let mut pages = Vec::new();
    for (page, stream) in list.pages.iter().zip(&streams) {
        let (page_id, stream_id) = (objects.next(), objects.next());
        pages.push(page_id);
        let origin = Origin::of(page.geometry.media_box());
        let geometry = &page.geometry;
        let mut out = pdf.page(page_id);
        out.parent(tree)
            .media_box(origin.rect(geometry.media_box()))
            .bleed_box(origin.rect(geometry.bleed_box()))
            .trim_box(origin.rect(geometry.trim()))
            .contents(stream_id);
        let mut resources = out.resources();
        let mut states = resources.ext_g_states();
        states.pair(content::PLAIN, plain).pair(content::OVERPRINT, overprint);
        states.finish();
        let mut spaces = resources.color_spaces();
        spaces.pair(content::EVERY_PLATE, every_plate);
        if let Some(die) = die {
            spaces.pair(content::DIE, die);
        }
        spaces.finish();
        let mut used = resources.fonts();
        for font in embedded.fonts() {
            used.pair(Name(font.resource.as_bytes()), font.reference);
        }
        used.finish();
        resources.finish();
        out.finish();
        pdf.stream(stream_id, &packer.deflate(stream)).filter(Filter::FlateDecode);
    }

    pdf.ext_graphics(plain).overprint(false).overprint_fill(false);
    pdf.ext_graphics(overprint)
        .overprint(true)
        .overprint_fill(true)
        .overprint_mode(OverprintMode::IgnoreZeroChannel);
    // The colorant that goes on every plate, for the marks by which plates are laid over each other.
    let mut ink = pdf.color_space(every_plate).separation(Name(b"All"));
    ink.alternate_color_space().device_cmyk();
    ink.tint_exponential().domain([0.0, 1.0]).c0([0.0; 4]).c1([1.0; 4]).n(1.0);
    ink.finish();
    // The die's is shown in magenta, the trade's habit (common practice, no source).
    if let Some(die) = die {
        let mut ink = pdf.color_space(die).separation(Name(b"Dieline"));
        ink.alternate_color_space().device_cmyk();
        ink.tint_exponential().domain([0.0, 1.0]).c0([0.0; 4]).c1([0.0, 1.0, 0.0, 0.0]).n(1.0);
        ink.finish();
    }
    embedded.write(&mut pdf, &mut packer);

    let mut stream = pdf.icc_profile(icc, &profile.deflated);
    stream.n(4).filter(Filter::FlateDecode);
    stream.finish();

    let packet = metadata::xmp(job, &id, metadata::Kind::Press);
    pdf.metadata(xmp, packet.as_bytes()).finish();
    write_info(&mut pdf, info, job, true);

    let count = i32::try_from(pages.len()).unwrap_or(0);
    pdf.pages(tree).kids(pages).count(count);
    let mut root = pdf.catalog(catalog);
    root.pages(tree).metadata(xmp);
    if let Some(block) = job.languages.first() {
        root.lang(TextStr(&block.lang));
    }
    root.viewer_preferences().display_doc_title(true);
    let mut intents = root.output_intents();
    let mut intent = intents.push();
    intent
        .subtype(OutputIntentSubtype::PDFX)
        .output_condition_identifier(TextStr(profile.identifier()))
        .output_condition(TextStr(&profile.description))
        .info(TextStr(&profile.description))
        .dest_output_profile(icc);
    if profile.is_registered() {
        intent.registry_name(TextStr("http://www.color.org"));
    }
    intent.finish();
    intents.finish();
    root.finish();
    pdf.finish()
}

/// Whether a die's line is drawn, which needs a plate of its own that a press leaves out.
fn has_die(list: &DisplayList) -> bool {
    let die = |item: &Item| matches!(item, Item::Technical(line) if line.colorant == Colorant::Die);
    list.pages.iter().any(|page| page.items.iter().any(die))
}

fn write_info(pdf: &mut Pdf, id: Ref, job: &SheetJob, press: bool) {
    let mut info = pdf.document_info(id);
    info.title(TextStr(&job.job_name));
    info.creator(TextStr(metadata::TOOL)).producer(TextStr(metadata::TOOL));
    if let Some(date) = date(&job.date) {
        info.creation_date(date).modified_date(date);
    }
    if press {
        info.trapped(TrappingStatus::NotTrapped);
        // PDF/X-4 states its version in the XMP packet; print shops' older tools look here.
        info.pair(Name(b"GTS_PDFXVersion"), Str(b"PDF/X-4"));
    }
}

/// The job's date; it has been checked to be one.
fn date(text: &str) -> Option<Date> {
    let mut parts = text.split('-');
    let year = parts.next()?.parse().ok()?;
    let (month, day) = (parts.next()?.parse().ok()?, parts.next()?.parse().ok()?);
    Some(
        Date::new(year)
            .month(month)
            .day(day)
            .hour(0)
            .minute(0)
            .second(0)
            .utc_offset_hour(0)
            .utc_offset_minute(0),
    )
}

/// The file's id, from everything in it: the same content has the same id, another content another one.
fn file_id(job: &SheetJob, streams: &[Vec<u8>], fonts: &fonts::Embedded, profile: &[u8]) -> [u8; 16] {
    let mut hash = Sha256::new();
    for text in [&job.job_name, &job.date, &job.edition, &job.jurisdiction] {
        hash.update(text.as_bytes());
        hash.update([0]);
    }
    for stream in streams {
        hash.update(stream);
    }
    fonts.digest(&mut hash);
    hash.update(profile);
    let mut id = [0; 16];
    for (place, byte) in id.iter_mut().zip(hash.finalize()) {
        *place = byte;
    }
    id
}
