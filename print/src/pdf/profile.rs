//! The output profile: checked to be one for four inks on a press, and named from its own tables.

use super::deflate;
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
        let refuse = |why: String| -> PrintError {
            PreflightItem::error(
                "profile-unusable",
                format!(
                    "the colour profile can't be used: {why}; take the CMYK output profile (.icc) that the print \
                     shop names, or the bundled one"
                ),
            )
            .arg("why", why)
            .into()
        };
        if text(36) != "acsp" {
            return Err(refuse("it is not an ICC profile".to_owned()));
        }
        let size = bytes.get(0..4).and_then(|four| four.try_into().ok()).map(u32::from_be_bytes);
        if size.and_then(|size| usize::try_from(size).ok()) != Some(bytes.len()) {
            return Err(refuse("it is cut short".to_owned()));
        }
        let (class, space) = (text(12), text(16));
        if class != "prtr" || space != "CMYK" {
            return Err(refuse(format!(
                "it is of class “{}” for {}, not an output profile for CMYK",
                class.trim_end(),
                space.trim_end()
            )));
        }
        Ok(Self { bytes, deflated: deflate(bytes), description: description(bytes) })
    }

    pub(super) fn is_registered(&self) -> bool {
        self.description.contains(REGISTERED_MARK)
    }

    pub(super) fn identifier(&self) -> &str {
        if self.is_registered() { REGISTERED } else { "Custom" }
    }
}

/// The text of the `desc` tag: version 2's description or version 4's first localised string.
fn description(bytes: &[u8]) -> String {
    let number = |at: usize| -> Option<usize> {
        let four = bytes.get(at..at.checked_add(4)?)?.try_into().ok()?;
        usize::try_from(u32::from_be_bytes(four)).ok()
    };
    let find = || -> Option<String> {
        let count = number(128)?;
        let entry =
            (0..count.min(200)).map(|i| 132 + i * 12).find(|&at| bytes.get(at..at + 4) == Some(b"desc"))?;
        let at = number(entry + 4)?;
        match bytes.get(at..at.checked_add(4)?)? {
            b"desc" => {
                let length = number(at + 8)?;
                let text = bytes.get(at + 12..at.checked_add(12)?.checked_add(length)?)?;
                Some(String::from_utf8_lossy(text).trim_end_matches('\0').to_owned())
            }
            b"mluc" => {
                let (length, offset) = (number(at + 20)?, number(at + 24)?);
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
    let text = find().unwrap_or_default();
    let text: String = text.chars().filter(|c| !c.is_control()).collect();
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
        for (bytes, why) in [
            (Vec::new(), "it is not an ICC profile"),
            (b"%PDF-1.6 and more of it, long enough to have a header".to_vec(), "it is not an ICC profile"),
            (PRESS_PROFILE[..5000].to_vec(), "it is cut short"),
            (rgb, "it is of class “mntr” for RGB, not an output profile for CMYK"),
        ] {
            let item = Profile::read(&bytes).err().expect("refused").items.remove(0);
            assert_eq!((item.code.as_str(), item.args["why"].as_str()), ("profile-unusable", why));
        }
    }
}
