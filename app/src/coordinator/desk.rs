//! The coordinator's one store: the program, what checking it found, and where the screen is.

use std::collections::BTreeMap;
use std::sync::Arc;
use std::time::Duration;

use guide_data::{Catalog, Change, Checked, Program, Trial, check, compare, find, program_texts};
use leptos::prelude::*;

use crate::browser;
use crate::resident::{Resident, Screens};
use crate::store::desk_settings::{self, DeskSettings};
use crate::store::drafts::StoreProblem;
use crate::store::journal::Journal;
use crate::words::Words;

/// The screens, in the order of the navigation.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Tab {
    /// Open, new, import, export.
    Files,
    /// The program's own fields.
    Program,
    /// Streams and containers.
    Streams,
    /// Service zones.
    Zones,
    /// Channels.
    Channels,
    /// Sites.
    Sites,
    /// Rules.
    Rules,
    /// Items and their answers.
    Items,
    /// Texts and translations.
    Texts,
    /// Sheets.
    Print,
}

impl Tab {
    pub(crate) const ALL: [Self; 10] = [
        Self::Files,
        Self::Program,
        Self::Streams,
        Self::Zones,
        Self::Channels,
        Self::Sites,
        Self::Rules,
        Self::Items,
        Self::Texts,
        Self::Print,
    ];

    /// The word in addresses, element ids and message keys (`tab-<code>`).
    pub(crate) fn code(self) -> &'static str {
        match self {
            Self::Files => "files",
            Self::Program => "program",
            Self::Streams => "streams",
            Self::Zones => "zones",
            Self::Channels => "channels",
            Self::Sites => "sites",
            Self::Rules => "rules",
            Self::Items => "items",
            Self::Texts => "texts",
            Self::Print => "print",
        }
    }

    /// The screen of a code.
    pub(crate) fn of(code: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|t| t.code() == code)
    }

    /// The screen on which a finding's place is edited.
    pub(crate) fn of_place(kind: &str) -> Self {
        match kind {
            "rule" => Self::Rules,
            "stream" | "container" => Self::Streams,
            "zone" => Self::Zones,
            "channel" => Self::Channels,
            "site" => Self::Sites,
            "item" => Self::Items,
            "text" | "step" => Self::Texts,
            "printed" => Self::Print,
            _ => Self::Program,
        }
    }
}

/// Whether the work is safe.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Saving {
    /// Nothing is open.
    Nothing,
    /// Everything is kept.
    Saved,
    /// Edits wait to be kept.
    Waiting,
    /// They cannot be kept.
    Failed(StoreProblem),
}

/// The draft this window works on.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(crate) struct Draft {
    /// Its id; empty when nothing is open.
    pub(crate) id: String,
    /// The name it is listed under.
    pub(crate) name: String,
    /// The revision this window last saw.
    pub(crate) revision: u64,
}

/// The store; a context of every component here.
#[derive(Clone, Copy)]
pub(crate) struct Desk {
    /// The program as it stands.
    pub(crate) program: RwSignal<Arc<Program>>,
    /// What "what changed" compares with.
    pub(crate) baseline: RwSignal<Arc<Program>>,
    /// The standard catalog.
    pub(crate) catalog: StoredValue<Arc<Catalog>>,
    /// The guide the program compiles to, and its findings.
    pub(crate) checked: RwSignal<Arc<Checked>>,
    /// The program that was checked.
    checked_program: StoredValue<Arc<Program>>,
    /// What changed since the baseline.
    pub(crate) changes: RwSignal<Arc<Vec<Change>>>,
    /// The screens' words; the catalog's names and the draft's texts among them.
    pub(crate) words: RwSignal<Arc<Words>>,
    /// The screen shown.
    pub(crate) tab: RwSignal<Tab>,
    /// What is chosen on it, by id.
    pub(crate) chosen: RwSignal<String>,
    /// Undo and redo.
    journal: StoredValue<Journal>,
    /// There is something to undo, to redo.
    pub(crate) steps: RwSignal<(bool, bool)>,
    /// Whether the work is safe.
    pub(crate) saving: RwSignal<Saving>,
    /// The draft.
    pub(crate) draft: RwSignal<Draft>,
    /// A message for the person, by text; shown until closed.
    pub(crate) notice: RwSignal<Option<String>>,
    /// What the screens remember.
    pub(crate) settings: RwSignal<DeskSettings>,
    /// The resident's screens over the draft.
    pub(crate) resident: StoredValue<Resident, LocalStorage>,
    check_timer: StoredValue<Option<TimeoutHandle>>,
    /// Counts the edits of this window, for autosave.
    pub(crate) edits: RwSignal<u64>,
}

