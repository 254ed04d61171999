//! What the page and its service worker say to each other: whether everything is kept for use
//! without a signal, and whether a newer guide is ready. The worker is `static/sw.js`.

use leptos::prelude::*;
use locales::t;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast as _, JsValue};

use super::state::Resident;
use crate::browser;

/// What the worker last said.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(crate) enum Kept {
    /// Nothing yet.
    #[default]
    Unknown,
    /// Files are being fetched.
    Fetching,
    /// Everything is here.
    Whole,
    /// This browser does not keep pages, or the address is not a secure one.
    Impossible,
    /// It could not be kept: the disk is full or the network went.
    Failed,
}

/// The offline state as signals.
#[derive(Clone, Copy)]
pub(crate) struct Offline {
    kept: RwSignal<Kept>,
    update: RwSignal<bool>,
    online: RwSignal<bool>,
}

impl Offline {
    /// Starts the worker and listens to it. `group` names what to keep: "guide", or "desk" for the
    /// coordinator's files beside it.
    pub(crate) fn start(group: &'static str) -> Self {
        let offline = Self {
            kept: RwSignal::new(Kept::Unknown),
            update: RwSignal::new(false),
            online: RwSignal::new(browser::is_online()),
        };
        browser::window_event("online", move |_| offline.online.set(true));
        browser::window_event("offline", move |_| offline.online.set(false));
        let Some(container) = worker_container() else {
            offline.kept.set(Kept::Impossible);
            return offline;
        };
        let hear =
            Closure::<dyn FnMut(web_sys::MessageEvent)>::new(move |ev: web_sys::MessageEvent| {
                match ev.data().as_string().as_deref() {
                    Some("fetching") => offline.kept.set(Kept::Fetching),
                    Some("whole") => offline.kept.set(Kept::Whole),
                    Some("failed") => offline.kept.set(Kept::Failed),
                    Some("update-ready") => offline.update.set(true),
                    Some("switched") => reload(),
                    _ => {}
                }
            });
        // Setting the handler, unlike adding a listener, also lets messages begin to flow.
        container.set_onmessage(Some(hear.as_ref().unchecked_ref()));
        hear.forget();
        let registered = container.register("sw.js");
        wasm_bindgen_futures::spawn_local(async move {
            let worker = async {
                wasm_bindgen_futures::JsFuture::from(registered).await.ok()?;
                let ready = worker_container()?.ready().ok()?;
                let ready = wasm_bindgen_futures::JsFuture::from(ready).await.ok()?;
                ready.dyn_into::<web_sys::ServiceWorkerRegistration>().ok()?.active()
            };
            match worker.await {
                Some(worker) => {
                    let _ = worker.post_message(&JsValue::from_str(&format!("keep {group}")));
                }
                None => offline.kept.set(Kept::Impossible),
            }
        });
        offline
    }
}

/// The service workers of this page, where the browser has them.
fn worker_container() -> Option<web_sys::ServiceWorkerContainer> {
    let navigator = web_sys::window()?.navigator();
    let has = js_sys::Reflect::has(&navigator, &JsValue::from_str("serviceWorker")).unwrap_or(false);
    has.then(|| navigator.service_worker())
}

fn reload() {
    if let Some(window) = web_sys::window() {
        let _ = window.location().reload();
    }
}

/// One line at the foot of the page, and a banner when a newer guide is whole and waiting.
#[component]
pub(crate) fn OfflineLine() -> impl IntoView {
    let resident = expect_context::<Resident>();
    let offline = expect_context::<Offline>();
    let line = move || {
        resident.words.with(|w| match (offline.kept.get(), offline.online.get()) {
            (Kept::Whole, true) => t!(w.messages, "offline-ready"),
            (Kept::Whole, false) => t!(w.messages, "offline-now"),
            (Kept::Fetching | Kept::Unknown, true) => t!(w.messages, "offline-fetching"),
            (Kept::Failed, true) => t!(w.messages, "offline-failed"),
            (Kept::Impossible, true) => t!(w.messages, "offline-impossible"),
            (_, false) => t!(w.messages, "offline-incomplete"),
        })
    };
    view! {
        <p id="offline-status" class="offline" role="status" class:whole=move || offline.kept.get() == Kept::Whole>
            {line}
        </p>
    }
}

/// A newer guide is ready: it waits for the resident.
#[component]
pub(crate) fn UpdateBanner() -> impl IntoView {
    let resident = expect_context::<Resident>();
    let offline = expect_context::<Offline>();
    let switch = move |_| {
        if let Some(worker) = worker_container().and_then(|c| c.controller()) {
            let _ = worker.post_message(&JsValue::from_str("switch"));
        } else {
            reload();
        }
    };
    move || {
        offline.update.get().then(|| {
            let words = resident.words.get();
            view! {
                <div class="update" id="update" role="status">
                    <span>{t!(words.messages, "update-ready")}</span>
                    <button type="button" id="update-now" on:click=switch>{t!(words.messages, "update-now")}</button>
                </div>
            }
        })
    }
}
