//! What a check found, in a reader's language: the app and the command line both come through here.

use locales::{Args, Messages, Value, endonym};

/// A message with the values that a finding, an edit or a problem carries: languages and facts by their names, anything
/// else as it is. Nothing where there is no such message.
pub fn finding_words(
    messages: &Messages,
    key: &str,
    args: impl IntoIterator<Item = (impl AsRef<str>, impl AsRef<str>)>,
) -> Option<String> {
    filled(messages, key, args, |name, value| match name {
        // What their speakers call them.
        "language" => Some(endonym(value)),
        // A fact that does not exist has no name.
        "fact" => said(messages, &format!("fact-{value}")),
        _ => None,
    })
}

/// A message with values by name, each as `words` has it, or as it is where that has nothing.
pub(crate) fn filled(
    messages: &Messages,
    key: &str,
    args: impl IntoIterator<Item = (impl AsRef<str>, impl AsRef<str>)>,
    words: impl Fn(&str, &str) -> Option<String>,
) -> Option<String> {
    let mut values = Args::new();
    for (name, value) in args {
        let (name, value) = (name.as_ref(), value.as_ref());
        let value = words(name, value).unwrap_or_else(|| value.to_owned());
        values.set(name.to_owned(), Value::from(value));
    }
    messages.find(key, &values).map(|found| found.text)
}

/// A message that takes no values, if there is one.
pub(crate) fn said(messages: &Messages, key: &str) -> Option<String> {
    messages.find(key, &Args::new()).map(|found| found.text)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn languages_and_facts_have_names_and_what_is_unknown_stays_as_it_is() {
        let messages = locales::bundled(&"en".parse().unwrap()).isolating(false);
        let say = |key: &str, args: &[(&str, &str)]| finding_words(&messages, key, args.iter().copied());
        let broken = |why: &str, fact: &str| {
            say("finding-broken-condition", &[("problem", why), ("value", "2"), ("fact", fact)])
        };
        assert_eq!(
            broken("no-unit", "middle-side").as_deref(),
            Some("“2” for “Second longest side” has no unit.")
        );
        assert_eq!(broken("unknown-fact", "colr").as_deref(), Some("There is no fact “colr”."));
        assert_eq!(
            say("fix-add-language", &[("language", "ar")]).as_deref(),
            Some("Publish in “العربية” too")
        );
        assert_eq!(say("no-such-message", &[]), None);
    }
}
