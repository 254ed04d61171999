//! Many sheets in one go: what is made, what is left as it is, and what happens when something goes wrong.

#![allow(clippy::unwrap_used, clippy::panic, clippy::indexing_slicing, reason = "tests")]

mod common;

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use common::{Bench, Ran, lidleaf, tree};
use lidleaf::Exit;
use serde_json::{Value, json};

/// A folder with the demo program in three of its languages: what is counted below does not change with how
/// many it speaks.
fn three() -> Bench {
    let bench = Bench::new();
    in_three(&bench, "demo.json", |_| {});
    bench
}

/// The demo program in three languages, changed.
fn in_three(bench: &Bench, name: &str, change: impl FnOnce(&mut Value)) -> String {
    bench.changed(name, |program| {
        program["languages"] = json!(["en", "es", "ar"]);
        change(program);
    })
}

/// A batch into the folder `out`, on a fixed date.
fn batch(bench: &Bench, programs: &[&str], options: &[&str]) -> Ran {
    let out = bench.at("out");
    let mut words = vec!["batch"];
    words.extend(programs);
    words.extend(["--out", &out, "--date", "2027-01-01"]);
    words.extend(options);
    lidleaf(words)
}

/// The sheets in the folder with their bytes.
fn sheets(bench: &Bench) -> BTreeMap<String, Vec<u8>> {
    let mut files = tree(&bench.path("out"));
    files.retain(|name, _| name.ends_with(".pdf"));
    files
}

/// A member town's program, in three languages as well.
fn town(bench: &Bench, town: &str) -> String {
    let file = bench.at(&format!("{town}.json"));
    lidleaf(["demo", "--town", town, "--out", &file]).expect(Exit::Done);
    let mut program: Value = serde_json::from_slice(&fs::read(&file).unwrap()).unwrap();
    program["payload"]["languages"] = json!(["en", "es", "ar"]);
    fs::write(&file, program.to_string()).unwrap();
    file
}

/// How many lines of progress say this.
fn count(ran: &Ran, word: &str) -> usize {
    ran.err.lines().filter(|line| line.contains(&format!("] {word}: "))).count()
}

const LID: [&str; 6] = ["--sheet", "lid", "--languages", "each", "--languages", "together"];

#[test]
fn every_sheet_of_every_program_in_every_set_of_languages() {
    let bench = Bench::new();
    let (demo, town) = (bench.at("demo.json"), town(&bench, "kettlebrae"));
    let languages = ["--languages", "each", "--languages", "ar,en"];
    let ran = batch(
        &bench,
        &[&demo, &town],
        &[
            "--sheet",
            "lid,postcard",
            "--stream",
            "all",
            languages[0],
            languages[1],
            languages[2],
            languages[3],
        ],
    )
    .expect(Exit::Done);
    let mut expected = Vec::new();
    for file in [&demo, &town] {
        let program: Value = serde_json::from_slice(&fs::read(file).unwrap()).unwrap();
        let program = &program["payload"];
        let id = program["id"].as_str().unwrap();
        for sheet in ["cart-lid", "postcard-mailer"] {
            for stream in program["streams"].as_array().unwrap() {
                let alone = program["languages"].as_array().unwrap().iter().map(|tag| tag.as_str().unwrap());
                for set in alone.chain(["ar-en"]) {
                    expected.push(format!("{id}/{id}-{sheet}-{}-{set}.pdf", stream["id"].as_str().unwrap()));
                }
            }
        }
    }
    expected.sort();
    assert!(expected.len() > 30, "{expected:?}");
    let made = sheets(&bench);
    assert_eq!(made.keys().collect::<Vec<_>>(), expected.iter().collect::<Vec<_>>());
    assert!(made.values().all(|pdf| pdf.starts_with(b"%PDF-") && pdf.trim_ascii_end().ends_with(b"%%EOF")));
    assert_eq!(count(&ran, "made"), expected.len());
    assert!(ran.err.contains(&format!("[{0}/{0}]", expected.len())), "{}", ran.err);
    assert!(
        ran.out.contains(&format!("{} made, 0 unchanged, 0 failed, from 2 programs", expected.len())),
        "{}",
        ran.out
    );
}

