//! What the caller hands over: one sheet's words and addresses, already chosen and translated.
//!
//! This is the boundary. Nothing here knows a program or a catalog, and the same JSON given to the command
//! line and to the browser's worker makes the same bytes.

use serde::{Deserialize, Serialize};

use crate::sheet::{PressSheet, SheetSize};
use crate::unit::Mm;

/// Which sheet to make.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum SheetKind {
    /// A label for a cart's lid, one page.
    CartLid,
    /// A round label with one message, one page.
    RoundSticker,
    /// A sign at shared containers, read from some steps away, one page.
    EnclosureSign,
    /// A card for the mail, message side and address side.
    PostcardMailer,
    /// A letter or A4 sheet that is folded and mailed without an envelope, outside and inside.
    SelfMailer,
    /// A letter or A4 sheet to hand out, on one side or both.
    Handout,
}

impl SheetKind {
    /// Every sheet there is.
    pub const ALL: [Self; 6] = [
        Self::CartLid,
        Self::RoundSticker,
        Self::EnclosureSign,
        Self::PostcardMailer,
        Self::SelfMailer,
        Self::Handout,
    ];

    /// The name used in files and on the command line.
    pub const fn id(self) -> &'static str {
        match self {
            Self::CartLid => "cart-lid",
            Self::RoundSticker => "round-sticker",
            Self::EnclosureSign => "enclosure-sign",
            Self::PostcardMailer => "postcard-mailer",
            Self::SelfMailer => "self-mailer",
            Self::Handout => "handout",
        }
    }

    /// The sheet of that name.
    pub fn from_id(id: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|kind| kind.id() == id)
    }

    /// How far away the sheet is read where nobody says it. Ours: a cart or a card is read at arm's length, a sign
    /// at shared containers from two steps before them.
    pub const fn usual_distance(self) -> Mm {
        match self {
            Self::EnclosureSign => Mm(2000.0),
            Self::RoundSticker => Mm(1000.0),
            Self::CartLid | Self::PostcardMailer => Mm(600.0),
            Self::SelfMailer | Self::Handout => Mm(450.0),
        }
    }

    /// Whether it goes by mail.
    pub const fn is_mailed(self) -> bool {
        matches!(self, Self::PostcardMailer | Self::SelfMailer)
    }
}

/// How a self-mailer is folded.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Fold {
    /// Once, across the middle.
    #[default]
    Half,
    /// Twice, like a letter.
    Thirds,
}

/// How much of a QR code may be damaged and still be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum QrLevel {
    /// About 15 of 100 code words (level M).
    Medium,
    /// About 25 (level Q).
    Quartile,
    /// About 30 (level H): for stickers that get scratched.
    High,
}

/// What a sheet is printed on, as the coordinator typed it.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Stock {
    /// Its name.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub name: String,
    /// Its thickness, where it is known: one sheet's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub thickness: Option<Mm>,
}

impl Stock {
    /// Whether nothing is known of it.
    pub fn is_unknown(&self) -> bool {
        self.name.is_empty() && self.thickness.is_none()
    }
}

/// Which way a language is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Direction {
    /// Left to right.
    Ltr,
    /// Right to left.
    Rtl,
}

/// What a section says about the things in it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Tone {
    /// These go in.
    Yes,
    /// These stay out.
    No,
    /// These go somewhere else.
    Elsewhere,
    /// These are dangerous here.
    Caution,
}

