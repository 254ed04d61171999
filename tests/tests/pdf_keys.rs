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

use lidleaf_tests::sheets::{Asked, HANDOUT, MAILER, STICKER, Use, asked};
use lidleaf_tests::{Said, Sheet, Tool, judge};
use serde_json::Value;

/// Every sheet's file for a use.
fn of(output: Use) -> Vec<Asked<'static>> {
    asked().into_iter().filter(|asked| asked.output == output).collect()
}

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
    judge(&of(Use::Press), |_, made| {
        let told = made.read();
        // The version and its trail: metadata, document information, file identifier.
        let xmp = &told["xmp"];
        assert_eq!(xmp["{http://www.npes.org/pdfx/ns/id/}GTS_PDFXVersion"], "PDF/X-4");
        for key in ["DocumentID", "VersionID", "RenditionClass"] {
            let name = format!("{{http://ns.adobe.com/xap/1.0/mm/}}{key}");
            assert!(!text(&xmp[&name]).is_empty(), "{key}");
        }
        let info = &told["info"];
        assert_eq!(xmp["{http://purl.org/dc/elements/1.1/}title"], info["/Title"]);
        assert_eq!(info["/Trapped"], "/False");
        assert_eq!(xmp["{http://ns.adobe.com/pdf/1.3/}Trapped"], "False");
        assert_eq!(info["/CreationDate"], "D:20261201000000Z");
        assert_eq!(xmp["{http://ns.adobe.com/xap/1.0/}CreateDate"], "2026-12-01T00:00:00Z");
        assert_eq!(list(&told["id"]).len(), 2);
        assert!(["1.3", "1.4", "1.5", "1.6"].contains(&text(&told["version"])));
        // One output intent, with its profile.
        let intents = list(&told["intents"]);
        assert_eq!(intents.len(), 1);
        assert_eq!(intents[0]["subtype"], "/GTS_PDFX");
        assert_eq!(intents[0]["profile_class"], "prtrCMYK");
        assert_eq!(intents[0]["profile_inks"], 4);
        assert_eq!(intents[0]["registry"], "http://www.color.org");
        assert!(!text(&intents[0]["identifier"]).is_empty() && !text(&intents[0]["info"]).is_empty());
        // Nothing that a press cannot print, or that is not the same tomorrow.
        for absent in ["encrypted", "forms", "scripts"] {
            assert_eq!(told[absent], false, "{absent}");
        }
        assert_eq!(told["annotations"], Value::Array(Vec::new()), "annotations");
        assert_eq!(told["transparency"], Value::Array(Vec::new()), "transparency");
        for page in list(&told["pages"]) {
            let boxes = ["mediabox", "bleedbox", "trimbox"]
                .map(|name| list(&page[name]).iter().map(|n| n.as_f64().unwrap()).collect::<Vec<_>>());
            for pair in boxes.windows(2) {
                let (outer, inner) = (&pair[0], &pair[1]);
                let nested = outer[0] <= inner[0]
                    && outer[1] <= inner[1]
                    && inner[2] <= outer[2]
                    && inner[3] <= outer[3];
                assert!(nested, "{boxes:?}");
            }
            // Four inks and the colorant of every plate; no red, green, blue, and no grey of a screen.
            assert_eq!(page["separations"], serde_json::json!(["/All"]));
            let operators = page["content"]["operators"].as_object().unwrap();
            for other in ["rg", "RG", "g", "G", "sh", "Do", "BI"] {
                assert!(!operators.contains_key(other), "{other}");
            }
            assert!(operators.contains_key("k"));
            all_fonts_are_whole(page);
        }
    });
}

