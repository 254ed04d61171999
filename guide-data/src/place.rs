//! The wordless description of a place that a guide carries beside its diagram.

use chrono::NaiveDate;

use crate::guide::{Guide, GuideChannel, GuideContact, GuideContainer, GuideSite, GuideStream, GuideZone};
use crate::hours::Schedule;
use crate::program::Program;

/// Everything of a guide but its items and diagram.
pub(crate) fn guide_of(program: &Program) -> Guide {
    Guide {
        program: program.id.clone(),
        edition: program.edition.clone(),
        source_language: program.source_language.clone(),
        languages: program.languages.clone(),
        guide_url: program.guide_url.clone(),
        contact: GuideContact { phone: program.contact.phone.clone(), email: program.contact.email.clone() },
        streams: program
            .streams
            .iter()
            .map(|s| GuideStream {
                id: s.id.clone(),
                kind: s.kind.clone(),
                containers: s
                    .containers
                    .iter()
                    .map(|c| GuideContainer {
                        id: c.id.clone(),
                        kind: c.kind.clone(),
                        colour: c.colour.clone(),
                        capacity: c.capacity.clone(),
                        zones: c.zones.clone(),
                        dwellings: c.dwellings.clone(),
                        rules: c.rules.iter().map(|r| (r.kind.clone(), r.limit.clone())).collect(),
                    })
                    .collect(),
            })
            .collect(),
        zones: program
            .zones
            .iter()
            .map(|z| GuideZone {
                id: z.id.clone(),
                dwelling: z.dwelling.clone(),
                streams: z.streams.clone(),
                centre: z.centre,
            })
            .collect(),
        channels: program
            .channels
            .iter()
            .map(|c| GuideChannel {
                id: c.id.clone(),
                kind: c.kind.clone(),
                booking: c.booking,
                proof: c.proof,
                permit: c.permit,
                voucher: c.voucher,
                has_fee: !c.fee.is_empty(),
            })
            .collect(),
        sites: program
            .sites
            .iter()
            .map(|s| GuideSite {
                id: s.id.clone(),
                channels: s.channels.clone(),
                position: s.position,
                address: s.address.clone(),
                phone: s.phone.clone(),
                hours: Schedule::default(),
                accepts: s.accepts.clone(),
                refuses: s.refuses.clone(),
            })
            .collect(),
        ..Guide::default()
    }
}

/// The day tables of opening hours begin on when an edition names no first day: the year in which
/// the format was made, so that nothing published earlier can exist.
const EARLIEST: Option<NaiveDate> = NaiveDate::from_ymd_opt(2026, 1, 1);

impl Guide {
    /// Works out the opening hours of all sites. It is apart from compiling because it takes
    /// longer than all rules together and no rule depends on it. Hours that cannot be read are
    /// left unknown; checking the program has said so.
    pub fn fill_hours(&mut self, program: &Program) {
        let from = program.edition.from.or(EARLIEST).unwrap_or_default();
        for site in &mut self.sites {
            if let Some(stated) = program.sites.iter().find(|s| s.id == site.id) {
                site.hours = Schedule::read(&stated.hours, from).unwrap_or_default();
            }
        }
    }
}
