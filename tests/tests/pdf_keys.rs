//! The keys, boxes, tags and characters of the demo's sheets, read by pikepdf and PDFium, which know nothing of the
//! program that wrote them: PDF/X-4 (ISO 15930-7) for the press, PDF/UA-1 (ISO 14289-1) for the web.
//!
//! No checker of whole conformance comes from the registries these tests may use, so what the two standards ask is
//! asked here key by key, from memory of them. Not checked by machine: whether alternate texts say what pictures show,
//! and whether reading order makes sense; the order is that of the job, and the tests hold it to that.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

use std::collections::BTreeSet;

use lidleaf_tests::{Sheet, Tool, sheet, web_sheet};
use serde_json::Value;

/// Every sheet, alone in each language and in all of them.
const SHEETS: &[(&str, &[&str])] = &[
    ("lid", &["en"]),
    ("lid", &["es"]),
    ("lid", &["ar"]),
    ("lid", &["en", "es", "ar"]),
    ("postcard", &["en"]),
    ("postcard", &["ar"]),
    ("postcard", &["ar", "en"]),
    ("postcard", &["en", "es", "ar"]),
    ("sign", &["en", "es", "ar"]),
    ("self-mailer", &["en", "es"]),
    ("self-mailer", &["ar", "en"]),
    ("handout", &["en"]),
    ("handout", &["en", "es", "ar"]),
];

fn list(value: &Value) -> &Vec<Value> {
    value.as_array().unwrap_or_else(|| panic!("no list: {value}"))
}

fn text(value: &Value) -> &str {
    value.as_str().unwrap_or_else(|| panic!("no text: {value}"))
}

/// What ISO 15930-7 asks of a PDF/X-4 file (from memory).
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn press_files_have_the_keys_of_pdf_x_4() {
    for (kind, languages) in SHEETS {
        let told = sheet(kind, languages).read();
        let at = format!("{kind} {languages:?}");
        // The version and its trail: metadata, document information, file identifier.
        let xmp = &told["xmp"];
        assert_eq!(xmp["{http://www.npes.org/pdfx/ns/id/}GTS_PDFXVersion"], "PDF/X-4", "{at}");
        for key in ["DocumentID", "VersionID", "RenditionClass"] {
            let name = format!("{{http://ns.adobe.com/xap/1.0/mm/}}{key}");
            assert!(!text(&xmp[&name]).is_empty(), "{at}: {key}");
        }
        let info = &told["info"];
        assert_eq!(xmp["{http://purl.org/dc/elements/1.1/}title"], info["/Title"], "{at}");
        assert_eq!(info["/Trapped"], "/False", "{at}");
        assert_eq!(xmp["{http://ns.adobe.com/pdf/1.3/}Trapped"], "False", "{at}");
        assert_eq!(info["/CreationDate"], "D:20261201000000Z", "{at}");
        assert_eq!(xmp["{http://ns.adobe.com/xap/1.0/}CreateDate"], "2026-12-01T00:00:00Z", "{at}");
        assert_eq!(list(&told["id"]).len(), 2, "{at}");
        assert!(["1.3", "1.4", "1.5", "1.6"].contains(&text(&told["version"])), "{at}");
        // One output intent, with its profile.
        let intents = list(&told["intents"]);
        assert_eq!(intents.len(), 1, "{at}");
        assert_eq!(intents[0]["subtype"], "/GTS_PDFX", "{at}");
        assert_eq!(intents[0]["profile_class"], "prtrCMYK", "{at}");
        assert_eq!(intents[0]["profile_inks"], 4, "{at}");
        assert_eq!(intents[0]["registry"], "http://www.color.org", "{at}");
        assert!(!text(&intents[0]["identifier"]).is_empty() && !text(&intents[0]["info"]).is_empty(), "{at}");
        // Nothing that a press cannot print, or that is not the same tomorrow.
        for absent in ["encrypted", "forms", "scripts"] {
            assert_eq!(told[absent], false, "{at}: {absent}");
        }
        assert_eq!(told["annotations"], Value::Array(Vec::new()), "{at}: annotations");
        assert_eq!(told["transparency"], Value::Array(Vec::new()), "{at}: transparency");
        for page in list(&told["pages"]) {
            let boxes = ["mediabox", "bleedbox", "trimbox"]
                .map(|name| list(&page[name]).iter().map(|n| n.as_f64().unwrap()).collect::<Vec<_>>());
            for pair in boxes.windows(2) {
                let (outer, inner) = (&pair[0], &pair[1]);
                let nested = outer[0] <= inner[0]
                    && outer[1] <= inner[1]
                    && inner[2] <= outer[2]
                    && inner[3] <= outer[3];
                assert!(nested, "{at}: {boxes:?}");
            }
            // Four inks and the colorant of every plate; no red, green, blue, and no grey of a screen.
            assert_eq!(page["separations"], serde_json::json!(["/All"]), "{at}");
            let operators = page["content"]["operators"].as_object().unwrap();
            for other in ["rg", "RG", "g", "G", "sh", "Do", "BI"] {
                assert!(!operators.contains_key(other), "{at}: {other}");
            }
            assert!(operators.contains_key("k"), "{at}");
            all_fonts_are_whole(page, &at);
        }
    }
}

