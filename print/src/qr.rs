//! QR codes: the level of error correction, the size, the quiet zone, the modules as one outline.

use qrcodegen::{QrCode, QrCodeEcc};

use crate::finding::{PreflightItem, PrintError};
use crate::job::{QrLevel, SheetJob, SheetKind};
use crate::path::PathOp;
use crate::unit::{Mm, Point, Pt, Rect};

/// White modules on every side (ISO/IEC 18004; the inventor's guide: 4 modules).
pub(crate) const QUIET: u8 = 4;

/// The smallest module that prints: 4 dots at 300 dpi are .33 mm (the inventor's guide, CHECK-VALUES "QR").
pub(crate) const SMALLEST_MODULE: Mm = Mm(0.33);

/// A module for a viewing distance. Ours: a telephone's camera sees about 0.84 m across at 0.6 m with some
/// 3,000 dots, so a thousandth of the distance is two dots a module, the least a decoder wants; and never less
/// than half a millimetre, which a worn lid or a cheap printer still shows.
pub(crate) fn module_for(distance: Mm) -> Mm {
    (distance / 1000.0).max(Mm(0.5))
}

/// A code ready to be placed.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Code {
    /// Rows of modules, true is dark.
    rows: Vec<Vec<bool>>,
    /// The level of error correction, as its letter.
    pub(crate) level: char,
    pub(crate) version: u8,
    pub(crate) module: Mm,
}

impl Code {
    /// A job's code, as large as it is scanned from afar: people step up to a label of one message, however far it is
    /// seen.
    pub(crate) fn of(job: &SheetJob) -> Result<Self, PrintError> {
        let distance = match job.sheet {
            SheetKind::RoundSticker => job.viewing_distance.min(SheetJob::arms_length()),
            _ => job.viewing_distance,
        };
        Self::new(&job.qr_url, distance, job.qr_level)
    }

    /// Encodes an address. The level is at least the one asked for, else M, and the highest that makes the code no
    /// larger.
    pub(crate) fn new(address: &str, distance: Mm, level: Option<QrLevel>) -> Result<Self, PrintError> {
        let least = match level {
            None | Some(QrLevel::Medium) => QrCodeEcc::Medium,
            Some(QrLevel::Quartile) => QrCodeEcc::Quartile,
            Some(QrLevel::High) => QrCodeEcc::High,
        };
        let code = QrCode::encode_text(address, least).map_err(|_| -> PrintError {
            PreflightItem::error(
                "qr-too-long",
                format!(
                    "the QR code's address has {} characters, more than a code holds; shorten “{}…”",
                    address.chars().count(),
                    address.chars().take(40).collect::<String>()
                ),
            )
            .arg("characters", address.chars().count())
            .into()
        })?;
        let level = match code.error_correction_level() {
            QrCodeEcc::Low => 'L',
            QrCodeEcc::Medium => 'M',
            QrCodeEcc::Quartile => 'Q',
            QrCodeEcc::High => 'H',
        };
        let rows =
            (0..code.size()).map(|y| (0..code.size()).map(|x| code.get_module(x, y)).collect()).collect();
        Ok(Self { rows, level, version: code.version().value(), module: module_for(distance) })
    }

    /// The same code with larger modules.
    pub(crate) fn enlarged(&self, by: f64) -> Self {
        Self { module: self.module * by, ..self.clone() }
    }

    fn modules(&self) -> f64 {
        crate::text::count(self.rows.len())
    }

    /// The side with the quiet zone.
    pub(crate) fn side(&self) -> Pt {
        (self.module * (self.modules() + 2.0 * f64::from(QUIET))).pt()
    }

    /// The dark modules as one outline, a rectangle for each stretch of a row, with the quiet zone's upper
    /// left corner at `at`.
    pub(crate) fn outline(&self, at: Point) -> Vec<PathOp> {
        let module = self.module.pt();
        let edge = |index: usize| module * (crate::text::count(index) + f64::from(QUIET));
        let mut path = Vec::new();
        for (y, row) in self.rows.iter().enumerate() {
            let mut start = None;
            for (x, dark) in row.iter().copied().chain([false]).enumerate() {
                match (dark, start) {
                    (true, None) => start = Some(x),
                    (false, Some(from)) => {
                        let left = at.x + edge(from);
                        let area = Rect::new(left, at.y + edge(y), at.x + edge(x) - left, module);
                        path.extend(crate::path::rectangle(area));
                        start = None;
                    }
                    _ => {}
                }
            }
        }
        path
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Byte capacities of versions 1 to 10 (ISO/IEC 18004, CHECK-VALUES "QR bytes v1-10"): the version is the
    /// smallest that holds the text at level M, and the level the highest that this version still holds.
    #[test]
    fn version_and_level_follow_the_capacities() {
        const M: [usize; 10] = [14, 26, 42, 62, 84, 106, 122, 152, 180, 213];
        const Q: [usize; 10] = [11, 20, 32, 46, 60, 74, 86, 108, 130, 151];
        const H: [usize; 10] = [7, 14, 24, 34, 44, 58, 64, 84, 98, 119];
        for length in 1..=213_usize {
            // Lower-case letters are bytes to the encoder.
            let code = Code::new(&"a".repeat(length), Mm(600.0), None).expect("it fits");
            let version = M.iter().position(|&holds| length <= holds).expect("a version");
            assert_eq!(usize::from(code.version), version + 1, "{length}");
            let level = if length <= H[version] {
                'H'
            } else if length <= Q[version] {
                'Q'
            } else {
                'M'
            };
            assert_eq!(code.level, level, "{length}");
        }
    }

    /// A level asked for is kept, at the cost of a larger code (capacities as above).
    #[test]
    fn the_level_asked_for_is_the_least() {
        for (length, level, version, got) in [
            (40, None, 3, 'M'),
            (40, Some(QrLevel::Medium), 3, 'M'),
            (40, Some(QrLevel::Quartile), 4, 'Q'),
            (40, Some(QrLevel::High), 5, 'H'),
            (7, Some(QrLevel::Medium), 1, 'H'),
        ] {
            let code = Code::new(&"a".repeat(length), Mm(600.0), level).expect("it fits");
            assert_eq!((code.version, code.level), (version, got), "{length} {level:?}");
        }
    }

    #[test]
    fn too_much_is_an_error() {
        let item = Code::new(&"a".repeat(4000), Mm(600.0), None).expect_err("too long").items.remove(0);
        assert_eq!(item.code, "qr-too-long");
        assert_eq!(item.args["characters"], "4000");
    }

    #[test]
    fn modules_grow_with_the_distance() {
        assert_eq!(module_for(Mm(300.0)), Mm(0.5));
        assert_eq!(module_for(Mm(2000.0)), Mm(2.0));
    }
}
