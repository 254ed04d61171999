//! Sheets from the demo program: the same bytes every time, every hazard on each, nothing written when
//! something is wrong.

#![allow(clippy::unwrap_used, clippy::panic, clippy::indexing_slicing, reason = "tests")]

mod common;

use std::collections::BTreeSet;
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
fn every_sheet_fits_in_the_demo_s_languages() {
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

/// Every hazard class that an item of the catalog has.
fn hazard_classes() -> BTreeSet<String> {
    let catalog = guide_data::Catalog::standard().unwrap();
    catalog.items.into_iter().filter_map(|mut item| item.facts.remove("hazard")).collect()
}

#[test]
fn no_hazard_class_of_the_catalog_is_left_out() {
    let bench = Bench::new();
    let classes = hazard_classes();
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

/// A lid in three languages has no room for all that might be said: what goes is told, is gone in every language, and
/// is not entered into the register; what stands before every reader stays, and so do the places that take hazards.
#[test]
fn a_full_lid_tells_what_it_leaves_out() {
    let bench = Bench::new();
    let program = bench.changed("own.json", |_| {});
    let out = bench.at("sheet.pdf");
    let words = ["print", &program, "--sheet", "lid", "--languages", "en,es,ar", "--date", "2027-01-01"];
    let told =
        lidleaf([&words[..], &["--out", &out, "--json", "--register"]].concat()).expect(Exit::Done).json();
    let strings = |value: &Value| -> Vec<String> {
        value.as_array().unwrap().iter().map(|it| it.as_str().unwrap().to_owned()).collect()
    };
    let left_out = strings(&told["left_out"]);
    assert!(!left_out.is_empty());
    assert_eq!(told["hazards_in_brief"], false);
    let blocks = told["job"]["languages"].as_array().unwrap();
    let counts = |block: &Value| -> Vec<usize> {
        block["sections"].as_array().unwrap().iter().map(|s| s["lines"].as_array().unwrap().len()).collect()
    };
    assert!(blocks.iter().all(|block| counts(block) == counts(&blocks[0])));
    let yes = blocks[0]["sections"][0]["lines"].to_string();
    for basic in ["Cardboard", "Drink can", "Glass bottle", "Water or soda bottle"] {
        assert!(yes.contains(basic), "{basic} is not in {yes}");
    }
    let sections = blocks[0]["sections"].as_array().unwrap();
    let caution = sections.iter().find(|section| section["tone"] == "caution").unwrap();
    assert!(caution["lines"].to_string().contains("Battery point"), "{caution}");

    let file: Value = serde_json::from_slice(&fs::read(&program).unwrap()).unwrap();
    let entry = &file["payload"]["printed"].as_array().unwrap().last().unwrap()["lines"];
    let entered: Vec<&str> =
        entry.as_array().unwrap().iter().map(|line| line["item"].as_str().unwrap()).collect();
    assert!(left_out.iter().all(|item| !entered.contains(&item.as_str())), "{entered:?}");
    let plain: usize = sections
        .iter()
        .filter(|section| section["tone"] != "caution")
        .map(|section| section["lines"].as_array().unwrap().len())
        .sum();
    let hazards = entry.as_array().unwrap().iter().filter(|line| line.get("hazard").is_some()).count();
    assert_eq!(entered.len(), plain + hazards, "{entry}");
    assert!(hazards > 8, "{entry}");
    // In words, for those who do not read JSON.
    let said = lidleaf([&words[..], &["--out", &out]].concat()).expect(Exit::Done).out;
    assert!(said.contains("left out for lack of room: "), "{said}");
}

/// Four wordy languages on the smallest sheets and on the sign that is read from farthest: rather than refuse, a sheet
/// puts its hazards on fewer lines, each still named in every language, and tells what else it does not say.
#[test]
fn four_wordy_languages_fit_the_tightest_sheets() {
    let bench = Bench::new();
    let classes = hazard_classes();
    let mut unplaced = 0;
    for (sheet, size) in [("sign", "18x24in"), ("sign", "a3"), ("lid", "a5"), ("postcard", "8.5x5.5in")] {
        for languages in ["ru,fr,pt-BR,fil", "ht,fil,vi,hi", "es,ar,ru,pt-BR"] {
            let told = print(&bench, &["--sheet", sheet, "--size", size, "--languages", languages]);
            let place = format!("{sheet} {size} {languages}");
            assert!(
                told["preflight"].as_array().unwrap().iter().all(|it| it["severity"] != "error"),
                "{place}"
            );
            for block in told["job"]["languages"].as_array().unwrap() {
                let tag = block["lang"].as_str().unwrap();
                let messages = locales::bundled(&tag.parse().unwrap());
                let sections = block["sections"].as_array().unwrap();
                let of = |tone: &str| sections.iter().find(|section| section["tone"] == tone).unwrap();
                let text = of("caution")["lines"].to_string().to_lowercase();
                for class in &classes {
                    let words = messages.t(&format!("sheet-hazard-{class}"), &locales::args!());
                    assert!(text.contains(&words.to_lowercase()), "{place}: {class} in {tag}");
                }
                for (tone, least) in [("yes", 3), ("no", 2)] {
                    assert!(of(tone)["lines"].as_array().unwrap().len() >= least, "{place}: {tone}");
                }
            }
            assert_eq!(told["hazards_in_brief"], true, "{place}");
            let greasy = |block: &Value| block["sections"][1]["lines"].to_string().contains("Органика");
            let russian = told["job"]["languages"].as_array().unwrap().iter().find(|it| it["lang"] == "ru");
            if told["refused_in_brief"] == true {
                unplaced += 1;
                assert!(russian.is_none_or(|block| !greasy(block)), "{place}");
            }
        }
    }
    assert!(unplaced > 0);
    let (demo, out) = (bench.at("demo.json"), bench.at("sheet.pdf"));
    let words =
        ["print", &demo, "--sheet", "postcard", "--size", "8.5x5.5in", "--languages", "ru,fr,pt-BR,fil"];
    let said =
        lidleaf([&words[..], &["--date", "2027-01-01", "--out", &out]].concat()).expect(Exit::Done).out;
    assert!(said.contains("no room for where things go that stay out"), "{said}");
}

/// What a crowded sheet prints is what is entered into the register: the words without the places they no longer name.
#[test]
fn the_register_has_the_words_of_a_crowded_sheet() {
    let bench = Bench::new();
    let program = bench.changed("own.json", |_| {});
    let out = bench.at("sheet.pdf");
    let words = ["print", &program, "--sheet", "postcard", "--size", "8.5x5.5in", "--date", "2027-01-01"];
    let more = ["--languages", "en,ru,fr,pt-BR", "--out", &out, "--json", "--register"];
    let told = lidleaf([&words[..], &more].concat()).expect(Exit::Done).json();
    assert_eq!(told["refused_in_brief"], true, "{}", told["left_out"]);
    let file: Value = serde_json::from_slice(&fs::read(&program).unwrap()).unwrap();
    let entry = &file["payload"]["printed"].as_array().unwrap().last().unwrap()["lines"];
    let entered: Vec<&Value> =
        entry.as_array().unwrap().iter().filter(|line| line.get("hazard").is_none()).collect();
    let sections = told["job"]["languages"][0]["sections"].as_array().unwrap();
    let printed: Vec<&Value> = sections
        .iter()
        .filter(|section| section["tone"] != "caution")
        .flat_map(|section| section["lines"].as_array().unwrap())
        .collect();
    assert_eq!(entered.len(), printed.len());
    for (entered, printed) in entered.iter().zip(printed) {
        assert_eq!(entered["words"], printed["text"]);
    }
}

/// A sheet with no room even so names what would do: a size and languages, and both are true.
#[test]
fn a_refusal_says_what_would_fit() {
    let bench = Bench::new();
    let out = bench.at("sheet.pdf");
    let sheet = ["--sheet", "lid", "--size", "a5", "--date", "2027-01-01", "--out", &out];
    let tags = ["en", "ru", "fr", "pt-BR"];
    let refused = (3..16).step_by(3).find_map(|times| {
        let program = bench.changed("long.json", |program| {
            let name =
                "Community materials exchange and hazard collection office of the county ".repeat(times);
            for tag in tags {
                program["contact"]["name"][tag] = json!(name.trim());
            }
        });
        let ran =
            lidleaf([&["print", &program][..], &sheet, &["--languages", &tags.join(","), "--json"]].concat());
        (ran.exit == Exit::Errors).then(|| (program, ran.json()))
    });
    let (program, told) = refused.unwrap();
    let run = |more: &[&str]| lidleaf([&["print", &program][..], &sheet, more].concat());
    let item = |code: &str, name: &str| {
        let all = told["preflight"].as_array().unwrap();
        let item = all.iter().find(|item| item["code"] == code);
        item.unwrap_or_else(|| panic!("no {code} in {told}"))["args"][name].as_str().unwrap().to_owned()
    };
    let (size, fewer) = (item("fits-larger", "size"), item("fits-fewer", "tags").replace(' ', ""));
    run(&["--languages", &fewer]).expect(Exit::Done);
    run(&["--languages", &tags.join(","), "--size", &size]).expect(Exit::Done);
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
    let file = bench.changed("odd.json", |program| program["streams"][0]["name"]["en"] = json!("あき"));
    let out = bench.write("sheet.pdf", "the old one");
    let words = ["print", &file, "--sheet", "lid", "--languages", "en", "--out", &out];
    let ran = lidleaf(words).expect(Exit::Errors);
    assert!(ran.out.contains('あ'), "{}", ran.out);
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
        (vec!["--sheet", "lid", "--languages", "en,de"], Exit::NotFound, ["“de”", "es"]),
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

/// The findings of a kind.
fn found<'a>(told: &'a Value, code: &str) -> Vec<&'a Value> {
    told["preflight"].as_array().unwrap().iter().filter(|item| item["code"] == code).collect()
}

#[test]
fn a_sheet_for_the_web_is_another_file_of_the_same_words() {
    let bench = Bench::new();
    let options = ["--sheet", "postcard", "--languages", "en,ar"];
    let press = print(&bench, &options);
    let press_file = fs::read(bench.path("sheet.pdf")).unwrap();
    let mut web_options = options.to_vec();
    web_options.extend(["--for", "web"]);
    let web = print(&bench, &web_options);
    let web_file = fs::read(bench.path("sheet.pdf")).unwrap();
    assert_eq!(press["job"], web["job"]);
    assert!(press_file.starts_with(b"%PDF-1.6") && web_file.starts_with(b"%PDF-1.7"));
    assert_eq!(print(&bench, &web_options), web);
    // Ink, bleed and boxes are a press's; that pictures have words is for who listens.
    for (code, of_press) in [
        ("ink-coverage", true),
        ("boxes", true),
        ("bleed-and-safe-area", true),
        ("pictures-have-words", false),
    ] {
        assert_eq!(found(&press, code).len(), usize::from(of_press), "{code}");
        assert_eq!(found(&web, code).len(), usize::from(!of_press), "{code}");
    }
    // Without a name, the two do not overwrite each other.
    let folder = bench.at("");
    for (use_, name) in [("press", "quillmere-cart-lid-en.pdf"), ("web", "quillmere-cart-lid-en-web.pdf")] {
        let words =
            ["print", &bench.at("demo.json"), "--sheet", "lid", "--languages", "en", "--for", use_, "--out"];
        lidleaf(words.iter().copied().chain([folder.as_str()])).expect(Exit::Done);
        assert!(bench.path(name).is_file(), "{name}");
    }
}

#[test]
fn the_shops_profile_is_taken_and_any_other_file_is_refused_for_what_it_is() {
    let bench = Bench::new();
    let demo = bench.at("demo.json");
    let out = bench.at("sheet.pdf");
    let with = |extra: &[&str]| {
        let mut words = vec![
            "print",
            &demo,
            "--sheet",
            "lid",
            "--languages",
            "en",
            "--date",
            "2027-01-01",
            "--out",
            &out,
        ];
        words.extend(extra);
        lidleaf(words)
    };
    // A shop's own profile: the bundled one under another description.
    let mut own = print::PRESS_PROFILE.to_vec();
    let name = b"Coated, from data";
    let at = own.windows(name.len()).position(|part| part == name).unwrap();
    own[at..at + name.len()].copy_from_slice(b"Press 4, Alder Ln");
    let tr = own.windows(6).position(|part| part == b"TR 006").unwrap();
    own[tr..tr + 6].copy_from_slice(b"shop 4");
    let shop = bench.write("shop.icc", &own);
    with(&["--profile", &shop, "--ink-limit", "260"]).expect(Exit::Done);
    let file = fs::read(bench.path("sheet.pdf")).unwrap();
    let holds = |words: &[u8]| file.windows(words.len()).any(|part| part == words);
    assert!(
        holds(b"Press 4, Alder Ln") && holds(b"/OutputConditionIdentifier (Custom)"),
        "the intent names it"
    );
    assert!(!holds(b"CGATS TR 006"));
    fs::write(bench.path("sheet.pdf"), "the old one").unwrap();
    let mut display = own.clone();
    display[12..16].copy_from_slice(b"mntr");
    display[16..20].copy_from_slice(b"RGB ");
    let (display, program) = (bench.write("display.icc", &display), bench.at("demo.json"));
    for (extra, words) in [
        (["--profile", display.as_str()], ["not an output profile for CMYK", "a display, in RGB"]),
        (["--profile", program.as_str()], ["no color profile", "CMYK output profile (.icc)"]),
        (["--ink-limit", "900"], ["“900” is not an ink limit", "100 to 400"]),
        (["--ink-limit", "150"], ["the limit is 150 %", "lighter color"]),
    ] {
        let ran = with(&extra).expect(Exit::Errors);
        for said in words {
            assert!(ran.out.contains(said), "“{said}” is not in: {}", ran.out);
        }
        assert_eq!(fs::read(bench.path("sheet.pdf")).unwrap(), b"the old one");
    }
    let ran = with(&["--profile", &bench.at("nowhere.icc")]).expect(Exit::Unreadable);
    assert!(ran.err.contains("nowhere.icc"), "{}", ran.err);
}

/// A line in words that also name another thing is told with its place, and an outdated translation too.
#[test]
fn lines_that_contradict_and_outdated_words_are_told_with_their_places() {
    let bench = Bench::new();
    let file = bench.changed("odd.json", |program| {
        program["item-names"]["coffee-cup"] = json!({ "en": "Foam drink can", "es": "Caja de espuma", "ar": "علبة فوم" });
        program["contact"]["name"]["es"] =
            json!({ "text": "Oficina de Reciclaje del Condado de Quillmere", "translates": "Another office" });
    });
    let out = bench.at("sheet.pdf");
    let words = [
        "print",
        &file,
        "--sheet",
        "lid",
        "--languages",
        "en,es",
        "--date",
        "2027-01-01",
        "--out",
        &out,
        "--json",
    ];
    let told = lidleaf(words).expect(Exit::Done).json();
    let against = found(&told, "lines-contradict");
    assert_eq!(against.len(), 1, "{against:?}");
    assert_eq!(against[0]["args"], json!({ "lang": "en", "text": "Drink can", "other": "Foam drink can" }));
    let outdated = found(&told, "translation-outdated");
    assert_eq!(outdated.len(), 1, "{outdated:?}");
    assert_eq!(outdated[0]["args"]["lang"], "es");
    for item in against.iter().chain(&outdated) {
        assert_eq!(item["severity"], "warning");
        assert!(item["place"]["rect"]["width"].as_f64().unwrap() > 10.0, "{item}");
    }
    // As it is, the demo has neither.
    let told = print(&bench, &["--sheet", "lid", "--languages", "en,es"]);
    assert!(found(&told, "lines-contradict").is_empty() && found(&told, "translation-outdated").is_empty());
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

/// Under a limit of words no line is longer, in any of the sheet's languages; what a shorter line leaves out is told as that
/// of any other, by the preflight and after it. Hazards are said whole.
#[test]
fn a_limit_of_words_holds_in_every_language_and_its_price_is_told() {
    let bench = Bench::new();
    let lines = |told: &Value, caution: bool| -> Vec<(String, String)> {
        let blocks = told["job"]["languages"].as_array().unwrap();
        let of = |block: &Value| -> Vec<(String, String)> {
            let lang = block["lang"].as_str().unwrap().to_owned();
            let sections = block["sections"].as_array().unwrap().iter();
            sections
                .filter(|section| (section["tone"] == "caution") == caution)
                .flat_map(|section| section["lines"].as_array().unwrap().clone())
                .map(|line| (lang.clone(), line["text"].as_str().unwrap().to_owned()))
                .collect()
        };
        blocks.iter().flat_map(of).collect()
    };
    // Chinese has no spaces: two characters are counted as one word.
    let longest = |told: &Value, lang: &str| -> usize {
        let of = lines(told, false);
        let lengths = of.iter().filter(|(own, _)| own == lang).map(|(_, text)| match lang {
            "zh-Hans" => text.chars().filter(|c| !c.is_ascii() && c.is_alphabetic()).count().div_ceil(2),
            _ => text.split_whitespace().count(),
        });
        lengths.max().unwrap()
    };
    let often_wrong = |told: &Value| {
        let items = told["preflight"].as_array().unwrap().iter();
        items.filter(|item| item["code"] == "line-often-wrong").count()
    };
    let sheet = ["--sheet", "lid", "--size", "8x12in", "--languages", "en,es,zh-Hans"];
    let free = print(&bench, &sheet);
    assert!(longest(&free, "es") > 6, "{}", longest(&free, "es"));
    for most in [4, 6] {
        let words = most.to_string();
        let told = print(&bench, &[sheet.as_slice(), &["--words", &words]].concat());
        assert!(longest(&told, "en") <= most && longest(&told, "es") <= most, "{most}");
        assert!(lines(&told, false).len() > 20, "{most}: there is nearly nothing left to say");
        let shorter = told["shortened"].as_array().unwrap().len();
        assert!(shorter > free["shortened"].as_array().unwrap().len(), "{most}: {shorter}");
        assert!(often_wrong(&told) > often_wrong(&free), "{most}");
    }
    // What needs no shortening stays as it is; hazards stay whatever the limit.
    let loose = print(&bench, &[sheet.as_slice(), &["--words", "99"]].concat());
    assert_eq!(loose["sha256"], free["sha256"]);
    let tight = print(&bench, &[sheet.as_slice(), &["--words", "1"]].concat());
    assert!(lines(&tight, true).iter().any(|(_, text)| text.split_whitespace().count() > 6));
    // Chinese by itself.
    let chinese = ["--sheet", "lid", "--languages", "zh-Hans"];
    let free = longest(&print(&bench, &chinese), "zh-Hans");
    let told = print(&bench, &[chinese.as_slice(), &["--words", "4"]].concat());
    assert!(free > 4 && longest(&told, "zh-Hans") <= 4, "{free}");
    // A round label says its one message whole.
    let sticker = ["--sheet", "sticker", "--languages", "en,es"];
    let (whole, limited) =
        (print(&bench, &sticker), print(&bench, &[sticker.as_slice(), &["--words", "1"]].concat()));
    assert_eq!(whole["sha256"], limited["sha256"]);
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
