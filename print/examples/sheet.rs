//! Makes a sheet from a job file: `cargo run -p print --features bundled --example sheet -- job.json out`
//! writes `out.pdf`, `out.web.pdf`, `out.txt` (the display list) and an SVG of each page, and prints what preflight found.

use std::error::Error;
use std::path::PathBuf;

fn main() -> Result<(), Box<dyn Error>> {
    let mut arguments = std::env::args().skip(1);
    let (Some(job), Some(out)) = (arguments.next(), arguments.next()) else {
        return Err("give a job file and the name of what to write, without an ending".into());
    };
    let job: print::SheetJob = serde_json::from_slice(&std::fs::read(job)?)?;
    let fonts = print::bundled_fonts()?;
    let made = print::make(&job, &fonts, print::PRESS_PROFILE)?;
    let out = PathBuf::from(out);
    std::fs::write(out.with_extension("pdf"), &made.pdf)?;
    std::fs::write(out.with_extension("web.pdf"), print::make(&job, &fonts, print::Output::Web)?.pdf)?;
    std::fs::write(out.with_extension("txt"), made.display_list.to_text())?;
    for page in 0..made.display_list.pages.len() {
        if let Some(svg) = print::svg_with_findings(
            &made.display_list,
            &fonts,
            page,
            print::PreviewArea::Trim,
            &made.preflight,
        ) {
            std::fs::write(out.with_extension(format!("{}.svg", page + 1)), svg)?;
        }
    }
    for item in &made.preflight {
        println!("{:?} {}: {}", item.severity, item.code, item.message);
    }
    Ok(())
}
