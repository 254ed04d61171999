//! The output profile: checked to be one for four inks on a press, and named from its own tables.

use super::Packer;
use crate::finding::{PreflightItem, PrintError};

/// A CMYK output profile.
pub(crate) struct Profile<'a> {
    pub(crate) bytes: &'a [u8],
    pub(super) deflated: Vec<u8>,
    pub(crate) description: String,
}

/// Name of the bundled profile's condition in the registry of characterizations.
const REGISTERED: &str = "CGATS TR 006";
const REGISTERED_MARK: &str = "TR 006";

impl<'a> Profile<'a> {
    /// Reads a profile's header and description (ICC.1, clauses 7.2 and 9.2).
    pub(crate) fn read(bytes: &'a [u8]) -> Result<Self, PrintError> {
        let text = |from: usize| {
            bytes.get(from..from + 4).map(String::from_utf8_lossy).unwrap_or_default().into_owned()
        };
        let refuse = |why: &'static str, what: String| -> PrintError {
            let clean =
                |text: String| text.trim_end().chars().filter(|c| c.is_ascii_graphic()).collect::<String>();
            let named = if why == "not-icc" { String::new() } else { description(bytes) };
            PreflightItem::error(
                "profile-unusable",
                format!(
                    "the colour profile can't be used: {what}; take the CMYK output profile (.icc) that the print \
                     shop names, or the bundled one"
                ),
            )
            .arg("why", why)
            .arg("name", named)
            .arg("class", clean(text(12)))
            .arg("space", clean(text(16)))
            .into()
        };
        if text(36) != "acsp" {
            return Err(refuse("not-icc", "it is not an ICC profile".to_owned()));
        }
        let size = bytes.get(0..4).and_then(|four| four.try_into().ok()).map(u32::from_be_bytes);
        if size.and_then(|size| usize::try_from(size).ok()) != Some(bytes.len()) {
            return Err(refuse("cut-short", "it is cut short".to_owned()));
        }
        let (class, space) = (text(12), text(16));
        if class != "prtr" || space != "CMYK" {
            let kind = match class.as_str() {
                "prtr" => "an output profile",
                "mntr" => "a display's profile",
                "scnr" => "a scanner's or camera's profile",
                "link" => "a link between two devices",
                "spac" => "a colour space",
                "abst" => "an effect",
                _ => "a table of named colours, or of an unknown kind",
            };
            let name = description(bytes);
            let what = format!("“{name}” is {kind} for {}, not an output profile for CMYK", space.trim_end());
            return Err(refuse("other-kind", what));
        }
        // ICC.1, 8.5: an output profile has tables both ways; without them no colour of the sheet means anything.
        if [b"A2B0", b"B2A0"].iter().any(|tag| find(bytes, tag).is_none()) {
            return Err(refuse("no-tables", "it has no colour tables".to_owned()));
        }
        Ok(Self { bytes, deflated: Packer::hard().deflate(bytes), description: description(bytes) })
    }

    pub(super) fn is_registered(&self) -> bool {
        self.description.contains(REGISTERED_MARK)
    }

    pub(super) fn identifier(&self) -> &str {
        if self.is_registered() { REGISTERED } else { "Custom" }
    }
}

/// A number of four bytes.
fn number(bytes: &[u8], at: usize) -> Option<usize> {
    let four = bytes.get(at..at.checked_add(4)?)?.try_into().ok()?;
    usize::try_from(u32::from_be_bytes(four)).ok()
}

/// Where a tag's data begin.
fn find(bytes: &[u8], tag: &[u8; 4]) -> Option<usize> {
    let count = number(bytes, 128)?;
    let entry = (0..count.min(200)).map(|i| 132 + i * 12).find(|&at| bytes.get(at..at + 4) == Some(tag))?;
    number(bytes, entry + 4)
}

/// The text of the `desc` tag: version 2's description or version 4's first localised string.
fn description(bytes: &[u8]) -> String {
    let read = || -> Option<String> {
        let at = find(bytes, b"desc")?;
        match bytes.get(at..at.checked_add(4)?)? {
            b"desc" => {
                let length = number(bytes, at + 8)?;
                let text = bytes.get(at + 12..at.checked_add(12)?.checked_add(length)?)?;
                Some(String::from_utf8_lossy(text).trim_end_matches('\0').to_owned())
            }
            b"mluc" => {
                let (length, offset) = (number(bytes, at + 20)?, number(bytes, at + 24)?);
                let start = at.checked_add(offset)?;
                let text = bytes.get(start..start.checked_add(length)?)?;
                let units = text.chunks_exact(2).map(|pair| match *pair {
                    [high, low] => u16::from_be_bytes([high, low]),
                    _ => 0,
                });
                Some(char::decode_utf16(units).map(|c| c.unwrap_or('?')).collect())
            }
            _ => None,
        }
    };
    let text = read().unwrap_or_default();
    let text: String = text.chars().filter(|c| !c.is_control()).take(120).collect();
    if text.is_empty() { "CMYK press condition".to_owned() } else { text }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::PRESS_PROFILE;

    #[test]
    fn the_bundled_profile_names_its_data() {
        let profile = Profile::read(PRESS_PROFILE).expect("the bundled profile");
        assert_eq!(profile.description, "Coated, from data of ANSI/CGATS/GRACoL TR 006-2007");
        assert_eq!(profile.identifier(), "CGATS TR 006");
    }

    #[test]
    fn other_files_are_refused_with_the_reason() {
        let mut rgb = PRESS_PROFILE.to_vec();
        rgb[16..20].copy_from_slice(b"RGB ");
        rgb[12..16].copy_from_slice(b"mntr");
        let mut bare = PRESS_PROFILE.to_vec();
        let table = bare.windows(4).position(|four| four == b"B2A0").expect("a table");
        bare[table..table + 4].copy_from_slice(b"none");
        for (bytes, why, words) in [
            (Vec::new(), "not-icc", "it is not an ICC profile"),
            (
                b"%PDF-1.6 and more of it, long enough to have a header".to_vec(),
                "not-icc",
                "it is not an ICC profile",
            ),
            (PRESS_PROFILE[..5000].to_vec(), "cut-short", "it is cut short"),
            (rgb, "other-kind", "is a display's profile for RGB, not an output profile for CMYK"),
            (crate::pdf::srgb::profile(), "other-kind", "“sRGB” is a display's profile for RGB"),
            (bare, "no-tables", "it has no colour tables"),
        ] {
            let item = Profile::read(&bytes).err().expect("refused").items.remove(0);
            assert_eq!((item.code.as_str(), item.args["why"].as_str()), ("profile-unusable", why));
            assert!(item.message.contains(words), "{}", item.message);
        }
    }
}
