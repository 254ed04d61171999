//! The page itself: its address, its language, the focus, events.

use wasm_bindgen::prelude::*;
use web_sys::HtmlElement;

/// Brings a text into the form [`guide_data::fold`] wants, which is the browser's own NFKD.
pub(crate) fn fold(text: &str) -> String {
    let decomposed = js_sys::JsString::from(text).normalize("NFKD");
    guide_data::fold(&String::from(decomposed))
}

/// The address's fragment, without `#`, percent-decoded; a broken one is taken as it is.
pub(crate) fn fragment() -> String {
    let raw = web_sys::window().and_then(|w| w.location().hash().ok()).unwrap_or_default();
    let raw = raw.trim_start_matches('#');
    js_sys::decode_uri_component(raw).map_or_else(|_| raw.to_owned(), String::from)
}

/// Goes to a fragment, leaving a step in the history.
pub(crate) fn go(fragment: &str) {
    if let Some(window) = web_sys::window() {
        let _ = window.location().set_hash(fragment);
    }
}

/// Changes the fragment without a step in the history and without an event.
pub(crate) fn replace_fragment(fragment: &str) {
    if let Some(history) = web_sys::window().and_then(|w| w.history().ok()) {
        let _ = history.replace_state_with_url(&JsValue::NULL, "", Some(&format!("#{fragment}")));
    }
}

/// One step back in the history.
pub(crate) fn back() {
    if let Some(history) = web_sys::window().and_then(|w| w.history().ok()) {
        let _ = history.back();
    }
}

/// The languages the browser says its owner reads, best first.
pub(crate) fn navigator_languages() -> Vec<String> {
    web_sys::window()
        .map(|w| w.navigator().languages().iter().filter_map(|l| l.as_string()).collect())
        .unwrap_or_default()
}

/// Tells browser and screen reader in which language and direction the page is.
pub(crate) fn set_language(tag: &str, direction: &str) {
    if let Some(root) = web_sys::window().and_then(|w| w.document()).and_then(|d| d.document_element()) {
        let _ = root.set_attribute("lang", tag);
        let _ = root.set_attribute("dir", direction);
    }
}

/// Sets the page's title.
pub(crate) fn set_title(title: &str) {
    if let Some(document) = web_sys::window().and_then(|w| w.document()) {
        document.set_title(title);
    }
}

/// Moves the focus to an element, once what is being drawn has been drawn.
pub(crate) fn focus(id: &'static str) {
    after_render(move || {
        let element = web_sys::window().and_then(|w| w.document()).and_then(|d| d.get_element_by_id(id));
        if let Some(element) = element.and_then(|e| e.dyn_into::<HtmlElement>().ok()) {
            let _ = element.focus();
        }
    });
}

/// Whether the focus is on an element or inside it.
pub(crate) fn focus_is_within(id: &str) -> bool {
    let active = web_sys::window().and_then(|w| w.document()).and_then(|d| d.active_element());
    active.is_some_and(|e| matches!(e.closest(&format!("#{id}")), Ok(Some(_))))
}

/// Runs something after the next drawing.
pub(crate) fn after_render(run: impl FnOnce() + 'static) {
    let run = Closure::once_into_js(run);
    if let Some(window) = web_sys::window() {
        let _ = window.request_animation_frame(run.unchecked_ref());
    }
}

/// Whether the browser believes it has a network.
pub(crate) fn is_online() -> bool {
    web_sys::window().is_some_and(|w| w.navigator().on_line())
}

/// Listens to an event of the window for as long as the page lives.
pub(crate) fn window_event(name: &str, run: impl FnMut(web_sys::Event) + 'static) {
    if let Some(window) = web_sys::window() {
        listen(&window, name, run);
    }
}

/// Listens to an event of anything for as long as the page lives.
pub(crate) fn listen(target: &web_sys::EventTarget, name: &str, run: impl FnMut(web_sys::Event) + 'static) {
    let run = Closure::<dyn FnMut(web_sys::Event)>::new(run);
    let _ = target.add_event_listener_with_callback(name, run.as_ref().unchecked_ref());
    run.forget();
}
