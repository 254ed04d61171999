// Keeps the guide for use without a signal.
//
// Every published folder carries files.json: its version, and the SHA-256 and group of every file. A version
// is kept whole or not at all: all files are fetched and checked into a cache of their own, and
// only then does a pointer name it. A newer version is fetched beside the old one in the same way
// and waits until the person asks for it; the old one serves every page until then and is dropped
// after. So no page ever mixes two versions.
//
// Two groups: "guide" is everything a resident may need, all languages and sites; "desk" is what
// the coordinator needs besides, kept after the first visit to coordinator.html. Fonts for one script
// are large: each is kept in the desk's cache when it is first asked for, and by later versions too.

const PREFIX = `lidleaf:${new URL(self.registration.scope).pathname}:`;
const POINTER = `${PREFIX}pointer`;
const LIST = "files.json";

// The key of the pointer's one entry inside its cache; never fetched.
const pointerKey = new URL("__current", self.registration.scope).href;

// The key under which the desk's cache lists the files that it keeps when they are asked for.
const laterKey = new URL("__later", self.registration.scope).href;

const neverKept = (path) => path === "sw.js" || path === LIST || path === "app-files.json";
const cacheName = (group, version) => `${PREFIX}${group}:${version}`;

let working = Promise.resolve();
// The pointer as last read: every file that is asked for needs it.
let read;

self.addEventListener("install", (event) => {
  // Nothing is kept here: a failed download must not undo the worker that reports it. A newer
  // worker takes over at once, because all versions of it serve whatever the pointer names.
  event.waitUntil(self.skipWaiting());
});

self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

self.addEventListener("message", (event) => {
  const [order, group] = String(event.data).split(" ");
  const job = { keep: () => keep(event.source, group), switch: switchOver }[order];
  if (job) {
    // One job at a time, whatever several tabs ask for.
    working = working.then(job, job);
    event.waitUntil(working);
  }
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || !url.href.startsWith(self.registration.scope)) return;
  event.respondWith(answer(request, url));
});

