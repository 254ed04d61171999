//! Sheets from the demo program: the same bytes every time, every hazard on each, nothing written when
//! something is wrong.

#![allow(clippy::unwrap_used, clippy::panic, clippy::indexing_slicing, reason = "tests")]

mod common;

use std::fs;

use common::{Bench, lidleaf, sha256};
use lidleaf::Exit;
use serde_json::{Value, json};

fn print(bench: &Bench, options: &[&str]) -> Value {
    let (demo, out) = (bench.at("demo.json"), bench.at("sheet.pdf"));
    let mut words = vec!["print", &demo, "--date", "2027-01-01", "--out", &out, "--json"];
    words.extend(options);
    lidleaf(words).expect(Exit::Done).json()
}

#[test]
fn every_sheet_fits_in_one_to_three_languages() {
    let bench = Bench::new();
    let all = ["en", "es", "ar", "en,es", "en,ar", "en,es,ar"];
    let cases = all
        .iter()
        .map(|languages| (*languages, "recycling"))
        .chain(["organics", "refuse", "glass"].map(|stream| ("ar,es,en", stream)));
    for (languages, stream) in cases {
        for sheet in ["lid", "postcard", "sign", "self-mailer", "handout"] {
            let told = print(&bench, &["--sheet", sheet, "--languages", languages, "--stream", stream]);
            let blocks = told["job"]["languages"].as_array().unwrap();
            let tags: Vec<&str> = blocks.iter().map(|block| block["lang"].as_str().unwrap()).collect();
            assert_eq!(tags.join(","), languages);
            assert!(told["preflight"].as_array().unwrap().iter().all(|item| item["severity"] != "error"));
        }
    }
}

#[test]
fn the_same_program_and_date_make_the_same_bytes() {
    let bench = Bench::new();
    let options = ["--sheet", "lid", "--languages", "en,es,ar"];
    let first = print(&bench, &options);
    let bytes = fs::read(bench.path("sheet.pdf")).unwrap();
    assert!(bytes.starts_with(b"%PDF-"));
    assert_eq!(first["sha256"], sha256(&bytes));
    assert_eq!(print(&bench, &options), first);
    assert_eq!(fs::read(bench.path("sheet.pdf")).unwrap(), bytes);
}

#[test]
fn no_hazard_class_of_the_catalog_is_left_out() {
    let bench = Bench::new();
    let catalog = guide_data::Catalog::standard().unwrap();
    let classes: std::collections::BTreeSet<&str> =
        catalog.items.iter().filter_map(|item| item.facts.get("hazard")).map(String::as_str).collect();
    assert!(classes.len() > 8, "{classes:?}");
    for languages in ["en", "en,es", "en,es,ar"] {
        for sheet in ["lid", "postcard", "sign", "self-mailer", "handout"] {
            let told = print(&bench, &["--sheet", sheet, "--languages", languages]);
            for block in told["job"]["languages"].as_array().unwrap() {
                let tag = block["lang"].as_str().unwrap();
                let messages = locales::bundled(&tag.parse().unwrap());
                let sections = block["sections"].as_array().unwrap();
                let caution = sections.iter().find(|section| section["tone"] == "caution").unwrap();
                let text = caution["lines"].to_string().to_lowercase();
                for class in &classes {
                    let words = messages.t(&format!("sheet-hazard-{class}"), &locales::args!());
                    assert!(text.contains(&words.to_lowercase()), "{sheet} {languages}: {class} in {tag}");
                }
            }
        }
    }
}

#[test]
fn one_language_opens_the_guide_in_it_and_several_leave_the_choice_to_the_phone() {
    let bench = Bench::new();
    let base = "https://guide.quillmere.example.org/";
    let url =
        |languages| print(&bench, &["--sheet", "lid", "--languages", languages])["job"]["qr_url"].clone();
    assert_eq!(url("es"), format!("{base}#/es/"));
    assert_eq!(url("en,es"), base);
}

#[test]
fn unreviewed_words_are_told_before_printing() {
    let bench = Bench::new();
    let told = print(&bench, &["--sheet", "lid", "--languages", "en,es"]);
    let warned: Vec<&Value> = told["preflight"]
        .as_array()
        .unwrap()
        .iter()
        .filter(|item| item["code"] == "translation-unreviewed")
        .collect();
    assert_eq!(warned.len(), 1, "{told}");
    assert_eq!(warned[0]["args"]["lang"], "es");
}

