//! A rule's condition as rows: all of, any of, not; a fact with values, a measure with bounds.

use guide_data::standard::CATEGORIES;
use guide_data::{Bounds, Condition, DEEPEST_CONDITION, FACTS, FactKind, IdSource, OneOf, Program};
use leptos::prelude::*;
use locales::t;

use super::desk::Desk;
use super::fields::{Choice, Lens, check, of_program, ordered, standard};

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
            at_least: Some(String::new()),
            ..Bounds::default()
        }),
        _ => Condition::Is(OneOf { fact: fact.to_owned(), of: Vec::new() }),
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
                drawn.track();
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
    let is_day = matches!(guide_data::fact(&bounds.fact).map(|f| f.kind), Some(FactKind::Day));
    let rows = all.map(|(word, bound)| {
        let read = |spot: Spot| {
            move |p: &Program| match spot.get(p) {
                Some(Condition::Measure(mut b)) => bound(&mut b).clone(),
                _ => None,
            }
        };
        let write = |spot: Spot| {
            move |p: &mut Program, value: Option<String>| {
                spot.change(p, |c| {
                    if let Condition::Measure(b) = c {
                        *bound(b) = value;
                    }
                });
            }
        };
        let here = read(spot.clone());
        let stated = desk.program.with_untracked(|p| here(p)).is_some();
        let label = w.say(&format!("bound-{word}"));
        let on = {
            let (get, set) = (read(spot.clone()), write(spot.clone()));
            Lens::new(move |p: &Program| get(p).is_some(), move |p: &mut Program, on: bool| {
                set(p, on.then(String::new));
            })
        };
        let value = {
            let (get, set) = (read(spot.clone()), write(spot.clone()));
            Lens::new(move |p: &Program| get(p).unwrap_or_default(), move |p: &mut Program, v: String| set(p, Some(v)))
        };
        let kind = if is_day { "date" } else { "text" };
        view! {
            <div class="bound">
                {check(desk, &spot.what(&format!("{word}-on")), label.clone(), on)}
                {stated.then(|| super::fields::line(desk, &spot.what(word), t!(w.messages, "bound-value"), kind, value))}
            </div>
        }
    });
    view! {
        <div class="row condition-row" data-fact=bounds.fact.clone()>
            {fact_select(desk, spot, &bounds.fact)}
            <div class="bounds">{rows.collect_view()}</div>
            {remove_button(desk, spot)}
        </div>
    }
    .into_any()
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
    fn values_do_not_change_the_shape_and_rows_do() {
        let bottle = Condition::is("form", &["bottle"]);
        assert_eq!(shape(&bottle), shape(&Condition::is("form", &["jar", "tub"])));
        assert_ne!(shape(&bottle), shape(&Condition::is("material", &["glass"])));
        assert_ne!(shape(&bottle), shape(&Condition::All(vec![bottle.clone()])));
    }
}
