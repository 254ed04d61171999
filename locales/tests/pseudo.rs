//! The two made-up languages are complete, parse, and do what they are for.

use locales::check::{self, Fault, FaultKind, pseudo};
use locales::{Direction, Lang, Messages, args, sources, t};

fn made(change: fn(&str) -> String) -> Vec<(&'static str, String)> {
    sources("en").iter().map(|(name, text)| (*name, change(text))).collect()
}

fn faults(tag: &str, files: &[(&str, String)]) -> Vec<Fault> {
    let files: Vec<(&str, &str)> = files.iter().map(|(name, text)| (*name, text.as_str())).collect();
    let mut faults = check::language(tag, &files, sources("en"));
    // Overrides are what the right-to-left one is made of; Arabic's plural forms are not in English.
    faults.retain(|fault| {
        !matches!(
            fault.kind,
            FaultKind::Invisible(_) | FaultKind::PluralForms(_) | FaultKind::PluralFormUnused(_)
        )
    });
    faults
}

#[test]
fn both_have_every_message_with_its_placeholders() {
    for (tag, change) in
        [(pseudo::LONG, pseudo::long as fn(&str) -> String), (pseudo::RIGHT_TO_LEFT, pseudo::right_to_left)]
    {
        assert_eq!(faults(tag, &made(change)), [], "{tag}");
    }
}

#[test]
fn the_long_language_is_longer_and_accented() {
    let files = made(pseudo::long);
    let texts: Vec<&str> = files.iter().map(|(_, text)| text.as_str()).collect();
    let (long, problems) = Messages::from_ftl(pseudo::LONG.parse().unwrap(), &texts);
    assert_eq!(problems, []);
    let english = locales::bundled(&Lang::default());
    let mut checked = 0;
    for (key, _) in check::english().iter().filter(|(_, entry)| entry.placeholders.is_empty()) {
        let (short, long) = (t!(english, key), t!(long, key));
        let letters = short.chars().filter(|c| c.is_alphabetic()).count();
        if letters >= 4 {
            let ratio = (long.chars().count() * 100) / short.chars().count();
            assert!((115..=260).contains(&ratio), "{key}: {ratio} percent\n{short}\n{long}");
            checked += 1;
        }
    }
    assert!(checked > 400, "{checked}");
    assert_eq!(t!(long.isolating(false), "assumed-line", fact = "Lid", value = "on"), "Lid: on");
}

#[test]
fn the_right_to_left_language_runs_right_to_left_and_keeps_values() {
    let lang: Lang = pseudo::RIGHT_TO_LEFT.parse().unwrap();
    assert_eq!(lang.direction(), Direction::RightToLeft);
    let (messages, problems) = Messages::from_ftl(
        lang,
        &[&pseudo::right_to_left("a = Open until { $time }\nb = { $n ->\n [one] one\n *[other] more\n }\n")],
    );
    assert_eq!(problems, []);
    assert_eq!(
        t!(messages, "a", time = "5:00 PM"),
        "\u{200f}\u{202e}Open\u{202c}\u{200f} \u{200f}\u{202e}until\u{202c}\u{200f} \u{2068}5:00 PM\u{2069}"
    );
    assert_eq!(messages.t("b", &args!(n = 5)), "\u{200f}\u{202e}more\u{202c}\u{200f}");
}
