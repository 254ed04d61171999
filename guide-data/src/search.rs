//! Finding items by what people type: names, other names, misspellings, words in any order,
//! compound words written apart or together, any script.

use std::collections::{BTreeMap, VecDeque};
use std::sync::{Arc, Mutex};

use crate::order::sort_by;

/// A name in the index, folded and cut into words.
#[derive(Debug, Clone)]
struct Name {
    item: usize,
    /// The item's own name, not another name for it.
    main: bool,
    common: u32,
    /// Its words, as positions in the vocabulary.
    words: Vec<usize>,
    /// All words written together, for compounds and scripts without spaces.
    joined: Vec<char>,
    signs: u64,
}

/// A word, or two neighbouring words written together, that stands in some name.
#[derive(Debug, Clone)]
struct Word {
    letters: Vec<char>,
    signs: u64,
    /// How much it tells: a word that stands in many items' names tells little. 0 to 1.
    weight: f32,
    /// The names it stands in: name, place of its first word, how many words it is.
    places: Vec<(usize, u8, u8)>,
}

/// An index of names in one or several languages.
#[derive(Debug, Clone, Default)]
pub struct SearchIndex {
    names: Vec<Name>,
    words: Vec<Word>,
    met: Met,
}

/// What the latest words that were typed met. Who types a query letter by letter changes its last word
/// only, so that what all words before it meet need not be found again at every letter.
#[derive(Debug, Default)]
struct Met(Mutex<VecDeque<Typed>>);

/// A typed word and whether it may be unfinished, with the words it meets and how well.
type Typed = (Vec<char>, bool, Arc<[(usize, f32)]>);

/// How many are remembered: more than the words and pairs of most queries.
const REMEMBERED: usize = 16;

impl Clone for Met {
    /// A copy of an index remembers nothing: it would come to the same.
    fn clone(&self) -> Self {
        Self::default()
    }
}

/// A found item.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Hit {
    /// The item's position.
    pub item: usize,
    /// How well it matches: 1000 for the very name, less for less.
    pub score: i32,
}

/// The longest query looked at, in characters: nobody types more about one thing, and work stays
/// bounded however much is pasted.
const LONGEST_QUERY: usize = 80;

/// Folds a text for comparing: expects canonical or compatibility decomposition (NFKD) done, and
/// removes case, accents and other marks, Arabic letter variants and punctuation. A word of one
/// Latin letter before an apostrophe is a word by itself, as in French "d'eau".
///
/// ```
/// assert_eq!(guide_data::fold("Café-Cup’s"), "cafe cups");
/// assert_eq!(guide_data::fold("Boîte d’œufs"), "boite d oeufs");
/// ```
#[must_use]
pub fn fold(nfkd: &str) -> String {
    fold_lower(nfkd.chars().flat_map(char::to_lowercase))
}

/// The same for a text that is in lower case already, as browsers put it by themselves: phones then
/// carry no table of cases.
#[must_use]
pub fn fold_lower(text: impl IntoIterator<Item = char>) -> String {
    let mut folded = String::new();
    for c in text {
        let c = match c {
            // Letters that carry their mark inside: no decomposition takes it off.
            'ı' => 'i',
            'ø' => 'o',
            'đ' => 'd',
            'ł' => 'l',
            // One letter, written otherwise at the end of a word.
            'ς' => 'σ',
            // A precomposed letter reaches us when a caller could not decompose.
            'á' | 'à' | 'â' | 'ã' | 'ä' => 'a',
            'é' | 'è' | 'ê' | 'ë' => 'e',
            'í' | 'ì' | 'î' | 'ï' => 'i',
            'ó' | 'ò' | 'ô' | 'õ' | 'ö' => 'o',
            'ú' | 'ù' | 'û' | 'ü' => 'u',
            'ñ' => 'n',
            'ç' => 'c',
            // Arabic: forms of alef, yeh, teh marbuta and hamza seats are one letter to a typist.
            'أ' | 'إ' | 'آ' | 'ٱ' => 'ا',
            'ى' | 'ئ' => 'ي',
            'ؤ' => 'و',
            'ة' => 'ه',
            // Devanagari: the nasal dot and the nasal moon are written for each other.
            'ँ' => 'ं',
            other => other,
        };
        if let 'œ' | 'Œ' | 'æ' | 'Æ' = c {
            // Two letters written as one, which keyboards do not have.
            folded.push_str(if matches!(c, 'œ' | 'Œ') { "oe" } else { "ae" });
            continue;
        }
        if is_mark(c) || is_nukta(c) || matches!(c, '\'' | '’' | '‘' | 'ʼ' | '´' | '`' | 'ـ' | 'ء') {
            if matches!(c, '\'' | '’') && ends_in_lone_letter(&folded) {
                folded.push(' ');
            }
            continue;
        }
        if c.is_alphanumeric() || is_virama(c) {
            folded.push(c);
        } else if !folded.is_empty() && !folded.ends_with(' ') {
            folded.push(' ');
        }
    }
    folded.truncate(folded.trim_end().len());
    folded
}

