//! Builds the app for the browser into `dist/app`.

use std::collections::BTreeSet;
use std::env;
use std::fs;
use std::path::{Path, PathBuf};

use wasm_bindgen_cli_support::Bindgen;

use crate::app_files;
use crate::digest::sha256;
use crate::place::{self, Place};
use crate::problem::{Outcome, Problem};
use crate::process;
use crate::say;
use crate::toolchain::{self, TARGET, Toolchain};

/// The app's programs: each becomes `pkg/NAME.js` and `pkg/NAME_bg.wasm`. All are ES modules; the
/// print worker is started as a module worker, which Chromium, Firefox and Safari all have.
pub(crate) const BINS: &[&str] = &["resident", "coordinator", "print_worker"];

/// How the app is compiled.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Profile {
    /// What phones download: small, slow to build.
    Ship,
    /// Quick to build, to look at a change.
    Dev,
}

impl Profile {
    fn name(self) -> &'static str {
        match self {
            Self::Ship => "wasm",
            Self::Dev => "wasm-dev",
        }
    }
}

/// Compiles the app, writes the JavaScript glue, and gathers everything in `dist/app`.
pub(crate) fn build(place: &Place, profile: Profile) -> Outcome<()> {
    let toolchain = toolchain::ensure(place)?;
    compile(place, toolchain, profile)?;

    let app = place.app();
    fs::create_dir_all(&app).map_err(|error| Problem::file("create", &app, &error))?;
    let mut kept = BTreeSet::new();
    for bin in BINS {
        let glue = glue(place, profile, bin)?;
        app_files::copy(&glue, &app, "pkg/", |name| name != STAMP, &mut kept)?;
    }
    let root = place.root();
    app_files::copy(&root.join("app/static"), &app, "", |_| true, &mut kept)?;
    app_files::copy(&root.join("print/fonts"), &app, "fonts/", ships, &mut kept)?;
    app_files::finish(&app, &kept)
}

/// Fonts ship with their licence and nothing else.
fn ships(name: &str) -> bool {
    let extension = Path::new(name).extension().and_then(|extension| extension.to_str());
    matches!(extension, Some("ttf" | "otf" | "woff2" | "txt"))
}

fn compile(place: &Place, toolchain: Toolchain, profile: Profile) -> Outcome<()> {
    say::step(&format!(
        "compiling the app to WebAssembly, profile {} (minutes when cold, seconds when warm)",
        profile.name()
    ));
    // What is linked with the desk's libraries carries what they export: the resident's program is not.
    cargo_build(place, toolchain, profile, &["resident"], &["--no-default-features"])?;
    let desk: Vec<&str> = BINS.iter().copied().filter(|bin| *bin != "resident").collect();
    cargo_build(place, toolchain, profile, &desk, &[])
}

fn cargo_build(
    place: &Place,
    toolchain: Toolchain,
    profile: Profile,
    bins: &[&str],
    features: &[&str],
) -> Outcome<()> {
    let mut cargo = toolchain.cargo(place);
    cargo.args(["build", "--package", "app"]).args(features);
    for bin in bins {
        cargo.args(["--bin", bin]);
    }
    cargo
        .args(["--target", TARGET, "--profile", profile.name()])
        .arg("--target-dir")
        .arg(place.wasm_target())
        .env(FLAGS, flags(place)?);
    process::run(&mut cargo)
}

/// The program that times the app in a browser, as shipped programs are compiled; `pkg` gets it.
pub(crate) fn build_timings(place: &Place, pkg: &Path) -> Outcome<()> {
    let toolchain = toolchain::ensure(place)?;
    cargo_build(place, toolchain, Profile::Ship, &["timings"], &[])?;
    let glue = glue(place, Profile::Ship, "timings")?;
    for name in place::files_below(&glue)?.into_iter().filter(|name| name != STAMP) {
        place::write(&pkg.join(&name), &place::read(&glue.join(&name))?)?;
    }
    Ok(())
}

/// Where cargo reads the compiler's flags for the browser, and for it alone.
pub(crate) const FLAGS: &str = "CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUSTFLAGS";

/// Panic messages name source files. Without this they would carry the folders of the machine that
/// built the app into every phone, and two machines would never build the same bytes.
pub(crate) fn flags(place: &Place) -> Outcome<String> {
    let sources = registry_sources(place)?;
    let mut flags = vec![format!("--remap-path-prefix={}=lidleaf", place.root().display())];
    for source in sources {
        flags.push(format!("--remap-path-prefix={}=deps", source.display()));
    }
    Ok(flags.join(" "))
}

/// The folders in which cargo unpacks what it downloads, one for each registry.
fn registry_sources(place: &Place) -> Outcome<Vec<PathBuf>> {
    let home = match (env::var_os("CARGO_HOME"), env::home_dir()) {
        (Some(home), _) => PathBuf::from(home),
        (None, Some(home)) => home.join(".cargo"),
        (None, None) => return Ok(Vec::new()),
    };
    let registry = home.join("registry").join("src");
    if !registry.is_dir() {
        // The folder must be known before the first build: another flag in the second would be
        // another build of everything.
        process::run(place.cargo().args(["fetch", "--quiet"]))?;
    }
    let Ok(entries) = fs::read_dir(&registry) else {
        return Ok(Vec::new());
    };
    let mut folders: Vec<PathBuf> = entries.flatten().map(|entry| entry.path()).collect();
    folders.sort();
    Ok(folders)
}

/// A program as compiled, with the names the glue's writer takes out.
pub(crate) fn compiled(place: &Place, profile: Profile, bin: &str) -> PathBuf {
    built(place, profile).join(format!("{bin}.wasm"))
}

fn built(place: &Place, profile: Profile) -> PathBuf {
    place.wasm_target().join(TARGET).join(profile.name())
}

/// Kept beside the glue: the hash of the program, which names the version of wasm-bindgen it needs, and
/// of this file, which holds the settings.
const STAMP: &str = "made-from.txt";

/// Writes the JavaScript glue of one program, unless it was written from the same bytes before.
fn glue(place: &Place, profile: Profile, bin: &str) -> Outcome<PathBuf> {
    let input = compiled(place, profile, bin);
    let output = built(place, profile).join("glue").join(bin);
    let stamp = output.join(STAMP);
    let made_from =
        format!("program {}\nwriter {}\n", sha256(&place::read(&input)?), sha256(include_bytes!("wasm.rs")),);
    if fs::read_to_string(&stamp).is_ok_and(|old| old == made_from) {
        return Ok(output);
    }
    // A program that no longer has a snippet must not keep its file.
    let _ = fs::remove_dir_all(&output);
    let refused = |error: &dyn std::fmt::Display| {
        Problem::new(format!("the glue of {bin} could not be written: {error:#}"))
    };
    // wasm-opt was tried after this step (binaryen 132, -Os, -Oz, -O2): raw size falls by 4 to 8 %, the
    // compressed size by less than 1 %, so it is left out.
    let mut bindgen = Bindgen::new();
    bindgen
        .web(true)
        .map_err(|error| refused(&error))?
        .input_path(&input)
        .out_name(bin)
        .typescript(false)
        .keep_debug(false)
        .remove_name_section(profile == Profile::Ship)
        .remove_producers_section(profile == Profile::Ship)
        .generate(&output)
        .map_err(|error| refused(&error))?;
    place::write(&stamp, made_from.as_bytes())?;
    Ok(output)
}
