//! The page itself: its address, its language, the focus, events.

use wasm_bindgen::prelude::*;
use web_sys::{Element, HtmlElement};

use crate::resident::Html;

/// Brings a text into the form in which names are compared. The browser decomposes it and puts it in
/// lower case: it has the tables for that.
pub(crate) fn fold(text: &str) -> String {
    // Most names need no help.
    if text.is_ascii() {
        return guide_data::fold_lower(text.bytes().map(|b| char::from(b.to_ascii_lowercase())));
    }
    let folded = js_sys::JsString::from(text).normalize("NFKD").to_lower_case();
    guide_data::fold_lower(String::from(folded).chars())
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

/// The element of an id.
pub(crate) fn element(id: &str) -> Option<Element> {
    web_sys::window()?.document()?.get_element_by_id(id)
}

/// Draws markup into an element in place of what is there. If the focus was on something in it that has
/// an id, it is there again afterwards.
pub(crate) fn draw(place: &Element, markup: &Html) {
    let focused = focused().filter(|e| place.contains(Some(e))).map(|e| e.id());
    place.set_inner_html(markup.as_str());
    if let Some(id) = focused.filter(|id| !id.is_empty()) {
        focus_now(&id);
    }
}

fn focused() -> Option<Element> {
    web_sys::window()?.document()?.active_element()
}

/// Moves the focus to an element that is there.
pub(crate) fn focus_now(id: &str) {
    if let Some(element) = element(id).and_then(|e| e.dyn_into::<HtmlElement>().ok()) {
        let _ = element.focus();
    }
}

/// Moves the focus to an element, once what is being drawn has been drawn.
pub(crate) fn focus(id: &'static str) {
    after_render(move || focus_now(id));
}

/// Whether the focus is inside an element.
pub(crate) fn focus_is_within(place: &Element) -> bool {
    focused().is_some_and(|e| place.contains(Some(&e)))
}

/// What a click asks for: the `data-do` of what was clicked, and that element.
pub(crate) fn what_to_do(event: &web_sys::Event) -> Option<(String, Element)> {
    let touched: Element = event.target()?.dyn_into().ok()?;
    let element = touched.closest("[data-do]").ok().flatten()?;
    Some((element.get_attribute("data-do")?, element))
}

/// Something that hears events for as long as it is kept.
pub(crate) struct Listener(Closure<dyn FnMut(web_sys::Event)>);

impl Listener {
    /// Runs this at every event.
    pub(crate) fn new(run: impl FnMut(web_sys::Event) + 'static) -> Self {
        Self(Closure::new(run))
    }

    /// Hears the events of this name at a place; hearing twice is hearing once.
    pub(crate) fn hear(&self, place: &web_sys::EventTarget, name: &str) {
        let _ = place.add_event_listener_with_callback(name, self.0.as_ref().unchecked_ref());
    }
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
