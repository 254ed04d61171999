//! The clock, read in one place.

use chrono::{NaiveDate, NaiveTime, Timelike as _};

/// The phone's own day and time of day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Now {
    /// The civil day where the phone is.
    pub(crate) day: NaiveDate,
    /// Minutes since midnight.
    pub(crate) minute: u16,
    /// Milliseconds since 1970, for "saved at".
    pub(crate) stamp: i64,
}

impl Now {
    /// A clock that was never set shows a day long before any guide; opening hours would then be
    /// worked out for a day that is not today.
    pub(crate) fn is_plausible(self) -> bool {
        NaiveDate::from_ymd_opt(2024, 1, 1).is_some_and(|early| self.day >= early)
    }
}

/// Reads the clock.
pub(crate) fn now() -> Now {
    let date = js_sys::Date::new_0();
    let year = i32::try_from(date.get_full_year()).unwrap_or(1970);
    let day = NaiveDate::from_ymd_opt(year, date.get_month() + 1, date.get_date()).unwrap_or_default();
    let time = NaiveTime::from_hms_opt(date.get_hours(), date.get_minutes(), 0).unwrap_or_default();
    let minute = u16::try_from(time.hour() * 60 + time.minute()).unwrap_or_default();
    #[expect(clippy::cast_possible_truncation, reason = "whole milliseconds")]
    let stamp = date.get_time() as i64;
    Now { day, minute, stamp }
}

/// Ends the task that is running; what follows is another one. In between the page draws and answers.
#[cfg(feature = "desk")]
pub(crate) async fn turn() {
    let soon = js_sys::Promise::new(&mut |resolve, _| {
        if let Some(window) = web_sys::window() {
            let _ = window.set_timeout_with_callback(&resolve);
        }
    });
    let _ = wasm_bindgen_futures::JsFuture::from(soon).await;
}
