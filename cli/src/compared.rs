//! What comparing found, in the words of one language: changes, a notice that can be pasted in a letter,
//! a regional report, and printed lines that are no longer true.
//!
//! [`guide_data`] found it, without words; nothing is decided here. The app and the command line both
//! come through here, so that both say the same.

use chrono::{Days, NaiveDate};
use guide_data::{
    Asked, Aspect, Change, Comparison, Edition, Ends, FactIs, Notice, NoticeKind, Outcome, PlaceKind,
    PrintedSheet, Program, Regional, Reworded, Told as Common, UntrueLine, ValueLabel, When,
};
use locales::{DateStyle, Messages, t};

use locales::Words;

/// A statement, and what belongs to it.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Told {
    /// The statement.
    pub head: String,
    /// Conditions, steps and the like, each a sentence.
    pub lines: Vec<String>,
}

/// A text in sections, ready to be written as plain text or with Markdown's marks.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Text {
    /// The title.
    pub title: String,
    /// Sentences under it.
    pub lead: Vec<String>,
    /// Sections: heading and statements.
    pub sections: Vec<(String, Vec<Told>)>,
    /// Sentences at the end.
    pub tail: Vec<String>,
}

impl Text {
    /// With Markdown's marks for headings and lists.
    #[must_use]
    pub fn markdown(&self) -> String {
        self.written("# ", "## ", "- ")
    }

    /// For a letter or a terminal.
    #[must_use]
    pub fn plain(&self) -> String {
        self.written("", "", "- ")
    }

    fn written(&self, title: &str, heading: &str, bullet: &str) -> String {
        let mut blocks = vec![format!("{title}{}", self.title)];
        blocks.extend(self.lead.iter().cloned());
        for (name, entries) in &self.sections {
            blocks.push(format!("{heading}{name}"));
            let mut lines = Vec::new();
            for told in entries {
                lines.push(format!("{bullet}{}", told.head));
                lines.extend(told.lines.iter().map(|line| format!("  {bullet}{line}")));
            }
            blocks.push(lines.join("\n"));
        }
        blocks.extend(self.tail.iter().cloned());
        blocks.retain(|block| !block.is_empty());
        blocks.join("\n\n") + "\n"
    }
}

/// How many items are named of those whose reason was rewritten; the rest are counted.
const MOST_NAMED: usize = 3;

/// The words of the two programs compared, in one language: what was dropped has its name in the older
/// program alone.
#[derive(Clone, Copy)]
pub struct Pair<'w> {
    /// The first program's words.
    pub old: Words<'w>,
    /// The second's.
    pub new: Words<'w>,
}

