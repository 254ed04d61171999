//! Opening hours: read from the OpenStreetMap `opening_hours` syntax by a library when a guide is
//! published, kept as a small table, and looked up on the phone without the library.

use chrono::{Datelike, Days, NaiveDate};
use opening_hours::{OpeningHours, RuleKind};
use serde::{Deserialize, Serialize};

use crate::domain::day_number;

/// Weeks a table covers from its first Monday: about four years, after which the phone says that
/// it does not know rather than guess.
const WEEKS: usize = 209;
/// Minutes of a day.
const DAY: u16 = 24 * 60;

/// A site's opening hours as a table of weeks.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Schedule {
    /// The hours as the coordinator wrote them.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub stated: String,
    /// The first Monday, in days since 1970-01-01.
    pub(crate) first: i64,
    /// Different days: spans of minutes since midnight, ascending.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub(crate) days: Vec<Vec<Span>>,
    /// Runs of weeks alike: how many, and the day of each weekday from Monday.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub(crate) weeks: Vec<(u16, [u8; 7])>,
    /// A comment such as "by appointment".
    #[serde(skip_serializing_if = "String::is_empty")]
    pub comment: String,
}

/// A part of a day: from minute, to minute, and whether it is open for certain.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub(crate) struct Span(pub(crate) u16, pub(crate) u16, pub(crate) bool);

/// Whether a site is open at some time.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum OpenState {
    /// Open, until a day and minute if it closes within the table.
    Open {
        /// When it closes.
        until: Option<(NaiveDate, u16)>,
    },
    /// Closed, until a day and minute if it opens within the table.
    Closed {
        /// When it opens next.
        opens: Option<(NaiveDate, u16)>,
    },
    /// It depends on something no table knows, such as an appointment.
    ByAppointment {
        /// The coordinator's comment.
        comment: String,
    },
    /// Nothing is known about that day.
    Unknown,
}

impl Schedule {
    /// Reads hours into a table that begins in the week of `from`.
    ///
    /// # Errors
    /// The library's words about what it could not read.
    pub fn read(stated: &str, from: NaiveDate) -> Result<Self, String> {
        let stated = stated.trim();
        let mut table = Self { stated: stated.to_owned(), ..Self::default() };
        if stated.is_empty() {
            return Ok(table);
        }
        let hours = stated.parse::<OpeningHours>().map_err(|e| e.to_string())?;
        let monday = from
            .checked_sub_days(Days::new(u64::from(from.weekday().num_days_from_monday())))
            .unwrap_or(from);
        table.first = day_number(monday);
        // A comment in place of a state means "unknown" (opening hours specification 0.7.4, rule
        // modifier); the library takes it for open.
        let says_open = stated.contains("open");
        let mut day = monday;
        for _ in 0..WEEKS {
            let mut week = [0_u8; 7];
            for slot in &mut week {
                let spans: Vec<Span> = hours
                    .schedule_at(day)
                    .into_iter()
                    .filter(|r| r.kind != RuleKind::Closed)
                    .map(|r| {
                        if !r.comment.is_empty() && table.comment.is_empty() {
                            table.comment = r.comment.to_string();
                        }
                        let minutes = |t: opening_hours_time::Extended| {
                            u16::from(t.hour()) * 60 + u16::from(t.minute())
                        };
                        Span(
                            minutes(r.range.start).min(DAY),
                            minutes(r.range.end).min(DAY),
                            r.kind == RuleKind::Open && (r.comment.is_empty() || says_open),
                        )
                    })
                    .filter(|s| s.0 < s.1)
                    .collect();
                let known = table.days.iter().position(|d| *d == spans);
                let index = known.unwrap_or_else(|| {
                    table.days.push(spans);
                    table.days.len() - 1
                });
                *slot = u8::try_from(index).map_err(|_| "more than 255 different days".to_owned())?;
                day = day.succ_opt().unwrap_or(day);
            }
            match table.weeks.last_mut() {
                Some((count, alike)) if *alike == week => *count += 1,
                _ => table.weeks.push((1, week)),
            }
        }
        Ok(table)
    }

    /// Says whether hours can be read, without working a table out.
    ///
    /// # Errors
    /// The library's words about what it could not read.
    pub fn readable(stated: &str) -> Result<(), String> {
        if stated.trim().is_empty() {
            return Ok(());
        }
        stated.trim().parse::<OpeningHours>().map(|_| ()).map_err(|e| e.to_string())
    }

    /// The spans of a day; `None` when the table does not reach it.
    fn spans(&self, day: NaiveDate) -> Option<&[Span]> {
        let offset = day_number(day).checked_sub(self.first)?;
        let (mut week, weekday) = (usize::try_from(offset).ok()? / 7, usize::try_from(offset).ok()? % 7);
        for (count, alike) in &self.weeks {
            let count = usize::from(*count);
            if week < count {
                return self.days.get(usize::from(*alike.get(weekday)?)).map(Vec::as_slice);
            }
            week -= count;
        }
        None
    }