/// Whether the last word is one Latin letter: before an apostrophe, an article or the like that has
/// lost its vowel. What follows is the word people search by.
fn ends_in_lone_letter(folded: &str) -> bool {
    let last = folded.rsplit(' ').next().unwrap_or_default();
    last.len() == 1 && last.chars().all(|c| c.is_ascii_alphabetic())
}

/// Combining marks that decomposition leaves: Latin, Greek and Cyrillic accents, Arabic vowels.
/// Marks of Indic scripts are letters' parts and stay.
fn is_mark(c: char) -> bool {
    matches!(c, '\u{0300}'..='\u{036F}' | '\u{064B}'..='\u{065F}' | '\u{0670}' | '\u{20D0}'..='\u{20FF}')
}

/// The dot that turns a letter of an Indic script into one for a borrowed sound ("ज़" from "ज").
/// Many do not write it. The joiners between such letters are no more than a wish about shapes.
fn is_nukta(c: char) -> bool {
    matches!(c, '\u{093C}' | '\u{09BC}' | '\u{0A3C}' | '\u{0ABC}' | '\u{0B3C}' | '\u{0CBC}')
        || matches!(c, '\u{200C}' | '\u{200D}')
}

/// The sign of Indic scripts that a letter has no vowel. It stands inside words, so it must not part
/// them, although Unicode does not count it among the letters.
fn is_virama(c: char) -> bool {
    matches!(c, '\u{094D}' | '\u{09CD}' | '\u{0A4D}' | '\u{0ACD}' | '\u{0B4D}')
        || matches!(c, '\u{0BCD}' | '\u{0C4D}' | '\u{0CCD}' | '\u{0D4D}' | '\u{0DCA}')
}

fn words_of(folded: &str) -> Vec<Vec<char>> {
    let words = folded.split(' ').filter(|w| !w.is_empty()).map(|w| w.chars().collect::<Vec<char>>());
    words.map(without_article).collect()
}

/// Arabic writes its article on the word: with it or without it is the same word.
fn without_article(word: Vec<char>) -> Vec<char> {
    match word.strip_prefix(&['ا', 'ل'][..]) {
        Some(bare) if bare.len() >= 3 => bare.to_vec(),
        _ => word,
    }
}

/// A bit for each letter of a word: two words that differ in many bits differ in many letters, so
/// most comparisons end before they begin.
fn signs(letters: &[char]) -> u64 {
    letters.iter().fold(0, |sum, &c| sum | 1 << (u32::from(c) % 64))
}

/// The most words of a query that are looked at, and the most places of a name.
const MOST_WORDS: usize = 12;

/// How a word of the query, or two together, meets words of a name.
#[derive(Clone, Copy)]
struct Meeting {
    quality: f32,
    query: usize,
    query_words: usize,
    place: usize,
    name_words: usize,
}

impl SearchIndex {
    /// Builds an index from folded names: item, name, whether it is the item's own name, and how
    /// common the item is.
    pub fn build(entries: impl IntoIterator<Item = (usize, String, bool, u32)>) -> Self {
        let mut index = Self::default();
        let mut known = BTreeMap::new();
        for (item, folded, main, common) in entries {
            index.add(item, &folded, main, common, &mut known);
        }
        index.weigh();
        index
    }

    /// Adds a name. This and weighing stand apart from what gives the names, lest they be compiled for
    /// every giver.
    fn add(
        &mut self,
        item: usize,
        folded: &str,
        main: bool,
        common: u32,
        known: &mut BTreeMap<Vec<char>, usize>,
    ) {
        let words = words_of(folded);
        if words.is_empty() {
            return;
        }
        let name = self.names.len();
        let mut ids = Vec::with_capacity(words.len());
        for (place, word) in words.iter().enumerate().take(MOST_WORDS) {
            ids.push(self.word(word.clone(), (name, place, 1), known));
            if let Some(next) = words.get(place + 1) {
                let together = [word.as_slice(), next.as_slice()].concat();
                self.word(together, (name, place, 2), known);
            }
        }
        let joined = words.concat();
        let signs = signs(&joined);
        self.names.push(Name { item, main, common, words: ids, joined, signs });
    }