impl Pair<'_> {
    fn messages(&self) -> &Messages {
        self.new.messages
    }

    /// One change in sentences.
    #[must_use]
    pub fn change(&self, change: &Change) -> Told {
        let m = self.messages();
        let item = match change.after {
            Some(_) => self.new.subject(&change.item, change.part.as_deref()),
            None => self.old.subject(&change.item, change.part.as_deref()),
        };
        let was = change.before.as_ref().map(|o| answer(self.old, o));
        let is = change.after.as_ref().map(|o| answer(self.new, o));
        let head = match (was, is) {
            (Some(was), Some(is)) if was == is => t!(m, "compare-stays", item = item, answer = is),
            (Some(was), Some(is)) => t!(m, "compare-becomes", item = item, before = was, after = is),
            (None, Some(is)) => t!(m, "compare-new", item = item, answer = is),
            (Some(was), None) => t!(m, "compare-gone", item = item, answer = was),
            (None, None) => item,
        };
        let mut lines = self.when(&change.when);
        lines.extend(self.details(change));
        Told { head, lines }
    }

    /// When something holds, as sentences; none when it always does.
    fn when(&self, when: &When) -> Vec<String> {
        conditions(self.new, when).into_iter().collect()
    }

    /// What of the answer differs beside verdict and destination.
    fn details(&self, change: &Change) -> Vec<String> {
        let m = self.messages();
        let mut lines = Vec::new();
        let has = |aspect| change.differs.contains(&aspect);
        let steps = |words: Words<'_>, ids: &[String]| -> String {
            ids.iter().map(|id| words.step(id)).collect::<Vec<_>>().join(" ")
        };
        if !change.steps_added.is_empty() {
            lines.push(t!(m, "compare-steps-added", steps = steps(self.new, &change.steps_added)));
        }
        if !change.steps_removed.is_empty() {
            lines.push(t!(m, "compare-steps-removed", steps = steps(self.old, &change.steps_removed)));
        }
        let (Some(before), Some(after)) = (&change.before, &change.after) else { return lines };
        if has(Aspect::Preparation) && change.steps_added.is_empty() && change.steps_removed.is_empty() {
            lines.push(t!(m, "compare-steps-order", steps = steps(self.new, &after.steps)));
        }
        if has(Aspect::Also) {
            let places: Vec<String> = after.also.iter().map(|id| self.new.named("channel", id)).collect();
            lines.push(match places.is_empty() {
                false => t!(m, "compare-also", places = m.list_and(&places)),
                true => t!(m, "compare-also-none"),
            });
        }
        if has(Aspect::Banned) {
            let bans = self.new.banned(after);
            lines.extend(if bans.is_empty() { vec![t!(m, "compare-ban-gone")] } else { bans });
        }
        if has(Aspect::Caution) {
            let class = |hazard: &str| self.new.say(&format!("value-hazard-{hazard}"));
            lines.push(match (&before.hazard, &after.hazard) {
                (_, Some(now)) => t!(m, "compare-caution", hazard = class(now)),
                (was, None) => {
                    t!(m, "compare-caution-gone", hazard = class(was.as_deref().unwrap_or("none")))
                }
            });
        }
        if has(Aspect::Reason) {
            lines.push(match self.new.reason(after) {
                Some(reason) => t!(m, "compare-reason", reason = reason),
                None => t!(m, "compare-reason-gone"),
            });
            let was = self.old.reason(before);
            lines.extend(was.map(|words| t!(m, "notice-words-before", words = words)));
        }
        if has(Aspect::Temporary) {
            lines.push(match after.temporary {
                true => t!(m, "compare-temporary"),
                false => t!(m, "compare-temporary-over"),
            });
        }
        lines
    }

    fn asked(&self, asked: &Asked) -> Told {
        let m = self.messages();
        let facts = |ids: &[String]| -> String {
            m.list_and(&ids.iter().map(|id| self.new.say(&format!("fact-{id}"))).collect::<Vec<_>>())
        };
        let mut lines = Vec::new();
        if !asked.now.is_empty() {
            lines.push(t!(m, "notice-asked-now", facts = facts(&asked.now)));
        }
        if !asked.no_longer.is_empty() {
            lines.push(t!(m, "notice-asked-no-longer", facts = facts(&asked.no_longer)));
        }
        Told { head: self.new.item(&asked.item), lines }
    }

    /// Texts in other words, each with what it said before, in the language in which they were written.
    #[must_use]
    pub fn reworded(&self, comparison: &Comparison) -> Vec<Told> {
        let m = self.messages();
        let told = |text: &Reworded| {
            let mut lines = vec![t!(m, "notice-words-before", words = text.before.as_str())];
            let mut named: Vec<String> =
                text.items.iter().take(MOST_NAMED).map(|id| self.new.item(id)).collect();
            let more = text.items.len() - named.len();
            if more > 0 {
                named.push(t!(m, "notice-more", count = more));
            }
            if !named.is_empty() {
                lines.push(t!(m, "notice-words-of", items = m.list_and(&named)));
            }
            Told { head: t!(m, "notice-words-now", words = text.after.as_str()), lines }
        };
        comparison.reworded.iter().map(told).collect()
    }

    /// A change notice that a coordinator can paste in a letter. Its dates are the program's.
    #[must_use]
    pub fn notice(&self, comparison: &Comparison, notice: &Notice, untrue: &[Told]) -> Text {
        let m = self.messages();
        let place = self.new.text("program.name").unwrap_or_default().to_owned();
        let mut lead = vec![t!(
            m,
            "notice-editions",
            before = edition(m, &comparison.before),
            after = edition(m, &comparison.after)
        )];
        lead.extend(comparison.on.map(|day| t!(m, "notice-on", day = m.date(day, DateStyle::Long))));
        if notice.groups.is_empty() {
            lead.push(t!(m, "notice-nothing"));
        }
        let mut sections: Vec<(String, Vec<Told>)> = notice
            .groups
            .iter()
            .map(|group| {
                let entries = group
                    .changes
                    .iter()
                    .map(|change| self.change(change))
                    .chain(group.asked.iter().map(|asked| self.asked(asked)))
                    .collect();
                (heading(m, group.kind), entries)
            })
            .collect();
        let reworded = self.reworded(comparison);
        if !reworded.is_empty() {
            sections.push((t!(m, "notice-reworded"), reworded));
        }
        if !untrue.is_empty() {
            sections.push((t!(m, "untrue-title"), untrue.to_vec()));
        }
        let mut tail: Vec<String> = Vec::new();
        if self.new.pack.unreviewed {
            tail.push(t!(m, "notice-unreviewed"));
        }
        Text { title: t!(m, "notice-title", place = place), lead, sections, tail }
    }
}

