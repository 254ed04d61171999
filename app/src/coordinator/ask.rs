//! "Ask as a resident": the resident's own screens over the draft.

use leptos::prelude::*;
use locales::t;

use super::desk::Desk;
use crate::resident::PageView;

/// The panel.
#[component]
pub(crate) fn AskPanel(desk: Desk) -> impl IntoView {
    provide_context(desk.resident);
    view! {
        <section id="ask" class="panel" aria-labelledby="ask-panel">
            <h2 id="ask-panel" tabindex="-1">{move || desk.words.with(|w| t!(w.messages, "ask-title"))}</h2>
            <div class="phone"><PageView/></div>
        </section>
    }
}
