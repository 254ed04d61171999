//! Starting the resident's page: language, guide, words; then the frame around every screen.

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use std::rc::Rc;
use std::sync::Arc;

use guide_data::{Guide, PackedWords};
use locales::{Lang, endonym, negotiate, t};
use wasm_bindgen::JsCast as _;
use web_sys::{Element, HtmlSelectElement};

use super::answer::ask;
use super::html::{Html, put};
use super::link::open_link;
use super::offline::{Offline, switch as switch_guide};
use super::state::{Resident, Screens, State};
use crate::address::{Address, Page};
use crate::browser::{self, FetchProblem, Settings};
use crate::words::Words;

/// Draws the page once guide and words are here.
pub(crate) fn start() {
    wasm_bindgen_futures::spawn_local(async {
        match load().await {
            Ok(loaded) => Frame::start(loaded),
            Err(problem) => start_problem(problem),
        }
    });
}

/// Shows the part of the page that was written for this; no words have been loaded yet.
pub(crate) fn start_problem(problem: FetchProblem) {
    for id in ["start-problem", problem.place()] {
        if let Some(element) = browser::element(id) {
            let _ = element.remove_attribute("hidden");
        }
    }
}

struct Loaded {
    guide: Arc<Guide>,
    words: Arc<Words>,
    settings: Settings,
    not_here: Option<NotHere>,
}

/// What was asked for and is not here, as the page says it.
enum NotHere {
    /// A language the guide is not in.
    Language(String),
    /// A language whose words did not arrive as they should.
    Words(String),
    /// A service zone that an address names.
    Zone(String),
}

impl NotHere {
    /// A language that could not be shown, by what went wrong.
    fn of(problem: FetchProblem, language: String) -> Self {
        if problem == FetchProblem::Missing { Self::Language(language) } else { Self::Words(language) }
    }
}

/// Fetches the guide and the best language: the address's, the one chosen before, the browser's,
/// the guide's own.
async fn load() -> Result<Loaded, FetchProblem> {
    let settings = browser::load_settings();
    let asked = Address::read(&browser::fragment()).language;
    let guide = browser::fetch_bytes("data/guide.txt").await?;
    let guide = Guide::from_bytes(&guide).map_err(|_| FetchProblem::Broken)?;
    let offered: Vec<Lang> = guide.languages.iter().filter_map(|l| l.parse().ok()).collect();
    let known = |tag: &str| negotiate(&[tag], &offered).map(|l| l.tag());
    let from_browser = || {
        let wanted = browser::navigator_languages();
        let wanted: Vec<&str> = wanted.iter().map(String::as_str).collect();
        negotiate(&wanted, &offered).map(Lang::tag)
    };
    let from_address = asked.as_deref().and_then(known);
    let asked = asked.filter(|_| from_address.is_none());
    let language = from_address
        .or_else(|| settings.language.as_deref().and_then(known))
        .or_else(from_browser)
        .unwrap_or_else(|| guide.source_language.clone());
    let (words, not_here) = match words(&language, &guide).await {
        Ok(words) => (words, asked.map(NotHere::Language)),
        Err(problem) => {
            let not_here = NotHere::of(problem, language);
            (words(&guide.source_language, &guide).await?, Some(not_here))
        }
    };
    Ok(Loaded { guide: Arc::new(guide), words: Arc::new(words), settings, not_here })
}

/// The words of a language.
async fn words(language: &str, guide: &Guide) -> Result<Words, FetchProblem> {
    let bytes = browser::fetch_bytes(&format!("data/lang/{language}.txt")).await?;
    let packed = PackedWords::from_bytes(&bytes, guide).map_err(|_| FetchProblem::Broken)?;
    Words::read(packed, guide).ok_or(FetchProblem::Broken)
}

/// All names to search by. Without them every item is still found by the name it is shown with.
async fn search_words(language: &str, guide: &Guide) -> Option<BTreeMap<String, Vec<String>>> {
    let bytes = browser::fetch_bytes(&format!("data/words/{language}.txt")).await.ok()?;
    guide.search_words(&bytes).ok()
}

/// What stands around the screens.
struct Frame {
    resident: Resident,
    place: Element,
    offline: Cell<Offline>,
    /// What was asked for and is not here.
    missing: RefCell<Option<NotHere>>,
}

