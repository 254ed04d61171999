//! `lidleaf serve`: a published folder at a local address, as any static host would serve it.

use std::convert::Infallible;
use std::io;
use std::net::{IpAddr, SocketAddr};
use std::path::{Path, PathBuf};

use http::header::{CACHE_CONTROL, HeaderValue, X_CONTENT_TYPE_OPTIONS};
use http::{Request, Response};
use hyper::body::Incoming;
use hyper::server::conn::http1;
use hyper::service::service_fn;
use hyper_util::rt::{TokioIo, TokioTimer};
use tokio::net::TcpListener;
use tower_http::services::ServeDir;
use tower_http::services::fs::ServeFileSystemResponseBody;
use tower_service::Service;

/// A server that holds its address but does not answer yet.
#[derive(Debug)]
pub struct Server {
    runtime: tokio::runtime::Runtime,
    listener: TcpListener,
    folder: PathBuf,
}

impl Server {
    /// Takes an address; port 0 takes any free port.
    ///
    /// # Errors
    /// When the address is taken, not ours, or needs rights we lack.
    pub fn bind(folder: &Path, address: IpAddr, port: u16) -> io::Result<Self> {
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build()?;
        let listener = runtime.block_on(TcpListener::bind(SocketAddr::new(address, port)))?;
        Ok(Self { runtime, listener, folder: folder.to_owned() })
    }

    /// The address taken.
    ///
    /// # Errors
    /// When the system no longer knows it.
    pub fn address(&self) -> io::Result<SocketAddr> {
        self.listener.local_addr()
    }

    /// Answers until the process ends.
    ///
    /// # Errors
    /// When the system no longer hands out connections.
    pub fn run(self) -> io::Result<()> {
        let Self { runtime, listener, folder } = self;
        let files = ServeDir::new(folder).precompressed_br().append_index_html_on_directories(true);
        runtime.block_on(async move {
            loop {
                let (stream, _) = match listener.accept().await {
                    Ok(accepted) => accepted,
                    // A visitor who left again before being greeted is no reason to stop.
                    Err(error) if error.kind() == io::ErrorKind::ConnectionAborted => continue,
                    Err(error) => return Err(error),
                };
                let files = files.clone();
                tokio::spawn(async move {
                    let service = service_fn(move |request| answer(files.clone(), request));
                    // A connection that breaks concerns only its visitor.
                    let _ = http1::Builder::new()
                        .timer(TokioTimer::new())
                        .serve_connection(TokioIo::new(stream), service)
                        .await;
                });
            }
        })
    }
}

/// One file, or a 404: `ServeDir` refuses every path that leads out of its folder.
async fn answer(
    mut files: ServeDir,
    request: Request<Incoming>,
) -> Result<Response<ServeFileSystemResponseBody>, Infallible> {
    let mut response = files.call(request).await?;
    let headers = response.headers_mut();
    // Each visit asks whether a file has changed, so that a new edition is seen at once.
    headers.insert(CACHE_CONTROL, HeaderValue::from_static("no-cache"));
    headers.insert(X_CONTENT_TYPE_OPTIONS, HeaderValue::from_static("nosniff"));
    Ok(response)
}
