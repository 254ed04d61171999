//! A program's rules made ready: conditions looked up, built-in safety rules added, and who beats
//! whom worked out once.

use std::collections::BTreeMap;

use crate::condition::Condition;
use crate::domain::Variable;
use crate::facts::HAZARDS;
use crate::guide::{Answered, Outcome};
use crate::program::{Program, Rule, Silence, Tier, Verdict};
use crate::resolve::{ConditionProblem, Counting, Resolved, all, resolve};

/// The built-in rule for a device that has a battery inside.
pub const BATTERY_INSIDE: &str = "battery-inside";

/// One rule of the set.
#[derive(Debug, Clone)]
pub(crate) struct Ready {
    pub(crate) id: String,
    pub(crate) tier: Tier,
    pub(crate) condition: Resolved,
    /// Decides, or only adds steps.
    pub(crate) decides: bool,
    /// The hazard class of a built-in rule.
    pub(crate) hazard: Option<String>,
    /// How strong it is inside its tier: stronger rules beat weaker ones.
    pub(crate) rank: Rank,
    /// Positions of the rules of the same tier and rank that it beats, ascending.
    pub(crate) beats: Vec<usize>,
    /// Hazard classes it may decide about; `None` for all (a named person accepted the risk).
    pub(crate) safe_for: Option<Vec<String>>,
    pub(crate) outcome: Outcome,
}

/// What certainly decides: tier, rank, and the rules beaten by name (positions, ascending).
pub(crate) struct Certain {
    tier: Option<Tier>,
    rank: Option<Rank>,
    beaten: Vec<usize>,
}

/// All rules in order: by tier, built-in safety rules first, else as in the file.
#[derive(Debug, Clone, Default)]
pub(crate) struct RuleSet {
    pub(crate) rules: Vec<Ready>,
    pub(crate) silence: Silence,
    pub(crate) refuse: Option<String>,
    /// Problems of conditions, with the rule's id.
    pub(crate) problems: Vec<(String, ConditionProblem)>,
    /// Rules that override one another in a circle, by id.
    pub(crate) circles: Vec<Vec<String>>,
}

/// How strong a rule is inside its tier.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Rank {
    /// Built in; every safe authored rule of the safety tier beats it.
    BuiltIn,
    General,
    Exception,
    Temporary,
}

fn rank(rule: &Rule) -> Rank {
    if rule.temporary {
        Rank::Temporary
    } else if rule.when.as_ref().is_some_and(Condition::names_items) {
        Rank::Exception
    } else {
        Rank::General
    }
}

fn outcome_of(rule: &Rule) -> Outcome {
    Outcome {
        verdict: match rule.verdict {
            Some(Verdict::Yes) => Answered::Yes,
            Some(Verdict::No) => Answered::No,
            Some(Verdict::Elsewhere) => Answered::Elsewhere,
            None => Answered::Undecided,
        },
        stream: rule.stream.clone(),
        channel: rule.channel.clone(),
        also: rule.also.clone(),
        rules: vec![rule.id.clone()],
        tier: Some(rule.tier),
        steps: rule.prepare.clone(),
        banned: rule.banned_from.clone(),
        reason: rule.reason.clone(),
        temporary: rule.temporary,
        ..Outcome::default()
    }
}

impl RuleSet {
    pub(crate) fn new(program: &Program, variables: &[Variable]) -> Self {
        let mut set = Self {
            silence: program.silence,
            refuse: program.refuse_stream().map(str::to_owned),
            ..Self::default()
        };
        for class in HAZARDS.iter().skip(1) {
            set.rules.push(built_in(program, variables, class, class, &Condition::is("hazard", &[class])));
        }
        let inside = Condition::is("battery", &["yes"]);
        set.rules.push(built_in(program, variables, BATTERY_INSIDE, "battery-lithium", &inside));
        let counting = Counting::of(program, variables);
        for tier in Tier::ALL {
            for rule in program.rules.iter().filter(|r| r.tier == tier) {
                let mut problems = Vec::new();
                let when = rule
                    .when
                    .as_ref()
                    .map_or(Resolved::Always, |c| resolve(c, variables, &counting, &mut problems));
                set.problems.extend(problems.into_iter().map(|p| (rule.id.clone(), p)));
                let acknowledged = is_acknowledged(rule);
                set.rules.push(Ready {
                    id: rule.id.clone(),
                    tier,
                    condition: all(vec![dates(rule, variables), when]),
                    decides: rule.verdict.is_some(),
                    hazard: None,
                    rank: rank(rule),
                    beats: Vec::new(),
                    safe_for: (!acknowledged).then(|| safe_classes(program, rule)),
                    outcome: Outcome { acknowledged, ..outcome_of(rule) },
                });
            }
        }
        set.order(program);
        set
    }

