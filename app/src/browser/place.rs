//! The phone's position, asked only when the resident taps for it.

use std::cell::RefCell;
use std::rc::Rc;

use guide_data::Position;
use wasm_bindgen::prelude::*;

/// What is done with the position.
type Done = Box<dyn FnOnce(Option<Position>)>;

/// Asks the phone where it is; `done` gets nothing when the resident or the phone refuses.
pub(crate) fn position(done: impl FnOnce(Option<Position>) + 'static) {
    let done: Rc<RefCell<Option<Done>>> = Rc::new(RefCell::new(Some(Box::new(done))));
    let finish = move |found: Option<Position>| {
        if let Some(done) = done.borrow_mut().take() {
            done(found);
        }
    };
    let refused = finish.clone();
    let on_success = Closure::once_into_js(move |at: JsValue| {
        let coords = js_sys::Reflect::get(&at, &"coords".into()).unwrap_or_default();
        let degrees = |name: &str| js_sys::Reflect::get(&coords, &name.into()).ok()?.as_f64();
        finish(degrees("latitude").zip(degrees("longitude")).map(|(lat, lon)| Position { lat, lon }));
    });
    let on_refusal = {
        let refused = refused.clone();
        Closure::once_into_js(move |_: JsValue| refused(None))
    };
    let asked = web_sys::window().and_then(|w| w.navigator().geolocation().ok()).is_some_and(|geo| {
        geo.get_current_position_with_error_callback(
            on_success.unchecked_ref(),
            Some(on_refusal.unchecked_ref()),
        )
        .is_ok()
    });
    if !asked {
        refused(None);
    }
}
