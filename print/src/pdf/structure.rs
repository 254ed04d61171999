//! The structure of the web file: what is a title, a heading, a list, a picture, in the order in which it is read.
//!
//! Sheets set languages side by side, and go on with all of them overleaf; who listens wants one after the other. So
//! what the pages draw is sorted by language, each a section of its own over all pages, and within a language it stays
//! in the order in which it is drawn. What is of no language comes before the languages or after them, as its page
//! draws it before or after their first words. Grounds,
//! tiles and the verdicts' shapes, which say nothing that the words beside them don't, are artifacts.

use pdf_writer::types::StructRole;

use crate::display::{DisplayList, Fill, Item, Page, Role, TextLine};
use crate::path::bounds;
use crate::place::SHORT_ADDRESS;
use crate::unit::{Pt, Rect};

/// How an item of a page is marked in the page's content.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Mark {
    /// Outside the trimmed sheet: not drawn.
    Skip,
    /// Drawn, and passed over by who listens.
    Artifact,
    /// Drawn as the content of this number on its page.
    Content(i32, StructRole),
}

/// What an element holds, in order.
#[derive(Debug)]
pub(super) enum Child {
    Element(Element),
    /// Content by its page and number.
    Content(usize, i32),
    /// An address to follow, by its place among [`Structure::links`].
    Link(usize),
}

/// A node of the structure.
#[derive(Debug)]
pub(super) struct Element {
    pub(super) role: StructRole,
    pub(super) lang: Option<String>,
    pub(super) alt: Option<String>,
    /// The characters it stands for, where its content has them in another order.
    pub(super) actual: Option<String>,
    /// A picture's page and frame.
    pub(super) frame: Option<(usize, Rect)>,
    pub(super) children: Vec<Child>,
}

impl Element {
    fn new(role: StructRole) -> Self {
        Self { role, lang: None, alt: None, actual: None, frame: None, children: Vec::new() }
    }

    fn push(&mut self, element: Self) {
        self.children.push(Child::Element(element));
    }
}

/// A place that can be followed.
#[derive(Debug)]
pub(super) struct Link {
    pub(super) page: usize,
    pub(super) rect: Rect,
}

/// An entry of the file's table of contents.
#[derive(Debug)]
pub(super) struct Bookmark {
    pub(super) title: String,
    pub(super) page: usize,
    pub(super) top: Pt,
    pub(super) below: Vec<Self>,
}

/// A file's structure.
pub(super) struct Structure {
    pub(super) root: Element,
    /// For each page, how each of its items is marked.
    pub(super) marks: Vec<Vec<Mark>>,
    pub(super) links: Vec<Link>,
    pub(super) bookmarks: Vec<Bookmark>,
}

/// What belongs together on a page: a text with its lines, or a picture.
struct Piece {
    page: usize,
    lang: String,
    content: Vec<i32>,
    kind: Kind,
}

enum Kind {
    Text { role: Role, place: String, words: String, frame: Rect, turned: bool },
    Picture { alt: String, frame: Rect },
}

/// Builds the structure; `languages` are the sheet's, in order.
pub(super) fn build(list: &DisplayList, languages: &[&str]) -> Structure {
    let mut builder = Builder {
        structure: Structure {
            root: Element::new(StructRole::Document),
            marks: Vec::new(),
            links: Vec::new(),
            bookmarks: Vec::new(),
        },
        titled: false,
    };
    let mut before = Vec::new();
    let mut after = Vec::new();
    let mut by_language: Vec<(&str, Vec<Piece>)> = languages.iter().map(|lang| (*lang, Vec::new())).collect();
    for (number, page) in list.pages.iter().enumerate() {
        let (marks, pieces) = pieces(number, page);
        builder.structure.marks.push(marks);
        let first_words = pieces.iter().position(|piece| !piece.lang.is_empty()).unwrap_or(0);
        for (at, piece) in pieces.into_iter().enumerate() {
            let own = by_language.iter_mut().find(|(lang, _)| *lang == piece.lang);
            match own {
                Some((_, own)) => own.push(piece),
                None if at < first_words => before.push(piece),
                None => after.push(piece),
            }
        }
    }
    builder.section(None, before);
    for (lang, pieces) in by_language {
        builder.section(Some(lang.to_owned()), pieces);
    }
    builder.section(None, after);
    builder.structure
}

