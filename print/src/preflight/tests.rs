//! Each check finds what it is for, on a sheet that was right before one thing was done to it.

use super::*;
use crate::display::{Fill, Rule};
use crate::font::fonts_on_disk;
use crate::ink::{INK_LIMIT, Ink};
use crate::layout;
use crate::path::rectangle;
use crate::text::Typesetter;
use crate::unit::{Point, Rect};

fn job(name: &str) -> SheetJob {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/jobs");
    let bytes = std::fs::read(format!("{folder}/{name}.json")).expect("a job");
    serde_json::from_slice(&bytes).expect("a job")
}

/// What a changed sheet's preflight finds, for the press or for the web.
fn found(
    name: &str,
    press: bool,
    change: impl FnOnce(&mut SheetJob, &mut DisplayList),
) -> Vec<PreflightItem> {
    let mut job = job(name);
    let fonts = fonts_on_disk();
    let setter = Typesetter::new(&fonts);
    let code = Code::new(&job.qr_url, job.viewing_distance, None).expect("a code");
    let content = layout::Content::new(&job, setter).expect("its words");
    let faces = fonts.faces().iter().map(crate::font::Face::name).collect();
    let mut laid_out = layout::lay_out(&job, &content, &code, setter, faces).expect("a sheet");
    change(&mut job, &mut laid_out.list);
    let ink_limit = press.then_some(INK_LIMIT);
    let grounds = Grounds::of(&laid_out.list);
    preflight(&Sheet {
        job: &job,
        list: &laid_out.list,
        code: &code,
        body: laid_out.body,
        ink_limit,
        grounds,
    })
}

/// The one finding of a kind, which has a place on a page.
fn one<'a>(items: &'a [PreflightItem], code: &str) -> &'a PreflightItem {
    let mut of_kind = items.iter().filter(|item| item.code == code);
    let item = of_kind.next().unwrap_or_else(|| panic!("no {code} in {items:#?}"));
    assert!(item.place.is_some(), "{code} has no place");
    item
}

fn body(list: &mut DisplayList) -> &mut TextLine {
    let lines = list.pages[0].items.iter_mut().filter_map(|item| match item {
        Item::Text(line) if line.role == crate::display::Role::Body => Some(line),
        _ => None,
    });
    lines.into_iter().next().expect("a line")
}

#[test]
fn a_sheet_as_laid_out_is_right() {
    for name in ["lid-en", "lid-ar", "mailer-en-es-ar"] {
        for press in [true, false] {
            let items = found(name, press, |_, _| {});
            assert!(items.iter().all(|item| item.severity != Severity::Error), "{name}: {items:#?}");
            let passed = |code: &str| items.iter().any(|item| item.code == code);
            assert!(passed("contrast") && passed("fonts-embedded") && passed("qr-code"), "{name}");
            assert_eq!(passed("ink-coverage"), press);
            assert_eq!(passed("pictures-have-words"), !press);
        }
    }
}

#[test]
fn pale_words_are_found_where_they_are() {
    let items = found("lid-en", true, |_, list| body(list).ink = Ink::YES_TINT);
    let item = one(&items, "contrast-low");
    assert_eq!(item.severity, Severity::Error);
    assert!(item.args["text"].starts_with("Plastic bottles"));
    // Yellow on white is bright on the press too.
    let yellow = Ink { cmyk: [0, 0, 100, 0], screen: [0xff, 0xed, 0x00] };
    let items = found("lid-en", false, |_, list| body(list).ink = yellow);
    assert_eq!(one(&items, "contrast-low").args["least"], "4.5");
}

#[test]
fn what_lies_in_a_codes_quiet_zone_is_found() {
    let touched = found("lid-en", true, |_, list| {
        let page = &mut list.pages[0];
        let code = page
            .items
            .iter()
            .find_map(|item| match item {
                Item::Fill(fill) if fill.what == "qr" => crate::path::bounds(&fill.path),
                _ => None,
            })
            .expect("a code");
        let from = Point { x: code.x - Pt(2.0), y: code.y };
        let to = Point { x: code.x - Pt(2.0), y: code.bottom() };
        page.items.push(Item::Rule(Rule { what: "frame".into(), from, to, width: Pt(0.5), ink: Ink::BLACK }));
    });
    one(&touched, "qr-not-quiet");
    let bare = found("lid-en", true, |_, list| {
        list.pages[0].items.retain(|item| !matches!(item, Item::Fill(fill) if fill.what == "quiet zone"));
    });
    one(&bare, "qr-not-quiet");
}

