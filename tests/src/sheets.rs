//! The list of the sheets that are judged from outside: one for every test that puts a question to all of them.
//!
//! Every form of sheet is there in every language of the demo, alone or among others; the forms that differ in what is
//! on them ([`ALONE`]) have each language alone.

use std::fmt;

/// A form in which sheets are printed: a kind in a size, and what is known of it beforehand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Form {
    /// The command line's word for the kind.
    pub kind: &'static str,
    /// What else the command line is told.
    pub options: &'static [&'static str],
    /// Width and height once it is cut, in points.
    pub finished: (f64, f64),
    /// How many QR codes each of its pages has.
    pub codes: &'static [usize],
}

/// Points in a millimetre: an inch is 72 points and 25.4 mm.
const MM: f64 = 72.0 / 25.4;

/// A4 and A5 are 210 by 297 and 148 by 210 mm (ISO 216, from memory).
const A4: (f64, f64) = (210.0 * MM, 297.0 * MM);
const A5: (f64, f64) = (148.0 * MM, 210.0 * MM);
/// 8.5 by 11 in (from memory).
const LETTER: (f64, f64) = (612.0, 792.0);

const fn form(kind: &'static str, finished: (f64, f64), codes: &'static [usize]) -> Form {
    Form { kind, options: &[], finished, codes }
}

const fn with(form: Form, options: &'static [&'static str]) -> Form {
    Form { options, ..form }
}

/// The lid's label, 7 by 9 in.
pub const LID: Form = form("lid", (7.0 * 72.0, 9.0 * 72.0), &[1]);
/// The larger label, 8 by 12 in.
pub const LID_LARGE: Form = with(form("lid", (8.0 * 72.0, 12.0 * 72.0), &[1]), &["--size", "8x12in"]);
/// The label on A4.
pub const LID_A4: Form = with(form("lid", A4, &[1]), &["--size", "a4"]);
/// The label on A5.
pub const LID_A5: Form = with(form("lid", A5, &[1]), &["--size", "a5"]);
/// The round label of one message, 115 mm across.
pub const STICKER: Form =
    with(form("sticker", (115.0 * MM, 115.0 * MM), &[1]), &["--item", "lithium-battery"]);
/// The sign, 18 by 24 in.
pub const SIGN: Form = form("sign", (18.0 * 72.0, 24.0 * 72.0), &[1]);
/// The postcard, 9 by 6 in: advice, and the post's side.
pub const POSTCARD: Form = form("postcard", (9.0 * 72.0, 6.0 * 72.0), &[1, 1]);
/// The letter folded once. Its outer side has the cover and the address, each with the code; the address panel of the
/// letter folded twice is too low for one.
pub const MAILER: Form = form("self-mailer", LETTER, &[2, 1]);
/// The letter folded twice. Its outer side has the hazards, which are read before what is inside.
pub const MAILER_THIRDS: Form = with(form("self-mailer", LETTER, &[1, 1]), &["--fold", "thirds"]);
/// The letter on A4.
pub const MAILER_A4: Form = with(form("self-mailer", A4, &[2, 1]), &["--size", "a4"]);
/// The handout; its code ends what it says.
pub const HANDOUT: Form = form("handout", LETTER, &[0, 1]);
/// The handout on A4.
pub const HANDOUT_A4: Form = with(form("handout", A4, &[0, 1]), &["--size", "a4"]);

/// The demo's languages.
pub const LANGUAGES: [&str; 12] =
    ["en", "es", "zh-Hans", "vi", "ko", "ar", "ru", "fr", "ht", "pt-BR", "fil", "hi"];

/// The forms that each language has alone.
pub const ALONE: [Form; 6] = [LID, STICKER, SIGN, POSTCARD, MAILER, HANDOUT];

