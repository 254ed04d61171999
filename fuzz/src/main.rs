//! libFuzzer's driver for one of `lidleaf_tests::fuzz::ENTRIES`, named by the environment: one program
//! for all, so that one build serves every way in.

#![no_main]

use std::path::Path;
use std::sync::OnceLock;

use libfuzzer_sys::fuzz_target;
use lidleaf_tests::fuzz;

/// The way in that is fuzzed.
static ENTRY: OnceLock<fuzz::Entry> = OnceLock::new();

/// Reads which way in is wanted, and writes the good files to begin with where that is wanted.
fn begin() {
    let name = std::env::var("LIDLEAF_FUZZ_ENTRY").unwrap_or_default();
    let Some(&entry) = fuzz::ENTRIES.iter().find(|(known, _)| *known == name) else {
        let names: Vec<&str> = fuzz::ENTRIES.iter().map(|(name, _)| *name).collect();
        panic!("LIDLEAF_FUZZ_ENTRY is {name:?}; it has to be one of {}", names.join(", "));
    };
    if let Some(folder) = std::env::var_os("LIDLEAF_FUZZ_SEEDS") {
        let folder = Path::new(&folder);
        std::fs::create_dir_all(folder.join("seeds")).expect("making the folder of seeds");
        for (at, seed) in fuzz::seeds(entry.0).iter().enumerate() {
            std::fs::write(folder.join("seeds").join(at.to_string()), seed).expect("writing a seed");
        }
        std::fs::write(folder.join("words.dict"), fuzz::dictionary()).expect("writing the dictionary");
    }
    ENTRY.get_or_init(|| entry);
}

fuzz_target!(init: begin(), |bytes: &[u8]| {
    let (_, run) = ENTRY.get().expect("a way in was chosen before the first run");
    run(bytes);
});
