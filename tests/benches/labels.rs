//! A thousand lid labels on two cores, against general-purpose typesetters that set the same ones.
//!
//! Ours is timed from the job to the finished file on disk: checking, shaping, the search for the largest type,
//! preflight, the press PDF. The others are given the same words, pictures, code, fonts and page, laid out as their
//! users would (flow, tables, one fixed size of type), and are spared everything a press file needs besides. Each
//! runs in two processes that keep fonts and pictures between labels. They set a part of the labels, drawn evenly
//! from all, because they would take minutes for a thousand.
//!
//! `cargo xtask bench` installs them below `target`; without them only ours is measured.

#![expect(
    clippy::indexing_slicing,
    clippy::panic,
    reason = "a benchmark that measures the wrong thing should stop"
)]

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::{Duration, Instant};

use chrono::NaiveDate;
use lidleaf::{Exit, World};
use lidleaf_tests::OrFail as _;
use print::{FontSet, Item, Offer, PRESS_PROFILE, PathOp, Prepared, SheetJob, bundled_fonts, make_with};
use serde_json::{Value, json};

const LABELS: usize = 1_000;
const HANDS: usize = 2;
/// The languages of a label.
const LANGUAGES: usize = 4;

/// The other typesetters: name, how many of the labels they set, and how many times faster ours should be.
const OTHERS: [(&str, usize, f64); 2] = [("typst", 200, 5.0), ("weasyprint", 60, 30.0)];

/// The member towns that come with the demo, besides the county itself.
const TOWNS: [&str; 4] = ["thrushwick", "kettlebrae", "larkenby", "dunnockford"];

fn main() {
    let work = tempfile::tempdir().or_fail("making a folder");
    let jobs = jobs(work.path());
    let languages: BTreeSet<usize> = jobs.iter().map(|job| job.languages.len()).collect();
    println!("{} lid labels, of {languages:?} languages each, on {HANDS} cores", jobs.len());
    let ours = ours(&jobs, work.path());
    report("lidleaf", jobs.len(), ours, None);
    let Some(python) = std::env::var_os("LIDLEAF_RIVALS").map(PathBuf::from) else {
        println!("the other typesetters are not installed: `cargo xtask bench` does that");
        return;
    };
    let rate = per_second(jobs.len(), ours);
    prepare(&jobs, work.path());
    let mut short = Vec::new();
    for (name, number, times) in OTHERS {
        let taken = other(&python, name, number, work.path());
        let ratio = rate / per_second(number, taken);
        report(name, number, taken, Some(ratio));
        if ratio < times {
            short.push(format!("{ratio:.1} times {name}'s rate, not {times}"));
        }
    }
    // Told, not fatal: other programs on the machine slow all of them, but not alike.
    if !short.is_empty() {
        println!("SHORT OF THE AIM: {}", short.join("; "));
    }
}

fn per_second(labels: usize, taken: Duration) -> f64 {
    labels as f64 / taken.as_secs_f64()
}

fn report(name: &str, labels: usize, taken: Duration, ratio: Option<f64>) {
    let ratio = ratio.map(|ratio| format!(", ours is {ratio:.1} times as fast")).unwrap_or_default();
    let (rate, seconds) = (per_second(labels, taken), taken.as_secs_f64());
    println!("{name}: {labels} labels in {seconds:.2} s, {rate:.1} a second{ratio}");
}

/// The jobs of every program's lids, for every stream and set of languages, until there are enough; those of one
/// lid differ in their edition and code, as those of neighbouring districts would.
fn jobs(work: &Path) -> Vec<SheetJob> {
    let mut lids: Vec<Value> = Vec::new();
    for town in std::iter::once(None).chain(TOWNS.map(Some)) {
        let file = work.join("program.json");
        let out = file.to_string_lossy().into_owned();
        let mut words = vec!["demo", "--out", &out];
        words.extend(town.iter().flat_map(|town| ["--town", *town]));
        lidleaf(&words);
        let program: Value =
            serde_json::from_slice(&fs::read(&file).or_fail("reading the program")).or_fail("the program");
        let list = |name: &str| {
            program["payload"][name].as_array().cloned().unwrap_or_else(|| panic!("{name} of {town:?}"))
        };
        let tags: Vec<String> =
            list("languages").iter().filter_map(Value::as_str).map(str::to_owned).collect();
        let sets: Vec<String> = tags.chunks_exact(LANGUAGES).map(|four| four.join(",")).collect();
        let sheet = work.join("sheet.pdf").to_string_lossy().into_owned();
        for stream in list("streams") {
            let stream = stream["id"].as_str().unwrap_or_default();
            for set in &sets {
                let words = [
                    "print",
                    &out,
                    "--sheet",
                    "lid",
                    "--stream",
                    stream,
                    "--languages",
                    set,
                    "--out",
                    &sheet,
                    "--date",
                    "2027-01-01",
                    "--json",
                ];
                let told: Value = serde_json::from_str(&lidleaf(&words)).or_fail("what print told");
                lids.push(told["job"].clone());
            }
        }
    }
    let numbered = lids.iter().cycle().take(LABELS).enumerate();
    numbered
        .map(|(number, lid)| {
            let mut job: SheetJob = serde_json::from_value(lid.clone()).or_fail("a job");
            job.edition = format!("{}-{number}", job.edition);
            job.qr_url = format!("https://guide.example.org/{number}/");
            job
        })
        .collect()
}

