//! `cargo xtask test`: everything that must hold, in stages, with the time each took.

use std::time::{Duration, Instant};

use crate::apt;
use crate::budget;
use crate::place::Place;
use crate::problem::{Outcome, Problem};
use crate::process;
use crate::say;
use crate::schema;
use crate::site;
use crate::toolchain::{self, TARGET, Toolchain};
use crate::tools;
use crate::wasm::{self, Profile};

struct Stage {
    name: &'static str,
    what: &'static str,
    /// Stages that must have succeeded before.
    needs: &'static [&'static str],
    perform: fn(&Place) -> Outcome<()>,
}

/// In the order they run: what fails quickest first.
const STAGES: &[Stage] = &[
    Stage { name: "fmt", what: "the code is formatted", needs: &[], perform: fmt },
    Stage { name: "tools", what: "what the tests call on is installed", needs: &[], perform: tools::ensure },
    Stage { name: "lint", what: "Clippy has nothing to say", needs: &[], perform: lint },
    Stage { name: "unit", what: "each crate's own tests", needs: &["tools"], perform: unit },
    Stage { name: "lint-app", what: "Clippy on the app, for the browser", needs: &[], perform: lint_app },
    Stage { name: "site", what: "the app and the demo site are built", needs: &[], perform: build_site },
    Stage { name: "schema", what: "the program file's schema is current", needs: &[], perform: check_schema },
    Stage {
        name: "whole",
        what: "all crates together, in a browser",
        needs: &["tools", "site"],
        perform: whole,
    },
    Stage { name: "budget", what: "sizes are within their limits", needs: &["site"], perform: budget::run },
];

/// How a stage ended.
#[derive(Clone, Copy, PartialEq, Eq)]
enum End {
    Done,
    Failed,
    /// A stage it needs failed.
    NotRun,
}

/// The names that `--only` takes.
pub(crate) fn names() -> String {
    let names: Vec<&str> = STAGES.iter().map(|stage| stage.name).collect();
    names.join(", ")
}

/// Runs all stages, or those named with what they need, and prints the table.
pub(crate) fn run(place: &Place, only: &[String]) -> Outcome<()> {
    let wanted = wanted(only)?;
    let mut ended: Vec<(&Stage, End, Duration)> = Vec::new();
    for stage in STAGES.iter().filter(|stage| wanted.contains(&stage.name)) {
        say::step(&format!("[{}] {}", stage.name, stage.what));
        let started = Instant::now();
        let lacking =
            ended.iter().find(|(before, end, _)| *end != End::Done && stage.needs.contains(&before.name));
        let end = if let Some((before, ..)) = lacking {
            eprintln!("not run: it needs \"{}\"", before.name);
            End::NotRun
        } else if let Err(problem) = (stage.perform)(place) {
            eprintln!("error: {problem}");
            End::Failed
        } else {
            End::Done
        };
        ended.push((stage, end, started.elapsed()));
    }
    print!("\n{}", summary(&ended));
    let failed: Vec<&str> =
        ended.iter().filter(|(_, end, _)| *end != End::Done).map(|(stage, ..)| stage.name).collect();
    match failed.first() {
        None => Ok(()),
        Some(first) => Err(Problem::new(format!("not everything holds: {}", failed.join(", ")))
            .next(format!("`cargo xtask test --only {first}` runs the first of them again"))),
    }
}

/// The stages to run: all, or those named and what they need.
fn wanted(only: &[String]) -> Outcome<Vec<&'static str>> {
    let mut wanted = Vec::new();
    for name in only {
        let Some(stage) = STAGES.iter().find(|stage| stage.name == name) else {
            return Err(Problem::new(format!("there is no stage \"{name}\""))
                .next(format!("the stages are {}", names())));
        };
        wanted.push(stage.name);
        wanted.extend(stage.needs);
    }
    if only.is_empty() {
        wanted.extend(STAGES.iter().map(|stage| stage.name));
    }
    Ok(wanted)
}

