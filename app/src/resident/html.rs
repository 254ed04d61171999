//! Markup, written so that nothing that comes from a file, an address or a person can become any.
//!
//! The screens are text that the browser's own parser turns into elements, because a phone has that
//! parser already: the same screens over a component library were 160 KB (brotli) of program, most of
//! it the library's code compiled anew for every element. Only what stands in the source as a literal
//! is markup; everything else is escaped, in text and in attributes alike.

/// Markup under construction; filled by [`put!`].
#[derive(Debug, Default)]
pub(crate) struct Html(String);

impl Html {
    /// Adds markup of ours.
    #[inline(never)]
    pub(crate) fn markup(&mut self, own: &'static str) {
        self.0.push_str(own);
    }

    /// Adds a text, for an element's content or a quoted attribute.
    #[inline(never)]
    pub(crate) fn text(&mut self, text: &str) {
        for c in text.chars() {
            match c {
                '&' => self.0.push_str("&amp;"),
                '<' => self.0.push_str("&lt;"),
                '>' => self.0.push_str("&gt;"),
                '"' => self.0.push_str("&quot;"),
                '\'' => self.0.push_str("&#39;"),
                c => self.0.push(c),
            }
        }
    }

    /// All of it.
    pub(crate) fn as_str(&self) -> &str {
        &self.0
    }
}

/// Adds to an [`Html`]: literals are markup, what stands in parentheses is text.
///
/// ```ignore
/// put!(out, "<p class=\"quiet\">" (t!(m, "privacy")) "</p>");
/// ```
macro_rules! put {
    (@ $out:expr, ($text:expr)) => { $out.text(&$text) };
    (@ $out:expr, $own:literal) => { $out.markup($own) };
    ($out:expr, $($piece:tt)*) => {{ $( put!(@ $out, $piece); )* }};
}
pub(crate) use put;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_literals_are_markup() {
        let mut out = Html::default();
        let hostile = "\"><img src=x onerror='owned()'>&";
        put!(out, "<p title=\"" (hostile) "\">" (hostile) "</p>");
        let escaped = "&quot;&gt;&lt;img src=x onerror=&#39;owned()&#39;&gt;&amp;";
        assert_eq!(out.as_str(), format!("<p title=\"{escaped}\">{escaped}</p>"));
    }
}
