//! Drafts in IndexedDB, each with a revision number, so that two windows on one program never
//! write over each other's work.

use rexie::{ObjectStore, Rexie, Transaction, TransactionMode, TransactionResult};
use serde::{Deserialize, Serialize};
use wasm_bindgen::JsValue;

const DATABASE: &str = "lidleaf";
const STORE: &str = "drafts";

/// A program as it is kept between visits.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
pub(crate) struct Draft {
    /// The draft's own id; two drafts may be of one program.
    pub(crate) id: String,
    /// The program's id.
    pub(crate) program: String,
    /// The name it is listed under.
    pub(crate) name: String,
    /// Counts the saves; a window that saves must have seen the latest.
    pub(crate) revision: u64,
    /// When, in milliseconds since 1970.
    pub(crate) saved_at: i64,
    /// The program file.
    pub(crate) json: String,
}

/// Why a draft could not be kept or read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum StoreProblem {
    /// The device has no room left.
    Full,
    /// The browser does not let this page store anything.
    Forbidden,
    /// Another window has saved since; nothing was written.
    Newer,
}

impl StoreProblem {
    /// The word in message keys (`save-problem-<code>`).
    pub(crate) fn code(self) -> &'static str {
        match self {
            Self::Full => "full",
            Self::Forbidden => "forbidden",
            Self::Newer => "newer",
        }
    }
}

/// The browser's own name of the problem tells a full disk from a refusal.
fn problem(error: &rexie::Error) -> StoreProblem {
    let words = format!("{error:?} {error}");
    if words.contains("Quota") { StoreProblem::Full } else { StoreProblem::Forbidden }
}

async fn open() -> Result<Rexie, StoreProblem> {
    Rexie::builder(DATABASE)
        .version(1)
        .add_object_store(ObjectStore::new(STORE).key_path("id"))
        .build()
        .await
        .map_err(|e| problem(&e))
}

/// Drafts cross into the browser as JSON: one way of writing them, whatever the database is.
fn to_js(draft: &Draft) -> Result<JsValue, StoreProblem> {
    let text = serde_json::to_string(draft).map_err(|_| StoreProblem::Forbidden)?;
    js_sys::JSON::parse(&text).map_err(|_| StoreProblem::Forbidden)
}

fn from_js(value: &JsValue) -> Option<Draft> {
    let text: String = js_sys::JSON::stringify(value).ok()?.into();
    serde_json::from_str(&text).ok()
}

/// Every draft, last saved first.
pub(crate) async fn list() -> Result<Vec<Draft>, StoreProblem> {
    let database = open().await?;
    let transaction = database.transaction(&[STORE], TransactionMode::ReadOnly).map_err(|e| problem(&e))?;
    let store = transaction.store(STORE).map_err(|e| problem(&e))?;
    let all = store.get_all(None, None).await.map_err(|e| problem(&e))?;
    let mut drafts: Vec<Draft> = all.iter().filter_map(from_js).collect();
    drafts.sort_by_key(|d| std::cmp::Reverse(d.saved_at));
    Ok(drafts)
}

/// One draft.
pub(crate) async fn read(id: &str) -> Result<Option<Draft>, StoreProblem> {
    let database = open().await?;
    let transaction = database.transaction(&[STORE], TransactionMode::ReadOnly).map_err(|e| problem(&e))?;
    let store = transaction.store(STORE).map_err(|e| problem(&e))?;
    let found = store.get(id.into()).await.map_err(|e| problem(&e))?;
    Ok(found.as_ref().and_then(from_js))
}

/// Waits until a transaction is on the disk. A disk without room takes the writes and gives the whole
/// transaction up at its end, which is no error to the library; nothing else gives ours up there.
async fn finish(transaction: Transaction) -> Result<(), StoreProblem> {
    match transaction.done().await.map_err(|e| problem(&e))? {
        TransactionResult::Committed => Ok(()),
        TransactionResult::Aborted => Err(StoreProblem::Full),
    }
}

/// Writes a draft whose `revision` is the one this window last saw, and returns the new one.
/// Looking and writing are one transaction, so no other window can come between.
pub(crate) async fn write(draft: &Draft) -> Result<u64, StoreProblem> {
    let database = open().await?;
    let transaction = database.transaction(&[STORE], TransactionMode::ReadWrite).map_err(|e| problem(&e))?;
    let store = transaction.store(STORE).map_err(|e| problem(&e))?;
    let kept = store.get(draft.id.as_str().into()).await.map_err(|e| problem(&e))?;
    if let Some(kept) = kept.as_ref().and_then(from_js)
        && kept.revision != draft.revision
    {
        return Err(StoreProblem::Newer);
    }
    let next = Draft { revision: draft.revision + 1, ..draft.clone() };
    store.put(&to_js(&next)?, None).await.map_err(|e| problem(&e))?;
    finish(transaction).await?;
    Ok(next.revision)
}

/// Removes a draft.
pub(crate) async fn remove(id: &str) -> Result<(), StoreProblem> {
    let database = open().await?;
    let transaction = database.transaction(&[STORE], TransactionMode::ReadWrite).map_err(|e| problem(&e))?;
    let store = transaction.store(STORE).map_err(|e| problem(&e))?;
    store.delete(id.into()).await.map_err(|e| problem(&e))?;
    finish(transaction).await?;
    Ok(())
}
