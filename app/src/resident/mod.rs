//! The resident's face: find an item, answer what must be asked, read what to do with it.
//!
//! The screens take everything from [`state::State`], so that the coordinator's "ask as a resident"
//! panel shows the same ones over a draft. They are markup ([`html`]), drawn anew where something
//! changed; no component library stands between them and the browser, because on a phone that weighed
//! three times as much as everything else together. The coordinator's own screens, which edit far more
//! than they show, keep one.

mod answer;
mod app;
mod home;
mod html;
mod item;
mod link;
mod offline;
mod pictogram;
mod question;
mod ruler;
mod site;
mod state;

pub(crate) use app::{start, start_problem};
pub(crate) use html::Html;
pub(crate) use offline::{Offline, switch};
pub(crate) use state::{Resident, Screens};
