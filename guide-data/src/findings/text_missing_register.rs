//! Rules that lack one of the three texts: the contract's, the sorters', or the residents' (for
//! which a standard reason stands as well). One finding for each text, with the first rule.

use super::{Finding, Place, Severity, Subject};
use crate::program::Rule;

pub(super) fn look(subject: &Subject<'_>, found: &mut Vec<Finding>) {
    type Lacks = fn(&Rule) -> bool;
    let registers: [(&str, Lacks); 3] = [
        ("contract", |r| r.texts.contract.trim().is_empty()),
        ("sorters", |r| r.texts.sorters.is_empty()),
        ("residents", |r| r.texts.residents.is_empty() && r.reason.is_none()),
    ];
    for (register, lacks) in registers {
        let deciding = subject.program.rules.iter().filter(|r| r.verdict.is_some());
        let rules: Vec<String> = deciding.filter(|r| lacks(r)).map(|r| r.id.clone()).collect();
        let Some(first) = rules.first() else { continue };
        found.push(
            Finding::new(Severity::Notice, "text-missing-register", Place::of("rule", first, register))
                .arg("register", register)
                .arg("count", rules.len())
                .arg("first", first)
                .rules(&rules),
        );
    }
}