fn all_fonts_are_whole(page: &Value) {
    let fonts = list(&page["fonts"]);
    assert!(!fonts.is_empty());
    for font in fonts {
        assert_eq!(font["embedded"], true, "{font}");
        assert_eq!(font["to_unicode"], true, "{font}");
        // A subset's name: six capitals and a plus (ISO 32000-1, 9.6.4, from memory).
        assert_eq!(text(&font["name"]).find('+'), Some(7), "{font}");
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
    judge(&of(Use::Web), |asked, made| {
        let told = made.read();
        let languages = asked.languages;
        assert_eq!(told["xmp"]["{http://www.aiim.org/pdfua/ns/id/}part"], "1");
        let title = text(&told["xmp"]["{http://purl.org/dc/elements/1.1/}title"]);
        assert!(!title.is_empty() && told["info"]["/Title"] == title);
        assert_eq!(told["display_title"], true);
        assert_eq!((&told["marked"], &told["suspects"]), (&Value::Bool(true), &Value::Bool(false)));
        assert_eq!(told["lang"], languages[0]);
        // The lists of places on what is read at the table mix both directions.
        let mixed = [HANDOUT.kind, MAILER.kind].contains(&asked.form.kind);
        assert_eq!(told["direction"] == "/R2L", mixed && languages.iter().all(|tag| *tag == "ar"));
        assert!(list(&told["intents"]).is_empty(), "no press is meant");
        for page in list(&told["pages"]) {
            assert_eq!(page["tabs"], "/S");
            assert_eq!(page["spaces"]["/DefaultRGB"], "/ICCBased");
            let content = &page["content"];
            assert_eq!(content["outside"], Value::Array(Vec::new()), "painted outside of any mark");
            assert_eq!(content["unclosed"], 0);
            let operators = content["operators"].as_object().unwrap();
            for other in ["k", "K", "g", "G", "sh", "Do", "gs"] {
                assert!(!operators.contains_key(other), "{other}");
            }
            assert!(operators.contains_key("rg"));
            all_fonts_are_whole(page);
        }
        the_tree_reaches_everything(told, asked);
        elements_hold_what_they_may(told, asked);
        the_address_can_be_followed(made, told);
        bookmarks_lead_to_every_language(made, told, asked);
    });
}

/// Each marked content is held by one element, and the way back from it leads there.
fn the_tree_reaches_everything(told: &Value, asked: &Asked<'_>) {
    let mut reached = BTreeSet::new();
    let tags = tags(told);
    for tag in &tags {
        for content in &tag.contents {
            assert!(reached.insert(*content), "{content:?} is held twice");
            let page = &list(&told["pages"])[usize::try_from(content.0).unwrap()];
            let key = page["struct_parents"].to_string();
            let owner = &told["parents"][&key][usize::try_from(content.1).unwrap()];
            assert_eq!(*owner, tag.kind, "{content:?}");
        }
    }
    let mut marked = BTreeSet::new();
    for (number, page) in list(&told["pages"]).iter().enumerate() {
        for content in list(&page["content"]["marked"]) {
            match content.get("mcid").and_then(Value::as_u64) {
                Some(mcid) => assert!(marked.insert((number as u64, mcid)), "{mcid} is there twice"),
                None => assert!(["/Artifact", "/Span"].contains(&text(&content["tag"])), "{content}"),
            }
        }
    }
    // A round label has a message, its picture and the address.
    let least = if asked.form.kind == STICKER.kind { 3 } else { 21 };
    assert!(marked.len() >= least, "{}", marked.len());
    assert_eq!(reached, marked);
}

/// Pictures have words and a frame, lists hold items, headings skip no level, and each language is marked.
fn elements_hold_what_they_may(told: &Value, asked: &Asked<'_>) {
    let mut level = 0;
    let (mut figures, mut items) = (0, 0);
    for tag in tags(told) {
        match tag.kind.as_str() {
            "/Figure" => {
                figures += 1;
                assert!(!text(&tag.value["alt"]).trim().is_empty());
                let frame = list(&tag.value["bbox"]);
                assert_eq!(frame.len(), 4);
            }
            "/L" => assert!(list(&tag.value["kids"]).iter().all(|kid| kid["type"] == "/LI")),
            "/LI" => {
                items += 1;
                assert_eq!(tag.parent, "/L");
                assert!(list(&tag.value["kids"]).iter().all(|kid| kid["type"] == "/LBody"));
            }
            "/H1" | "/H2" => {
                let own = if tag.kind == "/H1" { 1 } else { 2 };
                assert!(own <= level + 1, "a heading of level {own} after {level}");
                level = own;
            }
            "/Document" | "/Sect" | "/P" | "/LBody" | "/Link" | "/Span" => {}
            other => panic!("what is {other}?"),
        }
    }
    // A round label has one message for each language, and one picture for all; everything else has lists.
    let least = if asked.form.kind == STICKER.kind { (1, asked.languages.len()) } else { (6, 11) };
    assert!(figures >= least.0 && items >= least.1, "{figures} pictures, {items} items");
}

fn the_address_can_be_followed(made: &Sheet, told: &Value) {
    let links = list(&told["annotations"]);
    // On the side with the advice, and wherever else a part of the sheet is looked at by itself.
    assert!(!links.is_empty(), "the address cannot be followed");
    for link in links {
        assert_eq!(link["subtype"], "/Link");
        assert_eq!(link["uri"], made.job()["qr_url"]);
        assert_eq!(link["contents"], made.job()["languages"][0]["link_alt"]);
        assert_eq!(told["parents"][link["struct_parent"].to_string()], "/Link");
    }
    let held: BTreeSet<u64> = tags(told)
        .iter()
        .filter(|tag| tag.kind == "/Link")
        .flat_map(|tag| list(&tag.value["kids"]).clone())
        .filter_map(|kid| kid.get("annotation")?.as_u64())
        .collect();
    assert_eq!(held.len(), links.len());
}

/// The table of contents: each language's title, below it the headings of its sections, each once. A round label needs none.
fn bookmarks_lead_to_every_language(made: &Sheet, told: &Value, asked: &Asked<'_>) {
    let marks = list(&told["outline"]);
    if asked.form.kind == STICKER.kind {
        assert!(marks.is_empty());
        return;
    }
    let all = made.said();
    assert_eq!(marks.len(), all.len());
    for (said, mark) in all.iter().zip(marks) {
        assert_eq!(mark["title"], said.title);
        let below: Vec<&str> = list(&mark["below"]).iter().map(|below| text(&below["title"])).collect();
        assert_eq!(below, said.headings);
    }
}

/// What the structure states of a language in so many words, in reading order: texts whose glyphs would not say them. What
/// is of no language of the job is read in the sheet's and left out.
fn stated(made: &Sheet, lang: &str) -> Vec<String> {
    let job = made.job();
    let of_none = |text: &String| {
        ["jurisdiction", "print_notice", "edition"].iter().any(|field| job[field].as_str() == Some(text))
    };
    tags(made.read())
        .iter()
        .filter(|tag| tag.lang == lang)
        .filter_map(|tag| tag.value["actual"].as_str().map(|text| text.trim().to_owned()))
        .filter(|text| !of_none(text))
        .collect()
}

/// A text without what is not heard: isolates order what is seen, joiners shape it.
fn heard(text: &str) -> String {
    text.replace(['\u{200c}', '\u{200d}', '\u{2068}', '\u{2069}'], "")
}

/// What a sheet says in a language, if it speaks it.
fn said(made: &Sheet, lang: &str) -> Option<Said> {
    made.said().into_iter().find(|said| said.lang == lang)
}

/// Those of the files for the web that speak a language.
fn speaking(lang: &str) -> Vec<Asked<'static>> {
    of(Use::Web).into_iter().filter(|asked| asked.languages.contains(&lang)).collect()
}

