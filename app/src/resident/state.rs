//! What the resident's screens show, and what happens when something on them is touched.
//!
//! The screens know nothing of the page around them: the resident's own page ([`super::app`]) and the
//! coordinator's panel each give them a place to be drawn into. Everything that can be touched says in
//! `data-do` what it does; one listener on the place hears all of it.

use std::cell::{Cell, OnceCell, RefCell};
use std::rc::Rc;
use std::sync::Arc;

use guide_data::{Given, Guide, Known, Position, place_named};
use locales::t;
use wasm_bindgen::JsCast as _;
use web_sys::{Element, HtmlInputElement};

use super::home;
use super::html::Html;
use super::item::{Drawn, page};
use super::site::{all_items, places};
use crate::address::{Address, Page};
use crate::browser::{self, Listener, Settings};
use crate::words::{LONGEST_QUERY, Words};

/// The answers given about one item, in order.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Answers {
    /// The item's id.
    pub(crate) item: String,
    /// Fact and what was given.
    pub(crate) given: Vec<(String, Given)>,
}

/// Whose page the screens stand in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Screens {
    /// The resident's own page: addresses and history are the browser's, settings are remembered.
    Page,
    /// A panel on the coordinator's page: nothing leaves it.
    Panel,
}

/// A question on the screen, and what each of its buttons gives.
#[derive(Debug)]
pub(crate) struct Asked {
    /// The item's id.
    pub(crate) item: String,
    /// How many answers were given before.
    pub(crate) step: usize,
    /// The fact asked for.
    pub(crate) fact: String,
    /// What the buttons give, in order.
    pub(crate) options: Vec<Given>,
}

/// Everything the screens show follows from this.
pub(crate) struct State {
    /// The guide that answers.
    pub(crate) guide: Arc<Guide>,
    /// The words of the language shown.
    pub(crate) words: Arc<Words>,
    /// The page shown.
    pub(crate) page: Page,
    /// The service zone, once given.
    pub(crate) zone: Option<String>,
    /// Items looked up, newest first.
    pub(crate) recent: Vec<String>,
    /// The answers given so far.
    pub(crate) answers: Answers,
    /// Where the phone is, once the resident tapped for it, or the place they typed.
    pub(crate) here: Option<Position>,
    /// What was typed for a place.
    pub(crate) near: String,
    /// What is typed into the search.
    pub(crate) query: String,
    /// What it finds, as positions in the guide.
    pub(crate) found: Vec<usize>,
    /// Whose page this is.
    pub(crate) screens: Screens,
}

/// How many looked-up items are remembered.
const RECENT: usize = 6;

impl State {
    /// Something is typed into the search.
    pub(crate) fn is_searching(&self) -> bool {
        !self.query.trim().is_empty()
    }

    /// The kind of home, once given.
    pub(crate) fn dwelling(&self) -> Option<&str> {
        self.answers.given.iter().find_map(|(fact, given)| match given {
            Given::Value(value) if fact == "dwelling" => Some(value.as_str()),
            _ => None,
        })
    }

    /// What is known about an item after so many answers: the day, the zone, the answers.
    pub(crate) fn known(&self, item: &str, step: usize) -> Known {
        let mut known = Known::default();
        let now = browser::now();
        let day = if now.is_plausible() { now.day } else { self.guide.first_day() };
        known.give("day", Given::Day(day));
        if let Some(zone) = &self.zone {
            known.give("zone", Given::value(zone));
        }
        if self.answers.item == item {
            for (fact, given) in self.answers.given.iter().take(step) {
                known.give(fact, given.clone());
            }
        }
        known
    }

    fn search(&mut self) {
        self.found = if self.is_searching() { self.words.find(&self.query, &self.guide) } else { Vec::new() };
    }

    /// Keeps zone and recent items for the next visit.
    fn remember(&self) {
        if self.screens == Screens::Page {
            let mut settings = browser::load_settings();
            settings.zone.clone_from(&self.zone);
            settings.recent.clone_from(&self.recent);
            browser::save_settings(&settings);
        }
    }
}

