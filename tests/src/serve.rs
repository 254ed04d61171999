//! The site, served by `lidleaf serve`, and stopped when the network is to be gone.

use std::io::{BufRead, BufReader};
use std::net::{Ipv4Addr, SocketAddr, TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use crate::fail::{OrFail, fail};
use crate::need;

/// How long a server may take to answer.
const PATIENCE: Duration = Duration::from_secs(20);

/// A server of one folder, at a port that stays its own when it is stopped and started again.
#[derive(Debug)]
pub struct Server {
    folder: PathBuf,
    port: u16,
    child: Option<Child>,
}

impl Server {
    /// Serves the demo site.
    ///
    /// # Panics
    /// When the site or the command line is missing, or does not answer.
    #[must_use]
    pub fn site() -> Self {
        Self::of(&need::site())
    }

    /// Serves a folder.
    ///
    /// # Panics
    /// When the command line is missing, or does not answer.
    #[must_use]
    pub fn of(folder: &Path) -> Self {
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).or_fail("looking for a free port");
        let port = listener.local_addr().or_fail("reading the free port").port();
        drop(listener);
        let mut server = Self { folder: folder.to_owned(), port, child: None };
        server.start();
        server
    }

    /// An address on the server; `path` begins without a slash.
    #[must_use]
    pub fn url(&self, path: &str) -> String {
        format!("http://127.0.0.1:{}/{path}", self.port)
    }

    /// Starts it at its port, again or for the first time.
    ///
    /// # Panics
    /// When it does not answer.
    pub fn start(&mut self) {
        let mut command = Command::new(need::lidleaf());
        command.arg("serve").arg(&self.folder).args(["--port", &self.port.to_string(), "--lang", "en"]);
        command.stdin(Stdio::null()).stdout(Stdio::piped());
        let mut child = command.spawn().or_fail("starting `lidleaf serve`");
        let said = child.stdout.take().map(BufReader::new).and_then(|mut out| {
            let mut line = String::new();
            out.read_line(&mut line).ok().map(|_| line)
        });
        self.child = Some(child);
        // The line comes once the address is held: connections wait, none is refused.
        if !said.as_deref().unwrap_or_default().contains(&self.port.to_string()) {
            fail(&format!("`lidleaf serve` did not say that it serves port {}: {said:?}", self.port));
        }
    }

    /// Stops it: from now on nothing answers at its address.
    ///
    /// # Panics
    /// When something still answers.
    pub fn stop(&mut self) {
        if let Some(mut child) = self.child.take() {
            let _ = child.kill();
            let _ = child.wait();
        }
        let address = SocketAddr::from((Ipv4Addr::LOCALHOST, self.port));
        let until = Instant::now() + PATIENCE;
        while TcpStream::connect_timeout(&address, Duration::from_millis(200)).is_ok() {
            if Instant::now() > until {
                fail("the stopped server still answers");
            }
            std::thread::sleep(Duration::from_millis(50));
        }
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        if let Some(mut child) = self.child.take() {
            let _ = child.kill();
            let _ = child.wait();
        }
    }
}
