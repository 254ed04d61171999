//! The table of sheets: each one's sizes, pages, folds and areas.

use super::{BLEED, MailClass, NAMED_SIZES, PageGeometry, PostalZones, SAFE, SLUG, SheetSize};
use crate::job::{Fold, SheetJob, SheetKind, Tone};
use crate::unit::{Mm, Pt, Rect};

/// A sheet: its pages in order.
#[derive(Debug, Clone, PartialEq)]
pub struct Sheet {
    /// The pages in order. A handout's last is left out when nothing is on it.
    pub pages: Vec<SheetPage>,
}

/// One page: its boxes, its folds, and what fills which part of it.
#[derive(Debug, Clone, PartialEq)]
pub struct SheetPage {
    /// Which side it is, in a word.
    pub name: &'static str,
    /// Its boxes.
    pub geometry: PageGeometry,
    /// Where it is folded from side to side: distances from the upper edge.
    pub folds: Vec<Pt>,
    /// What fills it.
    pub areas: Vec<Area>,
}

/// A part of a page and what fills it.
#[derive(Debug, Clone, PartialEq)]
pub struct Area {
    /// What fills it.
    pub face: Face,
    /// The part, up to the cut or fold.
    pub rect: Rect,
    /// Whether it stands on its head when the sheet lies flat, so that it is upright once folded.
    pub turned: bool,
}

/// What fills an area.
#[derive(Debug, Clone, PartialEq)]
pub enum Face {
    /// Title band, sections, foot: all on one area.
    Poster,
    /// One message for a round label.
    Sticker,
    /// The post's side.
    Address(Box<PostalZones>),
    /// The first thing seen of a folded piece: title, what is asked, the code.
    Cover,
    /// Sections that run on from area to area in the order of the pages.
    Flow(Flow),
}

/// A text that runs through several areas.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Flow {
    /// The sections it has, by their verdicts.
    pub tones: &'static [Tone],
    /// Whether the title band stands above it and the foot below.
    pub whole: bool,
}

/// All sections, with title and foot.
const EVERYTHING: Flow = Flow { tones: &[Tone::Yes, Tone::No, Tone::Elsewhere, Tone::Caution], whole: true };
/// All but the hazards, with title and foot.
const ADVICE: Flow = Flow { tones: &[Tone::Yes, Tone::No, Tone::Elsewhere], whole: true };
/// The hazards alone.
const HAZARDS: Flow = Flow { tones: &[Tone::Caution], whole: false };

/// What a sheet's size may be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SizeLimits {
    /// The names of the sizes offered (see [`NAMED_SIZES`]), the usual one first.
    pub named: &'static [&'static str],
    /// The least and the most of a side that is typed; none where only the named sizes are made.
    pub typed: Option<(Mm, Mm)>,
}

impl SheetKind {
    /// What its size may be. The limits of typed sizes are ours: what still bears a label's words, what a sheet-fed
    /// press or a sign maker's printer still makes, and for mail the sizes of cards and flats together.
    pub fn sizes(self) -> SizeLimits {
        let limits = |named, typed| SizeLimits { named, typed };
        match self {
            Self::CartLid => limits(&["7x9in", "8x12in", "a4", "a5"], Some((Mm(100.0), Mm(600.0)))),
            Self::RoundSticker => limits(&["115mm"], Some((Mm(70.0), Mm(300.0)))),
            Self::EnclosureSign => limits(&["18x24in", "12x18in", "a3"], Some((Mm(250.0), Mm(1500.0)))),
            Self::PostcardMailer => {
                limits(&["9x6in", "8.5x5.5in", "11x8.5in"], Some((Mm::inches(3.5), Mm::inches(15.0))))
            }
            Self::SelfMailer | Self::Handout => limits(&["letter", "a4"], None),
        }
    }

    /// Corners where none are asked for. The quarter of an inch of a lid is ours: a square corner of a label
    /// lifts first.
    const fn usual_corner(self) -> Mm {
        match self {
            Self::CartLid | Self::EnclosureSign => Mm::inches(0.25),
            Self::RoundSticker | Self::PostcardMailer | Self::SelfMailer | Self::Handout => Mm::ZERO,
        }
    }

    /// The size where none is asked for.
    pub fn usual_size(self) -> SheetSize {
        let name = self.sizes().named.first().copied().unwrap_or("letter");
        SheetSize::named(name).unwrap_or(NAMED_SIZES[0].1)
    }
}

impl SheetJob {
    /// The sheet's finished size: as asked, or the usual one.
    pub fn finished_size(&self) -> SheetSize {
        self.size.unwrap_or_else(|| self.sheet.usual_size())
    }

