//! A rule's condition as rows: all of, any of, not; a fact with values, a measure with bounds.

use guide_data::standard::{CATEGORIES, COMPARISONS, PERIODS};
use guide_data::{
    Aside, Bounds, Condition, DEEPEST_CONDITION, Dimension, Ends, FACTS, FactKind, IdSource, Measure, OneOf,
    Program, ValueLabel,
};
use leptos::prelude::*;
use locales::t;

use super::desk::Desk;
use super::fields::{Choice, Lens, check, line, month_day, of_program, or_none, ordered, select, standard};
use crate::words::Words;

/// Where a condition stands: the rule, and the way down from its outermost condition.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Spot {
    rule: String,
    path: Vec<usize>,
}

impl Spot {
    fn child(&self, at: usize) -> Self {
        let mut path = self.path.clone();
        path.push(at);
        Self { rule: self.rule.clone(), path }
    }

    /// The name of an edit here; typing in one bound is one step of undo.
    fn what(&self, field: &str) -> String {
        format!("rule.{}.when{:?}.{field}", self.rule, self.path)
    }

    fn get(&self, program: &Program) -> Option<Condition> {
        let mut now = program.rule(&self.rule)?.when.as_ref()?;
        for &at in &self.path {
            now = match now {
                Condition::All(parts) | Condition::Any(parts) => parts.get(at)?,
                Condition::Not(part) => part,
                Condition::Is(_) | Condition::Measure(_) => return None,
            };
        }
        Some(now.clone())
    }

    fn change(&self, program: &mut Program, change: impl FnOnce(&mut Condition)) {
        let rule = program.rules.iter_mut().find(|r| r.id == self.rule);
        let Some(mut now) = rule.and_then(|r| r.when.as_mut()) else { return };
        for &at in &self.path {
            let next = match now {
                Condition::All(parts) | Condition::Any(parts) => parts.get_mut(at),
                Condition::Not(part) => Some(&mut **part),
                Condition::Is(_) | Condition::Measure(_) => None,
            };
            let Some(next) = next else { return };
            now = next;
        }
        change(now);
    }
}

/// The condition without its values: rows are drawn anew only when this changes, so that typing in
/// one is not interrupted.
fn shape(condition: &Condition) -> String {
    let parts = |word: &str, parts: &[Condition]| {
        format!("{word}({})", parts.iter().map(shape).collect::<Vec<_>>().join(","))
    };
    match condition {
        Condition::All(all) => parts("all", all),
        Condition::Any(any) => parts("any", any),
        Condition::Not(part) => format!("not({})", shape(part)),
        Condition::Is(one) => format!("is {}", one.fact),
        Condition::Measure(b) => format!(
            "measure {} {}{}{}{}",
            b.fact,
            u8::from(b.at_least.is_some()),
            u8::from(b.over.is_some()),
            u8::from(b.at_most.is_some()),
            u8::from(b.under.is_some())
        ),
    }
}

/// A new row for a fact.
fn row_for(fact: &str) -> Condition {
    match guide_data::fact(fact).map(|f| f.kind) {
        Some(FactKind::Measure(_) | FactKind::Day | FactKind::YearDay) => Condition::Measure(Bounds {
            fact: fact.to_owned(),
            at_least: Some(first_bound(fact)),
            ..Bounds::default()
        }),
        _ => Condition::Is(OneOf { fact: fact.to_owned(), of: Vec::new() }),
    }
}

/// What a bound says before anybody has written it: a day of the year is chosen, never empty.
fn first_bound(fact: &str) -> String {
    match guide_data::fact(fact).map(|f| f.kind) {
        Some(FactKind::YearDay) => "01-01".to_owned(),
        _ => String::new(),
    }
}

/// The editor of a rule's condition.
pub(crate) fn condition(desk: Desk, rule: &str) -> AnyView {
    let root = Spot { rule: rule.to_owned(), path: Vec::new() };
    let of = root.clone();
    let drawn = Memo::new(move |_| desk.program.with(|p| of.get(p).map(|c| shape(&c))));
    let rule = rule.to_owned();
    view! {
        <fieldset class="condition" id="condition">
            <legend>{desk.words.with_untracked(|w| t!(w.messages, "condition-title"))}</legend>
            {move || {
                // Read, not only tracked: a memo that nobody reads is never worked out and tells nothing.
                drawn.with(|_| ());
                match desk.program.with_untracked(|p| root.get(p)) {
                    Some(now) => node(desk, &root, &now),
                    None => {
                        let rule = rule.clone();
                        let begin = move |_| {
                            desk.edit(&format!("rule.{rule}.when"), |p| {
                                if let Some(r) = p.rules.iter_mut().find(|r| r.id == rule) {
                                    r.when = Some(Condition::All(vec![row_for("item")]));
                                }
                            });
                        };
                        let words = desk.words.get_untracked();
                        view! {
                            <p>{t!(words.messages, "condition-always")}</p>
                            <button type="button" class="plain" id="condition-begin" on:click=begin>
                                {t!(words.messages, "condition-begin")}
                            </button>
                        }
                        .into_any()
                    }
                }
            }}
        </fieldset>
    }
    .into_any()
}

