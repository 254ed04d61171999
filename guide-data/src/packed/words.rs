//! The words of one language as bytes. Items are named in the guide's order, so that their ids do not
//! travel twice; a mark of that order tells whether guide and words belong together.

use std::collections::BTreeMap;

use super::bytes::{PackProblem, Reader, Writer};
use crate::guide::Guide;
use crate::words::LanguagePack;

const WORDS: u8 = b'W';
const SEARCH: u8 = b'S';

/// A language's words as a phone reads them.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct PackedWords {
    /// The words. Each item has its name alone, and there are no message files.
    pub pack: LanguagePack,
    /// The screens' messages, in a form that this crate carries and does not know.
    pub messages: String,
}

impl PackedWords {
    /// The words as a phone is sent them; see [`crate::packed`].
    #[must_use]
    pub fn to_bytes(&self, guide: &Guide) -> Vec<u8> {
        let (mut w, pack) = (Writer::default(), &self.pack);
        w.number(guide.items_mark());
        w.text(&pack.language);
        w.text(&pack.source);
        w.text(&pack.direction);
        w.text(&pack.endonym);
        w.flags(&[pack.unreviewed]);
        w.size(pack.texts.len());
        for (key, text) in &pack.texts {
            w.text(key);
            w.text(text);
        }
        for item in &guide.items {
            w.text(pack.names.get(&item.id).and_then(|names| names.first()).map_or("", String::as_str));
        }
        w.text(&self.messages);
        w.finish(WORDS)
    }

    /// Reads words that were written so for this guide.
    ///
    /// # Errors
    /// Says why the bytes are not the words of this guide; see [`PackProblem`].
    pub fn from_bytes(bytes: &[u8], guide: &Guide) -> Result<Self, PackProblem> {
        let mut r = open(bytes, WORDS, guide);
        let mut pack = LanguagePack {
            language: r.text(),
            source: r.text(),
            direction: r.text(),
            endonym: r.text(),
            unreviewed: r.flag(),
            ..LanguagePack::default()
        };
        for _ in 0..r.count() {
            let (key, text) = (r.text(), r.text());
            pack.texts.insert(key, text);
        }
        for item in &guide.items {
            let name = r.text();
            if !name.is_empty() {
                pack.names.insert(item.id.clone(), vec![name]);
            }
        }
        let messages = r.text();
        r.finish(Self { pack, messages })
    }
}

fn open<'b>(bytes: &'b [u8], kind: u8, guide: &Guide) -> Reader<'b> {
    let mut r = Reader::open(bytes, kind);
    if r.number() != guide.items_mark() {
        r.refuse(PackProblem::OtherGuide);
    }
    r
}

impl Guide {
    /// Other words to find items by, by item, as a phone is sent them; see [`crate::packed`].
    #[must_use]
    pub fn search_words_to_bytes(&self, words: &BTreeMap<String, Vec<String>>) -> Vec<u8> {
        let mut w = Writer::default();
        w.number(self.items_mark());
        for item in &self.items {
            w.list(words.get(&item.id).map(Vec::as_slice).unwrap_or_default());
        }
        w.finish(SEARCH)
    }

    /// Reads other words to find this guide's items by.
    ///
    /// # Errors
    /// Says why the bytes are not such words of this guide; see [`PackProblem`].
    pub fn search_words(&self, bytes: &[u8]) -> Result<BTreeMap<String, Vec<String>>, PackProblem> {
        let mut r = open(bytes, SEARCH, self);
        let mut words = BTreeMap::new();
        for item in &self.items {
            let own = r.list();
            if !own.is_empty() {
                words.insert(item.id.clone(), own);
            }
        }
        r.finish(words)
    }
}