/// The resident's screens.
#[derive(Clone)]
pub(crate) struct Resident(Rc<Shared>);

struct Shared {
    state: RefCell<State>,
    /// Where they are drawn.
    place: RefCell<Option<Element>>,
    asked: RefCell<Option<Asked>>,
    /// The start is drawn, or stands below a message.
    is_home: Cell<bool>,
    listeners: OnceCell<[Listener; 3]>,
}

/// Where the focus goes when a page is drawn.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Focus {
    /// To what the page begins with: it is a new one.
    Move,
    /// Nowhere: something else on it was touched.
    Keep,
}

impl Resident {
    /// The screens over a guide and its words.
    pub(crate) fn new(guide: Arc<Guide>, words: Arc<Words>, settings: Settings, screens: Screens) -> Self {
        let zone = settings.zone.filter(|z| guide.zones.iter().any(|own| own.id == *z));
        let state = State {
            guide,
            words,
            page: Page::Home,
            zone,
            recent: settings.recent,
            answers: Answers::default(),
            here: None,
            near: String::new(),
            query: String::new(),
            found: Vec::new(),
            screens,
        };
        Self(Rc::new(Shared {
            state: RefCell::new(state),
            place: RefCell::new(None),
            asked: RefCell::new(None),
            is_home: Cell::new(false),
            listeners: OnceCell::new(),
        }))
    }

    /// Draws them into an element from now on.
    pub(crate) fn mount(&self, place: Element) {
        let listen = |run: fn(&Self, &web_sys::Event)| {
            let own = self.clone();
            Listener::new(move |event| run(&own, &event))
        };
        let all = self
            .0
            .listeners
            .get_or_init(|| [listen(Self::clicked), listen(Self::typed), listen(Self::submitted)]);
        for (listener, event) in all.iter().zip(["click", "input", "submit"]) {
            listener.hear(&place, event);
        }
        self.0.place.replace(Some(place));
        self.draw(Focus::Keep);
    }

    /// Reads the state.
    pub(crate) fn with<T>(&self, read: impl FnOnce(&State) -> T) -> T {
        read(&self.0.state.borrow())
    }

    fn change(&self, change: impl FnOnce(&mut State)) {
        change(&mut self.0.state.borrow_mut());
    }

    /// The words shown.
    pub(crate) fn words(&self) -> Arc<Words> {
        self.with(|s| s.words.clone())
    }

    /// Answers by another guide.
    pub(crate) fn show_guide(&self, guide: Arc<Guide>) {
        self.change(|s| s.guide = guide);
        if self.with(|s| matches!(s.page, Page::Item { .. })) {
            self.draw(Focus::Keep);
        }
    }

    /// Speaks with other words.
    pub(crate) fn show_words(&self, words: Arc<Words>) {
        self.change(|s| {
            s.words = words;
            s.search();
        });
        self.draw(Focus::Keep);
    }

    /// The words have learned to find items by more words.
    pub(crate) fn show_learned(&self) {
        if self.with(State::is_searching) {
            self.change(State::search);
            self.draw_found();
        }
    }

    /// Shows a page.
    pub(crate) fn open(&self, page: Page) {
        self.change(|s| {
            s.page = page;
            s.query.clear();
            s.search();
        });
        self.draw(Focus::Move);
    }

    /// Goes to a page: on the resident's own by way of its address.
    pub(crate) fn go(&self, page: Page) {
        let address = self.with(|s| (s.screens == Screens::Page).then(|| page.fragment(s.words.language())));
        match address {
            Some(fragment) => browser::go(&fragment),
            None => self.open(page),
        }
    }

    /// One step back: the last answer, else the page before.
    fn back(&self) {
        let (screens, page) = self.with(|s| (s.screens, s.page.clone()));
        match (screens, page) {
            (Screens::Page, _) => browser::back(),
            (Screens::Panel, Page::Item { id, step }) if step > 0 => {
                self.open(Page::Item { id, step: step - 1 });
            }
            (Screens::Panel, _) => self.open(Page::Home),
        }
    }