fn all_fonts_are_whole(page: &Value, at: &str) {
    let fonts = list(&page["fonts"]);
    assert!(!fonts.is_empty(), "{at}");
    for font in fonts {
        assert_eq!(font["embedded"], true, "{at}: {font}");
        assert_eq!(font["to_unicode"], true, "{at}: {font}");
        // A subset's name: six capitals and a plus (ISO 32000-1, 9.6.4, from memory).
        assert_eq!(text(&font["name"]).find('+'), Some(7), "{at}: {font}");
    }
}

/// An element with what it inherits.
struct Tagged {
    kind: String,
    lang: String,
    parent: String,
    value: Value,
    /// Contents of its own, by page and number.
    contents: Vec<(u64, u64)>,
}

fn walk(value: &Value, lang: &str, parent: &str, found: &mut Vec<Tagged>) {
    let lang = value["lang"].as_str().unwrap_or(lang).to_owned();
    let kind = text(&value["type"]).to_owned();
    let kids = list(&value["kids"]);
    let contents =
        kids.iter().filter_map(|kid| Some((kid.get("page")?.as_u64()?, kid.get("mcid")?.as_u64()?)));
    found.push(Tagged {
        kind: kind.clone(),
        lang: lang.clone(),
        parent: parent.to_owned(),
        value: value.clone(),
        contents: contents.collect(),
    });
    for kid in kids.iter().filter(|kid| kid.get("type").is_some()) {
        assert_eq!(kid["parent_is_right"], true, "{kid}");
        walk(kid, &lang, &kind, found);
    }
}

fn tags(told: &Value) -> Vec<Tagged> {
    let mut found = Vec::new();
    walk(&told["tree"], text(&told["lang"]), "", &mut found);
    found
}

/// What ISO 14289-1 asks of the file, its pages and its tags (from memory).
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn web_files_have_the_keys_of_pdf_ua_1() {
    for (kind, languages) in SHEETS {
        let made = web_sheet(kind, languages);
        let told = made.read();
        let at = format!("{kind} {languages:?}");
        assert_eq!(told["xmp"]["{http://www.aiim.org/pdfua/ns/id/}part"], "1", "{at}");
        let title = text(&told["xmp"]["{http://purl.org/dc/elements/1.1/}title"]);
        assert!(!title.is_empty() && told["info"]["/Title"] == title, "{at}");
        assert_eq!(told["display_title"], true, "{at}");
        assert_eq!((&told["marked"], &told["suspects"]), (&Value::Bool(true), &Value::Bool(false)), "{at}");
        assert_eq!(told["lang"], languages[0], "{at}");
        assert_eq!(told["direction"] == "/R2L", languages[0] == "ar", "{at}");
        assert!(list(&told["intents"]).is_empty(), "{at}: no press is meant");
        for page in list(&told["pages"]) {
            assert_eq!(page["tabs"], "/S", "{at}");
            assert_eq!(page["spaces"]["/DefaultRGB"], "/ICCBased", "{at}");
            let content = &page["content"];
            assert_eq!(content["outside"], Value::Array(Vec::new()), "{at}: painted outside of any mark");
            assert_eq!(content["unclosed"], 0, "{at}");
            let operators = content["operators"].as_object().unwrap();
            for other in ["k", "K", "g", "G", "sh", "Do", "gs"] {
                assert!(!operators.contains_key(other), "{at}: {other}");
            }
            assert!(operators.contains_key("rg"), "{at}");
            all_fonts_are_whole(page, &at);
        }
        the_tree_reaches_everything(&told, &at);
        elements_hold_what_they_may(&told, &at);
        the_address_can_be_followed(&made, &told, &at);
        bookmarks_lead_to_every_language(&made, &told, &at);
    }
}