impl Frame {
    fn start(loaded: Loaded) {
        let Some(place) = browser::element("app") else { return };
        let Loaded { guide, words, settings, not_here } = loaded;
        let frame = Rc::new(Self {
            resident: Resident::new(guide, words, settings, Screens::Page),
            place: place.clone(),
            offline: Cell::default(),
            missing: RefCell::new(not_here),
        });
        let mut out = Html::default();
        out.markup(
            "<a class=\"skip\" href=\"#main\" data-do=\"skip\"></a><header class=\"lid\"></header>\
             <div class=\"banner\"></div><main id=\"main\"><div class=\"missing\"></div><div class=\"page\"></div></main>\
             <p id=\"said\" class=\"unseen\" role=\"status\"></p><footer><p id=\"offline-status\" class=\"offline\" role=\"status\"></p><div class=\"foot\"></div></footer>",
        );
        browser::draw(&place, &out);
        for (event, run) in
            [("click", Self::clicked as fn(&Rc<Self>, &web_sys::Event)), ("change", Self::changed)]
        {
            let own = frame.clone();
            browser::listen(&place, event, move |event| run(&own, &event));
        }
        let told = frame.clone();
        Offline::start("guide", move |state| told.show_offline(state));
        frame.draw();
        if let Some(page) = frame.part(".page") {
            frame.read_address(true);
            frame.resident.mount(page);
            frame.resident.focus();
        }
        let own = frame.clone();
        browser::window_event("hashchange", move |_| own.read_address(false));
        frame.learn();
    }

    fn part(&self, css: &str) -> Option<Element> {
        self.place.query_selector(css).ok().flatten()
    }

    fn fill(&self, css: &str, fill: impl FnOnce(&mut Html, &State)) {
        if let Some(part) = self.part(css) {
            let mut out = Html::default();
            self.resident.with(|s| fill(&mut out, s));
            browser::draw(&part, &out);
        }
    }

    /// Draws everything but the page's screen, which draws itself.
    fn draw(&self) {
        self.resident.with(|s| {
            let words = &s.words;
            browser::set_language(words.language(), words.direction());
            let title = words.text("program.name").unwrap_or_default();
            browser::set_title(&t!(words.messages, "page-title", program = title));
        });
        self.fill(".skip", |out, s| out.text(&t!(s.words.messages, "skip")));
        self.fill(".lid", lid);
        self.fill(".foot", foot);
        self.draw_missing();
        self.show_offline(self.offline.get());
    }

    fn draw_missing(&self) {
        let missing = self.missing.borrow();
        self.fill(".missing", |out, s| {
            let m = &s.words.messages;
            let (id, line) = match missing.as_ref() {
                None => return,
                Some(NotHere::Language(tag)) => {
                    ("unknown-language", t!(m, "unknown-language", language = tag.as_str()))
                }
                Some(NotHere::Words(tag)) => {
                    ("language-broken", t!(m, "language-broken", language = tag.as_str()))
                }
                Some(NotHere::Zone(id)) => ("unknown-zone", t!(m, "unknown-zone", id = id.as_str())),
            };
            put!(out, "<div class=\"notice\" role=\"alert\" id=\"" (id) "\"><p>" (line) "</p></div>");
        });
    }

    fn show_offline(&self, state: Offline) {
        self.offline.set(state);
        self.fill(".banner", |out, s| state.banner(out, &s.words));
        self.fill(".offline", |out, s| out.text(&state.line(&s.words)));
        if let Some(line) = self.part(".offline") {
            line.set_class_name(if state.is_whole() { "offline whole" } else { "offline" });
        }
    }

    /// Keeps the page in step with the browser's address, its back and forward.
    fn read_address(self: &Rc<Self>, first: bool) {
        let address = Address::read(&browser::fragment());
        let current = self.resident.with(|s| s.words.language().to_owned());
        if let Some(language) = address.language.filter(|l| *l != current && !first) {
            self.switch(language);
        }
        if let Some(zone) = address.zone {
            if self.resident.with(|s| s.guide.zones.iter().any(|known| known.id == zone)) {
                self.resident.set_zone(Some(zone));
                self.resident.tell_zone();
            } else {
                self.missing.replace(Some(NotHere::Zone(zone.chars().take(60).collect())));
                self.draw_missing();
            }
        }
        self.resident.open(address.page);
    }

