//! The message files against each other, against the code that asks for messages, and against the
//! ids of the data that messages are named after.

#![expect(clippy::unwrap_used, clippy::panic, reason = "helpers of tests may stop a test")]

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

use guide_data::standard::{
    CATEGORIES, CHANNEL_KINDS, COMPARISONS, CONTAINER_KINDS, CONTAINER_RULES, PERIODS, PREPARATIONS, REASONS,
    STREAM_KINDS,
};
use guide_data::{Catalog, FACTS, FINDING_CODES, FIX_CODES, FactKind, HAZARDS, PARTS, Tier};
use locales::check::{self, Fault, FaultKind, Literal, Scan};
use locales::supported;

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap()
}

fn shown(faults: &[Fault]) -> String {
    faults.iter().map(|fault| format!("\n{fault}")).collect()
}

fn source(path: &str) -> String {
    fs::read_to_string(root().join(path)).unwrap_or_else(|error| panic!("{path}: {error}"))
}

/// The codes and argument names of findings, read from the files that make them.
fn findings() -> BTreeMap<String, BTreeSet<String>> {
    let mut found: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    for entry in fs::read_dir(root().join("guide-data/src/findings")).unwrap() {
        let text = fs::read_to_string(entry.unwrap().path()).unwrap();
        let text = text.split("#[cfg(test)]").next().unwrap_or_default();
        let all = check::literals(text);
        let is_code = |l: &&Literal| {
            let call = l.before.rsplit("Finding::new(").next().unwrap_or_default();
            l.before.contains("Finding::new(") && !call.contains('"') && call.ends_with(',')
        };
        let mut args: BTreeSet<String> =
            all.iter().filter(|l| l.before.ends_with(".arg(")).map(|l| l.text.clone()).collect();
        // `Finding::new` names the place, `Finding::rules` the rules.
        args.extend(["id".to_owned(), "field".to_owned()]);
        if text.contains(".rules(") {
            args.insert("rules".to_owned());
        }
        for code in all.iter().filter(is_code) {
            found.entry(code.text.clone()).or_default().extend(args.clone());
        }
    }
    let codes: Vec<&str> = found.keys().map(String::as_str).collect();
    let mut known = FINDING_CODES.to_vec();
    known.sort_unstable();
    assert_eq!(codes, known, "the codes read from the sources are those of the table");
    found
}

/// The codes and argument names of the preflight, read from its table.
fn preflight() -> BTreeMap<String, BTreeSet<String>> {
    let text = source("print/src/finding.rs");
    let table =
        text.split("pub const PREFLIGHT_CODES").nth(1).and_then(|rest| rest.split("];\n").next()).unwrap();
    let mut found: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    let mut code = String::new();
    for literal in check::literals(table) {
        if literal.before.ends_with('(') {
            code.clone_from(&literal.text);
            found.insert(literal.text, BTreeSet::new());
        } else if let Some(args) = found.get_mut(&code) {
            args.insert(literal.text);
        }
    }
    assert!(found.len() > 30, "the reading of the preflight's table has gone blind: {found:?}");
    found
}

/// Every key that an id of the data stands for, with the place the id comes from.
fn data() -> BTreeMap<String, String> {
    let mut keys = BTreeMap::new();
    let mut add = |prefix: &str, ids: &[&str], place: &str| {
        for id in ids {
            keys.insert(format!("{prefix}{id}"), place.to_owned());
        }
    };
    for fact in FACTS {
        add("fact-", &[fact.id], "guide-data/src/facts.rs");
        add("ask-", &[fact.id], "guide-data/src/facts.rs");
        if let FactKind::Choice(values) = fact.kind {
            add(&format!("value-{}-", fact.id), values, "guide-data/src/facts.rs");
        }
    }
    let standard = "guide-data/src/standard.rs";
    add("caution-", HAZARDS.get(1..).unwrap(), "guide-data/src/facts.rs");
    add("prep-", PREPARATIONS, standard);
    add("reason-", REASONS, standard);
    add("category-", CATEGORIES, standard);
    add("channel-kind-", CHANNEL_KINDS, standard);
    add("stream-kind-", STREAM_KINDS, standard);
    add("container-kind-", CONTAINER_KINDS, standard);
    add("container-rule-", CONTAINER_RULES, standard);
    add("container-rule-kind-", CONTAINER_RULES, standard);
    add("per-", PERIODS, standard);
    for (like, ..) in COMPARISONS {
        add("like-", &[like], standard);
    }
    add("part-", PARTS, "guide-data/src/catalog.rs");
    add("tier-", &Tier::ALL.map(Tier::code), "guide-data/src/program.rs");
    add("verdict-", &["yes", "no", "elsewhere", "unlisted", "undecided"], "guide-data/src/guide.rs");
    for item in &Catalog::standard().unwrap().items {
        add("item-", &[&item.id], "guide-data/data/catalog.json");
    }
    add("finding-", FINDING_CODES, "guide-data/src/findings/mod.rs");
    add("fix-", &FIX_CODES.iter().map(|(code, _)| *code).collect::<Vec<_>>(), "guide-data/src/fix.rs");
    for code in preflight().keys() {
        add("preflight-", &[code], "print/src/finding.rs");
    }
    keys
}

