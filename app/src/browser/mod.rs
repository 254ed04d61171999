//! The outside world as the app sees it: clock, network, storage, position, focus. Everything that
//! can be refused (storage in a private window, a position, the network) comes back as a value.

mod clock;
#[cfg(feature = "desk")]
mod download;
mod fetch;
mod page;
mod place;
mod settings;

#[cfg(feature = "desk")]
pub(crate) use clock::turn;
pub(crate) use clock::{Now, now};
#[cfg(feature = "desk")]
pub(crate) use download::{download, download_bytes};
pub(crate) use fetch::{FetchProblem, fetch_bytes};
#[cfg(feature = "desk")]
pub(crate) use fetch::{fetch_json, fetch_text, have_kept};
pub(crate) use page::{
    Listener, after_render, back, draw, element, focus, focus_is_within, focus_now, fold, fragment, go,
    is_online, listen, navigator_languages, replace_fragment, set_language, set_title, what_to_do,
    window_event,
};
pub(crate) use place::position;
pub(crate) use settings::{Settings, load_settings, save_settings, storage_allowed};
