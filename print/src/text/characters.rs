//! Characters that are refused before anything is laid out.

use crate::finding::PreflightItem;
use crate::place::english;

/// Why a character can't be printed, as a word for the message's code.
fn fault(c: char) -> Option<&'static str> {
    match c {
        // Explicit directional embeddings and overrides: they can show words in an order that is not written.
        // Isolates (U+2066 to U+2069) and marks (U+200E, U+200F, U+061C) only separate, and are taken.
        '\u{202A}'..='\u{202E}' => Some("bidi"),
        // Control characters, line and paragraph separators: a line is a line of its own in the job.
        c if c.is_control() => Some("control"),
        '\u{2028}' | '\u{2029}' => Some("control"),
        // Invisible characters that carry nothing printable.
        '\u{00AD}' | '\u{FEFF}' | '\u{FFF9}'..='\u{FFFB}' | '\u{E0000}'..='\u{E007F}' => Some("invisible"),
        // What is left of text that was decoded wrongly, private characters, and noncharacters.
        '\u{FFFD}' | '\u{FFFC}' | '\u{E000}'..='\u{F8FF}' | '\u{F0000}'..='\u{10FFFF}' => {
            Some("no-character")
        }
        c if u32::from(c) & 0xFFFE == 0xFFFE => Some("no-character"),
        _ => None,
    }
}

/// One error for the first bad character of a text; `place` says which text it is.
pub(crate) fn refuse_bad_characters(text: &str, place: &str) -> Option<PreflightItem> {
    let (position, c, why) = text.chars().enumerate().find_map(|(at, c)| fault(c).map(|why| (at, c, why)))?;
    let code = format!("U+{:04X}", u32::from(c));
    let what = match why {
        "bidi" => "a character that overrides the direction of writing",
        "control" => "a control character",
        "invisible" => "a character that can't be seen",
        _ => "a character that stands for nothing",
    };
    let shown: String = text.chars().filter(|&c| fault(c).is_none()).take(60).collect();
    Some(
        PreflightItem::error(
            "bad-character",
            format!(
                "{}: “{shown}” holds {what} ({code}) as character {}; delete it and type the words again",
                english(place),
                position + 1
            ),
        )
        .arg("place", place)
        .arg("text", shown)
        .arg("codepoint", code)
        .arg("position", position + 1)
        .arg("kind", why),
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bad_characters_are_named_with_their_place() {
        for (text, code, kind) in [
            ("a\u{202E}b", "U+202E", "bidi"),
            ("a\u{202A}b", "U+202A", "bidi"),
            ("line\nbreak", "U+000A", "control"),
            ("tab\there", "U+0009", "control"),
            ("nul\0", "U+0000", "control"),
            ("soft\u{AD}hyphen", "U+00AD", "invisible"),
            ("\u{FEFF}mark", "U+FEFF", "invisible"),
            ("wrong \u{FFFD}", "U+FFFD", "no-character"),
            ("private \u{E000}", "U+E000", "no-character"),
            ("none \u{1FFFE}", "U+1FFFE", "no-character"),
        ] {
            let item = refuse_bad_characters(text, "title:en").expect(code);
            assert_eq!(item.args["codepoint"], code);
            assert_eq!(item.args["kind"], kind);
            assert!(item.message.starts_with("en, title: “"), "{}", item.message);
        }
    }

    #[test]
    fn words_marks_and_isolates_are_taken() {
        for text in
            ["Cartón y papel", "علب \u{2066}555-0142\u{2069}", "a\u{200F}b", "می\u{200C}خواهم", "日本 🥫"]
        {
            assert_eq!(refuse_bad_characters(text, "x"), None, "{text}");
        }
    }
}