/// The contact line of a program, for the end of a notice.
#[must_use]
pub fn contact(program: &Program, words: Words<'_>) -> Option<String> {
    let name = words.text("contact.name")?;
    let ways = [program.contact.phone.trim(), program.contact.email.trim()];
    let ways: Vec<&str> = ways.into_iter().filter(|way| !way.is_empty()).collect();
    Some(t!(words.messages, "notice-contact", name = name, ways = words.messages.list_or(&ways)))
}

fn edition(m: &Messages, edition: &Edition) -> String {
    let label = edition.label.as_str();
    match edition.from {
        Some(day) => t!(m, "notice-edition-from", label = label, day = m.date(day, DateStyle::Long)),
        None => t!(m, "notice-edition", label = label),
    }
}

fn heading(m: &Messages, kind: NoticeKind) -> String {
    match kind {
        NoticeKind::NowAccepted => t!(m, "notice-now-accepted"),
        NoticeKind::NoLongerAccepted => t!(m, "notice-no-longer-accepted"),
        NoticeKind::AnotherPlace => t!(m, "notice-another-place"),
        NoticeKind::PreparedDifferently => t!(m, "notice-prepared-differently"),
        NoticeKind::AskedDifferently => t!(m, "notice-asked-differently"),
        NoticeKind::CautionChanged => t!(m, "notice-caution-changed"),
        NoticeKind::ExplainedDifferently => t!(m, "notice-explained-differently"),
        NoticeKind::NewInGuide => t!(m, "notice-new-in-guide"),
        NoticeKind::GoneFromGuide => t!(m, "notice-gone-from-guide"),
    }
}

/// Verdict and destination.
fn answer(words: Words<'_>, said: &Outcome) -> String {
    placed(words, said.verdict.code(), words.destination(said))
}

fn placed(words: Words<'_>, verdict: &str, place: Option<String>) -> String {
    let verdict = words.say(&format!("verdict-{verdict}"));
    match place {
        Some(place) => t!(words.messages, "compare-answer", verdict = verdict, place = place),
        None => verdict,
    }
}

/// Exactly when something holds, as one sentence; none when it always does.
#[must_use]
pub fn conditions(words: Words<'_>, when: &When) -> Option<String> {
    let m = words.messages;
    if when.is_empty() {
        return Some(t!(m, "compare-when-many"));
    }
    if when.iter().any(Vec::is_empty) {
        return None;
    }
    let alternatives: Vec<String> = when
        .iter()
        .map(|all| all.iter().map(|is| fact_is(words, is)).collect::<Vec<_>>())
        .map(|facts| m.list_and(&facts))
        .collect();
    let mut alternatives = alternatives.into_iter();
    let first = alternatives.next()?;
    let text = alternatives.fold(first, |text, next| t!(m, "compare-or", before = text, next = next));
    Some(t!(m, "compare-when", conditions = text))
}