    /// Weighs every word by how many items it stands in.
    fn weigh(&mut self) {
        let items = self.names.iter().map(|n| n.item).max().map_or(1, |most| most + 1);
        // Which word each item was last counted for.
        let mut counted = vec![usize::MAX; items];
        for (at, word) in self.words.iter_mut().enumerate() {
            let mut of = 0;
            for name in word.places.iter().filter_map(|(name, ..)| self.names.get(*name)) {
                if let Some(counted) = counted.get_mut(name.item).filter(|counted| **counted != at) {
                    (*counted, of) = (at, of + 1);
                }
            }
            word.weight = telling(of, items);
        }
    }

    fn word(
        &mut self,
        letters: Vec<char>,
        (name, place, words): (usize, usize, u8),
        known: &mut BTreeMap<Vec<char>, usize>,
    ) -> usize {
        let place = (name, u8::try_from(place).unwrap_or(u8::MAX), words);
        if let Some(&at) = known.get(&letters) {
            if let Some(word) = self.words.get_mut(at) {
                word.places.push(place);
            }
            return at;
        }
        let at = self.words.len();
        known.insert(letters.clone(), at);
        self.words.push(Word { signs: signs(&letters), letters, weight: 1.0, places: vec![place] });
        at
    }

    /// The best matches for a folded query, best first, each item once.
    #[must_use]
    pub fn find(&self, query: &str, limit: usize) -> Vec<Hit> {
        let query: String = query.chars().take(LONGEST_QUERY).collect();
        let mut words: Vec<Vec<char>> = Vec::new();
        for word in words_of(&query) {
            if words.len() < MOST_WORDS && !words.contains(&word) {
                words.push(word);
            }
        }
        if words.is_empty() {
            return Vec::new();
        }
        let items = self.names.iter().map(|n| n.item).max().map_or(0, |most| most + 1);
        let mut best: Vec<Option<(i32, u32)>> = vec![None; items];
        let mut note = |name: &Name, score: i32| {
            // The item's own name is what will be shown: it wins over another name as good.
            let score = score + i32::from(name.main) * 16;
            if let Some(entry) = best.get_mut(name.item) {
                let (known, common) = entry.unwrap_or((score, name.common));
                *entry = Some((known.max(score), common));
            }
        };
        let joined = words.concat();
        let joined_signs = signs(&joined);
        for name in &self.names {
            if let Some(score) = score_joined(name, &joined, joined_signs) {
                note(name, score);
            }
        }
        let (weights, meetings) = self.meetings(&words);
        for (name, meetings) in self.names.iter().zip(meetings) {
            if !meetings.is_empty()
                && let Some(score) = self.score_words(name, &weights, meetings)
            {
                note(name, score);
            }
        }
        let mut hits: Vec<(Hit, u32)> = best
            .into_iter()
            .enumerate()
            .filter_map(|(item, best)| {
                let (score, common) = best?;
                let usual = i32::try_from(common.min(100)).unwrap_or(0) / 6;
                Some((Hit { item, score: score + usual }, common))
            })
            .collect();
        sort_by(&mut hits, |a, b| {
            b.0.score.cmp(&a.0.score).then(b.1.cmp(&a.1)).then(a.0.item.cmp(&b.0.item))
        });
        hits.truncate(limit);
        hits.into_iter().map(|(hit, _)| hit).collect()
    }

    /// How much each word of a query tells, and where it, or it and its neighbour together, meet
    /// words of names, by name.
    fn meetings(&self, query: &[Vec<char>]) -> (Vec<f32>, Vec<Vec<Meeting>>) {
        // A word that is met nowhere says little: it is a little word, or a brand.
        let unknown = |word: &Vec<char>| (0.0, if word.len() <= 3 { 0.15 } else { 0.3 });
        let mut told: Vec<(f32, f32)> = query.iter().map(unknown).collect();
        let mut found: Vec<Vec<Meeting>> = Vec::new();
        found.resize_with(self.names.len(), Vec::new);
        let last = query.len().saturating_sub(1);
        let single = query.iter().enumerate().map(|(at, w)| (at, 1, w.clone(), at == last));
        let pairs = query.windows(2).enumerate().map(|(at, w)| (at, 2, w.concat(), at + 1 == last));
        for (at, query_words, letters, unfinished) in single.chain(pairs) {
            for &(word, quality) in self.met_by(letters, unfinished).iter() {
                let Some(word) = self.words.get(word) else { continue };
                // It tells as much as the word that it most likely is.
                for best in told.iter_mut().skip(at).take(query_words) {
                    if quality > best.0 || (quality - best.0).abs() < 1e-6 && word.weight > best.1 {
                        *best = (quality, word.weight);
                    }
                }
                for &(name, place, name_words) in &word.places {
                    // Two words against two words are told by the words themselves.
                    if query_words == 2 && name_words == 2 {
                        continue;
                    }
                    let (place, name_words) = (usize::from(place), usize::from(name_words));
                    let meeting = Meeting { quality, query: at, query_words, place, name_words };
                    if let Some(met) = found.get_mut(name) {
                        met.push(meeting);
                    }
                }
            }
        }
        (told.into_iter().map(|(_, weight)| weight).collect(), found)
    }