fn scan() -> Scan {
    let mut scan = Scan::default();
    for folder in ["app/src", "cli/src", "locales/src"] {
        scan.add_folder(root(), &root().join(folder)).unwrap();
    }
    scan
}

/// Every key both ways, placeholders, markup, plural forms, styles: see `check::FaultKind`.
#[test]
fn the_languages_are_complete_and_say_the_same() {
    let faults = check::languages();
    assert!(faults.is_empty(), "{}", shown(&faults));
    assert!(check::english().len() > 500);
}

#[test]
fn every_key_asked_for_is_defined_and_every_definition_is_used() {
    let scan = scan();
    assert!(scan.asked.len() > 100, "the scan has gone blind: {}", scan.asked.len());
    let faults = check::usage(&scan, &data());
    assert!(faults.is_empty(), "{}", shown(&faults));
}

/// In families named after ids, a message without its id is left over from an id that is gone.
#[test]
fn no_message_is_left_over_from_an_id_that_is_gone() {
    let mut data = data();
    for extra in
        ["caution-local", "caution-title", "verdict-closed", "item-part", "fact-value", "preflight-title"]
    {
        data.insert(extra.to_owned(), String::new());
    }
    for extra in ["ask-contact", "ask-title"] {
        data.insert(extra.to_owned(), String::new());
    }
    let families = [
        "fact-",
        "ask-",
        "value-",
        "caution-",
        "prep-",
        "reason-",
        "category-",
        "channel-kind-",
        "stream-kind-",
        "container-kind-",
        "container-rule-",
        "per-",
        "like-",
        "part-",
        "tier-",
        "verdict-",
        "item-",
        "finding-",
        "fix-",
        "preflight-",
    ];
    let faults: Vec<Fault> = families.iter().flat_map(|prefix| check::family(prefix, &data)).collect();
    assert!(faults.is_empty(), "{}", shown(&faults));
}

#[test]
fn findings_fixes_and_preflight_are_given_every_value_their_words_need() {
    let mut lacking = Vec::new();
    let english = check::english();
    let owned = |names: &[&str]| names.iter().map(|&name| name.to_owned()).collect();
    let fixes = FIX_CODES.iter().map(|(code, names)| ((*code).to_owned(), owned(names))).collect();
    for (prefix, codes) in [("finding-", findings()), ("fix-", fixes), ("preflight-", preflight())] {
        for (code, given) in codes {
            for key in [format!("{prefix}{code}"), format!("{prefix}{code}.hint")] {
                let needed = english.get(&key).map(|entry| entry.placeholders.clone()).unwrap_or_default();
                lacking.extend(needed.difference(&given).map(|name| format!("{key}: ${name}")));
            }
        }
    }
    assert_eq!(lacking, Vec::<String>::new());
}

/// Adding a language is adding a folder with the same files as English.
#[test]
fn every_language_has_the_files_of_english() {
    let files = |tag: &str| locales::sources(tag).iter().map(|(name, _)| *name).collect::<Vec<_>>();
    for language in supported() {
        assert_eq!(files(language.tag), files("en"), "{}", language.tag);
        assert!(!language.endonym.is_empty());
    }
}

