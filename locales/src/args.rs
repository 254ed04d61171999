//! The named values a message is filled in with.

use std::borrow::Cow;

/// One value: a text, or a number, which is written as the language writes numbers and which
/// chooses plural forms.
#[derive(Debug, Clone, PartialEq)]
pub enum Value<'a> {
    /// A text, put in as it is.
    Text(Cow<'a, str>),
    /// A number.
    Number(f64),
}

impl<'a> From<&'a str> for Value<'a> {
    fn from(text: &'a str) -> Self {
        Self::Text(Cow::Borrowed(text))
    }
}

impl<'a> From<&'a String> for Value<'a> {
    fn from(text: &'a String) -> Self {
        Self::Text(Cow::Borrowed(text))
    }
}

impl From<String> for Value<'_> {
    fn from(text: String) -> Self {
        Self::Text(Cow::Owned(text))
    }
}

impl<'a> From<Cow<'a, str>> for Value<'a> {
    fn from(text: Cow<'a, str>) -> Self {
        Self::Text(text)
    }
}

macro_rules! numbers {
    ($($kind:ty)*) => {$(
        impl From<$kind> for Value<'_> {
            #[allow(clippy::cast_precision_loss, clippy::cast_lossless, reason = "a number shown is far below 2^53")]
            fn from(number: $kind) -> Self {
                Self::Number(number as f64)
            }
        }
    )*};
}
numbers!(u8 u16 u32 u64 usize i8 i16 i32 i64 isize f32 f64);

/// The named values a message is filled in with; made with [`args!`](crate::args).
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Args<'a>(Vec<(Cow<'a, str>, Value<'a>)>);

impl<'a> Args<'a> {
    /// No values.
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// Names a value; a name given again takes the new value.
    pub fn set(&mut self, name: impl Into<Cow<'a, str>>, value: impl Into<Value<'a>>) {
        self.put(name.into(), value.into());
    }

    // Every message with a value comes by here: written once, it does not weigh on each.
    #[inline(never)]
    fn put(&mut self, name: Cow<'a, str>, value: Value<'a>) {
        match self.0.iter_mut().find(|(known, _)| *known == name) {
            Some((_, old)) => *old = value,
            None => self.0.push((name, value)),
        }
    }

    /// The same values and one more.
    #[must_use]
    pub fn with(mut self, name: impl Into<Cow<'a, str>>, value: impl Into<Value<'a>>) -> Self {
        self.set(name, value);
        self
    }

    /// The value of a name.
    #[must_use]
    pub fn get(&self, name: &str) -> Option<&Value<'a>> {
        self.0.iter().find(|(known, _)| known == name).map(|(_, value)| value)
    }
}

/// Names values for a message: `args!(count = 3, name = "Tin can")`.
///
/// Names are the placeholders of the message (`{ $count }`).
#[macro_export]
macro_rules! args {
    ($($name:ident = $value:expr),* $(,)?) => {
        $crate::Args::new()$(.with(stringify!($name), $value))*
    };
}

/// A message by its key, filled in: `t!(messages, "no-results", query = typed)`.
///
/// The check that every key used is defined looks for this macro, so give the key as a literal
/// wherever it is one.
#[macro_export]
macro_rules! t {
    ($messages:expr, $key:expr $(, $name:ident = $value:expr)* $(,)?) => {
        $messages.t($key, &$crate::args!($($name = $value),*))
    };
}