    /// The sheet's pages, boxes, folds and areas. For a size that no such sheet can have the numbers make no
    /// sense; [`crate::make`] refuses those first.
    pub fn plan(&self) -> Sheet {
        let size = self.finished_size();
        let corner = match self.sheet {
            SheetKind::RoundSticker => size.width / 2.0,
            _ => size.corner.unwrap_or(self.sheet.usual_corner()),
        };
        let safe = match self.sheet {
            SheetKind::RoundSticker => SAFE,
            _ => inset(corner.pt()),
        };
        let geometry =
            PageGeometry { width: size.width, height: size.height, bleed: BLEED, safe, corner, slug: SLUG };
        let whole = geometry.trim();
        let one = |face| vec![Area { face, rect: whole, turned: false }];
        let page = |name, areas| SheetPage { name, geometry, folds: Vec::new(), areas };
        let pages = match self.sheet {
            SheetKind::CartLid => vec![page("lid", one(Face::Poster))],
            SheetKind::EnclosureSign => vec![page("sign", one(Face::Poster))],
            SheetKind::RoundSticker => vec![page("sticker", one(Face::Sticker))],
            SheetKind::PostcardMailer => {
                let zones = match MailClass::of(size.width, size.height) {
                    Some(MailClass::Flat) | None => PostalZones::flat(whole),
                    Some(class) => PostalZones::letter(whole, class),
                };
                vec![page("message", one(Face::Poster)), page("address", one(Face::Address(Box::new(zones))))]
            }
            SheetKind::Handout => {
                vec![page("front", one(Face::Flow(EVERYTHING))), page("back", one(Face::Flow(EVERYTHING)))]
            }
            SheetKind::SelfMailer => folded(self.fold, geometry),
        };
        Sheet { pages }
    }
}

/// How far inside the cut a rectangle lies whose corners keep the safe distance from round ones of this radius.
fn inset(radius: Pt) -> Pt {
    SAFE.max(radius - (radius - SAFE) * std::f64::consts::FRAC_1_SQRT_2)
}

/// A letter or A4 sheet folded to a mail piece: the address panel's lower edge is a fold and its upper edge is where
/// the sheet opens and is tabbed (DMM 201.3.14: horizontal fold at the bottom).
///
/// The outside lies flat with the address panel upright. What hangs below it folds up behind it and is seen once
/// the piece is turned over sideways, so it stands on its head while the sheet lies flat. In thirds the panel above
/// the address folds in first, over the inside, and is read when the cover is opened: it stands on its head too.
/// The inside's upper edge lies behind the outside's, so the sheet is turned over sideways between the two sides.
fn folded(fold: Fold, geometry: PageGeometry) -> Vec<SheetPage> {
    let trim = geometry.trim();
    // The panel that folds in is a sixteenth of an inch shorter, so that it lies flat (common practice, no source).
    let tuck = Pt::inches(0.0625);
    let heights = match fold {
        Fold::Half => vec![trim.height / 2.0, trim.height / 2.0],
        Fold::Thirds => {
            let third = (trim.height + tuck) / 3.0;
            vec![third - tuck, third, third]
        }
    };
    let mut panels = Vec::new();
    let mut y = trim.y;
    for height in heights {
        panels.push(Rect::new(trim.x, y, trim.width, height));
        y += height;
    }
    let folds: Vec<Pt> = panels.iter().skip(1).map(|panel| panel.y).collect();
    let address = |rect: Rect| Area {
        face: Face::Address(Box::new(PostalZones::letter(rect, MailClass::Folded))),
        rect,
        turned: false,
    };
    let on_its_head = |face, rect| Area { face, rect, turned: true };
    let (outside, inside) = match (fold, panels.as_slice()) {
        (Fold::Thirds, [flap, middle, last]) => (
            vec![on_its_head(Face::Flow(HAZARDS), *flap), address(*middle), on_its_head(Face::Cover, *last)],
            ADVICE,
        ),
        (_, [first, second, ..]) => (vec![address(*first), on_its_head(Face::Cover, *second)], EVERYTHING),
        _ => (Vec::new(), EVERYTHING),
    };
    let inner = panels.iter().map(|&rect| Area { face: Face::Flow(inside), rect, turned: false }).collect();
    vec![
        SheetPage { name: "outside", geometry, folds: folds.clone(), areas: outside },
        SheetPage { name: "inside", geometry, folds, areas: inner },
    ]
}

#[cfg(test)]
mod tests {
    use super::*;