#[test]
fn a_text_the_fonts_cannot_set_is_shown_and_nothing_is_written() {
    let bench = Bench::new();
    let file = bench.changed("odd.json", |program| program["streams"][0]["name"]["en"] = json!("回收"));
    let out = bench.write("sheet.pdf", "the old one");
    let words = ["print", &file, "--sheet", "lid", "--languages", "en", "--out", &out];
    let ran = lidleaf(words).expect(Exit::Errors);
    assert!(ran.out.contains('回'), "{}", ran.out);
    assert_eq!(fs::read(bench.path("sheet.pdf")).unwrap(), b"the old one");
}

#[test]
fn what_the_program_does_not_have_is_named_with_what_it_has() {
    let bench = Bench::new();
    let demo = bench.at("demo.json");
    for (options, exit, found) in [
        (vec!["--sheet", "poster"], Exit::Usage, ["poster", "postcard"]),
        (vec!["--sheet", "lid", "--stream", "rags"], Exit::NotFound, ["rags", "organics"]),
        (vec!["--sheet", "lid", "--zone", "atlantis"], Exit::NotFound, ["atlantis", "fernlow"]),
        (vec!["--sheet", "lid", "--languages", "en,fr"], Exit::NotFound, ["“fr”", "es"]),
        (vec!["--sheet", "lid", "--languages", "en,es,ar,en,es"], Exit::Usage, ["5", "four"]),
        (vec!["--sheet", "sticker", "--item", "unicorn"], Exit::NotFound, ["unicorn", "id"]),
        (vec!["--sheet", "sticker", "--item", "cardboard-box"], Exit::NotFound, ["cardboard-box", "hazard"]),
        (vec!["--sheet", "lid", "--size", "8 by 12"], Exit::Usage, ["8 by 12", "unit"]),
    ] {
        let mut words = vec!["print", demo.as_str()];
        words.extend(&options);
        let ran = lidleaf(words).expect(exit);
        for word in found {
            assert!(ran.err.contains(word), "“{word}” is not in: {}", ran.err);
        }
    }
}

/// Every size that is offered, in every way of folding: made without an error and as large as it says.
#[test]
fn every_size_offered_is_made() {
    let bench = Bench::new();
    for (sheet, size, width) in [
        ("lid", "8x12in", 203.2),
        ("lid", "a4", 210.0),
        ("lid", "a5", 148.0),
        ("lid", "190 x 250 mm", 190.0),
        ("sticker", "150mm", 150.0),
        ("sign", "18x24in", 457.2),
        ("postcard", "11x8.5in", 279.4),
        ("self-mailer", "a4", 210.0),
        ("handout", "a4", 210.0),
    ] {
        let told = print(&bench, &["--sheet", sheet, "--size", size, "--languages", "en"]);
        let made = told["job"]["size"]["width"].as_f64().unwrap();
        assert!((made - width).abs() < 1e-6, "{sheet} {size}: {made}");
        assert!(told["bytes"].as_u64().unwrap() > 10_000);
    }
    let folded = print(&bench, &["--sheet", "self-mailer", "--fold", "thirds", "--languages", "en,es"]);
    assert_eq!(folded["job"]["fold"], "thirds");
}

/// Zero, absurd, ten metres, two hundred sites: told why, and what was there stays.
#[test]
fn what_cannot_be_made_is_refused_and_nothing_is_written() {
    let bench = Bench::new();
    let crowded = bench.changed("crowded.json", |program| {
        let sites = program["sites"].as_array_mut().unwrap();
        let one = sites[0].clone();
        for number in 0..200 {
            let mut more = one.clone();
            more["id"] = json!(format!("more-{number}"));
            sites.push(more);
        }
    });
    let demo = bench.at("demo.json");
    let out = bench.write("sheet.pdf", "the old one");
    for (file, options, word) in [
        (&demo, vec!["--sheet", "lid", "--size", "0 x 9 in"], "longer than nothing"),
        (&demo, vec!["--sheet", "lid", "--size", "10 x 10 m"], "600"),
        (&demo, vec!["--sheet", "sticker", "--size", "2 mm"], "70"),
        (&demo, vec!["--sheet", "handout", "--size", "a5"], "letter, a4"),
        (&demo, vec!["--sheet", "postcard", "--size", "4x6in"], "post"),
        (&demo, vec!["--sheet", "lid", "--press", "7 x 9 in"], "larger"),
        (&demo, vec!["--sheet", "lid", "--press", "sra3", "--up", "40"], "40"),
        (&demo, vec!["--sheet", "lid", "--distance", "0"], "distance"),
        (&crowded, vec!["--sheet", "self-mailer"], "lines"),
    ] {
        let mut words = vec!["print", file.as_str(), "--languages", "en", "--out", &out];
        words.extend(&options);
        let ran = lidleaf(words).expect(Exit::Errors);
        assert!(ran.out.contains(word), "{options:?}: “{word}” is not in: {}", ran.out);
        assert_eq!(fs::read(bench.path("sheet.pdf")).unwrap(), b"the old one", "{options:?}");
        assert!(!bench.path("sheet-ticket.pdf").exists(), "{options:?}");
    }
}

