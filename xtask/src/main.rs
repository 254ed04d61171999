//! Lidleaf's developer tasks. `cargo xtask` alone lists them.

mod app_files;
mod apt;
mod digest;
mod place;
mod problem;
mod process;
mod say;
mod site;
mod toolchain;
mod wasm;

use std::process::ExitCode;

use lexopt::prelude::*;

use crate::place::Place;
use crate::problem::{Outcome, Problem};
use crate::site::RunOptions;
use crate::wasm::Profile;

const USAGE: &str = "\
cargo xtask TASK

  run [--port N] [--no-serve] [--dev]   build everything and serve the demo at a local address
  wasm [--dev]                          build only the app, into dist/app

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
        "wasm" => wasm::build(&place, only_profile(args)?),
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

fn only_profile(mut args: lexopt::Parser) -> Outcome<Profile> {
    let mut profile = Profile::Ship;
    while let Some(arg) = args.next().map_err(misread)? {
        match arg {
            Long("dev") => profile = Profile::Dev,
            other => return Err(misread(other.unexpected())),
        }
    }
    Ok(profile)
}
