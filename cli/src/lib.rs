//! The native command line, `lidleaf`, and what it shares with the app: the step from a guide to a sheet.
//!
//! Nothing here decides what is accepted: [`guide_data`] does. This crate reads files, asks, and writes
//! what came of it. Without the feature `native` only the shared part is left, which knows no files, no
//! network and no clock.

pub mod compared;
mod finding;
mod preflight;
pub mod sheets;
pub mod ticket;

#[cfg(feature = "native")]
mod args;
#[cfg(feature = "native")]
mod batch;
#[cfg(feature = "native")]
mod commands;
#[cfg(feature = "native")]
mod exit;
#[cfg(feature = "native")]
mod files;
#[cfg(feature = "native")]
mod interrupt;
#[cfg(feature = "native")]
mod problem;
#[cfg(feature = "native")]
mod publish;
#[cfg(feature = "native")]
mod run;
#[cfg(feature = "native")]
mod serve;

#[cfg(feature = "native")]
pub use exit::Exit;
pub use finding::finding_words;
pub use locales::Words;
pub use preflight::preflight_words;
#[cfg(feature = "native")]
pub use run::{World, run};
#[cfg(feature = "native")]
pub use serve::Server;
