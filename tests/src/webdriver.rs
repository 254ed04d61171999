//! The WebDriver protocol (W3C Recommendation), as far as the tests use it, against chromedriver.

use std::io::{BufRead, BufReader, Read};
use std::process::{Child, ChildStdout, Command, Stdio};
use std::time::Duration;

use serde_json::{Value, json};
use ureq::Agent;

use crate::fail::{OrFail, fail};

/// The longest a single command may take, loading a page included.
const PATIENCE: Duration = Duration::from_secs(90);

/// The key under which the protocol hands out elements (WebDriver, "Elements").
const ELEMENT: &str = "element-6066-11e4-a52e-4f735466cecf";

/// A running chromedriver.
#[derive(Debug)]
pub(crate) struct Driver {
    child: Child,
    address: String,
    agent: Agent,
}

/// Why a command was refused: the protocol's word, and the driver's sentence.
#[derive(Debug, Clone)]
pub(crate) struct Refused {
    pub(crate) word: String,
    pub(crate) sentence: String,
}

impl std::fmt::Display for Refused {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}: {}", self.word, self.sentence.lines().next().unwrap_or_default())
    }
}

/// An element of the page, by the protocol's reference.
#[derive(Debug, Clone)]
pub(crate) struct Element(pub(crate) String);

impl Element {
    pub(crate) fn of(value: &Value) -> Option<Self> {
        value.get(ELEMENT).and_then(Value::as_str).map(|id| Self(id.to_owned()))
    }
}

/// How often chromedriver is started before giving up.
const STARTS: usize = 5;

impl Driver {
    /// Starts chromedriver at a free port, which it names on its first lines.
    pub(crate) fn start() -> Self {
        // It looks for a port that is free twice over, for both kinds of address, and ends when somebody else
        // takes one in between: then it is started again.
        let (child, mut out, port) =
            (0..STARTS).find_map(|_| Self::try_start()).or_fail("waiting for the port chromedriver names");
        // What it says later is thrown away: a full pipe would stop it.
        std::thread::spawn(move || std::io::copy(&mut out.by_ref(), &mut std::io::sink()));
        let config =
            Agent::config_builder().timeout_global(Some(PATIENCE)).http_status_as_error(false).build();
        Self { child, address: format!("http://127.0.0.1:{port}"), agent: config.into() }
    }

    /// Starts it once; nothing when it ends without naming a port.
    fn try_start() -> Option<(Child, BufReader<ChildStdout>, u16)> {
        let mut command = Command::new("chromedriver");
        command.arg("--port=0").stdin(Stdio::null()).stdout(Stdio::piped()).stderr(Stdio::null());
        let mut child = match command.spawn() {
            Ok(child) => child,
            Err(error) => fail(&format!(
                "chromedriver could not be started ({error}); Debian's package is chromium-driver, and \
                 `cargo xtask test --only tools` installs it"
            )),
        };
        let mut out = BufReader::new(child.stdout.take().or_fail("reading chromedriver's output"));
        let mut line = String::new();
        while out.read_line(&mut line).or_fail("reading chromedriver's output") > 0 {
            let named = line.split_once("successfully on port ");
            let port = named.and_then(|(_, rest)| rest.trim().trim_end_matches('.').parse::<u16>().ok());
            if let Some(port) = port {
                return Some((child, out, port));
            }
            line.clear();
        }
        let _ = child.wait();
        None
    }

    /// Opens a session with a browser.
    pub(crate) fn session(&self, capabilities: &Value) -> Session<'_> {
        let body = json!({ "capabilities": { "alwaysMatch": capabilities } });
        let answer = self.post("/session", &body).or_fail("starting Chromium through chromedriver");
        let id = answer.get("sessionId").and_then(Value::as_str).or_fail("the session's id").to_owned();
        Session { driver: self, id }
    }

    pub(crate) fn post(&self, path: &str, body: &Value) -> Result<Value, Refused> {
        let url = format!("{}{path}", self.address);
        let sent = self.agent.post(&url).header("content-type", "application/json").send(body.to_string());
        read(sent)
    }

    pub(crate) fn get(&self, path: &str) -> Result<Value, Refused> {
        read(self.agent.get(format!("{}{path}", self.address)).call())
    }

    pub(crate) fn delete(&self, path: &str) -> Result<Value, Refused> {
        read(self.agent.delete(format!("{}{path}", self.address)).call())
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

fn read(sent: Result<ureq::http::Response<ureq::Body>, ureq::Error>) -> Result<Value, Refused> {
    let broken = |sentence: String| Refused { word: "no answer".to_owned(), sentence };
    let mut answer = sent.map_err(|error| broken(error.to_string()))?;
    // A press file in base64 is the longest answer.
    let text = answer.body_mut().with_config().limit(64 << 20).read_to_string();
    let text = text.map_err(|error| broken(error.to_string()))?;
    let whole: Value = serde_json::from_str(&text).map_err(|error| broken(format!("{error}: {text}")))?;
    let value = whole.get("value").cloned().unwrap_or_default();
    match value.get("error").and_then(Value::as_str) {
        None => Ok(value),
        Some(word) => {
            let sentence = value.get("message").and_then(Value::as_str).unwrap_or_default();
            Err(Refused { word: word.to_owned(), sentence: sentence.to_owned() })
        }
    }
}

/// A session's id with its driver: the commands of the protocol.
#[derive(Debug)]
pub(crate) struct Session<'d> {
    driver: &'d Driver,
    id: String,
}

impl<'d> Session<'d> {
    pub(crate) fn again(driver: &'d Driver, id: &str) -> Self {
        Self { driver, id: id.to_owned() }
    }

    pub(crate) fn id(&self) -> &str {
        &self.id
    }

    pub(crate) fn post(&self, path: &str, body: &Value) -> Result<Value, Refused> {
        self.driver.post(&format!("/session/{}/{path}", self.id), body)
    }

    pub(crate) fn get(&self, path: &str) -> Result<Value, Refused> {
        self.driver.get(&format!("/session/{}/{path}", self.id))
    }

    pub(crate) fn delete(&self, path: &str) -> Result<Value, Refused> {
        self.driver.delete(&format!("/session/{}{path}", self.id))
    }

    pub(crate) fn find(&self, css: &str) -> Result<Option<Element>, Refused> {
        match self.post("element", &json!({ "using": "css selector", "value": css })) {
            Ok(found) => Ok(Element::of(&found)),
            Err(refused) if refused.word == "no such element" => Ok(None),
            Err(refused) => Err(refused),
        }
    }
}
