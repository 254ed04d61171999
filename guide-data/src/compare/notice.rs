//! A change notice: what changes for residents, grouped, the most common items first, neutral.

use serde::{Deserialize, Serialize};

use super::{Asked, Aspect, Change, Comparison};

/// A group of a notice, in the order in which they are told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum NoticeKind {
    /// It can go into a container at home now.
    NowAccepted,
    /// It no longer can.
    NoLongerAccepted,
    /// It goes to another place than before.
    AnotherPlace,
    /// It is prepared in another way.
    PreparedDifferently,
    /// Residents are asked other questions about it.
    AskedDifferently,
    /// The caution is another one.
    CautionChanged,
    /// Where it goes is unchanged; why, also where, or for how long is told differently.
    ExplainedDifferently,
    /// The guide did not have it.
    NewInGuide,
    /// The guide no longer has it.
    GoneFromGuide,
}

impl NoticeKind {
    /// All groups in order.
    pub const ALL: [Self; 9] = [
        Self::NowAccepted,
        Self::NoLongerAccepted,
        Self::AnotherPlace,
        Self::PreparedDifferently,
        Self::AskedDifferently,
        Self::CautionChanged,
        Self::ExplainedDifferently,
        Self::NewInGuide,
        Self::GoneFromGuide,
    ];

    /// Its word in message keys and machine output.
    #[must_use]
    pub fn code(self) -> &'static str {
        match self {
            Self::NowAccepted => "now-accepted",
            Self::NoLongerAccepted => "no-longer-accepted",
            Self::AnotherPlace => "another-place",
            Self::PreparedDifferently => "prepared-differently",
            Self::AskedDifferently => "asked-differently",
            Self::CautionChanged => "caution-changed",
            Self::ExplainedDifferently => "explained-differently",
            Self::NewInGuide => "new-in-guide",
            Self::GoneFromGuide => "gone-from-guide",
        }
    }
}

/// A group with what belongs to it, the most common items first.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct NoticeGroup {
    /// What the changes have in common.
    pub kind: NoticeKind,
    /// The changes; none in the group of questions.
    #[serde(skip_serializing_if = "Vec::is_empty", default)]
    pub changes: Vec<Change>,
    /// The items with other questions; none in other groups.
    #[serde(skip_serializing_if = "Vec::is_empty", default)]
    pub asked: Vec<Asked>,
}

/// A change notice without words.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub struct Notice {
    /// The groups that are not empty, in order.
    pub groups: Vec<NoticeGroup>,
}

/// The group a change belongs to. A change of place comes before one of preparation: the new place's
/// steps are told with it.
fn kind(change: &Change) -> NoticeKind {
    if change.before.is_none() {
        return NoticeKind::NewInGuide;
    }
    if change.after.is_none() {
        return NoticeKind::GoneFromGuide;
    }
    let has = |aspect| change.differs.contains(&aspect);
    match change.accepted() {
        (false, true) => NoticeKind::NowAccepted,
        (true, false) => NoticeKind::NoLongerAccepted,
        _ if has(Aspect::Verdict) || has(Aspect::Destination) => NoticeKind::AnotherPlace,
        _ if has(Aspect::Preparation) => NoticeKind::PreparedDifferently,
        _ if has(Aspect::Caution) => NoticeKind::CautionChanged,
        _ => NoticeKind::ExplainedDifferently,
    }
}

/// Groups what a comparison found. Every change is in one group; one whose caution differs as well
/// is also among the changed cautions, because a danger must not be read past.
#[must_use]
pub fn notice(comparison: &Comparison) -> Notice {
    let mut groups = Vec::new();
    for group in NoticeKind::ALL {
        let mut changes: Vec<Change> = comparison
            .changes
            .iter()
            .filter(|c| {
                kind(c) == group
                    || (group == NoticeKind::CautionChanged && c.differs.contains(&Aspect::Caution))
            })
            .cloned()
            .collect();
        changes.sort_by(|a, b| b.common.cmp(&a.common).then_with(|| a.item.cmp(&b.item)));
        let mut asked =
            if group == NoticeKind::AskedDifferently { comparison.asked.clone() } else { Vec::new() };
        asked.sort_by(|a, b| b.common.cmp(&a.common).then_with(|| a.item.cmp(&b.item)));
        if !changes.is_empty() || !asked.is_empty() {
            groups.push(NoticeGroup { kind: group, changes, asked });
        }
    }
    Notice { groups }
}
