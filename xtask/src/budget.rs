//! Sizes that may not be passed, measured on the finished site.
//!
//! Everything is measured as a web host sends it: compressed with brotli at its best setting. A
//! kilobyte is 1000 bytes.

use std::io::Write;
use std::path::Path;

use crate::makeup;
use crate::place::{self, Place};
use crate::problem::{Outcome, Problem};
use crate::say;
use crate::wasm::{self, Profile};

/// A limit, who set it, and the files that count.
struct Budget {
    name: &'static str,
    source: &'static str,
    limit: u64,
    files: &'static [Counted],
    /// The program whose crates are listed, because it weighs the most.
    program: &'static str,
}

/// What counts, as paths in the published folder.
enum Counted {
    File(&'static str),
    /// One file of a folder is transferred, whichever; the largest counts.
    LargestIn(&'static str),
}

use Counted::{File, LargestIn};

const BUDGETS: &[Budget] = &[
    Budget {
        name: "resident, first load until an answer can be shown, one language",
        source: "a resident waits for it, standing over a cart",
        limit: 150_000,
        files: FIRST_LOAD,
        program: "resident",
    },
    Budget {
        name: "print worker",
        source: "a coordinator waits for it once, before the first sheet",
        limit: 1_500_000,
        files: &[File("print-worker.js"), File("pkg/print_worker.js"), File("pkg/print_worker_bg.wasm")],
        program: "print_worker",
    },
];

/// Kept complete by [`check_first_load`], which reads the page and its scripts.
const FIRST_LOAD: &[Counted] = &[
    File("index.html"),
    File("app.css"),
    File("resident-start.js"),
    File("recover.js"),
    File("manifest.webmanifest"),
    File("signs.svg"),
    File("icons/leaf.svg"),
    File("icons/leaf-192.png"),
    File("pkg/resident.js"),
    File("pkg/resident_bg.wasm"),
    File("data/guide.txt"),
    LargestIn("data/lang"),
];

/// The page a first visit opens.
const FIRST_PAGE: &str = "index.html";

/// Enough to see what to work on.
const CRATES_SHOWN: usize = 12;

/// One file as transferred.
struct Size {
    path: String,
    raw: u64,
    packed: u64,
}

/// Measures every budget, prints the table, and fails when one is passed.
pub(crate) fn run(place: &Place) -> Outcome<()> {
    let site = place.site();
    if !site.join(FIRST_PAGE).is_file() {
        return Err(Problem::new(format!("there is no site in {}", site.display()))
            .next("run `cargo xtask run --no-serve` first"));
    }
    check_first_load(&site)?;
    let mut passed = Vec::new();
    for budget in BUDGETS {
        let mut sizes = measure(&site, budget)?;
        sizes.sort_by(|a, b| b.packed.cmp(&a.packed).then_with(|| a.path.cmp(&b.path)));
        let total: u64 = sizes.iter().map(|size| size.packed).sum();
        print!("{}", report(budget, &sizes, total));
        print!("{}", makeup(place, budget.program)?);
        if total > budget.limit {
            passed.push(format!("{}: {} of {} bytes ({})", budget.name, total, budget.limit, budget.source));
        }
    }
    if passed.is_empty() {
        Ok(())
    } else {
        Err(Problem::new(format!("over budget:\n    {}", passed.join("\n    ")))
            .next("make what dominates smaller; a budget is changed only where it was set"))
    }
}

fn report(budget: &Budget, sizes: &[Size], total: u64) -> String {
    let mut rows: Vec<Vec<String>> = sizes
        .iter()
        .map(|size| {
            let of_total = share(size.packed, total);
            vec![size.path.clone(), size.raw.to_string(), size.packed.to_string(), of_total]
        })
        .collect();
    let raw: u64 = sizes.iter().map(|size| size.raw).sum();
    rows.push(vec!["together".to_owned(), raw.to_string(), total.to_string(), String::new()]);
    rows.push(vec![
        format!("limit ({})", budget.source),
        String::new(),
        budget.limit.to_string(),
        format!("{} used", share(total, budget.limit)),
    ]);
    format!("\n{}\n{}", budget.name, say::table(&["file", "bytes", "brotli", "share"], &rows))
}

/// The crates that weigh most in a program.
fn makeup(place: &Place, program: &str) -> Outcome<String> {
    let crates = makeup::by_crate(&place::read(&wasm::compiled(place, Profile::Ship, program))?)?;
    let total: u64 = crates.iter().map(|(_, bytes)| bytes).sum();
    let rows: Vec<Vec<String>> = crates
        .into_iter()
        .take(CRATES_SHOWN)
        .map(|(name, bytes)| vec![name, bytes.to_string(), share(bytes, total)])
        .collect();
    Ok(say::table(&[&format!("in {program}, before compression"), "bytes", "share"], &rows))
}

fn share(part: u64, whole: u64) -> String {
    format!("{} %", (part * 100 + whole / 2) / whole.max(1))
}

fn measure(site: &Path, budget: &Budget) -> Outcome<Vec<Size>> {
    let mut sizes = Vec::new();
    for counted in budget.files {
        match counted {
            File(path) => sizes.push(size(site, path).map_err(|problem| {
                problem.next(format!(
                    "the budget \"{}\" lists it: build the site anew, or correct xtask/src/budget.rs",
                    budget.name
                ))
            })?),
            LargestIn(folder) => {
                let mut largest: Option<Size> = None;
                for name in place::files_below(&site.join(folder))? {
                    let one = size(site, &format!("{folder}/{name}"))?;
                    if largest.as_ref().is_none_or(|old| one.packed > old.packed) {
                        largest = Some(one);
                    }
                }
                sizes.push(
                    largest
                        .ok_or_else(|| Problem::new(format!("{} is empty", site.join(folder).display())))?,
                );
            }
        }
    }
    Ok(sizes)
}

fn size(site: &Path, path: &str) -> Outcome<Size> {
    let bytes = place::read(&site.join(path))?;
    Ok(Size { path: path.to_owned(), raw: bytes.len() as u64, packed: brotli(&bytes)?.len() as u64 })
}

/// Brotli at quality 11 with its largest ordinary window, as precompressing hosts use it.
pub(crate) fn brotli(bytes: &[u8]) -> Outcome<Vec<u8>> {
    let mut packed = Vec::new();
    let mut writer = brotli::CompressorWriter::new(&mut packed, 1 << 16, 11, 22);
    writer.write_all(bytes).map_err(|error| Problem::new(format!("brotli failed: {error}")))?;
    drop(writer);
    Ok(packed)
}

/// Everything the first page names, and everything its scripts import, must be in the budget: a file
/// that is loaded and not counted would make the number a wish.
fn check_first_load(site: &Path) -> Outcome<()> {
    let listed = |path: &str| FIRST_LOAD.iter().any(|counted| matches!(counted, File(file) if *file == path));
    let page = text(site, FIRST_PAGE)?;
    let mut waiting = named_by_page(&page);
    let mut seen: Vec<String> = Vec::new();
    while let Some(path) = waiting.pop() {
        if seen.contains(&path) {
            continue;
        }
        if !listed(&path) {
            return Err(Problem::new(format!(
                "the first page loads {path}, which the budget does not count"
            ))
            .next("add it to FIRST_LOAD in xtask/src/budget.rs, or load it later"));
        }
        if path.ends_with(".js") {
            waiting.extend(imported_by(&path, &text(site, &path)?));
        }
        seen.push(path);
    }
    Ok(())
}

fn text(site: &Path, path: &str) -> Outcome<String> {
    Ok(String::from_utf8_lossy(&place::read(&site.join(path))?).into_owned())
}

/// The files that a page's `link` and `script` elements name.
fn named_by_page(page: &str) -> Vec<String> {
    let mut found = Vec::new();
    for tag in page.split('<').filter(|tag| tag.starts_with("link") || tag.starts_with("script")) {
        for attribute in ["href=\"", "src=\""] {
            if let Some((_, rest)) = tag.split_once(attribute)
                && let Some((path, _)) = rest.split_once('"')
            {
                found.push(path.trim_start_matches("./").to_owned());
            }
        }
    }
    found
}

/// The modules that a script imports before it starts, relative to the site.
fn imported_by(script: &str, code: &str) -> Vec<String> {
    let folder = script.rsplit_once('/').map_or("", |(folder, _)| folder);
    let mut found = Vec::new();
    for line in code.lines().filter(|line| line.starts_with("import ")) {
        let quoted = line.split(['"', '\'']).nth(1).unwrap_or_default();
        let mut parts: Vec<&str> = folder.split('/').filter(|part| !part.is_empty()).collect();
        for part in quoted.split('/') {
            match part {
                "" | "." => {}
                ".." => drop(parts.pop()),
                part => parts.push(part),
            }
        }
        found.push(parts.join("/"));
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pages_and_scripts_name_what_they_load() {
        let page = "<!doctype html><link rel=\"stylesheet\" href=\"app.css\">\n\
                    <script type=\"module\" src=\"./start.js\"></script><a href=\"later.html\">later</a>";
        assert_eq!(named_by_page(page), ["app.css", "start.js"]);
        let code = "import { guard } from './recover.js';\nimport init from \"../pkg/resident.js\";\n\
                    const later = () => import(\"./later.js\");\n";
        assert_eq!(imported_by("js/start.js", code), ["js/recover.js", "pkg/resident.js"]);
    }

    #[test]
    fn a_page_that_loads_more_than_is_counted_is_refused() {
        let site = std::env::temp_dir().join(format!("xtask-budget-{}", std::process::id()));
        place::write(&site.join(FIRST_PAGE), b"<script src=\"resident-start.js\"></script>").unwrap();
        place::write(&site.join("resident-start.js"), b"import \"./recover.js\";").unwrap();
        place::write(&site.join("recover.js"), b"").unwrap();
        check_first_load(&site).unwrap();
        place::write(&site.join("recover.js"), b"import './extra.js';").unwrap();
        let problem = check_first_load(&site).unwrap_err().to_string();
        assert!(problem.contains("loads extra.js"), "{problem}");

        let missing = measure(&site, &BUDGETS[0]).err().unwrap().to_string();
        assert!(missing.contains("app.css") && missing.contains("the budget \"resident"), "{missing}");
        std::fs::remove_dir_all(&site).unwrap();
    }

    #[test]
    fn brotli_is_measured() {
        let packed = brotli(&[b'a'; 10_000]).unwrap().len();
        assert!((5..100).contains(&packed), "{packed}");
    }
}