/// A file for each language, with its own number of copies, and one ticket that names them all.
#[test]
fn each_language_alone_has_its_file_and_the_ticket_names_them() {
    let bench = Bench::new();
    let options =
        ["--sheet", "lid", "--languages", "en,es", "--alone", "--copies", "en=400,es=150", "--register"];
    let told = print(&bench, &options);
    assert!(told["file"].as_str().unwrap().ends_with("sheet-en.pdf"));
    assert!(told["more"][0]["file"].as_str().unwrap().ends_with("sheet-es.pdf"));
    for (file, lang) in [("sheet-en.pdf", "en"), ("sheet-es.pdf", "es")] {
        assert!(fs::read(bench.path(file)).unwrap().starts_with(b"%PDF-"), "{lang}");
    }
    assert!(bench.path("sheet-en-ticket.pdf").exists());
    let program: Value = serde_json::from_slice(&fs::read(bench.path("demo.json")).unwrap()).unwrap();
    let copies: Vec<u64> = program["payload"]["printed"]
        .as_array()
        .unwrap()
        .iter()
        .map(|sheet| sheet["copies"].as_u64().unwrap())
        .collect();
    assert_eq!(copies, [400, 150]);
}

#[test]
fn the_ticket_comes_with_the_file_unless_it_is_not_wanted() {
    let bench = Bench::new();
    let told = print(&bench, &["--sheet", "sticker", "--languages", "en,es", "--no-ticket"]);
    assert!(told["ticket"].is_null() && !bench.path("sheet-ticket.pdf").exists());
    let told = print(&bench, &["--sheet", "sticker", "--languages", "en,es", "--stock", "Vinyl, 0.1 mm"]);
    assert!(told["ticket"].as_str().unwrap().ends_with("sheet-ticket.pdf"));
    let first = fs::read(bench.path("sheet-ticket.pdf")).unwrap();
    print(&bench, &["--sheet", "sticker", "--languages", "en,es", "--stock", "Vinyl, 0.1 mm"]);
    assert_eq!(fs::read(bench.path("sheet-ticket.pdf")).unwrap(), first);
    // What the fonts cannot set is told, and neither file is written.
    let out = bench.write("sheet.pdf", "the old one");
    let demo = bench.at("demo.json");
    let words =
        ["print", &demo, "--sheet", "lid", "--languages", "en", "--stock", "\u{16000}", "--out", &out];
    lidleaf(words).expect(Exit::Errors);
    assert_eq!(fs::read(bench.path("sheet.pdf")).unwrap(), b"the old one");
}

#[test]
fn a_sticker_is_about_one_item_and_its_code_opens_it() {
    let bench = Bench::new();
    let base = "https://guide.quillmere.example.org/";
    let told = print(&bench, &["--sheet", "sticker", "--item", "lithium-battery", "--languages", "es"]);
    assert_eq!(told["job"]["qr_url"], format!("{base}#/es/item/lithium-battery"));
    let sections = told["job"]["languages"][0]["sections"].as_array().unwrap();
    assert_eq!(sections.len(), 1);
    assert_eq!(sections[0]["tone"], "caution");
    assert_eq!(sections[0]["lines"].as_array().unwrap().len(), 1);
    assert_eq!(sections[0]["lines"][0]["hazard"], true);
    let told = print(&bench, &["--sheet", "sticker", "--item", "lithium-battery", "--languages", "en,es"]);
    assert_eq!(told["job"]["qr_url"], format!("{base}#/item/lithium-battery"));
    // Without an item: the thing most often got wrong.
    let told = print(&bench, &["--sheet", "sticker", "--languages", "en"]);
    assert_eq!(told["job"]["languages"][0]["sections"][0]["tone"], "no");
}