/// Everything one sheet needs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SheetJob {
    /// Which sheet.
    pub sheet: SheetKind,
    /// Its finished size; none means the sheet's usual one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub size: Option<SheetSize>,
    /// Self-mailer: how it is folded.
    #[serde(default, skip_serializing_if = "is_usual")]
    pub fold: Fold,
    /// Whether the line along which the label is cut out is drawn for the die maker, in a colour of its own.
    #[serde(default, skip_serializing_if = "is_usual")]
    pub die_line: bool,
    /// Whether room is kept in the small print for the printer's own mark.
    #[serde(default, skip_serializing_if = "is_usual")]
    pub printers_mark: bool,
    /// How much damage the QR code must bear; none means the most that makes it no larger.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub qr_level: Option<QrLevel>,
    /// What it is printed on.
    #[serde(default, skip_serializing_if = "Stock::is_unknown")]
    pub stock: Stock,
    /// Several on a larger sheet; none means one a page.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub press: Option<PressSheet>,
    /// One to four languages, the first leading. All say the same things in the same order: the same
    /// sections with the same number of lines, or the job is refused.
    pub languages: Vec<LanguageBlock>,
    /// What the QR code holds: the address of the guide.
    pub qr_url: String,
    /// The address a person can type, printed beside the code.
    pub short_url: String,
    /// Who issues the sheet, as printed in the title band.
    pub jurisdiction: String,
    /// The guide's edition, for the slug and the small print.
    pub edition: String,
    /// The job's name, for the slug and the file's title.
    pub job_name: String,
    /// The date of the job, `YYYY-MM-DD`: printed in the slug and written into the file. No clock is read.
    pub date: String,
    /// Mailer: the return address, a line each.
    #[serde(default)]
    pub return_address: Vec<String>,
    /// Mailer: the postal indicia as the permit's holder words it, a line each.
    #[serde(default)]
    pub indicia: Vec<String>,
    /// Mailer: the delivery address, a line each; empty leaves the block white for the mail house.
    #[serde(default)]
    pub addressee: Vec<String>,
    /// What local law asks on printed matter (a recycled-content statement, for one); may be empty.
    #[serde(default)]
    pub print_notice: String,
    /// How far away the sheet must still be read; it sets the smallest type allowed.
    #[serde(default = "SheetJob::arms_length")]
    pub viewing_distance: Mm,
}

/// Whether a setting is what it is when nobody sets it, so that it need not be written.
fn is_usual<T: Default + PartialEq>(value: &T) -> bool {
    *value == T::default()
}

impl SheetJob {
    /// A little over half a metre: someone standing at a cart, or holding a card.
    pub const fn arms_length() -> Mm {
        Mm(600.0)
    }
}

/// The sheet's words in one language.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LanguageBlock {
    /// The language's tag (BCP 47): `en`, `es`, `ar`.
    pub lang: String,
    /// Which way it is written.
    pub direction: Direction,
    /// The sheet's title: the name of the stream or its container.
    pub title: String,
    /// What goes where, in the order it is to be printed.
    pub sections: Vec<Section>,
    /// What the code is for, in one sentence: printed beside the QR code.
    #[serde(default)]
    pub scan: String,
    /// Further lines at the foot: whom to ask, a telephone number.
    #[serde(default)]
    pub footer: Vec<String>,
    /// Whether a person who knows the language has approved these words.
    #[serde(default)]
    pub reviewed: bool,
    /// Words printed here whose source has changed since they were translated.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub outdated: Vec<String>,
    /// What the QR code is, for those who cannot see it. Never printed.
    #[serde(default)]
    pub code_alt: String,
    /// What following the printed address does, for those who hear it. Never printed.
    #[serde(default)]
    pub link_alt: String,
}

/// One verdict and what it covers.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Section {
    /// Which verdict.
    pub tone: Tone,
    /// The verdict in words.
    pub heading: String,
    /// What it covers.
    pub lines: Vec<Line>,
}

/// One thing: its words, and its picture if there is one.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Line {
    /// The words.
    pub text: String,
    /// The picture's id, one of [`crate::PICTOGRAMS`].
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pictogram: Option<String>,
    /// What the picture shows, for those who cannot see it. Never printed; without it the picture counts as
    /// decoration.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub alt: String,
    /// The share of cases in which the line alone leads to the right place, in thousandths, where that is not all.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fidelity: Option<u16>,
    /// Another line of the sheet whose words this one's contradict.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub contradicts: Option<String>,
    /// Whether this names a hazard. Such a line is never dropped, and is set with the caution mark.
    #[serde(default)]
    pub hazard: bool,
}

impl SheetJob {
    /// Every string that can be printed.
    pub(crate) fn strings(&self) -> impl Iterator<Item = &str> {
        let own = [
            &self.jurisdiction,
            &self.edition,
            &self.job_name,
            &self.date,
            &self.short_url,
            &self.print_notice,
        ];
        let lists = self.return_address.iter().chain(&self.indicia).chain(&self.addressee);
        own.into_iter()
            .chain(lists)
            .chain(self.languages.iter().flat_map(LanguageBlock::strings))
            .map(String::as_str)
    }
}

impl LanguageBlock {
    fn strings(&self) -> impl Iterator<Item = &String> {
        let sections = self.sections.iter().flat_map(|section| {
            std::iter::once(&section.heading).chain(section.lines.iter().map(|line| &line.text))
        });
        [&self.title, &self.scan].into_iter().chain(&self.footer).chain(sections)
    }
}
