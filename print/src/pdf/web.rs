//! The web file: PDF/UA-1 (ISO 14289-1) from the display list, in sRGB, of the finished size without bleed and marks.

use pdf_writer::types::{ActionType, AnnotationFlags, AnnotationType, ListNumbering, StructRole, TabOrder};
use pdf_writer::{Filter, Finish, Name, Pdf, Ref, Str, TextStr};
use unicode_bidi::BidiClass;

use super::content::{self, Dress};
use super::packed::{Packed, Start};
use super::structure::{Bookmark, Child, Element, Mark, Structure, build};
use super::{Objects, Origin, Packer, file_id, fonts, metadata, srgb, write_info};
use crate::display::{DisplayList, Item, TextLine};
use crate::font::FontSet;
use crate::job::{Direction, SheetJob};
use crate::unit::Pt;

/// Writes the file.
pub(crate) fn write(list: &DisplayList, fonts: &FontSet, job: &SheetJob) -> Vec<u8> {
    let languages: Vec<&str> = job.languages.iter().map(|block| block.lang.as_str()).collect();
    let structure = build(list, &languages);
    let mut packer = Packer::hard();
    let mut objects = Objects(0);
    let (catalog, tree, info, xmp) = (objects.next(), objects.next(), objects.next(), objects.next());
    let (icc, struct_root) = (objects.next(), objects.next());
    let embedded = fonts::embed(list, fonts, &mut objects, true);
    let profile = srgb::profile();

    let streams: Vec<Vec<u8>> = list
        .pages
        .iter()
        .zip(&structure.marks)
        .map(|(page, marks)| {
            content::page(page, &embedded, &Origin::of(page.geometry.trim()), Dress::Web { marks, fonts })
        })
        .collect();
    let id = file_id(job, &streams, &embedded, &profile);
    let mut pdf = Pdf::new();
    pdf.set_version(1, 7);

    let pages: Vec<Ref> = streams.iter().map(|_| objects.next()).collect();
    let links: Vec<Ref> = structure.links.iter().map(|_| objects.next()).collect();
    let origins: Vec<Origin> = list.pages.iter().map(|page| Origin::of(page.geometry.trim())).collect();
    let places = Places { pages: &pages, links: &links, origins: &origins };

    for (index, ((page, stream), &page_id)) in list.pages.iter().zip(&streams).zip(&pages).enumerate() {
        let stream_id = objects.next();
        let mut out = pdf.page(page_id);
        let trim = places.origin(index).rect(page.geometry.trim());
        out.parent(tree).media_box(trim).crop_box(trim).trim_box(trim).contents(stream_id);
        out.struct_parents(number(index)).tab_order(TabOrder::StructureOrder);
        let own = structure.links.iter().zip(&links).filter(|(link, _)| link.page == index);
        let own: Vec<Ref> = own.map(|(_, annotation)| *annotation).collect();
        if !own.is_empty() {
            out.annotations(own);
        }
        let mut resources = out.resources();
        resources.color_spaces().insert(Name(b"DefaultRGB")).array().item(Name(b"ICCBased")).item(icc);
        let mut used = resources.fonts();
        for font in embedded.fonts() {
            used.pair(Name(font.resource.as_bytes()), font.reference);
        }
        used.finish();
        resources.finish();
        out.finish();
        pdf.stream(stream_id, &packer.deflate(stream)).filter(Filter::FlateDecode);
    }
    embedded.write(&mut pdf, &mut packer);
    let deflated = packer.deflate(&profile);
    let mut stream = pdf.icc_profile(icc, &deflated);
    stream.n(3).filter(Filter::FlateDecode);
    stream.finish();

    write_links(&mut pdf, &structure, job, &places);
    let mut packed = Packed::default();
    write_structure(&mut packed, &structure, &mut objects, struct_root, &places);
    let outline = write_outline(&mut packed, &structure.bookmarks, &mut objects, &places);

    let packet = metadata::xmp(job, &id, metadata::Kind::Accessible);
    pdf.metadata(xmp, packet.as_bytes()).finish();
    write_info(&mut pdf, info, job, false);
    pdf.pages(tree).kids(pages.iter().copied()).count(number(pages.len()));

    let mut root = pdf.catalog(catalog);
    root.pages(tree).metadata(xmp);
    root.pair(Name(b"StructTreeRoot"), struct_root);
    root.mark_info().marked(true);
    if let Some(outline) = outline {
        root.outlines(outline);
    }
    let mut preferences = root.viewer_preferences();
    preferences.display_doc_title(true);
    if let Some(block) = job.languages.first() {
        // Only where nothing else is on the sheet: PDFium takes it for every line's direction, and hands out the words of
        // other languages in reverse. It does so with the address to type as well, piece by piece, and finds the
        // direction of most lines without being told; so only where it would not.
        if job.languages.iter().all(|block| block.direction == Direction::Rtl)
            && needs_telling(list, &structure)
        {
            preferences.direction(pdf_writer::types::Direction::R2L);
        }
        preferences.finish();
        root.lang(TextStr(&block.lang));
    } else {
        preferences.finish();
    }
    root.finish();
    packed.finish(pdf, &Start { root: catalog, info, id }, &mut objects, &mut packer)
}

