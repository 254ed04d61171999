//! The print worker: a sheet's job in, its files, their preflight and its previews out. It
//! wraps `print` and nothing else, so that its bytes are those of the command line.

mod worker;

pub(crate) use worker::start;

/// What the page and the worker say to each other.
pub(crate) mod messages {
    use serde::{Deserialize, Serialize};

    /// A sheet to make. The print shop's profile, when there is one, travels beside this, as bytes.
    #[derive(Debug, Serialize, Deserialize)]
    pub(crate) struct Order {
        /// Tells one order's answer from another's.
        pub(crate) number: u32,
        /// The sheet.
        pub(crate) job: print::SheetJob,
        /// The most ink the shop's paper takes, in per cent.
        pub(crate) ink_limit: u16,
        /// What may be left out of it.
        pub(crate) offer: print::Offer,
        /// Its job ticket, when that is what is to be made.
        pub(crate) ticket: Option<print::Ticket>,
    }

    /// What came of it. The files themselves, for the press and for the web, travel beside this, as bytes.
    #[derive(Debug, Clone, Default, Serialize, Deserialize)]
    pub(crate) struct Made {
        /// The order's number.
        pub(crate) number: u32,
        /// Everything preflight found, errors first; the places in the previews are numbered as they stand here.
        pub(crate) preflight: Vec<print::PreflightItem>,
        /// How many steps of the offer were taken.
        pub(crate) taken: usize,
        /// A preview of each page, as SVG.
        pub(crate) previews: Vec<String>,
        /// The fonts did not arrive: nothing was made.
        pub(crate) no_fonts: bool,
        /// The file is the job ticket.
        pub(crate) is_ticket: bool,
    }
}
