//! A headless Chromium with a profile of its own, and what a person does in it.

use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicU32, Ordering};
use std::time::{Duration, Instant};

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD as BASE64;
use serde_json::{Value, json};

use crate::console::{self, Entry};
use crate::fail::{OrFail, fail};
use crate::need;
use crate::webdriver::{Driver, Element, Refused, Session};

/// A phone's screen, in CSS pixels.
pub const PHONE: (u32, u32) = (360, 740);
/// A coordinator's screen.
pub const DESK: (u32, u32) = (1280, 800);

/// How long anything on a page may take; two tests share two cores with two browsers.
const PATIENCE: Duration = Duration::from_secs(30);
const BETWEEN_LOOKS: Duration = Duration::from_millis(40);

/// How to start Chromium so that it is alone with the test: nothing of its own goes over the network,
/// and no name resolves, so that a page that asks another host is seen to fail.
const ARGUMENTS: &[&str] = &[
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--disable-dev-shm-usage",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--hide-scrollbars",
    "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
];

/// The browser, as a test uses it.
#[derive(Debug)]
pub struct Browser {
    driver: Driver,
    session: String,
    profile: tempfile::TempDir,
    language: String,
    preferences: Value,
    size: (u32, u32),
    noted: Vec<Entry>,
    requested: Vec<String>,
}

impl Browser {
    /// Starts one whose owner reads English.
    ///
    /// # Panics
    /// When Chromium or chromedriver is missing.
    #[must_use]
    pub fn start(size: (u32, u32)) -> Self {
        Self::start_in(size, "en-US")
    }

    /// Starts one whose owner reads a language.
    ///
    /// # Panics
    /// When Chromium or chromedriver is missing.
    #[must_use]
    pub fn start_in(size: (u32, u32), language: &str) -> Self {
        Self::start_with(size, language, json!({}))
    }

    /// Starts one that lets no page store anything, as strict settings and some private windows do.
    ///
    /// # Panics
    /// When Chromium or chromedriver is missing.
    #[must_use]
    pub fn start_forgetful(size: (u32, u32)) -> Self {
        // Chromium counts every kind of storage among cookies; 2 is "block".
        Self::start_with(size, "en-US", json!({ "profile.default_content_setting_values.cookies": 2 }))
    }

    fn start_with(size: (u32, u32), language: &str, preferences: Value) -> Self {
        let profile = tempfile::tempdir().or_fail("making a profile's folder");
        let driver = Driver::start();
        let mut browser = Self {
            driver,
            session: String::new(),
            profile,
            language: language.to_owned(),
            preferences,
            size,
            noted: Vec::new(),
            requested: Vec::new(),
        };
        browser.open_session();
        browser
    }

    fn open_session(&mut self) {
        let mut arguments: Vec<String> = ARGUMENTS.iter().map(|a| (*a).to_owned()).collect();
        arguments.push(format!("--user-data-dir={}", self.profile.path().display()));
        arguments.push(format!("--lang={}", self.language));
        arguments.push(format!("--accept-lang={}", self.language));
        arguments.push(format!("--window-size={},{}", self.size.0.max(500), self.size.1));
        let session = self.driver.session(&json!({
            "goog:chromeOptions": { "args": arguments, "prefs": self.preferences },
            "goog:loggingPrefs": { "browser": "ALL", "performance": "ALL" },
        }));
        self.session = session.id().to_owned();
        self.resize(self.size);
    }

    /// Closes the browser and opens it again with the same profile, as the next morning.
    ///
    /// # Panics
    /// When it does not start again.
    pub fn close_and_reopen(&mut self) {
        self.collect();
        self.session().delete("").or_fail("closing the browser");
        // The profile is free once the browser has written it out.
        let lock = self.profile.path().join("SingletonLock");
        let until = Instant::now() + PATIENCE;
        while lock.symlink_metadata().is_ok() && Instant::now() < until {
            std::thread::sleep(BETWEEN_LOOKS);
        }
        self.open_session();
    }

