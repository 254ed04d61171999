//! Lidleaf's app: the resident's page, the coordinator's page, and the worker that prints.
//!
//! One crate, three programs (`src/bin`), so that what the resident downloads carries no authoring
//! and no printing; the resident's is built without the feature `desk`, to which all of that belongs.
//! Everything they need at run time is a file beside the page:
//!
//! | file | for |
//! |---|---|
//! | `index.html`, `resident-start.js`, `pkg/resident*` | the resident |
//! | `coordinator.html`, `coordinator-start.js`, `pkg/coordinator*` | the coordinator |
//! | `print-worker.js`, `pkg/print_worker*`, `fonts/` | the print worker, loaded when a sheet is made |
//! | `data/guide.txt`, `data/lang/<tag>.txt` | the guide and its words, as `guide_data::packed` has them |
//! | `data/words/<tag>.txt` | every name to search by, folded, fetched once a guide can answer |
//! | `data/program.json`, `data/catalog.json`, `data/coordinator-<tag>.json` | the coordinator |
//! | `sw.js`, `files.json` | keeping all of it for use without a network |
//! | `app.css`, `desk.css`, `ruler.js` (once unfolded), `signs.svg`, `icons.svg`, `icons/`, `manifest.webmanifest`, `recover.js` | both |
//!
//! # Addresses
//! The resident's page: `#/`, `#/category/<id>`, `#/item/<id>`, each with `/<language>` in front
//! when a language is meant, and `/zone/<id>` when a service zone is
//! (`#/es/zone/old-mill/item/pizza-box`); see `src/address.rs`. The coordinator's page:
//! `#/<screen>` and `#/<screen>/<id>`, screens being `files`, `program`, `streams`, `zones`,
//! `channels`, `sites`, `rules`, `items`, `texts`, `print`.
//!
//! # Hooks for browser tests
//! Elements are found by these ids; roles and accessible names are those of the words on screen.
//!
//! Resident: `#search`, `#results` (its links carry the items), `#results-count`, `#recent`,
//! `#common`, `#categories`, `#heading` (the `h1`), `#back`, `#question` (`data-fact`),
//! `#question-text`, `.option`, `#cannot-tell`, `#answer`, `.verdict` (`data-verdict` = yes, no,
//! elsewhere, unlisted, undecided), `.destination` (`data-stream` or `data-channel`), `.prepare`,
//! `.why`, `.caution`, `.part`, `#temporary`, `#assumed`, `#decided`, `.channel` (`data-channel`),
//! `.site` (`data-site`), `#language`, `#zone`, `#unreviewed`, `#offline-status` (class `whole`
//! once everything is kept), `#update`, `#update-now`, `#unknown-language`, `#language-broken`, `#unknown-zone`,
//! `#not-here`, `#clock-wrong`, `#search-long`, `#said` (what is read aloud), `#near` and `#near-said`, `#ruler` with
//! `#card`, `#card-drawing` and `#ruler-drawing`, `#number-place`.
//!
//! Coordinator: `#tab-<screen>`, `#open-demo`, `#new-program`, `#import-file`, `#import-problem`,
//! `#import-original`, `#export`, `#drafts`, `#draft-name`, `#save-status` (`data-state` = nothing,
//! saved, waiting, failed), `#undo`, `#redo`, `#cannot-save`, `#cannot-save-export`, `#notice`,
//! `#findings` and `.finding` (`data-code`, `data-severity`), `#findings-count`, `#changes`,
//! `#changes-count`, `#ask` (the resident's screens inside), and on each list screen
//! `#<screen>-list`, `.list-entry` (`data-id`), `#<screen>-new`, `#<screen>-add`,
//! `#<screen>-editor`, `#<screen>-remove`. A field's id is `f-` and its place:
//! `f-rule.<id>.verdict`, `f-rule.<id>.stream`, `f-rule.<id>.channel`, `f-stream.<id>.<language>`,
//! `f-program.name.<language>`, `f-contact.phone`, `f-silence`. Items: `#items-filter`,
//! `#items-answer`, `.item-row` (`data-id`) with `.items-decide`. Texts: `#texts-language`,
//! `#texts-reviewer`, `.text-row` (`data-id`) with `.sign-off`, `#reviews` and its `.review` (`data-language`). Print: `#print-sheet`,
//! `#print-stream`, `#print-language-<n>`, `#print-make`, `#print-status`, `#preflight`,
//! `.preview`, `#print-download`, `#print-download-web`, `#print-profile`, `#print-ink-limit`,
//! `#print-contradictions`, `#print-copies`, `#print-note`, `#printed`. Comparing files:
//! `#compare-file`, `#compare-count`, `#compare-newer`, `#compare-notice`, `#compare-copy`,
//! `#compare-download`, `#compare-close`. After a panic: `#recover`, `#recover-reload`, `#recover-download`.

#![cfg_attr(
    feature = "desk",
    expect(
        unreachable_pub,
        reason = "the component macro writes public items whatever visibility is asked for"
    )
)]
#![cfg_attr(
    not(feature = "desk"),
    allow(
        dead_code,
        unused_imports,
        reason = "the coordinator's page uses more of the screens than the resident's"
    )
)]

mod address;
mod browser;
#[cfg(feature = "desk")]
mod coordinator;
#[cfg(feature = "desk")]
mod printing;
mod resident;
#[cfg(feature = "desk")]
mod store;
#[cfg(feature = "desk")]
mod timings;
mod words;

/// Starts the resident's page.
pub fn resident() {
    resident::start();
}

/// Starts the coordinator's page.
#[cfg(feature = "desk")]
pub fn coordinator() {
    coordinator::start();
}

/// Starts the print worker.
#[cfg(feature = "desk")]
pub fn print_worker() {
    printing::start();
}

/// Measures what a browser takes, and writes it into the page.
#[cfg(feature = "desk")]
pub fn timings() {
    timings::run();
}
