//! What preflight found, in a reader's language: the app and the command line both come through here.

use locales::{Messages, endonym};
use print::{PreflightItem, text_place};

use crate::finding::{filled, said};

/// A finding in words: its message, with places, fields and kinds named in the same language. Where there are no words
/// for it, the English that `print` gives.
#[must_use]
pub fn preflight_words(item: &PreflightItem, messages: &Messages) -> String {
    let key = format!("preflight-{}", item.code);
    filled(messages, &key, &item.args, |name, value| named(name, value, messages))
        .unwrap_or_else(|| item.message.clone())
}

/// An argument's value in words, where it is a code.
fn named(argument: &str, value: &str, messages: &Messages) -> Option<String> {
    let say = |key: &str| said(messages, key);
    match argument {
        "place" | "field" => place(value, messages),
        "lang" => Some(endonym(value)),
        "zone" => say(&format!("postal-zone-{value}")),
        "what" => value.strip_prefix("thing:").and_then(|thing| say(&format!("drawn-{thing}"))),
        "class" => say(&format!("profile-class-{value}")).or_else(|| say("profile-class-other")),
        "sheet" => say(&format!("sheet-{value}")),
        _ => None,
    }
}

/// One of a sheet's texts: "Line 3 of section 2 (Español)".
fn place(code: &str, messages: &Messages) -> Option<String> {
    let (kind, parts) = text_place(code)?;
    filled(messages, &format!("sheet-text-{kind}"), parts, |name, value| {
        (name == "lang").then(|| endonym(value))
    })
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use print::{PREFLIGHT_CODES, Severity, TEXT_PLACES};

    use super::*;

    fn messages(tag: &str) -> Messages {
        locales::bundled(&tag.parse().unwrap()).isolating(false)
    }

    fn item(code: &str, args: &[(&str, &str)]) -> PreflightItem {
        let args: BTreeMap<String, String> =
            args.iter().map(|(name, value)| ((*name).to_owned(), (*value).to_owned())).collect();
        PreflightItem {
            code: code.to_owned(),
            severity: Severity::Error,
            place: None,
            args,
            message: "English".to_owned(),
        }
    }

    #[test]
    fn codes_become_words_of_the_language() {
        let empty = item("text-empty", &[("place", "line:ar:2:3")]);
        assert_eq!(
            preflight_words(&empty, &messages("en")),
            "Line 3 of section 2 (العربية) has no words. Write some."
        );
        assert!(preflight_words(&empty, &messages("es")).starts_with("Línea 3 de la sección 2 (العربية)"));
        let twice = |lang: &str| preflight_words(&item("language-twice", &[("lang", lang)]), &messages("en"));
        assert_eq!(twice("es"), "The language “Español” is there twice. Take one out.");
        assert!(twice("no tag").contains("“no tag”"));
        let zone = item("postal-zone", &[("what", "thing:code"), ("zone", "barcode-clear")]);
        let words = preflight_words(&zone, &messages("es"));
        assert!(
            words.contains("código QR") && !words.contains("thing") && !words.contains("clear"),
            "{words}"
        );
        let profile = [("why", "other-kind"), ("name", "sRGB"), ("class", "mntr"), ("space", "RGB")];
        let words = preflight_words(&item("profile-unusable", &profile), &messages("en"));
        assert!(
            words.contains("“sRGB” is not an output profile for CMYK: it is for a display, in RGB"),
            "{words}"
        );
        let text = item("postal-zone", &[("what", "Bring it back"), ("zone", "read-area")]);
        assert!(preflight_words(&text, &messages("en")).contains("Bring it back"));
        assert_eq!(preflight_words(&item("no-such-code", &[]), &messages("en")), "English");
    }

    /// Every code has words in every language, and none of them shows a code of a place, field, zone or thing.
    #[test]
    fn no_message_shows_a_code() {
        for language in locales::supported() {
            let messages = messages(language.tag);
            for (code, names) in PREFLIGHT_CODES {
                let args: Vec<(&str, &str)> = names
                    .iter()
                    .map(|name| match *name {
                        "place" => (*name, "heading:es:2"),
                        "field" => (*name, "return-address:1"),
                        "zone" => (*name, "read-area"),
                        "what" => (*name, "thing:picture"),
                        "sheet" => (*name, "postcard-mailer"),
                        other => (other, "7"),
                    })
                    .collect();
                let words = preflight_words(&item(code, &args), &messages);
                assert_ne!(words, "English", "{code} in {}", language.tag);
                for shown in ["heading:es", "return-address", "read-area", "thing:picture", "postcard-mailer"]
                {
                    assert!(!words.contains(shown), "{code} in {}: {words}", language.tag);
                }
            }
            for (kind, _) in TEXT_PLACES {
                assert!(messages.find(&format!("sheet-text-{kind}"), &locales::args!()).is_some(), "{kind}");
            }
        }
    }
}
