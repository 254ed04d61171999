//! "Ask as a resident": the resident's own screens over the draft.

use leptos::prelude::*;
use locales::t;

use super::desk::Desk;

/// The panel.
#[component]
pub(crate) fn AskPanel(desk: Desk) -> impl IntoView {
    let place = NodeRef::<leptos::html::Div>::new();
    place.on_load(move |place| desk.resident.get_value().mount(place.into()));
    view! {
        <section id="ask" class="panel" aria-labelledby="ask-panel">
            <h2 id="ask-panel" tabindex="-1">{move || desk.words.with(|w| t!(w.messages, "ask-title"))}</h2>
            <div class="phone" node_ref=place></div>
        </section>
    }
}
