//! The few things the coordinator's screens remember.

use gloo_storage::{LocalStorage, Storage as _};
use serde::{Deserialize, Serialize};

use crate::browser::storage_allowed;

const KEY: &str = "lidleaf-desk";

/// What the coordinator's screens remember.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub(crate) struct DeskSettings {
    /// The language of the screens.
    pub(crate) language: Option<String>,
    /// The name put to texts signed off.
    pub(crate) reviewer: String,
}

/// What was remembered.
pub(crate) fn load() -> DeskSettings {
    if storage_allowed() { LocalStorage::get(KEY).unwrap_or_default() } else { DeskSettings::default() }
}

/// Remembers; a browser that refuses works the same.
pub(crate) fn save(settings: &DeskSettings) {
    if storage_allowed() {
        let _ = LocalStorage::set(KEY, settings);
    }
}
