//! Numbers, dates, times and lists in words. Names and patterns are messages of `formats.ftl`.

use chrono::{Datelike, NaiveDate, NaiveTime, Timelike, Weekday};

use crate::args::Args;
use crate::messages::{Messages, without_isolates};
use crate::pattern::opening_isolate;

/// How much of a date is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DateStyle {
    /// Weekday, day, month and year.
    Full,
    /// Day, month and year.
    Long,
    /// Day and month, for a date within the year.
    DayMonth,
    /// Weekday, day and month.
    WeekdayDayMonth,
}

/// A full name or a short one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Width {
    /// "Monday".
    Wide,
    /// "Mon".
    Short,
}

/// Regions whose people read a clock of twelve hours (CLDR 41 `timeData`, preferred `h`; read from
/// Debian's unicode-cldr-core).
const TWELVE_HOURS: &str = "AE AG AL AS AU BB BD BH BM BN BS BT CA CO CY DJ DM DO DZ EG EH ER ET FJ FM GD GH GM GR GU \
    GY HK IN IQ JM JO KH KI KN KP KR KW KY LB LC LR LS LY MH MO MP MR MW MY NA NZ OM PA PG PH PK PR PS PW QA SA SB SD \
    SG SL SO SS SY SZ TC TD TN TO TT TW UM US VC VE VG VI VU WS YE ZM";

/// The values of a message of `formats.ftl`. Parts are put in after formatting, so that the isolating marks
/// Fluent adds around placeholders surround only what comes from outside the language.
#[derive(Debug, Default)]
pub(crate) struct Filled<'a> {
    args: Args<'a>,
    parts: Vec<String>,
}

/// Stand-ins for the parts while Fluent formats: private-use characters, which no message holds.
const FIRST_STAND_IN: u32 = 0xE000;

impl<'a> Filled<'a> {
    pub(crate) fn new() -> Self {
        Self::default()
    }

    /// A number that chooses a plural form.
    pub(crate) fn number(mut self, name: &'a str, value: f64) -> Self {
        self.args.set(name, value);
        self
    }

    /// A word that chooses a form.
    pub(crate) fn choice(mut self, name: &'a str, value: &'a str) -> Self {
        self.args.set(name, value);
        self
    }

    /// A text in the language itself.
    pub(crate) fn text(mut self, name: &'a str, value: &str) -> Self {
        let stand_in =
            u32::try_from(self.parts.len()).ok().and_then(|at| char::from_u32(FIRST_STAND_IN + at));
        self.args.set(name, stand_in.map(String::from).unwrap_or_default());
        self.parts.push(value.to_owned());
        self
    }

    /// A text from outside, which may be in another language and direction.
    pub(crate) fn outside(self, name: &'a str, value: &str) -> Self {
        self.text(name, &format!("\u{2068}{value}\u{2069}"))
    }
}

impl Messages {
    /// Formats a message of `formats.ftl` without isolating marks of its own.
    pub(crate) fn pattern_text(&self, key: &str, pattern: &Filled<'_>) -> String {
        let raw = self.t(key, &pattern.args);
        let formatted = without_isolates(&raw);
        let mut out = String::with_capacity(formatted.len());
        for c in formatted.chars() {
            let part = u32::from(c).checked_sub(FIRST_STAND_IN).and_then(|at| pattern.parts.get(at as usize));
            match part {
                Some(part) if self.isolates() => out.push_str(part),
                Some(part) => out.push_str(&without_isolates(part)),
                None => out.push(c),
            }
        }
        out
    }

    /// A number with up to `decimals` decimals, in the symbols of language and region.
    #[must_use]
    pub fn number(&self, value: f64, decimals: usize) -> String {
        self.number_style().write(value, 0, decimals)
    }

    /// A share (0.17) as a percentage ("17%").
    #[must_use]
    pub fn percent(&self, share: f64, decimals: usize) -> String {
        let number = self.number(share * 100.0, decimals);
        self.pattern_text("format-percent", &Filled::new().text("value", &number))
    }

    /// The size of a download: "640 kB", "2.5 MB" (powers of ten, as phones show them).
    #[must_use]
    pub fn bytes(&self, bytes: u64) -> String {
        #[expect(clippy::cast_precision_loss, reason = "a size is shown with two digits")]
        let size = bytes as f64;
        let (key, number) = if size >= 999_500.0 {
            ("format-megabytes", self.number(size / 1e6, usize::from(size < 9_950_000.0)))
        } else {
            ("format-kilobytes", self.number((size / 1e3).max(1.0), 0))
        };
        self.pattern_text(key, &Filled::new().text("value", &number))
    }

    /// "a, b, and c". Items may be in any language: each is isolated.
    #[must_use]
    pub fn list_and<S: AsRef<str>>(&self, items: &[S]) -> String {
        self.list("list-and", "list-and-next", items)
    }

    /// "a, b, or c". Items may be in any language: each is isolated.
    #[must_use]
    pub fn list_or<S: AsRef<str>>(&self, items: &[S]) -> String {
        self.list("list-or", "list-or-next", items)
    }

