//! The JSON Schema of the program file, generated from the types and kept in the repository.

use std::path::{Path, PathBuf};
use std::process::Command;

use crate::place::{self, Place};
use crate::problem::{Outcome, Problem};
use crate::process;
use crate::say;
use crate::site;

const SCHEMA: &str = "guide-data/schema/program.schema.json";

/// Writes the schema, or with `check` refuses a committed one that the types have left behind.
pub(crate) fn run(place: &Place, check: bool) -> Outcome<()> {
    let fresh = generate(&site::build_lidleaf(place)?)?;
    let path = place.root().join(SCHEMA);
    if check {
        return compare(&path, &fresh);
    }
    place::write(&path, &fresh)?;
    say::note(&format!("{SCHEMA} is current"));
    Ok(())
}

fn generate(lidleaf: &PathBuf) -> Outcome<Vec<u8>> {
    let mut text = process::output(Command::new(lidleaf).arg("schema"))?;
    if !text.ends_with('\n') {
        text.push('\n');
    }
    Ok(text.into_bytes())
}

fn compare(path: &Path, fresh: &[u8]) -> Outcome<()> {
    if place::read(path)? == fresh {
        return Ok(());
    }
    Err(Problem::new(format!("{} no longer fits the types", path.display()))
        .next("run `cargo xtask schema` and commit the file"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_schema_left_behind_is_refused() {
        let path = std::env::temp_dir().join(format!("xtask-schema-{}.json", std::process::id()));
        place::write(&path, b"{}\n").unwrap();
        compare(&path, b"{}\n").unwrap();
        assert!(compare(&path, b"{\"type\":\"object\"}\n").unwrap_err().to_string().contains("xtask schema"));
        std::fs::remove_file(&path).unwrap();
    }
}
