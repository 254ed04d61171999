//! The days of a rule cannot be followed: a season that is not two days of the year, or a first day
//! after the last.

use super::{Finding, Place, Severity, Subject};
use crate::domain::year_day_of;
use crate::fix::Fix;
use crate::program::{Rule, Season};
use crate::ruleset::is_acknowledged;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    for rule in &subject.program.rules {
        let drop = |field: &str| Fix::DropDate { rule: rule.id.clone(), field: field.to_owned() };
        // An exception to a safety rule that holds on no day is not given days by a guess.
        let guess = !is_acknowledged(rule);
        let mut tell = |field: &str, problem: &str, value: &str, fixes: Vec<Fix>| {
            found.push(
                Finding::new(Severity::Error, "season-broken", Place::of("rule", &rule.id, field))
                    .arg("problem", problem)
                    .arg("value", value)
                    .rules(std::slice::from_ref(&rule.id))
                    .tries(if guess { fixes } else { Vec::new() }),
            );
        };
        for (field, words) in rule.season.iter().flat_map(ends).filter(|(_, w)| year_day_of(w).is_none()) {
            let place = Place::of("rule", &rule.id, field);
            let meant =
                year_day_meant(words).map(|with| Fix::Replace { place, value: words.to_owned(), with });
            tell(field, "not-a-year-day", words, meant.into_iter().chain([drop("season")]).collect());
        }
        if let Some((from, until)) = rule.from.zip(rule.until).filter(|(from, until)| from > until) {
            let swap = Fix::SwapDates { rule: rule.id.clone() };
            tell("until", "reversed", &format!("{from}, {until}"), vec![swap, drop("until"), drop("from")]);
        }
    }
}

/// True when the days of a rule can be followed on no day.
pub(super) fn is_broken(rule: &Rule) -> bool {
    rule.season.iter().flat_map(ends).any(|(_, words)| year_day_of(words).is_none())
        || rule.from.zip(rule.until).is_some_and(|(from, until)| from > until)
}

fn ends(season: &Season) -> [(&'static str, &str); 2] {
    [("season-from", season.from.as_str()), ("season-until", season.until.as_str())]
}

/// Month and day from a whole date, or from other signs between them.
fn year_day_meant(words: &str) -> Option<String> {
    let numbers: Vec<&str> = words.split(|c: char| !c.is_ascii_digit()).filter(|n| !n.is_empty()).collect();
    let (month, day) = match numbers.as_slice() {
        [month, day] => (month, day),
        [year, month, day] if year.len() == 4 => (month, day),
        _ => return None,
    };
    let meant = format!("{month:0>2}-{day:0>2}");
    year_day_of(&meant).map(|_| meant)
}