#[test]
fn a_sheet_is_the_one_that_print_makes_whatever_the_number_of_hands() {
    let bench = three();
    let (demo, single) = (bench.at("demo.json"), bench.at("single.pdf"));
    batch(&bench, &[&demo], &["--sheet", "all", "--hands", "1"]).expect(Exit::Done);
    let one = sheets(&bench);
    for (sheet, languages) in [("cart-lid", "en,es,ar"), ("postcard-mailer", "es")] {
        lidleaf([
            "print",
            &demo,
            "--sheet",
            sheet,
            "--languages",
            languages,
            "--date",
            "2027-01-01",
            "--out",
            &single,
        ])
        .expect(Exit::Done);
        let name = format!("quillmere/quillmere-{sheet}-{}.pdf", languages.replace(',', "-"));
        assert!(one[&name] == fs::read(&single).unwrap(), "{name}");
    }
    fs::remove_dir_all(bench.path("out")).unwrap();
    batch(&bench, &[&demo], &["--sheet", "all", "--hands", "7"]).expect(Exit::Done);
    assert!(sheets(&bench) == one);
}

/// A job ticket lies beside each press file, the same that `print` writes: with the file's name and its copies. Those of a
/// sheet in several languages are for all of them.
#[test]
fn a_ticket_lies_beside_each_press_file_and_says_how_many() {
    let bench = three();
    let demo = bench.at("demo.json");
    let sets = ["--sheet", "lid", "--languages", "en", "--languages", "es,ar", "--tickets"];
    let many = |copies: &'static str| [sets.as_slice(), &["--copies", copies]].concat();
    batch(&bench, &[&demo], &many("en=400,es=150,ar=50")).expect(Exit::Done);
    let made = sheets(&bench);
    assert_eq!(made.len(), 4, "{:?}", made.keys());
    for (languages, copies) in [("en", "400"), ("es,ar", "200")] {
        let name = format!("quillmere-cart-lid-{}", languages.replace(',', "-"));
        let single = bench.at(&format!("{name}.pdf"));
        lidleaf([
            "print",
            &demo,
            "--sheet",
            "lid",
            "--languages",
            languages,
            "--date",
            "2027-01-01",
            "--copies",
            copies,
            "--out",
            &single,
        ])
        .expect(Exit::Done);
        for file in [format!("{name}.pdf"), format!("{name}-ticket.pdf")] {
            let wanted = fs::read(bench.path(&file)).unwrap();
            assert!(made[&format!("quillmere/{file}")] == wanted, "{file}");
        }
    }

    // Another number is on a ticket alone; the sheets stay as they are.
    let again = batch(&bench, &[&demo], &many("en=400,es=150,ar=50")).expect(Exit::Done);
    assert_eq!((count(&again, "unchanged"), count(&again, "made")), (4, 0), "{}", again.err);
    let more = batch(&bench, &[&demo], &many("en=401,es=150,ar=50")).expect(Exit::Done);
    assert_eq!((count(&more, "unchanged"), count(&more, "made")), (3, 1), "{}", more.err);
    let now = sheets(&bench);
    let other: Vec<_> = made.keys().filter(|name| made[*name] != now[*name]).collect();
    assert_eq!(other, ["quillmere/quillmere-cart-lid-en-ticket.pdf"]);
    // And no number at all is another ticket once more.
    let unsaid = batch(&bench, &[&demo], &sets).expect(Exit::Done);
    assert_eq!((count(&unsaid, "unchanged"), count(&unsaid, "made")), (2, 2), "{}", unsaid.err);
}

#[test]
fn copies_without_a_ticket_to_write_them_on_are_refused() {
    let bench = three();
    let ran =
        batch(&bench, &[&bench.at("demo.json")], &["--sheet", "lid", "--copies", "400"]).expect(Exit::Usage);
    assert!(ran.err.contains("--tickets") && !bench.path("out").exists(), "{}", ran.err);
}

