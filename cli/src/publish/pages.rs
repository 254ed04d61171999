//! The guide as plain pages, one folder for each language: what is left where there is no JavaScript and
//! no WebAssembly, what search engines read, and what can be printed.
//!
//! Everything on them is worked out by the guide itself ([`Guide::advice_over`]) and said in the words of
//! the resident's screens. Nothing on them runs, and nothing is fetched but one style sheet.

mod answer;
mod places;

use std::collections::BTreeMap;

use chrono::NaiveDate;
use guide_data::{Advice, Guide, GuideItem, LanguagePack, Program, Stretch};
use locales::{Lang, Messages, Words, t};
use maud::{DOCTYPE, Markup, PreEscaped, html};

use super::words::Packs;

/// Where the pages are, in the published folder.
pub(crate) const FOLDER: &str = "pages/";
/// How many days ahead pages look for rules that begin or end: a year has every season.
const DAYS_AHEAD: usize = 366;
/// Nothing but the style sheet beside the pages. No script may run, so nothing connects; what audits a page for search
/// engines asks for the host's robots.txt from within it.
const POLICY: &str =
    "default-src 'none'; style-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'";

/// Every page of every language, by path.
pub(crate) fn write(
    program: &Program,
    guide: &Guide,
    packs: &Packs,
    today: NaiveDate,
) -> BTreeMap<String, Vec<u8>> {
    // An edition that has not begun is shown as it will be.
    let from = program.edition.from.map_or(today, |first| first.max(today));
    // What is advised is the same in every language.
    let advice: Vec<Option<Vec<Stretch>>> =
        (0..guide.items.len()).map(|item| guide.advice_over(item, from, DAYS_AHEAD)).collect();
    let mut files = BTreeMap::new();
    for pack in packs.iter() {
        let lang: Lang = pack.language.parse().unwrap_or_default();
        let region = crate::sheets::region(program, &lang);
        // The pages isolate what they fill in by elements of their own where it matters; marks in the text
        // would be found by nobody who searches the page.
        let messages = locales::bundled(&lang.with_region(&region)).isolating(false);
        let words = Words { messages: &messages, pack };
        let book = Book { program, guide, words, messages: &messages, pack, advice: &advice, from };
        for (name, page) in book.pages() {
            files.insert(format!("{FOLDER}{}/{name}", pack.language), page.into_string().into_bytes());
        }
    }
    files
}

/// The links to the pages of every language, for the first page where nothing runs.
pub(crate) fn links(program: &Program) -> String {
    let links = html! {
        @for tag in &program.languages {
            @let lang = tag.parse::<Lang>().unwrap_or_default();
            p lang=(tag) dir=(lang.direction().html()) { a href={ (FOLDER) (tag) "/" } { (lang.endonym()) } }
        }
    };
    links.into_string()
}

/// The pages of one language.
struct Book<'a> {
    program: &'a Program,
    guide: &'a Guide,
    words: Words<'a>,
    messages: &'a Messages,
    pack: &'a LanguagePack,
    /// By item, what is advised from which day on; none where it is too much for a page.
    advice: &'a [Option<Vec<Stretch>>],
    from: NaiveDate,
}