    /// Works out explicit overrides: raises ranks, finds circles, makes "beats" transitive.
    fn order(&mut self, program: &Program) {
        let position: BTreeMap<String, usize> =
            self.rules.iter().enumerate().rev().map(|(at, r)| (r.id.clone(), at)).collect();
        let mut edges: Vec<Vec<usize>> = vec![Vec::new(); self.rules.len()];
        for rule in &program.rules {
            let Some(&from) = position.get(&rule.id) else { continue };
            for over in &rule.overrides {
                if let Some(&to) = position.get(over)
                    && self.rules.get(from).map(|r| r.tier) == self.rules.get(to).map(|r| r.tier)
                    && let Some(list) = edges.get_mut(from)
                {
                    list.push(to);
                }
            }
        }
        close(&mut edges);
        self.circles = circles(&edges, &self.rules);
        for (at, list) in edges.iter().enumerate() {
            // A rule that overrides an exception is itself as strong as an exception. The list
            // is transitive, so one look at it is enough.
            let strongest = list.iter().filter_map(|&o| self.rules.get(o)).map(|r| r.rank).max();
            if let (Some(rule), Some(strongest)) = (self.rules.get_mut(at), strongest) {
                rule.rank = rule.rank.max(strongest);
            }
        }
        for (at, mut list) in edges.into_iter().enumerate() {
            // Rules in a circle beat nobody: the finding stands, and a conflict shows it.
            if list.binary_search(&at).is_ok() {
                list.clear();
            }
            if let Some(rule) = self.rules.get_mut(at) {
                rule.beats = list;
            }
        }
    }

    /// The outcome when exactly these rules (positions, ascending) apply.
    pub(crate) fn decide(&self, applying: &[usize]) -> Outcome {
        let rules = || applying.iter().filter_map(|&at| self.rules.get(at).map(|r| (at, r)));
        let hazard = rules().find_map(|(_, r)| r.hazard.clone());
        let mut outcome = self.decide_among(&rules().filter(|(_, r)| r.decides).collect::<Vec<_>>());
        for (_, rule) in rules().filter(|(_, r)| !r.decides) {
            if outcome.verdict == Answered::Yes || outcome.verdict == Answered::Elsewhere {
                unite(&mut outcome.steps, &rule.outcome.steps);
            }
            unite(&mut outcome.banned, &rule.outcome.banned);
        }
        outcome.hazard = hazard;
        outcome
    }

    fn decide_among(&self, deciding: &[(usize, &Ready)]) -> Outcome {
        let Some(tier) = deciding.iter().map(|(_, r)| r.tier).min() else {
            return self.silence_outcome();
        };
        let classes: Vec<&String> = deciding.iter().filter_map(|(_, r)| r.hazard.as_ref()).collect();
        let may_decide = |rule: &Ready| {
            rule.hazard.is_some()
                || tier != Tier::Safety
                || rule.safe_for.as_ref().is_none_or(|safe| classes.iter().all(|&c| safe.contains(c)))
        };
        let of_tier: Vec<_> =
            deciding.iter().copied().filter(|(_, r)| r.tier == tier && may_decide(r)).collect();
        let strongest = of_tier.iter().map(|(_, r)| r.rank).max();
        let mut beaten: Vec<usize> = of_tier.iter().flat_map(|(_, r)| r.beats.iter().copied()).collect();
        beaten.sort_unstable();
        let mut left: Vec<_> = of_tier
            .iter()
            .copied()
            .filter(|(at, r)| Some(r.rank) == strongest && beaten.binary_search(at).is_err())
            .collect();
        if strongest == Some(Rank::BuiltIn) {
            // A stated hazard class, listed first, says more than "it has a battery inside".
            left.truncate(1);
        }
        let Some(((_, first), others)) = left.split_first() else {
            return Outcome { tier: Some(tier), ..Outcome::default() };
        };
        let mut outcome = first.outcome.clone();
        let mut agree = true;
        for (_, rule) in others {
            agree &= rule.outcome.same_place(&first.outcome);
            outcome.rules.push(rule.id.clone());
            unite(&mut outcome.steps, &rule.outcome.steps);
            unite(&mut outcome.also, &rule.outcome.also);
            unite(&mut outcome.banned, &rule.outcome.banned);
            outcome.temporary |= rule.outcome.temporary;
            outcome.acknowledged |= rule.outcome.acknowledged;
        }
        if !agree {
            return Outcome { rules: outcome.rules, tier: Some(tier), ..Outcome::default() };
        }
        outcome
    }

    /// What is certain among applying rules: no weaker rule can matter any more. Positions are of
    /// rules that certainly apply.
    pub(crate) fn strongest(&self, certain: &[usize]) -> Certain {
        let deciding = || certain.iter().filter_map(|&at| self.rules.get(at)).filter(|r| r.decides);
        let tier = deciding().map(|r| r.tier).min();
        let rank = deciding().filter(|r| Some(r.tier) == tier).map(|r| r.rank).max();
        let mut beaten: Vec<usize> =
            deciding().filter(|r| Some(r.tier) == tier).flat_map(|r| r.beats.iter().copied()).collect();
        beaten.sort_unstable();
        Certain { tier, rank, beaten }
    }

