//! The last edits of a page that is being closed. A database may not finish writing by then, and
//! this does; it is read back when the draft is next opened.

use gloo_storage::{LocalStorage, SessionStorage, Storage as _};

use super::drafts::Draft;
use crate::browser::storage_allowed;

const CURRENT: &str = "lidleaf-current";

fn key(id: &str) -> String {
    format!("lidleaf-rescue-{id}")
}

/// Keeps the unsaved edits of a draft; `revision` is the one they were made on. False when the
/// browser has no room for them or refuses.
pub(crate) fn keep(draft: &Draft) -> bool {
    storage_allowed() && LocalStorage::set(key(&draft.id), draft).is_ok()
}

/// The unsaved edits of a draft, if a page left some.
pub(crate) fn find(id: &str) -> Option<Draft> {
    if storage_allowed() { LocalStorage::get(key(id)).ok() } else { None }
}

/// Forgets them, once they are saved.
pub(crate) fn forget(id: &str) {
    if storage_allowed() {
        LocalStorage::delete(key(id));
    }
}

/// Remembers the draft this window works on.
pub(crate) fn set_current(id: &str) {
    if storage_allowed() {
        let _ = LocalStorage::set(CURRENT, id);
        let _ = SessionStorage::set(CURRENT, id);
    }
}

/// The draft this window worked on before it was loaded again, else the one any window did last.
pub(crate) fn current() -> Option<String> {
    if storage_allowed() {
        SessionStorage::get(CURRENT).or_else(|_| LocalStorage::get(CURRENT)).ok()
    } else {
        None
    }
}
