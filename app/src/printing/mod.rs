//! The print worker: a sheet's job in, the press file, its preflight and its previews out. It
//! wraps `print` and nothing else, so that its bytes are those of the command line.

mod worker;

pub(crate) use worker::start;

/// What the page and the worker say to each other.
pub(crate) mod messages {
    use serde::{Deserialize, Serialize};

    /// A sheet to make.
    #[derive(Debug, Serialize, Deserialize)]
    pub(crate) struct Order {
        /// Tells one order's answer from another's.
        pub(crate) number: u32,
        /// The sheet.
        pub(crate) job: print::SheetJob,
        /// Its job ticket, when that is what is to be made.
        pub(crate) ticket: Option<print::Ticket>,
    }

    /// What came of it. The file itself travels beside this, as bytes.
    #[derive(Debug, Clone, Default, Serialize, Deserialize)]
    pub(crate) struct Made {
        /// The order's number.
        pub(crate) number: u32,
        /// Everything preflight found.
        pub(crate) preflight: Vec<print::PreflightItem>,
        /// A preview of each page, as SVG.
        pub(crate) previews: Vec<String>,
        /// The fonts did not arrive: nothing was made.
        pub(crate) no_fonts: bool,
        /// The file is the job ticket.
        pub(crate) is_ticket: bool,
    }
}