/// `--alone` makes a sheet for each language of every set, each once.
#[test]
fn languages_of_a_set_alone_are_made_once_each() {
    let bench = three();
    let demo = bench.at("demo.json");
    let options = ["--sheet", "lid", "--languages", "en,es", "--languages", "es,ar", "--alone"];
    let ran = batch(&bench, &[&demo], &options).expect(Exit::Done);
    let names: Vec<String> =
        ["ar", "en", "es"].map(|tag| format!("quillmere/quillmere-cart-lid-{tag}.pdf")).into();
    assert_eq!(sheets(&bench).into_keys().collect::<Vec<_>>(), names, "{}", ran.err);
    // They are what asking for each language makes.
    let each = batch(&bench, &[&demo], &["--sheet", "lid", "--languages", "each"]).expect(Exit::Done);
    assert_eq!((count(&each, "unchanged"), count(&each, "made")), (3, 0), "{}", each.err);
}

/// Files for the web and for the press lie beside each other in one folder, with one set of notes, and neither run makes
/// the other's anew. Who reads on a screen gets no job ticket.
#[test]
fn both_outputs_share_a_folder() {
    let bench = three();
    let demo = bench.at("demo.json");
    let run = |output: &'static str| {
        let options = ["--sheet", "lid,sticker", "--languages", "en,es", "--tickets", "--for", output];
        batch(&bench, &[&demo], &options).expect(Exit::Done)
    };
    let (press, web) = (run("press"), run("web"));
    assert_eq!((count(&press, "made"), count(&web, "made")), (4, 2), "{}{}", press.err, web.err);
    let made = sheets(&bench);
    for sheet in ["cart-lid", "round-sticker"] {
        let stem = format!("quillmere/quillmere-{sheet}-en-es");
        let [press, ticket, web] =
            ["", "-ticket", "-web"].map(|ending| made.get(&format!("{stem}{ending}.pdf")).unwrap());
        assert!(press != web && press != ticket);
        // Of the two, only a press file names an output intent, and only the other is tagged.
        let holds = |pdf: &[u8], key: &[u8]| pdf.windows(key.len()).any(|part| part == key);
        assert!(holds(press, b"/GTS_PDFX") && !holds(press, b"/StructTreeRoot"), "{sheet}");
        assert!(!holds(web, b"/GTS_PDFX") && holds(web, b"/StructTreeRoot"), "{sheet}");
    }
    for (output, files) in [("press", 4), ("web", 2)] {
        let again = run(output);
        assert_eq!((count(&again, "unchanged"), count(&again, "made")), (files, 0), "{}", again.err);
    }
    assert!(sheets(&bench) == made);
    let notes: Value = serde_json::from_slice(&fs::read(bench.path("out/batch.json")).unwrap()).unwrap();
    assert_eq!(notes["files"].as_object().unwrap().len(), 6);
}

/// A batch keeps the limit of words as `print` does.
#[test]
fn a_limit_of_words_holds_in_a_batch_too() {
    let bench = three();
    let (demo, single) = (bench.at("demo.json"), bench.at("single.pdf"));
    let languages = ["--sheet", "lid", "--languages", "en", "--words", "3"];
    batch(&bench, &[&demo], &languages).expect(Exit::Done);
    let words = ["print", &demo, "--date", "2027-01-01", "--out", &single];
    lidleaf([words.as_slice(), &languages].concat()).expect(Exit::Done);
    let limited = sheets(&bench);
    assert!(limited["quillmere/quillmere-cart-lid-en.pdf"] == fs::read(&single).unwrap());
    let free = batch(&bench, &[&demo], &languages[..4]).expect(Exit::Done);
    assert_eq!(count(&free, "made"), 1, "{}", free.err);
    assert!(sheets(&bench) != limited);
}

