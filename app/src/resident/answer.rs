//! The answer: verdict by word, shape and colour; where it goes; how to prepare it; why.

use guide_data::{Answer, Answered, Outcome, PartAnswer};
use leptos::prelude::*;
use locales::t;

use super::Mark;
use super::site::Sites;
use super::state::Resident;

/// The answer for an item and for those of its parts that go elsewhere.
#[component]
pub(crate) fn AnswerScreen(
    /// The item's id.
    item: String,
    /// How many answers led here.
    step: usize,
    /// The answer.
    answer: Answer,
) -> impl IntoView {
    let resident = expect_context::<Resident>();
    let words = resident.words.get_untracked();
    let whole = answer.parts.iter().find(|p| p.part.is_none()).map(|p| p.outcome.clone()).unwrap_or_default();
    let differs = |part: &&PartAnswer| {
        part.part.is_some() && (!part.outcome.same_place(&whole) || part.outcome.hazard != whole.hazard)
    };
    let parts: Vec<PartAnswer> = answer.parts.iter().filter(differs).cloned().collect();
    let split = !parts.is_empty();
    let _ = step;
    let of = item.clone();
    let parts_view = parts
        .into_iter()
        .map(|part| {
            let name = words.say(&format!("part-{}", part.part.clone().unwrap_or_default()));
            view! {
                <section class="part" aria-label=name.clone()>
                    <h2>{name.clone()}</h2>
                    <Verdict outcome=part.outcome.clone()/>
                    <Detail outcome=part.outcome item=of.clone()/>
                </section>
            }
        })
        .collect_view();
    let assumed = answer
        .assumed
        .iter()
        .map(|(fact, label)| {
            let (fact_name, value) = (words.say(&format!("fact-{fact}")), words.value(fact, label));
            view! { <li>{t!(words.messages, "assumed-line", fact = fact_name, value = value)}</li> }
        })
        .collect_view();
    view! {
        <article id="answer" class="answer">
            <div role="status" aria-live="polite" id="verdict-live">
                <Verdict outcome=whole.clone()/>
            </div>
            <Detail outcome=whole.clone() item/>
            {split.then(|| view! { <div class="parts" id="parts">{parts_view}</div> })}
            {(!answer.assumed.is_empty()).then(|| view! {
                <div class="assumed" id="assumed">
                    <p>{t!(words.messages, "assumed-title")}</p>
                    <ul>{assumed}</ul>
                </div>
            })}
            <Decided outcome=whole/>
        </article>
    }
}

/// The verdict and where the thing goes.
#[component]
fn Verdict(outcome: Outcome) -> impl IntoView {
    let resident = expect_context::<Resident>();
    let words = resident.words.get_untracked();
    let code = outcome.verdict.code();
    let word = if outcome.closed_list {
        t!(words.messages, "verdict-closed")
    } else {
        words.say(&format!("verdict-{code}"))
    };
    view! {
        <div class=format!("verdict {code}") data-verdict=code>
            <Mark verdict=outcome.verdict/>
            <div>
                <p class="verdict-word">{word}</p>
                <Destination outcome/>
            </div>
        </div>
    }
}