    /// The words that a typed word meets, and how well.
    fn met_by(&self, letters: Vec<char>, unfinished: bool) -> Arc<[(usize, f32)]> {
        // A lock is poisoned only by a panic while it is held, and nothing here panics.
        let mut known = match self.met.0.lock() {
            Ok(known) => known,
            Err(poisoned) => poisoned.into_inner(),
        };
        if let Some((.., met)) = known.iter().find(|(l, u, _)| *u == unfinished && *l == letters) {
            return met.clone();
        }
        let own = signs(&letters);
        let words = self.words.iter().enumerate();
        let met: Arc<[(usize, f32)]> = words
            .filter_map(|(at, word)| Some((at, quality(&letters, own, word, unfinished)?)))
            .collect::<Vec<_>>()
            .into();
        if known.len() >= REMEMBERED {
            known.pop_front();
        }
        known.push_back((letters, unfinished, met.clone()));
        met
    }

    /// Compares word by word, in any order: how much of what was typed the name answers, and how
    /// much of the name was typed.
    fn score_words(&self, name: &Name, weights: &[f32], mut meetings: Vec<Meeting>) -> Option<i32> {
        sort_by(&mut meetings, |a, b| {
            let worth = |m: &Meeting| m.quality * if m.query_words + m.name_words > 2 { 1.05 } else { 1.0 };
            let order = worth(b).total_cmp(&worth(a)).then(a.query.cmp(&b.query)).then(a.place.cmp(&b.place));
            order.then(a.query_words.cmp(&b.query_words)).then(a.name_words.cmp(&b.name_words))
        });
        let mut typed = [None::<f32>; MOST_WORDS];
        let mut named = [false; MOST_WORDS];
        for m in meetings {
            let query_side = m.query..m.query + m.query_words;
            let name_side = m.place..m.place + m.name_words;
            let free = typed.get(query_side.clone())?.iter().all(Option::is_none)
                && named.get(name_side.clone()).is_some_and(|n| n.iter().all(|n| !n));
            if free {
                typed.get_mut(query_side)?.fill(Some(m.quality));
                named.get_mut(name_side)?.fill(true);
            }
        }
        let (mut met, mut asked) = (0.0_f32, 0.0_f32);
        for (weight, typed) in weights.iter().zip(&typed) {
            met += typed.unwrap_or(0.0) * weight;
            asked += weight;
        }
        let answered = met / asked.max(0.01);
        // A whole sentence holds words about anything; what it is about still has to be met.
        let least = match weights.len() {
            0 | 1 => 0.5,
            2 => 0.3,
            _ => 0.2,
        };
        let weight = |place: usize| {
            let word = name.words.get(place).and_then(|&w| self.words.get(w));
            word.map_or(0.5, |w| w.weight)
        };
        let (mut told, mut whole) = (0.0_f32, 0.0_f32);
        for place in 0..name.words.len().min(MOST_WORDS) {
            let weight = weight(place);
            whole += weight;
            told += if named.get(place) == Some(&true) { weight } else { 0.0 };
        }
        // An item's own name may list several things: "washer, dryer, stove".
        let covered = (told / whole.max(0.01)).max(if name.main { 0.8 } else { 0.0 });
        if answered < least {
            return None;
        }
        #[expect(clippy::cast_possible_truncation, reason = "between 0 and 1000")]
        let score = ((answered * 0.8 + covered * 0.2) * 880.0) as i32;
        Some(score)
    }
}

/// How much a word tells that stands in the names of so many of the items: 1 for one item, down to
/// a fifth for a word that is everywhere.
fn telling(items: usize, all: usize) -> f32 {
    #[expect(clippy::cast_precision_loss, reason = "there are few items")]
    let share = (items.max(1) as f64) / (all.max(2) as f64);
    let scale =
        libm::log(2.0 / share) / libm::log(2.0 * f64::from(u32::try_from(all.max(2)).unwrap_or(u32::MAX)));
    #[expect(clippy::cast_possible_truncation, reason = "between 0 and 1")]
    let scale = scale as f32;
    scale.clamp(0.2, 1.0)
}