    /// Takes a zone, or forgets it.
    pub(crate) fn set_zone(&self, zone: Option<String>) {
        self.take_zone(zone, Focus::Keep);
    }

    fn take_zone(&self, zone: Option<String>, focus: Focus) {
        self.change(|s| {
            s.zone = zone;
            s.remember();
        });
        if self.with(|s| matches!(s.page, Page::Item { .. })) {
            self.draw(focus);
        }
    }

    /// Takes an answer and goes on. A zone is kept for all items, and can be changed at the foot of the
    /// page; so it is no step of this item's.
    fn give(&self, given: impl FnOnce(&Asked) -> Option<Given>) {
        let Some(asked) = self.0.asked.take() else { return };
        let Some(given) = given(&asked) else { return };
        let Asked { item, step, fact, .. } = asked;
        if fact == "zone"
            && let Given::Value(zone) = &given
        {
            self.take_zone(Some(zone.clone()), Focus::Move);
            self.tell_zone();
            return;
        }
        self.change(|s| {
            if s.answers.item != item {
                s.answers = Answers { item: item.clone(), given: Vec::new() };
            }
            s.answers.given.truncate(step);
            s.answers.given.push((fact, given));
        });
        self.go(Page::Item { id: item, step: step + 1 });
    }

    /// The list at the foot of the resident's page shows the zone that was given.
    pub(crate) fn tell_zone(&self) {
        let zone = self.with(|s| s.zone.clone()).unwrap_or_default();
        if let Some(list) =
            browser::element("zone").and_then(|e| e.dyn_into::<web_sys::HtmlSelectElement>().ok())
        {
            list.set_value(&zone);
        }
    }

    /// Draws the page.
    fn draw(&self, focus: Focus) {
        let Some(place) = self.0.place.borrow().clone() else { return };
        // In the coordinator's panel the focus is moved only when it was there before, so that an edit
        // elsewhere is not interrupted.
        let moves = focus == Focus::Move
            && (self.with(|s| s.screens == Screens::Page) || browser::focus_is_within(&place));
        let mut out = Html::default();
        let Drawn { asked, answered, said, is_home } = self.with(|s| page(&mut out, s));
        browser::draw(&place, &out);
        // Said in a place that was there before: what arrives together with its words is not read aloud.
        if let Some(line) = browser::element("said") {
            line.set_text_content(Some(&said));
        }
        self.0.asked.replace(asked);
        if let Some(id) = answered {
            self.remember_item(&id);
        }
        self.0.is_home.set(is_home);
        if moves {
            self.focus();
        }
    }

    /// Moves the focus to what the page begins with.
    pub(crate) fn focus(&self) {
        let search = self.0.is_home.get() && self.with(|s| s.screens == Screens::Page);
        browser::focus_now(if search { "search" } else { "heading" });
    }

    /// Remembers that an item was looked up.
    fn remember_item(&self, id: &str) {
        if self.with(|s| s.recent.first().is_some_and(|first| first == id)) {
            return;
        }
        self.change(|s| {
            s.recent.retain(|r| r != id);
            s.recent.insert(0, id.to_owned());
            s.recent.truncate(RECENT);
            s.remember();
        });
    }

    /// Draws what was found, below a search that stays as it is.
    fn draw_found(&self) {
        let Some(place) = self.0.place.borrow().clone() else { return };
        let mut out = Html::default();
        let count = self.with(|s| {
            home::found(&mut out, s);
            home::count(s)
        });
        if let Ok(Some(found)) = place.query_selector("#found") {
            browser::draw(&found, &out);
        }
        if let Ok(Some(line)) = place.query_selector("#results-count") {
            line.set_text_content(Some(&count));
        }
    }

