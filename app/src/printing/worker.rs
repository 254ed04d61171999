//! The worker's side.

use std::cell::RefCell;
use std::rc::Rc;

use js_sys::{Array, Uint8Array};
use print::{
    FontFile, FontSet, Output, PRESS_PROFILE, Press, PreviewArea, fonts_needed, make, make_fitting,
    make_ticket, svg_with_findings, ticket_fonts,
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
        let Ok(data) = ev.data().dyn_into::<Array>() else { return };
        let order = data.get(0).as_string().and_then(|text| serde_json::from_str::<Order>(&text).ok());
        let profile = data.get(1).dyn_into::<Uint8Array>().ok().map(|bytes| bytes.to_vec());
        if let Some(order) = order {
            let here = here.clone();
            spawn_local(async move { answer(&here, order, profile).await });
        }
    });
    scope.set_onmessage(Some(on_order.as_ref().unchecked_ref()));
    on_order.forget();
    let _ = scope.post_message(&JsValue::from_str("ready"));
}

/// What a file came to: the file, or why there is none.
fn told(result: &Result<print::Artifact, print::PrintError>) -> (JsValue, Vec<print::PreflightItem>) {
    match result {
        Ok(artifact) => (Uint8Array::from(artifact.pdf.as_slice()).into(), artifact.preflight.clone()),
        Err(problem) => (JsValue::NULL, problem.items.clone()),
    }
}

async fn answer(scope: &Scope, order: Order, profile: Option<Vec<u8>>) {
    let mut made = Made { number: order.number, is_ticket: order.ticket.is_some(), ..Made::default() };
    let needed = order.ticket.as_ref().map_or_else(|| fonts_needed(&order.job), ticket_fonts);
    let profile = profile.as_deref().unwrap_or(PRESS_PROFILE);
    let (mut press, mut web) = (JsValue::NULL, JsValue::NULL);
    match (fonts(scope, needed).await, &order.ticket) {
        (None, _) => made.no_fonts = true,
        (Some(Err(problem)), _) => made.preflight = problem.items,
        (Some(Ok(fonts)), Some(ticket)) => {
            (press, made.preflight) = told(&make_ticket(ticket, &fonts, profile));
        }
        (Some(Ok(fonts)), None) => {
            let for_press =
                make_fitting(&order.job, &order.offer, &fonts, Press { profile, ink_limit: order.ink_limit });
            let for_web = match &for_press {
                // What was left out of the one is left out of the other.
                Ok(fitted) => make(&fitted.job, &fonts, Output::Web),
                Err(_) => make_fitting(&order.job, &order.offer, &fonts, Output::Web).map(|fitted| {
                    made.taken = fitted.taken;
                    fitted.artifact
                }),
            };
            let for_press = for_press.map(|fitted| {
                made.taken = fitted.taken;
                fitted.artifact
            });
            let (press_items, web_items);
            (press, press_items) = told(&for_press);
            (web, web_items) = told(&for_web);
            made.preflight = press_items;
            for item in web_items {
                if !made.preflight.contains(&item) {
                    made.preflight.push(item);
                }
            }
            made.preflight.sort_by_key(|item| item.severity);
            // Both files are drawn from one display list; a press sheet's shows it several times, where marks would
            // not know which is meant.
            if let Ok(artifact) = for_press.or(for_web) {
                let list = &artifact.display_list;
                made.previews = (0..list.pages.len())
                    .filter_map(|page| {
                        let items = if order.job.press.is_some() { &[][..] } else { &made.preflight };
                        svg_with_findings(list, &fonts, page, PreviewArea::Trim, items)
                    })
                    .collect();
            }
        }
    }
    let told = serde_json::to_string(&made).unwrap_or_default();
    let _ = scope.post_message(&Array::of3(&JsValue::from_str(&told), &press, &web));
}

thread_local! {
    /// The faces of the last order, with the texts they have measured: the next order mostly needs the same.
    static KEPT: RefCell<Option<(Vec<FontFile>, Rc<FontSet>)>> = const { RefCell::new(None) };
}

/// The faces needed, those of the last order or fetched from the published folder; nothing when one does not arrive.
async fn fonts(scope: &Scope, needed: Vec<FontFile>) -> Option<Result<Rc<FontSet>, print::PrintError>> {
    let kept = KEPT.with_borrow(|kept| {
        let (files, fonts) = kept.as_ref()?;
        (*files == needed).then(|| Rc::clone(fonts))
    });
    if let Some(kept) = kept {
        return Some(Ok(kept));
    }
    let fetch = js_sys::Reflect::get(scope, &"fetch".into()).ok()?;
    let fetch: js_sys::Function = fetch.dyn_into().ok()?;
    let mut set = FontSet::new();
    for font in &needed {
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
    let set = Rc::new(set);
    KEPT.with_borrow_mut(|kept| *kept = Some((needed, Rc::clone(&set))));
    Some(Ok(set))
}
