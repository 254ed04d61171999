//! `lidleaf serve`.

use std::net::IpAddr;
use std::path::Path;

use locales::t;

use crate::exit::Exit;
use crate::problem::{Outcome, Problem};
use crate::run::{Report, Voice, World, say};
use crate::serve::Server;

pub(crate) fn serve(
    folder: &Path,
    address: IpAddr,
    port: u16,
    voice: &Voice,
    world: &mut World<'_>,
) -> Outcome<Report> {
    if !folder.is_dir() {
        return Err(Problem::new(Exit::Unreadable, "cli-folder-missing").file(folder));
    }
    let blocked = |error: &std::io::Error| {
        Problem::new(Exit::Blocked, "cli-cannot-serve")
            .with("address", std::net::SocketAddr::new(address, port).to_string())
            .with("detail", error.to_string())
    };
    let server = Server::bind(folder, address, port).map_err(|error| blocked(&error))?;
    let at = server.address().map_err(|error| blocked(&error))?;
    let text = t!(
        voice.messages,
        "cli-serving",
        url = format!("http://{at}/"),
        folder = folder.display().to_string()
    );
    // Said before the first answer, so that whoever started this can wait for the line.
    let _ = say(world.out, &format!("{text}\n"));
    server.run().map_err(|error| blocked(&error))?;
    Ok(Report::done(String::new()))
}