#[test]
fn a_translation_is_unreviewed_until_somebody_signs_it_off() {
    for language in supported().iter().filter(|language| language.tag != "en") {
        assert!(language.review().needs_notice(), "{} is signed off: name it here", language.tag);
    }
    assert!(!supported()[0].review().needs_notice());
    // The mark notices a change of words, not of comments.
    let mark = locales::source_mark("a = A\n");
    assert_eq!(mark, locales::source_mark("# about a\n\na = A\n"));
    assert_ne!(mark, locales::source_mark("a = B\n"));
}

fn faults_of(tag: &str, text: &str, english: &str) -> Vec<FaultKind> {
    check::language(tag, &[("x", text)], &[("x", english)]).into_iter().map(|fault| fault.kind).collect()
}

/// Each fault is found, so that a clean result means something.
#[test]
fn each_kind_of_fault_is_found() {
    let plural = |forms: &[&str]| {
        let forms: String = forms.iter().map(|form| format!("    [{form}] x\n")).collect();
        format!("a = {{ $n ->\n{forms}   *[other] x\n  }}\n")
    };
    assert_eq!(faults_of("es", "a = A { $n }\n", "a = A { $n }\n"), []);
    assert_eq!(faults_of("es", "b = B\n", "a = A\n"), [FaultKind::Untranslated, FaultKind::NotInEnglish]);
    assert_eq!(faults_of("es", "a = A\n", "a = A\n .hint = H\n"), [FaultKind::Untranslated]);
    assert_eq!(faults_of("es", "a = A\na = B\n", "a = A\n"), [FaultKind::Duplicate]);
    assert_eq!(
        faults_of("es", "a = { $y }\n", "a = { $x }\n"),
        [FaultKind::Placeholders { english: vec!["x".to_owned()], here: vec!["y".to_owned()] }]
    );
    assert_eq!(faults_of("es", "a = <b>A</b>\n", "a = A\n"), [FaultKind::Markup]);
    assert_eq!(faults_of("ar", "a = A\u{200f}\n", "a = A\n"), [FaultKind::Invisible('\u{200f}')]);
    assert_eq!(
        faults_of("ar", &plural(&["one"]), &plural(&["one"])),
        [FaultKind::PluralForms(vec!["zero", "two", "few", "many"])]
    );
    assert_eq!(
        faults_of("es", &plural(&["one", "few"]), &plural(&["one"])),
        [FaultKind::PluralFormUnused("few".to_owned())]
    );
    assert_eq!(faults_of("es", &plural(&["one"]), &plural(&["one"])), []);
    assert_eq!(faults_of("es", "aB = A\n", "aB = A\n"), [FaultKind::KeyStyle]);
    assert_eq!(
        faults_of("es", "a = { $aB }\n", "a = { $aB }\n"),
        [FaultKind::PlaceholderStyle("aB".to_owned())]
    );
    assert_eq!(faults_of("es", "a = { b }\n", "a = A\n"), [FaultKind::Reference("\"b\"".to_owned())]);
    assert_eq!(
        faults_of("es", "a = { NUMBER($n) }\n", "a = { $n }\n"),
        [
            FaultKind::Placeholders { english: vec!["n".to_owned()], here: Vec::new() },
            FaultKind::Reference("the function NUMBER()".to_owned())
        ]
    );
    let unreadable = check::language("es", &[("x", "a = A\nb = { $\n")], &[("x", "a = A\n")]);
    assert_eq!(shown(&unreadable), "\nes/x, line 2: cannot be read near \"b = { $\"; correct it");
}

#[test]
fn a_key_nobody_defined_and_a_definition_nobody_uses_are_found() {
    let mut scan = scan();
    scan.add("made/up.rs", "fn f() { t!(m, \"no-such-key\"); }");
    let faults = check::usage(&scan, &data());
    assert_eq!(
        shown(&faults),
        "\nmade/up.rs, line 1: asks for \"no-such-key\", which no message file defines; add it"
    );
    let mut scan = Scan::default();
    scan.add("made/up.rs", "fn f() { t!(m, \"assumed-line\", fact = 1); }");
    let faults = check::usage(&scan, &BTreeMap::new());
    assert!(
        shown(&faults)
            .contains("made/up.rs, line 1: asks for \"assumed-line\" without its value $value; give it")
    );
    let faults = check::usage(&Scan::default(), &BTreeMap::new());
    assert!(faults.iter().any(|f| f.key == "search-label" && f.kind == FaultKind::Unused));
}