    /// Draws the places of every channel on the screen anew: they are sorted by where the phone is.
    fn draw_places(&self) {
        let Some(place) = self.0.place.borrow().clone() else { return };
        let Ok(all) = place.query_selector_all(".places") else { return };
        for list in (0..all.length()).filter_map(|at| all.get(at)?.dyn_into::<Element>().ok()) {
            let channel = list.parent_element().and_then(|e| e.get_attribute("data-channel"));
            if let (Some(channel), Some(item)) = (channel, list.get_attribute("data-item")) {
                let mut out = Html::default();
                self.with(|s| places(&mut out, s, &channel, &item));
                browser::draw(&list, &out);
            }
        }
    }

    fn locate(&self) {
        let own = self.clone();
        browser::position(move |found| {
            if found.is_some() {
                own.change(|s| s.here = found);
                own.draw_places();
            } else {
                own.say_near(&own.with(|s| t!(s.words.messages, "site-no-position")));
            }
        });
    }

    /// Sorts places by how far they are from one that was typed, and says which one that is taken for.
    fn look_near(&self) {
        let typed = self.with(|s| s.near.trim().chars().take(LONGEST_QUERY).collect::<String>());
        if typed.is_empty() {
            return;
        }
        let found =
            self.with(|s| place_named(&s.guide, &typed, |kind, id| s.words.named(kind, id), browser::fold));
        let said = self.with(|s| match &found {
            Some((name, _)) => t!(s.words.messages, "near-found", place = name),
            None => t!(s.words.messages, "near-unknown", place = typed.as_str()),
        });
        if let Some((_, at)) = found {
            self.change(|s| s.here = Some(at));
            self.draw_places();
        }
        self.say_near(&said);
    }

    /// Says a line below where a place can be typed.
    fn say_near(&self, line: &str) {
        let Some(place) = self.0.place.borrow().clone() else { return };
        if let Ok(Some(said)) = place.query_selector("#near-said") {
            said.set_text_content(Some(line));
        }
    }

    /// Unfolds all that a site takes.
    fn fill_takes(&self, unfolded: &Element) {
        let (site, list) =
            (unfolded.get_attribute("data-site"), unfolded.query_selector("ul").ok().flatten());
        if let (Some(site), Some(list)) = (site, list.filter(|list| list.child_element_count() == 0)) {
            let mut out = Html::default();
            self.with(|s| all_items(&mut out, s, &site));
            browser::draw(&list, &out);
        }
    }

    fn clicked(&self, event: &web_sys::Event) {
        let Some((what, element)) = browser::what_to_do(event) else { return };
        match what.as_str() {
            "back" => self.back(),
            "give" => self.give(|asked| {
                let at: usize = element.get_attribute("data-option")?.parse().ok()?;
                asked.options.get(at).cloned()
            }),
            "cannot-tell" => self.give(|_| Some(Given::CannotTell)),
            "locate" => self.locate(),
            "takes" => self.fill_takes(&element),
            "page" => {
                event.prevent_default();
                let page = element.get_attribute("data-page").unwrap_or_default();
                self.open(Address::read(&page).page);
            }
            _ => {}
        }
    }

    fn typed(&self, event: &web_sys::Event) {
        let Some(field) = event.target().and_then(|t| t.dyn_into::<HtmlInputElement>().ok()) else { return };
        let value = field.value();
        match field.id().as_str() {
            "search" => {
                self.change(|s| {
                    s.query = value;
                    s.search();
                });
                self.draw_found();
            }
            "near" => self.change(|s| s.near = value),
            _ => {}
        }
    }

    fn submitted(&self, event: &web_sys::Event) {
        event.prevent_default();
        let form = event.target().and_then(|t| t.dyn_into::<Element>().ok());
        if form.is_some_and(|form| form.class_name() == "near") {
            return self.look_near();
        }
        let first = self.with(|s| Some(s.guide.items.get(*s.found.first()?)?.id.clone()));
        if let Some(id) = first {
            self.go(Page::Item { id, step: 0 });
        }
    }
}