/// Each marked content is held by one element, and the way back from it leads there.
fn the_tree_reaches_everything(told: &Value, at: &str) {
    let mut reached = BTreeSet::new();
    let tags = tags(told);
    for tag in &tags {
        for content in &tag.contents {
            assert!(reached.insert(*content), "{at}: {content:?} is held twice");
            let page = &list(&told["pages"])[usize::try_from(content.0).unwrap()];
            let key = page["struct_parents"].to_string();
            let owner = &told["parents"][&key][usize::try_from(content.1).unwrap()];
            assert_eq!(*owner, tag.kind, "{at}: {content:?}");
        }
    }
    let mut marked = BTreeSet::new();
    for (number, page) in list(&told["pages"]).iter().enumerate() {
        for content in list(&page["content"]["marked"]) {
            match content.get("mcid").and_then(Value::as_u64) {
                Some(mcid) => assert!(marked.insert((number as u64, mcid)), "{at}: {mcid} is there twice"),
                None => assert!(["/Artifact", "/Span"].contains(&text(&content["tag"])), "{at}: {content}"),
            }
        }
    }
    assert!(marked.len() > 20, "{at}");
    assert_eq!(reached, marked, "{at}");
}

/// Pictures have words and a frame, lists hold items, headings skip no level, and each language is marked.
fn elements_hold_what_they_may(told: &Value, at: &str) {
    let mut level = 0;
    let (mut figures, mut items) = (0, 0);
    for tag in tags(told) {
        match tag.kind.as_str() {
            "/Figure" => {
                figures += 1;
                assert!(!text(&tag.value["alt"]).trim().is_empty(), "{at}");
                let frame = list(&tag.value["bbox"]);
                assert_eq!(frame.len(), 4, "{at}");
            }
            "/L" => assert!(list(&tag.value["kids"]).iter().all(|kid| kid["type"] == "/LI"), "{at}"),
            "/LI" => {
                items += 1;
                assert_eq!(tag.parent, "/L", "{at}");
                assert!(list(&tag.value["kids"]).iter().all(|kid| kid["type"] == "/LBody"), "{at}");
            }
            "/H1" | "/H2" => {
                let own = if tag.kind == "/H1" { 1 } else { 2 };
                assert!(own <= level + 1, "{at}: a heading of level {own} after {level}");
                level = own;
            }
            "/Document" | "/Sect" | "/P" | "/LBody" | "/Link" | "/Span" => {}
            other => panic!("{at}: what is {other}?"),
        }
    }
    assert!(figures > 5 && items > 10, "{at}: {figures} pictures, {items} items");
}

fn the_address_can_be_followed(made: &Sheet, told: &Value, at: &str) {
    let links = list(&told["annotations"]);
    // On the side with the advice, and wherever else a part of the sheet is looked at by itself.
    assert!(!links.is_empty(), "{at}: the address cannot be followed");
    for link in links {
        assert_eq!(link["subtype"], "/Link", "{at}");
        assert_eq!(link["uri"], made.job()["qr_url"], "{at}");
        assert_eq!(link["contents"], made.job()["languages"][0]["link_alt"], "{at}");
        assert_eq!(told["parents"][link["struct_parent"].to_string()], "/Link", "{at}");
    }
    let held: BTreeSet<u64> = tags(told)
        .iter()
        .filter(|tag| tag.kind == "/Link")
        .flat_map(|tag| list(&tag.value["kids"]).clone())
        .filter_map(|kid| kid.get("annotation")?.as_u64())
        .collect();
    assert_eq!(held.len(), links.len(), "{at}");
}

/// The table of contents: each language's title, below it the headings of its sections.
fn bookmarks_lead_to_every_language(made: &Sheet, told: &Value, at: &str) {
    let blocks = list(&made.job()["languages"]);
    let marks = list(&told["outline"]);
    assert_eq!(marks.len(), blocks.len(), "{at}");
    for (block, mark) in blocks.iter().zip(marks) {
        assert_eq!(mark["title"], block["title"], "{at}");
        let headings: Vec<&Value> =
            list(&block["sections"]).iter().map(|section| &section["heading"]).collect();
        let below: Vec<&Value> = list(&mark["below"]).iter().map(|below| &below["title"]).collect();
        assert_eq!(below, headings, "{at}");
    }
}

/// All that a language's block says, in the order in which it is read.
fn said(block: &Value) -> Vec<String> {
    let mut all = vec![text(&block["title"]).to_owned()];
    for section in list(&block["sections"]) {
        all.push(text(&section["heading"]).to_owned());
        all.extend(list(&section["lines"]).iter().map(|line| text(&line["text"]).to_owned()));
    }
    all.push(text(&block["scan"]).to_owned());
    all.extend(list(&block["footer"]).iter().map(|line| text(line).to_owned()));
    all
}

