//! An item: the next question, or the answer.

use guide_data::Step;
use leptos::prelude::*;
use locales::t;

use super::answer::AnswerScreen;
use super::home::NotHere;
use super::question::QuestionScreen;
use super::state::Resident;
use crate::address::Page;

/// An item's screen, after so many answers.
#[component]
pub(crate) fn ItemScreen(
    /// The item's id.
    id: String,
    /// How many answers to take into account.
    step: usize,
) -> impl IntoView {
    let resident = expect_context::<Resident>();
    let guide = resident.guide.get_untracked();
    let words = resident.words.get_untracked();
    let Some(at) = guide.item_index(&id) else {
        return view! { <NotHere message=t!(words.messages, "unknown-item", id = short(&id))/> }.into_any();
    };
    // An address with answers that this page was never given begins again at the first question.
    let given = resident.answers.with_untracked(|a| if a.item == id { a.given.len() } else { 0 });
    let step = step.min(given);
    let known = resident.known(&id, step);
    let pictogram = guide.items.get(at).map(|i| i.pictogram.clone()).unwrap_or_default();
    resident.focus_heading();
    let Some(next) = guide.next(at, &known) else {
        return view! { <NotHere message=t!(words.messages, "unknown-item", id = short(&id))/> }.into_any();
    };
    let body = match next {
        Step::Ask(question) => view! { <QuestionScreen item=id.clone() step question/> }.into_any(),
        Step::Answer(answer) => {
            resident.remember_item(&id);
            view! { <AnswerScreen item=id.clone() step answer/> }.into_any()
        }
    };
    view! {
        <Bar title=words.item(&id) pictogram/>
        {body}
    }
    .into_any()
}

/// Back, and what the screen is about.
#[component]
pub(crate) fn Bar(
    /// What the screen is about.
    title: String,
    /// Its picture.
    #[prop(into)]
    pictogram: String,
) -> impl IntoView {
    let resident = expect_context::<Resident>();
    let words = resident.words.get_untracked();
    view! {
        <div class="bar">
            <button id="back" class="icon-button" type="button" aria-label=t!(words.messages, "back")
                on:click=move |_| resident.back()>
                <svg viewBox="0 0 24 24" aria-hidden="true"><path d="M15 4 7 12l8 8"/></svg>
            </button>
            <super::Pictogram id=pictogram/>
            <h1 id="heading" tabindex="-1">{title}</h1>
        </div>
    }
}

/// An id from an address, short enough to show.
fn short(id: &str) -> String {
    id.chars().take(60).collect()
}

/// The page shown now.
#[component]
pub(crate) fn PageView() -> impl IntoView {
    let resident = expect_context::<Resident>();
    // Components are drawn once: what a screen depends on is named here.
    move || match resident.page.get() {
        Page::Home => {
            resident.words.track();
            view! { <super::Home/> }.into_any()
        }
        Page::Category(id) => {
            resident.words.track();
            view! { <super::home::CategoryScreen id/> }.into_any()
        }
        Page::Item { id, step } => {
            resident.words.track();
            resident.guide.track();
            resident.zone.track();
            view! { <ItemScreen id step/> }.into_any()
        }
        Page::Unknown(address) => {
            let words = resident.words.get();
            view! { <NotHere message=t!(words.messages, "unknown-address", address = address)/> }.into_any()
        }
    }
}
