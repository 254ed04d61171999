//! Places to take things to, with their terms and hours, and the containers at home with their rules.

use chrono::{Datelike as _, Days, NaiveDate, NaiveTime, Weekday};
use guide_data::{GuideChannel, GuideSite, Schedule};
use locales::{DateStyle, Width, t};
use maud::{Markup, html};

use super::{Book, nothing};

/// How far ahead hours are told: a year has every season.
const WEEKS: usize = 53;
/// Hours that stay the same for so many weeks are told by weekday, others by date. A judgement, no source.
const STEADY: usize = 4;
/// How many dates are told where hours follow no week.
const DATES: usize = 6;

/// The times of a day, from minute to minute.
type Times = Vec<(u16, u16, bool)>;

/// Weeks alike: the first Monday, how many, and the times of each weekday.
struct Run {
    monday: NaiveDate,
    weeks: usize,
    days: Vec<Times>,
}

impl Book<'_> {
    pub(super) fn channel(&self, channel: &GuideChannel) -> Markup {
        let m = self.messages;
        let own = |field: &str| self.words.text(&format!("channel.{}.{field}", channel.id));
        let sites: Vec<&GuideSite> =
            self.guide.sites.iter().filter(|site| site.channels.contains(&channel.id)).collect();
        html! {
            section #(channel.id) data-channel=(channel.id) {
                h2 { (self.words.named("channel", &channel.id)) }
                ul.terms {
                    @if let Some(fee) = own("fee") { li { (fee) } }
                    @if channel.booking { li { (t!(m, "site-booking")) } }
                    @if channel.proof { li { (t!(m, "site-proof")) } }
                    @if channel.permit { li { (t!(m, "site-permit")) } }
                    @if channel.voucher { li { (t!(m, "site-voucher")) } }
                    @if let Some(text) = own("allowance") { li { (text) } }
                    @if let Some(text) = own("vehicles") { li { (text) } }
                }
                @if let Some(note) = own("note") { p { (note) } }
                @for site in sites { (self.site(site)) }
            }
        }
    }

    fn site(&self, site: &GuideSite) -> Markup {
        let own = |field: &str| self.words.text(&format!("site.{}.{field}", site.id));
        let items = |ids: &[String]| {
            let names: Vec<String> = ids.iter().map(|id| self.words.item(id)).collect();
            self.messages.list_and(&names)
        };
        html! {
            article.site data-site=(site.id) {
                h3 { (self.words.named("site", &site.id)) }
                @if !site.address.is_empty() { p { bdi { (site.address) } } }
                @if !site.phone.is_empty() { p { (telephone(&site.phone)) } }
                (self.hours(&site.hours))
                @if let Some(note) = own("note") { p { (note) } }
                @if let Some(text) = own("vehicles") { p { (text) } }
                @if !site.accepts.is_empty() {
                    p { (t!(self.messages, "pages-takes-only", items = items(&site.accepts))) }
                }
                @if !site.refuses.is_empty() {
                    p { (t!(self.messages, "pages-does-not-take", items = items(&site.refuses))) }
                }
            }
        }
    }

    /// Hours in words: by weekday as long as they stay the same, else by date.
    fn hours(&self, hours: &Schedule) -> Markup {
        let m = self.messages;
        let runs = runs(hours, self.from);
        let uncertain = runs.iter().flat_map(|r| &r.days).flatten().any(|(_, _, certain)| !certain);
        if runs.is_empty() {
            return html! { p.hours { (t!(m, "hours-unknown")) } };
        }
        if runs.iter().flat_map(|r| &r.days).all(Vec::is_empty) || uncertain {
            let text = if uncertain { t!(m, "hours-appointment") } else { t!(m, "hours-closed") };
            return html! { p.hours { (text) } };
        }
        // Runs that are broken by a holiday are told as if they were not: the date is told below.
        let steady: Vec<&Run> = runs.iter().filter(|run| run.weeks >= STEADY).collect();
        if steady.is_empty() {
            return self.by_date(hours);
        }
        let mut told: Vec<&Run> = Vec::new();
        for run in steady {
            if told.last().is_none_or(|last| last.days != run.days) {
                told.push(run);
            }
        }
        let several = told.len() > 1;
        html! {
            @for (nth, run) in told.iter().enumerate() {
                div.hours {
                    @if several { p.label { (self.starting(nth, self.begins(hours, run))) } }
                    ul { @for line in self.week(&run.days) { li { (line) } } }
                }
            }
        }
    }

    /// The first day on which a run's hours hold: often in the middle of the week before.
    fn begins(&self, hours: &Schedule, run: &Run) -> NaiveDate {
        let alike = |day: &NaiveDate| {
            let wanted =
                usize::try_from(day.weekday().num_days_from_monday()).ok().and_then(|d| run.days.get(d));
            wanted.is_some() && hours.times(*day).as_ref() == wanted
        };
        let before = std::iter::successors(run.monday.pred_opt(), NaiveDate::pred_opt);
        before.take(6).take_while(alike).last().unwrap_or(run.monday).max(self.from)
    }

    /// A week's hours, neighbouring days alike in one line.
    fn week(&self, days: &[Times]) -> Vec<String> {
        let m = self.messages;
        let name = |day: usize| {
            let weekday = u8::try_from(day).ok().and_then(|d| Weekday::try_from(d).ok());
            weekday.map(|weekday| m.weekday(weekday, Width::Wide)).unwrap_or_default()
        };
        let mut lines = Vec::new();
        let mut first = 0;
        while let Some(times) = days.get(first) {
            let alike = days.iter().skip(first).take_while(|other| *other == times).count();
            if !times.is_empty() {
                let days = match alike {
                    1 => name(first),
                    2 => m.list_and(&[name(first), name(first + 1)]),
                    _ => m.range(&name(first), &name(first + alike - 1)),
                };
                lines.push(t!(m, "hours-day-time", day = days, time = self.times(times)));
            }
            first += alike;
        }
        lines
    }

    fn by_date(&self, hours: &Schedule) -> Markup {
        let m = self.messages;
        let open = self.from.iter_days().take(WEEKS * 7).filter_map(|day| {
            let times = hours.times(day).filter(|times| !times.is_empty())?;
            let date = m.date(day, DateStyle::Long);
            Some(t!(m, "hours-day-time", day = date, time = self.times(&times)))
        });
        html! {
            div.hours {
                p.label { (t!(m, "pages-next-open")) }
                ul { @for line in open.take(DATES) { li { (line) } } }
            }
        }
    }

    fn times(&self, times: &Times) -> String {
        let m = self.messages;
        if times.as_slice() == [(0, 1440, true)] {
            return t!(m, "pages-all-day");
        }
        let clock = |minute: u16| {
            NaiveTime::from_num_seconds_from_midnight_opt(u32::from(minute % 1440) * 60, 0)
                .unwrap_or_default()
        };
        let spans: Vec<String> =
            times.iter().map(|&(from, to, _)| m.time_range(clock(from), clock(to))).collect();
        m.list_and(&spans)
    }

    /// The containers at home, with what is said about each.
    pub(super) fn containers(&self) -> Markup {
        let m = self.messages;
        let told = self.guide.streams.iter().flat_map(|stream| &stream.containers).filter_map(|container| {
            let name = self.words.text(&format!("container.{}", container.id))?;
            let set_out = self.words.text(&format!("container.{}.set-out", container.id)).map(str::to_owned);
            let rules = container.rules.iter();
            let rules =
                rules.map(|(kind, limit)| self.words.container_rule(&container.id, kind, limit.as_deref()));
            let lines: Vec<String> =
                set_out.into_iter().chain(rules).filter(|line| !line.is_empty()).collect();
            let title = t!(m, "container-rules-title", container = name);
            (!lines.is_empty()).then_some((title, lines))
        });
        let mut seen = Vec::new();
        for one in told {
            if !seen.contains(&one) {
                seen.push(one);
            }
        }
        if seen.is_empty() {
            return nothing();
        }
        html! {
            section #containers {
                @for (title, lines) in seen {
                    h2 { (title) }
                    ul { @for line in lines { li { (line) } } }
                }
            }
        }
    }
}

/// The weeks of a table from a day on, those alike together.
fn runs(hours: &Schedule, from: NaiveDate) -> Vec<Run> {
    let back = Days::new(u64::from(from.weekday().num_days_from_monday()));
    let Some(mut monday) = from.checked_sub_days(back) else { return Vec::new() };
    let mut runs: Vec<Run> = Vec::new();
    for _ in 0..WEEKS {
        // A table begins in the week in which its edition does.
        let days: Option<Vec<Times>> = monday.iter_days().take(7).map(|day| hours.times(day)).collect();
        if let Some(days) = days {
            match runs.last_mut() {
                Some(run) if run.days == days => run.weeks += 1,
                _ => runs.push(Run { monday, weeks: 1, days }),
            }
        }
        let Some(next) = monday.checked_add_days(Days::new(7)) else { break };
        monday = next;
    }
    runs
}

pub(super) fn telephone(number: &str) -> Markup {
    html! { a href={ "tel:" (number.replace(' ', "")) } { bdi dir="ltr" { (number) } } }
}