#[test]
fn a_second_run_makes_only_what_is_missing_changed_or_would_be_different() {
    let bench = three();
    let (demo, out) = (bench.at("demo.json"), bench.path("out"));
    batch(&bench, &[&demo], &LID).expect(Exit::Done);
    let first = sheets(&bench);
    assert_eq!(first.len(), 4);
    let notes = fs::read(out.join("batch.json")).unwrap();

    let again = batch(&bench, &[&demo], &LID).expect(Exit::Done);
    assert_eq!((count(&again, "unchanged"), count(&again, "made")), (4, 0), "{}", again.err);
    assert!(sheets(&bench) == first && fs::read(out.join("batch.json")).unwrap() == notes);

    fs::remove_file(out.join("quillmere/quillmere-cart-lid-es.pdf")).unwrap();
    fs::write(out.join("quillmere/quillmere-cart-lid-ar.pdf"), b"%PDF- cut short").unwrap();
    let mended = batch(&bench, &[&demo], &LID).expect(Exit::Done);
    assert_eq!((count(&mended, "unchanged"), count(&mended, "made")), (2, 2), "{}", mended.err);
    assert!(sheets(&bench) == first);

    // Only the Spanish words change: two of the sheets say them.
    let changed = in_three(&bench, "demo.json", |program| {
        program["streams"][0]["name"]["es"] = json!("Reciclaje del condado");
    });
    let after = batch(&bench, &[&changed], &LID).expect(Exit::Done);
    assert_eq!((count(&after, "unchanged"), count(&after, "made")), (2, 2), "{}", after.err);
    let now = sheets(&bench);
    let same: Vec<_> = first.keys().filter(|name| first[*name] == now[*name]).collect();
    assert_eq!(same, ["quillmere/quillmere-cart-lid-ar.pdf", "quillmere/quillmere-cart-lid-en.pdf"]);

    let all = batch(&bench, &[&changed], &[LID.as_slice(), &["--again"]].concat()).expect(Exit::Done);
    assert_eq!((count(&all, "unchanged"), count(&all, "made")), (0, 4), "{}", all.err);
    let later = batch(&bench, &[&changed], &[LID.as_slice(), &["--date", "2027-01-02"]].concat());
    assert_eq!(count(&later.expect(Exit::Done), "made"), 4);
}

#[test]
fn what_fails_in_the_middle_stops_nothing_and_is_made_by_the_next_run() {
    let bench = three();
    let good = town(&bench, "larkenby");
    let broken = bench.write("broken.json", "{ \"format\": ");
    let wrong = in_three(&bench, "wrong.json", |program| {
        program["id"] = json!("wrong");
        program["rules"] = json!([]);
        program["streams"] = json!([]);
    });
    // Its Spanish sheets hold characters that the fonts do not have; its others are sound.
    let odd = in_three(&bench, "odd.json", |program| {
        program["id"] = json!("odd");
        program["streams"][0]["name"]["es"] = json!("\u{16000}");
    });
    let missing = bench.at("missing.json");
    let last = bench.at("demo.json");
    let programs = [&*good, &*broken, &*wrong, &*odd, &*missing, &*last];
    let ran = batch(&bench, &programs, &LID).expect(Exit::Errors);
    let made = sheets(&bench);
    let of = |id: &str| made.keys().filter(|name| name.starts_with(&format!("{id}/"))).count();
    assert_eq!((of("larkenby"), of("quillmere"), of("odd"), of("wrong")), (4, 4, 2, 0), "{}", ran.out);
    for (what, why, next) in [
        ("Failed: ".to_owned() + &broken, "broken.json", "line"),
        ("Failed: ".to_owned() + &wrong, "has errors (", "lidleaf check"),
        ("Failed: odd/odd-cart-lid-es.pdf".to_owned(), "\u{16000}", "Correct the program"),
        ("Failed: odd/odd-cart-lid-en-es-ar.pdf".to_owned(), "\u{16000}", "Correct the program"),
        ("Failed: ".to_owned() + &missing, "does not exist", "Check the name"),
    ] {
        let (_, after) = ran.out.split_once(&what).unwrap_or_else(|| panic!("{what}: {}", ran.out));
        let part: String =
            after.lines().skip(1).take_while(|line| line.starts_with("  ")).collect::<Vec<_>>().join("\n");
        assert!(part.contains(why) && part.contains(next), "{what}: {part}");
    }
    assert!(ran.out.contains("10 made, 0 unchanged, 5 failed"), "{}", ran.out);

    fs::remove_file(bench.path("broken.json")).unwrap();
    in_three(&bench, "odd.json", |program| program["id"] = json!("odd"));
    let second = batch(&bench, &[&good, &odd, &last], &LID).expect(Exit::Done);
    assert_eq!((count(&second, "unchanged"), count(&second, "made")), (10, 2), "{}", second.err);
}

