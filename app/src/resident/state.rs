//! What the resident's screens share.

use std::sync::Arc;

use guide_data::{Given, Guide, Known, Position};
use leptos::prelude::*;

use crate::address::Page;
use crate::browser::{self, Settings};
use crate::words::Words;

/// The answers given about one item, in order.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Answers {
    /// The item's id.
    pub(crate) item: String,
    /// Fact and what was given.
    pub(crate) given: Vec<(String, Given)>,
}

/// The state of the resident's screens; a context of every component here.
#[derive(Clone, Copy)]
pub(crate) struct Resident {
    /// The guide that answers.
    pub(crate) guide: RwSignal<Arc<Guide>>,
    /// The words of the language shown.
    pub(crate) words: RwSignal<Arc<Words>>,
    /// Changes when [`Resident::words`] have learned to find items by more words.
    pub(crate) learned: RwSignal<u32>,
    /// The page shown.
    pub(crate) page: RwSignal<Page>,
    /// The service zone, once given.
    pub(crate) zone: RwSignal<Option<String>>,
    /// Items looked up, newest first.
    pub(crate) recent: RwSignal<Vec<String>>,
    /// The answers given so far.
    pub(crate) answers: RwSignal<Answers>,
    /// Where the phone is, once the resident tapped for it.
    pub(crate) here: RwSignal<Option<Position>>,
    /// Whether these screens are the page itself, or a panel of the coordinator's.
    pub(crate) screens: Screens,
}

/// Whose page the screens stand in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Screens {
    /// The resident's own page: addresses and history are the browser's, settings are remembered.
    Page,
    /// A panel on the coordinator's page: nothing leaves it.
    Panel,
}

/// How many looked-up items are remembered.
const RECENT: usize = 6;

impl Resident {
    /// The state over a guide and its words.
    pub(crate) fn new(guide: Arc<Guide>, words: Arc<Words>, settings: Settings, screens: Screens) -> Self {
        let zone = settings.zone.filter(|z| guide.zones.iter().any(|own| own.id == *z));
        Self {
            guide: RwSignal::new(guide),
            words: RwSignal::new(words),
            learned: RwSignal::new(0),
            page: RwSignal::new(Page::Home),
            zone: RwSignal::new(zone),
            recent: RwSignal::new(settings.recent),
            answers: RwSignal::new(Answers::default()),
            here: RwSignal::new(None),
            screens,
        }
    }

    /// The kind of home, once given.
    pub(crate) fn dwelling(self) -> Option<String> {
        self.answers.with_untracked(|a| {
            a.given.iter().find_map(|(fact, given)| match given {
                Given::Value(value) if fact == "dwelling" => Some(value.clone()),
                _ => None,
            })
        })
    }

    /// Goes to a page.
    pub(crate) fn go(self, page: Page) {
        match self.screens {
            Screens::Page => {
                browser::go(&page.fragment(self.words.with_untracked(|w| w.language().to_owned()).as_str()));
            }
            Screens::Panel => self.page.set(page),
        }
    }

    /// One step back: the last answer, else the page before.
    pub(crate) fn back(self) {
        match (self.screens, self.page.get_untracked()) {
            (Screens::Page, _) => browser::back(),
            (Screens::Panel, Page::Item { id, step }) if step > 0 => {
                self.page.set(Page::Item { id, step: step - 1 });
            }
            (Screens::Panel, _) => self.page.set(Page::Home),
        }
    }

    /// Moves the focus to the heading of a new screen; in the coordinator's panel only when the focus
    /// was there before, so that an edit elsewhere is not interrupted.
    pub(crate) fn focus_heading(self) {
        if self.screens == Screens::Page || browser::focus_is_within("ask") {
            browser::focus("heading");
        }
    }

    /// Remembers that an item was looked up.
    pub(crate) fn remember_item(self, id: &str) {
        if self.recent.with_untracked(|r| r.first().is_some_and(|first| first == id)) {
            return;
        }
        self.recent.update(|recent| {
            recent.retain(|r| r != id);
            recent.insert(0, id.to_owned());
            recent.truncate(RECENT);
        });
        self.remember();
    }

    /// Takes a zone, or forgets it.
    pub(crate) fn set_zone(self, zone: Option<String>) {
        self.zone.set(zone);
        self.remember();
    }

    /// Keeps zone and recent items for the next visit.
    pub(crate) fn remember(self) {
        if self.screens == Screens::Page {
            let mut settings = browser::load_settings();
            settings.zone = self.zone.get_untracked();
            settings.recent = self.recent.get_untracked();
            browser::save_settings(&settings);
        }
    }

    /// What is known about an item after so many answers: the day, the zone, the answers.
    pub(crate) fn known(self, item: &str, step: usize) -> Known {
        let mut known = Known::default();
        let now = browser::now();
        let first = self.guide.with_untracked(|g| g.first_day());
        let day = if now.is_plausible() { now.day } else { first };
        known.give("day", Given::Day(day));
        if let Some(zone) = self.zone.get_untracked() {
            known.give("zone", Given::value(&zone));
        }
        self.answers.with_untracked(|answers| {
            if answers.item == item {
                for (fact, given) in answers.given.iter().take(step) {
                    known.give(fact, given.clone());
                }
            }
        });
        known
    }

    /// Takes an answer and goes on. A zone is kept for all items, and can be changed at the foot
    /// of the page; so it is no step of this item's.
    pub(crate) fn give(self, item: &str, step: usize, fact: &str, given: Given) {
        if fact == "zone"
            && let Given::Value(zone) = &given
        {
            self.set_zone(Some(zone.clone()));
            return;
        }
        self.answers.update(|answers| {
            if answers.item != item {
                *answers = Answers { item: item.to_owned(), given: Vec::new() };
            }
            answers.given.truncate(step);
            answers.given.push((fact.to_owned(), given));
        });
        self.go(Page::Item { id: item.to_owned(), step: step + 1 });
    }
}