#[test]
fn thin_lines_missing_glyphs_and_ink_are_found() {
    let thin = |ink: Ink, width: f64| {
        found("lid-en", true, |_, list| {
            let (from, to) = (Point { x: Pt(30.0), y: Pt(100.0) }, Point { x: Pt(60.0), y: Pt(100.0) });
            list.pages[0].items.push(Item::Rule(Rule {
                what: "hair".into(),
                from,
                to,
                width: Pt(width),
                ink,
            }));
        })
    };
    one(&thin(Ink::BLACK, 0.2), "rule-too-thin");
    one(&thin(Ink::PAPER, 0.4), "rule-too-thin");
    assert!(thin(Ink::BLACK, 0.25).iter().all(|item| item.code != "rule-too-thin"));
    let holes = found("lid-en", true, |_, list| body(list).runs[0].glyphs[0].id = 0);
    assert_eq!(one(&holes, "missing-glyph").args["place"], "line:en:1:1");
    let heavy = |area: Rect| {
        found("lid-en", true, |_, list| {
            let ink = Ink { cmyk: [90, 80, 80, 90], screen: [0; 3] };
            list.pages[0].items.push(Item::Fill(Fill {
                what: "blot".into(),
                path: rectangle(area),
                ink,
                alt: None,
            }));
        })
    };
    let inside = heavy(Rect::new(Pt(100.0), Pt(100.0), Pt(9.0), Pt(9.0)));
    assert_eq!(one(&inside, "too-much-ink").args["coverage"], "340");
    // What lies outside the bleed is cut off.
    let outside = heavy(Rect::new(Pt(-40.0), Pt(100.0), Pt(9.0), Pt(9.0)));
    assert!(outside.iter().all(|item| item.code != "too-much-ink"));
}

#[test]
fn what_a_person_should_look_at_is_shown_where_it_is() {
    let other = job("lid-en-es-ar").languages[1].sections[1].lines[0].text.clone();
    let items = found("lid-en-es-ar", true, |job, _| {
        job.languages[0].sections[0].lines[1].fidelity = Some(640);
        job.languages[1].sections[0].lines[2].fidelity = Some(640);
        job.languages[0].sections[0].lines[2].fidelity = Some(930);
        job.languages[1].sections[0].lines[0].contradicts = Some(other.clone());
        job.languages[1].outdated = vec!["Frascos".into()];
        job.languages[2].reviewed = false;
    });
    let wrong: Vec<_> = items.iter().filter(|item| item.code == "line-often-wrong").collect();
    assert_eq!(wrong.len(), 1, "{wrong:?}");
    assert_eq!(
        (wrong[0].args["text"].as_str(), wrong[0].args["percent"].as_str()),
        ("Food and drink cans", "64")
    );
    assert_eq!(one(&items, "lines-contradict").args["other"], other);
    let (outdated, unreviewed) = (one(&items, "translation-outdated"), one(&items, "translation-unreviewed"));
    assert!(unreviewed.args["lang"] == "ar" || unreviewed.args["lang"] == "es");
    // The outdated words are in the list, the unreviewed language's title in the band.
    let top = |item: &PreflightItem| item.place.expect("a place").rect.y;
    assert!(top(outdated) > top(unreviewed));
    assert!(items.iter().filter(|item| item.severity == Severity::Warning).all(|item| item.place.is_some()));
}

#[test]
fn pictures_without_words_are_found_for_the_web() {
    let items = found("lid-en", false, |_, list| {
        for item in &mut list.pages[0].items {
            if let Item::Fill(fill) = item {
                fill.alt = None;
            }
        }
    });
    let silent: Vec<_> = items.iter().filter(|item| item.code == "picture-without-words").collect();
    assert!(silent.len() > 10 && silent.iter().all(|item| item.place.is_some()));
    assert_eq!(silent.iter().filter(|item| item.args["what"] == "thing:code").count(), 1);
}
