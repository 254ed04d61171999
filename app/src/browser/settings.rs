//! The few things a resident's phone remembers. They never leave it.
//!
//! The browser reads and writes the JSON, so that phones carry no reader of their own for three fields.

use js_sys::{Array, JSON, Object, Reflect};
use wasm_bindgen::{JsCast as _, JsValue};

const KEY: &str = "lidleaf-resident";

/// What the phone remembers; see the table in [`crate::store`].
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(crate) struct Settings {
    /// The language chosen with the switch.
    pub(crate) language: Option<String>,
    /// The service zone given.
    pub(crate) zone: Option<String>,
    /// Items looked up, newest first.
    pub(crate) recent: Vec<String>,
}

fn storage() -> Option<web_sys::Storage> {
    web_sys::window()?.local_storage().ok().flatten()
}

/// Whether the browser lets this page store anything. Asked before every use of `gloo-storage`,
/// which takes storage for granted.
pub(crate) fn storage_allowed() -> bool {
    storage().is_some()
}

/// What was remembered; the defaults when nothing was or it cannot be read.
pub(crate) fn load_settings() -> Settings {
    let stored = storage().and_then(|s| s.get_item(KEY).ok().flatten()).and_then(|s| JSON::parse(&s).ok());
    let Some(stored) = stored.filter(JsValue::is_object) else { return Settings::default() };
    let field = |name: &str| Reflect::get(&stored, &JsValue::from_str(name)).unwrap_or_default();
    let recent = field("recent").dyn_into::<Array>().unwrap_or_default();
    Settings {
        language: field("language").as_string(),
        zone: field("zone").as_string(),
        recent: recent.iter().filter_map(|id| id.as_string()).collect(),
    }
}

/// Remembers; a phone that refuses works the same, only forgetfully.
pub(crate) fn save_settings(settings: &Settings) {
    let fields = Object::new();
    let set = |name: &str, value: &JsValue| drop(Reflect::set(&fields, &JsValue::from_str(name), value));
    let text = |text: &Option<String>| text.as_deref().map_or(JsValue::NULL, JsValue::from_str);
    set("language", &text(&settings.language));
    set("zone", &text(&settings.zone));
    let recent: Array = settings.recent.iter().map(|id| JsValue::from_str(id)).collect();
    set("recent", &recent);
    if let (Some(storage), Ok(json)) = (storage(), JSON::stringify(&fields)) {
        let _ = storage.set_item(KEY, &String::from(json));
    }
}