/// A fact with the values it has: "Resin mark: 3, 6 or 7", "from March 1, 2027".
fn fact_is(words: Words<'_>, is: &FactIs) -> String {
    let m = words.messages;
    if is.fact == "day" {
        let spans: Vec<String> = is.values.iter().map(|value| span(words, value)).collect();
        return m.list_or(&spans);
    }
    let values = |labels: &[ValueLabel]| -> String {
        m.list_or(&labels.iter().map(|label| words.value(&is.fact, label)).collect::<Vec<_>>())
    };
    // "Any but 1 or 2" is shorter to read than seven others.
    let value = if is.except.is_empty() || is.except.len() + 1 >= is.values.len() {
        values(&is.values)
    } else {
        t!(m, "compare-any-but", values = values(&is.except))
    };
    let name = words.say(&format!("fact-{}", is.fact));
    t!(m, "fact-value", fact = name, value = value)
}

/// A fact with a value it has, in a case that shows something: a span of days by its first and last day.
#[must_use]
pub fn fact_value(words: Words<'_>, fact: &str, label: &ValueLabel) -> String {
    if fact != "day" {
        return words.fact_value(fact, label);
    }
    let name = words.say(&format!("fact-{fact}"));
    t!(words.messages, "fact-value", fact = name, value = span(words, label))
}

/// A span of days by its first and last day.
fn span(words: Words<'_>, value: &ValueLabel) -> String {
    let m = words.messages;
    let ValueLabel::Range(Ends { at_least, over, at_most, under, .. }) = value else {
        return words.value("day", value);
    };
    let day = |text: &Option<String>| text.as_ref().and_then(|d| d.parse::<NaiveDate>().ok());
    let first = day(at_least).or_else(|| day(over).and_then(|d| d.checked_add_days(Days::new(1))));
    let last = day(at_most).or_else(|| day(under).and_then(|d| d.checked_sub_days(Days::new(1))));
    let date = |day: NaiveDate| m.date(day, DateStyle::Long);
    match (first, last) {
        (Some(first), Some(last)) if first == last => t!(m, "compare-day-on", day = date(first)),
        (Some(first), Some(last)) => {
            t!(m, "compare-day-between", first = date(first), last = date(last))
        }
        (Some(first), None) => t!(m, "compare-day-from", day = date(first)),
        (None, Some(last)) => t!(m, "compare-day-until", day = date(last)),
        (None, None) => words.value("day", value),
    }
}

/// A printed line that is no longer true, and what is true now.
#[must_use]
pub fn untrue(line: &UntrueLine, sheets: &[PrintedSheet], words: Words<'_>) -> Told {
    let m = words.messages;
    let shown = if line.words.is_empty() { words.item(&line.item) } else { line.words.clone() };
    let sheet = sheets.iter().find(|sheet| sheet.id == line.sheet);
    let place = sheet.map_or_else(
        || line.sheet.clone(),
        |s| t!(m, "untrue-sheet", id = s.id.as_str(), edition = s.edition.as_str(), copies = s.copies),
    );
    let date = |day: NaiveDate| m.date(day, DateStyle::Long);
    let head = match (line.since, line.until) {
        (None, None) => t!(m, "untrue-always", line = shown, sheet = place),
        (Some(first), None) => t!(m, "untrue-from", line = shown, sheet = place, day = date(first)),
        (None, Some(last)) => t!(m, "untrue-until", line = shown, sheet = place, day = date(last)),
        (Some(first), Some(last)) => {
            t!(m, "untrue-between", line = shown, sheet = place, first = date(first), last = date(last))
        }
    };
    let mut lines: Vec<String> = conditions(words, &line.when).into_iter().collect();
    lines.push(match &line.now {
        Some(now) => t!(m, "untrue-now", answer = answer(words, now)),
        None => t!(m, "untrue-gone"),
    });
    Told { head, lines }
}