async function answer(request, url) {
  let path = url.href.slice(self.registration.scope.length).split(/[?#]/)[0];
  if (path === "") path = "index.html";
  if (!neverKept(path)) {
    const current = await pointer();
    if (current) {
      const kept = (await lookUp(current.version, path)) || (await keepLater(current.version, path));
      if (kept) return kept;
    }
  }
  return fetch(request);
}

/** A file that is kept when it is asked for; nothing when it is none, or is another version's by now. */
async function keepLater(version, path) {
  const name = cacheName("desk", version);
  const list = await caches.match(laterKey, { cacheName: name });
  const file = list && (await list.json()).find((f) => f.path === path);
  if (!file) return undefined;
  try {
    const cache = await caches.open(name);
    await fetchFile(cache, file);
    return await cache.match(new URL(path, self.registration.scope).href);
  } catch {
    return undefined;
  }
}

/** Which of the files that are kept when asked for some version keeps already. */
async function keptLater(list) {
  const kept = [];
  for (const file of list.files.filter((f) => f.group === "script")) {
    const key = new URL(file.path, self.registration.scope).href;
    for (const name of await caches.keys()) {
      if (name.startsWith(`${PREFIX}desk:`) && (await caches.match(key, { cacheName: name }))) {
        kept.push(file);
        break;
      }
    }
  }
  return kept;
}

async function lookUp(version, path) {
  const key = new URL(path, self.registration.scope).href;
  for (const group of ["guide", "desk"]) {
    const found = await caches.match(key, { cacheName: cacheName(group, version) });
    if (found) return found;
  }
  return undefined;
}

function pointer() {
  read ??= caches.match(pointerKey, { cacheName: POINTER }).then((found) => (found ? found.json() : null));
  return read;
}

async function setPointer(value) {
  read = undefined;
  await (await caches.open(POINTER)).put(pointerKey, new Response(JSON.stringify(value)));
}

/** Keeps what the page asks for, then looks for a newer version. */
async function keep(page, group) {
  const tell = (word) => page && page.postMessage(word);
  const groups = group === "desk" ? ["guide", "desk"] : ["guide"];
  // The browser may have cleared what was kept since.
  read = undefined;
  let current = await pointer();
  const missing = [];
  for (const one of groups) {
    if (!current || !(await caches.has(cacheName(one, current.version)))) missing.push(one);
  }
  if (!missing.length) tell("whole");
  const lost = current && missing.includes("guide");
  if (lost) tell("lost");
  let list;
  try {
    const response = await fetch(LIST, { cache: "no-store" });
    if (!response.ok) throw new Error(`${LIST}: ${response.status}`);
    list = await response.json();
  } catch {
    if (missing.length) tell("failed");
    return;
  }
  try {
    // Without the guide's own files the pointer means nothing: the browser may have cleared them.
    if (!current || missing.includes("guide") || (missing.length && current.version === list.version)) {
      if (!lost) tell("fetching");
      for (const one of missing) await fetchGroup(one, list);
      current = { version: list.version };
      await setPointer(current);
      await drop(current.version);
      tell("whole");
    } else if (current.version !== list.version) {
      // A tab of the coordinator's never takes the desk of one version with the guide of another.
      if (missing.length) tell("fetching");
      const wanted = new Set(groups);
      if (await caches.has(cacheName("desk", current.version))) wanted.add("desk");
      for (const one of wanted) {
        if (!(await caches.has(cacheName(one, list.version)))) await fetchGroup(one, list);
      }
      await setPointer({ ...current, next: list.version });
      await broadcast("update-ready");
    }
  } catch {
    tell(missing.length ? "failed" : "update-failed");
  }
}

/** Fetches a group of files into a cache of its own: all of them, each with its hash, or none. */
async function fetchGroup(group, list) {
  const name = cacheName(group, list.version);
  const making = `${name}:making`;
  await caches.delete(making);
  const cache = await caches.open(making);
  try {
    const isDesk = group === "desk";
    const own = (f) => !neverKept(f.path) && !["pages", "script"].includes(f.group) && (f.group !== "resident") === isDesk;
    const files = list.files.filter(own);
    if (isDesk) files.push(...(await keptLater(list)));
    await Promise.all(files.map((file) => fetchFile(cache, file)));
    if (isDesk) {
      const later = list.files.filter((f) => f.group === "script");
      await cache.put(laterKey, new Response(JSON.stringify(later)));
    }
    // A cache cannot be renamed; copying within the browser costs no network.
    const whole = await caches.open(name);
    try {
      for (const key of await cache.keys()) await whole.put(key, await cache.match(key));
    } catch (problem) {
      await caches.delete(name);
      throw problem;
    }
  } finally {
    await caches.delete(making);
  }
}

async function fetchFile(cache, file) {
  const url = new URL(file.path, self.registration.scope);
  // The browser's own copy will do if it is the right one; a stale one is asked for again.
  for (const mode of ["default", "reload"]) {
    const response = await fetch(url, { cache: mode });
    if (!response.ok) throw new Error(`${file.path}: ${response.status}`);
    const bytes = await response.arrayBuffer();
    if ((await sha256(bytes)) === file.sha256) {
      const headers = { "content-type": response.headers.get("content-type") || "application/octet-stream" };
      await cache.put(url.href, new Response(bytes, { headers }));
      return;
    }
  }
  throw new Error(`${file.path}: not the file of this version`);
}

async function sha256(bytes) {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(digest, (b) => b.toString(16).padStart(2, "0")).join("");
}

/** The person asked for the newer version: the pointer moves, then every page starts anew. */
async function switchOver() {
  const current = await pointer();
  if (current?.next) {
    await setPointer({ version: current.next });
    await drop(current.next);
  }
  await broadcast("switched");
}

/** Drops the caches of every other version. */
async function drop(version) {
  for (const name of await caches.keys()) {
    if (name.startsWith(PREFIX) && name !== POINTER && !name.endsWith(`:${version}`)) {
      await caches.delete(name);
    }
  }
}

async function broadcast(word) {
  for (const page of await self.clients.matchAll({ includeUncontrolled: true })) page.postMessage(word);
}
