//! The finished site: the built app and the demo program's guide, as any web host would serve it.

use std::env;
use std::ffi::OsString;
use std::net::{Ipv4Addr, TcpListener};
use std::path::PathBuf;
use std::process::Command;

use crate::place::Place;
use crate::problem::{Outcome, Problem};
use crate::process;
use crate::say;
use crate::wasm::{self, Profile};

/// The first port tried, and how many after it, when the developer names none.
const PORT: u16 = 8080;
const PORTS_TRIED: u16 = 20;

/// What `cargo xtask run` was asked.
pub(crate) struct RunOptions {
    pub(crate) port: Option<u16>,
    pub(crate) serve: bool,
    pub(crate) profile: Profile,
}

/// Builds the site and serves it until it is interrupted.
pub(crate) fn run(place: &Place, options: &RunOptions) -> Outcome<()> {
    // A port that is taken is told before the build, not minutes later.
    let port = match (options.serve, options.port) {
        (false, _) => None,
        (true, Some(port)) if is_free(port) => Some(port),
        (true, Some(port)) => {
            return Err(Problem::new(format!("port {port} is already in use"))
                .next("name another one: `cargo xtask run --port 8090`"));
        }
        (true, None) => Some(first_free()?),
    };
    let lidleaf = build(place, options.profile)?;
    let Some(port) = port else {
        say::step(&format!("the site is in {}", place.site().display()));
        return Ok(());
    };
    println!("Residents:   http://127.0.0.1:{port}/");
    println!("Coordinator: http://127.0.0.1:{port}/coordinator.html");
    println!("Ctrl-C stops the server.");
    let mut serve = Command::new(lidleaf);
    serve.arg("serve").arg(place.site()).args(["--port", &port.to_string()]).current_dir(place.root());
    process::run(&mut serve)
}

/// Builds app, command line and site; returns the command line's path.
pub(crate) fn build(place: &Place, profile: Profile) -> Outcome<PathBuf> {
    wasm::build(place, profile)?;
    let lidleaf = build_lidleaf(place)?;
    say::step("publishing the demo program's guide with the app");
    let mut publish = Command::new(&lidleaf);
    publish
        .arg("publish")
        .arg("--app")
        .arg(place.app())
        .arg("--out")
        .arg(place.site())
        .current_dir(place.root());
    process::run(&mut publish)?;
    Ok(lidleaf)
}

/// Builds the command line in release: it prints sheets and is what a coordinator uses.
pub(crate) fn build_lidleaf(place: &Place) -> Outcome<PathBuf> {
    say::step("compiling the command line, lidleaf");
    let mut cargo = place.cargo();
    cargo.args(["build", "--release", "--package", "lidleaf"]);
    process::run(&mut cargo)?;
    let mut name = OsString::from("lidleaf");
    name.push(env::consts::EXE_SUFFIX);
    Ok(place.target().join("release").join(name))
}

fn is_free(port: u16) -> bool {
    TcpListener::bind((Ipv4Addr::LOCALHOST, port)).is_ok()
}

fn first_free() -> Outcome<u16> {
    let last = PORT.saturating_add(PORTS_TRIED);
    (PORT..last).find(|port| is_free(*port)).ok_or_else(|| {
        Problem::new(format!("ports {PORT} to {} are all in use", last - 1))
            .next("name a free one: `cargo xtask run --port 9000`")
    })
}
