//! A compiler for `wasm32-unknown-unknown`, found or made.
//!
//! With rustup and a network the target is one command. Where rustup cannot fetch it, Debian's
//! compiler brings the standard library as source, and this builds it once into that compiler's own
//! folder; the project's builds are then ordinary stable builds.

use std::env;
use std::ffi::OsString;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Duration;

use crate::apt;
use crate::place::{self, Place};
use crate::problem::{Outcome, Problem};
use crate::process;
use crate::say;

pub(crate) const TARGET: &str = "wasm32-unknown-unknown";

/// Debian's packages for the recipe. Its LLVM 22 linker goes with its compiler.
const DEBIAN_PACKAGES: &[&str] = &["rustc-web", "cargo-web", "rust-web-src", "lld-22"];
const DEBIAN_LINKER: &str = "wasm-ld-22";
const DEBIAN_BIN: &str = "/usr/bin";

/// Says which compiler the standard library beside it was built with: after an upgrade it is built anew.
const STAMP: &str = "lidleaf-std.txt";

/// Where nothing else can be done, rustup is given the time of a slow line.
const RUSTUP_PATIENCE: Duration = Duration::from_secs(600);
/// Where Debian's compiler is at hand, rustup only shows whether it reaches its server at all.
const RUSTUP_TRY: Duration = Duration::from_secs(20);

/// Overrides the choice, so that both ways can be tested on one machine.
const CHOICE: &str = "LIDLEAF_WASM_TOOLCHAIN";

/// A compiler that can build for the browser.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Toolchain {
    /// The compiler that runs these tasks.
    Host,
    /// Debian's packages, beside another host compiler.
    Debian,
}

impl Toolchain {
    /// Cargo set up for this compiler.
    pub(crate) fn cargo(self, place: &Place) -> Command {
        match self {
            Self::Host => place.cargo(),
            Self::Debian => debian_cargo(place.root()),
        }
    }

    /// Whether Clippy can check the app with this compiler.
    pub(crate) fn has_clippy(self, place: &Place) -> bool {
        let mut command = self.cargo(place);
        command.args(["clippy", "--version"]);
        process::output(&mut command).is_ok()
    }
}

/// Finds or makes a compiler for the browser; quick when there is one already.
pub(crate) fn ensure(place: &Place) -> Outcome<Toolchain> {
    let choice = env::var(CHOICE).unwrap_or_default();
    match choice.as_str() {
        "" => choose(place),
        "host" if host_has_target(place)? => Ok(Toolchain::Host),
        "host" => {
            add_with_rustup(place, RUSTUP_PATIENCE)?;
            Ok(Toolchain::Host)
        }
        "debian" => {
            ensure_debian(place)?;
            Ok(Toolchain::Debian)
        }
        other => Err(Problem::new(format!("{CHOICE} is \"{other}\""))
            .next("set it to host or debian, or leave it unset")),
    }
}

fn choose(place: &Place) -> Outcome<Toolchain> {
    if host_has_target(place)? {
        return Ok(Toolchain::Host);
    }
    if debian_is_ready()? {
        return Ok(Toolchain::Debian);
    }
    let debian_possible = apt::can_install() || Path::new(DEBIAN_BIN).join("rustc").is_file();
    let limit = if debian_possible { RUSTUP_TRY } else { RUSTUP_PATIENCE };
    let refused = match add_with_rustup(place, limit) {
        Ok(()) => return Ok(Toolchain::Host),
        Err(refused) => refused,
    };
    say::note(&refused.to_string());
    if !debian_possible {
        return Err(Problem::new(format!(
            "the compiler's {TARGET} target is missing and could not be fetched"
        ))
        .next(format!(
            "run `rustup target add {TARGET}` with a network, or as root on Debian run `{}`, then this again",
            apt::command_line(DEBIAN_PACKAGES)
        )));
    }
    ensure_debian(place)?;
    Ok(Toolchain::Debian)
}

fn add_with_rustup(place: &Place, limit: Duration) -> Outcome<()> {
    if !process::on_path("rustup") {
        return Err(Problem::new("rustup is not installed"));
    }
    say::step(&format!(
        "rustup target add {TARGET} (browsers run WebAssembly; at most {} s)",
        limit.as_secs()
    ));
    process::run_within(Command::new("rustup").args(["target", "add", TARGET]), limit)?;
    if host_has_target(place)? {
        Ok(())
    } else {
        Err(Problem::new("rustup added the target to another compiler than the one in use"))
    }
}

fn host_has_target(place: &Place) -> Outcome<bool> {
    let mut rustc = Command::new("rustc");
    rustc.args(["--print", "sysroot"]).current_dir(place.root());
    let sysroot = process::output(&mut rustc)?;
    Ok(has_std(&library(Path::new(sysroot.trim()))))
}

