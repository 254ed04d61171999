//! Keeps the draft: a moment after each edit, and when the page is hidden. Two windows on one draft
//! see each other's saves; when both have edited, both versions are kept.

use std::time::Duration;

use guide_data::Program;
use leptos::prelude::*;
use locales::t;
use wasm_bindgen::{JsCast as _, JsValue};
use wasm_bindgen_futures::spawn_local;

use super::desk::{Desk, Draft, Saving};
use crate::browser;
use crate::store::drafts::{self, StoreProblem};
use crate::store::rescue;

/// How long after the last edit the draft is written.
const SAVE_AFTER: Duration = Duration::from_millis(800);
/// Windows tell each other about saves under this name.
const CHANNEL: &str = "lidleaf-drafts";

/// What autosave remembers between events.
#[derive(Clone, Copy)]
pub(crate) struct Autosave {
    desk: Desk,
    timer: StoredValue<Option<TimeoutHandle>>,
    /// The count of edits that the last save had.
    saved_edits: StoredValue<u64>,
    busy: StoredValue<bool>,
    channel: StoredValue<Option<web_sys::BroadcastChannel>, LocalStorage>,
}

impl Autosave {
    /// Starts watching the desk.
    pub(crate) fn start(desk: Desk) -> Self {
        let channel = web_sys::BroadcastChannel::new(CHANNEL).ok();
        let save = Self {
            desk,
            timer: StoredValue::new(None),
            saved_edits: StoredValue::new(0),
            busy: StoredValue::new(false),
            channel: StoredValue::new_local(channel.clone()),
        };
        if let Some(channel) = channel {
            browser::listen(&channel, "message", move |ev| {
                let id = ev.dyn_ref::<web_sys::MessageEvent>().and_then(|m| m.data().as_string());
                if let Some(id) = id.filter(|id| desk.draft.with_untracked(|d| d.id == *id)) {
                    save.other_window_saved(id);
                }
            });
        }
        Effect::new(move |before: Option<u64>| {
            let edits = desk.edits.get();
            if before.is_some_and(|b| b != edits) {
                save.soon();
            }
            edits
        });
        browser::window_event("pagehide", move |_| save.leave());
        if let Some(document) = web_sys::window().and_then(|w| w.document()) {
            browser::listen(&document, "visibilitychange", move |_| {
                let hidden = web_sys::window().and_then(|w| w.document()).is_some_and(|d| d.hidden());
                if hidden {
                    save.leave();
                }
            });
        }
        save
    }

    fn is_dirty(self) -> bool {
        self.desk.edits.get_untracked() != self.saved_edits.get_value()
    }

    fn soon(self) {
        if !self.desk.draft.with_untracked(|d| d.id.is_empty()) {
            if !matches!(self.desk.saving.get_untracked(), Saving::Failed(_)) {
                self.desk.saving.set(Saving::Waiting);
            }
            if let Some(timer) = self.timer.try_update_value(Option::take).flatten() {
                timer.clear();
            }
            self.timer.set_value(set_timeout_with_handle(move || self.now(), SAVE_AFTER).ok());
        }
    }

    /// The page may be closed after this: unsaved edits go where writing is immediate.
    fn leave(self) {
        if self.is_dirty() && !self.desk.draft.with_untracked(|d| d.id.is_empty()) {
            rescue::keep(&self.as_stored());
            self.now();
        }
    }

    fn as_stored(self) -> drafts::Draft {
        let draft = self.desk.draft.get_untracked();
        let program = self.desk.program.get_untracked();
        drafts::Draft {
            id: draft.id,
            program: program.id.clone(),
            name: draft.name,
            revision: draft.revision,
            saved_at: browser::now().stamp,
            json: program.to_json(),
        }
    }

    /// Saves now.
    pub(crate) fn now(self) {
        if self.busy.get_value() {
            // The save under way has an older program: once more, after it.
            self.soon();
            return;
        }
        if self.desk.draft.with_untracked(|d| d.id.is_empty()) {
            return;
        }
        self.busy.set_value(true);
        let edits = self.desk.edits.get_untracked();
        let stored = self.as_stored();
        spawn_local(async move {
            let done = drafts::write(&stored).await;
            self.busy.set_value(false);
            match done {
                Ok(revision) => self.kept(&stored, revision, edits),
                Err(StoreProblem::Newer) => self.diverged(stored).await,
                Err(problem) => self.desk.saving.set(Saving::Failed(problem)),
            }
        });
    }

