//! The title band: who issues the sheet, and its title in every language.

use super::content::Content;
use super::fit::{SideBySide, Trial, Wide};
use super::pen::Pen;
use crate::display::Role;
use crate::ink::Ink;
use crate::path;
use crate::text::Setting;
use crate::unit::{Point, Pt, Rect};

pub(super) struct Band {
    issuer: Setting,
    titles: SideBySide,
    gap: Pt,
    pub(super) height: Pt,
}

/// Titles share the band's width, all in one size; the fewer there are the larger.
fn title_size(languages: usize, size: Pt) -> Pt {
    match languages {
        1 => size * 2.6,
        2 => size * 2.0,
        _ => size * 1.7,
    }
}

impl Band {
    pub(super) fn plan(content: &Content, trial: &Trial, width: Pt, size: Pt) -> Result<Self, Wide> {
        let gap = size * 1.4;
        let issuer = trial.set(&content.issuer, size, width)?;
        let usual = title_size(content.titles.len(), size);
        let large = usual.max(content.least_title);
        // A sign's title is as large as signs ask where it stays on one line so; preflight tells where it does not.
        let titles = match SideBySide::plan(&content.titles, trial, large, width, gap) {
            Ok(plan) if plan.settings.iter().all(|one| one.lines.len() <= 1) => plan,
            _ => SideBySide::plan(&content.titles, trial, usual, width, gap)?,
        };
        let height = issuer.height() + titles.height() + size * 0.9;
        Ok(Self { issuer, titles, gap, height })
    }

    /// Draws the band across the top of the sheet: ink runs into the bleed, words start at the safe area.
    pub(super) fn draw(&self, content: &Content, pen: &mut Pen<'_>, safe: Rect, bleed: Rect) {
        let bottom = safe.y + self.height;
        let bar = Rect::new(bleed.x, bleed.y, bleed.width, bottom - bleed.y);
        pen.fill("band", path::rectangle(bar), Ink::BAND);
        let mut y = safe.y;
        let at = Point { x: safe.x, y };
        y += pen.words(&content.issuer, &self.issuer, at, safe.width, Role::Issuer, Ink::PAPER);
        let mut x = safe.x;
        let set = self.titles.settings.iter().zip(&self.titles.columns);
        for (title, (setting, &column)) in content.titles.iter().zip(set) {
            pen.words(title, setting, Point { x, y }, column, Role::Title, Ink::PAPER);
            x += column + self.gap;
        }
    }
}