/// Checking waits this long after an edit, so that typing is not held up.
const CHECK_AFTER: Duration = Duration::from_millis(200);
/// Ways to mend what was found are tried once nobody has typed for this long more.
const TRY_AFTER: Duration = Duration::from_millis(400);
/// Between two of them the screen may do something else.
const TRY_NEXT: Duration = Duration::from_millis(10);

impl Desk {
    /// An empty desk.
    pub(crate) fn new(catalog: Arc<Catalog>, words: Arc<Words>) -> Self {
        let program = Arc::new(Program::default());
        let checked = Arc::new(check(&program, &catalog));
        let guide = Arc::new(checked.guide.clone());
        let settings = browser::Settings::default();
        Self {
            program: RwSignal::new(program.clone()),
            baseline: RwSignal::new(program.clone()),
            catalog: StoredValue::new(catalog),
            checked: RwSignal::new(checked),
            checked_program: StoredValue::new(program),
            changes: RwSignal::new(Arc::default()),
            words: RwSignal::new(words.clone()),
            tab: RwSignal::new(Tab::Files),
            chosen: RwSignal::new(String::new()),
            journal: StoredValue::new(Journal::default()),
            steps: RwSignal::new((false, false)),
            saving: RwSignal::new(Saving::Nothing),
            draft: RwSignal::new(Draft::default()),
            notice: RwSignal::new(None),
            settings: RwSignal::new(desk_settings::load()),
            resident: StoredValue::new_local(Resident::new(guide, words, settings, Screens::Panel)),
            check_timer: StoredValue::new(None),
            edits: RwSignal::new(0),
        }
    }

    /// Whether a program is open.
    pub(crate) fn is_open(self) -> bool {
        self.draft.with(|d| !d.id.is_empty())
    }

    /// Edits the program. `what` names the field, so that typing in it is one step of undo.
    pub(crate) fn edit(self, what: &str, change: impl FnOnce(&mut Program)) {
        let before = self.program.get_untracked();
        let mut after = (*before).clone();
        change(&mut after);
        if after == *before {
            return;
        }
        self.journal.update_value(|j| j.note(before, what, browser::now().stamp));
        self.show(Arc::new(after));
    }

    /// One step back.
    pub(crate) fn undo(self) {
        let now = self.program.get_untracked();
        if let Some(before) = self.journal.try_update_value(|j| j.undo(now)).flatten() {
            self.show(before);
        }
    }

    /// One step forward again.
    pub(crate) fn redo(self) {
        let now = self.program.get_untracked();
        if let Some(after) = self.journal.try_update_value(|j| j.redo(now)).flatten() {
            self.show(after);
        }
    }

    /// Shows a program that this window made.
    fn show(self, program: Arc<Program>) {
        self.program.set(program);
        self.note_steps();
        self.edits.update(|n| *n += 1);
        self.check_soon();
    }

    fn note_steps(self) {
        self.steps.set(self.journal.with_value(|j| (j.can_undo(), j.can_redo())));
    }

    /// Opens another draft: its program becomes the baseline and undo begins anew.
    pub(crate) fn open(self, draft: Draft, program: Program) {
        let program = Arc::new(program);
        self.draft.set(draft);
        self.journal.set_value(Journal::default());
        self.baseline.set(program.clone());
        self.program.set(program);
        self.note_steps();
        self.chosen.set(String::new());
        self.check_now();
    }