impl Book<'_> {
    /// Every page with its file name.
    fn pages(&self) -> Vec<(String, Markup)> {
        let mut pages = vec![("index.html".to_owned(), self.contents())];
        for category in self.categories() {
            pages.push((format!("{category}.html"), self.category(category)));
        }
        pages.push(("places.html".to_owned(), self.places()));
        pages
    }

    /// The categories that some item is of, in the order of the first such item.
    fn categories(&self) -> Vec<&str> {
        let mut seen: Vec<&str> = Vec::new();
        for item in &self.guide.items {
            if !seen.contains(&item.category.as_str()) {
                seen.push(&item.category);
            }
        }
        seen
    }

    fn items_of(&self, category: &str) -> Vec<(usize, &GuideItem)> {
        let mut items: Vec<(usize, &GuideItem)> =
            self.guide.items.iter().enumerate().filter(|(_, item)| item.category == category).collect();
        items.sort_by_key(|(_, item)| (std::cmp::Reverse(item.common), item.id.clone()));
        items
    }

    fn name(&self) -> String {
        self.words.text("program.name").unwrap_or(&self.program.id).to_owned()
    }

    /// The frame of every page.
    fn page(&self, file: &str, title: &str, about: &str, body: &Markup) -> Markup {
        let m = self.messages;
        let program = self.name();
        html! {
            (DOCTYPE)
            html lang=(self.pack.language) dir=(self.pack.direction) {
                head {
                    meta charset="utf-8";
                    meta name="viewport" content="width=device-width, initial-scale=1";
                    meta http-equiv="Content-Security-Policy" content=(POLICY);
                    meta name="referrer" content="no-referrer";
                    meta name="description" content=(about);
                    title { (title) }
                    link rel="stylesheet" href="../../pages.css";
                    // Search engines take whole addresses only.
                    @let root = self.program.guide_url.trim_end_matches('/');
                    @if !root.is_empty() {
                        @for tag in &self.program.languages {
                            link rel="alternate" hreflang=(tag) href={ (root) "/pages/" (tag) "/" (file) };
                        }
                    }
                }
                body {
                    a.skip href="#main" { (t!(m, "skip")) }
                    header {
                        p.program { a href="./" { (program) } }
                        nav aria-label=(t!(m, "language-label")) {
                            ul.languages {
                                @for tag in &self.program.languages {
                                    @let lang = tag.parse::<Lang>().unwrap_or_default();
                                    li {
                                        @if *tag == self.pack.language {
                                            span aria-current="true" { (lang.endonym()) }
                                        } @else {
                                            a href={ "../" (tag) "/" (file) } lang=(tag) hreflang=(tag)
                                                dir=(lang.direction().html()) { (lang.endonym()) }
                                        }
                                    }
                                }
                            }
                        }
                    }
                    main #main {
                        @if self.pack.unreviewed && self.pack.language != self.pack.source {
                            p.notice { (t!(m, "unreviewed")) }
                        }
                        (body)
                    }
                    footer {
                        p { (t!(m, "decided-edition", edition = self.guide.edition.label.as_str())) }
                        (self.ask())
                        p { (t!(m, "privacy")) }
                    }
                }
            }
        }
    }

    /// Whom to ask.
    fn ask(&self) -> Markup {
        let contact = &self.guide.contact;
        let name = self.words.text("contact.name").unwrap_or_default();
        html! {
            @if !name.is_empty() || !contact.phone.is_empty() || !contact.email.is_empty() {
                p.ask {
                    (t!(self.messages, "ask-contact", name = name))
                    @if !contact.phone.is_empty() { " " (places::telephone(&contact.phone)) }
                    @if !contact.email.is_empty() {
                        " " a href={ "mailto:" (contact.email) } { bdi dir="ltr" { (contact.email) } }
                    }
                }
            }
        }
    }

    /// The first page: everything there is, each with its answer in a line.
    fn contents(&self) -> Markup {
        let m = self.messages;
        let title = t!(m, "page-title", program = self.name());
        let about = t!(m, "pages-intro");
        let body = html! {
            h1 { (title) }
            p { (about) }
            p { a href={ "../../#/" (self.pack.language) "/" } { (t!(m, "pages-app")) } }
            nav aria-label=(t!(m, "home-categories")) {
                ul.contents {
                    @for category in self.categories() {
                        li { a href={ "#" (category) } { (self.words.say(&format!("category-{category}"))) } }
                    }
                    li { a href="places.html" { (t!(m, "pages-places")) } }
                }
            }
            @for category in self.categories() {
                section #(category) {
                    h2 { a href={ (category) ".html" } { (self.words.say(&format!("category-{category}"))) } }
                    ul.list {
                        @for (at, item) in self.items_of(category) {
                            li {
                                a href={ (category) ".html#" (item.id) } { (self.words.item(&item.id)) }
                                ": " (self.line(at))
                            }
                        }
                    }
                }
            }
        };
        self.page("index.html", &title, &about, &body)
    }

    /// An item's answer in a line, or that it depends.
    fn line(&self, item: usize) -> String {
        let stretches = self.advice.get(item).and_then(Option::as_ref);
        match stretches.and_then(|all| all.first()).map(|stretch| &stretch.advice) {
            Some(Advice::Answer(answer)) => {
                answer.parts.first().map(|part| self.short(&part.outcome, None)).unwrap_or_default()
            }
            _ => t!(self.messages, "pages-depends"),
        }
    }

    /// A category: every item with all that can be said about it.
    fn category(&self, category: &str) -> Markup {
        let m = self.messages;
        let name = self.words.say(&format!("category-{category}"));
        let title = t!(m, "pages-category-title", category = name.as_str(), program = self.name());
        let body = html! {
            p.back { a href={ "./#" (category) } { (t!(m, "back")) } }
            h1 { (name) }
            @for (at, item) in self.items_of(category) { (self.item(at, item)) }
        };
        self.page(&format!("{category}.html"), &title, &title, &body)
    }

    fn item(&self, at: usize, item: &GuideItem) -> Markup {
        let m = self.messages;
        let also = self.pack.names.get(&item.id).and_then(|names| names.get(1..)).unwrap_or_default();
        let stretches = self.advice.get(at).and_then(Option::as_ref);
        html! {
            article #(item.id) data-item=(item.id) {
                h2 { (self.words.item(&item.id)) }
                @match stretches {
                    None => p { (t!(m, "pages-too-much")) " " a href={ "../../#/" (self.pack.language) "/item/" (item.id) } { (t!(m, "pages-app")) } },
                    Some(stretches) => @for (nth, stretch) in stretches.iter().enumerate() {
                        section.stretch data-from=(stretch.from) {
                            @if stretches.len() > 1 {
                                h3.when { (self.starting(nth, stretch.from)) }
                            }
                            (self.advice(&stretch.advice, &answer::Path::below(stretches.len() > 1)))
                        }
                    },
                }
                @if !also.is_empty() {
                    // Folded away, for misspellings are among them; browsers find them there and unfold.
                    details.also { summary { (t!(m, "pages-also")) } p { (also.join(" · ")) } }
                }
            }
        }
    }

    /// "Now", or "From April 1, 2027".
    fn starting(&self, nth: usize, day: NaiveDate) -> String {
        if nth == 0 && day == self.from {
            return t!(self.messages, "pages-now");
        }
        let day = self.messages.date(day, locales::DateStyle::Long);
        t!(self.messages, "pages-from", day = day)
    }

    /// Places to take things to, and the containers at home.
    fn places(&self) -> Markup {
        let m = self.messages;
        let title = t!(m, "pages-category-title", category = t!(m, "pages-places"), program = self.name());
        let body = html! {
            p.back { a href="./" { (t!(m, "back")) } }
            h1 { (t!(m, "pages-places")) }
            @for channel in &self.guide.channels { (self.channel(channel)) }
            (self.containers())
        };
        self.page("places.html", &title, &title, &body)
    }
}

/// Nothing.
fn nothing() -> Markup {
    PreEscaped(String::new())
}
