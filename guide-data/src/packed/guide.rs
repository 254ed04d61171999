//! A guide as bytes.

use chrono::{NaiveDate, TimeDelta};

use super::bytes::{PackProblem, Read, Reader, Writer, checksum};
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
        write_all(&mut w, &self.items, item);
        w.finish(KIND)
    }

    /// Reads a guide that was written so.
    ///
    /// # Errors
    /// Says why the bytes are not a guide; see [`PackProblem`].
    pub fn from_bytes(bytes: &[u8]) -> Result<Self, PackProblem> {
        let mut r = Reader::open(bytes, KIND)?;
        let mut guide = Self { program: r.text()?, ..Self::default() };
        guide.edition = read_edition(&mut r)?;
        guide.source_language = r.text()?;
        guide.languages = r.list()?;
        guide.guide_url = r.text()?;
        guide.contact = GuideContact { phone: r.text()?, email: r.text()? };
        guide.streams = read_all(&mut r, read_stream)?;
        guide.zones = read_all(&mut r, read_zone)?;
        guide.channels = read_all(&mut r, read_channel)?;
        guide.sites = read_all(&mut r, read_site)?;
        guide.variables = read_all(&mut r, read_variable)?;
        guide.outcomes = read_all(&mut r, read_outcome)?;
        let count = r.count()?;
        guide.nodes.reserve(count);
        for _ in 0..count {
            let node = read_node(&mut r, &guide)?;
            guide.nodes.push(node);
        }
        let count = r.count()?;
        guide.items.reserve(count);
        for _ in 0..count {
            let item = read_item(&mut r, &guide)?;
            guide.items.push(item);
        }
        r.finish()?;
        Ok(guide)
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

fn read_all<T>(r: &mut Reader<'_>, read: fn(&mut Reader<'_>) -> Read<T>) -> Read<Vec<T>> {
    let count = r.count()?;
    let mut all = Vec::with_capacity(count.min(1024));
    for _ in 0..count {
        all.push(read(r)?);
    }
    Ok(all)
}

fn read_edition(r: &mut Reader<'_>) -> Read<Edition> {
    let label = r.text()?;
    let (known, day) = (r.flags(1)? == 1, r.signed()?);
    let from = match known {
        true => Some(day_of(day).ok_or(r.damaged())?),
        false => None,
    };
    Ok(Edition { label, from })
}

fn day_of(number: i64) -> Option<NaiveDate> {
    NaiveDate::default().checked_add_signed(TimeDelta::try_days(number)?)
}

fn stream(w: &mut Writer, stream: &GuideStream) {
    w.text(&stream.id);
    w.text(&stream.kind);
    write_all(w, &stream.containers, container);
}