    /// Takes what another window saved: a step of undo like an edit of one's own.
    pub(crate) fn take(self, revision: u64, program: Program) {
        let before = self.program.get_untracked();
        if program != *before {
            self.journal.update_value(|j| j.note(before, "other window", browser::now().stamp));
            self.program.set(Arc::new(program));
            self.note_steps();
            self.check_soon();
        }
        self.draft.update(|d| d.revision = revision);
    }

    fn check_soon(self) {
        if let Some(timer) = self.check_timer.try_update_value(Option::take).flatten() {
            timer.clear();
        }
        let timer = set_timeout_with_handle(move || self.check_now(), CHECK_AFTER).ok();
        self.check_timer.set_value(timer);
    }

    /// Tries ways to mend what was found, a few at a time, until the next edit: it takes the timer.
    fn try_fixes(self, mut checked: Checked, mut trial: Trial, after: Duration) {
        let timer = set_timeout_with_handle(
            move || {
                let program = self.program.get_untracked();
                if trial.step(&program, &self.catalog.get_value(), &mut checked.findings) {
                    self.try_fixes(checked, trial, TRY_NEXT);
                } else {
                    self.checked.set(Arc::new(checked));
                }
            },
            after,
        );
        self.check_timer.set_value(timer.ok());
    }

    /// Compiles, finds, compares, and shows the resident's panel the new guide.
    pub(crate) fn check_now(self) {
        let program = self.program.get_untracked();
        let catalog = self.catalog.get_value();
        let mut checked = find(&program, &catalog);
        checked.guide.fill_hours(&program);
        let trial = Trial::new(&program, &catalog, &checked.findings);
        let baseline = self.baseline.get_untracked();
        let changes = if Arc::ptr_eq(&baseline, &program) || *baseline == *program {
            Vec::new()
        } else {
            compare(&baseline, &program, &catalog)
        };
        let guide = Arc::new(checked.guide.clone());
        let words = self.words.get_untracked();
        let language = words.language().to_owned();
        let names = own_names(&program, &language);
        let words = Arc::new(words.over(program_texts(&program, &language), names, &guide));
        let untried = Trial::is_needed(&checked.findings).then(|| checked.clone());
        self.checked.set(Arc::new(checked));
        self.checked_program.set_value(program.clone());
        if let Some(timer) = self.check_timer.try_update_value(Option::take).flatten() {
            timer.clear();
        }
        if let Some(checked) = untried {
            self.try_fixes(checked, trial, TRY_AFTER);
        }
        self.changes.set(Arc::new(changes));
        let resident = self.resident.get_value();
        resident.show_guide(guide);
        // Everything on the screens hangs on the words: they are told only of words that changed.
        let shown = resident.words();
        if !words.same(&shown) || self.words.with_untracked(|w| !w.same(&words)) {
            self.words.set(words.clone());
            resident.show_words(words);
        }
    }

    /// What the program as it stands compiles to; an edit that waits to be checked is checked now.
    pub(crate) fn checked_now(self) -> Arc<Checked> {
        let program = self.program.get_untracked();
        if !self.checked_program.with_value(|checked| Arc::ptr_eq(checked, &program)) {
            self.check_now();
        }
        self.checked.get_untracked()
    }

    /// Makes the program as it stands what later edits are compared with.
    pub(crate) fn mark(self) {
        self.baseline.set(self.program.get_untracked());
        self.changes.set(Arc::default());
    }

    /// Goes to a screen, and to something on it.
    pub(crate) fn go(self, tab: Tab, id: &str) {
        browser::go(&if id.is_empty() {
            format!("/{}", tab.code())
        } else {
            format!("/{}/{id}", tab.code())
        });
    }
}

/// Names of the program's own items in a language: name and other names, as the file has them.
pub(crate) fn own_names(program: &Program, language: &str) -> BTreeMap<String, Vec<String>> {
    program
        .item_names
        .iter()
        .filter_map(|(id, text)| {
            let names = text.or_source(language, &program.source_language)?;
            Some((id.clone(), names.split('|').map(|n| n.trim().to_owned()).collect()))
        })
        .collect()
}
