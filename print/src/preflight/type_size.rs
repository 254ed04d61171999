//! Type is large enough for the viewing distance, and small print for the press; rules and pictures too.

use super::{Sheet, lines, pages};
use crate::display::{Item, Role};
use crate::finding::PreflightItem;
use crate::ink::Ink;
use crate::layout::{LEAST_TYPE, SMALLEST_PICTURE, floor_for};
use crate::path::bounds;
use crate::sheet::SMALLEST_ADDRESS_TYPE;
use crate::unit::{Pt, Rect, TOLERANCE};

/// The thinnest line that prints: .25 pt, and .5 pt where it is left white (CHECK-VALUES "type and line").
fn thinnest(ink: Ink) -> Pt {
    if ink == Ink::PAPER { Pt(0.5) } else { Pt(0.25) }
}

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    let floor = floor_for(sheet.job.viewing_distance);
    let mut found = Vec::new();
    let mut smallest: Option<Pt> = None;
    for (index, page) in pages(sheet) {
        for line in lines(page) {
            let least = match line.role {
                Role::Title | Role::Issuer | Role::Heading | Role::Body => floor,
                Role::Postal => SMALLEST_ADDRESS_TYPE,
                Role::Foot | Role::Slug => LEAST_TYPE,
            };
            for run in &line.runs {
                smallest = Some(smallest.map_or(run.size, |size: Pt| size.min(run.size)));
                if run.size < least - TOLERANCE {
                    let message = format!(
                        "“{}” on page {} is set in {:.1} pt, under the {:.1} pt it needs; shorten the texts",
                        line.text,
                        index + 1,
                        run.size.0,
                        least.0
                    );
                    found.push(
                        PreflightItem::error("type-too-small", message)
                            .arg("text", &line.text)
                            .arg("size", format!("{:.1}", run.size.0))
                            .arg("least", format!("{:.1}", least.0))
                            .at(index, line.rect),
                    );
                }
            }
        }
        for item in &page.items {
            match item {
                Item::Rule(rule) if rule.width < thinnest(rule.ink) - TOLERANCE => {
                    let message = format!(
                        "a line on page {} is {:.2} pt thin; the least is {} pt",
                        index + 1,
                        rule.width.0,
                        thinnest(rule.ink).0
                    );
                    let ends = Rect::new(rule.from.x, rule.from.y, Pt::ZERO, Pt::ZERO).around(&Rect::new(
                        rule.to.x,
                        rule.to.y,
                        Pt::ZERO,
                        Pt::ZERO,
                    ));
                    found.push(
                        PreflightItem::error("rule-too-thin", message)
                            .arg("width", format!("{:.2}", rule.width.0))
                            .arg("least", thinnest(rule.ink).0)
                            .at(index, ends),
                    );
                }
                Item::Fill(fill) if fill.what == "tile" => {
                    let Some(rect) = bounds(&fill.path) else { continue };
                    let side = rect.width.mm();
                    if side < SMALLEST_PICTURE - TOLERANCE.mm() {
                        let message = format!(
                            "a picture is {:.1} mm wide; the least is {} mm",
                            side.0, SMALLEST_PICTURE.0
                        );
                        found.push(
                            PreflightItem::error("picture-too-small", message)
                                .arg("side", format!("{:.1}", side.0))
                                .at(index, rect),
                        );
                    }
                }
                _ => {}
            }
        }
    }
    if found.is_empty() {
        let least = smallest.unwrap_or(Pt::ZERO);
        let message = format!(
            "items are set in {:.2} pt in every language (at least {:.1} pt for {:.0} mm); the smallest type is {:.1} pt",
            sheet.body.0, floor.0, sheet.job.viewing_distance.0, least.0
        );
        found.push(
            PreflightItem::pass("type-sizes", message)
                .arg("body", format!("{:.2}", sheet.body.0))
                .arg("floor", format!("{:.1}", floor.0))
                .arg("distance", format!("{:.0}", sheet.job.viewing_distance.0))
                .arg("smallest", format!("{:.1}", least.0)),
        );
    }
    found
}