    fn job(kind: SheetKind, size: Option<SheetSize>, fold: Fold) -> SheetJob {
        let text = format!(
            r#"{{"sheet":"{}","languages":[],"qr_url":"","short_url":"","jurisdiction":"","edition":"","job_name":"","date":""}}"#,
            kind.id()
        );
        let mut job: SheetJob = serde_json::from_str(&text).unwrap();
        job.size = size;
        job.fold = fold;
        job
    }

    /// Every sheet there is, in every size that is offered.
    fn all() -> Vec<(String, Sheet)> {
        let mut all = Vec::new();
        for kind in SheetKind::ALL {
            for name in kind.sizes().named {
                let size = SheetSize::named(name).unwrap_or_else(|| panic!("{name} is no size"));
                for fold in [Fold::Half, Fold::Thirds] {
                    all.push((format!("{} {name} {fold:?}", kind.id()), job(kind, Some(size), fold).plan()));
                }
            }
        }
        all
    }

    #[test]
    fn boxes_are_nested_and_areas_lie_side_by_side() {
        for (name, sheet) in all() {
            for page in sheet.pages {
                let g = page.geometry;
                assert!(g.media_box().contains(&g.bleed_box()), "{name}");
                assert!(g.bleed_box().contains(&g.trim()), "{name}");
                assert!(g.trim().contains(&g.safe_area()), "{name}");
                assert!(g.bleed >= Mm(3.0).pt(), "{name}: 3 mm or 1/8 in (printers' guides)");
                for (index, area) in page.areas.iter().enumerate() {
                    assert!(g.trim().contains(&area.rect), "{name}");
                    assert!(
                        page.areas[..index].iter().all(|other| !other.rect.overlaps(&area.rect)),
                        "{name}"
                    );
                }
                let covered: f64 = page.areas.iter().map(|area| area.rect.height.0).sum();
                assert!((covered - g.height.pt().0).abs() < 1e-6, "{name}: areas cover the page");
                for fold in &page.folds {
                    assert!(page.areas.iter().any(|area| (area.rect.y - *fold).0.abs() < 1e-6), "{name}");
                }
            }
        }
    }

    /// Letters: 5 to 11.5 by 3.5 to 6.125 in, length over height 1.3 to 2.5 (USPS QSG 201, DMM 202.2.1). Folded
    /// self-mailers: 3.5 to 6 by 5 to 10.5 in (DMM 201.3.14). Flats: at most 15 by 12 in.
    #[test]
    fn what_is_mailed_is_of_its_class() {
        for (length, height, class) in [
            (9.0, 6.0, Some(MailClass::Letter)),
            (6.0, 4.0, Some(MailClass::Card)),
            (6.0, 4.25, Some(MailClass::Card)),
            (6.25, 4.25, Some(MailClass::Letter)),
            (11.0, 8.5, Some(MailClass::Flat)),
            (15.0, 12.0, Some(MailClass::Flat)),
            (15.1, 12.0, None),
            // "4x6 addressed along the 4: refused; 5x8 along 8: 1.6 fine; along 5: .625 refused" (printer's guide
            // to the DMM). Five inches along the address and eight high is over a letter's height, so it is a
            // flat here, which has no rule of shape.
            (4.0, 6.0, None),
            (8.0, 5.0, Some(MailClass::Letter)),
            (5.0, 8.0, Some(MailClass::Flat)),
            (4.9, 3.5, None),
            (5.0, 3.4, None),
            (11.5, 3.5, None),
        ] {
            assert_eq!(MailClass::of(Mm::inches(length), Mm::inches(height)), class, "{length} x {height}");
        }
        for (name, sheet) in all() {
            for area in sheet.pages.iter().flat_map(|page| &page.areas) {
                let Face::Address(zones) = &area.face else { continue };
                let limits = zones.class.limits();
                let (length, height) = (zones.panel.width.mm(), zones.panel.height.mm());
                assert!(length >= limits.length.0 && length.0 <= limits.length.1.0 + 1e-6, "{name}");
                assert!(height >= limits.height.0 && height.0 <= limits.height.1.0 + 1e-6, "{name}");
                if let Some((least, most)) = limits.ratio {
                    assert!((least..=most).contains(&(length / height)), "{name}");
                }
            }
        }
    }

