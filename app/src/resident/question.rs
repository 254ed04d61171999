//! A question: what is asked, its answers as large buttons, and "I can't tell".

use guide_data::{Given, Question};
use leptos::prelude::*;
use locales::t;

use super::state::Resident;

/// One question about an item.
#[component]
pub(crate) fn QuestionScreen(
    /// The item's id.
    item: String,
    /// How many answers have been given before.
    step: usize,
    /// The question.
    question: Question,
) -> impl IntoView {
    let resident = expect_context::<Resident>();
    let words = resident.words.get_untracked();
    let fact = question.fact.clone();
    let hint = words.maybe(&format!("ask-{fact}.hint"));
    let left = question.at_most;
    let options = question
        .options
        .into_iter()
        .map(|choice| {
            let label = words.value(&fact, &choice.label);
            let (item, fact) = (item.clone(), fact.clone());
            let give = move |_| resident.give(&item, step, &fact, choice.given.clone());
            view! { <li><button class="option" type="button" on:click=give>{label}</button></li> }
        })
        .collect_view();
    let cannot_tell = {
        let (item, fact) = (item, fact.clone());
        move |_| resident.give(&item, step, &fact, Given::CannotTell)
    };
    view! {
        <section id="question" class="question" aria-labelledby="question-text" data-fact=fact.clone()>
            <h2 id="question-text">{words.say(&format!("ask-{fact}"))}</h2>
            {hint.map(|hint| view! { <p class="hint">{hint}</p> })}
            <ul class="options">{options}</ul>
            <button id="cannot-tell" class="option quiet-option" type="button" on:click=cannot_tell>
                {t!(words.messages, "cannot-tell")}
            </button>
            {(left > 1).then(|| view! {
                <p class="quiet">{t!(words.messages, "questions-left", count = left)}</p>
            })}
        </section>
    }
}
