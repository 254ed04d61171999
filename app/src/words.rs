//! Everything a screen says, in one language: messages, the program's own texts, item names, and
//! the search index over those names.

use std::collections::BTreeMap;
use std::sync::{Arc, RwLock};

use guide_data::{Guide, LanguagePack, PackedWords, SearchIndex, ValueLabel};
use locales::{Lang, Messages};

use crate::browser;

/// The words of one language for one guide.
#[derive(Clone)]
pub(crate) struct Words {
    /// The messages; [`locales::t!`] takes them.
    pub(crate) messages: Arc<Messages>,
    /// The program's texts and the items' names.
    pub(crate) pack: Arc<LanguagePack>,
    /// Finds items by what people type; by more words once they are learned. Made when first asked: whoever
    /// reads the answer of a lid's code never types.
    index: Arc<RwLock<Option<Arc<SearchIndex>>>>,
    /// The items the index was made for, so that a draft's edits make it anew only when needed.
    indexed: Arc<Vec<String>>,
}

/// The longest search taken: nobody types more, and a pasted page must not hold the phone up.
pub(crate) const LONGEST_QUERY: usize = 80;
/// The most results shown; a longer list is not read standing at a cart.
const MOST_RESULTS: usize = 8;

impl Words {
    /// Words whose messages are still to be read.
    #[cfg(feature = "desk")]
    pub(crate) fn new(pack: LanguagePack, guide: &Guide) -> Self {
        let sources: Vec<&str> = pack.messages.iter().map(String::as_str).collect();
        let (messages, _) = Messages::from_ftl(reader(&pack, guide), &sources);
        Self::over_messages(messages, pack, guide)
    }

    /// Words as phones are sent them; `None` when the messages are damaged.
    pub(crate) fn read(packed: PackedWords, guide: &Guide) -> Option<Self> {
        let PackedWords { pack, messages } = packed;
        let messages = Messages::from_packed(reader(&pack, guide), &messages)?;
        Some(Self::over_messages(messages, pack, guide))
    }

    fn over_messages(messages: Messages, pack: LanguagePack, guide: &Guide) -> Self {
        Self {
            messages: Arc::new(messages),
            pack: Arc::new(pack),
            index: Arc::default(),
            indexed: Arc::new(ids(guide)),
        }
    }

    /// The same messages over a draft's own texts and item names.
    #[cfg(feature = "desk")]
    pub(crate) fn over(
        &self,
        texts: BTreeMap<String, String>,
        names: BTreeMap<String, Vec<String>>,
        guide: &Guide,
    ) -> Self {
        let mut pack = (*self.pack).clone();
        pack.texts = texts;
        let mut renamed = false;
        for (item, own) in names {
            if pack.names.get(&item) != Some(&own) {
                pack.names.insert(item, own);
                renamed = true;
            }
        }
        let same = guide.items.iter().map(|i| &i.id).eq(self.indexed.iter());
        let (index, indexed) = if renamed || !same {
            (Arc::default(), Arc::new(ids(guide)))
        } else {
            (self.index.clone(), self.indexed.clone())
        };
        Self { messages: self.messages.clone(), pack: Arc::new(pack), index, indexed }
    }

    /// Finds items from now on by these names, folded, each item's own first.
    pub(crate) fn learn(&self, names: &BTreeMap<String, Vec<String>>, guide: &Guide) {
        let learned = search_index(guide, |id| names.get(id).cloned().unwrap_or_default());
        if let Ok(mut index) = self.index.write() {
            *index = Some(Arc::new(learned));
        }
    }

