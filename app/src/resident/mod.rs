//! The resident's face: find an item, answer what must be asked, read what to do with it.
//!
//! The components take everything from [`Resident`], so that the coordinator's "ask as a resident"
//! panel shows the same screens over a draft.

mod answer;
mod app;
mod home;
mod item;
mod link;
mod offline;
mod pictogram;
mod question;
mod site;
mod state;

pub(crate) use app::{start, start_problem};
pub(crate) use home::Home;
pub(crate) use item::PageView;
pub(crate) use offline::{Offline, OfflineLine, UpdateBanner};
pub(crate) use pictogram::{Mark, Pictogram};
pub(crate) use state::{Resident, Screens};
