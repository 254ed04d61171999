//! What the page and its service worker say to each other: whether everything is kept for use
//! without a signal, and whether a newer guide is ready. The worker is `static/sw.js`.

use std::cell::Cell;
use std::rc::Rc;

use locales::t;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast as _, JsValue};

use super::html::{Html, put};
use crate::browser;
use crate::words::Words;

/// What the worker last said.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(crate) enum Kept {
    /// Nothing yet.
    #[default]
    Unknown,
    /// Files are being fetched.
    Fetching,
    /// The browser has cleared what was kept; it is being fetched again.
    Lost,
    /// Everything is here.
    Whole,
    /// This browser does not keep pages, or the address is not a secure one.
    Impossible,
    /// It could not be kept: the disk is full or the network went.
    Failed,
}

/// Whether the page works without a network.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(crate) struct Offline {
    /// What is kept.
    pub(crate) kept: Kept,
    /// A newer guide is whole and waits.
    pub(crate) update: bool,
    /// A newer guide could not be fetched whole.
    pub(crate) half: bool,
    /// The browser lets the page store nothing at all.
    pub(crate) forgetful: bool,
    /// The browser believes it has a network.
    pub(crate) online: bool,
}

impl Offline {
    /// Starts the worker and listens to it; `tell` is called with every change. `group` names what to
    /// keep: "guide", or "desk" for the coordinator's files beside it.
    pub(crate) fn start(group: &'static str, tell: impl Fn(Self) + 'static) {
        let forgetful = !browser::storage_allowed();
        let now = Rc::new(Cell::new(Self { online: browser::is_online(), forgetful, ..Self::default() }));
        tell(now.get());
        let tell = Rc::new(move |change: &dyn Fn(&mut Self)| {
            let mut state = now.get();
            change(&mut state);
            now.set(state);
            tell(state);
        });
        for online in [true, false] {
            let tell = tell.clone();
            let event = if online { "online" } else { "offline" };
            browser::window_event(event, move |_| {
                tell(&|s| s.online = online);
                // What could not be fetched before may come now.
                if online {
                    wasm_bindgen_futures::spawn_local(async move {
                        order(group).await;
                    });
                }
            });
        }
        let Some(container) = worker_container() else {
            tell(&|s| s.kept = Kept::Impossible);
            return;
        };
        let hear = {
            let tell = tell.clone();
            Closure::<dyn FnMut(web_sys::MessageEvent)>::new(move |ev: web_sys::MessageEvent| {
                match ev.data().as_string().as_deref() {
                    Some("fetching") => tell(&|s| s.kept = Kept::Fetching),
                    Some("lost") => tell(&|s| s.kept = Kept::Lost),
                    Some("update-failed") => tell(&|s| s.half = true),
                    Some("whole") => tell(&|s| s.kept = Kept::Whole),
                    Some("failed") => tell(&|s| s.kept = Kept::Failed),
                    Some("update-ready") => tell(&|s| (s.update, s.half) = (true, false)),
                    Some("switched") => reload(),
                    _ => {}
                }
            })
        };
        // Setting the handler, unlike adding a listener, also lets messages begin to flow.
        container.set_onmessage(Some(hear.as_ref().unchecked_ref()));
        hear.forget();
        let registered = container.register("sw.js");
        wasm_bindgen_futures::spawn_local(async move {
            let registered = wasm_bindgen_futures::JsFuture::from(registered).await;
            if registered.is_err() || order(group).await.is_none() {
                tell(&|s| s.kept = Kept::Impossible);
            }
        });
    }

    /// Everything is kept.
    pub(crate) fn is_whole(self) -> bool {
        self.kept == Kept::Whole
    }

    /// One line for the foot of the page.
    pub(crate) fn line(self, words: &Words) -> String {
        let m = &words.messages;
        match (self.kept, self.online) {
            (Kept::Whole, true) if self.half => t!(m, "update-failed"),
            (Kept::Whole, true) => t!(m, "offline-ready"),
            (Kept::Whole, false) => t!(m, "offline-now"),
            (Kept::Fetching | Kept::Unknown, true) => t!(m, "offline-fetching"),
            (Kept::Failed, true) => t!(m, "offline-failed"),
            (Kept::Lost, true) => t!(m, "offline-lost"),
            (Kept::Impossible, true) if self.forgetful => t!(m, "offline-forgetful"),
            (Kept::Impossible, true) => t!(m, "offline-impossible"),
            (_, false) => t!(m, "offline-incomplete"),
        }
    }

    /// A newer guide is ready: it waits for the person.
    pub(crate) fn banner(self, out: &mut Html, words: &Words) {
        if self.update {
            let m = &words.messages;
            put!(out, "<div class=\"update\" id=\"update\" role=\"status\"><span>" (t!(m, "update-ready"))
                "</span><button type=\"button\" id=\"update-now\" data-do=\"update\">" (t!(m, "update-now"))
                "</button></div>");
        }
    }
}

/// Asks the worker to keep a group of files and to look for newer ones.
async fn order(group: &str) -> Option<()> {
    let ready = worker_container()?.ready().ok()?;
    let ready = wasm_bindgen_futures::JsFuture::from(ready).await.ok()?;
    let worker = ready.dyn_into::<web_sys::ServiceWorkerRegistration>().ok()?.active()?;
    worker.post_message(&JsValue::from_str(if group == "desk" { "keep desk" } else { "keep guide" })).ok()
}

/// Turns to the newer guide.
pub(crate) fn switch() {
    if let Some(worker) = worker_container().and_then(|c| c.controller()) {
        let _ = worker.post_message(&JsValue::from_str("switch"));
    } else {
        reload();
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
