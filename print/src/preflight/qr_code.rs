//! The code's modules can be printed and seen.

use super::Sheet;
use crate::finding::PreflightItem;
use crate::qr::{QUIET, SMALLEST_MODULE};

/// A code of more modules than this needs a still hand. Ours: version 6, 41 modules.
const LARGEST_EASY_VERSION: u8 = 6;

pub(super) fn check(sheet: &Sheet<'_>) -> Vec<PreflightItem> {
    let code = sheet.code;
    let module = code.module;
    let mut found = Vec::new();
    if module < SMALLEST_MODULE {
        let message = format!(
            "the QR code's modules are {:.2} mm wide, under the {} mm that prints; use a shorter address",
            module.0, SMALLEST_MODULE.0
        );
        found.push(PreflightItem::error("qr-too-fine", message).arg("module", format!("{:.2}", module.0)));
    }
    if code.version > LARGEST_EASY_VERSION {
        let message = format!(
            "the QR code is of version {} ({} characters); a shorter address makes it coarser and easier to scan",
            code.version,
            sheet.job.qr_url.chars().count()
        );
        found.push(
            PreflightItem::warning("qr-dense", message)
                .arg("version", code.version)
                .arg("characters", sheet.job.qr_url.chars().count()),
        );
    }
    if found.is_empty() {
        let message = format!(
            "QR code: modules of {:.2} mm, version {}, error correction {}, quiet zone {QUIET} modules",
            module.0, code.version, code.level
        );
        found.push(
            PreflightItem::pass("qr-code", message)
                .arg("module", format!("{:.2}", module.0))
                .arg("version", code.version)
                .arg("level", code.level)
                .arg("quiet", QUIET),
        );
    }
    found
}