    fn session(&self) -> Session<'_> {
        Session::again(&self.driver, &self.session)
    }

    /// Sets the size of the screen of the tab in front.
    ///
    /// # Panics
    /// When the browser refuses.
    pub fn resize(&mut self, size: (u32, u32)) {
        self.size = size;
        let phone = size.0 < 500;
        let parameters = json!({
            "width": size.0, "height": size.1, "deviceScaleFactor": if phone { 2 } else { 1 }, "mobile": phone,
        });
        self.devtools("Emulation.setDeviceMetricsOverride", &parameters);
    }

    /// Says a command of the DevTools protocol, for what WebDriver has no word for.
    ///
    /// # Panics
    /// When the browser refuses.
    pub fn devtools(&self, command: &str, parameters: &Value) -> Value {
        let body = json!({ "cmd": command, "params": parameters });
        self.session().post("goog/cdp/execute", &body).or_fail(command)
    }

    /// Opens an address.
    ///
    /// # Panics
    /// When the browser cannot.
    pub fn go(&self, url: &str) {
        if let Err(refused) = self.session().post("url", &json!({ "url": url })) {
            self.give_up(&format!("opening {url}: {refused}"));
        }
    }

    /// Loads the page again.
    ///
    /// # Panics
    /// When the browser cannot.
    pub fn reload(&self) {
        if let Err(refused) = self.session().post("refresh", &json!({})) {
            self.give_up(&format!("loading the page again: {refused}"));
        }
    }

    /// Sets the fragment, as a link within the page does.
    ///
    /// # Panics
    /// When the browser refuses.
    pub fn fragment(&self, fragment: &str) {
        self.run("location.hash = arguments[0]", &[json!(fragment)]);
    }

    /// Opens a second tab and goes to it; both tabs' handles are returned.
    ///
    /// # Panics
    /// When the browser refuses.
    pub fn new_tab(&mut self) -> (String, String) {
        let first = self.session().get("window").or_fail("the tab's handle");
        let made = self.session().post("window/new", &json!({ "type": "tab" })).or_fail("opening a tab");
        let handle = made.get("handle").and_then(Value::as_str).or_fail("the new tab's handle").to_owned();
        self.to_tab(&handle);
        self.resize(self.size);
        (first.as_str().unwrap_or_default().to_owned(), handle)
    }

    /// Goes to a tab.
    ///
    /// # Panics
    /// When it is gone.
    pub fn to_tab(&self, handle: &str) {
        self.session().post("window", &json!({ "handle": handle })).or_fail("going to a tab");
    }

    /// Runs a script in the page and takes its result.
    ///
    /// # Panics
    /// When it throws.
    pub fn run(&self, script: &str, arguments: &[Value]) -> Value {
        match self.try_run("execute/sync", script, arguments) {
            Ok(value) => value,
            Err(refused) => self.give_up(&format!("running a script: {refused}\n{script}")),
        }
    }

    /// Runs a script that takes its time: the last of its arguments is called with the result.
    ///
    /// # Panics
    /// When it throws or never ends.
    pub fn run_later(&self, script: &str, arguments: &[Value]) -> Value {
        match self.try_run("execute/async", script, arguments) {
            Ok(value) => value,
            Err(refused) => self.give_up(&format!("running a script: {refused}\n{script}")),
        }
    }

    fn try_run(&self, how: &str, script: &str, arguments: &[Value]) -> Result<Value, Refused> {
        self.session().post(how, &json!({ "script": script, "args": arguments }))
    }

    /// Waits until a script's expression is true, or fails and says what was waited for.
    ///
    /// # Panics
    /// When it is not in time.
    #[track_caller]
    pub fn wait(&self, what: &str, expression: &str) {
        let script = format!("return Boolean({expression})");
        self.wait_for(what, || self.try_run("execute/sync", &script, &[]).is_ok_and(|v| v == json!(true)));
    }

    /// Waits until something holds, or fails and says what was waited for.
    ///
    /// # Panics
    /// When it does not hold in time.
    #[track_caller]
    pub fn wait_for(&self, what: &str, mut holds: impl FnMut() -> bool) {
        let until = Instant::now() + PATIENCE;
        while !holds() {
            if Instant::now() > until {
                self.give_up(&format!("waited {} s for {what}", PATIENCE.as_secs()));
            }
            std::thread::sleep(BETWEEN_LOOKS);
        }
    }

    /// Waits for an element that can be seen.
    ///
    /// # Panics
    /// When there is none in time.
    #[track_caller]
    pub fn see(&self, css: &str) {
        let script = format!("document.querySelector({})?.checkVisibility()", json!(css));
        self.wait(&format!("\"{css}\" to be seen"), &script);
    }

    /// Waits until an element's text has something in it.
    ///
    /// # Panics
    /// When it does not in time.
    #[track_caller]
    pub fn see_text(&self, css: &str, part: &str) {
        let script = format!(
            "document.querySelector({})?.innerText.replace(/[\\u2066-\\u2069]/g, '').includes({})",
            json!(css),
            json!(part)
        );
        self.wait(&format!("\"{css}\" to say \"{part}\""), &script);
    }

    /// Whether there is such an element now.
    #[must_use]
    pub fn has(&self, css: &str) -> bool {
        self.count(css) > 0
    }

    /// How many such elements there are now.
    #[must_use]
    pub fn count(&self, css: &str) -> u64 {
        let script = "return document.querySelectorAll(arguments[0]).length";
        self.run(script, &[json!(css)]).as_u64().unwrap_or_default()
    }

    /// The text of an element as it is shown, without the marks that isolate values in it; of the first, if
    /// there are several.
    ///
    /// # Panics
    /// When there is none in time.
    #[must_use]
    #[track_caller]
    pub fn text(&self, css: &str) -> String {
        self.exist(css);
        let text = self.run("return document.querySelector(arguments[0]).innerText", &[json!(css)]);
        text.as_str().map(without_isolates).unwrap_or_default()
    }

    /// The texts of all such elements.
    #[must_use]
    pub fn texts(&self, css: &str) -> Vec<String> {
        let script = "return [...document.querySelectorAll(arguments[0])].map((e) => e.innerText.trim())";
        let texts: Vec<String> = serde_json::from_value(self.run(script, &[json!(css)])).unwrap_or_default();
        texts.iter().map(|text| without_isolates(text)).collect()
    }

    /// An attribute of an element.
    ///
    /// # Panics
    /// When the element is not there in time.
    #[must_use]
    #[track_caller]
    pub fn attribute(&self, css: &str, name: &str) -> Option<String> {
        self.exist(css);
        let script = "return document.querySelector(arguments[0]).getAttribute(arguments[1])";
        self.run(script, &[json!(css), json!(name)]).as_str().map(str::to_owned)
    }

    /// What is in a field.
    ///
    /// # Panics
    /// When the field is not there in time.
    #[must_use]
    #[track_caller]
    pub fn value(&self, css: &str) -> String {
        self.exist(css);
        let value = self.run("return document.querySelector(arguments[0]).value", &[json!(css)]);
        value.as_str().unwrap_or_default().to_owned()
    }

    #[track_caller]
    fn exist(&self, css: &str) {
        self.wait(&format!("\"{css}\" to be there"), &format!("document.querySelector({})", json!(css)));
    }

    /// Clicks an element as a person does: what covers it would take the click and fail the test.
    ///
    /// # Panics
    /// When it cannot be clicked in time.
    #[track_caller]
    pub fn click(&self, css: &str) {
        // People scroll until a thing is in front of them, not under the bar at the top.
        let script = "document.querySelector(arguments[0])?.scrollIntoView({ block: 'center' })";
        self.run(script, &[json!(css)]);
        self.act(css, "click", &json!({}));
    }

    /// Writes a text in the place of what is in a field.
    ///
    /// # Panics
    /// When there is no such field in time.
    #[track_caller]
    pub fn write(&self, css: &str, text: &str) {
        self.act(css, "clear", &json!({}));
        self.act(css, "value", &json!({ "text": text }));
    }

    /// Presses keys in an element, or hands a file to a file field.
    ///
    /// # Panics
    /// When there is no such element in time.
    #[track_caller]
    pub fn keys(&self, css: &str, keys: &str) {
        self.act(css, "value", &json!({ "text": keys }));
    }

    /// Chooses an option of a list by its value, with the events a person's choice has.
    ///
    /// # Panics
    /// When there is no such list or option in time.
    #[track_caller]
    pub fn choose(&self, css: &str, value: &str) {
        let option = format!("{css} option[value={}]", json!(value));
        self.exist(&option);
        let script = "const [list, value] = [document.querySelector(arguments[0]), arguments[1]];
            list.focus(); list.value = value;
            for (const kind of ['input', 'change']) list.dispatchEvent(new Event(kind, { bubbles: true }));";
        self.run(script, &[json!(css), json!(value)]);
    }

    #[track_caller]
    fn act(&self, css: &str, action: &str, body: &Value) {
        let until = Instant::now() + PATIENCE;
        loop {
            let done = match self.session().find(css) {
                Ok(Some(Element(id))) => self.session().post(&format!("element/{id}/{action}"), body),
                Ok(None) => Err(Refused { word: "no such element".to_owned(), sentence: String::new() }),
                Err(refused) => Err(refused),
            };
            // A page that is being drawn anew takes an element away between two commands.
            match done {
                Ok(_) => return,
                Err(refused) if Instant::now() > until => {
                    self.give_up(&format!("{action} on \"{css}\": {refused}"));
                }
                Err(_) => std::thread::sleep(BETWEEN_LOOKS),
            }
        }
    }

    /// A picture of the page as it is, to a file.
    ///
    /// # Panics
    /// When it cannot be written.
    pub fn picture(&self, file: &Path) {
        let taken = self.session().get("screenshot").or_fail("taking a picture of the page");
        let bytes = BASE64.decode(taken.as_str().unwrap_or_default()).or_fail("decoding the picture");
        if let Some(folder) = file.parent() {
            std::fs::create_dir_all(folder).or_fail("making the pictures' folder");
        }
        std::fs::write(file, bytes).or_fail("writing the picture");
    }

    /// The README's picture of the page, when this run is to make them.
    ///
    /// # Panics
    /// When it cannot be written.
    pub fn screenshot(&self, name: &str) {
        if let Some(folder) = need::screenshots() {
            self.picture(&folder.join(format!("{name}.png")));
        }
    }

    /// What axe-core finds wrong with the page, one line for each place; empty when it finds nothing.
    ///
    /// # Panics
    /// When axe-core is missing or does not run.
    #[must_use]
    pub fn accessibility(&self) -> Vec<String> {
        let script = std::fs::read_to_string(need::axe()).or_fail("reading axe-core");
        self.run(&script, &[]);
        // A finding may be about an element that is still fading in.
        let found = self.run_later(
            "const done = arguments[arguments.length - 1];
             Promise.allSettled(document.getAnimations().map((a) => a.finished))
               .then(() => axe.run(document, { resultTypes: ['violations'] }))
               .then((r) => done(r.violations.flatMap((v) => v.nodes.map((n) =>
                   `${v.id} (${v.impact}): ${v.help}: ${n.target.join(' ')}: ${n.failureSummary}`))),
                 (e) => done(['axe-core did not run: ' + e]));",
            &[],
        );
        serde_json::from_value(found).or_fail("reading what axe-core found")
    }

    /// Keeps every file that the page hands out from now on, for [`Self::handed_out`].
    pub fn keep_downloads(&self) {
        self.run(
            "if (window.handedOut) return;
             window.handedOut = [];
             const make = URL.createObjectURL.bind(URL);
             URL.createObjectURL = (blob) => {
               const url = make(blob);
               window.handedOut.push({ url, blob, name: '' });
               return url;
             };
             const click = HTMLAnchorElement.prototype.click;
             HTMLAnchorElement.prototype.click = function () {
               const known = window.handedOut.find((one) => one.url === this.href);
               if (known) known.name = this.download;
               return click.call(this);
             };",
            &[],
        );
    }

    /// The last file the page handed out by a click on a download, as name and bytes.
    ///
    /// # Panics
    /// When there is none in time.
    #[must_use]
    #[track_caller]
    pub fn handed_out(&self) -> (String, Vec<u8>) {
        self.wait("a file to be handed out", "window.handedOut?.some((one) => one.name)");
        let taken = self.run_later(
            "const done = arguments[arguments.length - 1];
             const last = window.handedOut.filter((one) => one.name).pop();
             const reader = new FileReader();
             reader.onload = () => done([last.name, reader.result.split(',')[1] ?? '']);
             reader.readAsDataURL(last.blob);",
            &[],
        );
        let (name, text): (String, String) = serde_json::from_value(taken).or_fail("reading the file");
        (name, BASE64.decode(text).or_fail("decoding the file"))
    }

    /// Reads the logs; the driver forgets what it has handed out.
    fn collect(&mut self) {
        for (kind, is_console) in [("browser", true), ("performance", false)] {
            let Ok(log) = self.session().post("se/log", &json!({ "type": kind })) else { continue };
            if is_console {
                self.noted.extend(console::entries(&log));
            } else {
                self.requested.extend(console::requests(&log));
            }
        }
    }

    /// Every address asked for since the browser started.
    #[must_use]
    pub fn requests(&mut self) -> Vec<String> {
        self.collect();
        self.requested.clone()
    }

    /// The lines of the console that speak of a panic or of the content security policy.
    #[must_use]
    pub fn trouble(&mut self) -> Vec<String> {
        self.collect();
        let trouble = self.noted.iter().filter(|entry| entry.is_trouble());
        trouble.map(|entry| format!("{}: {}", entry.level, entry.text)).collect()
    }

    /// Fails when the console speaks of a panic or of a breach of the content security policy.
    ///
    /// # Panics
    /// When it does.
    #[track_caller]
    pub fn assert_calm(&mut self) {
        let trouble = self.trouble();
        if !trouble.is_empty() {
            self.give_up(&format!("the console is not calm:\n{}", trouble.join("\n")));
        }
    }

    /// Fails the test with what can be seen: the address, the text, the console, a picture.
    #[track_caller]
    pub fn give_up(&self, why: &str) -> ! {
        static FAILED: AtomicU32 = AtomicU32::new(0);
        let mut report = why.to_owned();
        let page = self.try_run("execute/sync", "return [location.href, document.body.innerText]", &[]);
        if let Ok(page) = page {
            let text = |at: usize| page.get(at).and_then(Value::as_str).unwrap_or_default();
            let shown: String = text(1).chars().take(3000).collect();
            let _ = write!(report, "\naddress: {}\npage: {shown}", text(0));
        }
        if let Ok(log) = self.session().post("se/log", &json!({ "type": "browser" })) {
            for entry in console::entries(&log) {
                let _ = write!(report, "\nconsole: {} {}", entry.level, entry.text);
            }
        }
        let number = FAILED.fetch_add(1, Ordering::Relaxed);
        let name = format!("{}-{number}.png", std::process::id());
        let file: PathBuf = std::env::temp_dir().join("lidleaf-tests").join(name);
        if let Ok(taken) = self.session().get("screenshot")
            && let Ok(bytes) = BASE64.decode(taken.as_str().unwrap_or_default())
            && let Some(folder) = file.parent()
            && std::fs::create_dir_all(folder).is_ok()
            && std::fs::write(&file, bytes).is_ok()
        {
            let _ = write!(report, "\npicture: {}", file.display());
        }
        fail(&report)
    }
}

/// A text without the invisible marks around values in a sentence (U+2066 to U+2069).
fn without_isolates(text: &str) -> String {
    text.chars().filter(|c| !('\u{2066}'..='\u{2069}').contains(c)).collect()
}

impl Drop for Browser {
    fn drop(&mut self) {
        let _ = self.session().delete("");
    }
}