fn node(desk: Desk, spot: &Spot, condition: &Condition) -> AnyView {
    match condition {
        Condition::All(parts) => group(desk, spot, "all", parts),
        Condition::Any(parts) => group(desk, spot, "any", parts),
        Condition::Not(part) => group(desk, spot, "not", std::slice::from_ref(&**part)),
        Condition::Is(one) => is(desk, spot, &one.fact),
        Condition::Measure(bounds) => measure(desk, spot, bounds),
    }
}

/// All of, any of, none of: its rows and what can be added.
fn group(desk: Desk, spot: &Spot, kind: &'static str, parts: &[Condition]) -> AnyView {
    let w = desk.words.get_untracked();
    let m = &w.messages;
    let change_kind = {
        let spot = spot.clone();
        move |to: String| {
            desk.edit(&spot.what("kind"), |p| {
                spot.change(p, |c| {
                    let parts = match std::mem::replace(c, Condition::always()) {
                        Condition::All(parts) | Condition::Any(parts) => parts,
                        Condition::Not(part) => match *part {
                            Condition::Any(parts) | Condition::All(parts) => parts,
                            single => vec![single],
                        },
                        other => vec![other],
                    };
                    *c = match to.as_str() {
                        "any" => Condition::Any(parts),
                        // "None of these" is "not any of these".
                        "not" => Condition::Not(Box::new(match <[Condition; 1]>::try_from(parts) {
                            Ok([single]) => single,
                            Err(several) => Condition::Any(several),
                        })),
                        _ => Condition::All(parts),
                    };
                });
            });
        }
    };
    let add = |row: fn() -> Condition, field: &'static str| {
        let spot = spot.clone();
        move |_| {
            desk.edit(&spot.what(field), |p| {
                spot.change(p, |c| match c {
                    Condition::All(parts) | Condition::Any(parts) => parts.push(row()),
                    Condition::Not(part) => {
                        let before = std::mem::replace(&mut **part, Condition::always());
                        **part = Condition::Any(vec![before, row()]);
                    }
                    Condition::Is(_) | Condition::Measure(_) => {}
                });
            });
        }
    };
    let add_fact = add(|| row_for("form"), "add");
    let add_group = add(|| Condition::Any(vec![row_for("form")]), "add-group");
    let deep = spot.path.len() + 2 >= DEEPEST_CONDITION;
    let can_add = kind != "not";
    view! {
        <div class="group" data-kind=kind>
            <div class="row">
                <select aria-label=t!(m, "condition-kind") on:change:target=move |ev| change_kind(ev.target().value())>
                    {["all", "any", "not"].map(|k| view! {
                        <option value=k selected=k == kind>{w.say(&format!("condition-{k}"))}</option>
                    }).collect_view()}
                </select>
                {remove_button(desk, spot)}
            </div>
            <div class="parts-of">
                {parts.iter().enumerate().map(|(at, part)| node(desk, &spot.child(at), part)).collect_view()}
            </div>
            {can_add.then(|| view! {
                <p class="row">
                    <button type="button" class="plain condition-add" on:click=add_fact>{t!(m, "condition-add-fact")}</button>
                    {(!deep).then(|| view! {
                        <button type="button" class="plain" on:click=add_group>{t!(m, "condition-add-group")}</button>
                    })}
                </p>
            })}
        </div>
    }
    .into_any()
}

/// Takes a row away; taking away the outermost makes the rule hold always.
fn remove_button(desk: Desk, spot: &Spot) -> AnyView {
    let spot = spot.clone();
    let remove = move |_| {
        desk.edit(&spot.what("remove"), |p| match spot.path.split_last() {
            None => {
                if let Some(rule) = p.rules.iter_mut().find(|r| r.id == spot.rule) {
                    rule.when = None;
                }
            }
            Some((&at, above)) => {
                let parent = Spot { rule: spot.rule.clone(), path: above.to_vec() };
                parent.change(p, |c| match c {
                    Condition::All(parts) | Condition::Any(parts) if at < parts.len() => {
                        parts.remove(at);
                    }
                    Condition::Not(part) => **part = Condition::Any(Vec::new()),
                    _ => {}
                });
            }
        });
    };
    let label = desk.words.with_untracked(|w| t!(w.messages, "condition-remove"));
    view! { <button type="button" class="plain" aria-label=label.clone() title=label on:click=remove>"×"</button> }.into_any()
}

