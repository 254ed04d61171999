//! The coordinator's face: author a program, see at once what an edit changed and what is wrong.

mod app;
mod ask;
mod autosave;
mod changes;
mod compare_files;
mod condition;
mod desk;
mod fields;
mod files_tab;
mod findings;
mod frame;
mod items_tab;
mod place_tabs;
mod print_choices;
mod print_tab;
mod program_tab;
mod rules_tab;
mod sites_tab;
mod texts;
mod texts_tab;

pub(crate) use app::start;
