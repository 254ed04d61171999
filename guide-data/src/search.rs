//! Finding items by what people type: names, other names, misspellings, words in any order,
//! compound words written apart or together, any script.

use std::collections::BTreeMap;

/// A name in the index, folded and cut into words.
#[derive(Debug, Clone)]
struct Name {
    item: usize,
    /// The item's own name, not another name for it.
    main: bool,
    common: u32,
    words: Vec<Vec<char>>,
    /// All words written together, for compounds and scripts without spaces.
    joined: Vec<char>,
}

/// An index of names in one or several languages.
#[derive(Debug, Clone, Default)]
pub struct SearchIndex {
    names: Vec<Name>,
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
/// removes case, accents and other marks, Arabic letter variants and punctuation.
///
/// ```
/// assert_eq!(guide_data::fold("Café-Cup’s"), "cafe cups");
/// ```
#[must_use]
pub fn fold(nfkd: &str) -> String {
    let mut folded = String::with_capacity(nfkd.len());
    for c in nfkd.chars() {
        let c = match c {
            // Letters that carry their mark inside: no decomposition takes it off.
            'ı' => 'i',
            'ø' | 'Ø' => 'o',
            'đ' | 'Đ' => 'd',
            'ł' | 'Ł' => 'l',
            // A precomposed letter reaches us when a caller could not decompose.
            'á' | 'à' | 'â' | 'ã' | 'ä' | 'Á' => 'a',
            'é' | 'è' | 'ê' | 'ë' | 'É' => 'e',
            'í' | 'ì' | 'î' | 'ï' | 'Í' => 'i',
            'ó' | 'ò' | 'ô' | 'õ' | 'ö' | 'Ó' => 'o',
            'ú' | 'ù' | 'û' | 'ü' | 'Ú' => 'u',
            'ñ' | 'Ñ' => 'n',
            'ç' | 'Ç' => 'c',
            // Arabic: forms of alef, yeh, teh marbuta and hamza seats are one letter to a typist.
            'أ' | 'إ' | 'آ' | 'ٱ' => 'ا',
            'ى' | 'ئ' => 'ي',
            'ؤ' => 'و',
            'ة' => 'ه',
            other => other,
        };
        if is_mark(c) || matches!(c, '\'' | '’' | '‘' | 'ʼ' | '´' | '`' | 'ـ' | 'ء') {
            continue;
        }
        if c.is_alphanumeric() {
            folded.extend(c.to_lowercase());
        } else if !folded.is_empty() && !folded.ends_with(' ') {
            folded.push(' ');
        }
    }
    folded.truncate(folded.trim_end().len());
    folded
}

/// Combining marks that decomposition leaves: Latin, Greek and Cyrillic accents, Arabic vowels.
/// Marks of Indic scripts are letters' parts and stay.
fn is_mark(c: char) -> bool {
    matches!(c, '\u{0300}'..='\u{036F}' | '\u{064B}'..='\u{065F}' | '\u{0670}' | '\u{20D0}'..='\u{20FF}')
}

fn words_of(folded: &str) -> Vec<Vec<char>> {
    folded.split(' ').filter(|w| !w.is_empty()).map(|w| w.chars().collect()).collect()
}

impl SearchIndex {
    /// Builds an index from folded names: item, name, whether it is the item's own name, and how
    /// common the item is.
    pub fn build(entries: impl IntoIterator<Item = (usize, String, bool, u32)>) -> Self {
        let names = entries
            .into_iter()
            .map(|(item, folded, main, common)| {
                let words = words_of(&folded);
                Name { item, main, common, joined: words.concat(), words }
            })
            .filter(|n| !n.words.is_empty())
            .collect();
        Self { names }
    }

    /// The best matches for a folded query, best first, each item once.
    #[must_use]
    pub fn find(&self, query: &str, limit: usize) -> Vec<Hit> {
        let query: String = query.chars().take(LONGEST_QUERY).collect();
        let words = words_of(&query);
        if words.is_empty() {
            return Vec::new();
        }
        let hits = self.rank(&words, limit, false);
        // A word that names nothing here, a brand perhaps, is passed over rather than answered
        // with nothing; what the other words find is better than an empty page.
        if hits.is_empty() && words.len() > 1 { self.rank(&words, limit, true) } else { hits }
    }