/// Languages together: two, three and four, each script first and last somewhere.
const TOGETHER: &[(Form, &[&str])] = &[
    (LID, &["en", "es"]),
    (LID, &["en", "es", "ar"]),
    // Two with one word for the title.
    (LID, &["en", "fil"]),
    (LID, &["ar", "zh-Hans", "ko"]),
    (LID, &["hi", "vi", "ru"]),
    (LID, &["zh-Hans", "ko", "en", "ar"]),
    (STICKER, &["en", "es"]),
    (STICKER, &["ar", "hi"]),
    (STICKER, &["ko", "zh-Hans"]),
    (SIGN, &["en", "es", "ar"]),
    (SIGN, &["ar", "ru"]),
    (SIGN, &["zh-Hans", "ko", "en", "hi"]),
    (POSTCARD, &["en", "es"]),
    (POSTCARD, &["ar", "en"]),
    (POSTCARD, &["en", "es", "ar"]),
    (POSTCARD, &["hi", "ko", "zh-Hans"]),
    (POSTCARD, &["en", "zh-Hans", "ko", "ar"]),
    (MAILER, &["en", "es"]),
    (MAILER, &["ar", "en"]),
    (MAILER, &["zh-Hans", "vi", "ru"]),
    (MAILER, &["en", "hi", "ko", "ar"]),
    (HANDOUT, &["en", "es", "ar"]),
    (HANDOUT, &["ar", "vi"]),
    (HANDOUT, &["ru", "zh-Hans", "ko", "hi"]),
    // The other sizes of a form: the twelve languages among four sheets.
    (LID_LARGE, &["en", "es", "ar", "zh-Hans"]),
    (LID_LARGE, &["vi", "ko", "hi"]),
    (LID_LARGE, &["ru", "fr", "ht"]),
    (LID_LARGE, &["pt-BR", "fil"]),
    (LID_A4, &["ar", "en", "hi", "ko"]),
    (LID_A4, &["zh-Hans", "es", "vi"]),
    (LID_A4, &["fr", "ru", "ht"]),
    (LID_A4, &["fil", "pt-BR"]),
    (LID_A5, &["en"]),
    (LID_A5, &["es", "zh-Hans"]),
    (LID_A5, &["vi", "ko"]),
    (LID_A5, &["ar", "fr"]),
    (LID_A5, &["ru"]),
    (LID_A5, &["ht", "pt-BR"]),
    (LID_A5, &["hi", "fil"]),
    (MAILER_THIRDS, &["en", "es", "ar"]),
    (MAILER_THIRDS, &["hi", "zh-Hans", "ko"]),
    (MAILER_THIRDS, &["ru", "vi"]),
    (MAILER_THIRDS, &["fr", "ht"]),
    (MAILER_THIRDS, &["fil", "pt-BR"]),
    (MAILER_A4, &["ar", "hi", "zh-Hans"]),
    (MAILER_A4, &["en", "es", "ko"]),
    (MAILER_A4, &["vi", "ru"]),
    (MAILER_A4, &["pt-BR", "fr"]),
    (MAILER_A4, &["ht", "fil"]),
    (HANDOUT_A4, &["zh-Hans", "en", "ar", "hi"]),
    (HANDOUT_A4, &["ko", "es", "vi"]),
    (HANDOUT_A4, &["ru", "fr"]),
    (HANDOUT_A4, &["ht", "pt-BR", "fil"]),
];

/// Which file of a sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Use {
    /// For a print shop.
    Press,
    /// For a screen.
    Web,
}

impl Use {
    /// Both files.
    pub const ALL: [Self; 2] = [Self::Press, Self::Web];

    /// The command line's word.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Press => "press",
            Self::Web => "web",
        }
    }
}

/// A sheet's file, as it is asked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Asked<'a> {
    /// The form.
    pub form: Form,
    /// The languages, the leading one first.
    pub languages: &'a [&'a str],
    /// What it is for.
    pub output: Use,
}

impl Asked<'_> {
    /// How many pages it has.
    #[must_use]
    pub fn pages(&self) -> u32 {
        u32::try_from(self.form.codes.len()).unwrap_or_default()
    }

    /// What the command line is told, the program and the file to write left out.
    #[must_use]
    pub fn words(&self, day: &str) -> Vec<String> {
        let languages = self.languages.join(",");
        let own = ["--sheet", self.form.kind, "--languages", &languages, "--for", self.output.word()];
        let more = ["--date", day, "--no-ticket"];
        own.iter().chain(self.form.options).chain(&more).map(|word| (*word).to_owned()).collect()
    }
}

impl fmt::Display for Asked<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { form, languages, output } = self;
        write!(f, "{} {} {} {}", form.kind, form.options.join(" "), languages.join(","), output.word())
    }
}

/// Every sheet's file that is judged.
#[must_use]
pub fn asked() -> Vec<Asked<'static>> {
    let alone = ALONE.iter().flat_map(|form| LANGUAGES.chunks(1).map(|languages| (*form, languages)));
    let together = TOGETHER.iter().map(|(form, languages)| (*form, *languages));
    alone
        .chain(together)
        .flat_map(|(form, languages)| Use::ALL.map(|output| Asked { form, languages, output }))
        .collect()
}