/// By the structure, Arabic is exact: every text whole, in reading order, marked as Arabic, and nothing else. Whoever reads
/// by the structure is served: screen readers, and browsers that reflow a page.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn arabic_is_exact_in_the_structure() {
    judge(&speaking("ar"), |_, made| {
        let said = said(made, "ar").unwrap();
        let mut stated = stated(made, "ar").into_iter();
        for line in &said.texts {
            let line = heard(line);
            let skipped: Vec<String> = stated.by_ref().take_while(|text| *text != line).collect();
            assert!(
                stated.len() > 0 || said.texts.last().map(|last| heard(last)) == Some(line.clone()),
                "“{line}” is not stated where it is read, after {skipped:?}"
            );
            assert!(skipped.iter().all(|text| said.says_again(text)), "{skipped:?} before “{line}”");
        }
        let rest: Vec<String> = stated.collect();
        assert!(rest.iter().all(|text| said.says_again(text)), "then {rest:?}");
    });
}

/// A text of Hindi in which a vowel stands before its letter, or several glyphs make one letter, is stated as it is written,
/// whole: what is stated is in the job, in its order, and nothing else is.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn what_the_structure_states_of_hindi_is_what_is_written() {
    // A round label's one message has no such vowel.
    let mut all = speaking("hi");
    all.retain(|asked| asked.form.kind != STICKER.kind);
    judge(&all, |_, made| {
        let said = said(made, "hi").unwrap();
        let stated = stated(made, "hi");
        // The short i stands before the letter that it follows in writing and speech.
        let turned: Vec<String> =
            said.texts.iter().filter(|text| text.contains('\u{93f}')).map(|text| heard(text)).collect();
        assert!(!turned.is_empty());
        for text in &turned {
            assert!(stated.contains(text), "“{text}” is not stated");
        }
        let mut texts = said.texts.iter().map(|text| heard(text));
        for text in stated.iter().filter(|text| !said.says_again(text)) {
            assert!(texts.any(|other| other == *text), "“{text}” is not written, or not there");
        }
    });
}

/// By the structure, as poppler reads it, every language that is written from left to right is exact and in reading order,
/// language after language, with the spaces that line breaks took. Poppler goes by the glyphs: where one of Hindi stands for
/// nothing by itself, because another has said the letter, it hands out a joiner, which is neither seen nor heard. What their
/// structure states is looked at above.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn languages_are_read_one_after_the_other_by_the_structure() {
    judge(&of(Use::Web), |_, made| {
        let told = Tool::PDFINFO.text(&[&"-struct-text", &made.file()]);
        // Pieces of text stand in quotation marks, a line each; what they hold is not escaped.
        let read: String = told
            .lines()
            .map(str::trim)
            .filter_map(|line| line.strip_prefix('"')?.strip_suffix('"'))
            .map(heard)
            .collect();
        let mut rest = read.as_str();
        for said in made.said().iter().filter(|said| said.lang != "ar") {
            for line in &said.texts {
                let line = heard(line);
                let follows = rest.split_once(&line).map(|(_, rest)| rest);
                rest = follows.unwrap_or_else(|| panic!("{}: “{line}” does not follow in {rest}", said.lang));
            }
        }
    });
}

