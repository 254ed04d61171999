//! Undo and redo: whole programs, shared where they are the same.

use std::sync::Arc;

use guide_data::Program;

/// How many steps back are kept.
const DEEPEST: usize = 200;
/// Typing in one field is one step as long as it goes on without a longer pause.
const PAUSE_MS: i64 = 1_200;

/// The program as it was before each edit, and after each that was undone.
#[derive(Debug, Default)]
pub(crate) struct Journal {
    past: Vec<Arc<Program>>,
    future: Vec<Arc<Program>>,
    last: Option<(String, i64)>,
}

impl Journal {
    /// Notes an edit. `what` names the field; edits of one field in quick succession are one step.
    pub(crate) fn note(&mut self, before: Arc<Program>, what: &str, at: i64) {
        let goes_on = self.last.as_ref().is_some_and(|(field, then)| field == what && at - then < PAUSE_MS);
        if !(goes_on && self.future.is_empty()) {
            self.past.push(before);
            if self.past.len() > DEEPEST {
                self.past.remove(0);
            }
        }
        self.future.clear();
        self.last = Some((what.to_owned(), at));
    }

    /// The program one step back.
    pub(crate) fn undo(&mut self, now: Arc<Program>) -> Option<Arc<Program>> {
        let before = self.past.pop()?;
        self.future.push(now);
        self.last = None;
        Some(before)
    }

    /// The program one step forward again.
    pub(crate) fn redo(&mut self, now: Arc<Program>) -> Option<Arc<Program>> {
        let after = self.future.pop()?;
        self.past.push(now);
        self.last = None;
        Some(after)
    }

    /// Whether there is a step back.
    pub(crate) fn can_undo(&self) -> bool {
        !self.past.is_empty()
    }

    /// Whether there is a step forward.
    pub(crate) fn can_redo(&self) -> bool {
        !self.future.is_empty()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn named(id: &str) -> Arc<Program> {
        Arc::new(Program { id: id.to_owned(), ..Program::default() })
    }

    #[test]
    fn typing_is_one_step_and_a_pause_begins_another() {
        let mut journal = Journal::default();
        journal.note(named("a"), "name", 0);
        journal.note(named("b"), "name", 500);
        journal.note(named("c"), "name", 5_000);
        journal.note(named("d"), "phone", 5_100);
        let back: Vec<String> =
            std::iter::successors(journal.undo(named("e")), |now| journal.undo(now.clone()))
                .map(|p| p.id.clone())
                .collect();
        assert_eq!(back, ["d", "c", "a"]);
        assert!(!journal.can_undo() && journal.can_redo());
    }

    #[test]
    fn redo_returns_what_undo_took_until_the_next_edit() {
        let mut journal = Journal::default();
        journal.note(named("a"), "x", 0);
        let back = journal.undo(named("b")).unwrap();
        assert_eq!(journal.redo(back).unwrap().id, "b");
        journal.undo(named("b")).unwrap();
        journal.note(named("a"), "y", 10);
        assert!(!journal.can_redo());
    }

    #[test]
    fn only_so_many_steps_are_kept() {
        let mut journal = Journal::default();
        for n in 0..DEEPEST + 50 {
            journal.note(named(&n.to_string()), &n.to_string(), 0);
        }
        assert_eq!(journal.past.len(), DEEPEST);
        assert_eq!(journal.undo(named("now")).unwrap().id, (DEEPEST + 49).to_string());
    }
}