    /// CLDR's list patterns: one for two items, else one for the last and one for the others.
    fn list<S: AsRef<str>>(&self, key: &str, next: &str, items: &[S]) -> String {
        let isolated = |item: &S| match self.isolates() {
            true => {
                let opening = opening_isolate(item.as_ref(), self.lang().direction());
                format!("{opening}{}\u{2069}", item.as_ref())
            }
            false => item.as_ref().to_owned(),
        };
        let Some((last, before)) = items.split_last() else { return String::new() };
        let Some((first, middle)) = before.split_first() else { return isolated(last) };
        let mut rest = isolated(first);
        for item in middle {
            rest = self.pattern_text(next, &Filled::new().text("rest", &rest).text("next", &isolated(item)));
        }
        let size = if middle.is_empty() { "two" } else { "more" };
        let pattern = Filled::new()
            .choice("size", size)
            .choice("sound", opening_sound(last.as_ref()))
            .text("rest", &rest)
            .text("last", &isolated(last));
        self.pattern_text(key, &pattern)
    }

    /// The name of a weekday.
    #[must_use]
    pub fn weekday(&self, day: Weekday, width: Width) -> String {
        let key = match width {
            Width::Wide => "weekday-wide",
            Width::Short => "weekday-short",
        };
        self.pattern_text(key, &Filled::new().number("day", f64::from(day.number_from_monday())))
    }

    /// The name of a month (1 to 12), as it stands inside a date.
    #[must_use]
    pub fn month(&self, month: u32, width: Width) -> String {
        let key = match width {
            Width::Wide => "month-wide",
            Width::Short => "month-short",
        };
        self.pattern_text(key, &Filled::new().number("month", f64::from(month)))
    }

    /// A date.
    #[must_use]
    pub fn date(&self, date: NaiveDate, style: DateStyle) -> String {
        let (key, width) = match style {
            DateStyle::Full => ("date-full", Width::Wide),
            DateStyle::Long => ("date-long", Width::Wide),
            DateStyle::DayMonth => ("date-day-month", Width::Wide),
            DateStyle::WeekdayDayMonth => ("date-weekday-day-month", Width::Short),
        };
        let mut pattern = Filled::new()
            .text("day", &date.day().to_string())
            .text("month", &self.month(date.month(), width));
        if matches!(style, DateStyle::Full | DateStyle::WeekdayDayMonth) {
            pattern = pattern.text("weekday", &self.weekday(date.weekday(), width));
        }
        if matches!(style, DateStyle::Full | DateStyle::Long) {
            pattern = pattern.text("year", &date.year().to_string());
        }
        self.pattern_text(key, &pattern)
    }

    /// A time of day, in the twelve or twenty-four hours of the region.
    #[must_use]
    pub fn time(&self, time: NaiveTime) -> String {
        // In Canada French differs from English (CLDR `timeData` has a row of its own for `fr_CA`).
        let canadian_french = self.lang().language() == "fr" && self.lang().region() == Some("CA");
        let twelve = !canadian_french
            && self
                .lang()
                .region()
                .is_some_and(|region| TWELVE_HOURS.split(' ').any(|known| known == region));
        let minute = format!("{:02}", time.minute());
        if twelve {
            let (afternoon, hour) = time.hour12();
            let pattern = Filled::new()
                .text("hour", &hour.to_string())
                .text("minute", &minute)
                .choice("half", if afternoon { "pm" } else { "am" });
            return self.pattern_text("time-12", &pattern);
        }
        let hour = time.hour().to_string();
        self.pattern_text("time-24", &Filled::new().text("hour", &hour).text("minute", &minute))
    }

    /// From one time to another: "8:00 AM – 5:00 PM".
    #[must_use]
    pub fn time_range(&self, from: NaiveTime, to: NaiveTime) -> String {
        self.range(&self.time(from), &self.time(to))
    }

    /// From one thing to another, both already in the language: days, times, numbers.
    #[must_use]
    pub fn range(&self, from: &str, to: &str) -> String {
        self.pattern_text("format-range", &Filled::new().text("from", from).text("to", to))
    }
}

/// Whether a word begins with the sound of Spanish "i" or "o", before which "y" becomes "e" and
/// "o" becomes "u" (CLDR says so in the specification of list patterns; other languages ignore it).
fn opening_sound(word: &str) -> &'static str {
    let word = word.trim_start().to_lowercase();
    let mut letters = word.chars();
    let first = letters.next();
    let (first, after) = match first {
        Some('h') => (letters.next(), letters.next()),
        other => (other, None),
    };
    match (first, after) {
        // "hielo", "hiato": the i is half a consonant there, and "y" stays.
        (Some('i' | 'í'), Some('a' | 'e')) => "other",
        (Some('i' | 'í'), _) => "i",
        (Some('o' | 'ó'), _) => "o",
        (Some('8'), _) => "o",
        (Some('1'), _)
            if word
                .strip_prefix("11")
                .is_some_and(|rest| !rest.starts_with(|c: char| c.is_ascii_digit())) =>
        {
            "o"
        }
        _ => "other",
    }
}