    /// Read area and barcode clear zone in inches from the lower left corner (DMM 202.2.1, Publication 28).
    #[test]
    fn the_posts_zones_are_where_the_post_wants_them() {
        let card = job(SheetKind::PostcardMailer, None, Fold::Half).plan();
        let Face::Address(zones) = &card.pages[1].areas[0].face else { panic!("an address side") };
        let near = |rect: Rect, expected: [f64; 4]| {
            let bottom = 6.0 - rect.bottom().0 / 72.0;
            let have = [rect.x.0 / 72.0, bottom, rect.right().0 / 72.0, bottom + rect.height.0 / 72.0];
            have.iter().zip(expected).all(|(have, want)| (have - want).abs() < 1e-9)
        };
        assert!(near(zones.read_area, [0.5, 0.625, 8.5, 2.75]), "{:?}", zones.read_area);
        assert!(near(zones.barcode_clear, [4.25, 0.0, 9.0, 0.625]), "{:?}", zones.barcode_clear);
    }

    #[test]
    fn the_posts_zones_lie_apart() {
        let mut looked_at = 0;
        for (name, sheet) in all() {
            for area in sheet.pages.iter().flat_map(|page| &page.areas) {
                let Face::Address(zones) = &area.face else { continue };
                looked_at += 1;
                let safe = zones.panel.grown(-SAFE);
                assert!(zones.read_area.contains(&zones.address_block), "{name}");
                assert!(zones.address_only.contains(&zones.address_block), "{name}");
                let own = [zones.message, zones.return_address, zones.indicia, zones.small_print];
                for (index, zone) in own.iter().enumerate().filter(|(_, zone)| zone.width > Pt::ZERO) {
                    assert!(safe.contains(zone), "{name} {zone:?}");
                    assert!(!zone.overlaps(&zones.address_only), "{name} {zone:?}");
                    assert!(!zone.overlaps(&zones.barcode_clear), "{name} {zone:?}");
                    let others = own.iter().skip(index + 1).filter(|other| other.width > Pt::ZERO);
                    assert!(others.into_iter().all(|other| !zone.overlaps(other)), "{name} {zone:?}");
                }
                if zones.class == MailClass::Flat {
                    // "Address in the top half" (PB 22312 and later summaries).
                    let half = zones.panel.y + zones.panel.height / 2.0;
                    assert!(zones.address_block.bottom() <= half, "{name}");
                }
            }
        }
        assert!(looked_at > 4);
    }

    /// Folding, by paper: a point of the inside lies behind the mirrored point of the outside, and the address
    /// panel's lower edge is a fold while nothing is attached to its upper edge but the panel that folds in.
    #[test]
    fn a_folded_piece_opens_at_the_top_and_folds_at_the_bottom() {
        for size in ["letter", "a4"] {
            for (fold, count) in [(Fold::Half, 2), (Fold::Thirds, 3)] {
                let sheet = job(SheetKind::SelfMailer, SheetSize::named(size), fold).plan();
                let [outside, inside] = sheet.pages.as_slice() else { panic!("two sides") };
                assert_eq!(outside.folds, inside.folds);
                assert_eq!(outside.areas.len(), count);
                assert_eq!(inside.areas.len(), count);
                let address =
                    outside.areas.iter().find(|area| matches!(area.face, Face::Address(_))).unwrap();
                assert!(!address.turned);
                assert!(outside.folds.iter().any(|fold| (*fold - address.rect.bottom()).0.abs() < 1e-6));
                let cover = outside.areas.iter().find(|area| area.face == Face::Cover).unwrap();
                assert!(cover.turned && cover.rect.y >= address.rect.bottom() - Pt(1e-6));
                // The cover, folded up, reaches no higher than the address panel.
                assert!(cover.rect.height <= address.rect.height + Pt(1e-6));
                // The panel that folds in is no taller than what it lies on.
                for area in outside.areas.iter().filter(|area| area.rect.y < address.rect.y) {
                    assert!(area.turned && area.rect.height < address.rect.height);
                }
                assert!(inside.areas.iter().all(|area| !area.turned));
            }
        }
    }

    #[test]
    fn a_round_sheet_keeps_its_corners_free() {
        let sheet = job(SheetKind::RoundSticker, None, Fold::Half).plan();
        let g = sheet.pages[0].geometry;
        assert!(g.is_round());
        let middle = g.trim().width / 2.0;
        let reach = middle - SAFE;
        let square = |side: Pt| Rect::new(middle - side / 2.0, middle - side / 2.0, side, side);
        // The square inside a circle has a side of its diameter over the root of two.
        assert!(g.keeps_safe(&square(reach * 1.41)));
        assert!(!g.keeps_safe(&square(reach * 1.43)));
        assert!(g.safe_area().contains(&square(reach * 1.9)));
    }
}