fn library(sysroot: &Path) -> PathBuf {
    sysroot.join("lib/rustlib").join(TARGET).join("lib")
}

fn has_std(library: &Path) -> bool {
    let Ok(entries) = fs::read_dir(library) else {
        return false;
    };
    entries.flatten().any(|entry| entry.file_name().to_string_lossy().starts_with("libstd-"))
}

fn debian_rustc() -> Command {
    let mut command = Command::new(Path::new(DEBIAN_BIN).join("rustc"));
    command.env_remove("LD_LIBRARY_PATH");
    command
}

fn debian_version() -> Outcome<String> {
    process::output(debian_rustc().arg("-vV"))
}

fn debian_library() -> Outcome<PathBuf> {
    let sysroot = process::output(debian_rustc().args(["--print", "sysroot"]))?;
    Ok(library(Path::new(sysroot.trim())))
}

fn debian_is_ready() -> Outcome<bool> {
    let bin = Path::new(DEBIAN_BIN);
    let tools = ["rustc", "cargo", DEBIAN_LINKER];
    if !tools.iter().all(|tool| bin.join(tool).is_file()) {
        return Ok(false);
    }
    let library = debian_library()?;
    let stamp = library.with_file_name(STAMP);
    let version = debian_version()?;
    Ok(has_std(&library) && fs::read_to_string(stamp).is_ok_and(|built| built == version))
}

fn ensure_debian(place: &Place) -> Outcome<()> {
    if debian_is_ready()? {
        return Ok(());
    }
    apt::ensure(DEBIAN_PACKAGES, "a compiler whose standard library comes as source")?;
    say::step("building the standard library for WebAssembly, once (about a minute)");
    let seed = place.wasm_target().join("std-seed");
    write_seed(&seed)?;
    let mut cargo = debian_cargo(&seed);
    cargo
        .args(["build", "--release", "--quiet", "--target", TARGET])
        .arg("-Zbuild-std=std,panic_abort,proc_macro")
        .env("CARGO_TARGET_DIR", seed.join("target"))
        // Building the standard library is a nightly switch; the project's own builds never set this.
        .env("RUSTC_BOOTSTRAP", "1")
        // Without bitcode in it, link-time optimisation of the app fails.
        .env("RUSTFLAGS", "-Cembed-bitcode=yes");
    process::run(&mut cargo)?;
    install_std(&seed.join("target").join(TARGET).join("release/deps"))
}

/// An empty crate: building it builds the standard library.
fn write_seed(seed: &Path) -> Outcome<()> {
    let manifest = "[package]\nname = \"std-seed\"\nversion = \"0.0.0\"\nedition = \"2024\"\n\
                    [workspace]\n";
    place::write(&seed.join("Cargo.toml"), manifest.as_bytes())?;
    place::write(&seed.join("src/lib.rs"), b"#![no_std]\n")
}

/// Copies the built libraries beside the compiler's own, in one step so that a stop halfway leaves none.
fn install_std(built: &Path) -> Outcome<()> {
    let library = debian_library()?;
    let Some(target) = library.parent() else {
        return Err(Problem::new("the compiler's folder has no parent"));
    };
    let fresh = target.join("lib.new");
    let act = |action: &'static str| {
        move |error: std::io::Error| {
            Problem::file(action, Path::new(target), &error)
                .next("run this as root once: the standard library goes beside the compiler")
        }
    };
    let _ = fs::remove_dir_all(&fresh);
    fs::create_dir_all(&fresh).map_err(act("create"))?;
    for name in place::files_below(built)? {
        if name.ends_with(".rlib") && !name.starts_with("libstd_seed") {
            fs::copy(built.join(&name), fresh.join(&name)).map_err(act("write to"))?;
        }
    }
    let _ = fs::remove_dir_all(&library);
    fs::rename(&fresh, &library).map_err(act("write to"))?;
    fs::write(target.join(STAMP), debian_version()?).map_err(act("write to"))
}

/// Debian's cargo, freed from what the host's rustup put into the environment.
fn debian_cargo(folder: &Path) -> Command {
    let mut path = OsString::from(DEBIAN_BIN);
    if let Some(rest) = env::var_os("PATH") {
        path.push(":");
        path.push(rest);
    }
    let mut command = Command::new(Path::new(DEBIAN_BIN).join("cargo"));
    command
        .current_dir(folder)
        .env("PATH", path)
        .env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER", DEBIAN_LINKER);
    for name in ["CARGO", "RUSTC", "RUSTUP_TOOLCHAIN", "LD_LIBRARY_PATH"] {
        command.env_remove(name);
    }
    command
}
