//! Handing a file to the person at the screen.

use wasm_bindgen::{JsCast as _, JsValue};

/// Offers a text as a file; false when the browser would not.
pub(crate) fn download(name: &str, kind: &str, text: &str) -> bool {
    offer(name, kind, &JsValue::from_str(text)).is_some()
}

/// Offers bytes as a file; false when the browser would not.
pub(crate) fn download_bytes(name: &str, kind: &str, bytes: &js_sys::Uint8Array) -> bool {
    offer(name, kind, bytes).is_some()
}

fn offer(name: &str, kind: &str, part: &JsValue) -> Option<()> {
    let options = web_sys::BlobPropertyBag::new();
    options.set_type(kind);
    let parts = js_sys::Array::of1(part);
    let blob = web_sys::Blob::new_with_str_sequence_and_options(&parts, &options).ok()?;
    let address = web_sys::Url::create_object_url_with_blob(&blob).ok()?;
    let document = web_sys::window()?.document()?;
    let link: web_sys::HtmlAnchorElement = document.create_element("a").ok()?.dyn_into().ok()?;
    link.set_href(&address);
    link.set_download(name);
    document.body()?.append_child(&link).ok()?;
    link.click();
    link.remove();
    // The address stays valid until the page closes: revoking it now would race the download.
    Some(())
}