/// Whether a line on the sheet has right-to-left words and as many of the other direction, such as a place's name before a
/// street and a town: readers that guess take it for one from left to right.
fn needs_telling(list: &DisplayList, structure: &Structure) -> bool {
    let misleads = |line: &TextLine| {
        let words = |rtl: bool| {
            let own = |c: char| c.is_alphabetic() && is_rtl(c) == rtl;
            line.text.split_whitespace().filter(|word| word.contains(own)).count()
        };
        let own = words(true);
        own > 0 && words(false) >= own
    };
    list.pages.iter().zip(&structure.marks).any(|(page, marks)| {
        page.items.iter().zip(marks).any(|(item, mark)| match item {
            Item::Text(line) => *mark != Mark::Skip && misleads(line),
            Item::Fill(_) | Item::Rule(_) | Item::Technical(_) => false,
        })
    })
}

/// Whether a letter is written from right to left.
fn is_rtl(c: char) -> bool {
    matches!(unicode_bidi::bidi_class(c), BidiClass::R | BidiClass::AL)
}

/// A count as the file states it. There are never more than a few hundred of anything.
fn number(count: usize) -> i32 {
    i32::try_from(count).unwrap_or(i32::MAX)
}

/// Where pages and links are in the file.
struct Places<'a> {
    pages: &'a [Ref],
    links: &'a [Ref],
    origins: &'a [Origin],
}

impl Places<'_> {
    fn page(&self, index: usize) -> Ref {
        self.pages.get(index).copied().unwrap_or(Ref::new(1))
    }

    fn origin(&self, index: usize) -> &Origin {
        const NOWHERE: &Origin = &Origin { left: Pt::ZERO, bottom: Pt::ZERO };
        self.origins.get(index).unwrap_or(NOWHERE)
    }
}

/// The annotations that make the printed address something to follow. Their keys in the parent tree come after the
/// pages'.
fn write_links(pdf: &mut Pdf, structure: &Structure, job: &SheetJob, places: &Places<'_>) {
    let said = job.languages.iter().map(|block| block.link_alt.as_str()).find(|text| !text.is_empty());
    for (at, (link, &annotation)) in structure.links.iter().zip(places.links).enumerate() {
        let mut out = pdf.annotation(annotation);
        out.subtype(AnnotationType::Link)
            .rect(places.origin(link.page).rect(link.rect))
            .contents(TextStr(said.unwrap_or(&job.short_url)))
            .flags(AnnotationFlags::PRINT)
            .border(0.0, 0.0, 0.0, None)
            .page(places.page(link.page))
            .struct_parent(number(places.pages.len() + at));
        out.action().action_type(ActionType::Uri).uri(Str(job.qr_url.as_bytes()));
    }
}

/// The tree, with its way back from content and links to their elements.
fn write_structure(
    packed: &mut Packed,
    structure: &Structure,
    objects: &mut Objects,
    root: Ref,
    places: &Places<'_>,
) {
    let mut owners = Owners {
        content: structure.marks.iter().map(|_| Vec::new()).collect(),
        links: vec![None; places.links.len()],
    };
    let document = objects.next();
    write_element(packed, &structure.root, (document, root), objects, places, &mut owners);
    let mut parents = Vec::new();
    for (page, mut content) in owners.content.into_iter().enumerate() {
        content.sort_unstable_by_key(|(number, _)| *number);
        let array = objects.next();
        packed.write(array, |out| {
            out.indirect(array).array().items(content.into_iter().map(|(_, owner)| owner));
        });
        parents.push((number(page), array));
    }
    for (at, owner) in owners.links.into_iter().enumerate() {
        parents.push((number(places.pages.len() + at), owner.unwrap_or(document)));
    }
    packed.write(root, |out| {
        let mut out = out.indirect(root).start::<pdf_writer::writers::StructTreeRoot<'_>>();
        out.child(document);
        out.parent_tree_next_key(number(parents.len()));
        let mut tree = out.parent_tree();
        let mut numbers = tree.nums();
        for (key, owner) in parents {
            numbers.insert(key, owner);
        }
    });
}

