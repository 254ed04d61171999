//! Scripts that have fonts of their own: which characters belong to them, and which languages write them.

/// A script whose letters the common font does not have.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Script {
    /// Arabic.
    Arabic,
    /// Devanagari: Hindi.
    Devanagari,
    /// Han characters and their punctuation, in the forms of Simplified Chinese.
    Han,
    /// Hangul: Korean.
    Hangul,
}

impl Script {
    /// The script of a character, by its block (Unicode's Blocks.txt); none for what the common font has.
    pub(crate) fn of(c: char) -> Option<Self> {
        match c {
            // Arabic, its Supplement, Extended-B and -A, Presentation Forms-A and -B.
            '\u{600}'..='\u{6FF}'
            | '\u{750}'..='\u{77F}'
            | '\u{870}'..='\u{8FF}'
            | '\u{FB50}'..='\u{FDFF}'
            | '\u{FE70}'..='\u{FEFE}' => Some(Self::Arabic),
            // Devanagari and its Extended.
            '\u{900}'..='\u{97F}' | '\u{A8E0}'..='\u{A8FF}' => Some(Self::Devanagari),
            // Jamo, Compatibility Jamo, Jamo Extended-A, Syllables with Extended-B.
            '\u{1100}'..='\u{11FF}'
            | '\u{3130}'..='\u{318F}'
            | '\u{A960}'..='\u{A97F}'
            | '\u{AC00}'..='\u{D7FF}' => Some(Self::Hangul),
            // Enclosed Alphanumerics, CJK Symbols and Punctuation, Enclosed CJK Letters, Unified Ideographs with
            // Extension A, Compatibility Ideographs and Forms, Halfwidth and Fullwidth Forms, planes 2 and 3.
            '\u{2460}'..='\u{24FF}'
            | '\u{3000}'..='\u{303F}'
            | '\u{3200}'..='\u{33FF}'
            | '\u{3400}'..='\u{9FFF}'
            | '\u{F900}'..='\u{FAFF}'
            | '\u{FE30}'..='\u{FE4F}'
            | '\u{FF00}'..='\u{FFEF}'
            | '\u{20000}'..='\u{3FFFF}' => Some(Self::Han),
            _ => None,
        }
    }

    /// The script of a language (BCP 47) for which characters that several scripts share are drawn in its own
    /// font: quotation marks of Chinese fill a square, those of Latin do not.
    pub(crate) fn of_language(lang: &str) -> Option<Self> {
        match lang.split('-').next().unwrap_or_default() {
            "zh" => Some(Self::Han),
            "ko" => Some(Self::Hangul),
            "ar" | "fa" | "ur" => Some(Self::Arabic),
            "hi" | "mr" | "ne" => Some(Self::Devanagari),
            _ => None,
        }
    }

    /// A letter that a font for the script has.
    pub(crate) const fn sample(self) -> char {
        match self {
            Self::Arabic => '\u{628}',
            Self::Devanagari => '\u{915}',
            Self::Han => '\u{4E00}',
            Self::Hangul => '\u{AC00}',
        }
    }

    pub(crate) const ALL: [Self; 4] = [Self::Arabic, Self::Devanagari, Self::Han, Self::Hangul];
}

/// A syllable for letters of Hangul that stand one by one, as some keyboards and file systems write them; everything
/// else as it is. The arithmetic is Unicode's (core specification, 3.12, "Hangul Syllable Composition").
pub(crate) fn compose_hangul(text: &str) -> String {
    const SYLLABLE: u32 = 0xAC00;
    const LEADING: u32 = 0x1100;
    const VOWEL: u32 = 0x1161;
    // One before the first trailing letter: a syllable without one counts as 0.
    const TRAILING: u32 = 0x11A7;
    const VOWELS: u32 = 21;
    const TRAILINGS: u32 = 28;
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        let joined = out.chars().next_back().and_then(|before| {
            let (before, code) = (u32::from(before), u32::from(c));
            if (LEADING..LEADING + 19).contains(&before) && (VOWEL..VOWEL + VOWELS).contains(&code) {
                return char::from_u32(SYLLABLE + ((before - LEADING) * VOWELS + (code - VOWEL)) * TRAILINGS);
            }
            let open = (SYLLABLE..SYLLABLE + 11_172).contains(&before)
                && (before - SYLLABLE).is_multiple_of(TRAILINGS);
            if open && (TRAILING + 1..TRAILING + TRAILINGS).contains(&code) {
                return char::from_u32(before + (code - TRAILING));
            }
            None
        });
        match joined {
            Some(syllable) => {
                out.pop();
                out.push(syllable);
            }
            None => out.push(c),
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hangul_letters_are_joined_to_syllables() {
        // "한글" as NFD and as NFC (Unicode core specification, 3.12, gives U+D55C as the sum of its letters).
        assert_eq!(compose_hangul("\u{1112}\u{1161}\u{11AB}\u{1100}\u{1173}\u{11AF}"), "\u{D55C}\u{AE00}");
        assert_eq!(compose_hangul("\u{AC00}\u{11A8}"), "\u{AC01}");
        assert_eq!(compose_hangul("\u{AC01}\u{11A8}"), "\u{AC01}\u{11A8}");
        assert_eq!(compose_hangul("e\u{301} 한"), "e\u{301} 한");
    }

    #[test]
    fn letters_belong_to_scripts() {
        for script in Script::ALL {
            assert_eq!(Script::of(script.sample()), Some(script));
        }
        for c in ['a', 'ñ', 'ệ', 'Ж', '1', '“', '—', ' '] {
            assert_eq!(Script::of(c), None, "{c}");
        }
        assert_eq!(Script::of('，'), Some(Script::Han));
        assert_eq!(Script::of('।'), Some(Script::Devanagari));
    }
}