fn item_frame(item: &Item) -> Option<Rect> {
    match item {
        Item::Fill(fill) => bounds(&fill.path),
        Item::Rule(rule) => {
            let (left, top) = (rule.from.x.min(rule.to.x), rule.from.y.min(rule.to.y));
            let (right, bottom) = (rule.from.x.max(rule.to.x), rule.from.y.max(rule.to.y));
            Some(Rect::new(left, top, right - left, bottom - top).grown(rule.width / 2.0))
        }
        Item::Text(line) => Some(line.rect),
        Item::Technical(line) => bounds(&line.path),
    }
}

/// Marks every item of a page and gathers what can be heard.
fn pieces(number: usize, page: &Page) -> (Vec<Mark>, Vec<Piece>) {
    let trim = page.geometry.trim();
    let mut pieces: Vec<Piece> = Vec::new();
    let mut next = 0;
    let mut marks = Vec::new();
    for item in &page.items {
        let Some(frame) = item_frame(item).filter(|frame| frame.overlaps(&trim)) else {
            marks.push(Mark::Skip);
            continue;
        };
        let mark = match item {
            Item::Text(TextLine { role: Role::Slug, .. }) | Item::Technical(_) => Mark::Skip,
            Item::Text(line) => {
                heard(&mut pieces, number, line, next);
                Mark::Content(next, role_of(line.role))
            }
            Item::Fill(Fill { alt: Some(alt), .. }) => {
                let kind = Kind::Picture { alt: alt.text.clone(), frame };
                pieces.push(Piece { page: number, lang: alt.lang.clone(), content: vec![next], kind });
                Mark::Content(next, StructRole::Figure)
            }
            Item::Fill(_) | Item::Rule(_) => Mark::Artifact,
        };
        if matches!(mark, Mark::Content(..)) {
            next += 1;
        }
        marks.push(mark);
    }
    (marks, pieces)
}

/// What a line's content is called.
fn role_of(role: Role) -> StructRole {
    match role {
        Role::Title => StructRole::H1,
        Role::Heading => StructRole::H2,
        Role::Body => StructRole::LBody,
        Role::Issuer | Role::Foot | Role::Postal | Role::Slug => StructRole::P,
    }
}

/// Adds a line to the text it belongs to.
fn heard(pieces: &mut Vec<Piece>, page: usize, line: &TextLine, number: i32) {
    // Glyphs that stand in another order than the characters, or that several of them make up one.
    let other = line.runs.iter().any(|run| run.rtl || run.glyphs.iter().any(|glyph| glyph.text.is_empty()));
    if let Some(Piece { content, kind: Kind::Text { place, words, frame, turned, .. }, .. }) =
        pieces.last_mut()
        && *place == line.place
        && !place.is_empty()
    {
        content.push(number);
        words.push_str(&line.text);
        words.push_str(&line.gap);
        *frame = frame.around(&line.rect);
        *turned |= other;
        return;
    }
    pieces.push(Piece {
        page,
        lang: line.lang.clone(),
        content: vec![number],
        kind: Kind::Text {
            role: line.role,
            place: line.place.clone(),
            words: format!("{}{}", line.text, line.gap),
            frame: line.rect,
            turned: other,
        },
    });
}

struct Builder {
    structure: Structure,
    /// Whether a title has been met: the first heading of a file is one.
    titled: bool,
}