/// The choice of a row's fact.
fn fact_select(desk: Desk, spot: &Spot, now: &str) -> AnyView {
    let ids: Vec<&str> = FACTS.iter().map(|f| f.id).collect();
    let mut choices = standard(desk, &ids, "fact");
    choices.sort_by(|a, b| a.1.cmp(&b.1));
    if !ids.contains(&now) {
        choices.insert(0, (now.to_owned(), now.to_owned()));
    }
    let spot = spot.clone();
    let now = now.to_owned();
    view! {
        <select class="fact" aria-label=desk.words.with_untracked(|w| t!(w.messages, "condition-fact"))
            on:change:target=move |ev| {
                let fact = ev.target().value();
                desk.edit(&spot.what("fact"), |p| spot.change(p, |c| *c = row_for(&fact)));
            }>
            {choices.into_iter().map(|(v, name)| {
                let chosen = v == now;
                view! { <option value=v selected=chosen>{name}</option> }
            }).collect_view()}
        </select>
    }
    .into_any()
}

/// A fact and the values any of which will do.
fn is(desk: Desk, spot: &Spot, fact: &str) -> AnyView {
    let (read, write) = (spot.clone(), spot.clone());
    let values = Lens::new(
        move |p: &Program| match read.get(p) {
            Some(Condition::Is(one)) => one.of,
            _ => Vec::new(),
        },
        move |p: &mut Program, of: Vec<String>| {
            write.change(p, |c| {
                if let Condition::Is(one) = c {
                    one.of = of;
                }
            });
        },
    );
    let fact_id = fact.to_owned();
    let choices = move || values_of(desk, &fact_id);
    let label = desk.words.with_untracked(|w| t!(w.messages, "condition-is"));
    view! {
        <div class="row condition-row" data-fact=fact.to_owned()>
            {fact_select(desk, spot, fact)}
            {ordered(desk, &spot.what("of"), label, values, choices)}
            {remove_button(desk, spot)}
        </div>
    }
    .into_any()
}

/// The values a fact can have, with their words.
pub(crate) fn values_of(desk: Desk, fact: &str) -> Vec<Choice> {
    match guide_data::fact(fact).map(|f| f.kind) {
        Some(FactKind::Choice(values)) => standard(desk, values, &format!("value-{fact}")),
        Some(FactKind::Id(IdSource::Categories)) => standard(desk, CATEGORIES, "category"),
        Some(FactKind::Id(IdSource::Zones)) => of_program(desk, "zone"),
        Some(FactKind::Id(IdSource::Items)) => {
            let mut all: Vec<Choice> = desk.checked.with(|c| {
                desk.words.with(|w| c.guide.items.iter().map(|i| (i.id.clone(), w.item(&i.id))).collect())
            });
            all.sort_by(|a, b| a.1.cmp(&b.1));
            all
        }
        _ => Vec::new(),
    }
}

type Bound = fn(&mut Bounds) -> &mut Option<String>;