/// Compares with all words written together.
fn score_joined(name: &Name, joined: &[char], own: u64) -> Option<i32> {
    if name.joined == joined {
        return Some(1000);
    }
    if joined.len() < 3 && joined.iter().all(char::is_ascii) {
        return None;
    }
    if let Some(score) = score_inside(name, joined) {
        return Some(score);
    }
    // Every letter that was typed has to be there, but for a slip or two.
    let absent = (own & !name.signs).count_ones();
    if absent > 4 {
        return None;
    }
    if absent == 0 {
        if name.joined.starts_with(joined) {
            return Some(900 - spare(name.joined.len() - joined.len()));
        }
        // Inside a name only where letters are dense with meaning, as in scripts without spaces, or
        // the query is long enough not to be there by chance.
        let dense = joined.len() >= 4 || joined.iter().any(|c| !c.is_ascii());
        if dense && name.joined.windows(joined.len()).any(|w| w == joined) {
            return Some(640 - spare(name.joined.len() - joined.len()));
        }
    }
    let cost = slips(joined, own, &name.joined, name.signs)?;
    Some(840 - i32::try_from(cost).unwrap_or(90) * 11)
}

/// Chinese puts no spaces between words, so "old battery" is typed as one: a name that stands whole
/// inside what was typed is met, better the more of it the name is. One sign alone is in too many
/// words to say anything.
fn score_inside(name: &Name, joined: &[char]) -> Option<i32> {
    let han = |c: &char| matches!(c, '\u{3400}'..='\u{9fff}' | '\u{20000}'..='\u{323af}');
    let letters = name.joined.len();
    if letters < 2 || letters >= joined.len() || !name.joined.iter().all(han) {
        return None;
    }
    if !joined.windows(letters).any(|w| w == name.joined) {
        return None;
    }
    #[expect(clippy::cast_possible_truncation, reason = "between 0 and 260")]
    let share = (260.0 * length(letters) / length(joined.len())) as i32;
    Some(560 + share)
}

/// How well a typed word meets a word of a name, 0 to 1; the last word of a query may be unfinished.
fn quality(typed: &[char], own: u64, word: &Word, unfinished: bool) -> Option<f32> {
    let candidate = word.letters.as_slice();
    if typed == candidate {
        return Some(1.0);
    }
    let absent = (own & !word.signs).count_ones();
    if absent > 3 {
        return None;
    }
    // Plurals of European languages, both ways.
    for ending in [&['s'][..], &['e', 's'][..]] {
        if typed.strip_suffix(ending) == Some(candidate) || candidate.strip_suffix(ending) == Some(typed) {
            return Some(0.98);
        }
    }
    if absent == 0 && candidate.starts_with(typed) && (unfinished || typed.len() >= 4) {
        return Some(0.92 - length(candidate.len() - typed.len()) * 0.02);
    }
    let relative = |cost: u32| length(usize::try_from(cost).unwrap_or(99)) / (10.0 * length(typed.len()));
    if let Some(cost) = slips(typed, own, candidate, word.signs) {
        return Some(0.9 - 0.9 * relative(cost));
    }
    // An unfinished word with a slip in it.
    if unfinished && typed.len() >= 4 && candidate.len() > typed.len() {
        let start = candidate.get(..typed.len())?;
        if let Some(cost) = slips(typed, own, start, signs(start)) {
            return Some(0.78 - 0.9 * relative(cost));
        }
    }
    // A part of a compound: "foil" in "tinfoil".
    if absent == 0 && typed.len() >= 4 && candidate.len() > typed.len() && candidate.ends_with(typed) {
        return Some(0.7);
    }
    None
}

#[expect(clippy::cast_precision_loss, reason = "words are short")]
fn length(letters: usize) -> f32 {
    letters.min(60) as f32
}

fn spare(letters: usize) -> i32 {
    i32::try_from(letters.min(30)).unwrap_or(30) * 4
}

/// What slips a word of some length is forgiven, in tenths of a letter: none in three letters. In
/// languages written with fewer signs one sign says more, and one slip is much.
fn forgiven(letters: usize) -> u32 {
    match letters {
        0..=3 => 0,
        4 => 12,
        5 => 16,
        6 | 7 => 22,
        _ => 28,
    }
}

