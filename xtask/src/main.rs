//! Lidleaf's developer tasks. `cargo xtask` alone lists them.

mod app_files;
mod apt;
mod bench;
mod budget;
mod digest;
mod fuzz;
mod makeup;
mod place;
mod problem;
mod process;
mod say;
mod schema;
mod site;
mod stages;
mod toolchain;
mod tools;
mod wasm;

use std::process::ExitCode;

use lexopt::prelude::*;

use crate::fuzz::FuzzOptions;
use crate::place::Place;
use crate::problem::{Outcome, Problem};
use crate::site::RunOptions;
use crate::wasm::Profile;

const USAGE: &str = "\
cargo xtask TASK

  run [--port N] [--no-serve] [--dev]   build everything and serve the demo at a local address
  test [--only STAGE]...                set up what tests need and run every test
  wasm [--dev]                          build only the app, into dist/app
  budget                                measure what phones download, and enforce the limits
  bench [--phone]                       run the benchmarks and print their medians; --phone: in a browser only
  fuzz ENTRY [--seconds N]              throw changed files at one way in; needs a C++ compiler
  schema [--check]                      write the program file's JSON Schema, or check it
  tools                                 set up what tests need, and nothing else

--dev compiles the app quickly and large, to look at a change.
";

fn main() -> ExitCode {
    match perform() {
        Ok(()) => ExitCode::SUCCESS,
        Err(problem) => {
            eprintln!("error: {problem}");
            ExitCode::FAILURE
        }
    }
}

fn perform() -> Outcome<()> {
    let mut args = lexopt::Parser::from_env();
    let task = match args.next().map_err(misread)? {
        None => {
            print!("{USAGE}");
            return Ok(());
        }
        Some(Long("help") | Short('h')) => {
            print!("{USAGE}");
            return Ok(());
        }
        Some(Value(task)) => task.to_string_lossy().into_owned(),
        Some(other) => return Err(misread(other.unexpected())),
    };
    let place = Place::find()?;
    match task.as_str() {
        "run" => site::run(&place, &run_options(args)?),
        "test" => stages::run(&place, &only(args)?),
        "wasm" => wasm::build(&place, profile(flag(args, "dev")?)),
        "budget" => nothing(args).and_then(|()| budget::run(&place)),
        "bench" => bench::run(&place, flag(args, "phone")?),
        "fuzz" => fuzz::run(&place, &fuzz_options(args)?),
        "schema" => schema::run(&place, flag(args, "check")?),
        "tools" => nothing(args).and_then(|()| tools::ensure(&place)),
        other => Err(misread(format!("there is no task \"{other}\"").into())),
    }
}

fn misread(error: lexopt::Error) -> Problem {
    Problem::new(error.to_string()).next("`cargo xtask --help` lists the tasks")
}

fn run_options(mut args: lexopt::Parser) -> Outcome<RunOptions> {
    let mut options = RunOptions { port: None, serve: true, profile: Profile::Ship };
    while let Some(arg) = args.next().map_err(misread)? {
        match arg {
            Long("port") => {
                options.port = Some(args.value().and_then(|port| port.parse()).map_err(misread)?);
            }
            Long("no-serve") => options.serve = false,
            Long("dev") => options.profile = Profile::Dev,
            other => return Err(misread(other.unexpected())),
        }
    }
    Ok(options)
}

fn fuzz_options(mut args: lexopt::Parser) -> Outcome<FuzzOptions> {
    let mut options = FuzzOptions { entry: String::new(), seconds: 120 };
    while let Some(arg) = args.next().map_err(misread)? {
        match arg {
            Value(entry) if options.entry.is_empty() => {
                options.entry = entry.to_string_lossy().into_owned();
            }
            Long("seconds") => {
                options.seconds = args.value().and_then(|n| n.parse()).map_err(misread)?;
            }
            other => return Err(misread(other.unexpected())),
        }
    }
    Ok(options)
}

fn profile(dev: bool) -> Profile {
    if dev { Profile::Dev } else { Profile::Ship }
}

/// Reads the stages that `--only` names.
fn only(mut args: lexopt::Parser) -> Outcome<Vec<String>> {
    let mut stages = Vec::new();
    while let Some(arg) = args.next().map_err(misread)? {
        match arg {
            Long("only") => {
                let value = args.value().map_err(misread)?;
                stages.push(value.to_string_lossy().into_owned());
            }
            other => return Err(misread(other.unexpected())),
        }
    }
    Ok(stages)
}

/// Whether this flag, the only one allowed, was given.
fn flag(mut args: lexopt::Parser, name: &str) -> Outcome<bool> {
    let mut given = false;
    while let Some(arg) = args.next().map_err(misread)? {
        match arg {
            Long(flag) if flag == name => given = true,
            other => return Err(misread(other.unexpected())),
        }
    }
    Ok(given)
}

fn nothing(mut args: lexopt::Parser) -> Outcome<()> {
    match args.next().map_err(misread)? {
        None => Ok(()),
        Some(other) => Err(misread(other.unexpected())),
    }
}