/// A measure and its bounds, each as stated with its unit.
fn measure(desk: Desk, spot: &Spot, bounds: &Bounds) -> AnyView {
    let all: [(&'static str, Bound); 4] = [
        ("at-least", |b| &mut b.at_least),
        ("over", |b| &mut b.over),
        ("at-most", |b| &mut b.at_most),
        ("under", |b| &mut b.under),
    ];
    let w = desk.words.get_untracked();
    let kind = guide_data::fact(&bounds.fact).map(|f| f.kind);
    let begin = first_bound(&bounds.fact);
    let rows = all.map(|(word, bound)| {
        let here = bound_lens(spot, bound);
        let stated = desk.program.with_untracked(|p| here.get(p)).is_some();
        let label = w.say(&format!("bound-{word}"));
        let begin = begin.clone();
        let on = here.clone().map(|b| b.is_some(), move |on: bool| Some(on.then(|| begin.clone())));
        let value = here.map(Option::unwrap_or_default, |v: String| Some(Some(v)));
        let what = spot.what(word);
        let field = match kind {
            _ if !stated => None,
            Some(FactKind::YearDay) => Some(month_day(desk, &what, label.clone(), value)),
            Some(FactKind::Day) => Some(line(desk, &what, t!(w.messages, "bound-day"), "date", value)),
            _ => Some(line(desk, &what, t!(w.messages, "bound-value"), "text", value)),
        };
        view! {
            <div class="bound">
                {check(desk, &spot.what(&format!("{word}-on")), label, on)}
                {field}
            </div>
        }
    });
    let dimension = guide_data::dimension_of(&bounds.fact);
    view! {
        <div class="row condition-row" data-fact=bounds.fact.clone()>
            {fact_select(desk, spot, &bounds.fact)}
            <div class="bounds">
                {rows.collect_view()}
                {dimension.map(|dimension| asides(desk, spot, dimension))}
                {reading(desk, spot)}
            </div>
            {remove_button(desk, spot)}
        </div>
    }
    .into_any()
}

/// One bound of a measure.
fn bound_lens(spot: &Spot, bound: Bound) -> Lens<Option<String>> {
    let (read, write) = (spot.clone(), spot.clone());
    Lens::new(
        move |p: &Program| match read.get(p) {
            Some(Condition::Measure(mut b)) => bound(&mut b).clone(),
            _ => None,
        },
        move |p: &mut Program, value: Option<String>| {
            write.change(p, |c| {
                if let Condition::Measure(b) = c {
                    *bound(b) = value;
                }
            });
        },
    )
}

/// What is said beside a measure: an everyday thing of about that size, and what a number is
/// counted per.
fn asides(desk: Desk, spot: &Spot, dimension: Dimension) -> AnyView {
    let w = desk.words.get_untracked();
    let alike: Vec<&'static str> =
        COMPARISONS.iter().filter(|(_, of, _)| *of == dimension).map(|(id, ..)| *id).collect();
    let like = {
        let here = bound_lens(spot, |b| &mut b.like);
        let write = spot.clone();
        Lens::new(
            move |p: &Program| here.get(p).unwrap_or_default(),
            move |p: &mut Program, like: String| {
                write.change(p, |c| {
                    if let Condition::Measure(b) = c {
                        liken(b, &like);
                    }
                });
            },
        )
    };
    let per = bound_lens(spot, |b| &mut b.per).or_empty();
    view! {
        <div class="fields asides">
            {(!alike.is_empty()).then(|| {
                select(desk, &spot.what("like"), t!(w.messages, "bound-like"), like, move || {
                    or_none(desk, standard(desk, &alike, "like"))
                })
            })}
            {(dimension == Dimension::Count).then(|| {
                select(desk, &spot.what("per"), t!(w.messages, "bound-per"), per, move || {
                    or_none(desk, standard(desk, PERIODS, "per"))
                })
            })}
        </div>
    }
    .into_any()
}

/// Likens a measure to an everyday thing. A bound that nobody has written yet becomes its size.
fn liken(bounds: &mut Bounds, like: &str) {
    bounds.like = (!like.is_empty()).then(|| like.to_owned());
    let Some((.., size)) = COMPARISONS.iter().find(|(id, ..)| *id == like) else { return };
    let all = [&mut bounds.at_least, &mut bounds.over, &mut bounds.at_most, &mut bounds.under];
    for stated in all.into_iter().flatten().filter(|s| s.trim().is_empty()) {
        (*size).clone_into(stated);
    }
}

/// How residents read a measure, or what is wrong with it.
fn reading(desk: Desk, spot: &Spot) -> AnyView {
    let spot = spot.clone();
    let bounds = Memo::new(move |_| {
        desk.program.with(|p| match spot.get(p) {
            Some(Condition::Measure(b)) => Some(b),
            _ => None,
        })
    });
    let said = move || {
        let bounds = bounds.get()?;
        desk.words.with(|w| match read_bounds(w, &bounds) {
            Ok(None) => None,
            Ok(Some(text)) => Some(view! { <p class="reading">{text}</p> }.into_any()),
            Err(stated) => {
                let text = t!(w.messages, "measure-unreadable", stated = stated);
                Some(view! { <p class="field-problem" role="status">{text}</p> }.into_any())
            }
        })
    };
    said.into_any()
}

/// Bounds in words; nothing while one of them is still empty, or the one that cannot be read.
fn read_bounds(words: &Words, bounds: &Bounds) -> Result<Option<String>, String> {
    let all = [&bounds.at_least, &bounds.over, &bounds.at_most, &bounds.under];
    let stated: Vec<&String> = all.into_iter().flatten().collect();
    if stated.is_empty() || stated.iter().any(|s| s.trim().is_empty()) {
        return Ok(None);
    }
    if let Some(dimension) = guide_data::dimension_of(&bounds.fact)
        && let Some(bad) = stated.into_iter().find(|s| Measure::parse(s, dimension).is_err())
    {
        return Err(bad.clone());
    }
    let (low, high) = beside(bounds);
    let ends = Ends {
        at_least: bounds.at_least.clone(),
        over: bounds.over.clone(),
        at_most: bounds.at_most.clone(),
        under: bounds.under.clone(),
        low,
        high,
    };
    let fact = words.say(&format!("fact-{}", bounds.fact));
    let value = words.value(&bounds.fact, &ValueLabel::Range(ends));
    Ok(Some(t!(words.messages, "fact-value", fact = fact, value = value)))
}

/// What stands beside the lower and the upper end: what belongs to both is said once, at the end.
fn beside(bounds: &Bounds) -> (Aside, Aside) {
    let aside = Aside { like: bounds.like.clone(), per: bounds.per.clone() };
    if bounds.at_most.is_some() || bounds.under.is_some() {
        (Aside::default(), aside)
    } else {
        (aside, Aside::default())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use guide_data::Rule;

    fn program() -> Program {
        let when = Condition::All(vec![
            Condition::is("form", &["bottle"]),
            Condition::Not(Box::new(Condition::Any(vec![row_for("capacity")]))),
        ]);
        let rule = Rule { id: "r".to_owned(), when: Some(when), ..Rule::default() };
        Program { rules: vec![rule], ..Program::default() }
    }

    #[test]
    fn a_spot_finds_and_changes_the_condition_it_names() {
        let mut program = program();
        let root = Spot { rule: "r".to_owned(), path: Vec::new() };
        let deep = root.child(1).child(0).child(0);
        assert!(matches!(deep.get(&program), Some(Condition::Measure(b)) if b.fact == "capacity"));
        deep.change(&mut program, |c| *c = Condition::is("wet", &["yes"]));
        assert_eq!(deep.get(&program), Some(Condition::is("wet", &["yes"])));
        let nowhere = root.child(0).child(7);
        let before = program.clone();
        nowhere.change(&mut program, |c| *c = Condition::always());
        assert_eq!(program, before);
        assert_eq!(nowhere.get(&program), None);
    }

    #[test]
    fn likening_fills_in_a_bound_that_nobody_has_written() {
        let empty = Bounds { fact: "longest-side".into(), at_most: Some(String::new()), ..Bounds::default() };
        let mut bounds = empty.clone();
        liken(&mut bounds, "basketball");
        // Size 7: about 24.3 cm across (from memory; see the table).
        assert_eq!(bounds.at_most.as_deref(), Some("24.3 cm"));
        assert_eq!(bounds.like.as_deref(), Some("basketball"));
        let mut written = Bounds { at_most: Some("10 in".into()), ..empty };
        liken(&mut written, "basketball");
        assert_eq!(written.at_most.as_deref(), Some("10 in"));
        assert_eq!(written.at_least, None, "a bound that is off stays off");
        liken(&mut written, "");
        assert_eq!(written.like, None);
    }

    #[test]
    fn a_day_of_the_year_begins_as_one_and_others_begin_empty() {
        let Condition::Measure(season) = row_for("time-of-year") else { panic!("not a measure") };
        assert_eq!(season.at_least.as_deref(), Some("01-01"));
        let Condition::Measure(side) = row_for("longest-side") else { panic!("not a measure") };
        assert_eq!(side.at_least.as_deref(), Some(""));
    }

    #[test]
    fn what_is_likened_does_not_change_the_shape() {
        let plain = Bounds { fact: "quantity".into(), at_most: Some("4".into()), ..Bounds::default() };
        let per = Bounds { per: Some("visit".into()), ..plain.clone() };
        assert_eq!(beside(&per).1.per.as_deref(), Some("visit"));
        assert!(beside(&per).0.is_empty());
        assert_eq!(shape(&Condition::Measure(plain)), shape(&Condition::Measure(per)));
    }

    #[test]
    fn values_do_not_change_the_shape_and_rows_do() {
        let bottle = Condition::is("form", &["bottle"]);
        assert_eq!(shape(&bottle), shape(&Condition::is("form", &["jar", "tub"])));
        assert_ne!(shape(&bottle), shape(&Condition::is("material", &["glass"])));
        assert_ne!(shape(&bottle), shape(&Condition::All(vec![bottle.clone()])));
    }
}
