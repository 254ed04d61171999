//! The one way in which a test's helper gives up.

/// Fails the test that is running.
///
/// # Panics
/// Always: that is how a test fails.
#[expect(clippy::panic, reason = "the helpers of tests fail the test")]
#[track_caller]
pub fn fail(why: &str) -> ! {
    panic!("{why}")
}

/// Takes what is there, or fails the test.
pub trait OrFail<T> {
    /// The value, or a failed test that says what was being done.
    #[track_caller]
    fn or_fail(self, doing: &str) -> T;
}

impl<T> OrFail<T> for Option<T> {
    fn or_fail(self, doing: &str) -> T {
        match self {
            Some(value) => value,
            None => fail(&format!("{doing}: nothing was there")),
        }
    }
}

impl<T, E: std::fmt::Display> OrFail<T> for Result<T, E> {
    fn or_fail(self, doing: &str) -> T {
        match self {
            Ok(value) => value,
            Err(error) => fail(&format!("{doing}: {error}")),
        }
    }
}
