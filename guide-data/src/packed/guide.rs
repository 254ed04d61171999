//! A guide as bytes.

use chrono::{NaiveDate, TimeDelta};

use super::bytes::{PackProblem, Reader, Writer, checksum};
use crate::diagram::{IMPOSSIBLE, Node, Ref, as_terminal, is_node, terminal};
use crate::domain::{Aside, Cut, Variable, day_number};
use crate::guide::{
    Answered, Guide, GuideChannel, GuideContact, GuideContainer, GuideItem, GuideSite, GuideStream,
    GuideZone, OpenVariable, Outcome, Subject,
};
use crate::hours::Schedule;
use crate::program::{Edition, Position, Tier};

const KIND: u8 = b'G';

const VERDICTS: [Answered; 5] =
    [Answered::Yes, Answered::No, Answered::Elsewhere, Answered::Unlisted, Answered::Undecided];

impl Guide {
    /// The guide as a phone is sent it; see [`crate::packed`]. The list of all items as values of the
    /// fact `item` is left out, because which item is asked about is never a question.
    #[must_use]
    pub fn to_bytes(&self) -> Vec<u8> {
        let mut w = Writer::default();
        w.text(&self.program);
        w.text(&self.edition.label);
        w.size(usize::from(self.edition.from.is_some()));
        w.signed(self.edition.from.map_or(0, day_number));
        w.text(&self.source_language);
        w.list(&self.languages);
        w.text(&self.guide_url);
        w.text(&self.contact.phone);
        w.text(&self.contact.email);
        write_all(&mut w, &self.streams, stream);
        write_all(&mut w, &self.zones, zone);
        write_all(&mut w, &self.channels, channel);
        write_all(&mut w, &self.sites, site);
        write_all(&mut w, &self.variables, variable);
        write_all(&mut w, &self.outcomes, outcome);
        w.size(self.nodes.len());
        for (at, node) in self.nodes.iter().enumerate() {
            w.number(u64::from(node.variable));
            w.size(node.children.len());
            for &child in &node.children {
                reference(&mut w, child, at);
            }
        }
        w.size(self.items.len());
        for one in &self.items {
            item(&mut w, one, self.nodes.len());
        }
        w.finish(KIND)
    }

    /// Reads a guide that was written so.
    ///
    /// # Errors
    /// Says why the bytes are not a guide; see [`PackProblem`].
    pub fn from_bytes(bytes: &[u8]) -> Result<Self, PackProblem> {
        let mut r = Reader::open(bytes, KIND);
        let r = &mut r;
        let mut guide = Self {
            program: r.text(),
            edition: Edition { label: r.text(), from: read_day(r) },
            source_language: r.text(),
            languages: r.list(),
            guide_url: r.text(),
            contact: GuideContact { phone: r.text(), email: r.text() },
            streams: r.all(read_stream),
            zones: r.all(read_zone),
            channels: r.all(read_channel),
            sites: r.all(read_site),
            variables: r.all(read_variable),
            outcomes: r.all(read_outcome),
            ..Self::default()
        };
        let count = r.count();
        guide.nodes.reserve(count);
        for _ in 0..count {
            let node = read_node(r, &guide);
            guide.nodes.push(node);
        }
        guide.items = r.all(|r| read_item(r, &guide));
        r.finish(guide)
    }

    /// Tells the list of its items from another: words that name items by their place belong to one.
    pub(super) fn items_mark(&self) -> u64 {
        checksum(self.items.iter().flat_map(|item| item.id.as_bytes().iter().chain(b"\n")))
    }
}

fn write_all<T>(w: &mut Writer, all: &[T], write: fn(&mut Writer, &T)) {
    w.size(all.len());
    for one in all {
        write(w, one);
    }
}

fn read_day(r: &mut Reader<'_>) -> Option<NaiveDate> {
    let (known, number) = (r.flag(), r.signed());
    let days = TimeDelta::try_days(number).filter(|_| known)?;
    let day = NaiveDate::default().checked_add_signed(days);
    if day.is_none() {
        r.damaged();
    }
    day
}

fn stream(w: &mut Writer, stream: &GuideStream) {
    w.text(&stream.id);
    w.text(&stream.kind);
    write_all(w, &stream.containers, container);
}

fn read_stream(r: &mut Reader<'_>) -> GuideStream {
    GuideStream { id: r.text(), kind: r.text(), containers: r.all(read_container) }
}

fn container(w: &mut Writer, container: &GuideContainer) {
    w.text(&container.id);
    w.text(&container.kind);
    w.text(&container.colour);
    w.maybe(container.capacity.as_deref());
    w.list(&container.zones);
    w.list(&container.dwellings);
    write_all(w, &container.rules, |w, (kind, limit)| {
        w.text(kind);
        w.maybe(limit.as_deref());
    });
}