    fn rank(&self, words: &[Vec<char>], limit: usize, lenient: bool) -> Vec<Hit> {
        let joined = words.concat();
        let mut best: BTreeMap<usize, (i32, u32)> = BTreeMap::new();
        for name in &self.names {
            let Some(score) = score(name, words, &joined, lenient) else { continue };
            // The item's own name is what will be shown: it wins over another name as good.
            let score = score + i32::from(name.main) * 6;
            let entry = best.entry(name.item).or_insert((score, name.common));
            entry.0 = entry.0.max(score);
        }
        let mut hits: Vec<(Hit, u32)> = best
            .into_iter()
            .map(|(item, (score, common))| {
                let usual = i32::try_from(common.min(100)).unwrap_or(0) / 4;
                (Hit { item, score: score + usual }, common)
            })
            .collect();
        hits.sort_by(|a, b| b.0.score.cmp(&a.0.score).then(b.1.cmp(&a.1)).then(a.0.item.cmp(&b.0.item)));
        hits.truncate(limit);
        hits.into_iter().map(|(hit, _)| hit).collect()
    }
}

/// How well a name answers a query, 0 to 1000; `None` when it does not.
fn score(name: &Name, query: &[Vec<char>], joined: &[char], lenient: bool) -> Option<i32> {
    let together = score_joined(name, joined);
    let apart = score_words(name, query, lenient);
    together.max(apart)
}

/// Compares with all words written together.
fn score_joined(name: &Name, joined: &[char]) -> Option<i32> {
    if name.joined == joined {
        return Some(1000);
    }
    if joined.len() < 3 && joined.iter().all(char::is_ascii) {
        return None;
    }
    if name.joined.starts_with(joined) {
        return Some(900 - spare(name.joined.len() - joined.len()));
    }
    // Inside a name only where letters are dense with meaning, as in scripts without spaces, or
    // the query is long enough not to be there by chance.
    let inside = name.joined.windows(joined.len()).any(|w| w == joined);
    if inside && (joined.len() >= 4 || joined.iter().any(|c| !c.is_ascii())) {
        return Some(640 - spare(name.joined.len() - joined.len()));
    }
    let allowed = allowed_typos(joined.len());
    let typos = edits(joined, &name.joined, allowed)?;
    Some(820 - 110 * i32::try_from(typos).unwrap_or(9))
}

/// Compares word by word: every word of the query must be met, in any order.
fn score_words(name: &Name, query: &[Vec<char>], lenient: bool) -> Option<i32> {
    let mut used = vec![false; name.words.len()];
    let mut sum = 0;
    let mut missed = 0;
    for (position, word) in query.iter().enumerate() {
        let last = position + 1 == query.len();
        let best = name
            .words
            .iter()
            .enumerate()
            .filter(|(at, _)| !used.get(*at).copied().unwrap_or(true))
            .filter_map(|(at, candidate)| word_score(word, candidate, last).map(|s| (s, at)))
            .max_by_key(|&(s, at)| (s, usize::MAX - at));
        match best {
            Some((s, at)) => {
                sum += s;
                if let Some(mark) = used.get_mut(at) {
                    *mark = true;
                }
            }
            None => missed += 1,
        }
    }
    let count = i32::try_from(query.len()).unwrap_or(1);
    // One word too many is forgiven when at least two others are met: "old broken glass jar".
    if sum == 0 || (!lenient && (missed > 1 || (missed == 1 && count < 3))) {
        return None;
    }
    let unmet = used.iter().filter(|u| !**u).count();
    Some(sum / count - missed * 150 - spare(unmet * 4))
}

/// How well one word meets another: the last word of a query may be unfinished.
fn word_score(word: &[char], candidate: &[char], unfinished: bool) -> Option<i32> {
    if word == candidate {
        return Some(880);
    }
    // Plurals of European languages, both ways.
    for ending in [&['s'][..], &['e', 's'][..]] {
        if word.strip_suffix(ending) == Some(candidate) || candidate.strip_suffix(ending) == Some(word) {
            return Some(860);
        }
    }
    if candidate.starts_with(word) && (unfinished || word.len() >= 4) {
        return Some(800 - spare(candidate.len() - word.len()));
    }
    let allowed = allowed_typos(word.len());
    if let Some(typos) = edits(word, candidate, allowed) {
        return Some(720 - 110 * i32::try_from(typos).unwrap_or(9));
    }
    // An unfinished word with a slip in it.
    if unfinished && word.len() >= 4 && candidate.len() > word.len() {
        let start = candidate.get(..word.len())?;
        if let Some(typos) = edits(word, start, allowed) {
            return Some(640 - 110 * i32::try_from(typos).unwrap_or(9));
        }
    }
    // A part of a compound: "foil" in "tinfoil".
    if word.len() >= 4 && candidate.len() > word.len() && candidate.ends_with(word) {
        return Some(600);
    }
    None
}

fn spare(letters: usize) -> i32 {
    i32::try_from(letters.min(30)).unwrap_or(30) * 4
}

/// How many slips a word of some length is forgiven: none in three letters, one up to six, two
/// above. In languages written with fewer signs one sign says more, and one slip is much.
fn allowed_typos(letters: usize) -> usize {
    match letters {
        0..=3 => 0,
        4..=6 => 1,
        _ => 2,
    }
}

/// The edit distance of two words with swaps of neighbours (optimal string alignment), or `None`
/// when it is above a limit. Rows are cut to the band that can stay below it.
fn edits(a: &[char], b: &[char], limit: usize) -> Option<usize> {
    if a.len().abs_diff(b.len()) > limit {
        return None;
    }
    if limit == 0 {
        return (a == b).then_some(0);
    }
    let width = b.len() + 1;
    let mut before: Vec<usize> = vec![0; width];
    let mut last: Vec<usize> = (0..width).collect();
    let mut earlier: Option<char> = None;
    for (i, &x) in a.iter().enumerate() {
        let mut row = Vec::with_capacity(width);
        row.push(i + 1);
        let mut least = i + 1;
        let mut previous: Option<char> = None;
        for (j, &y) in b.iter().enumerate() {
            let up = last.get(j + 1).copied().unwrap_or(usize::MAX - 9) + 1;
            let left = row.last().copied().unwrap_or(usize::MAX - 9) + 1;
            let diagonal = last.get(j).copied().unwrap_or(usize::MAX - 9) + usize::from(x != y);
            let mut cost = up.min(left).min(diagonal);
            if earlier == Some(y) && previous == Some(x) && j > 0 {
                cost = cost.min(before.get(j - 1).copied().unwrap_or(usize::MAX - 9) + 1);
            }
            least = least.min(cost);
            row.push(cost);
            previous = Some(y);
        }
        if least > limit {
            return None;
        }
        before = std::mem::replace(&mut last, row);
        earlier = Some(x);
    }
    last.last().copied().filter(|&d| d <= limit)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn first(names: &[&str], query: &str) -> Option<usize> {
        let index = SearchIndex::build(names.iter().enumerate().map(|(i, n)| (i, fold(n), true, 10)));
        index.find(&fold(query), 3).first().map(|h| h.item)
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
    fn a_pasted_book_is_cut_short() {
        let long = "glass ".repeat(2000);
        assert_eq!(first(&["Glass jar"], &long), Some(0));
        assert_eq!(first(&["Glass jar"], &format!("glass jar{}", " ".repeat(10_000))), Some(0));
    }

    #[test]
    fn edits_count_swaps_once() {
        let chars = |s: &str| s.chars().collect::<Vec<_>>();
        for (a, b, limit, expected) in [
            ("bottle", "bottle", 2, Some(0)),
            ("botle", "bottle", 2, Some(1)),
            ("bottel", "bottle", 2, Some(1)),
            ("battery", "batery", 2, Some(1)),
            ("jar", "car", 0, None),
            ("abcdef", "ghijkl", 2, None),
        ] {
            assert_eq!(edits(&chars(a), &chars(b), limit), expected, "{a} {b}");
        }
    }
}