    /// True when a rule can no longer matter, given what is certain.
    pub(crate) fn is_out(&self, at: usize, certain: &Certain) -> bool {
        let (Some(rule), Some(tier)) = (self.rules.get(at), certain.tier) else { return false };
        if !rule.decides || rule.tier < tier {
            return false;
        }
        // In the safety tier everything stays in sight: a class may still rule an authored rule out.
        rule.tier > tier
            || (tier != Tier::Safety
                && (Some(rule.rank) < certain.rank || certain.beaten.binary_search(&at).is_ok()))
    }

    fn silence_outcome(&self) -> Outcome {
        match self.silence {
            Silence::Undecided => Outcome::default(),
            Silence::Ask => Outcome {
                verdict: Answered::Unlisted,
                reason: Some("not-listed".to_owned()),
                ..Outcome::default()
            },
            Silence::Closed => Outcome {
                verdict: Answered::No,
                stream: self.refuse.clone(),
                reason: Some("not-named".to_owned()),
                closed_list: true,
                ..Outcome::default()
            },
        }
    }
}

fn built_in(program: &Program, variables: &[Variable], name: &str, class: &str, when: &Condition) -> Ready {
    let id = format!("safety.{name}");
    let channel = program.hazards.get(class).map(|h| h.channel.clone()).filter(|c| !c.is_empty());
    Ready {
        outcome: Outcome {
            verdict: Answered::Elsewhere,
            channel,
            rules: vec![id.clone()],
            tier: Some(Tier::Safety),
            reason: Some("hazard".to_owned()),
            ..Outcome::default()
        },
        id,
        tier: Tier::Safety,
        condition: resolve(when, variables, &Counting::default(), &mut Vec::new()),
        decides: true,
        hazard: Some(class.to_owned()),
        rank: Rank::BuiltIn,
        beats: Vec::new(),
        safe_for: None,
    }
}

/// A named person has accepted, with a reason, that the rule decides about a hazard.
pub(crate) fn is_acknowledged(rule: &Rule) -> bool {
    rule.acknowledgement.as_ref().is_some_and(|a| !a.by.trim().is_empty() && !a.because.trim().is_empty())
}

/// The hazard classes that a rule handles safely: it sends to a channel that takes them.
pub(crate) fn safe_classes(program: &Program, rule: &Rule) -> Vec<String> {
    if rule.verdict != Some(Verdict::Elsewhere) {
        return Vec::new();
    }
    let channel = rule.channel.as_deref().and_then(|id| program.channel(id));
    channel.map(|c| c.safe_for.clone()).unwrap_or_default()
}

/// The days on which a rule holds, as a condition.
fn dates(rule: &Rule, variables: &[Variable]) -> Resolved {
    let read = |when: &Condition| resolve(when, variables, &Counting::default(), &mut Vec::new());
    let season = rule.season.as_ref().map_or(Resolved::Always, |season| read(&season.condition()));
    if rule.from.is_none() && rule.until.is_none() {
        return season;
    }
    let bounds = crate::condition::Bounds {
        fact: "day".to_owned(),
        at_least: rule.from.map(|d| d.to_string()),
        at_most: rule.until.map(|d| d.to_string()),
        ..crate::condition::Bounds::default()
    };
    all(vec![read(&Condition::Measure(bounds)), season])
}

/// Adds what is not there yet, keeping the order.
fn unite(into: &mut Vec<String>, more: &[String]) {
    for step in more {
        if !into.contains(step) {
            into.push(step.clone());
        }
    }
}

/// Makes "beats" transitive: whoever beats a rule also beats whatever that rule beats, so a rule
/// that is beaten can be forgotten altogether.
fn close(beats: &mut [Vec<usize>]) {
    let count = beats.len();
    for start in 0..count {
        if beats.get(start).is_none_or(Vec::is_empty) {
            continue;
        }
        let mut seen = vec![false; count];
        let mut open: Vec<usize> = beats.get(start).cloned().unwrap_or_default();
        while let Some(at) = open.pop() {
            let Some(mark) = seen.get_mut(at) else { continue };
            if !std::mem::replace(mark, true) {
                open.extend(beats.get(at).into_iter().flatten());
            }
        }
        if let Some(list) = beats.get_mut(start) {
            *list = seen.iter().enumerate().filter(|(_, s)| **s).map(|(at, _)| at).collect();
        }
    }
}

/// Groups of rules that beat themselves, each group once.
fn circles(beats: &[Vec<usize>], rules: &[Ready]) -> Vec<Vec<String>> {
    let in_circle = |at: usize| beats.get(at).is_some_and(|b| b.binary_search(&at).is_ok());
    let mut done = vec![false; beats.len()];
    let mut groups = Vec::new();
    for at in 0..beats.len() {
        if !in_circle(at) || done.get(at).copied().unwrap_or(true) {
            continue;
        }
        let group: Vec<usize> = beats
            .get(at)
            .into_iter()
            .flatten()
            .copied()
            .filter(|&other| beats.get(other).is_some_and(|b| b.binary_search(&at).is_ok()))
            .collect();
        for &member in &group {
            if let Some(mark) = done.get_mut(member) {
                *mark = true;
            }
        }
        groups.push(group.iter().filter_map(|&g| rules.get(g)).map(|r| r.id.clone()).collect());
    }
    groups
}
