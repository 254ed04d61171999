//! What is kept where. Everything here stays on the person's own device; nothing is sent anywhere.
//!
//! | what | where | written when | exported by |
//! |---|---|---|---|
//! | resident: language, zone, recent items | `localStorage["lidleaf-resident"]` ([`crate::browser`] settings) | on each choice | nothing; forgetting it costs a tap |
//! | resident: how wide a bank card is on this screen | `localStorage["lidleaf-card"]` (`static/ruler.js`) | while the slider of a ruler is moved | nothing; measuring again costs a moment |
//! | resident: position, or the place typed | nowhere: in memory until the page closes | on tap | nothing |
//! | resident: the guide, all languages, sites, pictures | Cache storage `lidleaf:<path>:guide:<version>` (`static/sw.js`) | first visit, and on an update the resident asks for | the published folder itself |
//! | coordinator: the screens' own files, fonts, print worker | Cache storage `lidleaf:<path>:desk:<version>` | first visit to `coordinator.html` | the published folder itself |
//! | which version the pages are served from, and which one waits | Cache storage `lidleaf:<path>:pointer` | after a version is whole; on "update" | nothing |
//! | coordinator: each draft: `id`, `program` (its id), `name`, `revision`, `saved_at`, `json` (the program file) | IndexedDB `lidleaf`, store `drafts` ([`drafts`]) | 0.8 s after an edit, and when the page is hidden | "Export" writes `json` as the program file |
//! | coordinator: edits not yet saved when the page goes: a draft as above | `localStorage["lidleaf-rescue-<draft>"]` ([`rescue`]) | when the page is hidden with unsaved edits; removed after the next save | becomes the draft, or a draft of its own when another window has saved since |
//! | coordinator: the draft last worked on | `localStorage["lidleaf-current"]`, and for each window `sessionStorage["lidleaf-current"]` | on opening a draft | nothing |
//! | coordinator: language of the screens, reviewer's name | `localStorage["lidleaf-desk"]` ([`desk_settings`]) | on each choice | nothing; the reviewer's name goes into the texts signed off |
//! | coordinator: undo and redo | in memory ([`journal`]) | on each edit | nothing; ends with the page |
//! | coordinator: a file that could not be read | in memory until the message is closed | on import | the message offers the original back |

pub(crate) mod desk_settings;
pub(crate) mod drafts;
pub(crate) mod journal;
pub(crate) mod rescue;
