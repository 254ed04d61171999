//! The command line: all of it is in the library, this file holds the outside world.

use std::io;
use std::process::ExitCode;

fn main() -> ExitCode {
    // The only clock and the only standard streams of this crate.
    let mut out = io::stdout().lock();
    let mut err = io::stderr().lock();
    let mut world = lidleaf::World { out: &mut out, err: &mut err, today: chrono::Local::now().date_naive() };
    lidleaf::run(std::env::args_os().skip(1), &mut world).into()
}