/// Letters that are heard alike, so that people write one for the other: English and Spanish first.
fn alike(a: char, b: char) -> bool {
    matches!(
        (a.min(b), a.max(b)),
        ('c', 'k')
            | ('c', 's')
            | ('s', 'z')
            | ('c', 'z')
            | ('b', 'v')
            | ('i', 'y')
            | ('g', 'j')
            | ('h', 'j')
            | ('k', 'q')
            | ('c', 'q')
            | ('f', 'v')
            | ('d', 't')
            | ('m', 'n')
            | ('j', 'x')
            | ('u', 'w')
            | ('ت', 'ط')
            | ('س', 'ص')
            | ('د', 'ض')
            | ('ذ', 'ز')
            | ('د', 'ذ')
            | ('ت', 'ث')
            | ('ض', 'ظ')
            | ('ق', 'ك')
            | ('ا', 'ه')
    )
}

/// The least that one letter for another costs.
const LEAST_EXCHANGE: u32 = 7;

fn exchange(a: char, b: char) -> u32 {
    let vowel = |c: char| matches!(c, 'a' | 'e' | 'i' | 'o' | 'u' | 'y' | 'ا' | 'و' | 'ي');
    if alike(a, b) || (vowel(a) && vowel(b)) { LEAST_EXCHANGE } else { 12 }
}