    /// The times of a day, from minute to minute since midnight, ascending, each with whether it is open
    /// for certain; empty when it is closed, `None` when the table does not reach that day.
    #[must_use]
    pub fn times(&self, day: NaiveDate) -> Option<Vec<(u16, u16, bool)>> {
        Some(self.spans(day)?.iter().map(|s| (s.0, s.1, s.2)).collect())
    }

    /// Whether the site is open on a day at a minute since midnight, local time.
    #[must_use]
    pub fn at(&self, day: NaiveDate, minute: u16) -> OpenState {
        let Some(spans) = self.spans(day) else { return OpenState::Unknown };
        match spans.iter().find(|s| s.0 <= minute && minute < s.1) {
            Some(span) if span.2 => OpenState::Open { until: self.closes(day, span.1) },
            Some(_) => OpenState::ByAppointment { comment: self.comment.clone() },
            None => {
                let certain = |d: NaiveDate, after: u16| {
                    self.spans(d).and_then(|s| s.iter().find(|s| s.0 >= after && s.2)).map(|s| (d, s.0))
                };
                // A year holds every season; nothing opening within it means nothing known.
                let opens = certain(day, minute)
                    .or_else(|| day.iter_days().skip(1).take(366).find_map(|d| certain(d, 0)));
                if opens.is_none() && self.days.iter().flatten().any(|s| !s.2) {
                    return OpenState::ByAppointment { comment: self.comment.clone() };
                }
                OpenState::Closed { opens }
            }
        }
    }

    /// Follows an open span over midnight to the time it closes.
    fn closes(&self, day: NaiveDate, end: u16) -> Option<(NaiveDate, u16)> {
        let (mut day, mut end) = (day, end);
        for _ in 0..14 {
            if end < DAY {
                return Some((day, end));
            }
            day = day.succ_opt()?;
            match self.spans(day)?.iter().find(|s| s.0 == 0 && s.2) {
                Some(next) => end = next.1,
                None => return Some((day, 0)),
            }
        }
        None
    }
}

/// The library's time type under a name that says what it is.
mod opening_hours_time {
    pub(super) use opening_hours_syntax::ExtendedTime as Extended;
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(hours: &str, day: &str, time: &str, expected: &str) {
        let day: NaiveDate = day.parse().unwrap();
        let (h, m) = time.split_once(':').unwrap();
        let minute = h.parse::<u16>().unwrap() * 60 + m.parse::<u16>().unwrap();
        let table = Schedule::read(hours, "2024-01-01".parse().unwrap()).unwrap();
        let clock = |at: Option<(NaiveDate, u16)>| {
            at.map_or("?".to_owned(), |(d, m)| format!("{d} {:02}:{:02}", m / 60, m % 60))
        };
        let state = match table.at(day, minute) {
            OpenState::Open { until } => format!("open until {}", clock(until)),
            OpenState::Closed { opens } => format!("closed until {}", clock(opens)),
            OpenState::ByAppointment { comment } => format!("by appointment: {comment}"),
            OpenState::Unknown => "unknown".to_owned(),
        };
        assert_eq!(state, expected, "{hours} at {day} {time}");
    }

    /// Examples of the opening hours specification 0.7.4, evaluated with the reference library.
    #[test]
    fn examples_of_the_specification() {
        check("Mo-Fr 08:00-12:00,13:00-17:30", "2024-07-03", "12:30", "closed until 2024-07-03 13:00");
        check("Fr 20:00-02:00", "2024-07-06", "01:00", "open until 2024-07-06 02:00");
        check("Fr 20:00-02:00", "2024-07-05", "23:00", "open until 2024-07-06 02:00");
        check("Sa[1],Sa[3] 09:00-13:00", "2024-07-13", "12:00", "closed until 2024-07-20 09:00");
        check("week 2-52/2 Fr 09:00-12:00", "2024-01-05", "10:00", "closed until 2024-01-12 09:00");
        let seasons = "Apr-Oct: Mo-Fr 08:00-18:00; Nov-Mar: Mo-Fr 09:00-16:00";
        check(seasons, "2024-11-04", "17:00", "closed until 2024-11-05 09:00");
        check("Mo-Fr 09:00-12:00; We 12:00-18:00", "2024-07-03", "10:00", "closed until 2024-07-03 12:00");
        check("Mo-Fr 09:00-12:00, We 12:00-18:00", "2024-07-03", "13:00", "open until 2024-07-03 18:00");
        check("24/7", "2024-07-03", "13:00", "open until ?");
    }

    #[test]
    fn what_no_table_knows_is_said() {
        check("\"by appointment\"", "2024-07-03", "13:00", "by appointment: by appointment");
        check("Mo-Fr 09:00-12:00", "2031-07-03", "10:00", "unknown");
        check("Mo-Fr 09:00-12:00", "1970-01-01", "10:00", "unknown");
        check("", "2024-07-03", "10:00", "unknown");
        assert!(Schedule::read("Mo-Fr 25 o'clock", NaiveDate::default()).is_err());
    }
}