/// The container's name with its colour, or the channel's name.
#[component]
fn Destination(outcome: Outcome) -> impl IntoView {
    let resident = expect_context::<Resident>();
    let words = resident.words.get_untracked();
    let guide = resident.guide.get_untracked();
    let zone = resident.zone.get_untracked();
    if let Some(stream) = &outcome.stream {
        let mut containers = guide.containers(stream, zone.as_deref(), resident.dwelling().as_deref());
        let stream_name = words.named("stream", stream);
        let name_of = |id: &str| words.text(&format!("container.{id}"));
        let mut seen: Vec<String> = Vec::new();
        containers.retain(|c| {
            name_of(&c.id).is_some_and(|name| {
                !seen.contains(&name) && {
                    seen.push(name);
                    true
                }
            })
        });
        // Without a zone a stream may have several containers: then its own name is the clearest,
        // beside the colours it comes in.
        let one = containers.len() == 1;
        let mut looks: Vec<(String, &'static str)> = Vec::new();
        for c in &containers {
            let look = (c.colour.clone(), super::pictogram::of_container(&c.kind));
            if !looks.contains(&look) {
                looks.push(look);
            }
        }
        let name = containers.first().filter(|_| one).and_then(|c| name_of(&c.id)).unwrap_or(stream_name);
        return view! {
            <p class="destination" data-stream=stream.clone()>
                <span class="container">
                    {looks.into_iter().map(|(colour, symbol)| view! { <Swatch colour symbol/> }).collect_view()}
                    {name}
                </span>
            </p>
        }
        .into_any();
    }
    if let Some(channel) = &outcome.channel {
        let kind = guide.channels.iter().find(|known| known.id == *channel).map(|known| known.kind.as_str());
        return view! {
            <p class="destination" data-channel=channel.clone()>
                <span class="container">
                    <super::Pictogram id=super::pictogram::of_channel(kind.unwrap_or_default())/>
                    {words.named("channel", channel)}
                </span>
            </p>
        }
        .into_any();
    }
    ().into_any()
}

/// A container by its kind and colour. The name beside it says the same in words.
#[component]
fn Swatch(colour: String, symbol: &'static str) -> impl IntoView {
    let plain =
        colour.len() == 7 && colour.starts_with('#') && colour.bytes().skip(1).all(|b| b.is_ascii_hexdigit());
    plain.then(|| {
        view! {
            <svg class="swatch" viewBox="0 0 48 48" aria-hidden="true" focusable="false">
                <use fill=colour href=format!("icons.svg#{symbol}")></use>
            </svg>
        }
    })
}

/// What belongs to one outcome: caution, preparation, reason, sites, whom to ask.
#[component]
fn Detail(outcome: Outcome, item: String) -> impl IntoView {
    let resident = expect_context::<Resident>();
    let words = resident.words.get_untracked();
    let caution = outcome.hazard.as_ref().map(|class| words.say(&format!("caution-{class}")));
    let steps = outcome.steps.iter().map(|s| view! { <li>{words.step(s)}</li> }).collect_view();
    let reason = words.reason(&outcome);
    let mut channels: Vec<String> = outcome.channel.iter().cloned().collect();
    channels.extend(outcome.also.iter().filter(|c| outcome.channel.as_ref() != Some(*c)).cloned());
    let banned = words.banned(&outcome);
    let asks = matches!(outcome.verdict, Answered::Unlisted | Answered::Undecided) || outcome.closed_list;
    view! {
        {outcome.temporary.then(|| view! {
            <p class="temporary" id="temporary">{t!(words.messages, "temporary-order")}</p>
        })}
        {banned.into_iter().map(|text| view! { <p class="banned">{text}</p> }).collect_view()}
        {caution.map(|text| view! {
            <div class="caution" role="note">
                <svg viewBox="0 0 48 48" aria-hidden="true"><use href="icons.svg#verdict-caution"></use></svg>
                <p><strong>{t!(words.messages, "caution-title")}</strong>" "{text}</p>
            </div>
        })}
        {(!outcome.steps.is_empty()).then(|| view! {
            <section class="prepare">
                <h2>{t!(words.messages, "prepare-title")}</h2>
                <ol>{steps}</ol>
            </section>
        })}
        {(!channels.is_empty()).then(|| {
            let also = outcome.channel.is_none();
            view! {
                {also.then(|| view! { <h2 class="also">{t!(words.messages, "also-title")}</h2> })}
                {channels.into_iter().map(|channel| view! { <Sites channel item=item.clone()/> }).collect_view()}
            }
        })}
        {reason.map(|text| view! {
            <section class="why">
                <h2>{t!(words.messages, "why-title")}</h2>
                <p>{text}</p>
            </section>
        })}
        <ContainerRules outcome=outcome.clone()/>
        {asks.then(|| view! { <Ask/> })}
    }
}

/// The rules of the container a thing goes into, one tap away: they are the same for every thing.
#[component]
fn ContainerRules(outcome: Outcome) -> impl IntoView {
    let resident = expect_context::<Resident>();
    let words = resident.words.get_untracked();
    let guide = resident.guide.get_untracked();
    let (zone, dwelling) = (resident.zone.get_untracked(), resident.dwelling());
    let containers = match &outcome.stream {
        Some(stream) => guide.containers(stream, zone.as_deref(), dwelling.as_deref()),
        None => Vec::new(),
    };
    // With several containers it is not known which one stands at home.
    let [only] = containers.as_slice() else { return ().into_any() };
    let set_out = words.text(&format!("container.{}.set-out", only.id));
    let rules = only.rules.iter().map(|(kind, limit)| words.container_rule(&only.id, kind, limit.as_deref()));
    let lines: Vec<String> = set_out.into_iter().chain(rules).filter(|line| !line.is_empty()).collect();
    if lines.is_empty() {
        return ().into_any();
    }
    let name = words.named("container", &only.id);
    view! {
        <details class="decided" data-container=only.id.clone()>
            <summary>{t!(words.messages, "container-rules-title", container = name)}</summary>
            <ul>{lines.into_iter().map(|line| view! { <li>{line}</li> }).collect_view()}</ul>
        </details>
    }
    .into_any()
}

/// Whom to ask about a thing that is not on the list.
#[component]
pub(crate) fn Ask() -> impl IntoView {
    let resident = expect_context::<Resident>();
    let words = resident.words.get_untracked();
    let contact = resident.guide.with_untracked(|g| g.contact.clone());
    let phone = (!contact.phone.is_empty()).then(|| {
        let href = format!("tel:{}", contact.phone.replace(' ', ""));
        view! { <a class="action" href=href><bdi dir="ltr">{contact.phone.clone()}</bdi></a> }
    });
    let email = (!contact.email.is_empty()).then(|| {
        view! { <a class="action" href=format!("mailto:{}", contact.email)><bdi dir="ltr">{contact.email.clone()}</bdi></a> }
    });
    view! {
        <div class="ask">
            <p>{t!(words.messages, "ask-contact", name = words.text("contact.name").unwrap_or_default())}</p>
            <p class="actions">{phone}{email}</p>
        </div>
    }
}

/// Which rule decided, one tap away.
#[component]
fn Decided(outcome: Outcome) -> impl IntoView {
    let resident = expect_context::<Resident>();
    let words = resident.words.get_untracked();
    let edition = resident.guide.with_untracked(|g| g.edition.label.clone());
    let tier = outcome.tier.map(|tier| words.say(&format!("tier-{}", tier.code())));
    let rules = outcome.rules.join(", ");
    view! {
        <details class="decided" id="decided">
            <summary>{t!(words.messages, "decided-title")}</summary>
            {tier.map(|tier| view! { <p>{tier}</p> })}
            {(!rules.is_empty()).then(|| view! {
                <p>{t!(words.messages, "decided-rule")}" "<code><bdi dir="ltr">{rules}</bdi></code></p>
            })}
            {outcome.acknowledged.then(|| view! { <p>{t!(words.messages, "decided-acknowledged")}</p> })}
            <p>{t!(words.messages, "decided-edition", edition = edition)}</p>
        </details>
    }
}
