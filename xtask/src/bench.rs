//! `cargo xtask bench`: the benchmarks, as one table of medians.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use serde_json::Value;

use crate::budget;
use crate::place::{self, Place};
use crate::problem::{Outcome, Problem};
use crate::process;
use crate::say;
use crate::site;
use crate::tools;
use crate::wasm::{self, Profile};

/// Runs the benchmarks of the `tests` crate and prints the median of each, with its interval; then those
/// that need a browser, or with `phone_only` nothing but these.
pub(crate) fn run(place: &Place, phone_only: bool) -> Outcome<()> {
    if !phone_only {
        native(place)?;
    }
    phone(place)
}

/// The benchmarks that need no browser.
const NATIVE: &[&str] = &["guide", "engine", "sheet", "labels"];

fn native(place: &Place) -> Outcome<()> {
    let results = place.target().join("criterion");
    forget(&results)?;
    let rivals = rivals(place);
    say::step("running the benchmarks (minutes)");
    let mut cargo = place.cargo();
    cargo.args(["bench", "--package", "lidleaf-tests"]);
    for bench in NATIVE {
        cargo.args(["--bench", bench]);
    }
    match rivals {
        Ok(python) => drop(cargo.env("LIDLEAF_RIVALS", python)),
        Err(problem) => say::step(&format!("measuring without other typesetters: {problem}")),
    }
    process::run(&mut cargo)?;
    let rows = medians(&results)?;
    if rows.is_empty() {
        return Err(Problem::new("no benchmark left a result")
            .next("see whether tests/benches has any: `cargo bench -p lidleaf-tests`"));
    }
    print!("\n{}", say::table(&["benchmark", "median", "95 % from", "to"], &rows));
    Ok(())
}

/// The page that times the app in a browser.
const TIMINGS: &[u8] = b"<!doctype html><meta charset=\"utf-8\"><title>Timings</title><pre id=\"timings\"></pre>\
<script type=\"module\">import init from \"./pkg/timings.js\"; init({ module_or_path: \"pkg/timings_bg.wasm\" });</script>\n";

/// Builds the site and the program that times itself, and measures both in a browser.
fn phone(place: &Place) -> Outcome<()> {
    tools::ensure(place)?;
    let lidleaf = site::build(place, Profile::Ship)?;
    let folder = place.root().join("dist").join("bench");
    if folder.is_dir() {
        fs::remove_dir_all(&folder).map_err(|error| Problem::file("remove", &folder, &error))?;
    }
    wasm::build_timings(place, &folder.join("pkg"))?;
    place::write(&folder.join("timings.html"), TIMINGS)?;
    let site = place.site();
    for name in place::files_below(&site)? {
        let bytes = place::read(&site.join(&name))?;
        // Hosts compress what they send; a picture or font is compressed already.
        if [".html", ".js", ".css", ".json", ".txt", ".svg", ".wasm", ".webmanifest"]
            .iter()
            .any(|e| name.ends_with(e))
        {
            place::write(&folder.join(format!("{name}.br")), &budget::brotli(&bytes)?)?;
        }
        place::write(&folder.join(&name), &bytes)?;
    }
    say::step("measuring in a browser (a minute or two)");
    let mut cargo = place.cargo();
    cargo.args(["bench", "--package", "lidleaf-tests", "--bench", "phone"]);
    match tools::lighthouse(place) {
        Ok(command) => drop(cargo.env("LIDLEAF_LIGHTHOUSE", command)),
        Err(problem) => say::step(&format!("measuring without Lighthouse: {problem}")),
    }
    process::run(cargo.env("LIDLEAF_BENCH", &folder).env("LIDLEAF_BIN", lidleaf))
}

/// The typesetters that `tests/benches/labels.rs` measures ours against. Typst's wheel holds its compiler;
/// WeasyPrint takes Pango from the system.
const RIVALS: [&str; 2] = ["typst==0.15.2", "weasyprint==70.0"];

/// Installs them below the target folder, where no other Python program sees them: the Python that has them.
fn rivals(place: &Place) -> Outcome<PathBuf> {
    let folder = place.target().join("rivals");
    let python = folder.join("bin/python");
    let there = |python: &Path| {
        process::output(Command::new(python).args(["-m", "pip", "freeze", "--disable-pip-version-check"]))
            .is_ok_and(|list| RIVALS.iter().all(|one| list.lines().any(|line| line == *one)))
    };
    if !there(&python) {
        say::step("installing other typesetters to measure against (a minute)");
        process::output(Command::new("python3").args(["-m", "venv"]).arg(&folder))?;
        process::output(Command::new(&python).args(["-m", "pip", "install", "--quiet"]).args(RIVALS))?;
    }
    process::output(Command::new(&python).args(["-c", "import typst, weasyprint"]))?;
    Ok(python)
}

/// Removes the latest results, so that a benchmark that is gone leaves no row.
fn forget(results: &Path) -> Outcome<()> {
    for path in latest(results)? {
        fs::remove_file(&path).map_err(|error| Problem::file("remove", &path, &error))?;
    }
    Ok(())
}

fn latest(results: &Path) -> Outcome<Vec<std::path::PathBuf>> {
    if !results.is_dir() {
        return Ok(Vec::new());
    }
    let files = place::files_below(results)?;
    let estimates = files.iter().filter(|name| name.ends_with("/new/estimates.json"));
    Ok(estimates.map(|name| results.join(name)).collect())
}

fn medians(results: &Path) -> Outcome<Vec<Vec<String>>> {
    let mut rows = Vec::new();
    for path in latest(results)? {
        let estimates = json(&path)?;
        let about = json(&path.with_file_name("benchmark.json"))?;
        let name = about.get("full_id").and_then(Value::as_str).unwrap_or_default();
        let number = |pointer: &str| {
            estimates
                .pointer(pointer)
                .and_then(Value::as_f64)
                .ok_or_else(|| Problem::new(format!("{} has no {pointer}", path.display())))
        };
        rows.push(vec![
            name.to_owned(),
            time(number("/median/point_estimate")?),
            time(number("/median/confidence_interval/lower_bound")?),
            time(number("/median/confidence_interval/upper_bound")?),
        ]);
    }
    rows.sort();
    Ok(rows)
}

fn json(path: &Path) -> Outcome<Value> {
    serde_json::from_slice(&place::read(path)?)
        .map_err(|error| Problem::new(format!("{} is not JSON: {error}", path.display())))
}

/// Nanoseconds in the unit that reads best.
fn time(nanoseconds: f64) -> String {
    for (unit, size) in [("s", 1e9), ("ms", 1e6), ("µs", 1e3)] {
        if nanoseconds >= size {
            return format!("{:.2} {unit}", nanoseconds / size);
        }
    }
    format!("{nanoseconds:.1} ns")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn medians_are_read_from_the_latest_results() {
        let folder = std::env::temp_dir().join(format!("xtask-bench-{}", std::process::id()));
        let new = folder.join("compile/demo/new");
        let estimates = r#"{"median":{"point_estimate":1234567.0,
            "confidence_interval":{"lower_bound":900.0,"upper_bound":12.5}}}"#;
        place::write(&new.join("estimates.json"), estimates.as_bytes()).unwrap();
        place::write(&new.join("benchmark.json"), br#"{"full_id":"compile/demo"}"#).unwrap();
        let rows = medians(&folder).unwrap();
        assert_eq!(rows, [["compile/demo", "1.23 ms", "900.0 ns", "12.5 ns"]]);
        forget(&folder).unwrap();
        assert!(medians(&folder).unwrap().is_empty());
        fs::remove_dir_all(&folder).unwrap();
    }
}
