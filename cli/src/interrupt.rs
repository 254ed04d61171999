//! A request to stop (Ctrl-C), for commands that can end in good order.

use std::sync::OnceLock;
use std::sync::atomic::{AtomicBool, Ordering};

static STOP: AtomicBool = AtomicBool::new(false);
static WATCHED: OnceLock<bool> = OnceLock::new();

/// From now on a first request to stop sets what this returns, and a second ends the process at once.
///
/// Only commands that look at it ask for it: any other is ended by the first request, as always. Where no watch
/// can be set up, so is this one; what it has finished is whole all the same.
pub(crate) fn watch() -> &'static AtomicBool {
    WATCHED.get_or_init(|| {
        ctrlc::set_handler(|| {
            if STOP.swap(true, Ordering::Relaxed) {
                std::process::exit(i32::from(crate::exit::Exit::Stopped.code()));
            }
        })
        .is_ok()
    });
    &STOP
}
