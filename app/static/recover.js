// A panic in WebAssembly ends the program, so the screen that follows must not need it: it reloads
// the page and hands out the autosaved program straight from the browser's database.

const DATABASE = "lidleaf";
const STORE = "drafts";
const CURRENT = "lidleaf-current";

/** Watches for a program that stopped. */
export function guard() {
  addEventListener("error", (event) => stopped(event.error));
  addEventListener("unhandledrejection", (event) => stopped(event.reason));
  document.getElementById("recover-reload")?.addEventListener("click", () => location.reload());
  document.getElementById("recover-download")?.addEventListener("click", handOut);
}

/** Shows the way out when this is a program that stopped; says whether it is. */
export function stopped(problem) {
  if (problem instanceof WebAssembly.RuntimeError) {
    const screen = document.getElementById("recover");
    screen.hidden = false;
    document.getElementById("app").setAttribute("inert", "");
    screen.querySelector("button").focus();
    return true;
  }
  return false;
}

async function handOut() {
  const note = document.getElementById("recover-nothing");
  try {
    const draft = await autosaved();
    if (!draft) throw new Error("nothing saved");
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([draft.json], { type: "application/json" }));
    link.download = `${draft.program || "program"}.lidleaf.json`;
    link.click();
    note.hidden = true;
  } catch {
    note.hidden = false;
  }
}

/** The draft last worked on: its rescue copy if a tab left one, else the saved one. */
async function autosaved() {
  const id = localStorage.getItem(CURRENT);
  const current = id ? JSON.parse(id) : null;
  const rescue = current && localStorage.getItem(`lidleaf-rescue-${current}`);
  if (rescue) return JSON.parse(rescue);
  const database = await new Promise((resolve, reject) => {
    const opening = indexedDB.open(DATABASE);
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(opening.error);
  });
  const all = await new Promise((resolve, reject) => {
    const reading = database.transaction(STORE).objectStore(STORE).getAll();
    reading.onsuccess = () => resolve(reading.result);
    reading.onerror = () => reject(reading.error);
  });
  database.close();
  all.sort((a, b) => b.saved_at - a.saved_at);
  return all.find((d) => d.id === current) ?? all[0];
}