/// The cost of the slips that lead from one word to the other, in tenths of a letter, or `None` when
/// it is more than forgiven: an edit distance with swaps of neighbours (optimal string alignment) in
/// which the slips people make most cost least: a letter doubled or not, a sound written otherwise.
/// The weights are a judgement, no source.
fn slips(a: &[char], a_signs: u64, b: &[char], b_signs: u64) -> Option<u32> {
    let limit = forgiven(a.len().min(b.len() + 1));
    let most = usize::try_from(limit / 5).unwrap_or(0);
    if limit == 0
        || a.len().abs_diff(b.len()) > most.min(3)
        || (a_signs ^ b_signs).count_ones() > limit / 5 + 1
    {
        return None;
    }
    // A first letter is seldom wrong.
    let first = match (a.first(), b.first(), a.get(1), b.get(1)) {
        (Some(&x), Some(&y), second, other)
            if x != y && exchange(x, y) > 7 && second != Some(&y) && other != Some(&x) =>
        {
            4
        }
        _ => 0,
    };
    let width = b.len() + 1;
    let step = |letters: &[char], at: usize| {
        let doubled = at > 0 && letters.get(at) == letters.get(at - 1);
        if doubled || letters.get(at) == Some(&'h') { 5 } else { 10 }
    };
    // Rows that live on the stack: this runs thousands of times at every letter that is typed.
    let mut rows = [[0_u32; LONGEST_QUERY + 8]; 3];
    if width > LONGEST_QUERY + 8 {
        return None;
    }
    let [earlier, last, row] = &mut rows;
    let (mut earlier, mut last, mut row) = (earlier, last, row);
    let value = |row: &[u32], at: usize| row.get(at).copied().unwrap_or(9_999);
    let mut sum = 0;
    for at in 0..b.len() {
        sum += step(b, at);
        if let Some(cell) = last.get_mut(at + 1) {
            *cell = sum;
        }
    }
    // A letter more or less costs five at least, so a way that strays farther from the diagonal costs more than
    // is forgiven: those cells need not be looked at.
    for (i, &x) in a.iter().enumerate() {
        let (from, to) = ((i + 1).saturating_sub(most), (i + 1 + most).min(b.len()));
        let mut least = 9_999;
        let set = |row: &mut [u32], at: usize, cost: u32| {
            if let Some(cell) = row.get_mut(at) {
                *cell = cost;
            }
        };
        let own = step(a, i);
        match from.checked_sub(1) {
            Some(outside) => set(row, outside, 9_999),
            None => {
                least = value(last, 0) + own;
                set(row, 0, least);
            }
        }
        for at in from.max(1)..=to {
            let j = at - 1;
            let Some(&y) = b.get(j) else { break };
            let mut cost = (value(last, at) + own).min(value(row, j) + step(b, j));
            let before = value(last, j);
            if x == y {
                cost = cost.min(before);
            } else if before + LEAST_EXCHANGE < cost {
                cost = cost.min(before + exchange(x, y));
            }
            if i > 0 && j > 0 && x != y && a.get(i - 1) == Some(&y) && b.get(j - 1) == Some(&x) {
                cost = cost.min(value(earlier, j - 1) + 8);
            }
            least = least.min(cost);
            set(row, at, cost);
        }
        set(row, to + 1, 9_999);
        if least > limit {
            return None;
        }
        std::mem::swap(&mut earlier, &mut last);
        std::mem::swap(&mut last, &mut row);
    }
    Some(value(last, b.len()) + first).filter(|&cost| cost <= limit)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn first(names: &[&str], query: &str) -> Option<usize> {
        let index = SearchIndex::build(names.iter().enumerate().map(|(i, n)| (i, fold(n), true, 10)));
        index.find(&fold(query), 3).first().map(|h| h.item)
    }

    /// The same distance, every cell looked at.
    fn slips_in_full(a: &[char], b: &[char]) -> u32 {
        let step = |letters: &[char], at: usize| {
            let doubled = at > 0 && letters[at] == letters[at - 1];
            if doubled || letters[at] == 'h' { 5 } else { 10 }
        };
        let mut cost = vec![vec![0; b.len() + 1]; a.len() + 1];
        for i in 0..=a.len() {
            for j in 0..=b.len() {
                let mut ways = Vec::new();
                if i > 0 {
                    ways.push(cost[i - 1][j] + step(a, i - 1));
                }
                if j > 0 {
                    ways.push(cost[i][j - 1] + step(b, j - 1));
                }
                if i > 0 && j > 0 {
                    let (x, y) = (a[i - 1], b[j - 1]);
                    ways.push(cost[i - 1][j - 1] + if x == y { 0 } else { exchange(x, y) });
                    if i > 1 && j > 1 && x != y && a[i - 2] == y && b[j - 2] == x {
                        ways.push(cost[i - 2][j - 2] + 8);
                    }
                }
                cost[i][j] = ways.into_iter().min().unwrap_or(0);
            }
        }
        cost[a.len()][b.len()]
    }

    #[test]
    fn cells_that_are_left_out_change_no_distance() {
        let mut state = 0x5EED_u64;
        let mut roll = |sides: u64| {
            state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            (state >> 33) % sides
        };
        let letters = ['a', 'e', 'c', 'k', 's', 'h', 't', 'd'];
        let mut forgiven_some = 0;
        for _ in 0..40_000 {
            let letter = |roll: &mut dyn FnMut(u64) -> u64| letters[usize::try_from(roll(8)).unwrap()];
            let mut a: Vec<char> = (0..12).map(|_| letter(&mut roll)).collect();
            let mut b = a.clone();
            let edits = roll(5);
            a.truncate(usize::try_from(4 + roll(9)).unwrap());
            b.truncate(a.len());
            for _ in 0..edits {
                let at = usize::try_from(roll(u64::try_from(b.len()).unwrap())).unwrap();
                match roll(4) {
                    0 if b.len() > 2 => drop(b.remove(at)),
                    1 => b.insert(at, letters[usize::try_from(roll(8)).unwrap()]),
                    2 if at > 0 => b.swap(at, at - 1),
                    _ => b[at] = letters[usize::try_from(roll(8)).unwrap()],
                }
            }
            let whole = slips_in_full(&a, &b);
            let found = slips(&a, signs(&a), &b, signs(&b));
            // What is forgiven is found, unless the words were set apart before any cell was looked at.
            let limit = forgiven(a.len().min(b.len() + 1));
            let most = usize::try_from(limit / 5).unwrap().min(3);
            let compared =
                a.len().abs_diff(b.len()) <= most && (signs(&a) ^ signs(&b)).count_ones() <= limit / 5 + 1;
            assert!(found.is_some() || !compared || limit == 0 || whole + 4 > limit, "{a:?} {b:?}: {whole}");
            if let Some(cost) = found {
                assert!(cost == whole || cost == whole + 4, "{a:?} {b:?}: {cost} for {whole}");
                forgiven_some += usize::from(cost > 0);
            }
        }
        assert!(forgiven_some > 5_000, "{forgiven_some} pairs say little");
    }

    #[test]
    fn people_type_as_they_do() {
        let names = ["Milk jug", "Pizza box", "Aluminium foil", "Cereal box", "Glass jar", "Egg carton"];
        for (query, expected) in [
            ("pizza", Some(1)),
            ("piza box", Some(1)),
            ("box pizza", Some(1)),
            ("pizzabox", Some(1)),
            ("pizza boxes", Some(1)),
            ("aluminum foil", Some(2)),
            ("aluminium fiol", Some(2)),
            ("foil", Some(2)),
            ("ceral", Some(3)),
            ("milk", Some(0)),
            ("mlik jug", Some(0)),
            ("eggs carton", Some(5)),
            ("zzzz", None),
            ("nobrandx foil", Some(2)),
            ("", None),
        ] {
            assert_eq!(first(&names, query), expected, "{query}");
        }
    }

    #[test]
    fn scripts_and_marks_do_not_matter() {
        let names = ["علبة معدنية", "塑料瓶", "Botella de plástico", "Café"];
        assert_eq!(first(&names, "علبه"), Some(0));
        assert_eq!(first(&names, "料瓶"), Some(1));
        assert_eq!(first(&names, "botella plastico"), Some(2));
        assert_eq!(first(&names, "cafe"), Some(3));
    }

    #[test]
    fn chinese_words_are_found_inside_what_was_typed() {
        let names = ["电池", "汽车电池", "水瓶", "灯", "纸"];
        assert_eq!(first(&names, "废电池"), Some(0));
        assert_eq!(first(&names, "旧汽车电池"), Some(1));
        assert_eq!(first(&names, "一个空水瓶"), Some(2));
        // One sign alone stands in too many words.
        assert_eq!(first(&names, "壁纸刀"), None);
    }

    #[test]
    fn words_of_indic_scripts_stay_whole() {
        // "प्लास्टिक" holds two viramas; the nukta of "ज़" comes apart or in one character, or not at all.
        assert_eq!(fold("प्लास्टिक की थैली"), "प्लास्टिक की थैली");
        assert_eq!(fold("पिज\u{093C}्ज\u{093C}ा"), fold("पिज्जा"));
        assert_eq!(fold("काँच"), fold("कांच"));
        let names = ["प्लास्टिक की थैली", "लास्ट टिक", "गत्ते का डिब्बा"];
        assert_eq!(first(&names, "प्लास्टिक"), Some(0));
        assert_eq!(first(&names, "डिब्बा"), Some(2));
        assert_eq!(first(&names, "डब्बा"), Some(2));
    }

    #[test]
    fn a_pasted_book_is_cut_short() {
        let long = "glass ".repeat(2000);
        assert_eq!(first(&["Glass jar"], &long), Some(0));
        assert_eq!(first(&["Glass jar"], &format!("glass jar{}", " ".repeat(10_000))), Some(0));
    }

    #[test]
    fn a_letter_more_finds_the_same_as_typing_anew() {
        let names = ["Milk jug", "Pizza box", "Aluminium foil", "Cereal box", "Glass jar", "Egg carton"];
        let index = || SearchIndex::build(names.iter().enumerate().map(|(i, n)| (i, fold(n), true, 10)));
        let typing = index();
        for whole in ["egg carton box piza", "aluminum foil glass jar milk cereal box egg carton jug pizza"] {
            for end in 1..=whole.len() {
                let query = &whole[..end];
                assert_eq!(typing.find(query, 10), index().find(query, 10), "{query}");
            }
        }
    }

    #[test]
    fn slips_cost_what_people_pay_for_them() {
        let chars = |s: &str| s.chars().collect::<Vec<_>>();
        let cost = |a: &str, b: &str| slips(&chars(a), signs(&chars(a)), &chars(b), signs(&chars(b)));
        for (a, b, expected) in [
            ("bottle", "bottle", Some(0)),
            // A letter not doubled, neighbours swapped, a sound written otherwise, a letter lost.
            ("botle", "bottle", Some(5)),
            ("bottel", "bottle", Some(8)),
            ("kan opener", "can opener", Some(7)),
            ("battry", "battery", Some(10)),
            ("jra", "jar", None),
            ("abcdef", "ghijkl", None),
        ] {
            assert_eq!(cost(a, b), expected, "{a} {b}");
        }
    }

    #[test]
    fn a_word_behind_an_elided_article_is_found_by_itself() {
        let names = ["Bidon d'essence", "Boîte d’œufs", "Bottle"];
        assert_eq!(first(&names, "essence"), Some(0));
        assert_eq!(first(&names, "oeufs"), Some(1));
        assert_eq!(first(&names, "boite doeufs"), Some(1));
        assert_eq!(fold("Aujourd’hui l’été"), "aujourdhui l ete");
    }

    #[test]
    fn words_apart_or_together_are_the_same_words() {
        let names = ["Old newspaper", "Light bulb", "Cardboard box", "Paper towel", "Paper bowl"];
        assert_eq!(first(&names, "news paper"), Some(0));
        assert_eq!(first(&names, "lightbulb"), Some(1));
        assert_eq!(first(&names, "card board"), Some(2));
        assert_eq!(first(&names, "paper towl"), Some(3));
    }
}