    /// Shows another language. Without a network it comes from what was kept at the first visit.
    fn switch(self: &Rc<Self>, language: String) {
        let own = self.clone();
        wasm_bindgen_futures::spawn_local(async move {
            let guide = own.resident.with(|s| s.guide.clone());
            match words(&language, &guide).await {
                Ok(words) => {
                    own.missing.replace(None);
                    let mut settings = browser::load_settings();
                    settings.language = Some(language.clone());
                    browser::save_settings(&settings);
                    own.resident.show_words(Arc::new(words));
                    own.draw();
                    own.learn();
                    browser::replace_fragment(&own.resident.with(|s| s.page.fragment(&language)));
                }
                Err(problem) => {
                    own.missing.replace(Some(NotHere::of(problem, language)));
                    own.draw_missing();
                    // The list shows the language that is shown.
                    own.fill(".lid", lid);
                }
            }
        });
    }

    /// Fetches all words to search by, now that the guide can answer.
    fn learn(&self) {
        let resident = self.resident.clone();
        wasm_bindgen_futures::spawn_local(async move {
            let (guide, words) = resident.with(|s| (s.guide.clone(), s.words.clone()));
            if let Some(names) = search_words(words.language(), &guide).await {
                words.learn(&names, &guide);
                resident.show_learned();
            }
        });
    }

    fn clicked(self: &Rc<Self>, event: &web_sys::Event) {
        match browser::what_to_do(event).as_ref().map(|(what, _)| what.as_str()) {
            Some("skip") => {
                event.prevent_default();
                browser::focus("heading");
            }
            Some("update") => switch_guide(),
            _ => {}
        }
    }

    fn changed(self: &Rc<Self>, event: &web_sys::Event) {
        let Some(list) = event.target().and_then(|t| t.dyn_into::<HtmlSelectElement>().ok()) else { return };
        let value = list.value();
        match list.id().as_str() {
            "language" => self.switch(value),
            "zone" => self.resident.set_zone((!value.is_empty()).then_some(value)),
            _ => {}
        }
    }
}

fn option(out: &mut Html, value: &str, chosen: bool) {
    put!(out, "<option value=\"" (value) "\"");
    if chosen {
        out.markup(" selected");
    }
}

/// The band on top: the guide's name, and each language under its own name.
fn lid(out: &mut Html, state: &State) {
    let words = &state.words;
    open_link(out, state, &Page::Home, "brand");
    put!(out, "<img src=\"icons/leaf.svg\" alt=\"\"><span>"
        (words.text("program.name").unwrap_or_default())
        "</span></a><label class=\"language\"><svg viewBox=\"0 0 24 24\" aria-hidden=\"true\">\
        <circle cx=\"12\" cy=\"12\" r=\"9\"/><path d=\"M3 12h18M12 3c5 5 5 13 0 18M12 3c-5 5-5 13 0 18\"/></svg>\
        <span class=\"unseen\">" (t!(words.messages, "language-label")) "</span><select id=\"language\">");
    for tag in &state.guide.languages {
        let name = endonym(tag);
        option(out, tag, tag == words.language());
        put!(out, " lang=\"" (tag) "\">" (name) "</option>");
    }
    out.markup("</select></label>");
}

/// Zone, state of the translation, whom to ask, edition.
fn foot(out: &mut Html, state: &State) {
    let (words, guide) = (&state.words, &state.guide);
    let m = &words.messages;
    if guide.zones.len() > 1 {
        put!(out, "<label class=\"zone\"><span>" (t!(m, "zone-label")) "</span><select id=\"zone\">");
        option(out, "", state.zone.is_none());
        put!(out, ">" (t!(m, "zone-none")) "</option>");
        for zone in &guide.zones {
            option(out, &zone.id, state.zone.as_ref() == Some(&zone.id));
            put!(out, ">" (words.named("zone", &zone.id)) "</option>");
        }
        out.markup("</select></label>");
    }
    if words.unreviewed() {
        put!(out, "<p id=\"unreviewed\" class=\"quiet\">" (t!(m, "unreviewed")) "</p>");
    }
    ask(out, state);
    put!(out, "<p class=\"quiet\">" (t!(m, "decided-edition", edition = guide.edition.label.as_str()))
        "</p><p class=\"quiet\">" (t!(m, "privacy")) "</p>");
}