/// The element of each content and of each link.
struct Owners {
    content: Vec<Vec<(i32, Ref)>>,
    links: Vec<Option<Ref>>,
}

fn write_element(
    packed: &mut Packed,
    element: &Element,
    (own, parent): (Ref, Ref),
    objects: &mut Objects,
    places: &Places<'_>,
    owners: &mut Owners,
) {
    let kids: Vec<Option<Ref>> = element
        .children
        .iter()
        .map(|child| matches!(child, Child::Element(_)).then(|| objects.next()))
        .collect();
    packed.write(own, |out| {
        let mut out = out.struct_element(own);
        out.kind(element.role).parent(parent);
        if let Some(lang) = &element.lang {
            out.lang(TextStr(lang));
        }
        if let Some(alt) = &element.alt {
            out.alt(TextStr(alt));
        }
        if let Some(text) = &element.actual {
            out.actual_text(TextStr(text));
        }
        // All content of an element is on one page, so that its numbers say all.
        let own_page = element.children.iter().find_map(|child| match child {
            Child::Content(page, _) => Some(*page),
            Child::Element(_) | Child::Link(_) => None,
        });
        if let Some(page) = own_page {
            out.page(places.page(page));
        }
        if let Some((page, frame)) = element.frame {
            out.attributes().push().layout().bbox(places.origin(page).rect(frame));
        }
        if element.role == StructRole::L {
            out.attributes().push().list().list_numbering(ListNumbering::None);
        }
        let mut children = out.children();
        for (child, kid) in element.children.iter().zip(&kids) {
            match (child, kid) {
                (Child::Element(_), Some(kid)) => {
                    children.struct_element(*kid);
                }
                (Child::Content(page, mcid), _) => {
                    children.marked_content_id(*mcid);
                    if let Some(of_page) = owners.content.get_mut(*page) {
                        of_page.push((*mcid, own));
                    }
                }
                (Child::Link(at), _) => {
                    let Some(&annotation) = places.links.get(*at) else { continue };
                    children.object_ref().object(annotation);
                    if let Some(owner) = owners.links.get_mut(*at) {
                        *owner = Some(own);
                    }
                }
                (Child::Element(_), None) => {}
            }
        }
        children.finish();
        out.finish();
    });
    for (child, kid) in element.children.iter().zip(kids) {
        if let (Child::Element(child), Some(kid)) = (child, kid) {
            write_element(packed, child, (kid, own), objects, places, owners);
        }
    }
}

/// The table of contents; nothing for a sheet without titles.
fn write_outline(
    packed: &mut Packed,
    bookmarks: &[Bookmark],
    objects: &mut Objects,
    places: &Places<'_>,
) -> Option<Ref> {
    if bookmarks.is_empty() {
        return None;
    }
    let root = objects.next();
    let (first, last) = write_bookmarks(packed, bookmarks, root, objects, places)?;
    packed.write(root, |out| {
        out.outline(root).first(first).last(last).count(number(bookmarks.len()));
    });
    Some(root)
}

/// Writes neighbours and what is below them; gives the first and the last.
fn write_bookmarks(
    packed: &mut Packed,
    bookmarks: &[Bookmark],
    parent: Ref,
    objects: &mut Objects,
    places: &Places<'_>,
) -> Option<(Ref, Ref)> {
    let refs: Vec<Ref> = bookmarks.iter().map(|_| objects.next()).collect();
    for (at, (bookmark, &own)) in bookmarks.iter().zip(&refs).enumerate() {
        let below = write_bookmarks(packed, &bookmark.below, own, objects, places);
        packed.write(own, |out| {
            let mut out = out.outline_item(own);
            out.title(TextStr(bookmark.title.trim())).parent(parent);
            if let Some(&before) = at.checked_sub(1).and_then(|at| refs.get(at)) {
                out.prev(before);
            }
            if let Some(&after) = refs.get(at + 1) {
                out.next(after);
            }
            if let Some((first, last)) = below {
                // Closed: a minus.
                out.first(first).last(last).count(-number(bookmark.below.len()));
            }
            let origin = places.origin(bookmark.page);
            out.dest().page(places.page(bookmark.page)).xyz(0.0, origin.y(bookmark.top), None);
        });
    }
    Some((*refs.first()?, *refs.last()?))
}
