//! The foot: the code, what it is for, whom to ask, the address to type, and what the law asks.

use super::address::{MARK_SPACE, mark_space};
use super::content::Content;
use super::fit::{LEAST_TYPE, Trial, Wide};
use super::pen::Pen;
use crate::display::Role;
use crate::ink::Ink;
use crate::qr::Code;
use crate::text::{Setting, count};
use crate::unit::{Point, Pt, Rect};

pub(super) struct Footer {
    code: Pt,
    columns: Vec<(Option<Setting>, Vec<Setting>)>,
    column: Pt,
    gap: Pt,
    address: Setting,
    notice: Option<Setting>,
    edition: Option<Setting>,
    notice_measure: Pt,
    edition_measure: Pt,
    small_print: Pt,
    size: Pt,
    pub(super) height: Pt,
}

/// Small print: a little over the least.
const SMALL: Pt = Pt(6.5);

impl Footer {
    pub(super) fn plan(
        content: &Content,
        code: &Code,
        trial: &Trial,
        width: Pt,
        size: Pt,
    ) -> Result<Self, Wide> {
        let side = code.side();
        let languages = count(content.titles.len());
        let gap = size * 1.2;
        let beside = width - side - size * 0.4;
        let column = (beside - gap * (languages - 1.0)) / languages;
        let mut columns = Vec::new();
        let mut tallest = Pt::ZERO;
        for (scan, feet) in content.scans.iter().zip(&content.feet) {
            let scan = scan.as_ref().map(|scan| trial.set(scan, size, column)).transpose()?;
            let feet: Vec<Setting> =
                feet.iter().map(|line| trial.set(line, size, column)).collect::<Result<_, _>>()?;
            let height = scan.as_ref().map_or(Pt::ZERO, Setting::height)
                + feet.iter().map(Setting::height).sum::<Pt>();
            tallest = tallest.max(height);
            columns.push((scan, feet));
        }
        let address = trial.set(&content.address, size * 1.3, beside)?;
        let small = SMALL.max(LEAST_TYPE);
        // The printer's mark has its place at the trailing edge, after the edition.
        let width = if content.printers_mark { width - MARK_SPACE.0 - Pt(6.0) } else { width };
        let edition_measure = if content.notice.is_some() { width * 0.3 } else { width };
        let notice_measure = if content.edition.is_some() { width * 0.66 } else { width };
        let edition = content.edition.as_ref().map(|it| trial.set(it, small, edition_measure)).transpose()?;
        let notice = content.notice.as_ref().map(|it| trial.set(it, small, notice_measure)).transpose()?;
        let lines = [&edition, &notice].into_iter().flatten().map(Setting::height).fold(Pt::ZERO, Pt::max);
        let small_print = if content.printers_mark { lines.max(MARK_SPACE.1) } else { lines };
        let upper = side.max(tallest + address.height() + size * 0.3);
        let height = upper + small_print;
        Ok(Self {
            code: side,
            columns,
            column,
            gap,
            address,
            notice,
            edition,
            notice_measure,
            edition_measure,
            small_print,
            size,
            height,
        })
    }

    /// Draws the foot with its lower edge at the bottom of `area`.
    pub(super) fn draw(&self, content: &Content, code: &Code, pen: &mut Pen<'_>, area: Rect) {
        let top = area.bottom() - self.height;
        let small = self.small_print;
        let upper = self.height - small;
        let tile = Rect::new(area.x, top + (upper - self.code) / 2.0, self.code, self.code);
        pen.unmirrored("quiet zone", tile, Ink::PAPER, |at| {
            crate::path::rectangle(Rect::new(at.x, at.y, self.code, self.code))
        });
        pen.unmirrored("qr", tile, Ink::BLACK, |at| code.outline(at));
        pen.describe(content.code_alt.as_ref());
        let x0 = area.x + self.code + self.size * 0.4;
        let tallest = self.columns.iter().map(column_height).fold(Pt::ZERO, Pt::max);
        let block = tallest + self.size * 0.3 + self.address.height();
        let y0 = top + (upper - block) / 2.0;
        let mut x = x0;
        for ((scan, feet), (scan_set, feet_set)) in content.scans.iter().zip(&content.feet).zip(&self.columns)
        {
            let mut y = y0;
            if let (Some(scan), Some(setting)) = (scan, scan_set) {
                y += pen.words(scan, setting, Point { x, y }, self.column, Role::Foot, Ink::BLACK);
            }
            for (line, setting) in feet.iter().zip(feet_set) {
                y += pen.words(line, setting, Point { x, y }, self.column, Role::Foot, Ink::BLACK);
            }
            x += self.column + self.gap;
        }
        let beside = area.right() - x0;
        let at = Point { x: x0, y: y0 + tallest + self.size * 0.3 };
        pen.words(&content.address, &self.address, at, beside, Role::Foot, Ink::BLACK);
        let y = area.bottom() - small;
        if content.printers_mark {
            let space = mark_space(Point { x: area.right() - MARK_SPACE.0, y });
            pen.fill("printer's mark space", crate::path::rectangle(space), Ink::PAPER);
        }
        if let (Some(notice), Some(setting)) = (&content.notice, &self.notice) {
            let at = Point { x: area.x, y };
            pen.words(notice, setting, at, self.notice_measure, Role::Foot, Ink::BLACK);
        }
        if let (Some(edition), Some(setting)) = (&content.edition, &self.edition) {
            // At the trailing edge when the notice stands at the leading one.
            let end =
                if content.printers_mark { area.right() - MARK_SPACE.0 - Pt(6.0) } else { area.right() };
            let x = if self.notice.is_some() { end - setting.width } else { area.x };
            let measure = setting.width.max(Pt(1.0)).min(self.edition_measure);
            pen.words(edition, setting, Point { x, y }, measure, Role::Foot, Ink::BLACK);
        }
    }
}

fn column_height(column: &(Option<Setting>, Vec<Setting>)) -> Pt {
    column.0.as_ref().map_or(Pt::ZERO, Setting::height) + column.1.iter().map(Setting::height).sum::<Pt>()
}