fn lidleaf(words: &[&str]) -> String {
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let today = NaiveDate::default();
    let exit = lidleaf::run(words.iter().map(Into::into), &mut World { out: &mut out, err: &mut err, today });
    assert_eq!(exit, Exit::Done, "{words:?}: {}", String::from_utf8_lossy(&err));
    String::from_utf8(out).or_fail("what was told")
}

fn ours(jobs: &[SheetJob], work: &Path) -> Duration {
    let out = work.join("ours");
    fs::create_dir(&out).or_fail("making a folder");
    let begun = Instant::now();
    let fonts: FontSet = bundled_fonts().map_err(|e| format!("{e:?}")).or_fail("reading the fonts");
    let profile = Prepared::new(PRESS_PROFILE).map_err(|e| format!("{e:?}")).or_fail("the profile");
    let next = AtomicUsize::new(0);
    std::thread::scope(|scope| {
        for _ in 0..HANDS {
            scope.spawn(|| {
                while let Some((number, job)) = {
                    let number = next.fetch_add(1, Ordering::Relaxed);
                    jobs.get(number).map(|job| (number, job))
                } {
                    let made = make_with(job, &Offer::default(), &fonts, &profile)
                        .unwrap_or_else(|error| panic!("label {number}: {error:?}"));
                    fs::write(out.join(format!("{number}.pdf")), made.artifact.pdf)
                        .or_fail("writing a label");
                }
            });
        }
    });
    begun.elapsed()
}

/// Writes what the others set: the jobs, the pictures, the codes and the fonts.
fn prepare(jobs: &[SheetJob], work: &Path) {
    let fonts = bundled_fonts().map_err(|e| format!("{e:?}")).or_fail("reading the fonts");
    let profile = Prepared::new(PRESS_PROFILE).map_err(|e| format!("{e:?}")).or_fail("the profile");
    for folder in ["jobs", "pictures"] {
        fs::create_dir(work.join(folder)).or_fail("making a folder");
    }
    for picture in print::PICTOGRAMS {
        let svg = svg(&format!("0 0 {0} {0}", print::PICTOGRAM_SIDE), picture.svg_path);
        fs::write(work.join(format!("pictures/{}.svg", picture.id)), svg).or_fail("writing a picture");
    }
    let most = OTHERS.iter().map(|(_, number, _)| *number).max().unwrap_or_default();
    for (number, job) in jobs.iter().enumerate().step_by(jobs.len() / most) {
        let made = make_with(job, &Offer::default(), &fonts, &profile)
            .unwrap_or_else(|e| panic!("label {number}: {e:?}"));
        let code =
            made.artifact.display_list.pages.iter().flat_map(|page| &page.items).find_map(
                |item| match item {
                    Item::Fill(fill) if fill.what == "qr" => Some(&fill.path),
                    _ => None,
                },
            );
        let code = code.unwrap_or_else(|| panic!("label {number} has no code"));
        fs::write(work.join(format!("jobs/{number}.svg")), code_svg(code)).or_fail("writing a code");
        let text = json!(job).to_string();
        fs::write(work.join(format!("jobs/{number}.json")), text).or_fail("writing a job");
    }
}

fn svg(view: &str, path: &str) -> String {
    format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"{view}\"><path fill-rule=\"evenodd\" d=\"{path}\"/></svg>"
    )
}

fn code_svg(path: &[PathOp]) -> String {
    let (mut low, mut high) = ((f64::MAX, f64::MAX), (f64::MIN, f64::MIN));
    let mut data = String::new();
    for op in path {
        let (letter, at) = match op {
            PathOp::Move(at) => ('M', at),
            PathOp::Line(at) | PathOp::Curve(_, _, at) => ('L', at),
            PathOp::Close => {
                data.push('Z');
                continue;
            }
        };
        let (x, y) = (at.x.0, at.y.0);
        low = (low.0.min(x), low.1.min(y));
        high = (high.0.max(x), high.1.max(y));
        data.push_str(&format!("{letter}{x:.2} {y:.2}"));
    }
    svg(&format!("{:.2} {:.2} {:.2} {:.2}", low.0, low.1, high.0 - low.0, high.1 - low.1), &data)
}

/// Has another typesetter set so many of the labels. It tells the seconds from when its processes have their
/// fonts until the last file is written.
fn other(python: &Path, name: &str, number: usize, work: &Path) -> Duration {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    let out = work.join(name);
    fs::create_dir(&out).or_fail("making a folder");
    let ran = Command::new(python)
        .arg(here.join("benches/rivals").join(format!("{name}_labels.py")))
        .arg(work)
        .arg(here.join("../print/fonts"))
        .args([number.to_string(), HANDS.to_string()])
        .output()
        .or_fail("starting python");
    let said = String::from_utf8_lossy(&ran.stdout).into_owned();
    assert!(ran.status.success(), "{name}: {said}{}", String::from_utf8_lossy(&ran.stderr));
    let files = fs::read_dir(&out).or_fail("reading a folder").count();
    assert_eq!(files, number, "{name} did not set all");
    let seconds = said.lines().last().and_then(|line| line.trim().parse().ok());
    Duration::from_secs_f64(seconds.unwrap_or_else(|| panic!("{name} told no time: {said}")))
}
