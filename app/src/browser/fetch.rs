//! Reading the guide's own files. Nothing else is ever requested.

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
    /// The word in message keys (`start-problem-<code>`).
    pub(crate) fn code(self) -> &'static str {
        match self {
            Self::Unreachable => "unreachable",
            Self::Missing => "missing",
            Self::Broken => "broken",
        }
    }
}

/// Reads a file of the published folder as text; the path is relative to the page.
pub(crate) async fn fetch_text(path: &str) -> Result<String, FetchProblem> {
    let window = web_sys::window().ok_or(FetchProblem::Unreachable)?;
    let answer = JsFuture::from(window.fetch_with_str(path)).await.map_err(|_| FetchProblem::Unreachable)?;
    let response: web_sys::Response = answer.dyn_into().map_err(|_| FetchProblem::Broken)?;
    if !response.ok() {
        return Err(if response.status() == 404 { FetchProblem::Missing } else { FetchProblem::Unreachable });
    }
    let text = response.text().map_err(|_| FetchProblem::Broken)?;
    let text = JsFuture::from(text).await.map_err(|_| FetchProblem::Unreachable)?;
    text.as_string().ok_or(FetchProblem::Broken)
}

/// Reads a JSON file of the published folder.
pub(crate) async fn fetch_json<T: DeserializeOwned>(path: &str) -> Result<T, FetchProblem> {
    let text = fetch_text(path).await?;
    serde_json::from_str(&text).map_err(|_| FetchProblem::Broken)
}