fn read_container(r: &mut Reader<'_>) -> GuideContainer {
    GuideContainer {
        id: r.text(),
        kind: r.text(),
        colour: r.text(),
        capacity: r.maybe(),
        zones: r.list(),
        dwellings: r.list(),
        rules: r.all(|r| (r.text(), r.maybe())),
    }
}

fn zone(w: &mut Writer, zone: &GuideZone) {
    w.text(&zone.id);
    w.maybe(zone.dwelling.as_deref());
    w.list(&zone.streams);
    w.size(usize::from(zone.centre.is_some()));
    if let Some(centre) = zone.centre {
        position(w, centre);
    }
}

fn read_zone(r: &mut Reader<'_>) -> GuideZone {
    GuideZone {
        id: r.text(),
        dwelling: r.maybe(),
        streams: r.list(),
        centre: if r.flag() { Some(read_position(r)) } else { None },
    }
}

fn position(w: &mut Writer, position: Position) {
    w.float(position.lat);
    w.float(position.lon);
}

fn read_position(r: &mut Reader<'_>) -> Position {
    Position { lat: r.float(), lon: r.float() }
}

fn channel(w: &mut Writer, channel: &GuideChannel) {
    w.text(&channel.id);
    w.text(&channel.kind);
    w.flags(&[channel.booking, channel.proof, channel.permit, channel.voucher, channel.has_fee]);
}

fn read_channel(r: &mut Reader<'_>) -> GuideChannel {
    let (id, kind, flags) = (r.text(), r.text(), r.flags(5));
    GuideChannel {
        id,
        kind,
        booking: flags & 1 != 0,
        proof: flags & 2 != 0,
        permit: flags & 4 != 0,
        voucher: flags & 8 != 0,
        has_fee: flags & 16 != 0,
    }
}

fn site(w: &mut Writer, site: &GuideSite) {
    w.text(&site.id);
    w.list(&site.channels);
    position(w, site.position);
    w.text(&site.address);
    w.text(&site.phone);
    w.list(&site.accepts);
    w.list(&site.refuses);
    schedule(w, &site.hours);
}

fn read_site(r: &mut Reader<'_>) -> GuideSite {
    GuideSite {
        id: r.text(),
        channels: r.list(),
        position: read_position(r),
        address: r.text(),
        phone: r.text(),
        accepts: r.list(),
        refuses: r.list(),
        hours: read_schedule(r),
    }
}

fn schedule(w: &mut Writer, hours: &Schedule) {
    w.text(&hours.stated);
    w.text(&hours.comment);
    w.signed(hours.first);
    write_all(w, &hours.days, |w, spans| {
        write_all(w, spans, |w, span| {
            w.number(u64::from(span.0));
            w.number(u64::from(span.1));
            w.flags(&[span.2]);
        });
    });
    write_all(w, &hours.weeks, |w, (count, week)| {
        w.number(u64::from(*count));
        for day in week {
            w.number(u64::from(*day));
        }
    });
}

fn read_schedule(r: &mut Reader<'_>) -> Schedule {
    Schedule {
        stated: r.text(),
        comment: r.text(),
        first: r.signed(),
        days: r.all(|r| r.all(|r| crate::hours::Span(r.small(), r.small(), r.flag()))),
        weeks: r.all(|r| {
            let count = r.small();
            let mut week = [0_u8; 7];
            for day in &mut week {
                *day = r.byte();
            }
            (count, week)
        }),
    }
}

fn variable(w: &mut Writer, variable: &Variable) {
    w.text(&variable.fact);
    w.flags(&[variable.measured]);
    w.list(if variable.fact == "item" { &[] } else { &variable.values });
    write_all(w, &variable.cuts, |w, cut| {
        w.signed(cut.at);
        w.flags(&[cut.below]);
        w.text(&cut.stated);
        w.maybe(cut.aside.like.as_deref());
        w.maybe(cut.aside.per.as_deref());
    });
    write_all(w, &variable.weights, |w, weight| w.number(u64::from(*weight)));
}

fn read_variable(r: &mut Reader<'_>) -> Variable {
    let (fact, measured, values) = (r.text(), r.flag(), r.list());
    let cuts = r.all(|r| Cut {
        at: r.signed(),
        below: r.flag(),
        stated: r.text(),
        aside: Aside { like: r.maybe(), per: r.maybe() },
    });
    let weights = r.all(|r| r.medium());
    Variable { fact, values, cuts, measured, weights }
}

