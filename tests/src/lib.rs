//! What the tests of the whole share: a browser, a server that can be stopped, the demo program,
//! its sheets, and the programs that judge from outside.
//!
//! A test that cannot go on fails with a message that names what is missing and the command that
//! provides it; no test passes because something was not there.

mod browser;
pub mod brute;
mod console;
mod copy;
mod demo;
mod fail;
pub mod fuzz;
mod need;
mod outside;
mod picture;
mod serve;
pub mod sheets;
mod webdriver;

pub use browser::{Browser, DESK, PHONE};
pub use copy::SiteCopy;
pub use demo::{Case, demo, demo_guide};
pub use fail::{OrFail, fail};
pub use need::{axe, lidleaf, python, root, screenshots, site};
pub use outside::{Said, Sheet, Tool, judge, sheet, sheet_again, sheet_of};
pub use picture::Picture;
pub use serve::Server;
