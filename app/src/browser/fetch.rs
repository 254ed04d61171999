//! Reading the guide's own files. Nothing else is ever requested.

#[cfg(feature = "desk")]
use serde::de::DeserializeOwned;
use wasm_bindgen::JsCast as _;
use wasm_bindgen_futures::JsFuture;

/// Why a file could not be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum FetchProblem {
    /// The network or the offline copy did not answer.
    Unreachable,
    /// There is no such file.
    Missing,
    /// The file is there but is not what it should be.
    Broken,
}

impl FetchProblem {
    /// The id of what the page says of it before any words have arrived.
    pub(crate) fn place(self) -> &'static str {
        match self {
            Self::Unreachable => "start-problem-unreachable",
            Self::Missing => "start-problem-missing",
            Self::Broken => "start-problem-broken",
        }
    }
}

async fn fetch(path: &str) -> Result<web_sys::Response, FetchProblem> {
    let window = web_sys::window().ok_or(FetchProblem::Unreachable)?;
    let answer = JsFuture::from(window.fetch_with_str(path)).await.map_err(|_| FetchProblem::Unreachable)?;
    let response: web_sys::Response = answer.dyn_into().map_err(|_| FetchProblem::Broken)?;
    if response.ok() {
        return Ok(response);
    }
    Err(if response.status() == 404 { FetchProblem::Missing } else { FetchProblem::Unreachable })
}

/// Reads a file of the published folder as bytes; the path is relative to the page.
pub(crate) async fn fetch_bytes(path: &str) -> Result<Vec<u8>, FetchProblem> {
    let body = fetch(path).await?.array_buffer().map_err(|_| FetchProblem::Broken)?;
    let body = JsFuture::from(body).await.map_err(|_| FetchProblem::Unreachable)?;
    Ok(js_sys::Uint8Array::new(&body).to_vec())
}

/// Asks for a file without reading it, so that the service worker keeps it.
#[cfg(feature = "desk")]
pub(crate) async fn have_kept(path: &str) -> Result<(), FetchProblem> {
    fetch(path).await.map(drop)
}

/// Reads a file of the published folder as text; the path is relative to the page.
#[cfg(feature = "desk")]
pub(crate) async fn fetch_text(path: &str) -> Result<String, FetchProblem> {
    let text = fetch(path).await?.text().map_err(|_| FetchProblem::Broken)?;
    let text = JsFuture::from(text).await.map_err(|_| FetchProblem::Unreachable)?;
    text.as_string().ok_or(FetchProblem::Broken)
}

/// Reads a JSON file of the published folder.
#[cfg(feature = "desk")]
pub(crate) async fn fetch_json<T: DeserializeOwned>(path: &str) -> Result<T, FetchProblem> {
    let text = fetch_text(path).await?;
    serde_json::from_str(&text).map_err(|_| FetchProblem::Broken)
}