fn summary(ended: &[(&Stage, End, Duration)]) -> String {
    let mut rows: Vec<Vec<String>> = Vec::new();
    let mut total = Duration::ZERO;
    for (stage, end, took) in ended {
        let word = match end {
            End::Done => "ok",
            End::Failed => "FAILED",
            End::NotRun => "not run",
        };
        total += *took;
        rows.push(vec![stage.name.to_owned(), word.to_owned(), seconds(*took)]);
    }
    rows.push(vec!["together".to_owned(), String::new(), seconds(total)]);
    say::table(&["stage", "end", "time"], &rows)
}

fn seconds(took: Duration) -> String {
    format!("{}.{} s", took.as_secs(), took.subsec_millis() / 100)
}

fn fmt(place: &Place) -> Outcome<()> {
    process::run(place.cargo().args(["fmt", "--all", "--check"]))
}

fn lint(place: &Place) -> Outcome<()> {
    let mut cargo = place.cargo();
    cargo.args(["clippy", "--quiet", "--workspace", "--exclude", "app", "--all-targets"]);
    process::run(cargo.args(["--", "-D", "warnings"]))
}

fn lint_app(place: &Place) -> Outcome<()> {
    let toolchain = toolchain::ensure(place)?;
    ensure_clippy(toolchain, place)?;
    let mut cargo = toolchain.cargo(place);
    cargo
        .args(["clippy", "--quiet", "--package", "app", "--target", TARGET, "--target-dir"])
        .arg(place.wasm_target())
        .env(wasm::FLAGS, wasm::flags(place)?);
    process::run(cargo.args(["--", "-D", "warnings"]))
}

fn ensure_clippy(toolchain: Toolchain, place: &Place) -> Outcome<()> {
    match toolchain {
        Toolchain::Host => Ok(()),
        Toolchain::Debian if toolchain.has_clippy(place) => Ok(()),
        Toolchain::Debian => apt::ensure(&["rust-web-clippy"], "Clippy for Debian's compiler"),
    }
}

/// The tests that need no browser. Those of the `tests` crate run once, in the stage "whole".
fn unit(place: &Place) -> Outcome<()> {
    let mut cargo = place.cargo();
    process::run(cargo.args(["test", "--workspace", "--exclude", "lidleaf-tests", "--no-fail-fast"]))
}

fn build_site(place: &Place) -> Outcome<()> {
    site::build(place, Profile::Ship).map(drop)
}

fn check_schema(place: &Place) -> Outcome<()> {
    schema::run(place, true)
}

fn whole(place: &Place) -> Outcome<()> {
    let lidleaf = site::build_lidleaf(place)?;
    let mut cargo = place.cargo();
    cargo
        .args(["test", "--package", "lidleaf-tests", "--no-fail-fast"])
        .args(["--", "--include-ignored"])
        .env("LIDLEAF_SITE", place.site())
        .env("LIDLEAF_APP", place.app())
        .env("LIDLEAF_BIN", lidleaf)
        .env("LIDLEAF_AXE", tools::axe(place))
        .env("LIDLEAF_PYTHON", tools::python(place))
        // The README shows what the tests saw.
        .env("LIDLEAF_SCREENSHOTS", "1");
    process::run(&mut cargo)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_stage_is_run_with_what_it_needs() {
        assert_eq!(wanted(&["budget".to_owned()]).unwrap(), ["budget", "site"]);
        assert_eq!(wanted(&[]).unwrap().len(), STAGES.len());
        let problem = wanted(&["bugdet".to_owned()]).unwrap_err().to_string();
        assert!(problem.contains("\"bugdet\"") && problem.contains("whole"), "{problem}");
    }

    #[test]
    fn needs_come_before_what_needs_them_and_need_nothing() {
        for (at, stage) in STAGES.iter().enumerate() {
            for need in stage.needs {
                let before = STAGES[..at].iter().find(|other| other.name == *need);
                let before = before.unwrap_or_else(|| panic!("{} needs {need} first", stage.name));
                // `wanted` follows needs one step deep.
                assert!(before.needs.is_empty());
            }
        }
    }
}