/// The regional report: `names` are the programs' words in one language, in the report's order.
#[must_use]
pub fn regional(report: &Regional, names: &[Words<'_>]) -> Text {
    let Some(first) = names.first().copied() else { return Text::default() };
    let m = first.messages;
    let place = |at: usize| -> String {
        let named = names.get(at).and_then(|words| words.text("program.name"));
        let id = || report.programs.get(at).map(|p| p.program.as_str());
        named.or_else(id).unwrap_or_default().to_owned()
    };
    let places = |all: &[usize]| m.list_and(&all.iter().map(|&at| place(at)).collect::<Vec<_>>());
    // Names of items and steps are those of a program that has them.
    let subject = |item: &str, part: Option<&str>| {
        let knows = names.iter().find(|words| words.pack.names.contains_key(item));
        knows.unwrap_or(&first).subject(item, part)
    };
    let step = |tellers: &[usize], id: &str| {
        tellers.first().and_then(|&at| names.get(at)).unwrap_or(&first).step(id)
    };
    let say = |told: &Common, tellers: &[usize]| -> String {
        let kind = told.place.as_ref().map(|place| match place {
            PlaceKind::Stream(kind) => first.say(&format!("stream-kind-{kind}")),
            PlaceKind::Channel(kind) => first.say(&format!("channel-kind-{kind}")),
        });
        let answer = placed(first, told.verdict.code(), kind);
        let steps: Vec<String> = told.steps.iter().map(|id| step(tellers, id)).collect();
        match steps.is_empty() {
            true => answer,
            false => t!(m, "regional-with-steps", answer = answer, steps = steps.join(" ")),
        }
    };
    let everyone: Vec<usize> = (0..report.programs.len()).collect();
    let mut sections = Vec::new();
    let contradictions: Vec<Told> = report
        .contradictory
        .iter()
        .map(|c| Told {
            head: subject(&c.item, c.part.as_deref()),
            lines: [
                t!(m, "regional-says", places = places(&c.told_by), answer = step(&c.told_by, &c.step)),
                t!(
                    m,
                    "regional-says",
                    places = places(&c.opposite_told_by),
                    answer = step(&c.opposite_told_by, &c.opposite)
                ),
            ]
            .into_iter()
            .chain(conditions(first, &c.when))
            .collect(),
        })
        .collect();
    if !contradictions.is_empty() {
        sections.push((t!(m, "regional-contradictory"), contradictions));
    }
    // The most common items first; of each the likeliest cases, the rest counted.
    let mut differing: Vec<(u32, Told)> = Vec::new();
    let mut rest = report.differing.as_slice();
    while let Some(one) = rest.first() {
        let same = rest.iter().take_while(|d| d.item == one.item && d.part == one.part).count();
        let mut lines: Vec<String> = one
            .groups
            .iter()
            .map(|group| {
                let told: Vec<String> = group.told.iter().map(|t| say(t, &group.programs)).collect();
                let answer = match told.is_empty() {
                    true => t!(m, "regional-unknown"),
                    false => m.list_or(&told),
                };
                t!(m, "regional-says", places = places(&group.programs), answer = answer)
            })
            .collect();
        lines.extend(conditions(first, &one.when));
        if same > 1 {
            lines.push(t!(m, "regional-more-cases", count = same - 1));
        }
        differing.push((one.common, Told { head: subject(&one.item, one.part.as_deref()), lines }));
        rest = rest.get(same..).unwrap_or_default();
    }
    differing.sort_by_key(|(common, _)| std::cmp::Reverse(*common));
    if !differing.is_empty() {
        let heading = t!(m, "regional-differing", count = differing.len());
        sections.push((heading, differing.into_iter().map(|(_, told)| told).collect()));
    }
    // What is true everywhere, by what is said.
    let mut agreed: Vec<(&Common, Vec<String>)> = Vec::new();
    for one in &report.agreed {
        let name = subject(&one.item, one.part.as_deref());
        let name = match conditions(first, &one.when) {
            Some(when) => t!(m, "regional-item-when", item = name, when = when),
            None => name,
        };
        match agreed.iter_mut().find(|(told, _)| **told == one.told) {
            Some((_, items)) => items.push(name),
            None => agreed.push((&one.told, vec![name])),
        }
    }
    let agreed: Vec<Told> =
        agreed.into_iter().map(|(told, lines)| Told { head: say(told, &everyone), lines }).collect();
    if !agreed.is_empty() {
        sections.push((t!(m, "regional-agreed"), agreed));
    }
    Text {
        title: t!(m, "regional-title", places = places(&everyone)),
        lead: Vec::new(),
        sections,
        tail: Vec::new(),
    }
}