fn read_stream(r: &mut Reader<'_>) -> Read<GuideStream> {
    Ok(GuideStream { id: r.text()?, kind: r.text()?, containers: read_all(r, read_container)? })
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

fn read_container(r: &mut Reader<'_>) -> Read<GuideContainer> {
    Ok(GuideContainer {
        id: r.text()?,
        kind: r.text()?,
        colour: r.text()?,
        capacity: r.maybe()?,
        zones: r.list()?,
        dwellings: r.list()?,
        rules: read_all(r, |r| Ok((r.text()?, r.maybe()?)))?,
    })
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

fn read_zone(r: &mut Reader<'_>) -> Read<GuideZone> {
    Ok(GuideZone {
        id: r.text()?,
        dwelling: r.maybe()?,
        streams: r.list()?,
        centre: if r.flags(1)? == 1 { Some(read_position(r)?) } else { None },
    })
}

fn position(w: &mut Writer, position: Position) {
    w.float(position.lat);
    w.float(position.lon);
}

fn read_position(r: &mut Reader<'_>) -> Read<Position> {
    Ok(Position { lat: r.float()?, lon: r.float()? })
}

fn channel(w: &mut Writer, channel: &GuideChannel) {
    w.text(&channel.id);
    w.text(&channel.kind);
    w.flags(&[channel.booking, channel.proof, channel.permit, channel.voucher, channel.has_fee]);
}

fn read_channel(r: &mut Reader<'_>) -> Read<GuideChannel> {
    let (id, kind, flags) = (r.text()?, r.text()?, r.flags(5)?);
    Ok(GuideChannel {
        id,
        kind,
        booking: flags & 1 != 0,
        proof: flags & 2 != 0,
        permit: flags & 4 != 0,
        voucher: flags & 8 != 0,
        has_fee: flags & 16 != 0,
    })
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

fn read_site(r: &mut Reader<'_>) -> Read<GuideSite> {
    Ok(GuideSite {
        id: r.text()?,
        channels: r.list()?,
        position: read_position(r)?,
        address: r.text()?,
        phone: r.text()?,
        accepts: r.list()?,
        refuses: r.list()?,
        hours: read_schedule(r)?,
    })
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

fn read_schedule(r: &mut Reader<'_>) -> Read<Schedule> {
    Ok(Schedule {
        stated: r.text()?,
        comment: r.text()?,
        first: r.signed()?,
        days: read_all(r, |r| {
            read_all(r, |r| Ok(crate::hours::Span(r.small()?, r.small()?, r.flags(1)? == 1)))
        })?,
        weeks: read_all(r, |r| {
            let count = r.small()?;
            let mut week = [0_u8; 7];
            for day in &mut week {
                *day = u8::try_from(r.small()?).map_err(|_| r.damaged())?;
            }
            Ok((count, week))
        })?,
    })
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

fn read_variable(r: &mut Reader<'_>) -> Read<Variable> {
    let (fact, measured, values) = (r.text()?, r.flags(1)? == 1, r.list()?);
    let cuts = read_all(r, |r| {
        Ok(Cut {
            at: r.signed()?,
            below: r.flags(1)? == 1,
            stated: r.text()?,
            aside: Aside { like: r.maybe()?, per: r.maybe()? },
        })
    })?;
    let weights = read_all(r, |r| r.medium())?;
    Ok(Variable { fact, values, cuts, measured, weights })
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

fn read_outcome(r: &mut Reader<'_>) -> Read<Outcome> {
    let verdict = r.size()?;
    let mut outcome = Outcome {
        verdict: VERDICTS.get(verdict).copied().ok_or(r.damaged())?,
        stream: r.maybe()?,
        channel: r.maybe()?,
        also: r.list()?,
        rules: r.list()?,
        ..Outcome::default()
    };
    outcome.tier = match r.size()?.checked_sub(1) {
        None => None,
        Some(at) => Some(Tier::ALL.get(at).copied().ok_or(r.damaged())?),
    };
    outcome.hazard = r.maybe()?;
    outcome.steps = r.list()?;
    outcome.banned = r.list()?;
    outcome.reason = r.maybe()?;
    let flags = r.flags(3)?;
    (outcome.temporary, outcome.closed_list, outcome.acknowledged) =
        (flags & 1 != 0, flags & 2 != 0, flags & 4 != 0);
    Ok(outcome)
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

fn read_reference(r: &mut Reader<'_>, from: usize, outcomes: usize) -> Read<Ref> {
    let number = r.size()?;
    match (number % 2, number / 2) {
        (1, outcome) if outcome < outcomes => Ok(terminal(outcome)),
        (0, 0) => Ok(IMPOSSIBLE),
        (0, back) => {
            let at = from.checked_sub(back).and_then(|at| Ref::try_from(at).ok()).filter(|at| is_node(*at));
            at.ok_or(r.damaged())
        }
        _ => Err(r.damaged()),
    }
}

fn read_node(r: &mut Reader<'_>, before: &Guide) -> Read<Node> {
    let variable = r.small()?;
    if usize::from(variable) >= before.variables.len() {
        return Err(r.damaged());
    }
    let count = r.count()?;
    let mut children = Vec::with_capacity(count);
    for _ in 0..count {
        let child = read_reference(r, before.nodes.len(), before.outcomes.len())?;
        // Variables are tested in order along every way down.
        if before.node(child).is_some_and(|below| below.variable <= variable) {
            return Err(r.damaged());
        }
        children.push(child);
    }
    Ok(Node { variable, children })
}

fn item(w: &mut Writer, item: &GuideItem) {
    w.text(&item.id);
    w.text(&item.category);
    w.text(&item.pictogram);
    w.number(u64::from(item.common));
    w.flags(&[item.often_wrong]);
    write_all(w, &item.subjects, |w, subject| {
        w.maybe(subject.part.as_deref());
        // Seen from before the first node, a node's own place.
        match as_terminal(subject.root) {
            Some(outcome) => w.size(2 * outcome + 1),
            None if is_node(subject.root) => w.size(2 * (subject.root as usize + 1)),
            None => w.size(0),
        }
        write_all(w, &subject.open, |w, open| {
            w.number(u64::from(open.variable));
            w.number(u64::from(open.assumed));
            write_all(w, &open.weights, |w, (value, weight)| {
                w.number(u64::from(*value));
                w.number(u64::from(*weight));
            });
        });
    });
}

fn read_item(r: &mut Reader<'_>, before: &Guide) -> Read<GuideItem> {
    let (id, category, pictogram) = (r.text()?, r.text()?, r.text()?);
    let (common, often_wrong) = (r.medium()?, r.flags(1)? == 1);
    let count = r.count()?;
    let mut subjects = Vec::with_capacity(count);
    for _ in 0..count {
        let part = r.maybe()?;
        let number = r.size()?;
        let root = match (number % 2, number / 2) {
            (1, outcome) if outcome < before.outcomes.len() => terminal(outcome),
            (0, 0) => IMPOSSIBLE,
            (0, place) if place <= before.nodes.len() => Ref::try_from(place - 1).map_err(|_| r.damaged())?,
            _ => return Err(r.damaged()),
        };
        let open = read_all(r, |r| {
            let (variable, assumed) = (r.small()?, r.small()?);
            let weights = read_all(r, |r| Ok((r.small()?, r.medium()?)))?;
            Ok(OpenVariable { variable, weights, assumed })
        })?;
        if open.iter().any(|o| usize::from(o.variable) >= before.variables.len()) {
            return Err(r.damaged());
        }
        subjects.push(Subject { part, root, open });
    }
    Ok(GuideItem { id, category, pictogram, common, often_wrong, subjects })
}