/// By the structure, Arabic is exact: every text whole, in reading order, marked as Arabic, and nothing else.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn arabic_is_exact_in_the_structure() {
    for (kind, languages) in SHEETS.iter().filter(|(_, languages)| languages.contains(&"ar")) {
        let made = web_sheet(kind, languages);
        let told = made.read();
        let mut stated = tags(&told)
            .iter()
            .filter(|tag| tag.lang == "ar")
            .filter_map(|tag| tag.value["actual"].as_str().map(|text| text.trim().to_owned()))
            // What is of no language of the job is read in the sheet's.
            .filter(|text| {
                ["jurisdiction", "print_notice", "edition"].iter().all(|field| made.job()[field] != *text)
            })
            .collect::<Vec<_>>()
            .into_iter();
        let block = list(&made.job()["languages"]).iter().find(|block| block["lang"] == "ar").unwrap();
        // An address side and a cover say the title and what the code is for again.
        let again = [text(&block["title"]), text(&block["scan"])];
        for line in said(block) {
            // Isolates order what is seen; they are not heard.
            let line = line.replace(['\u{2068}', '\u{2069}'], "");
            let skipped: Vec<String> = stated.by_ref().take_while(|text| *text != line).collect();
            assert!(
                stated.len() > 0 || said(block).last() == Some(&line),
                "{kind} {languages:?}: “{line}” is not stated where it is read, after {skipped:?}"
            );
            assert!(
                skipped.iter().all(|text| again.contains(&text.as_str())),
                "{kind} {languages:?}: {skipped:?} before “{line}”"
            );
        }
        let rest: Vec<String> = stated.collect();
        assert!(
            rest.iter().all(|text| again.contains(&text.as_str())),
            "{kind} {languages:?}: then {rest:?}"
        );
    }
}

/// By the structure, as poppler reads it, English and Spanish are exact and in reading order, language after language.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn english_and_spanish_are_read_in_order_by_the_structure() {
    for (kind, languages) in SHEETS {
        let made = web_sheet(kind, languages);
        let told = Tool::PDFINFO.text(&[&"-struct-text", &made.file()]);
        // Pieces of text stand in quotation marks, a line each; what they hold is not escaped.
        let read: String = told
            .lines()
            .map(str::trim)
            .filter_map(|line| line.strip_prefix('"')?.strip_suffix('"'))
            .collect();
        let mut from = 0;
        for block in list(&made.job()["languages"]).iter().filter(|block| block["lang"] != "ar") {
            for line in said(block) {
                let found = read[from..].find(&line);
                let Some(found) = found else {
                    panic!("{kind} {languages:?}: “{line}” does not follow in {}", &read[from..])
                };
                from += found + line.len();
            }
        }
    }
}

/// PDFium, the reader inside browsers, orders right-to-left text by itself: every Arabic text that stands on lines of its own
/// comes out in reading order, in both files. Where several languages share a row it takes the row for one line, so only
/// words are looked for there.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn browsers_read_arabic_in_order() {
    let plain =
        |text: &str| -> String { text.chars().filter(|c| c.is_alphabetic() || c.is_whitespace()).collect() };
    let words = |text: &str| plain(text).split_whitespace().map(str::to_owned).collect::<Vec<_>>();
    for (kind, languages) in SHEETS.iter().filter(|(_, languages)| languages.contains(&"ar")) {
        for (output, made) in [("press", sheet(kind, languages)), ("web", web_sheet(kind, languages))] {
            let told = made.read();
            let read: String = list(&told["text"]).iter().map(text).collect::<Vec<_>>().join("\n");
            let all: BTreeSet<String> = words(&read).into_iter().collect();
            let block = list(&made.job()["languages"]).iter().find(|block| block["lang"] == "ar").unwrap();
            let marked = |word: &str| word.chars().any(|c| ('\u{64b}'..='\u{65f}').contains(&c));
            for line in said(block) {
                for word in words(&line).iter().filter(|word| !marked(word)) {
                    assert!(all.contains(word), "{kind} {languages:?} {output}: {word} of {line} in {read}");
                }
            }
            if languages.len() == 1 {
                let joined = words(&read).join(" ");
                let whole = said(block).iter().filter(|line| joined.contains(&words(line).join(" "))).count();
                assert!(whole * 2 > said(block).len(), "{kind} {output}: {whole} of {}", said(block).len());
            }
        }
    }
}
