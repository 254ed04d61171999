//! The local server: right types, nothing outside its folder.

#![allow(clippy::unwrap_used, clippy::panic, clippy::indexing_slicing, reason = "tests")]

mod common;

use std::io::{Read, Write};
use std::net::{IpAddr, Ipv4Addr, SocketAddr, TcpStream};
use std::thread;

use common::{Bench, lidleaf};
use lidleaf::{Exit, Server};

/// Serves a folder for as long as the test runs.
fn start(bench: &Bench, folder: &str) -> SocketAddr {
    let server = Server::bind(&bench.path(folder), IpAddr::V4(Ipv4Addr::LOCALHOST), 0).unwrap();
    let address = server.address().unwrap();
    thread::spawn(move || server.run());
    address
}

/// Sends a path as it is: a client library would tidy it first.
fn get(address: SocketAddr, path: &str, headers: &str) -> (u16, String, String) {
    let mut stream = TcpStream::connect(address).unwrap();
    write!(stream, "GET {path} HTTP/1.1\r\nHost: x\r\n{headers}Connection: close\r\n\r\n").unwrap();
    let mut bytes = Vec::new();
    stream.read_to_end(&mut bytes).unwrap();
    let text = String::from_utf8_lossy(&bytes).into_owned();
    let (head, body) = text.split_once("\r\n\r\n").unwrap_or((&text, ""));
    let status = head.split(' ').nth(1).and_then(|code| code.parse().ok()).unwrap_or(0);
    (status, head.to_lowercase(), body.to_owned())
}

#[test]
fn files_have_the_types_that_browsers_insist_on() {
    let bench = Bench::new();
    for name in ["index.html", "a.wasm", "a.js", "a.json", "a.webmanifest", "a.css", "a.svg", "a.ttf"] {
        bench.write(&format!("site/{name}"), name);
    }
    bench.write("site/below/index.html", "below");
    let address = start(&bench, "site");
    for (path, kind, body) in [
        ("/", "text/html", "index.html"),
        ("/index.html?lang=es", "text/html", "index.html"),
        ("/below/", "text/html", "below"),
        ("/a.wasm", "application/wasm", "a.wasm"),
        ("/a.js", "text/javascript", "a.js"),
        ("/a.json", "application/json", "a.json"),
        ("/a.webmanifest", "application/manifest+json", "a.webmanifest"),
        ("/a.css", "text/css", "a.css"),
        ("/a.svg", "image/svg+xml", "a.svg"),
    ] {
        let (status, head, found) = get(address, path, "");
        assert_eq!((status, found.as_str()), (200, body), "{path}: {head}");
        assert!(head.contains(&format!("content-type: {kind}")), "{path}: {head}");
        assert!(head.contains("cache-control: no-cache") && head.contains("nosniff"), "{path}: {head}");
    }
    assert_eq!(get(address, "/nothing.html", "").0, 404);
}

#[test]
fn no_path_leads_out_of_the_folder() {
    let bench = Bench::new();
    bench.write("site/index.html", "inside");
    bench.write("secret.txt", "outside");
    let absolute = format!("/{}", bench.at("secret.txt"));
    let address = start(&bench, "site");
    for path in [
        "/../secret.txt",
        "/%2e%2e/secret.txt",
        "/..%2fsecret.txt",
        "/%2e%2e%2fsecret.txt",
        "/x/../../secret.txt",
        "/..\\secret.txt",
        "/..%5csecret.txt",
        "/%252e%252e/secret.txt",
        "/%00/../secret.txt",
        "//secret.txt",
        "../secret.txt",
        &absolute,
    ] {
        let (status, head, body) = get(address, path, "");
        assert_ne!(status, 200, "{path}: {head}");
        assert!(!body.contains("outside"), "{path}");
    }
    assert_eq!(get(address, "/", "").0, 200, "and the server still answers");
}

#[test]
fn a_file_compressed_beforehand_is_sent_to_who_can_read_it() {
    let bench = Bench::new();
    bench.write("site/a.js", "plain");
    bench.write("site/a.js.br", "brotli");
    let address = start(&bench, "site");
    let (_, head, body) = get(address, "/a.js", "Accept-Encoding: gzip, br\r\n");
    assert!(head.contains("content-encoding: br") && head.contains("text/javascript"), "{head}");
    assert_eq!(body, "brotli");
    assert_eq!(get(address, "/a.js", "").2, "plain");
}

#[test]
fn an_address_that_is_taken_and_a_folder_that_is_not_there() {
    let bench = Bench::new();
    bench.write("site/index.html", "x");
    let port = start(&bench, "site").port().to_string();
    let taken = lidleaf(["serve", &bench.at("site"), "--port", &port]).expect(Exit::Blocked);
    assert!(taken.err.contains(&port) && taken.err.contains("--port"), "{}", taken.err);
    let missing = lidleaf(["serve", &bench.at("nowhere")]).expect(Exit::Unreadable);
    assert!(missing.err.contains("nowhere"), "{}", missing.err);
}