    /// The same words with everything they can say: what the app shares with the command line.
    pub(crate) fn shared(&self) -> locales::Words<'_> {
        locales::Words { messages: &self.messages, pack: &self.pack }
    }

    /// Whether both say the same.
    #[cfg(feature = "desk")]
    pub(crate) fn same(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.messages, &other.messages)
            && self.indexed == other.indexed
            && self.pack == other.pack
    }

    /// The language's tag.
    pub(crate) fn language(&self) -> &str {
        &self.pack.language
    }

    /// "ltr" or "rtl".
    pub(crate) fn direction(&self) -> &str {
        if self.pack.direction == "rtl" { "rtl" } else { "ltr" }
    }

    /// Nobody has signed this language off.
    pub(crate) fn unreviewed(&self) -> bool {
        self.pack.unreviewed
    }

    /// A message whose key depends on an id.
    pub(crate) fn say(&self, key: &str) -> String {
        self.shared().say(key)
    }

    /// A message that may not exist.
    pub(crate) fn maybe(&self, key: &str) -> Option<String> {
        self.shared().maybe(key)
    }

    /// A text of the program, when somebody wrote it.
    pub(crate) fn text(&self, key: &str) -> Option<String> {
        self.shared().text(key).map(str::to_owned)
    }

    /// The name of something of the program's: its text, or its id when nobody named it.
    pub(crate) fn named(&self, kind: &str, id: &str) -> String {
        self.shared().named(kind, id)
    }

    /// An item's name.
    pub(crate) fn item(&self, id: &str) -> String {
        self.shared().item(id)
    }

    /// A preparation step.
    #[cfg(feature = "desk")]
    pub(crate) fn step(&self, id: &str) -> String {
        self.shared().step(id)
    }

    /// A stated measure, or day, as this language's readers write it.
    #[cfg(feature = "desk")]
    pub(crate) fn measure(&self, fact: &str, stated: &str) -> String {
        self.shared().measure(fact, stated)
    }

    /// A rule about a container.
    #[cfg(feature = "desk")]
    pub(crate) fn container_rule(&self, container: &str, kind: &str, limit: Option<&str>) -> String {
        self.shared().container_rule(container, kind, limit)
    }

    /// A value of a fact in words.
    pub(crate) fn value(&self, fact: &str, label: &ValueLabel) -> String {
        self.shared().value(fact, label)
    }

    /// The items that best match what somebody typed, as positions in the guide.
    pub(crate) fn find(&self, typed: &str, guide: &Guide) -> Vec<usize> {
        let typed: String = typed.chars().take(LONGEST_QUERY).collect();
        let Some(index) = self.index(guide) else { return Vec::new() };
        index.find(&browser::fold(&typed), MOST_RESULTS).into_iter().map(|hit| hit.item).collect()
    }

    /// The index over the names, made now if nobody has asked for it before. A lock is poisoned only by a
    /// panic, after which the page starts anew.
    fn index(&self, guide: &Guide) -> Option<Arc<SearchIndex>> {
        let mut index = self.index.write().ok()?;
        let made = index.get_or_insert_with(|| {
            let fold = |names: &Vec<String>| names.iter().map(|name| browser::fold(name)).collect();
            Arc::new(search_index(guide, |id| self.pack.names.get(id).map(fold).unwrap_or_default()))
        });
        Some(made.clone())
    }
}

/// The language of a pack's readers. A region decides clock, units and number symbols. A guide is of one
/// place, so the region of its source language, when it states one, is the readers' region in every
/// language.
fn reader(pack: &LanguagePack, guide: &Guide) -> Lang {
    let lang: Lang = pack.language.parse().unwrap_or_default();
    let place: Lang = guide.source_language.parse().unwrap_or_default();
    let region = lang.region().or(place.region()).unwrap_or("US").to_owned();
    lang.with_region(&region)
}

fn ids(guide: &Guide) -> Vec<String> {
    guide.items.iter().map(|i| i.id.clone()).collect()
}

/// An index over the items' folded names, each item's own first.
fn search_index(guide: &Guide, names: impl Fn(&str) -> Vec<String>) -> SearchIndex {
    let all = guide.items.iter().enumerate().flat_map(|(at, item)| {
        names(&item.id).into_iter().enumerate().map(move |(n, name)| (at, name, n == 0, item.common))
    });
    SearchIndex::build(all)
}