#[test]
fn the_report_for_other_programs_names_everything() {
    let bench = three();
    let demo = bench.at("demo.json");
    let options =
        ["--sheet", "lid", "--languages", "en", "--languages", "fr", "--languages", "en,es,ar,en,es"];
    let told =
        batch(&bench, &[&demo], &[options.as_slice(), &["--json"]].concat()).expect(Exit::Errors).json();
    assert_eq!(told["format"], "lidleaf-batch-report");
    assert_eq!(told["made"][0]["file"], "quillmere/quillmere-cart-lid-en.pdf");
    assert_eq!(
        (&told["skipped"], &told["not_begun"], &told["stopped"]),
        (&json!([]), &json!(0), &json!(false))
    );
    let failed = told["failed"].as_array().unwrap();
    assert_eq!(failed.len(), 2, "{told}");
    assert!(
        failed[0]["why"][0].as_str().unwrap().contains("“fr”") && failed[0]["next"].is_string(),
        "{told}"
    );
    assert!(failed[1]["why"][0].as_str().unwrap().contains('5'), "{told}");
    let told =
        batch(&bench, &[&demo], &["--sheet", "lid", "--languages", "en", "--json"]).expect(Exit::Done).json();
    assert_eq!(told["skipped"], json!(["quillmere/quillmere-cart-lid-en.pdf"]));
}

#[test]
fn two_programs_of_one_name_are_told_apart_before_one_overwrites_the_other() {
    let bench = three();
    let (demo, other) = (bench.at("demo.json"), in_three(&bench, "other.json", |_| {}));
    let town = town(&bench, "kettlebrae");
    let ran = batch(&bench, &[&demo, &town, &other], &LID).expect(Exit::Errors);
    assert!(ran.out.contains("demo.json") && ran.out.contains("other.json"), "{}", ran.out);
    assert!(sheets(&bench).keys().all(|name| name.starts_with("kettlebrae/")));
    assert_eq!(sheets(&bench).len(), 4);
}

#[test]
fn damaged_notes_cost_time_and_nothing_else() {
    let bench = three();
    let demo = bench.at("demo.json");
    batch(&bench, &[&demo], &LID).expect(Exit::Done);
    let (first, notes) = (sheets(&bench), fs::read(bench.path("out/batch.json")).unwrap());
    for damaged in [&b"{\"format\":"[..], b"\xff\xfe", b"", &notes[..notes.len() / 2]] {
        fs::write(bench.path("out/batch.json"), damaged).unwrap();
        let ran = batch(&bench, &[&demo], &LID).expect(Exit::Done);
        assert_eq!(count(&ran, "made"), 4);
        assert!(ran.out.contains("batch.json"), "{}", ran.out);
        assert!(fs::read(bench.path("out/batch.json")).unwrap() == notes && sheets(&bench) == first);
    }
}

#[test]
fn a_place_that_cannot_be_written_is_named() {
    let bench = three();
    let demo = bench.at("demo.json");
    bench.write("out", "a file where the folder should be");
    let ran = batch(&bench, &[&demo], &LID).expect(Exit::Blocked);
    assert!(ran.err.contains("out"), "{}", ran.err);
    assert_eq!(fs::read_to_string(bench.path("out")).unwrap(), "a file where the folder should be");

    // A folder where a sheet should be: that sheet fails, the others are made.
    fs::remove_file(bench.path("out")).unwrap();
    fs::create_dir_all(bench.path("out/quillmere/quillmere-cart-lid-es.pdf/x")).unwrap();
    let ran = batch(&bench, &[&demo], &LID).expect(Exit::Errors);
    assert!(ran.out.contains("quillmere-cart-lid-es.pdf could not be written"), "{}", ran.out);
    assert_eq!(count(&ran, "made"), 3);
}