/// PDFium, the reader inside browsers, hands out every line that is written from left to right, in both files: all its
/// letters in their order, which is what a search compares. It breaks some words of Hindi and Korean at marks and where
/// lines break, so no space counts. Where Arabic shares a row it takes the row for one line and puts words that stand side
/// by side in its own order; every word is whole there.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn browsers_read_every_line_from_left_to_right() {
    let solid = |text: &str| heard(text).chars().filter(|c| !c.is_whitespace()).collect::<String>();
    // Letters with the marks that belong to them.
    let letter = |c: char| c.is_alphabetic() || ('\u{900}'..='\u{97f}').contains(&c);
    judge(&asked(), |asked, made| {
        let shared = asked.languages.contains(&"ar");
        let read: String = list(&made.read()["text"]).iter().map(text).collect();
        let read = solid(&read);
        for said in made.said().iter().filter(|said| said.lang != "ar") {
            for line in &said.texts {
                let words: Vec<String> = if shared {
                    heard(line).split(|c| !letter(c)).map(str::to_owned).collect()
                } else {
                    vec![solid(line)]
                };
                for word in &words {
                    assert!(read.contains(word), "{}: “{word}” of “{line}” is not in {read}", said.lang);
                }
            }
        }
    });
}

/// Where Arabic leads and others follow, the others' lines are whole in browsers wherever Arabic does not share their row: a
/// file that declared itself right-to-left as a whole would have every one of them in reverse.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn a_leading_arabic_turns_no_other_language_round() {
    let solid = |text: &str| heard(text).chars().filter(|c| !c.is_whitespace()).collect::<String>();
    let mut led = of(Use::Web);
    led.retain(|asked| asked.languages.first() == Some(&"ar") && asked.languages.len() > 1);
    judge(&led, |_, made| {
        let read: String = list(&made.read()["text"]).iter().map(text).collect();
        let read = solid(&read);
        for said in made.said().iter().filter(|said| said.lang != "ar") {
            let whole = said.texts.iter().filter(|line| read.contains(&solid(line))).count();
            assert!(whole * 4 > said.texts.len() * 3, "{}: {whole} of {}", said.lang, said.texts.len());
        }
    });
}

/// PDFium orders right-to-left text by itself: every Arabic text that stands on lines of its own
/// comes out in reading order, in both files, and so does the address to type, but in files for the web whose lists of
/// places have lines of both directions: those say that they are written from right to left, and PDFium turns it round.
/// Where several languages share a row it takes the row for one line, so only words are looked for there.
#[test]
#[ignore = "needs the command line: cargo xtask test runs it"]
fn browsers_read_arabic_in_order() {
    let plain =
        |text: &str| -> String { text.chars().filter(|c| c.is_alphabetic() || c.is_whitespace()).collect() };
    let words = |text: &str| plain(text).split_whitespace().map(str::to_owned).collect::<Vec<_>>();
    let marked = |word: &str| word.chars().any(|c| ('\u{64b}'..='\u{65f}').contains(&c));
    let mut arabic = asked();
    arabic.retain(|asked| asked.languages.contains(&"ar"));
    judge(&arabic, |asked, made| {
        let read: String = list(&made.read()["text"]).iter().map(text).collect::<Vec<_>>().join("\n");
        let all: BTreeSet<String> = words(&read).into_iter().collect();
        let said = said(made, "ar").unwrap();
        for line in &said.texts {
            for word in words(line).iter().filter(|word| !marked(word)) {
                assert!(all.contains(word), "{word} of {line} in {read}");
            }
        }
        if asked.languages.len() == 1 {
            // The address to type is whole where the file need not say that it is written from right to left.
            let mixed = asked.output == Use::Web && [HANDOUT.kind, MAILER.kind].contains(&asked.form.kind);
            let address = made.job()["short_url"].as_str().unwrap();
            assert_eq!(read.contains(address), !mixed, "{address} in {read}");
            let joined = words(&read).join(" ");
            let whole = said.texts.iter().filter(|line| joined.contains(&words(line).join(" "))).count();
            assert!(whole * 2 > said.texts.len(), "{whole} of {}", said.texts.len());
        }
    });
}
