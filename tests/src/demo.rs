//! The demo program, its guide, and a case put to it.

use std::sync::OnceLock;

use guide_data::{Answer, Catalog, Given, Guide, Known, Outcome, Program, Step, check};

use crate::fail::{OrFail, fail};

/// Quillmere's program.
///
/// # Panics
/// When its file no longer loads.
#[must_use]
pub fn demo() -> &'static Program {
    static DEMO: OnceLock<Program> = OnceLock::new();
    DEMO.get_or_init(|| {
        Program::from_json(guide_data::demo_json()).map_err(|p| format!("{p:?}")).or_fail("loading the demo")
    })
}

/// Its guide, with the standard catalog.
///
/// # Panics
/// When the demo cannot be published.
#[must_use]
pub fn demo_guide() -> &'static Guide {
    static GUIDE: OnceLock<Guide> = OnceLock::new();
    GUIDE.get_or_init(|| {
        let catalog = Catalog::standard().map_err(|p| format!("{p:?}")).or_fail("loading the catalog");
        let checked = check(demo(), &catalog);
        if !checked.publishable() {
            fail(&format!("the demo cannot be published: {:#?}", checked.findings));
        }
        checked.guide
    })
}

/// An item and what is known of it, put to a guide.
#[derive(Debug, Clone)]
pub struct Case {
    item: String,
    known: Known,
    given: Vec<(String, String)>,
}

impl Case {
    /// An item of which nothing is known but what the catalog says.
    #[must_use]
    pub fn of(item: &str) -> Self {
        Self { item: item.to_owned(), known: Known::default(), given: Vec::new() }
    }

    /// And one thing more that its owner says. A measure is given with its unit.
    #[must_use]
    pub fn with(mut self, fact: &str, value: &str) -> Self {
        let measured =
            guide_data::fact(fact).is_some_and(|f| matches!(f.kind, guide_data::FactKind::Measure(_)));
        let given = if measured { Given::Stated(value.to_owned()) } else { Given::value(value) };
        self.known.give(fact, given);
        self.given.push((fact.to_owned(), value.to_owned()));
        self
    }

    /// What the guide answers, all that was not said taken as the guide takes it. What was said and
    /// makes no difference would be a slip of the test's, and fails.
    ///
    /// # Panics
    /// When the guide does not have the item, or never asks what was said.
    #[must_use]
    pub fn answer(&self, guide: &Guide) -> Answer {
        let Some(at) = guide.item_index(&self.item) else { fail(&format!("no item {}", self.item)) };
        for (fact, value) in &self.given {
            if !self.matters(guide, at, fact) {
                fail(&format!("{}: {fact}={value} makes no difference to the guide", self.item));
            }
        }
        guide.assumed_answer(at, &self.known).or_fail("asking the guide")
    }

    /// Whether it makes a difference that a fact was said: left out, it is asked, or another outcome
    /// comes of it.
    fn matters(&self, guide: &Guide, at: usize, fact: &str) -> bool {
        let mut without = self.known.clone();
        without.forget(fact);
        loop {
            match guide.next(at, &without) {
                Some(Step::Ask(question)) if question.fact == fact => return true,
                Some(Step::Ask(question)) => without.give(&question.fact, Given::CannotTell),
                Some(Step::Answer(answer)) => {
                    return guide
                        .assumed_answer(at, &self.known)
                        .is_none_or(|with| with.parts != answer.parts);
                }
                None => return false,
            }
        }
    }

    /// What the guide says of the item itself.
    ///
    /// # Panics
    /// When the guide does not have the item.
    #[must_use]
    pub fn outcome(&self, guide: &Guide) -> Outcome {
        let parts = self.answer(guide).parts;
        parts.into_iter().find(|part| part.part.is_none()).or_fail("the item's own answer").outcome
    }
}
