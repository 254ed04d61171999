//! Names of a job's texts: short codes for machines, which every program turns into its reader's language, and the
//! same in English for our own messages.

/// Who issues the sheet.
pub(crate) const ISSUER: &str = "issuer";
/// The address a person can type.
pub(crate) const SHORT_ADDRESS: &str = "short-address";
/// What local law asks.
pub(crate) const NOTICE: &str = "notice";
/// The guide's edition.
pub(crate) const EDITION: &str = "edition";
/// The job's name.
pub(crate) const JOB_NAME: &str = "job-name";
/// The mailer's sender.
pub(crate) const RETURN_ADDRESS: &str = "return-address";
/// The mailer's postage.
pub(crate) const INDICIA: &str = "indicia";
/// The mailer's recipient.
pub(crate) const ADDRESSEE: &str = "addressee";
/// The stock's name.
pub(crate) const STOCK: &str = "stock";
/// What stands outside the trim.
pub(crate) const SLUG: &str = "slug";

/// A language's title.
pub(crate) fn title(lang: &str) -> String {
    format!("title:{lang}")
}

/// The heading of a language's section, counted from 1.
pub(crate) fn heading(lang: &str, section: usize) -> String {
    format!("heading:{lang}:{section}")
}

/// A line of a language's section, both counted from 1.
pub(crate) fn line(lang: &str, section: usize, line: usize) -> String {
    format!("line:{lang}:{section}:{line}")
}

/// What a language says about the code.
pub(crate) fn scan(lang: &str) -> String {
    format!("scan:{lang}")
}

/// A line at a language's foot, counted from 1.
pub(crate) fn foot(lang: &str, line: usize) -> String {
    format!("foot:{lang}:{line}")
}

/// A line of a field that has several, counted from 1.
pub(crate) fn numbered(field: &str, line: usize) -> String {
    format!("{field}:{line}")
}

/// Kinds of texts with the names of what follows them in a code.
const KINDS: &[(&str, &[&str])] = &[
    ("title", &["lang"]),
    ("heading", &["lang", "section"]),
    ("line", &["lang", "section", "line"]),
    ("scan", &["lang"]),
    ("foot", &["lang", "line"]),
    (ISSUER, &[]),
    (SHORT_ADDRESS, &[]),
    (NOTICE, &[]),
    (EDITION, &[]),
    (JOB_NAME, &[]),
    (SLUG, &[]),
    (STOCK, &[]),
    (RETURN_ADDRESS, &["line"]),
    (INDICIA, &["line"]),
    (ADDRESSEE, &["line"]),
];

/// Every kind of text that a code can name, with the names of its parts, for the tables of messages.
pub const TEXT_PLACES: &[(&str, &[&str])] = KINDS;

/// What a code names: its kind, one of [`TEXT_PLACES`], and its parts by name; parts that a code leaves out are
/// empty. Nothing for what is no such code.
///
/// ```
/// let (kind, parts) = print::text_place("line:es:2:3").expect("a code");
/// assert_eq!((kind, parts.as_slice()), ("line", [("lang", "es"), ("section", "2"), ("line", "3")].as_slice()));
/// assert_eq!(print::text_place("somewhere else"), None);
/// ```
pub fn text_place(code: &str) -> Option<(&'static str, Vec<(&'static str, &str)>)> {
    let mut parts = code.split(':');
    let kind = parts.next()?;
    let (kind, names) = KINDS.iter().find(|(known, _)| *known == kind)?;
    let named = names.iter().map(|name| (*name, parts.next().unwrap_or(""))).collect();
    parts.next().is_none().then_some((*kind, named))
}

/// A code in English; what is no code stays as it is.
pub(crate) fn english(code: &str) -> String {
    let Some((kind, parts)) = text_place(code) else { return code.to_owned() };
    let part = |at: usize| parts.get(at).map_or("", |(_, value)| *value);
    let of_field = |field: &str| match part(0) {
        "" => field.to_owned(),
        line => format!("{field}, line {line}"),
    };
    match kind {
        "title" => format!("{}, title", part(0)),
        "heading" => format!("{}, section {}, heading", part(0), part(1)),
        "line" => format!("{}, section {}, line {}", part(0), part(1), part(2)),
        "scan" => format!("{}, scan sentence", part(0)),
        "foot" => format!("{}, footer line {}", part(0), part(1)),
        ISSUER => "the issuer's name".to_owned(),
        SHORT_ADDRESS => "the short address".to_owned(),
        NOTICE => "the print notice".to_owned(),
        EDITION => "the edition".to_owned(),
        STOCK => "the stock".to_owned(),
        JOB_NAME => "the job's name".to_owned(),
        RETURN_ADDRESS => of_field("the return address"),
        INDICIA => of_field("the indicia"),
        ADDRESSEE => of_field("the delivery address"),
        _ => "the slug".to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_code_names_its_parts_and_has_english_words() {
        for (code, words) in [
            (title("es"), "es, title"),
            (heading("zh-Hans", 2), "zh-Hans, section 2, heading"),
            (line("ar", 1, 12), "ar, section 1, line 12"),
            (scan("en"), "en, scan sentence"),
            (foot("en", 3), "en, footer line 3"),
            (numbered(RETURN_ADDRESS, 2), "the return address, line 2"),
            (numbered(INDICIA, 1), "the indicia, line 1"),
            (ADDRESSEE.to_owned(), "the delivery address"),
            (ISSUER.to_owned(), "the issuer's name"),
        ] {
            assert!(text_place(&code).is_some(), "{code}");
            assert_eq!(english(&code), words);
        }
        for no_code in ["", "line:es:2:3:4", "somewhere", "Title:es"] {
            assert_eq!(text_place(no_code), None, "{no_code}");
            assert_eq!(english(no_code), no_code);
        }
    }
}
