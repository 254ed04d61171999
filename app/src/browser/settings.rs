//! The few things a resident's phone remembers. They never leave it.

use gloo_storage::{LocalStorage, Storage as _};
use serde::{Deserialize, Serialize};

const KEY: &str = "lidleaf-resident";

/// What the phone remembers; see the table in [`crate::store`].
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub(crate) struct Settings {
    /// The language chosen with the switch.
    pub(crate) language: Option<String>,
    /// The service zone given.
    pub(crate) zone: Option<String>,
    /// Items looked up, newest first.
    pub(crate) recent: Vec<String>,
}

/// Whether the browser lets this page store anything. Asked before every use of `gloo-storage`,
/// which takes storage for granted.
pub(crate) fn storage_allowed() -> bool {
    web_sys::window().is_some_and(|w| matches!(w.local_storage(), Ok(Some(_))))
}

/// What was remembered; the defaults when nothing was or it cannot be read.
pub(crate) fn load_settings() -> Settings {
    if storage_allowed() { LocalStorage::get(KEY).unwrap_or_default() } else { Settings::default() }
}

/// Remembers; a phone that refuses works the same, only forgetfully.
pub(crate) fn save_settings(settings: &Settings) {
    if storage_allowed() {
        let _ = LocalStorage::set(KEY, settings);
    }
}
