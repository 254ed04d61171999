//! Addresses within the page. One scheme, in the fragment, which browsers never send to a server:
//!
//! | address | shows |
//! |---|---|
//! | `#/` | the start: search, recent and common items, categories |
//! | `#/category/<id>` | the items of a category |
//! | `#/item/<id>` | an item: its question or its answer. The QR code's address |
//! | `#/item/<id>/<n>` | the same after n answers, so that the browser's back goes one answer back |
//! | `#/zone/<id>/…` | any of these where somebody lives: the code on the lids of one service zone |
//! | `#/<language>/…` | any of these in a language (BCP 47), chosen as by the switch |

/// What the page shows.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub(crate) enum Page {
    /// The start.
    #[default]
    Home,
    /// The items of a category.
    Category(String),
    /// An item, after so many answers.
    Item {
        /// The item's id.
        id: String,
        /// How many answers have been given.
        step: usize,
    },
    /// An address that means nothing here.
    Unknown(String),
}

/// A page, and the language the address asks for.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub(crate) struct Address {
    /// The language asked for, if any.
    pub(crate) language: Option<String>,
    /// The service zone it is for, if any.
    pub(crate) zone: Option<String>,
    /// The page.
    pub(crate) page: Page,
}

/// An address is shown in a message when it is not understood; longer ones are cut.
const SHOWN: usize = 60;

impl Address {
    /// Reads a fragment, with or without its leading `/`.
    pub(crate) fn read(fragment: &str) -> Self {
        let mut parts: Vec<&str> = fragment.split('/').filter(|p| !p.is_empty()).collect();
        let mut language = None;
        if let Some(first) = parts.first().copied()
            && !matches!(first, "item" | "category" | "zone")
            && is_language_tag(first)
        {
            language = Some(first.to_owned());
            parts.remove(0);
        }
        let mut zone = None;
        if let ["zone", id, ..] = parts.as_slice() {
            zone = Some((*id).to_owned());
            parts.drain(..2);
        }
        let page = match parts.as_slice() {
            [] => Page::Home,
            ["category", id] => Page::Category((*id).to_owned()),
            ["item", id] => Page::Item { id: (*id).to_owned(), step: 0 },
            ["item", id, step] => Page::Item { id: (*id).to_owned(), step: step.parse().unwrap_or_default() },
            _ => Page::Unknown(fragment.chars().take(SHOWN).collect()),
        };
        Self { language, zone, page }
    }
}

impl Page {
    /// The page's fragment in a language.
    pub(crate) fn fragment(&self, language: &str) -> String {
        match self {
            Self::Home | Self::Unknown(_) => format!("/{language}/"),
            Self::Category(id) => format!("/{language}/category/{id}"),
            Self::Item { id, step: 0 } => format!("/{language}/item/{id}"),
            Self::Item { id, step } => format!("/{language}/item/{id}/{step}"),
        }
    }
}

/// Two or three letters, then subtags: enough to tell a language from a mistyped page.
fn is_language_tag(text: &str) -> bool {
    let mut subtags = text.split('-');
    let primary = subtags.next().unwrap_or_default();
    (2..=3).contains(&primary.len())
        && primary.bytes().all(|b| b.is_ascii_alphabetic())
        && subtags.all(|s| (1..=8).contains(&s.len()) && s.bytes().all(|b| b.is_ascii_alphanumeric()))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn item(id: &str, step: usize) -> Page {
        Page::Item { id: id.to_owned(), step }
    }

    #[test]
    fn fragments_are_read_and_written_alike() {
        for (fragment, language, zone, page) in [
            ("", None, None, Page::Home),
            ("/", None, None, Page::Home),
            ("/es/", Some("es"), None, Page::Home),
            ("/item/pizza-box", None, None, item("pizza-box", 0)),
            ("item/pizza-box", None, None, item("pizza-box", 0)),
            ("/ar/item/pizza-box/2", Some("ar"), None, item("pizza-box", 2)),
            ("/zh-Hans/category/glass", Some("zh-Hans"), None, Page::Category("glass".to_owned())),
            ("/item/pizza-box/x", None, None, item("pizza-box", 0)),
            ("/zone/old-mill", None, Some("old-mill"), Page::Home),
            ("/ko/zone/old-mill/item/pizza-box", Some("ko"), Some("old-mill"), item("pizza-box", 0)),
        ] {
            let address = Address::read(fragment);
            let (language, zone) = (language.map(str::to_owned), zone.map(str::to_owned));
            assert_eq!(address, Address { language, zone, page }, "{fragment}");
            let again = Address::read(&address.page.fragment("es"));
            assert_eq!(again, Address { language: Some("es".to_owned()), zone: None, page: address.page });
        }
    }

    #[test]
    fn what_is_not_an_address_is_kept_short_for_the_message() {
        let long = format!("/nothing/{}", "x".repeat(10_000));
        let Page::Unknown(shown) = Address::read(&long).page else { panic!("{long}") };
        assert_eq!(shown.chars().count(), 60);
    }
}
