//! What the browser noted: its console, and every request it made.

use serde_json::Value;

/// One line of the browser's console.
#[derive(Debug, Clone)]
pub(crate) struct Entry {
    pub(crate) level: String,
    pub(crate) text: String,
}

pub(crate) fn entries(log: &Value) -> Vec<Entry> {
    let text =
        |entry: &Value, key: &str| entry.get(key).and_then(Value::as_str).unwrap_or_default().to_owned();
    let list = log.as_array().map(Vec::as_slice).unwrap_or_default();
    list.iter().map(|entry| Entry { level: text(entry, "level"), text: text(entry, "message") }).collect()
}

impl Entry {
    /// Whether a test may not pass with this in the console, whatever it is about.
    pub(crate) fn is_trouble(&self) -> bool {
        let marks = ["panicked at", "Content Security Policy", "RuntimeError", "Uncaught", "Refused to"];
        // The browser's own pages, the empty tab it starts with, are not ours.
        !self.text.starts_with("chrome://") && marks.iter().any(|mark| self.text.contains(mark))
    }
}

/// The addresses asked for, from chromedriver's performance log (DevTools' `Network` domain).
pub(crate) fn requests(log: &Value) -> Vec<String> {
    let list = log.as_array().map(Vec::as_slice).unwrap_or_default();
    list.iter()
        .filter_map(|entry| serde_json::from_str::<Value>(entry.get("message")?.as_str()?).ok())
        .filter_map(|entry| {
            let message = entry.get("message")?;
            let method = message.get("method")?.as_str()?;
            (method == "Network.requestWillBeSent")
                .then(|| message.pointer("/params/request/url")?.as_str().map(str::to_owned))?
        })
        .collect()
}