/// The real program, stopped by signals while it works.
#[cfg(unix)]
mod stopped {
    use super::*;
    use std::io::{BufRead, BufReader, Read};
    use std::process::{Child, Command, Stdio};

    fn start(bench: &Bench, programs: &[&str]) -> Child {
        Command::new(env!("CARGO_BIN_EXE_lidleaf"))
            .arg("batch")
            .args(programs)
            .args(["--out", &bench.at("out"), "--date", "2027-01-01", "--sheet", "all", "--stream", "all"])
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn()
            .unwrap()
    }

    /// Sends a signal once the first sheet is made, and waits for the end: the exit code and what was said.
    fn stop(mut child: Child, signal: &str) -> (Option<i32>, String) {
        let mut progress = BufReader::new(child.stderr.take().unwrap());
        let mut line = String::new();
        progress.read_line(&mut line).unwrap();
        assert!(line.starts_with("[1/"), "{line}");
        let sent = Command::new("kill").args([signal, &child.id().to_string()]).status().unwrap();
        assert!(sent.success());
        let mut rest = String::new();
        progress.read_to_string(&mut rest).unwrap();
        let mut said = String::new();
        child.stdout.take().unwrap().read_to_string(&mut said).unwrap();
        (child.wait().unwrap().code(), said)
    }

    fn whole(pdf: &[u8]) -> bool {
        pdf.starts_with(b"%PDF-") && pdf.trim_ascii_end().ends_with(b"%%EOF")
    }

    fn half_written(folder: &Path) -> Vec<String> {
        tree(folder).into_keys().filter(|name| name.ends_with(".part")).collect()
    }

    #[test]
    fn a_stop_leaves_whole_files_and_the_next_run_goes_on() {
        let bench = three();
        let (demo, town) = (bench.at("demo.json"), town(&bench, "thrushwick"));
        let (code, said) = stop(start(&bench, &[&demo, &town]), "-INT");
        assert_eq!(code, Some(i32::from(Exit::Stopped.code())), "{said}");
        assert!(said.contains("goes on from here"), "{said}");
        let first = sheets(&bench);
        assert!(!first.is_empty() && first.values().all(|pdf| whole(pdf)));
        assert!(half_written(&bench.path("out")).is_empty());
        let notes: Value = serde_json::from_slice(&fs::read(bench.path("out/batch.json")).unwrap()).unwrap();
        let noted: Vec<&String> = notes["files"].as_object().unwrap().keys().collect();
        assert_eq!(noted, first.keys().collect::<Vec<_>>());

        let rest = start(&bench, &[&demo, &town]).wait_with_output().unwrap();
        assert_eq!(rest.status.code(), Some(0));
        let progress = String::from_utf8(rest.stderr).unwrap();
        assert_eq!(progress.matches("] unchanged: ").count(), first.len());
        assert!(progress.matches("] made: ").count() > 10, "{progress}");
        let all = sheets(&bench);
        assert!(first.iter().all(|(name, pdf)| all[name] == *pdf));
    }

    #[test]
    fn a_run_that_is_killed_leaves_nothing_half_made_under_a_sheets_name() {
        let bench = three();
        let demo = bench.at("demo.json");
        let (code, _) = stop(start(&bench, &[&demo]), "-KILL");
        assert_eq!(code, None);
        assert!(sheets(&bench).iter().all(|(name, pdf)| name.contains(".part") || whole(pdf)));
        // As if it had been killed while writing.
        bench.write("out/quillmere/.quillmere-cart-lid-glass-en.pdf.4711.part", "half");
        let rest = start(&bench, &[&demo]).wait_with_output().unwrap();
        assert_eq!(rest.status.code(), Some(0), "{}", String::from_utf8_lossy(&rest.stderr));
        assert!(half_written(&bench.path("out")).is_empty());
        assert!(sheets(&bench).values().all(|pdf| whole(pdf)));
    }
}
