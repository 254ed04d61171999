//! The worker's side.

use js_sys::{Array, Uint8Array};
use print::{
    FontFile, FontSet, PRESS_PROFILE, PreviewArea, fonts_needed, make, make_ticket, svg, ticket_fonts,
};
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::DedicatedWorkerGlobalScope as Scope;

use super::messages::{Made, Order};

/// Takes orders from the page; says "ready" first, because what is sent before is lost.
pub(crate) fn start() {
    let Ok(scope) = js_sys::global().dyn_into::<Scope>() else { return };
    let here = scope.clone();
    let on_order = Closure::<dyn FnMut(web_sys::MessageEvent)>::new(move |ev: web_sys::MessageEvent| {
        let order = ev.data().as_string().and_then(|text| serde_json::from_str::<Order>(&text).ok());
        if let Some(order) = order {
            let here = here.clone();
            spawn_local(async move { answer(&here, order).await });
        }
    });
    scope.set_onmessage(Some(on_order.as_ref().unchecked_ref()));
    on_order.forget();
    let _ = scope.post_message(&JsValue::from_str("ready"));
}

async fn answer(scope: &Scope, order: Order) {
    let mut made = Made { number: order.number, is_ticket: order.ticket.is_some(), ..Made::default() };
    let mut file = JsValue::NULL;
    let needed = order.ticket.as_ref().map_or_else(|| fonts_needed(&order.job), ticket_fonts);
    match (fonts(scope, needed).await, &order.ticket) {
        (None, _) => made.no_fonts = true,
        (Some(Err(problem)), _) => made.preflight = problem.items,
        (Some(Ok(fonts)), Some(ticket)) => match make_ticket(ticket, &fonts, PRESS_PROFILE) {
            Ok(artifact) => file = Uint8Array::from(artifact.pdf.as_slice()).into(),
            Err(problem) => made.preflight = problem.items,
        },
        (Some(Ok(fonts)), None) => match make(&order.job, &fonts, PRESS_PROFILE) {
            Ok(artifact) => {
                file = Uint8Array::from(artifact.pdf.as_slice()).into();
                let pages = 0..artifact.display_list.pages.len();
                made.previews = pages
                    .filter_map(|page| svg(&artifact.display_list, &fonts, page, PreviewArea::Trim))
                    .collect();
                made.preflight = artifact.preflight;
            }
            Err(problem) => made.preflight = problem.items,
        },
    }
    let told = serde_json::to_string(&made).unwrap_or_default();
    let _ = scope.post_message(&Array::of2(&JsValue::from_str(&told), &file));
}

/// The faces needed, fetched from the published folder; nothing when one does not arrive.
async fn fonts(scope: &Scope, needed: Vec<FontFile>) -> Option<Result<FontSet, print::PrintError>> {
    let fetch = js_sys::Reflect::get(scope, &"fetch".into()).ok()?;
    let fetch: js_sys::Function = fetch.dyn_into().ok()?;
    let mut set = FontSet::new();
    for font in needed {
        let fetching = fetch.call1(scope, &JsValue::from_str(&format!("fonts/{}", font.file))).ok()?;
        let answer = JsFuture::from(js_sys::Promise::from(fetching)).await.ok()?;
        let response: web_sys::Response = answer.dyn_into().ok()?;
        if !response.ok() {
            return None;
        }
        let buffer = JsFuture::from(response.array_buffer().ok()?).await.ok()?;
        if let Err(problem) = set.add(font.family, font.weight, Uint8Array::new(&buffer).to_vec()) {
            return Some(Err(problem));
        }
    }
    Some(Ok(set))
}
