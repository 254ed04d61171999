//! Fuzzing, guided by what code has been reached: LLVM's own fuzzer, which the stable compiler can be
//! told to count for.

use std::fs;

use crate::place::Place;
use crate::problem::{Outcome, Problem};
use crate::process;

/// What a run is asked for.
pub(crate) struct FuzzOptions {
    /// The way in, by its name.
    pub(crate) entry: String,
    /// How long to go on, in seconds.
    pub(crate) seconds: u32,
}

/// How code counts where it has been and what it compared: LLVM's pass, with the settings that its
/// fuzzer reads.
const COUNTING: &[&str] = &[
    "-Cpasses=sancov-module",
    "-Cllvm-args=-sanitizer-coverage-level=4",
    "-Cllvm-args=-sanitizer-coverage-inline-8bit-counters",
    "-Cllvm-args=-sanitizer-coverage-pc-table",
    "-Cllvm-args=-sanitizer-coverage-trace-compares",
    "-Ccodegen-units=1",
];

/// The longest input in bytes, and the longest that one may take in seconds.
const LONGEST: (u32, u32) = (65_536, 10);

/// The ways in, read from the table of them, so that a name is not built for in vain.
fn entries(place: &Place) -> Outcome<Vec<String>> {
    let path = place.root().join("tests").join("src").join("fuzz.rs");
    let text = String::from_utf8_lossy(&crate::place::read(&path)?).into_owned();
    let table = text.split("ENTRIES: &[Entry] = &[").nth(1).and_then(|rest| rest.split("];").next());
    let rows = table.unwrap_or_default().lines();
    Ok(rows.filter_map(|row| Some(row.trim().strip_prefix("(\"")?.split('"').next()?.to_owned())).collect())
}

pub(crate) fn run(place: &Place, options: &FuzzOptions) -> Outcome<()> {
    let entries = entries(place)?;
    if !entries.contains(&options.entry) {
        let what = match options.entry.as_str() {
            "" => "which way in is to be fuzzed is not said".to_owned(),
            other => format!("there is no way in called \"{other}\""),
        };
        return Err(Problem::new(what).next(format!("name one of {}", entries.join(", "))));
    }
    if !process::on_path("c++") && !process::on_path("g++") && !process::on_path("clang++") {
        return Err(Problem::new("the fuzzer is written in C++, and there is no C++ compiler")
            .next("install one: `sudo apt-get install g++`"));
    }
    let target = place.root().join("target").join("fuzz");
    let host = host(place)?;
    crate::say::step("building the fuzzer, with code that counts where it has been");
    let manifest = place.root().join("fuzz").join("Cargo.toml");
    let mut build = place.cargo();
    // With the host named as the target, build scripts and macros are compiled as ever.
    build
        .args(["build", "--release", "--locked", "--manifest-path"])
        .arg(&manifest)
        .args(["--target", &host, "--target-dir"])
        .arg(&target)
        .env("CARGO_ENCODED_RUSTFLAGS", COUNTING.join("\u{1f}"));
    process::run(&mut build)?;
    let folder = target.join(&options.entry);
    let (found, failed) = (folder.join("found"), folder.join("failed"));
    for needed in [&found, &failed] {
        fs::create_dir_all(needed).map_err(|error| Problem::file("create", needed, &error))?;
    }
    crate::say::step(&format!(
        "fuzzing {} for {} s; inputs are kept in {}",
        options.entry,
        options.seconds,
        folder.display()
    ));
    let (bytes, seconds) = LONGEST;
    let mut fuzz = std::process::Command::new(target.join(&host).join("release").join("lidleaf-fuzz"));
    // Its own seeds are written when it starts, and so is its dictionary: it reads both after that.
    fuzz.env("LIDLEAF_FUZZ_ENTRY", &options.entry).env("LIDLEAF_FUZZ_SEEDS", &folder);
    fuzz.arg(&found)
        .arg(folder.join("seeds"))
        .arg(format!("-dict={}", folder.join("words.dict").display()))
        .arg(format!("-artifact_prefix={}/", failed.display()))
        .arg(format!("-max_total_time={}", options.seconds))
        .arg(format!("-max_len={bytes}"))
        .arg(format!("-timeout={seconds}"))
        .args(["-rss_limit_mb=2048", "-print_final_stats=1"]);
    process::run(&mut fuzz).map_err(|problem| {
        problem.next(format!("the input that failed is in {}; keep it as a test", failed.display()))
    })
}

/// The triple of this machine.
fn host(place: &Place) -> Outcome<String> {
    let mut rustc = std::process::Command::new("rustc");
    rustc.current_dir(place.root()).args(["--print", "host-tuple"]);
    Ok(process::output(&mut rustc)?.trim().to_owned())
}
