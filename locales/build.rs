//! Reads the language folders and writes the language table, so that adding a language is adding
//! a folder: `meta.json` and the same `.ftl` files as `en`.

use std::collections::BTreeMap;
use std::error::Error;
use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::{env, fs};

#[path = "src/mark.rs"]
#[expect(unreachable_pub, reason = "public in the library, which shares the file")]
mod mark;

#[derive(serde::Deserialize)]
#[serde(deny_unknown_fields)]
struct Meta {
    /// The language's name in itself.
    endonym: String,
    /// "ltr" or "rtl".
    direction: String,
    /// Whether readers know ½ and ¼ in measures.
    fractions: bool,
    /// Number symbols; the row without regions holds where no other row names the region.
    numbers: Vec<Numbers>,
    /// By message file: who signed the translation off.
    reviewed: BTreeMap<String, Review>,
}

#[derive(serde::Deserialize)]
#[serde(deny_unknown_fields)]
struct Numbers {
    regions: Vec<String>,
    decimal: char,
    group: char,
    min_group: u8,
    /// Only where it is not three.
    #[serde(default = "three")]
    next_groups: u8,
}

fn three() -> u8 {
    3
}

#[derive(serde::Deserialize)]
#[serde(deny_unknown_fields)]
struct Review {
    by: String,
    on: String,
    /// The mark of the English file that was read beside the translation.
    source: String,
}

fn main() -> Result<(), Box<dyn Error>> {
    let root = PathBuf::from(env::var("CARGO_MANIFEST_DIR")?);
    println!("cargo::rerun-if-changed=src/mark.rs");
    println!("cargo::rerun-if-changed={}", root.display());

    let mut tags = Vec::new();
    for entry in fs::read_dir(&root)? {
        let path = entry?.path();
        if path.join("meta.json").is_file()
            && let Some(name) = path.file_name().and_then(|name| name.to_str())
        {
            tags.push(name.to_owned());
        }
    }
    // English first, because every other language falls back to it; then by tag.
    tags.sort_by_key(|tag| (tag != "en", tag.clone()));

    let mut table = String::from("pub(crate) const LANGUAGES: &[Language] = &[\n");
    let mut sources = String::from("pub(crate) const SOURCES: &[(&str, &[(&str, &str)])] = &[\n");
    for tag in &tags {
        let folder = root.join(tag);
        // One line for each folder, so that a new file in it is noticed.
        println!("cargo::rerun-if-changed={}", folder.display());
        row(&root, tag, &mut table).map_err(|e| format!("{}/meta.json: {e}", folder.display()))?;
        writeln!(sources, "    ({tag:?}, &[")?;
        for file in message_files(&folder)? {
            let name = file.file_stem().and_then(|stem| stem.to_str()).unwrap_or_default();
            let text = fs::read_to_string(&file)?;
            println!("cargo::rerun-if-changed={}", file.display());
            writeln!(sources, "        ({name:?}, {text:?}),")?;
        }
        sources.push_str("    ]),\n");
    }
    table.push_str("];\n");
    sources.push_str("];\n");
    let out = PathBuf::from(env::var("OUT_DIR")?);
    fs::write(out.join("languages.rs"), table)?;
    fs::write(out.join("sources.rs"), sources)?;
    Ok(())
}

fn row(root: &Path, tag: &str, table: &mut String) -> Result<(), Box<dyn Error>> {
    let folder = root.join(tag);
    println!("cargo::rerun-if-changed={}", folder.join("meta.json").display());
    let meta: Meta = serde_json::from_str(&fs::read_to_string(folder.join("meta.json"))?)?;
    let direction = match meta.direction.as_str() {
        "ltr" => "LeftToRight",
        "rtl" => "RightToLeft",
        other => return Err(format!("direction is \"{other}\": write \"ltr\" or \"rtl\"").into()),
    };
    if !meta.numbers.first().is_some_and(|row| row.regions.is_empty()) {
        return Err("the first row of \"numbers\" must have no regions: it holds everywhere else".into());
    }
    writeln!(
        table,
        "    Language {{ tag: {tag:?}, endonym: {:?}, direction: Direction::{direction},",
        meta.endonym
    )?;
    writeln!(table, "        fractions: {}, numbers: &[", meta.fractions)?;
    for n in &meta.numbers {
        writeln!(
            table,
            "            NumberSymbols {{ regions: &{:?}, decimal: {:?}, group: {:?}, min_group: {}, next_groups: {} }},",
            n.regions, n.decimal, n.group, n.min_group, n.next_groups
        )?;
    }
    table.push_str("        ], files: &[\n");
    for file in message_files(&folder)? {
        let name = file.file_stem().and_then(|stem| stem.to_str()).unwrap_or_default();
        let english = root.join("en").join(file.file_name().unwrap_or_default());
        let state = match meta.reviewed.get(name) {
            _ if tag == "en" => "Source".to_owned(),
            None => "Unreviewed".to_owned(),
            Some(review) => {
                let now = mark::source_mark(&fs::read_to_string(english)?);
                let state = if now == review.source { "Reviewed" } else { "Outdated" };
                format!("{state} {{ by: {:?}, on: {:?} }}", review.by, review.on)
            }
        };
        writeln!(table, "            ({name:?}, ReviewState::{state}),")?;
    }
    table.push_str("        ] },\n");
    Ok(())
}

/// The message files of a language, by name.
fn message_files(folder: &Path) -> Result<Vec<PathBuf>, Box<dyn Error>> {
    let mut files = Vec::new();
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        if path.extension().is_some_and(|ext| ext == "ftl") {
            files.push(path);
        }
    }
    files.sort();
    Ok(files)
}