impl Builder {
    /// A language's part of the sheet, or that of no language; nothing where there is nothing.
    fn section(&mut self, lang: Option<String>, pieces: Vec<Piece>) {
        if pieces.is_empty() {
            return;
        }
        let mut open = Open::new(lang);
        for piece in pieces {
            let page = piece.page;
            match &piece.kind {
                Kind::Picture { alt, frame } => {
                    let mut figure = Element::new(StructRole::Figure);
                    figure.alt = Some(alt.clone());
                    figure.frame = Some((page, *frame));
                    fill(&mut figure, &piece);
                    open.figures.push(figure);
                }
                Kind::Text { role: Role::Body, .. } => {
                    let mut body = Element::new(StructRole::LBody);
                    std::mem::take(&mut open.figures).into_iter().for_each(|figure| body.push(figure));
                    fill(&mut body, &piece);
                    let mut item = Element::new(StructRole::LI);
                    item.push(body);
                    open.list.get_or_insert_with(|| Element::new(StructRole::L)).push(item);
                }
                Kind::Text { role: Role::Heading, words, frame, .. } if self.titled => {
                    open.close();
                    let mut heading = Element::new(StructRole::H2);
                    fill(&mut heading, &piece);
                    let mut section = Element::new(StructRole::Sect);
                    section.push(heading);
                    open.section = Some(section);
                    let mark = Bookmark { title: words.clone(), page, top: frame.y, below: Vec::new() };
                    match open.bookmark.and_then(|at| self.structure.bookmarks.get_mut(at)) {
                        // A section that runs on to the other side has its heading there again; one entry leads to it.
                        Some(title) if title.below.last().is_some_and(|last| last.title == mark.title) => {}
                        Some(title) => title.below.push(mark),
                        None => self.structure.bookmarks.push(mark),
                    }
                }
                Kind::Text { role: Role::Title | Role::Heading, words, frame, .. } => {
                    open.close();
                    self.titled = true;
                    let mut title = Element::new(StructRole::H1);
                    fill(&mut title, &piece);
                    open.language.push(title);
                    // The second side of a sheet says the title again; one entry leads to it. Two languages may
                    // well have one word for it.
                    if open.bookmark.is_none() {
                        open.bookmark = Some(self.structure.bookmarks.len());
                        self.structure.bookmarks.push(Bookmark {
                            title: words.clone(),
                            page,
                            top: frame.y,
                            below: Vec::new(),
                        });
                    }
                }
                Kind::Text { place, frame, .. } => {
                    open.close();
                    let mut paragraph = Element::new(StructRole::P);
                    if *place == SHORT_ADDRESS {
                        let mut link = Element::new(StructRole::Link);
                        fill(&mut link, &piece);
                        link.children.push(Child::Link(self.structure.links.len()));
                        self.structure.links.push(Link { page, rect: *frame });
                        paragraph.push(link);
                    } else {
                        fill(&mut paragraph, &piece);
                    }
                    open.language.push(paragraph);
                }
            }
        }
        open.close();
        self.structure.root.push(open.language);
    }
}

/// Fills an element with a piece's content. Where the glyphs do not say the characters one by one, the element states
/// the characters; a span within it does when it has more to hold than words.
fn fill(element: &mut Element, piece: &Piece) {
    let numbers = piece.content.iter().map(|&number| Child::Content(piece.page, number));
    match &piece.kind {
        Kind::Text { words, turned: true, .. } if element.children.is_empty() => {
            element.actual = Some(words.clone());
            element.children.extend(numbers);
        }
        Kind::Text { words, turned: true, .. } => {
            let mut span = Element::new(StructRole::Span);
            span.actual = Some(words.clone());
            span.children.extend(numbers);
            element.push(span);
        }
        Kind::Text { .. } | Kind::Picture { .. } => element.children.extend(numbers),
    }
}

/// The elements that what comes next belongs to.
struct Open {
    language: Element,
    section: Option<Element>,
    list: Option<Element>,
    /// Pictures whose words are still to come.
    figures: Vec<Element>,
    bookmark: Option<usize>,
}

impl Open {
    fn new(lang: Option<String>) -> Self {
        let mut language = Element::new(StructRole::Sect);
        language.lang = lang;
        Self { language, section: None, list: None, figures: Vec::new(), bookmark: None }
    }

    /// Ends the list and the section.
    fn close(&mut self) {
        let place = self.section.as_mut().unwrap_or(&mut self.language);
        if let Some(list) = self.list.take() {
            place.push(list);
        }
        if let Some(section) = self.section.take() {
            self.language.push(section);
        }
        for figure in self.figures.drain(..) {
            self.language.push(figure);
        }
    }
}