fn outcome(w: &mut Writer, outcome: &Outcome) {
    w.size(VERDICTS.iter().position(|v| *v == outcome.verdict).unwrap_or_default());
    w.maybe(outcome.stream.as_deref());
    w.maybe(outcome.channel.as_deref());
    w.list(&outcome.also);
    w.list(&outcome.rules);
    w.size(outcome.tier.and_then(|t| Tier::ALL.iter().position(|o| *o == t)).map_or(0, |at| at + 1));
    w.maybe(outcome.hazard.as_deref());
    w.list(&outcome.steps);
    w.list(&outcome.banned);
    w.maybe(outcome.reason.as_deref());
    w.flags(&[outcome.temporary, outcome.closed_list, outcome.acknowledged]);
}

fn read_outcome(r: &mut Reader<'_>) -> Outcome {
    let verdict = VERDICTS.get(r.size()).copied();
    let mut outcome = Outcome {
        verdict: verdict.unwrap_or_default(),
        stream: r.maybe(),
        channel: r.maybe(),
        also: r.list(),
        rules: r.list(),
        ..Outcome::default()
    };
    let tier = r.size();
    outcome.tier = tier.checked_sub(1).and_then(|at| Tier::ALL.get(at)).copied();
    if verdict.is_none() || tier > Tier::ALL.len() {
        r.damaged();
    }
    outcome.hazard = r.maybe();
    outcome.steps = r.list();
    outcome.banned = r.list();
    outcome.reason = r.maybe();
    let flags = r.flags(3);
    (outcome.temporary, outcome.closed_list, outcome.acknowledged) =
        (flags & 1 != 0, flags & 2 != 0, flags & 4 != 0);
    outcome
}

/// A reference as seen from the node `from`, before which all that it leads to stands: 0 for a case
/// that cannot occur, odd for an outcome, even for a node by how far back it is.
fn reference(w: &mut Writer, to: Ref, from: usize) {
    match as_terminal(to) {
        Some(outcome) => w.size(2 * outcome + 1),
        None if is_node(to) => w.size(2 * from.saturating_sub(to as usize)),
        None => w.size(0),
    }
}

fn read_reference(r: &mut Reader<'_>, from: usize, outcomes: usize) -> Ref {
    let number = r.size();
    let read = match (number % 2, number / 2) {
        (1, outcome) => (outcome < outcomes).then(|| terminal(outcome)),
        (_, 0) => Some(IMPOSSIBLE),
        (_, back) => from.checked_sub(back).and_then(|at| Ref::try_from(at).ok()).filter(|at| is_node(*at)),
    };
    read.unwrap_or_else(|| {
        r.damaged();
        IMPOSSIBLE
    })
}

fn read_node(r: &mut Reader<'_>, before: &Guide) -> Node {
    let variable = r.small();
    let children = r.all(|r| read_reference(r, before.nodes.len(), before.outcomes.len()));
    // Variables are tested in order along every way down.
    let later = |child: &Ref| before.node(*child).is_none_or(|below| below.variable > variable);
    if usize::from(variable) >= before.variables.len() || !children.iter().all(later) {
        r.damaged();
    }
    Node { variable, children }
}

/// An item, and how many nodes there are.
fn item(w: &mut Writer, item: &GuideItem, nodes: usize) {
    w.text(&item.id);
    w.text(&item.category);
    w.text(&item.pictogram);
    w.number(u64::from(item.common));
    w.flags(&[item.often_wrong]);
    w.size(item.subjects.len());
    for subject in &item.subjects {
        w.maybe(subject.part.as_deref());
        reference(w, subject.root, nodes);
        write_all(w, &subject.open, |w, open| {
            w.number(u64::from(open.variable));
            w.number(u64::from(open.assumed));
            write_all(w, &open.weights, |w, (value, weight)| {
                w.number(u64::from(*value));
                w.number(u64::from(*weight));
            });
        });
    }
}

fn read_item(r: &mut Reader<'_>, before: &Guide) -> GuideItem {
    GuideItem {
        id: r.text(),
        category: r.text(),
        pictogram: r.text(),
        common: r.medium(),
        often_wrong: r.flag(),
        subjects: r.all(|r| Subject {
            part: r.maybe(),
            // Seen from behind the last node.
            root: read_reference(r, before.nodes.len(), before.outcomes.len()),
            open: r.all(|r| read_open(r, before)),
        }),
    }
}

fn read_open(r: &mut Reader<'_>, before: &Guide) -> OpenVariable {
    let (variable, assumed) = (r.small(), r.small());
    if usize::from(variable) >= before.variables.len() {
        r.damaged();
    }
    OpenVariable { variable, assumed, weights: r.all(|r| (r.small(), r.medium())) }
}