    fn kept(self, stored: &drafts::Draft, revision: u64, edits: u64) {
        self.saved_edits.set_value(edits);
        self.desk.draft.update(|d| {
            if d.id == stored.id {
                d.revision = revision;
            }
        });
        rescue::forget(&stored.id);
        if self.is_dirty() {
            self.soon();
        } else {
            self.desk.saving.set(Saving::Saved);
        }
        if let Some(Some(channel)) = self.channel.try_get_value() {
            let _ = channel.post_message(&JsValue::from_str(&stored.id));
        }
    }

    /// Another window saved the same draft after this one last saw it, and this one has edits of
    /// its own: they become a draft of their own, and nothing is lost.
    async fn diverged(self, stored: drafts::Draft) {
        let words = self.desk.words.get_untracked();
        let name = t!(words.messages, "draft-second-version", name = stored.name.clone());
        let copy = drafts::Draft { id: new_id(), name: name.clone(), revision: 0, ..stored.clone() };
        match drafts::write(&copy).await {
            Ok(revision) => {
                rescue::forget(&stored.id);
                rescue::set_current(&copy.id);
                self.desk.draft.set(Draft { id: copy.id, name: name.clone(), revision });
                self.saved_edits.set_value(self.desk.edits.get_untracked());
                self.desk.saving.set(Saving::Saved);
                self.desk.notice.set(Some(t!(
                    words.messages,
                    "draft-diverged",
                    name = stored.name,
                    copy = name
                )));
            }
            Err(problem) => self.desk.saving.set(Saving::Failed(problem)),
        }
    }

    fn other_window_saved(self, id: String) {
        // With edits of one's own the next save finds out, and keeps both.
        if self.is_dirty() {
            return;
        }
        spawn_local(async move {
            let Ok(Some(stored)) = drafts::read(&id).await else { return };
            let Ok(program) = Program::from_json(&stored.json) else { return };
            if !self.is_dirty() && stored.revision > self.desk.draft.with_untracked(|d| d.revision) {
                self.desk.take(stored.revision, program);
            }
        });
    }

    /// Opens a program as a new draft and keeps it at once.
    pub(crate) fn begin(self, name: String, program: Program) {
        let draft = Draft { id: new_id(), name, revision: 0 };
        rescue::set_current(&draft.id);
        self.flush_then(move || {
            self.desk.open(draft, program);
            self.desk.saving.set(Saving::Waiting);
            self.saved_edits.set_value(self.desk.edits.get_untracked().wrapping_add(1));
            self.now();
        });
    }

    /// Opens a draft that is kept, with edits that a closed page may have left.
    pub(crate) async fn reopen(self, id: &str) -> Result<(), StoreProblem> {
        let stored = drafts::read(id).await?;
        let left = rescue::find(id);
        let words = self.desk.words.get_untracked();
        let Some(chosen) = left.as_ref().or(stored.as_ref()) else { return Err(StoreProblem::Forbidden) };
        let ahead = match (&left, &stored) {
            (Some(left), Some(stored)) => left.revision != stored.revision,
            _ => false,
        };
        let (source, dirty) =
            if ahead { (stored.as_ref().unwrap_or(chosen), false) } else { (chosen, left.is_some()) };
        if let (true, Some(left)) = (ahead, &left) {
            // Another window saved after the page that left these edits: they get a draft of their own.
            let name = t!(words.messages, "draft-second-version", name = left.name.clone());
            let copy = drafts::Draft { id: new_id(), name: name.clone(), revision: 0, ..left.clone() };
            if drafts::write(&copy).await.is_ok() {
                rescue::forget(id);
                self.desk.notice.set(Some(t!(
                    words.messages,
                    "draft-diverged",
                    name = left.name.clone(),
                    copy = name
                )));
            }
        }
        match Program::from_json(&source.json) {
            Ok(program) => {
                let revision = stored.as_ref().map_or(source.revision, |s| s.revision);
                rescue::set_current(id);
                self.desk.open(Draft { id: id.to_owned(), name: source.name.clone(), revision }, program);
                self.saved_edits.set_value(self.desk.edits.get_untracked());
                self.desk.saving.set(Saving::Saved);
                if dirty {
                    self.now();
                }
                Ok(())
            }
            Err(_) => Err(StoreProblem::Forbidden),
        }
    }

    /// Saves what is open, then does something.
    fn flush_then(self, then: impl FnOnce() + 'static) {
        if !self.is_dirty() || self.desk.draft.with_untracked(|d| d.id.is_empty()) {
            then();
            return;
        }
        let stored = self.as_stored();
        spawn_local(async move {
            if drafts::write(&stored).await.is_err() {
                rescue::keep(&stored);
            }
            then();
        });
    }
}

/// An id no other draft has: the time and a random part.
fn new_id() -> String {
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "0 to 2^32")]
    let random = (js_sys::Math::random() * 4_294_967_296.0) as u32;
    format!("{:x}-{random:08x}", browser::now().stamp)
}
